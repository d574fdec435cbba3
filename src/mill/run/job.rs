//! A machine's calculation while it is done: what was given, what was found, how it is shown.

use std::cell::RefCell;

use super::ask::{Asked, Missing};
use super::{Given, Machine};
use crate::error::{Error, Result};
use crate::number::V;
use crate::particulars::Desk;
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{Amount, Kind, Typed, Unit, unit};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

/// Units by which an inch mill is known; then masses and lengths that nobody named are told in pounds
/// and yards.
const INCH: [&str; 15] = [
    "in",
    "ft",
    "yd",
    "lb",
    "oz",
    "yd/min",
    "ft/min",
    "lb/h",
    "tpi",
    "threads/in",
    "Ne",
    "YSW",
    "worsted",
    "lea",
    "yd/lb",
];

/// What is being worked out.
pub(super) struct Job<'a, 't> {
    desk: &'a Desk<'t>,
    machine: &'a Machine,
    given: &'a [Given],
    entered: RefCell<Vec<Option<Worked<'t>>>>,
    blocks: RefCell<Vec<(&'static str, Vec<&'static str>)>>,
    foot: RefCell<Vec<String>>,
}

impl<'a, 't> Job<'a, 't> {
    pub(super) fn new(desk: &'a Desk<'t>, machine: &'a Machine, given: &'a [Given]) -> Self {
        let entered = RefCell::new(vec![None; given.len()]);
        Job { desk, machine, given, entered, blocks: RefCell::default(), foot: RefCell::default() }
    }
    fn asked(&self, name: &str) -> Option<(usize, &'static Asked)> {
        self.machine.asked.iter().enumerate().find(|(_, asked)| asked.name == name)
    }
    /// Whether a figure was given.
    pub(super) fn has(&self, name: &str) -> bool {
        self.asked(name).is_some_and(|(place, _)| self.given[place].is_some())
    }
    /// A figure that was given, or what is taken for it; entered once, when it is first asked for.
    pub(super) fn get<Q: Typed<Worked<'t>>>(&self, name: &str) -> Q {
        let Some((place, asked)) = self.asked(name) else {
            return Q::from(V::constant(f64::NAN));
        };
        if let Some(worked) = self.entered.borrow()[place] {
            return Q::from(V(worked));
        }
        let (amount, typed) = match (&self.given[place], asked.missing) {
            (Some((amount, typed)), _) => (*amount, typed.clone()),
            (None, Missing::Taken(base)) => match unit(base_name(asked.kind), Some(asked.kind)) {
                Ok(unit) => (Amount { number: unit.from_base(base), unit }, None),
                Err(_) => return Q::from(V::constant(f64::NAN)),
            },
            _ => return Q::from(V::constant(f64::NAN)),
        };
        let given: Q = self.desk.given(name, asked.symbol, asked.words, &amount, typed);
        self.entered.borrow_mut()[place] = Some(given.v().0);
        given
    }
    /// A figure that is no input: a number of the sum itself.
    pub(super) fn plain<Q: Typed<Worked<'t>>>(base: f64) -> Q {
        Q::from(V::constant(base))
    }
    /// Begins a block of the report.
    pub(super) fn block(&self, title: &'static str) {
        self.blocks.borrow_mut().push((title, Vec::new()));
    }
    /// Names a figure in the block that was begun last.
    pub(super) fn name<Q: Typed<Worked<'t>>>(
        &self,
        name: &'static str,
        words: &str,
        figure: Q,
    ) -> Q {
        if let Some((_, names)) = self.blocks.borrow_mut().last_mut() {
            names.push(name);
        }
        self.desk.figure(name, words, figure)
    }
    /// A sentence under the last table.
    pub(super) fn note(&self, sentence: impl Into<String>) {
        self.foot.borrow_mut().push(sentence.into());
    }
    pub(super) fn warn(&self, warning: impl Into<String>) {
        self.desk.warn(warning);
    }

    /// One way at most to say a thing.
    pub(super) fn at_most_one(&self, names: &[&str], what: &str) -> Result<bool> {
        let given: Vec<&str> = names.iter().copied().filter(|name| self.has(name)).collect();
        if given.len() > 1 {
            return Err(Error::notation(format!(
                "{} were given, and each settles {what}: leave all but one out",
                given.join(" and ")
            )));
        }
        Ok(given.len() == 1)
    }
    /// One way to say a thing, and not two.
    pub(super) fn one_of(&self, names: &[&str], what: &str, write: &str) -> Result<()> {
        if self.at_most_one(names, what)? {
            return Ok(());
        }
        Err(Error::notation(format!("{what} is missing; write {write}")))
    }
    /// What is of no use without another figure.
    pub(super) fn needs(&self, name: &str, other: &str) -> Result<()> {
        let Some((_, asked)) = self.asked(other) else { return Ok(()) };
        if self.has(name) && !self.has(other) && asked.missing == Missing::Left {
            return Err(Error::notation(format!(
                "{name} was given without {other} ({}); write both or neither",
                asked.words
            )));
        }
        Ok(())
    }

    /// A figure in words, in the unit in which it would be told here.
    pub(super) fn say(&self, base: f64, kind: Kind) -> String {
        match self.told_in(base, kind) {
            Some(unit) => with_unit(unit.from_base(base), unit.symbol),
            None => of_kind(base, kind),
        }
    }
    /// The user's own unit, or one that goes with it; none for that of the kind.
    fn told_in(&self, base: f64, kind: Kind) -> Option<&'static Unit> {
        let units = || self.given.iter().flatten().map(|(amount, _)| amount.unit);
        let is_inch = |unit: &Unit| INCH.contains(&unit.symbol);
        let own = |kind: Kind| units().find(|unit| unit.kind.family() == kind);
        // A mill may weigh in kilograms and measure in yards.
        let inch = |kind: Kind| own(kind).map_or_else(|| units().any(is_inch), is_inch);
        let symbol = match kind {
            Kind::LinearDensity => return own(kind),
            Kind::Twist | Kind::Sett | Kind::Speed if own(kind).is_some() => return own(kind),
            Kind::Twist if inch(kind) => "tpi",
            Kind::Sett if inch(kind) => "threads/in",
            Kind::Speed if inch(Kind::Length) => "yd/min",
            Kind::Length if inch(kind) && base < 0.9144 => "in",
            Kind::Length if inch(kind) => "yd",
            Kind::Mass if inch(kind) && base < 0.453 => "oz",
            Kind::Mass if inch(kind) => "lb",
            Kind::MassRate if inch(Kind::Mass) => "lb/h",
            // Ends and stops come a few times in an hour.
            Kind::Frequency if base < 1.0 => "/h",
            _ => return None,
        };
        unit(symbol, Some(kind)).ok()
    }

    /// What was found, as tables.
    pub(super) fn report(&self) -> Report {
        let told = |name: &&'static str| {
            let (words, value, kind) = self.desk.found(name)?;
            Some(vec![words, self.say(value, kind)])
        };
        let blocks = self.blocks.borrow();
        let mut blocks: Vec<Block> = blocks
            .iter()
            .filter(|(_, names)| !names.is_empty())
            .map(|(title, names)| Block {
                title: (*title).to_owned(),
                columns: vec![(String::new(), Left), (String::new(), Right)],
                rows: names.iter().filter_map(told).collect(),
                ..Block::default()
            })
            .collect();
        if let Some(last) = blocks.last_mut() {
            last.foot.extend(self.foot.borrow().iter().cloned());
        }
        Report { title: self.machine.title.to_owned(), blocks }
    }
}

fn base_name(kind: Kind) -> &'static str {
    if kind.family() == Kind::Fraction { "%" } else { kind.base() }
}
