//! Water, fat and vegetable matter on clean dry fibre.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{Fraction, Mass, Ratio, Regain};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[
    &BLEND_REGAIN,
    &MOISTURE_CONTENT,
    &REGAIN_FROM_CONTENT,
    &WATER_IN_MASS,
    &OVEN_DRY_MASS,
    &MASS_AT_REGAIN,
    &COMMERCIAL_MASS,
    &STATE_RATIO,
    &MASS_IN_STATE,
    &FIBRE_IN_MASS,
    &MASS_AFTER_CHANGE_OF_STATE,
];

/// Commercial regain of a blend of two fibres, each share by oven-dry mass.
///
/// A blend is a fibre with a regain of its own: for three fibres, blend two first.
#[formula(
    result = "A",
    sources = ["GATE solutions", "Moisture blog 2015"],
    limits = ["shares of the oven-dry mass; the allowances are those of the contract"],
    slips = ["taking the shares of the mass as weighed: the fibre with more water on it counts too much"]
)]
pub fn blend_regain<N: Number>(
    /// share of the first fibre in the oven-dry mass
    #[q("p", 0.0..=1.0)]
    share: Fraction<N>,
    /// regain agreed for the first fibre
    #[q("A₁", 0.0..=0.2)]
    first: Regain<N>,
    /// regain agreed for the second fibre
    #[q("A₂", 0.0..=0.2)]
    second: Regain<N>,
) -> Regain<N> {
    share * first + (1.0 - share) * second
}

/// Water as a share of the mass with its water, from the regain.
#[formula(
    result = "M",
    sources = ["PCT moisture", "Moisture blog 2015"],
    slips = ["taking the regain itself for the content: 17 % regain is 14.5 % content"]
)]
pub fn moisture_content<N: Number>(
    /// water on oven-dry mass
    #[q("R", 0.0..=0.4)]
    regain: Regain<N>,
) -> Fraction<N> {
    regain / (1.0 + regain)
}

/// Water on the oven-dry mass, from the share of water in the whole.
#[formula(
    result = "R",
    sources = ["PCT moisture", "Moisture blog 2015"],
    slips = ["dividing by 1 + M instead of 1 − M"]
)]
pub fn regain_from_content<N: Number>(
    /// water as a share of the mass with its water
    #[q("M", 0.0..=0.3)]
    content: Fraction<N>,
) -> Regain<N> {
    content / (1.0 - content)
}

/// Water in a mass at a regain.
#[formula(
    result = "w",
    sources = ["GATE solutions"],
    slips = ["taking the regain of the wet mass: m × R instead of m × R/(1 + R)"]
)]
pub fn water_in_mass<N: Number>(
    /// mass as weighed
    #[q("m", 0.001..=10000.0)]
    mass: Mass<N>,
    /// water on oven-dry mass
    #[q("R", 0.0..=0.4)]
    regain: Regain<N>,
) -> Mass<N> {
    mass * regain / (1.0 + regain)
}

/// Oven-dry mass of a mass at a regain.
#[formula(
    result = "D",
    sources = ["PCT moisture"],
    slips = ["m × (1 − R): the regain is on the dry mass, so divide by 1 + R"]
)]
pub fn oven_dry_mass<N: Number>(
    /// mass as weighed
    #[q("m", 0.001..=10000.0)]
    mass: Mass<N>,
    /// water on oven-dry mass
    #[q("R", 0.0..=0.4)]
    regain: Regain<N>,
) -> Mass<N> {
    mass / (1.0 + regain)
}

/// The same fibre at another regain.
#[formula(
    result = "m₂",
    sources = ["PCT moisture"],
    slips = ["adding the difference of the regains to the mass as a percentage"]
)]
pub fn mass_at_regain<N: Number>(
    /// mass as weighed
    #[q("m", 0.001..=10000.0)]
    mass: Mass<N>,
    /// regain at weighing
    #[q("R₁", 0.0..=0.4)]
    regain: Regain<N>,
    /// regain wanted
    #[q("R₂", 0.0..=0.4)]
    wanted: Regain<N>,
) -> Mass<N> {
    mass * (1.0 + wanted) / (1.0 + regain)
}

/// Invoice mass: oven-dry mass with the agreed allowances for water and fat.
#[formula(
    result = "C",
    sources = ["Moisture blog 2015", "French order 1998"],
    limits = ["the allowances are those of the contract; 17 % is the European list's for carded wool, 18.25 % for combed"],
    slips = ["multiplying (1 + A)(1 + a) where the contract adds both on the dry mass"]
)]
pub fn commercial_mass<N: Number>(
    /// oven-dry mass
    #[q("D", 0.001..=10000.0)]
    dry: Mass<N>,
    /// agreed allowance for water
    #[q("A", 0.0..=0.2)]
    allowance: Regain<N>,
    /// agreed allowance for fat, oil and dressing
    #[q("a", 0.0..=0.1)]
    fat: Fraction<N>,
) -> Mass<N> {
    dry * (1.0 + allowance + fat)
}

/// Mass of a material for each unit of the clean dry fibre in it.
///
/// Water, fat and vegetable matter are all taken on the clean dry fibre, so they add.
#[formula(
    result = "s",
    sources = ["definition"],
    slips = ["multiplying (1 + R)(1 + o): both are on the fibre, not one on the other"]
)]
pub fn state_ratio<N: Number>(
    /// water on clean dry fibre
    #[q("R", 0.0..=0.5)]
    regain: Regain<N>,
    /// grease and oil on clean dry fibre
    #[q("o", 0.0..=0.2)]
    fat: Fraction<N>,
    /// vegetable matter on clean dry fibre
    #[q("v", 0.0..=0.1)]
    vegetable: Fraction<N>,
) -> Ratio<N> {
    1.0 + regain + fat + vegetable
}

/// What the scale reads for clean dry fibre in a state.
#[formula(
    result = "m",
    sources = ["definition"],
    slips = ["weighing at the machine and comparing with a figure at label regain"]
)]
pub fn mass_in_state<N: Number>(
    /// clean dry fibre
    #[q("f", 0.001..=10000.0)]
    fibre: Mass<N>,
    /// mass for each unit of clean dry fibre
    #[q("s", 1.0..=1.7)]
    state: Ratio<N>,
) -> Mass<N> {
    fibre * state
}

/// Clean dry fibre in what was weighed.
#[formula(
    result = "f",
    sources = ["definition"],
    slips = ["taking off the percentages one after the other instead of dividing by the state"]
)]
pub fn fibre_in_mass<N: Number>(
    /// mass as weighed
    #[q("m", 0.001..=10000.0)]
    mass: Mass<N>,
    /// mass for each unit of clean dry fibre
    #[q("s", 1.0..=1.7)]
    state: Ratio<N>,
) -> Mass<N> {
    mass / state
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
    mass: Mass<N>,
    /// mass for each unit of clean dry fibre, before
    #[q("s₁", 1.0..=1.7)]
    before: Ratio<N>,
    /// mass for each unit of clean dry fibre, after
    #[q("s₂", 1.0..=1.7)]
    after: Ratio<N>,
) -> Mass<N> {
    mass * after / before
}
