//! Words of hand knitting.

use hankwise::prelude::LinearDensity;
use hankwise::quantity::Kind;
use hankwise::yarn;
use pyo3::prelude::*;

use crate::errors::OrRaise;
use crate::handbook::HandbookTable;
use crate::inputs::single;
use crate::text::Text;

/// The hand-knitting words into whose bands a count falls, with the bands: several, or none.
///
/// >>> import hankwise as hw
/// >>> hw.yarn.weight_class("230 m/100g", "UK")[1]
/// <UK, DK: 200 to 250 m/100g (web page, Skein Queen 2024)>
#[pyfunction]
#[pyo3(signature = (count, country=None))]
pub(crate) fn weight_class(
    count: &Bound<'_, PyAny>,
    country: Option<Text>,
) -> PyResult<HandbookTable> {
    const NAME: &str = "weight_class";
    let country = Text::option(country.as_ref(), "country")?;
    let count = single(count, NAME, "count", Kind::LinearDensity)?.base();
    let checked = Kind::LinearDensity.check(count);
    checked.or_raise_at(format_args!("{NAME}, count"))?;
    let found = yarn::weight_class(LinearDensity::base(count), country);
    HandbookTable::weights(found.or_raise()?)
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
#[pyo3(signature = (word, country=None))]
pub(crate) fn weight_band(word: Text, country: Option<Text>) -> PyResult<HandbookTable> {
    let word = word.named("word")?;
    let country = Text::option(country.as_ref(), "country")?;
    HandbookTable::weights(yarn::weight_band(word, country).or_raise()?)
}
