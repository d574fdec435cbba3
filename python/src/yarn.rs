//! The yarn: what it is made of, as people write it.

use hankwise::quantity::{self, Amount, Kind};
use hankwise::yarn as crate_yarn;
use hankwise::yarn::designation::{About, Asked, Direction, Order, Reading, Strand, Turned};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::types::{PyAny, PyString, PyTuple};

use crate::attributes::attributes;
use crate::call::warn;
use crate::errors::{NotationError, OrRaise, RangeError, raise};
use crate::inputs::{Given, base_unit, members, one};
use crate::quantity::Quantity;
use crate::text::{Text, text_of};
use crate::working::Working;

/// What a yarn is made of: singles, folds, twists, resultant; and what else is known of it.
///
/// Read one with `hankwise.yarn.parse`. It does not change.
///
/// >>> import hankwise as hw
/// >>> yarn = hw.yarn.parse("125 tex Z 210 x 2 S 120; R 257 tex", material="wool", state="scoured")
/// >>> yarn
/// <folded yarn: 125 tex Z 210 × 2 S 120; R 257 tex; wool, scoured>
/// >>> yarn.format("fold-to-single")
/// 'R 257 tex S 120/2 Z 210; 125 tex'
/// >>> yarn.to("Nm"), yarn.contraction
/// (<linear density (count): 3.891 Nm>, <contraction on untwisted length: 2.724 %>)
/// >>> yarn.twist_ratio(), yarn.twist_left()
/// (0.5714285714285714, ('Z', <twist: 95.88 turns/m>))
#[pyclass(frozen, freelist = 32, module = "hankwise")]
pub(crate) struct Yarn {
    pub(crate) yarn: crate_yarn::Yarn,
}

/// A yarn, in any notation whose reading is settled: "125 tex Z 210 x 2 S 120; R 257 tex",
/// "R 257 tex S 120/2 Z 210; 125 tex", "2/17 worsted", "Nm 13/2", "54/2 spun-silk", "17/20 den",
/// "No. 36 six-cord", "Tkt 90 metric".
///
/// A short notation that does not say its count system, or that can be read in two ways, is refused
/// with the readings; `system="Ne"` and `order="ends/count"`, "count/ends", "resultant/ends" or
/// "count/count" settle it. `material`, `state` ("in oil", "scoured") and `relaxed` are kept with the
/// yarn: a count without its state can be half a count.
///
/// >>> import hankwise as hw
/// >>> hw.yarn.parse("2/17 worsted").to("tex")
/// <linear density (count): 104.2 tex>
/// >>> hw.yarn.parse("2/3", system="Nm", order="ends/count").resultant
/// <linear density (count): 1.5 Nm>
#[pyfunction]
#[pyo3(signature = (text, /, *, system=None, order=None, material=None, state=None, relaxed=None))]
pub(crate) fn parse(
    py: Python<'_>,
    text: &Bound<'_, PyAny>,
    system: Option<Text>,
    order: Option<Text>,
    material: Option<Text>,
    state: Option<Text>,
    relaxed: Option<bool>,
) -> PyResult<Yarn> {
    let system = Text::option(system.as_ref(), "system")?;
    let order = Text::option(order.as_ref(), "order")?;
    let material = Text::owned(material.as_ref(), "material")?;
    let state = Text::owned(state.as_ref(), "state")?;
    read(py, text, system, order, material, state, relaxed)
}

fn read(
    py: Python<'_>,
    text: &Bound<'_, PyAny>,
    system: Option<&str>,
    order: Option<&str>,
    material: Option<String>,
    state: Option<String>,
    relaxed: Option<bool>,
) -> PyResult<Yarn> {
    let Ok(text) = text.cast::<PyString>() else {
        return known_already(text, material, state, relaxed);
    };
    let text = text_of(text, "text")?;
    let text = &*text;
    let mut yarn = if system.is_none() && order.is_none() {
        match crate_yarn::Yarn::parse(text) {
            Ok(yarn) => yarn,
            Err(error) => return Err(raise(&error)),
        }
    } else {
        let system = system.map(|s| quantity::unit(s, Some(Kind::LinearDensity))).transpose();
        let order = order.map(Order::named).transpose();
        let yarn = system.and_then(|system| {
            let reading = Reading { system, order: order? };
            crate_yarn::Yarn::parse_as(text, &reading)
        });
        yarn.or_raise()?
    };
    if material.is_some() || state.is_some() || relaxed.is_some() {
        let about = yarn.about_mut();
        (about.material, about.state, about.relaxed) = (said(material), said(state), relaxed);
    }
    warn(py, yarn.doubt().into_iter().collect())?;
    Ok(Yarn { yarn })
}

