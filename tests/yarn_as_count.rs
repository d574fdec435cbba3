//! Any input that takes a count also takes a yarn in any settled notation; a folded yarn is not a single.

use hankwise::plan::{Plan, Run};
use hankwise::quantity::Kind;
use hankwise::yarn::{self, read_input};

mod lot;
use lot::{known, set};

/// Yarns and their counts as a whole in tex, by hand: singles over ends, or as measured.
const YARNS: &[(&str, f64)] = &[
    ("34 tex S 600", 34.0),
    ("2/24 worsted", 453_592.37 / 0.9144 / 560.0 / 12.0),
    ("Nm 32/2", 1000.0 / 16.0),
    ("16 Nm/2", 125.0),
    ("3x2/60 Ne", 453_592.37 / 0.9144 / 840.0 / 10.0),
    ("R 74 tex/2", 74.0),
    ("34 tex S 600 x 2 Z 400; R 69.3 tex", 69.3),
    ("(20 tex + 30 tex) t0", 50.0),
];

#[test]
fn every_notation_is_read() {
    for (text, tex) in YARNS {
        let (count, said) = read_input(text, "count", Kind::LinearDensity).unwrap();
        assert!((count.base() / tex - 1.0).abs() < 1e-9, "{text}: {}", count.base());
        let folded = !text.starts_with("34 tex S 600") || text.contains(" x ");
        assert_eq!(said.contains("contraction") || said.contains("measured"), folded, "{said}");
        assert_eq!(
            read_input(text, "single_count", Kind::LinearDensity).is_err(),
            folded,
            "{text}"
        );
        assert!(read_input(text, "mass", Kind::Mass).is_err(), "{text}");
    }
}

#[test]
fn what_is_not_settled_says_how_to_write_it() {
    let says = |text| read_input(text, "count", Kind::LinearDensity).unwrap_err().to_string();
    assert!(says("8/8 Ne").contains("8 Ne × 8"));
    assert!(says("2/24").contains("2/24 worsted"));
    for text in ["8/8 Ne", "2/24", "20 texx", "", "/", "2/"] {
        assert!(!says(text).contains('\n'), "{}", says(text));
        assert!(!says(text).contains("count of one single"), "{}", says(text));
    }
    assert!(says("20 texx").contains("did you mean 'tex'"));
}

#[test]
fn a_calculation_takes_one() {
    let length = |count: &str| {
        let given = [
            ("count", count),
            ("ball_mass", "50 g"),
            ("regain", "17 %"),
            ("label_regain", "17 %"),
            ("country", "UK"),
        ];
        yarn::BALL_BAND.solve_texts(&given).map(|found| found.find("yarn_length").unwrap().value)
    };
    // 50 g of 74 tex.
    assert!((length("R 74 tex/2").unwrap() - 50_000.0 / 74.0).abs() < 1e-9);
    assert!(length("8/8 Nm").unwrap_err().to_string().contains("8 Nm × 8"));
}

#[test]
fn a_lot_file_takes_one() {
    let spun = |count: &str| {
        let lot = set(&known(), "yarn", "count", &format!("{count:?}"));
        let result = Plan::parse(&lot, "lot.toml")?.run(&Run::planned())?;
        let found = result.settings.iter().find(|setting| setting.key == "mule.count");
        Ok::<f64, hankwise::Error>(found.unwrap().value)
    };
    let [folded, whole] = ["Nm 7/2", "3.5 Nm"].map(|count| spun(count).unwrap());
    assert!((folded / whole - 1.0).abs() < 1e-12, "{folded}, {whole}");
    assert!(spun("8/8 Nm").unwrap_err().to_string().contains("8 Nm × 8"));
}
