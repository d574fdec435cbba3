//! Errors of the crate as exceptions.

use std::fmt::Display;

use hankwise::{Error, ErrorKind};
use pyo3::create_exception;
use pyo3::exceptions::{PyTypeError, PyUserWarning, PyValueError};
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::PyType;

use crate::attributes::dict;

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

/// The class of a wrong call: what was written cannot be read as one, and Python has `TypeError` for that.
fn call_error(py: Python<'_>) -> PyResult<&Bound<'_, PyType>> {
    static CLASS: PyOnceLock<Py<PyType>> = PyOnceLock::new();
    let class = CLASS.get_or_try_init(py, || {
        let about = "A call omits an input that is needed, names one that there is not, or gives \
                     one twice.";
        let bases = (py.get_type::<NotationError>(), py.get_type::<PyTypeError>());
        let own = dict!(py, { "__module__": "hankwise", "__doc__": about });
        let class = py.get_type::<PyType>().call1(("CallError", bases, own))?;
        PyResult::Ok(class.cast_into::<PyType>()?.unbind())
    });
    class.map(|class| class.bind(py))
}

/// The exception for an error of the crate.
pub(crate) fn raise(error: &Error) -> PyErr {
    let message = error.to_string();
    match error.kind() {
        ErrorKind::Unit => UnitError::new_err(message),
        ErrorKind::Notation => NotationError::new_err(message),
        ErrorKind::Range => RangeError::new_err(message),
        ErrorKind::Plan => PlanError::new_err(message),
        ErrorKind::Call => Python::attach(|py| match call_error(py) {
            Ok(class) => PyErr::from_type(class.clone(), message),
            Err(error) => error,
        }),
    }
}

/// A result of the crate as one of Python.
pub(crate) trait OrRaise<T> {
    /// The value, or the exception.
    fn or_raise(self) -> PyResult<T>;
    /// The same with a place in front of the message.
    fn or_raise_at(self, place: impl Display) -> PyResult<T>;
}

impl<T> OrRaise<T> for hankwise::Result<T> {
    fn or_raise(self) -> PyResult<T> {
        self.map_err(|e| raise(&e))
    }
    fn or_raise_at(self, place: impl Display) -> PyResult<T> {
        self.map_err(|e| raise(&e.at(place)))
    }
}

/// Adds the exceptions to the module.
pub(crate) fn add(m: &Bound<'_, PyModule>) -> PyResult<()> {
    let py = m.py();
    m.add("HankwiseError", py.get_type::<HankwiseError>())?;
    m.add("UnitError", py.get_type::<UnitError>())?;
    m.add("NotationError", py.get_type::<NotationError>())?;
    m.add("RangeError", py.get_type::<RangeError>())?;
    m.add("CallError", call_error(py)?)?;
    m.add("PlanError", py.get_type::<PlanError>())?;
    m.add("RangeWarning", py.get_type::<RangeWarning>())
}
