//! Calling a formula: from arguments to figures to the answer.

use std::sync::{Mutex, PoisonError};

use hankwise::Error;
use hankwise::formula::array::{Column, Unanswered};
use hankwise::formula::is_usual;
use numpy::{PyArrayMethods, PyUntypedArrayMethods};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};

use crate::columns::{in_kind, place, rows};
use crate::errors::{NotationError, OrRaise, RangeWarning, raise};
use crate::formula::Formula;
use crate::inputs::{
    Call, Extent, Given, InStep, base_unit, check_column, extent, labelled, locate, members,
    no_fold_for_a_single, one, one_shape,
};
use crate::out::in_parts;
use crate::quantity::Quantity;
use crate::text::keyword;

/// The extent of no figures.
const NONE: Extent = Extent { least: 0.0, most: 0.0, gaps: false };

/// Tells what is unusual at the line that called; whoever wants it as an error turns the warning into one.
pub(crate) fn warn(py: Python<'_>, messages: Vec<String>) -> PyResult<()> {
    for message in messages {
        let text = std::ffi::CString::new(message).unwrap_or_default();
        PyErr::warn(py, &py.get_type::<RangeWarning>(), &text, 1)?;
    }
    Ok(())
}

/// The signature of what is called: names, and for each that may be omitted its default.
pub(crate) fn signature<'py>(
    py: Python<'py>,
    how: &str,
    names: impl IntoIterator<Item = (&'static str, Option<Option<String>>)>,
) -> PyResult<Bound<'py, PyAny>> {
    let inspect = py.import("inspect")?;
    let parameter = inspect.getattr("Parameter")?;
    let how = parameter.getattr(how)?;
    let mut all = Vec::new();
    for (name, default) in names {
        let more = PyDict::new(py);
        if let Some(default) = default {
            more.set_item("default", default)?;
        }
        all.push(parameter.call((name, &how), Some(&more))?);
    }
    inspect.getattr("Signature")?.call1((all,))
}

