//! Hanks.

use super::super::file::{Draft, PRACTICE, Section, ask};
use super::super::given::Ask;
use super::super::stage::{Bench, named};
use super::{Need, Shop};
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::{Count, Kind, Length, LinearDensity, Mass, Shrinkage};
use crate::{fibre, yarn};

/// The reel.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Reel {
    circumference: Ask,
}

impl Reel {
    pub(in crate::plan) fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let circumference = ask(
            "circumference",
            "C",
            "circumference of the reel",
            Kind::Length,
            (0.9, 2.5, PRACTICE),
            "\"1.50 m\"",
        );
        Ok(Reel { circumference: section.ask(draft, &circumference)? })
    }
}

/// A hank of the yarn, sold by mass.
#[derive(Clone, Debug)]
pub(super) struct Hank {
    mass: Ask,
}

impl Hank {
    pub(super) fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let mass = ask(
            "mass",
            "m",
            "mass of a hank as sold",
            Kind::Mass,
            (0.02, 1.0, PRACTICE),
            "\"100 g\"",
        );
        Ok(Hank { mass: section.ask(draft, &mass)? })
    }

    fn turns<N: Number>(&self, name: &str, shop: &Shop<'_, '_, N>) -> (Count<N>, Length<N>) {
        let length =
            yarn::length_of_mass(shop.values.get(self.mass), shop.values.get(shop.yarn.count));
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
        let turns = bench.set(
            "reel",
            "turns",
            "turns of the reel for a hank",
            turns,
            format!("for '{name}'"),
        );
        let none = Shrinkage::base(N::constant(0.0));
        let reeled = yarn::hank_length(turns, reel, none);
        let reeled = named("reel", "length", "length of a hank as reeled", reeled);
        let before = yarn::mass_of_length(before_scouring, reeled);
        bench.set("reel", "check_weight", "a hank should weigh", before, "in oil, before scouring");
        let length = yarn::hank_length(turns, reel, shop.hank_shrinkage);
        bench.expect("reel", "finished_length", "length of a hank once scoured", length, "");
        let dry = yarn::mass_of_length(shop.dry, length);
        let sold = fibre::mass_in_state(dry, shop.label.state(shop.values));
        bench.expect("reel", "finished_mass", "mass of a hank as sold", sold, "at label regain");
    }
}

impl<N: Number> Shop<'_, '_, N> {
    fn reel(&self) -> Length<N> {
        match &self.machines.reel {
            Some(reel) => self.values.get(reel.circumference),
            // A lot with hanks and no reel is refused when its file is read.
            None => Length::from(V::constant(f64::NAN)),
        }
    }
}
