//! The handbook tables.

use hankwise::catalogue;
use hankwise::caution;
use hankwise::handbook::{Figure, Table};
use hankwise::plan::{Align, Block, Report};
use hankwise::quantity::{Amount, print};
use hankwise::source::cited;
use pyo3::exceptions::{PyIndexError, PyKeyError};
use pyo3::prelude::*;
use pyo3::types::{IntoPyDict, PyDict, PyList};

use crate::attributes::{attributes, dict};
use crate::errors::OrRaise;
use crate::quantity::Quantity;
use crate::sequence::{Places, places};
use crate::text::Text;

/// A figure of the handbook, or a band of figures, with who says so.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct HandbookFigure {
    table: &'static Table,
    place: usize,
}

impl HandbookFigure {
    fn figure(&self) -> &'static Figure {
        &self.table.figures[self.place]
    }
    /// One end, as a quantity in the unit that the source prints; None where it is open.
    fn end(&self, py: Python<'_>, number: f64) -> PyResult<Option<Quantity>> {
        if !number.is_finite() {
            return Ok(None);
        }
        let unit = self.figure().measure().or_raise()?;
        let text = print::with_unit(number, self.figure().unit);
        Ok(Some(Quantity::from_amount(py, Amount { number, unit }, Some(text))))
    }
    /// What it is of.
    fn words<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        self.table.columns.iter().zip(&self.figure().of).into_py_dict(py)
    }
    fn row<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let (row, f) = (self.words(py)?, self.figure());
        let end = |x: f64| x.is_finite().then_some(x);
        let more = dict!(py, {
            "low": end(f.low),
            "high": end(f.high),
            "unit": f.unit,
            "source": f.source,
            "place": f.place,
            "basis": f.basis().words(),
            "note": f.note,
        });
        row.update(more.as_mapping())?;
        Ok(row)
    }
}

attributes! {
    HandbookFigure, self, py {
        /// What it is of: the table's columns and their words.
        of: PyResult<Bound<'py, PyDict>> = self.words(py);
        /// The lower end; None where it is open.
        low: PyResult<Option<Quantity>> = self.end(py, self.figure().low);
        /// The upper end, the same as the lower for a single figure; None where it is open.
        high: PyResult<Option<Quantity>> = self.end(py, self.figure().high);
        /// The unit, as the source prints it.
        unit: &'static str = self.figure().unit;
        /// Key of the source; `hankwise.source(key)` tells more.
        source: &'static str = self.figure().source;
        /// Where in the source.
        place: &'static str = self.figure().place;
        /// What it rests on: standard or law, book or paper, web page, custom of the trade, memory, definition.
        basis: &'static str = self.figure().basis().words();
        /// What else there is to know.
        note: &'static str = self.figure().note;
    }

    fn __repr__(&self) -> String {
        let f = self.figure();
        let of: Vec<&str> = f.of.iter().copied().filter(|w| !w.is_empty()).collect();
        let unit = if f.unit.is_empty() { String::new() } else { format!(" {}", f.unit) };
        format!("<{}: {}{unit} ({})>", of.join(", "), f.words(), cited(f.source))
    }
    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        let other = other.cast::<HandbookFigure>().map(Bound::get);
        other.is_ok_and(|o| o.table.name == self.table.name && o.place == self.place)
    }
    fn __hash__(&self) -> usize {
        self.place
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Part)> {
        Ok((made_by(py, "_figure")?, (self.table.name, vec![self.place])))
    }
}

/// What a pickle keeps: the name of the table, the places of the figures.
type Part = (&'static str, Vec<usize>);

fn made_by<'py>(py: Python<'py>, name: &str) -> PyResult<Bound<'py, PyAny>> {
    py.import("hankwise._hankwise")?.getattr("HandbookTable")?.getattr(name)
}

/// A table of the handbook, or the figures of it that were looked for: a sequence of figures that
/// shows itself as a table.
#[pyclass(frozen, sequence, module = "hankwise", weakref)]
pub(crate) struct HandbookTable {
    table: &'static Table,
    places: Vec<usize>,
}

