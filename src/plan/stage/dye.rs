//! Dyeing: loose wool, or yarn in hanks.

use super::{
    At, Bench, Flow, LeavingState, Ledger, Loss, Losses, Place, Sinks, Stage, Station, Values,
    named,
};
use crate::calculation::{Inputs, Results};
use crate::number::Number;
use crate::quantity::{Count, LinearDensity, Mass, OnFibre, Ratio, Shrinkage};
use crate::yarn;

/// Dyes, washes off and dries.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Dye<N> {
    #[group(loss(0.0..=0.04))]
    losses: Losses<N>,
    /// dye and mordant that stay on, on clean dry fibre
    #[q("a_s", 0.0..=0.1, zero, like = "2 %")]
    stays: Option<OnFibre<N>>,
    /// shrinkage of yarn in length
    #[q("s", 0.0..=0.1, or = 0.0, like = "1 %")]
    shrinkage: Shrinkage<N>,
    /// dry goods that the vessel takes
    #[q("M_v", 0.5..=200.0, like = "12 kg")]
    vessel: Option<Mass<N>>,
}

/// The baths.
#[derive(Clone, Debug, Results)]
struct Dyed<N> {
    /// clean dry goods to dye
    goods: Mass<N>,
    /// baths
    baths: Option<Count<N>>,
    /// clean dry goods in a bath
    bath_goods: Option<Mass<N>>,
}

impl Dye<Place> {
    /// Dye and mordant that stay on.
    pub(in crate::plan) fn stays<N: Number>(&self, values: &Values<'_, N>) -> Option<OnFibre<N>> {
        self.stays.as_ref().map(|stays| OnFibre::base(values.at(*stays.inner())))
    }
}

impl Stage for Dye<Place> {
    const NAME: &'static str = "dye";
    const SUMMARY: &'static str = "Dyes wool or yarn: baths, what stays on.";
    const MAKES: &'static str = "dyed";
    const CAUTIONS: &'static [&'static str] = &["hot liquor", "dyeing", "dryer"];
    const SINKS: Sinks = Sinks {
        fibre: "fibre in the liquor",
        water: "drying air",
        fat: "liquor",
        vegetable: "liquor",
    };

    fn state(&self) -> Option<&LeavingState<Place>> {
        Some(&self.losses.state)
    }

    fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
        Some(self.losses.map(&mut values.read()).into())
    }

    fn shrinkage<N: Number>(&self, values: &Values<'_, N>) -> Option<Shrinkage<N>> {
        Some(Shrinkage::base(values.at(*self.shrinkage.inner())))
    }

    fn carry<N: Number>(
        &self,
        pass: &At<'_>,
        values: &Values<'_, N>,
        flow: Flow<N>,
        ledger: &mut impl Ledger,
    ) -> Flow<N> {
        let loss = Loss::from(self.losses.map(&mut values.read()));
        let washed = loss.pass(pass.name, &Self::SINKS, flow, ledger);
        let Some(stays) = self.stays(values) else { return washed };
        let stays = washed.stays.map_or(stays, |before| OnFibre::from(before.v() + stays.v()));
        let dyed = Flow { stays: Some(stays), ..washed };
        ledger.added("dye and mordant", || dyed.stock().less(&washed.stock()));
        dyed
    }

    fn count_in<N: Number>(
        &self,
        station: &Station<'_, '_, N>,
        out: LinearDensity<N>,
        _bench: &mut Bench<N>,
    ) -> Option<LinearDensity<N>> {
        let Dye { losses, shrinkage, .. } = self.map(&mut station.values.read());
        let loss = losses.loss;
        let same_state = Ratio::base(N::constant(1.0));
        let before = yarn::count_before_scouring(out, same_state, loss, shrinkage);
        Some(named(station.at, "count_before", "yarn wanted before dyeing, dry", before))
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let goods = station.before.fibre;
        let vessel = self.vessel.as_ref().map(|v| Mass::base(station.values.at(*v.inner())));
        let baths = vessel
            .map(|vessel: Mass<N>| Count::from((goods.v() / vessel.v()).round_up(BATH).max(1.0)));
        let dyed = Dyed {
            goods,
            baths,
            bath_goods: baths.map(|baths: Count<N>| Mass::from(goods.v() / baths.v())),
        };
        let notes = [("bath_goods", "dry, in equal baths".to_owned())];
        bench.show(station.spot(), ["goods", "baths", "bath_goods"], [], notes, |s| dyed.show(s));
    }
}

/// A billionth of a bath too much is no bath more: arithmetic rounds.
const BATH: f64 = 1e-9;
