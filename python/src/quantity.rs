//! A number or an array with its unit.

use hankwise::quantity::{self, Amount, Kind, Unit, print};
use hankwise::source::Basis;
use pyo3::exceptions::{PyTypeError, PyZeroDivisionError};
use pyo3::prelude::*;
use pyo3::types::PyFloat;

use crate::columns::{is_numeric, no_numbers, scalar};
use crate::convert::Change;
use crate::errors::{OrRaise, UnitError, raise};

/// A number, or an array of numbers, with its unit.
///
/// Make one with `hankwise.q`. It does not change.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct Quantity {
    /// A float, or an array or Series of floats.
    pub(crate) number: Py<PyAny>,
    pub(crate) unit: &'static Unit,
    pub(crate) kind: Kind,
    /// As it was typed.
    pub(crate) text: Option<String>,
}

/// What a pickle keeps: number, unit, kind, text, and the definition of a unit of one's own.
type State = (Py<PyAny>, &'static str, &'static str, Option<String>, Option<&'static str>);

impl Quantity {
    pub(crate) fn scalar(py: Python<'_>, number: f64, unit: &'static Unit, kind: Kind) -> Quantity {
        Quantity { number: PyFloat::new(py, number).into_any().unbind(), unit, kind, text: None }
    }
    pub(crate) fn from_amount(py: Python<'_>, amount: Amount, text: Option<String>) -> Quantity {
        Quantity { text, ..Quantity::scalar(py, amount.number, amount.unit, amount.unit.kind) }
    }
    /// The figure, where it is one.
    pub(crate) fn one(&self, py: Python<'_>) -> Option<f64> {
        scalar(self.number.bind(py))
    }
    fn name(&self) -> &'static str {
        self.kind.words()
    }
    /// This one's unit and the one with a name: a length may go on as a diameter.
    fn towards(&self, unit: &str) -> PyResult<(&'static Unit, &'static Unit)> {
        match quantity::unit_to(unit, self.kind) {
            Ok(to) => Ok((self.unit, to)),
            Err(error) => quantity::pair(self.unit.symbol, unit).map_err(|_| raise(&error)),
        }
    }
    fn refuse_sum(&self, what: &str) -> PyErr {
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
    /// Refuses to compute with temperatures: twice 20 °C is no temperature, and what lies between two
    /// of them is none either.
    fn is_no_point(&self, what: &str) -> PyResult<()> {
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
    fn can_be_summed(&self, other: &Bound<'_, PyAny>, what: &str) -> PyResult<()> {
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
    fn text(&self, py: Python<'_>) -> PyResult<String> {
        if let Some(text) = &self.text {
            return Ok(text.clone());
        }
        match self.one(py) {
            // A share that was computed is said in percent.
            Some(x) if self.unit.symbol == "fraction" => Ok(print::of_kind(x, Kind::Fraction)),
            Some(x) => Ok(print::with_unit(x, self.unit.symbol)),
            None => Ok(format!("{} {}", self.number.bind(py).str()?, self.unit.symbol)),
        }
    }
    fn like(&self, py: Python<'_>, number: Bound<'_, PyAny>) -> Quantity {
        let _ = py;
        Quantity { number: number.unbind(), unit: self.unit, kind: self.kind, text: None }
    }
    /// The other member of a sum or difference in this one's unit, and the kind of what comes out. To a
    /// share one may add a number below 1, or 1 for the whole: the rest of it is `1 - x`.
    fn term<'py>(
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
                quantity::bare_number(x, self.kind).map(|_| ())
            };
            whole.or_raise()?;
            return Ok((PyFloat::new(py, self.unit.from_base(x)).into_any(), kind));
        }
        let number = self.in_my_unit(py, other, what)?;
        let theirs = other.cast::<Quantity>().map_or(self.kind, |other| other.get().kind);
        Ok((number, self.kind.with(theirs, what).or_raise()?))
    }
    /// Another quantity's numbers in this one's unit.
    fn in_my_unit<'py>(
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
}

#[pymethods]
impl Quantity {
    /// The same quantity in another unit.
    #[pyo3(signature = (unit, /))]
    pub(crate) fn to(&self, py: Python<'_>, unit: &str) -> PyResult<Quantity> {
        let (from, to) = self.towards(unit)?;
        let number = Change::between(from, to).convert(self.number.bind(py))?;
        let kind = if to.kind == self.unit.kind { self.kind } else { to.kind };
        Ok(Quantity { number: number.unbind(), unit: to, kind, text: None })
    }

