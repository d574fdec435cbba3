//! Money: cost through losses, tariffs compared, a planned lot's cost, a balance.

use std::collections::BTreeMap;

use hankwise::mill::{self, CostedStage, Costing, Tariffs};
use hankwise::plan::{Rates, Selling};
use hankwise::quantity::{Amount, Kind};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList, PyString};

use crate::errors::{NotationError, raise};
use crate::inputs::{base_unit, is_row, locate, one_figure};
use crate::particulars::Particulars;
use crate::quantity::Quantity;
use crate::result::{PlanResult, Table};

/// A figure as it was given, with its text.
type Figure = (Amount, Option<String>);

/// A list of dictionaries, each with its name.
pub(crate) fn named<'py>(
    given: &Bound<'py, PyAny>,
    of: &str,
    what: &str,
    example: &str,
) -> PyResult<Vec<(String, Bound<'py, PyDict>)>> {
    let wrong = || {
        let shown = given.repr().map_or_else(|_| String::new(), |r| r.to_string());
        NotationError::new_err(format!(
            "{of}, {what}: a list of dictionaries is wanted, such as [{example}], not {shown}"
        ))
    };
    if !is_row(given) || given.cast::<PyDict>().is_ok() {
        return Err(wrong());
    }
    let mut all = Vec::new();
    for (place, item) in given.try_iter()?.enumerate() {
        let item = item?.cast_into::<PyDict>().map_err(|_| wrong())?.copy()?;
        let Some(name) = item.get_item("name")?.and_then(|n| n.cast_into::<PyString>().ok()) else {
            return Err(NotationError::new_err(format!(
                "{of}, {what}: the name of number {} is missing; write it like {example}",
                place + 1
            )));
        };
        item.del_item("name")?;
        all.push((name.to_string(), item));
    }
    Ok(all)
}

/// cost_through(*, price, stages, pieces=None, overhead=None, hourly_overhead=None, margin=None,
///     mark_up=None)
/// --
///
/// What a kilogram costs as it goes through stages that lose some of it, and what to ask for goods.
///
/// Each stage is a dictionary: its `name`, `loss` (a share of what goes in), and what it costs: `cost`
/// for a kilogram that goes in, or `hourly` with the `rate` that goes in. `waste_value` takes off what
/// its waste sells for (`waste_sold` where not all of the loss is sold). `overhead` is a share of what
/// the stages cost, `hourly_overhead` for an hour of each machine. `pieces` are goods by their mass. A
/// `margin` is on the price, a `mark_up` on the cost: never both. Taxes on sales are left out.
///
/// >>> import hankwise as hw
/// >>> cost = hw.mill.cost_through(
/// ...     price="4.20 /kg",
/// ...     stages=[
/// ...         {"name": "scour", "loss": "42 %", "cost": "0.80 /kg"},
/// ...         {"name": "card", "loss": "8 %", "hourly": "24", "rate": "12 kg/h"},
/// ...     ],
/// ...     pieces={"hank": "100 g"},
/// ...     margin="30 %",
/// ... )
/// >>> cost["cost"], cost["hank.cost"], cost["hank.price"]
/// (<cost per mass: 11.54 /kg>, <money: 1.154>, <money: 1.649>)
#[pyfunction]
#[pyo3(
    signature = (**given),
    text_signature = "(*, price, stages, pieces=None, overhead=None, hourly_overhead=None, margin=None, mark_up=None)"
)]
pub(crate) fn cost_through(
    py: Python<'_>,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    const NAME: &str = "cost_through";
    const EXAMPLE: &str = "{'name': 'card', 'loss': '8 %', 'cost': '1.50 /kg'}";
    let at = |e: hankwise::Error| raise(&e.at(NAME));
    let mut costing = Costing::new();
    for (key, value) in given.into_iter().flat_map(pyo3::types::PyDictMethods::iter) {
        let key: String = key.extract()?;
        match key.as_str() {
            _ if value.is_none() => {}
            "stages" => {
                for (name, said) in named(&value, NAME, "stages", EXAMPLE)? {
                    let mut stage = CostedStage::new(&name);
                    for (key, value) in said.iter().filter(|(_, value)| !value.is_none()) {
                        let key: String = key.extract()?;
                        let kind = CostedStage::said(&key).map_err(at)?.kind;
                        let place = format!("{name}.{key}");
                        let (amount, typed) =
                            one_figure(&value, kind).map_err(|e| locate(py, NAME, &place, e))?;
                        stage.set(&key, amount, typed).map_err(at)?;
                    }
                    costing.stage(stage).map_err(at)?;
                }
            }
            "pieces" => {
                for (name, (amount, typed)) in by_name(&value, NAME, "pieces", Kind::Mass)? {
                    costing.piece(&name, amount, typed).map_err(at)?;
                }
            }
            _ => {
                let kind = Costing::said(&key).map_err(at)?.kind;
                let (amount, typed) =
                    one_figure(&value, kind).map_err(|e| locate(py, NAME, &key, e))?;
                costing.set(&key, amount, typed).map_err(at)?;
            }
        }
    }
    Particulars::hand_over(py, costing.work().map_err(|e| e.at(NAME)))
}

