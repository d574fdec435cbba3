//! The theories of setting against what is known of them from elsewhere: the geometry they stand for,
//! limits in which they agree, and a table worked out by hand.

mod cases;

use cases::cases;
use hankwise::calculation::Solved;
use hankwise::cloth::{self, Interlacing, SETTS, Weave, WeaveClass};
use hankwise::prelude::*;
use proptest::prelude::*;

fn ask(weave: &str, warp: &str, more: &[(&str, &str)]) -> Solved {
    SETTS.solve_texts(&[&[("weave", weave), ("warp_count", warp)], more].concat()).unwrap()
}

fn of(all: &Solved, name: &str) -> f64 {
    all.find(name).unwrap_or_else(|e| panic!("{e}")).value
}

fn ends(all: &Solved, key: &str) -> f64 {
    of(all, &format!("{key}.warp_sett"))
}

/// Square cloth of woollen 100 tex, threads in a centimetre: worked out by hand from the printed and
/// the remembered constants, to four digits.
#[test]
fn the_comparison_of_the_theories() {
    let expected = [
        ("ashenhurst_woollen", 11.65, 15.53),
        ("ashenhurst_worsted", 12.48, 16.64),
        ("curvature_woollen", 13.45, 17.05),
        ("brierley", 13.56, 17.77),
        ("galceran_low", 16.08, 20.39),
        // 18.279 and 23.166
        ("galceran_high", 18.28, 23.17),
    ];
    let plain = ask("plain", "100 tex", &[]);
    let twill = ask("2/2 twill", "100 tex", &[]);
    for (key, in_plain, in_twill) in expected {
        assert!((ends(&plain, key) - in_plain).abs() < 0.006, "{key}: {}", ends(&plain, key));
        assert!((ends(&twill, key) - in_twill).abs() < 0.006, "{key}: {}", ends(&twill, key));
    }
    assert!((ends(&plain, "jam") - 15.47).abs() < 0.006);
    // 0.95 √4960.5465 / 2.54 = 26.342; half of it and 5 %.
    assert!((ends(&plain, "taylor") - 13.83).abs() < 0.006);
    assert!(twill.find("taylor.warp_sett").unwrap_err().to_string().contains("plain"));
    assert!((of(&plain, "spread") - 0.57).abs() < 0.005);
    assert!((of(&plain, "lowest_warp_sett") - 11.65).abs() < 0.005);
    assert!((of(&plain, "highest_warp_sett") - 18.28).abs() < 0.005);
    // Memory is said where it is used.
    let text = twill.report().text();
    let (table, _) = text.split_once("What each assumes").unwrap();
    let remembered: Vec<&str> = table
        .lines()
        .filter(|line| ["Brierley  ", "Love, jam", "Galceran  "].iter().any(|n| line.contains(n)))
        .collect();
    assert_eq!(remembered.len(), 4, "{text}");
    assert!(remembered.iter().all(|line| line.contains("from memory")), "{text}");
}

#[test]
fn unlike_yarns_get_no_wrong_number() {
    let all = ask("2/2 twill", "100 tex", &[("weft_count", "50 tex")]);
    for key in ["brierley", "galceran_low", "galceran_high"] {
        let name = format!("{key}.warp_sett");
        for error in [all.find(&name).unwrap_err(), all.working(&name).map(|_| ()).unwrap_err()] {
            assert!(error.to_string().contains("unlike yarns"), "{error}");
        }
    }
    // Finer weft leaves room for more ends, and still finer picks.
    let like = ask("2/2 twill", "100 tex", &[]);
    for key in ["ashenhurst_woollen", "curvature_woollen", "jam"] {
        let picks = of(&all, &format!("{key}.weft_sett"));
        assert!(ends(&all, key) > ends(&like, key) && picks > ends(&all, key), "{key}");
    }
}

/// A herringbone has one float in the warp and another in the weft; the ends go by that of the picks.
#[test]
fn ends_go_by_the_floats_of_the_picks() {
    let herringbone = Interlacing::parse("2/2 herringbone").unwrap();
    assert_eq!((herringbone.warp_float, herringbone.weft_float), (2.0, 1.6));
    let all = ask("2/2 herringbone", "100 tex", &[]);
    let diameters = 0.84 * (496_054.65_f64 / 100.0).sqrt() / 2.54;
    assert!((ends(&all, "ashenhurst_woollen") - diameters * 1.6 / 2.6).abs() < 1e-6);
    let picks = of(&all, "ashenhurst_woollen.weft_sett");
    assert!((picks - diameters * 2.0 / 3.0).abs() < 1e-6);
    assert!((ends(&all, "galceran_low") - 8.8 / (1.0 + 0.73 / 1.6) * 10.0_f64.sqrt()).abs() < 1e-9);
    assert!(all.find("brierley.warp_sett").unwrap_err().to_string().contains("1.6"));
}

