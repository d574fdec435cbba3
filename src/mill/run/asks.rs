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
pub(super) const MASS: Ask =
    Ask::may("mass", "m", "good yarn to make", Kind::Mass, (0.1, 10_000.0));
pub(super) const WASTE: Ask =
    Ask::may("waste", "w", "waste, on what is fed", Kind::Fraction, (0.0, 0.06)).or_none().memory();
pub(super) const BREAKS: Ask =
    Ask::may("breaks", "e", "ends broken in a thousand spindle hours", Kind::Ratio, (5.0, 300.0))
        .or_none()
        .memory();
pub(super) const PATROL: Ask =
    Ask::may("patrol", "τ_p", "time of a round of the minder", Kind::Duration, (0.02, 1.0));
pub(super) const PIECING: Ask = Ask::may(
    "piecing",
    "τ_b",
    "minder's time for a broken end, with the walk",
    Kind::Duration,
    (0.001, 0.05),
);
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
