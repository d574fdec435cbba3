//! Wraps: how many turns of a yarn lie side by side round a rule. An estimate, never a conversion.

use crate::formula::{Formula, formula};
use crate::number::{Number, V};
use crate::quantity::counts::YARD_PER_POUND;
use crate::quantity::{LinearDensity, Ratio, Sett};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[&WRAPS_ESTIMATE, &COUNT_FROM_WRAPS];

/// Threads of a count side by side in a centimetre: the factor times the root of the yards in a pound,
/// in an inch. The law of diameters and of wraps; what differs is the factor.
#[inline(always)]
pub(crate) fn side_by_side<N: Number>(factor: V<N>, count: V<N>) -> V<N> {
    let yards_per_pound = (YARD_PER_POUND / count).named("Y");
    factor * yards_per_pound.sqrt() / 2.54
}

/// Estimate of the wraps of a yarn from its count.
///
/// In the trade's units: the factor times the root of the yards in a pound, in an inch.
#[formula(
    result = "w",
    sources = ["Ashenhurst page 1999", "Grist experiment", "Shetland experiment"],
    limits = ["an estimate, no conversion: printed factors run from 0.84 to 1.06, which is 60 % in the count, and soft yarn wound loosely has been found at 0.43", "wraps go by the hand, the tension and the twist: wrap the yarn itself where it matters"],
    slips = ["taking the answer for a measurement", "halving wraps for a sett and halving diameters for one: wraps are not diameters"]
)]
pub fn wraps_estimate<N: Number>(
    /// factor of the yarn and the hand
    #[q("k", 0.4..=1.1)]
    wraps_factor: Ratio<N>,
    /// yarn count
    #[q("T", 5.0..=5000.0)]
    count: LinearDensity<N>,
) -> Sett<N> {
    side_by_side(wraps_factor, count)
}

/// Estimate of the count of a yarn from its wraps.
#[formula(
    result = "T",
    sources = ["Ashenhurst page 1999", "Grist experiment"],
    limits = ["an estimate, no conversion: it goes as the square of the factor, so printed factors from 0.84 to 1.06 give counts 60 % apart", "weigh a measured length instead: a metre and a small balance are better than any factor"],
    slips = ["taking the answer for a count", "forgetting the square: a tenth more wraps is a fifth more yards in a pound"]
)]
pub fn count_from_wraps<N: Number>(
    /// factor of the yarn and the hand
    #[q("k", 0.4..=1.1)]
    wraps_factor: Ratio<N>,
    /// wraps
    #[q("w", 1.0..=50.0)]
    wraps: Sett<N>,
) -> LinearDensity<N> {
    let yards_per_pound = (2.54 * wraps / wraps_factor).squared().named("Y");
    YARD_PER_POUND / yards_per_pound
}

/// A published relation of wraps to count.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WrapsFactor {
    /// Wraps in an inch …
    pub wraps: f64,
    /// … of a yarn with so many yards in a pound.
    pub yards_per_pound: f64,
    /// What it is taken from.
    pub says: &'static str,
    /// Key of the source, see [`crate::source`].
    pub source: &'static str,
}

impl WrapsFactor {
    /// Wraps in an inch over the root of the yards in a pound.
    pub fn factor(&self) -> f64 {
        self.wraps / self.yards_per_pound.sqrt()
    }
}

const fn says(
    wraps: f64,
    yards_per_pound: f64,
    says: &'static str,
    source: &'static str,
) -> WrapsFactor {
    WrapsFactor { wraps, yards_per_pound, says, source }
}

/// What the band of [`wraps`] rests on, from the fewest wraps to the most.
pub static WRAPS_FACTORS: [WrapsFactor; 5] = [
    says(
        25.0 / 0.75,
        6135.0,
        "a Shetland single of 6135 yd/lb wound on a rule: 25 ends in an inch were three quarters of its wraps",
        "Shetland experiment",
    ),
    says(0.84, 1.0, "woollen, diameters side by side", "Ashenhurst page 1999"),
    says(0.90, 1.0, "worsted and cotton, diameters side by side", "Ashenhurst page 1999"),
    says(0.95, 1.0, "cotton, diameters side by side", "Taylor 1909"),
    says(
        1.0,
        0.884,
        "the handspinners' rule: wraps squared times 0.884 are the yards in a pound",
        "Grist experiment",
    ),
];

/// The wraps that a yarn may have: an estimate with its band.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wraps {
    /// By the factor with the fewest.
    pub low: Sett<f64>,
    /// Threads that touch: by the factor of worsted and cotton.
    pub touching: Sett<f64>,
    /// By the factor with the most.
    pub high: Sett<f64>,
}

impl Wraps {
    /// The published factors that the band rests on.
    pub fn rests_on(&self) -> &'static [WrapsFactor] {
        &WRAPS_FACTORS
    }
}

/// The wraps that a yarn of a count may have: low, touching, high.
///
/// The band is that of the published factors, [`WRAPS_FACTORS`]. It is wide because wraps go by the
/// hand and the tension as much as by the yarn.
pub fn wraps(count: LinearDensity<f64>) -> Wraps {
    let by = |place: usize| wraps_estimate(Ratio::base(WRAPS_FACTORS[place].factor()), count);
    Wraps { low: by(0), touching: by(2), high: by(4) }
}
