//! Words of hand knitting and the ball band.

use hankwise::plan::{Align, Block, Report};
use hankwise::prelude::{LinearDensity, Mass, Regain};
use hankwise::quantity::{self, Kind, print};
use hankwise::{catalogue, yarn};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;

use crate::call::warn;
use crate::errors::raise;
use crate::handbook::HandbookTable;
use crate::inputs::{Given, locate, one};
use crate::quantity::Quantity;

/// One figure that is possible, in the base unit of its kind.
fn figure(value: &Bound<'_, PyAny>, kind: Kind, of: &str, name: &str) -> PyResult<f64> {
    let read = || match one(value, kind)? {
        Given::One(amount, _) => {
            kind.check(amount.base()).map_err(|e| raise(&e))?;
            Ok(amount.base())
        }
        Given::Many(..) => Err(PyTypeError::new_err("one figure is wanted, not an array")),
    };
    read().map_err(|error| locate(value.py(), of, name, error))
}

/// The hand-knitting words into whose bands a count falls, with the bands: several, or none.
///
/// >>> import hankwise as hw
/// >>> hw.yarn.weight_class("230 m/100g", "UK")[1]
/// <UK, DK: 200 to 250 m/100g (Skein Queen 2024, published)>
#[pyfunction]
#[pyo3(signature = (count, country=None), text_signature = "(count, country=None)")]
pub(crate) fn weight_class(
    count: &Bound<'_, PyAny>,
    country: Option<&str>,
) -> PyResult<HandbookTable> {
    let count = figure(count, Kind::LinearDensity, "weight_class", "count")?;
    let found = yarn::weight_class(LinearDensity::base(count), country);
    HandbookTable::weights(found.map_err(|e| raise(&e))?)
}

/// The bands that go with a hand-knitting word, one for each table that has it: no two agree.
///
/// >>> import hankwise as hw
/// >>> for figure in hw.yarn.weight_band("DK", "UK"):
/// ...     print(figure.low, "to", figure.high)
/// 200 m/100g to 250 m/100g
/// 200 m/100g to 240 m/100g
/// 100 m/50g to 125 m/50g
#[pyfunction]
#[pyo3(signature = (word, country=None), text_signature = "(word, country=None)")]
pub(crate) fn weight_band(word: &str, country: Option<&str>) -> PyResult<HandbookTable> {
    HandbookTable::weights(yarn::weight_band(word, country).map_err(|e| raise(&e))?)
}

/// What the band of a ball says: the yarn in the ball, metres and yards of a mass, the count, the
/// words of hand knitting. Shows itself as the band. Made by `hankwise.yarn.ball_band`.
#[pyclass(frozen, module = "hankwise", weakref)]
pub(crate) struct BallBand {
    band: yarn::BallBand,
    given: State,
}

/// What a pickle keeps: count, mass, its two regains in base units, the country.
type State = (f64, f64, f64, f64, Option<String>);

impl BallBand {
    fn of(given: State) -> PyResult<BallBand> {
        let (count, ball, regain, label) = (given.0, given.1, given.2, given.3);
        let band = yarn::ball_band(
            LinearDensity::base(count),
            Mass::base(ball),
            Regain::base(regain),
            Regain::base(label),
            given.4.as_deref(),
        );
        Ok(BallBand { band: band.map_err(|e| raise(&e))?, given })
    }
    fn report(&self) -> Report {
        let (count, length) = (self.band.count, self.band.length);
        let of = |x: f64, unit: &str| print::with_unit(x, unit);
        let length_in = |unit| length.number(unit).map_or(String::new(), |x| of(x, unit));
        let metres = |unit| count.number(unit).map_or(String::new(), |x| of(x, "m"));
        let yards = |unit| count.number(unit).map_or(String::new(), |x| of(x, "yd"));
        let count_in = |unit| count.number(unit).map_or(String::new(), |x| of(x, unit));
        let row = |what: &str, one: String, two: String| vec![what.to_owned(), one, two];
        let column = |name: &str, align| (name.to_owned(), align);
        let lengths = Block {
            title: format!("Ball of {}", print::of_kind(self.band.ball.value(), Kind::Mass)),
            columns: vec![
                column("", Align::Left),
                column("metres", Align::Right),
                column("yards", Align::Right),
            ],
            rows: vec![
                row("in the ball", length_in("m"), length_in("yd")),
                row("in 50 g", metres("m/50g"), yards("yd/50g")),
                row("in 100 g", metres("m/100g"), yards("yd/100g")),
                row("in 1 oz", String::new(), yards("yd/oz")),
            ],
            lead: vec![format!("Count {}, {}.", count_in("tex"), count_in("Nm"))],
            ..Block::default()
        };
        let mut words = Block {
            title: "Called, by the tables in use".to_owned(),
            columns: ["country", "word", "band", "source"]
                .map(|name| column(name, Align::Left))
                .to_vec(),
            ..Block::default()
        };
        for f in &self.band.words {
            let (country, word) = (f.of[0].to_owned(), f.of[1].to_owned());
            let band = format!("{} {}", f.words(), f.unit);
            words.rows.push(vec![country, word, band, f.source.to_owned()]);
        }
        if words.rows.is_empty() {
            words.lead.push("No table has a word for it.".to_owned());
        }
        Report { title: String::new(), blocks: vec![lengths, words] }
    }
    fn quantity(&self, py: Python<'_>, base: f64, unit: &str, kind: Kind) -> PyResult<Quantity> {
        let unit = quantity::unit(unit, Some(kind)).map_err(|e| raise(&e))?;
        Ok(Quantity::scalar(py, unit.from_base(base), unit, kind))
    }
    fn count_in(&self, py: Python<'_>, unit: &str) -> PyResult<Quantity> {
        self.quantity(py, self.band.count.value(), unit, Kind::LinearDensity)
    }
}

