//! How light a colour is.

use crate::error::{Error, Result, or_near};

/// Natural shades from white to black, as a house would order its bins. Steps between them are even
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

/// How light a shade of the list is, from 1 for white to 0 for black.
pub fn lightness(shade: &str) -> Result<f64> {
    let shade = shade.trim().to_lowercase();
    let place = SHADES.iter().position(|s| *s == shade).ok_or_else(|| {
        Error::notation(format!(
            "how light '{shade}' is, is not known{} Give its lightness, from 0 % for black to 100 % for \
             white, or one of {}",
            or_near(&shade, &SHADES),
            SHADES.join(", ")
        ))
    })?;
    Ok(1.0 - place as f64 / (SHADES.len() - 1) as f64)
}
