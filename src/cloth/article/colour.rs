//! Colours of warp and weft: how they are laid, and the yarn of each.

use super::ask::Article;
use super::work::Work;
use crate::cloth::{ColourOrder, Laid};
use crate::error::{Error, Result};
use crate::number::V;
use crate::particulars::Desk;
use crate::quantity::{Count, Mass};
use crate::worked::Worked;

/// The yarn of a colour.
pub(super) struct Dyed {
    pub(super) colour: String,
    /// Ends of the warp, or picks of a piece.
    pub(super) threads: u32,
    /// In kilograms.
    pub(super) mass: f64,
}

/// How the colours of a warp or weft are laid.
pub(super) struct Colours {
    pub(super) laid: Laid,
    pub(super) dyed: Vec<Dyed>,
    /// Ends of both selvedges and their colour.
    pub(super) selvedges: Option<(u32, String)>,
}

fn whole(threads: f64) -> Result<u32> {
    let rounded = threads.round();
    if (1.0..=10_000_000.0).contains(&rounded) {
        return Ok(rounded as u32);
    }
    Err(Error::range(format!("{threads} threads cannot be laid in an order of colours")))
}

impl Article {
    /// Colours of the warp: edges alike, selvedges in their own colour where they have one.
    pub(super) fn warp_dyed<'t>(
        &self,
        work: &Work<Worked<'t>>,
        desk: &Desk<'t>,
    ) -> Result<Option<Colours>> {
        let Some(order) = &self.warp_colours else { return Ok(None) };
        let (ends, ground) = (work.at.ends.value(), work.ground_ends.value());
        let selvedges = match &self.selvedge_colour {
            Some(colour) => Some((whole(ends - ground)?, colour.clone())),
            None => None,
        };
        let laid = order.balanced(whole(if selvedges.is_some() { ground } else { ends })?)?;
        Ok(Some(colours("warp", "ends", laid, selvedges, work.warp_mass, desk)))
    }
    /// Colours of the weft: each piece begins and ends alike.
    pub(super) fn weft_dyed<'t>(
        &self,
        work: &Work<Worked<'t>>,
        desk: &Desk<'t>,
    ) -> Result<Option<Colours>> {
        let Some(order) = &self.weft_colours else { return Ok(None) };
        let laid = order.balanced(whole(work.at.picks.value())?)?;
        Ok(Some(colours("weft", "picks", laid, None, work.weft_mass, desk)))
    }
}

fn colours<'t>(
    system: &str,
    threads: &str,
    laid: Laid,
    selvedges: Option<(u32, String)>,
    mass: Mass<Worked<'t>>,
    desk: &Desk<'t>,
) -> Colours {
    let mut counts: Vec<(String, u32)> =
        laid.counts().into_iter().map(|(colour, n)| (colour.to_owned(), n)).collect();
    if let Some((ends, colour)) = &selvedges {
        let lower = colour.to_lowercase();
        match counts.iter_mut().find(|(c, _)| c.to_lowercase() == lower) {
            Some((_, n)) => *n += ends,
            None => counts.push((colour.clone(), *ends)),
        }
    }
    let all: u32 = counts.iter().map(|(_, n)| n).sum();
    let mut dyed = Vec::new();
    for (colour, n) in counts {
        let key = colour.to_lowercase().replace([' ', '-'], "_");
        let count = Count::from(V::constant(f64::from(n)));
        let words = format!("{threads} of {colour}");
        let count = desk.figure(&format!("{system}_{threads}_{key}"), &words, count);
        let yarn = Mass::from(mass.v() * count.v() / V::constant(f64::from(all)));
        let words = format!("mass of the {system} yarn in {colour}");
        let yarn = desk.figure(&format!("{system}_mass_{key}"), &words, yarn);
        dyed.push(Dyed { colour, threads: n, mass: yarn.value() });
    }
    Colours { laid, dyed, selvedges }
}

/// The order, for a heading.
pub(super) fn heading(system: &str, order: &ColourOrder) -> String {
    format!("Colours of the {system}: {order}")
}
