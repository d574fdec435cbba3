//! The attributes `#[formula]` and `#[calculation]`, and the derives that go with the second.
//!
//! `#[formula]` turns a function into a formula of the catalogue. The function is an ordinary one: its doc
//! comment says what it means, the doc comments on its parameters say what they are, their types say of which
//! kind. The attribute adds the card, the entry for the catalogue and the three ways of running the body.
//! `#[inverse]` beside it makes the same of the formula solved for one of its inputs.

mod asked;
mod calculation;
mod formula;
mod inputs;
mod inverse;
mod list;
mod results;
mod word;
mod words;

use proc_macro::TokenStream;
use syn::{DeriveInput, Error, ItemFn};

/// Turns a function into a formula: see `DEVELOPERS.md`, "Adding a formula".
#[proc_macro_attribute]
pub fn formula(card: TokenStream, item: TokenStream) -> TokenStream {
    let card = syn::parse_macro_input!(card as formula::Card);
    let function = syn::parse_macro_input!(item as ItemFn);
    inverse::family(&card, function).unwrap_or_else(Error::into_compile_error).into()
}

/// The formulas and the calculations that are written in the files of rooms, such as `cards!(yarn, cloth)`.
#[proc_macro]
pub fn cards(rooms: TokenStream) -> TokenStream {
    list::cards(rooms.into()).unwrap_or_else(Error::into_compile_error).into()
}

/// Turns a chain of formulas into a calculation: see `DEVELOPERS.md`, "Adding a calculation".
#[proc_macro_attribute]
pub fn calculation(card: TokenStream, item: TokenStream) -> TokenStream {
    let card = syn::parse_macro_input!(card as calculation::Card);
    let function = syn::parse_macro_input!(item as ItemFn);
    calculation::expand(&card, &function).unwrap_or_else(Error::into_compile_error).into()
}

/// What a calculation asks: a struct of quantities, or an enum of several ways to say one thing.
#[proc_macro_derive(Inputs, attributes(q, group, one_of, rows, parts, word, label))]
pub fn derive_inputs(item: TokenStream) -> TokenStream {
    let input = syn::parse_macro_input!(item as DeriveInput);
    inputs::derive(&input).unwrap_or_else(Error::into_compile_error).into()
}

/// What a calculation answers: a struct of quantities.
#[proc_macro_derive(Results, attributes(block, head, part, rows, label, whole))]
pub fn derive_results(item: TokenStream) -> TokenStream {
    let input = syn::parse_macro_input!(item as DeriveInput);
    results::derive(&input).unwrap_or_else(Error::into_compile_error).into()
}

/// A word out of several that a calculation asks: an enum without values.
#[proc_macro_derive(Words, attributes(word, default))]
pub fn derive_words(item: TokenStream) -> TokenStream {
    let input = syn::parse_macro_input!(item as DeriveInput);
    word::derive(&input).unwrap_or_else(Error::into_compile_error).into()
}
