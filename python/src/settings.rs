//! Every theory of setting side by side.

use std::path::PathBuf;

use hankwise::cloth::{self, SettingAsk, Theory};
use hankwise::quantity::{self, Kind};
use pyo3::exceptions::PyKeyError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};

use crate::call::warn;
use crate::errors::raise;
use crate::inputs::single;
use crate::quantity::Quantity;
use crate::working::Working;

const NAME: &str = "settings";

/// The closest setts of a weave in its yarns, by every theory.
///
/// Shows itself as a table. `rows` are the theories, `spread` how far they lie apart,
/// `working("brierley")` how a figure came about.
#[pyclass(frozen, module = "hankwise")]
pub(crate) struct Settings {
    all: cloth::Settings,
}

/// settings(weave, warp, weft=None, factor=None, *, volume=None, ends=None, picks=None, unit=None)
/// --
///
/// The closest setts of a weave in warp and weft, by every theory side by side.
///
/// `weft` is the warp's yarn unless given, `factor` Ashenhurst's (woollen and worsted are both shown
/// without it), `volume` the specific volume for Peirce and Love (cotton's without it). With the `ends` or
/// `picks` wanted each theory says what share of its closest they are.
///
/// >>> import hankwise as hw
/// >>> all = hw.cloth.settings("plain", "100 tex")
/// >>> all["ashenhurst_woollen"]["ends"]
/// <sett: 11.65 threads/cm>
/// >>> round(all.spread["apart"], 2)
/// 0.57
#[pyfunction]
#[pyo3(
    signature = (weave, warp, weft=None, factor=None, *, volume=None, ends=None, picks=None, unit=None),
    text_signature = "(weave, warp, weft=None, factor=None, *, volume=None, ends=None, picks=None, unit=None)"
)]
#[allow(clippy::too_many_arguments, reason = "each is a word of the call")]
pub(crate) fn settings(
    py: Python<'_>,
    weave: &Bound<'_, PyAny>,
    warp: &Bound<'_, PyAny>,
    weft: Option<&Bound<'_, PyAny>>,
    factor: Option<&Bound<'_, PyAny>>,
    volume: Option<&Bound<'_, PyAny>>,
    ends: Option<&Bound<'_, PyAny>>,
    picks: Option<&Bound<'_, PyAny>>,
    unit: Option<&str>,
) -> PyResult<Settings> {
    let given = |value: Option<&Bound<'_, PyAny>>, input: &str, kind: Kind| {
        value.map(|value| single(value, NAME, input, kind)).transpose()
    };
    let woven = crate::weave::read(weave)?;
    // What is named is refused by its name where no theory is for it.
    let text = if weave.is_instance_of::<PyString>() {
        Some(weave.str()?.to_string())
    } else {
        woven.name()
    };
    let weave = match text {
        Some(text) => cloth::Interlacing::parse(&text).map_err(|e| raise(&e.at(NAME)))?,
        None => cloth::Interlacing::of(&woven, &woven.to_string()),
    };
    let warp = single(warp, NAME, "warp", Kind::LinearDensity)?;
    let weft = given(weft, "weft", Kind::LinearDensity)?.unwrap_or(warp);
    let unit = unit.map(|u| quantity::unit(u, Some(Kind::Sett))).transpose();
    let ask = SettingAsk {
        factor: given(factor, "factor", Kind::Ratio)?.map(|f| f.base()),
        volume: given(volume, "volume", Kind::SpecificVolume)?,
        ends: given(ends, "ends", Kind::Sett)?,
        picks: given(picks, "picks", Kind::Sett)?,
        unit: unit.map_err(|e| raise(&e.at(NAME)))?,
    };
    let all = cloth::settings(weave, &warp, &weft, ask).map_err(|e| raise(&e.at(NAME)))?;
    warn(py, all.warnings().to_vec())?;
    Ok(Settings { all })
}

impl Settings {
    fn sett<'py>(
        &self,
        py: Python<'py>,
        base: Option<f64>,
    ) -> PyResult<Option<Bound<'py, Quantity>>> {
        let unit = self.all.unit;
        let one = |x: f64| Quantity::scalar(py, unit.from_base(x), unit, Kind::Sett);
        base.map(|x| Bound::new(py, one(x))).transpose()
    }
    fn row<'py>(&self, py: Python<'py>, t: &Theory) -> PyResult<Bound<'py, PyDict>> {
        let row = PyDict::new(py);
        row.set_item("key", t.key)?;
        row.set_item("theory", t.name)?;
        row.set_item("with", &t.with)?;
        row.set_item("ends", self.sett(py, t.ends)?)?;
        row.set_item("picks", self.sett(py, t.picks)?)?;
        let (ends, picks) = self.all.shares(t);
        row.set_item("ends_share", ends)?;
        row.set_item("picks_share", picks)?;
        row.set_item("picks_at_ends", self.sett(py, t.picks_at_ends)?)?;
        row.set_item("why_not", (!t.why_not.is_empty()).then_some(&t.why_not))?;
        row.set_item("assumes", t.assumes)?;
        row.set_item("source", t.source)?;
        row.set_item("grade", t.grade)?;
        Ok(row)
    }
}

#[pymethods]
impl Settings {
    /// The theories: key, theory, with, ends, picks, ends_share and picks_share of those wanted,
    /// picks_at_ends, why_not, assumes, source, grade.
    #[getter]
    fn rows<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyDict>>> {
        self.all.rows.iter().map(|t| self.row(py, t)).collect()
    }
    /// The closest ends from the lowest theory to the highest: low, high, apart (as a fraction of
    /// the lowest).
    #[getter]
    fn spread<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let spread = self.all.spread();
        let row = PyDict::new(py);
        row.set_item("low", self.sett(py, Some(spread.low))?)?;
        row.set_item("high", self.sett(py, Some(spread.high))?)?;
        row.set_item("apart", spread.apart())?;
        Ok(row)
    }
    /// The unit in which the setts are given.
    #[getter]
    fn unit(&self) -> &'static str {
        self.all.unit.symbol
    }
    /// What is unusual.
    #[getter]
    fn warnings(&self) -> Vec<String> {
        self.all.warnings().to_vec()
    }
    /// How a theory's figure came about: `of` is "ends", "picks" or "picks_at_ends".
    #[pyo3(signature = (theory, of="ends"), text_signature = "($self, theory, of=\"ends\")")]
    fn working(&self, theory: &str, of: &str) -> PyResult<Working> {
        Ok(Working { working: self.all.working(theory, of).map_err(|e| raise(&e))? })
    }
    /// Writes all figures as a live workbook (.xlsx): a cell a step, formulas instead of values.
    #[pyo3(signature = (path, /), text_signature = "($self, path, /)")]
    fn to_sheet(&self, path: PathBuf) -> PyResult<()> {
        self.all.to_sheet(&path).map_err(|e| raise(&e))
    }
    fn __getitem__<'py>(&self, py: Python<'py>, key: &str) -> PyResult<Bound<'py, PyDict>> {
        let theory = self.all.find(key).map_err(|e| PyKeyError::new_err(e.to_string()))?;
        self.row(py, theory)
    }
    fn __len__(&self) -> usize {
        self.all.rows.len()
    }
    fn __repr__(&self) -> String {
        self.all.report().text().trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.all.report().html()
    }
}
