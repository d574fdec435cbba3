//! What is computed with quantities, and what is refused.

use hankwise::quantity::{Kind, bare_number};
use numpy::{PyArrayMethods, PyUntypedArrayMethods};
use pyo3::exceptions::{PyTypeError, PyZeroDivisionError};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyFloat, PyTuple};

use crate::call::warn;
use crate::columns::{Figures, in_kind, no_numbers, place, rows, scalar};
use crate::convert::Change;
use crate::errors::{NotationError, OrRaise, UnitError};
use crate::foreign::foreign;
use crate::quantity::Quantity;

/// NumPy's mean and sum ask for an axis, a dtype and a place, all of them None where all is meant.
pub(crate) fn of_all(asked: [Option<Py<PyAny>>; 3]) -> PyResult<()> {
    if asked.iter().any(Option::is_some) {
        return Err(PyTypeError::new_err(
            "what is asked of a quantity is of all its values; for others use .number(unit)",
        ));
    }
    Ok(())
}

impl Quantity {
    pub(crate) fn refuse_sum(&self, what: &str) -> PyErr {
        if self.kind != Kind::LinearDensity {
            return UnitError::new_err(format!(
                "{what} in {} would be of reciprocals; compute in the base unit: .to('{}')",
                self.unit.symbol,
                self.kind.base()
            ));
        }
        UnitError::new_err(format!(
            "{what} of indirect counts ({}) can be meant in several ways: for ends folded together use \
             hankwise.yarn.fold, for the mean of equal lengths hankwise.yarn.mean_by_length, for the \
             mean of equal masses hankwise.yarn.mean_by_mass, or compute in tex: .to('tex')",
            self.unit.symbol
        ))
    }
    /// Refuses to compute with temperatures: twice 20 °C is not a temperature, and what lies between two
    /// of them is none either.
    pub(crate) fn is_no_point(&self, what: &str) -> PyResult<()> {
        if self.unit.kind != Kind::Temperature {
            return Ok(());
        }
        Err(UnitError::new_err(format!(
            "{what} of temperatures depends on where their scale has its zero; compute with the \
             numbers, .number('{}')",
            self.unit.symbol
        )))
    }
    /// Refuses an indirect count on either side.
    pub(crate) fn can_be_summed(&self, other: &Bound<'_, PyAny>, what: &str) -> PyResult<()> {
        self.is_no_point(what)?;
        // A sum begins with 0.
        let is_bare = other.extract::<f64>().is_ok_and(|x| x != 0.0);
        if self.unit.is_indirect() && !is_bare {
            return Err(self.refuse_sum(what));
        }
        match other.cast::<Quantity>() {
            Ok(other)
                if other.get().unit.is_indirect() && other.get().unit.kind == self.unit.kind =>
            {
                Err(other.get().refuse_sum(what))
            }
            _ => Ok(()),
        }
    }
    /// The other member of a sum or difference in this one's unit, and the kind of what comes out. To a
    /// share one may add a number below 1, or 1 for the whole: the rest of it is `1 - x`.
    pub(crate) fn term<'py>(
        &self,
        py: Python<'py>,
        other: &Bound<'py, PyAny>,
        what: &str,
    ) -> PyResult<(Bound<'py, PyAny>, Kind)> {
        if self.unit.kind == Kind::Fraction
            && let Some(x) = scalar(other)
        {
            // A sum of several begins with 0, which says nothing of what they are shares of.
            let kind = if x == 0.0 { self.kind } else { Kind::Fraction };
            let whole = if x.abs().total_cmp(&1.0).is_eq() {
                Ok(())
            } else {
                bare_number(x, self.kind).map(|_| ())
            };
            whole.or_raise()?;
            return Ok((PyFloat::new(py, self.unit.from_base(x)).into_any(), kind));
        }
        let number = self.in_my_unit(py, other, what)?;
        let theirs = other.cast::<Quantity>().map_or(self.kind, |other| other.get().kind);
        Ok((number, self.kind.with(theirs, what).or_raise()?))
    }
    /// Another quantity's numbers in this one's unit.
    pub(crate) fn in_my_unit<'py>(
        &self,
        py: Python<'py>,
        other: &Bound<'py, PyAny>,
        what: &str,
    ) -> PyResult<Bound<'py, PyAny>> {
        let Ok(other) = other.cast::<Quantity>() else {
            return Err(UnitError::new_err(format!(
                "cannot take {what} of a {} and {other:?}, which has no unit; write it like hankwise.q('{}')",
                self.name(),
                self.kind.example()
            )));
        };
        let other = other.get();
        if matches!(
            (self.unit.kind, other.unit.kind),
            (Kind::Mass, Kind::Length) | (Kind::Length, Kind::Mass)
        ) {
            return Err(UnitError::new_err(format!(
                "cannot take {what} of a {} and a {}: they are of different kinds; for a count use \
                 hankwise.yarn.count_of(length, mass)",
                self.name(),
                other.name()
            )));
        }
        if other.unit.kind != self.unit.kind {
            return Err(UnitError::new_err(format!(
                "cannot take {what} of a {} and a {}: they are of different kinds",
                self.name(),
                other.name()
            )));
        }
        Change::between(other.unit, self.unit).convert(other.number.bind(py))
    }
    /// The message where a plain number or an array of them is needed.
    pub(crate) fn no_number(&self) -> PyErr {
        PyTypeError::new_err(format!(
            "a {} is not a plain number; say in which unit: .number('{}')",
            self.name(),
            self.unit.symbol
        ))
    }
    pub(crate) fn no_places(&self) -> PyErr {
        PyTypeError::new_err(format!(
            "a single quantity has no places; its number is .number('{}')",
            self.unit.symbol
        ))
    }
    /// The figures, where there are several.
    pub(crate) fn places<'py>(&self, py: Python<'py>) -> PyResult<&Bound<'py, PyAny>> {
        if self.one(py).is_some() {
            return Err(self.no_places());
        }
        Ok(self.number.bind(py))
    }
    /// Some of the figures, or what was found of them, in the unit.
    pub(crate) fn part(&self, py: Python<'_>, part: Bound<'_, PyAny>) -> Quantity {
        let part = match scalar(&part) {
            Some(x) => PyFloat::new(py, x).into_any(),
            None => part,
        };
        self.like(py, part)
    }
    /// The figures of all columns of a table; a Series or an array as it is.
    pub(crate) fn column<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let number = self.places(py)?;
        if number.hasattr("columns")? {
            number.call_method0("to_numpy")
        } else {
            Ok(number.clone())
        }
    }
    pub(crate) fn end(
        &self,
        py: Python<'_>,
        which: &str,
        asked: [Option<Py<PyAny>>; 3],
    ) -> PyResult<Quantity> {
        of_all(asked)?;
        if self.unit.is_indirect() {
            return Err(self.refuse_order());
        }
        let figures = self.column(py)?;
        if figures.getattr("size")?.extract::<usize>()? == 0 {
            return Err(NotationError::new_err(format!("there is no {which} of no values")));
        }
        Ok(self.part(py, figures.call_method0(which)?))
    }
    /// The figures divided by those of a column. What is divided by zero is missing (NaN), and a warning
    /// says so, as the division of a single figure is refused.
    pub(crate) fn divided<'py>(
        &self,
        py: Python<'py>,
        by: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let Figures::Many(array) = Figures::of(by)? else { return Err(no_numbers(by)) };
        let read = array.readonly();
        let divisors = rows(&read);
        let number = self.number.bind(py);
        let Some(first) = divisors.iter().position(|x| *x == 0.0) else { return number.div(by) };
        warn(
            py,
            vec![format!(
                "{} of {} values are divided by zero (NaN), the first in {}",
                divisors.iter().filter(|x| **x == 0.0).count(),
                divisors.len(),
                place(first, array.shape(), Some(by))
            )],
        )?;
        let whole = divisors.iter().map(|x| if *x == 0.0 { f64::NAN } else { *x }).collect();
        let whole = numpy::PyArray1::from_vec(py, whole).reshape(array.shape().to_vec())?;
        number.div(in_kind(whole.into_any(), by)?)
    }
    pub(crate) fn refuse_order(&self) -> PyErr {
        UnitError::new_err(format!(
            "a larger indirect count ({}) is a finer yarn, so 'less' can be meant both ways; compare in tex: .to('tex')",
            self.unit.symbol
        ))
    }
    pub(crate) fn scaled<'py>(
        &self,
        py: Python<'py>,
        by: &Bound<'py, PyAny>,
        times: bool,
    ) -> PyResult<Quantity> {
        self.is_no_point("a multiple")?;
        if self.unit.is_indirect() {
            return Err(UnitError::new_err(format!(
                "{} {} can mean {0} as thick or {0} the number; for ends folded together use \
                 hankwise.yarn.fold_alike, else compute in tex, .to('tex'), or with the number, .number('{}')",
                if times { "twice" } else { "half" },
                self.text(py)?,
                self.unit.symbol
            )));
        }
        if by.cast::<Quantity>().is_ok() {
            return Err(UnitError::new_err(format!(
                "the product of a {} and a {} has no unit here; use the formula that is meant, see hankwise.formulas",
                self.name(),
                by.cast::<Quantity>()?.get().name()
            )));
        }
        let number = self.number.bind(py);
        let by = match scalar(by) {
            Some(0.0) if !times => {
                return Err(PyZeroDivisionError::new_err("a quantity divided by zero"));
            }
            Some(_) => by.clone(),
            None if foreign(by).is_some() || !by.hasattr("__array__")? => {
                return Err(no_numbers(by));
            }
            // Plain floats: those of pandas that may be missing give an array of another kind.
            None => match Figures::of(by)? {
                Figures::One(x) => PyFloat::new(py, x).into_any(),
                Figures::Many(array) => in_kind(array.into_any(), by)?,
            },
        };
        if !times && scalar(&by).is_none() {
            return Ok(self.like(py, self.divided(py, &by)?));
        }
        Ok(self.like(py, if times { number.mul(by)? } else { number.div(by)? }))
    }
    /// A function of NumPy that has a meaning with units too; for others, what to write.
    pub(crate) fn in_numpy<'py>(
        &self,
        py: Python<'py>,
        ufunc: &Bound<'py, PyAny>,
        method: &str,
        inputs: &Bound<'py, PyTuple>,
        kwargs: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let name: String = ufunc.getattr("__name__")?.extract()?;
        let operator = match name.as_str() {
            "add" => "add",
            "subtract" => "sub",
            "multiply" => "mul",
            "divide" | "true_divide" => "truediv",
            "negative" => "neg",
            "absolute" => "abs",
            "less" => "lt",
            "less_equal" => "le",
            "greater" => "gt",
            "greater_equal" => "ge",
            "equal" => "eq",
            "not_equal" => "ne",
            _ => {
                return Err(PyTypeError::new_err(format!(
                    "numpy.{name} knows no units; say in which unit its numbers are meant: \
                     .number('{}')",
                    self.unit.symbol
                )));
            }
        };
        if method != "__call__" || kwargs.is_some_and(|kwargs| !kwargs.is_empty()) {
            return Err(self.no_number());
        }
        // Where the array stands first, Python would hand it to NumPy again.
        let (first, mirrored) = (
            inputs.get_item(0)?,
            match operator {
                "lt" => "__gt__",
                "le" => "__ge__",
                "gt" => "__lt__",
                "ge" => "__le__",
                "eq" => "__eq__",
                "ne" => "__ne__",
                "add" => "__radd__",
                "sub" => "__rsub__",
                "mul" => "__rmul__",
                _ => "",
            },
        );
        if first.cast::<Quantity>().is_err() {
            let other = inputs.get_item(1)?;
            if mirrored.is_empty() {
                return Err(PyTypeError::new_err(format!(
                    "numbers without a unit stand before a {}; say in which unit it is meant: \
                     .number('{}')",
                    self.name(),
                    self.unit.symbol
                )));
            }
            return other.call_method1(mirrored, (first,));
        }
        py.import("operator")?.getattr(operator)?.call1(inputs)
    }
}
