//! What must be refused, of which kind the error is, and that its message helps.
#![allow(clippy::float_cmp)] // what is exact is compared exactly

use hankwise::quantity::{Kind, convert, parse, parse_as};
use hankwise::{Error, ErrorKind, catalogue};

/// The error has its kind and every one of the words.
fn says(error: &Error, kind: ErrorKind, words: &[&str]) {
    let message = error.to_string();
    assert_eq!(error.kind(), kind, "{message}");
    for word in words {
        assert!(message.contains(word), "'{word}' is not in: {message}");
    }
}

fn refused(text: &str, wanted: Kind, kind: ErrorKind, words: &[&str]) {
    match parse_as(text, wanted) {
        Ok(amount) => panic!("'{text}' was taken for {} {}", amount.number, amount.unit.symbol),
        Err(error) => says(&error, kind, words),
    }
}

fn refused_alone(text: &str, kind: ErrorKind, words: &[&str]) {
    match parse(text) {
        Ok(amount) => panic!("'{text}' was taken for {} {}", amount.number, amount.unit.symbol),
        Err(error) => says(&error, kind, words),
    }
}

#[test]
fn a_bare_number_where_a_unit_matters() {
    use ErrorKind::Unit;
    refused("16", Kind::LinearDensity, Unit, &["16 has no", "count", "16 YSW"]);
    refused("9", Kind::Twist, Unit, &["9 has no", "twist", "9 tpi"]);
    refused("3", Kind::Mass, Unit, &["3 has no", "mass", "1 lb 12 oz"]);
    refused("2400", Kind::Frequency, Unit, &["2400 has no", "2400 rpm"]);
    refused_alone("16", Unit, &["no unit", "16 YSW"]);
    refused_alone("1 lb 12", Unit, &["12 has no", "mass"]);
    // Ratios, numbers of things and money have no unit to write.
    for kind in [Kind::Ratio, Kind::Count, Kind::Money] {
        assert_eq!(parse_as("16", kind).unwrap().base(), 16.0);
    }
}

#[test]
fn a_bare_number_where_a_share_is_meant() {
    use ErrorKind::Unit;
    refused("16", Kind::Fraction, Unit, &["16 has no", "16 %", "0.16"]);
    refused("16", Kind::Regain, Unit, &["regain", "16 %", "0.16"]);
    refused("1", Kind::Crimp, Unit, &["crimp", "1 %", "0.01"]);
    for kind in [Kind::Fraction, Kind::Regain, Kind::Shrinkage, Kind::TakeUp, Kind::Contraction] {
        assert_eq!(parse_as("16 %", kind).unwrap().base(), 0.16);
        assert_eq!(parse_as("0.16", kind).unwrap().base(), 0.16);
    }
}

#[test]
fn words_with_several_readings() {
    use ErrorKind::Unit;
    let cuts = ["several ways", "galashiels-cut", "hawick-cut", "american-cut"];
    for text in ["16 cut", "16 cuts", "16 Cut"] {
        refused(text, Kind::LinearDensity, Unit, &cuts);
        refused_alone(text, Unit, &cuts);
    }
    for word in ["Nek", "NeK"] {
        let quoted = format!("'{word}' alone");
        let words = [quoted.as_str(), "several ways", "worsted", "560", "Ne", "840"];
        refused(&format!("16 {word}"), Kind::LinearDensity, Unit, &words);
        refused_alone(&format!("16 {word}"), Unit, &words);
    }
    refused("40 lea", Kind::LinearDensity, Unit, &["several ways", "linen-lea", "300 yd"]);
    refused("5 alloa", Kind::LinearDensity, Unit, &["alloa-480", "alloa-240"]);
    refused("5 hanks", Kind::LinearDensity, Unit, &["hank", "Ne"]);
    refused("13 oz/yd", Kind::MassPerArea, Unit, &["width", "mass_per_area_of_cloth"]);
    refused("12 oz", Kind::MassPerArea, Unit, &["oz/yd²", "width"]);
    refused("9 turns", Kind::Twist, Unit, &["turns/m", "tpi"]);
    refused("24 dents", Kind::ReedCount, Unit, &["dents/10 cm", "dents/in"]);
    says(&convert(16.0, "cut", "tex").unwrap_err(), Unit, &cuts);
    // Sources differ by six in what they call the American grain count.
    refused("50 american-grain", Kind::LinearDensity, Unit, &["gr/120yd", "gr/20yd"]);
    says(&convert(16.0, "tex", "NeK").unwrap_err(), Unit, &["several ways", "worsted"]);
}

