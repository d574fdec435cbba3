//! Sorting.

use super::{LeavingState, Loss, Place, Sinks, Stage, Values};
use crate::calculation::Inputs;
use crate::number::Number;
use crate::quantity::ShareLost;

/// Takes out what does not belong in the lot.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Sort<N> {
    /// sorted out, with its dirt, on the greasy mass
    #[q("r_j", 0.0..=0.15, basis = "Custom mill leaflet", zero, like = "8 %")]
    rejects: ShareLost<N>,
    #[group]
    state: LeavingState<N>,
}

impl Stage for Sort<Place> {
    const NAME: &'static str = "sort";
    const SUMMARY: &'static str = "Takes out what does not belong in the lot.";
    const MAKES: &'static str = "sorted";
    const CAUTIONS: &'static [&'static str] = &["raw fleece", "dust"];
    const SINKS: Sinks =
        Sinks { fibre: "rejects", water: "air", fat: "rejects", vegetable: "rejects" };

    fn state(&self) -> Option<&LeavingState<Place>> {
        Some(&self.state)
    }

    fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
        let Sort { rejects, state } = self.map(&mut values.read());
        Some(Loss { share: rejects, held_up: None, state })
    }
}
