//! Which steps of a recording get a line, and what each is called.

use std::collections::{BTreeMap, BTreeSet};

use super::constants;
use super::digits::Digits;
use super::expression::{Dialect, Leaf, Writer};
use super::latex::{in_dialect, number, words};
use super::names::Names;
use super::tape::{Arg, Call, Op, Recording, Root};
use super::working::Line;
use crate::quantity::print::{constant, constant_to, significant};
use crate::source::cited;

/// A difference of so small a share of what it is of is what rounding leaves.
const REST: f64 = 1e-13;

/// Splits a recording into lines: which steps get one, and what each is called.
pub(super) struct Lines<'a> {
    recording: &'a Recording,
    steps: BTreeSet<usize>,
    /// The formula inside which a step was made: its call, by the step of its result.
    scope: BTreeMap<usize, usize>,
    names: Names,
    digits: Digits,
    /// Keys of the sources of constants that no formula brought in.
    sources: &'static [&'static str],
}

impl<'a> Lines<'a> {
    pub(super) fn new(recording: &'a Recording, roots: &[Arg]) -> Self {
        let mut needed = vec![false; recording.steps.len()];
        for root in roots {
            for (all, one) in needed.iter_mut().zip(recording.needed_for(*root)) {
                *all |= one;
            }
        }
        let mut steps: BTreeSet<usize> = recording.labels.keys().copied().collect();
        for (result, call) in &recording.calls {
            steps.insert(*result);
            let inputs = call.inputs.iter().filter_map(|input| match input {
                Arg::Step(step) => Some(*step),
                Arg::Constant(_) => None,
            });
            steps.extend(inputs);
        }
        // What no calculator has a key for stands on a line of its own.
        let chosen = recording.steps.iter().enumerate();
        let chosen = chosen.filter(|(_, step)| matches!(step.op, Op::Chosen | Op::LookedUp));
        steps.extend(chosen.map(|(step, _)| step));
        for root in roots {
            if let Arg::Step(step) = root {
                steps.insert(*step);
            }
        }
        // The equation of a root may rest on others, which have lines too.
        for root in (0..needed.len()).filter(|step| recording.roots.contains_key(step)) {
            if let (true, Some(Root { residual, .. })) = (needed[root], recording.roots.get(&root))
            {
                let inner = recording.needed_for(*residual);
                let nested = |step: &usize| {
                    *step > root && inner[*step] && recording.roots.contains_key(step)
                };
                (0..inner.len()).filter(nested).for_each(|step| needed[step] = true);
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
        let named = steps.iter().copied().filter(|step| !is_typed_input(recording, *step));
        let names = Names::of(recording, named);
        Lines { recording, steps, scope, names, digits: Digits::default(), sources: &[] }
    }

    /// The lines, each with the digits that those after it need to be keyed.
    pub(super) fn keyed(
        recording: &'a Recording,
        roots: &[Arg],
        sources: &'static [&'static str],
    ) -> Self {
        let mut lines = Lines { sources, ..Lines::new(recording, roots) };
        lines.digits = Digits::fitting(&lines);
        lines
    }

    pub(super) fn recording(&self) -> &'a Recording {
        self.recording
    }

