//! The draft as the loom is set by it.

use super::squares::{Squares, side};
use super::svg::{FONT, Svg, TITLE, width_of};
use super::{FEW, Picture, paper::sample, shown};
use crate::cloth::{Draft, Weave};
use crate::error::Result;

/// More threads than this each way nobody reads.
const MOST: usize = 200;

impl Weave {
    /// The weave with the draft for it that needs the fewest shafts and treadles, see
    /// [`Draft::picture`].
    pub fn draft_picture(
        &self,
        repeats: Option<(usize, usize)>,
        title: Option<&str>,
    ) -> Result<Picture> {
        let title = title.map_or_else(|| format!("Draft: {self}"), str::to_owned);
        Draft::of(self).picture(repeats, Some(&title))
    }
}

impl Draft {
    /// The draft and what it weaves: threading above, treadling to the right, tie-up in the corner
    /// between them. Shaft 1 is the lowest row, treadle 1 the first column.
    pub fn picture(&self, repeats: Option<(usize, usize)>, title: Option<&str>) -> Result<Picture> {
        let repeat = (self.threading().len(), self.treadling().len());
        let ((across, up), (ends, picks)) = shown(repeat, repeats, (FEW, FEW), MOST)?;
        let (shafts, treadles) = (self.shafts(), self.treadles());
        let title = title.unwrap_or("Draft");
        let shaft_of = |end: usize| self.threading()[end % repeat.0];
        let treadle_of = |pick: usize| self.treadling()[pick % repeat.1];
        let side = side((ends + treadles).max(picks + shafts));
        let (left, top, gap) = (36.0, 54.0, (0.8 * side).max(8.0));
        let right = left + side * ends as f64 + gap;
        let threading_y = top + side * shafts as f64;
        let field = |x, y, size, repeat| Squares { x, y, side, size, repeat };
        let threading = field(left, threading_y, (ends, shafts), (repeat.0, shafts));
        let tie_up = field(right, threading_y, (treadles, shafts), (treadles, shafts));
        let cloth_y = threading_y + gap + side * picks as f64;
        let cloth = field(left, cloth_y, (ends, picks), repeat);
        let treadling = field(right, cloth_y, (treadles, picks), (treadles, repeat.1));

        let mut svg = Svg::default();
        svg.text((12.0, 22.0), "start", TITLE, title);
        threading.draw(&mut svg, "threading", |end, shaft| shaft_of(end) == shaft + 1);
        tie_up.draw(&mut svg, "tie-up", |treadle, shaft| {
            self.tie_up()[treadle].contains(&(shaft + 1))
        });
        treadling.draw(&mut svg, "treadling", |treadle, pick| treadle_of(pick) == treadle + 1);
        cloth.draw(&mut svg, "up", |end, pick| {
            self.tie_up()[treadle_of(pick) - 1].contains(&shaft_of(end))
        });
        threading.rows(&mut svg, left - 7.0);
        tie_up.columns(&mut svg, top - 5.0);
        cloth.rows(&mut svg, left - 7.0);
        cloth.columns(&mut svg, cloth_y + 16.0);
        let below = cloth_y + 38.0;
        svg.raw(&sample(12.0, below - 9.0));
        let legend = [
            "filled: end drawn on the shaft (above), treadle raises the shaft (corner),",
            "treadle down (right), warp up (cloth)",
        ];
        svg.text((27.0, below), "start", FONT, legend[0]);
        svg.text((27.0, below + 15.0), "start", FONT, legend[1]);
        let widest = (right + treadling.width() + 12.0)
            .max(36.0 + width_of(legend[0], FONT))
            .max(24.0 + width_of(title, 1.1 * TITLE));
        let about = format!(
            "Draft on {shafts} shafts and {treadles} treadles, {across} × {up} repeats of {} ends × {} \
             picks: threading above, tie-up in the corner, treadling to the right, the cloth below; ends \
             from the left, picks from the bottom, shaft 1 the lowest.",
            repeat.0, repeat.1
        );
        Ok(svg.finish(widest, below + 27.0, title, &about))
    }
}
