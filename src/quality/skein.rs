//! Count by the skein, in the state that an option of the test names.

use std::str::FromStr;

use super::{Sample, Summary};
use crate::error::{Error, Result, did_you_mean};
use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::print::{figure, with_unit};
use crate::quantity::{Kind, Length, LinearDensity, Mass, Regain, Unit, unit};
use crate::table::{Block, Report};
use crate::yarn::count_of;

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[&COMMERCIAL_COUNT];

/// Count from the oven-dry mass of a skein and what is added to it by agreement.
#[formula(
    result = "T",
    sources = ["ASTM D1907", "definition"],
    limits = ["for the option 3 of ASTM D1907 what is added is a regain; for 7, of a scoured skein, the commercial allowance: regain and finish together"],
    slips = ["a moisture content for a regain: 17 % regain is 14.5 % content", "a mass that was not oven-dry"]
)]
pub fn commercial_count<N: Number>(
    /// length of the skein
    #[q("L", 1.0..=1000.0)]
    skein_length: Length<N>,
    /// its oven-dry mass
    #[q("m_d", 0.00001..=1.0)]
    oven_dry_mass: Mass<N>,
    /// regain or commercial allowance, on the oven-dry mass
    #[q("A", 0.0..=0.25)]
    allowance: Regain<N>,
) -> LinearDensity<N> {
    oven_dry_mass / skein_length * (1.0 + allowance) * 1e6
}

/// An option of the skein test of ASTM D1907.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SkeinOption {
    /// Its number.
    pub number: u8,
    /// Its name.
    pub name: &'static str,
    /// True where the skeins are weighed oven-dry.
    pub oven_dry: bool,
    /// What is added to the oven-dry mass; empty where nothing is.
    pub adds: &'static str,
}

impl SkeinOption {
    /// All of them.
    pub const ALL: [SkeinOption; 7] = [
        option(1, "conditioned", false, ""),
        option(2, "oven-dry", true, ""),
        option(3, "oven-dry plus regain", true, "regain"),
        option(4, "scoured, conditioned", false, ""),
        option(5, "scoured, oven-dry", true, ""),
        option(6, "scoured, oven-dry plus regain", true, "regain"),
        option(7, "scoured, oven-dry plus commercial allowance", true, "commercial allowance"),
    ];
}

const fn option(number: u8, name: &'static str, oven_dry: bool, adds: &'static str) -> SkeinOption {
    SkeinOption { number, name, oven_dry, adds }
}

impl FromStr for SkeinOption {
    type Err = Error;
    /// By number or by name.
    fn from_str(text: &str) -> Result<SkeinOption> {
        let asked = text.trim().to_lowercase();
        let found = |o: &&SkeinOption| o.name == asked || o.number.to_string() == asked;
        SkeinOption::ALL.iter().find(found).copied().ok_or_else(|| {
            let near = did_you_mean(&asked, SkeinOption::ALL.iter().map(|o| o.name))
                .map_or_else(String::new, |n| format!("; did you mean '{n}'?"));
            let all: Vec<_> =
                SkeinOption::ALL.iter().map(|o| format!("{} '{}'", o.number, o.name)).collect();
            Error::notation(format!(
                "'{text}' is no option of the skein test{near}; write a number or a name: {}",
                all.join(", ")
            ))
        })
    }
}

/// The count of a yarn by the skein, with its interval.
#[derive(Clone, Debug)]
pub struct SkeinCount {
    /// The option of the test.
    pub option: SkeinOption,
    /// Length of each skein, in metres.
    pub length: f64,
    /// What was added to the oven-dry mass.
    pub allowance: Option<f64>,
    /// What the skeins say, each as a count in tex.
    pub summary: Summary,
    /// The unit in which the count is shown.
    pub unit: &'static Unit,
    /// What the scope of the test says against it.
    pub warnings: Vec<String>,
}

