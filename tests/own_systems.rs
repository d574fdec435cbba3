//! Count systems of one's own: known everywhere once they are defined; what is refused.
#![allow(clippy::float_cmp)] // what is exact is compared exactly

use hankwise::catalogue;
use hankwise::plan::{Extent, Plan, Run, load_counts};
use hankwise::quantity::counts::{SYSTEMS, System};
use hankwise::quantity::{
    Definition, Kind, convert, define, parse, parse_as, systems, unit, units,
};
use hankwise::source::Basis;
use proptest::prelude::*;

fn definition(name: &str, length: &str, mass: &str) -> Definition {
    Definition {
        name: name.into(),
        length: length.into(),
        mass: mass.into(),
        ..Definition::default()
    }
}

fn refusal(definition: &Definition, words: &[&str]) {
    let message = match define(definition) {
        Ok(system) => panic!("it was taken: {system:?}"),
        Err(e) => e.to_string(),
    };
    for word in words {
        assert!(message.contains(word), "'{word}' is not in: {message}");
    }
}

/// The trade's own systems, defined again under another name, are the same to the last bit.
#[test]
fn a_definition_is_as_exact_as_the_tables() {
    let cases = [
        ("hawick-cut", "300 yd", "26 oz", false),
        ("YSW", "1536 yd", "6 lb", false),
        ("Ne", "840 yd", "1 lb", false),
        ("yd/dr", "1 yd", "1 dr", false),
        ("Nm", "1 km", "1 kg", false),
        ("french-cotton", "1000 m", "500 g", false),
        ("den", "9000 m", "1 g", true),
        ("tex", "1000 m", "1 g", true),
        ("gr/120yd", "120 yd", "1 gr", true),
        ("dr/1000yd", "1000 yd", "1 dr", true),
        ("lb/spyndle", "14400 yd", "1 lb", true),
        ("turin-denier", "476 m", "53 mg", true),
    ];
    for (known, length, mass, direct) in cases {
        let name = format!("bench-{}", known.replace('/', "-"));
        let own = define(&Definition { direct, ..definition(&name, length, mass) }).unwrap();
        let known = SYSTEMS.iter().find(|s| s.unit.symbol == known).unwrap();
        assert_eq!(own.unit.form, known.unit.form, "{name}");
        assert_eq!((own.length, own.mass), (known.length, known.mass), "{name}");
        assert_eq!(own.unit.basis(), Basis::Own);
        assert_eq!(own.tex(), known.tex());
    }
}

#[test]
fn an_own_system_is_known_everywhere() {
    let own = Definition {
        names: vec!["Fb".into(), "fellside".into()],
        source: "the mill's count board".into(),
        country: "Wales".into(),
        date: "1890".into(),
        ..definition("fellside-cut", "320 yd", "1 lb 12 oz")
    };
    let system = define(&own).unwrap();
    assert_eq!(system.unit.definition, "320 yd per 1 lb 12 oz");
    assert_eq!((system.country, system.date), ("Wales", "1890"));

    let tex = parse("22½ fellside-cut").unwrap().base();
    // 28 oz in 320 yd, over 22½.
    let wanted = 1.75 * 453.59237 / (320.0 * 0.9144) * 1000.0 / 22.5;
    assert!((tex / wanted - 1.0).abs() < 1e-15);
    for text in
        ["22½ Fb", "22½ fellside", "22½s Fb", "Fb 22½", "22½ FELLSIDE-CUT", "22½ fellside cut"]
    {
        assert_eq!(parse_as(text, Kind::LinearDensity).unwrap().base(), tex, "{text}");
    }
    assert!((convert(tex, "tex", "Fb").unwrap() - 22.5).abs() < 1e-13);
    // The twist factor of a count as it is read.
    let twist = convert(9.0, "tpi", "turns/m").unwrap();
    let factor = catalogue::formula("twist_factor").unwrap().answer(&[twist, tex]).unwrap();
    for name in ["tpi/√fellside-cut", "tpi/sqrt(Fb)"] {
        let got = unit(name, None).unwrap().from_base(factor);
        assert!((got - 9.0 / 22.5f64.sqrt()).abs() < 1e-13, "{got}");
    }
    assert!(units().any(|u| u.symbol == "fellside-cut"));
    assert!(systems().any(|s| s.unit.symbol == "fellside-cut"));
    let meant = convert(1.0, "felside-cut", "tex").unwrap_err().to_string();
    assert!(meant.contains("did you mean 'fellside-cut'"), "{meant}");
    let wrong = parse_as("3 Fb", Kind::Mass).unwrap_err().to_string();
    assert!(wrong.contains("linear density"), "{wrong}");
    // Again is no error; a name on top or another definition is.
    assert!(std::ptr::eq(define(&own).unwrap(), system));
    assert!(std::ptr::eq(define(&definition("Fb", "960 yd", "84 oz")).unwrap(), system));
    refusal(
        &definition("fellside", "320 yd", "27 oz"),
        &["'fellside' is taken", "1 lb 12 oz", "count board"],
    );
    refusal(&Definition { direct: true, ..own.clone() }, &["taken"]);
    refusal(
        &Definition { names: vec!["Fc".into()], ..own },
        &["already", "all its names", "fellside"],
    );
}

