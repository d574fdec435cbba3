//! The path of a thread over and under round threads, after Peirce.
//!
//! D is the sum of the two diameters. Seen from the side, a thread lies round one it crosses through an
//! angle θ, runs straight, and lies round the next. Of spacing p of those it crosses, length l between
//! them, height h of its wave and angle θ, two give the other two:
//!
//! p = (l − D θ) cos θ + D sin θ  and  h = (l − D θ) sin θ + D (1 − cos θ)
//!
//! A straight part l − D θ of zero is the jam: threads crossed cannot come closer at this length.

use std::f64::consts::FRAC_PI_2;

use crate::formula::bisect;
use crate::number::{Equation, Number, V};

/// The angle from length and spacing.
pub(super) struct FromSpacing;

/// The angle from length and height.
pub(super) struct FromHeight;

/// The spacing from crimp and height.
pub(super) struct FromCrimp;

/// Spacing of the threads crossed, from the angle and the length.
#[inline(always)]
pub(super) fn spacing<N: Number>(angle: V<N>, length: V<N>, d: V<N>) -> V<N> {
    (length - d * angle) * angle.cos() + d * angle.sin()
}

/// Height of the wave, from the angle and the length.
#[inline(always)]
pub(super) fn height<N: Number>(angle: V<N>, length: V<N>, d: V<N>) -> V<N> {
    (length - d * angle) * angle.sin() + d * (1.0 - angle.cos())
}

/// Height of the wave from the angle, the straight part and the spacing.
#[inline(always)]
pub(super) fn height_by_half_angle<N: Number>(angle: V<N>, straight: V<N>, spacing: V<N>) -> V<N> {
    (spacing + straight) * (angle / 2.0).tan()
}

/// Straight part from the height and the spacing.
///
/// Two right-angled triangles are on the line between the threads crossed: p² + (D − h)² = s² + D².
#[inline(always)]
pub(super) fn straight_part<N: Number>(height: V<N>, spacing: V<N>, d: V<N>) -> V<N> {
    (spacing.squared() - height * (2.0 * d - height)).sqrt()
}

/// Angle from the height and the spacing.
#[inline(always)]
pub(super) fn angle<N: Number>(height: V<N>, spacing: V<N>, d: V<N>) -> V<N> {
    angle_by_straight_part(height, spacing, straight_part(height, spacing, d))
}

/// Angle from the height, the spacing and the straight part.
#[inline(always)]
pub(super) fn angle_by_straight_part<N: Number>(
    height: V<N>,
    spacing: V<N>,
    straight: V<N>,
) -> V<N> {
    2.0 * (height / (spacing + straight)).atan()
}

/// Length from the angle and the spacing.
#[inline(always)]
pub(super) fn length<N: Number>(angle: V<N>, spacing: V<N>, d: V<N>) -> V<N> {
    d * angle + (spacing - d * angle.sin()) / angle.cos()
}

/// Sine and cosine of an angle from 0 to a right angle, from those of its half by their series: as
/// exact as the library's to a value or two in the last place, and much faster.
#[inline(always)]
fn sine_and_cosine(angle: f64) -> (f64, f64) {
    let half = angle / 2.0;
    let y = half * half;
    let (y2, y4) = (y * y, y * y * y * y);
    // In pairs, so that the processor need not wait for one term after the other.
    let series = |t: &[f64; TERMS]| {
        (t[0] + t[1] * y)
            + y2 * (t[2] + t[3] * y)
            + y4 * ((t[4] + t[5] * y) + y2 * (t[6] + t[7] * y) + y4 * t[8])
    };
    let (sine, cosine) = (half * series(&SINE), series(&COSINE));
    (2.0 * sine * cosine, 1.0 - 2.0 * sine * sine)
}

/// Enough for half a right angle.
const TERMS: usize = 9;
const SINE: [f64; TERMS] = alternating_inverse_factorials(1);
const COSINE: [f64; TERMS] = alternating_inverse_factorials(0);

/// 1/start!, −1/(start + 2)!, 1/(start + 4)! …
const fn alternating_inverse_factorials(start: usize) -> [f64; TERMS] {
    let mut terms = [1.0; TERMS];
    let mut k = 1;
    while k < TERMS {
        let n = (start + 2 * k) as f64;
        terms[k] = -terms[k - 1] / (n * (n - 1.0));
        k += 1;
    }
    terms
}

/// The greatest angle that a thread of a length, over D, can have: where it jams, or stands upright.
fn steepest(length: f64) -> f64 {
    length.min(FRAC_PI_2)
}

