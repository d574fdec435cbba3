//! A number or an array with its unit.

use hankwise::quantity::{self, Amount, Kind, Unit, print};
use hankwise::source::Basis;
use pyo3::exceptions::{PyTypeError, PyZeroDivisionError};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyFloat, PyIterator, PyList, PyString, PyTuple};

use crate::arithmetic::of_all;
use crate::attributes::dict;
use crate::columns::{Figures, scalar};
use crate::convert::Change;
use crate::errors::{OrRaise, UnitError, raise};
use crate::text::Text;

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
    pub(crate) fn name(&self) -> &'static str {
        self.kind.words()
    }
    /// This one's unit and the one with a name: a length may go on as a diameter.
    fn towards(&self, unit: &str) -> PyResult<(&'static Unit, &'static Unit)> {
        match quantity::unit_to(unit, self.kind) {
            Ok(to) => Ok((self.unit, to)),
            Err(error) => quantity::pair(self.unit.symbol, unit).map_err(|_| raise(&error)),
        }
    }
    pub(crate) fn text(&self, py: Python<'_>) -> PyResult<String> {
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
    pub(crate) fn like(&self, py: Python<'_>, number: Bound<'_, PyAny>) -> Quantity {
        let _ = py;
        Quantity { number: number.unbind(), unit: self.unit, kind: self.kind, text: None }
    }
    /// The same quantity in another unit.
    pub(crate) fn to(&self, py: Python<'_>, unit: &str) -> PyResult<Quantity> {
        let (from, to) = self.towards(unit)?;
        let number = Change::between(from, to).convert(self.number.bind(py))?;
        let kind = if to.kind == self.unit.kind { self.kind } else { to.kind };
        Ok(Quantity { number: number.unbind(), unit: to, kind, text: None })
    }
}

#[pymethods]
impl Quantity {
    /// The same quantity in another unit.
    #[pyo3(name = "to", signature = (unit, /))]
    fn to_unit(&self, py: Python<'_>, unit: Text) -> PyResult<Quantity> {
        self.to(py, unit.named("unit")?)
    }

