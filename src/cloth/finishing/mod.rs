//! What finishing makes of size, sett, mass and yarn.

pub(super) mod change;
pub(super) mod mass;
pub(super) mod size;
pub(super) mod yarn;

pub use change::*;
pub use mass::*;
pub use size::*;
pub use yarn::*;
