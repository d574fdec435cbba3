//! Cover of woven cloth and tightness of knitted: the forms against their definitions, the laws.

use hankwise::prelude::*;
use hankwise::quantity::{Definition, define, unit};
use proptest::prelude::*;

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * a.abs().max(b.abs()).max(1e-300)
}

/// The ratios of the forms are roots of ratios of hanks: 840, 560 and 256 yards to a pound.
#[test]
fn forms_stand_apart_by_the_roots_of_their_hanks() {
    let peirce = CoverFactor::parse("12 K_Ne").unwrap();
    let worsted = peirce.number("K_worsted").unwrap();
    let skeins = peirce.number("K_YSW").unwrap();
    assert!(close(worsted / 12.0, (560.0_f64 / 840.0).sqrt()));
    assert!(close(skeins / 12.0, (256.0_f64 / 840.0).sqrt()));
    // 2.54 × 10 ÷ √(a pound in grams ÷ 840 yards in kilometres)
    let tex = 453.592_37 / (840.0 * 0.000_914_4);
    assert!(close(peirce.number("K_SI").unwrap(), 12.0 * tex.sqrt() / 25.4));
    for (name, same) in [("K_Peirce", "K_Ne"), ("threads/in/√Ne", "K_Ne"), ("K YSW", "K_YSW")] {
        let kind = Some(Kind::CoverFactor);
        assert_eq!(unit(name, kind).unwrap().symbol, same);
        assert_eq!(unit(name, None).unwrap().symbol, same);
    }
}

#[test]
fn a_form_must_be_named() {
    for (text, words) in [
        ("12", "12 has no unit; write a cover factor such as '12.5 K_SI'"),
        ("12 K", "unit of twist factor"),
        ("28 threads/in", "unit of sett"),
        ("12 K_Nm", "unknown unit 'K_Nm' for a cover factor"),
    ] {
        let told = CoverFactor::parse(text).unwrap_err().to_string();
        assert!(told.contains(words), "{text}: {told}");
    }
    let told = TightnessFactor::parse("14").unwrap_err().to_string();
    assert!(told.contains("√tex/cm"), "{told}");
    assert!(close(TightnessFactor::parse("1.4 √tex/mm").unwrap().value(), 14.0));
}

#[test]
fn an_own_count_has_its_own_form() {
    let (name, length, mass) = ("cover-cut".into(), "420 yd".into(), "1 lb".into());
    define(&Definition { name, length, mass, ..Definition::default() }).unwrap();
    let own = CoverFactor::parse("12 K_cover-cut").unwrap();
    assert!(close(own.number("K_Ne").unwrap(), 12.0 * 2.0_f64.sqrt()));
    assert_eq!(unit("threads/in/√cover-cut", None).unwrap().symbol, "K_cover-cut");
}

#[test]
fn crowded_threads_cover_no_more_than_the_whole() {
    let cover = |sett, d| cloth::fractional_cover(Sett::base(sett), Diameter::base(d)).value();
    assert!(close(cover(10.0, 0.5), 0.5));
    assert!(close(cover(20.0, 0.5), 1.0));
    assert!(close(cover(40.0, 0.5), 1.0));
}

proptest! {
    #[test]
    fn every_form_is_threads_by_the_root_of_its_count(n in 1.0..200.0f64, count in 0.5..80.0f64) {
        for system in ["Ne", "worsted", "YSW"] {
            let sett = Sett::parse(&format!("{n} threads/in")).unwrap();
            let yarn = LinearDensity::parse(&format!("{count} {system}")).unwrap();
            let factor = cloth::cover_factor(sett, yarn);
            let got = factor.number(&format!("K_{system}")).unwrap();
            prop_assert!(close(got, n / count.sqrt()), "{system}: {got}");
            prop_assert!(close(cloth::sett_for_cover_factor(factor, yarn).value(), sett.value()));
            prop_assert!(close(cloth::count_for_cover_factor(factor, sett).value(), yarn.value()));
        }
    }

    /// By way of the diameter and by way of the cover factor the cover is the same; it is whole just
    /// where the factor reaches its limit.
    #[test]
    fn both_ways_to_the_cover_agree(n in 1.0..60.0f64, tex in 5.0..1000.0f64, v in 0.7..4.0f64) {
        let (sett, yarn, volume) = (Sett::base(n), LinearDensity::base(tex), SpecificVolume::base(v));
        let straight = cloth::fractional_cover(sett, yarn::yarn_diameter(volume, yarn)).value();
        let factor = cloth::cover_factor(sett, yarn);
        let round = cloth::fractional_cover_of_factor(factor, volume).value();
        prop_assert!(close(straight, round), "{straight} and {round}");
        let limit = cloth::cover_factor_limit(volume).value();
        prop_assert!((factor.value() < limit) == (straight < 1.0) || close(factor.value(), limit));
        prop_assert!(straight >= 1.0 || close(straight, factor.value() / limit));
    }

    /// What is open is open in both systems at once.
    #[test]
    fn holes_multiply(a in 0.0..=1.0f64, b in 0.0..=1.0f64) {
        let total = cloth::total_cover(Fraction::base(a), Fraction::base(b)).value();
        prop_assert!((1.0 - total - (1.0 - a) * (1.0 - b)).abs() < 1e-15);
        let factor = |x: f64| CoverFactor::base(25.0 * x);
        let cloth = cloth::cloth_cover_factor(factor(a), factor(b), factor(1.0)).value();
        prop_assert!((cloth / 25.0 - total).abs() < 1e-12);
    }

    /// Loops × yarn in a loop × count is the mass, whichever way it is reached.
    #[test]
    fn knitting_weighs_its_yarn(c in 1.0..20.0f64, w in 1.0..20.0f64, mm in 2.0..20.0f64, tex in 10.0..1000.0f64) {
        let (courses, wales) = (Sett::base(c), Sett::base(w));
        let (l, yarn) = (Length::base(mm / 1000.0), LinearDensity::base(tex));
        // A metre square, course by course: metres of yarn times grams in a kilometre.
        let by_hand = (100.0 * c) * (100.0 * w) * (mm / 1000.0) * tex / 1000.0;
        let loops = cloth::loops_on_area(courses, wales);
        prop_assert!(close(cloth::knit_mass_per_area(loops, l, yarn).value(), by_hand));
        let (kc, kw) = (cloth::loop_constant(courses, l), cloth::loop_constant(wales, l));
        prop_assert!(close(cloth::loop_density(kc, kw, l).value(), c * w));
        let ks = cloth::stitch_constant(kc, kw);
        prop_assert!(close(cloth::knit_mass_per_area_by_constant(ks, l, yarn).value(), by_hand));
        prop_assert!(close(cloth::courses_for_loop(kc, l).value(), c));
        prop_assert!(close(cloth::loop_shape(courses, wales).value() * kw.value(), kc.value()));
        // As much a square metre as a course of a metre, knitted a metre deep.
        let take_up = cloth::knit_take_up(wales, l);
        let one = Length::base(1.0);
        let mass = cloth::knit_mass(courses, one, one, take_up, yarn);
        prop_assert!(close(1000.0 * mass.value(), by_hand));
        let tight = cloth::tightness_factor(yarn, l);
        prop_assert!(close(cloth::loop_for_tightness(yarn, tight).value(), l.value()));
    }
}
