//! `#[formula]`: turns a function into a formula of the catalogue.

use proc_macro2::TokenStream as Tokens;
use quote::{format_ident, quote};
use syn::parse::{Parse, ParseStream};
use syn::punctuated::Punctuated;
use syn::{Error, Expr, FnArg, ItemFn, Lit, Pat, ReturnType, Token, Type};

use crate::inverse::Relation;
use crate::words::{LISTS, attribute, custom, documentation, memory};

/// What is in the brackets of `#[formula(…)]`.
pub(crate) struct Card {
    pub(crate) result: Expr,
    /// Sources, limits, slips and cautions.
    pub(crate) lists: [Vec<Expr>; 4],
    /// Blocks of rows are computed several lanes at a time.
    pub(crate) lanes: bool,
}

impl Parse for Card {
    fn parse(input: ParseStream<'_>) -> syn::Result<Self> {
        let span = input.span();
        let (mut result, mut lanes) = (None, false);
        let mut lists = [const { Vec::new() }; 4];
        for item in Punctuated::<syn::MetaNameValue, Token![,]>::parse_terminated(input)? {
            let name = item.path.require_ident()?.to_string();
            let place = LISTS.iter().position(|list| *list == name);
            match (name.as_str(), place, item.value) {
                ("result", _, value) => result = Some(value),
                ("lanes", _, Expr::Lit(syn::ExprLit { lit: Lit::Bool(flag), .. })) => {
                    lanes = flag.value;
                }
                (_, Some(place), Expr::Array(array)) => {
                    lists[place] = array.elems.into_iter().collect();
                }
                (_, Some(_), value) => {
                    return Err(Error::new_spanned(value, "expected a list, such as [\"…\"]"));
                }
                (_, None, value) => {
                    return Err(Error::new_spanned(
                        value,
                        "expected result = \"symbol\", sources = […], limits = […], slips = […], cautions = […] or lanes = true",
                    ));
                }
            }
        }
        let result =
            result.ok_or_else(|| Error::new(span, "the symbol is missing: result = \"K\""))?;
        Ok(Card { result, lists, lanes })
    }
}

/// One input of a formula.
pub(crate) struct Input {
    pub(crate) name: syn::Ident,
    pub(crate) ty: Type,
    pub(crate) kind: syn::Ident,
    pub(crate) many: bool,
    /// The figures of the list are shares of one whole.
    pub(crate) whole: bool,
    pub(crate) meaning: String,
    pub(crate) symbol: Expr,
    pub(crate) low: Box<Expr>,
    pub(crate) high: Box<Expr>,
    /// Key of the source of the usual range.
    pub(crate) basis: Expr,
}

