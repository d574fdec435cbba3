//! The tape: what was computed, step by step.

use std::cell::RefCell;
use std::collections::{BTreeMap, HashMap};
use std::ops::{Add, Div, Mul, Neg, Sub};

use crate::formula::Formula;
use crate::number::{Equation, Name, Number, V, slopes};

/// What a step does to its operands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Op {
    /// A value that somebody gave.
    Input,
    /// The same value under another name.
    Same,
    /// −a
    Neg,
    /// a + b
    Add,
    /// a − b
    Sub,
    /// a × b
    Mul,
    /// a ÷ b
    Div,
    /// √a
    Sqrt,
    /// a to the constant power b
    Power,
    /// eᵃ
    Exp,
    /// ln a
    Ln,
    /// sin a, a in radians
    Sin,
    /// cos a, a in radians
    Cos,
    /// tan a, a in radians
    Tan,
    /// arctan a, in radians
    Atan,
    /// a rounded down; a little below a whole number, as little as the constant b, is that number
    Floor,
    /// a rounded up; a little above a whole number, as little as the constant b, is that number
    Ceil,
    /// the smaller of a and b
    Min,
    /// the greater of a and b
    Max,
    /// c where a < b, else d
    IfLess,
    /// the part in use where a would be best
    Chosen,
    /// a number out of a table or a law, looked up for a, b, …
    LookedUp,
    /// the root of an equation at known values: see [`Root`]; which equation, by its name
    Solved(&'static str),
}

/// An operand: an earlier step or a constant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Arg {
    /// An earlier step, by its place on the tape.
    Step(usize),
    /// A constant.
    Constant(f64),
}

/// One step: an operation, its operands and the value that came out.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// The operation.
    pub op: Op,
    /// The operands, as many as the operation takes.
    pub args: Vec<Arg>,
    /// The figure.
    pub value: f64,
}

/// What a step is called.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Label {
    /// The symbol in a formula, such as `T`.
    pub symbol: String,
    /// The full name, such as `spin.count`; the symbol where empty.
    pub key: String,
    /// The unit that the value is in; empty for a plain ratio.
    pub unit: String,
    /// What the value is, in words.
    pub meaning: String,
    /// The input as the user typed it, such as `22½ YSW`.
    pub typed: String,
    /// Where an input came from: a place in a file, an argument.
    pub origin: String,
}

impl Label {
    /// The full name, or the symbol without one.
    pub fn name(&self) -> &str {
        if self.key.is_empty() { &self.symbol } else { &self.key }
    }
}

/// A step that is the result of a formula of the catalogue.
#[derive(Clone, Debug)]
pub struct Call {
    /// The formula.
    pub formula: &'static Formula,
    /// Its inputs, in the order of the card; lists come last, one after the other.
    pub inputs: Vec<Arg>,
}

/// What belongs to a step that was found by iteration.
#[derive(Clone, Debug)]
pub struct Root {
    /// What is zero at the root, as a step.
    pub residual: Arg,
    /// How the root moves with each operand, by the theorem of implicit functions.
    pub slopes: Vec<f64>,
}

/// A finished recording: it owns all it needs and can be kept, sent and read at leisure.
#[derive(Clone, Debug, Default)]
pub struct Recording {
    /// The steps in the order they were made.
    pub steps: Vec<Step>,
    /// What steps are called.
    pub labels: BTreeMap<usize, Label>,
    /// Which steps are results of formulas.
    pub calls: BTreeMap<usize, Call>,
    /// Which steps were found by iteration.
    pub roots: BTreeMap<usize, Root>,
}

impl Recording {
    /// The value of an operand.
    pub fn value(&self, arg: Arg) -> f64 {
        match arg {
            Arg::Constant(x) => x,
            Arg::Step(i) => self.steps[i].value,
        }
    }
    /// The step with a name (key or symbol); the last one made where several bear it.
    pub fn find(&self, name: &str) -> Option<usize> {
        self.labels.iter().rev().find(|(_, label)| label.name() == name).map(|(step, _)| *step)
    }
    /// The steps by their names, to look up many: what [`Recording::find`] gives for each.
    pub fn by_name(&self) -> HashMap<&str, usize> {
        self.labels.iter().map(|(step, label)| (label.name(), *step)).collect()
    }
}

/// Records what is computed with the [`Worked`] numbers that it hands out.
#[derive(Debug, Default)]
pub struct Tape {
    recording: RefCell<Recording>,
    known: RefCell<HashMap<Known, usize>>,
    /// The steps that only give a step another name, by that step and the name.
    again: RefCell<HashMap<(usize, String), Vec<usize>>>,
}

