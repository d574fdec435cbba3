//! Moisture: identities between regain and content, blends by brute force, the curve of wool.

use hankwise::fibre;
use hankwise::prelude::*;
use proptest::prelude::*;

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * a.abs().max(b.abs()).max(1e-3)
}

proptest! {
    #[test]
    fn regain_and_content_undo_each_other(r in 0.0..2.0_f64) {
        let content = fibre::moisture_content(Regain::base(r));
        prop_assert!(close(fibre::regain_from_content(content).value(), r));
        prop_assert!(content.value() <= r && content.value() < 1.0);
    }

    #[test]
    fn every_way_to_the_oven_dry_mass_is_one(
        mass in 1.0..1000.0_f64, sample in 0.1..0.5_f64, r in 0.0..0.4_f64,
    ) {
        let (mass, regain) = (Mass::base(mass), Regain::base(r));
        let content = fibre::moisture_content(regain);
        let dry = fibre::oven_dry_mass(mass, regain).value();
        prop_assert!(close(fibre::oven_dry_from_content(mass, content).value(), dry));
        let sample = Mass::base(sample);
        let dried = fibre::oven_dry_mass(sample, regain);
        prop_assert!(close(fibre::oven_dry_mass_of_lot(mass, sample, dried).value(), dry));
        prop_assert!(close(fibre::regain_from_masses(sample, dried).value() + 1.0, r + 1.0));
        let water = fibre::water_in_mass(mass, regain).value();
        prop_assert!(close(fibre::water_from_content(mass, content).value(), water));
        prop_assert!(close(dry + water, mass.value()));
        // An invoice without fat is the mass at the allowance.
        let allowance = Regain::base(0.17);
        let invoiced = fibre::commercial_mass(Mass::base(dry), allowance, OnFibre::base(0.0));
        prop_assert!(close(invoiced.value(), fibre::mass_at_regain(mass, regain, allowance).value()));
        let by_content = fibre::invoice_mass_from_content(mass, content, allowance);
        prop_assert!(close(by_content.value(), invoiced.value()));
        let none = OnFibre::base(0.0);
        let cleaned = fibre::invoice_mass_of_cleaned(mass, sample, dried, allowance, none, none);
        prop_assert!(close(cleaned.value(), invoiced.value()));
    }

    /// Three fibres weighed out, each dried and given its allowance by itself.
    #[test]
    fn a_blend_is_the_sum_of_its_fibres(
        masses in proptest::array::uniform3(1.0..50.0_f64),
        found in proptest::array::uniform3(0.0..0.3_f64),
        agreed in proptest::array::uniform3(0.0..0.2_f64),
    ) {
        let whole: f64 = masses.iter().sum();
        let weighed = masses.map(|m| m / whole);
        let found_regains = found.map(Regain::base);
        let mut shares = [0.0; 3];
        for (k, share) in shares.iter_mut().enumerate() {
            let (mut q, mut r) = (weighed, found_regains);
            q.swap(0, k);
            r.swap(0, k);
            *share = fibre::dry_share(&q.map(Fraction::base), &r).value();
        }
        prop_assert!(close(shares.iter().sum(), 1.0));
        let blend = fibre::blend_regain(&shares.map(Fraction::base), &agreed.map(Regain::base));
        let dry: Vec<f64> = masses.iter().zip(found).map(|(m, r)| m / (1.0 + r)).collect();
        let invoice: f64 = dry.iter().zip(agreed).map(|(d, a)| d * (1.0 + a)).sum();
        let all: f64 = dry.iter().sum();
        prop_assert!(close(all * (1.0 + blend.value()), invoice));
        // What one fibre has is found again from the others.
        let rest = 1.0 - shares[0];
        let others = fibre::blend_regain(
            &[Fraction::base(shares[1] / rest), Fraction::base(shares[2] / rest)],
            &[Regain::base(agreed[1]), Regain::base(agreed[2])],
        );
        let first = fibre::regain_of_remainder(blend, Fraction::base(shares[0]), others);
        prop_assert!((first.value() - agreed[0]).abs() < 1e-9);
    }

    #[test]
    fn the_curve_rises_and_is_undone(a in 0.10..0.90_f64, b in 0.10..0.90_f64) {
        let at = |x: f64| {
            fibre::equilibrium_regain(&fibre::AirInputs { humidity: Fraction::base(x) })
        };
        let (low, high) = (at(a.min(b)), at(a.max(b)));
        let damping = low.damping_regain.value();
        prop_assert!(damping <= high.damping_regain.value() + 1e-15);
        prop_assert!(damping < low.drying_regain_low.value());
        prop_assert!(low.drying_regain_low.value() < low.drying_regain_high.value());
        let back =
            fibre::humidity_for_regain(&fibre::KeepingInputs { regain: low.damping_regain });
        prop_assert!((back.damping_humidity.value() - a.min(b)).abs() < 1e-9);
        // Drying keeps the same regain in drier air.
        if let (Some(most), Some(least)) = (back.drying_humidity_high, back.drying_humidity_low) {
            prop_assert!(least.value() < most.value());
            prop_assert!(most.value() < back.damping_humidity.value());
        }
    }
}

