//! Reels, leas, hanks and bundles of the trades; the strength of leas.

use crate::handbook::{Figure, Table};

const fn length(of: &'static [&'static str], x: f64, unit: &'static str) -> Figure {
    Figure::one(of, x, unit)
}
/// How many of the smaller part make the whole.
const fn number(of: &'static [&'static str], n: f64) -> Figure {
    Figure::one(of, n, "")
}

const COTTON: (&str, &str) = ("Nasmith 1890", "");
const JUTE: (&str, &str) = ("Woodhouse and Kilgour 1921", "");
const LINEN: (&str, &str) = ("Britannica 1911", "Linen");

const fn by(figure: Figure, source: (&'static str, &'static str)) -> Figure {
    figure.read(source.0, source.1)
}

pub(super) static REELS: Table = Table {
    name: "reels",
    title: "Reels, leas, hanks and bundles by trade",
    about: "A lea, a cut and a hank are lengths that differ from trade to trade; measure the reel \
            you have before you trust its name.",
    columns: &["trade", "what"],
    figures: &[
        by(length(&["cotton", "reel, circumference"], 54.0, "in"), COTTON),
        by(number(&["cotton", "turns in a lea"], 80.0), COTTON),
        by(length(&["cotton", "lea"], 120.0, "yd"), COTTON),
        by(number(&["cotton", "leas in a hank"], 7.0), COTTON),
        by(length(&["cotton", "hank"], 840.0, "yd"), COTTON),
        by(Figure::one(&["cotton", "bundle"], 10.0, "lb"), COTTON).note("or 5 lb"),
        by(length(&["cotton, French", "reel, circumference"], 56.25, "in"), COTTON),
        length(&["worsted", "lea"], 80.0, "yd").read("Apparel Search", "quoting a dictionary"),
        length(&["worsted", "reel, circumference"], 1.0, "yd"),
        number(&["worsted", "turns in a lea"], 80.0),
        number(&["worsted", "leas in a hank"], 7.0).defined().note("560 yd in leas of 80 yd"),
        length(&["worsted", "hank"], 560.0, "yd").read("Davis 1920", ""),
        length(&["spun silk", "hank"], 840.0, "yd").read("Taylor 1909", ""),
        length(&["woollen, Yorkshire", "skein"], 1536.0, "yd")
            .read("Davis 1920", "")
            .note("the count is how many weigh 6 lb"),
        length(&["woollen, Galashiels", "cut"], 300.0, "yd")
            .read("Blanco 1917", "")
            .note("the count is how many weigh 24 oz"),
        length(&["woollen, American", "run"], 1600.0, "yd")
            .read("Brooks 1898", "")
            .note("the count is how many weigh 1 lb"),
        length(&["woollen", "reel, circumference"], 1.0, "yd")
            .read("Britannica 1911", "Cotton manufacture, note 31")
            .note("or 2 yd"),
        length(&["woollen", "reel, circumference"], 2.0, "yd")
            .read("Britannica 1911", "Cotton manufacture, note 31")
            .note("or 1 yd"),
        by(length(&["jute, flax", "reel, circumference"], 90.0, "in"), JUTE),
        by(number(&["jute, flax", "turns in a cut or lea"], 120.0), JUTE),
        by(length(&["jute, flax", "cut or lea"], 300.0, "yd"), JUTE),
        by(number(&["jute, flax", "cuts in a heer"], 2.0), JUTE),
        by(length(&["jute, flax", "heer"], 600.0, "yd"), JUTE),
        by(number(&["jute, flax", "cuts in a hank"], 12.0), JUTE),
        by(length(&["jute, flax", "hank"], 3600.0, "yd"), JUTE),
        by(number(&["jute, flax", "cuts in a spyndle"], 48.0), JUTE),
        by(length(&["jute, flax", "spyndle"], 14_400.0, "yd"), JUTE),
        by(Figure::band(&["jute", "bundle"], 54.0, 60.0, "lb"), JUTE)
            .note("an even number of whole hanks"),
        by(Figure::one(&["jute, 7 and 8 lb yarn", "bundle"], 56.0, "lb"), JUTE),
        by(Figure::one(&["jute, 7½ lb yarn", "bundle"], 60.0, "lb"), JUTE),
        by(Figure::one(&["jute, 9 lb yarn", "bundle"], 54.0, "lb"), JUTE),
        by(length(&["linen", "bundle"], 60_000.0, "yd"), LINEN),
        by(number(&["linen, English", "leas in a hank"], 10.0), LINEN)
            .note("20 hanks in a bundle of 200 leas"),
        by(number(&["linen, Irish", "leas in a hank"], 12.0), LINEN)
            .note("16⅔ hanks in a bundle of 200 leas"),
        by(number(&["linen, Scottish", "hanks in a spyndle"], 4.0), LINEN).note("hanks of 12 leas"),
    ],
};

/// A lea of mule yarn, as Brooks prints it.
const fn lea(of: &'static [&'static str], pull: f64) -> Figure {
    Figure::one(of, pull, "lbf").read("Brooks 1892", "Testing yarns")
}

pub(super) static LEA_STRENGTH: Table = Table {
    name: "lea_strength",
    title: "Load that breaks a lea of mule twist",
    about: "A lea of 120 yd in the lea tester of 1892: the load is what hangs on it, in pounds. \
            Ring yarn and today's cotton differ.",
    columns: &["cotton", "count"],
    figures: &[
        lea(&["American", "20 Ne"], 80.0),
        lea(&["American", "30 Ne"], 54.0),
        lea(&["American", "40 Ne"], 40.0),
        lea(&["American", "50 Ne"], 28.0),
        lea(&["Egyptian", "40 Ne"], 50.0),
        lea(&["Egyptian", "50 Ne"], 37.0),
        lea(&["Egyptian", "60 Ne"], 30.0),
        lea(&["Egyptian", "70 Ne"], 26.0),
    ],
};
