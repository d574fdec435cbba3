//! A job of the mill: what it asks, and the answers that hang together.

use std::fmt::Write as _;

use hankwise::job::{self, Need};
use hankwise::quantity::{Kind, print};
use pyo3::exceptions::{PyKeyError, PyTypeError};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};

use crate::inputs::{Given, locate, one};
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
        let (before, example) = match self.job.details.split_once("\n\n>>> ") {
            Some((before, example)) => (before, format!("\n>>> {example}\n")),
            None => (self.job.details, String::new()),
        };
        let mut out = format!("{}\n\n", self.job.summary);
        if !before.is_empty() {
            let _ = write!(out, "{before}\n\n");
        }
        out.push_str("Asks:\n");
        for ask in self.job.asks {
            let (low, high) = ask.usual;
            let need = match ask.need {
                Need::Must => String::new(),
                Need::May => " (may be left out)".to_owned(),
                Need::Else(text) => format!(" ({text} where it is left out)"),
            };
            let _ = writeln!(
                out,
                "    {}: {}, {}{need} ({}; usually {} to {})",
                ask.name,
                ask.symbol,
                ask.words,
                ask.kind.words(),
                print::of_kind(low, ask.kind),
                print::of_kind(high, ask.kind)
            );
        }
        out.push_str(&example);
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
            match ask.need {
                Need::Must => {}
                Need::May => otherwise.set_item("default", py.None())?,
                Need::Else(text) => otherwise.set_item("default", text)?,
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
            row.set_item("needed", ask.need == Need::Must)?;
            let other = if let Need::Else(text) = ask.need { Some(text) } else { None };
            row.set_item("otherwise", other)?;
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
            let first = self.job.asks[0];
            return Err(PyTypeError::new_err(format!(
                "{name}: what it asks is given by name, such as {}={}",
                first.name,
                example(first.kind)
            )));
        }
        let mut read = Vec::new();
        for (key, value) in given.into_iter().flatten() {
            let key: String = key.extract()?;
            let ask =
                self.job.ask(&key).map_err(|e| PyTypeError::new_err(format!("{name}: {e}")))?;
            if value.is_none() && ask.need != Need::Must {
                continue;
            }
            match one(&value, ask.kind).map_err(|e| locate(py, name, &key, e))? {
                Given::One(amount, typed) => read.push((ask.name, amount, typed)),
                Given::Many(..) => {
                    return Err(PyTypeError::new_err(format!(
                        "{name}, {key}: one figure is wanted; call {name} for each of them"
                    )));
                }
            }
        }
        Particulars::hand_over(py, self.job.run_on(&read).map_err(|e| e.at(name)))
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
                let need = match ask.need {
                    Need::Must => "has to be given",
                    Need::May => "may be left out",
                    Need::Else(text) => text,
                };
                format!(
                    "<tr><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{} to {}</td></tr>",
                    escape(ask.symbol),
                    escape(ask.name),
                    escape(ask.words),
                    escape(need),
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

fn example(kind: Kind) -> String {
    match kind.family() {
        Kind::Ratio => kind.example().to_owned(),
        _ => format!("\"{}\"", kind.example()),
    }
}

/// The job with a name, for pickles.
#[pyfunction]
#[pyo3(signature = (name, /))]
pub(crate) fn _job<'py>(py: Python<'py>, name: &str) -> PyResult<Bound<'py, PyAny>> {
    let found = job::all().find(|job| job.name == name);
    let job = found.ok_or_else(|| PyKeyError::new_err(format!("there is no job '{name}'")))?;
    py.import(format!("hankwise.{}", job.room()))?.getattr(job.name)
}
