//! Running time of machines.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{
    Count, Duration, Fraction, Frequency, Length, LinearDensity, Mass, MassRate, Sett, Speed, Twist,
};

/// Time for a mass at a rate.
#[formula(
    result = "τ",
    sources = ["definition"],
    limits = ["mass and rate in one state"],
    slips = ["a rate in oil for a mass that is clean and dry"]
)]
pub fn time_for_mass<N: Number>(
    /// mass to make
    #[q("m", 0.1..=10000.0)]
    mass: Mass<N>,
    /// rate
    #[q("Q", 0.1..=1000.0)]
    output: MassRate<N>,
) -> Duration<N> {
    mass / output
}

/// Time for a length at a speed.
#[formula(
    result = "τ",
    sources = ["definition"],
    slips = ["minutes for hours"]
)]
pub fn time_for_length<N: Number>(
    /// length to make
    #[q("L", 1.0..=10000000.0)]
    length: Length<N>,
    /// speed, all spindles or drums together
    #[q("v", 0.1..=100000.0)]
    output_speed: Speed<N>,
) -> Duration<N> {
    length / (60.0 * output_speed)
}

/// Mass of yarn that a spindle delivers in a time, from its front roller.
#[formula(
    result = "m",
    sources = ["Howard and Bullough 1909"],
    limits = ["in the state of the count; efficiency takes in doffing and stops; contraction in twisting not included"],
    slips = ["the diameter of the roller for its circumference", "the count of the single where a folded yarn is delivered"]
)]
pub fn mass_of_spindle<N: Number>(
    /// speed of the front roller
    #[q("n", 10.0..=500.0)]
    roller_speed: Frequency<N>,
    /// circumference of the front roller
    #[q("C", 0.05..=0.5)]
    roller_circumference: Length<N>,
    /// time
    #[q("τ", 0.5..=200.0)]
    time: Duration<N>,
    /// efficiency
    #[q("η", 0.5..=1.0)]
    efficiency: Fraction<N>,
    /// count of the yarn delivered
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
) -> Mass<N> {
    let length = (60.0 * roller_speed * time * roller_circumference * efficiency).named([
        "Y",
        "m",
        "length delivered",
    ]);
    length * count * 1e-6
}

/// Yarn that a twister delivers, all spindles together.
#[formula(
    result = "v",
    sources = ["Rieter", "practice"],
    limits = ["one turn a revolution; a two-for-one spindle gives twice the length"],
    slips = ["multiplying by the twist"]
)]
pub fn twister_output_speed<N: Number>(
    /// spindles
    #[q("k_n", 1.0..=600.0)]
    spindles: Count<N>,
    /// spindle speed
    #[q("n_s", 500.0..=15000.0)]
    spindle_speed: Frequency<N>,
    /// twist
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
    /// efficiency
    #[q("η", 0.5..=1.0)]
    efficiency: Fraction<N>,
) -> Speed<N> {
    spindles * spindle_speed / twist * efficiency
}

/// Time of a loom for a number of picks.
#[formula(
    result = "τ",
    sources = ["GATE solutions", "Collegedunia"],
    slips = ["multiplying by the efficiency instead of dividing"]
)]
#[inverse(
    "Picks that a loom puts in in a time.",
    picks_in_time(loom_speed, time: 0.1..=200.0, efficiency) -> picks
        = 60.0 * loom_speed * time * efficiency,
    limits = ["efficiency takes in every stop"],
    slips = ["stops taken off the time and the efficiency as well", "hours with picks in a minute"],
    cautions = ["loom"]
)]
pub fn loom_time<N: Number>(
    /// picks to weave
    #[q("P", 100.0..=10000000.0)]
    picks: Count<N>,
    /// picks in a minute
    #[q("r_l", 20.0..=600.0)]
    loom_speed: Frequency<N>,
    /// efficiency
    #[q("η", 0.3..=1.0)]
    efficiency: Fraction<N>,
) -> Duration<N> {
    picks / (60.0 * loom_speed * efficiency)
}

/// Cloth that a loom weaves.
#[formula(
    result = "v",
    sources = ["Collegedunia"],
    limits = ["length under the tension at which the picks were counted"],
    slips = ["picks in an inch with metres"]
)]
pub fn loom_delivery_speed<N: Number>(
    /// picks in a minute
    #[q("r_l", 20.0..=600.0)]
    loom_speed: Frequency<N>,
    /// picks in the cloth
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// efficiency
    #[q("η", 0.3..=1.0)]
    efficiency: Fraction<N>,
) -> Speed<N> {
    loom_speed * efficiency / (100.0 * weft_sett)
}
