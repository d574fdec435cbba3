//! Teasing.

use super::{Draft, LOSS, Losses, PRACTICE, Question, Section, Sinks, Stage};
use crate::error::Result;

/// Opens the oiled wool for the hopper.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Tease(Losses);

const SINKS: Sinks =
    Sinks { fibre: "fly and droppings", water: "air", fat: "air", vegetable: "fly and droppings" };

impl Stage for Tease {
    const NAME: &'static str = "tease";
    const SUMMARY: &'static str = "Opens the oiled wool for the hopper of the card.";
    const MAKES: &'static str = "teased";
    const CAUTIONS: &'static [&'static str] = &["machines", "dust", "oil"];

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let loss = Question { usual: (0.0, 0.04, PRACTICE), ..LOSS };
        Losses::read(section, draft, &loss, &SINKS).map(Tease)
    }

    fn losses(&self) -> Option<&Losses> {
        Some(&self.0)
    }
}
