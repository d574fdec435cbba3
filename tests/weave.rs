//! The weave against counts square by square, matrices that others wrote, and itself turned about.

mod cases;

use cases::cases;
use hankwise::cloth::{Balance, Draft, Hand, System, Weave, layer_order, satin_moves};
use proptest::prelude::*;

const BOTH: [System; 2] = [System::Warp, System::Weft];

/// A square along a thread, going round.
fn along(weave: &Weave, system: System, thread: usize, at: usize) -> bool {
    match system {
        System::Warp => weave.is_up(thread, at % weave.picks()),
        System::Weft => weave.is_up(at % weave.ends(), thread),
    }
}

fn size(weave: &Weave, system: System) -> (usize, usize) {
    match system {
        System::Warp => (weave.ends(), weave.picks()),
        System::Weft => (weave.picks(), weave.ends()),
    }
}

/// Interlacings and floats of a thread, found by walking along it.
fn walk(weave: &Weave, system: System, thread: usize) -> (usize, Vec<usize>) {
    let (_, across) = size(weave, system);
    let mut floats = Vec::new();
    for start in 0..across {
        if along(weave, system, thread, start) == along(weave, system, thread, start + across - 1) {
            continue;
        }
        let side = along(weave, system, thread, start);
        floats.push(
            (0..across).take_while(|k| along(weave, system, thread, start + k) == side).count(),
        );
    }
    (floats.len(), floats)
}

/// Any weave, of sizes that fill words and that do not.
fn weaves() -> impl Strategy<Value = Weave> {
    let squares = (1_usize..80, 1_usize..150).prop_flat_map(|(ends, picks)| {
        // From nearly empty to nearly full, so that floats are long too.
        (
            Just(ends),
            (1_u32..40).prop_flat_map(move |few| {
                prop::collection::vec(prop::bool::weighted(f64::from(few) / 40.0), ends * picks)
            }),
        )
    });
    squares
        .prop_filter_map("a thread is loose", |(ends, cells)| Weave::from_cells(&cells, ends).ok())
}

