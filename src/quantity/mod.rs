//! What is measured: kinds of quantity, units, the trade's count and reed systems, and how people
//! write them.

pub mod counts;
mod define;
mod kind;
mod lookup;
mod parse;
pub mod print;
pub mod reeds;
mod unit;

#[cfg(feature = "plan-file")]
pub(crate) use define::define_all;
pub use define::{Definition, define, systems};
pub use kind::{
    Amount, Contraction, CostPerMass, Count, Crimp, Density, DrawIn, Duration, Fineness, Fraction,
    Frequency, Kind, Length, LinearDensity, Mass, MassPerArea, MassRate, Money, Ratio, ReedCount,
    Regain, Sett, Shrinkage, Speed, TakeUp, Twist, TwistFactor, Typed, Volume, Yield,
};
pub use lookup::{convert, unit};
pub use parse::{bare_number, number, parse, parse_as};
pub use unit::{Form, Grade, Unit, exact, units};
