//! What goes down the route: fibre and what is on it.

use crate::fibre;
use crate::number::{Number, V};
use crate::quantity::{Mass, OnFibre, Ratio, Regain};

use super::stage::named;

/// A mass by its parts, in kilograms.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Stock {
    /// Clean dry fibre: oven-dry, free of fat and vegetable matter.
    pub fibre: f64,
    /// Water.
    pub water: f64,
    /// Oil that the mill put on.
    pub oil: f64,
    /// Wool grease, suint and dirt.
    pub grease: f64,
    /// Burr, seed, straw.
    pub vegetable: f64,
    /// Dye and mordant that stay on.
    pub dye: f64,
}

/// Names of the parts, in the order of [`Stock::parts`].
pub const PARTS: [&str; 6] =
    ["fibre", "water", "oil", "grease and dirt", "vegetable matter", "dye"];

/// The name of a part in JSON and Python, such as `oil_mass`.
pub fn part_name(part: &str) -> String {
    format!("{}_mass", part.replace(' ', "_"))
}

impl Stock {
    /// The parts, in the order of [`PARTS`].
    pub fn parts(&self) -> [f64; 6] {
        [self.fibre, self.water, self.oil, self.grease, self.vegetable, self.dye]
    }
    /// A stock from its parts, in the order of [`PARTS`].
    pub fn from_parts([fibre, water, oil, grease, vegetable, dye]: [f64; 6]) -> Self {
        Stock { fibre, water, oil, grease, vegetable, dye }
    }
    /// Mass as the scale reads it.
    pub fn total(&self) -> f64 {
        self.parts().iter().sum()
    }
    /// The same mixture, a share of it.
    pub fn share(&self, share: f64) -> Self {
        Stock::from_parts(self.parts().map(|part| part * share))
    }
    /// The two together.
    pub fn and(&self, other: &Stock) -> Self {
        let (mut parts, other) = (self.parts(), other.parts());
        for (part, other) in parts.iter_mut().zip(other) {
            *part += other;
        }
        Stock::from_parts(parts)
    }
    /// What is left when another is taken away.
    pub fn less(&self, other: &Stock) -> Self {
        let (mut parts, other) = (self.parts(), other.parts());
        for (part, other) in parts.iter_mut().zip(other) {
            *part -= other;
        }
        Stock::from_parts(parts)
    }
}

/// Clean dry fibre and its state: what is on each unit of it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Flow<N> {
    /// Clean dry fibre.
    pub(super) fibre: Mass<N>,
    /// Water on it.
    pub(super) regain: Regain<N>,
    /// Grease, dirt and oil on it.
    pub(super) fat: OnFibre<N>,
    /// How much of the fat is oil that the mill put on.
    pub(super) oil: V<N>,
    /// Vegetable matter on it.
    pub(super) vegetable: OnFibre<N>,
    /// Dye and mordant that stay on it, where it was dyed.
    pub(super) stays: Option<OnFibre<N>>,
}

impl<N: Number> Flow<N> {
    /// Mass for each unit of clean dry fibre.
    pub(super) fn state(&self, stage: &str) -> Ratio<N> {
        let state = fibre::state_ratio(self.regain, self.fat, self.vegetable);
        let state = dyed(state, self.stays);
        named(stage, "state", "mass for each unit of clean dry fibre, on leaving", state)
    }
    /// The masses.
    pub(super) fn stock(&self) -> Stock {
        let f = self.fibre.value();
        let fat = f * self.fat.value();
        let oil = fat * self.oil.value();
        Stock {
            fibre: f,
            water: f * self.regain.value(),
            oil,
            grease: fat - oil,
            vegetable: f * self.vegetable.value(),
            dye: self.stays.map_or(0.0, |stays| f * stays.value()),
        }
    }
}

/// A mass for each unit of clean dry fibre, with the dye on it.
pub(super) fn dyed<N: Number>(state: Ratio<N>, stays: Option<OnFibre<N>>) -> Ratio<N> {
    stays.map_or(state, |stays| Ratio::from(state.v() + stays.v()))
}
