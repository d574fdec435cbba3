//! Rounding a count: what is in print, and the laws that the rule promises.
#![allow(clippy::float_cmp)] // what is exact is compared exactly

use hankwise::prelude::*;
use hankwise::quantity::{Amount, unit};
use hankwise::yarn::{ROUNDING, Rounded};
use proptest::prelude::*;

fn count(text: &str) -> Amount {
    parse_as(text, Kind::LinearDensity).unwrap()
}

fn tex(number: f64) -> Amount {
    Amount { number, unit: unit("tex", None).unwrap() }
}

/// The rule by brute force: all numbers of up to three digits, from their decimal writing.
fn by_hand(x: f64) -> f64 {
    let within = |y: f64, x: f64| (y - x).abs() <= ROUNDING * x;
    let decade = x.log10().floor() as i32;
    let numbers = |digits: i32| {
        (decade - 1..=decade + 1).flat_map(move |d| {
            (10i32.pow(digits as u32 - 1)..10i32.pow(digits as u32))
                .map(move |k| format!("{k}e{}", d - digits + 1).parse::<f64>().unwrap())
        })
    };
    for digits in [1, 2, 3] {
        let far = |y: &f64| (y - x).abs();
        let near = numbers(digits).filter(|y| within(*y, x));
        if let Some(best) = near.min_by(|a, b| far(a).total_cmp(&far(b))) {
            return best;
        }
    }
    panic!("{x} has no round number");
}

#[test]
fn as_the_trade_would_say_it() {
    for (given, exact, rounded) in [
        ("16 Nm", 62.5, 62.0), // 60 would be 4 % off; of 62 and 63 the even one
        ("10 Nm", 100.0, 100.0),
        ("110 tex", 110.0, 110.0),
        ("98.5 tex", 98.5, 100.0), // 1.5 % off
        ("62.4 tex", 62.4, 62.0),
        ("104.6 tex", 104.6, 105.0),
        ("102 tex", 102.0, 100.0),   // 1.96 % off
        ("102.1 tex", 102.1, 102.0), // 100 is 2.06 % off
        ("0.163 tex", 0.163, 0.16),
        ("24330 tex", 24330.0, 24000.0),
    ] {
        let got = yarn::round_tex(count(given)).unwrap();
        assert_eq!((got.exact, got.rounded, got.within()), (exact, rounded, true), "{given}");
        assert_eq!(got.count().base(), rounded);
    }
    // In a system of its own the number moves, not the tex.
    let skeins = yarn::round_count(count("19.7 YSW"), "YSW").unwrap();
    assert_eq!((skeins.exact, skeins.rounded), (19.7, 20.0));
    assert_eq!(skeins.to_string(), "19.7 YSW → 20 YSW (+1.523 %)");
}

/// Numbers agreed on in print: worsted 1s to 12s in tex (Teal, class handout, 1995, the table), and
/// metric numbers in tex. The nearest of the list is the one that is printed for the count.
#[test]
fn the_nearest_of_an_agreed_list_is_the_one_in_print() {
    let worsted = [
        (1.0, 880.0),
        (2.0, 440.0),
        (2.5, 360.0),
        (3.0, 300.0),
        (3.5, 260.0),
        (4.0, 220.0),
        (4.5, 200.0),
        (5.0, 180.0),
        (5.5, 160.0),
        (6.0, 150.0),
        (6.5, 135.0),
        (7.0, 125.0),
        (7.5, 117.0),
        (8.0, 110.0),
        (8.5, 103.0),
        (9.0, 98.0),
        (9.5, 93.0),
        (10.0, 88.0),
        (10.5, 84.0),
        (11.0, 80.0),
        (11.5, 77.0),
        (12.0, 74.0),
    ];
    let metric =
        [(32.0, 31.0), (24.0, 42.0), (16.0, 64.0), (10.0, 100.0), (9.0, 110.0), (6.0, 165.0)];
    for (system, pairs) in [("worsted", &worsted[..]), ("Nm", &metric)] {
        let agreed: Vec<f64> = pairs.iter().map(|p| p.1).collect();
        for (number, printed) in pairs {
            let given = count(&format!("{number} {system}"));
            let got = yarn::round_to_agreed(given, "tex", &agreed).unwrap();
            assert_eq!(got.rounded, *printed, "{number} {system}: {got}");
            // Two are more than 2 % off: 64 tex for 16 Nm (2.4 %), 260 tex for 3½ worsted (2.7 %).
            assert_eq!(got.within(), ![64.0, 260.0].contains(printed), "{got}");
        }
    }
}

#[test]
fn what_is_refused() {
    let says = |result: Result<Rounded>, word: &str| {
        let message = result.unwrap_err().to_string();
        assert!(message.contains(word), "'{word}' is not in: {message}");
    };
    let one = count("1 tex");
    says(yarn::round_to_agreed(one, "tex", &[]), "no number was agreed on");
    says(yarn::round_to_agreed(one, "tex", &[50.0, -2.0]), "-2 is not a count to agree on");
    says(yarn::round_to_agreed(one, "tex", &[f64::NAN]), "NaN is not a count");
    says(yarn::round_count(one, "kg"), "unit of mass");
    says(yarn::round_tex(parse("1 kg").unwrap()), "mass was given for a count");
    says(yarn::round_tex(tex(0.0)), "above 0");
    says(yarn::round_tex(tex(f64::NAN)), "above 0");
    says(yarn::round_tex(tex(f64::INFINITY)), "finite");
    for odd in [1e-300, 1e300] {
        assert_eq!(yarn::round_tex(tex(odd)).unwrap().rounded, odd);
    }
}

proptest! {
    #[test]
    fn the_laws_of_rounding(power in -3.0..6.0f64) {
        let x = 10f64.powf(power);
        let got = yarn::round_tex(tex(x)).unwrap();
        prop_assert_eq!(got.exact, x);
        // 2 % at most, always.
        prop_assert!(got.within() && got.difference().abs() <= 0.02 + 1e-15, "{got}");
        // Three digits at most.
        prop_assert_eq!(format!("{:.2e}", got.rounded).parse::<f64>().unwrap(), got.rounded);
        prop_assert_eq!(got.rounded, by_hand(x), "{}", x);
    }

    #[test]
    fn a_round_number_stays(digit in 1..10u32, power in -2..5i32) {
        let x: f64 = format!("{digit}e{power}").parse().unwrap();
        prop_assert_eq!(yarn::round_tex(tex(x)).unwrap().rounded, x);
    }

    #[test]
    fn rounding_never_changes_the_order(a in 1.0..1000.0f64, b in 1.0..1000.0f64) {
        let round = |x| yarn::round_tex(tex(x)).unwrap().rounded;
        // But for neighbours, where the one of fewer digits may be the farther.
        prop_assert!(a * 1.05 > b || round(a) <= round(b), "{a} {b}");
    }

    #[test]
    fn the_nearest_of_a_list_is_none_farther(x in 1.0..1000.0f64, list in prop::collection::vec(1.0..1000.0f64, 1..9)) {
        let got = yarn::round_to_agreed(tex(x), "tex", &list).unwrap();
        prop_assert!(list.contains(&got.rounded));
        prop_assert!(list.iter().all(|y| (y - x).abs() >= (got.rounded - x).abs()));
        prop_assert_eq!(got.within(), (got.rounded - x).abs() <= 0.02 * x);
    }
}
