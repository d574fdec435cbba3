//! The check-weight card: what lengths should weigh on the balance at hand, and the bands.

use super::check::{
    band_half_width, chance_for_each, check_weight_in_todays_air, variation_of_mean,
};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::{
    Count, Fraction, Kind, Length, LinearDensity, Mass, OnFibre, Ratio, Regain, Unit, print, unit,
};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::{law, normal};

/// Ends, or readings, at most.
const MOST: f64 = 10_000.0;

/// The regain at which a count is stated, and that of the yarn.
#[derive(Clone, Debug, Inputs)]
pub struct RegainOfCount<N> {
    /// regain at which the count is stated
    #[q("R_s", 0.0..=0.4, zero)]
    pub stated_regain: Regain<N>,
    /// regain of the yarn as it is weighed
    #[q("R", 0.0..=0.4, zero)]
    pub regain: Regain<N>,
}

/// The oil with which a count is stated, and that on the yarn.
#[derive(Clone, Debug, Inputs)]
pub struct OilOfCount<N> {
    /// oil with which the count is stated, on clean dry fibre
    #[q("o_s", 0.0..=0.2, zero)]
    pub stated_oil: OnFibre<N>,
    /// oil on the yarn as it is weighed, on clean dry fibre
    #[q("o", 0.0..=0.2, zero)]
    pub oil: OnFibre<N>,
}

/// What [`check_weight_card()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct CheckWeightCardInputs<N> {
    /// count of the yarn, slubbing or sliver, as stated
    #[q("T", 1.0..=100_000.0, like = "200 tex")]
    pub count: LinearDensity<N>,
    /// length of each end weighed
    #[q("L_c", 0.5..=500.0, like = "20 m")]
    pub check_lengths: Vec<Length<N>>,
    /// ends weighed together
    #[q("N", 1.0..=200.0, or = 1.0)]
    pub ends: Count<N>,
    /// readings
    #[q("n", 1.0..=200.0, or = 1.0)]
    pub readings: Count<N>,
    /// different ends from which all the pieces come
    #[q("e", 1.0..=1000.0)]
    pub different_ends: Option<Count<N>>,
    /// coefficient of variation from piece to piece, of the length that is weighed
    #[q("CV", 0.001..=0.3, zero)]
    pub cv: Option<Fraction<N>>,
    /// coefficient of variation from end to end, where it is not in the other
    #[q("CV_b", 0.0..=0.3, zero)]
    pub cv_between: Option<Fraction<N>>,
    /// earlier readings from which the variation comes
    #[q("n_v", 2.0..=10_000.0)]
    pub cv_readings: Option<Count<N>>,
    /// The regains.
    #[group]
    pub regains: Option<RegainOfCount<N>>,
    /// The oil.
    #[group]
    pub oils: Option<OilOfCount<N>>,
    /// chance with which a yarn that is right is within the limits
    #[q("C", 0.5..=0.9999, or = 0.95)]
    pub confidence: Fraction<N>,
    /// units of the balance, separated by commas
    pub balance: Option<String>,
}

/// What [`check_weight_card()`] answers.
#[derive(Clone, Debug, Results)]
pub struct CheckWeightCardResults<N> {
    /// Check weights
    #[rows]
    pub check_weights: Vec<CheckWeight<N>>,
}

/// What ends of a length should weigh.
#[derive(Clone, Debug, Results)]
pub struct CheckWeight<N> {
    /// length of each end
    #[head = "length"]
    pub check_length: Length<N>,
    /// check weight
    #[head = "should weigh"]
    pub check_weight: Mass<N>,
    /// The bands, where the variation is known.
    #[part]
    pub bands: Option<CheckBands<N>>,
}

/// The bands in which readings of a yarn that is right fall.
#[derive(Clone, Debug, Results)]
pub struct CheckBands<N> {
    /// lower limit of the mean of the readings
    #[head = "mean from"]
    pub mean_low: Mass<N>,
    /// upper limit of the mean of the readings
    #[head = "to"]
    pub mean_high: Mass<N>,
    /// lower limit of all single readings
    #[head = "each from"]
    pub low: Mass<N>,
    /// upper limit of all single readings
    #[head = "to"]
    pub high: Mass<N>,
}

/// What lengths of a yarn, a slubbing or a sliver should weigh on the balance at hand, and the bands in
/// which the mean of the readings, and all single readings, must fall.
///
/// `ends` are weighed together, `readings` times. `cv` is the variation from piece to piece of the length
/// that is weighed; where that along an end and that from end to end are separate, the latter is
/// `cv_between`, and `different_ends` says from how many ends all the pieces come (else each reading is
/// from fresh ones). Where the variation comes from few earlier readings, `cv_readings` says from how many:
/// the bands are then wider, by Student's t. Where the count is stated at another regain than that of the
/// yarn, or with another oil, give both. `balance` has the units in which the table shows the masses.
#[calculation(
    title = "Check weights",
    example = ">>> import hankwise as hw
