//! Reading a lot: fleeces, sorts, heaps, yarns, goods, each with its tables in the lot and in the mill.

use super::levels::{Line, Named};
use super::routes::{Desk, Node, ways_differ};
use super::{Cut, FleeceNode, From, HeapNode, Of, SortNode, Tree, YarnNode};
use crate::calculation::{Input, Inputs, Place, Presence, Source};
use crate::error::{Result, did_you_mean};
use crate::plan::draft::Draft;
use crate::plan::goods::{Good, GoodKind};
use crate::plan::lot::{Fleece, Labelled, Wool, Yarn, YarnInStock};
use crate::plan::section::Section;
use crate::quantity::{Fraction, Kind, Mass};

/// Keys of `[lot]` that do not belong to its fleece.
const OF_THE_LOT: [&str; 6] = ["id", "came", "due", "name", "description", "owner"];
/// Keys of a fleece, which `[lot]` may have itself.
const OF_A_FLEECE: [&str; 10] = [
    "greasy",
    "clean",
    "regain",
    "vegetable",
    "diameter",
    "variation",
    "colour",
    "rejects",
    "sorts",
    "like",
];
const OF_A_HEAP: [&str; 6] = ["of", "route", "held", "split", "like", "diameter"];
const OF_A_YARN: [&str; 11] = [
    "name",
    "count",
    "ends",
    "twist_factor",
    "heap",
    "from",
    "stock",
    "route",
    "instead",
    "regain",
    "fat",
];

/// The share that a fleece loses on the sorting table.
#[derive(Clone, Debug, Inputs)]
struct Rejects<N> {
    /// sorted out, with its dirt, on the greasy mass
    #[q("r_j", 0.0..=0.15, basis = "Custom mill leaflet", zero, like = "8 %")]
    rejects: Option<Fraction<N>>,
}

/// What is kept of a heap.
#[derive(Clone, Debug, Inputs)]
struct Held<N> {
    /// kept back unspun, as weighed
    #[q("m_h", 0.0..=100.0, zero, like = "1 kg")]
    held: Option<Mass<N>>,
}

const fn input(
    name: &'static str,
    symbol: &'static str,
    meaning: &'static str,
    kind: Kind,
) -> Input {
    Input {
        name,
        symbol,
        meaning,
        kind,
        usual: (0.0, f64::INFINITY),
        basis: "",
        like: "",
        presence: Presence::Needed,
        zero: true,
        whole: false,
    }
}

const SHARE: Input =
    input("share", "p", "share of the mass that enters the sorting", Kind::Fraction);
const DRY_SHARE: Input = input("dry_share", "p", "share of the clean dry fibre", Kind::Fraction);
const CUT_SHARE: Input = input("cut_share", "p", "share of the heap", Kind::Fraction);
const CUT_MASS: Input = input("cut_mass", "m", "mass of the heap, as weighed", Kind::Mass);

/// A lot while it is read.
pub(in crate::plan) struct Reading<'a, 'd> {
    desk: &'a Desk<'d>,
    draft: &'a mut Draft,
    tree: Tree,
    /// The one list of stages at the head of the file, where it has one.
    line: Option<Line>,
}

impl<'a, 'd> Reading<'a, 'd> {
    pub(in crate::plan) fn new(desk: &'a Desk<'d>, draft: &'a mut Draft) -> Self {
        Reading { desk, draft, tree: Tree::default(), line: None }
    }

    /// Reads the whole lot.
    pub(in crate::plan) fn read(mut self) -> Result<Tree> {
        let desk = self.desk;
        // First of all: a misspelt table would else be called missing.
        desk.heads()?;
        if desk.lot.plain("route").is_some() {
            let names = desk.lot.texts("route")?.unwrap_or_default();
            self.line = Some(Line::cut(&names));
        }
        let goods = desk.goods()?;
        self.fleeces()?;
        let section = desk.both.section("label")?;
        let label = section.read(self.draft, |reader| Labelled::take(reader))?;
        section.finish()?;
        let yarns = desk.yarns()?;
        for yarn in &yarns {
            let read = self.yarn(yarn, yarns.len(), &label);
            if let Some(node) = self.draft.note(read) {
                self.tree.yarns.push(node);
            }
        }
        if yarns.is_empty() {
            let node = self.no_yarn(&label);
            self.tree.yarns.push(node);
        }
        self.draft.faults()?;
        let kinds = self.kinds(&goods)?;
        let heaps = desk.heaps()?;
        self.heaps(&heaps)?;
        self.sources(&yarns)?;
        self.draft.faults()?;
        self.wool_passes(&heaps)?;
        self.yarn_passes(&yarns, &kinds)?;
        self.splits(&heaps)?;
        self.draft.faults()?;
        self.goods(&goods, &kinds)?;
        self.draft.faults()?;
        self.finish(&yarns, &heaps)?;
        self.draft.faults()?;
        self.ranks()?;
        self.name_passes();
        Ok(self.tree)
    }

