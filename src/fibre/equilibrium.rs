//! Clean wool and the humidity of the air: a curve from memory, with its hysteresis as a band.

use std::sync::LazyLock;

use super::tables::WOOL_ISOTHERM;
use super::{humidity_between_points, regain_between_points};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::{Fraction, Regain};

const BLOCK: &str = "From memory";
const ABOUT: [&str; 3] = [
    "A merino skein at about 24 °C, straight between the points of the table \
     wool_isotherm: for planning, not for an invoice. Clean wool only: suint takes up far more water.",
    "In drying wool holds 1 to 2 points of regain more than in damping at the same humidity: which holds \
     depends on where the wool comes from.",
    "At 65 % and 20 °C a review relays 14 % in absorption, and 16 to 18 %, from Morton and Hearle.",
];

/// A number of per cent in the base unit.
fn percent(number: f64) -> f64 {
    number / 100.0
}

/// A point of the curve: humidity and regain, in per cent.
type Point = (f64, f64);

/// The points of the curve in damping, from the handbook.
static WOOL_POINTS: LazyLock<Vec<Point>> = LazyLock::new(|| {
    let humidity = |of: &str| of.split(' ').next().and_then(|number| number.parse().ok());
    let points = WOOL_ISOTHERM.figures.iter().filter(|f| f.of[0] == "absorption");
    points.map(|f| (humidity(f.of[1]).unwrap_or(f64::NAN), f.low)).collect()
});

/// How much more wool holds in drying than in damping, in per cent of the dry mass: at least, at most.
fn hysteresis() -> (f64, f64) {
    let row = WOOL_ISOTHERM.row(&["desorption above absorption", "mid-range"]);
    (row.low, row.high)
}

/// The points on both sides of a number of per cent.
fn beside(x: f64, of: impl Fn(&Point) -> f64) -> Option<[Point; 2]> {
    // What was typed as a point belongs to it, whatever the rounding of the change of unit.
    let slack = 1e-9;
    let all = WOOL_POINTS.windows(2);
    let found = all.map(|w| [w[0], w[1]]).find(|[_, above]| x <= of(above) + slack)?;
    (x >= of(&found[0]) - slack).then_some(found)
}

/// Humidity and regain of the point below, then of that above.
type Points<N> = (Fraction<N>, Regain<N>, Fraction<N>, Regain<N>);

/// The points, looked up for a humidity or a regain.
fn points<N: Number>(asked: V<N>, [below, above]: [Point; 2]) -> Points<N> {
    let look_up = |number: f64| V::looked_up(percent(number), [asked]);
    (
        look_up(below.0).into(),
        look_up(below.1).into(),
        look_up(above.0).into(),
        look_up(above.1).into(),
    )
}

/// What [`equilibrium_regain()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct AirInputs<N> {
    /// relative humidity
    #[q("φ", 0.1..=0.9, memory, like = "65 %", zero)]
    pub humidity: Fraction<N>,
}

/// What [`equilibrium_regain()`] answers.
#[derive(Clone, Debug, Results)]
pub struct AirResults<N> {
    /// regain in damping, from the dry side
    #[block = "From memory"]
    pub damping_regain: Regain<N>,
    /// regain in drying, at least
    pub drying_regain_low: Regain<N>,
    /// regain in drying, at most
    pub drying_regain_high: Regain<N>,
}

/// The regain of clean wool in air of a relative humidity: in damping, and the band of drying.
///
/// From memory, 10 to 90 %: for planning, not for an invoice, and never for greasy wool.
#[calculation(
    title = "Clean wool in the air",
    example = ">>> import hankwise as hw
