//! Money: nothing of a cost is lost on its way, margins undo themselves, tariffs cross where they say.
#![allow(clippy::float_cmp)] // these sums come out exactly

mod cases;

use cases::cases;
use hankwise::calculation::{Given, Solved};
use hankwise::plan::{Plan, PlanResult, Run};
use hankwise::prelude::*;
use proptest::prelude::*;

/// A stage: loss, cost for a kilogram in, share sold and its value.
type Stage = (f64, f64, f64, f64);

fn value(solved: &Solved, name: &str) -> f64 {
    solved.find(name).unwrap().value
}

fn costing(price: f64, stages: &[Stage]) -> Solved {
    let mut given = mill::COST_THROUGH.blank();
    given.set_text("price_per_mass", &format!("{price:.17} /kg")).unwrap();
    for (k, (loss, cost, sold, value)) in stages.iter().enumerate() {
        let mut stage = vec![
            ("name", format!("s{k}")),
            ("loss", format!("{:.17} %", 100.0 * loss)),
            ("stage_cost_per_mass", format!("{cost:.17} /kg")),
        ];
        if *loss > 0.0 {
            stage.push(("sold_share", format!("{:.17} %", 100.0 * loss * sold)));
            stage.push(("waste_price_per_mass", format!("{value:.17} /kg")));
        }
        let stage: Vec<(&str, &str)> = stage.iter().map(|(n, t)| (*n, t.as_str())).collect();
        given = given.with_row("stages", &stage).unwrap();
    }
    mill::COST_THROUGH.solve(given).unwrap()
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
        let done = costing(price, &stages);
        let (mut mass, mut paid) = (1000.0, 1000.0 * price);
        for (loss, cost, sold, value) in &stages {
            paid += mass * cost - mass * loss * sold * value;
            mass *= 1.0 - loss;
        }
        let cost = value(&done, "cost_per_mass");
        prop_assert!((cost - paid / mass).abs() <= 1e-9 * cost.abs().max(1.0));
        // What must go in for one kilogram out.
        let first = value(&done, "s0.mass_in");
        prop_assert!((first - 1000.0 / mass).abs() <= 1e-9 * first);
        prop_assert!((value(&done, "bought_per_mass") - first * price).abs() <= 1e-9 * first * price);
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
        let (loss, held) = (ShareLost::base(loss), Mass::base(held));
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
            mill::COMPARE_TARIFFS.solve_texts(&[
                ("greasy_mass", &format!("{greasy:.17} kg")),
                ("tariff_in", &format!("{sent:.17} /kg")),
                ("tariff_out", &format!("{out:.17} /kg")),
                ("minimum_charge", &format!("{least:.17}")),
                ("yields", &format!("{:.17} %", 100.0 * share_out)),
            ])
        };
        let equal = value(&compare(0.5).unwrap(), "equal_yield");
        let at = compare(equal).unwrap();
        let (one, other) = (value(&at, "charge_in"), value(&at, "likely.charge_out"));
        prop_assert!((one - other).abs() <= 1e-9 * one);
    }
}

fn first_lot() -> PlanResult {
    let text = include_str!("lot/whole-lot.toml");
    Plan::parse(text, "lot.toml").unwrap().run(&Run::planned()).unwrap()
}

fn rates(whole: &[(&str, &str)], stages: &[&[(&str, &str)]]) -> Given {
    let given = mill::LOT_COST.blank().with_texts(whole).unwrap();
    stages.iter().fold(given, |given, stage| given.with_row("stages", stage).unwrap())
}

