//! Woven pieces: throws, blankets.

use super::super::stage::{Bench, beside, named};
use super::finished::finish;
use super::loom::{Finish, LoomSettings};
use super::{Good, Loom, Need, Needs, Shop, Taken, Used, Uses};
use crate::calculation::{Inputs, Place, Results};
use crate::cloth::Layout;
use crate::cloth::piece::Setting;
use crate::mill::run::loom::efficiency;
use crate::number::Number;
use crate::quantity::{Count, Duration, Kind, Length, Mass, ReedCount, print};
use crate::{cloth, mill, yarn};

/// A woven piece.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Piece<N> {
    /// finished width
    #[q("b", 0.2..=3.0, like = "1.40 m")]
    width: Length<N>,
    /// finished length of the woven part
    #[q("L", 0.3..=4.0, like = "1.80 m")]
    pub(super) length: Length<N>,
    /// fringe at each end
    #[q("q", 0.0..=0.3, or = 0.0, like = "0.12 m")]
    pub(super) fringe: Length<N>,
}

/// What to set at the loom, and the yarn and time that it takes.
#[derive(Clone, Debug, Results)]
struct AtLoom<N> {
    /// reed
    reed: ReedCount<N>,
    /// width wanted in the reed
    reed_width: Length<N>,
    /// ends
    ends: Count<N>,
    /// length of the warp
    warp_length: Length<N>,
    /// yarn in the warp
    warp_yarn_length: Length<N>,
    /// picks in a piece
    picks_per_piece: Count<N>,
    /// weft yarn
    weft_yarn_length: Length<N>,
    /// time on the loom, stops included
    time: Option<Duration<N>>,
}

/// The values of a piece that its yarn and its settings share.
pub(super) struct Laid<N> {
    pub(super) set: LoomSettings<N>,
    pub(super) setting: Setting<N>,
    pub(super) at: Layout<N>,
    /// Weft wasted for each piece.
    pub(super) weft_wasted: Length<N>,
    /// Warp in a piece, weft in it with its waste, and the thrums.
    warp: Length<N>,
    weft: Length<N>,
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

impl Piece<Place> {
    fn layout<N: Number>(&self, name: &str, loom: &Loom, shop: &Shop<'_, '_, N>) -> Laid<N> {
        let mut values = shop.values.read();
        let set = loom.set.map(&mut values);
        let weft = loom.weft.map(&mut values);
        let Finish { width_shrinkage, length_shrinkage, .. } = loom.finishing(shop.values);
        let Piece { width, length, fringe } = self.map(&mut values);
        let reed_wanted = cloth::reed_for_sett(set.wanted_reed_sett, set.ends_per_dent);
        let setting = Setting {
            width,
            length,
            fringe,
            width_shrinkage,
            length_shrinkage,
            draw_in: set.draw_in,
            take_up: set.take_up,
            reed: loom.reeds.choose(reed_wanted),
            ends_per_dent: set.ends_per_dent,
            selvedge: None,
            weft_sett: set.weft_sett,
            turn_allowance: weft.turn_allowance,
            weft_waste: weft.weft_waste,
        };
        let at = with_names(name, &setting.layout());
        let warp_yarn = cloth::warp_yarn_length(at.ends, at.warp_per_piece);
        let weft_wound = setting.weft_wound(&at);
        let thrums = cloth::warp_yarn_length(at.ends, set.loom_waste);
        Laid {
            set,
            setting,
            weft_wasted: Length::from(weft_wound.v() - at.weft_per_piece.v()),
            warp: warp_yarn,
            weft: weft_wound,
            thrums,
            at,
        }
    }

