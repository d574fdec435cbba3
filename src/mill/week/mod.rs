//! A week of lots over the machines: the order, when each lot is at each machine, what does not fit.
//!
//! Lots pass every machine in one order. A lot starts at a machine once it has left the one before
//! and the machine is free and cleaned. The clock of all machines starts together and runs in
//! working hours.

mod order;
mod shade;
mod tell;

use std::collections::BTreeSet;

pub use order::Order;
use shade::same;
pub use shade::{SHADES, doubts, lightness};

use crate::error::{Error, Result, did_you_mean};
use crate::quantity::Kind;

/// A machine of the week, times in hours.
#[derive(Clone, Debug)]
pub struct Machine {
    /// Its name.
    pub name: String,
    /// Hours that it can run in the week.
    pub hours: f64,
    /// Cleaning between two colours, where nothing below says otherwise.
    pub clean_down: f64,
    /// Cleaning before a darker colour.
    pub to_darker: Option<f64>,
    /// Cleaning before a lighter colour.
    pub to_lighter: Option<f64>,
    /// Cleaning from one colour to another: first, second, hours. Stands before the others.
    pub from_to: Vec<(String, String, f64)>,
    /// The colour that is on it when the week begins, and how light that is.
    pub colour: Option<(String, f64)>,
    /// People at it while it runs.
    pub people: Option<f64>,
}

impl Machine {
    /// A machine that is clean when the week begins and needs no cleaning.
    pub fn new(name: &str, hours: f64) -> Machine {
        Machine {
            name: name.to_owned(),
            hours,
            clean_down: 0.0,
            to_darker: None,
            to_lighter: None,
            from_to: Vec::new(),
            colour: None,
            people: None,
        }
    }

    /// Hours of cleaning from a colour to another, each with its lightness.
    fn cleaning(&self, (old, was): (&str, f64), (new, is): (&str, f64)) -> f64 {
        if same(old, new) {
            return 0.0;
        }
        if let Some((_, _, hours)) =
            self.from_to.iter().find(|(a, b, _)| same(a, old) && same(b, new))
        {
            return *hours;
        }
        let (darker, lighter) =
            (self.to_darker.unwrap_or(self.clean_down), self.to_lighter.unwrap_or(self.clean_down));
        match is.total_cmp(&was) {
            std::cmp::Ordering::Less => darker,
            std::cmp::Ordering::Greater => lighter,
            // Two colours as light as each other: the longer cleaning is the safe one.
            std::cmp::Ordering::Equal => darker.max(lighter),
        }
    }
}

/// A lot of the week.
#[derive(Clone, Debug)]
pub struct Lot {
    /// Its name.
    pub name: String,
    /// Its colour: lots of one colour need no cleaning between them.
    pub colour: String,
    /// How light it is, from 0 for black to 100 for white.
    pub lightness: f64,
    /// The machines in the order in which the lot goes over them, and its hours at each.
    pub hours: Vec<(String, f64)>,
}

/// A lot at a machine, in hours from the beginning of the week.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Visit {
    /// The lot: its place in [`Week::lots`].
    pub lot: usize,
    /// The machine: its place in [`Week::machines`].
    pub machine: usize,
    /// When its cleaning begins.
    pub clean_from: f64,
    /// How long it is cleaned before the lot.
    pub cleaned: f64,
    /// When the lot starts.
    pub start: f64,
    /// When it leaves.
    pub finish: f64,
}

/// A machine's week.
#[derive(Clone, Debug)]
pub struct MachineWeek {
    /// Its name.
    pub name: String,
    /// Hours that it can run.
    pub hours: f64,
    /// Hours of work.
    pub work: f64,
    /// Hours of cleaning.
    pub cleaned: f64,
    /// When the last lot leaves it.
    pub finish: f64,
    /// Hours of people, where they were given.
    pub person_hours: Option<f64>,
}

impl MachineWeek {
    /// Work as a share of the hours that it can run.
    pub fn at_work(&self) -> f64 {
        self.work / self.hours
    }
    /// Work and cleaning as a share of the hours that it can run.
    pub fn taken(&self) -> f64 {
        (self.work + self.cleaned) / self.hours
    }
    /// How many hours it runs beyond the week.
    pub fn beyond(&self) -> f64 {
        (self.finish - self.hours).max(0.0)
    }
}

