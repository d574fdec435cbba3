//! Fineness of wool and the number of fibres in a yarn.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{Count, Density, Fineness, Fraction, LinearDensity};
use std::f64::consts::PI;

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] =
    &[&WOOL_FIBRE_COUNT, &FIBRE_DIAMETER, &FIBRES_IN_SECTION, &LIMIT_IRREGULARITY];

/// Density of wool, g/cm³ (from memory; Morton and Hearle's table as relayed gives the same).
const WOOL_DENSITY: f64 = 1.31;

/// Linear density of a round wool fibre from its diameter.
#[formula(
    result = "T_f",
    sources = ["Textile School", "memory"],
    limits = ["density of wool 1.31 g/cm³; a fibre of exactly this diameter: a lot has a spread"],
    slips = ["squaring the mean where the mean of squares is meant: a lot's mean fibre is heavier by 1 + CV²"]
)]
pub fn wool_fibre_count<N: Number>(
    /// fibre diameter
    #[q("d", 12.0..=50.0)]
    diameter: Fineness<N>,
) -> LinearDensity<N> {
    PI * WOOL_DENSITY * diameter.squared() / 4000.0
}

/// Diameter of a round fibre from its linear density.
#[formula(
    result = "d",
    sources = ["Textile School", "definition"],
    limits = ["a round solid fibre: cotton and viscose are not round, and the figure is that of a circle of equal section"],
    slips = ["denier for decitex: 5 % in the diameter", "proportion instead of square root"]
)]
pub fn fibre_diameter<N: Number>(
    /// linear density of the fibre
    #[q("T_f", 0.01..=10.0)]
    count: LinearDensity<N>,
    /// density of the fibre
    #[q("ρ", 0.9..=2.6)]
    density: Density<N>,
) -> Fineness<N> {
    1000.0 * (4.0 * count / (1000.0 * PI * density)).sqrt()
}

/// Mean number of fibres in the section of a yarn.
#[formula(
    result = "n",
    sources = ["Rieter", "GATE solutions"],
    limits = ["yarn clean and conditioned, without oil, as the fibre count is", "about 100 to 120 are wanted for a woollen yarn (from memory)"],
    slips = ["leaving out the spread of diameters: the number reads 6 % high at a CV of 25 %", "using the count in oil"]
)]
pub fn fibres_in_section<N: Number>(
    /// yarn count, clean and conditioned
    #[q("T", 1.0..=2000.0)]
    yarn: LinearDensity<N>,
    /// count of a fibre of the mean diameter
    #[q("T_f", 0.05..=3.0)]
    fibre: LinearDensity<N>,
    /// coefficient of variation of the diameter
    #[q("CV", 0.0..=0.35)]
    variation: Fraction<N>,
) -> Count<N> {
    yarn / (fibre * (1.0 + variation.squared()))
}

/// Least possible irregularity of a yarn: fibres laid by chance.
#[formula(
    result = "CV_lim",
    sources = ["GATE solutions", "memory"],
    limits = ["k is 1.00 for uniform fibres, 1.06 for cotton; 1.12 for wool is from memory"],
    slips = ["taking n instead of its root"]
)]
pub fn limit_irregularity<N: Number>(
    /// factor for the spread of the fibres' mass
    #[q("k", 1.0..=1.2)]
    factor: crate::quantity::Ratio<N>,
    /// fibres in the section
    #[q("n", 20.0..=1000.0)]
    fibres: Count<N>,
) -> Fraction<N> {
    factor / fibres.sqrt()
}
