//! Down the route and up again: what comes out, what is to be set.

use super::Plan;
use super::given::Values;
use super::goods::{Need, Shop, Taken, Used};
use super::stage::{AnyStage, Bench, Ledger, NoLedger, Setting, Station, named};
use super::stock::{Flow, Stock};
use crate::number::Number;
use crate::quantity::{LinearDensity, Mass, Shrinkage};
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

/// Keeps the books of one stage.
struct Books {
    stage: &'static str,
    lost: Vec<Loss>,
    added: Vec<Loss>,
}

impl Books {
    fn line(&self, to: &str, key: &str, stock: Stock) -> Loss {
        let key = if key.is_empty() { String::new() } else { format!("{}.{key}", self.stage) };
        Loss { stage: self.stage.to_owned(), to: to.to_owned(), key, stock }
    }
}

impl Ledger for Books {
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

/// The plan with the likely values carried through.
#[derive(Debug)]
pub(super) struct Nominal {
    /// The stock before the first stage and after each.
    pub(super) flow: Vec<Stock>,
    pub(super) lost: Vec<Loss>,
    pub(super) added: Vec<Loss>,
    pub(super) settings: Vec<Setting>,
    pub(super) made: Vec<f64>,
    pub(super) unrounded: Vec<f64>,
    pub(super) needs: Vec<Need<f64>>,
    /// Scoured yarn that no goods take, in clean dry fibre.
    pub(super) left_over: f64,
    /// Yarn beyond what the promise needs (negative: short), in clean dry fibre.
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

    /// The stock down the route; `see` is shown what leaves each stage.
    pub(super) fn carry<N: Number>(
        &self,
        values: &Values<'_, N>,
        ledger: &mut impl Ledger,
        mut see: impl FnMut(usize, Flow<N>),
    ) -> Flow<N> {
        let mut flow = self.fleece.flow(values);
        for (place, stage) in self.stages.iter().enumerate() {
            flow = stage.carry(values, flow, ledger);
            see(place, flow);
        }
        flow
    }

    /// What the goods are calculated from.
    pub(super) fn shop<'a, 'v, N: Number>(&'a self, values: &'a Values<'v, N>) -> Shop<'a, 'v, N> {
        let shrinkage = self.stages.iter().find_map(|s| match s {
            AnyStage::HankScour(scour) => {
                Some(Shrinkage::base(values.at(*scour.shrinkage.inner())))
            }
            _ => None,
        });
        Shop {
            values,
            machines: &self.machines,
            label: &self.label,
            yarn: &self.yarn,
            dry: self.yarn.dry(values, &self.label),
            hank_shrinkage: shrinkage.unwrap_or(Shrinkage::base(N::constant(0.0))),
        }
    }

    /// What each good needs.
    pub(super) fn needs<N: Number>(&self, shop: &Shop<'_, '_, N>) -> Vec<Need<N>> {
        self.goods.iter().map(|good| good.need(shop)).collect()
    }

    /// Up the route: the greasy mass for some scoured yarn.
    pub(super) fn back<N: Number>(&self, values: &Values<'_, N>, yarn: Mass<N>) -> Mass<N> {
        let fibre = self.stages.iter().rev().fold(yarn, |fibre, stage| stage.back(values, fibre));
        self.fleece.back(values, fibre)
    }
}

impl Nominal {
    /// Runs the plan with its likely values and records how every value is calculated.
    pub(super) fn new(plan: &Plan) -> Nominal {
        let tape = Tape::new();
        let mut nominal = Nominal::empty();
        {
            let given: Vec<Worked<'_>> = plan.given.iter().map(|g| g.enter(&tape)).collect();
            nominal.run(plan, &Values { given: &given });
        }
        nominal.recording = tape.finish();
        nominal
    }

    fn empty() -> Self {
        Nominal {
            flow: Vec::new(),
            lost: Vec::new(),
            added: Vec::new(),
            settings: Vec::new(),
            made: Vec::new(),
            unrounded: Vec::new(),
            needs: Vec::new(),
            left_over: 0.0,
            spare: 0.0,
            used: Vec::new(),
            recording: Recording::default(),
        }
    }