proptest! {
    #![proptest_config(cases(40))]
    #[test]
    fn the_parts_of_a_lots_cost_are_its_whole(
        wool in 0.0..20.0_f64, rate in proptest::collection::vec(0.0..50.0_f64, 8),
        overhead in proptest::option::of(0.0..1.0_f64), hourly in proptest::option::of(0.0..9.0_f64),
        margin in 0.0..0.6_f64,
    ) {
        let result = first_lot();
        let text: Vec<String> = rate.iter().map(|x| format!("{x:.12}")).collect();
        let per_mass = |k: usize| format!("{:.12} /kg", rate[k] / 10.0);
        let mut given = rates(
            &[
                ("price_per_mass", &format!("{wool:.12} /kg")),
                ("hourly_wage", &text[7]),
                ("margin", &format!("{:.12} %", 100.0 * margin)),
            ],
            &[
                &[("name", "card"), ("hourly_cost", &text[0]), ("fixed_cost", &text[5]), ("people", "1")],
                &[("name", "mule"), ("hourly_cost", &text[1]), ("people", "0.5")],
                &[("name", "loom"), ("hourly_cost", &text[2]), ("extra_time", "3 h")],
                &[("name", "scour"), ("stage_cost_per_mass", &per_mass(3)), ("extra_time", "2 h")],
                &[("name", "finish"), ("stage_cost_per_mass", &per_mass(4))],
                &[("name", "cone"), ("fixed_cost", &text[6])],
            ],
        );
        if let Some(share) = overhead {
            given.set_text("overhead", &format!("{:.12} %", 100.0 * share)).unwrap();
        }
        if let Some(hourly) = hourly {
            given.set_text("hourly_overhead", &format!("{hourly:.12}")).unwrap();
        }
        let cost = result.cost(&given).unwrap();
        let near = |a: f64, b: f64| (a - b).abs() <= 1e-9 * a.abs().max(1.0);
        let ends = ["machine_cost", "wages", "mass_cost", "cost_once", "overhead_cost",
            "hourly_overhead_cost", "greasy_cost"];
        let is_line = |name: &str| ends.iter().any(|end| {
            name.strip_suffix(end).is_some_and(|before| before.is_empty() || before.ends_with('.'))
        });
        let lines: f64 = cost.results().iter().filter(|r| is_line(&r.name)).map(|r| r.value).sum();
        let at = |name: &str| value(&cost, name);
        let borne = at("throw.cost") + at("hank.cost") + at("left_over_cost");
        prop_assert!(near(lines, at("cost")) && near(borne, at("cost")));
        // Joint costs go by clean dry fibre: alike for each kilogram of it.
        let fibre = |of: &str| result.working(&format!("{of}.yarn")).unwrap().value();
        prop_assert!(near(at("throw.joint_share") * fibre("hank"), at("hank.joint_share") * fibre("throw")));
        if hourly.is_none() {
            prop_assert!(near(at("hank.own_cost"), 0.0));
        }
        for good in &result.goods {
            let of = |what: &str| at(&format!("{}.{what}", good.name));
            prop_assert!(near(of("cost_per_piece") * good.planned, of("cost")));
            prop_assert!(near(of("price_per_piece") * (1.0 - margin), of("cost_per_piece")));
        }
        // Every number has its working, and it ends in that number.
        for found in cost.results() {
            let working = cost.working(&found.name).unwrap();
            prop_assert_eq!(working.value().to_bits(), found.value.to_bits());
        }
    }
}

#[test]
fn a_lots_cost_by_hand() {
    let result = first_lot();
    let time = |key: &str| result.settings.iter().find(|s| s.key == key).unwrap().value;
    let given = rates(
        &[("price_per_mass", "4.2 /kg"), ("hourly_wage", "14"), ("overhead", "25 %")],
        &[&[("name", "card"), ("hourly_cost", "18"), ("extra_time", "2 h"), ("people", "1.5")]],
    );
    let cost = result.cost(&given).unwrap();
    let hours = time("card.time") + 2.0;
    let expected = 80.0 * 4.2 + (hours * 18.0 + hours * 1.5 * 14.0) * 1.25;
    assert!((value(&cost, "cost") - expected).abs() < 1e-9);
    assert!((value(&cost, "card.person_hours") - 1.5 * hours).abs() < 1e-12);
    assert!((value(&cost, "person_hours") - 1.5 * hours).abs() < 1e-12);
    // Stages that nobody priced are named, at the total too; with every stage priced there are none.
    let text = cost.report().text();
    let total = text.lines().find(|line| line.trim_start().starts_with("the lot")).unwrap();
    assert!(total.contains("as far as priced"), "{text}");
    let named = "Not priced: sort, scour, dust, oil, tease, mule, twister, hank-scour, reel, cone, loom, finish.";
    assert!(text.split_whitespace().collect::<Vec<_>>().join(" ").contains(named), "{text}");
    let stages =
        ["sort", "scour", "dust", "oil", "tease", "card", "mule", "twister", "hank-scour", "reel"];
    let rows: Vec<[(&str, &str); 2]> = stages
        .into_iter()
        .chain(["cone", "loom", "finish"])
        .map(|name| [("name", name), ("fixed_cost", "1")])
        .collect();
    let rows: Vec<&[(&str, &str)]> = rows.iter().map(|row| &row[..]).collect();
    let all = result.cost(&rates(&[("price_per_mass", "0 /kg")], &rows)).unwrap();
    assert!(!all.report().text().contains("priced"), "{}", all.report().text());
    assert!((value(&all, "cost") - 13.0).abs() < 1e-9);
    // A fleece of one's own costs nothing, and neither does the lot then.
    let free = result.cost(&rates(&[("price_per_mass", "0 /kg")], &[])).unwrap();
    assert!(value(&free, "cost").abs() < 1e-12);
}

#[test]
fn what_is_paid_once_at_a_loom_is_shared_by_the_fibre_of_the_goods() {
    let mut given = rates(
        &[("greasy_mass", "10 kg"), ("price_per_mass", "0 /kg"), ("state_ratio", "1.17")],
        &[&[("name", "card")]],
    );
    given = given
        .with_row(
            "own_stages",
            &[("name", "loom"), ("fixed_cost", "30"), ("stage_cost_per_mass", "2 /kg")],
        )
        .unwrap();
    for (name, fibre) in [("throw", "4 kg"), ("scarf", "1 kg")] {
        let goods = given.row("goods").unwrap();
        let goods = goods.with_texts(&[("name", name), ("fibre_mass", fibre)]).unwrap();
        let goods = goods.with_row("times", &[("stage", "loom")]).unwrap();
        given.add_row("goods", goods).unwrap();
    }
    let cost = mill::LOT_COST.solve(given).unwrap();
    // 4 of 5 kg; 2 for each of 4 × 1.17 kg as weighed.
    assert!((value(&cost, "throw.loom.cost_once") - 24.0).abs() < 1e-12);
    assert!((value(&cost, "throw.loom.mass_cost") - 9.36).abs() < 1e-12);
    assert!((value(&cost, "cost") - (30.0 + 2.0 * 5.0 * 1.17)).abs() < 1e-12);
}

