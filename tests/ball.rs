//! Words of hand knitting and what a ball band says.

use hankwise::prelude::*;
use proptest::prelude::*;

// ---- words of hand knitting --------------------------------------------------------------------

fn tex(text: &str) -> LinearDensity<f64> {
    LinearDensity::parse(text).unwrap()
}

#[test]
fn words_and_counts() {
    // The classifier gives what holds the value, and says whose word it is.
    let words = |count: &str, country: &str| -> Vec<&str> {
        let found = yarn::weight_class(tex(count), Some(country)).unwrap();
        found.iter().map(|f| f.of[1]).collect()
    };
    assert!(words("230 m/100g", "UK").contains(&"DK"));
    assert!(!words("400 m/100g", "UK").contains(&"DK"));
    assert!(words("4 Nm", "UK").contains(&"4 ply"), "a band holds its ends");
    assert!(words("80 m/100g", "uk").contains(&"super chunky"), "an open end");
    assert!(words("1200 m/100g", "UK").contains(&"cobweb"), "an open end");
    assert!(words("1200 m/100g", "US").is_empty(), "none is possible");
    let refusal = yarn::weight_class(tex("4 Nm"), Some("Atlantis")).unwrap_err().to_string();
    assert!(refusal.contains("New Zealand"), "{refusal}");
}

#[test]
fn bands_of_words() {
    for word in ["4 ply", "4ply", "4-ply", "4 Ply"] {
        assert_eq!(yarn::weight_band(word, Some("NZ")).unwrap().len(), 3, "{word}");
    }
    let all = |word: &str| yarn::weight_band(word, None).unwrap().len();
    assert_eq!(all("DK"), all("double knitting"));
    assert_eq!(all("DK"), all("DK weight"));
    assert_eq!(all("worsted"), all("worsted weight"));
    let refusal = yarn::weight_band("chunkey", None).unwrap_err().to_string();
    assert!(refusal.contains("did you mean 'chunky'?"), "{refusal}");
    assert!(yarn::weight_band("fingering", Some("Germany")).is_err());
}

/// No word of the table is taken for a count, with or without a value before it; the refusal says
/// where the band is. Left out: a thread is many things, German words are simply unknown units, and
/// worsted is a count system as well.
#[test]
fn no_word_is_a_count() {
    for figure in &catalogue::table("hand_knitting_weights").unwrap().figures {
        for word in figure.of[1].split(", ").filter(|w| *w != "worsted") {
            let figure_before = (!word.ends_with("ply")).then(|| format!("2 {word}"));
            for text in std::iter::once(word.to_owned()).chain(figure_before) {
                let refusal = parse(&text).expect_err(&text).to_string();
                let else_ = word == "thread" || word.contains("wolle");
                assert!(else_ || refusal.contains("weight_band("), "{text}: {refusal}");
            }
        }
    }
    for text in ["8-ply", "DK weight", "worsted weight", "Worsted-weight", "8 DK", "laceweight"] {
        let refusal = parse(text).unwrap_err().to_string();
        assert!(refusal.contains("weight_band("), "{text}: {refusal}");
    }
    assert!(parse("16 worsted").is_ok());
    assert!(parse("worsted").is_err());
}

// ---- the ball ----------------------------------------------------------------------------------

#[test]
fn a_ball_band() {
    let band = |ball_mass: &str| {
        yarn::BALL_BAND.solve_texts(&[
            ("count", "8 Nm"),
            ("ball_mass", ball_mass),
            ("regain", "17 %"),
            ("label_regain", "17 %"),
            ("country", "UK"),
        ])
    };
    let fifty = band("50 g").unwrap();
    assert!((fifty.find("yarn_length").unwrap().value - 400.0).abs() < 1e-9);
    let count = LinearDensity::base(fifty.find("label_count").unwrap().value);
    assert!((count.number("m/100g").unwrap() - 800.0).abs() < 1e-9);
    assert!(fifty.report().text().contains("cobweb"));
    assert!(band("0 g").unwrap_err().to_string().contains("0 g is not possible for the mass"));
}

proptest! {
    /// Water weighs and has no length: the length of a ball, reckoned through its oven-dry mass and
    /// the oven-dry count, is the same.
    #[test]
    fn water_has_no_length(
        (ball, count, r, a) in (0.01..1.0_f64, 15.0..5000.0_f64, 0.0..0.4_f64, 0.0..0.2_f64)
    ) {
        let got = yarn::ball_length(
            Mass::base(ball), LinearDensity::base(count), Regain::base(r), Regain::base(a),
        );
        let dry = fibre::oven_dry_mass(Mass::base(ball), Regain::base(a));
        let dry_count = fibre::oven_dry_mass(Mass::base(count), Regain::base(r)).value();
        let wanted = yarn::length_of_mass(dry, LinearDensity::base(dry_count)).value();
        prop_assert!((got.value() / wanted - 1.0).abs() < 1e-12);
    }

    /// A count lies in exactly those bands that hold its metres.
    #[test]
    fn classes_are_the_bands_that_hold_it(metres in 20.0..1500.0_f64) {
        let count = LinearDensity::base(1e5 / metres);
        let found = yarn::weight_class(count, None).unwrap();
        for f in &catalogue::table("hand_knitting_weights").unwrap().figures {
            let per_100g = match f.unit {
                "m/100g" => metres,
                "m/50g" => metres / 2.0,
                "yd/100g" => metres / 0.9144,
                other => panic!("{other}"),
            };
            let inside = f.low <= per_100g && per_100g <= f.high;
            prop_assert_eq!(found.iter().any(|g| std::ptr::eq(*g, f)), inside);
        }
    }
}
