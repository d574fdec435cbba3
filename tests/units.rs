//! Units against GNU units, against exact arithmetic of their definitions, and the laws they obey.
#![allow(clippy::float_cmp)] // what is exact is compared exactly

use hankwise::catalogue;
use hankwise::quantity::{Kind, convert, counts, parse, parse_as, print, reeds, unit, units};
use proptest::prelude::*;
use std::process::Command;

fn relative(got: f64, wanted: f64) -> f64 {
    ((got - wanted) / wanted).abs()
}

// ---- against GNU units -------------------------------------------------------------------------

/// Asks GNU units what a quantity is in a unit, at its full fifteen digits.
fn gnu(quantity: &str, to: &str) -> f64 {
    let output = Command::new("units")
        .env("LC_ALL", "C")
        .args(["--terse", "--digits", "15", quantity, to])
        .output()
        .unwrap_or_else(|error| {
            panic!("the program 'units' cannot be run ({error}): apt-get install units")
        });
    let text = String::from_utf8_lossy(&output.stdout);
    assert!(output.status.success(), "units: {quantity} in {to}: {text}");
    text.trim().parse().unwrap_or_else(|_| panic!("units: {quantity} in {to}: {text}"))
}

/// One of our unit in GNU units' words, and a unit of theirs to compare in. An indirect count is
/// asked for as 1/count, so that no reciprocal is taken behind our back.
const GNU: &[(&str, &str, &str, &str)] = &[
    // count systems that its database knows by name
    ("Ne", "tex", "1/cottonyarncount", "tex"),
    ("worsted", "tex", "1/worstedyarncount", "tex"),
    ("NeL", "tex", "1/linenyarncount", "tex"),
    ("american-cut", "tex", "1/yarncut", "tex"),
    ("american-run", "tex", "1/woolyarnrun", "tex"),
    ("Nm", "tex", "1/metricyarncount", "tex"),
    ("typp", "tex", "1/typp", "tex"),
    ("asbestos-cut-us", "tex", "1/asbestoscut", "tex"),
    ("den", "tex", "denier", "tex"),
    ("dr/1000yd", "tex", "manchesteryarnnumber", "tex"),
    ("drex", "tex", "drex", "tex"),
    ("poumar", "tex", "poumar", "tex"),
    ("tex", "tex", "gram/kilometer", "tex"),
    ("mtex", "tex", "mtex", "tex"),
    ("dtex", "tex", "dtex", "tex"),
    ("ktex", "tex", "ktex", "tex"),
    // the units under them
    ("lb", "kg", "pound", "kg"),
    ("st", "kg", "stone", "kg"),
    ("imp cwt", "kg", "brhundredweight", "kg"),
    ("US cwt", "kg", "ushundredweight", "kg"),
    ("oz", "kg", "ounce", "kg"),
    ("dr", "kg", "dram", "kg"),
    ("gr", "kg", "grain", "kg"),
    ("in", "m", "inch", "m"),
    ("ft", "m", "foot", "m"),
    ("yd", "m", "yard", "m"),
    ("mile", "m", "mile", "m"),
    ("oz/yd²", "g/m²", "ounce/yard^2", "gram/meter^2"),
    ("tpi", "turns/m", "1/inch", "1/meter"),
    ("yd/min", "m/min", "yard/minute", "meter/minute"),
    ("lb/h", "kg/h", "pound/hour", "kg/hour"),
    ("momme", "g/m²", "lb/(45 inch 100 yard)", "g/m^2"),
    ("picks/yd", "picks/cm", "1/yard", "1/cm"),
    // strength and diameter; its 'gf' is no gram-force
    ("rad", "°", "radian", "degree"),
    ("gf", "N", "gram force", "newton"),
    ("kgf", "N", "kilogram force", "newton"),
    ("lbf", "N", "lbf", "newton"),
    ("gf/tex", "cN/tex", "gram force/tex", "centinewton/tex"),
    ("gf/dtex", "cN/tex", "gram force/dtex", "centinewton/tex"),
    ("gf/den", "cN/tex", "gram force/denier", "centinewton/tex"),
    ("cN/dtex", "cN/tex", "centinewton/dtex", "centinewton/tex"),
    ("psi", "MPa", "psi", "megapascal"),
    ("kgf/mm²", "MPa", "kilogram force/mm^2", "megapascal"),
    ("L/kg", "cm³/g", "liter/kg", "cm^3/gram"),
    ("mil", "mm", "mil", "mm"),
    ("1/in", "mm", "1/(1/inch)", "mm"),
];

