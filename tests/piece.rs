//! The piece: published pieces, conservation, the way there and back, refusals.

#![allow(clippy::float_cmp, reason = "whole numbers are whole")]

use hankwise::calculation::Solved;
use hankwise::cloth::{PIECE, PIECES_FROM_YARN, size_after_shrinkage};
use hankwise::prelude::*;
use proptest::prelude::*;

fn piece(given: &[(&str, &str)]) -> Result<Solved> {
    PIECE.solve_texts(given)
}
fn of(solved: &Solved, name: &str, in_unit: &str) -> f64 {
    let found = solved.find(name).unwrap();
    hankwise::quantity::unit(in_unit, Some(found.answer.kind)).unwrap().from_base(found.value)
}
fn near(got: f64, wanted: f64, by: f64) {
    assert!((got - wanted).abs() <= by, "{got}, wanted {wanted} within {by}");
}

/// C. P. Brooks, Cotton Manufacturing, 3rd ed. 1892, Weight of a Piece: 36 in by 36 yd, sixteen square,
/// 30s and 36s, 38 in in the reed, 38 yd of warp, 25 % of size; 7 lb 2½ oz. He takes the weft at
/// 37½ in where the reed has 38: his value for it is the 75/76 of ours.
#[test]
fn a_piece_of_brooks() {
    let piece = piece(&[
        ("wanted_width", "36 in"),
        ("wanted_length", "36 yd"),
        ("wanted_reed_sett", "60 ends/in"),
        ("weft_sett", "64 picks/in"),
        ("warp_count", "30 Ne"),
        ("weft_count", "36 Ne"),
        ("draw_in", "0.052631578947368421"),
        ("take_up", "0.052631578947368421"),
        ("size", "25 %"),
    ])
    .unwrap();
    near(of(&piece, "reed_width", "in"), 38.0, 1e-9);
    assert_eq!(of(&piece, "ends", ""), 2280.0);
    near(of(&piece, "warp_length", "yd"), 38.0, 1e-9);
    // 103 1/7 hanks of 840 yd, 3 lb 7 oz.
    near(of(&piece, "warp_yarn_length", "yd") / 840.0, 103.0 + 1.0 / 7.0, 1e-3);
    near(of(&piece, "warp_mass", "lb"), 3.4375, 0.01);
    let (ours, weft) = (of(&piece, "weft_mass", "lb"), 2.859_375);
    near(ours * 37.5 / 38.0, weft, 0.01);
    // 13¾ oz of size.
    let size = of(&piece, "grey_mass", "oz") - 16.0 * (of(&piece, "warp_mass", "lb") + ours);
    near(size, 13.75, 0.05);
    near(of(&piece, "grey_mass", "lb") - ours / 76.0, 7.0 + 2.5 / 16.0, 0.01);
}

/// J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909, page 245: 30 in of a 70 reed, 90 yd of
/// cloth from 95 of warp, 80 picks, 30s and 40s.
#[test]
fn a_piece_of_taylor() {
    let piece = piece(&[
        ("wanted_width", "30 in"),
        ("wanted_length", "90 yd"),
        ("reed", "70 stockport-reed"),
        ("weft_sett", "80 picks/in"),
        ("warp_count", "30 Ne"),
        ("weft_count", "40 Ne"),
        ("take_up", "0.052631578947368421"),
    ])
    .unwrap();
    assert_eq!(of(&piece, "ends", ""), 2100.0);
    near(of(&piece, "warp_mass", "lb"), 7.9167, 1e-4);
    near(of(&piece, "weft_mass", "lb"), 6.4286, 1e-4);
}

/// Jean Weaves 2014: 48 in at 48 ends in an inch, 7½ yd, 8400 yd/lb; the page allows no draw-in.
#[test]
fn a_table_cloth_of_jean_weaves() {
    let piece = piece(&[
        ("wanted_width", "48 in"),
        ("wanted_length", "7.5 yd"),
        ("wanted_reed_sett", "48 ends/in"),
        ("weft_sett", "48 picks/in"),
        ("warp_count", "8400 yd/lb"),
    ])
    .unwrap();
    assert_eq!(of(&piece, "ends", ""), 2304.0);
    near(of(&piece, "warp_yarn_length", "yd"), 17_280.0, 1e-6);
    near(of(&piece, "warp_mass", "lb"), 2.057, 5e-4);
    near(of(&piece, "yarn_mass", "lb"), 4.114, 1e-3);
    assert!(piece.report().text().contains("Taken as none: draw-in, shrinkage in width"));
}

