//! What the numbers of a short notation make: which is the count, which the ends.

use super::cursor::Cursor;
use super::trade::{Figures, Order, SPUN_SILK, Short};
use super::words::fold;
use super::{Fold, Part, Single, Strand, Turned, Whole};
use crate::error::{Error, Result};
use crate::quantity::{Amount, Unit};

/// The systems of raw silk, which is named by the ends of its range.
const RAW_SILK: [&str; 5] =
    ["den", "old-denier-500", "turin-denier", "milan-denier", "legal-denier-450"];

/// What two numbers would be in the systems that are likely.
pub(super) fn without_system(figures: &str, [a, b]: [f64; 2]) -> String {
    let (ends, count) = match ends_of([a, b]) {
        (true, false) => (a, b),
        (false, true) => (b, a),
        _ if a.to_bits() == b.to_bits() => {
            return format!(
                "and how many ends it has is not settled; write '{a} worsted × {a}', '{a} worsted × 2' or the \
                 like, with the system that is meant"
            );
        }
        _ => {
            return format!(
                "and which number is the ends is not settled; write '{b} worsted × {a}', '{a} worsted × {b}' or \
                 the like, with the system that is meant"
            );
        }
    };
    format!(
        "of cotton, worsted or metric yarn it is {} of {count}, {} as a whole, of English spun silk \
         {count} as a whole; write '{figures} worsted', '{figures} Ne', 'Nm {figures}' or '{count}/{ends} spun-silk'",
        ends_in_words(ends),
        crate::quantity::print::figure(count / ends)
    )
}

/// What the numbers make.
#[allow(clippy::float_cmp, reason = "two numbers as they were typed")]
pub(super) fn folded(
    cursor: &Cursor<'_>,
    start: usize,
    figures: &Figures,
    system: &'static Unit,
    order: Option<Order>,
) -> Result<Short> {
    let [a, b] = match figures.numbers[..figures.many] {
        [a, b] => [a, b],
        ref more => return cabled(cursor, start, more, system, order).map(Short::of),
    };
    let order = match order {
        Some(order) => order,
        None if figures.times => match ends_of([a, b]) {
            (true, false) => Order::EndsThenCount,
            (false, true) => Order::CountThenEnds,
            _ => return Err(two_ways(cursor, start, [a, b], system.symbol)),
        },
        None if RAW_SILK.contains(&system.symbol) && a < b && b <= 1.5 * a && a >= 5.0 => {
            let count = Some(Amount { number: f64::midpoint(a, b), unit: system });
            let mut short = Short::of(Strand::Single(Single { count, ..Single::default() }));
            short.range = Some((a, b));
            return Ok(short);
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
            return Ok(Short::of(build));
        }
    };
    let mut short =
        Short::of(fold(ends_for_reed(cursor, start, ends, order)?, single(count, system)));
    if order == Order::WholeThenEnds {
        short.whole = Some(Whole { count: Amount { number: a, unit: system }, bulked: false });
    }
    Ok(short)
}

fn ends_for_reed(cursor: &Cursor<'_>, start: usize, ends: f64, order: Order) -> Result<u32> {
    if ends.fract() == 0.0 && (1.0..=10_000.0).contains(&ends) {
        return Ok(ends as u32);
    }
    let told = order.words();
    Err(cursor.fault(
        start,
        format!(
            "the number of ends is whole, from 1 to 10 000, not {ends}; '{told}' was the order given"
        ),
    ))
}

