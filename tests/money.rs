//! Money: nothing of a cost is lost on its way, margins undo themselves, tariffs cross where they say.

mod cases;

use std::collections::BTreeMap;

use cases::cases;
use hankwise::mill::{CostedStage, Costing, Tariffs};
use hankwise::plan::{GoodCost, Plan, PlanResult, Rates, Selling};
use hankwise::prelude::*;
use hankwise::quantity::bare_number;
use proptest::prelude::*;

fn amount(number: f64, unit: &str) -> hankwise::quantity::Amount {
    parse(&format!("{number:.17} {unit}")).unwrap()
}

fn share(number: f64, kind: Kind) -> hankwise::quantity::Amount {
    bare_number(number, kind).unwrap()
}

/// A stage: loss, cost for a kilogram in, share sold and its value.
type Stage = (f64, f64, f64, f64);

fn costing(price: f64, stages: &[Stage]) -> Costing {
    let mut costing = Costing::new();
    costing.set("price", amount(price, "/kg"), None).unwrap();
    for (k, (loss, cost, sold, value)) in stages.iter().enumerate() {
        let mut stage = CostedStage::new(&format!("s{k}"));
        stage.set("loss", share(*loss, Kind::Fraction), None).unwrap();
        stage.set("cost", amount(*cost, "/kg"), None).unwrap();
        stage.set("waste_sold", share(loss * sold, Kind::Fraction), None).unwrap();
        stage.set("waste_value", amount(*value, "/kg"), None).unwrap();
        costing.stage(stage).unwrap();
    }
    costing
}

proptest! {
    /// A lot of money followed as money: what is paid less what waste brings is what the kilograms
    /// that come out have cost.
    #[test]
    fn cost_through_losses_is_what_was_paid(
        price in 0.5..20.0_f64,
        stages in proptest::collection::vec(
            (0.0..0.5_f64, 0.0..5.0_f64, 0.0..1.0_f64, 0.0..0.4_f64), 1..6),
    ) {
        let done = costing(price, &stages).work().unwrap();
        let (mut mass, mut paid) = (1000.0, 1000.0 * price);
        for (loss, cost, sold, value) in &stages {
            paid += mass * cost - mass * loss * sold * value;
            mass *= 1.0 - loss;
        }
        let cost = done.find("cost").unwrap().value;
        prop_assert!((cost - paid / mass).abs() <= 1e-9 * cost.abs().max(1.0));
        // What must go in for one kilogram out.
        let first = done.find("s0.in").unwrap().value;
        prop_assert!((first - 1000.0 / mass).abs() <= 1e-9 * first);
    }

    #[test]
    fn margin_and_mark_up_are_two_names_of_one_price(
        cost in 0.1..1000.0_f64, margin in 0.0..0.9_f64,
    ) {
        let (cost, margin) = (Money::base(cost), Margin::base(margin));
        let price = mill::price_at_margin(cost, margin).value();
        let same = mill::price_at_mark_up(cost, mill::mark_up_of_margin(margin)).value();
        prop_assert!((price - same).abs() <= 1e-12 * price);
        prop_assert!(((price - cost.value()) / price - margin.value()).abs() < 1e-12);
    }

    #[test]
    fn a_lot_at_break_even_leaves_nothing_and_a_larger_one_something(
        fixed in 0.0..500.0_f64, cost in 0.0..10.0_f64, loss in 0.0..0.5_f64,
        held in 0.0..5.0_f64, price in 25.0..80.0_f64,
    ) {
        let (fixed, cost, price) = (Money::base(fixed), CostPerMass::base(cost), CostPerMass::base(price));
        let (loss, held) = (Fraction::base(loss), Mass::base(held));
        let least = mill::break_even_lot_with_hold_up(fixed, cost, loss, held, price);
        let left = |mass: f64| {
            mill::lot_surplus(Mass::base(mass), cost, fixed, loss, held, price).value()
        };
        prop_assert!(left(least.value()).abs() < 1e-6);
        prop_assert!(left(least.value() * 1.1 + 0.1) > 0.0);
        // Without hold-up it is the plain rule on the margin of a kilogram taken in.
        let none = mill::break_even_lot_with_hold_up(fixed, cost, loss, Mass::base(0.0), price);
        let margin = CostPerMass::base((1.0 - loss.value()) * price.value() - cost.value());
        prop_assert!((none.value() - mill::break_even_lot(fixed, margin).value()).abs() < 1e-9);
    }

    #[test]
    fn at_the_equal_yield_both_tariffs_charge_alike(
        greasy in 1.0..500.0_f64, sent in 1.0..30.0_f64, out in 5.0..60.0_f64, least in 0.0..300.0_f64,
    ) {
        let compare = |share_out: f64| {
            let mut tariffs = Tariffs::new();
            tariffs.set("greasy", amount(greasy, "kg"), None).unwrap();
            tariffs.set("per_greasy", amount(sent, "/kg"), None).unwrap();
            tariffs.set("per_finished", amount(out, "/kg"), None).unwrap();
            tariffs.set("minimum", share(least, Kind::Money), None).unwrap();
            tariffs.set_yields(vec![(amount(100.0 * share_out, "%"), None)]).unwrap();
            tariffs.compare().unwrap()
        };
        let equal = compare(0.5).find("equal_yield").unwrap().value;
        let at = compare(equal);
        let charge = |name: &str| at.find(name).unwrap().value;
        let (one, other) = (charge("by_greasy"), charge("by_finished_likely"));
        prop_assert!((one - other).abs() <= 1e-9 * one);
    }
}

