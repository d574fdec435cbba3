//! Liquor: how much, what is in it, what the goods carry from bowl to bowl.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Concentration, Density, Fraction, Mass, Ratio, Regain, Volume};

/// Liquor for a mass of goods, from the liquor ratio.
#[formula(
    result = "V",
    sources = ["definition"],
    limits = ["litres for a kilogram of goods, in the state in which the ratio is meant: commonly dry to the hand"],
    slips = ["1:30 taken as thirty of the whole: it is thirty of liquor to one of goods", "the ratio on wet goods"],
    cautions = ["hot liquor"]
)]
pub fn liquor_volume<N: Number>(
    /// goods
    #[q("m_g", 0.01..=5000.0)]
    goods_mass: Mass<N>,
    /// litres of liquor for a kilogram of goods
    #[q("r", 4.0..=100.0)]
    liquor_ratio: Ratio<N>,
) -> Volume<N> {
    goods_mass * liquor_ratio
}

/// Mass of what is dissolved in a volume of liquor.
#[formula(
    result = "a",
    sources = ["definition"],
    limits = ["the liquor as it is when all is filled up"],
    slips = ["an ounce to the gallon taken for one to ten litres", "a gallon of the United States, 3.785 L, for an imperial one of 4.546 L"],
    cautions = ["hot liquor"]
)]
#[inverse(
    "Concentration of what is dissolved in a volume of liquor.",
    concentration_from_mass(dissolved_mass "mass dissolved": 0.0001..=1000.0, liquor_volume) -> concentration
        = 1000.0 * dissolved_mass / liquor_volume,
    slips = ["dividing by the water alone where much is dissolved", "a gallon of the United States for an imperial one"]
)]
pub fn mass_in_liquor<N: Number>(
    /// liquor
    #[q("V", 0.1..=100000.0)]
    liquor_volume: Volume<N>,
    /// mass in a volume
    #[q("c", 0.01..=200.0)]
    concentration: Concentration<N>,
) -> Mass<N> {
    liquor_volume * concentration / 1000.0
}

/// Liquor that squeezed or drained goods carry to the next bowl.
#[formula(
    result = "V_c",
    sources = ["definition"],
    limits = ["what the squeeze leaves is weighed at the machine: it is not a constant of the fibre"],
    slips = ["taking what is carried for a share of the wet mass"],
    cautions = ["scouring"]
)]
pub fn liquor_carried<N: Number>(
    /// dry goods
    #[q("m_d", 0.01..=5000.0)]
    oven_dry_mass: Mass<N>,
    /// liquor left on them, on the dry mass
    #[q("p", 0.2..=4.0)]
    pickup: Regain<N>,
    /// density of the liquor
    #[q("ρ", 0.95..=1.1)]
    liquor_density: Density<N>,
) -> Volume<N> {
    oven_dry_mass * pickup / liquor_density
}

/// Share of what is dissolved in the carried liquor that is left after rinses, each well mixed.
#[formula(
    result = "x",
    sources = ["definition"],
    limits = [
        "clean water in each rinse, the goods squeezed to the same before each, all of it well mixed",
        "for what is dissolved only: what grease stays on the fibre is found by test, and follows no law of dilution"
    ],
    slips = ["carried over liquor instead of carried over the sum of both", "adding the rinses: they multiply"],
    cautions = ["hot liquor"]
)]
pub fn left_after_rinses<N: Number>(
    /// liquor that the goods carry into each rinse
    #[q("V_c", 0.01..=20000.0)]
    carried_volume: Volume<N>,
    /// clean water of each rinse
    #[q("V", 0.1..=100000.0)]
    rinse_volumes: &[Volume<N>],
) -> Fraction<N> {
    V::product(rinse_volumes.map(|v| carried_volume / (carried_volume + v)))
}

/// Concentration after the volume of the bath has changed: filled up, or boiled down.
#[formula(
    result = "c₂",
    sources = ["definition"],
    limits = ["nothing dissolved leaves or comes: exhausted dye is no longer in the bath"],
    slips = ["leaving out the water that wet goods bring"],
    cautions = ["hot liquor"]
)]
pub fn concentration_after_change<N: Number>(
    /// concentration before
    #[q("c₁", 0.001..=200.0)]
    concentration_before: Concentration<N>,
    /// volume before
    #[q("V₁", 0.1..=100000.0)]
    volume_before: Volume<N>,
    /// volume after
    #[q("V₂", 0.1..=100000.0)]
    volume_after: Volume<N>,
) -> Concentration<N> {
    concentration_before * volume_before / volume_after
}
