//! Count by the skein, in the state that an option of the test names.

use super::summary::{EQUAL, Farthest, farthest};
use super::{Sample, coefficient_of_variation, mean_lower_limit, mean_upper_limit};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, Words, calculation};
use crate::error::Result;
use crate::formula::formula;
use crate::law::t_two_sided;
use crate::number::{Number, V};
use crate::quantity::print::figure;
use crate::quantity::{
    Count, Fraction, Length, LinearDensity, Mass, Ratio, Reading, ReadingSpread, Regain, Stretch,
    unit,
};
use crate::yarn::count_of;

/// The count up to which the test is meant, in tex.
const COARSEST: f64 = 2000.0;
/// The stretch from which a yarn is outside the test.
const MOST_STRETCH: f64 = 0.05;
const BLOCK: &str = "Count by the skein";

/// Count from the oven-dry mass of a skein and what is added to it by agreement.
#[formula(
    result = "T",
    sources = ["ASTM D1907", "definition"],
    limits = ["for the option 3 of ASTM D1907 what is added is a regain; for 7, of a scoured skein, the commercial allowance: regain and finish together"],
    slips = ["a moisture content for a regain: 17 % regain is 14.5 % content", "a mass that was not oven-dry"]
)]
pub fn commercial_count<N: Number>(
    /// length of the skein
    #[q("L", 1.0..=1000.0)]
    skein_length: Length<N>,
    /// its oven-dry mass
    #[q("m_d", 0.00001..=1.0)]
    oven_dry_mass: Mass<N>,
    /// regain or commercial allowance, on the oven-dry mass
    #[q("A", 0.0..=0.25)]
    allowance: Regain<N>,
) -> LinearDensity<N> {
    oven_dry_mass / skein_length * (1.0 + allowance) * 1e6
}

/// An option of the skein test of ASTM D1907.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Words)]
pub enum SkeinOption {
    /// option 1 of ASTM D1907
    #[default]
    Conditioned,
    /// option 2
    #[word("oven-dry")]
    OvenDry,
    /// option 3
    #[word("oven-dry plus regain")]
    OvenDryPlusRegain,
    /// option 4
    #[word("scoured, conditioned")]
    ScouredConditioned,
    /// option 5
    #[word("scoured, oven-dry")]
    ScouredOvenDry,
    /// option 6
    #[word("scoured, oven-dry plus regain")]
    ScouredPlusRegain,
    /// option 7
    #[word("scoured, oven-dry plus commercial allowance")]
    ScouredPlusAllowance,
}

impl SkeinOption {
    /// Its number in the standard.
    pub fn number(self) -> usize {
        self as usize + 1
    }
    /// Its name.
    pub fn name(self) -> &'static str {
        Self::WORDS[self as usize].0
    }
    /// What is added to the oven-dry mass, where anything is.
    pub fn adds(self) -> Option<&'static str> {
        match self {
            SkeinOption::OvenDryPlusRegain | SkeinOption::ScouredPlusRegain => Some("regain"),
            SkeinOption::ScouredPlusAllowance => Some("commercial allowance"),
            _ => None,
        }
    }
}

/// What [`skein_count()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct SkeinCountInputs<N> {
    /// mass of each skein, in the state of the option
    #[q("m", 0.000_01..=1.0, like = "13.05 g")]
    pub masses: Vec<Mass<N>>,
    /// length of each skein
    #[q("L", 1.0..=1000.0, like = "100 m")]
    pub skein_length: Length<N>,
    /// option of ASTM D1907: the state in which the skeins were weighed, and what is added
    #[word]
    pub option: SkeinOption,
    /// regain or commercial allowance that is added, on the oven-dry mass
    #[q("A", 0.0..=0.25, like = "17 %", zero)]
    pub allowance: Option<Regain<N>>,
    /// stretch of the yarn from 0.25 to 0.75 cN/tex
    #[q("e", 0.0..=0.05, basis = "ASTM D1907", like = "2 %", zero)]
    pub stretch: Option<Stretch<N>>,
    /// share of cases in which the true count is within the limits
    #[q("C", 0.8..=0.999, or = 0.95)]
    pub confidence: Fraction<N>,
}

/// What [`skein_count()`] answers.
#[derive(Clone, Debug, Results)]
pub struct SkeinCountResults<N> {
    /// count, the mean of all skeins
    #[block = "Count by the skein"]
    pub count: LinearDensity<N>,
    /// finer end of the interval of the count
    pub finer_limit: Option<LinearDensity<N>>,
    /// coarser end of the interval of the count
    pub coarser_limit: LinearDensity<N>,
    /// coefficient of variation from skein to skein
    pub cv: Ratio<N>,
    /// deviate of Student's law for the confidence
    pub student_t: Ratio<N>,
    /// count by each skein
    pub counts: Vec<LinearDensity<N>>,
}

/// The count of a yarn from the masses of skeins of one length, with its interval, in the state that an
/// option of ASTM D1907 names.
///
/// Weigh the skeins singly, so that how they vary is known. `allowance` is what the options 3, 6 and 7
/// add. `stretch` is how far the yarn stretches from 0.25 to 0.75 cN/tex, where that was tried. Where the
/// skeins are too few and vary too much to say how fine the yarn may be, there is no finer limit.
#[calculation(
    title = "Count by the skein",
    example = ">>> import hankwise as hw
