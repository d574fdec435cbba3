//! Check values from outside, one row each in `published/*.csv`, and the formulas they exercise.
//!
//! A row passes when the answer lies within the row's tolerance of the printed value. The tolerance
//! is that of the source's values; only the rounding of the binary arithmetic itself
//! ([`ROUNDING`]) is forgiven on top, because many answers lie exactly on a printed half.
//!
//! A row may ask for an input instead of the result: that input is `"?"` and the result is given under
//! the name `"="`. `{"mass": "?", "regain": "17 %", "=": "100 kg"}` asks for the mass of which 100 kg
//! come out; `expected` is then that input, in `unit`, and the formula is solved for it.
//!
//! Anything that is not a formula is asked under one of the names in `published/others.rs`.

#[path = "published/others.rs"]
mod others;

use hankwise::catalogue;
use hankwise::formula::{Checks, Formula, Input};
use hankwise::quantity::{Amount, Kind, parse, parse_as, unit};
use hankwise::source::Basis;
use serde_json::{Map, Value};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;

const FILES: [(&str, &str); 3] = [
    ("yarn", include_str!("published/yarn.csv")),
    ("cloth", include_str!("published/cloth.csv")),
    ("mill", include_str!("published/mill.csv")),
];
const COLUMNS: [&str; 8] =
    ["id", "formula", "inputs", "expected", "unit", "tolerance", "source", "grade"];
const GRADES: [&str; 4] = ["published", "practice", "memory", "computed"];
/// What the sources of published values are, by how they begin.
const BASES: &str = include_str!("published/bases.tsv");
/// The pseudo-formula of a change of unit.
const CONVERT: &str = "convert";
/// Stands for the input that a row asks for.
const UNKNOWN: &str = "?";
/// The name of the result where an input is asked for.
const RESULT: &str = "=";
/// Relative error of a few steps in double precision.
const ROUNDING: f64 = 1e-13;

struct Row {
    id: String,
    formula: String,
    inputs: Map<String, Value>,
    printed: String,
    expected: f64,
    unit: String,
    tolerance: f64,
    source: String,
    grade: String,
}

fn rows(text: &str) -> Vec<Row> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    assert_eq!(reader.headers().unwrap().iter().collect::<Vec<_>>(), COLUMNS);
    reader
        .records()
        .map(|record| {
            let record = record.unwrap();
            let field = |k: usize| record[k].to_owned();
            Row {
                id: field(0),
                formula: field(1),
                inputs: serde_json::from_str(&record[2])
                    .unwrap_or_else(|e| panic!("{}: inputs: {e}", &record[0])),
                printed: field(3),
                expected: record[3].parse().unwrap(),
                unit: field(4),
                tolerance: record[5].parse().unwrap(),
                source: field(6),
                grade: field(7),
            }
        })
        .collect()
}

fn all() -> impl Iterator<Item = (&'static str, Row)> {
    FILES.iter().flat_map(|(name, text)| rows(text).into_iter().map(move |row| (*name, row)))
}

/// The beginnings of sources, each with its basis in words.
fn beginnings() -> Vec<(&'static str, &'static str)> {
    let lines = BASES.lines().filter(|line| !line.is_empty() && !line.starts_with('#'));
    lines.skip(1).map(|line| line.split_once('\t').unwrap()).map(|(b, s)| (s, b)).collect()
}

impl Row {
    /// What the value rests on; none where it is not known what its source is.
    fn basis(&self) -> Option<Basis> {
        match self.grade.as_str() {
            "computed" => Some(Basis::Definition),
            "practice" => Some(Basis::Custom),
            "memory" => Some(Basis::Memory),
            _ => {
                let all = beginnings();
                let fits = all.into_iter().filter(|(begins, _)| self.source.starts_with(begins));
                let (_, words) = fits.max_by_key(|(begins, _)| begins.len())?;
                Checks::BASES.into_iter().find(|basis| basis.words() == words)
            }
        }
    }
}

/// The texts of an input: one, or a list.
fn texts(value: &Value) -> Result<Vec<&str>, String> {
    let text = |v: &'_ Value| -> Result<(), String> {
        v.is_string().then_some(()).ok_or(format!("{v} is not a text"))
    };
    match value {
        Value::Array(list) => {
            list.iter().try_for_each(text)?;
            Ok(list.iter().filter_map(Value::as_str).collect())
        }
        one => {
            text(one)?;
            Ok(one.as_str().into_iter().collect())
        }
    }
}

