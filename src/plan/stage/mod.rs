//! The stages of the route, each a small piece of its own: what it asks, what it lets through and
//! loses, what to set.

mod card;
mod dust;
pub(super) mod dye;
mod hank_scour;
mod losses;
mod mule;
mod oil;
mod plain;
mod ring;
mod scour;
mod sort;
mod tease;
mod twister;
mod winder;

use super::draft::Draft;
use super::given::Values;
use super::say::Say;
use super::section::Section;
pub(super) use super::stock::{Flow, Stock};
use crate::calculation::{Answer, Check, Item, Owned, Place, Sheet};
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::{
    Fineness, Fraction, Kind, LinearDensity, Mass, Ratio, Shrinkage, Twist, Typed,
};
use crate::worked::Label;
pub(super) use losses::Loss;
use losses::{LeavingState, Losses, Sinks};

/// A stage of the route. Adding one is a file of its own, its `mod` above and its place in `stages!`
/// below.
pub(super) trait Stage: Sized {
    /// Its name in the lot file.
    const NAME: &'static str;
    /// What it does, in a sentence.
    const SUMMARY: &'static str;
    /// What comes out of it, in words.
    const MAKES: &'static str;
    /// Names of the cautions that belong to it, see [`crate::caution`].
    const CAUTIONS: &'static [&'static str];

    /// Where the parts of a stock go that do not leave with the fibre.
    const SINKS: Sinks;

    /// What it loses, and the state in which the rest leaves.
    fn loss<N: Number>(&self, _values: &Values<'_, N>) -> Option<Loss<N>> {
        None
    }

    /// The state in which fibre leaves it, as it is given.
    fn state(&self) -> Option<&LeavingState<Place>> {
        None
    }

    /// The part of the yarn's length that is lost, where the yarn shrinks here.
    fn shrinkage<N: Number>(&self, _values: &Values<'_, N>) -> Option<Shrinkage<N>> {
        None
    }

    /// What comes out for what goes in; everything that does not come out goes to the ledger.
    #[inline(always)]
    fn carry<N: Number>(
        &self,
        pass: &At<'_>,
        values: &Values<'_, N>,
        flow: Flow<N>,
        ledger: &mut impl Ledger,
    ) -> Flow<N> {
        let loss = self.loss(values).map(|loss| loss.kept(pass.keeps));
        loss.map_or(flow, |loss| loss.pass(pass.name, &Self::SINKS, flow, ledger))
    }

    /// The clean dry fibre that must go in for some to come out.
    fn back<N: Number>(&self, pass: &At<'_>, values: &Values<'_, N>, fibre: Mass<N>) -> Mass<N> {
        let loss = self.loss(values).map(|loss| loss.kept(pass.keeps));
        loss.map_or(fibre, |loss| loss.back(pass.name, fibre))
    }

    /// The count to come in for a count to go out, on clean dry fibre; none where it is not known.
    fn count_in<N: Number>(
        &self,
        _station: &Station<'_, '_, N>,
        out: LinearDensity<N>,
        _bench: &mut Bench<N>,
    ) -> Option<LinearDensity<N>> {
        Some(out)
    }

    /// Refuses values that are impossible together.
    fn check(&self, _values: &Values<'_, f64>, _check: &mut Check<'_>) -> Result<()> {
        Ok(())
    }

    /// What to set at the machine, what to weigh, what to expect.
    fn set<N: Number>(&self, _station: &Station<'_, '_, N>, _bench: &mut Bench<N>) {}

    /// The parts that the mill owns for the machine, and what each gives.
    fn owns(&self, _values: &Values<'_, f64>) -> Vec<Owns> {
        Vec::new()
    }
}

