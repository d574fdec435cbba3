//! What the reader is shown is what the program gives.

use hankwise::calculation::flat;
use hankwise::plan::{Extent, Plan, Run, guide, tables};

#[test]
fn the_first_screen_in_the_readme_is_a_real_one() {
    let plan = Plan::load("examples/first-lot.toml".as_ref()).unwrap();
    let result = plan.run(&Run { lots: 100_000, seed: 1, threads: 2 }).unwrap();
    let screen = result.report(Extent::First).text();
    let readme = include_str!("../README.md");
    let shown = readme.split("```text\n").nth(1).unwrap().split("```").next().unwrap();
    assert_eq!(shown.trim_end(), screen.trim_end());
}

/// What stands around the part of the guide that the program writes.
const AROUND: [&str; 2] = ["<!-- written by the program: make guide -->\n", "<!-- end -->\n"];

#[test]
fn the_keys_in_the_guide_are_those_that_the_program_reads() {
    let path = "docs/lot-file.md";
    let text = std::fs::read_to_string(path).unwrap();
    let (before, rest) = text.split_once(AROUND[0]).expect("a line where the keys begin");
    let (_, after) = rest.split_once(AROUND[1]).expect("a line where the keys end");
    let wanted = format!("{before}{}\n{}{}{after}", AROUND[0], guide(), AROUND[1]);
    if std::env::var_os("HANKWISE_WRITE").is_some() {
        return std::fs::write(path, wanted).unwrap();
    }
    assert!(text == wanted, "{path} is not what the program reads; write it with: make guide");
}

#[test]
fn the_guide_has_every_value_of_the_examples() {
    let known: Vec<&str> = tables()
        .iter()
        .flat_map(|table| table.asks.clone())
        .flat_map(flat)
        .map(|item| item.name())
        .collect();
    for name in ["first-lot", "short-lot", "shawls", "crossbred", "two-looms", "nine-kilos"] {
        let plan = Plan::load(format!("examples/{name}.toml").as_ref()).unwrap();
        // Rooms and recipes have names of the user's own, and so have goods of which only the number is said.
        let own = |key: &str| {
            let short = key.starts_with("goods.") && key.matches('.').count() == 1;
            short || key.starts_with("room.") || key.starts_with("recipe.")
        };
        for given in plan.given().iter().filter(|given| !own(&given.key)) {
            let key = given.key.rsplit('.').next().unwrap();
            assert!(known.contains(&key), "{name}: no table has '{key}' ({})", given.key);
        }
    }
}
