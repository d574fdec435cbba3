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

/// The text with what the advice says to promise, or to take in.
fn obeyed(text: &str, advice: &str, greasy: &str, goods: &[(&str, u32)]) -> [String; 2] {
    let (promise, rest) =
        advice.strip_prefix("Promise ").unwrap().split_once(", or take in ").unwrap();
    let mut fewer = text.to_owned();
    for (name, promised) in goods {
        let word = promise.replace(" and ", ", ");
        let word = word.split(", ").find(|part| part.contains(name));
        let n: u32 = word.map_or(0, |part| part.split(' ').next().unwrap().parse().unwrap());
        fewer = fewer.replace(&format!("promised = {promised}\n"), &format!("promised = {n}\n"));
    }
    let mass = rest.split(',').next().unwrap();
    [fewer, text.replace(&format!("greasy = \"{greasy}\""), &format!("greasy = \"{mass}\""))]
}

/// What the advice says, obeyed, makes the promise safe: 19 lots of 20 keep it.
#[test]
fn the_advice_obeyed_makes_the_promise_safe() {
    let first = std::fs::read_to_string("tests/lot/whole-lot.toml").unwrap();
    let short = std::fs::read_to_string("examples/short-lot.toml").unwrap();
    let lots = 20_000;
    // By the root of the number of lots, once for the lots that chose and once for those that judge.
    let resolved = 4.0 * (2.0 * 0.95 * 0.05 / f64::from(lots)).sqrt();
    let cases = [
        (&first, "80.00 kg", [("throw", 12), ("hank", 240)]),
        (&short, "36.5 kg", [("blanket", 5), ("hank", 125)]),
    ];
    for (text, greasy, goods) in cases {
        let of = |text: &str, seed| {
            let run = Run { lots: lots as usize, seed, threads: 2 };
            Plan::parse(text, "lot.toml").unwrap().run(&run).unwrap()
        };
        let advice = of(text, 1).advice.unwrap();
        assert!(advice.ends_with(", to be 95 % sure."), "{advice}");
        for remedy in obeyed(text, &advice, greasy, &goods) {
            assert_ne!(&remedy, text, "{advice}");
            let (same, other) = (of(&remedy, 1), of(&remedy, 77));
            assert!(same.spare.chance.unwrap() >= 0.95 && same.advice.is_none(), "{advice}");
            let chance = other.spare.chance.unwrap();
            assert!(chance >= 0.95 - resolved, "{advice}: {chance}");
        }
    }
}

/// Without simulated lots the advice is for the planned values, and they keep it.
#[test]
fn the_advice_for_the_planned_values_makes_them_enough() {
    let text = std::fs::read_to_string("examples/short-lot.toml").unwrap();
    let planned = |text: &str| Plan::parse(text, "s.toml").unwrap().run(&Run::planned()).unwrap();
    let result = planned(&text);
    let [message] = &result.shortfalls[..] else { panic!("{:?}", result.shortfalls) };
    let (place, _) = message.split_once(": goods.hank.promised: planned ").unwrap();
    let line: usize = place.strip_prefix("s.toml:").unwrap().parse().unwrap();
    assert!(text.lines().nth(line - 1).unwrap().starts_with("promised = 125"), "{message}");
    let advice = result.advice.unwrap();
    for remedy in obeyed(&text, &advice, "36.5 kg", &[("blanket", 5), ("hank", 125)]) {
        assert_ne!(remedy, text);
        let result = planned(&remedy);
        assert!(result.planned_enough() && result.advice.is_none(), "{advice}");
        assert!(result.shortfalls.is_empty());
    }
}

/// A shortfall names every good that falls short, with its own number.
#[test]
fn a_shortfall_names_every_good() {
    let text = std::fs::read_to_string("tests/lot/whole-lot.toml").unwrap();
    let text = text.replace("80.00 kg", "20.00 kg");
    let result = Plan::parse(&text, "lot.toml").unwrap().run(&Run::planned()).unwrap();
    let [throw, hank] = &result.goods[..] else { panic!("{:?}", result.goods) };
    assert!(throw.planned > 0.0 && throw.planned < 12.0 && hank.planned == 0.0);
    let short = format!("{} throws and all 240 hanks short.", 12.0 - throw.planned);
    assert!(result.answer().join(" ").contains(&short), "{:?}", result.answer());
    assert_eq!(result.shortfalls.len(), 2);
}

/// Whether it can be made is said at the top, whatever the promise; each thing against it is named.
#[test]
fn obstacles_are_counted_at_the_top() {
    let first = std::fs::read_to_string("tests/lot/whole-lot.toml").unwrap();
    let run = |text: &str| Plan::parse(text, "lot.toml").unwrap().run(&Run::planned()).unwrap();
    let result = run(&first);
    assert!(result.obstacles.is_empty(), "{:?}", result.obstacles);
    let screen = result.report(Extent::First).text();
    assert!(screen.lines().take(5).any(|line| line.contains("Can it be made: yes")), "{screen}");
    // Fibres in the section go with the single's count: at 1,000 m/100 g there are far fewer than 100.
    let fine = first.replace("330 m/100g", "1000 m/100g");
    let fibres = |text: &str| run(text).working("mule.fibres").unwrap().value();
    assert!(fibres(&fine) < 100.0 && fibres(&first) > 100.0);
    let small = first.replace("80.00 kg", "2.5 kg");
    let wheels = first.replace("twist_wheels = [60, 64, 68]", "twist_wheels = [28]");
    for (text, name) in
        [(&fine, "mule.fibres"), (&small, "card.held_up"), (&wheels, "mule.twist_wheel")]
    {
        let result = run(text);
        assert!(result.obstacles.iter().any(|o| o.starts_with(name)), "{:?}", result.obstacles);
        let screen = result.report(Extent::First).text();
        let top: String = screen.lines().take(5).collect::<Vec<_>>().join(" ");
        let n = result.obstacles.len();
        assert!(top.contains(&format!("Can it be made: {n} obstacle")), "{screen}");
        assert!(screen.contains(&format!("{name}: ")), "{screen}");
    }
    assert!(run(&small).obstacles[0].contains("keeps"), "{:?}", run(&small).obstacles);
}

/// The note on the folding twist is of the yarn's own number of ends.
#[test]
fn the_twist_ratio_is_judged_by_its_own_number_of_ends() {
    let first = std::fs::read_to_string("tests/lot/whole-lot.toml").unwrap();
    for (ends, note) in [(2, "two-fold"), (3, "three-fold"), (4, "judge")] {
        let text = first
            .replace("\nends = 2 ", &format!("\nends = {ends} "))
            .replace("\nends = 2\n", &format!("\nends = {ends}\n"));
        let result = Plan::parse(&text, "lot.toml").unwrap().run(&Run::planned()).unwrap();
        let ratio = result.settings.iter().find(|s| s.key == "twister.twist_ratio").unwrap();
        assert!(ratio.note.starts_with(note), "{ends}: {}", ratio.note);
    }
}
