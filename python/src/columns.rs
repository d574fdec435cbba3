//! Figures in and out of Python: a float, an array, a Series, a list; like in, like out.

use numpy::{PyArrayDyn, PyReadonlyArrayDyn, PyUntypedArrayMethods};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyDict, PyFloat, PyInt, PyList, PyTuple};

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
    if value.is_instance_of::<PyBool>() || !is_numeric(value) {
        return None;
    }
    // NumPy's scalars, Decimal, Fraction: whatever calls itself a number and has no places.
    let places = match value.getattr("ndim") {
        Ok(axes) => axes.extract::<usize>().is_ok_and(|n| n > 0),
        Err(_) => value.hasattr("__len__").unwrap_or(true),
    };
    if !places && value.hasattr("__float__").unwrap_or(false) {
        return value.extract::<f64>().ok();
    }
    None
}

/// False where the dtype of an array says that it holds something else than real numbers.
pub(crate) fn is_numeric(value: &Bound<'_, PyAny>) -> bool {
    let kind = value.getattr("dtype").and_then(|d| d.getattr("kind"));
    kind.and_then(|k| k.extract::<String>()).map_or(true, |k| "iufO".contains(&k))
}

/// What is said where numbers are wanted and something else is given.
pub(crate) fn no_numbers(value: &Bound<'_, PyAny>) -> PyErr {
    PyTypeError::new_err(format!(
        "write numbers, not {}; a quantity is written like hankwise.q('9 tpi'), several like hankwise.q([9, 10], 'tpi')",
        shown(value)
    ))
}

/// What was given, as Python shows it, cut short.
pub(crate) fn shown(value: &Bound<'_, PyAny>) -> String {
    let shown = value.repr().map_or_else(|_| String::new(), |r| r.to_string());
    // A Series or a table would break the line.
    let mut shown = shown.split_whitespace().collect::<Vec<_>>().join(" ");
    if let Some((end, _)) = shown.char_indices().nth(60) {
        shown.truncate(end);
        shown.push('…');
    }
    shown
}

impl<'py> Figures<'py> {
    /// Reads the figures of an object that holds numbers only.
    pub(crate) fn of(value: &Bound<'py, PyAny>) -> PyResult<Figures<'py>> {
        if let Some(x) = scalar(value) {
            return Ok(Figures::One(x));
        }
        let refuse = |_| no_numbers(value);
        let py = value.py();
        let (numpy, kwargs) = (py.import("numpy")?, PyDict::new(py));
        kwargs.set_item("dtype", "float64")?;
        let array = if !is_numeric(value) {
            return Err(no_numbers(value));
        } else if value.hasattr("to_numpy")? {
            // A Series whose figures may be missing.
            kwargs.set_item("na_value", f64::NAN)?;
            value.call_method("to_numpy", (), Some(&kwargs)).map_err(refuse)?
        } else {
            let array = numpy.getattr("asarray")?.call1((value,)).map_err(refuse)?;
            let axes: usize = array.getattr("ndim")?.extract()?;
            if axes == 0 || !is_numeric(&array) {
                return Err(no_numbers(value));
            }
            numpy.getattr("asarray")?.call((array,), Some(&kwargs)).map_err(refuse)?
        };
        Ok(Figures::Many(array.cast_into().map_err(|_| no_numbers(value))?))
    }
}

/// The rows of an array, copied where they do not lie one after the other. What lies by columns has a
/// slice too, but in another order than its neighbours.
pub(crate) fn rows<'a>(array: &'a PyReadonlyArrayDyn<'_, f64>) -> std::borrow::Cow<'a, [f64]> {
    match array.as_slice() {
        Ok(rows) if array.is_c_contiguous() => rows.into(),
        _ => array.as_array().iter().copied().collect::<Vec<f64>>().into(),
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
        return tuples(array.call_method0("tolist")?);
    }
    if let (Ok(index), true) = (like.getattr("index"), like.hasattr("to_numpy")?) {
        let kwargs = PyDict::new(like.py());
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

/// A list of lists as a tuple of tuples.
fn tuples(value: Bound<'_, PyAny>) -> PyResult<Bound<'_, PyAny>> {
    let Ok(list) = value.cast::<PyList>() else { return Ok(value) };
    let members = list.iter().map(tuples).collect::<PyResult<Vec<_>>>()?;
    Ok(PyTuple::new(list.py(), members)?.into_any())
}