impl HandbookTable {
    fn whole(table: &'static Table) -> HandbookTable {
        HandbookTable { table, places: (0..table.figures.len()).collect() }
    }
    /// These figures of the table.
    pub(crate) fn part<'f>(
        table: &'static Table,
        figures: impl IntoIterator<Item = &'f Figure>,
    ) -> HandbookTable {
        let place = |f: &Figure| table.figures.iter().position(|g| std::ptr::eq(f, g));
        HandbookTable { table, places: figures.into_iter().filter_map(place).collect() }
    }
    /// Figures of the words of hand knitting.
    pub(crate) fn weights(figures: Vec<&'static Figure>) -> PyResult<HandbookTable> {
        let table = catalogue::table("hand_knitting_weights").or_raise()?;
        Ok(HandbookTable::part(table, figures))
    }
    fn at(&self, place: usize) -> HandbookFigure {
        HandbookFigure { table: self.table, place: self.places[place] }
    }
    pub(crate) fn block(&self) -> Block {
        let mut block = Block { title: self.table.title.to_owned(), ..Block::default() };
        block.lead.push(self.table.about.clone());
        let left = |name: &str| (name.to_owned(), Align::Left);
        block.columns = self.table.columns.iter().map(|c| left(c)).collect();
        block.columns.push(("figure".to_owned(), Align::Right));
        block.columns.extend(["unit", "source", "basis", "note"].map(left));
        for f in self.places.iter().map(|place| &self.table.figures[*place]) {
            let source = [f.source, f.place].into_iter().filter(|s| !s.is_empty());
            let mut cells: Vec<String> = f.of.iter().map(|w| (*w).to_owned()).collect();
            cells.extend([f.words(), f.unit.to_owned()]);
            cells.push(source.collect::<Vec<_>>().join(", "));
            cells.extend([f.basis().words().to_owned(), f.note.to_owned()]);
            block.rows.push(cells);
        }
        // A column in which nothing stands says nothing.
        for column in (0..block.columns.len()).rev() {
            if !block.rows.is_empty() && block.rows.iter().all(|row| row[column].is_empty()) {
                block.columns.remove(column);
                block.rows.iter_mut().for_each(|row| drop(row.remove(column)));
            }
        }
        block.cautions = caution::of(&self.table.cautions).map(|c| c.line(&[])).collect();
        if block.rows.is_empty() {
            block.foot.push("No row of this table.".to_owned());
        }
        block
    }
    fn report(&self) -> Report {
        Report { title: String::new(), blocks: vec![self.block()] }
    }
}

attributes! {
    HandbookTable, self, py {
        /// Its name.
        name: &'static str = self.table.name;
        /// Its title.
        title: &'static str = self.table.title;
        /// What the figures are and how to use them.
        about: &'static str = &self.table.about;
        /// What can do harm where its figures are used.
        cautions: Vec<String> = caution::of(&self.table.cautions).map(|c| c.line(&[])).collect();
        /// What the words of a figure are.
        columns: Vec<&'static str> = self.table.columns.to_vec();
    }

    /// The figures that have all the words, each found by its beginning.
    #[pyo3(signature = (words, /))]
    fn find(&self, words: Text) -> PyResult<HandbookTable> {
        let words = words.named("words")?;
        let found = HandbookTable::part(self.table, self.table.find(words));
        let places = found.places.into_iter().filter(|p| self.places.contains(p)).collect();
        Ok(HandbookTable { table: self.table, places })
    }
    /// The figures as dictionaries, as for a data frame: low and high are numbers in `unit`.
    fn records<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        (0..self.places.len()).map(|k| self.at(k).row(py)).collect()
    }
    fn __len__(&self) -> usize {
        self.places.len()
    }
    fn __getitem__<'py>(
        &self,
        py: Python<'py>,
        key: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        match places(key, self.places.len(), "figures")? {
            Places::One(at) => Ok(Bound::new(py, self.at(at))?.into_any()),
            Places::Several(all) => {
                let places = all.into_iter().map(|at| self.places[at]).collect();
                Ok(Bound::new(py, HandbookTable { table: self.table, places })?.into_any())
            }
        }
    }
    fn __iter__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let all: Vec<HandbookFigure> = (0..self.places.len()).map(|k| self.at(k)).collect();
        Ok(PyList::new(py, all)?.try_iter()?.into_any())
    }
    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        let other = other.cast::<HandbookTable>().map(Bound::get);
        other.is_ok_and(|o| o.table.name == self.table.name && o.places == self.places)
    }
    fn __repr__(&self) -> String {
        let rows: Vec<&Figure> =
            self.places.iter().map(|place| &self.table.figures[*place]).collect();
        self.table.text(&rows).trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        // A table alone has no heading over its own.
        self.report().html().replace("<h3></h3>", "")
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Part)> {
        Ok((made_by(py, "_part")?, (self.table.name, self.places.clone())))
    }
    #[staticmethod]
    fn _part(name: Text, places: Vec<usize>) -> PyResult<HandbookTable> {
        let name = name.named("name")?;
        let table = catalogue::table(name).map_err(|e| PyKeyError::new_err(e.to_string()))?;
        let places = places.into_iter().filter(|p| *p < table.figures.len()).collect();
        Ok(HandbookTable { table, places })
    }
    #[staticmethod]
    fn _figure(name: Text, places: Vec<usize>) -> PyResult<HandbookFigure> {
        let part = HandbookTable::_part(name, places)?;
        if part.places.is_empty() {
            return Err(PyIndexError::new_err("the table has no such value"));
        }
        Ok(part.at(0))
    }
}

/// The handbook table with a name; the message of a miss names the nearest.
#[pyfunction]
#[pyo3(signature = (name, /))]
pub(crate) fn _table(name: Text) -> PyResult<HandbookTable> {
    let name = name.named("name")?;
    let table = catalogue::table(name).map_err(|e| PyKeyError::new_err(e.to_string()))?;
    Ok(HandbookTable::whole(table))
}

/// Every table of the handbook.
#[pyfunction]
pub(crate) fn _tables() -> Vec<HandbookTable> {
    catalogue::tables().map(HandbookTable::whole).collect()
}
