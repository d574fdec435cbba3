//! A lot that cannot meet its promise: the shortfall is seen, and the account still balances.

use std::path::Path;

use hankwise::plan::{PARTS, Plan, PlanResult};

fn run(draws: usize) -> PlanResult {
    let plan = Plan::load(Path::new("examples/short-lot.toml")).unwrap();
    plan.run(draws, 3, 2, &mut |_| true).unwrap()
}

#[test]
fn the_shortfall_shows() {
    let result = run(10_000);
    assert!(!result.is_enough());
    // The blankets come first and are made; the hanks are what runs out.
    let [blanket, hank] = &result.goods[..] else { panic!("{:?}", result.goods) };
    assert_eq!((blanket.want, blanket.made), (Some(5), 5.0));
    assert!(blanket.chance.unwrap() > 0.99);
    assert!(hank.made < f64::from(hank.want.unwrap()));
    // Short by as many pieces as the promise lacks, told in the good that takes the rest.
    assert_eq!(result.margin.good, "hank");
    let short = hank.unrounded - f64::from(hank.want.unwrap());
    assert!(short < 0.0 && (result.margin.likely - short).abs() < 1e-9, "{:?}", result.margin);
    // Not hopeless, but unlikely; and the band of the margin says so too.
    let chance = result.margin.chance.unwrap();
    assert!(chance > 0.0 && chance < 0.1, "{chance}");
    assert!(result.margin.band.unwrap().likely < 0.0);
    assert!(result.margin.band.unwrap().low < result.margin.band.unwrap().likely);
}

#[test]
fn more_wool_would_do() {
    let plan = Plan::load(Path::new("examples/short-lot.toml")).unwrap();
    let greasy = plan.run(0, 1, 1, &mut |_| true).unwrap().greasy.0;
    let needed = plan.needed(&[], 0.9, 10_000, 3, 2, &mut |_| true).unwrap();
    assert_eq!(needed.goods, [("blanket".to_owned(), 5), ("hank".to_owned(), 125)]);
    assert!(needed.likely > greasy, "{} from {greasy}", needed.likely);
    assert!(needed.enough > needed.likely);
}

#[test]
fn the_figures_are_usual() {
    assert_eq!(run(0).warnings, Vec::<String>::new());
}

#[test]
fn every_kilogram_is_accounted_for() {
    let result = run(0);
    // What is on the wool when it comes in: all of it but the oil that the mill puts on.
    let (greasy, clean) = result.greasy;
    let mut sums = [0.0; PARTS.len()];
    for row in &result.account {
        let sign = if row.added { -1.0 } else { 1.0 };
        for (sum, part) in sums.iter_mut().zip(row.stock.parts()) {
            *sum += sign * part;
        }
    }
    let near = |a: f64, b: f64| (a - b).abs() < 1e-9 * greasy;
    assert!(near(sums[0], clean), "fibre {} of {clean}", sums[0]);
    assert!(near(sums[1], 0.13 * clean), "water {}", sums[1]);
    assert!(near(sums[2], 0.0), "oil {}", sums[2]);
    assert!(near(sums[4], 0.02 * clean), "vegetable matter {}", sums[4]);
    assert!(near(sums.iter().sum(), greasy), "{} of {greasy}", sums.iter().sum::<f64>());
}

/// What is written about the shortfall can be followed: either remedy makes the promise good.
#[test]
fn the_shortfall_says_where_and_what_to_write() {
    let text = std::fs::read_to_string("examples/short-lot.toml").unwrap();
    let plan = Plan::parse(&text, "short.toml").unwrap();
    let result = plan.run(0, 1, 1, &mut |_| true).unwrap();
    let [message] = &result.shortfalls[..] else { panic!("{:?}", result.shortfalls) };
    let (place, rest) = message.split_once(": goods.hank.promised: ").unwrap();
    let line: usize = place.strip_prefix("short.toml:").unwrap().parse().unwrap();
    assert!(text.lines().nth(line - 1).unwrap().starts_with("promised = 125"), "{message}");

    let fewer = rest.split("write ").nth(1).unwrap().split(',').next().unwrap();
    let greasy = rest.split("take in ").nth(1).unwrap().split(" of").next().unwrap();
    let remedies = [
        text.replace("promised = 125", &format!("promised = {fewer}")),
        text.replace("greasy = \"36.5 kg\"", &format!("greasy = \"{greasy}\"")),
    ];
    for remedy in remedies {
        assert_ne!(remedy, text);
        let result = Plan::parse(&remedy, "mended.toml").unwrap();
        let result = result.run(0, 1, 1, &mut |_| true).unwrap();
        assert!(result.is_enough() && result.shortfalls.is_empty(), "{message}");
    }
}
