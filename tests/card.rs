//! The card: what it holds, against a card simulated parcel by parcel; and where a lot goes.
#![cfg(test)]

mod cases;

use cases::cases;
use hankwise::calculation::Solved;
use hankwise::mill;
use hankwise::quantity::{Fraction, Mass, MassRate, ShareLost};
use proptest::prelude::*;

fn value(found: &Solved, name: &str) -> f64 {
    found.find(name).unwrap().value
}

/// A card fed in small parcels. What comes off in a moment is in proportion to what it holds, and of
/// the mixture that it holds.
struct Card {
    /// Clean dry fibre in it: of the lot before, of this lot.
    holds: [f64; 2],
    /// What it holds when it runs with a full feed.
    full: f64,
    /// Share that falls out of the feed as waste.
    waste: f64,
}

impl Card {
    /// Feeds a parcel of this lot (or nothing) while as much as `parcel` would come off a full card;
    /// gives what comes off, of the lot before and of this lot.
    fn step(&mut self, fed: f64, parcel: f64) -> [f64; 2] {
        self.holds[1] += fed * (1.0 - self.waste);
        let out = self.holds.map(|held| held * parcel * (1.0 - self.waste) / self.full);
        for (held, off) in self.holds.iter_mut().zip(out) {
            *held -= off;
        }
        out
    }
}

const PARCEL: f64 = 1e-4;

/// Feeds a lot into an empty card, runs it out, and keeps only slubbing within a share of its count.
fn good_slubbing(lot: f64, full: f64, waste: f64, within: f64) -> f64 {
    let mut card = Card { holds: [0.0; 2], full, waste };
    let (mut good, mut fed) = (0.0, 0.0);
    loop {
        let parcel = if fed < lot { PARCEL } else { 0.0 };
        fed += parcel;
        let out: f64 = card.step(parcel, PARCEL).iter().sum();
        if out >= (1.0 - within) * PARCEL * (1.0 - waste) {
            good += out;
        } else if fed >= lot {
            return good;
        }
    }
}

#[test]
fn the_loss_of_a_lot_is_a_share_and_a_fixed_mass() {
    let (full, waste) = (0.6, 0.05);
    for within in [0.05, 0.1, 0.2] {
        let (h, x) = (Mass::base(full), Fraction::base(within));
        let fixed = mill::off_count_mass(h, x).value() + mill::left_at_stop(h, x).value();
        // Together they are what clears the card to the share.
        assert!((fixed - mill::clearing_fibre(h, x).value()).abs() < 1e-12);
        for lot in [3.0, 6.0, 12.0] {
            let simulated = good_slubbing(lot, full, waste, within);
            let (m, w) = (Mass::base(lot), ShareLost::base(waste));
            let law = mill::mass_after_loss(m, w, Mass::base(fixed)).value();
            assert!((simulated - law).abs() < 2e-3, "{lot} kg within {within}: {simulated}, {law}");
            let lost = mill::lot_loss(m, w, Mass::base(fixed)).value();
            assert!((lost - (1.0 - simulated / lot)).abs() < 1e-3);
        }
    }
}

#[test]
fn the_lot_before_comes_off_as_the_card_clears() {
    let full = 0.6;
    let mut card = Card { holds: [full, 0.0], full, waste: 0.0 };
    let (mut fed, mut before) = (0.0, 0.0);
    for kg in 1..=6 {
        let mut share = 1.0;
        while fed < f64::from(kg) {
            fed += PARCEL;
            let [old, new] = card.step(PARCEL, PARCEL);
            before += old;
            share = old / (old + new);
        }
        let (m, h) = (Mass::base(fed), Mass::base(full));
        assert!((share - mill::carried_share(m, h).value()).abs() < 1e-3, "{kg} kg: {share}");
        assert!((before - mill::carried_mass(m, h).value()).abs() < 1e-3, "{kg} kg: {before}");
        assert!((before / fed - mill::mean_carried_share(m, h).value()).abs() < 1e-3);
    }
}

#[test]
fn an_empty_card_settles_in_the_time_said() {
    let (full, within, fine) = (0.6, 0.05, PARCEL / 10.0);
    let mut card = Card { holds: [0.0; 2], full, waste: 0.0 };
    let mut fed = 0.0;
    while card.holds[1] < (1.0 - within) * full {
        fed += fine;
        card.step(fine, fine);
    }
    // At 12 kg an hour.
    let hours = mill::settling_time(Mass::base(full), MassRate::base(12.0), Fraction::base(within));
    assert!((fed / 12.0 - hours.value()).abs() < 1e-4);
}

