//! The lots: the same bytes however they are made, and the distribution that was asked for. Where a
//! sample is compared with a distribution, four standard errors are allowed, for a fixed seed.
#![allow(clippy::float_cmp)] // the same bytes are the same values

use hankwise::plan::{Layer, Plan, PlanResult, Run, Spread};
use hankwise::quantity::Kind;

mod lot;
use lot::{LOT, known, set};

/// The 95 % and the 80 % point of the normal distribution (any table).
const Z95: f64 = 1.644_853_626_951_472_7;
const Z80: f64 = 0.841_621_233_572_914_2;

fn run(text: &str, lots: usize, seed: u64, threads: usize) -> PlanResult {
    Plan::parse(text, "lot.toml").unwrap().run(&Run { lots, seed, threads }).unwrap()
}

/// A share found among `n` lots where `p` is expected.
fn near_share(found: f64, p: f64, n: usize) -> bool {
    (found - p).abs() <= 4.0 * (p * (1.0 - p) / n as f64).sqrt()
}

fn mean_and_deviation(all: &[f64]) -> (f64, f64) {
    let n = all.len() as f64;
    let mean = all.iter().sum::<f64>() / n;
    let squares = all.iter().map(|x| (x - mean).powi(2)).sum::<f64>();
    (mean, (squares / (n - 1.0)).sqrt())
}

#[test]
fn the_same_bytes_for_any_number_of_threads() {
    let lots = 7000; // three whole blocks and a part
    let one = run(LOT, lots, 11, 1);
    for threads in [1, 2, 3, 16] {
        let other = run(LOT, lots, 11, threads);
        assert_eq!(one.samples.spare, other.samples.spare, "{threads} threads");
        assert_eq!(one.samples.pieces, other.samples.pieces, "{threads} threads");
        assert_eq!(one.measure_first, other.measure_first, "{threads} threads");
        assert_eq!(one.spare.band, other.spare.band);
        assert_eq!(one.spare.chance, other.spare.chance);
        let bands = |r: &PlanResult| r.stages.iter().map(|s| s.band).collect::<Vec<_>>();
        assert_eq!(bands(&one), bands(&other));
    }
    let plan = Plan::parse(LOT, "lot.toml").unwrap();
    let needed =
        [1, 2, 3].map(|threads| plan.needed(&[], 0.9, &Run { lots, seed: 11, threads }).unwrap());
    assert!(needed.iter().all(|n| n.greasy_mass == needed[0].greasy_mass));
}

#[test]
fn another_seed_makes_other_draws() {
    let (a, b) = (run(LOT, 500, 1, 2), run(LOT, 500, 2, 2));
    let alike = a.samples.spare.iter().zip(&b.samples.spare).filter(|(a, b)| a == b).count();
    assert_eq!(alike, 0);
    // The likely values rest on no draw.
    assert_eq!(a.spare.planned, b.spare.planned);
    assert_eq!(a.goods[1].unrounded, b.goods[1].unrounded);
}

#[test]
fn a_draw_does_not_depend_on_how_many_are_made() {
    let (few, many) = (run(LOT, 100, 4, 1), run(LOT, 5000, 4, 2));
    assert_eq!(few.samples.spare, many.samples.spare[..100]);
}

#[test]
fn values_that_are_known_need_no_simulated_lots() {
    let result = run(&known(), 1000, 1, 1);
    assert_eq!((result.simulated, result.spare.chance, result.measure_first.len()), (0, None, 0));
}

/// Section, key, kind; low, likely and high in base units.
type Figure = (&'static str, &'static str, Kind, [f64; 3]);

/// Values that a lot has uncertain one at a time.
const FIGURES: [Figure; 7] = [
    ("lot", "clean", Kind::Fraction, [0.485, 0.52, 0.55]),
    ("sort", "rejects", Kind::Fraction, [0.05, 0.08, 0.12]),
    ("card", "loss", Kind::Fraction, [0.04, 0.05, 0.07]),
    ("card", "held_up", Kind::Mass, [0.45, 0.60, 0.85]),
    ("mule", "loss", Kind::Fraction, [0.02, 0.03, 0.045]),
    ("loom", "take_up", Kind::TakeUp, [0.07, 0.08, 0.095]),
    ("finish", "length_shrinkage", Kind::Shrinkage, [0.085, 0.10, 0.12]),
];

