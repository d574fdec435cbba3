//! A formula of the catalogue as a callable.

use hankwise::formula::{self, Solution};
use hankwise::quantity::Amount;
use hankwise::source::basis;
use pyo3::exceptions::{PyIndexError, PyKeyError, PyTypeError};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};

use crate::attributes::{callable, dict};
use crate::call::{signature, warn};
use crate::errors::OrRaise;
use crate::inputs::{Given, base_unit, locate, one, one_figure, one_shape};
use crate::quantity::Quantity;
use crate::text::{Text, keyword};
use crate::working::Working;

// A formula of the catalogue. Its class has no doc comment, which would come before the `__doc__` of
// each formula.
#[pyclass(frozen, dict, weakref, module = "hankwise")]
pub(crate) struct Formula {
    pub(crate) card: &'static formula::Formula,
}

/// What is asked of `solve`: the place of the unknown, the wanted result, all inputs; at the place of
/// the unknown stands no number.
struct Asked {
    place: usize,
    wanted: Amount,
    wanted_text: Option<String>,
    given: Vec<Amount>,
    typed: Vec<Option<String>>,
}

impl Formula {
    pub(crate) fn of(card: &'static formula::Formula) -> Formula {
        Formula { card }
    }

    fn asked<'py>(
        &self,
        py: Python<'py>,
        unknown: &str,
        kwargs: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Asked> {
        let card = self.card;
        let Some(place) = card.inputs.iter().position(|i| i.name == unknown) else {
            return Err(PyTypeError::new_err(format!(
                "{} has no input '{unknown}' to solve for; its inputs are {}",
                card.name,
                self.names()
            )));
        };
        if card.inputs[place].many {
            return Err(PyTypeError::new_err(format!(
                "{}: a list such as '{unknown}' cannot be solved for",
                card.name
            )));
        }
        let others = PyDict::new(py);
        let mut wanted = None;
        for (name, value) in kwargs.map(PyDictMethods::iter).into_iter().flatten() {
            let name = keyword(&name, self.card.name)?;
            if name == card.name || name == "result" {
                wanted = Some(value);
            } else if name == unknown {
                return Err(PyTypeError::new_err(format!(
                    "'{unknown}' is what is looked for and was given too"
                )));
            } else {
                others.set_item(name, value)?;
            }
        }
        let Some(wanted) = wanted else {
            return Err(PyTypeError::new_err(format!(
                "the wanted result is missing; write {}=\"{}\"",
                card.name,
                card.output.kind.example()
            )));
        };
        let Given::One(wanted, wanted_text) = one(&wanted, card.output.kind)? else {
            return Err(PyTypeError::new_err("solve takes one value for the result, not an array"));
        };
        let bound = self.bind(&PyTuple::empty(py), Some(&others), Some(unknown))?;
        let (mut given, mut typed) = (Vec::new(), Vec::new());
        for one in self.read(&bound)?.given {
            let Given::One(amount, text) = one else {
                return Err(PyTypeError::new_err(
                    "solve takes one value for each input, not arrays",
                ));
            };
            given.push(amount);
            typed.push(text);
        }
        let unit = base_unit(card.inputs[place].kind);
        given.insert(place, Amount { number: f64::NAN, unit });
        typed.insert(place, None);
        Ok(Asked { place, wanted, wanted_text, given, typed })
    }
}

