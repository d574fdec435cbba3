//! How far readings are from what was wanted.

use super::deviation_from_wanted;
use super::sample::mean;
use crate::error::{Error, Result};
use crate::quantity::print::{figure, fixed, with_unit};
use crate::quantity::{Reading, Unit};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// How far readings, and their mean, are from what was wanted.
#[derive(Clone, Debug)]
pub struct Deviations {
    /// The readings.
    pub readings: Vec<f64>,
    /// Of each reading, as a share of what was wanted.
    pub each: Vec<f64>,
    /// Of all together.
    pub mean: f64,
}

/// How far each reading is from what was wanted, and how far all are together.
pub fn deviations(readings: &[f64], wanted: f64) -> Result<Deviations> {
    if readings.is_empty() || !readings.iter().all(|x| x.is_finite()) {
        return Err(Error::range("write readings such as [119, 91], none of them missing"));
    }
    if !wanted.is_finite() || wanted <= 0.0 {
        return Err(Error::range(format!(
            "{} is given as what was wanted, of which no share can be taken; write a value above 0, such \
             as '100 g'",
            figure(wanted)
        )));
    }
    let off = |x: f64| deviation_from_wanted(Reading::base(x), Reading::base(wanted)).value();
    Ok(Deviations {
        readings: readings.to_vec(),
        each: readings.iter().copied().map(off).collect(),
        mean: off(mean(readings)),
    })
}

/// A line of deviations.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DeviationRow {
    /// Number of the reading, from 1; none for all together.
    pub place: Option<usize>,
    /// What was read.
    pub found: f64,
    /// How far that is from what was wanted, as a share of it.
    pub deviation: f64,
    /// Whether that is within the tolerance, where there is one.
    pub passes: Option<bool>,
}

impl Deviations {
    /// A line for each reading, and one for all together.
    pub fn rows(&self, tolerance: Option<f64>) -> Vec<DeviationRow> {
        // A reading at the very tolerance passes, whatever the rounding of the division.
        let passes = |d: f64| tolerance.map(|t| d.abs() <= t + 1e-12);
        let row = |place, found, deviation| DeviationRow {
            place,
            found,
            deviation,
            passes: passes(deviation),
        };
        let each = self.readings.iter().zip(&self.each).enumerate();
        let each = each.map(|(k, (found, off))| row(Some(k + 1), *found, *off));
        each.chain([row(None, mean(&self.readings), self.mean)]).collect()
    }

    /// The deviations as a table.
    pub fn report(&self, unit: &Unit, tolerance: Option<f64>) -> Report {
        let columns = [("reading", Right), ("found", Right), ("off by", Right), ("", Left)];
        let cells = |row: DeviationRow| {
            let sign = if row.deviation > 0.0 { "+" } else { "" };
            let within = match (row.passes, tolerance) {
                (Some(passes), Some(t)) => {
                    let side = if passes { "within" } else { "outside" };
                    format!("{side} {} %", figure(t * 100.0))
                }
                _ => String::new(),
            };
            vec![
                row.place.map_or("mean".to_owned(), |k| k.to_string()),
                with_unit(row.found, unit.symbol),
                format!("{sign}{} %", fixed(row.deviation * 100.0, 1)),
                within,
            ]
        };
        Report {
            title: String::new(),
            blocks: vec![Block {
                columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
                rows: self.rows(tolerance).into_iter().map(cells).collect(),
                ..Block::default()
            }],
        }
    }
}
