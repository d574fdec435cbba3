//! Squared paper as a mill rules it: filled squares, a heavier line every eight, numbers along the
//! edges.

use std::fmt::Write as _;

use super::svg::{FONT, INK, Svg, n, width_of};

/// Threads from one heavier line to the next.
const EIGHT: usize = 8;

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
        svg.raw(&format!("<g class=\"{class}\">"));
        // A gap round each square, so that neighbours can be counted.
        let path = self.path(0.07 * self.side, filled);
        svg.raw(&format!("<path class=\"filled\" d=\"{path}\"/>"));
        self.rule(svg);
        svg.raw("</g>");
    }
    /// The squares of `filled` (across, up) as a path, each smaller by a gap on every side.
    pub(super) fn path(&self, gap: f64, filled: impl Fn(usize, usize) -> bool) -> String {
        let mut path = String::new();
        let s = n(self.side - 2.0 * gap);
        for up in 0..self.size.1 {
            for across in (0..self.size.0).filter(|across| filled(*across, up)) {
                let x = self.x + self.side * across as f64 + gap;
                let y = self.y - self.side * (up + 1) as f64 + gap;
                let _ = write!(path, "M{} {}h{s}v{s}h-{s}z", n(x), n(y));
            }
        }
        path
    }
    /// The lines: a light one between squares, a heavier one every eight, counted from the lower left
    /// corner, and a frame.
    pub(super) fn rule(&self, svg: &mut Svg) {
        let (right, top) = (self.x + self.width(), self.y - self.height());
        let (mut light, mut eights) = (String::new(), String::new());
        for k in 0..=self.size.0 {
            let path = if k.is_multiple_of(EIGHT) { &mut eights } else { &mut light };
            let x = n(self.x + self.side * k as f64);
            let _ = write!(path, "M{x} {}V{}", n(self.y), n(top));
        }
        for k in 0..=self.size.1 {
            let path = if k.is_multiple_of(EIGHT) { &mut eights } else { &mut light };
            let y = n(self.y - self.side * k as f64);
            let _ = write!(path, "M{} {y}H{}", n(self.x), n(right));
        }
        // White beside a heavy line shows it among filled squares.
        for (class, path, stroke, width) in [
            ("light", &light, "#a8a8a8", 0.6),
            ("beside", &eights, "white", 3.6),
            ("eights", &eights, INK, 1.8),
        ] {
            svg.raw(&format!(
                "<path class=\"{class}\" d=\"{path}\" fill=\"none\" stroke=\"{stroke}\" \
                 stroke-width=\"{width}\"/>"
            ));
        }
        svg.raw(&format!(
            "<rect class=\"frame\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" fill=\"none\" \
             stroke=\"{INK}\" stroke-width=\"0.9\"/>",
            n(self.x),
            n(top),
            n(self.width()),
            n(self.height())
        ));
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
    /// A bracket round the first repeat, below at `y` and on the left at `x`, each where more than one
    /// repeat is shown.
    pub(super) fn brackets(&self, svg: &mut Svg, x: f64, y: f64) {
        if self.repeat.0 < self.size.0 {
            let (from, to) = (n(self.x + 1.0), n(self.x + self.side * self.repeat.0 as f64 - 1.0));
            svg.bracket(&format!("M{from} {}V{}H{to}V{}", n(y - 4.0), n(y), n(y - 4.0)));
        }
        if self.repeat.1 < self.size.1 {
            let (from, to) = (n(self.y - 1.0), n(self.y - self.side * self.repeat.1 as f64 + 1.0));
            svg.bracket(&format!("M{} {from}H{}V{to}H{}", n(x + 4.0), n(x), n(x + 4.0)));
        }
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
