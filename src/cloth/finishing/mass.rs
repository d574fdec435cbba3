//! Sett and mass after finishing, and before.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{LinearDensity, Mass, MassLoss, MassPerArea, Sett, Shrinkage};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[
    &SETT_AFTER_SHRINKAGE,
    &SETT_BEFORE_SHRINKAGE,
    &FINISHED_MASS_PER_AREA,
    &LOOM_MASS_PER_AREA,
    &MASS_LOSS_FOUND,
    &MASS_LOSS_OF_AREAS,
    &MASS_AFTER_FINISHING,
    &MASS_BEFORE_FINISHING,
    &RUNNING_MASS_AFTER,
];

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

/// Sett before the cloth shrinks across those threads.
#[formula(
    result = "n₁",
    sources = ["definition"],
    limits = ["ends close up with the width, picks with the length"],
    slips = ["weaving at the finished sett"]
)]
pub fn sett_before_shrinkage<N: Number>(
    /// sett after
    #[q("n₂", 1.0..=60.0)]
    sett: Sett<N>,
    /// shrinkage across the threads
    #[q("s", -0.05..=0.45)]
    shrinkage: Shrinkage<N>,
) -> Sett<N> {
    sett * (1.0 - shrinkage)
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
    /// mass lost; negative where the cloth gains
    #[q("m", -0.1..=0.25)]
    loss: MassLoss<N>,
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
    /// mass lost; negative where the cloth gains
    #[q("m", -0.1..=0.25)]
    loss: MassLoss<N>,
    /// shrinkage in width
    #[q("s_w", -0.05..=0.45)]
    width: Shrinkage<N>,
    /// shrinkage in length
    #[q("s_l", -0.05..=0.45)]
    length: Shrinkage<N>,
) -> MassPerArea<N> {
    finished * (1.0 - width) * (1.0 - length) / (1.0 - loss)
}

/// Mass lost, from the mass before and after.
#[formula(
    result = "m",
    sources = ["definition"],
    limits = ["the whole piece or specimen both times, in one state of moisture: a regain of 16 % against 12 % is 3 % of the mass", "negative where it gains: flock milled in, a finish"],
    slips = ["masses per area instead of masses: an area that shrinks hides the loss", "weighing damp cloth against dry"]
)]
pub fn mass_loss_found<N: Number>(
    /// mass before
    #[q("m₁", 0.01..=50.0)]
    before: Mass<N>,
    /// mass after
    #[q("m₂", 0.01..=50.0)]
    after: Mass<N>,
) -> MassLoss<N> {
    1.0 - after / before
}

/// Mass lost, from the mass per area before and after and what the cloth shrank.
#[formula(
    result = "m",
    sources = ["definition"],
    limits = ["both masses per area in one state of moisture", "negative where it gains"],
    slips = ["leaving out the shrinkages: cloth grows heavier to the area and yet loses"]
)]
pub fn mass_loss_of_areas<N: Number>(
    /// mass per area before
    #[q("w₁", 20.0..=2000.0)]
    before: MassPerArea<N>,
    /// mass per area after
    #[q("w₂", 20.0..=2000.0)]
    after: MassPerArea<N>,
    /// shrinkage in width
    #[q("s_w", -0.05..=0.45)]
    width: Shrinkage<N>,
    /// shrinkage in length
    #[q("s_l", -0.05..=0.45)]
    length: Shrinkage<N>,
) -> MassLoss<N> {
    1.0 - after * (1.0 - width) * (1.0 - length) / before
}

/// Mass after a process that loses or gains.
#[formula(
    result = "m₂",
    sources = ["definition"],
    limits = ["in one state of moisture"],
    slips = ["losses of several processes added instead of multiplied"]
)]
pub fn mass_after_finishing<N: Number>(
    /// mass before
    #[q("m₁", 0.05..=500.0)]
    mass: Mass<N>,
    /// mass lost; negative where the cloth gains
    #[q("m", -0.1..=0.25)]
    loss: MassLoss<N>,
) -> Mass<N> {
    mass * (1.0 - loss)
}

/// Mass before a process, from what is to be left after it.
#[formula(
    result = "m₁",
    sources = ["definition"],
    limits = ["in one state of moisture"],
    slips = ["adding the loss to the mass wanted instead of dividing by what is left"]
)]
pub fn mass_before_finishing<N: Number>(
    /// mass after
    #[q("m₂", 0.05..=500.0)]
    mass: Mass<N>,
    /// mass lost; negative where the cloth gains
    #[q("m", -0.1..=0.25)]
    loss: MassLoss<N>,
) -> Mass<N> {
    mass / (1.0 - loss)
}

/// Mass of a running length after finishing.
#[formula(
    result = "T₂",
    sources = ["definition"],
    limits = ["the whole width both times: the shrinkage in width changes nothing"],
    slips = ["counting the shrinkage in width as well"]
)]
pub fn running_mass_after<N: Number>(
    /// mass of a running length before
    #[q("T₁", 1000.0..=5000000.0)]
    running: LinearDensity<N>,
    /// mass lost; negative where the cloth gains
    #[q("m", -0.1..=0.25)]
    loss: MassLoss<N>,
    /// shrinkage in length
    #[q("s_l", -0.05..=0.45)]
    length: Shrinkage<N>,
) -> LinearDensity<N> {
    running * (1.0 - loss) / (1.0 - length)
}
