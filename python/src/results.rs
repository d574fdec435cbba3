//! The results of a calculation: of one case or of many.

use hankwise::calculation::{self, Answer, CaseWarning, Cases, Output, Solved, Value};
use pyo3::exceptions::{PyIndexError, PyKeyError, PyTypeError};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyIterator, PyList};

use crate::call::warn;
use crate::columns::{in_kind, place};
use crate::errors::{OrRaise, raise};
use crate::files::output;
use crate::inputs::base_unit;
use crate::quantity::Quantity;
use crate::text::{File, Text};
use crate::working::Working;

/// A function and its arguments, as a pickle holds them.
type Call<'py> = (Bound<'py, PyAny>, (&'static str, Bound<'py, PyDict>));

/// How columns came, and so go: their shape, and the Series whose labels they bear.
pub(crate) struct Container {
    pub(crate) shape: Vec<usize>,
    pub(crate) like: Option<Py<PyAny>>,
}

impl Container {
    /// A column in the shape and container in which columns came.
    pub(crate) fn shaped<'py>(
        &self,
        py: Python<'py>,
        column: Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let column = column.call_method1("reshape", (self.shape.clone(),))?;
        match &self.like {
            Some(like) => in_kind(column, like.bind(py)),
            None => Ok(column),
        }
    }
    /// What is unusual, each with the place and the label of the first case that it is said of.
    fn warnings(&self, py: Python<'_>, cases: &Cases) -> Vec<String> {
        let like = self.like.as_ref().map(|like| like.bind(py));
        let words = |warning: &CaseWarning| warning.words(&place(warning.first, &self.shape, like));
        cases.warnings.iter().map(words).collect()
    }
}

enum Inner {
    One(Box<Solved>),
    Many { cases: Cases, given: calculation::Given, container: Container },
}

/// The results of a calculation, each a quantity with its working.
///
/// Shows itself as a table. `results["name"]` is a result, `working("name")` how it was calculated,
/// `to_workbook(path)` the whole as a live workbook. Where an input was a column, so is each result.
#[pyclass(frozen, mapping, module = "hankwise", weakref)]
pub(crate) struct Results {
    card: &'static calculation::Calculation,
    inner: Inner,
}

/// A name with what it means, its kind and its values.
struct Shown<'a> {
    name: &'a str,
    answer: &'static Answer,
    list: &'static str,
}

