//! What a plan gives.

use std::path::PathBuf;
use std::sync::Arc;

use hankwise::plan::{self, Align, Band, Block, Extent};
use hankwise::quantity::print;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

use crate::attributes::{attributes, dict};
use crate::errors::OrRaise;
use crate::given::{Read, read};
use crate::working::Working;

/// What a plan gives: the promise, the stages, the settings, the account, what to measure first.
///
/// Shows itself as the first screen of `hankwise plan`.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct PlanResult {
    pub(crate) result: plan::PlanResult,
    pub(crate) plan: Arc<plan::Plan>,
    pub(crate) asked: (usize, u64),
}

/// What a pickle keeps: text and name of the lot file, draws, seed.
type State = (String, String, usize, u64);

/// Rows that show themselves as a table: a sequence of dictionaries.
#[pyclass(frozen, sequence, module = "hankwise")]
pub(crate) struct Table {
    rows: Py<PyList>,
    // Written out when it is shown: a table may have a hundred thousand rows.
    report: plan::Report,
}

#[pymethods]
impl Table {
    fn __len__(&self, py: Python<'_>) -> usize {
        self.rows.bind(py).len()
    }
    fn __getitem__<'py>(
        &self,
        py: Python<'py>,
        key: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        self.rows.bind(py).as_any().get_item(key)
    }
    fn __iter__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        Ok(self.rows.bind(py).try_iter()?.into_any())
    }
    fn __repr__(&self) -> String {
        self.report.text().trim_start_matches('\n').trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.report.html()
    }
}

impl Table {
    /// Rows that show themselves as a report does.
    pub(crate) fn showing(rows: Bound<'_, PyList>, report: plan::Report) -> Table {
        Table { rows: rows.unbind(), report }
    }
}

fn table<'py>(rows: Vec<Bound<'py, PyDict>>, py: Python<'py>, shown: &[&str]) -> PyResult<Table> {
    let mut block = Block::default();
    for (place, name) in shown.iter().enumerate() {
        let figures = rows.first().is_some_and(|row| {
            row.get_item(name).ok().flatten().is_some_and(|v| v.extract::<f64>().is_ok())
        });
        let align = if figures && place > 0 { Align::Right } else { Align::Left };
        block.columns.push(((*name).to_owned(), align));
    }
    for row in &rows {
        let mut cells = Vec::new();
        for name in shown {
            let value = row.get_item(name)?;
            cells.push(match value {
                None => String::new(),
                Some(v) if v.is_none() => String::new(),
                Some(v) if v.is_instance_of::<pyo3::types::PyBool>() => v.to_string(),
                Some(v) => match v.extract::<f64>() {
                    Ok(x) => print::figure(x),
                    Err(_) => v.to_string(),
                },
            });
        }
        block.rows.push(cells);
    }
    let report = plan::Report { title: String::new(), blocks: vec![block] };
    Ok(Table::showing(PyList::new(py, rows)?, report))
}

fn put(row: &Bound<'_, PyDict>, band: Option<Band>, fallback: f64) -> PyResult<()> {
    row.set_item("low", band.map(|b| b.low))?;
    row.set_item("likely", band.map_or(fallback, |b| b.likely))?;
    row.set_item("high", band.map(|b| b.high))
}

