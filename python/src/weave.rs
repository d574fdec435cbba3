//! The weave and its draft.

use hankwise::cloth::{self, System};
use numpy::{PyArray1, PyArray2, PyArrayMethods};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList, PyString, PyTuple};

use crate::attributes::{attributes, dict};
use crate::columns::shown;
use crate::draft::{Draft, Layers};
use crate::errors::{NotationError, OrRaise};
use crate::picture::Picture;
use crate::text::{Text, text_of};

/// How warp and weft interlace, reduced to its smallest repeat. Make one with `hankwise.cloth.weave`.
///
/// Ends are numbered from the left and picks from the bottom, as the weaver sees them.
#[pyclass(frozen, eq, hash, module = "hankwise")]
#[derive(Clone, PartialEq, Eq, Hash)]
pub(crate) struct Weave {
    pub(crate) weave: cloth::Weave,
}

/// What holds for the warp and what for the weft.
fn both<'py, T: IntoPyObject<'py>>(
    py: Python<'py>,
    of: impl Fn(System) -> T,
) -> PyResult<Bound<'py, PyDict>> {
    Ok(dict!(py, {
        "warp": of(System::Warp),
        "weft": of(System::Weft),
    }))
}

fn float<'py>(py: Python<'py>, float: &cloth::Float) -> PyResult<Bound<'py, PyDict>> {
    Ok(dict!(py, {
        "thread": float.thread + 1,
        "from": float.from + 1,
        "length": float.length,
        "on": if float.on_face { "face" } else { "back" },
    }))
}

/// Whatever a weave may be given as.
pub(crate) fn read(value: &Bound<'_, PyAny>) -> PyResult<cloth::Weave> {
    if let Ok(weave) = value.cast::<Weave>() {
        return Ok(weave.get().weave.clone());
    }
    if let Ok(draft) = value.cast::<Draft>() {
        return draft.get().draft.weave().or_raise();
    }
    if let Ok(text) = value.cast::<PyString>() {
        return cloth::Weave::parse(&text_of(text, "weave")?).or_raise();
    }
    let list = value.is_instance_of::<PyList>() || value.is_instance_of::<PyTuple>();
    if list && let Ok(rows) = value.extract::<Vec<String>>() {
        return cloth::Weave::from_rows(&rows).or_raise();
    }
    squares(value)
}

/// An array, or a list of lists: a row is a pick, the first woven first.
fn squares(value: &Bound<'_, PyAny>) -> PyResult<cloth::Weave> {
    let py = value.py();
    let wanted = |why: &str| {
        PyTypeError::new_err(format!(
            "a weave is a name such as '2/2 twill', a list of picks such as ['10', '01'], or an array \
             of them with 1 where the warp is up, not {}{why}",
            shown(value)
        ))
    };
    let numpy = py.import("numpy")?;
    let array = numpy
        .call_method1("asarray", (value,))
        .map_err(|_| wanted(": its picks are not all of one length"))?;
    let dimensions = array.getattr("ndim")?.extract::<usize>()?;
    if dimensions != 2 {
        let why = if dimensions == 0 {
            String::new()
        } else {
            format!(": it has {dimensions} dimensions, and picks and ends are two")
        };
        return Err(wanted(&why));
    }
    let kind: String = array.getattr("dtype")?.getattr("kind")?.extract()?;
    let bytes = match kind.as_str() {
        "b" => {
            numpy.call_method1("ascontiguousarray", (&array,))?.call_method1("view", ("uint8",))?
        }
        "i" | "u" | "f" => {
            let up = array.call_method1("__eq__", (1,))?;
            let known = array.call_method1("__eq__", (0,))?.call_method1("__or__", (&up,))?;
            if !known.call_method0("all")?.is_truthy()? {
                return Err(NotationError::new_err(
                    "the squares of a weave are 1 where the warp is up and 0 where it is down; there \
                     are other values among them",
                ));
            }
            numpy.call_method1("ascontiguousarray", (up,))?.call_method1("view", ("uint8",))?
        }
        _ => return Err(wanted(": its squares must be 1 and 0")),
    };
    let bytes = bytes.cast_into::<PyArray2<u8>>().map_err(|_| wanted(""))?;
    let ends = bytes.getattr("shape")?.get_item(1)?.extract::<usize>()?;
    let bytes = bytes.try_readonly()?;
    let cells = bytes.as_slice()?;
    py.detach(|| cloth::Weave::from_bytes(cells, ends)).or_raise()
}

