//! Units of angle, force, strength and diameter.
//!
//! All are exact by the definitions of the pound, the inch and standard gravity (9.806 65 m/s²).

use super::kind::Kind;
use super::unit::Form::{Over, Per, Times};
use super::unit::{INCH, POUND, Unit, exact, plain};

/// Standard gravity, in 10⁻⁵ m/s².
const GRAVITY: u128 = 980_665;

pub(super) static UNITS: &[Unit] = &[
    // angle
    plain("°", &["deg", "degree", "degrees"], Kind::Angle, Times(1.0), "1/360 of a turn"),
    plain(
        "rad",
        &["radian", "radians"],
        Kind::Angle,
        Times(180.0 / std::f64::consts::PI),
        "180°/π",
    ),
    // force
    plain("N", &["newton", "newtons"], Kind::Force, Times(1.0), "newton"),
    plain("cN", &["centinewton"], Kind::Force, Per(100.0), "10⁻² N"),
    plain("mN", &["millinewton"], Kind::Force, Per(1000.0), "10⁻³ N"),
    plain(
        "gf",
        &["gram-force", "gram force"],
        Kind::Force,
        Times(exact(GRAVITY, 100_000_000)),
        "weight of a gram at standard gravity",
    ),
    plain(
        "kgf",
        &["kp", "kilogram-force", "kilogram force"],
        Kind::Force,
        Times(exact(GRAVITY, 100_000)),
        "weight of a kilogram at standard gravity",
    ),
    plain(
        "lbf",
        &["pound-force", "pound force"],
        Kind::Force,
        Times(exact(POUND * GRAVITY, 10_000_000_000_000)),
        "weight of a pound at standard gravity",
    ),
    // tenacity
    plain("cN/tex", &[], Kind::Tenacity, Times(1.0), "centinewtons for a tex"),
    plain("mN/tex", &[], Kind::Tenacity, Per(10.0), "millinewtons for a tex"),
    plain("N/tex", &[], Kind::Tenacity, Times(100.0), "newtons for a tex"),
    plain("cN/dtex", &[], Kind::Tenacity, Times(10.0), "centinewtons for a decitex"),
    plain(
        "gf/tex",
        &["g/tex"],
        Kind::Tenacity,
        Times(exact(GRAVITY, 1_000_000)),
        "grams-force for a tex",
    ),
    plain(
        "gf/dtex",
        &["g/dtex"],
        Kind::Tenacity,
        Times(exact(GRAVITY, 100_000)),
        "grams-force for a decitex",
    ),
    plain(
        "gf/den",
        &["g/den", "gpd"],
        Kind::Tenacity,
        Times(exact(9 * GRAVITY, 1_000_000)),
        "grams-force for a denier",
    ),
    plain(
        "RKM",
        &["km breaking length"],
        Kind::Tenacity,
        Times(exact(GRAVITY, 1_000_000)),
        "kilometres of yarn whose weight would break it",
    ),
    // stress
    plain("MPa", &["N/mm²", "N/mm2"], Kind::Stress, Times(1.0), "newtons on a square millimetre"),
    plain("GPa", &["kN/mm²", "kN/mm2"], Kind::Stress, Times(1000.0), "10³ MPa"),
    plain(
        "kgf/mm²",
        &["kgf/mm2", "kp/mm²"],
        Kind::Stress,
        Times(exact(GRAVITY, 100_000)),
        "kilograms-force on a square millimetre",
    ),
    plain(
        "psi",
        &["lbf/in²", "lbf/in2"],
        Kind::Stress,
        Times(exact(POUND * GRAVITY, INCH * INCH * 100_000_000_000)),
        "pounds-force on a square inch",
    ),
    // specific volume
    plain(
        "cm³/g",
        &["cm3/g", "mL/g", "L/kg", "l/kg"],
        Kind::SpecificVolume,
        Times(1.0),
        "cubic centimetres filled by a gram",
    ),
];

/// Units of diameter. Their names are those of lengths, so they are found only where a diameter is
/// asked for.
pub(super) static DIAMETERS: &[Unit] = &[
    plain("mm", &["millimetre", "millimetres"], Kind::Diameter, Times(1.0), "10⁻³ m"),
    plain(
        "µm",
        &["um", "μm", "micron", "microns", "micrometre"],
        Kind::Diameter,
        Per(1000.0),
        "10⁻⁶ m",
    ),
    plain("cm", &["centimetre", "centimetres"], Kind::Diameter, Times(10.0), "10⁻² m"),
    plain("in", &["inch", "inches", "\""], Kind::Diameter, Times(exact(INCH, 10)), "0.0254 m"),
    plain("mil", &["mils"], Kind::Diameter, Times(exact(INCH, 10_000)), "10⁻³ in"),
    plain("1/in", &["1/inch"], Kind::Diameter, Over(exact(INCH, 10)), "diameters in an inch"),
    plain("1/cm", &[], Kind::Diameter, Over(10.0), "diameters in a centimetre"),
];
