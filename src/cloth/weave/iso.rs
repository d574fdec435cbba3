//! Codes after ISO 9354, as they are remembered: the standard itself was not read.

use super::Weave;
use super::make::{LONGEST, formula_checked};
use crate::error::{Error, Result};

/// True where a text begins as a code does: two digits, a dash and a digit.
pub(super) fn looks_like(text: &str) -> bool {
    let bytes = text.as_bytes();
    let digit = |k: usize| bytes.get(k).is_some_and(u8::is_ascii_digit);
    digit(0) && digit(1) && bytes.get(2) == Some(&b'-') && digit(3)
}

/// Numbers of two digits.
fn pairs(part: &str, what: &str, code: &str) -> Result<Vec<usize>> {
    let pair = |word: &str| {
        (word.len() == 2 && word.bytes().all(|b| b.is_ascii_digit()))
            .then(|| word.parse::<usize>().ok())
            .flatten()
    };
    let read: Option<Vec<usize>> = part.split_whitespace().map(pair).collect();
    read.filter(|numbers| !numbers.is_empty()).ok_or_else(|| {
        Error::notation(format!(
            "{code}: '{}' is not {what} in numbers of two digits; a code reads '20-04 02-01-01': group, \
             ups and downs of the first end, how many ends work alike, step to the next",
            part.trim()
        ))
    })
}

/// Expands a code: the first end by its ups and downs from the first pick, so many ends alike, the
/// next so many picks later; step 00 has every other group the reverse of the first.
pub(super) fn expand(code: &str) -> Result<Weave> {
    let parts: Vec<&str> = code.split('-').collect();
    let [group, lifts, alike, step] = parts[..] else {
        return Err(Error::notation(format!(
            "{code} has {} parts between dashes; a code has four, such as '20-04 02-01-01'",
            parts.len()
        )));
    };
    let group = pairs(group, "the group", code)?;
    if !matches!(group[..], [10..=39]) {
        return Err(Error::notation(format!(
            "{code}: the group is 1 for plain, 2 for twill, 3 for satin and a digit for what is derived \
             from it, as in 10, 20, 30"
        )));
    }
    let lifts = pairs(lifts, "the ups and downs", code)?;
    let picks = formula_checked(&lifts).map_err(|e| e.at(code))?;
    let alike = pairs(alike, "the number of ends alike", code)?;
    let steps = pairs(step, "the step", code)?;
    if alike.contains(&0) {
        return Err(Error::range(format!("{code}: 00 ends alike make no cloth; write 01")));
    }
    let reverse = steps == [0];
    if !reverse && steps.contains(&0) {
        return Err(Error::range(format!(
            "{code}: a step of 00 stands alone, for groups of ends that are each other's reverse"
        )));
    }
    // Groups until the shift, the lists and the reversal are all back where they began.
    let cycle = alike.len() * steps.len();
    let most = 2 * picks * cycle;
    let mut columns: Vec<(usize, bool)> = Vec::new();
    let (mut shift, mut flipped) = (0, false);
    for k in 0..most {
        if k > 0 && k % cycle == 0 && shift == 0 && !flipped {
            break;
        }
        columns.extend(std::iter::repeat_n((shift, flipped), alike[k % alike.len()]));
        if columns.len() > LONGEST {
            return Err(Error::range(format!(
                "{code}: a repeat of more than {LONGEST} ends is given by its squares"
            )));
        }
        shift = (shift + steps[k % steps.len()]) % picks;
        flipped ^= reverse;
    }
    let ends_of: Vec<usize> = lifts
        .iter()
        .scan(0, |sum, n| {
            *sum += n;
            Some(*sum)
        })
        .collect();
    let up = |at: usize| ends_of.iter().take_while(|end| **end <= at).count() % 2 == 0;
    Weave::from_fn(columns.len(), picks, |end, pick| {
        let (shift, flipped) = columns[end];
        up((pick + picks - shift) % picks) != flipped
    })
    .map_err(|e| e.at(code))
}
