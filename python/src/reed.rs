//! The reed and the ends in a dent, out of the reeds that the mill owns.

use hankwise::cloth::{self, Breadth, ReedAsk, Selvedge, Sleying};
use hankwise::quantity::{Amount, Kind};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::attributes::{attributes, dict};
use crate::call::warn;
use crate::errors::{NotationError, OrRaise};
use crate::inputs::{has_several, members, single, whole};
use crate::quantity::Quantity;

const NAME: &str = "choose_reed";

/// Reeds and orders of ends for a sett, out of the reeds that the mill owns, the nearest first.
#[pyclass(frozen, module = "hankwise")]
pub(crate) struct ReedChoice {
    choice: cloth::ReedChoice,
}

/// One figure, or several in a row.
fn numbers(value: &Bound<'_, PyAny>, input: &str) -> PyResult<Vec<f64>> {
    let all =
        if has_several(value) { members(value, input, Kind::Count)? } else { vec![value.clone()] };
    all.iter().map(|one| Ok(single(one, NAME, input, Kind::Count)?.base())).collect()
}

/// The reed and the ends in a dent for a sett, out of the reeds that the mill owns.
///
/// `ends_per_dent` are the numbers allowed (1 to 4); between two neighbours the dents go in turn, such
/// as 3, 2, the order coming round within `period` dents (1 leaves the uneven out). A selvedge on each
/// side takes `selvedge_dents` or `selvedge_width`, drawn with its own ends in a dent.
///
/// >>> import hankwise as hw
/// >>> choice = hw.cloth.choose_reed("20 ends/in", ["8 dents/in", "12 dents/in"], width="24 in")
/// >>> choice.reed, choice.order, choice.ends
/// (<reed count: 8 dents/in>, [3, 2], 480)
#[pyfunction]
#[pyo3(
    signature = (sett, reeds, ends_per_dent=None, width=None, *, period=None, selvedge_ends_per_dent=None, selvedge_dents=None, selvedge_width=None),
    text_signature = "(sett, reeds, ends_per_dent=None, width=None, *, period=4, selvedge_ends_per_dent=None, selvedge_dents=None, selvedge_width=None)"
)]
#[allow(clippy::too_many_arguments, reason = "each is a word of the call")]
pub(crate) fn choose_reed(
    py: Python<'_>,
    sett: &Bound<'_, PyAny>,
    reeds: &Bound<'_, PyAny>,
    ends_per_dent: Option<&Bound<'_, PyAny>>,
    width: Option<&Bound<'_, PyAny>>,
    period: Option<&Bound<'_, PyAny>>,
    selvedge_ends_per_dent: Option<&Bound<'_, PyAny>>,
    selvedge_dents: Option<&Bound<'_, PyAny>>,
    selvedge_width: Option<&Bound<'_, PyAny>>,
) -> PyResult<ReedChoice> {
    let sett = single(sett, NAME, "sett", Kind::Sett)?;
    // A mill with one reed may name it alone.
    let all = if has_several(reeds) {
        members(reeds, "reeds", Kind::ReedCount)?
    } else {
        vec![reeds.clone()]
    };
    let reeds = all
        .iter()
        .map(|reed| single(reed, NAME, "reeds", Kind::ReedCount))
        .collect::<PyResult<Vec<Amount>>>()?;
    let mut ask = ReedAsk::default();
    if let Some(period) = period {
        ask.period = whole(period, NAME, "period")? as usize;
    }
    if let Some(ends) = ends_per_dent {
        ask.ends_per_dent = numbers(ends, "ends_per_dent")?;
    }
    ask.width = width.map(|w| single(w, NAME, "width", Kind::Length)).transpose()?;
    let breadth = match (selvedge_dents, selvedge_width) {
        (Some(_), Some(_)) => {
            return Err(PyTypeError::new_err(
                "choose_reed: a selvedge has dents or a width; give one of selvedge_dents, selvedge_width",
            ));
        }
        (Some(n), None) => {
            Some(Breadth::Dents(single(n, NAME, "selvedge_dents", Kind::Count)?.base()))
        }
        (None, Some(w)) => Some(Breadth::Width(single(w, NAME, "selvedge_width", Kind::Length)?)),
        (None, None) => None,
    };
    ask.selvedge = match (selvedge_ends_per_dent, breadth) {
        (Some(ends), Some(breadth)) => {
            let ends = single(ends, NAME, "selvedge_ends_per_dent", Kind::Count)?;
            Some(Selvedge { ends_per_dent: ends.base(), breadth })
        }
        (None, None) => None,
        _ => {
            return Err(NotationError::new_err(
                "choose_reed: a selvedge takes selvedge_ends_per_dent and one of selvedge_dents, \
                 selvedge_width",
            ));
        }
    };
    let choice = cloth::choose_reed(&sett, &reeds, &ask).or_raise_at(NAME)?;
    warn(py, choice.warnings.clone())?;
    Ok(ReedChoice { choice })
}

impl ReedChoice {
    fn sett_of(&self, py: Python<'_>, base: f64) -> Quantity {
        let unit = self.choice.wanted.unit;
        Quantity::scalar(py, unit.from_base(base), unit, unit.kind)
    }
    fn amount(py: Python<'_>, amount: &Amount) -> Quantity {
        Quantity::scalar(py, amount.number, amount.unit, amount.unit.kind)
    }
    fn row<'py>(&self, py: Python<'py>, s: &Sleying) -> PyResult<Bound<'py, PyDict>> {
        Ok(dict!(py, {
            "reed": Bound::new(py, Self::amount(py, &s.reed))?,
            "order": s.order.clone(),
            "sett": Bound::new(py, self.sett_of(py, s.sett))?,
            "off": s.off,
            "dents": s.dents,
            "ends": s.ends,
            "selvedge_ends": s.selvedge_ends,
        }))
    }
}

attributes! {
    ReedChoice, self, py, shown as self.choice.report(); {
        /// The nearest reed, as the mill calls it.
        reed: Quantity = Self::amount(py, &self.choice.nearest().reed);
        /// Ends in one dent after another, until the order comes round again.
        order: Vec<u32> = self.choice.nearest().order.clone();
        /// The sett that it gives.
        sett: Quantity = self.sett_of(py, self.choice.nearest().sett);
        /// How far that is from what is wanted, as a fraction of it.
        off: f64 = self.choice.nearest().off;
        /// Dents in the width; None where no width was given.
        dents: Option<u64> = self.choice.nearest().dents;
        /// Ends in the width, selvedges and all; None where no width was given.
        ends: Option<u64> = self.choice.nearest().ends;
        /// Ends of both selvedges together; None where there are none.
        selvedge_ends: Option<u64> = self.choice.nearest().selvedge_ends;
        /// The sett wanted.
        wanted: Quantity = Self::amount(py, &self.choice.wanted);
        /// Every owned reed with every order, the nearest first: reed, order, sett, off, dents, ends,
        /// selvedge_ends.
        rows: PyResult<Vec<Bound<'py, PyDict>>> =
            self.choice.rows.iter().map(|s| self.row(py, s)).collect();
    }

    fn __len__(&self) -> usize {
        self.choice.rows.len()
    }
}
