//! Prices: margin and mark-up, premiums, costs as shares of sales.

use crate::calculation::Inputs;
use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::print::of_kind;
use crate::quantity::{CostPerMass, Kind, Margin, MarkUp, Money, Ratio, ShareOfSales};

/// Price that leaves a margin, which is a share of the price.
#[formula(
    result = "p",
    sources = ["definition"],
    limits = ["before value added tax and other taxes on sales"],
    slips = ["a margin added to the cost: 30 % on cost is 23 % of the price"]
)]
pub fn price_at_margin<N: Number>(
    /// whole cost
    #[q("k_m", 0.0..=1000000.0)]
    cost: Money<N>,
    /// margin, on the price
    #[q("g", 0.0..=0.8)]
    margin: Margin<N>,
) -> Money<N> {
    cost / (1.0 - margin)
}

/// Price with a mark-up, which is a share of the cost.
#[formula(
    result = "p",
    sources = ["Fabric costing slides"],
    limits = ["before value added tax and other taxes on sales"],
    slips = ["a mark-up taken for the margin on the price, which is less"]
)]
pub fn price_at_mark_up<N: Number>(
    /// whole cost
    #[q("k_m", 0.0..=1000000.0)]
    cost: Money<N>,
    /// mark-up, on the cost
    #[q("u", 0.0..=3.0)]
    mark_up: MarkUp<N>,
) -> Money<N> {
    cost * (1.0 + mark_up)
}

/// The mark-up on cost that leaves a margin on the price.
#[formula(
    result = "u",
    sources = ["definition"],
    slips = ["taking the two for one"]
)]
pub fn mark_up_of_margin<N: Number>(
    /// margin, on the price
    #[q("g", 0.0..=0.8)]
    margin: Margin<N>,
) -> MarkUp<N> {
    margin / (1.0 - margin)
}

/// What better fibre is worth, from steps of quality and the value of a step: a millimetre of
/// hauteur, a micrometre, a newton a kilotex.
#[formula(
    result = "c",
    sources = ["Robinson slides"],
    limits = ["values of the day; each step taken by itself, as if the others did not change"],
    slips = ["counting one advantage twice: longer fibre and its own faster spinning"]
)]
pub fn quality_premium<N: Number>(
    /// steps of each quality
    #[q("n", 0.0..=50.0)]
    quality_steps: &[Ratio<N>],
    /// value of a step of each, for a kilogram
    #[q("v", 0.0..=50.0)]
    step_values: &[CostPerMass<N>],
) -> CostPerMass<N> {
    quality_steps.zip(step_values).fold(V::constant(0.0), |sum, (n, v)| sum + n * v)
}

/// Costs together, as a share of sales.
#[formula(
    result = "K",
    sources = ["Cost slides"],
    limits = ["every part on the sales of one time"],
    slips = ["adding shares of cost to shares of sales"]
)]
pub fn costs_of_sales<N: Number>(
    /// each cost, on sales
    #[q("k", 0.0..=1.0)]
    costs_on_sales: &[ShareOfSales<N>],
) -> ShareOfSales<N> {
    costs_on_sales.fold(V::constant(0.0), |sum, k| sum + k)
}

/// Profit that costs leave, as a margin on sales.
#[formula(
    result = "g",
    sources = ["Cost slides"],
    limits = ["operating profit without interest and depreciation among the costs, net profit with them; before tax"],
    slips = ["forgetting interest and depreciation"]
)]
pub fn profit_of_sales<N: Number>(
    /// each cost, on sales
    #[q("k", 0.0..=1.0)]
    costs_on_sales: &[ShareOfSales<N>],
) -> Margin<N> {
    costs_on_sales.fold(V::constant(1.0), |left, k| left - k)
}

/// How a price is made from a cost.
#[derive(Clone, Debug, Inputs)]
pub enum Selling<N> {
    /// margin, on the price
    #[q("g", 0.0..=0.8, zero)]
    Margin(Margin<N>),
    /// mark-up, on the cost
    #[q("u", 0.0..=3.0, zero)]
    MarkUp(MarkUp<N>),
}

impl<N: Number> Selling<N> {
    /// The price for a cost.
    pub(super) fn price(&self, cost: Money<N>) -> Money<N> {
        match self {
            Selling::Margin(margin) => price_at_margin(cost, *margin),
            Selling::MarkUp(mark_up) => price_at_mark_up(cost, *mark_up),
        }
    }
}

impl Selling<f64> {
    /// By what the price is made, in words.
    pub(super) fn words(&self) -> String {
        match self {
            Selling::Margin(g) => {
                format!("{} margin on the price", of_kind(g.value(), Kind::Margin))
            }
            Selling::MarkUp(u) => {
                format!("{} mark-up on the cost", of_kind(u.value(), Kind::MarkUp))
            }
        }
    }
}
