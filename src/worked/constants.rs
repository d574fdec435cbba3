//! Constants of formulas: how they are written, and where they come from.

use std::f64::consts::PI;

use crate::quantity::print::constant_to;
use crate::quantity::{Form, Kind, unit};

/// A multiple or a part of π, as it is written: what it is times, and what it is over.
pub(super) fn of_pi(x: f64) -> Option<(f64, f64, bool)> {
    let near = |a: f64, b: f64| (a / b - 1.0).abs() < 4.0 * f64::EPSILON;
    for (times, over) in PARTS {
        if near(x, PI * times / over) {
            return Some((times, over, true));
        }
        if near(x, times / (over * PI)) {
            return Some((times, over, false));
        }
    }
    None
}

/// Multiples and parts of π that formulas use.
const PARTS: [(f64, f64); 9] = [
    (1.0, 1.0),
    (1.0, 2.0),
    (1.0, 4.0),
    (1.0, 180.0),
    (180.0, 1.0),
    (1.0, 1000.0),
    (1000.0, 4.0),
    (4.0, 1000.0),
    (12.0, 1.0),
];

/// Of a constant that is so many thirds, how many.
pub(super) fn thirds(x: f64) -> Option<f64> {
    let thirds = (x * 3.0).round();
    let is = thirds % 3.0 != 0.0 && thirds.abs() < 100.0 && (x * 3.0 / thirds - 1.0).abs() < 1e-12;
    is.then_some(thirds)
}

/// True of a constant that is written by what it is made of, and so to its last digit.
pub(super) fn is_spelt(x: f64) -> bool {
    of_pi(x).is_some() || thirds(x).is_some()
}

/// What a constant is, where it is one of the trade's or of the units'.
pub(super) fn origin(x: f64) -> Option<&'static str> {
    let near = |a: f64| (x / a - 1.0).abs() < 1e-12;
    KNOWN.iter().find(|(value, _)| near(*value)).map(|(_, words)| *words)
}

/// True for what needs no word: whole numbers up to ten, powers of ten, one half.
pub(super) fn plain(x: f64) -> bool {
    let power = x.abs().log10();
    let of_ten = (power - power.round()).abs() < 1e-12;
    let whole = |x: f64| x.fract() == 0.0;
    of_ten || is_spelt(x) || (whole(2.0 * x) && x.abs() < 1.0) || (whole(x) && x.abs() <= 10.0)
}

const POUND: f64 = 453.59237;
const KNOWN: &[(f64, &str)] = &[
    (60.0, "minutes in an hour"),
    (3600.0, "seconds in an hour"),
    (2.54, "centimetres in an inch"),
    (25.4, "millimetres in an inch"),
    (0.0254, "metres in an inch"),
    (1.0 / 0.0254, "inches in a metre"),
    (0.9144, "metres in a yard"),
    (1.0 / 0.9144, "yards in a metre"),
    (0.45359237, "kilograms in a pound"),
    (POUND, "grams in a pound"),
    (28.349523125, "grams in an ounce"),
    (1000.0 * POUND / (840.0 * 0.9144), "tex at 1 Ne, 453592.37 / (840 × 0.9144)"),
    (1000.0 * POUND / (560.0 * 0.9144), "tex at 1 worsted, 453592.37 / (560 × 0.9144)"),
    (1000.0 * POUND / (256.0 * 0.9144), "tex at 1 YSW, 453592.37 / (256 × 0.9144)"),
    (1000.0 * POUND / 0.9144, "tex at a yard to the pound, 453592.37 / 0.9144"),
    (0.45359237 * 9.80665, "newtons in a pound of force: 0.45359237 kg times 9.80665 m/s²"),
    (9.80665, "standard gravity, m/s²"),
    (24.0, "hours in a day"),
    (36.0, "inches in a yard"),
    (16.0, "ounces in a pound"),
    (7000.0, "grains in a pound"),
];

/// What one of a unit is, where its definition says more than a power of ten.
pub(super) fn of_unit(symbol: &str, digits: usize) -> Option<String> {
    let constant = |x: f64| constant_to(x, digits);
    let unit = unit(symbol, None)
        .or_else(|_| unit(symbol, Some(Kind::Diameter)))
        .or_else(|_| unit(symbol, Some(Kind::TwistFactor)))
        .ok()?;
    let base = unit.kind.family().base();
    let words = match unit.form {
        Form::Over(at_one) => format!("{} {base} at 1 {symbol}", constant(at_one)),
        _ => format!("1 {symbol} is {} {base}", constant(unit.to_base(1.0))),
    };
    let spelt: String = unit.definition.chars().filter(|c| *c != ' ').collect();
    if words.replace(' ', "").contains(&spelt) {
        return Some(words);
    }
    Some(format!("{words} ({})", unit.definition))
}
