//! A week of lots over the machines: the order, when each lot is at each machine, what does not fit.
//!
//! Lots pass every machine in one order. A lot starts at a machine once it has left the one before
//! and the machine is free and cleaned. The clock of all machines starts together and runs in
//! working hours.

mod check;
mod floor;
mod order;
mod report;
mod shade;

pub use order::Order;
pub use shade::{SHADES, lightness};

use crate::calculation::{Inputs, Results, calculation};
use crate::number::{Number, V};
use crate::quantity::{Count, Duration, Fraction, Ratio};
use check::check;
use floor::Floor;
use report::report;

/// Cleaning between two colours.
#[derive(Clone, Debug, Inputs)]
pub struct ColourChange<N> {
    /// colour that was on the machine
    pub colour_before: String,
    /// colour that comes
    pub colour_after: String,
    /// time of cleaning between them
    #[q("τ_k", 0.0..=24.0, zero, like = "6 h")]
    pub clean_time: Duration<N>,
}

/// A machine of the week.
#[derive(Clone, Debug, Inputs)]
pub struct WeekMachine<N> {
    /// name of the machine
    #[label]
    pub name: String,
    /// hours that it can run in the week
    #[q("τ_w", 1.0..=168.0, like = "40 h")]
    pub open_time: Duration<N>,
    /// time of cleaning between two colours, where nothing below says otherwise
    #[q("τ_k", 0.0..=24.0, or = 0.0)]
    pub clean_time: Duration<N>,
    /// time of cleaning before a darker colour
    #[q("τ_d", 0.0..=24.0, zero)]
    pub clean_time_to_darker: Option<Duration<N>>,
    /// time of cleaning before a lighter colour
    #[q("τ_l", 0.0..=24.0, zero)]
    pub clean_time_to_lighter: Option<Duration<N>>,
    /// cleaning from one colour to another, whatever else is said of cleaning
    #[rows]
    pub changes: Option<Vec<ColourChange<N>>>,
    /// colour that is on it when the week begins; clean if omitted
    pub colour: Option<String>,
    /// lightness of that colour, from 0 % for black to 100 % for white
    #[q("L", 0.0..=1.0, zero)]
    pub lightness: Option<Fraction<N>>,
    /// people at it while it runs
    #[q("p", 0.0..=20.0, zero, broken)]
    pub people: Option<Count<N>>,
}

/// How long a lot is at a machine.
#[derive(Clone, Debug, Inputs)]
pub struct LotTime<N> {
    /// name of the machine
    #[label]
    pub machine: String,
    /// time of the lot at the machine
    #[q("τ", 0.0..=168.0, zero, like = "6 h")]
    pub time: Duration<N>,
}

/// A lot of the week.
#[derive(Clone, Debug, Inputs)]
pub struct WeekLot<N> {
    /// name of the lot
    #[label]
    pub name: String,
    /// colour; lots of one colour need no cleaning between them
    pub colour: String,
    /// lightness of the colour, from 0 % for black to 100 % for white; known of natural shades
    #[q("L", 0.0..=1.0, zero)]
    pub lightness: Option<Fraction<N>>,
    /// time at each machine, in the order in which the lot passes them
    #[rows]
    pub times: Vec<LotTime<N>>,
}

/// What [`week()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct WeekInputs<N> {
    /// lots
    #[rows]
    pub lots: Vec<WeekLot<N>>,
    /// machines
    #[rows]
    pub machines: Vec<WeekMachine<N>>,
    /// order of the lots
    #[word]
    pub order: Order,
    /// try every order of lots as light as each other
    pub try_orders: bool,
}

/// A lot in its turn.
#[derive(Clone, Debug, Results)]
pub struct LotInTurn<N> {
    /// name of the lot
    #[label]
    pub name: String,
    /// lightness of its colour, from 0 % for black to 100 % for white
    pub lightness: Fraction<N>,
    /// when it leaves its last machine, from the start of the week
    pub finish: Duration<N>,
}

/// A lot at a machine.
#[derive(Clone, Debug, Results)]
pub struct Visit<N> {
    /// lot and machine
    #[label]
    pub name: String,
    /// when cleaning begins, from the start of the week
    pub clean_from: Duration<N>,
    /// time of cleaning before the lot
    pub clean_time: Duration<N>,
    /// when the lot starts
    pub start: Duration<N>,
    /// when it leaves
    pub finish: Duration<N>,
    /// how long it runs beyond the hours of the machine
    pub beyond: Duration<N>,
}

