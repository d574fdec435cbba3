//! Which stages each part of a lot goes through, and what they are called.

use super::levels::Named;
use super::read::{CUT_MASS, CUT_SHARE, Reading, Rejects};
use super::routes::{Node, Stop, ways_differ};
use super::{Cut, From, Pass, Tree};
use crate::calculation::Place;
use crate::error::Result;
use crate::plan::goods::GoodKind;
use crate::plan::section::Section;
use crate::quantity::Kind;

impl<'d> Reading<'_, 'd> {
    /// The routes of fleeces, sorts and heaps.
    pub(super) fn wool_passes(&mut self, heaps: &[Named<'d>]) -> Result<()> {
        let desk = self.desk;
        let names = match &self.line {
            Some(line) => line.fleece.clone(),
            None => desk.usual("fleece")?,
        };
        let sorting = desk.stops(&names, &desk.both)?;
        let names = if self.line.is_some() { Vec::new() } else { desk.usual("sort")? };
        let scouring = desk.stops(&names, &desk.both)?;
        let fleeces = desk.fleeces()?;
        for place in 0..self.tree.fleeces.len() {
            let node = match fleeces.get(place) {
                Some(named) => named.node.clone(),
                None => desk.empty(),
            };
            let sorts = self.tree.fleeces[place].sorts.clone();
            let divided = !self.tree.sorts[sorts[0]].whole;
            if divided {
                self.divide(place, &node, &sorting)?;
            } else {
                self.tree.fleeces[place].passes = desk.passes(&node, &sorting, self.draft);
            }
            for sort in sorts {
                self.tree.sorts[sort].passes = desk.passes(&node, &scouring, self.draft);
            }
        }
        let usual = match &self.line {
            Some(line) => line.heap.clone(),
            None => desk.usual("heap")?,
        };
        for place in 0..self.tree.heaps.len() {
            let node = heaps.get(place).map_or_else(|| desk.empty(), |named| named.node.clone());
            let keys = node.keys();
            let own = keys.texts("route")?;
            let at = if own.is_some() { &keys } else { &desk.both };
            let stops = desk.stops(own.as_ref().unwrap_or(&usual), at)?;
            self.tree.heaps[place].passes = desk.passes(&node, &stops, self.draft);
        }
        Ok(())
    }

    /// A fleece of several sorts: what is sorted out is a share of its mass too.
    fn divide(&mut self, place: usize, node: &Node<'d>, sorting: &[Stop]) -> Result<()> {
        let desk = self.desk;
        let sorts = self.tree.fleeces[place].sorts.clone();
        if self.tree.fleeces[place].rejects.is_none()
            && sorts.iter().any(|sort| self.tree.sorts[*sort].share.is_none())
            && let Some(stop) = sorting.iter().find(|stop| stop.kind() == "sort")
        {
            let section = desk.stage(node, stop)?;
            let rejects = section.read(self.draft, |reader| Rejects::take(reader))?.rejects;
            self.tree.fleeces[place].rejects = rejects.map(|share| *share.inner());
        }
        let share = |place: &Place| self.draft.given[place.0].base();
        let given: f64 =
            sorts.iter().filter_map(|sort| self.tree.sorts[*sort].share.as_ref()).map(share).sum();
        let rejects = self.tree.fleeces[place].rejects.as_ref().map_or(0.0, share);
        if given + rejects > 1.0 + 1e-9 {
            return Err(node.keys().error(
                "sorts",
                format!(
                    "the sorts and the rejects make {} of the fleece; write shares that make 100 % at most",
                    crate::quantity::print::of_kind(given + rejects, Kind::Fraction)
                ),
            ));
        }
        Ok(())
    }

    /// The routes of the yarns.
    pub(super) fn yarn_passes(&mut self, yarns: &[Named<'d>], kinds: &[GoodKind]) -> Result<()> {
        let desk = self.desk;
        if yarns.is_empty() {
            let names = self.line.as_ref().map_or_else(Vec::new, |line| line.yarn.clone());
            let stops = desk.stops(&names, &desk.both)?;
            self.tree.yarns[0].passes = desk.passes(&desk.empty(), &stops, self.draft);
            return Ok(());
        }
        for (place, yarn) in yarns.iter().enumerate() {
            let keys = yarn.node.keys();
            let route = self.yarn_route(place, &keys, kinds);
            let Some(names) = self.draft.note(route) else { continue };
            let stops = desk.stops(&names, if keys.has("route") { &keys } else { &desk.both });
            let Some(stops) = self.draft.note(stops) else { continue };
            let fits = self.fits(place, &stops, &keys);
            self.draft.note(fits);
            self.tree.yarns[place].passes = desk.passes(&yarn.node, &stops, self.draft);
        }
        Ok(())
    }

    /// The names of the stages of a yarn.
    fn yarn_route(
        &self,
        place: usize,
        keys: &Section<'d>,
        kinds: &[GoodKind],
    ) -> Result<Vec<String>> {
        let yarn = &self.tree.yarns[place];
        let singles = self.draft.given[yarn.spec.ends.inner().0].base() < 1.5;
        if keys.at("route").is_some_and(|at| at.item.is_array()) {
            return Ok(keys.texts("route")?.unwrap_or_default());
        }
        let usual = match (keys.line_or_none("route")?, &self.line) {
            (Some(name), _) if self.desk.has_route(&name)? => self.desk.usual_of_yarn(&name)?,
            (Some(name), _) => {
                let message = format!(
                    "there is no route '{name}'; write a list of stages, or \"hank\" or \"woven\""
                );
                return Err(keys.error("route", message));
            }
            (None, Some(line)) => line.yarn.clone(),
            (None, None) if !matches!(yarn.from, From::Heap(_)) => Vec::new(),
            (None, None) => {
                let mut ways: Vec<(String, Vec<String>)> = Vec::new();
                for kind in kinds.iter().filter(|kind| kind.yarns().any(|y| y == place)) {
                    let way = self.desk.usual_of_yarn(&kind.kind)?;
                    if !ways.iter().any(|(_, known)| *known == way) {
                        ways.push((kind.kind.clone(), way));
                    }
                }
                match ways.len() {
                    0 => self.desk.usual_of_yarn("hank")?,
                    1 => ways.swap_remove(0).1,
                    _ => return Err(ways_differ(keys, &ways)),
                }
            }
        };
        let mut route = self.desk.instead(keys, usual)?;
        if singles && self.line.is_none() {
            let twists = |name: &String| {
                let stops = self.desk.stops(std::slice::from_ref(name), &self.desk.both);
                stops.is_ok_and(|stops| stops.iter().any(|stop| stop.kind() == "twister"))
            };
            route.retain(|name| !twists(name));
        }
        Ok(route)
    }

    /// Whether a route makes the yarn that is asked for.
    fn fits(&self, place: usize, stops: &[Stop], keys: &Section<'d>) -> Result<()> {
        let yarn = &self.tree.yarns[place];
        let at = if keys.has("route") { keys } else { &self.desk.both };
        let kinds: Vec<&str> = stops.iter().map(Stop::kind).collect();
        let ends = self.draft.given[yarn.spec.ends.inner().0].base();
        let has = |kind: &str| kinds.contains(&kind);
        if ends < 1.5 && has("twister") {
            let key = if keys.has("ends") || !keys.has("route") { "ends" } else { "route" };
            return Err(keys.error(
                key,
                "1 end is not a fold, and the route passes the twister; write ends = 2 or more, or a \
                 route without the twister",
            ));
        }
        let spun = has("mule") || has("ring");
        let made = matches!(yarn.from, From::Heap(_)) && yarn.spec.count.is_some();
        if made && !has("loss") {
            let missing = [
                ("card", !has("card")),
                ("mule", !spun),
                ("twister", ends > 1.5 && !has("twister")),
            ];
            if let Some((stage, _)) = missing.iter().find(|(_, missing)| *missing) {
                return Err(at.error(
                    "route",
                    format!("the route makes no yarn without '{stage}'; add it to the list"),
                ));
            }
        }
        let after = |kind: &str| match kind {
            "mule" | "ring" => &["card"][..],
            "twister" | "winder" => &["mule", "ring"][..],
            "hank-scour" => &["twister"][..],
            _ => &[],
        };
        for (place, stop) in stops.iter().enumerate() {
            let late = |later: &&Stop| after(stop.kind()).contains(&later.kind());
            if let Some(later) = stops[place + 1..].iter().find(late) {
                let message =
                    format!("'{}' cannot come before '{}'; swap them", stop.machine, later.machine);
                return Err(at.error("route", message));
            }
        }
        Ok(())
    }

    /// How the heaps are weighed out to their yarns, where the lot says so.
    pub(super) fn splits(&mut self, heaps: &[Named<'d>]) -> Result<()> {
        for (place, heap) in heaps.iter().enumerate() {
            let keys = heap.node.keys();
            let table = keys.section("split")?;
            if !table.is_present() {
                continue;
            }
            let yarns = self.tree.heaps[place].yarns.clone();
            let names: Vec<String> =
                yarns.iter().map(|yarn| self.tree.yarns[*yarn].name.clone()).collect();
            let mut cuts = Vec::new();
            for name in &names {
                let Some(at) = table.plain(name) else {
                    return Err(table.error(
                        name,
                        format!("how much goes to '{name}' is missing; write {name} = \"rest\" or a share"),
                    ));
                };
                table.know([name.as_str()]);
                let text = at.item.as_str().unwrap_or("");
                cuts.push(if text == "rest" {
                    Cut::Rest
                } else if text.contains('%') {
                    let share = table.read(self.draft, |reader| reader.under(name, &CUT_SHARE))?;
                    share.map_or(Cut::Rest, Cut::Share)
                } else {
                    let mass = table.read(self.draft, |reader| reader.under(name, &CUT_MASS))?;
                    mass.map_or(Cut::Rest, Cut::Mass)
                });
            }
            if cuts.iter().filter(|cut| matches!(cut, Cut::Rest)).count() > 1 {
                return Err(
                    keys.error("split", "two yarns take the rest; give all but one a share")
                );
            }
            let sum: f64 = cuts
                .iter()
                .filter_map(|cut| match cut {
                    Cut::Share(share) => Some(self.draft.given[share.0].base()),
                    _ => None,
                })
                .sum();
            if sum > 1.0 + 1e-9 {
                return Err(keys.error(
                    "split",
                    "the shares make more than the whole heap; write 100 % at most",
                ));
            }
            table.finish()?;
            self.tree.heaps[place].split = Some(cuts);
        }
        Ok(())
    }

    /// In which order the goods are served, and with them their yarns.
    pub(super) fn ranks(&mut self) {
        let Tree { goods, yarns, heaps, .. } = &mut self.tree;
        for (place, yarn) in yarns.iter_mut().enumerate() {
            let first = goods.iter().position(|good| good.uses(place));
            yarn.rank = first.unwrap_or(goods.len());
            yarn.takes_rest = goods.iter().any(|good| good.uses(place) && good.takes_rest);
        }
        let machines: Vec<Vec<String>> = goods
            .iter()
            .map(|good| good.machines().into_iter().map(str::to_owned).collect())
            .collect();
        for (place, good) in goods.iter_mut().enumerate() {
            let others = || machines.iter().enumerate().filter(|(other, _)| *other != place);
            let also = |machine: &&String| others().any(|(_, other)| other.contains(*machine));
            good.shared = machines[place].iter().filter(also).cloned().collect();
        }
        let early = |yarn: usize| {
            let children = yarns[yarn].children.iter().map(|child| yarns[*child].rank);
            children.fold(yarns[yarn].rank, usize::min)
        };
        let ranks: Vec<usize> = yarns.iter().map(|yarn| yarn.rank).collect();
        for heap in heaps.iter_mut() {
            let ranks: Vec<usize> = heap.yarns.iter().map(|yarn| early(*yarn)).collect();
            let mut order: Vec<usize> = (0..heap.yarns.len()).collect();
            order.sort_by_key(|place| ranks[*place]);
            heap.yarns = order.iter().map(|place| heap.yarns[*place]).collect();
            if let Some(cuts) = &mut heap.split {
                *cuts = order.iter().map(|place| cuts[*place]).collect();
            }
        }
        for yarn in yarns.iter_mut() {
            yarn.children.sort_by_key(|child| ranks[*child]);
        }
    }

    /// Gives every stage its name: its own where no other part of the lot passes the same, and charges
    /// what a machine keeps to the first yarn of its heap.
    pub(super) fn name_passes(&mut self) {
        let tree = &mut self.tree;
        let mut counts: std::collections::HashMap<String, usize> = std::collections::HashMap::new();
        for pass in tree.all_passes() {
            *counts.entry(pass.machine.clone()).or_default() += 1;
        }
        let names = |level: &str, node: &str, taken: &[String]| {
            if taken.iter().any(|other| other == node) {
                format!("{level}.{node}")
            } else {
                node.to_owned()
            }
        };
        let yarns: Vec<String> = tree.yarns.iter().map(|yarn| yarn.name.clone()).collect();
        let mut place = 0;
        let mut name = |passes: &mut Vec<Pass>, of: &str| {
            for pass in passes {
                pass.place = place;
                place += 1;
                if counts.get(&pass.machine).is_some_and(|n| *n > 1) && !of.is_empty() {
                    of.clone_into(&mut pass.of);
                    pass.name = format!("{of}.{}", pass.machine);
                }
            }
        };
        for fleece in &mut tree.fleeces {
            let of = names("fleece", &fleece.name, &yarns);
            name(&mut fleece.passes, &of);
        }
        for sort in &mut tree.sorts {
            let of = names("sort", &sort.name, &yarns);
            name(&mut sort.passes, &of);
        }
        for heap in &mut tree.heaps {
            let of = names("heap", &heap.name, &yarns);
            name(&mut heap.passes, &of);
        }
        for yarn in &mut tree.yarns {
            let of = yarn.name.clone();
            name(&mut yarn.passes, &of);
        }
        tree.passes = place;
        let heaps = tree.heaps.iter().map(|heap| heap.yarns.clone()).collect::<Vec<_>>();
        for yarns in heaps {
            let mut filled: Vec<String> = Vec::new();
            for yarn in yarns {
                for pass in &mut tree.yarns[yarn].passes {
                    pass.keeps = !pass.uncleared && !filled.contains(&pass.machine);
                    filled.push(pass.machine.clone());
                }
            }
        }
    }
}
