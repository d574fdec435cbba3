//! The one search: what people type leads to what is meant.

use std::collections::BTreeSet;

use hankwise::catalogue::{self, Entry, EntryKind, Face, Found, find};

/// The first hits, as kind and name.
fn first(words: &str, most: usize) -> Vec<String> {
    let found = find(words, None);
    let said = |entry: &Entry| format!("{} {}", entry.kind(), entry.name());
    found.hits().iter().take(most).map(said).collect()
}

/// What people of the trade type, and what must be among the first ten hits.
const MEANT: &[(&str, &[&str])] = &[
    ("gsm", &["unit g/m²", "formula mass_per_area"]),
    ("epi", &["unit threads/in"]),
    ("ppi", &["unit threads/in"]),
    ("ends per inch", &["unit threads/in"]),
    ("tpi", &["unit tpi"]),
    ("turns per inch", &["unit tpi"]),
    ("gear", &["calculation change_wheel"]),
    ("wheel", &["calculation change_wheel"]),
    ("wheels", &["calculation change_wheel"]),
    ("shrink", &["table finishing_shrinkages"]),
    ("denier", &["count den"]),
    ("linen", &["count NeL"]),
    ("take up", &["formula take_up_from_lengths"]),
    ("takeup", &["formula take_up_from_lengths"]),
    ("take-up", &["formula take_up_from_lengths"]),
    ("ashenhurst", &["calculation setts"]),
    ("Ne", &["count Ne"]),
    ("ne", &["count Ne"]),
    ("cotton count", &["count Ne"]),
    ("grist", &["formula count_of"]),
    ("sley", &["calculation choose_reed"]),
    ("dent", &["calculation choose_reed"]),
    ("wpi", &["calculation wraps"]),
    ("ply", &["formula fold_alike"]),
    ("aran", &["row hand_knitting_weights"]),
    ("dk", &["row hand_knitting_weights"]),
    ("worsted weight", &["row hand_knitting_weights"]),
    ("fingering", &["row hand_knitting_weights"]),
    ("skein", &["count YSW"]),
    ("hank", &["formula hank_length"]),
    ("stone", &["unit st"]),
    ("felting", &["table finishing_shrinkages"]),
    ("mule", &["formula mule_draft", "calculation mule", "stage mule"]),
    ("twill", &["weave 2/2 twill"]),
    ("stockport", &["reed stockport-reed"]),
    ("twist_factor", &["formula twist_factor"]),
    ("count twist factor", &["formula twist_factor"]),
    ("twist multipliers", &["table twist_multipliers"]),
];

#[test]
fn what_people_type_leads_to_what_is_meant() {
    let mut missed = Vec::new();
    for (words, meant) in MEANT {
        let hits = first(words, 10);
        for one in *meant {
            if !hits.iter().any(|hit| hit == one) {
                missed.push(format!("{words}: no '{one}' in {hits:?}"));
            }
        }
    }
    assert!(missed.is_empty(), "{}", missed.join("\n"));
}

#[test]
fn the_order_and_number_of_words_do_not_matter() {
    let names = |words: &str| -> Vec<String> { first(words, usize::MAX) };
    let sorted = |words: &str| names(words).into_iter().collect::<BTreeSet<String>>();
    assert_eq!(names("twist factor"), names("factor twist"));
    assert_eq!(names("Twist-Factor"), names("twist_factor"));
    for (one, several) in [("wheel", "wheels"), ("blend", "blends"), ("dye", "dyes")] {
        let (one, several) = (sorted(one), sorted(several));
        assert!(!one.is_empty() && one == several, "{one:?} {several:?}");
    }
    // Every further word leaves less.
    assert!(sorted("twist factor").is_subset(&sorted("twist")));
    assert!(sorted("of the twist") == sorted("twist"));
}

#[test]
fn a_name_comes_before_a_description() {
    for formula in catalogue::formulas() {
        let found = find(formula.name, None);
        assert_eq!(found.hits()[0].name(), formula.name);
    }
    for table in catalogue::tables() {
        let found = find(table.name, Some(EntryKind::Table));
        assert_eq!(found.hits()[0].name(), table.name);
    }
}

#[test]
fn every_unit_and_every_count_is_found_by_each_of_its_names() {
    let mut missed = Vec::new();
    for entry in catalogue::entries() {
        if !matches!(entry.kind(), EntryKind::Count | EntryKind::Reed | EntryKind::Unit) {
            continue;
        }
        for name in [entry.name()].iter().chain(entry.other_names()) {
            let found = find(name, Some(entry.kind()));
            if !found.hits().iter().any(|hit| hit.name() == entry.name()) {
                missed.push(format!("{} {name}", entry.kind()));
            }
        }
    }
    assert!(missed.is_empty(), "{missed:?}");
}

fn nothing(words: &str, kind: Option<EntryKind>) -> String {
    let found = find(words, kind);
    found.nothing(Face::Command).unwrap_or_else(|| panic!("{words}: {} hits", found.hits().len()))
}

