//! A job of the mill: what it asks, and the answers that hang together.

use std::fmt::Write as _;

use hankwise::caution;
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
    /// What it says, what it asks, an example.
    fn help(&self) -> String {
        let job = self.job;
        let mut out = format!("{}\n\n", job.summary);
        if !job.details.is_empty() {
            let _ = write!(out, "{}\n\n", job.details);
        }
        out.push_str("Asks:\n");
        for ask in job.asks {
            let (low, high) = ask.usual;
            let _ = writeln!(
                out,
                "    {}: {}, {}{} ({}; usually {} to {}, {})",
                ask.name,
                ask.symbol,
                ask.words,
                match ask.missing {
                    Missing::Needed(_) => String::new(),
                    Missing::Left => "; may be left out".to_owned(),
                    Missing::Taken(base) => {
                        format!("; {} where it is left out", print::of_kind(base, ask.kind))
                    }
                },
                ask.kind.words(),
                print::of_kind(low, ask.kind),
                print::of_kind(high, ask.kind),
                ask.source
            );
        }
        let mut head = Some(caution::HEAD);
        for caution in caution::of(job.cautions) {
            if let Some(head) = head.take() {
                let _ = writeln!(out, "\nCautions: {head}");
            }
            let _ = writeln!(out, "    ! {}", caution.line(&[]));
        }
        let _ = write!(out, "\n{}\n", job.example);
        out
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
    /// What it answers, in a sentence.
    #[getter]
    fn summary(&self) -> &'static str {
        self.job.summary
    }
    #[getter]
    fn __doc__(&self) -> String {
        self.help()
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
        self.help()
    }
    fn _repr_html_(&self) -> String {
        use print::escape;
        let rows: Vec<String> = self
            .job
            .asks
            .iter()
            .map(|ask| {
                let (low, high) = ask.usual;
                let need = match ask.missing {
                    Missing::Needed(_) => "has to be given".to_owned(),
                    Missing::Left => "may be left out".to_owned(),
                    Missing::Taken(base) => print::of_kind(base, ask.kind),
                };
                format!(
                    "<tr><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{} to {}</td></tr>",
                    escape(ask.symbol),
                    escape(ask.name),
                    escape(ask.words),
                    escape(&need),
                    escape(&print::of_kind(low, ask.kind)),
                    escape(&print::of_kind(high, ask.kind))
                )
            })
            .collect();
        format!(
            "<div><p><b>{}</b>: {}</p><table><thead><tr><th>symbol</th><th>name</th><th>what it is</th>\
             <th>otherwise</th><th>usual</th></tr></thead><tbody>{}</tbody></table></div>",
            escape(self.job.name),
            escape(self.job.summary),
            rows.concat()
        )
    }
}

/// The job with a name, for pickles.
#[pyfunction]
#[pyo3(signature = (name, /))]
pub(crate) fn _job<'py>(py: Python<'py>, name: &str) -> PyResult<Bound<'py, PyAny>> {
    let job = job::find(name).map_err(|e| PyKeyError::new_err(e.to_string()))?;
    py.import(format!("hankwise.{}", job.room()))?.getattr(job.name)
}