#[test]
fn gnu_units_agrees() {
    let mut misses = Vec::new();
    for (ours, to, theirs, theirs_to) in GNU {
        let (got, wanted) = (convert(1.0, ours, to).unwrap(), gnu(theirs, theirs_to));
        if relative(got, wanted) > 1e-14 {
            misses.push(format!("{ours}: {got} {to}, GNU units {wanted}"));
        }
    }
    assert!(misses.is_empty(), "{}", misses.join("\n"));
}

/// The count systems that GNU units has no name for are omitted on purpose; a new one must be
/// put in one list or the other.
#[test]
fn every_count_system_is_known_to_gnu_units_or_listed_as_unknown() {
    const UNKNOWN: &[&str] = &[
        "spun-silk",
        "m/g",
        "m/kg",
        "m/100g",
        "m/50g",
        "yd/100g",
        "yd/50g",
        "YSW",
        "galashiels-cut",
        "hawick-cut",
        "west-of-england",
        "alloa-480",
        "alloa-240",
        "dewsbury",
        "yd/oz",
        "leicester-lambswool",
        "asbestos-cut-uk",
        "yd/lb",
        "yd/dr",
        "french-cotton",
        "irish-woollen",
        "lb/spyndle",
        "gr/120yd",
        "gr/20yd",
        "gr/yd",
        "g/yd",
        "oz/yd",
        "dr/40yd",
        "sowerby-bridge",
        "µg/in",
        "artificial-silk-denier",
        "old-denier-500",
        "turin-denier",
        "milan-denier",
        "legal-denier-450",
    ];
    for system in counts::SYSTEMS.iter().map(|s| &s.unit) {
        let known = GNU.iter().any(|(ours, ..)| *ours == system.symbol);
        assert!(known != UNKNOWN.contains(&system.symbol), "{}", system.symbol);
    }
}

/// What makes GNU units treacherous here: its 'cut' and 'lea' are lengths of linen yarn.
#[test]
fn the_traps_of_gnu_units() {
    assert_eq!(gnu("cut", "yard"), 300.0);
    assert_eq!(gnu("lea", "yard"), 300.0);
    assert!(unit("cut", None).is_err());
    assert!(unit("lea", None).is_err());
}

// ---- against exact arithmetic ------------------------------------------------------------------

/// Lengths in 10⁻⁴ m, masses in 10⁻⁸ kg: yards, inches, pounds are whole numbers of them.
const YARD: i128 = 9144;
const INCH: i128 = 254;
const METRE: i128 = 10_000;
const POUND: i128 = 45_359_237;
const GRAM: i128 = 100_000;

