//! Handbook tables of quality.

use crate::handbook::{Figure, Table};

/// The tables of this room.
pub(crate) const TABLES: &[&Table] = &[&SKEIN_LENGTHS, &SKEIN_TEST];

const SCOPE: (&str, &str) = ("ASTM D1907", "scope");

static SKEIN_TEST: Table = Table {
    name: "skein_test",
    title: "Count by the skein",
    about: "What the scope of ASTM D1907 says: for which yarns the test is, and under what tension \
            their stretch is judged.",
    columns: &["what"],
    figures: &[
        Figure::one(&["options for the state of the skein"], 7.0, "").read(SCOPE.0, SCOPE.1),
        Figure::one(&["stretch of the yarn, at most"], 5.0, "%")
            .read(SCOPE.0, SCOPE.1)
            .note("as the tension rises over its band"),
        Figure::one(&["coarsest yarn"], 2000.0, "tex").read(SCOPE.0, SCOPE.1),
        Figure::band(&["tension at which the stretch is judged"], 0.25, 0.75, "cN/tex")
            .read(SCOPE.0, SCOPE.1),
    ],
};

static SKEIN_LENGTHS: Table = Table {
    name: "skein_lengths",
    title: "Lengths of a skein",
    about: "Lengths to reel for the count by the skein, as ISO 2060 has them; from memory, so ask the \
            standard in force.",
    columns: &["yarn"],
    figures: &[
        Figure::one(&["finer than 12.5 tex"], 200.0, "m").note("ISO 2060"),
        Figure::one(&["12.5 to 100 tex"], 100.0, "m").note("ISO 2060"),
        Figure::band(&["coarser than 100 tex"], 10.0, 50.0, "m").note("ISO 2060: 50 m or 10 m"),
    ],
};
