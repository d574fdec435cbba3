//! Everything that can be called or looked up. It is above the rooms and alone lists what they
//! offer; a formula, a calculation or a table knows nothing of it.
//!
//! ```
//! use hankwise::catalogue;
//!
//! let twist = catalogue::formula("twist_factor")?;
//! assert_eq!(twist.room(), "yarn");
//! let table = catalogue::table("twist_multipliers")?;
//! let weft = table.find("mule weft cotton").next().expect("is in the table");
//! assert_eq!((weft.low, weft.unit, weft.source), (3.25, "tpi/√Ne", "Nasmith 1890"));
//! # Ok::<(), hankwise::Error>(())
//! ```

mod entry;
mod find;
mod found;
mod functions;
mod index;
mod weaves;

pub use entry::{Entry, EntryKind, Face, entries};
pub use find::find;
pub use found::Found;
pub use functions::{FUNCTIONS, Function};

use std::collections::BTreeMap;
use std::sync::LazyLock;

use crate::calculation::Calculation;
use crate::error::{Error, Result, did_you_mean};
use crate::formula::Formula;
use crate::handbook::Table;
use crate::{cloth, fibre, mill, quality, yarn};

type ByName<T> = LazyLock<BTreeMap<&'static str, &'static T>>;

/// Every formula and every calculation, as the files of the rooms have them.
const CARDS: (&[&Formula], &[&Calculation]) =
    hankwise_macros::cards!(fibre, yarn, cloth, mill, quality);

static FORMULAS: ByName<Formula> =
    LazyLock::new(|| CARDS.0.iter().map(|card| (card.name, *card)).collect());

static CALCULATIONS: ByName<Calculation> =
    LazyLock::new(|| CARDS.1.iter().map(|card| (card.name, *card)).collect());

static TABLES: ByName<Table> = LazyLock::new(|| {
    let rooms = [fibre::TABLES, yarn::TABLES, cloth::TABLES, mill::TABLES, quality::TABLES];
    let all = rooms.into_iter().flatten().map(|table| LazyLock::force(table));
    all.map(|table| (table.name, table)).collect()
});

/// Every formula, in the order of names.
pub fn formulas() -> impl ExactSizeIterator<Item = &'static Formula> {
    FORMULAS.values().copied()
}

/// The formula with a name.
pub fn formula(name: &str) -> Result<&'static Formula> {
    named(&FORMULAS, name, "formula")
}

/// Every calculation, in the order of names.
pub fn calculations() -> impl ExactSizeIterator<Item = &'static Calculation> {
    CALCULATIONS.values().copied()
}

/// The calculation with a name.
pub fn calculation(name: &str) -> Result<&'static Calculation> {
    named(&CALCULATIONS, name, "calculation")
}

/// Every table of the handbook, in the order of names.
pub fn tables() -> impl ExactSizeIterator<Item = &'static Table> {
    TABLES.values().copied()
}

/// The table with a name.
pub fn table(name: &str) -> Result<&'static Table> {
    named(&TABLES, name, "table")
}

/// The formula or the calculation with a name.
pub fn calc(name: &str) -> Result<Entry> {
    if let Some(formula) = FORMULAS.get(name) {
        return Ok(Entry::Formula(formula));
    }
    if let Some(calculation) = CALCULATIONS.get(name) {
        return Ok(Entry::Calculation(calculation));
    }
    let names = FORMULAS.keys().chain(CALCULATIONS.keys()).copied();
    Err(unknown("formula or calculation", name, names))
}

/// What has a name among its kind.
fn named<T>(all: &ByName<T>, name: &str, kind: &str) -> Result<&'static T> {
    all.get(name).copied().ok_or_else(|| unknown(kind, name, all.keys().copied()))
}

/// The refusal of a name that nothing has: the nearest of the same kind, and how to search.
fn unknown<'n>(kind: &str, name: &str, names: impl Iterator<Item = &'n str>) -> Error {
    let words = name.replace('_', " ");
    let advice = match did_you_mean(name, names) {
        Some(near) => format!("did you mean '{near}'? Or search: find('{words}')"),
        None => format!("search: find('{words}')"),
    };
    Error::notation(format!("unknown {kind} '{name}'; {advice}"))
}
