//! What a sample says: mean, spread, how sure both are, how many readings it would take, what is
//! apart.

use super::needed::smallest_sample;
use super::sample::check_confidence;
use super::{
    Sample, coefficient_of_variation, mean_half_width, outlier_limit, outlier_ratio, sd_limit,
    variation_limit,
};
use crate::error::{Error, Result};
use crate::law::{chi_square_quantile, t_two_sided};
use crate::quantity::print::figure;
use crate::quantity::{Count, Fraction, Ratio, Reading, ReadingSpread};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// What equal readings say.
pub(super) const EQUAL: &str = "The readings do not differ: their spread is less than they were read to, so \
                                there are no limits; read more finely.";

/// The reading farthest from the mean.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Farthest {
    /// Its place, from 0.
    pub place: usize,
    /// The reading.
    pub value: f64,
    /// How far it is, in standard deviations.
    pub ratio: f64,
    /// How far it may be before chance hardly explains it.
    pub limit: f64,
}

impl Farthest {
    /// True where chance hardly explains it.
    pub fn stands_apart(&self) -> bool {
        self.ratio > self.limit
    }
}

/// What a sample says.
#[derive(Clone, Debug)]
pub struct Summary {
    /// The readings.
    pub sample: Sample,
    /// The chance of the intervals.
    pub confidence: f64,
    /// The mean.
    pub mean: f64,
    /// The standard deviation.
    pub sd: f64,
    /// Coefficient of variation; none where the mean is not above 0.
    pub variation: Option<f64>,
    /// Student's t that the interval of the mean rests on.
    pub t: f64,
    /// Interval of the mean.
    pub mean_limits: [f64; 2],
    /// Interval of the standard deviation.
    pub sd_limits: [f64; 2],
    /// Interval of the coefficient of variation; none where it is too wide for its formula.
    pub variation_limits: Option<[f64; 2]>,
    /// The error wanted, as a share of the mean, and the readings that it takes.
    pub needed: Option<(f64, u32)>,
    /// The reading farthest out, of at least three that differ.
    pub farthest: Option<Farthest>,
}

impl Summary {
    /// The summary of a sample; `precision` is the error of the mean that is allowed, as a share of it.
    pub fn new(sample: Sample, confidence: f64, precision: Option<f64>) -> Result<Self> {
        check_confidence(confidence)?;
        let (n, mean, sd) = (sample.n() as f64, sample.mean(), sample.sd());
        let (count, spread) = (Count::base(n), ReadingSpread::base(sd));
        let t = t_two_sided(confidence, n - 1.0);
        let half = mean_half_width(Ratio::base(t), spread, count).value();
        let tail = (1.0 - confidence) / 2.0;
        let squares = [1.0 - tail, tail].map(|p| Ratio::base(chi_square_quantile(p, n - 1.0)));
        let sd_limits = squares.map(|x| sd_limit(spread, count, x).value());
        let variation = (mean > 0.0)
            .then(|| coefficient_of_variation(spread, Reading::base(mean)).value())
            .filter(|v| v.is_finite());
        let variation_limits = variation
            .map(|v| squares.map(|x| variation_limit(Fraction::base(v), count, x).value()))
            .filter(|limits| limits.iter().all(|x| x.is_finite()));
        let needed = match (precision, variation) {
            // Equal readings say nothing of how many it takes.
            (Some(_), Some(0.0)) => None,
            (Some(error), Some(v)) => Some((error, smallest_sample(v, error, confidence)?)),
            (Some(_), None) => {
                return Err(Error::range(
                    "an error as a share of the mean needs a mean above 0; omit precision",
                ));
            }
            _ => None,
        };
        let farthest = farthest(&sample, mean, sd, confidence);
        Ok(Summary {
            confidence,
            mean,
            sd,
            variation,
            t,
            mean_limits: [mean - half, mean + half],
            sd_limits,
            variation_limits,
            needed,
            farthest,
            sample,
        })
    }

