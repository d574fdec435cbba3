//! Whether a process keeps within a tolerance.

use super::chart::{Asked, Chart, Kind};
use super::{Sample, capability_ratio, capability_to_nearest};
use crate::error::{Error, Result};
use crate::law::normal_below;
use crate::quantity::print::figure;
use crate::quantity::{Reading, ReadingSpread};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// How a process compares with a tolerance.
#[derive(Clone, Debug)]
pub struct Capability {
    /// The chart that says whether the process is steady.
    pub chart: Chart,
    /// The tolerance.
    pub tolerance: [f64; 2],
    /// Mean of all readings.
    pub mean: f64,
    /// Standard deviation of all readings.
    pub sd: f64,
    /// What the machine could do, in the middle of the tolerance and as it stands: with the standard
    /// deviation within subgroups.
    pub within: [f64; 2],
    /// What the process did: with the standard deviation of all readings.
    pub overall: [f64; 2],
    /// Share of readings outside the tolerance.
    pub found_outside: f64,
    /// The same by the normal law with the standard deviation of all readings.
    pub expected_outside: f64,
}

impl Capability {
    /// How the readings, in the order in which they were taken, compare with a tolerance.
    pub fn new(sample: Sample, tolerance: [f64; 2], subgroup: u32) -> Result<Self> {
        let [low, high] = tolerance;
        let in_order = low < high;
        if !(low.is_finite() && high.is_finite()) {
            return Err(Error::range(
                "give both ends of the tolerance, low and high, as finite numbers; with one end \
                 only, these ratios do not exist",
            ));
        }
        if !in_order {
            return Err(Error::range(format!(
                "low ({}) is above high ({}); swap them",
                sample.say(low),
                sample.say(high)
            )));
        }
        let kind = if subgroup == 1 { Kind::Individuals } else { Kind::Mean };
        let chart = Chart::new(sample, Asked::new(kind, subgroup))?;
        let (mean, sd) = (chart.sample.mean(), chart.sample.sd());
        let indices = |sd: f64| {
            let [m, u, l] = [mean, high, low].map(Reading::base);
            let s = ReadingSpread::base(sd);
            [capability_ratio(u, l, s).value(), capability_to_nearest(m, u, l, s).value()]
        };
        let values = chart.sample.values();
        let outside = values.iter().filter(|x| **x < low || **x > high).count();
        Ok(Capability {
            tolerance,
            mean,
            sd,
            within: indices(chart.sigma),
            overall: indices(sd),
            found_outside: outside as f64 / values.len() as f64,
            expected_outside: normal_below((low - mean) / sd) + normal_below((mean - high) / sd),
            chart,
        })
    }

    /// The indices as a table.
    pub fn report(&self) -> Report {
        let say = |x: f64| self.chart.sample.say(x);
        let columns = [
            ("", Left),
            ("standard deviation", Right),
            ("C_p, P_p: in the middle", Right),
            ("C_pk, P_pk: as it stands", Right),
        ];
        let row = |name: &str, sd: f64, of: [f64; 2]| {
            vec![name.to_owned(), say(sd), figure(of[0]), figure(of[1])]
        };
        let percent = |x: f64| format!("{} %", figure(x * 100.0));
        let mut foot = vec![
            "From neighbours or within subgroups: C_p and C_pk, what the machine could do. Of all \
             readings: P_p and P_pk, what the process did. 1 is six standard deviations in the tolerance."
                .to_owned(),
            format!(
                "Outside the tolerance: {} of the readings; by the normal law {} would be.",
                percent(self.found_outside),
                percent(self.expected_outside)
            ),
        ];
        if !self.chart.is_steady() {
            foot.push(
                "The process is not steady (see its chart), so these values say nothing of what comes \
                 next."
                    .to_owned(),
            );
        }
        Report {
            title: String::new(),
            blocks: vec![Block {
                title: format!(
                    "{} readings, mean {}, tolerance {} to {}",
                    self.chart.sample.n(),
                    say(self.mean),
                    say(self.tolerance[0]),
                    say(self.tolerance[1])
                ),
                columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
                rows: vec![
                    row("within", self.chart.sigma, self.within),
                    row("all", self.sd, self.overall),
                ],
                foot,
                ..Block::default()
            }],
        }
    }
}
