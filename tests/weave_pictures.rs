//! What is drawn is what is woven: squares, lines and numbers are read back from the SVG.

mod svg;

use hankwise::cloth::{Draft, Weave};
use hankwise::prelude::*;
use proptest::prelude::*;
use svg::{ruled, side, squares, texts, within};

/// A weave of any squares, if they hold together.
fn weave() -> impl Strategy<Value = Weave> {
    (2_usize..9, 2_usize..9)
        .prop_flat_map(|(ends, picks)| {
            (Just(ends), prop::collection::vec(any::<bool>(), ends * picks))
        })
        .prop_filter_map("a loose thread", |(ends, cells)| Weave::from_cells(&cells, ends).ok())
}

/// The squares of a weave where the warp is up, over so many repeats.
fn ups(weave: &Weave, (across, up): (usize, usize)) -> Vec<(usize, usize)> {
    let (ends, picks) = (weave.ends(), weave.picks());
    (0..picks * up)
        .flat_map(|pick| (0..ends * across).map(move |end| (end, pick)))
        .filter(|(end, pick)| weave.is_up(end % ends, pick % picks))
        .collect()
}

fn sorted(mut squares: Vec<(usize, usize)>) -> Vec<(usize, usize)> {
    squares.sort_unstable_by_key(|(across, up)| (*up, *across));
    squares
}

/// One square a thread, all different.
fn diagonal(threads: usize) -> Weave {
    let cells: Vec<bool> = (0..threads * threads).map(|k| k % threads == k / threads).collect();
    Weave::from_cells(&cells, threads).unwrap()
}

