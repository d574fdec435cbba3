//! Teasing.

use super::{Draft, Exit, Flow, Ledger, PRACTICE, Section, Sinks, Stage, Values, back, loss, pass};
use crate::error::Result;
use crate::number::Number;
use crate::plan::given::Ask;
use crate::quantity::Mass;

/// Opens the oiled wool for the hopper.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Tease {
    loss: Ask,
    exit: Exit,
}

impl Stage for Tease {
    const NAME: &'static str = "tease";
    const MAKES: &'static str = "teased";
    const CAUTION: &'static str =
        "Never reach into a teaser or willey: wait until it stands still after the power is off.";

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let loss = section.ask(draft, &loss((0.0, 0.04, PRACTICE)))?;
        Ok(Tease { loss, exit: Exit::read(section, draft)? })
    }

    fn carry<N: Number>(
        &self,
        values: &Values<'_, N>,
        flow: Flow<N>,
        ledger: &mut impl Ledger,
    ) -> Flow<N> {
        let sinks = Sinks {
            fibre: "fly and droppings",
            water: "air",
            fat: "air",
            vegetable: "fly and droppings",
        };
        pass(Self::NAME, values, flow, values.get(self.loss), None, &self.exit, &sinks, ledger)
    }

    fn back<N: Number>(&self, values: &Values<'_, N>, fibre: Mass<N>) -> Mass<N> {
        back(Self::NAME, fibre, values.get(self.loss))
    }
}
