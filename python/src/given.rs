//! What is given for a calculation: from arguments, and as arguments again.

use hankwise::calculation::{self, Item, Value, flat};
use hankwise::quantity::{Amount, Unit};
use numpy::PyArrayMethods;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyDict, PyFloat, PyMapping, PyString};

use crate::columns::{rows, shown};
use crate::errors::{NotationError, OrRaise, raise};
use crate::inputs::{
    Call, InStep, base_unit, has_several, is_row, labelled, locate, members, no_fold_for_a_single,
    one, one_figure, one_shape,
};
use crate::quantity::Quantity;
use crate::results::Container;
use crate::text::{keyword, text_of};

/// What was given, read: the values, and how columns among them are handed back.
pub(crate) struct Read {
    pub(crate) given: calculation::Given,
    pub(crate) container: Option<Container>,
}

/// Reads the arguments of a call.
pub(crate) fn read(
    card: &'static calculation::Calculation,
    kwargs: Option<&Bound<'_, PyDict>>,
) -> PyResult<Read> {
    let mut given = card.blank();
    let mut call = Call { given: Vec::new() };
    let mut columns: Vec<(String, &'static Unit)> = Vec::new();
    let mut in_step = InStep::default();
    for (name, value) in kwargs.into_iter().flat_map(PyDictMethods::iter) {
        let name = keyword(&name, card.name)?;
        if value.is_none() {
            continue;
        }
        let at = |e: PyErr| locate(value.py(), card.name, &name, e);
        let item = given.item(&name).or_raise()?;
        match &item {
            Item::One(input) if has_several(&value) => {
                let several = one(&value, input.kind).map_err(at)?;
                let unit = match value.cast::<Quantity>() {
                    Ok(q) if q.get().unit.kind == input.kind.family() => q.get().unit,
                    _ => base_unit(input.kind),
                };
                columns.push((name.to_string(), unit));
                call.given.push(several);
            }
            _ => {
                if matches!(item, Item::List(_)) {
                    in_step.with(&value).map_err(at)?;
                }
                let value = one_of(&given, &item, &value).map_err(at)?;
                given.put(&item, value).or_raise_at(card.name)?;
            }
        }
    }
    let Some((first, _)) = columns.first() else { return Ok(Read { given, container: None }) };
    let py = kwargs.map(Bound::py);
    let Some(py) = py else { return Ok(Read { given, container: None }) };
    let arrays = one_shape(py, &call).map_err(|e| locate(py, card.name, first, e))?;
    for ((name, unit), array) in columns.iter().zip(&arrays) {
        let read = array.readonly();
        let column = Value::Column(rows(&read).into_owned(), unit);
        given.set(name, column).or_raise_at(card.name)?;
    }
    let shape = arrays.first().map(|a| numpy::PyUntypedArrayMethods::shape(a).to_vec());
    let like = labelled(&call)?.map(|like| like.clone().unbind());
    Ok(Read { given, container: Some(Container { shape: shape.unwrap_or_default(), like }) })
}

/// Reads one value as what is asked.
fn one_of(given: &calculation::Given, item: &Item, value: &Bound<'_, PyAny>) -> PyResult<Value> {
    match item {
        Item::One(input) => {
            no_fold_for_a_single(value, input.name)?;
            let (amount, typed) = one_figure(value, input.kind)?;
            Ok(Value::One(amount, typed))
        }
        Item::List(input) => {
            // One may stand alone.
            let one = |value: &Bound<'_, PyAny>| {
                value.is_instance_of::<PyString>()
                    || value.is_instance_of::<Quantity>()
                    || value.extract::<f64>().is_ok()
            };
            let alone = one(value) && !has_several(value);
            let all =
                if alone { vec![value.clone()] } else { members(value, input.name, input.kind)? };
            let all: PyResult<Vec<(Amount, Option<String>)>> =
                all.iter().map(|member| one_figure(member, input.kind)).collect();
            Ok(Value::List(all?))
        }
        Item::Word(_) | Item::Text(_) => text(value).map(Value::Text),
        Item::Flag(..) => match value.cast::<PyBool>() {
            Ok(flag) => Ok(Value::Flag(flag.is_true())),
            Err(_) => {
                Err(PyTypeError::new_err(format!("True or False goes here, not {}", shown(value))))
            }
        },
        Item::Parts(parts) => {
            if value.is_instance_of::<PyString>() {
                let text = text_of(value, parts.name)?;
                let all: Result<Vec<f64>, _> = text
                    .trim_matches(['[', ']'])
                    .split(',')
                    .map(|one| {
                        hankwise::yarn::read_input(one, "", parts.kind).map(|(a, _)| a.base())
                    })
                    .collect();
                return all.map(Value::Parts).or_raise();
            }
            let all = members(value, parts.name, parts.kind)?;
            let all: PyResult<Vec<f64>> = all
                .iter()
                .map(|member| one_figure(member, parts.kind).map(|(amount, _)| amount.base()))
                .collect();
            Ok(Value::Parts(all?))
        }
        Item::Rows(list) => {
            let mut all = Vec::new();
            for (label, fields) in described(value, list)? {
                let mut row = given.row(list.name).or_raise()?;
                let here = label.clone().unwrap_or_else(|| format!("[{}]", all.len() + 1));
                let at = |name: &str, e: PyErr| locate(value.py(), &here, name, e);
                if let (Some(name), Some(label)) = (list.label, label) {
                    row.set(name, Value::Text(label)).or_raise()?;
                }
                for (name, value) in fields.iter() {
                    let name = keyword(&name, &here)?;
                    if value.is_none() {
                        continue;
                    }
                    let item = row.item(&name).map_err(|e| at(&name, raise(&e)))?;
                    let value = one_of(&row, &item, &value).map_err(|e| at(&name, e))?;
                    row.put(&item, value).or_raise_at(&here)?;
                }
                all.push(row);
            }
            Ok(Value::Rows(all))
        }
        Item::Group(_) | Item::Choice(_) => {
            Err(NotationError::new_err("it has no value of its own"))
        }
    }
}

