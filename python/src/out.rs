//! Converting into an array that is there already, in parts over the cores.

use std::sync::{Mutex, PoisonError};

use numpy::{PyArrayDyn, PyArrayMethods, PyUntypedArray, PyUntypedArrayMethods};
use pyo3::PyTypeInfo;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyFloat};

use crate::columns::Figures;
use crate::convert::Change;
use crate::errors::NotationError;

type Array<'py> = Bound<'py, PyArrayDyn<f64>>;

/// Below so many figures starting a thread takes longer than it saves.
const WORTH_A_THREAD: usize = 1_000_000;
/// Figures in a part: half a megabyte, which the cache of a core holds.
const PART: usize = 1 << 16;

/// Writes the changed figures into `out`, which may be the given array itself.
pub(crate) fn write<'py>(
    change: Change,
    values: &Bound<'py, PyAny>,
    out: &Bound<'py, PyAny>,
) -> PyResult<()> {
    let out = writeable(out)?;
    let given = figures(values)?;
    if given.shape() != out.shape() {
        return Err(NotationError::new_err(format!(
            "out has the shape {:?} and the values {:?}; make it numpy.empty(values.shape)",
            out.shape(),
            given.shape()
        )));
    }
    let same = given.data() == out.data() && given.strides() == out.strides();
    let numpy = || values.py().import("numpy");
    let overlap = || numpy()?.getattr("shares_memory")?.call1((&given, &out))?.is_truthy();
    if !same && !apart(&given, &out) && overlap()? {
        return Err(NotationError::new_err(
            "out and the values overlap in part, so values would be overwritten before they are \
             read; give the values themselves as out, or an array of its own",
        ));
    }
    let alike = (given.is_c_contiguous() && out.is_c_contiguous())
        || (given.is_fortran_contiguous() && out.is_fortran_contiguous());
    if alike && (if same { in_place(change, &out) } else { across(change, &given, &out) }) {
        return Ok(());
    }
    // Figures that lie apart are NumPy's business.
    let kwargs = PyDict::new(values.py());
    kwargs.set_item("out", &out)?;
    let py = values.py();
    let number = |x: f64| PyFloat::new(py, x).into_any();
    let given = given.into_any();
    let steps = match change {
        Change::Times(k) => vec![("multiply", given, number(k))],
        Change::Per(k) => vec![("divide", given, number(k))],
        Change::Over(k) => vec![("divide", number(k), given)],
        Change::Down(zero, degrees) => vec![
            ("subtract", given, number(zero)),
            ("divide", out.clone().into_any(), number(degrees)),
        ],
        Change::Up(zero, degrees) => vec![
            ("multiply", given, number(degrees)),
            ("add", out.clone().into_any(), number(zero)),
        ],
    };
    for (name, left, right) in steps {
        numpy()?.getattr(name)?.call((left, right), Some(&kwargs))?;
    }
    Ok(())
}

/// True where the object is NumPy's own array: a subclass may mean more than its figures, a mask, a unit.
fn is_plain(value: &Bound<'_, PyAny>) -> bool {
    value.get_type().is(PyUntypedArray::type_object(value.py()))
}

/// The figures of anything that has several.
fn figures<'py>(values: &Bound<'py, PyAny>) -> PyResult<Array<'py>> {
    // The plain case first: small arrays should not wait for questions.
    if is_plain(values)
        && let Ok(array) = values.cast::<PyArrayDyn<f64>>()
        && array.ndim() > 0
    {
        return Ok(array.clone());
    }
    let masked = values.py().import("numpy")?.getattr("ma")?.getattr("MaskedArray")?;
    if values.is_instance(&masked)? {
        return Err(PyTypeError::new_err(
            "out cannot say what is masked; fill the gaps first, values.filled(numpy.nan), or leave \
             out= away",
        ));
    }
    match Figures::of(values)? {
        Figures::Many(array) => Ok(array),
        Figures::One(_) => Err(PyTypeError::new_err(
            "out is for arrays; a single value is returned as it is, without out=",
        )),
    }
}

/// True where two arrays without gaps lie apart.
fn apart(a: &Array<'_>, b: &Array<'_>) -> bool {
    let (from, to) = (a.data() as usize, b.data() as usize);
    let bytes = |array: &Array<'_>| array.len() * size_of::<f64>();
    a.is_contiguous() && b.is_contiguous() && (from + bytes(a) <= to || to + bytes(b) <= from)
}

/// An array that can take the figures: NumPy's own, of float64, not read-only.
fn writeable<'py>(out: &Bound<'py, PyAny>) -> PyResult<Array<'py>> {
    let kind = out.get_type();
    let plain = is_plain(out) || kind.is(out.py().import("numpy")?.getattr("memmap")?);
    let Some(array) = plain.then(|| out.cast::<PyArrayDyn<f64>>().ok()).flatten() else {
        let what = match out.getattr("dtype") {
            Ok(dtype) => format!("{} of {dtype}", kind.name()?),
            Err(_) => kind.name()?.to_string(),
        };
        return Err(PyTypeError::new_err(format!(
            "out is a NumPy array of float64, not {what}; make it numpy.empty(values.shape)"
        )));
    };
    if !array.getattr("flags")?.getattr("writeable")?.is_truthy()? {
        return Err(NotationError::new_err(
            "out is read-only; give an array of its own, numpy.empty(values.shape)",
        ));
    }
    Ok(array.clone())
}

/// False where the figures cannot be had as a slice.
fn in_place(change: Change, out: &Array<'_>) -> bool {
    let Ok(mut write) = out.try_readwrite() else { return false };
    let Ok(figures) = write.as_slice_mut() else { return false };
    out.py().detach(|| {
        in_parts(figures.len(), |size| figures.chunks_mut(size), |part| change.turn(part));
    });
    true
}

fn across(change: Change, given: &Array<'_>, out: &Array<'_>) -> bool {
    let (Ok(read), Ok(mut write)) = (given.try_readonly(), out.try_readwrite()) else {
        return false;
    };
    let (Ok(from), Ok(to)) = (read.as_slice(), write.as_slice_mut()) else { return false };
    out.py().detach(|| {
        in_parts(
            from.len(),
            |size| from.chunks(size).zip(to.chunks_mut(size)),
            |(from, to)| change.fill(from, to),
        );
    });
    true
}

/// Does the parts of so many figures; whichever core is free takes the next. The figures do not depend
/// on who computes them.
pub(crate) fn in_parts<P: Send, I: Iterator<Item = P> + Send>(
    figures: usize,
    parts: impl FnOnce(usize) -> I,
    work: impl Fn(P) + Sync,
) {
    let parts = Mutex::new(parts(PART));
    let next = || parts.lock().unwrap_or_else(PoisonError::into_inner).next();
    let all = || {
        while let Some(part) = next() {
            work(part);
        }
    };
    std::thread::scope(|scope| {
        let helpers = if figures < WORTH_A_THREAD { 0 } else { crate::plan::cores() - 1 };
        for _ in 0..helpers {
            scope.spawn(all);
        }
        all();
    });
}
