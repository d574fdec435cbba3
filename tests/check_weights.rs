//! Check-weight cards: what they say against sums done another way, and what they refuse.

mod cases;

use cases::cases;
use hankwise::calculation::Solved;
use hankwise::prelude::*;
use hankwise::yarn::CHECK_WEIGHT_CARD;
use proptest::prelude::*;

type Given = Vec<(&'static str, String)>;

fn asked(count: &str, length: &str) -> Given {
    vec![("count", count.to_owned()), ("check_lengths", length.to_owned())]
}

/// The same with other values: those of names that were given before are replaced.
fn with(given: &Given, more: &[(&'static str, &str)]) -> Given {
    let mut all = given.clone();
    all.retain(|(name, _)| more.iter().all(|(other, _)| other != name));
    all.extend(more.iter().map(|(name, text)| (*name, (*text).to_owned())));
    all
}

fn card(given: &Given) -> Result<Solved> {
    let given: Vec<(&str, &str)> = given.iter().map(|(n, text)| (*n, text.as_str())).collect();
    CHECK_WEIGHT_CARD.solve_texts(&given)
}

fn value(card: &Solved, name: &str) -> f64 {
    card.find(&format!("check_weights[1].{name}")).unwrap().value
}

/// What is weighed, and half the bands of the mean and of single readings: above the middle, where nothing
/// is cut off.
fn middle_and_halves(given: &Given) -> [f64; 3] {
    let card = card(given).unwrap();
    let weight = value(&card, "check_weight");
    [weight, value(&card, "mean_high") - weight, value(&card, "high") - weight]
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * a.abs().max(b.abs())
}

/// 20 m of 200 tex weigh 4 g; one reading with a variation of 1 % is within 1.96 % 95 times of 100.
#[test]
fn a_sum_in_the_head() {
    let [weight, mean, single] =
        middle_and_halves(&with(&asked("200 tex", "20 m"), &[("cv", "1 %")]));
    assert!(near(weight, 0.004));
    assert!((mean / 0.004 - 0.019_599_64).abs() < 1e-8);
    // One reading is its own mean.
    assert!(near(mean, single));
}

#[test]
fn more_readings_of_one_end_do_not_tell_what_differs_between_ends() {
    let varies = [("cv_between", "3 %"), ("cv", "2 %"), ("readings", "10000")];
    let fresh = with(&asked("200 tex", "20 m"), &varies);
    let [_, same_end, _] = middle_and_halves(&with(&fresh, &[("different_ends", "1")]));
    assert!((same_end / (0.004 * 0.03 * 1.959_964) - 1.0).abs() < 1e-4, "{same_end}");
    assert!(middle_and_halves(&fresh)[1] < same_end / 80.0);
}

#[test]
fn a_card_without_variation_has_no_bands() {
    let card = card(&asked("16 YSW", "10 yd")).unwrap();
    assert!(card.find("check_weights[1].low").is_err());
    let text = card.report().text();
    assert!(text.contains("should weigh") && text.contains("No bands"), "{text}");
    assert!(!text.contains("from"), "{text}");
}

#[test]
fn lengths_and_masses_are_shown_in_the_units_at_hand() {
    let given = with(&asked("16 YSW", "10 yd"), &[("balance", "gr, dr")]);
    let text = card(&given).unwrap().report().text();
    // 10 yards of 16 skeins of 256 yards in a pound: 7000 × 10/4096 grains, 10/16 drams.
    for words in ["Check weights of 16 YSW", "10 yd", "17.09 gr", "0.625 dr"] {
        assert!(text.contains(words), "{words}\n{text}");
    }
}

#[test]
fn nonsense_is_refused() {
    let refused = |more: &[(&'static str, &str)], words: &str| {
        let said = card(&with(&asked("200 tex", "20 m"), more)).unwrap_err().to_string();
        assert!(said.contains(words), "{said}");
    };
    let none = card(&vec![("count", "200 tex".to_owned())]).unwrap_err().to_string();
    assert!(none.contains("check_lengths (length of each end weighed) is missing"), "{none}");
    refused(&[("check_lengths", "0 m")], "0 m is not possible for the length");
    refused(&[("check_lengths", "-3 m")], "not possible for a length");
    refused(&[("check_lengths", "3 g")], "length");
    refused(&[("count", "3 g")], "linear density");
    refused(&[("ends", "0")], "ends");
    refused(&[("readings", "0")], "readings");
    refused(&[("confidence", "100 %")], "between 0 and 100 %");
    refused(&[("cv", "150 %")], "cv: ");
    refused(&[("stated_regain", "-10 %"), ("regain", "10 %")], "stated_regain: ");
    refused(&[("stated_regain", "10 %")], "stated_regain was given without regain");
    refused(&[("balance", "m")], "balance: ");
    refused(&[("different_ends", "2")], "at least 1 and at most 1");
    refused(&[("readings", "4"), ("different_ends", "3")], "cannot come evenly");
    refused(&[("ends", "4000000000"), ("readings", "9")], "too many");
}

#[test]
fn unusual_values_are_told_once() {
    let more = [("stated_regain", "17 %"), ("regain", "60 %"), ("check_lengths", "20 m, 40 m")];
    let card = card(&with(&asked("200 tex", "20 m"), &more)).unwrap();
    assert_eq!(card.warnings().len(), 1, "{:?}", card.warnings());
    assert!(card.warnings()[0].contains("60 %"), "{:?}", card.warnings());
}

/// A card, the regains and the oil that it is for, and the number of ends.
#[derive(Clone, Debug)]
struct Random {
    given: Given,
    count: f64,
    length: f64,
    state: [f64; 4],
    ends: u32,
    confidence: f64,
}

fn percent(share: f64) -> String {
    format!("{} %", 100.0 * share)
}

fn cards() -> impl Strategy<Value = Random> {
    let state = (0.0..0.3_f64, 0.0..0.3_f64, 0.0..0.15_f64, 0.0..0.15_f64);
    let sample = (1_u32..6, 1_u32..12, 0.0..0.05_f64, 0.001..0.05_f64);
    (20.0..3000.0_f64, 1.0..100.0_f64, state, sample).prop_map(|(tex, metres, state, sample)| {
        let mut given = asked(&format!("{tex} tex"), &format!("{metres} m"));
        given.extend([
            ("ends", sample.0.to_string()),
            ("readings", sample.1.to_string()),
            ("cv_between", percent(sample.2)),
            ("cv", percent(sample.3)),
            ("stated_regain", percent(state.0)),
            ("regain", percent(state.1)),
            ("stated_oil", percent(state.2)),
            ("oil", percent(state.3)),
        ]);
        let state = [state.0, state.1, state.2, state.3];
        Random { given, count: tex, length: metres, state, ends: sample.0, confidence: 0.95 }
    })
}

proptest! {
    #![proptest_config(cases(200))]

    /// The fibre in the weighed length is the same in either state.
    #[test]
    fn the_state_changes_the_weight_and_not_the_fibre(one in cards()) {
        let [stated_regain, regain, stated_oil, oil] = one.state;
        let today = middle_and_halves(&one.given)[0];
        let (r, o) = (percent(stated_regain), percent(stated_oil));
        let stated = middle_and_halves(&with(&one.given, &[("regain", &r), ("oil", &o)]))[0];
        let fibre = |mass: f64, regain: f64, oil: f64| mass / (1.0 + regain + oil);
        prop_assert!(near(fibre(today, regain, oil), fibre(stated, stated_regain, stated_oil)));
        prop_assert!(near(stated, one.count * one.length * f64::from(one.ends) * 1e-6));
    }

    #[test]
    fn bands_are_proportional_and_grow_with_the_chance(one in cards(), more in 0.001..0.049_f64) {
        let [weight, mean, single] = middle_and_halves(&one.given);
        prop_assert!(mean <= single * (1.0 + 1e-12));
        let length = format!("{} m", 2.0 * one.length);
        let twice = middle_and_halves(&with(&one.given, &[("check_lengths", &length)]));
        prop_assert!(near(twice[0], 2.0 * weight) && near(twice[1], 2.0 * mean));
        let surer = percent(one.confidence + more);
        let wider = middle_and_halves(&with(&one.given, &[("confidence", &surer)]));
        prop_assert!(wider[1] > mean && wider[2] > single && near(wider[0], weight));
        // Fresh ends tell more than the same ones again, where ends differ.
        let same = with(&one.given, &[("different_ends", &one.ends.to_string())]);
        prop_assert!(middle_and_halves(&same)[1] >= mean * (1.0 - 1e-12));
    }
}

/// Five earlier readings give the variation: t = 2.776 (printed tables, 4 degrees of freedom) for 1.96.
#[test]
fn a_variation_from_few_readings_widens_the_band() {
    let few = with(&asked("200 tex", "20 m"), &[("cv", "1 %"), ("cv_readings", "5")]);
    assert!((middle_and_halves(&few)[1] / 0.004 - 0.027_76).abs() < 5e-6);
    assert!(card(&few).unwrap().report().text().contains("from 5 readings"));
    assert!(card(&with(&few, &[("cv_readings", "1")])).is_err());
}