/// All Fiber Arts: two runners of 46 in with their allowance, 36 in of loom waste, 19½ in at 20.
#[test]
fn two_runners_of_all_fiber_arts() {
    let runners = piece(&[
        ("wanted_width", "19.5 in"),
        ("wanted_length", "36 in"),
        ("hem", "5 in"),
        ("pieces", "2"),
        ("wanted_reed_sett", "20 ends/in"),
        ("weft_sett", "20 picks/in"),
        ("warp_count", "3360 yd/lb"),
        ("thrums", "36 in"),
    ])
    .unwrap();
    assert_eq!(of(&runners, "ends", ""), 390.0);
    near(of(&runners, "warp_length", "in"), 128.0, 1e-9);
}

/// A fringe is neither woven nor shrunk, a gap and thrums make no cloth: worked out by hand.
#[test]
fn pieces_share_warps() {
    let given = [
        ("wanted_width", "1 m"),
        ("wanted_length", "2 m"),
        ("fringe", "10 cm"),
        ("pieces", "7"),
        ("pieces_per_warp", "3"),
        ("wanted_reed_sett", "5 ends/cm"),
        ("weft_sett", "4 picks/cm"),
        ("warp_count", "100 tex"),
        ("weft_count", "200 tex"),
        ("thrums", "0.8 m"),
        ("gap", "0.2 m"),
        ("creel", "120"),
        ("package_mass", "500 g"),
        ("length_per_pirn", "300 m"),
    ];
    let piece = piece(&given).unwrap();
    assert_eq!([of(&piece, "warps", ""), of(&piece, "ends", "")], [3.0, 500.0]);
    // Three of 2.2 m, two gaps, thrums; a third warp of one piece.
    near(of(&piece, "warp_length", "m"), 3.0 * 2.2 + 0.4 + 0.8, 1e-12);
    near(of(&piece, "last_warp_length", "m"), 2.2 + 0.8, 1e-12);
    near(of(&piece, "warped_length", "m"), 2.0 * 7.8 + 3.0, 1e-12);
    near(of(&piece, "warp_mass", "kg"), 500.0 * 18.6 * 100e-6, 1e-12);
    near(of(&piece, "weft_mass", "kg"), 7.0 * 800.0 * 200e-6, 1e-12);
    assert_eq!([of(&piece, "sections", ""), of(&piece, "last_section_ends", "")], [5.0, 20.0]);
    near(of(&piece, "length_per_place", "m"), 5.0 * 18.6, 1e-12);
    // 0.93 kg of warp and 1.12 of weft; 5600 m of weft.
    assert_eq!([of(&piece, "warp_packages", ""), of(&piece, "weft_packages", "")], [2.0, 3.0]);
    assert_eq!(of(&piece, "pirns", ""), 19.0);
}

/// A blanket of two widths: 1.50 m and two side hems of 2 cm, each edge of the seam taking 1 cm.
#[test]
fn panels_are_sewn_side_by_side() {
    let given = [
        ("wanted_width", "1.50 m"),
        ("wanted_length", "2 m"),
        ("hem", "4 cm"),
        ("side_hem", "2 cm"),
        ("panels", "2"),
        ("seam", "1 cm"),
        ("pieces", "3"),
        ("wanted_reed_sett", "5 ends/cm"),
        ("weft_sett", "5 picks/cm"),
        ("warp_count", "100 tex"),
    ];
    let piece = piece(&given).unwrap();
    near(of(&piece, "woven_width", "m"), (1.50 + 0.04 + 0.02) / 2.0, 1e-12);
    near(of(&piece, "woven_length", "m"), 2.08, 1e-12);
    assert_eq!(of(&piece, "lengths", ""), 6.0);
    near(of(&piece, "warp_length", "m"), 6.0 * 2.08, 1e-12);
    // All the yarn there is in the pieces: no waste was given.
    near(3.0 * of(&piece, "piece_mass", "kg"), of(&piece, "yarn_mass", "kg"), 1e-12);
}