#[test]
fn what_the_trade_has_already() {
    // The same thing under the same name needs no definition, but harms nobody.
    let known = define(&definition("worsted", "560 yd", "1 lb")).unwrap();
    assert_eq!(known.unit.source, "Davis 1920");
    refusal(
        &definition("worsted", "560 m", "1 kg"),
        &["'worsted' is taken", "560 yd per lb", "Davis 1920"],
    );
    refusal(&definition("nm", "300 yd", "1 lb"), &["'nm' is taken: Nm"]);
    refusal(&definition("kg", "300 yd", "1 lb"), &["'kg' is taken", "kilogram"]);
    refusal(&definition("bradford-reed", "300 yd", "1 lb"), &["taken", "beers"]);
    for word in ["cut", "Cuts", "lea", "skein", "NeK", "alloa"] {
        refusal(&definition(word, "300 yd", "1 lb"), &["several ways", "choose a name of its own"]);
    }
    let two = Definition { names: vec!["run".into()], ..definition("worsted", "560 yd", "1 lb") };
    refusal(&two, &["names", "'run' is taken"]);
}

#[test]
fn what_cannot_be() {
    for name in ["", "2cut", "my cut", "my_cut", "16 Nm", "cut²", "tpi/√x", "-x", "a(b)"] {
        refusal(&definition(name, "300 yd", "1 lb"), &["begins with a letter", "'my-cut'"]);
    }
    refusal(&definition("nil-cut", "0 yd", "1 lb"), &["nil-cut: length", "0 yd"]);
    refusal(&definition("nil-cut", "300 yd", "0 g"), &["nil-cut: mass", "above 0"]);
    refusal(&definition("nil-cut", "300", "1 lb"), &["nil-cut: length", "300 has no", "unit"]);
    refusal(&definition("nil-cut", "300 yd", "1 yd"), &["nil-cut: mass", "length"]);
    refusal(&definition("nil-cut", "", "1 lb"), &["nil-cut: length", "nothing was given"]);
    refusal(&definition("nil-cut", "300 ells", "1 lb"), &["nil-cut: length", "'ells'"]);
    assert!(unit("nil-cut", None).is_err());
}

proptest! {
    /// A hank is a hank: the number of them in the mass, whatever they are.
    #[test]
    fn a_count_is_what_its_definition_says(yards in 1..2000u32, drams in 1..5000u32, n in 0.1..90.0f64) {
        for direct in [false, true] {
            let name = format!("p-{yards}-{drams}-{direct}");
            let own = Definition { direct, ..definition(&name, &format!("{yards} yd"), &format!("{drams} dr")) };
            define(&own).unwrap();
            // Of length and mass in the trade's own words: n hanks in the mass, or n masses on the hank.
            let (length, mass) = (f64::from(yards), f64::from(drams));
            let (length, mass) = if direct { (length, mass * n) } else { (length * n, mass) };
            let (length, mass) = (convert(length, "yd", "m").unwrap(), convert(mass, "dr", "kg").unwrap());
            let tex = catalogue::formula("count_of").unwrap().answer(&[length, mass]).unwrap();
            let got = convert(tex, "tex", &name).unwrap();
            prop_assert!((got / n - 1.0).abs() < 1e-14, "{name}: {got} for {n}");
        }
    }
}

// ---- files -------------------------------------------------------------------------------------