    /// The number in a unit: a float, an array or a Series.
    #[pyo3(signature = (unit, /))]
    fn number<'py>(&self, py: Python<'py>, unit: &str) -> PyResult<Bound<'py, PyAny>> {
        let (from, to) = self.towards(unit)?;
        Change::between(from, to).convert(self.number.bind(py))
    }

    /// The unit, as it is printed.
    #[getter]
    fn unit(&self) -> &'static str {
        self.unit.symbol
    }

    /// The kind of quantity, such as "twist".
    #[getter]
    fn kind(&self) -> &'static str {
        self.kind.words()
    }

    fn __add__<'py>(&self, py: Python<'py>, other: &Bound<'py, PyAny>) -> PyResult<Quantity> {
        self.can_be_summed(other, "a sum")?;
        let (other, kind) = self.term(py, other, "a sum")?;
        Ok(Quantity { kind, ..self.like(py, self.number.bind(py).add(other)?) })
    }
    fn __radd__<'py>(&self, py: Python<'py>, other: &Bound<'py, PyAny>) -> PyResult<Quantity> {
        self.__add__(py, other)
    }
    fn __sub__<'py>(&self, py: Python<'py>, other: &Bound<'py, PyAny>) -> PyResult<Quantity> {
        self.can_be_summed(other, "a difference")?;
        let (other, kind) = self.term(py, other, "a difference")?;
        Ok(Quantity { kind, ..self.like(py, self.number.bind(py).sub(other)?) })
    }
    fn __rsub__<'py>(&self, py: Python<'py>, other: &Bound<'py, PyAny>) -> PyResult<Quantity> {
        self.can_be_summed(other, "a difference")?;
        let (other, kind) = self.term(py, other, "a difference")?;
        Ok(Quantity { kind, ..self.like(py, other.sub(self.number.bind(py))?) })
    }
    fn __mul__<'py>(&self, py: Python<'py>, other: &Bound<'py, PyAny>) -> PyResult<Quantity> {
        self.scaled(py, other, true)
    }
    fn __rmul__<'py>(&self, py: Python<'py>, other: &Bound<'py, PyAny>) -> PyResult<Quantity> {
        self.scaled(py, other, true)
    }
    fn __truediv__<'py>(
        &self,
        py: Python<'py>,
        other: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        self.is_no_point("a ratio")?;
        if other.cast::<Quantity>().is_ok() {
            if self.unit.is_indirect() {
                return Err(UnitError::new_err(format!(
                    "a ratio of indirect counts ({}) can mean twice as thick or twice the number; \
                     divide their numbers, .number('{0}'), or the counts in tex, .to('tex')",
                    self.unit.symbol
                )));
            }
            let other = self.in_my_unit(py, other, "a ratio")?;
            return self.number.bind(py).div(other);
        }
        Ok(Bound::new(py, self.scaled(py, other, false)?)?.into_any())
    }

    /// The mean; refused for indirect counts, which have more than one.
    #[pyo3(signature = (axis=None, dtype=None, out=None), text_signature = "($self)")]
    fn mean(
        &self,
        py: Python<'_>,
        axis: Option<Py<PyAny>>,
        dtype: Option<Py<PyAny>>,
        out: Option<Py<PyAny>>,
    ) -> PyResult<Quantity> {
        of_all([axis, dtype, out])?;
        if self.unit.is_indirect() {
            return Err(self.refuse_sum("a mean"));
        }
        match self.one(py) {
            Some(x) => Ok(Quantity::scalar(py, x, self.unit, self.kind)),
            None => Ok(self.like(py, self.number.bind(py).call_method0("mean")?)),
        }
    }
    /// The sum; refused for indirect counts.
    #[pyo3(signature = (axis=None, dtype=None, out=None), text_signature = "($self)")]
    fn sum(
        &self,
        py: Python<'_>,
        axis: Option<Py<PyAny>>,
        dtype: Option<Py<PyAny>>,
        out: Option<Py<PyAny>>,
    ) -> PyResult<Quantity> {
        of_all([axis, dtype, out])?;
        self.is_no_point("a sum")?;
        if self.unit.is_indirect() {
            return Err(self.refuse_sum("a sum"));
        }
        match self.one(py) {
            Some(x) => Ok(Quantity::scalar(py, x, self.unit, self.kind)),
            None => Ok(self.like(py, self.number.bind(py).call_method0("sum")?)),
        }
    }

    fn __richcmp__<'py>(
        &self,
        py: Python<'py>,
        other: &Bound<'py, PyAny>,
        op: pyo3::basic::CompareOp,
    ) -> PyResult<Bound<'py, PyAny>> {
        use pyo3::basic::CompareOp::{Eq, Ge, Gt, Le, Lt, Ne};
        let same_kind = other.cast::<Quantity>().is_ok_and(|o| o.get().unit.kind == self.unit.kind);
        if !same_kind && matches!(op, Eq | Ne) {
            return Ok(matches!(op, Ne).into_pyobject(py)?.to_owned().into_any());
        }
        if let Ok(other) = other.cast::<Quantity>() {
            self.kind.comparable(other.get().kind, "a comparison").or_raise()?;
        }
        let other = self.in_my_unit(py, other, "a comparison")?;
        if self.unit.is_indirect() && matches!(op, Lt | Le | Gt | Ge) {
            return Err(UnitError::new_err(format!(
                "a larger indirect count ({}) is a finer yarn, so 'less' can be meant both ways; compare in tex: .to('tex')",
                self.unit.symbol
            )));
        }
        self.number.bind(py).rich_compare(other, op)
    }
    fn __hash__(&self) -> PyResult<isize> {
        Err(PyTypeError::new_err(
            "a Quantity has no hash: equal quantities may be in different units",
        ))
    }
    fn __float__(&self) -> PyResult<f64> {
        Err(PyTypeError::new_err(format!(
            "a {} is not a plain number; say in which unit: .number('{}')",
            self.name(),
            self.unit.symbol
        )))
    }
    fn __bool__(&self) -> PyResult<bool> {
        Err(PyTypeError::new_err("a quantity is neither true nor false; compare it with another"))
    }
    fn __len__(&self, py: Python<'_>) -> PyResult<usize> {
        self.places(py)?.len()
    }
    fn __getitem__<'py>(&self, py: Python<'py>, key: &Bound<'py, PyAny>) -> PyResult<Quantity> {
        let part = self.places(py)?.get_item(key)?;
        let part = match scalar(&part) {
            Some(x) => PyFloat::new(py, x).into_any(),
            None => part,
        };
        Ok(self.like(py, part))
    }
    /// NumPy leaves arithmetic with a quantity to the quantity.
    #[classattr]
    fn __array_ufunc__() -> Option<bool> {
        None
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, State)> {
        let make = py.import("hankwise._hankwise")?.getattr("Quantity")?.getattr("_make")?;
        let own = (self.unit.basis() == Basis::Own).then_some(self.unit.definition);
        let number = self.number.clone_ref(py);
        Ok((make, (number, self.unit.symbol, self.kind.name(), self.text.clone(), own)))
    }
    #[staticmethod]
    #[pyo3(signature = (number, unit, kind, text, own=None))]
    fn _make(
        number: Py<PyAny>,
        unit: &str,
        kind: &str,
        text: Option<String>,
        own: Option<&str>,
    ) -> PyResult<Quantity> {
        let kind =
            Kind::named(kind).ok_or_else(|| PyTypeError::new_err("no such kind of quantity"))?;
        let found = quantity::unit(unit, Some(kind));
        if let Some(meant) = own
            && found.as_ref().map_or(true, |here| here.definition != meant)
        {
            let here = found.map_or("not known".to_owned(), |here| here.definition.to_owned());
            return Err(UnitError::new_err(format!(
                "the quantity was kept in a unit of somebody's own, '{unit}': {meant}; here it is \
                 {here}. Define it first as it was, with hankwise.define_count or \
                 hankwise.load_counts"
            )));
        }
        let unit = found.or_raise()?;
        Ok(Quantity { number, unit, kind, text })
    }
    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        Ok(format!("<{}: {}>", self.name(), self.text(py)?))
    }
    fn __str__(&self, py: Python<'_>) -> PyResult<String> {
        self.text(py)
    }
    fn __format__(&self, py: Python<'_>, spec: &str) -> PyResult<String> {
        if spec.is_empty() {
            return self.text(py);
        }
        let number = self.number.bind(py).call_method1("__format__", (spec,))?;
        let number: String = number.extract()?;
        Ok(if self.unit.symbol.is_empty() {
            number
        } else {
            format!("{number} {}", self.unit.symbol)
        })
    }
    fn _repr_html_(&self, py: Python<'_>) -> PyResult<String> {
        Ok(format!(
            "<span title=\"{}\">{}</span>",
            print::escape(self.name()),
            print::escape(&self.text(py)?)
        ))
    }
}

/// NumPy's mean and sum ask for an axis, a dtype and a place, all of them None where all is meant.
fn of_all(asked: [Option<Py<PyAny>>; 3]) -> PyResult<()> {
    if asked.iter().any(Option::is_some) {
        return Err(PyTypeError::new_err(
            "the mean and the sum of a quantity are of all its values; for others use .number(unit)",
        ));
    }
    Ok(())
}

impl Quantity {
    /// The figures, where there are several.
    fn places<'py>(&self, py: Python<'py>) -> PyResult<&Bound<'py, PyAny>> {
        if self.one(py).is_some() {
            return Err(PyTypeError::new_err("a single quantity has no places"));
        }
        Ok(self.number.bind(py))
    }
    fn scaled<'py>(
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
        if scalar(by).is_none() && !(by.hasattr("__array__")? && is_numeric(by)) {
            return Err(no_numbers(by));
        }
        let number = self.number.bind(py);
        if !times && scalar(by) == Some(0.0) {
            return Err(PyZeroDivisionError::new_err("a quantity divided by zero"));
        }
        Ok(self.like(py, if times { number.mul(by)? } else { number.div(by)? }))
    }
}
