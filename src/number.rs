//! The number that a formula is written over.
//!
//! A formula's body is generic over [`Number`]. Run it with `f64` and it gives the answer at full
//! speed; run it with [`Worked`](crate::worked::Worked) and it gives the same answer together with
//! every step that led to it. A dual or an interval type of another crate can implement the trait
//! too: only [`Number::constant`], [`Number::value`], the arithmetic and the functions are asked
//! for, the rest has defaults.
//!
//! Comparison is deliberately not part of it: `if x < y` in a body would hide the branch from the
//! recording. Write [`V::if_less`], [`V::min`] or [`V::max`] instead.

use std::ops::{Add, Div, Mul, Neg, Sub};

use crate::formula::Formula;
use crate::worked::{Label, Tape};

/// What a value inside a formula is called: its symbol, its unit (empty for a plain ratio) and what it
/// is, in words.
pub type Name = [&'static str; 3];

/// What a formula can be computed with.
pub trait Number:
    Copy
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Div<Output = Self>
    + Neg<Output = Self>
    + Add<f64, Output = Self>
    + Sub<f64, Output = Self>
    + Mul<f64, Output = Self>
    + Div<f64, Output = Self>
{
    /// A constant of a formula, such as the 1000 in 1000/T.
    fn constant(value: f64) -> Self;
    /// The plain number.
    fn value(&self) -> f64;
    /// Square root.
    fn sqrt(self) -> Self;
    /// A power with a constant exponent.
    fn powf(self, exponent: f64) -> Self;
    /// e to the power of the number.
    fn exp(self) -> Self;
    /// Natural logarithm.
    fn ln(self) -> Self;
    /// Sine of an angle in radians.
    fn sin(self) -> Self;
    /// Cosine of an angle in radians.
    fn cos(self) -> Self;
    /// Tangent of an angle in radians.
    fn tan(self) -> Self;
    /// The angle in radians with a tangent.
    fn atan(self) -> Self;
    /// The next whole number down.
    fn floor(self) -> Self;
    /// The next whole number up.
    fn ceil(self) -> Self;
    /// The square.
    #[inline(always)]
    fn squared(self) -> Self {
        self * self
    }
    /// The next whole number up, where what is whole but for the rounding of binary numbers stays so: no
    /// more than `slack` above a whole number is that number.
    #[inline(always)]
    fn round_up(self, slack: f64) -> Self {
        (self - slack).ceil()
    }
    /// The next whole number down; no more than `slack` below a whole number is that number.
    #[inline(always)]
    fn round_down(self, slack: f64) -> Self {
        (self + slack).floor()
    }
    /// The smaller of two.
    fn min(self, other: Self) -> Self;
    /// The greater of two.
    fn max(self, other: Self) -> Self;
    /// `then` where the number is less than `than`, else `otherwise`.
    fn if_less(self, than: Self, then: Self, otherwise: Self) -> Self;

    /// The root of an equation at known values, under a name (none where the root is the result
    /// itself); no number where it has no root.
    ///
    /// Unless a type has something better, it takes one step of Newton's from the plain root, over
    /// its own arithmetic: a number that carries a derivative then has the right one.
    #[inline(always)]
    fn solved<E: Equation<K>, const K: usize>(known: [Self; K], _name: Option<Name>) -> Self {
        let figures = known.map(|k| k.value());
        let root = E::root(figures);
        let residual = E::residual(V(Self::constant(root)), known.map(V));
        -residual.0 / slopes::<E, K>(root, figures).0 + root
    }

    /// The part in use where a part of this size would be best: a wheel out of those owned. What was
    /// wanted decides which part is taken, but the value goes on with the part.
    #[inline(always)]
    fn chosen(self, part: f64) -> Self {
        Self::constant(part)
    }
    /// A number out of a table or a law: the regain at a point of a curve, Student's t for a confidence.
    /// What it was looked up for decides which number it is, but the calculation goes on with the number.
    #[inline(always)]
    fn looked_up(found: f64, _for_these: &[Self]) -> Self {
        Self::constant(found)
    }
    /// Gives the step a name, so that the working shows it on a line of its own.
    #[inline(always)]
    fn named(self, _name: Name) -> Self {
        self
    }
    /// Gives the step a full label: symbol, key, unit. The label is only made where it is kept.
    #[inline(always)]
    fn labelled(self, _label: impl FnOnce() -> Label) -> Self {
        self
    }
    /// Notes that the step is the result of a formula and which steps went into it.
    #[inline(always)]
    fn result_of(
        self,
        _formula: &'static Formula,
        _inputs: impl FnOnce(&mut dyn FnMut(Self)),
    ) -> Self {
        self
    }
}

/// An equation in one unknown that only iteration solves.
pub trait Equation<const K: usize>: 'static {
    /// What is zero at the root.
    fn residual<N: Number>(unknown: V<N>, known: [V<N>; K]) -> V<N>;
    /// The root, to the last digit that double precision gives; NaN without one.
    fn root(known: [f64; K]) -> f64;
    /// The roots of several equations, bit for bit those of [`Equation::root`].
    #[inline(always)]
    fn roots<const L: usize>(known: [[f64; L]; K]) -> [f64; L] {
        std::array::from_fn(|lane| Self::root(known.map(|k| k[lane])))
    }
}

