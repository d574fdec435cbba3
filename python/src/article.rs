//! The piece, and its colours.

use hankwise::cloth::{Article, Laid};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};

use crate::columns::shown;
use crate::errors::{NotationError, raise};
use crate::inputs::{locate, one_figure, whole};
use crate::particulars::Particulars;

/// What was given by name: figures, and orders of colour.
fn read(given: Option<&Bound<'_, PyDict>>, of: &str) -> PyResult<Article> {
    let mut article = Article::new();
    for (name, value) in given.into_iter().flat_map(pyo3::types::PyDictMethods::iter) {
        let name: String = name.extract()?;
        let located = |e: hankwise::Error| raise(&e.at(of));
        let kind = Article::kind(&name).map_err(located)?;
        if value.is_none() {
            continue;
        }
        match kind {
            None => {
                let text = match value.cast::<ColourOrder>() {
                    Ok(order) if order.get().even => order.get().order.to_string(),
                    // A piece lays its colours even; another way would be lost without a word.
                    Ok(order) => {
                        return Err(NotationError::new_err(format!(
                            "{of}, {name}: the order was made with even=False, and a piece is laid with \
                             both edges alike; write '{}'",
                            order.get().order
                        )));
                    }
                    Err(_) => value
                        .cast::<PyString>()
                        .map(std::string::ToString::to_string)
                        .map_err(|_| {
                            PyTypeError::new_err(format!(
                                "{of}, {name}: a text such as '24 grey 4 white' is wanted"
                            ))
                        })?,
                };
                article.colour(&name, &text).map_err(located)?;
            }
            Some(kind) => {
                let (amount, typed) =
                    one_figure(&value, kind).map_err(|e| locate(value.py(), of, &name, e))?;
                article.set(&name, amount, typed).map_err(located)?;
            }
        }
    }
    Ok(article)
}

/// piece(*, width, length, warp, weft=None, sett=None, reed=None, finished_ends=None,
///     ends_per_dent=None, picks=None, finished_picks=None, pieces=1, width_shrinkage=0, length_shrinkage=0, draw_in=0, take_up=0, fringe=None, hem=None,
///     side_hem=None, panels=None, seam=None, selvedge_ends=None, selvedge_per_dent=None,
///     pieces_per_warp=None, gap=None, thrums=None, header=None, sample=None, turn=None,
///     warp_waste=None, weft_waste=0, spare=None, size=0, loss=0, loom_width=None, beam=None,
///     creel=None, bobbin=None, pirn=None, cone=None, warp_colours=None, weft_colours=None,
///     selvedge_colour=None)
/// --
///
/// A woven article from its finished size to the reed, the warp, the weft and the yarn for them.
///
/// `width` and `length` are those of the finished article; hems, side hems, seams between `panels` and
/// fringes at each end come on top. Shrinkages are from off the loom to finished, `draw_in` is from
/// the reed to off the loom, `take_up` on the yarn; they are compounded, never added. Give `sett` in
/// the reed, `reed` with `ends_per_dent` or `finished_ends`; `picks` off the loom or `finished_picks`. `thrums`, `header` and
/// `sample` are for each warp, `gap` between two pieces on it. What the loom or the beam cannot take
/// is refused, with what to change.
///
/// >>> import hankwise as hw
/// >>> throw = hw.cloth.piece(width="1.40 m", length="1.80 m", fringe="12 cm", warp="8 Nm",
/// ...                        reed="24 dents/10 cm", picks="4.6 picks/cm", width_shrinkage="12 %",
/// ...                        length_shrinkage="10 %", draw_in="6 %", take_up="8 %", pieces=12,
/// ...                        thrums="90 cm", weft_waste="3 %", loss="2 %")
/// >>> throw["ends"], throw["warp_length"]
/// (<number: 812>, <length: 29.87 m>)
#[pyfunction]
#[pyo3(
    signature = (**given),
    text_signature = "(*, width, length, warp, weft=None, sett=None, reed=None, \
        finished_ends=None, ends_per_dent=None, picks=None, finished_picks=None, pieces=1, width_shrinkage=0, length_shrinkage=0, draw_in=0, take_up=0, \
        fringe=None, hem=None, side_hem=None, panels=None, seam=None, selvedge_ends=None, \
        selvedge_per_dent=None, pieces_per_warp=None, gap=None, thrums=None, header=None, \
        sample=None, turn=None, warp_waste=None, weft_waste=0, spare=None, size=0, loss=0, \
        loom_width=None, beam=None, creel=None, bobbin=None, pirn=None, cone=None, \
        warp_colours=None, weft_colours=None, selvedge_colour=None)"
)]
pub(crate) fn piece(py: Python<'_>, given: Option<&Bound<'_, PyDict>>) -> PyResult<Particulars> {
    let article = read(given, "piece")?;
    Particulars::hand_over(py, article.piece().map_err(|e| e.at("piece")))
}