/// Figures of a kind by name.
fn by_name(
    value: &Bound<'_, PyAny>,
    of: &str,
    what: &str,
    kind: Kind,
) -> PyResult<Vec<(String, Figure)>> {
    let Ok(value) = value.cast::<PyDict>() else {
        return Err(NotationError::new_err(format!(
            "{of}, {what}: a dictionary is wanted, such as {{'card': '{}'}}, not {}",
            kind.example(),
            value.repr()?
        )));
    };
    let one = |(name, figure): (Bound<'_, PyAny>, Bound<'_, PyAny>)| {
        let name: String = name.extract().map_err(|_| {
            NotationError::new_err(format!(
                "{of}, {what}: a name is wanted, such as 'card', not {}",
                crate::columns::shown(&name)
            ))
        })?;
        let figure = one_figure(&figure, kind)
            .map_err(|e| locate(value.py(), of, &format!("{what}, {name}"), e))?;
        Ok((name, figure))
    };
    value.iter().map(one).collect()
}

/// compare_tariffs(*, greasy, yields, per_greasy=None, per_clean=None, per_finished=None,
///     clean_yield=None, minimum=None, rejects=None, free_rejects=None, per_reject=None)
/// --
///
/// What a commission mill charges by the kilogram sent in, clean or finished, for one lot.
///
/// `yields` is finished for greasy: one figure, or low and high, or low, likely and high. The yield at
/// which two tariffs charge alike is `equal_yield` (and `equal_yield_to_clean`). `minimum` is the
/// least charge for a lot. `rejects` beyond `free_rejects` (15 %, one mill's rule) are charged at
/// `per_reject` whichever the tariff.
///
/// >>> import hankwise as hw
/// >>> charge = hw.mill.compare_tariffs(greasy="80 kg", yields=["45 %", "60 %"],
/// ...                                  per_greasy="11 /kg", per_finished="20 /kg")
/// >>> charge["by_greasy"], charge["by_finished_high"], charge["equal_yield"]
/// (<money: 880>, <money: 960>, <yield: 55 %>)
#[pyfunction]
#[pyo3(
    signature = (**given),
    text_signature = "(*, greasy, yields, per_greasy=None, per_clean=None, per_finished=None, clean_yield=None, minimum=None, rejects=None, free_rejects=None, per_reject=None)"
)]
pub(crate) fn compare_tariffs(
    py: Python<'_>,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    const NAME: &str = "compare_tariffs";
    let at = |e: hankwise::Error| raise(&e.at(NAME));
    let mut tariffs = Tariffs::new();
    for (key, value) in given.into_iter().flat_map(pyo3::types::PyDictMethods::iter) {
        let key: String = key.extract()?;
        if value.is_none() {
            continue;
        }
        let figure = |value: &Bound<'_, PyAny>, kind| {
            one_figure(value, kind).map_err(|e| locate(py, NAME, &key, e))
        };
        if key == "yields" {
            let yields = if is_row(&value) {
                value.try_iter()?.map(|one| figure(&one?, Kind::Yield)).collect::<PyResult<_>>()?
            } else {
                vec![figure(&value, Kind::Yield)?]
            };
            tariffs.set_yields(yields).map_err(at)?;
        } else {
            let kind = Tariffs::said(&key).map_err(at)?.kind;
            let (amount, typed) = figure(&value, kind)?;
            tariffs.set(&key, amount, typed).map_err(at)?;
        }
    }
    Particulars::hand_over(py, tariffs.compare().map_err(|e| e.at(NAME)))
}

