//! Squared paper: filled squares, lines, numbers along the edges.

use std::fmt::Write as _;

use super::svg::{FONT, INK, Svg, n, width_of};

/// A field of squares, its lower left corner at `x`, `y`.
pub(super) struct Squares {
    pub(super) x: f64,
    pub(super) y: f64,
    /// Side of a square.
    pub(super) side: f64,
    /// Squares across and up.
    pub(super) size: (usize, usize),
    /// After so many squares the repeat begins anew, across and up.
    pub(super) repeat: (usize, usize),
}

/// The side of a square: large where there are few, small but legible where there are many.
pub(super) fn side(most: usize) -> f64 {
    (560.0 / most as f64).clamp(6.0, 22.0)
}

impl Squares {
    pub(super) fn width(&self) -> f64 {
        self.side * self.size.0 as f64
    }
    pub(super) fn height(&self) -> f64 {
        self.side * self.size.1 as f64
    }
    /// The squares, those of `filled` (across, up) in ink, and the lines. The class tells a program
    /// which field it is.
    pub(super) fn draw(&self, svg: &mut Svg, class: &str, filled: impl Fn(usize, usize) -> bool) {
        let mut path = String::new();
        // A gap round each square, so that neighbours can be counted.
        let gap = 0.07 * self.side;
        let s = n(self.side - 2.0 * gap);
        for up in 0..self.size.1 {
            for across in (0..self.size.0).filter(|across| filled(*across, up)) {
                let x = self.x + self.side * across as f64 + gap;
                let y = self.y - self.side * (up + 1) as f64 + gap;
                let _ = write!(path, "M{} {}h{s}v{s}h-{s}z", n(x), n(y));
            }
        }
        svg.raw(&format!("<path class=\"{class}\" d=\"{path}\"/>"));
        // Light lines first, so that the heavy ones lie on them.
        for heavy in [0, 1, 2] {
            for k in (0..=self.size.0).filter(|k| weight(*k, self.size.0, self.repeat.0) == heavy) {
                let x = self.x + self.side * k as f64;
                ruled(svg, heavy, (x, self.y), (x, self.y - self.height()), (0.0, 5.0));
            }
            for k in (0..=self.size.1).filter(|k| weight(*k, self.size.1, self.repeat.1) == heavy) {
                let y = self.y - self.side * k as f64;
                ruled(svg, heavy, (self.x, y), (self.x + self.width(), y), (-5.0, 0.0));
            }
        }
    }
    /// Numbers of the columns, their baseline at `y`.
    pub(super) fn columns(&self, svg: &mut Svg, y: f64) {
        let widest = width_of(&self.repeat.0.to_string(), FONT) + 3.0;
        for (k, number) in labels(self.size.0, self.repeat.0, self.room(widest)) {
            let x = self.x + self.side * (k as f64 + 0.5);
            svg.text((x, y), "middle", FONT, &number.to_string());
        }
    }
    /// The squares that a number takes: more where they are small, for it to be seen whose it is.
    fn room(&self, size: f64) -> f64 {
        if self.side < 12.0 { 1.6 * size / self.side } else { size / self.side }
    }
    /// Numbers of the rows, ending at `x`.
    pub(super) fn rows(&self, svg: &mut Svg, x: f64) {
        for (k, number) in labels(self.size.1, self.repeat.1, self.room(1.15 * FONT)) {
            let y = self.y - self.side * (k as f64 + 0.5) + 0.36 * FONT;
            svg.text((x, y), "end", FONT, &number.to_string());
        }
    }
}

/// A line of a weight. A heavy one has white beside it, so that it is seen among filled squares, and
/// stands out from the field by `out` at its beginning.
fn ruled(svg: &mut Svg, weight: usize, from: (f64, f64), to: (f64, f64), out: (f64, f64)) {
    match weight {
        0 => svg.line(from, to, "#b8b8b8", 0.5),
        1 => svg.line(from, to, "#707070", 0.9),
        _ => {
            svg.line(from, to, "white", 3.4);
            svg.line((from.0 + out.0, from.1 + out.1), to, INK, 1.6);
        }
    }
}

/// How heavy a line is: 2 at the edge and where a repeat begins, 1 every fourth or eighth thread of a
/// longer repeat as on the trade's paper, 0 between.
fn weight(k: usize, size: usize, repeat: usize) -> usize {
    let within = k % repeat;
    let every = if repeat > 24 { 8 } else { 4 };
    if k == size || within == 0 {
        2
    } else {
        usize::from(repeat >= 8 && within.is_multiple_of(every))
    }
}

/// The squares that bear a number, and the number in its repeat: as many as there is room for when
/// one takes `room` squares.
fn labels(size: usize, repeat: usize, room: f64) -> impl Iterator<Item = (usize, usize)> {
    let mut step = 1;
    while (step as f64) < room {
        step *= 2;
    }
    // The first is named too where there is room after the last of the repeat before, and before the
    // next.
    let since = (repeat % step + 1) as f64;
    let spare = step == 1 || ((step - 1) as f64 >= room && (since >= room || repeat == size));
    (0..size).map(move |k| (k, k % repeat + 1)).filter(move |(k, number)| {
        number.is_multiple_of(step)
            || (*number == 1 && (spare || (*k == 0 && (step - 1) as f64 >= room)))
    })
}
