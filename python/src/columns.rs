//! Figures in and out of Python: a float, an array, a Series, a list; like in, like out.

use numpy::{
    PyArrayDyn, PyArrayMethods, PyReadonlyArrayDyn, PyUntypedArray, PyUntypedArrayMethods,
};
use pyo3::PyTypeInfo;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyDict, PyFloat, PyInt, PyList, PyTuple};

use crate::foreign::foreign;

/// Figures of one input.
pub(crate) enum Figures<'py> {
    /// One figure.
    One(f64),
    /// An array of figures, as NumPy has them.
    Many(Bound<'py, PyArrayDyn<f64>>),
}

/// True of Python's own numbers: the plain case, asked first, should not wait for questions.
pub(crate) fn is_number(value: &Bound<'_, PyAny>) -> bool {
    value.cast_exact::<PyFloat>().is_ok() || value.cast_exact::<PyInt>().is_ok()
}

/// A plain figure; None where it is something else. True and False are no figures, and neither is the
/// value of another library that has a unit.
pub(crate) fn scalar(value: &Bound<'_, PyAny>) -> Option<f64> {
    if is_number(value) {
        return value.extract::<f64>().ok();
    }
    if is_plain(value) && value.cast::<PyUntypedArray>().is_ok_and(|a| a.ndim() > 0) {
        return None;
    }
    if value.is_instance_of::<PyBool>() || !is_numeric(value) || foreign(value).is_some() {
        return None;
    }
    // NumPy's scalars, Decimal, Fraction: whatever calls itself a number and has no places.
    let places = match value.getattr("ndim") {
        Ok(axes) => axes.extract::<usize>().is_ok_and(|n| n > 0),
        Err(_) => value.hasattr("__len__").unwrap_or(true),
    };
    if places || !value.hasattr("__float__").unwrap_or(false) {
        return None;
    }
    if is_masked(value) && value.getattr("mask").and_then(|m| m.is_truthy()).unwrap_or(false) {
        return Some(f64::NAN);
    }
    value.extract::<f64>().ok()
}

/// True where the object is NumPy's own array: a subclass may mean more than its figures, a mask, a unit.
pub(crate) fn is_plain(value: &Bound<'_, PyAny>) -> bool {
    value.get_type().is(PyUntypedArray::type_object(value.py()))
}

/// True of an array that says which of its figures are missing.
pub(crate) fn is_masked(value: &Bound<'_, PyAny>) -> bool {
    // Plain arrays, and values that are not arrays, should not wait for the question.
    if is_plain(value) || value.cast::<PyUntypedArray>().is_err() {
        return false;
    }
    let masked = || value.py().import("numpy")?.getattr("ma")?.getattr("MaskedArray");
    masked().is_ok_and(|masked| value.is_instance(&masked).unwrap_or(false))
}

/// False where the dtype of an array says that it holds something else than real numbers.
pub(crate) fn is_numeric(value: &Bound<'_, PyAny>) -> bool {
    let kind = value.getattr("dtype").and_then(|d| d.getattr("kind"));
    kind.and_then(|k| k.extract::<String>()).map_or(true, |k| "iufO".contains(&k))
}

