//! Trial lots: plans that ask the machines of a mill for their settings, without a lot.

use crate::error::Result;
use crate::plan::file::File;
use crate::plan::result::PlanResult;
use crate::plan::section::Section;
use crate::plan::tree::routes::Desk;
use crate::plan::{Plan, Run, Source};

/// What the goods of a trial lot are called.
pub(super) const GOODS: &str = "trial";

/// The kinds of machine that spin: one may stand in the place of another.
const SPIN: [&str; 2] = ["mule", "ring"];

/// A mill that lots are tried in.
pub(super) struct Mill<'d> {
    source: &'d Source,
    desk: Desk<'d>,
}

/// A plan of a trial lot, and what it gives.
pub(super) struct Trial {
    pub(super) plan: Plan,
    pub(super) result: PlanResult,
}

impl<'d> Mill<'d> {
    pub(super) fn new(source: &'d Source, nothing: &'d File, file: &'d File) -> Mill<'d> {
        Mill { source, desk: Desk::new(Section::of(nothing), Section::of(file)) }
    }

    /// The machines, with the kind of each.
    pub(super) fn machines(&self) -> Result<Vec<(String, &'static str)>> {
        let mut all = Vec::new();
        for name in self.desk.mill.keys() {
            if self.desk.mill.plain(&name).is_none()
                && let Some(kind) = self.desk.kind_of(&name)?
            {
                all.push((name, kind));
            }
        }
        Ok(all)
    }
    /// The names of the tables in a table, such as the usual yarns.
    pub(super) fn names(&self, table: &str) -> Result<Vec<String>> {
        Ok(self.desk.mill.section(table)?.keys())
    }
    /// The usual hanks.
    pub(super) fn hanks(&self) -> Result<Vec<String>> {
        let goods = self.desk.mill.section("goods")?;
        let mut all = self.names("goods")?;
        all.retain(|name| {
            let kind = goods.section(name).and_then(|good| good.text_or_none("kind"));
            kind.is_ok_and(|kind| kind.as_deref() == Some("hank"))
        });
        Ok(all)
    }

    /// The route of a yarn over a machine: the usual one of hanks, with the machine in the place of its like.
    fn route(&self, machine: &str, kind: &str) -> Result<Option<Vec<String>>> {
        let mut route = self.desk.usual_of_yarn("hank")?;
        if route.iter().any(|stage| stage == machine) {
            return Ok(Some(route));
        }
        let alike = |other: &str| other == kind || (SPIN.contains(&other) && SPIN.contains(&kind));
        for stage in &mut route {
            if self.desk.kind_of(stage)?.is_some_and(alike) {
                machine.clone_into(stage);
                return Ok(Some(route));
            }
        }
        Ok(None)
    }

    /// A lot of a usual yarn, or of any, over a machine; `values` hold before the mill's. Nothing where no
    /// usual route has such a machine.
    pub(super) fn over(
        &self,
        (machine, kind): (&str, &str),
        yarn: Option<&str>,
        values: &str,
    ) -> Result<Option<Trial>> {
        let Some(route) = self.route(machine, kind)? else { return Ok(None) };
        let spec = if yarn.is_some() { "" } else { "count = \"300 tex\"\nends = 2\n" };
        let goods = "kind = \"ball\"\nmass = \"100 g\"\n";
        self.plan(yarn, &format!("route = {}\n{spec}", list(&route)), GOODS, goods, values)
            .map(Some)
    }
    /// A lot of a usual yarn that goes into usual hanks.
    pub(super) fn in_hanks(&self, yarn: &str, hank: &str) -> Result<Trial> {
        self.plan(Some(yarn), "route = \"hank\"\n", hank, "", "")
    }
    /// A lot that is woven on a loom.
    pub(super) fn woven(&self, loom: &str) -> Result<Option<Trial>> {
        let mut route = self.desk.usual_of_goods("woven")?;
        for stage in &mut route {
            if self.desk.kind_of(stage)? == Some("loom") {
                loom.clone_into(stage);
                let size = "kind = \"woven\"\nwidth = \"1 m\"\nlength = \"1 m\"\n";
                let goods = format!("{size}route = {}\n", list(&route));
                let yarn = "route = \"woven\"\ncount = \"300 tex\"\nends = 2\n";
                return self.plan(None, yarn, GOODS, &goods, "").map(Some);
            }
        }
        Ok(None)
    }

    fn plan(
        &self,
        yarn: Option<&str>,
        spec: &str,
        good: &str,
        goods: &str,
        values: &str,
    ) -> Result<Trial> {
        let (yarn, good) = (quoted(yarn.unwrap_or(GOODS)), quoted(good));
        let text = format!(
            "[lot]\ngreasy = \"100 kg\"\nclean = \"50 %\"\n[yarn.{yarn}]\n{spec}[goods.{good}]\n{goods}\
             takes_rest = true\n"
        );
        let lot = Source { name: "a trial lot".to_owned(), text };
        let plan = Plan::from_sources(lot, Some(self.source.clone()), values)?;
        let result = plan.run(&Run::planned())?;
        Ok(Trial { plan, result })
    }
}

impl Trial {
    /// A setting at a machine, in its base unit.
    pub(super) fn setting(&self, machine: &str, name: &str) -> Option<f64> {
        let key = format!(".{name}");
        let mut at = self.result.settings.iter().filter(|setting| setting.stage == machine);
        at.find(|setting| setting.key.ends_with(&key)).map(|setting| setting.value)
    }
}

/// A name or a text as TOML has it.
pub(super) fn quoted(text: &str) -> String {
    toml_edit::Value::from(text).to_string()
}

fn list(names: &[String]) -> String {
    let names: Vec<String> = names.iter().map(|name| quoted(name)).collect();
    format!("[{}]", names.join(", "))
}
