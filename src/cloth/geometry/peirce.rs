//! Plain cloth of round threads, after Peirce, solved exactly.
//!
//! Suffix 1 is the warp, 2 the weft. Ends are p₁ apart, picks p₂; a warp thread is l₁ long from pick
//! to pick, a weft thread l₂ from end to end. What the two waves share is their height: h₁ + h₂ = D, the
//! sum of the diameters.

use std::f64::consts::PI;

use super::thread::{
    FromHeight, FromSpacing, angle, angle_by_straight_part, height, height_by_half_angle, length,
    spacing, straight_part,
};
use crate::formula::formula;
use crate::number::{Equation, Number, V};
use crate::quantity::{
    Angle, Crimp, Diameter, MassPerArea, Ratio, Sett, SpecificVolume, Thickness,
};

/// Radians in degrees.
#[inline(always)]
pub(super) fn degrees<N: Number>(radians: V<N>) -> V<N> {
    radians * (180.0 / PI)
}

/// Spacing of threads from their sett.
#[formula(
    result = "p",
    sources = ["definition"],
    slips = ["the spacing of the ends in place of that of the picks: the warp crosses picks"]
)]
pub fn thread_spacing<N: Number>(
    /// sett
    #[q("n", 1.0..=60.0)]
    sett: Sett<N>,
) -> Thickness<N> {
    10.0 / sett
}

/// Length of a thread from one thread that it crosses to the next.
#[formula(
    result = "l",
    sources = ["Peirce 1937", "Balasubramanian", "GATE solutions"],
    limits = ["crimp on cloth, not take-up on yarn", "plain weave: every thread is crossed"],
    slips = ["spacing of its own system: a warp thread runs from pick to pick"]
)]
pub fn modular_length<N: Number>(
    /// spacing of the threads crossed
    #[q("p", 0.1..=10.0)]
    spacing: Thickness<N>,
    /// crimp
    #[q("c", 0.0..=0.3)]
    crimp: Crimp<N>,
) -> Thickness<N> {
    spacing * (1.0 + crimp)
}

/// Length of a thread between those it crosses, over the sum of the diameters.
#[formula(
    result = "l/D",
    sources = ["Peirce 1937", "Balasubramanian", "GATE solutions"],
    limits = ["under π/2 the thread can jam; over it, its angle reaches upright first"],
    slips = ["one diameter for the sum of the two"]
)]
pub fn length_over_diameters<N: Number>(
    /// length between threads crossed
    #[q("l", 0.1..=10.0)]
    modular_length: Thickness<N>,
    /// sum of the diameters
    #[q("D", 0.05..=6.0)]
    diameter_sum: Thickness<N>,
) -> Ratio<N> {
    modular_length / diameter_sum
}

/// Angle at which a thread crosses the plane of the cloth.
#[formula(
    result = "θ",
    sources = ["Peirce 1937", "Balasubramanian"],
    limits = ["round threads that neither stretch nor flatten; plain weave; cloth that is not milled"],
    slips = ["taking the angle by its series, √(2c), where the crimp is more than a few percent"]
)]
pub fn crimp_angle<N: Number>(
    /// length between threads crossed
    #[q("l", 0.1..=10.0)]
    modular_length: Thickness<N>,
    /// spacing of the threads crossed
    #[q("p", 0.1..=10.0)]
    spacing: Thickness<N>,
    /// sum of the diameters
    #[q("D", 0.05..=6.0)]
    diameter_sum: Thickness<N>,
) -> Angle<N> {
    degrees(V::solved::<FromSpacing, 3>(
        [modular_length, spacing, diameter_sum],
        ["θ_r", "rad", "weave angle"],
    ))
}

/// Height of the wave of a thread, from the middle of its trough to that of its crest.
#[formula(
    result = "h",
    sources = ["Peirce 1937", "Balasubramanian"],
    limits = ["round threads that neither stretch nor flatten; plain weave; cloth that is not milled"],
    slips = ["the rule 4/3 p √c in place of the solution", "adding a diameter: that is the crown"]
)]
pub fn crimp_height<N: Number>(
    /// length between threads crossed
    #[q("l", 0.1..=10.0)]
    modular_length: Thickness<N>,
    /// spacing of the threads crossed
    #[q("p", 0.1..=10.0)]
    spacing: Thickness<N>,
    /// sum of the diameters
    #[q("D", 0.05..=6.0)]
    diameter_sum: Thickness<N>,
) -> Thickness<N> {
    let angle = V::solved::<FromSpacing, 3>(
        [modular_length, spacing, diameter_sum],
        ["θ", "rad", "weave angle"],
    );
    height(angle, modular_length, diameter_sum)
}

