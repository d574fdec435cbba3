//! What a stage asks of the lot file.

use crate::quantity::Kind;

/// A figure that a stage asks for.
pub(super) struct Question {
    pub(super) key: &'static str,
    pub(super) symbol: &'static str,
    pub(super) meaning: &'static str,
    pub(super) kind: Kind,
    /// The usual range, in the base unit, and who says so.
    pub(super) usual: (f64, f64, &'static str),
    /// What to write, for the message when it is missing.
    pub(super) example: &'static str,
    /// Taken where nothing is written, in the base unit.
    pub(super) default: Option<f64>,
}

/// Short form for a question without default.
pub(super) const fn ask(
    key: &'static str,
    symbol: &'static str,
    meaning: &'static str,
    kind: Kind,
    usual: (f64, f64, &'static str),
    example: &'static str,
) -> Question {
    Question { key, symbol, meaning, kind, usual, example, default: None }
}

impl Question {
    pub(super) const fn or(self, default: f64) -> Question {
        Question { default: Some(default), ..self }
    }
}

/// Who says so, where nobody has printed it.
pub(super) const PRACTICE: &str = "common practice";