/// pieces_from_yarn(*, yarn=None, warp_yarn=None, weft_yarn=None, **article)
/// --
///
/// The largest number of whole pieces that the yarn at hand makes, what runs out first and what is left.
///
/// `yarn` is at hand for warp and weft of one count, else `warp_yarn` and `weft_yarn`; the article is
/// given as for `piece`, without `pieces`.
///
/// >>> import hankwise as hw
/// >>> made = hw.cloth.pieces_from_yarn(yarn="12 kg", width="1.40 m", length="1.80 m", warp="8 Nm",
/// ...                                  sett="4.8 ends/cm", picks="4.6 picks/cm", thrums="90 cm",
/// ...                                  draw_in="6 %", take_up="8 %")
/// >>> made["pieces"], made["yarn_left"]
/// (<number: 36>, <mass: 0.09095 kg>)
#[pyfunction]
#[pyo3(
    signature = (**given),
    text_signature = "(*, yarn=None, warp_yarn=None, weft_yarn=None, **article)"
)]
pub(crate) fn pieces_from_yarn(
    py: Python<'_>,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    let article = read(given, "pieces_from_yarn")?;
    Particulars::hand_over(py, article.pieces_from_yarn().map_err(|e| e.at("pieces_from_yarn")))
}

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

/// colour_order(order, ends=None, *, even=True)
/// --
///
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
#[pyo3(
    signature = (order, ends=None, *, even=true),
    text_signature = "(order, ends=None, *, even=True)"
)]
pub(crate) fn colour_order(
    order: &Bound<'_, PyAny>,
    ends: Option<&Bound<'_, PyAny>>,
    even: bool,
) -> PyResult<ColourOrder> {
    let Ok(text) = order.cast::<PyString>() else {
        return Err(PyTypeError::new_err(format!(
            "colour_order, order: a text such as '24 grey 4 white' is wanted, not {}",
            shown(order)
        )));
    };
    let ends = ends.map(|ends| whole(ends, "colour_order", "ends")).transpose()?;
    laid_out(&text.to_string_lossy(), ends, even)
}

/// For pickles.
#[pyfunction]
pub(crate) fn _colour_order(order: &str, ends: Option<u32>, even: bool) -> PyResult<ColourOrder> {
    laid_out(order, ends, even)
}

fn laid_out(order: &str, ends: Option<u32>, even: bool) -> PyResult<ColourOrder> {
    let located = |e: hankwise::Error| raise(&e.at("colour_order"));
    let order: hankwise::cloth::ColourOrder = order.parse().map_err(located)?;
    let laid = match ends {
        None => None,
        Some(n) if even => Some(order.balanced(n).map_err(located)?),
        Some(n) => Some(order.from_start(n).map_err(located)?),
    };
    Ok(ColourOrder { order, laid, even })
}

#[pymethods]
impl ColourOrder {
    /// The stripes of the repeat: threads and colour.
    #[getter]
    fn stripes(&self) -> Vec<(u32, String)> {
        self.order.stripes().iter().map(|s| (s.threads, s.colour.clone())).collect()
    }
    /// Threads in the repeat.
    #[getter]
    fn repeat(&self) -> u32 {
        self.order.threads()
    }
    /// The colours, in the order in which they are first met.
    #[getter]
    fn colours(&self) -> Vec<String> {
        self.order.colours().into_iter().map(str::to_owned).collect()
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
    /// Whole repeats; None without ends.
    #[getter]
    fn repeats(&self) -> Option<u32> {
        self.laid.as_ref().map(|laid| laid.repeats)
    }
    /// Threads that whole repeats leave over; None without ends.
    #[getter]
    fn over(&self) -> Option<u32> {
        self.laid.as_ref().map(|laid| laid.over)
    }
    /// True where both edges are alike; None without ends.
    #[getter]
    fn mirrored(&self) -> Option<bool> {
        self.laid.as_ref().map(|laid| laid.mirrored)
    }
    /// The stripes at the left and the right edge, in words; None without ends.
    #[getter]
    fn edges(&self) -> Option<(String, String)> {
        self.laid.as_ref().map(|laid| (laid.edges[0].to_string(), laid.edges[1].to_string()))
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
