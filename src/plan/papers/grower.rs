//! The growers' sheets: wool in, goods out, where the rest went, in words that a grower knows.

use super::about;
use super::sheet::{Page, html};
use crate::plan::Plan;
use crate::plan::growers::Grower;
use crate::plan::result::{Account, PlanResult};
use crate::plan::screen::{listed, percent, pieces};
use crate::quantity::Kind;
use crate::quantity::print::fixed;
use crate::table::Align::{Left, Right};
use crate::table::Block;

/// The sheets: a page for each grower, or one for the only one.
pub(super) fn page(plan: &Plan, result: &PlanResult) -> String {
    let went = went(plan, result);
    let pages = if result.growers.is_empty() {
        let owner =
            plan.tree.fleeces.iter().map(|fleece| fleece.owner.as_str()).find(|o| !o.is_empty());
        let title =
            owner.map_or_else(|| result.name.clone(), |owner| format!("{}: {owner}", result.name));
        vec![Page {
            title,
            lead: vec![about(plan, result)],
            blocks: vec![wool(plan, result, result.intake), goods(result), went],
            ..Page::default()
        }]
    } else {
        let sheet = |grower: &Grower| Page {
            title: format!("{}: {}", result.name, owner(grower)),
            lead: vec![about(plan, result)],
            blocks: vec![
                wool(plan, result, (grower.greasy_mass, grower.fibre_mass)),
                own_goods(grower),
                went.clone(),
            ],
            ..Page::default()
        };
        result.growers.iter().map(sheet).collect()
    };
    html(&format!("Your wool: {}", result.name), pages)
}

fn owner(grower: &Grower) -> &str {
    if grower.owner.is_empty() { "a grower without a name" } else { &grower.owner }
}

/// What the grower brought, greasy and clean.
fn wool(plan: &Plan, result: &PlanResult, (greasy, fibre): (f64, f64)) -> Block {
    let say = &plan.say;
    let unit = say.mass_unit();
    let mut lead =
        vec![format!("You brought {} {unit} of wool as it was shorn.", say.mass(greasy))];
    if !result.weighed {
        let clean = fibre * (1.0 + result.stated_regain);
        lead.push(format!(
            "Once it is clean that is {} {unit} of wool, {} {unit} in every 100. {} {unit} of it are the water \
             that clean wool holds, however dry it feels.",
            say.mass(clean),
            fixed(100.0 * clean / greasy, 0),
            say.mass(clean - fibre),
        ));
    }
    Block { title: "Wool in".to_owned(), lead, ..Block::default() }
}

/// What is made of it.
fn goods(result: &PlanResult) -> Block {
    let known = result.simulated > 0;
    let row = |good: &crate::plan::GoodResult| {
        let mut row = vec![good.name.clone(), fixed(good.planned, 0)];
        row.extend(good.safe.map(|safe| fixed(safe, 0)));
        row
    };
    let mut names = vec![("goods", Left), ("planned", Right)];
    if known {
        names.push(("at least", Right));
    }
    let foot = if known {
        vec!["At least: 19 lots in 20 like this one give as many, or more.".to_owned()]
    } else {
        Vec::new()
    };
    Block { foot, ..Block::of("Goods out", &names, result.goods.iter().map(row).collect()) }
}

/// What one of several growers has of the goods.
fn own_goods(grower: &Grower) -> Block {
    let row = |(good, exact, whole): &(String, f64, f64)| {
        vec![good.clone(), fixed(*whole, 0), fixed(*exact, 2)]
    };
    let yours: Vec<String> =
        grower.goods.iter().map(|(good, _, whole)| pieces(*whole, good)).collect();
    Block {
        lead: vec![format!("Yours are {}, as planned.", listed(&yours))],
        foot: vec![
            "Your part: by the clean wool that you brought. The odd parts of a piece are settled in money."
                .to_owned(),
        ],
        ..Block::of(
            "Goods out",
            &[("goods", Left), ("yours", Right), ("your part", Right)],
            grower.goods.iter().map(row).collect(),
        )
    }
}

