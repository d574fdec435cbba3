//! A formula runs with a number of another crate: here a dual number, which carries a derivative
//! forward, against the same derivative read backward off the recording.

use std::ops::{Add, Div, Mul, Neg, Sub};

use hankwise::catalogue;
use hankwise::number::Number;
use hankwise::quantity::{
    Angle, Diameter, Fraction, Length, LinearDensity, Mass, Ratio, Regain, ShareLost, Shrinkage,
    Twist,
};
use hankwise::{fibre, mill, yarn};
use num_dual::{Dual64, DualNum};

/// Neither the trait nor the type is of this crate, so a wrapper is between them.
#[derive(Clone, Copy, Debug)]
struct Dual(Dual64);

macro_rules! operator {
    ($($trait:ident $method:ident $op:tt),*) => {$(
        impl $trait for Dual {
            type Output = Dual;
            fn $method(self, other: Dual) -> Dual { Dual(self.0 $op other.0) }
        }
        impl $trait<f64> for Dual {
            type Output = Dual;
            fn $method(self, other: f64) -> Dual { Dual(self.0 $op other) }
        }
    )*};
}
operator!(Add add +, Sub sub -, Mul mul *, Div div /);

impl Neg for Dual {
    type Output = Dual;
    fn neg(self) -> Dual {
        Dual(-self.0)
    }
}

impl Number for Dual {
    fn constant(value: f64) -> Self {
        Dual(Dual64::from(value))
    }
    fn value(&self) -> f64 {
        self.0.re
    }
    fn sqrt(self) -> Self {
        Dual(self.0.sqrt())
    }
    fn powf(self, exponent: f64) -> Self {
        Dual(DualNum::powf(&self.0, exponent))
    }
    fn exp(self) -> Self {
        Dual(self.0.exp())
    }
    fn ln(self) -> Self {
        Dual(self.0.ln())
    }
    fn sin(self) -> Self {
        Dual(self.0.sin())
    }
    fn cos(self) -> Self {
        Dual(self.0.cos())
    }
    fn tan(self) -> Self {
        Dual(self.0.tan())
    }
    fn atan(self) -> Self {
        Dual(self.0.atan())
    }
    fn floor(self) -> Self {
        Self::constant(self.value().floor())
    }
    fn ceil(self) -> Self {
        Self::constant(self.value().ceil())
    }
    fn min(self, other: Self) -> Self {
        if other.value() < self.value() { other } else { self }
    }
    fn max(self, other: Self) -> Self {
        if other.value() > self.value() { other } else { self }
    }
    fn if_less(self, than: Self, then: Self, otherwise: Self) -> Self {
        if self.value() < than.value() { then } else { otherwise }
    }
}

/// For each input in turn: the dual number's derivative and the recording's slope.
fn agree(name: &str, row: &[f64], run: impl Fn(&[Dual]) -> Dual) {
    let formula = catalogue::formula(name).unwrap();
    let answer = formula.answer(row).unwrap();
    let (recording, root) = formula.record(row);
    let slopes = recording.slopes(root);
    for (place, slope) in slopes.iter().enumerate().take(row.len()) {
        let dual = |(k, x): (usize, &f64)| {
            let x = Dual64::from(*x);
            Dual(if k == place { x.derivative() } else { x })
        };
        let inputs: Vec<Dual> = row.iter().enumerate().map(dual).collect();
        let result = run(&inputs).0;
        let near = |a: f64, b: f64| (a - b).abs() <= 1e-12 * a.abs().max(b.abs());
        assert!(near(result.re, answer), "{name}: {} and {answer}", result.re);
        let input = formula.input(place, row.len()).name;
        assert!(near(result.eps, *slope), "{name} by {input}: {} and {slope}", result.eps);
        assert!(result.eps.is_finite(), "{name} by {input}");
    }
}

#[test]
fn roots_and_ratios() {
    agree("twist_factor", &[205.9, 145.6], |x| {
        yarn::twist_factor(Twist::base(x[0]), LinearDensity::base(x[1])).v().0
    });
    agree("fibres_in_section", &[139.8, 0.8653, 0.24], |x| {
        let [yarn, fibre] = [x[0], x[1]].map(LinearDensity::base);
        fibre::fibres_in_section(yarn, fibre, Fraction::base(x[2])).v().0
    });
    agree("mass_at_regain", &[44.63, 0.16, 0.17], |x| {
        fibre::mass_at_regain(Mass::base(x[0]), Regain::base(x[1]), Regain::base(x[2])).v().0
    });
    agree("count_before_scouring", &[257.7, 1.0, 0.005, 0.05], |x| {
        let (loss, shrinkage) = (ShareLost::base(x[2]), Shrinkage::base(x[3]));
        yarn::count_before_scouring(LinearDensity::base(x[0]), Ratio::base(x[1]), loss, shrinkage)
            .v()
            .0
    });
}

#[test]
fn exponentials_and_lists() {
    agree("carried_share", &[1.2, 0.6], |x| {
        mill::carried_share(Mass::base(x[0]), Mass::base(x[1])).v().0
    });
    agree("mass_after_losses", &[38.27, 0.01, 0.02, 0.05], |x| {
        let losses: Vec<_> = x[1..].iter().map(|w| ShareLost::base(*w)).collect();
        mill::mass_after_losses(Mass::base(x[0]), &losses).v().0
    });
}

#[test]
fn angles() {
    agree("helix_angle", &[500.0, 0.4], |x| {
        yarn::helix_angle(Twist::base(x[0]), Diameter::base(x[1])).v().0
    });
    agree("twist_for_helix_angle", &[32.1, 0.4], |x| {
        yarn::twist_for_helix_angle(Angle::base(x[0]), Diameter::base(x[1])).v().0
    });
}

#[test]
fn branches_and_staircases() {
    // The allowance for vegetable matter below its cap, and capped.
    for row in [[0.52, 0.015], [0.40, 0.12]] {
        agree("clean_yield_customs", &row, |x| {
            fibre::clean_yield_customs(hankwise::quantity::Yield::base(x[0]), Fraction::base(x[1]))
                .v()
                .0
        });
    }
    // Whole turns of the reel: flat between its steps, for both.
    agree("reel_turns", &[330.0, 1.5, 0.05], |x| {
        let [length, reel] = [x[0], x[1]].map(Length::base);
        yarn::reel_turns(length, reel, Shrinkage::base(x[2])).v().0
    });
    // The thrums eat the lot up: nothing moves the pieces off zero.
    for row in [[20.0, 0.2, 0.9], [0.1, 0.2, 0.9]] {
        agree("pieces_from_mass", &row, |x| {
            let [yarn, fixed, each] = [x[0], x[1], x[2]].map(Mass::base);
            mill::pieces_from_mass(yarn, fixed, each).v().0
        });
    }
}
