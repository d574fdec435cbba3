//! Folding, shares and gearing: identities that hold whatever the figures.
#![allow(clippy::float_cmp)] // what is exact is compared exactly

mod cases;

use cases::cases;
use hankwise::mill::CHANGE_WHEEL;
use hankwise::prelude::*;
use proptest::prelude::*;

fn answer(name: &str, row: &[f64]) -> f64 {
    catalogue::formula(name).unwrap().answer(row).unwrap_or_else(|e| panic!("{e}"))
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * a.abs().max(b.abs())
}

/// Single inputs, then list after list: a row.
fn row(singles: &[f64], lists: &[&[f64]]) -> Vec<f64> {
    [singles, &lists.concat()].concat()
}

/// The list with the member at a place brought to the front.
fn first(list: &[f64], place: usize) -> Vec<f64> {
    let mut list = list.to_vec();
    list[..=place].rotate_right(1);
    list
}

fn ends() -> impl Strategy<Value = Vec<(f64, f64, f64)>> {
    prop::collection::vec((2.0..2000.0, 0.3..5.0, 0.1..100.0), 1..7)
}

fn split(ends: &[(f64, f64, f64)]) -> [Vec<f64>; 3] {
    [
        ends.iter().map(|e| e.0).collect(),
        ends.iter().map(|e| e.1).collect(),
        ends.iter().map(|e| e.2).collect(),
    ]
}

