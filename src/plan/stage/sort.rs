//! Sorting.

use super::{Draft, Flow, Kind, Ledger, Section, Stage, Values, ask, named};
use crate::error::Result;
use crate::mill;
use crate::number::Number;
use crate::plan::given::Ask;
use crate::quantity::{Fraction, Mass};

/// Takes out what does not belong in the lot.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Sort {
    rejects: Ask,
}

impl Stage for Sort {
    const NAME: &'static str = "sort";
    const MAKES: &'static str = "sorted";
    const CAUTION: &'static str = "Raw fleece can carry anthrax and Q fever: keep the dust down, \
        cover cuts, follow local health rules and your doctor's advice.";

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let rejects = ask(
            "rejects",
            "r",
            "share rejected, with its dirt",
            Kind::Fraction,
            (0.0, 0.15, "a custom mill's leaflet, 15 % upper end"),
            "\"8 %\"",
        );
        Ok(Sort { rejects: section.ask(draft, &rejects)? })
    }

    fn carry<N: Number>(
        &self,
        values: &Values<'_, N>,
        flow: Flow<N>,
        ledger: &mut impl Ledger,
    ) -> Flow<N> {
        let rejects: Fraction<N> = values.get(self.rejects);
        let lost = Mass::from(flow.fibre.v() * rejects.v());
        let lost = named(Self::NAME, "lost", "clean dry fibre rejected", lost);
        let share = move || lost.value() / flow.fibre.value();
        ledger.lost("rejects", "lost", || flow.stock().share(share()));
        let fibre = mill::after_chain_of_losses(flow.fibre, &[rejects]);
        let words = "clean dry fibre that leaves";
        Flow { fibre: named(Self::NAME, "fibre", words, fibre), ..flow }
    }

    fn back<N: Number>(&self, values: &Values<'_, N>, fibre: Mass<N>) -> Mass<N> {
        super::back(Self::NAME, fibre, values.get(self.rejects))
    }
}
