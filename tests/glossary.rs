//! One meaning, one name, one symbol: the names of the catalogue against `glossary.csv`.
//!
//! A row of the glossary is a name with its symbol (– where only results bear it), the kinds of value that
//! bear it, what it is a name of (`formula`, `calculation`: an input of them; `lot`: a key of a stage in a lot
//! file; `result`: a result of calculations; `plan`: a name in the JSON of a plan, which a test in Python
//! reads) and its meaning. Several kinds or uses are in one cell, with a
//! space between them. A new meaning gets a row first.

use std::collections::{BTreeMap, BTreeSet};

use hankwise::calculation::{Answer, Input, Item, Output, flat};
use hankwise::catalogue;

/// A row of the glossary.
struct Row {
    name: String,
    symbol: String,
    kinds: BTreeSet<String>,
    of: BTreeSet<String>,
    meaning: String,
}

fn rows() -> Vec<Row> {
    let mut reader = csv::Reader::from_reader(include_str!("glossary.csv").as_bytes());
    assert_eq!(reader.headers().unwrap(), vec!["name", "symbol", "kinds", "of", "meaning"]);
    let words = |cell: &str| cell.split(' ').map(str::to_owned).collect::<BTreeSet<_>>();
    reader
        .records()
        .map(|record| {
            let record = record.unwrap();
            Row {
                name: record[0].into(),
                symbol: record[1].into(),
                kinds: words(&record[2]),
                of: words(&record[3]),
                meaning: record[4].into(),
            }
        })
        .collect()
}

#[test]
fn each_name_and_each_meaning_stands_once() {
    let rows = rows();
    for (before, row) in rows.iter().zip(&rows[1..]) {
        assert!(before.name < row.name, "{} is before {}", before.name, row.name);
    }
    let mut meanings = BTreeMap::new();
    for row in &rows {
        assert!(!row.symbol.is_empty(), "{} has no symbol", row.name);
        assert!(row.meaning.len() > 3, "{} has no meaning", row.name);
        if let Some(other) = meanings.insert(row.meaning.to_lowercase(), &row.name) {
            panic!("{other} and {} are one meaning: {}", row.name, row.meaning);
        }
    }
}

#[test]
fn every_input_of_a_formula_is_in_the_glossary() {
    let rows = rows();
    let glossary: BTreeMap<&str, &Row> = rows.iter().map(|row| (row.name.as_str(), row)).collect();
    for formula in catalogue::formulas() {
        for input in formula.inputs {
            let row = glossary.get(input.name).unwrap_or_else(|| {
                panic!("{}: {} is not in the glossary", formula.name, input.name)
            });
            let at = format!("{}: {}", formula.name, input.name);
            assert!(row.of.contains("formula"), "{at} is not a name for formulas");
            assert_eq!(input.symbol, row.symbol, "{at} has another symbol in the glossary");
            let kind = input.kind.name().to_owned();
            assert!(row.kinds.contains(&kind), "{at} is a {kind}, in the glossary {:?}", row.kinds);
        }
    }
}

#[test]
fn the_glossary_has_nothing_that_no_formula_has() {
    let mut used: BTreeMap<&str, BTreeSet<String>> = BTreeMap::new();
    for input in catalogue::formulas().flat_map(|formula| formula.inputs) {
        used.entry(input.name).or_default().insert(input.kind.name().to_owned());
    }
    for row in rows().iter().filter(|row| row.of.contains("formula")) {
        let kinds = used.get(row.name.as_str());
        assert!(kinds.is_some(), "{} is an input of no formula", row.name);
        // Where other things bear the name too, they may be of other kinds.
        if row.of.len() == 1 {
            assert_eq!(kinds, Some(&row.kinds), "kinds of {}", row.name);
        }
    }
}

#[test]
fn no_symbol_stands_for_two_things_in_a_formula() {
    for formula in catalogue::formulas() {
        let mut symbols = BTreeMap::from([(formula.output.symbol, "the result")]);
        for input in formula.inputs {
            if let Some(other) = symbols.insert(input.symbol, input.name) {
                panic!("{}: {other} and {} are both {}", formula.name, input.name, input.symbol);
            }
        }
    }
}

/// The quantities that are asked, those of rows too, each with where it is asked.
fn asked(at: &str, items: &[Item], found: &mut Vec<(String, Input)>) {
    for item in flat(items) {
        match item {
            Item::One(input) | Item::List(input) => found.push((at.to_owned(), input)),
            Item::Rows(rows) => asked(&format!("{at}, {}", rows.name), rows.items, found),
            _ => {}
        }
    }
}