/// A yarn where its name is wanted.
#[cold]
fn known_already(
    given: &Bound<'_, PyAny>,
    material: Option<String>,
    state: Option<String>,
    relaxed: Option<bool>,
) -> PyResult<Yarn> {
    if let Ok(yarn) = given.cast::<Yarn>() {
        return Ok(yarn.get().with(material, state, relaxed));
    }
    Err(PyTypeError::new_err(format!(
        "write a yarn as a text such as 'Nm 13/2', not {}",
        given.repr()?
    )))
}

/// What was said, where it was not left blank.
fn said(word: Option<String>) -> Option<String> {
    word.map(|w| w.trim().to_owned()).filter(|w| !w.is_empty())
}

/// An empty call with a text, to measure others against.
#[pyfunction]
pub(crate) fn _empty_text(text: &str) {
    let _ = text;
}

impl Yarn {
    /// The same yarn, of which more is known.
    fn with(&self, material: Option<String>, state: Option<String>, relaxed: Option<bool>) -> Yarn {
        let [material, state] = [material, state].map(said);
        let mut yarn = self.yarn.clone();
        let about = yarn.about_mut();
        about.material = material.or(about.material.take());
        about.state = state.or(about.state.take());
        about.relaxed = relaxed.or(about.relaxed);
        self.same(yarn)
    }
    /// A count in tex, in the unit that the yarn is thought of in.
    fn count<'py>(&self, py: Python<'py>, tex: f64) -> Quantity {
        let unit = self.yarn.system();
        Quantity::scalar(py, unit.from_base(tex), unit, Kind::LinearDensity)
    }
    fn figure<'py>(&self, py: Python<'py>, x: f64, kind: Kind) -> Quantity {
        Quantity::scalar(py, x, base_unit(kind), kind)
    }
    fn same(&self, yarn: crate_yarn::Yarn) -> Yarn {
        Yarn { yarn }
    }
}

