//! Clean wool and the humidity of the air: a curve from memory, with its hysteresis as a band.

use super::tables::moisture::{HYSTERESIS, WOOL_POINTS};
use super::{humidity_between_points, regain_between_points};
use crate::error::{Error, Result};
use crate::job::block;
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{figure, of_kind};
use crate::quantity::{Amount, Fraction, Kind, Regain, Typed, unit};
use crate::table::Report;
use crate::worked::Worked;

const ABOUT: [&str; 3] = [
    "A merino skein at about 24 °C, straight between the points of the table \
     wool_isotherm: for planning, not for an invoice. Clean wool only: suint takes up far more water.",
    "In drying wool holds 1 to 2 points of regain more than in damping at the same humidity: which holds \
     depends on where the wool comes from.",
    "At 65 % and 20 °C a review relays 14 % in absorption, and 16 to 18 %, from Morton and Hearle.",
];

fn percent<'t, Q: Typed<Worked<'t>>>(
    desk: &Desk<'t>,
    name: &str,
    symbol: &str,
    words: &str,
    number: f64,
) -> Result<Q> {
    let amount = Amount { number, unit: unit("%", Some(Kind::Fraction))? };
    Ok(desk.given(name, symbol, words, &amount, None))
}

/// The points on both sides of a figure.
fn beside(x: f64, of: impl Fn(&(f64, f64)) -> f64) -> Option<[(f64, f64); 2]> {
    // What was typed as a point belongs to it, whatever the rounding of the change of unit.
    let slack = 1e-9;
    let all = WOOL_POINTS.windows(2);
    let found = all.map(|w| [w[0], w[1]]).find(|[_, above]| x <= of(above) + slack)?;
    (x >= of(&found[0]) - slack).then_some(found)
}

/// The four figures of two points, at the desk.
type Points<'t> =
    (Fraction<Worked<'t>>, Regain<Worked<'t>>, Fraction<Worked<'t>>, Regain<Worked<'t>>);

/// The points on both sides, by names that begin with what they are for.
fn enter<'t>(desk: &Desk<'t>, prefix: &str, [below, above]: [(f64, f64); 2]) -> Result<Points<'t>> {
    let enter = |name: &str| format!("{prefix}{name}");
    let (air, wool) = ("humidity of the point", "regain there, in absorption");
    Ok((
        percent(desk, &enter("humidity_below"), "φ₁", &format!("{air} below"), below.0)?,
        percent(desk, &enter("regain_below"), "R₁", wool, below.1)?,
        percent(desk, &enter("humidity_above"), "φ₂", &format!("{air} above"), above.0)?,
        percent(desk, &enter("regain_above"), "R₂", wool, above.1)?,
    ))
}

fn more<'t>(desk: &Desk<'t>) -> Result<[Regain<Worked<'t>>; 2]> {
    Ok([
        percent(desk, "least_more", "h₁", "least that drying holds more", HYSTERESIS.0)?,
        percent(desk, "most_more", "h₂", "most that drying holds more", HYSTERESIS.1)?,
    ])
}

/// The regain of clean wool in air of a relative humidity: damping, and the band of drying.
///
/// ```
/// use hankwise::{fibre, quantity};
///
/// let air = quantity::parse("65 %")?;
/// let wool = fibre::equilibrium_regain(&air, None)?;
/// assert!((wool.find("absorption")?.value - 0.1605).abs() < 1e-12);
/// assert!((wool.find("desorption_high")?.value - 0.1805).abs() < 1e-12);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn equilibrium_regain(humidity: &Amount, typed: Option<String>) -> Result<Particulars> {
    let x = 100.0 * humidity.base();
    let points = beside(x, |p| p.0).ok_or_else(|| {
        Error::range(format!(
            "humidity: {} % is outside the points that are known for wool, 10 to 90 % r.h.; nearer to dry \
             or to wet nothing is said",
            figure(x)
        ))
    })?;
    Particulars::work(|desk| {
        let air: Fraction<_> = desk.given("humidity", "φ", "relative humidity", humidity, typed);
        let (humid_1, regain_1, humid_2, regain_2) = enter(desk, "", points)?;
        let damping = regain_between_points(air, humid_1, regain_1, humid_2, regain_2);
        let words = "regain in damping, from the dry side";
        let damping = desk.figure("absorption", words, damping);
        let [least, most] = more(desk)?;
        let low = Regain::from(damping.v() + least.v());
        desk.figure("desorption_low", "regain in drying, at least", low);
        let high = Regain::from(damping.v() + most.v());
        desk.figure("desorption_high", "regain in drying, at most", high);
        let names = ["absorption", "desorption_low", "desorption_high"];
        Ok(report(desk, &format!("Clean wool in air of {} % r.h.", figure(x)), &names))
    })
}

/// The relative humidity that keeps clean wool at a regain: damping, and the band of drying.
///
/// In drying wool keeps a regain in drier air than in damping. Where the band leaves the points that
/// are known it is left out.
pub fn humidity_for_regain(regain: &Amount, typed: Option<String>) -> Result<Particulars> {
    let x = 100.0 * regain.base();
    let points = beside(x, |p| p.1).ok_or_else(|| {
        let (least, most) = (WOOL_POINTS[0].1, WOOL_POINTS[WOOL_POINTS.len() - 1].1);
        Error::range(format!(
            "regain: {} is outside the points that are known for wool, {least} to {most} % in damping",
            of_kind(regain.base(), Kind::Regain)
        ))
    })?;
    Particulars::work(|desk| {
        let wanted: Regain<_> = desk.given("regain", "R", "regain wanted", regain, typed);
        let (humid_1, regain_1, humid_2, regain_2) = enter(desk, "damping.", points)?;
        let damping = humidity_between_points(wanted, humid_1, regain_1, humid_2, regain_2);
        desk.figure("damping", "humidity that brings drier wool to it", damping);
        let [least, most] = more(desk)?;
        for (name, words, more, shift) in [
            ("drying_high", "humidity that brings wetter wool to it, at most", least, HYSTERESIS.0),
            ("drying_low", "humidity that brings wetter wool to it, at least", most, HYSTERESIS.1),
        ] {
            let Some(points) = beside(x - shift, |p| p.1) else { continue };
            let prefix = format!("{name}.");
            let (humid_1, regain_1, humid_2, regain_2) = enter(desk, &prefix, points)?;
            let lower = Regain::from(wanted.v() - more.v());
            let air = humidity_between_points(lower, humid_1, regain_1, humid_2, regain_2);
            desk.figure(name, words, air);
        }
        let title = format!("Air for clean wool at {} % regain", figure(x));
        Ok(report(desk, &title, &["damping", "drying_low", "drying_high"]))
    })
}

fn report(desk: &Desk<'_>, title: &str, names: &[&str]) -> Report {
    let mut block = block(desk, "From memory", names, None);
    block.foot = ABOUT.map(str::to_owned).to_vec();
    Report { title: title.to_owned(), blocks: vec![block] }
}
