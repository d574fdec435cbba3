//! Words of the trade beside the numbers: tickets, cords, ply and fold.

use super::cursor::Cursor;
use super::trade::{Reading, positive};
use super::{Fold, Part, Single, Strand, Turned, Whole, Yarn};
use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind, unit};

const SEWING_COTTON: &str = "Ne";

fn single(number: f64, unit: &'static crate::quantity::Unit) -> Strand {
    Strand::Single(Single { count: Some(Amount { number, unit }), ..Single::default() })
}
pub(super) fn fold(ends: u32, strand: Strand) -> Strand {
    Strand::Fold(Fold { parts: vec![Part { strand, ends }], twist: Turned::Unsaid })
}

/// Past `s`, `'s`, as in 40's.
pub(super) fn eat_s(cursor: &mut Cursor<'_>) -> bool {
    for s in ["'s", "`s", "s"] {
        let Some(after) = cursor.rest().strip_prefix(s) else { continue };
        if !after.starts_with(|c: char| c.is_alphanumeric()) {
            cursor.at += s.len();
            return true;
        }
    }
    false
}

/// Past a word in small or capital letters.
fn eat_word(cursor: &mut Cursor<'_>, words: &[&str]) -> bool {
    let rest = cursor.rest();
    for word in words {
        let Some(head) = rest.get(..word.len()) else { continue };
        let after = rest[word.len()..].chars().next().unwrap_or(' ');
        if head.eq_ignore_ascii_case(word) && !after.is_alphabetic() {
            cursor.at += word.len();
            return true;
        }
    }
    false
}

/// Sewing cotton: three ends of the number, or six of twice the number.
#[derive(Clone, Copy)]
pub(super) enum Cord {
    Three,
    Six,
}

impl Cord {
    pub(super) fn of(self, number: f64) -> Strand {
        let system = unit(SEWING_COTTON, None).expect("a unit");
        match self {
            Cord::Three => fold(3, single(number, system)),
            Cord::Six => fold(3, fold(2, single(2.0 * number, system))),
        }
    }
}

/// True before `three-cord` and the like.
pub(super) fn is_cord(rest: &str) -> bool {
    let rest = rest.trim_end();
    let end = rest.as_bytes().last_chunk::<4>();
    if !end.is_some_and(|end| end.eq_ignore_ascii_case(b"cord")) {
        return false;
    }
    let word = head(rest).trim().to_lowercase();
    ["three", "six", "3", "6", "four", "4", "nine", "9"]
        .iter()
        .any(|n| word.strip_prefix(n).is_some_and(|r| r.trim_start_matches(['-', ' ']) == "cord"))
}

pub(super) fn cord(cursor: &mut Cursor<'_>) -> Result<Option<Cord>> {
    if !is_cord(cursor.rest()) {
        return Ok(None);
    }
    let word = cursor.rest().to_lowercase();
    let cord = match word.as_bytes() {
        [b't' | b'3', ..] => Cord::Three,
        [b's' | b'6', ..] => Cord::Six,
        _ => {
            return Err(cursor.fault(
                cursor.at,
                "only three-cord and six-cord have a settled reading; write the singles and the folds",
            ));
        }
    };
    cursor.at = cursor.text.len();
    Ok(Some(cord))
}

/// A ticket number of sewing thread: three times the resultant count, metric or cotton.
pub(super) fn ticket(mut cursor: Cursor<'_>, reading: &Reading) -> Result<Option<Yarn>> {
    let start = cursor.at;
    let system = |cursor: &mut Cursor<'_>| {
        cursor.skip();
        if eat_word(cursor, &["metric"]) {
            Some("Nm")
        } else if eat_word(cursor, &["cotton"]) {
            Some("Ne")
        } else {
            None
        }
    };
    let before = system(&mut cursor);
    cursor.skip();
    if !eat_word(&mut cursor, &["tkt.", "tkt", "ticket"]) {
        return Ok(None);
    }
    cursor.skip();
    eat_word(&mut cursor, &["no.", "no", "nr.", "nr"]);
    let before = before.or_else(|| system(&mut cursor));
    let number = cursor.number("the ticket number")?;
    positive(&cursor, start, &Amount { number, unit: unit("Nm", None)? })?;
    let after = system(&mut cursor);
    let told =
        reading.system.map(|told| told.symbol).filter(|told| ["Nm", SEWING_COTTON].contains(told));
    let Some(system) = before.or(after).or(told) else {
        return Err(cursor.fault(
            start,
            format!(
                "'{}' can be read in two ways; write 'Tkt {number} metric' (three times the metric count, \
                 {} tex) or 'Tkt {number} cotton' (three times the cotton count, {} tex)",
                cursor.text.trim(),
                crate::quantity::print::figure(3000.0 / number),
                crate::quantity::print::figure(
                    Amount { number: number / 3.0, unit: unit("Ne", None)? }.base()
                ),
            ),
        ));
    };
    cursor.skip();
    if !cursor.is_at_end() {
        let what = format!("{} after a ticket number", cursor.found(cursor.at));
        return Err(cursor.fault(cursor.at, what));
    }
    let count = Amount { number: number / 3.0, unit: unit(system, None)? };
    let whole = Some(Whole { count, bulked: false });
    let build = Strand::Single(Single::default());
    Ok(Some(Yarn { build, whole, about: None }))
}

