//! The plan: a lot file in, what it makes, what to set, how sure it is.

mod advice;
#[cfg(feature = "sheet")]
mod book;
mod chain;
mod chance;
mod check;
mod cost;
mod counts;
mod doubt;
mod file;
mod given;
mod goods;
#[cfg(feature = "serde")]
mod json;
mod lot;
mod lots;
mod needed;
mod page;
mod possible;
mod report;
mod result;
mod say;
mod screen;
mod stage;
mod stock;
mod value;

pub use crate::table::{Align, Block, Report};
pub use chance::{Layer, Scale, Spread};
pub use counts::load_counts;
pub use doubt::Doubt;
pub use given::Given;
#[cfg(feature = "serde")]
pub use json::SCHEMA;
pub use lots::{MOST_LOTS, Run};
pub use needed::Needed;
pub use report::Extent;
pub use result::{Account, Band, GoodResult, PlanResult, Samples, Spare, StageResult};
pub use stage::Setting;
pub use stock::{PARTS, Stock, part_name};

use std::fmt::Write as _;
use std::path::Path;

use sha2::{Digest, Sha256};

use crate::calculation::Place;
use crate::error::{Error, Result, did_you_mean};
use crate::files::{not_too_large, read_text};
use crate::words::one_line;
use file::{Draft, File};
use goods::{Good, Loom, Machines, Reel};
use lot::{Fleece, Labelled, Yarn};
use say::Say;
use stage::AnyStage;
pub use stage::{STAGES, StageCard};

/// The order of the stages where a lot file names none.
pub const ROUTE: [&str; 9] =
    ["sort", "scour", "dust", "oil", "tease", "card", "mule", "twister", "hank-scour"];

/// What may be at the head of a lot file beside the stages.
const TABLES: [&str; 11] =
    ["route", "counts", "lot", "label", "yarn", "reel", "cone", "loom", "finish", "goods", "print"];

/// A plan for a lot. It does not change; running it gives a result.
#[derive(Clone, Debug)]
pub struct Plan {
    name: String,
    description: String,
    file: String,
    text: String,
    given: Vec<Given>,
    fleece: Fleece<Place>,
    label: Labelled<Place>,
    yarn: Yarn<Place>,
    stages: Vec<AnyStage>,
    machines: Machines,
    goods: Vec<Good>,
    say: Say,
    warnings: Vec<String>,
}

impl Plan {
    /// Reads a lot file.
    pub fn load(path: &Path) -> Result<Plan> {
        let text = read_text(path)?;
        Plan::parse(&text, &path.display().to_string())
    }

    /// Reads the text of a lot file; `name` is what messages call it.
    pub fn parse(text: &str, name: &str) -> Result<Plan> {
        not_too_large(text.len() as u64).map_err(|e| e.at(name))?;
        Plan::read(text, name).map_err(Error::readable)
    }

    fn read(text: &str, name: &str) -> Result<Plan> {
        let file = File::parse(name, text)?;
        let root = file.root();
        // First of all: a misspelt table would else be called missing.
        root.only(TABLES.iter().chain(stage::NAMES).copied())?;
        // The counts of the file may be written in them; they are of this file alone.
        let _own = counts::counts_here(&root.section("counts")?)?;
        let mut draft = Draft::default();

        let lot = root.section("lot")?;
        let title = lot.text("name", "the name of the lot", "\"Lot 12\"")?;
        let description = lot.text_or_none("description")?.unwrap_or_default();
        let fleece = lot.read(&mut draft, |reader| Fleece::take(reader))?;
        lot.finish()?;
        let section = root.section("print")?;
        let say = Say::read(&section)?;
        section.finish()?;
        let section = root.section("label")?;
        let label = section.read(&mut draft, |reader| Labelled::take(reader))?;
        section.finish()?;
        let section = root.section("yarn")?;
        let yarn_name = section.text("name", "the name of the yarn", "\"two-fold\"")?;
        let yarn = section.read(&mut draft, |reader| Yarn::take(reader))?;
        if draft.given[yarn.ends.inner().0].base() < 2.0 {
            return Err(section.error(
                "ends",
                "1 end is not a fold, and the route passes the twister; write 2 or more: \
                 singles as they come off the mule are not planned",
            ));
        }
        section.finish()?;

        let stages = read_route(&root, &mut draft)?;
        let machines = read_machines(&root, &mut draft)?;
        let goods = read_goods(&root, &machines, &yarn_name, &mut draft)?;
        root.finish()?;

        let plan = Plan {
            name: title,
            description,
            file: one_line(name).into_owned(),
            text: text.to_owned(),
            given: draft.given,
            fleece,
            label,
            yarn,
            stages,
            machines,
            goods,
            say,
            warnings: draft.warnings,
        };
        plan.check()?;
        Ok(plan)
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
        &self.file
    }
    /// The text of the file.
    pub fn text(&self) -> &str {
        &self.text
    }
    /// SHA-256 of the text of the file, in hexadecimal digits.
    pub fn hash(&self) -> String {
        let digits = Sha256::digest(self.text.as_bytes());
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
        self.goods.iter().map(|g| (g.name.as_str(), g.promised)).collect()
    }
    /// What is unusual about the values.
    pub fn warnings(&self) -> &[String] {
        &self.warnings
    }