#[pymethods]
impl BallBand {
    /// Mass of the ball, at the label's regain.
    #[getter]
    fn ball(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.quantity(py, self.band.ball.value(), "g", Kind::Mass)
    }
    /// Yarn in the ball, in metres.
    #[getter]
    fn length(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.quantity(py, self.band.length.value(), "m", Kind::Length)
    }
    /// Yarn in the ball, in yards.
    #[getter]
    fn yards(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.quantity(py, self.band.length.value(), "yd", Kind::Length)
    }
    /// The count at the label's regain, in tex.
    #[getter]
    fn tex(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.count_in(py, "tex")
    }
    /// The count at the label's regain, in metric numbers.
    #[getter]
    fn metric(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.count_in(py, "Nm")
    }
    /// Metres in 50 g.
    #[getter]
    fn per_50g(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.count_in(py, "m/50g")
    }
    /// Metres in 100 g.
    #[getter]
    fn per_100g(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.count_in(py, "m/100g")
    }
    /// Yards in 50 g.
    #[getter]
    fn yards_per_50g(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.count_in(py, "yd/50g")
    }
    /// Yards in 100 g.
    #[getter]
    fn yards_per_100g(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.count_in(py, "yd/100g")
    }
    /// Yards in an ounce.
    #[getter]
    fn yards_per_oz(&self, py: Python<'_>) -> PyResult<Quantity> {
        self.count_in(py, "yd/oz")
    }
    /// The hand-knitting words into whose bands the count falls; may be none.
    #[getter]
    fn words(&self) -> PyResult<HandbookTable> {
        HandbookTable::weights(self.band.words.clone())
    }
    fn __repr__(&self) -> String {
        self.report().text().trim_start_matches('\n').trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.report().html().replace("<h3></h3>", "")
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, State)> {
        let make = py.import("hankwise._hankwise")?.getattr("BallBand")?.getattr("_make")?;
        Ok((make, self.given.clone()))
    }
    #[staticmethod]
    #[pyo3(signature = (count, ball, regain, label, country))]
    fn _make(
        count: f64,
        ball: f64,
        regain: f64,
        label: f64,
        country: Option<String>,
    ) -> PyResult<BallBand> {
        BallBand::of((count, ball, regain, label, country))
    }
}

/// What the band of a ball says, from a count and the mass of the ball. Where the count was measured
/// at another regain than the label's mass holds at, give both. For a length that was weighed, the
/// count is `count_of(length, mass)`.
///
/// >>> import hankwise as hw
/// >>> band = hw.yarn.ball_band("4 Nm", "100 g", country="UK")
/// >>> band.length, band.yards_per_oz
/// (<length: 400 m>, <linear density (count): 124.0 yd/oz>)
/// >>> hw.yarn.ball_band("4 Nm", "100 g", regain="12 %", label_regain="17 %").length
/// <length: 382.9 m>
#[pyfunction]
#[pyo3(
    signature = (count, ball=None, *, regain=None, label_regain=None, country=None),
    text_signature = "(count, ball=\"50 g\", *, regain=None, label_regain=None, country=None)"
)]
pub(crate) fn ball_band(
    count: &Bound<'_, PyAny>,
    ball: Option<&Bound<'_, PyAny>>,
    regain: Option<&Bound<'_, PyAny>>,
    label_regain: Option<&Bound<'_, PyAny>>,
    country: Option<String>,
) -> PyResult<BallBand> {
    let read = |value: &Bound<'_, PyAny>, kind, name| figure(value, kind, "ball_band", name);
    let grams = ball.map_or(Ok(0.05), |ball| read(ball, Kind::Mass, "ball"))?;
    let (regain, label) = match (regain, label_regain) {
        (None, None) => (0.0, 0.0),
        (Some(regain), Some(label)) => {
            (read(regain, Kind::Regain, "regain")?, read(label, Kind::Regain, "label_regain")?)
        }
        _ => {
            return Err(PyTypeError::new_err(
                "ball_band: of the regains one was given; give both, the count's and the label's, \
                 such as regain=\"12 %\", label_regain=\"17 %\"",
            ));
        }
    };
    let py = count.py();
    let count = read(count, Kind::LinearDensity, "count")?;
    let band = BallBand::of((count, grams, regain, label, country))?;
    let card = catalogue::formula("ball_length").map_err(|e| raise(&e))?;
    warn(py, card.unusual(&[grams, count, regain, label]))?;
    Ok(band)
}