#[test]
fn nothing_found_says_what_would_be() {
    assert!(nothing("ashenhrust", None).contains("Type: hankwise find ashenhurst"));
    assert!(nothing("twist mulitplier", None).contains("'twist multiplier'"));
    assert!(nothing("xyzzy", None).ends_with("list everything: hankwise find"));
    let table = nothing("xyzzy", Some(EntryKind::Table));
    assert!(
        table.contains("no table has 'xyzzy'") && table.ends_with("hankwise find --kind table")
    );
    let python = find("ashenhrust", None).nothing(Face::Python).unwrap();
    assert!(python.ends_with("hw.find(\"ashenhurst\")"), "{python}");
    // What is suggested is found; what is of another kind is not suggested.
    for (words, kind) in [("galshiels", EntryKind::Count), ("stokport", EntryKind::Reed)] {
        let said = nothing(words, Some(kind));
        let near = said.split('\'').nth(3).unwrap_or_else(|| panic!("{said}"));
        assert!(!find(near, Some(kind)).hits().is_empty(), "{said}");
    }
    assert!(!nothing("stokport", Some(EntryKind::Formula)).contains("stockport"));
}

fn narrow(found: &Found, words: &str) {
    for face in [Face::Command, Face::Python] {
        for line in found.text(face, true).lines() {
            let wide = line.chars().count();
            // A line to type is not broken.
            let typed = line.trim_start().starts_with("> ") || !line.trim().contains(' ');
            assert!(wide <= 80 || typed, "{words}: {wide} columns: {line}");
        }
    }
}

#[test]
fn every_kind_has_its_own_word() {
    assert!(EntryKind::all().enumerate().all(|(place, kind)| kind as usize == place));
    let words: std::collections::BTreeSet<_> = EntryKind::all().map(EntryKind::word).collect();
    assert_eq!(words.len(), EntryKind::all().count());
}

#[test]
fn all_fits_into_80_columns() {
    for (words, _) in MEANT {
        narrow(&find(words, None), words);
    }
    narrow(&find("", None), "");
    for kind in EntryKind::all() {
        narrow(&find("", Some(kind)), kind.word());
        assert_eq!(EntryKind::named(kind.word()), Some(kind));
    }
    for table in catalogue::tables() {
        let rows: Vec<_> = table.figures.iter().collect();
        for line in table.text(&rows).lines() {
            assert!(line.chars().count() <= 80, "{}: {line}", table.name);
        }
    }
    for formula in catalogue::formulas() {
        for line in formula.description().lines() {
            assert!(line.chars().count() <= 80, "{}: {line}", formula.name);
        }
    }
}

#[test]
fn without_words_the_kinds_are_counted() {
    let all = find("", None);
    let kinds: Vec<EntryKind> = all.kinds().iter().map(|(kind, _)| *kind).collect();
    let wanted: Vec<EntryKind> = EntryKind::all().filter(|kind| *kind != EntryKind::Row).collect();
    assert_eq!(kinds, wanted);
    let text = all.text(Face::Command, false);
    for (kind, count) in all.kinds() {
        assert_eq!(find("", Some(kind)).hits().len(), count);
        assert!(text.contains(&format!("hankwise find --kind {kind}")), "{text}");
    }
    let formulas = find("", Some(EntryKind::Formula));
    assert_eq!(formulas.hits().len(), catalogue::formulas().len());
}

#[test]
fn a_description_has_all_that_a_formula_says() {
    for formula in catalogue::formulas() {
        let text = formula.description().split_whitespace().collect::<Vec<_>>().join(" ");
        let html = formula.html();
        let wanted = [formula.summary].into_iter().chain(formula.slips.iter().copied());
        let wanted = wanted.chain(formula.limits.iter().copied());
        for part in wanted.chain(formula.inputs.iter().map(|input| input.meaning)) {
            let part = part.split_whitespace().collect::<Vec<_>>().join(" ");
            assert!(text.contains(&part), "{}: {part}", formula.name);
        }
        assert!(text.contains("Checked against"), "{}", formula.name);
        let cautions = formula.cautions.is_empty();
        assert_eq!(text.contains("Cautions:"), !cautions, "{}", formula.name);
        assert_eq!(html.contains("role=\"note\""), !cautions, "{}", formula.name);
    }
}

#[test]
fn an_unknown_name_says_how_to_search() {
    let said = catalogue::calc("muel").unwrap_err().to_string();
    assert!(said.contains("did you mean 'mule'?") && said.contains("find('muel')"));
    assert!(matches!(catalogue::calc("mule"), Ok(Entry::Calculation(_))));
    assert!(matches!(catalogue::calc("mule_draft"), Ok(Entry::Formula(_))));
    assert!(catalogue::formula("mule").is_err());
}

/// The keys under each head of a lot file.
fn keys_of(lot: &str) -> BTreeSet<(String, String)> {
    let mut head = String::new();
    let mut found = BTreeSet::new();
    for line in lot.lines() {
        if let Some(name) = line.strip_prefix('[') {
            name.split(']').next().unwrap_or_default().clone_into(&mut head);
        } else if let Some((key, _)) = line.split_once('=').filter(|_| !line.starts_with('#')) {
            found.insert((head.clone(), key.trim().to_owned()));
        }
    }
    found
}

#[test]
fn a_stage_lists_the_keys_that_a_lot_file_may_have() {
    let written = keys_of(include_str!("lot/whole-lot.toml"));
    let mut seen = 0;
    for stage in hankwise::plan::STAGES {
        let keys = hankwise::calculation::described(stage.asks);
        let text = find(stage.name, Some(EntryKind::Stage)).text(Face::Command, false);
        for (_, key) in written.iter().filter(|(head, _)| head == stage.name) {
            // Prices belong to the account and not to the stage.
            if ["hour", "price", "minding"].iter().any(|money| key.contains(money)) {
                continue;
            }
            assert!(keys.iter().any(|(known, _)| known == key), "{}.{key}", stage.name);
            assert!(text.contains(&format!(" {key}: ")), "{text}");
            seen += 1;
        }
    }
    assert!(seen > 20, "{seen}");
}
