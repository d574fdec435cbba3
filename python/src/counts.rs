//! The count systems: looking at them, adding one's own.

use hankwise::plan;
use hankwise::quantity::counts::System;
use hankwise::quantity::{self, Definition, Kind};
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::attributes::dict;
use crate::errors::OrRaise;
use crate::text::{File, Text};

fn row<'py>(py: Python<'py>, system: &System) -> PyResult<Bound<'py, PyDict>> {
    let unit = &system.unit;
    Ok(dict!(py, {
        "symbol": unit.symbol,
        "names": unit.names,
        "definition": unit.definition,
        "indirect": unit.is_indirect(),
        "metres": system.length,
        "kilograms": system.mass,
        "tex": system.tex(),
        "country": system.country,
        "date": system.date,
        "source": unit.source,
        "basis": unit.basis().words(),
    }))
}

/// Define a count system of your own: hanks of `length` in `mass`, or, with `direct=True`, the `mass`
/// of `length`. Its names are then known wherever a count is written, and `tpi/√name` as a twist
/// factor where it is indirect. Gives its row in `hankwise.counts`.
///
/// The same definition again is not an error; another one under a name that is taken is refused.
///
/// >>> import hankwise as hw
/// >>> row = hw.define_count("my-cut", length="300 yd", mass="26 oz")
/// >>> hw.q("16 my-cut").to("tex")
/// <linear density (count): 167.9 tex>
#[pyfunction]
#[pyo3(
    signature = (name, *, length, mass, direct=false, names=Vec::new(), source=Text::Meant(""), country=Text::Meant(""), date=Text::Meant("")),
    text_signature = "(name, *, length, mass, direct=False, names=(), source='', country='', date='')"
)]
pub(crate) fn define_count<'py>(
    py: Python<'py>,
    name: Text,
    length: Text,
    mass: Text,
    direct: bool,
    names: Vec<Text>,
    source: Text,
    country: Text,
    date: Text,
) -> PyResult<Bound<'py, PyDict>> {
    let name = name.named("name")?.to_owned();
    let length = length.named("length")?.to_owned();
    let mass = mass.named("mass")?.to_owned();
    let names = names.iter().map(|one| Ok(one.named("names")?.to_owned()));
    let names = names.collect::<PyResult<Vec<String>>>()?;
    let source = source.named("source")?;
    let country = country.named("country")?;
    let date = date.named("date")?;
    let (source, country, date) = (source.to_owned(), country.to_owned(), date.to_owned());
    let definition = Definition { name, names, length, mass, direct, source, country, date };
    row(py, quantity::define(&definition).or_raise()?)
}

/// Define the count systems of a file: TOML with a table for each, `[my-cut]` with `length`, `mass` and
/// where wanted `direct`, `names`, `source`, `country`, `date`. All of them are defined, or none. Gives
/// their symbols.
#[pyfunction]
#[pyo3(signature = (path, /))]
pub(crate) fn load_counts(path: File) -> PyResult<Vec<&'static str>> {
    let path = path.named("path")?;
    let systems = plan::load_counts(&path).or_raise()?;
    Ok(systems.into_iter().map(|s| s.unit.symbol).collect())
}

/// The symbols of all count systems.
#[pyfunction]
pub(crate) fn _count_symbols() -> Vec<&'static str> {
    quantity::systems().map(|s| s.unit.symbol).collect()
}

/// The row of the count system with a name.
#[pyfunction]
#[pyo3(signature = (name, /))]
pub(crate) fn _count<'py>(py: Python<'py>, name: Text) -> PyResult<Bound<'py, PyDict>> {
    let name = name.named("name")?;
    let unit = quantity::unit(name, Some(Kind::LinearDensity)).or_raise()?;
    let mut all = quantity::systems();
    let system = all.find(|s| s.unit == *unit);
    row(py, system.unwrap_or_else(|| unreachable!("a count of no system")))
}
