//! The piece: from the finished article to warp and weft, and from the yarn to pieces.

mod beams;
mod check;
mod colour;
pub(super) mod formulas;
mod from_yarn;
mod inputs;
mod layout;
mod yarn;

pub use beams::{Beams, Warps};
pub use colour::{WarpColour, WeftColour};
pub use formulas::*;
pub use from_yarn::{PIECES_FROM_YARN, PiecesFromYarnResults, pieces_from_yarn};
pub use inputs::*;
#[cfg(not(feature = "plan-file"))]
use layout::Setting;
#[cfg(feature = "plan-file")]
pub(crate) use layout::Setting;
pub use layout::{Finished, Layout, SelvedgeLayout};
pub use yarn::{Sections, YarnToPrepare};

use crate::calculation::{Results, calculation};
use crate::cloth;
use crate::number::Number;
use crate::quantity::{Count, Length, Mass, ReedCount, Sett};

/// What [`piece()`] answers.
#[derive(Clone, Debug, Results)]
pub struct PieceResults<N> {
    /// finished width of a length as woven, hems and seams in
    #[block = "In the loom"]
    pub woven_width: Option<Length<N>>,
    /// finished length of the woven part, hems in
    pub woven_length: Option<Length<N>>,
    /// The piece on the loom.
    #[part]
    pub layout: Layout<N>,
    /// reed
    pub reed: Option<ReedCount<N>>,
    /// ends in a dent
    pub ends_per_dent: Option<Count<N>>,
    /// dents filled
    pub dents: Option<Count<N>>,
    /// picks off the loom
    pub weft_sett: Sett<N>,
    /// What lies on the beams.
    #[block = "Warp"]
    #[part]
    pub beams: Beams<N>,
    /// The sections of the warp.
    #[part]
    pub sections: Option<Sections<N>>,
    /// The yarn to prepare.
    #[block = "Yarn"]
    #[part]
    pub yarn: YarnToPrepare<N>,
    /// mass of a length off the loom, with its size
    #[block = "Off the loom and finished"]
    pub grey_mass: Mass<N>,
    /// Width and mass off the loom and finished.
    #[part]
    pub finished: Finished<N>,
    /// ends in the finished cloth
    pub finished_warp_sett: Sett<N>,
    /// picks in the finished cloth
    pub finished_weft_sett: Sett<N>,
    /// mass of a finished piece, fringes and hems in
    pub piece_mass: Mass<N>,
    /// Colours of the warp
    #[rows]
    pub colours_of_warp: Option<Vec<WarpColour<N>>>,
    /// Colours of the weft
    #[rows]
    pub colours_of_weft: Option<Vec<WeftColour<N>>>,
}

/// A woven article from its finished size to the reed, the warp, the weft and the yarn for them.
///
/// `wanted_width` and `wanted_length` are those of the finished article; hems, side hems, seams between
/// `panels` and fringes at each end come on top. Shrinkages are from off the loom to finished, `draw_in` is
/// from the reed to off the loom, `take_up` on the yarn; they are compounded, never added. Give
/// `wanted_reed_sett`, `reed` with `ends_per_dent` or `wanted_warp_sett` in the finished cloth; `weft_sett`
/// off the loom or `wanted_weft_sett` in the finished cloth. `thrums`, `header` and `sample_length` are for
/// each warp, `gap` between two pieces on it. What the loom or the beam cannot take is refused, with what to
/// change.
#[calculation(
    title = "The piece",
    example = ">>> import hankwise as hw
>>> throw = hw.cloth.piece(wanted_width=\"1.40 m\", wanted_length=\"1.80 m\", fringe=\"12 cm\",
...                        warp_count=\"8 Nm\", reed=\"24 dents/10 cm\", weft_sett=\"4.6 picks/cm\",
...                        width_shrinkage=\"12 %\", length_shrinkage=\"10 %\", draw_in=\"6 %\",
...                        take_up=\"8 %\", pieces=12, thrums=\"90 cm\", weft_waste=\"3 %\",
...                        mass_loss=\"2 %\")
>>> throw[\"ends\"], throw[\"warp_length\"]
(<number: 812>, <length: 29.87 m>)",
    check = check::piece
)]
pub fn piece<N: Number>(given: &PieceInputs<N>) -> PieceResults<N> {
    lay_out(&given.article, given.pieces)
}