#[test]
fn a_count_without_its_system() {
    use ErrorKind::Unit;
    for text in ["30s", "30's", "30’s", "30 s"] {
        refused(
            text,
            Kind::LinearDensity,
            Unit,
            &["which count system", "'30 worsted'", "'30 YSW'"],
        );
    }
    for text in ["30's", "30’s"] {
        refused_alone(text, Unit, &["which count system", "'30 worsted'"]);
    }
    // Where nothing says what is meant, thirties and seconds look the same.
    refused_alone("30s", Unit, &["which count system", "'30 worsted'", "'30 s' for seconds"]);
    refused_alone("13 1/2s", Unit, &["which count system"]);
    assert_eq!(parse("30 s").unwrap().unit.kind, Kind::Duration);
    assert_eq!(parse_as("30s", Kind::Duration).unwrap().number, 30.0);
    for text in ["30s worsted", "30's worsted", "30 worsted", "worsted 30"] {
        let amount = parse(text).unwrap();
        assert_eq!((amount.number, amount.unit.symbol), (30.0, "worsted"), "{text}");
    }
}

#[test]
fn a_count_in_other_capitals_or_with_look_alike_signs() {
    for (texts, symbol) in [
        (&["16 nm", "16 NM", "nm 16", "１６ Nm", "16 Νm", "16\u{a0}Nm"][..], "Nm"),
        (&["16 ysw", "16 YsW"], "YSW"),
        (&["16 ne", "16 NE", "16 cotton count", "16 Nе", "16s Cotton Counts"], "Ne"),
        (&["16 TEX", "16 Tex"], "tex"),
        (&["16 yds/50g", "16 Yards per 50 g"], "yd/50g"),
    ] {
        for text in texts {
            assert_eq!(parse(text).unwrap().unit.symbol, symbol, "{text}");
        }
    }
    refused("1", Kind::Fraction, ErrorKind::Unit, &["'100 %' for the whole", "'1 %'"]);
    // Only where a count is wanted.
    assert_eq!(parse_as("150 d", Kind::LinearDensity).unwrap().unit.symbol, "den");
    refused_alone("150 d", ErrorKind::Unit, &["'d'", "unknown unit"]);
    refused("16 count", Kind::LinearDensity, ErrorKind::Unit, &["several ways"]);
    refused_alone("16 counts", ErrorKind::Unit, &["several ways"]);
    refused("16 silk", Kind::LinearDensity, ErrorKind::Unit, &["spun-silk", "den"]);
    refused("4ply", Kind::LinearDensity, ErrorKind::Unit, &["weight_band('4 ply')"]);
    // Capitals of other units stay as they are.
    refused("5 KG", Kind::LinearDensity, ErrorKind::Unit, &["'KG'"]);
    assert_eq!(convert(16.0, "nm", "YSW").unwrap(), convert(16.0, "Nm", "YSW").unwrap());
}

#[test]
fn a_folded_yarn_where_a_count_is_wanted() {
    use ErrorKind::Notation;
    let words = ["folded yarn", "2-fold of 24", "yarn.parse(", "count of the whole"];
    for text in ["2/24 worsted", "2/24's worsted", "2/24"] {
        refused(text, Kind::LinearDensity, Notation, &words);
    }
    refused_alone("2/24 worsted", Notation, &words);
    // System first as well: this is not a sixteenth of a metric count.
    for text in ["Nm 2/32", "2/32 Nm"] {
        refused(text, Kind::LinearDensity, Notation, &["folded yarn", "2-fold of 32"]);
        refused_alone(text, Notation, &["folded yarn", "yarn.parse("]);
    }
    // A vulgar fraction stays one where no fold can be meant.
    assert_eq!(parse_as("3/4 lb", Kind::Mass).unwrap().number, 0.75);
    assert_eq!(parse_as("22 1/2 YSW", Kind::LinearDensity).unwrap().number, 22.5);
    assert_eq!(parse_as("YSW 22 1/2", Kind::LinearDensity).unwrap().number, 22.5);
}

#[test]
fn a_unit_of_another_kind() {
    use ErrorKind::Unit;
    refused("40 Nm", Kind::Twist, Unit, &["'Nm'", "linear density", "twist", "9 tpi"]);
    refused("9 tpi", Kind::LinearDensity, Unit, &["'tpi'", "twist", "count", "16 YSW"]);
    refused("5 m", Kind::Mass, Unit, &["'m'", "length", "mass"]);
    refused("5 lb 3 m", Kind::Mass, Unit, &["'m'", "length", "mass"]);
    refused("4.75 Ne", Kind::TwistFactor, Unit, &["linear density", "twist factor"]);
    says(&convert(16.0, "Nm", "tpi").unwrap_err(), Unit, &["'tpi'", "twist"]);
}

