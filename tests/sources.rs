//! The sources: every key that is cited is one of them, and every one of them is cited.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use hankwise::prelude::*;
use hankwise::source::{Basis, source, sources};
use hankwise::{caution, quantity};

/// All keys that are cited, each with who cites it.
fn cited() -> Vec<(&'static str, String)> {
    let mut all = Vec::new();
    for formula in catalogue::formulas() {
        all.extend(formula.sources.iter().map(|key| (*key, formula.name.to_owned())));
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
