//! Tables to hang by the machines: owned wheels and reeds and what they give, check weights and hopper weighs
//! of the mill's usual yarns.

use super::sheet::{Page, capital, cautions, html};
use super::trial::{Mill, Trial, quoted};
use crate::error::{Error, Result};
use crate::plan::Source;
use crate::plan::file::File;
use crate::plan::given::Values;
use crate::plan::section::Section;
use crate::plan::stage::Owns;
use crate::quantity::print::{figure, of_kind};
use crate::quantity::{Count, Kind, Length, LinearDensity};
use crate::table::Align::{self, Left, Right};
use crate::table::Block;
use crate::yarn;

/// How far apart the regains of a table are.
const STEP: f64 = 0.03;
/// The length of yarn that is weighed.
const YARN_LENGTH: f64 = 100.0;

/// The tables of a mill.
pub(super) fn page(source: &Source) -> Result<String> {
    let nothing = File::parse("lot", "a trial lot", "").map_err(Error::readable)?;
    let file = File::parse("mill", &source.name, &source.text).map_err(Error::readable)?;
    let root = Section::of(&file);
    if let Some(key) = ["lot", "mill", "fleece"].into_iter().find(|key| root.has(key)) {
        return Err(root.error(key, "this is a lot; the tables are made from its mill file"));
    }
    let mill = Mill::new(source, &nothing, &file);
    let mut pages = Vec::new();
    for (machine, kind) in mill.machines().map_err(Error::readable)? {
        pages.extend(match kind {
            "card" | "mule" | "ring" | "twister" | "winder" => of_yarn(&mill, &machine, kind)?,
            "reel" => of_reel(&mill, &machine)?,
            "loom" => of_loom(&mill, &machine)?,
            _ => None,
        });
    }
    if pages.is_empty() {
        let message = "no machine with wheels, reeds or check weights; write one, such as [mule]";
        return Err(Error::plan(message).at(&source.name));
    }
    let title = format!("Tables to hang by the machines of {}", source.name);
    Ok(html(&title, pages))
}

/// The page of a machine that makes yarn or slubbing.
fn of_yarn(mill: &Mill<'_>, machine: &str, kind: &'static str) -> Result<Option<Page>> {
    let Some(any) = mill.over((machine, kind), None, "")? else { return Ok(None) };
    let Some(pass) = any.plan.tree.all_passes().find(|pass| pass.machine == machine) else {
        return Ok(None);
    };
    let likely = any.plan.likely();
    let owned = pass.stage.owns(&Values { given: &likely });
    let mut blocks: Vec<Block> = owned.iter().map(|owns| wheels(&any, owns)).collect();
    let mut usual = Vec::new();
    for yarn in mill.names("yarn")? {
        // A usual yarn that does not go over this machine has no row.
        if let Ok(Some(trial)) = mill.over((machine, kind), Some(&yarn), "") {
            usual.push((yarn, trial));
        }
    }
    blocks.extend(check_weights(mill, (machine, kind), &usual)?);
    blocks.extend(hopper_weighs(mill, machine, &usual)?);
    Ok(sheet(machine, blocks, pass.stage.cautions()))
}

/// A page, unless there is nothing to tell.
fn sheet(machine: &str, blocks: Vec<Block>, names: &[&str]) -> Option<Page> {
    (!blocks.is_empty()).then(|| Page {
        title: capital(machine),
        blocks,
        last: cautions(names).into_iter().collect(),
        ..Page::default()
    })
}

/// Owned parts, and what each gives.
fn wheels(trial: &Trial, owns: &Owns) -> Block {
    let say = &trial.plan.say;
    let value = |x: f64, kind: Kind| match kind {
        Kind::Count | Kind::Ratio => figure(x),
        // The threads in a reed are ends.
        Kind::Sett => say.figure(x, kind).replace("threads", "ends"),
        _ => say.figure(x, kind),
    };
    let (what, kind) = owns.gives;
    let row = |(part, gives): &(f64, f64)| vec![value(*part, owns.kind), value(*gives, kind)];
    let head = if owns.kind == Kind::Count { "teeth" } else { owns.parts };
    Block::of(
        format!("{} and what it gives", capital(owns.parts)),
        &[(head, Right), (what, Right)],
        owns.rows.iter().map(row).collect(),
    )
}

/// Three regains about one, and what to write to have each.
fn regains(middle: f64) -> [f64; 3] {
    let middle = (middle * 100.0).round() / 100.0;
    [middle - STEP, middle, middle + STEP]
}

/// The heads of three columns.
fn heads(regains: [f64; 3]) -> [String; 3] {
    regains.map(|regain| format!("{} regain", of_kind(regain, Kind::Regain)))
}