/// Steps before a bracket is halved instead. Away from the jam one or two are enough.
const STEPS: usize = 5;
/// The error falls with the fourth power of the step: after one so short, as a share of the way to
/// where the spacing turns (a flat thread, or the jam), it is below rounding.
const NEAR: f64 = 1e-5;

/// About the angle, from length and excess over the spacing: by the first terms of the series.
#[inline(always)]
fn about(l: f64, excess: f64) -> f64 {
    let x = (2.0 * excess / l).sqrt();
    let x = (excess / (l / 2.0 - x / 3.0 - x * x * (l / 24.0 - x / 30.0))).sqrt();
    // Newton's steps on more of the series.
    let newton = |x: f64| {
        let y = x * x;
        let six = l / 720.0 - x / 840.0 - y * (l / 40320.0 - x / 45360.0);
        let miss = y * (l / 2.0 - x / 3.0 - y * (l / 24.0 - x / 30.0 - y * six));
        let sine = x * (1.0 - y / 6.0 * (1.0 - y / 20.0 * (1.0 - y / 42.0)));
        x - (miss - excess) / ((l - x) * sine)
    };
    newton(newton(x))
}

/// Where Householder's step of the third order leads, and by how much it starts too far from the root
/// to end there.
///
/// How far is judged by Newton's step, which is short only by a root: Householder's also stands still
/// where there is none.
#[inline(always)]
fn step(l: f64, p: f64, x: f64) -> (f64, f64) {
    let (sin, cos) = sine_and_cosine(x);
    let straight = l - x;
    let miss = straight * cos + sin - p;
    // Its first three derivatives.
    let one = -straight * sin;
    let two = sin - straight * cos;
    let three = 2.0 * cos + straight * sin;
    let by = miss * (6.0 * one * one - 3.0 * miss * two)
        / (one * (6.0 * one * one - 6.0 * miss * two) + miss * miss * three);
    (x - by, miss.abs() - NEAR * (one * x.min(straight)).abs())
}

impl Equation<3> for FromSpacing {
    fn residual<N: Number>(angle: V<N>, [length, p, d]: [V<N>; 3]) -> V<N> {
        spacing(angle, length, d) - p
    }
    #[inline(always)]
    fn root(known: [f64; 3]) -> f64 {
        Self::roots(known.map(|k| [k]))[0]
    }
    #[inline(always)]
    fn roots<const L: usize>([length, spacing, d]: [[f64; L]; 3]) -> [f64; L] {
        let scale: [f64; L] = std::array::from_fn(|k| 1.0 / d[k]);
        let l: [f64; L] = std::array::from_fn(|k| length[k] * scale[k]);
        let p: [f64; L] = std::array::from_fn(|k| spacing[k] * scale[k]);
        let mut x: [f64; L] =
            std::array::from_fn(|k| about(l[k], (length[k] - spacing[k]) * scale[k]));
        // How much a lane is too far from its root; one that is there stays.
        let mut off = [f64::INFINITY; L];
        for _ in 0..STEPS {
            for k in 0..L {
                let (moved, far) = step(l[k], p[k], x[k]);
                let there = off[k] <= 0.0;
                off[k] = if there { off[k] } else { far };
                x[k] = if there { x[k] } else { moved };
            }
            if off.iter().all(|off| *off <= 0.0) {
                break;
            }
        }
        for k in 0..L {
            if !(off[k] <= 0.0 && x[k] > 0.0 && x[k] <= l[k]) {
                x[k] = from_spacing_bracketed(l[k], p[k]);
            }
        }
        x
    }
}

/// Near the jam, and where there is no root; all over D.
#[cold]
#[inline(never)]
fn from_spacing_bracketed(l: f64, p: f64) -> f64 {
    let miss = |x: f64| (l - x) * x.cos() + x.sin() - p;
    bracketed(miss, 0.0, steepest(l))
}

impl Equation<3> for FromHeight {
    fn residual<N: Number>(angle: V<N>, [length, h, d]: [V<N>; 3]) -> V<N> {
        height(angle, length, d) - h
    }
    fn root([length, height, d]: [f64; 3]) -> f64 {
        let (l, h) = (length / d, height / d);
        bracketed(|x| (l - x) * x.sin() + 1.0 - x.cos() - h, 0.0, steepest(l))
    }
}