    /// The place of a good, by name.
    fn good(&self, name: &str) -> Result<usize> {
        self.goods.iter().position(|g| g.name == name).ok_or_else(|| {
            let names: Vec<&str> = self.goods.iter().map(|g| g.name.as_str()).collect();
            let near = did_you_mean(name, names.iter().copied())
                .map(|n| format!(" Did you mean '{n}'?"))
                .unwrap_or_default();
            Error::plan(format!(
                "{} has no goods '{name}'; it has {}.{near}",
                self.file,
                names.join(", ")
            ))
        })
    }
}

fn read_route(root: &file::Section<'_>, draft: &mut Draft) -> Result<Vec<AnyStage>> {
    let route = root.texts("route")?;
    let names: Vec<String> =
        route.unwrap_or_else(|| ROUTE.iter().map(|s| (*s).to_owned()).collect());
    let mut stages = Vec::new();
    for (place, name) in names.iter().enumerate() {
        if names[..place].contains(name) {
            return Err(
                root.error("route", format!("'{name}' appears twice in the route; remove one"))
            );
        }
        let section = root.section(name)?;
        let Some(stage) = AnyStage::read(name, &section, draft)? else {
            let near = did_you_mean(name, stage::NAMES.iter().copied())
                .map_or_else(|| ".".to_owned(), |n| format!("; did you mean '{n}'?"));
            let known = stage::NAMES.join(", ");
            let message = format!("unknown stage '{name}'{near} Stages: {known}");
            return Err(root.error("route", message));
        };
        stages.push(stage);
        section.finish()?;
    }
    for needed in ["card", "mule", "twister"] {
        if !names.iter().any(|n| n == needed) {
            return Err(root.error(
                "route",
                format!("the route makes no yarn without '{needed}'; add it to the list"),
            ));
        }
    }
    for (place, stage) in stages.iter().enumerate() {
        let later = &names[place + 1..];
        if let Some(first) = stage.after().iter().find(|first| later.iter().any(|n| n == *first)) {
            let message = format!("'{}' cannot come before '{first}'; swap them", stage.name());
            return Err(root.error("route", message));
        }
    }
    let passed_by = |key: &String| stage::NAMES.contains(&key.as_str()) && !names.contains(key);
    if let Some(name) = root.keys().iter().find(|key| passed_by(key)) {
        return Err(
            root.error(name, format!("'{name}' is not in the route; add it, or remove the table"))
        );
    }
    Ok(stages)
}

fn read_machines(root: &file::Section<'_>, draft: &mut Draft) -> Result<Machines> {
    let reel = root.section("reel")?;
    let loom = root.section("loom")?;
    let (cone, finish) = (root.section("cone")?, root.section("finish")?);
    if let Some(alone) = [&cone, &finish].into_iter().find(|s| s.is_present() && !loom.is_present())
    {
        return Err(root
            .error(&alone.path, "this belongs to a loom; add a table [loom], or remove this one"));
    }
    let machines = Machines {
        reel: reel
            .is_present()
            .then(|| reel.read(draft, |reader| Reel::take(reader)))
            .transpose()?,
        loom: loom.is_present().then(|| Loom::read(&cone, &loom, &finish, draft)).transpose()?,
    };
    for section in [&reel, &loom, &cone, &finish] {
        section.finish()?;
    }
    Ok(machines)
}

fn read_goods(
    root: &file::Section<'_>,
    machines: &Machines,
    yarn: &str,
    draft: &mut Draft,
) -> Result<Vec<Good>> {
    let section = root.section("goods")?;
    let mut goods: Vec<Good> = Vec::new();
    for name in section.keys() {
        let one = section.section(&name)?;
        if TABLES.iter().chain(stage::NAMES).any(|taken| *taken == name)
            || ["promise", "spare"].contains(&name.as_str())
        {
            return Err(section.error(
                &name,
                "this name is taken; call the goods something else, such as [goods.scarf]",
            ));
        }
        let good = Good::read(&one_line(&name), &one, machines, yarn, draft)?;
        one.finish()?;
        if let Some(before) = goods.iter().find(|g| g.takes_rest) {
            return Err(section.error(
                &name,
                format!(
                    "'{}' takes the rest, so it must be last; move [goods.{}] to the end",
                    before.name, before.name
                ),
            ));
        }
        goods.push(good);
    }
    if goods.is_empty() {
        return Err(root.error(
            "goods",
            "nothing is promised; write a table such as [goods.hank] with kind = \"hank\", yarn, mass and want",
        ));
    }
    Ok(goods)
}
