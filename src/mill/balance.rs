//! Does the weighing add up? What went in against what came out, and what the scale could not show.

use crate::calculation::{Check, Inputs, Results, calculation};
use crate::fibre::{fibre_in_mass, state_ratio};
use crate::number::{Number, V};
use crate::quantity::{Fraction, Mass, OnFibre, Regain};

/// What is on the fibre besides itself.
#[derive(Clone, Debug, Inputs)]
pub struct OnTheFibre<N> {
    /// water on clean dry fibre
    #[q("R", 0.0..=0.6, like = "16 %", zero)]
    pub regain: Regain<N>,
    /// grease, dirt and oil, on clean dry fibre
    #[q("o", 0.0..=0.8, or = 0.0)]
    pub fat: OnFibre<N>,
    /// vegetable matter on clean dry fibre
    #[q("v_m", 0.0..=0.1, or = 0.0)]
    pub vegetable: OnFibre<N>,
}

/// How much of a mass is clean dry fibre.
#[derive(Clone, Debug, Inputs)]
pub enum StateOfMass<N> {
    /// clean dry fibre, on the mass as weighed
    #[q("y", 0.3..=0.95, like = "55 %")]
    CleanYield(Fraction<N>),
    /// What is on the fibre.
    #[group]
    Contents(OnTheFibre<N>),
}

/// What came out, weighed.
#[derive(Clone, Debug, Inputs)]
pub struct WeighedOut<N> {
    /// name of what came out
    #[label]
    pub name: String,
    /// mass as weighed
    #[q("m", 0.001..=10_000.0)]
    pub mass: Mass<N>,
    /// how far the balance may be misread, either way; half of the last digit written if omitted
    #[q("r_m", 0.0..=10.0, zero, half_digit_of = "mass")]
    pub balance_error: Mass<N>,
    /// How much of it is fibre.
    #[one_of("the state")]
    pub state: Option<StateOfMass<N>>,
}

/// What [`balance()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct BalanceInputs<N> {
    /// mass that goes in, as weighed
    #[q("m_i", 0.001..=10_000.0, like = "12.4 kg")]
    pub mass_in: Mass<N>,
    /// how far the balance may be misread, either way; half of the last digit written if omitted
    #[q("r_m", 0.0..=10.0, zero, half_digit_of = "mass_in")]
    pub balance_error: Mass<N>,
    /// How much of it is fibre.
    #[one_of("the state")]
    pub state: Option<StateOfMass<N>>,
    /// what came out, waste included
    #[rows]
    pub out: Vec<WeighedOut<N>>,
}

/// A part of what was weighed.
#[derive(Clone, Debug, Results)]
pub struct BalanceComponent<N> {
    /// name of the component
    #[label]
    pub name: String,
    /// mass of a component in what went in
    #[head = "in"]
    pub component_in: Mass<N>,
    /// mass of a component in what came out
    #[head = "out"]
    pub component_out: Mass<N>,
}

/// What [`balance()`] answers.
#[derive(Clone, Debug, Results)]
pub struct BalanceResults<N> {
    /// mass that came out, all together
    #[block = "As weighed"]
    pub mass_out: Mass<N>,
    /// mass missing from what came out
    pub missing_mass: Mass<N>,
    /// mass that came out beyond what went in
    pub excess_mass: Mass<N>,
    /// largest gap that misreading the balance can make
    pub weighing_error: Mass<N>,
    /// Clean dry fibre.
    #[part]
    pub fibre: Option<FibreBalance<N>>,
    /// Components
    #[rows]
    pub components: Option<Vec<BalanceComponent<N>>>,
}

/// The balance on clean dry fibre.
#[derive(Clone, Debug, Results)]
pub struct FibreBalance<N> {
    /// clean dry fibre missing from what came out
    #[block = "On clean dry fibre"]
    pub missing_fibre: Mass<N>,
    /// clean dry fibre that came out beyond what went in
    pub excess_fibre: Mass<N>,
    /// largest gap in the fibre that misreading the balance can make
    pub fibre_weighing_error: Mass<N>,
}

/// What went into a stage, or a whole lot, against what came out of it.
///
/// Write masses as they were read: half of the last digit is then how far each may be off. With the state of
/// every mass (`clean_yield`, or `regain` with `fat` and `vegetable`) the balance is also drawn on clean dry
/// fibre, so that water, grease and dirt that came off do not look like lost wool. How uncertain a state is,
/// is not part of the weighing error.
#[calculation(
    title = "The balance",
    example = ">>> import hankwise as hw
