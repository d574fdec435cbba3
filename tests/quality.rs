//! Laws, charts and samples against printed tables, closed forms and identities.

mod cases;

use cases::cases;
use hankwise::law;
use hankwise::quality::chart::{Asked, Chart, Finding, Kind as Points, RUN};
use hankwise::quality::{ChartConstants, SKEIN_COUNT, Sample, Summary};
use hankwise::quantity::unit;
use proptest::prelude::*;
use std::f64::consts::PI;

fn sample(values: Vec<f64>) -> Sample {
    Sample::new(values, unit("tex", None).unwrap()).unwrap()
}

/// Tables of Student's t and of chi-square as printed everywhere.
#[test]
fn printed_tables() {
    for (freedom, t) in [(1.0, 12.706), (4.0, 2.776), (9.0, 2.262), (29.0, 2.045), (120.0, 1.980)] {
        assert!((law::t_two_sided(0.95, freedom) - t).abs() < 0.0005, "{freedom}");
    }
    for (share, freedom, x) in
        [(0.025, 4.0, 0.484), (0.975, 4.0, 11.143), (0.95, 9.0, 16.919), (0.05, 30.0, 18.493)]
    {
        assert!((law::chi_square_quantile(share, freedom) - x).abs() < 0.0005, "{share} {freedom}");
    }
}

/// Student's t with one degree of freedom is Cauchy's law, with two it has a closed form; chi-square
/// with two is the exponential law.
#[test]
fn closed_forms() {
    for share in [0.1, 0.5, 0.9, 0.99, 0.999_999] {
        let cauchy = (PI * share / 2.0).tan();
        assert!((law::t_two_sided(share, 1.0) / cauchy - 1.0).abs() < 1e-9);
        let two = share * (2.0 / (1.0 - share * share)).sqrt();
        assert!((law::t_two_sided(share, 2.0) / two - 1.0).abs() < 1e-9);
        let exponential = -2.0 * (1.0 - share).ln();
        assert!((law::chi_square_quantile(share, 2.0) / exponential - 1.0).abs() < 1e-9);
    }
}

/// Of two readings the range is √2 times their standard deviation.
#[test]
fn of_two_readings_range_and_deviation_are_one() {
    let two = ChartConstants::new(2).unwrap();
    let root = 2_f64.sqrt();
    assert!((two.d2 / two.c4 - root).abs() < 1e-14);
    assert!((two.d3 / two.c5 - root).abs() < 1e-12);
    let [d4, b4] = ["D4", "B4"].map(|s| two.get(s).unwrap());
    assert!((d4 - b4).abs() < 1e-12);
    assert!(two.get("A9").is_none());
}

/// Mean and spread of the range by Simpson's rule over its own distribution.
#[test]
fn the_range_by_another_rule() {
    for n in [3, 10, 50] {
        let (steps, width) = (4000, 16.0 / 4000.0);
        let moments: [f64; 2] = [0, 1].map(|power| {
            let at = |k: i32| {
                let w = f64::from(k) * width;
                let side = if power == 0 { 1.0 } else { 2.0 * w };
                side * (1.0 - law::range_below(w, n))
            };
            let inner: f64 = (1..steps).map(|k| if k % 2 == 0 { 2.0 } else { 4.0 } * at(k)).sum();
            (at(0) + at(steps) + inner) * width / 3.0
        });
        let constants = ChartConstants::new(n).unwrap();
        assert!((constants.d2 - moments[0]).abs() < 1e-9, "{n}");
        assert!((constants.d3 - (moments[1] - moments[0].powi(2)).sqrt()).abs() < 1e-9, "{n}");
    }
}

proptest! {
    #![proptest_config(cases(60))]

    #[test]
    fn quantiles_undo_shares(share in 0.001..0.999_f64, freedom in 1.0..500.0_f64) {
        let t = law::t_quantile(share, freedom);
        prop_assert!((law::t_above(t, freedom) - (1.0 - share)).abs() < 1e-12);
        let x = law::chi_square_quantile(share, freedom);
        let [below, above] = law::chi_square(x, freedom);
        prop_assert!((below - share).abs() < 1e-11 && (below + above - 1.0).abs() < 1e-12);
    }

    /// Another unit or another zero moves the values and changes nothing of what is found.
    #[test]
    fn charts_do_not_depend_on_the_unit(
        values in proptest::collection::vec(90.0..110.0_f64, 24..=24),
        times in 0.01..100.0_f64,
        group in prop::sample::select(vec![1_u32, 2, 4, 6, 12]),
    ) {
        let kind = if group == 1 { Points::Individuals } else { Points::Mean };
        let of = |values: Vec<f64>| Chart::new(sample(values), Asked::new(kind, group)).unwrap();
        let (one, other) = (of(values.clone()), of(values.iter().map(|x| x * times).collect()));
        prop_assert!((other.centre / one.centre / times - 1.0).abs() < 1e-9);
        prop_assert!((other.sigma / one.sigma / times - 1.0).abs() < 1e-9);
        prop_assert_eq!(one.out, other.out);
        prop_assert_eq!(one.findings, other.findings);
    }

    /// More confidence, wider limits; the mean is within them.
    #[test]
    fn limits_widen_with_confidence(values in proptest::collection::vec(90.0..110.0_f64, 3..20)) {
        prop_assume!(values.iter().any(|x| (x - values[0]).abs() > 1e-3));
        let of = |c| Summary::new(sample(values.clone()), c, None).unwrap();
        let (narrow, wide) = (of(0.8), of(0.99));
        for s in [&narrow, &wide] {
            prop_assert!(s.mean_limits[0] < s.mean && s.mean < s.mean_limits[1]);
            prop_assert!(s.sd_limits[0] < s.sd && s.sd < s.sd_limits[1]);
        }
        prop_assert!(wide.mean_limits[0] < narrow.mean_limits[0]);
        prop_assert!(wide.sd_limits[1] > narrow.sd_limits[1]);
    }
}

