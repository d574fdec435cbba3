//! A simulated face of the cloth: threads in their colours, as thick and as far apart as they are.

use std::fmt::Write as _;

use super::colours::Colour;
use super::svg::{FONT, INK, Svg, TITLE, n, width_of};
use super::{Picture, shown};
use crate::cloth::{ColourOrder, Weave};
use crate::error::{Error, Result};
use crate::quantity::print;
use crate::quantity::{Diameter, LinearDensity, Sett, SpecificVolume};
use crate::yarn::yarn_diameter;

/// More threads than this each way are too thin to be seen.
const MOST: usize = 240;
/// Threads that are shown at least.
const FEW: usize = 24;
/// Least and most pixels from thread to thread.
const PITCH: (f64, f64) = (5.0, 26.0);
/// Size aimed at, in pixels.
const SIZE: f64 = 620.0;
/// Share of the spacing that a thread fills of which no diameter is known.
const FILLED: f64 = 0.8;

/// The threads of one direction.
#[derive(Clone, Debug, Default)]
pub struct Threads {
    /// Their colours; None for a light warp and a dark weft.
    pub colours: Option<ColourOrder>,
    /// Their sett; None for threads as far apart as those of the other direction.
    pub sett: Option<Sett<f64>>,
    /// Their diameter; None to have it from the count, or four fifths of the spacing without one.
    pub diameter: Option<Diameter<f64>>,
    /// Their count.
    pub count: Option<LinearDensity<f64>>,
    /// What a gram of the yarn fills, for the diameter; None for wool packed to 0.65, from memory.
    pub volume: Option<SpecificVolume<f64>>,
}

/// What a gram of worsted-spun wool fills, in cm³: 1.31 g/cm³ packed to 0.65, from memory.
const WOOL: f64 = 1.0 / (0.65 * 1.31);

/// What a face is drawn from.
#[derive(Clone, Debug, Default)]
pub struct Face {
    /// The warp.
    pub warp: Threads,
    /// The weft.
    pub weft: Threads,
    /// Repeats of weave and colours together, across and up; None for as many as show the cloth.
    pub repeats: Option<(usize, usize)>,
    /// The title; None for the name of the weave.
    pub title: Option<String>,
}

/// The threads of one direction as they are drawn: in pixels.
struct Laid {
    colours: Vec<Colour>,
    threads: usize,
    pitch: f64,
    width: f64,
}

/// The same in millimetres, where anything is known; else in spacings.
struct Size {
    spacing: f64,
    diameter: f64,
}

impl Threads {
    fn colours(&self, other: Colour) -> Result<Vec<Colour>> {
        let Some(order) = &self.colours else { return Ok(vec![other]) };
        order.sequence().into_iter().map(Colour::parse).collect()
    }
    /// The diameter in millimetres, given or from the count.
    fn thickness(&self) -> Option<f64> {
        let by_count = || {
            let volume = self.volume.unwrap_or(SpecificVolume::base(WOOL));
            self.count.map(|count| yarn_diameter(volume, count))
        };
        self.diameter.or_else(by_count).map(Diameter::value)
    }
    fn size(&self, other: &Threads, what: &str) -> Result<Size> {
        // Without any sett the picture has no scale; its threads are one spacing apart.
        let sett = self.sett.or(other.sett);
        let spacing = match sett.map(Sett::value) {
            Some(sett) if sett > 0.0 && sett.is_finite() => 10.0 / sett,
            Some(_) => {
                return Err(Error::range(format!("the {what} has no sett that can be drawn")));
            }
            None => 1.0,
        };
        let diameter = match self.thickness() {
            Some(d) if sett.is_none() => {
                return Err(Error::notation(format!(
                    "a diameter of {} for the {what} says nothing without a sett; give the ends or the \
                     picks too, such as '10 ends/cm'",
                    print::with_unit(d, "mm")
                )));
            }
            Some(d) => d,
            None => FILLED * spacing,
        };
        if diameter > 3.0 * spacing || diameter < 0.02 * spacing {
            return Err(Error::range(format!(
                "threads of {} every {} in the {what} cannot be drawn: a diameter is between a \
                 fiftieth and three times the spacing; look at its unit and that of the sett",
                print::with_unit(diameter, "mm"),
                print::with_unit(spacing, "mm")
            )));
        }
        Ok(Size { spacing, diameter })
    }
    /// How the legend tells of them.
    fn words(&self, what: &str, default: &str) -> String {
        let mut words = match &self.colours {
            Some(order) if order.threads() == 1 => format!("{what}: {}", order.colours()[0]),
            Some(order) => format!("{what}: {order}"),
            None => format!("{what}: {default}"),
        };
        if let Some(sett) = self.sett {
            let _ = write!(words, "; {}", print::with_unit(sett.value(), "threads/cm"));
        }
        if let Some(count) = self.count {
            let _ = write!(words, "; {}", print::with_unit(count.value(), "tex"));
        }
        match self.thickness() {
            Some(d) => {
                let _ = write!(words, "; {} thick", print::with_unit(d, "mm"));
            }
            None => words.push_str("; thickness not given"),
        }
        if let (Some(_), None) = (self.count, self.diameter) {
            let (volume, whose) = match self.volume {
                Some(v) => (v.value(), ""),
                None => (WOOL, " (wool, from memory)"),
            };
            let _ = write!(words, " at {}{whose}", print::with_unit(volume, "cm³/g"));
        }
        words
    }
}

