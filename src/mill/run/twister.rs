//! The twister at work.

use super::lot::{
    Lot, LotResults, PackageSize, Packages, check_lot, lot, package_mass, packages, say_last_doff,
};
use super::minding::{Minding, MindingResults, check_minding, minding};
use super::spindles::{SpindleTwist, SpindleTwistResults, Spindles, spindle_twist};
use crate::calculation::{Check, Inputs, Results, Words, calculation};
use crate::error::Result;
use crate::number::Number;
use crate::quantity::{
    Contraction, Count, Duration, Frequency, Length, LinearDensity, Mass, MassRate, Speed,
};
use crate::{mill, yarn};

/// The twister itself, and how it runs.
#[derive(Clone, Debug, Inputs)]
pub struct TwisterMachine<N> {
    /// The spindles.
    #[group]
    pub spindles: Spindles<N>,
    /// how a spindle twists
    #[word]
    pub spindle_type: SpindleType,
}

/// How a spindle of a twister twists.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Words)]
pub enum SpindleType {
    /// one turn of twist in a revolution
    #[default]
    #[word("ordinary")]
    Ordinary,
    /// two turns of twist in a revolution
    #[word("two-for-one")]
    TwoForOne,
}

impl SpindleType {
    /// Turns of twist in a revolution of the spindle.
    pub const fn turns(self) -> f64 {
        match self {
            SpindleType::Ordinary => 1.0,
            SpindleType::TwoForOne => 2.0,
        }
    }
}

/// The ends that are folded.
#[derive(Clone, Debug, Inputs)]
pub struct Fold<N> {
    /// ends folded
    #[q("N", 2.0..=12.0, like = "2")]
    pub ends: Count<N>,
    /// contraction in folding, on the untwisted length
    #[q("k", -0.02..=0.12, or = 0.0)]
    pub contraction: Contraction<N>,
}

/// What [`twister()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct TwisterInputs<N> {
    /// The machine.
    #[group]
    pub machine: TwisterMachine<N>,
    /// The twist, or the wheels for it.
    #[one_of("the twist")]
    pub twist: SpindleTwist<N>,
    /// count of the folded yarn
    #[q("T_R", 5.0..=3000.0, like = "300 tex")]
    pub resultant_count: LinearDensity<N>,
    /// The ends that are folded.
    #[group]
    pub fold: Option<Fold<N>>,
    /// The lot.
    #[group]
    pub lot: Option<Lot<N>>,
    /// What a full package holds.
    #[one_of("what a package holds")]
    pub package: Option<PackageSize<N>>,
    /// Broken ends and people.
    #[group]
    pub minding: Minding<N>,
}

/// What [`twister()`] answers.
#[derive(Clone, Debug, Results)]
pub struct TwisterResults<N> {
    /// The twist and its wheel.
    #[block = "Settings"]
    #[part]
    pub twist: SpindleTwistResults<N>,
    /// delivery of a spindle, running
    pub delivery_speed: Speed<N>,
    /// count of the single
    pub single_count: Option<LinearDensity<N>>,
    /// turns of twist that a spindle puts in, running
    #[block = "Output"]
    pub twisting_rate: Frequency<N>,
    /// yarn delivered, all spindles, stops included
    pub output_speed: Speed<N>,
    /// output
    pub output: MassRate<N>,
    /// yarn on a full package
    pub package_mass: Option<Mass<N>>,
    /// from doff to doff
    pub doff_time: Option<Duration<N>>,
    /// The lot.
    #[part]
    pub lot: Option<LotResults<N>>,
    /// singles to have ready, all ends, waste included
    pub singles_length: Option<Length<N>>,
    /// Doffs and packages.
    #[part]
    pub packages: Option<Packages<N>>,
    /// Broken ends and people.
    #[part]
    pub minding: MindingResults<N>,
}

/// The twister at work: single to feed, output, doffs, packages, hours, broken ends and people.
///
/// Give the `twist`, or `wanted_twist` with the `twist_constant` and the `twist_wheels` that the mill owns.
/// A spindle puts in one turn of twist in a revolution; write `spindle_type="two-for-one"` for two.
/// `contraction` is on the untwisted length. Give `package_mass` without the tube, or `package_length`.
/// The other inputs are those of `mule`.
#[calculation(
    title = "The twister at work",
    example = ">>> import hankwise as hw
>>> twister = hw.mill.twister(spindles=40, spindle_speed=\"2400 rpm\", twist=\"130 turns/m\", ends=2,
...                           resultant_count=\"310 tex\", efficiency=\"80 %\", yarn_mass=\"60 kg\",
...                           package_mass=\"1.1 kg\")
>>> twister[\"time\"], twister[\"packages\"], twister[\"left_over\"]
(<time: 5.460 h>, <number: 40>, <mass: 16 kg>)",
    cautions = ["machines", "wheels"],
    check = check
)]
pub fn twister<N: Number>(given: &TwisterInputs<N>) -> TwisterResults<N> {
    let Spindles { spindles, spindle_speed, efficiency } = given.machine.spindles;
    let count = given.resultant_count;
    let wheel = spindle_twist(&given.twist);
    let twist = wheel.twist;
    let turns = Count::base(N::constant(given.machine.spindle_type.turns()));
    let fold = given.fold.as_ref();
    let twisting_rate = twisting_rate(&given.machine);
    let output_speed = mill::twister_output_speed(spindles, twisting_rate, twist, efficiency);
    let output = mill::output_of_yarn(output_speed, count);
    let package = given.package.as_ref().map(|size| package_mass(size, count));
    let made = given.lot.as_ref().map(|given_lot| lot(given_lot, output, count));
    let yarn_mass = given.lot.as_ref().map(|lot| lot.yarn_mass);
    let fed = made.as_ref().and_then(|made| made.mass_in).or(yarn_mass);
    let time = made.as_ref().map(|made| made.time);
    TwisterResults {
        twist: wheel,
        delivery_speed: mill::delivery_for_twist(spindle_speed, turns, twist),
        single_count: fold.map(|fold| yarn::single_for_fold(count, fold.ends, fold.contraction)),
        twisting_rate,
        output_speed,
        output,
        package_mass: package,
        doff_time: package.map(|package| mill::doff_interval(spindles, package, output)),
        lot: made,
        singles_length: fold.zip(fed).map(|(fold, fed)| {
            let folded = yarn::length_of_mass(fed, count);
            yarn::singles_length(folded, fold.ends, fold.contraction)
        }),
        packages: yarn_mass.zip(package).map(|(mass, each)| packages(mass, spindles, each)),
        minding: minding(&given.minding, spindles, time),
    }
}

/// Turns of twist that a spindle puts in: as often as it turns, on a two-for-one twice as often.
pub(crate) fn twisting_rate<N: Number>(machine: &TwisterMachine<N>) -> Frequency<N> {
    Frequency::from(machine.spindle_type.turns() * machine.spindles.spindle_speed.v())
}

fn check(
    given: &TwisterInputs<f64>,
    found: &TwisterResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    check_lot(given.lot.as_ref(), check)?;
    say_last_doff(
        given.lot.as_ref(),
        given.machine.spindles.spindles,
        found.package_mass,
        "package",
        check,
    );
    check_minding(&given.minding, &found.minding, check)
}
