//! Running a calculation: once, recorded, over many cases.

use std::sync::{Arc, OnceLock};

use super::check::{Check, Context};
use super::given::{Entry, Given, Reader};
use super::say::Say;
use super::sheet::{Found, Plain, Recorded, Shown};
use super::{Calculation, Chain};
use crate::caution::{self, Caution};
use crate::error::{Error, Result, or_near};
use crate::formula::enter;
use crate::quantity::{Amount, Kind};
use crate::table::Report;
use crate::worked::{Arg, Recording, Tape, Worked, Working};

/// The results of a calculation, each with its working.
#[derive(Clone, Debug)]
pub struct Solved {
    pub(super) calculation: &'static Calculation,
    given: Given,
    pub(super) say: Say,
    pub(super) found: Vec<Found>,
    pub(super) shown: Vec<Shown>,
    warnings: Vec<String>,
    pub(super) notes: Vec<(&'static str, String)>,
    pub(super) beside: Vec<(String, String)>,
    recorded: OnceLock<(Arc<Recording>, Vec<Arg>)>,
}

pub(super) fn solve<C: Chain>(calculation: &'static Calculation, given: Given) -> Result<Solved> {
    let mut reader = Reader::new(&given);
    let inputs = C::take(&mut reader)?;
    let entries = reader.entries;
    let base: Vec<f64> = entries.iter().map(|entry| entry.amount.base()).collect();
    let plain = C::map(&inputs, &mut |place| base[place.0]);
    let results = C::body(&plain);
    let say = Say::of(&entries);
    let context = Asked { say: &say, given: &given };
    let mut check = Check::new(&context);
    for (entry, base) in entries.iter().zip(&base) {
        if let Some(warning) = unusual(entry, *base) {
            check.warn(warning);
        }
    }
    C::check(&plain, &results, &mut check)?;
    let mut sheet = Plain::default();
    C::show(&results, &mut sheet);
    for found in &sheet.found {
        possible(found)?;
    }
    let Check { warnings, notes, beside, .. } = check;
    let Plain { found, shown, .. } = sheet;
    Ok(Solved {
        calculation,
        say,
        found,
        shown,
        warnings,
        notes,
        beside,
        recorded: OnceLock::new(),
        given,
    })
}

/// A calculation with what was given for it.
pub(super) struct Asked<'a> {
    pub(super) say: &'a Say,
    pub(super) given: &'a Given,
}

impl Context for Asked<'_> {
    fn say(&self, base: f64, kind: Kind) -> String {
        self.say.say(base, kind)
    }
    fn refuse(&self, name: &str, message: String) -> Error {
        self.say.refuse(name, message)
    }
    fn given(&self, base: f64, kind: Kind) -> Option<Amount> {
        self.say.given(base, kind)
    }
    fn has(&self, name: &str) -> bool {
        self.given.value(name).is_some()
    }
}

/// What is said of a value outside its usual range.
pub(super) fn unusual(entry: &Entry, base: f64) -> Option<String> {
    let words = entry.input.unusual(base)?;
    let member = entry.key.strip_suffix(entry.input.name).unwrap_or("");
    Some(format!("{member}{words}"))
}

/// Refuses a result that cannot be.
pub(super) fn possible(found: &Found) -> Result<()> {
    if !found.value.is_finite() {
        return Err(Error::range(format!(
            "{} ({}) has no finite answer for what was given; look for a zero or a loss of the whole",
            found.name, found.answer.meaning
        )));
    }
    found.answer.kind.check(found.value).map_err(|e| e.at(&found.name))
}

/// The recording of a run, and the steps of its results.
pub(super) type Record = (Recording, Vec<Arg>);

pub(super) fn record<C: Chain>(given: &Given) -> Result<Record> {
    let mut reader = Reader::new(given);
    let inputs = C::take(&mut reader)?;
    let entries = reader.entries;
    let tape = Tape::new();
    let args = {
        // What only a part of the body asks for is entered when it is.
        let entered: Vec<Worked<'_>> = entries
            .iter()
            .map(|Entry { input, key, amount, typed, .. }| {
                let typed = typed.clone();
                enter(&tape, amount, typed, input.kind, key, input.symbol, input.meaning, "")
            })
            .collect();
        let worked = C::map(&inputs, &mut |place| entered[place.0]);
        let mut sheet = Recorded::new(&tape);
        C::show(&C::body(&worked), &mut sheet);
        sheet.args
    };
    Ok((tape.finish(), args))
}

