//! What a calculation of several figures asks for, and what was given.

use crate::error::{Error, Result, did_you_mean};
use crate::particulars::Desk;
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{Amount, Kind, Typed, Unit, parse_as};
use crate::table::Align::{Left, Right};
use crate::table::Block;
use crate::worked::Worked;

/// A figure that is asked for.
#[derive(Debug)]
pub struct Item {
    /// Its name, as an argument.
    pub name: &'static str,
    symbol: &'static str,
    /// What it is, in words.
    pub words: &'static str,
    /// Its kind.
    pub kind: Kind,
    usual: (f64, f64),
}

/// A figure that is asked for: name, symbol, kind, usual range in the base unit, words.
pub(crate) const fn item(
    name: &'static str,
    symbol: &'static str,
    kind: Kind,
    usual: (f64, f64),
    words: &'static str,
) -> Item {
    Item { name, symbol, words, kind, usual }
}

/// The figures given for a calculation.
#[derive(Clone, Debug)]
pub struct Given {
    of: &'static str,
    items: &'static [Item],
    figures: Vec<Option<(Amount, Option<String>)>>,
}

impl Given {
    /// Nothing given yet for a calculation with a name.
    pub(crate) fn new(of: &'static str, items: &'static [Item]) -> Self {
        Given { of, items, figures: vec![None; items.len()] }
    }
    /// From names and texts.
    pub fn read(mut self, given: &[(&str, &str)]) -> Result<Self> {
        for (name, text) in given {
            let amount = parse_as(text, self.kind(name)?).map_err(|e| e.at(name))?;
            self.set(name, amount, Some((*text).to_owned()))?;
        }
        Ok(self)
    }
    fn place(&self, name: &str) -> Result<usize> {
        self.items.iter().position(|item| item.name == name).ok_or_else(|| {
            let names = || self.items.iter().map(|item| item.name);
            let near = did_you_mean(name, names())
                .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
            let all = names().collect::<Vec<_>>().join(", ");
            Error::notation(format!("{} has no '{name}'{near}; there are {all}", self.of))
        })
    }
    /// The kind of the figure with a name.
    pub fn kind(&self, name: &str) -> Result<Kind> {
        Ok(self.items[self.place(name)?].kind)
    }
    /// Gives a figure; `typed` is the text, where there was one.
    pub fn set(&mut self, name: &str, amount: Amount, typed: Option<String>) -> Result<()> {
        let place = self.place(name)?;
        self.items[place].kind.check(amount.base()).map_err(|e| e.at(name))?;
        self.figures[place] = Some((amount, typed));
        Ok(())
    }
    fn found(&self, name: &str) -> Option<(&'static Item, &(Amount, Option<String>))> {
        let place = self.items.iter().position(|item| item.name == name)?;
        Some((&self.items[place], self.figures[place].as_ref()?))
    }
    /// True where a figure was given.
    pub(crate) fn has(&self, name: &str) -> bool {
        self.found(name).is_some()
    }
    /// A figure, in the base unit.
    pub(crate) fn base(&self, name: &str) -> Option<f64> {
        self.found(name).map(|(_, (amount, _))| amount.base())
    }
    /// The unit of a figure.
    pub(crate) fn unit(&self, name: &str) -> Option<&'static Unit> {
        self.found(name).map(|(_, (amount, _))| amount.unit)
    }
    /// Enters a figure at the desk, to be done once; none where it was not given.
    pub(crate) fn get<'t, Q: Typed<Worked<'t>>>(&self, desk: &Desk<'t>, name: &str) -> Option<Q> {
        let (item, (amount, typed)) = self.found(name)?;
        Some(desk.given(item.name, item.symbol, item.words, amount, typed.clone()))
    }
    /// The same, with a figure in the base unit that is taken where none was given.
    pub(crate) fn or<'t, Q: Typed<Worked<'t>>>(
        &self,
        desk: &Desk<'t>,
        name: &str,
        base: f64,
    ) -> Result<Q> {
        if let Some(given) = self.get(desk, name) {
            return Ok(given);
        }
        let item = &self.items[self.place(name)?];
        let unit = match item.kind.family() {
            Kind::Fraction => "%",
            _ => item.kind.base(),
        };
        let unit = crate::quantity::unit(unit, Some(item.kind))?;
        let amount = Amount { number: unit.from_base(base), unit };
        Ok(desk.given(item.name, item.symbol, item.words, &amount, None))
    }
    /// The same; one that is missing is asked for.
    pub(crate) fn need<'t, Q: Typed<Worked<'t>>>(&self, desk: &Desk<'t>, name: &str) -> Result<Q> {
        let item = &self.items[self.place(name)?];
        self.get(desk, name).ok_or_else(|| {
            Error::notation(format!(
                "{name} ({}) is missing; write it like {name}=\"{}\"",
                item.words,
                item.kind.example()
            ))
        })
    }
    /// Refuses a pair of which one settles what the other does.
    pub(crate) fn not_both(&self, one: &str, other: &str, why: &str) -> Result<()> {
        if self.has(one) && self.has(other) {
            return Err(Error::notation(format!(
                "{one} and {other} were both given, and {why}: leave one out"
            )));
        }
        Ok(())
    }
    /// Tells the desk what is unusual.
    pub(crate) fn warn(&self, desk: &Desk<'_>) {
        for (item, given) in self.items.iter().zip(&self.figures) {
            let Some((amount, _)) = given else { continue };
            let (low, high) = item.usual;
            if amount.base() < low || amount.base() > high {
                desk.warn(format!(
                    "{} = {} is unusual; the usual range is {} to {} (common practice)",
                    item.name,
                    of_kind(amount.base(), item.kind),
                    of_kind(low, item.kind),
                    of_kind(high, item.kind)
                ));
            }
        }
    }
}

/// A table of what the desk has named, masses in the unit that was given for them.
pub(crate) fn block(
    desk: &Desk<'_>,
    title: &str,
    names: &[&str],
    mass: Option<&'static Unit>,
) -> Block {
    let row = |name: &&str| {
        let (words, value, kind) = desk.found(name)?;
        let said = match mass {
            Some(unit) if kind == Kind::Mass => with_unit(unit.from_base(value), unit.symbol),
            _ => of_kind(value, kind),
        };
        Some(vec![words, said])
    };
    Block {
        title: title.to_owned(),
        columns: vec![(String::new(), Left), (String::new(), Right)],
        rows: names.iter().filter_map(row).collect(),
        ..Block::default()
    }
}
