//! Bad lot files: each gives one message with file, line and key, what was given and what to write.

use hankwise::plan::{Plan, Run};

mod lot;
use lot::{LOT, known, line_of, set, unset, without};

fn message(text: &str) -> String {
    match Plan::parse(text, "bad.toml") {
        Ok(_) => panic!("the lot file was taken:\n{text}"),
        Err(e) => e.to_string(),
    }
}

/// Refused at the line where `mark` is, at a key, with every one of the words.
fn refused(text: &str, mark: &str, key: &str, words: &[&str]) {
    let message = message(text);
    let place = format!("bad.toml:{}: {key}: ", line_of(text, mark));
    assert!(message.starts_with(&place), "does not begin with '{place}': {message}");
    for word in words {
        assert!(message.contains(word), "'{word}' is not in: {message}");
    }
}

/// A key of a section set to a value that is refused there.
fn value(section: &str, key: &str, value: &str, words: &[&str]) {
    let text = set(&known(), section, key, value);
    let heading = &text[text.find(&format!("\n[{section}]")).unwrap()..];
    let lines = text.matches('\n').count() - heading.matches('\n').count() + 2;
    let line =
        lines + heading[1..].lines().position(|l| l.starts_with(&format!("{key} ="))).unwrap();
    let message = message(&text);
    let place = format!("bad.toml:{line}: {section}.{key}: ");
    assert!(message.starts_with(&place), "does not begin with '{place}': {message}");
    for word in words {
        assert!(message.contains(word), "'{word}' is not in: {message}");
    }
}

fn route(names: &[&str]) -> String {
    format!("route = {names:?}\n{}", known())
}

#[test]
fn the_good_one_is_taken() {
    for text in [LOT, &known()] {
        assert_eq!(Plan::parse(text, "good.toml").unwrap().warnings(), Vec::<String>::new());
    }
}

#[test]
fn something_is_missing() {
    let k = known();
    refused(
        &unset(&k, "scour", "loss"),
        "[scour]",
        "scour.loss",
        &["missing", "loss = \"2 %\"", "[scour]"],
    );
    refused(&unset(&k, "lot", "greasy"), "[lot]", "lot.greasy", &["missing", "greasy = "]);
    refused(
        &unset(&k, "mule", "twist_wheels"),
        "[mule]",
        "mule",
        &["turns_per_tooth", "twist_wheels", "owned", "both or neither"],
    );
    refused(&without(&k, "scour"), "#", "scour.loss", &["missing", "a table [scour]"]);
    refused(
        &unset(&k, "goods.throw", "promised"),
        "[goods.throw]",
        "goods.throw.promised",
        &["promised = 12", "takes_rest = true"],
    );
    refused(
        &without(&k, "reel"),
        "kind = \"hank\"",
        "goods.hank.kind",
        &["reel", "[reel]", "circumference"],
    );
    refused(&without(&k, "loom"), "kind = \"woven\"", "goods.throw.kind", &["loom", "[loom]"]);
    let bare = without(&without(&without(&k, "loom"), "cone"), "finish");
    refused(&bare, "kind = \"woven\"", "goods.throw.kind", &["need a loom", "[finish]"]);
    let none = without(&without(&k, "goods.hank"), "goods.throw");
    refused(&none, "#", "goods", &["nothing is promised", "[goods.hank]"]);
    assert!(message("").contains("bad.toml:1: goods: nothing is promised"));
}