/// What the library answers, in the row's unit.
fn answer(row: &Row) -> Result<f64, String> {
    let words = |e: hankwise::Error| e.to_string();
    if row.formula == CONVERT {
        let value = row.inputs.get("value").and_then(Value::as_str).ok_or("no value")?;
        if row.inputs.len() != 1 {
            return Err("convert takes one value".to_owned());
        }
        let Amount { number, unit: from } = parse(value).map_err(words)?;
        let to = unit(&row.unit, Some(from.kind)).map_err(words)?;
        return Ok(to.from_base(from.to_base(number)));
    }
    if let Some(other) = others::find(&row.formula) {
        let Amount { number, unit: from } = other(&row.inputs)?;
        return match row.unit.as_str() {
            "" => Ok(number),
            name => Ok(unit(name, Some(from.kind)).map_err(words)?.from_base(from.to_base(number))),
        };
    }
    let formula = catalogue::formula(&row.formula).map_err(words)?;
    let mut base = Vec::new();
    let mut unknown = None;
    let mut lengths = Vec::new();
    for input in formula.inputs {
        let value = row.inputs.get(input.name).ok_or(format!("no input {}", input.name))?;
        if value.is_array() != input.many {
            return Err(format!("{}: a list where one is wanted, or the reverse", input.name));
        }
        let texts = texts(value)?;
        if input.many {
            lengths.push(texts.len());
        }
        for text in texts {
            if text == UNKNOWN && !input.many {
                if unknown.replace((base.len(), input.kind)).is_some() {
                    return Err("two inputs are asked for".to_owned());
                }
                base.push(f64::NAN);
            } else {
                base.push(parse_as(text, input.kind).map_err(words)?.base());
            }
        }
    }
    let result = row.inputs.get(RESULT);
    if row.inputs.len() != formula.inputs.len() + usize::from(result.is_some()) {
        return Err("there are inputs that the formula has not".to_owned());
    }
    formula.check_lengths(&lengths).map_err(words)?;
    let (answer, kind) = match (unknown, result) {
        (None, None) => (formula.answer(&base).map_err(words)?, formula.output.kind),
        (Some((place, kind)), Some(result)) => {
            let result = result.as_str().ok_or("the result is not a text")?;
            let wanted = parse_as(result, formula.output.kind).map_err(words)?.base();
            let roots = formula.solve(place, wanted, &base, None).map_err(words)?;
            let [root] = roots[..] else { return Err(format!("several answers: {roots:?}")) };
            (root.value(), kind)
        }
        _ => return Err("an input '?' needs the result '=', and the reverse".to_owned()),
    };
    match row.unit.as_str() {
        "" if matches!(kind.family(), Kind::Ratio | Kind::Fraction) => Ok(answer),
        name => unit(name, Some(kind)).map(|u| u.from_base(answer)).map_err(words),
    }
}

fn misses(rows: &[Row]) -> Vec<String> {
    let mut misses = Vec::new();
    for row in rows {
        let Row { id, formula, printed, tolerance, unit, .. } = row;
        match answer(row) {
            Err(why) => misses.push(format!("{id} {formula}: {why}")),
            Ok(got) => {
                let near = tolerance + ROUNDING * row.expected.abs();
                // Written so that a NaN misses.
                if (got - row.expected).abs() <= near {
                    continue;
                }
                misses.push(format!(
                    "{id} {formula}: got {got} {unit}, expected {printed}, tolerance {tolerance}"
                ));
            }
        }
    }
    misses
}

fn holds(file: &str) {
    let (_, text) = FILES.iter().find(|(name, _)| *name == file).unwrap();
    let rows = rows(text);
    assert!(!rows.is_empty(), "{file}.csv is empty");
    let misses = misses(&rows);
    assert!(
        misses.is_empty(),
        "{} of {} rows of {file}.csv miss:\n{}",
        misses.len(),
        rows.len(),
        misses.join("\n")
    );
}

#[test]
fn yarn_rows_hold() {
    holds("yarn");
}

#[test]
fn cloth_rows_hold() {
    holds("cloth");
}

#[test]
fn mill_rows_hold() {
    holds("mill");
}

#[test]
fn a_wrong_row_would_be_listed() {
    let mut rows = rows(FILES[0].1);
    rows.truncate(2);
    rows[0].expected *= 1.01;
    rows[0].tolerance = 0.0;
    rows[1].formula = "no_such_formula".to_owned();
    let misses = misses(&rows);
    assert_eq!(misses.len(), 2, "{misses:?}");
    assert!(misses[0].contains(&rows[0].id) && misses[0].contains("expected"), "{misses:?}");
}

