//! The working of one answer: every step in symbols and in figures, from what the user gave.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::sync::Arc;

use super::expression::{Dialect, Leaf, Writer};
use super::gradient::Sensitivity;
use super::tape::{Arg, Call, Op, Recording};
use crate::quantity::print::{escape, figure, with_unit};

/// One line of a working.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// The step on the tape.
    pub step: usize,
    /// Full name, such as `spin.count`.
    pub name: String,
    /// The symbol that the line defines.
    pub symbol: String,
    /// What the figure is, in words.
    pub meaning: String,
    /// Right-hand side in symbols; empty for an input.
    pub symbols: String,
    /// Right-hand side in figures.
    pub figures: String,
    /// The figure itself.
    pub value: f64,
    /// Its unit.
    pub unit: String,
    /// The formula of the catalogue that the line applies.
    pub formula: Option<&'static str>,
    /// What the symbols stand for, where they are not names of other lines.
    pub given: Vec<(String, String)>,
    /// Where an input came from.
    pub origin: String,
}

/// The working of one answer.
#[derive(Clone, Debug)]
pub struct Working {
    recording: Arc<Recording>,
    root: Arg,
    unit: String,
}

impl Working {
    /// The working of a step of a recording.
    pub fn new(recording: Arc<Recording>, root: Arg) -> Self {
        let unit = match root {
            Arg::Step(step) => recording.labels.get(&step).map(|l| l.unit.clone()),
            Arg::Constant(_) => None,
        };
        Working { recording, root, unit: unit.unwrap_or_default() }
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
    /// A figure typed in a unit of its own stands in the line that converts it, so it needs none.
    fn lines_in(&self, dialect: Dialect) -> Vec<Line> {
        let lines = Lines::new(&self.recording, &[self.root]);
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
            "<table class=\"hankwise-working\"><thead><tr><th>figure</th><th>how</th>\
             <th>result</th><th>note</th></tr></thead><tbody>",
        );
        for line in self.lines() {
            let how = match (line.symbols.is_empty(), line.figures.is_empty()) {
                (true, _) => line.figures.clone(),
                (false, true) => line.symbols.clone(),
                (false, false) => format!("{} = {}", line.symbols, line.figures),
            };
            let _ = write!(
                out,
                "<tr><td>{}</td><td>{}</td><td style=\"text-align:right\">{}</td><td>{}</td></tr>",
                escape(&line.symbol_and_name()),
                escape(&how),
                escape(&with_unit(line.value, &line.unit)),
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
                for side in [&line.symbols, &line.figures] {
                    if !side.is_empty() {
                        row.push_str(side);
                        row.push_str(" = ");
                    }
                }
                row + &latex_figure(line.value, &line.unit)
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
    fn right_side(&self) -> String {
        let mut sides: Vec<String> =
            [&self.symbols, &self.figures].into_iter().filter(|s| !s.is_empty()).cloned().collect();
        let result = with_unit(self.value, &self.unit);
        if sides.last() != Some(&result) {
            sides.push(result);
        }
        sides.join(" = ")
    }
    fn note(&self) -> String {
        let mut parts = Vec::new();
        if !self.meaning.is_empty() {
            parts.push(self.meaning.clone());
        }
        if let Some(formula) = self.formula {
            parts.push(format!("formula {formula}"));
        }
        if !self.given.is_empty() {
            let given: Vec<String> = self.given.iter().map(|(s, n)| format!("{s} = {n}")).collect();
            parts.push(format!("with {}", given.join(", ")));
        }
        if !self.origin.is_empty() {
            parts.push(self.origin.clone());
        }
        parts.join("; ")
    }
}

/// Splits a recording into lines: which steps get one, and what each is called.
pub(super) struct Lines<'a> {
    recording: &'a Recording,
    steps: BTreeSet<usize>,
    /// The formula inside which a step was made: its call, by the step of its result.
    scope: BTreeMap<usize, usize>,
    /// Names for steps that the recording left without a label.
    spare: BTreeMap<usize, String>,
}

impl<'a> Lines<'a> {
    pub(super) fn new(recording: &'a Recording, roots: &[Arg]) -> Self {
        let mut needed = vec![false; recording.steps.len()];
        for root in roots {
            for (all, one) in needed.iter_mut().zip(recording.needed_for(*root)) {
                *all |= one;
            }
        }
        let mut spare = BTreeMap::new();
        let mut steps: BTreeSet<usize> = recording.labels.keys().copied().collect();
        for (result, call) in &recording.calls {
            steps.insert(*result);
            spare.entry(*result).or_insert_with(|| call.formula.output.symbol.to_owned());
            for (place, input) in call.inputs.iter().enumerate() {
                if let Arg::Step(step) = input
                    && steps.insert(*step)
                {
                    spare.entry(*step).or_insert_with(|| call.symbol(place));
                }
            }
        }
        for root in roots {
            if let Arg::Step(step) = root {
                steps.insert(*step);
            }
        }
        steps.retain(|step| needed[*step]);
        let mut scope = BTreeMap::new();
        for (result, call) in &recording.calls {
            let mut open = vec![*result];
            while let Some(step) = open.pop() {
                if scope.contains_key(&step) {
                    continue;
                }
                scope.insert(step, *result);
                for arg in &recording.steps[step].args {
                    if let Arg::Step(below) = arg
                        && !call.inputs.contains(arg)
                    {
                        open.push(*below);
                    }
                }
            }
        }
        Lines { recording, steps, scope, spare }
    }

    pub(super) fn steps(&self) -> impl Iterator<Item = usize> + '_ {
        self.steps.iter().copied()
    }

    /// The full name of a line.
    pub(super) fn name(&self, step: usize) -> String {
        match self.recording.labels.get(&step) {
            Some(label) if !label.name().is_empty() => label.name().to_owned(),
            _ => self.spare.get(&step).cloned().unwrap_or_else(|| format!("step {step}")),
        }
    }

    fn symbol(&self, step: usize) -> String {
        match self.recording.labels.get(&step) {
            Some(label) if !label.symbol.is_empty() => label.symbol.clone(),
            _ => self.spare.get(&step).cloned().unwrap_or_else(|| self.name(step)),
        }
    }

    fn call_around(&self, step: usize) -> Option<&'a Call> {
        self.scope.get(&step).and_then(|result| self.recording.calls.get(result))
    }

