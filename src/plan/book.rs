//! A result as a live workbook.

use super::PlanResult;
use crate::error::Result;
use crate::files::Output;
use crate::worked::{Arg, Section, StaticTable, write_sheet};

impl PlanResult {
    /// Writes the planned values as a live workbook, a section a stage, the cautions, and the results
    /// of the simulated lots as plain numbers; `date` is printed beside them.
    pub fn to_workbook(&self, out: impl Into<Output>, date: &str) -> Result<()> {
        let recording = self.recording();
        let roots: Vec<Arg> = recording.labels.keys().map(|step| Arg::Step(*step)).collect();
        let section = |title: &str, names: &[&str]| Section {
            title: title.to_owned(),
            names: names.iter().map(|n| format!("{n}.")).collect(),
        };
        let mut sections = vec![section("Promise", &["promise"])];
        for good in &self.goods {
            sections.push(section(&good.name, &[&good.name, &format!("goods.{}", good.name)]));
        }
        sections.push(section("Lot, label, yarn", &["lot", "label", "yarn"]));
        for stage in &self.stages {
            sections.push(section(&stage.name, &[&stage.name]));
        }
        sections.push(section("Reel", &["reel"]));
        sections.push(section("Loom", &["cone", "loom"]));
        sections.push(section("Finish", &["finish"]));
        sections.push(Section { title: "Other".to_owned(), names: Vec::new() });
        let tables = if self.simulated > 0 { vec![self.chance_table(date)] } else { Vec::new() };
        write_sheet(&out.into(), recording, &roots, &sections, &tables, &self.caution_lines())
    }

    fn chance_table(&self, date: &str) -> StaticTable {
        let head = ["value", "low", "middle", "high", "chance"].map(str::to_owned).to_vec();
        let mut rows = vec![head];
        let mut add = |name: String, band: Option<super::Band>, chance: Option<f64>| {
            let Some(b) = band else { return };
            let mut row = vec![name];
            row.extend([b.low, b.middle, b.high].map(|x| x.to_string()));
            row.extend(chance.map(|c| c.to_string()));
            rows.push(row);
        };
        for good in &self.goods {
            add(format!("{}, pieces", good.name), good.band, good.chance);
        }
        add(self.spare_label(), self.spare.band, self.spare.chance);
        for stage in &self.stages {
            add(format!("{}, kg at the stated regain", stage.name), stage.band, None);
        }
        StaticTable {
            title: "Chance".to_owned(),
            note: format!(
                "Plain numbers, not live: {} simulated lots, seed {}, {date}. Low 5 %, middle 50 %, high 95 %.",
                self.simulated, self.seed
            ),
            rows,
        }
    }
}
