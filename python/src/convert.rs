//! Numbers in one unit to numbers in another.

use std::cell::RefCell;

use hankwise::quantity::{Form, Unit, pair, print};
use numpy::{PyArray1, PyArrayDyn, PyArrayMethods, PyUntypedArrayMethods};
use pyo3::prelude::*;
use pyo3::types::PyFloat;

use crate::call::warn;
use crate::columns::{Figures, in_dtype, in_kind, place, rows};
use crate::errors::{OrRaise, RangeError};
use crate::text::text_of;

/// A change of unit in one operation.
#[derive(Clone, Copy)]
enum Step {
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

/// A change of unit, and what it refuses.
#[derive(Clone, Copy)]
pub(crate) struct Change {
    step: Step,
    from: &'static Unit,
    to: &'static Unit,
    /// An indirect count has no 0 and none below it; a direct one may be a difference.
    above_zero: bool,
}

/// What a change refused in a column: how many, and the first with its place.
#[derive(Clone, Copy, Default)]
pub(crate) struct Refused {
    count: usize,
    first: Option<(usize, f64)>,
}

impl Refused {
    fn add(&mut self, at: usize, x: f64) {
        self.count += 1;
        self.first.get_or_insert((at, x));
    }
    pub(crate) fn is_empty(&self) -> bool {
        self.count == 0
    }
    /// What was refused in a part that begins at a place.
    pub(crate) fn from(self, start: usize) -> Refused {
        Refused { first: self.first.map(|(at, x)| (start + at, x)), ..self }
    }
    /// What was refused in an array that lies by columns, by its place in one that lies by rows.
    pub(crate) fn by_columns(self, shape: &[usize]) -> Refused {
        let first = self.first.map(|(mut at, x)| {
            let places: Vec<usize> = shape
                .iter()
                .map(|length| {
                    let place = at % length;
                    at /= length;
                    place
                })
                .collect();
            let by_rows = shape.iter().zip(&places);
            (by_rows.fold(0, |at, (length, place)| at * length + place), x)
        });
        Refused { first, ..self }
    }
    /// Both together, whichever was found sooner.
    pub(crate) fn and(self, other: Refused) -> Refused {
        let first = match (self.first, other.first) {
            (Some(a), Some(b)) => Some(if a.0 <= b.0 { a } else { b }),
            (a, b) => a.or(b),
        };
        Refused { count: self.count + other.count, first }
    }
}

/// Figures that are looked over at a time: those in which nothing is wrong cost no second look.
const BLOCK: usize = 512;

impl Change {
    /// The change from one unit to another of the same kind.
    pub(crate) fn between(from: &'static Unit, to: &'static Unit) -> Change {
        use Step::{Down, Over, Per, Times, Up};
        let step = match (from.form, to.form) {
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
        };
        Change { step, from, to, above_zero: from.is_indirect() || to.is_indirect() }
    }
    /// True where the figures stay what they are.
    pub(crate) fn is_none(self) -> bool {
        self.from == self.to
    }
    #[inline]
    pub(crate) fn of(self, x: f64) -> f64 {
        match self.step {
            Step::Times(k) => x * k,
            Step::Per(k) => x / k,
            Step::Over(k) => k / x,
            Step::Down(zero, degrees) => (x - zero) / degrees,
            Step::Up(zero, degrees) => x * degrees + zero,
        }
    }
    /// True where a figure can be changed into another; a missing one stays missing.
    #[inline]
    fn takes(self, x: f64, y: f64) -> bool {
        (y.is_finite() && x.is_finite() && !(self.above_zero && x <= 0.0)) || x.is_nan()
    }
    /// One figure, or why it has none.
    #[inline]
    pub(crate) fn one(self, x: f64) -> PyResult<f64> {
        let y = self.of(x);
        if self.takes(x, y) { Ok(y) } else { Err(RangeError::new_err(self.fault(x))) }
    }
    /// Why a figure is refused.
    fn fault(self, x: f64) -> String {
        let (from, to) = (self.from.symbol, self.to.symbol);
        let given = print::with_unit(x, from);
        if x.is_infinite() {
            return format!("{given} is not possible; write a finite number");
        }
        if self.above_zero && x <= 0.0 {
            let kind = self.from.kind.words();
            return format!("{given} is not possible for a {kind} in {to}; it must be more than 0");
        }
        format!("{given} has no finite value in {to}; it is too large or too small")
    }
    /// Applied to a column of figures, into another. What is refused becomes missing (NaN).
    pub(crate) fn fill(self, from: &[f64], to: &mut [f64]) -> Refused {
        // The choice outside of the loop, so that the loop is one instruction for several figures.
        match self.step {
            Step::Times(1.0) => self.each(from, to, |x| x),
            Step::Times(k) => self.each(from, to, |x| x * k),
            Step::Per(k) => self.each(from, to, |x| x / k),
            Step::Over(k) => self.each(from, to, |x| k / x),
            _ => self.each(from, to, |x| self.of(x)),
        }
    }
    #[inline(always)]
    fn each(self, from: &[f64], to: &mut [f64], change: impl Fn(f64) -> f64) -> Refused {
        let mut refused = Refused::default();
        let least = if self.above_zero { f64::MIN_POSITIVE } else { f64::MIN };
        let blocks = from.chunks(BLOCK).zip(to.chunks_mut(BLOCK)).enumerate();
        for (block, (from, to)) in blocks {
            let mut wrong = 0_u64;
            for (x, y) in from.iter().zip(&mut *to) {
                *y = change(*x);
                // Without a branch, so that several values are looked at in one instruction.
                let beyond = [*x < least, *x > f64::MAX, y.abs() > f64::MAX];
                wrong |= beyond.map(u64::from).into_iter().fold(0, |a, b| a | b);
            }
            if wrong == 0 {
                continue;
            }
            for (at, (x, y)) in from.iter().zip(to).enumerate() {
                if !self.takes(*x, *y) {
                    refused.add(block * BLOCK + at, *x);
                    *y = f64::NAN;
                }
            }
        }
        refused
    }
    /// Applied to a column of figures in their place.
    pub(crate) fn turn(self, figures: &mut [f64]) -> Refused {
        let mut before = [0.0; BLOCK];
        let mut refused = Refused::default();
        for (block, part) in figures.chunks_mut(BLOCK).enumerate() {
            let before = &mut before[..part.len()];
            before.copy_from_slice(part);
            refused = refused.and(self.fill(before, part).from(block * BLOCK));
        }
        refused
    }
    /// Applied to an array, into a new one of the same shape.
    pub(crate) fn array<'py>(
        self,
        array: &Bound<'py, PyArrayDyn<f64>>,
    ) -> PyResult<(Bound<'py, PyArrayDyn<f64>>, Refused)> {
        let read = array.readonly();
        let from = rows(&read);
        let mut to = vec![0.0; from.len()];
        let refused = self.fill(&from, &mut to);
        let made = PyArray1::from_vec(array.py(), to).reshape(array.shape().to_vec())?;
        Ok((made, refused))
    }
    /// Applied to an array with nothing refused: who asks looks over the figures himself.
    pub(crate) fn raw<'py>(
        self,
        array: &Bound<'py, PyArrayDyn<f64>>,
    ) -> PyResult<Bound<'py, PyArrayDyn<f64>>> {
        let read = array.readonly();
        let made = rows(&read).iter().map(|x| self.of(*x)).collect();
        PyArray1::from_vec(array.py(), made).reshape(array.shape().to_vec())
    }
    /// Applied to figures in any container. What a single figure is refused for is missing (NaN) in a
    /// column, and a warning says so.
    pub(crate) fn convert<'py>(self, values: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        match Figures::of(values)? {
            Figures::One(x) => Ok(PyFloat::new(values.py(), self.one(x)?).into_any()),
            Figures::Many(array) => {
                let (made, refused) = self.array(&array)?;
                self.tell(values.py(), refused, array.shape(), Some(values))?;
                in_kind(made.into_any(), values)
            }
        }
    }
    /// Warns of what was refused in a column.
    pub(crate) fn tell(
        self,
        py: Python<'_>,
        refused: Refused,
        shape: &[usize],
        like: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<()> {
        let Some((at, x)) = refused.first else { return Ok(()) };
        let of: usize = shape.iter().product();
        let from = self.from.symbol;
        let into = if self.is_none() { String::new() } else { format!(" to {}", self.to.symbol) };
        warn(
            py,
            vec![format!(
                "{} of {of} values in {from} cannot be taken{into} (NaN), the first in {}: {}",
                refused.count,
                place(at, shape, like),
                self.fault(x)
            )],
        )
    }
}

/// Numbers in one unit, in another of the same kind.
///
/// A number gives a number, an array an array, a Series a Series, a list a list. NaN stays NaN. What
/// has no value there, such as a count of 0, is refused; in a column it is NaN and a warning says so. With
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
        return Ok(PyFloat::new(values.py(), change.one(x.value())?).into_any());
    }
    in_dtype(change.convert(values)?, values)
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
    let [from, to] = [text_of(from_unit, "from_unit")?, text_of(to_unit, "to_unit")?];
    let (from, to) = pair(&from, &to).or_raise()?;
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