/// Parts that the mill owns for a machine, such as wheels, and what each gives.
#[derive(Clone, Debug)]
pub(super) struct Owns {
    /// What they are, with what they are counted in.
    pub(super) parts: &'static str,
    pub(super) kind: Kind,
    /// What they settle, and its kind.
    pub(super) gives: (&'static str, Kind),
    /// Each part and what it gives.
    pub(super) rows: Vec<(f64, f64)>,
}

impl Owns {
    /// Wheels by their teeth.
    pub(super) fn wheels(
        parts: &'static str,
        owned: &Owned,
        gives: (&'static str, Kind),
        with: impl Fn(f64) -> f64,
    ) -> Owns {
        let rows = owned.all().iter().map(|part| (*part, with(*part))).collect();
        Owns { parts, kind: Kind::Count, gives, rows }
    }
}

/// A stage as it is looked up.
#[derive(Clone, Copy, Debug)]
pub struct StageCard {
    /// Its name in the route of a lot file.
    pub name: &'static str,
    /// What it does, in a sentence.
    pub summary: &'static str,
    /// What comes out of it, in words.
    pub makes: &'static str,
    /// What it asks in a lot file.
    pub asks: &'static [Item],
}

macro_rules! stages {
    ($($module:ident::$stage:ident),*) => {
        /// A stage of any kind.
        #[derive(Clone, Debug)]
        pub(super) enum AnyStage { $($stage($module::$stage<Place>)),* }

        /// The names of all stages.
        pub(super) const NAMES: &[&str] = &[$(<$module::$stage<Place> as Stage>::NAME),*];

        /// Every stage that a route may have.
        pub const STAGES: &[StageCard] = &[$(StageCard {
            name: <$module::$stage<Place> as Stage>::NAME,
            summary: <$module::$stage<Place> as Stage>::SUMMARY,
            makes: <$module::$stage<Place> as Stage>::MAKES,
            asks: $module::$stage::<Place>::ITEMS,
        }),*];

        impl AnyStage {
            /// Reads a stage of a kind from its section.
            pub(super) fn read(name: &str, section: &Section<'_>, draft: &mut Draft) -> Result<Option<Self>> {
                $(if name == <$module::$stage<Place> as Stage>::NAME {
                    let stage = section.read(draft, |reader| $module::$stage::take(reader))?;
                    return Ok(Some(AnyStage::$stage(stage)));
                })*
                Ok(None)
            }
            /// Where the hold-up of its machine stands, where it has one.
            pub(super) fn held_up(&self) -> Option<Place> {
                match self {
                    AnyStage::Card(card) => card.held_up(),
                    _ => None,
                }
            }
            /// What kind of stage it is.
            pub(super) fn kind(&self) -> &'static str {
                match self { $(AnyStage::$stage(_) => <$module::$stage<Place> as Stage>::NAME),* }
            }
            pub(super) fn makes(&self) -> &'static str {
                match self { $(AnyStage::$stage(_) => <$module::$stage<Place> as Stage>::MAKES),* }
            }
            pub(super) fn cautions(&self) -> &'static [&'static str] {
                match self { $(AnyStage::$stage(_) => <$module::$stage<Place> as Stage>::CAUTIONS),* }
            }
            #[inline(always)]
            pub(super) fn carry<N: Number>(&self, pass: &At<'_>, values: &Values<'_, N>, flow: Flow<N>, ledger: &mut impl Ledger) -> Flow<N> {
                match self { $(AnyStage::$stage(s) => s.carry(pass, values, flow, ledger)),* }
            }
            pub(super) fn back<N: Number>(&self, pass: &At<'_>, values: &Values<'_, N>, fibre: Mass<N>) -> Mass<N> {
                match self { $(AnyStage::$stage(s) => s.back(pass, values, fibre)),* }
            }
            pub(super) fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
                match self { $(AnyStage::$stage(s) => s.loss(values)),* }
            }
            pub(super) fn state(&self) -> Option<&LeavingState<Place>> {
                match self { $(AnyStage::$stage(s) => s.state()),* }
            }
            pub(super) fn shrinkage<N: Number>(&self, values: &Values<'_, N>) -> Option<Shrinkage<N>> {
                match self { $(AnyStage::$stage(s) => s.shrinkage(values)),* }
            }
            pub(super) fn count_in<N: Number>(&self, station: &Station<'_, '_, N>, out: LinearDensity<N>, bench: &mut Bench<N>) -> Option<LinearDensity<N>> {
                match self { $(AnyStage::$stage(s) => s.count_in(station, out, bench)),* }
            }
            pub(super) fn check(&self, values: &Values<'_, f64>, check: &mut Check<'_>) -> Result<()> {
                match self { $(AnyStage::$stage(s) => s.check(values, check)),* }
            }
            pub(super) fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
                match self { $(AnyStage::$stage(s) => s.set(station, bench)),* }
            }
            pub(super) fn owns(&self, values: &Values<'_, f64>) -> Vec<Owns> {
                match self { $(AnyStage::$stage(s) => s.owns(values)),* }
            }
        }
    };
}
stages!(
    sort::Sort,
    scour::Scour,
    dust::Dust,
    oil::Oil,
    tease::Tease,
    card::Card,
    mule::Mule,
    twister::Twister,
    winder::Winder,
    hank_scour::HankScour,
    ring::Ring,
    dye::Dye,
    plain::Plain
);

