//! Twist by use, as the books print it.

use crate::handbook::{Figure, Table};

const COTTON: &str = "tpi/√Ne";

/// Mule and ring of 1890.
const fn nasmith(of: &'static [&'static str], factor: f64) -> Figure {
    Figure::one(of, factor, COTTON).read("Nasmith 1890", "par. 387")
}
/// American ring frames of 1909.
const fn howard(of: &'static [&'static str], factor: f64) -> Figure {
    Figure::one(of, factor, COTTON).read("Howard and Bullough 1909", "p. 176")
}
/// American mills of 1885.
const fn lincoln(of: &'static [&'static str], factor: f64) -> Figure {
    Figure::one(of, factor, COTTON)
        .read("Lincoln 1885", "art. 29 and 30")
        .note("less 0.2 turns/in for each count below 30, more above")
}
/// A spinner's manual of today.
const fn rieter(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, COTTON)
        .read("Rieter manual", "p. 65")
        .note("columns reconstructed from a scan")
}
const fn folding(of: &'static [&'static str], factor: f64) -> Figure {
    Figure::one(of, factor, COTTON)
        .read("Howard and Bullough 1909", "pp. 216–220")
        .note("on the folded number, two to six ends")
}
/// A teacher's notes of 2011, in turns of a metre.
const fn thrown(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "turns/m").read("Twist in silk 2011", "").note("plain turns")
}
/// Woollen and worsted from memory: nobody's word but a beginning.
const fn remembered(
    of: &'static [&'static str],
    low: f64,
    high: f64,
    unit: &'static str,
) -> Figure {
    Figure::band(of, low, high, unit).note("low confidence: let the mill set it")
}

const SI: &str = "turns/cm √tex";
const SKEIN: &str = "tpi/√YSW";

