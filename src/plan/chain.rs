//! The planned values carried down the tree, and what is to be set at each machine.

use super::Plan;
use super::given::Values;
use super::goods::{Shop, Taken, Used};
use super::stage::{Bench, InYarn, Ledger, NoLedger, Setting, Station, named};
use super::stock::{Flow, Stock};
use super::tree::forward::Carried;
use super::tree::{FleeceNode, From, Of, Pass, Tree};
use crate::fibre;
use crate::number::{Number, V};
use crate::quantity::{Fineness, Fraction, LinearDensity, Mass};
use crate::worked::{Recording, Tape, Worked};

/// Something that left the route, and where it went.
#[derive(Clone, Debug)]
pub(super) struct Loss {
    pub(super) stage: String,
    pub(super) to: String,
    /// Name of the value, where it has one.
    pub(super) key: String,
    pub(super) stock: Stock,
}

/// Keeps the books of the stages.
#[derive(Default)]
struct Books {
    stage: String,
    to: Option<String>,
    lost: Vec<Loss>,
    added: Vec<Loss>,
}

impl Books {
    fn line(&self, to: &str, key: &str, stock: Stock) -> Loss {
        let to = match (&self.to, key) {
            (Some(own), "lost") => own,
            _ => to,
        };
        let key = if key.is_empty() { String::new() } else { format!("{}.{key}", self.stage) };
        Loss { stage: self.stage.clone(), to: to.to_owned(), key, stock }
    }
}

impl Ledger for Books {
    fn enter(&mut self, pass: &Pass) {
        self.stage.clone_from(&pass.name);
        self.to.clone_from(&pass.to);
    }
    fn sorted_out(&mut self, fleece: &FleeceNode, what: impl FnOnce() -> Stock) {
        let stage = format!("{}.sort", fleece.name);
        self.lost.push(Loss { stage, to: "rejects".to_owned(), key: String::new(), stock: what() });
    }
    fn lost(&mut self, to: &'static str, key: &str, what: impl FnOnce() -> Stock) {
        let stock = what();
        // Wool that leaves with more water on it than it came with has lost none.
        if stock.water < 0.0 {
            self.added("water taken up", || Stock::default().less(&stock));
        } else {
            self.lost.push(self.line(to, key, stock));
        }
    }
    fn added(&mut self, from: &'static str, what: impl FnOnce() -> Stock) {
        self.added.push(self.line(from, "", what()));
    }
}

/// A yarn that goods are made of, in clean dry fibre.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct YarnMade {
    /// What begins as this yarn, and what is finished of it.
    pub(super) begun: Stock,
    pub(super) finished: Stock,
    /// What no goods take, in clean dry fibre.
    pub(super) left_over: f64,
}

/// The plan with the likely values carried through.
#[derive(Debug, Default)]
pub(super) struct Nominal {
    /// The greasy wool of each fleece.
    pub(super) fleeces: Vec<Stock>,
    /// Where the sorts begin.
    pub(super) begun: Vec<Stock>,
    /// What comes into each stage and out of it.
    pub(super) flow: Vec<(Stock, Stock)>,
    pub(super) lost: Vec<Loss>,
    pub(super) added: Vec<Loss>,
    pub(super) settings: Vec<Setting>,
    pub(super) made: Vec<f64>,
    pub(super) unrounded: Vec<f64>,
    /// What each heap has of each sort: heap, sort, clean dry fibre.
    pub(super) parts: Vec<(usize, usize, f64)>,
    /// Clean dry fibre that each good takes of its yarns.
    pub(super) taken: Vec<Vec<f64>>,
    /// Clean dry fibre in a piece of each good.
    pub(super) each: Vec<f64>,
    pub(super) yarns: Vec<YarnMade>,
    /// Mass as sold for each unit of clean dry fibre, of each yarn.
    pub(super) label_states: Vec<f64>,
    /// What of each sort no heap takes, and what of each heap is not spun.
    pub(super) left_sorts: Vec<Stock>,
    pub(super) unspun: Vec<Stock>,
    /// Each sort as it is ready for the heaps, and each heap for the card, in clean dry fibre.
    pub(super) sorts: Vec<f64>,
    pub(super) heaps: Vec<f64>,
    /// Each heap on the scale, ready for the card.
    pub(super) heap_mass: Vec<f64>,
    /// What the promises ask of each heap, at its yarns' beginnings, in clean dry fibre.
    pub(super) asked_before: Vec<f64>,
    /// What is beyond what the promise needs (negative: short): see [`Spared`].
    pub(super) spare: f64,
    /// Where the yarn of the goods went, in clean dry fibre.
    pub(super) used: Vec<Used<f64>>,
    pub(super) recording: Recording,
}

