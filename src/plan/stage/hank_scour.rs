//! Scouring the hanks.

use super::{
    Bench, Draft, Kind, LOSS, Losses, PRACTICE, Question, Section, Sinks, Stage, Station, ask,
    in_state, named,
};
use crate::error::Result;
use crate::number::Number;
use crate::plan::given::Ask;
use crate::quantity::{LinearDensity, Ratio};
use crate::yarn;

/// Washes the oil out of the hanks; they shrink.
#[derive(Clone, Debug)]
pub(in crate::plan) struct HankScour {
    losses: Losses,
    pub(in crate::plan) shrinkage: Ask,
}

const SINKS: Sinks =
    Sinks { fibre: "fibre in the liquor", water: "drying air", fat: "liquor", vegetable: "liquor" };

impl Stage for HankScour {
    const NAME: &'static str = "hank-scour";
    const SUMMARY: &'static str = "Washes the oil out of the hanks, which shrink.";
    const MAKES: &'static str = "scoured yarn";
    const CAUTIONS: &'static [&'static str] = &["hot liquor"];

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let shrinkage = ask(
            "shrinkage",
            "s",
            "shrinkage of the hank in length",
            Kind::Shrinkage,
            (0.0, 0.1, "3 to 8 %, from memory"),
            "\"5 %\"",
        );
        let loss = Question { usual: (0.0, 0.02, PRACTICE), ..LOSS };
        Ok(HankScour {
            losses: Losses::read(section, draft, &loss, &SINKS)?,
            shrinkage: section.ask(draft, &shrinkage)?,
        })
    }

    fn losses(&self) -> Option<&Losses> {
        Some(&self.losses)
    }

    fn count_in<N: Number>(
        &self,
        station: &Station<'_, '_, N>,
        out: LinearDensity<N>,
        _bench: &mut Bench<N>,
    ) -> LinearDensity<N> {
        // Both counts are on clean dry fibre, so the ratio of states is one.
        let same_state = Ratio::base(N::constant(1.0));
        let (loss, shrinkage) =
            (self.losses.share(station.values), station.values.get(self.shrinkage));
        let before = yarn::count_before_scouring(out, same_state, loss, shrinkage);
        named(Self::NAME, "count_before", "folded yarn wanted before scouring, dry", before)
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let count = in_state(station.count_out, station.state_out);
        bench.expect(Self::NAME, "count", "finished count", count, "scoured, as it leaves");
        if let Some(twist) = bench.folding_twist {
            let after = yarn::twist_after_shrinkage(twist, station.values.get(self.shrinkage));
            bench.expect(Self::NAME, "twist", "folding twist after scouring", after, "");
        }
    }
}