proptest! {
    #![proptest_config(cases(300))]

    #[test]
    fn counted_square_by_square(weave in weaves()) {
        let squares = (weave.ends() * weave.picks()) as f64;
        let (mut passages, mut excess) = (0, 0);
        for system in BOTH {
            let (threads, across) = size(&weave, system);
            let walks: Vec<(usize, Vec<usize>)> =
                (0..threads).map(|thread| walk(&weave, system, thread)).collect();
            let each: Vec<usize> = walks.iter().map(|(n, _)| *n).collect();
            prop_assert_eq!(&weave.interlacings(system), &each);
            let all: Vec<usize> = walks.iter().flat_map(|(_, floats)| floats.clone()).collect();
            let found: Vec<usize> = weave.floats(system).map(|f| f.length).collect();
            prop_assert_eq!(&found, &all);
            let longest = weave.longest_float(system);
            prop_assert_eq!(Some(longest.length), all.iter().copied().max());
            prop_assert_eq!(Some(longest), weave.floats(system).find(|f| f.length == longest.length));
            // The float is where it is said to be, and ends there.
            let side = along(&weave, system, longest.thread, longest.from);
            for k in 0..longest.length {
                prop_assert_eq!(along(&weave, system, longest.thread, longest.from + k), side);
            }
            prop_assert_eq!(longest.on_face, side == (system == System::Warp));
            let sum: usize = each.iter().sum();
            prop_assert!((weave.average_float(system) - squares / sum as f64).abs() < 1e-12);
            for (f, n) in weave.average_floats(system).iter().zip(&each) {
                prop_assert!((f * *n as f64 - across as f64).abs() < 1e-9);
            }
            let ashenhurst = squares / (squares + sum as f64);
            prop_assert!((weave.ashenhurst_ratio(system.other()) - ashenhurst).abs() < 1e-12);
            passages += sum;
            excess += all.iter().map(|length| length - 1).sum::<usize>();
        }
        prop_assert!((weave.crossing_firmness() - passages as f64 / squares).abs() < 1e-12);
        prop_assert!((weave.floating_factor() - excess as f64 / squares).abs() < 1e-12);
        prop_assert!((weave.crossing_firmness() + weave.floating_factor() - 2.0).abs() < 1e-12);
        let up = (0..weave.picks())
            .flat_map(|pick| (0..weave.ends()).map(move |end| (end, pick)))
            .filter(|(end, pick)| weave.is_up(*end, *pick))
            .count();
        prop_assert!((weave.warp_up() - up as f64 / squares).abs() < 1e-12);
    }

    /// A repeat given several times over, and begun elsewhere, is the same weave.
    #[test]
    fn the_smallest_repeat_is_found(weave in weaves(), across in 1_usize..4, up in 1_usize..3, by in 0_usize..9) {
        let (ends, picks) = (across * weave.ends(), up * weave.picks());
        let cells: Vec<bool> =
            (0..ends * picks).map(|k| weave.is_up(k % ends, k / ends)).collect();
        prop_assert_eq!(&Weave::from_cells(&cells, ends).unwrap(), &weave);
        let bytes: Vec<u8> = cells.iter().map(|up| u8::from(*up) * 255).collect();
        prop_assert_eq!(&Weave::from_bytes(&bytes, ends).unwrap(), &weave);
        prop_assert_eq!(&Weave::from_rows(&weave.rows()).unwrap(), &weave);
        let moved: Vec<bool> =
            (0..ends * picks).map(|k| weave.is_up(k % ends + by, k / ends + 2 * by)).collect();
        prop_assert!(Weave::from_cells(&moved, ends).unwrap().alike(&weave));
    }

    #[test]
    fn turned_twice_is_itself(weave in weaves()) {
        let turned = weave.turned().unwrap();
        prop_assert_eq!(weave.longest_float(System::Warp).length, turned.longest_float(System::Weft).length);
        prop_assert!((weave.warp_up() + turned.warp_up() - 1.0).abs() < 1e-12);
        prop_assert_eq!(turned.turned().unwrap(), weave);
    }

    /// The draft of a weave gives the weave, on no more shafts than ends, and its lifting plan too.
    #[test]
    fn a_draft_gives_its_weave(weave in weaves(), ends in 0_usize..500) {
        let draft = Draft::of(&weave);
        prop_assert_eq!(&draft.weave().unwrap(), &weave);
        let lifted = Draft::lifted(draft.threading().to_vec(), &draft.lifts()).unwrap();
        prop_assert_eq!(&lifted.weave().unwrap(), &weave);
        let columns: std::collections::BTreeSet<Vec<bool>> = (0..weave.ends())
            .map(|end| (0..weave.picks()).map(|pick| weave.is_up(end, pick)).collect())
            .collect();
        prop_assert_eq!(draft.shafts(), columns.len());
        let rows: std::collections::BTreeSet<String> = weave.rows().into_iter().collect();
        prop_assert_eq!(draft.treadles(), rows.len());
        let healds = draft.ends_on_shafts(ends);
        prop_assert_eq!(healds.iter().sum::<usize>(), ends);
        for (shaft, healds) in healds.iter().enumerate() {
            let drawn = (0..ends).filter(|end| draft.threading()[end % weave.ends()] == shaft + 1);
            prop_assert_eq!(drawn.count(), *healds);
        }
    }

    /// Whatever is typed is read or refused.
    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,40}") {
        let _ = Weave::parse(&text);
    }
    #[test]
    fn any_words_are_read_or_refused(words in prop::collection::vec(prop::sample::select(vec![
        "2/2", "3/1", "5/2/1/2", "0/1", "2x2", "twill", "satin", "sateen", "hopsack", "rib", "warp",
        "weft", "herringbone", "pointed", "broken", "double", "crepe", "of", "5-end", "8", "over",
        "12", "ends", "move", "step", "3", "s", "left-hand", "weft-way", "plain", "10-01", "20-02",
        "02-01-01", "01", "00", "10", "01-01-00", "3/2(4+2)", "(", "-", "\n", "twil", "999999",
    ]), 0..9)) {
        let text = words.join(" ");
        match Weave::parse(&text) {
            Ok(weave) => {
                if let Some(name) = weave.name() {
                    prop_assert!(Weave::parse(&name).unwrap().alike(&weave), "{text}: {name}");
                }
            }
            Err(error) => prop_assert!(error.to_string().len() > 20, "{text}: {error}"),
        }
    }

    /// What is printed reads as the same weave.
    #[test]
    fn names_come_back(
        formula in prop::collection::vec(1_usize..5, 1..4).prop_map(|half| [half.clone(), half].concat()),
        own in prop::collection::vec(1_usize..5, 2..3),
        other in prop::collection::vec(1_usize..4, 2..3),
        ends in 2_usize..30,
        step in 1_usize..12,
    ) {
        let made = [
            Weave::twill(&own, Hand::Right, 1),
            Weave::twill(&own, Hand::Left, 1),
            Weave::twill(&formula, Hand::Right, step),
            Weave::mat(&own, &other),
            Weave::mat(&own, &[1, 1]),
            Weave::mat(&[1, 1], &own),
            Weave::herringbone(&own, Some(ends)),
            Weave::pointed_twill(&own, Some(ends)),
            Weave::broken_twill(&own),
            Weave::satin(ends, None, System::Warp),
            Weave::satin(ends, Some(step), System::Weft),
            Weave::pointed_twill(&own, None).and_then(|w| w.turned()),
            Weave::twill(&own, Hand::Right, 1).and_then(|w| Weave::double(&w, &w)),
        ];
        for weave in made.into_iter().flatten() {
            let name = weave.name();
            prop_assert!(name.is_some(), "no name: {:?}", weave);
            let name = name.unwrap();
            let read = Weave::parse(&name).unwrap();
            prop_assert!(read.alike(&weave), "{}: {:?} is not {:?}", name, read, weave);
            prop_assert_eq!(read.name(), Some(name));
        }
    }
}

