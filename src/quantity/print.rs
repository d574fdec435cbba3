//! How values are printed.

use super::kind::Kind;

/// A value to four significant digits, thousands grouped, never in powers of ten within the range
/// that a mill meets.
pub fn figure(x: f64) -> String {
    significant(x, 4)
}

/// A value to a number of significant digits. Whole digits are never replaced by zeros: 24 330
/// stays 24,330 at four digits.
pub fn significant(x: f64, digits: usize) -> String {
    if x == 0.0 {
        return "0".to_owned();
    }
    if !x.is_finite() {
        return if x.is_nan() { "missing".to_owned() } else { x.to_string() };
    }
    let size = x.abs().log10().floor() as i32;
    if !(-5..12).contains(&size) {
        return format!("{x:.*e}", digits - 1).replace('-', "−");
    }
    // A value that is short in itself stays so: 1300 draws, 36 teeth, 0.06 m.
    // Twelve digits tell a short value from one that is short but for the rounding of arithmetic.
    let tidy = format!("{x:.11e}").parse().unwrap_or(x);
    let short = tidy.to_string();
    // One of all twelve is not short in itself: where more digits are asked, they are printed.
    let most = digits.min(11);
    if tidy.fract() == 0.0 || short.bytes().filter(u8::is_ascii_digit).count() <= most {
        return grouped(&short);
    }
    let last = i32::try_from(digits).unwrap_or(i32::MAX) - 1;
    let decimals = |size: i32| usize::try_from(last - size).unwrap_or(0);
    let text = format!("{x:.*}", decimals(size));
    // 9.9996 rounds up to 10.000: one digit too many.
    let rounded = text.parse::<f64>().unwrap_or(x);
    if rounded.abs().log10().floor() as i32 > size {
        return grouped(&format!("{x:.*}", decimals(size + 1)));
    }
    grouped(&text)
}

/// A value with a fixed number of decimals, thousands grouped.
pub fn fixed(x: f64, decimals: usize) -> String {
    let text = format!("{x:.decimals$}");
    // What rounds to zero has no sign.
    let zero = text.bytes().all(|b| matches!(b, b'-' | b'0' | b'.'));
    grouped(if zero { text.trim_start_matches('-') } else { &text })
}

/// A constant of a formula: in full up to nine digits, so that it can be typed into a calculator.
pub fn constant(x: f64) -> String {
    constant_to(x, 9)
}

/// A constant of a formula: in full up to a number of digits.
pub(crate) fn constant_to(x: f64, digits: usize) -> String {
    let short = x.to_string();
    if short.len() <= digits + 1 {
        return short;
    }
    let power = format!("{x:e}");
    if power.len() <= 6 {
        return power.replace('-', "−");
    }
    let long = significant(x, digits);
    if long.contains('.') && !long.contains('e') {
        long.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        long
    }
}

fn grouped(text: &str) -> String {
    let (sign, text) = text.strip_prefix('-').map_or(("", text), |t| ("−", t));
    let (whole, part) = text.split_once('.').map_or((text, None), |(w, p)| (w, Some(p)));
    let mut out = String::from(sign);
    for (i, digit) in whole.chars().enumerate() {
        if i > 0 && whole.len() > 4 && (whole.len() - i).is_multiple_of(3) {
            out.push(',');
        }
        out.push(digit);
    }
    if let Some(part) = part {
        out.push('.');
        out.push_str(part);
    }
    out
}

/// A value and its unit.
pub fn with_unit(x: f64, unit: &str) -> String {
    if unit.is_empty() { figure(x) } else { format!("{} {unit}", figure(x)) }
}

/// A value of a kind, given in its base unit, as people would say it: a share in percent, a small
/// mass in grams, a short length in millimetres, a short time in minutes or seconds.
pub fn of_kind(x: f64, kind: Kind) -> String {
    match kind.family() {
        Kind::Fraction => format!("{} %", figure(x * 100.0)),
        Kind::Mass if x != 0.0 && x.abs() < 1.0 => format!("{} g", figure(x * 1000.0)),
        Kind::Length if x != 0.0 && x.abs() < 0.1 => format!("{} mm", figure(x * 1000.0)),
        Kind::Duration if x != 0.0 && x.abs() < 1.0 / 60.0 => format!("{} s", figure(x * 3600.0)),
        Kind::Duration if x != 0.0 && x.abs() < 1.0 => format!("{} min", figure(x * 60.0)),
        Kind::ReedCount => format!("{} dents/10 cm", figure(x * 10.0)),
        family => with_unit(x, family.base()),
    }
}

/// The unit in which a value of a kind is written that nobody gave a unit: shares in percent.
pub(crate) fn default_unit(kind: Kind) -> &'static super::Unit {
    let name = if kind.family() == Kind::Fraction { "%" } else { kind.base() };
    // Every base unit is in the table: a test looks each up.
    super::unit(name, Some(kind)).unwrap_or_else(|e| unreachable!("{e}"))
}

/// Text made safe for HTML.
pub fn escape(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}
