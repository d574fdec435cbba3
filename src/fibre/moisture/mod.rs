//! Water, fat and vegetable matter on clean dry fibre.

mod humidity;
mod invoice;
mod state;
mod water;

pub use humidity::*;
pub use invoice::*;
pub use state::*;
pub use water::*;
