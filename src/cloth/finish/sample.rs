//! What a sample that was measured before and after says of a process.

use super::process::{Of, Process};
use crate::cloth;
use crate::cloth::tables::finishing::{LEAST_MARKS, SPECIMENS};
use crate::error::{Error, Result};
use crate::number::V;
use crate::particulars::Desk;
use crate::quantity::print::with_unit;
use crate::quantity::{Amount, Kind, Length, Mass};
use crate::worked::Worked;

/// A figure as it was measured, and the text where there was one.
type Figure = (Amount, Option<String>);

/// What was measured before and after, specimen by specimen.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    pairs: Vec<[Figure; 2]>,
    /// How far a reading may be off, in the base unit.
    reading: Option<Amount>,
    kind: Kind,
}

impl Measured {
    /// Specimens before and after; `reading` is how far each reading may be off, either way.
    pub fn new(kind: Kind, pairs: Vec<[Figure; 2]>, reading: Option<Amount>) -> Result<Measured> {
        if pairs.is_empty() {
            return Err(Error::notation(
                "no specimen; give what it measured before and after, such as ('50 cm', '41 cm')",
            ));
        }
        let off = reading.map_or(0.0, |r| r.base());
        for (amount, _) in pairs.iter().flatten() {
            kind.check(amount.base())?;
            if amount.base() <= 0.0 {
                return Err(Error::range(format!(
                    "a specimen that measures {} is none; measure it again, or leave it out",
                    with_unit(amount.number, amount.unit.symbol)
                )));
            }
            // A reading that may be off by all there is says nothing.
            if amount.base() <= 2.0 * off {
                return Err(Error::range(format!(
                    "{} is measured where the reading may be off by {}; measure a larger specimen",
                    with_unit(amount.number, amount.unit.symbol),
                    reading.map_or_else(String::new, |r| with_unit(r.number, r.unit.symbol))
                )));
            }
        }
        Ok(Measured { pairs, reading, kind })
    }

    fn plain(&self) -> impl Iterator<Item = [f64; 2]> {
        self.pairs.iter().map(|pair| [pair[0].0.base(), pair[1].0.base()])
    }

    /// The mean of the specimens.
    pub(super) fn likely(&self) -> f64 {
        self.plain().map(|[before, after]| 1.0 - after / before).sum::<f64>()
            / self.pairs.len() as f64
    }

    /// From the least that a specimen can have lost to the most, each reading off as far as it may be.
    pub(super) fn band(&self) -> (f64, f64) {
        let off = self.reading.map_or(0.0, |r| r.base());
        self.plain().fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), [before, after]| {
            let least = 1.0 - (after + off) / (before - off);
            let most = 1.0 - (after - off) / (before + off);
            (low.min(least), high.max(most))
        })
    }

    /// The loss on a desk, from each specimen's measures.
    pub(super) fn enter<'t>(&self, desk: &Desk<'t>, name: &str) -> V<Worked<'t>> {
        let several = self.pairs.len() > 1;
        let losses = self.pairs.iter().enumerate().map(|(k, pair)| {
            let [before, after] = [("before", "x_1"), ("after", "x_2")];
            let number = if several { format!("_{}", k + 1) } else { String::new() };
            let enter = |(when, symbol): (&str, &str), (amount, typed): &Figure| {
                let (name, words) = (format!("{name}_{when}{number}"), format!("specimen {when}"));
                if self.kind == Kind::Mass {
                    desk.given::<Mass<_>>(&name, symbol, &words, amount, typed.clone()).v()
                } else {
                    desk.given::<Length<_>>(&name, symbol, &words, amount, typed.clone()).v()
                }
            };
            let (x1, x2) = (enter(before, &pair[0]), enter(after, &pair[1]));
            if self.kind == Kind::Mass {
                cloth::mass_loss_from_masses(Mass::from(x1), Mass::from(x2)).v()
            } else {
                cloth::shrinkage_from_sizes(Length::from(x1), Length::from(x2)).v()
            }
        });
        let sum = V::sum(losses);
        if several { sum / self.pairs.len() as f64 } else { sum }
    }

    /// How it was measured, in words.
    pub(super) fn words(&self) -> String {
        let specimens = match self.pairs.len() {
            1 => "one specimen, which says nothing of how far the next would differ".to_owned(),
            n => format!("mean of {n} specimens"),
        };
        let reading = match self.reading {
            Some(r) => format!("each reading to ± {}", with_unit(r.number, r.unit.symbol)),
            None => "the reading error was not given".to_owned(),
        };
        format!("{specimens}; {reading}")
    }

    /// What is doubtful about the sample.
    pub(super) fn doubts(&self) -> impl Iterator<Item = String> {
        let small = self.plain().map(|[before, _]| before).fold(f64::INFINITY, f64::min);
        let marks = (self.kind == Kind::Length && small < LEAST_MARKS).then(|| {
            format!(
                "measured over {} m; the marks of a specimen stand at least {LEAST_MARKS} m apart and \
                 {SPECIMENS} specimens are taken when possible (source: ISO 5077 summary)",
                crate::quantity::print::figure(small)
            )
        });
        marks.into_iter()
    }
}

impl Process {
    /// A process as a sample went through it: what was measured of its width, length and mass.
    ///
    /// ```
    /// use hankwise::cloth::{Measured, Process};
    /// use hankwise::quantity::{Kind, parse};
    ///
    /// let width = vec![[(parse("62 in")?, None), (parse("57 in")?, None)]];
    /// let width = Measured::new(Kind::Length, width, Some(parse("0.5 in")?))?;
    /// let felted = Process::from_sample("felt", Some(width), None, None)?;
    /// assert_eq!(format!("{:.4}", felted.figure("width").unwrap()), "0.0806");
    /// let (low, high) = felted.band("width").unwrap();
    /// assert_eq!(format!("{low:.4} {high:.4}"), "0.0650 0.0960");
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    pub fn from_sample(
        name: &str,
        width: Option<Measured>,
        length: Option<Measured>,
        mass: Option<Measured>,
    ) -> Result<Process> {
        let mut process = Process::new(name)?;
        if width.is_none() && length.is_none() && mass.is_none() {
            return Err(Error::notation(format!(
                "{name}: nothing was measured; give width, length or mass before and after"
            )));
        }
        for (of, measured) in [(Of::Width, width), (Of::Length, length), (Of::Mass, mass)] {
            if let Some(measured) = measured {
                process.found(of, measured);
            }
        }
        Ok(process)
    }
}
