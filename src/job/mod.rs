//! What a chain of formulas asks, and what was given for it, by name.

mod ask;
mod given;

pub(crate) use ask::place;
pub use ask::{Ask, Missing};
pub use given::Given;

use crate::particulars::Desk;
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{Kind, Unit};
use crate::table::Align::{Left, Right};
use crate::table::Block;

/// A table of what the desk has named, masses in the unit that was given for them, small ones of
/// kilograms in grams.
pub(crate) fn block(
    desk: &Desk<'_>,
    title: &str,
    names: &[&str],
    mass: Option<&'static Unit>,
) -> Block {
    let row = |name: &&str| {
        let (words, value, kind) = desk.found(name)?;
        let said = match mass {
            Some(unit) if kind == Kind::Mass && unit.symbol != "kg" => {
                with_unit(unit.from_base(value), unit.symbol)
            }
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