/// Writes a file of counts and reads it.
fn load(name: &str, text: &str) -> Result<Vec<&'static System>, String> {
    let path = std::env::temp_dir().join(format!("hankwise-{}-{name}.toml", std::process::id()));
    std::fs::write(&path, text).unwrap();
    let loaded = load_counts(&path).map_err(|e| e.to_string());
    std::fs::remove_file(&path).unwrap();
    loaded
}

#[test]
fn a_file_of_counts() {
    let text = "\
# the counts of the valley
[combe-cut]
length = \"240 yd\"
mass = \"1 lb\"
names = [\"Cc\"]
source = \"the old books\"
country = \"England\"
date = \"1870\"

[combe-weight]
length = \"50 m\"
mass = \"1 g\"
direct = true
";
    let systems = load("good", text).unwrap();
    let symbols: Vec<&str> = systems.iter().map(|s| s.unit.symbol).collect();
    assert_eq!(symbols, ["combe-cut", "combe-weight"]);
    assert_eq!(convert(3.0, "Cc", "alloa-240").unwrap(), 3.0);
    assert_eq!(convert(3.0, "combe-weight", "tex").unwrap(), 60.0);
    assert_eq!(systems[0].unit.source, "the old books");
    // Loaded again, nothing happens.
    assert!(std::ptr::eq(load("good", text).unwrap()[0], systems[0]));
    // In other capitals as well, before the cotton count that people write so.
    for name in ["CC", "cc", "cC"] {
        assert_eq!(unit(name, Some(Kind::LinearDensity)).unwrap().symbol, "combe-cut", "{name}");
    }
    // As it is in a lot file.
    let inner = "[counts.vale-cut]\nlength = \"200 yd\"\nmass = \"1 lb\"\n";
    assert_eq!(load("inner", inner).unwrap()[0].unit.symbol, "vale-cut");
    let message = load("inner-bad", &inner.replace("\"1 lb\"", "26")).unwrap_err();
    assert!(message.contains(":3: counts.vale-cut.mass"), "{message}");
}

/// What would be read as something else than the count before its name is looked for.
#[test]
fn signs_of_the_notation_are_no_names() {
    for name in ["R", "S", "Z", "x", "x2", "f", "F40", "t", "Tkt", "single", "no"] {
        refusal(&definition(name, "300 yd", "26 oz"), &[name]);
    }
    for name in ["R", "x2", "Tkt"] {
        let words = [format!("'our-{name}'"), "notation of yarns".to_owned()];
        refusal(&definition(name, "300 yd", "26 oz"), &words.each_ref().map(String::as_str));
    }
    refusal(&definition("dk", "300 yd", "26 oz"), &["hand-knitting", "'our-dk'"]);
}

#[test]
fn a_bad_file_of_counts() {
    let good = "[first-of-two]\nlength = \"7 yd\"\nmass = \"1 lb\"\n";
    for (bad, line, words) in [
        ("[x-cut]\nmass = \"1 lb\"", 4, &["x-cut.length", "length = \"300 yd\" in [x-cut]"][..]),
        ("[x-cut]\nlength = \"1 yd\"", 4, &["x-cut.mass", "mass = \"26 oz\""]),
        ("[x-cut]\nlength = 300\nmass = \"1 lb\"", 5, &["x-cut.length", "text in quotes"]),
        ("[x-cut]\nlength = \"300\"\nmass = \"1 lb\"", 5, &["x-cut.length", "300 has no"]),
        ("[x-cut]\nlength = \"1 yd\"\nmass = \"0 lb\"", 6, &["x-cut.mass", "above 0"]),
        ("[x-cut]\nlength = \"1 yd\"\nmas = \"1 lb\"", 6, &["x-cut.mas", "write mass = "]),
        (
            "[x-cut]\nlength = \"1 yd\"\nmass = \"1 lb\"\nyear = 1",
            7,
            &["x-cut.year", "unknown key", "date"],
        ),
        (
            "[x-cut]\nlength = \"1 yd\"\nmass = \"1 lb\"\ndirect = 1",
            7,
            &["x-cut.direct", "true or false"],
        ),
        (
            "[x-cut]\nlength = \"1 yd\"\nmass = \"1 lb\"\nnames = \"x\"",
            7,
            &["x-cut.names", "list of texts"],
        ),
        (
            "[x-cut]\nlength = \"1 yd\"\nmass = \"1 lb\"\nnames = [\"tex\"]",
            7,
            &["x-cut.names", "'tex' is taken"],
        ),
        ("[cut]\nlength = \"1 yd\"\nmass = \"1 lb\"", 4, &["cut: ", "several ways"]),
        ("[YSW]\nlength = \"1 yd\"\nmass = \"1 lb\"", 4, &["YSW: ", "is taken", "256 yd per lb"]),
        ("[first-of-TWO]\nlength = \"1 yd\"\nmass = \"1 lb\"", 4, &["is taken", "7 yd per 1 lb"]),
        ("x = 3", 1, &["x: write a table [x]"]),
        ("[x-cut", 4, &["not TOML"]),
    ] {
        let text = if line == 1 { bad.to_owned() } else { format!("{good}{bad}\n") };
        let name = format!("bad{}", words[0].len() + line);
        let message = load(&name, &text).unwrap_err();
        assert!(message.contains(&format!(".toml:{line}: ")), "{line}: {message}");
        for word in words {
            assert!(message.contains(word), "'{word}' is not in: {message}");
        }
    }
    // All or none.
    assert!(unit("first-of-two", None).is_err());
    let missing = load_counts("no/such.toml".as_ref()).unwrap_err().to_string();
    assert!(missing.contains("no/such.toml: no such file"), "{missing}");
}

#[test]
fn counts_of_a_lot_file() {
    let lot = include_str!("lot/whole-lot.toml");
    let count = "count = \"330 m/100g\"";
    assert!(lot.contains(count));
    // 330 m per 100 g is 33 hanks of 100 m per kg.
    let counts = "[counts.ten-hank]\nlength = \"100 m\"\nmass = \"1 kg\"\n\n";
    let own = lot.replace(count, "count = \"33 ten-hank\"");
    let refused = Plan::parse(&own, "own.toml").unwrap_err().to_string();
    assert!(refused.contains("unknown unit 'ten-hank'"), "{refused}");
    let own = format!("{own}\n{counts}[print]\ncount = \"ten-hank\"\n");
    let (own, plain) =
        (Plan::parse(&own, "own.toml").unwrap(), Plan::parse(lot, "lot.toml").unwrap());
    let base = |plan: &Plan| plan.given().iter().find(|g| g.key == "yarn.count").unwrap().base();
    assert_eq!(base(&own), base(&plain));
    let result = own.run(&Run::planned()).unwrap();
    assert!(result.report(Extent::All).text().contains(" ten-hank"));
    // They are of that file alone.
    assert!(unit("ten-hank", None).is_err());
    let other = lot.replace(count, "count = \"16.5 ten-hank\"");
    let other = format!("{other}\n[counts.ten-hank]\nlength = \"200 m\"\nmass = \"1 kg\"\n");
    let other = Plan::parse(&other, "other.toml").unwrap();
    assert_eq!(base(&other), base(&plain));
    assert!(result.report(Extent::All).text().contains(" ten-hank"));
    // A refused file leaves nothing behind, and what everybody knows yields to the file's own.
    let refused =
        format!("{lot}\n[counts.left-hank]\nlength = \"1 m\"\nmass = \"1 g\"\n[nonsense]\n");
    assert!(Plan::parse(&refused, "refused.toml").is_err());
    assert!(unit("left-hank", None).is_err());
    let everybody = define(&definition("known-hank", "1 m", "1 kg")).unwrap();
    let own = lot.replace(count, "count = \"33 known-hank\"");
    let own = format!("{own}\n[counts.known-hank]\nlength = \"100 m\"\nmass = \"1 kg\"\n");
    assert_eq!(base(&Plan::parse(&own, "own.toml").unwrap()), base(&plain));
    assert_eq!(unit("known-hank", None).unwrap(), &everybody.unit);
    let bad = format!("{lot}\n[counts.worsted]\nlength = \"3 yd\"\nmass = \"1 lb\"\n");
    let message = Plan::parse(&bad, "bad.toml").unwrap_err().to_string();
    let line = bad.lines().position(|l| l == "[counts.worsted]").unwrap() + 1;
    assert!(message.starts_with(&format!("bad.toml:{line}: counts.worsted: ")), "{message}");
}