/// As much of a text as such words can be long; the rest may be long.
pub(super) fn head(rest: &str) -> &str {
    let end = rest.char_indices().nth(40).map_or(rest.len(), |(i, _)| i);
    &rest[..end]
}

/// How many ends words such as `2-ply`, `two-fold`, `zweifach`, `single` say, if they are here, and
/// how long they are.
pub(super) fn ply_words(rest: &str) -> Option<(u32, usize)> {
    const FIGURES: [(&str, u32); 11] = [
        ("two", 2),
        ("three", 3),
        ("four", 4),
        ("five", 5),
        ("six", 6),
        ("eight", 8),
        ("one", 1),
        ("zwei", 2),
        ("drei", 3),
        ("vier", 4),
        ("sechs", 6),
    ];
    const WORDS: [&str; 8] = ["plies", "ply", "folds", "fold", "strands", "strand", "ends", "end"];
    // Most texts are distinguished at a glance.
    let start = rest.trim_start_matches([',', ' ']).as_bytes();
    let digits = start.iter().take_while(|b| b.is_ascii_digit()).count();
    let word = start[digits..].iter().find(|b| digits == 0 || !matches!(b, b'-' | b' '));
    let begins = word.map_or(0, u8::to_ascii_lowercase);
    if !(if digits > 0 { &b"pfse"[..] } else { b"otfsezdv" }).contains(&begins) {
        return None;
    }
    let rest = head(rest);
    let lower = rest.to_ascii_lowercase();
    let from = lower.trim_start_matches([',', ' ']);
    let left = |after: &str| rest.len() - after.len();
    let whole_word = |after: &&str| !after.starts_with(|c: char| c.is_alphanumeric());
    let past = |text: &'_ str, words: &[&str]| {
        words.iter().find_map(|w| text.strip_prefix(w).filter(whole_word).map(str::len))
    };
    if let Some(length) = past(from, &["singles", "single"]) {
        return Some((1, rest.len() - length));
    }
    let digits = from.bytes().position(|b| !b.is_ascii_digit()).unwrap_or(from.len());
    let (ends, after) = match from[..digits].parse() {
        Ok(ends) => (ends, &from[digits..]),
        Err(_) => FIGURES.iter().find_map(|(w, n)| Some((*n, from.strip_prefix(w)?)))?,
    };
    let after = after.trim_start_matches(['-', ' ']);
    let mut words = WORDS.to_vec();
    words.extend(["fach", "fädig"]);
    let length = past(after, &words)?;
    Some((ends, left(&after[after.len() - length..])))
}

/// Past the word after a number of ends: `× 2 ends`, `× 2-ply`.
pub(super) fn eat_ends_word(cursor: &mut Cursor<'_>) {
    let mut ahead = *cursor;
    ahead.skip();
    if !matches!(ahead.peek() | 0x20, b'p' | b'f' | b's' | b'e' | b'-') {
        return;
    }
    // As if a number stood before it.
    let with_figure = format!("2{}", head(ahead.rest()));
    if let Some((_, length)) = ply_words(&with_figure) {
        cursor.at = ahead.at + length - 1;
    }
}

