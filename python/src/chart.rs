//! Control charts and capability.

use hankwise::quality::chart::{self as charts, Asked, Finding, Kind};
use hankwise::quality::{self as room};
use hankwise::quantity;
use pyo3::prelude::*;
use pyo3::types::PyDict;

use crate::attributes::attributes;
use crate::errors::{NotationError, OrRaise};
use crate::inputs::whole;
use crate::quantity::Quantity;
use crate::readings::Readings;
use crate::text::{File, Text};

/// A control chart: centre, limits, points, what they say. Shows itself as a table; `plot` draws it.
#[pyclass(frozen, module = "hankwise")]
pub(crate) struct Chart {
    chart: charts::Chart,
    kind: quantity::Kind,
}

/// A control chart of readings in the order in which they were taken.
///
/// `kind` is "mean" (of subgroups; where `subgroup` is given), "range", "deviation", "individuals"
/// (single readings; where it is not) or "moving range". Limits come from all points, from the first
/// `baseline` of them, or from a `centre` and a standard deviation within subgroups (`sigma`) that are
/// known. A point outside alone is called an outlier; several neighbours outside, or eight points in a
/// row on one side, a drift.
///
/// >>> import hankwise as hw
/// >>> mornings = hw.q([151, 149, 150, 152, 148, 150, 151, 149, 163, 150, 149, 151], "tex")
/// >>> chart = hw.quality.chart(mornings)
/// >>> chart.out
/// [8]
/// >>> chart.findings[0]["what"]
/// 'outlier'
#[pyfunction]
#[pyo3(signature = (values, subgroup=None, kind=None, *, centre=None, sigma=None, baseline=None))]
pub(crate) fn chart(
    values: &Bound<'_, PyAny>,
    subgroup: Option<Bound<'_, PyAny>>,
    kind: Option<Text>,
    centre: Option<Bound<'_, PyAny>>,
    sigma: Option<Bound<'_, PyAny>>,
    baseline: Option<Bound<'_, PyAny>>,
) -> PyResult<Chart> {
    const NAME: &str = "chart";
    let kind = Text::option(kind.as_ref(), "kind")?;
    let readings = Readings::read(values, NAME)?;
    let size = subgroup.map(|n| whole(&n, NAME, "subgroup")).transpose()?;
    let kind = match kind {
        Some(word) => word.parse::<Kind>().or_raise_at(NAME)?,
        None if size.is_some_and(|n| n > 1) => Kind::Mean,
        None => Kind::Individuals,
    };
    if size.is_none() && !kind.is_single() {
        return Err(NotationError::new_err(format!(
            "{NAME}: a chart of subgroups wants their size; write subgroup=5, as many as were taken \
             together"
        )));
    }
    let size = size.unwrap_or(1);
    let figure = |value: Option<Bound<'_, PyAny>>, name: &str| {
        value.map(|v| readings.figure(&v, NAME, name)).transpose()
    };
    let mut asked = Asked::new(kind, size);
    asked.centre = figure(centre, "centre")?;
    asked.sigma = figure(sigma, "sigma")?;
    asked.baseline = match baseline {
        Some(b) => Some(whole(&b, NAME, "baseline")? as usize),
        None => None,
    };
    let of = readings.kind;
    let made = readings.sample().and_then(|sample| charts::Chart::new(sample, asked));
    Ok(Chart { chart: made.or_raise_at(NAME)?, kind: of })
}

impl Chart {
    fn quantity(&self, py: Python<'_>, x: f64) -> Quantity {
        Quantity::scalar(py, x, self.chart.sample.unit, self.kind)
    }
}

