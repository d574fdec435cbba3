//! A job of the mill: what it asks, and the chain of formulas that answers it.
//!
//! A formula has one answer; who stands at a machine wants a dozen that hang together. A job asks for
//! named figures, chains formulas, and hands over [`Particulars`]: each answer with its working, all of
//! them as a workbook. What it asks stands once, as data; from there come reading, messages, help and
//! stubs.
//!
//! ```
//! use hankwise::job;
//!
//! let load = job::find("batch_run")?.run(&[
//!     ("mass", "40 kg"), ("capacity", "12 kg"), ("running", "45 min"), ("change", "15 min"),
//! ])?;
//! assert!((load.find("even_load")?.value - 10.0).abs() < 1e-9);
//! assert!((load.find("time")?.value - 4.0).abs() < 1e-9);
//! # Ok::<(), hankwise::Error>(())
//! ```

mod ask;
mod given;
mod work;

pub(crate) use ask::place;
pub use ask::{Ask, Missing};
pub use given::Given;
pub(crate) use work::Work;

use crate::error::{Error, Result, did_you_mean};
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{Kind, Unit};
use crate::table::Align::{Left, Right};
use crate::table::Block;

/// A job.
pub struct Job {
    /// Its name, as a function.
    pub name: &'static str,
    /// The module in which it is written.
    pub module: &'static str,
    /// Its title.
    pub title: &'static str,
    /// What it answers, in a sentence.
    pub summary: &'static str,
    /// More about it.
    pub details: &'static str,
    /// An example for Python.
    pub example: &'static str,
    /// What it asks.
    pub asks: &'static [Ask],
    /// Its cautions, beside those of its formulas.
    pub cautions: &'static [&'static str],
    pub(crate) work: for<'a, 't> fn(&Work<'a, 't>) -> Result<()>,
}

impl std::fmt::Debug for Job {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.name)
    }
}

impl Job {
    /// The room in which it stands.
    pub fn room(&self) -> &'static str {
        self.module.split("::").nth(1).unwrap_or(self.module)
    }
    /// What it asks, with nothing given yet.
    pub fn blank(&self) -> Given {
        Given::new(self.name, self.asks)
    }
    /// What follows from names and texts.
    pub fn run(&self, given: &[(&str, &str)]) -> Result<Particulars> {
        self.run_on(&self.blank().read(given)?)
    }
    /// What follows from figures.
    pub fn run_on(&self, given: &Given) -> Result<Particulars> {
        given.complete()?;
        Particulars::work(|desk| {
            given.warn(desk);
            self.cautions.iter().for_each(|caution| desk.beware(caution));
            let work = Work::new(desk, self, given);
            (self.work)(&work)?;
            Ok(work.report())
        })
    }
}

/// Every job, in the order of names.
pub fn all() -> impl Iterator<Item = &'static Job> {
    let mut jobs: Vec<&'static Job> = crate::mill::JOBS.concat();
    jobs.sort_by_key(|job| job.name);
    jobs.into_iter()
}

/// The job with a name.
pub fn find(name: &str) -> Result<&'static Job> {
    all().find(|job| job.name == name).ok_or_else(|| {
        let near = did_you_mean(name, all().map(|job| job.name))
            .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
        let all: Vec<&str> = all().map(|job| job.name).collect();
        Error::notation(format!("there is no job '{name}'{near}; there are {}", all.join(", ")))
    })
}

/// A table of what the desk has named, masses in the unit that was given for them, small ones of
/// kilograms in grams.
pub(crate) fn block(
    desk: &Desk<'_>,
    title: &str,
    names: &[&str],
    mass: Option<&'static Unit>,
) -> Block {
    let row = |name: &&str| {
        let (words, value, kind) = desk.found(name)?;
        let said = match mass {
            Some(unit) if kind == Kind::Mass && unit.symbol != "kg" => {
                with_unit(unit.from_base(value), unit.symbol)
            }
            _ => of_kind(value, kind),
        };
        Some(vec![words, said])
    };
    Block {
        title: title.to_owned(),
        columns: vec![(String::new(), Left), (String::new(), Right)],
        rows: names.iter().filter_map(row).collect(),
        ..Block::default()
    }
}
