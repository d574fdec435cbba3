//! Raw wool: what a greasy lot holds.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Fraction, Mass, MassLoss, Ratio, Regain, ShareLost, Yield};

// What the trade's yields keep beside pure fibre; those of the wool trade are from memory.
/// Pure fibre and vegetable matter in the dry mass of scoured wool.
pub(super) const IWTO_PURE: f64 = 0.9773;
/// Regain and the pure share of the Japanese yield.
pub(super) const JAPANESE: (f64, f64) = (0.16, 0.985);
/// Top and noil for unit of wool base.
pub(super) const TOP_AND_NOIL: f64 = 1.207;
/// Pure fibre in the customs' clean content.
pub(super) const CUSTOMS_PURE: f64 = 0.86;
/// The customs' allowance: of the content, of the vegetable matter, at most of the content.
pub(super) const ALLOWANCE: (f64, f64, f64) = (0.005, 0.60, 0.15);

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
    greasy_mass: Mass<N>,
    /// share rejected, with its dirt
    #[q("r_j", 0.0..=0.3)]
    rejects: ShareLost<N>,
) -> Mass<N> {
    greasy_mass * (1.0 - rejects)
}

/// Clean dry fibre in greasy wool.
#[formula(
    result = "f",
    sources = ["practice"],
    limits = ["the clean share is oven-dry, free of grease, dirt and vegetable matter; a trade yield at a regain is larger"],
    slips = ["using a yield that already holds regain as if it were dry fibre"]
)]
pub fn fibre_from_greasy<N: Number>(
    /// greasy mass
    #[q("G", 1.0..=5000.0)]
    greasy_mass: Mass<N>,
    /// clean dry fibre as a share of the greasy mass
    #[q("y", 0.3..=0.8)]
    clean_yield: Fraction<N>,
) -> Mass<N> {
    greasy_mass * clean_yield
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
    scoured_mass: Mass<N>,
    /// mass before
    #[q("G", 1.0..=5000.0)]
    greasy_mass: Mass<N>,
) -> Yield<N> {
    scoured_mass / greasy_mass
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
    #[q("R_s", 0.15..=0.19)]
    stated_regain: Regain<N>,
) -> Yield<N> {
    (wool_base + vegetable_base) * (1.0 + stated_regain) / IWTO_PURE
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
    wool_base / CUSTOMS_PURE
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
    clean_content: Yield<N>,
    /// vegetable matter as a share of the greasy mass
    #[q("V", 0.0..=0.3)]
    vegetable_on_greasy: Fraction<N>,
) -> Yield<N> {
    let (of_content, of_vegetable, most) = ALLOWANCE;
    clean_content
        - (of_content * clean_content + of_vegetable * vegetable_on_greasy)
            .min(most * clean_content)
}

/// Clean scoured yield as the Japanese trade has it: without vegetable matter.
#[formula(
    result = "Y",
    sources = ["memory"],
    limits = ["16 % regain and 1.5 % ash and extract, both from memory: compare with the test certificate"],
    slips = ["comparing it with the scoured yield that counts the vegetable matter"]
)]
pub fn scoured_yield_japanese<N: Number>(
    /// bone-dry pure wool fibre as a share of the greasy mass
    #[q("WB", 0.3..=0.8)]
    wool_base: Fraction<N>,
) -> Yield<N> {
    let (regain, pure) = JAPANESE;
    wool_base * (1.0 + regain) / pure
}

/// Top and noil to expect, dry combed, with what combing loses to vegetable matter taken off.
///
/// The allowance for processing is 7.7 − 40.6/(7.83 + VMB), in percent of the greasy mass.
#[formula(
    result = "Y",
    sources = ["memory"],
    limits = ["all its constants are from memory: compare with the test certificate before anything is paid on it"],
    slips = ["giving the vegetable matter as a fraction where the constants are for percent"]
)]
pub fn top_and_noil_dry<N: Number>(
    /// bone-dry pure wool fibre as a share of the greasy mass
    #[q("WB", 0.3..=0.8)]
    wool_base: Fraction<N>,
    /// dry vegetable matter, free of ash and extract, as a share of the greasy mass
    #[q("VMB", 0.0..=0.1)]
    vegetable_base: Fraction<N>,
) -> Yield<N> {
    TOP_AND_NOIL * wool_base - combing_allowance(vegetable_base)
}

