//! The reed systems of the trade: how many dents, beers or porters are in a fixed width.
//!
//! A number in a reed system says how close the dents are; the ends per dent are a value of their
//! own. Where a system counts ends, two ends a dent are meant, as its source says. The Preston
//! reed counted beers in various widths and has no one value.

use super::kind::Kind;
use super::unit::{Form, Unit, exact};

/// `dents` for each number, in a width of inches given as a ratio.
const fn reed(
    symbol: &'static str,
    names: &'static [&'static str],
    dents: u128,
    inches: (u128, u128),
    definition: &'static str,
    source: &'static str,
) -> Unit {
    let per_cm = exact(dents * inches.1 * 100, inches.0 * 254);
    let form = Form::Times(per_cm);
    Unit { symbol, names, kind: Kind::ReedCount, form, definition, source, rests_on: None }
}

const fn metric(
    symbol: &'static str,
    names: &'static [&'static str],
    form: Form,
    definition: &'static str,
) -> Unit {
    let (kind, source) = (Kind::ReedCount, "definition");
    Unit { symbol, names, kind, form, definition, source, rests_on: None }
}

/// Every reed system.
pub static SYSTEMS: &[Unit] = &[
    metric("dents/cm", &[], Form::Times(1.0), "dents in a centimetre"),
    metric(
        "dents/10 cm",
        &["dents/dm", "metric-reed"],
        Form::Per(10.0),
        "dents in ten centimetres",
    ),
    reed("stockport-reed", &["manchester-reed"], 1, (2, 1), "dents in 2 in", "Brooks 1892"),
    reed(
        "dents/in",
        &["dents/inch", "dpi", "radcliffe-reed", "huddersfield-reed"],
        1,
        (1, 1),
        "dents in 1 in",
        "Textile Calculation 2015",
    ),
    reed("american-reed", &[], 1, (1, 1), "dents in 1 in", "memory"),
    reed("bolton-reed", &[], 20, (97, 4), "beers of 20 dents in 24¼ in", "Taylor 1909"),
    reed("bradford-reed", &[], 20, (36, 1), "beers of 40 ends (20 dents) in 36 in", "Taylor 1909"),
    reed("blackburn-reed", &[], 20, (45, 1), "beers of 40 ends (20 dents) in 45 in", "Taylor 1909"),
    reed("6-4-reed", &[], 20, (58, 1), "beers of 20 dents in 58 in", "Taylor 1909"),
    reed("9-8-reed", &[], 20, (44, 1), "beers of 20 dents in 44 in", "Taylor 1909"),
    reed("4-4-reed", &[], 20, (39, 1), "beers of 20 dents in 39 in", "Taylor 1909"),
    reed("7-8-reed", &[], 20, (34, 1), "beers of 20 dents in 34 in", "Taylor 1909"),
    reed(
        "old-manchester-reed",
        &[],
        1,
        (36, 1),
        "splits of two threads in 36 in",
        "Textile Terms 2014",
    ),
    reed(
        "leeds-reed",
        &["leeds-porter"],
        19,
        (9, 1),
        "porters of 38 ends (19 dents) in 9 in",
        "Textile Terms 2014",
    ),
    reed(
        "dewsbury-reed",
        &[],
        19,
        (90, 1),
        "beers of 38 ends (19 dents at two a dent) in 90 in",
        "Textile Terms 2014",
    ),
    reed("scotch-reed", &["glasgow-reed"], 1, (37, 1), "dents in 37 in", "Taylor 1909"),
    reed(
        "scotch-tweed-reed",
        &["galashiels-reed", "hawick-reed"],
        20,
        (37, 1),
        "porters of 40 ends (20 dents) in 37 in",
        "Textile Terms 2014",
    ),
    reed("irish-reed", &["irish-linen-reed"], 1, (40, 1), "dents in 40 in", "Taylor 1909"),
    reed(
        "irish-hundreds",
        &[],
        100,
        (40, 1),
        "hundreds of dents in 40 in",
        "Textile Calculation 2015",
    ),
    reed("silk-reed", &[], 1, (36, 1), "dents in 36 in", "Textile Terms 2014"),
    reed(
        "macclesfield-reed",
        &[],
        100,
        (36, 1),
        "hundreds of dents in 36 in",
        "Textile Calculation 2015",
    ),
];
