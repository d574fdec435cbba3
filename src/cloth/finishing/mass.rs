//! Sett and mass after finishing, and before.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{LinearDensity, Mass, MassLoss, MassPerArea, Sett, Shrinkage};

/// Sett after the cloth has shrunk across those threads.
#[formula(
    result = "n_a",
    sources = ["definition"],
    limits = ["ends close up with the width, picks with the length"],
    slips = ["closing up the ends with the shrinkage in length"]
)]
#[inverse(
    "Sett before the cloth shrinks across those threads.",
    sett_before_shrinkage(sett_after: 1.0..=60.0, across_shrinkage) -> sett_before
        = sett_after * (1.0 - across_shrinkage),
    slips = ["weaving at the finished sett"]
)]
pub fn sett_after_shrinkage<N: Number>(
    /// sett before
    #[q("n_b", 1.0..=60.0)]
    sett_before: Sett<N>,
    /// shrinkage across the threads
    #[q("s_x", -0.05..=0.45)]
    across_shrinkage: Shrinkage<N>,
) -> Sett<N> {
    sett_before / (1.0 - across_shrinkage)
}

/// Mass per area after finishing.
#[formula(
    result = "ω₂",
    sources = ["definition"],
    limits = ["loss holds oil only if the cloth was woven in oil"],
    slips = ["adding the shrinkages to the mass as percentages"]
)]
#[inverse(
    "Mass per area to weave for one wanted after finishing.",
    off_loom_mass_per_area(finished_mass_per_area "mass per area wanted": 20.0..=2000.0, mass_loss, width_shrinkage, length_shrinkage) -> off_loom_mass_per_area
        = finished_mass_per_area * (1.0 - width_shrinkage) * (1.0 - length_shrinkage) / (1.0 - mass_loss),
    slips = ["weaving at the finished mass"]
)]
pub fn finished_mass_per_area<N: Number>(
    /// mass per area off the loom
    #[q("ω₁", 20.0..=2000.0)]
    off_loom_mass_per_area: MassPerArea<N>,
    /// mass lost; negative where the cloth gains
    #[q("m_l", -0.1..=0.25)]
    mass_loss: MassLoss<N>,
    /// shrinkage in width
    #[q("s_w", -0.05..=0.45)]
    width_shrinkage: Shrinkage<N>,
    /// shrinkage in length
    #[q("s_l", -0.05..=0.45)]
    length_shrinkage: Shrinkage<N>,
) -> MassPerArea<N> {
    off_loom_mass_per_area * (1.0 - mass_loss)
        / ((1.0 - width_shrinkage) * (1.0 - length_shrinkage))
}

/// Mass lost, from the mass per area before and after and what the cloth shrank.
#[formula(
    result = "m_l",
    sources = ["definition"],
    limits = ["both masses per area in one state of moisture", "negative where it gains"],
    slips = ["leaving out the shrinkages: cloth grows heavier to the area and yet loses"]
)]
pub fn mass_loss_from_areas<N: Number>(
    /// mass per area before
    #[q("ω_b", 20.0..=2000.0)]
    mass_per_area_before: MassPerArea<N>,
    /// mass per area after
    #[q("ω_a", 20.0..=2000.0)]
    mass_per_area_after: MassPerArea<N>,
    /// shrinkage in width
    #[q("s_w", -0.05..=0.45)]
    width_shrinkage: Shrinkage<N>,
    /// shrinkage in length
    #[q("s_l", -0.05..=0.45)]
    length_shrinkage: Shrinkage<N>,
) -> MassLoss<N> {
    1.0 - mass_per_area_after * (1.0 - width_shrinkage) * (1.0 - length_shrinkage)
        / mass_per_area_before
}

/// Mass after a process that loses or gains.
#[formula(
    result = "m₂",
    sources = ["definition"],
    limits = ["in one state of moisture"],
    slips = ["losses of several processes added instead of multiplied"]
)]
#[inverse(
    "Mass before a process, from what is to be left after it.",
    mass_before_finishing(mass_after: 0.05..=500.0, mass_loss) -> mass_before
        = mass_after / (1.0 - mass_loss),
    slips = ["adding the loss to the mass wanted instead of dividing by what is left"]
)]
#[inverse(
    "Mass lost, from the mass before and after.",
    mass_loss_from_masses(mass_before, mass_after: 0.01..=500.0) -> mass_loss
        = 1.0 - mass_after / mass_before,
    limits = ["the whole piece or specimen both times, in one state of moisture: a regain of 16 % against 12 % is 3 % of the mass", "negative where it gains: flock milled in, a finish"],
    slips = ["masses per area instead of masses: an area that shrinks hides the loss", "weighing damp cloth against dry"]
)]
pub fn mass_after_finishing<N: Number>(
    /// mass before
    #[q("m₁", 0.01..=500.0)]
    mass_before: Mass<N>,
    /// mass lost; negative where the cloth gains
    #[q("m_l", -0.1..=0.25)]
    mass_loss: MassLoss<N>,
) -> Mass<N> {
    mass_before * (1.0 - mass_loss)
}

/// Mass of a running length after finishing.
#[formula(
    result = "λ₂",
    sources = ["definition"],
    limits = ["the whole width both times: the shrinkage in width changes nothing"],
    slips = ["counting the shrinkage in width as well"]
)]
pub fn running_mass_after<N: Number>(
    /// mass of a running length before
    #[q("λ₁", 1000.0..=5000000.0)]
    running_mass_before: LinearDensity<N>,
    /// mass lost; negative where the cloth gains
    #[q("m_l", -0.1..=0.25)]
    mass_loss: MassLoss<N>,
    /// shrinkage in length
    #[q("s_l", -0.05..=0.45)]
    length_shrinkage: Shrinkage<N>,
) -> LinearDensity<N> {
    running_mass_before * (1.0 - mass_loss) / (1.0 - length_shrinkage)
}