/// Hanks of a length (the numbers' quotient) in a mass, or the mass of a length, by the book:
/// (symbol, indirect, length, mass numerator, mass denominator).
const BY_DEFINITION: &[(&str, bool, i128, i128, i128)] = &[
    ("tex", false, 1000 * METRE, GRAM, 1),
    ("mtex", false, 1000 * METRE, GRAM, 1000),
    ("dtex", false, 10_000 * METRE, GRAM, 1),
    ("ktex", false, METRE, GRAM, 1),
    ("den", false, 9000 * METRE, GRAM, 1),
    ("drex", false, 10_000 * METRE, GRAM, 1),
    ("Nm", true, 1000 * METRE, 1000 * GRAM, 1),
    ("m/g", true, METRE, GRAM, 1),
    ("m/kg", true, METRE, 1000 * GRAM, 1),
    ("m/100g", true, METRE, 100 * GRAM, 1),
    ("m/50g", true, METRE, 50 * GRAM, 1),
    ("yd/100g", true, YARD, 100 * GRAM, 1),
    ("yd/50g", true, YARD, 50 * GRAM, 1),
    ("Ne", true, 840 * YARD, POUND, 1),
    ("spun-silk", true, 840 * YARD, POUND, 1),
    ("worsted", true, 560 * YARD, POUND, 1),
    ("NeL", true, 300 * YARD, POUND, 1),
    ("american-cut", true, 300 * YARD, POUND, 1),
    ("american-run", true, 1600 * YARD, POUND, 1),
    ("YSW", true, 256 * YARD, POUND, 1),
    ("galashiels-cut", true, 300 * YARD, 24 * POUND, 16),
    ("hawick-cut", true, 300 * YARD, 26 * POUND, 16),
    ("west-of-england", true, 320 * YARD, POUND, 1),
    ("alloa-480", true, 480 * YARD, POUND, 1),
    ("alloa-240", true, 240 * YARD, POUND, 1),
    ("dewsbury", true, YARD, POUND, 16),
    ("yd/oz", true, YARD, POUND, 16),
    ("leicester-lambswool", true, 176 * YARD, POUND, 1),
    ("asbestos-cut-us", true, 100 * YARD, POUND, 1),
    ("asbestos-cut-uk", true, 50 * YARD, POUND, 1),
    ("typp", true, 1000 * YARD, POUND, 1),
    ("yd/lb", true, YARD, POUND, 1),
    ("yd/dr", true, YARD, POUND, 256),
    ("french-cotton", true, 1000 * METRE, 500 * GRAM, 1),
    ("irish-woollen", true, 64 * YARD, POUND, 1),
    ("poumar", false, 1_000_000 * YARD, POUND, 1),
    ("lb/spyndle", false, 14_400 * YARD, POUND, 1),
    ("dr/1000yd", false, 1000 * YARD, POUND, 256),
    ("gr/120yd", false, 120 * YARD, POUND, 7000),
    ("gr/20yd", false, 20 * YARD, POUND, 7000),
    ("gr/yd", false, YARD, POUND, 7000),
    ("g/yd", false, YARD, GRAM, 1),
    ("oz/yd", false, YARD, POUND, 16),
    ("dr/40yd", false, 40 * YARD, POUND, 256),
    ("sowerby-bridge", false, 80 * YARD, POUND, 256),
    ("µg/in", false, INCH, GRAM, 1_000_000),
    // 533⅓ deniers to the ounce, for a skein of 520 yd
    ("artificial-silk-denier", false, 520 * YARD, 3 * POUND, 1600 * 16),
    ("old-denier-500", false, 500 * METRE, 5 * GRAM, 100),
    ("turin-denier", false, 476 * METRE, 53 * GRAM, 1000),
    ("milan-denier", false, 476 * METRE, 51 * GRAM, 1000),
    ("legal-denier-450", false, 450 * METRE, 5 * GRAM, 100),
];

/// A quotient of whole numbers by long division, to twenty-two significant digits.
fn quotient(numerator: i128, denominator: i128) -> f64 {
    let (mut whole, mut rest) = (numerator / denominator, numerator % denominator);
    let mut decimals = 0;
    while whole < 10i128.pow(21) && rest != 0 {
        whole = whole * 10 + rest * 10 / denominator;
        rest = rest * 10 % denominator;
        decimals += 1;
    }
    format!("{whole}e-{decimals}").parse().unwrap()
}

#[test]
fn definitions_hold_to_fifteen_digits() {
    assert_eq!(quotient(1, 3), 1.0 / 3.0);
    for (symbol, indirect, length, mass, of) in BY_DEFINITION {
        // 10⁻⁸ kg on 10⁻⁴ m, in mg/m.
        let tex = quotient(mass * 100, of * length);
        let got = unit(symbol, Some(Kind::LinearDensity)).unwrap();
        assert_eq!(got.is_indirect(), *indirect, "{symbol}");
        assert!(relative(got.to_base(1.0), tex) < 1e-15, "{symbol}: {}, {tex}", got.to_base(1.0));
        // Twice the number is half as thick, or twice.
        let two = if *indirect { tex / 2.0 } else { tex * 2.0 };
        assert!(relative(got.to_base(2.0), two) < 1e-15, "{symbol}");
    }
    for system in counts::SYSTEMS.iter().map(|s| &s.unit) {
        let listed = BY_DEFINITION.iter().filter(|d| d.0 == system.symbol).count();
        assert_eq!(listed, 1, "{} is to be checked once", system.symbol);
    }
}