fn typed(x: f64, kind: Kind) -> String {
    if kind == Kind::Mass { format!("\"{x:?} kg\"") } else { format!("{x:?}") }
}

fn uncertain(text: &str, (section, key, kind, range): Figure) -> String {
    let [low, likely, high] = range.map(|x| typed(x, kind));
    set(text, section, key, &format!("{{ low = {low}, likely = {likely}, high = {high} }}"))
}

/// How the lot file spreads a value.
fn spread(value: Figure) -> Spread {
    let plan = Plan::parse(&uncertain(&known(), value), "lot.toml").unwrap();
    let key = format!("{}.{}", value.0, value.1);
    plan.given().iter().find(|g| g.key == key).unwrap().spread
}

#[test]
fn low_likely_and_high_are_quantiles_of_the_spread() {
    let more = [
        // No logit or logarithm of zero and less: spread as they are.
        ("dust", "loss", Kind::Fraction, [0.0, 0.02, 0.03]),
        ("card", "held_up", Kind::Mass, [0.0, 0.6, 0.85]),
        ("finish", "width_shrinkage", Kind::Shrinkage, [-0.01, 0.02, 0.05]),
        // To one side only.
        ("scour", "loss", Kind::Fraction, [0.01, 0.01, 0.03]),
    ];
    for value in FIGURES.into_iter().chain(more) {
        let (_, key, kind, [low, likely, high]) = value;
        let spread = spread(value);
        for (z, wanted) in [(-Z95, low), (0.0, likely), (Z95, high)] {
            let got = spread.at(z, f64::NAN);
            assert!((got - wanted).abs() <= 1e-12 * high, "{key} at {z}: {got}, not {wanted}");
        }
        // Rising all the way, and within what is possible for a share.
        let all: Vec<f64> = (-60..=60).map(|k| spread.at(f64::from(k) / 10.0, f64::NAN)).collect();
        assert!(all.is_sorted());
        if kind == Kind::Fraction && low > 0.0 {
            assert!(all.iter().all(|x| *x > 0.0 && *x < 1.0));
        }
    }
    assert!(!spread(("dust", "loss", Kind::Fraction, [0.02; 3])).is_open());
}

/// With one value uncertain the spare is a rising or a falling function of it: a quantile of the
/// spare is the spare at the quantile of the value.
#[test]
fn one_uncertain_figure_gives_the_exact_distribution() {
    let n = 20_000;
    for value in FIGURES {
        let (section, key, kind, [low, likely, high]) = value;
        let spread = spread(value);
        let drawn = run(&uncertain(&known(), value), n, 21, 2).samples.spare;
        let at = |x: f64| run(&set(&known(), section, key, &typed(x, kind)), 0, 1, 1).spare.planned;
        let rising = at(high) > at(low);
        let [fifth, four_fifths] = [-Z80, Z80].map(|z| spread.at(z, likely));
        let quantiles =
            [(low, 0.05), (fifth, 0.2), (likely, 0.5), (four_fifths, 0.8), (high, 0.95)];
        for (x, p) in quantiles {
            let spare = at(x);
            let below = drawn.iter().filter(|m| **m < spare).count() as f64 / n as f64;
            let p = if rising { p } else { 1.0 - p };
            assert!(near_share(below, p, n), "{section}.{key} at {x}: {below}, not {p}");
        }
    }
}

