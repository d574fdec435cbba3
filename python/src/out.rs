//! Converting into an array that is there already, in parts over the cores.

use std::sync::{Mutex, PoisonError};

use numpy::{PyArrayDyn, PyArrayMethods, PyUntypedArrayMethods};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;

use crate::columns::{Figures, is_masked, is_plain};
use crate::convert::{Change, Refused};
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
    let done = match alike {
        true if same => in_place(change, &out),
        true => across(change, &given, &out),
        false => None,
    };
    let refused = match done {
        Some(refused) if out.is_c_contiguous() => refused,
        Some(refused) => refused.by_columns(given.shape()),
        // Figures that lie apart are brought together and written back.
        None => {
            let (made, refused) = change.array(&given)?;
            numpy()?.getattr("copyto")?.call1((&out, made))?;
            refused
        }
    };
    change.tell(values.py(), refused, given.shape(), Some(values))
}

/// The figures of anything that has several.
fn figures<'py>(values: &Bound<'py, PyAny>) -> PyResult<Array<'py>> {
    if is_masked(values) {
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

/// None where the figures cannot be had as a slice.
fn in_place(change: Change, out: &Array<'_>) -> Option<Refused> {
    let mut write = out.try_readwrite().ok()?;
    let figures = write.as_slice_mut().ok()?;
    Some(out.py().detach(|| {
        let all = Mutex::new(Refused::default());
        in_parts(
            figures.len(),
            |size| figures.chunks_mut(size).enumerate().map(move |(at, part)| (at * size, part)),
            |(start, part)| gather(&all, change.turn(part), start),
        );
        all.into_inner().unwrap_or_else(PoisonError::into_inner)
    }))
}

fn across(change: Change, given: &Array<'_>, out: &Array<'_>) -> Option<Refused> {
    let (read, mut write) = (given.try_readonly().ok()?, out.try_readwrite().ok()?);
    let (from, to) = (read.as_slice().ok()?, write.as_slice_mut().ok()?);
    Some(out.py().detach(|| {
        let all = Mutex::new(Refused::default());
        in_parts(
            from.len(),
            |size| {
                let parts = from.chunks(size).zip(to.chunks_mut(size));
                parts.enumerate().map(move |(at, part)| (at * size, part))
            },
            |(start, (from, to))| gather(&all, change.fill(from, to), start),
        );
        all.into_inner().unwrap_or_else(PoisonError::into_inner)
    }))
}

/// Adds what was refused in a part to the whole.
fn gather(all: &Mutex<Refused>, part: Refused, start: usize) {
    if !part.is_empty() {
        let mut all = all.lock().unwrap_or_else(PoisonError::into_inner);
        *all = all.and(part.from(start));
    }
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
