//! Kinds of quantity, and one Rust type for each.

use crate::error::{Error, Result};
use crate::number::{Number, V};

use super::lookup::unit;

/// A quantity of one kind: a number in the base unit of the kind.
pub trait Typed<N: Number>: Copy + From<V<N>> {
    /// The kind.
    const KIND: Kind;
    /// The number, in the base unit.
    fn v(self) -> V<N>;
}

macro_rules! kinds {
    ($($(#[$doc:meta])* $name:ident, $words:literal, $base:literal, $family:ident,
       $low:expr, $high:expr, $example:literal;)*) => {
        /// The kinds of quantity.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
        pub enum Kind { $($(#[$doc])* $name),* }

        impl Kind {
            /// Every kind.
            pub const ALL: &'static [Kind] = &[$(Kind::$name),*];
            /// The kind in words.
            pub const fn words(self) -> &'static str { match self { $(Kind::$name => $words),* } }
            /// The name of its Rust type.
            pub const fn name(self) -> &'static str { match self { $(Kind::$name => stringify!($name)),* } }
            /// The base unit; empty for fractions and plain numbers.
            pub const fn base(self) -> &'static str { match self { $(Kind::$name => $base),* } }
            /// The kind whose units it is written in: a crimp is written as a fraction is.
            pub const fn family(self) -> Kind { match self { $(Kind::$name => Kind::$family),* } }
            /// What is possible at all, in the base unit.
            pub const fn possible(self) -> (f64, f64) { match self { $(Kind::$name => ($low, $high)),* } }
            /// How one would write it.
            pub const fn example(self) -> &'static str { match self { $(Kind::$name => $example),* } }
        }

        $(
            $(#[$doc])*
            #[derive(Clone, Copy, Debug, PartialEq)]
            pub struct $name<N>(V<N>);

            impl<N: Number> From<V<N>> for $name<N> {
                #[inline(always)]
                fn from(v: V<N>) -> Self { $name(v) }
            }
            impl<N: Number> Typed<N> for $name<N> {
                const KIND: Kind = Kind::$name;
                #[inline(always)]
                fn v(self) -> V<N> { self.0 }
            }
            impl<N> $name<N> {
                /// A quantity from a number in the base unit.
                #[inline(always)]
                pub const fn base(number: N) -> Self { $name(V(number)) }
                /// The number itself, in the base unit.
                #[inline(always)]
                pub const fn inner(&self) -> &N { &self.0.0 }
            }
            impl<N: Number> $name<N> {
                /// The number, in the base unit.
                #[inline(always)]
                pub fn v(self) -> V<N> { self.0 }
                /// The plain number, in the base unit.
                #[inline(always)]
                pub fn value(self) -> f64 { self.0.value() }
            }
            impl $name<f64> {
                /// A quantity as people write it, such as `"22½ YSW"`.
                pub fn parse(text: &str) -> Result<Self> {
                    super::parse_as(text, Kind::$name).map(|a| Self::base(a.base()))
                }
                /// The value in another unit of the same kind.
                pub fn number(self, in_unit: &str) -> Result<f64> {
                    let unit = unit(in_unit, Some(Kind::$name))?;
                    Ok(unit.from_base(self.value()))
                }
            }
        )*
    };
}

const ANY: f64 = f64::INFINITY;

kinds! {
    /// Linear density, the trade's count, in tex.
    LinearDensity, "linear density (count)", "tex", LinearDensity, f64::MIN_POSITIVE, ANY, "16 YSW";
    /// Twist, in turns per metre.
    Twist, "twist", "turns/m", Twist, 0.0, ANY, "9 tpi";
    /// Twist factor, in turns/cm √tex.
    TwistFactor, "twist factor", "turns/cm √tex", TwistFactor, 0.0, ANY, "25 turns/cm √tex";
    /// Threads in a width or length of cloth, per centimetre.
    Sett, "sett", "threads/cm", Sett, 0.0, ANY, "4.6 picks/cm";
    /// How closely threads lie for their thickness, in threads/cm × √tex ÷ 10.
    CoverFactor, "cover factor", "K_SI", CoverFactor, 0.0, ANY, "12.5 K_SI";
    /// The fineness of a reed, in dents per centimetre.
    ReedCount, "reed count", "dents/cm", ReedCount, f64::MIN_POSITIVE, ANY, "24 dents/10 cm";
    /// How tightly a yarn is knitted, in √tex by the centimetre of a loop.
    TightnessFactor, "tightness factor", "√tex/cm", TightnessFactor, 0.0, ANY, "14 √tex/cm";
    /// Loops on a square centimetre of knitted cloth.
    LoopDensity, "loop density", "loops/cm²", LoopDensity, 0.0, ANY, "92 loops/cm²";
    /// Mass of a square metre of cloth, in grams.
    MassPerArea, "mass per area", "g/m²", MassPerArea, 0.0, ANY, "390 g/m²";
    /// Mass, in kilograms.
    Mass, "mass", "kg", Mass, 0.0, ANY, "1 lb 12 oz";
    /// Length, in metres.
    Length, "length", "m", Length, 0.0, ANY, "6 yd 18 in";
    /// Diameter of a fibre, in micrometres.
    Fineness, "fibre diameter", "µm", Fineness, f64::MIN_POSITIVE, ANY, "29 µm";
    /// A share, a loss or an efficiency: part of a whole.
    Fraction, "fraction", "", Fraction, 0.0, 1.0, "8 %";
    /// A mass after over the mass before, each with its own water and fat: may be over the whole.
    Yield, "yield", "", Fraction, 0.0, ANY, "61 %";
    /// Water on a dry mass.
    Regain, "regain", "", Fraction, 0.0, ANY, "16 %";
    /// Shortening in twisting, on the untwisted length; negative where the yarn grows.
    Contraction, "contraction on untwisted length", "", Fraction, -1.0, 0.999_999, "2 %";
    /// Shortening in twisting, on the twisted length: what is added to it to have the untwisted.
    TwistedContraction, "contraction on twisted length", "", Fraction, -0.5, ANY, "2 %";
    /// Shortening of a yarn in weaving, on the length of the yarn.
    TakeUp, "take-up on yarn length", "", Fraction, -0.999_999, 0.999_999, "8 %";
    /// The excess of the yarn over the cloth, on the length of the cloth.
    Crimp, "crimp on cloth length", "", Fraction, -0.999_999, ANY, "9 %";
    /// Narrowing from the reed to off the loom, on the width in the reed.
    DrawIn, "draw-in from reed to off-loom", "", Fraction, -0.999_999, 0.999_999, "6 %";
    /// Loss of length or width in scouring or finishing, on the size before; negative where it grows.
    Shrinkage, "shrinkage on the size before", "", Fraction, -0.999_999, 0.999_999, "10 %";
    /// How much larger it is woven than finished, on the finished size: never a shrinkage.
    OverWidth, "over-width on the finished size", "", Fraction, -0.999_999, ANY, "50 %";
    /// Change of length or width as ISO 5077 has it, on the size before: negative where it shrinks.
    DimensionalChange, "dimensional change (ISO 5077)", "", Fraction, -0.999_999, ANY, "-4 %";
    /// Loss of area, on the area before: never that of a side.
    AreaShrinkage, "shrinkage in area", "", Fraction, -ANY, 0.999_999, "20 %";
    /// Fibre or yarn lost, on what enters: never a gain, which a [`Kind::MassLoss`] may be.
    ShareLost, "loss on what enters", "", Fraction, 0.0, 1.0, "8 %";
    /// Mass lost, on the mass before; negative where flock, size or a finish goes on.
    MassLoss, "loss of mass on the mass before", "", Fraction, -ANY, 0.999_999, "8 %";
    /// Lengthening under tension, on the length without it.
    Stretch, "stretch on the unstretched length", "", Fraction, -0.999_999, ANY, "2 %";
    /// One number over another of the same kind, such as a draft.
    Ratio, "ratio", "", Ratio, 0.0, ANY, "1.4";
    /// A ratio that may be negative, such as how far a mean is within a limit, over a spread.
    SignedRatio, "ratio of either sign", "", Ratio, -ANY, ANY, "1.2";
    /// How many: spindles, ends, teeth, pieces.
    Count, "number", "", Ratio, 0.0, ANY, "120";
    /// Time, in hours.
    Duration, "time", "h", Duration, 0.0, ANY, "24 s";
    /// Speed of material, in metres per minute.
    Speed, "speed", "m/min", Speed, 0.0, ANY, "12 m/min";
    /// How often in a minute: turns of a spindle, picks of a loom, drops of a hopper.
    Frequency, "rate per minute", "/min", Frequency, 0.0, ANY, "2400 rpm";
    /// Hanks in an hour.
    HankRate, "hanks per hour", "hanks/h", HankRate, 0.0, ANY, "38 hanks/h";
    /// Mass in a time, in kilograms per hour.
    MassRate, "mass per time", "kg/h", MassRate, 0.0, ANY, "15 kg/h";
    /// Mass of a volume, in kilograms per litre.
    Density, "density", "kg/L", Density, f64::MIN_POSITIVE, ANY, "0.92 kg/L";
    /// Volume, in litres.
    Volume, "volume", "L", Volume, 0.0, ANY, "1.6 L";
    /// Diameter of a yarn, in millimetres.
    Diameter, "yarn diameter", "mm", Diameter, f64::MIN_POSITIVE, ANY, "0.35 mm";
    /// Thickness of cloth, and what else is measured across or along a thread: height of a wave,
    /// spacing, sum of diameters. In millimetres.
    Thickness, "thickness", "mm", Diameter, 0.0, ANY, "1.2 mm";
    /// Volume that a mass of yarn or fibre fills, in cubic centimetres for a gram.
    SpecificVolume, "specific volume", "cm³/g", SpecificVolume, f64::MIN_POSITIVE, ANY, "1.1 cm³/g";
    /// Slope of a line to an axis, in degrees. Formulas turn it into radians where they need them,
    /// so that a working shows the angle that a protractor would.
    Angle, "angle", "°", Angle, 0.0, 90.0, "20 °";
    /// Force, in newtons.
    Force, "force", "N", Force, 0.0, ANY, "320 cN";
    /// Force for a linear density, in cN/tex.
    Tenacity, "tenacity", "cN/tex", Tenacity, 0.0, ANY, "6 cN/tex";
    /// Force on an area, in newtons on a square millimetre.
    Stress, "stress", "MPa", Stress, 0.0, ANY, "80 MPa";
    /// Temperature, in degrees Celsius.
    Temperature, "temperature", "°C", Temperature, -273.15, ANY, "60 °C";
    /// Mass of what is dissolved in a volume of liquor, in grams per litre.
    Concentration, "concentration", "g/L", Concentration, 0.0, ANY, "10 g/L";
    /// A value of a sample, in the unit of the sample: a mean, a limit of a chart.
    Reading, "value of the sample, in its unit", "", Ratio, -ANY, ANY, "150";
    /// How far values of a sample spread, or how far off a value may be, in the unit of the sample.
    ReadingSpread, "spread or error, in the unit of the sample", "", Ratio, 0.0, ANY, "3";
    /// How far a value is from what was wanted, on what was wanted: negative below it.
    Deviation, "deviation from what is wanted", "", Fraction, -ANY, ANY, "-9 %";
    /// Money, in the mill's own currency.
    Money, "money", "", Ratio, -ANY, ANY, "120";
    /// Money for a kilogram.
    CostPerMass, "cost per mass", "/kg", CostPerMass, -ANY, ANY, "4.20 /kg";
    /// What a price leaves over the cost, on the price: never a mark-up. Negative for a loss.
    Margin, "margin on the price", "", Fraction, -ANY, 0.999_999, "30 %";
    /// What a price leaves over the cost, on the cost: never a margin. Negative for a loss.
    MarkUp, "mark-up on the cost", "", Fraction, -1.0, ANY, "40 %";
    /// A cost as a share of what was sold.
    ShareOfSales, "share of sales", "", Fraction, 0.0, ANY, "57 %";
    /// Water as a share of the mass with its water: never a regain, which is on the dry mass.
    MoistureContent, "moisture content", "", Fraction, 0.0, 1.0, "14 %";
    /// Oil, grease, size, vegetable matter or dye on the mass of the fibre: may be more than the fibre weighs.
    OnFibre, "share on the fibre", "", Fraction, 0.0, ANY, "5 %";
}

impl Kind {
    /// The kind with a name, such as `LinearDensity`.
    pub fn named(name: &str) -> Option<Kind> {
        Kind::ALL.iter().copied().find(|k| k.name() == name)
    }

    /// Refuses what cannot be: a negative mass, a loss of more than the whole.
    pub fn check(self, value: f64) -> Result<()> {
        let (low, high) = self.possible();
        if value.is_nan() {
            return Err(Error::range(format!("{} is missing (not a number)", self.words())));
        }
        if value >= low && value <= high && value.is_finite() {
            return Ok(());
        }
        let given = super::print::of_kind(value, self);
        // In full: −99.9999 %, where four digits would say −100 %.
        let limit = |x: f64| match self.family() {
            Kind::Fraction => format!("{} %", super::print::constant(x * 100.0)),
            _ => super::print::of_kind(x, self),
        };
        let wanted = match (low, high) {
            _ if value.is_infinite() => "a finite number".to_owned(),
            (l, _) if value < l && l > 0.0 && l < 1e-300 => "more than 0".to_owned(),
            (l, h) if value < l && h.is_infinite() => {
                format!("{} or more", limit(l))
            }
            (l, h) if l.is_infinite() => format!("{} or less", limit(h)),
            (l, h) => format!("between {} and {}", limit(l), limit(h)),
        };
        Err(Error::range(format!(
            "{given} is not possible for a {}; it must be {wanted}",
            self.words()
        )))
    }
}

/// A quantity of any kind: a number and the unit that it was given in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Amount {
    /// The number, in the unit.
    pub number: f64,
    /// The unit.
    pub unit: &'static super::Unit,
}

impl Amount {
    /// The number in the base unit of the kind.
    pub fn base(&self) -> f64 {
        self.unit.to_base(self.number)
    }
}
