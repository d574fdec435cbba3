//! Workings in LaTeX: that of every formula and of every calculation is set by `pdflatex`.

use std::fmt::Write as _;
use std::path::Path;
use std::process::Command;

use hankwise::worked::Working;

mod at_random;

use at_random::Random;

/// Workings in a document: so many that a fault is soon found, so few that one does not hide others.
const A_DOCUMENT: usize = 150;

/// A working of each formula, and all those of each calculation and of a plan.
fn workings() -> Vec<(String, Working)> {
    let mut random = Random::new(1);
    let (formulas, calculations) = at_random::everything();
    let mut all = Vec::new();
    for formula in formulas {
        let found = (0..4000).find_map(|_| at_random::of_formula(formula, &mut random));
        let found = found.unwrap_or_else(|| panic!("no working of {}", formula.name));
        all.push((formula.name.to_owned(), found));
    }
    for calculation in calculations {
        let mut tries = (0..4000).map(|_| at_random::of_calculation(calculation, &mut random));
        let found = tries.find(|found| !found.is_empty());
        let found = found.unwrap_or_else(|| panic!("no working of {}", calculation.name));
        all.extend(found.into_iter().map(|working| (calculation.name.to_owned(), working)));
    }
    let lot = include_str!("lot/whole-lot.toml");
    // A name that has the signs of LaTeX in it, and letters from elsewhere.
    let lot = lot.replace("[goods.throw]", "[goods.\"50 % thröw_{x}\\\\ # & ~ ^ $ Ж\"]");
    let found = (0..100).map(|_| at_random::of_plan(&lot, &mut random)).find(|all| !all.is_empty());
    all.extend(found.expect("a plan").into_iter().map(|working| ("plan".to_owned(), working)));
    all
}

fn document(workings: &[(String, Working)]) -> String {
    let mut out = String::from(concat!(
        "\\documentclass{article}\n\\usepackage[utf8]{inputenc}\n\\usepackage{amsmath}\n",
        "\\hfuzz=\\maxdimen\\vfuzz=\\maxdimen\n\\begin{document}\n"
    ));
    for (name, working) in workings {
        let _ = writeln!(out, "% {name}\n\\[\n{}\\]", working.latex());
    }
    out.push_str("\\end{document}\n");
    out
}

#[test]
fn every_working_is_set() {
    if Command::new("pdflatex").arg("--version").output().is_err() {
        println!("skipped: pdflatex is not installed (texlive-latex-base has it)");
        return;
    }
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("latex");
    std::fs::create_dir_all(&folder).unwrap();
    for (number, workings) in workings().chunks(A_DOCUMENT).enumerate() {
        let name = format!("workings-{number}");
        std::fs::write(folder.join(format!("{name}.tex")), document(workings)).unwrap();
        let run = Command::new("pdflatex")
            .args(["-interaction=nonstopmode", "-halt-on-error", "-draftmode"])
            .arg(&name)
            .current_dir(&folder)
            .output()
            .unwrap();
        let said = String::from_utf8_lossy(&run.stdout);
        let fault = said.split_once("\n!").map_or("", |(_, fault)| fault);
        let fault: String = fault.chars().take(600).collect();
        assert!(run.status.success(), "{}/{name}.tex:\n{fault}", folder.display());
        assert!(!said.contains("Missing character"), "{}/{name}.log", folder.display());
    }
}
