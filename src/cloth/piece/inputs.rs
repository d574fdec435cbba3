//! What is asked about a piece: the groups that a plan asks too, and what only a piece asks.

use crate::calculation::Inputs;
use crate::number::Number;
use crate::quantity::{
    Count, DrawIn, Fraction, Length, LinearDensity, Mass, MassLoss, OnFibre, ReedCount, Sett,
    Shrinkage, TakeUp,
};

/// The size of the finished article.
#[derive(Clone, Debug, Inputs)]
pub struct FinishedSize<N> {
    /// finished width of the article
    #[q("b_n", 0.05..=4.0, like = "1.40 m")]
    pub wanted_width: Length<N>,
    /// finished length of the woven part, without fringes and hems
    #[q("L_n", 0.2..=200.0, like = "1.80 m")]
    pub wanted_length: Length<N>,
    /// fringe at each end
    #[q("q", 0.0..=0.5, or = 0.0)]
    pub fringe: Length<N>,
}

/// The yarns of a cloth.
#[derive(Clone, Debug, Inputs)]
pub struct ClothYarns<N> {
    /// count of the warp
    #[q("T₁", 5.0..=2000.0, like = "8 Nm")]
    pub warp_count: LinearDensity<N>,
    /// count of the weft; that of the warp where it is omitted
    #[q("T₂", 5.0..=2000.0)]
    pub weft_count: Option<LinearDensity<N>>,
}

/// How close the ends are.
#[derive(Clone, Debug, Inputs)]
pub enum EndSpacing<N> {
    /// sett wanted in the reed
    #[q("n_w", 1.0..=60.0, like = "4.8 ends/cm")]
    WantedReedSett(Sett<N>),
    /// reed
    #[q("r", 0.5..=30.0)]
    Reed(ReedCount<N>),
    /// ends wanted in the finished cloth
    #[q("n_1", 1.0..=60.0, like = "6 ends/cm")]
    WantedWarpSett(Sett<N>),
}

/// How close the picks lie.
#[derive(Clone, Debug, Inputs)]
pub enum PickSpacing<N> {
    /// picks off the loom
    #[q("n₂", 1.0..=60.0, like = "4.6 picks/cm")]
    WeftSett(Sett<N>),
    /// picks wanted in the finished cloth
    #[q("n_f", 1.0..=60.0, like = "5 picks/cm")]
    WantedWeftSett(Sett<N>),
}

/// How a cloth shortens from the reed to its finish.
#[derive(Clone, Debug, Inputs)]
pub struct ClothShrinkage<N> {
    /// shrinkage in width, off the loom to finished
    #[q("s_w", -0.05..=0.45, or = 0.0)]
    pub width_shrinkage: Shrinkage<N>,
    /// shrinkage in length, off the loom to finished
    #[q("s_l", -0.05..=0.45, or = 0.0)]
    pub length_shrinkage: Shrinkage<N>,
    /// draw-in, reed to off the loom
    #[q("d_r", 0.0..=0.2, or = 0.0)]
    pub draw_in: DrawIn<N>,
    /// take-up of the warp, on yarn length
    #[q("u", 0.0..=0.2, or = 0.0)]
    pub take_up: TakeUp<N>,
}

/// What the weft takes beside the width.
#[derive(Clone, Debug, Inputs)]
pub struct WeftAllowances<N> {
    /// allowance for the turn of the weft, for each pick
    #[q("b", 0.0..=0.1, or = 0.0)]
    pub turn_allowance: Length<N>,
    /// waste of weft, on the weft woven in
    #[q("w₂", 0.0..=0.15, or = 0.0)]
    pub weft_waste: Fraction<N>,
}

/// How wide the loom is.
#[derive(Clone, Debug, Inputs)]
pub struct LoomWidth<N> {
    /// widest reed space of the loom
    #[q("B_m", 0.3..=6.0, like = "1.90 m")]
    pub loom_width: Option<Length<N>>,
}

/// What the loom and its beam can take.
#[derive(Clone, Debug, Inputs)]
pub struct LoomSize<N> {
    /// Its width.
    #[group]
    pub width: LoomWidth<N>,
    /// longest warp that the beam takes
    #[q("W_m", 1.0..=5000.0)]
    pub beam_length: Option<Length<N>>,
}