impl Results {
    /// Runs a calculation, and says what is unusual in it.
    pub(crate) fn solve(
        py: Python<'_>,
        card: &'static calculation::Calculation,
        given: calculation::Given,
        container: Option<Container>,
    ) -> PyResult<Results> {
        let fail = |e: hankwise::Error| raise(&e.at(card.name));
        let inner = match container {
            None => {
                let solved = card.solve(given).map_err(fail)?;
                warn(py, solved.warnings().to_vec())?;
                Inner::One(Box::new(solved))
            }
            Some(container) => {
                let mut interrupted = None;
                let cases = py.detach(|| {
                    card.cases(&given, &mut |_| {
                        interrupted = Python::attach(|py| py.check_signals().err());
                        interrupted.is_none()
                    })
                });
                if let Some(e) = interrupted {
                    return Err(e);
                }
                let cases = cases.map_err(fail)?;
                warn(py, container.warnings(py, &cases))?;
                Inner::Many { cases, given, container }
            }
        };
        Ok(Results { card, inner })
    }
    fn all(&self) -> Vec<Shown<'_>> {
        match &self.inner {
            Inner::One(solved) => {
                let all = solved.results().iter();
                all.map(|found| Shown { name: &found.name, answer: found.answer, list: found.list })
                    .collect()
            }
            Inner::Many { cases, .. } => {
                let all = cases.columns.iter();
                all.map(|column| Shown {
                    name: &column.name,
                    answer: column.answer,
                    list: column.list,
                })
                .collect()
            }
        }
    }
    fn quantity(&self, py: Python<'_>, place: usize) -> PyResult<Quantity> {
        match &self.inner {
            Inner::One(solved) => {
                let found = &solved.results()[place];
                let (kind, unit) = (found.answer.kind, base_unit(found.answer.kind));
                Ok(Quantity::scalar(py, unit.from_base(found.value), unit, kind))
            }
            Inner::Many { cases, container, .. } => {
                let column = &cases.columns[place];
                let (kind, unit) = (column.answer.kind, base_unit(column.answer.kind));
                let values = numpy::PyArray1::from_slice(py, &column.values).into_any();
                let number = container.shaped(py, values)?.unbind();
                Ok(Quantity { number, unit, kind, text: None })
            }
        }
    }
    fn place(&self, name: &str) -> PyResult<usize> {
        let found = self.all().iter().position(|shown| shown.name == name);
        found.ok_or_else(|| match &self.inner {
            Inner::One(solved) => {
                let why = solved.find(name).map(|_| String::new());
                PyKeyError::new_err(why.unwrap_or_else(|e| e.to_string()))
            }
            Inner::Many { .. } => {
                let names: Vec<&str> = self.all().iter().map(|shown| shown.name).collect();
                PyKeyError::new_err(hankwise::Error::no_such(name, &names).to_string())
            }
        })
    }
    /// What was given, and how columns among it came.
    fn asked(&self) -> (&calculation::Given, Option<&Container>) {
        match &self.inner {
            Inner::One(solved) => (solved.given(), None),
            Inner::Many { given, container, .. } => (given, Some(container)),
        }
    }
    /// The case of many at a place, on its own.
    fn case_at(&self, at: Option<usize>) -> PyResult<Solved> {
        match (&self.inner, at) {
            (Inner::One(solved), None) => Ok((**solved).clone()),
            (Inner::One(_), Some(_)) => {
                Err(PyTypeError::new_err("there is only one case; omit at"))
            }
            (Inner::Many { cases, .. }, None) => {
                let number = cases.columns.first().map_or(0, |column| column.values.len());
                Err(PyTypeError::new_err(format!(
                    "there are {number} cases; say which by its place, such as at=0"
                )))
            }
            (Inner::Many { given, .. }, Some(at)) => {
                let mut one = self.card.blank();
                for (name, value) in given.values() {
                    let value = match value {
                        Value::Column(column, unit) => {
                            let base = column.get(at).ok_or_else(|| {
                                PyIndexError::new_err(format!(
                                    "no case {at}; there are {}, counted from 0",
                                    column.len()
                                ))
                            })?;
                            let number = unit.from_base(*base);
                            Value::One(hankwise::quantity::Amount { number, unit }, None)
                        }
                        other => other.clone(),
                    };
                    one.set(name, value).or_raise()?;
                }
                self.card.solve(one).or_raise_at(self.card.name)
            }
        }
    }
    /// The rows of results with a name, as dictionaries; none where no such rows are.
    fn rows<'py>(&self, py: Python<'py>, name: &str) -> PyResult<Option<Bound<'py, PyList>>> {
        let Some(Output::Rows { label, .. }) = list(self.card.outputs, name) else {
            return Ok(None);
        };
        let rows = PyList::empty(py);
        let mut last: Option<(String, Bound<'py, PyDict>)> = None;
        for (place, shown) in self.all().iter().enumerate() {
            if shown.list != name {
                continue;
            }
            let Some((before, field)) = shown.name.rsplit_once('.') else { continue };
            if last.as_ref().is_none_or(|(other, _)| other != before) {
                let row = PyDict::new(py);
                if let Some(label) = label {
                    row.set_item(label, before)?;
                }
                rows.append(&row)?;
                last = Some((before.to_owned(), row));
            }
            if let Some((_, row)) = &last {
                row.set_item(field, self.quantity(py, place)?)?;
            }
        }
        Ok(Some(rows))
    }
}

