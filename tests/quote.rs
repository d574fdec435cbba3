//! Quotations, in numbers worked out by hand.

use hankwise::plan::{Plan, Quote, QuoteLine, Run, Source, Terms};

const MILL: &str = include_str!("../examples/mill.toml");
const NINE: &str = include_str!("../examples/nine-kilos.toml");
const LOOMS: &str = include_str!("../examples/two-looms.toml");
const GROWERS: &str = include_str!("../examples/three-growers.toml");

fn source(name: &str, text: &str) -> Source {
    Source { name: name.to_owned(), text: text.to_owned() }
}

fn plan(lot: &str, mill: &str, values: &[(&str, &str)]) -> Plan {
    let plan = Plan::from_sources(source("lot.toml", lot), Some(source("mill.toml", mill)), "");
    plan.unwrap().with_values(values).unwrap()
}

fn quote(lot: &str, values: &[(&str, &str)]) -> Quote {
    let result = plan(lot, MILL, values).run(&Run::planned()).unwrap();
    result.quote(&Terms::default()).unwrap()
}

fn message(lot: &str, mill: &str) -> String {
    let plan = Plan::from_sources(source("lot.toml", lot), Some(source("mill.toml", mill)), "");
    plan.map(|_| ()).unwrap_err().to_string()
}

fn line<'q>(quote: &'q Quote, stage: &str) -> &'q QuoteLine {
    quote.lines.iter().find(|line| line.stage == stage).unwrap_or_else(|| panic!("no {stage}"))
}

#[track_caller]
fn near(found: f64, wanted: f64, tolerance: f64) {
    assert!((found - wanted).abs() <= tolerance, "{found} is not {wanted} ± {tolerance}");
}

/// What a lot of greasy wool like the nine kilograms comes to at each stage, by plain arithmetic.
fn by_hand(greasy: f64) -> [f64; 8] {
    let fibre = greasy * 0.58; // clean
    let sorted = greasy * 0.92; // 8 % sorted out, as it is
    let scoured = fibre * 0.92 * 0.99; // 1 % lost
    let ready = scoured * 0.98 * 0.99; // dusted 2 %, teased 1 %
    let carded = ready * 0.95 - 0.60; // 5 % lost, 0.60 kg kept by the card
    let spun = carded * 0.97;
    let twisted = spun * 0.985;
    let finished = twisted * 0.995;
    // On the fibre: 4 % oil, 0.8 % grease, and water, 20 % at the card, 16 % after it; then 17 % and 0.6 % fat.
    let (card, spinning, label) = (1.0 + 0.048 + 0.20, 1.0 + 0.048 + 0.16, 1.0 + 0.17 + 0.006);
    // 330 m in a hank of 100 g; on the reel 330 / 0.95 / 1.5 = 231.58, so 232 turns, which make 330.6 m.
    let hank = 0.1 * (232.0 * 1.5 * 0.95) / 330.0 / label;
    [
        greasy * 0.60,
        sorted * 2.20,
        carded * card * 5.50,
        45.0,
        spun * spinning * 6.00,
        twisted * spinning * 2.50,
        finished * label * 1.80,
        (finished / hank).floor() * 0.45,
    ]
}

#[test]
fn nine_kilograms_by_hand() {
    let quote = quote(NINE, &[]);
    let amounts: Vec<f64> = quote.lines.iter().map(|line| line.amount).collect();
    let hand = by_hand(9.0);
    assert_eq!(amounts.len(), hand.len());
    for (line, hand) in quote.lines.iter().zip(hand) {
        near(line.amount, hand, 1e-9 * hand);
        near(line.quantity * line.rate, line.amount, 1e-9);
    }
    // 5.40 + 18.22 + 25.96 + 45.00 + 26.59 + 10.91 + 7.61 + 42 hanks at 0.45 (18.90) = 158.59: under the
    // minimum.
    near(quote.sum, 158.59, 0.005);
    near(quote.sum, hand.iter().sum(), 1e-9);
    assert!(quote.minimum_applies);
    near(quote.price, 260.0, 1e-9);
    // 250 + 9 × 4.50.
    assert_eq!(quote.cost, Some(290.5));
    near(quote.margin.unwrap(), (260.0 - 290.5) / 260.0, 1e-12);
    near(quote.price_per_greasy_kg, 260.0 / 9.0, 1e-12);
    // 42 hanks of 100 g, each with 0.6 m of yarn more than 330.
    let finished = 42.0 * 0.1 * 330.6 / 330.0;
    near(quote.finished_mass, finished, 1e-9);
    near(quote.price_per_finished_kg.unwrap(), 260.0 / finished, 1e-9);
    let not: Vec<&str> = quote.not_priced.iter().map(|(stage, _)| stage.as_str()).collect();
    assert_eq!(not, ["dust", "oil", "tease"]);
}