    fn run<N: Number>(&mut self, plan: &Plan, values: &Values<'_, N>) {
        let greasy = plan.fleece.flow(values);
        let mut flow = vec![greasy];
        for stage in &plan.stages {
            let mut books = Books { stage: stage.name(), lost: Vec::new(), added: Vec::new() };
            let out = stage.carry(values, flow[flow.len() - 1], &mut books);
            self.lost.append(&mut books.lost);
            self.added.append(&mut books.added);
            flow.push(out);
        }
        self.flow = flow.iter().map(Flow::stock).collect();
        let mut states = vec![greasy.state("lot")];
        states.extend(plan.stages.iter().zip(&flow[1..]).map(|(s, flow)| flow.state(s.name())));

        let shop = plan.shop(values);
        let needs = plan.needs(&shop);
        let yarn = flow[flow.len() - 1].fibre;
        let (mut left, mut spare) = (yarn.v(), yarn.v());
        let mut shares = Vec::new();
        for (good, need) in plan.goods.iter().zip(&needs) {
            let taken: Taken<N> = good.take(values, need, Mass::from(left));
            left = left - taken.used.v();
            spare = spare - taken.promised.v();
            self.unrounded.push(taken.unrounded.value());
            shares.push(taken);
        }
        let words = "scoured yarn beyond what the promise needs, as clean dry fibre";
        let spare = named("promise", "spare", words, Mass::from(spare));
        let words = "scoured yarn left over, as clean dry fibre";
        let left_over = named("promise", "left_over", words, Mass::from(left));

        // Counts are asked for up the route, settings made down it.
        let mut bench = Bench::new(plan.say.clone());
        let stations =
            |place: usize, count_in: LinearDensity<N>, count_out: LinearDensity<N>| Station {
                values,
                before: flow[place],
                after: flow[place + 1],
                count_in,
                count_out,
                state_in: states[place],
                state_out: states[place + 1],
                yarn: &plan.yarn,
                lot: &plan.fleece,
            };
        let mut counts = vec![shop.dry];
        let mut before_scouring = shop.dry;
        for (place, stage) in plan.stages.iter().enumerate().rev() {
            let out = counts[counts.len() - 1];
            let count_in = stage.count_in(&stations(place, out, out), out, &mut bench);
            if matches!(stage, AnyStage::HankScour(_)) {
                before_scouring = count_in;
            }
            counts.push(count_in);
        }
        counts.reverse();
        for (place, stage) in plan.stages.iter().enumerate() {
            stage.set(&stations(place, counts[place], counts[place + 1]), &mut bench);
        }
        // Weighed in oil, in the state in which the yarn leaves the twister.
        let scour = plan.stages.iter().position(|s| matches!(s, AnyStage::HankScour(_)));
        let state = states[scour.unwrap_or(plan.stages.len())];
        let oily = LinearDensity::from(before_scouring.v() * state.v());
        let oily =
            named("twister", "count_in_oil", "folded yarn as it goes to the reel, in oil", oily);
        for (good, taken) in plan.goods.iter().zip(&shares) {
            let alike = plan.goods.iter().filter(|other| other.is_like(good)).count();
            bench.prefix = if alike > 1 { format!("{}.", good.name) } else { String::new() };
            for used in good.set(&shop, taken, oily, &mut bench) {
                let fibre = Mass::base(used.fibre.value());
                self.used.push(Used { stage: used.stage, to: used.to, key: used.key, fibre });
            }
        }
        self.settings = bench.settings;
        let order: Vec<&str> = plan.stages.iter().map(AnyStage::name).collect();
        // Goods come after the stages, in their own order.
        self.settings
            .sort_by_key(|s| order.iter().position(|o| *o == s.stage).unwrap_or(order.len()));
        self.made = shares.iter().map(|s| s.made.value()).collect();
        self.needs = needs
            .iter()
            .map(|n| Need { each: Mass::base(n.each.value()), fixed: Mass::base(n.fixed.value()) })
            .collect();
        self.left_over = left_over.value();
        self.spare = spare.value();
    }
}

/// One simulated lot: the fibre after each stage and the pieces of each good; gives the yarn beyond
/// what the promise needs, and the greasy wool that would have made the promise.
pub(super) fn simulate(
    plan: &Plan,
    values: &Values<'_, f64>,
    fibre: &mut [f64],
    pieces: &mut [f64],
) -> (f64, f64) {
    let yarn = plan.carry(values, &mut NoLedger, |place, flow| fibre[place] = flow.fibre.value());
    let shop = plan.shop(values);
    let (mut left, mut promised) = (yarn.fibre.value(), 0.0);
    for (good, pieces) in plan.goods.iter().zip(pieces) {
        let taken = good.take(values, &good.need(&shop), Mass::base(left));
        *pieces = taken.made.value();
        left -= taken.used.value();
        promised += taken.promised.value();
    }
    (yarn.fibre.value() - promised, plan.back(values, Mass::base(promised)).value())
}
