//! The mass to invoice, and the regain of a blend.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Fraction, Mass, MoistureContent, OnFibre, Regain};

/// Commercial regain of a blend of any number of fibres, each share by oven-dry mass.
#[formula(
    result = "A",
    sources = ["GATE solutions", "Moisture blog 2015"],
    limits = ["shares of the oven-dry mass; the allowances are those of the contract"],
    slips = ["taking the shares of the mass as weighed: the fibre with more water on it counts too much"]
)]
pub fn blend_regain<N: Number>(
    /// shares of the fibres in the oven-dry mass
    #[q("p", 0.0..=1.0, whole)]
    dry_shares: &[Fraction<N>],
    /// regain agreed for each fibre
    #[q("R", 0.0..=0.3)]
    regains: &[Regain<N>],
) -> Regain<N> {
    V::sum(dry_shares.zip(regains).map(|(p, a)| p * a))
}

/// Regain of one fibre of a blend, from the regain of the whole and that of the others.
#[formula(
    result = "A₁",
    sources = ["definition"],
    limits = ["the others together: blend_regain on their shares among themselves"],
    slips = ["subtracting the regains without the shares"]
)]
pub fn regain_of_remainder<N: Number>(
    /// regain of the blend
    #[q("A", 0.0..=0.2)]
    blend_regain: Regain<N>,
    /// share of this fibre in the oven-dry mass
    #[q("p", 0.05..=1.0)]
    dry_share: Fraction<N>,
    /// regain of the other fibres together
    #[q("A₂", 0.0..=0.2)]
    others_regain: Regain<N>,
) -> Regain<N> {
    (blend_regain - (1.0 - dry_share) * others_regain) / dry_share
}

/// Share of the first fibre in the oven-dry mass of a blend, from the shares as weighed.
#[formula(
    result = "p₁",
    sources = ["definition"],
    limits = ["the fibre asked for is first, in both lists", "the regains are those at weighing, not the allowances"],
    slips = ["taking the allowances for the regains found"]
)]
pub fn dry_share<N: Number>(
    /// shares of the mass as weighed, the fibre asked for first
    #[q("q", 0.0..=1.0, whole)]
    weighed_shares: &[Fraction<N>],
    /// regain of each fibre when it was weighed
    #[q("R", 0.0..=0.4)]
    regains: &[Regain<N>],
) -> Fraction<N> {
    let dry = weighed_shares.zip(regains).map(|(q, r)| q / (1.0 + r));
    V::first(dry.clone()) / V::sum(dry)
}

/// Invoice mass: oven-dry mass with the agreed allowances for water and fat.
#[formula(
    result = "C",
    sources = ["Moisture blog 2015", "French order 1998"],
    limits = ["the allowances are those of the contract; 17 % is the European list's for carded wool, 18.25 % for combed"],
    slips = ["multiplying (1 + A)(1 + a) where the contract adds both on the dry mass"]
)]
pub fn commercial_mass<N: Number>(
    /// oven-dry mass
    #[q("m_d", 0.001..=10000.0)]
    oven_dry_mass: Mass<N>,
    /// agreed allowance for water
    #[q("A", 0.0..=0.2)]
    allowance: Regain<N>,
    /// agreed allowance for fat, oil and dressing
    #[q("a", 0.0..=0.1)]
    fat_allowance: OnFibre<N>,
) -> Mass<N> {
    oven_dry_mass * (1.0 + allowance + fat_allowance)
}

/// Invoice mass, from the mass as weighed and the share of water in it.
#[formula(
    result = "C",
    sources = ["Moisture blog 2015"],
    limits = ["the allowance is that of the contract"],
    slips = ["dividing by 1 + M: 99.10 kg for 98.95 kg in a solved examination paper"]
)]
pub fn invoice_mass_from_content<N: Number>(
    /// mass as weighed
    #[q("m", 0.001..=50000.0)]
    mass: Mass<N>,
    /// water as a share of the mass with its water
    #[q("M", 0.0..=0.3)]
    moisture_content: MoistureContent<N>,
    /// agreed allowance for water
    #[q("A", 0.0..=0.2)]
    allowance: Regain<N>,
) -> Mass<N> {
    mass * (1.0 - moisture_content) * (1.0 + allowance)
}

/// Invoice mass of a lot whose sample was cleaned before it was dried.
#[formula(
    result = "C",
    sources = ["Moisture blog 2015"],
    limits = ["fat and dressing are out of the dry sample and come back as their allowances, all on the clean dry mass"],
    slips = ["leaving out the allowances for what the cleaning took away", "weighing the sample after cleaning only"]
)]
pub fn invoice_mass_of_cleaned<N: Number>(
    /// lot as weighed
    #[q("m_L", 0.01..=50000.0)]
    lot_mass: Mass<N>,
    /// sample as taken
    #[q("m_s", 0.0001..=10.0)]
    sample_mass: Mass<N>,
    /// sample, cleaned and oven-dry
    #[q("m_sd", 0.0001..=10.0)]
    dry_sample_mass: Mass<N>,
    /// agreed allowance for water
    #[q("A", 0.0..=0.2)]
    allowance: Regain<N>,
    /// agreed allowance for natural fat
    #[q("a", 0.0..=0.1)]
    fat_allowance: OnFibre<N>,
    /// agreed allowance for oil and dressing
    #[q("b", 0.0..=0.1)]
    dressing_allowance: OnFibre<N>,
) -> Mass<N> {
    lot_mass * dry_sample_mass / sample_mass
        * (1.0 + allowance + fat_allowance + dressing_allowance)
}