#[test]
fn the_smallest_lot_that_pays_by_hand() {
    let pays = quote(NINE, &[]).pays_from.unwrap();
    let left = |greasy: f64| by_hand(greasy).iter().sum::<f64>() - (250.0 + 4.50 * greasy);
    // Of each greasy kilogram: 0.60 + 2.02 + 3.34 + 3.42 + 1.40 + 0.98 = 11.77 at the stages, and 5.43 hanks
    // at 0.45 = 2.45; what the card keeps takes off 11.28 and 6.7 hanks, its clearing adds 45. So a lot comes
    // to 30.7 + 14.2 a kilogram, costs 250 + 4.5 a kilogram, and pays from 219.3 / 9.7 = 22.6 kg.
    let from = pays.greasy_mass.unwrap();
    near(from, 22.6, 0.05);
    assert!(left(from) >= 0.0);
    assert!(left(from - 0.01) < 0.0);
    assert!((1..500).all(|step| left(from + 0.05 * f64::from(step)) > 0.0));
    // 260 is as much as 250 + 4.50 × 2.222: the minimum charge pays for the smallest lots.
    near(pays.small_lots_to.unwrap(), 10.0 / 4.5, 1e-3);
}

#[test]
fn what_pays_is_what_the_plan_says_at_that_mass() {
    // Growers bring 30, 25 and 12 kg, all of which are more or less by the same factor.
    let mill = MILL.replace("fixed_cost = 250", "fixed_cost = 420");
    for lot in [NINE, GROWERS] {
        let at = |factor: f64, base: &[(&str, f64)]| {
            let values: Vec<(String, String)> = base
                .iter()
                .map(|(name, kg)| ((*name).to_owned(), format!("{} kg", kg * factor)))
                .collect();
            let values: Vec<(&str, &str)> =
                values.iter().map(|(name, kg)| (name.as_str(), kg.as_str())).collect();
            let result = plan(lot, &mill, &values).run(&Run::planned()).unwrap();
            result.quote(&Terms::default()).unwrap()
        };
        let base: &[(&str, f64)] = if lot == NINE {
            &[("lot.greasy", 9.0)]
        } else {
            &[
                ("fleece.upper.greasy", 30.0),
                ("fleece.nether.greasy", 25.0),
                ("fleece.mid.greasy", 12.0),
            ]
        };
        let now = at(1.0, base);
        let whole: f64 = base.iter().map(|(_, kg)| kg).sum();
        near(now.greasy_mass, whole, 1e-9);
        let from = now.pays_from.unwrap().greasy_mass.unwrap();
        let paid = |kg: f64| {
            let quote = at(kg / whole, base);
            near(quote.greasy_mass, kg, 1e-6);
            quote.price - quote.cost.unwrap()
        };
        assert!(paid(from) >= 0.0);
        assert!(paid(from * 0.998) < 0.0);
    }
}

#[test]
fn no_lot_pays_or_every_one_does() {
    let from = |values: &[(&str, &str)]| quote(NINE, values).pays_from.unwrap();
    let dear = from(&[("cost.cost_per_mass", "40 /kg")]);
    assert_eq!(dear.greasy_mass, None);
    assert!(dear.tried >= 5000.0);
    let cheap = from(&[("cost.fixed_cost", "0"), ("cost.cost_per_mass", "1 /kg")]);
    assert_eq!((cheap.greasy_mass, cheap.small_lots_to), (Some(0.0), None));
}

