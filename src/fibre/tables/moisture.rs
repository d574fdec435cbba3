//! Agreed allowances, regain in the standard atmosphere, the atmospheres, the curve of wool.

use crate::handbook::{Figure, Table};

/// Where the European list was read: the French order, which has its fibres and numbers.
const fn eu(fibre: &'static [&'static str], regain: f64) -> Figure {
    Figure::one(fibre, regain, "%").read("French order 1998", "Annex II")
}
/// What was added to the European list later.
const fn eu_later(fibre: &'static [&'static str], regain: f64, when: &'static str) -> Figure {
    Figure::one(fibre, regain, "%").note(when)
}
const fn astm(fibre: &'static [&'static str], regain: f64) -> Figure {
    Figure::one(fibre, regain, "%")
        .read("Moisture review 2020", "table 10")
        .note("edition of 2013, as relayed by a review")
}
const fn memory(fibre: &'static [&'static str], regain: f64) -> Figure {
    Figure::one(fibre, regain, "%")
}
const COMBED: &str = "worsted";
const CARDED: &str = "woollen; also where the route cannot be told";
const HAIRS: &str =
    "alpaca, llama, camel, cashmere, mohair, angora, vicuña, yak, guanaco and others";

pub(in crate::fibre) static ALLOWANCES: Table = Table {
    name: "moisture_allowances",
    title: "Agreed allowances for moisture",
    about: "Water to invoice on the oven-dry mass: what was agreed, not what is on the fibre. The \
            contract says which list holds. The European list was read in the French order of 24 June \
            1998; Regulation (EU) 1007/2011 goes on with its numbers.",
    columns: &["fibre", "list"],
    figures: &[
        eu(&["wool, combed", "EU"], 18.25).note(COMBED),
        eu(&["wool, carded", "EU"], 17.0).note(CARDED),
        eu(&["animal hair, combed", "EU"], 18.25).note(HAIRS),
        eu(&["animal hair, carded", "EU"], 17.0).note(HAIRS),
        eu(&["horsehair, combed", "EU"], 16.0),
        eu(&["horsehair, carded", "EU"], 15.0),
        eu(&["silk", "EU"], 11.0),
        eu(&["cotton, normal", "EU"], 8.5),
        eu(&["cotton, mercerised", "EU"], 10.5),
        eu(&["kapok", "EU"], 10.9),
        eu(&["flax", "EU"], 12.0).note("linen"),
        eu(&["hemp", "EU"], 12.0).note("true hemp"),
        eu(&["jute", "EU"], 17.0),
        eu(&["abaca", "EU"], 14.0),
        eu(&["alfa", "EU"], 14.0),
        eu(&["coir", "EU"], 13.0),
        eu(&["broom", "EU"], 14.0),
        eu(&["ramie", "EU"], 8.5).note("bleached"),
        eu(&["sisal", "EU"], 14.0),
        eu(&["sunn", "EU"], 12.0),
        eu(&["henequen", "EU"], 14.0),
        eu(&["maguey", "EU"], 14.0),
        eu(&["acetate", "EU"], 9.0),
        eu(&["alginate", "EU"], 20.0),
        eu(&["cupro", "EU"], 13.0),
        eu(&["modal", "EU"], 13.0),
        eu(&["protein", "EU"], 17.0),
        eu(&["triacetate", "EU"], 7.0),
        eu(&["viscose", "EU"], 13.0).note("rayon"),
        eu(&["acrylic", "EU"], 2.0),
        eu(&["chlorofibre", "EU"], 2.0),
        eu(&["fluorofibre", "EU"], 0.0),
        eu(&["modacrylic", "EU"], 2.0),
        eu(&["polyamide, staple", "EU"], 6.25).note("nylon"),
        eu(&["polyamide, filament", "EU"], 5.75).note("nylon"),
        eu(&["aramid", "EU"], 8.0),
        eu(&["polyimide", "EU"], 3.5),
        eu(&["lyocell", "EU"], 13.0),
        eu(&["polylactide", "EU"], 1.5),
        eu(&["polyester, staple", "EU"], 1.5),
        eu(&["polyester, filament", "EU"], 1.5),
        eu(&["polyethylene", "EU"], 1.5),
        eu(&["polypropylene", "EU"], 2.0),
        eu(&["polycarbamide", "EU"], 2.0),
        eu(&["polyurethane, staple", "EU"], 3.5),
        eu(&["polyurethane, filament", "EU"], 3.0),
        eu(&["vinylal", "EU"], 5.0),
        eu(&["trivinyl", "EU"], 3.0),
        eu(&["elastodiene", "EU"], 1.0),
        eu(&["elastane", "EU"], 1.5),
        eu(&["glass, over 5 µm", "EU"], 2.0),
        eu(&["glass, 5 µm or less", "EU"], 3.0),
        eu(&["metal", "EU"], 2.0).note("of metal alone"),
        eu(&["metallised", "EU"], 2.0),
        eu(&["asbestos", "EU"], 2.0),
        eu(&["paper yarn", "EU"], 13.75),
        eu(&["elastomultiester", "EU"], 1.5),
        eu_later(&["elastolefin", "EU"], 1.5, "Regulation (EU) 1007/2011"),
        eu_later(&["melamine", "EU"], 7.0, "Regulation (EU) 1007/2011"),
        eu_later(
            &["polypropylene/polyamide bicomponent", "EU"],
            1.0,
            "added by Regulation (EU) 286/2012",
        ),
        eu_later(&["polyacrylate", "EU"], 30.0, "added by Regulation (EU) 2018/122"),
        astm(&["wool", "ASTM D1909"], 13.6),
        astm(&["cotton", "ASTM D1909"], 8.5),
        astm(&["silk", "ASTM D1909"], 11.0),
        astm(&["flax", "ASTM D1909"], 12.0),
        astm(&["hemp", "ASTM D1909"], 12.0),
        astm(&["jute", "ASTM D1909"], 13.75),
        memory(&["viscose", "ASTM D1909"], 11.0).note("rayon"),
        memory(&["acetate", "ASTM D1909"], 6.5),
        memory(&["triacetate", "ASTM D1909"], 3.5),
        memory(&["polyamide", "ASTM D1909"], 4.5).note("nylon"),
        memory(&["polyester", "ASTM D1909"], 0.4),
        memory(&["acrylic", "ASTM D1909"], 1.5),
        memory(&["elastane", "ASTM D1909"], 1.3),
        memory(&["cotton yarn, raw", "ASTM D1909"], 7.0),
        memory(&["wool, scoured", "trade"], 16.0),
        memory(&["wool noils", "trade"], 14.0),
        memory(&["wool tops, dry-combed", "trade"], 18.25),
        memory(&["wool tops, oil-combed", "trade"], 19.0),
        memory(&["wool yarn, carded", "trade"], 17.0).note("woollen yarn"),
        memory(&["wool yarn, combed", "trade"], 18.25).note("worsted yarn"),
        Figure::one(&["wool, scoured, as handed over", "trade"], 16.0, "%")
            .read("Britannica 1929", "Wool")
            .note("about, printed as moisture"),
        Figure::one(&["wool", "trade"], 18.25, "%")
            .read("Royal Society NZ 1909", "")
            .note("taken as the legal standard in New Zealand, 1909"),
    ],
};

