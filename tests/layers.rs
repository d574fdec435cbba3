//! The house is built in layers: an import points down, never up, so that there is no circle.
//!
//! What counts is every `crate::…` path of `src`, in `use` lines and in bodies. The tests at the end
//! of a file may look at the whole crate.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// The modules from the ground up, and what each holds. A module imports only those above it in this
/// list. Names of formulas, tables, cautions and sources are data: a text that a lower module holds
/// and a higher one looks up is no import.
const ORDER: &[(&str, &str)] = &[
    ("error", "the one error type"),
    ("files", "reading and writing files"),
    ("words", "the words of a text"),
    ("tsv", "rows of a data file"),
    ("source", "data: the sources by key, and what rests on them"),
    ("number", "the number that a formula runs over"),
    ("quantity", "kinds, units, reading and printing; data: units, counts, reeds"),
    ("caution", "data: cautions by name, with the keys of their sources"),
    ("worked", "the recording of a formula, its working and workbook"),
    ("lanes", "several rows at a time"),
    ("normal", "the normal law"),
    ("law", "other laws of chance"),
    ("parts", "wheels and reeds that a mill owns"),
    ("table", "rows as text and HTML"),
    ("handbook", "what a table of the handbook is; its data are in the rooms"),
    ("formula", "what a formula is; data: keys of sources, names of cautions"),
    ("calculation", "what a chain of formulas asks and answers, and the ways to run it"),
    ("fibre", "room"),
    ("yarn", "room; twists, hanks and diameters need no cloth and no machine"),
    ("cloth", "room; a cloth is made of yarns"),
    ("mill", "room; its machines make yarn and cloth of fibre"),
    ("quality", "room; it tests yarn"),
    ("plan", "a lot through the mill"),
    ("catalogue", "all that can be called or looked up: the only one that lists the rooms"),
    ("prelude", "what a program commonly imports"),
];

/// Imports that point up, each for a reason. A recording keeps which formula made a step, so the
/// number has hooks that name the recording's label and tape, and the formula. A calculation takes a
/// yarn where a count is wanted, in the notations that the room of the yarn reads.
const EXCEPTIONS: &[(&str, &str)] =
    &[("number", "worked"), ("number", "formula"), ("worked", "formula"), ("calculation", "yarn")];

/// The Rust files of a folder and its folders.
fn files(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            files(&path, found);
        } else if path.extension().is_some_and(|end| end == "rs") {
            found.push(path);
        }
    }
}

/// The code of a file: without comments, and without the tests at its end.
fn code(text: &str) -> String {
    let body = text.split("#[cfg(test)]\nmod tests {").next().unwrap_or(text);
    let line = |line: &str| line.split("//").next().unwrap_or("").to_owned() + "\n";
    body.lines().map(line).collect()
}

fn first_word(text: &str) -> String {
    text.trim_start().chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect()
}

/// The top-level names in `{a, b::{c, d}, e}`, whose bracket has been opened.
fn names_in_brackets(text: &str) -> Vec<String> {
    let (mut depth, mut names, mut start) = (0, Vec::new(), 0);
    for (at, c) in text.char_indices() {
        match c {
            '{' => depth += 1,
            '}' if depth > 0 => depth -= 1,
            '}' | ',' if depth == 0 => {
                names.push(first_word(&text[start..at]));
                start = at + 1;
                if c == '}' {
                    break;
                }
            }
            _ => {}
        }
    }
    names.retain(|name| !name.is_empty());
    names
}

/// The top-level modules that the code of a file at a depth names: after `crate::`, and after as many
/// `super::` as lead to the root.
fn imports(code: &str, depth: usize) -> Vec<String> {
    let mut found = Vec::new();
    for start in ["crate::".to_owned(), "super::".repeat(depth)] {
        for (at, _) in code.match_indices(&start) {
            let before = code[..at].chars().next_back();
            if before.is_some_and(|c| c.is_alphanumeric() || "_:$".contains(c)) {
                continue;
            }
            let rest = &code[at + start.len()..];
            match rest.strip_prefix('{') {
                Some(list) => found.extend(names_in_brackets(list)),
                None => found.push(first_word(rest)),
            }
        }
    }
    found
}

