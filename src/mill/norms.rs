//! What goods and costs come to in print, as shares.

use crate::handbook::{Figure, Table};

const fn norm(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "%").read("Cost slides", "")
}
const fn part(of: &'static [&'static str], share: f64) -> Figure {
    Figure::one(of, share, "%").read("Cost slides", "Indian mills")
}

pub(super) static REALISATION_NORMS: Table = Table {
    name: "realisation_norms",
    title: "Yarn made of the material taken in",
    about: "Cotton and its blends only: a scouring woollen mill loses far more, and its own lots are \
            its norm. The formula realisation gives the value of a lot.",
    columns: &["material", "route"],
    figures: &[
        norm(&["Indian cotton", "carded"], 86.0, 88.0),
        norm(&["Indian cotton", "combed"], 69.0, 72.0),
        norm(&["imported cotton", "carded"], 88.0, 90.0),
        norm(&["imported cotton", "combed"], 72.0, 80.0),
        norm(&["polyester and cotton", "carded"], 93.0, 94.0),
        norm(&["polyester and cotton", "combed"], 89.0, 90.0),
    ],
};

pub(super) static COST_SHARES: Table = Table {
    name: "cost_shares",
    title: "Costs of a spinning mill as shares",
    about: "Cotton mills; a commission woollen mill, which does not buy its wool, differs. On sales and \
            on the cost of the yarn are different bases: never add the two.",
    columns: &["cost", "on what"],
    figures: &[
        part(&["material", "sales"], 57.0),
        norm(&["material", "cost of the yarn"], 50.0, 70.0).note("another page of the same slides"),
        Figure::band(&["material", "cost of the yarn"], 60.0, 70.0, "%")
            .read("Yarn costing page", ""),
        part(&["wages", "sales"], 7.0),
        part(&["power", "sales"], 15.0),
        part(&["stores", "sales"], 3.0),
        part(&["overheads", "sales"], 5.0),
        part(&["interest", "sales"], 6.0),
        part(&["depreciation", "sales"], 4.0),
    ],
};