#[test]
fn bands_are_quantiles_of_the_lots() {
    let n = 20_000;
    let result = run(&uncertain(&known(), FIGURES[0]), n, 8, 2);
    let spare = &result.samples.spare;
    let below = |x: f64| spare.iter().filter(|m| **m < x).count() as f64 / n as f64;
    let band = result.spare.band.unwrap();
    for (x, p) in [(band.low, 0.05), (band.middle, 0.5), (band.high, 0.95)] {
        assert!((below(x) - p).abs() <= 2.0 / n as f64, "{x} is at {}, not {p}", below(x));
    }
    // Fibre goes with the clean share, so its band has the share's ends, within sampling error.
    let sorted = result.stages[0].band.unwrap();
    for (got, clean) in [(sorted.low, 0.485), (sorted.middle, 0.52), (sorted.high, 0.55)] {
        let wanted = 80.0 * 0.92 * clean * 1.17;
        assert!((got / wanted - 1.0).abs() < 0.005, "{got}, not {wanted}");
    }
}

#[test]
fn the_only_uncertain_figure_drives_it_all_and_an_idle_one_nothing() {
    for value in FIGURES {
        let text = uncertain(&known(), value);
        // The diameter sets no mass; the room's regain only what the scale reads.
        let text = set(&text, "lot", "diameter", "{ mean = \"29 µm\", sd = \"1 µm\" }");
        let text = set(&text, "mule", "regain", "{ mean = \"16 %\", sd = \"2 %\" }");
        let result = run(&text, 20_000, 5, 2);
        let name = format!("{}.{}", value.0, value.1);
        assert_eq!(result.measure_first[0].key, name);
        assert!(result.measure_first[0].share > 0.98, "{:?}", result.measure_first[0]);
        for idle in &result.measure_first[1..] {
            assert!(idle.share < 0.005, "{idle:?}");
        }
    }
}

/// For a sum of independent parts the share of each is its part of the variance.
#[test]
fn shares_of_two_values_are_shares_of_the_variance() {
    let likely = run(&known(), 0, 1, 1);
    let slopes = likely.working("promise.spare").unwrap().sensitivities();
    let slope = |key: &str| slopes.iter().find(|s| s.input == key).unwrap().slope;
    // In points of percent, as the slopes are.
    for (clean, rejects) in [(0.5, 0.5), (1.0, 2.0), (0.5, 2.0)] {
        let spread = |mean: f64, sd: f64| format!("{{ mean = \"{mean} %\", sd = \"{sd} %\" }}");
        let text = set(&known(), "lot", "clean", &spread(52.0, clean));
        let text = set(&text, "sort", "rejects", &spread(8.0, rejects));
        let result = run(&text, 40_000, 9, 2);
        let variances =
            [slope("lot.clean") * clean, slope("sort.rejects") * rejects].map(|s| s * s);
        for (key, variance) in ["lot.clean", "sort.rejects"].into_iter().zip(variances) {
            let share = result.measure_first.iter().find(|d| d.key == key).unwrap().share;
            let wanted = variance / variances.iter().sum::<f64>();
            assert!((share - wanted).abs() < 0.025, "{key}: {share}, not {wanted}");
        }
    }
}

#[test]
fn swings_go_the_way_of_the_slopes() {
    let result = run(LOT, 20_000, 2, 2);
    for doubt in &result.measure_first {
        let (low, high) = doubt.swing;
        assert_eq!(high > low, doubt.key == "lot.clean", "{doubt:?}");
        let (short_low, short_high) = doubt.short;
        if doubt.share > 0.02 {
            assert_eq!(short_high < short_low, high > low, "{doubt:?}");
        }
    }
    let sum: f64 = result.measure_first.iter().map(|d| d.share).sum();
    assert!((sum - 1.0).abs() < 0.05, "independent values share the variance: {sum}");
}

#[test]
fn few_draws_leave_no_figure_out() {
    for lots in [1, 2, 10, 100] {
        for d in run(LOT, lots, 3, 1).measure_first {
            let all = [d.share, d.swing.0, d.swing.1, d.short.0, d.short.1];
            assert!(all.iter().all(|x| x.is_finite()), "{lots} lots: {d:?}");
        }
    }
}