/// Height of the warp's wave from the crimp that it has.
#[inline(always)]
fn warp_height<N: Number>(p2: V<N>, crimp: V<N>, d: V<N>) -> V<N> {
    let l1 = (p2 * (1.0 + crimp)).named(["l₁", "mm", "length of warp between picks"]);
    let theta1 = V::solved::<FromSpacing, 3>([l1, p2, d], ["θ₁", "rad", "weave angle of the warp"]);
    let straight = (l1 - d * theta1).named(["s₁", "mm", "straight part of the warp between picks"]);
    height_by_half_angle(theta1, straight, p2).named(["h₁", "mm", "height of the warp's wave"])
}

/// A value of the cloth, if the warp's wave leaves any height to the weft's.
#[inline(always)]
pub(super) fn if_it_fits<N: Number>(h1: V<N>, d: V<N>, figure: V<N>) -> V<N> {
    d.if_less(h1, f64::NAN, figure)
}

/// Crimp of the weft in plain cloth, from that of the warp.
///
/// The two share the height of the cloth: what the one has more, the other has less. For the warp's
/// crimp from the weft's change warp and weft about.
#[formula(
    lanes = true,
    result = "c₂",
    sources = ["Peirce 1937", "Balasubramanian"],
    limits = ["round threads that neither stretch nor flatten; plain weave; cloth that is not milled"],
    slips = ["one crimp guessed for both", "the rule h = 4/3 p √c in place of the exact value"]
)]
pub fn weft_crimp<N: Number>(
    /// ends
    #[q("n₁", 1.0..=60.0)]
    warp_sett: Sett<N>,
    /// picks
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// crimp of the warp
    #[q("c₁", 0.0..=0.3)]
    warp_crimp: Crimp<N>,
    /// diameter of the warp
    #[q("d₁", 0.05..=3.0)]
    warp_diameter: Diameter<N>,
    /// diameter of the weft
    #[q("d₂", 0.05..=3.0)]
    weft_diameter: Diameter<N>,
) -> Crimp<N> {
    let diameters = (warp_diameter + weft_diameter).named(["D", "mm", "sum of the two diameters"]);
    let p2 = (10.0 / weft_sett).named(["p₂", "mm", "spacing of the picks"]);
    let h1 = warp_height(p2, warp_crimp, diameters);
    let h2 = (diameters - h1).named(["h₂", "mm", "height of the weft's wave"]);
    let p1 = (10.0 / warp_sett).named(["p₁", "mm", "spacing of the ends"]);
    let straight = straight_part(h2, p1, diameters).named([
        "s₂",
        "mm",
        "straight part of the weft between ends",
    ]);
    let theta2 =
        angle_by_straight_part(h2, p1, straight).named(["θ₂", "rad", "weave angle of the weft"]);
    let l2 = (diameters * theta2 + straight).named(["l₂", "mm", "length of weft between ends"]);
    if_it_fits(h1, diameters, l2 / p1 - 1.0)
}

/// Height of a crown: of the wave of a thread and the thread itself.
#[formula(
    result = "H",
    sources = ["GATE solutions"],
    limits = ["of one system; the cloth is as thick as the higher of its two crowns"],
    slips = ["taking the crown of the warp for the thickness where that of the weft is higher"]
)]
pub fn crown_height<N: Number>(
    /// height of the wave
    #[q("h", 0.0..=3.0)]
    wave_height: Thickness<N>,
    /// diameter
    #[q("d", 0.05..=3.0)]
    yarn_diameter: Diameter<N>,
) -> Thickness<N> {
    wave_height + yarn_diameter
}

/// Thickness of plain cloth: the higher of the two crowns.
#[formula(
    lanes = true,
    result = "H",
    sources = ["Peirce 1937", "Balasubramanian", "memory"],
    limits = ["round threads that neither stretch nor flatten; plain weave; cloth that is not milled", "without pressure: a gauge presses"],
    slips = ["the crown of one system for the thickness of the cloth"]
)]
pub fn plain_thickness<N: Number>(
    /// picks
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// crimp of the warp
    #[q("c₁", 0.0..=0.3)]
    warp_crimp: Crimp<N>,
    /// diameter of the warp
    #[q("d₁", 0.05..=3.0)]
    warp_diameter: Diameter<N>,
    /// diameter of the weft
    #[q("d₂", 0.05..=3.0)]
    weft_diameter: Diameter<N>,
) -> Thickness<N> {
    let diameters = (warp_diameter + weft_diameter).named(["D", "mm", "sum of the two diameters"]);
    let p2 = (10.0 / weft_sett).named(["p₂", "mm", "spacing of the picks"]);
    let h1 = warp_height(p2, warp_crimp, diameters);
    let h2 = (diameters - h1).named(["h₂", "mm", "height of the weft's wave"]);
    if_it_fits(h1, diameters, (h1 + warp_diameter).max(h2 + weft_diameter))
}

