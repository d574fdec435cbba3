//! Raw wool: analyses, and a test wash repeated many times.

use hankwise::catalogue;
use hankwise::fibre::TEST_WASH;
use hankwise::handbook::Figure;

#[test]
fn analyses_sum_to_what_stands_under_them() {
    let table = catalogue::table("greasy_wool_composition").unwrap();
    for wool in ["Merino", "Corriedale", "Southdown"] {
        let of = |f: &&&Figure| f.of[0] == wool;
        let parts = table.figures.iter().collect::<Vec<_>>();
        let parts: Vec<_> = parts.iter().filter(of).collect();
        let total = parts.iter().find(|f| f.of[1] == "total").unwrap().low;
        let sum: f64 = parts.iter().filter(|f| f.of[1] != "total").map(|f| f.low).sum();
        assert!((sum - total).abs() < 1e-9, "{wool}: {sum}");
    }
}

/// Lots whose clean share is known: the interval takes it in as often as it says.
#[test]
fn the_interval_of_a_test_wash_covers_as_it_says() {
    // SplitMix64, twelve uniforms to a normal deviate.
    let mut state = 7_u64;
    let mut uniform = || {
        state = state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = state;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    };
    for samples in [2, 3, 5] {
        let runs = 2000;
        let (mut lot, mut next) = (0, 0);
        for _ in 0..runs {
            let mut share = || 0.55 + 0.03 * ((0..12).map(|_| uniform()).sum::<f64>() - 6.0);
            let shares: Vec<f64> = (0..samples).map(|_| share()).collect();
            let one_more = share();
            let grams =
                |all: Vec<f64>| all.iter().map(|x| format!("{x} g")).collect::<Vec<_>>().join(", ");
            let greasy = grams(vec![200.0; samples]);
            let washed = grams(shares.iter().map(|y| 200.0 * y * 1.16).collect());
            let found = TEST_WASH
                .solve_texts(&[
                    ("greasy_masses", &greasy),
                    ("washed_masses", &washed),
                    ("regain", "16 %"),
                    ("confidence", "90 %"),
                ])
                .unwrap();
            let value = |name: &str| found.find(name).unwrap().value;
            lot += u32::from(value("low") <= 0.55 && 0.55 <= value("high"));
            next += u32::from(value("next_low") <= one_more && one_more <= value("next_high"));
        }
        for (what, hits) in [("lot", lot), ("next", next)] {
            let covered = f64::from(hits) / f64::from(runs);
            // Three standard deviations of 2000 trials.
            assert!((covered - 0.90).abs() < 0.021, "{samples} samples, {what}: {covered}");
        }
    }
}

#[test]
fn one_sample_gives_no_interval_and_says_so() {
    let wash = |greasy: &str, washed: &str| {
        TEST_WASH.solve_texts(&[
            ("greasy_masses", greasy),
            ("washed_masses", washed),
            ("regain", "16 %"),
            ("balance_error", "5 g"),
        ])
    };
    let found = wash("3 oz", "2.25 oz").unwrap();
    assert!(found.find("low").is_err() && found.find("balance_low").is_ok());
    assert!(found.warnings().iter().any(|w| w.contains("one sample")), "{:?}", found.warnings());
    let error = wash("200 g", "240 g").unwrap_err().to_string();
    assert!(error.contains("exchanged"), "{error}");
}