const WARP: Colour = Colour([0xf0, 0xe0, 0xbc]);
const WEFT: Colour = Colour([0x7a, 0x4e, 0x2d]);
/// Light between the threads: lighter than any thread that lies deep.
const BEHIND: Colour = Colour([0xdd, 0xdd, 0xdd]);

impl Weave {
    /// The face of the cloth, seen from above.
    pub fn face(&self, face: &Face) -> Result<Picture> {
        let warp_colours = face.warp.colours(WARP)?;
        let weft_colours = face.weft.colours(WEFT)?;
        let repeat = (lcm(self.ends(), warp_colours.len()), lcm(self.picks(), weft_colours.len()));
        let (across, up) =
            (face.warp.size(&face.weft, "warp")?, face.weft.size(&face.warp, "weft")?);
        // As much of the closer threads as shows about a square of cloth.
        let few = |size: &Size, other: &Size| {
            let times = (other.spacing / size.spacing).clamp(1.0, 4.0);
            (FEW as f64 * times) as usize
        };
        let few = (few(&across, &up), few(&up, &across));
        let (_, (ends, picks)) = shown(repeat, face.repeats, few, MOST)?;
        let (wide, high) = (across.spacing * ends as f64, up.spacing * picks as f64);
        let closest = across.spacing.min(up.spacing);
        let scale = (SIZE / wide.max(high)).clamp(PITCH.0 / closest, PITCH.1 / closest);
        let laid = |size: &Size, threads, colours| Laid {
            colours,
            threads,
            pitch: size.spacing * scale,
            width: size.diameter * scale,
        };
        let warp = laid(&across, ends, warp_colours);
        let weft = laid(&up, picks, weft_colours);

        let title = face.title.clone().unwrap_or_else(|| self.to_string());
        let (w, h) = (wide * scale, high * scale);
        let (left, top) = (12.0, 36.0);
        let mut svg = Svg::default();
        svg.text((left, 22.0), "start", TITLE, &title);
        // A picture within the picture cuts off what runs over its edge.
        svg.raw(&format!(
            "<svg class=\"cloth\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" overflow=\"hidden\">",
            n(left),
            n(top),
            n(w),
            n(h)
        ));
        self.threads(&mut svg, &warp, &weft, (w, h));
        svg.raw("</svg>");
        let mut y = top + h + 20.0;
        let scaled = face.warp.sett.or(face.weft.sett).is_some();
        if scaled {
            let bar = bar(w / 3.0 / scale);
            let end = left + bar * scale;
            svg.line((left, y), (end, y), INK, 2.0);
            svg.line((left, y - 4.0), (left, y + 4.0), INK, 1.5);
            svg.line((end, y - 4.0), (end, y + 4.0), INK, 1.5);
            svg.text((end + 6.0, y + 4.0), "start", FONT, &format!("{} mm", print::figure(bar)));
        } else {
            svg.text((left, y + 4.0), "start", FONT, "no scale: no sett was given");
        }
        let words = [
            face.warp.words("warp", "light, colour not given"),
            face.weft.words("weft", "dark, colour not given"),
        ];
        let mut widest = (w + 2.0 * left).max(2.0 * left + width_of(&title, 1.1 * TITLE));
        for line in &words {
            y += 17.0;
            svg.text((left, y + 4.0), "start", FONT, line);
            widest = widest.max(2.0 * left + width_of(line, FONT));
        }
        let about = format!(
            "Simulated face of {title}, {ends} ends × {picks} picks seen from above; {}; {}.",
            words[0], words[1]
        );
        Ok(svg.finish(widest, y + 16.0, &title, &about))
    }

    /// Below all the threads as they lie deep, above them the floats of the weft, then of the warp.
    fn threads(&self, svg: &mut Svg, warp: &Laid, weft: &Laid, (w, h): (f64, f64)) {
        svg.raw(&format!(
            "<rect width=\"{}\" height=\"{}\" fill=\"{}\"/>",
            n(w),
            n(h),
            BEHIND.hex()
        ));
        let x = |end: usize| warp.pitch * (end as f64 + 0.5);
        let y = |pick: usize| h - weft.pitch * (pick as f64 + 0.5);
        for (laid, class, place, far) in
            [(warp, "warp", &x as &dyn Fn(usize) -> f64, h), (weft, "weft", &y, w)]
        {
            svg.raw(&format!("<g class=\"{class} deep\">"));
            for thread in 0..laid.threads {
                let from = place(thread) - laid.width / 2.0;
                let (x, y, w, h) = match class {
                    "warp" => (from, 0.0, laid.width, far),
                    _ => (0.0, from, far, laid.width),
                };
                let colour = laid.colours[thread % laid.colours.len()].deep().hex();
                svg.raw(&format!(
                    "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" fill=\"{colour}\"/>",
                    n(x),
                    n(y),
                    n(w),
                    n(h)
                ));
            }
            svg.raw("</g>");
        }
        for pick in 0..weft.threads {
            let runs = runs(|end| !self.is_up(end, pick), warp.threads);
            let float = |from: isize, to: isize| (warp.pitch * from as f64, warp.pitch * to as f64);
            let at = Lie { centre: y(pick), across: true, reach: warp.pitch };
            at.draw(svg, "weft", weft, pick, runs.iter().map(|(from, to)| float(*from, *to)));
        }
        for end in 0..warp.threads {
            let runs = runs(|pick| self.is_up(end, pick), weft.threads);
            let float =
                |from: isize, to: isize| (h - weft.pitch * to as f64, h - weft.pitch * from as f64);
            let at = Lie { centre: x(end), across: false, reach: weft.pitch };
            at.draw(svg, "warp", warp, end, runs.iter().map(|(from, to)| float(*from, *to)));
        }
    }
}

