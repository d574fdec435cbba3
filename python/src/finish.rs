//! Finishing: processes, the chain of them, samples.

use hankwise::cloth::{self, Measured};
use hankwise::quantity::{Amount, Kind};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString, PyTuple};

use crate::call::warn;
use crate::errors::{NotationError, UnitError, raise};
use crate::inputs::{base_unit, is_row, locate, members, one_figure};
use crate::particulars::Particulars;
use crate::quantity::Quantity;

/// A process of finishing. Made by `hankwise.cloth.process` and `hankwise.cloth.finished_sample`.
#[pyclass(name = "FinishingProcess", frozen, module = "hankwise", eq, weakref)]
#[derive(PartialEq)]
pub(crate) struct Process {
    pub(crate) process: cloth::Process,
}

/// A figure as it was given, with its text.
type Figure = (Amount, Option<String>);

/// A single figure of a kind.
fn figure(value: &Bound<'_, PyAny>, kind: Kind) -> PyResult<Figure> {
    one_figure(value, kind)
}

/// Under which name a quantity is to be taken: one that knows that it is an over-width or a change with
/// the sign of ISO 5077 is never read as a shrinkage.
fn name_for(name: &str, value: &Bound<'_, PyAny>) -> PyResult<String> {
    let (Ok(quantity), "width" | "length") = (value.cast::<Quantity>(), name) else {
        return Ok(name.to_owned());
    };
    Ok(match quantity.get().kind {
        Kind::OverWidth => format!("over_{name}"),
        Kind::DimensionalChange => format!("{name}_change"),
        Kind::AreaShrinkage => {
            return Err(UnitError::new_err(format!(
                "{name} = {} is a loss of area, not of a side; where both sides shrink alike, \
                 hankwise.cloth.shrinkage_of_side gives that of a side",
                value.repr()?
            )));
        }
        _ => name.to_owned(),
    })
}

/// A process with what is said of it.
fn made(name: &str, said: Option<&Bound<'_, PyDict>>) -> PyResult<cloth::Process> {
    let mut process = cloth::Process::new(name).map_err(|e| raise(&e))?;
    for (key, value) in said.into_iter().flat_map(pyo3::types::PyDictMethods::iter) {
        let key: String = key.extract()?;
        if value.is_none() {
            continue;
        }
        let key = name_for(&key, &value)?;
        let known = cloth::Process::said(&key).map_err(|e| raise(&e.at(name)))?;
        let (amount, typed) =
            figure(&value, known.kind).map_err(|e| locate(value.py(), name, &key, e))?;
        process.set(&key, amount, typed).map_err(|e| raise(&e))?;
    }
    Ok(process)
}

