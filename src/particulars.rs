//! The named figures of a longer calculation, each with its working.

use std::cell::RefCell;
use std::sync::Arc;

use crate::caution::{self, Caution};
use crate::error::{Error, Result, did_you_mean};
use crate::formula::enter;
use crate::number::{Number, V};
use crate::quantity::{Amount, Kind, Typed};
use crate::table::{Block, Report};
use crate::worked::{Arg, Label, Recording, Tape, Worked, Working};

/// A figure among particulars.
#[derive(Clone, Debug)]
pub struct Named {
    /// Its name.
    pub name: String,
    /// What it is, in words.
    pub words: String,
    /// The figure, in the base unit of its kind.
    pub value: f64,
    /// Its kind.
    pub kind: Kind,
    at: Arg,
}

/// The named figures of a calculation that chains formulas: a piece from its finished size to the
/// yarn, a cloth through its finishing.
#[derive(Clone, Debug)]
pub struct Particulars {
    recording: Arc<Recording>,
    figures: Vec<Named>,
    report: Report,
    warnings: Vec<String>,
    cautions: Vec<&'static Caution>,
}

/// Where a calculation is done: it hands out what was given and keeps what is named.
#[derive(Debug)]
pub struct Desk<'t> {
    tape: &'t Tape,
    figures: RefCell<Vec<Named>>,
    warnings: RefCell<Vec<String>>,
    cautions: RefCell<Vec<&'static str>>,
}

impl<'t> Desk<'t> {
    /// A quantity as the user gave it; `typed` is the text, where there was one.
    pub fn given<Q: Typed<Worked<'t>>>(
        &self,
        name: &str,
        symbol: &str,
        words: &str,
        amount: &Amount,
        typed: Option<String>,
    ) -> Q {
        Q::from(V(enter(self.tape, amount, typed, Q::KIND, name, symbol, words, "")))
    }
    /// Names a figure: it gets a line in the working and stands among the particulars.
    pub fn figure<Q: Typed<Worked<'t>>>(&self, name: &str, words: &str, figure: Q) -> Q {
        let figure = figure.v().0.labelled(|| Label {
            key: name.to_owned(),
            unit: Q::KIND.base().to_owned(),
            meaning: words.to_owned(),
            ..Label::default()
        });
        self.figures.borrow_mut().push(Named {
            name: name.to_owned(),
            words: words.to_owned(),
            value: figure.value(),
            kind: Q::KIND,
            at: figure.arg(),
        });
        Q::from(V(figure))
    }
    /// What a figure is in words, its value in the base unit and its kind, once it is named.
    pub fn found(&self, name: &str) -> Option<(String, f64, Kind)> {
        let figures = self.figures.borrow();
        figures.iter().find(|f| f.name == name).map(|f| (f.words.clone(), f.value, f.kind))
    }
    /// Adds a caution by its name, beside those of the formulas that run.
    pub fn beware(&self, caution: &'static str) {
        self.cautions.borrow_mut().push(caution);
    }
    /// Says what is unusual.
    pub fn warn(&self, warning: impl Into<String>) {
        let warning = warning.into();
        let mut all = self.warnings.borrow_mut();
        if !all.contains(&warning) {
            all.push(warning);
        }
    }
}