/// By what a step is known again: its operation, its operands and its value, bit for bit.
type Known = (Op, Vec<(bool, u64)>, u64);

impl Tape {
    /// An empty tape.
    pub fn new() -> Self {
        Self::default()
    }
    /// A value that the user gave.
    pub fn input(&self, value: f64, label: Label) -> Worked<'_> {
        let worked = self.push(Op::Input, &[], value);
        self.recording.borrow_mut().labels.insert(worked.step, label);
        worked
    }
    /// Ends the recording.
    pub fn finish(self) -> Recording {
        self.recording.into_inner()
    }
    /// A step that was made before is not made again, so that a part which is chosen in two places
    /// is one cell in a workbook.
    fn once(&self, op: Op, args: &[Arg], value: f64) -> Worked<'_> {
        let operands = args.iter().map(|arg| match arg {
            Arg::Step(i) => (true, *i as u64),
            Arg::Constant(x) => (false, x.to_bits()),
        });
        let key = (op, operands.collect(), value.to_bits());
        let known = self.known.borrow().get(&key).copied();
        let step = known.unwrap_or_else(|| self.push(op, args, value).step);
        self.known.borrow_mut().insert(key, step);
        Worked { tape: Some(self), step, value }
    }
    /// The same value under another name: the one it was given before, or a step of its own.
    fn also(&self, step: Worked<'_>, label: &Label) -> Worked<'_> {
        let same = {
            let (recording, again) = (self.recording.borrow(), self.again.borrow());
            let named = (step.step, label.name().to_owned());
            let others = again.get(&named).into_iter().flatten().copied();
            let mut all = std::iter::once(step.step).chain(others);
            all.find(|i| recording.labels.get(i) == Some(label))
        };
        match same {
            Some(same) => Worked { tape: Some(self), step: same, value: step.value },
            None => self.push(Op::Same, &[step.arg()], step.value),
        }
    }
    fn push(&self, op: Op, args: &[Arg], value: f64) -> Worked<'_> {
        let steps = &mut self.recording.borrow_mut().steps;
        steps.push(Step { op, args: args.to_vec(), value });
        Worked { tape: Some(self), step: steps.len() - 1, value }
    }
}

/// A number that remembers how it was calculated: its place on a tape and its value.
#[derive(Clone, Copy, Debug)]
pub struct Worked<'t> {
    tape: Option<&'t Tape>,
    step: usize,
    value: f64,
}