fn close(found: f64, expected: f64) {
    assert!((found - expected).abs() < 1e-12, "{found}, not {expected}");
}

/// Names and matrices as two hands wrote them.
#[test]
fn names_give_the_matrices_of_the_trade() {
    let same = [
        ("plain", "10 01"),
        ("tabby", "01 10"),
        ("2/1 twill", "101 110 011"),
        ("1/2 twill", "100 010 001"),
        ("3/1 twill", "1011 1101 1110 0111"),
        ("3/3 twill", "100011 110001 111000 011100 001110 000111"),
        ("2/2 herringbone", "11001100 01101001 00110011 10010110"),
        ("2x2 hopsack", "1100 1100 0011 0011"),
        ("3/3 mat", "111000 111000 111000 000111 000111 000111"),
        ("5-end satin", "01111 11011 11110 10111 11101"),
        ("5-end sateen", "10000 00100 00001 01000 00010"),
        ("7-end satin move 3", "0111111 1110111 1111110 1101111 1111101 1011111 1111011"),
        ("8-end satin", "01111111 11101111 11111101 10111111 11110111 11111110 11011111 11111011"),
        (
            "5/2/1/2 twill",
            "1001001111 1100100111 1110010011 1111001001 1111100100 0111110010 0011111001 1001111100 \
             0100111110 0010011111",
        ),
        ("2/2 warp rib", "10 10 01 01"),
        ("2/2 weft rib", "1100 0011"),
        ("double plain", "1000 1110 0010 1011"),
        // Codes as they are remembered.
        ("10-01 01-01-00", "plain"),
        ("20-02 01-01-01", "2/1 twill"),
        ("20-01 02-01-01", "1/2 twill"),
        ("20-02 02-01-01", "2/2 twill"),
        ("20-03 01-01-01", "3/1 twill"),
        ("30-01 07-01-03", "8-end sateen move 3"),
    ];
    for (name, other) in same {
        let (weave, other) = (Weave::parse(name).unwrap(), Weave::parse(other).unwrap());
        assert!(weave.alike(&other), "{name}: {weave:?}, not {other:?}");
    }
    // The step of a code counts picks, the move of a satin ends: the 5-end sateens are two.
    for code in ["30-01 04-01-02", "30-04 01-01-02"] {
        let satin = Weave::parse(code).unwrap();
        assert_eq!((satin.ends(), satin.picks()), (5, 5));
        assert!(satin.name().unwrap().starts_with("5-end sat"), "{satin}");
    }
}

