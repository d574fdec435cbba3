//! The short notations of the trade, each only where its reading is settled.
//!
//! `2/24 worsted` and `Nm 24/2` are both two ends of 24: the number of ends is the figure that can be
//! one. Where both could be, or neither, nothing is guessed. English spun silk is named by the
//! resultant: 60/2 is 60 as a whole, of two ends of 120.

use super::cursor::Cursor;
use super::read::single_to_fold;
use super::{Fold, Part, Single, Strand, Turned, Whole, Yarn};
use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind, Unit, unit};

/// What the two figures of a short notation are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Order {
    /// 2/24: the ends, then the count of each.
    EndsThenCount,
    /// 24/2: the count of each end, then how many.
    CountThenEnds,
    /// 60/2 of spun silk: the count of the whole, then the ends.
    WholeThenEnds,
    /// 24/24 of the Borders: the count of each of two ends.
    CountAndCount,
}

impl Order {
    /// Every order.
    pub const ALL: [Order; 4] =
        [Order::EndsThenCount, Order::CountThenEnds, Order::WholeThenEnds, Order::CountAndCount];
    /// The order in words.
    pub const fn words(self) -> &'static str {
        match self {
            Order::EndsThenCount => "ends/count",
            Order::CountThenEnds => "count/ends",
            Order::WholeThenEnds => "resultant/ends",
            Order::CountAndCount => "count/count",
        }
    }
    /// The order with its words.
    ///
    /// # Errors
    /// Where there is none.
    pub fn named(words: &str) -> Result<Order> {
        Order::ALL.into_iter().find(|o| o.words() == words).ok_or_else(|| {
            let all = Order::ALL.map(|o| format!("'{}'", o.words())).join(", ");
            Error::notation(format!("'{words}' is no order of two figures; write one of {all}"))
        })
    }
}

/// What settles a short notation that does not say it itself.
#[derive(Clone, Copy, Debug, Default)]
pub struct Reading {
    /// The count system.
    pub system: Option<&'static Unit>,
    /// What the two figures are.
    pub order: Option<Order>,
}

/// The systems of raw silk, which is named by the ends of its range.
const RAW_SILK: [&str; 5] =
    ["den", "old-denier-500", "turin-denier", "milan-denier", "legal-denier-450"];
const SPUN_SILK: &str = "spun-silk";
const SEWING_COTTON: &str = "Ne";

/// Reads a short notation.
pub(super) fn yarn(mut cursor: Cursor<'_>, reading: &Reading) -> Result<Yarn> {
    if let Some(yarn) = ticket(cursor)? {
        return Ok(yarn);
    }
    let numbered = eat_word(&mut cursor, &["no.", "no", "nr.", "nr"]);
    let prefix = if numbered { None } else { prefix(&mut cursor)? };
    cursor.skip();
    let start = cursor.at;
    let first = cursor.number("a count")?;
    let mut counted = eat_s(&mut cursor);
    let mut second = None;
    if matches!(cursor.peek(), b'/' | b'-') {
        let mut ahead = cursor;
        ahead.at += 1;
        if ahead.peek().is_ascii_digit() {
            second = Some(ahead.number("a number")?);
            cursor = ahead;
            counted |= eat_s(&mut cursor);
        }
    }
    cursor.skip();
    if let (Some(cord), None) = (cord(&mut cursor)?, second) {
        return Ok(cord.of(first));
    }
    let end = cursor.at;
    let system = system(&mut cursor, prefix, reading, (start, end), first, second)?;
    let Some(second) = second else {
        if prefix.is_none() && !counted && reading.system.is_none() {
            return single_to_fold(Cursor { at: start, ..cursor }, None);
        }
        let count = Amount { number: first, unit: system };
        positive(&cursor, start, &count)?;
        return single_to_fold(cursor, Some(count));
    };
    cursor.skip();
    if !cursor.is_at_end() {
        if let Some(_ends) = ply_words(cursor.rest()) {
            return Err(two_readings_of_ply(&cursor, cursor.at));
        }
        return Err(cursor.fault(
            cursor.at,
            format!(
                "{} after a short notation; with twist or resultant write it in full, like '24 {} × 2 S 300; R 12.2 {1}'",
                cursor.found(cursor.at),
                system.symbol
            ),
        ));
    }
    for number in [first, second] {
        positive(&cursor, start, &Amount { number, unit: system })?;
    }
    figures(&cursor, start, [first, second], system, reading.order)
}

fn positive(cursor: &Cursor<'_>, start: usize, count: &Amount) -> Result<()> {
    let tex = count.base();
    if tex > 0.0 && tex.is_finite() {
        return Ok(());
    }
    Err(cursor.fault(start, format!("a count is more than 0 and finite, not {}", count.number)))
}