#[test]
fn what_cannot_be() {
    use ErrorKind::Range;
    for text in ["-3 kg", "−3 kg"] {
        refused(text, Kind::Mass, Range, &["−3 kg", "not possible", "mass", "0 kg or more"]);
    }
    refused("0 tex", Kind::LinearDensity, Range, &["not possible", "more than 0"]);
    refused("Nm -16", Kind::LinearDensity, Range, &["not possible", "more than 0"]);
    refused("120 %", Kind::Fraction, Range, &["120 %", "between 0 % and 100 %"]);
    refused("-5 %", Kind::Fraction, Range, &["−5 %", "between 0 % and 100 %"]);
    // The limit must not be printed as the very value that is refused.
    refused("100 %", Kind::TakeUp, Range, &["100 %", "99.9999 %"]);
    let loss = catalogue::formula("mass_after_loss").unwrap();
    let error = loss.answer(&[-1.0, 0.1, 0.0]).unwrap_err();
    says(&error, Range, &["mass_after_loss, mass_in", "not possible"]);
    let error = loss.answer(&[f64::NAN, 0.1, 0.0]).unwrap_err();
    says(&error, Range, &["mass_after_loss, mass_in", "missing"]);
    let before = catalogue::formula("mass_before_loss").unwrap();
    let error = before.answer(&[1.0, 1.0, 0.0]).unwrap_err();
    says(&error, Range, &["mass_before_loss", "no answer", "loss = 100 %", "loss at most 99.99 %"]);
}

#[test]
fn an_answer_that_cannot_be() {
    use ErrorKind::Range;
    let answer = |name, row: &[f64]| catalogue::formula(name).unwrap().answer(row);
    // Two kilograms stay in a machine that one went into.
    let error = answer("mass_after_loss", &[1.0, 0.1, 2.0]).unwrap_err();
    says(&error, Range, &["mass_after_loss", "−1.1 kg", "held_up = 2 kg", "held_up at most 900 g"]);
    // More fibre in the goods than was taken in.
    let error = answer("realisation", &[3.0, 2.0]).unwrap_err();
    says(&error, Range, &["realisation", "150 %", "between 0 % and 100 %", "mass_out = 3 kg"]);
    // All turns are spent in coiling.
    let error = answer("mule_twist", &[5.0, 0.0, 8.0, 1.77]).unwrap_err();
    says(&error, Range, &["mule_twist", "turns/m", "coiling = 8"]);
    // A yield may be over the whole: the mass after has its own water on it.
    assert_eq!(answer("clean_content_customs", &[1.0]).unwrap(), 1.0 / 0.86);
    assert!(answer("clean_content_customs", &[1.01]).is_err());
    assert_eq!(answer("scoured_yield", &[1.2, 1.0]).unwrap(), 1.2);
}

#[test]
fn an_unknown_word_with_a_suggestion() {
    use ErrorKind::{Notation, Unit};
    refused("16 worstd", Kind::LinearDensity, Unit, &["'worstd'", "did you mean 'worsted'?"]);
    refused("16 YSX", Kind::LinearDensity, Unit, &["'YSX'", "did you mean 'YSW'?"]);
    refused("3 kilogrm", Kind::Mass, Unit, &["'kilogrm'", "mass", "did you mean 'kilogram'?"]);
    // Another kind, or only somewhat like it, is no help: the units of the kind are.
    refused("3 stoen", Kind::Mass, Unit, &["did you mean 'stone'?"]);
    refused("3 stove", Kind::Length, Unit, &["unknown unit", "units of length: m, cm, mm"]);
    refused_alone("3 C", Unit, &["unknown unit 'C'; write one such as"]);
    refused_alone("3 cwt", Unit, &["'imp cwt' (112 lb) or 'US cwt' (100 lb)"]);
    let error = convert(3.0, "kg", "tex").unwrap_err();
    let count = "units of mass: kg, g, mg, t, lb; a count takes a length and a mass: see count_of";
    says(&error, Unit, &["cannot convert a mass to 'tex', a unit of linear density", count]);
    refused("10 °X", Kind::Mass, Unit, &["'°X'", "unknown unit", "units of mass: kg"]);
    refused("10 °C", Kind::Mass, Unit, &["'°C'", "temperature", "1 lb 12 oz"]);
    refused_alone("16 yorkshre", Unit, &["did you mean 'yorkshire'?"]);
    let error = catalogue::formula("twist_factr").unwrap_err();
    says(&error, Notation, &["'twist_factr'", "did you mean 'twist_factor'?"]);
}

