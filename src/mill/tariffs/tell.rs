//! Tariffs side by side, as a table.

use crate::quantity::Kind;
use crate::quantity::print::{figure, fixed, of_kind};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

pub(super) struct ToldRow {
    pub(super) share: f64,
    pub(super) finished: f64,
    pub(super) greasy: Option<f64>,
    pub(super) clean: Option<f64>,
    pub(super) by_finished: Option<f64>,
}

pub(super) struct Told {
    pub(super) rows: Vec<ToldRow>,
    /// The yield at which the tariff for finished charges as that for greasy does, and clean.
    pub(super) equals: [Option<f64>; 2],
    pub(super) rejects: Option<f64>,
    pub(super) least: f64,
    pub(super) yields: Vec<f64>,
}

const BASES: [&str; 3] = ["greasy", "clean", "finished"];

impl ToldRow {
    fn charges(&self) -> [Option<f64>; 3] {
        [self.greasy, self.clean, self.by_finished]
    }
    /// The dearest basis, or that they are equal.
    fn dearest(&self) -> String {
        let charges = self.charges();
        let all: Vec<f64> = charges.iter().flatten().copied().collect();
        let (low, high) =
            all.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), x| (l.min(*x), h.max(*x)));
        let alike = |a: f64, b: f64| (a - b).abs() <= 1e-9 * a.abs().max(1.0);
        if alike(low, high) {
            return "equal".to_owned();
        }
        let top = charges.iter().zip(BASES).filter(|(c, _)| c.is_some_and(|c| alike(c, high)));
        let top: Vec<&str> = top.map(|(_, base)| base).collect();
        format!("{}, by {}", top.join(" and "), fixed(high - low, 2))
    }
}

fn percent(share: f64) -> String {
    of_kind(share, Kind::Yield)
}

impl Told {
    fn lead(&self) -> Vec<String> {
        let (low, high) = (self.yields[0], self.yields[self.yields.len() - 1]);
        let of = |equal: Option<f64>, base: &str| {
            let y = equal?;
            let what = format!(
                "By the {base} and by the finished kilogram the charge is equal at a yield of {}",
                percent(y)
            );
            let row = self.rows.first()?;
            let charge = if base == "greasy" { row.greasy? } else { row.clean? };
            Some(if self.least > 0.0 && charge <= self.least {
                format!(
                    "{what}; up to it both charge the minimum, above it the finished kilogram is the dearer for the owner."
                )
            } else if low < y && y < high {
                format!(
                    "{what}, within the range: below it the finished kilogram is the cheaper for the owner, above it the dearer."
                )
            } else if y <= low {
                format!(
                    "{what}: over the whole range the finished kilogram is no cheaper for the owner."
                )
            } else {
                format!(
                    "{what}: over the whole range the finished kilogram is no dearer for the owner."
                )
            })
        };
        [of(self.equals[0], "greasy"), of(self.equals[1], "clean")].into_iter().flatten().collect()
    }

    pub(super) fn report(&self) -> Report {
        let shown: Vec<usize> =
            (0..3).filter(|k| self.rows.iter().any(|r| r.charges()[*k].is_some())).collect();
        let mut columns = vec![("yield".to_owned(), Right), ("finished, kg".to_owned(), Right)];
        columns.extend(shown.iter().map(|k| (format!("by {} kg", BASES[*k]), Right)));
        columns.push(("dearest for the owner".to_owned(), Left));
        let row = |r: &ToldRow| {
            let mut row = vec![percent(r.share), fixed(r.finished, 2)];
            row.extend(
                shown.iter().map(|k| r.charges()[*k].map_or(String::new(), |c| fixed(c, 2))),
            );
            row.push(r.dearest());
            row
        };
        let mut foot = Vec::new();
        if self.least > 0.0 {
            foot.push(format!(
                "Each charge is at least {}, the minimum for a lot.",
                figure(self.least)
            ));
        }
        if let Some(charge) = self.rejects {
            foot.push(format!("Rejects come on top whichever the tariff: {}.", fixed(charge, 2)));
        }
        foot.push("Yield is finished for greasy. Value added tax is left out.".to_owned());
        Report {
            title: "Tariffs compared".to_owned(),
            blocks: vec![Block {
                title: "What the lot is charged, over the range of its yield".to_owned(),
                lead: self.lead(),
                columns,
                rows: self.rows.iter().map(row).collect(),
                foot,
                ..Block::default()
            }],
        }
    }
}
