//! The theories of setting as a table, and what is beyond them.

use super::interlacing::Interlacing;
use super::setts::{SettsInputs, SettsResults};
use super::theories::{About, Theory, theories};
use crate::calculation::Check;
use crate::quantity::print::fixed;
use crate::quantity::{Ratio, Sett};
use crate::source::{Source, source};
use crate::table::Align::{Left, Right};
use crate::table::{Align, Block, Report};

type Row = (Theory<f64>, About);

/// Says where a sett wanted is beyond the maximum of every theory.
pub(super) fn beyond(
    given: &SettsInputs<f64>,
    weave: &Interlacing,
    check: &Check<'_>,
) -> Vec<String> {
    let rows = theories(weave, given);
    let over = |word: &str,
                wanted: Option<Sett<f64>>,
                of: fn(&Theory<f64>) -> Option<Sett<f64>>| {
        let all = rows.iter().filter_map(|(theory, about)| Some((of(theory)?, about)));
        let (most, about) = all.max_by(|a, b| a.0.value().total_cmp(&b.0.value()))?;
        let wanted = wanted?;
        (wanted.value() > most.value()).then(|| {
            let other = if word == "ends" { "picks" } else { "ends" };
            format!(
                "{word} = {} are beyond the jam of every theory for a square cloth: the highest is {} ({}), \
                 {} % less; take at most that, a finer yarn or a weave with longer floats, or far fewer \
                 {other}",
                check.say(wanted),
                check.say(most),
                about.name,
                fixed((1.0 - most.value() / wanted.value()) * 100.0, 0),
            )
        })
    };
    [
        over("ends", given.wanted_warp_sett, |theory| theory.warp_sett),
        over("picks", given.wanted_weft_sett, |theory| theory.weft_sett),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// The theories side by side.
pub(super) fn report(
    given: &SettsInputs<f64>,
    found: &SettsResults<f64>,
    check: &Check<'_>,
) -> Report {
    let rows: Vec<Row> =
        Interlacing::parse(&given.weave).map_or_else(|_| Vec::new(), |w| theories(&w, given));
    let yarns = match given.yarns.weft_count {
        Some(weft) if (weft.value() / given.yarns.warp_count.value() - 1.0).abs() > 1e-9 => {
            format!("{} warp, {} weft", check.say(given.yarns.warp_count), check.say(weft))
        }
        _ => check.say(given.yarns.warp_count),
    };
    let assumes =
        Block { title: "What each assumes".to_owned(), lead: assumes(&rows), ..Block::default() };
    Report {
        title: format!("Maximum setts of {} in {yarns}", given.weave.trim()),
        blocks: vec![table(given, &rows, found, check), assumes],
    }
}

fn table(
    given: &SettsInputs<f64>,
    rows: &[Row],
    found: &SettsResults<f64>,
    check: &Check<'_>,
) -> Block {
    // The unit is over the table.
    let number = |sett: Option<Sett<f64>>| {
        let words = sett.map(|sett| check.say(sett)).unwrap_or_default();
        words.split_once(' ').map_or(String::new(), |(number, _)| number.to_owned())
    };
    let percent = |share: Option<Ratio<f64>>| {
        share.map_or_else(String::new, |s| format!("{} %", fixed(s.value() * 100.0, 0)))
    };
    let value = |sett: Option<Sett<f64>>| sett.map(Sett::value);
    let is_square = rows.iter().all(|(t, _)| value(t.warp_sett) == value(t.weft_sett));
    let has_most = rows.iter().any(|(theory, _)| theory.most_weft_sett.is_some());
    let mut columns = vec![("theory", Left), ("with", Left)];
    columns.push((if is_square { "ends and picks" } else { "ends" }, Right));
    if !is_square {
        columns.push(("picks", Right));
    }
    if given.wanted_warp_sett.is_some() {
        columns.push(("your ends", Right));
    }
    if given.wanted_weft_sett.is_some() {
        columns.push(("your picks", Right));
    }
    if has_most {
        columns.push(("most picks then", Right));
    }
    columns.push(("basis", Left));
    let row = |(theory, about): &Row| {
        let mut cells = vec![about.name.to_owned(), about.with.clone(), number(theory.warp_sett)];
        if !is_square {
            cells.push(number(theory.weft_sett));
        }
        if given.wanted_warp_sett.is_some() {
            cells.push(percent(theory.warp_sett_share));
        }
        if given.wanted_weft_sett.is_some() {
            cells.push(percent(theory.weft_sett_share));
        }
        if has_most {
            cells.push(number(theory.most_weft_sett));
        }
        cells.push(if theory.warp_sett.is_some() {
            about.basis()
        } else {
            format!("— {}", about.why_not)
        });
        cells
    };
    let highest = check.say(found.highest_warp_sett);
    let unit = highest.split_once(' ').map_or("", |(_, unit)| unit).to_owned();
    let foot = vec![
        format!(
            "The theories differ by {1} % ({0} to {highest}); always name the one you use.",
            number(Some(found.lowest_warp_sett)),
            fixed(found.spread.value() * 100.0, 0)
        ),
        "These are maxima, not setts to weave. Weave a share of them that you know from experience; \
         for usual shares see the handbook table working_setts."
            .to_owned(),
    ];
    let heading = |all: Vec<(&str, Align)>| {
        all.into_iter().map(|(name, align)| (name.to_owned(), align)).collect()
    };
    let rows = rows.iter().map(row).collect();
    Block { title: unit, columns: heading(columns), rows, foot, ..Block::default() }
}

/// What each theory takes for granted, with its source.
fn assumes(rows: &[Row]) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    for (_, about) in rows {
        let title = source(about.source).map_or_else(String::new, Source::words);
        let says = format!("{}: {} [{title}].", about.name, about.assumes);
        if !all.contains(&says) {
            all.push(says);
        }
    }
    all
}