proptest! {
    #![proptest_config(cases(200))]

    #[test]
    fn lengths_all_alike_are_a_contraction(ends in ends(), c in -0.1..0.4) {
        let [counts, ..] = split(&ends);
        let lengths = vec![1.0 / (1.0 - c); counts.len()];
        let fed = answer("fold_fed", &row(&[], &[&counts, &lengths]));
        prop_assert!(near(fed, answer("fold", &row(&[c], &[&counts]))));
        // The same said on the twisted length, by way of the change of base and back.
        let k = answer("contraction_on_twisted", &[c]);
        prop_assert!(near(fed, answer("fold_on_twisted", &row(&[k], &[&counts]))));
        prop_assert!((answer("contraction_on_untwisted", &[k]) - c).abs() < 1e-15);
        // And undone: the single for as many equal ends, the end that is missing.
        let n = counts.len() as f64;
        let single = answer("single_on_twisted", &[fed, n, k]);
        prop_assert!(near(single, answer("single_for_fold", &[fed, n, c])));
        if let [missing, known @ ..] = counts.as_slice() && !known.is_empty() {
            let found = answer("missing_component_contracted", &row(&[fed, c], &[known]));
            prop_assert!((found - missing).abs() < 1e-11 * fed);
        }
    }

    #[test]
    fn the_order_of_the_ends_does_not_matter(ends in ends(), at in 0_usize..6) {
        let [counts, lengths, prices] = split(&ends);
        let at = at % counts.len();
        let (t, u, p) = (first(&counts, at), first(&lengths, at), first(&prices, at));
        for (name, here, there) in [
            ("fold_fed", row(&[], &[&counts, &lengths]), row(&[], &[&t, &u])),
            ("fold_cost", row(&[], &[&counts, &lengths, &prices]), row(&[], &[&t, &u, &p])),
        ] {
            prop_assert!(near(answer(name, &here), answer(name, &there)), "{name}");
        }
    }

    #[test]
    fn shares_sum_to_one(ends in ends()) {
        let [counts, lengths, prices] = split(&ends);
        let (mut mass, mut cost, mut length, mut kilos) = (0.0, 0.0, 0.0, Vec::new());
        for at in 0..counts.len() {
            let (t, u, p) = (first(&counts, at), first(&lengths, at), first(&prices, at));
            mass += answer("mass_share", &row(&[], &[&t, &u]));
            cost += answer("fold_cost_share", &row(&[], &[&t, &u, &p]));
            kilos.push(answer("mass_of_component", &row(&[7.5], &[&t, &u])));
        }
        prop_assert!(near(mass, 1.0) && near(cost, 1.0) && near(kilos.iter().sum(), 7.5));
        // The lengths come out of the masses again.
        let all: f64 = lengths.iter().sum();
        for (at, own) in lengths.iter().enumerate() {
            let share = answer("length_share", &row(&[], &[&first(&counts, at), &first(&kilos, at)]));
            prop_assert!(near(share, own / all));
            length += share;
        }
        prop_assert!(near(length, 1.0));
    }

    /// What a component costs is its price for its mass; ends at one price cost that price.
    #[test]
    fn cost_is_price_times_mass(ends in ends()) {
        let [counts, lengths, prices] = split(&ends);
        let cost = answer("fold_cost", &row(&[], &[&counts, &lengths, &prices]));
        let share = answer("mass_share", &row(&[], &[&counts, &lengths]));
        let of_cost = answer("fold_cost_share", &row(&[], &[&counts, &lengths, &prices]));
        prop_assert!(near(of_cost * cost, share * prices[0]));
        let (low, high) = (prices.iter().copied().fold(f64::MAX, f64::min), prices.iter().copied().fold(0.0, f64::max));
        prop_assert!(cost >= low * (1.0 - 1e-12) && cost <= high * (1.0 + 1e-12));
        let one = vec![3.0; counts.len()];
        prop_assert!(near(answer("fold_cost", &row(&[], &[&counts, &lengths, &one])), 3.0));
    }

    /// A fold of counts made for their shares has the wanted count and those shares.
    #[test]
    fn counts_for_shares_make_the_fold(weights in prop::collection::vec(0.05..1.0, 2..6), wanted in 10.0..2000.0) {
        let sum: f64 = weights.iter().sum();
        let shares: Vec<f64> = weights.iter().map(|w| w / sum).collect();
        let counts: Vec<f64> = (0..shares.len())
            .map(|at| answer("count_for_share", &row(&[wanted], &[&first(&shares, at)])))
            .collect();
        prop_assert!(near(answer("fold", &row(&[0.0], &[&counts])), wanted));
        let ones = vec![1.0; counts.len()];
        prop_assert!(near(answer("mass_share", &row(&[], &[&counts, &ones])), shares[0]));
        // The mean by equal shares is the plain mean.
        let equal = vec![1.0 / counts.len() as f64; counts.len()];
        let mean = answer("mean_by_share", &row(&[], &[&equal, &counts]));
        prop_assert!(near(mean, counts.iter().sum::<f64>() / counts.len() as f64));
    }

    #[test]
    fn a_train_back_to_back_turns_once(pairs in prop::collection::vec((12.0..150.0, 12.0..150.0), 1..6)) {
        let (drivers, driven): (Vec<f64>, Vec<f64>) = pairs.into_iter().unzip();
        let there = answer("train_ratio", &row(&[], &[&drivers, &driven]));
        let back = answer("train_ratio", &row(&[], &[&driven, &drivers]));
        prop_assert!(near(there * back, 1.0));
    }

    /// The constant with the change wheel's place open is what all wheels together give, times teeth
    /// where it is driven, over teeth where it drives.
    #[test]
    fn the_place_of_the_change_wheel(z in 12.0..150.0, w in 2.0..12.0, roller in 0.05..0.4, draft in 1.0..30.0) {
        let twist = |a: [f64; 2], b: [f64; 2]| answer("twist_constant", &row(&[w, roller], &[&a, &b]));
        prop_assert!(near(twist([84.0, 96.0], [21.0, z]) * z, twist([84.0, 96.0], [21.0, 1.0])));
        prop_assert!(near(twist([84.0, z], [21.0, 30.0]) / z, twist([84.0, 1.0], [21.0, 30.0])));
        let pair = |a: f64, b: f64| answer("draft_constant", &row(&[0.03, 0.025], &[&[a], &[b]]));
        prop_assert!(near(pair(40.0, z) * z, pair(40.0, 1.0)));
        // From the constant and from the wheel at hand: the same wheel.
        let constant = answer("draft_from_wheel", &[4000.0, z]);
        prop_assert!(near(answer("wheel_for_draft", &[4000.0, draft]), answer("wheel_for_new_draft", &[z, constant, draft])));
        // Two ways round: their product is the square of the wheel at hand.
        let (inverse, direct) = (answer("wheel_for_new_twist", &[z, 200.0, 300.0]), answer("wheel_for_new_twist_direct", &[z, 200.0, 300.0]));
        prop_assert!(near(inverse * direct, z * z));
        let (inverse, direct) = (answer("wheel_for_new_draft", &[z, 8.0, draft]), answer("wheel_for_new_draft_direct", &[z, 8.0, draft]));
        prop_assert!(near(inverse * direct, z * z));
    }

    /// The wheel for the new count gives the twist that keeps the twist factor.
    #[test]
    fn the_twist_wheel_keeps_the_factor(z in 12.0..150.0, a in 10.0..500.0, b in 10.0..500.0) {
        let wheel = answer("twist_wheel_for_new_count", &[z, a, b]);
        let twist = |teeth: f64| answer("twist_from_wheel", &[20_000.0, teeth]);
        let factor = |teeth: f64, count: f64| answer("twist_factor", &[twist(teeth), count]);
        prop_assert!(near(factor(wheel, b), factor(z, a)));
        // A draft that turns count a into b, then b into a, is none.
        let (there, back) = (answer("draft_of_counts", &[a, b, 1.0]), answer("draft_of_counts", &[b, a, 1.0]));
        prop_assert!(near(answer("total_draft", &[there, back]), 1.0));
        prop_assert!(near(answer("wheel_for_new_count", &[z, a, b]), z * back));
    }

    #[test]
    fn twist_makes_a_yarn_shorter(t in 50.0..1500.0, d in 0.1..2.0, more in 1.05..2.0) {
        let c = |t: f64, d: f64| answer("helix_contraction", &[t, d]);
        prop_assert!(c(t, d) > 0.0 && c(t * more, d) > c(t, d) && c(t, d * more) > c(t, d));
        // The angle itself, by the functions that the formula does without.
        let alpha = (std::f64::consts::PI * d / 1000.0 * t).atan();
        prop_assert!((c(t, d) - (1.0 - 2.0 / (1.0 + 1.0 / alpha.cos()))).abs() < 1e-14);
        // A fold of singles that keep their own contraction is the slope alone.
        let fold = answer("two_fold_contraction", &[0.05, 0.05, t, d]);
        prop_assert!((fold - (1.0 - alpha.cos())).abs() < 1e-14);
        // The flatter the fold, the nearer twist left is to what is left for small angles.
        let (left, small) = (answer("twist_left_ratio", &[4.0 * t, t, d]), answer("twist_left_in_single", &[4.0 * t, t]) / (4.0 * t));
        prop_assert!(left >= small && ((1.0 - left) - (1.0 - small) * alpha.cos().powi(2)).abs() < 1e-14);
    }

    /// Never a wheel that is not owned, and none owned is nearer.
    #[test]
    fn the_change_wheel_is_an_owned_one(
        wheels in prop::collection::vec(12_u32..150, 1..12), ideal in 5.0..200.0, direct in any::<bool>()
    ) {
        let law = if direct { "direct" } else { "inverse" };
        let wheels: Vec<f64> = wheels.into_iter().map(f64::from).collect();
        let owned = wheels.iter().map(f64::to_string).collect::<Vec<_>>().join(", ");
        let gives = |z: f64| if direct { 4320.0 * z } else { 4320.0 / z };
        let wanted = gives(ideal);
        let found = CHANGE_WHEEL.solve_texts(&[
            ("twist_constant", "4320 turns/m"), ("wanted_twist", &format!("{wanted} turns/m")),
            ("wheels", &owned), ("law", law),
        ]).unwrap();
        let value = |name: &str| found.find(name).ok().map(|found| found.value);
        let (best, nearest) = (value("wanted_teeth").unwrap(), value("teeth").unwrap());
        let (below, above) = (value("below.teeth"), value("above.teeth"));
        for before in ["", "below.", "above."] {
            let Some(teeth) = value(&format!("{before}teeth")) else { continue };
            let twist = value(&format!("{before}twist")).unwrap();
            let deviation = value(&format!("{before}deviation")).unwrap();
            prop_assert!(wheels.contains(&teeth) && near(twist, gives(teeth)));
            prop_assert!((wanted * (1.0 + deviation) - twist).abs() < 1e-9 * twist);
            prop_assert!((nearest - best).abs() <= (teeth - best).abs());
        }
        for z in &wheels {
            prop_assert!((nearest - best).abs() <= (z - best).abs());
            prop_assert!(below.is_some_and(|b| b >= *z) || *z > best);
            prop_assert!(above.is_some_and(|a| a <= *z) || *z <= best);
        }
    }
}