    fn fleeces(&mut self) -> Result<()> {
        let lot = self.desk.lot.section("lot")?;
        let fleeces = self.desk.fleeces()?;
        let owner = lot.line_or_none("owner")?.unwrap_or_default();
        if fleeces.is_empty() {
            let keys = lot.clone();
            keys.know(OF_THE_LOT);
            return self.fleece("lot", &keys, &owner);
        }
        if let Some(key) = OF_A_FLEECE.iter().find(|key| lot.has(key)) {
            return Err(lot.error(
                key,
                "the lot has fleeces of their own, [fleece.NAME]; write this in one of them",
            ));
        }
        lot.only(OF_THE_LOT)?;
        for Named { name, node } in &fleeces {
            let keys = node.keys();
            let own = keys.line_or_none("owner")?.unwrap_or_else(|| owner.clone());
            let read = self.fleece(name, &keys, &own);
            self.draft.note(read);
        }
        Ok(())
    }

    fn fleece(&mut self, name: &str, keys: &Section<'d>, owner: &str) -> Result<()> {
        keys.know(["like"]);
        let inputs = keys.read(self.draft, |reader| Fleece::take(reader))?;
        self.tree.weighed |= inputs.wool.clean.is_none();
        let rejects = keys.read(self.draft, |reader| Rejects::take(reader))?.rejects;
        let colour = keys.line_or_none("colour")?.unwrap_or_default();
        let fleece = self.tree.fleeces.len();
        let parts = keys.section("sorts")?;
        let mut sorts = Vec::new();
        for part in parts.keys() {
            let read = self.part(&parts, &part, keys);
            let Some((share, wool)) = self.draft.note(read) else { continue };
            sorts.push(self.tree.sorts.len());
            self.tree.sorts.push(SortNode {
                name: format!("{name}.{part}"),
                fleece,
                share,
                wool,
                passes: Vec::new(),
                whole: false,
            });
        }
        let open = |sort: &&usize| self.tree.sorts[**sort].share.is_none();
        if sorts.iter().filter(open).count() > 1 {
            return Err(parts.wrong("two sorts take the rest; give all but one their share"));
        }
        if sorts.is_empty() {
            sorts.push(self.tree.sorts.len());
            self.tree.sorts.push(SortNode {
                name: name.to_owned(),
                fleece,
                share: None,
                wool: inputs.wool.clone(),
                passes: Vec::new(),
                whole: true,
            });
        }
        // A stage of this fleece alone is a table within its own.
        let stage = |key: &String| {
            let known = crate::plan::stage::NAMES.contains(&key.as_str());
            (known || self.desk.both.has(key)) && keys.tables(key).is_ok_and(|t| t.is_present())
        };
        keys.know(keys.keys().iter().filter(|key| stage(key)));
        keys.finish()?;
        self.tree.fleeces.push(FleeceNode {
            name: name.to_owned(),
            key: name.to_owned(),
            owner: owner.to_owned(),
            colour,
            inputs,
            passes: Vec::new(),
            sorts,
            rejects: rejects.map(|share| *share.inner()),
        });
        Ok(())
    }

    /// A sort: its share of the mass, and what its wool is.
    fn part(
        &mut self,
        parts: &Section<'d>,
        name: &str,
        fleece: &Section<'d>,
    ) -> Result<(Option<Place>, Wool<Place>)> {
        let own = parts.tables(name)?;
        let share = if own.is_present() {
            own.know(["share"]);
            match own.at("share").map(|at| at.item.as_str() == Some("rest")) {
                Some(true) => None,
                _ => Some(own.read(self.draft, |reader| reader.needed(&SHARE))?),
            }
        } else if parts.plain(name).is_some_and(|at| at.item.as_str() == Some("rest")) {
            None
        } else {
            parts.read(self.draft, |reader| reader.under(name, &SHARE))?
        };
        own.know(OF_A_FLEECE);
        own.finish()?;
        let all = own.over(fleece.clone());
        Ok((share, all.read(self.draft, |reader| Wool::take(reader))?))
    }