/// The system that stands before the figures, as in `Nm 32/2`.
fn prefix(cursor: &mut Cursor<'_>) -> Result<Option<&'static Unit>> {
    let rest = cursor.rest();
    if rest.starts_with(|c: char| c.is_ascii_digit() || c == '.') {
        return Ok(None);
    }
    let Some(length) = rest.find(|c: char| c.is_ascii_digit()) else {
        return Err(cursor.fault(
            cursor.at,
            "a yarn has its count; write it like '34 tex S 600 × 2 Z 400', '2/24 worsted' or 'Nm 32/2'",
        ));
    };
    match unit(rest[..length].trim(), Some(Kind::LinearDensity)) {
        Ok(unit) => {
            cursor.at += length;
            Ok(Some(unit))
        }
        Err(error) => Err(cursor.fault(cursor.at, error)),
    }
}

/// The system of the figures: before them, after them, or told apart.
fn system(
    cursor: &mut Cursor<'_>,
    prefix: Option<&'static Unit>,
    reading: &Reading,
    (start, end): (usize, usize),
    first: f64,
    second: Option<f64>,
) -> Result<&'static Unit> {
    let after = match prefix {
        Some(prefix) => Some(prefix),
        None if cursor.is_at_end() => None,
        None => Some(cursor.system()?),
    };
    match (after, reading.system) {
        (Some(written), Some(told)) if written != told => Err(cursor.fault(
            end.min(cursor.text.len()),
            format!("this says {}, and {} was told apart", written.symbol, told.symbol),
        )),
        (Some(system), _) | (None, Some(system)) => Ok(system),
        (None, None) => {
            let figures = cursor.text[start..end].trim();
            let what = match second {
                Some(second) => without_system(figures, [first, second]),
                None => format!(
                    "write it after the number, such as '{figures} worsted', '{figures} Ne' or '{figures} tex'"
                ),
            };
            Err(cursor.fault(end, format!("'{figures}' does not say its count system; {what}")))
        }
    }
}

/// What two figures would be in the systems that are likely.
fn without_system(figures: &str, [a, b]: [f64; 2]) -> String {
    let (ends, count) = match ends_of([a, b]) {
        (true, false) => (a, b),
        (false, true) => (b, a),
        _ => {
            return format!(
                "and which figure is the ends is not settled; write '{b} worsted × {a}', '{a} worsted × {b}' or \
                 the like, with the system that is meant"
            );
        }
    };
    format!(
        "of cotton, worsted or metric yarn it is {ends} ends of {count}, {} as a whole, of English spun silk \
         {count} as a whole; write '{figures} worsted', '{figures} Ne', 'Nm {figures}' or '{count}/{ends} spun-silk'",
        crate::quantity::print::figure(count / ends)
    )
}

/// What the two figures make.
#[allow(clippy::float_cmp, reason = "two figures as they were typed")]
fn figures(
    cursor: &Cursor<'_>,
    start: usize,
    [a, b]: [f64; 2],
    system: &'static Unit,
    order: Option<Order>,
) -> Result<Yarn> {
    let order = match order {
        Some(order) => order,
        None if RAW_SILK.contains(&system.symbol) && a < b && b <= 1.5 * a && a >= 5.0 => {
            let count = Some(Amount { number: f64::midpoint(a, b), unit: system });
            let mut yarn = Yarn::of(Strand::Single(Single { count, ..Single::default() }));
            yarn.about_mut().range = Some((a, b));
            return Ok(yarn);
        }
        None => settle(cursor, start, [a, b], system)?,
    };
    let (ends, count) = match order {
        Order::EndsThenCount => (a, b),
        Order::CountThenEnds => (b, a),
        Order::WholeThenEnds => (b, if system.is_indirect() { a * b } else { a / b }),
        Order::CountAndCount => {
            let [one, other] = [a, b].map(|number| single(number, system));
            let build = if a == b { fold(2, one) } else { unlike([one, other]) };
            return Ok(Yarn::of(build));
        }
    };
    if ends.fract() != 0.0 || !(1.0..=10_000.0).contains(&ends) {
        return Err(cursor.fault(
            start,
            format!(
                "the number of ends is whole, not {ends}; '{}' was the order told",
                order.words()
            ),
        ));
    }
    let mut yarn = Yarn::of(fold(ends as u32, single(count, system)));
    if order == Order::WholeThenEnds {
        yarn.whole = Some(Whole { count: Amount { number: a, unit: system }, bulked: false });
    }
    Ok(yarn)
}

