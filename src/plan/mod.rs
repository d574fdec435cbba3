//! The plan: a lot file in, what it makes, what to set, how sure it is.

mod advice;
#[cfg(feature = "sheet")]
mod book;
mod chain;
mod chance;
mod changeover;
mod check;
mod cost;
mod counts;
mod divided;
mod doubt;
mod draft;
mod file;
mod given;
mod goods;
mod growers;
mod guide;
#[cfg(feature = "serde")]
mod json;
mod lot;
mod lots;
mod needed;
mod new;
mod papers;
mod possible;
mod quote;
mod reader;
mod report;
mod result;
mod say;
mod screen;
mod section;
mod split;
mod stage;
mod stock;
mod tariff;
mod tree;
mod value;

pub use crate::table::{Align, Block, Report};
pub use chance::{Layer, Scale, Spread};
pub use changeover::Changeover;
pub use counts::load_counts;
pub use doubt::Doubt;
pub use given::Given;
pub use growers::Grower;
pub use guide::{Key, TableCard, guide, tables};
#[cfg(feature = "serde")]
pub use json::SCHEMA;
pub use lots::{MOST_LOTS, Run};
pub use needed::Needed;
pub use new::{LOT_QUESTIONS, MILL_QUESTIONS, Question, new_lot, new_mill};
pub use papers::{Paper, TABLES, mill_tables, paper_path, write_mill_tables};
pub use quote::{PaysFrom, Quote, QuoteGood, QuoteLine, Terms};
pub use report::Extent;
pub use result::{Account, Band, GoodResult, PlanResult, Samples, Spare, StageResult};
pub use split::Split;
pub use stage::Setting;
pub use stock::{PARTS, Stock, part_name};

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use sha2::{Digest, Sha256};

use crate::error::{Error, Result, did_you_mean};
use crate::files::{not_too_large, read_text};
use crate::words::one_line;
use draft::Draft;
use file::File;
use say::Say;
use section::Section;
pub use stage::{STAGES, StageCard};
use tariff::Tariffs;
use tree::Tree;
use tree::read::Reading;
use tree::routes::Desk;

/// A text that a plan is read from, and what messages call it.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Source {
    /// What messages call it.
    pub name: String,
    /// The text.
    pub text: String,
}

/// A plan for a lot. It does not change; running it gives a result.
#[derive(Clone, Debug)]
pub struct Plan {
    name: String,
    description: String,
    id: String,
    came: Option<String>,
    due: Option<String>,
    sources: Arc<Sources>,
    given: Vec<Given>,
    tree: Tree,
    label_regain: usize,
    /// The mill's colours, from light to dark.
    colours: Vec<String>,
    say: Say,
    tariffs: Tariffs,
    warnings: Vec<String>,
}

/// What a plan was read from.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
struct Sources {
    lot: Source,
    mill: Option<Source>,
    /// Values that a call put over the files.
    values: String,
}

impl Plan {
    /// Reads a lot file, and the mill file that it names.
    pub fn load(path: &Path) -> Result<Plan> {
        let text = read_text(path)?;
        Plan::parse(&text, &path.display().to_string())
    }

    /// Reads the text of a lot file; `name` is what messages call it. A mill file that it names is looked
    /// for beside it; `handbook` is the mill that [`new_mill`] writes of no words.
    pub fn parse(text: &str, name: &str) -> Result<Plan> {
        Plan::from_sources(Source { name: name.to_owned(), text: text.to_owned() }, None, "")
    }

