//! Wraps: how many turns of a yarn lie side by side round a rule. An estimate, never a conversion.

use crate::calculation::{Check, Inputs, Results, calculation};
use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::counts::YARD_PER_POUND;
use crate::quantity::print::{fixed, significant};
use crate::quantity::{LinearDensity, Ratio, Sett};
use crate::source::cited;
use crate::table::{Align, Block, Report};

/// Threads of a count side by side in a centimetre: the factor times the root of the yards in a pound,
/// in an inch. The law of diameters and of wraps; what differs is the factor.
#[inline(always)]
pub(crate) fn side_by_side<N: Number>(factor: V<N>, count: V<N>) -> V<N> {
    let yards_per_pound = (YARD_PER_POUND / count).named(["Y", "yd/lb", "yards in a pound"]);
    factor * yards_per_pound.sqrt() / 2.54
}

/// Estimate of the wraps of a yarn from its count.
///
/// In the trade's units: the factor times the root of the yards in a pound, in an inch.
#[formula(
    result = "w",
    sources = ["Ashenhurst page 1999", "Grist experiment", "Shetland experiment"],
    limits = ["an estimate, no conversion: printed factors run from 0.84 to 1.06, which is 60 % in the count, and soft yarn wound loosely has been found at 0.43", "wraps go by the hand, the tension and the twist: wrap the yarn itself where it matters"],
    slips = ["taking the answer for a measurement", "halving wraps for a sett and halving diameters for one: wraps are not diameters"]
)]
#[inverse(
    "Estimate of the count of a yarn from its wraps.",
    count_from_wraps(wraps_factor, wraps: 1.0..=50.0) -> count = {
        let yards_per_pound = (2.54 * wraps / wraps_factor).squared().named(["Y", "yd/lb", "yards in a pound"]);
        YARD_PER_POUND / yards_per_pound
    },
    limits = ["an estimate, no conversion: it goes as the square of the factor, so printed factors from 0.84 to 1.06 give counts 60 % apart", "weigh a measured length instead: a metre and a small balance are better than any factor"],
    slips = ["taking the answer for a count", "forgetting the square: a tenth more wraps is a fifth more yards in a pound"]
)]
pub fn wraps_estimate<N: Number>(
    /// factor of the yarn and the hand
    #[q("k", 0.4..=1.1)]
    wraps_factor: Ratio<N>,
    /// yarn count
    #[q("T", 5.0..=5000.0)]
    count: LinearDensity<N>,
) -> Sett<N> {
    side_by_side(wraps_factor, count)
}

/// A published relation of wraps to count.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WrapsFactor {
    /// Wraps in an inch …
    pub wraps: f64,
    /// … of a yarn with so many yards in a pound.
    pub yards_per_pound: f64,
    /// What it is taken from.
    pub says: &'static str,
    /// Key of the source, see [`crate::source`].
    pub source: &'static str,
}

impl WrapsFactor {
    /// Wraps in an inch over the root of the yards in a pound.
    pub fn factor(&self) -> f64 {
        self.wraps / self.yards_per_pound.sqrt()
    }
}

const fn says(
    wraps: f64,
    yards_per_pound: f64,
    says: &'static str,
    source: &'static str,
) -> WrapsFactor {
    WrapsFactor { wraps, yards_per_pound, says, source }
}

/// What the band of [`wraps`] rests on, from the fewest wraps to the most.
pub static WRAPS_FACTORS: [WrapsFactor; 5] = [
    says(
        25.0 / 0.75,
        6135.0,
        "a Shetland single of 6135 yd/lb wound on a rule: 25 ends in an inch were three quarters of its wraps",
        "Shetland experiment",
    ),
    says(0.84, 1.0, "woollen, diameters side by side", "Ashenhurst page 1999"),
    says(0.90, 1.0, "worsted and cotton, diameters side by side", "Ashenhurst page 1999"),
    says(0.95, 1.0, "cotton, diameters side by side", "Taylor 1909"),
    says(
        1.0,
        0.884,
        "the handspinners' rule: wraps squared times 0.884 are the yards in a pound",
        "Grist experiment",
    ),
];

/// What [`wraps()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct WrapsInputs<N> {
    /// yarn count
    #[q("T", 5.0..=5000.0, like = "16 YSW")]
    pub count: LinearDensity<N>,
}

/// What [`wraps()`] answers.
#[derive(Clone, Debug, Results)]
pub struct WrapsResults<N> {
    /// wraps by the factor that gives the fewest
    #[block = "Wraps, an estimate"]
    pub low: Sett<N>,
    /// wraps where threads touch, by the factor of worsted and cotton
    pub touching: Sett<N>,
    /// wraps by the factor that gives the most
    pub high: Sett<N>,
}

/// The wraps that a yarn of a count may have: an estimate with its band, never a conversion.
///
/// The band is that of the published factors, which the result shows. It is wide because wraps go by the
/// hand and the tension as much as by the yarn: wrap the yarn itself where it matters.
#[calculation(
    title = "Wraps of a yarn",
    example = ">>> import hankwise as hw
>>> wraps = hw.yarn.wraps(count=\"16 YSW\")
>>> [round(wraps[name].number(\"wraps/in\")) for name in wraps]
[27, 58, 68]",
    report = report
)]
pub fn wraps<N: Number>(given: &WrapsInputs<N>) -> WrapsResults<N> {
    let by = |place: usize| {
        let factor = Ratio::from(V::constant(WRAPS_FACTORS[place].factor()));
        wraps_estimate(factor, given.count)
    };
    WrapsResults { low: by(0), touching: by(2), high: by(4) }
}

/// The wraps by each published factor.
fn report(given: &WrapsInputs<f64>, _found: &WrapsResults<f64>, check: &Check<'_>) -> Report {
    let row = |says: &WrapsFactor| {
        let wraps = wraps_estimate(Ratio::base(says.factor()), given.count);
        let in_an_inch = wraps.number("wraps/in").map_or(String::new(), |x| significant(x, 2));
        vec![in_an_inch, fixed(says.factor(), 2), says.says.to_owned(), cited(says.source)]
    };
    let columns = [
        ("wraps in an inch", Align::Right),
        ("factor", Align::Right),
        ("by", Align::Left),
        ("source", Align::Left),
    ];
    Report {
        title: WRAPS.title.to_owned(),
        blocks: vec![Block {
            title: format!("Estimate for {}", check.say(given.count)),
            columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
            rows: WRAPS_FACTORS.iter().map(row).collect(),
            foot: vec![
                "Wraps go by the hand and the tension as much as by the yarn: wrap the yarn itself where \
                 it matters."
                    .to_owned(),
            ],
            ..Block::default()
        }],
    }
}
