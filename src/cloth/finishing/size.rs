//! From the reed to the finished width, and back.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{DrawIn, Length, Shrinkage, Stretch, TakeUp};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[
    &REED_WIDTH,
    &OFF_LOOM_WIDTH,
    &DRAW_IN_FOUND,
    &SIZE_AFTER_SHRINKAGE,
    &SIZE_BEFORE_SHRINKAGE,
    &LOOM_STRETCH,
    &TAKE_UP_FOUND,
];

/// Width in the reed for a finished width.
#[formula(
    result = "B",
    sources = ["practice"],
    limits = ["shrinkage on the off-loom width, draw-in on the reed width"],
    slips = ["adding the percentages to the finished width"]
)]
pub fn reed_width<N: Number>(
    /// finished width
    #[q("b", 0.05..=3.0)]
    finished: Length<N>,
    /// shrinkage in width, off the loom to finished
    #[q("s", -0.05..=0.45)]
    shrinkage: Shrinkage<N>,
    /// draw-in, reed to off the loom
    #[q("d", 0.0..=0.2)]
    draw_in: DrawIn<N>,
) -> Length<N> {
    finished / ((1.0 - shrinkage) * (1.0 - draw_in))
}

/// Width off the loom.
#[formula(
    result = "b₁",
    sources = ["practice"],
    limits = ["draw-in on the reed width"],
    slips = ["the finished width taken for the off-loom width"]
)]
pub fn off_loom_width<N: Number>(
    /// width in the reed
    #[q("B", 0.05..=4.0)]
    reed: Length<N>,
    /// draw-in, reed to off the loom
    #[q("d", 0.0..=0.2)]
    draw_in: DrawIn<N>,
) -> Length<N> {
    reed * (1.0 - draw_in)
}

/// Draw-in from the width in the reed and off the loom.
#[formula(
    result = "d",
    sources = ["definition"],
    limits = ["on the width in the reed; what the wash takes afterwards is a shrinkage"],
    slips = ["dividing by the off-loom width", "adding it to the shrinkage of the wash: what remains multiplies"]
)]
pub fn draw_in_found<N: Number>(
    /// width in the reed
    #[q("B", 0.05..=4.0)]
    reed: Length<N>,
    /// width off the loom
    #[q("b₁", 0.05..=4.0)]
    off_loom: Length<N>,
) -> DrawIn<N> {
    1.0 - off_loom / reed
}

/// A length or width after it has shrunk.
#[formula(
    result = "x₂",
    sources = ["ISO 5077", "definition"],
    limits = ["ISO 5077 gives the change with the other sign: a shrinkage of 10 % is a change of −10 %"],
    slips = ["adding the shrinkages of two processes instead of multiplying what is left"]
)]
pub fn size_after_shrinkage<N: Number>(
    /// size before
    #[q("x₁", 0.05..=500.0)]
    size: Length<N>,
    /// shrinkage
    #[q("s", -0.05..=0.45)]
    shrinkage: Shrinkage<N>,
) -> Length<N> {
    size * (1.0 - shrinkage)
}

/// A length or width before it shrinks.
#[formula(
    result = "x₁",
    sources = ["definition"],
    slips = ["multiplying by 1 + s instead of dividing by 1 − s"]
)]
pub fn size_before_shrinkage<N: Number>(
    /// size after
    #[q("x₂", 0.05..=500.0)]
    size: Length<N>,
    /// shrinkage
    #[q("s", -0.05..=0.45)]
    shrinkage: Shrinkage<N>,
) -> Length<N> {
    size / (1.0 - shrinkage)
}

/// How far the warp was stretched on the loom: its parts as they lay under tension against its length
/// before.
#[formula(
    result = "ε",
    sources = ["definition"],
    limits = ["every part of the warp measured under tension: tied on, woven, left over"],
    slips = ["counting the stretch as take-up: it comes back when the tension is off"]
)]
pub fn loom_stretch<N: Number>(
    /// warp before it was put on the loom
    #[q("L", 1.0..=100.0)]
    warp: Length<N>,
    /// tied on at the front
    #[q("a", 0.05..=1.0)]
    tied: Length<N>,
    /// woven, as measured under tension
    #[q("w", 0.5..=100.0)]
    woven: Length<N>,
    /// left at the back
    #[q("r", 0.0..=1.5)]
    left: Length<N>,
) -> Stretch<N> {
    (tied + woven + left) / warp - 1.0
}

/// Take-up of the warp from the yarn that was woven and the cloth when it lies relaxed.
#[formula(
    result = "u",
    sources = ["definition"],
    limits = ["the yarn unstretched: the warp less what was tied on and left over", "the cloth off the loom and relaxed, before any wash"],
    slips = ["the measure under tension for that of the yarn: stretch is no take-up", "dividing by the cloth: that is a crimp"]
)]
pub fn take_up_found<N: Number>(
    /// yarn, unstretched
    #[q("l", 0.05..=500.0)]
    yarn: Length<N>,
    /// cloth, relaxed
    #[q("L", 0.05..=500.0)]
    cloth: Length<N>,
) -> TakeUp<N> {
    1.0 - cloth / yarn
}
