//! Where the stages of a lot are written, and which of them each part goes through.

use super::Pass;
use crate::calculation::{Input, Inputs, Place, Presence};
use crate::error::{Error, Result, did_you_mean};
use crate::plan::draft::Draft;
use crate::plan::guide::{OF_A_STAGE, names};
use crate::plan::section::Section;
use crate::plan::stage::{AnyStage, NAMES};
use crate::quantity::{Duration, Kind};
use crate::words::one_line;

/// Usual routes, where neither the lot nor the mill names one.
const FLEECE: [&str; 1] = ["sort"];
const SORT: [&str; 2] = ["scour", "dust"];
const HEAP: [&str; 2] = ["oil", "tease"];
const YARN: [&str; 4] = ["card", "mule", "twister", "hank-scour"];
const GOODS: [(&str, &[&str]); 5] = [
    ("hank", &["reel"]),
    ("ball", &[]),
    ("cone", &[]),
    ("woven", &["cone", "loom", "finish"]),
    ("piece", &[]),
];

/// The kinds of machine after the yarn.
const AFTER_YARN: [&str; 5] = ["reel", "cone", "loom", "finish", "loss"];

/// A share of a recipe.
const INGREDIENT: Input = Input {
    name: "ingredient",
    symbol: "p_i",
    meaning: "to weigh out, on clean dry goods",
    kind: Kind::OnFibre,
    usual: (0.0, 1.0),
    basis: "",
    like: "3 %",
    presence: Presence::Needed,
    zero: true,
    whole: false,
};

/// How long it takes to change over.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Changeover<N> {
    /// time to change over to another lot or yarn
    #[q("τ_c", 0.0..=24.0, zero, like = "50 min")]
    pub(in crate::plan) changeover: Option<Duration<N>>,
}

/// The files of a plan, and the routes that they write.
pub(in crate::plan) struct Desk<'d> {
    /// The lot, and what a call puts over it.
    pub(in crate::plan) lot: Section<'d>,
    pub(in crate::plan) mill: Section<'d>,
    /// The lot over the mill.
    pub(in crate::plan) both: Section<'d>,
    /// Every stage named in a route.
    named: std::cell::RefCell<Vec<String>>,
    /// Every machine in a route, with the tables that it is read from.
    machines: std::cell::RefCell<Vec<(String, Vec<String>)>>,
}

/// The tables of one part of the tree: its own in the lot, its pattern in the mill.
#[derive(Clone)]
pub(in crate::plan) struct Node<'d> {
    pub(in crate::plan) lot: Section<'d>,
    pub(in crate::plan) mill: Section<'d>,
}

impl<'d> Node<'d> {
    /// Its keys, the lot's first.
    pub(in crate::plan) fn keys(&self) -> Section<'d> {
        self.lot.clone().over(self.mill.clone())
    }
}

/// A stage that a route names.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Stop {
    pub(in crate::plan) machine: String,
    /// The tables that it is read from, in the order in which they hold.
    chain: Vec<String>,
    kind: &'static str,
}

impl Stop {
    pub(in crate::plan) fn kind(&self) -> &'static str {
        self.kind
    }
}

impl<'d> Desk<'d> {
    pub(in crate::plan) fn new(lot: Section<'d>, mill: Section<'d>) -> Self {
        let both = lot.clone().over(mill.clone());
        let (named, machines) = Default::default();
        Desk { lot, mill, both, named, machines }
    }

    /// The stages named so far.
    pub(in crate::plan) fn named(&self) -> Vec<String> {
        self.named.borrow().clone()
    }

    /// The machines of the routes read so far, each with the tables that it is read from.
    pub(in crate::plan) fn machines(&self) -> Vec<(String, Vec<String>)> {
        self.machines.borrow().clone()
    }

    /// A table by its name, and those that it is like: `mule-2`, `mule`.
    fn chain(&self, name: &str) -> Result<Vec<String>> {
        let mut chain = vec![name.to_owned()];
        loop {
            let last = &chain[chain.len() - 1];
            let table = self.both.section(last)?;
            let Some(like) = table.text_or_none("like")? else { return Ok(chain) };
            if chain.contains(&like) {
                let message = format!("'{name}' is like itself; name another stage, or remove it");
                return Err(table.error("like", message));
            }
            if !self.both.has(&like) {
                return Err(table.error("like", format!("there is no table [{like}] to be like")));
            }
            chain.push(like);
        }
    }

