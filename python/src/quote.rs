//! Quotations.

use hankwise::plan::{self, Terms};
use hankwise::quantity::Kind;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::attributes::{attributes, dict};
use crate::errors::OrRaise;
use crate::inputs::single;
use crate::plan::Plan;
use crate::result::{PlanResult, Table, table};

/// What the mill charges for a lot by its tariffs, what the lot costs the mill, and which lots pay.
///
/// Shows itself as tables. Money is in the mill's own currency; taxes on sales are not included.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Quote {
    made: plan::Quote,
    /// What it was made from: the plan, the number of simulated lots, their seed.
    plan: Py<Plan>,
    asked: (usize, u64),
}

/// What a pickle keeps: the plan, the number of simulated lots and their seed, what was asked.
type State = (Py<Plan>, usize, u64, Option<f64>, Option<f64>);

impl Quote {
    /// The quotation of a result.
    pub(crate) fn of(
        py: Python<'_>,
        of: &PlanResult,
        margin: Option<&Bound<'_, PyAny>>,
        price: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Quote> {
        let read = |value: Option<&Bound<'_, PyAny>>, name, kind| {
            let value = value.map(|value| single(value, "quote", name, kind)).transpose()?;
            PyResult::Ok(value.map(|amount| amount.base()))
        };
        let margin = read(margin, "margin", Kind::Margin)?;
        let terms = Terms { margin, price: read(price, "price", Kind::Money)? };
        let plan = Py::new(py, Plan { plan: of.plan.clone() })?;
        let made = py.detach(|| of.result.quote(&terms)).or_raise()?;
        Ok(Quote { made, plan, asked: of.asked })
    }
}

attributes! {
    Quote, self, py, shown as self.made.report();
    {
        /// Name of the lot.
        name: &str = &self.made.name;
        /// The currency, as the mill writes it; may be empty.
        money: &str = &self.made.money;
        /// The lines together.
        sum: f64 = self.made.sum;
        /// The least charge for a lot; None where the mill has none.
        minimum_charge: Option<f64> = self.made.minimum_charge;
        /// True where the minimum charge is more than the lines.
        minimum_applies: bool = self.made.minimum_applies;
        /// What the lot is charged, with the planned values.
        price: f64 = self.made.price;
        /// Why there is no range of the price; None where there is one.
        planned_only: Option<&str> = self.made.planned_only.as_deref();
        /// Greasy mass taken in, kg.
        greasy_mass: f64 = self.made.greasy_mass;
        /// Mass of all finished goods as sold, kg.
        finished_mass: f64 = self.made.finished_mass;
        /// Price for a greasy kilogram.
        price_per_greasy_kg: f64 = self.made.price_per_greasy_kg;
        /// Price for a finished kilogram; None where nothing is made.
        price_per_finished_kg: Option<f64> = self.made.price_per_finished_kg;
        /// Share of the joint charge in yarn that is left over.
        left_over: f64 = self.made.left_over;
        /// What the lot costs the mill; None where the mill does not say so.
        cost: Option<f64> = self.made.cost;
        /// What that leaves, as a share of the price; less than 0 where the lot costs more.
        margin: Option<f64> = self.made.margin;
        /// The price that leaves the wanted margin; None where none was asked.
        price_for_margin: Option<f64> = self.made.price_for_margin;
        /// The margin that the price asked about leaves; None where none was asked.
        margin_of_price: Option<f64> = self.made.margin_of_price;
    }

    /// The price, planned, and its low, middle and high over the simulated lots.
    #[getter]
    fn price_over_lots<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let row = PyDict::new(py);
        crate::result::put(&row, self.made.price, self.made.band)?;
        Ok(row)
    }
    /// What is charged: the stage, the goods at their own machines, what is charged for, how much of it at
    /// which rate.
    #[getter]
    fn lines(&self, py: Python<'_>) -> PyResult<Table> {
        table(self.rows(py)?, py, &["stage", "basis", "quantity", "unit", "rate", "amount"])
    }
    /// The stages that are not priced, and why.
    #[getter]
    fn not_priced(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for (stage, why) in &self.made.not_priced {
            rows.push(dict!(py, { "stage": stage, "why": why }));
        }
        table(rows, py, &["stage", "why"])
    }
    /// What the goods bear of the price: their share of what is charged up to the yarn, by clean dry fibre,
    /// and what their own machines are charged.
    #[getter]
    fn goods(&self, py: Python<'_>) -> PyResult<Table> {
        let mut rows = Vec::new();
        for good in &self.made.goods {
            rows.push(dict!(py, {
                "name": &good.name,
                "pieces": good.pieces,
                "finished_mass": good.finished_mass,
                "joint_share": good.joint_share,
                "own": good.own,
                "price": good.price,
                "price_per_piece": good.price_per_piece,
            }));
        }
        let shown = ["name", "pieces", "finished_mass", "joint_share", "own", "price", "price_per_piece"];
        table(rows, py, &shown)
    }
    /// The lots that pay: `greasy_mass` from which on they do, in kg (0 where all do, None where none does up
    /// to `tried`); `small_lots_to`, up to which the minimum charge pays too. None without a cost.
    #[getter]
    fn pays_from<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyDict>>> {
        let Some(pays) = &self.made.pays_from else { return Ok(None) };
        Ok(Some(dict!(py, {
            "greasy_mass": pays.greasy_mass,
            "small_lots_to": pays.small_lots_to,
            "tried": pays.tried,
        })))
    }
    /// The lines as a pandas table.
    fn to_frame<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        py.import("pandas")?.getattr("DataFrame")?.call1((self.rows(py)?,))
    }
    /// The quotation as JSON text for other programs.
    fn to_json(&self) -> String {
        format!("{:#}", self.made.to_json())
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, State)> {
        let again = py.import("hankwise._hankwise")?.getattr("Quote")?.getattr("_again")?;
        let (lots, seed) = self.asked;
        let Terms { margin, price } = self.made.terms;
        Ok((again, (self.plan.clone_ref(py), lots, seed, margin, price)))
    }
    /// A pickled quotation: the same from the same plan, lots and seed.
    #[staticmethod]
    fn _again(
        py: Python<'_>,
        plan: Py<Plan>,
        lots: usize,
        seed: u64,
        margin: Option<f64>,
        price: Option<f64>,
    ) -> PyResult<Quote> {
        let of = plan.get().plan.clone();
        let run = plan::Run { lots, seed, threads: crate::plan::cores() };
        let made = py.detach(|| of.run(&run)?.quote(&Terms { margin, price })).or_raise()?;
        Ok(Quote { made, plan, asked: (lots, seed) })
    }
}

impl Quote {
    fn rows<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let row = |line: &plan::QuoteLine| {
            Ok(dict!(py, {
                "stage": &line.stage,
                "good": &line.good,
                "basis": line.basis,
                "unit": line.unit,
                "quantity": line.quantity,
                "rate": line.rate,
                "amount": line.amount,
            }))
        };
        self.made.lines.iter().map(row).collect()
    }
}
