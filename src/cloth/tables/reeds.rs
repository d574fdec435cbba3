//! The widths in which the trade's reed systems count.

use crate::handbook::{Figure, Table};

const fn taylor(of: &'static [&'static str], inches: f64) -> Figure {
    Figure::one(of, inches, "in").read("Taylor 1909", "p. 243-244")
}
const fn terms(of: &'static [&'static str], inches: f64) -> Figure {
    Figure::one(of, inches, "in").read("Textile Terms 2014", "Sett Systems")
}
const fn taught(of: &'static [&'static str], inches: f64) -> Figure {
    Figure::one(of, inches, "in").read("Textile Calculation 2015", "")
}

pub(super) static REED_SYSTEMS: Table = Table {
    name: "reed_systems",
    title: "Width in which a reed system counts",
    about: "The number of a reed is how many of its groups stand in the width. Units of these names \
            convert (60 stockport-reed). Two ends a dent are meant where a system counts ends; the \
            ends a dent are a figure of their own. The Preston reed counted beers in various widths \
            and has no one value.",
    columns: &["system", "what is counted"],
    figures: &[
        Figure::one(&["Stockport, Manchester", "dents"], 2.0, "in").read("Brooks 1892", "p. 92"),
        taylor(&["Bolton", "beers of 20 dents, 40 ends"], 24.25).note("one page of 2015 has 24.5"),
        Figure::one(&["Bolton", "beers of 20 dents, 40 ends"], 24.25, "in")
            .read("Brooks 1892", "p. 92"),
        taylor(&["Bradford", "beers of 20 dents, 40 ends"], 36.0),
        taylor(&["Blackburn", "beers of 20 dents, 40 ends"], 45.0),
        taylor(&["6-4", "beers of 20 dents, 40 ends, in 58 in"], 58.0),
        taylor(&["9-8", "beers of 20 dents, 40 ends, in 44 in"], 44.0),
        taylor(&["4-4", "beers of 20 dents, 40 ends, in 39 in"], 39.0),
        taylor(&["7-8", "beers of 20 dents, 40 ends, in 34 in"], 34.0),
        taylor(&["Scotch", "dents"], 37.0),
        terms(&["Glasgow", "dents of two threads"], 37.0),
        terms(&["Scotch tweed", "porters of 20 dents, 40 ends"], 37.0)
            .note("named Galashiels and Hawick from memory"),
        terms(&["Leeds", "porters of 19 dents, 38 ends"], 9.0),
        terms(&["Dewsbury", "beers of 19 dents, 38 ends"], 90.0),
        terms(&["Manchester (old)", "splits of two threads"], 36.0),
        terms(&["Irish linen", "dents of two threads"], 40.0)
            .note("1200 is said 12 hundred as well"),
        terms(&["Silk", "dents"], 36.0).note("written with the ends a dent: 1200/4"),
        taught(&["Macclesfield", "hundreds of dents"], 36.0),
        taught(&["Radcliffe", "dents"], 1.0),
        taught(&["Huddersfield", "dents"], 1.0).note("written with the ends a dent: 16s 3s"),
        Figure::one(&["American", "dents"], 1.0, "in"),
        Figure::one(&["Metric", "dents"], 10.0, "cm").read("Textile Calculation 2015", ""),
    ],
};
