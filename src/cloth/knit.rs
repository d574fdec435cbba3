//! Knitted cloth: the yarn in it.
//!
//! *Take-up* means something else here than in weaving. Along each course the yarn runs in loops; the
//! knitter's take-up is how many times longer that yarn is than the course is wide: 1.5 to 3, not
//! a few percent.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{Length, LinearDensity, Mass, Ratio, Sett};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[&KNIT_MASS, &KNIT_TAKE_UP];

/// Mass of the yarn in a knitted piece: courses, the width of each, and the take-up of its loops.
#[formula(
    result = "m",
    sources = ["Davis 1920"],
    limits = ["take-up is the length of yarn over the width of its course, from yarn unravelled from the cloth itself", "width and courses in one state of the cloth; one yarn in every course: add up face, back and laid-in yarn"],
    slips = ["leaving out the take-up: the cloth then weighs half", "a weaver's take-up of a few percent", "the resultant of a folded yarn for its single"]
)]
pub fn knit_mass<N: Number>(
    /// courses
    #[q("c", 0.5..=40.0)]
    courses: Sett<N>,
    /// width of the piece
    #[q("B", 0.02..=5.0)]
    width: Length<N>,
    /// length of the piece
    #[q("L", 0.05..=1000.0)]
    length: Length<N>,
    /// take-up: length of yarn over width of course
    #[q("u", 1.0..=6.0)]
    take_up: Ratio<N>,
    /// count
    #[q("T", 2.0..=2000.0)]
    count: LinearDensity<N>,
) -> Mass<N> {
    let yarn = (100.0 * courses * length * width * take_up).named("Y");
    yarn * count * 1e-6
}

/// Take-up of a knitted course: yarn in a stitch, and the stitches in a width.
#[formula(
    result = "u",
    sources = ["definition"],
    limits = ["plain knitting, each needle a stitch; the length of yarn in a stitch by unravelling a known number"],
    slips = ["courses for wales"]
)]
pub fn knit_take_up<N: Number>(
    /// wales: stitches side by side
    #[q("w", 0.5..=30.0)]
    wales: Sett<N>,
    /// length of yarn in a stitch
    #[q("l", 0.001..=0.05)]
    stitch: Length<N>,
) -> Ratio<N> {
    100.0 * wales * stitch
}
