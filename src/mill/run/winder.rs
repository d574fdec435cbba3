//! The winder at work.

use super::lot::{
    Lot, LotResults, PackageSize, check_lot, left_over, lot, package_mass, warn_unfilled,
};
use super::minding::{People, people};
use crate::calculation::{Check, Inputs, Results, calculation, refuse};
use crate::error::Result;
use crate::mill::minding::ROUNDING;
use crate::number::Number;
use crate::quantity::print::figure;
use crate::quantity::{
    Count, Duration, Fraction, HankRate, Length, LinearDensity, Mass, MassRate, Speed,
};
use crate::{mill, yarn};

/// The winder itself, and how it runs.
#[derive(Clone, Debug, Inputs)]
pub struct WinderMachine<N> {
    /// drums at work
    #[q("k_n", 1.0..=600.0, like = "12")]
    pub drums: Count<N>,
    /// winding speed of a drum
    #[q("v", 50.0..=1200.0, memory, like = "300 m/min")]
    pub winding_speed: Speed<N>,
    /// efficiency, with every stop, doff and idle drum in it
    #[q("η", 0.5..=0.95, like = "85 %")]
    pub efficiency: Fraction<N>,
}

/// A lot to wind.
#[derive(Clone, Debug, Inputs)]
pub struct WinderLot<N> {
    /// The lot.
    #[group]
    pub lot: Lot<N>,
    /// time in which the lot is wanted
    #[q("τ_a", 0.5..=500.0)]
    pub time_allowed: Option<Duration<N>>,
}

/// What [`winder()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct WinderInputs<N> {
    /// The machine.
    #[group]
    pub machine: WinderMachine<N>,
    /// count of the yarn
    #[q("T", 5.0..=3000.0, like = "300 tex")]
    pub count: LinearDensity<N>,
    /// The lot.
    #[group]
    pub lot: Option<WinderLot<N>>,
    /// What a full cone holds.
    #[one_of("what a package holds")]
    pub package: Option<PackageSize<N>>,
    /// yarn on a bobbin or cop that is wound off
    #[q("g_k", 0.02..=2.0)]
    pub bobbin_mass: Option<Mass<N>>,
    /// yarn in a hank
    #[q("l_h", 50.0..=20_000.0)]
    pub hank_length: Option<Length<N>>,
    /// drums that a person minds
    #[q("a_p", 1.0..=1500.0)]
    pub per_person: Option<Count<N>>,
}

/// What [`winder()`] answers.
#[derive(Clone, Debug, Results)]
pub struct WinderResults<N> {
    /// output, all drums
    #[block = "Output"]
    pub output: MassRate<N>,
    /// hanks of a drum in a time, stops included
    pub hank_rate: Option<HankRate<N>>,
    /// yarn on a full cone
    pub package_mass: Option<Mass<N>>,
    /// time of a cone
    pub package_time: Option<Duration<N>>,
    /// knots in a cone, where bobbins are joined
    pub knots: Option<Count<N>>,
    /// The lot.
    #[part]
    pub lot: Option<LotResults<N>>,
    /// bobbins to wind off
    pub bobbins: Option<Count<N>>,
    /// The drums for the time allowed.
    #[part]
    pub allowed: Option<DrumsNeeded<N>>,
    /// Doffs and packages.
    #[part]
    pub packages: Option<Cones<N>>,
    /// People.
    #[block = "People"]
    #[part]
    pub people: Option<People<N>>,
}

/// Doffs and cones of a lot.
#[derive(Clone, Debug, Results)]
pub struct Cones<N> {
    /// doffs, the last perhaps not full
    pub doffs: Count<N>,
    /// full cones
    pub packages: Count<N>,
    /// yarn left over, for no full cone
    pub left_over: Mass<N>,
}

/// The drums that wind a lot within the time allowed.
#[derive(Clone, Debug, Results)]
pub struct DrumsNeeded<N> {
    /// what a drum winds in the time allowed
    pub drum_mass: Mass<N>,
    /// drums needed for the time allowed, no cone shared between two
    pub drums_needed: Count<N>,
}

/// The winder at work: output, time of a cone, full cones of a lot and what is left over, drums, hours.
///
/// Give `package_mass` of a cone without the tube, or `package_length`; `bobbin_mass` for what is wound
/// off; `time_allowed` for the drums that the lot needs; `hank_length` for how many hanks a drum winds.
#[calculation(
    title = "The winder at work",
    example = ">>> import hankwise as hw
