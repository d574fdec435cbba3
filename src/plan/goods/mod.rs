//! The goods: hanks, balls, cones, woven pieces, pieces by their mass.

mod finished;
mod hank;
mod loom;
mod weighed;
mod woven;

use super::draft::Draft;
use super::given::{Given, Values};
use super::guide::{OF_GOODS, names};
use super::section::Section;
use super::stage::{Bench, Owns, Spot, named};
use super::tree::Pass;
use super::tree::routes::{Desk, Node, Stop};
use crate::calculation::{Inputs, Item, Place};
use crate::error::{Result, did_you_mean};
use crate::mill;
use crate::mill::run::reel::Reel;
use crate::number::{Number, V};
use crate::quantity::{Count, Fraction, Kind, LinearDensity, Mass, Ratio, Shrinkage};

pub(super) use loom::{CARDS as LOOM, CAUTIONS, Loom};

/// What goods of every kind ask, and what each kind asks.
pub(super) const CARDS: &[(&str, &str, &[Item])] = &[
    ("goods", "What is made, and how many of it.", Asked::<Place>::ITEMS),
    ("hank", "Hanks.", hank::Hank::<Place>::ITEMS),
    ("ball", "Balls, cones, and pieces sold by their mass each.", weighed::ByMass::<Place>::ITEMS),
    ("woven", "Woven pieces.", woven::Piece::<Place>::ITEMS),
    ("piece", "Pieces by their mass per area.", weighed::ByArea::<Place>::ITEMS),
];

/// A kind of goods and how many of it were promised.
#[derive(Clone, Debug)]
pub(super) struct Good {
    pub(super) name: String,
    /// How many were promised.
    pub(super) promised: Option<u32>,
    /// What the plan reads of it.
    asked: Asked<Place>,
    /// Takes what the others leave.
    pub(super) takes_rest: bool,
    /// Where the promise is in the file.
    pub(super) origin: String,
    /// How far a piece's yarn differs from the mean of all pieces: a factor about one.
    evenness: Option<Place>,
    pub(super) uses: Uses,
    making: Making,
    /// Stages of the mill's own between the yarn and the goods.
    passes: Vec<Pass>,
    /// The machines that other goods go over too: their values are called by the good as well.
    pub(super) shared: Vec<String>,
}

/// The yarns that a good is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Uses {
    One(usize),
    Two { warp: usize, weft: usize },
}

/// What a good is and of which yarns, before the rest of it is read.
#[derive(Clone, Debug)]
pub(super) struct GoodKind {
    pub(super) kind: String,
    pub(super) uses: Uses,
}

/// The kinds of goods.
const KINDS: [&str; 5] = ["hank", "ball", "cone", "woven", "piece"];

impl GoodKind {
    pub(super) fn read(keys: &Section<'_>, yarns: &[String]) -> Result<GoodKind> {
        let nameless = yarns.iter().all(String::is_empty);
        let kind = match keys.text_or_none("kind")? {
            Some(kind) => kind,
            None if nameless => "piece".to_owned(),
            None => keys.text("kind", "the kind of goods", "\"hank\" or \"woven\"")?,
        };
        if !KINDS.contains(&kind.as_str()) {
            let all: Vec<String> = KINDS.iter().map(|kind| format!("\"{kind}\"")).collect();
            return Err(keys.error(
                "kind",
                format!("'{kind}' is not a kind of goods; write {}", all.join(", ")),
            ));
        }
        let known = |key: &str, name: &str| {
            yarns.iter().position(|yarn| yarn == name).ok_or_else(|| {
                let near = did_you_mean(name, yarns.iter().map(String::as_str))
                    .map_or_else(String::new, |near| format!("; did you mean '{near}'?"));
                let all: Vec<String> = yarns.iter().map(|yarn| format!("'{yarn}'")).collect();
                let message = format!(
                    "no stage makes a yarn '{name}'{near} The lot makes {}",
                    all.join(", ")
                );
                keys.error(key, message.replace("' The", "'; the"))
            })
        };
        let named = |key: &str| -> Result<Option<usize>> {
            keys.line_or_none(key)?.map(|name| known(key, &name)).transpose()
        };
        let uses = match (named("warp")?, named("weft")?, named("yarn")?) {
            (Some(warp), Some(weft), None) if warp != weft => Uses::Two { warp, weft },
            (Some(one), Some(_), None) | (None, None, Some(one)) => Uses::One(one),
            (None, None, None) if yarns.len() == 1 => Uses::One(0),
            (None, None, None) => {
                let example = format!("\"{}\"", yarns[0]);
                return Err(keys.missing("yarn", "the yarn that it is made of", &example));
            }
            (Some(_), None, None) => {
                let example = format!("\"{}\"", yarns[0]);
                return Err(keys.missing("weft", "the yarn of the weft", &example));
            }
            (None, Some(_), None) => {
                let example = format!("\"{}\"", yarns[0]);
                return Err(keys.missing("warp", "the yarn of the warp", &example));
            }
            _ => {
                return Err(keys.error("yarn", "write yarn, or warp and weft; not both"));
            }
        };
        if matches!(uses, Uses::Two { .. }) && kind != "woven" {
            return Err(keys.error("warp", "only woven goods have a warp; write yarn instead"));
        }
        Ok(GoodKind { kind, uses })
    }
    pub(super) fn yarns(&self) -> impl Iterator<Item = usize> + use<> {
        self.uses.yarns()
    }
}

