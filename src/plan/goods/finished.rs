//! The finished piece, and where its yarn went.

use super::super::stage::{Bench, named};
use super::woven::{Layout, Piece};
use super::{Loom, Shop, Used};
use crate::number::Number;
use crate::quantity::{Count, Fraction, Length, LinearDensity, Mass, Sett, Shrinkage};
use crate::{cloth, mill, yarn};

const FINISH: &str = "finish";

impl Piece {
    /// Size and mass of the finished piece.
    pub(super) fn finish<N: Number>(
        &self,
        name: &str,
        shop: &Shop<'_, '_, N>,
        loom: &Loom,
        at: &Layout<N>,
        bench: &mut Bench<N>,
    ) {
        let v = shop.values;
        let (s_w, s_l): (Shrinkage<N>, Shrinkage<N>) =
            (v.get(loom.width_shrinkage), v.get(loom.length_shrinkage));
        let off_loom = cloth::off_loom_width(at.set_width, v.get(loom.draw_in));
        let off_loom = named(FINISH, "off_loom_width", "width off the loom", off_loom);
        let width = cloth::size_after_shrinkage(off_loom, s_w);
        let width = bench.expect(FINISH, "width", "finished width", width, "");
        let label: LinearDensity<N> = v.get(shop.yarn.count);
        let ends = Sett::from(at.ends.v() / off_loom.v() / 100.0);
        let ends = named(FINISH, "ends_off_loom", "ends off the loom", ends);
        let pick = Length::from(at.weft_each.v() / at.picks.v());
        let mass = cloth::mass_per_area(
            ends,
            label,
            cloth::crimp_from_take_up(v.get(loom.take_up)),
            v.get(loom.picks),
            label,
            cloth::crimp_found(pick, off_loom),
        );
        let words = "mass per area off the loom, as at label regain";
        let mass = named(FINISH, "loom_mass", words, mass);
        let mass = cloth::finished_mass_per_area(mass, v.get(loom.loss), s_w, s_l);
        let note = "at label regain, weft turns included";
        let mass = bench.expect(FINISH, "mass_per_area", "finished mass per area", mass, note);
        let woven = cloth::mass_of_piece(mass, width, v.get(self.length));
        let woven = named(FINISH, "woven_mass", "mass of the woven part", woven);
        let fringe = cloth::fringe_mass(at.ends, v.get(self.fringe), label);
        let fringe = named(FINISH, "fringe_mass", "mass of the fringes", fringe);
        let piece = Mass::from(woven.v() + fringe.v());
        let note = format!("'{name}', fringes included");
        bench.expect(FINISH, "piece_mass", "mass of a piece as sold", piece, note);
    }

    /// Where the yarn went, in clean dry fibre.
    pub(super) fn account<N: Number>(
        &self,
        name: &str,
        shop: &Shop<'_, '_, N>,
        loom: &Loom,
        at: &Layout<N>,
        made: Count<N>,
        used: Mass<N>,
    ) -> Vec<Used<N>> {
        let v = shop.values;
        let loss: Fraction<N> = v.get(loom.cone_loss);
        let coned = mill::after_chain_of_losses(used, &[loss]);
        let words = "lost in coning";
        let lost = named(name, "lost_in_coning", words, Mass::from(used.v() - coned.v()));
        let thrums = yarn::mass_of_length(shop.dry, at.thrums);
        let ends = yarn::mass_of_length(shop.dry, at.weft_wasted);
        let waste = mill::yarn_for_pieces(made, thrums, ends);
        let waste = named(name, "loom_waste", "thrums and weft waste", waste);
        let woven_in = Mass::from(coned.v() - waste.v());
        let woven_in = named(name, "woven_in", "yarn in the pieces before finishing", woven_in);
        // Fringes are neither scoured down nor cropped.
        let fringe = cloth::fringe_mass(at.ends, v.get(self.fringe), shop.dry);
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
