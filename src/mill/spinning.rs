//! Spindles: what they deliver, the twist of rubbing surfaces and of travellers, broken ends.

use std::f64::consts::PI;

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{
    Count, Duration, Fraction, Frequency, Length, LinearDensity, MassRate, Ratio, Speed, Twist,
};

/// Draws of the mule in a minute.
#[formula(
    result = "r",
    sources = ["definition"],
    limits = ["running; stops are extra"],
    slips = ["the time of the outward run for that of the whole draw"],
    cautions = ["mule"]
)]
pub fn draw_rate<N: Number>(
    /// time of a draw, out and in
    #[q("τ_d", 0.003..=0.02)]
    cycle: Duration<N>,
) -> Frequency<N> {
    1.0 / (60.0 * cycle)
}

/// Delivery of a spindle for a twist.
#[formula(
    result = "v",
    sources = ["definition"],
    limits = ["one turn of twist a revolution on ring, flyer and uptwister, two on a two-for-one", "without slip; contraction in twisting not included"],
    slips = ["one turn a revolution on a two-for-one spindle: half the true delivery"],
    cautions = ["machines"]
)]
pub fn delivery_for_twist<N: Number>(
    /// spindle speed
    #[q("n_s", 500.0..=25000.0)]
    spindle_speed: Frequency<N>,
    /// turns of twist in a revolution
    #[q("q", 1.0..=2.0)]
    turns_per_revolution: Count<N>,
    /// twist
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
) -> Speed<N> {
    turns_per_revolution * spindle_speed / twist
}

/// What a frame of spindles spins in an hour.
#[formula(
    result = "Q",
    sources = ["definition", "Spinning cards"],
    limits = ["one turn of twist a revolution", "in the state of the count; efficiency takes in doffing, piecing and idle spindles"],
    slips = ["taking idle spindles off again: they are in the efficiency", "multiplying by the twist"],
    cautions = ["machines"]
)]
pub fn spindle_frame_output<N: Number>(
    /// spindles
    #[q("k_n", 1.0..=1200.0)]
    spindles: Count<N>,
    /// spindle speed
    #[q("n_s", 500.0..=25000.0)]
    spindle_speed: Frequency<N>,
    /// twist
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
    /// count of the yarn delivered
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
    /// efficiency
    #[q("η", 0.5..=1.0)]
    efficiency: Fraction<N>,
) -> MassRate<N> {
    let delivery = (spindle_speed / twist).named(["v", "m/min", "yarn delivered"]);
    60e-6 * spindles * delivery * count * efficiency
}

/// Mass of yarn in an hour, from the length delivered in a minute.
#[formula(
    result = "Q",
    sources = ["definition"],
    limits = ["in the state of the count; the speed is that of all spindles, its stops in it"],
    slips = ["minutes for hours", "an efficiency on top of the one that is in the speed"]
)]
pub fn output_of_yarn<N: Number>(
    /// yarn delivered
    #[q("v", 1.0..=100000.0)]
    output_speed: Speed<N>,
    /// count
    #[q("T", 1.0..=4000.0)]
    count: LinearDensity<N>,
) -> MassRate<N> {
    60e-6 * output_speed * count
}

/// Hanks that a spindle delivers in a time.
///
/// With turns in an inch and the cotton hank of 840 yards the old rule follows: rpm × hours over
/// 504 × tpi, for 504 is 36 × 840/60.
#[formula(
    result = "h",
    sources = ["Spinning cards"],
    limits = ["the constant 504 belongs to the cotton hank of 840 yards and to turns in an inch; that of worsted (560 yards) is 336"],
    slips = ["the constant of cotton for another hank", "efficiency here and again in the hours"],
    cautions = ["machines"]
)]
pub fn hanks_of_spindle<N: Number>(
    /// spindle speed
    #[q("n_s", 500.0..=25000.0)]
    spindle_speed: Frequency<N>,
    /// twist
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
    /// time
    #[q("τ", 0.5..=200.0)]
    time: Duration<N>,
    /// efficiency
    #[q("η", 0.5..=1.0)]
    efficiency: Fraction<N>,
    /// length of a hank
    #[q("l_h", 50.0..=20000.0)]
    hank_length: Length<N>,
) -> Ratio<N> {
    60.0 * spindle_speed * time * efficiency / (twist * hank_length)
}

/// Spindle speed from the speed of the traveller at two diameters of winding.
#[formula(
    result = "n_s",
    sources = ["Collegedunia", "definition"],
    limits = ["the same delivery at both diameters: what is wound is (n_s − n) × π × d at each", "the traveller is slower at the small diameter"],
    slips = ["taking the mean of the two for the speed of the spindle"],
    cautions = ["machines"]
)]
pub fn spindle_speed_from_travellers<N: Number>(
    /// traveller speed at the large diameter
    #[q("n₁", 500.0..=25000.0)]
    speed_at_large: Frequency<N>,
    /// large diameter
    #[q("d₁", 0.03..=0.3)]
    large_diameter: Length<N>,
    /// traveller speed at the small diameter
    #[q("n₂", 500.0..=25000.0)]
    speed_at_small: Frequency<N>,
    /// small diameter
    #[q("d₂", 0.01..=0.1)]
    small_diameter: Length<N>,
) -> Frequency<N> {
    let spindle = (speed_at_large * large_diameter - speed_at_small * small_diameter)
        / (large_diameter - small_diameter);
    if_slower_at_small(speed_at_large, large_diameter, speed_at_small, small_diameter, spindle)
}

