//! Scouring and drying.

use super::{Draft, LOSS, Losses, PRACTICE, Question, Section, Sinks, Stage};
use crate::error::Result;

/// Washes the grease and dirt out, and dries.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Scour(Losses);

const SINKS: Sinks = Sinks {
    fibre: "fibre in the liquor",
    water: "drying air",
    fat: "liquor",
    vegetable: "liquor and dryer",
};

impl Stage for Scour {
    const NAME: &'static str = "scour";
    const SUMMARY: &'static str = "Washes grease and dirt out of the wool and dries it.";
    const MAKES: &'static str = "scoured";
    const CAUTIONS: &'static [&'static str] = &["raw fleece", "scouring"];

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let loss = Question { usual: (0.0, 0.05, PRACTICE), ..LOSS };
        Losses::read(section, draft, &loss, &SINKS).map(Scour)
    }

    fn losses(&self) -> Option<&Losses> {
        Some(&self.0)
    }
}
