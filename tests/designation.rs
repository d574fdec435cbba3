//! Designations: the examples of the standard and the trade, round trips, refusals.
#![allow(missing_docs)]

use hankwise::ErrorKind;
use hankwise::quantity::{Amount, Kind, unit, units};
use hankwise::yarn::Yarn;
use hankwise::yarn::designation::{
    Direction, Fold, Order, Part, Reading, Single, Strand, Turned, Whole,
};
use proptest::prelude::*;

/// Examples of ISO 1139 (from memory of the 1973 edition): from the single, from the fold.
const STANDARD: [(&str, &str); 10] = [
    ("40 tex Z 660", "40 tex Z 660"),
    ("17 dtex f1 t0", "17 dtex f1 t0"),
    ("133 dtex f40 t0", "133 dtex f40 t0"),
    ("17 dtex f1 S 800; R 17.4 dtex", "R 17.4 dtex S 800 f1; 17 dtex"),
    ("133 dtex f40 S 1000; R 136 dtex", "R 136 dtex S 1000 f40; 133 dtex"),
    ("34 tex S 600 × 2 Z 400; R 69.3 tex", "R 69.3 tex Z 400/2 S 600; 34 tex"),
    ("20 tex Z 700 × 2 S 400 × 3 Z 200; R 132 tex", "R 132 tex Z 200/3 S 400/2 Z 700; 20 tex"),
    (
        "(25 tex S 420 + 60 tex Z 80) S 360; R 89.2 tex",
        "R 89.2 tex S 360/(S 420; 25 tex + Z 80; 60 tex)",
    ),
    (
        "(20 tex Z 700 × 3 S 400 + 34 tex S 600) Z 200; R 96 tex",
        "R 96 tex Z 200/(S 400/3 Z 700; 20 tex + S 600; 34 tex)",
    ),
    ("40 tex S 155 × 2 t0; R 80 tex", "R 80 tex t0/2 S 155; 40 tex"),
];

#[test]
fn examples_of_the_standard_are_read_and_written_both_ways() {
    for (single_first, fold_first) in STANDARD {
        let yarn = Yarn::parse(single_first).unwrap();
        assert_eq!(yarn.single_to_fold().unwrap(), single_first);
        assert_eq!(yarn.fold_to_single().unwrap(), fold_first);
        assert_eq!(Yarn::parse(fold_first).unwrap(), yarn, "{fold_first}");
    }
    for only in ["40 tex S 155 × 2 t0", "(25 tex S 420 + 60 tex Z 80) t0"] {
        assert_eq!(Yarn::parse(only).unwrap().single_to_fold().unwrap(), only);
    }
}

/// Contraction of the examples: 1.9, 4.7, 9.1, 2.1 % of the untwisted length (computed from them).
#[test]
fn contraction_of_the_examples() {
    for (text, nominal, percent) in [
        ("34 tex S 600 x 2 Z 400; R 69.3 tex", 68.0, 1.9),
        ("(25 tex S 420 + 60 tex Z 80) S 360; R 89.2 tex", 85.0, 4.7),
        ("20 tex Z 700 × 2 S 400 × 3 Z 200; R 132 tex", 120.0, 9.1),
        ("(20 tex Z 700 × 3 S 400 + 34 tex S 600) Z 200; R 96 tex", 94.0, 2.1),
        // ASTM practice as a textile note prints it: 24/15 = 1.6, so 12.5 %.
        ("24 Ne Z 15tpi/5 S 9tpi/3 Z 5tpi; R 1.4 Ne", 590.541_247 / 1.6, 12.5),
    ] {
        let yarn = Yarn::parse(text).unwrap();
        assert!((yarn.nominal().unwrap() / nominal - 1.0).abs() < 1e-9, "{text}");
        assert!((yarn.contraction().unwrap() * 100.0 - percent).abs() < 0.05, "{text}");
    }
}