/// As drawn on paper the first pick is at the bottom; on one line it comes first.
#[test]
fn a_drawing_has_the_first_pick_at_the_bottom() {
    let drawn = Weave::parse("..##\n.##.\n##..\n#..#").unwrap();
    assert_eq!(drawn, Weave::parse("2/2 twill").unwrap());
    assert_eq!(drawn, Weave::parse("1001, 1100, 0110, 0011").unwrap());
    assert!(
        Weave::parse("2/2 twill S").unwrap().alike(&Weave::parse("1001 0011 0110 1100").unwrap())
    );
}

#[test]
fn what_is_refused_says_what_to_type() {
    let refused = [
        ("2/2 twil", "did you mean '2/2 twill'?"),
        ("2-2 twill", "did you mean '2/2 twill'?"),
        ("5-end stain", "did you mean '5-end satin'?"),
        ("twill", "2/2"),
        ("satin", "5-end satin"),
        ("6-end satin", "5/1 broken twill"),
        ("4-end sateen move 2", "1/3 broken twill"),
        ("8-end satin move 4", "move 3 or 5"),
        ("2/1 herringbone", "pointed twill"),
        ("2/2 rib", "warp rib"),
        ("crepe", "crepe of"),
        ("double", "2/2 twill"),
        ("2/2 twill double", "2/2 twill"),
        ("2/2 twill 3/1", "two formulas"),
        ("5/2/1 twill", "ups and downs in turn"),
        ("2/0 twill", "0 has no place"),
        ("10\n12", "'2' is not a mark"),
        ("101 10", "pick 2 has 2 ends and pick 1 has 3"),
        ("20-02 2-01-01", "two digits"),
        ("20-02 02-01", "four"),
        ("50-02 02-01-01", "1 for plain"),
        ("100 011 111", "pick 3 lies under every end"),
        ("110 100 111", "end 1 is never lowered"),
        ("110 010 100", "end 3 is never raised"),
        ("2/2 satin", "5-end satin"),
        ("", "write a name"),
    ];
    for (text, words) in refused {
        let error = Weave::parse(text).unwrap_err().to_string();
        assert!(error.contains(words), "{text}: {error}");
    }
    assert!(Weave::parse(&"double ".repeat(50)).is_err());
    assert!(Weave::parse(&"crepe of ".repeat(40)).is_err());
    assert!(Weave::parse(&"9".repeat(10_000)).is_err());
    assert!(Weave::parse("10-99 99-99 98 97 96 95-01 02 03 05 07").is_err());
}

#[test]
fn drafts_that_do_not_fit_say_which() {
    let four = vec![vec![1, 2], vec![2, 3], vec![3, 4], vec![4, 1]];
    let refused = [
        (Draft::new(vec![1, 2, 3, 5], four.clone(), vec![1, 2]), "end 4 is drawn on shaft 5"),
        (Draft::new(vec![1, 2, 3], four.clone(), vec![1, 2]), "treadle 3 raises shaft 4"),
        (Draft::new(vec![1, 2, 3, 4], four.clone(), vec![1, 5]), "pick 2 wants treadle 5"),
        (Draft::new(vec![0, 2, 3, 4], four.clone(), vec![1]), "no shaft 0"),
        (Draft::new(vec![], four.clone(), vec![1]), "threading is empty"),
        (Draft::new(vec![1], vec![vec![]], vec![1]), "raises any shaft"),
        (Draft::lifted(vec![1, 2], &[vec![1], vec![3]]), "pick 2 raises shaft 3"),
    ];
    for (draft, words) in refused {
        let error = draft.unwrap_err().to_string();
        assert!(error.contains(words), "{error}");
    }
    // A tie-up that never raises a shaft: the weave has a loose end.
    let draft = Draft::new(vec![1, 2, 3], vec![vec![1, 3], vec![1]], vec![1, 2]).unwrap();
    let error = draft.weave().unwrap_err().to_string();
    assert!(error.contains("end 1 is never lowered"), "{error}");
}