>>> combing = hw.mill.balance(mass_in=\"1.7 lb\", out={\"top\": \"673 g\", \"noil\": \"109 g\"})
>>> combing[\"excess_mass\"], combing[\"weighing_error\"]
(<mass: 0.01089 kg>, <mass: 0.02368 kg>)",
    check = check
)]
pub fn balance<N: Number>(given: &BalanceInputs<N>) -> BalanceResults<N> {
    let out = || given.out.iter();
    let mass_out = sum(out().map(|one| one.mass.v()));
    let error = given.balance_error.v() + sum(out().map(|one| one.balance_error.v()));
    let (missing_mass, excess_mass) = gap(given.mass_in.v(), mass_out);
    // Each side as its components, where its state is known.
    let entered = given.state.as_ref().map(|state| state.of(given.mass_in));
    let left: Option<Vec<_>> =
        out().map(|one| one.state.as_ref().map(|state| state.of(one.mass))).collect();
    let sides = entered.zip(left);
    let fibre = sides.as_ref().map(|(entered, left)| {
        let (missing, excess) = gap(entered.fibre, sum(left.iter().map(|part| part.fibre)));
        let share = |part: &Parts<N>, mass: Mass<N>| part.fibre / mass.v();
        let each = out().zip(left).map(|(one, part)| one.balance_error.v() * share(part, one.mass));
        let error = given.balance_error.v() * share(entered, given.mass_in) + sum(each);
        FibreBalance {
            missing_fibre: missing.into(),
            excess_fibre: excess.into(),
            fibre_weighing_error: error.into(),
        }
    });
    BalanceResults {
        mass_out: mass_out.into(),
        missing_mass: missing_mass.into(),
        excess_mass: excess_mass.into(),
        weighing_error: error.into(),
        fibre,
        components: sides.map(|(entered, left)| components(&entered, &left)),
    }
}

/// A mass taken apart: fibre, and what is on it where that is known.
struct Parts<N> {
    fibre: V<N>,
    rest: V<N>,
    /// Water, grease and vegetable matter.
    contents: Option<[V<N>; 3]>,
}

impl<N: Number> StateOfMass<N> {
    fn of(&self, mass: Mass<N>) -> Parts<N> {
        match self {
            StateOfMass::CleanYield(clean) => {
                let fibre = mass.v() * clean.v();
                Parts { fibre, rest: mass.v() - fibre, contents: None }
            }
            StateOfMass::Contents(OnTheFibre { regain, fat, vegetable }) => {
                let fibre = fibre_in_mass(mass, state_ratio(*regain, *fat, *vegetable)).v();
                let contents = [regain.v(), fat.v(), vegetable.v()].map(|share| fibre * share);
                Parts { fibre, rest: mass.v() - fibre, contents: Some(contents) }
            }
        }
    }
}

fn sum<N: Number>(all: impl Iterator<Item = V<N>>) -> V<N> {
    all.reduce(|a, b| a + b).unwrap_or_else(|| V::constant(0.0))
}

/// What is missing, and what came out in excess: one of the two is 0.
fn gap<N: Number>(entered: V<N>, left: V<N>) -> (V<N>, V<N>) {
    let none = V::constant(0.0);
    ((entered - left).max(none), (left - entered).max(none))
}

fn components<N: Number>(entered: &Parts<N>, left: &[Parts<N>]) -> Vec<BalanceComponent<N>> {
    let component = |name: &str, of: &dyn Fn(&Parts<N>) -> V<N>| BalanceComponent {
        name: name.to_owned(),
        component_in: of(entered).into(),
        component_out: sum(left.iter().map(of)).into(),
    };
    let mut all = vec![component("fibre", &|part| part.fibre)];
    if entered.contents.is_some() && left.iter().all(|part| part.contents.is_some()) {
        let content = |at: usize| move |part: &Parts<N>| part.contents.map_or(part.rest, |c| c[at]);
        all.push(component("water", &content(0)));
        all.push(component("grease, dirt and oil", &content(1)));
        all.push(component("vegetable matter", &content(2)));
    } else {
        all.push(component("all else", &|part| part.rest));
    }
    all
}

/// Whether it closes, and what a gap may be.
fn check(given: &BalanceInputs<f64>, found: &BalanceResults<f64>, check: &mut Check<'_>) {
    let beyond = |gap: Mass<f64>, error: Mass<f64>| gap.value() > error.value() * (1.0 + 1e-9);
    let mut verdict = "It closes: the gap is no more than the readings can make, and says nothing of a \
                       gain or loss.";
    if let Some(fibre) = &found.fibre {
        if beyond(fibre.missing_fibre, fibre.fibre_weighing_error) {
            verdict = "Fibre is missing beyond the readings: dust, fly, waste that was not weighed, or \
                       what the machine holds.";
        } else if beyond(fibre.excess_fibre, fibre.fibre_weighing_error) {
            verdict = "More fibre came out than went in, beyond the readings: is a yield or regain wrong, \
                       or did another lot come in?";
        }
        check.note("On clean dry fibre", verdict);
        return;
    }
    if beyond(found.missing_mass, found.weighing_error) {
        verdict = "Some is missing beyond the readings: water, grease or dirt that came off, dust, fly, \
                   or what the machine holds.";
    } else if beyond(found.excess_mass, found.weighing_error) {
        verdict = "More came out than went in, beyond the readings: was it damper, oiled, or mixed with \
                   another lot?";
    }
    check.note("As weighed", verdict);
    let states = given.out.iter().filter(|one| one.state.is_some()).count();
    let with = states + usize::from(given.state.is_some());
    check.note(
        "As weighed",
        if with == 0 {
            "For the balance on clean dry fibre give the state of every mass: clean_yield, or regain with \
             fat and vegetable."
        } else {
            "The balance on clean dry fibre needs the state of every mass; some have none."
        },
    );
}
