//! What a plan is built up from while its files are read.

use std::collections::HashMap;

use super::chance::{Layer, Spread};
use super::given::Given;
use crate::calculation::Place;
use crate::error::{Error, Result};
use crate::quantity::print::default_unit;
use crate::quantity::{Amount, Count, Kind};

/// So many faults are shown; the rest are counted.
const MOST: usize = 50;

/// The values read so far, what is unusual about them, and all that is wrong.
#[derive(Debug, Default)]
pub(super) struct Draft {
    pub(super) given: Vec<Given>,
    pub(super) warnings: Vec<String>,
    /// The clean fibre is not known: all is carried as it is weighed.
    pub(super) weighed: bool,
    /// Values that were read already: a value is one, however many yarns go over the machine.
    known: HashMap<Mark, Place>,
    faults: Vec<Error>,
}

/// What tells a value from all others: where it is, and as what it is read.
pub(super) type Mark = ((String, usize), &'static str);

impl Draft {
    /// A plain number of no file.
    pub(super) fn count(&mut self, number: f64) -> Count<Place> {
        let unit = default_unit(Kind::Count);
        Count::base(self.push(
            None,
            Given {
                key: "yarn.ends".to_owned(),
                symbol: "N",
                meaning: "ends folded together",
                kind: Kind::Count,
                amount: Amount { number, unit },
                typed: number.to_string(),
                spread: Spread::Known,
                layer: Layer::Lot,
                origin: "default".to_owned(),
                from: "default".to_owned(),
            },
        ))
    }
    /// A share that was worked out of another value.
    pub(super) fn share(&mut self, share: f64, of: &Given) -> Place {
        let unit = default_unit(Kind::Fraction);
        let amount = Amount { number: unit.from_base(share), unit };
        let given = Given {
            key: format!("{}.share", of.key),
            symbol: "p",
            meaning: "share of the clean dry fibre, worked out of what is given",
            kind: Kind::Fraction,
            amount,
            typed: crate::quantity::print::of_kind(share, Kind::Fraction),
            spread: Spread::Known,
            ..of.clone()
        };
        self.push(None, given)
    }
    pub(super) fn known(&self, mark: &Mark) -> Option<Place> {
        self.known.get(mark).copied()
    }
    pub(super) fn push(&mut self, mark: Option<Mark>, given: Given) -> Place {
        let place = Place(self.given.len());
        self.given.push(given);
        if let Some(mark) = mark {
            self.known.insert(mark, place);
        }
        place
    }
    /// Notes what is wrong and goes on without it, so that all faults are found at once.
    pub(super) fn note<T>(&mut self, result: Result<T>) -> Option<T> {
        match result {
            Ok(value) => Some(value),
            Err(error) => {
                self.fault(error);
                None
            }
        }
    }
    pub(super) fn fault(&mut self, error: Error) {
        if !self.faults.contains(&error) {
            self.faults.push(error);
        }
    }
    /// Hands its faults and warnings over to another, and gives the values.
    pub(super) fn hand_over(self, other: &mut Draft) -> Vec<Given> {
        self.faults.into_iter().for_each(|fault| other.fault(fault));
        other.warnings.extend(self.warnings);
        self.given
    }
    /// All that is wrong, one to a line; the end of the reading where there is any.
    pub(super) fn faults(&mut self) -> Result<()> {
        let faults = std::mem::take(&mut self.faults);
        if faults.is_empty() {
            return Ok(());
        }
        let rest = faults.len().saturating_sub(MOST);
        let readable = faults.into_iter().take(MOST).map(|e| Error::readable(e).to_string());
        let mut lines: Vec<String> = readable.collect();
        if rest > 0 {
            lines.push(format!("and {rest} more; put these right first"));
        }
        Err(Error::plan(lines.join("\n")))
    }
}
