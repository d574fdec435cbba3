//! The laws behind limits: the normal law, Student's t, chi-square, and the range of a small sample.
//!
//! All are computed, none is looked up, so that any number of readings will do.

use std::f64::consts::{PI, SQRT_2};

/// Terms of a series or a continued fraction at most; far more than any here needs.
const TERMS: u32 = 100_000;

/// The share of the normal law below `x` standard deviations.
pub fn normal_below(x: f64) -> f64 {
    0.5 * libm::erfc(-x / SQRT_2)
}

/// Γ(x + ½)/Γ(x), which does not overflow as the two would.
pub(crate) fn gamma_ratio(x: f64) -> f64 {
    // The asymptotic series is good to the last digit from 64 on; below, the ratio is carried down.
    let (mut at, mut down) = (x, 1.0);
    while at < 64.0 {
        down *= at / (at + 0.5);
        at += 1.0;
    }
    let r = 1.0 / at;
    let series = [1.0, -1.0 / 8.0, 1.0 / 128.0, 5.0 / 1024.0, -21.0 / 32768.0, -399.0 / 262_144.0];
    down * at.sqrt() * series.iter().rev().fold(0.0, |sum, c| sum * r + c)
}

/// The share of Student's t with `freedom` degrees of freedom above `t`.
pub fn t_above(t: f64, freedom: f64) -> f64 {
    if t < 0.0 {
        return 1.0 - t_above(-t, freedom);
    }
    // The incomplete beta function with a = ν/2, b = ½ at x = ν/(ν + t²), by its continued fraction
    // on the side where that is short.
    let a = freedom / 2.0;
    let square = t * t;
    let (x, rest) = (freedom / (freedom + square), square / (freedom + square));
    let front = (-a * (square / freedom).ln_1p()).exp() * rest.sqrt() * gamma_ratio(a) / PI.sqrt();
    if x < (a + 1.0) / (a + 2.5) {
        0.5 * front * beta_fraction(a, 0.5, x) / a
    } else {
        0.5 - front * beta_fraction(0.5, a, rest)
    }
}

/// The continued fraction of the incomplete beta function, by Lentz's method.
fn beta_fraction(a: f64, b: f64, x: f64) -> f64 {
    const TINY: f64 = 1e-300;
    let kept = |v: f64| if v.abs() < TINY { TINY } else { v };
    let (mut c, mut d) = (1.0, 1.0 / kept(1.0 - (a + b) * x / (a + 1.0)));
    let mut h = d;
    for m in 1..TERMS {
        let m = f64::from(m);
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        let mut last = 1.0;
        for step in [even, odd] {
            d = 1.0 / kept(1.0 + step * d);
            c = kept(1.0 + step / c);
            last = c * d;
            h *= last;
        }
        if (last - 1.0).abs() < 1e-16 {
            break;
        }
    }
    h
}

/// The t below which a share of Student's law lies; NaN where the share is none between 0 and 1.
pub fn t_quantile(share: f64, freedom: f64) -> f64 {
    // Of no use: NaN too.
    let possible = share > 0.0 && share < 1.0 && freedom > 0.0;
    if !possible {
        return f64::NAN;
    }
    if share < 0.5 {
        return -t_quantile(1.0 - share, freedom);
    }
    root(|t| (1.0 - share) - t_above(t, freedom))
}

/// The t between whose two signs a share of Student's law lies.
pub fn t_two_sided(share: f64, freedom: f64) -> f64 {
    let above = (1.0 - share) / 2.0;
    let possible = above > 0.0 && above < 0.5 && freedom > 0.0;
    if possible { root(|t| above - t_above(t, freedom)) } else { f64::NAN }
}