const fn relayed(fibre: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(fibre, low, high, "%").read("Moisture review 2020", "table 10")
}

pub(super) static AT_STANDARD: Table = Table {
    name: "regain_in_standard_atmosphere",
    title: "Regain at 65 % relative humidity and 20 °C",
    about: "What fibres take up in the standard atmosphere, of Morton and Hearle as a review relays it: \
            not what is invoiced.",
    columns: &["fibre", "branch"],
    figures: &[
        relayed(&["wool", "absorption"], 14.0, 14.0),
        relayed(&["wool", "other figures printed"], 16.0, 18.0),
        relayed(&["cotton", ""], 7.0, 8.0),
        relayed(&["silk", ""], 10.0, 10.0),
        relayed(&["flax", ""], 7.0, 7.0),
        relayed(&["hemp", ""], 8.0, 8.0),
        relayed(&["jute", ""], 12.0, 12.0),
    ],
};

const fn point(humidity: &'static [&'static str], regain: f64) -> Figure {
    Figure::one(humidity, regain, "%")
}

/// Points of the curve of wool: relative humidity in percent, regain in percent.
pub(in crate::fibre) const WOOL_POINTS: [(f64, f64); 9] = [
    (10.0, 4.7),
    (20.0, 7.0),
    (30.0, 8.9),
    (40.0, 10.8),
    (50.0, 12.8),
    (60.0, 14.9),
    (70.0, 17.2),
    (80.0, 19.9),
    (90.0, 23.4),
];
/// How much more wool holds in drying than in damping, in percent of the dry mass.
pub(in crate::fibre) const HYSTERESIS: (f64, f64) = (1.0, 2.0);

pub(super) static WOOL_ISOTHERM: Table = Table {
    name: "wool_isotherm",
    title: "Regain of clean wool against the humidity of the air",
    about: "Merino skein, about 24 °C, damping: in drying wool holds 1 to 2 more in the middle of the \
            range. All from memory. Not for greasy wool: suint takes up far more.",
    columns: &["branch", "humidity"],
    figures: &[
        point(&["absorption", "10 % r.h."], WOOL_POINTS[0].1),
        point(&["absorption", "20 % r.h."], WOOL_POINTS[1].1),
        point(&["absorption", "30 % r.h."], WOOL_POINTS[2].1),
        point(&["absorption", "40 % r.h."], WOOL_POINTS[3].1),
        point(&["absorption", "50 % r.h."], WOOL_POINTS[4].1),
        point(&["absorption", "60 % r.h."], WOOL_POINTS[5].1),
        point(&["absorption", "70 % r.h."], WOOL_POINTS[6].1),
        point(&["absorption", "80 % r.h."], WOOL_POINTS[7].1),
        point(&["absorption", "90 % r.h."], WOOL_POINTS[8].1),
        Figure::band(
            &["desorption above absorption", "mid-range"],
            HYSTERESIS.0,
            HYSTERESIS.1,
            "%",
        ),
        Figure::band(&["clean fibre in damp air", ""], 18.0, 20.0, "%")
            .read("Royal Society NZ 1909", ""),
        Figure::one(&["wool fat in damp air", ""], 17.0, "%")
            .read("Royal Society NZ 1909", "")
            .note("about"),
        Figure::band(&["suint in damp air", ""], 60.0, 67.0, "%").read("Royal Society NZ 1909", ""),
    ],
};