fn single(number: f64, unit: &'static Unit) -> Strand {
    Strand::Single(Single { count: Some(Amount { number, unit }), ..Single::default() })
}
fn fold(ends: u32, strand: Strand) -> Strand {
    Strand::Fold(Fold { parts: vec![Part { strand, ends }], twist: Turned::Unsaid })
}
fn unlike(ends: [Strand; 2]) -> Strand {
    let parts = ends.map(|strand| Part { strand, ends: 1 }).into();
    Strand::Fold(Fold { parts, twist: Turned::Unsaid })
}

/// Two to four ends are usual, and one.
fn could_be_ends(x: f64) -> bool {
    x.fract() == 0.0 && (1.0..=4.0).contains(&x)
}
/// Five to twelve are ends beside a count that is far from any number of ends.
fn are_many_ends(x: f64, count: f64) -> bool {
    x.fract() == 0.0 && (5.0..=12.0).contains(&x) && count >= 5.0 * x
}

/// Which of the figures can be the number of ends.
fn ends_of([a, b]: [f64; 2]) -> (bool, bool) {
    match (could_be_ends(a), could_be_ends(b)) {
        (false, false) => (are_many_ends(a, b), are_many_ends(b, a)),
        both => both,
    }
}

/// Which figure is the number of ends, where only one can be.
#[allow(clippy::float_cmp, reason = "two figures as they were typed")]
fn settle(
    cursor: &Cursor<'_>,
    start: usize,
    [a, b]: [f64; 2],
    system: &'static Unit,
) -> Result<Order> {
    let s = system.symbol;
    let given = cursor.text[start..].trim();
    if !system.is_indirect() {
        let filaments = if b.fract() == 0.0 && b > 4.0 {
            format!(", '{a} {s} f{b}' for {b} filaments")
        } else {
            String::new()
        };
        return Err(cursor.fault(
            start,
            format!(
                "'{given}' is not settled in a direct system; write '{a} {s} × {b}' for {b} ends of {a}, \
                 '{b} {s} × {a}' for {a} ends of {b}, 'R {a} {s}/{b}' for {a} as a whole of {b} ends{filaments}"
            ),
        ));
    }
    let (first, second) = ends_of([a, b]);
    let silk = s == SPUN_SILK;
    match (first, second) {
        (false, true) if silk => Ok(Order::WholeThenEnds),
        (true, false) if !silk => Ok(Order::EndsThenCount),
        (false, true) => Ok(Order::CountThenEnds),
        (true, true) if a == b && a <= 2.0 && !silk => Ok(Order::EndsThenCount),
        _ if silk => Err(cursor.fault(
            start,
            format!(
                "'{given}' can be read in two ways: spun silk is named by the whole, then its ends, \
                 {b}/{a}; write '{b}/{a} {s}' for {b} as a whole, '{b} {s} × {a}' for {a} ends of {b}"
            ),
        )),
        _ if a == b => Err(cursor.fault(
            start,
            format!(
                "'{given}' can be read in two ways; write '{a} {s} × {a}' for {a} ends of {a}, \
                 '{a} {s} × 2' for two ends of {a} (as the Borders write it)"
            ),
        )),
        _ => Err(cursor.fault(
            start,
            format!(
                "'{given}' can be read in two ways; write '{b} {s} × {a}' for {a} ends of {b}, \
                 '{a} {s} × {b}' for {b} ends of {a}, or tell the order, '{}' or '{}'",
                Order::EndsThenCount.words(),
                Order::CountThenEnds.words()
            ),
        )),
    }
}

