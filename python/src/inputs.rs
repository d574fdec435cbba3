//! Reading the inputs of a formula: quantities, texts, plain numbers, arrays.

use std::sync::LazyLock;

use hankwise::formula as catalogue;
use hankwise::quantity::{self, Amount, Kind};
use hankwise::yarn;
use numpy::{PyArrayDyn, PyArrayMethods, PyUntypedArrayMethods};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{
    PyByteArray, PyBytes, PyIterator, PyList, PyMapping, PySequence, PyString, PyTuple,
};

use crate::columns::{Figures, is_masked, rows, shown};
use crate::errors::{NotationError, OrRaise, RangeError, UnitError, raise};
use crate::foreign::foreign;
use crate::quantity::Quantity;
use crate::text::text;
use crate::texts::{column_of_texts, texts};
use crate::yarn::Yarn;

/// One given input: a figure with its unit, or an array in the base unit.
pub(crate) enum Given<'py> {
    One(Amount, Option<String>),
    Many(Bound<'py, PyArrayDyn<f64>>, Bound<'py, PyAny>),
}

/// The inputs of one call, in the order of the card.
pub(crate) struct Call<'py> {
    pub(crate) given: Vec<Given<'py>>,
}

pub(crate) fn base_unit(kind: Kind) -> &'static quantity::Unit {
    static UNITS: LazyLock<Vec<&'static quantity::Unit>> = LazyLock::new(|| {
        let unit = |kind: &Kind| {
            let name = if kind.family() == Kind::Fraction { "fraction" } else { kind.base() };
            // Every base unit is in the table: a test of the crate looks each up.
            quantity::unit(name, Some(*kind)).unwrap_or_else(|e| unreachable!("{e}"))
        };
        Kind::ALL.iter().map(unit).collect()
    });
    UNITS[kind as usize]
}

/// What the figures of a column lie between.
#[derive(Clone, Copy)]
pub(crate) struct Extent {
    pub(crate) least: f64,
    pub(crate) most: f64,
    /// True where figures are missing (NaN).
    pub(crate) gaps: bool,
}

/// The least and the greatest figure of a column, missing ones (NaN) apart; of none, the least is
/// infinite and the greatest minus infinite.
pub(crate) fn extent(column: &[f64]) -> Extent {
    // Several at a time, which compares as fast as memory gives.
    const LANES: usize = 8;
    let (mut least, mut most) = ([f64::INFINITY; LANES], [f64::NEG_INFINITY; LANES]);
    let mut gaps = [0_u64; LANES];
    let (blocks, rest) = column.as_chunks::<LANES>();
    for block in blocks {
        for lane in 0..LANES {
            least[lane] = if block[lane] < least[lane] { block[lane] } else { least[lane] };
            most[lane] = if block[lane] > most[lane] { block[lane] } else { most[lane] };
            gaps[lane] |= u64::from(block[lane].is_nan());
        }
    }
    let all = |lanes: [f64; LANES]| rest.iter().copied().chain(lanes);
    Extent {
        least: all(least).fold(f64::INFINITY, f64::min),
        most: all(most).fold(f64::NEG_INFINITY, f64::max),
        gaps: gaps != [0; LANES] || rest.iter().any(|x| x.is_nan()),
    }
}

/// The first impossible figure of a column, by its row. A missing figure (NaN) is let through.
pub(crate) fn check_column(
    column: &[f64],
    Extent { least, most, .. }: Extent,
    input: &catalogue::Input,
    formula: &str,
    place: impl FnOnce(usize) -> String,
) -> PyResult<()> {
    let (low, high) = input.kind.possible();
    if least >= low && most <= high && most < f64::INFINITY {
        return Ok(());
    }
    let wrong =
        column.iter().position(|x| !(x.is_nan() || (*x >= low && *x <= high && x.is_finite())));
    match wrong {
        None => Ok(()),
        Some(row) => {
            let Err(error) = input.kind.check(column[row]) else { return Ok(()) };
            Err(raise(&error.at(format_args!("{formula}, {}, {}", input.name, place(row)))))
        }
    }
}

