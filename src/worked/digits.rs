//! How many digits each line of a working is printed to, so that the next can be keyed from it.

use std::collections::BTreeMap;

use super::lines::Lines;
use super::tape::{Arg, Op, Recording};
use crate::quantity::print::{constant_to, significant};

/// What a value is printed to unless a line that uses it needs more.
pub(super) const USUAL: usize = 4;
/// A value that somebody gave is printed as it was given, up to so many digits.
const GIVEN: usize = 7;
/// Constants are printed in full, up to so many digits.
const CONSTANT: usize = 9;
/// More digits than a number has.
const ALL: usize = 15;
/// A tie may fall to either side.
const TIE: f64 = 1.0 + 1e-7;

/// Digits by step; what is not there has [`USUAL`].
#[derive(Debug, Default)]
pub(super) struct Digits(BTreeMap<usize, usize>);

impl Digits {
    /// Digits of a step.
    pub(super) fn of(&self, step: usize) -> usize {
        self.0.get(&step).copied().unwrap_or(USUAL)
    }

    /// Digits of the constants in the line of a step: some more than the line is printed to.
    pub(super) fn of_constants(&self, recording: &Recording, step: usize) -> usize {
        let value = recording.steps[step].value.abs();
        let whole = if value >= 1.0 { value.log10() as usize + 1 } else { 0 };
        let shown = self.of(step).max(whole);
        if shown > CONSTANT - 3 { shown + 4 } else { CONSTANT }
    }

    /// The fewest with which every line, keyed as printed, comes out as printed.
    pub(super) fn fitting(lines: &Lines<'_>) -> Digits {
        let recording = lines.recording();
        let mut digits = Digits::default();
        for step in lines.steps().filter(|step| recording.steps[*step].op == Op::Input) {
            let value = recording.steps[step].value;
            if same(read(&significant(value, GIVEN)), value) {
                digits.0.insert(step, GIVEN);
            }
        }
        // Last lines first: what they need is then known when those before them are looked at. A further
        // round sees whether a digit more in one place has upset another.
        let keyed: Vec<usize> = lines.steps().filter(|step| lines.is_keyed(*step)).collect();
        for _ in 0..ALL {
            let mut more = false;
            for step in keyed.iter().rev() {
                more |= digits.fit(lines, *step);
            }
            if !more {
                break;
            }
        }
        digits
    }

    /// Gives what a line is keyed from as many digits as it needs; true where more were given.
    fn fit(&mut self, lines: &Lines<'_>, step: usize) -> bool {
        let recording = lines.recording();
        let from = lines.keyed_from(step);
        let before: Vec<usize> = from.iter().map(|of| self.of(*of)).collect();
        let mut more = false;
        loop {
            let (miss, keyed) = self.miss(lines, step, None);
            if miss <= TIE {
                return more;
            }
            // The one whose rounding matters most.
            let matters = |of: &usize| {
                let moved = (self.miss(lines, step, Some(*of)).1 - keyed).abs();
                if moved.is_nan() { f64::INFINITY } else { moved }
            };
            let short = from.iter().filter(|of| {
                self.of(**of) < ALL && !same(self.printed(lines, **of), recording.steps[**of].value)
            });
            let Some(worst) = short.copied().max_by(|a, b| matters(a).total_cmp(&matters(b)))
            else {
                // No digits help: what the machine left over is nobody's to key.
                from.iter().zip(before).for_each(|(of, digits)| {
                    self.0.insert(*of, digits);
                });
                return false;
            };
            self.0.insert(worst, self.of(worst) + 1);
            more = true;
        }
    }

