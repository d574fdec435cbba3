//! `#[inverse(…)]` beside `#[formula(…)]`: the same relation solved for one of its inputs.
//!
//! Kinds, symbols, meanings and usual ranges of the inputs come from the formula, and so does every
//! list of its card that the inverse does not give itself.

use proc_macro2::{Ident, TokenStream as Tokens};
use quote::{format_ident, quote};
use syn::ext::IdentExt;
use syn::parse::{Parse, ParseStream};
use syn::{Error, Expr, ItemFn, LitStr, RangeLimits, ReturnType, Token, bracketed, parenthesized};
use syn::{Type, parse_quote};

use crate::formula::{Card, Input, expand, inputs};
use crate::words::LISTS;

/// What is in the brackets of `#[inverse(…)]`.
struct Inverse {
    summary: LitStr,
    name: Ident,
    arguments: Vec<Argument>,
    unknown: Ident,
    body: Expr,
    /// Sources, limits, slips and cautions, where they are not those of the formula.
    lists: [Option<Vec<Expr>>; 4],
}

/// An argument: an input of the formula, or its result.
struct Argument {
    name: Ident,
    result: Option<Given>,
}

/// The result of the formula, given: its meaning where the name does not say it, its symbol where it
/// is not that of the card, its usual range.
struct Given {
    meaning: String,
    symbol: Option<LitStr>,
    low: Expr,
    high: Expr,
}

impl Parse for Argument {
    fn parse(input: ParseStream<'_>) -> syn::Result<Self> {
        let name: Ident = input.parse()?;
        let meaning = match input.parse::<Option<LitStr>>()? {
            Some(meaning) => meaning.value(),
            None => name.to_string().replace('_', " "),
        };
        let symbol = input.parse::<Option<LitStr>>()?;
        if !input.peek(Token![:]) {
            return Ok(Argument { name, result: None });
        }
        input.parse::<Token![:]>()?;
        let range = input.parse::<syn::ExprRange>()?;
        match (range.start, range.limits, range.end) {
            (Some(low), RangeLimits::Closed(_), Some(high)) => Ok(Argument {
                name,
                result: Some(Given { meaning, symbol, low: *low, high: *high }),
            }),
            (_, limits, _) => {
                Err(Error::new_spanned(limits, "the usual range has two ends: 5.0..=80.0"))
            }
        }
    }
}

impl Parse for Inverse {
    fn parse(input: ParseStream<'_>) -> syn::Result<Self> {
        let summary = input.parse()?;
        input.parse::<Token![,]>()?;
        let name = input.parse()?;
        let inside;
        parenthesized!(inside in input);
        let arguments = inside.parse_terminated(Argument::parse, Token![,])?.into_iter().collect();
        input.parse::<Token![->]>()?;
        let unknown = input.parse()?;
        input.parse::<Token![=]>()?;
        let body = input.parse()?;
        let mut lists = [const { None }; 4];
        while !input.is_empty() {
            input.parse::<Token![,]>()?;
            if input.is_empty() {
                break;
            }
            let list = input.call(Ident::parse_any)?;
            let place = LISTS.iter().position(|name| list == name);
            let Some(place) = place else {
                let wanted = "expected sources = […], limits = […], slips = […] or cautions = […]";
                return Err(Error::new(list.span(), wanted));
            };
            input.parse::<Token![=]>()?;
            let inside;
            bracketed!(inside in input);
            let items = inside.parse_terminated(Expr::parse, Token![,])?;
            lists[place] = Some(items.into_iter().collect());
        }
        Ok(Inverse { summary, name, arguments, unknown, body, lists })
    }
}

impl Inverse {
    /// What the inverse calls the result of the formula.
    fn result(&self) -> syn::Result<(&Ident, &Given)> {
        let mut found = self
            .arguments
            .iter()
            .filter_map(|argument| Some((&argument.name, argument.result.as_ref()?)));
        match (found.next(), found.next()) {
            (Some(result), None) => Ok(result),
            _ => Err(Error::new(
                self.name.span(),
                "one argument is the result of the formula, with its usual range: twist_factor: 5.0..=80.0",
            )),
        }
    }

