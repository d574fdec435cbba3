//! Twist: factor, machine settings, folding against single.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{
    Count, Frequency, LinearDensity, Ratio, Shrinkage, Speed, Twist, TwistFactor,
};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[
    &TWIST_FACTOR,
    &TWIST_FOR_FACTOR,
    &TWIST_FROM_SPEED,
    &TWIST_FROM_WHEEL,
    &WHEEL_FOR_TWIST,
    &FOLDING_TWIST_RATIO,
    &TWIST_LEFT_IN_SINGLE,
    &TWIST_AFTER_SHRINKAGE,
];

/// How hard a yarn is twisted for its count.
#[formula(
    result = "K",
    sources = ["Nasmith 1890", "Balasubramanian"],
    limits = ["compares yarns of one fibre; not for multifilament", "count and twist of the yarn in one state"],
    slips = ["multiplying by the count instead of its root", "comparing factors of different count systems"]
)]
pub fn twist_factor<N: Number>(
    /// twist
    #[q("t", 20.0..=3000.0)]
    twist: Twist<N>,
    /// yarn count
    #[q("T", 2.0..=2000.0)]
    count: LinearDensity<N>,
) -> TwistFactor<N> {
    twist / 100.0 * count.sqrt()
}

/// The twist that a yarn needs for a twist factor.
#[formula(
    result = "t",
    sources = ["Nasmith 1890", "Howard and Bullough 1909"],
    limits = ["which factor suits is for the mill to say; handbook tables differ by machine and date"],
    slips = ["using a multiplier of another count system", "proportion instead of square root when the count changes"]
)]
pub fn twist_for_factor<N: Number>(
    /// twist factor
    #[q("K", 5.0..=80.0)]
    factor: TwistFactor<N>,
    /// yarn count
    #[q("T", 2.0..=2000.0)]
    count: LinearDensity<N>,
) -> Twist<N> {
    100.0 * factor / count.sqrt()
}

/// Twist put in by a turning spindle at a delivery.
#[formula(
    result = "t",
    sources = ["Rieter", "Woodhouse and Kilgour 1921"],
    limits = ["continuous spinning and twisting; a two-for-one spindle puts in twice as much"],
    slips = ["metres and centimetres, minutes and seconds"]
)]
pub fn twist_from_speed<N: Number>(
    /// spindle speed
    #[q("n", 500.0..=20000.0)]
    spindle: Frequency<N>,
    /// delivery
    #[q("v", 1.0..=200.0)]
    delivery: Speed<N>,
) -> Twist<N> {
    spindle / delivery
}

/// Twist that a change wheel gives, where twist falls as teeth rise.
#[formula(
    result = "t",
    sources = ["Howard and Bullough 1909"],
    limits = ["for a wheel in the place where twist goes as 1/teeth; read the constant off the machine or its plate"],
    slips = ["taking twist as proportional to the teeth"]
)]
pub fn twist_from_wheel<N: Number>(
    /// twist constant: twist times teeth
    #[q("C", 100.0..=100000.0)]
    constant: Twist<N>,
    /// teeth of the wheel
    #[q("z", 12.0..=150.0)]
    teeth: Count<N>,
) -> Twist<N> {
    constant / teeth
}

/// The change wheel that would give a wanted twist, where twist falls as teeth rise.
#[formula(
    result = "z",
    sources = ["Howard and Bullough 1909"],
    limits = ["a wheel of the mill's own stands nearest above or below", "stop the machine and follow its maker before a wheel is changed"],
    slips = ["rounding to a wheel that nobody owns"]
)]
pub fn wheel_for_twist<N: Number>(
    /// twist constant: twist times teeth
    #[q("C", 100.0..=100000.0)]
    constant: Twist<N>,
    /// twist wanted
    #[q("t", 20.0..=3000.0)]
    twist: Twist<N>,
) -> Count<N> {
    constant / twist
}

/// Folding twist over singles twist.
#[formula(
    result = "q",
    sources = ["Howard and Bullough 1909", "memory"],
    limits = ["a balanced two-fold knitting yarn lies about 0.5 to 0.7 (from memory): judge it on a washed, freely hung loop, never on the figure alone"],
    slips = ["the twist per length of the single before folding against that after"]
)]
pub fn folding_twist_ratio<N: Number>(
    /// folding twist
    #[q("t_f", 20.0..=2000.0)]
    folding: Twist<N>,
    /// twist of the singles before folding
    #[q("t_s", 20.0..=3000.0)]
    single: Twist<N>,
) -> Ratio<N> {
    folding / single
}

/// Twist left in the singles after folding the other way, for small helix angles.
#[formula(
    result = "t_l",
    sources = ["definition", "memory"],
    limits = ["folding opposite to the singles; in the same direction the twists add", "contraction and the slope of the ply leave a little more"],
    slips = ["adding where the folding goes the other way"]
)]
pub fn twist_left_in_single<N: Number>(
    /// twist of the singles before folding
    #[q("t_s", 20.0..=3000.0)]
    single: Twist<N>,
    /// folding twist, of the other direction
    #[q("t_f", 20.0..=2000.0)]
    folding: Twist<N>,
) -> Twist<N> {
    single - folding
}

/// Turns per length after a yarn has shrunk: the turns stay, the length goes.
#[formula(
    result = "t₂",
    sources = ["definition"],
    slips = ["multiplying by 1 + s instead of dividing by 1 − s"]
)]
pub fn twist_after_shrinkage<N: Number>(
    /// twist before
    #[q("t", 20.0..=3000.0)]
    twist: Twist<N>,
    /// shrinkage in length
    #[q("s", -0.05..=0.2)]
    shrinkage: Shrinkage<N>,
) -> Twist<N> {
    twist / (1.0 - shrinkage)
}