/// Past `s`, `'s`, as in 40's.
fn eat_s(cursor: &mut Cursor<'_>) -> bool {
    for s in ["'s", "’s", "s"] {
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
enum Cord {
    Three,
    Six,
}

impl Cord {
    fn of(self, number: f64) -> Yarn {
        let system = unit(SEWING_COTTON, None).expect("a unit");
        Yarn::of(match self {
            Cord::Three => fold(3, single(number, system)),
            Cord::Six => fold(3, fold(2, single(2.0 * number, system))),
        })
    }
}

/// True before `three-cord` and the like.
pub(super) fn is_cord(rest: &str) -> bool {
    let rest = rest.trim_end();
    if !rest.get(rest.len().saturating_sub(4)..).is_some_and(|r| r.eq_ignore_ascii_case("cord")) {
        return false;
    }
    let word = rest.trim_start().to_lowercase();
    ["three", "six", "3", "6", "four", "4", "nine", "9"]
        .iter()
        .any(|n| word.strip_prefix(n).is_some_and(|r| r.trim_start_matches(['-', ' ']) == "cord"))
}

fn cord(cursor: &mut Cursor<'_>) -> Result<Option<Cord>> {
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
fn ticket(mut cursor: Cursor<'_>) -> Result<Option<Yarn>> {
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
    eat_word(&mut cursor, &["no.", "no"]);
    cursor.skip();
    eat_word(&mut cursor, &["no.", "no"]);
    let number = cursor.number("the ticket number")?;
    let after = system(&mut cursor);
    let Some(system) = before.or(after) else {
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
    positive(&cursor, start, &count)?;
    let whole = Some(Whole { count, bulked: false });
    let build = Strand::Single(Single::default());
    Ok(Some(Yarn { whole, ..Yarn::of(build) }))
}

/// How many ends words such as `2-ply`, `two-fold` say, if they stand here.
pub(super) fn ply_words(rest: &str) -> Option<u32> {
    const WORDS: [(&str, u32); 7] = [
        ("single", 1),
        ("two", 2),
        ("three", 3),
        ("four", 4),
        ("five", 5),
        ("six", 6),
        ("eight", 8),
    ];
    let rest = rest.trim_start_matches([',', ' ']).to_lowercase();
    let digits = rest.bytes().position(|b| !b.is_ascii_digit()).unwrap_or(rest.len());
    let (ends, after) = match rest[..digits].parse() {
        Ok(ends) => (ends, &rest[digits..]),
        Err(_) => WORDS.iter().find_map(|(w, n)| Some((*n, rest.strip_prefix(w)?)))?,
    };
    let after = after.trim_start_matches(['-', ' ']);
    ["ply", "fold", "end", "strand"].iter().any(|w| after.starts_with(w)).then_some(ends)
}

/// `16 Nm 2-ply`: is 16 the count of an end, or of the whole?
pub(super) fn two_readings_of_ply(cursor: &Cursor<'_>, at: usize) -> Error {
    let count = cursor.text[..at].trim().trim_end_matches(',');
    let ends = ply_words(&cursor.text[at..]).unwrap_or(2);
    // `Nm 16` is turned round, so that what is proposed can be read.
    let count = match crate::quantity::parse_as(count, Kind::LinearDensity) {
        Ok(amount) => format!("{} {}", amount.number, amount.unit.symbol),
        Err(_) => count.to_owned(),
    };
    cursor.fault(
        at,
        format!(
            "'{}' can be read in two ways; write '{count} × {ends}' for {ends} ends of {count}, \
             'R {count}/{ends}' where {count} is the count of the whole",
            cursor.text.trim()
        ),
    )
}

impl Yarn {
    /// In the short notation of the trade: `Nm 32/2`, `2/24 worsted`, `60/2 spun-silk`, `13/15 den`.
    /// It says nothing of twist, nor of a resultant that was measured.
    ///
    /// # Errors
    /// Where the trade has no short notation for the yarn, or one that can be read in two ways.
    pub fn trade(&self) -> Result<String> {
        let written = match &self.build {
            Strand::Single(Single { count: Some(count), .. }) if self.about().range.is_some() => {
                let (low, high) = self.about().range.unwrap_or_default();
                format!("{low}/{high} {}", count.unit.symbol)
            }
            Strand::Single(Single { count: Some(count), .. }) => {
                format!("{} {}", count.number, count.unit.symbol)
            }
            Strand::Fold(Fold { parts, .. }) => match parts.as_slice() {
                [Part { strand: Strand::Single(Single { count: Some(count), .. }), ends }]
                    if count.unit.is_indirect() =>
                {
                    let (number, system) = (count.number, count.unit.symbol);
                    match system {
                        "Nm" => format!("Nm {number}/{ends}"),
                        SPUN_SILK => format!("{}/{ends} {system}", number / f64::from(*ends)),
                        _ => format!("{ends}/{number} {system}"),
                    }
                }
                _ => String::new(),
            },
            Strand::Single(_) => String::new(),
        };
        if written.is_empty() {
            return Err(Error::notation(format!(
                "the trade has no short notation for '{}'; it has one for ends that are alike, of an indirect count",
                self.designation()
            )));
        }
        // What would be read in two ways, or as another yarn, is not written.
        let read = Yarn::parse(&written);
        let same = read.as_ref().is_ok_and(|read| {
            read.build.singles() == self.build.singles()
                && read.build.first().count.map(|c| c.base())
                    == self.build.first().count.map(|c| c.base())
        });
        if same {
            return Ok(written);
        }
        Err(Error::notation(format!(
            "'{}' has no short notation that is read in one way only ('{written}' is not); write it as that",
            self.designation()
        )))
    }
}
