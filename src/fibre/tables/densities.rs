//! Densities of fibres.

use crate::handbook::{Figure, Table};

/// At 65 % relative humidity.
const fn damp(of: &'static [&'static str], density: f64) -> Figure {
    Figure::one(of, density, "g/cm³").read("Morton and Hearle", "table 5.1")
}
const fn other(of: &'static [&'static str], density: f64, source: &'static str) -> Figure {
    Figure::one(of, density, "g/cm³").read(source, "")
}
const fn specific_gravity(of: &'static [&'static str], density: f64) -> Figure {
    Figure::one(of, density, "g/cm³")
        .read("National Research Council 2001", "table 11.1")
        .note("printed as specific gravity, state not given")
}

pub(super) static DENSITIES: Table = Table {
    name: "fibre_densities",
    title: "Density of fibres",
    about: "Of the fibre itself, without the air of a yarn: see 'packing' for that.",
    columns: &["fibre", "state"],
    figures: &[
        damp(&["wool", "65 % r.h."], 1.31),
        damp(&["silk", "65 % r.h."], 1.34),
        damp(&["cotton", "65 % r.h."], 1.52).note("the hollow filled"),
        damp(&["viscose", "65 % r.h."], 1.49),
        damp(&["acetate", "65 % r.h."], 1.32),
        damp(&["casein", "65 % r.h."], 1.30),
        damp(&["nylon", "65 % r.h."], 1.14),
        damp(&["polyester", "65 % r.h."], 1.39),
        damp(&["acrylic", "65 % r.h."], 1.19),
        damp(&["polyethylene, high density", "65 % r.h."], 0.95),
        damp(&["polypropylene", "65 % r.h."], 0.91),
        damp(&["polyvinyl chloride", "65 % r.h."], 1.40),
        damp(&["glass", "65 % r.h."], 2.5),
        damp(&["wool", "dry"], 1.30),
        damp(&["cotton", "dry"], 1.55),
        specific_gravity(&["wool", ""], 1.31),
        specific_gravity(&["silk", ""], 1.34),
        specific_gravity(&["cotton", ""], 1.52),
        specific_gravity(&["rayon", ""], 1.52),
        specific_gravity(&["nylon 6", ""], 1.14),
        specific_gravity(&["polyester", ""], 1.39),
        specific_gravity(&["acrylic", ""], 1.18),
        specific_gravity(&["polylactic acid", ""], 1.25),
        other(&["cotton", ""], 1.53, "Flexuma"),
        other(&["acrylic", ""], 1.15, "Flexuma"),
        Figure::one(&["flax", ""], 1.53, "g/cm³").read("Fibre handbook", "p. 9"),
        Figure::one(&["cotton", ""], 1.54, "g/cm³")
            .read("GATE solutions", "")
            .note("and 1.52 in the same series"),
    ],
};
