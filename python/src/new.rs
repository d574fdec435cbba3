//! New lot files and mill files.

use hankwise::plan;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::attributes::dict;
use crate::errors::OrRaise;
use crate::text::{Text, text_of};

/// Words as texts.
fn words(given: Option<&Bound<'_, PyDict>>) -> PyResult<Vec<(String, String)>> {
    let one = |(name, value): (Bound<'_, PyAny>, Bound<'_, PyAny>)| {
        let name = text_of(&name, "a name")?.to_string();
        let text = text_of(value.str()?.as_any(), &name)?.to_string();
        Ok((name, text))
    };
    given.into_iter().flatten().map(one).collect()
}

/// The words as they are handed over.
fn pairs(words: &[(String, String)]) -> Vec<(&str, &str)> {
    words.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect()
}

/// The text of a new lot file, from words: `greasy="35 kg"`, `breed="Romney"`, `feel="medium"`,
/// `goods="throw:12,hank:50g:120"`, `count="330 m/100g"`, `owner`, `by`, `name`. What is not given is the
/// handbook's, and says so. `mill` is the mill file that it names.
#[pyfunction]
#[pyo3(signature = (mill=Text::Meant("handbook"), **given), text_signature = "(mill='handbook', **given)")]
pub(crate) fn new_lot(mill: Text, given: Option<&Bound<'_, PyDict>>) -> PyResult<String> {
    plan::new_lot(&pairs(&words(given)?), mill.named("mill")?).or_raise()
}

/// The text of a new mill file, from words: `spinning="mule"`, `spindles="120"`, `ends`, `held_up`, `reel`,
/// `loom_width`, `reeds`, `regain`. What is not given is the handbook's, and says so.
#[pyfunction]
#[pyo3(signature = (**given))]
pub(crate) fn new_mill(given: Option<&Bound<'_, PyDict>>) -> PyResult<String> {
    plan::new_mill(&pairs(&words(given)?)).or_raise()
}

/// What is asked for a new lot or a new mill.
#[pyfunction]
#[pyo3(signature = (of, /))]
pub(crate) fn _questions<'py>(py: Python<'py>, of: &str) -> PyResult<Vec<Bound<'py, PyDict>>> {
    let all = if of == "mill" { plan::MILL_QUESTIONS } else { plan::LOT_QUESTIONS };
    let mut rows = Vec::new();
    for question in all {
        rows.push(dict!(py, {
            "word": question.word,
            "ask": question.ask,
            "like": question.like,
            "otherwise": question.otherwise,
        }));
    }
    Ok(rows)
}
