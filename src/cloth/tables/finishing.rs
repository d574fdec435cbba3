//! What finishing took off cloths in print, and what is usual of a process.

use crate::handbook::{Figure, Table};

const fn inches(of: &'static [&'static str], x: f64) -> Figure {
    Figure::one(of, x, "in")
}
const fn percent(of: &'static [&'static str], x: f64) -> Figure {
    Figure::one(of, x, "%")
}

const BROADCLOTH: &str = "wool broadcloth, 26 skeins, 32 × 40 per inch";
const TERMS: (&str, &str) = ("Textile Terms 2014", "Broadcloth");
const CLOTH_16TH: &str = "woollen cloth, England, early 16th century";
const BLANKET: &str = "handspun Down-type wool blanket";
const BOUCLE: &str = "wool bouclé blanket, double width";
const SHAWL: &str = "handspun wool shawl";
const TWILL: &str = "striped wool twill, hot tumble";
const PLAID: &str = "wool plaid yardage, felted by machine";
const SCARF: &str = "wool scarf, relaxed";

const fn by(figure: Figure, source: (&'static str, &'static str)) -> Figure {
    figure.read(source.0, source.1)
}

pub(super) static FINISHING_SHRINKAGES: Table = Table {
    name: "finishing_shrinkages",
    title: "What finishing did to cloths in print",
    about: "Sizes as measured, most of single pieces by hand, and the shrinkages that the sources \
            print. A shrinkage is on the size before; an over-width is on the finished size. Use \
            them to see what is possible; for a cloth of your own finish a sample of it.",
    columns: &["cloth", "what"],
    figures: &[
        by(inches(&[BROADCLOTH, "width on the loom"], 90.0), TERMS),
        by(inches(&[BROADCLOTH, "width finished"], 56.0), TERMS),
        by(percent(&["West of England broadcloth, 2/1 twill", "shrinkage"], 33.0), TERMS)
            .note("about"),
        Figure::band(&["broadcloth in general", "over-width on the loom"], 50.0, 75.0, "%")
            .read("Wikipedia Broadcloth", "")
            .note("a shrinkage of 33 to 43 %"),
        Figure::one(&[CLOTH_16TH, "length off the loom"], 32.0, "yd").read("VCH Burford", ""),
        Figure::one(&[CLOTH_16TH, "length fulled"], 25.0, "yd")
            .read("VCH Burford", "")
            .note("partly recovered on the tenters afterwards"),
        percent(&["loden, fulled", "shrinkage"], 40.0)
            .read("Austria-Forum Loden", "")
            .note("about; the source does not say whether of a side or of the area"),
        Figure::band(&["woollens in general, fulled", "shrinkage"], 10.0, 25.0, "%")
            .read("Sesli Sözlük", "fulled"),
        inches(&[BLANKET, "width in the reed"], 54.0).read("Fibernet blanket", ""),
        inches(&[BLANKET, "width off the loom"], 48.0).read("Fibernet blanket", ""),
        inches(&[BLANKET, "width washed"], 40.0).read("Fibernet blanket", ""),
        inches(&[BLANKET, "length off the loom"], 72.0).read("Fibernet blanket", "").note("about"),
        inches(&[BLANKET, "length washed"], 52.0).read("Fibernet blanket", ""),
        inches(&[BOUCLE, "width on the loom"], 64.0).read("Oh La La Laine 2015", ""),
        inches(&[BOUCLE, "width finished"], 52.0).read("Oh La La Laine 2015", ""),
        inches(&[SHAWL, "width on the loom"], 12.0).read("Fiber Enthusiast 2008", ""),
        inches(&[SHAWL, "width off the loom"], 11.0).read("Fiber Enthusiast 2008", ""),
        inches(&[SHAWL, "width washed"], 10.5).read("Fiber Enthusiast 2008", ""),
        inches(&[SHAWL, "length off the loom"], 79.0).read("Fiber Enthusiast 2008", ""),
        inches(&[SHAWL, "length washed"], 74.0).read("Fiber Enthusiast 2008", ""),
        inches(&[TWILL, "width before"], 3.0).read("Weaving update 2007", ""),
        inches(&[TWILL, "width after"], 2.75).read("Weaving update 2007", ""),
        inches(&[PLAID, "width before"], 62.0).read("Doodledog felting", ""),
        inches(&[PLAID, "width after"], 57.0).read("Doodledog felting", ""),
        inches(&[PLAID, "length before"], 36.0).read("Doodledog felting", ""),
        inches(&[PLAID, "length after"], 31.0).read("Doodledog felting", ""),
        inches(&[SCARF, "length under tension on the loom"], 75.0).read("Rogue Weaver 2025", ""),
        inches(&[SCARF, "length relaxed"], 65.0).read("Rogue Weaver 2025", ""),
        Figure::band(&["wool, moderate washing", "allowance in planning"], 10.0, 20.0, "%")
            .read("Weft-Handed Weaver 2010", ""),
    ],
};

