//! Colours by name or by hex codes, and their outlines.

use super::names::NAMES;
use crate::error::{Error, Result, did_you_mean};

/// Red, green, blue.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Colour(pub(super) [u8; 3]);

impl Colour {
    /// From a name of CSS (`light grey` and `LightGrey` are one) or from hex codes: `#8a3324`, `#834`.
    pub(super) fn parse(text: &str) -> Result<Colour> {
        let key: String = text.to_lowercase().split([' ', '-', '_']).collect();
        if let Some(hex) = key.strip_prefix('#') {
            let digits: Option<Vec<u8>> =
                hex.chars().map(|c| c.to_digit(16).and_then(|d| u8::try_from(d).ok())).collect();
            return match digits.as_deref() {
                Some([r, g, b]) => Ok(Colour([17 * r, 17 * g, 17 * b])),
                Some([a, b, c, d, e, f]) => Ok(Colour([16 * a + b, 16 * c + d, 16 * e + f])),
                _ => Err(Error::notation(format!(
                    "'{text}' is not a colour; write three or six hexadecimal digits after #, such as '#8a3324'"
                ))),
            };
        }
        let found = NAMES.binary_search_by(|(name, _)| name.cmp(&key.as_str()));
        found.map(|at| Colour::of(NAMES[at].1)).map_err(|_| {
            let near = did_you_mean(&key, NAMES.iter().map(|(name, _)| *name));
            let near = near.map_or(String::new(), |name| format!(": did you mean '{name}'?"));
            Error::notation(format!(
                "a picture knows no colour '{text}'{near}; write a colour name of CSS such as \
                 'firebrick', or hex codes such as '#8a3324'"
            ))
        })
    }
    const fn of(figure: u32) -> Colour {
        let [_, r, g, b] = figure.to_be_bytes();
        Colour([r, g, b])
    }
    pub(super) fn hex(self) -> String {
        let [r, g, b] = self.0;
        format!("#{r:02x}{g:02x}{b:02x}")
    }
    /// How light it looks in grey, 0 to 1.
    pub(super) fn light(self) -> f64 {
        let [r, g, b] = self.0.map(f64::from);
        (0.299 * r + 0.587 * g + 0.114 * b) / 255.0
    }
    /// Mixed with another: a share of it.
    pub(super) fn mixed(self, other: Colour, share: f64) -> Colour {
        let mix = |k: usize| {
            let (a, b) = (f64::from(self.0[k]), f64::from(other.0[k]));
            (a + (b - a) * share).round() as u8
        };
        Colour([mix(0), mix(1), mix(2)])
    }
    /// Its outline: much darker, or lighter where it is dark itself.
    pub(super) fn edge(self) -> Colour {
        if self.light() > 0.3 {
            self.mixed(Colour([0; 3]), 0.6)
        } else {
            self.mixed(Colour([255; 3]), 0.45)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_in_order_and_read() {
        assert!(NAMES.is_sorted_by(|a, b| a.0 < b.0));
        assert_eq!(Colour::parse("Light Grey"), Colour::parse("#d3d3d3"));
        assert_eq!(Colour::parse("#f00").map(Colour::hex).as_deref(), Ok("#ff0000"));
        for wrong in ["#12", "#gggggg", "heather", ""] {
            assert!(Colour::parse(wrong).is_err(), "{wrong}");
        }
        let told = Colour::parse("firebrik").map_or_else(|e| e.to_string(), |_| String::new());
        assert!(told.contains("did you mean 'firebrick'?"), "{told}");
    }
}