>>> hw.yarn.check_weight_card(count=\"200 tex\", check_lengths=[\"20 m\"], readings=4, cv=\"3 %\",
...                           stated_regain=\"17 %\", regain=\"12 %\", balance=\"g\")
Check weights of 200 tex
  One end of each length.
  The count is stated at 17 % regain; weighed at 12 % regain.
  length  should weigh  mean from       to  each from       to
  20 m         3.829 g    3.716 g  3.942 g    3.543 g  4.115 g
  Of a yarn that is right, the mean of 4 readings is within its limits 95 % of the time, and all 4
    single readings together within theirs 95 % of the time.
  Variation 3 % from piece to piece.",
    check = check,
    report = report
)]
pub fn check_weight_card<N: Number>(given: &CheckWeightCardInputs<N>) -> CheckWeightCardResults<N> {
    let (stated_regain, regain) = regains(given);
    let (stated_oil, oil) = oils(given);
    let bands = has_bands(given).then(|| bands(given));
    let row = |length: &Length<N>| {
        let check_weight = check_weight_in_todays_air(
            given.count,
            *length,
            given.ends,
            stated_regain,
            regain,
            stated_oil,
            oil,
        );
        let bands = bands.as_ref().map(|bands| {
            let half = |band: &Band<N>| band_half_width(check_weight, band.variation, band.z).v();
            let (mean, single, middle) = (half(&bands.mean), half(&bands.single), check_weight.v());
            // Nothing weighs less than nothing.
            CheckBands {
                mean_low: Mass::from((middle - mean).max(0.0)),
                mean_high: Mass::from(middle + mean),
                low: Mass::from((middle - single).max(0.0)),
                high: Mass::from(middle + single),
            }
        });
        CheckWeight { check_length: *length, check_weight, bands }
    };
    CheckWeightCardResults { check_weights: given.check_lengths.iter().map(row).collect() }
}

fn none<N: Number>() -> N {
    N::constant(0.0)
}

fn regains<N: Number>(given: &CheckWeightCardInputs<N>) -> (Regain<N>, Regain<N>) {
    let known = given.regains.as_ref().map(|regains| (regains.stated_regain, regains.regain));
    known.unwrap_or((Regain::base(none()), Regain::base(none())))
}

fn oils<N: Number>(given: &CheckWeightCardInputs<N>) -> (OnFibre<N>, OnFibre<N>) {
    let known = given.oils.as_ref().map(|oils| (oils.stated_oil, oils.oil));
    known.unwrap_or((OnFibre::base(none()), OnFibre::base(none())))
}

/// Whether the variation is known.
fn has_bands<N>(given: &CheckWeightCardInputs<N>) -> bool {
    given.cv.is_some() || given.cv_between.is_some()
}

/// A band: what varies, and how many standard deviations to each side are in it.
struct Band<N> {
    variation: Fraction<N>,
    z: Ratio<N>,
}

/// The bands of the mean and of single readings.
struct Bands<N> {
    mean: Band<N>,
    single: Band<N>,
}

fn bands<N: Number>(given: &CheckWeightCardInputs<N>) -> Bands<N> {
    let CheckWeightCardInputs { ends, readings, confidence, .. } = *given;
    let known = |cv: Option<Fraction<N>>| cv.unwrap_or(Fraction::base(none()));
    let (between, along) = (known(given.cv_between), known(given.cv));
    let pieces = Count::from(ends.v() * readings.v());
    let different = given.different_ends.unwrap_or(pieces);
    // What few readings say of the variation is uncertain itself: Student's t for z.
    let z = |chance: Fraction<N>| {
        Ratio::from(match given.cv_readings {
            Some(readings) => {
                let t = law::t_two_sided(chance.value(), readings.value() - 1.0);
                V::looked_up(t, [chance.v(), readings.v()])
            }
            None => V::looked_up(normal::two_sided(chance.value()), [chance.v()]),
        })
    };
    Bands {
        mean: Band {
            variation: variation_of_mean(between, along, different, pieces),
            z: z(confidence),
        },
        // A reading of several ends side by side averages over them.
        single: Band {
            variation: variation_of_mean(between, along, ends, ends),
            z: z(chance_for_each(confidence, readings)),
        },
    }
}

