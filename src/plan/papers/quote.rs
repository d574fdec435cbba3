//! The quotation: what can be promised of the wool as it is described, and on what conditions.

use super::about;
use super::sheet::{Page, html};
use super::words::Words;
use crate::plan::advice::intake;
use crate::plan::result::{GoodResult, PlanResult};
use crate::plan::screen::{listed, pieces};
use crate::plan::{Plan, Terms};
use crate::quantity::print::fixed;
use crate::table::Align::{Left, Right};
use crate::table::Block;

/// The quotation.
pub(super) fn page(plan: &Plan, result: &PlanResult) -> String {
    let words = Words::new(plan, result);
    let blocks = vec![promise(plan, result), price(result, &words), conditions(plan, result)];
    let sign = Block::of(
        "Agreed",
        &[("", Left), ("name", Left), ("date", Left), ("signature", Left)],
        ["the grower", "the mill"]
            .map(|who| vec![who.to_owned(), String::new(), String::new(), String::new()])
            .to_vec(),
    );
    let title = format!("Quotation: {}", result.name);
    let mut lead = vec![about(plan, result)];
    lead.extend(result.obstacles.iter().map(|obstacle| {
        format!("Not to be promised before this is settled: {}.", words.plain(obstacle))
    }));
    html(
        &title,
        vec![Page { title: title.clone(), lead, blocks, fill: Some(sign), ..Page::default() }],
    )
}

/// What is promised: what 19 lots in 20 like this one give.
fn promise(plan: &Plan, result: &PlanResult) -> Block {
    let known = result.simulated > 0;
    let safe = |good: &GoodResult| good.safe.unwrap_or(good.planned);
    let row = |good: &GoodResult| {
        let mut row = vec![
            good.name.clone(),
            good.promised.map_or_else(|| "–".to_owned(), |n| fixed(n.into(), 0)),
            fixed(good.planned, 0),
        ];
        if known {
            row.push(fixed(safe(good), 0));
        }
        row
    };
    let mut names =
        vec![("goods", Left), ("asked for", Right), ("likely, if all goes as planned", Right)];
    if known {
        names.push(("safe to promise", Right));
    }
    let all: Vec<String> = result.goods.iter().map(|good| pieces(safe(good), &good.name)).collect();
    let lead = if known {
        format!(
            "We can safely promise {}: 19 lots in 20 like this one give that, or more.",
            listed(&all)
        )
    } else {
        format!("If everything goes as planned, the wool gives {}.", listed(&all))
    };
    let more = result.spare.safe_greasy_mass.filter(|_| result.advice.is_some());
    let more = more.map(|greasy| {
        let greasy = intake(greasy, &plan.say);
        format!("For all that is asked for to be safe to promise, bring {greasy} of such wool.")
    });
    Block {
        lead: vec![lead],
        foot: more.into_iter().collect(),
        ..Block::of("What we promise", &names, result.goods.iter().map(row).collect())
    }
}

/// The price, or where to ask for it.
fn price(result: &PlanResult, words: &Words) -> Block {
    let lead = prices(result, words)
        .unwrap_or_else(|| vec!["Prices on request: the mill's file has no tariffs.".to_owned()]);
    Block { title: "What it costs".to_owned(), lead, ..Block::default() }
}

/// The lines of the price, from the mill's tariffs; none where the mill has no tariffs.
fn prices(result: &PlanResult, words: &Words) -> Option<Vec<String>> {
    let quote = result.quote(&Terms::default()).ok()?;
    if quote.lines.is_empty() && quote.minimum_charge.is_none() {
        return None;
    }
    let money = |x: f64| format!("{} {}", quote.money, fixed(x, 2)).trim_start().to_owned();
    let mut lead = vec![format!(
        "{} for the whole lot as planned{}; that is {} for a kilogram as it was shorn{}. Taxes on sales are not \
         included.",
        money(quote.price),
        if quote.minimum_applies { ", our least charge" } else { "" },
        money(quote.price_per_greasy_kg),
        quote
            .price_per_finished_kg
            .map_or_else(String::new, |kg| format!(", {} for a kilogram finished", money(kg))),
    )];
    if let Some(band) = quote.band.filter(|band| band.high - band.low > 0.005) {
        lead.push(format!(
            "In 9 lots of 10 it comes to {} to {}: we charge by what is weighed.",
            money(band.low),
            money(band.high)
        ));
    }
    let goods = quote
        .goods
        .iter()
        .filter_map(|good| Some(format!("a {} {}", good.name, money(good.price_per_piece?))));
    let goods: Vec<String> = goods.collect();
    if !goods.is_empty() {
        lead.push(format!("In it: {}.", listed(&goods)));
    }
    if !quote.not_priced.is_empty() {
        let names: Vec<String> =
            quote.not_priced.iter().map(|(name, _)| said(&words.plain(name))).collect();
        lead.push(format!("Not in it, and to be agreed: {}.", listed(&names)));
    }
    Some(lead)
}

/// A machine of some goods in words: `cone.throw` is the cone for the throw.
fn said(name: &str) -> String {
    name.split_once('.')
        .map_or_else(|| name.to_owned(), |(at, good)| format!("{at} for the {good}"))
}

/// On what the promise depends.
fn conditions(plan: &Plan, result: &PlanResult) -> Block {
    let say = &plan.say;
    let kg = |x: f64| format!("{} {}", say.mass(x), say.mass_unit());
    let (greasy, fibre) = result.intake;
    let mut lead = vec![if result.weighed {
        format!("The wool is weighed when it comes; this is for {} as it was shorn.", kg(greasy))
    } else {
        format!(
            "The wool is weighed and tested when it comes. This is for {} as it was shorn, with {} of clean \
             wool in it; less or dirtier wool gives less, and we then tell you before we begin.",
            kg(greasy),
            kg(fibre * (1.0 + result.stated_regain))
        )
    }];
    let makes: Vec<String> = result.goods.iter().map(|good| good.name.clone()).collect();
    if makes.len() > 1 {
        lead.push(format!(
            "If the wool does not suffice for all, they are made in this order: {}.",
            listed(&makes)
        ));
    }
    let rest: Vec<&GoodResult> = result.goods.iter().filter(|good| good.takes_rest).collect();
    if let Some(good) = rest.first() {
        lead.push(format!(
            "What is left goes into more of the {}.",
            pieces(2.0, &good.name).trim_start_matches("2 ")
        ));
    }
    if !result.growers.is_empty() {
        lead.push(
            "The wool of several growers is worked together. Each has whole pieces by the clean wool that each \
             brought; the odd parts are settled in money."
                .to_owned(),
        );
    }
    lead.push(
        "Machines keep some wool, and some is lost at each: the sheet that comes with the goods says where \
         every kilogram went."
            .to_owned(),
    );
    if let Some(due) = plan.due() {
        lead.push(format!("The goods are due on {due}."));
    }
    Block { title: "Conditions".to_owned(), lead, ..Block::default() }
}
