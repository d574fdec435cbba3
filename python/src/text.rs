//! Texts and names of files that are given: what Python holds as text need not be text that can be written.

use std::path::PathBuf;

use pyo3::exceptions::PyUnicodeError;
use pyo3::prelude::*;
use pyo3::pybacked::PyBackedStr;
use pyo3::types::PyString;

use crate::errors::NotationError;

/// A text that was given, or how Python shows what is not: half of a surrogate pair stands for no
/// character. It is refused by the name of the argument.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Text {
    /// It was given.
    Given(PyBackedStr),
    /// It was omitted, and this is meant.
    Meant(&'static str),
    /// It is not text.
    Broken(String),
}

impl<'a, 'py> FromPyObject<'a, 'py> for Text {
    type Error = PyErr;
    fn extract(value: Borrowed<'a, 'py, PyAny>) -> PyResult<Text> {
        Ok(whole(&value)?.map_or_else(Text::Broken, Text::Given))
    }
}

impl Text {
    /// The text, under the name of the argument.
    pub(crate) fn named(&self, name: &str) -> PyResult<&str> {
        match self {
            Text::Given(text) => Ok(text),
            Text::Meant(text) => Ok(text),
            Text::Broken(shown) => Err(no_text(name, shown)),
        }
    }
    /// The same, where it may be omitted.
    pub(crate) fn option<'t>(text: Option<&'t Text>, name: &str) -> PyResult<Option<&'t str>> {
        text.map(|text| text.named(name)).transpose()
    }
    /// The same, as a text of its own.
    pub(crate) fn owned(text: Option<&Text>, name: &str) -> PyResult<Option<String>> {
        Ok(Text::option(text, name)?.map(str::to_owned))
    }
}

/// The name of a file that was given.
pub(crate) struct File(Result<PathBuf, String>);

impl<'a, 'py> FromPyObject<'a, 'py> for File {
    type Error = PyErr;
    fn extract(value: Borrowed<'a, 'py, PyAny>) -> PyResult<File> {
        match value.extract::<PathBuf>() {
            Ok(path) => Ok(File(Ok(path))),
            Err(error) if error.is_instance_of::<PyUnicodeError>(value.py()) => {
                Ok(File(Err(value.repr()?.to_string_lossy().into_owned())))
            }
            Err(error) => Err(error),
        }
    }
}

impl File {
    /// The name of the file, under the name of the argument.
    pub(crate) fn named(self, name: &str) -> PyResult<PathBuf> {
        self.0.map_err(|shown| no_text(name, &shown))
    }
}

/// The text of an object, under the name of the argument.
pub(crate) fn text_of(value: &Bound<'_, PyAny>, name: &str) -> PyResult<PyBackedStr> {
    whole(value)?.map_err(|shown| no_text(name, &shown))
}

/// The text of an object whose place the caller puts in front.
pub(crate) fn text(value: &Bound<'_, PyAny>) -> PyResult<PyBackedStr> {
    whole(value)?.map_err(|shown| NotationError::new_err(half_of(&shown)))
}

/// The name under which something was given in a call.
pub(crate) fn keyword(name: &Bound<'_, PyAny>, of: &str) -> PyResult<PyBackedStr> {
    text_of(name, &format!("{of}, the name of an input"))
}

fn whole(value: &Bound<'_, PyAny>) -> PyResult<Result<PyBackedStr, String>> {
    let text = value.cast::<PyString>()?;
    match PyBackedStr::try_from(text.clone()) {
        Ok(text) => Ok(Ok(text)),
        Err(_) => Ok(Err(text.repr()?.to_string_lossy().into_owned())),
    }
}

fn no_text(name: &str, shown: &str) -> PyErr {
    NotationError::new_err(format!("{name}: {}", half_of(shown)))
}

fn half_of(shown: &str) -> String {
    format!(
        "{shown} holds half of a character (a lone surrogate), as a file that was read with the wrong \
         encoding leaves; read that as UTF-8, or write the text anew"
    )
}
