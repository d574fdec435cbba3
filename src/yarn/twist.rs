//! Twist: factor, machine settings, folding against single.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::counts::ENGLISH_COTTON;
use crate::quantity::{
    Count, Frequency, Length, LinearDensity, Ratio, Shrinkage, Speed, Twist, TwistFactor,
};

/// Turns in a metre for a turn in an inch.
const INCH: f64 = 0.0254;

/// How hard a yarn is twisted for its count.
#[formula(
    result = "K",
    sources = ["Nasmith 1890", "Balasubramanian"],
    limits = ["compares yarns of one fibre; not for multifilament", "count and twist of the yarn in one state"],
    slips = ["multiplying by the count instead of its root", "comparing factors of different count systems"]
)]
#[inverse(
    "The twist that a yarn needs for a twist factor.",
    twist_for_factor(twist_factor: 5.0..=80.0, count) -> twist = 100.0 * twist_factor / count.sqrt(),
    sources = ["Nasmith 1890", "Howard and Bullough 1909"],
    limits = ["which factor suits is for the mill to say; handbook tables differ by machine and date"],
    slips = ["using a multiplier of another count system", "proportion instead of square root when the count changes"]
)]
pub fn twist_factor<N: Number>(
    /// twist
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
    /// yarn count
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
) -> TwistFactor<N> {
    twist / 100.0 * count.sqrt()
}

/// Twist of ring-spun cotton by a rule of 1885: the multiplier's twist, less 0.2 turns in an inch for
/// each count below 30, and more by as much for each above.
///
/// The rule's multipliers are 5 for warp, 4 for filling of the frame, 3.25 for filling of the mule.
#[formula(
    result = "t",
    sources = ["Lincoln 1885"],
    limits = ["American ring frames of 1885, English cotton counts; its table goes to the nearest half turn", "a rule of one maker: the mill's own twist comes first"],
    slips = ["multiplier × √count alone: the rule takes 2.4 turns in an inch from it at 18s"]
)]
pub fn twist_by_lincoln<N: Number>(
    /// twist multiplier
    #[q("K", 25.0..=60.0)]
    twist_factor: TwistFactor<N>,
    /// yarn count
    #[q("T", 5.0..=120.0)]
    count: LinearDensity<N>,
) -> Twist<N> {
    let cotton = (ENGLISH_COTTON / count).named(["N", "Ne", "count"]);
    100.0 * twist_factor / count.sqrt() - 0.2 * (30.0 - cotton) / INCH
}

/// The twist that keeps a yarn as hard when its count is changed.
#[formula(
    result = "t₂",
    sources = ["Howard and Bullough 1909", "definition"],
    limits = ["one fibre and one machine; the twist factor stays"],
    slips = ["twist in proportion to the count instead of to its root"]
)]
pub fn twist_for_new_count<N: Number>(
    /// twist now
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
    /// count now
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
    /// count wanted
    #[q("T₂", 1.0..=2000.0)]
    new_count: LinearDensity<N>,
) -> Twist<N> {
    twist * (count / new_count).sqrt()
}

/// The twist when a yarn of one count is to be twisted harder or softer.
#[formula(
    result = "t₂",
    sources = ["definition"],
    limits = ["the count stays; more twist also makes the yarn a little shorter and so heavier"],
    slips = ["two factors of different count systems"]
)]
pub fn twist_for_new_factor<N: Number>(
    /// twist now
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
    /// twist factor now
    #[q("K", 5.0..=80.0)]
    twist_factor: TwistFactor<N>,
    /// twist factor wanted
    #[q("K₂", 5.0..=80.0)]
    new_twist_factor: TwistFactor<N>,
) -> Twist<N> {
    twist * new_twist_factor / twist_factor
}

/// Twist put in by a turning spindle at a delivery.
#[formula(
    result = "t",
    sources = ["Rieter", "Woodhouse and Kilgour 1921"],
    limits = ["continuous spinning and twisting: flyer, and ring once the yarn is unwound over the end; a two-for-one spindle puts in twice as much"],
    slips = ["metres and centimetres, minutes and seconds"]
)]
pub fn twist_from_speed<N: Number>(
    /// spindle speed
    #[q("n_s", 100.0..=25000.0)]
    spindle_speed: Frequency<N>,
    /// delivery
    #[q("v", 0.5..=200.0)]
    delivery_speed: Speed<N>,
) -> Twist<N> {
    spindle_speed / delivery_speed
}

