//! What is drawn is what is woven: squares, floats and colours are counted in the SVG.

use hankwise::cloth::{Face, Threads, Weave};
use hankwise::prelude::*;
use proptest::prelude::*;

/// The path of a class, without what is round it.
fn path<'s>(svg: &'s str, class: &str) -> &'s str {
    let start = format!("class=\"{class}\" d=\"");
    let from = svg.find(&start).unwrap_or_else(|| panic!("no {class}")) + start.len();
    &svg[from..from + svg[from..].find('"').unwrap()]
}

/// All paths of a class, with their fill: one a thread.
fn threads<'s>(svg: &'s str, class: &str) -> Vec<(&'s str, &'s str)> {
    let start = format!("<path class=\"{class}\" d=\"");
    svg.split(&start)
        .skip(1)
        .map(|part| {
            let (d, rest) = part.split_once('"').unwrap();
            let fill = rest.split_once("fill=\"").unwrap().1;
            (d, &fill[..fill.find('"').unwrap()])
        })
        .collect()
}

fn texts(svg: &str) -> Vec<&str> {
    svg.split("<text").skip(1).map(|t| &t[t.find('>').unwrap() + 1..t.find('<').unwrap()]).collect()
}

fn face(warp: &str, weft: &str) -> Face {
    let of = |order: &str| Threads { colours: Some(order.parse().unwrap()), ..Threads::default() };
    Face { warp: of(warp), weft: of(weft), ..Face::default() }
}

/// A weave of any squares, if they hold together.
fn weave() -> impl Strategy<Value = Weave> {
    (2_usize..9, 2_usize..9)
        .prop_flat_map(|(ends, picks)| {
            (Just(ends), prop::collection::vec(any::<bool>(), ends * picks))
        })
        .prop_filter_map("a loose thread", |(ends, cells)| Weave::from_cells(&cells, ends).ok())
}

fn ups(weave: &Weave) -> usize {
    weave.rows().iter().map(|row| row.matches('1').count()).sum()
}

#[test]
fn the_first_end_is_left_and_the_first_pick_below() {
    // The line falls to the right: the fourth end is up on the first pick.
    let weave = Weave::from_rows(&["0001", "0010", "0100", "1000"]).unwrap();
    let picture = weave.point_paper(Some((1, 1)), None).unwrap();
    let at: Vec<(f64, f64)> = path(picture.svg(), "up")
        .split('M')
        .skip(1)
        .map(|square| {
            let (x, rest) = square.split_once(' ').unwrap();
            (x.parse().unwrap(), rest[..rest.find('h').unwrap()].parse().unwrap())
        })
        .collect();
    // Pick by pick from the lowest: each further left and higher than the one before.
    assert_eq!(at.len(), 4);
    assert!(at.windows(2).all(|w| w[1].0 < w[0].0 && w[1].1 < w[0].1), "{at:?}");
}

#[test]
fn small_and_large_are_numbered() {
    let small = Weave::parse("2/2 twill").unwrap().point_paper(None, None).unwrap();
    let numbers: Vec<&str> =
        texts(small.svg()).into_iter().filter(|t| t.parse::<u32>().is_ok()).collect();
    assert_eq!(numbers, ["1", "2", "3", "4", "1", "2", "3", "4"].repeat(2));
    // 64 × 64: fewer numbers, the first and the last among them, none on top of another.
    let cells: Vec<bool> = (0..64 * 64).map(|k| (k * 7919 + k / 64 * 31) % 13 < 6).collect();
    let large = Weave::from_cells(&cells, 64).unwrap().point_paper(None, None).unwrap();
    let numbers: Vec<u32> = texts(large.svg()).iter().filter_map(|t| t.parse().ok()).collect();
    assert!(numbers.contains(&1) && numbers.contains(&64) && numbers.len() < 2 * 33, "{numbers:?}");
}

#[test]
fn what_cannot_be_read_is_not_drawn() {
    let satin = Weave::parse("8-end satin").unwrap();
    let told = |result: Result<cloth::Picture>| result.unwrap_err().to_string();
    let many = told(satin.point_paper(Some((40, 1)), None));
    assert!(many.contains("at most 256 ends") && many.contains("32 repeats"), "{many}");
    assert!(told(satin.point_paper(Some((1, 0)), None)).contains("0 repeats of the picks"));
    assert!(told(satin.draft_picture(Some((usize::MAX, 1)), None)).contains("at most 200"));
    let long = diagonal(300);
    assert!(told(long.point_paper(None, None)).contains("a repeat of 300 ends"));
    assert!(told(satin.face(&face("1 heather", "1 white"))).contains("no colour 'heather'"));
    let no_sett = Threads { diameter: Some(Diameter::base(0.4)), ..Threads::default() };
    let no_sett = Face { warp: no_sett, ..Face::default() };
    assert!(told(satin.face(&no_sett)).contains("give the ends"));
    let thick = Threads {
        sett: Some(Sett::base(10.0)),
        diameter: Some(Diameter::base(40.0)),
        ..Threads::default()
    };
    let told = told(satin.face(&Face { weft: thick, ..Face::default() }));
    assert!(told.contains("40 mm every 1 mm"), "{told}");
}

/// One square a thread, all different.
fn diagonal(threads: usize) -> Weave {
    let cells: Vec<bool> = (0..threads * threads).map(|k| k % threads == k / threads).collect();
    Weave::from_cells(&cells, threads).unwrap()
}

