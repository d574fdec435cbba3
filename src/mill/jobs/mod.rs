//! The jobs of the mill: what its keeper asks at a machine.

mod card_run;
mod lots_apart;

pub use card_run::CARD_RUN;
pub use lots_apart::LOTS_APART;

use crate::job::Job;

/// Every job of this room.
pub(crate) const JOBS: &[&Job] = &[&CARD_RUN, &LOTS_APART];
