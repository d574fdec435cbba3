//! The ring frame at work.

use super::lot::{
    Lot, LotResults, PackageSize, Packages, check_lot, lot, package_mass, packages, say_last_doff,
};
use super::minding::{Minding, MindingResults, check_minding, minding};
use super::spindles::{SpindleTwist, SpindleTwistResults, Spindles, spindle_twist};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::Number;
use crate::quantity::{
    Count, Duration, Frequency, HankRate, Length, LinearDensity, Mass, MassRate, Ratio, ShareLost,
    Speed, Twist,
};
use crate::{mill, yarn};

/// What [`ring_frame()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct RingFrameInputs<N> {
    /// The frame.
    #[group(spindle_speed(3000.0..=20_000.0))]
    pub machine: Spindles<N>,
    /// The twist, or the wheels for it.
    #[one_of("the twist")]
    pub twist: SpindleTwist<N>,
    /// count of the yarn as spun
    #[q("T", 5.0..=1000.0, like = "150 tex")]
    pub count: LinearDensity<N>,
    /// draft
    #[q("D", 1.1..=50.0)]
    pub draft: Option<Ratio<N>>,
    /// The diameters between which the package grows.
    #[group]
    pub diameters: Option<PackageDiameters<N>>,
    /// yarn in a hank
    #[q("l_h", 50.0..=20_000.0)]
    pub hank_length: Option<Length<N>>,
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

/// The diameters between which a package grows.
#[derive(Clone, Debug, Inputs)]
pub struct PackageDiameters<N> {
    /// diameter of the full package
    #[q("d_1", 0.03..=0.2)]
    pub full_diameter: Length<N>,
    /// diameter of the empty tube
    #[q("d_0", 0.012..=0.08)]
    pub empty_diameter: Length<N>,
}

/// What [`ring_frame()`] answers.
#[derive(Clone, Debug, Results)]
pub struct RingFrameResults<N> {
    /// The twist and its wheel.
    #[block = "Settings"]
    #[part]
    pub twist: SpindleTwistResults<N>,
    /// delivery of a spindle, running
    pub delivery_speed: Speed<N>,
    /// count of the slubbing or roving
    pub fed_count: Option<LinearDensity<N>>,
    /// The traveller.
    #[part]
    pub traveller: Option<TravellerResults<N>>,
    /// output
    #[block = "Output"]
    pub output: MassRate<N>,
    /// hanks of a spindle in a time, stops included
    pub hank_rate: Option<HankRate<N>>,
    /// yarn on a full package
    pub package_mass: Option<Mass<N>>,
    /// from doff to doff
    pub doff_time: Option<Duration<N>>,
    /// The lot.
    #[part]
    pub lot: Option<LotResults<N>>,
    /// Doffs and packages.
    #[part]
    pub packages: Option<Packages<N>>,
    /// Broken ends and people.
    #[part]
    pub minding: MindingResults<N>,
}

/// How the traveller lags behind the spindle, and the twist that comes of it.
#[derive(Clone, Debug, Results)]
pub struct TravellerResults<N> {
    /// lag of the traveller at the full package
    pub full_lag: Frequency<N>,
    /// lag of the traveller at the empty tube
    pub empty_lag: Frequency<N>,
    /// twist as it lies on the full package
    pub full_twist: Twist<N>,
    /// twist as it lies on the empty tube
    pub empty_twist: Twist<N>,
    /// twist on the full package, less that on the empty tube
    pub twist_step: Twist<N>,
}

/// The ring frame at work: delivery, lag of the traveller, output, doffs, hours, broken ends and people.
///
/// Give the `twist`, or `wanted_twist` with the `twist_constant` and the `twist_wheels` that the mill owns.
/// `full_diameter` and `empty_diameter` give the lag of the traveller and the twist as it lies on the
/// package. The other inputs are those of `mule`.
#[calculation(
    title = "The ring frame at work",
    example = ">>> import hankwise as hw