#[test]
fn values_that_cannot_be_read() {
    use ErrorKind::Notation;
    refused("1,5 kg", Kind::Mass, Notation, &["'1,5 kg'", "decimal mark", "point", "1,250"]);
    refused("0,5 kg", Kind::Mass, Notation, &["decimal mark", "point"]);
    refused("12,5 µm", Kind::Fineness, Notation, &["decimal mark", "point"]);
    assert_eq!(parse_as("1,250.5 g", Kind::Mass).unwrap().number, 1250.5);
    refused("12 oz 1 lb", Kind::Mass, Notation, &["not smaller", "larger unit first"]);
    refused_alone("12 oz 1 lb", Notation, &["not smaller", "larger unit first"]);
    refused("1..5 kg", Kind::Mass, Notation, &["too many points"]);
    refused("1/0 kg", Kind::Mass, Notation, &["not a finite number"]);
    refused("half kg", Kind::Mass, Notation, &["does not begin with a number", "1 lb 12 oz"]);
    refused("NaN kg", Kind::Mass, Notation, &["does not begin with a number"]);
    refused(" ", Kind::Mass, Notation, &["nothing was given", "mass", "1 lb 12 oz"]);
    let loss = catalogue::formula("mass_after_loss").unwrap();
    says(&loss.answer(&[1.0]).unwrap_err(), Notation, &["3 inputs", "loss", "1 given"]);
}

#[test]
fn lists_that_do_not_go_in_step() {
    use ErrorKind::Notation;
    let fold = catalogue::formula("fold_fed").unwrap();
    let error = fold.check_lengths(&[3, 2]).unwrap_err();
    says(
        &error,
        Notation,
        &["fold_fed", "counts has 3", "relative_lengths has 2", "as many of each"],
    );
    let cost = catalogue::formula("fold_cost").unwrap();
    says(
        &cost.check_lengths(&[2, 2, 1]).unwrap_err(),
        Notation,
        &["counts has 2", "prices_per_mass has 1"],
    );
    assert!(cost.check_lengths(&[2, 2, 2]).is_ok());
    // A row that cannot be cut into lists of one length.
    says(&fold.check(&[20.0, 30.0, 1.0]).unwrap_err(), Notation, &["of one length", "3 given"]);
    says(&fold.check(&[20.0]).unwrap_err(), Notation, &["2 inputs", "1 given"]);
    assert!(fold.check(&[20.0, 30.0, 1.0, 1.2]).is_ok());
}

/// Davis, example 46: shares of 1/7, 3/7 and 4/7 are printed for a fold of 8's, which none has.
#[test]
fn shares_that_do_not_sum_to_one() {
    use ErrorKind::Range;
    let sevenths = [1.0 / 7.0, 3.0 / 7.0, 4.0 / 7.0];
    for name in ["count_for_share", "mean_by_share"] {
        let f = catalogue::formula(name).unwrap();
        let row = |shares: [f64; 3]| match name {
            "mean_by_share" => [&shares[..], &[56.0, 18.7, 14.0]].concat(),
            _ => [&[73.8][..], &shares].concat(),
        };
        let words = ["shares", "sum to 1.14285714", "114.285714 %", "too large", "left in"];
        says(&f.answer(&row(sevenths)).unwrap_err(), Range, &words);
        let error = f.answer(&row([1.0 / 7.0, 2.0 / 7.0, 3.0 / 7.0])).unwrap_err();
        says(&error, Range, &["too small", "left out"]);
        assert!(f.answer(&row([1.0 / 7.0, 2.0 / 7.0, 4.0 / 7.0])).is_ok());
        // Thirds with nine digits are near enough, with eight not.
        assert!(f.answer(&row([0.333_333_333, 0.333_333_333, 0.333_333_334])).is_ok());
        assert!(f.answer(&row([0.333_333_33, 0.333_333_33, 0.333_333_33])).is_err());
    }
    let f = catalogue::formula("count_for_share").unwrap();
    says(&f.solve(0, 20.0, &[f64::NAN, 0.5, 0.6], None).unwrap_err(), Range, &["sum to 1.1"]);
}