/// An error with the formula and the input in front.
pub(crate) fn locate(py: Python<'_>, formula: &str, input: &str, error: PyErr) -> PyErr {
    let value = error.value(py);
    let Ok(message) = value.str().and_then(|s| s.extract::<String>()) else { return error };
    if value.is_instance_of::<crate::errors::HankwiseError>() {
        let kind = value.get_type();
        return match kind.call1((format!("{formula}, {input}: {message}"),)) {
            Ok(new) => PyErr::from_value(new),
            Err(_) => error,
        };
    }
    if value.is_instance_of::<PyTypeError>() {
        return PyTypeError::new_err(format!("{formula}, {input}: {message}"));
    }
    error
}

/// The members of a list input: those of a list, an array, a Series, a generator, or of one quantity
/// that holds an array. A text or a set is none: a set has no order for others to go in step with.
pub(crate) fn members<'py>(
    value: &Bound<'py, PyAny>,
    name: &str,
    kind: Kind,
) -> PyResult<Vec<Bound<'py, PyAny>>> {
    if let Ok(list) = value.cast::<PyList>() {
        return Ok(list.iter().collect());
    }
    if let Ok(tuple) = value.cast::<PyTuple>() {
        return Ok(tuple.iter().collect());
    }
    if let Ok(quantity) = value.cast::<Quantity>()
        && let Figures::Many(array) = Figures::of(quantity.get().number.bind(value.py()))?
    {
        let Quantity { unit, kind, .. } = *quantity.get();
        return (0..array.as_any().len()?)
            .map(|place| {
                let number = array.get_item(place)?.unbind();
                Ok(Bound::new(value.py(), Quantity { number, unit, kind, text: None })?.into_any())
            })
            .collect();
    }
    if let Some(refused) = foreign(value) {
        return Err(refused);
    }
    if is_row(value) {
        return value.try_iter()?.collect();
    }
    let example = kind.example();
    Err(NotationError::new_err(format!(
        "write a list such as {name}=[\"{example}\", \"{example}\"], not {}",
        value.repr()?
    )))
}

/// True of what gives its members one after another in an order of its own, and is no table.
pub(crate) fn is_row(value: &Bound<'_, PyAny>) -> bool {
    if value.is_instance_of::<PyString>()
        || value.is_instance_of::<PyBytes>()
        || value.is_instance_of::<PyByteArray>()
        || value.cast::<Quantity>().is_ok()
    {
        return false;
    }
    if let Ok(dimensions) = value.getattr("ndim") {
        return dimensions.extract::<usize>().is_ok_and(|n| n == 1);
    }
    // Sets and dictionaries cannot be asked for their first, generators are their own iterator.
    let in_order = value.cast::<PySequence>().is_ok() || value.cast::<PyIterator>().is_ok();
    in_order && value.cast::<PyMapping>().is_err()
}

/// The unit of the same name and measure in another kind: a length in millimetres may be meant for
/// a diameter.
fn namesake(unit: &quantity::Unit, kind: Kind) -> Option<&'static quantity::Unit> {
    quantity::unit(unit.symbol, Some(kind)).ok().filter(|other| other.symbol == unit.symbol)
}

/// Reads one input of a kind.
pub(crate) fn one<'py>(value: &Bound<'py, PyAny>, kind: Kind) -> PyResult<Given<'py>> {
    let py = value.py();
    if let Ok(given) = value.cast::<Quantity>() {
        let given = given.get();
        given.kind.given_for(kind).or_raise()?;
        let unit = if given.unit.kind == kind.family() {
            given.unit
        } else if let Some(unit) = namesake(given.unit, kind) {
            unit
        } else {
            return Err(UnitError::new_err(format!(
                "{} is a {} and was given for a {}; write it like '{}'",
                given.text.clone().unwrap_or_else(|| given.unit.symbol.to_owned()),
                given.kind.words(),
                kind.words(),
                kind.example()
            )));
        };
        if let Some(number) = given.one(py) {
            return Ok(Given::One(Amount { number, unit }, given.text.clone()));
        }
        let number = given.number.bind(py);
        let Figures::Many(array) = Figures::of(number)? else {
            return Err(PyTypeError::new_err("write an array"));
        };
        let change = crate::convert::Change::between(unit, base_unit(kind));
        let base = if change.is_none() { array } else { change.raw(&array)? };
        return Ok(Given::Many(base, number.clone()));
    }
    // A yarn is given for its count.
    if let Ok(yarn) = value.cast::<Yarn>() {
        let yarn = &yarn.get().yarn;
        if kind != Kind::LinearDensity {
            return Err(UnitError::new_err(format!(
                "the yarn '{yarn}' was given for a {}; write it like '{}'",
                kind.words(),
                kind.example()
            )));
        }
        let (amount, said) = yarn.whole_count().or_raise()?;
        return Ok(Given::One(amount, said));
    }
    if value.is_instance_of::<PyString>() {
        let text = text(value)?;
        let (amount, said) = yarn::read_input(&text, "", kind).or_raise()?;
        return Ok(Given::One(amount, Some(said)));
    }
    if let Some(texts) = texts(value)? {
        return column_of_texts(value, &texts, kind);
    }
    let figures = Figures::of(value).map_err(|e| {
        let plain = e.is_instance_of::<PyTypeError>(value.py()) && foreign(value).is_none();
        if plain { no_numbers_of(value, kind) } else { e }
    })?;
    match figures {
        Figures::One(x) => {
            if x.is_nan() {
                return Err(RangeError::new_err("a single value cannot be missing (NaN)"));
            }
            quantity::bare_number(x, kind).map(|amount| Given::One(amount, None)).or_raise()
        }
        Figures::Many(array) => {
            // The first figure stands for all: a bare array of counts is refused as a bare count is.
            let read = array.readonly();
            let greatest = rows(&read).iter().copied().filter(|x| !x.is_nan()).fold(0.0, f64::max);
            quantity::bare_number(greatest, kind).or_raise()?;
            Ok(Given::Many(array, value.clone()))
        }
    }
}

