//! What a Rust program commonly needs: `use hankwise::prelude::*;`.
//!
//! ```
//! use hankwise::prelude::*;
//!
//! let twist = Twist::parse("9 tpi")?;
//! let count = LinearDensity::parse("16 YSW")?;
//! let factor = yarn::twist_factor(twist, count);
//! assert_eq!(format!("{:.2}", factor.value()), "38.99");
//! # Ok::<(), Error>(())
//! ```

pub use crate::error::{Error, ErrorKind, Result};
pub use crate::number::{Number, V};
pub use crate::quantity::{
    Angle, AreaShrinkage, Concentration, Contraction, CostPerMass, Count, CoverFactor, Crimp,
    Density, Diameter, DimensionalChange, DrawIn, Duration, Fineness, Force, Fraction, Frequency,
    HankRate, Kind, Length, LinearDensity, LoopDensity, Margin, MarkUp, Mass, MassLoss,
    MassPerArea, MassRate, MoistureContent, Money, OnFibre, OverWidth, Ratio, Reading,
    ReadingSpread, ReedCount, Regain, Sett, ShareLost, ShareOfSales, Shrinkage, SignedRatio,
    SpecificVolume, Speed, Stress, Stretch, TakeUp, Temperature, Tenacity, Thickness,
    TightnessFactor, Twist, TwistFactor, TwistedContraction, Typed, Volume, convert, parse,
    parse_as,
};
pub use crate::worked::{Tape, Worked, Working};
pub use crate::{catalogue, cloth, fibre, mill, quality, yarn};

#[cfg(feature = "plan-file")]
pub use crate::plan::{Plan, PlanResult, Run};
