//! How many readings to take.

use super::sample::check_confidence;
use super::{mean_half_width, readings_for_variation};
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::{Error, Result};
use crate::law::t_two_sided;
use crate::number::{Number, V};
use crate::quantity::print::figure;
use crate::quantity::{Count, Fraction, Ratio, ReadingSpread};

/// Most readings that are proposed.
const MOST: f64 = 1e6;

/// What [`readings_needed()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct ReadingsNeededInputs<N> {
    /// coefficient of variation of single readings
    #[q("CV", 0.001..=0.5, like = "8 %")]
    pub cv: Fraction<N>,
    /// error allowed, as a share of the mean
    #[q("e", 0.001..=0.3, like = "3 %")]
    pub relative_error: Fraction<N>,
    /// share of cases in which the mean is within it
    #[q("C", 0.8..=0.999, or = 0.95)]
    pub confidence: Fraction<N>,
}

/// What [`readings_needed()`] answers.
#[derive(Clone, Debug, Results)]
pub struct ReadingsNeededResults<N> {
    /// readings to take
    #[block = "Readings"]
    pub readings: Count<N>,
    /// deviate of Student's law for so many readings
    pub student_t: Ratio<N>,
    /// error that so many readings leave, as a share of the mean
    pub error_left: Fraction<N>,
}

/// How many readings give the mean within a share of it, where the variation will be known from those
/// readings alone: with Student's t, which depends on their number in turn.
#[calculation(
    title = "Readings to take",
    example = ">>> import hankwise as hw
>>> needed = hw.quality.readings_needed(cv=\"10 %\", relative_error=\"5 %\")
>>> needed[\"readings\"], needed[\"error_left\"]
(<number: 18>, <fraction: 4.973 %>)",
    limits = ["readings that follow the normal law and do not hang together"],
    sources = ["GATE solutions", "Sample size for count"],
    check = check
)]
pub fn readings_needed<N: Number>(given: &ReadingsNeededInputs<N>) -> ReadingsNeededResults<N> {
    let ReadingsNeededInputs { cv, relative_error, confidence } = *given;
    let chance = confidence.value();
    // Where there is no number of readings, the check says why.
    let readings = smallest_sample(cv.value(), relative_error.value(), chance);
    let readings = readings.map_or(f64::NAN, f64::from);
    let readings = V::looked_up(readings, [cv.v(), relative_error.v(), confidence.v()]);
    let t = t_two_sided(chance, readings.value() - 1.0);
    let t = Ratio::from(V::looked_up(t, [confidence.v(), readings]));
    let readings = Count::from(readings);
    let left = mean_half_width(t, ReadingSpread::from(cv.v()), readings);
    ReadingsNeededResults { readings, student_t: t, error_left: Fraction::from(left.v()) }
}

fn check(
    given: &ReadingsNeededInputs<f64>,
    _found: &ReadingsNeededResults<f64>,
    _check: &mut Check<'_>,
) -> Result<()> {
    let ReadingsNeededInputs { cv, relative_error, confidence } = *given;
    smallest_sample(cv.value(), relative_error.value(), confidence.value()).map(|_| ())
}

/// Readings to take so that the mean is within a share of it, where the variation comes from as few
/// readings as are taken: Student's t, which itself depends on their number.
pub(super) fn smallest_sample(variation: f64, error: f64, confidence: f64) -> Result<u32> {
    check_confidence(confidence)?;
    if variation.is_nan() || variation <= 0.0 {
        return Err(Error::range(
            "a variation of 0 % is none to tell the number of readings by; write how single readings \
             vary, such as '8 %'",
        ));
    }
    let possible = error > 0.0 && error < 1.0;
    if !possible {
        return Err(Error::range(format!(
            "an error of {} % cannot be asked of a mean; write one such as '3 %'",
            figure(error * 100.0)
        )));
    }
    let enough = |n: f64| {
        let t = Ratio::base(t_two_sided(confidence, n - 1.0));
        readings_for_variation(t, Fraction::base(variation), Fraction::base(error)).value() <= n
    };
    // The more readings, the smaller t: once enough, always enough.
    let (mut short, mut high) = (1.0, 2.0);
    while !enough(high) {
        (short, high) = (high, high * 2.0);
        if high > MOST {
            return Err(Error::range(format!(
                "more than {} readings would be needed for a mean within {} %; allow a wider error",
                figure(MOST),
                figure(error * 100.0)
            )));
        }
    }
    while high - short > 1.0 {
        let middle = f64::midpoint(short, high).floor();
        if enough(middle) { high = middle } else { short = middle }
    }
    Ok(high as u32)
}
