//! Raw wool, its grade, what it spins to; blends.

use hankwise::quantity::{Fineness, Kind};
use hankwise::{fibre, mill};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyString};

use crate::asked;
use crate::errors::{NotationError, raise};
use crate::inputs::{has_several, locate, members, one_figure, single};
use crate::particulars::Particulars;

/// clean_yields(*, wool_base=None, vegetable_base=0, iwto_16=None, iwto_17=None, japanese=None,
///     top_and_noil=None, customs_content=None, customs_yield=None, **shrinkage)
/// --
///
/// Every yield of a lot by each definition of the trade, side by side, from any one of them.
///
/// Give one: the wool base, a yield, or its shrinkage (`iwto_17_shrinkage="39 %"`), and the vegetable
/// matter. The constants of the wool trade are from memory; those of the US customs are published.
///
/// >>> import hankwise as hw
/// >>> lot = hw.fibre.clean_yields(iwto_17="61 %", vegetable_base="1.5 %")
/// >>> lot["wool_base"], lot["customs_content"]
/// (<fraction: 49.45 %>, <yield: 57.50 %>)
#[pyfunction]
#[pyo3(
    signature = (**given),
    text_signature = "(*, wool_base=None, vegetable_base=0, iwto_16=None, iwto_17=None, japanese=None, \
        top_and_noil=None, customs_content=None, customs_yield=None, **shrinkage)"
)]
pub(crate) fn clean_yields(
    py: Python<'_>,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    const NAME: &str = "clean_yields";
    let asked = asked::read(fibre::clean_yields_items(), NAME, given, &[])?;
    Particulars::hand_over(py, fibre::clean_yields(&asked).map_err(|e| e.at(NAME)))
}

/// test_wash(greasy, clean, *, regain, fat=0, vegetable=0, confidence="95 %", reading=None)
/// --
///
/// The clean share of a lot from washed samples, with its interval and the line for the lot file.
///
/// `greasy` and `clean` are the masses of the samples before and after, in one order; `regain`, `fat`
/// and `vegetable` are what is on the washed wool. The interval is for the lot itself, the samples
/// being drawn from all over it; that of one more sample is wider. With one sample there is none:
/// only what a `reading` of the balance leaves.
///
/// >>> import hankwise as hw
/// >>> wash = hw.fibre.test_wash(["200 g", "198 g", "205 g"], ["124 g", "119 g", "130 g"],
/// ...                           regain="16 %", fat="0.8 %")
/// >>> wash["clean"], wash["low"], wash["high"]
/// (<fraction: 52.96 %>, <fraction: 49.42 %>, <fraction: 56.50 %>)
#[pyfunction]
#[pyo3(
    signature = (greasy, clean, **given),
    text_signature = "(greasy, clean, *, regain, fat=0, vegetable=0, confidence=\"95 %\", reading=None)"
)]
pub(crate) fn test_wash(
    py: Python<'_>,
    greasy: &Bound<'_, PyAny>,
    clean: &Bound<'_, PyAny>,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    const NAME: &str = "test_wash";
    let asked = asked::read(fibre::test_wash_items(), NAME, given, &[])?;
    let weighed = |value: &Bound<'_, PyAny>, name: &str| {
        let place = |e: PyErr| locate(py, NAME, name, e);
        let all = if value.is_instance_of::<PyString>() || !has_several(value) {
            vec![value.clone()]
        } else {
            members(value, name, Kind::Mass).map_err(place)?
        };
        all.iter()
            .map(|one| one_figure(one, Kind::Mass).map_err(place))
            .collect::<PyResult<Vec<_>>>()
    };
    let (greasy, clean) = (weighed(greasy, "greasy")?, weighed(clean, "clean")?);
    Particulars::hand_over(py, fibre::test_wash(&greasy, &clean, &asked).map_err(|e| e.at(NAME)))
}

