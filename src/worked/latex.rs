//! Symbols, words and values in LaTeX: plain `amsmath`, in any encoding.

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

/// Words: every sign that LaTeX has not in its plain fonts is set as mathematics.
pub(super) fn latex_escape(text: &str) -> String {
    text.chars().map(escaped).collect()
}

fn escaped(c: char) -> String {
    if let Some(word) = greek(c) {
        return format!("${word}$");
    }
    if let Some((_, plain)) = RAISED.iter().find(|(sign, _)| *sign == c) {
        return format!("$^{{{plain}}}$");
    }
    if let Some(digit) = lowered(c) {
        return format!("$_{digit}$");
    }
    if let Some((_, latex)) = SIGNS.iter().find(|(sign, _)| *sign == c) {
        return (*latex).to_owned();
    }
    match c {
        '%' | '_' | '#' | '&' | '$' | '{' | '}' => format!("\\{c}"),
        ' '..='~' => c.to_string(),
        // Letters with accents, which LaTeX puts together; others are not in its fonts.
        'À'..='ž' if c.is_alphabetic() && !"ÐðÞþĐđĦħĸŊŋŦŧŉ".contains(c) => {
            c.to_string()
        }
        _ => "?".to_owned(),
    }
}

const SIGNS: [(char, &str); 26] = [
    ('\\', r"\textbackslash{}"),
    ('^', r"\textasciicircum{}"),
    ('~', r"\textasciitilde{}"),
    ('<', "$<$"),
    ('>', "$>$"),
    ('|', "$|$"),
    ('−', "$-$"),
    ('×', r"$\times$"),
    ('÷', r"$\div$"),
    ('·', r"$\cdot$"),
    ('±', r"$\pm$"),
    ('≤', r"$\le$"),
    ('≥', r"$\ge$"),
    ('√', r"$\surd$"),
    ('°', r"$^\circ$"),
    ('′', "$'$"),
    ('½', r"$\tfrac12$"),
    ('¼', r"$\tfrac14$"),
    ('¾', r"$\tfrac34$"),
    ('⅓', r"$\tfrac13$"),
    ('⅔', r"$\tfrac23$"),
    ('⅛', r"$\tfrac18$"),
    ('’', "'"),
    ('–', "--"),
    ('…', r"\dots{}"),
    ('\u{a0}', "~"),
];

const RAISED: [(char, &str); 15] = [
    ('⁰', "0"),
    ('¹', "1"),
    ('²', "2"),
    ('³', "3"),
    ('⁴', "4"),
    ('⁵', "5"),
    ('⁶', "6"),
    ('⁷', "7"),
    ('⁸', "8"),
    ('⁹', "9"),
    ('⁻', "-"),
    ('ᵃ', "a"),
    ('ᵐ', "m"),
    ('ⁿ', "n"),
    ('ˣ', "x"),
];

fn lowered(c: char) -> Option<usize> {
    "₀₁₂₃₄₅₆₇₈₉".chars().position(|digit| digit == c)
}

fn greek(c: char) -> Option<&'static str> {
    GREEK.iter().find(|(letter, _)| *letter == c).map(|(_, word)| *word)
}

const GREEK: [(char, &str); 35] = [
    ('α', r"\alpha"),
    ('β', r"\beta"),
    ('γ', r"\gamma"),
    ('δ', r"\delta"),
    ('ε', r"\varepsilon"),
    ('ζ', r"\zeta"),
    ('η', r"\eta"),
    ('θ', r"\theta"),
    ('ι', r"\iota"),
    ('κ', r"\kappa"),
    ('λ', r"\lambda"),
    ('μ', r"\mu"),
    ('µ', r"\mu"),
    ('ν', r"\nu"),
    ('ξ', r"\xi"),
    ('π', r"\pi"),
    ('ρ', r"\rho"),
    ('σ', r"\sigma"),
    ('τ', r"\tau"),
    ('υ', r"\upsilon"),
    ('φ', r"\varphi"),
    ('χ', r"\chi"),
    ('ψ', r"\psi"),
    ('ω', r"\omega"),
    ('Γ', r"\Gamma"),
    ('Δ', r"\Delta"),
    ('Θ', r"\Theta"),
    ('Λ', r"\Lambda"),
    ('Ξ', r"\Xi"),
    ('Π', r"\Pi"),
    ('Σ', r"\Sigma"),
    ('Υ', r"\Upsilon"),
    ('Φ', r"\Phi"),
    ('Ψ', r"\Psi"),
    ('Ω', r"\Omega"),
];

/// `T`, `e₁`, `T_f`, `x̄`, `p₂′`, `cos θ₁` as mathematics; a longer name as text.
pub(super) fn latex_symbol(symbol: &str) -> String {
    for function in ["sin", "cos", "tan", "sec"] {
        if let Some(of) = symbol.strip_prefix(function).and_then(|rest| rest.strip_prefix(' ')) {
            return format!(r"\{function} {}", latex_symbol(of));
        }
    }
    if let Some(of) = symbol.strip_prefix('√') {
        return format!(r"\sqrt{{{}}}", latex_symbol(of));
    }
    for (sign, latex) in [('/', "/"), ('·', r" \cdot ")] {
        if let Some((a, b)) = symbol.split_once(sign)
            && let (Some(a), Some(b)) = (letter(a), letter(b))
        {
            return format!("{a}{latex}{b}");
        }
    }
    letter(symbol).unwrap_or_else(|| latex_text(symbol))
}

/// A letter with what stands above and below it.
fn letter(symbol: &str) -> Option<String> {
    let mut rest = symbol.chars().peekable();
    let first = rest.next()?;
    let mut head = match greek(first) {
        Some(word) => word.to_owned(),
        None if first.is_ascii_alphabetic() => first.to_string(),
        None => return None,
    };
    if rest.next_if_eq(&'\u{304}').is_some() {
        head = format!(r"\bar{{{head}}}");
    }
    let (mut below, mut above) = (String::new(), String::new());
    let mut lower = false;
    for c in rest {
        if let Some(digit) = lowered(c) {
            below.push_str(&digit.to_string());
            lower = true;
        } else if c == '_' {
            lower = true;
        } else if c == '′' {
            above.push_str(r"\prime ");
        } else if let Some((_, plain)) = RAISED.iter().find(|(sign, _)| *sign == c) {
            above.push_str(plain);
        } else if lower && c.is_ascii_alphanumeric() {
            below.push(c);
        } else {
            return None;
        }
    }
    if !below.is_empty() {
        head = format!(r"{head}_{{\mathrm{{{below}}}}}");
    }
    if !above.is_empty() {
        head = format!("{head}^{{{}}}", above.trim_end());
    }
    Some(head)
}

/// A printed number.
pub(super) fn number(printed: &str, dialect: Dialect) -> String {
    if dialect != Dialect::Latex {
        return printed.to_owned();
    }
    if printed.contains(char::is_alphabetic) && !printed.contains(|c: char| c.is_ascii_digit()) {
        return latex_text(printed);
    }
    let plain = printed.replace('−', "-").replace(',', "{,}");
    match plain.split_once('e') {
        Some((digits, power)) => format!(r"{digits} \times 10^{{{power}}}"),
        None => plain,
    }
}

pub(super) fn latex_figure(printed: &str, unit: &str) -> String {
    let number = number(printed, Dialect::Latex);
    if unit.is_empty() { number } else { format!(r"{number}\ {}", latex_text(unit)) }
}
