//! Colours of warp and weft: how they are laid, and the yarn of each.

use super::inputs::Article;
use super::layout::Layout;
use crate::calculation::{Check, Results};
use crate::cloth::{ColourOrder, Laid};
use crate::error::{Error, Result};
use crate::number::{Number, V};
use crate::quantity::{Count, Fraction, Mass};

/// The warp of a colour.
#[derive(Clone, Debug, Results)]
pub struct WarpColour<N> {
    #[label]
    pub(super) colour: String,
    /// ends of the colour
    #[head = "ends"]
    pub warp_ends: Count<N>,
    /// share of the ends
    #[head = "share"]
    pub warp_share: Fraction<N>,
    /// warp yarn in the colour
    #[head = "yarn"]
    pub warp_colour_mass: Mass<N>,
}

/// The weft of a colour.
#[derive(Clone, Debug, Results)]
pub struct WeftColour<N> {
    #[label]
    pub(super) colour: String,
    /// picks of the colour in a piece
    #[head = "picks"]
    pub weft_picks: Count<N>,
    /// share of the picks
    #[head = "share"]
    pub weft_share: Fraction<N>,
    /// weft yarn in the colour
    #[head = "yarn"]
    pub weft_colour_mass: Mass<N>,
}

fn whole(threads: f64) -> Result<u32> {
    let rounded = threads.round();
    if (1.0..=10_000_000.0).contains(&rounded) {
        return Ok(rounded as u32);
    }
    Err(Error::range(format!("{threads} threads cannot be laid in an order of colours")))
}

/// How the colours of a system are laid, and the threads of both selvedges in a colour of their own.
struct Order {
    laid: Laid,
    selvedges: Option<(u32, String)>,
}

/// Colours of the warp: edges alike, selvedges in their own colour where they have one.
fn warp_order<N: Number>(article: &Article<N>, at: &Layout<N>) -> Result<Option<Order>> {
    let Some(order) = &article.warp_colours else { return Ok(None) };
    let order: ColourOrder = order.parse()?;
    let own = article.selvedges.as_ref().and_then(|s| s.selvedge_colour.as_ref());
    let ground = at.selvedges.as_ref().map_or(at.ends, |selvedges| selvedges.ground_ends);
    let (ends, ground) = (at.ends.value(), ground.value());
    let selvedges = match own {
        Some(colour) => Some((whole(ends - ground)?, colour.trim().to_owned())),
        None => None,
    };
    let laid = order.balanced(whole(if selvedges.is_some() { ground } else { ends })?)?;
    Ok(Some(Order { laid, selvedges }))
}

/// Colours of the weft: each piece begins and ends alike.
fn weft_order<N: Number>(article: &Article<N>, at: &Layout<N>) -> Result<Option<Order>> {
    let Some(order) = &article.weft_colours else { return Ok(None) };
    let order: ColourOrder = order.parse()?;
    let laid = order.balanced(whole(at.picks_per_piece.value())?)?;
    Ok(Some(Order { laid, selvedges: None }))
}

impl Order {
    /// Threads of each colour.
    fn counts(&self) -> Vec<(String, u32)> {
        let laid = self.laid.counts().into_iter();
        let mut counts: Vec<(String, u32)> =
            laid.map(|(colour, n)| (colour.to_owned(), n)).collect();
        if let Some((ends, colour)) = &self.selvedges {
            let lower = colour.to_lowercase();
            match counts.iter_mut().find(|(c, _)| c.to_lowercase() == lower) {
                Some((_, n)) => *n += ends,
                None => counts.push((colour.clone(), *ends)),
            }
        }
        counts
    }
    /// Threads of each colour, their share and the yarn of each.
    fn dyed<N: Number>(
        &self,
        mass: Mass<N>,
    ) -> impl Iterator<Item = (String, Count<N>, Fraction<N>, Mass<N>)> {
        let counts = self.counts();
        let all: u32 = counts.iter().map(|(_, n)| n).sum();
        counts.into_iter().map(move |(colour, n)| {
            let (count, all) = (V::constant(f64::from(n)), V::constant(f64::from(all)));
            let yarn = Mass::from(mass.v() * count / all);
            (colour, Count::from(count), Fraction::from(count / all), yarn)
        })
    }
    fn words(&self, threads: &str) -> String {
        let words = self.laid.words(threads);
        match &self.selvedges {
            Some((ends, colour)) => {
                format!("{words} Selvedges beside them: {ends} ends of {colour} in all.")
            }
            None => words,
        }
    }
}

/// The warp yarn of each colour; none where no colours are given, or none that can be laid.
pub(super) fn warp<N: Number>(
    article: &Article<N>,
    at: &Layout<N>,
    mass: Mass<N>,
) -> Option<Vec<WarpColour<N>>> {
    let order = warp_order(article, at).ok()??;
    let row = |(colour, warp_ends, warp_share, warp_colour_mass)| WarpColour {
        colour,
        warp_ends,
        warp_share,
        warp_colour_mass,
    };
    Some(order.dyed(mass).map(row).collect())
}

/// The weft yarn of each colour.
pub(super) fn weft<N: Number>(
    article: &Article<N>,
    at: &Layout<N>,
    mass: Mass<N>,
) -> Option<Vec<WeftColour<N>>> {
    let order = weft_order(article, at).ok()??;
    let row = |(colour, weft_picks, weft_share, weft_colour_mass)| WeftColour {
        colour,
        weft_picks,
        weft_share,
        weft_colour_mass,
    };
    Some(order.dyed(mass).map(row).collect())
}

pub(super) const WARP_COLOURS: &str = "Colours of the warp";
pub(super) const WEFT_COLOURS: &str = "Colours of the weft";

/// Refuses what is not an order of colours; says how the colours are laid.
pub(super) fn check(article: &Article<f64>, at: &Layout<f64>, check: &mut Check<'_>) -> Result<()> {
    let own = article.selvedges.as_ref().and_then(|s| s.selvedge_colour.as_ref());
    if let Some(colour) = own.map(|colour| colour.trim())
        && !colour.starts_with(|c: char| c.is_alphabetic() || c == '#')
    {
        return Err(Error::notation(format!(
            "selvedge_colour: '{colour}' is not a colour; write one such as 'grey' (the ends are \
             selvedge_ends)"
        )));
    }
    if let Some(order) = warp_order(article, at).map_err(|e| e.at("warp_colours"))? {
        check.note(WARP_COLOURS, order.words("ends"));
    }
    if let Some(order) = weft_order(article, at).map_err(|e| e.at("weft_colours"))? {
        check.note(WEFT_COLOURS, order.words("picks"));
    }
    Ok(())
}