/// Refuses a folded yarn where the count of one of its singles is asked.
pub(crate) fn no_fold_for_a_single(value: &Bound<'_, PyAny>, input: &str) -> PyResult<()> {
    if !yarn::asks_a_single(input) {
        return Ok(());
    }
    if let Ok(yarn) = value.cast::<Yarn>() {
        yarn.get().yarn.fits(input).or_raise()?;
    } else if value.is_instance_of::<PyString>() {
        yarn::read_input(&text(value)?, input, Kind::LinearDensity).or_raise()?;
    } else if let Some(rows) = texts(value)? {
        return rows.iter().try_for_each(|row| no_fold_for_a_single(row, input));
    }
    Ok(())
}

/// What is said where numbers of a kind are wanted and something else is given.
fn no_numbers_of(value: &Bound<'_, PyAny>, kind: Kind) -> PyErr {
    let unit = if kind.family() == Kind::Fraction { "%" } else { kind.base() };
    let several = if unit.is_empty() {
        "[9, 10]".to_owned()
    } else {
        format!("hankwise.q([9, 10], '{unit}')")
    };
    PyTypeError::new_err(format!(
        "write numbers, not {}; write one {} like '{}', several like {several}",
        shown(value),
        kind.words(),
        kind.example()
    ))
}

/// One figure of a kind, and its text where there was one.
pub(crate) fn one_figure(
    value: &Bound<'_, PyAny>,
    kind: Kind,
) -> PyResult<(Amount, Option<String>)> {
    let several = || {
        PyTypeError::new_err(format!(
            "give one value, not an array or a list: {}; write it like '{}'",
            shown(value),
            kind.example()
        ))
    };
    if is_row(value) {
        return Err(several());
    }
    match one(value, kind)? {
        Given::One(amount, typed) => Ok((amount, typed)),
        Given::Many(..) => Err(several()),
    }
}

/// True of what has several figures: a list, an array, a quantity that holds one.
pub(crate) fn has_several(value: &Bound<'_, PyAny>) -> bool {
    let quantity = value.cast::<Quantity>();
    is_row(value) || quantity.is_ok_and(|q| q.get().one(value.py()).is_none())
}

/// A whole number from 1 up, for an input of a function.
pub(crate) fn whole(value: &Bound<'_, PyAny>, function: &str, input: &str) -> PyResult<u32> {
    let number = single(value, function, input, Kind::Count)?.base();
    if number < 1.0 || number.fract() != 0.0 || number > f64::from(u32::MAX) {
        return Err(RangeError::new_err(format!(
            "{function}, {input}: {number} is not possible; write a whole number from 1 up, such as 4"
        )));
    }
    Ok(number as u32)
}

/// A single figure of a kind, for an input of a function.
pub(crate) fn single(
    value: &Bound<'_, PyAny>,
    function: &str,
    input: &str,
    kind: Kind,
) -> PyResult<Amount> {
    let read = one_figure(value, kind).map_err(|e| locate(value.py(), function, input, e))?;
    Ok(read.0)
}

