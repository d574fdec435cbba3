//! The sources: every key that is cited is one of them, and every one of them is cited.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use hankwise::calculation::{Item, flat};
use hankwise::prelude::*;
use hankwise::source::{Basis, source, sources};
use hankwise::{caution, quantity};

/// All keys that are cited, each with who cites it.
fn cited() -> Vec<(&'static str, String)> {
    let mut all = Vec::new();
    for formula in catalogue::formulas() {
        all.extend(formula.sources.iter().map(|key| (*key, formula.name.to_owned())));
        let range = |name: &str| format!("usual range of {}({name})", formula.name);
        all.extend(formula.inputs.iter().map(|input| (input.basis, range(input.name))));
    }
    for calculation in catalogue::calculations() {
        all.extend(calculation.sources.iter().map(|key| (*key, calculation.name.to_owned())));
        for item in flat(calculation.inputs) {
            if let Item::One(input) | Item::List(input) = item {
                all.push((
                    input.basis,
                    format!("usual range of {}({})", calculation.name, input.name),
                ));
            }
        }
    }
    for table in catalogue::tables() {
        let row = |f: &hankwise::handbook::Figure| format!("{} {:?}", table.name, f.of);
        all.extend(table.figures.iter().map(|f| (f.source, row(f))));
    }
    all.extend(quantity::units().map(|unit| (unit.source, unit.symbol.to_owned())));
    for caution in caution::CAUTIONS {
        all.extend(caution.sources.iter().map(|key| (*key, caution.name.to_owned())));
    }
    all
}

#[test]
fn what_is_cited_is_a_source() {
    let unknown: Vec<_> = cited().into_iter().filter(|(key, _)| source(key).is_none()).collect();
    assert!(unknown.is_empty(), "{unknown:?}");
}

/// The text of every file of a folder with an ending.
fn texts(folder: &Path, all: &mut Vec<(String, String)>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let end = path.extension().and_then(|end| end.to_str()).unwrap_or("").to_owned();
        if path.is_dir() {
            texts(&path, all);
        } else if !path.ends_with("sources.tsv") && ["rs", "tsv"].contains(&end.as_str()) {
            all.push((end, fs::read_to_string(&path).unwrap()));
        }
    }
}

/// As a word of Rust, as a field of a table, or named so in what is said about one.
#[test]
fn every_source_is_cited() {
    let mut all = Vec::new();
    texts(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), &mut all);
    let is_cited = |key: &str| {
        let (word, said) = (format!("\"{key}\""), format!("source: {key}"));
        all.iter().any(|(end, text)| {
            text.contains(&said)
                || if end == "rs" {
                    text.contains(&word)
                } else {
                    text.lines().any(|line| line.split('\t').any(|field| field == key))
                }
        })
    };
    let idle: Vec<_> = sources().map(|s| s.key).filter(|key| !is_cited(key)).collect();
    assert!(idle.is_empty(), "nothing rests on {idle:?}");
}

#[test]
fn every_source_has_a_title_and_a_place() {
    for source in sources() {
        assert!(!source.title.is_empty(), "{}", source.key);
        assert_ne!(source.basis, Basis::Own, "{}", source.key);
        assert!(source.is_bare() || !source.place.is_empty(), "{}: where was it read?", source.key);
        let remembered = source.basis == Basis::Memory && !source.is_bare();
        assert_eq!(remembered, source.place.starts_with("not read") && source.basis != Basis::Web);
    }
}

#[test]
fn one_work_has_one_row() {
    let titles: BTreeSet<_> = sources().map(|s| (s.title, s.place)).collect();
    assert_eq!(titles.len(), sources().len());
}

/// A description says what each usual range rests on, and so does the warning.
#[test]
fn a_usual_range_is_shown_with_its_basis() {
    let card = catalogue::formula("tape_pitch").unwrap();
    let said = card.description().split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(said.contains("usually 4 to 200 (from memory, unchecked)"), "{said}");
    assert!(card.html().contains("4 to 200 (from memory, unchecked)"));
    for formula in catalogue::formulas() {
        let said = formula.description();
        let ranges = said.matches("usually").count();
        assert!(ranges >= formula.inputs.len(), "{}", formula.name);
    }
    let place = card.inputs.iter().position(|input| input.name == "ends").unwrap();
    let warning = card.unusual_at(place, card.inputs.len(), 900.0).unwrap();
    assert!(warning.ends_with("is 4 to 200 (from memory, unchecked)"), "{warning}");
    let text = catalogue::calculation("mule").unwrap().description();
    assert!(text.contains("usually 75 % to 90 % (from memory, unchecked)"), "{text}");
    let text =
        catalogue::calculation("skein_count").map(hankwise::calculation::Calculation::description);
    assert!(text.is_ok_and(|text| text.contains("skein method (standard or law)")));
    let card = catalogue::formula("twist_factor").unwrap();
    let warning = card.unusual_at(0, card.inputs.len(), 1e9).unwrap();
    assert!(warning.ends_with("(custom of the trade)"), "{warning}");
}

/// What is remembered of an input in one formula is remembered in the next of its file.
#[test]
fn one_range_has_one_basis() {
    let mut bases: BTreeMap<String, BTreeSet<&str>> = BTreeMap::new();
    for formula in catalogue::formulas() {
        for input in formula.inputs {
            let (file, meaning) = (formula.module, input.meaning);
            let range = format!("{file} {} {meaning} {:?}", input.name, input.usual);
            bases.entry(range).or_default().insert(input.basis);
        }
    }
    let torn: Vec<_> = bases.into_iter().filter(|(_, bases)| bases.len() > 1).collect();
    assert!(torn.is_empty(), "{torn:?}");
}

/// A formula for which only pages on the web were read says so; one from a book does not.
#[test]
fn pages_on_the_web_alone_are_said_to_be() {
    let said = |name: &str| {
        let text = catalogue::formula(name).unwrap().description();
        text.split_whitespace().collect::<Vec<_>>().join(" ")
    };
    let only = "Web pages only: no book, paper or standard was read for it.";
    for name in ["drums_needed", "crimp_angle", "maximum_sett"] {
        assert!(said(name).contains(only), "{name}");
    }
    for name in ["racetrack_weft_crimp", "stitch_constant"] {
        assert!(said(name).contains("Web pages and memory only: no book"), "{name}");
    }
    assert!(said("drums_needed").contains("teaching pages (web page)"));
    for name in ["ends_in_width", "brierley_sett", "twist_factor", "crimp_from_lengths"] {
        assert!(!said(name).contains(only), "{name}");
    }
    assert!(said("ends_in_width").contains("6th ed., 1909 (book or paper)"));
    assert!(said("brierley_sett").contains("1931 (from memory, unchecked)"));
    assert!(said("crimp_angle").contains("T45 (web page; the work itself was not read)"));
}
