//! What a planned lot costs: stage by stage, and good by good.
//!
//! Everything up to the yarn is a joint cost, shared by the clean dry fibre in the yarn that each
//! good takes; yarn left over carries its share. What comes after (reel, cone, loom, finish) is the
//! good's own.

use std::collections::BTreeMap;

use super::result::PlanResult;
use crate::error::{Error, Result, did_you_mean};
use crate::mill;
use crate::quantity::{CostPerMass, Count, Duration, Kind, Margin, MarkUp, Mass, Money};

/// Places after the split, and whether woven goods go there, or those in hanks.
const OWN: [(&str, bool); 4] = [("reel", false), ("cone", true), ("loom", true), ("finish", true)];

/// What things cost, by the names of the stages and machines.
#[derive(Clone, Debug, Default)]
pub struct Rates {
    /// Price of a kilogram of greasy wool.
    pub wool: f64,
    /// Cost of an hour of a machine.
    pub hourly: BTreeMap<String, f64>,
    /// Cost for a kilogram that goes in, as the scale reads it; after the split, for a kilogram of
    /// scoured yarn.
    pub per_kg: BTreeMap<String, f64>,
    /// Cost once for the lot.
    pub once: BTreeMap<String, f64>,
    /// Hours beyond the running time: cleaning, setting; or all hours of what has no running time.
    pub hours: BTreeMap<String, f64>,
    /// Overhead on the cost of the stages, as a share.
    pub overhead: Option<f64>,
    /// Overhead for an hour of every machine.
    pub hourly_overhead: Option<f64>,
    /// People at a machine.
    pub people: BTreeMap<String, f64>,
    /// Wage of a person for an hour.
    pub wage: Option<f64>,
    /// How goods are priced.
    pub selling: Option<Selling>,
}

/// How a price is made from a cost.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Selling {
    /// Margin on the price.
    Margin(f64),
    /// Mark-up on the cost.
    MarkUp(f64),
}

impl Selling {
    fn price(self, cost: f64) -> f64 {
        let cost = Money::base(cost);
        match self {
            Selling::Margin(share) => mill::price_at_margin(cost, Margin::base(share)).value(),
            Selling::MarkUp(share) => mill::price_at_mark_up(cost, MarkUp::base(share)).value(),
        }
    }
}

/// A line of the costs.
#[derive(Clone, Debug)]
pub struct CostLine {
    /// The stage or machine.
    pub place: String,
    /// What is paid for.
    pub what: &'static str,
    /// The good whose own cost it is; None for a joint cost.
    pub good: Option<String>,
    /// Hours of the machine or of people, where it is paid by the hour.
    pub hours: Option<f64>,
    /// What it comes to.
    pub cost: f64,
}

/// What a good costs.
#[derive(Clone, Debug)]
pub struct GoodCost {
    /// Its name.
    pub name: String,
    /// Whole pieces made.
    pub made: f64,
    /// Clean dry fibre in the yarn that it takes, kg.
    pub fibre: f64,
    /// Its share of the joint cost.
    pub joint: f64,
    /// Its own cost.
    pub own: f64,
    /// Cost of a piece; none where no piece is made.
    pub each: Option<f64>,
    /// Price of a piece, before tax.
    pub price: Option<f64>,
}

impl GoodCost {
    /// Its whole cost.
    pub fn whole(&self) -> f64 {
        self.joint + self.own
    }
}

/// What a planned lot costs, with the likely figures.
#[derive(Clone, Debug)]
pub struct LotCost {
    /// Name of the lot.
    pub name: String,
    /// Each cost, in the order of the route.
    pub lines: Vec<CostLine>,
    /// The goods.
    pub goods: Vec<GoodCost>,
    /// The share of the joint cost in yarn that is left over.
    pub left_over: f64,
    /// The whole cost.
    pub whole: f64,
    /// How goods are priced.
    pub selling: Option<Selling>,
    /// What was charged as overhead: on the stages, for an hour.
    pub overhead: (Option<f64>, Option<f64>),
    /// Hours of people at each place that has them.
    pub person_hours: Vec<(String, f64)>,
}

