//! Oil and water, scour liquor, dye bath: masses balance, and dilution is that of mixing by hand.

use hankwise::mill::{self, Addition};
use hankwise::particulars::Particulars;
use hankwise::prelude::*;
use proptest::prelude::*;

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1e-6)
}

fn value(of: &Particulars, name: &str) -> f64 {
    of.find(name).unwrap_or_else(|e| panic!("{e}")).value
}

fn percent(x: f64) -> String {
    format!("{} %", 100.0 * x)
}

fn emulsion(given: &[(&str, &str)]) -> Result<Particulars> {
    mill::emulsion(&mill::emulsion_items().read(given)?)
}

proptest! {
    #[test]
    fn oiling_conserves_mass(
        mass in 1.0..500.0_f64, regain in 0.05..0.2_f64, more in 0.001..0.15_f64,
        oil in 0.01..0.12_f64, fat in 0.0..0.03_f64, share in 0.2..0.9_f64,
    ) {
        let texts = [
            ("mass", format!("{mass} kg")), ("regain", percent(regain)), ("fat", percent(fat)),
            ("oil", percent(oil)), ("wanted", percent(regain + more)),
        ];
        let given: Vec<(&str, &str)> = texts.iter().map(|(n, t)| (*n, t.as_str())).collect();
        let lot = emulsion(&given).unwrap();
        let put_on = value(&lot, "oil_mass") + value(&lot, "water_mass");
        prop_assert!(close(value(&lot, "mass_after"), mass + put_on));
        prop_assert!(close(value(&lot, "emulsion_mass"), put_on));
        prop_assert!(close(value(&lot, "regain_after"), regain + more));
        // By an emulsion of the same share it is the same lot.
        let same = percent(value(&lot, "emulsion_oil"));
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
            let none = Fraction::base(0.0);
            fibre::state_ratio(Regain::base(regain), Fraction::base(fat), none).value()
        };
        let loss = mill::scouring_loss(Fraction::base(oil), Fraction::base(left), Regain::base(regain));
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
            ("stock", "20 g/L".to_owned()), ("wet", "1 L".to_owned()),
        ];
        let given: Vec<(&str, &str)> = texts.iter().map(|(n, t)| (*n, t.as_str())).collect();
        let salt = Addition::new("salt", parse_as("5 g/L", Kind::Concentration).unwrap(), None).unwrap();
        let bath = mill::dye_bath(&mill::dye_bath_items().read(&given).unwrap(), &[salt], None).unwrap();
        let (dye, liquor) = (value(&bath, "dye"), value(&bath, "liquor"));
        prop_assert!(close(dye, goods * depth));
        prop_assert!(close(liquor, value(&bath, "stock_volume") + value(&bath, "water") + 1.0));
        prop_assert!(close(value(&bath, "salt_mass"), 0.005 * liquor));
        let before = mill::concentration_from_mass(Mass::base(dye), Volume::base(liquor));
        let after = Concentration::base(value(&bath, "left_concentration"));
        let liquor = Volume::base(liquor);
        let found = mill::exhaustion_from_baths(before, liquor, after, liquor).value();
        prop_assert!((found - exhaustion).abs() < 1e-9);
    }
}

