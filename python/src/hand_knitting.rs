//! Words of hand knitting.

use hankwise::prelude::LinearDensity;
use hankwise::quantity::Kind;
use hankwise::yarn;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;

use crate::errors::raise;
use crate::handbook::HandbookTable;
use crate::inputs::{Given, locate, one};

/// One figure that is possible, in the base unit of its kind.
fn figure(value: &Bound<'_, PyAny>, kind: Kind, of: &str, name: &str) -> PyResult<f64> {
    let read = || match one(value, kind)? {
        Given::One(amount, _) => {
            kind.check(amount.base()).map_err(|e| raise(&e))?;
            Ok(amount.base())
        }
        Given::Many(..) => Err(PyTypeError::new_err("give one value, not an array")),
    };
    read().map_err(|error| locate(value.py(), of, name, error))
}

/// The hand-knitting words into whose bands a count falls, with the bands: several, or none.
///
/// >>> import hankwise as hw
/// >>> hw.yarn.weight_class("230 m/100g", "UK")[1]
/// <UK, DK: 200 to 250 m/100g (web page, Skein Queen 2024)>
#[pyfunction]
#[pyo3(signature = (count, country=None), text_signature = "(count, country=None)")]
pub(crate) fn weight_class(
    count: &Bound<'_, PyAny>,
    country: Option<&str>,
) -> PyResult<HandbookTable> {
    let count = figure(count, Kind::LinearDensity, "weight_class", "count")?;
    let found = yarn::weight_class(LinearDensity::base(count), country);
    HandbookTable::weights(found.map_err(|e| raise(&e))?)
}

/// The bands that go with a hand-knitting word, one for each table that has it: no two agree.
///
/// >>> import hankwise as hw
/// >>> for figure in hw.yarn.weight_band("DK", "UK"):
/// ...     print(figure.low, "to", figure.high)
/// 200 m/100g to 250 m/100g
/// 200 m/100g to 240 m/100g
/// 100 m/50g to 125 m/50g
#[pyfunction]
#[pyo3(signature = (word, country=None), text_signature = "(word, country=None)")]
pub(crate) fn weight_band(word: &str, country: Option<&str>) -> PyResult<HandbookTable> {
    HandbookTable::weights(yarn::weight_band(word, country).map_err(|e| raise(&e))?)
}