impl Plan {
    /// The likely values in base units.
    pub(super) fn likely(&self) -> Vec<f64> {
        self.given.iter().map(super::Given::base).collect()
    }
}

impl Nominal {
    /// Runs the plan with its likely values and records how every value is calculated.
    pub(super) fn new(plan: &Plan) -> Nominal {
        let tape = Tape::new();
        let mut nominal = Nominal::default();
        {
            let given: Vec<Worked<'_>> = plan.given.iter().map(|g| g.enter(&tape)).collect();
            nominal.run(plan, &Values { given: &given });
        }
        nominal.recording = tape.finish();
        nominal
    }

    /// The plan carried through with some values; nothing is recorded.
    pub(super) fn plain(plan: &Plan, values: &[f64]) -> Nominal {
        let mut nominal = Nominal::default();
        nominal.run(plan, &Values { given: values });
        nominal
    }

    fn run<N: Number>(&mut self, plan: &Plan, values: &Values<'_, N>) {
        let tree = &plan.tree;
        let mut books = Books::default();
        let mut made = Carried::default();
        let mut out: Vec<Option<Flow<N>>> = vec![None; tree.passes];
        tree.carry(values, &mut made, &mut books, &mut |place, flow| out[place] = Some(flow));
        self.lost = books.lost;
        self.added = books.added;
        self.fleeces = made.fleeces.iter().map(Flow::stock).collect();

        let mut bench = Bench::new(plan.say.clone());
        let mut oily = vec![None; tree.yarns.len()];
        self.flow = vec![Default::default(); tree.passes];
        let mut walk = |passes: &[Pass],
                        begin: Flow<N>,
                        name: &str,
                        bench: &mut Bench<N>,
                        yarn: Option<OfYarn<'_, N>>| {
            let route = Route::of(passes, begin, name, &out);
            for (pass, flows) in passes.iter().zip(route.flows.windows(2)) {
                self.flow[pass.place] = (flows[0].stock(), flows[1].stock());
            }
            route.set(values, yarn.as_ref(), bench)
        };
        for (node, flow) in tree.fleeces.iter().zip(&made.fleeces) {
            walk(&node.passes, *flow, &node.key, &mut bench, None);
        }
        for (node, flow) in tree.sorts.iter().zip(&made.begun) {
            walk(&node.passes, *flow, &node.name, &mut bench, None);
        }
        for (node, (flow, _)) in tree.heaps.iter().zip(&made.heaps) {
            walk(&node.passes, *flow, &node.key, &mut bench, None);
        }
        for place in tree.order.iter().copied() {
            let (node, (flow, _)) = (&tree.yarns[place], made.yarns[place]);
            bench.single_twist = None;
            bench.folding_twist = None;
            bench.draw = None;
            let spun = made.ends[place].dry.map(|dry| OfYarn {
                dry,
                spec: &node.spec,
                fineness: tree.fineness(place, values, &made),
            });
            let reeled = walk(&node.passes, flow, &node.key, &mut bench, spun);
            oily[place] = match node.from {
                From::Yarn(parent) => oily[parent],
                _ => reeled,
            };
        }
        let shop = Shop { values, ends: &made.ends };
        for (good, taken) in tree.goods.iter().zip(&made.taken) {
            for used in good.set(&shop, taken, &oily, &mut bench) {
                let fibre = Mass::base(used.fibre.value());
                let Used { stage, to, key, yarn, .. } = used;
                self.used.push(Used { stage, to, key, fibre, yarn });
            }
        }
        self.settings = bench.settings;
        let order: Vec<&str> = tree.all_passes().map(|pass| pass.name.as_str()).collect();
        // Goods come after the stages, in their own order.
        self.settings.sort_by_key(|s| order.iter().position(|o| *o == s.at).unwrap_or(order.len()));
        self.keep(tree, values, &made);
    }

    /// Keeps what comes of it as plain numbers.
    fn keep<N: Number>(&mut self, tree: &Tree, values: &Values<'_, N>, made: &Carried<N>) {
        self.made = made.taken.iter().map(|taken| taken.made.value()).collect();
        self.begun = made.begun.iter().map(Flow::stock).collect();
        self.label_states = made.ends.iter().map(|end| end.label_state.value()).collect();
        self.unrounded = made.taken.iter().map(|taken| taken.unrounded.value()).collect();
        self.each = made.needs.iter().map(|needs| needs.each().0.value()).collect();
        self.parts = made.parts.iter().map(|(h, s, fibre)| (*h, *s, fibre.0.value())).collect();
        let parts = |taken: &Taken<N>| taken.each().map(Mass::value).collect();
        self.taken = made.taken.iter().map(parts).collect();
        self.heap_mass = made.heaps.iter().map(|(_, flow)| flow.stock().total()).collect();
        self.sorts = made.sorts.iter().map(|flow| flow.fibre.value()).collect();
        self.heaps = made.heaps.iter().map(|(_, flow)| flow.fibre.value()).collect();
        self.asked_before = made.asked_before.iter().map(|asked| asked.0.value()).collect();
        let part = |flow: &Flow<N>, fibre: f64| {
            let stock = flow.stock();
            if stock.fibre > 0.0 { stock.share(fibre / stock.fibre) } else { Stock::default() }
        };
        let left = made.sorts.iter().zip(&made.left_sorts);
        self.left_sorts = left.map(|(flow, left)| part(flow, left.0.value())).collect();
        let left = made.heaps.iter().zip(&made.unspun);
        self.unspun = left.map(|((_, flow), left)| part(flow, left.0.value())).collect();
        for (place, (begun, finished)) in made.yarns.iter().enumerate() {
            let left = made.left_yarns[place];
            let words = "scoured yarn left over, as clean dry fibre";
            let key = if tree.yarns.len() == 1 { "promise" } else { &tree.yarns[place].key };
            let left = named(key, "left_over", words, Mass::from(left));
            self.yarns.push(YarnMade {
                begun: begun.stock(),
                finished: finished.stock(),
                left_over: left.value(),
            });
        }
        self.spare = tree.spare(values, made).0;
    }
}