#[test]
fn reeds_hold_to_fifteen_digits() {
    // dents for each number, in so many quarter inches
    let systems: [(&str, i128, i128); 20] = [
        ("stockport-reed", 1, 8),
        ("dents/in", 1, 4),
        ("american-reed", 1, 4),
        ("bolton-reed", 20, 97),
        ("bradford-reed", 20, 144),
        ("blackburn-reed", 20, 180),
        ("6-4-reed", 20, 232),
        ("9-8-reed", 20, 176),
        ("4-4-reed", 20, 156),
        ("7-8-reed", 20, 136),
        ("old-manchester-reed", 1, 144),
        ("leeds-reed", 19, 36),
        ("dewsbury-reed", 19, 360),
        ("scotch-reed", 1, 148),
        ("scotch-tweed-reed", 20, 148),
        ("irish-reed", 1, 160),
        ("irish-hundreds", 100, 160),
        ("silk-reed", 1, 144),
        ("macclesfield-reed", 100, 144),
        ("huddersfield-reed", 1, 4),
    ];
    for (symbol, dents, quarters) in systems {
        let per_cm = quotient(dents * 400, quarters * 254);
        let got = unit(symbol, Some(Kind::ReedCount)).unwrap().to_base(1.0);
        assert!(relative(got, per_cm) < 1e-15, "{symbol}: {got}, {per_cm}");
    }
    for reed in reeds::SYSTEMS.iter().filter(|r| !r.symbol.ends_with("cm")) {
        assert!(systems.iter().any(|s| s.0 == reed.symbol), "{} is not checked", reed.symbol);
    }
    assert_eq!(convert(24.0, "dents/10 cm", "dents/cm").unwrap(), 2.4);
}

#[test]
fn coincidences_of_the_trade() {
    for x in [0.5, 3.0, 16.0, 34.0] {
        // A pound has 256 drams, and a skein count 256 yards in a pound.
        assert!(relative(convert(x, "YSW", "yd/dr").unwrap(), x) < 1e-15);
        // A spyndle has 48 leas of 300 yd.
        let spyndle = convert(x, "NeL", "lb/spyndle").unwrap();
        assert!(relative(spyndle, 48.0 / x) < 1e-14, "{x} lea: {spyndle} lb/spyndle");
    }
}

// ---- laws --------------------------------------------------------------------------------------

fn answer(name: &str, row: &[f64]) -> f64 {
    catalogue::formula(name).unwrap().answer(row).unwrap()
}

fn system() -> impl Strategy<Value = &'static hankwise::quantity::Unit> {
    (0..counts::SYSTEMS.len()).prop_map(|k| &counts::SYSTEMS[k].unit)
}

/// Values over the decades that a mill meets.
fn value() -> impl Strategy<Value = f64> {
    (-3.0..6.0f64).prop_map(|power| 10f64.powf(power))
}

fn count() -> impl Strategy<Value = f64> {
    (0.0..4.0f64).prop_map(|power| 10f64.powf(power))
}

