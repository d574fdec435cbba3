//! What the reader is shown is what the program gives.

use hankwise::plan::{Extent, Plan, Run};

#[test]
fn the_first_screen_in_the_readme_is_a_real_one() {
    let plan = Plan::load("examples/first-lot.toml".as_ref()).unwrap();
    let result = plan.run(&Run { lots: 100_000, seed: 1, threads: 2 }).unwrap();
    let screen = result.report(Extent::First).text();
    let readme = include_str!("../README.md");
    let shown = readme.split("```text\n").nth(1).unwrap().split("```").next().unwrap();
    assert_eq!(shown.trim_end(), screen.trim_end());
}

#[test]
fn the_guide_to_the_lot_file_names_every_key() {
    let guide = include_str!("../docs/lot-file.md");
    let plan = Plan::load("examples/first-lot.toml".as_ref()).unwrap();
    for given in plan.given() {
        let (section, key) = given.key.rsplit_once('.').unwrap();
        let part = guide.split(&format!("### [{section}]")).nth(1).unwrap_or_default();
        let part = part.split("\n### ").next().unwrap();
        let row = format!("| `{key}` | {} |", given.meaning);
        assert!(part.contains(&row), "docs/lot-file.md, [{section}]: {row}");
    }
}
