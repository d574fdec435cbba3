//! The short notations of the trade, each only where its reading is settled.
//!
//! `2/17 worsted` and `Nm 17/2` are both two ends of 17: the number of ends is the number that can be
//! one. Where both could be, or neither, nothing is guessed. English spun silk is named by the
//! resultant: 54/2 is 54 as a whole, of two ends of 108.

use super::cursor::Cursor;
use super::read::single_to_fold;
use super::settle::{could_be_ends, folded, two_ways, without_system};
use super::words;
use super::{Single, Strand, Whole, Yarn};
use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind, Unit, unit};

/// What the two numbers of a short notation are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Order {
    /// 2/17: the ends, then the count of each.
    EndsThenCount,
    /// 24/2: the count of each end, then how many.
    CountThenEnds,
    /// 54/2 of spun silk: the count of the whole, then the ends.
    WholeThenEnds,
    /// 19/19 of the Borders: the count of each of two ends.
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
        let plain = words.to_lowercase().replace(' ', "");
        Order::ALL.into_iter().find(|o| o.words() == plain).ok_or_else(|| {
            let all = Order::ALL.map(|o| format!("'{}'", o.words())).join(", ");
            Error::notation(format!("unknown order of two numbers '{words}'; write one of {all}"))
        })
    }
}

/// What settles a short notation that does not say it itself.
#[derive(Clone, Copy, Debug, Default)]
pub struct Reading {
    /// The count system.
    pub system: Option<&'static Unit>,
    /// What the two numbers are.
    pub order: Option<Order>,
}

pub(super) const SPUN_SILK: &str = "spun-silk";

/// Reads a short notation, and what may follow it in full.
pub(super) fn yarn(mut cursor: Cursor<'_>, reading: &Reading, may_say_ends: bool) -> Result<Yarn> {
    if let Some(yarn) = words::ticket(cursor, reading)? {
        return Ok(yarn);
    }
    if may_say_ends && let Some(yarn) = words::ends_first(cursor, reading)? {
        return Ok(yarn);
    }
    let short = short(&mut cursor, reading)?;
    single_to_fold(cursor, Some(short))
}

/// What a short notation says; of spun silk its whole, of raw silk its range.
pub(super) struct Short {
    pub(super) strand: Strand,
    pub(super) whole: Option<Whole>,
    /// Of raw silk.
    pub(super) range: Option<(f64, f64)>,
}

impl Short {
    pub(super) fn of(strand: Strand) -> Self {
        Short { strand, whole: None, range: None }
    }
}

/// Numbers with a stroke or a sign of multiplication between them.
#[derive(Default)]
pub(super) struct Figures {
    pub(super) numbers: [f64; 4],
    pub(super) many: usize,
    /// An s after one of them: `2/40s`.
    counted: bool,
    /// `2 x 34`: which is the ends is left open, that there are ends is not.
    pub(super) times: bool,
    /// `150/48f`.
    filaments: Option<u32>,
}

fn figures(cursor: &mut Cursor<'_>, prefixed: bool) -> Result<Figures> {
    let mut found = Figures::default();
    loop {
        found.numbers[found.many] = cursor.number("a count")?;
        found.many += 1;
        found.counted |= words::eat_s(cursor);
        let mut ahead = *cursor;
        if found.many == 1 {
            let filaments = super::single::filaments(&mut ahead)?;
            // After a count that has its system before it they are read as always.
            if filaments.is_some() && !prefixed {
                found.filaments = filaments;
                *cursor = ahead;
                return Ok(found);
            }
        }
        let mut ahead = *cursor;
        let stroke = ahead.eat(b'/') || {
            ahead = *cursor;
            ahead.peek() == b'-' && ahead.eat(b'-')
        };
        // `Nm 32 x 2` is the notation of the standard.
        let times = !stroke && (!prefixed || found.many > 1) && ahead.eat_times();
        ahead.skip();
        if !(stroke || times) || !ahead.peek().is_ascii_digit() || found.many == 4 {
            return Ok(found);
        }
        found.times |= times;
        *cursor = ahead;
    }
}

