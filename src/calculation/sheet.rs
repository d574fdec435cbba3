//! Results laid out: plain, recorded, in columns.

use std::borrow::Cow;

use super::card::{Answer, Output};
use crate::number::Number;
use crate::worked::{Arg, Label, Tape, Worked};

/// Takes the results of a calculation, one after another.
pub trait Sheet<N> {
    /// Begins a table with a heading.
    fn block(&mut self, _title: &'static str) {}
    /// A result.
    fn one(&mut self, answer: &'static Answer, value: &N);
    /// A member of a list of results, counted from 0.
    fn member(&mut self, answer: &'static Answer, place: usize, value: &N);
    /// Begins rows of results.
    fn rows(&mut self, _name: &'static str, _meaning: &'static str, _outputs: &'static [Output]) {}
    /// Goes into a row.
    fn enter(&mut self, name: &'static str, row: usize, label: Option<&str>);
    /// Comes out of it.
    fn leave(&mut self);
    /// Ends the rows.
    fn end_rows(&mut self) {}
}

/// A result by its full name.
#[derive(Clone, Debug)]
pub struct Found {
    /// Its name: `output`, `card.cost`, `weights[1].low`.
    pub name: Cow<'static, str>,
    /// Its card.
    pub answer: &'static Answer,
    /// The value, in the base unit of its kind.
    pub value: f64,
    /// The rows of results that it belongs to, by their name; empty where it belongs to none.
    pub list: &'static str,
}

/// How results are shown: by their places among all.
#[derive(Clone, Debug)]
pub(crate) enum Shown {
    /// A table of results, one to a line.
    Block { title: &'static str, places: Vec<usize> },
    /// A table of rows.
    Table { meaning: &'static str, rows: Vec<(String, Vec<usize>)> },
}

/// Where the sheet is in rows: what comes before names.
#[derive(Debug, Default)]
struct Path(Vec<String>, &'static str);

impl Path {
    /// The name of the rows that were gone into first.
    fn list(&self) -> &'static str {
        if self.0.is_empty() { "" } else { self.1 }
    }
    fn enter(&mut self, name: &'static str, row: usize, label: Option<&str>) {
        if self.0.is_empty() {
            self.1 = name;
        }
        let before = self.0.last().map_or("", String::as_str);
        self.0.push(match label {
            Some(label) => format!("{before}{label}."),
            None => format!("{before}{name}[{}].", row + 1),
        });
    }
    fn name(&self, name: &'static str) -> Cow<'static, str> {
        match self.0.last() {
            Some(before) => Cow::Owned(format!("{before}{name}")),
            None => Cow::Borrowed(name),
        }
    }
    fn member(&self, name: &str, place: usize) -> Cow<'static, str> {
        let before = self.0.last().map_or("", String::as_str);
        Cow::Owned(format!("{before}{name}[{}]", place + 1))
    }
}

/// The plain numbers, and how they are shown.
#[derive(Debug, Default)]
pub(super) struct Plain {
    pub(super) found: Vec<Found>,
    pub(super) shown: Vec<Shown>,
    path: Path,
}

impl Plain {
    fn push(&mut self, name: Cow<'static, str>, answer: &'static Answer, value: f64) {
        let place = self.found.len();
        self.found.push(Found { name, answer, value, list: self.path.list() });
        match self.shown.last_mut() {
            Some(Shown::Table { rows, .. }) if !self.path.0.is_empty() => {
                if let Some((_, places)) = rows.last_mut() {
                    places.push(place);
                }
            }
            Some(Shown::Block { places, .. }) => places.push(place),
            _ => self.shown.push(Shown::Block { title: "", places: vec![place] }),
        }
    }
}

impl Sheet<f64> for Plain {
    fn block(&mut self, title: &'static str) {
        self.shown.push(Shown::Block { title, places: Vec::new() });
    }
    fn one(&mut self, answer: &'static Answer, value: &f64) {
        self.push(self.path.name(answer.name), answer, *value);
    }
    fn member(&mut self, answer: &'static Answer, place: usize, value: &f64) {
        self.push(self.path.member(answer.name, place), answer, *value);
    }
    fn rows(&mut self, _name: &'static str, meaning: &'static str, _outputs: &'static [Output]) {
        if self.path.0.is_empty() {
            self.shown.push(Shown::Table { meaning, rows: Vec::new() });
        }
    }
    fn enter(&mut self, name: &'static str, row: usize, label: Option<&str>) {
        self.path.enter(name, row, label);
        if self.path.0.len() == 1
            && let Some(Shown::Table { rows, .. }) = self.shown.last_mut()
        {
            let label = label.map_or_else(|| (row + 1).to_string(), str::to_owned);
            rows.push((label, Vec::new()));
        }
    }
    fn leave(&mut self) {
        self.path.0.pop();
    }
    fn end_rows(&mut self) {
        if self.path.0.is_empty() {
            self.shown.push(Shown::Block { title: "", places: Vec::new() });
        }
    }
}

/// Names each result on its tape, and notes where it stands.
#[derive(Debug)]
pub(super) struct Recorded<'t> {
    tape: &'t Tape,
    pub(super) args: Vec<Arg>,
    path: Path,
}

impl<'t> Recorded<'t> {
    pub(super) fn new(tape: &'t Tape) -> Recorded<'t> {
        Recorded { tape, args: Vec::new(), path: Path::default() }
    }
    fn push(&mut self, name: Cow<'static, str>, answer: &'static Answer, value: Worked<'t>) {
        let label = || Label {
            key: name.into_owned(),
            unit: answer.kind.base().to_owned(),
            meaning: answer.meaning.to_owned(),
            ..Label::default()
        };
        // A result that rests on no input, such as a number from a table, is on no tape yet.
        let value = match value.arg() {
            Arg::Constant(number) => self.tape.input(number, label()),
            Arg::Step(_) => value.labelled(label),
        };
        self.args.push(value.arg());
    }
}

impl<'t> Sheet<Worked<'t>> for Recorded<'t> {
    fn one(&mut self, answer: &'static Answer, value: &Worked<'t>) {
        self.push(self.path.name(answer.name), answer, *value);
    }
    fn member(&mut self, answer: &'static Answer, place: usize, value: &Worked<'t>) {
        self.push(self.path.member(answer.name, place), answer, *value);
    }
    fn enter(&mut self, name: &'static str, row: usize, label: Option<&str>) {
        self.path.enter(name, row, label);
    }
    fn leave(&mut self) {
        self.path.0.pop();
    }
}

/// A result for each of many cases.
#[derive(Clone, Debug)]
pub struct FoundColumn {
    /// Its name.
    pub name: Cow<'static, str>,
    /// Its card.
    pub answer: &'static Answer,
    /// The values, in the base unit; NaN where a case has none.
    pub values: Vec<f64>,
    /// The rows of results that it belongs to, by their name; empty where it belongs to none.
    pub list: &'static str,
    /// The rows in which it stands.
    rows: Vec<(&'static str, usize)>,
    /// The case that had it last.
    last: usize,
}

/// Collects results case after case.
#[derive(Debug, Default)]
pub(super) struct Columns {
    pub(super) found: Vec<FoundColumn>,
    pub(super) case: usize,
    cases: usize,
    cursor: usize,
    rows: Vec<(&'static str, usize)>,
    path: Path,
}

impl Columns {
    pub(super) fn new(cases: usize) -> Columns {
        Columns { cases, ..Columns::default() }
    }
    pub(super) fn start(&mut self, case: usize) {
        (self.case, self.cursor) = (case, 0);
    }
    /// Forgets the case: it has no results.
    pub(super) fn clear(&mut self) {
        for column in &mut self.found {
            column.values[self.case] = f64::NAN;
        }
    }
    /// The results that the case at hand has.
    pub(super) fn at_hand(&self) -> impl Iterator<Item = &FoundColumn> {
        self.found.iter().filter(|column| column.last == self.case)
    }
    fn put(
        &mut self,
        name: impl FnOnce(&Path) -> Cow<'static, str>,
        answer: &'static Answer,
        value: f64,
    ) {
        let is_it = |column: &FoundColumn, rows: &[(&str, usize)]| {
            std::ptr::eq(column.answer, answer) && column.rows == rows
        };
        // Nearly always the results come as in the case before.
        let place = match self.found.get(self.cursor) {
            Some(next) if is_it(next, &self.rows) => self.cursor,
            _ => {
                let found = self.found.iter().position(|column| is_it(column, &self.rows));
                found.unwrap_or_else(|| {
                    let (name, values) = (name(&self.path), vec![f64::NAN; self.cases]);
                    let (list, rows) = (self.path.list(), self.rows.clone());
                    self.found.push(FoundColumn { name, answer, values, list, rows, last: 0 });
                    self.found.len() - 1
                })
            }
        };
        self.found[place].values[self.case] = value;
        self.found[place].last = self.case;
        self.cursor = place + 1;
    }
}

impl Sheet<f64> for Columns {
    fn one(&mut self, answer: &'static Answer, value: &f64) {
        self.put(|path| path.name(answer.name), answer, *value);
    }
    fn member(&mut self, answer: &'static Answer, place: usize, value: &f64) {
        self.rows.push((answer.name, place));
        self.put(|path| path.member(answer.name, place), answer, *value);
        self.rows.pop();
    }
    fn enter(&mut self, name: &'static str, row: usize, label: Option<&str>) {
        self.rows.push((name, row));
        self.path.enter(name, row, label);
    }
    fn leave(&mut self) {
        self.rows.pop();
        self.path.0.pop();
    }
}
