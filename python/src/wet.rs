//! Oil and water, scour liquor, dye bath.

use hankwise::mill;
use hankwise::quantity::Kind;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList, PyString};

use crate::asked::read;
use crate::errors::{NotationError, raise};
use crate::inputs::{locate, one_figure};
use crate::particulars::Particulars;

/// emulsion(*, mass=None, fibre=None, regain, oil, wanted=None, oil_share=None, density=None,
///     fat=0, vegetable=0)
/// --
///
/// Oil and water for a lot: kilograms and litres to weigh out, and what the lot is after them.
///
/// The lot is its `mass` as weighed, or its clean dry `fibre`; `regain`, `fat` and `vegetable` are what is
/// on the fibre now, `oil` what is to come on, all on clean dry fibre. The water is that to the regain
/// `wanted`, or that of an emulsion with `oil_share` of oil; with both, the rest is put on beside it.
///
/// >>> import hankwise as hw
/// >>> lot = hw.mill.emulsion(mass="40 kg", regain="14 %", oil="5 %", wanted="22 %",
/// ...                        density="0.92 kg/L")
/// >>> lot["oil_mass"], lot["oil_volume"], lot["water_mass"], lot["mass_after"]
/// (<mass: 1.754 kg>, <volume: 1.907 L>, <mass: 2.807 kg>, <mass: 44.56 kg>)
#[pyfunction]
#[pyo3(
    signature = (**given),
    text_signature = "(*, mass=None, fibre=None, regain, oil, wanted=None, oil_share=None, density=None, \
        fat=0, vegetable=0)"
)]
pub(crate) fn emulsion(py: Python<'_>, given: Option<&Bound<'_, PyDict>>) -> PyResult<Particulars> {
    const NAME: &str = "emulsion";
    let asked = read(mill::emulsion_items(), NAME, given, &[])?;
    Particulars::hand_over(py, mill::emulsion(&asked).map_err(|e| e.at(NAME)))
}

/// scour_liquor(*, mass, liquor_ratio, soap=None, alkali=None, pickup=None, rinses=0,
///     rinse_ratio=None, regain=None, temperature=None)
/// --
///
/// Liquor, soap and alkali for a lot of wool, what it carries on, what the rinses leave, the water for all.
///
/// `pickup` is the liquor that the squeeze leaves on the dry wool; `rinses` are well mixed, each of
/// `rinse_ratio` litres for a kilogram (the liquor's without it). Concentrations and `temperature`
/// are yours; `hw.handbook["scour_liquors"]` has what sources print.
///
/// >>> import hankwise as hw
/// >>> lot = hw.mill.scour_liquor(mass="20 kg", liquor_ratio=30, soap="10 g/L", pickup="60 %",
/// ...                            rinses=2, temperature="50 °C")
/// >>> lot["soap_mass"], lot["carried"], lot["water"]
/// (<mass: 6 kg>, <volume: 12 L>, <volume: 1800 L>)
#[pyfunction]
#[pyo3(
    signature = (**given),
    text_signature = "(*, mass, liquor_ratio, soap=None, alkali=None, pickup=None, rinses=0, \
        rinse_ratio=None, regain=None, temperature=None)"
)]
pub(crate) fn scour_liquor(
    py: Python<'_>,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    const NAME: &str = "scour_liquor";
    let asked = read(mill::scour_liquor_items(), NAME, given, &[])?;
    Particulars::hand_over(py, mill::scour_liquor(&asked).map_err(|e| e.at(NAME)))
}

/// washes(washes, /, *, mass, fat=None)
/// --
///
/// The washes of a scour one after another: liquor, soap and alkali of each, the grease left after each,
/// the water for all.
///
/// Each wash says its `liquor_ratio`, `soap`, `alkali` and `temperature`; with `fat` on the clean dry
/// fibre before, and the share `removed` by each wash as you found it by test, what is left.
/// Concentrations and temperatures are yours; `hw.handbook["scour_liquors"]` has what sources print.
///
/// >>> import hankwise as hw
/// >>> lot = hw.mill.washes([{"liquor_ratio": 30, "soap": "10 g/L", "temperature": "50 °C", "removed": "80 %"},
/// ...                       {"liquor_ratio": 25, "soap": "4 g/L", "temperature": "45 °C", "removed": "75 %"}],
/// ...                      mass="20 kg", fat="20 %")
/// >>> lot["soap_1"], lot["soap_2"], lot["fat_after_1"], lot["fat_after_2"], lot["water"]
/// (<mass: 6 kg>, <mass: 2 kg>, <share on the fibre: 4 %>, <share on the fibre: 1 %>, <volume: 1100 L>)
#[pyfunction]
#[pyo3(
    signature = (washes, /, **given),
    text_signature = "(washes, /, *, mass, fat=None)"
)]
pub(crate) fn washes(
    py: Python<'_>,
    washes: &Bound<'_, PyAny>,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    const NAME: &str = "washes";
    let wanted = |what: &Bound<'_, PyAny>| {
        NotationError::new_err(format!(
            "{NAME}: {} says no washes; write a list, one for each, such as [{{'liquor_ratio': 30, \
             'soap': '10 g/L'}}]",
            crate::columns::shown(what)
        ))
    };
    let Ok(listed) = washes.cast::<PyList>() else { return Err(wanted(washes)) };
    let mut all = Vec::new();
    for (place, said) in (1..).zip(listed) {
        let Ok(said) = said.cast::<PyDict>() else { return Err(wanted(&said)) };
        all.push(read(mill::wash_items(place), &format!("{NAME}, wash {place}"), Some(said), &[])?);
    }
    let lot = read(mill::washes_items(), NAME, given, &[])?;
    Particulars::hand_over(py, mill::washes(&lot, &all).map_err(|e| e.at(NAME)))
}

