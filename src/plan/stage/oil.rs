//! Oiling and laying down.

use super::{At, Bench, Flow, Ledger, Place, Sinks, Stage, Station, Values, named};
use crate::calculation::{Inputs, Results};
use crate::mill;
use crate::number::Number;
use crate::quantity::{Density, Mass, OnFibre, Volume};

/// Puts oil and water on.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Oil<N> {
    #[group]
    put_on: PutOn<N>,
    /// density of the oil
    #[q("ρ", 0.8..=1.05, or = 0.92, like = "0.92 kg/L")]
    oil_density: Density<N>,
}

/// What is put on.
#[derive(Clone, Debug, Inputs)]
struct PutOn<N> {
    /// oil to add, on clean dry fibre
    #[q("o_a", 0.01..=0.12, zero, like = "4 %")]
    oil_added: OnFibre<N>,
    /// water to add, on clean dry fibre
    #[q("e_a", 0.0..=0.2, or = 0.0, like = "8 %")]
    water_added: OnFibre<N>,
}

/// What to measure out.
#[derive(Clone, Debug, Results)]
struct ToPutOn<N> {
    /// oil
    oil_mass: Mass<N>,
    /// oil, by volume
    oil_volume: Volume<N>,
    /// water
    water_mass: Mass<N>,
}

impl Stage for Oil<Place> {
    const NAME: &'static str = "oil";
    const SUMMARY: &'static str = "Puts oil and water on the wool.";
    const MAKES: &'static str = "oiled";
    const CAUTIONS: &'static [&'static str] = &["oil"];
    const SINKS: Sinks = Sinks { fibre: "", water: "", fat: "", vegetable: "" };

    fn carry<N: Number>(
        &self,
        pass: &At<'_>,
        values: &Values<'_, N>,
        flow: Flow<N>,
        ledger: &mut impl Ledger,
    ) -> Flow<N> {
        let PutOn { oil_added, water_added } = self.put_on.map(&mut values.read());
        let fat = mill::fat_after_oiling(flow.fat, oil_added);
        let fat = named(pass.name, "fat", "grease and oil on clean dry fibre, on leaving", fat);
        let regain = mill::regain_after_wetting(flow.regain, water_added);
        let regain = named(pass.name, "regain", "water on clean dry fibre, on leaving", regain);
        // Where there is no fat at all none of it is oil.
        let oil = (flow.oil * flow.fat.v() + oil_added.v()) / fat.v().max(f64::MIN_POSITIVE);
        let out = Flow { regain, fat, oil, ..flow };
        ledger.added("oil and water added", || out.stock().less(&flow.stock()));
        out
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let Oil { put_on, oil_density } = self.map(&mut station.values.read());
        let fibre = station.before.fibre;
        let oil_mass = mill::mass_to_add(fibre, put_on.oil_added);
        let to_put_on = ToPutOn {
            oil_mass,
            oil_volume: mill::volume_of_mass(oil_mass, oil_density),
            water_mass: mill::mass_to_add(fibre, put_on.water_added),
        };
        let note = ("water_mass", "as an emulsion with the oil".to_owned());
        bench.show(station.spot(), ["oil_mass", "oil_volume", "water_mass"], [], [note], |s| {
            to_put_on.show(s);
        });
    }
}
