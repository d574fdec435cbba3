//! Reeds: their systems, the table of widths, and the choice out of those owned.

mod cases;

use cases::cases;
use hankwise::cloth::{Breadth, ReedAsk, Selvedge, check_reed, choose_reed};
use hankwise::prelude::*;
use hankwise::quantity::{Amount, unit};
use proptest::prelude::*;

fn reeds(all: &[&str]) -> Vec<Amount> {
    all.iter().map(|text| parse_as(text, Kind::ReedCount).unwrap()).collect()
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
    for figure in &table.figures {
        let [name, counted] = *figure.of else { panic!("{figure:?}") };
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
    let choice =
        choose_reed(&parse("20 ends/in").unwrap(), &reeds(&["8 dents/in"]), &ReedAsk::default())
            .unwrap();
    let first = choice.nearest();
    assert_eq!((first.order.as_slice(), first.off.abs() < 1e-12), (&[3, 2][..], true));
    assert!((convert(first.sett, "threads/cm", "threads/in").unwrap() - 20.0).abs() < 1e-12);
}

#[test]
fn selvedges_take_their_own_ends() {
    let mut ask = ReedAsk {
        ends_per_dent: vec![2.0],
        width: Some(parse("24 in").unwrap()),
        selvedge: Some(Selvedge { ends_per_dent: 4.0, breadth: Breadth::Dents(6.0) }),
        ..ReedAsk::default()
    };
    let sett = parse("20 ends/in").unwrap();
    let owned = reeds(&["10 dents/in"]);
    // 240 dents, of which 2 × 6 hold 4 ends and the rest 2.
    let choice = choose_reed(&sett, &owned, &ask).unwrap();
    let first = choice.nearest();
    assert_eq!((first.dents, first.ends, first.selvedge_ends), (Some(240), Some(504), Some(48)));
    // Half an inch is five dents.
    let half = Breadth::Width(parse("0.5 in").unwrap());
    ask.selvedge = Some(Selvedge { ends_per_dent: 3.0, breadth: half });
    assert_eq!(choose_reed(&sett, &owned, &ask).unwrap().nearest().ends, Some(2 * 15 + 460));
    ask.width = Some(parse("1 in").unwrap());
    let error = choose_reed(&sett, &owned, &ask).unwrap_err().to_string();
    assert!(error.contains("nothing is left"), "{error}");
}

#[test]
fn a_number_that_is_no_reed_is_told() {
    let says = |text: &str| check_reed(&reeds(&[text])[0]).unwrap_err().to_string();
    let metric = says("3000 dents/10 cm");
    assert!(metric.contains("762 dents in an inch") && metric.contains("irish-reed"), "{metric}");
    assert!(
        says("60.5 stockport-reed").contains("write 60 or 61"),
        "{}",
        says("60.5 stockport-reed")
    );
    assert!(says("32.5 dents/10 cm").contains("half a dent"));
    for good in [
        "33.5 dents/in",
        "60 stockport-reed",
        "2000 scotch-reed",
        "36 bolton-reed",
        "80 metric-reed",
    ] {
        check_reed(&reeds(&[good])[0]).unwrap();
    }
    let sett = parse("8 ends/cm").unwrap();
    let refused = |ask: ReedAsk| {
        choose_reed(&sett, &reeds(&["40 dents/10 cm"]), &ask).unwrap_err().to_string()
    };
    let half = refused(ReedAsk { ends_per_dent: vec![2.5], ..ReedAsk::default() });
    assert!(half.contains("[2, 3]"), "{half}");
    assert!(
        refused(ReedAsk { ends_per_dent: vec![], ..ReedAsk::default() }).contains("ends_per_dent")
    );
    assert!(refused(ReedAsk { period: 0, ..ReedAsk::default() }).contains("period"));
    assert!(
        choose_reed(&sett, &[], &ReedAsk::default()).unwrap_err().to_string().contains("owned")
    );
    assert!(
        choose_reed(&parse("4 tex").unwrap(), &reeds(&["4 dents/cm"]), &ReedAsk::default())
            .is_err()
    );
}

proptest! {
    #![proptest_config(cases(300))]

    /// The nearest is as near as any whole ends in so many dents of an owned reed, found by trying
    /// all; nothing is proposed that is not owned; ends are what one counts dent by dent.
    #[test]
    fn the_nearest_of_all(
        dents in proptest::collection::vec(10_u32..90, 1..5), sett in 1.0..40.0_f64, width in 0.3..2.0_f64
    ) {
        let owned: Vec<Amount> = dents
            .iter()
            .map(|n| parse(&format!("{n} dents/10 cm")).unwrap())
            .collect();
        let wanted = Amount { number: sett, unit: unit("threads/cm", None).unwrap() };
        let wide = Amount { number: width, unit: unit("m", None).unwrap() };
        let ask = ReedAsk { width: Some(wide), ..ReedAsk::default() };
        let choice = choose_reed(&wanted, &owned, &ask).unwrap();
        let best = choice.nearest().off.abs();
        for n in &dents {
            for period in 1..=4_u32 {
                for ends in period..=4 * period {
                    let off = f64::from(*n) / 10.0 * f64::from(ends) / f64::from(period) / sett - 1.0;
                    prop_assert!(best <= off.abs() + 1e-9);
                }
            }
        }
        let mut last = 0.0;
        for row in &choice.rows {
            prop_assert!(owned.contains(&row.reed));
            prop_assert!(row.off.abs() >= last - 1e-9, "not in order");
            last = row.off.abs();
            let counted: u32 =
                (0..row.dents.unwrap() as usize).map(|k| row.order[k % row.order.len()]).sum();
            prop_assert_eq!(row.ends, Some(u64::from(counted)));
            prop_assert_eq!(row.dents.unwrap(), (row.reed.base() * 100.0 * width + 1e-6) as u64);
            let spread = row.order.iter().max().unwrap() - row.order.iter().min().unwrap();
            prop_assert!(spread <= 1 && row.order.len() <= 4);
        }
    }
}

#[test]
fn a_width_or_a_sett_that_no_reed_serves_is_told() {
    let (sett, reed) = (parse("4.8 ends/cm").unwrap(), [parse("24 dents/10 cm").unwrap()]);
    let ask = |width: &str| ReedAsk { width: Some(parse(width).unwrap()), ..ReedAsk::default() };
    let error = choose_reed(&sett, &reed, &ask("1e30 cm")).unwrap_err().to_string();
    assert!(error.contains("more than any loom takes"), "{error}");
    let choice = choose_reed(&sett, &reed, &ask("170 cm")).unwrap();
    assert_eq!((choice.rows[0].dents, choice.warnings.len()), (Some(408), 0));
    let far = choose_reed(&parse("48 ends/cm").unwrap(), &reed, &ReedAsk::default()).unwrap();
    assert!(far.warnings[0].contains("80 % too few"), "{:?}", far.warnings);
    let far = choose_reed(&parse("1 ends/cm").unwrap(), &reed, &ReedAsk::default()).unwrap();
    assert!(far.warnings[0].contains("140 % too many"), "{:?}", far.warnings);
}
