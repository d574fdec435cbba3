//! What is measured: kinds of quantity, units, the trade's count and reed systems, and how people
//! write them.

pub mod counts;
mod define;
mod factors;
mod kind;
mod last_digit;
mod lookup;
mod parse;
mod plain;
pub mod print;
pub mod reeds;
pub mod share;
mod unit;

pub use define::{Definition, define, systems};
#[cfg(feature = "plan-file")]
pub(crate) use define::{OwnHere, Refused, define_all};
pub use kind::{
    Amount, Angle, AreaShrinkage, Concentration, Contraction, CostPerMass, Count, CoverFactor,
    Crimp, Density, Deviation, Diameter, DimensionalChange, DrawIn, Duration, Fineness, Force,
    Fraction, Frequency, HankRate, Kind, Length, LinearDensity, LoopDensity, Margin, MarkUp, Mass,
    MassLoss, MassPerArea, MassRate, MoistureContent, Money, OnFibre, OverWidth, Ratio, Reading,
    ReadingSpread, ReedCount, Regain, Sett, ShareLost, ShareOfSales, Shrinkage, SignedRatio,
    SpecificVolume, Speed, Stress, Stretch, TakeUp, Temperature, Tenacity, Thickness,
    TightnessFactor, Twist, TwistFactor, TwistedContraction, Typed, Volume, Yield,
};
pub use last_digit::half_of_last_digit;
pub(crate) use last_digit::last_digit;
pub(crate) use lookup::refuse_knitting_word;
pub use lookup::{convert, pair, unit, unit_to};
pub(crate) use parse::fraction_sign;
pub use parse::{bare_number, number, parse, parse_as};
pub(crate) use plain::plain;
pub use unit::{Form, Unit, exact, units};