/// The list of results with a name, where there is one.
fn list(outputs: &'static [Output], name: &str) -> Option<&'static Output> {
    outputs.iter().find_map(|output| match output {
        Output::Rows { name: other, .. } if *other == name => Some(output),
        Output::Part { outputs, .. } => list(outputs, name),
        _ => None,
    })
}

#[pymethods]
impl Results {
    fn __getitem__<'py>(
        &self,
        py: Python<'py>,
        name: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let Ok(name) = name.extract::<String>() else {
            return Err(PyKeyError::new_err(format!(
                "a result is asked for by its name, such as '{}', not {}",
                self.all().first().map_or("", |first| first.name),
                crate::columns::shown(name)
            )));
        };
        if let Some(rows) = self.rows(py, &name)? {
            return Ok(rows.into_any());
        }
        let place = self.place(&name)?;
        Ok(Bound::new(py, self.quantity(py, place)?)?.into_any())
    }
    fn __len__(&self) -> usize {
        self.all().len()
    }
    fn __contains__(&self, name: &Bound<'_, PyAny>) -> bool {
        name.extract::<String>().is_ok_and(|name| self.place(&name).is_ok())
    }
    fn __iter__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyIterator>> {
        self.keys().into_pyobject(py)?.try_iter()
    }
    /// The names of the results.
    fn keys(&self) -> Vec<String> {
        self.all().iter().map(|shown| shown.name.to_owned()).collect()
    }
    /// What the results are, in words, by name.
    #[getter]
    fn meanings(&self) -> std::collections::BTreeMap<String, &'static str> {
        self.all().iter().map(|shown| (shown.name.to_owned(), shown.answer.meaning)).collect()
    }
    /// What was given, by name.
    #[getter]
    fn given<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let (given, container) = self.asked();
        crate::given::arguments(py, given, container)
    }
    /// A picture of the results, of a calculation that has one. Needs matplotlib; gives its Figure.
    fn plot<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        let name = slf.get().card.name;
        slf.py().import("hankwise._plot")?.call_method1("results_figure", (name, slf))
    }
    /// What is unusual.
    #[getter]
    fn warnings(&self, py: Python<'_>) -> Vec<String> {
        match &self.inner {
            Inner::One(solved) => solved.warnings().to_vec(),
            Inner::Many { cases, container, .. } => container.warnings(py, cases),
        }
    }
    /// What can do harm where the results are acted on.
    #[getter]
    fn cautions(&self) -> Vec<String> {
        match &self.inner {
            Inner::One(solved) => solved.cautions(),
            Inner::Many { cases, .. } => cases.cautions(),
        }
        .iter()
        .map(|caution| caution.line(&[]))
        .collect()
    }
    /// How a result was calculated; `at` says of which case where there are many.
    #[pyo3(signature = (name, /, *, at = None))]
    fn working(&self, name: Text, at: Option<usize>) -> PyResult<Working> {
        let name = name.named("name")?;
        let working = match &self.inner {
            Inner::One(solved) if at.is_none() => solved.working(name),
            _ => self.case_at(at)?.working(name),
        };
        Ok(Working { working: working.or_raise()? })
    }
    /// One case of many, on its own.
    #[pyo3(signature = (at, /))]
    fn case(&self, at: usize) -> PyResult<Results> {
        let inner = Inner::One(Box::new(self.case_at(Some(at))?));
        Ok(Results { card: self.card, inner })
    }
    /// Writes all results as a live workbook (.xlsx): a cell a step, formulas instead of values; `at` says
    /// of which case where there are many. `force=True` replaces a file of another kind too.
    #[pyo3(signature = (path, /, *, at = None, force = false), text_signature = "($self, path, /, *, at=None, force=False)")]
    fn to_workbook(&self, path: File, at: Option<usize>, force: bool) -> PyResult<()> {
        let path = path.named("path")?;
        self.case_at(at)?.to_workbook(output(path, force)).or_raise()
    }
    /// The results as a pandas table: of one case a row for each result, of many a column for each.
    fn to_frame<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let pandas = py.import("pandas")?;
        let table = PyDict::new(py);
        match &self.inner {
            Inner::One(solved) => {
                let all = solved.results();
                let values = all.iter().map(|f| base_unit(f.answer.kind).from_base(f.value));
                let units = all.iter().map(|f| f.answer.kind.base());
                table.set_item("value", values.collect::<Vec<_>>())?;
                table.set_item("unit", units.collect::<Vec<_>>())?;
                let meanings: Vec<&str> = all.iter().map(|f| f.answer.meaning).collect();
                table.set_item("meaning", meanings)?;
                let kwargs = PyDict::new(py);
                kwargs.set_item("index", self.keys())?;
                pandas.getattr("DataFrame")?.call((table,), Some(&kwargs))
            }
            Inner::Many { cases, container, .. } => {
                let index = match &container.like {
                    Some(like) => like.bind(py).getattr("index").ok(),
                    None => None,
                };
                let units = PyDict::new(py);
                for column in &cases.columns {
                    table
                        .set_item(&column.name, numpy::PyArray1::from_slice(py, &column.values))?;
                    units.set_item(&column.name, column.answer.kind.base())?;
                }
                let kwargs = PyDict::new(py);
                kwargs.set_item("index", index)?;
                let frame = pandas.getattr("DataFrame")?.call((table,), Some(&kwargs))?;
                frame.getattr("attrs")?.set_item("units", units)?;
                Ok(frame)
            }
        }
    }
    /// The results as JSON: for each its value in the base unit, the unit and what it is.
    fn to_json(&self, py: Python<'_>) -> String {
        let mut all = serde_json::Map::new();
        for (place, shown) in self.all().iter().enumerate() {
            let value = match &self.inner {
                Inner::One(solved) => serde_json::json!(solved.results()[place].value),
                // What a case has not (NaN) is null.
                Inner::Many { cases, .. } => serde_json::json!(cases.columns[place].values),
            };
            all.insert(
                shown.name.to_owned(),
                serde_json::json!({
                    "value": value,
                    "unit": shown.answer.kind.base(),
                    "meaning": shown.answer.meaning,
                }),
            );
        }
        let mut whole = serde_json::json!({ "calculation": self.card.name, "results": all });
        whole["warnings"] = serde_json::json!(self.warnings(py));
        whole["cautions"] = serde_json::json!(self.cautions());
        format!("{whole:#}")
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let given = self.given(py)?;
        Ok((py.import("hankwise._hankwise")?.getattr("_results")?, (self.card.name, given)))
    }
    fn __repr__(&self) -> String {
        match &self.inner {
            Inner::One(solved) => solved.report().text().trim_end().to_owned(),
            Inner::Many { cases, .. } => {
                let number = cases.columns.first().map_or(0, |column| column.values.len());
                let names: Vec<&str> = self.all().iter().map(|shown| shown.name).collect();
                format!("{}: {number} cases of {}", self.card.title, names.join(", "))
            }
        }
    }
    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        match &self.inner {
            Inner::One(solved) => Ok(solved.report().html()),
            Inner::Many { .. } => self.to_frame(py)?.call_method0("_repr_html_")?.extract(),
        }
    }
}

/// The results for what was given, for pickles.
#[pyfunction]
#[pyo3(signature = (name, given, /))]
pub(crate) fn _results<'py>(
    py: Python<'py>,
    name: Text,
    given: &Bound<'py, PyDict>,
) -> PyResult<Bound<'py, PyAny>> {
    let name = name.named("name")?;
    let calculation = py.import("hankwise._hankwise")?.getattr("calculations")?.get_item(name)?;
    let warnings = py.import("warnings")?;
    // What was unusual was said when it was first calculated.
    let quiet = warnings.call_method0("catch_warnings")?;
    quiet.call_method0("__enter__")?;
    warnings.call_method1("simplefilter", ("ignore",))?;
    let found = calculation.call((), Some(given));
    quiet.call_method1("__exit__", (py.None(), py.None(), py.None()))?;
    found
}