impl<'t> Worked<'t> {
    /// The number as an operand of a recording.
    pub fn arg(self) -> Arg {
        if self.tape.is_some() { Arg::Step(self.step) } else { Arg::Constant(self.value) }
    }
    /// The tape of the operands; constants belong to none.
    ///
    /// # Panics
    /// Where numbers of two tapes meet: their steps have nothing to do with each other.
    fn tape_of(all: &[Worked<'t>]) -> Option<&'t Tape> {
        let mut found: Option<&'t Tape> = None;
        for tape in all.iter().filter_map(|w| w.tape) {
            assert!(found.is_none_or(|f| std::ptr::eq(f, tape)), "numbers of two tapes were mixed");
            found = Some(tape);
        }
        found
    }
    fn record(op: Op, operands: &[Worked<'t>], value: f64) -> Self {
        match Self::tape_of(operands) {
            None => Worked { tape: None, step: 0, value },
            Some(tape) => {
                let args: Vec<Arg> = operands.iter().map(|w| w.arg()).collect();
                tape.once(op, &args, value)
            }
        }
    }
    fn label(self, label: Label) -> Self {
        let Some(tape) = self.tape else { return self };
        let taken =
            tape.recording.borrow().labels.get(&self.step).map(|known| known.key == label.key);
        let step = match taken {
            // What was given is its own answer.
            Some(true) if !label.key.is_empty() => return self,
            Some(_) => tape.also(self, &label),
            None => self,
        };
        let mut recording = tape.recording.borrow_mut();
        if let Step { op: Op::Same, args, .. } = &recording.steps[step.step]
            && let [Arg::Step(of)] = args[..]
            && recording.labels.get(&step.step) != Some(&label)
        {
            let named = (of, label.name().to_owned());
            tape.again.borrow_mut().entry(named).or_default().push(step.step);
        }
        recording.labels.insert(step.step, label);
        step
    }
}

macro_rules! operator {
    ($($trait:ident $method:ident $op:tt),*) => {$(
        impl<'t> $trait for Worked<'t> {
            type Output = Worked<'t>;
            fn $method(self, other: Worked<'t>) -> Worked<'t> {
                Worked::record(Op::$trait, &[self, other], self.value $op other.value)
            }
        }
        impl<'t> $trait<f64> for Worked<'t> {
            type Output = Worked<'t>;
            fn $method(self, other: f64) -> Worked<'t> {
                self $op Worked::constant(other)
            }
        }
    )*};
}
operator!(Add add +, Sub sub -, Mul mul *, Div div /);

impl Neg for Worked<'_> {
    type Output = Self;
    fn neg(self) -> Self {
        Worked::record(Op::Neg, &[self], -self.value)
    }
}

macro_rules! function {
    ($($name:ident $op:ident),*) => {$(
        fn $name(self) -> Self { Worked::record(Op::$op, &[self], Number::$name(self.value)) }
    )*};
}

impl Number for Worked<'_> {
    fn constant(value: f64) -> Self {
        Worked { tape: None, step: 0, value }
    }
    fn value(&self) -> f64 {
        self.value
    }
    function!(sqrt Sqrt, exp Exp, ln Ln, sin Sin, cos Cos, tan Tan, atan Atan);
    fn floor(self) -> Self {
        self.round_down(0.0)
    }
    fn ceil(self) -> Self {
        self.round_up(0.0)
    }
    fn round_down(self, slack: f64) -> Self {
        let value = Number::round_down(self.value, slack);
        Worked::record(Op::Floor, &[self, Worked::constant(slack)], value)
    }
    fn round_up(self, slack: f64) -> Self {
        let value = Number::round_up(self.value, slack);
        Worked::record(Op::Ceil, &[self, Worked::constant(slack)], value)
    }
    fn squared(self) -> Self {
        Worked::record(Op::Power, &[self, Worked::constant(2.0)], Number::squared(self.value))
    }
    fn powf(self, exponent: f64) -> Self {
        Worked::record(
            Op::Power,
            &[self, Worked::constant(exponent)],
            Number::powf(self.value, exponent),
        )
    }
    fn min(self, other: Self) -> Self {
        Worked::record(Op::Min, &[self, other], Number::min(self.value, other.value))
    }
    fn max(self, other: Self) -> Self {
        Worked::record(Op::Max, &[self, other], Number::max(self.value, other.value))
    }
    fn if_less(self, than: Self, then: Self, otherwise: Self) -> Self {
        let value = self.value.if_less(than.value, then.value, otherwise.value);
        Worked::record(Op::IfLess, &[self, than, then, otherwise], value)
    }
    fn solved<E: Equation<K>, const K: usize>(known: [Self; K], name: Option<Name>) -> Self {
        let figures = known.map(|k| k.value);
        let value = E::root(figures);
        let Some(tape) = Worked::tape_of(&known) else { return Worked::constant(value) };
        let args = known.map(Worked::arg);
        let root = tape.once(Op::Solved(std::any::type_name::<E>()), &args, value);
        let root = name.map_or(root, |name| root.named(name));
        // The equation goes on the tape too: it is shown, and a workbook sees whether it still holds.
        let residual = E::residual(V(root), known.map(V)).0.arg();
        let (in_root, in_known) = slopes::<E, K>(value, figures);
        let slopes = in_known.map(|s| -s / in_root).to_vec();
        tape.recording.borrow_mut().roots.insert(root.step, Root { residual, slopes });
        root
    }
    fn chosen(self, part: f64) -> Self {
        Worked::record(Op::Chosen, &[self], part)
    }
    fn looked_up(found: f64, for_these: &[Self]) -> Self {
        Worked::record(Op::LookedUp, for_these, found)
    }
    fn named(self, [symbol, unit, words]: Name) -> Self {
        self.label(Label {
            symbol: symbol.to_owned(),
            unit: unit.to_owned(),
            meaning: words.to_owned(),
            ..Label::default()
        })
    }
    fn labelled(self, label: impl FnOnce() -> Label) -> Self {
        if self.tape.is_some() { self.label(label()) } else { self }
    }
    fn result_of(
        self,
        formula: &'static Formula,
        inputs: impl FnOnce(&mut dyn FnMut(Self)),
    ) -> Self {
        let Some(tape) = self.tape else { return self };
        let mut args = Vec::new();
        inputs(&mut |input: Self| args.push(input.arg()));
        // A body that hands an input straight through gets a step of its own to carry the note; so does
        // a value that another formula came to by the same operation.
        let other = tape
            .recording
            .borrow()
            .calls
            .get(&self.step)
            .is_some_and(|call| !std::ptr::eq(call.formula, formula) || call.inputs != args);
        let step = if other || args.contains(&self.arg()) {
            tape.push(Op::Same, &[self.arg()], self.value)
        } else {
            self
        };
        tape.recording.borrow_mut().calls.insert(step.step, Call { formula, inputs: args });
        step
    }
}
