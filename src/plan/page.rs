//! The lot sheet: a page to print that travels with the lot, stage by stage, with settings and cautions.

use super::report::{Extent, columns};
use super::result::PlanResult;
use crate::caution;
use crate::error::Result;
use crate::files::{FileKind, Output};
use crate::quantity::print::escape;
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// How the page looks, on a screen and on paper: black on white, a stage kept together.
const STYLE: &str = "body{font:11pt/1.35 sans-serif;color:#000;background:#fff;max-width:60em;margin:1em auto;\
    padding:0 1em}h3{font-size:1.4em}h4{margin:1.2em 0 0.3em;border-bottom:1px solid}\
    table{border-collapse:collapse}th,td{vertical-align:top;border-bottom:1px solid #bbb}\
    section{break-inside:avoid}aside p{margin:0.4em 0}@page{margin:15mm}\
    @media screen and (max-width:32em){body{font-size:9pt;padding:0 0.5em}h3{font-size:1.2em}\
    table{display:block;overflow-x:auto}th,td{padding:0 0.2em!important}}";

impl PlanResult {
    /// The lot sheet as an HTML page.
    pub fn page(&self) -> String {
        let head = Report {
            title: self.title(),
            blocks: vec![self.promise(Extent::All), self.outcome(Extent::All), self.on_the_scale()],
        };
        let mut body = head.html();
        for block in self.by_stage() {
            let stage = Report { title: String::new(), blocks: vec![block] };
            body.push_str("<section>");
            body.push_str(&stage.html());
            body.push_str("</section>");
        }
        let mut last = self.divided();
        last.extend([self.measure_first(Extent::All), self.every_kilogram()]);
        last.extend(self.unusual());
        body.push_str(&Report { title: String::new(), blocks: last }.html());
        let origins = escape(&self.origin_line());
        format!(
            "<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">\
             <meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><title>{}</title>\
             <style>{STYLE}</style></head><body>{body}<p>{origins}</p><p><small>{}</small></p></body></html>\n",
            escape(&self.name),
            escape(caution::HEAD)
        )
    }
    /// Writes the lot sheet, whole or not at all.
    pub fn to_lot_sheet(&self, out: impl Into<Output>) -> Result<()> {
        out.into().write(FileKind::Html, self.page().as_bytes())
    }

    /// A block for each stage and machine: what to set and expect there, and its cautions.
    fn by_stage(&self) -> Vec<Block> {
        let mut places: Vec<&str> = self.stages.iter().map(|s| s.name.as_str()).collect();
        // The machines of the goods come after the stages.
        let later = self.settings.iter().filter(|s| !places.contains(&s.at.as_str()));
        let machines: Vec<&str> = later.map(|s| s.stage.as_str()).collect();
        for machine in machines {
            if !places.contains(&machine) {
                places.push(machine);
            }
        }
        let cautions = self.cautions_by_place();
        places.extend(
            cautions
                .iter()
                .map(|(place, _)| *place)
                .filter(|p| !places.contains(p))
                .collect::<Vec<_>>(),
        );
        let block = |place: &str| {
            let makes = self.stages.iter().find(|s| s.name == place).map(|s| s.makes.as_str());
            let title = makes.map_or(place.to_owned(), |makes| format!("{place}: {makes}"));
            let settings = self.settings.iter().filter(|s| match makes {
                Some(_) => s.at == place,
                None => s.stage == place,
            });
            let rows = settings.map(|s| {
                let of = match s.of.as_str() {
                    of if makes.is_none() && !of.is_empty() => format!("{of}: "),
                    _ => String::new(),
                };
                let mark = if s.main { "set,\u{a0}weigh" } else { "expect" };
                let name = s.key.rsplit('.').next().unwrap_or_default();
                let value = self.say.setting(name, s.value, s.kind);
                vec![mark.to_owned(), format!("{of}{}", s.words), value, s.note.clone()]
            });
            let names =
                cautions.iter().find(|(p, _)| *p == place).map_or(&[][..], |(_, names)| names);
            Block {
                title,
                columns: columns(&[("", Left), ("what", Left), ("value", Right), ("note", Left)]),
                rows: rows.collect(),
                lead: self
                    .craft
                    .iter()
                    .filter(|(stage, ..)| stage == place)
                    .map(|(_, sense, words)| format!("{}: {words}", sense_word(sense)))
                    .collect(),
                cautions: caution::of(names).map(|caution| caution.line(&[])).collect(),
                ..Block::default()
            }
        };
        let blocks = places.into_iter().map(block);
        blocks.filter(|block| !block.rows.is_empty() || !block.cautions.is_empty()).collect()
    }
}

/// Look, listen or feel, as a heading.
fn sense_word(sense: &str) -> &'static str {
    match sense {
        "look" => "Look",
        "listen" => "Listen",
        _ => "Feel",
    }
}
