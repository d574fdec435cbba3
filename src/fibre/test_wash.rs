//! A test wash of the lot's own samples.

use super::{state_ratio, washed_clean_share};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::law::t_two_sided;
use crate::normal;
use crate::number::{Number, V};
use crate::quantity::print::{constant, fixed};
use crate::quantity::{Fraction, Mass, OnFibre, Ratio, Regain};

/// Clean dry fibre that greasy wool usually has.
const USUAL: (f64, f64) = (0.3, 0.8);
/// What binary arithmetic leaves of nothing is not spread.
const NO_SPREAD: f64 = 1e-9;

const OF_LOT: &str = "Of the greasy mass";
const INTERVAL: &str = "How sure it is";
const BALANCE: &str = "By the balance alone";

/// What [`test_wash()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct TestWashInputs<N> {
    /// greasy mass of each sample
    #[q("G", 0.02..=3.0, like = "200 g")]
    pub greasy_masses: Vec<Mass<N>>,
    /// washed mass of each sample, in the same order
    #[q("m", 0.01..=3.0, like = "120 g")]
    pub washed_masses: Vec<Mass<N>>,
    /// water on the washed wool, on clean dry fibre
    #[q("R", 0.0..=0.25, like = "16 %", zero)]
    pub regain: Regain<N>,
    /// fat left on it, on clean dry fibre
    #[q("o", 0.0..=0.05, or = 0.0)]
    pub fat: OnFibre<N>,
    /// vegetable matter left in it, on clean dry fibre
    #[q("v_m", 0.0..=0.1, or = 0.0)]
    pub vegetable: OnFibre<N>,
    /// share of cases that the interval takes in
    #[q("C", 0.8..=0.999, or = 0.95)]
    pub confidence: Fraction<N>,
    /// how far the balance may be misread, either way
    #[q("r_m", 0.0..=0.05, like = "0.5 g", zero)]
    pub balance_error: Option<Mass<N>>,
}

/// The interval of a lot and what the plan of it takes.
#[derive(Clone, Debug, Results)]
pub struct WashInterval<N> {
    /// standard error of the clean yield
    #[block = "How sure it is"]
    pub standard_error: Fraction<N>,
    /// deviate of Student's law for the confidence
    pub student_t: Ratio<N>,
    /// least for the lot
    pub low: Fraction<N>,
    /// most for the lot
    pub high: Fraction<N>,
    /// least for one more sample
    pub next_low: Fraction<N>,
    /// most for one more sample
    pub next_high: Fraction<N>,
    /// 5 % point of Student's law, over that of the normal law
    pub widening: Ratio<N>,
    /// standard deviation for the lot file, widened to the spread of Student's law
    pub clean_yield_sd: Ratio<N>,
}

/// What a misread balance leaves open.
#[derive(Clone, Debug, Results)]
pub struct BalanceBand<N> {
    /// least clean yield, all readings off the same way
    #[block = "By the balance alone"]
    pub balance_low: Fraction<N>,
    /// most clean yield, all readings off the same way
    pub balance_high: Fraction<N>,
}

/// What [`test_wash()`] answers.
#[derive(Clone, Debug, Results)]
pub struct TestWashResults<N> {
    /// clean dry fibre in the greasy wool, all samples together
    #[block = "Of the greasy mass"]
    pub clean_yield: Fraction<N>,
    /// clean dry fibre in each sample
    pub clean_yields: Vec<Fraction<N>>,
    /// The balance.
    #[part]
    pub balance: Option<BalanceBand<N>>,
    /// The interval; none of one sample.
    #[part]
    pub interval: Option<WashInterval<N>>,
}

/// The clean yield of a lot from samples that were washed, with its interval, and the line for the lot
/// file.
///
/// Weigh each sample in the grease and washed; `regain`, `fat` and `vegetable` are what is left on the
/// washed wool. The interval is for the lot's own yield, the samples being drawn from all over it; that of
/// one more sample is wider. `balance_error` says how far the balance may be misread.
#[calculation(
    title = "Test wash",
    example = ">>> import hankwise as hw
