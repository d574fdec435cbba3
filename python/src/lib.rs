//! The Python face of the crate `hankwise`: every function here hands over to the crate.
#![deny(unsafe_code)]
#![allow(clippy::needless_pass_by_value, reason = "PyO3 hands arguments over by value")]
#![allow(clippy::doc_link_with_quotes, reason = "examples in Python index with texts")]
#![allow(clippy::unused_self, reason = "Python calls these as methods")]
#![allow(clippy::elidable_lifetime_names, reason = "the lifetime of the interpreter has its name")]

mod allowance;
mod arithmetic;
mod attributes;
mod calculation;
mod call;
mod chart;
mod colours;
mod columns;
mod convert;
mod counts;
mod draft;
mod errors;
mod files;
mod find;
mod foreign;
mod formula;
mod given;
mod grade;
mod hand_knitting;
mod handbook;
mod inputs;
mod make;
mod new;
mod out;
mod picture;
mod plan;
mod quality;
mod quantity;
mod quote;
mod readings;
mod result;
mod results;
mod rounding;
mod sequence;
mod text;
mod texts;
mod weave;
mod working;
mod yarn;

use pyo3::intern;
use pyo3::prelude::*;
use pyo3::types::{PyCFunction, PyDict, PyString};

/// The compiled part of `hankwise`.
#[pymodule]
fn _hankwise(m: &Bound<'_, PyModule>) -> PyResult<()> {
    let py = m.py();
    m.add("__version__", env!("CARGO_PKG_VERSION"))?;
    errors::add(m)?;
    m.add_class::<quantity::Quantity>()?;
    m.add_class::<formula::Formula>()?;
    m.add_class::<calculation::Calculation>()?;
    m.add_class::<results::Results>()?;
    m.add_function(wrap_pyfunction!(results::_results, m)?)?;
    m.add_class::<working::Working>()?;
    m.add_class::<yarn::Yarn>()?;
    m.add_class::<plan::Plan>()?;
    m.add_class::<plan::Needed>()?;
    m.add_class::<result::PlanResult>()?;
    m.add_class::<quote::Quote>()?;
    m.add_class::<result::Table>()?;
    m.add_class::<handbook::HandbookFigure>()?;
    m.add_class::<handbook::HandbookTable>()?;
    m.add_class::<grade::WoolGrade>()?;
    m.add_class::<weave::Weave>()?;
    m.add_class::<draft::Draft>()?;
    m.add_class::<draft::Layers>()?;
    m.add_class::<picture::Picture>()?;
    m.add_class::<colours::ColourOrder>()?;
    m.add_function(wrap_pyfunction!(colours::_colour_order, m)?)?;
    m.add_class::<chart::Chart>()?;
    m.add_class::<chart::Capability>()?;
    m.add_class::<quality::Summary>()?;
    m.add_function(wrap_pyfunction!(convert::convert, m)?)?;
    m.add_function(wrap_pyfunction!(convert::_empty, m)?)?;
    m.add_function(wrap_pyfunction!(yarn::_empty_text, m)?)?;
    m.add_class::<rounding::Rounded>()?;
    m.add_function(wrap_pyfunction!(counts::define_count, m)?)?;
    m.add_function(wrap_pyfunction!(counts::load_counts, m)?)?;
    m.add_function(wrap_pyfunction!(counts::_count, m)?)?;
    m.add_function(wrap_pyfunction!(counts::_count_symbols, m)?)?;
    m.add_function(wrap_pyfunction!(make::q, m)?)?;
    m.add_function(wrap_pyfunction!(make::units, m)?)?;
    m.add("_kinds", find::kinds())?;
    m.add_class::<find::Hit>()?;
    m.add_class::<find::Found>()?;
    m.add_function(wrap_pyfunction!(find::find, m)?)?;
    m.add_function(wrap_pyfunction!(find::_calc, m)?)?;
    m.add_function(wrap_pyfunction!(formula::source, m)?)?;
    m.add_function(wrap_pyfunction!(handbook::_table, m)?)?;
    m.add_function(wrap_pyfunction!(handbook::_tables, m)?)?;
    m.add_function(wrap_pyfunction!(files::_check_output, m)?)?;
    m.add_function(wrap_pyfunction!(files::_write_picture, m)?)?;
    m.add_function(wrap_pyfunction!(files::_write_toml, m)?)?;
    m.add_function(wrap_pyfunction!(files::_read_text, m)?)?;
    m.add_function(wrap_pyfunction!(plan::load, m)?)?;
    m.add_function(wrap_pyfunction!(plan::loads, m)?)?;
    m.add_function(wrap_pyfunction!(plan::mill_tables, m)?)?;
    m.add_function(wrap_pyfunction!(plan::_paper_path, m)?)?;
    m.add_function(wrap_pyfunction!(new::new_lot, m)?)?;
    m.add_function(wrap_pyfunction!(new::new_mill, m)?)?;
    m.add_function(wrap_pyfunction!(new::_questions, m)?)?;
    m.add_function(wrap_pyfunction!(plan::_plan, m)?)?;
    m.add_function(wrap_pyfunction!(plan::make, m)?)?;
    m.add_function(wrap_pyfunction!(plan::run_all, m)?)?;

    // The rooms: hankwise.yarn.twist_factor and so on. Made once, added for good.
    let (formulas, calculations) = (PyDict::new(py), PyDict::new(py));
    let modules = py.import("sys")?.getattr("modules")?;
    for (room, about) in [
        ("fibre", "Water on the fibre, what is clean of it, how fine it is."),
        (
            "yarn",
            "Designation, count, folding, twist, hanks and winding, diameter, strength, evenness.",
        ),
        ("cloth", "Weave, sett and reed, the piece, its mass, knitting, finishing."),
        ("mill", "Losses, oil, card, mule, twister, loom, gearing, time and money."),
        ("quality", "How many to test, how sure a mean is, whether a machine has moved."),
    ] {
        let name = format!("hankwise.{room}");
        let module = PyModule::new(py, &name)?;
        module.setattr("__doc__", about)?;
        // Texts are made once: this loop is a good part of the time of the import.
        let home = PyString::new(py, &name);
        let own_module = intern!(py, "__module__");
        for card in hankwise::catalogue::formulas().filter(|f| f.room() == room) {
            let one = Bound::new(py, formula::Formula::of(card))?;
            // On the object: a class whose module depends on the object breaks `help`.
            one.setattr(own_module, &home)?;
            let word = PyString::intern(py, card.name);
            module.add(&word, &one)?;
            formulas.set_item(word, one)?;
        }
        for card in hankwise::catalogue::calculations().filter(|card| card.room() == room) {
            let one = Bound::new(py, calculation::Calculation::of(card))?;
            one.setattr(own_module, &home)?;
            module.add(card.name, &one)?;
            calculations.set_item(card.name, one)?;
        }
        for function in room_functions(room, &module)? {
            function.setattr(own_module, &home)?;
            module.add_function(function)?;
        }
        modules.set_item(name, &module)?;
        m.add(room, module)?;
    }
    m.add("formulas", formulas)?;
    m.add("calculations", calculations)?;
    Ok(())
}