/// What is written, and the hanks or turns that it means.
#[test]
fn notations_of_the_trade() {
    // written, system, ends, count of an end, count of the whole (references in checks Y-notation)
    for (text, system, ends, single, whole) in [
        ("2/40's cotton", "Ne", 2, 40.0, 20.0),
        ("2-40's cotton", "Ne", 2, 40.0, 20.0),
        ("3/300's Ne", "Ne", 3, 300.0, 100.0),
        ("2/48's worsted", "worsted", 2, 48.0, 24.0),
        ("2/24 worsted", "worsted", 2, 24.0, 12.0),
        ("2/6 worsted", "worsted", 2, 6.0, 3.0),
        ("120/2 Ne", "Ne", 2, 120.0, 60.0),
        ("8/2 Ne", "Ne", 2, 8.0, 4.0),
        ("2/8 Ne", "Ne", 2, 8.0, 4.0),
        ("2/24 Ne", "Ne", 2, 24.0, 12.0),
        ("Nm 32/2", "Nm", 2, 32.0, 16.0),
        ("Nm 2/28", "Nm", 2, 28.0, 14.0),
        ("16/2 Nm", "Nm", 2, 16.0, 8.0),
        ("Nm 3-100", "Nm", 3, 100.0, 100.0 / 3.0),
        ("2/22½ galashiels-cut", "galashiels-cut", 2, 22.5, 11.25),
        ("2/22.5 gala", "galashiels-cut", 2, 22.5, 11.25),
        ("6/60 Ne", "Ne", 6, 60.0, 10.0),
        ("60/2 spun silk", "spun-silk", 2, 120.0, 60.0),
        ("40's-2 spun-silk", "spun-silk", 2, 80.0, 40.0),
        ("No. 50-3 spun silk", "spun-silk", 3, 150.0, 50.0),
        ("No. 60 three-cord", "Ne", 3, 60.0, 20.0),
        ("No. 60 six-cord", "Ne", 6, 120.0, 20.0),
        ("30s worsted", "worsted", 1, 30.0, 30.0),
        ("Ne 30", "Ne", 1, 30.0, 30.0),
    ] {
        let yarn = Yarn::parse(text).unwrap_or_else(|e| panic!("{text}: {e}"));
        let system = unit(system, None).unwrap();
        assert_eq!(yarn.singles(), Some(ends), "{text}");
        let found = system.from_base(yarn.resultant().unwrap());
        assert!((found / whole - 1.0).abs() < 1e-12, "{text}: {found}");
        let each = system.from_base(yarn.nominal().unwrap() / ends as f64);
        assert!((each / single - 1.0).abs() < 1e-12, "{text}: {each}");
    }
}

#[test]
fn order_and_system_can_be_told() {
    let told = |order, system| Reading { order, system: Some(unit(system, None).unwrap()) };
    let whole = |text, reading: Reading, system| {
        let tex = Yarn::parse_as(text, &reading).unwrap().resultant().unwrap();
        unit(system, None).unwrap().from_base(tex)
    };
    // Two folds of 24 cut: the habit of Hawick.
    let each = told(Some(Order::CountAndCount), "galashiels-cut");
    assert!((whole("24/24", each, "galashiels-cut") - 12.0).abs() < 1e-12);
    for (order, count) in [(Order::CountThenEnds, 1.5), (Order::EndsThenCount, 2.0 / 3.0)] {
        assert!((whole("3/2", told(Some(order), "Ne"), "Ne") - count).abs() < 1e-12);
    }
    assert!((whole("60/2", told(None, "spun-silk"), "Ne") - 60.0).abs() < 1e-12);
    assert!((whole("60/2", told(None, "Ne"), "Ne") - 30.0).abs() < 1e-12);
    assert!((whole("60", told(None, "Ne"), "Ne") - 60.0).abs() < 1e-12);
}

#[test]
fn tickets_and_raw_silk() {
    // Tkt 75 is 40 tex in the metric ticket: 3 × 1000/40.
    assert!((Yarn::parse("Tkt 75 metric").unwrap().resultant().unwrap() - 40.0).abs() < 1e-9);
    let cotton = Yarn::parse("cotton ticket 60").unwrap().resultant().unwrap();
    assert!((unit("Ne", None).unwrap().from_base(cotton) - 20.0).abs() < 1e-9);
    let silk = Yarn::parse("13/15 den").unwrap();
    assert!((unit("den", None).unwrap().from_base(silk.resultant().unwrap()) - 14.0).abs() < 1e-12);
    assert_eq!(silk.trade().unwrap(), "13/15 den");
}

