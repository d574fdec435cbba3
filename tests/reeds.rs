//! Reeds: their systems, the table of widths, and the choice out of those owned.

#![allow(clippy::float_cmp, reason = "whole numbers of dents and ends")]

mod cases;

use cases::cases;
use hankwise::calculation::Solved;
use hankwise::cloth::{CHOOSE_REED, ChooseReedInputs, choose_reed};
use hankwise::prelude::*;
use hankwise::quantity::{Count, Length, ReedCount, Sett, unit};
use proptest::prelude::*;

fn choose(given: &[(&str, &str)]) -> hankwise::Result<Solved> {
    CHOOSE_REED.solve_texts(given)
}

fn value(solved: &Solved, name: &str) -> f64 {
    solved.find(name).unwrap().value
}

/// The widths of the handbook are those by which the units convert.
#[test]
fn the_table_and_the_units_agree() {
    let table = catalogue::table("reed_systems").unwrap();
    let symbol = |name: &str| match name {
        "Stockport, Manchester" => "stockport-reed".to_owned(),
        "Manchester (old)" => "old-manchester-reed".to_owned(),
        "Irish linen" => "irish-reed".to_owned(),
        "Metric" => "metric-reed".to_owned(),
        other => format!("{}-reed", other.to_lowercase().replace(' ', "-")),
    };
    for figure in table.figures {
        let [name, counted] = figure.of else { panic!("{figure:?}") };
        let group = if counted.contains("20 dents") {
            20.0
        } else if counted.contains("19 dents") {
            19.0
        } else if counted.contains("hundreds") {
            100.0
        } else {
            1.0
        };
        let cm = convert(figure.low, figure.unit, "cm").unwrap();
        let got = unit(&symbol(name), Some(Kind::ReedCount)).unwrap().to_base(1.0);
        assert!((got * cm / group - 1.0).abs() < 1e-14, "{name}: {got}");
    }
}

#[test]
fn twenty_ends_in_an_eight_dent_reed() {
    let choice = choose(&[("wanted_reed_sett", "20 ends/in"), ("reeds", "8 dents/in")]).unwrap();
    assert_eq!((value(&choice, "order[1]"), value(&choice, "order[2]")), (3.0, 2.0));
    assert!(choice.find("order[3]").is_err() && value(&choice, "sett_off").abs() < 1e-12);
    assert!(
        (convert(value(&choice, "reed_sett"), "threads/cm", "threads/in").unwrap() - 20.0).abs()
            < 1e-12
    );
}

#[test]
fn selvedges_take_their_own_ends() {
    let asked = |width, ends, edge, broad| {
        let given = [
            ("wanted_reed_sett", "20 ends/in"),
            ("reeds", "10 dents/in"),
            ("ends_per_dent", "2"),
            ("reed_width", width),
            ("selvedge_ends_per_dent", ends),
            (edge, broad),
        ];
        choose(&given)
    };
    // 240 dents, of which 2 × 6 hold 4 ends and the rest 2.
    let choice = asked("24 in", "4", "dents_per_selvedge", "6").unwrap();
    let found = ["dents", "ends", "both_selvedges"].map(|name| value(&choice, name));
    assert_eq!(found, [240.0, 504.0, 48.0]);
    // Half an inch is five dents.
    let half = asked("24 in", "3", "width_per_selvedge", "0.5 in").unwrap();
    assert_eq!(value(&half, "ends"), f64::from(2 * 15 + 460));
    let error = asked("1 in", "3", "width_per_selvedge", "0.5 in").unwrap_err().to_string();
    assert!(error.contains("nothing is left"), "{error}");
}

