//! A formula and its card.

pub mod array;
mod change;
mod describe;
mod near;
mod row;
mod search;
mod solve;

pub use array::BLOCK;
pub use change::Change;
pub(crate) use change::{greatest_first, steps};
pub use describe::Checks;
pub(crate) use hankwise_macros::formula;
pub(crate) use near::nearest;
pub use search::Touch;
pub(crate) use search::bisect;
pub use solve::Solution;

use crate::caution;
use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind};
use crate::worked::{Label, Recording, Tape, Worked, Working};
use std::sync::Arc;

/// An input of a formula.
#[derive(Debug)]
pub struct Input {
    /// Its name, as an argument.
    pub name: &'static str,
    /// Its symbol.
    pub symbol: &'static str,
    /// What it is, in words.
    pub meaning: &'static str,
    /// The kind of quantity.
    pub kind: Kind,
    /// The usual range, in the base unit; outside it a warning is given.
    pub usual: (f64, f64),
    /// Key of the source of the usual range, see [`crate::source`].
    pub basis: &'static str,
    /// True for a list of any length.
    pub many: bool,
    /// True for a list of the shares of one whole: they sum to 1.
    pub whole: bool,
}

impl Input {
    /// How one would write it as an argument in Python.
    pub fn example(&self) -> String {
        let one = argument(self.kind.example(), self.kind);
        if self.many { format!("[{one}, {one}]") } else { one }
    }
}

/// Whether a value is within a usual range, as a missing one (NaN) is. The ends belong to it, whatever the
/// rounding of a change of unit or of a difference that comes to nothing.
pub fn is_usual((low, high): (f64, f64), value: f64) -> bool {
    let slack = |end: f64, other: f64| 1e-9 * if end == 0.0 { other.abs() } else { end.abs() };
    let outside = value < low - slack(low, high) || value > high + slack(high, low);
    !outside
}

/// A text of a kind as an argument in Python: what has a unit is in quotes.
pub(crate) fn argument(text: &str, kind: Kind) -> String {
    if kind.family() == Kind::Ratio { text.to_owned() } else { format!("\"{text}\"") }
}

/// The result of a formula.
#[derive(Debug)]
pub struct Output {
    /// Its symbol.
    pub symbol: &'static str,
    /// The kind of quantity.
    pub kind: Kind,
}

/// The formula that solves a relation for one of its quantities.
pub struct Solved {
    /// The quantity that it gives: an input of the others, or what the inverses call the result.
    pub unknown: &'static str,
    /// The formula that gives it.
    pub by: &'static Formula,
}

/// By name: formulas of one relation point to each other.
impl std::fmt::Debug for Solved {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} by {}", self.unknown, self.by.name)
    }
}

/// A formula of the catalogue: its card and the ways to run it.
#[derive(Debug)]
pub struct Formula {
    /// Its name.
    pub name: &'static str,
    /// The module in which it is written.
    pub module: &'static str,
    /// What it says, in a sentence.
    pub summary: &'static str,
    /// More about it; may be empty.
    pub details: &'static str,
    /// Its inputs; lists come last, and are all of one length in a call.
    pub inputs: &'static [Input],
    /// How many of the inputs are lists.
    pub lists: usize,
    /// Its result.
    pub output: Output,
    /// Keys of the sources, see [`crate::source`].
    pub sources: &'static [&'static str],
    /// Where it holds and where not.
    pub limits: &'static [&'static str],
    /// What people get wrong with it.
    pub slips: &'static [&'static str],
    /// Names of the cautions that go with the figure, see [`crate::caution`].
    pub cautions: &'static [&'static str],
    /// The formula that this one is the inverse of.
    pub inverse_of: Option<&'static str>,
    /// The same relation solved for its other quantities.
    pub solved_for: &'static [Solved],
    /// The body over plain numbers in base units.
    pub evaluate: fn(&[f64]) -> f64,
    pub(crate) block: fn(&[&[f64; BLOCK]], &mut [f64; BLOCK]),
    pub(crate) record: for<'t> fn(&[Worked<'t>]) -> Worked<'t>,
}