/// The lots of a week over the machines.
#[derive(Clone, Debug)]
pub struct Week {
    /// The lots in the order in which they are run.
    pub lots: Vec<Lot>,
    /// The machines.
    pub machines: Vec<MachineWeek>,
    /// Each lot at each machine, lot by lot.
    pub visits: Vec<Visit>,
    /// How they were put in order.
    pub order: Order,
    /// How many orders were tried, where orders were tried.
    pub tried: Option<usize>,
}

/// Hours that only rounding makes.
const ROUNDING: f64 = 1e-9;

impl Week {
    /// When the last lot leaves the last machine.
    pub fn finish(&self) -> f64 {
        self.visits.iter().map(|v| v.finish).fold(0.0, f64::max)
    }
    /// The machine that is taken up most for its hours.
    pub fn bottleneck(&self) -> &MachineWeek {
        let all = &self.machines;
        // The first of several; a week has a machine.
        all.iter().fold(&all[0], |most, m| if m.taken() > most.taken() { m } else { most })
    }
    /// What does not fit: the lot at a machine, and by how many hours it runs beyond the week.
    pub fn beyond(&self) -> Vec<(&Visit, f64)> {
        let over = |v: &Visit| v.finish - self.machines[v.machine].hours;
        self.visits.iter().map(|v| (v, over(v))).filter(|(_, over)| *over > ROUNDING).collect()
    }
}

/// Puts the lots of a week over the machines in one order.
///
/// With `try_orders` every order of lots as light as each other is tried; the one kept runs least
/// beyond the week, then ends first. `go_on` is asked now and then whether to go on.
///
/// ```
/// use hankwise::mill::{Lot, Machine, Order, lightness, week};
///
/// let card = Machine { clean_down: 2.0, ..Machine::new("card", 40.0) };
/// let lot = |name: &str, colour: &str, hours| Lot {
///     name: name.to_owned(),
///     colour: colour.to_owned(),
///     lightness: lightness(colour).unwrap(),
///     hours: vec![("card".to_owned(), hours)],
/// };
/// let lots = [lot("Elm", "black", 10.0), lot("Ash", "white", 6.0)];
/// let week = week(&lots, &[card], Order::LightToDark, false, &mut || true)?;
/// assert_eq!((week.lots[0].name.as_str(), week.finish()), ("Ash", 18.0));
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn week(
    lots: &[Lot],
    machines: &[Machine],
    order: Order,
    try_orders: bool,
    go_on: &mut dyn FnMut() -> bool,
) -> Result<Week> {
    check(lots, machines)?;
    let places = |lot: &Lot| {
        let place = |name: &str| machines.iter().position(|m| m.name == name).unwrap_or(0);
        lot.hours.iter().map(|(name, hours)| (place(name), *hours)).collect::<Vec<_>>()
    };
    let routes: Vec<Vec<(usize, f64)>> = lots.iter().map(places).collect();
    let floor = Floor { lots, machines, routes };
    let first = order::sorted(lots, order);
    let (sequence, tried) = if try_orders {
        let (best, tried) = order::best(&floor, first, go_on)?;
        (best, Some(tried))
    } else {
        (first, None)
    };
    let visits = floor.run(&sequence);
    let machines = machines.iter().enumerate().map(|(k, m)| m.week(k, &visits)).collect();
    let lots = sequence.iter().map(|k| lots[*k].clone()).collect();
    Ok(Week { lots, machines, visits, order, tried })
}

impl Machine {
    fn week(&self, place: usize, visits: &[Visit]) -> MachineWeek {
        let here = || visits.iter().filter(move |v| v.machine == place);
        let work: f64 = here().map(|v| v.finish - v.start).sum();
        MachineWeek {
            name: self.name.clone(),
            hours: self.hours,
            work,
            cleaned: here().map(|v| v.cleaned).sum(),
            finish: here().map(|v| v.finish).fold(0.0, f64::max),
            person_hours: self.people.map(|p| {
                let (time, people) = (crate::quantity::Duration::base(work), p);
                super::person_hours(time, crate::quantity::Count::base(people)).value()
            }),
        }
    }
}

/// The lots, the machines, and each lot's way over them by the places of the machines.
struct Floor<'a> {
    lots: &'a [Lot],
    machines: &'a [Machine],
    routes: Vec<Vec<(usize, f64)>>,
}