/// Where what left a stage went, and what was added.
pub(super) trait Ledger {
    /// A stage begins.
    fn enter(&mut self, _pass: &super::tree::Pass) {}
    /// Something was sorted out where a fleece is divided.
    fn sorted_out(&mut self, _fleece: &super::tree::FleeceNode, _what: impl FnOnce() -> Stock) {}
    /// Something left; `key` names the value of it, where there is one.
    fn lost(&mut self, to: &'static str, key: &str, what: impl FnOnce() -> Stock);
    /// Something came on.
    fn added(&mut self, from: &'static str, what: impl FnOnce() -> Stock);
}

/// Keeps no books: for simulated lots.
pub(super) struct NoLedger;

impl Ledger for NoLedger {
    #[inline(always)]
    fn lost(&mut self, _to: &'static str, _key: &str, _what: impl FnOnce() -> Stock) {}
    #[inline(always)]
    fn added(&mut self, _from: &'static str, _what: impl FnOnce() -> Stock) {}
}

/// What a stage is called, and whether it is first to fill its machine.
#[derive(Clone, Copy, Debug)]
pub(super) struct At<'a> {
    /// What its values are called by.
    pub(super) name: &'a str,
    /// Whether the machine keeps some of this wool: it does not where it has kept of the same heap already.
    pub(super) keeps: bool,
}

/// A place on the route: what comes in and goes out there.
pub(super) struct Station<'a, 'v, N> {
    /// What its values are called by, such as `weft.card`.
    pub(super) at: &'a str,
    /// The machine, as the route names it.
    pub(super) machine: &'a str,
    /// The yarn or heap that is in it, where there are several.
    pub(super) of: &'a str,
    pub(super) values: &'a Values<'v, N>,
    pub(super) before: Flow<N>,
    pub(super) after: Flow<N>,
    /// Mass for each unit of clean dry fibre, coming in and going out.
    pub(super) state_in: Ratio<N>,
    pub(super) state_out: Ratio<N>,
    /// The machine begins full of the wool before.
    pub(super) uncleared: bool,
    /// The yarn, once it is one and its count is known.
    pub(super) yarn: Option<InYarn<'a, N>>,
}

/// The yarn at a place of its route.
pub(super) struct InYarn<'a, N> {
    /// Count of what comes in, on clean dry fibre; none where it is not known.
    pub(super) count_in: Option<LinearDensity<N>>,
    /// Count of what goes out, on clean dry fibre.
    pub(super) count_out: LinearDensity<N>,
    pub(super) spec: &'a super::lot::Yarn<Place>,
    /// The fibre of it, where it is known.
    pub(super) fineness: Option<(Fineness<N>, Fraction<N>)>,
}

/// A thing to set, weigh or expect at a machine.
#[derive(Clone, Debug)]
pub struct Setting {
    /// The stage, as the route names it.
    pub stage: String,
    /// The yarn, heap or good that it is for, where there are several.
    pub of: String,
    /// What the values of the stage are called by, such as `weft.mule`.
    pub at: String,
    /// Full name, such as `mule.twist`.
    pub key: String,
    /// What it is, in words.
    pub words: String,
    /// The value, in the base unit of its kind.
    pub value: f64,
    /// Its kind.
    pub kind: Kind,
    /// True for what is set or weighed at the machine; false for what is expected of it.
    pub main: bool,
    /// What else there is to say: the owned parts next to it, the state that it is weighed in.
    pub note: String,
}

/// Collects the settings, and hands values from one stage to the next.
pub(super) struct Bench<N> {
    pub(super) settings: Vec<Setting>,
    /// How values are said in notes.
    pub(super) say: Say,
    /// Twist of the singles, once the mule is set.
    pub(super) single_twist: Option<Twist<N>>,
    /// Folding twist, once the twister is set.
    pub(super) folding_twist: Option<Twist<N>>,
    /// Yarn wound and slubbing delivered in a draw of the mule.
    pub(super) draw: Option<(crate::quantity::Length<N>, crate::quantity::Length<N>)>,
}

impl<N: Number> Bench<N> {
    pub(super) fn new(say: Say) -> Self {
        Bench { settings: Vec::new(), say, single_twist: None, folding_twist: None, draw: None }
    }
}

/// Where settings belong.
#[derive(Clone, Copy, Debug)]
pub(super) struct Spot<'a> {
    /// What the values are called by.
    pub(super) at: &'a str,
    /// The machine.
    pub(super) machine: &'a str,
    /// The yarn, heap or good, where there are several.
    pub(super) of: &'a str,
}

impl<'a, N> Station<'a, '_, N> {
    pub(super) fn spot(&self) -> Spot<'a> {
        Spot { at: self.at, machine: self.machine, of: self.of }
    }
}