/// What is woven for the article: hems and seams in, where there are any.
fn woven_size<N: Number>(article: &Article<N>) -> (Option<Length<N>>, Option<Length<N>>) {
    let (size, sewing) = (&article.size, &article.sewing);
    let width = (sewing.side_hem.is_some() || sewing.panels.is_some()).then(|| {
        let mut sum = size.wanted_width.v();
        if let Some(hem) = sewing.side_hem {
            sum = sum + 2.0 * hem.v();
        }
        if let Some(Panels { panels, seam }) = &sewing.panels {
            if let Some(seam) = seam {
                sum = sum + 2.0 * (panels.v() - 1.0) * seam.v();
            }
            sum = sum / panels.v();
        }
        Length::from(sum)
    });
    let length = sewing.hem.map(|hem| Length::from(size.wanted_length.v() + 2.0 * hem.v()));
    (width, length)
}

fn setting<N: Number>(article: &Article<N>) -> (Setting<N>, [Option<Length<N>>; 2]) {
    let (woven_width, woven_length) = woven_size(article);
    let ClothShrinkage { width_shrinkage, length_shrinkage, draw_in, take_up } = article.shrinkage;
    let ends_per_dent = article.per_dent();
    let reed = match article.ends {
        EndSpacing::Reed(reed) => reed,
        EndSpacing::WantedReedSett(sett) => cloth::reed_for_sett(sett, ends_per_dent),
        EndSpacing::WantedWarpSett(finished) => {
            // Threads close up as the cloth narrows.
            let sett = finished.v() * (1.0 - width_shrinkage.v()) * (1.0 - draw_in.v());
            cloth::reed_for_sett(Sett::from(sett), ends_per_dent)
        }
    };
    let weft_sett = match article.picks {
        PickSpacing::WeftSett(sett) => sett,
        PickSpacing::WantedWeftSett(finished) => {
            Sett::from(finished.v() * (1.0 - length_shrinkage.v()))
        }
    };
    let setting = Setting {
        width: woven_width.unwrap_or(article.size.wanted_width),
        length: woven_length.unwrap_or(article.size.wanted_length),
        fringe: article.size.fringe,
        width_shrinkage,
        length_shrinkage,
        draw_in,
        take_up,
        reed,
        ends_per_dent,
        selvedge: article.selvedge(),
        weft_sett,
        turn_allowance: article.weft.turn_allowance,
        weft_waste: article.weft.weft_waste,
    };
    (setting, [woven_width, woven_length])
}

/// Dents filled, those of the selvedges too.
fn dents<N: Number>(set: &Setting<N>, at: &Layout<N>) -> Count<N> {
    let ground = at.ends.v();
    let dents = match set.selvedge {
        None => ground / set.ends_per_dent.v(),
        Some((each, per_dent)) => {
            // A selvedge whose last dent is not full takes it all the same.
            (ground - 2.0 * each.v()) / set.ends_per_dent.v()
                + 2.0 * (each.v() / per_dent.v()).round_up(1e-6)
        }
    };
    Count::from(dents)
}

/// The whole of it, for a number of pieces.
fn lay_out<N: Number>(article: &Article<N>, pieces: Count<N>) -> PieceResults<N> {
    let (set, [woven_width, woven_length]) = setting(article);
    let at = set.layout();
    // Without ends in a dent a sett does not settle the reed.
    let is_reed_known =
        matches!(article.ends, EndSpacing::Reed(_)) || article.ends_per_dent.is_some();
    let beams = beams::beams(article, &set, &at, pieces);
    let sections = article.winding.creel.map(|creel| yarn::sections(creel, &at, beams.all()));
    let prepared = yarn::yarn(article, &set, &at, &beams, pieces);
    let (warp, weft) = (article.yarns.warp_count, article.weft_count());
    let in_piece = cloth::warp_mass(at.ends, at.warp_per_piece, warp);
    let weft_in_piece = crate::yarn::mass_of_length(weft, at.weft_per_piece);
    let finished = set.finished(&at, warp, weft, article.yarn.mass_loss);
    let piece = finished.woven_mass.v() + finished.fringe_mass.v();
    let piece = article.panels().map_or(piece, |panels| panels.v() * piece);
    PieceResults {
        woven_width,
        woven_length,
        reed: is_reed_known.then_some(set.reed),
        ends_per_dent: is_reed_known.then_some(set.ends_per_dent),
        dents: is_reed_known.then(|| dents(&set, &at)),
        weft_sett: set.weft_sett,
        sections,
        grey_mass: cloth::grey_mass(in_piece, article.yarn.size, weft_in_piece),
        finished_warp_sett: cloth::sett_after_shrinkage(
            finished.off_loom_warp_sett,
            set.width_shrinkage,
        ),
        finished_weft_sett: cloth::sett_after_shrinkage(set.weft_sett, set.length_shrinkage),
        piece_mass: Mass::from(piece),
        colours_of_warp: colour::warp(article, &at, prepared.warp_mass),
        colours_of_weft: colour::weft(article, &at, prepared.weft_mass),
        finished,
        yarn: prepared,
        beams,
        layout: at,
    }
}
