//! Check-weight cards: what they say against sums done another way, and what they refuse.

mod cases;

use cases::cases;
use hankwise::prelude::*;
use hankwise::quantity::unit;
use hankwise::yarn::{CheckCard, CheckWeights};
use proptest::prelude::*;

fn asked(count: &str, length: &str) -> CheckWeights {
    CheckWeights::new(parse(count).unwrap(), vec![parse(length).unwrap()]).unwrap()
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * a.abs().max(b.abs())
}

/// 20 m of 200 tex weigh 4 g; one reading with a variation of 1 % is within 1.96 % 95 times of 100.
#[test]
fn a_sum_in_the_head() {
    let mut asked = asked("200 tex", "20 m");
    asked.along = Fraction::base(0.01);
    let row = asked.card().unwrap().rows[0];
    assert!(near(row.weight.value(), 0.004));
    assert!((row.mean_half.value() / 0.004 - 0.019_599_64).abs() < 1e-8);
    // One reading is its own mean.
    assert!(near(row.mean_half.value(), row.single_half.value()));
}

#[test]
fn more_readings_of_one_end_do_not_tell_what_differs_between_ends() {
    let mut asked = asked("200 tex", "20 m");
    asked.between = Fraction::base(0.03);
    asked.along = Fraction::base(0.02);
    asked.readings = 10_000;
    asked.different_ends = Some(1);
    let same_end = asked.card().unwrap().rows[0].mean_half.value();
    assert!((same_end / (0.004 * 0.03 * 1.959_964) - 1.0).abs() < 1e-4, "{same_end}");
    asked.different_ends = None;
    assert!(asked.card().unwrap().rows[0].mean_half.value() < same_end / 80.0);
}

#[test]
fn a_card_without_variation_has_no_bands() {
    let card = asked("16 YSW", "10 yd").card().unwrap();
    assert!(!card.has_bands());
    let text = card.report().text();
    assert!(text.contains("should weigh") && text.contains("No bands"), "{text}");
    assert!(!text.contains("from"), "{text}");
}

#[test]
fn lengths_and_masses_are_shown_in_the_units_at_hand() {
    let mut asked = asked("16 YSW", "10 yd");
    asked.balance = ["gr", "dr"].map(|u| unit(u, Some(Kind::Mass)).unwrap()).to_vec();
    let text = asked.card().unwrap().report().text();
    // 10 yards of 16 skeins of 256 yards in a pound: 7000 × 10/4096 grains, 10/16 drams.
    for words in ["Check weights of 16 YSW", "10 yd", "17.09 gr", "0.625 dr"] {
        assert!(text.contains(words), "{words}\n{text}");
    }
}

#[test]
fn nonsense_is_refused() {
    let refused = |change: fn(&mut CheckWeights), words: &str| {
        let mut asked = asked("200 tex", "20 m");
        change(&mut asked);
        let said = asked.card().map(|_| ()).unwrap_err().to_string();
        assert!(said.contains(words), "{said}");
    };
    refused(|a| a.lengths.clear(), "no length");
    refused(|a| a.lengths[0].number = 0.0, "a length of 0");
    refused(|a| a.lengths[0].number = -3.0, "not possible for a length");
    refused(|a| a.lengths[0] = parse("3 g").unwrap(), "given for a length");
    refused(|a| a.count = parse("3 g").unwrap(), "given for a linear density");
    refused(|a| a.count.number = f64::NAN, "missing");
    refused(|a| a.ends = 0, "at least 1 end");
    refused(|a| a.readings = 0, "at least 1 end");
    refused(|a| a.confidence = 1.0, "100 %");
    refused(|a| a.confidence = f64::NAN, "missing");
    refused(|a| a.along = Fraction::base(1.5), "variation along");
    refused(|a| a.stated = Regain::base(-0.1), "regain stated");
    refused(|a| a.balance.clear(), "no unit");
    refused(|a| a.balance[0] = unit("m", None).unwrap(), "unit of length");
    refused(|a| a.different_ends = Some(2), "at least 1 and at most 1");
    let uneven = |a: &mut CheckWeights| {
        a.readings = 4;
        a.different_ends = Some(3);
    };
    refused(uneven, "cannot come evenly");
    refused(|a| (a.ends, a.readings) = (u32::MAX, 9), "too many");
}

