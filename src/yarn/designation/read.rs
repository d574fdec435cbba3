//! Reading the two notations of the standard.

use std::sync::LazyLock;

use super::cursor::Cursor;
use super::resultant::fold_to_single;
use super::single::{filaments, twist};
use super::trade::{self, Reading, Short};
use super::{Fold, Part, Single, Strand, Turned, Whole, Yarn};
use super::{settle, words};
use crate::error::{Error, Result};
use crate::quantity::{Unit, unit};

/// Folds in folds: no yarn is built deeper, and the reader's own depth stays bounded.
pub(super) const DEEPEST: usize = 20;
/// More ends than these are rather filaments, or the count.
pub(super) const MOST_ENDS_AFTER_A_STROKE: u32 = 12;

/// The systems that most designations have.
pub(super) static COMMON: LazyLock<[&'static Unit; 6]> = LazyLock::new(|| {
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
    let Some(told) = reading.system else {
        if text.is_ascii() {
            // Without the detour that other notations need.
            return match text.as_bytes() {
                [b'R', b' ', b'0'..=b'9', ..] => fold_to_single(Cursor::new(text)),
                _ => yarn_at(Cursor::new(text), reading, true),
            };
        }
        return yarn_at(Cursor::new(&crate::quantity::plain(text)), reading, true);
    };
    let yarn = yarn_at(Cursor::new(&crate::quantity::plain(text)), reading, true)?;
    let said = [yarn.build.first().count, yarn.whole.map(|w| w.count)];
    if said.iter().flatten().any(|count| count.unit == told) {
        return Ok(yarn);
    }
    Err(Error::notation(format!(
        "'{}' says {}, but the system given is {}",
        text.trim(),
        yarn.system().symbol,
        told.symbol
    )))
}

/// `may_say_ends` is false after words such as `2 ends of`, which are said once.
pub(super) fn yarn_at(
    mut cursor: Cursor<'_>,
    reading: &Reading,
    may_say_ends: bool,
) -> Result<Yarn> {
    cursor.skip();
    let start = cursor.at;
    if cursor.peek() == b'+' {
        cursor.at += 1;
        cursor.skip();
    }
    match cursor.peek() {
        b'R' | b'B' | b'r' | b'b' if is_resultant(&cursor) => fold_to_single(cursor),
        b'(' => single_to_fold(cursor, None),
        b'0'..=b'9' | b'.' => {
            if is_short(&cursor, reading)? {
                trade::yarn(cursor, reading, may_say_ends)
            } else {
                single_to_fold(cursor, None)
            }
        }
        0 => Err(cursor.fault(
            start,
            "nothing was given for a yarn; write it like '125 tex Z 210 × 2 S 120', '2/17 worsted' or 'Nm 13/2'",
        )),
        _ if cursor.rest().starts_with(|c| crate::quantity::fraction_sign(c).is_some()) => {
            single_to_fold(cursor, None)
        }
        _ => trade::yarn(cursor, reading, may_say_ends),
    }
}

/// `R` or `B` before a count: `R 257 tex`, `R257`, `R Nm 16`.
fn is_resultant(cursor: &Cursor<'_>) -> bool {
    let mut ahead = *cursor;
    ahead.at += 1;
    let spaced = ahead.peek();
    ahead.skip();
    match ahead.peek() {
        b'0'..=b'9' | b'.' => true,
        _ => spaced == b' ' && !ahead.is_at_end(),
    }
}

/// True where a number is not followed by its count system.
#[inline(always)]
fn is_short(cursor: &Cursor<'_>, reading: &Reading) -> Result<bool> {
    let mut ahead = *cursor;
    ahead.number("a count")?;
    if matches!(ahead.peek(), b'/' | b'-' | b'\'' | b's' | b'`') {
        return Ok(true);
    }
    ahead.skip();
    Ok(match ahead.peek() {
        0 | b')' => reading.system.is_some(),
        b'/' | b'-' => true,
        b'x' | b'X' | b'*' | b'f' | b'F' | 0xC3 => {
            let mut after = ahead;
            let times = after.eat_times() && {
                after.skip();
                after.peek().is_ascii_digit()
            };
            times
                || filaments(&mut ahead.clone())?.is_some()
                || words::ply_words(cursor.rest()).is_some()
                || words::is_cord(ahead.rest())
        }
        b'p' | b'P' | b'e' | b'E' | b's' | b'S' => {
            words::ply_words(cursor.rest()).is_some() || words::is_cord(ahead.rest())
        }
        _ => words::is_cord(ahead.rest()),
    })
}

/// `125 tex Z 210 × 2 S 120; R 257 tex`, from the start or from what was read in short notation.
pub(super) fn single_to_fold(mut cursor: Cursor<'_>, short: Option<Short>) -> Result<Yarn> {
    let (first, said, range) = match short {
        Some(short) => (Some(short.strand), short.whole, short.range),
        None => (None, None, None),
    };
    let build = strand(&mut cursor, first, 0)?;
    if matches!(build, Strand::Single(_)) {
        // `16 Nm single` says what is written.
        if let Some((1, length)) = words::ply_words(cursor.rest()) {
            cursor.at += length;
        }
    }
    let whole = whole(&mut cursor)?.or(said);
    ended(&mut cursor)?;
    let mut yarn = Yarn { build, whole, about: None };
    if range.is_some() {
        yarn.about_mut().range = range;
    }
    Ok(yarn)
}