>>> wash = hw.fibre.test_wash(greasy_masses=[\"200 g\", \"198 g\", \"205 g\"],
...                           washed_masses=[\"124 g\", \"119 g\", \"130 g\"],
...                           regain=\"16 %\", fat=\"0.8 %\")
>>> wash[\"clean_yield\"], wash[\"low\"], wash[\"high\"]
(<fraction: 52.96 %>, <fraction: 49.42 %>, <fraction: 56.50 %>)",
    cautions = ["raw fleece", "scouring"],
    check = check
)]
pub fn test_wash<N: Number>(given: &TestWashInputs<N>) -> TestWashResults<N> {
    // The check refuses lists of unlike length.
    let pairs = given.greasy_masses.len().min(given.washed_masses.len());
    let (greasy, washed) = (&given.greasy_masses[..pairs], &given.washed_masses[..pairs]);
    let state = state_ratio(given.regain, given.fat, given.vegetable);
    let clean_yield = washed_clean_share(state, washed, greasy);
    let own = |(c, g): (&Mass<N>, &Mass<N>)| Fraction::from(c.v() / (state.v() * g.v()));
    let (all_washed, all_greasy) = (total(washed), total(greasy));
    let samples = greasy.len() as f64;
    let balance = given.balance_error.map(|error| {
        let off = V::constant(samples) * error.v();
        let low = (all_washed - off).max(0.0) / (state.v() * (all_greasy + off));
        let least = all_greasy - off;
        let high = V::constant(0.0).if_less(least, (all_washed + off) / (state.v() * least), 1.0);
        BalanceBand { balance_low: low.min(1.0).into(), balance_high: high.min(1.0).into() }
    });
    TestWashResults {
        clean_yield,
        clean_yields: washed.iter().zip(greasy).map(own).collect(),
        balance,
        interval: (greasy.len() > 1).then(|| interval(given, state, clean_yield)),
    }
}

fn total<N: Number>(masses: &[Mass<N>]) -> V<N> {
    V::sum(masses.iter().map(|m| m.v()))
}

/// The interval of the lot, that of one more sample, and the spread for the lot file.
fn interval<N: Number>(
    given: &TestWashInputs<N>,
    state: Ratio<N>,
    clean_yield: Fraction<N>,
) -> WashInterval<N> {
    let samples = given.greasy_masses.len() as f64;
    let freedom = samples - 1.0;
    let clean = clean_yield.v();
    // The standard error of a ratio of sums: each sample is compared with what the yield of all makes of
    // its own greasy mass.
    let off = |(c, g): (&Mass<N>, &Mass<N>)| (c.v() / state.v() - clean * g.v()).squared();
    let squares = V::sum(given.washed_masses.iter().zip(&given.greasy_masses).map(off));
    let error = (squares * (samples / freedom)).sqrt() / total(&given.greasy_masses);
    let confidence = given.confidence.v();
    let t =
        V::looked_up(t_two_sided(confidence.value(), freedom), [confidence, V::constant(samples)]);
    let ends = |half: V<N>| {
        (Fraction::from((clean - half).max(0.0)), Fraction::from((clean + half).min(1.0)))
    };
    let (low, high) = ends(t * error);
    let (next_low, next_high) = ends(t * error * (samples + 1.0).sqrt());
    // The plan draws from a normal distribution: widened so that its 5 % and 95 % points are those of
    // Student's law.
    let widening = V::constant(t_two_sided(0.9, freedom) / normal::Z95);
    WashInterval {
        standard_error: error.into(),
        student_t: t.into(),
        low,
        high,
        next_low,
        next_high,
        widening: widening.into(),
        clean_yield_sd: (widening * error).into(),
    }
}

fn percent(x: f64) -> String {
    format!("{} %", fixed(x * 100.0, 2))
}

fn check(
    given: &TestWashInputs<f64>,
    found: &TestWashResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let (greasy, washed) = (given.greasy_masses.len(), given.washed_masses.len());
    if greasy != washed {
        refuse!(
            check,
            given.washed_masses,
            "{greasy} samples in the grease and {washed} washed; give both masses of each, in the same \
             order"
        );
    }
    if !(0.5..1.0).contains(&given.confidence.value()) {
        refuse!(
            check,
            given.confidence,
            "{} was given; write a share from 50 % to under 100 %, such as '95 %'",
            check.say(given.confidence)
        );
    }
    let clean = found.clean_yield;
    if clean.value() > 1.0 {
        refuse!(
            check,
            given.washed_masses,
            "the samples hold more clean fibre than they weighed in the grease; are greasy_masses and \
             washed_masses exchanged?"
        );
    }
    if let Some(k) = found.clean_yields.iter().position(|own| own.value() > 1.0) {
        refuse!(
            check,
            given.washed_masses,
            "sample {} holds more clean fibre than it weighed in the grease; is each beside its \
             own?",
            k + 1
        );
    }
    if clean.value() < USUAL.0 || clean.value() > USUAL.1 {
        let [low, high] = [USUAL.0, USUAL.1].map(|x| check.say(Fraction::<f64>::base(x)));
        check.warn(format!(
            "clean_yield = {} is unusual; the usual range is {low} to {high} (custom of the trade)",
            check.say(clean)
        ));
    }
    check.note(
        OF_LOT,
        "Clean dry fibre: without water, fat and vegetable matter. A yield of the trade is larger: \
         clean_yields turns it into each.",
    );
    if let Some(BalanceBand { balance_low, balance_high }) = &found.balance {
        let [low, high] = [balance_low, balance_high].map(|x| percent(x.value()));
        check.note(
            BALANCE,
            format!("The balance alone leaves {low} to {high}, all readings off the same way."),
        );
    }
    match &found.interval {
        None => check.warn(
            "one sample says nothing of how the lot varies: there is no interval for the lot; wash two \
             or more, drawn from all over it",
        ),
        Some(interval) => say_interval(given, clean.value(), interval, check),
    }
    Ok(())
}

fn say_interval(
    given: &TestWashInputs<f64>,
    clean: f64,
    interval: &WashInterval<f64>,
    check: &mut Check<'_>,
) {
    let samples = given.greasy_masses.len();
    if interval.standard_error.value() < NO_SPREAD {
        check.note(
            INTERVAL,
            "The samples do not differ: they were weighed too coarsely, or are not samples from all over \
             the lot; there is no interval.",
        );
        return;
    }
    let sure = constant((given.confidence.value() * 1000.0).round() / 10.0);
    let ends = |low: Fraction<f64>, high: Fraction<f64>| {
        format!("{} to {}", percent(low.value()), percent(high.value()))
    };
    check.note(
        INTERVAL,
        format!(
            "The lot itself, {sure} %: {} (Student's t, {samples} samples). One more sample like these, \
             {sure} %: {}.",
            ends(interval.low, interval.high),
            ends(interval.next_low, interval.next_high)
        ),
    );
    let sd = interval.clean_yield_sd.value();
    if sd < clean {
        check.note(
            INTERVAL,
            format!(
                "For the lot file: clean = {{ mean = \"{0}\", sd = \"{1}\" }}, widened to the spread of \
                 Student's law.",
                percent(clean),
                percent(sd)
            ),
        );
    }
    if samples < 4 {
        check.note(
            INTERVAL,
            "Few samples: most of the width is that so few tell little. One more narrows it much.",
        );
    }
}
