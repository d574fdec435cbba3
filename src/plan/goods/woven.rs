//! Woven pieces: throws, blankets.

use super::super::file::{Draft, PRACTICE, Section, ask};
use super::super::given::{Ask, Owned};
use super::super::stage::{Bench, beside, named};
use super::{Need, Shop};
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::{
    Count, DrawIn, Duration, Fraction, Kind, Length, LinearDensity, Mass, ReedCount, Sett,
    Shrinkage, TakeUp, print,
};
use crate::{cloth, mill, yarn};

/// Coning, the loom and finishing.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Loom {
    cone_loss: Ask,
    reed: Owned,
    ends_per_dent: Ask,
    sett: Ask,
    picks: Ask,
    widest: Ask,
    draw_in: Ask,
    take_up: Ask,
    warp_waste: Ask,
    turn: Ask,
    weft_waste: Ask,
    speed: Ask,
    efficiency: Ask,
    loss: Ask,
    width_shrinkage: Ask,
    length_shrinkage: Ask,
}

/// What to beware of at the loom.
pub(in crate::plan) const CAUTION: &str =
    "A flying shuttle and the beat-up injure: guards on, stop the loom before you reach in.";

impl Loom {
    pub(in crate::plan) fn read(
        cone: &Section<'_>,
        loom: &Section<'_>,
        finish: &Section<'_>,
        draft: &mut Draft,
    ) -> Result<Self> {
        let q = ask;
        let cone_loss =
            q("loss", "w", "yarn lost in coning", Kind::Fraction, (0.0, 0.03, PRACTICE), "\"1 %\"");
        let per_dent =
            q("ends_per_dent", "e", "ends in a dent", Kind::Count, (1.0, 4.0, PRACTICE), "2");
        let sett = q(
            "sett",
            "n",
            "sett wanted in the reed",
            Kind::Sett,
            (1.0, 30.0, PRACTICE),
            "\"4.8 ends/cm\"",
        );
        let picks = q(
            "picks",
            "x",
            "picks off the loom",
            Kind::Sett,
            (1.0, 30.0, PRACTICE),
            "\"4.6 picks/cm\"",
        );
        let widest = q(
            "widest",
            "B_m",
            "widest reed space of the loom",
            Kind::Length,
            (0.5, 4.0, PRACTICE),
            "\"1.90 m\"",
        );
        let draw_in = q(
            "draw_in",
            "d",
            "draw-in, reed to off the loom",
            Kind::DrawIn,
            (0.0, 0.15, PRACTICE),
            "\"6 %\"",
        );
        let take_up = q(
            "take_up",
            "u",
            "take-up of the warp, on yarn length",
            Kind::TakeUp,
            (0.02, 0.15, PRACTICE),
            "\"8 %\"",
        );
        let warp_waste = q(
            "warp_waste",
            "a",
            "waste of a warp, in all",
            Kind::Length,
            (0.3, 4.0, PRACTICE),
            "\"1.0 m\"",
        );
        let turn = q(
            "turn",
            "b",
            "weft allowance for the turn, a pick",
            Kind::Length,
            (0.0, 0.06, PRACTICE),
            "\"0.02 m\"",
        );
        let weft_waste = q(
            "weft_waste",
            "w",
            "waste of weft, on what is woven",
            Kind::Fraction,
            (0.0, 0.08, PRACTICE),
            "\"3 %\"",
        );
        let speed = q(
            "speed",
            "r",
            "picks in a minute",
            Kind::Frequency,
            (30.0, 300.0, PRACTICE),
            "\"60 picks/min\"",
        );
        let efficiency =
            q("efficiency", "η", "efficiency", Kind::Fraction, (0.4, 0.95, PRACTICE), "\"75 %\"");
        let loss = q(
            "loss",
            "m",
            "fibre lost in finishing",
            Kind::Fraction,
            (0.0, 0.08, PRACTICE),
            "\"2 %\"",
        );
        let shrink = |key, symbol, meaning| {
            q(key, symbol, meaning, Kind::Shrinkage, (-0.02, 0.4, "pieces in print"), "\"12 %\"")
        };
        let width =
            shrink("width_shrinkage", "s_w", "shrinkage in width, off the loom to finished");
        let length =
            shrink("length_shrinkage", "s_l", "shrinkage in length, off the loom to finished");
        Ok(Loom {
            cone_loss: cone.ask(draft, &cone_loss.or(0.0))?,
            reed: loom.owned(
                draft,
                "reeds",
                "reed",
                Kind::ReedCount,
                "[\"20 dents/10 cm\", \"24 dents/10 cm\"]",
            )?,
            ends_per_dent: loom.ask(draft, &per_dent)?,
            sett: loom.ask(draft, &sett)?,
            picks: loom.ask(draft, &picks)?,
            widest: loom.ask(draft, &widest)?,
            draw_in: loom.ask(draft, &draw_in)?,
            take_up: loom.ask(draft, &take_up)?,
            warp_waste: loom.ask(draft, &warp_waste)?,
            turn: loom.ask(draft, &turn.or(0.0))?,
            weft_waste: loom.ask(draft, &weft_waste.or(0.0))?,
            speed: loom.ask(draft, &speed)?,
            efficiency: loom.ask(draft, &efficiency.positive())?,
            loss: finish.ask(draft, &loss)?,
            width_shrinkage: finish.ask(draft, &width)?,
            length_shrinkage: finish.ask(draft, &length)?,
        })
    }
}