/// An input that is asked for and nothing to ask it by, or a result that nobody asks about.
#[test]
fn a_row_that_asks_amiss_is_told() {
    let ask = |inputs: &str| {
        let mut row = rows(FILES[0].1).remove(0);
        row.formula = "mass_of_length".to_owned();
        row.inputs = serde_json::from_str(inputs).unwrap();
        row.unit = "m".to_owned();
        answer(&row)
    };
    let length = ask(r#"{"count": "50 tex", "length": "?", "=": "1 g"}"#).unwrap();
    assert!((length - 20.0).abs() < 1e-9, "{length}");
    assert!(ask(r#"{"count": "50 tex", "length": "?"}"#).unwrap_err().contains("needs"));
    assert!(
        ask(r#"{"count": "50 tex", "length": "20 m", "=": "1 g"}"#).unwrap_err().contains("needs")
    );
    assert!(ask(r#"{"count": "?", "length": "?", "=": "1 g"}"#).unwrap_err().contains("two"));
}

#[test]
fn every_formula_has_a_row() {
    // A row that asks for an input checks the body all the same, from its other end.
    let with: BTreeSet<String> = all().map(|(_, row)| row.formula).collect();
    let without: Vec<&str> =
        catalogue::formulas().map(|f| f.name).filter(|name| !with.contains(*name)).collect();
    assert!(
        without.is_empty(),
        "without a check value, a row in tests/published/*.csv: {}",
        without.join(", ")
    );
}

/// What a row has for each input of its formula, in base units; for the one that it asks for, the
/// value expected.
fn given(row: &Row, formula: &Formula) -> Vec<Vec<f64>> {
    let of = |input: &Input| {
        let read = |text: &str| {
            if text == UNKNOWN {
                let name = if row.unit.is_empty() { "fraction" } else { &row.unit };
                return unit(name, Some(input.kind))
                    .map_or(row.expected, |u| u.to_base(row.expected));
            }
            parse_as(text, input.kind).unwrap().base()
        };
        texts(&row.inputs[input.name]).unwrap().into_iter().map(read).collect()
    };
    formula.inputs.iter().map(of).collect()
}

/// Times and divided by are one where an input is 1, plus and minus where it is 0; and it does not show
/// that two inputs are swapped where they are equal.
#[test]
fn no_formula_rests_on_zeros_ones_or_equal_inputs_alone() {
    let differ = |a: f64, b: f64| (a - b).abs() > 1e-9 * a.abs().max(b.abs());
    let mut faults = Vec::new();
    let all: Vec<Row> = all().map(|(_, row)| row).collect();
    for formula in catalogue::formulas() {
        let rows = all.iter().filter(|row| row.formula == formula.name);
        let rows: Vec<Vec<Vec<f64>>> = rows.map(|row| given(row, formula)).collect();
        let mut need = |holds: bool, what: String| {
            if !holds {
                faults.push(format!("{}: {what}", formula.name));
            }
        };
        for (k, input) in formula.inputs.iter().enumerate() {
            let name = input.name;
            if input.many {
                let unequal = |list: &[f64]| list.iter().any(|x| differ(*x, list[0]));
                need(
                    rows.iter().any(|r| unequal(&r[k])),
                    format!("the members of {name} are equal"),
                );
                continue;
            }
            let telling = |x: f64| x.abs() > 1e-9 && differ(x, 1.0);
            need(rows.iter().any(|r| telling(r[k][0])), format!("{name} is 0 or 1"));
            for (j, other) in formula.inputs.iter().enumerate().skip(k + 1) {
                if other.kind == input.kind && !other.many {
                    let unequal = rows.iter().any(|r| differ(r[k][0], r[j][0]));
                    need(unequal, format!("{name} and {} are equal", other.name));
                }
            }
        }
    }
    assert!(
        faults.is_empty(),
        "in every row of tests/published/*.csv; add one that tells more:\n{}",
        faults.join("\n")
    );
}

#[test]
fn rows_are_well_formed() {
    let mut seen = BTreeSet::new();
    let mut faults = Vec::new();
    for (file, row) in all() {
        let mut fault = |what: &str| faults.push(format!("{file}.csv {}: {what}", row.id));
        if !seen.insert(row.id.clone()) {
            fault("the id is there twice");
        }
        if !GRADES.contains(&row.grade.as_str()) {
            fault("the grade is not known");
        }
        if row.source.trim().is_empty() {
            fault("no source");
        }
        if row.basis().is_none() {
            fault("say in bases.tsv what its source is");
        }
        if !(row.tolerance >= 0.0 && row.tolerance.is_finite() && row.expected.is_finite()) {
            fault("the tolerance or the value is not a value");
        }
    }
    for (file, text) in FILES {
        let ids: Vec<String> = rows(text).into_iter().map(|row| row.id).collect();
        if !ids.is_sorted() {
            faults.push(format!("{file}.csv is not in the order of its ids"));
        }
        if text.contains('\r') {
            faults.push(format!("{file}.csv has carriage returns"));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// A description says against how many values its formula is checked; `make checks` writes them anew.
#[test]
fn the_numbers_of_checks_are_as_the_rows() {
    let mut table: BTreeMap<String, [usize; Checks::BASES.len()]> = BTreeMap::new();
    for (_, row) in all().filter(|(_, row)| catalogue::formula(&row.formula).is_ok()) {
        let basis = row.basis().unwrap_or_else(|| panic!("{}: what is its source?", row.id));
        let place = Checks::BASES.iter().position(|b| *b == basis).unwrap();
        table.entry(row.formula).or_default()[place] += 1;
    }
    let mut text = format!("formula,{}\n", Checks::BASES.map(head).join(","));
    for (name, numbers) in &table {
        let numbers = numbers.map(|n| n.to_string()).join(",");
        writeln!(text, "{name},{numbers}").expect("a text takes all");
    }
    let path = "src/formula/checks.csv";
    if std::env::var_os("HANKWISE_WRITE").is_some() {
        // What was compiled is as the file was before.
        return std::fs::write(path, &text).unwrap();
    }
    let written = std::fs::read_to_string(path).unwrap();
    assert!(written == text, "{path} is not as tests/published; write it with: make checks");
    for formula in catalogue::formulas() {
        let found = formula.checks().by_basis().map(|(_, values)| values);
        assert_eq!(Some(&found), table.get(formula.name), "{}", formula.name);
    }
}

/// The head of a column of `checks.csv`: the basis, its comma left out.
fn head(basis: Basis) -> String {
    basis.words().replace(',', "")
}

/// A line that no row needs would be a slip of copying.
#[test]
fn every_beginning_is_that_of_a_source() {
    let sources: Vec<String> = all().map(|(_, row)| row.source).collect();
    let mut seen = BTreeSet::new();
    for (begins, words) in beginnings() {
        assert!(seen.insert(begins), "{begins} stands twice");
        assert!(sources.iter().any(|source| source.starts_with(begins)), "{begins}");
        assert!(Checks::BASES.iter().any(|basis| basis.words() == words), "{words}");
    }
}

/// Half of the last digit that is printed.
fn half_digit(printed: &str) -> f64 {
    let decimals = printed.split_once('.').map_or(0, |(_, part)| part.len());
    0.5 * 10f64.powi(-i32::try_from(decimals).unwrap())
}

/// Prints what is behind each formula; see it with `cargo test -- --nocapture`.
#[test]
fn coverage() {
    let mut table: BTreeMap<String, BTreeMap<String, usize>> = BTreeMap::new();
    let mut files: BTreeMap<&str, (BTreeMap<String, usize>, usize)> = BTreeMap::new();
    for (file, row) in all() {
        let (grades, wide) = files.entry(file).or_default();
        *grades.entry(row.grade.clone()).or_default() += 1;
        // Some sources round an intermediate value; such a row is a weaker check.
        *wide += usize::from(row.tolerance > 1.001 * half_digit(&row.printed));
        *table.entry(row.formula).or_default().entry(row.grade).or_default() += 1;
    }
    let line = |name: &str, counts: &BTreeMap<String, usize>| {
        let cells: Vec<String> = GRADES
            .iter()
            .map(|g| format!("{:>10}", counts.get(*g).copied().unwrap_or(0)))
            .collect();
        format!("{name:<28}{}", cells.join(""))
    };
    println!("{:<28}{}", "", GRADES.map(|g| format!("{g:>10}")).join(""));
    for (file, (grades, wide)) in &files {
        println!("{}   wider than half a digit: {wide}", line(&format!("{file}.csv"), grades));
    }
    println!();
    for (name, counts) in &table {
        println!("{}", line(name, counts));
    }
    let outside = table.iter().filter(|(_, c)| c.contains_key("published")).count();
    println!("\n{outside} of {} with a published value", table.len());
    assert_eq!(files.len(), FILES.len());
}