/// A process as it may stand in a list: made before, a bare name, a name and what is said of it, or a
/// dictionary that has the name under "process".
fn listed(item: &Bound<'_, PyAny>) -> PyResult<cloth::Process> {
    if let Ok(process) = item.cast::<Process>() {
        return Ok(process.get().process.clone());
    }
    if let Ok(name) = item.cast::<PyString>() {
        return made(&name.to_string_lossy(), None);
    }
    if let Ok(said) = item.cast::<PyDict>() {
        let said = said.copy()?;
        if let Some(name) = said.get_item("process")? {
            said.del_item("process")?;
            return made(&name.extract::<String>()?, Some(&said));
        }
    }
    if let Ok(pair) = item.cast::<PyTuple>()
        && let Ok((name, said)) = pair.extract::<(String, Bound<'_, PyDict>)>()
    {
        return made(&name, Some(&said));
    }
    Err(NotationError::new_err(format!(
        "{} is no process; write ('mill', {{'width': '18 %'}}), {{'process': 'mill', 'width': '18 %'}} \
         or hankwise.cloth.process('mill', width='18 %')",
        item.repr()?
    )))
}

fn all_listed(processes: &Bound<'_, PyAny>, of: &str) -> PyResult<Vec<cloth::Process>> {
    if !is_row(processes) || processes.cast::<PyDict>().is_ok() {
        return Err(NotationError::new_err(format!(
            "{of}: a list of processes in their order is wanted, such as [('mill', {{'width': '18 %'}}), \
             'press'], not {}",
            processes.repr()?
        )));
    }
    let listed = |(k, item): (usize, PyResult<Bound<'_, PyAny>>)| {
        let item = item?;
        listed(&item).map_err(|e| locate(item.py(), of, &format!("process {}", k + 1), e))
    };
    processes.try_iter()?.enumerate().map(listed).collect()
}

/// The figures of the cloth by name.
fn known(
    of: &str,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Vec<(String, Amount, Option<String>)>> {
    let mut known = Vec::new();
    for (name, value) in given.into_iter().flat_map(pyo3::types::PyDictMethods::iter) {
        let name: String = name.extract()?;
        if value.is_none() {
            continue;
        }
        let figure_of = cloth::known_in_finishing(&name).map_err(|e| raise(&e.at(of)))?;
        let (amount, typed) =
            figure(&value, figure_of.kind).map_err(|e| locate(value.py(), of, &name, e))?;
        known.push((name, amount, typed));
    }
    Ok(known)
}

fn borrowed(known: &[(String, Amount, Option<String>)]) -> Vec<(&str, Amount, Option<String>)> {
    known.iter().map(|(name, amount, typed)| (name.as_str(), *amount, typed.clone())).collect()
}

/// process(name, /, *, width=None, length=None, loss=None, gain=None, over_width=None,
///     over_length=None, width_change=None, length_change=None, warp_yarn=None, weft_yarn=None)
/// --
///
/// A process of finishing and what it does: each figure on the size or mass that the process finds.
///
/// `width` and `length` are shrinkages, negative where the cloth grows, as on the tenter; instead of
/// them `over_width` and `over_length` are on the size after, `width_change` and `length_change` have
/// the sign of ISO 5077. `loss` and `gain` are of mass. `warp_yarn` and `weft_yarn` are shrinkages of
/// the yarn itself; without them it shortens with the cloth and the crimp stays. Any name will do;
/// relax, scour, mill, wash, raise, crop, tenter, dry, steam and press have usual ranges.
///
/// >>> import hankwise as hw
/// >>> hw.cloth.process("mill", width="18 %", length="12 %", loss="2 %")
/// mill
/// <BLANKLINE>
/// what it does to the cloth
///                        on the size before  possible  on the size after  ISO 5077
///   shrinkage in width                 18 %                      21.95 %     −18 %
///   shrinkage in length                12 %                      13.64 %     −12 %
///   loss of mass                        2 %
///   area lost 27.84 %
///   mass per area × 1.358
#[pyfunction]
#[pyo3(
    signature = (name, /, **said),
    text_signature = "(name, /, *, width=None, length=None, loss=None, gain=None, over_width=None, \
        over_length=None, width_change=None, length_change=None, warp_yarn=None, weft_yarn=None)"
)]
pub(crate) fn process(
    py: Python<'_>,
    name: &str,
    said: Option<&Bound<'_, PyDict>>,
) -> PyResult<Process> {
    let process = made(name, said).map_err(|e| located(py, "process", e))?;
    warn(py, process.warnings())?;
    Ok(Process { process })
}

/// An error with the function in front.
fn located(py: Python<'_>, of: &str, error: PyErr) -> PyErr {
    let text = error.value(py).to_string();
    let kind = error.get_type(py);
    match kind.call1((format!("{of}: {text}"),)) {
        Ok(new) => PyErr::from_value(new),
        Err(_) => error,
    }
}

/// What a specimen measured before and after: a pair of figures, or a list of pairs.
fn measured(
    value: &Bound<'_, PyAny>,
    name: &str,
    kind: Kind,
    reading: Option<Amount>,
) -> PyResult<Measured> {
    let py = value.py();
    let place = |e| locate(py, "finished_sample", name, e);
    let (before, after) = if kind == Kind::Mass { ("120 g", "118 g") } else { ("50 cm", "41 cm") };
    let no_pair = |what: &Bound<'_, PyAny>| {
        place(NotationError::new_err(format!(
            "{} is no specimen; write what it measured before and after, such as ('{before}', \
             '{after}'), or a list of such pairs",
            what.repr().map_or_else(|_| "this".to_owned(), |r| r.to_string())
        )))
    };
    let items = members(value, name, kind).map_err(|_| no_pair(value))?;
    let pairs = match items.first() {
        Some(first) if is_row(first) => items,
        _ => vec![value.clone()],
    };
    let pairs = pairs.iter().map(|pair| {
        let two = members(pair, name, kind).map_err(|_| no_pair(pair))?;
        let [before, after] = &two[..] else { return Err(no_pair(pair)) };
        Ok([figure(before, kind).map_err(place)?, figure(after, kind).map_err(place)?])
    });
    let pairs = pairs.collect::<PyResult<Vec<_>>>()?;
    Measured::new(kind, pairs, reading).map_err(|e| place(raise(&e)))
}

