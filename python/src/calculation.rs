//! A calculation: what it asks, and the results that go together.

use hankwise::Error;
use hankwise::calculation::{self, Item, Output, flat};
use hankwise::source::basis;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};

use crate::attributes::{callable, dict};
use crate::call::signature;
use crate::errors::raise;
use crate::given::{Read, read};
use crate::results::Results;

// A calculation. Its class has no doc comment, which would come before the `__doc__` of each.
#[pyclass(frozen, module = "hankwise", dict, weakref)]
pub(crate) struct Calculation {
    card: &'static calculation::Calculation,
}

impl Calculation {
    pub(crate) fn of(card: &'static calculation::Calculation) -> Calculation {
        Calculation { card }
    }
}

callable! {
    Calculation, self, py {
        /// What it asks: a dictionary for each input.
        inputs: PyResult<Vec<Bound<'py, PyDict>>> = inputs(py, self.card.inputs);
        /// What it answers: a dictionary for each result.
        results: PyResult<Vec<Bound<'py, PyDict>>> = results(py, self.card.outputs);
    }

    #[getter]
    fn __signature__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let mut all: Vec<(&str, Option<Option<String>>)> = Vec::new();
        for item in flat(self.card.inputs) {
            let words = match &item {
                Item::One(input) => input.default_words(),
                Item::Word(word) => word.default.map(|place| word.words[place].0.to_owned()),
                _ => None,
            };
            all.push((item.name(), (!item.is_needed()).then_some(words)));
            if let Item::Parts(parts) = &item {
                all.push((parts.set, Some(None)));
            }
        }
        signature(py, "KEYWORD_ONLY", all)
    }
    #[pyo3(signature = (*args, **given))]
    fn __call__(
        &self,
        py: Python<'_>,
        args: &Bound<'_, PyTuple>,
        given: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<Results> {
        if !args.is_empty() {
            let first = flat(self.card.inputs).first().map_or("", Item::name);
            return Err(raise(&Error::call(format!(
                "{}: inputs are given by name, such as {first}=…",
                self.card.name
            ))));
        }
        let Read { given, container } = read(self.card, given)?;
        Results::solve(py, self.card, given, container)
    }
    fn __repr__(&self) -> String {
        let all = flat(self.card.inputs);
        let names: Vec<&str> = all.iter().map(Item::name).collect();
        format!("<calculation {}: {}>", self.card.name, names.join(", "))
    }
}

fn inputs<'py>(py: Python<'py>, items: &[Item]) -> PyResult<Vec<Bound<'py, PyDict>>> {
    let mut all = Vec::new();
    for item in flat(items) {
        let row = dict!(py, {
            "name": item.name(),
            "meaning": item.meaning(),
            "needed": item.is_needed(),
        });
        let more = match &item {
            Item::One(input) | Item::List(input) => dict!(py, {
                "symbol": input.symbol,
                "kind": input.kind.words(),
                "unit": input.kind.base(),
                "usual": input.has_usual().then_some(input.usual),
                "basis": input.has_usual().then(|| basis(input.basis).words()),
                "source": input.has_usual().then_some(input.basis),
                "default": input.default_words(),
                "many": matches!(item, Item::List(_)),
            }),
            Item::Word(word) => {
                let words: Vec<&str> = word.words.iter().map(|(word, _)| *word).collect();
                dict!(py, { "words": words })
            }
            Item::Parts(parts) => dict!(py, { "set": parts.set, "unit": parts.kind.base() }),
            Item::Rows(rows) => {
                dict!(py, { "rows": inputs(py, rows.items)?, "label": rows.label })
            }
            Item::Flag(..) => dict!(py, { "flag": true }),
            Item::Text(_) | Item::Group(_) | Item::Choice(_) => PyDict::new(py),
        };
        row.update(more.as_mapping())?;
        all.push(row);
    }
    Ok(all)
}

fn results<'py>(py: Python<'py>, outputs: &[Output]) -> PyResult<Vec<Bound<'py, PyDict>>> {
    let mut all = Vec::new();
    for output in outputs {
        match output {
            Output::Block(_) => {}
            Output::One(answer) | Output::List(answer) => all.push(dict!(py, {
                "name": answer.name,
                "meaning": answer.meaning,
                "kind": answer.kind.words(),
                "unit": answer.kind.base(),
                "many": matches!(output, Output::List(_)),
            })),
            Output::Part { outputs, .. } => all.extend(results(py, outputs)?),
            Output::Rows { name, meaning, label, outputs } => all.push(dict!(py, {
                "name": name,
                "meaning": meaning,
                "rows": results(py, outputs)?,
                "label": label,
            })),
        }
    }
    Ok(all)
}
