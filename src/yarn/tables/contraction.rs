//! What folding has been found to take from the length.

use crate::handbook::{Figure, Table};

const fn percent(of: &'static [&'static str], c: f64) -> Figure {
    Figure::one(of, c, "%")
}
const fn remembered(of: &'static [&'static str], c: f64) -> Figure {
    percent(of, c).note("an example of the standard for designations, as remembered; rounded")
}

pub(super) static FOLDING_CONTRACTIONS: Table = Table {
    name: "folding_contractions",
    title: "Contraction in folding, on the untwisted length",
    about: "Single cases, no rule: contraction goes by twist, count and how the singles were spun. \
            Fold a length of your own and measure it.",
    columns: &["yarn"],
    figures: &[
        percent(&["cotton sewing thread, four of 50s for a 12s"], 4.0).read("Wilkinson 1912", ""),
        percent(&["cotton cable, 24s in fives, three of these"], 12.5)
            .read("Designation practice", ""),
        percent(&["rug yarn, plied by hand weavers"], 5.0).read("Rug talk", "").note("about"),
        remembered(&["34 tex S 600 × 2 Z 400"], 1.9),
        remembered(&["(25 tex S 420 + 60 tex Z 80) S 360"], 4.7),
        remembered(&["20 tex Z 700 × 2 S 400 × 3 Z 200"], 9.1),
        remembered(&["(20 tex Z 700 × 3 S 400 + 34 tex S 600) Z 200"], 2.1),
    ],
};
