//! The face of a cloth to scale: distances, thicknesses, colours and crossings are measured in the SVG.

mod svg;

use hankwise::cloth::{Face, Threads, Weave};
use hankwise::prelude::*;
use proptest::prelude::*;
use svg::{attribute, elements, number, numbers, texts, within};

fn colours(order: &str) -> Threads {
    Threads { colours: Some(order.parse().unwrap()), ..Threads::default() }
}

fn face(warp: &str, weft: &str) -> Face {
    Face { warp: colours(warp), weft: colours(weft), ..Face::default() }
}

/// Threads of a sett and a diameter in mm.
fn laid(sett: f64, diameter: f64) -> Threads {
    Threads {
        sett: Some(Sett::base(sett)),
        diameter: Some(Diameter::base(diameter)),
        ..Threads::default()
    }
}

/// The scale bars: their pixels, and what is written beside them.
fn bars(svg: &str) -> Vec<(f64, String)> {
    let from = |bar: &str| {
        let at = numbers(attribute(bar, "d"));
        at[5] - at[0]
    };
    svg.split("<path class=\"scale\"")
        .skip(1)
        .map(|bar| (from(bar), texts(&bar[bar.find("<text").unwrap()..])[0].to_owned()))
        .collect()
}

/// Pixels to a millimetre by the bar in mm.
fn scale(svg: &str) -> f64 {
    let (long, text) = &bars(svg)[0];
    long / text.strip_suffix(" mm").unwrap().parse::<f64>().unwrap()
}

/// The threads of a direction: their lower edge across, their width.
fn threads(svg: &str, class: &str) -> Vec<(f64, f64)> {
    let (at, wide) = if class == "warp" { ("x", "width") } else { ("y", "height") };
    let group = within(within(svg, "cloth"), class);
    elements(group, "<rect").iter().map(|t| (number(t, at), number(t, wide))).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    /// By the scale bar, spacings are those of the setts and widths the diameters.
    #[test]
    fn distances_are_true(
        setts in (2.0_f64..60.0, 2.0_f64..60.0), filled in (0.1_f64..1.6, 0.1_f64..1.6),
        inches: bool,
    ) {
        prop_assume!(setts.0 / setts.1 < 8.0 && setts.1 / setts.0 < 8.0);
        let [warp, weft] = [(setts.0, filled.0), (setts.1, filled.1)]
            .map(|(sett, filled)| laid(sett, filled * 10.0 / sett));
        let given = [&warp, &weft].map(|t| (t.sett.unwrap(), t.diameter.unwrap()));
        let drawn = Face { warp, weft, inches, ..Face::default() };
        let picture = Weave::parse("2/2 twill").unwrap().face(&drawn).unwrap();
        let svg = picture.svg();
        let scale = scale(svg);
        // Coordinates are to a hundredth of a pixel, and so is the bar, of tens of pixels.
        for (class, (sett, diameter)) in ["warp", "weft"].into_iter().zip(given) {
            let threads = threads(svg, class);
            let (first, last) = (threads[0], threads[threads.len() - 1]);
            let spacing = (last.0 - first.0).abs() / (threads.len() - 1) as f64 / scale;
            prop_assert!((spacing * sett.value() / 10.0 - 1.0).abs() < 2e-3, "{spacing} mm");
            for (_, width) in threads {
                let off = width - diameter.value() * scale;
                prop_assert!(off.abs() < 0.01 + 2e-3 * width, "{off} px");
            }
        }
        prop_assert_eq!(bars(svg).len(), 1 + usize::from(inches));
        if inches {
            let (long, text) = &bars(svg)[1];
            let text = text.strip_suffix(" in").unwrap();
            let inch = match text.split_once('/') {
                Some((one, part)) => one.parse::<f64>().unwrap() / part.parse::<f64>().unwrap(),
                None => text.parse().unwrap(),
            };
            let off = long - 25.4 * inch * scale;
            prop_assert!(off.abs() < 0.02 + 2e-3 * long, "{text} in are {long} px");
        }
    }

    /// At each crossing the thread that lies on top is the one of the weave.
    #[test]
    fn what_lies_on_top_is_that_of_the_weave(
        cells in prop::collection::vec(any::<bool>(), 30), filled in 0.3_f64..1.5,
    ) {
        let Ok(weave) = Weave::from_cells(&cells, 6) else { return Ok(()) };
        let drawn = Face {
            warp: laid(9.0, filled * 10.0 / 9.0),
            weft: laid(7.0, filled * 10.0 / 7.0),
            repeats: Some((1, 1)),
            ..Face::default()
        };
        let picture = weave.face(&drawn).unwrap();
        let svg = within(picture.svg(), "cloth");
        let (warp, weft) = (threads(picture.svg(), "warp"), threads(picture.svg(), "weft"));
        let middle = |(at, wide): (f64, f64)| at + 0.5 * wide;
        // The picks lie on all ends; over them the ends lie where they are up.
        prop_assert!(svg.find("class=\"weft\"") > svg.find("class=\"warp\""));
        prop_assert!(svg.find("class=\"warp-up\"") > svg.find("class=\"weft\""));
        let floats: Vec<Vec<f64>> = elements(within(svg, "warp-up"), "<path d=\"")
            .iter()
            .flat_map(|path| path[..path.find('"').unwrap()].split('M').skip(1).map(numbers))
            .collect();
        for (end, x) in warp.iter().map(|w| middle(*w)).enumerate() {
            for (pick, y) in weft.iter().map(|w| middle(*w)).enumerate() {
                // A float is M x y h width V y h −width.
                let covers = |f: &Vec<f64>| {
                    (f[0] + 0.5 * f[2] - x).abs() < 0.02 && f[1] < y && y < f[3]
                };
                prop_assert_eq!(floats.iter().any(covers), weave.is_up(end, pick));
            }
        }
    }
}