#[test]
fn what_does_not_go_together_is_refused() {
    let lot = [("mass", "40 kg"), ("regain", "14 %"), ("oil", "5 %")];
    let with = |more: &[(&'static str, &'static str)]| {
        emulsion(&[&lot[..], more].concat()).unwrap_err().to_string()
    };
    assert!(with(&[]).contains("how much water is missing"));
    assert!(with(&[("wanted", "12 %")]).contains("dry it first"));
    assert!(with(&[("wanted", "16 %"), ("oil_share", "20 %")]).contains("write oil_share at"));
    assert!(with(&[("wanted", "20 %"), ("fibre", "3 kg")]).contains("leave one out"));
    let scour = |given: &[(&str, &str)]| {
        mill::scour_liquor(&mill::scour_liquor_items().read(given).unwrap())
    };
    let wool = [("mass", "20 kg"), ("liquor_ratio", "30")];
    let refusal = scour(&[&wool[..], &[("rinses", "2")]].concat()).unwrap_err().to_string();
    assert!(refusal.contains("pickup is missing"), "{refusal}");
    let hot = scour(&[&wool[..], &[("temperature", "150 °F")]].concat()).unwrap();
    assert!(hot.warnings().iter().any(|w| w.contains("60 °C")), "{:?}", hot.warnings());
    let names: Vec<&str> = hot.cautions().iter().map(|c| c.name).collect();
    assert!(names.contains(&"scouring") && names.contains(&"raw fleece"), "{names:?}");
    let bath = [("mass", "20 kg"), ("depth", "2 %"), ("liquor_ratio", "30")];
    let dye = |more: &[(&'static str, &'static str)]| {
        let given = mill::dye_bath_items().read(&[&bath[..], more].concat()).unwrap();
        mill::dye_bath(&given, &[], None)
    };
    assert!(dye(&[("recipe_regain", "16 %")]).unwrap_err().to_string().contains("regain='14 %'"));
    assert!(dye(&[("stock", "0.5 g/L")]).unwrap_err().to_string().contains("stronger stock"));
    let plain = dye(&[]).unwrap();
    assert!(plain.report().text().contains("source was not told"));
    assert!(plain.cautions().iter().any(|c| c.name == "dyeing"));
}

/// Liquor is told in the gallon of the concentration that was given: imperial or of the United States.
#[test]
fn a_liquor_is_told_in_the_gallon_that_was_meant() {
    for (gallon, litres) in [("imp gal", 4.546_09), ("US gal", 3.785_411_784)] {
        let soap = format!("1 oz/{gallon}");
        let lot = [("mass", "10 kg"), ("liquor_ratio", "30"), ("soap", soap.as_str())];
        let lot = mill::scour_liquor_items().read(&lot).unwrap();
        let said = mill::scour_liquor(&lot).unwrap().report().text();
        let expected = format!("{:.2} {gallon}", 300.0 / litres);
        assert!(said.contains(&expected), "{expected} in {said}");
    }
}

/// Washes one after another: what each takes multiplies, what each wants adds up.
#[test]
fn washes_compound_and_their_liquors_add() {
    let lot = mill::washes_items().read(&[("mass", "20 kg"), ("fat", "24 %")]).unwrap();
    let wash = |place, removed: &str| {
        let said = [("liquor_ratio", "25"), ("soap", "4 g/L"), ("removed", removed)];
        mill::wash_items(place).read(&said).unwrap()
    };
    let found = mill::washes(&lot, &[wash(1, "80 %"), wash(2, "75 %"), wash(3, "50 %")]).unwrap();
    let figure = |name: &str| found.find(name).unwrap().value;
    assert!((figure("fat_after_1") - 0.048).abs() < 1e-12);
    assert!((figure("fat_after_3") - 0.24 * 0.2 * 0.25 * 0.5).abs() < 1e-12);
    assert!((figure("water") - 3.0 * 500.0).abs() < 1e-9);
    assert!((figure("soap_mass") - 3.0 * figure("soap_1")).abs() < 1e-12);
    assert!(found.report().text().contains("! Scouring: "));
    // Where one wash was not tested, nothing is left to say of the grease.
    let bare = mill::wash_items(2).read(&[("liquor_ratio", "25")]).unwrap();
    let error = mill::washes(&lot, &[wash(1, "80 %"), bare]).unwrap_err().to_string();
    assert!(error.contains("write all of these or none"), "{error}");
    let none = mill::washes(&lot, &[]).unwrap_err().to_string();
    assert!(none.contains("no wash is given"), "{none}");
    let hot =
        mill::wash_items(1).read(&[("liquor_ratio", "25"), ("temperature", "150 °F")]).unwrap();
    let lot = mill::washes_items().read(&[("mass", "20 kg")]).unwrap();
    let warned = mill::washes(&lot, &[hot]).unwrap();
    assert!(warned.warnings()[0].starts_with("wash_1.temperature: 150 °F is more than the 60 °C"));
}