/// Text, kind of error, place of the mark, words that the message must have.
#[test]
fn refusals() {
    for (text, column, words) in [
        ("2/3 Nm", 0, &["3 Nm × 2", "2 Nm × 3", "two ways"][..]),
        ("3/2 Ne", 0, &["2 Ne × 3", "3 Ne × 2"]),
        ("8/8 Ne", 0, &["8 Ne × 8", "8 Ne × 2"]),
        ("2/3", 3, &["count system"]),
        ("8/8", 3, &["count system"]),
        ("60/2", 4, &["spun silk", "'Nm 60/2'", "30"]),
        ("2/60 spun-silk", 0, &["60/2 spun-silk", "60 spun-silk × 2"]),
        ("2/22½ cut", 6, &["galashiels-cut", "american-cut"]),
        ("2/24 lea", 5, &["linen-lea"]),
        ("2/24 nek", 5, &["worsted", "Ne"]),
        ("Nm 2 2-ply", 5, &["2 Nm × 2", "R 2 Nm/2"]),
        ("16 Nm 2-fold", 6, &["16 Nm × 2", "R 16 Nm/2"]),
        ("70/2 den", 0, &["70 den × 2", "2 den × 70"]),
        ("150/48 den", 0, &["150 den f48"]),
        ("Tkt 75", 0, &["Tkt 75 metric", "Tkt 75 cotton", "40 tex"]),
        ("34 tex 600", 7, &["direction", "S 210"]),
        ("34 tex Q 600", 7, &["'Q'"]),
        ("34 tex S 600 x 2 Z 400: R 69.3 tex", 22, &["; R 257 tex"]),
        ("34 tex S 600 x 2 Z 400; 69.3 tex", 24, &["; R 257 tex"]),
        ("R 69,3 tex", 4, &["point", "69.3"]),
        ("Nm 1,000", 4, &["1.000", "or thousands", "1000"]),
        ("-34 tex", 0, &["more than 0"]),
        ("34 tex S -600", 9, &["more than 0", "S or Z"]),
        ("34 tex + 20 tex S 300", 7, &["brackets"]),
        ("34 tex × 2 wool", 11, &["separately"]),
        ("Nm 32/2 100 % wool", 8, &["separately"]),
        // A stroke before filaments was read as 48 ends of 150, 7200 den.
        ("150 den/48", 8, &["150 den f48", "150 den × 48"]),
        ("2 Nm/32", 5, &["32 Nm × 2", "2 Nm × 32"]),
        ("Nm 2 x 32", 3, &["32 Nm × 2", "2 Nm × 32"]),
        ("150/48/1 dtex", 0, &["150 dtex f48 × 1"]),
        ("1-1/2 run", 0, &["1 1/2 american-run"]),
        ("R 2/34 Nm", 2, &["R 34 Nm/2"]),
        ("R 74 tex x 2", 9, &["R 74 tex/2", "74 tex × 2"]),
        ("Nm 32/2 Z 400", 8, &["32 Nm × 2 Z 400", "32 Nm Z 400 × 2"]),
        ("2-ply 16 Nm", 0, &["16 Nm × 2", "R 16 Nm/2"]),
        ("2fach Nm 16", 0, &["16 Nm × 2", "R 16 Nm/2"]),
        ("2 ends of 24/2 Nm", 0, &["says the ends twice"]),
        ("30/1", 4, &["1 end of 30", "30/1 worsted"]),
        ("30's x 2", 8, &["'30/2 worsted'", "'Nm 30/2'"]),
        ("60/2 silk", 5, &["spun-silk", "den"]),
        ("2/16 wool", 5, &["YSW", "worsted"]),
        ("No. 40 thread", 7, &["No. 40 six-cord", "Tkt 40 metric"]),
        ("No. 40", 6, &["No. 40 six-cord", "40 Ne"]),
        ("4ply", 0, &["hand-knitting", "weight_band('4 ply')"]),
        ("3-ply", 0, &["weight_band('3 ply')"]),
        ("2 x 3 tex", 0, &["3 tex × 2", "2 tex × 3"]),
        ("34 tex S 0", 9, &["t0"]),
        ("34 tex × 0", 9, &["whole number"]),
        ("34 tex × 2.5", 9, &["whole number"]),
        ("(34 tex + 20 tex S 300", 0, &["not closed"]),
        ("(34 tex + ) S 300", 10, &["count"]),
        ("34 texx", 3, &["did you mean 'tex'"]),
        ("34", 2, &["count system"]),
        ("0 tex", 0, &["more than 0"]),
        ("34 tex S 600 × 2; 69 tex", 18, &["R"]),
        ("R 69.3 tex Z 400/ S 600", 18, &["number of ends"]),
        ("24 Ne × 2 S 9 tpx", 14, &["tpi"]),
        ("DK", 0, &["hand-knitting", "count"]),
    ] {
        let error = Yarn::parse(text).expect_err(text);
        let message = error.to_string();
        assert_eq!(error.kind(), ErrorKind::Notation, "{message}");
        let mark = message.lines().last().unwrap();
        assert_eq!(mark.chars().count(), 4 + column + 1, "{text}:\n{message}");
        for word in words {
            assert!(message.contains(word), "{text}: {word} in\n{message}");
        }
    }
    assert!(Yarn::parse("  ").unwrap_err().to_string().contains("nothing was given"));
}