callable! {
    Formula, self, py {
        /// The formula in symbols.
        equation: String = self.card.equations().join("; ");
        /// The name of the formula that this one is the inverse of.
        inverse_of: Option<&'static str> = self.card.inverse_of;
        /// Where it holds and where not.
        limits: Vec<&'static str> = self.card.limits.to_vec();
        /// What people get wrong with it.
        slips: Vec<&'static str> = self.card.slips.to_vec();
        /// Keys of the sources; `hankwise.source(key)` tells more.
        sources: Vec<&'static str> = self.card.sources.to_vec();
    }

    #[pyo3(signature = (*args, **kwargs))]
    fn __call__<'py>(
        &self,
        py: Python<'py>,
        args: &Bound<'py, PyTuple>,
        kwargs: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Quantity> {
        let call = self.read(&self.bind(args, kwargs, None)?)?;
        let row: Option<Vec<f64>> = call
            .given
            .iter()
            .map(|g| if let Given::One(amount, _) = g { Some(amount.base()) } else { None })
            .collect();
        match row {
            Some(row) => self.call_scalar(py, &row),
            None => self.call_arrays(py, &call),
        }
    }
    /// The answer with its working. Where an input is an array, `at` says which of its places.
    #[pyo3(signature = (*args, at=None, **kwargs))]
    fn working<'py>(
        &self,
        py: Python<'py>,
        args: &Bound<'py, PyTuple>,
        at: Option<Bound<'py, PyAny>>,
        kwargs: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Working> {
        let call = self.read(&self.bind(args, kwargs, None)?)?;
        let mut arrays = one_shape(py, &call)?.into_iter();
        let mut amounts = Vec::new();
        let mut typed = Vec::new();
        let of = call.given.len();
        for (place, given) in call.given.into_iter().enumerate() {
            match given {
                Given::One(amount, text) => {
                    amounts.push(amount);
                    typed.push(text);
                }
                Given::Many(array, _) => {
                    let array = arrays.next().unwrap_or(array);
                    let Some(at) = &at else {
                        return Err(PyTypeError::new_err(format!(
                            "{}: '{}' is an array; say which of its places to show, such as at=0",
                            self.card.name,
                            self.card.input(place, of).name
                        )));
                    };
                    let number: f64 =
                        array.get_item(at).and_then(|x| x.extract()).map_err(|_| {
                            PyIndexError::new_err(format!(
                                "at={at} is not a place of '{}'",
                                self.card.input(place, of).name
                            ))
                        })?;
                    amounts
                        .push(Amount { number, unit: base_unit(self.card.input(place, of).kind) });
                    typed.push(None);
                }
            }
        }
        let working = self.card.working(&amounts, &typed).or_raise()?;
        let row: Vec<f64> = amounts.iter().map(Amount::base).collect();
        warn(py, self.card.unusual(&row))?;
        Ok(Working { working })
    }
    /// Every value of one input that gives the wanted result, in its usual range and, where there is none,
    /// as far as it can be; `between=(low, high)` looks there alone. Name the result by the name of the
    /// formula: `f.solve("twist", twist_factor="39 turns/cm √tex", count="16 YSW")`. Where all values
    /// of a stretch give it, the least and the most of them stand in the list (`None` where there is no such
    /// end), and a warning says so; so it does where the only value is a maximum, a minimum or the last with
    /// an answer.
    #[pyo3(signature = (unknown, *, between=None, **kwargs))]
    fn solve<'py>(
        &self,
        py: Python<'py>,
        unknown: Text,
        between: Option<(Bound<'py, PyAny>, Bound<'py, PyAny>)>,
        kwargs: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Vec<Option<Quantity>>> {
        let unknown = unknown.named("unknown")?;
        let Asked { place, wanted, given, .. } = self.asked(py, unknown, kwargs)?;
        let row: Vec<f64> = given.iter().map(Amount::base).collect();
        let kind = self.card.inputs[place].kind;
        let bound = |value: &Bound<'py, PyAny>| {
            one_figure(value, kind)
                .map(|(amount, _)| amount.base())
                .map_err(|e| locate(py, self.card.name, "between", e))
        };
        let bounds = match &between {
            Some((low, high)) => {
                let (low, high) = (bound(low)?, bound(high)?);
                Some((low.min(high), low.max(high)))
            }
            None => None,
        };
        let found = self.card.solve(place, wanted.base(), &row, bounds).or_raise()?;
        let mut said = self.card.solution_words(place, row.len(), &found);
        let all: Vec<Option<f64>> = found
            .iter()
            .flat_map(|one| match *one {
                Solution::One(x) | Solution::Touching(x, _) => vec![Some(x)],
                Solution::Stretch { least, most } => vec![least, most],
            })
            .collect();
        let unusual = |x: &f64| self.card.unusual_at(place, row.len(), *x);
        said.extend(all.iter().flatten().filter_map(unusual));
        warn(py, said)?;
        let quantity = |x| Quantity::scalar(py, x, base_unit(kind), kind);
        Ok(all.into_iter().map(|x| x.map(quantity)).collect())
    }
    /// The working of one input that gives the wanted result, which is named as in `solve`: that of the
    /// inverse formula where there is one, else that of this formula with the input found.
    #[pyo3(signature = (unknown, **kwargs))]
    fn solve_working<'py>(
        &self,
        py: Python<'py>,
        unknown: Text,
        kwargs: Option<&Bound<'py, PyDict>>,
    ) -> PyResult<Working> {
        let unknown = unknown.named("unknown")?;
        let Asked { place, wanted, wanted_text, given, typed } = self.asked(py, unknown, kwargs)?;
        let working = self
            .card
            .solve_working(place, &wanted, wanted_text, &given, &typed)
            .or_raise()?;
        let of = given.len();
        let known = given.iter().enumerate().filter(|(at, _)| *at != place);
        let mut unusual: Vec<String> =
            known.filter_map(|(at, x)| self.card.unusual_at(at, of, x.base())).collect();
        // An inverse is not bound to the usual range of what it gives.
        if self.card.solved_for.iter().any(|solved| solved.unknown == unknown) {
            unusual.extend(self.card.unusual_at(place, of, working.value()));
        }
        warn(py, unusual)?;
        Ok(Working { working })
    }
    #[getter]
    fn __signature__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let all = self.card.inputs.iter().map(|input| (input.name, None));
        signature(py, "POSITIONAL_OR_KEYWORD", all)
    }
    /// The formulas that solve the same relation for its other quantities: their names by what they give.
    #[getter]
    fn solved_for<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let all = PyDict::new(py);
        for solved in self.card.solved_for {
            all.set_item(solved.unknown, solved.by.name)?;
        }
        Ok(all)
    }
    /// The inputs, as dictionaries.
    #[getter]
    fn inputs<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let mut all = Vec::new();
        for input in self.card.inputs {
            all.push(dict!(py, {
                "name": input.name,
                "symbol": input.symbol,
                "meaning": input.meaning,
                "kind": input.kind.words(),
                "type": input.kind.name(),
                "usual": input.usual,
                "basis": basis(input.basis).words(),
                "source": input.basis,
                "unit": input.kind.base(),
                "many": input.many,
                "whole": input.whole,
            }));
        }
        Ok(all)
    }
    /// The result, as a dictionary.
    #[getter]
    fn output<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        Ok(dict!(py, {
            "symbol": self.card.output.symbol,
            "kind": self.card.output.kind.words(),
            "type": self.card.output.kind.name(),
            "unit": self.card.output.kind.base(),
        }))
    }
    /// How many values from outside it is checked against, by what they rest on.
    #[getter]
    fn checks<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let (one, checks) = (PyDict::new(py), self.card.checks());
        for (basis, values) in checks.by_basis() {
            one.set_item(basis.words(), values)?;
        }
        Ok(one)
    }
    fn __repr__(&self) -> String {
        format!("<formula {}: {}>", self.card.name, self.card.equations().join("; "))
    }
}

/// A cited source: key, basis, title, and where it was read.
#[pyfunction]
#[pyo3(signature = (key, /))]
pub(crate) fn source<'py>(py: Python<'py>, key: Text) -> PyResult<Bound<'py, PyDict>> {
    let key = key.named("key")?;
    let source = hankwise::source::source(key)
        .ok_or_else(|| PyKeyError::new_err(format!("no source '{key}' is cited")))?;
    Ok(dict!(py, {
        "key": source.key,
        "basis": source.basis.words(),
        "title": source.title,
        "place": source.place,
    }))
}