/// Angle of a thread that is jammed: it lies round those it crosses without a straight part.
#[formula(
    result = "θ",
    sources = ["Peirce 1937", "Balasubramanian"],
    limits = ["only where the spacing is less than the sum of the diameters; else it does not jam"],
    slips = ["one diameter for the sum of the two"]
)]
pub fn jam_angle<N: Number>(
    /// spacing of the threads crossed
    #[q("p", 0.05..=6.0)]
    spacing: Thickness<N>,
    /// sum of the diameters
    #[q("D", 0.05..=6.0)]
    diameter_sum: Thickness<N>,
) -> Angle<N> {
    let sine = (spacing / diameter_sum).named(["p/D", "", "sine of the angle"]);
    degrees((sine / (1.0 - sine.squared()).sqrt()).atan())
}

/// The most crimp that a thread can have between threads at a spacing: it is then jammed.
#[formula(
    result = "c",
    sources = ["Peirce 1937", "Balasubramanian", "GATE solutions"],
    limits = ["only where the spacing is less than the sum of the diameters; else it does not jam", "21 % in a cloth alike both ways and jammed both ways"],
    slips = ["taking a crimp from the working of another cloth that this one has no room for"]
)]
pub fn jam_crimp<N: Number>(
    /// spacing of the threads crossed
    #[q("p", 0.05..=6.0)]
    spacing: Thickness<N>,
    /// sum of the diameters
    #[q("D", 0.05..=6.0)]
    diameter_sum: Thickness<N>,
) -> Crimp<N> {
    let sine = (spacing / diameter_sum).named(["p/D", "", "sine of the angle"]);
    let theta = (sine / (1.0 - sine.squared()).sqrt()).atan().named(["θ", "rad", "weave angle"]);
    theta / sine - 1.0
}

/// Spacing of the one system where both are jammed, from that of the other.
#[formula(
    result = "p₂",
    sources = ["Peirce 1937", "Balasubramanian"],
    limits = ["plain weave; both spacings are at most the sum of the diameters", "√3/2 of the sum where both are alike"],
    slips = ["one diameter for the sum of the two"]
)]
pub fn jam_spacing<N: Number>(
    /// spacing of the other system
    #[q("p", 0.05..=6.0)]
    spacing: Thickness<N>,
    /// sum of the diameters
    #[q("D", 0.05..=6.0)]
    diameter_sum: Thickness<N>,
) -> Thickness<N> {
    let cosine1 = (1.0 - (spacing / diameter_sum).squared()).sqrt().named([
        "cos θ₂",
        "",
        "cosine of the angle of the other system",
    ]);
    let cosine2 = (1.0 - cosine1).named(["cos θ₁", "", "cosine of the angle of this system"]);
    diameter_sum * (1.0 - cosine2.squared()).sqrt()
}

/// Ends after plain cloth was stretched, or let go, to other picks: its crimps change places.
///
/// No yarn is made longer or shorter. Stretched along the warp, the warp gives up crimp, the weft takes
/// it, and the cloth narrows.
#[formula(
    result = "n₁′",
    sources = ["Peirce 1937", "Balasubramanian", "memory"],
    limits = ["round threads that neither stretch nor flatten; plain weave", "as far as the warp can be straight, or the weft jams"],
    slips = ["keeping the width when the length is stretched"]
)]
pub fn warp_sett_after_stretch<N: Number>(
    /// ends
    #[q("n₁", 1.0..=60.0)]
    warp_sett_before: Sett<N>,
    /// picks
    #[q("n₂", 1.0..=60.0)]
    weft_sett_before: Sett<N>,
    /// crimp of the warp
    #[q("c₁", 0.0..=0.3)]
    warp_crimp_before: Crimp<N>,
    /// diameter of the warp
    #[q("d₁", 0.05..=3.0)]
    warp_diameter: Diameter<N>,
    /// diameter of the weft
    #[q("d₂", 0.05..=3.0)]
    weft_diameter: Diameter<N>,
    /// picks after
    #[q("n₂′", 1.0..=60.0)]
    weft_sett_after: Sett<N>,
) -> Sett<N> {
    let diameters = (warp_diameter + weft_diameter).named(["D", "mm", "sum of the two diameters"]);
    let p2 = (10.0 / weft_sett_before).named(["p₂", "mm", "spacing of the picks"]);
    let h1 = warp_height(p2, warp_crimp_before, diameters);
    let p1 = (10.0 / warp_sett_before).named(["p₁", "mm", "spacing of the ends"]);
    let h2 = (diameters - h1).named(["h₂", "mm", "height of the weft's wave"]);
    let l2 = length(angle(h2, p1, diameters), p1, diameters).named([
        "l₂",
        "mm",
        "length of weft between ends",
    ]);
    // The same threads at other picks.
    let after2 = (10.0 / weft_sett_after).named(["p₂′", "mm", "spacing of the picks after"]);
    let l1 = p2 * (1.0 + warp_crimp_before);
    let theta1 = V::solved::<FromSpacing, 3>(
        [l1, after2, diameters],
        ["θ₁′", "rad", "weave angle of the warp after"],
    );
    let height1 =
        height(theta1, l1, diameters).named(["h₁′", "mm", "height of the warp's wave after"]);
    let height2 = (diameters - height1).named(["h₂′", "mm", "height of the weft's wave after"]);
    let theta2 = V::solved::<FromHeight, 3>(
        [l2, height2, diameters],
        ["θ₂′", "rad", "weave angle of the weft after"],
    );
    let after1 = spacing(theta2, l2, diameters).named(["p₁′", "mm", "spacing of the ends after"]);
    if_it_fits(h1, diameters, if_it_fits(height1, diameters, 10.0 / after1))
}

