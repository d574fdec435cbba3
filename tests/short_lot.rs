//! A lot that cannot meet its promise: the shortfall is seen, and the account still balances.

use std::path::Path;

use hankwise::plan::{Extent, PARTS, Plan, PlanResult, Run};

fn run(draws: usize) -> PlanResult {
    let plan = Plan::load(Path::new("examples/short-lot.toml")).unwrap();
    plan.run(&Run { lots: draws, seed: 3, threads: 2 }).unwrap()
}

#[test]
fn the_shortfall_shows() {
    let result = run(10_000);
    assert!(!result.planned_enough());
    // The blankets come first and are made; the hanks are what runs out.
    let [blanket, hank] = &result.goods[..] else { panic!("{:?}", result.goods) };
    assert_eq!((blanket.promised, blanket.planned), (Some(5), 5.0));
    assert!(blanket.chance.unwrap() > 0.99);
    assert!(hank.planned < f64::from(hank.promised.unwrap()));
    // Short by as many pieces as the promise lacks, told in the good that takes the rest.
    assert_eq!(result.spare.good, "hank");
    let short = hank.unrounded - f64::from(hank.promised.unwrap());
    assert!(short < 0.0 && (result.spare.planned - short).abs() < 1e-9, "{:?}", result.spare);
    // Not hopeless, but unlikely; and the band of the margin says so too.
    let chance = result.spare.chance.unwrap();
    assert!(chance > 0.0 && chance < 0.1, "{chance}");
    assert!(result.spare.band.unwrap().middle < 0.0);
    assert!(result.spare.band.unwrap().low < result.spare.band.unwrap().middle);
}

/// The safe promise is what it says: 19 simulated lots of 20 make it, and not one piece more.
#[test]
fn nineteen_lots_in_twenty_keep_the_safe_promise() {
    let result = run(10_000);
    let safe: Vec<f64> = result.goods.iter().map(|g| g.safe.unwrap()).collect();
    let kept = |more: f64| {
        let lots = result.samples.pieces[0].iter().zip(&result.samples.pieces[1]);
        lots.filter(|(blankets, hanks)| **blankets >= safe[0] && **hanks >= safe[1] + more).count()
    };
    assert!(kept(0.0) >= 9500 && kept(1.0) < 9500, "{safe:?}: {}, {}", kept(0.0), kept(1.0));
    assert!(safe[1] < result.goods[1].planned);
}

/// The wool that keeps the promise agrees with the plan run backward over the same simulated lots, and
/// with the lots that keep it as it is.
#[test]
fn wool_for_the_promise_is_the_wool_needed() {
    let plan = Plan::load(Path::new("examples/short-lot.toml")).unwrap();
    let result = run(10_000);
    let needed = plan.needed(&[], 0.95, &Run { lots: 10_000, seed: 3, threads: 2 }).unwrap();
    let greasy = result.spare.safe_greasy_mass.unwrap();
    assert!(
        (greasy - needed.greasy_mass).abs() < 1e-9 * greasy,
        "{greasy} and {}",
        needed.greasy_mass
    );
    let text = std::fs::read_to_string("examples/short-lot.toml").unwrap();
    let more = text.replace("greasy = \"36.5 kg\"", &format!("greasy = \"{} kg\"", greasy + 1e-6));
    let plan = Plan::parse(&more, "more.toml").unwrap();
    let chance =
        plan.run(&Run { lots: 10_000, seed: 3, threads: 2 }).unwrap().spare.chance.unwrap();
    assert!((chance - 0.95).abs() < 2e-4, "{chance}");
}

/// The first screen fits a terminal of 80 columns.
#[test]
fn no_line_of_the_first_screen_is_too_wide() {
    for (file, lots) in [("first", 0), ("first", 2_000), ("short", 0), ("short", 2_000)] {
        let plan = Plan::load(format!("examples/{file}-lot.toml").as_ref()).unwrap();
        let text =
            plan.run(&Run { lots, seed: 1, threads: 2 }).unwrap().report(Extent::First).text();
        for line in text.lines() {
            assert!(line.chars().count() <= 80, "{line}");
        }
    }
}

#[test]
fn more_wool_would_do() {
    let plan = Plan::load(Path::new("examples/short-lot.toml")).unwrap();
    let greasy = plan.run(&Run::planned()).unwrap().intake.0;
    let needed = plan.needed(&[], 0.9, &Run { lots: 10_000, seed: 3, threads: 2 }).unwrap();
    assert_eq!(needed.goods, [("blanket".to_owned(), 5), ("hank".to_owned(), 125)]);
    assert!(needed.planned > greasy, "{} from {greasy}", needed.planned);
    assert!(needed.greasy_mass > needed.planned);
}

#[test]
fn the_values_are_usual() {
    assert_eq!(run(0).warnings, Vec::<String>::new());
}

#[test]
fn every_kilogram_is_accounted_for() {
    let result = run(0);
    // What is on the wool when it comes in: all of it but the oil that the mill puts on.
    let (greasy, clean) = result.intake;
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
    let result = plan.run(&Run::planned()).unwrap();
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
        let result = result.run(&Run::planned()).unwrap();
        assert!(result.planned_enough() && result.shortfalls.is_empty(), "{message}");
    }
}