pub(super) static TWIST_MULTIPLIERS: Table = Table {
    name: "twist_multipliers",
    title: "Twist by use",
    about: "How hard yarns are twisted for a use: the multiplier, or plain turns where the book \
            prints turns. A multiplier belongs to its count system and its machine: convert it, \
            never carry it over.",
    columns: &["fibre", "use", "spun on"],
    figures: &[
        nasmith(&["cotton", "warp (twist)", "mule"], 3.75),
        nasmith(&["cotton", "ring yarn, extra hard", "ring, mule"], 4.0),
        nasmith(&["cotton", "weft", "mule"], 3.25),
        nasmith(&["cotton", "for doubling", "mule"], 2.75),
        nasmith(&["cotton", "hosiery", "mule"], 2.5),
        howard(&["cotton", "standard warp", "ring"], 4.75),
        howard(&["cotton", "warp", "ring"], 4.5),
        howard(&["cotton", "extra weft (filling)", "ring"], 3.5),
        howard(&["cotton", "weft (filling) or hosiery", "ring"], 3.25),
        howard(&["cotton", "soft hosiery", "ring"], 3.0),
        howard(&["cotton", "underwear", "ring"], 2.75),
        lincoln(&["cotton", "warp", "ring"], 5.0),
        lincoln(&["cotton", "weft (filling)", "ring"], 4.0),
        lincoln(&["cotton", "weft (filling)", "mule"], 3.25),
        rieter(&["cotton, medium staple", "knitting", "ring"], 2.5, 3.0),
        rieter(&["cotton, long staple", "knitting", "ring"], 2.1, 2.6),
        rieter(&["cotton, short staple", "weft", "ring"], 3.3, 3.8),
        rieter(&["cotton, medium staple", "weft", "ring"], 3.0, 3.5),
        rieter(&["cotton, long staple", "weft", "ring"], 2.5, 3.0),
        rieter(&["cotton, short staple", "semi-warp", "ring"], 3.7, 4.0),
        rieter(&["cotton, medium staple", "semi-warp", "ring"], 3.5, 3.8),
        rieter(&["cotton, long staple", "semi-warp", "ring"], 3.0, 3.4),
        rieter(&["cotton, short staple", "warp", "ring"], 4.0, 5.0),
        rieter(&["cotton, medium staple", "warp", "ring"], 3.8, 4.5),
        rieter(&["cotton, long staple", "warp", "ring"], 3.4, 3.9),
        Figure::one(&["cotton", "roving", "fly frame"], 1.2, COTTON)
            .read("Howard and Bullough 1909", "")
            .note("on the hank of the roving; Nasmith 1890 prints the same"),
        Figure::one(&["cotton", "roving", "fly frame"], 1.0, COTTON)
            .read("Lincoln 1885", "")
            .note("about the root of the hank roving"),
        folding(&["cotton", "folding, soft", "twister"], 4.0),
        folding(&["cotton", "folding, middle", "twister"], 5.0),
        folding(&["cotton", "folding, hard", "twister"], 6.0),
        Figure::one(&["cotton", "weft of elastic web, 2/26", ""], 15.0, "tpi")
            .read("Brown 1923", "")
            .note("about; plain turns"),
        Figure::band(
            &["wool", "average fleece, worsted 2 to 12", "by hand"],
            3.2,
            3.3,
            "tpi/√worsted",
        )
        .read("Teal 1995", "table"),
        Figure::one(&["wool", "average fleece, worsted 1", "by hand"], 3.5, "tpi/√worsted")
            .read("Teal 1995", "table"),
        remembered(&["wool, woollen", "knitting", ""], 1.2, 1.5, SKEIN),
        remembered(&["wool, woollen", "weft", ""], 1.4, 1.7, SKEIN),
        remembered(&["wool, woollen", "warp", ""], 1.6, 2.0, SKEIN),
        remembered(&["wool, worsted", "knitting, two-fold", ""], 22.0, 28.0, SI),
        remembered(&["wool, worsted", "weaving", ""], 28.0, 38.0, SI),
        Figure::one(&["silk", "organzine, first twist", "throwing"], 16.0, "tpi")
            .read("Wolfensberger 1921", "p. 101")
            .note("plain turns, each single"),
        Figure::one(&["silk", "organzine, second twist", "throwing"], 14.0, "tpi")
            .read("Wolfensberger 1921", "p. 101")
            .note("plain turns, the singles together, the other way"),
        Figure::one(&["silk", "tram", "throwing"], 3.0, "tpi")
            .read("Wolfensberger 1921", "p. 101")
            .note("about; plain turns"),
        Figure::band(&["silk", "tram", "throwing"], 2.0, 3.0, "tpi")
            .read("Three Textile Raw Materials 1924", "")
            .note("plain turns"),
        Figure::one(&["silk", "crêpe", "throwing"], 65.0, "tpi")
            .read("Three Textile Raw Materials 1924", "")
            .note("plain turns"),
        Figure::band(&["silk", "crêpe", "throwing"], 40.0, 80.0, "tpi")
            .read("Dooley 1914", "")
            .note("plain turns"),
        thrown(&["silk", "organzine, first twist", "throwing"], 700.0, 700.0),
        thrown(&["silk", "organzine, second twist", "throwing"], 950.0, 950.0),
        thrown(&["silk", "tram", "throwing"], 80.0, 180.0),
        thrown(&["silk", "crêpe", "throwing"], 2000.0, 4000.0),
    ],
};

pub(in crate::yarn) static FOLDING_TWIST_RATIOS: Table = Table {
    name: "folding_twist_ratios",
    title: "Turns of the fold over turns of the single",
    about: "Habits of the trade, with the rule's name: report a range, not one of them as the truth.",
    columns: &["yarn", "rule"],
    figures: &[
        Figure::one(
            &["two-fold", "equal multiplier in single and fold"],
            std::f64::consts::FRAC_1_SQRT_2,
            "",
        )
        .defined()
        .note("√(1/2)"),
        Figure::one(
            &["three-fold", "equal multiplier in single and fold"],
            0.577_350_269_189_625_8,
            "",
        )
        .defined()
        .note("√(1/3)"),
        Figure::band(
            &["two-fold cotton", "multiplier 4.5 in the single, 4 to 6 in the fold"],
            4.0 / 4.5 * std::f64::consts::FRAC_1_SQRT_2,
            6.0 / 4.5 * std::f64::consts::FRAC_1_SQRT_2,
            "",
        )
        .defined()
        .note("the multipliers are those of Howard and Bullough 1909"),
        Figure::one(&["two-fold silk organzine", "14 on 16 turns"], 0.875, "")
            .read("Wolfensberger 1921", "p. 101"),
        Figure::one(&["two-fold", "a single let ply back on itself"], 0.5, "")
            .read("Twist per inch", "")
            .note("about; a hand test, not a mill rule"),
        Figure::one(&["two-fold", "two thirds of the single"], 2.0 / 3.0, "").note("a habit; 2/3"),
        Figure::band(&["two-fold knitting", "balanced"], 0.5, 0.7, ""),
    ],
};