/// `60/2/3` and `3/2/60`: three cords of two ends of 60 each. Only of an indirect count: `150/48/2 dtex`
/// has its filaments in it.
fn cabled(
    cursor: &Cursor<'_>,
    start: usize,
    figures: &[f64],
    system: &'static Unit,
    order: Option<Order>,
) -> Result<Strand> {
    let last = figures.len() - 1;
    let are_folds = |of: &[f64]| of.iter().all(|x| x.fract() == 0.0 && (1.0..=12.0).contains(x));
    let count_first = are_folds(&figures[1..]) && !could_be_ends(figures[0]);
    let count_last = are_folds(&figures[..last]) && !could_be_ends(figures[last]);
    let order = match (order, count_first, count_last) {
        (Some(order), ..) => order,
        (None, true, false) if system.is_indirect() => Order::CountThenEnds,
        (None, false, true) if system.is_indirect() => Order::EndsThenCount,
        _ => {
            let s = system.symbol;
            let given = cursor.text[start..].trim();
            let mixed = format!("{}-{}/{}", figures[0], figures[1], figures[2]);
            let filaments = if given.starts_with(&mixed) && figures[1] < figures[2] {
                format!(", '{} {s}' for a mixed number", mixed.replace('-', " "))
            } else if system.is_indirect() {
                String::new()
            } else {
                format!(
                    ", '{} {s} f{} × {}' where the second is the filaments",
                    figures[0], figures[1], figures[2]
                )
            };
            return Err(cursor.fault(
                start,
                format!(
                    "'{given}' can be read in several ways; write the single and then the folds, \
                     like '{} {s} × {} × {}'{filaments}",
                    figures[0], figures[1], figures[2]
                ),
            ));
        }
    };
    let (count, folds): (f64, Vec<f64>) = match order {
        Order::CountThenEnds => (figures[0], figures[1..].to_vec()),
        Order::EndsThenCount => (figures[last], figures[..last].iter().rev().copied().collect()),
        _ => {
            let what =
                format!("'{}' is an order of two numbers, but there are more", order.words());
            return Err(cursor.fault(start, what));
        }
    };
    folds.into_iter().try_fold(single(count, system), |strand, ends| {
        Ok(fold(ends_for_reed(cursor, start, ends, order)?, strand))
    })
}

/// `2 ends`, `1 end`.
pub(super) fn ends_in_words(ends: f64) -> String {
    format!("{ends} end{}", if (ends - 1.0).abs() < f64::EPSILON { "" } else { "s" })
}

pub(super) fn two_ways(cursor: &Cursor<'_>, start: usize, [a, b]: [f64; 2], s: &str) -> Error {
    let (of_a, of_b) = (ends_in_words(a), ends_in_words(b));
    cursor.fault(
        start,
        format!(
            "'{}' can be read in two ways; write '{b} {s} × {a}' for {of_a} of {b}, \
             '{a} {s} × {b}' for {of_b} of {a}, or tell the order, '{}' or '{}', with '{a}/{b} {s}'",
            cursor.text[start..].trim(),
            Order::EndsThenCount.words(),
            Order::CountThenEnds.words()
        ),
    )
}

fn single(number: f64, unit: &'static Unit) -> Strand {
    Strand::Single(Single { count: Some(Amount { number, unit }), ..Single::default() })
}
fn unlike(ends: [Strand; 2]) -> Strand {
    let parts = ends.map(|strand| Part { strand, ends: 1 }).into();
    Strand::Fold(Fold { parts, twist: Turned::Unsaid })
}

/// Two to four ends are usual, and one.
pub(super) fn could_be_ends(x: f64) -> bool {
    x.fract() == 0.0 && (1.0..=4.0).contains(&x)
}
/// Five to twelve are ends beside a count that is far from any number of ends.
fn are_many_ends(x: f64, count: f64) -> bool {
    x.fract() == 0.0 && (5.0..=12.0).contains(&x) && count >= 5.0 * x
}

/// Which of the numbers can be the number of ends.
fn ends_of([a, b]: [f64; 2]) -> (bool, bool) {
    match (could_be_ends(a), could_be_ends(b)) {
        (false, false) => (are_many_ends(a, b), are_many_ends(b, a)),
        both => both,
    }
}

/// Which number is the number of ends, where only one can be.
#[allow(clippy::float_cmp, reason = "two numbers as they were typed")]
fn settle(
    cursor: &Cursor<'_>,
    start: usize,
    [a, b]: [f64; 2],
    system: &'static Unit,
) -> Result<Order> {
    let s = system.symbol;
    let given = cursor.text[start..].trim();
    if !system.is_indirect() {
        let filaments = if b.fract() == 0.0 && (5.0..=10_000.0).contains(&b) {
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
        (true, true) if a == b && a == 2.0 && !silk => Ok(Order::EndsThenCount),
        _ if silk && a == b => Err(cursor.fault(
            start,
            format!(
                "'{given}' can be read in two ways; write 'R {a} {s}/{a}' for {a} as a whole, '{a} {s} × {a}' \
                 for {a} ends of {a}"
            ),
        )),
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
        _ => Err(two_ways(cursor, start, [a, b], s)),
    }
}