/// What went into a stage against what came out. Made by `hankwise.mill.balance`.
#[pyclass(frozen, module = "hankwise")]
pub(crate) struct Balance {
    balance: mill::Balance,
}

/// balance(into, out)
/// --
///
/// What went into a stage against what came out of it, and whether the gap is more than half of each
/// last digit can make.
///
/// Masses are texts as they were written down, for their last digit says how finely they were weighed.
///
/// >>> import hankwise as hw
/// >>> combing = hw.mill.balance("1.7 lb", ["673 g", "109 g"])
/// >>> combing.closes, combing.gap
/// (True, 0.010892971)
#[pyfunction]
#[pyo3(signature = (into, out), text_signature = "(into, out)")]
pub(crate) fn balance(into: &Bound<'_, PyAny>, out: &Bound<'_, PyAny>) -> PyResult<Balance> {
    // One thing that came out may stand alone.
    let out =
        if is_row(out) { out.try_iter()?.collect::<PyResult<_>>()? } else { vec![out.clone()] };
    let into = written(into, "into")?;
    let out = out.iter().map(|one| written(one, "out")).collect::<PyResult<Vec<_>>>()?;
    let out: Vec<&str> = out.iter().map(String::as_str).collect();
    let balance = mill::balance(&into, &out).map_err(|e| raise(&e.at("balance")))?;
    Ok(Balance { balance })
}

/// A mass as it was written down; a number has lost how finely it was weighed.
fn written(value: &Bound<'_, PyAny>, name: &str) -> PyResult<String> {
    if let Ok(text) = value.cast::<PyString>() {
        return Ok(text.to_string_lossy().into_owned());
    }
    let typed = value.cast::<Quantity>().ok().and_then(|q| q.get().text.clone());
    typed.ok_or_else(|| {
        NotationError::new_err(format!(
            "balance, {name}: a mass is wanted as it was written down, such as '673 g', for its last \
             digit says how finely it was weighed; not {}",
            crate::columns::shown(value)
        ))
    })
}

/// Kilograms without the noise of binary arithmetic below a microgram.
fn tidy(kg: f64) -> f64 {
    (kg * 1e9).round() / 1e9
}

#[pymethods]
impl Balance {
    /// What came out less what went in, in kg; negative where some is missing.
    #[getter]
    fn gap(&self) -> f64 {
        tidy(self.balance.gap())
    }
    /// The largest gap that half of each last digit can make, in kg.
    #[getter]
    fn reading(&self) -> f64 {
        tidy(self.balance.reading())
    }
    /// True where the gap is no more than the readings can make.
    #[getter]
    fn closes(&self) -> bool {
        self.balance.closes()
    }
    fn __repr__(&self) -> String {
        self.balance.report().text().trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.balance.report().html()
    }
}

/// What a planned lot costs. Made by `PlanResult.cost`.
#[pyclass(frozen, module = "hankwise")]
pub(crate) struct LotCost {
    cost: hankwise::plan::LotCost,
}

