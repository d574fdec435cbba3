//! How far a mean of few samples may be off: the deviate of Student's law.

use std::f64::consts::{FRAC_2_PI, FRAC_PI_2};

/// The share of Student's law between −t and t, with t = √ν·tan θ (Abramowitz and Stegun 26.7.3 and
/// 26.7.4, for whole degrees of freedom ν from 1).
fn between(theta: f64, freedom: usize) -> f64 {
    let (sine, cosine) = theta.sin_cos();
    let odd = freedom % 2 == 1;
    let mut term = if odd { cosine } else { 1.0 };
    let mut sum = 0.0;
    let mut k = if odd { 3 } else { 2 };
    while k <= freedom {
        sum += term;
        term *= cosine * cosine * (k - 1) as f64 / k as f64;
        k += 2;
    }
    if odd { FRAC_2_PI * (theta + sine * sum) } else { sine * sum }
}

/// The deviate t such that the share lies between −t and t.
pub(super) fn two_sided(share: f64, freedom: usize) -> f64 {
    let (mut low, mut high) = (0.0, FRAC_PI_2);
    for _ in 0..200 {
        let middle = f64::midpoint(low, high);
        if between(middle, freedom) < share { low = middle } else { high = middle }
    }
    (freedom as f64).sqrt() * f64::midpoint(low, high).tan()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn as_the_printed_tables_have_it() {
        let table = [
            (0.95, 1, 12.706),
            (0.95, 2, 4.303),
            (0.95, 3, 3.182),
            (0.95, 4, 2.776),
            (0.95, 9, 2.262),
            (0.95, 30, 2.042),
            (0.99, 5, 4.032),
            (0.90, 6, 1.943),
        ];
        for (share, freedom, t) in table {
            let found = two_sided(share, freedom);
            assert!((found - t).abs() <= 0.000_51, "{share} {freedom}: {found}");
        }
        // With many samples it is the normal law.
        assert!((two_sided(0.95, 100_001) - crate::normal::two_sided(0.95)).abs() < 1e-4);
    }
}
