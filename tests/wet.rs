//! Oil and water, scour liquor, dye bath: masses balance, and dilution is that of mixing by hand.

use hankwise::calculation::{Solved, Value};
use hankwise::mill;
use hankwise::prelude::*;
use proptest::prelude::*;

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1e-6)
}

fn value(of: &Solved, name: &str) -> f64 {
    of.find(name).unwrap_or_else(|e| panic!("{e}")).value
}

fn percent(x: f64) -> String {
    format!("{} %", 100.0 * x)
}

fn emulsion(given: &[(&str, &str)]) -> Result<Solved> {
    mill::EMULSION.solve_texts(given)
}

proptest! {
    #[test]
    fn oiling_conserves_mass(
        mass in 1.0..500.0_f64, regain in 0.05..0.2_f64, more in 0.001..0.15_f64,
        oil in 0.01..0.12_f64, fat in 0.0..0.03_f64, share in 0.2..0.9_f64,
    ) {
        let texts = [
            ("mass", format!("{mass} kg")), ("regain_before", percent(regain)), ("fat_before", percent(fat)),
            ("oil_added", percent(oil)), ("wanted_regain", percent(regain + more)),
        ];
        let given: Vec<(&str, &str)> = texts.iter().map(|(n, t)| (*n, t.as_str())).collect();
        let lot = emulsion(&given).unwrap();
        let put_on = value(&lot, "oil_mass") + value(&lot, "water_mass");
        prop_assert!(close(value(&lot, "mass_after"), mass + put_on));
        prop_assert!(close(value(&lot, "emulsion_mass"), put_on));
        prop_assert!(close(value(&lot, "regain_after"), regain + more));
        // By an emulsion of the same share it is the same lot.
        let same = percent(value(&lot, "oil_share"));
        let mut by_share = given.clone();
        by_share[4] = ("oil_share", &same);
        let again = emulsion(&by_share).unwrap();
        prop_assert!(close(value(&again, "mass_after"), value(&lot, "mass_after")));
        // With both, what the emulsion does not bring is put on beside it, or it is refused.
        let share = percent(share);
        let mut both = given.clone();
        both.push(("oil_share", &share));
        match emulsion(&both) {
            Ok(split) => {
                let water = value(&split, "water_mass") + value(&split, "water_beside");
                prop_assert!(close(water, value(&lot, "water_mass")));
            }
            Err(refusal) => prop_assert!(refusal.to_string().contains("write oil_share at")),
        }
    }

    /// What is dissolved is shared out by volume, rinse after rinse.
    #[test]
    fn rinses_dilute_as_mixing_does(
        carried in 1.0..50.0_f64, rinses in proptest::collection::vec(10.0..500.0_f64, 1..6),
    ) {
        let mut dissolved = 1.0;
        for rinse in &rinses {
            let concentration = dissolved / (carried + rinse);
            dissolved = concentration * carried;
        }
        let rinses: Vec<_> = rinses.into_iter().map(Volume::base).collect();
        let left = mill::left_after_rinses(Volume::base(carried), &rinses).value();
        prop_assert!(close(left, dissolved));
    }

    /// The oil is weighed out of the yarn: the loss is that of the masses.
    #[test]
    fn scouring_loss_is_that_of_the_states(
        oil in 0.0..0.2_f64, left in 0.0..0.02_f64, regain in 0.0..0.3_f64,
    ) {
        let state = |fat: f64| {
            let none = OnFibre::base(0.0);
            fibre::state_ratio(Regain::base(regain), OnFibre::base(fat), none).value()
        };
        let loss = mill::scouring_loss(OnFibre::base(oil), OnFibre::base(left), Regain::base(regain));
        prop_assert!((loss.value() - (1.0 - state(left) / state(oil))).abs() < 1e-12);
    }

    #[test]
    fn a_bath_holds_what_was_put_in(
        goods in 0.5..200.0_f64, depth in 0.001..0.08_f64, ratio in 10.0..60.0_f64,
        exhaustion in 0.3..1.0_f64,
    ) {
        let texts = [
            ("mass", format!("{goods} kg")), ("depth", percent(depth)),
            ("liquor_ratio", format!("{ratio}")), ("exhaustion", percent(exhaustion)),
            ("stock_concentration", "20 g/L".to_owned()), ("goods_water", "1 L".to_owned()),
        ];
        let given: Vec<(&str, &str)> = texts.iter().map(|(n, t)| (*n, t.as_str())).collect();
        let mut given = mill::DYE_BATH.blank().with_texts(&given).unwrap();
        let salt = given.row("additions").unwrap();
        let salt = salt.with_texts(&[("name", "salt"), ("in_liquor", "5 g/L")]).unwrap();
        given.set("additions", Value::Rows(vec![salt])).unwrap();
        let bath = mill::DYE_BATH.solve(given).unwrap();
        let (dye, liquor) = (value(&bath, "dye_mass"), value(&bath, "liquor_volume"));
        prop_assert!(close(dye, goods * depth));
        let filled = value(&bath, "stock_volume") + value(&bath, "water_volume") + 1.0;
        prop_assert!(close(liquor, filled));
        prop_assert!(close(value(&bath, "salt.mass"), 0.005 * liquor));
        let before = mill::concentration_from_mass(Mass::base(dye), Volume::base(liquor));
        let after = Concentration::base(value(&bath, "concentration_after"));
        let liquor = Volume::base(liquor);
        let found = mill::exhaustion_from_baths(before, liquor, after, liquor).value();
        prop_assert!((found - exhaustion).abs() < 1e-9);
    }
}