impl Tree {
    /// What is beyond what the promise needs (negative: short), and the greasy wool that the promise needs.
    /// Where all is one line: finished yarn in clean dry fibre. Else: the share of its wool that the
    /// scarcest fleece has to spare.
    pub(super) fn spare<N: Number>(&self, values: &Values<'_, N>, made: &Carried<N>) -> (f64, f64) {
        if self.is_line() {
            let promised = made.taken.iter().map(|taken| taken.promised.v());
            let yarn = made.yarns[0].1.fibre.v();
            let spare = promised.clone().fold(yarn, |spare, promised| spare - promised);
            let words = "scoured yarn beyond what the promise needs, as clean dry fibre";
            let spare = named("promise", "spare", words, Mass::from(spare));
            let asked: f64 = promised.map(|promised| promised.0.value()).sum();
            return (spare.value(), asked);
        }
        let needed =
            self.greasy_for(values, &made.needs, &|good| good.wanted(values), Some(&made.sorts));
        let have =
            made.fleeces.iter().map(|flow| flow.fibre.value() * flow.plain_state().0.value());
        let have: Vec<f64> = have.collect();
        let asked = needed.iter().zip(&have).map(|(needed, have)| needed.value() / have);
        let most = asked.fold(0.0, f64::max);
        let stock = self.yarns.iter().enumerate().filter(|(_, y)| matches!(y.from, From::Stock(_)));
        let stock = stock.map(|(place, _)| {
            made.asked_before[place].0.value() / made.yarns[place].0.fibre.value()
        });
        (1.0 - stock.fold(most, f64::max), most * have.iter().sum::<f64>())
    }

    /// How fine the fibre of a yarn is, where it is known.
    fn fineness<N: Number>(
        &self,
        yarn: usize,
        values: &Values<'_, N>,
        made: &Carried<N>,
    ) -> Option<(Fineness<N>, Fraction<N>)> {
        let heap = match self.yarns[yarn].from {
            From::Heap(heap) => &self.heaps[heap],
            From::Yarn(parent) => return self.fineness(parent, values, made),
            From::Stock(_) => return None,
        };
        let of = |sort: usize| {
            let wool = self.sorts[sort].wool.map(&mut values.read());
            wool.diameter.map(|diameter| (diameter, wool.variation))
        };
        let sorts: Vec<(usize, Fraction<N>)> = match &heap.of {
            Of::All(all) => {
                if let [one] = all[..] {
                    return of(one);
                }
                let whole: f64 = all.iter().map(|sort| made.sorts[*sort].fibre.value()).sum();
                let share = |sort: &usize| made.sorts[*sort].fibre.v() / whole;
                all.iter().map(|sort| (*sort, Fraction::from(share(sort)))).collect()
            }
            Of::Shares(shares) => {
                shares.iter().map(|(s, share)| (*s, Fraction::base(values.at(*share)))).collect()
            }
        };
        let found = sorts.iter().map(|(sort, _)| of(*sort)).collect::<Option<Vec<_>>>()?;
        let shares: Vec<Fraction<N>> = sorts.iter().map(|(_, share)| *share).collect();
        let diameters: Vec<Fineness<N>> = found.iter().map(|(diameter, _)| *diameter).collect();
        let widest = found.iter().map(|(_, variation)| variation.v()).reduce(V::max)?;
        Some((fibre::diameter_of_blend(&shares, &diameters), Fraction::from(widest)))
    }
}

