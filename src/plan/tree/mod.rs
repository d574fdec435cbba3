//! A lot as a tree: fleeces, sorts, heaps, yarns, goods. One mass goes down each route; masses are divided
//! and put together only where one level meets the next.

pub(super) mod back;
mod ends;
pub(super) mod forward;
pub(super) mod heaps;
pub(super) mod levels;
mod mix;
pub(super) mod read;
pub(super) mod routes;
mod ways;

use super::given::Values;
use super::goods::Good;
use super::lot::{Fleece, Labelled, Wool, Yarn, YarnInStock};
use super::stage::{AnyStage, At, Ledger};
use super::stock::Flow;
use crate::calculation::Place;
use crate::number::Number;
use crate::quantity::Mass;

/// A lot, from the fleeces to the goods.
#[derive(Clone, Debug, Default)]
pub(super) struct Tree {
    pub(super) fleeces: Vec<FleeceNode>,
    pub(super) sorts: Vec<SortNode>,
    pub(super) heaps: Vec<HeapNode>,
    pub(super) yarns: Vec<YarnNode>,
    /// The goods, in the order in which they are served.
    pub(super) goods: Vec<Good>,
    /// The yarns, each after the one that it is made from.
    pub(super) order: Vec<usize>,
    /// Nothing is divided but among the goods.
    line: bool,
    /// Of each good, whether none after it is made of its yarns.
    last_of_yarn: Vec<bool>,
    /// How many stages there are in all routes.
    pub(super) passes: usize,
    /// The clean fibre of the greasy wool is not known: all is carried as it is weighed.
    pub(super) weighed: bool,
}

