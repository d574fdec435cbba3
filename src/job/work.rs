//! A job while it is done: what was given, what was found, how it is shown.

use std::cell::RefCell;
use std::collections::BTreeMap;

use super::Job;
use super::ask::Missing;
use super::given::Given;
use crate::error::{Error, Result};
use crate::number::V;
use crate::particulars::Desk;
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{Kind, Typed, Unit, unit};
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
#[derive(Debug)]
pub(crate) struct Work<'a, 't> {
    desk: &'a Desk<'t>,
    job: &'a Job,
    given: &'a Given,
    entered: RefCell<BTreeMap<&'static str, Worked<'t>>>,
    blocks: RefCell<Vec<Shown>>,
}

/// A block of the report: figures by their names, to be told once all are found.
#[derive(Debug)]
struct Shown {
    title: &'static str,
    names: Vec<&'static str>,
    foot: Vec<String>,
}

impl<'a, 't> Work<'a, 't> {
    pub(super) fn new(desk: &'a Desk<'t>, job: &'a Job, given: &'a Given) -> Self {
        let (entered, blocks) = (RefCell::default(), RefCell::default());
        Work { desk, job, given, entered, blocks }
    }
    /// Whether a figure was given.
    pub(crate) fn has(&self, name: &str) -> bool {
        self.given.has(name)
    }
    /// A figure that was given, or what is taken for it; entered once, when it is first asked for.
    pub(crate) fn get<Q: Typed<Worked<'t>>>(&self, name: &str) -> Q {
        let missing = Q::from(V::constant(f64::NAN));
        let Some(ask) = self.given.asked(name) else { return missing };
        if let Some(worked) = self.entered.borrow().get(ask.name) {
            return Q::from(V(*worked));
        }
        let given: Option<Q> = match ask.missing {
            Missing::Taken(base) => self.given.or(self.desk, name, base).ok(),
            _ => self.given.get(self.desk, name),
        };
        let Some(given) = given else { return missing };
        self.entered.borrow_mut().insert(ask.name, given.v().0);
        given
    }
    /// A figure that is no input: a number of the sum itself.
    pub(crate) fn plain<Q: Typed<Worked<'t>>>(base: f64) -> Q {
        Q::from(V::constant(base))
    }
    /// Begins a block of the report.
    pub(crate) fn block(&self, title: &'static str) {
        let (names, foot) = (Vec::new(), Vec::new());
        self.blocks.borrow_mut().push(Shown { title, names, foot });
    }
    /// Names a figure in the block that was begun last.
    pub(crate) fn name<Q: Typed<Worked<'t>>>(
        &self,
        name: &'static str,
        words: &str,
        figure: Q,
    ) -> Q {
        self.show(name);
        self.desk.figure(name, words, figure)
    }
    /// Tells a figure, once it has a name, in the block that was begun last.
    pub(crate) fn show(&self, name: &'static str) {
        if let Some(shown) = self.blocks.borrow_mut().last_mut() {
            shown.names.push(name);
        }
    }
    /// A sentence under the table that was begun last.
    pub(crate) fn note(&self, sentence: impl Into<String>) {
        if let Some(shown) = self.blocks.borrow_mut().last_mut() {
            shown.foot.push(sentence.into());
        }
    }
    pub(crate) fn warn(&self, warning: impl Into<String>) {
        self.desk.warn(warning);
    }

    /// One way at most to say a thing.
    pub(crate) fn at_most_one(&self, names: &[&str], what: &str) -> Result<bool> {
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
    pub(crate) fn one_of(&self, names: &[&str], what: &str, write: &str) -> Result<()> {
        if self.at_most_one(names, what)? {
            return Ok(());
        }
        Err(Error::notation(format!("{what} is missing; write {write}")))
    }
    /// What is of no use without another figure.
    pub(crate) fn needs(&self, name: &str, other: &str) -> Result<()> {
        let Some(asked) = self.given.asked(other) else { return Ok(()) };
        if self.has(name) && !self.has(other) && asked.missing == Missing::Left {
            return Err(Error::notation(format!(
                "{name} was given without {other} ({}); write both or neither",
                asked.words
            )));
        }
        Ok(())
    }

    /// A figure in words, in the unit in which it would be told here.
    pub(crate) fn say(&self, base: f64, kind: Kind) -> String {
        if kind.family() == Kind::Fraction && base > 0.0 && base < 1e-6 {
            return "under 0.0001 %".to_owned();
        }
        match self.told_in(base, kind) {
            Some(unit) => with_unit(unit.from_base(base), unit.symbol),
            None => of_kind(base, kind),
        }
    }
    /// The user's own unit, or one that goes with it; none for that of the kind.
    fn told_in(&self, base: f64, kind: Kind) -> Option<&'static Unit> {
        let units = || self.given.units();
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
            // A draw of the mule, a reel, a reed are told in inches however long.
            Kind::Length if inch(kind) && base < 3.0 => "in",
            Kind::Length if inch(kind) => "yd",
            Kind::Mass if inch(kind) && base < 0.453 => "oz",
            Kind::Mass if inch(kind) => "lb",
            Kind::MassRate if inch(Kind::Mass) => "lb/h",
            Kind::MassPerArea if inch(Kind::Mass) => "oz/yd²",
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
            Some(vec![words, self.say(value, kind), (*name).to_owned()])
        };
        let columns = [("", Left), ("", Right), ("", Left)];
        let table = |shown: &Shown| Block {
            title: shown.title.to_owned(),
            columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
            rows: shown.names.iter().filter_map(told).collect(),
            foot: shown.foot.clone(),
            ..Block::default()
        };
        let blocks = self.blocks.borrow();
        let blocks = blocks.iter().filter(|shown| !shown.names.is_empty()).map(table).collect();
        Report { title: self.job.title.to_owned(), blocks }
    }
}
