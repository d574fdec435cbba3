//! Point paper.

use super::squares::{Squares, side};
use super::svg::{FONT, Svg, TITLE, width_of};
use super::{FEW, Picture, shown};
use crate::cloth::Weave;
use crate::error::Result;

/// More threads than this each way nobody reads.
const MOST: usize = 256;

impl Weave {
    /// The weave on point paper: filled where the warp is up, ends numbered from the left, picks from
    /// the bottom, a heavy line at every repeat. Repeats across and up; None for one, or for several of
    /// a small weave.
    pub fn point_paper(
        &self,
        repeats: Option<(usize, usize)>,
        title: Option<&str>,
    ) -> Result<Picture> {
        let ((across, up), (ends, picks)) =
            shown((self.ends(), self.picks()), repeats, (FEW, FEW), MOST)?;
        let title = title.map_or_else(|| self.to_string(), str::to_owned);
        let side = side(ends.max(picks));
        let (left, top) = (36.0, 40.0);
        let paper = Squares {
            x: left,
            y: top + side * picks as f64,
            side,
            size: (ends, picks),
            repeat: (self.ends(), self.picks()),
        };
        let mut svg = Svg::default();
        svg.text((12.0, 22.0), "start", TITLE, &title);
        paper.draw(&mut svg, "up", |end, pick| self.is_up(end, pick));
        paper.columns(&mut svg, paper.y + 16.0);
        paper.rows(&mut svg, left - 7.0);
        let legend =
            format!("heavy lines: repeat of {} ends × {} picks", self.ends(), self.picks());
        let below = paper.y + 38.0;
        svg.raw(&sample(12.0, below - 9.0));
        svg.text((27.0, below), "start", FONT, "filled: warp up");
        svg.text((12.0, below + 16.0), "start", FONT, &legend);
        let widest = (left + paper.width() + 12.0)
            .max(24.0 + width_of(&legend, FONT))
            .max(24.0 + width_of(&title, 1.1 * TITLE));
        let about = format!(
            "Point paper of {across} × {up} repeats of {} ends × {} picks: ends numbered from the left, \
             picks from the bottom, filled where the warp is up.",
            self.ends(),
            self.picks()
        );
        Ok(svg.finish(widest, below + 28.0, &title, &about))
    }
}

/// A filled square for the legend.
pub(super) fn sample(x: f64, y: f64) -> String {
    format!("<rect x=\"{x}\" y=\"{y}\" width=\"10\" height=\"10\"/>")
}
