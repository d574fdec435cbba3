//! What a plan gives.

use std::sync::Arc;

use hankwise::plan::{self, Align, Band, Block, Extent, Paper};
use hankwise::quantity::print;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

use crate::attributes::{attributes, dict};
use crate::errors::OrRaise;
use crate::files::output;
use crate::given::{Read, read};
use crate::plan::Plan;
use crate::text::{File, Text};
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

/// What a pickle keeps: text and name of the lot file, number of simulated lots, seed.
type State = (Py<Plan>, usize, u64);

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

pub(crate) fn table<'py>(
    rows: Vec<Bound<'py, PyDict>>,
    py: Python<'py>,
    shown: &[&str],
) -> PyResult<Table> {
    let mut block = Block::default();
    for (place, name) in shown.iter().enumerate() {
        let numbers = rows.first().is_some_and(|row| {
            row.get_item(name).ok().flatten().is_some_and(|v| v.extract::<f64>().is_ok())
        });
        let align = if numbers && place > 0 { Align::Right } else { Align::Left };
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

/// Puts a planned value into a row, with its low, middle and high over the simulated lots.
pub(crate) fn put(row: &Bound<'_, PyDict>, planned: f64, band: Option<Band>) -> PyResult<()> {
    row.set_item("planned", planned)?;
    row.set_item("low", band.map(|b| b.low))?;
    row.set_item("middle", band.map(|b| b.middle))?;
    row.set_item("high", band.map(|b| b.high))
}

attributes! {
    PlanResult, self, py {
        /// True where the planned values keep the whole promise; how sure that is, `chance` says.
        planned_enough: bool = self.result.planned_enough();
        /// Chance that the whole promise is kept; None without simulated lots.
        chance: Option<f64> = self.result.spare.chance;
        /// What the numbers of spare pieces are called.
        _spare_label: String = self.result.spare_label();
        /// The answer in a sentence or two.
        answer: String = self.result.answer().join(" ");
        /// Greasy mass taken in, kg, and the clean dry fibre in it.
        intake: (f64, f64) = self.result.intake;
        /// The regain at which masses are stated, as a fraction.
        stated_regain: f64 = self.result.stated_regain;
        /// Name of the lot.
        name: &str = &self.result.name;
        /// What the lot is filed under.
        id: &str = &self.result.id;
        /// Number of simulated lots.
        simulated: usize = self.result.simulated;
        /// Seed of the simulated lots.
        seed: u64 = self.result.seed;
        /// Obstacles to making the yarn and the goods at all, with the planned values.
        obstacles: Vec<String> = self.result.obstacles.clone();
        /// For each good of which fewer are planned than promised: where the promise is written, how many
        /// are planned, how many are short.
        shortfalls: Vec<String> = self.result.shortfalls.clone();
        /// What would make the promise safe: a smaller promise, or more wool; None where it is safe.
        advice: Option<String> = self.result.advice.clone();
        /// Values that look wrong.
        warnings: Vec<String> = self.result.warnings.clone();
        /// The names of the values that have a working.
        workings: Vec<String> = self.result.workings();
    }

    /// Pieces to spare beyond the whole promise (negative: short), not rounded: planned, and low,
    /// middle and high over the simulated lots, counted in the goods `counted_in`;
    /// `safe_greasy_mass` (kg) keeps the promise in 19 lots of 20.
    #[getter]
    fn spare<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let row = PyDict::new(py);
        let spare = &self.result.spare;
        row.set_item("counted_in", &spare.good)?;
        put(&row, spare.planned, spare.band)?;
        row.set_item("safe_greasy_mass", spare.safe_greasy_mass)?;
        Ok(row)
    }
    /// The goods: promised; planned; low, middle and high over the simulated lots; the chance to make as
    /// many as promised; the safe promise, kept by 19 lots of 20.
    #[getter]
    fn goods(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for good in &self.result.goods {
            let row = dict!(py, {
                "name": &good.name,
                "promised": good.promised,
                "takes_rest": good.takes_rest,
            });
            put(&row, good.planned, good.band)?;
            row.set_item("unrounded", good.unrounded)?;
            row.set_item("chance", good.chance)?;
            row.set_item("safe", good.safe)?;
            rows.push(row);
        }
        let shown = ["name", "promised", "planned", "low", "middle", "high", "chance", "safe"];
        table(rows, py, &shown)
    }
    /// The stages: kg of fibre out of each at the stated regain, planned, and low, middle and high over
    /// the simulated lots; the planned kg on the scale, and their parts.
    #[getter]
    fn stages(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for stage in &self.result.stages {
            let row = dict!(py, {
                "name": &stage.name,
                "machine": &stage.machine,
                "of": &stage.of,
                "makes": &stage.makes,
            });
            put(&row, stage.stated_mass, stage.band)?;
            row.set_item("on_scale", stage.stock.total())?;
            for (part, kg) in plan::PARTS.iter().zip(stage.stock.parts()) {
                row.set_item(plan::part_name(part), kg)?;
            }
            row.set_item("cautions", stage.cautions.to_vec())?;
            rows.push(row);
        }
        table(rows, py, &["name", "makes", "planned", "low", "middle", "high", "on_scale"])
    }
    /// What to set, weigh and expect at each machine.
    #[getter]
    fn settings(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for s in &self.result.settings {
            rows.push(dict!(py, {
                "machine": &s.stage,
                "of": &s.of,
                "name": &s.key,
                "meaning": &s.words,
                "value": s.value,
                "unit": s.kind.base(),
                "main": s.main,
                "note": &s.note,
            }));
        }
        table(rows, py, &["name", "meaning", "value", "unit", "note"])
    }
    /// The uncertain values, the one that moves the answer most first: `share_of_doubt` that would go if it
    /// were known; pieces spare of a plan with it at its low and high end, all others as planned; chance of
    /// falling short with it there, all others drawn.
    #[getter]
    fn measure_first(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for d in &self.result.measure_first {
            rows.push(dict!(py, {
                "name": &d.key,
                "meaning": &d.words,
                "share_of_doubt": d.share,
                "spare_at_low": d.swing.0,
                "spare_at_high": d.swing.1,
                "short_at_low": d.short.0,
                "short_at_high": d.short.1,
                "varies": d.layer.words(),
            }));
        }
        table(
            rows,
            py,
            &["name", "meaning", "share_of_doubt", "spare_at_low", "spare_at_high", "varies"],
        )
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
                row.set_item(plan::part_name(part), kg)?;
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
                "fibre_mass",
                "water_mass",
                "oil_mass",
                "grease_and_dirt_mass",
                "vegetable_matter_mass",
                "dye_mass",
            ],
        )
    }
    /// Whose the goods are, where several growers' wool went into one heap: a row for each grower and good.
    #[getter]
    fn growers(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for grower in &self.result.growers {
            for (good, unrounded, pieces) in &grower.goods {
                rows.push(dict!(py, {
                    "owner": &grower.owner,
                    "greasy_mass": grower.greasy_mass,
                    "fibre_mass": grower.fibre_mass,
                    "name": good,
                    "unrounded": *unrounded,
                    "pieces": *pieces,
                }));
            }
        }
        table(rows, py, &["owner", "greasy_mass", "fibre_mass", "name", "unrounded", "pieces"])
    }
    /// How heaps of several yarns are best weighed out: a row for each heap and yarn, with the share of the
    /// heap that is proposed, the share that its promises need in half of the lots, and the chance that the
    /// promises of the heap are kept when it is weighed out so, or as each yarn turns out to need.
    #[getter]
    fn split(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for split in &self.result.splits {
            for (yarn, share, needed) in &split.yarns {
                rows.push(dict!(py, {
                    "heap": &split.heap,
                    "name": yarn,
                    "share": *share,
                    "needed_share": *needed,
                    "mass": share * split.mass,
                    "weighed_out": split.weighed_out,
                    "as_needed": split.as_needed,
                }));
            }
        }
        let shown = ["heap", "name", "share", "mass", "needed_share", "weighed_out", "as_needed"];
        table(rows, py, &shown)
    }
    /// The changes on the machines, in order: hours, and the fibre that the machine keeps.
    #[getter]
    fn changeovers(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for change in &self.result.changeovers {
            rows.push(dict!(py, {
                "machine": &change.machine,
                "run_before": &change.before,
                "run_next": &change.next,
                "time": change.time,
                "kept": change.kept,
            }));
        }
        table(rows, py, &["machine", "run_before", "run_next", "time", "kept"])
    }
    /// What is left of wool and yarn with the planned values, kg on the scale.
    #[getter]
    fn left_over(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for (name, state, mass) in &self.result.left_over {
            rows.push(dict!(py, { "name": name, "state": *state, "mass": *mass }));
        }
        table(rows, py, &["name", "state", "mass"])
    }
    /// The simulated lots themselves: arrays of whole pieces by good, and of the pieces to spare (`spare`).
    #[getter]
    fn samples<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let all = PyDict::new(py);
        for (good, pieces) in self.result.goods.iter().zip(&self.result.samples.pieces) {
            all.set_item(&good.name, numpy::PyArray1::from_slice(py, pieces))?;
        }
        all.set_item("spare", numpy::PyArray1::from_slice(py, &self.result.samples.spare))?;
        Ok(all)
    }
    /// The working of a value, by its name, such as "twister.twist".
    #[pyo3(signature = (name, /))]
    fn working(&self, name: Text) -> PyResult<Working> {
        let name = name.named("name")?;
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
    /// What the mill charges for the lot by its tariffs, `[tariff]` in the mill file; what the lot costs the
    /// mill, by `[cost]`; which lots pay.
    ///
    /// `margin` asks for the price that leaves it, `price` for the margin that it leaves. Taxes on sales
    /// are not included.
    ///
    /// >>> import hankwise as hw
    /// >>> result = hw.plan.load("examples/nine-kilos.toml").run(lots=0)
    /// >>> result.quote(margin="30 %").price_for_margin
    /// 415.0
    #[pyo3(signature = (*, margin=None, price=None), text_signature = "($self, *, margin=None, price=None)")]
    fn quote(
        &self,
        py: Python<'_>,
        margin: Option<&Bound<'_, PyAny>>,
        price: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<crate::quote::Quote> {
        crate::quote::Quote::of(py, self, margin, price)
    }
    /// The result in a sentence to read aloud: what can safely be promised, what would make it surer.
    #[pyo3(text_signature = "($self)")]
    fn spoken(&self) -> String {
        self.result.spoken()
    }
    /// The result as tables of text; `all=True` for everything.
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
    /// `force=True` replaces a file of another kind too.
    #[pyo3(signature = (path, /, *, force = false), text_signature = "($self, path, /, *, force=False)")]
    fn to_workbook(&self, py: Python<'_>, path: File, force: bool) -> PyResult<()> {
        let path = path.named("path")?;
        let today = py.import("datetime")?.getattr("date")?.call_method0("today")?;
        let date: String = today.call_method0("isoformat")?.extract()?;
        self.result.to_workbook(output(path, force), &date).or_raise()
    }
    /// A paper of the lot as an HTML page: "quote", "grower", "mill" (the mill's sheet) or "floor".
    #[pyo3(signature = (name, /))]
    fn paper(&self, name: Text) -> PyResult<String> {
        Ok(self.plan.paper(&self.result, Paper::named(name.named("name")?).or_raise()?))
    }
    /// Writes papers of the lot, all of them or those named, beside the lot file or into a folder:
    /// `lot.toml` has its quotation in `lot-quote.html`. Gives the files. `force=True` replaces files of
    /// another kind too.
    #[pyo3(signature = (folder = None, papers = None, *, force = false), text_signature = "($self, folder=None, papers=None, *, force=False)")]
    fn to_papers(
        &self,
        folder: Option<File>,
        papers: Option<Vec<Text>>,
        force: bool,
    ) -> PyResult<Vec<std::path::PathBuf>> {
        let folder = folder.map(|folder| folder.named("folder")).transpose()?;
        let named = |name: &Text| Paper::named(name.named("papers")?).or_raise();
        let papers: Vec<Paper> = match papers {
            Some(names) => names.iter().map(named).collect::<PyResult<_>>()?,
            None => Paper::ALL.to_vec(),
        };
        self.plan.write_papers(&self.result, &papers, folder.as_deref(), force).or_raise()
    }
    /// A picture of the result: the mass down the stages, the goods against the promise. Needs
    /// matplotlib and gives its Figure.
    fn plot<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.py().import("hankwise._plot")?.call_method1("plan_figure", (slf,))
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, State)> {
        let again = py.import("hankwise._hankwise")?.getattr("PlanResult")?.getattr("_again")?;
        let (lots, seed) = self.asked;
        Ok((again, (Plan { plan: self.plan.clone() }.into_pyobject(py)?.unbind(), lots, seed)))
    }
    /// A pickled result: the same bytes from the same plan, lots and seed.
    #[staticmethod]
    fn _again(plan: &Plan, lots: usize, seed: u64) -> PyResult<PlanResult> {
        let run = plan::Run { lots, seed, threads: crate::plan::cores() };
        let result = plan.plan.run(&run).or_raise()?;
        Ok(PlanResult { result, plan: plan.plan.clone(), asked: (lots, seed) })
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
