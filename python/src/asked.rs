//! The figures of a calculation, by name.

use hankwise::job::Given;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::errors::raise;
use crate::inputs::{locate, one_figure};

/// Reads the figures that were given by name; those in `apart` are read elsewhere.
pub(crate) fn read(
    mut asked: Given,
    of: &str,
    given: Option<&Bound<'_, PyDict>>,
    apart: &[&'static str],
) -> PyResult<Given> {
    for (name, value) in given.into_iter().flat_map(pyo3::types::PyDictMethods::iter) {
        let name: String = name.extract()?;
        if value.is_none() || apart.contains(&name.as_str()) {
            continue;
        }
        let located = |e: hankwise::Error| raise(&e.at(of));
        // What is read elsewhere may be given too.
        let known: Vec<&str> = asked.names().chain(apart.iter().copied()).collect();
        if !known.contains(&name.as_str()) {
            return Err(located(hankwise::Error::no_such(&name, &known)));
        }
        let kind = asked.kind(&name).map_err(located)?;
        let (amount, typed) =
            one_figure(&value, kind).map_err(|e| locate(value.py(), of, &name, e))?;
        asked.set(&name, amount, typed).map_err(located)?;
    }
    Ok(asked)
}
