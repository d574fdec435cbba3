//! Reading quantities as people write them.

use std::borrow::Cow;

use super::kind::{Amount, Kind};
use super::lookup::{known_unit, refuse_knitting_word, unit};
use super::plain::plain;
use super::print::constant;
use super::unit::Unit;
use crate::error::{Error, Result};

/// Reads a quantity with its unit: `"16 Nm"`, `"22½ YSW"`, `"1 lb 12 oz"`, `"8 %"`.
pub fn parse(text: &str) -> Result<Amount> {
    read(text, None)
}

/// Reads a quantity of a kind. Plain numbers are taken for ratios, counts of things and money, and
/// for fractions below 1.
pub fn parse_as(text: &str, kind: Kind) -> Result<Amount> {
    let amount = read(text, Some(kind))?;
    kind.check(amount.base()).map_err(|e| e.at(format_args!("'{}'", text.trim())))?;
    Ok(amount)
}

/// A plain number of a kind: allowed where no unit matters.
#[allow(clippy::float_cmp, reason = "a value as it was typed")]
pub fn bare_number(number: f64, kind: Kind) -> Result<Amount> {
    let amount = |name| unit(name, Some(kind)).map(|unit| Amount { number, unit });
    match kind.family() {
        Kind::Ratio => amount(""),
        _ if !number.is_finite() => Err(Error::range(format!(
            "{number} is not possible for a {}; write a finite number like '{}'",
            kind.words(),
            kind.example()
        ))),
        Kind::Fraction if number.abs() < 1.0 => amount("fraction"),
        Kind::Fraction if number == 1.0 => Err(Error::unit(format!(
            "1 has no unit for a {}; write '100 %' for the whole, '1 %' for 1 percent, or a fraction below 1 such as 0.01",
            kind.words()
        ))),
        Kind::Fraction => Err(Error::unit(format!(
            "{number} has no unit for a {}; write '{number} %' for {number} percent, or a fraction below 1 such as {}{}",
            kind.words(),
            number / 100.0,
            if number < 3.0 && kind.of_factor(number).is_some_and(|share| kind.check(share).is_ok())
            {
                format!(", or '× {number}' for a factor")
            } else {
                String::new()
            }
        ))),
        _ => Err(Error::unit(format!(
            "{number} has no unit; write a {} such as '{}'",
            kind.words(),
            kind.example()
        ))),
    }
}

/// Longer texts are not a value.
const LONGEST: usize = 200;

/// A text as a message quotes it: a long one in short.
pub(super) fn shortened(text: &str) -> Cow<'_, str> {
    const SHOWN: usize = 60;
    match text.char_indices().nth(SHOWN) {
        Some((end, _)) => Cow::Owned(format!("{}…", &text[..end])),
        None => Cow::Borrowed(text),
    }
}

fn read(text: &str, wanted: Option<Kind>) -> Result<Amount> {
    if text.len() > LONGEST {
        return Err(Error::notation(format!(
            "'{}': a value has at most {LONGEST} characters, and this has {}",
            shortened(text.trim_start()),
            text.chars().count()
        )));
    }
    let text = plain(text);
    let whole = text.trim();
    if whole.is_empty() {
        return Err(Error::notation(match wanted {
            Some(kind) => {
                format!(
                    "nothing was given for a {}; write it like '{}'",
                    kind.words(),
                    kind.example()
                )
            }
            None => "nothing was given; write a number and its unit, like '16 YSW'".to_owned(),
        }));
    }
    if wanted.is_none_or(|k| k == Kind::LinearDensity)
        && let Some(refusal) = refuse_knitting_word(whole)
    {
        return Err(refusal);
    }
    // Counts are often written system first: `Nm 16`.
    if whole.starts_with(|c: char| c.is_alphabetic())
        && wanted.is_none_or(|k| k == Kind::LinearDensity)
        && let Some((system, figure)) = split_before_number(whole)
        && unit(system, Some(Kind::LinearDensity)).is_ok()
    {
        return read(&format!("{figure} {system}"), Some(Kind::LinearDensity));
    }
    if let Some(amount) = by_factor(whole, wanted)? {
        return Ok(amount);
    }
    let (number, rest) = leading_number(whole, wanted)?;
    let rest = rest.trim();
    if rest.is_empty() {
        return match wanted {
            Some(kind) => bare_number(number, kind),
            None => Err(Error::unit(format!(
                "'{whole}' has no unit; write it too, like '{whole} YSW' or '{whole} g'"
            ))),
        };
    }
    let rest = strip_plural_s(rest, whole, wanted)?;
    if let Some(unit) = known_unit(rest, wanted) {
        return Ok(Amount { number, unit });
    }
    compound(number, rest, wanted)
        .unwrap_or_else(|| Ok(Amount { number, unit: unit(rest, wanted)? }))
}

