//! Pictures of a weave.

use hankwise::cloth::{self, Face, Threads};
use hankwise::quantity::Kind;
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};

use crate::colours::ColourOrder;
use crate::columns::shown;
use crate::errors::{NotationError, OrRaise, raise};
use crate::files::output;
use crate::inputs::single;
use crate::text::{File, keyword, text_of};

/// A picture as SVG; shows itself in a notebook. Made by `Weave.picture`.
#[pyclass(frozen, eq, module = "hankwise")]
#[derive(PartialEq)]
pub(crate) struct Picture {
    picture: cloth::Picture,
}

#[pymethods]
impl Picture {
    /// The text of the SVG.
    #[getter]
    fn svg(&self) -> &str {
        self.picture.svg()
    }
    /// Writes the SVG to a file, whole or not at all. `force=True` replaces a file of another kind too.
    #[pyo3(signature = (path, /, *, force = false), text_signature = "($self, path, /, *, force=False)")]
    fn save(&self, path: File, force: bool) -> PyResult<()> {
        let path = path.named("path")?;
        self.picture.save(output(path, force)).or_raise()
    }
    fn _repr_svg_(&self) -> &str {
        self.picture.svg()
    }
    fn __repr__(&self) -> String {
        format!("<picture: SVG, {} bytes>", self.picture.svg().len())
    }
}

impl Picture {
    pub(crate) fn hand_over(drawn: hankwise::Result<cloth::Picture>) -> PyResult<Picture> {
        Ok(Picture { picture: drawn.or_raise_at(NAME)? })
    }
}

const KINDS: &str = "'point paper', 'draft' or 'face'";
const NAME: &str = "picture";

/// What only a face is drawn from.
const OF_A_FACE: [&str; 10] = [
    "warp",
    "weft",
    "warp_sett",
    "weft_sett",
    "warp_count",
    "weft_count",
    "warp_diameter",
    "weft_diameter",
    "specific_volume",
    "inches",
];

fn figure(value: &Bound<'_, PyAny>, name: &str, kind: Kind) -> PyResult<f64> {
    Ok(single(value, NAME, name, kind)?.base())
}

fn order(value: &Bound<'_, PyAny>, name: &str) -> PyResult<cloth::ColourOrder> {
    if let Ok(order) = value.cast::<ColourOrder>() {
        return Ok(order.get().order.clone());
    }
    let text = value.cast::<PyString>().map_err(|_| {
        PyTypeError::new_err(format!("{NAME}, {name}: write a text such as '6 black 6 white'"))
    })?;
    let text = text_of(text, name)?;
    // A colour alone is a cloth of it.
    let whole = if text.contains(|c: char| c.is_ascii_digit()) && !text.trim().starts_with('#') {
        text.to_string()
    } else {
        format!("1 {text}")
    };
    whole.parse().map_err(|e: hankwise::Error| raise(&e.at(format_args!("{NAME}, {name}"))))
}

fn threads(given: &Bound<'_, PyDict>, names: [&str; 4]) -> PyResult<Threads> {
    let find = |name: &str| given.get_item(name).map(|v| v.filter(|v| !v.is_none()));
    let number = |name: &str, kind: Kind| find(name)?.map(|v| figure(&v, name, kind)).transpose();
    let [colours, sett, count, diameter] = names;
    Ok(Threads {
        colours: find(colours)?.map(|v| order(&v, colours)).transpose()?,
        sett: number(sett, Kind::Sett)?.map(hankwise::quantity::Sett::base),
        count: number(count, Kind::LinearDensity)?.map(hankwise::quantity::LinearDensity::base),
        diameter: number(diameter, Kind::Diameter)?.map(hankwise::quantity::Diameter::base),
        specific_volume: number("specific_volume", Kind::SpecificVolume)?
            .map(hankwise::quantity::SpecificVolume::base),
    })
}

/// How often the repeat is shown each way.
pub(crate) fn across_and_up(repeats: &Bound<'_, PyAny>) -> PyResult<(usize, usize)> {
    let two = repeats.extract::<(u32, u32)>().ok().filter(|(a, b)| *a > 0 && *b > 0);
    let (across, up) = two.ok_or_else(|| {
        PyTypeError::new_err(format!(
            "{NAME}, repeats: write whole repeats across and up, such as (2, 3), not {}",
            shown(repeats)
        ))
    })?;
    Ok((across as usize, up as usize))
}

/// Yes or no, no where nothing is said.
fn flag(given: &Bound<'_, PyDict>, name: &str) -> PyResult<bool> {
    let Some(value) = given.get_item(name)?.filter(|v| !v.is_none()) else { return Ok(false) };
    value.extract().map_err(|_| {
        PyTypeError::new_err(format!("{NAME}, {name}: write True or False, not {}", shown(&value)))
    })
}

/// Draws a weave as `Weave.picture` is asked to.
pub(crate) fn draw(
    weave: &cloth::Weave,
    kind: &str,
    repeats: Option<&Bound<'_, PyAny>>,
    title: Option<String>,
    treadles: bool,
    given: Option<&Bound<'_, PyDict>>,
    py: Python<'_>,
) -> PyResult<Picture> {
    let given = given.map_or_else(|| PyDict::new(py), Clone::clone);
    for (name, value) in &given {
        let name = keyword(&name, NAME)?;
        if !OF_A_FACE.contains(&name.as_str()) {
            return Err(PyTypeError::new_err(format!(
                "{NAME} has no '{name}'; it has kind, repeats, title, for a draft treadles, and for a \
                 face {}",
                OF_A_FACE.join(", ")
            )));
        }
        if kind != "face" && !value.is_none() {
            return Err(NotationError::new_err(format!(
                "{NAME}: {name} belongs to the face of the cloth; write kind='face', or omit it"
            )));
        }
    }
    if treadles && kind != "draft" {
        return Err(NotationError::new_err(format!(
            "{NAME}: treadles belong to the draft; write kind='draft', or omit treadles"
        )));
    }
    let repeats = repeats.map(across_and_up).transpose()?;
    let drawn = match kind {
        "point paper" => weave.point_paper(repeats, title.as_deref()),
        "draft" if treadles => weave.treadle_picture(repeats, title.as_deref()),
        "draft" => weave.draft_picture(repeats, title.as_deref()),
        "face" => {
            let warp = threads(&given, ["warp", "warp_sett", "warp_count", "warp_diameter"])?;
            let weft = threads(&given, ["weft", "weft_sett", "weft_count", "weft_diameter"])?;
            let inches = flag(&given, "inches")?;
            py.detach(|| weave.face(&Face { warp, weft, repeats, title, inches }))
        }
        _ => {
            return Err(NotationError::new_err(format!(
                "unknown kind of picture '{kind}'; write {KINDS}"
            )));
        }
    };
    Picture::hand_over(drawn)
}