/// finished_sample(name, /, *, width=None, length=None, mass=None, reading=None, scale=None)
/// --
///
/// A process as a sample went through it: width, length and mass before and after, for the piece.
///
/// Each is a pair (before, after), or a list of pairs, one for each specimen. `reading` is how far the
/// rule may be misread, either way, at each end of a comparison, `scale` the same of the balance: the
/// figures then carry the band that they leave possible into the chain. Weigh before and after in one
/// state of moisture.
///
/// >>> import hankwise as hw
/// >>> felted = hw.cloth.finished_sample("felt", width=("62 in", "57 in"), length=("36 in", "31 in"),
/// ...                                   reading="0.5 in")
/// >>> felted.width, felted.band("width")
/// (<shrinkage on the size before: 8.065 %>, (<shrinkage on the size before: 6.504 %>, <shrinkage on the size before: 9.6 %>))
/// >>> yardage = hw.cloth.finishing([felted], width="66 in", length="30 yd")
/// >>> yardage["finished_width"].number("in")
/// 60.67741935483871
#[pyfunction]
#[pyo3(
    signature = (name, /, *, width=None, length=None, mass=None, reading=None, scale=None),
    text_signature = "(name, /, *, width=None, length=None, mass=None, reading=None, scale=None)"
)]
pub(crate) fn finished_sample(
    py: Python<'_>,
    name: &str,
    width: Option<&Bound<'_, PyAny>>,
    length: Option<&Bound<'_, PyAny>>,
    mass: Option<&Bound<'_, PyAny>>,
    reading: Option<&Bound<'_, PyAny>>,
    scale: Option<&Bound<'_, PyAny>>,
) -> PyResult<Process> {
    let off = |value: Option<&Bound<'_, PyAny>>, name: &str, kind: Kind| {
        let read = |v| figure(v, kind).map_err(|e| locate(py, "finished_sample", name, e));
        value.map(|v| read(v).map(|f| f.0)).transpose()
    };
    let (rule, balance) =
        (off(reading, "reading", Kind::Length)?, off(scale, "scale", Kind::Mass)?);
    let read = |value: Option<&Bound<'_, PyAny>>, name, kind, off| {
        value.map(|v| measured(v, name, kind, off)).transpose()
    };
    let process = cloth::Process::from_sample(
        name,
        read(width, "width", Kind::Length, rule)?,
        read(length, "length", Kind::Length, rule)?,
        read(mass, "mass", Kind::Mass, balance)?,
    );
    let process = process.map_err(|e| raise(&e.at("finished_sample")))?;
    warn(py, process.warnings())?;
    Ok(Process { process })
}

/// finishing(processes, /, *, width=None, length=None, ends=None, picks=None, warp=None, weft=None,
///     warp_crimp=None, weft_crimp=None, mass_per_area=None, mass=None)
/// --
///
/// What finishing makes of a cloth that comes off the loom so: size, sett, count, mass after each process.
///
/// `processes` stand in their order: made by `process` or `finished_sample`, or written as
/// ("mill", {"width": "18 %"}) or "press". They compound, each on what it finds. As much comes out as
/// what is given allows; the figures are named by stage: `mill_width`, `finished_mass_per_area`.
///
/// >>> import hankwise as hw
/// >>> cloth = hw.cloth.finishing([("scour", {"width": "6 %", "length": "4 %", "loss": "5 %"}),
/// ...                             ("mill", {"width": "15 %", "length": "10 %", "loss": "1 %"}),
/// ...                             ("tenter", {"width": "-2 %"})],
/// ...                            width="1.80 m", ends="8 ends/cm", mass_per_area="300 g/m²")
/// >>> cloth["finished_width"], cloth["finished_mass_per_area"]
/// (<length: 1.467 m>, <mass per area: 400.7 g/m²>)
/// >>> cloth["width_shrinkage"]
/// <shrinkage on the size before: 18.50 %>
#[pyfunction]
#[pyo3(
    signature = (processes, /, **loom),
    text_signature = "(processes, /, *, width=None, length=None, ends=None, picks=None, warp=None, \
        weft=None, warp_crimp=None, weft_crimp=None, mass_per_area=None, mass=None)"
)]
pub(crate) fn finishing(
    py: Python<'_>,
    processes: &Bound<'_, PyAny>,
    loom: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    let (processes, loom) = (all_listed(processes, "finishing")?, known("finishing", loom)?);
    let result = cloth::finishing(&processes, &borrowed(&loom));
    Particulars::hand_over(py, result.map_err(|e| e.at("finishing")))
}