/// What a room has besides its formulas; its types are in `hankwise/_hankwise.pyi`.
fn room_functions<'py>(
    room: &str,
    m: &Bound<'py, PyModule>,
) -> PyResult<Vec<Bound<'py, PyCFunction>>> {
    Ok(match room {
        "fibre" => vec![
            wrap_pyfunction!(allowance::allowance, m)?,
            wrap_pyfunction!(allowance::allowances, m)?,
            wrap_pyfunction!(grade::us_grade, m)?,
        ],
        "yarn" => vec![
            wrap_pyfunction!(yarn::parse, m)?,
            wrap_pyfunction!(hand_knitting::weight_class, m)?,
            wrap_pyfunction!(hand_knitting::weight_band, m)?,
            wrap_pyfunction!(rounding::round_tex, m)?,
            wrap_pyfunction!(rounding::round_count, m)?,
        ],
        "cloth" => vec![
            wrap_pyfunction!(weave::weave, m)?,
            wrap_pyfunction!(weave::satin_moves, m)?,
            wrap_pyfunction!(draft::draft, m)?,
            wrap_pyfunction!(colours::colour_order, m)?,
        ],
        "quality" => vec![
            wrap_pyfunction!(chart::chart, m)?,
            wrap_pyfunction!(chart::capability, m)?,
            wrap_pyfunction!(quality::summary, m)?,
            wrap_pyfunction!(quality::deviations, m)?,
            wrap_pyfunction!(quality::chart_constants, m)?,
            wrap_pyfunction!(quality::student_t, m)?,
            wrap_pyfunction!(quality::chi_square, m)?,
        ],
        _ => vec![],
    })
}
