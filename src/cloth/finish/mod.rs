//! Finishing as a chain of processes: from the loom to the finished cloth, back, and from a sample.

mod process;
mod sample;
mod state;
mod tell;
mod work;

pub use process::{Process, SAID_OF_PROCESS, SaidOfProcess};
pub use sample::Measured;
pub use work::{KNOWN_IN_FINISHING, KnownInFinishing, finishing, known_in_finishing, to_weave};