attributes! {
    PlanResult, self, py {
        /// True where the planned values meet the whole promise.
        enough: bool = self.result.is_enough();
        /// Chance that the whole promise is met; None without simulated lots.
        chance: Option<f64> = self.result.margin.chance;
        /// The answer in a sentence or two.
        answer: String = self.result.answer().join(" ");
        /// Greasy mass taken in, kg, and the clean dry fibre in it.
        intake: (f64, f64) = self.result.greasy;
        /// The regain at which masses are stated, as a fraction.
        stated_regain: f64 = self.result.stated_regain;
        /// Name of the lot.
        name: &str = &self.result.name;
        /// How many draws were made.
        draws: usize = self.result.draws;
        /// The seed of the draws.
        seed: u64 = self.result.seed;
        /// For each good that the planned values do not make as promised: where the promise stands, what
        /// is made, and what to write instead.
        shortfalls: Vec<String> = self.result.shortfalls.clone();
        /// What is unusual about the figures.
        warnings: Vec<String> = self.result.warnings.clone();
        /// The names of the figures that have a working.
        workings: Vec<String> = self.result.workings();
    }

    /// Pieces to spare for the whole promise (negative: short), not rounded: told in pieces of
    /// `good`, with low, likely and high over the simulated lots.
    #[getter]
    fn margin<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let row = PyDict::new(py);
        let margin = &self.result.margin;
        row.set_item("good", &margin.good)?;
        row.set_item("planned", margin.likely)?;
        put(&row, margin.band, margin.likely)?;
        row.set_item("chance", margin.chance)?;
        Ok(row)
    }
    /// The goods: promised, made with the planned values, low, likely and high over the simulated lots, chance.
    #[getter]
    fn goods(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for good in &self.result.goods {
            let row = dict!(py, {
                "name": &good.name,
                "promised": good.want,
                "takes_rest": good.rest,
                "made": good.made,
                "unrounded": good.unrounded,
            });
            put(&row, good.band, good.made)?;
            row.set_item("chance", good.chance)?;
            rows.push(row);
        }
        table(rows, py, &["name", "promised", "made", "low", "likely", "high", "chance"])
    }
    /// The stages: kg of fibre at the stated regain (low, likely, high; `planned` with the likely
    /// figures), kg as the scale reads it, and its parts.
    #[getter]
    fn stages(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for stage in &self.result.stages {
            let row = dict!(py, {
                "name": &stage.name,
                "makes": &stage.makes,
                "planned": stage.stated,
            });
            put(&row, stage.band, stage.stated)?;
            row.set_item("scale_reads", stage.stock.total())?;
            for (part, kg) in plan::PARTS.iter().zip(stage.stock.parts()) {
                row.set_item(part.replace(' ', "_"), kg)?;
            }
            row.set_item("cautions", stage.cautions.to_vec())?;
            rows.push(row);
        }
        table(rows, py, &["name", "makes", "low", "likely", "high", "scale_reads"])
    }
    /// What to set, weigh and expect at each machine.
    #[getter]
    fn settings(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for s in &self.result.settings {
            rows.push(dict!(py, {
                "machine": &s.stage,
                "name": &s.key,
                "words": &s.words,
                "value": s.value,
                "unit": s.kind.base(),
                "main": s.main,
                "note": &s.note,
            }));
        }
        table(rows, py, &["name", "words", "value", "unit", "note"])
    }
    /// What moves the answer most, first: `share` of the uncertainty that would go if it were known.
    #[getter]
    fn drivers(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for d in &self.result.drivers {
            rows.push(dict!(py, {
                "name": &d.key,
                "words": &d.words,
                "share": d.share,
                "margin_at_low": d.swing.0,
                "margin_at_high": d.swing.1,
                "short_at_low": d.short.0,
                "short_at_high": d.short.1,
                "varies": d.layer.words(),
            }));
        }
        table(rows, py, &["name", "words", "share", "margin_at_low", "margin_at_high", "varies"])
    }
    /// Where every kilogram goes, by its parts.
    #[getter]
    fn account(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for line in &self.result.account {
            let row = dict!(py, {
                "stage": &line.stage,
                "to": &line.to,
                "added": line.added,
            });
            for (part, kg) in plan::PARTS.iter().zip(line.stock.parts()) {
                row.set_item(part.replace(' ', "_"), kg)?;
            }
            rows.push(row);
        }
        table(
            rows,
            py,
            &[
                "stage",
                "to",
                "added",
                "fibre",
                "water",
                "oil",
                "grease_and_dirt",
                "vegetable_matter",
            ],
        )
    }
    /// The draws themselves: arrays of whole pieces by good, and of the margin in pieces (`margin`).
    #[getter]
    fn samples<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let all = PyDict::new(py);
        for (good, pieces) in self.result.goods.iter().zip(&self.result.samples.pieces) {
            all.set_item(&good.name, numpy::PyArray1::from_slice(py, pieces))?;
        }
        all.set_item("margin", numpy::PyArray1::from_slice(py, &self.result.samples.margin))?;
        Ok(all)
    }
    /// The working of a figure, by its name, such as "twister.twist".
    #[pyo3(signature = (name, /))]
    fn working(&self, name: &str) -> PyResult<Working> {
        let working = self.result.working(name).or_raise()?;
        Ok(Working { working })
    }
    /// What the lot costs, stage by stage and goods by goods, with the planned values: the results of
    /// `hankwise.mill.lot_cost`, whose masses and hours come from the plan.
    ///
    /// `price_per_mass` is the price of a greasy kilogram. `stages` says what is paid at each stage, before
    /// the yarn or after it: `hourly_cost` of the machine, `people` with an `hourly_wage`, `extra_time`
    /// beyond the running time (all of it where the plan has none), `stage_cost_per_mass` for a kilogram
    /// that goes in, `fixed_cost` once for the lot. `overhead` is a share of those costs, `hourly_overhead`
    /// for every machine hour. All costs to the yarn are shared among the goods by clean dry fibre; reel,
    /// cone, loom and finish are the goods' own. A `margin` is on the price, a `mark_up` on the cost. Taxes
    /// on sales are not included.
    #[pyo3(
        signature = (**given),
        text_signature = "($self, *, price_per_mass, stages=None, hourly_wage=None, overhead=None, hourly_overhead=None, margin=None, mark_up=None)"
    )]
    fn cost(
        &self,
        py: Python<'_>,
        given: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<crate::results::Results> {
        let card = &hankwise::mill::LOT_COST;
        let Read { given, container } = read(card, given)?;
        let given = self.result.cost_inputs(&given).or_raise_at(card.name)?;
        crate::results::Results::solve(py, card, given, container)
    }
    /// The result as tables of text; `all=True` for all there is.
    #[pyo3(signature = (*, all=false))]
    fn text(&self, all: bool) -> String {
        self.result.report(extent(all)).text()
    }
    /// The result as tables of HTML.
    #[pyo3(signature = (*, all=true))]
    fn html(&self, all: bool) -> String {
        self.result.report(extent(all)).html()
    }
    /// The result as JSON text for other programs; its schema has a name and a version.
    fn to_json(&self) -> String {
        format!("{:#}", self.result.to_json())
    }
    /// Writes the planned values as a live workbook (.xlsx), and the results of the simulated lots as plain numbers.
    #[pyo3(signature = (path, /))]
    fn to_sheet(&self, py: Python<'_>, path: PathBuf) -> PyResult<()> {
        let today = py.import("datetime")?.getattr("date")?.call_method0("today")?;
        let date: String = today.call_method0("isoformat")?.extract()?;
        self.result.to_sheet(&path, &date).or_raise()
    }
    /// Writes the lot sheet: a page to print, stage by stage, with settings and cautions.
    #[pyo3(signature = (path, /))]
    fn to_html(&self, path: PathBuf) -> PyResult<()> {
        self.result.to_html(&path).or_raise()
    }
    /// A figure of the result: the mass down the stages, the goods against the promise. Needs
    /// matplotlib; gives its Figure.
    fn plot<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.py().import("hankwise._plot")?.call_method1("plan_figure", (slf,))
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, State)> {
        let again = py.import("hankwise._hankwise")?.getattr("PlanResult")?.getattr("_again")?;
        let (draws, seed) = self.asked;
        Ok((again, (self.plan.text().to_owned(), self.plan.file().to_owned(), draws, seed)))
    }
    /// The same bytes from the same text, draws and seed.
    #[staticmethod]
    fn _again(text: &str, file: &str, draws: usize, seed: u64) -> PyResult<PlanResult> {
        let plan = plan::Plan::parse(text, file).or_raise()?;
        let result =
            plan.run(draws, seed, crate::plan::cores(), &mut |_| true).or_raise()?;
        Ok(PlanResult { result, plan: Arc::new(plan), asked: (draws, seed) })
    }
    fn __repr__(&self) -> String {
        self.result.report(Extent::First).text()
    }
    fn _repr_html_(&self) -> String {
        self.result.report(Extent::First).html()
    }
}

fn extent(all: bool) -> Extent {
    if all { Extent::All } else { Extent::First }
}
