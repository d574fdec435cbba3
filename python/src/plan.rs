//! Plans.

use std::collections::BTreeMap;
use std::fmt::Display;
use std::hash::{Hash, Hasher};
use std::sync::Arc;

use hankwise::plan;
use hankwise::quantity::{Kind, unit};
use pyo3::exceptions::PyOverflowError;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::attributes::{attributes, dict};
use crate::errors::{OrRaise, RangeError};
use crate::quantity::Quantity;
use crate::result::PlanResult;
use crate::text::{File, Text};
use crate::working::Working;

/// A plan for a lot, read from a lot file. It does not change; running it gives a result.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Plan {
    plan: Arc<plan::Plan>,
}

/// The greasy mass to take in for some goods.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Needed {
    needed: plan::Needed,
}

/// How many threads are put to work.
pub(crate) fn cores() -> usize {
    std::thread::available_parallelism().map_or(1, std::num::NonZero::get)
}

/// Runs something long without the interpreter's lock; Ctrl-C stops it. `progress` is called with how
/// many of how many are done.
fn long<T: Send>(
    py: Python<'_>,
    total: usize,
    progress: Option<&Py<PyAny>>,
    work: impl FnOnce(&mut dyn FnMut(usize) -> bool) -> hankwise::Result<T> + Send,
) -> PyResult<T> {
    let mut raised: Option<PyErr> = None;
    let mut last = 0;
    let tell = |py: Python<'_>, done: usize| match &progress {
        Some(tell) => tell.bind(py).call1((done, total)).map(|_| ()),
        None => Ok(()),
    };
    let result = py.detach(|| {
        work(&mut |done: usize| {
            last = done;
            let told = Python::attach(|py| py.check_signals().and_then(|()| tell(py, done)));
            raised = told.err();
            raised.is_none()
        })
    });
    if let Some(error) = raised {
        return Err(error);
    }
    let result = result.or_raise()?;
    // Another thread may have simulated the last lots.
    if last < total {
        tell(py, total)?;
    }
    Ok(result)
}

attributes! {
    Plan, self, py {
        /// Name of the lot.
        name: &str = self.plan.name();
        /// What the lot file says of the lot.
        description: &str = self.plan.description();
        /// The lot file.
        file: &str = self.plan.file();
        /// The goods and how many of each were promised.
        promise: BTreeMap<String, Option<u32>> =
            self.plan.promise().into_iter().map(|(name, want)| (name.to_owned(), want)).collect();
        /// Values that look wrong.
        warnings: Vec<String> = self.plan.warnings().to_vec();
    }

    /// Runs the plan: carries the planned values through, and simulates a number of `lots` that vary the
    /// uncertain values. The same seed gives the same result, on any number of threads.
    #[pyo3(signature = (lots=Number(100_000), seed=Number(1), *, threads=None, progress=None), text_signature = "($self, lots=100000, seed=1, *, threads=None, progress=None)")]
    fn run(
        &self,
        py: Python<'_>,
        lots: Number,
        seed: Number,
        threads: Option<Number>,
        progress: Option<Py<PyAny>>,
    ) -> PyResult<PlanResult> {
        let run = run(lots, seed, threads)?;
        let plan = self.plan.clone();
        let result = long(py, run.lots, progress.as_ref(), |tell| plan.run_with(&run, tell))?;
        Ok(PlanResult { result, plan: self.plan.clone(), asked: (run.lots, run.seed) })
    }
    /// The greasy mass to take in for a number of each good, all of them together with a confidence.
    /// Goods that are not named are not made; without `goods` the promise of the lot is meant.
    #[pyo3(signature = (goods=None, confidence=0.95, lots=Number(100_000), seed=Number(1), *, threads=None, progress=None), text_signature = "($self, goods=None, confidence=0.95, lots=100000, seed=1, *, threads=None, progress=None)")]
    fn needed(
        &self,
        py: Python<'_>,
        goods: Option<BTreeMap<Text, Number>>,
        confidence: f64,
        lots: Number,
        seed: Number,
        threads: Option<Number>,
        progress: Option<Py<PyAny>>,
    ) -> PyResult<Needed> {
        let run = run(lots, seed, threads)?;
        let goods = goods
            .unwrap_or_default()
            .into_iter()
            .map(|(name, count)| {
                let name = name.named("goods")?;
                Ok((name.to_owned(), whole(name, count, u32::MAX)?))
            })
            .collect::<PyResult<Vec<(String, u32)>>>()?;
        let plan = self.plan.clone();
        let needed = long(py, run.lots, progress.as_ref(), |tell| {
            plan.needed_with(&goods, confidence, &run, tell)
        })?;
        Ok(Needed { needed })
    }
    /// The values that the plan rests on, as dictionaries.
    #[getter]
    fn given<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let mut all = Vec::new();
        for given in self.plan.given() {
            all.push(dict!(py, {
                "name": &given.key,
                "meaning": given.meaning,
                "kind": given.kind.words(),
                "typed": &given.typed,
                "value": given.base(),
                "unit": given.kind.base(),
                "uncertain": given.spread.is_open(),
                "varies": given.layer.words(),
                "origin": &given.origin,
            }));
        }
        Ok(all)
    }
    /// Plans of the same text are equal, whatever file it stands in.
    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other.cast::<Plan>().is_ok_and(|other| other.get().plan.text() == self.plan.text())
    }
    fn __hash__(&self) -> u64 {
        let mut hasher = std::hash::DefaultHasher::new();
        self.plan.text().hash(&mut hasher);
        hasher.finish()
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, (String, String))> {
        let make = py.import("hankwise._hankwise")?.getattr("loads")?;
        Ok((make, (self.plan.text().to_owned(), self.plan.file().to_owned())))
    }
    fn __repr__(&self) -> String {
        let promise: Vec<String> = self
            .plan
            .promise()
            .into_iter()
            .map(|(name, want)| {
                want.map_or(format!("{name}: the rest"), |n| format!("{name}: {n}"))
            })
            .collect();
        format!("<plan {}, promised {}>", self.plan.name(), promise.join(", "))
    }
}

