//! A formula and its card; the catalogue of them all.

pub mod array;
mod catalogue;
mod solve;

pub use array::BLOCK;
pub(crate) use catalogue::has_words;
pub use catalogue::{all, find, search};
pub(crate) use hankwise_macros::formula;

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
    /// True for a list of any length.
    pub many: bool,
}

/// The result of a formula.
#[derive(Debug)]
pub struct Output {
    /// Its symbol.
    pub symbol: &'static str,
    /// The kind of quantity.
    pub kind: Kind,
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
    /// Its inputs; a list comes last.
    pub inputs: &'static [Input],
    /// Its result.
    pub output: Output,
    /// Keys of the sources, see [`crate::source`].
    pub sources: &'static [&'static str],
    /// Where it holds and where not.
    pub limits: &'static [&'static str],
    /// What people get wrong with it.
    pub slips: &'static [&'static str],
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

    /// Refuses a wrong number of inputs and inputs that cannot be.
    pub fn check(&self, row: &[f64]) -> Result<()> {
        let least = self.inputs.len();
        let list = self.inputs.last().is_some_and(|i| i.many);
        if row.len() < least || (row.len() > least && !list) {
            let names: Vec<&str> = self.inputs.iter().map(|i| i.name).collect();
            return Err(Error::notation(format!(
                "{} takes {} ({}), {} given",
                self.name,
                if least == 1 { "one input".to_owned() } else { format!("{least} inputs") },
                names.join(", "),
                row.len()
            )));
        }
        for (place, value) in row.iter().enumerate() {
            let input = self.input(place);
            input
                .kind
                .check(*value)
                .map_err(|e| e.at(format_args!("{}, {}", self.name, input.name)))?;
        }
        Ok(())
    }

    /// The input that a place in a row belongs to: a list input takes all that follow.
    pub fn input(&self, place: usize) -> &'static Input {
        &self.inputs[place.min(self.inputs.len() - 1)]
    }

    /// Inputs outside their usual range, each with a sentence.
    pub fn unusual(&self, row: &[f64]) -> Vec<String> {
        row.iter().enumerate().filter_map(|(k, value)| self.unusual_at(k, *value)).collect()
    }

    /// The sentence where the input at a place is outside its usual range.
    pub fn unusual_at(&self, place: usize, value: f64) -> Option<String> {
        let print = crate::quantity::print::of_kind;
        let input = self.input(place);
        let (low, high) = input.usual;
        (value < low || value > high).then(|| {
            format!(
                "{}: {} = {} is unusual; the usual range is {} to {} (common practice)",
                self.name,
                input.name,
                print(value, input.kind),
                print(low, input.kind),
                print(high, input.kind),
            )
        })
    }

    /// The answer, in the base unit, with the inputs checked; an answer that cannot be is refused.
    pub fn answer(&self, row: &[f64]) -> Result<f64> {
        self.check(row)?;
        let answer = (self.evaluate)(row);
        if !answer.is_finite() {
            let given = self.given(row);
            return Err(Error::range(format!(
                "{} has no finite answer ({answer}) for {given}; look for a zero or a loss of the whole",
                self.name,
            )));
        }
        self.output.kind.check(answer).map_err(|e| {
            let given = self.given(row);
            let advice = "each is possible, but not together: look for one too large or too small";
            Error::range(format!("{}: {e}; it comes from {given}; {advice}", self.name))
        })?;
        Ok(answer)
    }

    /// The inputs and their figures, for a message.
    fn given(&self, row: &[f64]) -> String {
        let print = crate::quantity::print::of_kind;
        let given: Vec<String> = row
            .iter()
            .enumerate()
            .map(|(k, x)| format!("{} = {}", self.input(k).name, print(*x, self.input(k).kind)))
            .collect();
        given.join(", ")
    }

    /// The answer with its working, from quantities as the user gave them. `typed` holds the texts,
    /// where there are any.
    pub fn working(&self, given: &[Amount], typed: &[Option<String>]) -> Result<Working> {
        let base: Vec<f64> = given.iter().map(Amount::base).collect();
        self.answer(&base)?;
        let tape = Tape::new();
        let root = {
            let row: Vec<Worked<'_>> = given
                .iter()
                .enumerate()
                .map(|(place, amount)| {
                    let text = typed.get(place).cloned().flatten();
                    self.enter(&tape, place, given.len(), amount, text)
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
        Ok(Working::new(Arc::new(tape.finish()), root))
    }

    fn enter<'t>(
        &self,
        tape: &'t Tape,
        place: usize,
        of: usize,
        amount: &Amount,
        text: Option<String>,
    ) -> Worked<'t> {
        let input = self.input(place);
        let (mut name, mut symbol) = (input.name.to_owned(), input.symbol.to_owned());
        if input.many {
            let number = place + 2 - self.inputs.len();
            debug_assert!(number <= of);
            name = format!("{name}[{number}]");
            symbol = format!("{symbol}{}", crate::worked::subscript(number));
        }
        enter(tape, amount, text, input.kind, &name, &symbol, input.meaning, "")
    }

    /// The formula in symbols, such as `K = t × √T / 100`.
    pub fn equation(&self) -> String {
        let line = self.specimen().lines().pop();
        line.map_or(String::new(), |line| format!("{} = {}", line.symbol, line.symbols))
    }

    /// The lines of the formula in symbols: named intermediate results first.
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
        let mut row: Vec<f64> =
            self.inputs.iter().map(|i| f64::midpoint(i.usual.0, i.usual.1)).collect();
        if let (Some(last), true) =
            (row.last().copied(), self.inputs.last().is_some_and(|i| i.many))
        {
            row.push(last);
        }
        let tape = Tape::new();
        let root = {
            let worked: Vec<Worked<'_>> = row
                .iter()
                .enumerate()
                .map(|(place, x)| {
                    let input = self.input(place);
                    let mut symbol = input.symbol.to_owned();
                    if input.many {
                        symbol += &crate::worked::subscript(place + 2 - self.inputs.len());
                    }
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
                    let input = self.input(place);
                    tape.input(*x, Label { symbol: input.symbol.to_owned(), ..Label::default() })
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
