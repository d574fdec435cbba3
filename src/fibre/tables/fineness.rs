//! Grades of wool by fineness, and how many fibres a section needs.

use crate::handbook::{Figure, Table};

const GUIDE: &str = "NMSU B-409";
/// A limit of diameter that the guide prints.
const fn printed(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "µm").read(GUIDE, "Table 1")
}
/// The same from memory.
const fn remembered(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "µm")
}

/// Of each grade, finest first: its diameters, then its largest standard deviation.
pub(in crate::fibre) static US_GRADES: Table = Table {
    name: "wool_grades_us",
    title: "Grades of wool by fineness, United States",
    about: "For raw wool, by the mean diameter of the lot to two places. A lot that spreads more than its \
            grade allows drops one grade (source: Wool grading page). Finest is finer than 80s. Tops are graded by another table, about 0.4 to 1 µm coarser \
            at the same number (from memory). The number is a name and no promise of a count.",
    columns: &["grade", "figure", "blood"],
    figures: &[
        printed(&["finest", "diameter", "fine"], f64::NEG_INFINITY, 17.70)
            .note("under: the limit itself belongs to the next grade"),
        printed(&["finest", "largest standard deviation", "fine"], 3.59, 3.59).note("printed 3059"),
        printed(&["80s", "diameter", "fine"], 17.70, 19.14),
        printed(&["80s", "largest standard deviation", "fine"], 4.09, 4.09),
        printed(&["70s", "diameter", "fine"], 19.15, 20.59).note("printed 9.15"),
        printed(&["70s", "largest standard deviation", "fine"], 4.59, 4.59),
        printed(&["64s", "diameter", "fine"], 20.60, 22.04),
        printed(&["64s", "largest standard deviation", "fine"], 5.19, 5.19),
        printed(&["62s", "diameter", "½ blood"], 22.05, 23.49),
        printed(&["62s", "largest standard deviation", "½ blood"], 5.89, 5.89),
        printed(&["60s", "diameter", "½ blood"], 23.50, 24.94),
        printed(&["60s", "largest standard deviation", "½ blood"], 6.49, 6.49),
        printed(&["58s", "diameter", "⅜ blood"], 24.95, 26.39),
        printed(&["58s", "largest standard deviation", "⅜ blood"], 7.09, 7.09),
        printed(&["56s", "diameter", "⅜ blood"], 26.40, 27.84),
        printed(&["56s", "largest standard deviation", "⅜ blood"], 7.59, 7.59),
        printed(&["54s", "diameter", "¼ blood"], 27.85, 29.29),
        printed(&["54s", "largest standard deviation", "¼ blood"], 8.19, 8.19),
        printed(&["50s", "diameter", "¼ blood"], 29.30, 30.99),
        printed(&["50s", "largest standard deviation", "¼ blood"], 8.69, 8.69),
        printed(&["48s", "diameter", "low ¼ blood"], 31.00, 32.69),
        printed(&["48s", "largest standard deviation", "low ¼ blood"], 9.09, 9.09),
        printed(&["46s", "diameter", "low ¼ blood"], 32.70, 34.39),
        printed(&["46s", "largest standard deviation", "low ¼ blood"], 9.59, 9.59),
        remembered(&["44s", "diameter", "common"], 34.40, 36.19),
        remembered(&["44s", "largest standard deviation", "common"], 10.09, 10.09),
        remembered(&["40s", "diameter", "common"], 36.20, 38.09),
        remembered(&["40s", "largest standard deviation", "common"], 10.69, 10.69),
        remembered(&["36s", "diameter", "common"], 38.10, 40.20),
        remembered(&["36s", "largest standard deviation", "common"], 11.19, 11.19),
    ],
};

pub(super) static TOP_GRADES: Table = Table {
    name: "wool_grades_top",
    title: "Grades of worsted top by fineness",
    about: "Not those of raw wool: tops run about 0.4 to 1 µm coarser at the same number (from memory). One \
            grade could be read, on a page that does not say that it is of top: that is from memory.",
    columns: &["grade"],
    figures: &[
        Figure::band(&["54s"], 28.60, 30.09, "µm").read("Bradford system page", ""),
        Figure::band(&["coarser than raw wool of the same number by"], 0.4, 1.0, "µm"),
    ],
};

const fn floor(of: &'static [&'static str], fibres: f64) -> Figure {
    Figure::one(of, fibres, "").read("Rieter", "number of fibres in the cross-section")
}

pub(in crate::fibre) static MINIMUM_FIBRES: Table = Table {
    name: "minimum_fibres",
    title: "Fibres that a section needs",
    about: "The least with which a way of spinning runs well. Those of wool are from memory; measure where \
            your own mill stops.",
    columns: &["fibre", "spinning"],
    figures: &[
        floor(&["cotton, combed", "ring"], 33.0),
        floor(&["cotton, carded", "ring"], 75.0),
        floor(&["cotton, carded", "rotor"], 100.0),
        floor(&["synthetic, carded", "ring"], 50.0),
        floor(&["synthetic, carded", "rotor"], 100.0),
        Figure::band(&["wool", "worsted"], 35.0, 40.0, "").note("ring"),
        Figure::one(&["wool", "semi-worsted"], 60.0, "").note("about"),
        Figure::band(&["wool", "woollen"], 100.0, 120.0, "").note("mule or ring, about"),
        Figure::one(&["wool", "any, an opinion"], 20.0, "")
            .read("Hand-spinner 2014", "")
            .note("near"),
        Figure::one(&["wool", "by hand, an opinion"], 10.0, "")
            .read("Hand-spinner 2014", "")
            .note("near"),
    ],
};

pub(super) static EVENNESS: Table = Table {
    name: "fibre_spread",
    title: "Spread of fibres, and the factor for the least irregularity",
    about: "A factor of 1.00 is for fibres all alike. A printed table that gives cotton 1.00 and polyester \
            1.06 has slid one row.",
    columns: &["fibre", "figure"],
    figures: &[
        Figure::one(&["uniform, polyester", "factor"], 1.00, "").read("GATE solutions", ""),
        Figure::one(&["cotton", "factor"], 1.06, "").read("GATE solutions", "2018 Q52"),
        Figure::one(&["wool", "factor"], 1.12, ""),
        Figure::band(&["wool", "coefficient of variation of the diameter"], 15.0, 30.0, "%")
            .read("Riverina wool testing", ""),
    ],
};