proptest! {
    #[test]
    fn a_conversion_there_and_back_is_nothing(x in value(), a in system(), b in system()) {
        let there = convert(x, a.symbol, b.symbol).unwrap();
        let back = convert(there, b.symbol, a.symbol).unwrap();
        prop_assert!(relative(back, x) < 1e-12, "{x} {} → {there} {} → {back}", a.symbol, b.symbol);
    }

    #[test]
    fn a_detour_does_not_matter(x in value(), a in system(), b in system(), c in system()) {
        let straight = convert(x, a.symbol, c.symbol).unwrap();
        let detour = convert(convert(x, a.symbol, b.symbol).unwrap(), b.symbol, c.symbol).unwrap();
        prop_assert!(relative(detour, straight) < 1e-12);
    }

    #[test]
    fn what_is_printed_can_be_read(x in value(), negative in any::<bool>()) {
        let x = if negative { -x } else { x };
        for unit in units().filter(|u| !u.symbol.is_empty()) {
            // In full, the very same number.
            let text = format!("{x} {}", unit.symbol);
            let read = parse(&text).map_err(|e| TestCaseError::fail(format!("{text}: {e}")))?;
            prop_assert_eq!((read.number, read.unit.symbol), (x, unit.symbol), "{}", text);
            // As people are shown it, to the four digits that are shown.
            let text = print::with_unit(x, unit.symbol);
            let read = parse(&text).map_err(|e| TestCaseError::fail(format!("{text}: {e}")))?;
            prop_assert!(relative(read.number, x) <= 0.5e-3, "{text} for {x}");
            prop_assert_eq!(read.unit.symbol, unit.symbol);
        }
    }

    #[test]
    fn what_is_printed_of_a_kind_can_be_read(x in 0.001..0.9f64) {
        for kind in Kind::ALL.iter().copied().filter(|k| k.check(x).is_ok()) {
            let text = print::of_kind(x, kind);
            let read = parse_as(&text, kind).map_err(|e| TestCaseError::fail(format!("{text}: {e}")))?;
            prop_assert!(relative(read.base(), x) <= 0.5e-3, "{text} for {x}");
        }
    }

    #[test]
    fn equal_ends_fold_to_their_number(tex in count(), n in 1..13usize, c in -0.02..0.15f64) {
        let mut row = vec![c];
        row.resize(n + 1, tex);
        let folded = answer("fold", &row);
        prop_assert!(relative(folded, answer("fold_alike", &[tex, n as f64, c])) < 1e-12);
        prop_assert!(relative(folded * (1.0 - c), tex * n as f64) < 1e-12);
        // An indirect count is divided by the ends.
        row[0] = 0.0;
        let number = convert(answer("fold", &row), "tex", "YSW").unwrap();
        let single = convert(tex, "tex", "YSW").unwrap();
        prop_assert!(relative(number, single / n as f64) < 1e-12);
        prop_assert!(relative(answer("single_for_fold", &[folded, n as f64, c]), tex) < 1e-12);
    }

    #[test]
    fn a_missing_end_makes_up_the_fold(ends in prop::collection::vec(count(), 1..6), last in 50.0..1000.0f64) {
        let mut row = vec![0.0];
        row.extend(&ends);
        row.push(last);
        let mut known = vec![answer("fold", &row)];
        known.extend(&ends);
        // The last end is a difference: its error is measured on the whole fold.
        let missing = answer("missing_component", &known);
        prop_assert!((missing - last).abs() < 1e-12 * known[0]);
    }

    #[test]
    fn means_lie_within_and_in_order(counts in prop::collection::vec(count(), 1..8)) {
        let (length, mass) = (answer("mean_by_length", &counts), answer("mean_by_mass", &counts));
        let least = counts.iter().copied().fold(f64::INFINITY, f64::min);
        let most = counts.iter().copied().fold(0.0, f64::max);
        let slack = 1.0 + 1e-12;
        // The harmonic mean is never above the plain one.
        prop_assert!(least <= mass * slack && mass <= length * slack && length <= most * slack);
        // Of equal masses, the plain mean of the metric numbers is the mean number.
        let numbers: f64 = counts.iter().map(|t| 1000.0 / t).sum::<f64>() / counts.len() as f64;
        prop_assert!(relative(1000.0 / mass, numbers) < 1e-12);
        // Lots of equal mass, and lots of equal length: masses as the counts.
        let row = |masses: &[f64]| answer("mean_of_lots", &[&counts, masses].concat());
        prop_assert!(relative(row(&vec![2.5; counts.len()]), mass) < 1e-12);
        prop_assert!(relative(row(&counts), length) < 1e-12);
    }

    #[test]
    fn a_twist_factor_does_not_depend_on_the_system(tpi in 1.0..40.0f64, n in 1.0..60.0f64) {
        for (system, factor) in [
            ("Ne", "tpi/√Ne"), ("worsted", "tpi/√worsted"), ("YSW", "tpi/√YSW"),
            ("galashiels-cut", "tpi/√gala"), ("american-run", "tpi/√run"), ("NeL", "tpi/√NeL"),
        ] {
            let row = [convert(tpi, "tpi", "turns/m").unwrap(), convert(n, system, "tex").unwrap()];
            let got = answer("twist_factor", &row);
            let got = unit(factor, Some(Kind::TwistFactor)).unwrap().from_base(got);
            prop_assert!(relative(got, tpi / n.sqrt()) < 1e-12, "{factor}: {got}");
        }
    }
}