/// Where floats begin and end: runs of threads that are passed over. One that goes on past the edge of
/// the picture is drawn past it.
fn runs(over: impl Fn(usize) -> bool, threads: usize) -> Vec<(isize, isize)> {
    let mut all = Vec::new();
    let mut from = None;
    for k in 0..threads {
        match (over(k), from) {
            (true, None) => from = Some(k),
            (false, Some(start)) => {
                all.push((start.cast_signed(), k.cast_signed()));
                from = None;
            }
            _ => {}
        }
    }
    if let Some(start) = from {
        all.push((start.cast_signed(), threads.cast_signed()));
    }
    // Whole repeats are drawn: before the first thread is the last.
    if over(0) && over(threads - 1) {
        if let Some(first) = all.first_mut() {
            first.0 -= 1;
        }
        if let Some(last) = all.last_mut() {
            last.1 += 1;
        }
    }
    all
}

/// How a thread lies: its middle line, across or up, and how far the next thread across it is.
struct Lie {
    centre: f64,
    across: bool,
    reach: f64,
}

impl Lie {
    /// Its floats, rounded off where they go down, with light on one side and shade on the other.
    fn draw(
        &self,
        svg: &mut Svg,
        class: &str,
        laid: &Laid,
        thread: usize,
        floats: impl Iterator<Item = (f64, f64)>,
    ) {
        let colour = laid.colours[thread % laid.colours.len()];
        let half = laid.width / 2.0;
        let round = (0.45 * self.reach).min(0.9 * laid.width);
        let (mut body, mut light, mut shade) = (String::new(), String::new(), String::new());
        for (from, to) in floats {
            let (c, a, b) = (self.centre, from, to);
            let points = [
                (c - half, a + round),
                (c - half, a),
                (c, a),
                (c + half, a),
                (c + half, a + round),
                (c + half, b - round),
                (c + half, b),
                (c, b),
                (c - half, b),
                (c - half, b - round),
            ];
            let p = points.map(|(x, along)| self.point(x, along));
            let _ = write!(
                body,
                "M{}Q{} {}Q{} {}L{}Q{} {}Q{} {}Z",
                p[0], p[1], p[2], p[3], p[4], p[5], p[6], p[7], p[8], p[9]
            );
            let inset = 0.5 * round;
            for (line, off) in [(&mut light, -0.22), (&mut shade, 0.27)] {
                let x = c + off * laid.width;
                let (from, to) = (self.point(x, a + inset), self.point(x, b - inset));
                let _ = write!(line, "M{from}L{to}");
            }
        }
        if body.is_empty() {
            return;
        }
        let stroke = (0.07 * laid.width).clamp(0.4, 1.5);
        svg.raw(&format!(
            "<path class=\"{class}\" d=\"{body}\" fill=\"{}\" stroke=\"{}\" stroke-width=\"{}\"/>",
            colour.hex(),
            colour.edge().hex(),
            n(stroke)
        ));
        for (line, stroke, opacity) in [(light, "white", 0.3), (shade, "black", 0.2)] {
            svg.raw(&format!(
                "<path d=\"{line}\" stroke=\"{stroke}\" stroke-opacity=\"{opacity}\" \
                 stroke-width=\"{}\" stroke-linecap=\"round\"/>",
                n(0.2 * laid.width)
            ));
        }
    }
    fn point(&self, across: f64, along: f64) -> String {
        let (x, y) = if self.across { (along, across) } else { (across, along) };
        format!("{} {}", n(x), n(y))
    }
}

/// A round length of the scale bar, at most so many millimetres.
fn bar(most: f64) -> f64 {
    let power = 10.0_f64.powf(most.log10().floor());
    [5.0, 2.0, 1.0].into_iter().map(|k| k * power).find(|b| *b <= most).unwrap_or(power)
}

/// The least number of threads that both repeat in.
fn lcm(a: usize, b: usize) -> usize {
    let (mut x, mut y) = (a, b);
    while y != 0 {
        (x, y) = (y, x % y);
    }
    a / x * b
}
