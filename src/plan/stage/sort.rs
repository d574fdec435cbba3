//! Sorting.

use super::{Draft, Kind, Losses, Section, Sinks, Stage, ask};
use crate::error::Result;

/// Takes out what does not belong in the lot.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Sort(Losses);

const SINKS: Sinks = Sinks { fibre: "rejects", water: "air", fat: "rejects", vegetable: "rejects" };

impl Stage for Sort {
    const NAME: &'static str = "sort";
    const SUMMARY: &'static str = "Takes out what does not belong in the lot.";
    const MAKES: &'static str = "sorted";
    const CAUTIONS: &'static [&'static str] = &["raw fleece", "dust"];

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let loss = ask(
            "rejects",
            "r",
            "share rejected, with its dirt",
            Kind::Fraction,
            (0.0, 0.15, "a custom mill's leaflet, 15 % upper end"),
            "\"8 %\"",
        );
        Losses::read(section, draft, &loss, &SINKS).map(Sort)
    }

    fn losses(&self) -> Option<&Losses> {
        Some(&self.0)
    }
}