    /// By how much a line, keyed as printed, misses its printed result, in halves of its last digit, and
    /// what was keyed. One value may be taken in full.
    fn miss(&self, lines: &Lines<'_>, step: usize, in_full: Option<usize>) -> (f64, f64) {
        let recording = lines.recording();
        let leaf = |i: usize| {
            lines.is_leaf(step, i).then(|| match in_full {
                Some(full) if full == i => recording.steps[i].value,
                _ => self.printed(lines, i),
            })
        };
        let constants = self.of_constants(recording, step);
        let keys = Keys { recording, constants, leaf: &leaf };
        let printed = self.printed(lines, step);
        let half = half_digit(lines, step, self.of(step));
        if let Some(root) = recording.roots.get(&step) {
            // The printed root is one between values on both sides of the true one.
            let at = |x: f64| {
                let leaf = |i: usize| if i == step { Some(x) } else { leaf(i) };
                Keys { recording, constants, leaf: &leaf }.value(root.residual)
            };
            let (below, at_root, above) = (at(printed - half), at(printed), at(printed + half));
            let found = below.signum() * above.signum() <= 0.0;
            return (if found { 0.0 } else { 2.0 }, at_root);
        }
        let keyed = keys.step(step);
        let miss = (keyed - printed).abs() / half;
        (if miss.is_nan() { f64::INFINITY } else { miss }, keyed)
    }

    /// A value as it is printed; one that is printed as it was typed is not rounded.
    fn printed(&self, lines: &Lines<'_>, step: usize) -> f64 {
        if lines.is_typed_input(step) {
            lines.value(step)
        } else {
            read(&significant(lines.value(step), self.of(step)))
        }
    }
}

/// Bit for bit.
fn same(a: f64, b: f64) -> bool {
    a.to_bits() == b.to_bits()
}

/// Half of the last digit to which a value is printed.
fn half_digit(lines: &Lines<'_>, step: usize, digits: usize) -> f64 {
    let value = lines.value(step);
    if value == 0.0 {
        // Nothing, to six digits of what it is the difference of.
        let made = &lines.recording().steps[step];
        let sizes = made.args.iter().map(|arg| lines.recording().value(*arg).abs());
        return 0.5e-6 * sizes.fold(1e-9, f64::max);
    }
    let place = value.abs().log10().floor() - (digits as f64 - 1.0);
    // Whole digits are all printed.
    let place = if value.abs() >= 1e12 { place } else { place.min(0.0) };
    0.5 * 10.0_f64.powf(place)
}

/// A printed number as a number.
fn read(text: &str) -> f64 {
    text.replace(',', "").replace('−', "-").parse().unwrap_or(f64::NAN)
}

/// A constant as it is printed.
fn printed_constant(x: f64, digits: usize) -> f64 {
    if super::constants::is_spelt(x) { x } else { read(&constant_to(x, digits)) }
}

/// An ordinary calculator: the operations of a recording over printed values.
struct Keys<'a> {
    recording: &'a Recording,
    constants: usize,
    leaf: &'a dyn Fn(usize) -> Option<f64>,
}

impl Keys<'_> {
    fn value(&self, arg: Arg) -> f64 {
        match arg {
            Arg::Constant(x) => printed_constant(x, self.constants),
            Arg::Step(i) => (self.leaf)(i).unwrap_or_else(|| self.step(i)),
        }
    }
    fn step(&self, step: usize) -> f64 {
        let made = &self.recording.steps[step];
        let x = |k: usize| self.value(made.args[k]);
        match made.op {
            Op::Input | Op::Chosen | Op::LookedUp | Op::Solved(_) => made.value,
            Op::Same => x(0),
            Op::Neg => -x(0),
            Op::Add => x(0) + x(1),
            Op::Sub => x(0) - x(1),
            Op::Mul => x(0) * x(1),
            Op::Div => x(0) / x(1),
            Op::Sqrt => x(0).sqrt(),
            Op::Power => x(0).powf(x(1)),
            Op::Exp => x(0).exp(),
            Op::Ln => x(0).ln(),
            Op::Sin => x(0).sin(),
            Op::Cos => x(0).cos(),
            Op::Tan => x(0).tan(),
            Op::Atan => x(0).atan(),
            // A calculator carries a digit or two more than it shows.
            Op::Floor => (x(0) * (1.0 + f64::EPSILON * 16.0)).floor(),
            Op::Ceil => (x(0) * (1.0 - f64::EPSILON * 16.0)).ceil(),
            Op::Min => x(0).min(x(1)),
            Op::Max => x(0).max(x(1)),
            Op::IfLess => {
                if x(0) < x(1) {
                    x(2)
                } else {
                    x(3)
                }
            }
        }
    }
}