attributes! {
    Chart, self, py {
        /// What its points are: "mean", "range", "deviation", "individuals" or "moving range".
        kind: &'static str = self.chart.asked.kind.word();
        /// Readings in a subgroup; 1 of single readings.
        subgroup: u32 = self.chart.asked.subgroup;
        /// The unit of the readings.
        unit: &'static str = self.chart.sample.unit.symbol;
        /// The line in the middle.
        centre: Quantity = self.quantity(py, self.chart.centre);
        /// The standard deviation within subgroups.
        sigma: Quantity = self.quantity(py, self.chart.sigma);
        /// The points, in the unit of the readings.
        points: Bound<'py, numpy::PyArray1<f64>> =
            numpy::PyArray1::from_slice(py, &self.chart.points);
        /// Places of the points outside the limits, from 0.
        out: Vec<usize> = self.chart.out.clone();
        /// True where no point is outside and no run says that the level has moved.
        steady: bool = self.chart.is_steady();
        /// Points to the first false alarm of its rules, on the average, where nothing has changed.
        points_to_false_alarm: f64 = self.chart.false_alarm;
        /// Its title.
        title: String = self.chart.title();
    }

    /// The lower and the upper control limit.
    #[getter]
    fn limits(&self, py: Python<'_>) -> (Quantity, Quantity) {
        let [low, high] = self.chart.limits;
        (self.quantity(py, low), self.quantity(py, high))
    }
    /// What the points say, as dictionaries: what ("outlier" or "drift"), first and last place from 0,
    /// side ("above" or "below"), sentence.
    #[getter]
    fn findings<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let one = |finding: &Finding| {
            let row = PyDict::new(py);
            let (what, first, last, above) = match *finding {
                Finding::Outlier { at } => {
                    ("outlier", at, at, self.chart.points[at] > self.chart.centre)
                }
                Finding::Drift { from, to, above } => ("drift", from, to, above),
            };
            row.set_item("what", what)?;
            row.set_item("first", first)?;
            row.set_item("last", last)?;
            row.set_item("side", if above { "above" } else { "below" })?;
            row.set_item("sentence", self.chart.say(finding))?;
            Ok(row)
        };
        self.chart.findings.iter().map(one).collect()
    }
    /// The chart as a table of text.
    fn report(&self) -> String {
        self.chart.report().text().trim().to_owned()
    }
    /// The chart drawn. Needs matplotlib; gives its Figure.
    fn plot<'py>(slf: &Bound<'py, Self>) -> PyResult<Bound<'py, PyAny>> {
        slf.py().import("hankwise._chart")?.call_method1("chart_figure", (slf,))
    }
    /// Draws the chart into a file (.svg, .png or .pdf), whole or not at all. Needs matplotlib.
    /// `force=True` replaces a file of another kind too.
    #[pyo3(signature = (path, /, *, force = false), text_signature = "($self, path, /, *, force=False)")]
    fn save(slf: &Bound<'_, Self>, path: File, force: bool) -> PyResult<()> {
        let path = path.named("path")?;
        slf.py().import("hankwise._chart")?.call_method1("save", (slf, path, force)).map(|_| ())
    }
    fn __repr__(&self) -> String {
        self.report()
    }
    fn _repr_html_(&self) -> String {
        self.chart.report().html()
    }
}

/// How a process stands to a tolerance. Shows itself as a table.
#[pyclass(frozen, module = "hankwise")]
pub(crate) struct Capability {
    capability: room::Capability,
    kind: quantity::Kind,
}

/// How readings, in the order in which they were taken, stand to a tolerance: C_p and C_pk with the
/// standard deviation within subgroups (of neighbours, where there are none), P_p and P_pk with that of
/// all readings, and the share outside.
///
/// >>> import hankwise as hw
/// >>> round(hw.quality.capability([9, 11, 9, 11, 9, 11], low=4, high=16).cp, 3)
/// 1.128
#[pyfunction]
#[pyo3(signature = (values, low, high, subgroup=None), text_signature = "(values, low, high, subgroup=1)")]
pub(crate) fn capability(
    values: &Bound<'_, PyAny>,
    low: &Bound<'_, PyAny>,
    high: &Bound<'_, PyAny>,
    subgroup: Option<Bound<'_, PyAny>>,
) -> PyResult<Capability> {
    const NAME: &str = "capability";
    let readings = Readings::read(values, NAME)?;
    let tolerance = [readings.figure(low, NAME, "low")?, readings.figure(high, NAME, "high")?];
    let size = subgroup.map_or(Ok(1), |n| whole(&n, NAME, "subgroup"))?;
    let kind = readings.kind;
    let made = readings.sample().and_then(|sample| room::Capability::new(sample, tolerance, size));
    Ok(Capability { capability: made.or_raise_at(NAME)?, kind })
}

attributes! {
    Capability, self, py, shown as self.capability.report(); {
        /// What the machine could do in the middle of the tolerance.
        cp: f64 = self.capability.within[0];
        /// What the machine could do as it stands.
        cpk: f64 = self.capability.within[1];
        /// What the process would have done in the middle of the tolerance.
        pp: f64 = self.capability.overall[0];
        /// What the process did.
        ppk: f64 = self.capability.overall[1];
        /// Share of the readings outside the tolerance.
        found_outside: f64 = self.capability.found_outside;
        /// Share outside by the normal law.
        expected_outside: f64 = self.capability.expected_outside;
        /// The chart that says whether the process is steady.
        chart: Chart = Chart { chart: self.capability.chart.clone(), kind: self.kind };
    }
}