impl Equation<3> for FromCrimp {
    fn residual<N: Number>(p: V<N>, [crimp, h, d]: [V<N>; 3]) -> V<N> {
        length(angle(h, p, d), p, d) - p * (1.0 + crimp)
    }
    fn root(known: [f64; 3]) -> f64 {
        let excess = |p: f64| Self::residual(V(p), known.map(V)).value();
        let [_, h, d] = known;
        // At the jam the thread is as crimped as can be at this height; straighter means wider.
        let jam = (h * (2.0 * d - h)).sqrt() * (1.0 + f64::EPSILON);
        let mut wide = 2.0 * jam;
        while excess(wide) > 0.0 {
            wide *= 2.0;
        }
        bracketed(excess, jam, wide)
    }
}

/// The root in a bracket; NaN where the ends are of one sign.
pub(super) fn bracketed(mut miss: impl FnMut(f64) -> f64, low: f64, high: f64) -> f64 {
    // An end that is a root but for rounding is one: a thread may lie just in the jam.
    let rounding = 4.0 * f64::EPSILON * high;
    let (left, right) = (miss(low), miss(high));
    if left.abs() <= rounding {
        low
    } else if right.abs() <= rounding {
        high
    } else if left * right < 0.0 {
        bisect(&mut miss, low, high)
    } else {
        f64::NAN
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn any_two_give_the_other_two(x in 1e-4..1.55_f64, straight in 0.0..3.0_f64, d in 0.05..5.0_f64) {
            let l = d * (x + straight);
            let path = |x: f64| (spacing(V(x), V(l), V(d)).value(), height(V(x), V(l), V(d)).value());
            let (p, h) = path(x);
            let near = 4.0 * f64::EPSILON * l.max(d);
            let [a, b] = [FromSpacing::root([l, p, d]), FromHeight::root([l, h, d])];
            prop_assert!((path(a).0 - p).abs() <= near, "{a} {x}");
            prop_assert!((path(b).1 - h).abs() <= near, "{b} {x}");
            if straight > 1e-6 {
                let c = angle(V(h), V(p), V(d)).value();
                prop_assert!((c - x).abs() < 1e-7, "{c} {x}");
                let crimp = l / p - 1.0;
                if crimp > 1e-6 && h < d {
                    let found = FromCrimp::root([crimp, h, d]);
                    prop_assert!((found - p).abs() < 1e-6 * p, "{found} {p}");
                }
            }
        }
    }

    /// Here two roots lie close together, and the steps are slow to distinguish them.
    #[test]
    fn just_short_of_the_jam_the_angle_is_as_exact_as_elsewhere() {
        for (i, j) in (0..200).flat_map(|i| (0..40).map(move |j| (i, j))) {
            let (x, straight) =
                (0.01 + 0.0077 * f64::from(i), 10.0_f64.powf(f64::from(j) / 10.0 - 5.0));
            let path = |x: f64, l: f64| spacing(V(x), V(l), V(1.0)).value();
            let l = x + straight;
            let p = path(x, l);
            let found = FromSpacing::root([l, p, 1.0]);
            let near = 4.0 * f64::EPSILON * l.max(1.0);
            assert!((path(found, l) - p).abs() <= near, "{found} for {x}, {straight}");
        }
    }

    proptest! {
        /// A thread too long for its jam has no angle, wherever the steps towards one may stand still.
        #[test]
        fn beyond_the_jam_there_is_no_angle(l in 0.02..1.57_f64, share in 0.3..0.9999_f64, d in 0.05..5.0_f64) {
            let angle = FromSpacing::root([l * d, share * l.sin() * d, d]);
            prop_assert!(angle.is_nan(), "{angle}");
        }
    }

    /// Too long for the jam, and Householder's steps stand still here, far from any root.
    #[test]
    fn where_the_steps_stand_still_beyond_the_jam_there_is_no_angle() {
        for [l, p] in [
            [1.1291145801279834, 0.8094304473507953],
            [0.3532861146210449, 0.34543438456597936],
            [1.4904022491786566, 0.791717978084581],
        ] {
            assert!(p < l.sin());
            assert!(FromSpacing::root([l, p, 1.0]).is_nan(), "{l} {p}");
        }
    }

    #[test]
    fn what_cannot_be_is_no_number() {
        // Shorter than its spacing; longer than the jam lets in.
        assert!(FromSpacing::root([0.99, 1.0, 1.0]).is_nan());
        assert!(FromSpacing::root([1.2, 0.5, 1.0]).is_nan());
        assert!(FromHeight::root([1.0, 5.0, 1.0]).is_nan());
        assert!(FromCrimp::root([9.0, 0.5, 1.0]).is_nan());
        assert!(FromSpacing::root([f64::NAN, 1.0, 1.0]).is_nan());
        assert!(FromSpacing::root([1.0, 1.0, 1.0]).abs() < f64::MIN_POSITIVE);
    }
}
