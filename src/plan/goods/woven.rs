//! Woven pieces: throws, blankets.

use super::super::file::{Draft, PRACTICE, Section, ask};
use super::super::given::Ask;
use super::super::stage::{Bench, beside, named};
use super::finished::finish;
use super::{Loom, Need, Shop, Used};
use crate::cloth::Layout;
use crate::cloth::piece::Setting;
use crate::error::Result;
use crate::number::Number;
use crate::quantity::{Count, Duration, Fraction, Kind, Length, Mass, ReedCount, Sett, print};
use crate::{cloth, mill, yarn};

/// A woven piece.
#[derive(Clone, Debug)]
pub(super) struct Piece {
    width: Ask,
    pub(super) length: Ask,
    pub(super) fringe: Ask,
}

/// The figures of a piece that its yarn and its settings share.
pub(super) struct Laid<N> {
    sett_wanted: Sett<N>,
    pub(super) setting: Setting<N>,
    pub(super) at: Layout<N>,
    /// Weft wasted for each piece.
    pub(super) weft_wasted: Length<N>,
    /// Yarn in a piece, waste and all, and in the thrums.
    each: Length<N>,
    pub(super) thrums: Length<N>,
}

/// The layout with its numbers under the name of the good.
fn with_names<N: Number>(good: &str, at: &Layout<N>) -> Layout<N> {
    Layout {
        reed_width: named(good, "reed_width", "width wanted in the reed", at.reed_width),
        selvedges: None,
        ends: named(good, "ends", "ends", at.ends),
        reed_sett: named(good, "sett", "sett in the reed", at.reed_sett),
        filled_width: named(
            good,
            "set_width",
            "width that the ends fill in the reed",
            at.filled_width,
        ),
        warp_per_piece: named(
            good,
            "warp_each",
            "warp for a piece, fringes included",
            at.warp_per_piece,
        ),
        picks_per_piece: named(good, "picks", "picks in a piece", at.picks_per_piece),
        weft_per_piece: named(good, "weft_each", "weft for a piece", at.weft_per_piece),
    }
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

    fn layout<N: Number>(&self, name: &str, loom: &Loom, shop: &Shop<'_, '_, N>) -> Laid<N> {
        let v = shop.values;
        let ends_per_dent: Count<N> = v.get(loom.ends_per_dent);
        let sett_wanted: Sett<N> = v.get(loom.sett);
        let reed_wanted = cloth::reed_for_sett(sett_wanted, ends_per_dent);
        let setting = Setting {
            width: v.get(self.width),
            length: v.get(self.length),
            fringe: v.get(self.fringe),
            width_shrinkage: v.get(loom.width_shrinkage),
            length_shrinkage: v.get(loom.length_shrinkage),
            draw_in: v.get(loom.draw_in),
            take_up: v.get(loom.take_up),
            reed: ReedCount::from(v.part(&loom.reed, reed_wanted.v())),
            ends_per_dent,
            selvedge: None,
            weft_sett: v.get(loom.picks),
            turn_allowance: v.get(loom.turn),
            weft_waste: v.get(loom.weft_waste),
        };
        let at = with_names(name, &setting.layout());
        let warp_yarn = cloth::warp_yarn(at.ends, at.warp_per_piece);
        let weft_wound = setting.weft_wound(&at);
        let thrums = cloth::warp_yarn(at.ends, v.get(loom.warp_waste));
        Laid {
            sett_wanted,
            setting,
            weft_wasted: Length::from(weft_wound.v() - at.weft_per_piece.v()),
            each: Length::from(warp_yarn.v() + weft_wound.v()),
            thrums,
            at,
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
        let laid = self.layout(name, loom, shop);
        let Laid { at, .. } = &laid;
        let reed_wanted = laid.sett_wanted.value() / v.get::<Count<N>>(loom.ends_per_dent).value();
        let per_dent = v.get::<Count<N>>(loom.ends_per_dent).value();
        let say = bench.say.clone();
        let length = |metres: f64| say.figure(metres, Kind::Length);
        // Across the reed threads are ends.
        let gives =
            |dents: f64| say.figure(dents * per_dent, Kind::Sett).replace("threads", "ends");
        let note = beside(&loom.reed, reed_wanted, |d| say.number(d, Kind::ReedCount), gives);
        bench.set("loom", "reed", "reed", laid.setting.reed, note);
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
        let warp = cloth::warp_length(at.warp_per_piece, made, v.get(loom.warp_waste));
        let note = if made.value() < 0.5 {
            "no piece comes out: this is its waste alone".to_owned()
        } else {
            format!(
                "{} for each of {} pieces",
                length(at.warp_per_piece.value()),
                print::figure(made.value())
            )
        };
        let warp = bench.set("loom", "warp_length", "length of the warp", warp, note);
        let warp_yarn = cloth::warp_yarn(at.ends, warp);
        bench.expect("loom", "warp_yarn", "yarn in the warp", warp_yarn, "");
        bench.set("loom", "picks", "picks in a piece", at.picks_per_piece, "off the loom");
        let weft_yarn = cloth::weft_yarn(at.weft_per_piece, made, v.get(loom.weft_waste));
        let note = format!("{} for each piece, and waste", length(at.weft_per_piece.value()));
        bench.set("loom", "weft_yarn", "weft yarn", weft_yarn, note);
        let total = Count::from(made.v() * at.picks_per_piece.v());
        let time: Duration<N> = mill::loom_time(total, v.get(loom.speed), v.get(loom.efficiency));
        bench.expect("loom", "time", "running time", time, "");
        finish(name, shop, loom, &laid, bench);
        self.account(name, shop, loom, &laid, made, used)
    }
}