/// `× 1.2` for a crimp of 20 %: a share by the factor from one size to the other.
fn by_factor(text: &str, wanted: Option<Kind>) -> Result<Option<Amount>> {
    let factor = text.strip_prefix(['×', 'x', 'X', '*']);
    let Some((kind, text)) = wanted.zip(factor) else { return Ok(None) };
    let Ok((factor, rest)) = leading_number(text.trim_start(), wanted) else { return Ok(None) };
    let share = kind.of_factor(factor).filter(|_| rest.trim().is_empty() && factor >= 0.0);
    share.map(|number| unit("fraction", wanted).map(|unit| Amount { number, unit })).transpose()
}

/// `Nm 13 1/2`: what is before the first number, and the rest.
fn split_before_number(text: &str) -> Option<(&str, &str)> {
    let number = |c: char| c.is_ascii_digit() || fraction_sign(c).is_some() || "+-−".contains(c);
    let at = text.match_indices(' ').find(|(i, _)| text[i + 1..].starts_with(number))?.0;
    Some((text[..at].trim(), &text[at + 1..]))
}

/// `30s worsted`, `30's worsted`: the s says that a count is meant. An s without its system is
/// refused, unless a time is wanted or `30 s` is written as seconds are.
fn strip_plural_s<'t>(rest: &'t str, whole: &str, wanted: Option<Kind>) -> Result<&'t str> {
    if wanted.is_some_and(|k| k != Kind::LinearDensity) {
        return Ok(rest);
    }
    for s in ["'s", "’s", "s"] {
        let Some(system) = rest.strip_prefix(s) else { continue };
        let figure = whole.trim_end_matches(s).trim_end();
        let seconds = wanted.is_none() && s == "s";
        if system.is_empty() && !(seconds && whole.ends_with(" s")) {
            let or = if seconds { format!(", or '{figure} s' for seconds") } else { String::new() };
            return Err(Error::unit(format!(
                "'{whole}' does not say which count system; write '{figure} worsted', '{figure} YSW' or the like{or}"
            )));
        }
        if system.starts_with(' ') {
            return Ok(system.trim());
        }
    }
    Ok(rest)
}

/// `1 lb 12 oz`: the rest after the first number is a unit, a number and so on.
fn compound(first: f64, rest: &str, wanted: Option<Kind>) -> Option<Result<Amount>> {
    let number = |c: char| c.is_ascii_digit() || fraction_sign(c).is_some();
    let mut before = ' ';
    for (at, c) in rest.char_indices() {
        let starts =
            number(c) && at > 0 && (before == ' ' || before.is_alphabetic() || before == '"');
        before = c;
        if !starts {
            continue;
        }
        let Some(larger) = known_unit(rest[..at].trim(), wanted) else { continue };
        if matches!(larger.kind, Kind::Mass | Kind::Length | Kind::Duration) {
            return Some(
                read(&rest[at..], Some(larger.kind)).and_then(|more| together(first, larger, more)),
            );
        }
    }
    None
}

