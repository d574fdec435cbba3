//! Columns of texts: "16 tex", "17 tex".

use hankwise::quantity::Kind;
use numpy::PyArrayMethods;
use pyo3::prelude::*;
use pyo3::types::{PyList, PyString, PyTuple};

use crate::columns::{is_masked, is_number, place};
use crate::errors::NotationError;
use crate::inputs::{Given, one_figure};
use crate::quantity::Quantity;
use crate::yarn::Yarn;

/// The rows of a column that holds texts, quantities or yarns; None where it holds something else.
pub(crate) fn texts<'py>(value: &Bound<'py, PyAny>) -> PyResult<Option<Vec<Bound<'py, PyAny>>>> {
    if is_number(value) {
        return Ok(None);
    }
    let one_axis =
        || value.getattr("ndim").and_then(|n| n.extract::<usize>()).is_ok_and(|n| n == 1);
    let rows: Vec<Bound<'py, PyAny>> = if let Ok(list) = value.cast::<PyList>() {
        list.iter().collect()
    } else if let Ok(tuple) = value.cast::<PyTuple>() {
        tuple.iter().collect()
    } else if one_axis() && holds_texts(value) && !is_masked(value) {
        value.call_method0("tolist")?.try_iter()?.collect::<PyResult<_>>()?
    } else {
        return Ok(None);
    };
    let says_unit = |row: &Bound<'_, PyAny>| {
        row.is_instance_of::<PyString>()
            || row.cast::<Quantity>().is_ok()
            || row.cast::<Yarn>().is_ok()
    };
    Ok(rows.iter().any(says_unit).then_some(rows))
}

/// A column of texts, quantities or yarns of a kind, in the base unit; what is missing stays so.
pub(crate) fn column_of_texts<'py>(
    value: &Bound<'py, PyAny>,
    texts: &[Bound<'py, PyAny>],
    kind: Kind,
) -> PyResult<Given<'py>> {
    let py = value.py();
    let (mut all, mut wrong) = (Vec::with_capacity(texts.len()), Wrong::default());
    for (row, text) in texts.iter().enumerate() {
        if is_missing(text) {
            all.push(f64::NAN);
            continue;
        }
        match one_figure(text, kind) {
            Ok((amount, _)) => all.push(amount.base()),
            Err(error) => wrong.add(&place(row, &[texts.len()], Some(value)), &error, py),
        }
    }
    wrong.refuse(texts.len())?;
    let array = numpy::PyArray1::from_vec(py, all).to_dyn().clone();
    Ok(Given::Many(array, value.clone()))
}

/// True of an array or a Series that holds no numbers.
pub(crate) fn holds_texts(value: &Bound<'_, PyAny>) -> bool {
    let kind = value.getattr("dtype").and_then(|d| d.getattr("kind"));
    kind.and_then(|k| k.extract::<String>()).is_ok_and(|k| "OUST".contains(&k))
}

/// True of what stands for a missing row: None, NaN, the NA of pandas.
pub(crate) fn is_missing(row: &Bound<'_, PyAny>) -> bool {
    row.is_none()
        || row.extract::<f64>().is_ok_and(f64::is_nan)
        || row.get_type().name().is_ok_and(|name| name == "NAType")
}

/// The rows of a column that cannot be read, each with why; so many are named.
#[derive(Default)]
pub(crate) struct Wrong {
    first: Vec<String>,
    count: usize,
}

impl Wrong {
    const SHOWN: usize = 5;

    pub(crate) fn add(&mut self, place: &str, error: &PyErr, py: Python<'_>) {
        self.count += 1;
        if self.first.len() < Self::SHOWN {
            self.first.push(format!("{place}: {}", error.value(py)));
        }
    }
    pub(crate) fn refuse(self, of: usize) -> PyResult<()> {
        if self.count == 0 {
            return Ok(());
        }
        let more = match self.count - self.first.len() {
            0 => String::new(),
            more => format!("; and {more} more"),
        };
        Err(NotationError::new_err(format!(
            "{} of {of} rows cannot be read: {}{more}",
            self.count,
            self.first.join("; ")
        )))
    }
}
