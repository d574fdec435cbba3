//! The winder at work.

use super::lot::{
    Lot, LotResults, PackageSize, Packages, check_lot, lot, package_mass, packages, warn_unfilled,
};
use super::minding::{People, people};
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
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
    pub packages: Option<Packages<N>>,
    /// People.
    #[block = "People"]
    #[part]
    pub people: Option<People<N>>,
}

/// The drums that wind a lot within the time allowed.
#[derive(Clone, Debug, Results)]
pub struct DrumsNeeded<N> {
    /// what a drum winds in the time allowed
    pub drum_mass: Mass<N>,
    /// drums needed for the time allowed, whole and up
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
(<number: 25>, <number: 8>)",
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
            let needed = mill::drums_needed(mass, drum_mass);
            DrumsNeeded { drum_mass, drums_needed: needed.v().round_up(1e-6).into() }
        }),
        packages: yarn_mass.zip(package).map(|(mass, each)| packages(mass, drums, each)),
        people: given.per_person.map(|each| people(drums, each, time)),
    }
}

fn check(
    given: &WinderInputs<f64>,
    found: &WinderResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let Some(given_lot) = &given.lot else { return Ok(()) };
    check_lot(Some(&given_lot.lot), check)?;
    let drums = given.machine.drums.value();
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
    warn_unfilled(found.packages.as_ref(), given.machine.drums, "drums", "cone", check);
    Ok(())
}
