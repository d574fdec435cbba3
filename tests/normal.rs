//! The normal law against published values and against itself.

mod cases;

use cases::cases;
use hankwise::normal::{Z95, quantile, two_sided};
use proptest::prelude::*;

fn near(got: f64, wanted: f64) -> bool {
    (got - wanted).abs() <= 4.0 * f64::EPSILON * wanted.abs()
}

/// The three values that Wichura prints with his algorithm, and the points of every table.
#[test]
fn published_values_hold() {
    assert!(near(quantile(0.25), -0.674_489_750_196_081_7));
    assert!(near(quantile(0.001), -3.090_232_306_167_814));
    assert!(near(quantile(1e-20), -9.262_340_089_798_408));
    for (p, z) in [(0.9, 1.2816), (0.95, 1.6449), (0.975, 1.9600), (0.995, 2.5758)] {
        assert!((quantile(p) - z).abs() < 0.00005, "{p}");
    }
    assert!((two_sided(0.95) - 1.959_964).abs() < 5e-7);
}

/// The constant that a plan's low and high go by is the same law.
#[test]
fn the_95_percent_point_is_that_of_the_law() {
    assert!(near(quantile(0.95), Z95));
}

#[test]
fn ends_and_nonsense() {
    assert!(quantile(0.5).abs() < f64::EPSILON);
    assert!(quantile(0.0).is_infinite() && quantile(0.0) < 0.0);
    assert!(quantile(1.0).is_infinite() && quantile(1.0) > 0.0);
    for p in [-0.1, 1.1, f64::NAN] {
        assert!(quantile(p).is_nan(), "{p}");
    }
}

/// The share below z, by adding up the density (Simpson): a way of its own.
fn share_below(z: f64) -> f64 {
    let steps = 20_000;
    let h = z.abs() / f64::from(steps);
    let density = |x: f64| (-x * x / 2.0).exp() / std::f64::consts::TAU.sqrt();
    let inner = (1..steps).map(|k| {
        let weight = if k % 2 == 1 { 4.0 } else { 2.0 };
        weight * density(f64::from(k) * h)
    });
    let area = h / 3.0 * (density(0.0) + inner.sum::<f64>() + density(z.abs()));
    0.5 + area.copysign(z)
}

proptest! {
    #![proptest_config(cases(40))]

    #[test]
    fn the_share_below_the_quantile_is_the_share(p in 1e-6..=0.999_999) {
        prop_assert!((share_below(quantile(p)) - p).abs() < 1e-12);
    }

    #[test]
    fn it_is_odd_and_rises(p in 1e-9..0.5_f64, more in 1e-6..0.4_f64) {
        // 1 − p is not exact: what it has lost, the upper tail shows.
        prop_assert!((quantile(p) + quantile(1.0 - p)).abs() < 1e-6);
        prop_assert!(quantile(p) < quantile(p + more * (1.0 - p)));
    }
}
