//! The named figures of a longer calculation.

use std::path::PathBuf;

use hankwise::particulars;
use pyo3::exceptions::PyKeyError;
use pyo3::prelude::*;
use pyo3::types::PyIterator;

use crate::call::warn;
use crate::errors::raise;
use crate::inputs::base_unit;
use crate::quantity::Quantity;
use crate::working::Working;

/// The named figures of a calculation that chains formulas, each a quantity with its working.
///
/// Shows itself as a table. `result["name"]` is a figure, `working("name")` how it came about,
/// `to_sheet(path)` the whole as a live workbook.
#[pyclass(frozen, mapping, module = "hankwise", weakref)]
pub(crate) struct Particulars {
    pub(crate) inner: particulars::Particulars,
}

impl Particulars {
    /// Hands over a result, and tells what is unusual in it.
    pub(crate) fn hand_over(
        py: Python<'_>,
        result: hankwise::Result<particulars::Particulars>,
    ) -> PyResult<Particulars> {
        let inner = result.map_err(|e| raise(&e))?;
        warn(py, inner.warnings().to_vec())?;
        Ok(Particulars { inner })
    }
}

#[pymethods]
impl Particulars {
    fn __getitem__(&self, py: Python<'_>, name: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        let Ok(name) = name.extract::<String>() else {
            return Err(PyKeyError::new_err(format!(
                "a figure is asked for by its name, such as '{}', not {}",
                self.inner.figures().first().map_or("", |f| f.name.as_str()),
                crate::columns::shown(name)
            )));
        };
        let figure = self.inner.find(&name).map_err(|e| PyKeyError::new_err(e.to_string()))?;
        let unit = base_unit(figure.kind);
        Ok(Quantity::scalar(py, unit.from_base(figure.value), unit, figure.kind))
    }
    fn __len__(&self) -> usize {
        self.inner.figures().len()
    }
    fn __contains__(&self, name: &Bound<'_, PyAny>) -> bool {
        name.extract::<String>().is_ok_and(|name| self.inner.find(&name).is_ok())
    }
    fn __iter__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyIterator>> {
        self.keys().into_pyobject(py)?.try_iter()
    }
    /// The names of the figures.
    #[pyo3(text_signature = "($self)")]
    fn keys(&self) -> Vec<String> {
        self.inner.figures().iter().map(|f| f.name.clone()).collect()
    }
    /// What the figures are, in words, by name.
    #[getter]
    fn meanings(&self) -> std::collections::BTreeMap<String, String> {
        self.inner.figures().iter().map(|f| (f.name.clone(), f.words.clone())).collect()
    }
    /// What is unusual.
    #[getter]
    fn warnings(&self) -> Vec<String> {
        self.inner.warnings().to_vec()
    }
    /// What can do harm where the figures are acted on.
    #[getter]
    fn cautions(&self) -> Vec<String> {
        self.inner.cautions().iter().map(|caution| caution.line(&[])).collect()
    }
    /// How a figure came about.
    #[pyo3(signature = (name, /), text_signature = "($self, name, /)")]
    fn working(&self, name: &str) -> PyResult<Working> {
        Ok(Working { working: self.inner.working(name).map_err(|e| raise(&e))? })
    }
    /// Writes all figures as a live workbook (.xlsx): a cell a step, formulas instead of values.
    #[pyo3(signature = (path, /), text_signature = "($self, path, /)")]
    fn to_sheet(&self, path: PathBuf) -> PyResult<()> {
        self.inner.to_sheet(&path).map_err(|e| raise(&e))
    }
    fn __repr__(&self) -> String {
        self.inner.report().text().trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.inner.report().html()
    }
}