    pub(super) fn steps(&self) -> impl Iterator<Item = usize> + '_ {
        self.steps.iter().copied()
    }

    /// The full name of a line.
    pub(super) fn name(&self, step: usize) -> String {
        self.names.name(self.recording, step)
    }

    fn call_around(&self, step: usize) -> Option<&'a Call> {
        self.scope.get(&step).and_then(|result| self.recording.calls.get(result))
    }

    /// True for a line that is keyed on a calculator.
    pub(super) fn is_keyed(&self, step: usize) -> bool {
        !matches!(self.recording.steps[step].op, Op::Input | Op::Chosen | Op::LookedUp)
    }

    /// True where the line of a step shows another step as one value.
    pub(super) fn is_leaf(&self, step: usize, other: usize) -> bool {
        // What follows from a root is written out in its equation, but for other roots.
        let roots = &self.recording.roots;
        let from_root = other > step && !roots.contains_key(&other);
        other != step
            && !from_root
            && (self.steps.contains(&other)
                || self
                    .call_around(step)
                    .is_some_and(|call| call.inputs.contains(&Arg::Step(other))))
    }

    /// The steps that the line of a step shows as values.
    pub(super) fn keyed_from(&self, step: usize) -> BTreeSet<usize> {
        let mut from = BTreeSet::new();
        let mut open = self.recording.steps[step].args.clone();
        open.extend(self.recording.roots.get(&step).map(|root| root.residual));
        while let Some(arg) = open.pop() {
            let Arg::Step(below) = arg else { continue };
            if below == step {
                continue;
            }
            if self.is_leaf(step, below) {
                from.insert(below);
            } else {
                open.extend(&self.recording.steps[below].args);
            }
        }
        from
    }

    pub(super) fn line(&self, step: usize, dialect: Dialect) -> Line {
        let recording = self.recording;
        let value = recording.steps[step].value;
        let label = recording.labels.get(&step).cloned().unwrap_or_default();
        let call = recording.calls.get(&step);
        let said = self.names.said(step);
        let unit = if label.unit.is_empty() { said.unit.to_owned() } else { label.unit.clone() };
        let printed = significant(self.value(step), self.digits.of(step));
        let mut constants = Vec::new();
        let (symbols, numbers) = if recording.steps[step].op == Op::Input {
            let typed = match (label.typed.is_empty(), unit.is_empty()) {
                (false, _) => signed(&label.typed, value),
                (true, true) => printed.clone(),
                (true, false) => format!("{printed} {unit}"),
            };
            (String::new(), words(&typed, dialect))
        } else {
            let (symbols, numbers, used) = self.both_sides(step, dialect);
            constants = self.origins(step, &used);
            (symbols, numbers)
        };
        let meaning =
            if label.meaning.is_empty() { said.meaning.to_owned() } else { label.meaning };
        Line {
            step,
            name: self.name(step),
            symbol: self.names.symbol(recording, step),
            meaning,
            symbols,
            numbers,
            value,
            printed,
            unit,
            formula: call.map(|c| c.formula.name),
            given: self.given(step),
            constants,
            origin: label.origin,
            residual: recording.roots.get(&step).map(|root| recording.value(root.residual)),
        }
    }

    /// The right-hand side in symbols and in numbers, and the constants in it.
    fn both_sides(&self, step: usize, dialect: Dialect) -> (String, String, Vec<f64>) {
        let recording = self.recording;
        let inside = self.call_around(step).is_some();
        let constants = self.digits.of_constants(recording, step);
        let symbols = Writer::new(recording, dialect, constants, |i: usize| {
            if i == step {
                // A root stands in its own equation.
                Leaf::Word(in_dialect(&self.names.symbol(recording, i), dialect))
            } else if !self.is_leaf(step, i) {
                Leaf::Expand
            } else if self.is_typed_input(i) {
                // The typed value and its unit are the symbol: `9 tpi × 39.37`.
                Leaf::Number(words(
                    &signed(&recording.labels[&i].typed, recording.steps[i].value),
                    dialect,
                ))
            } else if inside {
                Leaf::Word(in_dialect(&self.names.symbol(recording, i), dialect))
            } else {
                Leaf::Word(in_dialect(&self.name(i), dialect))
            }
        });
        let in_symbols = symbols.step(step);
        let in_numbers = Writer::new(recording, dialect, constants, |i: usize| {
            if i == step {
                Leaf::Word(in_dialect(&self.names.symbol(recording, i), dialect))
            } else if !self.is_leaf(step, i) {
                Leaf::Expand
            } else if self.is_typed_input(i) {
                Leaf::Number(words(&self.typed_number(i), dialect))
            } else {
                let printed = significant(self.value(i), self.digits.of(i));
                Leaf::Number(number(&printed, dialect))
            }
        })
        .step(step);
        let printed = number(&significant(self.value(step), self.digits.of(step)), dialect);
        let alike = in_symbols == in_numbers;
        let (in_symbols, in_numbers) = match recording.steps[step].op {
            // The value again, under another name.
            _ if in_numbers == printed && !in_symbols.starts_with(['−', '-']) => {
                (in_symbols, String::new())
            }
            _ if alike => (String::new(), in_numbers),
            _ => (in_symbols, in_numbers),
        };
        (in_symbols, in_numbers, symbols.constants.into_inner())
    }

    /// A typed value as a number with its unit: `22½ YSW` is keyed as 22.5.
    fn typed_number(&self, step: usize) -> String {
        let label = &self.recording.labels[&step];
        let value = self.recording.steps[step].value;
        let number = label.typed.split(' ').next().unwrap_or_default();
        if number.parse() == Ok(value) {
            return signed(&label.typed, value);
        }
        if label.unit.is_empty() {
            return constant(value);
        }
        format!("{} {}", constant(value), label.unit)
    }

    /// Where the constants of a line come from.
    fn origins(&self, step: usize, used: &[f64]) -> Vec<String> {
        let digits = self.digits.of_constants(self.recording, step);
        let constant = |x: f64| constant_to(x, digits);
        let made = &self.recording.steps[step];
        let typed = made.args.iter().find_map(|arg| match arg {
            Arg::Step(i) if self.is_typed_input(*i) => Some(*i),
            _ => None,
        });
        if let Some(typed) = typed {
            let unit = &self.recording.labels[&typed].unit;
            let unknown = |x: &&f64| !constants::plain(**x) && constants::origin(**x).is_none();
            if used.iter().any(|x| unknown(&x)) {
                return constants::of_unit(unit, digits).into_iter().collect();
            }
        }
        let mut said: Vec<String> = Vec::new();
        let mut others: Vec<String> = Vec::new();
        for x in used.iter().filter(|x| !constants::plain(**x)) {
            if let Some(meaning) = self.taken_by_the_formula(step, *x) {
                // The line of the result says it in any case.
                if !self.recording.calls.contains_key(&step) {
                    said.push(format!("{}: {meaning}", constant(*x)));
                }
                continue;
            }
            match constants::origin(*x) {
                Some(words) => said.push(format!("{}: {words}", constant(*x))),
                None => match self.labelled_constant(*x) {
                    Some(meaning) => said.push(format!("{}: {meaning}", constant(*x))),
                    None => others.push(constant(*x)),
                },
            }
        }
        let sources = self.call_around(step).map_or(self.sources, |call| call.formula.sources);
        if !others.is_empty() && !sources.is_empty() {
            others.dedup();
            let from: Vec<String> = sources.iter().map(|key| cited(key)).collect();
            said.push(format!("{}: {}", others.join(" and "), from.join(", ")));
        }
        said.dedup();
        said
    }

    /// What a constant is to the formula around a line, where it is one of its inputs.
    fn taken_by_the_formula(&self, step: usize, x: f64) -> Option<&'static str> {
        let call = self.call_around(step)?;
        let place = call.inputs.iter().position(|input| *input == Arg::Constant(x))?;
        Some(call.formula.input(place, call.inputs.len()).meaning)
    }

    /// What a constant is where it is a result too, and so has a line of its own on the tape.
    fn labelled_constant(&self, x: f64) -> Option<&'a str> {
        self.recording.labels.iter().find_map(|(step, label)| {
            let made = &self.recording.steps[*step];
            let own = made.op == Op::Input
                && label.typed.is_empty()
                && made.value.to_bits() == x.to_bits();
            own.then_some(label.meaning.as_str())
        })
    }

    /// The value of a step as it is shown: what the rounding of binary numbers leaves of zero is zero.
    pub(super) fn value(&self, step: usize) -> f64 {
        if self.is_rest(step) { 0.0 } else { self.recording.steps[step].value }
    }

    fn is_rest(&self, step: usize) -> bool {
        let made = &self.recording.steps[step];
        let x = |k: usize| self.recording.value(made.args[k]).abs();
        let rest = |k: usize| matches!(made.args[k], Arg::Step(below) if self.is_rest(below));
        match made.op {
            Op::Add | Op::Sub => made.value != 0.0 && made.value.abs() < REST * x(0).max(x(1)),
            Op::Mul => rest(0) || rest(1),
            Op::Div | Op::Neg | Op::Same => rest(0),
            _ => false,
        }
    }

    /// An input that was typed in a unit of its own and is converted by the next step.
    pub(super) fn is_typed_input(&self, step: usize) -> bool {
        is_typed_input(self.recording, step)
    }

    /// What the formula of a line takes for constants.
    fn given(&self, step: usize) -> Vec<(String, String)> {
        let Some(call) = self.recording.calls.get(&step) else {
            return Vec::new();
        };
        let constant = call.inputs.iter().enumerate().filter_map(|(place, input)| match input {
            Arg::Constant(x) => {
                let meaning = call.formula.input(place, call.inputs.len()).meaning;
                Some((
                    meaning.to_owned(),
                    constant_to(*x, self.digits.of_constants(self.recording, step)),
                ))
            }
            Arg::Step(_) => None,
        });
        constant.collect()
    }
}

/// A typed value with the sign of print.
fn signed(typed: &str, value: f64) -> String {
    typed.replacen('-', "−", usize::from(value < 0.0))
}

pub(super) fn is_typed_input(recording: &Recording, step: usize) -> bool {
    recording.steps[step].op == Op::Input
        && recording
            .labels
            .get(&step)
            .is_some_and(|l| !l.typed.is_empty() && l.symbol.is_empty() && !l.unit.is_empty())
}

impl Call {
    /// The symbol of an input; a list input counts its members from 1.
    pub(super) fn symbol(&self, place: usize) -> String {
        self.formula.symbol_at(place, self.inputs.len())
    }
}

pub(crate) fn subscript(n: usize) -> String {
    n.to_string()
        .chars()
        .filter_map(|c| "₀₁₂₃₄₅₆₇₈₉".chars().nth(c as usize - '0' as usize))
        .collect()
}
