//! The one search.

use hankwise::catalogue::{self, Entry, EntryKind, Face};
use hankwise::quantity::print::escape;
use pyo3::exceptions::PyKeyError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

use crate::attributes::{attributes, dict};
use crate::errors::raise;
use crate::sequence::{Places, places};
use crate::text::Text;

/// A function and what to call it with, as pickle wants them.
type Call<'py> = (Bound<'py, PyAny>, (String, Option<&'static str>));

/// What a search found: a formula, a calculation, a table, a count system and so on.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Hit {
    entry: Entry,
}

attributes! {
    Hit, self, py {
        /// What kind of thing it is: formula, calculation, function, stage, table, row, count, reed, unit
        /// or weave.
        kind: &'static str = self.entry.kind().word();
        /// Its name; of rows, the name of their table.
        name: &'static str = self.entry.name();
        /// What it is, in a line.
        summary: String = self.entry.summary();
        /// The line to type next.
        line: String = self.entry.python();
        /// The line to type next at the command line.
        command: String = self.entry.command();
    }

    fn __repr__(&self) -> String {
        format!("<{} {}: {}>", self.entry.kind(), self.entry.name(), self.entry.summary())
    }
    fn _repr_html_(&self) -> String {
        let [name, summary, line] =
            [self.entry.name(), &self.entry.summary(), &self.entry.python()].map(escape);
        format!("<p>{} <b>{name}</b>: {summary}<br><code>{line}</code></p>", self.entry.kind())
    }
}

/// What a search found, the best first: a sequence of hits that shows itself as a table.
#[pyclass(frozen, sequence, module = "hankwise", weakref)]
pub(crate) struct Found {
    inner: catalogue::Found,
    words: String,
    kind: Option<EntryKind>,
}

impl Found {
    fn hit(&self, place: usize) -> Hit {
        Hit { entry: self.inner.hits()[place].clone() }
    }
}

#[pymethods]
impl Found {
    fn __len__(&self) -> usize {
        self.inner.hits().len()
    }
    fn __getitem__<'py>(
        &self,
        py: Python<'py>,
        key: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        match places(key, self.inner.hits().len(), "hits")? {
            Places::One(at) => Ok(Bound::new(py, self.hit(at))?.into_any()),
            Places::Several(all) => {
                Ok(PyList::new(py, all.into_iter().map(|at| self.hit(at)))?.into_any())
            }
        }
    }
    fn __iter__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let all: Vec<Hit> = (0..self.inner.hits().len()).map(|place| self.hit(place)).collect();
        Ok(PyList::new(py, all)?.try_iter()?.into_any())
    }
    /// The names of the hits.
    #[getter]
    fn names(&self) -> Vec<&'static str> {
        self.inner.hits().iter().map(Entry::name).collect()
    }
    /// How many there are of each kind.
    #[getter]
    fn kinds<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let all = PyDict::new(py);
        for (kind, count) in self.inner.kinds() {
            all.set_item(kind.word(), count)?;
        }
        Ok(all)
    }
    /// The hits as dictionaries, as for a data frame.
    fn records<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let row = |hit: &Entry| {
            Ok(dict!(py, {
                "kind": hit.kind().word(),
                "name": hit.name(),
                "also": hit.other_names(),
                "summary": hit.summary(),
                "line": hit.python(),
                "command": hit.command(),
            }))
        };
        self.inner.hits().iter().map(row).collect()
    }
    /// All hits as text.
    fn text(&self) -> String {
        self.inner.text(Face::Python, true)
    }
    /// The hits as the command line prints them.
    fn _command(&self, all: bool) -> String {
        self.inner.text(Face::Command, all)
    }
    /// What the command line says where nothing was found.
    fn _nothing(&self) -> Option<String> {
        self.inner.nothing(Face::Command)
    }
    fn __repr__(&self) -> String {
        self.inner.text(Face::Python, false).trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.inner.html(Face::Python)
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let again = py.import("hankwise._hankwise")?.getattr("find")?;
        Ok((again, (self.words.clone(), self.kind.map(EntryKind::word))))
    }
}

/// Search all that can be called or looked up: formulas, calculations, functions, stages of the plan,
/// tables of the handbook and their rows, count systems, reed systems, units and weaves. The best hits
/// come first, each with the line to type next. `kind` asks for one kind alone.
///
/// >>> import hankwise as hw
/// >>> hw.find("turns per inch")[0].line
/// 'hw.q("1 tpi").to("turns/m")'
#[pyfunction]
#[pyo3(signature = (words=Text::Meant(""), kind=None), text_signature = "(words='', kind=None)")]
pub(crate) fn find(words: Text, kind: Option<Text>) -> PyResult<Found> {
    let words = words.named("words")?;
    let kind = Text::option(kind.as_ref(), "kind")?;
    let kind = match kind {
        None => None,
        Some(word) => Some(EntryKind::named(word).ok_or_else(|| unknown(word))?),
    };
    Ok(Found { inner: catalogue::find(words, kind), words: words.to_owned(), kind })
}

/// The kinds of what can be found, each in a word.
pub(crate) fn kinds() -> Vec<&'static str> {
    EntryKind::all().map(EntryKind::word).collect()
}

fn unknown(word: &str) -> PyErr {
    let message = format!("unknown kind '{word}'; write one of {}", kinds().join(", "));
    raise(&hankwise::Error::notation(message))
}

/// The formula or the calculation with a name, or of a `kind` alone; the message of a miss names the nearest.
#[pyfunction]
#[pyo3(signature = (name, /, kind=None))]
pub(crate) fn _calc<'py>(
    py: Python<'py>,
    name: Text,
    kind: Option<Text>,
) -> PyResult<Bound<'py, PyAny>> {
    let name = name.named("name")?;
    let kind = Text::option(kind.as_ref(), "kind")?;
    let found = match kind {
        Some("formula") => catalogue::formula(name).map(Entry::Formula),
        Some(_) => catalogue::calculation(name).map(Entry::Calculation),
        None => catalogue::calc(name),
    };
    let entry = found.map_err(|e| PyKeyError::new_err(e.to_string()))?;
    let all = if entry.kind() == EntryKind::Formula { "formulas" } else { "calculations" };
    py.import("hankwise._hankwise")?.getattr(all)?.get_item(name)
}
