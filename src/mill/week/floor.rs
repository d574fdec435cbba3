//! The machines, and how lots pass over them.

use std::cmp::Ordering;

use super::shade::{lightness, same};
use super::{MachineWeek, WeekInputs, WeekMachine, beyond, latest};
use crate::mill::person_hours;
use crate::number::{Number, V};
use crate::quantity::{Duration, Fraction};

/// A colour and how light it is.
type Colour<'a, N> = (&'a str, V<N>);

/// The lots, the machines, and the way of each lot over the machines by their places.
pub(super) struct Floor<'a, N> {
    pub(super) given: &'a WeekInputs<N>,
    routes: Vec<Vec<(usize, V<N>)>>,
}

/// A lot at a machine, in hours from the start of the week.
#[derive(Clone, Copy)]
pub(super) struct Stay<N> {
    /// The place of the lot among those given.
    pub(super) lot: usize,
    pub(super) machine: usize,
    pub(super) clean_from: V<N>,
    pub(super) clean_time: V<N>,
    pub(super) start: V<N>,
    pub(super) finish: V<N>,
}

/// The lightness of a colour: as given, else that of a natural shade. An unknown colour gives NaN and is
/// refused.
fn light<N: Number>(colour: &str, given: Option<Fraction<N>>) -> V<N> {
    given.map_or_else(|| V::constant(lightness(colour).unwrap_or(f64::NAN)), Fraction::v)
}

impl<'a, N: Number> Floor<'a, N> {
    pub(super) fn of(given: &'a WeekInputs<N>) -> Floor<'a, N> {
        let place = |name: &str| given.machines.iter().position(|machine| machine.name == name);
        // A machine that there is not is refused.
        let routes = given.lots.iter().map(|lot| {
            let times = lot.times.iter();
            times.filter_map(|at| Some((place(&at.machine)?, at.time.v()))).collect()
        });
        Floor { given, routes: routes.collect() }
    }

    /// How light a lot is.
    pub(super) fn lightness(&self, lot: usize) -> Fraction<N> {
        let lot = &self.given.lots[lot];
        light(&lot.colour, lot.lightness).into()
    }

    /// The lots over the machines in an order.
    pub(super) fn run(&self, sequence: &[usize]) -> Vec<Stay<N>> {
        let WeekInputs { lots, machines, .. } = self.given;
        let mut free: Vec<V<N>> = vec![V::constant(0.0); machines.len()];
        let mut on: Vec<Option<Colour<'_, N>>> = machines
            .iter()
            .map(|m| m.colour.as_ref().map(|colour| (colour.as_str(), light(colour, m.lightness))))
            .collect();
        let mut stays = Vec::new();
        for lot in sequence {
            let new = (lots[*lot].colour.as_str(), self.lightness(*lot).v());
            let mut ready = V::constant(0.0);
            for (machine, time) in &self.routes[*lot] {
                let old = on[*machine];
                let clean_time =
                    old.map_or(V::constant(0.0), |old| machines[*machine].cleaning(old, new));
                let clean_from = free[*machine];
                let start = (clean_from + clean_time).max(ready);
                let finish = start + *time;
                let (lot, machine) = (*lot, *machine);
                stays.push(Stay { lot, machine, clean_from, clean_time, start, finish });
                (ready, free[machine], on[machine]) = (finish, finish, Some(new));
            }
        }
        stays
    }

    /// A machine's week.
    pub(super) fn machine(&self, place: usize, stays: &[Stay<N>]) -> MachineWeek<N> {
        let machine = &self.given.machines[place];
        let here = || stays.iter().filter(move |stay| stay.machine == place);
        let sum = |all: Option<V<N>>| all.unwrap_or(V::constant(0.0));
        let work = sum(here().map(|stay| stay.finish - stay.start).reduce(|a, b| a + b));
        let cleaning = sum(here().map(|stay| stay.clean_time).reduce(|a, b| a + b));
        let open = machine.open_time.v();
        let finish = latest(here().map(|stay| stay.finish));
        MachineWeek {
            name: machine.name.clone(),
            work_time: work.into(),
            cleaning_time: cleaning.into(),
            work_share: (work / open).into(),
            use_share: ((work + cleaning) / open).into(),
            finish,
            beyond: beyond(finish.v(), open).into(),
            person_hours: machine.people.map(|people| person_hours(Duration::from(work), people)),
        }
    }
}

impl Floor<'_, f64> {
    /// How far an order runs beyond the week, all machines together, and when it ends.
    pub(super) fn rate(&self, sequence: &[usize]) -> (f64, f64) {
        let machines = &self.given.machines;
        let mut last = vec![0.0_f64; machines.len()];
        for stay in self.run(sequence) {
            last[stay.machine] = stay.finish.value();
        }
        let over = last.iter().zip(machines).map(|(t, m)| (t - m.open_time.value()).max(0.0)).sum();
        (over, last.iter().copied().fold(0.0, f64::max))
    }
}

impl<N: Number> WeekMachine<N> {
    /// Cleaning from one colour to another, each with its lightness.
    fn cleaning(&self, (old, was): Colour<'_, N>, (new, is): Colour<'_, N>) -> V<N> {
        if same(old, new) {
            return V::constant(0.0);
        }
        let mut changes = self.changes.iter().flatten();
        let pair = changes.find(|c| same(&c.colour_before, old) && same(&c.colour_after, new));
        if let Some(change) = pair {
            return change.clean_time.v();
        }
        let darker = self.clean_time_to_darker.unwrap_or(self.clean_time).v();
        let lighter = self.clean_time_to_lighter.unwrap_or(self.clean_time).v();
        match is.value().total_cmp(&was.value()) {
            Ordering::Less => darker,
            Ordering::Greater => lighter,
            // Two colours as light as each other: the longer cleaning is the safe one.
            Ordering::Equal => darker.max(lighter),
        }
    }
}
