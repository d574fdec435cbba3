//! Papers of a lot and of a mill: HTML pages to print, black and white, in plain words.

mod floor;
mod grower;
mod mill;
mod quote;
mod sheet;
mod tables;
mod trial;
mod words;

use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};

use super::result::{PlanResult, StageResult};
use super::{Plan, Source};
use crate::error::{Error, Result};
use crate::files::{FileKind, Output, read_text};

/// A paper of a lot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// The quotation: the safe promise, and what it depends on.
    Quote,
    /// The growers' sheets: wool in, goods out, where the rest went; a page each.
    Grower,
    /// The mill's sheet: every stage with its settings, and where the values come from.
    Mill,
    /// The floor sheets: a page for each machine.
    Floor,
}

impl Paper {
    /// Every paper of a lot.
    pub const ALL: [Paper; 4] = [Paper::Quote, Paper::Grower, Paper::Mill, Paper::Floor];

    /// Its name: that of its option, and in the name of its file.
    pub const fn name(self) -> &'static str {
        match self {
            Paper::Quote => "quote",
            Paper::Grower => "grower",
            Paper::Mill => "mill",
            Paper::Floor => "floor",
        }
    }
    /// The paper with a name.
    ///
    /// # Errors
    /// Where no paper has it.
    pub fn named(name: &str) -> Result<Paper> {
        Self::ALL.into_iter().find(|paper| paper.name() == name).ok_or_else(|| {
            let names = Self::ALL.map(|paper| format!("'{}'", paper.name())).join(", ");
            Error::notation(format!("no paper '{name}'; write one of {names}"))
        })
    }
}

/// What the tables to hang by the machines of a mill are called in the name of their file.
pub const TABLES: &str = "tables";

/// Where a paper of a lot file or a mill file goes: beside the file, or into a folder. `lot.toml` has its
/// quotation in `lot-quote.html`.
pub fn paper_path(file: &Path, paper: &str, folder: Option<&Path>) -> PathBuf {
    let mut name = file.file_stem().map_or_else(OsString::new, OsString::from);
    name.push(format!("-{paper}.html"));
    folder.or_else(|| file.parent()).unwrap_or(Path::new("")).join(name)
}

impl Plan {
    /// A paper of the lot as an HTML page, with what a run of this plan gave.
    pub fn paper(&self, result: &PlanResult, paper: Paper) -> String {
        match paper {
            Paper::Quote => quote::page(self, result),
            Paper::Grower => grower::page(self, result),
            Paper::Mill => mill::page(self, result),
            Paper::Floor => floor::page(self, result),
        }
    }

    /// Writes papers of the lot beside its file, or into a folder; all are possible or none is written.
    /// `over` replaces files of another kind too. Gives the files.
    ///
    /// ```no_run
    /// use hankwise::plan::{Paper, Plan, Run};
    ///
    /// let plan = Plan::load("examples/first-lot.toml".as_ref())?;
    /// let result = plan.run(&Run::default())?;
    /// plan.write_papers(&result, &Paper::ALL, Some("/tmp".as_ref()), false)?;
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    ///
    /// # Errors
    /// Where a file cannot be written, or is one that was read.
    pub fn write_papers(
        &self,
        result: &PlanResult,
        papers: &[Paper],
        folder: Option<&Path>,
        over: bool,
    ) -> Result<Vec<PathBuf>> {
        let lot = Path::new(self.file());
        let mill = self.mill().map(|mill| Path::new(&mill.name));
        let read: Vec<&Path> = std::iter::once(lot).chain(mill).collect();
        let outs = papers.iter().map(|paper| {
            let path = paper_path(lot, paper.name(), folder);
            Ok((*paper, settled(path, &read, over)?))
        });
        let outs: Vec<(Paper, Output)> = outs.collect::<Result<_>>()?;
        let mut written = Vec::new();
        for (paper, out) in outs {
            out.write(FileKind::Html, self.paper(result, paper).as_bytes())?;
            written.push(out.path().to_owned());
        }
        Ok(written)
    }
}

/// The tables to hang by the machines of a mill, as an HTML page, a sheet for each machine: owned wheels and
/// reeds and what they give, check weights of the mill's usual yarns at three regains, hopper weighs.
///
/// # Errors
/// Where the mill file cannot be read, or has no machine with such a table.
pub fn mill_tables(mill: &Source) -> Result<String> {
    tables::page(mill)
}

/// Writes the tables of a mill file beside it, or into a folder. Gives the file.
///
/// # Errors
/// Those of [`mill_tables`], and where the file cannot be written.
pub fn write_mill_tables(path: &Path, folder: Option<&Path>, over: bool) -> Result<PathBuf> {
    let out = settled(paper_path(path, TABLES, folder), &[path], over)?;
    let mill = Source { name: path.display().to_string(), text: read_text(path)? };
    out.write(FileKind::Html, mill_tables(&mill)?.as_bytes())?;
    Ok(out.path().to_owned())
}

/// Where a page may be written: never over what was read.
fn settled(path: PathBuf, read: &[&Path], over: bool) -> Result<Output> {
    let real = |path: &Path| fs::canonicalize(path).ok();
    let target = real(&path);
    if target.is_some() && read.iter().any(|read| real(read) == target) {
        return Err(Error::plan(format!("{} is read; write to another folder", path.display())));
    }
    let out = if over { Output::over(path) } else { Output::from(&path) };
    out.check(FileKind::Html)?;
    Ok(out)
}

/// What stands under the title of every paper of a lot: what the lot is filed under, its dates, its wool.
fn about(plan: &Plan, result: &PlanResult) -> String {
    let mut parts = vec![format!("Lot {}", result.id)];
    parts.extend(plan.came().map(|day| format!("came {day}")));
    parts.extend(plan.due().map(|day| format!("due {day}")));
    parts.push(format!(
        "{} {} of greasy wool",
        plan.say.mass(result.intake.0),
        plan.say.mass_unit()
    ));
    if !plan.description().is_empty() {
        parts.push(plan.description().to_owned());
    }
    parts.join(" · ")
}

/// The band of what comes out of a stage, as the scale reads it with as much water, oil and dirt in it as is
/// planned.
fn on_scale(stage: &StageResult) -> Option<super::Band> {
    let factor = stage.stock.total() / stage.stated_mass;
    stage.band.filter(|_| factor.is_finite()).map(|band| band.times(factor))
}
