//! The handbook tables: whole, in known units, from known sources; against what is exact.

use std::collections::BTreeSet;

use hankwise::handbook::{Figure, Table};
use hankwise::prelude::*;
use hankwise::source::source;

fn table(name: &str) -> &'static Table {
    catalogue::table(name).unwrap_or_else(|e| panic!("{e}"))
}

fn figures<'t>(table: &'t Table, words: &str) -> Vec<&'t Figure> {
    table.find(words).collect()
}

#[test]
fn every_figure_is_whole() {
    let mut wrong = Vec::new();
    for table in catalogue::tables() {
        assert!(!table.about.is_empty() && !table.title.is_empty() && !table.figures.is_empty());
        for figure in &table.figures {
            let mut need = |ok: bool, what: &str| {
                if !ok {
                    wrong.push(format!("{} {:?}: {what}", table.name, figure.of));
                }
            };
            need(figure.measure().is_ok(), "the unit is not known");
            need(figure.low <= figure.high, "the ends are the wrong way round");
            need(figure.low.is_finite() || figure.high.is_finite(), "both ends are open");
            need(source(figure.source).is_some(), "the source is not known");
            need(figure.of.len() == table.columns.len(), "a column has no word");
            need(!figure.of[0].is_empty(), "it is of nothing");
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn no_figure_stands_twice() {
    let mut seen = BTreeSet::new();
    for table in catalogue::tables() {
        for f in &table.figures {
            let key = format!("{} {:?} {} {} {}", table.name, f.of, f.words(), f.unit, f.source);
            assert!(seen.insert(key.clone()), "{key}");
        }
    }
}

/// A row says what it is of; who printed it, and on which page, stand in columns of their own.
#[test]
fn no_row_is_named_by_its_source() {
    let mut wrong = Vec::new();
    for table in catalogue::tables() {
        for f in &table.figures {
            let row = f.of.join(" ").to_lowercase();
            // A year at the end is of the printing.
            let of = |source: &str| {
                let name = source.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end();
                row.contains(&name.to_lowercase())
            };
            let words: Vec<&str> = row.split([' ', ',']).collect();
            let page = words.iter().any(|word| ["page", "p.", "leaflet", "manual"].contains(word));
            if of(f.source) || page {
                wrong.push(format!("{}: {row}, of {}", table.name, f.source));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn tables_are_found_by_name_and_word() {
    let names: Vec<_> = catalogue::tables().map(|t| t.name).collect();
    assert!(names.is_sorted() && names.len() == names.iter().collect::<BTreeSet<_>>().len());
    let refusal = catalogue::table("twist_multiplyers").unwrap_err().to_string();
    assert!(refusal.contains("did you mean 'twist_multipliers'?"), "{refusal}");
    let refusal = catalogue::table("xyz").unwrap_err().to_string();
    assert!(refusal.contains("find('xyz')"), "{refusal}");
    let woollen = |table: &Table| table.find("woollen").next().is_some();
    assert!(woollen(table("twist_multipliers")) && woollen(table("diameter_factors")));
    assert!(catalogue::tables().all(|table| table.find("nonsense").next().is_none()));
}

/// What follows from definitions: √(1/2), √(1/3), hexagons full of circles.
#[test]
fn what_is_defined_is_exact() {
    let ratios = table("folding_twist_ratios");
    for (n, words) in [(2.0_f64, "two equal"), (3.0, "three equal")] {
        let found = figures(ratios, words);
        assert_eq!(found.len(), 1, "{words}");
        assert!((found[0].low.powi(2) * n - 1.0).abs() < 1e-12);
    }
    // A single of 20s at 4.5, its two-fold of 10s at 4 and at 6.
    let tpi = |multiplier: f64, count: f64| multiplier * count.sqrt();
    let cotton = figures(ratios, "two-fold cotton")[0];
    assert!((cotton.low - tpi(4.0, 10.0) / tpi(4.5, 20.0)).abs() < 1e-12);
    assert!((cotton.high - tpi(6.0, 10.0) / tpi(4.5, 20.0)).abs() < 1e-12);
    // Cotton of the published density, packed so, has the specific volume that Peirce took.
    let cotton = figures(table("fibre_densities"), "cotton 65")[0].low;
    let packing = figures(table("packing"), "Peirce")[0].low;
    let (packing, density) = (Fraction::base(packing), Density::base(cotton));
    assert!((yarn::yarn_specific_volume(packing, density).value() - 1.1).abs() < 1e-12);
    let packed = figures(table("packing"), "limit")[0];
    // A hexagon round a circle of radius 1 has the area 2√3.
    assert!((packed.low - std::f64::consts::PI / (2.0 * 3.0_f64.sqrt())).abs() < 1e-12);
}

/// Hanks are leas, leas are turns of the reel: the printed lengths must add up.
#[test]
fn reels_add_up() {
    let reels = table("reels");
    let metres = |trade: &str, what: &str| {
        let all = reels.figures.iter();
        let found: Vec<_> = all.filter(|f| *f.of == [trade, what]).collect();
        assert_eq!(found.len(), 1, "{trade} {what}");
        found[0].measure().unwrap().to_base(found[0].low)
    };
    let same = |a: f64, b: f64| assert!((a - b).abs() < 1e-9, "{a} and {b}");
    let of = |trade: &str, part: &str, number: &str, whole: &str| {
        same(metres(trade, part) * metres(trade, number), metres(trade, whole));
    };
    of("cotton", "reel, circumference", "turns in a lea", "lea");
    of("cotton", "lea", "leas in a hank", "hank");
    of("worsted", "reel, circumference", "turns in a lea", "lea");
    of("worsted", "lea", "leas in a hank", "hank");
    of("jute, flax", "reel, circumference", "turns in a cut or lea", "cut or lea");
    of("jute, flax", "cut or lea", "cuts in a heer", "heer");
    of("jute, flax", "cut or lea", "cuts in a hank", "hank");
    of("jute, flax", "cut or lea", "cuts in a spyndle", "spyndle");
    // A bundle of linen: 20 hanks of 10 leas, 16⅔ of 12.
    let lea = metres("jute, flax", "cut or lea");
    same(20.0 * metres("linen, English", "leas in a hank") * lea, metres("linen", "bundle"));
    same(50.0 / 3.0 * metres("linen, Irish", "leas in a hank") * lea, metres("linen", "bundle"));
    // The hank of a trade is that of its count: 1 Ne is one hank in a pound.
    for (trade, what, mass, system) in [
        ("cotton", "hank", "1 lb", "Ne"),
        ("spun silk", "hank", "1 lb", "spun-silk"),
        ("worsted", "hank", "1 lb", "worsted"),
        ("woollen, Yorkshire", "skein", "6 lb", "YSW"),
        ("woollen, Galashiels", "cut", "24 oz", "galashiels-cut"),
        ("woollen, American", "run", "1 lb", "american-run"),
    ] {
        let hank = Length::base(metres(trade, what));
        let count = yarn::count_of(hank, Mass::parse(mass).unwrap());
        same(count.number(system).unwrap(), 1.0);
    }
    // Jute bundles are an even number of whole hanks, of the yarn in pounds a spyndle.
    for (pounds, trade) in [
        (7.0, "jute, 7 and 8 lb yarn"),
        (8.0, "jute, 7 and 8 lb yarn"),
        (7.5, "jute, 7½ lb yarn"),
        (9.0, "jute, 9 lb yarn"),
    ] {
        let bundle = reels.figures.iter().find(|f| *f.of == [trade, "bundle"]).unwrap().low;
        let hanks = bundle / pounds * 4.0;
        same(hanks % 2.0, 0.0);
    }
}

/// What is said of wraps beside the diameters is what the wraps' own factors say.
#[test]
fn wraps_run_as_far_as_their_factors() {
    let factors = &yarn::WRAPS_FACTORS;
    let (low, high) = (factors[0].factor(), factors[factors.len() - 1].factor());
    let said = format!("from {low:.2} to {high:.2}");
    assert!(table("diameter_factors").about.contains(&said), "{said}");
}

/// Printed constants are the exact ones to half of the last value that a hand sum takes, but for
/// what is cut off, and what the Chinese cotton trade takes on purpose.
#[test]
fn constants_are_those_of_the_systems() {
    for f in &table("count_constants").figures {
        let exact = LinearDensity::parse(&format!("1 {}", f.of[0])).unwrap().value();
        let off = (f.low / exact - 1.0).abs();
        if f.source == "Mill note on yarn" {
            assert!((0.004..0.013).contains(&off), "{:?}: {off}", f.of);
        } else {
            assert!(off < 5e-4, "{:?}: {off}", f.of);
        }
    }
}

/// Contractions of folds that are written out are those of their sums.
#[test]
fn folds_in_print_contract_as_printed() {
    for (words, nominal, measured) in [
        ("sewing", 590.541_247 / 12.5, 590.541_247 / 12.0),
        ("cable", 15.0 * 590.541_247 / 24.0, 590.541_247 / 1.4),
    ] {
        let all = &table("folding_contractions").figures;
        let found = all.iter().find(|f| f.of[0].contains(words)).unwrap();
        let (nominal, measured) = (LinearDensity::base(nominal), LinearDensity::base(measured));
        let c = yarn::contraction_from_counts(nominal, measured).number("%").unwrap();
        assert!((c - found.low).abs() <= 0.05 + 1e-9, "{words}: {c}, not {}", found.low);
    }
}

/// A round number in print stands for its count within 5 %: else it is a slip of copying.
#[test]
fn rounded_counts_are_near_their_counts() {
    for f in &table("rounded_counts").figures {
        let exact = LinearDensity::parse(f.of[0]).unwrap().number(f.unit).unwrap();
        assert!(
            (f.low / exact - 1.0).abs() < 0.05,
            "{} is {exact} {}, not {}",
            f.of[0],
            f.unit,
            f.low
        );
    }
}

/// Count × breaking load of leas of one cotton hardly changes with the count: the cotton trade's
/// product, here within a seventh of 1600 for the American and of 1850 for the Egyptian.
#[test]
fn leas_have_one_product() {
    for f in &table("lea_strength").figures {
        let load = Force::base(f.measure().unwrap().to_base(f.low));
        let product = yarn::lea_product(load, LinearDensity::parse(f.of[1]).unwrap()).value();
        let middle = if f.of[0] == "American" { 1600.0 } else { 1850.0 };
        assert!((product / middle - 1.0_f64).abs() < 1.0 / 7.0, "{:?}: {product}", f.of);
    }
}

#[test]
fn what_a_woollen_card_does_is_from_memory_and_says_so() {
    let figures = table("machine_figures").figures.iter();
    let card: Vec<_> = figures.filter(|f| f.of[0].starts_with("woollen card")).collect();
    assert_eq!(card.len(), 5);
    assert!(card.iter().all(|f| f.source == "memory"));
}