/// True of a Series or a table.
pub(crate) fn has_labels(value: &Bound<'_, PyAny>) -> bool {
    value.hasattr("index").unwrap_or(false) && value.hasattr("to_numpy").unwrap_or(false)
}

/// Refuses two Series or tables with unequal labels.
fn same_labels(first: &Bound<'_, PyAny>, other: &Bound<'_, PyAny>) -> PyResult<()> {
    for labels in ["index", "columns"] {
        let (Ok(a), Ok(b)) = (first.getattr(labels), other.getattr(labels)) else { continue };
        if !a.call_method1("equals", (b,))?.is_truthy()? {
            return Err(NotationError::new_err(format!(
                "the Series given have unequal labels ({labels}); \
                 bring them to the same first, such as a, b = a.align(b)"
            )));
        }
    }
    Ok(())
}

/// Refuses lists that go in step, member by member, where they are Series of one length whose labels
/// go in another order.
#[derive(Default)]
pub(crate) struct InStep<'py>(Vec<Bound<'py, PyAny>>);

impl<'py> InStep<'py> {
    pub(crate) fn with(&mut self, list: &Bound<'py, PyAny>) -> PyResult<()> {
        let list = match list.cast::<Quantity>() {
            Ok(quantity) => quantity.get().number.bind(list.py()).clone(),
            Err(_) => list.clone(),
        };
        // A list of texts has a method of that name.
        if list.is_instance_of::<PyList>() || list.is_instance_of::<PyTuple>() || !has_labels(&list)
        {
            return Ok(());
        }
        let length = list.len()?;
        for other in self.0.iter().filter(|other| other.len().is_ok_and(|n| n == length)) {
            same_labels(other, &list)?;
        }
        self.0.push(list);
        Ok(())
    }
}

/// The first Series or table of figures given, whose labels the answer bears; others must have the
/// same, or figures of different things would be put together. Where there is none, a masked array.
pub(crate) fn labelled<'a, 'py>(call: &'a Call<'py>) -> PyResult<Option<&'a Bound<'py, PyAny>>> {
    let mut first: Option<&Bound<'py, PyAny>> = None;
    let mut masked = None;
    for given in &call.given {
        let Given::Many(_, like) = given else { continue };
        if !has_labels(like) {
            masked = masked.or_else(|| Some(like).filter(|like| is_masked(like)));
            continue;
        }
        let Some(first) = first else {
            first = Some(like);
            continue;
        };
        same_labels(first, like)?;
    }
    Ok(first.or(masked))
}

/// Arrays of unequal shape are brought to one as NumPy does it.
pub(crate) fn one_shape<'py>(
    py: Python<'py>,
    call: &Call<'py>,
) -> PyResult<Vec<Bound<'py, PyArrayDyn<f64>>>> {
    let arrays: Vec<_> = call
        .given
        .iter()
        .filter_map(|g| if let Given::Many(array, _) = g { Some(array.clone()) } else { None })
        .collect();
    if arrays.windows(2).all(|w| w[0].shape() == w[1].shape()) {
        return Ok(arrays);
    }
    let shapes = |a: &Bound<'py, PyArrayDyn<f64>>| {
        a.shape().iter().map(usize::to_string).collect::<Vec<_>>().join(" × ")
    };
    let unequal = NotationError::new_err(format!(
        "arrays of {} values cannot be broadcast to one; give arrays of one length, or single values",
        arrays.iter().map(shapes).collect::<Vec<_>>().join(" and of ")
    ));
    // NumPy would lay a Series along the columns of a table, and not its rows.
    let bears_labels = |g: &Given<'_>| matches!(g, Given::Many(_, like) if has_labels(like));
    if call.given.iter().any(bears_labels) && arrays.windows(2).any(|w| w[0].ndim() != w[1].ndim())
    {
        return Err(NotationError::new_err(
            "a Series and a table are given, and it is not said which of its rows or columns go with \
             the Series; write a table as large as the other, such as \
             pandas.DataFrame({name: series for name in table})",
        ));
    }
    let all = PyTuple::new(py, arrays)?;
    let same = py.import("numpy")?.getattr("broadcast_arrays")?.call1(all).map_err(|_| unequal)?;
    same.try_iter()?.map(|a| a.and_then(|a| a.cast_into().map_err(PyErr::from))).collect()
}