/// A whole number of a unit and a part of it in a smaller one.
fn together(first: f64, larger: &'static Unit, more: Amount) -> Result<Amount> {
    let smaller = more.unit;
    let parts = larger.to_base(1.0) / smaller.to_base(1.0);
    let written = format!("'{first} {} {} {}'", larger.symbol, more.number, smaller.symbol);
    let refuse = |why: String| Err(Error::notation(format!("{written}: {why}")));
    if parts <= 1.0 || more.number.is_sign_negative() {
        return refuse(format!(
            "'{}' is not smaller than '{}'; write the larger unit first",
            smaller.symbol, larger.symbol
        ));
    }
    if (parts - parts.round()).abs() > 1e-9 * parts {
        return refuse(format!(
            "a {} is not a whole number of {}; write it in one unit",
            larger.symbol, smaller.symbol
        ));
    }
    let part = larger.from_base(more.base());
    // The sign goes with the whole of it.
    let number = if first.is_sign_negative() { first - part } else { first + part };
    if first.fract() != 0.0 || part >= 1.0 - 1e-12 {
        let (whole, left) = (number.trunc(), (number.fract() * parts).abs());
        return refuse(format!(
            "is it {} {}? Write the larger unit whole and the smaller below {}, such as '{} {} {} {}'",
            constant(number),
            larger.symbol,
            parts.round(),
            constant(whole),
            larger.symbol,
            constant((left * 1e6).round() / 1e6),
            smaller.symbol
        ));
    }
    Ok(Amount { number, unit: larger })
}

pub(crate) fn fraction_sign(c: char) -> Option<f64> {
    Some(match c {
        '½' => 0.5,
        '⅓' => 1.0 / 3.0,
        '⅔' => 2.0 / 3.0,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅕' => 0.2,
        '⅖' => 0.4,
        '⅗' => 0.6,
        '⅘' => 0.8,
        '⅙' => 1.0 / 6.0,
        '⅚' => 5.0 / 6.0,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => return None,
    })
}

/// A number as people write it: `1,250.5`, `22½`, `13 1/2`, `3/4`.
pub fn number(text: &str) -> Result<f64> {
    let text = plain(text);
    let (value, rest) = leading_number(text.trim(), None)?;
    if rest.trim().is_empty() {
        Ok(value)
    } else {
        Err(Error::notation(format!(
            "'{text}' is not a number: '{}' does not belong to it",
            rest.trim()
        )))
    }
}

/// The number at the start of a text, and what follows it.
fn leading_number(text: &str, wanted: Option<Kind>) -> Result<(f64, &str)> {
    let (sign, body) = match text.strip_prefix(['-', '−', '–']) {
        Some(rest) => (-1.0, rest.trim_start()),
        None => (1.0, text.strip_prefix('+').unwrap_or(text)),
    };
    let digits = decimal_length(body);
    let mut value = None;
    if digits > 0 {
        value = Some(decimal(&body[..digits], text)?);
    }
    let mut rest = &body[digits..];
    // A vulgar fraction: ½ at once or after a space, 1/2 after a space or alone.
    if let Some(c) = rest.trim_start().chars().next()
        && let Some(part) = fraction_sign(c)
    {
        if body[..digits].contains('.') {
            return Err(Error::notation(format!(
                "'{}': a decimal and a fraction are two ways to write one part; write one of them",
                shortened(text)
            )));
        }
        value = Some(value.unwrap_or(0.0) + part);
        rest = &rest.trim_start()[c.len_utf8()..];
    } else if let Some(whole) = value {
        if let Some(after) = rest.strip_prefix('/') {
            let below = decimal_length(after);
            if below > 0 {
                refuse_fold(text, &body[..digits], &after[..below], wanted, &after[below..])?;
                value = Some(whole / decimal(&after[..below], text)?);
                rest = &after[below..];
            }
        } else if let Some((part, after)) = spaced_fraction(rest) {
            value = Some(whole + part);
            rest = after;
        }
    }
    match value {
        Some(v) if v.is_finite() => Ok((sign * v, rest)),
        Some(_) => Err(Error::notation(format!("'{text}' is not a finite number"))),
        None if wanted == Some(Kind::LinearDensity) && is_whole_yarn(text) => {
            Err(Error::notation(format!(
                "'{text}' describes a yarn, not only its count; read the whole yarn with \
                 hankwise.yarn.parse('{text}'), or write its count alone, like '{}'",
                count_of_yarn(text)
            )))
        }
        None => Err(Error::notation(match wanted {
            Some(kind) => format!(
                "'{text}' does not begin with a number; write a {} like '{}'",
                kind.words(),
                kind.example()
            ),
            None => format!("'{text}' does not begin with a number; write it like '16 YSW'"),
        })),
    }
}

