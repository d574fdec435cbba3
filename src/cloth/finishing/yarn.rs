//! The yarn in the cloth after finishing, and before: its count and crimp.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{CoverFactor, Crimp, LinearDensity, MassLoss, Shrinkage};

/// Count of the yarn in the cloth after finishing.
#[formula(
    result = "T₂",
    sources = ["definition"],
    limits = ["as long as the crimp stays the same"],
    slips = ["taking the count before finishing for that in the finished cloth"]
)]
#[inverse(
    "Count to weave with for a count wanted in the finished cloth.",
    count_before_finishing(count_after "count in the finished cloth": 5.0..=2000.0, mass_loss, along_shrinkage) -> count_before
        = count_after * (1.0 - along_shrinkage) / (1.0 - mass_loss),
    limits = ["shrinkage of the yarn itself: that of the cloth as long as the crimp stays the same"],
    slips = ["weaving with the count that was measured in the finished cloth"]
)]
pub fn count_after_finishing<N: Number>(
    /// count before
    #[q("T₁", 5.0..=2000.0)]
    count_before: LinearDensity<N>,
    /// mass lost; negative where the cloth gains
    #[q("m_l", -0.1..=0.25)]
    mass_loss: MassLoss<N>,
    /// shrinkage along the yarn
    #[q("s_y", -0.05..=0.45)]
    along_shrinkage: Shrinkage<N>,
) -> LinearDensity<N> {
    count_before * (1.0 - mass_loss) / (1.0 - along_shrinkage)
}

/// Crimp after the cloth has shrunk more or less than its yarn.
#[formula(
    result = "c₂",
    sources = ["definition"],
    limits = ["the crimp stays the same where cloth and yarn shrink alike; yarn that keeps its length takes all the shrinkage as crimp"],
    slips = ["adding the shrinkage to the crimp"]
)]
#[inverse(
    "Crimp before finishing from that in the finished cloth.",
    crimp_before_finishing(crimp_after: 0.0..=0.3, along_shrinkage, yarn_shrinkage) -> crimp_before
        = (1.0 + crimp_after) * (1.0 - along_shrinkage) / (1.0 - yarn_shrinkage) - 1.0,
    limits = ["crimps on the cloth; negative where there was none: then the shrinkages do not go together"],
    slips = ["taking the crimp of the finished cloth for that on the loom"]
)]
#[inverse(
    "How much the yarn itself shrank in a cloth that shrank while its crimp changed.",
    yarn_shrinkage_in_cloth(along_shrinkage, crimp_before, crimp_after: 0.0..=0.3) -> yarn_shrinkage
        = 1.0 - (1.0 - along_shrinkage) * (1.0 + crimp_after) / (1.0 + crimp_before),
    limits = ["crimps on the cloth, before and after"],
    slips = ["taking the shrinkage of the cloth for that of the yarn: part of it may be crimp"]
)]
pub fn crimp_after_finishing<N: Number>(
    /// crimp before
    #[q("c₁", 0.0..=0.3)]
    crimp_before: Crimp<N>,
    /// shrinkage of the cloth along the yarn
    #[q("s_y", -0.05..=0.45)]
    along_shrinkage: Shrinkage<N>,
    /// shrinkage of the yarn itself
    #[q("s_t", -0.05..=0.45)]
    yarn_shrinkage: Shrinkage<N>,
) -> Crimp<N> {
    (1.0 + crimp_before) * (1.0 - yarn_shrinkage) / (1.0 - along_shrinkage) - 1.0
}

/// Cover factor after finishing of the threads of one direction.
#[formula(
    result = "K_a",
    sources = ["definition"],
    limits = ["the crimp unchanged, so that the yarn shortens with the cloth", "milled cloth is covered by its felt, of which the cover factor knows nothing"],
    slips = ["the two shrinkages exchanged: threads close up with the side across them", "leaving out that the yarn grows coarser as it shortens"]
)]
pub fn cover_factor_after_finishing<N: Number>(
    /// cover factor before
    #[q("K_b", 2.0..=30.0)]
    cover_factor_before: CoverFactor<N>,
    /// mass lost; negative where the cloth gains
    #[q("m_l", -0.1..=0.25)]
    mass_loss: MassLoss<N>,
    /// shrinkage across the threads
    #[q("s_x", -0.05..=0.45)]
    across_shrinkage: Shrinkage<N>,
    /// shrinkage along the yarn
    #[q("s_y", -0.05..=0.45)]
    along_shrinkage: Shrinkage<N>,
) -> CoverFactor<N> {
    cover_factor_before * ((1.0 - mass_loss) / (1.0 - along_shrinkage)).sqrt()
        / (1.0 - across_shrinkage)
}