#[test]
fn contractions_that_cannot_be() {
    use ErrorKind::{Range, Unit};
    for text in ["100 %", "120 %"] {
        refused(text, Kind::Contraction, Range, &["not possible", "contraction on untwisted"]);
    }
    refused("1.2", Kind::Contraction, Unit, &["1.2 has no", "contraction on untwisted"]);
    refused("3", Kind::TwistedContraction, Unit, &["3 has no", "contraction on twisted"]);
    refused("-60 %", Kind::TwistedContraction, Range, &["not possible", "twisted"]);
    let fold = catalogue::formula("fold").unwrap();
    says(&fold.answer(&[1.0, 50.0, 50.0]).unwrap_err(), Range, &["fold", "contraction"]);
    // Below a multiplier of 1.85 the empirical rule gives less than nothing.
    let rule = catalogue::formula("contraction_of_cotton_single").unwrap();
    says(&rule.answer(&[17.0]).unwrap_err(), Range, &["factor = 17", "at least 17.67"]);
    // A single untwisted beyond nothing.
    let left = catalogue::formula("twist_left_ratio").unwrap();
    says(&left.answer(&[200.0, 400.0, 0.5]).unwrap_err(), Range, &["not possible", "folding"]);
}

#[test]
fn wheels_that_cannot_be() {
    use ErrorKind::{Call, Notation, Range, Unit};
    use hankwise::mill::CHANGE_WHEEL;
    let refused = |given: &[(&str, &str)]| CHANGE_WHEEL.solve_texts(given).map(|_| ()).unwrap_err();
    let of = |constant: &str, wanted: &str, wheels: &str| {
        refused(&[("twist_constant", constant), ("wanted_twist", wanted), ("wheels", wheels)])
    };
    let none = refused(&[("twist_constant", "4320 tpi"), ("wanted_twist", "9 tpi")]);
    says(&none, Call, &["wheels (wheels owned, teeth) is missing", "[50, 54, 58]"]);
    says(&of("4320 tpi", "9 tpi", "34.5"), Range, &["whole teeth", "34.5"]);
    says(&of("4320 tpi", "9 tpi", "40, 0"), Range, &["0 is not a part"]);
    says(&of("4320 tpi", "0 tpi", "40"), Range, &["wanted_twist", "0 tpi is not possible"]);
    says(&of("4320 m", "9 tpi", "40"), Unit, &["twist_constant", "length", "twist"]);
    let both = [("twist_constant", "4320 tpi"), ("wanted_draft", "6"), ("wheels", "40")];
    says(&refused(&both), Notation, &["each settles what is wanted: omit all but one"]);
    let law =
        [("draft_constant", "240"), ("wanted_draft", "6"), ("wheels", "40"), ("law", "linear")];
    says(&refused(&law), Notation, &["linear", "inverse", "direct"]);
}

/// Each input is possible, and usual where it can be; together they are not.
#[test]
fn inputs_that_were_exchanged_or_leave_nothing() {
    let refused = |name: &str, row: &[f64], words: &[&str]| {
        let error = catalogue::formula(name).unwrap().answer(row).unwrap_err();
        says(&error, ErrorKind::Range, words);
    };
    // Nothing is wound where the traveller is as fast at both diameters; nor the other way round.
    refused("twist_from_travellers", &[9000.0, 0.05, 9000.0, 0.025], &["speed_at_small"]);
    refused("twist_from_travellers", &[8800.0, 0.05, 9000.0, 0.025], &["speed_at_small"]);
    refused("spindle_speed_from_travellers", &[9000.0, 0.025, 8800.0, 0.05], &["diameter"]);
    // A section is at least as wide as it is thick.
    refused("racetrack_spacing", &[1.0, 0.28, 0.4], &["thread_width at least"]);
    refused("racetrack_height_by_rule", &[1.0, 0.1, 0.28, 0.4, 1.36], &["thread_width at least"]);
    let cloth = [10.0, 10.0, 0.03, 0.3, 0.4, 0.4, 0.3];
    refused("racetrack_weft_crimp", &cloth, &["warp_thread_width at least"]);
    // Forty ends of 0.374 mm under floats of four take more than their centimetre.
    refused("jam_weft_sett_of_weave", &[40.0, 0.374, 0.374, 4.0, 4.0], &["warp_sett at most"]);
    // A tenth is lost however large the lot.
    refused("smallest_lot", &[2.0, 0.1, 0.05], &["allowed_loss at least"]);
    refused("smallest_lot", &[2.0, 0.1, 0.1], &["allowed_loss at least"]);
    // What does not vary is known from one reading; limits take two.
    let least = |name: &str, row: &[f64]| catalogue::formula(name).unwrap().answer(row).unwrap();
    assert_eq!(least("readings_for_error", &[1.96, 0.0, 1.0]), 1.0);
    assert_eq!(least("readings_for_variation", &[1.96, 0.0, 0.05]), 1.0);
    assert_eq!(least("readings_from_limits", &[2.0, 0.0, 1.0]), 2.0);
}
