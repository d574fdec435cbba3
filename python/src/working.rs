//! The working of an answer.

use std::path::PathBuf;

use hankwise::quantity::print;
use hankwise::worked;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::errors::raise;

/// The working of one answer: every step in symbols and figures, from what was given.
///
/// Shows itself as text; `html()` and `latex()` give the same for pages and papers.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Working {
    pub(crate) working: worked::Working,
}

#[pymethods]
impl Working {
    /// The answer, in `unit`.
    #[getter]
    fn value(&self) -> f64 {
        self.working.value()
    }
    /// The unit of the answer.
    #[getter]
    fn unit(&self) -> &str {
        self.working.unit()
    }
    /// The answer with its unit, as text.
    #[getter]
    fn answer(&self) -> String {
        print::with_unit(self.working.value(), self.working.unit())
    }
    /// The name of the answer.
    #[getter]
    fn name(&self) -> String {
        self.working.name()
    }
    /// The working as plain text.
    #[pyo3(text_signature = "($self)")]
    fn text(&self) -> String {
        self.working.text()
    }
    /// The working as an HTML table.
    #[pyo3(text_signature = "($self)")]
    fn html(&self) -> String {
        self.working.html()
    }
    /// The working as a LaTeX `aligned` environment.
    #[pyo3(text_signature = "($self)")]
    fn latex(&self) -> String {
        self.working.latex()
    }
    /// How much the answer moves with each input, the most telling first: dictionaries with the
    /// input, its value and unit, `slope` (change of the answer for one unit more) and `elasticity`
    /// (percent for a percent).
    #[getter]
    fn sensitivities<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let mut all = Vec::new();
        for s in self.working.sensitivities() {
            let one = PyDict::new(py);
            one.set_item("input", s.input)?;
            one.set_item("value", s.value)?;
            one.set_item("unit", s.unit)?;
            one.set_item("slope", s.slope)?;
            one.set_item("elasticity", s.elasticity)?;
            all.push(one);
        }
        Ok(all)
    }
    /// The lines, as dictionaries.
    #[getter]
    fn lines<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let mut all = Vec::new();
        for line in self.working.lines() {
            let one = PyDict::new(py);
            one.set_item("name", line.name)?;
            one.set_item("symbol", line.symbol)?;
            one.set_item("meaning", line.meaning)?;
            one.set_item("symbols", line.symbols)?;
            one.set_item("numbers", line.numbers)?;
            one.set_item("value", line.value)?;
            one.set_item("unit", line.unit)?;
            one.set_item("formula", line.formula)?;
            one.set_item("origin", line.origin)?;
            all.push(one);
        }
        Ok(all)
    }
    /// Writes the working as a live workbook (.xlsx): a cell a step, formulas instead of values.
    #[pyo3(signature = (path, /), text_signature = "($self, path, /)")]
    fn to_workbook(&self, path: PathBuf) -> PyResult<()> {
        self.working.to_workbook(&path).map_err(|e| raise(&e))
    }
    fn __str__(&self) -> String {
        self.working.text()
    }
    fn __repr__(&self) -> String {
        format!("{} = {}\n\n{}", self.working.name(), self.answer(), self.working.text())
    }
    fn _repr_html_(&self) -> String {
        let answer = print::with_unit(self.working.value(), self.working.unit());
        format!(
            "<p><b>{} = {}</b></p>{}",
            print::escape(&self.working.name()),
            print::escape(&answer),
            self.working.html()
        )
    }
}