#[test]
fn a_check_has_its_colours_thread_by_thread() {
    let twill = Weave::parse("2/2 twill").unwrap();
    let svg = twill.face(&face("4 black 4 white", "2 navy 6 #fFa500")).unwrap();
    let fills = |class| threads(svg.svg(), class).iter().map(|t| t.1).collect::<Vec<_>>();
    let black_white = [["#000000"; 4], ["#ffffff"; 4]].concat();
    assert_eq!(fills("warp"), black_white.repeat(3));
    let weft = [vec!["#000080"; 2], vec!["#ffa500"; 6]].concat();
    assert_eq!(fills("weft"), weft.repeat(3));
    assert!(svg.svg().contains("4 black 4 white") && svg.svg().contains("no sett was given"));
}

#[test]
fn the_scale_is_that_of_the_sett() {
    // 10 ends in a centimetre: between middles of ends lies as much as a millimetre of the bar.
    let of = |n| Threads { sett: Some(Sett::base(n)), ..Threads::default() };
    let drawn = Face { warp: of(10.0), weft: of(5.0), ..Face::default() };
    let picture = Weave::plain().face(&drawn).unwrap();
    let svg = picture.svg();
    let part = |text: &str, name: &str| -> f64 {
        let from = text.find(name).unwrap() + name.len();
        text[from..from + text[from..].find('"').unwrap()].parse().unwrap()
    };
    let cloth = &svg[svg.find("class=\"cloth\"").unwrap()..];
    let wide = part(cloth, "width=\"");
    let ends = cloth.matches("class=\"warp\"").count() as f64;
    let picks = cloth.matches("class=\"weft\"").count() as f64;
    // As wide as its ends at 1 mm, as high as its picks at 2 mm.
    assert!((part(cloth, "height=\"") / wide - 2.0 * picks / ends).abs() < 1e-3);
    let (before, _) = svg.split_once(" mm</text>").unwrap();
    let mm: f64 = before[before.rfind('>').unwrap() + 1..].parse().unwrap();
    let bar = &svg[svg.find("</svg>").unwrap()..];
    let bar = &bar[bar.find("M12 ").unwrap()..];
    let to: f64 = bar[bar.find('L').unwrap() + 1..].split_once(' ').unwrap().0.parse().unwrap();
    assert!(((to - 12.0) / mm - wide / ends).abs() < 0.02, "{mm} mm are {} px", to - 12.0);
}

#[test]
fn thickness_comes_from_the_count() {
    let of = |volume: Option<f64>| Threads {
        sett: Some(Sett::base(10.0)),
        count: Some(LinearDensity::base(100.0)),
        volume: volume.map(SpecificVolume::base),
        ..Threads::default()
    };
    let both = Face { warp: of(Some(2.0)), weft: of(None), ..Face::default() };
    let picture = Weave::plain().face(&both).unwrap();
    // √(4 × 2 × 100/(1000 π)) mm, and with 1.174 cm³/g.
    assert!(picture.svg().contains("100 tex; 0.5046 mm thick at 2 cm³/g"));
    assert!(picture.svg().contains("0.3867 mm thick at 1.174 cm³/g (wool, from memory)"));
}

#[test]
fn a_title_with_signs_of_its_own_is_text() {
    let picture = Weave::plain().point_paper(None, Some("<twill> & \"more\"")).unwrap();
    assert!(picture.svg().contains("&lt;twill&gt; &amp; &quot;more&quot;"));
    assert!(picture.save(std::path::Path::new("/no/such/folder/a.svg")).is_err());
}

proptest! {
    #[test]
    fn squares_are_the_ups(weave in weave(), across in 1_usize..4, up in 1_usize..4) {
        let picture = weave.point_paper(Some((across, up)), None).unwrap();
        prop_assert_eq!(path(picture.svg(), "up").matches('M').count(), ups(&weave) * across * up);
        let draft = weave.draft_picture(Some((across, up)), None).unwrap();
        let count = |class| path(draft.svg(), class).matches('M').count();
        prop_assert_eq!(count("up"), ups(&weave) * across * up);
        // An end is on one shaft, a pick has one treadle.
        prop_assert_eq!(count("threading"), weave.ends() * across);
        prop_assert_eq!(count("treadling"), weave.picks() * up);
    }

    /// Where one system is up the other is down: the floats drawn are those counted on the squares.
    #[test]
    fn floats_are_those_of_the_weave(weave in weave()) {
        let drawn = Face { repeats: Some((1, 1)), ..Face::default() };
        let picture = weave.face(&drawn).unwrap();
        let floats = |class| -> usize {
            threads(picture.svg(), class).iter().map(|t| t.0.matches('M').count()).sum()
        };
        let runs = |up: bool, lines: Vec<Vec<bool>>| -> usize {
            lines.iter().map(|line| line.split(|s| *s != up).filter(|r| !r.is_empty()).count()).sum()
        };
        let (ends, picks) = (weave.ends(), weave.picks());
        let by_end = (0..ends).map(|e| (0..picks).map(|p| weave.is_up(e, p)).collect()).collect();
        let by_pick = (0..picks).map(|p| (0..ends).map(|e| weave.is_up(e, p)).collect()).collect();
        prop_assert_eq!(floats("warp"), runs(true, by_end));
        prop_assert_eq!(floats("weft"), runs(false, by_pick));
    }
}
