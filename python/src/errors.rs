//! Errors of the crate as exceptions.

use hankwise::{Error, ErrorKind};
use pyo3::create_exception;
use pyo3::exceptions::{PyUserWarning, PyValueError};
use pyo3::prelude::*;

create_exception!(hankwise, HankwiseError, PyValueError, "Something given to hankwise is wrong.");
create_exception!(
    hankwise,
    UnitError,
    HankwiseError,
    "A unit is missing, unknown, ambiguous or of the wrong kind."
);
create_exception!(
    hankwise,
    NotationError,
    HankwiseError,
    "A text cannot be read as what it should be."
);
create_exception!(hankwise, RangeError, HankwiseError, "A value is impossible.");
create_exception!(hankwise, PlanError, HankwiseError, "A plan or its lot file is wrong.");
create_exception!(hankwise, RangeWarning, PyUserWarning, "A value is outside its usual range.");

/// The exception for an error of the crate.
pub(crate) fn raise(error: &Error) -> PyErr {
    let message = error.to_string();
    match error.kind() {
        ErrorKind::Unit => UnitError::new_err(message),
        ErrorKind::Notation => NotationError::new_err(message),
        ErrorKind::Range => RangeError::new_err(message),
        ErrorKind::Plan => PlanError::new_err(message),
    }
}

/// Adds the exceptions to the module.
pub(crate) fn add(m: &Bound<'_, PyModule>) -> PyResult<()> {
    let py = m.py();
    m.add("HankwiseError", py.get_type::<HankwiseError>())?;
    m.add("UnitError", py.get_type::<UnitError>())?;
    m.add("NotationError", py.get_type::<NotationError>())?;
    m.add("RangeError", py.get_type::<RangeError>())?;
    m.add("PlanError", py.get_type::<PlanError>())?;
    m.add("RangeWarning", py.get_type::<RangeWarning>())
}
