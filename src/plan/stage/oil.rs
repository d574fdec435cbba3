//! Oiling and laying down.

use super::{
    Bench, Draft, Kind, Ledger, PRACTICE, Section, Stage, Station, Stock, Values, ask, named,
};
use crate::error::Result;
use crate::mill;
use crate::number::Number;
use crate::plan::given::Ask;
use crate::quantity::{Fraction, Mass};

/// Puts oil and water on.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Oil {
    oil: Ask,
    water: Ask,
    density: Ask,
}

impl Stage for Oil {
    const NAME: &'static str = "oil";
    const MAKES: &'static str = "oiled";
    const CAUTION: &'static str =
        "Oily wool can heat and catch fire by itself: store it as the maker of the oil says.";

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let share = |key, symbol, meaning, usual, example| {
            ask(key, symbol, meaning, Kind::Fraction, usual, example)
        };
        let oil =
            share("oil", "o", "oil to add, on clean dry fibre", (0.01, 0.12, PRACTICE), "\"4 %\"");
        let water = share(
            "water",
            "e",
            "water to add, on clean dry fibre",
            (0.0, 0.2, PRACTICE),
            "\"8 %\"",
        );
        let density = ask(
            "density",
            "ρ",
            "density of the oil",
            Kind::Density,
            (0.8, 1.05, PRACTICE),
            "\"0.92 kg/L\"",
        );
        Ok(Oil {
            oil: section.ask(draft, &oil)?,
            water: section.ask(draft, &water.or(0.0))?,
            density: section.ask(draft, &density.or(0.92))?,
        })
    }

    fn carry<N: Number>(
        &self,
        values: &Values<'_, N>,
        stock: Stock<N>,
        ledger: &mut impl Ledger<N>,
    ) -> Stock<N> {
        let [oil, water] = self.amounts(values, &stock).map(Mass::v);
        ledger.added("oil and water put on", || Stock { oil, water, ..Stock::none() });
        Stock { oil: stock.oil + oil, water: stock.water + water, ..stock }
    }

    fn back<N: Number>(&self, _values: &Values<'_, N>, fibre: Mass<N>) -> Mass<N> {
        fibre
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let [oil, water] = self.amounts(station.values, &station.before);
        let oil = bench.set(Self::NAME, "oil_mass", "oil to put on", oil, "");
        let volume = mill::volume_of_mass(oil, station.values.get(self.density));
        bench.set(Self::NAME, "oil_volume", "the same by volume", volume, "");
        bench.set(
            Self::NAME,
            "water_mass",
            "water to put on",
            water,
            "as an emulsion with the oil",
        );
    }
}

impl Oil {
    fn amounts<N: Number>(&self, values: &Values<'_, N>, stock: &Stock<N>) -> [Mass<N>; 2] {
        let fibre = stock.fibre();
        let oil: Fraction<N> = values.get(self.oil);
        let water: Fraction<N> = values.get(self.water);
        [
            named(Self::NAME, "oil_added", "oil put on", mill::add_on(fibre, oil)),
            named(Self::NAME, "water_added", "water put on", mill::add_on(fibre, water)),
        ]
    }
}
