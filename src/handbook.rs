//! The handbook: values of the trade that no formula gives, in tables with their sources.
//!
//! What the books disagree on is in several rows, each with who says so. A table is a file of its own in
//! its room, such as `src/yarn/tables/reels.tsv`; it is read when it is first asked for.

use crate::caution;
use crate::error::Result;
pub use crate::quantity::Unit;
use crate::quantity::print;
use crate::source::{Basis, Source, basis, source};
use crate::tsv;
use crate::words::{WIDE, has_words, wrapped};

/// A figure of a table, or a band of figures.
#[derive(Clone, Debug)]
pub struct Figure {
    /// What it is of: a word for each of the table's columns.
    pub of: Box<[&'static str]>,
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
    pub about: String,
    /// Names of the cautions that go with its figures, see [`crate::caution`].
    pub cautions: Box<[&'static str]>,
    /// What the words of a figure are.
    pub columns: Box<[&'static str]>,
    /// The figures.
    pub figures: Box<[Figure]>,
}

/// What is in the columns after those of the table itself.
const REST: [&str; 5] = ["value", "unit", "source", "place", "note"];

/// The tables of a room: each is a file of the folder, read when it is first asked for.
macro_rules! tables {
    ($($name:ident $file:literal),* $(,)?) => {
        $(pub(crate) static $name: std::sync::LazyLock<crate::handbook::Table> =
            std::sync::LazyLock::new(|| {
                crate::handbook::Table::read($file, include_str!(concat!($file, ".tsv")))
            });)*
        /// The tables of this room.
        pub(crate) static TABLES: &[&std::sync::LazyLock<crate::handbook::Table>] = &[$(&$name),*];
    };
}
pub(crate) use tables;

/// The ends of a value as a data file has it: `3.5`, `240 to 300`, `under 100`, `800 and more`.
fn ends(value: &str) -> Option<(f64, f64)> {
    let number = |text: &str| text.replace('−', "-").parse::<f64>().ok();
    if let Some(high) = value.strip_prefix("under ") {
        return Some((f64::NEG_INFINITY, number(high)?));
    }
    if let Some(low) = value.strip_suffix(" and more") {
        return Some((number(low)?, f64::INFINITY));
    }
    let (low, high) = value.split_once(" to ").unwrap_or((value, value));
    Some((number(low)?, number(high)?))
}

impl Figure {
    /// What it rests on.
    pub fn basis(&self) -> Basis {
        basis(self.source)
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
        let bare = source(self.source).is_some_and(Source::is_bare) && self.place.is_empty();
        let basis = self.basis().words();
        let source = if bare { basis.to_owned() } else { format!("{told} ({basis})") };
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
    /// Reads a table from its data file: a title, lines about it, cautions, the head, a row a line.
    ///
    /// # Panics
    /// Where the file is at fault; `tests/handbook.rs` reads them all.
    pub(crate) fn read(name: &'static str, text: &'static str) -> Table {
        let mut rows = tsv::rows(text);
        let (mut title, mut about, mut head) = ("", Vec::new(), Vec::new());
        let mut cautions = Vec::new();
        for row in rows.by_ref() {
            match row[0] {
                "title" => title = tsv::field(&row, 1),
                "about" => about.push(tsv::field(&row, 1)),
                "caution" => cautions.push(tsv::field(&row, 1)),
                _ => {
                    head = row;
                    break;
                }
            }
        }
        let own = head.len().saturating_sub(REST.len());
        assert_eq!(head[own..], REST, "{name}: the head ends with {}", REST.join(", "));
        let figure = |row: Vec<&'static str>| {
            let of: Box<[&'static str]> = (0..own).map(|place| tsv::field(&row, place)).collect();
            let [value, unit, source, place, note] =
                [0, 1, 2, 3, 4].map(|k| tsv::field(&row, own + k));
            let ends = ends(value).filter(|_| row.len() <= head.len());
            let (low, high) = ends.unwrap_or_else(|| panic!("{name}: {row:?} cannot be read"));
            Figure { of, low, high, unit, source, place, note }
        };
        let figures = rows.map(figure).collect();
        let (about, columns) = (about.join(" "), head[..own].into());
        Table { name, title, about, cautions: cautions.into(), columns, figures }
    }

    /// The row of these words, of a table that the crate itself works with.
    ///
    /// # Panics
    /// Where there is none.
    pub(crate) fn row(&self, of: &[&str]) -> &Figure {
        let row = self.figures.iter().find(|f| *f.of == *of);
        row.unwrap_or_else(|| panic!("{}: no row of {of:?}", self.name))
    }

    /// Rows of the table as text, 80 columns wide: the title, what the values are, the rows, and under
    /// the rows that share them source, basis and note; last the cautions.
    pub fn text(&self, rows: &[&Figure]) -> String {
        let mut out = format!("{}\n{}", self.title, wrapped(&self.about, "  ", "    "));
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
        out.push_str(&caution::described(&self.cautions));
        out
    }

    /// The figures that have every one of the words, each found by its beginning, in the table's
    /// name and title, in their own words, unit, source and note.
    pub fn find(&self, words: &str) -> impl Iterator<Item = &Figure> {
        let (name, title) = (self.name, self.title);
        self.figures.iter().filter(move |f| {
            let own = f.of.iter().copied();
            has_words(own.chain([name, title, f.unit, f.source, f.place, f.note]), words)
        })
    }
}

#[cfg(test)]
mod tests {
    use super::{Table, ends};
    use crate::source::Basis;

    #[test]
    fn a_value_is_read_as_it_is_said() {
        let (least, most) = (f64::NEG_INFINITY, f64::INFINITY);
        for (value, read) in [
            ("3.5", Some((3.5, 3.5))),
            ("−4 to 2", Some((-4.0, 2.0))),
            ("under 17.7", Some((least, 17.7))),
            ("800 and more", Some((800.0, most))),
            ("", None),
            ("some", None),
            ("3 to", None),
        ] {
            assert_eq!(ends(value), read, "{value}");
        }
    }

    #[test]
    fn a_table_is_read_from_its_file() {
        let text = "title\tReels\nabout\tMeasure\nabout\tyours.\ncaution\twheels\n\nreel\tvalue\tunit\tsource\tplace\tnote\n\
                    cotton\t54\tin\tNasmith 1890\t\tabout\nworsted\t1\tyd\tmemory\n";
        let table = Table::read("reels", text);
        assert_eq!((table.title, table.about.as_str()), ("Reels", "Measure yours."));
        assert_eq!(&*table.cautions, ["wheels"]);
        let [cotton, worsted] = &*table.figures else { panic!("{table:?}") };
        assert_eq!((cotton.low, cotton.unit, cotton.note), (54.0, "in", "about"));
        assert_eq!((cotton.basis(), worsted.basis()), (Basis::Book, Basis::Memory));
        assert!(std::ptr::eq(table.row(&["worsted"]), worsted));
    }

    #[test]
    #[should_panic(expected = "cannot be read")]
    fn a_row_with_a_field_too_many_is_refused() {
        Table::read(
            "reels",
            "reel\tvalue\tunit\tsource\tplace\tnote\nx\t1\tin\tmemory\t\t\tmore\n",
        );
    }
}
