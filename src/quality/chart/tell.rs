//! A chart in words and rows.

use super::{Chart, Finding, Kind, RUN};
use crate::quantity::print::figure;
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// Findings that the table says in words; of a long series there may be thousands.
const TOLD: usize = 20;

/// Points from which limits are trusted.
const ENOUGH: usize = 20;

impl Chart {
    /// True where no point is outside and no run says that the level has moved.
    pub fn is_steady(&self) -> bool {
        self.findings.is_empty()
    }

    /// Its title: what its points are.
    pub fn title(&self) -> String {
        let n = self.asked.subgroup;
        match self.asked.kind {
            Kind::Individuals | Kind::MovingRange => {
                format!("Chart of {} {}", self.points.len(), self.asked.kind.points())
            }
            kind => {
                format!("Chart of {} {} of {n} readings each", self.points.len(), kind.points())
            }
        }
    }

    /// What a finding says.
    pub fn say(&self, finding: &Finding) -> String {
        let shared = self.asked.kind == Kind::MovingRange;
        match *finding {
            Finding::Outlier { at } if shared && self.out.contains(&(at + 1)) => format!(
                "Outlier: moving ranges {} and {} are outside, and reading {}, {}, is in both; look for a \
                 cause at that one: a slip in weighing or reeling, a knot, a mixed-up bobbin.",
                at + 1,
                at + 2,
                at + 2,
                self.sample.say(self.sample.values()[at + 1])
            ),
            Finding::Outlier { at } if shared => format!(
                "Outlier: moving range {}, {}, is outside and its neighbours are not: between readings \
                 {} and {} something has changed; the chart of single readings says whether one of them \
                 is off or the level has moved.",
                at + 1,
                self.sample.say(self.points[at]),
                at + 1,
                at + 2
            ),
            Finding::Outlier { at } => format!(
                "Outlier: point {}, {}, is outside and its neighbours are not; look for a cause at that \
                 one: a slip in weighing or reeling, a knot, a mixed-up bobbin.",
                at + 1,
                self.sample.say(self.points[at])
            ),
            Finding::Drift { from, to, above } => {
                let of = &self.points[from..=to];
                let side = if above { "above" } else { "below" };
                // Nothing went before the first point: what begins there changed at its end.
                let when = match (from, to + 1 == self.points.len()) {
                    (0, true) => "before or since the centre was set".to_owned(),
                    (0, false) => format!("after point {}", to + 1),
                    _ => format!("at about point {}", from + 1),
                };
                format!(
                    "Drift: points {} to {} all lie {side} the centre, at {} on the average; the level \
                     has moved, so look for what changed {when}: feed, wheel, regain, wear.",
                    from + 1,
                    to + 1,
                    self.sample.say(of.iter().sum::<f64>() / of.len() as f64)
                )
            }
        }
    }

    /// The chart as a table: centre, limits and what the points say.
    pub fn report(&self) -> Report {
        let say = |x: f64| self.sample.say(x);
        let columns = [("", Left), ("value", Right)];
        let row = |name: &str, x: f64| vec![name.to_owned(), say(x)];
        let rows = vec![
            row("upper limit", self.limits[1]),
            row("centre", self.centre),
            row("lower limit", self.limits[0]),
            row("standard deviation within subgroups", self.sigma),
        ];
        let mut foot: Vec<String> = self.findings.iter().take(TOLD).map(|f| self.say(f)).collect();
        if self.findings.len() > TOLD {
            foot.push(format!("And {} more of these.", self.findings.len() - TOLD));
        }
        if foot.is_empty() {
            foot.push("Steady: no point outside, no run of points on one side.".to_owned());
        }
        foot.push(self.about_alarms());
        let base = self.asked.baseline.unwrap_or(self.points.len());
        if self.asked.sigma.is_none() && base < ENOUGH {
            foot.push(format!(
                "The limits come from {base} points only; from {ENOUGH} or more they are reliable \
                 (custom of the trade)."
            ));
        }
        Report {
            title: String::new(),
            blocks: vec![Block {
                title: self.title(),
                columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
                rows,
                foot,
                ..Block::default()
            }],
        }
    }

    /// How often the rules cry wolf.
    fn about_alarms(&self) -> String {
        let points = figure(self.false_alarm.round());
        let how_often = match self.asked.kind {
            // The value is for points apart.
            Kind::MovingRange => format!(
                "more often than once in {points} points, for neighbouring moving ranges share a \
                 reading, if readings are normal and independent."
            ),
            _ => format!("once in about {points} points, if readings are normal and independent."),
        };
        format!(
            "Rules: a point outside the limits, or {RUN} in a row on one side. Where nothing has changed \
             they give a false alarm {how_often}"
        )
    }
}