#[test]
fn a_number_that_is_not_a_reed_is_refused() {
    let with = |reed, more: &[(&str, &str)]| {
        let mut given = vec![("wanted_reed_sett", "8 ends/cm"), ("reeds", reed)];
        given.extend(more);
        choose(&given)
    };
    let says = |reed| with(reed, &[]).unwrap_err().to_string();
    let metric = says("3000 dents/10 cm");
    assert!(metric.contains("762 dents in an inch") && metric.contains("irish-reed"), "{metric}");
    let half = says("60.5 stockport-reed");
    assert!(half.contains("write 60 or 61"), "{half}");
    // Where several systems are mixed each is judged in its own.
    assert!(says("8 dents/in, 32.5 dents/10 cm").contains("half a dent"));
    for good in [
        "33.5 dents/in",
        "60 stockport-reed",
        "2000 scotch-reed",
        "36 bolton-reed",
        "80 metric-reed",
        "8 dents/in, 40 dents/10 cm",
    ] {
        with(good, &[]).unwrap();
    }
    let refused = |more: (&str, &str)| with("40 dents/10 cm", &[more]).unwrap_err().to_string();
    let half = refused(("ends_per_dent", "2.5"));
    assert!(half.contains("[2, 3]"), "{half}");
    assert!(refused(("ends_per_dent", "65")).contains("cannot be drawn"));
    assert!(refused(("period", "0")).contains("period"));
    assert!(refused(("period", "13")).contains("1 (even alone) to 12"));
    assert!(choose(&[("wanted_reed_sett", "4 tex"), ("reeds", "4 dents/cm")]).is_err());
    assert!(choose(&[("wanted_reed_sett", "0 ends/cm"), ("reeds", "4 dents/cm")]).is_err());
}

proptest! {
    #![proptest_config(cases(300))]

    /// The nearest is as near as any whole ends in so many dents of an owned reed, found by trying
    /// all; nothing is proposed that is not owned; ends are what one counts dent by dent.
    #[test]
    fn the_nearest_of_all(
        dents in proptest::collection::vec(10_u32..90, 1..5), sett in 1.0..40.0_f64, width in 0.3..2.0_f64
    ) {
        let owned: Vec<f64> = dents
            .iter()
            .map(|n| unit("dents/10 cm", None).unwrap().to_base(f64::from(*n)))
            .collect();
        let choice = choose_reed(&ChooseReedInputs {
            wanted_reed_sett: Sett::base(sett),
            reeds: owned.iter().map(|reed| ReedCount::base(*reed)).collect(),
            ends_per_dent: None,
            period: Count::base(4.0),
            reed_width: Some(Length::base(width)),
            selvedge: None,
        });
        let best = choice.nearest.sett_off.value().abs();
        for n in &dents {
            for period in 1..=4_u32 {
                for ends in period..=4 * period {
                    let off = f64::from(*n) / 10.0 * f64::from(ends) / f64::from(period) / sett - 1.0;
                    prop_assert!(best <= off.abs() + 1e-9);
                }
            }
        }
        let mut last = 0.0;
        for row in std::iter::once(&choice.nearest).chain(&choice.others) {
            prop_assert!(owned.contains(&row.reed.value()));
            prop_assert!(row.sett_off.value().abs() >= last - 1e-9, "not in order");
            last = row.sett_off.value().abs();
            let order: Vec<f64> = row.order.iter().map(|ends| ends.value()).collect();
            let across = row.dents.unwrap().value();
            let counted: f64 = (0..across as usize).map(|k| order[k % order.len()]).sum();
            prop_assert_eq!(row.ends.unwrap().value(), counted);
            prop_assert_eq!(across, (row.reed.value() * 100.0 * width + 1e-6).floor());
            let most = order.iter().copied().fold(0.0, f64::max);
            let least = order.iter().copied().fold(f64::MAX, f64::min);
            prop_assert!(most - least <= 1.0 && order.len() <= 4);
        }
    }
}

#[test]
fn a_width_or_a_sett_that_no_reed_serves_is_said() {
    let with = |sett, more: &[(&str, &str)]| {
        let mut given = vec![("wanted_reed_sett", sett), ("reeds", "24 dents/10 cm")];
        given.extend(more);
        choose(&given)
    };
    let error = with("4.8 ends/cm", &[("reed_width", "1e30 cm")]).unwrap_err().to_string();
    assert!(error.contains("more than any loom takes"), "{error}");
    let choice = with("4.8 ends/cm", &[("reed_width", "170 cm")]).unwrap();
    assert_eq!((value(&choice, "dents"), choice.warnings().len()), (408.0, 0));
    let far = with("48 ends/cm", &[]).unwrap();
    assert!(far.warnings()[0].contains("80 % too few"), "{:?}", far.warnings());
    let far = with("1 ends/cm", &[]).unwrap();
    assert!(far.warnings()[0].contains("140 % too many"), "{:?}", far.warnings());
}