/// will_spin(*, diameter, variation, count, system="woollen", staple=None, setting=None)
/// --
///
/// Fibres in the section of a wool yarn against what a way of spinning needs.
///
/// `variation` is the coefficient of variation of the diameter; `system` is "woollen", "semi-worsted"
/// or "worsted". Below what is needed there is a warning. `staple` and `setting` of the drafting
/// rollers are compared where both are given.
///
/// >>> import hankwise as hw
/// >>> wool = hw.fibre.will_spin(diameter="27 µm", variation="24 %", count="150 tex")
/// >>> wool["fibres"], wool["limit_count"]
/// (<number: 189.1>, <linear density (count): 95.19 tex>)
#[pyfunction]
#[pyo3(
    signature = (*, system = "woollen", **given),
    text_signature = "(*, diameter, variation, count, system=\"woollen\", staple=None, setting=None)"
)]
pub(crate) fn will_spin(
    py: Python<'_>,
    system: &str,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    const NAME: &str = "will_spin";
    let asked = asked::read(fibre::will_spin_items(), NAME, given, &[])?;
    Particulars::hand_over(py, fibre::will_spin(&asked, system).map_err(|e| e.at(NAME)))
}

/// What a pickle keeps: mean diameter and standard deviation.
type Given = (String, Option<String>);

/// The grade of raw wool in the United States. Made by `hankwise.fibre.us_grade`.
#[pyclass(frozen, module = "hankwise", eq)]
#[derive(PartialEq)]
pub(crate) struct WoolGrade {
    grade: fibre::WoolGrade,
}

/// us_grade(diameter, sd=None)
/// --
///
/// The grade of raw wool in the United States; a lot that spreads more than its grade allows drops one.
///
/// >>> import hankwise as hw
/// >>> grade = hw.fibre.us_grade("18.5 µm", sd="4.2 µm")
/// >>> grade.name, grade.blood, grade.by_diameter, grade.dropped
/// ('70s', 'fine', '80s', True)
#[pyfunction]
#[pyo3(signature = (diameter, sd=None), text_signature = "(diameter, sd=None)")]
pub(crate) fn us_grade(
    diameter: &Bound<'_, PyAny>,
    sd: Option<&Bound<'_, PyAny>>,
) -> PyResult<WoolGrade> {
    const NAME: &str = "us_grade";
    let read =
        |value, name| single(value, NAME, name, Kind::Fineness).map(|a| Fineness::base(a.base()));
    let mean = read(diameter, "diameter")?;
    let deviation = sd.map(|sd| read(sd, "sd")).transpose()?;
    let grade = fibre::us_grade(mean, deviation).map_err(|e| raise(&e.at(NAME)))?;
    crate::call::warn(diameter.py(), grade.unusual().into_iter().collect())?;
    Ok(WoolGrade { grade })
}

#[pymethods]
impl WoolGrade {
    /// Its name: "64s", or "finest" for finer than 80s.
    #[getter]
    fn name(&self) -> &'static str {
        self.grade.name
    }
    /// Its name by blood.
    #[getter]
    fn blood(&self) -> &'static str {
        self.grade.blood
    }
    /// The quality number; None for what is finer than 80s.
    #[getter]
    fn number(&self) -> Option<u32> {
        self.grade.number()
    }
    /// The grade that the mean diameter alone would give.
    #[getter]
    fn by_diameter(&self) -> &'static str {
        self.grade.by_diameter
    }
    /// True where the spread cost it a grade.
    #[getter]
    fn dropped(&self) -> bool {
        self.grade.dropped()
    }
    /// True where the limits used are from memory.
    #[getter]
    fn remembered(&self) -> bool {
        self.grade.from_memory
    }
    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Given)> {
        let make = py.import("hankwise.fibre")?.getattr("us_grade")?;
        let say = |x: f64| format!("{x} µm");
        Ok((make, (say(self.grade.diameter), self.grade.deviation.map(say))))
    }
    fn __repr__(&self) -> String {
        self.grade.report().text().trim_end().to_owned()
    }
    fn _repr_html_(&self) -> String {
        self.grade.report().html()
    }
}

