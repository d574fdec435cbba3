//! Solving a formula for any of its inputs.

use super::Formula;
use crate::error::{Error, Result};
use crate::quantity::Amount;
use crate::quantity::print::{default_unit, of_kind};
use crate::worked::Working;

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

    /// The working of one input, which gives the wanted result: that of the inverse where the catalogue
    /// has one for this input, else that of this formula with the input found in its usual range, which
    /// is said beside it. `given` and `typed` are as for [`Formula::working`] (what stands at `place` is
    /// not looked at), `wanted_text` is the wanted result as it was typed.
    ///
    /// Where more than one figure gives the result there is no one working, and the error says which.
    ///
    /// ```
    /// use hankwise::{catalogue, quantity::parse};
    /// let lot_loss = catalogue::formula("lot_loss")?;
    /// let given = [parse("0 kg")?, parse("5 %")?, parse("2 kg")?];
    /// let working = lot_loss.solve_working(0, &parse("10 %")?, None, &given, &[])?;
    /// assert_eq!(working.name(), "smallest_lot");
    /// assert!((working.value() - 40.0).abs() < 1e-9);
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    pub fn solve_working(
        &self,
        place: usize,
        wanted: &Amount,
        wanted_text: Option<String>,
        given: &[Amount],
        typed: &[Option<String>],
    ) -> Result<Working> {
        let of = given.len();
        let unknown = self.input(place, of);
        let text = |place: usize| typed.get(place).cloned().flatten();
        if let Some(solved) = self.solved_for.iter().find(|s| s.unknown == unknown.name) {
            let (mut amounts, mut texts) = (Vec::new(), Vec::new());
            for input in solved.by.inputs {
                if self.inputs.iter().all(|own| own.name != input.name) {
                    amounts.push(*wanted);
                    texts.push(wanted_text.clone());
                    continue;
                }
                let same = |place: &usize| self.input(*place, of).name == input.name;
                for place in (0..of).filter(same) {
                    amounts.push(given[place]);
                    texts.push(text(place));
                }
            }
            return solved.by.working(&amounts, &texts);
        }
        let row: Vec<f64> = given.iter().map(Amount::base).collect();
        let roots = self.solve(place, wanted.base(), &row)?;
        let wanted_text = wanted_text.unwrap_or_else(|| of_kind(wanted.base(), self.output.kind));
        let [root] = roots[..] else {
            let roots: Vec<String> = roots.iter().map(|x| of_kind(*x, unknown.kind)).collect();
            return Err(Error::range(format!(
                "{}: more than one {} gives {wanted_text}: {}; ask for the working with one of them",
                self.name,
                unknown.name,
                roots.join(", ")
            )));
        };
        // In percent where people say percent.
        let unit = default_unit(unknown.kind);
        let mut given = given.to_vec();
        given[place] = Amount { number: root / unit.to_base(1.0), unit };
        let mut texts: Vec<Option<String>> = (0..of).map(text).collect();
        texts[place] = Some(crate::quantity::print::with_unit(given[place].number, unit.symbol));
        let found = format!("found so that {} is {wanted_text}", self.name);
        self.working_from(&given, &texts, |at| if at == place { &found } else { "" })
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
