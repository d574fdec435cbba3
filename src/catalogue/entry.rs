//! What can be called or looked up: one entry of any kind.

use std::fmt;

use super::functions::Function;
use super::weaves;
use crate::calculation::Calculation;
use crate::cloth::Weave;
use crate::formula::Formula;
use crate::handbook::{Figure, Table};
#[cfg(feature = "plan-file")]
use crate::plan::StageCard;
use crate::quantity::counts::System;
use crate::quantity::print::figure;
use crate::quantity::{Kind, Unit, units};
use crate::source::{Basis, cited};

/// The kinds of entry, in the order in which equally good hits stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum EntryKind {
    /// A formula: one answer.
    Formula,
    /// A calculation: a chain of formulas with named answers.
    Calculation,
    /// A function of a room that reads, chooses or draws.
    Function,
    /// A stage of the plan.
    Stage,
    /// A table of the handbook.
    Table,
    /// Rows of a table.
    Row,
    /// A count system.
    Count,
    /// A reed system.
    Reed,
    /// A unit.
    Unit,
    /// A weave.
    Weave,
}

/// Each kind in its place, in a word and in a line.
const KINDS: [(EntryKind, &str, &str); EntryKind::Weave as usize + 1] = [
    (EntryKind::Formula, "formula", "one answer, with its working"),
    (EntryKind::Calculation, "calculation", "a chain of formulas with named answers"),
    (EntryKind::Function, "function", "reads, chooses or draws"),
    (EntryKind::Stage, "stage", "a stage on the route of a lot"),
    (EntryKind::Table, "table", "values that no formula gives, with their sources"),
    (EntryKind::Row, "row", "a row of a table"),
    (EntryKind::Count, "count", "a count system"),
    (EntryKind::Reed, "reed", "a reed system"),
    (EntryKind::Unit, "unit", "a unit"),
    (EntryKind::Weave, "weave", "a weave by name, as an example of how to write one"),
];

impl EntryKind {
    /// Every kind.
    pub fn all() -> impl Iterator<Item = EntryKind> {
        KINDS.iter().map(|(kind, ..)| *kind)
    }
    /// The kind in a word, as it is asked for.
    pub const fn word(self) -> &'static str {
        KINDS[self as usize].1
    }
    /// What several of it are.
    pub(super) const fn about(self) -> &'static str {
        KINDS[self as usize].2
    }
    /// The kind with a word, in the singular or the plural.
    pub fn named(word: &str) -> Option<EntryKind> {
        let word = word.trim().to_lowercase();
        let one = match word.as_str() {
            "formulae" => "formula",
            other => other.strip_suffix('s').unwrap_or(other),
        };
        EntryKind::all().find(|kind| kind.word() == one)
    }
}

impl fmt::Display for EntryKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.word())
    }
}

/// Who reads: the line to type next is written for them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Face {
    /// The command line.
    Command,
    /// Python, after `import hankwise as hw`.
    Python,
}

