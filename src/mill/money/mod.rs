//! Money: costs through losses, the cost of a lot, prices, what a commission mill charges.

mod charge;
mod cost;
mod lot;
mod lot_report;
mod price;
mod rates;
mod tariffs;
mod tariffs_report;
mod through;
mod through_report;

pub use charge::*;
pub use cost::*;
pub use lot::*;
pub use price::*;
pub use rates::*;
pub use tariffs::*;
pub use through::*;

use crate::calculation::Check;
use crate::error::Result;
use crate::number::Number;
use crate::quantity::print::figure;
use crate::quantity::{Money, Typed};

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

/// The sum of what is known; none where nothing is.
fn known<N: Number, Q: Typed<N>>(all: impl IntoIterator<Item = Option<Q>>) -> Option<Q> {
    all.into_iter().flatten().reduce(|a, b| Q::from(a.v() + b.v()))
}
