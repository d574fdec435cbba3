//! How light a colour is.

use super::{Lot, Machine};
use crate::error::{Error, Result, did_you_mean};
use crate::quantity::print::figure;

/// Natural shades from white to black, as a house would stand its bins. Steps between them are even
/// for want of a measure: a mill that measures its shades gives lightness itself.
pub const SHADES: [&str; 13] = [
    "white",
    "cream",
    "silver",
    "fawn",
    "light grey",
    "light brown",
    "grey",
    "moorit",
    "brown",
    "dark grey",
    "dark brown",
    "charcoal",
    "black",
];

/// True of two names of one colour: capitals make none of their own.
pub(super) fn same(a: &str, b: &str) -> bool {
    a.trim().eq_ignore_ascii_case(b.trim())
}

/// What is unusual in what a week is told: pairs of `from_to` with a colour that nothing bears, which a
/// slip of the pen would leave without its cleaning, and shares given for a lightness.
pub fn doubts(lots: &[Lot], machines: &[Machine]) -> Vec<String> {
    let mut told = Vec::new();
    let on = machines.iter().filter_map(|m| m.colour.as_ref());
    let colours: Vec<&str> =
        lots.iter().map(|l| l.colour.as_str()).chain(on.map(|c| c.0.as_str())).collect();
    for machine in machines {
        for word in machine.from_to.iter().flat_map(|(old, new, _)| [old, new]) {
            let known = || colours.iter().copied().chain(SHADES);
            if !known().any(|c| same(c, word)) {
                let near = did_you_mean(word, known())
                    .map_or_else(String::new, |n| format!("; did you mean '{n}'?"));
                told.push(format!(
                    "{}, from_to: nothing of this week is '{word}'{near}",
                    machine.name
                ));
            }
        }
    }
    for lot in lots.iter().filter(|l| l.lightness > 0.0 && l.lightness < 1.0) {
        told.push(format!(
            "{}, lightness: {} of 100 is all but black; a share is written like '40 %'",
            lot.name,
            figure(lot.lightness)
        ));
    }
    told
}

/// How light a shade of the list is, from 100 for white to 0 for black.
pub fn lightness(shade: &str) -> Result<f64> {
    let shade = shade.trim().to_lowercase();
    let place = SHADES.iter().position(|s| *s == shade).ok_or_else(|| {
        let near = did_you_mean(&shade, SHADES)
            .map_or_else(String::new, |n| format!("; did you mean '{n}'?"));
        Error::notation(format!(
            "how light '{shade}' is, is not known{near}; give its lightness, from 0 for black to 100 \
             for white, or one of {}",
            SHADES.join(", ")
        ))
    })?;
    Ok(100.0 * (1.0 - place as f64 / (SHADES.len() - 1) as f64))
}
