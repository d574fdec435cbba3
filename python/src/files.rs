//! Files, for what is written in Python: pictures and the command line.

use std::path::{Path, PathBuf};

use hankwise::files::{FileKind, Output, read_text};
use pyo3::prelude::*;

use crate::errors::{NotationError, OrRaise};
use crate::text::{File, Text};

/// Where a file goes.
pub(crate) fn output(path: PathBuf, force: bool) -> Output {
    if force { Output::over(path) } else { Output::from(&path) }
}

/// The kind of picture that the name of a file says.
fn picture(path: &Path) -> PyResult<FileKind> {
    let kinds = [FileKind::Svg, FileKind::Png, FileKind::Pdf];
    FileKind::of(path).filter(|kind| kinds.contains(kind)).ok_or_else(|| {
        NotationError::new_err(format!(
            "{}: the name of a picture must end in .svg, .png or .pdf",
            path.display()
        ))
    })
}

/// Refuses a file that could not be written; `ending` is what its name must end in, None for a picture.
#[pyfunction]
#[pyo3(signature = (path, ending, force, /))]
pub(crate) fn _check_output(path: File, ending: Option<Text>, force: bool) -> PyResult<()> {
    let path = path.named("path")?;
    let ending = Text::option(ending.as_ref(), "ending")?;
    let kind = match ending.and_then(FileKind::named) {
        Some(kind) => kind,
        None => picture(&path)?,
    };
    output(path, force).check(kind).or_raise()
}

/// Writes a picture that was drawn in Python.
#[pyfunction]
#[pyo3(signature = (path, drawn, force, /))]
pub(crate) fn _write_picture(path: File, drawn: &[u8], force: bool) -> PyResult<()> {
    let path = path.named("path")?;
    let kind = picture(&path)?;
    output(path, force).write(kind, drawn).or_raise()
}

/// Writes a new lot file or mill file.
#[pyfunction]
#[pyo3(signature = (path, text, force, /))]
pub(crate) fn _write_toml(path: PathBuf, text: &str, force: bool) -> PyResult<()> {
    output(path, force).write(FileKind::Toml, text.as_bytes()).or_raise()
}

/// Reads a text in UTF-8, unless it is too large.
#[pyfunction]
#[pyo3(signature = (path, /))]
pub(crate) fn _read_text(path: File) -> PyResult<String> {
    let path = path.named("path")?;
    read_text(&path).or_raise()
}
