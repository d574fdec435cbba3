//! How many pieces a yarn makes.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, Mass};

/// Pieces that a mass of yarn makes, not yet rounded down to whole ones.
#[formula(
    result = "n_p",
    sources = ["definition"],
    limits = ["yarn and needs on one basis, such as clean dry fibre", "the fixed need once: thrums, not a share of each piece"],
    slips = ["spreading the fixed need over the pieces and so forgetting it in a small lot"]
)]
pub fn pieces_from_mass<N: Number>(
    /// yarn at hand
    #[q("m_y", 0.1..=10000.0)]
    yarn_mass: Mass<N>,
    /// needed once, however many pieces
    #[q("m_0", 0.0..=20.0)]
    fixed_mass: Mass<N>,
    /// needed for each piece
    #[q("m_p", 0.01..=50.0)]
    mass_per_piece: Mass<N>,
) -> Count<N> {
    ((yarn_mass - fixed_mass) / mass_per_piece).max(0.0)
}

/// Yarn for a number of pieces; none for no piece.
#[formula(
    result = "m_y",
    sources = ["definition"],
    limits = ["the fixed need once: thrums, not for each piece"],
    slips = ["the fixed need for each piece"]
)]
pub fn yarn_for_pieces<N: Number>(
    /// pieces
    #[q("n_p", 0.0..=5000.0)]
    pieces: Count<N>,
    /// needed once, however many pieces
    #[q("m_0", 0.0..=20.0)]
    fixed_mass: Mass<N>,
    /// needed for each piece
    #[q("m_p", 0.01..=50.0)]
    mass_per_piece: Mass<N>,
) -> Mass<N> {
    // Pieces are whole: less than half a piece counts as none.
    pieces.if_less(0.5, 0.0, fixed_mass + pieces * mass_per_piece)
}

/// A billionth of a piece too little is a whole piece: arithmetic rounds.
const ROUNDING: f64 = 1e-9;

/// Whole pieces out of a mass.
#[formula(
    result = "n_p",
    sources = ["practice"],
    limits = ["mass and piece on one basis: greasy for greasy, finished for finished"],
    slips = ["a part of a piece promised", "rounding to the nearest whole piece, which may be one too many"]
)]
pub fn full_pieces<N: Number>(
    /// mass at hand
    #[q("m", 0.1..=10000.0)]
    mass: Mass<N>,
    /// mass for each piece
    #[q("m_p", 0.01..=50.0)]
    mass_per_piece: Mass<N>,
) -> Count<N> {
    (mass / mass_per_piece).round_down(ROUNDING)
}
