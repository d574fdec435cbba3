//! Counts and the round figures that stand for them in print.

use crate::handbook::{Figure, Table};

const fn metric(count: &'static [&'static str], tex: f64) -> Figure {
    Figure::one(count, tex, "tex").read("Hand-knitting note", "")
}
const fn worsted(count: &'static [&'static str], tex: f64) -> Figure {
    Figure::one(count, tex, "tex").read("Teal 1995", "table")
}
/// Glass and technical yarn: tex, and the yield that is its trade name.
const fn glass(tex: &'static [&'static str], yield_: f64) -> Figure {
    Figure::one(tex, yield_, "yd/lb").read("Yield table", "")
}

/// From a page of 2015.
const fn printed(system: &'static [&'static str], tex: f64) -> Figure {
    Figure::one(system, tex, "tex").read("Textile Calculation 2015", "count conversion")
}
/// Where a trade takes another moisture for the count than for the tex.
const fn drier(of: &'static [&'static str], tex: f64) -> Figure {
    Figure::one(of, tex, "tex")
        .read("Mill note on yarn", "")
        .note("at a lower conventional moisture: exact is 590.541, better treat regain separately")
}

pub(super) static COUNT_CONSTANTS: Table = Table {
    name: "count_constants",
    title: "Tex of count 1, as printed for sums by hand",
    about: "Rounded, or with something besides in it: conversions here use the exact definitions. \
            They tell why another's answer differs in its last figures.",
    columns: &["system", "for"],
    figures: &[
        printed(&["Ne", ""], 590.5),
        drier(&["Ne", "cotton, in Chinese practice"], 583.0),
        drier(&["Ne", "polyester and cotton 65/35, in Chinese practice"], 588.0),
        printed(&["worsted", ""], 885.8),
        printed(&["YSW", ""], 1938.0),
        printed(&["hawick-cut", ""], 2687.0),
        printed(&["alloa-480", ""], 1033.0),
        printed(&["NeL", ""], 1653.0).note("cut off, not rounded"),
        printed(&["lb/spyndle", ""], 34.45),
        printed(&["dr/1000yd", ""], 1.938),
    ],
};

pub(super) static ROUNDED_COUNTS: Table = Table {
    name: "rounded_counts",
    title: "Counts and their round figures in print",
    about: "Names, not conversions: 16 Nm is 62.5 tex and sold as 64. Compute with the exact figure \
            and round in a step of its own.",
    columns: &["count"],
    figures: &[
        metric(&["32 Nm"], 31.0),
        metric(&["24 Nm"], 42.0),
        metric(&["16 Nm"], 64.0),
        metric(&["10 Nm"], 100.0),
        metric(&["9 Nm"], 110.0),
        metric(&["6 Nm"], 165.0),
        worsted(&["1 worsted"], 880.0),
        worsted(&["2 worsted"], 440.0),
        worsted(&["2.5 worsted"], 360.0),
        worsted(&["3 worsted"], 300.0),
        worsted(&["3.5 worsted"], 260.0),
        worsted(&["4 worsted"], 220.0),
        worsted(&["4.5 worsted"], 200.0),
        worsted(&["5 worsted"], 180.0),
        worsted(&["5.5 worsted"], 160.0),
        worsted(&["6 worsted"], 150.0),
        worsted(&["6.5 worsted"], 135.0),
        worsted(&["7 worsted"], 125.0),
        worsted(&["7.5 worsted"], 117.0),
        worsted(&["8 worsted"], 110.0),
        worsted(&["8.5 worsted"], 103.0),
        worsted(&["9 worsted"], 98.0),
        worsted(&["10 worsted"], 88.0),
        worsted(&["11 worsted"], 80.0),
        worsted(&["12 worsted"], 74.0),
        glass(&["550 tex"], 900.0),
        glass(&["735 tex"], 675.0),
        glass(&["1100 tex"], 450.0),
        glass(&["1200 tex"], 413.0),
        glass(&["2200 tex"], 225.0),
        glass(&["2400 tex"], 207.0),
        glass(&["4400 tex"], 113.0),
    ],
};