pub(crate) fn expand(card: &Card, function: &ItemFn, relation: &Relation) -> syn::Result<Tokens> {
    let inputs = inputs(function)?;
    let output = match &function.sig.output {
        ReturnType::Type(_, ty) => kind_of(ty)?.0,
        ReturnType::Default => {
            return Err(Error::new_spanned(&function.sig, "a formula returns a quantity"));
        }
    };
    let (summary, details) = documentation(&function.attrs);
    if summary.is_empty() {
        return Err(Error::new_spanned(&function.sig.ident, "say in a doc comment what it means"));
    }
    let entry = format_ident!("{}", function.sig.ident.to_string().to_uppercase());
    let typed = typed_function(function, &inputs, &output, &entry, relation);
    let entry_of_catalogue =
        catalogue_entry(card, function, &inputs, &output, &entry, [&summary, &details], relation);
    let runs = ways_to_run(card, function, &inputs, &entry);
    Ok(quote!(#typed #entry_of_catalogue #runs))
}

/// The function as it was written, over quantities, with a note of the inputs for a recording.
fn typed_function(
    function: &ItemFn,
    inputs: &[Input],
    output: &syn::Ident,
    entry: &syn::Ident,
    relation: &Relation,
) -> Tokens {
    let (name, attrs, vis) = (&function.sig.ident, &function.attrs, &function.vis);
    let (generics, returned) = (&function.sig.generics, &function.sig.output);
    let parameters = inputs.iter().map(|Input { name, ty, .. }| quote!(#name: #ty));
    let opened = inputs.iter().map(|Input { name, many, .. }| {
        if *many { quote!(#name.iter().map(|each| each.v())) } else { quote!(#name.v()) }
    });
    let noted = inputs.iter().map(|Input { name, many, .. }| {
        if *many {
            quote!(for each in #name { note(each.v().0); })
        } else {
            quote!(note(#name.v().0);)
        }
    });
    let (panics, equal) = equal_lengths(function, inputs);
    let inverse = relation.said();
    quote! {
        #(#attrs)*
        #inverse
        #panics
        #[inline(always)]
        #vis fn #name #generics(#(#parameters),*) #returned {
            #equal
            let result = self::#name::body(#(#opened),*);
            crate::quantity::#output::from(crate::number::V(
                crate::number::Number::result_of(
                    result.0,
                    &#entry,
                    |note: &mut dyn FnMut(N)| { #(#noted)* },
                ),
            ))
        }
    }
}

/// Lists that go in step are as long as each other: what is checked, and what is said of it.
fn equal_lengths(function: &ItemFn, inputs: &[Input]) -> (Tokens, Tokens) {
    let lists: Vec<&syn::Ident> = inputs.iter().filter(|i| i.many).map(|i| &i.name).collect();
    let Some((first, others)) = lists.split_first().filter(|(_, others)| !others.is_empty()) else {
        return (Tokens::new(), Tokens::new());
    };
    let said = others.iter().map(|other| {
        format!("{}: {first} and {other} go in step and are of unequal length", function.sig.ident)
    });
    let panics = quote!(
        #[doc = ""]
        #[doc = "# Panics"]
        #[doc = "Where the lists are of unequal length."]
    );
    (panics, quote!(#(assert_eq!(#first.len(), #others.len(), #said);)*))
}

/// The card, as data.
fn catalogue_entry(
    card: &Card,
    function: &ItemFn,
    inputs: &[Input],
    output: &syn::Ident,
    entry: &syn::Ident,
    [summary, details]: [&String; 2],
    relation: &Relation,
) -> Tokens {
    let (inverse_of, solved_for) = (relation.inverse_of(), relation.solved_for());
    let Card { result, lists: [sources, limits, slips, cautions], .. } = card;
    let name = &function.sig.ident;
    let text = name.to_string();
    let lists = inputs.iter().filter(|i| i.many).count();
    let entries = inputs.iter().map(
        |Input { name, kind, many, whole, meaning, symbol, low, high, basis, .. }| {
            let name = name.to_string();
            quote!(crate::formula::Input {
                name: #name, symbol: #symbol, meaning: #meaning,
                kind: crate::quantity::Kind::#kind, usual: (#low, #high), basis: #basis,
                many: #many, whole: #whole,
            })
        },
    );
    quote! {
        #[doc = concat!("The card of [`", #text, "`].")]
        pub static #entry: crate::formula::Formula = crate::formula::Formula {
            name: #text,
            module: module_path!(),
            summary: #summary,
            details: #details,
            inputs: &[#(#entries),*],
            lists: #lists,
            output: crate::formula::Output { symbol: #result, kind: crate::quantity::Kind::#output },
            sources: &[#(#sources),*],
            limits: &[#(#limits),*],
            slips: &[#(#slips),*],
            cautions: &[#(#cautions),*],
            inverse_of: #inverse_of,
            solved_for: #solved_for,
            evaluate: self::#name::evaluate,
            block: self::#name::block,
            record: self::#name::record,
        };
    }
}

/// The body over bare numbers, and what runs it: over a row, over a block of rows, recorded.
fn ways_to_run(card: &Card, function: &ItemFn, inputs: &[Input], entry: &syn::Ident) -> Tokens {
    let (name, block) = (&function.sig.ident, &function.block);
    let parameters = inputs.iter().map(|Input { name, many, .. }| {
        if *many {
            quote!(#name: impl ::std::iter::ExactSizeIterator<Item = crate::number::V<N>> + Clone)
        } else {
            quote!(#name: crate::number::V<N>)
        }
    });
    // Scalars first, then list after list, all of one length.
    let scalars = inputs.iter().filter(|i| !i.many).count();
    let lists = inputs.len() - scalars;
    let length = |row: &Tokens| {
        (lists > 1).then(|| quote!(let each_list = (#row.len() - #scalars) / #lists;))
    };
    let span = |place: usize| match place - scalars {
        // The only list takes all that follows.
        0 if lists == 1 => quote!(#place..),
        0 => quote!(#place..#scalars + each_list),
        k => quote!(#scalars + #k * each_list..#scalars + (#k + 1) * each_list),
    };
    let (length_of_row, length_of_columns) = (length(&quote!(row)), length(&quote!(columns)));
    let from_row: Vec<Tokens> = inputs
        .iter()
        .enumerate()
        .map(|(place, input)| {
            if input.many {
                let span = span(place);
                quote!(row[#span].iter().map(|each| crate::number::V(*each)))
            } else {
                quote!(crate::number::V(row[#place]))
            }
        })
        .collect();
    let from_columns = inputs.iter().enumerate().map(|(place, input)| {
        if input.many {
            let span = span(place);
            quote!(columns[#span].iter().map(|each| crate::number::V(each[at])))
        } else {
            quote!(crate::number::V(columns[#place][at]))
        }
    });
    let rows = if card.lanes && lists == 0 {
        let places = 0..inputs.len();
        quote!(
            for at in (0..crate::formula::BLOCK).step_by(crate::lanes::LANES) {
                let lanes = body(#(crate::lanes::Lanes::of(columns[#places], at)),*);
                lanes.0.put(out, at);
            }
        )
    } else {
        quote!(
            for (at, out) in out.iter_mut().enumerate() {
                *out = body(#(#from_columns),*).0;
            }
        )
    };
    quote! {
        #[allow(non_snake_case, clippy::pedantic, unused_imports)]
        mod #name {
            use super::*;
            #[inline(always)]
            pub(super) fn body<N: crate::number::Number>(#(#parameters),*) -> crate::number::V<N>
            #block
            pub(super) fn evaluate(row: &[f64]) -> f64 {
                #length_of_row
                body(#(#from_row),*).0
            }
            pub(super) fn block(
                columns: &[&[f64; crate::formula::BLOCK]],
                out: &mut [f64; crate::formula::BLOCK],
            ) {
                #length_of_columns
                #rows
            }
            pub(super) fn record<'t>(
                row: &[crate::worked::Worked<'t>],
            ) -> crate::worked::Worked<'t> {
                #length_of_row
                let result = body(#(#from_row),*).0;
                crate::number::Number::result_of(
                    result,
                    &super::#entry,
                    |note: &mut dyn FnMut(crate::worked::Worked<'t>)| {
                        for each in row { note(*each); }
                    },
                )
            }
        }
    }
}

pub(crate) fn inputs(function: &ItemFn) -> syn::Result<Vec<Input>> {
    let mut all: Vec<Input> = Vec::new();
    for arg in &function.sig.inputs {
        let FnArg::Typed(arg) = arg else {
            return Err(Error::new_spanned(arg, "a formula has no self"));
        };
        let Pat::Ident(pattern) = &*arg.pat else {
            return Err(Error::new_spanned(&arg.pat, "expected a plain name"));
        };
        let (kind, many) = kind_of(&arg.ty)?;
        if !many && all.last().is_some_and(|last| last.many) {
            return Err(Error::new_spanned(&arg.ty, "list inputs come last, after all others"));
        }
        let (meaning, _) = documentation(&arg.attrs);
        if meaning.is_empty() {
            return Err(Error::new_spanned(&arg.pat, "say in a doc comment what the input is"));
        }
        let card = attribute(&arg.attrs, "q").ok_or_else(|| {
            Error::new_spanned(
                &arg.pat,
                "symbol and usual range are missing: #[q(\"T\", 10.0..=2000.0)]",
            )
        })?;
        let parts = card.parse_args_with(Punctuated::<Expr, Token![,]>::parse_terminated)?;
        let (Some(symbol), Some(Expr::Range(range))) = (parts.first(), parts.get(1)) else {
            return Err(Error::new_spanned(card, "expected #[q(\"T\", 10.0..=2000.0)]"));
        };
        let (Some(low), Some(high)) = (range.start.clone(), range.end.clone()) else {
            return Err(Error::new_spanned(card, "the usual range has two ends: 10.0..=2000.0"));
        };
        let (mut whole, mut basis) = (false, custom());
        for part in parts.iter().skip(2) {
            match part {
                Expr::Path(word) if word.path.is_ident("whole") && many => whole = true,
                Expr::Path(word) if word.path.is_ident("memory") => basis = memory(),
                Expr::Assign(told) if is_word(&told.left, "basis") => basis = (*told.right).clone(),
                other => {
                    return Err(Error::new_spanned(
                        other,
                        "expected memory, basis = \"key of a source\" or, of a list of shares that sum to 1, whole",
                    ));
                }
            }
        }
        let name = pattern.ident.clone();
        let ty = (*arg.ty).clone();
        let symbol = symbol.clone();
        all.push(Input { name, ty, kind, many, whole, meaning, symbol, low, high, basis });
    }
    if all.is_empty() {
        return Err(Error::new_spanned(&function.sig, "a formula has at least one input"));
    }
    Ok(all)
}

/// `Mass<N>` or `&[Mass<N>]`: the kind, and whether it is a list.
fn kind_of(ty: &Type) -> syn::Result<(syn::Ident, bool)> {
    match ty {
        Type::Path(path) => {
            let last = path.path.segments.last();
            last.map(|s| (s.ident.clone(), false))
                .ok_or_else(|| Error::new_spanned(ty, "expected a quantity, such as Mass<N>"))
        }
        Type::Reference(reference) => match &*reference.elem {
            Type::Slice(slice) => Ok((kind_of(&slice.elem)?.0, true)),
            _ => Err(Error::new_spanned(ty, "expected a list, such as &[Mass<N>]")),
        },
        _ => Err(Error::new_spanned(ty, "expected a quantity, such as Mass<N> or &[Mass<N>]")),
    }
}

/// True of an expression that is a word alone.
fn is_word(expression: &Expr, word: &str) -> bool {
    matches!(expression, Expr::Path(path) if path.path.is_ident(word))
}