/// A text, or what the rooms make of one: a weave, an order of colours.
fn text(value: &Bound<'_, PyAny>) -> PyResult<String> {
    if let Ok(weave) = value.cast::<crate::weave::Weave>() {
        let weave = &weave.get().weave;
        return Ok(weave.name().unwrap_or_else(|| weave.rows().join(" ")));
    }
    if let Ok(order) = value.cast::<crate::colours::ColourOrder>() {
        return order.get().text();
    }
    if value.is_instance_of::<PyString>() {
        return Ok(text_of(value, "a text")?.to_string());
    }
    Err(PyTypeError::new_err(format!("a text goes here, not {}", shown(value))))
}

/// The name of the only one.
fn the_only<'a>(mut items: impl Iterator<Item = &'a Item>) -> Option<&'static str> {
    items.next().map(Item::name).filter(|_| items.next().is_none())
}

/// The members of a list of things: dictionaries, or pairs of a name and a dictionary, or a dictionary
/// of dictionaries by name.
fn described<'py>(
    value: &Bound<'py, PyAny>,
    list: &calculation::Rows,
) -> PyResult<Vec<(Option<String>, Bound<'py, PyDict>)>> {
    let py = value.py();
    let names = flat(list.items);
    let asked = || names.iter().filter(|item| Some(item.name()) != list.label);
    let example = asked().find(|item| item.is_needed()).or_else(|| asked().next());
    let example = example.map_or("", |item| item.name());
    let refuse = |what: &Bound<'_, PyAny>| {
        let example = match list.label {
            Some(_) => format!("[(\"name\", {{\"{example}\": …}})]"),
            None => format!("[{{\"{example}\": …}}]"),
        };
        NotationError::new_err(format!(
            "a list goes here, such as {}={example}, not {}",
            list.name,
            shown(what)
        ))
    };
    // Where one thing is asked of each, or the first alone has to be given, its value may stand alone:
    // {"hank": "100 g"}.
    let needed = the_only(asked().filter(|item| item.is_needed()));
    let first = asked().next().map(Item::name);
    let only = needed.filter(|name| first == Some(name)).or_else(|| the_only(asked()));
    let dict = |fields: &Bound<'py, PyAny>| -> PyResult<Bound<'py, PyDict>> {
        if fields.is_none() {
            return Ok(PyDict::new(py));
        }
        if let (Some(only), false) = (only, fields.is_instance_of::<PyDict>()) {
            let dict = PyDict::new(py);
            dict.set_item(only, fields)?;
            return Ok(dict);
        }
        fields.cast::<PyDict>().cloned().map_err(|_| refuse(fields))
    };
    if let Ok(mapping) = value.cast::<PyMapping>() {
        if list.label.is_none() {
            return Err(refuse(value));
        }
        let mut all = Vec::new();
        for pair in mapping.items()?.iter() {
            let (name, fields): (Bound<'py, PyAny>, Bound<'py, PyAny>) = pair.extract()?;
            let name: String = name.extract().map_err(|_| {
                NotationError::new_err(format!("a name goes here, not {}", shown(&name)))
            })?;
            all.push((Some(name), dict(&fields)?));
        }
        return Ok(all);
    }
    if !is_row(value) {
        return Err(refuse(value));
    }
    let mut all = Vec::new();
    for member in value.try_iter()? {
        let member = member?;
        if let Ok(fields) = member.cast::<PyDict>() {
            // A name among the fields is what messages call it.
            let name = match list.label {
                Some(label) => fields.get_item(label)?.and_then(|name| name.extract().ok()),
                None => None,
            };
            let fields = fields.copy()?;
            if let (Some(label), Some::<String>(_)) = (list.label, &name) {
                fields.del_item(label)?;
            }
            all.push((name, fields));
        } else if let (Ok((name, fields)), Some(_)) =
            (member.extract::<(String, Bound<'py, PyAny>)>(), list.label)
        {
            all.push((Some(name), dict(&fields)?));
        } else if let (Ok(name), Some(_)) = (member.extract::<String>(), list.label) {
            all.push((Some(name), PyDict::new(py)));
        } else {
            return Err(refuse(&member));
        }
    }
    Ok(all)
}

/// What was given, as arguments of a call that gives the same.
pub(crate) fn arguments<'py>(
    py: Python<'py>,
    given: &calculation::Given,
    container: Option<&Container>,
) -> PyResult<Bound<'py, PyDict>> {
    let all = PyDict::new(py);
    let quantity = |amount: &Amount, typed: &Option<String>| -> PyResult<Bound<'py, PyAny>> {
        let (unit, text) = (amount.unit, typed.clone());
        let number = PyFloat::new(py, amount.number).into_any().unbind();
        Ok(Bound::new(py, Quantity { number, unit, kind: unit.kind, text })?.into_any())
    };
    for (name, value) in given.values() {
        match value {
            Value::One(amount, typed) => all.set_item(name, quantity(amount, typed)?)?,
            Value::Column(column, unit) => {
                let array = numpy::PyArray1::from_vec(py, column.clone()).into_any();
                let array = match container {
                    Some(container) => container.shaped(py, array)?,
                    None => array,
                };
                let base = hankwise::quantity::unit(unit.kind.base(), Some(unit.kind));
                let unit = base.unwrap_or_else(|_| base_unit(unit.kind));
                let number = array.unbind();
                all.set_item(
                    name,
                    Bound::new(py, Quantity { number, unit, kind: unit.kind, text: None })?,
                )?;
            }
            Value::List(list) => {
                let members: PyResult<Vec<_>> =
                    list.iter().map(|(amount, typed)| quantity(amount, typed)).collect();
                all.set_item(name, members?)?;
            }
            Value::Text(text) => all.set_item(name, text)?,
            Value::Flag(flag) => all.set_item(name, *flag)?,
            Value::Parts(parts) => all.set_item(name, parts.clone())?,
            Value::Rows(rows) => {
                let rows: PyResult<Vec<_>> =
                    rows.iter().map(|row| arguments(py, row, container)).collect();
                all.set_item(name, rows?)?;
            }
        }
    }
    Ok(all)
}