/// What is said where numbers are wanted and something else is given.
pub(crate) fn no_numbers(value: &Bound<'_, PyAny>) -> PyErr {
    if let Some(refused) = foreign(value) {
        return refused;
    }
    PyTypeError::new_err(format!(
        "write numbers, not {}; a quantity is written like hankwise.q('9 tpi'), several like \
         hankwise.q([9, 10], 'tpi') or hankwise.q(['9 tpi', '10 tpi'])",
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
    /// Reads the figures of an object that holds numbers only. What is masked or missing is NaN.
    pub(crate) fn of(value: &Bound<'py, PyAny>) -> PyResult<Figures<'py>> {
        // The plain case first: small arrays should not wait for questions.
        if is_plain(value)
            && let Ok(array) = value.cast::<PyArrayDyn<f64>>()
            && array.ndim() > 0
            && is_aligned(array)
        {
            return Ok(Figures::Many(array.clone()));
        }
        if let Some(x) = scalar(value) {
            return Ok(Figures::One(x));
        }
        if let Some(refused) = foreign(value) {
            return Err(refused);
        }
        let refuse = |_| no_numbers(value);
        let py = value.py();
        let (numpy, kwargs) = (py.import("numpy")?, PyDict::new(py));
        kwargs.set_item("dtype", "float64")?;
        let array = if !is_numeric(value) {
            return Err(no_numbers(value));
        } else if is_masked(value) {
            let floats = value.call_method1("astype", ("float64",)).map_err(refuse)?;
            floats.call_method1("filled", (f64::NAN,)).map_err(refuse)?
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
        let array: Bound<'py, PyArrayDyn<f64>> =
            array.cast_into().map_err(|_| no_numbers(value))?;
        if is_aligned(&array) {
            return Ok(Figures::Many(array));
        }
        let copy = array.call_method0("copy")?;
        Ok(Figures::Many(copy.cast_into().map_err(|_| no_numbers(value))?))
    }
}

/// False where figures lie between the places that the machine reads at once: a view into bytes.
fn is_aligned(array: &Bound<'_, PyArrayDyn<f64>>) -> bool {
    let width = align_of::<f64>();
    (array.data() as usize).is_multiple_of(width)
        && array.strides().iter().all(|step| step.unsigned_abs().is_multiple_of(width))
}

/// The rows of an array, copied where they do not lie one after the other. What lies by columns has a
/// slice too, but in another order than its neighbours.
pub(crate) fn rows<'a>(array: &'a PyReadonlyArrayDyn<'_, f64>) -> std::borrow::Cow<'a, [f64]> {
    match array.as_slice() {
        Ok(rows) if array.is_c_contiguous() => rows.into(),
        _ => array.as_array().iter().copied().collect::<Vec<f64>>().into(),
    }
}

/// Where a figure stands, for a message: its row, with its label where there is another; in a table the
/// row and the column.
pub(crate) fn place(at: usize, shape: &[usize], like: Option<&Bound<'_, PyAny>>) -> String {
    let width = shape.iter().skip(1).product::<usize>().max(1);
    let row = at / width;
    let label = |axis: &str, at: usize| -> Option<String> {
        let label = like?.getattr(axis).ok()?.get_item(at).ok()?;
        let same = label.extract::<usize>().is_ok_and(|number| number == at);
        (!same).then(|| label.str().map(|label| label.to_string()).ok()).flatten()
    };
    let mut words = format!("row {row}");
    if let Some(label) = label("index", row) {
        words = format!("{words} ('{label}')");
    }
    if shape.len() > 1 {
        words = format!("{words}, column {}", at % width);
        if let Some(label) = label("columns", at % width) {
            words = format!("{words} ('{label}')");
        }
    }
    words
}

/// An array in the container of `like`: a Series for a Series, a list for a list, masked for masked.
pub(crate) fn in_kind<'py>(
    array: Bound<'py, PyAny>,
    like: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    if is_plain(like) {
        return Ok(array);
    }
    if like.is_instance_of::<PyList>() {
        return array.call_method0("tolist");
    }
    if like.is_instance_of::<PyTuple>() {
        return tuples(array.call_method0("tolist")?);
    }
    if is_masked(like) {
        let numpy = like.py().import("numpy")?;
        let kwargs = PyDict::new(like.py());
        kwargs.set_item("mask", numpy.getattr("isnan")?.call1((&array,))?)?;
        return numpy.getattr("ma")?.getattr("array")?.call((array,), Some(&kwargs));
    }
    if !like.hasattr("to_numpy")? {
        return Ok(array);
    }
    let kwargs = PyDict::new(like.py());
    for name in ["index", "name", "columns"] {
        if let Ok(value) = like.getattr(name) {
            kwargs.set_item(name, value)?;
            // A table has no name, and its columns may be called so.
            if name == "index" && like.hasattr("columns")? {
                kwargs.set_item("columns", like.getattr("columns")?)?;
                break;
            }
        }
    }
    if like.hasattr("index")? {
        return like.get_type().call((array,), Some(&kwargs));
    }
    // An Index, or an array that pandas keeps.
    match kwargs.get_item("name")? {
        Some(_) => like.py().import("pandas")?.getattr("Index")?.call((array,), Some(&kwargs)),
        None => Ok(array),
    }
}

/// Figures in the dtype of `like`: single precision, or a dtype of pandas that knows missing values.
pub(crate) fn in_dtype<'py>(
    figures: Bound<'py, PyAny>,
    like: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    let Ok(dtype) = like.getattr("dtype") else { return Ok(figures) };
    if is_plain(like) && like.cast::<PyArrayDyn<f64>>().is_ok()
        || figures.is_exact_instance_of::<PyFloat>()
    {
        return Ok(figures);
    }
    let name = dtype.str()?.to_string();
    let wanted = match name.as_str() {
        "float16" | "float32" | "Float32" | "Float64" => name.as_str(),
        _ if name.ends_with("[pyarrow]") => "double[pyarrow]",
        _ if name.starts_with("Int") || name.starts_with("UInt") => "Float64",
        _ => return Ok(figures),
    };
    figures.call_method1("astype", (wanted,))
}

/// A list of lists as a tuple of tuples.
fn tuples(value: Bound<'_, PyAny>) -> PyResult<Bound<'_, PyAny>> {
    let Ok(list) = value.cast::<PyList>() else { return Ok(value) };
    let members = list.iter().map(tuples).collect::<PyResult<Vec<_>>>()?;
    Ok(PyTuple::new(list.py(), members)?.into_any())
}
