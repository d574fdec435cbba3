//! The handbook: figures of the trade that no formula gives, in tables with their sources.
//!
//! What the books disagree on stands in several rows, each with who says so.

use crate::error::Result;
use crate::quantity::print;
pub use crate::quantity::{Grade, Unit};
use crate::words::{WIDE, has_words, wrapped};

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

    /// What stands under a row: source and place, basis, note.
    fn below(&self) -> String {
        let told = [self.source, self.place].into_iter().filter(|text| !text.is_empty());
        let told = told.collect::<Vec<_>>().join(", ");
        let basis = self.grade.word();
        let source = if told == basis { told } else { format!("{told} ({basis})") };
        if self.note.is_empty() { source } else { format!("{source}: {}", self.note) }
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
    /// Rows of the table as text, 80 columns wide: the title, what the values are, the rows, and under
    /// the rows that share them source, basis and note.
    pub fn text(&self, rows: &[&Figure]) -> String {
        let mut out = format!("{}\n{}", self.title, wrapped(self.about, "  ", "    "));
        if rows.is_empty() {
            out.push_str("  No row of this table.\n");
            return out;
        }
        let cells = |f: &Figure| -> Vec<String> {
            let of = f.of.iter().map(|word| (*word).to_owned());
            of.chain([f.words(), f.unit.to_owned()]).collect()
        };
        let head = self.columns.iter().map(|name| (*name).to_owned());
        let head: Vec<String> = head.chain(["value".to_owned(), String::new()]).collect();
        let all: Vec<Vec<String>> = rows.iter().map(|f| cells(f)).collect();
        let width = |column: usize| {
            let cells = all.iter().chain([&head]).map(|row| row[column].chars().count());
            cells.max().unwrap_or(0)
        };
        let used = |column: &usize| all.iter().any(|row| !row[*column].is_empty());
        let columns: Vec<usize> = (0..head.len()).filter(used).collect();
        let widths: Vec<usize> = columns.iter().map(|column| width(*column)).collect();
        let fits = 2 + widths.iter().sum::<usize>() + 2 * widths.len() <= WIDE;
        let line = |row: &[String]| {
            let mut line = String::from("  ");
            for (column, width) in columns.iter().zip(&widths) {
                let (cell, room) = (&row[*column], width - row[*column].chars().count());
                let room = " ".repeat(room);
                // Values stand to the right.
                let value = *column + 2 == head.len();
                let (before, after) = if value { (room.as_str(), "") } else { ("", room.as_str()) };
                line.extend([before, cell, after, "  "]);
            }
            format!("{}\n", line.trim_end())
        };
        if fits {
            out.push_str(&line(&head));
        }
        for (place, (f, row)) in rows.iter().zip(&all).enumerate() {
            if fits {
                out.push_str(&line(row));
            } else {
                let of: Vec<&str> = f.of.iter().copied().filter(|word| !word.is_empty()).collect();
                let said = format!("{}: {} {}", of.join(", "), f.words(), f.unit);
                out.push_str(&wrapped(&said, "  ", "    "));
            }
            let below = f.below();
            if rows.get(place + 1).is_none_or(|next| next.below() != below) {
                out.push_str(&wrapped(&below, "      ", "      "));
            }
        }
        out
    }

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
