//! The piece: warp and weft to prepare.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, Crimp, Fraction, Length, Mass, Ratio, Sett, Shrinkage, TakeUp};

/// Warp for a piece, its fringes included.
#[formula(
    result = "W_p",
    sources = ["practice"],
    limits = ["take-up on the length of the yarn", "fringes as they are on the loom, neither woven nor shrunk: twisting, knots and the wash shorten them"],
    slips = ["adding shrinkage and take-up to the length instead of dividing", "crimp on cloth used as take-up on yarn"]
)]
pub fn warp_per_piece<N: Number>(
    /// finished length of the woven part
    #[q("L_f", 0.2..=200.0)]
    finished_length: Length<N>,
    /// shrinkage in length, off the loom to finished
    #[q("s_l", -0.05..=0.45)]
    length_shrinkage: Shrinkage<N>,
    /// take-up of the warp
    #[q("u", 0.0..=0.2)]
    take_up: TakeUp<N>,
    /// fringe at each end
    #[q("q", 0.0..=0.3)]
    fringe: Length<N>,
) -> Length<N> {
    finished_length / (1.0 - length_shrinkage) / (1.0 - take_up) + 2.0 * fringe
}

/// Length of a warp for a number of pieces.
#[formula(
    result = "W",
    sources = ["Brooks 1892", "practice"],
    limits = ["waste once for each warp: thrums, tying on, header"],
    slips = ["allowing the loom waste for each piece"]
)]
pub fn warp_length<N: Number>(
    /// warp for a piece
    #[q("W_p", 0.2..=200.0)]
    warp_per_piece: Length<N>,
    /// pieces
    #[q("n_p", 1.0..=500.0)]
    pieces: Count<N>,
    /// waste of the warp
    #[q("a", 0.0..=5.0)]
    loom_waste: Length<N>,
) -> Length<N> {
    warp_per_piece * pieces + loom_waste
}

/// Yarn in a warp.
#[formula(
    result = "Y",
    sources = ["Brooks 1892", "Taylor 1909"],
    slips = ["forgetting the selvedge ends"]
)]
pub fn warp_yarn_length<N: Number>(
    /// ends
    #[q("N", 10.0..=20000.0)]
    ends: Count<N>,
    /// length of the warp
    #[q("W", 0.5..=5000.0)]
    warp_length: Length<N>,
) -> Length<N> {
    ends * warp_length
}

/// Picks in a piece.
#[formula(
    result = "P",
    sources = ["Taylor 1909", "practice"],
    limits = ["picks counted in the cloth off the loom, before it is finished"],
    slips = ["finished length with picks of the loom state"]
)]
pub fn picks_in_piece<N: Number>(
    /// finished length of the woven part
    #[q("L_f", 0.2..=200.0)]
    finished_length: Length<N>,
    /// shrinkage in length, off the loom to finished
    #[q("s_l", -0.05..=0.45)]
    length_shrinkage: Shrinkage<N>,
    /// picks off the loom
    #[q("n_o", 1.0..=60.0)]
    off_loom_weft_sett: Sett<N>,
) -> Count<N> {
    100.0 * off_loom_weft_sett * finished_length / (1.0 - length_shrinkage)
}

/// Weft for a piece.
#[formula(
    result = "Y_p",
    sources = ["Taylor 1909", "Brooks 1892"],
    limits = ["a pick is as long as the reed is wide: its crimp is already in that width"],
    slips = ["the width of the cloth instead of that in the reed", "crimp on top of the reed width"]
)]
pub fn weft_per_piece<N: Number>(
    /// picks
    #[q("P", 10.0..=1000000.0)]
    picks: Count<N>,
    /// width in the reed
    #[q("B", 0.05..=4.0)]
    reed_width: Length<N>,
    /// allowance for the turn at the selvedge, for each pick
    #[q("b", 0.0..=0.1)]
    turn_allowance: Length<N>,
) -> Length<N> {
    picks * (reed_width + turn_allowance)
}

