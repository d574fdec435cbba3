//! What the reader is shown is what the program gives.

use hankwise::calculation::flat;
use hankwise::plan::{Extent, Plan, Run, STAGES};

#[test]
fn the_first_screen_in_the_readme_is_a_real_one() {
    let plan = Plan::load("examples/first-lot.toml".as_ref()).unwrap();
    let result = plan.run(&Run { lots: 100_000, seed: 1, threads: 2 }).unwrap();
    let screen = result.report(Extent::First).text();
    let readme = include_str!("../README.md");
    let shown = readme.split("```text\n").nth(1).unwrap().split("```").next().unwrap();
    assert_eq!(shown.trim_end(), screen.trim_end());
}

/// The rows of a table of the guide.
fn part(section: &str) -> &'static str {
    let guide = include_str!("../docs/lot-file.md");
    let part = guide.split(&format!("### [{section}]")).nth(1).unwrap_or_default();
    part.split("\n### ").next().unwrap()
}

#[test]
fn the_guide_to_the_lot_file_names_every_key_of_a_stage() {
    let mut missing = Vec::new();
    for stage in STAGES {
        for item in flat(stage.asks) {
            let row = format!("| `{}` | {}", item.name(), item.meaning());
            if !part(stage.name).contains(&row) {
                missing.push(format!("[{}]: {row}", stage.name));
            }
        }
    }
    assert!(missing.is_empty(), "docs/lot-file.md lacks\n{}", missing.join("\n"));
}

#[test]
fn the_guide_to_the_lot_file_names_every_key() {
    let plan = Plan::load("examples/first-lot.toml".as_ref()).unwrap();
    for given in plan.given() {
        let (section, key) = given.key.rsplit_once('.').unwrap();
        let row = format!("| `{key}` | {} |", given.meaning);
        assert!(part(section).contains(&row), "docs/lot-file.md, [{section}]: {row}");
    }
}
