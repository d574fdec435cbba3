//! `formulas!()`: the formulas of the file in which it stands.

use proc_macro2::{Group, Ident, Span, TokenStream as Tokens, TokenTree};
use quote::{format_ident, quote};
use syn::Error;

use crate::inverse;

/// The cards of all functions with `#[formula]` in the file of `place`, and of their inverses.
pub(crate) fn formulas(place: proc_macro::Span) -> syn::Result<Tokens> {
    let fail = |why: String| Error::new(Span::call_site(), why);
    let path = place.local_file().ok_or_else(|| fail("expected a file of source".to_owned()))?;
    let text = std::fs::read_to_string(&path)
        .map_err(|e| fail(format!("{} cannot be read: {e}", path.display())))?;
    let tokens: Tokens =
        text.parse().map_err(|e| fail(format!("{} cannot be read: {e}", path.display())))?;
    let names = names(tokens)?;
    let cards = names.iter().map(|name| format_ident!("{}", name.to_string().to_uppercase()));
    Ok(quote!(&[#(&#cards),*]))
}

/// The names of the formulas of a file, in their order.
fn names(file: Tokens) -> syn::Result<Vec<Ident>> {
    let (mut names, mut is_formula, mut inverses) = (Vec::new(), false, Vec::new());
    let mut tokens = file.into_iter().peekable();
    while let Some(token) = tokens.next() {
        match (&token, tokens.peek()) {
            (TokenTree::Punct(sign), Some(TokenTree::Group(group))) if sign.as_char() == '#' => {
                match attribute(group) {
                    Some((name, _)) if name == "formula" => is_formula = true,
                    Some((name, arguments)) if name == "inverse" => {
                        inverses.push(inverse::name(arguments.stream())?);
                    }
                    _ => {}
                }
            }
            (TokenTree::Ident(word), Some(TokenTree::Ident(name))) if word == "fn" => {
                let inverses = std::mem::take(&mut inverses);
                if std::mem::take(&mut is_formula) {
                    names.push(name.clone());
                    names.extend(inverses);
                }
            }
            _ => {}
        }
    }
    Ok(names)
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
