//! Samples and their limits.

use hankwise::quality::{self as room, ChartConstants};
use hankwise::quantity::Kind;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList};

use crate::attributes::{attributes, dict};
use crate::errors::{NotationError, OrRaise};
use crate::inputs::{single, whole};
use crate::quantity::Quantity;
use crate::readings::{Readings, confidence, share};
use crate::result::Table;

/// The constants of control charts for subgroups of n readings, by symbol: A2, A3, B3, B4, D3, D4, E2,
/// c4, c5, d2, d3. Computed from the normal law, for any n from 2 to 1000.
///
/// >>> import hankwise as hw
/// >>> round(hw.quality.chart_constants(5)["A2"], 3)
/// 0.577
#[pyfunction]
pub(crate) fn chart_constants<'py>(n: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyDict>> {
    const NAME: &str = "chart_constants";
    let n_readings = whole(n, NAME, "n")?;
    let constants = ChartConstants::new(n_readings).or_raise_at(NAME)?;
    let all = PyDict::new(n.py());
    for symbol in ChartConstants::SYMBOLS.iter().filter(|s| **s != "n") {
        all.set_item(symbol, constants.get(symbol))?;
    }
    Ok(all)
}

/// Student's t for the mean of readings that gave the standard deviation themselves (readings − 1
/// degrees of freedom): within so many standard errors the true mean lies with the chance given.
///
/// >>> import hankwise as hw
/// >>> round(hw.quality.student_t("95 %", 5), 3)
/// 2.776
#[pyfunction]
pub(crate) fn student_t(
    confidence: &Bound<'_, PyAny>,
    readings: &Bound<'_, PyAny>,
) -> PyResult<f64> {
    const NAME: &str = "student_t";
    let chance = single(confidence, NAME, "confidence", Kind::Fraction)?.base();
    let n = whole(readings, NAME, "readings")?;
    room::student_t(chance, n).or_raise_at(NAME)
}

/// The chi-square (readings − 1 degrees of freedom) below which a share lies, for the limits of a
/// standard deviation.
///
/// >>> import hankwise as hw
/// >>> round(hw.quality.chi_square("97.5 %", 10), 3)
/// 19.023
#[pyfunction]
pub(crate) fn chi_square(share: &Bound<'_, PyAny>, readings: &Bound<'_, PyAny>) -> PyResult<f64> {
    const NAME: &str = "chi_square";
    let below = single(share, NAME, "share", Kind::Fraction)?.base();
    let n = whole(readings, NAME, "readings")?;
    room::chi_square(below, n).or_raise_at(NAME)
}

/// What a sample of readings says: mean, spread, how sure both are. Shows itself as a table.
#[pyclass(frozen, module = "hankwise")]
pub(crate) struct Summary {
    summary: room::Summary,
    kind: Kind,
}

/// What a sample says: mean, standard deviation, coefficient of variation, each with its interval, and
/// the reading that stands farthest out, with a test whether chance explains it. No reading is ever
/// omitted by itself.
///
/// `values` is a quantity that holds several, a list of texts with their units, or bare numbers. With
/// `precision`, an error of the mean as a share of it, how many readings it takes is said too.
///
/// >>> import hankwise as hw
/// >>> hw.quality.summary(hw.q([151, 148, 155, 150, 146], "tex"), precision="2 %")
/// 5 readings
///                                 value       from         to
///   mean                        150 tex  145.8 tex  154.2 tex
///   standard deviation        3.391 tex  2.032 tex  9.745 tex
///   coefficient of variation    2.261 %    1.354 %    6.503 %
///   The true value is between the limits 95 % of the time: the mean by Student's t
///     = 2.776 with 4 degrees of freedom, the spread by chi-square.
///   8 readings would give the mean within 2 % of it, 95 % of the time, if they
///     vary as these do.
///   Reading 3, 155 tex, is 1.474 standard deviations from the mean, within 1.715,
///     the limit of Grubbs' two-sided test: no outlier.
#[pyfunction]
#[pyo3(signature = (values, confidence=None, precision=None), text_signature = "(values, confidence=\"95 %\", precision=None)")]
pub(crate) fn summary(
    values: &Bound<'_, PyAny>,
    confidence: Option<Bound<'_, PyAny>>,
    precision: Option<Bound<'_, PyAny>>,
) -> PyResult<Summary> {
    const NAME: &str = "summary";
    let readings = Readings::read(values, NAME)?;
    let chance = self::confidence(confidence.as_ref(), NAME)?;
    let precision = share(precision.as_ref(), NAME, "precision")?;
    let kind = readings.kind;
    let made = readings.sample().and_then(|sample| room::Summary::new(sample, chance, precision));
    Ok(Summary { summary: made.or_raise_at(NAME)?, kind })
}

