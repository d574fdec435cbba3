//! Nothing is made and nothing vanishes: true of any lot, at every stage and in all. And backward
//! undoes forward.
#![allow(clippy::float_cmp)] // pieces are whole

mod cases;

use std::collections::BTreeSet;

use cases::cases;
use hankwise::plan::{PARTS, Plan, PlanResult, Run, STAGES, Stock};
use proptest::prelude::*;

mod lot;
use lot::{known, set, without};

/// The stages that a route can do without.
const OPTIONAL: [&str; 9] =
    ["sort", "scour", "dust", "dye", "loss", "oil", "tease", "winder", "hank-scour"];
const ROUTE: [&str; 12] = [
    "sort",
    "scour",
    "dust",
    "dye",
    "loss",
    "oil",
    "tease",
    "card",
    "mule",
    "twister",
    "winder",
    "hank-scour",
];
/// The tables of stages that the first lot does without.
const MORE: &str = "
[winder]
loss = \"0.5 %\"
drums = 12
winding_speed = \"300 m/min\"
efficiency = \"70 %\"
package_mass = \"1.2 kg\"

[dye]
loss = \"0.5 %\"
stays = \"2 %\"

[loss]
loss = \"0.5 %\"

[ring]
loss = \"3 %\"
spindles = 48
wanted_draft = 1.3
draft_constant = 52
draft_wheels = [36, 38, 40, 42]
twist_constant = \"12400 turns/m\"
twist_wheels = [36, 40, 50, 56]
spindle_speed = \"3600 rpm\"
efficiency = \"80 %\"
";

/// A lot with random figures.
#[derive(Clone, Debug)]
struct Lot {
    text: String,
    greasy: f64,
    clean: f64,
    regain: f64,
    vegetable: f64,
}

fn share(x: f64) -> String {
    format!("{x:?}")
}

fn mass(x: f64) -> String {
    format!("\"{x:?} kg\"")
}

/// What is given of the state in which wool leaves a stage: nothing, or shares of what comes in for
/// fat and vegetable matter, and a regain.
type State = (Option<f64>, Option<f64>, Option<f64>);

fn state() -> impl Strategy<Value = State> {
    let kept = || proptest::option::of(0.0..=1.0);
    (proptest::option::of(0.0..0.4), kept(), kept())
}

prop_compose! {
    fn lots()(
        greasy in 30.0..500.0,
        clean in 0.35..0.7,
        regain in 0.0..0.35,
        vegetable in 0.0..0.06,
        rejects in 0.0..0.25,
        losses in proptest::array::uniform10(0.0..0.15),
        states in proptest::array::uniform10(state()),
        ring in any::<bool>(),
        oil in (0.0..0.12, 0.0..0.25),
        held_up in 0.0..2.0,
        left_out in proptest::array::uniform9(proptest::bool::weighted(0.2)),
        throws in 0_u32..20,
    ) -> Lot {
        let mut text = known() + MORE;
        let left_out: Vec<&str> =
            OPTIONAL.iter().zip(left_out).filter(|(_, out)| *out).map(|(name, _)| *name).collect();
        for name in &left_out {
            text = without(&text, name);
        }
        let spun = |stage: &'static str| if ring && stage == "mule" { "ring" } else { stage };
        let kept = ROUTE.into_iter().filter(|s| !left_out.contains(s));
        let route: Vec<&str> = kept.map(spun).collect();
        text = without(&text, if ring { "mule" } else { "ring" });
        text = format!("route = {route:?}\n{text}");
        text = set(&text, "lot", "greasy", &mass(greasy));
        text = set(&text, "lot", "clean", &share(clean));
        text = set(&text, "lot", "regain", &share(regain));
        text = set(&text, "lot", "vegetable", &share(vegetable));
        text = set(&text, "card", "held_up", &mass(held_up));
        text = set(&text, "goods.throw", "promised", &throws.to_string());
        // Fat and vegetable matter only ever come off, but for the oiling.
        let (mut fat, mut burr) = (1.0 / clean - 1.0 - regain - vegetable, vegetable);
        let lossy = [
            "scour", "dust", "dye", "loss", "tease", "card", "mule", "twister", "winder", "hank-scour",
        ];
        for stage in route {
            match lossy.iter().position(|name| *name == if stage == "ring" { "mule" } else { stage }) {
                Some(at) => {
                    text = set(&text, stage, "loss", &share(losses[at]));
                    let (regain, kept_fat, kept_burr) = states[at];
                    for key in ["regain", "fat", "vegetable"] {
                        text = lot::unset(&text, stage, key);
                    }
                    if let Some(regain) = regain {
                        text = set(&text, stage, "regain", &share(regain));
                    }
                    if let Some(kept) = kept_fat {
                        // A share is written: the greasy wool may carry more than its fibre weighs.
                        fat = (fat * kept).min(0.99);
                        text = set(&text, stage, "fat", &share(fat));
                    }
                    if let Some(kept) = kept_burr {
                        burr *= kept;
                        text = set(&text, stage, "vegetable", &share(burr));
                    }
                }
                None if stage == "sort" => text = set(&text, "sort", "rejects", &share(rejects)),
                None => {
                    text = set(&text, "oil", "oil_added", &share(oil.0));
                    text = set(&text, "oil", "water_added", &share(oil.1));
                    fat += oil.0;
                }
            }
        }
        Lot { text, greasy, clean, regain, vegetable }
    }
}

