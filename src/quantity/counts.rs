//! The count systems of the trade, as data: one row, one system.
//!
//! An indirect count says how many hanks of a fixed length weigh a fixed mass (finer is larger); a
//! direct count says what a fixed length weighs (coarser is larger). Each is kept by its definition
//! in yards, pounds, metres and grams, and only the quotient is rounded. Systems that users define are
//! added by [`super::define`].

use super::kind::Kind;
use super::unit::{Form, Unit, exact};
use crate::source::Basis;

/// A count system: how it is written, what it is worth, where and when it was used.
#[derive(Debug, PartialEq)]
pub struct System {
    /// Its unit: symbol, names, definition in words, source.
    pub unit: Unit,
    /// The length of its definition, in metres.
    pub length: f64,
    /// The mass of its definition, in kilograms.
    pub mass: f64,
    /// Where it is at home, as its name or its source says; empty where neither does.
    pub country: &'static str,
    /// The year of the source, unless more is known; empty where it has none.
    pub date: &'static str,
}

impl System {
    /// The tex of a yarn of count 1.
    pub fn tex(&self) -> f64 {
        self.unit.to_base(1.0)
    }
}

/// A length or a mass as an exact ratio: metres, or kilograms.
pub(super) type Exact = (u128, u128);

const fn yd(n: u128) -> Exact {
    (n * 9144, 10_000)
}
const fn inches(n: u128) -> Exact {
    (n * 254, 10_000)
}
const fn m(n: u128) -> Exact {
    (n, 1)
}
const fn lb(n: u128) -> Exact {
    (n * 45_359_237, 100_000_000)
}
const fn part_of_lb(n: u128, parts: u128) -> Exact {
    (n * 45_359_237, parts * 100_000_000)
}
const fn oz(n: u128) -> Exact {
    part_of_lb(n, 16)
}
const fn dr(n: u128) -> Exact {
    part_of_lb(n, 256)
}
const fn gr(n: u128) -> Exact {
    part_of_lb(n, 7000)
}
const fn g(n: u128) -> Exact {
    (n, 1000)
}
/// Millionths of a gram.
const fn ug(n: u128) -> Exact {
    (n, 1_000_000_000)
}

/// Hanks of a length in a mass.
pub(super) const fn indirect(length: Exact, mass: Exact) -> (Form, f64, f64) {
    (Form::Over(tex(length, mass)), exact(length.0, length.1), exact(mass.0, mass.1))
}

/// What a length weighs.
pub(super) const fn direct(mass: Exact, length: Exact) -> (Form, f64, f64) {
    (Form::Times(tex(length, mass)), exact(length.0, length.1), exact(mass.0, mass.1))
}

/// The tex of a yarn of which this length has this mass.
const fn tex(length: Exact, mass: Exact) -> f64 {
    exact(mass.0 * length.1 * 1_000_000, mass.1 * length.0)
}

/// The tex of English cotton 1: 840 yd in a pound.
pub(crate) const ENGLISH_COTTON: f64 = tex(yd(840), lb(1));
/// The tex of a yarn of which one yard weighs a pound.
pub(crate) const YARD_PER_POUND: f64 = tex(yd(1), lb(1));

/// Rows: "symbol" [names]: what it is; definition; country; date; source, and in brackets what the definition
/// rests on where that is not what the source is.
macro_rules! rests_on {
    () => {
        None
    };
    ($basis:ident) => {
        Some(Basis::$basis)
    };
}
macro_rules! systems {
    ($($symbol:literal [$($name:literal),*]: $what:expr; $definition:literal; $country:literal;
       $date:literal; $source:literal $(($basis:ident))?,)*) => {
        &[$({
            let (form, length, mass) = $what;
            System {
                unit: Unit {
                    symbol: $symbol,
                    names: &[$($name),*],
                    kind: Kind::LinearDensity,
                    form,
                    definition: $definition,
                    source: $source,
                    rests_on: rests_on!($($basis)?),
                },
                length,
                mass,
                country: $country,
                date: $date,
            }
        }),*]
    };
}

