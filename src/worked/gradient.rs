//! Sensitivities: the recording read backwards.

use super::tape::{Arg, Op, Recording};

/// How much the answer moves with one input, as typed.
#[derive(Clone, Debug, PartialEq)]
pub struct Sensitivity {
    /// Name of the input.
    pub input: String,
    /// The value that was given.
    pub value: f64,
    /// Its unit.
    pub unit: String,
    /// Change of the answer for a change of the input by one of its units.
    pub slope: f64,
    /// Percent by which the answer changes when the input changes by one percent.
    pub elasticity: f64,
}

impl Recording {
    /// The slope of one step with respect to every earlier step (reverse sweep).
    ///
    /// Rounding (up, down) has slope zero, as a staircase has between its steps; a branch has the
    /// slope of the side that was taken.
    pub fn slopes(&self, root: Arg) -> Vec<f64> {
        let mut slopes = vec![0.0; self.steps.len()];
        let Arg::Step(root) = root else { return slopes };
        slopes[root] = 1.0;
        for i in (0..=root).rev() {
            let out = slopes[i];
            if out == 0.0 {
                continue;
            }
            let step = &self.steps[i];
            let x = |k: usize| self.value(step.args[k]);
            let mut give = |k: usize, slope: f64| {
                if let Arg::Step(j) = step.args[k] {
                    slopes[j] += out * slope;
                }
            };
            match step.op {
                Op::Input | Op::Floor | Op::Ceil | Op::Chosen | Op::LookedUp => {}
                Op::Same => give(0, 1.0),
                Op::Neg => give(0, -1.0),
                Op::Add => {
                    give(0, 1.0);
                    give(1, 1.0);
                }
                Op::Sub => {
                    give(0, 1.0);
                    give(1, -1.0);
                }
                Op::Mul => {
                    give(0, x(1));
                    give(1, x(0));
                }
                Op::Div => {
                    give(0, 1.0 / x(1));
                    give(1, -x(0) / (x(1) * x(1)));
                }
                Op::Sqrt => give(0, 0.5 / step.value),
                Op::Power => give(0, x(1) * x(0).powf(x(1) - 1.0)),
                Op::Exp => give(0, step.value),
                Op::Ln => give(0, 1.0 / x(0)),
                Op::Sin => give(0, x(0).cos()),
                Op::Cos => give(0, -x(0).sin()),
                Op::Tan => give(0, 1.0 + step.value * step.value),
                Op::Atan => give(0, 1.0 / (1.0 + x(0) * x(0))),
                Op::Min => give(usize::from(x(1) < x(0)), 1.0),
                Op::Max => give(usize::from(x(1) > x(0)), 1.0),
                Op::Solved(_) => {
                    if let Some(root) = self.roots.get(&i) {
                        root.slopes.iter().enumerate().for_each(|(k, slope)| give(k, *slope));
                    }
                }
                Op::IfLess => give(if x(0) < x(1) { 2 } else { 3 }, 1.0),
            }
        }
        slopes
    }

    /// The sensitivity of a step to each input that it rests on, the most telling first.
    pub fn sensitivities(&self, root: Arg) -> Vec<Sensitivity> {
        let slopes = self.slopes(root);
        let answer = self.value(root);
        let needed = self.needed_for(root);
        let mut all: Vec<Sensitivity> = self
            .steps
            .iter()
            .enumerate()
            .filter(|(i, step)| step.op == Op::Input && needed[*i])
            .map(|(i, step)| {
                let label = self.labels.get(&i).cloned().unwrap_or_default();
                Sensitivity {
                    input: label.name().to_owned(),
                    value: step.value,
                    unit: label.unit,
                    slope: slopes[i],
                    elasticity: slopes[i] * step.value / answer,
                }
            })
            .collect();
        all.sort_by(|a, b| b.elasticity.abs().total_cmp(&a.elasticity.abs()));
        all
    }

    /// Which steps a step rests on, itself included.
    pub(super) fn needed_for(&self, root: Arg) -> Vec<bool> {
        let mut needed = vec![false; self.steps.len()];
        let Arg::Step(root) = root else { return needed };
        needed[root] = true;
        for i in (0..=root).rev() {
            if needed[i] {
                for arg in &self.steps[i].args {
                    if let Arg::Step(j) = arg {
                        needed[*j] = true;
                    }
                }
            }
        }
        needed
    }
}
