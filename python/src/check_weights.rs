//! The check-weight card.

use hankwise::quantity::{self, Amount, Fraction, Kind, Regain};
use hankwise::yarn::{CheckCard, CheckWeights};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

use crate::call::warn;
use crate::errors::{NotationError, RangeError, raise};
use crate::inputs::{Given, is_row, locate, members, one};
use crate::quantity::Quantity;
use crate::result::Table;

const NAME: &str = "check_weight_card";

/// check_weight_card(count, lengths, *, ends=1, readings=1, different_ends=None, cv=None,
///     cv_between_ends=None, cv_readings=None, regain_stated=None, regain_today=None,
///     oil_stated=None, oil_today=None, confidence=0.95, balance="g")
/// --
///
/// What lengths of a yarn, a slubbing or a sliver should weigh on the balance at hand, and the bands
/// in which the mean of the readings, and all single readings, must fall.
///
/// `lengths` and `balance` (units of mass) are one or a list. `ends` are weighed together, `readings`
/// times. `cv` is the variation from piece to piece of the length that is weighed; where that along
/// an end and that from end to end are told apart, the latter is `cv_between_ends`, and
/// `different_ends` says from how many ends all the pieces come (else each reading is from fresh
/// ones). Where the variation comes from few earlier readings, `cv_readings` says from how many: the
/// bands are then wider, by Student's t. Where the count is stated at another regain than today's, or
/// with another oil, give both.
///
/// >>> import hankwise as hw
/// >>> hw.yarn.check_weight_card("200 tex", "20 m", readings=4, cv="3 %", regain_stated="17 %",
/// ...                           regain_today="12 %")
/// Check weights of 200 tex
///   One end of each length.
///   The count is stated at 17 % regain; weighed at 12 % regain.
///   length  should weigh  mean from       to  each from       to
///   20 m         3.829 g    3.716 g  3.942 g    3.543 g  4.115 g
///   Of a yarn that is right, the mean of 4 readings is within its limits 95 % of the time, and all 4
///     single readings together within theirs 95 % of the time.
///   Variation 3 % from piece to piece.
#[pyfunction]
#[pyo3(
    signature = (
        count, lengths, *, ends=1, readings=1, different_ends=None, cv=None, cv_between_ends=None,
        cv_readings=None, regain_stated=None, regain_today=None, oil_stated=None, oil_today=None,
        confidence=None, balance=None
    ),
    text_signature = "(count, lengths, *, ends=1, readings=1, different_ends=None, cv=None, \
        cv_between_ends=None, cv_readings=None, regain_stated=None, regain_today=None, oil_stated=None, \
        oil_today=None, confidence=0.95, balance=\"g\")"
)]
pub(crate) fn check_weight_card<'py>(
    py: Python<'py>,
    count: &Bound<'py, PyAny>,
    lengths: &Bound<'py, PyAny>,
    ends: i64,
    readings: i64,
    different_ends: Option<i64>,
    cv: Option<Bound<'py, PyAny>>,
    cv_between_ends: Option<Bound<'py, PyAny>>,
    cv_readings: Option<i64>,
    regain_stated: Option<Bound<'py, PyAny>>,
    regain_today: Option<Bound<'py, PyAny>>,
    oil_stated: Option<Bound<'py, PyAny>>,
    oil_today: Option<Bound<'py, PyAny>>,
    confidence: Option<Bound<'py, PyAny>>,
    balance: Option<Bound<'py, PyAny>>,
) -> PyResult<Table> {
    let figure = |name: &str, value: &Option<Bound<'py, PyAny>>, kind: Kind| {
        value.as_ref().map_or(Ok(0.0), |v| amount(name, v, kind).map(|a| a.base()))
    };
    both(["regain_stated", "regain_today"], [&regain_stated, &regain_today])?;
    both(["oil_stated", "oil_today"], [&oil_stated, &oil_today])?;
    let lengths = several(lengths, "lengths", Kind::Length)?
        .iter()
        .map(|length| amount("lengths", length, Kind::Length))
        .collect::<PyResult<Vec<_>>>()?;
    let count = amount("count", count, Kind::LinearDensity)?;
    let mut asked = CheckWeights::new(count, lengths).map_err(|e| raise(&e))?;
    asked.ends = whole("ends", ends)?;
    asked.readings = whole("readings", readings)?;
    asked.different_ends = different_ends.map(|n| whole("different_ends", n)).transpose()?;
    asked.along = Fraction::base(figure("cv", &cv, Kind::Fraction)?);
    asked.between = Fraction::base(figure("cv_between_ends", &cv_between_ends, Kind::Fraction)?);
    asked.variation_from = cv_readings.map(|n| whole("cv_readings", n)).transpose()?;
    asked.stated = Regain::base(figure("regain_stated", &regain_stated, Kind::Regain)?);
    asked.today = Regain::base(figure("regain_today", &regain_today, Kind::Regain)?);
    asked.oil_stated = Fraction::base(figure("oil_stated", &oil_stated, Kind::Fraction)?);
    asked.oil_today = Fraction::base(figure("oil_today", &oil_today, Kind::Fraction)?);
    if confidence.is_some() {
        asked.confidence = figure("confidence", &confidence, Kind::Fraction)?;
    }
    if let Some(balance) = &balance {
        asked.balance = several(balance, "balance", Kind::Mass)?
            .iter()
            .map(|name| {
                let name: String = name.extract()?;
                // A unit of another kind is told apart by the card; a slip of the pen wants a mass.
                quantity::unit(&name, None)
                    .or_else(|_| quantity::unit(&name, Some(Kind::Mass)))
                    .map_err(|e| raise(&e.at(NAME)))
            })
            .collect::<PyResult<_>>()?;
    }
    let card = asked.card().map_err(|e| raise(&e))?;
    warn(py, card.warnings.clone())?;
    table(py, &card)
}

