//! The mill's sheet, which stays with the lot: the promise, every stage with its settings and cautions, how
//! the wool is divided, where it went, and where the values come from.

use super::about;
use super::sheet::{Page, capital, html};
use super::words::{Words, place, stage_words};
use crate::caution;
use crate::plan::chance::Layer;
use crate::plan::report::{Extent, columns};
use crate::plan::result::PlanResult;
use crate::plan::screen::percent;
use crate::plan::{Given, Plan};
use crate::quantity::print::of_kind;
use crate::table::Align::{Left, Right};
use crate::table::Block;

/// The sheet.
pub(super) fn page(plan: &Plan, result: &PlanResult) -> String {
    let words = Words::new(plan, result);
    let foot = |block: Block, keep: usize| {
        let foot = block.foot.into_iter().take(keep).collect();
        Block { foot, ..block }
    };
    let outcome = result.outcome(Extent::All);
    // How to write a file is no matter for paper.
    let outcome = foot(outcome, usize::from(!result.weighed));
    let mut blocks = vec![result.promise(Extent::All), outcome, result.on_the_scale()];
    blocks.extend(by_stage(result));
    blocks.extend(result.divided());
    blocks.extend(measure_first(result));
    let mut every = result.every_kilogram();
    every.foot = vec!["Minus: added to the lot, such as oil and water.".to_owned()];
    blocks.push(every);
    blocks.extend(result.unusual());
    blocks.push(origins(plan, result));
    let mut blocks: Vec<Block> = blocks.into_iter().map(|block| words.block(block)).collect();
    blocks.push(Block { foot: vec![caution::HEAD.to_owned()], ..Block::default() });
    let title = format!("Mill's sheet: {}", result.name);
    html(
        &title,
        vec![Page {
            title: title.clone(),
            lead: vec![about(plan, result)],
            blocks,
            ..Page::default()
        }],
    )
}

/// A block for each stage and machine: what to set and expect there, and its cautions.
fn by_stage(result: &PlanResult) -> Vec<Block> {
    let mut places: Vec<&str> = result.stages.iter().map(|s| s.name.as_str()).collect();
    // The machines of the goods come after the stages.
    let later = result.settings.iter().filter(|s| !places.contains(&s.at.as_str()));
    let machines: Vec<&str> = later.map(|s| s.stage.as_str()).collect();
    let cautions = result.cautions_by_place();
    for place in machines.into_iter().chain(cautions.iter().map(|(place, _)| *place)) {
        if !places.contains(&place) {
            places.push(place);
        }
    }
    let block = |place: &str| {
        let stage = result.stages.iter().find(|s| s.name == place);
        let title = stage.map_or(place.to_owned(), |stage| {
            format!("{}: {}", stage_words(&stage.machine, &stage.of), stage.makes)
        });
        let settings = result.settings.iter().filter(|s| match stage {
            Some(_) => s.at == place,
            None => s.stage == place,
        });
        let rows = settings.map(|s| {
            let of = match s.of.as_str() {
                of if stage.is_none() && !of.is_empty() => format!("{of}: "),
                _ => String::new(),
            };
            let mark = if s.main { "set,\u{a0}weigh" } else { "expect" };
            let value = result.say.of_setting(s);
            vec![mark.to_owned(), format!("{of}{}", s.words), value, s.note.clone()]
        });
        let names = cautions.iter().find(|(p, _)| *p == place).map_or(&[][..], |(_, names)| names);
        Block {
            title,
            columns: columns(&[("", Left), ("what", Left), ("value", Right), ("note", Left)]),
            rows: rows.collect(),
            lead: craft(result, |stage| stage == place),
            cautions: caution::of(names).map(|caution| caution.line(&[])).collect(),
            ..Block::default()
        }
    };
    let blocks = places.into_iter().map(block);
    blocks.filter(|block| !block.rows.is_empty() || !block.cautions.is_empty()).collect()
}

/// What the mill says of some stages: how they look, sound and feel; each once.
pub(super) fn craft(result: &PlanResult, of: impl Fn(&str) -> bool) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    for (stage, sense, words) in &result.craft {
        let line = format!("{}: {words}", capital(sense));
        if of(stage) && !all.contains(&line) {
            all.push(line);
        }
    }
    all
}

/// What to measure first.
fn measure_first(result: &PlanResult) -> Option<Block> {
    let shown = result.measure_first.iter().take(6);
    let rows: Vec<Vec<String>> = shown
        .filter(|doubt| doubt.share > 0.002)
        .map(|doubt| {
            let path = doubt.key.rsplit_once('.').map_or("", |(path, _)| path);
            let mill = if doubt.layer == Layer::Mill { "the mill's own constant" } else { "" };
            vec![place(path), doubt.words.clone(), percent(doubt.share), mill.to_owned()]
        })
        .collect();
    let names = [("at", Left), ("what", Left), ("share of the doubt", Right), ("", Left)];
    (!rows.is_empty()).then(|| Block::of("What to measure first", &names, rows))
}

/// Where each value comes from.
fn origins(plan: &Plan, result: &PlanResult) -> Block {
    let row = |given: &Given| {
        let path = given.key.rsplit_once('.').map_or("", |(path, _)| path);
        let between = if given.spread.is_open() {
            let end = |z: f64| of_kind(given.draw().at(z).0, given.kind);
            format!("{} to {}", end(-Z95), end(Z95))
        } else {
            String::new()
        };
        let whose = match given.from.as_str() {
            "lot" => "this lot",
            "mill" => "the mill",
            "default" | "handbook" => "the handbook",
            "guess" => "a guess",
            "values" => "changed for this plan",
            other => other,
        };
        vec![place(path), given.meaning.to_owned(), given.typed.clone(), between, whose.to_owned()]
    };
    let names =
        [("of", Left), ("what", Left), ("value", Right), ("9 lots in 10", Right), ("from", Left)];
    let mut block =
        Block::of("Where the values come from", &names, plan.given().iter().map(row).collect());
    block.lead = vec![result.origin_line()];
    block
}

/// The deviate that one lot in twenty exceeds.
const Z95: f64 = 1.644_853_626_951_472_2;
