//! Woven pieces: throws, blankets.

use super::super::file::{Draft, PRACTICE, Section, ask};
use super::super::given::Ask;
use super::super::stage::{Bench, beside, named};
use super::{Loom, Need, Shop, Used};
use crate::error::Result;
use crate::number::Number;
use crate::quantity::{
    Count, DrawIn, Duration, Fraction, Kind, Length, Mass, ReedCount, Sett, Shrinkage, TakeUp,
    print,
};
use crate::{cloth, mill, yarn};

/// A woven piece.
#[derive(Clone, Debug)]
pub(super) struct Piece {
    width: Ask,
    pub(super) length: Ask,
    pub(super) fringe: Ask,
}

/// The figures of a piece that its yarn and its settings share.
pub(super) struct Layout<N> {
    reed: ReedCount<N>,
    sett_wanted: Sett<N>,
    reed_width: Length<N>,
    pub(super) ends: Count<N>,
    pub(super) set_width: Length<N>,
    warp_each: Length<N>,
    pub(super) picks: Count<N>,
    pub(super) weft_each: Length<N>,
    /// Weft wasted for each piece.
    pub(super) weft_wasted: Length<N>,
    /// Yarn in a piece, waste and all, and in the thrums.
    each: Length<N>,
    pub(super) thrums: Length<N>,
}