#[test]
fn selvedges_stand_closer() {
    // 72 in an inch over 44 in and half an inch of selvedges with twice the ends in a dent: 3240 ends
    // (Textile Calculations, total quantity of materials in a piece).
    let given = [
        ("wanted_width", "44.5 in"),
        ("wanted_length", "40 yd"),
        ("reed", "36 dents/in"),
        ("selvedge_ends", "36"),
        ("selvedge_ends_per_dent", "4"),
        ("weft_sett", "60 picks/in"),
        ("warp_count", "32 Ne"),
        ("warp_colours", "4 white 4 blue"),
        ("selvedge_colour", "White"),
    ];
    let piece = piece(&given).unwrap();
    near(of(&piece, "selvedge_width", "in"), 0.5, 1e-12);
    assert_eq!([of(&piece, "ground_ends", ""), of(&piece, "ends", "")], [3168.0, 3240.0]);
    near(of(&piece, "filled_width", "in"), 44.5, 1e-9);
    let [white, blue] = ["white", "blue"].map(|c| of(&piece, &format!("{c}.warp_ends"), ""));
    assert_eq!(white + blue, 3240.0);
    assert!((white - 72.0 - blue).abs() <= 4.0, "{white} {blue}");
}

#[test]
fn what_cannot_be_is_refused_with_what_to_change() {
    let base = [
        ("wanted_width", "1.40 m"),
        ("wanted_length", "1.80 m"),
        ("warp_count", "8 Nm"),
        ("wanted_reed_sett", "4.8 ends/cm"),
        ("weft_sett", "4.6 picks/cm"),
        ("draw_in", "6 %"),
        ("thrums", "90 cm"),
    ];
    let refused = |more: &[(&str, &str)], without: &str, words: &[&str]| {
        let mut given: Vec<_> = base.iter().copied().filter(|(n, _)| *n != without).collect();
        given.extend(more);
        let error = piece(&given).unwrap_err().to_string();
        for word in words {
            assert!(error.contains(word), "{more:?} {without}: {error}");
        }
    };
    refused(&[], "wanted_width", &["finished width", "wanted_width=\"1.40 m\""]);
    refused(&[], "wanted_reed_sett", &["wanted_reed_sett=", "reed=", "wanted_warp_sett="]);
    refused(&[("reed", "24 dents/10 cm")], "", &["wanted_reed_sett and reed", "omit all but one"]);
    refused(&[], "weft_sett", &["weft_sett=", "wanted_weft_sett="]);
    refused(&[("wanted_widht", "1 m")], "", &["did you mean 'wanted_width'"]);
    refused(&[("panels", "0")], "", &["panels", "is not possible", "write it like 2"]);
    refused(&[("pieces", "2.5")], "", &["2.5 is not a whole number", "write 2 or 3"]);
    // None of a size is told by its name, whatever it would have done to the figures.
    for (size, none) in [
        ("wanted_width", "0 m"),
        ("wanted_length", "0 m"),
        ("weft_sett", "0 picks/cm"),
        ("wanted_reed_sett", "0 ends/cm"),
    ] {
        refused(&[(size, none)], size, &[size, "is not possible", "write it like"]);
    }
    for size in ["length_per_bobbin", "length_per_pirn", "beam_length", "loom_width"] {
        refused(&[(size, "0 m")], "", &[size, "0 m is not possible", "omit it"]);
    }
    let edge = [("selvedge_ends", "8")];
    for colour in ["", " ", "4 red"] {
        refused(
            &[&edge[..], &[("selvedge_colour", colour)]].concat(),
            "",
            &["is not a colour", "'grey'"],
        );
    }
    // A thousand panels are no advice.
    let error = piece(&[&base[..], &[("loom_width", "1 mm")]].concat()).unwrap_err().to_string();
    assert!(error.contains("too narrow") && !error.contains("panels"), "{error}");
    refused(&[("seam", "1 cm")], "", &["without panels", "write both"]);
    refused(&[("selvedge_colour", "red")], "", &["selvedge_ends"]);
    refused(&[("warp_colours", "grey 8")], "", &["warp_colours", "24 grey 4 white"]);
    refused(&[("warp_yarn_at_hand", "3 kg")], "", &["no input 'warp_yarn_at_hand'"]);
    refused(&[("loom_width", "1.2 m")], "", &["1.2 m", "0.2875 m less", "panels=2"]);
    refused(
        &[("beam_length", "4 m"), ("pieces", "2")],
        "",
        &["4.5 m against 4 m", "0.5 m too much", "=1 at"],
    );
    refused(&[("beam_length", "2 m")], "", &["not even one", "0.7 m"]);
    refused(&[("draw_in", "100 %")], "draw_in", &["draw_in"]);
    refused(&[("selvedge_ends", "400")], "", &["no end finds room"]);
    let warned = piece(&[&base[..], &[("creel", "800")]].concat()).unwrap();
    assert!(
        warned.warnings()[0].contains("714 ends, fewer than the 800"),
        "{:?}",
        warned.warnings()
    );
}

