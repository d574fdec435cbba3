//! `#[derive(Results)]`: what a calculation answers, from a struct.

use proc_macro2::TokenStream as Tokens;
use quote::quote;
use syn::ext::IdentExt;
use syn::{Attribute, Data, DeriveInput, Error, Expr, Lit, LitStr, Meta, Type};

use crate::words::{attribute, home, inside, last_name, meaning, number, opened};

/// The text of `#[name = "…"]`.
fn text(attrs: &[Attribute], name: &str) -> syn::Result<Option<LitStr>> {
    let Some(attr) = attribute(attrs, name) else { return Ok(None) };
    match &attr.meta {
        Meta::NameValue(pair) => match &pair.value {
            Expr::Lit(lit) => match &lit.lit {
                Lit::Str(text) => Ok(Some(text.clone())),
                _ => Err(Error::new_spanned(lit, "expected a text")),
            },
            other => Err(Error::new_spanned(other, "expected a text")),
        },
        other => Err(Error::new_spanned(other, "expected a text: #[block = \"…\"]")),
    }
}

/// What is made of one field: its output as data, and how it is shown; `it` is a reference to it.
fn field(attrs: &[Attribute], name: &syn::Ident, ty: &Type) -> syn::Result<(Tokens, Tokens)> {
    let home = home();
    let (held, is_optional) = opened(ty);
    let each = |show: Tokens| {
        if is_optional { quote!(if let Some(it) = it { #show }) } else { show }
    };
    if attribute(attrs, "part").is_some() {
        let output =
            quote!(#home::Output::Part { optional: #is_optional, outputs: <#held>::OUTPUTS });
        return Ok((output, each(quote!(it.show(sheet);))));
    }
    let (words, text_name) = (meaning(attrs, name)?, name.unraw().to_string());
    if attribute(attrs, "rows").is_some() {
        let row = inside(held, "Vec")
            .ok_or_else(|| Error::new_spanned(ty, "expected Vec<…> or Option<Vec<…>>"))?;
        let output = quote!(#home::Output::Rows {
            name: #text_name, meaning: #words, label: <#row>::LABEL, outputs: <#row>::OUTPUTS,
        });
        let show = each(quote!(
            #home::Sheet::rows(sheet, #text_name, #words, <#row>::OUTPUTS);
            for (row, it) in it.iter().enumerate() {
                #home::Sheet::enter(sheet, #text_name, row, it.label());
                it.show(sheet);
                #home::Sheet::leave(sheet);
            }
            #home::Sheet::end_rows(sheet);
        ));
        return Ok((output, show));
    }
    let list = inside(held, "Vec");
    let kind = last_name(list.unwrap_or(held))?;
    let head = match text(attrs, "head")? {
        Some(head) => head.value(),
        None => String::new(),
    };
    let whole = attribute(attrs, "whole").is_some();
    let answer = quote!(#home::Answer {
        name: #text_name,
        meaning: #words,
        kind: ::hankwise::quantity::Kind::#kind,
        head: #head,
        optional: #is_optional,
        whole: #whole,
    });
    let (variant, show) = if list.is_some() {
        let members = quote!(for (place, it) in it.iter().enumerate() {
            #home::Sheet::member(sheet, &ANSWER, place, it.inner());
        });
        (quote!(List), members)
    } else {
        (quote!(One), quote!(#home::Sheet::one(sheet, &ANSWER, it.inner());))
    };
    let show = each(show);
    let show = quote!({ static ANSWER: #home::Answer = #answer; #show });
    Ok((quote!(#home::Output::#variant(#answer)), show))
}

pub(crate) fn derive(input: &DeriveInput) -> syn::Result<Tokens> {
    let home = home();
    let Data::Struct(data) = &input.data else {
        return Err(Error::new_spanned(input, "expected a struct"));
    };
    let (name, vis) = (&input.ident, &input.vis);
    let n = number(&input.generics, name.span())?;
    let (mut outputs, mut shows) = (Vec::new(), Vec::new());
    let (mut label, mut label_name) = (quote!(None), quote!(None));
    for part in &data.fields {
        let Some(ident) = &part.ident else {
            return Err(Error::new_spanned(part, "expected fields with names"));
        };
        if attribute(&part.attrs, "label").is_some() {
            label = quote!(Some(&self.#ident));
            let text = ident.unraw().to_string();
            label_name = quote!(Some(#text));
            continue;
        }
        if let Some(block) = text(&part.attrs, "block")? {
            outputs.push(quote!(#home::Output::Block(#block)));
            shows.push(quote!(#home::Sheet::block(sheet, #block);));
        }
        let (output, show) = field(&part.attrs, ident, &part.ty)?;
        outputs.push(output);
        shows.push(quote!({ let it = &self.#ident; #show }));
    }
    Ok(quote! {
        #[allow(clippy::pedantic)]
        impl<#n> #name<#n> {
            /// What is answered, as data.
            #vis const OUTPUTS: &'static [#home::Output] = &[#(#outputs),*];
            /// The name of the text that tells several of these apart.
            #[allow(dead_code)]
            #vis const LABEL: Option<&'static str> = #label_name;
            /// Lays the results out.
            #vis fn show(&self, sheet: &mut impl #home::Sheet<#n>) {
                let _ = &sheet;
                #(#shows)*
            }
            /// What tells it apart among others.
            #[allow(dead_code)]
            #vis fn label(&self) -> Option<&str> {
                #label
            }
        }
    })
}
