//! Does the weighing add up?

use hankwise::mill;
use pyo3::prelude::*;
use pyo3::types::PyString;

use crate::attributes::attributes;
use crate::errors::{NotationError, OrRaise};
use crate::inputs::is_row;
use crate::quantity::Quantity;

/// What went into a stage against what came out. Made by `hankwise.mill.balance`.
#[pyclass(frozen, module = "hankwise")]
pub(crate) struct Balance {
    balance: mill::Balance,
}

/// What went into a stage against what came out of it, and whether the gap is more than half of each
/// last digit can make.
///
/// Masses are texts as they were written down, for their last digit says how finely they were weighed.
///
/// >>> import hankwise as hw
/// >>> combing = hw.mill.balance("1.7 lb", ["673 g", "109 g"])
/// >>> combing.closes, combing.gap
/// (True, 0.010892971)
#[pyfunction]
#[pyo3(signature = (into, out))]
pub(crate) fn balance(into: &Bound<'_, PyAny>, out: &Bound<'_, PyAny>) -> PyResult<Balance> {
    // One thing that came out may stand alone.
    let out =
        if is_row(out) { out.try_iter()?.collect::<PyResult<_>>()? } else { vec![out.clone()] };
    let into = written(into, "into")?;
    let out = out.iter().map(|one| written(one, "out")).collect::<PyResult<Vec<_>>>()?;
    let out: Vec<&str> = out.iter().map(String::as_str).collect();
    let balance = mill::balance(&into, &out).or_raise_at("balance")?;
    Ok(Balance { balance })
}

/// A mass as it was written down; a number has lost how finely it was weighed.
fn written(value: &Bound<'_, PyAny>, name: &str) -> PyResult<String> {
    if let Ok(text) = value.cast::<PyString>() {
        return Ok(text.to_string_lossy().into_owned());
    }
    let typed = value.cast::<Quantity>().ok().and_then(|q| q.get().text.clone());
    typed.ok_or_else(|| {
        NotationError::new_err(format!(
            "balance, {name}: give a mass as it was written down, such as '673 g', for its last \
             digit says how finely it was weighed; not {}",
            crate::columns::shown(value)
        ))
    })
}

/// Kilograms without the noise of binary arithmetic below a microgram.
fn tidy(kg: f64) -> f64 {
    (kg * 1e9).round() / 1e9
}

attributes! {
    Balance, self, py, shown as self.balance.report(); {
        /// What came out less what went in, in kg; negative where some is missing.
        gap: f64 = tidy(self.balance.gap());
        /// The largest gap that half of each last digit can make, in kg.
        reading: f64 = tidy(self.balance.reading());
        /// True where the gap is no more than the readings can make.
        closes: bool = self.balance.closes();
    }
}
