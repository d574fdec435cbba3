//! What a lot file is asked for.

use crate::quantity::Kind;
use crate::quantity::print::of_kind;

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
    /// True where zero cannot be: a mule without spindles, a clean share of nothing.
    pub(super) positive: bool,
}

/// Short form for a question without default. A mass, length or number whose usual range begins above
/// zero cannot be zero; a share can, unless it is said to be [`Question::positive`].
pub(super) const fn ask(
    key: &'static str,
    symbol: &'static str,
    meaning: &'static str,
    kind: Kind,
    usual: (f64, f64, &'static str),
    example: &'static str,
) -> Question {
    let positive = usual.0 > 0.0 && !matches!(kind.family(), Kind::Fraction);
    Question { key, symbol, meaning, kind, usual, example, default: None, positive }
}

impl Question {
    pub(super) const fn or(self, default: f64) -> Question {
        Question { default: Some(default), ..self }
    }
    pub(super) const fn positive(self) -> Question {
        Question { positive: true, ..self }
    }
}

/// Who says so, where nobody has printed it.
pub(super) const PRACTICE: &str = "common practice";

/// A key that a stage reads from a lot file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StageKey {
    /// The key.
    pub key: &'static str,
    /// What it is, whether it is needed, what is usual and on what basis.
    pub says: String,
}

impl StageKey {
    /// A question as it is listed; without `asked` it may be omitted.
    pub(super) fn of(question: &Question, asked: bool) -> StageKey {
        let Question { key, meaning, kind, usual: (low, high, basis), example, .. } = question;
        let need = match question.default {
            Some(base) => format!("{} where omitted", of_kind(base, *kind)),
            None if asked => format!("needed, such as {example}"),
            None => "may be omitted".to_owned(),
        };
        let (low, high) = (of_kind(*low, *kind), of_kind(*high, *kind));
        let says = format!("{meaning}; {need} (usually {low} to {high}, {basis})");
        StageKey { key, says }
    }
}
