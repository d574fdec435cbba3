//! Diameter, slope of the twist, wraps, strength and evenness: what holds between the formulas,
//! published answers that take two of them, and how their units are distinguished.

use hankwise::prelude::*;
use hankwise::quantity::unit;
use proptest::prelude::*;

fn answer(name: &str, row: &[f64]) -> f64 {
    catalogue::formula(name).unwrap().answer(row).unwrap()
}

fn relative(got: f64, wanted: f64) -> f64 {
    ((got - wanted) / wanted).abs()
}

fn tex() -> impl Strategy<Value = f64> {
    (0.5..3.3f64).prop_map(|power| 10f64.powf(power))
}

// ---- diameter and twist ------------------------------------------------------------------------

#[test]
fn the_constants_of_the_handbooks() {
    // d[mm] = 0.0356825 √(v·tex), d[µm] = 11.284 √(dtex/ρ) = 11.894 √(den/ρ).
    assert!((answer("yarn_diameter", &[1.0, 1.0]) - 0.035_682_5).abs() < 5e-8);
    assert!((answer("fibre_diameter", &[0.1, 1.0]) - 11.284).abs() < 5e-4);
    assert!((answer("fibre_diameter", &[1.0 / 9.0, 1.0]) - 11.894).abs() < 5e-4);
}

proptest! {
    #[test]
    fn the_slope_is_one_by_either_way(tex in tex(), factor in 5.0..80.0f64, volume in 0.7..6.0f64) {
        let twist = answer("twist_for_factor", &[factor, tex]);
        let diameter = answer("yarn_diameter", &[volume, tex]);
        let slope = answer("helix_angle", &[twist, diameter]);
        let by_factor = answer("helix_angle_from_factor", &[factor, volume]);
        prop_assert!(relative(slope, by_factor) < 1e-12, "{slope} and {by_factor}");
        prop_assert!(relative(answer("twist_for_helix_angle", &[slope, diameter]), twist) < 1e-12);
        // One turn unrolled: its height is 1/t, its foot the girth.
        let foot = std::f64::consts::PI * diameter / 1000.0;
        prop_assert!(relative(slope.to_radians().sin(), foot / foot.hypot(1.0 / twist)) < 1e-12);
    }

    #[test]
    fn packing_and_specific_volume_are_two_ways_to_say_it(
        tex in tex(), packing in 0.15..0.9f64, density in 0.9..2.6f64
    ) {
        let volume = answer("yarn_specific_volume", &[packing, density]);
        let fibre = answer("fibre_specific_volume", &[density]);
        prop_assert!(relative(volume * packing, fibre) < 1e-12);
        let diameter = answer("yarn_diameter", &[volume, tex]);
        prop_assert!(relative(answer("packing_fraction", &[diameter, tex, density]), packing) < 1e-12);
        // A yarn packed without air is a rod, as a fibre is.
        let rod = answer("yarn_diameter", &[fibre, tex]);
        prop_assert!(relative(answer("fibre_diameter", &[tex, density]), 1000.0 * rod) < 1e-12);
    }

    #[test]
    fn diameters_go_as_the_root_of_the_count(a in tex(), b in tex(), volume in 0.7..6.0f64) {
        let diameter = |tex| answer("yarn_diameter", &[volume, tex]);
        let other = answer("diameter_rescaled", &[diameter(a), a, b]);
        prop_assert!(relative(other, diameter(b)) < 1e-12);
        // Peirce's 28 is a factor of 28/√840 to Ashenhurst, who counts yards in a pound.
        let side_by_side = answer("diameters_side_by_side", &[28.0 / 840f64.sqrt(), a]);
        prop_assert!(relative(answer("peirce_diameter", &[a]) * side_by_side, 10.0) < 1e-12);
    }

    #[test]
    fn a_wool_fibre_there_and_back(diameter in 12.0..50.0f64) {
        let count = answer("wool_fibre_count", &[diameter]);
        prop_assert!(relative(answer("fibre_diameter", &[count, 1.31]), diameter) < 1e-12);
    }
}

/// GATE 2008 Q71, for cotton of 1.54 g/cm³: d = 0.00444 √(tex/ρ) cm, said to be a packing of 0.65.
#[test]
fn a_published_diameter_from_the_packing() {
    // By its constant rather than by the packing, which it rounds.
    let packing = answer("packing_fraction", &[0.0444, 1.0, 1.0]);
    assert!((packing - 0.65).abs() <= 0.005, "{packing}");
    let centimetres = |tex: f64| {
        let volume = answer("yarn_specific_volume", &[packing, 1.54]);
        answer("yarn_diameter", &[volume, tex]) / 10.0
    };
    assert!((centimetres(30.0) - 0.019_58).abs() <= 3e-5);
    assert!((centimetres(15.0) - 0.013_94).abs() <= 1e-4);
}