    /// Reads a lot and its mill from texts; `values` are lines such as `card.loss = "6 %"` that hold
    /// before both.
    pub fn from_sources(lot: Source, mill: Option<Source>, values: &str) -> Result<Plan> {
        not_too_large(lot.text.len() as u64).map_err(|e| e.at(&lot.name))?;
        let file = File::parse("lot", &lot.name, &lot.text).map_err(Error::readable)?;
        let root = Section::of(&file);
        let named = root.line_or_none("mill").map_err(Error::readable)?;
        let mill = match (mill, named) {
            (Some(mill), _) => Some(mill),
            (None, None) => None,
            (None, Some(name)) if name == new::HANDBOOK => Some(new::handbook_mill()?),
            (None, Some(name)) => {
                let beside = Path::new(&lot.name).parent().unwrap_or(Path::new(""));
                let path: PathBuf = beside.join(&name);
                let text = read_text(&path).map_err(|e| root.placed("mill", &e))?;
                Some(Source { name: path.display().to_string(), text })
            }
        };
        let nothing = String::new();
        let (mill_name, mill_text) =
            mill.as_ref().map_or(("mill", &nothing), |mill| (&mill.name, &mill.text));
        not_too_large(mill_text.len() as u64).map_err(|e| e.at(mill_name))?;
        let mill_file = File::parse("mill", mill_name, mill_text).map_err(Error::readable)?;
        let over = File::parse("values", "values", values).map_err(Error::readable)?;
        let root = if values.is_empty() { root } else { root.below(Section::of(&over)) };
        let desk = Desk::new(root, Section::of(&mill_file));
        let sources = Sources { lot, mill, values: values.to_owned() };
        Plan::read(&desk, sources)
    }

    fn read(desk: &Desk<'_>, sources: Sources) -> Result<Plan> {
        // The counts of the files may be written in them; they are of these files alone.
        let _own = counts::counts_here(&desk.both.section("counts")?).map_err(Error::readable)?;
        let mut draft = Draft::default();
        let lot = desk.lot.section("lot")?;
        let title = lot.line_or_none("name");
        let title = draft.note(title).flatten().unwrap_or_else(|| stem(&sources.lot.name));
        let description = draft.note(lot.line_or_none("description")).flatten().unwrap_or_default();
        let id = draft.note(lot.line_or_none("id")).flatten();
        let came = draft.note(lot.date("came")).flatten();
        let due = draft.note(lot.date("due")).flatten();
        let section = desk.both.section("print")?;
        let say = draft.note(Say::read(&section).and_then(|say| section.finish().map(|()| say)));
        let colours = desk.both.section("colours").and_then(|colours| {
            let order = colours.texts("order")?;
            colours.finish().map(|()| order.unwrap_or_default())
        });
        let colours = draft.note(colours);
        let mut tariffs = Tariffs::read(desk, &mut draft);
        let tree = Reading::new(desk, &mut draft).read().map_err(Error::readable_lines)?;
        tariffs.settle(desk, &tree, &mut draft);
        draft.faults()?;
        let plan = Plan {
            label_regain: tree.yarns[0].label.regain.inner().0,
            id: id.unwrap_or_else(|| stem(&sources.lot.name)),
            name: title,
            description,
            came,
            due,
            sources: Arc::new(sources),
            given: draft.given,
            colours: colours.unwrap_or_default(),
            tree,
            say: say.unwrap_or_default(),
            tariffs,
            warnings: draft.warnings,
        };
        plan.check().map_err(Error::readable)?;
        Ok(plan)
    }

    /// A plan made in code: the name of each value, such as `lot.greasy` or `goods.hank`, and what one would
    /// write for it in a lot file; with a mill or without.
    ///
    /// ```
    /// use hankwise::plan::{Plan, Run, Source};
    ///
    /// let text = include_str!("../../examples/mill.toml").to_owned();
    /// let mill = Source { name: "mill.toml".to_owned(), text };
    /// let values = [("lot.greasy", "9 kg"), ("lot.clean", "58 %"), ("yarn.two-fold.ends", "2"), ("goods.hank", "rest")];
    /// let result = Plan::from_values(&values, Some(mill))?.run(&Run::planned())?;
    /// assert_eq!(result.goods[0].planned, 42.0);
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    ///
    /// # Errors
    /// Where a lot file of these values would be refused.
    pub fn from_values(values: &[(&str, &str)], mill: Option<Source>) -> Result<Plan> {
        let text = put("", values)?;
        Plan::from_sources(Source { name: "values".to_owned(), text }, mill, "")
    }

    /// The same plan with some values changed: the name of each, such as `card.loss`, and what to write for
    /// it, such as `6 %`.
    ///
    /// ```
    /// use hankwise::plan::{Plan, Run};
    ///
    /// let plan = Plan::load("examples/first-lot.toml".as_ref())?;
    /// let worse = plan.with_values(&[("card.loss", "9 %")])?;
    /// let hanks = |plan: &Plan| Ok(plan.run(&Run::planned())?.goods[1].planned);
    /// assert!(hanks(&worse)? < hanks(&plan)?);
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    ///
    /// # Errors
    /// Where a name is none of the plan's, or a value is not one.
    pub fn with_values(&self, values: &[(&str, &str)]) -> Result<Plan> {
        let text = put(&self.sources.values, values)?;
        Plan::from_sources(self.sources.lot.clone(), self.sources.mill.clone(), &text)
    }

