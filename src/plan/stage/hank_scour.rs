//! Scouring the hanks.

use super::{
    Bench, LeavingState, Loss, Losses, Place, Sinks, Stage, Station, Values, in_state, named,
};
use crate::calculation::{Inputs, Results};
use crate::number::Number;
use crate::quantity::{LinearDensity, Ratio, Shrinkage, Twist};
use crate::yarn;

/// Washes the oil out of the hanks; they shrink.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct HankScour<N> {
    #[group(loss(0.0..=0.02))]
    losses: Losses<N>,
    /// shrinkage of the hank in length
    #[q("s", 0.0..=0.1, memory, zero, like = "5 %")]
    shrinkage: Shrinkage<N>,
}

/// The scoured yarn.
#[derive(Clone, Debug, Results)]
struct Scoured<N> {
    /// finished count
    count: LinearDensity<N>,
    /// twist after scouring
    twist: Option<Twist<N>>,
}

impl Stage for HankScour<Place> {
    const NAME: &'static str = "hank-scour";
    const SUMMARY: &'static str = "Washes the oil out of the hanks, which shrink.";
    const MAKES: &'static str = "scoured yarn";
    const CAUTIONS: &'static [&'static str] = &["hot liquor", "dryer"];
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

    fn count_in<N: Number>(
        &self,
        station: &Station<'_, '_, N>,
        out: LinearDensity<N>,
        _bench: &mut Bench<N>,
    ) -> Option<LinearDensity<N>> {
        let HankScour { losses, shrinkage } = self.map(&mut station.values.read());
        // Both counts are on clean dry fibre, so the ratio of states is one.
        let same_state = Ratio::base(N::constant(1.0));
        let before = yarn::count_before_scouring(out, same_state, losses.loss, shrinkage);
        Some(named(station.at, "count_before", "yarn wanted before scouring, dry", before))
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let Some(yarn) = &station.yarn else { return };
        let shrinkage = self.map(&mut station.values.read()).shrinkage;
        let twist = bench.folding_twist.or(bench.single_twist);
        let scoured = Scoured {
            count: in_state(yarn.count_out, station.state_out),
            twist: twist.map(|t| yarn::twist_after_shrinkage(t, shrinkage)),
        };
        let note = ("count", "scoured, as it leaves".to_owned());
        bench.show(station.spot(), [], ["count", "twist"], [note], |s| scoured.show(s));
    }
}