/// Lengths sewn side by side.
#[derive(Clone, Debug, Inputs)]
pub struct Panels<N> {
    /// lengths sewn side by side
    #[q("k", 1.0..=4.0, like = "2")]
    pub panels: Count<N>,
    /// cloth that each edge of a seam takes
    #[q("j", 0.0..=0.05, zero)]
    pub seam: Option<Length<N>>,
}

/// Hems and seams.
#[derive(Clone, Debug, Inputs)]
pub struct Sewing<N> {
    /// cloth folded under at each end
    #[q("h", 0.0..=0.3, zero)]
    pub hem: Option<Length<N>>,
    /// cloth folded under at each side
    #[q("h_s", 0.0..=0.1, zero)]
    pub side_hem: Option<Length<N>>,
    /// The panels.
    #[group]
    pub panels: Option<Panels<N>>,
}

/// The selvedges.
#[derive(Clone, Debug, Inputs)]
pub struct Selvedges<N> {
    /// ends of each selvedge
    #[q("N_s", 1.0..=100.0, like = "8")]
    pub selvedge_ends: Count<N>,
    /// ends in a dent of the selvedge; as in the ground where it is omitted
    #[q("e_s", 1.0..=8.0)]
    pub selvedge_ends_per_dent: Option<Count<N>>,
    /// colour of the selvedges, such as grey
    pub selvedge_colour: Option<String>,
}

/// The warp that makes no piece.
#[derive(Clone, Debug, Inputs)]
pub struct IdleWarp<N> {
    /// pieces on a warp; all of them where it is omitted
    #[q("n_b", 1.0..=500.0)]
    pub pieces_per_warp: Option<Count<N>>,
    /// warp left unwoven between pieces
    #[q("j_g", 0.0..=0.6, zero)]
    pub gap: Option<Length<N>>,
    /// warp that cannot be woven, for each warp: tying on and thrums
    #[q("a", 0.0..=5.0, or = 0.0)]
    pub thrums: Length<N>,
    /// warp for the heading, for each warp
    #[q("a_h", 0.0..=2.0, zero)]
    pub header: Option<Length<N>>,
    /// cloth off the loom woven as a sample, for each warp
    #[q("L_s", 0.0..=3.0, zero)]
    pub sample_length: Option<Length<N>>,
}

/// Yarn beside that in the cloth, and what lies on it.
#[derive(Clone, Debug, Inputs)]
pub struct YarnAllowances<N> {
    /// waste of winding and warping, on the yarn in the warps
    #[q("w_1", 0.0..=0.1, zero)]
    pub warp_waste: Option<Fraction<N>>,
    /// yarn to have over, on what is needed with its waste
    #[q("v", 0.0..=0.3, zero)]
    pub spare_share: Option<Fraction<N>>,
    /// size on the warp, on the yarn without it
    #[q("z", 0.0..=0.5, or = 0.0)]
    pub size: OnFibre<N>,
    /// mass lost in finishing, on the mass before
    #[q("m_l", -0.1..=0.25, or = 0.0)]
    pub mass_loss: MassLoss<N>,
}

/// How the yarn is wound.
#[derive(Clone, Debug, Inputs)]
pub struct Winding<N> {
    /// ends in a section: the bobbins in the creel
    #[q("b_c", 4.0..=1000.0)]
    pub creel: Option<Count<N>>,
    /// yarn on a warp bobbin
    #[q("l_b", 50.0..=100_000.0)]
    pub length_per_bobbin: Option<Length<N>>,
    /// yarn on a pirn
    #[q("l_p", 10.0..=20_000.0)]
    pub length_per_pirn: Option<Length<N>>,
    /// yarn on a full package: a cone
    #[q("g", 0.05..=10.0)]
    pub package_mass: Option<Mass<N>>,
}