/// A weave: from a name of the trade, a mat or twill formula, an ISO 9354 code, its picks or a draft.
///
/// A satin is warp-faced and a sateen weft-faced. Twills rise to the right (Z) unless 'S' or
/// 'left-hand' stands with them. A list of picks begins with the first woven; a drawing of several
/// lines has it at the bottom.
///
/// >>> import hankwise as hw
/// >>> twill = hw.cloth.weave("2/2 twill")
/// >>> twill.repeat, twill.average_float
/// ((4, 4), {'warp': 2.0, 'weft': 2.0})
/// >>> twill == hw.cloth.weave(["1001", "1100", "0110", "0011"])
/// True
#[pyfunction]
#[pyo3(signature = (weave, /))]
pub(crate) fn weave(weave: &Bound<'_, PyAny>) -> PyResult<Weave> {
    Ok(Weave { weave: read(weave)? })
}

/// The moves that make a regular satin of a number of ends.
///
/// >>> import hankwise as hw
/// >>> hw.cloth.satin_moves(8)
/// [3, 5]
#[pyfunction]
#[pyo3(signature = (ends, /))]
pub(crate) fn satin_moves(ends: &Bound<'_, PyAny>) -> PyResult<Vec<usize>> {
    let ends = crate::inputs::whole(ends, "satin_moves", "ends")? as usize;
    cloth::satin_moves(ends).or_raise()
}

fn system(name: &str) -> PyResult<System> {
    match name {
        "warp" => Ok(System::Warp),
        "weft" => Ok(System::Weft),
        _ => {
            Err(NotationError::new_err(format!("unknown system '{name}'; write 'warp' or 'weft'")))
        }
    }
}