/// `2-ply`, `two ends of` and the like at the beginning.
pub(super) fn ends_first(mut cursor: Cursor<'_>, reading: &Reading) -> Result<Option<Yarn>> {
    let start = cursor.at;
    let Some((ends, length)) = ply_words(cursor.rest()) else { return Ok(None) };
    let words = cursor.rest()[..length].to_lowercase();
    cursor.at += length;
    let of = {
        cursor.skip();
        eat_word(&mut cursor, &["of"])
    };
    cursor.skip();
    let of_ends = of && ["end", "ends", "strand", "strands"].iter().any(|w| words.ends_with(w));
    if cursor.is_at_end() {
        let what = crate::quantity::refuse_knitting_word(&cursor.text[start..]);
        return Err(match what {
            Some(refusal) => cursor.fault(start, refusal),
            None => cursor.fault(cursor.at, "the count of the yarn is missing, such as '125 tex'"),
        });
    }
    let rest = super::read::yarn_at(cursor, reading, false)?;
    match rest.build {
        Strand::Single(_) if ends == 1 => Ok(Some(rest)),
        Strand::Single(_) if of_ends && rest.whole.is_none() && (1..=10_000).contains(&ends) => {
            Ok(Some(Yarn::of(fold(ends, rest.build))))
        }
        Strand::Single(Single { count: Some(count), twist: Turned::Unsaid, .. }) => {
            let count = format!("{} {}", count.number, count.unit.symbol);
            Err(of_ply(&cursor, start, &count, ends))
        }
        _ => Err(cursor.fault(
            start,
            format!(
                "'{}' says the ends twice; write the single and then the folds, like '125 tex × 2'",
                cursor.text[start..].trim()
            ),
        )),
    }
}

/// `11 Nm 2-ply`: is 11 the count of an end, or of the whole?
pub(super) fn two_readings_of_ply(cursor: &Cursor<'_>, at: usize) -> Error {
    let count = cursor.text[..at].trim().trim_end_matches(',');
    let ends = ply_words(&cursor.text[at..]).map_or(2, |(ends, _)| ends);
    // `Nm 16` is turned round, so that what is proposed can be read.
    let count = match crate::quantity::parse_as(count, Kind::LinearDensity) {
        Ok(amount) => format!("{} {}", amount.number, amount.unit.symbol),
        Err(_) => count.to_owned(),
    };
    of_ply(cursor, at, &count, ends)
}

fn of_ply(cursor: &Cursor<'_>, at: usize, count: &str, ends: u32) -> Error {
    let of = super::settle::ends_in_words(f64::from(ends));
    cursor.fault(
        at,
        format!(
            "'{}' can be read in two ways; write '{count} × {ends}' for {of} of {count}, \
             'R {count}/{ends}' where {count} is the count of the whole",
            cursor.text.trim()
        ),
    )
}

/// What may not follow a short notation: a twist, of which it is not said whose it is, and ply.
pub(super) fn refuse_what_is_not_settled(cursor: &Cursor<'_>, strand: &Strand) -> Result<()> {
    let mut ahead = *cursor;
    ahead.skip();
    if ahead.is_at_end() {
        return Ok(());
    }
    let at = ahead.at;
    if ply_words(ahead.rest()).is_some() {
        return Err(ahead.fault(at, "the numbers already give the ends; omit these words"));
    }
    let Strand::Fold(Fold { parts, .. }) = strand else { return Ok(()) };
    if super::single::twist(&mut ahead)? == Turned::Unsaid {
        return Ok(());
    }
    let twist = cursor.text[at..ahead.at].trim();
    let written = Yarn::of(strand.clone()).designation();
    let both = match parts.as_slice() {
        [Part { strand: one @ Strand::Single(_), ends }] => {
            let one = Yarn::of(one.clone()).designation();
            format!(", '{one} {twist} × {ends}' where it is that of the singles")
        }
        _ => String::new(),
    };
    Err(cursor.fault(
        at,
        format!(
            "whose twist this is, is not settled; write '{written} {twist}' where it is that of the fold{both}"
        ),
    ))
}

/// `No. 40 thread`: sewing cotton is numbered, and its number means nothing without its cords.
pub(super) fn is_thread(rest: &str) -> bool {
    let word = rest.trim().to_lowercase();
    ["thread", "sewing thread", "sewing cotton"].contains(&word.as_str())
}

pub(super) fn without_cord(cursor: &Cursor<'_>, number: f64) -> Error {
    cursor.fault(
        cursor.at,
        format!(
            "'{}' does not say what it is the number of; write 'No. {number} six-cord' or 'No. {number} \
             three-cord' for sewing cotton, 'Tkt {number} metric' or 'Tkt {number} cotton' for a ticket, or \
             the count system, '{number} Ne'",
            cursor.text.trim()
        ),
    )
}

/// Past `No.`, `Nr.` before a figure.
pub(super) fn eat_number_sign(cursor: &mut Cursor<'_>) -> bool {
    eat_word(cursor, &["no.", "no", "nr.", "nr"])
}
