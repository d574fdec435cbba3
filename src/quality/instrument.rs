//! An instrument against a standard: what to multiply its readings by.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Ratio, Reading};

/// Correction factor of an instrument from its check against a standard: what to multiply readings by
/// (calibration).
#[formula(
    result = "f_c",
    sources = ["practice"],
    limits = ["an instrument that reads 0 at nothing, or was set to it, and is off by the same share everywhere: try a second standard", "for readings near that of the standard; adjusting or certifying the instrument is for its maker or a licensed laboratory"],
    slips = ["the factor upside down: a reading too high needs a factor below 1", "correcting once more what the instrument has in it already"]
)]
pub fn correction_factor<N: Number>(
    /// certified value of the standard
    #[q("x_c", 0.001..=1000000.0)]
    certified_value: Reading<N>,
    /// what the instrument reads of the standard, as a mean of several readings
    #[q("x_s", 0.001..=1000000.0)]
    standard_reading: Reading<N>,
) -> Ratio<N> {
    certified_value / standard_reading
}

/// A reading corrected by the factor that a check of the instrument against a standard gave.
#[formula(
    result = "x_k",
    sources = ["practice"],
    limits = ["the factor of this instrument, at its last check, for readings near that of the standard"],
    slips = ["dividing by the factor", "correcting once more what the instrument has in it already"]
)]
pub fn corrected_reading<N: Number>(
    /// reading
    #[q("x", 0.001..=1000000.0)]
    reading: Reading<N>,
    /// correction factor of the instrument
    #[q("f_c", 0.8..=1.25)]
    correction_factor: Ratio<N>,
) -> Reading<N> {
    reading * correction_factor
}
