//! Scouring and drying.

use super::{Draft, Exit, Flow, Ledger, PRACTICE, Section, Sinks, Stage, Values, back, loss, pass};
use crate::error::Result;
use crate::number::Number;
use crate::plan::given::Ask;
use crate::quantity::Mass;

/// Washes the grease and dirt out, and dries.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Scour {
    loss: Ask,
    exit: Exit,
}

impl Stage for Scour {
    const NAME: &'static str = "scour";
    const MAKES: &'static str = "scoured";
    const CAUTION: &'static str = "Hot alkaline liquor burns and spoils wool: at most 60 °C with alkali; follow the makers of plant and detergent and the local rules for effluent.";

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let loss = section.ask(draft, &loss((0.0, 0.05, PRACTICE)))?;
        Ok(Scour { loss, exit: Exit::read(section, draft)? })
    }

    fn carry<N: Number>(
        &self,
        values: &Values<'_, N>,
        flow: Flow<N>,
        ledger: &mut impl Ledger,
    ) -> Flow<N> {
        let sinks = Sinks {
            fibre: "fibre in the liquor",
            water: "drying air",
            fat: "liquor",
            vegetable: "liquor and dryer",
        };
        pass(Self::NAME, values, flow, values.get(self.loss), None, &self.exit, &sinks, ledger)
    }

    fn back<N: Number>(&self, values: &Values<'_, N>, fibre: Mass<N>) -> Mass<N> {
        back(Self::NAME, fibre, values.get(self.loss))
    }
}
