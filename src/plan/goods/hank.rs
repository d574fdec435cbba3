//! Hanks.

use super::super::stage::{Bench, named};
use super::{Need, Shop};
use crate::calculation::{Inputs, Place, Results};
use crate::number::{Number, V};
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
    check_weight: Mass<N>,
    /// length of a hank once scoured
    finished_length: Length<N>,
    /// mass of a hank as sold
    finished_mass: Mass<N>,
}

impl Hank<Place> {
    fn turns<N: Number>(&self, name: &str, shop: &Shop<'_, '_, N>) -> (Count<N>, Length<N>) {
        let mass = self.map(&mut shop.values.read()).mass;
        let length = yarn::length_of_mass(mass, shop.label_count());
        let length = named(name, "length", "length of a hank as sold", length);
        let reel = shop.reel();
        let turns = yarn::reel_turns(length, reel, shop.hank_shrinkage);
        (named(name, "turns", "turns of the reel", turns), reel)
    }

    pub(super) fn need<N: Number>(&self, name: &str, shop: &Shop<'_, '_, N>) -> Need<N> {
        let (turns, reel) = self.turns(name, shop);
        let length = yarn::hank_length(turns, reel, shop.hank_shrinkage);
        let length = named(name, "length_made", "length of a hank once scoured", length);
        let each = yarn::mass_of_length(shop.dry, length);
        let each = named(name, "each", "clean dry fibre in a hank", each);
        Need { each, fixed: Mass::base(N::constant(0.0)) }
    }

    pub(super) fn set<N: Number>(
        &self,
        name: &str,
        shop: &Shop<'_, '_, N>,
        before_scouring: LinearDensity<N>,
        bench: &mut Bench<N>,
    ) {
        let (turns, reel) = self.turns(name, shop);
        let none = Shrinkage::base(N::constant(0.0));
        let length = yarn::hank_length(turns, reel, none);
        let finished_length = yarn::hank_length(turns, reel, shop.hank_shrinkage);
        let dry = yarn::mass_of_length(shop.dry, finished_length);
        let reeled = Reeled {
            reel_turns: turns,
            length,
            check_weight: yarn::mass_of_length(before_scouring, length),
            finished_length,
            finished_mass: fibre::mass_in_state(dry, shop.label.state(shop.values)),
        };
        let notes = [
            ("reel_turns", format!("for '{name}'")),
            ("check_weight", "before scouring".to_owned()),
            ("finished_mass", "at label regain".to_owned()),
        ];
        let expect = ["finished_length", "finished_mass"];
        bench.show("reel", ["reel_turns", "check_weight"], expect, notes, |s| reeled.show(s));
    }
}

impl<N: Number> Shop<'_, '_, N> {
    fn reel(&self) -> Length<N> {
        match &self.machines.reel {
            Some(reel) => reel.map(&mut self.values.read()).reel_circumference,
            // A lot with hanks and no reel is refused when its file is read.
            None => Length::from(V::constant(f64::NAN)),
        }
    }
}