/// dye_bath(*, mass, depth, liquor_ratio, regain=None, recipe_regain=None, strength="100 %",
///     stock=None, wet=None, additions=None, exhaustion=None, loss=0, regain_after=None,
///     count=None, shrinkage=0, source=None)
/// --
///
/// Liquor, dye, additions and water of a dye bath, what is left in it, and the goods after it.
///
/// The recipe is yours, from the maker of the dye: `source` names it. Its shares are on the goods as
/// weighed, unless their `regain` and the `recipe_regain` are told. `additions` are by name, on the
/// goods or in the liquor: `{"acetic acid": "2 %", "salt": "5 g/L"}`. `wet` is water that wetted goods
/// bring.
///
/// >>> import hankwise as hw
/// >>> bath = hw.mill.dye_bath(mass="20 kg", depth="2 %", liquor_ratio=30, stock="10 g/L",
/// ...                         additions={"acetic acid": "2 %"}, source="the maker's card")
/// >>> bath["dye"], bath["acetic_acid_mass"], bath["stock_volume"], bath["water"]
/// (<mass: 0.4 kg>, <mass: 0.4 kg>, <volume: 40 L>, <volume: 560 L>)
#[pyfunction]
#[pyo3(
    signature = (**given),
    text_signature = "(*, mass, depth, liquor_ratio, regain=None, recipe_regain=None, \
        strength=\"100 %\", stock=None, wet=None, additions=None, exhaustion=None, loss=0, \
        regain_after=None, count=None, shrinkage=0, source=None)"
)]
pub(crate) fn dye_bath(py: Python<'_>, given: Option<&Bound<'_, PyDict>>) -> PyResult<Particulars> {
    const NAME: &str = "dye_bath";
    let asked = read(mill::dye_bath_items(), NAME, given, &["additions", "source"])?;
    let apart = |name: &str| -> PyResult<Option<Bound<'_, PyAny>>> {
        let found = given.map(|given| given.get_item(name)).transpose()?.flatten();
        Ok(found.filter(|value| !value.is_none()))
    };
    let source = match apart("source")? {
        None => None,
        Some(text) => {
            Some(text.cast::<PyString>().map(std::string::ToString::to_string).map_err(|_| {
                PyTypeError::new_err(format!(
                    "{NAME}, source: a text is wanted, such as \"the maker's card\""
                ))
            })?)
        }
    };
    let mut additions = Vec::new();
    if let Some(all) = apart("additions")? {
        let all = all.cast::<PyDict>().map_err(|_| {
            PyTypeError::new_err(format!(
                "{NAME}, additions: names and amounts are wanted, such as {{'acetic acid': '2 %'}}"
            ))
        })?;
        for (name, value) in all.iter() {
            let name: String = name.extract().map_err(|_| {
                PyTypeError::new_err(format!(
                    "{NAME}, additions: a name is wanted, such as 'acetic acid', not {}",
                    crate::columns::shown(&name)
                ))
            })?;
            let read = one_figure(&value, Kind::OnFibre)
                .or_else(|share| one_figure(&value, Kind::Concentration).map_err(|_| share));
            let (amount, typed) = read.map_err(|e| {
                let plain = NotationError::new_err(format!(
                    "'{name}' is wanted on the goods, like '2 %', or in the liquor, like '5 g/L': {}",
                    e.value(py)
                ));
                locate(py, NAME, "additions", plain)
            })?;
            let one = mill::Addition::new(&name, amount, typed);
            additions.push(one.map_err(|e| raise(&e.at(NAME)))?);
        }
    }
    let bath = mill::dye_bath(&asked, &additions, source.as_deref());
    Particulars::hand_over(py, bath.map_err(|e| e.at(NAME)))
}
