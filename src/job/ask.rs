//! A figure that is asked for: how it is written, what is usual, what is done without it.

use crate::error::{Error, Result, did_you_mean};
use crate::quantity::print::of_kind;
use crate::quantity::{Amount, Kind};

/// What to do about a figure that was not given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Missing {
    /// Ask for it; this is how one would write it.
    Needed(&'static str),
    /// Leave out what it is for, or find another way.
    Left,
}

/// A figure that is asked for.
#[derive(Clone, Copy, Debug)]
pub struct Ask {
    /// Its name, as an argument.
    pub name: &'static str,
    /// Its symbol.
    pub symbol: &'static str,
    /// What it is, in words.
    pub words: &'static str,
    /// Its kind.
    pub kind: Kind,
    /// The usual range, in the base unit; outside it a warning is given.
    pub usual: (f64, f64),
    /// Who says what is usual.
    pub source: &'static str,
    /// What to do without it.
    pub missing: Missing,
    /// It may be none at all.
    pub(crate) none: bool,
    /// It counts what is whole.
    pub(crate) whole: bool,
}

impl Ask {
    /// A figure that must be given.
    pub(crate) const fn need(
        name: &'static str,
        symbol: &'static str,
        words: &'static str,
        kind: Kind,
        usual: (f64, f64),
        example: &'static str,
    ) -> Ask {
        Ask {
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
    pub(crate) const fn may(
        name: &'static str,
        symbol: &'static str,
        words: &'static str,
        kind: Kind,
        usual: (f64, f64),
    ) -> Ask {
        Ask { missing: Missing::Left, ..Ask::need(name, symbol, words, kind, usual, "") }
    }
    /// The same; the calculation says what it wants and how much of it.
    pub(crate) const fn plain(
        name: &'static str,
        symbol: &'static str,
        words: &'static str,
        kind: Kind,
        usual: (f64, f64),
    ) -> Ask {
        Ask { none: true, whole: false, ..Ask::may(name, symbol, words, kind, usual) }
    }
    /// The same, with no range that is usual.
    pub(crate) const fn any(
        name: &'static str,
        symbol: &'static str,
        words: &'static str,
        kind: Kind,
    ) -> Ask {
        Ask::plain(name, symbol, words, kind, (f64::NEG_INFINITY, f64::INFINITY))
    }

    /// How one would write it.
    pub(crate) fn example(&self) -> String {
        match (self.missing, self.kind.family()) {
            (Missing::Needed(example), _) => example.to_owned(),
            (_, Kind::Ratio) => self.kind.example().to_owned(),
            _ => format!("\"{}\"", self.kind.example()),
        }
    }
    /// What to say where it is missing.
    pub(crate) fn is_missing(&self, prefix: &str) -> Error {
        let Ask { name, words, .. } = self;
        let example = self.example();
        Error::notation(format!("{prefix}{name} ({words}) is missing; write {name}={example}"))
    }
    /// Refuses what cannot be.
    pub(crate) fn check(&self, amount: &Amount) -> Result<()> {
        let base = amount.base();
        self.kind.check(base)?;
        if self.whole && !(self.none && base == 0.0) && (base < 1.0 || base.fract() != 0.0) {
            let near = base.floor().max(1.0);
            return Err(Error::range(format!(
                "{} ({}) is no whole number from 1 up; write {near} or {}",
                of_kind(base, self.kind),
                self.words,
                near + 1.0
            )));
        }
        if !self.none && base == 0.0 {
            let instead = match self.missing {
                Missing::Needed(example) => format!(", such as {example}"),
                Missing::Left => ", or leave it out".to_owned(),
            };
            return Err(Error::range(format!(
                "0 is given for the {}, and nothing is made with that; write more{instead}",
                self.words
            )));
        }
        Ok(())
    }
}

/// The place of the figure with a name; one that nobody asks for is refused.
pub(crate) fn place(asks: &[Ask], of: &str, name: &str) -> Result<usize> {
    asks.iter().position(|ask| ask.name == name).ok_or_else(|| {
        let names = || asks.iter().map(|ask| ask.name);
        let near = did_you_mean(name, names())
            .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
        let all = names().collect::<Vec<_>>().join(", ");
        Error::notation(format!("{of} has no '{name}'{near}; there are {all}"))
    })
}