#[test]
fn something_is_not_known() {
    let k = known();
    refused(
        &set(&k, "scour", "los", "\"1 %\""),
        "los =",
        "scour.los",
        &["unknown key", "did you mean 'loss'?", "vegetable"],
    );
    refused(
        &k.replace("[scour]", "[scuor]"),
        "[scuor]",
        "scuor",
        &["unknown key", "did you mean 'scour'?"],
    );
    refused(
        &format!("{k}\n[dyehouse]\nvat = 1\n"),
        "[dyehouse]",
        "dyehouse",
        &["unknown key", "finish"],
    );
    value("goods.hank", "kind", "\"scarf\"", &["'scarf'", "\"hank\"", "\"woven\""]);
    value(
        "goods.hank",
        "yarn",
        "\"three-fold\"",
        &["no stage makes", "'three-fold'", "'two-fold'"],
    );
    let spread = "{ lo = \"5 %\", likely = \"8 %\", high = \"12 %\" }";
    value("sort", "rejects", spread, &["lo: ", "unknown key", "low, likely and high"]);
    let varies = "{ mean = \"8 %\", sd = \"1 %\", varies = \"day\" }";
    value("sort", "rejects", varies, &["varies", "\"mill\", \"lot\" or \"piece\""]);
}

#[test]
fn a_quantity_that_cannot_be_read() {
    value("lot", "greasy", "\"80 m\"", &["'m'", "length", "mass", "write it like"]);
    value("lot", "greasy", "\"80 kgg\"", &["'kgg'", "did you mean 'kg'?"]);
    value("lot", "greasy", "80", &["80 has no", "mass", "unit"]);
    value("lot", "greasy", "\"\"", &["nothing was given", "mass"]);
    value("scour", "regain", "16", &["16 has no", "'16 %'", "0.16"]);
    value("yarn", "count", "\"16\"", &["16 has no", "count"]);
    value("loom", "reeds", "[24]", &["24 has no", "reed"]);
}

#[test]
fn a_figure_that_cannot_be() {
    value("lot", "greasy", "\"-80 kg\"", &["−80 kg", "0 kg or more"]);
    value("lot", "greasy", "\"0 kg\"", &["0 kg", "not possible", "\"80.00 kg\""]);
    value("lot", "clean", "\"0 %\"", &["0 %", "not possible"]);
    value("scour", "loss", "\"120 %\"", &["120 %", "between 0 % and 100 %"]);
    value("scour", "loss", "\"100 %\"", &["all of it is lost", "less than 100 %"]);
    value("finish", "loss", "\"100 %\"", &["all of it is lost"]);
    value("yarn", "count", "\"0 m/100g\"", &["'0 m/100g'", "not possible"]);
    value("yarn", "ends", "2.5", &["whole", "2.5", "write 2"]);
    let single = set(&route(&["card", "mule", "twister"]), "yarn", "ends", "1");
    let single = without(&single, "sort");
    refused(&single, "ends = 1", "yarn.ends", &["not a fold", "ends = 2 or more"]);
    value("yarn", "ends", "{ low = \"1\", likely = \"2\", high = \"3\" }", &["known", "write 2"]);
    value("mule", "delivery_wheels", "[32, 34.5]", &["whole teeth", "34.5"]);
    value("mule", "wanted_draft", "nan", &["NaN", "1.4"]);
    value("mule", "wanted_draft", "inf", &["inf", "1.4"]);
    value("mule", "spindles", "1e308", &["not possible", "finite", "mule.spindles = 1e308"]);
    let sd = "{ mean = \"8 %\", sd = \"-1 %\" }";
    value("sort", "rejects", sd, &["sd: ", "−1 %", "not possible"]);
}

/// Without spindles the hours are endless, and so on.
#[test]
fn nothing_where_something_is_needed() {
    for (section, key, zero) in [
        ("yarn", "ends", "0"),
        ("yarn", "twist_factor", "\"0 turns/cm √tex\""),
        ("card", "ends", "0"),
        ("card", "delivery_speed", "\"0 m/min\""),
        ("card", "drop_rate", "\"0 drops/min\""),
        ("card", "check_length", "\"0 m\""),
        ("mule", "spindles", "0"),
        ("mule", "travel", "\"0 m\""),
        ("mule", "wanted_draft", "0"),
        ("mule", "delivered_per_tooth", "\"0 m\""),
        ("mule", "turns_per_tooth", "0"),
        ("mule", "cycle", "\"0 s\""),
        ("mule", "efficiency", "\"0 %\""),
        ("twister", "wanted_twist_ratio", "0"),
        ("twister", "twist_constant", "\"0 turns/m\""),
        ("twister", "spindles", "0"),
        ("twister", "spindle_speed", "\"0 rpm\""),
        ("twister", "efficiency", "\"0 %\""),
        ("reel", "reel_circumference", "\"0 m\""),
        ("loom", "ends_per_dent", "0"),
        ("loom", "wanted_reed_sett", "\"0 ends/cm\""),
        ("loom", "weft_sett", "\"0 picks/cm\""),
        ("loom", "loom_width", "\"0 m\""),
        ("loom", "loom_speed", "\"0 picks/min\""),
        ("loom", "efficiency", "\"0 %\""),
        ("goods.throw", "width", "\"0 m\""),
        ("goods.throw", "length", "\"0 m\""),
        ("goods.hank", "mass", "\"0 g\""),
    ] {
        value(section, key, zero, &["not possible", "write it like", zero.trim_matches('"')]);
    }
}