fn first_lot() -> PlanResult {
    let text = include_str!("../examples/first-lot.toml");
    Plan::parse(text, "lot.toml").unwrap().run(0, 1, 1, &mut |_| true).unwrap()
}

fn map(pairs: &[(&str, f64)]) -> BTreeMap<String, f64> {
    pairs.iter().map(|(k, v)| ((*k).to_owned(), *v)).collect()
}

proptest! {
    #![proptest_config(cases(40))]
    #[test]
    fn the_parts_of_a_lots_cost_are_its_whole(
        wool in 0.0..20.0_f64, rates in proptest::collection::vec(0.0..50.0_f64, 8),
        overhead in proptest::option::of(0.0..1.0_f64), hourly in proptest::option::of(0.0..9.0_f64),
        margin in 0.0..0.6_f64,
    ) {
        let result = first_lot();
        let rates = Rates {
            wool,
            hourly: map(&[("card", rates[0]), ("mule", rates[1]), ("loom", rates[2])]),
            per_kg: map(&[("scour", rates[3] / 10.0), ("finish", rates[4] / 10.0)]),
            once: map(&[("card", rates[5]), ("cone", rates[6])]),
            hours: map(&[("loom", 3.0), ("scour", 2.0)]),
            people: map(&[("card", 1.0), ("mule", 0.5)]),
            wage: Some(rates[7]),
            overhead,
            hourly_overhead: hourly,
            selling: Some(Selling::Margin(margin)),
        };
        let cost = result.cost(&rates).unwrap();
        let near = |a: f64, b: f64| (a - b).abs() <= 1e-9 * a.abs().max(1.0);
        let lines: f64 = cost.lines.iter().map(|l| l.cost).sum();
        let borne: f64 = cost.goods.iter().map(GoodCost::whole).sum::<f64>() + cost.left_over;
        prop_assert!(near(lines, cost.whole) && near(borne, cost.whole));
        // Joint costs go by clean dry fibre: alike for each kilogram of it.
        let [throw, hank] = &cost.goods[..] else { panic!("two goods") };
        prop_assert!(near(throw.joint * hank.fibre, hank.joint * throw.fibre));
        prop_assert!(near(hank.own, 0.0));
        for good in [throw, hank] {
            let (each, price) = (good.each.unwrap(), good.price.unwrap());
            prop_assert!(near(each * good.made, good.whole()));
            prop_assert!(near(price * (1.0 - margin), each));
        }
    }
}

#[test]
fn a_lots_cost_by_hand() {
    let result = first_lot();
    let time = |key: &str| result.settings.iter().find(|s| s.key == key).unwrap().value;
    let rates = Rates {
        wool: 4.2,
        hourly: map(&[("card", 18.0)]),
        hours: map(&[("card", 2.0)]),
        people: map(&[("card", 1.5)]),
        wage: Some(14.0),
        overhead: Some(0.25),
        ..Rates::default()
    };
    let cost = result.cost(&rates).unwrap();
    let hours = time("card.time") + 2.0;
    let expected = 80.0 * 4.2 + (hours * 18.0 + hours * 1.5 * 14.0) * 1.25;
    assert!((cost.whole - expected).abs() < 1e-9);
    assert!((cost.person_hours[0].1 - 1.5 * hours).abs() < 1e-12);
    // A fleece of one's own costs nothing, and neither does the lot then.
    let free = result.cost(&Rates::default()).unwrap();
    assert!(free.whole.abs() < 1e-12);
}

#[test]
fn what_the_plan_does_not_have_is_refused() {
    let result = first_lot();
    let refused = |rates: Rates| result.cost(&rates).unwrap_err().to_string();
    let error = refused(Rates { hourly: map(&[("crad", 18.0)]), ..Rates::default() });
    assert!(error.contains("did you mean 'card'"), "{error}");
    let error = refused(Rates { hourly: map(&[("scour", 18.0)]), ..Rates::default() });
    assert!(error.contains("hours={'scour': '3 h'}"), "{error}");
    let error = refused(Rates { wage: Some(14.0), ..Rates::default() });
    assert!(error.contains("nobody"), "{error}");
}