#[test]
fn a_minus_goes_with_the_whole_of_a_value_in_two_units() {
    for (text, number, unit) in [
        ("-1 lb 12 oz", -1.75, "lb"),
        ("−1 h 30 min", -1.5, "h"),
        ("2 lb 9 oz", 2.5625, "lb"),
        ("1 h 2 min 36 s", 1.043_333_333_333, "h"),
        ("6 yd 18 in", 6.5, "yd"),
        ("0 lb 12½ oz", 0.781_25, "lb"),
    ] {
        let amount = parse(text).unwrap();
        assert!((amount.number - number).abs() < 1e-9, "{text}: {}", amount.number);
        assert_eq!(amount.unit.symbol, unit, "{text}");
    }
}

#[test]
fn a_value_in_two_units_is_written_in_whole_units_and_their_parts() {
    for (text, says) in [
        (
            "1 lb 20 oz",
            "is it 2.25 lb? Write the larger unit whole and the smaller below 16, such as '2 lb 4 oz'",
        ),
        ("1.5 lb 12 oz", "such as '2 lb 4 oz'"),
        ("1 kg 5 lb", "a kg is not a whole number of lb; write it in one unit"),
        ("2 m 3 in", "not a whole number"),
        ("12 oz 1 lb", "write the larger unit first"),
        ("1 lb -2 oz", "unknown unit"),
        ("22.5½ YSW", "a decimal and a fraction"),
    ] {
        let error = parse(text).unwrap_err().to_string();
        assert!(error.contains(says), "{text}: {error}");
    }
}

#[test]
fn a_long_text_is_refused_in_a_short_sentence() {
    for text in
        ["1 ".repeat(5000), "g".repeat(150), format!("1 {}", "lb ".repeat(60)), "½".repeat(99)]
    {
        let error = parse(&text).unwrap_err().to_string();
        assert!(error.len() < 600, "{} characters", error.len());
    }
}

/// A row that could not be read would be skipped.
#[test]
fn every_row_of_the_file_of_units_is_a_unit() {
    let file = include_str!("../src/quantity/units.tsv");
    let rows = file.lines().filter(|line| !line.is_empty() && !line.starts_with('#')).skip(1);
    for row in rows {
        let [symbol, names, kind, worth, definition]: [&str; 5] =
            row.split('\t').take(5).collect::<Vec<_>>().try_into().unwrap();
        let kind = Kind::named(kind).unwrap();
        let found = unit(symbol, Some(kind)).unwrap();
        assert_eq!((found.symbol, found.kind, found.definition), (symbol, kind, definition));
        for name in names.split(", ").filter(|name| !name.is_empty()) {
            assert_eq!(unit(name, Some(kind)).unwrap(), found, "{name}");
        }
        assert!(!worth.is_empty() && found.to_base(1.5).is_finite(), "{symbol}");
    }
}

/// 16 ounces are a pound; a hundred cents are one.
#[test]
fn other_forms_of_a_mass_per_area_and_of_a_price() {
    let near = |a: f64, b: f64| assert!((a / b - 1.0).abs() < 1e-12, "{a}, wanted {b}");
    near(convert(1.0, "lb/yd²", "oz/yd²").unwrap(), 16.0);
    near(convert(0.5, "lb/sq yd", "g/m²").unwrap(), 226.796_185 / 0.836_127_36);
    near(convert(450.0, "cents/kg", "/kg").unwrap(), 4.5);
    near(convert(100.0, "p/lb", "/kg").unwrap(), 1.0 / 0.453_592_37);
}
