//! Dusting.

use super::{LeavingState, Loss, Losses, Place, Sinks, Stage, Values};
use crate::calculation::Inputs;
use crate::number::Number;

/// Shakes out dust and burr.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Dust<N> {
    #[group]
    losses: Losses<N>,
}

impl Stage for Dust<Place> {
    const NAME: &'static str = "dust";
    const SUMMARY: &'static str = "Shakes out dust and burr.";
    const MAKES: &'static str = "dusted";
    const CAUTIONS: &'static [&'static str] = &["machines", "dust"];
    const SINKS: Sinks = Sinks {
        fibre: "dust and droppings",
        water: "air",
        fat: "air",
        vegetable: "dust and droppings",
    };

    fn state(&self) -> Option<&LeavingState<Place>> {
        Some(&self.losses.state)
    }

    fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
        Some(self.losses.map(&mut values.read()).into())
    }
}
