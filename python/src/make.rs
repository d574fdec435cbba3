//! Making quantities; the list of units.

use hankwise::quantity::{self, Amount};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList, PyString, PyTuple};

use crate::attributes::dict;
use crate::columns::{in_kind, place, scalar, shown};
use crate::convert::Change;
use crate::errors::{NotationError, OrRaise, RangeError, UnitError};
use crate::foreign::foreign;
use crate::quantity::Quantity;
use crate::text::{Text, text};
use crate::texts::{Wrong, is_missing, texts};

/// A quantity: from a text such as "22½ YSW" or "1 lb 12 oz", from a number, an array or a Series
/// and its unit, or from a column of texts, which is brought to the unit of the first.
///
/// >>> import hankwise as hw
/// >>> hw.q("16 Nm").to("tex")
/// <linear density (count): 62.5 tex>
#[pyfunction]
#[pyo3(signature = (value, unit=None, /))]
pub(crate) fn q<'py>(value: &Bound<'py, PyAny>, unit: Option<Text>) -> PyResult<Quantity> {
    let unit = Text::option(unit.as_ref(), "unit")?;
    let py = value.py();
    if let Ok(given) = value.cast::<Quantity>() {
        let unit = unit.unwrap_or(given.get().unit.symbol);
        return given.get().to(py, unit);
    }
    if value.is_instance_of::<PyString>() {
        let text = text(value)?;
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
        Change::between(amount.unit, amount.unit).one(amount.number)?;
        let text = if unit.is_none() { Some(text.trim().to_owned()) } else { None };
        return Ok(Quantity::from_amount(py, amount, text));
    }
    let Some(unit) = unit else {
        return match texts(value)? {
            Some(texts) => of_texts(value, &texts),
            None => Err(no_unit(value)),
        };
    };
    let unit = quantity::unit(unit, None).or_raise()?;
    let whole = Change::between(unit, unit);
    if let Some(x) = scalar(value) {
        if !x.is_finite() {
            return Err(RangeError::new_err(format!(
                "a single quantity is a finite number, not {x}"
            )));
        }
        return Ok(Quantity::scalar(py, whole.one(x)?, unit, unit.kind));
    }
    // A copy: the quantity does not change when the array does.
    let number = match whole.convert(value) {
        Ok(number) => number,
        Err(error) if texts(value).is_ok_and(|texts| texts.is_some()) => {
            return Err(PyTypeError::new_err(format!(
                "{}; texts that have their units are read without another one, and brought to one \
                 then: hankwise.q(values).to('{}')",
                error.value(py),
                unit.symbol
            )));
        }
        Err(error) => return Err(error),
    };
    Ok(Quantity { number: held(number)?, unit, kind: unit.kind, text: None })
}

/// Figures as a quantity holds them: a list as an array.
fn held(number: Bound<'_, PyAny>) -> PyResult<Py<PyAny>> {
    if number.is_instance_of::<PyList>() || number.is_instance_of::<PyTuple>() {
        let numpy = number.py().import("numpy")?;
        return Ok(numpy.getattr("asarray")?.call1((number, "float64"))?.unbind());
    }
    Ok(number.unbind())
}

fn no_unit(value: &Bound<'_, PyAny>) -> PyErr {
    foreign(value).unwrap_or_else(|| {
        UnitError::new_err(format!(
            "{} has no unit; write it too, such as hankwise.q(16, 'YSW'), \
             hankwise.q([16, 20], 'YSW') or hankwise.q('16 YSW')",
            shown(value)
        ))
    })
}

/// A column of texts or of quantities, brought to the unit of the first. What is missing stays so; all
/// that cannot be read is named.
fn of_texts<'py>(value: &Bound<'py, PyAny>, rows: &[Bound<'py, PyAny>]) -> PyResult<Quantity> {
    let py = value.py();
    let mut unit: Option<(&'static quantity::Unit, quantity::Kind)> = None;
    let mut figures = Vec::with_capacity(rows.len());
    let mut wrong = Wrong::default();
    for (at, row) in rows.iter().enumerate() {
        if is_missing(row) {
            figures.push(f64::NAN);
            continue;
        }
        let read = q(row, None).and_then(|one| {
            let (to, kind) = *unit.get_or_insert((one.unit, one.kind));
            kind.comparable(one.kind, "a column").or_raise()?;
            // A plain share is what its neighbours are.
            let kind = if kind == quantity::Kind::Fraction { one.kind } else { kind };
            unit = Some((to, kind));
            let one = one.to(py, to.symbol)?;
            one.one(py).ok_or_else(|| NotationError::new_err("it holds several values"))
        });
        match read {
            Ok(x) => figures.push(x),
            Err(error) => wrong.add(&place(at, &[rows.len()], Some(value)), &error, py),
        }
    }
    wrong.refuse(rows.len())?;
    let Some((unit, kind)) = unit else { return Err(no_unit(value)) };
    let array = numpy::PyArray1::from_vec(py, figures).into_any();
    Ok(Quantity { number: held(in_kind(array, value)?)?, unit, kind, text: None })
}

/// The units, as dictionaries: symbol, names, kind, definition, source, basis.
#[pyfunction]
#[pyo3(signature = (kind=None))]
pub(crate) fn units<'py>(py: Python<'py>, kind: Option<Text>) -> PyResult<Vec<Bound<'py, PyDict>>> {
    let kind = Text::option(kind.as_ref(), "kind")?;
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