    /// The kind of stage of a table.
    fn kind(&self, chain: &[String], kinds: &[&'static str]) -> Result<&'static str> {
        for name in chain {
            let table = self.both.section(name)?;
            if let Some(kind) = table.line_or_none("kind")? {
                let known = kinds.iter().find(|known| **known == kind);
                return known.copied().ok_or_else(|| {
                    table.error("kind", format!("write one of {}, not '{kind}'", kinds.join(", ")))
                });
            }
            if let Some(known) = kinds.iter().find(|known| *known == name) {
                return Ok(known);
            }
        }
        Ok("loss")
    }

    /// The kind of machine of a table; none where it is not a machine that has one.
    pub(in crate::plan) fn kind_of(&self, name: &str) -> Result<Option<&'static str>> {
        let kinds: Vec<&'static str> = NAMES.iter().chain(&AFTER_YARN).copied().collect();
        let kind = self.kind(&self.chain(name)?, &kinds)?;
        Ok(Some(kind).filter(|kind| *kind != "loss"))
    }
    /// The stages of a list of names; `at` is where the list is written.
    pub(in crate::plan) fn stops(&self, names: &[String], at: &Section<'_>) -> Result<Vec<Stop>> {
        self.stops_of(names, at, NAMES)
    }
    /// The stages of goods: those after the yarn.
    pub(in crate::plan) fn goods_stops(
        &self,
        names: &[String],
        at: &Section<'_>,
    ) -> Result<Vec<Stop>> {
        self.stops_of(names, at, &AFTER_YARN)
    }
    fn stops_of(
        &self,
        names: &[String],
        at: &Section<'_>,
        kinds: &[&'static str],
    ) -> Result<Vec<Stop>> {
        let mut stops: Vec<Stop> = Vec::new();
        for name in names {
            let before = names.iter().take_while(|n| !std::ptr::eq(*n, name));
            let times = before.filter(|n| *n == name).count() + 1;
            let again = format!("{name}-{times}");
            let (machine, chain) = match times {
                1 => (name.clone(), self.chain(name)?),
                // A stage that stands twice has a table of its own only where it says so.
                _ if self.both.has(&again) => (again.clone(), self.chain(&again)?),
                _ => (again, self.chain(name)?),
            };
            let kind = self.kind(&chain, kinds)?;
            if kind == "loss" && !chain.iter().any(|table| self.both.has(table)) {
                let own: Vec<String> = self.both.keys();
                let known: Vec<&str> = kinds.iter().copied().filter(|n| *n != "loss").collect();
                let near =
                    did_you_mean(name, known.iter().copied().chain(own.iter().map(String::as_str)))
                        .map_or_else(|| ".".to_owned(), |n| format!("; did you mean '{n}'?"));
                let message = format!(
                    "unknown stage '{name}'{near} Stages: {}, or any of your own with a table \
                     [{name}] and its loss",
                    known.join(", ")
                );
                return Err(at.error("route", message));
            }
            self.named.borrow_mut().extend(chain.iter().cloned());
            self.machines.borrow_mut().push((machine.clone(), chain.clone()));
            stops.push(Stop { machine, chain, kind });
        }
        Ok(stops)
    }

    /// The table of a stage, as it holds in a part of the tree.
    pub(in crate::plan) fn stage(&self, node: &Node<'d>, stop: &Stop) -> Result<Section<'d>> {
        let sample = self.lot.section("sample")?;
        let mut section: Option<Section<'d>> = None;
        let mut add = |next: Section<'d>| {
            section = Some(match section.take() {
                None => next,
                Some(before) => before.over(next),
            });
        };
        for (place, name) in stop.chain.iter().enumerate() {
            if place == 0 {
                add(node.lot.section(&stop.machine)?);
            }
            add(self.lot.section(name)?);
            add(sample.section(name)?);
            for change in self.changes(name)? {
                add(change);
            }
            if place == 0 {
                add(node.mill.section(&stop.machine)?);
            }
            add(self.mill.section(name)?);
        }
        let mut section = section.unwrap_or_else(|| self.lot.clone()).called(&stop.machine);
        if section.first_of(&["regain", "room"]) == Some("room")
            && let Some(room) = section.text_or_none("room")?
        {
            let rooms = self.both.section("room")?;
            let at = rooms.at(&room).ok_or_else(|| {
                section.error(
                    "room",
                    format!("there is no '{room}' in [room]; write {room} = \"16 %\" there"),
                )
            })?;
            section.mean("regain", at);
        }
        if section.first_of(&["stays", "recipe"]) == Some("recipe")
            && let Some(recipe) = section.text_or_none("recipe")?
        {
            let recipes = self.both.section("recipe")?;
            let at = recipes.section(&recipe)?.at("stays").ok_or_else(|| {
                let message = format!(
                    "there is no [recipe.{recipe}] that says what stays on; write stays = \"2 %\" in it"
                );
                section.error("recipe", message)
            })?;
            section.mean("stays", at);
        }
        section.know(names(&OF_A_STAGE));
        section.know(["changeover"]);
        Ok(section)
    }

    /// What changed at a machine of the mill before the lot came, the latest first.
    fn changes(&self, machine: &str) -> Result<Vec<Section<'d>>> {
        let came = self.lot.section("lot")?.date("came")?;
        let mut all = Vec::new();
        for change in self.mill.section(machine)?.list("changed") {
            let date = change
                .date("date")?
                .ok_or_else(|| change.missing("date", "the day of the change", "2026-03-02"))?;
            change.text("what", "what was changed", "\"new clothing\"")?;
            if came.as_ref().is_none_or(|came| date <= *came) {
                all.push((date, change));
            }
        }
        all.sort_by(|a, b| b.0.cmp(&a.0));
        Ok(all.into_iter().map(|(_, change)| change).collect())
    }

    /// Reads the stages of a part of the tree.
    pub(in crate::plan) fn passes(
        &self,
        node: &Node<'d>,
        stops: &[Stop],
        draft: &mut Draft,
    ) -> Vec<Pass> {
        let mut passes = Vec::new();
        for stop in stops {
            let read = self.pass(node, stop, draft);
            passes.extend(draft.note(read));
        }
        passes
    }

    fn pass(&self, node: &Node<'d>, stop: &Stop, draft: &mut Draft) -> Result<Pass> {
        let section = self.stage(node, stop)?;
        let stage = AnyStage::read(stop.kind, &section, draft)?
            .ok_or_else(|| section.wrong("unknown kind of stage; write kind = \"loss\""))?;
        let recipe = self.recipe(&section, draft)?;
        let craft = ["look", "listen", "feel"].map(|key| (key, section.line_or_none(key)));
        let craft = craft
            .into_iter()
            .filter_map(|(key, said)| said.map(|said| Some((key, said?))).transpose())
            .collect::<Result<Vec<_>>>()?;
        let changeover = section.read(draft, |reader| Changeover::take(reader))?.changeover;
        let changeover = changeover.map(|hours| *hours.inner());
        let to = section.line_or_none("to")?;
        let uncleared = section.flag_or_none("cleared")? == Some(false);
        section.finish()?;
        Ok(Pass {
            stage,
            machine: stop.machine.clone(),
            of: String::new(),
            name: stop.machine.clone(),
            place: 0,
            keeps: true,
            uncleared,
            recipe,
            to,
            craft,
            changeover,
        })
    }

    /// What a recipe weighs out: every share in its table but what stays on.
    fn recipe(&self, stage: &Section<'d>, draft: &mut Draft) -> Result<Vec<(String, Place)>> {
        let Some(name) = stage.text_or_none("recipe")? else { return Ok(Vec::new()) };
        let table = self.both.section("recipe")?.section(&name)?;
        let mut all = Vec::new();
        for key in table.keys().into_iter().filter(|key| key != "stays" && key != "source") {
            let share = table.read(draft, |reader| reader.under(&key, &INGREDIENT))?;
            all.extend(share.map(|share| (one_line(&key).into_owned(), share)));
        }
        Ok(all)
    }

    /// The usual route of a level: the lot's, the mill's, the handbook's.
    pub(in crate::plan) fn usual(&self, level: &str) -> Result<Vec<String>> {
        let table = self.both.tables("route")?;
        let names = table.texts(level)?;
        Ok(names.unwrap_or_else(|| {
            let usual: &[&str] = match level {
                "fleece" => &FLEECE,
                "sort" => &SORT,
                _ => &HEAP,
            };
            usual.iter().map(|name| (*name).to_owned()).collect()
        }))
    }
    /// The usual route of yarn for a kind of goods, or the route of a name.
    pub(in crate::plan) fn usual_of_yarn(&self, kind: &str) -> Result<Vec<String>> {
        let table = self.both.tables("route")?.section("yarn")?;
        Ok(table.texts(kind)?.unwrap_or_else(|| YARN.map(str::to_owned).to_vec()))
    }
    /// Whether the mill or the lot has a route of yarn of a name.
    pub(in crate::plan) fn has_route(&self, name: &str) -> Result<bool> {
        let known = GOODS.iter().any(|(kind, _)| *kind == name);
        Ok(known || self.both.tables("route")?.section("yarn")?.has(name))
    }
    /// The usual route of goods of a kind.
    pub(in crate::plan) fn usual_of_goods(&self, kind: &str) -> Result<Vec<String>> {
        let table = self.both.tables("route")?.section("goods")?;
        let usual = GOODS.iter().find(|(known, _)| *known == kind).map_or(&[][..], |usual| usual.1);
        Ok(table.texts(kind)?.unwrap_or_else(|| usual.iter().map(|n| (*n).to_owned()).collect()))
    }
    /// Puts other machines into a usual route: `instead = { mule = "ring" }`.
    pub(in crate::plan) fn instead(
        &self,
        keys: &Section<'_>,
        route: Vec<String>,
    ) -> Result<Vec<String>> {
        let table = keys.section("instead")?;
        let mut route = route;
        for name in table.keys() {
            let other = table.text(&name, "the machine", "\"mule-2\"")?;
            let Some(place) = route.iter().position(|stage| *stage == name) else {
                let message =
                    format!("the usual route has no '{name}'; it is {}", route.join(", "));
                return Err(table.error(&name, message));
            };
            if !self.both.has(&other) {
                return Err(table.error(&name, format!("there is no machine [{other}]")));
            }
            route[place] = other;
        }
        Ok(route)
    }
}

/// The error of goods whose yarn goes more ways than one.
pub(in crate::plan) fn ways_differ(yarn: &Section<'_>, ways: &[(String, Vec<String>)]) -> Error {
    let ways: Vec<String> =
        ways.iter().map(|(kind, route)| format!("{kind}: {}", route.join(", "))).collect();
    yarn.error(
        "route",
        format!(
            "its goods go by different routes ({}); say which with route = \"hank\", or write the list",
            ways.join("; ")
        ),
    )
}
