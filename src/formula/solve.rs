//! Solving a formula for any of its inputs.

use super::{Formula, Input};
use crate::error::{Error, Result};
use crate::quantity::Amount;
use crate::quantity::print::{default_unit, of_kind};
use crate::worked::Working;

/// Steps into which a range is cut to look for a change of sign.
const STEPS: usize = 400;

/// Steps in a decade beyond the usual range, and the decades that are looked through.
const BEYOND: (i32, i32) = (20, 9);

/// From so many times the usual range on, no end is named.
const FAR: f64 = 1e8;

/// What gives a wanted result: one value, or all from the least to the most of a stretch, where the
/// formula rounds, has a floor or a ceiling.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Solution {
    /// The least value that gives it.
    pub least: f64,
    /// The most that gives it.
    pub most: f64,
}

impl Solution {
    /// True of a stretch of values that all give the wanted result.
    pub fn is_stretch(&self) -> bool {
        self.most > self.least
    }
}

impl Formula {
    /// What one input may be to give the wanted result; `row` holds the other inputs in base units (what
    /// stands at `place` is not looked at). Looked for within `bounds`, or, without them, in the usual
    /// range and then as far as the kind of the input allows.
    ///
    /// There may be none (then the error says what the range gives) or more than one.
    pub fn solve(
        &self,
        place: usize,
        wanted: f64,
        row: &[f64],
        bounds: Option<(f64, f64)>,
    ) -> Result<Vec<Solution>> {
        let input = self.input(place, row.len());
        if !input.whole {
            self.check_wholes(row)?;
        }
        let mut row = row.to_vec();
        let mut search = Search {
            miss: |x: f64| {
                row[place] = x;
                (self.evaluate)(&row) - wanted
            },
            wanted,
            ends: (f64::INFINITY, f64::NEG_INFINITY),
        };
        let (low, high) = bounds.unwrap_or(input.usual);
        for x in [low, high] {
            input.kind.check(x).map_err(|e| e.at(format_args!("{}, {}", self.name, input.name)))?;
        }
        let mut found = search.through(&within(low, high));
        let mut reach = (low, high);
        let (least, most) = input.kind.possible();
        // A stretch that goes on beyond the usual range is followed to its end.
        let open = |one: &Solution| {
            one.is_stretch()
                && ((one.least <= low && low > least) || (one.most >= high && high < most))
        };
        if bounds.is_none() && (found.is_empty() || found.iter().any(open)) {
            let points = beyond(low, high, least, most);
            reach = (points.first().map_or(low, |x| *x), points.last().map_or(high, |x| *x));
            found = search.through(&points);
        }
        if !found.is_empty() {
            return Ok(found);
        }
        let (kind, ends) = (self.output.kind, search.ends);
        let what = format!(
            "{}: no {} from {} gives {} = {}",
            self.name,
            input.name,
            range_words(input, reach.0, reach.1),
            self.output.symbol,
            of_kind(wanted, kind),
        );
        Err(Error::range(if ends.0 > ends.1 {
            format!("{what}; none of them gives an answer with the other inputs")
        } else {
            format!("{what}; it gives {} to {}", of_kind(ends.0, kind), of_kind(ends.1, kind))
        }))
    }

    /// The sentence that says that every value of a stretch gives the wanted result.
    pub fn stretch_words(&self, place: usize, of: usize, solution: Solution) -> String {
        let input = self.input(place, of);
        let range = range_words(input, solution.least, solution.most);
        format!("{}: every {} from {range} gives this result", self.name, input.name)
    }

    /// The working of one input, which gives the wanted result: that of the inverse where the catalogue
    /// has one for this input, else that of this formula with the input found, which is said beside it.
    /// `given` and `typed` are as for [`Formula::working`] (what stands at `place` is not looked at),
    /// `wanted_text` is the wanted result as it was typed. Of a stretch of values it takes the least.
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
        let found = self.solve(place, wanted.base(), &row, None)?;
        let wanted_text = wanted_text.unwrap_or_else(|| of_kind(wanted.base(), self.output.kind));
        let [one] = found[..] else {
            let roots: Vec<String> = found.iter().map(|x| of_kind(x.least, unknown.kind)).collect();
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
        given[place] = Amount { number: one.least / unit.to_base(1.0), unit };
        let mut texts: Vec<Option<String>> = (0..of).map(text).collect();
        texts[place] = Some(crate::quantity::print::with_unit(given[place].number, unit.symbol));
        let mut origin = format!("found so that {} is {wanted_text}", self.name);
        if one.is_stretch() {
            let range = range_words(unknown, one.least, one.most);
            origin.push_str("; the least, and so is every one from ");
            origin.push_str(&range);
        }
        self.working_from(&given, &texts, |at| if at == place { &origin } else { "" })
    }
}

/// A range in words: of one that goes on as far as was looked, its lower end and `up`.
fn range_words(input: &Input, least: f64, most: f64) -> String {
    let (low, high) = (of_kind(least, input.kind), of_kind(most, input.kind));
    let endless = input.kind.possible().1.is_infinite() && most >= FAR * input.usual.1;
    if endless && most > 0.0 { format!("{low} up") } else { format!("{low} to {high}") }
}

