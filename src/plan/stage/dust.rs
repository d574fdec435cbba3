//! Dusting.

use super::{Draft, Exit, Flow, Ledger, PRACTICE, Section, Sinks, Stage, Values, back, loss, pass};
use crate::error::Result;
use crate::number::Number;
use crate::plan::given::Ask;
use crate::quantity::Mass;

/// Shakes out dust and burr.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Dust {
    loss: Ask,
    exit: Exit,
}

impl Stage for Dust {
    const NAME: &'static str = "dust";
    const MAKES: &'static str = "dusted";
    const CAUTION: &'static str = "Wait until the blades stand still after the power is off; keep the dust extraction running.";

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let loss = section.ask(draft, &loss((0.0, 0.06, PRACTICE)))?;
        Ok(Dust { loss, exit: Exit::read(section, draft)? })
    }

    fn carry<N: Number>(
        &self,
        values: &Values<'_, N>,
        flow: Flow<N>,
        ledger: &mut impl Ledger,
    ) -> Flow<N> {
        let sinks = Sinks {
            fibre: "dust and droppings",
            water: "air",
            fat: "air",
            vegetable: "dust and droppings",
        };
        pass(Self::NAME, values, flow, values.get(self.loss), None, &self.exit, &sinks, ledger)
    }

    fn back<N: Number>(&self, values: &Values<'_, N>, fibre: Mass<N>) -> Mass<N> {
        back(Self::NAME, fibre, values.get(self.loss))
    }
}