/// Every import of a top-level module by another, and a file in which it is.
fn all_imports() -> BTreeMap<(String, String), PathBuf> {
    let mut all = Vec::new();
    files(Path::new("src"), &mut all);
    assert!(all.len() > 200, "the files of src were not found");
    let mut found = BTreeMap::new();
    for path in all {
        let inside = path.strip_prefix("src").unwrap().with_extension("");
        let parts: Vec<_> = inside.iter().map(|part| part.to_str().unwrap()).collect();
        let top = parts[0];
        if top == "lib" {
            continue;
        }
        let depth = parts.len() - usize::from(parts.len() > 1 && parts[parts.len() - 1] == "mod");
        for name in imports(&code(&fs::read_to_string(&path).unwrap()), depth) {
            if name != top {
                found.entry((top.to_owned(), name)).or_insert_with(|| path.clone());
            }
        }
    }
    found
}

#[test]
fn every_import_points_down() {
    let place = |name: &str| ORDER.iter().position(|(module, _)| *module == name);
    let mut wrong = Vec::new();
    for ((from, to), path) in all_imports() {
        let path = path.display();
        let (Some(own), Some(other)) = (place(&from), place(&to)) else {
            wrong.push(format!("{path}: '{from}' or '{to}' has no place in ORDER of this test"));
            continue;
        };
        if other > own && !EXCEPTIONS.contains(&(from.as_str(), to.as_str())) {
            wrong.push(format!("{path}: {from} imports {to}, which is above it"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// The order alone shows it; this shows which modules are in a circle, should the order be at fault.
#[test]
fn no_modules_import_each_other_in_a_circle() {
    let mut below: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for (from, to) in all_imports().into_keys() {
        if !EXCEPTIONS.contains(&(from.as_str(), to.as_str())) {
            below.entry(from).or_default().insert(to);
        }
    }
    // Takes away what imports nothing that is left, until nothing changes.
    loop {
        let left: BTreeSet<String> = below.keys().cloned().collect();
        below.retain(|_, to| to.iter().any(|name| left.contains(name)));
        if below.len() == left.len() {
            break;
        }
    }
    assert!(below.is_empty(), "these import each other: {below:?}");
}

#[test]
fn every_module_has_its_line_and_every_exception_is_needed() {
    let lib = fs::read_to_string("src/lib.rs").unwrap();
    for (name, _) in ORDER {
        let written = [format!("mod {name};"), format!("fn {name}(")];
        assert!(written.iter().any(|line| lib.contains(line)), "lib.rs has no '{name}'");
    }
    let modules = lib.lines().filter_map(|line| {
        let (_, rest) = line.split_once("mod ")?;
        (!line.starts_with("//")).then(|| rest.strip_suffix(';'))?
    });
    for name in modules {
        assert!(ORDER.iter().any(|(module, _)| *module == name), "'{name}' has no place in ORDER");
    }
    let all = all_imports();
    for (from, to) in EXCEPTIONS {
        let pair = ((*from).to_owned(), (*to).to_owned());
        assert!(all.contains_key(&pair), "{from} no longer imports {to}: strike the exception out");
    }
}

#[test]
fn the_reader_of_imports_finds_them_all() {
    let text = "use crate::yarn::{self, twist};\nuse crate::{cloth, mill::{a, b}, table};\n\
                // use crate::plan;\nfn f() { crate::fibre::g(); super::super::quality::h(); }\n\
                use super::sibling;\n#[cfg(test)]\nmod tests {\n    use crate::prelude::*;\n}\n";
    let found: BTreeSet<String> = imports(&code(text), 2).into_iter().collect();
    let wanted = ["yarn", "cloth", "mill", "table", "fibre", "quality"];
    assert_eq!(found, wanted.into_iter().map(str::to_owned).collect());
}
