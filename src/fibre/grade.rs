//! The grade of raw wool by its fineness.

use super::tables::WOOL_GRADES_US;
use crate::error::{Error, Result};
use crate::handbook::Figure;
use crate::quantity::print::fixed;
use crate::quantity::{Fineness, Kind};
use crate::source::Basis;
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// A grade of raw wool of the United States, by mean diameter and spread.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WoolGrade {
    /// Its name: `64s`, or `finest` for finer than 80s.
    pub name: &'static str,
    /// Its name by blood: `fine`, `½ blood`.
    pub blood: &'static str,
    /// The grade that the mean diameter alone would give.
    pub by_diameter: &'static str,
    /// The mean diameter in micrometres, to the two places of the table.
    pub diameter: f64,
    /// The standard deviation in micrometres, where it was given.
    pub deviation: Option<f64>,
    /// The largest standard deviation that the grade by diameter allows, in micrometres.
    pub largest_deviation: f64,
    /// True where the limits used are from memory.
    pub from_memory: bool,
}

/// The finest that wool usually is, in micrometres.
const FINEST: f64 = 12.0;

/// What the table says of a grade: diameters and largest deviation.
fn grades()
-> impl DoubleEndedIterator<Item = (&'static Figure, &'static Figure)> + ExactSizeIterator {
    WOOL_GRADES_US.figures.chunks_exact(2).map(|pair| (&pair[0], &pair[1]))
}

/// Diameters are graded to two places.
fn to_two_places(x: f64) -> f64 {
    (x * 100.0).round() / 100.0
}

/// The grade of raw wool in the United States; a lot that spreads more than its grade allows drops one.
///
/// ```
/// use hankwise::fibre::us_grade;
/// use hankwise::prelude::Fineness;
///
/// let grade = us_grade(Fineness::parse("18.5 µm")?, None)?;
/// assert_eq!((grade.name, grade.blood), ("80s", "fine"));
/// let uneven = us_grade(Fineness::parse("18.5 µm")?, Some(Fineness::parse("4.2 µm")?))?;
/// assert_eq!((uneven.name, uneven.by_diameter), ("70s", "80s"));
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn us_grade(diameter: Fineness<f64>, deviation: Option<Fineness<f64>>) -> Result<WoolGrade> {
    Kind::Fineness.check(diameter.value()).map_err(|e| e.at("diameter"))?;
    let mean = to_two_places(diameter.value());
    let deviation = deviation.map(|d| to_two_places(d.value()));
    let mut coarser = grades().enumerate().rev();
    let coarsest = &WOOL_GRADES_US.figures[WOOL_GRADES_US.figures.len() - 2];
    let none = |why: String| {
        Err(Error::range(format!(
            "{why}; the table ends with {} at {} µm",
            coarsest.of[0],
            fixed(coarsest.high, 2)
        )))
    };
    if mean > coarsest.high {
        return none(format!("a mean diameter of {} µm is coarser than any grade", fixed(mean, 2)));
    }
    // The lower limit belongs to the grade; the finest has none.
    let Some((at, (range, spread))) = coarser.find(|(_, (range, _))| mean >= range.low) else {
        return none(format!("{mean} µm has no grade"));
    };
    let dropped = deviation.is_some_and(|d| d > spread.high);
    let Some((grade, _)) = grades().nth(at + usize::from(dropped)) else {
        return none(format!(
            "{} with a standard deviation over {} µm drops below every grade",
            range.of[0],
            fixed(spread.high, 2)
        ));
    };
    Ok(WoolGrade {
        name: grade.of[0],
        blood: grade.of[2],
        by_diameter: range.of[0],
        diameter: mean,
        deviation,
        largest_deviation: spread.high,
        from_memory: [range, grade].iter().any(|f| f.basis() == Basis::Memory),
    })
}

