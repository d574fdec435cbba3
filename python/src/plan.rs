//! Plans.

use std::collections::BTreeMap;
use std::fmt::Display;
use std::hash::{Hash, Hasher};
use std::path::PathBuf;
use std::sync::Arc;

use hankwise::plan;
use hankwise::quantity::{Kind, unit};
use pyo3::exceptions::PyOverflowError;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::attributes::{attributes, dict};
use crate::errors::{OrRaise, RangeError, raise};
use crate::quantity::Quantity;
use crate::result::{PlanResult, Table, table};
use crate::text::{File, Text, text_of};
use crate::working::Working;

/// A plan for a lot, read from a lot file. It does not change; running it gives a result.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Plan {
    pub(crate) plan: Arc<plan::Plan>,
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
        /// What the lot is filed under: its id, or the name of its file.
        id: &str = self.plan.id();
        /// The day on which it came, such as `2026-05-04`; None where it is not said.
        came: Option<&str> = self.plan.came();
        /// The day on which it is due; None where it is not said.
        due: Option<&str> = self.plan.due();
        /// The lot file.
        file: &str = self.plan.file();
        /// The mill file that the lot names; None where it names none.
        mill: Option<&str> = self.plan.mill().map(|mill| mill.name.as_str());
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
    /// The same plan with some values changed: `{"card.loss": "6 %", "goods.throw.promised": 10}`. A
    /// quantity, a text with its unit, a number or a list goes where the lot file has one.
    #[pyo3(text_signature = "($self, values, /)")]
    fn with_values(&self, values: &Bound<'_, PyDict>) -> PyResult<Plan> {
        let values = written(values)?;
        let values: Vec<(&str, &str)> =
            values.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect();
        Ok(Plan { plan: Arc::new(self.plan.with_values(&values).or_raise()?) })
    }
    /// The plan with one value after another: a row for each with the planned number of each good, the
    /// chance of the whole promise and what is spare. `values` is a dictionary of one name with a list, or
    /// of several with lists of one length.
    #[pyo3(signature = (values, lots=Number(0), seed=Number(1), *, threads=None, progress=None), text_signature = "($self, values, lots=0, seed=1, *, threads=None, progress=None)")]
    fn sweep(
        &self,
        py: Python<'_>,
        values: &Bound<'_, PyDict>,
        lots: Number,
        seed: Number,
        threads: Option<Number>,
        progress: Option<Py<PyAny>>,
    ) -> PyResult<Table> {
        let run = run(lots, seed, threads)?;
        let mut columns: Vec<(String, Vec<Bound<'_, PyAny>>)> = Vec::new();
        for (name, column) in values {
            let column = column.try_iter()?.collect::<PyResult<Vec<_>>>()?;
            columns.push((name.extract::<Text>()?.named("a name")?.to_owned(), column));
        }
        let rows = columns.first().map_or(0, |(_, column)| column.len());
        if let Some((name, column)) = columns.iter().find(|(_, column)| column.len() != rows) {
            return Err(raise(&hankwise::Error::call(format!(
                "{name}: {} values where {} has {rows}; write as many for each",
                column.len(),
                columns[0].0
            ))));
        }
        let mut table_rows = Vec::new();
        for row in 0..rows {
            let one = PyDict::new(py);
            for (name, column) in &columns {
                one.set_item(name, &column[row])?;
            }
            let plan = self.with_values(&one)?.plan;
            let result = long(py, run.lots, progress.as_ref(), |tell| plan.run_with(&run, tell))?;
            put_promise(&one, &result)?;
            table_rows.push(one);
        }
        let names: Vec<String> = columns.iter().map(|(name, _)| name.clone()).collect();
        let mut shown: Vec<&str> = names.iter().map(String::as_str).collect();
        let goods: Vec<String> =
            self.plan.promise().iter().map(|(name, _)| format!("{name} planned")).collect();
        shown.extend(goods.iter().map(String::as_str));
        shown.extend(["spare", "chance"]);
        table(table_rows, py, &shown)
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
                "came_from": &given.from,
            }));
        }
        Ok(all)
    }
    /// Plans of the same texts are equal, whatever files they stand in.
    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other.cast::<Plan>().is_ok_and(|other| texts(&other.get().plan) == texts(&self.plan))
    }
    fn __hash__(&self) -> u64 {
        let mut hasher = std::hash::DefaultHasher::new();
        texts(&self.plan).hash(&mut hasher);
        hasher.finish()
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Texts)> {
        let make = py.import("hankwise._hankwise")?.getattr("_plan")?;
        let mill = self.plan.mill().map(|mill| (mill.text.clone(), mill.name.clone()));
        let (text, file) = (self.plan.text().to_owned(), self.plan.file().to_owned());
        Ok((make, (text, file, mill, self.plan.values().to_owned())))
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

/// What a plan is pickled as: the lot with its name, the mill with its name, what was put over both.
type Texts = (String, String, Option<(String, String)>, String);

/// The texts that tell plans apart.
fn texts(plan: &plan::Plan) -> (&str, Option<&str>, &str) {
    (plan.text(), plan.mill().map(|mill| mill.text.as_str()), plan.values())
}

/// Values as they would be written in a file.
fn written(values: &Bound<'_, PyDict>) -> PyResult<Vec<(String, String)>> {
    let one = |(name, value): (Bound<'_, PyAny>, Bound<'_, PyAny>)| {
        Ok((name.extract::<Text>()?.named("a name")?.to_owned(), as_written(&value)?))
    };
    values.iter().map(one).collect()
}

/// A value as it would be written in a file.
fn as_written(value: &Bound<'_, PyAny>) -> PyResult<String> {
    match value.extract::<bool>() {
        Ok(yes) => Ok(yes.to_string()),
        Err(_) => Ok(text_of(value.str()?.as_any(), "a value")?.to_string()),
    }
}

/// A whole number of any size.
pub(crate) struct Number(i128);

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

/// A plan made in code: a dictionary of what one would write in a lot file, such as
/// `{"lot": {"greasy": "9 kg", "clean": "58 %"}, "yarn": {"two-fold": {"ends": 2}}, "goods": {"hank": "rest"}}`, and
/// the mill file, where there is one.
#[pyfunction]
#[pyo3(signature = (values, /, mill=None))]
pub(crate) fn make(values: &Bound<'_, PyDict>, mill: Option<File>) -> PyResult<Plan> {
    let mut all = Vec::new();
    flatten("", values, &mut all)?;
    let values: Vec<(&str, &str)> =
        all.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect();
    let mill = mill.map(|path| {
        let path = path.named("mill")?;
        let text = hankwise::files::read_text(&path).or_raise()?;
        PyResult::Ok(plan::Source { name: path.display().to_string(), text })
    });
    let plan = plan::Plan::from_values(&values, mill.transpose()?).or_raise()?;
    Ok(Plan { plan: Arc::new(plan) })
}

/// The values of dictionaries within dictionaries, with dots between their names.
fn flatten(
    path: &str,
    values: &Bound<'_, PyDict>,
    all: &mut Vec<(String, String)>,
) -> PyResult<()> {
    for (name, value) in values {
        let name: Text = name.extract()?;
        let name = name.named("a name")?.to_owned();
        let name = if path.is_empty() { name } else { format!("{path}.{name}") };
        if let Ok(inner) = value.cast::<PyDict>() {
            flatten(&name, inner, all)?;
        } else {
            all.push((name, as_written(&value)?));
        }
    }
    Ok(())
}

/// Puts into a row what came of a plan: the planned number of each good, what is spare, the chance. Gives
/// the names of the goods' columns.
fn put_promise(row: &Bound<'_, PyDict>, result: &plan::PlanResult) -> PyResult<Vec<String>> {
    let mut names = Vec::new();
    for good in &result.goods {
        let name = format!("{} planned", good.name);
        row.set_item(&name, good.planned)?;
        names.push(name);
    }
    row.set_item("spare", result.spare.planned)?;
    row.set_item("chance", result.spare.chance)?;
    Ok(names)
}

/// Several lots in one call: a row for each with the planned number of each good, the chance of the whole
/// promise, what is spare, and the greasy mass that makes the promise safe. `plans` are plans or lot files.
#[pyfunction]
#[pyo3(signature = (plans, /, lots=Number(100_000), seed=Number(1), *, threads=None, progress=None), text_signature = "(plans, /, lots=100000, seed=1, *, threads=None, progress=None)")]
pub(crate) fn run_all(
    py: Python<'_>,
    plans: &Bound<'_, PyAny>,
    lots: Number,
    seed: Number,
    threads: Option<Number>,
    progress: Option<Py<PyAny>>,
) -> PyResult<Table> {
    let run = run(lots, seed, threads)?;
    let mut rows = Vec::new();
    let mut goods: Vec<String> = Vec::new();
    for one in plans.try_iter()? {
        let one = one?;
        let plan = match one.cast::<Plan>() {
            Ok(plan) => plan.get().plan.clone(),
            Err(_) => load(one.extract()?)?.plan,
        };
        let result = long(py, run.lots, progress.as_ref(), |tell| plan.run_with(&run, tell))?;
        let row = PyDict::new(py);
        row.set_item("lot", &result.name)?;
        for name in put_promise(&row, &result)? {
            if !goods.contains(&name) {
                goods.push(name);
            }
        }
        row.set_item("safe_greasy_mass", result.spare.safe_greasy_mass)?;
        rows.push(row);
    }
    let mut shown = vec!["lot"];
    shown.extend(goods.iter().map(String::as_str));
    shown.extend(["spare", "chance", "safe_greasy_mass"]);
    for row in &rows {
        for name in &goods {
            if !row.contains(name)? {
                row.set_item(name, py.None())?;
            }
        }
    }
    table(rows, py, &shown)
}

/// A plan as it was pickled.
#[pyfunction]
#[pyo3(signature = (text, name, mill, values, /))]
pub(crate) fn _plan(
    text: String,
    name: String,
    mill: Option<(String, String)>,
    values: &str,
) -> PyResult<Plan> {
    let source = |(text, name)| plan::Source { name, text };
    let plan = plan::Plan::from_sources(source((text, name)), mill.map(source), values);
    Ok(Plan { plan: Arc::new(plan.or_raise()?) })
}

/// The plan of the text of a lot file; messages call it by the name. A mill file that it names is looked
/// for beside it.
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

/// Writes the tables to hang by the machines of a mill, beside its file or into a folder: a page for each
/// machine with its wheels or reeds and what they give, check weights and hopper weighs of the mill's usual
/// yarns at three regains. Gives the file. `force=True` replaces a file of another kind too.
#[pyfunction]
#[pyo3(signature = (path, /, folder = None, *, force = false), text_signature = "(path, /, folder=None, *, force=False)")]
pub(crate) fn mill_tables(path: File, folder: Option<File>, force: bool) -> PyResult<PathBuf> {
    let path = path.named("path")?;
    let folder = folder.map(|folder| folder.named("folder")).transpose()?;
    plan::write_mill_tables(&path, folder.as_deref(), force).or_raise()
}

/// Where a paper of a file goes.
#[pyfunction]
#[pyo3(signature = (file, paper, folder, /))]
pub(crate) fn _paper_path(file: File, paper: Text, folder: Option<File>) -> PyResult<PathBuf> {
    let folder = folder.map(|folder| folder.named("folder")).transpose()?;
    Ok(plan::paper_path(&file.named("file")?, paper.named("paper")?, folder.as_deref()))
}
