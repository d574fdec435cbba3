//! How finely a value was read: half of the last digit that was written.

use super::{Kind, number, unit};
use crate::error::{Error, Result};

/// Half of the last digit of a value as it was written, in the base unit: of `1.7 lb` half of a tenth of a
/// pound, of `2 lb 9 oz` half an ounce, of `1½ lb` a quarter of a pound.
///
/// ```
/// use hankwise::quantity::{Kind, half_of_last_digit};
///
/// assert_eq!(half_of_last_digit("12.50 kg", Kind::Mass)?, 0.005);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn half_of_last_digit(text: &str, kind: Kind) -> Result<f64> {
    let (smallest, in_unit) = last_digit(text, kind)?;
    Ok(unit(in_unit, Some(kind))?.to_base(smallest) / 2.0)
}

/// One of the last digit of a value as it was written, and the unit that it is in.
pub(crate) fn last_digit(text: &str, kind: Kind) -> Result<(f64, &str)> {
    let start = text.rfind(is_digit).ok_or_else(|| {
        Error::notation(format!("'{text}' has no number; write it like '{}'", kind.example()))
    })?;
    // The last number, and the unit after it.
    let digit = text[start..].chars().next().map_or(1, char::len_utf8);
    let (head, tail) = text.split_at(start + digit);
    let from = head
        .rfind(|c: char| !is_part(c))
        .map_or(0, |at| at + head[at..].chars().next().map_or(1, char::len_utf8));
    let last = &head[from..];
    // Powers of ten do not say which digit was read.
    let power = head[..from].trim_end_matches(['+', '-']).strip_suffix(['e', 'E']);
    if power.is_some_and(|number| number.ends_with(is_part)) {
        return Err(Error::notation(format!(
            "'{text}' hides its last digit; write it out, such as '1,700 g'"
        )));
    }
    let smallest = match (last.split_once('.'), last.split_once('/')) {
        (_, Some((_, below))) => 1.0 / number(below)?,
        (Some((_, decimals)), _) => 10_f64.powi(i32::try_from(decimals.len()).unwrap_or(9)).recip(),
        _ => last.chars().last().and_then(vulgar).unwrap_or(1.0),
    };
    Ok((smallest, tail.trim()))
}

fn is_digit(c: char) -> bool {
    c.is_ascii_digit() || vulgar(c).is_some()
}

fn is_part(c: char) -> bool {
    is_digit(c) || matches!(c, '.' | '/' | ',')
}

/// The step of a scale that is read to a fraction written as one sign.
fn vulgar(c: char) -> Option<f64> {
    match c {
        '½' => Some(0.5),
        '¼' | '¾' => Some(0.25),
        '⅛' | '⅜' | '⅝' | '⅞' => Some(0.125),
        '⅓' | '⅔' => Some(1.0 / 3.0),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn half_of_the_last_digit() {
        const POUND: f64 = 0.453_592_37;
        let half = |text: &str| half_of_last_digit(text, Kind::Mass);
        for (text, expected) in [
            ("1.7 lb", 0.05 * POUND),
            ("3.0 lb", 0.05 * POUND),
            ("673 g", 0.0005),
            ("673g", 0.0005),
            ("2 lb 9 oz", 0.5 * POUND / 16.0),
            ("1½ lb", 0.25 * POUND),
            ("2 1/4 oz", 0.125 * POUND / 16.0),
            ("12.50 kg", 0.005),
        ] {
            let got = half(text).unwrap();
            assert!((got - expected).abs() < 1e-12, "{text}: {got}");
        }
        assert!(half("some wool").is_err());
        assert!(half("1.7e3 g").unwrap_err().to_string().contains("write it out"));
    }
}