/// The results, those of parts and rows too.
fn answered(outputs: &'static [Output], found: &mut Vec<&'static Answer>) {
    for output in outputs {
        match output {
            Output::One(answer) | Output::List(answer) => found.push(answer),
            Output::Part { outputs, .. } | Output::Rows { outputs, .. } => answered(outputs, found),
            Output::Block(_) => {}
        }
    }
}

#[test]
fn every_name_of_a_calculation_and_a_stage_is_in_the_glossary() {
    let rows = rows();
    let glossary: BTreeMap<&str, &Row> = rows.iter().map(|row| (row.name.as_str(), row)).collect();
    let check = |at: &str, of: &str, name: &str, kind: &str| {
        let row =
            glossary.get(name).unwrap_or_else(|| panic!("{at}: {name} is not in the glossary"));
        assert!(row.of.contains(of), "{at}: {name} is not a name of a {of}");
        assert!(row.kinds.contains(kind), "{at}: {name} is a {kind}, there {:?}", row.kinds);
        row.symbol.clone()
    };
    let mut inputs = Vec::new();
    for calculation in catalogue::calculations() {
        asked(calculation.name, calculation.inputs, &mut inputs);
        let mut answers = Vec::new();
        answered(calculation.outputs, &mut answers);
        for Answer { name, kind, .. } in answers {
            check(calculation.name, "result", name, kind.name());
        }
    }
    let number = inputs.len();
    for stage in hankwise::plan::STAGES {
        asked(&format!("stage {}", stage.name), stage.asks, &mut inputs);
    }
    for (place, (at, input)) in inputs.iter().enumerate() {
        let of = if place < number { "calculation" } else { "lot" };
        let symbol = check(at, of, input.name, input.kind.name());
        assert!(
            input.symbol.is_empty() || input.symbol == symbol,
            "{at}: {} has the symbol {}, in the glossary {symbol}",
            input.name,
            input.symbol
        );
    }
}

#[test]
fn no_symbol_stands_for_two_inputs_of_a_calculation() {
    for calculation in catalogue::calculations() {
        let mut inputs = Vec::new();
        asked(calculation.name, calculation.inputs, &mut inputs);
        let mut symbols = BTreeMap::new();
        for (at, input) in inputs.iter().filter(|(_, input)| !input.symbol.is_empty()) {
            if let Some(other) = symbols.insert((at, input.symbol), input.name) {
                panic!("{at}: {other} and {} are both {}", input.name, input.symbol);
            }
        }
    }
}

/// Words that Python, Rust or TOML keep for themselves.
const KEPT: &str = "
    false none true and as assert async await break class continue def del elif else except finally
    for from global if import in is lambda nonlocal not or pass raise return try while with yield
    abstract become box const crate do dyn enum extern final fn gen impl let loop macro match mod
    move mut override priv pub ref self static struct super trait type typeof unsafe unsized use
    virtual where inf nan";

#[test]
fn every_name_can_be_said_in_python_rust_and_toml() {
    let kept: BTreeSet<&str> = KEPT.split_whitespace().collect();
    let rows = rows();
    let names = rows.iter().map(|row| row.name.as_str());
    for name in names.chain(catalogue::formulas().map(|formula| formula.name)) {
        let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_';
        assert!(name.chars().all(plain), "{name}");
        assert!(name.starts_with(|c: char| c.is_ascii_lowercase()), "{name}");
        assert!(!name.ends_with('_') && !name.contains("__"), "{name}");
        assert!(!kept.contains(name), "{name} is a word of Python, Rust or TOML");
    }
}

/// Words that do not say by themselves what they are of, or against what.
const TOO_LITTLE: [&str; 14] = [
    "after",
    "area",
    "before",
    "diameter",
    "each",
    "factor",
    "found",
    "old",
    "per_tooth",
    "ratio",
    "speed",
    "variation",
    "wanted",
    "waste",
];

#[test]
fn a_name_says_what_it_is_of() {
    for row in rows() {
        assert!(!TOO_LITTLE.contains(&row.name.as_str()), "{} of what?", row.name);
        let weight = row.name.contains("weight") && !row.name.starts_with("check_weight");
        assert!(!weight, "{}: say mass", row.name);
    }
    for formula in catalogue::formulas() {
        assert!(!formula.name.ends_with("_found"), "{}: found from what?", formula.name);
    }
}
