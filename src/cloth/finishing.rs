//! From the reed to the finished cloth, and back.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{DrawIn, Fraction, Length, LinearDensity, MassPerArea, Sett, Shrinkage};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[
    &REED_WIDTH,
    &OFF_LOOM_WIDTH,
    &SIZE_AFTER_SHRINKAGE,
    &SIZE_BEFORE_SHRINKAGE,
    &SHRINKAGE_FOUND,
    &SETT_AFTER_SHRINKAGE,
    &FINISHED_MASS_PER_AREA,
    &LOOM_MASS_PER_AREA,
    &COUNT_AFTER_FINISHING,
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

/// Shrinkage from a size before and after.
#[formula(
    result = "s",
    sources = ["ISO 5077", "definition"],
    limits = ["on the size before; the dimensional change of ISO 5077 is the same with the other sign"],
    slips = ["dividing by the size after: woven a quarter wider than finished is a shrinkage of a fifth"]
)]
pub fn shrinkage_found<N: Number>(
    /// size before
    #[q("x₁", 0.05..=500.0)]
    before: Length<N>,
    /// size after
    #[q("x₂", 0.05..=500.0)]
    after: Length<N>,
) -> Shrinkage<N> {
    1.0 - after / before
}

/// Sett after the cloth has shrunk across those threads.
#[formula(
    result = "n₂",
    sources = ["definition"],
    limits = ["ends close up with the width, picks with the length"],
    slips = ["closing up the ends with the shrinkage in length"]
)]
pub fn sett_after_shrinkage<N: Number>(
    /// sett before
    #[q("n₁", 1.0..=60.0)]
    sett: Sett<N>,
    /// shrinkage across the threads
    #[q("s", -0.05..=0.45)]
    shrinkage: Shrinkage<N>,
) -> Sett<N> {
    sett / (1.0 - shrinkage)
}

/// Mass per area after finishing.
#[formula(
    result = "w₂",
    sources = ["definition"],
    limits = ["loss holds oil only if the cloth was woven in oil"],
    slips = ["adding the shrinkages to the mass as percentages"]
)]
pub fn finished_mass_per_area<N: Number>(
    /// mass per area off the loom
    #[q("w₁", 20.0..=2000.0)]
    loom: MassPerArea<N>,
    /// mass lost
    #[q("m", 0.0..=0.25)]
    loss: Fraction<N>,
    /// shrinkage in width
    #[q("s_w", -0.05..=0.45)]
    width: Shrinkage<N>,
    /// shrinkage in length
    #[q("s_l", -0.05..=0.45)]
    length: Shrinkage<N>,
) -> MassPerArea<N> {
    loom * (1.0 - loss) / ((1.0 - width) * (1.0 - length))
}

/// Mass per area to weave for one wanted after finishing.
#[formula(
    result = "w₁",
    sources = ["definition"],
    limits = ["loss holds oil only if the cloth was woven in oil"],
    slips = ["weaving at the finished mass"]
)]
pub fn loom_mass_per_area<N: Number>(
    /// mass per area wanted
    #[q("w₂", 20.0..=2000.0)]
    finished: MassPerArea<N>,
    /// mass lost
    #[q("m", 0.0..=0.25)]
    loss: Fraction<N>,
    /// shrinkage in width
    #[q("s_w", -0.05..=0.45)]
    width: Shrinkage<N>,
    /// shrinkage in length
    #[q("s_l", -0.05..=0.45)]
    length: Shrinkage<N>,
) -> MassPerArea<N> {
    finished * (1.0 - width) * (1.0 - length) / (1.0 - loss)
}

/// Count of the yarn in the cloth after finishing.
#[formula(
    result = "T₂",
    sources = ["definition"],
    limits = ["as long as the crimp stays the same"],
    slips = ["taking the count before finishing for that in the finished cloth"]
)]
pub fn count_after_finishing<N: Number>(
    /// count before
    #[q("T₁", 5.0..=2000.0)]
    count: LinearDensity<N>,
    /// mass lost
    #[q("m", 0.0..=0.25)]
    loss: Fraction<N>,
    /// shrinkage along the yarn
    #[q("s", -0.05..=0.45)]
    shrinkage: Shrinkage<N>,
) -> LinearDensity<N> {
    count * (1.0 - loss) / (1.0 - shrinkage)
}