impl Floor<'_> {
    /// The lots over the machines in an order; visits name lots by their place in that order.
    fn run(&self, sequence: &[usize]) -> Vec<Visit> {
        let mut free: Vec<f64> = vec![0.0; self.machines.len()];
        let mut on: Vec<Option<(&str, f64)>> = self
            .machines
            .iter()
            .map(|m| m.colour.as_ref().map(|(colour, light)| (colour.as_str(), *light)))
            .collect();
        let mut visits = Vec::new();
        for (place, lot) in sequence.iter().enumerate() {
            let (route, lot) = (&self.routes[*lot], &self.lots[*lot]);
            let new = (lot.colour.as_str(), lot.lightness);
            let mut ready = 0.0_f64;
            for (machine, hours) in route {
                let cleaned =
                    on[*machine].map_or(0.0, |old| self.machines[*machine].cleaning(old, new));
                let clean_from = free[*machine];
                let start = ready.max(clean_from + cleaned);
                let finish = start + hours;
                visits.push(Visit {
                    lot: place,
                    machine: *machine,
                    clean_from,
                    cleaned,
                    start,
                    finish,
                });
                (ready, free[*machine], on[*machine]) = (finish, finish, Some(new));
            }
        }
        visits
    }

    /// How far an order runs beyond the week, all machines together, and when it ends.
    fn cost(&self, sequence: &[usize]) -> (f64, f64) {
        let mut last = vec![0.0_f64; self.machines.len()];
        for visit in self.run(sequence) {
            last[visit.machine] = visit.finish;
        }
        let beyond = last.iter().zip(self.machines).map(|(t, m)| (t - m.hours).max(0.0)).sum();
        (beyond, last.iter().copied().fold(0.0, f64::max))
    }
}

/// Refuses what cannot be run.
fn check(lots: &[Lot], machines: &[Machine]) -> Result<()> {
    let hours = |place: String, hours: f64| Kind::Duration.check(hours).map_err(|e| e.at(place));
    let mut names = BTreeSet::new();
    for machine in machines {
        let name = &machine.name;
        if name.trim().is_empty() {
            return Err(Error::notation("a machine has no name; write one, such as 'card'"));
        }
        hours(format!("{name}, hours"), machine.hours)?;
        if machine.hours <= 0.0 {
            return Err(Error::range(format!(
                "{name}, hours: a machine of the week runs; give more than 0 h"
            )));
        }
        let cleanings = [Some(machine.clean_down), machine.to_darker, machine.to_lighter];
        for time in cleanings.into_iter().flatten().chain(machine.from_to.iter().map(|c| c.2)) {
            hours(format!("{name}, cleaning"), time)?;
        }
        if let Some(people) = machine.people {
            Kind::Count.check(people).map_err(|e| e.at(format!("{name}, people")))?;
        }
        if !names.insert(name.as_str()) {
            return Err(Error::notation(format!("the machine '{name}' is given twice")));
        }
    }
    if machines.is_empty() {
        return Err(Error::notation("no machine is given; give one such as 'card' with its hours"));
    }
    if lots.is_empty() {
        return Err(Error::notation("no lot is given; give one with its name, colour and hours"));
    }
    let mut lots_named = BTreeSet::new();
    for lot in lots {
        let name = &lot.name;
        if name.trim().is_empty() {
            return Err(Error::notation("a lot has no name; write one, such as 'name': 'Ash'"));
        }
        if !lots_named.insert(name.as_str()) {
            return Err(Error::notation(format!(
                "the lot '{name}' is given twice; call them '{name} 1' and '{name} 2'"
            )));
        }
        if !(0.0..=100.0).contains(&lot.lightness) {
            return Err(Error::range(format!(
                "{name}, lightness: {} is not possible; write a number from 0 for black to 100 for white",
                lot.lightness
            )));
        }
        if lot.hours.is_empty() {
            return Err(Error::notation(format!(
                "{name}, hours: the lot is at no machine; write 'hours': {{'{}': '3 h'}}",
                machines[0].name
            )));
        }
        let mut seen = BTreeSet::new();
        for (machine, time) in &lot.hours {
            if !names.contains(machine.as_str()) {
                let near = did_you_mean(machine, names.iter().copied())
                    .map_or_else(String::new, |n| format!("; did you mean '{n}'?"));
                let all = names.iter().copied().collect::<Vec<_>>().join(", ");
                return Err(Error::notation(format!(
                    "{name}, hours: there is no machine '{machine}'{near}; there are {all}"
                )));
            }
            if !seen.insert(machine) {
                return Err(Error::notation(format!("{name}, hours: '{machine}' is given twice")));
            }
            hours(format!("{name}, {machine}"), *time)?;
        }
    }
    Ok(())
}
