//! The ball of hand-knitting yarn: how long it is, what its band says, what such yarn is called.

use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::{Error, Result, did_you_mean};
use crate::formula::formula;
use crate::handbook::Figure;
use crate::number::{Number, V};
use crate::quantity::print::with_unit;
use crate::quantity::{Length, LinearDensity, Mass, Regain};
use crate::table::{Align, Block, Report};

use super::count_of;
use super::tables::HAND_KNITTING_WEIGHTS;

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
    let as_measured = (ball_mass * (1.0 + regain) / (1.0 + label_regain)).named([
        "m_R",
        "kg",
        "mass of the ball at the regain of the count",
    ]);
    as_measured / count * 1e6
}

/// The regains of a count and of a label.
#[derive(Clone, Debug, Inputs)]
pub struct BallRegains<N> {
    /// regain at which the count was measured
    #[q("R", 0.0..=0.4, like = "12 %", zero)]
    pub regain: Regain<N>,
    /// regain at which the label's mass holds
    #[q("A", 0.0..=0.2, like = "17 %", zero)]
    pub label_regain: Regain<N>,
}

/// What [`ball_band()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct BallBandInputs<N> {
    /// count, as measured
    #[q("T", 15.0..=5000.0, like = "4 Nm")]
    pub count: LinearDensity<N>,
    /// mass on the label
    #[q("m_b", 0.01..=1.0, or = 0.05)]
    pub ball_mass: Mass<N>,
    /// The regains, where the count was measured at another than the label's.
    #[group]
    pub regains: Option<BallRegains<N>>,
    /// country whose words of hand knitting are shown
    pub country: Option<String>,
}

/// What [`ball_band()`] answers.
#[derive(Clone, Debug, Results)]
pub struct BallBandResults<N> {
    /// yarn in the ball
    #[block = "The ball"]
    pub yarn_length: Length<N>,
    /// count at the label's regain: mass of the ball over its length
    pub label_count: LinearDensity<N>,
}

/// What the band of a ball says, from the count and the mass of the ball.
///
/// Where the count was measured at another regain than the label's mass holds at, give both. The result
/// shows itself as the band, in metres and yards, with the words of hand knitting; `weight_class` gives
/// those words. For a length that was weighed, the count is `count_of(length, mass)`.
#[calculation(
    title = "The band of a ball",
    example = ">>> import hankwise as hw
>>> band = hw.yarn.ball_band(count=\"4 Nm\", ball_mass=\"100 g\", regain=\"12 %\", label_regain=\"17 %\")
>>> band[\"yarn_length\"], band[\"label_count\"].to(\"yd/oz\")
(<length: 382.9 m>, <linear density (count): 118.7 yd/oz>)",
    check = check_band,
    report = band
)]
pub fn ball_band<N: Number>(given: &BallBandInputs<N>) -> BallBandResults<N> {
    let dry = || Regain::from(V::constant(0.0));
    let (regain, label_regain) = match &given.regains {
        Some(regains) => (regains.regain, regains.label_regain),
        None => (dry(), dry()),
    };
    let yarn_length = ball_length(given.ball_mass, given.count, regain, label_regain);
    BallBandResults { yarn_length, label_count: count_of(yarn_length, given.ball_mass) }
}

fn check_band(
    given: &BallBandInputs<f64>,
    _found: &BallBandResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    of_country(given.country.as_deref())
        .map(|_| ())
        .map_err(|e| check.refuse("country", e.to_string()))
}

/// The band: metres and yards, and the words of hand knitting.
fn band(given: &BallBandInputs<f64>, found: &BallBandResults<f64>, check: &Check<'_>) -> Report {
    let (count, length) = (found.label_count, found.yarn_length);
    let length_in = |unit| length.number(unit).map_or(String::new(), |x| with_unit(x, unit));
    let metres = |unit| count.number(unit).map_or(String::new(), |x| with_unit(x, "m"));
    let yards = |unit| count.number(unit).map_or(String::new(), |x| with_unit(x, "yd"));
    let count_in = |unit| count.number(unit).map_or(String::new(), |x| with_unit(x, unit));
    let row = |what: &str, one: String, two: String| vec![what.to_owned(), one, two];
    let columns = [("", Align::Left), ("metres", Align::Right), ("yards", Align::Right)];
    let lengths = Block {
        title: format!("Ball of {}", check.say(given.ball_mass)),
        columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
        rows: vec![
            row("in the ball", length_in("m"), length_in("yd")),
            row("in 50 g", metres("m/50g"), yards("yd/50g")),
            row("in 100 g", metres("m/100g"), yards("yd/100g")),
            row("in 1 oz", String::new(), yards("yd/oz")),
        ],
        lead: vec![format!("Count {}, {}.", count_in("tex"), count_in("Nm"))],
        ..Block::default()
    };
    let columns = ["country", "word", "band", "source"];
    let mut words = Block {
        title: "Called, by the tables in use".to_owned(),
        columns: columns.map(|name| (name.to_owned(), Align::Left)).to_vec(),
        ..Block::default()
    };
    // The check has refused a country without a table.
    for f in weight_class(count, given.country.as_deref()).unwrap_or_default() {
        let (country, word) = (f.of[0].to_owned(), f.of[1].to_owned());
        let band = format!("{} {}", f.words(), f.unit);
        words.rows.push(vec![country, word, band, f.source.to_owned()]);
    }
    if words.rows.is_empty() {
        words.lead.push("No table has a word for it.".to_owned());
    }
    Report { title: BALL_BAND.title.to_owned(), blocks: vec![lengths, words] }
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
            "no hand-knitting words of '{country}'; there are those of {}",
            names.join(", ")
        )));
    };
    Ok(all.filter(|f| f.of[0].split(", ").any(|c| c == *name)).collect())
}
