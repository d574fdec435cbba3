//! A job of the mill: what it asks, and the chain of formulas that answers it.
//!
//! A formula has one answer; who stands at a machine wants a dozen that hang together. A job asks for
//! named figures, chains formulas, and hands over [`Particulars`]: each answer with its working, all of
//! them as a workbook. What it asks stands once, as data; from there come reading, messages, help and
//! stubs.
//!
//! ```
//! use hankwise::mill::LOTS_APART;
//!
//! let lot = LOTS_APART.run(&[("lot", "10 kg"), ("held_up", "0.60 kg"), ("loss", "5 %")])?;
//! assert!((lot.find("lot_loss")?.value - 0.11).abs() < 1e-12);
//! let error = LOTS_APART.run(&[("lot", "10 kg"), ("heldup", "0.60 kg")]).unwrap_err();
//! assert!(error.to_string().contains("did you mean 'held_up'?"));
//! # Ok::<(), hankwise::Error>(())
//! ```

use crate::error::{Error, Result, did_you_mean};
use crate::number::V;
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{Amount, Kind, Typed, parse_as};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

/// Whether a figure has to be given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Need {
    /// It has to be.
    Must,
    /// It may be; without it what hangs on it is left out.
    May,
    /// This is taken where it is not.
    Else(&'static str),
}

/// A figure that a job asks for.
#[derive(Clone, Copy, Debug)]
pub struct Ask {
    /// Its name, as an argument.
    pub name: &'static str,
    /// Its symbol.
    pub symbol: &'static str,
    /// What it is, in words.
    pub words: &'static str,
    /// Its kind.
    pub kind: Kind,
    /// The usual range, in the base unit; outside it a warning is given.
    pub usual: (f64, f64),
    /// Whether it has to be given.
    pub need: Need,
}

/// A figure that has to be given.
pub(crate) const fn must(
    name: &'static str,
    symbol: &'static str,
    words: &'static str,
    kind: Kind,
    usual: (f64, f64),
) -> Ask {
    Ask { name, symbol, words, kind, usual, need: Need::Must }
}

impl Ask {
    /// The same, and it may be left out.
    pub(crate) const fn may(self) -> Ask {
        Ask { need: Need::May, ..self }
    }
    /// The same, with what is taken where it is left out.
    pub(crate) const fn or(self, text: &'static str) -> Ask {
        Ask { need: Need::Else(text), ..self }
    }
}

/// A job.
#[derive(Debug)]
pub struct Job {
    /// Its name.
    pub name: &'static str,
    /// The module in which it is written.
    pub module: &'static str,
    /// What it answers, in a sentence.
    pub summary: &'static str,
    /// More about it, and an example for Python.
    pub details: &'static str,
    /// What it asks.
    pub asks: &'static [Ask],
    /// Names of the cautions beside those of its formulas.
    pub cautions: &'static [&'static str],
    pub(crate) work: for<'t> fn(&Asked<'_, 't>) -> Result<Report>,
}

/// A figure as given: its name, the quantity and the text, where there was one.
pub type GivenFigure<'a> = (&'a str, Amount, Option<String>);

impl Job {
    /// The room in which it stands.
    pub fn room(&self) -> &'static str {
        self.module.split("::").nth(1).unwrap_or(self.module)
    }
    /// The figure that is asked for under a name.
    pub fn ask(&self, name: &str) -> Result<&'static Ask> {
        self.asks.iter().find(|ask| ask.name == name).ok_or_else(|| {
            let names = || self.asks.iter().map(|ask| ask.name);
            let near = did_you_mean(name, names())
                .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
            let all = names().collect::<Vec<_>>().join(", ");
            Error::notation(format!("'{name}' is not asked for{near} (it asks for {all})"))
        })
    }
    /// Runs it on texts.
    pub fn run(&self, given: &[(&str, &str)]) -> Result<Particulars> {
        let read = |(name, text): &(&'static str, &str)| {
            let amount = parse_as(text, self.ask(name)?.kind).map_err(|e| e.at(name))?;
            Ok((*name, amount, Some((*text).to_owned())))
        };
        let known = given.iter().map(|(name, text)| Ok((self.ask(name)?.name, *text)));
        let known = known.collect::<Result<Vec<_>>>()?;
        self.run_on(&known.iter().map(read).collect::<Result<Vec<_>>>()?)
    }
    /// Runs it on quantities.
    pub fn run_on(&self, given: &[GivenFigure<'_>]) -> Result<Particulars> {
        for (name, ..) in given {
            self.ask(name)?;
        }
        let mut figures = Vec::new();
        for ask in self.asks {
            let found = given.iter().find(|(name, ..)| *name == ask.name);
            let found = match (found, ask.need) {
                (Some((_, amount, text)), _) => Some((*amount, text.clone())),
                (None, Need::Else(text)) => {
                    Some((parse_as(text, ask.kind)?, Some(text.to_owned())))
                }
                (None, Need::May) => None,
                (None, Need::Must) => return Err(missing(ask)),
            };
            if let Some((amount, _)) = &found {
                ask.kind.check(amount.base()).map_err(|e| e.at(ask.name))?;
            }
            figures.push(found);
        }
        Particulars::work(|desk| {
            self.cautions.iter().for_each(|caution| desk.beware(caution));
            let mut entered = Vec::new();
            for (ask, figure) in self.asks.iter().zip(&figures) {
                let Some((amount, text)) = figure else {
                    entered.push(None);
                    continue;
                };
                unusual(desk, ask, amount, text.as_deref());
                let Ask { name, symbol, words, kind, .. } = *ask;
                entered.push(Some(desk.enter(kind, name, symbol, words, amount, text.clone())));
            }
            let units = figures.iter().flatten().map(|(amount, _)| *amount).collect();
            (self.work)(&Asked { desk, job: self, entered, units })
        })
    }
}

