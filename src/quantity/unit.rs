//! Units: what each is called, what it is worth, who says so.

use super::define::own_units;
use super::factors::FACTORS;
use super::kind::Kind;
use crate::number::Number;
use crate::source::{Basis, basis, cited};

/// How a number in a unit becomes a number in the base unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Form {
    /// base = number × factor
    Times(f64),
    /// base = number ÷ divisor; exact where the factor would not be
    Per(f64),
    /// base = (number − zero) ÷ degrees: a scale with a zero of its own, of smaller degrees
    From {
        /// What the scale reads at the zero of the base unit.
        zero: f64,
        /// Its degrees in one of the base unit.
        degrees: f64,
    },
    /// base = constant ÷ number: the indirect counts, where a larger number is a finer yarn
    Over(f64),
}

/// A unit of measurement.
#[derive(Clone, Debug, PartialEq)]
pub struct Unit {
    /// How it is printed.
    pub symbol: &'static str,
    /// Other ways to write it.
    pub names: &'static [&'static str],
    /// What it measures.
    pub kind: Kind,
    /// What it is worth.
    pub form: Form,
    /// Its definition in words.
    pub definition: &'static str,
    /// Key of the source, see [`crate::source`].
    pub source: &'static str,
    /// What the definition rests on where that is not what the source is, such as the user's own word.
    pub rests_on: Option<Basis>,
}

impl Unit {
    /// What the definition rests on.
    pub fn basis(&self) -> Basis {
        self.rests_on.unwrap_or_else(|| basis(self.source))
    }
    /// What the definition rests on, with the source where there is one: `book or paper, Davis 1920`.
    pub fn cited(&self) -> String {
        match self.rests_on {
            Some(basis) => format!("{}, {}", basis.words(), self.source),
            None => cited(self.source),
        }
    }
    /// A number in this unit, in the base unit.
    #[inline]
    pub fn to_base<N: Number>(&self, number: N) -> N {
        match self.form {
            Form::Times(1.0) => number,
            Form::Times(factor) => number * factor,
            Form::Per(divisor) => number / divisor,
            Form::From { zero, degrees } => (number - zero) / degrees,
            Form::Over(constant) => N::constant(constant) / number,
        }
    }
    /// A number in the base unit, in this unit.
    #[inline]
    pub fn from_base<N: Number>(&self, base: N) -> N {
        match self.form {
            Form::Times(1.0) => base,
            Form::Times(factor) => base / factor,
            Form::Per(divisor) => base * divisor,
            Form::From { zero, degrees } => base * degrees + zero,
            Form::Over(constant) => N::constant(constant) / base,
        }
    }
    /// True for an indirect count.
    pub const fn is_indirect(&self) -> bool {
        matches!(self.form, Form::Over(_))
    }
}

/// numerator/denominator, rounded once.
pub const fn exact(numerator: u128, denominator: u128) -> f64 {
    let (mut a, mut b) = (numerator, denominator);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    (numerator / a) as f64 / (denominator / a) as f64
}

/// Short form for the table: a unit fixed by definition.
pub(super) const fn plain(
    symbol: &'static str,
    names: &'static [&'static str],
    kind: Kind,
    form: Form,
    definition: &'static str,
) -> Unit {
    Unit { symbol, names, kind, form, definition, source: "definition", rests_on: None }
}

use Form::{Per, Times};

pub(super) const INCH: u128 = 254; // in 10⁻⁴ m
pub(super) const POUND: u128 = 45_359_237; // in 10⁻⁸ kg

