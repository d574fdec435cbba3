//! The cost of a lot as tables.

use super::lot::{LotCostInputs, LotCostResults};
use super::price::Selling;
use super::rates::StageCost;
use crate::calculation::Check;
use crate::quantity::print::{figure, fixed, of_kind};
use crate::quantity::{Duration, Kind};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

type Inputs = LotCostInputs<f64>;
type Results = LotCostResults<f64>;

fn money(x: f64) -> String {
    fixed(x, 2)
}

/// Goods and stages, as tables.
pub(super) fn report(given: &Inputs, found: &Results, _: &Check<'_>) -> Report {
    let name = given.name.as_ref().map_or_else(String::new, |name| format!("{name}: "));
    Report {
        title: format!("{name}what the lot costs, with the planned values"),
        blocks: vec![goods(given, found), stages(given, found)],
    }
}

fn goods(given: &Inputs, found: &Results) -> Block {
    let mut names = vec![
        ("goods", Left),
        ("pieces", Right),
        ("joint", Right),
        ("own", Right),
        ("whole", Right),
        ("a piece", Right),
    ];
    if given.selling.is_some() {
        names.push(("price", Right));
    }
    let dash = || "–".to_owned();
    let mut rows: Vec<Vec<String>> = Vec::new();
    for (goods, cost) in given.goods.iter().zip(&found.goods) {
        let mut row = vec![
            cost.name.clone(),
            goods.pieces.map_or_else(dash, |pieces| figure(pieces.value())),
            money(cost.joint_share.value()),
            money(cost.own_cost.value()),
            money(cost.cost.value()),
            cost.cost_per_piece.map_or_else(dash, |each| money(each.value())),
        ];
        if given.selling.is_some() {
            row.push(cost.price_per_piece.map_or_else(dash, |price| money(price.value())));
        }
        rows.push(row);
    }
    let (joint, whole) = (found.joint_cost.value(), found.cost.value());
    let left_over = found.left_over_cost.value();
    let unpriced = unpriced(found);
    let lot = if unpriced.is_empty() { "the lot" } else { "the lot, as far as priced" };
    let ends = [("yarn left over", left_over, 0.0, left_over), (lot, joint, whole - joint, whole)];
    for (name, joint, own, whole) in ends {
        let mut row = vec![name.to_owned(), String::new(), money(joint), money(own), money(whole)];
        row.resize(names.len(), String::new());
        rows.push(row);
    }
    let mut foot = vec![
        "joint: wool and all stages up to the yarn, shared by the clean dry fibre in the yarn that is taken; own: reel, cone, loom, finish.".to_owned(),
    ];
    if !unpriced.is_empty() {
        foot.push(format!("Not priced, and in no cost above: {}.", unpriced.join(", ")));
    }
    foot.extend(given.selling.as_ref().map(|selling| match selling {
        Selling::Margin(g) => {
            format!("Price: with a margin of {} on the price.", of_kind(g.value(), Kind::Margin))
        }
        Selling::MarkUp(u) => {
            format!("Price: with a mark-up of {} on the cost.", of_kind(u.value(), Kind::MarkUp))
        }
    }));
    foot.push("Value added tax and other taxes on sales are not included.".to_owned());
    Block { foot, ..Block::of("What the goods cost", &names, rows) }
}

fn stages(given: &Inputs, found: &Results) -> Block {
    let whole = found.cost.value();
    // There are no shares of a cost of nothing.
    let share = |cost: f64| {
        if whole == 0.0 {
            "–".to_owned()
        } else {
            format!("{} %", fixed(100.0 * cost / whole, 1))
        }
    };
    let mut rows: Vec<Vec<String>> = Vec::new();
    let mut last = String::new();
    let mut add = |place: &str, what: &str, goods: &str, hours: Option<f64>, cost: f64| {
        let shown = if place == last { "" } else { place };
        let hours = hours.map_or(String::new(), |h| fixed(h, 2));
        rows.push(
            [shown, what, goods, &hours, &money(cost), &share(cost)].map(str::to_owned).to_vec(),
        );
        place.clone_into(&mut last);
    };
    add("intake", "wool", "", None, found.greasy_cost.value());
    for stage in &found.stages {
        lines(stage, |what, hours, cost| add(&stage.name, what, "", hours, cost));
    }
    for stage in &found.own_stages {
        let (goods, name) = stage.name.rsplit_once('.').unwrap_or(("", &stage.name));
        lines(&stage.costs, |what, hours, cost| add(name, what, goods, hours, cost));
    }
    let unpriced = unpriced(found);
    let what = if unpriced.is_empty() { "" } else { "as far as priced" };
    add("whole", what, "", None, whole);
    let mut foot = Vec::new();
    if !unpriced.is_empty() {
        foot.push(format!("Not priced: {}.", unpriced.join(", ")));
    }
    if given.overhead.is_none() && given.hourly_overhead.is_none() {
        foot.push("Overhead is not included.".to_owned());
    }
    if let Some(hours) = found.person_hours {
        foot.push(format!("Hours of people in all: {}.", fixed(hours.value(), 2)));
    }
    let heads = [
        ("stage", Left),
        ("what", Left),
        ("for", Left),
        ("hours", Right),
        ("cost", Right),
        ("share", Right),
    ];
    Block { foot, ..Block::of("What each stage costs", &heads, rows) }
}

/// The stages for which nothing was said to be paid; those after the yarn once for all goods.
pub(super) fn unpriced(found: &Results) -> Vec<&str> {
    let mut names: Vec<&str> = Vec::new();
    let stages = found.stages.iter().map(|stage| (stage.name.as_str(), stage));
    let own = found.own_stages.iter().map(|stage| {
        (stage.name.rsplit_once('.').map_or(stage.name.as_str(), |(_, name)| name), &stage.costs)
    });
    for (name, stage) in stages.chain(own) {
        let paid = [stage.machine_cost, stage.wages, stage.mass_cost, stage.cost_once];
        if paid.iter().all(Option::is_none) && !names.contains(&name) {
            names.push(name);
        }
    }
    names
}

/// Tells what is paid at a stage, with the hours where it is paid by the hour.
fn lines(stage: &StageCost<f64>, mut tell: impl FnMut(&str, Option<f64>, f64)) {
    let time = stage.paid_time.map(Duration::value);
    let people = stage.person_hours.map(Duration::value);
    let all = [
        ("machine", time, stage.machine_cost),
        ("people", people, stage.wages),
        ("by the kilogram", None, stage.mass_cost),
        ("once for the lot", None, stage.cost_once),
        ("overhead on the above", None, stage.overhead_cost),
        ("overhead by the hour", time, stage.hourly_overhead_cost),
    ];
    for (what, hours, cost) in all {
        if let Some(cost) = cost {
            tell(what, hours, cost.value());
        }
    }
}