/// A woven article as one wants it: sizes, yarns, setts, loom.
#[derive(Clone, Debug, Inputs)]
pub struct Article<N> {
    /// The size.
    #[group]
    pub size: FinishedSize<N>,
    /// The yarns.
    #[group]
    pub yarns: ClothYarns<N>,
    /// The ends.
    #[one_of("how close the ends are")]
    pub ends: EndSpacing<N>,
    /// ends in a dent; 2 where the reed is given, else 1
    #[q("e", 1.0..=6.0)]
    pub ends_per_dent: Option<Count<N>>,
    /// The picks.
    #[one_of("how close the picks lie")]
    pub picks: PickSpacing<N>,
    /// The shrinkages.
    #[group]
    pub shrinkage: ClothShrinkage<N>,
    /// Hems and seams.
    #[group]
    pub sewing: Sewing<N>,
    /// The selvedges.
    #[group]
    pub selvedges: Option<Selvedges<N>>,
    /// The warp that makes no piece.
    #[group]
    pub idle: IdleWarp<N>,
    /// The weft.
    #[group]
    pub weft: WeftAllowances<N>,
    /// Yarn beside that in the cloth.
    #[group]
    pub yarn: YarnAllowances<N>,
    /// The loom.
    #[group]
    pub loom: LoomSize<N>,
    /// Sections and packages.
    #[group]
    pub winding: Winding<N>,
    /// order of the colours of the warp, such as 24 grey 4 white
    pub warp_colours: Option<String>,
    /// order of the colours of the weft, such as 24 grey 4 white
    pub weft_colours: Option<String>,
}

/// What [`piece()`](super::piece()) asks.
#[derive(Clone, Debug, Inputs)]
pub struct PieceInputs<N> {
    /// The article.
    #[group]
    pub article: Article<N>,
    /// pieces
    #[q("n_p", 1.0..=500.0, or = 1.0)]
    pub pieces: Count<N>,
}

/// Yarn at hand, that of the warp apart from that of the weft.
#[derive(Clone, Debug, Inputs)]
pub struct TwoYarns<N> {
    /// warp yarn at hand
    #[q("y_1", 0.05..=10_000.0, like = "7 kg")]
    pub warp_yarn_at_hand: Option<Mass<N>>,
    /// weft yarn at hand
    #[q("y_2", 0.05..=10_000.0, like = "5 kg")]
    pub weft_yarn_at_hand: Option<Mass<N>>,
}

/// The yarn at hand.
#[derive(Clone, Debug, Inputs)]
pub enum AtHand<N> {
    /// yarn at hand for warp and weft of one count
    #[q("y", 0.05..=10_000.0, like = "12 kg")]
    YarnAtHand(Mass<N>),
    /// Warp and weft apart.
    #[group]
    Apart(TwoYarns<N>),
}

/// What [`pieces_from_yarn()`](super::pieces_from_yarn()) asks.
#[derive(Clone, Debug, Inputs)]
pub struct PiecesFromYarnInputs<N> {
    /// The yarn at hand.
    #[one_of("the yarn at hand")]
    pub hand: AtHand<N>,
    /// The article.
    #[group]
    pub article: Article<N>,
}

impl<N: Number> Article<N> {
    /// The count of the weft.
    pub(super) fn weft_count(&self) -> LinearDensity<N> {
        self.yarns.weft_count.unwrap_or(self.yarns.warp_count)
    }
    /// Ends in a dent.
    pub(super) fn per_dent(&self) -> Count<N> {
        let usual = if matches!(self.ends, EndSpacing::Reed(_)) { 2.0 } else { 1.0 };
        self.ends_per_dent.unwrap_or(Count::base(N::constant(usual)))
    }
    /// Ends of each selvedge, and how many of them are in a dent.
    pub(super) fn selvedge(&self) -> Option<(Count<N>, Count<N>)> {
        let selvedges = self.selvedges.as_ref()?;
        let per_dent = selvedges.selvedge_ends_per_dent.unwrap_or_else(|| self.per_dent());
        Some((selvedges.selvedge_ends, per_dent))
    }
    /// Lengths sewn side by side, where there are several.
    pub(super) fn panels(&self) -> Option<Count<N>> {
        self.sewing.panels.as_ref().map(|panels| panels.panels)
    }
}