/// Weft for a number of pieces, with waste.
#[formula(
    result = "Y",
    sources = ["practice"],
    limits = ["waste on what is woven in: pirn ends, broken picks"],
    slips = ["a percentage on the wrong base"]
)]
pub fn weft_yarn_length<N: Number>(
    /// weft for a piece
    #[q("Y_p", 1.0..=1000000.0)]
    weft_per_piece: Length<N>,
    /// pieces
    #[q("n_p", 1.0..=500.0)]
    pieces: Count<N>,
    /// waste, on the weft woven in
    #[q("w₂", 0.0..=0.15)]
    weft_waste: Fraction<N>,
) -> Length<N> {
    weft_per_piece * pieces * (1.0 + weft_waste)
}

/// Hanks of yarn in a warp.
#[formula(
    result = "h",
    sources = ["Taylor 1909", "Brooks 1892"],
    limits = ["the length of the warp, not of the cloth: with its take-up and waste"],
    slips = ["the hank of another trade: 840 yards of cotton, 560 of worsted"]
)]
pub fn hanks_of_warp<N: Number>(
    /// ends
    #[q("N", 10.0..=20000.0)]
    ends: Count<N>,
    /// length of the warp
    #[q("W", 0.5..=20000.0)]
    warp_length: Length<N>,
    /// length of a hank
    #[q("l_h", 50.0..=20000.0)]
    hank_length: Length<N>,
) -> Ratio<N> {
    ends * warp_length / hank_length
}

/// Hanks of yarn in the weft of a piece.
#[formula(
    result = "h",
    sources = ["Taylor 1909", "Brooks 1892"],
    limits = ["width in the reed; waste is extra"],
    slips = ["the width of the cloth instead of that in the reed", "the hank of another trade: 840 yards of cotton, 560 of worsted"]
)]
pub fn hanks_of_weft<N: Number>(
    /// width in the reed
    #[q("B", 0.05..=4.0)]
    reed_width: Length<N>,
    /// length of the piece
    #[q("L", 0.2..=5000.0)]
    cloth_length: Length<N>,
    /// picks in the piece
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// length of a hank
    #[q("l_h", 50.0..=20000.0)]
    hank_length: Length<N>,
) -> Ratio<N> {
    100.0 * weft_sett * cloth_length * reed_width / hank_length
}

/// Crimp on cloth length from take-up on yarn length.
#[formula(
    result = "c",
    sources = ["definition", "Balasubramanian"],
    slips = ["using one for the other: 10 % crimp is 9.09 % take-up"]
)]
pub fn crimp_from_take_up<N: Number>(
    /// take-up on the length of the yarn
    #[q("u", 0.0..=0.3)]
    take_up: TakeUp<N>,
) -> Crimp<N> {
    take_up / (1.0 - take_up)
}

/// Mass of the fringes of a piece.
#[formula(
    result = "m",
    sources = ["practice"],
    limits = ["yarn as it left the warp; knots do not change the mass"],
    slips = ["one end of the piece instead of both"]
)]
pub fn fringe_mass<N: Number>(
    /// ends
    #[q("N", 10.0..=20000.0)]
    ends: Count<N>,
    /// fringe at each end of the piece
    #[q("q", 0.0..=0.5)]
    fringe: Length<N>,
    /// count of the warp
    #[q("T₁", 5.0..=2000.0)]
    warp_count: crate::quantity::LinearDensity<N>,
) -> Mass<N> {
    2.0 * ends * fringe * warp_count * 1e-6
}

