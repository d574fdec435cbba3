//! Knitted cloth: the yarn in it, its loops and how tight they are.
//!
//! Munden's constants tie the loops to the length of yarn in each: courses × loop length is the same for
//! tight and slack cloth of one yarn and one state, and so is wales × loop length.
//!
//! *Take-up* means something else here than in weaving. Along each course the yarn runs in loops; the
//! knitter's take-up is how many times longer that yarn is than the course is wide: 1.5 to 3, not
//! a few percent.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{
    Length, LinearDensity, LoopDensity, Mass, MassPerArea, Ratio, Sett, TightnessFactor,
};

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
    #[q("b", 0.02..=5.0)]
    cloth_width: Length<N>,
    /// length of the piece
    #[q("L", 0.05..=1000.0)]
    cloth_length: Length<N>,
    /// take-up: length of yarn over width of course
    #[q("u", 1.0..=6.0)]
    knit_take_up: Ratio<N>,
    /// count
    #[q("T", 2.0..=2000.0)]
    count: LinearDensity<N>,
) -> Mass<N> {
    let yarn = (100.0 * courses * cloth_length * cloth_width * knit_take_up).named([
        "Y",
        "m",
        "length of yarn in the cloth",
    ]);
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
    loop_length: Length<N>,
) -> Ratio<N> {
    100.0 * wales * loop_length
}

/// How tightly a yarn is knitted for its count; the knitter's cover factor.
#[formula(
    result = "K_t",
    sources = ["Textile handbook 2023", "definition"],
    limits = ["the length of yarn in a loop by unravelling a known number of them", "compares plain knitting in yarns of one make"],
    slips = ["the loop in millimetres in one value, in centimetres in the other: a factor of ten", "the count instead of its root"]
)]
#[inverse(
    "The length of yarn in a loop that gives a tightness.",
    loop_for_tightness(count, tightness_factor: 5.0..=30.0) -> loop_length
        = count.sqrt() / (100.0 * tightness_factor),
    limits = ["what the machine draws is measured on the cloth, not read off its dial"],
    slips = ["the same loop for a thicker yarn: it knits tighter"]
)]
pub fn tightness_factor<N: Number>(
    /// count
    #[q("T", 2.0..=2000.0)]
    count: LinearDensity<N>,
    /// length of yarn in a loop
    #[q("l", 0.001..=0.05)]
    loop_length: Length<N>,
) -> TightnessFactor<N> {
    count.sqrt() / (100.0 * loop_length)
}

/// Munden's constant of a direction: courses, or wales, in a length of yarn of one loop.
#[formula(
    result = "K_d",
    sources = ["Munden 1959", "GATE solutions", "definition"],
    limits = ["plain knitting; one state of relaxation: see munden_constants"],
    slips = ["courses counted before washing with a loop measured after"]
)]
#[inverse(
    "The courses, or the wales, that a loop length leads to.",
    courses_for_loop(loop_constant "constant of the direction": 3.0..=7.0, loop_length) -> courses_or_wales
        = loop_constant / (100.0 * loop_length),
    limits = ["plain knitting in the state that the constant is of"],
    slips = ["the constant of the courses for the wales", "the loop in millimetres with a constant for centimetres: the constant has no unit, the loop has"]
)]
pub fn loop_constant<N: Number>(
    /// courses, or wales
    #[q("n", 0.5..=40.0)]
    courses_or_wales: Sett<N>,
    /// length of yarn in a loop
    #[q("l", 0.001..=0.05)]
    loop_length: Length<N>,
) -> Ratio<N> {
    100.0 * courses_or_wales * loop_length
}

/// Constant of the loops on an area, from those of courses and wales.
#[formula(
    result = "K_s",
    sources = ["Munden 1959", "GATE solutions"],
    limits = ["both of one state; Munden's own product values are from memory and differ from it by a little"],
    slips = ["the constants of two states"]
)]
pub fn stitch_constant<N: Number>(
    /// constant of the courses
    #[q("K_c", 3.0..=7.0)]
    course_constant: Ratio<N>,
    /// constant of the wales
    #[q("K_w", 3.0..=7.0)]
    wale_constant: Ratio<N>,
) -> Ratio<N> {
    course_constant * wale_constant
}