impl Summary {
    fn quantity(&self, py: Python<'_>, x: f64) -> Quantity {
        Quantity::scalar(py, x, self.summary.sample.unit, self.kind)
    }
    fn pair(&self, py: Python<'_>, ends: [f64; 2]) -> (Quantity, Quantity) {
        (self.quantity(py, ends[0]), self.quantity(py, ends[1]))
    }
}

attributes! {
    Summary, self, py, shown as self.summary.report(); {
        /// How many readings.
        n: usize = self.summary.sample.n();
        /// The mean.
        mean: Quantity = self.quantity(py, self.summary.mean);
        /// The interval of the mean.
        mean_limits: (Quantity, Quantity) = self.pair(py, self.summary.mean_limits);
        /// The standard deviation.
        sd: Quantity = self.quantity(py, self.summary.sd);
        /// The interval of the standard deviation.
        sd_limits: (Quantity, Quantity) = self.pair(py, self.summary.sd_limits);
        /// The coefficient of variation as a fraction; None where the mean is not above 0.
        cv: Option<f64> = self.summary.variation;
        /// The interval of the coefficient of variation.
        cv_limits: Option<(f64, f64)> =
            self.summary.variation_limits.map(|[low, high]| (low, high));
        /// The chance of the intervals.
        confidence: f64 = self.summary.confidence;
        /// Student's t of the interval of the mean.
        t: f64 = self.summary.t;
        /// The readings that the precision asked for takes; None where none was asked for.
        needed: Option<u32> = self.summary.needed.map(|(_, n)| n);
    }

    /// The reading farthest out: its place from 0, the reading, its ratio and the limit of Grubbs'
    /// test, and whether it stands apart; None of fewer than three or of equal readings.
    #[getter]
    fn farthest<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyDict>>> {
        let Some(f) = self.summary.farthest else { return Ok(None) };
        Ok(Some(dict!(py, {
            "place": f.place,
            "reading": Bound::new(py, self.quantity(py, f.value))?,
            "ratio": f.ratio,
            "limit": f.limit,
            "stands_apart": f.stands_apart(),
        })))
    }
}

/// How far readings are from what was wanted, as shares of it, each and all together, and, with a
/// tolerance, which of them pass. That all together pass does not mean that each does.
///
/// >>> import hankwise as hw
/// >>> hw.quality.deviations(["119 g", "91 g"], "100 g", "10 %")
///   reading  found   off by
///         1  119 g  +19.0 %  outside 10 %
///         2   91 g   −9.0 %  within 10 %
///      mean  105 g   +5.0 %  within 10 %
#[pyfunction]
#[pyo3(signature = (values, wanted, tolerance=None))]
pub(crate) fn deviations(
    values: &Bound<'_, PyAny>,
    wanted: &Bound<'_, PyAny>,
    tolerance: Option<Bound<'_, PyAny>>,
) -> PyResult<Table> {
    const NAME: &str = "deviations";
    let py = values.py();
    let readings = Readings::read(values, NAME)?;
    if readings.values.is_empty() {
        return Err(NotationError::new_err(format!(
            "{NAME}, values: no reading is given; write at least one, such as ['119 g']"
        )));
    }
    let goal = readings.figure(wanted, NAME, "wanted")?;
    let tolerance = share(tolerance.as_ref(), NAME, "tolerance")?;
    if readings.unit.is_indirect() || readings.kind == Kind::Temperature {
        // The same refusal as everywhere; a share of a temperature depends on where its zero is.
        room::Sample::new(readings.values.clone(), readings.unit).or_raise_at(NAME)?;
    }
    let off = room::deviations(&readings.values, goal).or_raise_at(NAME)?;
    let rows = PyList::empty(py);
    for line in off.rows(tolerance) {
        let row = PyDict::new(py);
        row.set_item("reading", line.place)?;
        let found = Quantity::scalar(py, line.found, readings.unit, readings.kind);
        row.set_item("found", Bound::new(py, found)?)?;
        row.set_item("deviation", line.deviation)?;
        row.set_item("passes", line.passes)?;
        rows.append(row)?;
    }
    Ok(Table::showing(rows, off.report(readings.unit, tolerance)))
}
