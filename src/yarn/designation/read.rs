//! Reading the two notations of the standard.

use std::sync::LazyLock;

use super::cursor::Cursor;
use super::trade::{self, Reading};
use super::{Direction, Fold, Part, Single, Strand, Turned, Whole, Yarn};
use crate::error::{Error, Result};
use crate::quantity::{Amount, Kind, Unit, unit};

/// Folds in folds: no yarn is built deeper, and the reader's own depth stays bounded.
const DEEPEST: usize = 20;

/// The systems that most designations have.
static COMMON: LazyLock<[&'static Unit; 6]> = LazyLock::new(|| {
    ["tex", "dtex", "Nm", "Ne", "den", "turns/m"].map(|s| unit(s, None).expect("a unit"))
});

#[inline(always)]
pub(super) fn common_system(word: &str) -> Option<&'static Unit> {
    let [tex, dtex, nm, ne, den, _] = &*COMMON;
    Some(match word {
        "tex" => tex,
        "dtex" => dtex,
        "Nm" => nm,
        "Ne" => ne,
        "den" => den,
        _ => return None,
    })
}

pub(super) fn tex() -> &'static Unit {
    COMMON[0]
}

/// Reads a yarn in any of the notations.
pub(super) fn yarn(text: &str, reading: &Reading) -> Result<Yarn> {
    let mut cursor = Cursor::new(text);
    cursor.skip();
    let start = cursor.at;
    match cursor.peek() {
        b'R' | b'B' if matches!(text.as_bytes().get(start + 1), Some(b' ' | b'0'..=b'9')) => {
            fold_to_single(cursor)
        }
        b'(' => single_to_fold(cursor, None),
        b'0'..=b'9' | b'.' => {
            let mut ahead = cursor;
            ahead.number("a count")?;
            match ahead.peek() {
                b'/' | b'-' | b'\'' | b's' => trade::yarn(cursor, reading),
                _ if ahead.rest().starts_with('’') => trade::yarn(cursor, reading),
                _ if ahead.is_at_end() && reading.system.is_some() => trade::yarn(cursor, reading),
                _ if trade::is_cord(ahead.rest()) => trade::yarn(cursor, reading),
                _ => single_to_fold(cursor, None),
            }
        }
        0 => Err(Error::notation(
            "nothing was given for a yarn; write it like '34 tex S 600 × 2 Z 400', '2/24 worsted' or 'Nm 32/2'",
        )),
        _ if cursor.rest().starts_with(|c| crate::quantity::fraction_sign(c).is_some()) => {
            single_to_fold(cursor, None)
        }
        _ => trade::yarn(cursor, reading),
    }
}

/// `34 tex S 600 × 2 Z 400; R 69.3 tex`, from the start or from where its first count was read.
pub(super) fn single_to_fold(mut cursor: Cursor<'_>, first: Option<Amount>) -> Result<Yarn> {
    let build = strand(&mut cursor, first, 0)?;
    let mut whole = None;
    if cursor.eat(b';') {
        cursor.skip();
        let at = cursor.at;
        let bulked = match cursor.peek() {
            b'R' => false,
            b'B' => true,
            _ => {
                return Err(cursor.fault(
                    at,
                    format!(
                        "the resultant begins with R, as in '; R 69.3 tex': {}",
                        cursor.found(at)
                    ),
                ));
            }
        };
        cursor.at += 1;
        whole = Some(Whole { count: cursor.count()?, bulked });
    }
    ended(&mut cursor)?;
    Ok(Yarn { build, whole, about: None })
}

/// Refuses what stands after the end.
fn ended(cursor: &mut Cursor<'_>) -> Result<()> {
    cursor.skip();
    if cursor.is_at_end() {
        return Ok(());
    }
    let at = cursor.at;
    if trade::ply_words(cursor.rest()).is_some() {
        return Err(trade::two_readings_of_ply(cursor, at));
    }
    Err(cursor.fault(
        at,
        format!(
            "{} where the designation should end; after a count come its filaments 'f40', its twist \
             'S 600' or 't0', folds '× 2 Z 400', and last '; R 69.3 tex'",
            cursor.found(at)
        ),
    ))
}