/// A state is changed from one to the other, so one of them alone says nothing.
fn both(names: [&str; 2], given: [&Option<Bound<'_, PyAny>>; 2]) -> PyResult<()> {
    match given.map(Option::is_some) {
        [true, false] => Err(missing(names[0], names[1])),
        [false, true] => Err(missing(names[1], names[0])),
        _ => Ok(()),
    }
}

fn missing(given: &str, wanted: &str) -> PyErr {
    NotationError::new_err(format!("{NAME}: {given} was given without {wanted}; write both"))
}

/// How many of a thing.
fn whole(name: &str, number: i64) -> PyResult<u32> {
    u32::try_from(number).map_err(|_| {
        RangeError::new_err(format!("{NAME}, {name}: {number} is no number of things to weigh"))
    })
}

/// One value, or each of a list.
fn several<'py>(
    value: &Bound<'py, PyAny>,
    name: &str,
    kind: Kind,
) -> PyResult<Vec<Bound<'py, PyAny>>> {
    let array = value.cast::<Quantity>().is_ok_and(|q| q.get().one(value.py()).is_none());
    let many = array || is_row(value);
    if many { members(value, name, kind) } else { Ok(vec![value.clone()]) }
}

/// One figure of a kind.
fn amount(name: &str, value: &Bound<'_, PyAny>, kind: Kind) -> PyResult<Amount> {
    match one(value, kind).map_err(|e| locate(value.py(), NAME, name, e))? {
        Given::One(amount, _) => Ok(amount),
        Given::Many(..) => {
            Err(PyTypeError::new_err(format!("{NAME}, {name}: one figure is wanted, not an array")))
        }
    }
}

/// The card as rows that show themselves.
fn table(py: Python<'_>, card: &CheckCard) -> PyResult<Table> {
    let rows = PyList::empty(py);
    for line in &card.rows {
        for unit in &card.asked.balance {
            let row = PyDict::new(py);
            let read = |kilograms: f64| unit.from_base(kilograms);
            row.set_item("length", Quantity::from_amount(py, line.length, None))?;
            row.set_item("balance", unit.symbol)?;
            row.set_item("weight", read(line.weight.value()))?;
            let [mean, single] = [line.mean(), line.single()];
            for (name, mass) in [
                ("mean_low", mean[0]),
                ("mean_high", mean[1]),
                ("low", single[0]),
                ("high", single[1]),
            ] {
                let read = card.has_bands().then(|| read(mass.value()));
                row.set_item(name, read)?;
            }
            rows.append(row)?;
        }
    }
    Ok(Table::showing(rows, card.report()))
}