#[test]
fn a_price_from_a_margin_and_a_margin_from_a_price() {
    let result = plan(NINE, MILL, &[]).run(&Run::planned()).unwrap();
    // 290.50 / 0.7 = 415; and (415 − 290.50) / 415 = 0.3.
    let quote = result.quote(&Terms { margin: Some(0.3), price: Some(415.0) }).unwrap();
    near(quote.price_for_margin.unwrap(), 415.0, 1e-9);
    near(quote.margin_of_price.unwrap(), 0.3, 1e-12);
    let wrong = |terms: Terms| result.quote(&terms).unwrap_err().to_string();
    assert!(wrong(Terms { margin: Some(1.2), price: None }).contains("margin: 120 %"));
    assert!(wrong(Terms { margin: None, price: Some(0.0) }).contains("more than 0"));
}

#[test]
fn what_the_goods_bear_is_the_whole_price() {
    for lot in [NINE, LOOMS, GROWERS] {
        let quote = quote(lot, &[]);
        let borne: f64 = quote.goods.iter().map(|good| good.price).sum();
        near(borne + quote.left_over, quote.price, 1e-9 * quote.price);
        let own: f64 = quote.goods.iter().map(|good| good.own).sum();
        let lines = quote.lines.iter().filter(|line| line.good.is_some());
        near(own, lines.map(|line| line.amount).sum(), 1e-9);
    }
}

#[test]
fn a_machine_that_is_like_another_takes_its_tariff() {
    let looms = quote(LOOMS, &[]);
    // The blankets go to the wide loom, the throws to the other; each piece is 24.
    near(line(&looms, "loom-wide").amount, 6.0 * 24.0, 1e-9);
    near(line(&looms, "loom").amount, 8.0 * 24.0, 1e-9);
    near(line(&looms, "finish.blanket").amount, 36.0, 1e-9);
    near(line(&looms, "finish.throw").amount, 48.0, 1e-9);
    near(line(&looms, "mule-2").rate, 6.0, 1e-9);
    // The ring frame is like no other.
    let not: Vec<&str> = looms.not_priced.iter().map(|(stage, _)| stage.as_str()).collect();
    assert!(not.contains(&"ring"), "{not:?}");
    assert!(!not.contains(&"mule-2"), "{not:?}");
    // Its own tariff takes the place of the other's.
    let own = quote(LOOMS, &[("tariff.loom-wide.piece_charge", "40")]);
    near(line(&own, "loom-wide").amount, 240.0, 1e-9);
    near(line(&own, "loom").amount, 192.0, 1e-9);
}

#[test]
fn the_card_is_cleared_once_for_each_heap() {
    let looms = quote(LOOMS, &[]);
    let clearing: Vec<&QuoteLine> =
        looms.lines.iter().filter(|line| line.basis == "clearing").collect();
    assert_eq!(clearing.len(), 1);
    assert_eq!((clearing[0].quantity, clearing[0].amount), (1.0, 45.0));
    let carded: Vec<&QuoteLine> = looms
        .lines
        .iter()
        .filter(|line| line.stage.ends_with("card") && line.basis == "kilogram out")
        .collect();
    assert_eq!(carded.len(), 2);
}

#[test]
fn the_lot_changes_what_the_mill_charges() {
    let own = format!("{NINE}\n[tariff]\nminimum_charge = 100\nsort.tariff_in = \"1 /kg\"\n");
    let own = quote(&own, &[]);
    assert!(!own.minimum_applies);
    near(line(&own, "sort").amount, 9.0, 1e-9);
    near(own.price, by_hand(9.0).iter().sum::<f64>() - 5.40 + 9.0, 1e-9);
    assert_eq!(own.money, "GBP");
}