#[test]
fn the_first_end_is_left_and_the_first_pick_below() {
    // The line falls to the right: the fourth end is up on the first pick.
    let weave = Weave::from_rows(&["0001", "0010", "0100", "1000"]).unwrap();
    let picture = weave.point_paper(Some((1, 1)), None).unwrap();
    assert_eq!(sorted(squares(picture.svg(), "design")), [(3, 0), (2, 1), (1, 2), (0, 3)]);
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

/// Point paper of a mill is ruled 8 × 8, whatever the repeat: here one of five.
#[test]
fn a_heavier_line_stands_every_eight() {
    let satin = Weave::parse("5-end satin").unwrap();
    let paper = satin.point_paper(Some((4, 5)), None).unwrap();
    let draft = satin.draft_picture(Some((4, 5)), None).unwrap();
    let treadles = satin.treadle_picture(Some((4, 5)), None).unwrap();
    for (svg, field, across, up) in [
        (paper.svg(), "design", 20_u32, 25_u32),
        (draft.svg(), "design", 20, 25),
        (draft.svg(), "lifting-plan", 5, 25),
        (treadles.svg(), "design", 20, 25),
        (treadles.svg(), "threading", 20, 5),
        (treadles.svg(), "treadling", 5, 25),
    ] {
        let field = within(svg, field);
        let (heavy, light) = (ruled(field, "eights"), ruled(field, "light"));
        let side = svg::number(svg::elements(field, "<rect class=\"frame\"")[0], "width")
            / f64::from(across);
        for (heavy, light, squares) in [(heavy.0, light.0, across), (heavy.1, light.1, up)] {
            let squares = squares as usize;
            assert_eq!(heavy.len(), squares / 8 + 1);
            assert_eq!(heavy.len() + light.len(), squares + 1);
            for (k, at) in heavy.iter().enumerate() {
                let from = (at - heavy[0]).abs();
                assert!(
                    (from - 8.0 * k as f64 * side).abs() < 0.02,
                    "line {k} at {from}, of {side}"
                );
            }
        }
    }
    // A light line is thinner than the heavier one.
    let width = |class: &str| {
        let svg = paper.svg();
        svg::number(&svg[svg.find(&format!("class=\"{class}\"")).unwrap()..], "stroke-width")
    };
    assert!(width("light") < 0.5 * width("eights"));
}

#[test]
fn a_bracket_spans_the_repeat_where_several_are_shown() {
    let satin = Weave::parse("5-end satin").unwrap();
    let brackets = |picture: &cloth::Picture| picture.svg().matches("class=\"repeat\"").count();
    let one = satin.point_paper(Some((1, 1)), None).unwrap();
    assert_eq!(brackets(&one), 0);
    let six = satin.point_paper(Some((3, 2)), None).unwrap();
    assert_eq!(brackets(&six), 2);
    let below = svg::attribute(&six.svg()[six.svg().find("class=\"repeat\"").unwrap()..], "d");
    let at = svg::numbers(below);
    let side = side(within(six.svg(), "design"));
    // M from, y, V y, H to, V y: five squares less a pixel at each end.
    assert!((at[3] - at[0] - (5.0 * side - 2.0)).abs() < 0.02, "{below}");
}

/// What the mill has from the picture: the shaft of each end, and what each pick lifts.
fn read_back(svg: &str) -> (Vec<usize>, Vec<Vec<usize>>) {
    let threading = texts(within(svg, "drawing-in")).iter().map(|t| t.parse().unwrap()).collect();
    let plan = squares(svg, "lifting-plan");
    let picks = plan.iter().map(|(_, pick)| pick + 1).max().unwrap();
    let lifts = (0..picks)
        .map(|pick| plan.iter().filter(|(_, up)| *up == pick).map(|(s, _)| s + 1).collect())
        .collect();
    (threading, lifts)
}

#[test]
fn many_ends_are_still_numbered_each() {
    let weave = diagonal(96);
    let draft = Draft::of(&weave).picture(Some((1, 1)), None).unwrap();
    let (threading, lifts) = read_back(draft.svg());
    assert_eq!(threading, (1..=96).collect::<Vec<_>>());
    assert_eq!(Draft::lifted(threading, &lifts).unwrap().weave().unwrap(), weave);
}

#[test]
fn a_tie_up_is_drawn_for_treadles_alone() {
    let weave = Weave::parse("2/2 herringbone").unwrap();
    let mill = weave.draft_picture(None, None).unwrap();
    for word in ["tie-up", "treadle", "threading"] {
        assert!(!mill.svg().contains(word), "{word}");
    }
    let treadles = weave.treadle_picture(Some((1, 1)), None).unwrap();
    assert!(!treadles.svg().contains("lifting"));
    assert_eq!(squares(treadles.svg(), "tie-up").len(), 8);
}

#[test]
fn what_cannot_be_read_is_not_drawn() {
    let satin = Weave::parse("8-end satin").unwrap();
    let told = |result: Result<cloth::Picture>| result.unwrap_err().to_string();
    let many = told(satin.point_paper(Some((40, 1)), None));
    assert!(many.contains("at most 256 ends") && many.contains("32 repeats"), "{many}");
    assert!(told(satin.point_paper(Some((1, 0)), None)).contains("0 repeats of the picks"));
    assert!(told(satin.draft_picture(Some((usize::MAX, 1)), None)).contains("at most 200"));
    assert!(told(satin.treadle_picture(Some((1, 30)), None)).contains("at most 200"));
    assert!(told(diagonal(300).point_paper(None, None)).contains("a repeat of 300 ends"));
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
        let design = ups(&weave, (across, up));
        let picture = weave.point_paper(Some((across, up)), None).unwrap();
        prop_assert_eq!(&sorted(squares(picture.svg(), "design")), &design);
        let draft = weave.treadle_picture(Some((across, up)), None).unwrap();
        prop_assert_eq!(&sorted(squares(draft.svg(), "design")), &design);
        // An end is on one shaft, a pick has one treadle.
        prop_assert_eq!(squares(draft.svg(), "threading").len(), weave.ends() * across);
        prop_assert_eq!(squares(draft.svg(), "treadling").len(), weave.picks() * up);
    }

    /// The numbers of the drawing-in with the lifting plan beside them weave the design again.
    #[test]
    fn the_drawing_in_lifts_the_design_again(
        weave in weave(), across in 1_usize..4, up in 1_usize..4,
    ) {
        let draft = weave.draft_picture(Some((across, up)), None).unwrap();
        let (threading, lifts) = read_back(draft.svg());
        prop_assert_eq!(threading.len(), weave.ends() * across);
        let lifted: Vec<(usize, usize)> = lifts
            .iter()
            .enumerate()
            .flat_map(|(pick, up)| {
                let ends = threading.iter().enumerate().filter(|(_, shaft)| up.contains(shaft));
                ends.map(move |(end, _)| (end, pick)).collect::<Vec<_>>()
            })
            .collect();
        prop_assert_eq!(&lifted, &ups(&weave, (across, up)));
        prop_assert_eq!(&lifted, &sorted(squares(draft.svg(), "design")));
    }
}