impl Uses {
    fn yarns(self) -> impl Iterator<Item = usize> + use<> {
        let (first, second) = match self {
            Uses::One(yarn) => (yarn, None),
            Uses::Two { warp, weft } => (warp, Some(weft)),
        };
        std::iter::once(first).chain(second)
    }
}

/// What is asked of goods of every kind.
#[derive(Clone, Debug, Inputs)]
struct Asked<N> {
    /// pieces promised
    #[q("n", 0.0..=5000.0, zero, like = "12")]
    promised: Option<Count<N>>,
    /// coefficient of variation of the yarn from piece to piece
    #[q("CV", 0.0..=0.1, zero, like = "2 %")]
    piece_cv: Option<Fraction<N>>,
}

#[derive(Clone, Debug)]
enum Making {
    Hank { hank: hank::Hank<Place>, reel: Reel<Place>, machine: String },
    Woven(Box<woven::Piece<Place>>, Box<Loom>),
    Weighed(weighed::Weighed<Place>),
}

/// What a good needs of a finished yarn, in clean dry fibre.
#[derive(Clone, Copy, Debug)]
pub(super) struct Need<N> {
    /// For each piece.
    pub(super) each: Mass<N>,
    /// Once, however many pieces.
    pub(super) fixed: Mass<N>,
}

/// What a good needs of one of its yarns.
#[derive(Clone, Copy, Debug)]
pub(super) struct Part<N> {
    pub(super) yarn: usize,
    /// Warp or weft, where they are two yarns.
    role: &'static str,
    pub(super) need: Need<N>,
}

/// What a good needs of its yarns.
#[derive(Clone, Copy, Debug)]
pub(super) struct Needs<N> {
    first: Part<N>,
    second: Option<Part<N>>,
}

impl<N: Number> Needs<N> {
    fn one(yarn: usize, need: Need<N>) -> Self {
        Needs { first: Part { yarn, role: "", need }, second: None }
    }
    fn two(warp: (usize, Need<N>), weft: (usize, Need<N>)) -> Self {
        let part = |(yarn, need), role| Part { yarn, role, need };
        Needs { first: part(warp, "_warp"), second: Some(part(weft, "_weft")) }
    }
    pub(super) fn parts(&self) -> impl Iterator<Item = &Part<N>> {
        std::iter::once(&self.first).chain(&self.second)
    }
    /// Clean dry fibre in a piece, of all its yarns.
    pub(super) fn each(&self) -> V<N> {
        let first = self.first.need.each.v();
        self.second.iter().fold(first, |sum, part| sum + part.need.each.v())
    }
}

/// Where some of a good's yarn went, in clean dry fibre.
#[derive(Debug)]
pub(super) struct Used<N> {
    pub(super) stage: String,
    pub(super) to: &'static str,
    /// Name of the value.
    pub(super) key: String,
    pub(super) fibre: Mass<N>,
    /// The yarn that it is of.
    pub(super) yarn: usize,
}

/// A yarn as the goods meet it.
#[derive(Clone, Copy, Debug)]
pub(super) struct YarnEnd<N> {
    /// The finished yarn, on clean dry fibre.
    pub(super) dry: Option<LinearDensity<N>>,
    /// Its count as on the label.
    pub(super) label_count: Option<LinearDensity<N>>,
    /// Mass as sold for each unit of clean dry fibre.
    pub(super) label_state: Ratio<N>,
    /// Shrinkage of the hank after the reel.
    pub(super) shrinkage: Shrinkage<N>,
}

