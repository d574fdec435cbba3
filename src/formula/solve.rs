//! Solving a formula for any of its inputs.

use super::Formula;
use crate::error::{Error, Result};
use crate::quantity::print::of_kind;

/// Steps into which the usual range is cut to look for a change of sign.
const STEPS: usize = 400;

impl Formula {
    /// Every value of one input, within its usual range, that gives the wanted result; `row` holds
    /// the other inputs in base units (what stands at `place` is not looked at).
    ///
    /// There may be none (then the error says what the range gives) or more than one.
    pub fn solve(&self, place: usize, wanted: f64, row: &[f64]) -> Result<Vec<f64>> {
        let input = self.input(place, row.len());
        if !input.whole {
            self.check_wholes(row)?;
        }
        let (low, high) = input.usual;
        let mut row = row.to_vec();
        let mut miss = |x: f64| {
            row[place] = x;
            (self.evaluate)(&row) - wanted
        };
        // Even steps of the ratio where the range spans decades, else of the difference.
        let ratio = low > 0.0 && high / low > 20.0;
        let at = |k: usize| {
            let share = k as f64 / STEPS as f64;
            if ratio { low * (high / low).powf(share) } else { low + (high - low) * share }
        };
        let mut roots: Vec<f64> = Vec::new();
        let mut ends = (f64::INFINITY, f64::NEG_INFINITY);
        let (mut left, mut left_miss) = (low, miss(low));
        for k in 0..=STEPS {
            let right = if k == STEPS { high } else { at(k) };
            let right_miss = miss(right);
            if right_miss.is_finite() {
                ends = (ends.0.min(right_miss + wanted), ends.1.max(right_miss + wanted));
            }
            // The signs, not the misses themselves: the product of two tiny ones would be zero.
            let crosses = left_miss != 0.0 && left_miss.signum() * right_miss.signum() < 0.0;
            if right_miss == 0.0 {
                roots.push(right);
            } else if crosses {
                let root = bisect(&mut miss, left, right);
                // A jump or a pole changes sign too, without coming near the wanted value.
                if miss(root).abs()
                    <= 1e-9 * wanted.abs().max(left_miss.abs()).max(right_miss.abs())
                {
                    roots.push(root);
                }
            }
            (left, left_miss) = (right, right_miss);
        }
        roots.dedup_by(|a, b| (*a - *b).abs() <= 1e-12 * a.abs().max(b.abs()));
        if roots.is_empty() {
            let kind = self.output.kind;
            return Err(Error::range(format!(
                "{}: no {} in its usual range ({} to {}) gives {} = {}; it gives {} to {}",
                self.name,
                input.name,
                of_kind(low, input.kind),
                of_kind(high, input.kind),
                self.output.symbol,
                of_kind(wanted, kind),
                of_kind(ends.0, kind),
                of_kind(ends.1, kind),
            )));
        }
        Ok(roots)
    }
}

/// Halves a bracket until its ends are neighbours; returns the better of the two.
pub(crate) fn bisect(miss: &mut impl FnMut(f64) -> f64, mut left: f64, mut right: f64) -> f64 {
    let rising = miss(right) > 0.0;
    loop {
        let middle = f64::midpoint(left, right);
        if middle <= left || middle >= right {
            break;
        }
        if (miss(middle) > 0.0) == rising {
            right = middle;
        } else {
            left = middle;
        }
    }
    if miss(left).abs() < miss(right).abs() { left } else { right }
}