/// A component, and what it is folded into.
fn strand(cursor: &mut Cursor<'_>, first: Option<Amount>, depth: usize) -> Result<Strand> {
    cursor.skip();
    let at = cursor.at;
    let mut strand = if first.is_none() && cursor.peek() == b'(' {
        if depth >= DEEPEST {
            return Err(cursor.fault(at, "there are more brackets in brackets than a yarn has"));
        }
        cursor.at += 1;
        group(cursor, at, |cursor| self::strand(cursor, None, depth + 1))?
    } else {
        let count = match first {
            Some(count) => count,
            None => cursor.count()?,
        };
        let filaments = filaments(cursor)?;
        Strand::Single(Single { count: Some(count), filaments, twist: Turned::Unsaid })
    };
    let held = match &mut strand {
        Strand::Single(single) => &mut single.twist,
        Strand::Fold(fold) => &mut fold.twist,
    };
    if *held == Turned::Unsaid {
        *held = twist(cursor)?;
    }
    // The practice of ASTM has a stroke where the standard has the sign of multiplication.
    let mut folds = 0;
    while cursor.eat_times() || eat_stroke(cursor) {
        folds += 1;
        if folds > DEEPEST {
            return Err(cursor.fault(cursor.at, "there are more folds in folds than a yarn has"));
        }
        let ends = cursor.whole("the number of ends")?;
        let twist = twist(cursor)?;
        strand = Strand::Fold(Fold { parts: vec![Part { strand, ends }], twist });
    }
    Ok(strand)
}

fn eat_stroke(cursor: &mut Cursor<'_>) -> bool {
    let mut ahead = *cursor;
    let stroke = ahead.eat(b'/') && {
        ahead.skip();
        ahead.peek().is_ascii_digit()
    };
    if stroke {
        *cursor = ahead;
    }
    stroke
}