/// What the balance should show for a length of each usual yarn as it leaves the machine.
fn check_weights(
    mill: &Mill<'_>,
    (machine, kind): (&str, &str),
    usual: &[(String, Trial)],
) -> Result<Option<Block>> {
    let name = if kind == "card" { "slubbing_count" } else { "count" };
    let Some((_, first)) = usual.first() else { return Ok(None) };
    let length = if kind == "card" { check_length(first, machine) } else { YARN_LENGTH };
    let Some(leaving) = leaving(first, machine) else { return Ok(None) };
    let regains = regains(leaving);
    let mut rows = Vec::new();
    for (yarn, trial) in usual {
        let Some(count) = trial.setting(machine, name) else { continue };
        let mut row = vec![yarn.clone(), trial.plan.say.figure(count, Kind::LinearDensity)];
        for regain in regains {
            let values = with_regain(machine, regain);
            let count = mill.over((machine, kind), Some(yarn), &values)?;
            let count = count.and_then(|trial| trial.setting(machine, name)).unwrap_or(f64::NAN);
            let weight = yarn::check_weight(
                LinearDensity::base(count),
                Length::base(length),
                Count::base(1.0),
            );
            row.push(trial.plan.say.to_hand(weight.value(), Kind::Mass));
        }
        rows.push(row);
    }
    let length = first.plan.say.figure(length, Kind::Length);
    let heads = heads(regains);
    let mut names: Vec<(&str, Align)> = vec![("usual yarn", Left), ("count here", Right)];
    names.extend(heads.iter().map(|head| (head.as_str(), Right)));
    let title = format!("{length} of one end should weigh");
    let foot =
        vec!["The count is in the state in which it leaves, at the regain planned.".to_owned()];
    Ok((!rows.is_empty()).then(|| Block { foot, ..Block::of(title, &names, rows) }))
}

/// What the hopper should weigh for each usual yarn.
fn hopper_weighs(
    mill: &Mill<'_>,
    machine: &str,
    usual: &[(String, Trial)],
) -> Result<Option<Block>> {
    let Some((_, first)) = usual.first() else { return Ok(None) };
    if first.setting(machine, "hopper_weigh").is_none() {
        return Ok(None);
    }
    let stages = &first.result.stages;
    let place = stages.iter().position(|stage| stage.machine == machine);
    let Some(before) = place.and_then(|place| stages.get(place.checked_sub(1)?)) else {
        return Ok(None);
    };
    let regains = regains(before.stock.water / before.stock.fibre);
    let mut rows = Vec::new();
    for (yarn, trial) in usual {
        let mut row = vec![yarn.clone()];
        for regain in regains {
            let values = with_regain(&before.machine, regain);
            let weigh = mill.over((machine, "card"), Some(yarn), &values)?;
            let weigh = weigh.and_then(|trial| trial.setting(machine, "hopper_weigh"));
            row.push(weigh.map_or_else(String::new, |kg| trial.plan.say.to_hand(kg, Kind::Mass)));
        }
        rows.push(row);
    }
    let heads = heads(regains);
    let mut names: Vec<(&str, Align)> = vec![("usual yarn", Left)];
    names.extend(heads.iter().map(|head| (head.as_str(), Right)));
    let foot = vec!["Regain of the wool in the hopper, with its oil.".to_owned()];
    Ok(Some(Block { foot, ..Block::of("Hopper weigh", &names, rows) }))
}

/// A line that sets the regain with which wool leaves a stage.
fn with_regain(stage: &str, regain: f64) -> String {
    format!("[{}]\nregain = \"{} %\"\n", quoted(stage), (regain * 1e4).round() / 100.0)
}

/// The regain with which wool leaves a machine.
fn leaving(trial: &Trial, machine: &str) -> Option<f64> {
    let stage = trial.result.stages.iter().find(|stage| stage.machine == machine)?;
    Some(stage.stock.water / stage.stock.fibre)
}

/// The length of slubbing that is weighed at a card.
fn check_length(trial: &Trial, machine: &str) -> f64 {
    let given = trial.plan.given().iter();
    let mut lengths = given.filter(|given| given.key.ends_with(".check_length"));
    let own = lengths.clone().find(|given| given.key.starts_with(machine));
    own.or_else(|| lengths.next()).map_or(20.0, crate::plan::Given::base)
}

/// The page of a reel: turns and weight of each usual hank of each usual yarn.
fn of_reel(mill: &Mill<'_>, machine: &str) -> Result<Option<Page>> {
    let mut rows = Vec::new();
    for hank in mill.hanks()? {
        for yarn in mill.names("yarn")? {
            let Ok(trial) = mill.in_hanks(&yarn, &hank) else { continue };
            let say = &trial.plan.say;
            let Some(turns) = trial.setting(machine, "reel_turns") else { continue };
            let weight = trial.setting(machine, "check_weight");
            let weight = weight.map_or_else(String::new, |kg| say.to_hand(kg, Kind::Mass));
            rows.push(vec![hank.clone(), yarn, say.to_hand(turns, Kind::Count), weight]);
        }
    }
    let names =
        [("hank", Left), ("yarn", Left), ("turns", Right), ("weight, before scouring", Right)];
    let block = (!rows.is_empty()).then(|| Block::of("Hanks", &names, rows));
    Ok(sheet(machine, block.into_iter().collect(), &[]))
}

/// The page of a loom: its reeds.
fn of_loom(mill: &Mill<'_>, machine: &str) -> Result<Option<Page>> {
    let Some(trial) = mill.woven(machine)? else { return Ok(None) };
    let likely = trial.plan.likely();
    let owned =
        trial.plan.tree.goods.iter().filter_map(|good| good.reeds(&Values { given: &likely }));
    let blocks: Vec<Block> = owned.map(|owns| wheels(&trial, &owns)).collect();
    let names: Vec<&str> = trial
        .result
        .cautions
        .iter()
        .filter(|(name, _)| name == machine)
        .flat_map(|(_, names)| names.iter().copied())
        .collect();
    Ok(sheet(machine, blocks, &names))
}
