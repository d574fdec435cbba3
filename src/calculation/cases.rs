//! A calculation over many cases.

use super::check::Check;
use super::given::{Entry, Given, Reader};
use super::say::Say;
use super::sheet::{Columns, Found, FoundColumn};
use super::solved::{Asked, of_formulas, possible, record, unusual};
use super::{Calculation, Chain};
use crate::caution::{self, Caution};
use crate::error::{Error, Result};

/// The results of a calculation for each of many cases.
#[derive(Clone, Debug)]
pub struct Cases {
    /// The calculation.
    pub calculation: &'static Calculation,
    /// The results, a column each.
    pub columns: Vec<FoundColumn>,
    /// What is unusual.
    pub warnings: Vec<CaseWarning>,
    cautions: Vec<&'static str>,
}

/// A warning of some of many cases.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CaseWarning {
    /// What is said of the first of them.
    pub message: String,
    /// The place of the first of them, from 0.
    pub first: usize,
    /// How many of the cases it is said of.
    pub number: usize,
    /// The number of all cases.
    pub of: usize,
}

impl CaseWarning {
    /// The warning in words; `row` is what the place of the first case is called, such as `row 3`.
    pub fn words(&self, row: &str) -> String {
        let CaseWarning { message, number, of, .. } = self;
        if number == of {
            return message.clone();
        }
        format!("{number} of {of} cases, the first in {row}: {message}")
    }
}

impl Cases {
    /// What can do harm where the results are acted on.
    pub fn cautions(&self) -> Vec<&'static Caution> {
        caution::of(&self.cautions).collect()
    }
}

/// Told how many cases are done; `false` ends the run.
pub type GoOn<'a> = &'a mut dyn FnMut(usize) -> bool;

/// Fewer cases than these are not worth a word of how far the run is.
const CASES_AT_ONCE: usize = 4096;

pub(super) fn cases<C: Chain>(
    calculation: &'static Calculation,
    given: &Given,
    go_on: GoOn<'_>,
) -> Result<Cases> {
    let mut reader = Reader::new(given);
    let inputs = C::take(&mut reader)?;
    let entries = reader.entries;
    let columns = || entries.iter().filter_map(|e| e.column.as_ref().map(|c| (e, c)));
    let cases = columns().map(|(_, column)| column.len()).next().unwrap_or(1);
    if let Some((other, column)) = columns().find(|(_, column)| column.len() != cases) {
        return Err(Error::notation(format!(
            "{} has {} values where others have {cases}; give columns of one length",
            other.key,
            column.len()
        )));
    }
    let say = Say::of(&entries);
    let mut base: Vec<f64> = entries.iter().map(|entry| entry.amount.base()).collect();
    let mut warnings: Vec<CaseWarning> =
        entries.iter().zip(&base).filter_map(|(e, base)| unusual_in(e, *base, cases)).collect();
    let mut sheet = Columns::new(cases.max(1));
    let mut refused: Option<CaseWarning> = None;
    let mut said = Said::default();
    for case in 0..cases {
        if case % CASES_AT_ONCE == 0 && case > 0 && !go_on(case) {
            return Err(Error::notation(format!("stopped after {case} of {cases} cases")));
        }
        for (base, entry) in base.iter_mut().zip(&entries) {
            if let Some(column) = &entry.column {
                *base = column[case];
            }
        }
        // What is missing has no results, and is not calculated with: a body may count up to it.
        if entries.iter().zip(&base).any(|(e, x)| e.column.is_some() && x.is_nan()) {
            continue;
        }
        sheet.start(case);
        let plain = C::map(&inputs, &mut |place| base[place.0]);
        let results = C::body(&plain);
        C::show(&results, &mut sheet);
        let impossible = sheet.at_hand().find_map(|column| {
            let (name, value) = (&column.name, column.values[case]);
            if value.is_finite() && column.answer.kind.check(value).is_ok() {
                return None;
            }
            let (answer, list) = (column.answer, column.list);
            possible(&Found { name: name.clone(), answer, list, value }).err()
        });
        let context = Asked { say: &say, given };
        let mut check = Check::new(&context);
        let fault = C::check(&plain, &results, &mut check).err().or(impossible);
        if let Some(error) = fault {
            sheet.clear();
            let message = || format!("no results (NaN): {error}");
            let first = || CaseWarning { message: message(), first: case, number: 0, of: cases };
            refused.get_or_insert_with(first).number += 1;
            continue;
        }
        check.warnings.into_iter().for_each(|warning| said.add(case, warning));
    }
    let said = said.kinds.into_iter().map(|(_, warning)| CaseWarning { of: cases, ..warning });
    warnings.extend(said.chain(refused));
    if sheet.found.is_empty() {
        // Not one case is there: the names of the results are those of a usual one.
        let usual: Vec<f64> = entries.iter().map(|entry| entry.amount.base()).collect();
        C::show(&C::body(&C::map(&inputs, &mut |place| usual[place.0])), &mut sheet);
        sheet.clear();
    }
    sheet.found.iter_mut().for_each(|column| column.values.truncate(cases));
    // The formulas are the same in every case.
    let formulas = record::<C>(given).map_or_else(|_| Vec::new(), |(tape, _)| of_formulas(&tape));
    let cautions = calculation.cautions.iter().copied().chain(formulas).collect();
    Ok(Cases { calculation, columns: sheet.found, warnings, cautions })
}

/// Warns of a value, or of the values of a column, outside the usual range.
fn unusual_in(entry: &Entry, base: f64, cases: usize) -> Option<CaseWarning> {
    let warning = |message, first, number| CaseWarning { message, first, number, of: cases };
    let Some(column) = &entry.column else {
        return unusual(entry, base).map(|message| warning(message, 0, cases));
    };
    let (first, message) =
        column.iter().enumerate().find_map(|(row, base)| Some((row, unusual(entry, *base)?)))?;
    let number = column.iter().filter(|base| !entry.input.is_usual(**base)).count();
    Some(warning(message, first, number))
}

/// What was warned of in many cases: of warnings that differ in their numbers alone, the first.
#[derive(Default)]
struct Said {
    kinds: Vec<(String, CaseWarning)>,
}

impl Said {
    /// More kinds of warning than these are not kept apart.
    const MOST: usize = 5;

    fn add(&mut self, case: usize, message: String) {
        let kind: String = message.chars().filter(|c| !c.is_ascii_digit()).collect();
        if let Some((_, warning)) = self.kinds.iter_mut().find(|(known, _)| *known == kind) {
            warning.number += 1;
        } else if self.kinds.len() < Self::MOST {
            self.kinds.push((kind, CaseWarning { message, first: case, number: 1, of: 0 }));
        }
    }
}
