//! `#[calculation]`: turns a chain of formulas into a calculation of the catalogue.

use proc_macro2::TokenStream as Tokens;
use quote::{format_ident, quote};
use syn::parse::{Parse, ParseStream};
use syn::punctuated::Punctuated;
use syn::{Error, Expr, FnArg, Ident, ItemFn, LitStr, Path, ReturnType, Token, Type};

use crate::words::{LISTS, bare, documentation, home, number};

/// What is in the brackets of `#[calculation(…)]`.
pub(crate) struct Card {
    title: Expr,
    example: Expr,
    check: Option<Path>,
    report: Option<Path>,
    lists: [Vec<Expr>; 4],
}

impl Parse for Card {
    fn parse(input: ParseStream<'_>) -> syn::Result<Self> {
        let span = input.span();
        let (mut title, mut check, mut report) = (None, None, None);
        let mut example = syn::parse_quote!("");
        let mut lists = [const { Vec::new() }; 4];
        for item in Punctuated::<syn::MetaNameValue, Token![,]>::parse_terminated(input)? {
            let name = item.path.require_ident()?.to_string();
            match (LISTS.iter().position(|list| *list == name), item.value) {
                (Some(place), Expr::Array(array)) => {
                    lists[place] = array.elems.into_iter().collect();
                }
                (None, value) if name == "title" => title = Some(value),
                (None, value) if name == "example" => example = value,
                (None, Expr::Path(path)) if name == "check" => check = Some(path.path),
                (None, Expr::Path(path)) if name == "report" => report = Some(path.path),
                (_, value) => {
                    return Err(Error::new_spanned(
                        value,
                        "expected title = \"…\", example = \"…\", check = function, report = function, \
                         sources = […], limits = […], slips = […] or cautions = […]",
                    ));
                }
            }
        }
        let title = title.ok_or_else(|| Error::new(span, "the title is missing: title = \"…\""))?;
        Ok(Card { title, example, check, report, lists })
    }
}

/// The type behind the reference of the only argument.
fn asked(function: &ItemFn) -> syn::Result<&Type> {
    let wanted = "a calculation takes one argument, its inputs: (given: &MuleInputs<N>)";
    match function.sig.inputs.first() {
        Some(FnArg::Typed(arg)) if function.sig.inputs.len() == 1 => match &*arg.ty {
            Type::Reference(reference) => Ok(&reference.elem),
            other => Err(Error::new_spanned(other, wanted)),
        },
        _ => Err(Error::new_spanned(&function.sig, wanted)),
    }
}

pub(crate) fn expand(card: &Card, function: &ItemFn) -> syn::Result<Tokens> {
    let home = home();
    let Card { title, example, check, report, lists: [sources, limits, slips, cautions] } = card;
    let (summary, details) = documentation(&function.attrs);
    if summary.is_empty() {
        return Err(Error::new_spanned(
            &function.sig.ident,
            "say in a doc comment what it answers",
        ));
    }
    let (name, vis) = (&function.sig.ident, &function.vis);
    let n: Ident = number(&function.sig.generics, name.span())?;
    let inputs = asked(function)?;
    let ReturnType::Type(_, results) = &function.sig.output else {
        return Err(Error::new_spanned(&function.sig, "a calculation returns its results"));
    };
    let (asks, answers) = (bare(inputs)?, bare(results)?);
    let text = LitStr::new(&name.to_string(), name.span());
    let entry = format_ident!("{}", name.to_string().to_uppercase());
    let check = check.as_ref().map(|check| {
        quote!(
            fn check(
                asked_: &Self::Inputs<f64>,
                answered_: &Self::Results<f64>,
                check_: &mut #home::Check<'_>,
            ) -> ::hankwise::Result<()> {
                #home::Checked::done(#check(asked_, answered_, check_))
            }
        )
    });
    let report = report.as_ref().map(|report| {
        quote!(
            fn report(
                asked_: &Self::Inputs<f64>,
                answered_: &Self::Results<f64>,
                check_: &#home::Check<'_>,
            ) -> Option<::hankwise::table::Report> {
                Some(#report(asked_, answered_, check_))
            }
        )
    });
    Ok(quote! {
        #[inline]
        #function
        #[doc = concat!("The card of [`", #text, "()`].")]
        #vis static #entry: #home::Calculation = #home::Calculation {
            name: #text,
            module: module_path!(),
            title: #title,
            summary: #summary,
            details: #details,
            example: #example,
            inputs: #asks::<f64>::ITEMS,
            outputs: #answers::<f64>::OUTPUTS,
            limits: &[#(#limits),*],
            slips: &[#(#slips),*],
            sources: &[#(#sources),*],
            cautions: &[#(#cautions),*],
            runs: #home::Runs::of::<self::#name::Body>(),
        };
        #[allow(clippy::pedantic, clippy::unit_arg, unused_imports)]
        mod #name {
            use super::*;
            pub(super) struct Body;
            impl #home::Chain for Body {
                type Inputs<#n> = #inputs;
                type Results<#n> = #results;
                fn take(
                    source: &mut impl #home::Source,
                ) -> ::hankwise::Result<Self::Inputs<#home::Place>> {
                    #asks::take(source)
                }
                fn map<A, B>(
                    inputs: &Self::Inputs<A>,
                    to: &mut impl FnMut(&A) -> B,
                ) -> Self::Inputs<B> {
                    inputs.map(to)
                }
                fn body<BodyNumber: ::hankwise::number::Number>(
                    given: &Self::Inputs<BodyNumber>,
                ) -> Self::Results<BodyNumber> {
                    super::#name(given)
                }
                fn show<ShownNumber>(
                    found: &Self::Results<ShownNumber>,
                    sheet: &mut impl #home::Sheet<ShownNumber>,
                ) {
                    found.show(sheet);
                }
                #check
                #report
            }
        }
    })
}