/// Points from one end to the other: in even steps of the ratio where the range spans decades, else of the
/// difference.
fn within(low: f64, high: f64) -> Vec<f64> {
    let ratio = low > 0.0 && high / low > 20.0;
    let at = |k: usize| {
        let share = k as f64 / STEPS as f64;
        if ratio { low * (high / low).powf(share) } else { low + (high - low) * share }
    };
    (0..STEPS).map(at).chain([high]).collect()
}

/// Points as far beyond the usual range as is possible, the usual range among them.
fn beyond(low: f64, high: f64, least: f64, most: f64) -> Vec<f64> {
    let (each, decades) = BEYOND;
    let far = |k: i32| 10_f64.powf(f64::from(k) / f64::from(each));
    let steps = 1..=each * decades;
    let width = (high - low).max(f64::MIN_POSITIVE);
    let mut points: Vec<f64> = if low > 0.0 && least >= 0.0 {
        // To nothing in even steps of the ratio.
        let down = steps.clone().map(|k| low / far(k));
        down.chain((least == 0.0).then_some(0.0)).collect()
    } else if least.is_finite() {
        (1..=STEPS / 2).map(|k| low + (least - low) * 2.0 * k as f64 / STEPS as f64).collect()
    } else {
        steps.clone().map(|k| low - width * (far(k) - 1.0)).collect()
    };
    points.reverse();
    points.extend(within(low, high));
    if most.is_finite() {
        points
            .extend((1..=STEPS / 2).map(|k| high + (most - high) * 2.0 * k as f64 / STEPS as f64));
    } else {
        points.extend(steps.map(|k| high + width * (far(k) - 1.0)));
    }
    points.retain(|x| *x >= least && *x <= most);
    points.dedup();
    points
}

/// What is looked through, and what came out on the way.
struct Search<F> {
    miss: F,
    wanted: f64,
    /// The least and the most that the points gave.
    ends: (f64, f64),
}

impl<F: FnMut(f64) -> f64> Search<F> {
    /// What gives the wanted result, between points in their order.
    fn through(&mut self, points: &[f64]) -> Vec<Solution> {
        let misses: Vec<f64> = points.iter().map(|x| (self.miss)(*x)).collect();
        for miss in misses.iter().filter(|miss| miss.is_finite()) {
            let answer = miss + self.wanted;
            self.ends = (self.ends.0.min(answer), self.ends.1.max(answer));
        }
        let mut found: Vec<Solution> = Vec::new();
        let mut at = 0;
        while at < points.len() {
            if self.hits(misses[at]) {
                let last = (at..points.len()).take_while(|k| self.hits(misses[*k])).last();
                let last = last.unwrap_or(at);
                let before = at.checked_sub(1).map(|k| points[k]);
                let after = points.get(last + 1).copied();
                found.push(self.stretch(points[at], points[last], before, after));
                at = last + 1;
                continue;
            }
            if let Some(next) = misses.get(at + 1)
                && !self.hits(*next)
                && misses[at].signum() * next.signum() < 0.0
            {
                let (left, right) = (points[at], points[at + 1]);
                let root = bisect(&mut self.miss, left, right);
                let left_over = (self.miss)(root).abs();
                // A jump or a pole changes sign too, without coming near the wanted value.
                if self.hits(left_over) {
                    found.push(self.stretch(root, root, Some(left), Some(right)));
                } else if left_over
                    <= 1e-9 * self.wanted.abs().max(misses[at].abs()).max(next.abs())
                {
                    found.push(Solution { least: root, most: root });
                }
            }
            at += 1;
        }
        found.dedup_by(|next, one| near(one.most, next.least));
        found
    }

    /// Whether a miss is only rounding.
    fn hits(&self, miss: f64) -> bool {
        miss.abs() <= 1e-14 * self.wanted.abs()
    }

    /// The stretch about values that give the wanted result, to its ends between them and their
    /// neighbours. A stretch as narrow as rounding is a single value.
    fn stretch(&mut self, from: f64, to: f64, before: Option<f64>, after: Option<f64>) -> Solution {
        let least = before.map_or(from, |outside| self.edge(from, outside));
        let most = after.map_or(to, |outside| self.edge(to, outside));
        if from >= to && near(least, most) {
            return Solution { least: from, most: from };
        }
        Solution { least, most }
    }

    /// The last value that gives the wanted result, between one that does and one that does not.
    fn edge(&mut self, mut inside: f64, mut outside: f64) -> f64 {
        loop {
            let middle = f64::midpoint(inside, outside);
            if middle.total_cmp(&inside).is_eq() || middle.total_cmp(&outside).is_eq() {
                return inside;
            }
            let miss = (self.miss)(middle);
            if self.hits(miss) { inside = middle } else { outside = middle }
        }
    }
}

/// True of two values that differ by no more than rounding on the way can make.
fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
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