#[test]
fn values_that_are_impossible_together() {
    let k = known();
    let mark = "clean = \"90 %\"";
    refused(
        &set(&k, "lot", "clean", "\"90 %\""),
        mark,
        "lot.clean",
        &["exceed the 80 kg", "72 kg", "smaller"],
    );
    value("card", "held_up", "\"60 kg\"", &["nothing is left", "36.76 kg", "larger lot"]);
    value(
        "mule",
        "let_in",
        "\"2 m\"",
        &["let in by 2 m", "travel of 1.83 m", "nothing is wound", "write less"],
    );
    value("mule", "coiling", "1000", &["twist", "not possible", "mule.slip = 3 %", "change one"]);
    value("mule", "slip", "\"100 %\"", &["slip the whole way", "write less"]);
    // So little yarn is not one turn of the reel.
    value("goods.hank", "mass", "\"1e-10 kg\"", &["'hank'", "no yarn", "size", "count"]);
    value("card", "fat", "\"20 %\"", &["20 %", "4.8 %", "or less"]);
    value("card", "vegetable", "\"2 %\"", &["2 %", "0.5 %", "or less"]);
    value(
        "goods.throw",
        "width",
        "\"1.90 m\"",
        &["'throw'", "wide in the reed", "loom takes 1.9 m", "narrower"],
    );
    let order = "{ low = \"9 %\", likely = \"8 %\", high = \"12 %\" }";
    value("sort", "rejects", order, &["not in order", "low 9 %", "smallest first"]);
}

#[test]
fn a_part_that_is_not_owned() {
    value("mule", "twist_wheel", "62", &["62 is not owned", "60, 64, 68"]);
    value("loom", "reed", "\"22 dents/10 cm\"", &["not owned", "24 dents/10 cm"]);
    value("loom", "reeds", "[]", &["a list goes here", "\"20 dents/10 cm\"", "not []"]);
    value("loom", "reeds", "\"24 dents/10 cm\"", &["a list goes here", "not \"24"]);
    value("twister", "twist_wheels", "[0]", &["0 is not a part", "[32, 35, 40]"]);
    value("twister", "twist_wheels", "[-32]", &["−32", "0 or more"]);
}

#[test]
fn something_of_the_wrong_type() {
    value("lot", "name", "12", &["a text in quotes", "not 12"]);
    value("lot", "greasy", "[1]", &["write a mass", "not [1]"]);
    value("lot", "greasy", "true", &["write a mass", "not true"]);
    value("lot", "greasy", "{ kg = 80 }", &["kg: ", "unknown key", "low, likely and high"]);
    value("sort", "rejects", "{ low = \"9 %\" }", &["rejects = { low", "mean"]);
    value("goods.hank", "promised", "-1", &["whole number", "not -1"]);
    value("goods.hank", "promised", "1.5", &["whole number", "not 1.5"]);
    value("goods.hank", "promised", "\"12\"", &["whole number", "not \"12\""]);
    value("goods.hank", "takes_rest", "\"yes\"", &["true or false", "not \"yes\""]);
    let flat = format!("scour = 1\n{}", without(&known(), "scour"));
    refused(&flat, "scour = 1", "scour", &["write a table [scour]", "not 1"]);
    refused(
        &format!("route = \"sort\"\n{}", known()),
        "route",
        "route",
        &["a list of texts", "not \"sort\""],
    );
}

