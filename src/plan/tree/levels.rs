//! The tables of each level of a lot: written short where there is one, by name where there are several.

use super::read::{of_a_heap, of_a_yarn};
use super::routes::{Desk, Node, Stop};
use crate::error::{Result, did_you_mean};
use crate::plan::goods::GoodKind;
use crate::plan::section::Section;
use crate::words::one_line;

/// One list of stages for the whole lot, cut where the levels meet.
pub(in crate::plan) struct Line {
    pub(in crate::plan) fleece: Vec<String>,
    pub(in crate::plan) heap: Vec<String>,
    pub(in crate::plan) yarn: Vec<String>,
}

impl Line {
    /// After the sorting, and before the card.
    pub(in crate::plan) fn cut(route: &[String]) -> Line {
        let sorted = route.iter().position(|stage| stage == "sort").map_or(0, |place| place + 1);
        let first = ["card", "mule", "ring", "twister"];
        let carded = route.iter().position(|stage| first.contains(&stage.as_str()));
        let carded = carded.unwrap_or(route.len()).max(sorted);
        Line {
            fleece: route[..sorted].to_vec(),
            heap: route[sorted..carded].to_vec(),
            yarn: route[carded..].to_vec(),
        }
    }
}

/// A part of a level, by its name.
#[derive(Clone)]
pub(in crate::plan) struct Named<'d> {
    pub(in crate::plan) name: String,
    pub(in crate::plan) node: Node<'d>,
}

/// Names that mean something else.
const RESERVED: [&str; 7] = ["rest", "rejects", "held", "all", "promise", "spare", "values"];

/// Tables at the head of a lot that are no stages.
pub(in crate::plan) const HEADS: [&str; 16] = [
    "mill", "route", "counts", "lot", "label", "fleece", "heap", "yarn", "goods", "print", "room",
    "recipe", "colours", "tariff", "cost", "sample",
];

/// The machines after the yarn.
pub(in crate::plan) const AFTER_YARN: [&str; 4] = ["reel", "cone", "loom", "finish"];