#[test]
fn a_costing_says_what_is_missing() {
    let mut stage = CostedStage::new("card");
    stage.set("hourly", share(18.0, Kind::Money), None).unwrap();
    let error = Costing::new().stage(stage).unwrap_err().to_string();
    assert!(error.contains("card.rate (") && error.contains("is missing"), "{error}");
    let mut costing = Costing::new();
    costing.set("margin", share(0.3, Kind::Margin), None).unwrap();
    let error = costing.set("mark_up", share(0.3, Kind::MarkUp), None).unwrap_err().to_string();
    assert!(error.contains("give one of them"), "{error}");
    let error = CostedStage::said("los").unwrap_err().to_string();
    assert!(error.contains("did you mean 'loss'"), "{error}");
    let mut tariffs = Tariffs::new();
    tariffs.set("greasy", amount(80.0, "kg"), None).unwrap();
    tariffs.set("per_greasy", amount(11.0, "/kg"), None).unwrap();
    let error = tariffs.compare().unwrap_err().to_string();
    assert!(error.contains("two tariffs"), "{error}");
}

#[test]
fn a_lot_that_pays_nothing_is_told_without_the_least_figure_of_the_computer() {
    for name in ["break_even_lot", "break_even_lot_with_hold_up"] {
        let formula = hankwise::catalogue::formulas().find(|f| f.name == name).unwrap();
        let said = formula.equations().join("\n");
        assert!(said.contains("if 0 < g, else no answer") && !said.contains("e-308"), "{said}");
    }
    let formula = hankwise::catalogue::formulas().find(|f| f.name == "break_even_lot").unwrap();
    assert!(((formula.evaluate)(&[120.0, 6.0]) - 20.0).abs() < 1e-12);
    assert!((formula.evaluate)(&[120.0, 0.0]).is_nan());
}

/// 20 kg at 10 a kilogram greasy; finished, 8 kg at 15 would be 120, which is under the minimum of 150,
/// and 12 kg at 15 are 180.
#[test]
fn a_comparison_of_tariffs_charges_the_minimum_and_says_which_is_dearest_and_by_how_much() {
    let mut tariffs = Tariffs::new();
    tariffs.set("greasy", amount(20.0, "kg"), None).unwrap();
    tariffs.set("per_greasy", amount(10.0, "/kg"), None).unwrap();
    tariffs.set("per_finished", amount(15.0, "/kg"), None).unwrap();
    tariffs.set("minimum", share(150.0, Kind::Money), None).unwrap();
    tariffs.set_yields([40.0, 60.0].map(|y| (amount(y, "%"), None)).to_vec()).unwrap();
    let compared = tariffs.compare().unwrap();
    let table = &compared.report().blocks[0];
    let row = |share: &str| table.rows.iter().find(|row| row[0] == share).unwrap().clone();
    assert_eq!(row("40 %"), ["40 %", "8.00", "200.00", "150.00", "greasy, by 50.00"]);
    assert_eq!(row("60 %"), ["60 %", "12.00", "200.00", "180.00", "greasy, by 20.00"]);
}

/// Of 1.25 kg bought at 4 and worked at 1 a kilogram, 0.25 kg are lost: 5.00 bought and 1.25 added make
/// the 6.25 that the kilogram costs.
#[test]
fn the_table_of_a_costing_says_what_each_stage_has_in_the_kilogram_that_comes_out() {
    let done = costing(4.0, &[(0.2, 1.0, 0.0, 0.0)]).work().unwrap();
    let rows = &done.report().blocks[0].rows;
    let of = |name: &str| rows.iter().find(|row| row[0] == name).unwrap()[5..].to_vec();
    assert_eq!(of("bought"), ["5.000", "80.0 %"]);
    assert_eq!(of("s0"), ["1.250", "20.0 %"]);
    assert_eq!(of("whole"), ["6.250", "100.0 %"]);
}

/// The cones weigh what the scale reads: 11.40 kg of clean dry fibre with 17 % of water and 0.6 % of fat
/// on it, 13.41 kg.
#[test]
fn what_a_place_of_a_good_costs_by_the_kilogram_is_on_the_yarn_as_weighed() {
    let rates = Rates { per_kg: map(&[("cone", 2.0)]), ..Rates::default() };
    let cost = first_lot().cost(&rates).unwrap();
    assert!((cost.whole - 2.0 * 11.40 * 1.176).abs() < 0.012, "{}", cost.whole);
}