/// Flat: whole colours alone, no light on the threads and no shade.
#[test]
fn threads_have_the_colours_that_were_asked_for_and_no_others() {
    let mut drawn = face("4 black 4 #ffffff", "2 navy 6 #fFa500");
    (drawn.warp.sett, drawn.weft.sett) = (Some(Sett::base(9.0)), Some(Sett::base(9.0)));
    let picture = Weave::parse("2/2 twill").unwrap().face(&drawn).unwrap();
    let cloth = within(picture.svg(), "cloth");
    let fills = |class| -> Vec<&str> {
        elements(within(cloth, class), "<rect").iter().map(|t| attribute(t, "fill")).collect()
    };
    let black_white = [["#000000"; 4], ["#ffffff"; 4]].concat();
    assert_eq!(fills("warp"), black_white.repeat(3));
    let weft = [vec!["#000080"; 2], vec!["#ffa500"; 6]].concat();
    assert_eq!(fills("weft"), weft.repeat(3));
    let tops: Vec<&str> = elements(within(cloth, "warp-up"), "<path d=\"")
        .iter()
        .map(|t| attribute(t, "fill"))
        .collect();
    assert_eq!(tops, fills("warp"));
    for sign in ["opacity", "radient", "filter", "Q", "C", "A1"] {
        assert!(!cloth.contains(sign), "{sign}");
    }
    // In grey the letters tell the stripes apart.
    let letters = texts(within(picture.svg(), "letters"));
    assert_eq!(letters, ["A", "B", "A", "B", "A", "B", "C", "D", "C", "D", "C", "D"]);
    assert!(picture.svg().contains("A black, B #ffffff, C navy, D #fFa500"));
}

