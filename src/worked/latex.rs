//! Symbols and values in LaTeX.

use super::expression::Dialect;

pub(super) fn in_dialect(word: &str, dialect: Dialect) -> String {
    if dialect == Dialect::Latex { latex_symbol(word) } else { word.to_owned() }
}

pub(super) fn words(text: &str, dialect: Dialect) -> String {
    if dialect == Dialect::Latex { latex_text(text) } else { text.to_owned() }
}

pub(super) fn latex_text(text: &str) -> String {
    format!(r"\text{{{}}}", latex_escape(text))
}

pub(super) fn latex_escape(text: &str) -> String {
    text.chars()
        .map(|c| match c {
            '%' | '_' | '#' | '&' | '$' | '{' | '}' => format!("\\{c}"),
            '√' => r"$\surd$".to_owned(),
            '²' => "$^2$".to_owned(),
            '³' => "$^3$".to_owned(),
            '°' => r"$^\circ$".to_owned(),
            '½' => r"$\tfrac12$".to_owned(),
            other => other.to_string(),
        })
        .collect()
}

/// `T`, `e₁`, `T_f` as mathematics; a longer name as text.
pub(super) fn latex_symbol(symbol: &str) -> String {
    let mut head = String::new();
    let mut below = String::new();
    for c in symbol.chars() {
        if let Some(digit) = "₀₁₂₃₄₅₆₇₈₉".chars().position(|d| d == c) {
            below.push_str(&digit.to_string());
        } else if let Some(word) = GREEK.iter().find(|(greek, _)| *greek == c) {
            head.push_str(word.1);
        } else {
            head.push(c);
        }
    }
    if let Some((start, end)) = head.clone().split_once('_') {
        start.clone_into(&mut head);
        below.insert_str(0, end);
    }
    if head.chars().count() > 1 && !head.starts_with('\\') {
        return latex_text(symbol);
    }
    if below.is_empty() { head } else { format!(r"{head}_{{\mathrm{{{}}}}}", latex_escape(&below)) }
}

const GREEK: [(char, &str); 8] = [
    ('α', r"\alpha"),
    ('η', r"\eta"),
    ('ρ', r"\rho"),
    ('φ', r"\varphi"),
    ('π', r"\pi"),
    ('σ', r"\sigma"),
    ('θ', r"\theta"),
    ('ω', r"\omega"),
];

/// A printed number.
pub(super) fn number(printed: &str, dialect: Dialect) -> String {
    if dialect == Dialect::Latex {
        printed.replace('−', "-").replace(',', "{,}")
    } else {
        printed.to_owned()
    }
}

pub(super) fn latex_figure(printed: &str, unit: &str) -> String {
    let number = number(printed, Dialect::Latex);
    if unit.is_empty() { number } else { format!(r"{number}\ {}", latex_text(unit)) }
}
