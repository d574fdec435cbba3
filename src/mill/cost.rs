//! Money.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{CostPerMass, Duration, Fraction, Mass, Money};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] =
    &[&COST_AFTER_STAGE, &COST_SHARE, &COST_OF_TIME, &REALISATION];

/// Cost of a kilogram after a lossy stage.
#[formula(
    result = "c₂",
    sources = ["definition"],
    limits = ["waste without value; take off what it sells for"],
    slips = ["leaving the loss out: what is lost was paid for"]
)]
pub fn cost_after_stage<N: Number>(
    /// cost of a kilogram that goes in
    #[q("c₁", 0.0..=200.0)]
    cost: CostPerMass<N>,
    /// cost of the stage for a kilogram that goes in
    #[q("k", 0.0..=50.0)]
    stage: CostPerMass<N>,
    /// share lost
    #[q("w", 0.0..=0.6)]
    loss: Fraction<N>,
) -> CostPerMass<N> {
    (cost + stage) / (1.0 - loss)
}

/// A product's share of a joint cost, by the clean dry fibre in it.
#[formula(
    result = "k",
    sources = ["practice"],
    limits = ["by clean dry fibre unless the house agrees otherwise"],
    slips = ["sharing by mass at different regains"]
)]
pub fn cost_share<N: Number>(
    /// joint cost
    #[q("K", 0.0..=1000000.0)]
    cost: Money<N>,
    /// clean dry fibre in the product
    #[q("f_i", 0.0..=10000.0)]
    fibre: Mass<N>,
    /// clean dry fibre in all products
    #[q("f", 0.1..=10000.0)]
    total: Mass<N>,
) -> Money<N> {
    cost * fibre / total
}

/// Cost of running a machine for a time.
#[formula(
    result = "k",
    sources = ["definition"],
    slips = ["taking minutes for hours"]
)]
pub fn cost_of_time<N: Number>(
    /// running time
    #[q("τ", 0.0..=1000.0)]
    time: Duration<N>,
    /// cost of an hour
    #[q("c", 0.0..=500.0)]
    hourly: Money<N>,
) -> Money<N> {
    time * hourly
}

/// Goods made as a share of the material taken in, both on clean dry fibre.
#[formula(
    result = "y",
    sources = ["Cost slides"],
    limits = ["both masses on one moisture basis"],
    slips = ["finished goods at 17 % regain over greasy wool"]
)]
pub fn realisation<N: Number>(
    /// made
    #[q("f₂", 0.0..=10000.0)]
    made: Mass<N>,
    /// taken in
    #[q("f₁", 0.1..=10000.0)]
    taken: Mass<N>,
) -> Fraction<N> {
    made / taken
}
