//! How the chain is shown: a row for each stage, what the mill looks at across.

use super::chain::{FINISHED, FinishingResults, From, KnownCloth, LOOM, states_at};
use super::process::Process;
use super::state::Stage;
use crate::calculation::Check;
use crate::quantity::print::{figure, of_kind, with_unit};
use crate::quantity::{Kind, LinearDensity, MassLoss, Shrinkage, unit};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// A value of a stage in words; none where it is not known.
type Say = fn(&Stage<f64>, &Check<'_>) -> Option<String>;

/// A column of a table: its heading, and what is in it.
struct Column {
    head: &'static str,
    say: Say,
}

const CLOTH: [Column; 7] = [
    Column { head: "width", say: |stage, check| Some(check.say(stage.width?)) },
    Column { head: "length", say: |stage, check| Some(check.say(stage.length?)) },
    Column { head: "ends", say: |stage, check| Some(check.say(stage.warp_sett?)) },
    Column { head: "picks", say: |stage, check| Some(check.say(stage.weft_sett?)) },
    Column { head: "mass", say: |stage, check| Some(check.say(stage.mass_per_area?)) },
    Column { head: "running", say: running },
    Column { head: "piece", say: |stage, check| Some(check.say(stage.piece_mass?)) },
];
const YARN: [Column; 6] = [
    Column { head: "warp", say: |stage, check| Some(check.say(stage.warp_count?)) },
    Column { head: "weft", say: |stage, check| Some(check.say(stage.weft_count?)) },
    Column { head: "warp crimp", say: |stage, check| Some(check.say(stage.warp_crimp?)) },
    Column { head: "weft crimp", say: |stage, check| Some(check.say(stage.weft_crimp?)) },
    Column { head: "warp cover", say: |stage, check| Some(check.say(stage.warp_cover_factor?)) },
    Column { head: "weft cover", say: |stage, check| Some(check.say(stage.weft_cover_factor?)) },
];

/// The mass of a running length: beside ounces on an area in ounces, else in grams.
fn running(stage: &Stage<f64>, check: &Check<'_>) -> Option<String> {
    let mass: LinearDensity<f64> = stage.mass_per_length?;
    let area = check.say(stage.mass_per_area?);
    let symbol = if area.ends_with("oz/yd²") { "oz/yd" } else { "g/m" };
    let unit = unit(symbol, Some(Kind::LinearDensity)).ok()?;
    Some(with_unit(unit.from_base(mass.value()), symbol))
}

/// The number and the unit of a value in words: `1.60 m`.
fn parts(words: &str) -> (&str, &str) {
    words.split_once(' ').unwrap_or((words, ""))
}

/// A table of the stages. The unit is in the heading where it is that of the whole column.
fn table(
    title: &str,
    columns: &[Column],
    found: &FinishingResults<f64>,
    check: &Check<'_>,
) -> Option<Block> {
    let stages = || found.stages.iter().filter(|stage| stage.name != FINISHED);
    let mut heads = vec![("stage".to_owned(), Left)];
    let mut rows: Vec<Vec<String>> = stages()
        .map(|stage| vec![if stage.name == LOOM { "off the loom" } else { &stage.name }.to_owned()])
        .collect();
    for Column { head, say } in columns {
        let cells: Option<Vec<String>> = stages().map(|stage| say(stage, check)).collect();
        let Some(cells) = cells else { continue };
        let (_, unit) = parts(cells.first().map_or("", String::as_str));
        let is_common = !unit.is_empty() && cells.iter().all(|cell| parts(cell).1 == unit);
        heads.push(match unit.split_once('/') {
            Some(("threads", per)) if is_common => (format!("{head}/{per}"), Right),
            _ if is_common => (format!("{head}, {unit}"), Right),
            _ => ((*head).to_owned(), Right),
        });
        for (row, cell) in rows.iter_mut().zip(&cells) {
            row.push(if is_common { parts(cell).0 } else { cell.as_str() }.to_owned());
        }
    }
    let title = title.to_owned();
    (heads.len() > 1).then(|| Block { title, columns: heads, rows, ..Block::default() })
}

/// The chain as tables.
pub(super) fn report(
    processes: &[Process<f64>],
    cloth: &KnownCloth<f64>,
    found: &FinishingResults<f64>,
    from: From,
    check: &Check<'_>,
) -> Report {
    let blocks = [
        table("The cloth, stage by stage", &CLOTH, found, check),
        table("The yarn in it", &YARN, found, check),
    ];
    let mut blocks: Vec<Block> = blocks.into_iter().flatten().collect();
    if let Some(last) = blocks.last_mut() {
        let possible = possible(processes, cloth, from, check);
        last.foot = possible.into_iter().chain(assumed(processes, found)).collect();
    }
    blocks.insert(0, changes(processes, found));
    let title = match from {
        From::Loom => "From the loom to the finished cloth",
        From::Finished => "What to weave for the finished cloth",
    };
    Report { title: title.to_owned(), blocks }
}

/// What each process does, and all together.
fn changes(processes: &[Process<f64>], found: &FinishingResults<f64>) -> Block {
    let heads = ["width", "length", "mass"].map(|head| (head.to_owned(), Right));
    let columns = std::iter::once(("lost, on what it was before".to_owned(), Left)).chain(heads);
    let cell = |x: Option<f64>| x.map_or_else(|| "–".to_owned(), |x| of_kind(x, Kind::Shrinkage));
    let row = |name: &str, values: [Option<f64>; 3]| {
        std::iter::once(name.to_owned()).chain(values.map(cell)).collect()
    };
    let size = |size: Option<Shrinkage<f64>>| size.map(Shrinkage::value);
    let mut rows: Vec<Vec<String>> = processes
        .iter()
        .map(|process| {
            let step = process.step();
            let values = [size(step.width), size(step.length), step.loss.map(MassLoss::value)];
            row(process.name.trim(), values)
        })
        .collect();
    if processes.len() > 1 {
        let loss = found.mass_loss.map(MassLoss::value);
        let values = [size(found.width_shrinkage), size(found.length_shrinkage), loss];
        rows.push(row("together", values));
    }
    let mut foot = Vec::new();
    if let Some(over) = found.over_width {
        foot.push(format!(
            "woven {} wider than finished, on the finished width",
            of_kind(over.value(), Kind::OverWidth)
        ));
    }
    if let Some(area) = found.area_shrinkage {
        foot.push(format!("area lost {}", of_kind(area.value(), Kind::AreaShrinkage)));
    }
    if let Some(factor) = found.mass_per_area_factor {
        foot.push(format!("mass per area × {}", figure(factor.value())));
    }
    let title = "What each process does".to_owned();
    Block { title, columns: columns.collect(), rows, foot, ..Block::default() }
}

/// Between which values the answer lies, where samples say what a process does.
fn possible(
    processes: &[Process<f64>],
    cloth: &KnownCloth<f64>,
    from: From,
    check: &Check<'_>,
) -> Option<String> {
    if !processes.iter().any(Process::is_measured) {
        return None;
    }
    let ends = [true, false].map(|closer| {
        let states = states_at(processes, cloth, from, closer);
        let state = match from {
            From::Loom => states.last(),
            From::Finished => states.first(),
        };
        state.map(|state| state.stage(""))
    });
    let [Some(closer), Some(wider)] = ends else { return None };
    let words = CLOTH.iter().chain(&YARN).filter_map(|Column { head, say }| {
        let mut both = [say(&closer, check)?, say(&wider, check)?];
        if both[0] == both[1] {
            return None;
        }
        let number = |words: &str| parts(words).0.replace(',', "").parse::<f64>().ok();
        if number(&both[0])? > number(&both[1])? {
            both.swap(0, 1);
        }
        let [low, high] = &both;
        let low = if parts(low).1 == parts(high).1 { parts(low).0 } else { low };
        Some(format!("{head} {low} to {high}"))
    });
    let words: Vec<String> = words.collect();
    let when = match from {
        From::Loom => "finished",
        From::Finished => "off the loom",
    };
    (!words.is_empty())
        .then(|| format!("possible {when} as far as the samples tell: {}", words.join("; ")))
}

/// What was taken for granted, and what could not be answered.
fn assumed(processes: &[Process<f64>], found: &FinishingResults<f64>) -> Vec<String> {
    let mut out = Vec::new();
    let Some(loom) = found.stages.first() else { return out };
    let steps: Vec<_> = processes.iter().map(Process::step).collect();
    let warp = steps.iter().any(|step| step.length.is_some() && step.warp_yarn.is_none());
    let weft = steps.iter().any(|step| step.width.is_some() && step.weft_yarn.is_none());
    let shortened = [
        (warp && loom.warp_count.is_some()).then_some("warp"),
        (weft && loom.weft_count.is_some()).then_some("weft"),
    ];
    let shortened: Vec<&str> = shortened.into_iter().flatten().collect();
    if !shortened.is_empty() {
        let yarns: Vec<String> =
            shortened.iter().map(|name| format!("{name}_yarn_shrinkage")).collect();
        out.push(format!(
            "the crimp of the {} is taken as unchanged: the yarn shortens with the cloth; where it keeps \
             its length or shrinks by itself, say so ({})",
            shortened.join(" and "),
            yarns.join(", ")
        ));
    }
    if loom.mass_per_area.is_none() && (loom.warp_sett.is_some() || loom.warp_count.is_some()) {
        out.push(
            "no mass per area: it needs mass_per_area, or piece_mass with width and length, or \
             warp_sett, weft_sett, warp_count, weft_count and both crimps"
                .to_owned(),
        );
    }
    out
}