/// Yarn in a length of cloth, from the crimp.
#[formula(
    result = "Y",
    sources = ["Textile School", "Taylor 1909", "All Fiber Arts"],
    limits = ["the crimp is on the length of the cloth: 10 % of it is 9.09 % of the yarn"],
    slips = ["cloth from yarn by taking the percentage off: 800 m at 8 % crimp make 740.7 m, not 736 m"]
)]
#[inverse(
    "Crimp: how much longer the yarn is than the cloth that it lies in.",
    crimp_from_lengths(yarn_length "length of the yarn": 0.01..=5000.0, cloth_length) -> crimp
        = (yarn_length - cloth_length) / cloth_length,
    sources = ["Taylor 1909", "Textile School", "Balasubramanian", "GATE solutions"],
    limits = ["on the length of the cloth"],
    slips = ["dividing by the yarn: that is the take-up"]
)]
pub fn yarn_in_cloth<N: Number>(
    /// length of the cloth
    #[q("L", 0.01..=5000.0)]
    cloth_length: Length<N>,
    /// crimp
    #[q("c", 0.0..=0.3)]
    crimp: Crimp<N>,
) -> Length<N> {
    cloth_length * (1.0 + crimp)
}

/// Yarn in a warp and its weft together.
#[formula(
    result = "Y",
    sources = ["Weft-Handed Weaver 2010", "Taylor 1909"],
    limits = ["waste of weft is extra"],
    slips = ["taking as much weft as warp where the cloth is not square"]
)]
pub fn yarn_in_piece<N: Number>(
    /// ends
    #[q("N", 10.0..=20000.0)]
    ends: Count<N>,
    /// length of the warp
    #[q("W", 0.5..=5000.0)]
    warp_length: Length<N>,
    /// picks
    #[q("P", 10.0..=1000000.0)]
    picks: Count<N>,
    /// width in the reed
    #[q("B", 0.05..=4.0)]
    reed_width: Length<N>,
) -> Length<N> {
    ends * warp_length + picks * reed_width
}

/// Ends of a cloth whose selvedges are set closer than its ground.
#[formula(
    result = "N",
    sources = ["Textile Calculations", "Taylor 1909"],
    limits = ["widths in the state of the sett"],
    slips = ["forgetting the closer dents of the selvedges", "one selvedge instead of both"]
)]
pub fn ends_with_selvedges<N: Number>(
    /// sett of the ground
    #[q("n_g", 1.0..=60.0)]
    ground_sett: Sett<N>,
    /// width of the ground
    #[q("b_g", 0.05..=4.0)]
    ground_width: Length<N>,
    /// width of both selvedges together
    #[q("b_s", 0.0..=0.1)]
    selvedge_width: Length<N>,
    /// ends in a dent of the selvedge over those of the ground
    #[q("k", 1.0..=4.0)]
    selvedge_closeness: Ratio<N>,
) -> Count<N> {
    100.0 * ground_sett * (ground_width + selvedge_closeness * selvedge_width)
}

/// Sections in which a mill warp is made.
#[formula(
    result = "S",
    sources = ["practice"],
    limits = ["the last section has what is left over"],
    slips = ["rounding down: the ends left over need a section too"]
)]
pub fn warp_sections<N: Number>(
    /// ends of the warp
    #[q("N", 10.0..=20000.0)]
    ends: Count<N>,
    /// ends in a section: the bobbins in the creel
    #[q("N_s", 4.0..=1000.0)]
    ends_per_section: Count<N>,
) -> Count<N> {
    // A millionth of a section is the rounding of binary figures.
    (ends / ends_per_section).round_up(1e-6)
}

/// Packages for a length of yarn: bobbins, pirns, cones.
#[formula(
    result = "z",
    sources = ["practice"],
    limits = ["the last package may be part full"],
    slips = ["rounding down", "the length of the thread where it is wound twofold"]
)]
pub fn packages_for_length<N: Number>(
    /// length of yarn
    #[q("Y", 1.0..=10000000.0)]
    yarn_length: Length<N>,
    /// length on a package
    #[q("l", 10.0..=1000000.0)]
    package_length: Length<N>,
) -> Count<N> {
    (yarn_length / package_length).round_up(1e-6)
}
