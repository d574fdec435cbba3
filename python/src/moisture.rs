//! Allowances, invoices, the air.

use hankwise::catalogue;
use hankwise::fibre;
use hankwise::handbook::Figure;
use hankwise::quantity::{Kind, unit};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};

use crate::asked;
use crate::call::warn;
use crate::errors::raise;
use crate::handbook::HandbookTable;
use crate::inputs::{has_several, locate, members, one_figure};
use crate::particulars::Particulars;
use crate::quantity::Quantity;

/// allowance(fibre, list="EU")
/// --
///
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
pub(crate) fn allowance(py: Python<'_>, fibre: &str, list: Option<&str>) -> PyResult<Quantity> {
    let located = |e: hankwise::Error| raise(&e.at("allowance"));
    let found: &Figure = fibre::allowance(fibre, list).map_err(located)?;
    if found.grade == hankwise::quantity::Grade::Memory {
        warn(
            py,
            vec![format!(
                "allowance: {} % for {} in the list {} is from memory; confirm it before you invoice by it",
                found.low, found.of[0], found.of[1]
            )],
        )?;
    }
    let unit = unit("%", Some(Kind::Regain)).map_err(located)?;
    Ok(Quantity::scalar(py, found.low, unit, Kind::Regain))
}

/// allowances(fibre)
/// --
///
/// What the lists allow for a fibre, side by side, with who says so.
///
/// >>> import hankwise as hw
/// >>> [(f.of["list"], f.low.number("%")) for f in hw.fibre.allowances("jute")]
/// [('EU', 17.0), ('ASTM D1909', 13.75)]
#[pyfunction]
#[pyo3(text_signature = "(fibre)")]
pub(crate) fn allowances(fibre: &str) -> PyResult<HandbookTable> {
    let located = |e: hankwise::Error| raise(&e.at("allowances"));
    let table = catalogue::table("moisture_allowances").map_err(located)?;
    Ok(HandbookTable::part(table, fibre::allowances(fibre).map_err(located)?))
}

/// equilibrium_regain(humidity)
/// --
///
/// The regain of clean wool in air of a relative humidity: in damping, and the band of drying.
///
/// From memory, 10 to 90 %: for planning, not for an invoice, and never for greasy wool.
///
/// >>> import hankwise as hw
/// >>> air = hw.fibre.equilibrium_regain("65 %")
/// >>> air["absorption"], air["desorption_low"], air["desorption_high"]
/// (<regain: 16.05 %>, <regain: 17.05 %>, <regain: 18.05 %>)
#[pyfunction]
#[pyo3(text_signature = "(humidity)")]
pub(crate) fn equilibrium_regain(humidity: &Bound<'_, PyAny>) -> PyResult<Particulars> {
    const NAME: &str = "equilibrium_regain";
    let py = humidity.py();
    let (amount, typed) =
        one_figure(humidity, Kind::Fraction).map_err(|e| locate(py, NAME, "humidity", e))?;
    Particulars::hand_over(py, fibre::equilibrium_regain(&amount, typed).map_err(|e| e.at(NAME)))
}

/// humidity_for_regain(regain)
/// --
///
/// The relative humidity that keeps clean wool at a regain: in damping, and the band of drying.
///
/// >>> import hankwise as hw
/// >>> air = hw.fibre.humidity_for_regain("16 %")
/// >>> air["damping"], air["drying_low"], air["drying_high"]
/// (<fraction: 64.78 %>, <fraction: 55.71 %>, <fraction: 60.43 %>)
#[pyfunction]
#[pyo3(text_signature = "(regain)")]
pub(crate) fn humidity_for_regain(regain: &Bound<'_, PyAny>) -> PyResult<Particulars> {
    const NAME: &str = "humidity_for_regain";
    let py = regain.py();
    let (amount, typed) =
        one_figure(regain, Kind::Regain).map_err(|e| locate(py, NAME, "regain", e))?;
    Particulars::hand_over(py, fibre::humidity_for_regain(&amount, typed).map_err(|e| e.at(NAME)))
}

/// invoice(*, mass, allowances, sample=None, dry=None, regain=None, content=None, fat=0)
/// --
///
/// Regain found, oven-dry mass and the invoice mass of a lot at each of several allowances.
///
/// What the lot holds of water is told by a `sample` as taken and `dry` from the oven, or by its
/// `regain` on the dry mass, or by its moisture `content` on the mass as weighed. `allowances` are shares or fibres of
/// a list: `["17 %", "wool combed", "wool ASTM"]`. `fat` is the allowance for fat, oil and
/// dressing, where the sample was cleaned before it was dried.
///
/// >>> import hankwise as hw
/// >>> lot = hw.fibre.invoice(mass="500 kg", sample="250 g", dry="212.3 g",
/// ...                        allowances=["16 %", "wool carded", "18.25 %"])
/// >>> lot["regain"], lot["invoice_at_17"]
/// (<regain: 17.76 %>, <mass: 496.8 kg>)
#[pyfunction]
#[pyo3(
    signature = (**given),
    text_signature = "(*, mass, allowances, sample=None, dry=None, regain=None, content=None, fat=0)"
)]
pub(crate) fn invoice(py: Python<'_>, given: Option<&Bound<'_, PyDict>>) -> PyResult<Particulars> {
    const NAME: &str = "invoice";
    let asked = asked::read(fibre::invoice_items(), NAME, given, &["allowances"])?;
    let mut allowances = Vec::new();
    let at = given.map(|given| given.get_item("allowances")).transpose()?.flatten();
    if let Some(at) = at.filter(|at| !at.is_none()) {
        let place = |e: PyErr| locate(py, NAME, "allowances", e);
        let all = if at.is_instance_of::<PyString>() || !has_several(&at) {
            vec![at]
        } else {
            members(&at, "allowances", Kind::Regain).map_err(place)?
        };
        for one in all {
            let read = if let Ok(text) = one.cast::<PyString>() {
                fibre::Allowance::read(&text.to_string_lossy())
            } else {
                let (amount, typed) = one_figure(&one, Kind::Regain).map_err(place)?;
                fibre::Allowance::agreed(amount, typed)
            };
            allowances.push(read.map_err(|e| raise(&e.at("allowances").at(NAME)))?);
        }
    }
    Particulars::hand_over(py, fibre::invoice(&asked, &allowances).map_err(|e| e.at(NAME)))
}
