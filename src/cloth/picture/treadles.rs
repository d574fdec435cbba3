//! The draft for a loom with treadles, with its tie-up.

use super::paper::repeat_words;
use super::squares::{Squares, side};
use super::svg::{Svg, TITLE, width_of};
use super::{LEFT, Picture, WORDS};
use crate::cloth::{Draft, Weave};
use crate::error::Result;

impl Weave {
    /// The weave with the draft for it that needs the fewest shafts and treadles, see
    /// [`Draft::treadle_picture`].
    pub fn treadle_picture(
        &self,
        repeats: Option<(usize, usize)>,
        title: Option<&str>,
    ) -> Result<Picture> {
        Draft::of(self).treadle_picture(repeats, Some(&self.draft_title(title)))
    }
}

impl Draft {
    /// The draft for a loom with treadles and what it weaves: threading above, treadling to the right,
    /// tie-up in the corner between them. Shaft 1 is the lowest row, treadle 1 the first column.
    pub fn treadle_picture(
        &self,
        repeats: Option<(usize, usize)>,
        title: Option<&str>,
    ) -> Result<Picture> {
        let ((across, up), (ends, picks)) = self.drawn(repeats)?;
        let repeat = (self.threading().len(), self.treadling().len());
        let (shafts, treadles) = (self.shafts(), self.treadles());
        let title = title.unwrap_or("Draft");
        let side = side((ends + treadles).max(picks + shafts));
        let (top, gap) = (54.0, (0.8 * side).max(8.0));
        let right = LEFT + side * ends as f64 + gap;
        let threading_y = top + side * shafts as f64;
        let field = |x, y, size, repeat| Squares { x, y, side, size, repeat };
        let threading = field(LEFT, threading_y, (ends, shafts), (repeat.0, shafts));
        let tie_up = field(right, threading_y, (treadles, shafts), (treadles, shafts));
        let cloth_y = threading_y + gap + side * picks as f64;
        let cloth = field(LEFT, cloth_y, (ends, picks), repeat);
        let treadling = field(right, cloth_y, (treadles, picks), (treadles, repeat.1));

        let mut svg = Svg::default();
        svg.text((12.0, 22.0), "start", TITLE, title);
        threading.draw(&mut svg, "threading", |end, shaft| self.shaft_of(end) == shaft + 1);
        tie_up.draw(&mut svg, "tie-up", |treadle, shaft| {
            self.tie_up()[treadle].contains(&(shaft + 1))
        });
        treadling.draw(&mut svg, "treadling", |treadle, pick| self.treadle_of(pick) == treadle + 1);
        cloth.draw(&mut svg, "design", |end, pick| self.lifts_on(self.shaft_of(end), pick));
        threading.rows(&mut svg, LEFT - 7.0);
        tie_up.columns(&mut svg, top - 5.0);
        cloth.rows(&mut svg, LEFT - 7.0);
        cloth.columns(&mut svg, cloth_y + 16.0);
        cloth.brackets(&mut svg, 8.0, cloth_y + 22.0);
        let legend = [
            "Filled: end drawn on the shaft (above), treadle raises the shaft (corner), treadle down \
             (right), warp up (design)."
                .to_owned(),
            "Shaft 1 is next to the weaver. A heavier line every eight.".to_owned(),
            repeat_words(&cloth),
        ];
        let wide = (right + treadling.width()).max(WORDS);
        let below = svg.sentences((12.0, cloth_y + 41.0), wide - 12.0, &legend);
        let widest = (wide + 12.0).max(24.0 + width_of(title, 1.1 * TITLE));
        let about = format!(
            "Draft on {shafts} shafts and {treadles} treadles, {across} × {up} repeats of {} ends × {} \
             picks: threading above, tie-up in the corner, treadling to the right, the design below; ends \
             from the left, picks from the bottom, shaft 1 the lowest.",
            repeat.0, repeat.1
        );
        Ok(svg.finish(widest, below, title, &about))
    }
}