/// Units other than the count systems ([`super::counts`]), the reed systems ([`super::reeds`]) and
/// those of strength and diameter ([`super::mechanics`]).
static GENERAL: &[Unit] = &[
    // mass
    plain(
        "kg",
        &["kilogram", "kilograms", "kgs", "kilo", "kilos"],
        Kind::Mass,
        Times(1.0),
        "kilogram",
    ),
    plain("g", &["gram", "grams", "gm"], Kind::Mass, Per(1000.0), "10⁻³ kg"),
    plain("mg", &["milligram"], Kind::Mass, Per(1e6), "10⁻⁶ kg"),
    plain("t", &["tonne", "tonnes"], Kind::Mass, Times(1000.0), "1000 kg"),
    plain(
        "lb",
        &["lbs", "pound", "pounds"],
        Kind::Mass,
        Times(exact(POUND, 100_000_000)),
        "0.453 592 37 kg",
    ),
    plain(
        "st",
        &["stone", "stones"],
        Kind::Mass,
        Times(exact(14 * POUND, 100_000_000)),
        "14 lb (imperial stone)",
    ),
    plain(
        "imp cwt",
        &["imp-cwt", "long cwt"],
        Kind::Mass,
        Times(exact(112 * POUND, 100_000_000)),
        "112 lb (imperial hundredweight)",
    ),
    plain(
        "US cwt",
        &["us-cwt", "short cwt"],
        Kind::Mass,
        Times(exact(POUND, 1_000_000)),
        "100 lb (hundredweight of the United States)",
    ),
    plain("oz", &["ounce", "ounces"], Kind::Mass, Times(exact(POUND, 1_600_000_000)), "1/16 lb"),
    plain("dr", &["dram", "drams"], Kind::Mass, Times(exact(POUND, 25_600_000_000)), "1/256 lb"),
    plain(
        "gr",
        &["grain", "grains"],
        Kind::Mass,
        Times(exact(POUND, 700_000_000_000)),
        "1/7000 lb",
    ),
    // length
    plain("m", &["metre", "metres", "meter", "meters"], Kind::Length, Times(1.0), "metre"),
    plain("cm", &["centimetre", "centimetres"], Kind::Length, Per(100.0), "10⁻² m"),
    plain("mm", &["millimetre", "millimetres"], Kind::Length, Per(1000.0), "10⁻³ m"),
    plain("km", &["kilometre", "kilometres"], Kind::Length, Times(1000.0), "1000 m"),
    plain("in", &["inch", "inches", "\""], Kind::Length, Times(exact(INCH, 10_000)), "0.0254 m"),
    plain("ft", &["foot", "feet"], Kind::Length, Times(exact(12 * INCH, 10_000)), "0.3048 m"),
    plain(
        "yd",
        &["yard", "yards", "yds"],
        Kind::Length,
        Times(exact(36 * INCH, 10_000)),
        "0.9144 m",
    ),
    plain("mile", &["miles"], Kind::Length, Times(exact(1760 * 36 * INCH, 10_000)), "1760 yd"),
    // twist
    plain(
        "turns/m",
        &["tpm", "t/m", "T/m", "turns/metre"],
        Kind::Twist,
        Times(1.0),
        "turns in a metre",
    ),
    plain("turns/cm", &["tpcm", "t/cm"], Kind::Twist, Times(100.0), "turns in a centimetre"),
    plain("turns/10 cm", &["turns/dm"], Kind::Twist, Times(10.0), "turns in ten centimetres"),
    plain(
        "tpi",
        &["turns/in", "turns/inch"],
        Kind::Twist,
        Times(exact(10_000, INCH)),
        "turns in an inch",
    ),
    // sett
    plain(
        "threads/cm",
        &["ends/cm", "picks/cm", "courses/cm", "wales/cm", "wraps/cm", "epcm", "ppcm", "/cm"],
        Kind::Sett,
        Times(1.0),
        "threads in a centimetre",
    ),
    plain(
        "threads/10 cm",
        &["ends/10 cm", "picks/10 cm", "ends/dm", "picks/dm", "threads/dm"],
        Kind::Sett,
        Per(10.0),
        "threads in ten centimetres",
    ),
    plain(
        "threads/in",
        &[
            "ends/in",
            "picks/in",
            "courses/in",
            "wales/in",
            "epi",
            "ppi",
            "ends/inch",
            "picks/inch",
            "threads/inch",
            "wpi",
            "wraps/in",
            "/in",
        ],
        Kind::Sett,
        Times(exact(100, INCH)),
        "threads in an inch",
    ),
    // loop density
    plain(
        "loops/cm²",
        &["loops/cm2", "stitches/cm²", "stitches/cm2"],
        Kind::LoopDensity,
        Times(1.0),
        "loops on a square centimetre",
    ),
    plain(
        "loops/in²",
        &["loops/in2", "loops/inch²", "stitches/in²", "stitches/in2"],
        Kind::LoopDensity,
        Times(exact(100 * 100, INCH * INCH)),
        "loops on a square inch",
    ),
    plain(
        "threads/quarter-inch",
        &["ends/quarter-inch", "picks/quarter-inch"],
        Kind::Sett,
        Times(exact(400, INCH)),
        "threads in a quarter of an inch, as under the glass",
    ),
    plain(
        "threads/yd",
        &["ends/yd", "picks/yd"],
        Kind::Sett,
        Times(exact(100, 36 * INCH)),
        "threads in a yard",
    ),
    // mass per area
    plain(
        "g/m²",
        &["g/m2", "gsm", "grams/m²"],
        Kind::MassPerArea,
        Times(1.0),
        "grams on a square metre",
    ),
    plain(
        "oz/yd²",
        &["oz/yd2", "oz/sq yd", "osy"],
        Kind::MassPerArea,
        Times(exact(POUND * 10_000 * 10_000 * 1000, 1_600_000_000 * 9144 * 9144)),
        "ounces on a square yard",
    ),
    Unit {
        source: "Wikipedia textile units",
        ..plain(
            "momme",
            &["mommes"],
            Kind::MassPerArea,
            Times(exact(POUND * 1000, 11_430 * 914_400)),
            "a pound on 100 yd of a width of 45 in",
        )
    },
    // fibre diameter
    plain(
        "µm",
        &["um", "μm", "micron", "microns", "micrometre"],
        Kind::Fineness,
        Times(1.0),
        "10⁻⁶ m",
    ),
    // fractions
    plain("%", &["percent", "per cent", "pct"], Kind::Fraction, Per(100.0), "one in a hundred"),
    plain("fraction", &["share"], Kind::Fraction, Times(1.0), "part of one"),
    // plain numbers
    plain(
        "",
        &["teeth", "tooth", "spindles", "ends", "dents", "pieces", "bobbins", "turns", "picks"],
        Kind::Ratio,
        Times(1.0),
        "a number",
    ),
    // time
    plain("h", &["hour", "hours", "hr", "hrs"], Kind::Duration, Times(1.0), "hour"),
    plain("min", &["minute", "minutes"], Kind::Duration, Per(60.0), "1/60 h"),
    plain("s", &["second", "seconds", "sec"], Kind::Duration, Per(3600.0), "1/3600 h"),
    // speed
    plain("m/min", &["metres/min", "m/minute"], Kind::Speed, Times(1.0), "metres in a minute"),
    plain("m/s", &[], Kind::Speed, Times(60.0), "metres in a second"),
    plain(
        "yd/min",
        &["yards/min"],
        Kind::Speed,
        Times(exact(36 * INCH, 10_000)),
        "yards in a minute",
    ),
    plain("ft/min", &[], Kind::Speed, Times(exact(12 * INCH, 10_000)), "feet in a minute"),
    // rate per minute
    plain(
        "/min",
        &["rpm", "r/min", "picks/min", "ppm", "drops/min", "draws/min", "turns/min"],
        Kind::Frequency,
        Times(1.0),
        "times in a minute",
    ),
    plain("/h", &["/hour", "drops/h"], Kind::Frequency, Per(60.0), "times in an hour"),
    // mass per time
    plain("kg/h", &["kg/hour", "kg/hr"], Kind::MassRate, Times(1.0), "kilograms in an hour"),
    plain("g/min", &[], Kind::MassRate, Times(0.06), "grams in a minute"),
    plain(
        "lb/h",
        &["lb/hour", "lb/hr"],
        Kind::MassRate,
        Times(exact(POUND, 100_000_000)),
        "pounds in an hour",
    ),
    // density, volume
    plain(
        "kg/L",
        &["kg/l", "g/cm³", "g/cm3", "g/mL"],
        Kind::Density,
        Times(1.0),
        "kilograms in a litre",
    ),
    plain("kg/m³", &["kg/m3"], Kind::Density, Per(1000.0), "kilograms in a cubic metre"),
    plain("L", &["l", "litre", "litres", "liter"], Kind::Volume, Times(1.0), "10⁻³ m³"),
    plain("mL", &["ml"], Kind::Volume, Per(1000.0), "10⁻³ L"),
    // temperature
    plain(
        "°C",
        &["degC", "deg C", "ºC", "celsius", "centigrade"],
        Kind::Temperature,
        Times(1.0),
        "degree Celsius",
    ),
    plain(
        "°F",
        &["degF", "deg F", "ºF", "fahrenheit"],
        Kind::Temperature,
        Form::From { zero: 32.0, degrees: 1.8 },
        "1.8 degrees to one of Celsius, 32 at its zero",
    ),
    // concentration
    plain("g/L", &["g/l", "grams/litre"], Kind::Concentration, Times(1.0), "grams in a litre"),
    // The gallon alone has two readings, a fifth apart.
    plain(
        "oz/imp gal",
        &["oz/gal (imp)", "oz/imperial gallon"],
        Kind::Concentration,
        Times(exact(POUND * 1000, 16 * 454_609_000)),
        "ounces in an imperial gallon of 4.546 09 L",
    ),
    plain(
        "lb/imp gal",
        &["lb/gal (imp)", "lb/imperial gallon"],
        Kind::Concentration,
        Times(exact(POUND * 1000, 454_609_000)),
        "pounds in an imperial gallon of 4.546 09 L",
    ),
    plain(
        "oz/US gal",
        &["oz/gal (US)"],
        Kind::Concentration,
        Times(exact(POUND * 10_000, 16 * 3_785_411_784)),
        "ounces in a US gallon of 3.785 411 784 L",
    ),
    plain(
        "lb/US gal",
        &["lb/gal (US)"],
        Kind::Concentration,
        Times(exact(POUND * 10_000, 3_785_411_784)),
        "pounds in a US gallon of 3.785 411 784 L",
    ),
    plain(
        "imp gal",
        &["gal (imp)", "imperial gallon", "imperial gallons"],
        Kind::Volume,
        Times(exact(454_609, 100_000)),
        "imperial gallon, 4.546 09 L",
    ),
    plain(
        "US gal",
        &["gal (US)", "US gallon", "US gallons"],
        Kind::Volume,
        Times(exact(3_785_411_784, 1_000_000_000)),
        "gallon of the United States, 231 cubic inches",
    ),
    // money
    plain("/kg", &["per kg"], Kind::CostPerMass, Times(1.0), "for a kilogram"),
    plain("/lb", &["per lb"], Kind::CostPerMass, Times(exact(100_000_000, POUND)), "for a pound"),
];

/// Every unit, those of one's own last.
pub fn units() -> impl Iterator<Item = &'static Unit> {
    let own = own_units();
    without_factors().chain(FACTORS.iter()).chain(super::mechanics::DIAMETERS).chain(own)
}

pub(super) fn without_factors() -> impl Iterator<Item = &'static Unit> {
    let counts = super::counts::SYSTEMS.iter().map(|system| &system.unit);
    let reeds = super::reeds::SYSTEMS.iter();
    GENERAL.iter().chain(counts).chain(reeds).chain(super::mechanics::UNITS)
}