/// `R 104 tex/2`: the resultant count of a yarn in the notation of ISO 1139, and what follows it.
fn is_whole_yarn(text: &str) -> bool {
    let rest = text.strip_prefix('R').unwrap_or("");
    rest.trim_start().starts_with(|c: char| c.is_ascii_digit())
}

/// The count that an `R 104 tex/2` begins with.
fn count_of_yarn(text: &str) -> &str {
    let rest = text.strip_prefix('R').unwrap_or(text).trim();
    rest.split(['/', ';']).next().unwrap_or(rest).trim()
}

/// ` 1/2` of `13 1/2 YSW`.
fn spaced_fraction(rest: &str) -> Option<(f64, &str)> {
    let body = rest.strip_prefix(' ')?.trim_start();
    let over = body.find('/')?;
    let top: u32 = body[..over].parse().ok()?;
    let after = &body[over + 1..];
    let end = after.find(|c: char| !c.is_ascii_digit()).unwrap_or(after.len());
    let bottom: u32 = after[..end].parse().ok()?;
    (top < bottom).then(|| (f64::from(top) / f64::from(bottom), &after[end..]))
}

/// `2/17` before a count system is a folded yarn, not a twelfth.
fn refuse_fold(text: &str, a: &str, b: &str, wanted: Option<Kind>, rest: &str) -> Result<()> {
    let system = rest.trim().trim_start_matches("'s").trim_start_matches("s ").trim();
    let count = wanted == Some(Kind::LinearDensity)
        || (wanted.is_none() && unit(system, Some(Kind::LinearDensity)).is_ok());
    if !count {
        return Ok(());
    }
    Err(Error::notation(format!(
        "'{text}' is a folded yarn ({a}-fold of {b}, or {b}-fold of {a}), not a count; \
         hankwise.yarn.parse('{text}') reads it, and its resultant is the count of the whole"
    )))
}

/// Length of the run of digits, points, thousands commas and an exponent at the start.
fn decimal_length(text: &str) -> usize {
    let mut end = 0;
    for (i, c) in text.char_indices() {
        if c.is_ascii_digit() || c == '.' || (c == ',' && i > 0) {
            end = i + 1;
        } else {
            break;
        }
    }
    let rest = &text[end..];
    if end > 0 && (rest.starts_with('e') || rest.starts_with('E')) {
        let sign = usize::from(rest[1..].starts_with(['-', '+']));
        let power = rest[1 + sign..].chars().take_while(char::is_ascii_digit).count();
        if power > 0 {
            return end + 1 + sign + power;
        }
    }
    end
}

fn decimal(digits: &str, text: &str) -> Result<f64> {
    let refuse = |why: &str| Err(Error::notation(format!("'{text}' is not a number: {why}")));
    if digits.contains(',') {
        let (whole, part) = digits.split_once('.').unwrap_or((digits, ""));
        let mut groups = whole.split(',');
        let first = groups.next().unwrap_or("");
        let right = (1..=3).contains(&first.len())
            && groups.all(|g| g.len() == 3)
            && !part.contains(',')
            && first != "0";
        if !right {
            return refuse("write the decimal mark as a point and thousands as in 1,250");
        }
    }
    match digits.replace(',', "").parse::<f64>() {
        Ok(value) => Ok(value),
        Err(_) => refuse("there are too many points"),
    }
}
