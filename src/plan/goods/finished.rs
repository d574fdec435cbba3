//! The finished piece, and where its yarn went.

use std::cell::RefCell;

use super::super::stage::{Bench, named};
use super::woven::{Laid, Piece};
use super::{Loom, Shop, Used};
use crate::calculation::Place;
use crate::cloth::article::Names;
use crate::number::Number;
use crate::quantity::{Count, Mass, Typed};
use crate::{cloth, mill, yarn};

const FINISH: &str = "finish";

/// What is to be expected of the finished piece stands on the bench, the rest has its name alone.
struct Noted<'b, N>(RefCell<&'b mut Bench<N>>);

impl<N: Number> Names<N> for Noted<'_, N> {
    fn figure<Q: Typed<N>>(&self, name: &'static str, words: &'static str, figure: Q) -> Q {
        let mut bench = self.0.borrow_mut();
        match name {
            "width" => bench.expect(FINISH, name, words, figure, ""),
            "mass_per_area" => {
                let note = "at label regain, weft turns included";
                bench.expect(FINISH, name, words, figure, note)
            }
            "loom_mass" => {
                named(FINISH, name, "mass per area off the loom, as at label regain", figure)
            }
            _ => named(FINISH, name, words, figure),
        }
    }
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
    let noted = Noted(RefCell::new(bench));
    let finished = laid.setting.finished(&laid.at, label, label, loss, &noted);
    let piece = Mass::from(finished.woven.v() + finished.fringe.v());
    let note = format!("'{name}', fringes included");
    bench.expect(FINISH, "piece_mass", "mass of a piece as sold", piece, note);
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
        // Fringes are neither scoured down nor cropped.
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
