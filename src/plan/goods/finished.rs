//! The finished piece, and where its yarn went.

use super::super::stage::{Bench, named};
use super::woven::{Laid, Piece};
use super::{Loom, Shop, Used};
use crate::number::Number;
use crate::quantity::{Count, Fraction, LinearDensity, Mass, MassLoss};
use crate::{cloth, mill, yarn};

const FINISH: &str = "finish";

/// Size and mass of the finished piece.
pub(super) fn finish<N: Number>(
    name: &str,
    shop: &Shop<'_, '_, N>,
    loom: &Loom,
    laid: &Laid<N>,
    bench: &mut Bench<N>,
) {
    let v = shop.values;
    let label: LinearDensity<N> = v.get(shop.yarn.count);
    let loss: Fraction<N> = v.get(loom.loss);
    let done = laid.setting.finished(&laid.at, label, label, MassLoss::from(loss.v()));
    named(FINISH, "off_loom_width", "width off the loom", done.off_loom_width);
    bench.expect(FINISH, "width", "finished width", done.finished_width, "");
    named(FINISH, "ends_off_loom", "ends off the loom", done.off_loom_warp_sett);
    let words = "mass per area off the loom, as at label regain";
    named(FINISH, "loom_mass", words, done.off_loom_mass_per_area);
    let note = "at label regain, weft turns included";
    let words = "finished mass per area";
    bench.expect(FINISH, "mass_per_area", words, done.finished_mass_per_area, note);
    let woven = named(FINISH, "woven_mass", "mass of the woven part", done.woven_mass);
    let fringe = named(FINISH, "fringe_mass", "mass of the fringes", done.fringe_mass);
    let piece = Mass::from(woven.v() + fringe.v());
    let note = format!("'{name}', fringes included");
    bench.expect(FINISH, "piece_mass", "mass of a piece as sold", piece, note);
}

impl Piece {
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
        let v = shop.values;
        let loss: Fraction<N> = v.get(loom.cone_loss);
        let coned = mill::after_chain_of_losses(used, &[loss]);
        let words = "lost in coning";
        let lost = named(name, "lost_in_coning", words, Mass::from(used.v() - coned.v()));
        let thrums = yarn::mass_of_length(shop.dry, laid.thrums);
        let ends = yarn::mass_of_length(shop.dry, laid.weft_wasted);
        let waste = mill::yarn_for_pieces(made, thrums, ends);
        let waste = named(name, "loom_waste", "thrums and weft waste", waste);
        let woven_in = Mass::from(coned.v() - waste.v());
        let woven_in = named(name, "woven_in", "yarn in the pieces before finishing", woven_in);
        // Fringes are neither scoured down nor cropped.
        let fringe = cloth::fringe_mass(laid.at.ends, v.get(self.fringe), shop.dry);
        let in_cloth = woven_in.v() - made.v() * fringe.v();
        let finishing = in_cloth * v.get::<Fraction<N>>(loom.loss).v();
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