>>> skeins = hw.quality.skein_count(masses=[\"13.05 g\", \"12.91 g\", \"13.22 g\", \"13.10 g\"],
...                                 skein_length=\"100 m\", option=\"oven-dry plus regain\",
...                                 allowance=\"17 %\")
>>> skeins[\"count\"], skeins[\"finer_limit\"], skeins[\"coarser_limit\"]
(<linear density (count): 152.9 tex>, <linear density (count): 150.5 tex>, <linear density (count): 155.3 tex>)",
    sources = ["ASTM D1907"],
    check = check
)]
pub fn skein_count<N: Number>(given: &SkeinCountInputs<N>) -> SkeinCountResults<N> {
    let length = given.skein_length;
    let by_skein = |mass: &Mass<N>| match given.allowance {
        None => count_of(length, *mass),
        Some(allowance) => commercial_count(length, *mass, allowance),
    };
    let counts: Vec<LinearDensity<N>> = given.masses.iter().map(by_skein).collect();
    let skeins = counts.len() as f64;
    let mean = V::sum(counts.iter().map(|count| count.v())) / skeins;
    let squares = V::sum(counts.iter().map(|count| (count.v() - mean).squared()));
    let sd =
        (squares / (skeins - 1.0)).sqrt().named(["s", "tex", "standard deviation of the skeins"]);
    let number = V::constant(skeins);
    let confidence = given.confidence.v();
    let t = t_two_sided(confidence.value(), skeins - 1.0);
    let t = Ratio::from(V::looked_up(t, [confidence, number]));
    let (middle, spread, number) =
        (Reading::from(mean), ReadingSpread::from(sd), Count::from(number));
    let finer = mean_lower_limit(middle, t, spread, number);
    SkeinCountResults {
        count: mean.into(),
        // No yarn is finer than none.
        finer_limit: (finer.value() > 0.0).then(|| finer.v().into()),
        coarser_limit: mean_upper_limit(middle, t, spread, number).v().into(),
        cv: coefficient_of_variation(spread, middle),
        student_t: t,
        counts,
    }
}

fn check(
    given: &SkeinCountInputs<f64>,
    found: &SkeinCountResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let option = given.option;
    let (number, name) = (option.number(), option.name());
    match (option.adds(), given.allowance) {
        (None, Some(_)) => refuse!(
            check,
            given.allowance,
            "option {number} ({name}) adds nothing; omit the allowance, or write an option that adds one, \
             such as '{}'",
            SkeinOption::OvenDryPlusRegain.name()
        ),
        (Some(adds), None) => refuse!(
            check,
            given.allowance,
            "option {number} ({name}) adds a {adds}; write allowance=, such as '17 %'"
        ),
        _ => {}
    }
    if given.masses.len() < 2 {
        refuse!(check, given.masses, "one skein has no spread; write the masses of two or more");
    }
    super::sample::check_confidence(given.confidence.value())?;
    if found.count.value() > COARSEST {
        check.warn(format!(
            "{} tex is coarser than the 2000 tex up to which the test is meant (ASTM D1907, scope)",
            figure(found.count.value())
        ));
    }
    // The range of the input says the rest: the test is for less than 5 %, and takes 5 % no more.
    let at_most = |stretch: &Stretch<f64>| (stretch.value() - MOST_STRETCH).abs() < 1e-9;
    if let Some(stretch) = given.stretch.filter(at_most) {
        check.warn(format!(
            "a yarn that stretches {} % from 0.25 to 0.75 cN/tex is outside the test, which is for less \
             than 5 % (ASTM D1907, scope)",
            figure(stretch.value() * 100.0)
        ));
    }
    say_interval(given, found, check);
    let added = given.allowance.zip(option.adds()).map_or(String::new(), |(allowance, adds)| {
        format!(", {adds} {} on the oven-dry mass", check.say(allowance))
    });
    check.note(BLOCK, format!("Option {number} of ASTM D1907: {name}{added}."));
    let counts: Vec<f64> = found.counts.iter().map(|count| count.value()).collect();
    let sample = Sample::new(counts, unit("tex", None)?)?;
    let (mean, sd) = (sample.mean(), sample.sd());
    let apart = farthest(&sample, mean, sd, given.confidence.value());
    if let Some(far) = apart.filter(Farthest::stands_apart) {
        check.note(
            BLOCK,
            format!(
                "Skein {} is an outlier ({}; Grubbs' test): look for a cause.",
                far.place + 1,
                check.say(LinearDensity::<f64>::base(far.value))
            ),
        );
    }
    Ok(())
}

/// The count and its interval in a sentence.
fn say_interval(
    given: &SkeinCountInputs<f64>,
    found: &SkeinCountResults<f64>,
    check: &mut Check<'_>,
) {
    let chance = format!("{} % of the time", figure(given.confidence.value() * 100.0));
    let count = check.say(found.count);
    let coarse = check.say(found.coarser_limit);
    let sentence = match found.finer_limit {
        // What binary arithmetic leaves of nothing is not spread.
        _ if found.cv.value() < 1e-12 => format!("{count}. {EQUAL}"),
        None => format!(
            "{count}, no coarser than {coarse} {chance}; too few skeins that vary too much to say how \
             fine."
        ),
        Some(fine) => {
            format!("{count}, between {} and {coarse} {chance}.", check.say(fine))
        }
    };
    check.note(BLOCK, sentence);
    check.note(
        BLOCK,
        format!(
            "{} skeins of {}, which vary by {} %.",
            given.masses.len(),
            check.say(given.skein_length),
            figure(found.cv.value() * 100.0)
        ),
    );
}