/// Where every kilogram went: rows that add up to the wool as it was shorn.
fn went(plan: &Plan, result: &PlanResult) -> Block {
    let say = &plan.say;
    let greasy = result.intake.0;
    let mut rows: Vec<(String, f64)> = Vec::new();
    for line in &result.account {
        if let Some((words, kg)) = in_goods(result, line).or_else(|| wasted(result, line)) {
            match rows.iter_mut().find(|(known, _)| *known == words) {
                Some((_, sum)) => *sum += kg,
                None => rows.push((words, kg)),
            }
        }
    }
    rows.sort_by_key(|(words, _)| !(words.starts_with("in the") || words.contains("left over")));
    rows.extend(parts(result));
    let told = rows.iter().map(|(words, kg)| (words, say.mass(*kg), *kg));
    // What a column of two decimals shows as nothing.
    let mut table: Vec<Vec<String>> = told
        .filter(|(_, _, kg)| say.number(*kg, Kind::Mass).abs() >= 5e-3)
        .map(|(words, mass, kg)| {
            let share = if kg < 0.0 { "–".to_owned() } else { percent(kg / greasy) };
            vec![words.clone(), mass, share]
        })
        .collect();
    table.push(vec!["your wool as it was shorn".to_owned(), say.mass(greasy), "100 %".to_owned()]);
    let whole = !result.growers.is_empty();
    if let (true, Some(last)) = (whole, table.last_mut()) {
        "all the wool as it was shorn".clone_into(&mut last[0]);
    }
    let unit = say.mass_unit();
    let mut foot = vec![
        "As planned. Wool is weighed with the water that is in it. Minus: what the mill put to the wool."
            .to_owned(),
    ];
    if whole {
        foot.insert(0, "For the wool of all growers together: it is worked as one.".to_owned());
    }
    Block {
        foot,
        ..Block::of(
            "Where it went",
            &[("", Left), (unit, Right), ("of the greasy wool", Right)],
            table,
        )
    }
}

/// What is in the goods, or left over of yarn and wool.
fn in_goods(result: &PlanResult, line: &Account) -> Option<(String, f64)> {
    let mass = line.stock.total();
    if line.added {
        return (line.to == "yarn from stock")
            .then(|| ("yarn from the mill's stock".to_owned(), -mass));
    }
    let words = match line.to.as_str() {
        "goods" => {
            let two = |name: &str| pieces(2.0, name).trim_start_matches("2 ").to_owned();
            let good = result.goods.iter().find(|good| good.name == line.stage);
            format!("in the {}", good.map_or_else(|| line.stage.clone(), |good| two(&good.name)))
        }
        "left over" => "yarn left over".to_owned(),
        "left over, unspun" => "wool left over, not spun".to_owned(),
        "left over, scoured" => "scoured wool left over".to_owned(),
        _ => return None,
    };
    Some((words, mass))
}

/// Wool that left on the way, with the water in it.
fn wasted(result: &PlanResult, line: &Account) -> Option<(String, f64)> {
    let wool = line.stock.fibre + line.stock.water;
    if line.added || line.stock.fibre <= 0.0 {
        return None;
    }
    let words = match (result.weighed, line.to.as_str()) {
        // The clean wool is not known: dirt and water go with it.
        (true, "fibre in the liquor") => "washed out".to_owned(),
        (_, "fibre in the liquor") => "fine wool lost in the wash".to_owned(),
        (_, "rejects") => "sorted out".to_owned(),
        (_, "held up in machine") => "left in the card".to_owned(),
        (_, "lost") => format!("lost at: {}", line.stage),
        (_, to) => format!("wool to: {to}"),
    };
    Some((words, wool))
}

/// What was on the wool and left without it, and what the mill put to it.
fn parts(result: &PlanResult) -> Vec<(String, f64)> {
    let of = |part: fn(&Account) -> f64| -> f64 {
        let lines = result.account.iter().filter(|line| in_goods(result, line).is_none());
        lines.map(|line| if line.added { -part(line) } else { part(line) }).sum()
    };
    let water = of(|line| if wool_goes(line) { 0.0 } else { line.stock.water });
    let words = if water < 0.0 { "water taken up" } else { "water that dried off" };
    [
        ("grease, sweat and dirt", of(|line| line.stock.grease)),
        ("burrs, seeds and straw", of(|line| line.stock.vegetable)),
        (words, water),
        ("oil that the mill put on, still in the goods", of(|line| line.stock.oil)),
        ("dye that the mill put on", of(|line| line.stock.dye)),
    ]
    .map(|(words, kg)| (words.to_owned(), kg))
    .to_vec()
}

/// Wool goes with this line, and its water with it.
fn wool_goes(line: &Account) -> bool {
    !line.added && line.stock.fibre > 0.0
}