#[test]
fn classes_of_weaves() {
    use WeaveClass::{Hopsack, Other, Plain, Satin, Twill};
    let expected = [
        ("plain", Plain),
        ("2/2 twill", Twill),
        ("1/3 twill", Twill),
        ("5/2/1/2 twill", Twill),
        ("5-end satin", Satin),
        ("8-end sateen", Satin),
        ("2/2 hopsack", Hopsack),
        ("3/3 hopsack", Hopsack),
        ("2/2 warp rib", Other),
        ("2/2 herringbone", Other),
    ];
    for (name, class) in expected {
        assert_eq!(Interlacing::parse(name).unwrap().class, class, "{name}");
    }
    assert!(Interlacing::parse("double plain").unwrap_err().to_string().contains("each layer"));
    // As a matrix, begun anywhere, it is the same weave.
    let hopsack = Weave::from_rows(&["1001", "0110", "0110", "1001"]).unwrap();
    assert_eq!(WeaveClass::of(&hopsack), Hopsack);
}

#[test]
fn a_sett_beyond_every_theory_is_told_with_its_number() {
    let ask_ends = |text: &str| ask("plain", "100 tex", &[("wanted_warp_sett", text)]);
    let all = ask_ends("20 ends/cm");
    let [warning] = all.warnings() else { panic!("{:?}", all.warnings()) };
    assert!(warning.contains("18.28") && warning.contains("9 %"), "{warning}");
    assert!(ask_ends("18 ends/cm").warnings().is_empty());
    // 14 ends of 1.035 times the square sett of Brierley: the picks that are left.
    let all = ask_ends("14 ends/cm");
    let square = ends(&all, "brierley");
    let most = of(&all, "brierley.most_weft_sett");
    let kept = (square.powf(5.0 / 3.0), 14.0_f64.powf(2.0 / 3.0) * most);
    assert!((kept.0 / kept.1 - 1.0).abs() < 1e-12);
    assert!((of(&all, "brierley.warp_sett_share") - 14.0 / square).abs() < 1e-12);
}

#[test]
fn what_is_refused() {
    let refused = |name: &str, text: &str| {
        let mut given = vec![("weave", "plain"), ("warp_count", "100 tex")];
        given.retain(|(other, _)| *other != name);
        given.push((name, text));
        SETTS.solve_texts(&given).unwrap_err().to_string()
    };
    assert!(refused("warp_count", "100 g").contains("warp_count"));
    assert!(refused("yarn_factor", "0").contains("omit it"));
    assert!(refused("wanted_warp_sett", "40 dents/10 cm").contains("wanted_warp_sett"));
    assert!(refused("wanted_weft_sett", "0 picks/cm").contains("0 picks/cm is not possible"));
    assert!(refused("weave", "double plain").contains("each layer"));
    assert!(refused("weave", "2/2 twil").contains("2/2 twill"));
    let all = ask("plain", "100 tex", &[("yarn_factor", "0.6")]);
    assert!(all.warnings()[0].contains("0.8 to 1"), "{:?}", all.warnings());
    let error = all.find("brierly.warp_sett").unwrap_err().to_string();
    assert!(error.contains("did you mean 'brierley.warp_sett'"), "{error}");
}

fn q<T: Typed<f64>>(x: f64) -> T {
    T::from(V(x))
}