>>> frame = hw.mill.ring_frame(spindles=100, spindle_speed=\"5000 rpm\", twist=\"300 turns/m\",
...                            count=\"150 tex\", efficiency=\"85 %\", full_diameter=\"46 mm\",
...                            empty_diameter=\"25 mm\")
>>> frame[\"output\"], frame[\"empty_lag\"]
(<mass per time: 12.75 kg/h>, <rate per minute: 212.2 /min>)",
    cautions = ["machines", "wheels"],
    check = check
)]
pub fn ring_frame<N: Number>(given: &RingFrameInputs<N>) -> RingFrameResults<N> {
    let Spindles { spindles, spindle_speed, efficiency } = given.machine;
    let count = given.count;
    let wheel = spindle_twist(&given.twist);
    let twist = wheel.twist;
    let one_turn = Count::base(N::constant(1.0));
    let delivery_speed = mill::delivery_for_twist(spindle_speed, one_turn, twist);
    let no_loss = ShareLost::base(N::constant(0.0));
    let fed_count = given.draft.map(|draft| mill::fed_count(count, one_turn, no_loss, draft));
    let traveller =
        given.diameters.as_ref().map(|package| traveller(spindle_speed, delivery_speed, package));
    let output = mill::spindle_frame_output(spindles, spindle_speed, twist, count, efficiency);
    let hank_rate = given.hank_length.map(|hank| mill::hank_rate(delivery_speed, efficiency, hank));
    let package = given.package.as_ref().map(|size| package_mass(size, count));
    let made = given.lot.as_ref().map(|given_lot| lot(given_lot, output, count));
    let yarn_mass = given.lot.as_ref().map(|lot| lot.yarn_mass);
    let time = made.as_ref().map(|made| made.time);
    RingFrameResults {
        twist: wheel,
        delivery_speed,
        fed_count,
        traveller,
        output,
        hank_rate,
        package_mass: package,
        doff_time: package.map(|package| mill::doff_interval(spindles, package, output)),
        lot: made,
        packages: yarn_mass.zip(package).map(|(mass, each)| packages(mass, spindles, each)),
        minding: minding(&given.minding, spindles, time),
    }
}

fn traveller<N: Number>(
    spindle_speed: Frequency<N>,
    delivery_speed: Speed<N>,
    package: &PackageDiameters<N>,
) -> TravellerResults<N> {
    let lag = |diameter| yarn::winding_lag(delivery_speed, diameter);
    let twist = |diameter| yarn::twist_on_ring_bobbin(spindle_speed, delivery_speed, diameter);
    let PackageDiameters { full_diameter, empty_diameter } = *package;
    let (full_lag, empty_lag) = (lag(full_diameter), lag(empty_diameter));
    let (full_twist, empty_twist) = (twist(full_diameter), twist(empty_diameter));
    let twist_step = Twist::from(full_twist.v() - empty_twist.v());
    TravellerResults { full_lag, empty_lag, full_twist, empty_twist, twist_step }
}

fn check(
    given: &RingFrameInputs<f64>,
    found: &RingFrameResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    if let Some(package) = &given.diameters {
        if package.empty_diameter.value() >= package.full_diameter.value() {
            refuse!(
                check,
                package.empty_diameter,
                "the tube is as thick as the full package; are full_diameter and empty_diameter \
                 exchanged?"
            );
        }
        let coil = yarn::twist_of_a_coil(package.empty_diameter);
        if coil.value() >= found.twist.twist.value() {
            refuse!(
                check,
                found.twist.twist,
                "with {} a ring spindle delivers more than it can wind on the empty tube, where a coil \
                 alone takes {}; write more twist or a thicker tube",
                check.say(found.twist.twist),
                check.say(coil)
            );
        }
        check.note(
            "Settings",
            "Unwinding over the end gives the whole twist back; from the side it does not.",
        );
    }
    check_lot(given.lot.as_ref(), check)?;
    say_last_doff(given.lot.as_ref(), given.machine.spindles, found.package_mass, "package", check);
    check_minding(&given.minding, &found.minding, check)
}