>>> winder = hw.mill.winder(drums=12, winding_speed=\"300 m/min\", count=\"310 tex\", efficiency=\"70 %\",
...                         yarn_mass=\"30 kg\", package_mass=\"1.2 kg\", time_allowed=\"1 h\")
>>> winder[\"packages\"], winder[\"drums_needed\"]
(<number: 25>, <number: 9>)",
    cautions = ["machines"],
    check = check
)]
pub fn winder<N: Number>(given: &WinderInputs<N>) -> WinderResults<N> {
    let WinderMachine { drums, winding_speed, efficiency } = given.machine;
    let count = given.count;
    let output = yarn::winding_output(winding_speed, drums, efficiency, count);
    let package = given.package.as_ref().map(|size| package_mass(size, count));
    let one_drum = Count::base(N::constant(1.0));
    let made = given.lot.as_ref().map(|given_lot| lot(&given_lot.lot, output, count));
    let yarn_mass = given.lot.as_ref().map(|given_lot| given_lot.lot.yarn_mass);
    let fed = made.as_ref().and_then(|made| made.mass_in).or(yarn_mass);
    let time = made.as_ref().map(|made| made.time);
    let time_allowed = given.lot.as_ref().and_then(|given_lot| given_lot.time_allowed);
    let each = time_allowed.map(|time| mill::mass_wound(winding_speed, time, efficiency, count));
    WinderResults {
        output,
        hank_rate: given.hank_length.map(|hank| mill::hank_rate(winding_speed, efficiency, hank)),
        package_mass: package,
        package_time: package.map(|package| {
            let length = yarn::length_of_mass(package, count);
            yarn::winding_time(length, winding_speed, one_drum, efficiency)
        }),
        knots: package
            .zip(given.bobbin_mass)
            .map(|(package, bobbin)| yarn::knots_in_package(package, bobbin)),
        lot: made,
        bobbins: fed
            .zip(given.bobbin_mass)
            .map(|(fed, bobbin)| yarn::packages_for_mass(fed, bobbin)),
        allowed: yarn_mass.zip(each).map(|(mass, drum_mass)| {
            let drums_needed = match package {
                None => mill::drums_needed(mass, drum_mass).v().round_up(ROUNDING).into(),
                Some(cone) => drums_for_cones(mass, drum_mass, cone),
            };
            DrumsNeeded { drum_mass, drums_needed }
        }),
        packages: yarn_mass.zip(package).map(|(mass, cone)| {
            let packages = mill::full_packages(mass, cone);
            Cones {
                doffs: mill::doffs(mass, drums, cone),
                packages,
                left_over: left_over(mass, packages, cone),
            }
        }),
        people: given.per_person.map(|each| people(drums, each, time)),
    }
}

/// Drums that wind a lot within a time, whole cones on each: what a drum has time for besides its full cones
/// may wind the last one, which is not full.
fn drums_for_cones<N: Number>(yarn: Mass<N>, drum_mass: Mass<N>, cone: Mass<N>) -> Count<N> {
    let cones = drum_mass.v() / cone.v();
    // At least one, or a lot of less than a cone had no drum.
    let each = cones.round_down(ROUNDING).max(1.0);
    let each = each.named(["p_t", "", "full cones that a drum winds in the time allowed"]);
    let full = mill::full_packages(yarn, cone);
    let last = (yarn.v() / cone.v() - full.v()).named(["v", "", "the last cone, of a full one"]);
    let too_much = (last - (cones - each)).max(0.0);
    Count::from(((full.v() + too_much) / each).round_up(ROUNDING).max(1.0))
}

fn check(
    given: &WinderInputs<f64>,
    found: &WinderResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let Some(given_lot) = &given.lot else { return Ok(()) };
    check_lot(Some(&given_lot.lot), check)?;
    let drums = given.machine.drums.value();
    let yarn_mass = given_lot.lot.yarn_mass;
    let cone = found.package_mass.zip(found.package_time);
    if let (Some(time), Some(allowed), Some((cone, cone_time))) =
        (given_lot.time_allowed, &found.allowed, cone)
        && cone_time.value() > time.value() * (1.0 + ROUNDING)
        && yarn_mass.value() > allowed.drum_mass.value() * (1.0 + ROUNDING)
    {
        refuse!(
            check,
            given_lot.time_allowed,
            "no number of drums is enough: one cone of {} takes {}, longer than the {} allowed; write a \
             longer time or smaller cones",
            check.say(cone),
            check.say(cone_time),
            check.say(time)
        );
    }
    if let (Some(time), Some(allowed)) = (given_lot.time_allowed, &found.allowed)
        && allowed.drums_needed.value() > drums + 0.5
    {
        check.warn(format!(
            "{} drums do not wind the lot within {}: {} are needed, or a longer time",
            figure(drums),
            check.say(time),
            figure(allowed.drums_needed.value())
        ));
    }
    if let Some(cone) = found.package_mass {
        if drums > 1.5 {
            let last = "if one drum winds the last of the yarn; each drum more may leave a rest";
            check.beside("packages", last);
        }
        warn_unfilled(yarn_mass, cone, given.machine.drums, "drums", "cone", check);
    }
    Ok(())
}
