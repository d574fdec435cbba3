//! Fineness of wool and the number of fibres in a yarn.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Count, Density, Fineness, Fraction, LinearDensity, Ratio};
use std::f64::consts::PI;

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
    #[q("d_f", 12.0..=50.0)]
    fibre_diameter: Fineness<N>,
) -> LinearDensity<N> {
    PI * WOOL_DENSITY * fibre_diameter.squared() / 4000.0
}

/// Diameter of a round fibre from its linear density.
#[formula(
    result = "d_f",
    sources = ["Textile School", "definition"],
    limits = ["a round solid fibre: cotton and viscose are not round, and the value is that of a circle of equal section"],
    slips = ["denier for decitex: 5 % in the diameter", "proportion instead of square root"]
)]
pub fn fibre_diameter<N: Number>(
    /// linear density of the fibre
    #[q("T_f", 0.01..=10.0)]
    fibre_count: LinearDensity<N>,
    /// density of the fibre
    #[q("ρ", 0.9..=2.6)]
    fibre_density: Density<N>,
) -> Fineness<N> {
    1000.0 * (4.0 * fibre_count / (1000.0 * PI * fibre_density)).sqrt()
}

/// Mean number of fibres in the section of a yarn.
#[formula(
    result = "n",
    sources = ["Rieter", "GATE solutions"],
    limits = ["yarn clean and conditioned, without oil, as the fibre count is", "a woollen yarn needs about 100 to 120 (from memory)"],
    slips = ["leaving out the spread of diameters: the number reads 6 % high at a CV of 25 %", "using the count in oil"]
)]
#[inverse(
    "Finest count that a number of fibres in the section allows.",
    limit_count(fibres "fibres that the section needs": 20.0..=200.0, fibre_count, diameter_cv) -> count
        = fibres * fibre_count * (1.0 + diameter_cv.squared()),
    sources = ["Rieter", "memory"],
    limits = ["yarn clean and conditioned, without oil", "how many fibres a way of spinning needs: handbook, minimum_fibres; 100 to 120 for woollen is from memory", "a limit and no promise: short, tender or uneven wool stops before it"],
    slips = ["planning at the limit", "leaving out the spread of diameters"]
)]
pub fn fibres_in_section<N: Number>(
    /// yarn count, clean and conditioned
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
    /// count of a fibre of the mean diameter
    #[q("T_f", 0.05..=3.0)]
    fibre_count: LinearDensity<N>,
    /// coefficient of variation of the diameter
    #[q("CV_d", 0.0..=0.35)]
    diameter_cv: Fraction<N>,
) -> Count<N> {
    count / (fibre_count * (1.0 + diameter_cv.squared()))
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
    limit_factor: Ratio<N>,
    /// fibres in the section
    #[q("n", 20.0..=1000.0)]
    fibres: Count<N>,
) -> Fraction<N> {
    limit_factor / fibres.sqrt()
}

/// Factor for the least irregularity, from the spread of the fibres' mass for their length.
#[formula(
    result = "k",
    sources = ["GATE solutions"],
    limits = ["the spread of the mass for a length, not of the diameter: that of the mass is about twice as wide"],
    slips = ["putting in the spread of the diameter"]
)]
pub fn limit_factor<N: Number>(
    /// coefficient of variation of the fibres' mass for their length
    #[q("CV_f", 0.0..=0.7)]
    fibre_mass_cv: Fraction<N>,
) -> Ratio<N> {
    (1.0 + fibre_mass_cv.squared()).sqrt()
}

/// Factor for the least irregularity, from the spread of the diameter.
#[formula(
    result = "k",
    sources = ["memory"],
    limits = ["the spread of the mass is taken as twice that of the diameter, which holds where it is small"],
    slips = ["taking the standard deviation in micrometres for the coefficient of variation"]
)]
pub fn limit_factor_of_diameter<N: Number>(
    /// coefficient of variation of the diameter
    #[q("CV_d", 0.0..=0.35)]
    diameter_cv: Fraction<N>,
) -> Ratio<N> {
    (1.0 + 4.0 * diameter_cv.squared()).sqrt()
}

