//! Scouring and drying.

use super::{LeavingState, Loss, Losses, Place, Sinks, Stage, Values};
use crate::calculation::Inputs;
use crate::number::Number;

/// Washes the grease and dirt out, and dries.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Scour<N> {
    #[group(loss(0.0..=0.05))]
    losses: Losses<N>,
}

impl Stage for Scour<Place> {
    const NAME: &'static str = "scour";
    const SUMMARY: &'static str = "Washes grease and dirt out of the wool and dries it.";
    const MAKES: &'static str = "scoured";
    const CAUTIONS: &'static [&'static str] = &["raw fleece", "scouring", "dryer"];
    const SINKS: Sinks = Sinks {
        fibre: "fibre in the liquor",
        water: "drying air",
        fat: "liquor",
        vegetable: "liquor and dryer",
    };

    fn state(&self) -> Option<&LeavingState<Place>> {
        Some(&self.losses.state)
    }

    fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
        Some(self.losses.map(&mut values.read()).into())
    }
}