/// What the advice says can be woven, can be: the widest width for the loom, the pieces for the beam.
#[test]
fn the_advice_holds() {
    let given = |width: &str, more: &[(&str, &str)]| {
        let base = [
            ("wanted_width", width),
            ("wanted_length", "1.80 m"),
            ("warp_count", "8 Nm"),
            ("wanted_reed_sett", "4.8 ends/cm"),
            ("weft_sett", "4.6 picks/cm"),
            ("draw_in", "6 %"),
            ("width_shrinkage", "12 %"),
            ("side_hem", "2 cm"),
            ("pieces", "9"),
            ("gap", "20 cm"),
        ];
        piece(&[&base[..], more].concat())
    };
    let error = given("1.40 m", &[("loom_width", "1.5 m")]).unwrap_err().to_string();
    let (_, rest) = error.split_once("so is about ").unwrap();
    let widest = rest.split_once(" finished").unwrap().0;
    let piece = given(widest, &[("loom_width", "1.5 m")]).unwrap();
    assert!(of(&piece, "filled_width", "m") > 1.495, "{error}");
    let error = given("1.40 m", &[("beam_length", "10 m")]).unwrap_err().to_string();
    assert!(error.contains("pieces_per_warp=5"), "{error}");
    assert!(given("1.40 m", &[("beam_length", "10 m"), ("pieces_per_warp", "5")]).is_ok());
    assert!(given("1.40 m", &[("beam_length", "10 m"), ("pieces_per_warp", "6")]).is_err());
}

/// What was wanted in the finished cloth comes out of it: 32 by 40 in an inch of a broadcloth woven at
/// 90 in for 56 (Dictionary of the English textile terms, Broadcloth).
#[test]
fn setts_of_the_finished_cloth() {
    let piece = piece(&[
        ("wanted_width", "56 in"),
        ("wanted_length", "30 yd"),
        ("wanted_warp_sett", "51.428571428571431 ends/in"),
        ("wanted_weft_sett", "50 picks/in"),
        ("width_shrinkage", "37.777777777777779 %"),
        ("length_shrinkage", "20 %"),
        ("warp_count", "26 YSW"),
    ])
    .unwrap();
    near(of(&piece, "reed_width", "in"), 90.0, 1e-9);
    near(of(&piece, "reed_sett", "ends/in"), 32.0, 1e-9);
    assert_eq!(of(&piece, "ends", ""), 2880.0);
    near(of(&piece, "weft_sett", "picks/in"), 40.0, 1e-9);
    near(of(&piece, "finished_warp_sett", "ends/in"), 2880.0 / 56.0, 1e-9);
    near(of(&piece, "finished_weft_sett", "picks/in"), 50.0, 1e-9);
}