/// The slope of the residual in the unknown, and in each of the known figures.
pub(crate) fn slopes<E: Equation<K>, const K: usize>(
    root: f64,
    known: [f64; K],
) -> (f64, [f64; K]) {
    let tape = Tape::new();
    let arg = {
        let unknown = V(tape.input(root, Label::default()));
        let known = known.map(|k| V(tape.input(k, Label::default())));
        E::residual(unknown, known).0.arg()
    };
    let slopes = tape.finish().slopes(arg);
    (slopes[0], std::array::from_fn(|k| slopes[k + 1]))
}

impl Number for f64 {
    #[inline(always)]
    fn constant(value: f64) -> Self {
        value
    }
    #[inline(always)]
    fn value(&self) -> f64 {
        *self
    }
    #[inline(always)]
    fn sqrt(self) -> Self {
        f64::sqrt(self)
    }
    #[inline(always)]
    fn powf(self, exponent: f64) -> Self {
        f64::powf(self, exponent)
    }
    #[inline(always)]
    fn exp(self) -> Self {
        f64::exp(self)
    }
    #[inline(always)]
    fn ln(self) -> Self {
        f64::ln(self)
    }
    #[inline(always)]
    fn sin(self) -> Self {
        f64::sin(self)
    }
    #[inline(always)]
    fn cos(self) -> Self {
        f64::cos(self)
    }
    #[inline(always)]
    fn tan(self) -> Self {
        f64::tan(self)
    }
    #[inline(always)]
    fn atan(self) -> Self {
        f64::atan(self)
    }
    #[inline(always)]
    fn floor(self) -> Self {
        f64::floor(self)
    }
    #[inline(always)]
    fn ceil(self) -> Self {
        f64::ceil(self)
    }
    /// A missing value (NaN) stays missing, as it does in `+`: each comparison lets one of the two
    /// through, and joining the bits of equal numbers changes neither. It runs as fast as a plain
    /// minimum, which would lose it.
    #[inline(always)]
    fn min(self, other: Self) -> Self {
        let one = if self < other { self } else { other };
        let two = if other < self { other } else { self };
        f64::from_bits(one.to_bits() | two.to_bits())
    }
    #[inline(always)]
    fn max(self, other: Self) -> Self {
        let one = if self > other { self } else { other };
        let two = if other > self { other } else { self };
        f64::from_bits(one.to_bits() | two.to_bits())
    }
    #[inline(always)]
    fn solved<E: Equation<K>, const K: usize>(known: [f64; K], _name: Option<Name>) -> f64 {
        E::root(known)
    }
    #[inline(always)]
    fn if_less(self, than: Self, then: Self, otherwise: Self) -> Self {
        if self < than {
            then
        } else if self >= than {
            otherwise
        } else {
            f64::NAN
        }
    }
}

/// A number inside the body of a formula.
///
/// It wraps any [`Number`] so that `1.0 - x` reads as in the handbook: Rust lets a crate define
/// `f64 - V<N>` for its own `V`, but not `f64 - N` for every `N`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct V<N>(pub N);

macro_rules! operator {
    ($($trait:ident $method:ident $op:tt),*) => {$(
        impl<N: Number> $trait for V<N> {
            type Output = V<N>;
            #[inline(always)]
            fn $method(self, other: V<N>) -> V<N> { V(self.0 $op other.0) }
        }
        impl<N: Number> $trait<f64> for V<N> {
            type Output = V<N>;
            #[inline(always)]
            fn $method(self, other: f64) -> V<N> { V(self.0 $op other) }
        }
        impl<N: Number> $trait<V<N>> for f64 {
            type Output = V<N>;
            #[inline(always)]
            fn $method(self, other: V<N>) -> V<N> { V(N::constant(self) $op other.0) }
        }
    )*};
}
operator!(Add add +, Sub sub -, Mul mul *, Div div /);