    /// The name of the lot.
    pub fn name(&self) -> &str {
        &self.name
    }
    /// What the file says of the lot.
    pub fn description(&self) -> &str {
        &self.description
    }
    /// The file that the plan was read from.
    pub fn file(&self) -> &str {
        &self.sources.lot.name
    }
    /// What the lot is filed under: its id, or the name of its file.
    pub fn id(&self) -> &str {
        &self.id
    }
    /// The day on which the lot came, where it is said, such as `2026-05-04`.
    pub fn came(&self) -> Option<&str> {
        self.came.as_deref()
    }
    /// The day on which it is due, where it is said.
    pub fn due(&self) -> Option<&str> {
        self.due.as_deref()
    }
    /// The text of the lot file.
    pub fn text(&self) -> &str {
        &self.sources.lot.text
    }
    /// The mill file, where the lot names one.
    pub fn mill(&self) -> Option<&Source> {
        self.sources.mill.as_ref()
    }
    /// What was put over the files, as TOML; empty where nothing was.
    pub fn values(&self) -> &str {
        &self.sources.values
    }
    /// SHA-256 of the text of the files, in hexadecimal digits.
    pub fn hash(&self) -> String {
        let mut digest = Sha256::new_with_prefix(self.sources.lot.text.as_bytes());
        let mill = self.sources.mill.iter().map(|mill| mill.text.as_bytes());
        for more in mill.chain([self.sources.values.as_bytes()]) {
            digest.update(more);
        }
        let digits = digest.finalize();
        digits.iter().fold(String::new(), |mut text, byte| {
            let _ = write!(text, "{byte:02x}");
            text
        })
    }
    /// The values that the plan rests on.
    pub fn given(&self) -> &[Given] {
        &self.given
    }
    /// The goods and how many of each were promised.
    pub fn promise(&self) -> Vec<(&str, Option<u32>)> {
        self.tree.goods.iter().map(|g| (g.name.as_str(), g.promised)).collect()
    }
    /// What is unusual about the values.
    pub fn warnings(&self) -> &[String] {
        &self.warnings
    }

    /// The place of a good, by name.
    fn good(&self, name: &str) -> Result<usize> {
        self.tree.goods.iter().position(|g| g.name == name).ok_or_else(|| {
            let names: Vec<&str> = self.tree.goods.iter().map(|g| g.name.as_str()).collect();
            let near = did_you_mean(name, names.iter().copied())
                .map(|n| format!(" Did you mean '{n}'?"))
                .unwrap_or_default();
            Error::plan(format!(
                "{} has no goods '{name}'; it has {}.{near}",
                self.file(),
                names.join(", ")
            ))
        })
    }
}

/// The name of a file without its folder and ending, in one line.
fn stem(name: &str) -> String {
    let stem = Path::new(name).file_stem().map_or(name.into(), |stem| stem.to_string_lossy());
    one_line(&stem).into_owned()
}

/// A TOML text with some values put into it.
fn put(text: &str, values: &[(&str, &str)]) -> Result<String> {
    let mut document: toml_edit::DocumentMut =
        text.parse().map_err(|e| Error::plan(format!("values: {e}")))?;
    for (name, value) in values {
        let mut table = document.as_table_mut();
        let parts: Vec<&str> = name.split('.').collect();
        let (last, path) = parts.split_last().unwrap_or((name, &[]));
        for part in path {
            let item = table.entry(part).or_insert_with(toml_edit::table);
            let Some(inner) = item.as_table_mut() else {
                return Err(Error::plan(format!("values: {name}: '{part}' is a value itself")));
            };
            table = inner;
        }
        table.insert(last, written(value));
    }
    Ok(document.to_string())
}

/// A value as one would write it in a file: numbers and lists as they are, all else a text.
fn written(value: &str) -> toml_edit::Item {
    let plain = value.trim();
    let parsed = plain.parse::<toml_edit::Value>().ok().filter(|v| !v.is_datetime());
    toml_edit::Item::Value(parsed.unwrap_or_else(|| plain.into()))
}