/// The cautions of the formulas that were called.
pub(super) fn of_formulas(tape: &Recording) -> Vec<&'static str> {
    tape.calls.values().flat_map(|call| call.formula.cautions).copied().collect()
}

pub(super) fn report<C: Chain>(given: &Given) -> Option<Report> {
    let mut reader = Reader::new(given);
    let inputs = C::take(&mut reader).ok()?;
    let entries = reader.entries;
    let plain = C::map(&inputs, &mut |place| entries[place.0].amount.base());
    let say = Say::of(&entries);
    C::report(&plain, &C::body(&plain), &Check::new(&say))
}

impl Solved {
    /// The calculation.
    pub fn calculation(&self) -> &'static Calculation {
        self.calculation
    }
    /// What was given.
    pub fn given(&self) -> &Given {
        &self.given
    }
    /// The results, in their order.
    pub fn results(&self) -> &[Found] {
        &self.found
    }
    /// A result by its name.
    pub fn find(&self, name: &str) -> Result<&Found> {
        Ok(&self.found[self.place(name)?])
    }
    fn place(&self, name: &str) -> Result<usize> {
        self.found.iter().position(|found| found.name == name).ok_or_else(|| {
            let names: Vec<&str> = self.found.iter().map(|found| &*found.name).collect();
            let known = super::card::answers(self.calculation.outputs);
            // A row may say why it has no such result.
            let row = name.rsplit_once('.').map_or(name, |(row, _)| row);
            if let Some((_, why)) = self.beside.iter().find(|(at, _)| at == row) {
                return Error::notation(format!("'{name}' has no answer here: {why}"));
            }
            if known.iter().any(|answer| answer.name == name) {
                return Error::notation(format!(
                    "'{name}' was not calculated: an input that it depends on was omitted; see the \
                     description of {}",
                    self.calculation.name
                ));
            }
            let near = or_near(name, &names);
            Error::notation(format!("no result '{name}'{near} Results: {}", names.join(", ")))
        })
    }
    /// The recording of the whole, made when it is first asked for.
    fn recorded(&self) -> &(Arc<Recording>, Vec<Arg>) {
        self.recorded.get_or_init(|| {
            // What could be solved can be recorded: the same inputs, the same body.
            let recorded = (self.calculation.runs.record)(&self.given);
            recorded.map_or_else(|_| Default::default(), |(tape, args)| (Arc::new(tape), args))
        })
    }
    /// The working of a result.
    pub fn working(&self, name: &str) -> Result<Working> {
        let place = self.place(name)?;
        let (recording, args) = self.recorded();
        let (changed, given) = (self.calculation.runs.changed, self.given.clone());
        let name = self.found[place].name.clone();
        Ok(Working::new(recording.clone(), args[place])
            .with_sources(self.calculation.sources)
            .with_chain(move || changed(&given, &name)))
    }
    /// What is unusual.
    pub fn warnings(&self) -> &[String] {
        &self.warnings
    }
    /// What can do harm where the results are acted on.
    pub fn cautions(&self) -> Vec<&'static Caution> {
        let mut names = self.calculation.cautions.to_vec();
        names.extend(of_formulas(&self.recorded().0));
        caution::of(&names).collect()
    }
    /// The layout that the calculation gives the results itself, where it does.
    pub(super) fn own_report(&self) -> Option<Report> {
        (self.calculation.runs.report)(&self.given)
    }
    /// Writes all results as a live workbook: a cell a step, formulas instead of values, and the
    /// cautions on a sheet of their own.
    #[cfg(feature = "sheet")]
    pub fn to_workbook(&self, out: impl Into<crate::files::Output>) -> Result<()> {
        let (recording, args) = self.recorded();
        let title = self.calculation.title.to_owned();
        let sections = [crate::worked::Section { title, names: Vec::new() }];
        let cautions: Vec<String> = self.cautions().iter().map(|c| c.line(&[])).collect();
        crate::worked::write_sheet(&out.into(), recording, args, &sections, &[], &cautions)
    }
}
