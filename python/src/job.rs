//! A job of the mill: what it asks, and the answers that hang together.

use hankwise::catalogue;
use hankwise::job::{self, Missing};
use hankwise::quantity::print;
use pyo3::exceptions::{PyKeyError, PyTypeError};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};

use crate::asked;
use crate::particulars::Particulars;

// A job. Its class has no doc comment, which would stand before the `__doc__` of each job.
#[pyclass(frozen, module = "hankwise", dict, weakref)]
pub(crate) struct Job {
    job: &'static job::Job,
}

impl Job {
    pub(crate) fn of(job: &'static job::Job) -> Job {
        Job { job }
    }
}

#[pymethods]
impl Job {
    /// Its name.
    #[getter]
    fn name(&self) -> &'static str {
        self.job.name
    }
    #[getter]
    fn __name__(&self) -> &'static str {
        self.job.name
    }
    #[getter]
    fn __qualname__(&self) -> &'static str {
        self.job.name
    }
    /// The room of the trade.
    #[getter]
    fn room(&self) -> &'static str {
        self.job.room()
    }
    /// More about it.
    #[getter]
    fn details(&self) -> &'static str {
        self.job.details
    }
    /// What can do harm where the answers are acted on.
    #[getter]
    fn cautions(&self) -> Vec<String> {
        hankwise::caution::of(self.job.cautions).map(|caution| caution.line(&[])).collect()
    }
    /// What it answers, in a sentence.
    #[getter]
    fn summary(&self) -> &'static str {
        self.job.summary
    }
    #[getter]
    fn __doc__(&self) -> String {
        format!("{}\n{}\n", self.job.description(), self.job.example)
    }
    #[getter]
    fn __signature__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let inspect = py.import("inspect")?;
        let parameter = inspect.getattr("Parameter")?;
        let place = parameter.getattr("KEYWORD_ONLY")?;
        let mut all = Vec::new();
        for ask in self.job.asks {
            let otherwise = PyDict::new(py);
            match ask.missing {
                Missing::Needed(_) => {}
                Missing::Left => otherwise.set_item("default", py.None())?,
                Missing::Taken(base) => {
                    otherwise.set_item("default", print::of_kind(base, ask.kind))?;
                }
            }
            all.push(parameter.call((ask.name, &place), Some(&otherwise))?);
        }
        inspect.getattr("Signature")?.call1((all,))
    }
    /// What it asks: a dictionary for each figure.
    #[getter]
    fn asks<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let mut all = Vec::new();
        for ask in self.job.asks {
            let row = PyDict::new(py);
            row.set_item("name", ask.name)?;
            row.set_item("symbol", ask.symbol)?;
            row.set_item("meaning", ask.words)?;
            row.set_item("kind", ask.kind.words())?;
            row.set_item("unit", ask.kind.base())?;
            row.set_item("usual", ask.usual)?;
            row.set_item("needed", matches!(ask.missing, Missing::Needed(_)))?;
            let otherwise = match ask.missing {
                Missing::Taken(base) => Some(print::of_kind(base, ask.kind)),
                _ => None,
            };
            row.set_item("otherwise", otherwise)?;
            all.push(row);
        }
        Ok(all)
    }
    #[pyo3(signature = (*args, **given))]
    fn __call__(
        &self,
        py: Python<'_>,
        args: &Bound<'_, PyTuple>,
        given: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<Particulars> {
        let name = self.job.name;
        if !args.is_empty() {
            let first = &self.job.asks[0];
            return Err(PyTypeError::new_err(format!(
                "{name}: what it asks is given by name, such as {}={}",
                first.name,
                match first.missing {
                    Missing::Needed(example) => example,
                    _ => first.kind.example(),
                }
            )));
        }
        let given = asked::read(self.job.blank(), name, given, &[])?;
        Particulars::hand_over(py, self.job.run_on(&given).map_err(|e| e.at(name)))
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, (&'static str,))> {
        Ok((py.import("hankwise._hankwise")?.getattr("_job")?, (self.job.name,)))
    }
    fn __repr__(&self) -> String {
        let names: Vec<&str> = self.job.asks.iter().map(|ask| ask.name).collect();
        format!("<job {}: {}>", self.job.name, names.join(", "))
    }
    fn __str__(&self) -> String {
        self.job.description()
    }
    fn _repr_html_(&self) -> String {
        self.job.html()
    }
}

/// The job with a name, for pickles.
#[pyfunction]
#[pyo3(signature = (name, /))]
pub(crate) fn _job<'py>(py: Python<'py>, name: &str) -> PyResult<Bound<'py, PyAny>> {
    let job = catalogue::job(name).map_err(|e| PyKeyError::new_err(e.to_string()))?;
    py.import(format!("hankwise.{}", job.room()))?.getattr(job.name)
}
