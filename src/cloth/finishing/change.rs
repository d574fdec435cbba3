//! Shrinkage, over-width, the dimensional change of ISO 5077, loss of area: which is on what, and
//! their conversion.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{AreaShrinkage, DimensionalChange, Length, OverWidth, Shrinkage};

/// Shrinkage of several processes in their order, each on the size that it found.
#[formula(
    result = "S",
    sources = ["definition"],
    limits = ["a draw-in comes first in the list where the size is that in the reed; a stretch, such as on the tenter, is negative"],
    slips = ["adding the percentages: 11 % and 17 % are not 28 % but 26 %"]
)]
pub fn compounded_shrinkage<N: Number>(
    /// shrinkage of each process
    #[q("s", -0.1..=0.45)]
    shrinkages: &[Shrinkage<N>],
) -> Shrinkage<N> {
    1.0 - V::product(shrinkages.map(|s| 1.0 - s))
}

/// How much wider it is woven than it is finished.
#[formula(
    result = "x",
    sources = ["definition", "Wikipedia Broadcloth"],
    limits = ["on the finished size; the shrinkage of the same cloth is on the size before"],
    slips = ["taking it for the shrinkage: woven half as wide again is a shrinkage of a third"]
)]
#[inverse(
    "Size to weave for a finished size and an over-width.",
    size_for_over_width(size_after, over_width "over-width": -0.05..=0.8) -> size_before
        = size_after * (1.0 + over_width),
    limits = ["over-width on the finished size; for a shrinkage use size_before_shrinkage"],
    slips = ["a shrinkage put in for the over-width: 30 % wider finishes 23 % narrower"]
)]
pub fn over_width_from_sizes<N: Number>(
    /// size before
    #[q("x₁", 0.05..=500.0)]
    size_before: Length<N>,
    /// size finished
    #[q("x₂", 0.05..=500.0)]
    size_after: Length<N>,
) -> OverWidth<N> {
    size_before / size_after - 1.0
}

/// Shrinkage of a cloth that is woven wider than it is finished.
#[formula(
    result = "s",
    sources = ["definition"],
    limits = ["over-width on the finished size, shrinkage on the size before"],
    slips = ["taking the one for the other: 50 to 75 % over-width is 33 to 43 % shrinkage"]
)]
#[inverse(
    "How much wider to weave, on the finished size, for a shrinkage.",
    over_width_for_shrinkage(shrinkage: -0.05..=0.45) -> over_width = shrinkage / (1.0 - shrinkage),
    limits = ["shrinkage on the size before, over-width on the finished size"],
    slips = ["weaving wider by the shrinkage: for 30 % it takes 43 %"]
)]
pub fn shrinkage_of_over_width<N: Number>(
    /// over-width
    #[q("x", -0.05..=0.8)]
    over_width: OverWidth<N>,
) -> Shrinkage<N> {
    over_width / (1.0 + over_width)
}

/// Dimensional change as ISO 5077 reports it.
#[formula(
    result = "D",
    sources = ["ISO 5077 summary", "ISO 5077"],
    limits = ["negative where it shrinks: the sign is the reverse of the mill's", "both measures in the conditioned state, between marks at least 35 cm apart; three specimens where possible"],
    slips = ["the sign", "dividing by the measure after"]
)]
pub fn dimensional_change<N: Number>(
    /// measure before
    #[q("x₁", 0.1..=2.0)]
    size_before: Length<N>,
    /// measure after
    #[q("x₂", 0.1..=2.0)]
    size_after: Length<N>,
) -> DimensionalChange<N> {
    (size_after - size_before) / size_before
}

/// Dimensional change of ISO 5077 of a shrinkage as the mill counts it.
#[formula(
    result = "D",
    sources = ["definition"],
    limits = ["both are on the size before"],
    slips = ["reporting a shrinkage without its minus"]
)]
#[inverse(
    "Shrinkage, as the mill counts it, of a dimensional change of ISO 5077.",
    shrinkage_from_dimensional_change(dimensional_change: -0.45..=0.05) -> shrinkage
        = 0.0 - dimensional_change,
    slips = ["leaving the sign: the cloth is then woven too small"]
)]
pub fn dimensional_change_from_shrinkage<N: Number>(
    /// shrinkage
    #[q("s", -0.05..=0.45)]
    shrinkage: Shrinkage<N>,
) -> DimensionalChange<N> {
    0.0 - shrinkage
}

/// Area lost from the shrinkages in width and length.
#[formula(
    result = "s_A",
    sources = ["definition"],
    limits = ["on the area before"],
    slips = ["adding the two percentages", "a loss in area used as an allowance in length"]
)]
#[inverse(
    "Shrinkage in width, from the area lost and the shrinkage in length.",
    width_shrinkage_from_area(area_shrinkage: -0.1..=0.7, length_shrinkage) -> width_shrinkage
        = 1.0 - (1.0 - area_shrinkage) / (1.0 - length_shrinkage),
    slips = ["taking the one percentage off the other", "half of the area lost for each side"]
)]
#[inverse(
    "Shrinkage in length, from the area lost and the shrinkage in width.",
    length_shrinkage_from_area(area_shrinkage: -0.1..=0.7, width_shrinkage) -> length_shrinkage
        = 1.0 - (1.0 - area_shrinkage) / (1.0 - width_shrinkage),
    slips = ["taking the one percentage off the other", "half of the area lost for each side"]
)]
pub fn area_shrinkage<N: Number>(
    /// shrinkage in width
    #[q("s_w", -0.05..=0.45)]
    width_shrinkage: Shrinkage<N>,
    /// shrinkage in length
    #[q("s_l", -0.05..=0.45)]
    length_shrinkage: Shrinkage<N>,
) -> AreaShrinkage<N> {
    1.0 - (1.0 - width_shrinkage) * (1.0 - length_shrinkage)
}

/// Shrinkage of each side of a cloth that shrinks alike both ways, from the area lost.
#[formula(
    result = "s",
    sources = ["definition"],
    limits = ["only where both sides shrink alike; cloth seldom does: measure both"],
    slips = ["the loss in area for that of a side: 36 % of the area is 20 % of a side"]
)]
pub fn shrinkage_of_side<N: Number>(
    /// area lost
    #[q("s_A", -0.1..=0.7)]
    area_shrinkage: AreaShrinkage<N>,
) -> Shrinkage<N> {
    1.0 - (1.0 - area_shrinkage).sqrt()
}