#[test]
fn pieces_average_out_by_the_root_of_their_number() {
    let n = 20_000;
    let text = set(&known(), "goods.hank", "piece_cv", "\"8 %\"");
    let plan = Plan::parse(&text, "lot.toml").unwrap();
    let open: Vec<_> = plan.given().iter().filter(|g| g.spread.is_open()).collect();
    assert_eq!((open.len(), open[0].layer), (1, Layer::Piece));
    let result = run(&text, n, 6, 2);
    // 240 hanks, each off by 8 %: their sum is off by 8 % of a hank times √240.
    let exact = 0.08 * 240f64.sqrt();
    let (mean, deviation) = mean_and_deviation(&result.samples.spare);
    let error = exact / (n as f64).sqrt();
    assert!((mean - result.spare.planned).abs() < 4.0 * error, "{mean}");
    assert!((deviation - exact).abs() < 4.0 * error / 2f64.sqrt(), "{deviation}, not {exact}");
}

#[test]
fn the_lot_that_is_needed_meets_the_promise_as_often_as_asked() {
    let plan = Plan::parse(LOT, "lot.toml").unwrap();
    let n = 10_000;
    for confidence in [0.5, 0.8, 0.95] {
        let enough = plan
            .needed(&[], confidence, &Run { lots: n, seed: 1, threads: 2 })
            .unwrap()
            .greasy_mass;
        let text = set(LOT, "lot", "greasy", &format!("\"{enough:?} kg\""));
        let chance = |seed| run(&text, n, seed, 2).spare.chance.unwrap();
        // With the very same lots it is so to a draw; with others within the error of both.
        assert!((chance(1) - confidence).abs() <= 1.5 / n as f64, "{} for {confidence}", chance(1));
        let error = 4.0 * (2.0 * confidence * (1.0 - confidence) / n as f64).sqrt();
        assert!((chance(77) - confidence).abs() <= error, "{} for {confidence}", chance(77));
    }
}

#[test]
fn more_confidence_takes_more_wool() {
    let plan = Plan::parse(LOT, "lot.toml").unwrap();
    let enough = |goods: &[(String, u32)], confidence| {
        plan.needed(goods, confidence, &Run { lots: 4000, seed: 1, threads: 2 })
            .unwrap()
            .greasy_mass
    };
    let by_confidence: Vec<f64> = [0.1, 0.5, 0.9, 0.99].map(|c| enough(&[], c)).to_vec();
    assert!(by_confidence.is_sorted_by(|a, b| a < b), "{by_confidence:?}");
    let hanks: Vec<f64> = [10, 100, 101].map(|n| enough(&[("hank".to_owned(), n)], 0.9)).to_vec();
    assert!(hanks.is_sorted_by(|a, b| a < b), "{hanks:?}");
}

#[test]
fn a_run_that_is_stopped_gives_no_result() {
    let plan = Plan::parse(LOT, "lot.toml").unwrap();
    for threads in [1, 2, 3] {
        for lots in [10, 2048, 50_000] {
            let run = Run { lots, seed: 1, threads };
            let mut no = |_: usize| false;
            let error = plan.run_with(&run, &mut no).unwrap_err().to_string();
            assert!(error.contains("stopped") && error.contains(&lots.to_string()), "{error}");
            assert!(plan.needed_with(&[], 0.9, &run, &mut no).is_err());
        }
    }
    // Stopped on the way, after some were done.
    let mut seen = Vec::new();
    let mut until = |done: usize| {
        seen.push(done);
        done < 5000
    };
    assert!(plan.run_with(&Run { lots: 50_000, seed: 1, threads: 1 }, &mut until).is_err());
    assert!(seen.is_sorted() && *seen.last().unwrap() >= 5000, "{seen:?}");
    assert!(*seen.last().unwrap() < 50_000, "{seen:?}");
}

/// Each end of an uncertain value as the lot file writes it, keyed by section and key.
fn ends(text: &str) -> Vec<(String, String, [String; 2])> {
    let mut section = String::new();
    let mut all = Vec::new();
    for line in text.lines() {
        if let Some(name) = line.strip_prefix('[') {
            name.split(']').next().unwrap().clone_into(&mut section);
        }
        let Some((key, rest)) = line.split_once(" = {").filter(|_| !line.starts_with('#')) else {
            continue;
        };
        let of = |end: &str| {
            let rest = rest.split_once(&format!("{end} = ")).unwrap().1;
            rest.split([',', '}']).next().unwrap().trim().to_owned()
        };
        all.push((section.clone(), key.to_owned(), [of("low"), of("high")]));
    }
    all
}

