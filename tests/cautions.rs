//! What can do harm is said wherever a number is printed that one acts on, and in one place.

use hankwise::catalogue::{calculation, calculations, formula, formulas, table, tables};
use hankwise::handbook::Figure;

/// What is weighed, poured, heated or set at a machine, with what is dangerous there.
const FORMULAS: &[(&str, &str)] = &[
    ("dye_mass", "dyeing"),
    ("stock_volume", "dyeing"),
    ("water_to_fill", "hot liquor"),
    ("liquor_volume", "hot liquor"),
    ("liquor_carried", "scouring"),
    ("hopper_weigh", "machines"),
    ("corrected_weigh", "machines"),
    ("feed_rate", "machines"),
    ("mass_to_add", "oil"),
    ("emulsion_mass", "oil"),
    ("water_to_dry", "dryer"),
    ("sorted_mass", "raw fleece"),
    ("wheel_for_new_twist", "wheels"),
    ("wheel_for_draft", "wheels"),
    ("wheel_for_twist", "wheels"),
    ("delivery_wheel", "wheels"),
    ("twist_wheel", "wheels"),
    ("spindle_speed", "wheels"),
    ("delivery_for_draft", "mule"),
    ("looms_for_weaver", "loom"),
    ("weft_insertion", "loom"),
];

const CALCULATIONS: &[(&str, &str)] = &[
    ("dye_bath", "dyeing"),
    ("scour_liquor", "scouring"),
    ("washes", "scouring"),
    ("emulsion", "oil"),
    ("dryer", "dryer"),
    ("card", "machines"),
    ("mule", "mule"),
    ("loom", "loom"),
    ("change_wheel", "wheels"),
    ("finishing", "steam"),
    ("test_wash", "raw fleece"),
];

const TABLES: &[(&str, &str)] = &[
    ("scour_liquors", "scouring"),
    ("scour_liquors", "hot liquor"),
    ("oil_on_wool", "oil"),
    ("machine_figures", "machines"),
    ("finishing_processes", "steam"),
];

#[test]
fn what_one_acts_on_has_its_caution() {
    for (name, caution) in FORMULAS {
        assert!(formula(name).unwrap().cautions.contains(caution), "{name}: {caution}");
    }
    for (name, caution) in CALCULATIONS {
        assert!(calculation(name).unwrap().cautions.contains(caution), "{name}: {caution}");
    }
    for (name, caution) in TABLES {
        assert!(table(name).unwrap().cautions.contains(caution), "{name}: {caution}");
    }
}

#[test]
fn a_table_says_them_under_its_rows() {
    for (name, caution) in TABLES {
        let table = table(name).unwrap();
        for rows in [table.figures.iter().collect::<Vec<&Figure>>(), vec![&table.figures[0]]] {
            let text = table.text(&rows);
            let (rows, beware) = text.split_once("Cautions: ").unwrap();
            let mark = format!("! {}{}", caution[..1].to_uppercase(), &caution[1..]);
            assert!(beware.contains(&mark) && !rows.contains(&mark), "{text}");
        }
    }
}

/// Machines at work and wet work: no calculation of either is free of danger.
#[test]
fn every_machine_and_every_bath_has_cautions() {
    let dangerous = ["mill::run::", "mill::wet::", "mill::dyeing", "mill::liquor", "mill::change"];
    for calculation in calculations() {
        let at = format!("{}::", calculation.module);
        if dangerous.iter().any(|place| at.contains(place)) {
            assert!(!calculation.cautions.is_empty(), "{}", calculation.name);
        }
    }
    for formula in formulas() {
        if dangerous.iter().any(|place| formula.module.contains(place)) {
            assert!(!formula.cautions.is_empty(), "{}", formula.name);
        }
    }
}

/// Among settings and slips nobody would look for them.
#[test]
fn nothing_else_takes_their_place() {
    const WORDS: &[&str] = &["hands", "scald", "burns", "fire", "guards on"];
    let danger = |text: &str| WORDS.iter().any(|word| text.split(' ').any(|w| w == *word));
    for formula in formulas() {
        for text in formula.limits.iter().chain(formula.slips) {
            assert!(!danger(text), "{}: {text}", formula.name);
        }
    }
    for table in tables() {
        assert!(!danger(&table.about), "{}", table.name);
    }
}