/// What combing loses, as a share of the greasy mass.
pub(super) fn combing_allowance<N: Number>(vegetable_base: V<N>) -> V<N> {
    (7.7 - 40.6 / (7.83 + 100.0 * vegetable_base)) / 100.0
}

/// Shrinkage of greasy wool: what is not yield.
#[formula(
    result = "m_l",
    sources = ["Burns 1940", "definition"],
    limits = ["on the same definition as the yield; negative where scoured wool with its water weighs more"],
    slips = ["comparing shrinkages of yields at different regains", "a shrinkage of 48 % for a yield of 48 %"]
)]
pub fn mass_loss_from_yield<N: Number>(
    /// yield
    #[q("y", 0.3..=0.9)]
    clean_yield: Yield<N>,
) -> MassLoss<N> {
    1.0 - clean_yield
}

/// Share of one sort in the lot that was sorted.
#[formula(
    result = "p₁",
    sources = ["definition"],
    cautions = ["raw fleece", "dust"],
    limits = ["all weighed in the grease, the rejects among them"],
    slips = ["leaving the rejects out of the whole", "counting fleeces instead of weighing"]
)]
pub fn share_of_sort<N: Number>(
    /// masses of all sorts, the one asked for first
    #[q("m", 0.01..=5000.0)]
    masses: &[Mass<N>],
) -> Fraction<N> {
    V::first(masses.clone()) / V::sum(masses)
}

/// Yield of a lot from those of its sorts.
#[formula(
    result = "Y_t",
    sources = ["definition"],
    cautions = ["raw fleece"],
    limits = ["all yields by one definition, all masses in the grease"],
    slips = ["the plain mean of the yields: a small sort counts as much as the large one"]
)]
pub fn yield_of_sorts<N: Number>(
    /// masses of the sorts
    #[q("m", 0.01..=5000.0)]
    masses: &[Mass<N>],
    /// their yields
    #[q("Y", 0.3..=0.9)]
    yields: &[Yield<N>],
) -> Yield<N> {
    V::sum(masses.clone().zip(yields).map(|(m, y)| m * y)) / V::sum(masses)
}

/// Clean dry fibre in greasy wool, from washed samples: all that was clean over all that was greasy.
#[formula(
    result = "y",
    sources = ["definition"],
    cautions = ["raw fleece", "scouring"],
    limits = ["the samples drawn from all over the lot; all weighed clean in one state of moisture and fat", "two sub-samples of 150 to 200 g at least are usual in a laboratory"],
    slips = ["taking the washed mass for dry fibre: the water and fat left on it are no yield", "averaging the yields of samples of unlike size"]
)]
pub fn washed_clean_share<N: Number>(
    /// mass of the washed wool for each unit of clean dry fibre
    #[q("s_m", 1.0..=1.3)]
    state_ratio: Ratio<N>,
    /// washed masses of the samples
    #[q("m", 0.02..=2.0)]
    washed_masses: &[Mass<N>],
    /// greasy masses of the same samples
    #[q("G", 0.05..=3.0)]
    greasy_masses: &[Mass<N>],
) -> Fraction<N> {
    V::sum(washed_masses) / (state_ratio * V::sum(greasy_masses))
}

/// Noil as a share of top and noil, from the tear.
#[formula(
    result = "x",
    sources = ["Tear abstract", "Wool education"],
    limits = ["tear is top over noil; the share of noil is also called romaine"],
    slips = ["one over the tear: that is noil on top, not on both"]
)]
pub fn noil_share<N: Number>(
    /// tear: top over noil
    #[q("t", 3.0..=20.0)]
    tear: Ratio<N>,
) -> Fraction<N> {
    1.0 / (1.0 + tear)
}