#[test]
fn the_multiplier_of_cotton_is_that_of_the_units() {
    let one = parse_as("1 tpi/√Ne", Kind::TwistFactor).unwrap().base();
    // Where the rule gives nothing: 4.93/2.67.
    let zero = answer("contraction_of_cotton_single", &[one * (4.93 / 2.67 + 1e-12)]);
    assert!((0.0..1e-12).contains(&zero), "{zero}");
}

#[test]
#[should_panic(expected = "counts and relative_lengths go in step")]
fn a_typed_call_with_unequal_lists_panics() {
    let count = LinearDensity::parse("20 tex").unwrap();
    yarn::fold_fed(&[count, count], &[Ratio::base(1.0)]);
}

#[test]
fn a_train_drawn_as_a_table() {
    let wheel = |constant: &str, wanted: &str, wheels: &str, law: &str| {
        let given = [
            ("draft_constant", constant),
            ("wanted_draft", wanted),
            ("wheels", wheels),
            ("law", law),
        ];
        CHANGE_WHEEL.solve_texts(&given).unwrap()
    };
    let value = |of: &hankwise::calculation::Solved, name: &str| of.find(name).unwrap().value;
    let found = wheel("240", "6.1", "42, 36", "inverse");
    let (text, html) = (found.report().text(), found.report().html());
    for word in ["6.1 wanted", "39.34 teeth", "5.714", "−6.3 %", "6.667", "+9.3 %", "lock off"] {
        assert!(text.contains(word) && html.contains(word), "{word} is not in {text} {html}");
    }
    let one_side = wheel("240", "6.1", "36", "inverse");
    assert!(one_side.find("above.teeth").is_err());
    assert!(one_side.report().text().contains("none owned above"));
    // On the wheel itself there is nothing to be off by.
    let exact = wheel("240", "6", "40, 41", "inverse");
    assert_eq!((value(&exact, "deviation"), value(&exact, "teeth")), (0.0, 40.0));
    assert_eq!(value(&wheel("0.25", "10", "40", "direct"), "draft"), 10.0);
}