#[test]
fn what_does_not_go_together_is_refused() {
    let lot = [("mass", "40 kg"), ("regain_before", "14 %"), ("oil_added", "5 %")];
    let with = |more: &[(&'static str, &'static str)]| {
        emulsion(&[&lot[..], more].concat()).unwrap_err().to_string()
    };
    assert!(with(&[]).contains("how much water to add is missing"));
    assert!(with(&[("wanted_regain", "12 %")]).contains("dry it first"));
    assert!(
        with(&[("wanted_regain", "16 %"), ("oil_share", "20 %")]).contains("write oil_share at")
    );
    assert!(
        with(&[("wanted_regain", "20 %"), ("fibre_mass", "3 kg")]).contains("omit all but one")
    );
    let scour = |given: &[(&str, &str)]| mill::SCOUR_LIQUOR.solve_texts(given);
    let wool = [("mass", "20 kg"), ("liquor_ratio", "30")];
    let refusal = scour(&[&wool[..], &[("rinses", "2")]].concat()).unwrap_err().to_string();
    assert!(refusal.contains("rinses was given without pickup"), "{refusal}");
    let hot = scour(&[&wool[..], &[("temperature", "150 °F")]].concat()).unwrap();
    assert!(hot.warnings().iter().any(|w| w.contains("60 °C")), "{:?}", hot.warnings());
    let names: Vec<&str> = hot.cautions().iter().map(|c| c.name).collect();
    assert!(names.contains(&"scouring") && names.contains(&"raw fleece"), "{names:?}");
    let bath = [("mass", "20 kg"), ("depth", "2 %"), ("liquor_ratio", "30")];
    let dye = |more: &[(&'static str, &'static str)]| {
        mill::DYE_BATH.solve_texts(&[&bath[..], more].concat())
    };
    let refused = |more| dye(more).unwrap_err().to_string();
    assert!(refused(&[("recipe_regain", "16 %")]).contains("without regain_before"));
    assert!(refused(&[("shrinkage", "4 %")]).contains("without count_before"));
    assert!(refused(&[("stock_concentration", "0.5 g/L")]).contains("stronger stock"));
    let plain = dye(&[]).unwrap();
    assert!(plain.report().text().contains("source was not given"));
    assert!(plain.cautions().iter().any(|c| c.name == "dyeing"));
}

/// Liquor is told in the gallon of the concentration that was given: imperial or of the United States.
#[test]
fn a_liquor_is_told_in_the_gallon_that_was_meant() {
    for (gallon, litres) in [("imp gal", 4.546_09), ("US gal", 3.785_411_784)] {
        let soap = format!("1 oz/{gallon}");
        let lot = [("mass", "10 kg"), ("liquor_ratio", "30"), ("soap_concentration", &soap)];
        let said = mill::SCOUR_LIQUOR.solve_texts(&lot).unwrap().report().text();
        let expected = format!("{:.2} {gallon}", 300.0 / litres);
        assert!(said.contains(&expected), "{expected} in {said}");
    }
}

/// Washes one after another: what each takes multiplies, what each wants adds up.
#[test]
fn washes_compound_and_their_liquors_add() {
    let washes = |lot: &[(&str, &str)], all: &[&[(&str, &str)]]| {
        let mut given = mill::WASHES.blank().with_texts(lot).unwrap();
        let row = |wash: &&[(&str, &str)]| given.row("washes").unwrap().with_texts(wash).unwrap();
        let rows = all.iter().map(row).collect();
        given.set("washes", Value::Rows(rows)).unwrap();
        mill::WASHES.solve(given)
    };
    let lot = [("mass", "20 kg"), ("fat_before", "24 %")];
    let wash = |removed| {
        [("liquor_ratio", "25"), ("soap_concentration", "4 g/L"), ("removed_share", removed)]
    };
    let found = washes(&lot, &[&wash("80 %"), &wash("75 %"), &wash("50 %")]).unwrap();
    assert!((value(&found, "washes[1].fat_after") - 0.048).abs() < 1e-12);
    assert!((value(&found, "washes[3].fat_after") - 0.24 * 0.2 * 0.25 * 0.5).abs() < 1e-12);
    assert!((value(&found, "water_volume") - 3.0 * 500.0).abs() < 1e-9);
    let soap = value(&found, "soap_mass");
    assert!((soap - 3.0 * value(&found, "washes[1].soap_mass")).abs() < 1e-12);
    assert!(found.report().text().contains("! Scouring: "));
    // Where one wash was not tested, nothing is left to say of the grease.
    let bare = [("liquor_ratio", "25")];
    let error = washes(&lot, &[&wash("80 %"), &bare]).unwrap_err().to_string();
    assert!(error.contains("write all of these or none"), "{error}");
    let none = washes(&lot, &[]).unwrap_err().to_string();
    assert!(none.contains("washes (the washes, in order) is missing"), "{none}");
    let hot = [("liquor_ratio", "25"), ("temperature", "150 °F")];
    let warned = washes(&[("mass", "20 kg")], &[&hot]).unwrap();
    let warning = "washes[1].temperature: 150 °F is more than the 60 °C";
    assert!(warned.warnings()[0].starts_with(warning), "{:?}", warned.warnings());
}