#[test]
fn what_the_plan_does_not_have_is_refused() {
    let result = first_lot();
    let refused = |whole: &[(&str, &str)], stage: &[(&str, &str)]| {
        let whole = [whole, &[("price_per_mass", "4 /kg")]].concat();
        result.cost(&rates(&whole, &[stage])).unwrap_err().to_string()
    };
    let error = refused(&[], &[("name", "crad"), ("hourly_cost", "18")]);
    assert!(error.contains("did you mean 'card'"), "{error}");
    let error = refused(&[], &[("name", "scour"), ("hourly_cost", "18")]);
    assert!(error.contains("no running time for scour") && error.contains("3 h"), "{error}");
    let error = refused(&[("hourly_wage", "14")], &[("name", "card")]);
    assert!(error.contains("nobody"), "{error}");
    let error = refused(&[], &[("name", "card"), ("time", "3 h")]);
    assert!(error.contains("card: time was given twice"), "{error}");
}

#[test]
fn a_costing_says_what_is_missing() {
    let price = mill::COST_THROUGH.blank().with_texts(&[("price_per_mass", "4 /kg")]).unwrap();
    let refused = |stage: &[(&str, &str)]| {
        let given = price.clone().with_row("stages", stage);
        given.and_then(|given| mill::COST_THROUGH.solve(given)).unwrap_err().to_string()
    };
    let error = refused(&[("name", "card"), ("hourly_cost", "18")]);
    assert!(error.contains("card.hourly_cost") && error.contains("without feed_rate"), "{error}");
    let error = refused(&[("name", "card"), ("los", "8 %")]);
    assert!(error.contains("did you mean 'loss'"), "{error}");
    let error = refused(&[("name", "card"), ("waste_price_per_mass", "1 /kg")]);
    assert!(error.contains("write its loss"), "{error}");
    let error = refused(&[
        ("name", "card"),
        ("loss", "5 %"),
        ("waste_price_per_mass", "1 /kg"),
        ("sold_share", "6 %"),
    ]);
    assert!(error.contains("card.sold_share: more is sold"), "{error}");
    let both = price.clone().with_texts(&[("margin", "30 %"), ("mark_up", "30 %")]).unwrap();
    let both = both.with_row("stages", &[("name", "card")]).unwrap();
    let error = mill::COST_THROUGH.solve(both).unwrap_err().to_string();
    assert!(error.contains("margin and mark_up") && error.contains("omit all but one"), "{error}");
    let one = [("greasy_mass", "80 kg"), ("tariff_in", "11 /kg"), ("yields", "50 %")];
    let error = mill::COMPARE_TARIFFS.solve_texts(&one).unwrap_err().to_string();
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

/// 20 kg at 10 a kilogram greasy are 200; finished, 8 kg at 15 would be 120, which is under the minimum
/// of 150, and 12 kg at 15 are 180.
#[test]
fn a_comparison_of_tariffs_charges_the_minimum() {
    let compared = mill::COMPARE_TARIFFS
        .solve_texts(&[
            ("greasy_mass", "20 kg"),
            ("tariff_in", "10 /kg"),
            ("tariff_out", "15 /kg"),
            ("minimum_charge", "150"),
            ("yields", "40 %, 60 %"),
        ])
        .unwrap();
    assert_eq!(value(&compared, "charge_in"), 200.0);
    let out = compared.results().iter().filter(|found| found.name.ends_with(".charge_out"));
    assert_eq!(out.map(|found| found.value).collect::<Vec<_>>(), [150.0, 180.0]);
}

/// Of 1.25 kg bought at 4 and worked at 1 a kilogram, 0.25 kg are lost: 5.00 bought and 1.25 added make
/// the 6.25 that the kilogram costs.
#[test]
fn a_costing_says_what_is_bought_and_what_is_added() {
    let done = costing(4.0, &[(0.2, 1.0, 0.0, 0.0)]);
    assert_eq!(value(&done, "bought_per_mass"), 5.0);
    assert_eq!(value(&done, "cost_per_mass"), 6.25);
}

/// The cones weigh what the scale reads: 11.40 kg of clean dry fibre with 17 % of water and 0.6 % of fat
/// on it, 13.41 kg.
#[test]
fn what_a_place_of_a_good_costs_by_the_kilogram_is_on_the_yarn_as_weighed() {
    let cone = [("name", "cone"), ("stage_cost_per_mass", "2 /kg")];
    let cost = first_lot().cost(&rates(&[("price_per_mass", "0 /kg")], &[&cone])).unwrap();
    let cost = value(&cost, "cost");
    assert!((cost - 2.0 * 11.40 * 1.176).abs() < 0.012, "{cost}");
}
