//! Contraction: its two bases, and what twist takes from the length.

use std::f64::consts::PI;

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::counts::ENGLISH_COTTON;
use crate::quantity::{
    Contraction, Diameter, Length, Ratio, Twist, TwistFactor, TwistedContraction,
};

/// Contraction on the untwisted length, from that on the twisted.
#[formula(
    result = "k",
    sources = ["definition"],
    slips = ["taking the two for one: 10 % added to the twisted length is 9.09 % of the untwisted"]
)]
#[inverse(
    "Contraction on the twisted length, from that on the untwisted.",
    contraction_on_twisted(contraction "contraction on the untwisted length": -0.02..=0.15) -> contraction_on_twisted
        = contraction / (1.0 - contraction),
    slips = ["taking the two for one: 10 % of the untwisted length is 11.1 % of the twisted"]
)]
pub fn contraction_on_untwisted<N: Number>(
    /// contraction on the twisted length
    #[q("k_t", -0.02..=0.18)]
    contraction_on_twisted: TwistedContraction<N>,
) -> Contraction<N> {
    contraction_on_twisted / (1.0 + contraction_on_twisted)
}

/// Contraction of a cotton single in spinning, by an empirical rule, on the untwisted length.
#[formula(
    result = "k",
    sources = ["Spinning formula sheet"],
    limits = ["ring-spun cotton singles of common multipliers only; not woollen or worsted, not folding", "below a cotton multiplier of 1.85 (17.7 turns/cm √tex) the rule gives less than nothing and is refused"],
    slips = ["a multiplier of another count system", "using it for folding"]
)]
pub fn contraction_of_cotton_single<N: Number>(
    /// twist factor
    #[q("K", 20.0..=55.0)]
    twist_factor: TwistFactor<N>,
) -> Contraction<N> {
    let multiplier =
        (2.54 * twist_factor / ENGLISH_COTTON.sqrt()).named(["TM", "tpi/√Ne", "twist multiplier"]);
    let contraction = (2.67 * multiplier - 4.93) / 100.0;
    contraction.if_less(0.0, f64::NAN, contraction)
}

/// Contraction of a yarn whose fibres lie in ideal helices, on the untwisted length.
#[formula(
    result = "k",
    sources = ["memory"],
    limits = ["fibres that keep their length, evenly packed at one twist: real yarns stray from it", "filament and hard-twisted yarns come nearer to it than soft woollen"],
    slips = ["the radius for the diameter", "diameter and twist of different states"]
)]
pub fn helix_contraction<N: Number>(
    /// twist
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
    /// diameter of the yarn
    #[q("d", 0.03..=6.0)]
    yarn_diameter: Diameter<N>,
) -> Contraction<N> {
    let tangent = (PI / 1000.0 * yarn_diameter * twist).named([
        "tan α",
        "",
        "tangent of the angle of the fibres at the surface",
    ]);
    let secant = (1.0 + tangent.squared()).sqrt().named(["sec α", "", "secant of that angle"]);
    1.0 - 2.0 / (1.0 + secant)
}

/// Contraction of a two-fold staple yarn: the singles change their own, and lie aslant.
#[formula(
    result = "k",
    sources = ["Two-fold shrinkage", "definition"],
    limits = ["two-fold staple yarn; the source is read in its abstract only", "negative where the singles, losing twist, grow by more than the slope takes"],
    slips = ["leaving out that the singles change their own contraction when they are folded", "the outer diameter of the fold for that of the helix on which the axes of the singles lie"]
)]
pub fn two_fold_contraction<N: Number>(
    /// contraction of the singles before folding
    #[q("k_b", 0.0..=0.2)]
    single_contraction_before: Contraction<N>,
    /// contraction of the singles after folding
    #[q("k_a", 0.0..=0.2)]
    single_contraction_after: Contraction<N>,
    /// folding twist
    #[q("t_f", 20.0..=2000.0)]
    folding_twist: Twist<N>,
    /// diameter of the helix of the singles' axes, about that of one single
    #[q("D", 0.03..=6.0)]
    helix_diameter: Diameter<N>,
) -> Contraction<N> {
    let slope = (PI / 1000.0 * helix_diameter * folding_twist).named([
        "tan β",
        "",
        "tangent of the angle of the singles",
    ]);
    let cosine =
        (1.0 / (1.0 + slope.squared()).sqrt()).named(["cos β", "", "cosine of that angle"]);
    1.0 - (1.0 - single_contraction_after) / (1.0 - single_contraction_before) * cosine
}

/// Length of the untwisted strand in a length of twisted yarn.
#[formula(
    result = "L₀",
    sources = ["GATE solutions", "definition"],
    limits = ["contraction on the twisted length: the factor over 1 by which the strand is longer"],
    slips = ["dividing by 1 − k: that is for a contraction on the untwisted length"]
)]
pub fn untwisted_length<N: Number>(
    /// length of the twisted yarn
    #[q("L", 0.5..=1000000000.0)]
    twisted_length: Length<N>,
    /// contraction, on the twisted length
    #[q("k_t", -0.02..=0.18)]
    contraction_on_twisted: TwistedContraction<N>,
) -> Length<N> {
    twisted_length * (1.0 + contraction_on_twisted)
}

/// Share of the singles' twist left after folding the other way, with the slope of the fold.
#[formula(
    result = "q",
    sources = ["Two-fold shrinkage", "definition"],
    limits = ["folding opposite to the singles; a share below nothing, a single twisted the other way, is refused", "the source says it of a function of the singles' twist angle, tan θ × √(−ln cos θ × cos θ / (1 − cos θ)), which is the angle itself where that is small"],
    slips = ["the small-angle form (twist_left_in_single) for a steep fold: it leaves too little"]
)]
pub fn twist_left_ratio<N: Number>(
    /// twist of the singles before folding
    #[q("t_s", 20.0..=4000.0)]
    single_twist: Twist<N>,
    /// folding twist, of the other direction
    #[q("t_f", 20.0..=2000.0)]
    folding_twist: Twist<N>,
    /// diameter of the helix of the singles' axes, about that of one single
    #[q("D", 0.03..=6.0)]
    helix_diameter: Diameter<N>,
) -> Ratio<N> {
    let slope = (PI / 1000.0 * helix_diameter * folding_twist).named([
        "tan β",
        "",
        "tangent of the angle of the singles",
    ]);
    1.0 - folding_twist / single_twist / (1.0 + slope.squared())
}
