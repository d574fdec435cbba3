//! `#[derive(Inputs)]`: what a calculation asks, from a struct or from the ways of a choice.

use proc_macro2::{Ident, TokenStream as Tokens};
use quote::quote;
use syn::ext::IdentExt;
use syn::parse::{Parse, ParseStream};
use syn::punctuated::Punctuated;
use syn::{Attribute, Data, DeriveInput, Error, Fields, ItemEnum, LitStr, Token, Type};

use crate::asked::{Adjusted, Card, Usual};
use crate::words::{attribute, bare, home, inside, last_name, meaning, number, opened, snake};

/// What is made of one field or one way of a choice.
struct Part {
    /// The item as data.
    item: Tokens,
    /// How it is read from the source, where the number is a place.
    take: Tokens,
    /// How it is turned into another number; `it` is a reference to the field.
    map: Tokens,
}

impl Part {
    /// What the source answers as it stands: `ask` is its question, for what has to be given `needed_` it.
    fn plain(variant: &str, card: &Tokens, ask: &str, needed: bool) -> Part {
        let (home, variant, ask) = (home(), word(variant), asks(ask, needed));
        Part {
            item: quote!(#home::Item::#variant(#card)),
            take: quote!(#home::Source::#ask(source, &#card)?),
            map: quote!(it.clone()),
        }
    }
}

fn word(text: &str) -> Ident {
    Ident::new(text, proc_macro2::Span::call_site())
}

/// The question to the source for what may be omitted or has to be given.
fn asks(ask: &str, needed: bool) -> Ident {
    word(&if needed { format!("needed_{ask}") } else { ask.to_owned() })
}

/// The map of what is in an option, where there is something.
fn within(optional: bool, map: Tokens) -> Tokens {
    if optional { quote!(it.as_ref().map(|it| #map)) } else { map }
}

fn group(attr: &Attribute, ty: &Type) -> syn::Result<Part> {
    let home = home();
    let (whole, optional) = opened(ty);
    let adjusted = match &attr.meta {
        syn::Meta::Path(_) => Punctuated::new(),
        _ => attr.parse_args_with(Punctuated::<Adjusted, Token![,]>::parse_terminated)?,
    };
    let adjust = adjusted.iter().map(|Adjusted { name, usual: Usual(low, high), basis }| {
        let name = name.to_string();
        quote!(#home::Adjust { name: #name, usual: (#low, #high), basis: #basis })
    });
    let card = quote!(#home::Group {
        optional: #optional, adjust: &[#(#adjust),*], items: <#whole>::ITEMS,
    });
    let take = quote!({
        #home::Source::open(source, &group);
        let taken = <#whole>::take(source)?;
        #home::Source::close(source);
        taken
    });
    let take = if optional {
        quote!(if #home::Source::any(source, group.items)? { Some(#take) } else { None })
    } else {
        take
    };
    Ok(Part {
        item: quote!(#home::Item::Group(#card)),
        take: quote!({ let group = #card; #take }),
        map: within(optional, quote!(it.map(to))),
    })
}

fn one_of(attr: &Attribute, ty: &Type) -> syn::Result<Part> {
    let home = home();
    let what: LitStr = attr.parse_args()?;
    let (whole, optional) = opened(ty);
    let needed = !optional;
    let card = quote!(#home::Choice { what: #what, needed: #needed, ways: <#whole>::ITEMS });
    let ask = asks("way", needed);
    let way = quote!(#home::Source::#ask(source, &#card)?);
    let take = if optional {
        quote!(match #way {
            Some(way) => Some(<#whole>::take_way(way, source)?),
            None => None,
        })
    } else {
        quote!({ let way = #way; <#whole>::take_way(way, source)? })
    };
    let item = quote!(#home::Item::Choice(#card));
    Ok(Part { item, take, map: within(optional, quote!(it.map(to))) })
}

fn rows(name: &str, meaning: &str, ty: &Type) -> syn::Result<Part> {
    let home = home();
    let (list, optional) = opened(ty);
    let needed = !optional;
    let row = inside(list, "Vec")
        .ok_or_else(|| Error::new_spanned(ty, "expected Vec<…> or Option<Vec<…>>"))?;
    let card = quote!(#home::Rows {
        name: #name, meaning: #meaning, label: <#row>::LABEL, items: <#row>::ITEMS, needed: #needed,
    });
    let ask = asks("rows", needed);
    let all =
        if optional { quote!(if all.is_empty() { None } else { Some(all) }) } else { quote!(all) };
    let take = quote!({
        let rows = #card;
        let number = #home::Source::#ask(source, &rows)?;
        let mut all = Vec::with_capacity(number);
        for row in 0..number {
            #home::Source::enter(source, &rows, row)?;
            all.push(<#row>::take(source)?);
            #home::Source::leave(source);
        }
        #all
    });
    let map = within(optional, quote!(it.iter().map(|it| it.map(to)).collect()));
    Ok(Part { item: quote!(#home::Item::Rows(#card)), take, map })
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

fn parts(attr: &Attribute, name: &str, meaning: &str, needed: bool) -> syn::Result<Part> {
    let home = home();
    let PartsCard { set, kind, like } = attr.parse_args()?;
    let card = quote!(#home::PartsInput {
        name: #name, set: #set, meaning: #meaning,
        kind: ::hankwise::quantity::Kind::#kind, like: #like, needed: #needed,
    });
    Ok(Part::plain("Parts", &card, "parts", needed))
}

fn one_word(name: &str, meaning: &str, ty: &Type) -> Part {
    let home = home();
    let (whole, optional) = opened(ty);
    // Of a word that may be omitted none is taken by itself.
    let default = if optional { quote!(Some(0)) } else { quote!(<#whole>::DEFAULT) };
    let card = quote!(#home::Word {
        name: #name, meaning: #meaning, words: <#whole>::WORDS, default: #default,
    });
    let Part { item, take, .. } = Part::plain("Word", &card, "word", !optional);
    let take = if optional { quote!(#take.map(<#whole>::at)) } else { quote!(<#whole>::at(#take)) };
    Part { item, take, map: quote!(*it) }
}

fn quantity(attrs: &[Attribute], name: &Ident, words: &str, ty: &Type) -> syn::Result<Part> {
    let home = home();
    let card = Card::of(attrs, name)?;
    let (held, optional) = opened(ty);
    let list = inside(held, "Vec");
    let one = list.unwrap_or(held);
    let path = bare(one)?;
    let input = card.input(&name.unraw().to_string(), words, &last_name(one)?, optional);
    let (variant, ask) = match list {
        Some(_) => (word("List"), asks("list", !optional)),
        None if optional => (word("One"), word("one")),
        None => (word("One"), word("needed")),
    };
    let (take, map) = match list {
        Some(_) => (
            quote!(found.into_iter().map(<#one>::base).collect()),
            quote!(it.iter().map(|it| #path::base(to(it.inner()))).collect()),
        ),
        None => (quote!(<#one>::base(found)), quote!(#path::base(to(it.inner())))),
    };
    let found = if let Some(of) = &card.half_digit_of {
        quote!(#home::Source::or_half_digit(source, &#input, #of)?)
    } else {
        quote!(#home::Source::#ask(source, &#input)?)
    };
    let take = match &card.or {
        Some(or) if list.is_none() && !optional => {
            quote!(<#one>::base(#home::Source::or(source, &#input, #or)?))
        }
        Some(_) => return Err(Error::new(name.span(), "a default goes with a plain quantity")),
        None if optional => quote!(#found.map(|found| #take)),
        None => quote!({ let found = #found; #take }),
    };
    let item = quote!(#home::Item::#variant(#input));
    Ok(Part { item, take, map: within(optional, map) })
}

fn part(attrs: &[Attribute], name: &Ident, ty: &Type) -> syn::Result<Part> {
    let text = name.unraw().to_string();
    if let Some(attr) = attribute(attrs, "group") {
        return group(attr, ty);
    }
    if let Some(attr) = attribute(attrs, "one_of") {
        return one_of(attr, ty);
    }
    let words = meaning(attrs, name)?;
    let (held, optional) = opened(ty);
    if attribute(attrs, "rows").is_some() {
        return rows(&text, &words, ty);
    }
    if let Some(attr) = attribute(attrs, "parts") {
        return parts(attr, &text, &words, !optional);
    }
    if attribute(attrs, "word").is_some() {
        return Ok(one_word(&text, &words, ty));
    }
    if attribute(attrs, "q").is_some() {
        return quantity(attrs, name, &words, ty);
    }
    let (home, needed) = (home(), !optional);
    match last_name(held)?.to_string().as_str() {
        "String" => {
            let card = quote!(#home::Text { name: #text, meaning: #words, needed: #needed });
            Ok(Part::plain("Text", &card, "text", needed))
        }
        "bool" => Ok(Part {
            item: quote!(#home::Item::Flag(#text, #words)),
            take: quote!(#home::Source::flag(source, #text)?),
            map: quote!(*it),
        }),
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
                #[allow(dead_code)]
                type #n = #home::Place;
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
        // The last is taken for what is not among them: `way` gives no other.
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
                #[allow(dead_code)]
                type #n = #home::Place;
                Ok(match way { #(#takes),* })
            }
        }
    })
}
