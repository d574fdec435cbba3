//! Threads that lie side by side, and how much of a yarn is fibre.

use crate::handbook::{Figure, Table};

const fn factor(of: &'static [&'static str], f: f64, source: &'static str) -> Figure {
    Figure::one(of, f, "").read(source, "")
}

pub(super) static DIAMETER_FACTORS: Table = Table {
    name: "diameter_factors",
    title: "Diameters in an inch: f of n = f × √(yards in a pound)",
    about: "Threads that fit side by side in an inch are f times the root of the yards in a pound \
            (in a centimetre 0.2773 × f times the root of the metres in a kilogram). The books \
            disagree by a twentieth. Wraps on a ruler are another thing: printed figures for them run \
            from 0.43 to 1.06, see wraps_estimate.",
    columns: &["yarn"],
    figures: &[
        factor(&["woollen"], 0.84, "Ashenhurst page 1999"),
        factor(&["woollen"], 0.85, "Sweet Georgia"),
        factor(&["woollen"], 0.85, "Ground Weave"),
        factor(&["worsted"], 0.90, "Ashenhurst page 1999"),
        factor(&["worsted"], 0.90, "Sweet Georgia"),
        factor(&["worsted"], 0.90, "Ground Weave"),
        factor(&["cotton"], 0.90, "Ashenhurst page 1999"),
        Figure::one(&["cotton"], 0.903, "")
            .read("Taylor 1909", "")
            .note("Ashenhurst as he quotes him: 32s measure 1/148 in"),
        factor(&["cotton"], 0.91, "Sweet Georgia"),
        factor(&["cotton"], 0.92, "Ground Weave"),
        Figure::one(&["cotton"], 0.95, "")
            .read("Taylor 1909", "")
            .note("his own, 32s measure 1/156 in: the root less 5 per cent"),
        factor(&["linen, silk"], 0.91, "Sweet Georgia"),
        factor(&["linen, silk"], 0.92, "Ground Weave"),
        Figure::one(&["cotton"], 0.92, "").note("Ashenhurst: less 8 per cent"),
        Figure::one(&["silk"], 0.96, "").note("Ashenhurst: less 4 per cent"),
    ],
};

pub(super) static PACKING: Table = Table {
    name: "packing",
    title: "Share of a yarn's section that is fibre",
    about: "The rest is air. No printed figure for woollen yarn has been found: it packs lower than \
            worsted, so measure it.",
    columns: &["yarn"],
    figures: &[
        Figure::one(&["spun yarn, as taught"], 0.65, "")
            .read("GATE solutions", "2008")
            .note("about; behind d = 4.44 × 10⁻³ √(tex/density) cm"),
        Figure::one(&["cotton, behind Peirce's 1.1 cm³/g"], 1.0 / (1.1 * 1.52), "")
            .defined()
            .note("cotton of 1.52 g/cm³"),
        Figure::one(&["wool"], 0.65, ""),
        Figure::one(
            &["limit, round fibres packed as close as can be"],
            0.906_899_682_117_108_9,
            "",
        )
        .defined()
        .note("π/(2√3)"),
    ],
};