/// A whole number of any size.
struct Number(i128);

impl<'a, 'py> FromPyObject<'a, 'py> for Number {
    type Error = PyErr;
    fn extract(value: Borrowed<'a, 'py, PyAny>) -> PyResult<Number> {
        match value.extract::<i128>() {
            Err(error) if error.is_instance_of::<PyOverflowError>(value.py()) => {
                Ok(Number(if value.lt(0)? { i128::MIN } else { i128::MAX }))
            }
            other => other.map(Number),
        }
    }
}

/// How a plan is run, or what is wrong with what was asked.
fn run(lots: Number, seed: Number, threads: Option<Number>) -> PyResult<plan::Run> {
    Ok(plan::Run {
        lots: whole("lots", lots, plan::MOST_LOTS)?,
        seed: whole("seed", seed, u64::MAX)?,
        threads: checked(threads)?,
    })
}

/// A number of something, or what is wrong with it.
fn whole<T: TryFrom<i128> + PartialOrd + Display>(
    name: &str,
    Number(number): Number,
    most: T,
) -> PyResult<T> {
    match T::try_from(number) {
        Ok(n) if n <= most => Ok(n),
        _ if number < 0 => {
            Err(RangeError::new_err(format!("{name}={number} is not possible; write 0 or more")))
        }
        _ => Err(RangeError::new_err(format!(
            "{name}={number} is too large; at most {most} is possible"
        ))),
    }
}

fn checked(threads: Option<Number>) -> PyResult<usize> {
    match threads {
        Some(Number(n)) if n < 1 => Err(RangeError::new_err(format!(
            "threads={n} is not possible; write 1 or more, or nothing"
        ))),
        Some(n) => whole("threads", n, 1024),
        None => Ok(cores()),
    }
}

attributes! {
    Needed, self, py {
        /// The goods asked for.
        goods: BTreeMap<String, u32> = self.needed.goods.iter().cloned().collect();
        /// The confidence asked for.
        confidence: f64 = self.needed.confidence;
        /// The working of the planned mass.
        working: Working = Working { working: self.needed.working.clone() };
        /// What is unusual in the simulated lots.
        warnings: Vec<String> = self.needed.warnings.clone();
    }

    /// The greasy mass that suffices with the confidence asked for.
    #[getter]
    fn greasy_mass(&self, py: Python<'_>) -> PyResult<Quantity> {
        let kg = unit("kg", Some(Kind::Mass)).or_raise()?;
        Ok(Quantity::scalar(py, self.needed.greasy_mass, kg, Kind::Mass))
    }
    /// The greasy mass with the planned values.
    #[getter]
    fn planned(&self, py: Python<'_>) -> PyResult<Quantity> {
        let kg = unit("kg", Some(Kind::Mass)).or_raise()?;
        Ok(Quantity::scalar(py, self.needed.planned, kg, Kind::Mass))
    }
    /// The greasy mass to take in as JSON text.
    #[pyo3(text_signature = "($self)")]
    fn to_json(&self) -> String {
        format!("{:#}", self.needed.to_json())
    }
    fn __str__(&self) -> String {
        self.needed.to_string()
    }
    fn __repr__(&self) -> String {
        format!("<needed: {}>", self.__str__())
    }
}

/// The plan of a lot file.
#[pyfunction]
#[pyo3(signature = (path, /))]
pub(crate) fn load(path: File) -> PyResult<Plan> {
    let path = path.named("path")?;
    let plan = plan::Plan::load(&path).or_raise()?;
    Ok(Plan { plan: Arc::new(plan) })
}

/// The plan of the text of a lot file; messages call it by the name.
#[pyfunction]
#[pyo3(
    signature = (text, name=Text::Meant("lot.toml"), /),
    text_signature = "(text, name='lot.toml', /)"
)]
pub(crate) fn loads(text: Text, name: Text) -> PyResult<Plan> {
    let text = text.named("text")?;
    let name = name.named("name")?;
    let plan = plan::Plan::parse(text, name).or_raise()?;
    Ok(Plan { plan: Arc::new(plan) })
}