#[test]
fn drawing_in_is_named() {
    for (name, drawing, shafts) in [
        ("2/2 twill", "straight", 4),
        ("2/2 pointed twill", "pointed", 4),
        ("2/2 herringbone", "broken", 4),
        ("8-end satin", "straight", 8),
        ("2/2 warp rib", "straight", 2),
    ] {
        let draft = Draft::of(&Weave::parse(name).unwrap());
        assert_eq!(
            (draft.drawing().to_string().as_str(), draft.shafts()),
            (drawing, shafts),
            "{name}"
        );
    }
    let herringbone = Draft::of(&Weave::parse("2/2 herringbone").unwrap());
    assert_eq!(herringbone.threading(), [1, 2, 3, 4, 2, 1, 4, 3]);
}

/// Two layers come back as they were put in; a stitch is found where it was made.
#[test]
fn double_cloths_are_split() {
    let order = layer_order("1 face 1 back").unwrap();
    let (face, back) = (Weave::parse("2/2 twill").unwrap(), Weave::plain());
    let double = Weave::double(&face, &back).unwrap();
    let layers = double.split(&order, &order).unwrap();
    assert_eq!((&layers.face, &layers.back), (&face, &back));
    assert!(layers.stitches.is_empty());
    assert_eq!(layers.separators, 2 * (double.ends() / 2) * (double.picks() / 2));
    let mut rows: Vec<Vec<char>> = double.rows().iter().map(|row| row.chars().collect()).collect();
    // A face end goes under a back pick, a back end over a face pick.
    rows[1][2] = '0';
    rows[4][3] = '1';
    let rows: Vec<String> = rows.into_iter().map(|row| row.into_iter().collect()).collect();
    let stitched = Weave::from_rows(&rows).unwrap().split(&order, &order).unwrap();
    assert_eq!((&stitched.face, &stitched.back), (&face, &back));
    let said: Vec<String> = stitched.stitches.iter().map(ToString::to_string).collect();
    assert_eq!(said, ["face end 3 under back pick 2", "back end 4 over face pick 5"]);
    assert_eq!(stitched.separators + 2, layers.separators);
    // Two of the face to one of the back.
    let order = layer_order("2 face 1 back").unwrap();
    assert_eq!(order, [true, true, false]);
    let backwards: Vec<bool> = layer_order("1 back 1 face").unwrap();
    let error = double.split(&backwards, &backwards).unwrap_err().to_string();
    assert!(error.contains("exchange face and back"), "{error}");
    for amiss in ["", "face back", "1 face", "1 front 1 back", "0 face 1 back"] {
        assert!(layer_order(amiss).unwrap_err().to_string().contains("1 face 1 back"), "{amiss}");
    }
}

#[test]
fn satins_twill_the_other_way_by_the_rest() {
    for ends in 5..40 {
        let Ok(moves) = satin_moves(ends) else {
            assert_eq!(ends, 6);
            continue;
        };
        for step in &moves {
            assert!(moves.contains(&(ends - step)));
            let satin = Weave::satin(ends, Some(*step), System::Warp).unwrap();
            assert_eq!(satin.balance(), Balance::WarpFaced);
            close(satin.average_float(System::Warp), ends as f64 / 2.0);
            close(satin.warp_up(), (ends - 1) as f64 / ends as f64);
        }
    }
    assert!(satin_moves(4).unwrap_err().to_string().contains("3/1 broken twill"));
    for none in [0, 1, 2, 3] {
        assert!(satin_moves(none).is_err());
    }
}

/// No long float, no twill line, threads of unlike firmness: what a crepe is.
#[test]
fn a_crepe_has_threads_unlike() {
    let crepe = Weave::parse("crepe of 1/3 twill").unwrap();
    assert_eq!((crepe.ends(), crepe.picks()), (8, 8));
    let quarter = |across: usize, up: usize| {
        (0..4).map(|p| (0..4).filter(|e| crepe.is_up(e + across, p + up)).count()).sum::<usize>()
    };
    assert_eq!([quarter(0, 0), quarter(4, 0), quarter(0, 4), quarter(4, 4)], [4; 4]);
}