#[test]
fn hours_are_those_of_the_plan() {
    let values = [("tariff.card.hourly_charge", "40"), ("tariff.tease.hourly_charge", "20")];
    let result = plan(NINE, MILL, &values).run(&Run { lots: 500, ..Run::default() }).unwrap();
    let quote = result.quote(&Terms::default()).unwrap();
    let hours = result.settings.iter().find(|s| s.key == "card.time").unwrap().value;
    let line = quote.lines.iter().find(|line| line.basis == "running hour").unwrap();
    assert_eq!((line.stage.as_str(), line.quantity, line.unit), ("card", hours, "h"));
    near(line.amount, hours * 40.0, 1e-9);
    let (_, why) = quote.not_priced.iter().find(|(stage, _)| stage == "tease").unwrap();
    assert!(why.contains("no running time"), "{why}");
    assert_eq!(quote.band, None);
    assert!(quote.planned_only.unwrap().contains("hours"));
}

#[test]
fn goods_are_charged_by_the_kilogram_of_yarn_and_of_what_is_finished() {
    let values = [("tariff.reel.tariff_in", "1 /kg"), ("tariff.reel.tariff_out", "2 /kg")];
    let quote = quote(NINE, &values);
    let reel = |basis: &str| {
        let of = |line: &&QuoteLine| line.stage == "reel" && line.basis == basis;
        quote.lines.iter().find(of).unwrap().quantity
    };
    let hanks = 42.0 * 0.1 * 330.6 / 330.0;
    near(reel("kilogram of yarn"), hanks, 1e-9);
    near(reel("finished kilogram"), hanks, 1e-9);
    near(reel("piece"), 42.0, 1e-9);
}

#[test]
fn a_fleece_of_several_sorts_pays_for_the_sorting_table() {
    let lot = NINE.replace(
        "diameter = \"27 µm\"",
        "diameter = \"27 µm\"\nsorts = { fine = \"60 %\", coarse = \"rest\" }",
    );
    let quote = quote(&lot, &[("tariff.sort.tariff_out", "0.10 /kg")]);
    let sort: Vec<f64> =
        quote.lines.iter().filter(|line| line.stage == "sort").map(|line| line.quantity).collect();
    near(sort[0], 9.0, 1e-12);
    // 8 % is sorted out.
    near(sort[1], 9.0 * 0.92, 1e-9);
    let scoured =
        |line: &&QuoteLine| line.stage.starts_with("lot.") && line.stage.contains("scour");
    assert_eq!(quote.lines.iter().filter(scoured).count(), 2);
}

#[test]
fn the_price_over_the_simulated_lots() {
    let run = |lot: &str, values: &[(&str, &str)]| {
        let result = plan(lot, MILL, values).run(&Run { lots: 2000, ..Run::default() }).unwrap();
        result.quote(&Terms::default()).unwrap()
    };
    let nine = run(NINE, &[]).band.unwrap();
    assert_eq!((nine.low, nine.middle, nine.high), (260.0, 260.0, 260.0));
    for lot in [LOOMS, GROWERS] {
        let quote = run(lot, &[("tariff.minimum_charge", "0")]);
        let band = quote.band.unwrap();
        assert!(band.low < quote.price && quote.price < band.high, "{band:?} {}", quote.price);
        near(band.middle, quote.price, 0.03 * quote.price);
    }
    // One uncertain value: the price is dearer with more wool, so its low end is that of the value's.
    let known = [("lot.clean", "58 %"), ("sort.rejects", "8 %"), ("card.held_up", "0.6 kg")];
    let known: Vec<(&str, &str)> =
        known.into_iter().chain([("mule.loss", "3 %"), ("tariff.minimum_charge", "0")]).collect();
    let open = [&known[..], &[("lot.greasy", "40 kg")]].concat();
    let band = run(NINE, &open).band.unwrap();
    let at = |loss: &str| quote(NINE, &[&open[..], &[("card.loss", loss)]].concat()).price;
    // Of the card's loss 4 % is the 5 %, 7 % the 95 % of the lots.
    near(band.high, at("4 %"), 0.005 * band.high);
    near(band.low, at("7 %"), 0.005 * band.low);
    near(band.middle, at("5 %"), 0.005 * band.middle);
}