    fn yarn(&mut self, yarn: &Named<'d>, all: usize, label: &Labelled<Place>) -> Result<YarnNode> {
        let Named { name, node } = yarn;
        let keys = node.keys();
        let key = if all == 1 { "yarn".to_owned() } else { format!("yarn.{name}") };
        let spec = keys.read(self.draft, |reader| Yarn::take(reader))?;
        let from = if keys.has("stock") {
            From::Stock(keys.read(self.draft, |reader| YarnInStock::take(reader))?)
        } else {
            From::Heap(0)
        };
        let own = keys.section("label")?;
        let (label, label_key) = if own.is_present() {
            let own = own.over(self.desk.both.section("label")?);
            (own.read(self.draft, |reader| Labelled::take(reader))?, format!("{key}.label"))
        } else {
            (label.clone(), "label".to_owned())
        };
        Ok(YarnNode {
            name: name.clone(),
            key,
            from,
            spec,
            label,
            label_key,
            passes: Vec::new(),
            rank: usize::MAX,
            takes_rest: false,
            children: Vec::new(),
        })
    }

    /// Stands where no yarn is named: goods are then made of the heap, by mass.
    fn no_yarn(&mut self, label: &Labelled<Place>) -> YarnNode {
        let ends = self.draft.count(1.0);
        YarnNode {
            name: String::new(),
            key: "yarn".to_owned(),
            from: From::Heap(0),
            spec: Yarn { count: None, ends, twist_factor: None },
            label: label.clone(),
            label_key: "label".to_owned(),
            passes: Vec::new(),
            rank: usize::MAX,
            takes_rest: false,
            children: Vec::new(),
        }
    }

