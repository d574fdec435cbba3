//! Several rows at a time: a number that is a handful of values side by side.
//!
//! The processor does the same operation on two or more values at once where a loop over an array
//! says so. Formulas that are slow row by row ask for it (`lanes = true`); each lane gives the same
//! bits as `f64`.

use std::ops::{Add, Div, Mul, Neg, Sub};

use crate::number::{Equation, Name, Number, V};

/// How many.
pub(crate) const LANES: usize = 8;

/// Values side by side.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Lanes([f64; LANES]);

impl Lanes {
    /// Some rows of a column.
    #[inline(always)]
    pub(crate) fn of(column: &[f64], at: usize) -> V<Lanes> {
        V(Lanes(std::array::from_fn(|k| column[at + k])))
    }
    /// Writes the values into rows of a column.
    #[inline(always)]
    pub(crate) fn put(self, out: &mut [f64], at: usize) {
        out[at..at + LANES].copy_from_slice(&self.0);
    }
    #[inline(always)]
    fn each(self, f: impl Fn(f64) -> f64) -> Self {
        Lanes(self.0.map(f))
    }
    #[inline(always)]
    fn with(self, other: Self, f: impl Fn(f64, f64) -> f64) -> Self {
        Lanes(std::array::from_fn(|k| f(self.0[k], other.0[k])))
    }
}

macro_rules! operator {
    ($($trait:ident $method:ident),*) => {$(
        impl $trait for Lanes {
            type Output = Lanes;
            #[inline(always)]
            fn $method(self, other: Lanes) -> Lanes { self.with(other, f64::$method) }
        }
        impl $trait<f64> for Lanes {
            type Output = Lanes;
            #[inline(always)]
            fn $method(self, other: f64) -> Lanes { self.each(|x| x.$method(other)) }
        }
    )*};
}
operator!(Add add, Sub sub, Mul mul, Div div);

impl Neg for Lanes {
    type Output = Lanes;
    #[inline(always)]
    fn neg(self) -> Lanes {
        self.each(f64::neg)
    }
}

macro_rules! function {
    ($($name:ident)*) => {$(
        #[inline(always)]
        fn $name(self) -> Self { self.each(f64::$name) }
    )*};
}

impl Number for Lanes {
    #[inline(always)]
    fn constant(value: f64) -> Self {
        Lanes([value; LANES])
    }
    /// Of the first lane: a formula's body never asks.
    #[inline(always)]
    fn value(&self) -> f64 {
        self.0[0]
    }
    function!(sqrt exp ln sin cos tan atan floor ceil);
    #[inline(always)]
    fn powf(self, exponent: f64) -> Self {
        self.each(|x| x.powf(exponent))
    }
    #[inline(always)]
    fn min(self, other: Self) -> Self {
        self.with(other, Number::min)
    }
    #[inline(always)]
    fn max(self, other: Self) -> Self {
        self.with(other, Number::max)
    }
    #[inline(always)]
    fn if_less(self, than: Self, then: Self, otherwise: Self) -> Self {
        Lanes(std::array::from_fn(|k| self.0[k].if_less(than.0[k], then.0[k], otherwise.0[k])))
    }
    #[inline(always)]
    fn solved<E: Equation<K>, const K: usize>(known: [Self; K], _name: Option<Name>) -> Self {
        Lanes(E::roots(known.map(|k| k.0)))
    }
}
