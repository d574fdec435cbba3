//! Oil and emulsion before teasing.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{Density, Fraction, Mass, Volume};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[&ADD_ON, &VOLUME_OF_MASS, &EMULSION_MASS];

/// Oil or water to put on clean dry fibre.
#[formula(
    result = "a",
    sources = ["practice"],
    limits = ["the share is on clean dry fibre, not on the wool as weighed", "woollen oil is commonly 3 to 10 % (from memory)"],
    slips = ["taking the share of the oiled mass"]
)]
pub fn add_on<N: Number>(
    /// clean dry fibre
    #[q("f", 0.1..=10000.0)]
    fibre: Mass<N>,
    /// share to add, on clean dry fibre
    #[q("o", 0.0..=0.2)]
    share: Fraction<N>,
) -> Mass<N> {
    fibre * share
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
    slips = ["taking parts of oil to water for a share of the whole: one to two is a third"]
)]
pub fn emulsion_mass<N: Number>(
    /// oil wanted on the wool
    #[q("a", 0.001..=1000.0)]
    oil: Mass<N>,
    /// oil as a share of the emulsion
    #[q("x", 0.05..=1.0)]
    oil_share: Fraction<N>,
) -> Mass<N> {
    oil / oil_share
}