/// A place where cost arises, with its goods and its share of hours.
struct Place<'a> {
    name: &'a str,
    good: Option<&'a str>,
    /// Hours that it runs, where the plan has them.
    running: Option<f64>,
    /// What goes in, kg as the scale reads it.
    mass: f64,
    /// The part of what is given for the place that falls on this good.
    part: f64,
}

impl PlanResult {
    /// What the lot costs, stage by stage and good by good, with the likely figures.
    pub fn cost(&self, rates: &Rates) -> Result<LotCost> {
        let yarn: Vec<f64> = self.goods.iter().map(|g| self.base(&g.name, "yarn")).collect();
        let spare = self.base("promise", "spare");
        let places = self.places(&yarn);
        check(rates, &places)?;
        let mut lines = vec![CostLine {
            place: "intake".to_owned(),
            what: "wool",
            good: None,
            hours: None,
            cost: mill::cost_of_mass(Mass::base(self.greasy.0), CostPerMass::base(rates.wool))
                .value(),
        }];
        let mut person_hours = Vec::new();
        for place in &places {
            place.lines(rates, &mut lines, &mut person_hours)?;
        }
        let joint: f64 = lines.iter().filter(|l| l.good.is_none()).map(|l| l.cost).sum();
        let fibre: f64 = yarn.iter().sum::<f64>() + spare;
        if fibre.is_nan() || fibre <= 0.0 {
            return Err(Error::plan("nothing comes out of the lot, so nothing bears its cost"));
        }
        let share = |of: f64| {
            mill::cost_share(Money::base(joint), Mass::base(of), Mass::base(fibre)).value()
        };
        let goods = self.goods.iter().zip(&yarn).map(|(good, fibre)| {
            let own = lines.iter().filter(|l| l.good.as_ref() == Some(&good.name));
            let (joint, own) = (share(*fibre), own.map(|l| l.cost).sum::<f64>());
            let each = (good.made > 0.5).then(|| (joint + own) / good.made);
            GoodCost {
                name: good.name.clone(),
                made: good.made,
                fibre: *fibre,
                joint,
                own,
                each,
                price: rates.selling.and_then(|s| each.map(|e| s.price(e))),
            }
        });
        Ok(LotCost {
            name: self.name.clone(),
            goods: goods.collect(),
            left_over: share(spare),
            whole: lines.iter().map(|l| l.cost).sum(),
            lines,
            selling: rates.selling,
            overhead: (rates.overhead, rates.hourly_overhead),
            person_hours,
        })
    }

    /// A figure of the plan by its name; 0 where it has none.
    fn base(&self, of: &str, name: &str) -> f64 {
        let recording = self.recording();
        let found = recording.find(&format!("{of}.{name}"));
        found.map_or(0.0, |step| recording.value(crate::worked::Arg::Step(step)))
    }

    /// Where cost arises: the stages, then each good's own places.
    fn places(&self, yarn: &[f64]) -> Vec<Place<'_>> {
        let hours = |key: &str| {
            let timed = |s: &&super::Setting| s.key == key && s.kind == Kind::Duration;
            self.settings.iter().find(timed).map(|s| s.value)
        };
        let mut places = Vec::new();
        let mut mass = self.greasy.0;
        for stage in &self.stages {
            let running = hours(&format!("{}.time", stage.name));
            places.push(Place { name: &stage.name, good: None, running, mass, part: 1.0 });
            mass = stage.stock.total();
        }
        // Mass of scoured yarn for its clean dry fibre.
        let state = self.stages.last().map_or(1.0, |s| s.stock.total() / s.stock.fibre);
        let woven = |name: &str| self.recording().find(&format!("{name}.once")).is_some();
        for (name, is_woven) in OWN {
            let here = || self.goods.iter().zip(yarn).filter(|(g, _)| woven(&g.name) == is_woven);
            let (all, count): (f64, usize) = (here().map(|(_, y)| y).sum(), here().count());
            for (good, yarn) in here() {
                // With several goods each has a name of its own.
                let own = hours(&format!("{name}.{}.time", good.name));
                let running = own.or_else(|| hours(&format!("{name}.time")));
                let part = if all > 0.0 { yarn / all } else { 1.0 / count as f64 };
                let good = Some(good.name.as_str());
                places.push(Place { name, good, running, mass: yarn * state, part });
            }
        }
        places
    }
}

