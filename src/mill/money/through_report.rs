//! The cost of a kilogram through losses, as tables.

use super::through::{CostThroughInputs, CostThroughResults, GoodsCost, StageThrough};
use crate::calculation::Check;
use crate::quantity::print::{figure, fixed, of_kind};
use crate::quantity::{CostPerMass, Kind};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

type Inputs = CostThroughInputs<f64>;
type Results = CostThroughResults<f64>;

fn money(x: f64) -> String {
    fixed(x, 3)
}

fn percent(x: f64) -> String {
    format!("{} %", fixed(100.0 * x, 1))
}

pub(super) fn report(given: &Inputs, found: &Results, _: &Check<'_>) -> Report {
    Report {
        title: "Cost through losses".to_owned(),
        blocks: vec![route(given, found), goods(given, found)],
    }
}

fn route(given: &Inputs, found: &Results) -> Block {
    let whole = found.cost_per_mass.value();
    // There are no shares of a cost of nothing.
    let share = |x: f64| if whole == 0.0 { "–".to_owned() } else { percent(x / whole) };
    let row = |cells: [String; 5], of: f64| {
        cells.into_iter().chain([money(of), share(of)]).collect::<Vec<String>>()
    };
    let none = String::new;
    let bought = found.bought_per_mass.value();
    let price = given.price_per_mass.value();
    let mut rows = vec![row(["bought".to_owned(), none(), none(), none(), money(price)], bought)];
    for (stage, through) in given.stages.iter().zip(&found.stages) {
        let StageThrough { mass_in, added_per_mass, waste_value_per_mass, cost_per_mass, .. } =
            through;
        let (mass, added) = (mass_in.value(), added_per_mass.value());
        let loss = percent(stage.loss.value());
        let cost = money(cost_per_mass.value());
        let cells = [stage.name.clone(), loss, fixed(mass, 4), money(added), cost];
        rows.push(row(cells, added * mass));
        if let Some(sold) = waste_value_per_mass.map(CostPerMass::value) {
            let name = format!("{}, waste sold", stage.name);
            rows.push(row([name, none(), none(), money(-sold), none()], -sold * mass));
        }
    }
    rows.push(row(["whole".to_owned(), none(), none(), none(), money(whole)], whole));
    let mut foot = vec![
        "A loss is a share of what goes into its stage; added: for a kilogram that goes in."
            .to_owned(),
    ];
    let on_cost = given.overhead.map(|overhead| {
        format!("{} on what each stage costs", of_kind(overhead.value(), Kind::MarkUp))
    });
    let by_hour = given.hourly_overhead.map(|hourly| {
        format!("{} for an hour of each machine that has a feed rate", figure(hourly.value()))
    });
    let both: Vec<String> = [on_cost, by_hour].into_iter().flatten().collect();
    foot.push(if both.is_empty() {
        "Overhead is not included.".to_owned()
    } else {
        format!("Overhead in what is added: {}; none on what is bought.", both.join(", and "))
    });
    // Waste may bring more than all has cost, and wool may be paid to be taken.
    if whole > 0.0 && price >= 0.0 {
        foot.push(format!("What is bought is {} of the cost.", percent(bought / whole)));
    }
    let columns = [
        ("stage", Left),
        ("loss", Right),
        ("kg in", Right),
        ("added", Right),
        ("cost of a kg after", Right),
        ("in the kg out", Right),
        ("share", Right),
    ];
    Block { foot, ..Block::of("For one kilogram that comes out", &columns, rows) }
}

fn goods(given: &Inputs, found: &Results) -> Block {
    let mut columns = vec![("goods", Left), ("mass", Right), ("cost", Right)];
    if given.selling.is_some() {
        columns.push(("price", Right));
    }
    let row = |(place, goods): (usize, &GoodsCost<f64>)| {
        let mass = given.goods.as_ref().map_or(1.0, |all| all[place].mass.value());
        let mut row =
            vec![goods.name.clone(), of_kind(mass, Kind::Mass), money(goods.cost.value())];
        row.extend(goods.price.map(|price| money(price.value())));
        row
    };
    let title = match &given.selling {
        None => "Cost of the goods".to_owned(),
        Some(selling) => format!("Cost and price of the goods, at {}", selling.words()),
    };
    Block {
        foot: vec!["Value added tax and other taxes on sales are not included.".to_owned()],
        ..Block::of(title, &columns, found.goods.iter().enumerate().map(row).collect())
    }
}
