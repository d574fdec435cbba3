//! The working of one answer: every step in symbols and in numbers, from what the user gave.

use std::fmt::Write as _;
use std::sync::{Arc, OnceLock};

use super::expression::Dialect;
use super::gradient::Sensitivity;
use super::latex::{latex_figure, latex_symbol};
use super::lines::Lines;
use super::tape::{Arg, Recording};
use crate::formula::Change;
use crate::quantity::print::{escape, figure};

/// A notebook sets cells flush right where they do not say otherwise.
const LEFT: &str = "style=\"text-align:left\"";

/// One line of a working.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// The step on the tape.
    pub step: usize,
    /// Full name, such as `spin.count`.
    pub name: String,
    /// The symbol that the line defines.
    pub symbol: String,
    /// What the value is, in words.
    pub meaning: String,
    /// Right-hand side in symbols; empty for an input.
    pub symbols: String,
    /// Right-hand side in numbers.
    pub numbers: String,
    /// The value itself.
    pub value: f64,
    /// The value as it is printed: with the digits that the lines after it need.
    pub printed: String,
    /// Its unit.
    pub unit: String,
    /// The formula of the catalogue that the line applies.
    pub formula: Option<&'static str>,
    /// What the formula takes for a constant: what it is, and the number.
    pub given: Vec<(String, String)>,
    /// Where the constants of the line come from.
    pub constants: Vec<String>,
    /// Where an input came from.
    pub origin: String,
    /// What the equation leaves of zero, where the value was found by iteration.
    pub residual: Option<f64>,
}

/// The working of one answer.
#[derive(Clone, Debug)]
pub struct Working {
    recording: Arc<Recording>,
    root: Arg,
    unit: String,
    /// Keys of the sources of constants that no formula brought in.
    sources: &'static [&'static str],
    changes: OnceLock<Vec<Change>>,
    chain: Option<Chain>,
}

/// Works the changes of a chain out when they are first asked for: it runs the chain for each input.
#[derive(Clone)]
struct Chain(Arc<dyn Fn() -> Vec<Change> + Send + Sync>);

impl std::fmt::Debug for Chain {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Chain")
    }
}