/// Diameter of a lot of usual spread that spins like this one: the spinning fineness.
#[formula(
    result = "d_s",
    sources = ["memory"],
    limits = ["the same as the mean diameter at a coefficient of variation of 24 %"],
    slips = ["using it for the count of a fibre, which wants the mean diameter and the spread"]
)]
pub fn spinning_fineness<N: Number>(
    /// mean fibre diameter
    #[q("d_f", 12.0..=50.0)]
    fibre_diameter: Fineness<N>,
    /// coefficient of variation of the diameter
    #[q("CV_d", 0.15..=0.35)]
    diameter_cv: Fraction<N>,
) -> Fineness<N> {
    0.881 * fibre_diameter * (1.0 + 5.0 * diameter_cv.squared()).sqrt()
}

/// Mean count of the fibres of a blend, each by its share of the mass, as it is usually printed.
#[formula(
    result = "T_f",
    sources = ["Rieter"],
    limits = ["for the number of fibres in a section fibre_count_of_blend is exact; this mean is the heavier"],
    slips = ["working out the number of fibres with it: it comes out too small"]
)]
pub fn mean_fibre_count_by_mass<N: Number>(
    /// shares of the mass
    #[q("p", 0.0..=1.0, whole)]
    shares: &[Fraction<N>],
    /// counts of the fibres
    #[q("T", 0.05..=3.0)]
    fibre_counts: &[LinearDensity<N>],
) -> LinearDensity<N> {
    V::sum(shares.zip(fibre_counts).map(|(p, t)| p * t))
}

/// Count of the fibres of a blend that gives the right number of them in a section.
///
/// The harmonic mean: a share of the mass holds the more fibres the finer they are.
#[formula(
    result = "T_f",
    sources = ["definition"],
    limits = ["shares of the mass, all at one regain"],
    slips = ["the plain mean by mass, which finds too few fibres"]
)]
pub fn fibre_count_of_blend<N: Number>(
    /// shares of the mass
    #[q("p", 0.0..=1.0, whole)]
    shares: &[Fraction<N>],
    /// counts of the fibres
    #[q("T", 0.05..=3.0)]
    fibre_counts: &[LinearDensity<N>],
) -> LinearDensity<N> {
    1.0 / V::sum(shares.zip(fibre_counts).map(|(p, t)| p / t))
}

/// Mean diameter of a blend, as snippets of all its fibres would be measured.
///
/// A share of the mass holds a length of fibre that goes as the mass over the square of the diameter.
#[formula(
    result = "d_b",
    sources = ["definition"],
    limits = ["fibres of one density and of about the same coefficient of variation", "shares of the clean dry fibre"],
    slips = ["averaging the diameters by mass: the finer wool has more fibres to a gram and counts more"]
)]
pub fn diameter_of_blend<N: Number>(
    /// shares of the mass
    #[q("p", 0.0..=1.0, whole)]
    shares: &[Fraction<N>],
    /// mean diameters of the components
    #[q("d", 12.0..=50.0)]
    fibre_diameters: &[Fineness<N>],
) -> Fineness<N> {
    let each = shares.zip(fibre_diameters);
    V::sum(each.clone().map(|(p, d)| p / d)) / V::sum(each.map(|(p, d)| p / d.squared()))
}

/// How much longer than the staple the draft is: setting of the rollers over the staple.
#[formula(
    result = "x",
    sources = ["practice"],
    limits = ["for drafting between two pairs of rollers; a mule drafts between roller and spindle, where the twist holds the fibres", "a little over 1 is usual: under 1 both pairs hold the longest fibres and break them, far over it the short ones float"],
    slips = ["taking the mean fibre for the longest: many fibres are longer than the mean"]
)]
pub fn setting_over_staple<N: Number>(
    /// distance between the nips of the two pairs of rollers
    #[q("s", 0.02..=0.5)]
    roller_setting: crate::quantity::Length<N>,
    /// length of the longest staple
    #[q("l", 0.02..=0.4)]
    staple: crate::quantity::Length<N>,
) -> Ratio<N> {
    roller_setting / staple
}