/// A figure of the spindle, where the traveller is slower at the smaller diameter: else nothing is wound,
/// or arguments were exchanged.
#[inline(always)]
fn if_slower_at_small<N: Number>(n1: V<N>, d1: V<N>, n2: V<N>, d2: V<N>, figure: V<N>) -> V<N> {
    d2.if_less(d1, n2.if_less(n1, figure, f64::NAN), f64::NAN)
}

/// Twist of a ring yarn from the speed of the traveller at two diameters of winding.
#[formula(
    result = "t",
    sources = ["Collegedunia", "definition"],
    limits = ["nominal twist: turns of the spindle over delivery, as the yarn has it after unwinding over the end", "the traveller is slower at the small diameter"],
    slips = ["dividing by the speed of the traveller less that of the spindle", "metres of delivery with millimetres of diameter"],
    cautions = ["machines"]
)]
pub fn twist_from_travellers<N: Number>(
    /// traveller speed at the large diameter
    #[q("n₁", 500.0..=25000.0)]
    speed_at_large: Frequency<N>,
    /// large diameter
    #[q("d₁", 0.03..=0.3)]
    large_diameter: Length<N>,
    /// traveller speed at the small diameter
    #[q("n₂", 500.0..=25000.0)]
    speed_at_small: Frequency<N>,
    /// small diameter
    #[q("d₂", 0.01..=0.1)]
    small_diameter: Length<N>,
) -> Twist<N> {
    let spindle = ((speed_at_large * large_diameter - speed_at_small * small_diameter)
        / (large_diameter - small_diameter))
        .named(["n_s", "/min", "speed of the spindle"]);
    let delivery =
        (PI * large_diameter * (spindle - speed_at_large)).named(["v", "m/min", "yarn delivered"]);
    let twist = spindle / delivery;
    if_slower_at_small(speed_at_large, large_diameter, speed_at_small, small_diameter, twist)
}

/// Turns in a minute of a yarn that rolls on a drum, a disc or the top of a flyer.
#[formula(
    result = "n_y",
    sources = ["GATE solutions"],
    limits = ["rolling without slip: what slips is in the efficiency of the twist"],
    slips = ["the diameters the wrong way round: the thin one turns faster"],
    cautions = ["machines"]
)]
pub fn rolled_speed<N: Number>(
    /// speed of the drum
    #[q("n", 100.0..=20000.0)]
    drum_speed: Frequency<N>,
    /// diameter of the drum
    #[q("D", 0.005..=0.3)]
    drum_diameter: Length<N>,
    /// diameter of the yarn
    #[q("d", 0.00005..=0.005)]
    yarn_diameter: Length<N>,
) -> Frequency<N> {
    drum_speed * drum_diameter / yarn_diameter
}

/// Twist that a yarn has while a false twister turns it.
#[formula(
    result = "t",
    sources = ["GATE solutions"],
    limits = ["before the twister; behind it the yarn has none of it left"],
    slips = ["looking for it in the yarn that is delivered", "leaving out the slip"],
    cautions = ["machines"]
)]
pub fn false_twist<N: Number>(
    /// turns of the yarn in a minute
    #[q("n_y", 100.0..=5000000.0)]
    yarn_turning_speed: Frequency<N>,
    /// delivery
    #[q("v", 1.0..=1000.0)]
    delivery_speed: Speed<N>,
    /// share of the turns that the yarn takes on
    #[q("η", 0.1..=1.0)]
    twist_efficiency: Fraction<N>,
) -> Twist<N> {
    yarn_turning_speed * twist_efficiency / delivery_speed
}

/// Ends that break, for a thousand spindles running an hour.
#[formula(
    result = "e_b",
    sources = ["definition"],
    limits = ["spindle hours are those run; woollen mules and rings have 50 to 200 (from memory)"],
    slips = ["a rate for a hundred spindle hours taken for one for a thousand"],
    cautions = ["machines"]
)]
pub fn end_break_rate<N: Number>(
    /// ends broken
    #[q("b", 1.0..=5000.0)]
    breaks: Count<N>,
    /// spindles
    #[q("k_n", 1.0..=1200.0)]
    spindles: Count<N>,
    /// time
    #[q("τ", 0.5..=200.0)]
    time: Duration<N>,
) -> Ratio<N> {
    1000.0 * breaks / (spindles * time)
}

/// Share of the spindles that stand idle because ends are broken.
#[formula(
    result = "i",
    sources = ["Balasubramanian breaks"],
    limits = ["ends are pieced on a round; three quarters of the time of a round is lost for each", "a rate for a hundred spindle hours is a tenth of that for a thousand: 10 there is 100 here"],
    slips = ["a rate for a hundred spindle hours", "taking them off the output again where the efficiency was measured with them"],
    cautions = ["machines"]
)]
pub fn spindles_idle<N: Number>(
    /// ends broken in a thousand spindle hours
    #[q("e_b", 5.0..=500.0, memory)]
    break_rate: Ratio<N>,
    /// time of a round
    #[q("τ_p", 0.02..=1.0)]
    patrol_time: Duration<N>,
) -> Fraction<N> {
    0.75 * (break_rate / 1000.0) * patrol_time
}
