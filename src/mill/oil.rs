//! Oil and water: put on before teasing, washed out of the yarn.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Density, Fraction, Mass, MassLoss, OnFibre, Regain, Volume};

/// Oil or water to put on clean dry fibre.
#[formula(
    result = "a",
    sources = ["practice"],
    limits = ["the share is on clean dry fibre, not on the wool as weighed", "woollen oil is commonly 3 to 10 % (from memory)"],
    slips = ["taking the share of the oiled mass"],
    cautions = ["oil"]
)]
pub fn mass_to_add<N: Number>(
    /// clean dry fibre
    #[q("f", 0.1..=10000.0)]
    fibre_mass: Mass<N>,
    /// share to add, on clean dry fibre
    #[q("o", 0.0..=0.2)]
    share_to_add: OnFibre<N>,
) -> Mass<N> {
    fibre_mass * share_to_add
}

/// Volume of a liquid from its mass.
#[formula(
    result = "V",
    sources = ["definition"],
    limits = ["density at the temperature of measuring"],
    slips = ["multiplying by a density below 1: oil fills more litres than kilograms"]
)]
pub fn volume_of_mass<N: Number>(
    /// mass
    #[q("m", 0.001..=1000.0)]
    mass: Mass<N>,
    /// density
    #[q("ρ", 0.7..=1.3)]
    density: Density<N>,
) -> Volume<N> {
    mass / density
}

/// Emulsion that brings a wanted mass of oil.
#[formula(
    result = "E",
    sources = ["definition"],
    limits = ["by mass; emulsifier counted with the water"],
    cautions = ["oil"],
    slips = ["taking parts of oil to water for a share of the whole: one to two is a third"]
)]
pub fn emulsion_mass<N: Number>(
    /// oil wanted on the wool
    #[q("a", 0.001..=1000.0)]
    oil_mass: Mass<N>,
    /// oil as a share of the emulsion
    #[q("x", 0.05..=1.0)]
    oil_in_emulsion: Fraction<N>,
) -> Mass<N> {
    oil_mass / oil_in_emulsion
}

/// Grease and oil on clean dry fibre after oiling.
#[formula(
    result = "o₂",
    sources = ["definition"],
    limits = ["both on clean dry fibre"],
    slips = ["taking the new oil of the greasy mass"],
    cautions = ["oil"]
)]
pub fn fat_after_oiling<N: Number>(
    /// grease and oil on it before
    #[q("o₁", 0.0..=0.2)]
    fat_before: OnFibre<N>,
    /// oil put on, on clean dry fibre
    #[q("o_a", 0.0..=0.2)]
    oil_added: OnFibre<N>,
) -> OnFibre<N> {
    fat_before + oil_added
}

/// Water on clean dry fibre after wetting.
#[formula(
    result = "R₂",
    sources = ["definition"],
    limits = ["both on clean dry fibre; what dries off while the stack lies is not counted"],
    slips = ["taking the water of the mass as weighed", "leaving out the water of the emulsion"]
)]
pub fn regain_after_wetting<N: Number>(
    /// water on it before
    #[q("R₁", 0.0..=0.4)]
    regain_before: Regain<N>,
    /// water put on, on clean dry fibre
    #[q("e_a", 0.0..=0.3)]
    water_added: OnFibre<N>,
) -> Regain<N> {
    regain_before + water_added
}

/// Grease and oil left on clean dry fibre after washes that each take a share of it away.
#[formula(
    result = "o₂",
    sources = ["definition"],
    limits = ["the shares are found by test, wash by wash; later washes take away a smaller share, and none takes the last of it", "about 0.5 % stays on a scoured woollen yarn (from memory)"],
    slips = ["adding the shares: two washes that each take 80 % leave 4 %, not nothing"],
    cautions = ["scouring"]
)]
pub fn fat_after_washes<N: Number>(
    /// grease and oil before
    #[q("o₁", 0.0..=0.4)]
    fat_before: OnFibre<N>,
    /// share that each wash takes of what it meets
    #[q("g", 0.0..=1.0)]
    removed_shares: &[Fraction<N>],
) -> OnFibre<N> {
    fat_before * V::product(removed_shares.map(|g| 1.0 - g))
}

/// Loss of mass of an oiled yarn or cloth when its oil is scoured out, at equal regain.
#[formula(
    result = "m_l",
    sources = ["definition"],
    limits = ["no fibre is lost; without water and with nothing left it is o/(1 + o)"],
    slips = ["taking the oil on fibre for the loss: 5 % on fibre are 4.8 % of the oiled mass"],
    cautions = ["scouring"]
)]
pub fn scouring_loss<N: Number>(
    /// oil on clean dry fibre before
    #[q("o₁", 0.0..=0.2)]
    fat_before: OnFibre<N>,
    /// oil on clean dry fibre after
    #[q("o₂", 0.0..=0.02)]
    fat_after: OnFibre<N>,
    /// water on clean dry fibre, before and after
    #[q("R", 0.0..=0.3)]
    regain: Regain<N>,
) -> MassLoss<N> {
    (fat_before - fat_after) / (1.0 + regain + fat_before)
}