    /// What kind the goods are, and which yarns they are made of.
    fn kinds(&mut self, goods: &[Named<'d>]) -> Result<Vec<GoodKind>> {
        let names: Vec<String> = self.tree.yarns.iter().map(|yarn| yarn.name.clone()).collect();
        let mut kinds = Vec::new();
        for good in goods {
            let read = GoodKind::read(&good.node.keys(), &names);
            kinds.extend(self.draft.note(read));
        }
        self.draft.faults()?;
        for (place, yarn) in self.tree.yarns.iter().enumerate() {
            let used = kinds.iter().any(|kind| kind.yarns().any(|used| used == place));
            let goes_on = self.desk.goes_on(&yarn.name)?;
            if !used && !goes_on {
                let message = format!(
                    "no goods are made of '{0}'; write yarn = \"{0}\" in [goods.NAME], or remove it",
                    yarn.name
                );
                let error = self.desk.lot.section("yarn")?.error(&yarn.name, message);
                self.draft.fault(error);
            }
        }
        Ok(kinds)
    }

    fn heaps(&mut self, heaps: &[Named<'d>]) -> Result<()> {
        if heaps.is_empty() {
            self.tree.heaps.push(HeapNode {
                name: String::new(),
                key: "heap".to_owned(),
                of: Of::All((0..self.tree.sorts.len()).collect()),
                passes: Vec::new(),
                held: None,
                split: None,
                yarns: Vec::new(),
            });
            return Ok(());
        }
        for Named { name, node } in heaps {
            let keys = node.keys();
            let read = self.of(&keys);
            let Some(of) = self.draft.note(read) else { continue };
            let held = keys.read(self.draft, |reader| Held::take(reader))?.held;
            let key = if heaps.len() == 1 { "heap".to_owned() } else { format!("heap.{name}") };
            self.tree.heaps.push(HeapNode {
                name: name.clone(),
                key,
                of,
                passes: Vec::new(),
                held: held.map(|mass| *mass.inner()),
                split: None,
                yarns: Vec::new(),
            });
        }
        self.draft.faults()?;
        // No sort lies in two heaps that take all of it.
        let mut whole = vec![None; self.tree.sorts.len()];
        for (place, heap) in self.tree.heaps.iter().enumerate() {
            let Of::All(all) = &heap.of else { continue };
            for sort in all {
                if let Some(first) = whole[*sort].replace(place) {
                    let first: &HeapNode = &self.tree.heaps[first];
                    let message = format!(
                        "all of '{}' is in '{}' already; give one of the two its dry share, such as \
                         {{ {0} = \"40 %\" }}",
                        self.tree.sorts[*sort].name, first.name
                    );
                    return Err(heaps[place].node.keys().error("of", message));
                }
            }
        }
        let used = |sort: usize| {
            self.tree.heaps.iter().any(|heap| match &heap.of {
                Of::All(all) => all.contains(&sort),
                Of::Shares(shares) => shares.iter().any(|(other, _)| *other == sort),
            })
        };
        for (place, sort) in self.tree.sorts.iter().enumerate() {
            if !used(place) {
                let message = format!(
                    "no heap takes '{}'; add it to the `of` of one, or make a heap of it",
                    sort.name
                );
                return Err(self.desk.lot.error("heap", message));
            }
        }
        Ok(())
    }

    /// What a heap is made of.
    fn of(&mut self, keys: &Section<'d>) -> Result<Of> {
        let names: Vec<String> = self.tree.sorts.iter().map(|sort| sort.name.clone()).collect();
        let find = |name: &str| {
            names.iter().position(|known| known == name).ok_or_else(|| {
                let near = did_you_mean(name, names.iter().map(String::as_str))
                    .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
                let known = names.join(", ");
                keys.error("of", format!("there is no '{name}'{near} There are {known}"))
            })
        };
        let Some(at) = keys.at("of") else {
            return Ok(Of::All((0..self.tree.sorts.len()).collect()));
        };
        if at.item.is_array() {
            let all = keys.texts("of")?.unwrap_or_default();
            let all = all.iter().map(|name| find(name)).collect::<Result<Vec<_>>>()?;
            if all.is_empty() {
                return Err(keys.error("of", format!("write at least one of {}", names.join(", "))));
            }
            return Ok(Of::All(all));
        }
        let table = keys.section("of")?;
        let mut shares = Vec::new();
        // A sort of a fleece is written alpaca.fine, which TOML reads as a table within a table.
        for name in table.keys() {
            let within = table.tables(&name)?;
            let parts: Vec<(String, &Section<'_>, String)> = if within.is_present() {
                let names = within.keys();
                names.into_iter().map(|part| (format!("{name}.{part}"), &within, part)).collect()
            } else {
                vec![(name.clone(), &table, name.clone())]
            };
            for (full, section, key) in parts {
                let sort = find(&full)?;
                let mark = DRY_SHARE;
                let share = section.read(self.draft, |reader| reader.under(&key, &mark))?;
                shares.extend(share.map(|share| (sort, share)));
            }
        }
        let sum: f64 = shares.iter().map(|(_, share)| self.draft.given[share.0].base()).sum();
        if (sum - 1.0).abs() > 1e-6 {
            return Err(keys.error(
                "of",
                format!(
                    "the shares make {} together; write shares of the dry fibre that make 100 %",
                    crate::quantity::print::of_kind(sum, Kind::Fraction)
                ),
            ));
        }
        Ok(Of::Shares(shares))
    }

    /// Which heap or yarn each yarn is made from.
    fn sources(&mut self, yarns: &[Named<'d>]) -> Result<()> {
        let names: Vec<String> = self.tree.yarns.iter().map(|yarn| yarn.name.clone()).collect();
        let heaps: Vec<String> = self.tree.heaps.iter().map(|heap| heap.name.clone()).collect();
        let known = |wanted: &str, all: &[String], keys: &Section<'_>, key: &str| {
            all.iter().position(|name| name == wanted).ok_or_else(|| {
                let near = did_you_mean(wanted, all.iter().map(String::as_str))
                    .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
                keys.error(
                    key,
                    format!("there is no '{wanted}'{near} There are {}", all.join(", ")),
                )
            })
        };
        for (place, yarn) in yarns.iter().enumerate() {
            let keys = yarn.node.keys();
            if matches!(self.tree.yarns[place].from, From::Stock(_)) {
                continue;
            }
            let from = match (keys.line_or_none("heap")?, keys.line_or_none("from")?) {
                (Some(_), Some(_)) => Err(keys.error(
                    "from",
                    "a yarn is made of a heap or from another yarn; remove one of the two",
                )),
                (Some(heap), None) => known(&heap, &heaps, &keys, "heap").map(From::Heap),
                (None, Some(parent)) => known(&parent, &names, &keys, "from").map(From::Yarn),
                (None, None) if heaps.len() == 1 => Ok(From::Heap(0)),
                (None, None) => Err(keys.missing(
                    "heap",
                    "which heap it is made of",
                    &format!("\"{}\"", heaps[0]),
                )),
            };
            if let Some(from) = self.draft.note(from) {
                self.tree.yarns[place].from = from;
            }
        }
        for place in 0..self.tree.yarns.len() {
            let (mut at, mut steps) = (place, 0);
            while let From::Yarn(parent) = self.tree.yarns[at].from {
                (at, steps) = (parent, steps + 1);
                if steps > self.tree.yarns.len() {
                    let keys = yarns[place].node.keys();
                    return Err(keys.error(
                        "from",
                        "this goes round in a circle; one of these yarns must come from a heap",
                    ));
                }
            }
            match self.tree.yarns[place].from {
                From::Heap(heap) => self.tree.heaps[heap].yarns.push(place),
                From::Yarn(parent) => self.tree.yarns[parent].children.push(place),
                From::Stock(_) => {}
            }
        }
        for (heap, name) in self.tree.heaps.iter().zip(&heaps) {
            if heap.yarns.is_empty() {
                let message =
                    format!("no yarn is made of '{name}'; write heap = \"{name}\" in one");
                let error = self.desk.lot.section("heap")?.error(name, message);
                self.draft.fault(error);
            }
        }
        Ok(())
    }

    /// The routes of fleeces, sorts and heaps.
    fn wool_passes(&mut self, heaps: &[Named<'d>]) -> Result<()> {
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
    fn divide(
        &mut self,
        place: usize,
        node: &Node<'d>,
        sorting: &[super::routes::Stop],
    ) -> Result<()> {
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
    fn yarn_passes(&mut self, yarns: &[Named<'d>], kinds: &[GoodKind]) -> Result<()> {
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
    fn fits(&self, place: usize, stops: &[super::routes::Stop], keys: &Section<'d>) -> Result<()> {
        let yarn = &self.tree.yarns[place];
        let at = if keys.has("route") { keys } else { &self.desk.both };
        let kinds: Vec<&str> = stops.iter().map(super::routes::Stop::kind).collect();
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
            let late = |later: &&super::routes::Stop| after(stop.kind()).contains(&later.kind());
            if let Some(later) = stops[place + 1..].iter().find(late) {
                let message =
                    format!("'{}' cannot come before '{}'; swap them", stop.machine, later.machine);
                return Err(at.error("route", message));
            }
        }
        Ok(())
    }

    /// How the heaps are weighed out to their yarns, where the lot says so.
    fn splits(&mut self, heaps: &[Named<'d>]) -> Result<()> {
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

    fn goods(&mut self, goods: &[Named<'d>], kinds: &[GoodKind]) -> Result<()> {
        let label = self.tree.yarns[0].label_key.clone();
        let _ = label;
        for (good, kind) in goods.iter().zip(kinds) {
            let stages = self.desk.good_stages(good, kind);
            let Some(stages) = self.draft.note(stages) else { continue };
            let read = Good::read(&good.name, &good.node, kind, self.desk, &stages, self.draft);
            if let Some(made) = self.draft.note(read) {
                self.tree.goods.push(made);
            }
        }
        Ok(())
    }

    /// Refuses keys that nobody asked for, and tables of stages that no route names.
    fn finish(&mut self, yarns: &[Named<'d>], heaps: &[Named<'d>]) -> Result<()> {
        let named = self.desk.named();
        for (nodes, keys) in [(yarns, &OF_A_YARN[..]), (heaps, &OF_A_HEAP[..])] {
            for node in nodes {
                let section = node.node.keys();
                section.know(keys.iter().copied());
                section.know(["like", "label"]);
                section.know(named.iter().cloned());
                let done = section.finish();
                self.draft.note(done);
            }
        }
        let unused = self.desk.unused();
        self.draft.note(unused);
        Ok(())
    }

    /// In which order the goods are served, and with them their yarns.
    fn ranks(&mut self) -> Result<()> {
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
            let others = machines.iter().enumerate().filter(|(other, _)| *other != place);
            good.shared = others
                .into_iter()
                .any(|(_, other)| machines[place].iter().any(|machine| other.contains(machine)));
        }
        let early = |yarn: usize| {
            let children = yarns[yarn].children.iter().map(|child| yarns[*child].rank);
            children.fold(yarns[yarn].rank, usize::min)
        };
        for heap in heaps.iter_mut() {
            let ranks: Vec<usize> = heap.yarns.iter().map(|yarn| early(*yarn)).collect();
            let mut order: Vec<usize> = (0..heap.yarns.len()).collect();
            order.sort_by_key(|place| ranks[*place]);
            heap.yarns = order.iter().map(|place| heap.yarns[*place]).collect();
            if let Some(cuts) = &mut heap.split {
                *cuts = order.iter().map(|place| cuts[*place]).collect();
            }
        }
        Ok(())
    }

    /// Gives every stage its name: its own where no other part of the lot passes the same, and charges
    /// what a machine keeps to the first yarn of its heap.
    fn name_passes(&mut self) {
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
        let mut name = |passes: &mut Vec<super::Pass>, of: &str| {
            for pass in passes {
                pass.place = place;
                place += 1;
                if counts.get(&pass.machine).is_some_and(|n| *n > 1) && !of.is_empty() {
                    pass.of = of.to_owned();
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
                    pass.keeps = !filled.contains(&pass.machine);
                    filled.push(pass.machine.clone());
                }
            }
        }
    }
}