#[test]
fn tariffs_change_nothing_but_the_quotation() {
    let run = Run { lots: 300, ..Run::default() };
    let with = plan(NINE, MILL, &[]);
    let bare: String = MILL[..MILL.find("[tariff]").unwrap()].to_owned()
        + &MILL[MILL.find("# Usual yarns").unwrap()..];
    let without = plan(NINE, &bare, &[]);
    assert_eq!(with.given().len(), without.given().len());
    let (with, without) = (with.run(&run).unwrap(), without.run(&run).unwrap());
    assert_eq!(with.samples.spare, without.samples.spare);
    assert_eq!(with.origins, without.origins);
    let message = without.quote(&Terms::default()).unwrap_err().to_string();
    assert!(
        message.starts_with("mill.toml: there are no prices; write a table [tariff]"),
        "{message}"
    );
}

#[test]
fn without_a_cost_there_is_no_margin() {
    let (from, to) = (MILL.find("[cost]").unwrap(), MILL.find("# Usual yarns").unwrap());
    let bare = format!("{}{}", &MILL[..from], &MILL[to..]);
    let result = plan(NINE, &bare, &[]).run(&Run::planned()).unwrap();
    let quote = result.quote(&Terms::default()).unwrap();
    assert_eq!((quote.cost, quote.margin, quote.pays_from), (None, None, None));
    assert!(quote.to_string().contains("no [cost]"));
    let asked = result.quote(&Terms { margin: Some(0.3), price: None }).unwrap_err().to_string();
    assert!(asked.contains("write a table [cost]"), "{asked}");
}

#[test]
fn bad_tariffs_are_named_where_they_stand() {
    let place = |old: &str, new: &str, key: &str, words: &[&str]| {
        let mill = MILL.replacen(old, new, 1);
        assert_ne!(mill, MILL);
        let at =
            mill.lines().position(|line| line.starts_with(new.lines().last().unwrap())).unwrap();
        let message = message(NINE, &mill);
        let place = format!("mill.toml:{}: {key}: ", at + 1);
        assert!(message.starts_with(&place), "does not begin with '{place}': {message}");
        for word in words {
            assert!(message.contains(word), "'{word}' is not in: {message}");
        }
    };
    place(
        "card.tariff_out",
        "crad.tariff_out",
        "tariff.crad",
        &["no stage 'crad'", "did you mean 'card'?"],
    );
    place("card.tariff_out", "card.tarif_out", "tariff.card.tarif_out", &["'tariff_out'"]);
    let bare = "card.tariff_out = 5.50";
    place("card.tariff_out = \"5.50 /kg\"", bare, "tariff.card.tariff_out", &["no unit", "/kg"]);
    let hours = "card.tariff_out = \"5 h\"";
    place("card.tariff_out = \"5.50 /kg\"", hours, "tariff.card.tariff_out", &["cost per mass"]);
    let mass = "card.clearing_charge = \"45 /kg\"";
    place("card.clearing_charge = 45", mass, "tariff.card.clearing_charge", &["money"]);
    let spread = "minimum_charge = { low = 200, likely = 260, high = 300 }";
    place("minimum_charge = 260", spread, "tariff.minimum_charge", &["write one value"]);
    let piece = "card.piece_charge = 5";
    place("card.tariff_out = \"5.50 /kg\"", piece, "tariff.card.piece_charge", &["no pieces here"]);
    let negative = "card.clearing_charge = -45";
    place(
        "card.clearing_charge = 45",
        negative,
        "tariff.card.clearing_charge",
        &["less than nothing", "0 or more"],
    );
    place("minimum_charge = 260", "minimum = 260", "tariff.minimum", &["table [tariff.minimum]"]);
    place("fixed_cost = 250", "fix_cost = 250", "cost.fix_cost", &["did you mean 'fixed_cost'?"]);
    // All at once, in one go.
    let two = MILL.replace("card.tariff_out", "crad.tariff_out").replace("fixed_cost", "fix_cost");
    assert_eq!(message(NINE, &two).lines().count(), 2);
}