fn run(text: &str) -> PlanResult {
    let plan = Plan::parse(text, "lot.toml").unwrap_or_else(|e| panic!("{e}\n{text}"));
    plan.run(&Run::planned()).unwrap()
}

/// What came on less what left, over the rows of the account that `which` picks, part by part.
fn came_on(result: &PlanResult, which: impl Fn(&str) -> bool) -> [f64; 6] {
    let mut sums = [0.0; PARTS.len()];
    for row in result.account.iter().filter(|row| which(&row.stage)) {
        let sign = if row.added { 1.0 } else { -1.0 };
        for (sum, part) in sums.iter_mut().zip(row.stock.parts()) {
            *sum += sign * part;
        }
    }
    sums
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn every_part_is_conserved(lot in lots()) {
        let result = run(&lot.text);
        let fibre = lot.greasy * lot.clean;
        let (water, burr) = (fibre * lot.regain, fibre * lot.vegetable);
        let greasy = Stock::from_parts([fibre, water, 0.0, lot.greasy - fibre - water - burr, burr, 0.0]);
        let near = |what: &str, k: usize, got: f64, wanted: f64| {
            prop_assert!(
                (got - wanted).abs() <= 1e-9 * lot.greasy,
                "{what}: {} {got}, wanted {wanted}\n{}", PARTS[k], lot.text
            );
            Ok(())
        };
        // At every stage.
        let mut before = greasy.parts();
        for stage in &result.stages {
            let change = came_on(&result, |s| s == stage.name);
            let after = stage.stock.parts();
            for k in 0..PARTS.len() {
                near(&stage.name, k, after[k], before[k] + change[k])?;
                prop_assert!(after[k] >= -1e-12 * lot.greasy, "{}: {} {}", stage.name, PARTS[k], after[k]);
            }
            before = after;
        }
        // From the greasy wool to the goods.
        let change = came_on(&result, |_| true);
        for (k, part) in greasy.parts().into_iter().enumerate() {
            near("in all", k, part + change[k], 0.0)?;
        }
    }

    /// What left has a mass: nothing comes back out of a sink, and only oil, water and dye come on.
    #[test]
    fn no_row_of_the_account_is_negative(lot in lots()) {
        let result = run(&lot.text);
        for row in &result.account {
            for (name, part) in PARTS.iter().zip(row.stock.parts()) {
                let on = !row.added || ["water", "oil", "dye"].contains(name);
                prop_assert!(part >= -1e-12 * lot.greasy, "{row:?}\n{}", lot.text);
                prop_assert!(on || part.abs() <= 1e-12 * lot.greasy, "{row:?}\n{}", lot.text);
            }
        }
    }

    /// The lot that is just enough makes just the goods, and nothing is left over.
    #[test]
    fn backward_undoes_forward(lot in lots(), hanks in 1_u32..400) {
        let text = set(&lot.text, "goods.hank", "promised", &hanks.to_string());
        let plan = Plan::parse(&text, "lot.toml").unwrap();
        let needed = plan.needed(&[], 0.5, &Run::planned()).unwrap().planned;
        let result = run(&set(&text, "lot", "greasy", &mass(needed)));
        for good in &result.goods {
            prop_assert_eq!(good.planned, f64::from(good.promised.unwrap()), "{}", &good.name);
        }
        prop_assert!(result.spare.planned.abs() < 1e-7, "{}", result.spare.planned);
        prop_assert!(result.planned_enough());
        // A kilogram in ten thousand less is not enough.
        let result = run(&set(&text, "lot", "greasy", &mass(needed * 0.9999)));
        prop_assert!(!result.planned_enough() && result.spare.planned < 0.0);
    }
}

#[test]
fn every_stage_is_tried() {
    let tried: BTreeSet<&str> = ROUTE.into_iter().chain(["ring"]).collect();
    let all: BTreeSet<&str> = STAGES.iter().map(|stage| stage.name).collect();
    assert_eq!(tried, all, "a new stage goes into ROUTE above, its values into lots()");
}

#[test]
fn wool_without_any_fat_has_no_oil() {
    let mut text = set(&known(), "scour", "fat", "0.0");
    text = set(&text, "oil", "oil_added", "0.0");
    text = set(&text, "hank-scour", "fat", "0.0");
    for stage in run(&text).stages.iter().filter(|s| s.name != "sort") {
        let Stock { oil, grease, .. } = stage.stock;
        assert!(oil.abs() + grease.abs() <= 1e-15, "{}: {:?}", stage.name, stage.stock);
    }
}
