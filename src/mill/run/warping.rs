//! Sectional warping.

use super::minding::{People, people};
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::number::Number;
use crate::quantity::print::figure;
use crate::quantity::{Count, Duration, Length, LinearDensity, Mass, Sett, Speed, Stretch};
use crate::{cloth, mill, yarn};

/// The warping machine, and how it runs.
#[derive(Clone, Debug, Inputs)]
pub struct WarpingMachine<N> {
    /// warping speed
    #[q("v", 5.0..=800.0, like = "40 m/min")]
    pub warping_speed: Speed<N>,
    /// time for a section beside running: leasing, tying, mending
    #[q("τ_c", 0.02..=2.0, zero, like = "20 min")]
    pub change_time: Duration<N>,
    /// speed of beaming
    #[q("v_b", 1.0..=200.0)]
    pub beaming_speed: Option<Speed<N>>,
    /// time to creel and set up, once
    #[q("τ_s", 0.1..=16.0)]
    pub set_up_time: Option<Duration<N>>,
}

/// The yarn of a warp.
#[derive(Clone, Debug, Inputs)]
pub struct WarpYarn<N> {
    /// count of the warp
    #[q("T₁", 5.0..=2000.0)]
    pub warp_count: LinearDensity<N>,
    /// yarn on a bobbin or cone of the creel
    #[q("g_k", 0.05..=10.0)]
    pub bobbin_mass: Option<Mass<N>>,
}

/// What [`warping()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct WarpingInputs<N> {
    /// ends of the warp
    #[q("N", 10.0..=20_000.0, like = "864")]
    pub ends: Count<N>,
    /// ends in a section: the bobbins in the creel
    #[q("b_c", 4.0..=1000.0, like = "144")]
    pub creel: Count<N>,
    /// length of the warp
    #[q("W", 2.0..=5000.0, like = "60 m")]
    pub warp_length: Length<N>,
    /// The machine.
    #[group]
    pub machine: WarpingMachine<N>,
    /// width of the warp
    #[q("B_w", 0.1..=6.0)]
    pub warp_width: Option<Length<N>>,
    /// The yarn.
    #[group]
    pub yarn: Option<WarpYarn<N>>,
    /// stretch in warping and beaming
    #[q("e", 0.0..=0.05, zero)]
    pub stretch: Option<Stretch<N>>,
    /// warping machines at work
    #[q("k", 1.0..=10.0, or = 1.0)]
    pub machines: Count<N>,
    /// warping machines that a person minds
    #[q("a_p", 1.0..=1500.0, broken)]
    pub per_person: Option<Count<N>>,
}

/// What [`warping()`] answers.
#[derive(Clone, Debug, Results)]
pub struct WarpingResults<N> {
    /// sections
    #[block = "Settings"]
    pub sections: Count<N>,
    /// ends in a full section
    pub section_ends: Count<N>,
    /// ends in the last section
    pub last_section_ends: Count<N>,
    /// ends in a width of the warp
    pub warp_sett: Option<Sett<N>>,
    /// width of a full section
    pub section_width: Option<Length<N>>,
    /// length on the beam, under tension
    pub beamed_length: Option<Length<N>>,
    /// yarn in the warp
    #[block = "Yarn"]
    pub warp_yarn_length: Length<N>,
    /// yarn that each bobbin in the creel gives
    pub length_per_bobbin: Length<N>,
    /// mass of the warp
    pub warp_mass: Option<Mass<N>>,
    /// mass of the yarn that each bobbin in the creel gives
    pub mass_per_bobbin: Option<Mass<N>>,
    /// bobbins for each place of the creel
    pub creelings: Option<Count<N>>,
    /// bobbins to have ready
    pub bobbins: Option<Count<N>>,
    /// warping
    #[block = "Time"]
    pub warping_time: Duration<N>,
    /// beaming
    pub beaming_time: Option<Duration<N>>,
    /// the whole warp
    pub time: Duration<N>,
    /// People.
    #[part]
    pub people: Option<People<N>>,
}

/// Warping in sections: sections, yarn and bobbins for the creel, hours.
///
/// `change_time` is the time for a section beside running, `set_up_time` the time to creel, once; no
/// efficiency comes on top. Give `warp_count` for masses, and `bobbin_mass` with it for the bobbins to have
/// ready.
#[calculation(
    title = "Warping in sections",
    example = ">>> import hankwise as hw
>>> warp = hw.mill.warping(ends=864, creel=144, warp_length=\"60 m\", warping_speed=\"40 m/min\",
...                        change_time=\"20 min\", warp_width=\"36.5 in\")
>>> warp[\"sections\"], warp[\"warp_sett\"].to(\"ends/in\")
(<number: 6>, <sett: 23.67 threads/in>)",
    cautions = ["machines"],
    check = check
)]
pub fn warping<N: Number>(given: &WarpingInputs<N>) -> WarpingResults<N> {
    let (ends, creel, length) = (given.ends, given.creel, given.warp_length);
    let machine = &given.machine;
    let sections = cloth::warp_sections(ends, creel);
    let full = Count::from(creel.v().min(ends.v()));
    let length_per_bobbin = Length::from(sections.v() * length.v());
    let warp_yarn_length = cloth::warp_yarn_length(ends, length);
    let yarn = given.yarn.as_ref();
    let mass_per_bobbin = yarn.map(|y| yarn::mass_of_length(y.warp_count, length_per_bobbin));
    let bobbin_mass = yarn.and_then(|yarn| yarn.bobbin_mass);
    let creelings = mass_per_bobbin
        .zip(bobbin_mass)
        .map(|(mass, bobbin)| yarn::packages_for_mass(mass, bobbin));
    let warping_time =
        mill::section_warping_time(sections, length, machine.warping_speed, machine.change_time);
    let beaming_time = machine.beaming_speed.map(|speed| mill::time_for_length(length, speed));
    let extra = [beaming_time, machine.set_up_time];
    let time = extra.into_iter().flatten().fold(warping_time.v(), |all, more| all + more.v());
    let time = Duration::from(time);
    WarpingResults {
        sections,
        section_ends: full,
        last_section_ends: (ends.v() - (sections.v() - 1.0) * full.v()).into(),
        warp_sett: given.warp_width.map(|width| mill::sett_from_ends(ends, width)),
        section_width: given.warp_width.map(|width| (width.v() * full.v() / ends.v()).into()),
        beamed_length: given
            .stretch
            .map(|stretch| mill::length_after_stretches(length, &[stretch])),
        warp_yarn_length,
        length_per_bobbin,
        warp_mass: yarn.map(|yarn| yarn::mass_of_length(yarn.warp_count, warp_yarn_length)),
        mass_per_bobbin,
        creelings,
        bobbins: creelings.map(|each| (each.v() * full.v()).into()),
        warping_time,
        beaming_time,
        time,
        people: given.per_person.map(|each| people(given.machines, each, Some(time))),
    }
}

fn check(given: &WarpingInputs<f64>, _found: &WarpingResults<f64>, check: &mut Check<'_>) {
    let (ends, creel) = (given.ends.value(), given.creel.value());
    if creel > ends {
        check.warn(format!(
            "the warp has {} ends, fewer than the {} of the creel: it is made in one section",
            figure(ends),
            figure(creel)
        ));
    }
    if given.per_person.is_none() {
        check.idle(&["machines"], "per_person");
    }
    check.note("Time", "Stops are in the time for a section: no efficiency comes on top.");
}
