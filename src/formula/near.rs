//! Where inputs are not possible together: which one to change, and by how much.

use super::Formula;
use crate::quantity::print::of_kind;
use crate::quantity::{Kind, parse_as};

/// Steps into which the way from what was given to an end of the usual range is cut.
const STEPS: usize = 200;

/// The nearest figure that works, between one that does not (`from`) and an end, and how it is said.
///
/// `works` is asked in steps that grow with the distance, so that a small change is found first. What
/// is said has been read again and works: `say` rounds, and so do the units.
pub(crate) fn nearest(
    from: f64,
    end: f64,
    kind: Kind,
    say: impl Fn(f64) -> String,
    works: impl Fn(f64) -> bool,
) -> Option<(f64, String)> {
    let at = |k: usize| from + (end - from) * (k as f64 / STEPS as f64).powi(2);
    let first = (1..=STEPS).find(|k| works(at(*k)))?;
    let (mut bad, mut good) = (at(first - 1), at(first));
    for _ in 0..60 {
        let middle = f64::midpoint(bad, good);
        if works(middle) { good = middle } else { bad = middle }
    }
    // To four figures, on the side that works: what is printed can be typed.
    let step = 10.0_f64.powf(good.abs().log10().floor() - 3.0);
    let round = if end < from { f64::floor } else { f64::ceil };
    let away = if end < from { -1.0 } else { 1.0 };
    // At the very edge rounding decides; a figure or two further on is safe.
    let steps = (0..50).map(|k| (round(good / step) + away * f64::from(k)) * step);
    steps.chain([good]).map(|x| (x, say(x))).find(|(_, text)| {
        parse_as(text, kind)
            .is_ok_and(|typed| kind.check(typed.base()).is_ok() && works(typed.base()))
    })
}

impl Formula {
    /// The single changes that would give an answer, in words: `picks at most 26.3
    /// picks/cm`. Empty where no single change within the usual ranges does.
    pub(super) fn changes(&self, row: &[f64]) -> String {
        let works = |place: usize, x: f64| {
            let mut row = row.to_vec();
            row[place] = x;
            let answer = (self.evaluate)(&row);
            answer.is_finite() && self.output.kind.check(answer).is_ok()
        };
        let scalars = self.inputs.len() - self.lists;
        let mut found = Vec::new();
        for (place, given) in row.iter().enumerate().take(scalars) {
            let input = &self.inputs[place];
            let (low, high) = input.usual;
            for (end, bound) in [(low.min(*given), "at most"), (high.max(*given), "at least")] {
                let say = |x| of_kind(x, input.kind);
                if let Some((edge, text)) =
                    nearest(*given, end, input.kind, say, |x| works(place, x))
                {
                    // All but zero is what anything that is not zero is cut down to.
                    if edge.abs() < 1e-9 * low.abs().max(high.abs()) {
                        let side = if edge < 0.0 { "less" } else { "more" };
                        found.push(format!("{} {side} than 0", input.name));
                        continue;
                    }
                    found.push(format!("{} {bound} {text}", input.name));
                }
            }
        }
        found.join("; or ")
    }

    /// Where no single change helps: which inputs to look at, those outside their usual range before all
    /// others.
    pub(super) fn suspects(&self, row: &[f64]) -> String {
        let of = row.len();
        let unusual: Vec<String> = (0..of)
            .filter(|place| self.unusual_at(*place, of, row[*place]).is_some())
            .map(|place| {
                format!(
                    "{} (usual: {})",
                    self.name_at(place, of),
                    self.input(place, of).usual_words()
                )
            })
            .collect();
        if unusual.is_empty() {
            let names: Vec<&str> = self.inputs.iter().map(|input| input.name).collect();
            return format!("no change of one alone gives an answer; look at {}", names.join(", "));
        }
        format!("change what is outside its usual range: {}", unusual.join("; "))
    }
}
