//! What is in the attributes of inputs: `#[q(…)]`, `#[group(…)]`.

use proc_macro2::{Ident, TokenStream as Tokens};
use quote::quote;
use syn::ext::IdentExt;
use syn::parse::{Parse, ParseStream};
use syn::{Attribute, Error, Expr, LitStr, RangeLimits, Token, parenthesized};

use crate::words::{attribute, custom, home, memory};

/// What is in `#[q("T", 10.0..=2000.0, …)]`.
pub(crate) struct Card {
    symbol: Expr,
    low: Tokens,
    high: Tokens,
    pub(crate) or: Option<Expr>,
    like: Expr,
    basis: Expr,
    zero: bool,
    broken: bool,
    pub(crate) half_digit_of: Option<LitStr>,
}

/// A range: `10.0..=2000.0`, or `..` where none is usual.
pub(crate) struct Usual(pub(crate) Tokens, pub(crate) Tokens);

impl Parse for Usual {
    fn parse(input: ParseStream<'_>) -> syn::Result<Self> {
        let wanted = "expected the usual range, such as 10.0..=2000.0, or .. where none is usual";
        match input.parse()? {
            Expr::Range(range) => match (range.start, range.limits, range.end) {
                (Some(low), RangeLimits::Closed(_), Some(high)) => {
                    Ok(Usual(quote!(#low), quote!(#high)))
                }
                (None, _, None) => Ok(Usual(quote!(f64::NEG_INFINITY), quote!(f64::INFINITY))),
                (_, limits, _) => Err(Error::new_spanned(limits, wanted)),
            },
            other => Err(Error::new_spanned(other, wanted)),
        }
    }
}

impl Parse for Card {
    fn parse(input: ParseStream<'_>) -> syn::Result<Self> {
        let symbol = input.parse()?;
        input.parse::<Token![,]>()?;
        let Usual(low, high) = input.parse()?;
        let text = |text: &str| -> Expr { syn::parse_quote!(#text) };
        let mut card = Card {
            symbol,
            low,
            high,
            or: None,
            like: text(""),
            basis: custom(),
            zero: false,
            broken: false,
            half_digit_of: None,
        };
        while !input.is_empty() {
            input.parse::<Token![,]>()?;
            if input.is_empty() {
                break;
            }
            let word = input.call(Ident::parse_any)?;
            match word.to_string().as_str() {
                "zero" => card.zero = true,
                "broken" => card.broken = true,
                "memory" => card.basis = memory(),
                "or" => {
                    input.parse::<Token![=]>()?;
                    card.or = Some(input.parse()?);
                }
                "like" => {
                    input.parse::<Token![=]>()?;
                    card.like = input.parse()?;
                }
                "half_digit_of" => {
                    input.parse::<Token![=]>()?;
                    card.half_digit_of = Some(input.parse()?);
                }
                "basis" => {
                    input.parse::<Token![=]>()?;
                    card.basis = input.parse()?;
                }
                _ => {
                    return Err(Error::new(
                        word.span(),
                        "expected or = 0.0, like = \"…\", basis = \"…\", memory, zero or broken",
                    ));
                }
            }
        }
        Ok(card)
    }
}

impl Card {
    pub(crate) fn of(attrs: &[Attribute], name: &Ident) -> syn::Result<Card> {
        let card = attribute(attrs, "q").ok_or_else(|| {
            Error::new(
                name.span(),
                "symbol and usual range are missing: #[q(\"T\", 10.0..=2000.0)]",
            )
        })?;
        card.parse_args()
    }
    /// The input as data.
    pub(crate) fn input(&self, name: &str, meaning: &str, kind: &Ident, optional: bool) -> Tokens {
        let home = home();
        let Card { symbol, low, high, or, like, basis, zero, broken, half_digit_of } = self;
        let presence = match or {
            Some(or) => quote!(#home::Presence::Default(#or)),
            None if optional || half_digit_of.is_some() => quote!(#home::Presence::Optional),
            None => quote!(#home::Presence::Needed),
        };
        let zero = or.as_ref().map_or_else(|| quote!(#zero), |or| quote!(#zero || #or == 0.0));
        let whole = kind == "Count" && !broken;
        quote!(#home::Input {
            name: #name,
            symbol: #symbol,
            meaning: #meaning,
            kind: ::hankwise::quantity::Kind::#kind,
            usual: (#low, #high),
            basis: #basis,
            like: #like,
            presence: #presence,
            zero: #zero,
            whole: #whole,
        })
    }
}

/// One adjusted input: `loss(0.01..=0.05, memory)`.
pub(crate) struct Adjusted {
    pub(crate) name: Ident,
    pub(crate) usual: Usual,
    pub(crate) basis: Expr,
}

impl Parse for Adjusted {
    fn parse(input: ParseStream<'_>) -> syn::Result<Self> {
        let name = input.parse()?;
        let inside;
        parenthesized!(inside in input);
        let usual = inside.parse()?;
        let mut basis = custom();
        if !inside.is_empty() {
            inside.parse::<Token![,]>()?;
            let word: Ident = inside.parse()?;
            if word == "memory" {
                basis = memory();
            } else {
                inside.parse::<Token![=]>()?;
                basis = inside.parse()?;
            }
        }
        Ok(Adjusted { name, usual, basis })
    }
}