proptest! {
    #![proptest_config(cases(300))]

    /// Yarns that happen to be alike get the printed rule, by whichever formula.
    #[test]
    fn rules_for_unlike_yarns_end_in_those_for_like(
        d in 1.0..60.0_f64, r in 2.0..32.0_f64, part in 0.01..1.0_f64
    ) {
        let i = r * part;
        let pairs = [
            (cloth::maximum_sett_unlike(q(d), q(d), q(r), q(i)),
             cloth::maximum_sett(q(d), q(r), q(i))),
            (cloth::curvature_sett_unlike(q(d), q(d), q(r), q(i)),
             cloth::curvature_sett(q(d), q(r), q(i))),
        ];
        for (unlike, like) in pairs {
            prop_assert!((unlike.value() / like.value() - 1.0).abs() < 1e-12);
        }
    }

    /// The jam holds of what comes out, and is the same seen from the other system.
    #[test]
    fn the_jam_holds(d1 in 0.1..1.0_f64, d2 in 0.1..1.0_f64, part in 0.05..0.99_f64) {
        let both = d1 + d2;
        let ends = 10.0 / (part * both);
        let picks = cloth::jam_weft_sett(q(ends), q(d1), q(d2)).value();
        let rest = |n: f64| (1.0 - (10.0 / n / both).powi(2)).max(0.0).sqrt();
        prop_assert!((rest(ends) + rest(picks) - 1.0).abs() < 1e-6, "{ends} {picks}");
        let back = cloth::jam_weft_sett(q(picks), q(d2), q(d1)).value();
        prop_assert!((back / ends - 1.0).abs() < 1e-6, "{back} {ends}");
        // Plain has a float of one: Love's is then Peirce's.
        let love = cloth::jam_weft_sett_of_weave(q(ends), q(d1), q(d2), q(1.0), q(1.0)).value();
        prop_assert!((love / picks - 1.0).abs() < 1e-9);
    }

    /// The sett by curvature with both bent alike is one of the jams.
    #[test]
    fn curvature_is_a_jam(
        d1 in 0.1..1.0_f64, d2 in 0.1..1.0_f64, f1 in 1.0..5.0_f64, f2 in 1.0..5.0_f64
    ) {
        let (n1, n2) = (10.0 / d1, 10.0 / d2);
        let ends = cloth::curvature_sett_unlike(q(n1), q(n2), q(f2), q(1.0));
        let picks = cloth::curvature_sett_unlike(q(n2), q(n1), q(f1), q(1.0));
        let jam = cloth::jam_weft_sett_of_weave(ends, q(d1), q(d2), q(f2), q(f1));
        prop_assert!((jam.value() / picks.value() - 1.0).abs() < 1e-9);
    }

    /// A weave changed and changed back, a weight, a yarn: the cloth is as it was, and as firm.
    #[test]
    fn changes_keep_the_firmness(
        n in 2.0..40.0_f64, t in 10.0..500.0_f64, w in 0.5..2.0_f64,
        r1 in 2.0..20.0_f64, r2 in 2.0..20.0_f64, p1 in 0.1..1.0_f64, p2 in 0.1..1.0_f64
    ) {
        let factor = 0.84;
        let share = |sett: Sett<f64>, count: LinearDensity<f64>, r: f64, i: f64| {
            let d = cloth::diameters_side_by_side(q(factor), count);
            cloth::share_of_maximum(sett, cloth::maximum_sett(d, q(r), q(i))).value()
        };
        let (i1, i2) = (r1 * p1, r2 * p2);
        let before = share(q(n), q(t), r1, i1);
        let woven = cloth::sett_for_weave(q(n), q(r1), q(i1), q(r2), q(i2));
        let same = |a: f64| (a / before - 1.0).abs() < 1e-12;
        prop_assert!(same(share(woven, q(t), r2, i2)));
        let (heavier, opener) = (cloth::count_for_weight(q(t), q(w)), cloth::sett_for_weight(q(n), q(w)));
        prop_assert!(same(share(opener, heavier, r1, i1)));
        // And the weight is that: sett times count.
        prop_assert!((opener.value() * heavier.value() / (n * t) / w - 1.0).abs() < 1e-12);
        let other = cloth::sett_for_count(q(n), q(t), q(3.0 * t));
        prop_assert!(same(share(other, q(3.0 * t), r1, i1)));
        // The yarn for a sett at that share is the yarn at hand.
        let yarn = cloth::count_for_sett(q(factor), q(n), q(before), q(r1), q(i1)).value();
        prop_assert!((yarn / t - 1.0).abs() < 1e-12);
    }

    /// Brierley's law of unequal setts: square at the square sett, and the product keeps.
    #[test]
    fn unequal_setts(n in 5.0..40.0_f64, ends in 5.0..40.0_f64, t in 10.0..500.0_f64) {
        let picks = cloth::brierley_weft_sett(q(n), q(ends)).value();
        prop_assert!((ends.powf(2.0 / 3.0) * picks / n.powf(5.0 / 3.0) - 1.0).abs() < 1e-12);
        prop_assert!((cloth::brierley_weft_sett(q(n), q(n)).value() / n - 1.0).abs() < 1e-12);
        let unlike = cloth::brierley_weft_sett_unlike(q(n), q(ends), q(t), q(t)).value();
        prop_assert!((unlike / picks - 1.0).abs() < 1e-12);
    }
}
