//! What an input changed by a step that can happen does to the answer.

use super::Formula;
use crate::quantity::print::{constant, significant};
use crate::quantity::{Amount, Kind, last_digit, unit};

/// An input changed by a step that can happen, with all else as it was: a share by a percentage point, a
/// number of things by one, what was measured by one of the last digit that was read.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// Name of the input.
    pub input: String,
    /// The input as it was given.
    pub was: String,
    /// The input after the step.
    pub is: String,
    /// The answer to what was given, in the unit of the answer.
    pub answer_was: f64,
    /// The answer after the step, calculated anew.
    pub answer_is: f64,
    /// The unit of the answer.
    pub unit: &'static str,
}

/// More digits are not worth printing.
const MOST: usize = 9;

impl Change {
    /// The change of an input with a text of its own, or none.
    pub(crate) fn of(
        input: String,
        was: &Amount,
        text: Option<&str>,
        is: &Amount,
        answers: (f64, f64),
        unit: &'static str,
    ) -> Change {
        let (answer_was, answer_is) = answers;
        let was = text.map_or_else(|| said(was), str::to_owned);
        Change { input, was, is: said(is), answer_was, answer_is, unit }
    }
    /// Both answers, with as many digits as tell them apart.
    pub fn answers(&self) -> [String; 2] {
        let both = |digits| [self.answer_is, self.answer_was].map(|x| significant(x, digits));
        let apart = (4..MOST).find(|digits| {
            let [is, was] = both(*digits);
            is != was
        });
        let unit = if self.unit.is_empty() { String::new() } else { format!(" {}", self.unit) };
        both(apart.unwrap_or(4)).map(|answer| answer + &unit)
    }
    /// The step and what comes of it, in words.
    pub fn words(&self) -> String {
        let [is, was] = self.answers();
        let comes = if is == was { format!("{was} as before") } else { format!("{is}, not {was}") };
        format!("{} {}, not {}: {comes}", self.input, self.is, self.was)
    }
}

impl Formula {
    /// What a step of each input does to the answer, the greatest change first. `typed` holds the texts,
    /// where there are any. Shares of one whole are left out: no one of them changes alone.
    ///
    /// ```
    /// use hankwise::{catalogue, quantity::parse};
    /// let fold = catalogue::formula("fold")?;
    /// # let given = ["3 %", "120 tex", "120 tex"].map(|text| parse(text).unwrap());
    /// # let typed = ["3 %", "120 tex", "120 tex"].map(|text| Some(text.to_owned()));
    /// let changes = fold.changed(&given, &typed)?;
    /// let contraction = changes.iter().find(|change| change.input == "contraction").unwrap();
    /// assert_eq!(contraction.words(), "contraction 4 %, not 3 %: 250 tex, not 247.4 tex");
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    pub fn changed(
        &self,
        given: &[Amount],
        typed: &[Option<String>],
    ) -> crate::error::Result<Vec<Change>> {
        let row: Vec<f64> = given.iter().map(Amount::base).collect();
        let answer_was = self.answer(&row)?;
        let mut all = Vec::new();
        for (place, amount) in given.iter().enumerate() {
            let input = self.input(place, given.len());
            if input.whole {
                continue;
            }
            let text = typed.get(place).and_then(Option::as_deref);
            let taken = steps(amount, text, input.kind).into_iter().find_map(|changed| {
                let mut row = row.clone();
                row[place] = changed.base();
                self.answer(&row).ok().map(|answer| (changed, answer))
            });
            let Some((changed, answer_is)) = taken else { continue };
            let input = self.name_at(place, given.len());
            let answers = (answer_was, answer_is);
            all.push(Change::of(input, amount, text, &changed, answers, self.output.kind.base()));
        }
        greatest_first(&mut all);
        Ok(all)
    }
}

/// The greatest change of the answer first.
pub(crate) fn greatest_first(all: &mut [Change]) {
    let size = |change: &Change| (change.answer_is - change.answer_was).abs();
    all.sort_by(|a, b| size(b).total_cmp(&size(a)));
}

/// A value after a step up, and after one down, which is taken where up is not possible.
pub(crate) fn steps(amount: &Amount, text: Option<&str>, kind: Kind) -> [Amount; 2] {
    let step = step(amount, text, kind);
    [step, -step].map(|step| {
        let number = amount.number + step;
        // To the digits in which it is said, so that what is said can be typed.
        let number = format!("{number:.8e}").parse().unwrap_or(number);
        Amount { number, unit: amount.unit }
    })
}

/// A step of a value, in its own unit.
fn step(amount: &Amount, text: Option<&str>, kind: Kind) -> f64 {
    if kind.family() == Kind::Fraction {
        return amount.unit.from_base(0.01);
    }
    if kind == Kind::Count {
        return 1.0;
    }
    let own = constant(amount.number);
    let text = text.unwrap_or(&own);
    // Where no last digit can be told, a hundredth of the value to one figure.
    let fallback = 10.0_f64.powf(amount.number.abs().max(1e-300).log10().floor() - 2.0);
    let Ok((smallest, in_unit)) = last_digit(text, kind) else { return fallback };
    match unit(in_unit, Some(kind)) {
        // Of pounds and ounces the ounces were read.
        Ok(read) if read != amount.unit && !read.is_indirect() && !amount.unit.is_indirect() => {
            amount.unit.from_base(read.to_base(smallest))
        }
        _ => smallest,
    }
}

fn said(amount: &Amount) -> String {
    // The digits of binary arithmetic are not said.
    let number = significant(amount.number, 9);
    let number = if number.contains('.') {
        number.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        number
    };
    if amount.unit.symbol.is_empty() { number } else { format!("{number} {}", amount.unit.symbol) }
}