impl WoolGrade {
    /// The quality number, 64 of 64s; none for what is finer than 80s.
    pub fn number(&self) -> Option<u32> {
        self.name.trim_end_matches('s').parse().ok()
    }
    /// What is unusual in it: no wool is so fine as a slip of the point makes it.
    pub fn unusual(&self) -> Option<String> {
        (self.diameter < FINEST).then(|| {
            format!(
                "diameter = {} µm is unusual; the usual range is {FINEST} µm to 50 µm (custom of the trade)",
                fixed(self.diameter, 2)
            )
        })
    }
    /// True where the spread cost it a grade.
    pub fn dropped(&self) -> bool {
        self.name != self.by_diameter
    }
    /// The grade and its neighbours, as a table.
    pub fn report(&self) -> Report {
        let found: Vec<_> = grades().collect();
        let place = found.iter().position(|(g, _)| g.of[0] == self.by_diameter).unwrap_or(0);
        let near = place.saturating_sub(1)..(place + 2).min(found.len());
        let row = |(range, spread): &(&Figure, &Figure)| {
            let mark = match range.of[0] {
                name if name == self.name => "this lot",
                name if name == self.by_diameter => "by diameter alone",
                _ => "",
            };
            let low = if range.low.is_finite() { fixed(range.low, 2) } else { "under".to_owned() };
            let cells = [range.of[0], range.of[2]].map(str::to_owned).into_iter();
            let limits = [low, fixed(range.high, 2), fixed(spread.high, 2)];
            cells.chain(limits).chain([range.source.to_owned(), mark.to_owned()]).collect()
        };
        let mut lead = vec![match self.deviation {
            None => format!(
                "Mean diameter {} µm. Its spread was not given: over {} µm it drops one grade.",
                fixed(self.diameter, 2),
                fixed(self.largest_deviation, 2)
            ),
            Some(d) => format!(
                "Mean diameter {} µm, standard deviation {} µm; {} allows {} µm.",
                fixed(self.diameter, 2),
                fixed(d, 2),
                self.by_diameter,
                fixed(self.largest_deviation, 2)
            ),
        }];
        if self.dropped() {
            lead.push("It spreads too much for its diameter and drops one grade.".to_owned());
        }
        let columns = [
            ("grade", Left),
            ("blood", Left),
            ("from µm", Right),
            ("to µm", Right),
            ("largest SD µm", Right),
            ("source", Left),
            ("", Left),
        ];
        Report {
            title: format!("{} ({})", self.name, self.blood),
            blocks: vec![Block {
                title: "Grade of raw wool, United States".to_owned(),
                lead,
                columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
                rows: found[near].iter().map(row).collect(),
                foot: vec![
                    "For raw wool; tops have another table. The number is a name, and no promise \
                     of the count that will spin."
                        .to_owned(),
                ],
                ..Block::default()
            }],
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(diameter: f64, deviation: Option<f64>) -> Result<&'static str> {
        us_grade(Fineness::base(diameter), deviation.map(Fineness::base)).map(|g| g.name)
    }

    #[test]
    fn every_diameter_has_one_grade_up_to_the_end() {
        let mut last = "finest";
        let mut seen = vec![last];
        for hundredths in 1000..=4020 {
            let name = named(f64::from(hundredths) / 100.0, None).unwrap();
            if name != last {
                assert!(!seen.contains(&name), "{name} comes twice");
                seen.push(name);
                last = name;
            }
        }
        assert_eq!(seen.len(), grades().count());
        assert!(named(40.21, None).unwrap_err().to_string().contains("36s"));
    }

    #[test]
    fn limits_belong_where_they_are_printed() {
        assert_eq!(named(17.69, None).unwrap(), "finest");
        assert_eq!(named(17.70, None).unwrap(), "80s");
        assert_eq!(named(19.14, None).unwrap(), "80s");
        assert_eq!(named(19.15, None).unwrap(), "70s");
        assert_eq!(named(30.99, Some(8.69)).unwrap(), "50s");
        assert_eq!(named(30.99, Some(8.70)).unwrap(), "48s");
        // There is nothing below the last.
        assert!(named(39.0, Some(12.0)).is_err());
    }

    #[test]
    fn it_spreads_and_says_so() {
        let text =
            us_grade(Fineness::base(26.0), Some(Fineness::base(7.5))).unwrap().report().text();
        assert!(text.contains("56s") && text.contains("drops one grade"), "{text}");
    }
}
