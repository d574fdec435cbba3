//! What a planned lot costs: the plan's hours and masses, with what is paid for them.

use super::result::PlanResult;
use crate::calculation::{Given, Solved, Value};
use crate::error::{Error, Result, did_you_mean};
use crate::mill;
use crate::quantity::print::default_unit;
use crate::quantity::{Amount, Kind};

/// Stages after the yarn, and whether woven goods go over them, or those in hanks.
const OWN: [(&str, bool); 4] = [("reel", false), ("cone", true), ("loom", true), ("finish", true)];

/// A value of the plan, in the base unit.
fn value(base: f64, kind: Kind) -> Value {
    let unit = default_unit(kind);
    Value::One(Amount { number: unit.from_base(base), unit }, None)
}

/// The name of a row.
fn name(row: &Given) -> &str {
    match row.value("name") {
        Some(Value::Text(name)) => name,
        _ => "",
    }
}

impl PlanResult {
    /// What the lot costs, stage by stage and goods by goods, with the planned values: the calculation
    /// [`lot_cost`](mill::lot_cost), whose masses and hours come from the plan.
    ///
    /// `rates` are the prices: `price_per_mass`, wage, overhead, margin or mark-up, and in `stages` what is
    /// paid at each stage, whether it is before the yarn or after it (reel, cone, loom, finish).
    ///
    /// ```
    /// use hankwise::mill;
    /// use hankwise::plan::{Plan, Run};
    ///
    /// let plan = Plan::load("examples/first-lot.toml".as_ref())?;
    /// let result = plan.run(&Run::planned())?;
    /// let rates = mill::LOT_COST.blank().with_texts(&[("price_per_mass", "4.20 /kg")])?;
    /// let rates = rates.with_row("stages", &[("name", "card"), ("hourly_cost", "18")])?;
    /// let cost = result.cost(&rates)?;
    /// assert!((cost.find("greasy_cost")?.value - 80.0 * 4.20).abs() < 1e-9);
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    pub fn cost(&self, rates: &Given) -> Result<Solved> {
        mill::LOT_COST.solve(self.cost_inputs(rates)?)
    }

    /// What [`PlanResult::cost`] asks [`lot_cost`](mill::lot_cost): the prices, with the masses and hours of
    /// the plan.
    pub fn cost_inputs(&self, rates: &Given) -> Result<Given> {
        let mut given = mill::LOT_COST.blank();
        let mut paid: Vec<Given> = Vec::new();
        for (name, value) in rates.values() {
            match value {
                Value::Rows(rows) if name == "stages" => paid.clone_from(rows),
                value => given.set(name, value.clone())?,
            }
        }
        let state = self.stages.last().map_or(1.0, |s| s.stock.total() / s.stock.fibre);
        let left_over = self.base("promise", "left_over").unwrap_or(0.0);
        for (name, base, kind) in [
            ("greasy_mass", self.intake.0, Kind::Mass),
            ("left_over", left_over, Kind::Mass),
            ("state_ratio", state, Kind::Ratio),
        ] {
            given.set(name, value(base, kind))?;
        }
        if given.value("name").is_none() {
            given.set("name", Value::Text(self.name.clone()))?;
        }
        let own = self.own(&mut given)?;
        let known: Vec<&str> = self
            .stages
            .iter()
            .map(|stage| stage.name.as_str())
            .chain(own.iter().copied())
            .collect();
        for row in &paid {
            let name = name(row);
            if !known.contains(&name) {
                let near = did_you_mean(name, known.iter().copied())
                    .map_or_else(String::new, |n| format!("; did you mean '{n}'?"));
                return Err(Error::plan(format!(
                    "stages: this plan has no '{name}'{near}. Its stages: {}",
                    known.join(", ")
                )));
            }
        }
        self.pay(&mut given, &paid, &own)?;
        Ok(given)
    }

    /// Enters the stages with what is paid there; those after the yarn among the goods' own.
    fn pay(&self, given: &mut Given, paid: &[Given], own: &[&str]) -> Result<()> {
        let pay = |row: &mut Given, stage: &str| -> Result<()> {
            row.set("name", Value::Text(stage.to_owned()))?;
            for rates in paid.iter().filter(|rates| name(rates) == stage) {
                for (name, value) in rates.values().filter(|(name, _)| *name != "name") {
                    row.set(name, value.clone()).map_err(|e| e.at(stage))?;
                }
            }
            Ok(())
        };
        let mut mass = self.intake.0;
        for stage in &self.stages {
            let mut row = given.row("stages")?;
            row.set("mass_in", value(mass, Kind::Mass))?;
            if let Some(hours) = self.hours(&format!("{}.time", stage.name)) {
                row.set("time", value(hours, Kind::Duration))?;
            }
            pay(&mut row, &stage.name)?;
            given.add_row("stages", row)?;
            mass = stage.stock.total();
        }
        for stage in own {
            let mut row = given.row("own_stages")?;
            pay(&mut row, stage)?;
            given.add_row("own_stages", row)?;
        }
        Ok(())
    }

    /// Enters the goods, and gives the stages after the yarn that any of them go over.
    fn own(&self, given: &mut Given) -> Result<Vec<&'static str>> {
        let mut used = Vec::new();
        for good in &self.goods {
            let mut row = given.row("goods")?;
            row.set("name", Value::Text(good.name.clone()))?;
            let fibre = self.base(&good.name, "yarn").unwrap_or(0.0);
            row.set("fibre_mass", value(fibre, Kind::Mass))?;
            if good.planned > 0.5 {
                row.set("pieces", value(good.planned, Kind::Count))?;
            }
            let is_woven = self.base(&good.name, "once").is_some();
            for (stage, _) in OWN.iter().filter(|(_, woven)| *woven == is_woven) {
                let mut time = row.row("times")?;
                time.set("stage", Value::Text((*stage).to_owned()))?;
                // With several goods each has a name of its own.
                let own = self.hours(&format!("{stage}.{}.time", good.name));
                if let Some(hours) = own.or_else(|| self.hours(&format!("{stage}.time"))) {
                    time.set("time", value(hours, Kind::Duration))?;
                }
                row.add_row("times", time)?;
                if !used.contains(stage) {
                    used.push(stage);
                }
            }
            given.add_row("goods", row)?;
        }
        used.sort_by_key(|stage| OWN.iter().position(|(name, _)| name == stage));
        Ok(used)
    }

    /// A running time of the plan.
    fn hours(&self, key: &str) -> Option<f64> {
        let timed = |s: &&super::Setting| s.key == key && s.kind == Kind::Duration;
        self.settings.iter().find(timed).map(|s| s.value)
    }

    /// A value of the plan by its name.
    fn base(&self, of: &str, name: &str) -> Option<f64> {
        let recording = self.recording();
        let step = recording.find(&format!("{of}.{name}"))?;
        Some(recording.value(crate::worked::Arg::Step(step)))
    }
}