#[test]
fn an_angle_is_worked_in_degrees() {
    let given = [parse("500 turns/m").unwrap(), parse_as("0.4 mm", Kind::Diameter).unwrap()];
    let working =
        catalogue::formula("helix_angle").unwrap().working(&given, &[None, None]).unwrap();
    let text = working.text();
    assert!(text.contains("arctan(") && text.contains("× 180 / π") && text.contains("32.14 °"));
    let latex = working.latex();
    assert!(
        latex.contains(r"\arctan\left(") && latex.contains(r"32.14\ \text{$^\circ$}"),
        "{latex}"
    );
}

// ---- wraps -------------------------------------------------------------------------------------

#[test]
fn two_published_rules_for_wraps_are_60_percent_apart() {
    let count = |factor| answer("count_from_wraps", &[factor, 28.0 / 2.54]);
    let yards = |tex| convert(tex, "tex", "yd/lb").unwrap();
    let [.., rule] = &yarn::WRAPS_FACTORS;
    let (a, b) = (yards(count(rule.factor())), yards(count(0.84)));
    assert!(relative(a, 693.056) < 1e-3 && relative(b, 1111.11) < 1e-3, "{a} and {b}");
    assert!(relative(b / a, 1.60321) < 1e-3);
}

#[test]
fn the_band_of_wraps_holds_what_it_rests_on() {
    let count = LinearDensity::parse("6135 yd/lb").unwrap();
    let band = yarn::wraps(&yarn::WrapsInputs { count });
    let [low, likely, high] =
        [band.low, band.touching, band.high].map(|w| w.number("wraps/in").unwrap());
    assert!(low < likely && likely < high);
    // As it was wound: 25 ends in an inch were three quarters of the wraps.
    assert!(relative(low, 33.3333) < 2e-3);
    assert!(relative(high * high * 0.884, 6135.0) < 1e-12);
    for says in &yarn::WRAPS_FACTORS {
        let w = answer("wraps_estimate", &[says.factor(), count.value()]) * 2.54;
        // The ends are computed twice: a rounding apart.
        assert!((low * (1.0 - 1e-12)..=high * (1.0 + 1e-12)).contains(&w), "{}", says.says);
        assert!(hankwise::source::source(says.source).is_some(), "{}", says.source);
    }
}

proptest! {
    #[test]
    fn wraps_there_and_back(tex in tex(), factor in 0.4..1.1f64) {
        let wraps = answer("wraps_estimate", &[factor, tex]);
        prop_assert!(relative(answer("count_from_wraps", &[factor, wraps]), tex) < 1e-12);
    }
}

// ---- strength ----------------------------------------------------------------------------------

proptest! {
    #[test]
    fn strength_is_one_however_it_is_said(force in 0.1..100.0f64, tex in tex(), density in 0.1..8.0f64) {
        let tenacity = answer("tenacity", &[force, tex]);
        prop_assert!(relative(answer("breaking_force", &[tenacity, tex]), force) < 1e-12);
        // The breaking length in kilometres is the tenacity in grams-force for a tex.
        let km = answer("breaking_length", &[force, tex]) / 1000.0;
        for unit in ["RKM", "gf/tex"] {
            prop_assert!(relative(km, convert(tenacity, "cN/tex", unit).unwrap()) < 1e-12);
        }
        // Force over the section that the yarn would have as a rod of this density.
        let area = tex * 1e-3 / density;
        let stress = answer("stress_of_tenacity", &[tenacity, density]);
        prop_assert!(relative(stress, force / area) < 1e-12);
        // kgf/mm² = 9 · gf/den · specific gravity
        let old = convert(stress, "MPa", "kgf/mm²").unwrap();
        let den = convert(tenacity, "cN/tex", "gf/den").unwrap();
        prop_assert!(relative(old, 9.0 * den * density) < 1e-12);
    }

    #[test]
    fn the_lea_product_is_count_times_pounds(number in 4.0..150.0f64, pounds in 10.0..400.0f64) {
        let lea = convert(pounds, "lbf", "N").unwrap();
        let product = answer("lea_product", &[lea, convert(number, "Ne", "tex").unwrap()]);
        prop_assert!(relative(product, number * pounds) < 1e-12);
    }
}

// ---- evenness ----------------------------------------------------------------------------------