impl Formula {
    /// Sorts positional and named arguments into the order of the card. `skip` is left out.
    pub(crate) fn bind<'py>(
        &self,
        args: &Bound<'py, PyTuple>,
        kwargs: Option<&Bound<'py, PyDict>>,
        skip: Option<&str>,
    ) -> PyResult<Vec<Option<Bound<'py, PyAny>>>> {
        let inputs = self.card.inputs;
        let mut bound: Vec<Option<Bound<'py, PyAny>>> = vec![None; inputs.len()];
        if args.len() > inputs.len() {
            return Err(raise(&Error::call(format!(
                "{} takes {} inputs ({}), {} given; a list input takes a list",
                self.card.name,
                inputs.len(),
                self.names(),
                args.len()
            ))));
        }
        for (slot, arg) in bound.iter_mut().zip(args.iter()) {
            *slot = Some(arg);
        }
        if let Some(kwargs) = kwargs {
            for (name, value) in kwargs {
                let name = keyword(&name, self.card.name)?;
                let Some(place) = inputs.iter().position(|i| i.name == &*name) else {
                    let known: Vec<&str> = inputs.iter().map(|i| i.name).collect();
                    return Err(raise(&Error::no_input(self.card.name, &name, &known)));
                };
                if bound[place].replace(value).is_some() {
                    return Err(raise(&Error::twice(&name).at(self.card.name)));
                }
            }
        }
        for (slot, input) in bound.iter().zip(inputs) {
            if slot.is_none() && skip != Some(input.name) {
                let missing = Error::missing(input.name, input.meaning, &input.example());
                return Err(raise(&missing.at(self.card.name)));
            }
        }
        Ok(bound)
    }

    pub(crate) fn names(&self) -> String {
        self.card.inputs.iter().map(|i| i.name).collect::<Vec<_>>().join(", ")
    }

    pub(crate) fn read<'py>(&self, bound: &[Option<Bound<'py, PyAny>>]) -> PyResult<Call<'py>> {
        let mut given = Vec::with_capacity(bound.len());
        let mut lengths = Vec::new();
        let mut in_step = InStep::default();
        for (value, input) in bound.iter().zip(self.card.inputs) {
            let Some(value) = value else { continue };
            let place = |e: PyErr| locate(value.py(), self.card.name, input.name, e);
            if input.many {
                let members = members(value, input.name, input.kind).map_err(place)?;
                in_step.with(value).map_err(place)?;
                if members.is_empty() {
                    return Err(place(NotationError::new_err(format!(
                        "the list is empty; write it like {}=[\"{}\"]",
                        input.name,
                        input.kind.example()
                    ))));
                }
                if self.card.lists > 1 {
                    lengths.push(members.len());
                }
                for member in members {
                    given.push(one(&member, input.kind).map_err(place)?);
                }
            } else {
                no_fold_for_a_single(value, input.name).map_err(place)?;
                given.push(one(value, input.kind).map_err(place)?);
            }
        }
        self.card.check_lengths(&lengths).or_raise()?;
        Ok(Call { given })
    }

    pub(crate) fn call_scalar(&self, py: Python<'_>, row: &[f64]) -> PyResult<Quantity> {
        let answer = self.card.answer(row).or_raise()?;
        warn(py, self.card.unusual(row))?;
        Ok(self.result(pyo3::types::PyFloat::new(py, answer).into_any()))
    }

    pub(crate) fn result(&self, number: Bound<'_, PyAny>) -> Quantity {
        let kind = self.card.output.kind;
        Quantity { number: number.unbind(), unit: base_unit(kind), kind, text: None }
    }

    /// A sentence for a column with figures outside the usual range: the first, and how many.
    pub(crate) fn unusual_in(
        &self,
        place: usize,
        of: usize,
        column: &[f64],
        Extent { least, most, .. }: Extent,
    ) -> Option<String> {
        let usual = self.card.input(place, of).usual;
        if is_usual(usual, least) && is_usual(usual, most) {
            return None;
        }
        let odd = |x: &&f64| !is_usual(usual, **x);
        let message = self.card.unusual_at(place, of, *column.iter().find(odd)?)?;
        let count = column.iter().filter(odd).count();
        Some(if count > 1 { format!("{message}; so are {} more", count - 1) } else { message })
    }

    pub(crate) fn call_arrays<'py>(&self, py: Python<'py>, call: &Call<'py>) -> PyResult<Quantity> {
        let arrays = one_shape(py, call)?;
        let read: Vec<_> = arrays.iter().map(PyArrayMethods::readonly).collect();
        let columns: Vec<_> = read.iter().map(rows).collect();
        let length = columns.first().map_or(0, |c| c.len());
        let slices: Vec<&[f64]> = columns.iter().map(|c| &c[..]).collect();
        let mut extents = vec![NONE; slices.len()];
        py.detach(|| {
            in_parts(
                length,
                |_| slices.iter().zip(&mut extents),
                |(column, found)| *found = extent(column),
            );
        });
        let gaps = extents.iter().any(|extent| extent.gaps);
        let mut many = slices.iter().copied().zip(extents);
        let mut given = Vec::with_capacity(call.given.len());
        let mut unusual = Vec::new();
        let of = call.given.len();
        for (place, one) in call.given.iter().enumerate() {
            let input = self.card.input(place, of);
            given.push(match one {
                Given::One(amount, _) => {
                    input.kind.check(amount.base()).map_err(|e| {
                        raise(&e.at(format_args!("{}, {}", self.card.name, input.name)))
                    })?;
                    unusual.extend(self.card.unusual_at(place, of, amount.base()));
                    Column::One(amount.base())
                }
                Given::Many(array, like) => {
                    let (column, extent): (&[f64], _) = many.next().unwrap_or((&[], NONE));
                    let row = |row| crate::columns::place(row, array.shape(), Some(like));
                    check_column(column, extent, input, self.card.name, row)?;
                    unusual.extend(self.unusual_in(place, of, column, extent));
                    Column::Each(column)
                }
            });
        }
        self.card.check_whole_columns(&given).or_raise()?;
        let mut out = vec![0.0; length];
        let card = self.card;
        let refused = Mutex::new(Unanswered::default());
        py.detach(|| {
            in_parts(
                length,
                |size| out.chunks_mut(size).enumerate().map(move |(at, out)| (at * size, out)),
                |(start, out): (usize, &mut [f64])| {
                    let part: Vec<Column<'_>> =
                        given.iter().map(|column| column.part(start, out.len())).collect();
                    card.evaluate_columns(&part, out);
                    let found = card.check_columns(&part, out, gaps);
                    if found.count > 0 {
                        refused.lock().unwrap_or_else(PoisonError::into_inner).add(found, start);
                    }
                },
            );
        });
        let shape: Vec<usize> = arrays.first().map(|a| a.shape().to_vec()).unwrap_or_default();
        let like = labelled(call)?;
        let refused = refused.into_inner().unwrap_or_else(PoisonError::into_inner);
        if let Some(row) = refused.first {
            let figures: Vec<f64> = given.iter().map(|column| column.at(row)).collect();
            let why = card.answer(&figures).map_or_else(|e| e.to_string(), |_| String::new());
            unusual.push(format!(
                "{}: {} of {length} rows have no answer (NaN), the first in {}: {}",
                card.name,
                refused.count,
                place(row, &shape, like),
                why.strip_prefix(&format!("{}: ", card.name)).unwrap_or(&why)
            ));
        }
        warn(py, unusual)?;
        let array = numpy::PyArray1::from_vec(py, out).reshape(shape)?;
        let number = match like {
            Some(like) => in_kind(array.into_any(), like)?,
            None => array.into_any(),
        };
        Ok(self.result(number))
    }
}