/// Something that can be called or looked up.
#[derive(Clone, Debug)]
pub enum Entry {
    /// A formula.
    Formula(&'static Formula),
    /// A calculation.
    Calculation(&'static Calculation),
    /// A function of a room.
    Function(&'static Function),
    /// A stage of the plan.
    #[cfg(feature = "plan-file")]
    Stage(&'static StageCard),
    /// A table of the handbook.
    Table(&'static Table),
    /// Rows of a table, and the words that lead to them.
    Rows(&'static Table, Vec<&'static Figure>, String),
    /// A count system.
    Count(&'static System),
    /// A reed system.
    Reed(&'static Unit),
    /// A unit.
    Unit(&'static Unit),
    /// A weave, by its name.
    Weave(&'static str),
}

/// A text in quotes where a shell would break it.
fn quoted(text: &str) -> String {
    let plain = |c: char| c.is_alphanumeric() || "-_./%,+:".contains(c);
    if !text.is_empty() && text.chars().all(plain) {
        return text.to_owned();
    }
    if text.contains('\'') { format!("\"{text}\"") } else { format!("'{text}'") }
}

/// Another unit of the same kind, to convert into: the base unit, or the first that is not it.
fn other_unit(unit: &Unit) -> &'static str {
    let base = unit.kind.base();
    if !base.is_empty() && unit.symbol != base && unit.kind != Kind::LinearDensity {
        return base;
    }
    let mut others = units().filter(|u| u.kind == unit.kind && u.symbol != unit.symbol);
    match unit.kind {
        Kind::LinearDensity if unit.symbol != "tex" => "tex",
        _ => others.find(|u| !u.symbol.is_empty()).map_or(unit.symbol, |u| u.symbol),
    }
}

fn convert_command(number: &str, unit: &Unit) -> String {
    format!("hankwise convert {number} {} {}", quoted(unit.symbol), quoted(other_unit(unit)))
}

fn convert_python(number: &str, unit: &Unit) -> String {
    format!("hw.q(\"{number} {}\").to(\"{}\")", unit.symbol, other_unit(unit))
}

fn rows_in_words(figures: &[&Figure]) -> String {
    let one = |f: &&Figure| {
        let of: Vec<&str> = f.of.iter().copied().filter(|word| !word.is_empty()).collect();
        let unit = if f.unit.is_empty() { String::new() } else { format!(" {}", f.unit) };
        format!("{}: {}{unit} ({})", of.join(", "), f.words(), cited(f.source))
    };
    match figures {
        [only] => one(only),
        [first, ..] => format!("{} rows, such as {}", figures.len(), one(first)),
        [] => String::new(),
    }
}

impl Entry {
    /// Its kind.
    pub const fn kind(&self) -> EntryKind {
        match self {
            Entry::Formula(_) => EntryKind::Formula,
            Entry::Calculation(_) => EntryKind::Calculation,
            Entry::Function(_) => EntryKind::Function,
            #[cfg(feature = "plan-file")]
            Entry::Stage(_) => EntryKind::Stage,
            Entry::Table(_) => EntryKind::Table,
            Entry::Rows(..) => EntryKind::Row,
            Entry::Count(_) => EntryKind::Count,
            Entry::Reed(_) => EntryKind::Reed,
            Entry::Unit(_) => EntryKind::Unit,
            Entry::Weave(_) => EntryKind::Weave,
        }
    }

    /// Its name; of rows, the name of their table.
    pub fn name(&self) -> &'static str {
        match self {
            Entry::Formula(formula) => formula.name,
            Entry::Calculation(calculation) => calculation.name,
            Entry::Function(function) => function.name,
            #[cfg(feature = "plan-file")]
            Entry::Stage(stage) => stage.name,
            Entry::Table(table) | Entry::Rows(table, ..) => table.name,
            Entry::Count(system) => system.unit.symbol,
            Entry::Reed(unit) | Entry::Unit(unit) => unit.symbol,
            Entry::Weave(name) => name,
        }
    }

    /// Other names that it goes by.
    pub fn other_names(&self) -> &'static [&'static str] {
        match self {
            Entry::Count(system) => system.unit.names,
            Entry::Reed(unit) | Entry::Unit(unit) => unit.names,
            _ => &[],
        }
    }

    /// What it is, in a line.
    pub fn summary(&self) -> String {
        let defined = |unit: &Unit| {
            let names = match unit.names {
                [] => String::new(),
                names => format!("; also {}", names.join(", ")),
            };
            format!("{}{names}", unit.definition)
        };
        match self {
            Entry::Formula(formula) => formula.summary.to_owned(),
            Entry::Calculation(calculation) => calculation.summary.to_owned(),
            Entry::Function(function) => function.summary.to_owned(),
            #[cfg(feature = "plan-file")]
            Entry::Stage(stage) => stage.summary.to_owned(),
            Entry::Table(table) => format!("{} ({} rows)", table.title, table.figures.len()),
            Entry::Rows(_, figures, _) => rows_in_words(figures),
            Entry::Count(system) => {
                let cited = system.unit.cited();
                let told = [system.country, system.date, &cited];
                let told: Vec<&str> = told.into_iter().filter(|text| !text.is_empty()).collect();
                let tex = figure(system.tex());
                let (unit, told) = (&system.unit, told.join(", "));
                format!("{}; count 1 is {tex} tex ({told})", defined(unit))
            }
            Entry::Reed(unit) => format!("{} ({})", defined(unit), unit.cited()),
            Entry::Unit(unit) => {
                let defined = format!("{}: {}", unit.kind.words(), defined(unit));
                match unit.basis() {
                    Basis::Definition => defined,
                    _ => format!("{defined} ({})", unit.cited()),
                }
            }
            Entry::Weave(name) => Weave::parse(name).map_or(String::new(), |weave| {
                let (ends, picks) = (weave.ends(), weave.picks());
                format!("repeat of {ends} ends and {picks} picks")
            }),
        }
    }

    /// The line to type next at the command line.
    pub fn command(&self) -> String {
        match self {
            Entry::Formula(formula) => format!("hankwise calc {}", formula.name),
            Entry::Calculation(calculation) => format!("hankwise calc {}", calculation.name),
            Entry::Function(function) => match function.command {
                "" => format!("python -c 'import hankwise as hw; {}'", self.python()),
                command => command.to_owned(),
            },
            #[cfg(feature = "plan-file")]
            Entry::Stage(stage) => format!("hankwise find {} --kind stage", stage.name),
            Entry::Table(table) => format!("hankwise find {}", table.name),
            Entry::Rows(table, _, words) => format!("hankwise find {} {words}", table.name),
            Entry::Count(system) => convert_command("16", &system.unit),
            Entry::Reed(unit) => convert_command("20", unit),
            Entry::Unit(unit) => convert_command("1", unit),
            Entry::Weave(name) => format!("hankwise weave {name}"),
        }
    }

    /// The line to type next, as who reads it writes it.
    pub fn line(&self, face: Face) -> String {
        match face {
            Face::Command => self.command(),
            Face::Python => self.python(),
        }
    }

    /// The line to type next in Python, after `import hankwise as hw`.
    pub fn python(&self) -> String {
        match self {
            Entry::Formula(formula) => format!("print(hw.{}.{})", formula.room(), formula.name),
            Entry::Calculation(calculation) => {
                format!("print(hw.{}.{})", calculation.room(), calculation.name)
            }
            Entry::Function(Function { room: "", name, .. }) => format!("help(hw.{name})"),
            Entry::Function(Function { room, name, .. }) => format!("help(hw.{room}.{name})"),
            #[cfg(feature = "plan-file")]
            Entry::Stage(stage) => format!("hw.find(\"{}\", kind=\"stage\")", stage.name),
            Entry::Table(table) => format!("hw.handbook[\"{}\"]", table.name),
            Entry::Rows(table, _, words) => {
                format!("hw.handbook[\"{}\"].find(\"{words}\")", table.name)
            }
            Entry::Count(system) => convert_python("16", &system.unit),
            Entry::Reed(unit) => convert_python("20", unit),
            Entry::Unit(unit) => convert_python("1", unit),
            Entry::Weave(name) => format!("hw.cloth.weave(\"{name}\")"),
        }
    }
}

/// Every entry, kind by kind, in the order of names; rows of tables are not entries of their own.
pub fn entries() -> Vec<Entry> {
    let mut all: Vec<Entry> = super::formulas().map(Entry::Formula).collect();
    all.extend(super::calculations().map(Entry::Calculation));
    all.extend(super::FUNCTIONS.iter().map(Entry::Function));
    #[cfg(feature = "plan-file")]
    all.extend(crate::plan::STAGES.iter().map(Entry::Stage));
    all.extend(super::tables().map(Entry::Table));
    all.extend(crate::quantity::systems().map(Entry::Count));
    all.extend(crate::quantity::reeds::SYSTEMS.iter().map(Entry::Reed));
    let mut symbols = std::collections::BTreeSet::new();
    all.extend(
        units()
            .filter(|unit| !matches!(unit.kind, Kind::LinearDensity | Kind::ReedCount))
            // A diameter is written in the units of length.
            .filter(|unit| !unit.symbol.is_empty() && symbols.insert(unit.symbol))
            .map(Entry::Unit),
    );
    all.extend(weaves::NAMES.iter().map(|name| Entry::Weave(name)));
    all
}
