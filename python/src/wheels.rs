//! The change wheel out of those that the mill owns.

use hankwise::mill::{self, Fit, Law};
use hankwise::quantity::{Amount, Kind, Unit};
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::errors::{UnitError, raise};
use crate::inputs::{locate, members, single};
use crate::quantity::Quantity;

const NAME: &str = "change_wheel";

/// What a pickle keeps: constant, wanted, wheels owned, law.
type State = (Quantity, Quantity, Vec<u64>, &'static str);

/// The change wheel for what is wanted, out of those that the mill owns.
#[pyclass(frozen, module = "hankwise")]
pub(crate) struct ChangeWheel {
    wheel: mill::ChangeWheel,
}

/// change_wheel(constant, wanted, wheels, law="inverse")
/// --
///
/// The change wheel for a twist, a draft or a length, out of those that the mill owns.
///
/// `law` is "inverse" where what the wheel gives falls as teeth rise (constant ÷ teeth) and
/// "direct" where it rises with them (constant × teeth).
///
/// >>> import hankwise as hw
/// >>> wheel = hw.mill.change_wheel(constant="995.31 tpi", wanted="18.1 tpi", wheels=[50, 54, 58])
/// >>> wheel.teeth, wheel.gives
/// (54, <twist: 18.43 tpi>)
/// >>> print(wheel)
/// Change wheel
/// <BLANKLINE>
/// 18.1 tpi wanted: 54.99 teeth would give it
///   wheel       teeth      gives  off by
///   nearest        54  18.43 tpi  +1.8 %
///   next above     58  17.16 tpi  −5.2 %
/// <BLANKLINE>
/// Cautions
///   What can do harm here. These are reminders and set nothing: the makers of machines and products,
///     local rules and licensed practice come first.
///   ! Wheels: Wheels, belts and spindles catch fingers, hair and clothes: a wheel is changed and a wrap
///   !   cleared only with the machine stopped and locked off; guards stay on while it turns.
#[pyfunction]
#[pyo3(
    signature = (constant, wanted, wheels, law="inverse"),
    text_signature = "(constant, wanted, wheels, law=\"inverse\")"
)]
pub(crate) fn change_wheel(
    constant: &Bound<'_, PyAny>,
    wanted: &Bound<'_, PyAny>,
    wheels: &Bound<'_, PyAny>,
    law: &str,
) -> PyResult<ChangeWheel> {
    // What is wanted says by its unit what it is; a bare number is a draft.
    let kinds = mill::ChangeWheel::KINDS;
    let read = kinds.map(|kind| single(wanted, NAME, "wanted", kind));
    let fits = read.iter().position(Result::is_ok).unwrap_or(0);
    let asked = wanted;
    let wanted =
        read.into_iter().nth(fits).unwrap_or_else(|| single(wanted, NAME, "wanted", kinds[0]))?;
    let what = kinds[fits].words();
    let constant = single(constant, NAME, "constant", kinds[fits]).map_err(|e| {
        // A figure without a unit is better told of as that.
        let bare = constant.str().is_ok_and(|s| s.to_string().trim().parse::<f64>().is_ok());
        if !bare && kinds.iter().any(|kind| single(constant, NAME, "constant", *kind).is_ok()) {
            let value = |of: &Bound<'_, PyAny>| of.str().map(|s| s.to_string()).unwrap_or_default();
            return UnitError::new_err(format!(
                "{NAME}: constant and wanted are of one kind; wanted = '{1}' is a {what}, and constant = '{0}' is not",
                value(constant),
                value(asked)
            ));
        }
        e
    })?;
    let owned = members(wheels, "wheels", Kind::Count)
        .map_err(|e| locate(wheels.py(), NAME, "wheels", e))?
        .iter()
        .map(|wheel| Ok(single(wheel, NAME, "wheels", Kind::Count)?.base()))
        .collect::<PyResult<Vec<f64>>>()?;
    let law = law.parse::<Law>().and_then(|l| mill::change_wheel(&constant, &wanted, &owned, l));
    Ok(ChangeWheel { wheel: law.map_err(|e| raise(&e.at(NAME)))? })
}

fn quantity(py: Python<'_>, base: f64, unit: &'static Unit) -> Quantity {
    Quantity::scalar(py, unit.from_base(base), unit, unit.kind)
}

impl ChangeWheel {
    fn amount(py: Python<'_>, amount: &Amount) -> Quantity {
        Quantity::scalar(py, amount.number, amount.unit, amount.unit.kind)
    }
    fn fit<'py>(&self, py: Python<'py>, fit: Option<&Fit>) -> PyResult<Option<Bound<'py, PyDict>>> {
        let Some(fit) = fit else { return Ok(None) };
        let one = PyDict::new(py);
        one.set_item("teeth", fit.teeth as u64)?;
        one.set_item("gives", Bound::new(py, quantity(py, fit.gives, self.wheel.wanted.unit))?)?;
        one.set_item("off", fit.off)?;
        Ok(Some(one))
    }
}

#[pymethods]
impl ChangeWheel {
    /// Teeth of the owned wheel nearest to what is wanted.
    #[getter]
    fn teeth(&self) -> u64 {
        self.wheel.nearest.teeth as u64
    }
    /// What that wheel gives.
    #[getter]
    fn gives(&self, py: Python<'_>) -> Quantity {
        quantity(py, self.wheel.nearest.gives, self.wheel.wanted.unit)
    }
    /// How far that is from what is wanted, as a fraction of it.
    #[getter]
    fn off(&self) -> f64 {
        self.wheel.nearest.off
    }
    /// The owned wheel with as many teeth as wanted, or the next with fewer: teeth, gives, off; None
    /// where there is none.
    #[getter]
    fn below<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyDict>>> {
        self.fit(py, self.wheel.below.as_ref())
    }
    /// The next owned wheel with more teeth than wanted: teeth, gives, off; None where there is none.
    #[getter]
    fn above<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyDict>>> {
        self.fit(py, self.wheel.above.as_ref())
    }
    /// The teeth that would give just what is wanted; hardly ever a whole number.
    #[getter]
    fn teeth_wanted(&self) -> f64 {
        self.wheel.teeth
    }
    /// What is wanted.
    #[getter]
    fn wanted(&self, py: Python<'_>) -> Quantity {
        Self::amount(py, &self.wheel.wanted)
    }
    /// The constant of the machine for that place.
    #[getter]
    fn constant(&self, py: Python<'_>) -> Quantity {
        Self::amount(py, &self.wheel.constant)
    }
    /// The wheels owned, in rising order.
    #[getter]
    fn wheels(&self) -> Vec<u64> {
        self.wheel.wheels().iter().map(|z| *z as u64).collect()
    }
    /// Which way the wheel works: "inverse" or "direct".
    #[getter]
    fn law(&self) -> &'static str {
        self.wheel.law.word()
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, State)> {
        let make = py.import("hankwise.mill")?.getattr(NAME)?;
        Ok((make, (self.constant(py), self.wanted(py), self.wheels(), self.law())))
    }
    fn __repr__(&self) -> String {
        self.wheel.report().text().trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.wheel.report().html()
    }
}
