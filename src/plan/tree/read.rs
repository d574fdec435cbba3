//! Reading a lot: fleeces, sorts, heaps, yarns, goods, each with its tables in the lot and in the mill.

use super::levels::{Line, Named};
use super::routes::Desk;
use super::{FleeceNode, From, SortNode, Tree, YarnNode};
use crate::calculation::{Input, Inputs, Item, Place, Presence, Source, flat};
use crate::error::{Result, did_you_mean};
use crate::plan::draft::Draft;
use crate::plan::goods::{Good, GoodKind};
use crate::plan::guide::{OF_A_FLEECE, OF_A_HEAP, OF_A_YARN, OF_THE_LOT, names};
use crate::plan::lot::{Fleece, Labelled, Wool, Yarn, YarnInStock};
use crate::plan::section::Section;
use crate::quantity::{Kind, ShareLost};

/// Every key of a fleece.
fn of_a_fleece() -> impl Iterator<Item = &'static str> {
    let asked = [Fleece::<Place>::ITEMS, Rejects::<Place>::ITEMS].into_iter().flat_map(flat);
    asked.map(|item| item.name()).chain(names(&OF_A_FLEECE))
}
/// Every key of a heap.
pub(super) fn of_a_heap() -> Vec<&'static str> {
    flat(super::heaps::Held::<Place>::ITEMS)
        .iter()
        .map(Item::name)
        .chain(names(&OF_A_HEAP))
        .collect()
}
/// Every key of a yarn.
pub(super) fn of_a_yarn() -> Vec<&'static str> {
    let asked = [Yarn::<Place>::ITEMS, YarnInStock::<Place>::ITEMS].into_iter().flat_map(flat);
    asked.map(|item| item.name()).chain(names(&OF_A_YARN)).collect()
}

/// The share that a fleece loses on the sorting table.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Rejects<N> {
    /// sorted out, with its dirt, on the greasy mass
    #[q("r_j", 0.0..=0.15, basis = "Custom mill leaflet", zero, like = "8 %")]
    pub(super) rejects: Option<ShareLost<N>>,
}

pub(super) const fn input(
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
pub(super) const CUT_SHARE: Input = input("cut_share", "p", "share of the heap", Kind::Fraction);
pub(super) const CUT_MASS: Input =
    input("cut_mass", "m", "mass of the heap, as weighed", Kind::Mass);

/// A lot while it is read.
pub(in crate::plan) struct Reading<'a, 'd> {
    pub(super) desk: &'a Desk<'d>,
    pub(super) draft: &'a mut Draft,
    pub(super) tree: Tree,
    /// The one list of stages at the head of the file, where it has one.
    pub(super) line: Option<Line>,
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
        self.goods(&goods, &kinds);
        self.draft.faults()?;
        self.finish(&yarns, &heaps);
        self.draft.faults()?;
        self.weighed_whole()?;
        self.ranks();
        self.name_passes();
        self.tree.settle();
        Ok(self.tree)
    }

    fn fleeces(&mut self) -> Result<()> {
        let lot = self.desk.lot.section("lot")?;
        let fleeces = self.desk.fleeces()?;
        let owner = lot.line_or_none("owner")?.unwrap_or_default();
        if fleeces.is_empty() {
            let keys = lot.clone();
            keys.know(names(&OF_THE_LOT));
            return self.fleece("lot", &keys, &owner);
        }
        if let Some(key) = of_a_fleece().find(|key| lot.has(key)) {
            return Err(lot.error(
                key,
                "the lot has fleeces of their own, [fleece.NAME]; write this in one of them",
            ));
        }
        lot.only(names(&OF_THE_LOT))?;
        for Named { name, node } in &fleeces {
            let keys = node.keys();
            let own = keys.line_or_none("owner")?.unwrap_or_else(|| owner.clone());
            let read = self.fleece(name, &keys, &own);
            self.draft.note(read);
        }
        Ok(())
    }

    /// The clean share may be omitted only where nothing rests on it: every mass is then as it is weighed.
    fn weighed_whole(&self) -> Result<()> {
        if !self.tree.weighed {
            return Ok(());
        }
        let known = self.tree.fleeces.iter().any(|fleece| fleece.inputs.wool.clean.is_some());
        let counted = self.tree.yarns.iter().any(|yarn| yarn.spec.count.is_some());
        let rests = |pass: &super::Pass| {
            let state = pass.stage.state();
            ["oil", "dye"].contains(&pass.stage.kind())
                || state
                    .is_some_and(|s| s.regain.is_some() || s.fat.is_some() || s.vegetable.is_some())
        };
        if !known && !counted && !self.tree.all_passes().any(rests) {
            return Ok(());
        }
        let lacks = self.tree.fleeces.iter().find(|fleece| fleece.inputs.wool.clean.is_none());
        let named = self.desk.fleeces()?;
        let found = named.iter().find(|named| lacks.is_some_and(|f| f.name == named.name));
        let keys = match found {
            Some(named) => named.node.keys(),
            None => self.desk.lot.section("lot")?,
        };
        Err(keys.missing("clean", "clean dry fibre, on the greasy mass,", "\"52 %\""))
    }

    fn fleece(&mut self, name: &str, keys: &Section<'d>, owner: &str) -> Result<()> {
        keys.know(["like"]);
        let inputs = keys.read(self.draft, |reader| Fleece::take(reader))?;
        self.tree.weighed |= inputs.wool.clean.is_none();
        self.draft.weighed = self.tree.weighed;
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
        own.know(of_a_fleece());
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
        for (place, yarn) in yarns.iter().enumerate() {
            let (mut at, mut steps) = (place, 0);
            while let From::Yarn(parent) = self.tree.yarns[at].from {
                (at, steps) = (parent, steps + 1);
                if steps > self.tree.yarns.len() {
                    let keys = yarn.node.keys();
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
        if yarns.is_empty() {
            self.tree.heaps[0].yarns.push(0);
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

    fn goods(&mut self, goods: &[Named<'d>], kinds: &[GoodKind]) {
        for (good, kind) in goods.iter().zip(kinds) {
            let stages = self.desk.good_stages(good, kind);
            let Some(stages) = self.draft.note(stages) else { continue };
            let read = Good::read(&good.name, &good.node, kind, self.desk, &stages, self.draft);
            if let Some(made) = self.draft.note(read) {
                self.tree.goods.push(made);
            }
        }
    }

    /// Refuses keys that nobody asked for, and tables of stages that no route names.
    fn finish(&mut self, yarns: &[Named<'d>], heaps: &[Named<'d>]) {
        let named = self.desk.named();
        for (nodes, keys) in [(yarns, of_a_yarn()), (heaps, of_a_heap())] {
            for node in nodes {
                let section = node.node.keys();
                section.know(keys.iter().copied());
                section.know(named.iter().cloned());
                let done = section.finish();
                self.draft.note(done);
            }
        }
        let unused = self.desk.unused();
        self.draft.note(unused);
    }
}
