//! Money: costs through losses, the cost of a lot, prices, what a commission mill charges.

pub(super) mod charge;
pub(super) mod cost;
mod lot;
mod lot_report;
pub(super) mod price;
mod tariffs;
mod tariffs_report;
mod through;
mod through_report;

pub use charge::*;
pub use cost::*;
pub use lot::{
    GoodsBorne, LOT_COST, LotCostInputs, LotCostResults, LotGoods, LotStage, OwnCost, OwnStage,
    OwnTime, Rates, StageCost, lot_cost,
};
pub use price::*;
pub use tariffs::{
    COMPARE_TARIFFS, CleanTariff, CompareTariffsInputs, CompareTariffsResults, RejectTariff,
    YieldCharge, compare_tariffs,
};
pub use through::{
    COST_THROUGH, CostThroughInputs, CostThroughResults, CostedGoods, CostedStage, GoodsCost,
    StageThrough, WasteSold, cost_through,
};

use crate::calculation::{Calculation, Check};
use crate::error::Result;
use crate::quantity::Money;
use crate::quantity::print::figure;

/// The calculations of money.
pub(super) const CALCULATIONS: &[&Calculation] = &[&COST_THROUGH, &COMPARE_TARIFFS, &LOT_COST];

/// Refuses an hour that would bring money instead of costing it.
fn hour_costs(check: &Check<'_>, name: &str, hourly: Option<Money<f64>>) -> Result<()> {
    match hourly.map(Money::value).filter(|hourly| *hourly < 0.0) {
        None => Ok(()),
        Some(hourly) => Err(check.refuse(
            name,
            format!("{} is given for what an hour costs; write 0 or more", figure(hourly)),
        )),
    }
}
