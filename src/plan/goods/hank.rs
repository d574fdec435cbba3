//! Hanks.

use super::super::stage::{Bench, named};
use super::{Good, Need, Needs, Reel, Shop, YarnEnd};
use crate::calculation::{Inputs, Place, Results};
use crate::number::Number;
use crate::quantity::{Count, Length, LinearDensity, Mass, Shrinkage};
use crate::{fibre, yarn};

/// A hank of the yarn, sold by mass.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Hank<N> {
    /// mass of a hank as sold
    #[q("m", 0.02..=1.0, like = "100 g")]
    mass: Mass<N>,
}

/// What to set at the reel, and the hank that comes of it.
#[derive(Clone, Debug, Results)]
struct Reeled<N> {
    /// turns of the reel for a hank
    reel_turns: Count<N>,
    /// length of a hank as reeled
    length: Length<N>,
    /// weight of a hank, in oil
    check_weight: Option<Mass<N>>,
    /// length of a hank once scoured
    finished_length: Length<N>,
    /// mass of a hank as sold
    finished_mass: Mass<N>,
}

impl Good {
    /// Turns of the reel for a hank.
    fn turns<N: Number>(
        &self,
        hank: &Hank<Place>,
        reel: &Reel<Place>,
        shop: &Shop<'_, '_, N>,
    ) -> (Count<N>, Length<N>) {
        let end = self.end(shop);
        let mass = hank.map(&mut shop.values.read()).mass;
        let length = yarn::length_of_mass(mass, end.labelled());
        let length = named(&self.name, "length", "length of a hank as sold", length);
        let reel = reel.map(&mut shop.values.read()).reel_circumference;
        let turns = yarn::reel_turns(length, reel, end.shrinkage);
        (named(&self.name, "turns", "turns of the reel", turns), reel)
    }
    /// The only yarn of the good.
    fn end<N: Number>(&self, shop: &Shop<'_, '_, N>) -> YarnEnd<N> {
        shop.ends[self.uses.yarns().next().unwrap_or(0)]
    }

    pub(super) fn hank_need<N: Number>(
        &self,
        hank: &Hank<Place>,
        reel: &Reel<Place>,
        shop: &Shop<'_, '_, N>,
    ) -> Needs<N> {
        let end = self.end(shop);
        let (turns, reel) = self.turns(hank, reel, shop);
        let length = yarn::hank_length(turns, reel, end.shrinkage);
        let length = named(&self.name, "length_made", "length of a hank once scoured", length);
        let each = yarn::mass_of_length(end.count(), length);
        let each = named(&self.name, "each", "clean dry fibre in a hank", each);
        let yarn = self.uses.yarns().next().unwrap_or(0);
        Needs::one(yarn, Need { each, fixed: Mass::base(N::constant(0.0)) })
    }

    pub(super) fn set_reel<N: Number>(
        &self,
        hank: &Hank<Place>,
        reel: &Reel<Place>,
        machine: &str,
        shop: &Shop<'_, '_, N>,
        oily: &[Option<LinearDensity<N>>],
        bench: &mut Bench<N>,
    ) {
        let end = self.end(shop);
        let (turns, reel) = self.turns(hank, reel, shop);
        let none = Shrinkage::base(N::constant(0.0));
        let length = yarn::hank_length(turns, reel, none);
        let finished_length = yarn::hank_length(turns, reel, end.shrinkage);
        let dry = yarn::mass_of_length(end.count(), finished_length);
        let oily = oily[self.uses.yarns().next().unwrap_or(0)];
        let reeled = Reeled {
            reel_turns: turns,
            length,
            check_weight: oily.map(|count| yarn::mass_of_length(count, length)),
            finished_length,
            finished_mass: fibre::mass_in_state(dry, end.label_state),
        };
        let notes = [
            ("reel_turns", format!("for '{}'", self.name)),
            ("check_weight", "before scouring".to_owned()),
            ("finished_mass", "at label regain".to_owned()),
        ];
        let expect = ["finished_length", "finished_mass"];
        let at = self.at(machine);
        let spot = self.spot(machine, &at);
        bench.show(spot, ["reel_turns", "check_weight"], expect, notes, |s| reeled.show(s));
    }
}
