//! The wraps of a yarn: an estimate with its band.

use hankwise::quantity::{Kind, LinearDensity, Sett, print};
use hankwise::yarn;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::errors::raise;
use crate::inputs::{Given, base_unit, one};
use crate::quantity::Quantity;

/// How many turns of a yarn may lie side by side round a rule: an estimate, never a conversion.
///
/// `low`, `touching` (threads side by side, by their diameter) and `high` are quantities; `rests_on` says which published factors they are by.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Wraps {
    wraps: yarn::Wraps,
}

impl Wraps {
    fn quantity(py: Python<'_>, wraps: Sett<f64>) -> Quantity {
        Quantity::scalar(py, wraps.value(), base_unit(Kind::Sett), Kind::Sett)
    }
    fn in_an_inch(wraps: Sett<f64>) -> PyResult<String> {
        wraps.number("wraps/in").map(|x| print::significant(x, 2)).map_err(|e| raise(&e))
    }
}

#[pymethods]
impl Wraps {
    /// By the factor with the fewest wraps.
    #[getter]
    fn low(&self, py: Python<'_>) -> Quantity {
        Wraps::quantity(py, self.wraps.low)
    }
    /// Threads that touch: by the factor of worsted and cotton.
    #[getter]
    fn touching(&self, py: Python<'_>) -> Quantity {
        Wraps::quantity(py, self.wraps.touching)
    }
    /// By the factor with the most wraps.
    #[getter]
    fn high(&self, py: Python<'_>) -> Quantity {
        Wraps::quantity(py, self.wraps.high)
    }
    /// The published factors that the band rests on: factor, says, source.
    #[getter]
    fn rests_on<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let row = |says: &yarn::WrapsFactor| {
            let row = PyDict::new(py);
            row.set_item("factor", says.factor())?;
            row.set_item("says", says.says)?;
            row.set_item("source", says.source)?;
            Ok(row)
        };
        self.wraps.rests_on().iter().map(row).collect()
    }
    fn __repr__(&self) -> PyResult<String> {
        let yarn::Wraps { low, touching, high } = self.wraps;
        let [low, touching, high] = [low, touching, high].map(Wraps::in_an_inch);
        Ok(format!(
            "<wraps: {} to {} in an inch, {} where threads touch (an estimate)>",
            low?, high?, touching?
        ))
    }
}

/// wraps(count, /)
/// --
///
/// The wraps that a yarn of a count may have: low, touching, high, and what they rest on.
///
/// >>> import hankwise as hw
/// >>> hw.yarn.wraps("16 YSW")
/// <wraps: 27 to 68 in an inch, 58 where threads touch (an estimate)>
#[pyfunction]
#[pyo3(signature = (count, /), text_signature = "(count, /)")]
pub(crate) fn wraps(count: &Bound<'_, PyAny>) -> PyResult<Wraps> {
    let Given::One(amount, _) = one(count, Kind::LinearDensity)? else {
        return Err(PyTypeError::new_err(
            "one count at a time is wanted; for many use hankwise.yarn.wraps_estimate with a factor",
        ));
    };
    let count = amount.base();
    Kind::LinearDensity.check(count).map_err(|e| raise(&e))?;
    Ok(Wraps { wraps: yarn::wraps(LinearDensity::base(count)) })
}