impl Piece {
    pub(super) fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let size = |key, symbol, meaning, usual, example| {
            ask(key, symbol, meaning, Kind::Length, usual, example)
        };
        let width = size("width", "b", "finished width", (0.2, 3.0, PRACTICE), "\"1.40 m\"");
        let length = size(
            "length",
            "L",
            "finished length of the woven part",
            (0.3, 4.0, PRACTICE),
            "\"1.80 m\"",
        );
        let fringe = size("fringe", "q", "fringe at each end", (0.0, 0.3, PRACTICE), "\"0.12 m\"");
        Ok(Piece {
            width: section.ask(draft, &width)?,
            length: section.ask(draft, &length)?,
            fringe: section.ask(draft, &fringe.or(0.0))?,
        })
    }

    fn layout<N: Number>(&self, name: &str, loom: &Loom, shop: &Shop<'_, '_, N>) -> Layout<N> {
        let v = shop.values;
        let draw_in: DrawIn<N> = v.get(loom.draw_in);
        let (width_shrinkage, length_shrinkage): (Shrinkage<N>, Shrinkage<N>) =
            (v.get(loom.width_shrinkage), v.get(loom.length_shrinkage));
        let per_dent: Count<N> = v.get(loom.ends_per_dent);
        let sett_wanted: Sett<N> = v.get(loom.sett);
        let reed_wanted = cloth::reed_for_sett(sett_wanted, per_dent);
        let reed = ReedCount::from(v.part(&loom.reed, reed_wanted.v()));
        let reed_width = cloth::reed_width(v.get(self.width), width_shrinkage, draw_in);
        let reed_width = named(name, "reed_width", "width wanted in the reed", reed_width);
        let ends = cloth::whole_ends(reed, per_dent, reed_width);
        let ends = named(name, "ends", "ends", ends);
        let sett = named(name, "sett", "sett in the reed", cloth::sett_in_reed(reed, per_dent));
        let set_width = Length::from(ends.v() / sett.v() / 100.0);
        let set_width = named(name, "set_width", "width that the ends fill in the reed", set_width);
        let take_up: TakeUp<N> = v.get(loom.take_up);
        let warp_each = cloth::warp_for_piece(
            v.get(self.length),
            length_shrinkage,
            take_up,
            v.get(self.fringe),
        );
        let warp_each = named(name, "warp_each", "warp for a piece, fringes included", warp_each);
        let picks = cloth::picks_in_piece(v.get(self.length), length_shrinkage, v.get(loom.picks));
        let picks = named(name, "picks", "picks in a piece", picks);
        let weft_each = cloth::weft_for_piece(picks, set_width, v.get(loom.turn));
        let weft_each = named(name, "weft_each", "weft for a piece", weft_each);
        let one = Count::base(N::constant(1.0));
        let weft_wound = cloth::weft_yarn(weft_each, one, v.get(loom.weft_waste));
        let warp_yarn = cloth::warp_yarn(ends, warp_each);
        let thrums = cloth::warp_yarn(ends, v.get(loom.warp_waste));
        Layout {
            reed,
            sett_wanted,
            reed_width,
            ends,
            set_width,
            warp_each,
            picks,
            weft_each,
            weft_wasted: Length::from(weft_wound.v() - weft_each.v()),
            each: Length::from(warp_yarn.v() + weft_wound.v()),
            thrums,
        }
    }

    pub(super) fn need<N: Number>(&self, name: &str, shop: &Shop<'_, '_, N>) -> Need<N> {
        let Some(loom) = &shop.machines.loom else {
            // A lot with woven goods and no loom is refused when its file is read.
            let none = Mass::base(N::constant(f64::NAN));
            return Need { each: none, fixed: none };
        };
        let layout = self.layout(name, loom, shop);
        let loss: Fraction<N> = shop.values.get(loom.cone_loss);
        let mass = |length: Length<N>, key, words| {
            let mass = yarn::mass_of_length(shop.dry, length);
            named(name, key, words, mill::before_chain_of_losses(mass, &[loss]))
        };
        Need {
            each: mass(
                layout.each,
                "each",
                "scoured yarn for a piece, before coning, as clean dry fibre",
            ),
            fixed: mass(layout.thrums, "once", "scoured yarn for the thrums, before coning"),
        }
    }

    /// What to set at the loom, and where the yarn goes.
    pub(super) fn set<N: Number>(
        &self,
        name: &str,
        shop: &Shop<'_, '_, N>,
        made: Count<N>,
        used: Mass<N>,
        bench: &mut Bench<N>,
    ) -> Vec<Used<N>> {
        let Some(loom) = &shop.machines.loom else { return Vec::new() };
        let v = shop.values;
        let at = self.layout(name, loom, shop);
        let reed_wanted = at.sett_wanted.value() / v.get::<Count<N>>(loom.ends_per_dent).value();
        let per_dent = v.get::<Count<N>>(loom.ends_per_dent).value();
        let say = bench.say.clone();
        let length = |metres: f64| say.figure(metres, Kind::Length);
        // Across the reed threads are ends.
        let gives =
            |dents: f64| say.figure(dents * per_dent, Kind::Sett).replace("threads", "ends");
        let note = beside(&loom.reed, reed_wanted, |d| say.number(d, Kind::ReedCount), gives);
        bench.set("loom", "reed", "reed", at.reed, note);
        let widest: Length<N> = v.get(loom.widest);
        let note = format!("loom takes {}", length(widest.value()));
        bench.set("loom", "reed_width", "width wanted in the reed", at.reed_width, note);
        bench.set(
            "loom",
            "ends",
            "ends",
            at.ends,
            format!("{} in a dent", print::figure(per_dent)),
        );
        let warp = cloth::warp_length(at.warp_each, made, v.get(loom.warp_waste));
        let note = if made.value() < 0.5 {
            "no piece comes out: this is its waste alone".to_owned()
        } else {
            format!(
                "{} for each of {} pieces",
                length(at.warp_each.value()),
                print::figure(made.value())
            )
        };
        let warp = bench.set("loom", "warp_length", "length of the warp", warp, note);
        let warp_yarn = cloth::warp_yarn(at.ends, warp);
        bench.expect("loom", "warp_yarn", "yarn in the warp", warp_yarn, "");
        bench.set("loom", "picks", "picks in a piece", at.picks, "off the loom");
        let weft_yarn = cloth::weft_yarn(at.weft_each, made, v.get(loom.weft_waste));
        let note = format!("{} for each piece, and waste", length(at.weft_each.value()));
        bench.set("loom", "weft_yarn", "weft yarn", weft_yarn, note);
        let total = Count::from(made.v() * at.picks.v());
        let time: Duration<N> = mill::loom_time(total, v.get(loom.speed), v.get(loom.efficiency));
        bench.expect("loom", "time", "running time", time, "");
        self.finish(name, shop, loom, &at, bench);
        self.account(name, shop, loom, &at, made, used)
    }
}
