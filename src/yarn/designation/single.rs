//! What may be beside the count of a single: its filaments, its twist.

use super::cursor::Cursor;
use super::read::COMMON;
use super::{Direction, Turned, words};
use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind, Unit, unit};

/// `f40`, if it is here.
#[inline(always)]
pub(super) fn filaments(cursor: &mut Cursor<'_>) -> Result<Option<u32>> {
    cursor.skip();
    let next = cursor.text.as_bytes().get(cursor.at + 1);
    match cursor.peek() {
        b'f' if next.is_some_and(u8::is_ascii_digit) => {
            cursor.at += 1;
            cursor.whole("the number of filaments").map(Some)
        }
        b'f' | b'F' | b'/' | b'0'..=b'9' => Ok(filaments_by_habit(cursor)),
        _ => Ok(None),
    }
}

/// `F 48`, `f 48`, `/48f`, `48 fil`, `/f48`: the letter says what the number is.
#[cold]
fn filaments_by_habit(cursor: &mut Cursor<'_>) -> Option<u32> {
    let mut ahead = *cursor;
    ahead.eat(b'/');
    let before = ahead.eat(b'f') || ahead.eat(b'F');
    ahead.skip();
    if !ahead.peek().is_ascii_digit() {
        return None;
    }
    let filaments = ahead.whole("").ok()?;
    if !before {
        ahead.skip();
        let rest = words::head(ahead.rest()).to_ascii_lowercase();
        let letters = rest.bytes().take_while(u8::is_ascii_alphabetic).count();
        if !["f", "fil", "fils", "filament", "filaments"].contains(&&rest[..letters]) {
            return None;
        }
        ahead.at += letters;
        ahead.eat(b'.');
    }
    *cursor = ahead;
    Some(filaments)
}

/// `Z 210`, `S 9 tpi`, `S`, `t0`, if it is here.
#[inline(always)]
pub(super) fn twist(cursor: &mut Cursor<'_>) -> Result<Turned> {
    cursor.skip();
    let next = cursor.text.as_bytes().get(cursor.at + 1).copied().unwrap_or(b' ');
    let direction = match cursor.peek() {
        b't' | b'T' if next == b'0' => {
            cursor.at += 2;
            return Ok(Turned::Not);
        }
        b't' | b'T' if cursor.rest()[1..].starts_with(" 0") => {
            cursor.at += 3;
            return Ok(Turned::Not);
        }
        b'S' | b's' if !next.is_ascii_alphabetic() => Direction::S,
        b'Z' | b'z' if !next.is_ascii_alphabetic() => Direction::Z,
        b'0'..=b'9' => return figure_alone(cursor),
        _ => return Ok(Turned::Unsaid),
    };
    cursor.at += 1;
    cursor.skip();
    if !matches!(cursor.peek(), b'0'..=b'9' | b'.') {
        if cursor.peek() == b'-' {
            return Err(negative(cursor));
        }
        return Ok(Turned::To(direction, None));
    }
    let start = cursor.at;
    let number = cursor.number("the twist")?;
    cursor.skip();
    // Turns per metre where no unit is written.
    let follows =
        cursor.text.as_bytes().get(cursor.at + 1).is_none_or(|b| !b.is_ascii_alphabetic());
    let unit = match cursor.peek() {
        0 | b';' | b')' | b'+' => COMMON[5],
        b'/' if follows => COMMON[5],
        _ => twist_unit(cursor)?,
    };
    let turns = Amount { number, unit };
    if number > 0.0 && turns.base().is_finite() {
        return Ok(Turned::To(direction, Some(turns)));
    }
    Err(cursor.fault(start, "a twist is more than 0; write 't0' for a yarn without twist"))
}

/// A number where a twist could be: `11 Nm 2-ply`, or a twist that lacks its direction.
#[cold]
fn figure_alone(cursor: &Cursor<'_>) -> Result<Turned> {
    match words::ply_words(cursor.rest()) {
        Some((1, _)) => return Ok(Turned::Unsaid),
        Some(_) => return Err(words::two_readings_of_ply(cursor, cursor.at)),
        None => {}
    }
    let after = cursor.rest().trim_start_matches(|c: char| c.is_ascii_digit() || ". ".contains(c));
    let what = if after.starts_with('%') {
        "give fibres and their shares separately, as material"
    } else {
        "a twist has its direction before it, as in 'S 210' or 'Z 210' (turns per metre)"
    };
    Err(cursor.fault(cursor.at, what))
}

#[cold]
fn negative(cursor: &Cursor<'_>) -> Error {
    cursor.fault(cursor.at, "a twist is more than 0; its direction is its letter, S or Z")
}

/// The unit of a twist, where something is that can be one.
fn twist_unit(cursor: &mut Cursor<'_>) -> Result<&'static Unit> {
    let mut ahead = *cursor;
    ahead.skip();
    let rest = ahead.rest();
    let letters = rest.bytes().position(|b| !b.is_ascii_alphabetic()).unwrap_or(rest.len());
    let filaments = rest.starts_with('f') && letters == 1;
    if rest.starts_with("/m") && !rest[2..].starts_with(|c: char| c.is_alphanumeric()) {
        cursor.at = ahead.at + 2;
        return Ok(COMMON[5]);
    }
    if letters == 0 || filaments || matches!(&rest[..letters], "x" | "X") {
        return Ok(COMMON[5]);
    }
    let end = rest.find([' ', ';', ')', '+', '×', '*']).unwrap_or(rest.len());
    if let Some((unit, end)) = longest_twist_unit(rest, end) {
        cursor.at = ahead.at + end;
        return Ok(unit);
    }
    let what = format!(
        "'{}' is not a unit of twist; write turns per metre without a unit, or 'tpi'",
        &rest[..end]
    );
    Err(ahead.fault(ahead.at, what))
}

/// The unit up to the next space, else the longest run of words that names one: `turns/cm` and
/// `turns/10 cm` have a stroke of their own, `tpi/2` and `turns/cm/2` have that of a fold.
fn longest_twist_unit(rest: &str, next_space: usize) -> Option<(&'static Unit, usize)> {
    const LONGEST: usize = 24;
    let named = |end: usize| unit(&rest[..end], Some(Kind::Twist)).ok().map(|unit| (unit, end));
    named(next_space).or_else(|| {
        let limit = rest.find([';', ')', '+', '×', '*']).unwrap_or(rest.len());
        let ends = rest[..limit].char_indices().filter(|(_, c)| matches!(c, ' ' | '/'));
        let mut ends: Vec<usize> = ends.map(|(at, _)| at).chain([limit]).collect();
        ends.retain(|end| (1..=LONGEST).contains(end));
        ends.into_iter().rev().find_map(named)
    })
}