/// Every count system. A bare "cut", "lea" or "NeK" is in none of them: each has several readings.
pub static SYSTEMS: &[System] = systems! {
    // direct, metric
    "tex" ["g/km"]: direct(g(1), m(1000)); "g per 1000 m"; ""; "2016"; "ISO 1144",
    "mtex" ["millitex", "mg/km"]: direct(ug(1000), m(1000)); "mg per 1000 m"; ""; "2016"; "ISO 1144",
    "dtex" ["decitex"]: direct(g(1), m(10_000)); "g per 10 000 m"; ""; "2016"; "ISO 1144",
    "ktex" ["kilotex", "g/m"]: direct(g(1), m(1)); "g per m"; ""; "2016"; "ISO 1144",
    "den" ["denier"]: direct(g(1), m(9000)); "g per 9000 m"; ""; ""; "ASTM D2260",
    "drex" ["grex"]: direct(g(1), m(10_000)); "g per 10 000 m"; ""; ""; "GNU Units",
    // indirect: hanks of a length in a mass
    "Nm" ["metric"]: indirect(m(1000), g(1000)); "km per kg"; ""; ""; "ASTM D2260",
    "m/g" []: indirect(m(1), g(1)); "m per g"; ""; ""; "definition",
    "m/kg" []: indirect(m(1), g(1000)); "m per kg"; ""; ""; "definition",
    "m/100g" []: indirect(m(1), g(100)); "m per 100 g, as on a ball band"; ""; ""; "definition",
    "m/50g" []: indirect(m(1), g(50)); "m per 50 g, as on a ball band"; ""; ""; "definition",
    "yd/100g" []: indirect(yd(1), g(100)); "yd per 100 g, as on a ball band"; ""; ""; "definition",
    "yd/50g" []: indirect(yd(1), g(50)); "yd per 50 g, as on a ball band"; ""; ""; "definition",
    "Ne" ["NeC", "Nec", "cotton", "english-cotton"]: indirect(yd(840), lb(1)); "840 yd per lb"; "England"; "1920"; "Davis 1920",
    "spun-silk" []: indirect(yd(840), lb(1)); "840 yd per lb (a folded yarn is named by its resultant)"; "England"; "1909"; "Taylor 1909",
    "worsted" ["english-worsted"]: indirect(yd(560), lb(1)); "560 yd per lb"; "England"; "1920"; "Davis 1920",
    "NeL" ["linen", "linen-lea"]: indirect(yd(300), lb(1)); "leas of 300 yd per lb"; ""; "1909"; "Taylor 1909",
    "american-cut" []: indirect(yd(300), lb(1)); "cuts of 300 yd per lb"; "United States"; "2001"; "ASTM D2260-01",
    "american-run" ["run", "runs"]: indirect(yd(1600), lb(1)); "runs of 1600 yd per lb"; "United States"; "1898"; "Brooks 1898",
    "YSW" ["yorkshire-skein", "yorkshire-skeins", "yorkshire"]: indirect(yd(1536), lb(6)); "1536 yd per 6 lb, 256 yd per lb"; "England"; "1920"; "Davis 1920",
    "galashiels-cut" ["gala", "gala-cut", "scotch-cut"]: indirect(yd(300), oz(24)); "300 yd per 24 oz"; "Scotland"; "1917"; "Blanco 1917",
    "hawick-cut" []: indirect(yd(300), oz(26)); "300 yd per 26 oz"; "Scotland"; "2015"; "Textile Calculation 2015" (Memory),
    "west-of-england" []: indirect(yd(320), lb(1)); "320 yd per lb"; "England"; ""; "BellaOnline",
    "alloa-480" ["stirling"]: indirect(yd(11_520), lb(24)); "spyndles of 11 520 yd per 24 lb, 480 yd per lb"; "Scotland"; "2015"; "Textile Calculation 2015" (Memory),
    "alloa-240" []: indirect(yd(240), lb(1)); "240 yd per lb (hosiery yarn)"; "Scotland"; "1920"; "Davis 1920",
    "dewsbury" []: indirect(yd(1), oz(1)); "yd per oz"; "England"; ""; "memory",
    "yd/oz" ["bump", "organzine-yd/oz"]: indirect(yd(1), oz(1)); "yd per oz"; ""; "1917"; "Blanco 1917",
    "leicester-lambswool" []: indirect(yd(176), lb(1)); "176 yd per lb"; "England"; "1920"; "Davis 1920",
    "asbestos-cut-us" ["glass-cut"]: indirect(yd(100), lb(1)); "100 yd per lb"; "United States"; "2001"; "ASTM D2260-01",
    "asbestos-cut-uk" []: indirect(yd(50), lb(1)); "50 yd per lb"; "Britain"; "2015"; "Textile Calculation 2015",
    "typp" []: indirect(yd(1000), lb(1)); "1000 yd per lb"; ""; ""; "GNU Units",
    "yd/lb" ["yards/lb", "ypp"]: indirect(yd(1), lb(1)); "yd per lb"; ""; ""; "definition",
    "yd/dr" ["yd/dram"]: indirect(yd(1), dr(1)); "yd per dram"; ""; ""; "definition",
    "french-cotton" ["Nf"]: indirect(m(1000), g(500)); "1000 m per 500 g"; "France"; "1917"; "Blanco 1917",
    "irish-woollen" []: indirect(yd(64), lb(1)); "yd per quarter ounce, 64 yd per lb (low confidence)"; "Ireland"; ""; "memory",
    // direct: mass of a length
    "poumar" ["lb/1000000yd"]: direct(lb(1), yd(1_000_000)); "lb per 10⁶ yd"; ""; ""; "GNU Units",
    "lb/spyndle" ["spyndle", "jute"]: direct(lb(1), yd(14_400)); "lb per 14 400 yd"; ""; "1921"; "Woodhouse and Kilgour 1921",
    "dr/1000yd" ["silk-dram"]: direct(dr(1), yd(1000)); "drams per 1000 yd"; "England"; "1921"; "Wolfensberger 1921",
    "gr/120yd" []: direct(gr(1), yd(120)); "grains per 120 yd"; "United States"; ""; "ASTM D2260",
    "gr/20yd" []: direct(gr(1), yd(20)); "grains per 20 yd"; "United States"; "2015"; "Textile Calculation 2015",
    "gr/yd" ["grains/yd"]: direct(gr(1), yd(1)); "grains per yd"; ""; ""; "Balasubramanian",
    "g/yd" ["grams/yd"]: direct(g(1), yd(1)); "g per yd"; ""; ""; "Balasubramanian",
    "oz/yd" []: direct(oz(1), yd(1)); "oz per yd"; ""; ""; "definition",
    "dr/40yd" ["top-drams"]: direct(dr(1), yd(40)); "drams per 40 yd (tops and slubbing)"; ""; ""; "memory",
    "sowerby-bridge" ["dr/80yd"]: direct(dr(1), yd(80)); "drams per 80 yd (low confidence)"; "England"; ""; "memory",
    "µg/in" ["ug/in"]: direct(ug(1), inches(1)); "µg per in (micronaire)"; ""; ""; "Balasubramanian",
    "artificial-silk-denier" ["old-british-denier"]: direct(oz(3), yd(832_000)); "533⅓ deniers to the ounce, on a skein of 520 yd"; "Britain"; "to about 1920"; "Taylor 1909",
    "old-denier-500" []: direct(ug(50_000), m(500)); "0.05 g per 500 m"; ""; "1921"; "Wolfensberger 1921",
    "turin-denier" []: direct(ug(53_000), m(476)); "0.053 g per 476 m"; "Italy"; "1921"; "Wolfensberger 1921",
    "milan-denier" []: direct(ug(51_000), m(476)); "0.051 g per 476 m"; "Italy"; "1921"; "Wolfensberger 1921",
    "legal-denier-450" []: direct(ug(50_000), m(450)); "0.05 g per 450 m"; ""; "1924"; "Three Textile Raw Materials 1924",
};
