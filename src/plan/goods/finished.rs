//! The finished piece, and where its yarn went.

use super::super::stage::{Bench, named};
use super::woven::{Laid, Piece};
use super::{Loom, Shop, Used};
use crate::calculation::{Place, Results};
use crate::number::Number;
use crate::quantity::{Count, Length, Mass, MassLoss, MassPerArea, Sett};
use crate::{cloth, mill, yarn};

const FINISH: &str = "finish";

/// What comes of finishing.
#[derive(Clone, Debug, Results)]
struct Finished<N> {
    /// width off the loom
    off_loom_width: Length<N>,
    /// finished width
    width: Length<N>,
    /// ends off the loom
    off_loom_warp_sett: Sett<N>,
    /// mass per area off the loom, as at label regain
    off_loom_mass_per_area: MassPerArea<N>,
    /// finished mass per area
    mass_per_area: MassPerArea<N>,
    /// mass of the woven part
    woven_mass: Mass<N>,
    /// mass of the fringes
    fringe_mass: Mass<N>,
    /// mass of a piece as sold
    piece_mass: Mass<N>,
}

/// Size and mass of the finished piece.
pub(super) fn finish<N: Number>(
    name: &str,
    shop: &Shop<'_, '_, N>,
    loom: &Loom,
    laid: &Laid<N>,
    bench: &mut Bench<N>,
) {
    let label = shop.label_count();
    let loss = loom.finish.map(&mut shop.values.read()).loss;
    let done = laid.setting.finished(&laid.at, label, label, MassLoss::from(loss.v()));
    let finished = Finished {
        off_loom_width: done.off_loom_width,
        width: done.finished_width,
        off_loom_warp_sett: done.off_loom_warp_sett,
        off_loom_mass_per_area: done.off_loom_mass_per_area,
        mass_per_area: done.finished_mass_per_area,
        woven_mass: done.woven_mass,
        fringe_mass: done.fringe_mass,
        piece_mass: Mass::from(done.woven_mass.v() + done.fringe_mass.v()),
    };
    let notes = [
        ("mass_per_area", "at label regain, weft turns included".to_owned()),
        ("piece_mass", format!("'{name}', fringes included, which lose nothing in finishing")),
    ];
    let expect = ["width", "mass_per_area", "piece_mass"];
    bench.show(FINISH, [], expect, notes, |s| finished.show(s));
}

impl Piece<Place> {
    /// Where the yarn went, in clean dry fibre.
    pub(super) fn account<N: Number>(
        &self,
        name: &str,
        shop: &Shop<'_, '_, N>,
        loom: &Loom,
        laid: &Laid<N>,
        made: Count<N>,
        used: Mass<N>,
    ) -> Vec<Used<N>> {
        let mut values = shop.values.read();
        let loss = loom.cone.map(&mut values).loss;
        let coned = mill::mass_after_losses(used, &[loss]);
        let words = "lost in coning";
        let lost = named(name, "lost_in_coning", words, Mass::from(used.v() - coned.v()));
        let thrums = yarn::mass_of_length(shop.dry, laid.thrums);
        let ends = yarn::mass_of_length(shop.dry, laid.weft_wasted);
        let waste = mill::yarn_for_pieces(made, thrums, ends);
        let waste = named(name, "loom_waste", "thrums and weft waste", waste);
        let woven_in = Mass::from(coned.v() - waste.v());
        let woven_in = named(name, "woven_in", "yarn in the pieces before finishing", woven_in);
        // Fringes are neither cropped nor raised, so they are taken to lose nothing.
        let fringe = cloth::fringe_mass(laid.at.ends, self.map(&mut values).fringe, shop.dry);
        let in_cloth = woven_in.v() - made.v() * fringe.v();
        let finishing = in_cloth * loom.finish.map(&mut values).loss.v();
        let finishing =
            named(name, "lost_in_finishing", "lost in finishing", Mass::from(finishing));
        let goods = Mass::from(woven_in.v() - finishing.v());
        let goods = named(name, "fibre", "clean dry fibre in the finished pieces", goods);
        vec![
            Used::new("cone", "yarn waste", name, "lost_in_coning", lost),
            Used::new("loom", "warp and weft waste", name, "loom_waste", waste),
            Used::new(FINISH, "flock and liquor", name, "lost_in_finishing", finishing),
            Used::new(name, "goods", name, "fibre", goods),
        ]
    }
}