/// `25 tex S 420 + 60 tex Z 80)`, after its bracket.
fn group(
    cursor: &mut Cursor<'_>,
    opened: usize,
    mut member: impl FnMut(&mut Cursor<'_>) -> Result<Strand>,
) -> Result<Strand> {
    let mut parts: Vec<Part> = Vec::new();
    loop {
        let strand = member(cursor)?;
        match parts.last_mut() {
            // Neighbours that are alike are two ends of one kind.
            Some(last) if last.strand == strand => last.ends += 1,
            _ => parts.push(Part { strand, ends: 1 }),
        }
        if cursor.eat(b'+') {
            continue;
        }
        if cursor.eat(b')') {
            break;
        }
        let at = cursor.at;
        let what = if cursor.is_at_end() {
            return Err(cursor.fault(opened, "this bracket is not closed"));
        } else {
            format!("'+' or ')' was expected here: {}", cursor.found(at))
        };
        return Err(cursor.fault(at, what));
    }
    match parts.as_slice() {
        // A bracket around one component says nothing.
        [Part { ends: 1, .. }] => Ok(parts.swap_remove(0).strand),
        _ => Ok(Strand::Fold(Fold { parts, twist: Turned::Unsaid })),
    }
}

/// `f40`, if it stands here.
#[inline(always)]
fn filaments(cursor: &mut Cursor<'_>) -> Result<Option<u32>> {
    cursor.skip();
    let next = cursor.text.as_bytes().get(cursor.at + 1);
    if cursor.peek() != b'f' || !next.is_some_and(u8::is_ascii_digit) {
        return Ok(None);
    }
    cursor.at += 1;
    cursor.whole("the number of filaments").map(Some)
}

/// `S 600`, `Z 15 tpi`, `S`, `t0`, if it stands here.
#[inline(always)]
fn twist(cursor: &mut Cursor<'_>) -> Result<Turned> {
    cursor.skip();
    let at = cursor.at;
    let bytes = cursor.text.as_bytes();
    let next = bytes.get(at + 1).copied().unwrap_or(b' ');
    let direction = match cursor.peek() {
        b't' if next == b'0' => {
            cursor.at += 2;
            return Ok(Turned::Not);
        }
        b'S' | b's' if !next.is_ascii_alphabetic() => Direction::S,
        b'Z' | b'z' if !next.is_ascii_alphabetic() => Direction::Z,
        b'0'..=b'9' => return Err(no_direction(cursor)),
        _ => return Ok(Turned::Unsaid),
    };
    cursor.at += 1;
    cursor.skip();
    if !matches!(cursor.peek(), b'0'..=b'9' | b'.') {
        return Ok(Turned::To(direction, None));
    }
    let start = cursor.at;
    let number = cursor.number("the twist")?;
    cursor.skip();
    // Turns per metre where no unit is written.
    let unit = match cursor.peek() {
        0 | b'/' | b';' | b')' | b'+' => COMMON[5],
        _ => twist_unit(cursor)?,
    };
    let turns = Amount { number, unit };
    if number > 0.0 && turns.base().is_finite() {
        return Ok(Turned::To(direction, Some(turns)));
    }
    Err(cursor.fault(start, "a twist is more than 0; write 't0' for a yarn without twist"))
}

#[cold]
fn no_direction(cursor: &Cursor<'_>) -> Error {
    if trade::ply_words(cursor.rest()).is_some() {
        return trade::two_readings_of_ply(cursor, cursor.at);
    }
    let what = "a twist has its direction before it, as in 'S 600' or 'Z 600' (turns per metre)";
    cursor.fault(cursor.at, what)
}

/// The unit of a twist: turns per metre where none is written.
fn twist_unit(cursor: &mut Cursor<'_>) -> Result<&'static Unit> {
    let mut ahead = *cursor;
    ahead.skip();
    let rest = ahead.rest();
    let letters = rest.bytes().position(|b| !b.is_ascii_alphabetic()).unwrap_or(rest.len());
    let filaments = rest.starts_with('f') && letters == 1;
    if letters == 0 || filaments || matches!(&rest[..letters], "x" | "X") {
        return Ok(COMMON[5]);
    }
    let end = rest.find([' ', ';', ')', '+', '×', '*']).unwrap_or(rest.len());
    // `turns/m` has a stroke of its own, `tpi/2` has not.
    for end in [end, letters] {
        if let Ok(unit) = unit(&rest[..end], Some(Kind::Twist)) {
            cursor.at = ahead.at + end;
            return Ok(unit);
        }
    }
    let what = format!(
        "'{}' is not a unit of twist; write turns per metre without a unit, or 'tpi'",
        &rest[..end]
    );
    Err(ahead.fault(ahead.at, what))
}

/// `R 69.3 tex Z 400/2 S 600; 34 tex`.
fn fold_to_single(mut cursor: Cursor<'_>) -> Result<Yarn> {
    let bulked = cursor.peek() == b'B';
    cursor.at += 1;
    let whole = Whole { count: cursor.count()?, bulked };
    let build = tail(&mut cursor, 0)?;
    ended(&mut cursor)?;
    Ok(Yarn { build, whole: Some(whole), about: None })
}

/// `Z 400/2 S 600; 34 tex`: what follows the resultant, or stands for a component in brackets.
fn tail(cursor: &mut Cursor<'_>, depth: usize) -> Result<Strand> {
    let top = twist(cursor)?;
    if !cursor.eat(b'/') {
        let filaments = filaments(cursor)?;
        let count = if cursor.eat(b';') { Some(cursor.count()?) } else { None };
        return Ok(Strand::Single(Single { count, filaments, twist: top }));
    }
    cursor.skip();
    let at = cursor.at;
    if depth >= DEEPEST {
        return Err(cursor.fault(at, "there are more folds in folds than a yarn has"));
    }
    if cursor.eat(b'(') {
        let mut strand = group(cursor, at, |cursor| {
            cursor.skip();
            match cursor.peek() {
                b'0'..=b'9' | b'.' | b'(' => self::strand(cursor, None, depth + 1),
                _ => tail(cursor, depth + 1),
            }
        })?;
        match &mut strand {
            Strand::Fold(fold) if fold.twist == Turned::Unsaid => fold.twist = top,
            _ => {
                return Err(
                    cursor.fault(at, "these brackets hold one component; write '/1' for it")
                );
            }
        }
        return Ok(strand);
    }
    let ends = cursor.whole("the number of ends")?;
    let strand = tail(cursor, depth + 1)?;
    Ok(Strand::Fold(Fold { parts: vec![Part { strand, ends }], twist: top }))
}
