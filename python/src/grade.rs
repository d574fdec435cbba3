//! The grade of raw wool.

use hankwise::fibre;
use hankwise::quantity::{Fineness, Kind};
use pyo3::prelude::*;

use crate::attributes::attributes;
use crate::errors::OrRaise;
use crate::inputs::single;

/// What a pickle keeps: mean diameter and standard deviation.
type Given = (String, Option<String>);

/// The grade of raw wool in the United States. Made by `hankwise.fibre.us_grade`.
#[pyclass(frozen, module = "hankwise", eq)]
#[derive(PartialEq)]
pub(crate) struct WoolGrade {
    grade: fibre::WoolGrade,
}

/// The grade of raw wool in the United States; a lot that spreads more than its grade allows drops one.
///
/// >>> import hankwise as hw
/// >>> grade = hw.fibre.us_grade("18.5 µm", sd="4.2 µm")
/// >>> grade.name, grade.blood, grade.by_diameter, grade.dropped
/// ('70s', 'fine', '80s', True)
#[pyfunction]
#[pyo3(signature = (diameter, sd=None))]
pub(crate) fn us_grade(
    diameter: &Bound<'_, PyAny>,
    sd: Option<&Bound<'_, PyAny>>,
) -> PyResult<WoolGrade> {
    const NAME: &str = "us_grade";
    let read =
        |value, name| single(value, NAME, name, Kind::Fineness).map(|a| Fineness::base(a.base()));
    let mean = read(diameter, "diameter")?;
    let deviation = sd.map(|sd| read(sd, "sd")).transpose()?;
    let grade = fibre::us_grade(mean, deviation).or_raise_at(NAME)?;
    crate::call::warn(diameter.py(), grade.unusual().into_iter().collect())?;
    Ok(WoolGrade { grade })
}

attributes! {
    WoolGrade, self, py, shown as self.grade.report(); {
        /// Its name: "64s", or "finest" for finer than 80s.
        name: &'static str = self.grade.name;
        /// Its name by blood.
        blood: &'static str = self.grade.blood;
        /// The quality number; None for what is finer than 80s.
        number: Option<u32> = self.grade.number();
        /// The grade that the mean diameter alone would give.
        by_diameter: &'static str = self.grade.by_diameter;
        /// True where the spread cost it a grade.
        dropped: bool = self.grade.dropped();
        /// True where the limits used are from memory.
        remembered: bool = self.grade.from_memory;
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, Given)> {
        let make = py.import("hankwise.fibre")?.getattr("us_grade")?;
        let say = |x: f64| format!("{x} µm");
        Ok((make, (say(self.grade.diameter), self.grade.deviation.map(say))))
    }
}