/// A machine's week.
#[derive(Clone, Debug, Results)]
pub struct MachineWeek<N> {
    /// name of the machine
    #[label]
    pub name: String,
    /// hours of work
    pub work_time: Duration<N>,
    /// hours of cleaning
    #[head = "cleaning"]
    pub cleaning_time: Duration<N>,
    /// work, on the hours that it can run
    #[head = "work of open"]
    pub work_share: Ratio<N>,
    /// work and cleaning, on the hours that it can run
    #[head = "with cleaning"]
    pub use_share: Ratio<N>,
    /// when the last lot leaves it, from the start of the week
    pub finish: Duration<N>,
    /// how long it runs beyond its hours
    pub beyond: Duration<N>,
    /// hours of people
    pub person_hours: Option<Duration<N>>,
}

/// What [`week()`] answers.
#[derive(Clone, Debug, Results)]
pub struct WeekResults<N> {
    /// Lots in their order
    #[rows]
    pub lots: Vec<LotInTurn<N>>,
    /// Lots at the machines
    #[rows]
    pub visits: Vec<Visit<N>>,
    /// Machines
    #[rows]
    pub machines: Vec<MachineWeek<N>>,
    /// when the last lot leaves the last machine, from the start of the week
    #[block = "The week"]
    pub finish: Duration<N>,
    /// orders tried, where orders were tried
    pub orders_tried: Option<Count<N>>,
}

/// A week of lots over the machines: the order, when each lot is at each machine, what does not fit.
///
/// Lots pass all machines in one order, light to dark unless `order` says otherwise. A lot starts at a
/// machine once it has left the one before and the machine is free and clean. With `try_orders` every order
/// of lots as light as each other is tried, and the one kept runs least beyond the week, then ends first;
/// nothing else is called best. Times are hours of work from the start of the week.
#[calculation(
    title = "A week of lots",
    cautions = ["machines"],
    limits = ["all machines start together", "lots pass all machines in one order", "no stops beyond the times given"],
    check = check,
    report = report,
    example = ">>> import hankwise as hw
>>> week = hw.mill.week(
...     lots={
...         \"Elm\": {\"colour\": \"black\", \"times\": {\"card\": \"10 h\", \"mule\": \"20 h\"}},
...         \"Ash\": {\"colour\": \"white\", \"times\": {\"card\": \"6 h\", \"mule\": \"14 h\"}},
...     },
...     machines={
...         \"card\": {\"open_time\": \"40 h\", \"clean_time\": \"2 h\"},
...         \"mule\": {\"open_time\": \"40 h\", \"clean_time\": \"1 h\"},
...     },
... )
>>> [lot[\"name\"] for lot in week[\"lots\"]], week[\"finish\"], week[\"Elm.mule.beyond\"]
(['Ash', 'Elm'], <time: 41 h>, <time: 1 h>)"
)]
pub fn week<N: Number>(given: &WeekInputs<N>) -> WeekResults<N> {
    // The order is settled by the plain numbers; the times are then those of that order.
    let plain = given.map(&mut |number: &N| number.value());
    let (sequence, tried) = order::settle(&Floor::of(&plain));
    let floor = Floor::of(given);
    let stays = floor.run(&sequence);
    let lots: Vec<LotInTurn<N>> = sequence
        .iter()
        .map(|place| LotInTurn {
            name: given.lots[*place].name.clone(),
            lightness: floor.lightness(*place),
            finish: latest(stays.iter().filter(|stay| stay.lot == *place).map(|stay| stay.finish)),
        })
        .collect();
    let visits = stays.iter().map(|stay| Visit {
        name: format!("{}.{}", given.lots[stay.lot].name, given.machines[stay.machine].name),
        clean_from: stay.clean_from.into(),
        clean_time: stay.clean_time.into(),
        start: stay.start.into(),
        finish: stay.finish.into(),
        beyond: beyond(stay.finish, given.machines[stay.machine].open_time.v()).into(),
    });
    WeekResults {
        visits: visits.collect(),
        machines: (0..given.machines.len()).map(|place| floor.machine(place, &stays)).collect(),
        finish: latest(stays.iter().map(|stay| stay.finish)),
        orders_tried: tried.map(|tried| Count::base(N::constant(tried as f64))),
        lots,
    }
}

/// How long it is from a time to a later one; 0 where it is not later.
fn beyond<N: Number>(finish: V<N>, open: V<N>) -> V<N> {
    (finish - open).max(0.0)
}

/// The latest of several times; 0 without any.
fn latest<N: Number>(all: impl Iterator<Item = V<N>>) -> Duration<N> {
    all.reduce(V::max).unwrap_or(V::constant(0.0)).into()
}
