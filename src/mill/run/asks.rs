//! What several machines are asked about.

use crate::job::Ask;
use crate::quantity::Kind;

pub(super) const EFFICIENCY: Ask = Ask::need(
    "efficiency",
    "η",
    "efficiency, with every stop, doff and idle spindle in it",
    Kind::Fraction,
    (0.5, 0.95),
    "\"85 %\"",
);
pub(super) const WASTE: Ask =
    Ask::may("waste", "w", "waste, on what is fed", Kind::Fraction, (0.0, 0.06)).or_none().memory();
pub(super) const LOAD: Ask = Ask::may(
    "load",
    "u",
    "share of a person's time for broken ends or stops",
    Kind::Fraction,
    (0.2, 0.9),
);
pub(super) const fn each(words: &'static str) -> Ask {
    Ask::may("per_person", "a", words, Kind::Count, (1.0, 1500.0))
}