impl<'d> Desk<'d> {
    /// A part of the tree of which nothing is written.
    pub(in crate::plan) fn empty(&self) -> Node<'d> {
        Node { lot: self.lot.nothing(), mill: self.lot.nothing() }
    }

    /// A table of a level: the lot's own and what it is like there, and the pattern of the mill.
    fn node(&self, level: &str, name: &str, own: Section<'d>) -> Result<Node<'d>> {
        let in_lot = self.lot.tables(level)?;
        let patterns = self.mill.tables(level)?;
        let mut node = Node { lot: own, mill: patterns.tables(name)? };
        let mut like = node.lot.line_or_none("like")?;
        let mut seen = vec![name.to_owned()];
        while let Some(other) = like {
            if seen.contains(&other) {
                let message = format!("'{name}' is like itself; name another, or remove it");
                return Err(node.lot.error("like", message));
            }
            let (here, pattern) = (in_lot.tables(&other)?, patterns.tables(&other)?);
            if !here.is_present() && !pattern.is_present() {
                let known: Vec<String> = in_lot.keys().into_iter().chain(patterns.keys()).collect();
                let near = did_you_mean(&other, known.iter().map(String::as_str))
                    .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
                return Err(node.lot.error("like", format!("there is no {level} '{other}'{near}")));
            }
            like = here.line_or_none("like")?;
            node.lot = node.lot.over(here);
            node.mill = node.mill.over(pattern);
            seen.push(other);
        }
        Ok(node)
    }

    fn check_names(&self, level: &str, all: &[Named<'_>], table: &Section<'_>) -> Result<()> {
        let keys = self.both.keys();
        let taken = |name: &str| {
            RESERVED.contains(&name)
                || HEADS.contains(&name)
                || keys.iter().any(|key| key == name)
                || super::super::stage::NAMES.contains(&name)
        };
        match all.iter().find(|named| taken(&named.name)) {
            None => Ok(()),
            Some(named) => Err(table.error(
                &named.name,
                format!(
                    "this name is taken; call the {level} something else, such as [{level}.{}-a]",
                    named.name
                ),
            )),
        }
    }

    /// The parts of a level: those of the keys `own` are written short, with no name.
    fn level(&self, level: &str, own: &[&str]) -> Result<Vec<Named<'d>>> {
        let table = self.lot.section(level)?;
        let stage = |key: &String| {
            (super::super::stage::NAMES.contains(&key.as_str()) || self.both.has(key))
                && table.tables(key).is_ok_and(|t| !own.iter().any(|k| t.has(k)))
        };
        let short = |key: &&String| own.contains(&key.as_str()) || stage(key);
        let keys = table.keys();
        let (first_short, first_named) =
            (keys.iter().find(short), keys.iter().find(|key| !short(key)));
        if let (Some(short), Some(named)) = (first_short, first_named)
            && !table.tables(named)?.is_present()
        {
            // Neither a key nor a table: more likely misspelt.
            let known: Vec<&str> = own.to_vec();
            let _ = short;
            return Err(table.unknown(named, &known));
        }
        if let (Some(short), Some(named)) = (first_short, first_named) {
            return Err(table.error(
                named,
                format!(
                    "[{level}] is written short, with '{short}' in it; write [{level}.NAME] for each \
                     instead, or remove one of the two"
                ),
            ));
        }
        if !table.is_present() {
            return Ok(Vec::new());
        }
        if first_named.is_none() {
            let name = table.line_or_none("name")?.unwrap_or_else(|| level.to_owned());
            let own = self.lot.section(level)?;
            return Ok(vec![Named { node: self.node(level, &name, own)?, name }]);
        }
        let mut all = Vec::new();
        for name in keys {
            let node = self.node(level, &name, table.section(&name)?)?;
            all.push(Named { name: one_line(&name).into_owned(), node });
        }
        self.check_names(level, &all, &table)?;
        Ok(all)
    }

    pub(in crate::plan) fn fleeces(&self) -> Result<Vec<Named<'d>>> {
        let table = self.lot.section("fleece")?;
        let mut all = Vec::new();
        for (name, section) in table.sections()? {
            let node = self.node("fleece", &name, section)?;
            all.push(Named { name: one_line(&name).into_owned(), node });
        }
        self.check_names("fleece", &all, &table)?;
        Ok(all)
    }
    pub(in crate::plan) fn heaps(&self) -> Result<Vec<Named<'d>>> {
        self.level("heap", &of_a_heap())
    }
    pub(in crate::plan) fn yarns(&self) -> Result<Vec<Named<'d>>> {
        self.level("yarn", &of_a_yarn())
    }

    /// The tables of the goods; `throw = 12` and `hank = "rest"` have none in the lot.
    pub(in crate::plan) fn goods(&self) -> Result<Vec<Named<'d>>> {
        let table = self.lot.section("goods")?;
        let mut all = Vec::new();
        for name in table.keys() {
            let plain = table.plain(&name);
            let mut own = table.tables(&name)?.called(format!("goods.{}", one_line(&name)));
            if let Some(at) = plain {
                match (at.item.is_integer(), at.item.as_str()) {
                    // What is put over the files has it in a table.
                    (true, _) if own.has("promised") => {}
                    (true, _) => own.mean("promised", at),
                    (false, Some("rest")) => own.mean("takes_rest", at),
                    _ => {
                        return Err(table.error(
                            &name,
                            "write how many are promised, such as 12, or \"rest\", or a table",
                        ));
                    }
                }
            }
            let node = self.node("goods", &name, own)?;
            all.push(Named { name: one_line(&name).into_owned(), node });
        }
        if all.is_empty() {
            return Err(self.lot.error(
                "goods",
                "nothing is promised; write a table such as [goods.hank] with kind = \"hank\", yarn, \
                 mass and promised",
            ));
        }
        self.check_names("goods", &all, &table)?;
        Ok(all)
    }

    /// Whether another yarn is made from this one.
    pub(in crate::plan) fn goes_on(&self, yarn: &str) -> Result<bool> {
        let yarns = self.yarns()?;
        let mut from = yarns.iter().map(|other| other.node.keys().line_or_none("from"));
        from.try_fold(false, |found, name| Ok(found || name?.as_deref() == Some(yarn)))
    }

    /// The stages that goods go through.
    pub(in crate::plan) fn good_stages(
        &self,
        good: &Named<'d>,
        kind: &GoodKind,
    ) -> Result<Vec<Stop>> {
        let keys = good.node.keys();
        let names = match keys.texts("route")? {
            Some(names) => names,
            None => self.instead(&keys, self.usual_of_goods(&kind.kind)?)?,
        };
        self.goods_stops(&names, &keys)
    }

    /// Refuses tables at the head of the lot that are neither known nor stages of the mill's own.
    pub(in crate::plan) fn heads(&self) -> Result<()> {
        let known: Vec<&str> =
            HEADS.iter().chain(super::super::stage::NAMES).chain(&AFTER_YARN).copied().collect();
        // The second of two alike in a route is called `tease-2`.
        let first = |key: &str| match key.rsplit_once('-') {
            Some((name, times)) if times.parse::<u32>().is_ok() => known.contains(&name),
            _ => false,
        };
        let own = |key: &str| self.both.quotes(key) || first(key);
        let strange =
            |key: &&String| !known.contains(&key.as_str()) && !self.mill.has(key) && !own(key);
        if let Some(key) = self.lot.keys().iter().find(strange) {
            return Err(self.lot.unknown(key, &known));
        }
        // A machine that no lot uses yet says what it is.
        let machine = |key: &str| {
            let table = self.mill.tables(key);
            table.is_ok_and(|table| table.has("like") || table.has("kind"))
        };
        let strange = |key: &&String| {
            let known = known.contains(&key.as_str());
            key.as_str() == "mill" || (!known && !own(key) && !machine(key))
        };
        let keys = self.mill.keys();
        keys.iter().find(strange).map_or(Ok(()), |key| Err(self.mill.unknown(key, &known[1..])))
    }

    /// Refuses tables of the lot that no route names.
    pub(in crate::plan) fn unused(&self) -> Result<()> {
        let named = self.named();
        let keys = self.lot.keys();
        let unused = |key: &&String| !HEADS.contains(&key.as_str()) && !named.contains(key);
        let Some(key) = keys.iter().find(unused) else { return Ok(()) };
        let message = if AFTER_YARN.contains(&key.as_str()) {
            "no goods go over this; add goods that do, or remove the table".to_owned()
        } else {
            format!("'{key}' is not in the route; add it, or remove the table")
        };
        Err(self.lot.error(key, message))
    }
}
