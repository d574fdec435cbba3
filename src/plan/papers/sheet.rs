//! A sheet of paper as HTML: pages that begin on a new sheet, blocks that stay together, lines to fill in.

use std::fmt::Write as _;

use crate::caution;
use crate::quantity::print::escape;
use crate::table::{Block, Report};

/// How a sheet looks, on a screen and on paper: black on white, nothing below 9 pt. The paper is the
/// printer's own, A4 or Letter.
const STYLE: &str = "body{font:11pt/1.35 sans-serif;color:#000;background:#fff;max-width:48em;margin:1em auto;\
    padding:0 1em}h3{font-size:1.4em;margin:0.6em 0 0.2em}h4{margin:1.1em 0 0.3em;border-bottom:1px solid}\
    p{margin:0.4em 0}small,aside{font-size:9.5pt}table{border-collapse:collapse}\
    th,td{vertical-align:top;border-bottom:1px solid #999}th{vertical-align:bottom;font-size:9.5pt}th:empty{padding:0!important;border:0}\
    section{break-inside:avoid}.page{break-inside:auto}.page+.page{break-before:page;margin-top:3em}\
    .fill table{width:100%}.fill td{height:7mm;border:1px solid;vertical-align:middle}\
    @page{margin:15mm}@media print{body{font-size:10pt;line-height:1.25;margin:0;padding:0;max-width:none}.page+.page{margin-top:0}}\
    @media screen and (max-width:32em){body{font-size:9.5pt;padding:0 0.5em}small,th{font-size:9pt}\
    section{overflow-x:auto}th,td{padding:0 0.25em!important}}";

/// A page of a sheet.
#[derive(Default)]
pub(super) struct Page {
    /// Its title.
    pub(super) title: String,
    /// Sentences under the title.
    pub(super) lead: Vec<String>,
    /// What is told, each kept together.
    pub(super) blocks: Vec<Block>,
    /// What is filled in by hand.
    pub(super) fill: Option<Block>,
    /// What is told after that.
    pub(super) last: Vec<Block>,
}

impl Page {
    fn html(self) -> String {
        let head = Block { lead: self.lead, ..Block::default() };
        let mut out = String::from("<div class=\"page\">");
        out.push_str(&Report { title: self.title, blocks: vec![head] }.html());
        let told = |out: &mut String, block: Block, class: &str| {
            let report = Report { title: String::new(), blocks: vec![block] };
            let _ = write!(out, "<section{class}>{}</section>", report.html());
        };
        for block in self.blocks {
            told(&mut out, block, "");
        }
        if let Some(block) = self.fill {
            told(&mut out, block, " class=\"fill\"");
        }
        for block in self.last {
            told(&mut out, block, "");
        }
        out.push_str("</div>");
        out
    }
}

/// A sheet of some pages.
pub(super) fn html(title: &str, pages: Vec<Page>) -> String {
    let body: String = pages.into_iter().map(Page::html).collect();
    format!(
        "<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">\
         <meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><title>{}</title>\
         <style>{STYLE}</style></head><body>{body}</body></html>\n",
        escape(title)
    )
}

/// The box of cautions of a page, under the head that says who decides; nothing for none.
pub(super) fn cautions(names: &[&str]) -> Option<Block> {
    Block::caution_lines(caution::of(names).map(|caution| caution.line(&[])).collect())
}

/// The first letter large.
pub(super) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}
