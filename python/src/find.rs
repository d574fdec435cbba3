//! The one search.

use hankwise::catalogue::{self, Entry, EntryKind, Face};
use hankwise::quantity::print::escape;
use pyo3::exceptions::PyIndexError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList, PySlice};

use crate::errors::raise;

/// A function and what to call it with, as pickle wants them.
type Call<'py> = (Bound<'py, PyAny>, (String, Option<&'static str>));

/// What a search found: a formula, a calculation, a table, a count system and so on.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Hit {
    entry: Entry,
}

#[pymethods]
impl Hit {
    /// What kind of thing it is: formula, calculation, function, stage, table, row, count, reed, unit
    /// or weave.
    #[getter]
    fn kind(&self) -> &'static str {
        self.entry.kind().word()
    }
    /// Its name; of rows, the name of their table.
    #[getter]
    fn name(&self) -> &'static str {
        self.entry.name()
    }
    /// What it is, in a line.
    #[getter]
    fn summary(&self) -> String {
        self.entry.summary()
    }
    /// The line to type next.
    #[getter]
    fn line(&self) -> String {
        self.entry.python()
    }
    /// The line to type next at the command line.
    #[getter]
    fn command(&self) -> String {
        self.entry.command()
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
        Hit { entry: self.inner.hits()[place].entry.clone() }
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
        let length = self.inner.hits().len();
        if let Ok(slice) = key.cast::<PySlice>() {
            let range = slice.indices(isize::try_from(length)?)?;
            let places = (0..range.slicelength).map(|k| {
                let at = range.start + isize::try_from(k)? * range.step;
                Ok(self.hit(usize::try_from(at)?))
            });
            return Ok(PyList::new(py, places.collect::<PyResult<Vec<Hit>>>()?)?.into_any());
        }
        let at: isize = key.extract()?;
        match usize::try_from(if at < 0 { at + isize::try_from(length)? } else { at }) {
            Ok(at) if at < length => Ok(Bound::new(py, self.hit(at))?.into_any()),
            _ => Err(PyIndexError::new_err(format!("there are {length} hits"))),
        }
    }
    fn __iter__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let all: Vec<Hit> = (0..self.inner.hits().len()).map(|place| self.hit(place)).collect();
        Ok(PyList::new(py, all)?.try_iter()?.into_any())
    }
    /// The names of the hits.
    #[getter]
    fn names(&self) -> Vec<&'static str> {
        self.inner.hits().iter().map(|hit| hit.entry.name()).collect()
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
        let row = |hit: &catalogue::Hit| {
            let row = PyDict::new(py);
            row.set_item("kind", hit.entry.kind().word())?;
            row.set_item("name", hit.entry.name())?;
            row.set_item("also", hit.entry.other_names())?;
            row.set_item("summary", hit.entry.summary())?;
            row.set_item("line", hit.entry.python())?;
            row.set_item("command", hit.entry.command())?;
            Ok(row)
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

/// find(words='', kind=None)
/// --
///
/// Search all that can be called or looked up: formulas, calculations, functions, stages of the plan,
/// tables of the handbook and their rows, count systems, reed systems, units and weaves. The best hits
/// come first, each with the line to type next. `kind` asks for one kind alone.
///
/// >>> import hankwise as hw
/// >>> hw.find("turns per inch")[0].line
/// 'hw.q("1 tpi").to("turns/m")'
#[pyfunction]
#[pyo3(signature = (words="", kind=None), text_signature = "(words='', kind=None)")]
pub(crate) fn find(words: &str, kind: Option<&str>) -> PyResult<Found> {
    let kind = match kind {
        None => None,
        Some(word) => Some(EntryKind::named(word).ok_or_else(|| unknown(word))?),
    };
    Ok(Found { inner: catalogue::find(words, kind), words: words.to_owned(), kind })
}

fn unknown(word: &str) -> PyErr {
    let all: Vec<&str> = EntryKind::ALL.into_iter().map(EntryKind::word).collect();
    let message = format!("unknown kind '{word}'; write one of {}", all.join(", "));
    raise(&hankwise::Error::notation(message))
}