/// The shares of chi-square with `freedom` degrees of freedom below and above `x`.
pub fn chi_square(x: f64, freedom: f64) -> [f64; 2] {
    if x <= 0.0 {
        return [0.0, 1.0];
    }
    let (a, x) = (freedom / 2.0, x / 2.0);
    // xᵃ e⁻ˣ / Γ(a), written so that large values do not cancel.
    let off = (x - a) / a;
    let stirling = libm::lgamma(a) - ((a - 0.5) * a.ln() - a + 0.5 * (2.0 * PI).ln());
    let stirling = if a > 50.0 { 1.0 / (12.0 * a) - 1.0 / (360.0 * a * a * a) } else { stirling };
    let front = (a * (off.ln_1p() - off) - stirling).exp() * (a / (2.0 * PI)).sqrt();
    if x < a + 1.0 {
        let (mut term, mut sum, mut at) = (1.0 / a, 1.0 / a, a);
        for _ in 0..TERMS {
            at += 1.0;
            term *= x / at;
            sum += term;
            if term < sum * 1e-17 {
                break;
            }
        }
        let below = front * sum;
        return [below, 1.0 - below];
    }
    let mut b = x + 1.0 - a;
    let (mut c, mut d) = (1e300, 1.0 / b);
    let mut h = d;
    for i in 1..TERMS {
        let i = f64::from(i);
        let step = -i * (i - a);
        b += 2.0;
        d = 1.0 / (step * d + b);
        c = b + step / c;
        h *= c * d;
        if (c * d - 1.0).abs() < 1e-16 {
            break;
        }
    }
    let above = front * h;
    [1.0 - above, above]
}

/// The value below which a share of chi-square lies.
pub fn chi_square_quantile(share: f64, freedom: f64) -> f64 {
    let possible = share > 0.0 && share < 1.0 && freedom > 0.0;
    if !possible {
        return f64::NAN;
    }
    // By the nearer tail, where no digits are lost.
    if share < 0.5 {
        root(|x| chi_square(x, freedom)[0] - share)
    } else {
        root(|x| (1.0 - share) - chi_square(x, freedom)[1])
    }
}

/// Where a rising function passes zero, above 0: to the last digit.
fn root(rises: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (0.0, 1.0);
    while rises(high) < 0.0 && high < 1e300 {
        (low, high) = (high, high * 2.0);
    }
    loop {
        let middle = f64::midpoint(low, high);
        if middle <= low || middle >= high {
            return middle;
        }
        if rises(middle) < 0.0 { low = middle } else { high = middle }
    }
}

/// The share of samples of `n` whose range is below `w` standard deviations.
pub fn range_below(w: f64, n: u32) -> f64 {
    const STEP: f64 = 1.0 / 16.0;
    if w <= 0.0 {
        return 0.0;
    }
    let power = (n - 1).cast_signed();
    // The trapezium rule over the whole line gains digits with every step: at this one it has all.
    let sum: f64 = (-160..=160)
        .map(|i| {
            let x = f64::from(i) * STEP;
            let density = (-x * x / 2.0).exp() / (2.0 * PI).sqrt();
            // From the nearer tail, so that the difference keeps its digits.
            let between = if x > 0.0 {
                normal_below(-x) - normal_below(-x - w)
            } else {
                normal_below(x + w) - normal_below(x)
            };
            density * between.powi(power)
        })
        .sum();
    (f64::from(n) * STEP * sum).min(1.0)
}

/// The mean and the standard deviation of the range of samples of `n`, in standard deviations.
pub(crate) fn range_moments(n: u32) -> [f64; 2] {
    // Gauss's rule with 8 points on each half unit, up to where no range lies.
    const POINTS: [[f64; 2]; 4] = [
        [0.183_434_642_495_649_8, 0.362_683_783_378_362],
        [0.525_532_409_916_329, 0.313_706_645_877_887_3],
        [0.796_666_477_413_626_7, 0.222_381_034_453_374_47],
        [0.960_289_856_497_536_2, 0.101_228_536_290_376_26],
    ];
    let (mut first, mut second) = (0.0, 0.0);
    for half in 0..32 {
        let middle = 0.25 + 0.5 * f64::from(half);
        for [at, weight] in POINTS {
            for w in [middle - 0.25 * at, middle + 0.25 * at] {
                let above = 1.0 - range_below(w, n);
                first += 0.25 * weight * above;
                second += 0.25 * weight * 2.0 * w * above;
            }
        }
    }
    [first, (second - first * first).sqrt()]
}
