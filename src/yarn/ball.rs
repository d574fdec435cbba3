//! The ball of hand-knitting yarn: how long it is, what its band says, what such yarn is called.

use crate::error::{Error, Result, did_you_mean};
use crate::formula::{Formula, formula};
use crate::handbook::Figure;
use crate::number::Number;
use crate::quantity::{Length, LinearDensity, Mass, Regain};

use super::count_of;
use super::tables::weights::HAND_KNITTING_WEIGHTS;

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[&BALL_LENGTH];

/// Length of yarn in a ball that weighs what its label says at the regain of the label.
#[formula(
    result = "L",
    sources = ["definition", "PCT moisture"],
    limits = ["both regains on the oven-dry mass; with one and the same regain it is mass over count"],
    slips = [
        "weighing balls in a heated room at the label's mass: dry wool fills the scale with more yarn, damp wool sells short",
        "taking the difference of the regains for the difference of the lengths"
    ]
)]
pub fn ball_length<N: Number>(
    /// mass on the label
    #[q("m_b", 0.01..=1.0)]
    ball_mass: Mass<N>,
    /// count, as measured
    #[q("T", 15.0..=5000.0)]
    count: LinearDensity<N>,
    /// regain at which the count was measured
    #[q("R", 0.0..=0.4)]
    regain: Regain<N>,
    /// regain at which the label's mass holds
    #[q("A", 0.0..=0.2)]
    label_regain: Regain<N>,
) -> Length<N> {
    let as_measured = (ball_mass * (1.0 + regain) / (1.0 + label_regain)).named("m_R");
    as_measured / count * 1e6
}

/// What a ball band says of a yarn.
#[derive(Clone, Debug)]
pub struct BallBand {
    /// Mass of the ball, at the label's regain.
    pub ball: Mass<f64>,
    /// Yarn in it.
    pub length: Length<f64>,
    /// The count at the label's regain: mass of the ball over its length.
    pub count: LinearDensity<f64>,
    /// Hand-knitting words into whose bands the count falls; may be none.
    pub words: Vec<&'static Figure>,
}

/// What the band of a ball says, from the count and the mass of the ball, each at its regain.
pub fn ball_band(
    count: LinearDensity<f64>,
    ball: Mass<f64>,
    regain: Regain<f64>,
    label_regain: Regain<f64>,
    country: Option<&str>,
) -> Result<BallBand> {
    let row = [ball.value(), count.value(), regain.value(), label_regain.value()];
    let length = Length::base(BALL_LENGTH.answer(&row)?);
    if length.value() == 0.0 {
        return Err(Error::range("a ball of 0 g has no yarn; write its mass, like '50 g'"));
    }
    let count = count_of(length, ball);
    Ok(BallBand { ball, length, count, words: weight_class(count, country)? })
}

/// The hand-knitting words into whose bands a count falls, with the bands: several, or none.
pub fn weight_class(
    count: LinearDensity<f64>,
    country: Option<&str>,
) -> Result<Vec<&'static Figure>> {
    let rows = of_country(country)?;
    Ok(rows.into_iter().filter(|f| f.holds(count.value())).collect())
}

/// The bands that go with a hand-knitting word, one for each table that has it.
///
/// ```
/// use hankwise::prelude::*;
///
/// let uk = yarn::weight_band("DK", Some("UK"))?;
/// assert!(uk.iter().any(|band| band.words() == "200 to 250" && band.unit == "m/100g"));
/// # Ok::<(), Error>(())
/// ```
pub fn weight_band(word: &str, country: Option<&str>) -> Result<Vec<&'static Figure>> {
    let wanted = plain_word(word);
    let rows = of_country(country)?;
    let found: Vec<_> =
        rows.iter().copied().filter(|f| words_of(f).any(|w| plain_word(w) == wanted)).collect();
    if !found.is_empty() {
        return Ok(found);
    }
    let known: Vec<&str> = rows.iter().flat_map(|f| words_of(f)).collect();
    let near = did_you_mean(&wanted, known).map(|n| format!("; did you mean '{n}'?"));
    let place = country.map_or(String::new(), |c| format!(" of {c}"));
    Err(Error::notation(format!(
        "'{word}' is not among the hand-knitting words{place}{}",
        near.as_deref().unwrap_or("; see the handbook's table 'hand_knitting_weights'")
    )))
}

fn words_of(figure: &'static Figure) -> impl Iterator<Item = &'static str> {
    figure.of[1].split(", ")
}

/// `4-ply`, `4ply` and `4 Ply` are one word, so are `double knitting`, `double knit` and `DK`.
fn plain_word(word: &str) -> String {
    let lower = word.trim().to_lowercase().replace('-', " ");
    let plain = lower.strip_suffix("weight").unwrap_or(&lower).trim();
    if let Some(number) = plain.strip_suffix("ply") {
        return format!("{} ply", number.trim());
    }
    match plain {
        "double knitting" | "double knit" => "dk".to_owned(),
        "light double knitting" => "light dk".to_owned(),
        _ => plain.to_owned(),
    }
}

/// The names and short names of the countries of the table.
const COUNTRIES: &[(&str, &[&str])] = &[
    ("Australia", &["au"]),
    ("Austria", &["at"]),
    ("Germany", &["de"]),
    ("New Zealand", &["nz"]),
    ("UK", &["gb", "britain", "great britain", "united kingdom"]),
    ("US", &["usa", "united states", "america"]),
];

fn of_country(country: Option<&str>) -> Result<Vec<&'static Figure>> {
    let all = HAND_KNITTING_WEIGHTS.figures.iter();
    let Some(country) = country else {
        return Ok(all.collect());
    };
    let wanted = country.trim().to_lowercase();
    let known = COUNTRIES
        .iter()
        .find(|(name, short)| name.to_lowercase() == wanted || short.contains(&wanted.as_str()));
    let Some((name, _)) = known else {
        let names: Vec<&str> = COUNTRIES.iter().map(|(name, _)| *name).collect();
        return Err(Error::notation(format!(
            "there are no hand-knitting words of '{country}'; there are those of {}",
            names.join(", ")
        )));
    };
    Ok(all.filter(|f| f.of[0].split(", ").any(|c| c == *name)).collect())
}
