//! Oiling and laying down.

use super::{
    Bench, Draft, Flow, Kind, Ledger, PRACTICE, Section, Stage, Station, Values, ask, named,
};
use crate::error::Result;
use crate::mill;
use crate::number::Number;
use crate::plan::given::Ask;
use crate::quantity::{Fraction, OnFibre};

/// Puts oil and water on.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Oil {
    share: Ask,
    water: Ask,
    density: Ask,
}

impl Stage for Oil {
    const NAME: &'static str = "oil";
    const SUMMARY: &'static str = "Puts oil and water on the wool.";
    const MAKES: &'static str = "oiled";
    const CAUTIONS: &'static [&'static str] = &["oil"];

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
            share: section.ask(draft, &oil)?,
            water: section.ask(draft, &water.or(0.0))?,
            density: section.ask(draft, &density.or(0.92))?,
        })
    }

    fn carry<N: Number>(
        &self,
        values: &Values<'_, N>,
        flow: Flow<N>,
        ledger: &mut impl Ledger,
    ) -> Flow<N> {
        let (share, water): (Fraction<N>, Fraction<N>) =
            (values.get(self.share), values.get(self.water));
        let on = |share: Fraction<N>| OnFibre::from(share.v());
        let fat = Fraction::from(mill::fat_after_oiling(on(flow.fat), on(share)).v());
        let fat = named(Self::NAME, "fat", "grease and oil on clean dry fibre, on leaving", fat);
        let regain = mill::regain_after_wetting(flow.regain, water);
        let regain = named(Self::NAME, "regain", "water on clean dry fibre, on leaving", regain);
        // Where there is no fat at all none of it is oil.
        let oil = (flow.oil * flow.fat.v() + share.v()) / fat.v().max(f64::MIN_POSITIVE);
        let out = Flow { regain, fat, oil, ..flow };
        ledger.added("oil and water put on", || out.stock().less(&flow.stock()));
        out
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let (values, fibre) = (station.values, station.before.fibre);
        let oil = mill::add_on(fibre, values.get(self.share));
        let water = mill::add_on(fibre, values.get(self.water));
        let oil = bench.set(Self::NAME, "oil_mass", "oil to put on", oil, "");
        let volume = mill::volume_of_mass(oil, values.get(self.density));
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
