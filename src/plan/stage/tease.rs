//! Teasing.

use super::{LeavingState, Loss, Losses, Place, Sinks, Stage, Values};
use crate::calculation::Inputs;
use crate::number::Number;

/// Opens the oiled wool for the hopper.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Tease<N> {
    #[group(loss(0.0..=0.04))]
    losses: Losses<N>,
}

impl Stage for Tease<Place> {
    const NAME: &'static str = "tease";
    const SUMMARY: &'static str = "Opens the oiled wool for the hopper of the card.";
    const MAKES: &'static str = "teased";
    const CAUTIONS: &'static [&'static str] = &["machines", "dust", "oil"];
    const SINKS: Sinks = Sinks {
        fibre: "fly and droppings",
        water: "air",
        fat: "air",
        vegetable: "fly and droppings",
    };

    fn state(&self) -> Option<&LeavingState<Place>> {
        Some(&self.losses.state)
    }

    fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
        Some(self.losses.map(&mut values.read()).into())
    }
}
