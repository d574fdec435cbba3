//! Making quantities; the list of units.

use hankwise::quantity::{self, Amount};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyFloat, PyString};

use crate::attributes::dict;
use crate::columns::{Figures, is_numeric, no_numbers, scalar};
use crate::errors::{NotationError, OrRaise, RangeError, UnitError};
use crate::quantity::Quantity;

/// A quantity: from a text such as "22½ YSW" or "1 lb 12 oz", or from a number, an array or a Series
/// and its unit.
///
/// >>> import hankwise as hw
/// >>> hw.q("16 Nm").to("tex")
/// <linear density (count): 62.5 tex>
#[pyfunction]
#[pyo3(signature = (value, unit=None, /))]
pub(crate) fn q<'py>(value: &Bound<'py, PyAny>, unit: Option<&str>) -> PyResult<Quantity> {
    let py = value.py();
    if let Ok(given) = value.cast::<Quantity>() {
        let unit = unit.unwrap_or(given.get().unit.symbol);
        return given.get().to(py, unit);
    }
    if let Ok(text) = value.cast::<PyString>() {
        let text = text.to_string_lossy();
        let amount = match unit {
            None => quantity::parse(&text).or_raise()?,
            Some(unit) => {
                if quantity::parse(&text).is_ok() {
                    return Err(NotationError::new_err(format!(
                        "'{text}' has its unit already; write hankwise.q('{text}').to('{unit}')"
                    )));
                }
                let number = quantity::number(&text).or_raise()?;
                let unit = quantity::unit(unit, None).or_raise()?;
                Amount { number, unit }
            }
        };
        if amount.number.is_nan() {
            return Err(RangeError::new_err("a quantity cannot be missing (NaN)"));
        }
        let text = if unit.is_none() { Some(text.trim().to_owned()) } else { None };
        return Ok(Quantity::from_amount(py, amount, text));
    }
    let Some(unit) = unit else {
        return Err(UnitError::new_err(format!(
            "{} has no unit; write it too, such as hankwise.q(16, 'YSW'), hankwise.q([16, 20], 'YSW') or hankwise.q('16 YSW')",
            value.repr()?
        )));
    };
    let unit = quantity::unit(unit, None).or_raise()?;
    if let Some(x) = scalar(value) {
        if !x.is_finite() {
            return Err(crate::errors::RangeError::new_err(format!(
                "a single quantity is a finite number, not {x}"
            )));
        }
        return Ok(Quantity::scalar(py, x, unit, unit.kind));
    }
    // A copy: the quantity does not change when the array does.
    let number = if value.hasattr("__array__")? {
        if !is_numeric(value) {
            return Err(no_numbers(value));
        }
        value.call_method1("astype", ("float64",)).map_err(|_| no_numbers(value))?
    } else {
        match Figures::of(value)? {
            Figures::One(x) => PyFloat::new(py, x).into_any(),
            Figures::Many(array) => array.call_method0("copy")?,
        }
    };
    Ok(Quantity { number: number.unbind(), unit, kind: unit.kind, text: None })
}

/// The units, as dictionaries: symbol, names, kind, definition, source, basis.
#[pyfunction]
#[pyo3(signature = (kind=None))]
pub(crate) fn units<'py>(py: Python<'py>, kind: Option<&str>) -> PyResult<Vec<Bound<'py, PyDict>>> {
    let mut all = Vec::new();
    for unit in quantity::units().filter(|u| kind.is_none_or(|k| u.kind.words().contains(k))) {
        all.push(dict!(py, {
            "symbol": unit.symbol,
            "names": unit.names,
            "kind": unit.kind.words(),
            "definition": unit.definition,
            "indirect": unit.is_indirect(),
            "source": unit.source,
            "basis": unit.basis().words(),
        }));
    }
    Ok(all)
}