/// blend(components, /, *, total=None, regain=None, fat=0)
/// --
///
/// What to weigh of each component of a blend, each at its own regain; or what was weighed.
///
/// `components` says by name what is known: `share` of the clean dry fibre wanted, or `mass` as
/// weighed; `regain`, `fat` and `vegetable` on it, and `diameter`. With shares, `total` is the mass of
/// the blend wanted, stated at `regain` and `fat`.
///
/// >>> import hankwise as hw
/// >>> heap = hw.mill.blend({"white": {"share": "60 %", "regain": "16 %"},
/// ...                       "moorit": {"share": "40 %", "regain": "12 %"}},
/// ...                      total="58 kg", regain="16 %")
/// >>> heap["weigh_white"], heap["weigh_moorit"]
/// (<mass: 34.8 kg>, <mass: 22.4 kg>)
#[pyfunction]
#[pyo3(
    signature = (components, /, **given),
    text_signature = "(components, /, *, total=None, regain=None, fat=0)"
)]
pub(crate) fn blend(
    py: Python<'_>,
    components: &Bound<'_, PyAny>,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    const NAME: &str = "blend";
    let wanted = |what: &Bound<'_, PyAny>| -> PyResult<PyErr> {
        Ok(NotationError::new_err(format!(
            "{NAME}: {} says no components; write {{'white': {{'mass': '30 kg', 'regain': '16 %'}}, …}}",
            what.repr()?
        )))
    };
    let Ok(listed) = components.cast::<PyDict>() else { return Err(wanted(components)?) };
    let mut parts = Vec::new();
    for (name, said) in listed {
        let Ok(name) = name.extract::<String>() else { return Err(wanted(components)?) };
        let Ok(said) = said.cast::<PyDict>() else {
            return Err(NotationError::new_err(format!(
                "{NAME}, {name}: what is known of it is wanted by name, such as {{'mass': '30 kg', \
                 'regain': '16 %'}}, not {}",
                crate::columns::shown(&said)
            )));
        };
        let mut part = mill::Component::new(&name).map_err(|e| raise(&e.at(NAME)))?;
        let place = format!("{NAME}, {name}");
        *part.given() = asked::read(part.given().clone(), &place, Some(said), &[])?;
        parts.push(part);
    }
    let asked = asked::read(mill::blend_items(), NAME, given, &[])?;
    Particulars::hand_over(py, mill::blend(&parts, &asked).map_err(|e| e.at(NAME)))
}

/// evenness_of_blend(*, share, layers, variation, tuft, sample, passes=0, doublings=None, wanted=None)
/// --
///
/// How far the share of a component differs between samples: after the stack, after each pass of the
/// teaser, and what chance leaves at best.
///
/// Each component lies in `layers` whose thickness has the coefficient of variation `variation`, and
/// the stack is taken from top to bottom. In each of the `passes` wool from `doublings` places of the
/// heap comes together. A `sample` holds tufts of mass `tuft`, each of one colour: of k tufts drawn by
/// chance the share has the standard deviation √(p(1 − p)/k), which nothing but finer opening betters.
///
/// >>> import hankwise as hw
/// >>> heap = hw.mill.evenness_of_blend(share="30 %", layers=6, variation="25 %", passes=2, doublings=4,
/// ...                                  tuft="20 mg", sample="10 g", wanted="3 %")
/// >>> heap["random_deviation"], heap["deviation"]
/// (<ratio: 0.02049>, <ratio: 0.02185>)
#[pyfunction]
#[pyo3(
    signature = (**given),
    text_signature = "(*, share, layers, variation, tuft, sample, passes=0, doublings=None, wanted=None)"
)]
pub(crate) fn evenness_of_blend(
    py: Python<'_>,
    given: Option<&Bound<'_, PyDict>>,
) -> PyResult<Particulars> {
    const NAME: &str = "evenness_of_blend";
    let asked = asked::read(mill::evenness_of_blend_items(), NAME, given, &[])?;
    Particulars::hand_over(py, mill::evenness_of_blend(&asked).map_err(|e| e.at(NAME)))
}