fn missing(ask: &Ask) -> Error {
    let Ask { name, words, kind, .. } = ask;
    let example = match kind.family() {
        Kind::Ratio => kind.example().to_owned(),
        _ => format!("\"{}\"", kind.example()),
    };
    Error::notation(format!("{name} is missing: {words}; write {name}={example} or the like"))
}

/// Says of a figure that it is outside its usual range.
fn unusual(desk: &Desk<'_>, ask: &Ask, amount: &Amount, text: Option<&str>) {
    let (low, high) = ask.usual;
    let x = amount.base();
    // Ends of ranges belong to them, whatever the rounding of the change of unit.
    if x >= low - 1e-9 * low.abs() && x <= high + 1e-9 * high.abs() {
        return;
    }
    let given = text.map_or_else(|| with_unit(amount.number, amount.unit.symbol), str::to_owned);
    desk.warn(format!(
        "{}: {given} is unusual; {} is usually {} to {} (common practice)",
        ask.name,
        ask.words,
        of_kind(low, ask.kind),
        of_kind(high, ask.kind)
    ));
}

/// What a job was given, and the desk at which it works.
#[derive(Debug)]
pub(crate) struct Asked<'a, 't> {
    /// The desk.
    pub(crate) desk: &'a Desk<'t>,
    job: &'a Job,
    entered: Vec<Option<Worked<'t>>>,
    units: Vec<Amount>,
}

impl<'t> Asked<'_, 't> {
    /// A figure that may be left out.
    pub(crate) fn may<Q: Typed<Worked<'t>>>(&self, name: &str) -> Option<Q> {
        let place = self.job.asks.iter().position(|ask| ask.name == name);
        let place = place.unwrap_or_else(|| unreachable!("{} asks for no {name}", self.job.name));
        debug_assert_eq!(self.job.asks[place].kind, Q::KIND, "{name}");
        self.entered[place].map(|x| Q::from(V(x)))
    }
    /// A figure that is there: it has to be given, or something is taken for it.
    pub(crate) fn get<Q: Typed<Worked<'t>>>(&self, name: &str) -> Q {
        let found = self.may(name);
        found.unwrap_or_else(|| unreachable!("{name} of {} may be left out", self.job.name))
    }
    /// Names an answer.
    pub(crate) fn figure<Q: Typed<Worked<'t>>>(&self, name: &str, words: &str, figure: Q) -> Q {
        self.desk.figure(name, words, figure)
    }
    /// A figure in the unit in which the user wrote one of its kind, else as its kind is printed.
    pub(crate) fn say(&self, kind: Kind, base: f64) -> String {
        let alike = self.units.iter().find(|given| given.unit.kind == kind && base != 0.0);
        // In the base unit it is as the kind is printed anyway, with grams for a small mass.
        match alike.filter(|given| !["", "%", kind.base()].contains(&given.unit.symbol)) {
            Some(given) => with_unit(given.unit.from_base(base), given.unit.symbol),
            None => of_kind(base, kind),
        }
    }
    /// A table of answers by their names; those that were not found are left out.
    pub(crate) fn table(&self, title: &str, names: &[&str]) -> Block {
        let rows = names.iter().filter_map(|name| {
            let (words, value, kind) = self.desk.found(name)?;
            Some(vec![words, self.say(kind, value), (*name).to_owned()])
        });
        let columns = [("", Left), ("figure", Right), ("name", Left)];
        Block {
            title: title.to_owned(),
            rows: rows.collect(),
            columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
            ..Block::default()
        }
    }
}

/// Every job, in the order of names.
pub fn all() -> impl Iterator<Item = &'static Job> {
    let mut jobs: Vec<&'static Job> = crate::mill::JOBS.to_vec();
    jobs.sort_by_key(|job| job.name);
    jobs.into_iter()
}