#[test]
fn the_curve_goes_through_its_points() {
    let table = hankwise::catalogue::table("wool_isotherm").unwrap();
    for humidity in (10..=90).step_by(10) {
        let text = format!("{humidity} %");
        let found: Vec<_> = table.find(&format!("absorption {humidity}")).collect();
        let curve = fibre::EQUILIBRIUM_REGAIN.solve_texts(&[("humidity", &text)]).unwrap();
        let regain = curve.find("damping_regain").unwrap().value;
        assert!(close(regain, found[0].low / 100.0), "{text}");
    }
    for outside in ["9.9 %", "90.1 %"] {
        let refusal = fibre::EQUILIBRIUM_REGAIN.solve_texts(&[("humidity", outside)]);
        let refusal = refusal.unwrap_err().to_string();
        assert!(refusal.contains("10 to 90 %"), "{refusal}");
    }
    assert!(fibre::HUMIDITY_FOR_REGAIN.solve_texts(&[("regain", "3 %")]).is_err());
}

#[test]
fn an_allowance_is_one_figure_of_a_list() {
    let of = |fibre: &str, list: Option<&str>| fibre::allowance(fibre, list).map(|f| f.low);
    assert_eq!(of("wool combed", None).unwrap().to_bits(), 18.25_f64.to_bits());
    assert_eq!(of("woollen", None).unwrap().to_bits(), 17.0_f64.to_bits());
    assert_eq!(of("wool ASTM", None).unwrap().to_bits(), 13.6_f64.to_bits());
    assert_eq!(of("Polypropylene", Some("eu")).unwrap().to_bits(), 2.0_f64.to_bits());
    // Both have the same value, so either will do.
    assert_eq!(of("polyester", None).unwrap().to_bits(), 1.5_f64.to_bits());
    for (fibre, list, said) in [
        ("wool", None, "'wool, combed' (18.25 %), 'wool, carded' (17 %)"),
        ("wol carded", None, "did you mean 'wool, carded'"),
        ("lyocell", Some("ASTM"), "is EU meant"),
        ("silk", Some("BISFA"), "unknown list of allowances 'BISFA'"),
        ("", None, "no fibre"),
    ] {
        let refusal = of(fibre, list).unwrap_err().to_string();
        assert!(refusal.contains(said), "{fibre}: {refusal}");
    }
    let lists: std::collections::BTreeSet<_> =
        fibre::allowances("wool").unwrap().iter().map(|f| f.of[1]).collect();
    assert_eq!(lists.len(), 3);
}

#[test]
fn an_invoice_refuses_what_does_not_go_together() {
    let refuse =
        |given: &[(&str, &str)]| fibre::INVOICE.solve_texts(given).unwrap_err().to_string();
    let (mass, at) = (("lot_mass", "500 kg"), ("allowances", "17 %"));
    let regain = ("regain", "17 %");
    for (given, said) in [
        (vec![mass, at], "write sample_mass=… or regain=… or moisture_content=…"),
        (vec![mass, at, regain, ("moisture_content", "15 %")], "omit all but one"),
        (vec![mass, at, regain, ("dry_sample_mass", "200 g")], "omit all but one"),
        (vec![mass, at, ("sample_mass", "200 g"), ("dry_sample_mass", "250 g")], "exchanged"),
        (vec![mass, at, ("sample_mass", "200 g")], "dry_sample_mass (sample, oven-dry"),
        (vec![regain, at], "lot_mass (mass of the lot on the scale) is missing"),
        (vec![mass, regain], "allowances (agreed allowances for water"),
        (vec![mass, regain, ("allowances", "17 %, 17 %")], "given twice"),
        (vec![("dry_sample_mas", "2 kg")], "did you mean 'dry_sample_mass'"),
    ] {
        let refusal = refuse(&given);
        assert!(refusal.contains(said), "{refusal}");
    }
}
