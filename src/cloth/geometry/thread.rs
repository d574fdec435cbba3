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

/// Angle from the height and the spacing.
#[inline(always)]
pub(super) fn angle<N: Number>(height: V<N>, spacing: V<N>, d: V<N>) -> V<N> {
    // The length of the straight part, by the right-angled triangles on it.
    let straight = (spacing.squared() - height * (2.0 * d - height)).sqrt();
    2.0 * (height / (spacing + straight)).atan()
}

/// Length from the angle and the spacing.
#[inline(always)]
pub(super) fn length<N: Number>(angle: V<N>, spacing: V<N>, d: V<N>) -> V<N> {
    d * angle + (spacing - d * angle.sin()) / angle.cos()
}

/// The greatest angle that a thread of a length, over D, can have: where it jams, or stands upright.
fn steepest(length: f64) -> f64 {
    length.min(FRAC_PI_2)
}

/// Steps of Halley's before a bracket is halved instead. Away from the jam two are enough.
const STEPS: usize = 6;

impl Equation<3> for FromSpacing {
    fn residual<N: Number>(angle: V<N>, [length, p, d]: [V<N>; 3]) -> V<N> {
        spacing(angle, length, d) - p
    }
    #[inline(always)]
    fn root([length, spacing, d]: [f64; 3]) -> f64 {
        let (l, p) = (length / d, spacing / d);
        let excess = (length - spacing) / d;
        // A thread as short as its spacing is straight; a shorter one cannot be.
        if excess == 0.0 {
            return 0.0;
        }
        // The first terms of the series in θ, put right for one another.
        let mut x = (2.0 * excess / l).sqrt();
        for _ in 0..2 {
            x = (excess / (l / 2.0 - x / 3.0 - x * x * (l / 24.0 - x / 30.0))).sqrt();
        }
        for _ in 0..STEPS {
            let (sin, cos) = x.sin_cos();
            let straight = l - x;
            let miss = straight * cos + sin - p;
            let slope = -straight * sin;
            let bend = sin - straight * cos;
            let step = 2.0 * miss * slope / (2.0 * slope * slope - miss * bend);
            x -= step;
            // The error falls with the cube of the step.
            if step.abs() <= 1e-5 * x && x <= l {
                return x;
            }
        }
        from_spacing_bracketed(l, p)
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
    let (left, right) = (miss(low), miss(high));
    if left == 0.0 {
        low
    } else if right == 0.0 {
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
