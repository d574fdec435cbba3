//! The Python face of the crate `hankwise`: every function here hands over to the crate.
#![deny(unsafe_code)]
#![allow(clippy::needless_pass_by_value, reason = "PyO3 hands arguments over by value")]
#![allow(clippy::unused_self, reason = "Python calls these as methods")]
#![allow(clippy::elidable_lifetime_names, reason = "the lifetime of the interpreter has its name")]

mod call;
mod columns;
mod convert;
mod counts;
mod errors;
mod formula;
mod help;
mod inputs;
mod make;
mod out;
mod plan;
mod quantity;
mod result;
mod rounding;
mod working;

use pyo3::prelude::*;
use pyo3::types::PyDict;

/// The compiled part of `hankwise`.
#[pymodule]
fn _hankwise(m: &Bound<'_, PyModule>) -> PyResult<()> {
    let py = m.py();
    m.add("__version__", env!("CARGO_PKG_VERSION"))?;
    errors::add(m)?;
    m.add_class::<quantity::Quantity>()?;
    m.add_class::<formula::Formula>()?;
    m.add_class::<working::Working>()?;
    m.add_class::<plan::Plan>()?;
    m.add_class::<plan::Needed>()?;
    m.add_class::<result::PlanResult>()?;
    m.add_class::<result::Table>()?;
    m.add_function(wrap_pyfunction!(convert::convert, m)?)?;
    m.add_function(wrap_pyfunction!(convert::_empty, m)?)?;
    m.add_class::<rounding::Rounded>()?;
    m.add_function(wrap_pyfunction!(counts::define_count, m)?)?;
    m.add_function(wrap_pyfunction!(counts::load_counts, m)?)?;
    m.add_function(wrap_pyfunction!(counts::_count, m)?)?;
    m.add_function(wrap_pyfunction!(counts::_count_symbols, m)?)?;
    m.add_function(wrap_pyfunction!(make::q, m)?)?;
    m.add_function(wrap_pyfunction!(make::units, m)?)?;
    m.add_function(wrap_pyfunction!(formula::find, m)?)?;
    m.add_function(wrap_pyfunction!(formula::search, m)?)?;
    m.add_function(wrap_pyfunction!(formula::source, m)?)?;
    m.add_function(wrap_pyfunction!(plan::load, m)?)?;
    m.add_function(wrap_pyfunction!(plan::loads, m)?)?;

    // The rooms: hankwise.yarn.twist_factor and so on. Made once, added for good.
    let formulas = PyDict::new(py);
    let modules = py.import("sys")?.getattr("modules")?;
    for (room, about) in [
        ("fibre", "Water on the fibre, what is clean of it, how fine it is."),
        ("yarn", "Count, folding, twist and hanks."),
        ("cloth", "Sett and reed, the piece, its mass, finishing."),
        ("mill", "Losses, oil, card, mule, twister, loom, time and money."),
    ] {
        let name = format!("hankwise.{room}");
        let module = PyModule::new(py, &name)?;
        module.setattr("__doc__", about)?;
        for card in hankwise::formula::all().filter(|f| f.room() == room) {
            let one = Bound::new(py, formula::Formula::of(card))?;
            // On the object: a class whose module depends on the object breaks `help`.
            one.setattr("__module__", &name)?;
            module.add(card.name, &one)?;
            formulas.set_item(card.name, &one)?;
        }
        if room == "yarn" {
            for function in [
                wrap_pyfunction!(rounding::round_tex, &module)?,
                wrap_pyfunction!(rounding::round_count, &module)?,
            ] {
                module.add_function(function)?;
            }
        }
        modules.set_item(name, &module)?;
        m.add(room, module)?;
    }
    m.add("formulas", formulas)?;
    Ok(())
}