/// Lays the results of a stage on the bench.
pub(super) struct BenchSheet<'b, N> {
    bench: &'b mut Bench<N>,
    spot: Spot<'b>,
    set: &'b [&'static str],
    expect: &'b [&'static str],
    notes: Vec<(&'static str, String)>,
}

impl<N: Number> Sheet<N> for BenchSheet<'_, N> {
    fn one(&mut self, answer: &'static Answer, value: &N) {
        let Answer { name, meaning, kind, .. } = *answer;
        let Spot { at, machine, of } = self.spot;
        let value = label(*value, at, name, meaning, kind);
        let main = self.set.contains(&name);
        if !main && !self.expect.contains(&name) {
            return;
        }
        let note = self.notes.iter().find(|(result, _)| *result == name);
        self.bench.settings.push(Setting {
            stage: machine.to_owned(),
            of: of.to_owned(),
            at: at.to_owned(),
            key: format!("{at}.{name}"),
            words: meaning.to_owned(),
            value: value.value(),
            kind,
            main,
            note: note.map_or_else(String::new, |(_, note)| note.clone()),
        });
    }
    fn member(&mut self, answer: &'static Answer, place: usize, value: &N) {
        let name = format!("{}[{}]", answer.name, place + 1);
        label(*value, self.spot.at, &name, answer.meaning, answer.kind);
    }
    fn enter(&mut self, _name: &'static str, _row: usize, _label: Option<&str>) {}
    fn leave(&mut self) {}
}

impl<N: Number> Bench<N> {
    /// Names the results of a stage; those in `set` are set or weighed at the machine, those in `expect`
    /// are expected of it, and the others only have their names.
    pub(super) fn show<const S: usize, const E: usize, const T: usize>(
        &mut self,
        spot: Spot<'_>,
        set: [&'static str; S],
        expect: [&'static str; E],
        notes: [(&'static str, String); T],
        lay: impl FnOnce(&mut BenchSheet<'_, N>),
    ) {
        let notes = notes.into();
        lay(&mut BenchSheet { bench: self, spot, set: &set, expect: &expect, notes });
    }
}

fn label<N: Number>(value: N, stage: &str, name: &str, words: &str, kind: Kind) -> N {
    value.labelled(|| Label {
        key: format!("{stage}.{name}"),
        unit: kind.base().to_owned(),
        meaning: words.to_owned(),
        ..Label::default()
    })
}

/// Gives a value of a stage its full name, so that it has a line of its own in the working.
pub(super) fn named<N: Number, Q: Typed<N>>(
    stage: &str,
    name: &str,
    words: &'static str,
    figure: Q,
) -> Q {
    Q::from(V(label(figure.v().0, stage, name, words, Q::KIND)))
}

/// A count on clean dry fibre, in the state of a stock.
pub(super) fn in_state<N: Number>(dry: LinearDensity<N>, state: Ratio<N>) -> LinearDensity<N> {
    LinearDensity::from(dry.v() * state.v())
}

/// `34 gives …, 36 gives …`: the owned parts next to what is wanted, and what each would give;
/// `number` turns a part into the number by which it is known.
pub(super) fn beside(
    owned: &Owned,
    wanted: f64,
    number: impl Fn(f64) -> f64,
    gives: impl Fn(f64) -> String,
) -> String {
    use crate::quantity::print::{constant, figure};
    let (below, above) = owned.neighbours(wanted);
    let parts: Vec<String> = [below, above]
        .into_iter()
        .flatten()
        .map(|p| format!("{} gives {}", constant(number(p)), gives(p)))
        .collect();
    let end = match (below, above) {
        (None, _) => "; none owned below",
        (_, None) => "; none owned above",
        _ => "",
    };
    format!("wanted {}; {}{end}", figure(number(wanted)), parts.join(", "))
}
