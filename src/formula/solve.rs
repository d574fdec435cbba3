//! Solving a formula for any of its inputs.

use std::fmt::Write;

use super::search::{Found, Search, Touch, beyond, within};
use super::{Formula, Input};
use crate::error::{Error, Result};
use crate::quantity::Amount;
use crate::quantity::print::{default_unit, of_kind};
use crate::worked::Working;

/// What gives a wanted result.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Solution {
    /// One value, at which the result crosses what is wanted.
    One(f64),
    /// One value, at which the result only just comes to what is wanted.
    Touching(f64, Touch),
    /// Every value of a stretch, where the formula rounds, has a floor or a ceiling.
    Stretch {
        /// The least of them; none where there is no least.
        least: Option<f64>,
        /// The most of them; none where there is no most.
        most: Option<f64>,
    },
}

impl Solution {
    /// A value that gives the wanted result: of a stretch the least, or the most where there is no least.
    pub fn value(&self) -> f64 {
        match *self {
            Solution::One(x) | Solution::Touching(x, _) => x,
            // Without either end, all do.
            Solution::Stretch { least, most } => least.or(most).unwrap_or(0.0),
        }
    }
    /// True of a stretch of values that all give the wanted result.
    pub fn is_stretch(&self) -> bool {
        matches!(self, Solution::Stretch { .. })
    }
    /// The value, or the two ends of a stretch, as far as it has ends.
    pub fn ends(&self) -> impl Iterator<Item = f64> {
        let (first, last) = match *self {
            Solution::One(x) | Solution::Touching(x, _) => (Some(x), None),
            Solution::Stretch { least, most } => (least, most),
        };
        first.into_iter().chain(last)
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
        let (mut tried, mut sloping) = (row.to_vec(), row.to_vec());
        let mut search = Search {
            miss: |x: f64| {
                tried[place] = x;
                (self.evaluate)(&tried) - wanted
            },
            slope: |x: f64| {
                sloping[place] = x;
                let (recording, root) = self.record(&sloping);
                // Inputs are the first steps of a recording.
                recording.slopes(root)[place]
            },
            wanted,
            ends: (f64::INFINITY, f64::NEG_INFINITY),
        };
        let (low, high) = bounds.unwrap_or(input.usual);
        for x in [low, high] {
            input.kind.check(x).map_err(|e| e.at(format_args!("{}, {}", self.name, input.name)))?;
        }
        let mut found = search.through(&within(low, high), (true, true));
        let mut reach = (Some(low), Some(high));
        let (least, most) = input.kind.possible();
        // What holds at an end of the usual range may hold beyond it: then it is followed to its end.
        let open =
            |one: &Found| (one.least <= low && low > least) || (one.most >= high && high < most);
        let stretches = |all: &[Found]| all.iter().any(|one| one.is_stretch() && open(one));
        let mut ends = (f64::NEG_INFINITY, f64::INFINITY);
        if bounds.is_none() && (found.is_empty() || found.iter().any(open)) {
            let points = beyond(low, high, least, most);
            let closed = (least.is_finite(), most.is_finite());
            // As far as was looked there is no end where none is set.
            if let [first, .., last] = points[..] {
                ends =
                    (if closed.0 { ends.0 } else { first }, if closed.1 { ends.1 } else { last });
                reach = (closed.0.then_some(first), closed.1.then_some(last));
            }
            let all = search.through(&points, closed);
            if found.is_empty() || stretches(&found) || stretches(&all) {
                found = all;
            }
        }
        if !found.is_empty() {
            let solution = |one: &Found| match one.touch {
                Some(touch) => Solution::Touching(one.least, touch),
                None if one.is_stretch() => Solution::Stretch {
                    least: Some(one.least).filter(|x| *x > ends.0),
                    most: Some(one.most).filter(|x| *x < ends.1),
                },
                None => Solution::One(one.least),
            };
            return Ok(found.iter().map(solution).collect());
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

    /// What is to be said of solutions that are not one value each, at which the result crosses what is
    /// wanted: a sentence for each stretch, and for each maximum, minimum and edge.
    pub fn solution_words(&self, place: usize, of: usize, solutions: &[Solution]) -> Vec<String> {
        let input = self.input(place, of);
        let (name, unknown) = (self.name, input.name);
        let say = |one: &Solution| match *one {
            Solution::One(_) => None,
            Solution::Stretch { least, most } => {
                let range = range_words(input, least, most);
                Some(format!("{name}: every {unknown} from {range} gives this result"))
            }
            Solution::Touching(x, touch) => {
                let x = of_kind(x, input.kind);
                let why = match touch {
                    Touch::Maximum => "the result is at its maximum there",
                    Touch::Minimum => "the result is at its minimum there",
                    Touch::Edge => "beyond it the formula has no answer",
                };
                Some(if solutions.len() == 1 {
                    format!(
                        "{name}: {unknown} = {x} is the only value that gives this result; {why}"
                    )
                } else {
                    format!("{name}: {unknown} = {x} only just gives this result; {why}")
                })
            }
        };
        solutions.iter().filter_map(say).collect()
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
            let roots: Vec<String> =
                found.iter().map(|one| of_kind(one.value(), unknown.kind)).collect();
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
        given[place] = Amount { number: one.value() / unit.to_base(1.0), unit };
        let mut texts: Vec<Option<String>> = (0..of).map(text).collect();
        texts[place] = Some(crate::quantity::print::with_unit(given[place].number, unit.symbol));
        let mut origin = format!("found so that {} is {wanted_text}", self.name);
        match one {
            Solution::One(_) => {}
            Solution::Stretch { least, most } => {
                let which = if least.is_some() { "least" } else { "most" };
                let range = range_words(unknown, least, most);
                let _ = write!(origin, "; the {which}, and so is every one from {range}");
            }
            Solution::Touching(_, touch) => origin.push_str(match touch {
                Touch::Maximum => "; the only one, at the maximum",
                Touch::Minimum => "; the only one, at the minimum",
                Touch::Edge => "; the only one, where the formula ceases to have an answer",
            }),
        }
        self.working_from(&given, &texts, |at| if at == place { &origin } else { "" })
    }
}

/// A range in words, after "from"; of one without an upper end `80 kg up`, without a lower `80 kg down`.
fn range_words(input: &Input, least: Option<f64>, most: Option<f64>) -> String {
    let say = |x: f64| of_kind(x, input.kind);
    match (least, most) {
        (Some(least), Some(most)) => format!("{} to {}", say(least), say(most)),
        (Some(least), None) => format!("{} up", say(least)),
        (None, Some(most)) => format!("{} down", say(most)),
        (None, None) => "the least to the most that can be".to_owned(),
    }
}