/// What is spare where a value is low or high is what the plan gives with it fixed there, the other values
/// as planned; the chance of falling short is what it gives with the others drawn.
#[test]
fn low_and_high_are_what_a_plan_with_the_value_fixed_gives() {
    let lots = 10_000;
    for text in [LOT, include_str!("../examples/short-lot.toml")] {
        let rows = run(text, lots, 1, 2).measure_first;
        let ends = ends(text);
        assert_eq!(rows.len(), ends.len());
        for (section, key, ends) in ends {
            let name = format!("{section}.{key}");
            let row = rows.iter().find(|row| row.key == name).unwrap();
            let (spare, short) = ([row.swing.0, row.swing.1], [row.short.0, row.short.1]);
            for (place, end) in ends.iter().enumerate() {
                let fixed = set(text, &section, &key, end);
                let planned = run(&fixed, 0, 1, 1).spare.planned;
                assert!(
                    (spare[place] - planned).abs() < 1e-6,
                    "{name} at {end}: {row:?}, {planned}"
                );
                let found = 1.0 - run(&fixed, lots, 5, 2).spare.chance.unwrap();
                // Two bins on either side have about 350 lots.
                let near = 4.0
                    * (found.clamp(0.02, 0.98) * (1.0 - found.clamp(0.02, 0.98)) / 350.0).sqrt();
                assert!((short[place] - found).abs() < near, "{name} at {end}: {row:?}, {found}");
            }
        }
    }
}

/// A lot of which some simulated lots leave nothing is refused, and the value that does it is named.
#[test]
fn lots_that_cannot_be_are_refused() {
    let changes = [
        ("card", "held_up", "{ low = \"0.45 kg\", likely = \"0.60 kg\", high = \"850 kg\" }"),
        ("lot", "greasy", "{ low = \"1.0 kg\", likely = \"2.4 kg\", high = \"2.8 kg\" }"),
        ("reel", "reel_circumference", "{ low = \"0 m\", likely = \"1.5 m\", high = \"1.6 m\" }"),
    ];
    for (section, key, value) in changes {
        let text = set(LOT, section, key, value);
        let plan = Plan::parse(&text, "lot.toml").unwrap();
        let of = Run { lots: 5000, seed: 1, threads: 2 };
        let Err(error) = plan.run(&of) else {
            // Held at 0 without harm: then it is counted.
            let result = plan.run(&of).unwrap();
            assert!(result.warnings.iter().any(|w| w.contains("simulated lots drew this below")));
            assert!(result.samples.spare.iter().all(|x| x.is_finite()), "{section}.{key}");
            continue;
        };
        let error = error.to_string();
        assert!(error.contains("of 5000 simulated lots cannot be"), "{error}");
        assert!(error.contains(&format!(": {section}.{key}: ")), "{error}");
        // The plan without simulated lots stands.
        assert!(plan.run(&Run::planned()).is_ok());
    }
}

/// What is simulated can be, or the plan is refused: whatever spread a value has.
#[test]
fn every_simulated_lot_can_be() {
    let mut refused = 0;
    for wide in 1..30_u32 {
        let share = f64::from(wide) / 10.0;
        let text = set(LOT, "lot", "greasy", "\"3 kg\"");
        let high = 0.6 + share;
        let value = format!("{{ low = \"0.5 kg\", likely = \"0.6 kg\", high = \"{high} kg\" }}");
        let text = set(&text, "card", "held_up", &value);
        match Plan::parse(&text, "lot.toml").unwrap().run(&Run {
            lots: 500,
            seed: wide.into(),
            threads: 1,
        }) {
            Ok(result) => {
                assert!(result.samples.spare.iter().all(|x| x.is_finite()));
                for stage in &result.stages {
                    assert!(stage.band.unwrap().low > 0.0, "{stage:?}");
                }
            }
            Err(error) => {
                refused += 1;
                assert!(error.to_string().contains("cannot be"), "{error}");
            }
        }
    }
    assert!((5..28).contains(&refused), "{refused}");
}