/// The sum of the diameters at which two waves fill the height between them.
pub(super) struct Filling;

impl Equation<4> for Filling {
    fn residual<N: Number>(diameters: V<N>, [l1, p2, l2, p1]: [V<N>; 4]) -> V<N> {
        let theta1 = V::solved::<FromSpacing, 3>(
            [l1, p2, diameters],
            ["θ₁", "rad", "weave angle of the warp"],
        );
        let theta2 = V::solved::<FromSpacing, 3>(
            [l2, p1, diameters],
            ["θ₂", "rad", "weave angle of the weft"],
        );
        height(theta1, l1, diameters) + height(theta2, l2, diameters) - diameters
    }
    fn root(known: [f64; 4]) -> f64 {
        let miss = |d: f64| Self::residual(V(d), known.map(V)).value();
        let [l1, p2, l2, p1] = known;
        // So thin that the threads are all but straight lines, and as thick as one of them can bear.
        let thin = 1e-6 * p1.min(p2);
        let fits = |d: f64| miss(d).is_finite();
        let (mut least, mut most) = (thin, l1.max(l2));
        while most - least > 4.0 * f64::EPSILON * most {
            let middle = f64::midpoint(least, most);
            if fits(middle) { least = middle } else { most = middle }
        }
        super::thread::bracketed(miss, thin, least)
    }
}

/// Sum of the diameters that the threads of a plain cloth behave as having, from measured crimps.
///
/// Threads flatten in cloth; this is what their thicknesses add up to where they cross.
#[formula(
    result = "D",
    sources = ["Peirce 1937", "Balasubramanian"],
    limits = ["plain weave; crimps measured on threads drawn out of this cloth and straightened without stretching", "an error of crimp goes into it by half"],
    slips = ["the diameters of the loose yarn for those in the cloth"]
)]
pub fn diameters_in_cloth<N: Number>(
    /// ends
    #[q("n₁", 1.0..=60.0)]
    warp_sett: Sett<N>,
    /// picks
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// crimp of the warp
    #[q("c₁", 0.001..=0.3)]
    warp_crimp: Crimp<N>,
    /// crimp of the weft
    #[q("c₂", 0.001..=0.3)]
    weft_crimp: Crimp<N>,
) -> Thickness<N> {
    let p2 = (10.0 / weft_sett).named(["p₂", "mm", "spacing of the picks"]);
    let l1 = (p2 * (1.0 + warp_crimp)).named(["l₁", "mm", "length of warp between picks"]);
    let p1 = (10.0 / warp_sett).named(["p₁", "mm", "spacing of the ends"]);
    let l2 = (p1 * (1.0 + weft_crimp)).named(["l₂", "mm", "length of weft between ends"]);
    V::solved::<Filling, 4>([l1, p2, l2, p1], None)
}

/// Specific volume of a cloth, the air in it counted.
#[formula(
    result = "v",
    sources = ["GATE solutions"],
    limits = ["at the pressure of the gauge, which belongs to the value"],
    slips = ["a thickness of the yarn for that of the cloth"]
)]
pub fn cloth_specific_volume<N: Number>(
    /// thickness
    #[q("H", 0.05..=20.0)]
    thickness: Thickness<N>,
    /// mass per area
    #[q("ω", 20.0..=2000.0)]
    mass_per_area: MassPerArea<N>,
) -> SpecificVolume<N> {
    1000.0 * thickness / mass_per_area
}
