//! Dyeing: masses and volumes of a bath. The recipe is the dyer's own, from the maker of the dye.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Concentration, Fraction, Mass, OnFibre, Volume, Yield};

/// Dye or auxiliary to weigh out, from its share of the mass of the goods.
#[formula(
    result = "d",
    sources = ["practice"],
    limits = ["the mass is in the state that the recipe means: commonly dry to the hand; oil and grease are out first", "strength as the maker states it, 100 % for the standard"],
    slips = ["taking the mass of the wet goods", "a dye of double strength weighed as if it were single"],
    cautions = ["dyeing"]
)]
pub fn dye_mass<N: Number>(
    /// goods, in the state that the recipe means
    #[q("m_g", 0.01..=5000.0)]
    goods_mass: Mass<N>,
    /// depth: share of the mass of the goods
    #[q("p", 0.0..=0.5)]
    depth: OnFibre<N>,
    /// strength of the product, on that of the standard
    #[q("s_d", 0.2..=4.0)]
    dye_strength: Yield<N>,
) -> Mass<N> {
    goods_mass * depth / dye_strength
}

/// Stock solution that holds a mass of dye.
#[formula(
    result = "V",
    sources = ["definition"],
    limits = ["a stock of 1 % has 10 g in a litre"],
    slips = ["taking a 1 % stock for 1 g in a litre"],
    cautions = ["dyeing"]
)]
pub fn stock_volume<N: Number>(
    /// dye wanted
    #[q("d", 0.00001..=100.0)]
    dye_mass: Mass<N>,
    /// concentration of the stock solution
    #[q("c", 0.5..=100.0)]
    stock_concentration: Concentration<N>,
) -> Volume<N> {
    1000.0 * dye_mass / stock_concentration
}

/// Water to fill the bath up, beside what solutions and wet goods bring.
#[formula(
    result = "V_w",
    sources = ["definition"],
    limits = ["volumes add where solutions are thin"],
    slips = ["leaving out the water in goods that were wetted out"],
    cautions = ["hot liquor"]
)]
pub fn water_to_fill<N: Number>(
    /// liquor wanted
    #[q("V", 1.0..=100000.0)]
    liquor_volume: Volume<N>,
    /// what is in it already: stock solutions, water in the goods
    #[q("V_i", 0.0..=20000.0)]
    volumes_in: &[Volume<N>],
) -> Volume<N> {
    liquor_volume - V::sum(volumes_in)
}

/// Dye left in the bath when a share of it is on the goods.
#[formula(
    result = "d_l",
    sources = ["definition"],
    limits = ["fixed and loosely held dye are both counted as on the goods"],
    slips = ["taking what is washed off later for dye left in the bath"],
    cautions = ["dyeing"]
)]
pub fn dye_left<N: Number>(
    /// dye put in
    #[q("d", 0.00001..=100.0)]
    dye_mass: Mass<N>,
    /// exhaustion: share of it on the goods
    #[q("E", 0.3..=1.0)]
    exhaustion: Fraction<N>,
) -> Mass<N> {
    dye_mass * (1.0 - exhaustion)
}

/// Exhaustion, from the bath before and after.
#[formula(
    result = "E",
    sources = ["definition"],
    limits = ["one dye, measured the same way before and after"],
    slips = ["leaving out that the bath boiled down: the concentrations alone read too low"],
    cautions = ["dyeing"]
)]
pub fn exhaustion_from_baths<N: Number>(
    /// concentration of the dye before
    #[q("c₁", 0.01..=50.0)]
    concentration_before: Concentration<N>,
    /// bath before
    #[q("V₁", 1.0..=100000.0)]
    volume_before: Volume<N>,
    /// concentration of the dye after
    #[q("c₂", 0.0..=50.0)]
    concentration_after: Concentration<N>,
    /// bath after
    #[q("V₂", 1.0..=100000.0)]
    volume_after: Volume<N>,
) -> Fraction<N> {
    1.0 - concentration_after * volume_after / (concentration_before * volume_before)
}
