//! A lot that is wound to cones: the figures of the winder against plain arithmetic.

use hankwise::plan::{Plan, PlanResult, Run, StageResult};

mod lot;
use lot::known;

/// Twelve drums of 300 m/min at 70 %, cones of 1.2 kg; a hundredth is lost, the rest is dried to 14 %.
const WINDER: &str = "
[winder]
loss = \"1 %\"
regain = \"14 %\"
drums = 12
winding_speed = \"300 m/min\"
efficiency = \"70 %\"
package_mass = \"1.2 kg\"
";

const BEFORE: [&str; 7] = ["sort", "scour", "dust", "oil", "tease", "card", "mule"];

fn plan(after_mule: &[&str]) -> hankwise::Result<Plan> {
    let route = [&BEFORE[..], after_mule].concat();
    Plan::parse(&format!("route = {route:?}\n{}{WINDER}", known()), "coned.toml")
}

fn run(after_mule: &[&str]) -> PlanResult {
    plan(after_mule).unwrap().run(&Run::planned()).unwrap()
}

fn stage<'a>(result: &'a PlanResult, name: &str) -> &'a StageResult {
    result.stages.iter().find(|stage| stage.name == name).unwrap()
}

fn set(result: &PlanResult, key: &str) -> f64 {
    let found = result.settings.iter().find(|setting| setting.key == key);
    found.unwrap_or_else(|| panic!("no {key}")).value
}

fn near(what: &str, got: f64, wanted: f64) {
    assert!((got - wanted).abs() <= 1e-9 * wanted.abs(), "{what}: {got}, wanted {wanted}");
}

/// The winder after `before`, which leaves a yarn whose count it says itself.
fn winds(route: &[&str], before: &str) {
    let result = run(route);
    let (fed, wound) = (&stage(&result, before).stock, &stage(&result, "winder").stock);
    near("fibre", wound.fibre, 0.99 * fed.fibre);
    near("water", wound.water, 0.14 * wound.fibre);
    near("fat", (wound.oil + wound.grease) / wound.fibre, (fed.oil + fed.grease) / fed.fibre);
    // The same fibre is in a metre, with the water that it now has.
    let state = wound.total() / wound.fibre / (fed.total() / fed.fibre);
    let count = set(&result, &format!("{before}.count")) * state;
    near("count", set(&result, "winder.count"), count);
    near("package_length", set(&result, "winder.package_length"), 1.2e6 / count);
    let full = (wound.total() / 1.2).floor();
    near("packages", set(&result, "winder.packages"), full);
    near("left_over", set(&result, "winder.left_over"), wound.total() - 1.2 * full);
    // 12 × 300 m/min × 0.7 are 151 200 m in an hour.
    near("output", set(&result, "winder.output"), 0.1512 * count);
    near("time", set(&result, "winder.time"), wound.total() / (0.1512 * count));
    near("package_time", set(&result, "winder.package_time"), 1.2e6 / count / 12_600.0);
}

#[test]
fn singles_are_wound() {
    winds(&["winder", "twister", "hank-scour"], "mule");
}

#[test]
fn folded_yarn_is_wound_in_oil() {
    winds(&["twister", "winder", "hank-scour"], "twister");
}

#[test]
fn folded_yarn_is_wound_scoured() {
    winds(&["twister", "hank-scour", "winder"], "hank-scour");
}

#[test]
fn what_is_not_spun_is_not_wound() {
    let route = ["sort", "scour", "dust", "oil", "tease", "card", "winder", "mule", "twister"];
    let text = format!("route = {route:?}\n{}{WINDER}", lot::without(&known(), "hank-scour"));
    let error = Plan::parse(&text, "coned.toml").unwrap_err().to_string();
    assert!(error.contains("'winder' cannot come before 'mule'; swap them"), "{error}");
    let error = plan(&["winder", "hank-scour", "twister"]).unwrap_err().to_string();
    assert!(error.contains("'hank-scour' cannot come before 'twister'"), "{error}");
}
