//! Machines at work: from what is set and wanted to output, doffs, packages, hours and people.
//!
//! Each machine is a list of figures that it is asked about and a chain of formulas over them.
//!
//! ```
//! use hankwise::mill::Machine;
//!
//! let mule = Machine::named("mule_run")?.read(&[
//!     ("spindles", "120"), ("travel", "6 ft"), ("cycle", "22.5 s"), ("count", "150 tex"),
//!     ("efficiency", "85 %"), ("mass", "30 kg"),
//! ])?;
//! let output = mule.find("output")?.value;
//! assert!((output - 4.477).abs() < 0.0005);
//! assert!((output * mule.find("time")?.value - 30.0).abs() < 1e-9);
//! # Ok::<(), hankwise::Error>(())
//! ```

mod ask;
mod cloth;
mod common;
mod job;
mod loom;
mod mule;
mod reel;
mod spindles;
mod warping;
mod winder;

pub use ask::Asked;
use ask::Missing;
use job::Job;

use crate::error::{Error, Result, did_you_mean};
use crate::particulars::Particulars;
use crate::quantity::print::of_kind;
use crate::quantity::{Amount, Kind, parse_as};

/// A figure as it was given, with its text where there was one.
type Given = Option<(Amount, Option<String>)>;

/// A machine, what it is asked about and what follows from that.
pub struct Machine {
    /// Its name, as a function.
    pub name: &'static str,
    /// Its title.
    pub title: &'static str,
    /// What it is asked about.
    pub asked: &'static [Asked],
    /// Its cautions, beside those of its formulas.
    cautions: &'static [&'static str],
    work: for<'a, 't> fn(&Job<'a, 't>) -> Result<()>,
}

impl std::fmt::Debug for Machine {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.name)
    }
}

/// Every machine.
pub static MACHINES: &[&Machine] = &[
    &mule::MULE,
    &spindles::RING_FRAME,
    &spindles::TWISTER,
    &winder::WINDER,
    &reel::REEL,
    &warping::WARPING,
    &loom::LOOM,
    &cloth::PASSAGES,
    &cloth::BATCHES,
    &cloth::DRYER,
];

impl Machine {
    /// The machine with a name.
    pub fn named(name: &str) -> Result<&'static Machine> {
        MACHINES.iter().copied().find(|machine| machine.name == name).ok_or_else(|| {
            let all: Vec<&str> = MACHINES.iter().map(|machine| machine.name).collect();
            Error::notation(format!("there is no machine '{name}'; there are {}", all.join(", ")))
        })
    }
    fn place(&self, name: &str) -> Result<usize> {
        self.asked.iter().position(|asked| asked.name == name).ok_or_else(|| {
            let names = || self.asked.iter().map(|asked| asked.name);
            let near = did_you_mean(name, names())
                .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
            let all = names().collect::<Vec<_>>().join(", ");
            Error::notation(format!("{} has no '{name}'{near}; there are {all}", self.name))
        })
    }
    /// The kind of what has a name.
    pub fn kind(&self, name: &str) -> Result<Kind> {
        self.place(name).map(|place| self.asked[place].kind)
    }
    /// What follows from names and texts.
    pub fn read(&self, given: &[(&str, &str)]) -> Result<Particulars> {
        let mut amounts = Vec::new();
        for (name, text) in given {
            let amount = parse_as(text, self.kind(name)?).map_err(|e| e.at(name))?;
            amounts.push((*name, amount, Some((*text).to_owned())));
        }
        self.run(&amounts)
    }
    /// What follows from figures; each with its text, where there was one.
    pub fn run(&self, given: &[(&str, Amount, Option<String>)]) -> Result<Particulars> {
        let mut all: Vec<Given> = vec![None; self.asked.len()];
        for (name, amount, typed) in given {
            let place = self.place(name)?;
            check(&self.asked[place], amount).map_err(|e| e.at(name))?;
            all[place] = Some((*amount, typed.clone()));
        }
        for (asked, given) in self.asked.iter().zip(&all) {
            if let (Missing::Needed(example), None) = (asked.missing, given) {
                let Asked { name, words, .. } = asked;
                return Err(Error::notation(format!(
                    "{name} ({words}) is missing; write {name}={example}"
                )));
            }
        }
        Particulars::work(|desk| {
            for (asked, given) in self.asked.iter().zip(&all) {
                let base = given.as_ref().map(|(amount, _)| amount.base());
                if let Some(words) = base.and_then(|base| unusual(asked, base)) {
                    desk.warn(words);
                }
            }
            self.cautions.iter().for_each(|caution| desk.beware(caution));
            let job = Job::new(desk, self, &all);
            (self.work)(&job)?;
            Ok(job.report())
        })
    }
}

/// Refuses what cannot be.
fn check(asked: &Asked, amount: &Amount) -> Result<()> {
    let base = amount.base();
    asked.kind.check(base)?;
    if asked.whole && (base < 1.0 || base.fract() != 0.0) {
        let near = base.floor().max(1.0);
        return Err(Error::range(format!(
            "{} ({}) is no whole number from 1 up; write {near} or {}",
            of_kind(base, asked.kind),
            asked.words,
            near + 1.0
        )));
    }
    if !asked.none && base == 0.0 {
        let instead = match asked.missing {
            Missing::Needed(example) => format!(", such as {example}"),
            _ => ", or leave it out".to_owned(),
        };
        return Err(Error::range(format!(
            "0 is given for the {}, and nothing is made with that; write more{instead}",
            asked.words
        )));
    }
    Ok(())
}

fn unusual(asked: &Asked, base: f64) -> Option<String> {
    let (low, high) = asked.usual;
    (base < low * (1.0 - 1e-9) || base > high * (1.0 + 1e-9)).then(|| {
        format!(
            "{} = {} is unusual; the usual range is {} to {} ({})",
            asked.name,
            of_kind(base, asked.kind),
            of_kind(low, asked.kind),
            of_kind(high, asked.kind),
            asked.source
        )
    })
}