/// Twist that a change wheel gives, where twist falls as teeth rise.
#[formula(
    result = "t",
    sources = ["Howard and Bullough 1909"],
    limits = ["for a wheel in the place where twist goes as 1/teeth; read the constant off the machine or its plate"],
    slips = ["taking twist as proportional to the teeth"]
)]
#[inverse(
    "The change wheel that would give a wanted twist, where twist falls as teeth rise.",
    wheel_for_twist(twist_constant, twist "twist wanted": 20.0..=4000.0) -> teeth
        = twist_constant / twist,
    limits = ["a wheel of the mill's own stands nearest above or below"],
    slips = ["rounding to a wheel that nobody owns"],
    cautions = ["wheels"]
)]
pub fn twist_from_wheel<N: Number>(
    /// twist constant: twist times teeth
    #[q("C_t", 100.0..=100000.0)]
    twist_constant: Twist<N>,
    /// teeth of the wheel
    #[q("z", 12.0..=150.0)]
    teeth: Count<N>,
) -> Twist<N> {
    twist_constant / teeth
}

/// Folding twist over singles twist.
#[formula(
    result = "q",
    sources = ["Howard and Bullough 1909", "Twist per inch", "memory"],
    limits = ["a balanced two-fold knitting yarn lies about 0.5 to 0.7 (from memory): judge by a washed loop hanging freely, not by this number", "hand test: a single that is let fold back on itself shows about half its twist; another habit is two thirds (from memory): take it as a range and say which rule"],
    slips = ["the twist per length of the single before folding against that after"]
)]
pub fn folding_twist_ratio<N: Number>(
    /// folding twist
    #[q("t_f", 20.0..=2000.0)]
    folding_twist: Twist<N>,
    /// twist of the singles before folding
    #[q("t_s", 20.0..=4000.0)]
    single_twist: Twist<N>,
) -> Ratio<N> {
    folding_twist / single_twist
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
    #[q("t_s", 20.0..=4000.0)]
    single_twist: Twist<N>,
    /// folding twist, of the other direction
    #[q("t_f", 20.0..=2000.0)]
    folding_twist: Twist<N>,
) -> Twist<N> {
    single_twist - folding_twist
}

/// Turns per length after a yarn has shrunk: the turns stay, the length goes.
#[formula(
    result = "t₂",
    sources = ["definition"],
    slips = ["multiplying by 1 + s instead of dividing by 1 − s"]
)]
pub fn twist_after_shrinkage<N: Number>(
    /// twist before
    #[q("t₁", 20.0..=4000.0)]
    twist_before: Twist<N>,
    /// shrinkage in length
    #[q("s", -0.05..=0.2)]
    shrinkage: Shrinkage<N>,
) -> Twist<N> {
    twist_before / (1.0 - shrinkage)
}

/// Twist counted by untwisting a length until its fibres, or its singles, lie side by side.
#[formula(
    result = "t",
    sources = ["ISO 2061"],
    limits = ["on the length between the clamps before untwisting; a tension of 0.5 cN/tex, less where the yarn stretches; discard the first metres of a package"],
    slips = ["the length after untwisting: the yarn has grown longer", "one test for the lot: twist runs to the thin places"]
)]
pub fn twist_counted<N: Number>(
    /// turns to untwist it
    #[q("n", 1.0..=2000.0)]
    untwisting_turns: Ratio<N>,
    /// length between the clamps
    #[q("L", 0.01..=1.0)]
    gauge_length: Length<N>,
) -> Twist<N> {
    untwisting_turns / gauge_length
}

/// Twist by untwisting a single and twisting it up again to the same length.
#[formula(
    result = "t",
    sources = ["memory"],
    limits = ["for singles whose fibres cannot be seen lying straight; the turns out and in are taken as equal, which they are not quite"],
    slips = ["forgetting to halve the turns"]
)]
pub fn twist_by_retwisting<N: Number>(
    /// turns out and in again, all together
    #[q("n", 2.0..=4000.0)]
    retwisting_turns: Ratio<N>,
    /// length between the clamps
    #[q("L", 0.01..=1.0)]
    gauge_length: Length<N>,
) -> Twist<N> {
    retwisting_turns / (2.0 * gauge_length)
}

/// Folding twist from the bumps that are seen along a folded yarn: each turn shows one for each ply.
#[formula(
    result = "t_f",
    sources = ["Twist per inch"],
    limits = ["plies of one thickness; the yarn neither stretched nor slack"],
    slips = ["taking the bumps for turns"]
)]
pub fn folding_twist_from_bumps<N: Number>(
    /// bumps counted
    #[q("b", 1.0..=500.0)]
    bumps: Count<N>,
    /// length over which they were counted
    #[q("L", 0.01..=0.5)]
    gauge_length: Length<N>,
    /// plies
    #[q("N", 2.0..=12.0)]
    ends: Count<N>,
) -> Twist<N> {
    bumps / (ends * gauge_length)
}
