//! Numbers in one unit to numbers in another.

use std::cell::RefCell;

use hankwise::quantity::{Form, Unit, pair};
use pyo3::prelude::*;
use pyo3::types::PyFloat;

use crate::columns::{Figures, in_kind, is_numeric, scalar};
use crate::errors::OrRaise;

/// A change of unit in one operation.
#[derive(Clone, Copy)]
pub(crate) enum Change {
    /// y = x × k
    Times(f64),
    /// y = x ÷ k, where the factor itself is not exact
    Per(f64),
    /// y = k ÷ x, between a direct and an indirect count
    Over(f64),
    /// y = (x − zero) ÷ degrees, from a scale with a zero of its own
    Down(f64, f64),
    /// y = x × degrees + zero, to such a scale
    Up(f64, f64),
}

impl Change {
    /// The change from one unit to another of the same kind.
    pub(crate) fn between(from: &Unit, to: &Unit) -> Change {
        use Change::{Down, Over, Per, Times, Up};
        match (from.form, to.form) {
            _ if from == to => Times(1.0),
            (Form::Times(a), Form::Times(b)) => Times(a / b),
            (Form::Times(a), Form::Per(b)) => Times(a * b),
            (Form::Per(a), Form::Times(b)) => Per(a * b),
            (Form::Per(a), Form::Per(b)) => Times(b / a),
            (Form::Times(a), Form::Over(k)) => Over(k / a),
            (Form::Per(a), Form::Over(k)) => Over(k * a),
            (Form::Over(k), Form::Times(b)) => Over(k / b),
            (Form::Over(k), Form::Per(b)) => Over(k * b),
            (Form::Over(j), Form::Over(k)) => Times(k / j),
            // The scales of temperature: Celsius, which is the base, and Fahrenheit.
            (Form::From { zero, degrees }, _) => Down(zero, degrees),
            (_, Form::From { zero, degrees }) => Up(zero, degrees),
        }
    }
    #[inline]
    pub(crate) fn of(self, x: f64) -> f64 {
        match self {
            Change::Times(k) => x * k,
            Change::Per(k) => x / k,
            Change::Over(k) => k / x,
            Change::Down(zero, degrees) => (x - zero) / degrees,
            Change::Up(zero, degrees) => x * degrees + zero,
        }
    }
    /// Applied to a column of figures, into another.
    pub(crate) fn fill(self, from: &[f64], to: &mut [f64]) {
        // The choice outside of the loop, so that the loop is one instruction for several figures.
        match self {
            Change::Times(k) => from.iter().zip(to).for_each(|(x, y)| *y = x * k),
            Change::Per(k) => from.iter().zip(to).for_each(|(x, y)| *y = x / k),
            Change::Over(k) => from.iter().zip(to).for_each(|(x, y)| *y = k / x),
            scale => from.iter().zip(to).for_each(|(x, y)| *y = scale.of(*x)),
        }
    }
    /// Applied to a column of figures in their place.
    pub(crate) fn turn(self, figures: &mut [f64]) {
        match self {
            Change::Times(k) => figures.iter_mut().for_each(|x| *x *= k),
            Change::Per(k) => figures.iter_mut().for_each(|x| *x /= k),
            Change::Over(k) => figures.iter_mut().for_each(|x| *x = k / *x),
            scale => figures.iter_mut().for_each(|x| *x = scale.of(*x)),
        }
    }
    /// Applied to anything that computes as NumPy does; one pass, no temporaries.
    fn apply<'py>(self, values: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        match self {
            Change::Times(k) => values.mul(k),
            Change::Per(k) => values.div(k),
            Change::Over(k) => PyFloat::new(values.py(), k).into_any().div(values),
            Change::Down(zero, degrees) => values.sub(zero)?.div(degrees),
            Change::Up(zero, degrees) => values.mul(degrees)?.add(zero),
        }
    }
    /// Applied to figures in any container.
    pub(crate) fn convert<'py>(self, values: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        if let Some(x) = scalar(values) {
            return Ok(PyFloat::new(values.py(), self.of(x)).into_any());
        }
        if values.hasattr("__array__")?
            && is_numeric(values)
            && let Ok(converted) = self.apply(values)
        {
            return Ok(converted);
        }
        match Figures::of(values)? {
            Figures::One(x) => Ok(PyFloat::new(values.py(), self.of(x)).into_any()),
            Figures::Many(array) => in_kind(self.apply(array.as_any())?, values),
        }
    }
}

/// Numbers in one unit, in another of the same kind.
///
/// A number gives a number, an array an array, a Series a Series, a list a list. NaN stays NaN. With
/// `out`, an array of float64 of the same shape, the figures are written into it, over all cores, and
/// it is given back; it may be the array of the values itself.
///
/// >>> import hankwise as hw
/// >>> round(hw.convert(16, "Nm", "YSW"), 3)
/// 31.003
#[pyfunction]
#[pyo3(signature = (values, from_unit, to_unit, /, *, out=None))]
pub(crate) fn convert<'py>(
    values: &Bound<'py, PyAny>,
    from_unit: &Bound<'py, PyAny>,
    to_unit: &Bound<'py, PyAny>,
    out: Option<&Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyAny>> {
    let change = remembered(from_unit, to_unit)?;
    if let Some(out) = out {
        return crate::out::write(change, values, out).map(|()| out.clone());
    }
    if let Ok(x) = values.cast_exact::<PyFloat>() {
        return Ok(PyFloat::new(values.py(), change.of(x.value())).into_any());
    }
    change.convert(values)
}

/// Pairs of names that were looked up last; the names are kept, so that an address stays theirs.
struct Memory {
    pairs: [Option<Pair>; 16],
}

/// The two names and the change between them.
type Pair = (Py<PyAny>, Py<PyAny>, Change);

thread_local! {
    static MEMORY: RefCell<Memory> = const { RefCell::new(Memory { pairs: [const { None }; 16] }) };
}

/// The change between two units, found again by the addresses of their names: a loop that converts
/// names its units once.
#[inline]
fn remembered(from_unit: &Bound<'_, PyAny>, to_unit: &Bound<'_, PyAny>) -> PyResult<Change> {
    let (from, to) = (from_unit.as_ptr() as usize, to_unit.as_ptr() as usize);
    let slot = (from >> 4 ^ to >> 5) % 16;
    let found = MEMORY.with(|memory| match &memory.borrow().pairs[slot] {
        Some((a, b, change)) if a.as_ptr() as usize == from && b.as_ptr() as usize == to => {
            Some(*change)
        }
        _ => None,
    });
    if let Some(change) = found {
        return Ok(change);
    }
    let (from, to) = pair(from_unit.extract()?, to_unit.extract()?).or_raise()?;
    let change = Change::between(from, to);
    let pair = Some((from_unit.clone().unbind(), to_unit.clone().unbind(), change));
    let before =
        MEMORY.with(|memory| std::mem::replace(&mut memory.borrow_mut().pairs[slot], pair));
    drop(before);
    Ok(change)
}

/// An empty call, to measure others against.
#[pyfunction]
pub(crate) fn _empty() {}
