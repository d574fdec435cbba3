//! Regain against the humidity of the air.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Fraction, Regain};

/// Regain at a humidity, straight between two known points.
#[formula(
    result = "R",
    sources = ["definition"],
    limits = ["points close together: the curve of wool is steep at both ends", "both points in absorption or both in desorption, at one temperature"],
    slips = ["mixing points of absorption and of desorption"]
)]
#[inverse(
    "Humidity that gives a regain, straight between two known points.",
    humidity_between_points(regain "regain wanted": 0.04..=0.25, humidity_below, regain_below, humidity_above, regain_above) -> humidity
        = humidity_below + (humidity_above - humidity_below) * (regain - regain_below) / (regain_above - regain_below)
)]
pub fn regain_between_points<N: Number>(
    /// relative humidity
    #[q("φ", 0.1..=0.9)]
    humidity: Fraction<N>,
    /// humidity of the point below
    #[q("φ₁", 0.0..=0.9)]
    humidity_below: Fraction<N>,
    /// regain there
    #[q("R₁", 0.0..=0.3)]
    regain_below: Regain<N>,
    /// humidity of the point above
    #[q("φ₂", 0.1..=1.0)]
    humidity_above: Fraction<N>,
    /// regain there
    #[q("R₂", 0.01..=0.4)]
    regain_above: Regain<N>,
) -> Regain<N> {
    regain_below
        + (regain_above - regain_below) * (humidity - humidity_below)
            / (humidity_above - humidity_below)
}