>>> wool = hw.fibre.equilibrium_regain(humidity=\"65 %\")
>>> wool[\"damping_regain\"], wool[\"drying_regain_low\"], wool[\"drying_regain_high\"]
(<regain: 16.05 %>, <regain: 17.05 %>, <regain: 18.05 %>)",
    check = check_air
)]
pub fn equilibrium_regain<N: Number>(given: &AirInputs<N>) -> AirResults<N> {
    let humidity = given.humidity;
    // Outside the points nothing is known, and the check refuses it.
    let known = beside(100.0 * humidity.value(), |p| p.0).unwrap_or([(f64::NAN, f64::NAN); 2]);
    let (humid_1, regain_1, humid_2, regain_2) = points(humidity.v(), known);
    let damping = regain_between_points(humidity, humid_1, regain_1, humid_2, regain_2);
    let (least, most) = hysteresis();
    AirResults {
        damping_regain: damping,
        drying_regain_low: Regain::from(damping.v() + percent(least)),
        drying_regain_high: Regain::from(damping.v() + percent(most)),
    }
}

fn check_air(given: &AirInputs<f64>, found: &AirResults<f64>, check: &mut Check<'_>) -> Result<()> {
    if !found.damping_regain.value().is_finite() {
        refuse!(
            check,
            given.humidity,
            "{} is outside the points that are known for wool, 10 to 90 % r.h.; nearer to dry or to wet \
             nothing is said",
            check.say(given.humidity)
        );
    }
    for sentence in ABOUT {
        check.note(BLOCK, sentence);
    }
    Ok(())
}

/// What [`humidity_for_regain()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct KeepingInputs<N> {
    /// regain wanted
    #[q("R", 0.047..=0.234, memory, like = "16 %", zero)]
    pub regain: Regain<N>,
}

/// What [`humidity_for_regain()`] answers.
#[derive(Clone, Debug, Results)]
pub struct KeepingResults<N> {
    /// humidity that brings drier wool to it
    #[block = "From memory"]
    pub damping_humidity: Fraction<N>,
    /// humidity that brings wetter wool to it, at least
    pub drying_humidity_low: Option<Fraction<N>>,
    /// humidity that brings wetter wool to it, at most
    pub drying_humidity_high: Option<Fraction<N>>,
}

/// The relative humidity that keeps clean wool at a regain: in damping, and the band of drying.
///
/// In drying wool keeps a regain in drier air than in damping. Where the band leaves the points that
/// are known it is omitted. From memory: for planning, and never for greasy wool.
#[calculation(
    title = "Air for clean wool",
    example = ">>> import hankwise as hw
>>> air = hw.fibre.humidity_for_regain(regain=\"16 %\")
>>> air[\"damping_humidity\"], air[\"drying_humidity_low\"], air[\"drying_humidity_high\"]
(<fraction: 64.78 %>, <fraction: 55.71 %>, <fraction: 60.43 %>)",
    check = check_keeping
)]
pub fn humidity_for_regain<N: Number>(given: &KeepingInputs<N>) -> KeepingResults<N> {
    let x = 100.0 * given.regain.value();
    let humidity = |regain: Regain<N>, known: [Point; 2]| {
        let (humid_1, regain_1, humid_2, regain_2) = points(regain.v(), known);
        humidity_between_points(regain, humid_1, regain_1, humid_2, regain_2)
    };
    // In drying wool holds so much more.
    let drying = |more: f64| {
        let lower = Regain::from(given.regain.v() - percent(more));
        beside(x - more, |p| p.1).map(|known| humidity(lower, known))
    };
    let known = beside(x, |p| p.1).unwrap_or([(f64::NAN, f64::NAN); 2]);
    let (least, most) = hysteresis();
    KeepingResults {
        damping_humidity: humidity(given.regain, known),
        drying_humidity_low: drying(most),
        drying_humidity_high: drying(least),
    }
}

fn check_keeping(
    given: &KeepingInputs<f64>,
    found: &KeepingResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    if !found.damping_humidity.value().is_finite() {
        let (least, most) = (WOOL_POINTS[0].1, WOOL_POINTS[WOOL_POINTS.len() - 1].1);
        refuse!(
            check,
            given.regain,
            "{} is outside the points that are known for wool, {least} to {most} % in damping",
            check.say(given.regain)
        );
    }
    for sentence in ABOUT {
        check.note(BLOCK, sentence);
    }
    Ok(())
}
