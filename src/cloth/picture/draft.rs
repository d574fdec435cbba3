//! The draft as a mill writes it: the design on point paper, the drawing-in as numbers above it, the
//! lifting plan beside it.

use super::paper::repeat_words;
use super::squares::Squares;
use super::svg::{FONT, Svg, TITLE, n, width_of};
use super::{FEW, LEFT, Picture, WORDS, shown};
use crate::cloth::{Draft, Weave};
use crate::error::Result;

/// More threads than this each way nobody reads.
const MOST: usize = 200;

impl Weave {
    /// The weave with the draft for it that needs the fewest shafts, see [`Draft::picture`].
    pub fn draft_picture(
        &self,
        repeats: Option<(usize, usize)>,
        title: Option<&str>,
    ) -> Result<Picture> {
        Draft::of(self).picture(repeats, Some(&self.draft_title(title)))
    }
    /// The title of a picture of its draft.
    pub(super) fn draft_title(&self, title: Option<&str>) -> String {
        title.map_or_else(|| format!("Draft: {self}"), str::to_owned)
    }
}

impl Draft {
    /// The threads drawn each way, with the repeats that they are of.
    pub(super) fn drawn(
        &self,
        repeats: Option<(usize, usize)>,
    ) -> Result<((usize, usize), (usize, usize))> {
        let repeat = (self.threading().len(), self.treadling().len());
        shown(repeat, repeats, (FEW, FEW), MOST)
    }
    pub(super) fn shaft_of(&self, end: usize) -> usize {
        self.threading()[end % self.threading().len()]
    }
    pub(super) fn treadle_of(&self, pick: usize) -> usize {
        self.treadling()[pick % self.treadling().len()]
    }
    pub(super) fn lifts_on(&self, shaft: usize, pick: usize) -> bool {
        self.tie_up()[self.treadle_of(pick) - 1].contains(&shaft)
    }

    /// The draft as a mill writes it: the design on point paper ruled in eights, above it the shaft on
    /// which each end is drawn, beside it the lifting plan, a column a shaft and a row a pick. For a
    /// loom with treadles see [`Draft::treadle_picture`].
    pub fn picture(&self, repeats: Option<(usize, usize)>, title: Option<&str>) -> Result<Picture> {
        let ((across, up), (ends, picks)) = self.drawn(repeats)?;
        let (shafts, repeat) = (self.shafts(), (self.threading().len(), self.treadling().len()));
        let title = title.unwrap_or("Draft");
        // Each square is as high as a number that lies on its side.
        let side = (560.0 / (ends + shafts).max(picks) as f64).clamp(11.0, 22.0);
        let widest = width_of(&shafts.to_string(), FONT);
        let turned = widest + 3.0 > side;
        let strip = side.max(if turned { widest + 6.0 } else { 0.0 });
        let (top, gap) = (52.0, (0.8 * side).max(12.0));
        let bottom = top + strip + 6.0 + side * picks as f64;
        let right = LEFT + side * ends as f64 + gap;
        let design = Squares { x: LEFT, y: bottom, side, size: (ends, picks), repeat };
        let plan = Squares {
            x: right,
            y: bottom,
            side,
            size: (shafts, picks),
            repeat: (shafts, repeat.1),
        };

        let mut svg = Svg::default();
        svg.text((12.0, 22.0), "start", TITLE, title);
        svg.text((LEFT, top - 6.0), "start", FONT, "drawing-in");
        svg.raw("<g class=\"drawing-in\">");
        for end in 0..ends {
            let x = LEFT + side * (end as f64 + 0.5);
            let shaft = self.shaft_of(end).to_string();
            if turned {
                let (x, y) = (n(x + 0.36 * FONT), n(top + strip - 3.0));
                svg.raw(&format!(
                    "<text x=\"{x}\" y=\"{y}\" font-size=\"{FONT}\" \
                     transform=\"rotate(-90 {x} {y})\">{shaft}</text>"
                ));
            } else {
                svg.text((x, top + 0.5 * strip + 0.36 * FONT), "middle", FONT, &shaft);
            }
        }
        svg.raw("</g>");
        design.draw(&mut svg, "design", |end, pick| self.lifts_on(self.shaft_of(end), pick));
        // Above the plan is room beside the numbers; where the plan is at the height of the word
        // before it, the word would run into it.
        svg.text((right, top + strip), "start", FONT, "lifting plan");
        plan.draw(&mut svg, "lifting-plan", |shaft, pick| self.lifts_on(shaft + 1, pick));
        design.rows(&mut svg, LEFT - 7.0);
        design.columns(&mut svg, bottom + 16.0);
        plan.columns(&mut svg, bottom + 16.0);
        design.brackets(&mut svg, 8.0, bottom + 22.0);
        let legend = [
            "Numbers above: the shaft on which each end is drawn; shaft 1 is next to the weaver."
                .to_owned(),
            "Filled: warp up in the design, shaft lifted in the plan. A heavier line every eight."
                .to_owned(),
            repeat_words(&design),
        ];
        let wide = (right + plan.width().max(width_of("lifting plan", FONT))).max(WORDS);
        let below = svg.sentences((12.0, bottom + 41.0), wide - 12.0, &legend);
        let widest = (wide + 12.0).max(24.0 + width_of(title, 1.1 * TITLE));
        let about = format!(
            "Draft on {shafts} shafts, {across} × {up} repeats of {} ends × {} picks: the design on \
             point paper, the shaft of each end as a number above it, the lifting plan on its right, a \
             column a shaft; ends from the left, picks from the bottom, shaft 1 the first column.",
            repeat.0, repeat.1
        );
        Ok(svg.finish(widest, below, title, &about))
    }
}