proptest! {
    #![proptest_config(cases(200))]

    /// Every gram of a lot is in the slubbing, in a kind of waste, or in the card; what is fed in an
    /// hour is delivered, wasted or put back.
    #[test]
    fn a_lot_on_the_card_is_conserved(
        lot in 5.0..200.0_f64, held_up in 0.0..2.0_f64, edges in 0_u32..12, put_back in 0.0..100.0_f64,
        waste in prop::array::uniform5(0.0..4.0_f64),
    ) {
        let percent = |x: f64| format!("{x} %");
        let texts = [
            ("fibre_mass", format!("{lot} kg")), ("held_up", format!("{held_up} kg")),
            ("slubbing_count", "200 tex".into()), ("ends", "120".into()), ("delivery_speed", "12 m/min".into()),
            ("edge_ends", edges.to_string()), ("put_back_share", percent(put_back)),
            ("droppings_share", percent(waste[0])), ("strips_share", percent(waste[1])), ("fly_share", percent(waste[2])),
            ("burr_share", percent(waste[3])), ("loss", percent(waste[4])), ("regain_before", "20 %".into()),
            ("fat_before", "5 %".into()), ("regain_after", "16 %".into()), ("fat_after", "5 %".into()),
        ];
        let given: Vec<_> = texts.iter().map(|(name, text)| (*name, text.as_str())).collect();
        let found = mill::CARD.solve_texts(&given).unwrap();
        let parts = ["fibre_out", "droppings_mass", "strips_mass", "fly_mass", "burr_mass", "loss_mass", "edges_mass"];
        let sum: f64 = parts.iter().filter_map(|name| found.find(name).ok()).map(|f| f.value).sum();
        prop_assert!((sum + held_up - lot).abs() < 1e-9 * lot, "{sum} and {held_up} of {lot}");

        // By the hour: 120 ends of 200 tex at 12 m/min are 17.28 kg as they leave the card.
        let made = 0.2 * 120.0 * 12.0 * 60.0 / 1000.0 / 1.21;
        prop_assert!((value(&found, "fibre_output") - made).abs() < 1e-9);
        let pass = value(&found, "feed_rate") / 1.25;
        let wasted: f64 = waste.iter().map(|w| w / 100.0).sum();
        let in_web = pass * (1.0 - wasted);
        let good = in_web * 120.0 / (120.0 + f64::from(edges));
        prop_assert!((good - made).abs() < 1e-9);
        let fresh = pass - (in_web - good) * put_back / 100.0;
        prop_assert!((value(&found, "time") - lot / fresh).abs() < 1e-9);
    }

    /// The smallest lot loses what is allowed, a smaller one more; the lot for its own fibre has it.
    #[test]
    fn the_smallest_lot_is_the_smallest(held_up in 0.05..3.0_f64, loss in 0.0..8.0_f64, more in 0.5..10.0_f64, own in 80.0..99.9_f64) {
        let allowed = loss + more;
        let ask = |lot: f64| mill::LOT_ON_CARD.solve_texts(&[
            ("fibre_mass", &format!("{lot} kg")), ("held_up", &format!("{held_up} kg")),
            ("loss", &format!("{loss} %")), ("allowed_loss", &format!("{allowed} %")), ("wanted_own_share", &format!("{own} %")),
        ]).unwrap();
        let first = ask(1000.0);
        let smallest = value(&first, "smallest_lot");
        prop_assert!((value(&ask(smallest), "lot_loss") - allowed / 100.0).abs() < 1e-9);
        prop_assert!(value(&ask(smallest * 0.9), "lot_loss") > allowed / 100.0);
        let wanted = value(&first, "lot_for_own");
        // Its own fibre over the run, by summing the run in slices.
        let slices = 20_000;
        let step = wanted / f64::from(slices);
        let before: f64 = (0..slices).map(|k| (-(f64::from(k) + 0.5) * step / held_up).exp() * step).sum();
        prop_assert!((1.0 - before / wanted - own / 100.0).abs() < 1e-6);
    }
}

#[test]
fn what_cannot_be_run_is_refused() {
    let says = |given: &[(&str, &str)], words: &[&str]| {
        let error = mill::LOT_ON_CARD.solve_texts(given).unwrap_err().to_string();
        for word in words {
            assert!(error.contains(word), "'{word}' is not in: {error}");
        }
    };
    says(
        &[("fibre_mass", "10 kg")],
        &["held_up (clean dry fibre that the card keeps) is missing", "held_up=\"0.60 kg\""],
    );
    says(
        &[("fibre_mass", "10 kg"), ("held_up", "1 kg"), ("allowed_loss", "4 %")],
        &["allowed_loss: 4 %", "5 %", "no lot is large enough"],
    );
    says(&[("fibre_mass", "1 kg"), ("held_up", "1 kg")], &["1 kg is less than the card keeps"]);
    says(&[("fibre_mass", "-1 kg"), ("held_up", "1 kg")], &["fibre_mass: ", "0 kg or more"]);
    says(
        &[("fibre_mass", "10 kg"), ("held_up", "1 kg"), ("trace", "0 %")],
        &["trace", "0 % is not possible"],
    );
    says(
        &[("fibre_mass", "10 kg"), ("held_up", "1 kg"), ("wanted_own_share", "100 %")],
        &["wanted_own_share", "below 100 %"],
    );
    let warned =
        mill::LOT_ON_CARD.solve_texts(&[("fibre_mass", "4 kg"), ("held_up", "1 kg")]).unwrap();
    assert!(
        warned.warnings()[0].contains("loses 30 %, more than the 10 % allowed; from 20 kg"),
        "{:?}",
        warned.warnings()
    );
    // The advised mass is rounded up: 0.60 kg/(8.3 % − 5 %) is 18.1818 kg.
    let lot = |mass| {
        let given = [("held_up", "0.60 kg"), ("allowed_loss", "8.3 %"), ("fibre_mass", mass)];
        mill::LOT_ON_CARD.solve_texts(&given).unwrap().warnings().join("; ")
    };
    let advised = lot("18.18 kg");
    assert!(advised.contains("from 18.19 kg it stays within it"), "{advised}");
    assert_eq!(lot("18.19 kg"), "");
    let error = mill::CARD.solve_texts(&[
        ("fibre_mass", "0.5 kg"),
        ("held_up", "0.6 kg"),
        ("slubbing_count", "200 tex"),
        ("ends", "120"),
        ("delivery_speed", "12 m/min"),
    ]);
    assert!(
        error.unwrap_err().to_string().contains("no more than the card keeps and loses, 600 g")
    );
}

#[test]
fn calculations_show_their_cautions() {
    let found =
        mill::LOT_ON_CARD.solve_texts(&[("fibre_mass", "10 kg"), ("held_up", "0.6 kg")]).unwrap();
    assert!(found.report().text().contains("! Machines: "), "{}", found.report().text());
    assert!(found.report().html().contains("<aside role=\"note\""));
}
