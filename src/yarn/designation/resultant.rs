//! From the fold to the single: what begins with the count of the whole.

use super::cursor::Cursor;
use super::read::{DEEPEST, MOST_ENDS_AFTER_A_STROKE, ended, group};
use super::settle;
use super::single::{filaments, twist};
use super::{Fold, Part, Single, Strand, Turned, Whole, Yarn};
use crate::error::Result;

/// `R 257 tex S 120/2 Z 210; 125 tex`.
#[inline(never)]
pub(super) fn fold_to_single(mut cursor: Cursor<'_>) -> Result<Yarn> {
    let bulked = cursor.peek().eq_ignore_ascii_case(&b'B');
    cursor.at += 1;
    cursor.skip();
    let start = cursor.at;
    let count = if cursor.peek().is_ascii_digit() {
        let number = cursor.number("a count")?;
        cursor.skip();
        if cursor.peek() == b'/' {
            return whole_of_ends(cursor, start, number, bulked);
        }
        cursor.count_of(number, start)?
    } else {
        cursor.count()?
    };
    let whole = Whole { count, bulked };
    let build = Strand::Single(Single::default());
    let mut yarn = Yarn { build, whole: Some(whole), about: None };
    tail(&mut cursor, 0, &mut yarn.build)?;
    if !cursor.is_at_end() {
        refuse_new_whole(cursor, &whole)?;
        ended(&mut cursor)?;
    }
    Ok(yarn)
}

/// `R 60 tex × 2`: a whole of ends, or ends of a whole?
#[cold]
fn refuse_new_whole(mut cursor: Cursor<'_>, whole: &Whole) -> Result<()> {
    let at = cursor.at;
    if cursor.eat_times()
        && let Ok(ends) = cursor.whole("")
    {
        let count = format!("{} {}", whole.count.number, whole.count.unit.symbol);
        return Err(cursor.fault(
            at,
            format!(
                "R is the count of the whole, and ends after × make a new whole; write 'R {count}/{ends}' \
                 for {count} as a whole of {}, '{count} × {ends}' for {ends} of {count} each",
                settle::ends_in_words(f64::from(ends))
            ),
        ));
    }
    Ok(())
}

/// `R 34/2 tex`: the ends before the system.
#[cold]
fn whole_of_ends(mut cursor: Cursor<'_>, start: usize, number: f64, bulked: bool) -> Result<Yarn> {
    cursor.at += 1;
    let ends = cursor.whole("the number of ends")?;
    let count = cursor.count_of(number, start)?;
    if ends > MOST_ENDS_AFTER_A_STROKE {
        let (n, s) = (count.number, count.unit.symbol);
        return Err(cursor.fault(
            start,
            format!(
                "which number is the ends is not settled; write 'R {n} {s}/{ends}' for {n} as a whole of {ends} \
                 ends, 'R {ends} {s}/{n}' for {ends} as a whole of {}",
                settle::ends_in_words(n)
            ),
        ));
    }
    let count_of_single = if cursor.eat(b';') { Some(cursor.count()?) } else { None };
    let strand = Strand::Single(Single { count: count_of_single, ..Single::default() });
    let build = Strand::Fold(Fold { parts: vec![Part { strand, ends }], twist: Turned::Unsaid });
    let whole = Some(Whole { count, bulked });
    ended(&mut cursor)?;
    Ok(Yarn { build, whole, about: None })
}

/// `S 120/2 Z 210; 125 tex`: what follows the resultant, or stands for a component in brackets. It is
/// put where it belongs, which costs less than to hand it on.
fn tail(cursor: &mut Cursor<'_>, depth: usize, out: &mut Strand) -> Result<()> {
    let mut top = twist(cursor)?;
    if !cursor.eat(b'/') {
        let filaments = filaments(cursor)?;
        // The other notation has the filaments first.
        if top == Turned::Unsaid && filaments.is_some() {
            top = twist(cursor)?;
        }
        let count = if cursor.eat(b';') { Some(cursor.count()?) } else { None };
        *out = Strand::Single(Single { count, filaments, twist: top });
        return Ok(());
    }
    cursor.skip();
    let at = cursor.at;
    if depth >= DEEPEST {
        return Err(cursor.fault(at, "there are more folds in folds than a yarn has"));
    }
    if cursor.eat(b'(') {
        *out = group(cursor, at, |cursor| {
            cursor.skip();
            if matches!(cursor.peek(), b'0'..=b'9' | b'.' | b'(') {
                return super::read::strand(cursor, None, depth + 1);
            }
            let mut strand = Strand::Single(Single::default());
            tail(cursor, depth + 1, &mut strand)?;
            Ok(strand)
        })?;
        return match out {
            Strand::Fold(fold) if fold.twist == Turned::Unsaid => {
                fold.twist = top;
                Ok(())
            }
            _ => Err(cursor.fault(at, "these brackets hold one component; write '/1' for it")),
        };
    }
    let ends = cursor.whole("the number of ends")?;
    let mut parts = vec![Part { strand: Strand::Single(Single::default()), ends }];
    tail(cursor, depth + 1, &mut parts[0].strand)?;
    *out = Strand::Fold(Fold { parts, twist: top });
    Ok(())
}