const SUMMARY: &str = "ISO 5077 summary";

/// How far apart the marks of a specimen are at least, in metres.
pub(in crate::cloth) const LEAST_MARKS: f64 = 0.35;
/// Specimens to take when possible.
pub(in crate::cloth) const SPECIMENS: usize = 3;

pub(super) static DIMENSIONAL_CHANGE_SPECIMENS: Table = Table {
    name: "dimensional_change_specimens",
    title: "Specimens for a dimensional change (ISO 5077)",
    about: "Prepared and marked by ISO 3759, washed by ISO 6330, conditioned by ISO 139. As a summary \
            of the standard has them: measure by the standard itself.",
    columns: &["what"],
    figures: &[
        Figure::one(&["side of a specimen, at least"], 50.0, "cm").read(SUMMARY, ""),
        Figure::one(&["distance between marks, at least"], 100.0 * LEAST_MARKS, "cm")
            .read(SUMMARY, ""),
        Figure::one(&["marks from an edge, at least"], 5.0, "cm").read(SUMMARY, ""),
        Figure::one(&["specimens, when possible"], SPECIMENS as f64, "")
            .read("ISO 5077 preview", "opening clauses"),
    ],
};

/// Usual of a process, in percent of the width, length or mass before it: from memory.
const fn usual(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "%")
}

pub(in crate::cloth) static FINISHING_PROCESSES: Table = Table {
    name: "finishing_processes",
    title: "What a process of finishing usually changes",
    about: "Of woollen cloth, in percent of the width, length or mass before the process; negative \
            where it grows. From memory, wide on purpose: beyond these look twice at what was given. \
            The mill's own figures come first.",
    columns: &["process", "what"],
    figures: &[
        usual(&["relax", "width"], 0.0, 20.0).note("draw-in, from the reed to off the loom"),
        usual(&["relax", "length"], 0.0, 15.0).note("stretch under tension, which comes back"),
        usual(&["scour", "width"], 0.0, 15.0),
        usual(&["scour", "length"], 0.0, 12.0),
        usual(&["scour", "loss"], 0.0, 25.0).note("oil and size go; clean yarn loses 1 to 3 %"),
        usual(&["mill", "width"], 3.0, 43.0)
            .note("fulled woollens 10 to 25 %, broadcloth 33 to 43 % in print"),
        usual(&["mill", "length"], 0.0, 30.0),
        usual(&["mill", "loss"], -10.0, 6.0).note("a gain where flock is fed in"),
        usual(&["wash", "width"], 0.0, 30.0).note("10 to 20 % is an allowance in print"),
        usual(&["wash", "length"], 0.0, 30.0),
        usual(&["wash", "loss"], 0.0, 25.0)
            .note("the most where it was woven in the oil or in the grease"),
        usual(&["raise", "width"], 0.0, 8.0),
        usual(&["raise", "length"], -4.0, 2.0),
        usual(&["raise", "loss"], 0.0, 6.0),
        usual(&["crop", "width"], -1.0, 1.0),
        usual(&["crop", "length"], -1.0, 1.0),
        usual(&["crop", "loss"], 0.0, 5.0),
        usual(&["tenter", "width"], -12.0, 2.0).note("stretches to an even width"),
        usual(&["tenter", "length"], -6.0, 6.0),
        usual(&["tenter", "loss"], -2.0, 2.0),
        usual(&["dry", "width"], -6.0, 6.0),
        usual(&["dry", "length"], -6.0, 6.0),
        usual(&["dry", "loss"], -2.0, 2.0),
        usual(&["steam", "width"], -2.0, 5.0),
        usual(&["steam", "length"], -2.0, 5.0),
        usual(&["steam", "loss"], -2.0, 2.0),
        usual(&["press", "width"], -3.0, 3.0),
        usual(&["press", "length"], -4.0, 3.0),
        usual(&["press", "loss"], -1.0, 1.0),
    ],
};
