//! Plain cloth of flattened threads, after Kemp: the section of a thread is a race-track.
//!
//! A section a wide and b thick is a straight part a − b with a half circle at either end. The thread
//! that crosses it runs flat over the straight part; the rest is Peirce's cloth of round threads b thick.

use super::peirce::if_it_fits;
use super::thread::{FromSpacing, angle, height, length};
use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Crimp, Diameter, Ratio, Sett, Thickness};

/// Spacing of flattened threads without the straight part of their section.
#[formula(
    result = "p′",
    sources = ["Kemp 1958"],
    limits = ["a thread is at least as wide as it is thick", "the spacing is more than the straight part"],
    slips = ["taking off the whole width"]
)]
pub fn racetrack_spacing<N: Number>(
    /// spacing of the threads crossed
    #[q("p", 0.1..=10.0)]
    spacing: Thickness<N>,
    /// their width
    #[q("a", 0.05..=4.0)]
    thread_width: Diameter<N>,
    /// their thickness
    #[q("b", 0.05..=3.0)]
    thread_thickness: Diameter<N>,
) -> Thickness<N> {
    let flat = thread_width - thread_thickness;
    flat.if_less(0.0, f64::NAN, spacing - flat)
}

/// Height of the wave of a thread over flattened threads, by the rule of the root.
#[formula(
    result = "h",
    sources = ["Kemp 1958"],
    limits = ["a rule, with Peirce's factor 4/3", "a thread is at least as wide as it is thick"],
    slips = ["the spacing without its straight part in both places"]
)]
pub fn racetrack_height_by_rule<N: Number>(
    /// spacing of the threads crossed
    #[q("p", 0.1..=10.0)]
    spacing: Thickness<N>,
    /// crimp
    #[q("c", 0.0..=0.3)]
    crimp: Crimp<N>,
    /// width of the threads crossed
    #[q("a", 0.05..=4.0)]
    thread_width: Diameter<N>,
    /// their thickness
    #[q("b", 0.05..=3.0)]
    thread_thickness: Diameter<N>,
    /// factor
    #[q("k", 1.3..=1.45)]
    rule_factor: Ratio<N>,
) -> Thickness<N> {
    let flat = thread_width - thread_thickness;
    flat.if_less(0.0, f64::NAN, rule_factor * (crimp * spacing * (spacing - flat)).sqrt())
}

/// Crimp of the weft in plain cloth of flattened threads, from that of the warp.
#[formula(
    result = "c₂",
    sources = ["Kemp 1958", "Peirce 1937", "Balasubramanian"],
    limits = ["sections as they are in the cloth, from a cut through it; plain weave", "width and thickness alike: round threads, weft_crimp; a thread less wide than thick is refused"],
    slips = ["the diameter of the loose yarn for the width in the cloth"]
)]
pub fn racetrack_weft_crimp<N: Number>(
    /// ends
    #[q("n₁", 1.0..=60.0)]
    warp_sett: Sett<N>,
    /// picks
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// crimp of the warp
    #[q("c₁", 0.0..=0.3)]
    warp_crimp: Crimp<N>,
    /// width of the warp thread
    #[q("a₁", 0.05..=4.0)]
    warp_thread_width: Diameter<N>,
    /// thickness of the warp thread
    #[q("b₁", 0.05..=3.0)]
    warp_thread_thickness: Diameter<N>,
    /// width of the weft thread
    #[q("a₂", 0.05..=4.0)]
    weft_thread_width: Diameter<N>,
    /// thickness of the weft thread
    #[q("b₂", 0.05..=3.0)]
    weft_thread_thickness: Diameter<N>,
) -> Crimp<N> {
    let thicknesses = (warp_thread_thickness + weft_thread_thickness).named([
        "D",
        "mm",
        "sum of the two thicknesses",
    ]);
    let flat2 = (weft_thread_width - weft_thread_thickness).named([
        "f₂",
        "mm",
        "flat part of a weft thread",
    ]);
    let p2 = (10.0 / weft_sett).named(["p₂", "mm", "spacing of the picks"]);
    let round2 = (p2 - flat2).named(["p₂′", "mm", "spacing of the picks without their flat part"]);
    let l1 = (p2 * (1.0 + warp_crimp) - flat2).named([
        "l₁′",
        "mm",
        "length of warp between picks without the flat part",
    ]);
    let theta1 = V::solved::<FromSpacing, 3>(
        [l1, round2, thicknesses],
        ["θ₁", "rad", "weave angle of the warp"],
    );
    let h1 = height(theta1, l1, thicknesses).named(["h₁", "mm", "height of the warp's wave"]);
    let flat1 = (warp_thread_width - warp_thread_thickness).named([
        "f₁",
        "mm",
        "flat part of a warp thread",
    ]);
    let p1 = (10.0 / warp_sett).named(["p₁", "mm", "spacing of the ends"]);
    let round1 = (p1 - flat1).named(["p₁′", "mm", "spacing of the ends without their flat part"]);
    let theta2 = angle(thicknesses - h1, round1, thicknesses).named([
        "θ₂",
        "rad",
        "weave angle of the weft",
    ]);
    let l2 = (length(theta2, round1, thicknesses) + flat1).named([
        "l₂",
        "mm",
        "length of weft between ends",
    ]);
    let least = flat1.min(flat2).min(round1).min(round2);
    least.if_less(0.0, f64::NAN, if_it_fits(h1, thicknesses, l2 / p1 - 1.0))
}
