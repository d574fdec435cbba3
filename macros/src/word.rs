//! `#[derive(Words)]`: a word out of several, from an enum without values.

use proc_macro2::{Ident, TokenStream as Tokens};
use quote::quote;
use syn::{Data, DeriveInput, Error, LitStr};

use crate::words::{attribute, documentation, snake};

pub(crate) fn derive(input: &DeriveInput) -> syn::Result<Tokens> {
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
