//! Figures in and out of Python: a float, an array, a Series, a list; like in, like out.

use numpy::{PyArrayDyn, PyReadonlyArrayDyn};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyFloat, PyInt, PyList, PyTuple};

use crate::errors::NotationError;

/// Figures of one input.
pub(crate) enum Figures<'py> {
    /// One figure.
    One(f64),
    /// An array of figures, as NumPy has them.
    Many(Bound<'py, PyArrayDyn<f64>>),
}

/// A plain figure; None where it is something else. True and False are no figures.
pub(crate) fn scalar(value: &Bound<'_, PyAny>) -> Option<f64> {
    if let Ok(x) = value.cast_exact::<PyFloat>() {
        return Some(x.value());
    }
    if value.cast_exact::<PyInt>().is_ok() {
        return value.extract::<f64>().ok();
    }
    if is_array(value) || value.is_instance_of::<pyo3::types::PyBool>() {
        return None;
    }
    // NumPy's scalars, Decimal, Fraction: whatever calls itself a number.
    if value.hasattr("__float__").unwrap_or(false) && !value.hasattr("__len__").unwrap_or(true) {
        return value.extract::<f64>().ok();
    }
    None
}

/// Arrays, Series and the like have a shape; an array without axes is a figure.
fn is_array(value: &Bound<'_, PyAny>) -> bool {
    value.getattr("ndim").and_then(|n| n.extract::<usize>()).is_ok_and(|n| n > 0)
}

impl<'py> Figures<'py> {
    /// Reads the figures of an object that holds numbers only.
    pub(crate) fn of(value: &Bound<'py, PyAny>) -> PyResult<Figures<'py>> {
        if let Some(x) = scalar(value) {
            return Ok(Figures::One(x));
        }
        let py = value.py();
        let kwargs = pyo3::types::PyDict::new(py);
        kwargs.set_item("dtype", "float64")?;
        let no_numbers = || {
            NotationError::new_err(format!(
                "numbers are wanted, not {value:?}; write one, or several with their unit: hankwise.q([9, 8], 'tpi')"
            ))
        };
        // One object that NumPy would take for a figure: None, True.
        if value.is_none() || value.is_instance_of::<pyo3::types::PyBool>() {
            return Err(no_numbers());
        }
        let array = py.import("numpy")?.getattr("asarray")?.call((value,), Some(&kwargs));
        // What NumPy cannot read is no number; a memory or import error passes through.
        let array = array.map_err(|e| {
            let wrong = e.is_instance_of::<PyTypeError>(py)
                || e.is_instance_of::<pyo3::exceptions::PyValueError>(py);
            if wrong { no_numbers() } else { e }
        })?;
        let array = array.cast_into::<PyArrayDyn<f64>>().map_err(|_| no_numbers())?;
        Ok(Figures::Many(array))
    }
}

/// The rows of an array, copied where they do not lie one after the other.
pub(crate) fn rows<'a>(array: &'a PyReadonlyArrayDyn<'_, f64>) -> std::borrow::Cow<'a, [f64]> {
    match array.as_slice() {
        Ok(rows) => rows.into(),
        Err(_) => array.as_array().iter().copied().collect::<Vec<f64>>().into(),
    }
}

/// An array in the container of `like`: a Series for a Series, a list for a list.
pub(crate) fn in_kind<'py>(
    array: Bound<'py, PyAny>,
    like: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    if like.is_instance_of::<PyList>() {
        return array.call_method0("tolist");
    }
    if like.is_instance_of::<PyTuple>() {
        return Ok(
            PyTuple::new(like.py(), array.try_iter()?.collect::<PyResult<Vec<_>>>()?)?.into_any()
        );
    }
    if let (Ok(index), true) = (like.getattr("index"), like.hasattr("to_numpy")?) {
        let kwargs = pyo3::types::PyDict::new(like.py());
        kwargs.set_item("index", index)?;
        if let Ok(name) = like.getattr("name") {
            kwargs.set_item("name", name)?;
        } else if let Ok(columns) = like.getattr("columns") {
            kwargs.set_item("columns", columns)?;
        }
        return like.get_type().call((array,), Some(&kwargs));
    }
    Ok(array)
}
