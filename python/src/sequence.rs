//! Members of a sequence, by an index or a slice as Python has them.

use pyo3::exceptions::PyIndexError;
use pyo3::prelude::*;
use pyo3::types::PySlice;

/// The places that a key means.
pub(crate) enum Places {
    /// That of an index; one below 0 counts from the end.
    One(usize),
    /// Those of a slice.
    Several(Vec<usize>),
}

/// The places that a key means in a sequence of a length; `what` says of what it is.
pub(crate) fn places(key: &Bound<'_, PyAny>, length: usize, what: &str) -> PyResult<Places> {
    if let Ok(slice) = key.cast::<PySlice>() {
        let range = slice.indices(isize::try_from(length)?)?;
        let place = |k| Ok(usize::try_from(range.start + isize::try_from(k)? * range.step)?);
        return (0..range.slicelength).map(place).collect::<PyResult<_>>().map(Places::Several);
    }
    let at: isize = key.extract()?;
    match usize::try_from(if at < 0 { at + isize::try_from(length)? } else { at }) {
        Ok(at) if at < length => Ok(Places::One(at)),
        _ => Err(PyIndexError::new_err(format!("there are {length} {what}"))),
    }
}
