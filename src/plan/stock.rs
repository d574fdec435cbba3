//! What goes down the route: fibre and what is on it.

use crate::fibre;
use crate::number::{Number, V};
use crate::quantity::{Fraction, Mass, Ratio, Regain};

/// A mass by its parts, in kilograms.
#[derive(Clone, Copy, Debug)]
pub struct Stock<N> {
    /// Clean dry fibre: oven-dry, free of fat and vegetable matter.
    pub fibre: V<N>,
    /// Water.
    pub water: V<N>,
    /// Oil that the mill put on.
    pub oil: V<N>,
    /// Wool grease, suint and dirt.
    pub grease: V<N>,
    /// Burr, seed, straw.
    pub vegetable: V<N>,
}

/// Names of the parts, in the order of [`Stock::parts`].
pub const PARTS: [&str; 5] = ["fibre", "water", "oil", "grease and dirt", "vegetable matter"];

impl<N: Number> Stock<N> {
    /// Nothing.
    pub fn none() -> Self {
        let zero = V::constant(0.0);
        Stock { fibre: zero, water: zero, oil: zero, grease: zero, vegetable: zero }
    }
    /// Each part with another's.
    pub fn with(self, other: Self, f: impl Fn(V<N>, V<N>) -> V<N>) -> Self {
        Stock {
            fibre: f(self.fibre, other.fibre),
            water: f(self.water, other.water),
            oil: f(self.oil, other.oil),
            grease: f(self.grease, other.grease),
            vegetable: f(self.vegetable, other.vegetable),
        }
    }
    /// The same mixture, a share of it.
    pub fn share(self, share: V<N>) -> Self {
        self.with(self, |part, _| part * share)
    }
    /// The parts as plain figures.
    pub fn parts(&self) -> [f64; 5] {
        [self.fibre, self.water, self.oil, self.grease, self.vegetable].map(V::value)
    }
    /// Mass as the scale reads it.
    pub fn total(&self) -> V<N> {
        self.fibre + self.water + self.oil + self.grease + self.vegetable
    }
    /// Mass for each unit of clean dry fibre, from the shares of the parts.
    pub fn state(&self) -> Ratio<N> {
        let on_fibre = |part: V<N>| part / self.fibre;
        fibre::state_ratio(
            Regain::from(on_fibre(self.water)),
            Fraction::from(on_fibre(self.oil + self.grease)),
            Fraction::from(on_fibre(self.vegetable)),
        )
    }
    /// Clean dry fibre.
    pub fn fibre(&self) -> Mass<N> {
        Mass::from(self.fibre)
    }
}

impl Stock<f64> {
    /// The stock as plain figures, from any number.
    pub fn plain<N: Number>(stock: &Stock<N>) -> Self {
        let [fibre, water, oil, grease, vegetable] = stock.parts().map(V);
        Stock { fibre, water, oil, grease, vegetable }
    }
}