#[test]
fn thickness_comes_from_the_count() {
    let of = |volume: Option<f64>| Threads {
        sett: Some(Sett::base(10.0)),
        count: Some(LinearDensity::base(100.0)),
        specific_volume: volume.map(SpecificVolume::base),
        ..Threads::default()
    };
    let both = Face { warp: of(Some(2.0)), weft: of(None), ..Face::default() };
    let picture = Weave::plain().face(&both).unwrap();
    let (svg, told) = (picture.svg(), texts(picture.svg()).join(" "));
    // √(4 × 2 × 100/(1000 π)) mm, and with 1.174 cm³/g.
    assert!(told.contains("100 tex; 0.5046 mm thick at 2 cm³/g"), "{told}");
    assert!(told.contains("0.3867 mm thick at 1.174 cm³/g (wool, from memory)"), "{told}");
    assert!((threads(svg, "warp")[0].1 / scale(svg) - 0.5046).abs() < 1e-3);
    assert!((threads(svg, "weft")[0].1 / scale(svg) - 0.3867).abs() < 1e-3);
}

#[test]
fn what_was_not_given_is_said() {
    let only = Threads { sett: Some(Sett::base(10.0)), ..Threads::default() };
    let drawn = Face { warp: only, ..Face::default() };
    let picture = Weave::plain().face(&drawn).unwrap();
    let told = texts(picture.svg()).join(" ");
    for words in [
        "weft: dark, colour not given; sett not given, drawn at that of the other threads",
        "thickness not given, drawn as 0.8 of the spacing",
    ] {
        assert!(told.contains(words), "{told}");
    }
    assert!((threads(picture.svg(), "weft")[0].1 / scale(picture.svg()) - 0.8).abs() < 2e-3);
    let drawn = Face { warp: laid(10.0, 1.2), ..Face::default() };
    let told = Weave::plain().face(&drawn).unwrap();
    assert!(texts(told.svg()).join(" ").contains("1.2 mm thick; thicker than their spacing"));
}

/// Without a sett the picture is not to scale: colours are drawn on point paper, without thickness.
#[test]
fn without_a_sett_it_is_point_paper() {
    let twill = Weave::parse("2/2 twill").unwrap();
    let picture = twill.face(&face("4 black 4 white", "4 black 4 white")).unwrap();
    let svg = picture.svg();
    let told = texts(svg).join(" ");
    assert!(told.contains("No sett was given: point paper, no scale."), "{told}");
    assert!(!told.contains("thick") && bars(svg).is_empty() && !svg.contains("class=\"cloth\""));
    let effect = within(svg, "effect");
    let count = |class: &str, fill: &str| -> usize {
        elements(effect, &format!("<path class=\"{class}\""))
            .iter()
            .filter(|p| attribute(p, "fill") == fill)
            .map(|p| attribute(p, "d").matches('M').count())
            .sum()
    };
    // Half of the squares are warp up, and half of the ends and of the picks black: 24 × 24 squares.
    for (class, fill) in
        [("warp", "#000000"), ("warp", "#ffffff"), ("weft", "#000000"), ("weft", "#ffffff")]
    {
        assert_eq!(count(class, fill), 24 * 24 / 4, "{class} {fill}");
    }
    let strokes: usize = elements(effect, "<path class=\"stroke\"")
        .iter()
        .map(|p| attribute(p, "d").matches('M').count())
        .sum();
    assert_eq!(strokes, 24 * 24 / 2);
    assert_eq!(svg::ruled(effect, "eights").0.len(), 4);
}

#[test]
fn what_cannot_be_drawn_is_refused() {
    let satin = Weave::parse("8-end satin").unwrap();
    let told = |drawn: &Face| satin.face(drawn).unwrap_err().to_string();
    assert!(told(&face("1 heather", "1 white")).contains("no colour 'heather'"));
    let no_sett = Threads { diameter: Some(Diameter::base(0.4)), ..Threads::default() };
    assert!(told(&Face { warp: no_sett, ..Face::default() }).contains("give the sett"));
    let thick = Face { weft: laid(10.0, 40.0), ..Face::default() };
    assert!(told(&thick).contains("40 mm every 1 mm"), "{}", told(&thick));
}
