//! Dusting.

use super::{Draft, LOSS, Losses, PRACTICE, Question, Section, Sinks, Stage};
use crate::error::Result;

/// Shakes out dust and burr.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Dust(Losses);

const SINKS: Sinks = Sinks {
    fibre: "dust and droppings",
    water: "air",
    fat: "air",
    vegetable: "dust and droppings",
};

impl Stage for Dust {
    const NAME: &'static str = "dust";
    const SUMMARY: &'static str = "Shakes out dust and burr.";
    const MAKES: &'static str = "dusted";
    const CAUTIONS: &'static [&'static str] = &["machines", "dust"];

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let loss = Question { usual: (0.0, 0.06, PRACTICE), ..LOSS };
        Losses::read(section, draft, &loss, &SINKS).map(Dust)
    }

    fn losses(&self) -> Option<&Losses> {
        Some(&self.0)
    }
}