impl Particulars {
    /// Runs a calculation. The body asks the desk for what was given, runs formulas, names what
    /// matters and says how it is to be shown.
    pub fn work(body: impl for<'t> FnOnce(&Desk<'t>) -> Result<Report>) -> Result<Particulars> {
        let tape = Tape::new();
        let desk = Desk {
            tape: &tape,
            figures: RefCell::default(),
            warnings: RefCell::default(),
            cautions: RefCell::default(),
        };
        let mut report = body(&desk)?;
        let Desk { figures, warnings, cautions, .. } = desk;
        let (figures, warnings) = (figures.into_inner(), warnings.into_inner());
        if let Some(none) = figures.iter().find(|f| !f.value.is_finite()) {
            return Err(Error::range(format!(
                "{} ({}) has no finite answer for what was given; look for a zero or a loss of the \
                 whole",
                none.name, none.words
            )));
        }
        for figure in &figures {
            figure.kind.check(figure.value).map_err(|e| e.at(&figure.name))?;
        }
        let recording = tape.finish();
        let mut names = cautions.into_inner();
        names.extend(recording.calls.values().flat_map(|call| call.formula.cautions));
        let cautions: Vec<&'static Caution> = caution::of(&names).collect();
        report.blocks.extend(Block::cautions(cautions.iter().copied()));
        Ok(Particulars { recording: Arc::new(recording), figures, report, warnings, cautions })
    }
    /// The figures, in the order in which they were found.
    pub fn figures(&self) -> &[Named] {
        &self.figures
    }
    /// A figure by its name.
    pub fn find(&self, name: &str) -> Result<&Named> {
        self.figures.iter().find(|f| f.name == name).ok_or_else(|| {
            let names = || self.figures.iter().map(|f| f.name.as_str());
            let near = did_you_mean(name, names())
                .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
            let all = names().collect::<Vec<_>>().join(", ");
            Error::notation(format!("there is no figure '{name}'{near}; there are {all}"))
        })
    }
    /// The working of a figure.
    pub fn working(&self, name: &str) -> Result<Working> {
        Ok(Working::new(self.recording.clone(), self.find(name)?.at))
    }
    /// How the particulars are shown.
    pub fn report(&self) -> &Report {
        &self.report
    }
    /// What can do harm where the figures are acted on.
    pub fn cautions(&self) -> &[&'static Caution] {
        &self.cautions
    }
    /// What is unusual.
    pub fn warnings(&self) -> &[String] {
        &self.warnings
    }
    /// Writes all figures as a live workbook: a cell a step, formulas instead of values, and the
    /// cautions on a sheet of their own.
    #[cfg(feature = "sheet")]
    pub fn to_sheet(&self, path: &std::path::Path) -> Result<()> {
        let roots: Vec<Arg> = self.figures.iter().map(|f| f.at).collect();
        let title = self.report.title.clone();
        let sections = [crate::worked::Section { title, names: Vec::new() }];
        let cautions: Vec<String> = self.cautions.iter().map(|c| c.line(&[])).collect();
        crate::worked::write_sheet(path, &self.recording, &roots, &sections, &[], &cautions)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::prelude::*;

    /// A throw of 1.40 m by way of the reed.
    fn throw() -> Result<Particulars> {
        Particulars::work(|desk| {
            let finished: Length<_> =
                desk.given("width", "b", "finished width", &parse("1.40 m")?, None);
            let shrinkage: Shrinkage<_> =
                desk.given("shrinkage", "s", "shrinkage in width", &parse("12 %")?, None);
            let draw_in: DrawIn<_> = desk.given("draw_in", "d", "draw-in", &parse("6 %")?, None);
            let off_loom = desk.figure(
                "off_loom",
                "width off the loom",
                cloth::size_before_shrinkage(finished, shrinkage),
            );
            desk.figure(
                "reed",
                "width in the reed",
                cloth::reed_width(finished, shrinkage, draw_in),
            );
            desk.warn("only a test");
            assert!(off_loom.value() > 1.4);
            Ok(Report::default())
        })
    }

    #[test]
    fn figures_have_their_working() {
        let throw = throw().unwrap();
        assert_eq!(throw.figures().len(), 2);
        let reed = throw.find("reed").unwrap();
        assert!((reed.value - 1.40 / (0.88 * 0.94)).abs() < 1e-12);
        let text = throw.working("reed").unwrap().text();
        assert!(text.contains("reed_width") && text.contains("12 %"), "{text}");
        let error = throw.find("read").unwrap_err().to_string();
        assert!(error.contains("did you mean 'reed'"), "{error}");
        assert_eq!(throw.warnings(), ["only a test"]);
    }
}