/// A short notation, up to its end.
pub(super) fn short(cursor: &mut Cursor<'_>, reading: &Reading) -> Result<Short> {
    let numbered = words::eat_number_sign(cursor);
    let prefix = if numbered { None } else { prefix(cursor)? };
    cursor.skip();
    let start = cursor.at;
    let figures = figures(cursor, prefix.is_some())?;
    let numbers = &figures.numbers[..figures.many];
    if numbers.len() > 1 && numbers.last().is_some_and(|ends| could_be_ends(*ends)) {
        words::eat_ends_word(cursor);
    }
    cursor.skip();
    if let ([number], Some(cord)) = (numbers, words::cord(cursor)?) {
        positive(cursor, start, &Amount { number: *number, unit: unit("Ne", None)? })?;
        return Ok(Short::of(cord.of(*number)));
    }
    let end = cursor.at;
    let nothing_said = prefix.is_none() && reading.system.is_none();
    if numbered
        && nothing_said
        && numbers.len() == 1
        && (cursor.is_at_end() || words::is_thread(cursor.rest()))
    {
        return Err(words::without_cord(cursor, numbers[0]));
    }
    let system = system(cursor, prefix, reading, (start, end), numbers)?;
    for number in numbers {
        positive(cursor, start, &Amount { number: *number, unit: system })?;
    }
    if let [number] = *numbers {
        if prefix.is_some() {
            refuse_more_ends_than_a_yarn_has(cursor, start, number, system)?;
        }
        let count = Some(Amount { number, unit: system });
        let filaments = figures.filaments;
        return Ok(Short::of(Strand::Single(Single { count, filaments, ..Single::default() })));
    }
    let short = folded(cursor, start, &figures, system, reading.order)?;
    words::refuse_what_is_not_settled(cursor, &short.strand)?;
    Ok(short)
}

/// `Nm 2 x 13`: the standard would have 32 ends of 2.
fn refuse_more_ends_than_a_yarn_has(
    cursor: &Cursor<'_>,
    start: usize,
    number: f64,
    system: &'static Unit,
) -> Result<()> {
    let mut ahead = *cursor;
    if !ahead.eat_times() {
        return Ok(());
    }
    ahead.skip();
    match ahead.number("") {
        Ok(ends) if ends > 12.0 && could_be_ends(number) => {
            Err(two_ways(cursor, start, [number, ends], system.symbol))
        }
        _ => Ok(()),
    }
}

pub(super) fn positive(cursor: &Cursor<'_>, start: usize, count: &Amount) -> Result<()> {
    let tex = count.base();
    if tex > 0.0 && tex.is_finite() {
        return Ok(());
    }
    Err(cursor.fault(start, format!("a count is more than 0 and finite, not {}", count.number)))
}

/// The system that is before the numbers, as in `Nm 13/2`, `Nm. 13/2`, `Nm: 13/2`.
pub(super) fn prefix(cursor: &mut Cursor<'_>) -> Result<Option<&'static Unit>> {
    let rest = cursor.rest();
    let is_figure = |c: char| c.is_ascii_digit() || crate::quantity::fraction_sign(c).is_some();
    if rest.starts_with(|c: char| is_figure(c) || c == '.') {
        return Ok(None);
    }
    let Some(length) = rest.find(is_figure) else {
        if let Some(refusal) = crate::quantity::refuse_knitting_word(rest) {
            return Err(cursor.fault(cursor.at, refusal));
        }
        return Err(cursor.fault(
            cursor.at,
            "a yarn has its count; write it like '125 tex Z 210 × 2 S 120', '2/17 worsted' or 'Nm 13/2'",
        ));
    };
    // No system has a longer name; a long text is not searched for one.
    let word = words::head(&rest[..length]).trim();
    if word.ends_with('-') {
        return Err(cursor.fault(cursor.at, "a count is more than 0, and no sign is before it"));
    }
    match unit(word.trim_end_matches(['.', ':', '=', ' ']), Some(Kind::LinearDensity)) {
        Ok(unit) => {
            cursor.at += length;
            Ok(Some(unit))
        }
        Err(error) => Err(cursor.fault(cursor.at, error)),
    }
}

/// The system of the numbers: before them, after them, or given separately.
fn system(
    cursor: &mut Cursor<'_>,
    prefix: Option<&'static Unit>,
    reading: &Reading,
    (start, end): (usize, usize),
    numbers: &[f64],
) -> Result<&'static Unit> {
    let after = match prefix {
        Some(prefix) => Some(prefix),
        None if cursor.is_at_end() => None,
        None => Some(cursor.system()?),
    };
    match (after, reading.system) {
        (Some(written), Some(told)) if written != told => Err(cursor.fault(
            end.min(cursor.text.len()),
            format!("this says {}, but the system given is {}", written.symbol, told.symbol),
        )),
        (Some(system), _) | (None, Some(system)) => Ok(system),
        (None, None) => {
            let figures = cursor.text[start..end].trim();
            // As the numbers can be read again: without an s.
            let plain: Vec<String> = numbers.iter().map(f64::to_string).collect();
            let plain = plain.join("/");
            let what = match *numbers {
                [a, b] => without_system(&plain, [a, b]),
                _ => format!(
                    "write it after the number, such as '{plain} worsted', '{plain} Ne' or '{plain} tex'"
                ),
            };
            Err(cursor.fault(end, format!("'{figures}' does not say its count system; {what}")))
        }
    }
}
