//! Constants of plain knitting and of its mass.

use crate::handbook::{Figure, Table};

pub(super) static MUNDEN_CONSTANTS: Table = Table {
    name: "munden_constants",
    title: "Munden's constants of plain knitting in wool",
    about: "K_c = courses × loop, K_w = wales × loop, K_s = loops on an area × loop²: for loop_density, \
            courses_for_loop and knit_mass_per_area_by_constant. The states are how far the cloth has come to \
            rest. Munden 1959, from memory except where a source stands; his K_s is not quite the \
            product of the other two.",
    columns: &["state", "constant"],
    figures: &[
        Figure::one(&["dry relaxed", "courses, K_c"], 5.0, ""),
        Figure::one(&["dry relaxed", "wales, K_w"], 3.8, ""),
        Figure::one(&["dry relaxed", "loops on an area, K_s"], 19.0, ""),
        Figure::one(&["wet relaxed", "courses, K_c"], 5.3, ""),
        Figure::one(&["wet relaxed", "wales, K_w"], 4.1, ""),
        Figure::one(&["wet relaxed", "loops on an area, K_s"], 21.6, ""),
        Figure::one(&["finished or fully relaxed", "courses, K_c"], 5.5, "")
            .read("GATE solutions", "2015"),
        Figure::one(&["finished or fully relaxed", "wales, K_w"], 4.2, "")
            .read("GATE solutions", "2015"),
        Figure::one(&["finished or fully relaxed", "loops on an area, K_s"], 23.1, ""),
    ],
};

pub(super) static KNIT_MASS_CONSTANTS: Table = Table {
    name: "knit_mass_constants",
    title: "Mass of knitting: k of g/m² = k ÷ (English cotton count × loop in mm)",
    about: "Empirical, cotton, as printed to more digits than they deserve. Over 590.54 they are the \
            constant K_s of knit_mass_per_area_by_constant.",
    columns: &["structure"],
    figures: &[
        constant(&["single jersey"], 12_068.59, "K_s 20.4"),
        constant(&["1 × 1 rib"], 16_431.497, "K_s 27.8"),
        constant(&["2 × 1 rib"], 19_005.333, "K_s 32.2"),
    ],
};

const fn constant(of: &'static [&'static str], k: f64, note: &'static str) -> Figure {
    Figure::one(of, k, "").read("Textile Calculation 2015", "").note(note)
}