attributes! {
    Yarn, self, py {
        /// What it is called: "single", "filament yarn", "folded yarn", "cabled yarn", "multiple wound yarn".
        what: &'static str = self.yarn.what();
        /// How many singles lie in it.
        singles: Option<u64> = self.yarn.singles();
        /// Count of the whole: as measured, else the sum of its ends without contraction.
        resultant: PyResult<Quantity> =
            self.yarn.resultant().map(|tex| self.count(py, tex)).or_raise();
        /// True where the count of the whole was given and not summed.
        is_measured: bool = self.yarn.whole.is_some();
        /// Sum of the ends, without contraction.
        nominal: PyResult<Quantity> =
            self.yarn.nominal().map(|tex| self.count(py, tex)).or_raise();
        /// Direction of the twist of the whole, "S" or "Z"; None without one.
        direction: Option<char> = self.yarn.build.twist().direction().map(Direction::letter);
        /// The ends of the outermost fold, each a yarn of its own.
        ends: Vec<Yarn> = self.yarn.ends().map(|yarn| self.same(yarn)).collect();
        /// Length of each end in a unit length of the yarn.
        lengths: Vec<f64> = self.yarn.lengths();
        /// The fibre, where it was given.
        material: Option<&str> = self.yarn.about().material.as_deref();
        /// The state that the counts are in, where it was given.
        state: Option<&str> = self.yarn.about().state.as_deref();
        /// Whether the yarn has been washed and has shrunk, where it was given.
        relaxed: Option<bool> = self.yarn.about().relaxed;
    }

    /// In a notation: "single-to-fold", "fold-to-single" or "trade", which says nothing of twist.
    #[pyo3(
        signature = (notation=Text::Meant("single-to-fold"), /),
        text_signature = "($self, notation='single-to-fold', /)"
    )]
    fn format(&self, notation: Text) -> PyResult<String> {
        let notation = notation.named("notation")?;
        match notation.trim().to_lowercase().replace(' ', "-").as_str() {
            "single-to-fold" => self.yarn.single_to_fold(),
            "fold-to-single" => self.yarn.fold_to_single(),
            "trade" => self.yarn.trade(),
            _ => {
                return Err(NotationError::new_err(format!(
                    "unknown notation '{notation}'; write 'single-to-fold', 'fold-to-single' or 'trade'"
                )));
            }
        }
        .or_raise()
    }
    /// Contraction in folding, on the untwisted length, from the measured count.
    #[getter]
    fn contraction(&self, py: Python<'_>) -> PyResult<Quantity> {
        let c = self.yarn.contraction().or_raise()?;
        Ok(self.figure(py, c, Kind::Contraction))
    }
    /// Twist of the whole; None where it is not said.
    #[getter]
    fn twist(&self, py: Python<'_>) -> Option<Quantity> {
        match self.yarn.build.twist() {
            Turned::To(_, Some(turns)) => Some(Quantity::from_amount(py, turns, None)),
            Turned::Not => Some(self.figure(py, 0.0, Kind::Twist)),
            _ => None,
        }
    }
    /// Filaments of a filament yarn.
    #[getter]
    fn filaments(&self) -> Option<u32> {
        match &self.yarn.build {
            Strand::Single(single) => single.filaments,
            Strand::Fold(_) => None,
        }
    }
    /// Contraction in folding, on the twisted length: so much added to it is the untwisted.
    #[getter]
    fn contraction_on_twisted(&self, py: Python<'_>) -> PyResult<Quantity> {
        let k = self.yarn.contraction_on_twisted().or_raise()?;
        Ok(self.figure(py, k, Kind::TwistedContraction))
    }
    /// Share of the mass that each end has.
    #[getter]
    fn mass_shares(&self) -> PyResult<Vec<f64>> {
        let ends = 0..self.yarn.lengths().len();
        ends.map(|end| self.yarn.mass_share(end).or_raise()).collect()
    }
    /// Share of all the thread in the yarn that each end has.
    #[getter]
    fn length_shares(&self) -> PyResult<Vec<f64>> {
        let ends = 0..self.yarn.lengths().len();
        ends.map(|end| self.yarn.length_share(end).or_raise()).collect()
    }
    /// Cost of the yarn by mass, from the price of each end.
    #[pyo3(signature = (prices, /))]
    fn cost(&self, py: Python<'_>, prices: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        let prices = several(prices, Kind::CostPerMass, "prices")?;
        let cost = self.yarn.cost(&prices).or_raise()?;
        Ok(self.figure(py, cost, Kind::CostPerMass))
    }
    /// Share of the cost that each end has.
    #[pyo3(signature = (prices, /))]
    fn cost_shares(&self, prices: &Bound<'_, PyAny>) -> PyResult<Vec<f64>> {
        let prices = several(prices, Kind::CostPerMass, "prices")?;
        self.yarn.cost_shares(&prices).or_raise()
    }
    /// Twist factor of the whole.
    #[getter]
    fn twist_factor(&self, py: Python<'_>) -> PyResult<Quantity> {
        let k = self.yarn.twist_factor().or_raise()?;
        Ok(self.figure(py, k, Kind::TwistFactor))
    }
    /// Folding twist over the twist of a component (the first is 0).
    #[pyo3(signature = (component=0))]
    fn twist_ratio(&self, component: i64) -> PyResult<f64> {
        self.yarn.twist_ratio(place(component)?).or_raise()
    }
    /// How lively the fold may be: the ratio beside the habits of the trade, never a verdict.
    #[pyo3(signature = (component=0))]
    fn balance(&self, component: i64) -> PyResult<String> {
        self.yarn.balance(place(component)?).map(|b| b.to_string()).or_raise()
    }
    /// Direction and amount of the twist that is left in a component after folding: folding the other
    /// way takes out, folding the same way adds. Where the contraction of a folded yarn is known it is
    /// in a metre of the fold, else contraction is not counted.
    #[pyo3(signature = (component=0))]
    fn twist_left(&self, py: Python<'_>, component: i64) -> PyResult<(char, Quantity)> {
        let (direction, turns) = self.yarn.twist_left(place(component)?).or_raise()?;
        Ok((direction.letter(), self.figure(py, turns, Kind::Twist)))
    }
    /// The working of a figure: "nominal", "contraction", "contraction_on_twisted", "twist_factor"; of a
    /// component "twist_ratio", "twist_left"; of an end "mass_share", "length_share".
    #[pyo3(signature = (what, /, component=0))]
    fn working(&self, what: Text, component: i64) -> PyResult<Working> {
        let what = what.named("what")?;
        let asked = Asked::named(what).or_raise()?;
        let working = self.yarn.working(asked, place(component)?).or_raise()?;
        Ok(Working { working })
    }
    /// Count of the whole in another system.
    #[pyo3(signature = (unit, /))]
    fn to(&self, py: Python<'_>, unit: Text) -> PyResult<Quantity> {
        let unit = unit.named("unit")?;
        self.resultant(py)?.to(py, unit)
    }
    /// Number of the count of the whole in a system.
    #[pyo3(signature = (unit, /))]
    fn number(&self, unit: Text) -> PyResult<f64> {
        let unit = unit.named("unit")?;
        let tex = self.yarn.resultant().or_raise()?;
        let unit = quantity::unit(unit, Some(Kind::LinearDensity)).or_raise()?;
        Ok(unit.from_base(tex))
    }
    /// The same yarn, with the count of the whole as it was measured.
    #[pyo3(signature = (resultant, /))]
    fn measured(&self, resultant: &Bound<'_, PyAny>) -> PyResult<Yarn> {
        let count = single(resultant, Kind::LinearDensity, "resultant")?;
        self.yarn.clone().with_whole(count).map(|y| self.same(y)).or_raise()
    }
    /// The same yarn, with the count of the whole computed from a contraction in folding, on the
    /// untwisted length.
    #[pyo3(signature = (contraction))]
    fn folded(&self, contraction: &Bound<'_, PyAny>) -> PyResult<Yarn> {
        let c = single(contraction, Kind::Contraction, "contraction")?;
        self.yarn.clone().folded(c.base()).map(|y| self.same(y)).or_raise()
    }
    /// The same yarn, with each end fed at a length of its own in a unit length of the yarn: 1.6 for
    /// an end that loops, 1/(1 − k) for a straight one. The count of the whole follows.
    #[pyo3(signature = (lengths, /))]
    fn fed(&self, lengths: &Bound<'_, PyAny>) -> PyResult<Yarn> {
        let lengths = several(lengths, Kind::Ratio, "lengths")?;
        self.yarn.clone().fed(&lengths).map(|y| self.same(y)).or_raise()
    }
    /// The yarn on a page: its notations, its count in the systems in use, its build, what follows.
    fn report(&self) -> String {
        self.yarn.report().text()
    }
    fn _repr_html_(&self) -> String {
        self.yarn.report().html()
    }
    /// The same yarn, of which more is known.
    #[pyo3(signature = (*, material=None, state=None, relaxed=None))]
    fn known(
        &self,
        material: Option<Text>,
        state: Option<Text>,
        relaxed: Option<bool>,
    ) -> PyResult<Yarn> {
        let material = Text::owned(material.as_ref(), "material")?;
        let state = Text::owned(state.as_ref(), "state")?;
        Ok(self.with(material, state, relaxed))
    }
    fn __str__(&self) -> String {
        self.yarn.designation()
    }
    fn __repr__(&self) -> String {
        format!("<{}: {}>", self.yarn.what(), self.yarn)
    }
    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other.cast::<Yarn>().is_ok_and(|o| o.get().yarn == self.yarn)
    }
    fn __hash__(&self) -> u64 {
        use std::hash::{DefaultHasher, Hash, Hasher};
        let mut hasher = DefaultHasher::new();
        self.yarn.designation().hash(&mut hasher);
        hasher.finish()
    }
    /// Makes a yarn from what a pickle keeps.
    #[staticmethod]
    fn _of(
        text: &Bound<'_, PyString>,
        lengths: Vec<f64>,
        material: Option<Text>,
        state: Option<Text>,
        relaxed: Option<bool>,
    ) -> PyResult<Yarn> {
        let material = Text::owned(material.as_ref(), "material")?;
        let state = Text::owned(state.as_ref(), "state")?;
        let mut yarn = read(text.py(), text.as_any(), None, None, material, state, relaxed)?;
        if !lengths.is_empty() {
            yarn.yarn.about_mut().lengths = lengths;
        }
        Ok(yarn)
    }
    fn __reduce__<'py>(
        slf: &Bound<'py, Self>,
    ) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyTuple>)> {
        let yarn = &slf.get().yarn;
        let About { lengths, material, state, relaxed, .. } = yarn.about().clone();
        let kept = (yarn.designation(), lengths, material, state, relaxed);
        Ok((slf.get_type().getattr("_of")?, kept.into_pyobject(slf.py())?))
    }
}

/// Which component or end, counted from 0.
fn place(component: i64) -> PyResult<usize> {
    usize::try_from(component).map_err(|_| {
        RangeError::new_err(format!("component {component} was asked for; the first is 0"))
    })
}

/// One figure of a kind.
fn single(value: &Bound<'_, PyAny>, kind: Kind, name: &str) -> PyResult<Amount> {
    match one(value, kind)? {
        Given::One(amount, _) => {
            kind.check(amount.base()).or_raise_at(name)?;
            Ok(amount)
        }
        Given::Many(..) => {
            Err(NotationError::new_err(format!("{name}: give one value, not an array")))
        }
    }
}

/// One figure of a kind for each end.
fn several(value: &Bound<'_, PyAny>, kind: Kind, name: &str) -> PyResult<Vec<f64>> {
    let all = members(value, name, kind)?;
    all.iter().map(|one| Ok(single(one, kind, name)?.base())).collect()
}