    /// The function and the card as they would be written out.
    fn written(
        &self,
        card: &Card,
        formula: &ItemFn,
        known: &[Input],
    ) -> syn::Result<(Card, ItemFn)> {
        let find = |name: &Ident| {
            known.iter().find(|input| input.name == *name).ok_or_else(|| {
                Error::new(name.span(), format!("the formula has no input '{name}'"))
            })
        };
        let unknown = find(&self.unknown)?;
        if unknown.many || self.arguments.iter().any(|argument| argument.name == self.unknown) {
            let message = "the unknown is a single input of the formula, and not an argument";
            return Err(Error::new(self.unknown.span(), message));
        }
        if self.arguments.len() != known.len() {
            let message =
                "an inverse has the inputs of the formula, with its result for the unknown";
            return Err(Error::new(self.name.span(), message));
        }
        let ReturnType::Type(_, returned) = &formula.sig.output else {
            return Err(Error::new_spanned(&formula.sig, "a formula returns a quantity"));
        };
        let symbol_of_result = &card.result;
        let mut parameters: Vec<Tokens> = Vec::new();
        for Argument { name, result } in &self.arguments {
            parameters.push(if let Some(Given { meaning, symbol, low, high }) = result {
                let symbol =
                    symbol.as_ref().map_or_else(|| quote!(#symbol_of_result), |own| quote!(#own));
                quote!(#[doc = #meaning] #[q(#symbol, #low..=#high)] #name: #returned)
            } else {
                let Input { ty, meaning, symbol, low, high, whole, basis, .. } = find(name)?;
                let whole = whole.then(|| quote!(, whole));
                let card = quote!(#symbol, #low..=#high #whole, basis = #basis);
                quote!(#[doc = #meaning] #[q(#card)] #name: #ty)
            });
        }
        let Inverse { summary, name, body, .. } = self;
        let (vis, generics) = (&formula.vis, &formula.sig.generics);
        let ty: &Type = &unknown.ty;
        let block = match body {
            Expr::Block(block) => quote!(#block),
            body => quote!({ #body }),
        };
        let function = parse_quote!(
            #[doc = #summary]
            #vis fn #name #generics(#(#parameters),*) -> #ty #block
        );
        let list = |place: usize| self.lists[place].as_ref().unwrap_or(&card.lists[place]).clone();
        let lists = std::array::from_fn(list);
        Ok((Card { result: unknown.symbol.clone(), lists, lanes: card.lanes }, function))
    }
}

/// The name in the brackets of `#[inverse(…)]`.
pub(crate) fn name(brackets: Tokens) -> syn::Result<Ident> {
    Ok(syn::parse2::<Inverse>(brackets)?.name)
}

/// The formulas that are one relation, and which of them is looked at.
#[derive(Default)]
pub(crate) struct Relation {
    /// What each gives, and its name; the formula that the others are inverses of comes first.
    members: Vec<(String, Ident)>,
    own: usize,
}

impl Relation {
    /// The name of the formula that this one is the inverse of.
    pub(crate) fn inverse_of(&self) -> Tokens {
        match self.members.first() {
            Some((_, first)) if self.own > 0 => {
                let name = first.to_string();
                quote!(Some(#name))
            }
            _ => quote!(None),
        }
    }
    /// The others, by what each gives.
    pub(crate) fn solved_for(&self) -> Tokens {
        let others = self.members.iter().enumerate().filter(|(place, _)| *place != self.own);
        let others = others.map(|(_, (unknown, name))| {
            let entry = format_ident!("{}", name.to_string().to_uppercase());
            quote!(crate::formula::Solved { unknown: #unknown, by: &#entry })
        });
        quote!(&[#(#others),*])
    }
    /// The sentence for the documentation of an inverse.
    pub(crate) fn said(&self) -> Tokens {
        match self.members.get(self.own) {
            Some((unknown, _)) if self.own > 0 => {
                let said = format!(" [`{}()`] solved for its `{unknown}`.", self.members[0].1);
                quote!(#[doc = ""] #[doc = #said])
            }
            _ => Tokens::new(),
        }
    }
}

/// A formula and its inverses.
pub(crate) fn family(card: &Card, mut function: ItemFn) -> syn::Result<Tokens> {
    let (attributes, rest) =
        function.attrs.into_iter().partition(|attribute| attribute.path().is_ident("inverse"));
    function.attrs = rest;
    let attributes: Vec<syn::Attribute> = attributes;
    let inverses: Vec<Inverse> =
        attributes.iter().map(syn::Attribute::parse_args).collect::<syn::Result<_>>()?;
    let mut relation = Relation::default();
    for inverse in &inverses {
        let (result, _) = inverse.result()?;
        let result = result.to_string();
        match relation.members.first() {
            None => relation.members.push((result, function.sig.ident.clone())),
            Some((name, _)) if *name == result => {}
            Some((name, _)) => {
                let message = format!("another inverse calls the result '{name}'");
                return Err(Error::new(inverse.name.span(), message));
            }
        }
        relation.members.push((inverse.unknown.to_string(), inverse.name.clone()));
    }
    let mut out = expand(card, &function, &relation)?;
    let known = inputs(&function)?;
    for inverse in &inverses {
        relation.own += 1;
        let (card, function) = inverse.written(card, &function, &known)?;
        out.extend(expand(&card, &function, &relation)?);
    }
    Ok(out)
}
