//! Which steps of a recording get a line, and what each is called.

use std::collections::{BTreeMap, BTreeSet};

use super::expression::{Dialect, Leaf, Writer};
use super::latex::{in_dialect, words};
use super::tape::{Arg, Call, Op, Recording};
use super::working::Line;
use crate::quantity::print::{figure, with_unit};

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
        let (symbols, numbers) = if recording.steps[step].op == Op::Input {
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
            numbers,
            value,
            unit,
            formula: call.map(|c| c.formula.name),
            given: self.given(step),
            origin: label.origin,
            residual: recording.roots.get(&step).map(|root| recording.value(root.residual)),
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
                    // The typed value and its unit are the symbol: `9 tpi × 39.37`.
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
        let numbers = Writer {
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
        if matches!(recording.steps[step].op, Op::Solved(_)) {
            // In numbers an equation says nothing more.
            return (symbols, String::new());
        }
        let same = symbols == numbers;
        (if same { String::new() } else { symbols }, numbers)
    }

    /// An input that was typed in a unit of its own and is converted by the next step.
    pub(super) fn is_typed_input(&self, step: usize) -> bool {
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
        self.formula.symbol_at(place, self.inputs.len())
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