/// A woven piece.
#[derive(Clone, Debug)]
pub(super) struct Piece {
    width: Ask,
    length: Ask,
    fringe: Ask,
}

/// The figures of a piece that its yarn and its settings share.
struct Layout<N> {
    reed: ReedCount<N>,
    sett_wanted: Sett<N>,
    reed_width: Length<N>,
    ends: Count<N>,
    set_width: Length<N>,
    warp_each: Length<N>,
    picks: Count<N>,
    weft_each: Length<N>,
    /// Yarn length in a piece and once, in metres.
    each: V<N>,
    once: V<N>,
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
            each: warp_yarn.v() + weft_wound.v(),
            once: thrums.v(),
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
        let mass = |length: V<N>, key, words| {
            let mass = yarn::mass_of_length(shop.dry, Length::from(length));
            named(name, key, words, mill::before_chain_of_losses(mass, &[loss]))
        };
        Need {
            each: mass(
                layout.each,
                "each",
                "scoured yarn for a piece, before coning, as clean dry fibre",
            ),
            fixed: mass(layout.once, "once", "scoured yarn for the thrums, before coning"),
        }
    }

    pub(super) fn set<N: Number>(
        &self,
        name: &str,
        shop: &Shop<'_, '_, N>,
        made: Count<N>,
        bench: &mut Bench<N>,
    ) -> Vec<(String, String, f64)> {
        let Some(loom) = &shop.machines.loom else { return Vec::new() };
        let v = shop.values;
        let at = self.layout(name, loom, shop);
        let reed_wanted = at.sett_wanted.value() / v.get::<Count<N>>(loom.ends_per_dent).value();
        let per_dent = v.get::<Count<N>>(loom.ends_per_dent).value();
        let gives = |dents: f64| format!("{} ends/cm", print::figure(dents * per_dent / 10.0));
        let shown = Owned {
            parts: loom.reed.parts.iter().map(|p| p * 10.0).collect(),
            ..loom.reed.clone()
        };
        let note = beside(&shown, reed_wanted * 10.0, gives);
        let loom_name = "loom";
        bench.set(loom_name, "reed", "reed", at.reed, note);
        let widest: Length<N> = v.get(loom.widest);
        let note = format!("loom takes {}", print::with_unit(widest.value(), "m"));
        bench.set(loom_name, "reed_width", "width wanted in the reed", at.reed_width, note);
        bench.set(
            loom_name,
            "ends",
            "ends",
            at.ends,
            format!("{} in a dent", print::figure(per_dent)),
        );
        let warp = cloth::warp_length(at.warp_each, made, v.get(loom.warp_waste));
        let note = format!(
            "{} for each of {} pieces",
            print::with_unit(at.warp_each.value(), "m"),
            print::figure(made.value())
        );
        let warp = bench.set(loom_name, "warp_length", "length of the warp", warp, note);
        let warp_yarn = cloth::warp_yarn(at.ends, warp);
        let warp_yarn = bench.expect(loom_name, "warp_yarn", "yarn in the warp", warp_yarn, "");
        bench.set(loom_name, "picks", "picks in a piece", at.picks, "off the loom");
        let weft_yarn = cloth::weft_yarn(at.weft_each, made, v.get(loom.weft_waste));
        let note =
            format!("{} for each piece, and waste", print::with_unit(at.weft_each.value(), "m"));
        let weft_yarn = bench.set(loom_name, "weft_yarn", "weft yarn", weft_yarn, note);
        let total = Count::from(made.v() * at.picks.v());
        let time: Duration<N> = mill::loom_time(total, v.get(loom.speed), v.get(loom.efficiency));
        bench.expect(loom_name, "time", "running time", time, "");
        self.finished(name, shop, loom, &at, bench, made, (warp_yarn, weft_yarn))
    }

    /// The finished piece, and where the yarn went.
    fn finished<N: Number>(
        &self,
        name: &str,
        shop: &Shop<'_, '_, N>,
        loom: &Loom,
        at: &Layout<N>,
        bench: &mut Bench<N>,
        made: Count<N>,
        (warp_yarn, weft_yarn): (Length<N>, Length<N>),
    ) -> Vec<(String, String, f64)> {
        let v = shop.values;
        let finish = "finish";
        let (s_w, s_l): (Shrinkage<N>, Shrinkage<N>) =
            (v.get(loom.width_shrinkage), v.get(loom.length_shrinkage));
        let off_loom = cloth::off_loom_width(at.set_width, v.get(loom.draw_in));
        let off_loom = named(finish, "off_loom_width", "width off the loom", off_loom);
        let width = cloth::size_after_shrinkage(off_loom, s_w);
        let width = bench.expect(finish, "width", "finished width", width, "");
        let label: LinearDensity<N> = v.get(shop.yarn.count);
        let ends = Sett::from(at.ends.v() / off_loom.v() / 100.0);
        let ends = named(finish, "ends_off_loom", "ends off the loom", ends);
        let pick: Length<N> = Length::from(at.weft_each.v() / at.picks.v());
        let mass = cloth::mass_per_area(
            ends,
            label,
            cloth::crimp_from_take_up(v.get(loom.take_up)),
            v.get(loom.picks),
            label,
            cloth::crimp_found(pick, off_loom),
        );
        let mass =
            named(finish, "loom_mass", "mass per area off the loom, as at label regain", mass);
        let mass = cloth::finished_mass_per_area(mass, v.get(loom.loss), s_w, s_l);
        let mass = bench.expect(
            finish,
            "mass_per_area",
            "finished mass per area",
            mass,
            "at label regain, weft turns included",
        );
        let woven = cloth::mass_of_piece(mass, width, v.get(self.length));
        let woven = named(finish, "woven_mass", "mass of the woven part", woven);
        let fringe = cloth::fringe_mass(at.ends, v.get(self.fringe), label);
        let fringe = named(finish, "fringe_mass", "mass of the fringes", fringe);
        let piece = Mass::from(woven.v() + fringe.v());
        bench.expect(
            finish,
            "piece_mass",
            "mass of a piece as sold",
            piece,
            format!("'{name}', fringes included"),
        );

        // The account, in clean dry fibre.
        let fibre = |length: Length<N>| yarn::mass_of_length(shop.dry, length).value();
        let wound = fibre(warp_yarn) + fibre(weft_yarn);
        let loss = v.get::<Fraction<N>>(loom.cone_loss).value();
        let n = made.value();
        let weft = at.weft_each.value() * n;
        let waste = if n > 0.0 {
            fibre(Length::base(N::constant(at.once.value()))) + fibre(weft_yarn)
                - fibre(Length::base(N::constant(weft)))
        } else {
            0.0
        };
        let fringes = at.ends.value() * 2.0 * v.get::<Length<N>>(self.fringe).value() * n;
        let fringes = fibre(Length::base(N::constant(fringes)));
        let in_pieces = if n > 0.0 { wound - waste } else { 0.0 };
        let finishing = (in_pieces - fringes) * v.get::<Fraction<N>>(loom.loss).value();
        let coned = if n > 0.0 { wound / (1.0 - loss) * loss } else { 0.0 };
        vec![
            ("cone".to_owned(), "yarn waste".to_owned(), coned),
            ("loom".to_owned(), "warp and weft waste".to_owned(), waste),
            (finish.to_owned(), "flock and liquor".to_owned(), finishing),
            (name.to_owned(), "goods".to_owned(), in_pieces - finishing),
        ]
    }
}
