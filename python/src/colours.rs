//! Orders of colour.

use hankwise::cloth::Laid;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};

use crate::attributes::attributes;
use crate::columns::shown;
use crate::errors::{NotationError, OrRaise};
use crate::inputs::whole;
use crate::text::{Text, text_of};

/// What a pickle keeps: the order, the threads, whether it is evened.
type State = (String, Option<u32>, bool);

/// An order of colours, and how it lies over a number of threads. Made by `hankwise.cloth.colour_order`.
#[pyclass(frozen, module = "hankwise", eq, weakref)]
#[derive(PartialEq)]
pub(crate) struct ColourOrder {
    pub(crate) order: hankwise::cloth::ColourOrder,
    laid: Option<Laid>,
    even: bool,
}

/// An order of colours, a count and a colour in turn, over a number of ends or picks.
///
/// Both edges of the cloth are made alike where the repeat has a middle; with `even=False` the repeats
/// begin at the left edge. A bracket is taken several times: "(2 black 2 white) x3 8 grey".
///
/// >>> import hankwise as hw
/// >>> stripe = hw.cloth.colour_order("24 grey 4 white", ends=640)
/// >>> stripe.counts
/// {'grey': 552, 'white': 88}
/// >>> print(stripe)
/// 24 grey 4 white
/// 22 whole repeats of 28 and 24 threads over; alike at both edges, 24 grey.
#[pyfunction]
#[pyo3(signature = (order, ends=None, *, even=true))]
pub(crate) fn colour_order(
    order: &Bound<'_, PyAny>,
    ends: Option<&Bound<'_, PyAny>>,
    even: bool,
) -> PyResult<ColourOrder> {
    let Ok(text) = order.cast::<PyString>() else {
        return Err(PyTypeError::new_err(format!(
            "colour_order, order: write a text such as '24 grey 4 white', not {}",
            shown(order)
        )));
    };
    let ends = ends.map(|ends| whole(ends, "colour_order", "ends")).transpose()?;
    laid_out(&text_of(text, "order")?, ends, even)
}

/// For pickles.
#[pyfunction]
pub(crate) fn _colour_order(order: Text, ends: Option<u32>, even: bool) -> PyResult<ColourOrder> {
    let order = order.named("order")?;
    laid_out(order, ends, even)
}

fn laid_out(order: &str, ends: Option<u32>, even: bool) -> PyResult<ColourOrder> {
    const NAME: &str = "colour_order";
    let order: hankwise::cloth::ColourOrder = order.parse().or_raise_at(NAME)?;
    let laid = match ends {
        None => None,
        Some(n) if even => Some(order.balanced(n).or_raise_at(NAME)?),
        Some(n) => Some(order.from_start(n).or_raise_at(NAME)?),
    };
    Ok(ColourOrder { order, laid, even })
}

impl ColourOrder {
    /// As the text of an order that is laid with both edges alike; one that is laid otherwise would be
    /// lost without a word.
    pub(crate) fn text(&self) -> PyResult<String> {
        if self.even {
            return Ok(self.order.to_string());
        }
        Err(NotationError::new_err(format!(
            "the order was made with even=False, and here both edges are laid alike; write '{}'",
            self.order
        )))
    }
}

attributes! {
    ColourOrder, self, py {
        /// The stripes of the repeat: threads and colour.
        stripes: Vec<(u32, String)> =
            self.order.stripes().iter().map(|s| (s.threads, s.colour.clone())).collect();
        /// Threads in the repeat.
        repeat: u32 = self.order.threads();
        /// The colours, in the order in which they are first met.
        colours: Vec<String> = self.order.colours().into_iter().map(str::to_owned).collect();
        /// Whole repeats; None without ends.
        repeats: Option<u32> = self.laid.as_ref().map(|laid| laid.repeats);
        /// Threads that whole repeats leave over; None without ends.
        over: Option<u32> = self.laid.as_ref().map(|laid| laid.over);
        /// True where both edges are alike; None without ends.
        mirrored: Option<bool> = self.laid.as_ref().map(|laid| laid.mirrored);
        /// The stripes at the left and the right edge, in words; None without ends.
        edges: Option<(String, String)> =
            self.laid.as_ref().map(|laid| (laid.edges[0].to_string(), laid.edges[1].to_string()));
    }

    /// Threads of each colour: over all ends where they were given, else in the repeat.
    #[getter]
    fn counts<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let counts = PyDict::new(py);
        match &self.laid {
            Some(laid) => {
                for (colour, n) in laid.counts() {
                    counts.set_item(colour, n)?;
                }
            }
            None => {
                for stripe in self.order.stripes() {
                    let before: Option<u32> =
                        counts.get_item(&stripe.colour)?.map(|n| n.extract()).transpose()?;
                    counts.set_item(&stripe.colour, before.unwrap_or(0) + stripe.threads)?;
                }
            }
        }
        Ok(counts)
    }
    /// The stripes as they are laid, from the left edge; None without ends.
    #[getter]
    fn laid(&self) -> Option<Vec<(u32, String)>> {
        let laid = self.laid.as_ref()?;
        Some(laid.stripes.iter().map(|s| (s.threads, s.colour.clone())).collect())
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, State)> {
        let make = py.import("hankwise._hankwise")?.getattr("_colour_order")?;
        Ok((make, (self.order.to_string(), self.laid.as_ref().map(Laid::threads), self.even)))
    }
    fn __str__(&self) -> String {
        match &self.laid {
            Some(laid) => format!("{}\n{}", self.order, laid.words("threads")),
            None => self.order.to_string(),
        }
    }
    fn __repr__(&self) -> String {
        match &self.laid {
            Some(laid) => format!("<order of colours: {} over {}>", self.order, laid.threads()),
            None => format!("<order of colours: {}>", self.order),
        }
    }
}
