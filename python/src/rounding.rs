//! Rounding a count, with the exact value kept.

use hankwise::quantity::{self, Amount, Kind, print};
use hankwise::yarn;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;

use crate::attributes::attributes;
use crate::errors::{NotationError, OrRaise};
use crate::inputs::{Given, is_row, one};
use crate::quantity::Quantity;
use crate::text::Text;

/// A count and the number that it was rounded to; made by `hankwise.yarn.round_tex` and
/// `hankwise.yarn.round_count`.
#[pyclass(frozen, eq, module = "hankwise")]
#[derive(PartialEq)]
pub(crate) struct Rounded(yarn::Rounded);

/// What a pickle keeps: exact, rounded, unit.
type State = (Quantity, Quantity);

impl Rounded {
    fn of(&self, py: Python<'_>, number: f64) -> Quantity {
        Quantity::from_amount(py, Amount { number, unit: self.0.unit }, None)
    }
}

attributes! {
    Rounded, self, py {
        /// The count before rounding.
        exact: Quantity = self.of(py, self.0.exact);
        /// The count after it.
        rounded: Quantity = self.of(py, self.0.rounded);
        /// True where that is 2 % at most.
        within: bool = self.0.within();
    }

    /// How far the rounded number is from the exact one, of the exact one.
    #[getter]
    fn difference(&self, py: Python<'_>) -> PyResult<Quantity> {
        let unit = quantity::unit("%", Some(Kind::Fraction)).or_raise()?;
        let number = unit.from_base(self.0.difference());
        Ok(Quantity::from_amount(py, Amount { number, unit }, None))
    }
    fn __hash__(&self) -> u64 {
        self.0.exact.to_bits() ^ self.0.rounded.to_bits().rotate_left(1)
    }
    fn __str__(&self) -> String {
        self.0.to_string()
    }
    fn __repr__(&self) -> String {
        format!("<rounded: {}>", self.0)
    }
    fn _repr_html_(&self) -> String {
        print::escape(&self.0.to_string())
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, State)> {
        let make = py.import("hankwise._hankwise")?.getattr("Rounded")?.getattr("_make")?;
        Ok((make, (self.exact(py), self.rounded(py))))
    }
    #[staticmethod]
    fn _make(
        py: Python<'_>,
        exact: PyRef<'_, Quantity>,
        rounded: PyRef<'_, Quantity>,
    ) -> PyResult<Rounded> {
        match (exact.one(py), rounded.one(py)) {
            (Some(from), Some(to)) => {
                Ok(Rounded(yarn::Rounded { exact: from, rounded: to, unit: exact.unit }))
            }
            _ => Err(PyTypeError::new_err("a rounded count is one count")),
        }
    }
}

/// Round a count in tex, as a step of its own: the exact value stays.
///
/// The tables of ISO 2947 could not be read; this is the rule of its scope: a count becomes the nearest
/// number of the fewest digits that lies within 2 % of it. With `agreed`, a list of numbers in tex, it becomes the nearest of them, and
/// `.within` says whether that is within 2 %.
///
/// >>> import hankwise as hw
/// >>> hw.yarn.round_tex("16 Nm")
/// <rounded: 62.5 tex → 62 tex (−0.8 %)>
/// >>> hw.yarn.round_tex("16 Nm", agreed=[50, 64, 72]).rounded
/// <linear density (count): 64 tex>
#[pyfunction]
#[pyo3(signature = (count, /, agreed=None))]
pub(crate) fn round_tex(
    count: &Bound<'_, PyAny>,
    agreed: Option<&Bound<'_, PyAny>>,
) -> PyResult<Rounded> {
    round_count(count, Text::Meant("tex"), agreed)
}

/// Round a count in a system of its own: like `round_tex`, with the number that it has there.
///
/// >>> import hankwise as hw
/// >>> hw.yarn.round_count("30 tex", "Nm")
/// <rounded: 33.33 Nm → 33 Nm (−1 %)>
#[pyfunction]
#[pyo3(signature = (count, unit, /, agreed=None))]
pub(crate) fn round_count(
    count: &Bound<'_, PyAny>,
    unit: Text,
    agreed: Option<&Bound<'_, PyAny>>,
) -> PyResult<Rounded> {
    let unit = unit.named("unit")?;
    let Given::One(count, _) = one(count, Kind::LinearDensity)? else {
        return Err(PyTypeError::new_err("one count is rounded at a time; go through the array"));
    };
    let rounded = match agreed {
        None => yarn::round_count(count, unit),
        Some(agreed) => yarn::round_to_agreed(count, unit, &numbers(agreed, unit)?),
    };
    rounded.map(Rounded).or_raise()
}

/// The numbers of a list that was agreed on, in its unit.
fn numbers(agreed: &Bound<'_, PyAny>, unit: &str) -> PyResult<Vec<f64>> {
    let written = || {
        let given = agreed.repr().map(|r| r.to_string()).unwrap_or_default();
        NotationError::new_err(format!(
            "agreed: write numbers in {unit}, such as agreed=[50, 64, 72], not {given}"
        ))
    };
    if !is_row(agreed) {
        return Err(written());
    }
    agreed.try_iter()?.map(|number| number?.extract::<f64>().map_err(|_| written())).collect()
}
