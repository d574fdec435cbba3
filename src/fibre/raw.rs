//! Raw wool: what a greasy lot holds.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{Fraction, Mass, Regain, Yield};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[
    &SORTED_MASS,
    &CLEAN_FIBRE,
    &SCOURED_YIELD,
    &SCOURED_YIELD_IWTO,
    &CLEAN_CONTENT_CUSTOMS,
    &CLEAN_YIELD_CUSTOMS,
];

/// Greasy mass left after the rejects are sorted out.
#[formula(
    result = "S",
    sources = ["practice"],
    cautions = ["raw fleece", "dust"],
    slips = ["taking the rejects off the clean mass although they went out with their dirt"]
)]
pub fn sorted_mass<N: Number>(
    /// greasy mass as received
    #[q("G", 1.0..=5000.0)]
    greasy: Mass<N>,
    /// share rejected, with its dirt
    #[q("r", 0.0..=0.3)]
    rejects: Fraction<N>,
) -> Mass<N> {
    greasy * (1.0 - rejects)
}

/// Clean dry fibre in greasy wool.
#[formula(
    result = "f",
    sources = ["practice"],
    limits = ["the clean share is oven-dry, free of grease, dirt and vegetable matter; a trade yield at a regain is larger"],
    slips = ["using a yield that already holds regain as if it were dry fibre"]
)]
pub fn clean_fibre<N: Number>(
    /// greasy mass
    #[q("S", 1.0..=5000.0)]
    greasy: Mass<N>,
    /// clean dry fibre as a share of the greasy mass
    #[q("y", 0.3..=0.8)]
    clean_share: Fraction<N>,
) -> Mass<N> {
    greasy * clean_share
}

/// Mass after scouring as a share of the mass before.
#[formula(
    result = "Y",
    sources = ["definition"],
    limits = ["says nothing without the regain, fat and vegetable matter of the scoured wool"],
    slips = ["comparing yields at different regains"]
)]
pub fn scoured_yield<N: Number>(
    /// mass after scouring
    #[q("m", 0.1..=5000.0)]
    scoured: Mass<N>,
    /// mass before
    #[q("G", 1.0..=5000.0)]
    greasy: Mass<N>,
) -> Yield<N> {
    scoured / greasy
}

/// Scoured yield that the wool trade calculates from a core test, at a regain.
///
/// Scoured wool keeps 2.27 % of its dry mass as ash and extract, so wool base and vegetable matter
/// are 97.73 % of it. The regain is 16 % or 17 %, as the sale says.
#[formula(
    result = "Y",
    sources = ["memory"],
    limits = ["the 2.27 % and the regains are from memory: compare with the test certificate"],
    slips = ["comparing a yield at 16 % with one at 17 %", "taking it for clean fibre: it holds water, ash, extract and vegetable matter"]
)]
pub fn scoured_yield_iwto<N: Number>(
    /// bone-dry pure wool fibre as a share of the greasy mass
    #[q("WB", 0.3..=0.8)]
    wool_base: Fraction<N>,
    /// dry vegetable matter, free of ash and extract, as a share of the greasy mass
    #[q("VMB", 0.0..=0.1)]
    vegetable_base: Fraction<N>,
    /// regain at which the yield is stated
    #[q("R", 0.15..=0.19)]
    regain: Regain<N>,
) -> Yield<N> {
    (wool_base + vegetable_base) * (1.0 + regain) / 0.9773
}

/// Clean content of the United States customs, from bone-dry pure fibre.
///
/// The clean content carries 12 % moisture, 1.5 % extract and 0.5 % ash: 86 % of it is pure fibre.
/// Pure dry fibre therefore has a clean content of 116 %: it would weigh so much with them on it.
#[formula(
    result = "A",
    sources = ["19 CFR 151"],
    slips = ["adding 14 % instead of dividing by 0.86"]
)]
pub fn clean_content_customs<N: Number>(
    /// bone-dry pure wool fibre as a share of the greasy mass
    #[q("WB", 0.3..=0.8)]
    wool_base: Fraction<N>,
) -> Yield<N> {
    wool_base / 0.86
}

/// Clean yield of the United States customs: clean content less an allowance for vegetable matter.
#[formula(
    result = "Y",
    sources = ["19 CFR 151"],
    slips = ["leaving out the cap: the allowance is never more than 15 % of the content"]
)]
pub fn clean_yield_customs<N: Number>(
    /// clean content
    #[q("A", 0.3..=0.9)]
    content: Yield<N>,
    /// vegetable matter as a share of the greasy mass
    #[q("V", 0.0..=0.3)]
    vegetable: Fraction<N>,
) -> Yield<N> {
    content - (0.005 * content + 0.60 * vegetable).min(0.15 * content)
}