    pub(super) fn need<N: Number>(
        &self,
        good: &Good,
        loom: &Loom,
        shop: &Shop<'_, '_, N>,
    ) -> Needs<N> {
        let name = good.name.as_str();
        let laid = self.layout(name, loom, shop);
        let loss = loom.cone_loss(shop.values);
        let mass = |yarn: usize, length: Length<N>, key, words| {
            let mass = yarn::mass_of_length(shop.ends[yarn].count(), length);
            named(name, key, words, mill::mass_before_losses(mass, &[loss]))
        };
        let once = "scoured yarn for the thrums, before coning";
        match good.uses {
            Uses::One(yarn) => {
                let both = Length::from(laid.warp.v() + laid.weft.v());
                let words = "scoured yarn for a piece, before coning, as clean dry fibre";
                let each = mass(yarn, both, "each", words);
                Needs::one(yarn, Need { each, fixed: mass(yarn, laid.thrums, "once", once) })
            }
            Uses::Two { warp, weft } => {
                let words = "warp for a piece, before coning, as clean dry fibre";
                let of_warp = Need {
                    each: mass(warp, laid.warp, "warp_yarn_each", words),
                    fixed: mass(warp, laid.thrums, "once", once),
                };
                let words = "weft for a piece, before coning, as clean dry fibre";
                let of_weft = Need {
                    each: mass(weft, laid.weft, "weft_yarn_each", words),
                    fixed: Mass::base(N::constant(0.0)),
                };
                Needs::two((warp, of_warp), (weft, of_weft))
            }
        }
    }

    /// What to set at the loom, and where the yarn goes.
    pub(super) fn set<N: Number>(
        &self,
        good: &Good,
        loom: &Loom,
        shop: &Shop<'_, '_, N>,
        taken: &Taken<N>,
        bench: &mut Bench<N>,
    ) -> Vec<Used<N>> {
        let (name, made) = (good.name.as_str(), taken.made);
        let laid = self.layout(name, loom, shop);
        let Laid { at, set, .. } = &laid;
        let per_dent = set.ends_per_dent.value();
        let reed_wanted = set.wanted_reed_sett.value() / per_dent;
        let say = bench.say.clone();
        let length = |setting: &str, metres: f64| say.length(setting, metres);
        // Across the reed threads are ends.
        let gives =
            |dents: f64| say.figure(dents * per_dent, Kind::Sett).replace("threads", "ends");
        let warp_length = cloth::warp_length(at.warp_per_piece, made, set.loom_waste);
        let machine = loom.machine.as_ref().map(|machine| machine.map(&mut shop.values.read()));
        let total = Count::from(made.v() * at.picks_per_piece.v());
        let at_loom = AtLoom {
            reed: laid.setting.reed,
            reed_width: at.reed_width,
            ends: at.ends,
            warp_length,
            warp_yarn_length: cloth::warp_yarn_length(at.ends, warp_length),
            picks_per_piece: at.picks_per_piece,
            weft_yarn_length: cloth::weft_yarn_length(
                at.weft_per_piece,
                made,
                laid.setting.weft_waste,
            ),
            time: machine
                .as_ref()
                .map(|machine| mill::loom_time(total, machine.loom_speed, efficiency(machine))),
        };
        let pieces = if made.value() < 0.5 {
            "no piece comes out: this is its waste alone".to_owned()
        } else {
            let each = length("warp_length", at.warp_per_piece.value());
            let made = print::figure(made.value());
            format!("{each} for each of {made} pieces")
        };
        let widest = loom.size.map(&mut shop.values.read()).loom_width;
        let wide = widest.map_or_else(String::new, |widest| {
            format!("loom takes {}", length("reed_width", widest.value()))
        });
        let notes = [
            ("reed", beside(&loom.reeds, reed_wanted, |d| say.number(d, Kind::ReedCount), gives)),
            ("reed_width", wide),
            ("ends", format!("{} in a dent", print::figure(per_dent))),
            ("warp_length", pieces),
            ("picks_per_piece", "off the loom".to_owned()),
            (
                "weft_yarn_length",
                format!(
                    "{} per piece, plus waste",
                    length("weft_yarn_length", at.weft_per_piece.value())
                ),
            ),
        ];
        let main =
            ["reed", "reed_width", "ends", "warp_length", "picks_per_piece", "weft_yarn_length"];
        let expect = ["warp_yarn_length", "time"];
        let at = good.at(&loom.names[1]);
        bench.show(good.spot(&loom.names[1], &at), main, expect, notes, |s| at_loom.show(s));
        finish(good, shop, loom, &laid, bench);
        self.account(good, shop, loom, &laid, taken)
    }
}