#[test]
fn a_route_that_leads_nowhere() {
    let stage = |names: &[&str], words: &[&str]| refused(&route(names), "route", "route", words);
    stage(
        &["sort", "scuor", "card", "mule", "twister"],
        &["unknown stage 'scuor'", "did you mean 'scour'?"],
    );
    stage(
        &["sort", "vat", "card", "mule", "twister"],
        &["unknown stage 'vat'. Stages: sort, scour"],
    );
    stage(&["sort", "mule", "twister"], &["no yarn without 'card'", "add it"]);
    stage(&[], &["no yarn without 'card'"]);
    stage(&["card", "twister", "mule"], &["'twister' cannot come before 'mule'", "swap them"]);
    stage(&["mule", "card", "twister"], &["'mule' cannot come before 'card'"]);
    let text = route(&["card", "mule", "twister"]);
    refused(&text, "[sort]", "sort", &["'sort' is not in the route", "add it"]);
}

#[test]
fn goods_that_cannot_be_served() {
    let k = known();
    let text = k.replace("[goods.hank]", "[goods.card]");
    refused(&text, "[goods.card]", "goods.card", &["taken", "something else"]);
}

#[test]
fn what_is_not_toml() {
    let place = |text: &str, mark: &str, words: &[&str]| {
        let (message, line) = (message(text), line_of(text, mark));
        assert!(message.starts_with(&format!("bad.toml:{line}: this is not TOML")), "{message}");
        assert!(words.iter().all(|w| message.contains(w)), "{message}");
    };
    let k = known();
    place(&k.replace("\"14 %\"", "14 %"), "14 %", &["regain = 14 %", "texts in quotes"]);
    place(&k.replace("\"80.00 kg\"", "\"80.00 kg"), "greasy = \"80.00", &["greasy"]);
    place(&format!("{k}\n[goods.hat"), "[goods.hat", &["unclosed", "[goods.hat"]);
    let twice = k.replace("vegetable = \"1.5 %\"", "regain = \"1 %\"");
    place(&twice, "regain = \"1 %\"", &["duplicate", "remove one of the two"]);
}

#[test]
fn goods_that_nobody_named_cannot_be_needed() {
    let plan = Plan::parse(&known(), "bad.toml").unwrap();
    let needed = |goods: &[(String, u32)], confidence| {
        plan.needed(goods, confidence, &Run::planned()).unwrap_err().to_string()
    };
    let message = needed(&[("hanks".to_owned(), 3)], 0.5);
    assert!(message.contains("no goods 'hanks'"), "{message}");
    assert!(message.contains("Did you mean 'hank'?"), "{message}");
    assert!(needed(&[("hank".to_owned(), 0)], 0.5).contains("at least one"));
    for confidence in [0.0, 1.0, 95.0, f64::NAN] {
        assert!(needed(&[], confidence).contains("0.95"), "{confidence}");
    }
}

/// However long what was given is, the message has at most 500 characters: where, and what to write.
#[test]
fn a_message_stays_readable() {
    let long = "k".repeat(300_000);
    for (text, begins, ends) in [
        (LOT.replacen("[lot]", &format!("[lot]\n{long} = 1"), 1), "lot.kkk", "vegetable"),
        (format!("{LOT}\n[{long}]\n"), "kkk", "finish"),
        (LOT.replacen("[lot]", &format!("[lot]\n\"{long}"), 1), "this is not TOML", "in quotes"),
    ] {
        let message = message(&text);
        assert!(message.chars().count() <= 500, "{} characters", message.chars().count());
        let (place, rest) = message.split_once(": ").unwrap();
        assert!(place.starts_with("bad.toml:") && rest.starts_with(begins), "{message}");
        assert!(message.ends_with(ends), "{message}");
    }
}