#[test]
fn published_indices_of_irregularity() {
    let index = |cv: f64, yarn: f64, fibre: f64, k: f64| {
        let fibres = answer("fibres_in_section", &[yarn, fibre, 0.0]);
        answer("irregularity_index", &[cv, k, fibres])
    };
    // GATE TF 2006 Q43, by its printed option.
    assert!((index(0.1232, 20.0, 0.12, 1.06) - 1.5).abs() <= 0.05);
    // Of 32 tex from fibres of 2 den: the accepted range is 1.1 to 1.3.
    assert!((index(0.10, 32.0, 2.0 / 9.0, 1.0) - 1.2).abs() <= 0.1);
}

proptest! {
    #[test]
    fn squares_of_irregularity_add(before in 0.0..0.3f64, added in 0.01..0.3f64, n in 1..50usize) {
        let after = answer("irregularity_after_processes", &[before, added]);
        prop_assert!(relative(after, before.hypot(added)) < 1e-12);
        // The difference of squares loses what they have in common.
        let slack = 1e-14 * (after / added).powi(2) + 1e-12;
        prop_assert!(relative(answer("added_irregularity", &[before, after]), added) < slack);
        // Folding is the mean of n, and n equal processes make up for it.
        let fold = answer("irregularity_of_fold", &[added, n as f64]);
        let row = vec![fold; n];
        prop_assert!(relative(answer("irregularity_after_processes", &row), added) < 1e-12);
    }

    #[test]
    fn a_yarn_at_its_limit_has_index_one(k in 1.0..1.2f64, n in 20.0..1000.0f64) {
        let limit = answer("limit_irregularity", &[k, n]);
        prop_assert!(relative(answer("irregularity_index", &[limit, k, n]), 1.0) < 1e-12);
    }
}

#[test]
fn a_yarn_that_left_more_even_has_no_added_irregularity() {
    let refused =
        catalogue::formula("added_irregularity").unwrap().answer(&[0.06, 0.05]).unwrap_err();
    assert!(refused.to_string().contains("cv_before = 6 %, cv_after = 5 %"), "{refused}");
}

// ---- units -------------------------------------------------------------------------------------

#[test]
fn words_of_strength_stand_apart_from_mass_and_count() {
    let kind = |name: &str| unit(name, None).unwrap().kind;
    for name in ["g", "lb", "gr", "kg", "oz"] {
        assert_eq!(kind(name), Kind::Mass, "{name}");
        let refused = unit(name, Some(Kind::Force)).unwrap_err().to_string();
        assert!(refused.contains("unit of mass") && refused.contains("'320 cN'"), "{refused}");
    }
    for name in ["gf", "kgf", "lbf", "N", "cN", "mN"] {
        assert_eq!(kind(name), Kind::Force, "{name}");
    }
    // Metric count, no newton metre; a breaking length, no length.
    assert_eq!(kind("Nm"), Kind::LinearDensity);
    assert_eq!(kind("km"), Kind::Length);
    assert_eq!(parse("12 km breaking length").unwrap().unit.symbol, "RKM");
    assert_eq!(kind("g/yd"), Kind::LinearDensity);
    assert_eq!(kind("g/den"), Kind::Tenacity);
}

#[test]
fn a_millimetre_is_a_length_unless_a_diameter_is_asked_for() {
    for name in ["mm", "cm", "in"] {
        assert_eq!(unit(name, None).unwrap().kind, Kind::Length);
        assert_eq!(unit(name, Some(Kind::Diameter)).unwrap().kind, Kind::Diameter);
    }
    assert_eq!(unit("µm", None).unwrap().kind, Kind::Fineness);
    // Three ways to write Taylor's 32s.
    for text in ["1/156 in", "156 1/in", "0.162820513 mm"] {
        let diameter = Diameter::parse(text).unwrap();
        assert!(relative(diameter.number("1/in").unwrap(), 156.0) < 1e-8, "{text}");
    }
    // Converted as lengths where that will do, else as diameters.
    let near = |number, from, to, wanted| {
        let got = convert(number, from, to).unwrap();
        assert!(relative(got, wanted) < 1e-12, "{number} {from} = {got} {to}");
    };
    near(1.0, "in", "mm", 25.4);
    near(0.254, "mm", "1/in", 100.0);
    near(254.0, "µm", "in", 0.01);
    assert!(convert(1.0, "yd", "1/in").is_err() && convert(1.0, "µm", "kg").is_err());
    // Side by side in an inch, threads are a sett; an inch of them is no diameter.
    assert!(Diameter::parse("156 threads/in").is_err());
    assert!(Sett::parse("156 1/in").is_err());
}
