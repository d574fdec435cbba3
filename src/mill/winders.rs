//! Winders and reels: hanks in an hour, drums, the time of reeling.

use super::minding::ROUNDING;
use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{
    Count, Duration, Fraction, Frequency, HankRate, Length, LinearDensity, Mass, Speed,
};

/// Length that a drum winds in a time.
#[formula(
    result = "Y",
    sources = ["Winding efficiency", "definition"],
    limits = ["efficiency takes in creeling, doffing, knots and stops"],
    slips = ["minutes for hours", "efficiency on the time and again on the length"],
    cautions = ["machines"]
)]
pub fn length_wound<N: Number>(
    /// winding speed
    #[q("v", 20.0..=1500.0, memory)]
    winding_speed: Speed<N>,
    /// time
    #[q("τ", 0.1..=200.0)]
    time: Duration<N>,
    /// efficiency
    #[q("η", 0.3..=1.0)]
    efficiency: Fraction<N>,
) -> Length<N> {
    60.0 * winding_speed * time * efficiency
}

/// Mass that a drum winds in a time.
#[formula(
    result = "m",
    sources = ["Winding problems 2014"],
    limits = ["in the state of the count; efficiency takes in creeling, doffing, knots and stops"],
    slips = ["the count of the single where a folded yarn is wound"],
    cautions = ["machines"]
)]
pub fn mass_wound<N: Number>(
    /// winding speed
    #[q("v", 20.0..=1500.0, memory)]
    winding_speed: Speed<N>,
    /// time
    #[q("τ", 0.1..=200.0)]
    time: Duration<N>,
    /// efficiency
    #[q("η", 0.3..=1.0)]
    efficiency: Fraction<N>,
    /// count
    #[q("T", 1.0..=4000.0)]
    count: LinearDensity<N>,
) -> Mass<N> {
    let length = (60.0 * winding_speed * time * efficiency).named(["Y", "m", "length wound"]);
    length * count * 1e-6
}

/// Drums for a mass in a time, not yet rounded up to whole ones.
#[formula(
    result = "k",
    sources = ["Winding problems 2014"],
    limits = ["both masses for the same time"],
    slips = ["rounding down: part of a drum is a drum too"],
    cautions = ["machines"]
)]
pub fn drums_needed<N: Number>(
    /// mass to wind
    #[q("m_y", 1.0..=10000.0)]
    yarn_mass: Mass<N>,
    /// mass that a drum winds in that time
    #[q("m_k", 0.1..=500.0)]
    drum_mass: Mass<N>,
) -> Count<N> {
    yarn_mass / drum_mass
}

/// Hanks that a drum winds in an hour.
#[formula(
    result = "q_h",
    sources = ["Winding problems", "Winding efficiency"],
    limits = ["the hank of the count: 840 yards of cotton, 560 of worsted"],
    slips = ["the hank of another trade", "multiplying by the drums here and again in the time"],
    cautions = ["machines"]
)]
pub fn hank_rate<N: Number>(
    /// winding speed
    #[q("v", 20.0..=1500.0, memory)]
    winding_speed: Speed<N>,
    /// efficiency
    #[q("η", 0.3..=1.0)]
    efficiency: Fraction<N>,
    /// length of a hank
    #[q("l_h", 50.0..=20000.0)]
    hank_length: Length<N>,
) -> HankRate<N> {
    60.0 * winding_speed * efficiency / hank_length
}

/// Hanks that a drum has wound in an hour, from what all have wound.
#[formula(
    result = "q_h",
    sources = ["Winding efficiency"],
    limits = ["mass and count in one state, net of cones"],
    slips = ["dividing by the drums that stood idle the whole time", "the hank of another trade"]
)]
#[inverse(
    "Time to wind a mass, from the hanks that a drum winds in an hour.",
    time_for_hanks(yarn_mass, count, hank_length, hank_rate "hanks that a drum winds, with stops": 0.6..=600.0, drums) -> time = {
        let hanks = (1e6 * yarn_mass / (count * hank_length)).named(["N", "", "hanks in the mass of yarn"]);
        hanks / (hank_rate * drums)
    },
    sources = ["Winding problems"],
    limits = ["hanks in an hour with their efficiency; mass and count in one state"],
    slips = ["dividing by the efficiency once more: it is in the hanks"],
    cautions = ["machines"]
)]
pub fn hank_rate_from_mass<N: Number>(
    /// mass of yarn
    #[q("m_y", 1.0..=10000.0)]
    yarn_mass: Mass<N>,
    /// count
    #[q("T", 1.0..=4000.0)]
    count: LinearDensity<N>,
    /// length of a hank
    #[q("l_h", 50.0..=20000.0)]
    hank_length: Length<N>,
    /// time
    #[q("τ", 0.5..=200.0)]
    time: Duration<N>,
    /// drums at work
    #[q("k_n", 1.0..=600.0)]
    drums: Count<N>,
) -> HankRate<N> {
    let hanks =
        (1e6 * yarn_mass / (count * hank_length)).named(["N", "", "hanks in the mass of yarn"]);
    hanks / (time * drums)
}

/// Full packages that a mass of yarn makes; what is over fills no other.
#[formula(
    result = "p",
    sources = ["definition"],
    limits = ["net mass: without the tube or cone", "each drum makes its own packages: a lot shared over many drums leaves a rest on each"],
    slips = ["the mass with its cone", "rounding up: the last one is not full"]
)]
pub fn full_packages<N: Number>(
    /// yarn wound
    #[q("m_y", 0.05..=10000.0)]
    yarn_mass: Mass<N>,
    /// yarn on a full package
    #[q("g", 0.02..=10.0)]
    package_mass: Mass<N>,
) -> Count<N> {
    (yarn_mass / package_mass).round_down(ROUNDING)
}

/// Doffs of a reel for a number of hanks; the last may not be full.
#[formula(
    result = "D",
    sources = ["definition"],
    limits = ["hanks side by side on all reels together, where several work in step"],
    slips = ["rounding down"]
)]
pub fn reel_doffs<N: Number>(
    /// hanks to reel
    #[q("h", 1.0..=20000.0)]
    hanks: Count<N>,
    /// hanks reeled side by side
    #[q("p", 1.0..=200.0)]
    positions: Count<N>,
) -> Count<N> {
    (hanks / positions).round_up(ROUNDING)
}

/// Time of a reel for a number of doffs.
#[formula(
    result = "τ",
    sources = ["definition"],
    limits = ["one reel; tying, lacing and taking off are in the time between doffs, so no efficiency comes on top"],
    slips = ["leaving out the time between doffs: on a reel it is often more than the reeling", "an efficiency on top of that time"],
    cautions = ["machines"]
)]
pub fn reeling_time<N: Number>(
    /// doffs
    #[q("D", 1.0..=5000.0)]
    doffs: Count<N>,
    /// turns of the reel for a hank
    #[q("z_r", 10.0..=2000.0)]
    reel_turns: Count<N>,
    /// speed of the reel
    #[q("n_r", 20.0..=400.0)]
    reel_speed: Frequency<N>,
    /// time between doffs: tying, lacing, taking off, piecing up
    #[q("τ_c", 0.0..=0.5)]
    change_time: Duration<N>,
) -> Duration<N> {
    let running = (reel_turns / (60.0 * reel_speed)).named([
        "τ_r",
        "h",
        "time to reel a doff, without stops",
    ]);
    doffs * (running + change_time)
}
