//! Figures given by name to a calculation of the mill.

use crate::error::{Error, Result, did_you_mean};
use crate::particulars::Desk;
use crate::quantity::{Amount, Kind, Typed};
use crate::worked::Worked;

/// A figure that may be given: its name, what it is, its kind.
#[derive(Clone, Copy, Debug)]
pub struct Said {
    /// Its name.
    pub name: &'static str,
    /// What it is, in words.
    pub words: &'static str,
    /// Its kind.
    pub kind: Kind,
    symbol: &'static str,
}

pub(super) const fn said(
    name: &'static str,
    symbol: &'static str,
    words: &'static str,
    kind: Kind,
) -> Said {
    Said { name, words, kind, symbol }
}

/// The one of some that a name stands for; one that is not known is refused.
pub(super) fn find(known: &'static [Said], name: &str, of: &str) -> Result<&'static Said> {
    known.iter().find(|k| k.name == name).ok_or_else(|| {
        let names = || known.iter().map(|k| k.name);
        let near = did_you_mean(name, names())
            .map_or_else(String::new, |n| format!("; did you mean '{n}'?"));
        let all = names().collect::<Vec<_>>().join(", ");
        Error::notation(format!("'{name}' is nothing that {of} asks for{near}; there are {all}"))
    })
}

/// Figures that were given, by name.
#[derive(Clone, Debug)]
pub(super) struct Given {
    known: &'static [Said],
    of: &'static str,
    /// Put before the names of the figures in a working: the stage.
    pub(super) prefix: String,
    all: Vec<(&'static Said, Amount, Option<String>)>,
}

impl Given {
    pub(super) fn new(known: &'static [Said], of: &'static str) -> Given {
        Given { known, of, prefix: String::new(), all: Vec::new() }
    }
    pub(super) fn set(&mut self, name: &str, amount: Amount, typed: Option<String>) -> Result<()> {
        let known = find(self.known, name, self.of)?;
        if self.has(name) {
            return Err(Error::notation(format!("{name} is given twice; leave one out")));
        }
        known.kind.check(amount.base()).map_err(|e| e.at(name))?;
        self.all.push((known, amount, typed));
        Ok(())
    }
    pub(super) fn has(&self, name: &str) -> bool {
        self.base(name).is_some()
    }
    /// The plain figure, in its base unit.
    pub(super) fn base(&self, name: &str) -> Option<f64> {
        self.all.iter().find(|g| g.0.name == name).map(|g| g.1.base())
    }
    /// The figure as an input of the working.
    pub(super) fn get<'t, Q: Typed<Worked<'t>>>(&self, desk: &Desk<'t>, name: &str) -> Option<Q> {
        let (said, amount, typed) = self.all.iter().find(|g| g.0.name == name)?;
        let key = format!("{}{name}", self.prefix);
        Some(desk.given(&key, said.symbol, said.words, amount, typed.clone()))
    }
    /// The figure, which must be there.
    pub(super) fn need<'t, Q: Typed<Worked<'t>>>(&self, desk: &Desk<'t>, name: &str) -> Result<Q> {
        self.get(desk, name).ok_or_else(|| self.missing(name))
    }
    /// What to write where a figure is missing.
    pub(super) fn missing(&self, name: &str) -> Error {
        let known = self.known.iter().find(|k| k.name == name);
        let (words, kind) = known.map_or((name, Kind::Ratio), |k| (k.words, k.kind));
        Error::notation(format!(
            "{}{name} is missing: {words}; write it like {name}='{}'",
            self.prefix,
            kind.example()
        ))
    }
}
