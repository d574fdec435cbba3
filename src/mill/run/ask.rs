//! What a machine is asked about: the figures, how they are written, what is usual.

use crate::quantity::Kind;

/// What to do about a figure that was not given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Missing {
    /// Ask for it; this is how one would write it.
    Needed(&'static str),
    /// Take a figure, in the base unit.
    Taken(f64),
    /// Leave out what it is for.
    Left,
}

/// A figure that a machine is asked about.
#[derive(Clone, Copy, Debug)]
pub struct Asked {
    /// Its name, as an argument.
    pub name: &'static str,
    pub(super) symbol: &'static str,
    /// What it is, in words.
    pub words: &'static str,
    /// Its kind.
    pub kind: Kind,
    pub(super) usual: (f64, f64),
    /// Who says what is usual.
    pub(super) source: &'static str,
    pub(super) missing: Missing,
    /// It may be none at all.
    pub(super) none: bool,
    /// It counts what is whole.
    pub(super) whole: bool,
}

impl Asked {
    /// A figure that must be given.
    pub(super) const fn need(
        name: &'static str,
        symbol: &'static str,
        words: &'static str,
        kind: Kind,
        usual: (f64, f64),
        example: &'static str,
    ) -> Asked {
        Asked {
            name,
            symbol,
            words,
            kind,
            usual,
            source: "common practice",
            missing: Missing::Needed(example),
            none: false,
            whole: matches!(kind, Kind::Count),
        }
    }
    /// A figure that may be left out, with what it is for.
    pub(super) const fn may(
        name: &'static str,
        symbol: &'static str,
        words: &'static str,
        kind: Kind,
        usual: (f64, f64),
    ) -> Asked {
        Asked { missing: Missing::Left, ..Asked::need(name, symbol, words, kind, usual, "") }
    }
    /// Taken as a figure where it is not given.
    pub(super) const fn or(self, base: f64) -> Asked {
        Asked { missing: Missing::Taken(base), none: base == 0.0, ..self }
    }
    /// None of it is possible too.
    pub(super) const fn or_none(self) -> Asked {
        Asked { none: true, ..self }
    }
    /// Parts of it are possible too.
    pub(super) const fn broken(self) -> Asked {
        Asked { whole: false, ..self }
    }
    /// What is usual is from memory.
    pub(super) const fn memory(self) -> Asked {
        Asked { source: "from memory", ..self }
    }
    /// May be left out after all.
    pub(super) const fn left(self) -> Asked {
        Asked { missing: Missing::Left, ..self }
    }
}

pub(super) const EFFICIENCY: Asked = Asked::need(
    "efficiency",
    "η",
    "efficiency, with every stop, doff and idle spindle in it",
    Kind::Fraction,
    (0.5, 0.95),
    "\"85 %\"",
);
pub(super) const MASS: Asked =
    Asked::may("mass", "m", "good yarn to make", Kind::Mass, (0.1, 10_000.0));
pub(super) const WASTE: Asked =
    Asked::may("waste", "w", "waste, on what is fed", Kind::Fraction, (0.0, 0.06))
        .or_none()
        .memory();
pub(super) const BREAKS: Asked =
    Asked::may("breaks", "e", "ends broken in a thousand spindle hours", Kind::Ratio, (5.0, 300.0))
        .or_none()
        .memory();
pub(super) const PATROL: Asked =
    Asked::may("patrol", "τ_p", "time of a round of the minder", Kind::Duration, (0.02, 1.0));
pub(super) const PIECING: Asked = Asked::may(
    "piecing",
    "τ_b",
    "minder's time for a broken end, with the walk",
    Kind::Duration,
    (0.001, 0.05),
);
pub(super) const LOAD: Asked = Asked::may(
    "load",
    "u",
    "share of a person's time for broken ends or stops",
    Kind::Fraction,
    (0.2, 0.9),
);
pub(super) const fn each(words: &'static str) -> Asked {
    Asked::may("per_person", "a", words, Kind::Count, (1.0, 1500.0))
}
