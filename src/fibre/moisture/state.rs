//! The state of a material: what is on its clean dry fibre.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Mass, OnFibre, Ratio, Regain};

/// Water, fat and vegetable matter are all taken on the clean dry fibre, so they add.
#[formula(
    result = "s_m",
    sources = ["definition"],
    slips = ["multiplying (1 + R)(1 + o): both are on the fibre, not one on the other"]
)]
pub fn state_ratio<N: Number>(
    /// water on clean dry fibre
    #[q("R", 0.0..=0.5)]
    regain: Regain<N>,
    /// grease and oil on clean dry fibre
    #[q("o", 0.0..=0.2)]
    fat: OnFibre<N>,
    /// vegetable matter on clean dry fibre
    #[q("v_m", 0.0..=0.1)]
    vegetable: OnFibre<N>,
) -> Ratio<N> {
    1.0 + regain + fat + vegetable
}

/// What the scale reads for clean dry fibre in a state.
#[formula(
    result = "m",
    sources = ["definition"],
    slips = ["weighing at the machine and comparing with a value at label regain"]
)]
#[inverse(
    "Clean dry fibre in what was weighed.",
    fibre_in_mass(mass "mass as weighed": 0.001..=10000.0, state_ratio) -> fibre_mass
        = mass / state_ratio,
    slips = ["taking off the percentages one after the other instead of dividing by the state"]
)]
pub fn mass_in_state<N: Number>(
    /// clean dry fibre
    #[q("f", 0.001..=10000.0)]
    fibre_mass: Mass<N>,
    /// mass for each unit of clean dry fibre
    #[q("s_m", 1.0..=1.7)]
    state_ratio: Ratio<N>,
) -> Mass<N> {
    fibre_mass * state_ratio
}

/// Mass of the same fibre in another state: oil out, water in.
#[formula(
    result = "m₂",
    sources = ["definition"],
    slips = ["multiplying factors for water, oil and dirt; the states add on the fibre"]
)]
pub fn mass_after_change_of_state<N: Number>(
    /// mass before
    #[q("m₁", 0.001..=10000.0)]
    mass_before: Mass<N>,
    /// mass for each unit of clean dry fibre, before
    #[q("s₁", 1.0..=1.7)]
    state_ratio_before: Ratio<N>,
    /// mass for each unit of clean dry fibre, after
    #[q("s₂", 1.0..=1.7)]
    state_ratio_after: Ratio<N>,
) -> Mass<N> {
    mass_before * state_ratio_after / state_ratio_before
}