#[test]
fn twist_without_direction_or_figure_is_refused_where_it_matters() {
    let yarn = |text: &str| Yarn::parse(text).unwrap();
    let left = |text: &str| yarn(text).twist_left(0);
    assert_eq!(left("34 tex S 600 × 2 Z 400").unwrap(), (Direction::S, 200.0));
    assert_eq!(left("34 tex S 600 × 2 S 400").unwrap(), (Direction::S, 1000.0));
    assert_eq!(left("34 tex S 300 × 2 Z 400").unwrap(), (Direction::Z, 100.0));
    assert!(left("34 tex × 2 Z 400").unwrap_err().to_string().contains("direction"));
    assert!(left("34 tex S × 2 Z 400").unwrap_err().to_string().contains("twist"));
    assert!(left("34 tex S 600").unwrap_err().to_string().contains("not a folded yarn"));
    assert!(yarn("34 tex × 2").twist_factor().unwrap_err().to_string().contains("twist"));
    let error = yarn("34 tex × 2").fold_to_single().unwrap_err().to_string();
    assert!(error.contains("R 257 tex"), "{error}");
    assert!(yarn("34 tex × 2").folded(1.0).is_err());
    assert!(yarn("34 tex").folded(0.1).is_err());
}

#[test]
fn brackets_in_brackets_do_not_exhaust_the_stack() {
    for text in [
        "(".repeat(200_000),
        "R 1 tex".to_owned() + &"/(".repeat(200_000),
        "R 1 tex".to_owned() + &"/2".repeat(200_000),
        "1 tex".to_owned() + &" × 1".repeat(200_000),
        "2-ply ".repeat(200_000),
        "single ".repeat(200_000),
        "+".repeat(200_000),
        "2/".repeat(200_000),
        "2 x ".repeat(200_000),
        "a".repeat(200_000) + "1",
        "(".to_owned() + &"Nm 1+".repeat(40_000),
        "(".to_owned() + &"2/24 Nm x 2 ends+".repeat(20_000),
    ] {
        assert!(Yarn::parse(&text).is_err());
    }
    let cable = "1 tex".to_owned() + &" × 1".repeat(20);
    assert_eq!(Yarn::parse(&cable).unwrap().singles(), Some(1));
}