    /// The number in a unit: a float, an array or a Series.
    #[pyo3(signature = (unit, /))]
    fn number<'py>(&self, py: Python<'py>, unit: Text) -> PyResult<Bound<'py, PyAny>> {
        let unit = unit.named("unit")?;
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
            return match scalar(&other) {
                Some(0.0) => Err(PyZeroDivisionError::new_err("a quantity divided by zero")),
                Some(_) => self.number.bind(py).div(other),
                None => self.divided(py, &other),
            };
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
            None => Ok(self.part(py, self.column(py)?.call_method0("mean")?)),
        }
    }
    /// The greatest; refused for indirect counts, of which the greatest is the finest.
    #[pyo3(signature = (axis=None, out=None), text_signature = "($self)")]
    fn max(
        &self,
        py: Python<'_>,
        axis: Option<Py<PyAny>>,
        out: Option<Py<PyAny>>,
    ) -> PyResult<Quantity> {
        self.end(py, "max", [axis, out, None])
    }
    /// The least; refused for indirect counts, of which the least is the thickest.
    #[pyo3(signature = (axis=None, out=None), text_signature = "($self)")]
    fn min(
        &self,
        py: Python<'_>,
        axis: Option<Py<PyAny>>,
        out: Option<Py<PyAny>>,
    ) -> PyResult<Quantity> {
        self.end(py, "min", [axis, out, None])
    }
    /// The standard deviation of a sample, over n − 1; with `ddof=0` that of all there are, over n.
    /// Refused for indirect counts.
    #[pyo3(signature = (axis=None, dtype=None, out=None, ddof=1), text_signature = "($self, *, ddof=1)")]
    fn std(
        &self,
        py: Python<'_>,
        axis: Option<Py<PyAny>>,
        dtype: Option<Py<PyAny>>,
        out: Option<Py<PyAny>>,
        ddof: u32,
    ) -> PyResult<Quantity> {
        of_all([axis, dtype, out])?;
        self.is_no_point("a standard deviation")?;
        if self.unit.is_indirect() {
            return Err(self.refuse_sum("a standard deviation"));
        }
        let known = dict!(py, { "ddof": ddof });
        let figures = self.column(py)?;
        Ok(self.part(py, figures.call_method("std", (), Some(&known))?))
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
            None => Ok(self.part(py, self.column(py)?.call_method0("sum")?)),
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
            return Err(self.refuse_order());
        }
        self.number.bind(py).rich_compare(other, op)
    }
    fn __hash__(&self) -> PyResult<isize> {
        Err(PyTypeError::new_err(
            "a Quantity has no hash: equal quantities may be in different units",
        ))
    }
    fn __float__(&self) -> PyResult<f64> {
        Err(self.no_number())
    }
    fn __bool__(&self) -> PyResult<bool> {
        Err(PyTypeError::new_err("a quantity is neither true nor false; compare it with another"))
    }
    fn __len__(&self, py: Python<'_>) -> PyResult<usize> {
        self.places(py)?.len()
    }
    fn __getitem__<'py>(&self, py: Python<'py>, key: &Bound<'py, PyAny>) -> PyResult<Quantity> {
        Ok(self.part(py, self.places(py)?.get_item(key)?))
    }
    /// The figures one after another, each with the unit.
    fn __iter__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyIterator>> {
        let figures = match Figures::of(self.places(py)?)? {
            Figures::Many(array) => array.into_any(),
            Figures::One(_) => return Err(self.no_places()),
        };
        let mut all = Vec::new();
        for part in figures.try_iter()? {
            all.push(self.part(py, part?));
        }
        PyList::new(py, all)?.try_iter()
    }
    fn __abs__(&self, py: Python<'_>) -> PyResult<Quantity> {
        Ok(self.like(py, self.number.bind(py).abs()?))
    }
    fn __neg__(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.scaled(py, PyFloat::new(py, -1.0).as_any(), true)
    }
    #[pyo3(signature = (digits=None))]
    fn __round__(&self, py: Python<'_>, digits: Option<i32>) -> PyResult<Quantity> {
        self.round(py, digits.unwrap_or(0), None)
    }
    /// The same with its numbers rounded, in the unit that it has.
    #[pyo3(signature = (decimals=0, out=None), text_signature = "($self, decimals=0)")]
    fn round(&self, py: Python<'_>, decimals: i32, out: Option<Py<PyAny>>) -> PyResult<Quantity> {
        of_all([out, None, None])?;
        let number = self.number.bind(py);
        let rounded = match self.one(py) {
            Some(_) => number.call_method1("__round__", (decimals,))?,
            None => number.call_method1("round", (decimals,))?,
        };
        Ok(self.like(py, rounded))
    }
    /// An array has no unit: whoever wants one says in which unit.
    #[pyo3(signature = (dtype=None, copy=None))]
    fn __array__(&self, dtype: Option<Py<PyAny>>, copy: Option<Py<PyAny>>) -> PyResult<Py<PyAny>> {
        let _ = (dtype, copy);
        Err(self.no_number())
    }
    /// NumPy leaves arithmetic with a quantity to the quantity; for what has a meaning with numbers alone
    /// it says what to write.
    #[pyo3(signature = (ufunc, method, *inputs, **kwargs))]
    fn __array_ufunc__<'py>(
        &self,
        py: Python<'py>,
        ufunc: &Bound<'py, PyAny>,
        method: &str,
        inputs: &Bound<'py, PyTuple>,
        kwargs: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Bound<'py, PyAny>> {
        self.in_numpy(py, ufunc, method, inputs, kwargs)
    }
    /// pandas leaves arithmetic with a quantity to the quantity, as it does with its own tables.
    #[classattr]
    fn __pandas_priority__() -> u32 {
        10_000
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
        unit: Text,
        kind: Text,
        text: Option<Text>,
        own: Option<Text>,
    ) -> PyResult<Quantity> {
        let unit = unit.named("unit")?;
        let kind = kind.named("kind")?;
        let text = Text::owned(text.as_ref(), "text")?;
        let own = Text::option(own.as_ref(), "own")?;
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
    fn __format__(&self, py: Python<'_>, spec: Text) -> PyResult<String> {
        let spec = spec.named("spec")?;
        if spec.is_empty() {
            return self.text(py);
        }
        let number = self.number.bind(py);
        let number: String = if self.one(py).is_some() {
            number.call_method1("__format__", (spec,))?.extract()?
        } else {
            let each = PyString::new(py, &format!("{{:{spec}}}")).getattr("format")?;
            // A wrong format is refused as that of a single figure.
            each.call1((0.0,))?;
            let Figures::Many(array) = Figures::of(number)? else { return Err(self.no_places()) };
            let known = dict!(py, { "formatter": dict!(py, { "float_kind": each }) });
            let numpy = py.import("numpy")?;
            numpy.getattr("array2string")?.call((array,), Some(&known))?.extract()?
        };
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
