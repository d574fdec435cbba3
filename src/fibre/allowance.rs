//! Agreed allowances by the name of the fibre and the list.

use super::tables::MOISTURE_ALLOWANCES;
use crate::error::{Error, Result, did_you_mean};
use crate::handbook::Figure;
use crate::quantity::print::figure;
use crate::words::{has_words, words};

/// The lists, and the words by which they are called.
const LISTS: [(&str, &str); 3] = [("EU", "EU"), ("ASTM", "ASTM D1909"), ("trade", "trade")];

fn list_of(word: &str) -> Option<&'static str> {
    LISTS.iter().find(|(short, _)| short.eq_ignore_ascii_case(word)).map(|(_, list)| *list)
}

fn said(found: &[&Figure]) -> String {
    let one = |f: &&Figure| format!("'{}' ({} %)", f.of[0], figure(f.low));
    found.iter().map(one).collect::<Vec<_>>().join(", ")
}

/// The allowances for a fibre in every list.
pub fn allowances(fibre: &str) -> Result<Vec<&'static Figure>> {
    let found: Vec<_> = MOISTURE_ALLOWANCES
        .figures
        .iter()
        .filter(|f| has_words(f.of.iter().copied().chain([f.note]), fibre))
        .collect();
    if found.is_empty() { Err(unknown(fibre, None)) } else { Ok(found) }
}

/// The allowance for a fibre in a list: the European one, unless another is named.
///
/// ```
/// use hankwise::fibre::allowance;
///
/// let wool = allowance("wool carded", None)?;
/// assert_eq!((wool.low, wool.of[1], wool.source), (17.0, "EU", "French order 1998"));
/// assert!(allowance("wool", None).is_err()); // carded or combed?
/// assert_eq!(allowance("wool", Some("ASTM"))?.low, 13.6);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn allowance(fibre: &str, list: Option<&str>) -> Result<&'static Figure> {
    // The list may be among the words: "wool ASTM".
    let (named, asked): (Vec<_>, Vec<_>) =
        words(fibre).into_iter().partition(|word| list_of(word).is_some());
    let asked = asked.join(" ");
    let list = list.or(named.first().map(String::as_str)).unwrap_or("EU");
    let list = words(list).first().and_then(|word| list_of(word)).ok_or_else(|| {
        let all = LISTS.map(|(short, _)| format!("'{short}'")).join(", ");
        Error::notation(format!("unknown list of allowances '{list}'; there are {all}"))
    })?;
    if asked.is_empty() {
        return Err(Error::notation("no fibre is named; write one such as 'wool carded'"));
    }
    let mut found: Vec<&'static Figure> = MOISTURE_ALLOWANCES
        .figures
        .iter()
        .filter(|f| f.of[1] == list && has_words([f.of[0], f.note], &asked))
        .collect();
    // A name in full goes before one that holds more words.
    let full = |f: &&&Figure| words(f.of[0]) == words(&asked);
    if let Some(exact) = found.iter().find(full) {
        found = vec![exact];
    }
    match found[..] {
        [] => Err(unknown(&asked, Some(list))),
        [one, ..] if found.iter().all(|f| same(f.low, one.low)) => Ok(one),
        _ => Err(Error::notation(format!(
            "'{}' stands for several in the list {list}: {}; write one of them",
            fibre.trim(),
            said(&found)
        ))),
    }
}

fn same(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9
}

fn unknown(fibre: &str, list: Option<&str>) -> Error {
    let elsewhere: Vec<_> = MOISTURE_ALLOWANCES
        .figures
        .iter()
        .filter(|f| has_words([f.of[0], f.note], fibre))
        .collect();
    let names = || MOISTURE_ALLOWANCES.figures.iter().map(|f| f.of[0]);
    let hint = if let (false, Some(_)) = (elsewhere.is_empty(), list) {
        let lists: std::collections::BTreeSet<_> = elsewhere.iter().map(|f| f.of[1]).collect();
        format!("; is {} meant, which has it", lists.into_iter().collect::<Vec<_>>().join(" and "))
    } else {
        did_you_mean(fibre, names())
            .map_or_else(String::new, |near| format!("; did you mean '{near}'"))
    };
    let list = list.map_or_else(String::new, |list| format!(" in the list {list}"));
    Error::notation(format!(
        "there is no allowance for '{fibre}'{list}{hint}? The table moisture_allowances of the \
         handbook has them all; a contract may give its own: write it like '17 %'"
    ))
}
