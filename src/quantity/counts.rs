//! The count systems of the trade.
//!
//! An indirect count says how many hanks of a fixed length weigh a fixed mass (finer is larger); a
//! direct count says what a fixed length weighs (coarser is larger). Each is kept by its definition
//! in yards, pounds, metres and grams, and only the quotient is rounded.

use super::kind::Kind;
use super::unit::{Form, Grade, Unit, exact};

/// A length or a mass as an exact ratio: metres, or kilograms.
type Exact = (u128, u128);

const fn yards(numerator: u128, denominator: u128) -> Exact {
    (numerator * 9144, denominator * 10_000)
}
const fn metres(n: u128) -> Exact {
    (n, 1)
}
const fn pounds(numerator: u128, denominator: u128) -> Exact {
    (numerator * 45_359_237, denominator * 100_000_000)
}
const fn ounces(n: u128) -> Exact {
    pounds(n, 16)
}
const fn drams(n: u128) -> Exact {
    pounds(n, 256)
}
const fn grains(n: u128) -> Exact {
    pounds(n, 7000)
}
/// Millionths of a gram.
const fn micrograms(n: u128) -> Exact {
    (n, 1_000_000_000)
}
const fn grams(n: u128) -> Exact {
    (n, 1000)
}

/// The tex of a yarn of which this length has this mass.
const fn tex(length: Exact, mass: Exact) -> f64 {
    exact(mass.0 * length.1 * 1_000_000, mass.1 * length.0)
}

const fn indirect(
    symbol: &'static str,
    names: &'static [&'static str],
    length: Exact,
    mass: Exact,
    definition: &'static str,
    source: &'static str,
    grade: Grade,
) -> Unit {
    let form = Form::Over(tex(length, mass));
    Unit { symbol, names, kind: Kind::LinearDensity, form, definition, source, grade }
}

const fn direct(
    symbol: &'static str,
    names: &'static [&'static str],
    mass: Exact,
    length: Exact,
    definition: &'static str,
    source: &'static str,
    grade: Grade,
) -> Unit {
    let form = Form::Times(tex(length, mass));
    Unit { symbol, names, kind: Kind::LinearDensity, form, definition, source, grade }
}

use Grade::{Definition, Memory, Published};