/// `; R 257 tex`; the mark before it may be a comma, or fall away.
fn whole(cursor: &mut Cursor<'_>) -> Result<Option<Whole>> {
    cursor.skip();
    let mut ahead = *cursor;
    let marked = ahead.eat(b';');
    if !marked {
        ahead.eat(b',');
    }
    ahead.skip();
    let bulked = match ahead.peek() {
        b'R' | b'r' if is_resultant(&ahead) => false,
        b'B' | b'b' if is_resultant(&ahead) => true,
        _ if !marked => return Ok(None),
        _ => {
            let found = ahead.found(ahead.at);
            let what = format!("the resultant begins with R, as in '; R 257 tex': {found}");
            return Err(ahead.fault(ahead.at, what));
        }
    };
    ahead.at += 1;
    *cursor = ahead;
    Ok(Some(Whole { count: cursor.count()?, bulked }))
}

/// Refuses what is after the end.
pub(super) fn ended(cursor: &mut Cursor<'_>) -> Result<()> {
    cursor.skip();
    if cursor.is_at_end() || matches!(cursor.rest().trim_end(), "," | ".") {
        return Ok(());
    }
    let at = cursor.at;
    if words::ply_words(cursor.rest()).is_some() {
        return Err(words::two_readings_of_ply(cursor, at));
    }
    if cursor.peek() == b'+' {
        return Err(cursor.fault(
            at,
            "ends that lie together are in brackets, and the twist of the fold after them, as in \
             '(62 tex S 380 + 125 tex Z 90) S 260'",
        ));
    }
    let word = cursor.rest().split([' ', ',', ';']).find(|w| !w.is_empty()).unwrap_or_default();
    let is_word =
        word.chars().count() > 2 && word.chars().all(|c| c.is_alphabetic() || "()-".contains(c));
    let material =
        if is_word { "; give fibre and state separately, as material and state" } else { "" };
    Err(cursor.fault(
        at,
        format!(
            "{} where the designation should end; after a count come its filaments 'f40', its twist \
             'Z 210' or 't0', folds '× 2 S 120', and last '; R 257 tex'{material}",
            cursor.found(at)
        ),
    ))
}

/// A component, and what it is folded into.
pub(super) fn strand(
    cursor: &mut Cursor<'_>,
    first: Option<Strand>,
    depth: usize,
) -> Result<Strand> {
    cursor.skip();
    let at = cursor.at;
    let mut strand = if let Some(strand) = first {
        strand
    } else if cursor.peek() == b'(' {
        if depth >= DEEPEST {
            return Err(cursor.fault(at, "there are more brackets in brackets than a yarn has"));
        }
        cursor.at += 1;
        group(cursor, at, |cursor| self::strand(cursor, None, depth + 1))?
    } else if depth > 0 && is_short_member(cursor)? {
        trade::short(cursor, &Reading::default())?.strand
    } else {
        Strand::Single(Single { count: Some(cursor.count()?), ..Single::default() })
    };
    if let Strand::Single(single @ Single { filaments: None, .. }) = &mut strand {
        single.filaments = filaments(cursor)?;
    }
    let held = match &mut strand {
        Strand::Single(single) => &mut single.twist,
        Strand::Fold(fold) => &mut fold.twist,
    };
    if *held == Turned::Unsaid {
        *held = twist(cursor)?;
    }
    // The practice of ASTM has a stroke where the standard has the sign of multiplication.
    let mut folds = 0;
    loop {
        let stroke = !cursor.eat_times();
        if stroke && !eat_stroke(cursor, &strand)? {
            break;
        }
        folds += 1;
        if folds > DEEPEST {
            return Err(cursor.fault(cursor.at, "there are more folds in folds than a yarn has"));
        }
        let ends = cursor.whole("the number of ends")?;
        words::eat_ends_word(cursor);
        let twist = twist(cursor)?;
        strand = Strand::Fold(Fold { parts: vec![Part { strand, ends }], twist });
    }
    Ok(strand)
}

/// A short notation among those in brackets: `(2/17 worsted + Nm 16)`.
fn is_short_member(cursor: &Cursor<'_>) -> Result<bool> {
    match cursor.peek() {
        b'0'..=b'9' | b'.' => is_short(cursor, &Reading::default()),
        b'A'..=b'Z' | b'a'..=b'z' => {
            // Other letters are better reported as a missing count.
            Ok(trade::prefix(&mut cursor.clone()).is_ok_and(|prefix| prefix.is_some()))
        }
        _ => Ok(false),
    }
}

/// Past the stroke of `24 Ne/5`. After a single it may be before filaments as well, or the ends may
/// are before it.
fn eat_stroke(cursor: &mut Cursor<'_>, before: &Strand) -> Result<bool> {
    let mut ahead = *cursor;
    let stroke = ahead.eat(b'/') && {
        ahead.skip();
        ahead.peek().is_ascii_digit()
    };
    if !stroke {
        return Ok(false);
    }
    let at = ahead.at;
    if let Strand::Single(Single { count: Some(count), filaments: None, .. }) = before
        && let Ok(figure) = ahead.whole("")
        && figure > MOST_ENDS_AFTER_A_STROKE
    {
        let (n, s) = (count.number, count.unit.symbol);
        let other = if count.unit.is_indirect() {
            format!("'{figure} {s} × {n}' for {} of {figure}", settle::ends_in_words(n))
        } else {
            format!("'{n} {s} f{figure}' for {figure} filaments")
        };
        return Err(cursor.fault(
            at,
            format!(
                "the stroke before {figure} can be read in two ways; write {other}, \
                 '{n} {s} × {figure}' for {figure} ends of {n}"
            ),
        ));
    }
    ahead.at = at;
    *cursor = ahead;
    Ok(true)
}

/// `62 tex S 380 + 125 tex Z 90)`, after its bracket.
pub(super) fn group(
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
