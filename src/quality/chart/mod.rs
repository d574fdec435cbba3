//! Control charts: whether the spread of a process is that of chance alone.

mod alarms;
mod find;
mod tell;

use std::str::FromStr;

pub use alarms::{RUN, points_to_false_alarm};
pub use find::Finding;

use super::sample::{mean, sd};
use super::{ChartConstants, Sample, chart_lower, chart_upper, sd_within, spread_limit};
use crate::error::{Error, Result, did_you_mean};
use crate::quantity::{Ratio, Reading, ReadingSpread};

/// What the points of a chart are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Means of subgroups.
    Mean,
    /// Ranges of subgroups.
    Range,
    /// Standard deviations of subgroups.
    Deviation,
    /// Single readings.
    Individuals,
    /// Differences of neighbours.
    MovingRange,
}

impl Kind {
    /// All of them.
    pub const ALL: [Kind; 5] =
        [Kind::Mean, Kind::Range, Kind::Deviation, Kind::Individuals, Kind::MovingRange];
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Kind::Mean => "mean",
            Kind::Range => "range",
            Kind::Deviation => "deviation",
            Kind::Individuals => "individuals",
            Kind::MovingRange => "moving range",
        }
    }
    /// What its points are, in words.
    pub const fn points(self) -> &'static str {
        match self {
            Kind::Mean => "means",
            Kind::Range => "ranges",
            Kind::Deviation => "standard deviations",
            Kind::Individuals => "single readings",
            Kind::MovingRange => "moving ranges",
        }
    }
    /// True where the points are of a spread, which is never below 0.
    pub const fn is_spread(self) -> bool {
        matches!(self, Kind::Range | Kind::Deviation | Kind::MovingRange)
    }
    /// True where every point is of one reading or of two neighbours.
    pub const fn is_single(self) -> bool {
        matches!(self, Kind::Individuals | Kind::MovingRange)
    }
}

impl FromStr for Kind {
    type Err = Error;
    fn from_str(text: &str) -> Result<Kind> {
        let asked = text.trim().to_lowercase();
        Kind::ALL.iter().copied().find(|k| k.word() == asked).ok_or_else(|| {
            let all: Vec<_> = Kind::ALL.iter().map(|k| format!("'{}'", k.word())).collect();
            let near = did_you_mean(&asked, Kind::ALL.iter().map(|k| k.word()))
                .map_or_else(String::new, |n| format!("; did you mean '{n}'?"));
            Error::notation(format!(
                "unknown kind of chart '{text}'{near}; write {}",
                all.join(", ")
            ))
        })
    }
}

/// What a chart is made from besides its readings. Begin with [`Asked::new`] and change what differs.
#[derive(Clone, Copy, Debug)]
pub struct Asked {
    /// What its points are.
    pub kind: Kind,
    /// Readings in a subgroup; of single readings, 1.
    pub subgroup: u32,
    /// The centre of means or single readings, where it is known; else that of the baseline.
    pub centre: Option<f64>,
    /// The standard deviation within subgroups, where it is known; else that of the baseline.
    pub sigma: Option<f64>,
    /// How many of the first points give the limits; none: all.
    pub baseline: Option<usize>,
}

impl Asked {
    /// Limits from all points.
    pub const fn new(kind: Kind, subgroup: u32) -> Asked {
        Asked { kind, subgroup, centre: None, sigma: None, baseline: None }
    }
}

/// A control chart.
#[derive(Clone, Debug)]
pub struct Chart {
    /// What it was made from.
    pub asked: Asked,
    /// The readings.
    pub sample: Sample,
    /// Its points.
    pub points: Vec<f64>,
    /// The line in the middle.
    pub centre: f64,
    /// The lower and the upper control limit.
    pub limits: [f64; 2],
    /// Standard deviation within subgroups.
    pub sigma: f64,
    /// Places of the points outside the limits, from 0.
    pub out: Vec<usize>,
    /// What the points say.
    pub findings: Vec<Finding>,
    /// Points to the first false alarm, on the average.
    pub false_alarm: f64,
}

