//! The finished piece, and where its yarn went.

use super::super::stage::{Bench, named};
use super::woven::{Laid, Piece};
use super::{Good, Loom, Shop, Taken, Used, Uses};
use crate::calculation::{Place, Results};
use crate::number::Number;
use crate::quantity::{Length, Mass, MassLoss, MassPerArea, Sett};
use crate::{cloth, mill, yarn};

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
    good: &Good,
    shop: &Shop<'_, '_, N>,
    loom: &Loom,
    laid: &Laid<N>,
    bench: &mut Bench<N>,
) {
    let (warp, weft) = good.warp_and_weft();
    let (warp, weft) = (shop.ends[warp].labelled(), shop.ends[weft].labelled());
    let loss = loom.finishing(shop.values).loss;
    let done = laid.setting.finished(&laid.at, warp, weft, MassLoss::from(loss.v()));
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
        (
            "piece_mass",
            format!("'{}', fringes included, which lose nothing in finishing", good.name),
        ),
    ];
    let expect = ["width", "mass_per_area", "piece_mass"];
    let at = good.at(&loom.names[2]);
    bench.show(good.spot(&loom.names[2], &at), [], expect, notes, |s| finished.show(s));
}

impl Good {
    /// The yarns of warp and weft.
    fn warp_and_weft(&self) -> (usize, usize) {
        match self.uses {
            Uses::One(yarn) => (yarn, yarn),
            Uses::Two { warp, weft } => (warp, weft),
        }
    }
}

/// One of the yarns of a piece, and what of it is wasted at the loom.
struct Spun<N> {
    yarn: usize,
    used: Mass<N>,
    once: Mass<N>,
    each: Mass<N>,
    fringe: Mass<N>,
    role: &'static str,
}

impl Piece<Place> {
    /// Where the yarn went, in clean dry fibre.
    pub(super) fn account<N: Number>(
        &self,
        good: &Good,
        shop: &Shop<'_, '_, N>,
        loom: &Loom,
        laid: &Laid<N>,
        taken: &Taken<N>,
    ) -> Vec<Used<N>> {
        let (name, made) = (good.name.as_str(), taken.made);
        let loss = loom.cone_loss(shop.values);
        let (warp, weft) = good.warp_and_weft();
        let dry = |yarn: usize| shop.ends[yarn].count();
        // Fringes are neither cropped nor raised, so they are taken to lose nothing.
        let fringe = self.map(&mut shop.values.read()).fringe;
        let fringe = cloth::fringe_mass(laid.at.ends, fringe, dry(warp));
        let finishing = loom.finishing(shop.values).loss;
        let thrums = yarn::mass_of_length(dry(warp), laid.thrums);
        let ends = yarn::mass_of_length(dry(weft), laid.weft_wasted);
        let nothing = Mass::base(N::constant(0.0));
        let mut all = Vec::new();
        let part =
            |yarn, used, once, each, fringe, role| Spun { yarn, used, once, each, fringe, role };
        let parts = match taken.second {
            None => vec![part(warp, taken.first, thrums, ends, fringe, "")],
            Some(second) => vec![
                part(warp, taken.first, thrums, nothing, fringe, "_warp"),
                part(weft, second, nothing, ends, nothing, "_weft"),
            ],
        };
        for Spun { yarn, used, once, each, fringe, role } in parts {
            let key = |key: &str| format!("{key}{role}");
            let coned = mill::mass_after_losses(used, &[loss]);
            let lost = Mass::from(used.v() - coned.v());
            let lost = named(name, &key("lost_in_coning"), "lost in coning", lost);
            let waste = mill::yarn_for_pieces(made, once, each);
            let waste = named(name, &key("loom_waste"), "thrums and weft waste", waste);
            let woven_in = Mass::from(coned.v() - waste.v());
            let words = "yarn in the pieces before finishing";
            let woven_in = named(name, &key("woven_in"), words, woven_in);
            let in_cloth = woven_in.v() - made.v() * fringe.v();
            let lost_later = Mass::from(in_cloth * finishing.v());
            let words = "lost in finishing";
            let lost_later = named(name, &key("lost_in_finishing"), words, lost_later);
            let goods = Mass::from(woven_in.v() - lost_later.v());
            let words = "clean dry fibre in the finished pieces";
            let goods = named(name, &key("fibre"), words, goods);
            let [cone, on_loom, finish] = &loom.names;
            let used = |stage: &str, to: &'static str, key: String, fibre: Mass<N>| Used {
                stage: stage.to_owned(),
                to,
                key: format!("{name}.{key}"),
                fibre,
                yarn,
            };
            all.push(used(cone, "yarn waste", key("lost_in_coning"), lost));
            all.push(used(on_loom, "warp and weft waste", key("loom_waste"), waste));
            all.push(used(finish, "flock and liquor", key("lost_in_finishing"), lost_later));
            all.push(used(name, "goods", key("fibre"), goods));
        }
        all
    }
}