impl Working {
    /// The working of a step of a recording.
    pub fn new(recording: Arc<Recording>, root: Arg) -> Self {
        let unit = match root {
            Arg::Step(step) => recording.labels.get(&step).map(|l| l.unit.clone()),
            Arg::Constant(_) => None,
        };
        Working {
            recording,
            root,
            unit: unit.unwrap_or_default(),
            sources: &[],
            changes: OnceLock::new(),
            chain: None,
        }
    }
    /// The same, with what steps of the inputs do to the answer.
    pub(crate) fn with_changes(self, changes: Vec<Change>) -> Self {
        Working { changes: changes.into(), ..self }
    }
    /// The same, with what works out what steps of the inputs do to the answer.
    pub(crate) fn with_chain(
        self,
        changes: impl Fn() -> Vec<Change> + Send + Sync + 'static,
    ) -> Self {
        Working { chain: Some(Chain(Arc::new(changes))), ..self }
    }
    /// What a step that can happen, of each input, does to the answer of a formula or of a calculation, the
    /// greatest change first; of a calculation only the inputs that change it. None for a plan.
    pub fn changes(&self) -> &[Change] {
        self.changes.get_or_init(|| self.chain.as_ref().map_or_else(Vec::new, |chain| (chain.0)()))
    }
    /// The same, of a chain that rests on sources of its own.
    pub(crate) fn with_sources(self, sources: &'static [&'static str]) -> Self {
        Working { sources, ..self }
    }
    /// The answer, in [`Working::unit`].
    pub fn value(&self) -> f64 {
        self.recording.value(self.root)
    }
    /// The unit of the answer.
    pub fn unit(&self) -> &str {
        &self.unit
    }
    /// The name of the answer.
    pub fn name(&self) -> String {
        match self.root {
            Arg::Step(step) => Lines::new(&self.recording, &[self.root]).name(step),
            Arg::Constant(x) => figure(x),
        }
    }
    /// How much the answer moves with each input.
    pub fn sensitivities(&self) -> Vec<Sensitivity> {
        self.recording.sensitivities(self.root)
    }
    /// The lines from the inputs down to the answer.
    pub fn lines(&self) -> Vec<Line> {
        self.lines_in(Dialect::Text)
    }
    /// A value typed in a unit of its own is in the line that converts it, so it needs none.
    fn lines_in(&self, dialect: Dialect) -> Vec<Line> {
        let lines = Lines::keyed(&self.recording, &[self.root], self.sources);
        lines
            .steps()
            .filter(|s| !lines.is_typed_input(*s))
            .map(|s| lines.line(s, dialect))
            .collect()
    }
    /// The recording that the working is read from.
    pub fn recording(&self) -> &Arc<Recording> {
        &self.recording
    }
    /// The step that the working ends in.
    pub fn root(&self) -> Arg {
        self.root
    }

    /// The working as plain text.
    pub fn text(&self) -> String {
        let mut out = String::new();
        for line in self.lines() {
            let _ = writeln!(out, "{} = {}", line.symbol_and_name(), line.right_side());
            let note = line.note();
            if !note.is_empty() {
                let _ = writeln!(out, "    {note}");
            }
        }
        out
    }

    /// The working as an HTML table.
    pub fn html(&self) -> String {
        let mut out = String::from(
            "<table class=\"hankwise-working\"><thead><tr style=\"text-align:left\"><th>value</th>\
             <th>how</th><th>result</th><th>note</th></tr></thead><tbody>",
        );
        for line in self.lines() {
            let how = match (line.symbols.is_empty(), line.numbers.is_empty()) {
                (true, _) => line.numbers.clone(),
                (false, true) => line.symbols.clone(),
                (false, false) => format!("{} = {}", line.symbols, line.numbers),
            };
            let _ = write!(
                out,
                "<tr><td {LEFT}>{}</td><td {LEFT}>{}</td><td {LEFT}>{}</td><td {LEFT}>{}</td></tr>",
                escape(&line.symbol_and_name()),
                escape(&how),
                escape(&line.result()),
                escape(&line.note()),
            );
        }
        out.push_str("</tbody></table>");
        out
    }

    /// The working as a LaTeX `aligned` environment.
    pub fn latex(&self) -> String {
        let rows: Vec<String> = self
            .lines_in(Dialect::Latex)
            .into_iter()
            .map(|line| {
                let mut row = format!("{} &= ", latex_symbol(&line.symbol));
                for side in [&line.symbols, &line.numbers] {
                    if !side.is_empty() {
                        row.push_str(side);
                        row.push_str(" = ");
                    }
                }
                row + &latex_figure(&line.printed, &line.unit)
            })
            .collect();
        format!("\\begin{{aligned}}\n{}\n\\end{{aligned}}\n", rows.join(" \\\\\n"))
    }
}

impl Line {
    fn symbol_and_name(&self) -> String {
        if self.name == self.symbol || self.symbol.is_empty() {
            self.name.clone()
        } else {
            format!("{} ({})", self.name, self.symbol)
        }
    }
    /// The value with its unit, as printed.
    fn result(&self) -> String {
        if self.unit.is_empty() {
            self.printed.clone()
        } else {
            format!("{} {}", self.printed, self.unit)
        }
    }
    fn right_side(&self) -> String {
        let mut sides: Vec<String> =
            [&self.symbols, &self.numbers].into_iter().filter(|s| !s.is_empty()).cloned().collect();
        let result = self.result();
        if sides.len() != 1 || sides[0] != result {
            sides.push(result);
        }
        sides.join(" = ")
    }
    /// What is said of the line: what the value is, the formula, constants, where an input came from.
    pub fn note(&self) -> String {
        let mut parts = Vec::new();
        if !self.meaning.is_empty() {
            parts.push(self.meaning.clone());
        }
        if let Some(formula) = self.formula {
            parts.push(format!("formula {formula}"));
        }
        if !self.given.is_empty() {
            let given: Vec<String> =
                self.given.iter().map(|(what, n)| format!("{n} for the {what}")).collect();
            parts.push(format!("with {}", given.join(", ")));
        }
        parts.extend(self.constants.iter().cloned());
        if !self.origin.is_empty() {
            parts.push(self.origin.clone());
        }
        if let Some(residual) = self.residual {
            let off =
                if residual == 0.0 { "nothing".to_owned() } else { format!("{residual:.0e}") };
            parts.push(format!("found by iteration; the equation is off by {off}"));
        }
        parts.join("; ")
    }
}