    pub(super) fn line(&self, step: usize, dialect: Dialect) -> Line {
        let recording = self.recording;
        let value = recording.steps[step].value;
        let label = recording.labels.get(&step).cloned().unwrap_or_default();
        let call = recording.calls.get(&step);
        let unit = match call {
            Some(call) if label.unit.is_empty() => call.formula.output.kind.base().to_owned(),
            _ => label.unit.clone(),
        };
        let (symbols, figures) = if recording.steps[step].op == Op::Input {
            let typed =
                if label.typed.is_empty() { with_unit(value, &unit) } else { label.typed.clone() };
            (String::new(), words(&typed, dialect))
        } else {
            self.both_sides(step, dialect)
        };
        Line {
            step,
            name: self.name(step),
            symbol: self.symbol(step),
            meaning: label.meaning,
            symbols,
            figures,
            value,
            unit,
            formula: call.map(|c| c.formula.name),
            given: self.given(step),
            origin: label.origin,
        }
    }

    fn both_sides(&self, step: usize, dialect: Dialect) -> (String, String) {
        let recording = self.recording;
        let around = self.call_around(step);
        let symbols = Writer {
            recording,
            dialect,
            leaf: |i: usize| {
                if let Some(symbol) = around.and_then(|call| call.symbol_of(Arg::Step(i))) {
                    Leaf::Word(in_dialect(&symbol, dialect))
                } else if self.is_typed_input(i) {
                    // The typed figure and its unit are the symbol: `9 tpi × 39.37`.
                    Leaf::Word(words(&recording.labels[&i].typed, dialect))
                } else if self.steps.contains(&i) {
                    let word = if around.is_some() { self.symbol(i) } else { self.name(i) };
                    Leaf::Word(in_dialect(&word, dialect))
                } else {
                    Leaf::Expand
                }
            },
        }
        .step(step);
        let figures = Writer {
            recording,
            dialect,
            leaf: |i: usize| {
                if self.is_typed_input(i) && !recording.labels[&i].unit.is_empty() {
                    Leaf::Word(words(&recording.labels[&i].typed, dialect))
                } else if self.steps.contains(&i)
                    || around.is_some_and(|call| call.inputs.contains(&Arg::Step(i)))
                {
                    Leaf::Word(figure(recording.steps[i].value))
                } else {
                    Leaf::Expand
                }
            },
        }
        .step(step);
        let same = symbols == figures;
        (if same { String::new() } else { symbols }, figures)
    }