impl Chart {
    /// The chart of readings, in the order in which they were taken.
    pub fn new(sample: Sample, asked: Asked) -> Result<Chart> {
        let kind = asked.kind;
        if kind.is_single() && asked.subgroup != 1 {
            return Err(Error::range(format!(
                "a chart of {} has no subgroups; leave subgroup out, or write kind='mean'",
                kind.points()
            )));
        }
        // The spread of single readings is that of neighbours.
        let n = if kind.is_single() { 2 } else { asked.subgroup };
        let constants = ChartConstants::new(n)?;
        let groups: Vec<&[f64]> = if kind.is_single() {
            sample.values().windows(2).collect()
        } else {
            whole_subgroups(&sample, n as usize)?
        };
        // Beyond ten readings the range wastes what those between the ends say.
        let by_range = kind != Kind::Deviation && (kind == Kind::Range || n <= 10);
        let (symbols, unbiased) =
            if by_range { (["D3", "D4"], constants.d2) } else { (["B3", "B4"], constants.c4) };
        let means = match kind {
            Kind::Individuals | Kind::MovingRange => sample.values().to_vec(),
            _ => groups.iter().map(|g| mean(g)).collect(),
        };
        let spreads: Vec<f64> = if by_range {
            groups.iter().map(|g| range(g)).collect()
        } else {
            groups.iter().map(|g| sd(g)).collect()
        };
        let base =
            asked.base(if kind == Kind::MovingRange { spreads.len() } else { means.len() })?;
        // Of single readings, the first b have b − 1 neighbours' ranges among them.
        let spread_base = if kind == Kind::Individuals { base - 1 } else { base };
        let spread = match asked.sigma {
            Some(sigma) if sigma > 0.0 && sigma.is_finite() => sigma * unbiased,
            Some(_) => {
                return Err(Error::range(
                    "sigma is a standard deviation, finite and more than 0; leave it out where it is not \
                     known",
                ));
            }
            None => mean(&spreads[..spread_base]),
        };
        if spread <= 0.0 {
            return Err(Error::range(
                "the readings do not differ within their subgroups, so no limits can be drawn; is the \
                 balance too coarse, or sigma known from elsewhere?",
            ));
        }
        let factor = |symbol: &str| Ratio::base(constants.get(symbol).unwrap_or(f64::NAN));
        let typical = ReadingSpread::base(spread);
        let (points, centre, limits) = if kind.is_spread() {
            let limits = symbols.map(|s| spread_limit(typical, factor(s)).value());
            (spreads, spread, limits)
        } else {
            let centre = asked.centre.unwrap_or_else(|| mean(&means[..base]));
            let width = factor(match kind {
                Kind::Individuals => "E2",
                _ if by_range => "A2",
                _ => "A3",
            });
            let middle = Reading::base(centre);
            let lower = chart_lower(middle, typical, width).value();
            (means, centre, [lower, chart_upper(middle, typical, width).value()])
        };
        let outside = |x: &f64| *x < limits[0] || *x > limits[1];
        let out = (0..points.len()).filter(|k| outside(&points[*k])).collect();
        Ok(Chart {
            findings: find::findings(&points, centre, limits, kind == Kind::MovingRange),
            sigma: sd_within(typical, Ratio::base(unbiased)).value(),
            false_alarm: points_to_false_alarm(kind, &constants),
            asked,
            sample,
            points,
            centre,
            limits,
            out,
        })
    }
}

impl Asked {
    /// How many points give the limits.
    fn base(&self, points: usize) -> Result<usize> {
        if self.kind.is_spread() && self.centre.is_some() {
            return Err(Error::range(
                "the centre of a chart of spreads follows from sigma; write sigma= instead of centre=",
            ));
        }
        if self.centre.is_some_and(|x| !x.is_finite()) {
            return Err(Error::range("the centre must be a finite number; omit it"));
        }
        // A baseline that settles nothing would be taken for one that does.
        if self.baseline.is_some()
            && self.sigma.is_some()
            && (self.centre.is_some() || self.kind.is_spread())
        {
            return Err(Error::range(
                "baseline and the limits themselves are both given; leave out baseline, or sigma and \
                 centre",
            ));
        }
        match self.baseline {
            Some(b) if b < 2 || b > points => Err(Error::range(format!(
                "limits cannot come from the first {b} of {points} points; write a number from 2 to \
                 {points}, or leave baseline out"
            ))),
            Some(b) => Ok(b),
            None => Ok(points),
        }
    }
}

/// The subgroups, none of them short.
fn whole_subgroups(sample: &Sample, n: usize) -> Result<Vec<&[f64]>> {
    let readings = sample.n();
    let over = readings % n;
    if over != 0 && readings > n {
        // The size nearest to the one asked for that leaves none over.
        let fits = (2..=readings / 2)
            .filter(|k| readings.is_multiple_of(*k))
            .min_by_key(|k| k.abs_diff(n));
        let or = fits.map_or_else(String::new, |k| format!(", or write subgroup={k}"));
        let over = match over {
            1 => "1 is over; omit the last".to_owned(),
            _ => format!("{over} are over; omit the last {over}"),
        };
        return Err(Error::range(format!(
            "{readings} readings are not whole subgroups of {n}: {over}{or}"
        )));
    }
    if readings < 2 * n {
        return Err(Error::range(format!(
            "{readings} readings are fewer than two subgroups of {n}; a chart asks for at least two, and \
             for limits to be trusted for twenty"
        )));
    }
    Ok(sample.values().chunks(n).collect())
}

/// The greatest of values less the least.
fn range(values: &[f64]) -> f64 {
    let of = |pick: fn(f64, f64) -> f64| values.iter().copied().fold(values[0], pick);
    of(f64::max) - of(f64::min)
}