/// What is known of the yarn that goes down a route.
struct OfYarn<'a, N> {
    dry: LinearDensity<N>,
    spec: &'a super::lot::Yarn<crate::calculation::Place>,
    fineness: Option<(Fineness<N>, Fraction<N>)>,
}

/// A route with what went down it.
struct Route<'a, N> {
    passes: &'a [Pass],
    /// Before the first stage and after each.
    flows: Vec<Flow<N>>,
    begin: &'a str,
}

impl<'a, N: Number> Route<'a, N> {
    fn of(passes: &'a [Pass], begin: Flow<N>, name: &'a str, out: &[Option<Flow<N>>]) -> Self {
        let after = passes.iter().filter_map(|pass| out[pass.place]);
        let flows = std::iter::once(begin).chain(after).collect();
        Route { passes, flows, begin: name }
    }

    /// Sets the machines: counts are asked for up the route, settings made down it. Gives the count of
    /// the yarn as it goes to the reel.
    fn set(
        &self,
        values: &Values<'_, N>,
        yarn: Option<&OfYarn<'_, N>>,
        bench: &mut Bench<N>,
    ) -> Option<LinearDensity<N>> {
        let mut states = vec![self.flows[0].state(self.begin)];
        let named = self.passes.iter().zip(&self.flows[1..]);
        states.extend(named.map(|(pass, flow)| flow.state(&pass.name)));
        let station =
            |place: usize, counts: Option<(Option<LinearDensity<N>>, LinearDensity<N>)>| {
                let pass = &self.passes[place];
                Station {
                    at: &pass.name,
                    machine: &pass.machine,
                    of: &pass.of,
                    uncleared: pass.uncleared,
                    values,
                    before: self.flows[place],
                    after: self.flows[place + 1],
                    state_in: states[place],
                    state_out: states[place + 1],
                    yarn: yarn.zip(counts).map(|(yarn, (count_in, count_out))| InYarn {
                        count_in,
                        count_out,
                        spec: yarn.spec,
                        fineness: yarn.fineness,
                    }),
                }
            };
        let mut counts = vec![yarn.map(|yarn| yarn.dry)];
        for (place, pass) in self.passes.iter().enumerate().rev() {
            let out = counts[counts.len() - 1];
            let count_in = out.and_then(|out| {
                pass.stage.count_in(&station(place, Some((None, out))), out, bench)
            });
            counts.push(count_in);
        }
        counts.reverse();
        for (place, pass) in self.passes.iter().enumerate() {
            let of_yarn = counts[place + 1].map(|out| (counts[place], out));
            let station = station(place, of_yarn);
            pass.stage.set(&station, bench);
            for (name, share) in &pass.recipe {
                let mass = Mass::from(station.before.fibre.v() * V(values.at(*share)));
                let words = "to weigh out, on clean dry goods";
                let mass = super::stage::named(&pass.name, name, words, mass);
                bench.settings.push(Setting {
                    stage: pass.machine.clone(),
                    of: pass.of.clone(),
                    at: pass.name.clone(),
                    key: format!("{}.{name}", pass.name),
                    words: name.clone(),
                    value: mass.value(),
                    kind: crate::quantity::Kind::Mass,
                    main: true,
                    note: "to weigh out, by the recipe".to_owned(),
                });
            }
        }
        // Weighed in oil, in the state in which the yarn leaves for its first bath.
        let bath = self.passes.iter().position(|pass| pass.stage.shrinkage(values).is_some());
        let place = bath.unwrap_or(self.passes.len());
        let (count, state) = (counts[place]?, states[place]);
        let oily = LinearDensity::from(count.v() * state.v());
        let at = self.passes[..place].last().map_or(self.begin, |pass| pass.name.as_str());
        let words = "yarn as it goes to the reel, in oil";
        Some(super::stage::named(at, "count_in_oil", words, oily))
    }
}

/// One simulated lot: the fibre after each stage and the pieces of each good; gives what is beyond what the
/// promise needs, and the greasy wool that would have made the promise.
pub(super) fn simulate(
    plan: &Plan,
    values: &Values<'_, f64>,
    scratch: &mut Carried<f64>,
    fibre: &mut [f64],
    pieces: &mut [f64],
) -> (f64, f64) {
    let tree = &plan.tree;
    tree.carry(values, scratch, &mut NoLedger, &mut |place, flow| {
        fibre[place] = flow.fibre.value();
    });
    for (taken, pieces) in scratch.taken.iter().zip(pieces) {
        *pieces = taken.made.value();
    }
    let (spare, asked) = tree.spare(values, scratch);
    if tree.is_line() { (spare, tree.back_line(values, asked)) } else { (spare, asked) }
}