/// to_weave(processes, /, *, widest=None, width=None, length=None, ends=None, picks=None, warp=None,
///     weft=None, warp_crimp=None, weft_crimp=None, mass_per_area=None, mass=None)
/// --
///
/// What to weave for a wanted finished cloth: the chain of `finishing` backward.
///
/// `widest` is the widest that the loom weaves; where that is not enough it is said, with the widest
/// that can be finished.
///
/// >>> import hankwise as hw
/// >>> loom = hw.cloth.to_weave([("wash", {"width": "22 %", "length": "18 %"})],
/// ...                          width="36 in", length="60 in", ends="8 ends/in")
/// >>> [round(loom[name].number("in"), 2) for name in ("loom_width", "loom_length")]
/// [46.15, 73.17]
/// >>> loom["loom_ends"].to("ends/in")
/// <sett: 6.24 threads/in>
#[pyfunction]
#[pyo3(
    signature = (processes, /, *, widest=None, **finished),
    text_signature = "(processes, /, *, widest=None, width=None, length=None, ends=None, picks=None, \
        warp=None, weft=None, warp_crimp=None, weft_crimp=None, mass_per_area=None, mass=None)"
)]
pub(crate) fn to_weave(
    py: Python<'_>,
    processes: &Bound<'_, PyAny>,
    widest: Option<&Bound<'_, PyAny>>,
    finished: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    let (processes, finished) = (all_listed(processes, "to_weave")?, known("to_weave", finished)?);
    let widest =
        widest.map(|w| figure(w, Kind::Length).map_err(|e| locate(py, "to_weave", "widest", e)));
    let widest = widest.transpose()?.map(|w| w.0);
    let result = cloth::to_weave(&processes, &borrowed(&finished), widest);
    Particulars::hand_over(py, result.map_err(|e| e.at("to_weave")))
}

impl Process {
    fn quantity(py: Python<'_>, name: &str, base: f64) -> Quantity {
        let kind = if name == "loss" { Kind::MassLoss } else { Kind::Shrinkage };
        let unit = base_unit(kind);
        Quantity::scalar(py, unit.from_base(base), unit, kind)
    }
    fn figure(&self, py: Python<'_>, name: &str) -> Option<Quantity> {
        self.process.figure(name).map(|x| Process::quantity(py, name, x))
    }
}

#[pymethods]
impl Process {
    /// The name.
    #[getter]
    fn name(&self) -> &str {
        self.process.name()
    }
    /// Shrinkage in width, on the width before; None where nothing is known of it.
    #[getter]
    fn width(&self, py: Python<'_>) -> Option<Quantity> {
        self.figure(py, "width")
    }
    /// Shrinkage in length, on the length before; None where nothing is known of it.
    #[getter]
    fn length(&self, py: Python<'_>) -> Option<Quantity> {
        self.figure(py, "length")
    }
    /// Mass lost, negative where it gains; None where nothing is known of it.
    #[getter]
    fn loss(&self, py: Python<'_>) -> Option<Quantity> {
        self.figure(py, "loss")
    }
    /// Shrinkage of the warp yarn itself; None where it shortens with the cloth.
    #[getter]
    fn warp_yarn(&self, py: Python<'_>) -> Option<Quantity> {
        self.figure(py, "warp_yarn")
    }
    /// Shrinkage of the weft yarn itself; None where it shortens with the cloth.
    #[getter]
    fn weft_yarn(&self, py: Python<'_>) -> Option<Quantity> {
        self.figure(py, "weft_yarn")
    }
    /// The least and the most that a sample leaves possible of "width", "length" or "loss".
    #[pyo3(signature = (name, /), text_signature = "($self, name, /)")]
    fn band(&self, py: Python<'_>, name: &str) -> PyResult<(Quantity, Quantity)> {
        let (low, high) = self.process.band(name).ok_or_else(|| {
            NotationError::new_err(format!(
                "{}: nothing is known of '{name}'; ask for 'width', 'length' or 'loss' where they were \
                 given",
                self.process.name()
            ))
        })?;
        Ok((Process::quantity(py, name, low), Process::quantity(py, name, high)))
    }
    fn __repr__(&self) -> String {
        self.process.report().text().trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.process.report().html()
    }
}
