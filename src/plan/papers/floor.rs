//! The floor sheets: a page for each machine, in the order of work.

use super::mill::craft;
use super::sheet::{Page, capital, cautions, html};
use super::words::Words;
use super::{about, on_scale};
use crate::plan::result::{PlanResult, StageResult};
use crate::plan::stage::Setting;
use crate::plan::{GoodResult, Plan};
use crate::quantity::Kind;
use crate::quantity::print::{fixed, of_kind};
use crate::table::Align::{Left, Right};
use crate::table::Block;

/// Lines to fill in at a machine, for each wool or yarn that goes through it.
const LINES: usize = 3;

/// What a page is for.
struct Machine<'a> {
    name: &'a str,
    /// The wools or yarns that go through it, in the order of work.
    stages: Vec<&'a StageResult>,
    /// The goods that are made on it.
    goods: Vec<&'a GoodResult>,
}

/// The sheets.
pub(super) fn page(plan: &Plan, result: &PlanResult) -> String {
    let words = Words::new(plan, result);
    let machines = machines(plan, result);
    let of = machines.len();
    let pages = machines.iter().enumerate().map(|(place, machine)| {
        let mut page = sheet(plan, result, machine);
        page.title = format!("{}: {}", capital(machine.name), result.name);
        page.lead.insert(0, format!("{} · sheet {} of {of}", about(plan, result), place + 1));
        page.blocks = page.blocks.into_iter().map(|block| words.block(block)).collect();
        page
    });
    html(&format!("Floor sheets: {}", result.name), pages.collect())
}

/// The machines in the order of work: hanks are reeled before they are scoured.
fn machines<'a>(plan: &'a Plan, result: &'a PlanResult) -> Vec<Machine<'a>> {
    let mut all: Vec<Machine<'a>> = Vec::new();
    for stage in &result.stages {
        if let Some(machine) = all.iter_mut().find(|machine| machine.name == stage.machine) {
            machine.stages.push(stage);
        } else {
            all.push(Machine { name: &stage.machine, stages: vec![stage], goods: Vec::new() });
        }
    }
    let wet = plan.tree.all_passes().find(|pass| pass.stage.kind() == "hank-scour");
    for (good, made) in plan.tree.goods.iter().zip(&result.goods) {
        let mut names = good.machines();
        if names.is_empty() {
            names.push(&good.name);
        }
        for name in names {
            if let Some(machine) = all.iter_mut().find(|machine| machine.name == name) {
                machine.goods.push(made);
                continue;
            }
            let machine = Machine { name, stages: Vec::new(), goods: vec![made] };
            let wet = wet.filter(|_| good.is_reeled());
            let before = wet.and_then(|wet| all.iter().position(|m| m.name == wet.machine));
            all.insert(before.unwrap_or(all.len()), machine);
        }
    }
    for machine in &mut all {
        let order: Vec<&str> = result
            .changeovers
            .iter()
            .filter(|change| change.machine == machine.name)
            .map(|change| change.next.as_str())
            .collect();
        machine.stages.sort_by_key(|stage| order.iter().position(|next| *next == stage.of));
    }
    all
}

fn sheet(plan: &Plan, result: &PlanResult, machine: &Machine<'_>) -> Page {
    let mut blocks = Vec::new();
    blocks.extend(comes_off(plan, result, machine));
    blocks.extend(goods(plan, result, machine));
    let mine = |setting: &&Setting| {
        setting.stage == machine.name && (!machine.stages.is_empty() || !machine.goods.is_empty())
    };
    let mut of: Vec<&str> = machine.stages.iter().map(|stage| stage.of.as_str()).collect();
    for setting in result.settings.iter().filter(mine) {
        if !of.contains(&setting.of.as_str()) {
            of.push(&setting.of);
        }
    }
    for of in of {
        let settings = result.settings.iter().filter(mine).filter(|setting| setting.of == of);
        let (main, expect): (Vec<&Setting>, Vec<&Setting>) = settings.partition(|s| s.main);
        let title = |words: &str| {
            if of.is_empty() { capital(words) } else { format!("{}: {words}", capital(of)) }
        };
        let rows = |settings: &[&Setting]| -> Vec<Vec<String>> {
            let row = |s: &&Setting| vec![s.words.clone(), plan.say.of_setting(s), s.note.clone()];
            settings.iter().map(row).collect()
        };
        let names = [("", Left), ("", Right), ("", Left)];
        for (words, settings) in [("set and weigh", main), ("expect", expect)] {
            if !settings.is_empty() {
                blocks.push(Block::of(title(words), &names, rows(&settings)));
            }
        }
    }
    let lead = craft(result, |stage| machine.stages.iter().any(|s| s.name == stage));
    if !lead.is_empty() {
        blocks.push(Block { title: "Look, listen, feel".to_owned(), lead, ..Block::default() });
    }
    let mut names: Vec<&str> =
        machine.stages.iter().flat_map(|stage| stage.cautions).copied().collect();
    let after = result.cautions.iter().filter(|(name, _)| name == machine.name);
    names.extend(after.flat_map(|(_, names)| names.iter().copied()));
    Page {
        lead: changes(result, machine),
        blocks,
        fill: Some(to_fill(machine)),
        last: cautions(&names).into_iter().collect(),
        ..Page::default()
    }
}

