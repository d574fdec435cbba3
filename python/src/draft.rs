//! How a weave is put on the loom, and the layers of a double cloth.

use hankwise::cloth;
use pyo3::prelude::*;
use pyo3::types::PyString;

use crate::attributes::attributes;
use crate::errors::{NotationError, OrRaise};
use crate::picture::Picture;
use crate::text::{Text, text_of};
use crate::weave::Weave;

/// What a pickle keeps: threading, tie-up, treadling.
type State = (Vec<usize>, Vec<Vec<usize>>, Vec<usize>);

/// The draft of a weave: threading, tie-up, treadling. Make one with `hankwise.cloth.draft`.
///
/// Shafts and treadles are numbered from 1; a treadle raises the shafts that it ties.
#[pyclass(frozen, eq, module = "hankwise")]
#[derive(Clone, PartialEq, Eq)]
pub(crate) struct Draft {
    pub(crate) draft: cloth::Draft,
}

/// The layers of a double cloth.
#[pyclass(frozen, module = "hankwise")]
pub(crate) struct Layers {
    pub(crate) layers: cloth::Layers,
}

/// Numbers from 1, as a list or as a text such as `1 2 3 4` or `1-2-3-4`.
fn numbers(value: &Bound<'_, PyAny>, name: &str) -> PyResult<Vec<usize>> {
    let amiss = || {
        NotationError::new_err(format!(
            "draft, {name}: write whole numbers from 1, as a list or a text such as '1 2 3 4'"
        ))
    };
    if let Ok(text) = value.cast::<PyString>() {
        let text = text_of(text, name)?;
        let split = text.split(|c: char| c.is_whitespace() || c == ',' || c == '-');
        let words = split.filter(|w| !w.is_empty());
        return words.map(|w| w.parse().map_err(|_| amiss())).collect();
    }
    value.extract().or_else(|_| value.extract::<usize>().map(|n| vec![n])).map_err(|_| amiss())
}

fn lists(value: &Bound<'_, PyAny>, name: &str) -> PyResult<Vec<Vec<usize>>> {
    if value.is_instance_of::<PyString>() {
        return Err(NotationError::new_err(format!(
            "draft, {name}: write a list such as ['1 2', '2 3', '3 4', '4 1']"
        )));
    }
    value.try_iter()?.map(|one| numbers(&one?, name)).collect()
}

/// A draft, from threading, tie-up and treadling, or from threading and the shafts that each pick lifts.
///
/// >>> import hankwise as hw
/// >>> draft = hw.cloth.draft("1 2 3 4 2 1 4 3", ["1 2", "2 3", "3 4", "4 1"], "1 2 3 4")
/// >>> draft.weave
/// <weave: 2/2 herringbone, 8 × 4>
/// >>> draft.ends_on_shafts(810)
/// [203, 203, 202, 202]
#[pyfunction]
#[pyo3(signature = (threading, tie_up=None, treadling=None, *, lifts=None))]
pub(crate) fn draft(
    threading: &Bound<'_, PyAny>,
    tie_up: Option<&Bound<'_, PyAny>>,
    treadling: Option<&Bound<'_, PyAny>>,
    lifts: Option<&Bound<'_, PyAny>>,
) -> PyResult<Draft> {
    let threading = numbers(threading, "threading")?;
    let draft = match (tie_up, treadling, lifts) {
        (Some(tie_up), Some(treadling), None) => {
            cloth::Draft::new(threading, lists(tie_up, "tie_up")?, numbers(treadling, "treadling")?)
        }
        (None, None, Some(lifts)) => cloth::Draft::lifted(threading, &lists(lifts, "lifts")?),
        _ => {
            return Err(NotationError::new_err(
                "draft: give tie_up and treadling together, or lifts in place of both",
            ));
        }
    };
    draft.map(|draft| Draft { draft }).or_raise_at("draft")
}

attributes! {
    Draft, self, py, shown as self.draft.report(None, false); {
        /// The shaft of each end.
        threading: Vec<usize> = self.draft.threading().to_vec();
        /// The shafts that each treadle raises.
        tie_up: Vec<Vec<usize>> = self.draft.tie_up().to_vec();
        /// The treadle of each pick.
        treadling: Vec<usize> = self.draft.treadling().to_vec();
        /// The shafts that each pick raises.
        lifts: Vec<Vec<usize>> = self.draft.lifts();
        /// How many shafts.
        shafts: usize = self.draft.shafts();
        /// How many treadles.
        treadles: usize = self.draft.treadles();
        /// In what order ends are drawn: 'straight', 'pointed', 'broken' or 'mixed'.
        drawing: String = self.draft.drawing().to_string();
        /// The weave that it gives.
        weave: PyResult<Weave> = Ok(Weave { weave: self.draft.weave().or_raise()? });
    }

    /// Ends, and so healds, on each shaft for a number of ends; the last repeat may be incomplete.
    fn ends_on_shafts(&self, ends: usize) -> Vec<usize> {
        self.draft.ends_on_shafts(ends)
    }
    /// A picture of the draft as a mill writes it: the design, the drawing-in as numbers, the lifting
    /// plan; `repeats` across and up. With `treadles`, for a treadle loom: threading, tie-up, treadling.
    #[pyo3(signature = (*, treadles=false, repeats=None, title=None))]
    fn picture(
        &self,
        treadles: bool,
        repeats: Option<&Bound<'_, PyAny>>,
        title: Option<Text>,
    ) -> PyResult<Picture> {
        let title = Text::option(title.as_ref(), "title")?;
        let repeats = repeats.map(crate::picture::across_and_up).transpose()?;
        Picture::hand_over(if treadles {
            self.draft.treadle_picture(repeats, title)
        } else {
            self.draft.picture(repeats, title)
        })
    }
    /// The draft as text: drawing-in and lifting plan, or with `treadles` also tie-up and treadling; with
    /// a number of ends, also the healds on each shaft.
    #[pyo3(signature = (ends=None, *, treadles=false))]
    fn report(&self, ends: Option<usize>, treadles: bool) -> String {
        self.draft.report(ends, treadles).text()
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, State)> {
        let make = py.import("hankwise.cloth")?.getattr("draft")?;
        let (tie_up, treadling) = (self.draft.tie_up().to_vec(), self.draft.treadling().to_vec());
        Ok((make, (self.draft.threading().to_vec(), tie_up, treadling)))
    }
}

attributes! {
    Layers, self, py {
        /// Face ends with face picks.
        face: Weave = Weave { weave: self.layers.face.clone() };
        /// Back ends with back picks, seen from the face.
        back: Weave = Weave { weave: self.layers.back.clone() };
        /// Crossings that keep the layers apart.
        separators: usize = self.layers.separators;
        /// Crossings that join the layers, in words.
        stitches: Vec<String> = self.layers.stitches.iter().map(ToString::to_string).collect();
    }

    fn __repr__(&self) -> String {
        let cloth::Layers { face, back, stitches, .. } = &self.layers;
        format!("<layers: face {face}, back {back}, stitches: {}>", stitches.len())
    }
}