impl Formula {
    /// The room of the house in which it stands: `yarn`, `cloth`, `mill` or `fibre`.
    pub fn room(&self) -> &'static str {
        self.module.split("::").nth(1).unwrap_or(self.module)
    }

    /// What can do harm where the figure is acted on, each with its name.
    pub fn caution_lines(&self) -> Vec<String> {
        caution::of(self.cautions).map(|caution| caution.line(&[])).collect()
    }

    /// The answer, in the base unit, with the inputs checked; an answer that cannot be is refused.
    pub fn answer(&self, row: &[f64]) -> Result<f64> {
        self.check(row)?;
        let answer = (self.evaluate)(row);
        let fault = if answer.is_finite() {
            let Err(e) = self.output.kind.check(answer) else { return Ok(answer) };
            format!("{}: {e}; it comes from {}", self.name, self.given(row))
        } else {
            format!("{} has no answer for {}", self.name, self.given(row))
        };
        let advice = match self.changes(row).as_str() {
            "" => self.suspects(row),
            changes if row.len() == 1 => format!("change it: {changes}"),
            changes => format!("each is possible, but not together; change one: {changes}"),
        };
        Err(Error::range(format!("{fault}; {advice}")))
    }

    /// The answer with its working, from quantities as the user gave them. `typed` holds the texts,
    /// where there are any.
    pub fn working(&self, given: &[Amount], typed: &[Option<String>]) -> Result<Working> {
        self.working_from(given, typed, |_| "")
    }

    /// The answer with its working; `origin` says of each input where it came from.
    fn working_from<'a>(
        &self,
        given: &[Amount],
        typed: &[Option<String>],
        origin: impl Fn(usize) -> &'a str,
    ) -> Result<Working> {
        let base: Vec<f64> = given.iter().map(Amount::base).collect();
        self.answer(&base)?;
        let tape = Tape::new();
        let root = {
            let row: Vec<Worked<'_>> = given
                .iter()
                .enumerate()
                .map(|(place, amount)| {
                    let text = typed.get(place).cloned().flatten();
                    self.enter(&tape, place, given.len(), amount, text, origin(place))
                })
                .collect();
            let result = (self.record)(&row);
            let label = || Label {
                symbol: self.output.symbol.to_owned(),
                key: self.name.to_owned(),
                unit: self.output.kind.base().to_owned(),
                meaning: self.summary.trim_end_matches('.').to_owned(),
                ..Label::default()
            };
            crate::number::Number::labelled(result, label).arg()
        };
        let changes = self.changed(given, typed)?;
        Ok(Working::new(Arc::new(tape.finish()), root).with_changes(changes))
    }

    fn enter<'t>(
        &self,
        tape: &'t Tape,
        place: usize,
        of: usize,
        amount: &Amount,
        text: Option<String>,
        origin: &str,
    ) -> Worked<'t> {
        let input = self.input(place, of);
        let (name, symbol) = (self.name_at(place, of), self.symbol_at(place, of));
        enter(tape, amount, text, input.kind, &name, &symbol, input.meaning, origin)
    }

    /// The lines of the formula in symbols, such as `K = t × √T / 100`: named intermediate results first.
    pub fn equations(&self) -> Vec<String> {
        let lines = self.specimen().lines();
        lines
            .iter()
            .filter(|l| !l.symbols.is_empty())
            .map(|l| format!("{} = {}", l.symbol, l.symbols))
            .collect()
    }

    /// A working with middling figures, for its symbols.
    fn specimen(&self) -> Working {
        let middle = |i: &Input| f64::midpoint(i.usual.0, i.usual.1);
        let members = |i: &Input| if i.many { 2 } else { 1 };
        let row: Vec<f64> =
            self.inputs.iter().flat_map(|i| std::iter::repeat_n(middle(i), members(i))).collect();
        let tape = Tape::new();
        let root = {
            let worked: Vec<Worked<'_>> = row
                .iter()
                .enumerate()
                .map(|(place, x)| {
                    let symbol = self.symbol_at(place, row.len());
                    tape.input(*x, Label { symbol, ..Label::default() })
                })
                .collect();
            let result = (self.record)(&worked);
            let label = || Label { symbol: self.output.symbol.to_owned(), ..Label::default() };
            crate::number::Number::labelled(result, label).arg()
        };
        Working::new(Arc::new(tape.finish()), root)
    }

    /// Runs the formula on a tape and hands over the finished recording.
    pub fn record(&self, row: &[f64]) -> (Recording, crate::worked::Arg) {
        let tape = Tape::new();
        let root = {
            let inputs: Vec<Worked<'_>> = row
                .iter()
                .enumerate()
                .map(|(place, x)| {
                    let symbol = self.input(place, row.len()).symbol.to_owned();
                    tape.input(*x, Label { symbol, ..Label::default() })
                })
                .collect();
            (self.record)(&inputs).arg()
        };
        (tape.finish(), root)
    }
}

/// Puts a quantity on a tape as the user gave it; the change to the base unit is a step like any
/// other, so that sensitivities come out in the user's own units.
pub(crate) fn enter<'t>(
    tape: &'t Tape,
    amount: &Amount,
    text: Option<String>,
    kind: Kind,
    name: &str,
    symbol: &str,
    meaning: &str,
    origin: &str,
) -> Worked<'t> {
    let unit = amount.unit;
    let typed = text.unwrap_or_else(|| {
        let number = crate::quantity::print::constant(amount.number);
        if unit.symbol.is_empty() { number } else { format!("{number} {}", unit.symbol) }
    });
    let mut label = Label {
        symbol: symbol.to_owned(),
        key: name.to_owned(),
        unit: kind.base().to_owned(),
        meaning: meaning.to_owned(),
        typed,
        origin: origin.to_owned(),
    };
    if unit.form == crate::quantity::Form::Times(1.0) {
        return tape.input(amount.number, label);
    }
    let given = Label {
        key: name.to_owned(),
        symbol: String::new(),
        unit: unit.symbol.to_owned(),
        meaning: "as given".to_owned(),
        typed: std::mem::take(&mut label.typed),
        origin: label.origin.clone(),
    };
    let given = tape.input(amount.number, given);
    crate::number::Number::labelled(unit.to_base(given), || label)
}
