//! The jobs of the mill: what its keeper asks at a machine.

mod card_run;
mod lots_apart;

use crate::job::Job;

/// Every job of this room.
pub(crate) const JOBS: &[&Job] = &[&card_run::CARD_RUN, &lots_apart::LOTS_APART];
