//! A stage of the mill's own: a loss and a state, no machine.

use super::{LeavingState, Loss, Losses, Place, Sinks, Stage, Values};
use crate::calculation::Inputs;
use crate::number::Number;

/// Loses something, and leaves the rest in a state.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Plain<N> {
    #[group(loss(0.0..=0.15))]
    losses: Losses<N>,
}

impl Stage for Plain<Place> {
    const NAME: &'static str = "loss";
    const SUMMARY: &'static str = "Any other stage: what it loses, and the state of the rest.";
    const MAKES: &'static str = "";
    const CAUTIONS: &'static [&'static str] = &["machines"];
    const SINKS: Sinks = Sinks { fibre: "lost", water: "air", fat: "lost", vegetable: "lost" };

    fn state(&self) -> Option<&LeavingState<Place>> {
        Some(&self.losses.state)
    }

    fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
        Some(self.losses.map(&mut values.read()).into())
    }
}