/// A stage at its place in a route.
#[derive(Clone, Debug)]
pub(super) struct Pass {
    pub(super) stage: AnyStage,
    /// As the route names it, such as `mule-2`.
    pub(super) machine: String,
    /// The fleece, sort, heap or yarn that is in it, where several pass the same stage.
    pub(super) of: String,
    /// What its values are called by, such as `weft.mule-2`.
    pub(super) name: String,
    /// Its place among all stages of the lot.
    pub(super) place: usize,
    /// Whether the machine is first filled with this wool here.
    pub(super) keeps: bool,
    /// The machine was not cleared: it begins full of the wool before, and keeps nothing more.
    pub(super) uncleared: bool,
    /// Where its waste goes, where the files say so.
    pub(super) to: Option<String>,
    /// What is weighed out for the bath, as shares of the clean dry goods.
    pub(super) recipe: Vec<(String, Place)>,
    /// What the mill says of the machine: how it looks, sounds and feels.
    pub(super) craft: Vec<(&'static str, String)>,
    /// Time to change over to this wool or yarn, hours.
    pub(super) changeover: Option<Place>,
}

/// What one grower brought.
#[derive(Clone, Debug)]
pub(super) struct FleeceNode {
    pub(super) name: String,
    /// What its values are called by.
    pub(super) key: String,
    pub(super) owner: String,
    pub(super) colour: String,
    pub(super) inputs: Fleece<Place>,
    pub(super) passes: Vec<Pass>,
    pub(super) sorts: Vec<usize>,
    /// The share that is sorted out, where the fleece is divided into several sorts.
    pub(super) rejects: Option<Place>,
}

/// What comes off the sorting table as one.
#[derive(Clone, Debug)]
pub(super) struct SortNode {
    pub(super) name: String,
    pub(super) fleece: usize,
    /// Of the mass that enters the sorting; none for what the others leave.
    pub(super) share: Option<Place>,
    /// What the wool is, where the fleece is divided.
    pub(super) wool: Wool<Place>,
    pub(super) passes: Vec<Pass>,
    /// The only sort of its fleece: what the route of the fleece leaves.
    pub(super) whole: bool,
}

/// What a heap is made of.
#[derive(Clone, Debug)]
pub(super) enum Of {
    /// All that there is of each sort.
    All(Vec<usize>),
    /// Dry shares of sorts.
    Shares(Vec<(usize, Place)>),
}

/// How much of a heap a yarn gets, where it is weighed out beforehand.
#[derive(Clone, Copy, Debug)]
pub(super) enum Cut {
    /// A share of the heap.
    Share(Place),
    /// A mass, as weighed.
    Mass(Place),
    /// What the other yarns leave.
    Rest,
}

/// Wool that is mixed and prepared as one.
#[derive(Clone, Debug)]
pub(super) struct HeapNode {
    pub(super) name: String,
    pub(super) key: String,
    pub(super) of: Of,
    pub(super) passes: Vec<Pass>,
    /// Kept back unspun, as weighed.
    pub(super) held: Option<Place>,
    /// How it is weighed out to its yarns; none where each takes what it turns out to need.
    pub(super) split: Option<Vec<Cut>>,
    /// Its yarns, in the order in which they are carded and spun.
    pub(super) yarns: Vec<usize>,
}

/// What a yarn is made of.
#[derive(Clone, Debug)]
pub(super) enum From {
    Heap(usize),
    /// A part of another yarn, such as what is dyed in the hank.
    Yarn(usize),
    Stock(YarnInStock<Place>),
}

/// A yarn.
#[derive(Clone, Debug)]
pub(super) struct YarnNode {
    pub(super) name: String,
    /// What its values are called by: `yarn`, or `yarn.weft` where there are several.
    pub(super) key: String,
    pub(super) from: From,
    pub(super) spec: Yarn<Place>,
    pub(super) label: Labelled<Place>,
    /// What the values of its label are called by.
    pub(super) label_key: String,
    pub(super) passes: Vec<Pass>,
    /// The good of it that is served first; the number of goods where there is none.
    pub(super) rank: usize,
    /// The goods of it take what the others leave.
    pub(super) takes_rest: bool,
    /// Yarns that are made from it.
    pub(super) children: Vec<usize>,
}

impl Tree {
    /// Every stage of the lot, in order.
    pub(super) fn all_passes(&self) -> impl Iterator<Item = &Pass> {
        self.fleeces
            .iter()
            .flat_map(|node| &node.passes)
            .chain(self.sorts.iter().flat_map(|node| &node.passes))
            .chain(self.heaps.iter().flat_map(|node| &node.passes))
            .chain(self.yarns.iter().flat_map(|node| &node.passes))
    }
    /// The yarns, each after the one that it is made from.
    fn ordered(&self) -> Vec<usize> {
        let depth = |mut yarn: usize| {
            let mut depth = 0;
            while let From::Yarn(parent) = self.yarns[yarn].from {
                (yarn, depth) = (parent, depth + 1);
            }
            depth
        };
        let mut order: Vec<usize> = (0..self.yarns.len()).collect();
        order.sort_by_key(|yarn| depth(*yarn));
        order
    }
    /// Settles what does not change from one simulated lot to the next.
    pub(super) fn settle(&mut self) {
        self.order = self.ordered();
        self.line = self.looks_like_a_line();
        let goods = &self.goods;
        let share = |one: &Good, other: &Good| one.yarns().any(|yarn| other.uses(yarn));
        self.last_of_yarn = (0..goods.len())
            .map(|place| !goods[place + 1..].iter().any(|other| share(&goods[place], other)))
            .collect();
    }
    /// One fleece, one heap of it, one yarn or none: nothing is divided but among the goods.
    pub(super) fn is_line(&self) -> bool {
        self.line
    }
    fn looks_like_a_line(&self) -> bool {
        self.fleeces.len() == 1
            && self.sorts.len() == 1
            && self.heaps.len() == 1
            && self.yarns.len() == 1
            && self.heaps[0].held.is_none()
            && matches!(self.heaps[0].of, Of::All(_))
    }
}

impl Tree {
    /// Grease and dirt on the fibre of each wool that is read: less than nothing is impossible.
    pub(super) fn wools<'a>(
        &'a self,
        values: &'a Values<'_, f64>,
    ) -> impl Iterator<Item = f64> + 'a {
        let one = Mass::base(1.0);
        let fleeces = self.fleeces.iter().map(|node| &node.inputs.wool);
        let sorts = self.sorts.iter().filter(|sort| !sort.whole).map(|sort| &sort.wool);
        fleeces.chain(sorts).map(move |wool| wool.flow("", values, one).fat.value())
    }
    /// The share of its heap that each yarn needs for the promises.
    pub(super) fn shares<'a>(
        &'a self,
        made: &'a forward::Carried<f64>,
    ) -> impl Iterator<Item = f64> + 'a {
        self.yarns.iter().enumerate().map(|(place, yarn)| match yarn.from {
            From::Heap(heap) => made.asked_before[place].0 / made.heaps[heap].1.fibre.value(),
            _ => 0.0,
        })
    }
}

impl Pass {
    /// What comes out of it, in words.
    pub(super) fn makes(&self) -> &str {
        match self.stage.makes() {
            "" => &self.machine,
            makes => makes,
        }
    }
    pub(super) fn at(&self) -> At<'_> {
        At { name: &self.name, keeps: self.keeps }
    }
}

/// One mass down a route; `see` is shown what leaves each stage.
#[inline(always)]
pub(super) fn down<N: Number>(
    passes: &[Pass],
    values: &Values<'_, N>,
    mut flow: Flow<N>,
    ledger: &mut impl Ledger,
    see: &mut impl FnMut(usize, Flow<N>),
) -> Flow<N> {
    for pass in passes {
        ledger.enter(pass);
        flow = pass.stage.carry(&pass.at(), values, flow, ledger);
        see(pass.place, flow);
    }
    flow
}

/// What must go into a route for some clean dry fibre to come out of it.
pub(super) fn up<N: Number>(passes: &[Pass], values: &Values<'_, N>, fibre: Mass<N>) -> Mass<N> {
    passes.iter().rev().fold(fibre, |fibre, pass| pass.stage.back(&pass.at(), values, fibre))
}