impl Place<'_> {
    /// The costs of the place.
    fn lines(
        &self,
        rates: &Rates,
        lines: &mut Vec<CostLine>,
        person_hours: &mut Vec<(String, f64)>,
    ) -> Result<()> {
        let extra = rates.hours.get(self.name).map(|h| h * self.part);
        let hours = match (self.running, extra) {
            (None, None) => None,
            (running, extra) => Some(running.unwrap_or(0.0) + extra.unwrap_or(0.0)),
        };
        let timed = |rate: f64, hours: f64| {
            mill::cost_of_time(Duration::base(hours), Money::base(rate)).value()
        };
        let mut add = |what, hours, cost| {
            let (place, good) = (self.name.to_owned(), self.good.map(str::to_owned));
            lines.push(CostLine { place, what, good, hours, cost });
            cost
        };
        let mut own = 0.0;
        if let Some(rate) = rates.hourly.get(self.name) {
            let hours = hours.ok_or_else(|| self.no_hours())?;
            own += add("machine", Some(hours), timed(*rate, hours));
        }
        if let Some(people) = rates.people.get(self.name) {
            let hours = hours.ok_or_else(|| self.no_hours())?;
            let hours = mill::person_hours(Duration::base(hours), Count::base(*people)).value();
            person_hours.push((self.name.to_owned(), hours));
            if let Some(wage) = rates.wage {
                own += add("people", Some(hours), timed(wage, hours));
            }
        }
        if let Some(price) = rates.per_kg.get(self.name) {
            let cost = mill::cost_of_mass(Mass::base(self.mass), CostPerMass::base(*price));
            own += add("by the kilogram", None, cost.value());
        }
        if let Some(once) = rates.once.get(self.name) {
            own += add("once for the lot", None, once * self.part);
        }
        if let Some(share) = rates.overhead
            && own > 0.0
        {
            add("overhead on the above", None, own * share);
        }
        if let (Some(rate), Some(hours)) = (rates.hourly_overhead, hours) {
            add("overhead by the hour", Some(hours), timed(rate, hours));
        }
        Ok(())
    }

    fn no_hours(&self) -> Error {
        Error::plan(format!(
            "the plan has no running time for {0}: give its hours, such as hours={{'{0}': '3 h'}}, or \
             its cost by the kilogram (per_kg) or for the lot (once)",
            self.name
        ))
    }
}

/// Refuses what names no place of the plan, and figures that cannot be.
fn check(rates: &Rates, places: &[Place<'_>]) -> Result<()> {
    let mut names: Vec<&str> = places.iter().map(|p| p.name).collect();
    names.dedup();
    let given = [
        ("hourly", &rates.hourly, Kind::Money),
        ("per_kg", &rates.per_kg, Kind::CostPerMass),
        ("once", &rates.once, Kind::Money),
        ("hours", &rates.hours, Kind::Duration),
        ("people", &rates.people, Kind::Count),
    ];
    for (what, map, kind) in given {
        for (name, value) in map {
            if !names.contains(&name.as_str()) {
                let near = did_you_mean(name, names.iter().copied())
                    .map_or_else(String::new, |n| format!("; did you mean '{n}'?"));
                return Err(Error::plan(format!(
                    "{what}: this plan has no '{name}'{near}; there are {}",
                    names.join(", ")
                )));
            }
            kind.check(*value).map_err(|e| e.at(format!("{what}, {name}")))?;
            if what == "hourly" && *value < 0.0 {
                return Err(mill::hour_costs(*value).at(format!("{what}, {name}")));
            }
        }
    }
    for (what, value) in [("wage", rates.wage), ("hourly_overhead", rates.hourly_overhead)] {
        if let Some(value) = value.filter(|v| *v < 0.0) {
            return Err(mill::hour_costs(value).at(what));
        }
    }
    if rates.wage.is_some() && rates.people.is_empty() {
        return Err(Error::plan(
            "a wage is given and nobody at a machine; write people={'card': 1} too",
        ));
    }
    Ok(())
}
