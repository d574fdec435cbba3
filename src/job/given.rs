//! The figures that were given for a calculation.

use super::ask::{Ask, place};
use crate::error::{Error, Result};
use crate::particulars::Desk;
use crate::quantity::{Amount, Kind, Typed, parse_as};
use crate::worked::Worked;

/// The figures given for a calculation.
#[derive(Clone, Debug)]
pub struct Given {
    of: &'static str,
    asks: &'static [Ask],
    /// Put before the names of the figures in a working: the stage of several.
    pub(crate) prefix: String,
    figures: Vec<Option<(Amount, Option<String>)>>,
}

impl Given {
    /// Nothing given yet for a calculation with a name.
    pub(crate) fn new(of: &'static str, asks: &'static [Ask]) -> Self {
        Given { of, asks, prefix: String::new(), figures: vec![None; asks.len()] }
    }
    /// From names and texts.
    pub fn read(mut self, given: &[(&str, &str)]) -> Result<Self> {
        for (name, text) in given {
            let amount = parse_as(text, self.kind(name)?).map_err(|e| e.at(name))?;
            self.set(name, amount, Some((*text).to_owned()))?;
        }
        Ok(self)
    }
    /// The names that are asked for.
    pub fn names(&self) -> impl Iterator<Item = &'static str> {
        self.asks.iter().map(|ask| ask.name)
    }
    fn place(&self, name: &str) -> Result<usize> {
        place(self.asks, self.of, name)
    }
    /// The kind of the figure with a name.
    pub fn kind(&self, name: &str) -> Result<Kind> {
        Ok(self.asks[self.place(name)?].kind)
    }
    /// Gives a figure; `typed` is the text, where there was one.
    pub fn set(&mut self, name: &str, amount: Amount, typed: Option<String>) -> Result<()> {
        let place = self.place(name)?;
        if self.figures[place].is_some() {
            return Err(Error::notation(format!("{name} is given twice; leave one out")));
        }
        self.asks[place].check(&amount).map_err(|e| e.at(name))?;
        self.figures[place] = Some((amount, typed));
        Ok(())
    }
    fn found(&self, name: &str) -> Option<(&'static Ask, &(Amount, Option<String>))> {
        let place = self.asks.iter().position(|ask| ask.name == name)?;
        Some((&self.asks[place], self.figures[place].as_ref()?))
    }
    /// True where a figure was given.
    pub(crate) fn has(&self, name: &str) -> bool {
        self.found(name).is_some()
    }
    /// A figure, in the base unit.
    pub(crate) fn base(&self, name: &str) -> Option<f64> {
        self.found(name).map(|(_, (amount, _))| amount.base())
    }
    fn enter<'t, Q: Typed<Worked<'t>>>(
        &self,
        desk: &Desk<'t>,
        ask: &Ask,
        amount: &Amount,
        typed: Option<String>,
    ) -> Q {
        let key = format!("{}{}", self.prefix, ask.name);
        desk.given(&key, ask.symbol, ask.words, amount, typed)
    }
    /// Enters a figure at the desk, to be done once; none where it was not given.
    pub(crate) fn get<'t, Q: Typed<Worked<'t>>>(&self, desk: &Desk<'t>, name: &str) -> Option<Q> {
        let (ask, (amount, typed)) = self.found(name)?;
        Some(self.enter(desk, ask, amount, typed.clone()))
    }
    /// The same; one that is missing is asked for.
    pub(crate) fn need<'t, Q: Typed<Worked<'t>>>(&self, desk: &Desk<'t>, name: &str) -> Result<Q> {
        let ask = &self.asks[self.place(name)?];
        self.get(desk, name).ok_or_else(|| ask.is_missing(&self.prefix))
    }
    /// What to say where a figure is missing.
    pub(crate) fn missing(&self, name: &str) -> Error {
        self.place(name).map_or_else(|e| e, |place| self.asks[place].is_missing(&self.prefix))
    }
}
