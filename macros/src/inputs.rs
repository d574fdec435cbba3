//! `#[derive(Inputs)]`: what a calculation asks, from a struct or from the ways of a choice.

use proc_macro2::{Ident, TokenStream as Tokens};
use quote::quote;
use syn::ext::IdentExt;
use syn::parse::{Parse, ParseStream};
use syn::punctuated::Punctuated;
use syn::{
    Attribute, Data, DeriveInput, Error, Expr, Fields, ItemEnum, LitStr, RangeLimits, Token, Type,
    parenthesized,
};

use crate::words::{
    attribute, bare, documentation, home, inside, last_name, meaning, number, snake,
};

/// What stands in `#[q("T", 10.0..=2000.0, …)]`.
struct Card {
    symbol: Expr,
    low: Tokens,
    high: Tokens,
    or: Option<Expr>,
    like: Expr,
    basis: Expr,
    zero: bool,
    broken: bool,
    half_digit_of: Option<LitStr>,
}

/// The key of the custom of the trade: the basis of a usual range where none is given.
pub(crate) fn custom() -> Expr {
    syn::parse_quote!("practice")
}
/// The key of what is from memory.
pub(crate) fn memory() -> Expr {
    syn::parse_quote!("memory")
}

/// A range: `10.0..=2000.0`, or `..` where none is usual.
struct Usual(Tokens, Tokens);

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
    fn of(attrs: &[Attribute], name: &Ident) -> syn::Result<Card> {
        let card = attribute(attrs, "q").ok_or_else(|| {
            Error::new(
                name.span(),
                "symbol and usual range are missing: #[q(\"T\", 10.0..=2000.0)]",
            )
        })?;
        card.parse_args()
    }
    /// The input as data.
    fn input(&self, name: &str, meaning: &str, kind: &Ident, optional: bool) -> Tokens {
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

/// What is made of one field or one way of a choice.
struct Part {
    /// The item as data.
    item: Tokens,
    /// How it is read from the source.
    take: Tokens,
    /// How it is turned into another number; `it` is a reference to the field.
    map: Tokens,
}

/// One adjusted input: `loss(0.01..=0.05, memory)`.
struct Adjusted {
    name: Ident,
    usual: Usual,
    basis: Expr,
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

/// The attribute's arguments, where it has any.
fn arguments<T: Parse>(attr: &Attribute) -> syn::Result<Vec<T>> {
    match &attr.meta {
        syn::Meta::Path(_) => Ok(Vec::new()),
        _ => Ok(attr
            .parse_args_with(Punctuated::<T, Token![,]>::parse_terminated)?
            .into_iter()
            .collect()),
    }
}

fn group(attr: &Attribute, ty: &Type) -> syn::Result<Part> {
    let home = home();
    let optional = inside(ty, "Option");
    let whole = optional.unwrap_or(ty);
    let (path, is_optional) = (bare(whole)?, optional.is_some());
    let mut adjust = Vec::new();
    for Adjusted { name, usual: Usual(low, high), basis } in arguments(attr)? {
        let name = name.to_string();
        adjust.push(quote!(#home::Adjust { name: #name, usual: (#low, #high), basis: #basis }));
    }
    let card = |items: Tokens| quote!(#home::Group { optional: #is_optional, adjust: &[#(#adjust),*], items: #items });
    let item = card(quote!(<#whole>::ITEMS));
    // Where it is read the number is a place.
    let group = card(quote!(#path::<#home::Place>::ITEMS));
    let take = quote!({
        #home::Source::open(source, &group);
        let taken = #path::take(source)?;
        #home::Source::close(source);
        taken
    });
    let (take, map) = if is_optional {
        (
            quote!(if #home::Source::any(source, group.items)? { Some(#take) } else { None }),
            quote!(it.as_ref().map(|it| it.map(to))),
        )
    } else {
        (take, quote!(it.map(to)))
    };
    let take = quote!({ let group = #group; #take });
    Ok(Part { item: quote!(#home::Item::Group(#item)), take, map })
}

fn one_of(attr: &Attribute, ty: &Type) -> syn::Result<Part> {
    let home = home();
    let what: LitStr = attr.parse_args()?;
    let optional = inside(ty, "Option");
    let whole = optional.unwrap_or(ty);
    let (path, needed) = (bare(whole)?, optional.is_none());
    let item = quote!(#home::Item::Choice(#home::Choice {
        what: #what, needed: #needed, ways: <#whole>::ITEMS,
    }));
    let choice = quote!(#home::Choice {
        what: #what, needed: #needed, ways: #path::<#home::Place>::ITEMS,
    });
    let (take, map) = if needed {
        (
            quote!({
                let way = #home::Source::needed_way(source, &#choice)?;
                #path::take_way(way, source)?
            }),
            quote!(it.map(to)),
        )
    } else {
        (
            quote!(match #home::Source::way(source, &#choice)? {
                Some(way) => Some(#path::take_way(way, source)?),
                None => None,
            }),
            quote!(it.as_ref().map(|it| it.map(to))),
        )
    };
    Ok(Part { item, take, map })
}

fn rows(name: &str, meaning: &str, ty: &Type) -> syn::Result<Part> {
    let home = home();
    let (needed, list) = match inside(ty, "Option") {
        Some(list) => (false, list),
        None => (true, ty),
    };
    let row = inside(list, "Vec")
        .ok_or_else(|| Error::new_spanned(ty, "expected Vec<…> or Option<Vec<…>>"))?;
    let path = bare(row)?;
    let card = |row: Tokens| {
        quote!(#home::Rows {
            name: #name, meaning: #meaning, label: #row::LABEL, items: #row::ITEMS, needed: #needed,
        })
    };
    let item_card = card(quote!(<#row>));
    let take_card = card(quote!(#path::<#home::Place>));
    let number = if needed { quote!(needed_rows) } else { quote!(rows) };
    let take = quote!({
        let rows = #take_card;
        let number = #home::Source::#number(source, &rows)?;
        let mut all = Vec::with_capacity(number);
        for row in 0..number {
            #home::Source::enter(source, &rows, row)?;
            all.push(#path::take(source)?);
            #home::Source::leave(source);
        }
        all
    });
    let map = quote!(it.iter().map(|it| it.map(to)).collect());
    let (take, map) = if needed {
        (take, map)
    } else {
        (
            quote!({ let all = #take; if all.is_empty() { None } else { Some(all) } }),
            quote!(it.as_ref().map(|it| #map)),
        )
    };
    Ok(Part { item: quote!(#home::Item::Rows(#item_card)), take, map })
}

/// `#[parts("delivery_wheel", Count, "[32, 34, 36]")]`
struct PartsCard {
    set: LitStr,
    kind: Ident,
    like: LitStr,
}

impl Parse for PartsCard {
    fn parse(input: ParseStream<'_>) -> syn::Result<Self> {
        let set = input.parse()?;
        input.parse::<Token![,]>()?;
        let kind = input.parse()?;
        input.parse::<Token![,]>()?;
        Ok(PartsCard { set, kind, like: input.parse()? })
    }
}

fn parts(attr: &Attribute, name: &str, meaning: &str, ty: &Type) -> syn::Result<Part> {
    let home = home();
    let PartsCard { set, kind, like } = attr.parse_args()?;
    let needed = inside(ty, "Option").is_none();
    let card = quote!(#home::PartsInput {
        name: #name, set: #set, meaning: #meaning,
        kind: ::hankwise::quantity::Kind::#kind, like: #like, needed: #needed,
    });
    let ask = if needed { quote!(needed_parts) } else { quote!(parts) };
    Ok(Part {
        item: quote!(#home::Item::Parts(#card)),
        take: quote!(#home::Source::#ask(source, &#card)?),
        map: quote!(it.clone()),
    })
}

fn word(name: &str, meaning: &str, ty: &Type) -> syn::Result<Part> {
    let home = home();
    let optional = inside(ty, "Option");
    let path = bare(optional.unwrap_or(ty))?;
    // Of a word that may be omitted none is taken by itself.
    let default = if optional.is_some() { quote!(Some(0)) } else { quote!(#path::DEFAULT) };
    let card = quote!(#home::Word {
        name: #name, meaning: #meaning, words: #path::WORDS, default: #default,
    });
    let take = if optional.is_some() {
        quote!(#home::Source::word(source, &#card)?.map(#path::at))
    } else {
        quote!(#path::at(#home::Source::needed_word(source, &#card)?))
    };
    Ok(Part { item: quote!(#home::Item::Word(#card)), take, map: quote!(*it) })
}

fn text(name: &str, meaning: &str, ty: &Type) -> Part {
    let home = home();
    let needed = inside(ty, "Option").is_none();
    let card = quote!(#home::Text { name: #name, meaning: #meaning, needed: #needed });
    let ask = if needed { quote!(needed_text) } else { quote!(text) };
    Part {
        item: quote!(#home::Item::Text(#card)),
        take: quote!(#home::Source::#ask(source, &#card)?),
        map: quote!(it.clone()),
    }
}

fn quantity(attrs: &[Attribute], name: &Ident, words: &str, ty: &Type) -> syn::Result<Part> {
    let home = home();
    let card = Card::of(attrs, name)?;
    let optional = inside(ty, "Option");
    let held = optional.unwrap_or(ty);
    let list = inside(held, "Vec");
    let kind = last_name(list.unwrap_or(held))?;
    let path = bare(list.unwrap_or(held))?;
    let text = name.unraw().to_string();
    let input = card.input(&text, words, &kind, optional.is_some());
    let ask = |ask: &str| {
        let ask = Ident::new(ask, name.span());
        quote!(#home::Source::#ask(source, &#input)?)
    };
    let members = quote!(.into_iter().map(#path::base).collect());
    let (take, map) = match (list.is_some(), optional.is_some(), &card.or) {
        (false, false, None) => {
            let place = match &card.half_digit_of {
                Some(of) => quote!(#home::Source::or_half_digit(source, &#input, #of)?),
                None => ask("needed"),
            };
            (quote!(#path::base(#place)), quote!(#path::base(to(it.inner()))))
        }
        (false, false, Some(or)) => (
            quote!(#path::base(#home::Source::or(source, &#input, #or)?)),
            quote!(#path::base(to(it.inner()))),
        ),
        (false, true, None) => {
            let place = ask("one");
            (
                quote!(#place.map(#path::base)),
                quote!(it.as_ref().map(|it| #path::base(to(it.inner())))),
            )
        }
        (true, false, None) => {
            let places = ask("needed_list");
            (
                quote!(#places #members),
                quote!(it.iter().map(|it| #path::base(to(it.inner()))).collect()),
            )
        }
        (true, true, None) => {
            let places = ask("list");
            (
                quote!(#places.map(|all| all #members)),
                quote!(it.as_ref().map(|all| {
                    all.iter().map(|it| #path::base(to(it.inner()))).collect()
                })),
            )
        }
        (_, _, Some(_)) => {
            return Err(Error::new(name.span(), "a default goes with a plain quantity"));
        }
    };
    let item = if list.is_some() { quote!(List) } else { quote!(One) };
    Ok(Part { item: quote!(#home::Item::#item(#input)), take, map })
}

fn part(attrs: &[Attribute], name: &Ident, ty: &Type) -> syn::Result<Part> {
    let text_name = name.unraw().to_string();
    if let Some(attr) = attribute(attrs, "group") {
        return group(attr, ty);
    }
    if let Some(attr) = attribute(attrs, "one_of") {
        return one_of(attr, ty);
    }
    let words = meaning(attrs, name)?;
    if attribute(attrs, "rows").is_some() {
        return rows(&text_name, &words, ty);
    }
    if let Some(attr) = attribute(attrs, "parts") {
        return parts(attr, &text_name, &words, ty);
    }
    if attribute(attrs, "word").is_some() {
        return word(&text_name, &words, ty);
    }
    if attribute(attrs, "q").is_some() {
        return quantity(attrs, name, &words, ty);
    }
    let held = inside(ty, "Option").unwrap_or(ty);
    match last_name(held)?.to_string().as_str() {
        "String" => Ok(text(&text_name, &words, ty)),
        "bool" => {
            let home = home();
            Ok(Part {
                item: quote!(#home::Item::Flag(#text_name, #words)),
                take: quote!(#home::Source::flag(source, #text_name)?),
                map: quote!(*it),
            })
        }
        _ => Err(Error::new(
            name.span(),
            "expected #[q(…)], #[group], #[one_of(\"…\")], #[rows], #[parts(…)] or #[word]",
        )),
    }
}

pub(crate) fn derive(input: &DeriveInput) -> syn::Result<Tokens> {
    match &input.data {
        Data::Struct(data) => of_struct(input, &data.fields),
        Data::Enum(_) => {
            let input: ItemEnum = syn::parse2(quote!(#input))?;
            of_choice(&input)
        }
        Data::Union(_) => Err(Error::new_spanned(input, "expected a struct or an enum")),
    }
}

fn of_struct(input: &DeriveInput, fields: &Fields) -> syn::Result<Tokens> {
    let home = home();
    let (name, vis) = (&input.ident, &input.vis);
    let n = number(&input.generics, name.span())?;
    let (mut items, mut takes, mut maps) = (Vec::new(), Vec::new(), Vec::new());
    let mut label = quote!(None);
    for field in fields {
        let Some(ident) = &field.ident else {
            return Err(Error::new_spanned(field, "expected fields with names"));
        };
        let Part { item, take, map } = part(&field.attrs, ident, &field.ty)?;
        items.push(item);
        takes.push(quote!(#ident: #take));
        maps.push(quote!(#ident: { let it = &self.#ident; #map }));
        if attribute(&field.attrs, "label").is_some() {
            let text = ident.unraw().to_string();
            label = quote!(Some(#text));
        }
    }
    Ok(quote! {
        #[allow(clippy::pedantic)]
        impl<#n> #name<#n> {
            /// What is asked, as data.
            #vis const ITEMS: &'static [#home::Item] = &[#(#items),*];
            /// The text that tells several of these apart.
            #vis const LABEL: Option<&'static str> = #label;
            /// The same over another number.
            #[inline(always)]
            #vis fn map<MappedNumber>(
                &self,
                to: &mut impl FnMut(&#n) -> MappedNumber,
            ) -> #name<MappedNumber> {
                let _ = &to;
                #name { #(#maps),* }
            }
        }
        #[allow(clippy::pedantic)]
        impl #name<#home::Place> {
            /// Reads it.
            #vis fn take(source: &mut impl #home::Source) -> ::hankwise::Result<Self> {
                let _ = &source;
                Ok(#name { #(#takes),* })
            }
        }
    })
}

fn of_choice(input: &ItemEnum) -> syn::Result<Tokens> {
    let home = home();
    let (name, vis) = (&input.ident, &input.vis);
    let n = number(&input.generics, name.span())?;
    let (mut items, mut takes, mut maps) = (Vec::new(), Vec::new(), Vec::new());
    for (place, variant) in input.variants.iter().enumerate() {
        let ident = &variant.ident;
        let ty = match &variant.fields {
            Fields::Unnamed(fields) if fields.unnamed.len() == 1 => &fields.unnamed[0].ty,
            _ => {
                return Err(Error::new_spanned(variant, "expected one value: Draft(Ratio<N>)"));
            }
        };
        let as_name = Ident::new(&snake(ident), ident.span());
        let Part { item, take, map } = part(&variant.attrs, &as_name, ty)?;
        items.push(item);
        // The last stands for what is not among them: `way` gives no other.
        let pattern = if place + 1 == input.variants.len() { quote!(_) } else { quote!(#place) };
        takes.push(quote!(#pattern => #name::#ident(#take)));
        maps.push(quote!(#name::#ident(it) => #name::#ident(#map)));
    }
    if takes.is_empty() {
        return Err(Error::new_spanned(input, "expected at least one way"));
    }
    Ok(quote! {
        #[allow(clippy::pedantic)]
        impl<#n> #name<#n> {
            /// The ways, as data.
            #vis const ITEMS: &'static [#home::Item] = &[#(#items),*];
            /// The same over another number.
            #[inline(always)]
            #vis fn map<MappedNumber>(
                &self,
                to: &mut impl FnMut(&#n) -> MappedNumber,
            ) -> #name<MappedNumber> {
                match self { #(#maps),* }
            }
        }
        #[allow(clippy::pedantic)]
        impl #name<#home::Place> {
            /// Reads the way that was taken.
            #vis fn take_way(way: usize, source: &mut impl #home::Source) -> ::hankwise::Result<Self> {
                Ok(match way { #(#takes),* })
            }
        }
    })
}

/// `#[derive(Words)]`: a word out of several, from an enum without values.
pub(crate) fn derive_words(input: &DeriveInput) -> syn::Result<Tokens> {
    let Data::Enum(data) = &input.data else {
        return Err(Error::new_spanned(input, "expected an enum"));
    };
    let (name, vis) = (&input.ident, &input.vis);
    let (mut words, mut default) = (Vec::new(), quote!(None));
    for (place, variant) in data.variants.iter().enumerate() {
        let text = match attribute(&variant.attrs, "word") {
            Some(attr) => attr.parse_args::<LitStr>()?.value(),
            None => snake(&variant.ident),
        };
        let (says, _) = documentation(&variant.attrs);
        words.push(quote!((#text, #says)));
        if attribute(&variant.attrs, "default").is_some() {
            default = quote!(Some(#place));
        }
    }
    let variants: Vec<&Ident> = data.variants.iter().map(|v| &v.ident).collect();
    let Some((last, others)) = variants.split_last() else {
        return Err(Error::new_spanned(input, "expected at least one word"));
    };
    let arms = others.iter().enumerate().map(|(place, v)| quote!(#place => #name::#v,));
    Ok(quote! {
        impl #name {
            /// The words, each with what it means.
            #vis const WORDS: &'static [(&'static str, &'static str)] = &[#(#words),*];
            /// The one that is taken when none is given.
            #vis const DEFAULT: Option<usize> = #default;
            /// The word at a place.
            #vis const fn at(place: usize) -> Self {
                match place { #(#arms)* _ => #name::#last }
            }
        }
    })
}