attributes! {
    Weave, self, py {
        /// Ends and picks of the repeat.
        repeat: (usize, usize) = (self.weave.ends(), self.weave.picks());
        /// Ends of the repeat.
        ends: usize = self.weave.ends();
        /// Picks of the repeat.
        picks: usize = self.weave.picks();
        /// Its name, or None where it has none here.
        name: Option<String> = py.detach(|| self.weave.name());
        /// How often each end (warp) and each pick (weft) passes from one face to the other in the repeat,
        /// going round.
        interlacings: PyResult<Bound<'py, PyDict>> =
            both(py, |system| self.weave.interlacings(system));
        /// Threads to an interlacing, F, over all ends (warp) and over all picks (weft).
        average_float: PyResult<Bound<'py, PyDict>> =
            both(py, |system| self.weave.average_float(system));
        /// Threads to an interlacing, end by end (warp) and pick by pick (weft).
        average_floats: PyResult<Bound<'py, PyDict>> =
            both(py, |system| self.weave.average_floats(system));
        /// How many threads the longest float passes, of warp and weft.
        longest_float: PyResult<Bound<'py, PyDict>> =
            both(py, |system| self.weave.longest_float(system).length);
        /// Share of the crossings where the warp is up.
        warp_up: f64 = self.weave.warp_up();
        /// 'warp-faced', 'weft-faced' or 'even'.
        balance: String = self.weave.balance().to_string();
        /// Interlacings over the most that there could be: 1 for plain.
        interlacement_ratio: f64 = self.weave.interlacement_ratio();
        /// Crossing-over firmness factor (from memory): passages of warp and weft to a crossing.
        crossing_firmness: f64 = self.weave.crossing_firmness();
        /// Floating-yarn factor (from memory): what floats of both systems are longer than 1, to a crossing.
        floating_factor: f64 = self.weave.floating_factor();
        /// Ashenhurst's R/(R + I) for the sett of the warp, by the interlacings of the picks, and of the
        /// weft, by those of the ends.
        ashenhurst_ratio: PyResult<Bound<'py, PyDict>> =
            both(py, |system| self.weave.ashenhurst_ratio(system));
        /// The picks as texts, the first woven first, with 1 where the warp is up.
        rows: Vec<String> = self.weave.rows();
    }

    /// Interlacings of a pick in so many ends, or of an end in so many picks, on average.
    #[pyo3(signature = (*, ends=None, picks=None))]
    fn interlacings_in(&self, ends: Option<usize>, picks: Option<usize>) -> PyResult<f64> {
        match (ends, picks) {
            (Some(ends), None) => Ok(self.weave.interlacings_in(System::Weft, ends)),
            (None, Some(picks)) => Ok(self.weave.interlacings_in(System::Warp, picks)),
            _ => Err(PyTypeError::new_err("give one of ends and picks, such as ends=40")),
        }
    }
    /// The floats of 'warp' or 'weft', face and back: thread, from, length, on. All count from 1.
    fn floats<'py>(
        &self,
        py: Python<'py>,
        warp_or_weft: Text,
    ) -> PyResult<Vec<Bound<'py, PyDict>>> {
        let warp_or_weft = warp_or_weft.named("warp_or_weft")?;
        self.weave.floats(system(warp_or_weft)?).map(|f| float(py, &f)).collect()
    }
    /// The squares as an array, a row a pick, the first woven first: True where the warp is up.
    #[getter]
    fn matrix<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyArray2<bool>>> {
        let (ends, picks) = (self.weave.ends(), self.weave.picks());
        let at = |k: usize| self.weave.is_up(k % ends, k / ends);
        let cells: Vec<bool> = (0..ends * picks).map(at).collect();
        PyArray1::from_vec(py, cells).reshape([picks, ends])
    }
    /// True where the other differs only in where the repeat begins.
    fn alike(&self, py: Python<'_>, other: &Bound<'_, PyAny>) -> PyResult<bool> {
        let other = read(other)?;
        Ok(py.detach(|| self.weave.alike(&other)))
    }
    /// The same interlacing with warp and weft exchanged.
    fn turned(&self) -> PyResult<Weave> {
        Ok(Weave { weave: self.weave.turned().or_raise()? })
    }
    /// The draft with the fewest shafts and treadles.
    fn draft(&self) -> Draft {
        Draft { draft: cloth::Draft::of(&self.weave) }
    }
    /// Face and back of a double cloth; the order of ends is that of picks too, unless picks are given.
    #[pyo3(
        signature = (ends=Text::Meant("1 face 1 back"), picks=None),
        text_signature = "($self, ends='1 face 1 back', picks=None)"
    )]
    fn layers(&self, ends: Text, picks: Option<Text>) -> PyResult<Layers> {
        let ends = ends.named("ends")?;
        let picks = Text::option(picks.as_ref(), "picks")?;
        let order = |text: &str| cloth::layer_order(text).or_raise();
        let split = self.weave.split(&order(ends)?, &order(picks.unwrap_or(ends))?);
        Ok(Layers { layers: split.or_raise()? })
    }
    /// A picture of the weave: 'point paper', 'draft' or 'face'.
    ///
    /// `repeats` across and up. A draft is drawn as a mill writes it, or with `treadles` for a treadle
    /// loom. A face takes the colours of `warp` and `weft`, a count and a colour in turn ("6 black 6
    /// white"; the colour names of CSS, or hex codes), and to be true to scale `warp_sett` and
    /// `weft_sett`, with `warp_diameter` and `weft_diameter` or the counts `warp_count` and `weft_count`
    /// (with `specific_volume`, what a gram of the yarn fills, unless it is wool). Its scale bar is in mm,
    /// with `inches` in inches too. Without any sett the colours are drawn on point paper.
    #[pyo3(
        signature = (kind=Text::Meant("point paper"), *, repeats=None, title=None, treadles=false, **face),
        text_signature = "($self, kind='point paper', *, repeats=None, title=None, treadles=False, **face)"
    )]
    fn picture(
        &self,
        py: Python<'_>,
        kind: Text,
        repeats: Option<&Bound<'_, PyAny>>,
        title: Option<Text>,
        treadles: bool,
        face: Option<&Bound<'_, PyDict>>,
    ) -> PyResult<Picture> {
        let kind = kind.named("kind")?;
        let title = Text::owned(title.as_ref(), "title")?;
        crate::picture::draw(&self.weave, kind, repeats, title, treadles, face, py)
    }
    /// What there is to say of the weave, as text.
    fn report(&self) -> String {
        self.weave.report().text()
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, (Vec<String>,))> {
        Ok((py.import("hankwise.cloth")?.getattr("weave")?, (self.weave.rows(),)))
    }
    fn __str__(&self) -> String {
        self.weave.to_string()
    }
    fn __repr__(&self) -> String {
        match self.weave.name() {
            Some(name) => {
                format!("<weave: {name}, {} × {}>", self.weave.ends(), self.weave.picks())
            }
            None => format!("<{}>", self.weave),
        }
    }
    fn _repr_html_(&self) -> String {
        self.weave.report().html()
    }
}