/// Percentiles are what they say: as many lots lie below each as its name has percent; those of 5, 50
/// and 95 are low, likely and high to the last bit.
#[test]
fn a_percentile_has_its_share_of_the_lots_below() {
    let spread = |value: &str| {
        let plan = Plan::parse(&set(&known(), "card", "loss", value), "lot.toml").unwrap();
        let given = plan.given().iter().find(|given| given.key == "card.loss").unwrap();
        (given.spread, given.base())
    };
    let (tenths, likely) = spread(r#"{ p10 = "4 %", p50 = "5 %", "p97.5" = "8 %" }"#);
    for (share, value) in [(0.1, 0.04), (0.5, 0.05), (0.975, 0.08)] {
        let found = tenths.at(deviate(share), likely);
        assert!((found / value - 1.0).abs() < 1e-9, "{share}: {found}");
    }
    assert_eq!(
        spread(r#"{ p5 = "4 %", p50 = "5 %", p95 = "7 %" }"#),
        spread(r#"{ low = "4 %", likely = "5 %", high = "7 %" }"#),
    );
    for wrong in [
        r#"{ p10 = "4 %", p50 = "5 %" }"#,
        r#"{ p10 = "4 %", p20 = "5 %", p90 = "7 %" }"#,
        r#"{ p10 = "4 %", likely = "5 %", p50 = "5 %", p90 = "7 %" }"#,
        r#"{ p0 = "4 %", p50 = "5 %", p90 = "7 %" }"#,
        r#"{ p10 = "6 %", p50 = "5 %", p90 = "7 %" }"#,
    ] {
        let error = Plan::parse(&set(&known(), "card", "loss", wrong), "lot.toml").unwrap_err();
        assert!(error.to_string().contains("low"), "{wrong}: {error}");
    }
}

/// Shares that had to be held at an end are counted and said; those within are not.
#[test]
fn values_held_at_an_end_are_counted() {
    let lots = 20_000;
    let value = "{ low = \"0 %\", likely = \"2 %\", high = \"3 %\" }";
    let result = run(&set(&known(), "dust", "loss", value), lots, 3, 2);
    let [warning] = &result.warnings[..] else { panic!("{:?}", result.warnings) };
    let count = warning.split(": ").nth(2).unwrap().split(" of ").next().unwrap();
    let count: f64 = count.replace(',', "").parse().unwrap();
    // One in twenty lies below low.
    assert!(near_share(count / lots as f64, 0.05, lots), "{warning}");
    assert!(warning.contains("dust.loss") && warning.contains("below 0 %"), "{warning}");
    assert_eq!(run(LOT, 2000, 3, 2).warnings, Vec::<String>::new());
    let plan = Plan::parse(&set(&known(), "dust", "loss", value), "lot.toml").unwrap();
    let needed = plan.needed(&[], 0.95, &Run { lots, seed: 3, threads: 2 }).unwrap();
    assert_eq!(needed.warnings, result.warnings);
    assert!(needed.to_string().contains(&format!("Unusual: {warning}")), "{needed}");
}

/// A mean and a standard deviation that would pile lots up at an end are refused; what is proposed
/// instead is taken, and has that mean and that deviation.
#[test]
fn a_normal_share_that_piles_up_is_refused_with_what_to_write() {
    for (section, key, mean, sd) in [
        ("scour", "loss", 0.03, 0.02),
        ("card", "held_up", 0.60, 0.40),
        ("sort", "rejects", 0.08, 0.05),
    ] {
        let unit = if key == "held_up" { "kg" } else { "" };
        let value = format!("{{ mean = \"{mean} {unit}\", sd = \"{sd} {unit}\" }}");
        let value = if unit.is_empty() { value.replace(['"'], "") } else { value };
        let text = set(&known(), section, key, &value);
        let error = Plan::parse(&text, "lot.toml").unwrap_err().to_string();
        let write = error.split_once("write ").unwrap().1;
        let proposed = write.strip_prefix(&format!("{key} = ")).unwrap();
        let plan = Plan::parse(&set(&known(), section, key, proposed), "lot.toml").unwrap();
        let spread =
            plan.given().iter().find(|g| g.key == format!("{section}.{key}")).unwrap().spread;
        let drawn: Vec<f64> =
            (0..2000).map(|k| spread.at(deviate((f64::from(k) + 0.5) / 2000.0), mean)).collect();
        let (found, deviation) = mean_and_deviation(&drawn);
        assert!((found / mean - 1.0).abs() < 0.05, "{error}: {found}");
        assert!((deviation / sd - 1.0).abs() < 0.15, "{error}: {deviation}");
    }
    // All but one lot in a thousand within what is possible: taken.
    let text = set(&known(), "scour", "loss", "{ mean = \"3 %\", sd = \"0.9 %\" }");
    assert!(Plan::parse(&text, "lot.toml").is_ok());
}

/// The deviate that a share of a normal distribution lies below: bisection on the integral.
fn deviate(p: f64) -> f64 {
    let below = |z: f64| {
        // The series of Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.2.10.
        let (mut term, mut sum) = (z, z);
        for k in 1..60 {
            let k = f64::from(k);
            term *= -z * z / (2.0 * k);
            sum += term / (2.0 * k + 1.0);
        }
        0.5 + sum / std::f64::consts::TAU.sqrt()
    };
    let (mut low, mut high) = (-4.0, 4.0);
    for _ in 0..40 {
        let middle = f64::midpoint(low, high);
        if below(middle) < p { low = middle } else { high = middle }
    }
    low
}

/// The ends of a range meet the usual range as the likely value does, and slips are asked about.
#[test]
fn slips_in_low_and_high_and_in_bare_shares_are_asked_about() {
    let warned = |text: &str| Plan::parse(text, "lot.toml").unwrap().warnings().to_vec();
    let clean = "{ low = \"4.85 %\", likely = \"52 %\", high = \"55 %\" }";
    let [low] = &warned(&set(LOT, "lot", "clean", clean))[..] else { panic!() };
    assert!(low.contains("lot.clean: low = 4.85 % is unusual") && low.ends_with('?'), "{low}");
    let [high] = &warned(&set(LOT, "lot", "clean", "{ mean = \"70 %\", sd = \"5 %\" }"))[..] else {
        panic!()
    };
    assert!(high.contains("lot.clean: high = 78.22 %"), "{high}");
    let text = set(LOT, "label", "fat", "0.6");
    let [fat] = &warned(&text)[..] else { panic!() };
    assert!(fat.ends_with("Is \"0.6 %\" meant?"), "{fat}");
    let screen = Plan::parse(&text, "lot.toml").unwrap().run(&Run::planned()).unwrap();
    let screen = screen.report(hankwise::plan::Extent::First).text();
    let top: String = screen.lines().take(8).collect::<Vec<_>>().join(" ");
    assert!(top.contains("Is \"0.6 %\" meant?"), "{screen}");
}

/// A confidence that so few lots cannot show is refused, with a number of lots that can show it.
#[test]
fn a_confidence_takes_enough_lots() {
    let plan = Plan::parse(LOT, "lot.toml").unwrap();
    let needed =
        |confidence, lots| plan.needed(&[], confidence, &Run { lots, seed: 1, threads: 2 });
    let error = needed(0.999_999, 1000).unwrap_err().to_string();
    assert!(error.contains("1000 simulated lots cannot show a confidence of 99.9999 %"), "{error}");
    assert!(
        error.contains("at least 5,000,000 lots") && error.contains("at most 99.5 %"),
        "{error}"
    );
    assert!(needed(0.995, 1000).is_ok() && needed(0.9951, 1000).is_err());
    let error = needed(0.999, 1000).unwrap_err().to_string();
    let lots = error.split("at least ").nth(1).unwrap().split(' ').next().unwrap();
    assert!(needed(0.999, lots.replace(',', "").parse().unwrap()).is_ok(), "{error}");
}
