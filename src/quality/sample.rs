//! A sample of readings in one unit.

use crate::error::{Error, Result};
use crate::quantity::print::{figure, with_unit};
use crate::quantity::{Kind, Unit};

/// The largest reading: many of its squares can still be summed.
const MOST: f64 = 1e140;

/// Readings in one unit, in the order in which they were taken.
#[derive(Clone, Debug)]
pub struct Sample {
    values: Vec<f64>,
    /// The unit of the readings.
    pub unit: &'static Unit,
}

impl Sample {
    /// A sample of at least two readings. Indirect counts are refused: their mean is that of the
    /// numbers or of the thickness, and only who asks knows which. Temperatures are refused too: a
    /// spread of them is a difference, which counts from no zero and would be turned into the other
    /// scale as if it did.
    pub fn new(values: Vec<f64>, unit: &'static Unit) -> Result<Self> {
        check_unit(unit)?;
        if values.len() < 2 {
            return Err(Error::range(format!(
                "{} reading{} no spread; give at least 2",
                values.len(),
                if values.len() == 1 { " has" } else { "s have" }
            )));
        }
        if let Some(place) = values.iter().position(|x| !x.is_finite()) {
            return Err(Error::range(format!(
                "reading {} is {}; omit it, or write what was read",
                place + 1,
                figure(values[place])
            )));
        }
        if let Some(place) = values.iter().position(|x| x.abs() > MOST) {
            return Err(Error::range(format!(
                "reading {} is {}, too large for its square; write what was read",
                place + 1,
                figure(values[place])
            )));
        }
        Ok(Sample { values, unit })
    }
    /// The readings.
    pub fn values(&self) -> &[f64] {
        &self.values
    }
    /// How many.
    pub fn n(&self) -> usize {
        self.values.len()
    }
    /// Their mean.
    pub fn mean(&self) -> f64 {
        mean(&self.values)
    }
    /// Their standard deviation, over n − 1.
    pub fn sd(&self) -> f64 {
        sd(&self.values)
    }
    /// A value in the unit of the readings.
    pub fn say(&self, x: f64) -> String {
        with_unit(x, self.unit.symbol)
    }
}

/// Refuses units whose means and spreads are not what they seem.
pub(super) fn check_unit(unit: &Unit) -> Result<()> {
    let numbers =
        format!("numbers alone, such as [16, 17] for hankwise.q([16, 17], '{}')", unit.symbol);
    if unit.is_indirect() {
        return Err(Error::unit(format!(
            "a mean of readings in {0} can be that of the thickness or of the numbers; give them in a \
             direct unit, such as hankwise.q([16, 17], '{0}').to('tex'), or, where the spread of the \
             numbers is meant, give the {numbers}",
            unit.symbol
        )));
    }
    if unit.kind == Kind::Temperature {
        return Err(Error::unit(format!(
            "a spread of readings in {} is a difference and no temperature; give the {numbers}",
            unit.symbol
        )));
    }
    Ok(())
}

/// The mean of figures.
pub(super) fn mean(values: &[f64]) -> f64 {
    // About the first, so that values that differ in their last digits keep them.
    let first = values[0];
    first + values.iter().map(|x| x - first).sum::<f64>() / values.len() as f64
}

/// The standard deviation of values, over n − 1.
pub(super) fn sd(values: &[f64]) -> f64 {
    let middle = mean(values);
    let squares: f64 = values.iter().map(|x| (x - middle).powi(2)).sum();
    (squares / (values.len() as f64 - 1.0)).sqrt()
}

/// Refuses a chance that sets no limits.
pub(super) fn check_confidence(confidence: f64) -> Result<()> {
    let possible = confidence > 0.0 && confidence < 1.0;
    if possible {
        return Ok(());
    }
    Err(Error::range(format!(
        "limits cannot be set at a chance of {} %; write one between 0 and 100 %, such as '95 %'",
        figure(confidence * 100.0)
    )))
}
