//! Agreed allowances for moisture.

use hankwise::fibre;
use hankwise::handbook::Figure;
use hankwise::quantity::{Kind, unit};
use hankwise::source::Basis;
use pyo3::prelude::*;

use crate::call::warn;
use crate::errors::OrRaise;
use crate::handbook::HandbookTable;
use crate::quantity::Quantity;
use crate::text::Text;

/// The agreed allowance for moisture of a fibre, on the oven-dry mass.
///
/// `list` is "EU", "ASTM" or "trade"; the contract says which holds. Where a fibre has several, as
/// carded and combed wool have, they are named. A figure from memory warns. `allowances` has the
/// lists side by side, with source and date.
///
/// >>> import hankwise as hw
/// >>> hw.fibre.allowance("wool carded"), hw.fibre.allowance("wool", list="ASTM")
/// (<regain: 17 %>, <regain: 13.6 %>)
#[pyfunction]
#[pyo3(signature = (fibre, list=None), text_signature = "(fibre, list=\"EU\")")]
pub(crate) fn allowance(py: Python<'_>, fibre: Text, list: Option<Text>) -> PyResult<Quantity> {
    let fibre = fibre.named("fibre")?;
    let list = Text::option(list.as_ref(), "list")?;
    let found: &Figure = fibre::allowance(fibre, list).or_raise_at("allowance")?;
    if found.basis() == Basis::Memory {
        warn(
            py,
            vec![format!(
                "allowance: {} % for {} in the list {} is from memory; confirm it before you invoice by it",
                found.low, found.of[0], found.of[1]
            )],
        )?;
    }
    let unit = unit("%", Some(Kind::Regain)).or_raise()?;
    Ok(Quantity::scalar(py, found.low, unit, Kind::Regain))
}

/// What the lists allow for a fibre, side by side, with who says so.
///
/// >>> import hankwise as hw
/// >>> [(f.of["list"], f.low.number("%")) for f in hw.fibre.allowances("jute")]
/// [('EU', 17.0), ('ASTM D1909', 13.75)]
#[pyfunction]
pub(crate) fn allowances(fibre: Text) -> PyResult<HandbookTable> {
    let fibre = fibre.named("fibre")?;
    let table = hankwise::catalogue::table("moisture_allowances").or_raise()?;
    Ok(HandbookTable::part(table, fibre::allowances(fibre).or_raise_at("allowances")?))
}