impl<N: Number> YarnEnd<N> {
    /// The count on clean dry fibre; goods by length are refused of a yarn without one.
    fn count(&self) -> LinearDensity<N> {
        self.dry.unwrap_or(LinearDensity::base(N::constant(f64::NAN)))
    }
    fn labelled(&self) -> LinearDensity<N> {
        self.label_count.unwrap_or(LinearDensity::base(N::constant(f64::NAN)))
    }
}

/// What the goods are calculated from.
pub(super) struct Shop<'a, 'v, N> {
    pub(super) values: &'a Values<'v, N>,
    pub(super) ends: &'a [YarnEnd<N>],
}

impl Good {
    pub(super) fn read(
        name: &str,
        node: &Node<'_>,
        kind: &GoodKind,
        desk: &Desk<'_>,
        stages: &[Stop],
        draft: &mut Draft,
    ) -> Result<Self> {
        let section = node.keys().called(format!("goods.{name}"));
        section.know(names(&OF_GOODS));
        let promised = section.whole("promised")?;
        let asked = section.read(draft, |reader| Asked::take(reader))?;
        let takes_rest = match section.at("takes_rest") {
            Some(at) if at.item.as_str() == Some("rest") => true,
            _ => section.flag("takes_rest")?,
        };
        if promised.is_none() && !takes_rest {
            return Err(section.error(
                "promised",
                "how many were promised is missing; write promised = 12, or takes_rest = true for what the others leave",
            ));
        }
        let machine = |of: &str| stages.iter().find(|stop| stop.kind() == of);
        let table = |of: &str| match machine(of) {
            Some(stop) => desk.stage(node, stop).map(Some),
            None => Ok(None),
        };
        let making = match kind.kind.as_str() {
            "hank" => {
                let reel = table("reel")?.filter(Section::is_present).ok_or_else(|| {
                    section.error(
                        "kind",
                        "hanks need a reel; write a table [reel] with reel_circumference = \"1.50 m\"",
                    )
                })?;
                let hank = section.read(draft, |reader| hank::Hank::take(reader))?;
                let circumference = reel.read(draft, |reader| Reel::take(reader))?;
                reel.finish()?;
                let name = machine("reel").map_or("reel", |stop| stop.machine.as_str());
                Making::Hank { hank, reel: circumference, machine: name.to_owned() }
            }
            "woven" => {
                let tables = (table("cone")?, table("loom")?, table("finish")?);
                let (cone, Some(loom), finish) = tables else {
                    return Err(section.error("route", "woven goods need a loom in their route"));
                };
                if !loom.is_present() {
                    return Err(section.error(
                        "kind",
                        "woven goods need a loom; write the tables [loom] and [finish]",
                    ));
                }
                let piece = section.read(draft, |reader| woven::Piece::take(reader))?;
                let names = ["cone", "loom", "finish"].map(|of| {
                    machine(of).map_or_else(|| of.to_owned(), |stop| stop.machine.clone())
                });
                let loom = Loom::read(cone.as_ref(), &loom, finish.as_ref(), names, draft)?;
                Making::Woven(Box::new(piece), Box::new(loom))
            }
            _ => Making::Weighed(weighed::Weighed::read(&section, &kind.kind, draft)?),
        };
        let own: Vec<Stop> = stages.iter().filter(|stop| stop.kind() == "loss").cloned().collect();
        let passes = match making {
            Making::Weighed(_) => desk.passes(node, &own, draft),
            _ if own.is_empty() => Vec::new(),
            _ => {
                return Err(section.error(
                    "route",
                    format!(
                        "'{}' is not a machine for these goods; remove it, and put its loss into [cone] or \
                         [finish]",
                        own[0].machine
                    ),
                ));
            }
        };
        section.know(desk.named());
        section.finish()?;
        let evenness = match &asked.piece_cv {
            None => None,
            Some(cv) => {
                let pieces = promised.filter(|n| *n > 0).ok_or_else(|| {
                    section.error(
                        "piece_cv",
                        "how many pieces average out is not known; write promised too",
                    )
                })?;
                Some(evenness(draft, *cv.inner(), &section.path, pieces)?)
            }
        };
        let origin = section.at("promised").map_or_else(|| section.place(), |at| at.place());
        Ok(Good {
            name: name.to_owned(),
            promised,
            asked,
            takes_rest,
            origin,
            evenness,
            uses: kind.uses,
            making,
            passes,
            shared: Vec::new(),
        })
    }