    /// An input that was typed in a unit of its own and is converted by the next step.
    fn is_typed_input(&self, step: usize) -> bool {
        self.recording.steps[step].op == Op::Input
            && self
                .recording
                .labels
                .get(&step)
                .is_some_and(|l| !l.typed.is_empty() && l.symbol.is_empty())
    }

    fn given(&self, step: usize) -> Vec<(String, String)> {
        let Some(call) = self.recording.calls.get(&step) else {
            return Vec::new();
        };
        call.inputs
            .iter()
            .enumerate()
            .filter_map(|(place, input)| {
                let symbol = call.symbol(place);
                match input {
                    Arg::Constant(x) => Some((symbol, figure(*x))),
                    Arg::Step(i) => {
                        let name = self.name(*i);
                        // Where the line of the input shows the same symbol, nothing need be said.
                        (self.symbol(*i) != symbol).then_some((symbol, name))
                    }
                }
            })
            .collect()
    }
}

impl Call {
    /// The symbol of an input; a list input counts its members from 1.
    pub(super) fn symbol(&self, place: usize) -> String {
        let inputs = self.formula.inputs;
        let last = inputs.len() - 1;
        let input = &inputs[place.min(last)];
        if input.many {
            format!("{}{}", input.symbol, subscript(place - last + 1))
        } else {
            input.symbol.to_owned()
        }
    }
    fn symbol_of(&self, arg: Arg) -> Option<String> {
        self.inputs.iter().position(|input| *input == arg).map(|place| self.symbol(place))
    }
}

pub(crate) fn subscript(n: usize) -> String {
    n.to_string()
        .chars()
        .filter_map(|c| "₀₁₂₃₄₅₆₇₈₉".chars().nth(c as usize - '0' as usize))
        .collect()
}

fn in_dialect(word: &str, dialect: Dialect) -> String {
    if dialect == Dialect::Latex { latex_symbol(word) } else { word.to_owned() }
}

fn words(text: &str, dialect: Dialect) -> String {
    if dialect == Dialect::Latex { latex_text(text) } else { text.to_owned() }
}

fn latex_text(text: &str) -> String {
    format!(r"\text{{{}}}", latex_escape(text))
}

fn latex_escape(text: &str) -> String {
    text.chars()
        .map(|c| match c {
            '%' | '_' | '#' | '&' | '$' | '{' | '}' => format!("\\{c}"),
            '√' => r"$\surd$".to_owned(),
            '²' => "$^2$".to_owned(),
            '½' => r"$\tfrac12$".to_owned(),
            other => other.to_string(),
        })
        .collect()
}

/// `T`, `e₁`, `T_f` as mathematics; a longer name as text.
fn latex_symbol(symbol: &str) -> String {
    let mut head = String::new();
    let mut below = String::new();
    for c in symbol.chars() {
        if let Some(digit) = "₀₁₂₃₄₅₆₇₈₉".chars().position(|d| d == c) {
            below.push_str(&digit.to_string());
        } else if let Some(word) = GREEK.iter().find(|(greek, _)| *greek == c) {
            head.push_str(word.1);
        } else {
            head.push(c);
        }
    }
    if let Some((start, end)) = head.clone().split_once('_') {
        start.clone_into(&mut head);
        below.insert_str(0, end);
    }
    if head.chars().count() > 1 && !head.starts_with('\\') {
        return latex_text(symbol);
    }
    if below.is_empty() { head } else { format!(r"{head}_{{\mathrm{{{}}}}}", latex_escape(&below)) }
}

const GREEK: [(char, &str); 8] = [
    ('α', r"\alpha"),
    ('η', r"\eta"),
    ('ρ', r"\rho"),
    ('φ', r"\varphi"),
    ('π', r"\pi"),
    ('σ', r"\sigma"),
    ('θ', r"\theta"),
    ('ω', r"\omega"),
];

fn latex_figure(value: f64, unit: &str) -> String {
    if unit.is_empty() {
        figure(value)
    } else {
        format!(r"{}\ {}", figure(value), latex_text(unit))
    }
}
