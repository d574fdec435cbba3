//! Point paper.

use super::squares::{Squares, side};
use super::svg::{Svg, TITLE, width_of};
use super::{FEW, LEFT, Picture, WORDS, shown};
use crate::cloth::Weave;
use crate::error::Result;

/// More threads than this each way nobody reads.
const MOST: usize = 256;

impl Weave {
    /// The weave on point paper: filled where the warp is up, ends numbered from the left, picks from
    /// the bottom, a heavier line every eight, a bracket round the repeat. Repeats across and up; None
    /// for one, or for several of a small weave.
    pub fn point_paper(
        &self,
        repeats: Option<(usize, usize)>,
        title: Option<&str>,
    ) -> Result<Picture> {
        let ((across, up), (ends, picks)) =
            shown((self.ends(), self.picks()), repeats, (FEW, FEW), MOST)?;
        let title = title.map_or_else(|| self.to_string(), str::to_owned);
        let side = side(ends.max(picks));
        let top = 40.0;
        let paper = Squares {
            x: LEFT,
            y: top + side * picks as f64,
            side,
            size: (ends, picks),
            repeat: (self.ends(), self.picks()),
        };
        let mut svg = Svg::default();
        svg.text((12.0, 22.0), "start", TITLE, &title);
        paper.draw(&mut svg, "design", |end, pick| self.is_up(end, pick));
        paper.columns(&mut svg, paper.y + 16.0);
        paper.rows(&mut svg, LEFT - 7.0);
        paper.brackets(&mut svg, 8.0, paper.y + 22.0);
        let legend =
            ["Filled: warp up. A heavier line every eight.".to_owned(), repeat_words(&paper)];
        let wide = (LEFT + paper.width()).max(WORDS);
        let below = svg.sentences((12.0, paper.y + 41.0), wide - 12.0, &legend);
        let widest = (wide + 12.0).max(24.0 + width_of(&title, 1.1 * TITLE));
        let about = format!(
            "Point paper of {across} × {up} repeats of {} ends × {} picks: ends numbered from the left, \
             picks from the bottom, filled where the warp is up, a heavier line every eight.",
            self.ends(),
            self.picks()
        );
        Ok(svg.finish(widest, below, &title, &about))
    }
}

/// What the legend says of the repeat.
pub(super) fn repeat_words(paper: &Squares) -> String {
    let (ends, picks) = paper.repeat;
    let what = if paper.size == paper.repeat { "One repeat" } else { "Bracket: one repeat" };
    format!("{what}, {ends} ends × {picks} picks.")
}