    /// The summary as a table.
    pub fn report(&self) -> Report {
        let say = |x: f64| self.sample.say(x);
        let percent = |x: f64| format!("{} %", figure(x * 100.0));
        let chance = percent(self.confidence);
        let row = |name: &str, value: String, limits: Option<[String; 2]>| {
            let [low, high] = limits.unwrap_or_default();
            vec![name.to_owned(), value, low, high]
        };
        // Limits of equal readings would be as sure as no reading is.
        let spread = self.sd > 0.0;
        let mut rows = vec![
            row("mean", say(self.mean), spread.then(|| self.mean_limits.map(say))),
            row("standard deviation", say(self.sd), spread.then(|| self.sd_limits.map(say))),
        ];
        if let Some(v) = self.variation {
            let limits = self.variation_limits.filter(|_| spread).map(|l| l.map(percent));
            rows.push(row("coefficient of variation", percent(v), limits));
        }
        let columns = [("", Left), ("value", Right), ("from", Right), ("to", Right)];
        let mut foot = vec![if spread {
            format!(
                "The true value is between the limits {chance} of the time: the mean by Student's t = {} \
                 with {} degrees of freedom, the spread by chi-square.",
                figure(self.t),
                self.sample.n() - 1
            )
        } else {
            EQUAL.to_owned()
        }];
        if let Some((error, n)) = self.needed {
            foot.push(format!(
                "{n} readings would give the mean within {} of it, {chance} of the time, if they vary \
                 as these do.",
                percent(error)
            ));
        }
        foot.extend(self.farthest.map(|f| self.say_farthest(&f)));
        Report {
            title: String::new(),
            blocks: vec![Block {
                title: format!("{} readings", self.sample.n()),
                columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
                rows,
                foot,
                ..Block::default()
            }],
        }
    }

    fn say_farthest(&self, f: &Farthest) -> String {
        let place = format!(
            "Reading {}, {}, is {} standard deviations from the mean",
            f.place + 1,
            self.sample.say(f.value),
            figure(f.ratio)
        );
        let limit = figure(f.limit);
        if f.stands_apart() {
            format!(
                "{place}, beyond {limit}, the limit of Grubbs' two-sided test for one \
                 reading: look for a cause. It is still in the numbers above."
            )
        } else {
            format!("{place}, within {limit}, the limit of Grubbs' two-sided test: no outlier.")
        }
    }
}

/// The reading farthest out, with how far it may be.
pub(super) fn farthest(sample: &Sample, mean: f64, sd: f64, confidence: f64) -> Option<Farthest> {
    let n = sample.n() as f64;
    if n < 3.0 || sd <= 0.0 {
        return None;
    }
    let off = |x: f64| (x - mean).abs();
    let (place, value) =
        sample.values().iter().copied().enumerate().max_by(|a, b| off(a.1).total_cmp(&off(b.1)))?;
    let [reading, middle] = [value, mean].map(Reading::base);
    let spread = ReadingSpread::base(sd);
    // The chance is shared out over all readings, any of which might be the farthest.
    let t = t_two_sided(1.0 - (1.0 - confidence) / n, n - 2.0);
    Some(Farthest {
        place,
        value,
        ratio: outlier_ratio(reading, middle, spread).value(),
        limit: outlier_limit(Count::base(n), Ratio::base(t)).value(),
    })
}

/// Student's t for the mean of `readings` that gave the standard deviation themselves.
pub fn student_t(confidence: f64, readings: u32) -> Result<f64> {
    check_confidence(confidence)?;
    Ok(t_two_sided(confidence, freedom(readings)?))
}

/// The chi-square below which a share lies, for the standard deviation of `readings`.
pub fn chi_square(share: f64, readings: u32) -> Result<f64> {
    check_confidence(share)?;
    Ok(chi_square_quantile(share, freedom(readings)?))
}

fn freedom(readings: u32) -> Result<f64> {
    match readings {
        0 | 1 => Err(Error::range("a single reading has no spread; give at least 2")),
        n => Ok(f64::from(n - 1)),
    }
}