fn texts<'a>(given: &'a [(&'static str, String)]) -> Vec<(&'static str, &'a str)> {
    given.iter().map(|(n, t)| (*n, t.as_str())).collect()
}

fn pieces() -> impl Strategy<Value = Vec<(&'static str, String)>> {
    (
        (0.3..2.0f64, 0.5..4.0f64, 20.0..300.0f64, 20.0..300.0f64, 2.0..20.0f64, 2.0..20.0f64),
        (0.0..0.3f64, 0.0..0.2f64, 0.0..0.15f64, 0.0..0.15f64, 0.0..0.1f64),
        (0.0..1.0f64, 0.0..0.2f64, 0.0..0.2f64, 1u32..4, 0.0..0.3f64),
        proptest::option::of(1u32..6),
    )
        .prop_map(|(a, b, c, per_warp)| {
            let mut given = vec![
                ("wanted_width", format!("{} m", a.0)),
                ("wanted_length", format!("{} m", a.1)),
                ("warp_count", format!("{} tex", a.2)),
                ("weft_count", format!("{} tex", a.3)),
                ("wanted_reed_sett", format!("{} ends/cm", a.4)),
                ("weft_sett", format!("{} picks/cm", a.5)),
                ("width_shrinkage", b.0.to_string()),
                ("length_shrinkage", b.1.to_string()),
                ("draw_in", b.2.to_string()),
                ("take_up", b.3.to_string()),
                ("weft_waste", b.4.to_string()),
                ("thrums", format!("{} m", c.0)),
                ("fringe", format!("{} m", c.1)),
                ("gap", format!("{} m", c.2)),
                ("panels", c.3.to_string()),
                ("sample_length", format!("{} m", c.4)),
            ];
            if let Some(n) = per_warp {
                given.push(("pieces_per_warp", n.to_string()));
            }
            given
        })
}

proptest! {
    /// The yarn that a number of pieces needs makes that number, and a little less makes one fewer.
    #[test]
    fn from_pieces_to_yarn_and_back(given in pieces(), n in 1u32..40) {
        let mut wanted = given.clone();
        wanted.push(("pieces", n.to_string()));
        let piece = piece(&texts(&wanted)).unwrap();
        let (warp, weft) = (of(&piece, "warp_mass", "kg"), of(&piece, "weft_mass", "kg"));
        let back = |warp: f64, weft: f64| {
            let mut given = given.clone();
            given.push(("warp_yarn_at_hand", format!("{warp} kg")));
            given.push(("weft_yarn_at_hand", format!("{weft} kg")));
            PIECES_FROM_YARN.solve_texts(&texts(&given))
        };
        let made = back(warp, weft).unwrap();
        prop_assert_eq!(of(&made, "pieces", ""), f64::from(n));
        prop_assert!(of(&made, "warp_yarn_left", "kg").abs() < 1e-9 * warp);
        // The same piece is told, whichever way it is asked.
        prop_assert!((of(&made, "weft_mass", "kg") - weft).abs() < 1e-12 * weft);
        for (warp, weft, first) in [(warp * 0.999_99, weft, "warp"), (warp, weft * 0.999_99, "weft")] {
            match back(warp, weft) {
                Ok(less) => {
                    prop_assert_eq!(of(&less, "pieces", ""), f64::from(n - 1));
                    let text = less.report().text();
                    prop_assert!(text.contains(&format!("{first} yarn runs out first")), "{}", text);
                }
                Err(error) => {
                    prop_assert_eq!(n, 1);
                    let error = error.to_string();
                    prop_assert!(error.contains(&format!("of {first} yarn")), "{}", error);
                }
            }
        }
    }

    /// What was spun is in the pieces, in the thrums and gaps, in the samples or in the waste; nothing
    /// is lost in finishing here. Counted thread by thread, not by the chain.
    #[test]
    fn yarn_is_conserved(given in pieces(), n in 1u32..20) {
        let mut wanted = given.clone();
        wanted.push(("pieces", n.to_string()));
        let piece = piece(&texts(&wanted)).unwrap();
        let get = |name: &str| -> f64 {
            let text = &given.iter().find(|(given, _)| *given == name).unwrap().1;
            text.split(' ').next().unwrap().parse().unwrap()
        };
        let (ends, warps) = (
            of(&piece, "ends", ""),
            piece.find("warps").map_or(1.0, |figure| figure.value),
        );
        let lengths = f64::from(n) * get("panels");
        let goods = f64::from(n) * of(&piece, "piece_mass", "kg");
        let sample = get("sample_length") * warps;
        let idle = get("thrums") * warps + get("gap") * (lengths - warps);
        let warp = ends * get("warp_count") * 1e-6 * (idle + sample / (1.0 - get("take_up")));
        let pick = of(&piece, "filled_width", "m");
        let woven = lengths * 100.0 * get("weft_sett") * get("wanted_length") / (1.0 - get("length_shrinkage"));
        let sampled = sample * 100.0 * get("weft_sett");
        let waste = get("weft_waste") * (woven + sampled);
        let weft = pick * get("weft_count") * 1e-6 * (sampled + waste);
        let all = of(&piece, "yarn_mass", "kg");
        prop_assert!((goods + warp + weft - all).abs() < 1e-9 * all, "{goods} {warp} {weft} {all}");
        // The finished width is the one wanted, but for part of a dent.
        let wide = of(&piece, "finished_width", "m") * get("panels");
        prop_assert!(wide <= get("wanted_width") * (1.0 + 1e-6));
        let dent = Length::base(get("panels") / get("wanted_reed_sett") / 100.0);
        prop_assert!(wide > get("wanted_width") - size_after_shrinkage(dent, Shrinkage::base(0.0)).value());
    }

    /// Whatever is laid, the ends of the colours are the ends and their mass is that of the warp.
    #[test]
    fn colours_share_the_yarn(given in pieces(), grey in 1u32..30, white in 1u32..10) {
        let mut given = given.clone();
        let order = format!("{grey} grey {white} white 2 light blue {white} white");
        given.push(("warp_colours", order.clone()));
        given.push(("weft_colours", order));
        let piece = piece(&texts(&given)).unwrap();
        let sum = |of: &str| -> f64 {
            let all = piece.results().iter().filter(|found| found.answer.name == of);
            all.map(|found| found.value).sum()
        };
        prop_assert_eq!(sum("warp_ends"), of(&piece, "ends", ""));
        prop_assert_eq!(sum("weft_picks"), of(&piece, "picks_per_piece", "").round());
        prop_assert!((sum("weft_share") - 1.0).abs() < 1e-12);
        for system in ["warp", "weft"] {
            let all = of(&piece, &format!("{system}_mass"), "kg");
            let dyed = sum(&format!("{system}_colour_mass"));
            prop_assert!((dyed - all).abs() < 1e-12 * all);
        }
    }
}

#[test]
fn what_will_hardly_weave_is_warned_of() {
    let base = [("wanted_width", "1.40 m"), ("wanted_length", "1.80 m"), ("ends_per_dent", "2")];
    let warned =
        |more: &[(&str, &str)]| piece(&[&base[..], more].concat()).unwrap().warnings().join("; ");
    let open = [
        ("warp_count", "8 Nm"),
        ("wanted_reed_sett", "4.8 ends/cm"),
        ("weft_sett", "4.6 picks/cm"),
    ];
    assert_eq!(warned(&open), "");
    // By Peirce's diameter, 25.4/28 mm at 590.5 tex, 1000 tex is 1.18 mm thick.
    let thick = [
        ("warp_count", "1000 tex"),
        ("wanted_reed_sett", "50 ends/cm"),
        ("weft_sett", "4 picks/cm"),
    ];
    let said = warned(&thick);
    assert!(said.contains("ends of 1.18") && said.contains("at about 8.47"), "{said}");
    assert!(!said.contains("picks of"), "{said}");
    let thick = [
        ("warp_count", "1000 tex"),
        ("wanted_reed_sett", "4 ends/cm"),
        ("wanted_weft_sett", "50 picks/cm"),
    ];
    assert!(warned(&thick).contains("picks of 1.18"), "{}", warned(&thick));
    // A dent is full or empty.
    for (ends, per_dent, words) in
        [("7", "2", "write 6 or 8"), ("8", "3", "write 6 or 9"), ("2", "3", "write 3")]
    {
        let edge = [("selvedge_ends", ends), ("selvedge_ends_per_dent", per_dent)];
        let said = warned(&[&open[..], &edge].concat());
        assert!(said.contains(words), "{said}");
    }
    assert_eq!(
        warned(&[&open[..], &[("selvedge_ends", "9"), ("selvedge_ends_per_dent", "3")]].concat()),
        ""
    );
}