/// Reads the rates and works the cost out; see `PlanResult.cost`.
pub(crate) fn cost_of(result: &PlanResult, given: Option<&Bound<'_, PyDict>>) -> PyResult<LotCost> {
    const NAME: &str = "cost";
    let mut rates = Rates::default();
    let (mut wool, mut margin, mut mark_up) = (None, None, None);
    for (key, value) in given.into_iter().flat_map(pyo3::types::PyDictMethods::iter) {
        let key: String = key.extract()?;
        if value.is_none() {
            continue;
        }
        let one = |kind: Kind| -> PyResult<f64> {
            let (amount, _) =
                one_figure(&value, kind).map_err(|e| locate(value.py(), NAME, &key, e))?;
            kind.check(amount.base()).map_err(|e| raise(&e.at(format!("{NAME}, {key}"))))?;
            Ok(amount.base())
        };
        let map = |kind: Kind| -> PyResult<BTreeMap<String, f64>> {
            let all = by_name(&value, NAME, &key, kind)?;
            Ok(all.into_iter().map(|(name, (amount, _))| (name, amount.base())).collect())
        };
        match key.as_str() {
            "wool" => wool = Some(one(Kind::CostPerMass)?),
            "hourly" => rates.hourly = map(Kind::Money)?,
            "per_kg" => rates.per_kg = map(Kind::CostPerMass)?,
            "once" => rates.once = map(Kind::Money)?,
            "hours" => rates.hours = map(Kind::Duration)?,
            "people" => rates.people = map(Kind::Count)?,
            "overhead" => rates.overhead = Some(one(Kind::MarkUp)?),
            "hourly_overhead" => rates.hourly_overhead = Some(one(Kind::Money)?),
            "wage" => rates.wage = Some(one(Kind::Money)?),
            "margin" => margin = Some(one(Kind::Margin)?),
            "mark_up" => mark_up = Some(one(Kind::MarkUp)?),
            _ => {
                const KNOWN: [&str; 11] = [
                    "wool",
                    "hourly",
                    "per_kg",
                    "once",
                    "hours",
                    "people",
                    "wage",
                    "overhead",
                    "hourly_overhead",
                    "margin",
                    "mark_up",
                ];
                return Err(raise(&hankwise::Error::no_such(&key, &KNOWN).at(NAME)));
            }
        }
    }
    rates.wool = wool.ok_or_else(|| {
        NotationError::new_err(
            "cost: wool is missing: the price of a kilogram greasy, such as wool='4.20 /kg'; '0 /kg' for \
             an owner's own",
        )
    })?;
    rates.selling = match (margin, mark_up) {
        (Some(_), Some(_)) => {
            return Err(NotationError::new_err(
                "cost: a margin is on the price and a mark-up on the cost; give one of them",
            ));
        }
        (margin, mark_up) => margin.map(Selling::Margin).or(mark_up.map(Selling::MarkUp)),
    };
    let cost = result.result.cost(&rates).map_err(|e| raise(&e.at(NAME)))?;
    Ok(LotCost { cost })
}

fn money(py: Python<'_>, x: f64) -> Quantity {
    let unit = base_unit(Kind::Money);
    Quantity::scalar(py, x, unit, Kind::Money)
}

#[pymethods]
impl LotCost {
    /// The whole cost of the lot.
    #[getter]
    fn whole(&self, py: Python<'_>) -> Quantity {
        money(py, self.cost.whole)
    }
    /// The share of the joint cost in yarn that is left over.
    #[getter]
    fn left_over(&self, py: Python<'_>) -> Quantity {
        money(py, self.cost.left_over)
    }
    /// What each stage costs: stage, what is paid for, the good whose own it is, hours, cost.
    #[getter]
    fn lines(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for line in &self.cost.lines {
            let row = PyDict::new(py);
            row.set_item("stage", &line.place)?;
            row.set_item("what", line.what)?;
            row.set_item("good", &line.good)?;
            row.set_item("hours", line.hours)?;
            row.set_item("cost", line.cost)?;
            rows.push(row);
        }
        let mut report = self.cost.report();
        report.blocks.drain(..1);
        Ok(Table::showing(PyList::new(py, rows)?, report))
    }
    /// What the goods cost: pieces, joint and own cost, cost and price of a piece.
    #[getter]
    fn goods(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for good in &self.cost.goods {
            let row = PyDict::new(py);
            row.set_item("name", &good.name)?;
            row.set_item("made", good.made)?;
            row.set_item("fibre", good.fibre)?;
            row.set_item("joint", good.joint)?;
            row.set_item("own", good.own)?;
            row.set_item("whole", good.whole())?;
            row.set_item("each", good.each)?;
            row.set_item("price", good.price)?;
            rows.push(row);
        }
        let mut report = self.cost.report();
        report.blocks.truncate(1);
        Ok(Table::showing(PyList::new(py, rows)?, report))
    }
    /// Hours of people by machine, where people were given.
    #[getter]
    fn person_hours(&self) -> BTreeMap<String, f64> {
        let mut all = BTreeMap::new();
        for (place, hours) in &self.cost.person_hours {
            *all.entry(place.clone()).or_insert(0.0) += hours;
        }
        all
    }
    fn __repr__(&self) -> String {
        self.cost.report().text().trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.cost.report().html()
    }
}