fn check(
    given: &CheckWeightCardInputs<f64>,
    _found: &CheckWeightCardResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    if !has_bands(given) {
        let of_bands = ["readings", "different_ends", "cv_readings", "confidence"];
        check.idle(&of_bands, "cv or cv_between");
    }
    let (together, readings) = (given.ends.value(), given.readings.value());
    if together > MOST || readings > MOST {
        refuse!(
            check,
            given.readings,
            "too many to weigh; write at most {MOST} ends and {MOST} readings"
        );
    }
    let pieces = together * readings;
    if let Some(ends) = given.different_ends.map(Count::value) {
        if ends < together || ends > pieces {
            refuse!(
                check,
                given.different_ends,
                "{pieces} pieces of yarn, {together} side by side, cannot come from {ends} different ends; \
                 write at least {together} and at most {pieces}"
            );
        }
        if pieces % ends != 0.0 {
            refuse!(
                check,
                given.different_ends,
                "{pieces} pieces cannot come evenly from {ends} different ends; take as many from each"
            );
        }
    }
    if given.cv_readings.is_some_and(|readings| readings.value() < 2.0) {
        refuse!(check, given.cv_readings, "a variation comes from at least 2 readings");
    }
    if given.confidence.value() >= 1.0 {
        refuse!(
            check,
            given.confidence,
            "no limits hold with a chance of 100 %; write one between 0 and 100 %, such as 95 %"
        );
    }
    balance(given.balance.as_deref()).map(|_| ()).map_err(|e| e.at("balance"))
}

/// The units of the balance; grams where none is given.
fn balance(units: Option<&str>) -> Result<Vec<&'static Unit>> {
    let units = units.unwrap_or("g").split(',');
    units.map(|name| unit(name.trim(), Some(Kind::Mass))).collect()
}

/// The card as a table: a line for each length and each unit of the balance.
fn report(
    given: &CheckWeightCardInputs<f64>,
    found: &CheckWeightCardResults<f64>,
    check: &Check<'_>,
) -> Report {
    let several = given.readings.value() > 1.0;
    let mut heads = vec!["length", "should weigh"];
    if has_bands(given) {
        if several {
            heads.extend(["mean from", "to"]);
        }
        heads.extend([if several { "each from" } else { "from" }, "to"]);
    }
    let align =
        |(place, head): (usize, &&str)| ((*head).to_owned(), if place == 0 { Left } else { Right });
    let mut rows = Vec::new();
    for row in &found.check_weights {
        // The units were checked before.
        for unit in balance(given.balance.as_deref()).unwrap_or_default() {
            let mut masses = vec![row.check_weight];
            if let Some(CheckBands { mean_low, mean_high, low, high }) = row.bands {
                if several {
                    masses.extend([mean_low, mean_high]);
                }
                masses.extend([low, high]);
            }
            let said =
                |mass: Mass<f64>| print::with_unit(unit.from_base(mass.value()), unit.symbol);
            let length = check.say(row.check_length);
            rows.push(std::iter::once(length).chain(masses.into_iter().map(said)).collect());
        }
    }
    Report {
        title: String::new(),
        blocks: vec![Block {
            title: format!("Check weights of {}", check.say(given.count)),
            lead: lead(given),
            columns: heads.iter().enumerate().map(align).collect(),
            rows,
            foot: foot(given),
            ..Block::default()
        }],
    }
}

fn percent(share: f64) -> String {
    print::of_kind(share, Kind::Fraction)
}

/// How many ends are weighed, and in which state.
fn lead(given: &CheckWeightCardInputs<f64>) -> Vec<String> {
    let mut lead = vec![match given.ends.value() {
        1.0 => "One end of each length.".to_owned(),
        n => format!("{n} ends of each length together."),
    }];
    let ((stated_regain, regain), (stated_oil, oil)) = (regains(given), oils(given));
    let state = |regain: Regain<f64>, oil: OnFibre<f64>| {
        let oil = match &given.oils {
            Some(_) => format!(" and {} oil", percent(oil.value())),
            None => String::new(),
        };
        format!("{} regain{oil}", percent(regain.value()))
    };
    if stated_regain != regain || stated_oil != oil {
        let (stated, weighed) = (state(stated_regain, stated_oil), state(regain, oil));
        lead.push(format!("The count is stated at {stated}; weighed at {weighed}."));
    }
    lead
}

/// What the bands mean.
fn foot(given: &CheckWeightCardInputs<f64>) -> Vec<String> {
    if !has_bands(given) {
        return vec!["No bands: how much the yarn varies was not given.".to_owned()];
    }
    let chance = percent(given.confidence.value());
    let readings = match given.readings.value() {
        1.0 => format!("A yarn that is right reads within the limits {chance} of the time."),
        n => format!(
            "Of a yarn that is right, the mean of {n} readings is within its limits {chance} of the time, \
             and all {n} single readings together within theirs {chance} of the time."
        ),
    };
    let along = given.cv.map_or(0.0, Fraction::value);
    let variation = match given.cv_between {
        Some(between) if between.value() > 0.0 => {
            let pieces = given.ends.value() * given.readings.value();
            format!(
                "Variation {} from end to end, {} along an end; {} different ends.",
                percent(between.value()),
                percent(along),
                given.different_ends.map_or(pieces, Count::value)
            )
        }
        _ => format!("Variation {} from piece to piece.", percent(along)),
    };
    let few = given.cv_readings.map(|n| {
        format!(
            "The variation comes from {} readings, so the bands are those of Student's t with {} degrees of \
             freedom; those of all single readings together are on the safe side.",
            n.value(),
            n.value() - 1.0
        )
    });
    [readings, variation].into_iter().chain(few).collect()
}