/// Figures of all sizes that are written, in every unit of a kind.
fn measured(kind: Kind) -> impl Strategy<Value = Amount> {
    let all: Vec<_> = units().filter(|unit| unit.kind == kind).collect();
    (1u32..100_000, 0i32..5, prop::sample::select(all)).prop_map(|(n, tenths, unit)| {
        let number = format!("{n}e-{tenths}").parse().unwrap();
        Amount { number, unit }
    })
}

fn count() -> impl Strategy<Value = Amount> {
    measured(Kind::LinearDensity)
}

fn turned() -> impl Strategy<Value = Turned> {
    let direction = prop::sample::select(vec![Direction::S, Direction::Z]);
    let turns = measured(Kind::Twist);
    prop_oneof![
        Just(Turned::Unsaid),
        Just(Turned::Not),
        (direction, prop::option::of(turns)).prop_map(|(d, t)| Turned::To(d, t)),
    ]
}

fn strand() -> impl Strategy<Value = Strand> {
    let single =
        (count(), prop::option::of(1u32..300), turned()).prop_map(|(count, filaments, twist)| {
            Strand::Single(Single { count: Some(count), filaments, twist })
        });
    single.prop_recursive(3, 12, 3, |inner| {
        let alike = (inner.clone(), 1u32..6, turned()).prop_map(|(strand, ends, twist)| {
            Strand::Fold(Fold { parts: vec![Part { strand, ends }], twist })
        });
        let unlike =
            (prop::collection::vec((inner, 1u32..3), 2..4), turned()).prop_map(|(ends, twist)| {
                let mut parts: Vec<Part> = Vec::new();
                for (strand, ends) in ends {
                    match parts.last_mut() {
                        Some(last) if last.strand == strand => last.ends += ends,
                        _ => parts.push(Part { strand, ends }),
                    }
                }
                Strand::Fold(Fold { parts, twist })
            });
        prop_oneof![alike, unlike]
    })
}

proptest! {
    #[test]
    fn every_yarn_that_is_written_is_read_back(build in strand(), whole in prop::option::of((count(), any::<bool>()))) {
        let mut yarn = Yarn::of(build);
        yarn.whole = whole.map(|(count, bulked)| Whole { count, bulked });
        let single_first = yarn.single_to_fold().unwrap();
        prop_assert_eq!(&Yarn::parse(&single_first).unwrap(), &yarn, "{}", single_first);
        if let Ok(fold_first) = yarn.fold_to_single() {
            prop_assert_eq!(&Yarn::parse(&fold_first).unwrap(), &yarn, "{}", fold_first);
        }
    }

    #[test]
    fn what_the_trade_writes_is_read_as_the_same_ends(count in count(), ends in 1u32..12) {
        let single = Strand::Single(Single { count: Some(count), ..Single::default() });
        let yarn = Yarn::of(Strand::Fold(Fold { parts: vec![Part { strand: single, ends }], twist: Turned::Unsaid }));
        if let Ok(text) = yarn.trade() {
            let read = Yarn::parse(&text).unwrap();
            prop_assert_eq!(read.singles(), yarn.singles(), "{}", text);
            prop_assert_eq!(read.system(), yarn.system(), "{}", text);
            // Spun silk is written by its resultant, a quotient that may round.
            let (read, meant) = (read.nominal().unwrap(), yarn.nominal().unwrap());
            prop_assert!((read / meant - 1.0).abs() < 1e-15 * 4.0, "{}", text);
        }
    }

    #[test]
    fn nothing_that_is_typed_panics(text in "[RBSZNmtexf0-9 ./;()+×x'½-]{0,40}") {
        let _ = Yarn::parse(&text);
    }

    #[test]
    fn nor_anything_at_all(text in any::<String>()) {
        let _ = Yarn::parse(&text);
    }
}

#[test]
fn a_resultant_that_no_folding_makes_is_doubted() {
    let doubt = |text: &str| Yarn::parse(text).unwrap().doubt();
    assert_eq!(doubt("34 tex × 2; R 69.3 tex"), None);
    assert_eq!(doubt("34 tex × 2"), None);
    let said = doubt("34 tex × 2; R 6.93 tex").unwrap();
    assert!(said.contains("6.93 tex is 90 % less than the 68 tex of its ends"), "{said}");
}
