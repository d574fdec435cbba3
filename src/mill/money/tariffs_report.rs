//! Tariffs side by side, as a table.

use super::tariffs::{CompareTariffsInputs, CompareTariffsResults, charge_at};
use crate::calculation::Check;
use crate::quantity::print::{figure, fixed, of_kind};
use crate::quantity::{Kind, Money, Yield};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

type Inputs = CompareTariffsInputs<f64>;
type Results = CompareTariffsResults<f64>;

/// The charges at a yield, by the kilogram sent in, clean and finished.
struct Row {
    share: f64,
    charges: [Option<f64>; 3],
}

const BASES: [&str; 3] = ["greasy", "clean", "finished"];

impl Row {
    /// The dearest basis, or that they are equal.
    fn dearest(&self) -> String {
        let all: Vec<f64> = self.charges.iter().flatten().copied().collect();
        let (low, high) =
            all.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), x| (l.min(*x), h.max(*x)));
        let alike = |a: f64, b: f64| (a - b).abs() <= 1e-9 * a.abs().max(1.0);
        if alike(low, high) {
            return "equal".to_owned();
        }
        let top = self.charges.iter().zip(BASES).filter(|(c, _)| c.is_some_and(|c| alike(c, high)));
        let top: Vec<&str> = top.map(|(_, base)| base).collect();
        format!("{}, by {}", top.join(" and "), fixed(high - low, 2))
    }
}

fn percent(share: f64) -> String {
    of_kind(share, Kind::Yield)
}

/// The yields to show: those given, some between, and where two tariffs are equal.
fn shown(yields: &[f64], equal: [Option<f64>; 2]) -> Vec<f64> {
    const STEPS: u32 = 4;
    let (low, high) = (yields[0], yields[yields.len() - 1]);
    let between = (0..=STEPS).map(|k| low + (high - low) * f64::from(k) / f64::from(STEPS));
    let crossing = equal.into_iter().flatten().filter(|y| *y >= low && *y <= high);
    let mut all: Vec<f64> = between.chain(yields.iter().copied()).chain(crossing).collect();
    all.sort_by(f64::total_cmp);
    all.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
    all
}

/// What an equal yield means for the owner.
fn lead(given: &Inputs, base: &str, equal: f64, charge: f64) -> String {
    let what = format!(
        "By the {base} and by the finished kilogram the charge is equal at a yield of {}",
        percent(equal)
    );
    let (low, high) = (given.yields[0].value(), given.yields[given.yields.len() - 1].value());
    let least = given.minimum_charge.value();
    if least > 0.0 && charge <= least {
        format!(
            "{what}; up to it both charge the minimum, above it the finished kilogram is the dearer for the owner."
        )
    } else if low < equal && equal < high {
        format!(
            "{what}, within the range: below it the finished kilogram is the cheaper for the owner, above it the dearer."
        )
    } else if equal <= low {
        format!("{what}: over the whole range the finished kilogram is no cheaper for the owner.")
    } else {
        format!("{what}: over the whole range the finished kilogram is no dearer for the owner.")
    }
}

pub(super) fn report(given: &Inputs, found: &Results, _: &Check<'_>) -> Report {
    let value = |charge: Option<Money<f64>>| charge.map(Money::value);
    let equal = [found.equal_yield, found.equal_yield_clean].map(|y| y.map(Yield::value));
    let yields: Vec<f64> = given.yields.iter().map(|y| y.value()).collect();
    let at = |share: f64| {
        let by = given.tariff_out.map(|tariff| {
            charge_at(given.greasy_mass, Yield::base(share), tariff, given.minimum_charge).1
        });
        Row { share, charges: [value(found.charge_in), value(found.charge_clean), value(by)] }
    };
    let rows: Vec<Row> = shown(&yields, equal).into_iter().map(at).collect();
    let bases: Vec<usize> =
        (0..3).filter(|k| rows.iter().any(|row| row.charges[*k].is_some())).collect();
    let mut columns = vec![("yield".to_owned(), Right), ("finished, kg".to_owned(), Right)];
    columns.extend(bases.iter().map(|k| (format!("by {} kg", BASES[*k]), Right)));
    columns.push(("dearest for the owner".to_owned(), Left));
    let cells = |row: &Row| {
        let finished = given.greasy_mass.value() * row.share;
        let mut cells = vec![percent(row.share), fixed(finished, 2)];
        cells.extend(bases.iter().map(|k| row.charges[*k].map_or(String::new(), |c| fixed(c, 2))));
        cells.push(row.dearest());
        cells
    };
    let mut foot = Vec::new();
    let least = given.minimum_charge.value();
    if least > 0.0 {
        foot.push(format!("Each charge is at least {}, the minimum for a lot.", figure(least)));
    }
    if let Some(charge) = found.charge_for_rejects {
        foot.push(format!(
            "Rejects are charged on top whichever the tariff: {}.",
            fixed(charge.value(), 2)
        ));
    }
    foot.push("Yield is finished for greasy. Value added tax is not included.".to_owned());
    let charges = [value(found.charge_in), value(found.charge_clean)];
    let lead = equal
        .iter()
        .zip(charges)
        .zip(BASES)
        .filter_map(|((equal, charge), base)| Some(lead(given, base, (*equal)?, charge?)))
        .collect();
    Report {
        title: "Tariffs compared".to_owned(),
        blocks: vec![Block {
            title: "What the lot is charged, over the range of its yield".to_owned(),
            lead,
            columns,
            rows: rows.iter().map(cells).collect(),
            foot,
            ..Block::default()
        }],
    }
}