/// The changes on the machine within the lot.
fn changes(result: &PlanResult, machine: &Machine<'_>) -> Vec<String> {
    let here = result.changeovers.iter().filter(|change| change.machine == machine.name);
    here.filter(|change| !change.before.is_empty())
        .map(|change| {
            format!(
                "After {} change over to {}: {}.",
                change.before,
                change.next,
                of_kind(change.time, Kind::Duration)
            )
        })
        .collect()
}

/// What goes in and must come off, as the scale reads it.
fn comes_off(plan: &Plan, result: &PlanResult, machine: &Machine<'_>) -> Option<Block> {
    let say = &plan.say;
    let packages = |stage: &StageResult| {
        let made =
            result.settings.iter().find(|s| s.at == stage.name && s.key.ends_with(".packages"));
        made.map(|s| say.of_setting(s))
    };
    let banded = machine.stages.iter().any(|stage| stage.band.is_some());
    let packed = machine.stages.iter().any(|stage| packages(stage).is_some());
    let row = |stage: &&StageResult| {
        let through: f64 = result
            .account
            .iter()
            .filter(|line| line.stage == stage.name)
            .map(|line| if line.added { -line.stock.total() } else { line.stock.total() })
            .sum();
        let out = stage.stock.total();
        let what = if stage.of.is_empty() {
            stage.makes.clone()
        } else {
            format!("{}: {}", stage.of, stage.makes)
        };
        let mut row = vec![what, say.mass(out + through), say.mass(out)];
        if banded {
            let band = on_scale(stage);
            row.push(band.map_or_else(String::new, |b| {
                format!("{} to {}", say.mass(b.low), say.mass(b.high))
            }));
        }
        if packed {
            row.push(packages(stage).unwrap_or_default());
        }
        row
    };
    let mut names = vec![("", Left), ("goes in", Right), ("must come off", Right)];
    if banded {
        names.push(("9 lots in 10", Right));
    }
    if packed {
        names.push(("full packages", Right));
    }
    let title = format!("Weigh, {} as the scale reads", say.mass_unit());
    let foot = if banded {
        vec!["Outside these: weigh again, then tell whoever plans the lot.".to_owned()]
    } else {
        Vec::new()
    };
    (!machine.stages.is_empty()).then(|| Block {
        foot,
        ..Block::of(title, &names, machine.stages.iter().map(row).collect())
    })
}

/// The goods that are made on the machine.
fn goods(plan: &Plan, result: &PlanResult, machine: &Machine<'_>) -> Option<Block> {
    let say = &plan.say;
    let row = |good: &&GoodResult| {
        let mass: f64 = result
            .account
            .iter()
            .filter(|line| line.stage == good.name && line.to == "goods")
            .map(|line| line.stock.total())
            .sum();
        let band = good
            .band
            .map_or_else(String::new, |b| format!("{} to {}", fixed(b.low, 0), fixed(b.high, 0)));
        let promised = good.promised.map_or_else(|| "–".to_owned(), |n| fixed(n.into(), 0));
        vec![good.name.clone(), promised, fixed(good.planned, 0), band, say.mass(mass)]
    };
    let mass = format!("finished, {}", say.mass_unit());
    let names = [
        ("goods", Left),
        ("promised", Right),
        ("planned", Right),
        ("9 lots in 10", Right),
        (mass.as_str(), Right),
    ];
    (!machine.goods.is_empty())
        .then(|| Block::of("Make", &names, machine.goods.iter().map(row).collect()))
}

/// Lines for what is weighed or counted.
fn to_fill(machine: &Machine<'_>) -> Block {
    let what: Vec<String> = machine
        .stages
        .iter()
        .map(|stage| stage.of.clone())
        .chain(machine.goods.iter().map(|good| good.name.clone()))
        .collect();
    // One wool alone needs no name.
    let one = what.iter().all(String::is_empty);
    let lines = if one { LINES } else { 2 };
    let blank = || vec![String::new(); 4];
    let row = |what: &String| if one { blank() } else { [vec![what.clone()], blank()].concat() };
    let rows = what.iter().flat_map(|what| std::iter::repeat_with(move || row(what)).take(lines));
    let mut names =
        vec![("date", Left), ("time", Left), ("weight or pieces", Left), ("initials", Left)];
    if !one {
        names.insert(0, ("of", Left));
    }
    Block::of("Fill in", &names, rows.collect())
}
