//! From the reed to the finished width, and back.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{DrawIn, Length, Shrinkage, Stretch, TakeUp};

/// Width in the reed for a finished width.
#[formula(
    result = "B",
    sources = ["practice"],
    limits = ["shrinkage on the off-loom width, draw-in on the reed width"],
    slips = ["adding the percentages to the finished width"]
)]
pub fn reed_width<N: Number>(
    /// finished width
    #[q("b_f", 0.05..=3.0)]
    finished_width: Length<N>,
    /// shrinkage in width, off the loom to finished
    #[q("s_w", -0.05..=0.45)]
    width_shrinkage: Shrinkage<N>,
    /// draw-in, reed to off the loom
    #[q("d_r", 0.0..=0.2)]
    draw_in: DrawIn<N>,
) -> Length<N> {
    finished_width / ((1.0 - width_shrinkage) * (1.0 - draw_in))
}

/// Width off the loom.
#[formula(
    result = "b_o",
    sources = ["practice"],
    limits = ["draw-in on the reed width"],
    slips = ["the finished width taken for the off-loom width"]
)]
#[inverse(
    "Draw-in from the width in the reed and off the loom.",
    draw_in_from_widths(reed_width, off_loom_width "width off the loom": 0.05..=4.0) -> draw_in
        = 1.0 - off_loom_width / reed_width,
    limits = ["on the width in the reed; what the wash takes afterwards is a shrinkage"],
    slips = ["dividing by the off-loom width", "adding it to the shrinkage of the wash: what remains multiplies"]
)]
pub fn off_loom_width<N: Number>(
    /// width in the reed
    #[q("B", 0.05..=4.0)]
    reed_width: Length<N>,
    /// draw-in, reed to off the loom
    #[q("d_r", 0.0..=0.2)]
    draw_in: DrawIn<N>,
) -> Length<N> {
    reed_width * (1.0 - draw_in)
}

/// A length or width after it has shrunk.
#[formula(
    result = "x₂",
    sources = ["ISO 5077", "definition"],
    limits = ["ISO 5077 gives the change with the other sign: a shrinkage of 10 % is a change of −10 %"],
    slips = ["adding the shrinkages of two processes instead of multiplying what is left"]
)]
#[inverse(
    "A length or width before it shrinks.",
    size_before_shrinkage(size_after: 0.05..=500.0, shrinkage) -> size_before
        = size_after / (1.0 - shrinkage),
    slips = ["multiplying by 1 + s instead of dividing by 1 − s"]
)]
#[inverse(
    "Shrinkage from a size before and after.",
    shrinkage_from_sizes(size_before, size_after: 0.05..=500.0) -> shrinkage
        = 1.0 - size_after / size_before,
    limits = ["on the size before; the dimensional change of ISO 5077 is the same with the other sign"],
    slips = ["dividing by the size after: woven a quarter wider than finished is a shrinkage of a fifth"]
)]
pub fn size_after_shrinkage<N: Number>(
    /// size before
    #[q("x₁", 0.05..=500.0)]
    size_before: Length<N>,
    /// shrinkage
    #[q("s", -0.05..=0.45)]
    shrinkage: Shrinkage<N>,
) -> Length<N> {
    size_before * (1.0 - shrinkage)
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
    #[q("W", 1.0..=100.0)]
    warp_length: Length<N>,
    /// tied on at the front
    #[q("l_t", 0.05..=1.0)]
    tied_length: Length<N>,
    /// woven, as measured under tension
    #[q("l_w", 0.5..=100.0)]
    woven_length: Length<N>,
    /// left at the back
    #[q("l_b", 0.0..=1.5)]
    left_length: Length<N>,
) -> Stretch<N> {
    (tied_length + woven_length + left_length) / warp_length - 1.0
}

/// Take-up of the warp from the yarn that was woven and the cloth when it lies relaxed.
#[formula(
    result = "u",
    sources = ["definition"],
    limits = ["the yarn unstretched: the warp less what was tied on and left over", "the cloth off the loom and relaxed, before any wash"],
    slips = ["the measure under tension for that of the yarn: stretch is not take-up", "dividing by the cloth: that is a crimp"]
)]
pub fn take_up_from_lengths<N: Number>(
    /// yarn, unstretched
    #[q("Y", 0.05..=500.0)]
    yarn_length: Length<N>,
    /// cloth, relaxed
    #[q("L", 0.05..=500.0)]
    cloth_length: Length<N>,
) -> TakeUp<N> {
    1.0 - cloth_length / yarn_length
}
