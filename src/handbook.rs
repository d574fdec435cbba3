//! The handbook: figures of the trade that no formula gives, in tables with their sources.
//!
//! What the books disagree on stands in several rows, each with who says so.
//!
//! ```
//! use hankwise::handbook;
//!
//! let table = handbook::find("twist_multipliers")?;
//! let weft = table.find("mule weft cotton").next().expect("is in the table");
//! assert_eq!((weft.low, weft.unit, weft.source), (3.25, "tpi/√Ne", "Nasmith 1890"));
//! # Ok::<(), hankwise::Error>(())
//! ```

use crate::error::{Error, Result, did_you_mean};
use crate::formula::has_words;
use crate::quantity::print;
pub use crate::quantity::{Grade, Unit};

/// A figure of a table, or a band of figures.
#[derive(Clone, Copy, Debug)]
pub struct Figure {
    /// What it is of: a word for each of the table's columns.
    pub of: &'static [&'static str],
    /// The lower end; −∞ where it is open.
    pub low: f64,
    /// The upper end, the same as the lower for a single figure; ∞ where it is open.
    pub high: f64,
    /// The unit, as printed; empty for a plain number.
    pub unit: &'static str,
    /// Key of the source, see [`crate::source`].
    pub source: &'static str,
    /// Where in the source: page, paragraph, table.
    pub place: &'static str,
    /// How sure it is.
    pub grade: Grade,
    /// What else there is to know.
    pub note: &'static str,
}

/// A table of figures.
#[derive(Debug)]
pub struct Table {
    /// Its name.
    pub name: &'static str,
    /// Its title.
    pub title: &'static str,
    /// What the figures are and how to use them.
    pub about: &'static str,
    /// What the words of a figure are.
    pub columns: &'static [&'static str],
    /// The figures.
    pub figures: &'static [Figure],
}

impl Figure {
    /// A single figure.
    pub(crate) const fn one(of: &'static [&'static str], x: f64, unit: &'static str) -> Figure {
        Figure::band(of, x, x, unit)
    }
    /// A band of figures.
    pub(crate) const fn band(
        of: &'static [&'static str],
        low: f64,
        high: f64,
        unit: &'static str,
    ) -> Figure {
        let (source, place, note) = ("memory", "", "");
        Figure { of, low, high, unit, source, place, grade: Grade::Memory, note }
    }
    /// Read in a source, at a place of it.
    pub(crate) const fn read(self, source: &'static str, place: &'static str) -> Figure {
        Figure { source, place, grade: Grade::Published, ..self }
    }
    /// Follows from a definition.
    pub(crate) const fn defined(self) -> Figure {
        Figure { source: "definition", grade: Grade::Definition, ..self }
    }
    /// With what else there is to know.
    pub(crate) const fn note(self, note: &'static str) -> Figure {
        Figure { note, ..self }
    }

    /// The unit of the figure.
    pub fn measure(&self) -> Result<&'static Unit> {
        crate::quantity::unit(self.unit, None)
    }

    /// True where a figure in the base unit of its kind lies in the band.
    pub fn holds(&self, base: f64) -> bool {
        // Ends of bands belong to them, whatever the rounding of the change of unit.
        let slack = 1e-9;
        self.measure().is_ok_and(|unit| {
            let x = unit.from_base(base);
            x >= self.low * (1.0 - slack) && x <= self.high * (1.0 + slack)
        })
    }

    /// The figure or band in words, without its unit: `3.5`, `240 to 300`, `under 100`.
    pub fn words(&self) -> String {
        let (low, high) = (print::figure(self.low), print::figure(self.high));
        match (self.low.is_finite(), self.high.is_finite()) {
            (true, true) if low == high => low,
            (true, true) => format!("{low} to {high}"),
            (false, _) => format!("under {high}"),
            (_, false) => format!("{low} and more"),
        }
    }
}

impl Table {
    /// The figures that have every one of the words, each found by its beginning, in the table's
    /// name and title, in their own words, unit, source and note.
    pub fn find(&self, words: &str) -> impl Iterator<Item = &'static Figure> {
        let (name, title) = (self.name, self.title);
        self.figures.iter().filter(move |f| {
            let own = f.of.iter().copied();
            has_words(own.chain([name, title, f.unit, f.source, f.place, f.note]), words)
        })
    }
}

/// Every table, in the order of names.
pub fn all() -> impl Iterator<Item = &'static Table> {
    let mut tables: Vec<_> = [
        crate::cloth::TABLES,
        crate::fibre::TABLES,
        crate::mill::TABLES,
        crate::quality::TABLES,
        crate::yarn::TABLES,
    ]
    .concat()
    .into_iter()
    .collect();
    tables.sort_by_key(|table| table.name);
    tables.into_iter()
}

/// The table with a name.
pub fn find(name: &str) -> Result<&'static Table> {
    all().find(|table| table.name == name).ok_or_else(|| {
        let near = did_you_mean(name, all().map(|table| table.name))
            .map(|n| format!("; did you mean '{n}'?"));
        let list = || {
            let names: Vec<_> = all().map(|table| table.name).collect();
            format!("; there are {}", names.join(", "))
        };
        Error::notation(format!("the handbook has no table '{name}'{}", near.unwrap_or_else(list)))
    })
}

/// The tables that have figures with every one of the words, with those figures.
pub fn search(words: &str) -> Vec<(&'static Table, Vec<&'static Figure>)> {
    let found = all().map(|table| (table, table.find(words).collect::<Vec<_>>()));
    found.filter(|(_, figures)| !figures.is_empty()).collect()
}