#[test]
fn unusual_figures_are_told_once() {
    let mut asked = asked("200 tex", "20 m");
    asked.today = Regain::base(0.6);
    asked.lengths.push(parse("40 m").unwrap());
    let warnings = asked.card().unwrap().warnings;
    assert_eq!(warnings.len(), 1, "{warnings:?}");
    assert!(warnings[0].contains("60 %"), "{warnings:?}");
}

fn cards() -> impl Strategy<Value = CheckWeights> {
    let state = (0.0..0.3_f64, 0.0..0.3_f64, 0.0..0.15_f64, 0.0..0.15_f64);
    let sample = (1_u32..6, 1_u32..12, 0.0..0.05_f64, 0.001..0.05_f64);
    (20.0..3000.0_f64, 1.0..100.0_f64, state, sample).prop_map(|(tex, metres, state, sample)| {
        let mut asked = asked(&format!("{tex} tex"), &format!("{metres} m"));
        (asked.ends, asked.readings) = (sample.0, sample.1);
        (asked.between, asked.along) = (Fraction::base(sample.2), Fraction::base(sample.3));
        (asked.stated, asked.today) = (Regain::base(state.0), Regain::base(state.1));
        (asked.oil_stated, asked.oil_today) = (Fraction::base(state.2), Fraction::base(state.3));
        asked
    })
}

fn middle_and_halves(card: &CheckCard) -> [f64; 3] {
    let row = card.rows[0];
    [row.weight.value(), row.mean_half.value(), row.single_half.value()]
}

proptest! {
    #![proptest_config(cases(200))]

    /// The fibre in the weighed length is the same in either state.
    #[test]
    fn the_state_changes_the_weight_and_not_the_fibre(asked in cards()) {
        let today = asked.card().unwrap().rows[0].weight.value();
        let mut then = asked.clone();
        (then.today, then.oil_today) = (then.stated, then.oil_stated);
        let stated = then.card().unwrap().rows[0].weight.value();
        let fibre = |mass: f64, regain: Regain<f64>, oil: Fraction<f64>| mass / (1.0 + regain.value() + oil.value());
        prop_assert!(near(
            fibre(today, asked.today, asked.oil_today),
            fibre(stated, asked.stated, asked.oil_stated)
        ));
        prop_assert!(near(stated, asked.count.base() * asked.lengths[0].base() * f64::from(asked.ends) * 1e-6));
    }

    #[test]
    fn bands_are_proportional_and_grow_with_the_chance(asked in cards(), more in 0.001..0.049_f64) {
        let [weight, mean, single] = middle_and_halves(&asked.card().unwrap());
        prop_assert!(mean <= single * (1.0 + 1e-12));
        let mut longer = asked.clone();
        longer.lengths[0].number *= 2.0;
        let twice = middle_and_halves(&longer.card().unwrap());
        prop_assert!(near(twice[0], 2.0 * weight) && near(twice[1], 2.0 * mean));
        let mut surer = asked.clone();
        surer.confidence += more;
        let wider = middle_and_halves(&surer.card().unwrap());
        prop_assert!(wider[1] > mean && wider[2] > single && near(wider[0], weight));
        // Fresh ends tell more than the same ones again, where ends differ.
        let mut same = asked.clone();
        same.different_ends = Some(same.ends);
        prop_assert!(middle_and_halves(&same.card().unwrap())[1] >= mean * (1.0 - 1e-12));
    }
}

/// Five earlier readings give the variation: t = 2.776 (printed tables, 4 degrees of freedom) for 1.96.
#[test]
fn a_variation_from_few_readings_widens_the_band() {
    let mut asked = asked("200 tex", "20 m");
    asked.along = Fraction::base(0.01);
    asked.variation_from = Some(5);
    let card = asked.card().unwrap();
    assert!((card.rows[0].mean_half.value() / 0.004 - 0.027_76).abs() < 5e-6);
    assert!(card.report().text().contains("from 5 readings"));
    asked.variation_from = Some(1);
    assert!(asked.card().is_err());
}
