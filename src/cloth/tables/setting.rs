//! Constants of the setting theories, rules of wraps, shares of the maximum.

use crate::handbook::{Figure, Table};

const ASHENHURST_PAGE: &str = "Ashenhurst page 1999";

/// The constant of worsted on the yards in a pound: both of Brierley's are 0.239 of them.
pub(crate) const BRIERLEY: f64 = 134.0 / 560.0;
/// Brierley's exponents, from memory.
pub(crate) const TWILL: f64 = 0.39;
pub(crate) const SATIN: f64 = 0.42;
pub(crate) const HOPSACK: f64 = 0.45;
/// Galceran's coefficients of the material.
pub(crate) const GALCERAN: (f64, f64) = (8.8, 10.0);

pub(super) static BRIERLEY_CONSTANTS: Table = Table {
    name: "brierley_constants",
    title: "Brierley's constant: F^m √(K × count) ends in an inch",
    about: "From memory, not read again: check a printed copy before relying on it. Over the yards of \
            a hank both are 0.239, the k of brierley_sett.",
    columns: &["count"],
    figures: &[
        Figure::one(&["worsted"], 134.0, ""),
        Figure::one(&["cotton, spun silk"], 200.0, ""),
        Figure::one(&["yards in a pound"], BRIERLEY, "").note("134/560; 200/840 is 0.238"),
    ],
};

pub(super) static BRIERLEY_EXPONENTS: Table = Table {
    name: "brierley_exponents",
    title: "Brierley's exponent m of the average float",
    about: "From memory, not read again. In plain the float is 1 and the exponent makes no odds. Those \
            of ribs are not recalled and so not given.",
    columns: &["weave"],
    figures: &[
        Figure::one(&["twill"], TWILL, ""),
        Figure::one(&["satin"], SATIN, ""),
        Figure::one(&["hopsack"], HOPSACK, ""),
    ],
};

pub(super) static GALCERAN_MATERIALS: Table = Table {
    name: "galceran_materials",
    title: "Galceran's coefficient Q of the material",
    about: "The greatest coefficient of density is Q/(1 + 0.73 × the intersections for each thread of \
            the other system); times the root of the metric count it gives threads in a centimetre. \
            He takes the yarn for 10 to 25 % thinner than Ashenhurst does.",
    columns: &["material"],
    figures: &[
        Figure::band(&["all, by material"], GALCERAN.0, GALCERAN.1, "").read("Galceran", "p. 37")
    ],
};

const fn load(of: &'static [&'static str], k: f64) -> Figure {
    Figure::one(of, k, "").read("Textile School", "Weaving calculations")
}

pub(super) static WEAVING_LOAD: Table = Table {
    name: "weaving_load_factors",
    title: "Factor of the weave by which a loom's load is judged",
    about: "It multiplies the density of the cloth; the looser weave loads the loom less. An index of \
            load and no ratio of setts: for those see sett_for_weave.",
    columns: &["weave"],
    figures: &[
        load(&["plain 1/1"], 1.0),
        load(&["twill 1/2"], 0.87),
        load(&["2/2 matt or gabardine"], 0.82),
        load(&["drill 1/3"], 0.77),
        load(&["satin 1/4"], 0.69),
    ],
};

pub(super) static WORKING_SETTS: Table = Table {
    name: "working_setts",
    title: "Sett to weave, as a share of the closest",
    about: "Handweavers' rules. What share suits a blanket, a suiting or a tweed is the mill's own to \
            know: no printed figure by use has been found. Wide warps are set more open than narrow \
            ones, shawls more open than clothing, upholstery closest; as common practice, cloth that \
            is to be milled or raised more open than cloth that is only washed.",
    columns: &["cloth"],
    figures: &[
        Figure::one(&["general cloth"], 0.75, "")
            .read(ASHENHURST_PAGE, "")
            .note("or slightly more"),
        Figure::one(&["balanced-looking handwoven cloth"], 0.80, "")
            .read("Osterkamp", "2011")
            .note("of two setts in doubt the closer"),
    ],
};

const fn lucerne(of: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(of, low, high, "").read("Lucerne workshop", "")
}

pub(super) static WRAPS_RULES: Table = Table {
    name: "wraps_rules",
    title: "Sett as a share of the wraps",
    about: "Rules of thumb for a first sample: the answer is a sett to weave, not a maximum. Wraps go \
            by the hand and are fewer than diameters (over 0.7 by one weaver, which takes half of them \
            to Ashenhurst's maximum of plain).",
    columns: &["weave"],
    figures: &[
        lucerne(&["plain"], 0.5, 0.5),
        lucerne(&["twill, hopsack"], 2.0 / 3.0, 2.0 / 3.0).note("plain and a third"),
        lucerne(&["rep"], 1.0, 1.5).note("two to three times plain"),
        lucerne(&["satin"], 1.0, 1.0)
            .note("twice plain: a rule for dense satins, not the closest by Ashenhurst (1.43)"),
        Figure::one(&["plain"], 0.5, "").read("Yield table", ""),
        Figure::one(&["twill"], 2.0 / 3.0, "").read("Yield table", ""),
        Figure::one(&["wraps for a diameter"], 0.7, "").read("Osterkamp", "2004"),
    ],
};