impl SkeinCount {
    /// The count from the masses of skeins of one length. `stretch` is how far the yarn stretches
    /// between the two tensions that the scope of the test names.
    pub fn new(
        masses: &[f64],
        length: f64,
        option: SkeinOption,
        allowance: Option<f64>,
        stretch: Option<f64>,
        confidence: f64,
        shown: &'static Unit,
    ) -> Result<Self> {
        let wrong = |message: String| Err(Error::range(message));
        if shown.kind != Kind::LinearDensity {
            return Err(Error::unit(format!("'{}' is no unit of a count", shown.symbol)));
        }
        match (option.adds, allowance) {
            ("", Some(_)) => {
                return wrong(format!(
                    "option {} ({}) adds nothing; leave out the allowance, or write option 3, 6 or 7",
                    option.number, option.name
                ));
            }
            ("", None) | (_, Some(_)) => {}
            (adds, None) => {
                return wrong(format!(
                    "option {} ({}) adds a {adds}; write allowance=, such as '17 %'",
                    option.number, option.name
                ));
            }
        }
        if !length.is_finite() || length <= 0.0 {
            return wrong("a skein has a length; write it, such as '100 m'".to_owned());
        }
        if let Some(place) = masses.iter().position(|m| !m.is_finite() || *m <= 0.0) {
            return wrong(format!("skein {} weighs nothing; leave it out", place + 1));
        }
        let (run, added) = (Length::base(length), Regain::base(allowance.unwrap_or(0.0)));
        let count = |mass: &f64| match allowance {
            None => count_of(run, Mass::base(*mass)).value(),
            Some(_) => commercial_count(run, Mass::base(*mass), added).value(),
        };
        let tex = unit("tex", None)?;
        let sample = Sample::new(masses.iter().map(count).collect(), tex)?;
        let summary = Summary::new(sample, confidence, None)?;
        let mut warnings = Vec::new();
        if summary.mean > 2000.0 {
            warnings.push(format!(
                "{} tex is coarser than the 2000 tex up to which the test is meant (ASTM D1907, scope)",
                figure(summary.mean)
            ));
        }
        if let Some(s) = stretch.filter(|s| *s >= 0.05) {
            warnings.push(format!(
                "a yarn that stretches {} % from 0.25 to 0.75 cN/tex is outside the test, which is for \
                 less than 5 % (ASTM D1907, scope)",
                figure(s * 100.0)
            ));
        }
        Ok(SkeinCount { option, length, allowance, summary, unit: shown, warnings })
    }

    /// The count and the ends of its interval, in tex; in an indirect unit the finer end is the
    /// higher number. No yarn is finer than none, so where the skeins are too few and too uneven for
    /// the finer end it is 0 tex.
    pub fn limits(&self) -> [f64; 2] {
        self.summary.mean_limits.map(|tex| tex.max(0.0))
    }

    /// The interval in words.
    fn interval(&self) -> String {
        let say = |tex: f64| with_unit(self.unit.from_base(tex), self.unit.symbol);
        let chance = format!("{} % of the time", figure(self.summary.confidence * 100.0));
        match self.limits() {
            _ if self.summary.sd <= 0.0 => format!(". {}", super::summary::EQUAL),
            [fine, coarse] if fine <= 0.0 => format!(
                ", no coarser than {} {chance}; too few skeins that vary too much to say how fine.",
                say(coarse)
            ),
            [fine, coarse] if self.unit.is_indirect() => {
                format!(", between {} and {} {chance}.", say(coarse), say(fine))
            }
            [fine, coarse] => format!(", between {} and {} {chance}.", say(fine), say(coarse)),
        }
    }

    /// The count as a table.
    pub fn report(&self) -> Report {
        let s = &self.summary;
        let say = |tex: f64| with_unit(self.unit.from_base(tex), self.unit.symbol);
        let added = self.allowance.map_or(String::new(), |a| {
            format!(" {} {} % on the oven-dry mass.", capital(self.option.adds), figure(a * 100.0))
        });
        let variation = s.variation.filter(|v| *v > 0.0).map_or(String::new(), |v| {
            format!(" They vary by {} % from skein to skein.", figure(v * 100.0))
        });
        let mut lead = vec![
            format!("{}{}", say(s.mean), self.interval()),
            format!("{} skeins of {} m.{variation}", s.sample.n(), figure(self.length)),
            format!("Option {} of ASTM D1907: {}.{added}", self.option.number, self.option.name),
        ];
        lead.extend(self.warnings.iter().cloned());
        let foot = s.farthest.filter(super::Farthest::stands_apart).map(|f| {
            format!(
                "Skein {} stands apart ({}; Grubbs' test): look for a cause.",
                f.place + 1,
                say(f.value)
            )
        });
        Report {
            title: String::new(),
            blocks: vec![Block {
                title: "Count by the skein".to_owned(),
                lead,
                foot: foot.into_iter().collect(),
                ..Block::default()
            }],
        }
    }
}

fn capital(word: &str) -> String {
    let mut letters = word.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}