impl<N: Number> Neg for V<N> {
    type Output = V<N>;
    #[inline(always)]
    fn neg(self) -> V<N> {
        V(-self.0)
    }
}

macro_rules! function {
    ($($(#[$doc:meta])* $name:ident),*) => {$(
        $(#[$doc])*
        #[inline(always)]
        pub fn $name(self) -> Self { V(self.0.$name()) }
    )*};
}

impl<N: Number> V<N> {
    /// A constant.
    #[inline(always)]
    pub fn constant(value: f64) -> Self {
        V(N::constant(value))
    }
    /// The plain number.
    #[inline(always)]
    pub fn value(self) -> f64 {
        self.0.value()
    }
    function!(
        /// Square root.
        sqrt,
        /// e to the power of the number.
        exp,
        /// Natural logarithm.
        ln,
        /// Sine of an angle in radians.
        sin,
        /// Cosine of an angle in radians.
        cos,
        /// Tangent of an angle in radians.
        tan,
        /// The angle in radians with a tangent.
        atan,
        /// The next whole number down.
        floor,
        /// The next whole number up.
        ceil
    );
    /// A power with a constant exponent.
    #[inline(always)]
    pub fn powf(self, exponent: f64) -> Self {
        V(self.0.powf(exponent))
    }
    /// The square.
    #[inline(always)]
    pub fn squared(self) -> Self {
        V(self.0.squared())
    }
    /// The next whole number up; no more than `slack` above a whole number is that number.
    #[inline(always)]
    pub fn round_up(self, slack: f64) -> Self {
        V(self.0.round_up(slack))
    }
    /// The next whole number down; no more than `slack` below a whole number is that number.
    #[inline(always)]
    pub fn round_down(self, slack: f64) -> Self {
        V(self.0.round_down(slack))
    }
    /// The smaller of two.
    #[inline(always)]
    pub fn min(self, other: impl Into<V<N>>) -> Self {
        V(self.0.min(other.into().0))
    }
    /// The greater of two.
    #[inline(always)]
    pub fn max(self, other: impl Into<V<N>>) -> Self {
        V(self.0.max(other.into().0))
    }
    /// `then` where the number is less than `than`, else `otherwise`.
    #[inline(always)]
    pub fn if_less(
        self,
        than: impl Into<V<N>>,
        then: impl Into<V<N>>,
        otherwise: impl Into<V<N>>,
    ) -> Self {
        V(self.0.if_less(than.into().0, then.into().0, otherwise.into().0))
    }
    /// Adds up; an empty list gives NaN.
    #[inline(always)]
    pub fn sum(all: impl Iterator<Item = V<N>>) -> Self {
        all.reduce(|sum, x| sum + x).unwrap_or_else(|| V::constant(f64::NAN))
    }
    /// Multiplies together; an empty list gives NaN.
    #[inline(always)]
    pub fn product(all: impl Iterator<Item = V<N>>) -> Self {
        all.reduce(|product, x| product * x).unwrap_or_else(|| V::constant(f64::NAN))
    }
    /// The first of a list; an empty list gives NaN.
    #[inline(always)]
    pub fn first(mut all: impl Iterator<Item = V<N>>) -> Self {
        all.next().unwrap_or_else(|| V::constant(f64::NAN))
    }
    /// The root of an equation at known values, under a name; none where the root is the result itself.
    #[inline(always)]
    pub fn solved<E: Equation<K>, const K: usize>(
        known: [V<N>; K],
        name: impl Into<Option<Name>>,
    ) -> Self {
        V(N::solved::<E, K>(known.map(|k| k.0), name.into()))
    }
    /// A number out of a table or a law, with what it was looked up for.
    #[inline(always)]
    pub fn looked_up<const K: usize>(found: f64, for_these: [V<N>; K]) -> Self {
        V(N::looked_up(found, &for_these.map(|v| v.0)))
    }
    /// Gives an intermediate result its name: it gets a line of its own in the working.
    #[inline(always)]
    pub fn named(self, name: Name) -> Self {
        V(self.0.named(name))
    }
}

impl<N: Number> From<f64> for V<N> {
    #[inline(always)]
    fn from(value: f64) -> Self {
        V::constant(value)
    }
}
