//! What the macros read alike: doc comments, types, names.

use proc_macro2::{Ident, Span, TokenStream as Tokens};
use quote::quote;
use syn::{Attribute, Error, Expr, GenericArgument, Lit, Meta, PathArguments, Type};

/// The lists on the card of a formula or a calculation.
pub(crate) const LISTS: [&str; 4] = ["sources", "limits", "slips", "cautions"];

/// The first paragraph of a doc comment, and the rest.
pub(crate) fn documentation(attrs: &[Attribute]) -> (String, String) {
    let lines: Vec<String> = attrs
        .iter()
        .filter_map(|attr| match &attr.meta {
            Meta::NameValue(pair) if pair.path.is_ident("doc") => match &pair.value {
                Expr::Lit(lit) => match &lit.lit {
                    Lit::Str(text) => Some(text.value().trim().to_owned()),
                    _ => None,
                },
                _ => None,
            },
            _ => None,
        })
        .collect();
    let mut paragraphs = lines.split(String::is_empty);
    let first = paragraphs.next().map(|p| p.join(" ")).unwrap_or_default();
    let rest: Vec<String> = paragraphs.map(|p| p.join(" ")).filter(|p| !p.is_empty()).collect();
    (first, rest.join("\n\n"))
}

/// The doc comment that has to be there.
pub(crate) fn meaning(attrs: &[Attribute], of: &Ident) -> syn::Result<String> {
    let (meaning, _) = documentation(attrs);
    if meaning.is_empty() {
        return Err(Error::new(of.span(), "say in a doc comment what it is"));
    }
    Ok(meaning)
}

/// The attribute with a name.
pub(crate) fn attribute<'a>(attrs: &'a [Attribute], name: &str) -> Option<&'a Attribute> {
    attrs.iter().find(|attr| attr.path().is_ident(name))
}

/// The type in `Option<…>` or `Vec<…>`.
pub(crate) fn inside<'a>(ty: &'a Type, of: &str) -> Option<&'a Type> {
    let Type::Path(path) = ty else { return None };
    let last = path.path.segments.last().filter(|last| last.ident == of)?;
    let PathArguments::AngleBracketed(arguments) = &last.arguments else { return None };
    match arguments.args.first() {
        Some(GenericArgument::Type(ty)) => Some(ty),
        _ => None,
    }
}

/// A type, and whether it is in `Option<…>`.
pub(crate) fn opened(ty: &Type) -> (&Type, bool) {
    inside(ty, "Option").map_or((ty, false), |held| (held, true))
}

/// The last name of a type's path: `Mass` of `quantity::Mass<N>`.
pub(crate) fn last_name(ty: &Type) -> syn::Result<Ident> {
    match ty {
        Type::Path(path) => path.path.segments.last().map(|last| last.ident.clone()),
        _ => None,
    }
    .ok_or_else(|| Error::new_spanned(ty, "expected the name of a type"))
}

/// The path of a type without its parameters, for a call: `Lot` of `Lot<N>`.
pub(crate) fn bare(ty: &Type) -> syn::Result<Tokens> {
    let Type::Path(path) = ty else {
        return Err(Error::new_spanned(ty, "expected the name of a type"));
    };
    let mut path = path.path.clone();
    if let Some(last) = path.segments.last_mut() {
        last.arguments = PathArguments::None;
    }
    Ok(quote!(#path))
}

/// `DeliveredLength` as `delivered_length`, `StopsPer1000Picks` as `stops_per_1000_picks`.
pub(crate) fn snake(name: &Ident) -> String {
    let mut out = String::new();
    for letter in name.to_string().chars() {
        let first_digit =
            letter.is_ascii_digit() && !out.ends_with(|c: char| c.is_ascii_digit() || c == '_');
        if (letter.is_uppercase() || first_digit) && !out.is_empty() {
            out.push('_');
        }
        out.extend(letter.to_lowercase());
    }
    out
}

/// The only type parameter, which stands for the number.
pub(crate) fn number(generics: &syn::Generics, span: Span) -> syn::Result<Ident> {
    let mut types = generics.type_params();
    match (types.next(), types.next()) {
        (Some(one), None) => Ok(one.ident.clone()),
        _ => Err(Error::new(span, "expected one type parameter, the number: <N>")),
    }
}

/// Where the crate keeps what the macros refer to.
pub(crate) fn home() -> Tokens {
    quote!(::hankwise::calculation)
}

/// The key of the custom of the trade: the basis of a usual range where none is given.
pub(crate) fn custom() -> Expr {
    syn::parse_quote!("practice")
}
/// The key of what is from memory.
pub(crate) fn memory() -> Expr {
    syn::parse_quote!("memory")
}