/// Every count system. A bare "cut", "lea" or "NeK" is in none of them: each has several readings.
pub static SYSTEMS: &[Unit] = &[
    // direct, metric
    direct("tex", &["g/km"], grams(1), metres(1000), "g per 1000 m", "ISO 1144", Definition),
    direct(
        "mtex",
        &["millitex", "mg/km"],
        micrograms(1000),
        metres(1000),
        "mg per 1000 m",
        "ISO 1144",
        Definition,
    ),
    direct(
        "dtex",
        &["decitex"],
        grams(1),
        metres(10_000),
        "g per 10 000 m",
        "ISO 1144",
        Definition,
    ),
    direct("ktex", &["kilotex", "g/m"], grams(1), metres(1), "g per m", "ISO 1144", Definition),
    direct("den", &["denier"], grams(1), metres(9000), "g per 9000 m", "ASTM D2260", Published),
    direct("drex", &["grex"], grams(1), metres(10_000), "g per 10 000 m", "GNU Units", Published),
    // indirect: hanks of a length in a mass
    indirect("Nm", &["metric"], metres(1000), grams(1000), "km per kg", "ASTM D2260", Published),
    indirect("m/g", &[], metres(1), grams(1), "m per g", "definition", Definition),
    indirect("m/kg", &[], metres(1), grams(1000), "m per kg", "definition", Definition),
    indirect(
        "m/100g",
        &[],
        metres(1),
        grams(100),
        "m per 100 g, as on a ball band",
        "definition",
        Definition,
    ),
    indirect(
        "m/50g",
        &[],
        metres(1),
        grams(50),
        "m per 50 g, as on a ball band",
        "definition",
        Definition,
    ),
    indirect(
        "yd/100g",
        &[],
        yards(1, 1),
        grams(100),
        "yd per 100 g, as on a ball band",
        "definition",
        Definition,
    ),
    indirect(
        "yd/50g",
        &[],
        yards(1, 1),
        grams(50),
        "yd per 50 g, as on a ball band",
        "definition",
        Definition,
    ),
    indirect(
        "Ne",
        &["NeC", "Nec", "cotton", "english-cotton"],
        yards(840, 1),
        pounds(1, 1),
        "840 yd per lb",
        "Davis 1920",
        Published,
    ),
    indirect(
        "spun-silk",
        &[],
        yards(840, 1),
        pounds(1, 1),
        "840 yd per lb (a folded yarn is named by its resultant)",
        "Taylor 1909",
        Published,
    ),
    indirect(
        "worsted",
        &["english-worsted"],
        yards(560, 1),
        pounds(1, 1),
        "560 yd per lb",
        "Davis 1920",
        Published,
    ),
    indirect(
        "NeL",
        &["linen", "linen-lea"],
        yards(300, 1),
        pounds(1, 1),
        "leas of 300 yd per lb",
        "Taylor 1909",
        Published,
    ),
    indirect(
        "american-cut",
        &[],
        yards(300, 1),
        pounds(1, 1),
        "cuts of 300 yd per lb",
        "ASTM D2260-01",
        Published,
    ),
    indirect(
        "american-run",
        &["run", "runs"],
        yards(1600, 1),
        pounds(1, 1),
        "runs of 1600 yd per lb",
        "Brooks 1898",
        Published,
    ),
    indirect(
        "YSW",
        &["yorkshire-skein", "yorkshire-skeins", "yorkshire"],
        yards(1536, 1),
        pounds(6, 1),
        "1536 yd per 6 lb, 256 yd per lb",
        "Davis 1920",
        Published,
    ),
    indirect(
        "galashiels-cut",
        &["gala", "gala-cut", "scotch-cut"],
        yards(300, 1),
        ounces(24),
        "300 yd per 24 oz",
        "Blanco 1917",
        Published,
    ),
    indirect(
        "hawick-cut",
        &[],
        yards(300, 1),
        ounces(26),
        "300 yd per 26 oz",
        "Textile Calculation 2015",
        Memory,
    ),
    indirect(
        "west-of-england",
        &[],
        yards(320, 1),
        pounds(1, 1),
        "320 yd per lb",
        "BellaOnline",
        Published,
    ),
    indirect(
        "alloa-480",
        &["stirling"],
        yards(11520, 1),
        pounds(24, 1),
        "spyndles of 11 520 yd per 24 lb, 480 yd per lb",
        "Textile Calculation 2015",
        Memory,
    ),
    indirect(
        "alloa-240",
        &[],
        yards(240, 1),
        pounds(1, 1),
        "240 yd per lb (hosiery yarn)",
        "Davis 1920",
        Published,
    ),
    indirect("dewsbury", &[], yards(1, 1), ounces(1), "yd per oz", "memory", Memory),
    indirect(
        "yd/oz",
        &["bump", "organzine-yd/oz"],
        yards(1, 1),
        ounces(1),
        "yd per oz",
        "Blanco 1917",
        Published,
    ),
    indirect(
        "leicester-lambswool",
        &[],
        yards(176, 1),
        pounds(1, 1),
        "176 yd per lb",
        "Davis 1920",
        Published,
    ),
    indirect(
        "asbestos-cut-us",
        &["glass-cut"],
        yards(100, 1),
        pounds(1, 1),
        "100 yd per lb",
        "ASTM D2260-01",
        Published,
    ),
    indirect(
        "asbestos-cut-uk",
        &[],
        yards(50, 1),
        pounds(1, 1),
        "50 yd per lb",
        "Textile Calculation 2015",
        Published,
    ),
    indirect("typp", &[], yards(1000, 1), pounds(1, 1), "1000 yd per lb", "GNU Units", Published),
    indirect(
        "yd/lb",
        &["yards/lb", "ypp"],
        yards(1, 1),
        pounds(1, 1),
        "yd per lb",
        "definition",
        Definition,
    ),
    indirect("yd/dr", &["yd/dram"], yards(1, 1), drams(1), "yd per dram", "definition", Definition),
    indirect(
        "french-cotton",
        &["Nf"],
        metres(1000),
        grams(500),
        "1000 m per 500 g",
        "Blanco 1917",
        Published,
    ),
    indirect(
        "irish-woollen",
        &[],
        yards(64, 1),
        pounds(1, 1),
        "yd per quarter ounce, 64 yd per lb (low confidence)",
        "memory",
        Memory,
    ),
    // direct: mass of a length
    direct(
        "poumar",
        &["lb/1000000yd"],
        pounds(1, 1),
        yards(1000000, 1),
        "lb per 10⁶ yd",
        "GNU Units",
        Published,
    ),
    direct(
        "lb/spyndle",
        &["spyndle", "jute"],
        pounds(1, 1),
        yards(14400, 1),
        "lb per 14 400 yd",
        "Woodhouse and Kilgour 1921",
        Published,
    ),
    direct(
        "dr/1000yd",
        &["silk-dram"],
        drams(1),
        yards(1000, 1),
        "drams per 1000 yd",
        "Wolfensberger 1921",
        Published,
    ),
    direct("gr/120yd", &[], grains(1), yards(120, 1), "grains per 120 yd", "ASTM D2260", Published),
    direct(
        "gr/20yd",
        &["american-grain"],
        grains(1),
        yards(20, 1),
        "grains per 20 yd",
        "Textile Calculation 2015",
        Published,
    ),
    direct(
        "gr/yd",
        &["grains/yd"],
        grains(1),
        yards(1, 1),
        "grains per yd",
        "Balasubramanian",
        Published,
    ),
    direct("g/yd", &["grams/yd"], grams(1), yards(1, 1), "g per yd", "Balasubramanian", Published),
    direct("oz/yd", &[], ounces(1), yards(1, 1), "oz per yd", "definition", Definition),
    direct(
        "dr/40yd",
        &["top-drams"],
        drams(1),
        yards(40, 1),
        "drams per 40 yd (tops and slubbing)",
        "memory",
        Memory,
    ),
    direct(
        "sowerby-bridge",
        &["dr/80yd"],
        drams(1),
        yards(80, 1),
        "drams per 80 yd (low confidence)",
        "memory",
        Memory,
    ),
    direct(
        "µg/in",
        &["ug/in"],
        micrograms(1),
        yards(1, 36),
        "µg per in (micronaire)",
        "Balasubramanian",
        Published,
    ),
    direct(
        "artificial-silk-denier",
        &["old-british-denier"],
        ounces(3),
        yards(832000, 1),
        "533⅓ deniers to the ounce, on a skein of 520 yd",
        "Taylor 1909",
        Published,
    ),
    direct(
        "old-denier-500",
        &[],
        micrograms(50_000),
        metres(500),
        "0.05 g per 500 m",
        "Wolfensberger 1921",
        Published,
    ),
    direct(
        "turin-denier",
        &[],
        micrograms(53_000),
        metres(476),
        "0.053 g per 476 m",
        "Wolfensberger 1921",
        Published,
    ),
    direct(
        "milan-denier",
        &[],
        micrograms(51_000),
        metres(476),
        "0.051 g per 476 m",
        "Wolfensberger 1921",
        Published,
    ),
    direct(
        "legal-denier-450",
        &[],
        micrograms(50_000),
        metres(450),
        "0.05 g per 450 m",
        "Three Textile Raw Materials 1924",
        Published,
    ),
];