/// Shape of the loop: courses over wales.
#[formula(
    result = "R",
    sources = ["GATE solutions", "definition"],
    limits = ["plain knitting, about 1.3 when relaxed; higher where the cloth was stretched in width, lower where in length"],
    slips = ["wales over courses"]
)]
pub fn loop_shape<N: Number>(
    /// courses
    #[q("c", 0.5..=40.0)]
    courses: Sett<N>,
    /// wales
    #[q("w", 0.5..=40.0)]
    wales: Sett<N>,
) -> Ratio<N> {
    courses / wales
}

/// Loops on an area from the length of yarn in one.
#[formula(
    result = "S",
    sources = ["Munden 1959", "GATE solutions"],
    limits = ["plain knitting in the state that the constants are of"],
    slips = ["dividing by the loop length instead of its square"]
)]
pub fn loop_density<N: Number>(
    /// constant of the courses
    #[q("K_c", 3.0..=7.0)]
    course_constant: Ratio<N>,
    /// constant of the wales
    #[q("K_w", 3.0..=7.0)]
    wale_constant: Ratio<N>,
    /// length of yarn in a loop
    #[q("l", 0.001..=0.05)]
    loop_length: Length<N>,
) -> LoopDensity<N> {
    course_constant * wale_constant / (100.0 * loop_length).squared()
}

/// Loops on an area from courses and wales.
#[formula(
    result = "S",
    sources = ["definition"],
    limits = ["a rib or an interlock has loops on both faces: count both"],
    slips = ["only the face of a double knit"]
)]
pub fn loops_on_area<N: Number>(
    /// courses
    #[q("c", 0.5..=40.0)]
    courses: Sett<N>,
    /// wales
    #[q("w", 0.5..=40.0)]
    wales: Sett<N>,
) -> LoopDensity<N> {
    courses * wales
}

/// Mass of a square metre of knitting: loops, the yarn in each, and its count.
#[formula(
    result = "ω",
    sources = ["Textile handbook 2023"],
    limits = ["loops, loop length and count in one state of the cloth"],
    slips = ["the book calls the product a stitch density: it is the mass", "loops of one face where there are two"]
)]
pub fn knit_mass_per_area<N: Number>(
    /// loops on an area
    #[q("S", 1.0..=600.0)]
    loop_density: LoopDensity<N>,
    /// length of yarn in a loop
    #[q("l", 0.001..=0.05)]
    loop_length: Length<N>,
    /// count
    #[q("T", 2.0..=2000.0)]
    count: LinearDensity<N>,
) -> MassPerArea<N> {
    10.0 * loop_density * loop_length * count
}

/// Mass of a square metre of knitting from the constant of its loops: heavier with the count, lighter
/// with a longer loop.
///
/// The rule `g/m² = k ÷ (English cotton count × loop in mm)` is the same with k = 590.54 K_s.
#[formula(
    result = "ω",
    sources = ["Textile handbook 2023", "Textile Calculation 2015"],
    limits = ["the constant of that structure and state: see munden_constants; the 20.4 behind a printed rule for single jersey lies between Munden's dry and wet states"],
    slips = ["the constant of plain knitting for a rib"]
)]
pub fn knit_mass_per_area_by_constant<N: Number>(
    /// constant of the loops on an area
    #[q("K_s", 15.0..=40.0)]
    stitch_constant: Ratio<N>,
    /// length of yarn in a loop
    #[q("l", 0.001..=0.05)]
    loop_length: Length<N>,
    /// count
    #[q("T", 2.0..=2000.0)]
    count: LinearDensity<N>,
) -> MassPerArea<N> {
    stitch_constant * count / (1000.0 * loop_length)
}