    /// Its yarns: the only one, or warp and weft.
    pub(super) fn yarns(&self) -> impl Iterator<Item = usize> + use<> {
        self.uses.yarns()
    }
    /// Whether a yarn goes into the good.
    pub(super) fn uses(&self, yarn: usize) -> bool {
        self.uses.yarns().any(|used| used == yarn)
    }
    /// What can do harm at its machines.
    pub(super) fn cautions(&self) -> Vec<(String, &'static [&'static str])> {
        match &self.making {
            Making::Woven(_, loom) => {
                let machines = loom.names[1..].iter().cloned();
                machines.zip(CAUTIONS).map(|(machine, (_, names))| (machine, names)).collect()
            }
            _ => Vec::new(),
        }
    }
    /// Its loom, and the time to change over to another warp.
    pub(super) fn loom_changeover(&self) -> Option<(&str, Place)> {
        match &self.making {
            Making::Woven(_, loom) => Some((&loom.names[1], loom.changeover?)),
            _ => None,
        }
    }
    /// The width that its loom takes.
    pub(super) fn loom_width(&self) -> Option<Place> {
        match &self.making {
            Making::Woven(_, loom) => loom.size.loom_width.as_ref().map(|width| *width.inner()),
            _ => None,
        }
    }
    /// Whether it is reeled.
    pub(super) fn is_reeled(&self) -> bool {
        matches!(self.making, Making::Hank { .. })
    }
    /// The reeds of its loom, and what each gives.
    pub(super) fn reeds(&self, values: &Values<'_, f64>) -> Option<Owns> {
        match &self.making {
            Making::Woven(_, loom) => Some(loom.owns(values)),
            _ => None,
        }
    }
    /// The machines that the good goes over.
    pub(super) fn machines(&self) -> Vec<&str> {
        match &self.making {
            Making::Hank { machine, .. } => vec![machine],
            Making::Woven(_, loom) => loom.names.iter().map(String::as_str).collect(),
            Making::Weighed(_) => self.passes.iter().map(|pass| pass.machine.as_str()).collect(),
        }
    }
    /// Where its settings at a machine belong.
    fn spot<'a>(&'a self, machine: &'a str, at: &'a str) -> Spot<'a> {
        let shared = self.shared.iter().any(|other| other == machine);
        Spot { at, machine, of: if shared { &self.name } else { "" } }
    }
    /// What its values at a machine are called by.
    pub(super) fn at(&self, machine: &str) -> String {
        let shared = self.shared.iter().any(|other| other == machine);
        if shared { format!("{machine}.{}", self.name) } else { machine.to_owned() }
    }

    /// What the good needs of its yarns.
    pub(super) fn need<N: Number>(&self, shop: &Shop<'_, '_, N>) -> Needs<N> {
        let mut needs = match &self.making {
            Making::Hank { hank, reel, .. } => self.hank_need(hank, reel, shop),
            Making::Woven(piece, loom) => piece.need(self, loom, shop),
            Making::Weighed(weighed) => self.weighed_need(weighed, shop),
        };
        if let Some(place) = &self.evenness {
            let factor = Ratio::base(shop.values.at(*place));
            for part in std::iter::once(&mut needs.first).chain(&mut needs.second) {
                part.need.each = Mass::from(part.need.each.v() * factor.v());
            }
        }
        needs
    }

    /// What to set for the good, and where its yarn goes; `oily` are the counts of its yarns as they go to
    /// the reel.
    pub(super) fn set<N: Number>(
        &self,
        shop: &Shop<'_, '_, N>,
        taken: &Taken<N>,
        oily: &[Option<LinearDensity<N>>],
        bench: &mut Bench<N>,
    ) -> Vec<Used<N>> {
        match &self.making {
            Making::Hank { hank, reel, machine } => {
                self.set_reel(hank, reel, machine, shop, oily, bench);
                vec![self.used(taken)]
            }
            Making::Woven(piece, loom) => piece.set(self, loom, shop, taken, bench),
            Making::Weighed(weighed) => self.set_weighed(weighed, shop, taken, bench),
        }
    }
    /// All of it is in the goods.
    fn used<N: Number>(&self, taken: &Taken<N>) -> Used<N> {
        Used {
            stage: self.name.clone(),
            to: "goods",
            key: format!("{}.yarn", self.name),
            fibre: taken.first,
            yarn: self.uses.yarns().next().unwrap_or(0),
        }
    }
    /// How many are promised.
    pub(super) fn wanted<N: Number>(&self, values: &Values<'_, N>) -> Option<V<N>> {
        self.asked.promised.as_ref().map(|n| V(values.at(*n.inner())))
    }
}