/// Seven on one side are chance, eight a drift.
#[test]
fn a_run_is_counted() {
    for (above, drift) in [(RUN - 1, false), (RUN, true)] {
        let mut values: Vec<f64> = (0..20).map(|k| if k % 2 == 0 { 99.0 } else { 101.0 }).collect();
        values.push(99.0);
        values.extend(std::iter::repeat_n(100.6, above));
        values.push(99.0);
        let mut asked = Asked::new(Points::Individuals, 1);
        (asked.centre, asked.sigma) = (Some(100.0), Some(1.0));
        let found = Chart::new(sample(values), asked).unwrap().findings;
        assert_eq!(!found.is_empty(), drift);
        if drift {
            assert_eq!(found, [Finding::Drift { from: 21, to: 20 + RUN, above: true }]);
        }
    }
}

/// Two neighbours outside on one side say that the level moved; one alone that one reading is off.
#[test]
fn neighbours_tell_an_outlier_from_a_drift() {
    let of = |values: Vec<f64>| {
        let mut asked = Asked::new(Points::Individuals, 1);
        (asked.centre, asked.sigma) = (Some(100.0), Some(1.0));
        Chart::new(sample(values), asked).unwrap().findings
    };
    assert_eq!(of(vec![99.5, 100.5, 105.0, 99.5]), [Finding::Outlier { at: 2 }]);
    let moved = of(vec![99.5, 105.0, 105.0, 99.5]);
    assert_eq!(moved, [Finding::Drift { from: 1, to: 2, above: true }]);
    let apart = of(vec![99.5, 105.0, 95.0, 100.5]);
    assert_eq!(apart, [Finding::Outlier { at: 1 }, Finding::Outlier { at: 2 }]);
}

/// A reading far outside beside a run that lasts without it is an outlier and a drift.
#[test]
fn an_outlier_beside_a_drift_is_told_apart() {
    let of = |values: Vec<f64>| {
        let mut asked = Asked::new(Points::Individuals, 1);
        (asked.centre, asked.sigma) = (Some(100.0), Some(1.0));
        Chart::new(sample(values), asked).unwrap().findings
    };
    let mut values = vec![99.5, 106.0];
    values.extend(std::iter::repeat_n(100.6, RUN));
    let drift = Finding::Drift { from: 2, to: 1 + RUN, above: true };
    assert_eq!(of(values.clone()), [drift, Finding::Outlier { at: 1 }]);
    // On the other end too; the level after both is where it was.
    values.extend([106.0, 99.5]);
    assert_eq!(of(values), [drift, Finding::Outlier { at: 1 }, Finding::Outlier { at: 2 + RUN }]);
}

/// Limits from the first readings do not look at the next one, however far off it is.
#[test]
fn a_baseline_keeps_to_itself() {
    let steady: Vec<f64> = (0..12).map(|k| 200.0 + f64::from(k % 3)).collect();
    let mut asked = Asked::new(Points::Individuals, 1);
    asked.baseline = Some(12);
    let followed = |next: f64| {
        let values = [&steady[..], &[next, 201.0]].concat();
        Chart::new(sample(values), asked).unwrap().limits.map(f64::to_bits)
    };
    assert_eq!(followed(230.0), followed(201.0));
    let alone = Chart::new(sample(steady.clone()), Asked::new(Points::Individuals, 1)).unwrap();
    assert_eq!(followed(230.0), alone.limits.map(f64::to_bits));
}

#[test]
fn a_chance_of_nothing_or_of_all_and_more_sets_no_limits() {
    for confidence in [-0.5, 0.0, 1.0, 1.5] {
        let refused = Summary::new(sample(vec![20.0, 21.0, 22.0]), confidence, None);
        assert!(refused.unwrap_err().to_string().contains("limits cannot be set"), "{confidence}");
    }
    assert!(Summary::new(sample(vec![20.0, 21.0, 22.0]), 0.9, None).is_ok());
}

/// Seven readings are no whole number of subgroups but of one; twelve are three fours.
#[test]
fn another_size_of_subgroup_is_proposed_only_where_it_gives_two() {
    let refused = |n: u32, by: u32| {
        let values = (0..n).map(|k| 100.0 + f64::from(k)).collect();
        let asked = Asked::new(Points::Mean, by);
        Chart::new(sample(values), asked).unwrap_err().to_string()
    };
    let prime = refused(7, 3);
    assert!(prime.contains("1 is over") && !prime.contains("subgroup="), "{prime}");
    assert!(refused(12, 5).contains("write subgroup=4"), "{}", refused(12, 5));
}

/// ASTM D1907, scope: yarns that stretch less than 5 %.
#[test]
fn a_yarn_that_stretches_five_percent_is_outside_the_skein_test() {
    let warned = |stretch: &str| {
        let count = SKEIN_COUNT.solve_texts(&[
            ("masses", "5.0 g, 5.1 g"),
            ("skein_length", "100 m"),
            ("option", "oven-dry"),
            ("stretch", stretch),
        ]);
        !count.unwrap().warnings().is_empty()
    };
    assert!(!warned("4.97 %") && warned("5 %"));
}
