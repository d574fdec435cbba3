//! `cards!(…)`: the formulas and the calculations that are written in the files of rooms.

use std::path::{Path, PathBuf};

use proc_macro2::{Group, Ident, Span, TokenStream as Tokens, TokenTree};
use quote::{format_ident, quote};
use syn::parse::Parser;
use syn::punctuated::Punctuated;
use syn::{Error, Token};

use crate::inverse;

/// The cards of all functions with `#[formula]`, their inverses too, and of those with `#[calculation]`.
pub(crate) fn cards(rooms: Tokens) -> syn::Result<Tokens> {
    let rooms = Punctuated::<Ident, Token![,]>::parse_terminated.parse2(rooms)?;
    let root = std::env::var("CARGO_MANIFEST_DIR").unwrap_or_default();
    let (mut formulas, mut calculations) = (Vec::new(), Vec::new());
    for room in rooms {
        for file in files(&Path::new(&root).join("src").join(room.to_string()))? {
            let text = std::fs::read_to_string(&file).map_err(|e| unreadable(&file, &e))?;
            if !text.contains("#[formula(") && !text.contains("#[calculation(") {
                continue;
            }
            let card = |name: &Ident| {
                let card = format_ident!("{}", name.to_string().to_uppercase());
                quote!(&crate::#room::#card)
            };
            let written = Written::of(text.parse().map_err(|e| unreadable(&file, &e))?)?;
            formulas.extend(written.formulas.iter().map(card));
            calculations.extend(written.calculations.iter().map(card));
        }
    }
    Ok(quote!((&[#(#formulas),*], &[#(#calculations),*])))
}

fn unreadable(path: &Path, why: &dyn std::fmt::Display) -> Error {
    Error::new(Span::call_site(), format!("{} cannot be read: {why}", path.display()))
}

/// The files of source in a folder and the folders in it.
fn files(folder: &Path) -> syn::Result<Vec<PathBuf>> {
    let mut all = Vec::new();
    for entry in std::fs::read_dir(folder).map_err(|e| unreadable(folder, &e))? {
        let path = entry.map_err(|e| unreadable(folder, &e))?.path();
        if path.is_dir() {
            all.extend(files(&path)?);
        } else if path.extension().is_some_and(|end| end == "rs") {
            all.push(path);
        }
    }
    Ok(all)
}

/// The names of what is written in a file.
#[derive(Default)]
struct Written {
    formulas: Vec<Ident>,
    calculations: Vec<Ident>,
}

impl Written {
    fn of(file: Tokens) -> syn::Result<Written> {
        let mut all = Written::default();
        let (mut is_formula, mut is_calculation, mut inverses) = (false, false, Vec::new());
        let mut tokens = file.into_iter().peekable();
        while let Some(token) = tokens.next() {
            match (&token, tokens.peek()) {
                (TokenTree::Punct(sign), Some(TokenTree::Group(group)))
                    if sign.as_char() == '#' =>
                {
                    match attribute(group) {
                        Some((name, _)) if name == "formula" => is_formula = true,
                        Some((name, _)) if name == "calculation" => is_calculation = true,
                        Some((name, arguments)) if name == "inverse" => {
                            inverses.push(inverse::name(arguments.stream())?);
                        }
                        _ => {}
                    }
                }
                (TokenTree::Ident(word), Some(TokenTree::Ident(name))) if word == "fn" => {
                    if std::mem::take(&mut is_formula) {
                        all.formulas.push(name.clone());
                    }
                    if std::mem::take(&mut is_calculation) {
                        all.calculations.push(name.clone());
                    }
                    all.formulas.append(&mut inverses);
                }
                _ => {}
            }
        }
        Ok(all)
    }
}

/// The name and the arguments of an attribute, from what its brackets hold.
fn attribute(brackets: &Group) -> Option<(Ident, Group)> {
    let mut inside = brackets.stream().into_iter();
    match (inside.next(), inside.next()) {
        (Some(TokenTree::Ident(name)), Some(TokenTree::Group(arguments))) => {
            Some((name, arguments))
        }
        _ => None,
    }
}
