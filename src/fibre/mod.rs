//! The fibre: water on it, what is clean of it, how fine it is.

mod allowance;
mod clean_yields;
mod equilibrium;
mod fineness;
mod grade;
mod invoice;
mod moisture;
mod raw;
pub(crate) mod tables;
mod test_wash;
mod will_spin;

pub use allowance::{allowance, allowances};
pub use clean_yields::{
    CLEAN_YIELDS, CleanYieldsInputs, CleanYieldsResults, KnownYield, clean_yields,
};
pub use equilibrium::{
    AirInputs, AirResults, EQUILIBRIUM_REGAIN, HUMIDITY_FOR_REGAIN, KeepingInputs, KeepingResults,
    equilibrium_regain, humidity_for_regain,
};
pub use fineness::*;
pub use grade::{WoolGrade, us_grade};
pub use invoice::{
    DriedSample, INVOICE, Invoice, InvoiceInputs, InvoiceResults, WaterInLot, invoice,
};
pub use moisture::*;
pub use raw::*;
pub use test_wash::{
    BalanceBand, TEST_WASH, TestWashInputs, TestWashResults, WashInterval, test_wash,
};
pub use will_spin::{
    DraftingZone, WILL_SPIN, WillSpinInputs, WillSpinResults, WoolSpinning, will_spin,
};

pub(crate) use tables::TABLES;
