//! The working of an answer.

use hankwise::quantity::print;
use hankwise::worked;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::attributes::{attributes, dict};
use crate::errors::OrRaise;
use crate::files::output;
use crate::text::File;

/// The working of one answer: every step in symbols and figures, from what was given.
///
/// Shows itself as text; `html()` and `latex()` give the same for pages and papers.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Working {
    pub(crate) working: worked::Working,
}

attributes! {
    Working, self, py {
        /// The answer, in `unit`.
        value: f64 = self.working.value();
        /// The unit of the answer.
        unit: &str = self.working.unit();
        /// The answer with its unit, as text.
        answer: String = print::with_unit(self.working.value(), self.working.unit());
        /// The name of the answer.
        name: String = self.working.name();
    }

    /// The working as plain text.
    fn text(&self) -> String {
        self.working.text()
    }
    /// The working as an HTML table.
    fn html(&self) -> String {
        self.working.html()
    }
    /// The working as a LaTeX `aligned` environment.
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
            all.push(dict!(py, {
                "input": s.input,
                "value": s.value,
                "unit": s.unit,
                "slope": s.slope,
                "elasticity": s.elasticity,
            }));
        }
        Ok(all)
    }
    /// What a step that can happen does to the answer of a formula or of a calculation, which is run again
    /// for it, the greatest change first: a percentage point of a share, one more of what is counted, one of
    /// the last digit that was read. Dictionaries with the input, what it `was` and `is`, the answers before
    /// and after (`answer_was`, `answer_is`, in `unit`) and the same in `words`. Empty for a plan.
    #[getter]
    fn changes<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let mut all = Vec::new();
        for change in self.working.changes() {
            all.push(dict!(py, {
                "input": change.input.as_str(),
                "was": change.was.as_str(),
                "is": change.is.as_str(),
                "answer_was": change.answer_was,
                "answer_is": change.answer_is,
                "unit": change.unit,
                "words": change.words(),
            }));
        }
        Ok(all)
    }
    /// What can do harm where the answer is acted on.
    #[getter]
    fn cautions(&self) -> Vec<String> {
        self.working.cautions().iter().map(|caution| caution.line(&[])).collect()
    }
    /// The lines, as dictionaries.
    #[getter]
    fn lines<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let mut all = Vec::new();
        for line in self.working.lines() {
            all.push(dict!(py, {
                "name": line.name,
                "symbol": line.symbol,
                "meaning": line.meaning,
                "symbols": line.symbols,
                "numbers": line.numbers,
                "value": line.value,
                "printed": line.printed,
                "unit": line.unit,
                "formula": line.formula,
                "origin": line.origin,
            }));
        }
        Ok(all)
    }
    /// Writes the working as a live workbook (.xlsx): a cell a step, formulas instead of values.
    /// `force=True` replaces a file of another kind too.
    #[pyo3(signature = (path, /, *, force = false), text_signature = "($self, path, /, *, force=False)")]
    fn to_workbook(&self, path: File, force: bool) -> PyResult<()> {
        let path = path.named("path")?;
        self.working.to_workbook(output(path, force)).or_raise()
    }
    fn __str__(&self) -> String {
        self.working.text()
    }
    fn __repr__(&self) -> String {
        let answer = print::with_unit(self.working.value(), self.working.unit());
        let names: Vec<&str> = self.working.cautions().iter().map(|caution| caution.name).collect();
        format!(
            "{} = {answer}\n\n{}{}",
            self.working.name(),
            self.working.text(),
            hankwise::caution::described(&names)
        )
    }
    fn _repr_html_(&self) -> String {
        let answer = print::with_unit(self.working.value(), self.working.unit());
        format!(
            "<p><b>{} = {}</b></p>{}{}",
            print::escape(&self.working.name()),
            print::escape(&answer),
            self.working.html(),
            hankwise::caution::boxed(&self.cautions())
        )
    }
}