/// Piece-to-piece variation as a value of its own: the mean over the pieces, about one.
fn evenness(draft: &mut Draft, cv: Place, path: &str, pieces: u32) -> Result<Place> {
    let cv = &draft.given[cv.0];
    let pieces = f64::from(pieces);
    let given = Given {
        key: format!("{path}.mean_of_pieces"),
        symbol: "m",
        meaning: "mean yarn of the pieces, over that planned",
        kind: Kind::Ratio,
        amount: crate::quantity::bare_number(1.0, Kind::Ratio)?,
        typed: "1".to_owned(),
        spread: super::chance::Spread::normal(1.0, cv.base() / pieces.sqrt()),
        layer: super::chance::Layer::Piece,
        origin: cv.origin.clone(),
        from: cv.from.clone(),
    };
    Ok(draft.push(None, given))
}

/// A billionth of a piece too little is a whole piece: arithmetic rounds.
const WHOLE: f64 = 1e-9;

/// What a good takes of the yarn that is left when its turn comes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Taken<N> {
    /// Pieces that the yarn left would make, not rounded down.
    pub(super) unrounded: Count<N>,
    /// Whole pieces made: as many as were promised, or all where the good takes the rest.
    pub(super) made: Count<N>,
    /// Yarn that goes into them: of the only yarn or the warp, and of the weft.
    pub(super) first: Mass<N>,
    pub(super) second: Option<Mass<N>>,
    /// Yarn that the promise needs, whether there is enough or not.
    pub(super) promised: Mass<N>,
}

impl<N: Number> Taken<N> {
    pub(super) fn each(&self) -> impl Iterator<Item = Mass<N>> + use<N> {
        std::iter::once(self.first).chain(self.second)
    }
    /// Takes it off the yarns that are left.
    pub(super) fn off(&self, needs: &Needs<N>, left: &mut [V<N>]) {
        for (part, used) in needs.parts().zip(self.each()) {
            left[part.yarn] = left[part.yarn] - used.v();
        }
    }
    /// Puts it back.
    pub(super) fn give_back(&self, needs: &Needs<N>, left: &mut [V<N>]) {
        for (part, used) in needs.parts().zip(self.each()) {
            left[part.yarn] = left[part.yarn] + used.v();
        }
    }
}

impl Good {
    /// Takes yarn for the good out of what is left: for as many as were promised, or for `all`.
    #[inline]
    pub(super) fn take<N: Number>(
        &self,
        values: &Values<'_, N>,
        needs: &Needs<N>,
        left: &[V<N>],
        all: bool,
    ) -> Taken<N> {
        let name = self.name.as_str();
        let unrounded = |part: &Part<N>| {
            let Need { each, fixed } = part.need;
            let pieces = mill::pieces_from_mass(Mass::from(left[part.yarn]), fixed, each);
            let words = "pieces that the yarn left would make";
            match part.role {
                "" => pieces,
                "_warp" => named(name, "unrounded_warp", words, pieces),
                _ => named(name, "unrounded_weft", words, pieces),
            }
        };
        let first = unrounded(&needs.first);
        let least = needs
            .second
            .as_ref()
            .map_or(first, |second| Count::from(first.v().min(unrounded(second).v())));
        let unrounded = named(name, "unrounded", "pieces that the yarn left would make", least);
        let whole = unrounded.v().round_down(WHOLE);
        let none = Count::base(N::constant(0.0));
        let promised = self.asked.promised.as_ref();
        let wanted = promised.map_or(none, |n| Count::base(values.at(*n.inner())));
        let made = if all { whole } else { whole.min(wanted.v()) };
        let made = named(name, "made", "whole pieces", Count::from(made));
        let used = |part: &Part<N>| {
            let used = mill::yarn_for_pieces(made, part.need.fixed, part.need.each);
            let words = "scoured yarn that goes into them, as clean dry fibre";
            match part.role {
                "" => named(name, "yarn", words, used),
                "_warp" => named(name, "yarn_warp", words, used),
                _ => named(name, "yarn_weft", words, used),
            }
        };
        let (first, second) = (used(&needs.first), needs.second.as_ref().map(used));
        let promised =
            |part: &Part<N>| mill::yarn_for_pieces(wanted, part.need.fixed, part.need.each);
        let asked = promised(&needs.first);
        let asked = needs
            .second
            .as_ref()
            .map_or(asked, |second| Mass::from(asked.v() + promised(second).v()));
        let words = "scoured yarn that the promise needs, as clean dry fibre";
        let promised = named(name, "yarn_promised", words, asked);
        Taken { unrounded, made, first, second, promised }
    }
}
