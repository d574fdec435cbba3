//! Words for the thickness of hand-knitting yarn: bands that differ from country to country and from
//! table to table.

use crate::handbook::{Figure, Table};

const PLY: &str = "Australia, New Zealand, UK";
const OPEN: f64 = f64::INFINITY;

/// An encyclopaedia's table, as copied in 2014: metres in 100 g.
const fn copied(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "m/100g").read("Yarn weights 2014", "table")
}
/// A British shop's table of 2024: metres in 100 g.
const fn shop(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "m/100g").read("Skein Queen 2024", "table")
}
/// A comparison chart of plies: metres in 100 g.
const fn chart(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "m/100g").read("Knitting Naturally", "table")
}
/// A spinner's chart of 2011: approximate metres in 50 g.
const fn spinner(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "m/50g").read("Colourspun 2011", "table")
}
/// An American shop: yards in 3½ oz, which is 99 g.
const fn american(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "yd/100g")
        .read("Twisted yarn 101", "")
        .note("printed for 3.5 oz, which is 99.2 g")
}
/// An Austrian shop.
const fn austrian(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "m/100g").read("Wolle-Strick-Shop", "")
}

pub(crate) static HAND_KNITTING_WEIGHTS: Table = Table {
    name: "hand_knitting_weights",
    title: "Hand-knitting words and the yarn they are used for",
    about: "A word for a thickness is neither a count nor a number of strands: 8 ply is often two. The \
            tables in use overlap and contradict each other, so every row says whose it is. The \
            bands hold for wool and what is as light; cotton and silk of one thickness run shorter.",
    columns: &["country", "word"],
    figures: &[
        copied(&["US", "thread, cobweb, lace"], 600.0, 800.0),
        copied(&["US", "fingering, sock"], 400.0, 480.0),
        copied(&["US", "sport"], 300.0, 400.0),
        copied(&["US", "DK"], 240.0, 300.0),
        copied(&["US", "worsted"], 120.0, 240.0),
        copied(&["US", "bulky"], 100.0, 130.0),
        copied(&["US", "super bulky"], -OPEN, 100.0),
        copied(&[PLY, "1 ply, 2 ply, 3 ply"], 600.0, 800.0),
        copied(&[PLY, "4 ply"], 400.0, 480.0),
        copied(&[PLY, "5 ply"], 300.0, 400.0),
        copied(&[PLY, "8 ply"], 240.0, 300.0),
        copied(&[PLY, "10 ply"], 120.0, 240.0),
        copied(&[PLY, "12 ply"], 100.0, 130.0),
        shop(&["UK", "cobweb"], 800.0, OPEN),
        shop(&["UK", "laceweight"], 600.0, 800.0).note("also called 2 ply"),
        shop(&["UK", "3 ply, light fingering"], 500.0, 600.0),
        shop(&["UK", "4 ply, fingering, sock"], 350.0, 450.0),
        shop(&["UK", "sport"], 250.0, 350.0),
        shop(&["UK", "DK"], 200.0, 250.0),
        shop(&["UK", "Aran"], 120.0, 200.0),
        shop(&["UK", "chunky"], 100.0, 130.0),
        shop(&["UK", "super chunky"], -OPEN, 100.0),
        shop(&["Australia", "3 ply"], 500.0, 600.0),
        shop(&["Australia", "4 ply"], 350.0, 450.0),
        shop(&["Australia", "5 ply"], 250.0, 350.0),
        shop(&["Australia", "8 ply"], 200.0, 250.0),
        shop(&["Australia", "10 ply, 12 ply"], 120.0, 200.0),
        shop(&["Australia", "12 ply, 16 ply"], 100.0, 130.0),
        chart(&[PLY, "2 ply, 3 ply"], 600.0, 800.0),
        chart(&[PLY, "3 ply, 4 ply"], 400.0, 480.0),
        chart(&[PLY, "4 ply"], 300.0, 400.0),
        chart(&[PLY, "8 ply"], 240.0, 300.0),
        chart(&[PLY, "10 ply, double knitting"], 200.0, 240.0),
        chart(&[PLY, "12 ply, triple knitting"], 120.0, 160.0),
        chart(&["UK", "double double"], 110.0, 130.0),
        chart(&[PLY, "14 ply, double double"], 90.0, 100.0),
        spinner(&["US", "sport"], 135.0, 145.0),
        spinner(&["US", "DK, light worsted"], 100.0, 125.0),
        spinner(&["US", "worsted"], 65.0, 90.0),
        spinner(&["US", "bulky"], 45.0, 50.0),
        spinner(&["US", "super bulky"], 30.0, 35.0),
        spinner(&["UK", "light DK"], 135.0, 145.0),
        spinner(&["UK", "DK"], 100.0, 125.0),
        spinner(&["UK", "Aran"], 65.0, 90.0),
        spinner(&["UK", "chunky"], 45.0, 50.0),
        spinner(&["UK", "super chunky"], 30.0, 35.0),
        spinner(&["Australia, New Zealand", "5 ply"], 135.0, 145.0),
        spinner(&["Australia, New Zealand", "8 ply"], 100.0, 125.0),
        spinner(&["Australia, New Zealand", "10 ply"], 65.0, 90.0),
        spinner(&["Australia, New Zealand", "12 ply"], 45.0, 50.0),
        american(&["US", "fingering"], 370.0, 460.0),
        american(&["US", "sport"], 290.0, 360.0),
        american(&["US", "DK"], 240.0, 280.0),
        american(&["US", "worsted"], 200.0, 250.0),
        american(&["US", "Aran"], 170.0, 200.0),
        american(&["US", "bulky"], 140.0, 170.0),
        austrian(&["Austria", "Pulloverwolle, DK"], 220.0, 240.0),
        austrian(&["Austria", "Aran"], 160.0, 180.0),
        austrian(&["Austria", "Sockenwolle"], 400.0, 400.0).note("about"),
        Figure::band(&["Germany", "Sockenwolle 4-fach"], 400.0, 425.0, "m/100g"),
        Figure::band(&["Germany", "Sockenwolle 6-fach"], 260.0, 280.0, "m/100g"),
    ],
};
