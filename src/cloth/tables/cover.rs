//! How close plain cloth can be beaten, by cover factor.

use crate::handbook::{Figure, Table};

pub(super) static WEAVABILITY: Table = Table {
    name: "weavability",
    title: "What a plain cloth asks of the loom, by cover factor",
    about: "Cotton, square plain cloth, Peirce's form in warp and in weft alike. Round hard threads jam at \
            28/√3 = 16.2 (jam_cover_factor); a thicker yarn for its count jams sooner.",
    columns: &["cloth"],
    figures: &[
        weavable(&["easy"], 12.0, "12 + 12"),
        weavable(&["needs a strong loom"], 14.0, "14 + 14"),
        weavable(&["jams"], 16.0, "16 + 16"),
    ],
};

const fn weavable(of: &'static [&'static str], factor: f64, both: &'static str) -> Figure {
    Figure::one(of, factor, "K_Ne").read("Woven fabric handout", "").note(both)
}
