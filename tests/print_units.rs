//! Results in the units that the mill thinks in: printed otherwise, the same underneath.

use hankwise::plan::{Extent, Plan, PlanResult, Run};
use hankwise::quantity::{convert, print::significant};

const FIRST: &str = include_str!("lot/whole-lot.toml");

fn run(more: &str) -> PlanResult {
    let plan = Plan::parse(&format!("{FIRST}\n{more}"), "lot.toml").unwrap();
    plan.run(&Run { lots: 2_000, seed: 1, threads: 2 }).unwrap()
}

#[test]
fn values_are_printed_in_the_units_asked_for() {
    let plain = run("");
    let result = run(concat!(
        "[print]\ncount = \"YSW\"\nmass = \"lb\"\nsmall_mass = \"dr\"\nwarp = \"yd\"\n",
        "rate = \"lb/h\"\ntwist = \"tpi\"\ntwist_factor = \"tpi/√YSW\"\nsett = \"ends/in\"\nreed = \"dents/in\"\narea = \"oz/yd²\"\n"
    ));
    let text = result.report(Extent::All).text();
    let lines: Vec<&str> = text.lines().collect();
    let said = |key: &str, from: &str, to: &str, digits: usize| {
        let setting = plain.settings.iter().find(|s| s.key == key).unwrap();
        let number = convert(setting.value, from, to).unwrap();
        // The name is on the line below the value.
        let named = |l: &&str| l.split([' ', ':']).any(|word| word == key);
        let line = lines[lines.iter().position(named).unwrap() - 1];
        let printed = format!("{} {to}", significant(number, digits));
        assert!(line.contains(&printed), "{key} is not {printed}: {line}");
    };
    said("card.slubbing_count", "tex", "YSW", 4);
    // Masses to what a balance reads.
    said("card.check_weight", "kg", "dr", 3);
    said("oil.oil_mass", "kg", "lb", 3);
    said("mule.twist", "turns/m", "tpi", 4);
    said("loom.warp_length", "m", "yd", 4);
    said("loom.reed", "dents/cm", "dents/in", 4);
    said("finish.mass_per_area", "g/m²", "oz/yd²", 4);
    // Columns of kilograms become columns of pounds, in the account too.
    assert!(text.contains("lb at 17 % regain"));
    assert!(text.contains("176.37"), "80 kg are 176.37 lb");
    assert!(text.contains("in lb, planned"));
    for metric in [" kg", " tex", "turns/m", "g/m²", "ends/cm"] {
        assert!(!text.contains(metric), "{metric} is left in {text}");
    }
}

#[test]
fn what_programs_read_does_not_change() {
    let (mut plain, mut pounds) = (run("").to_json(), run("[print]\nmass = \"lb\"\n").to_json());
    for json in [&mut plain, &mut pounds] {
        json["sha256"] = serde_json::Value::Null;
        // A sentence for people: its mass is in the unit that the screen has.
        assert!(json["advice"].as_str().unwrap().contains("take in"));
        json["advice"] = serde_json::Value::Null;
    }
    assert_eq!(plain, pounds);
}

#[test]
fn a_wrong_unit_is_refused_where_it_stands() {
    let lines = FIRST.lines().count();
    for (more, key, message) in [
        ("[print]\nmass = \"yd\"", "print.mass", "unit of length"),
        ("[print]\nmass = \"lbb\"", "print.mass", "did you mean 'lb'"),
        ("[print]\ncount = \"cut\"", "print.count", "can be read in several ways"),
        ("[print]\ncuont = \"YSW\"", "print.cuont", "did you mean 'count'"),
    ] {
        let text = format!("{FIRST}\n{more}\n");
        let error = Plan::parse(&text, "lot.toml").unwrap_err().to_string();
        assert!(error.starts_with(&format!("lot.toml:{}: {key}: ", lines + 3)), "{error}");
        assert!(error.contains(message), "{error}");
    }
}

/// As many digits as are asked for, beyond twelve too; what is short in itself stays so, and what the machine
/// leaves over of it is not printed.
#[test]
fn significant_digits_are_those_asked_for() {
    for (value, digits, printed) in [
        (226.590_894_671_488_5, 4, "226.6"),
        (226.590_894_671_488_5, 12, "226.590894671"),
        (226.590_894_671_488_5, 13, "226.5908946715"),
        (226.590_894_671_488_5, 14, "226.59089467149"),
        (0.1 + 0.2, 15, "0.3"),
        (24_330.0, 3, "24,330"),
    ] {
        assert_eq!(hankwise::quantity::print::significant(value, digits), printed);
    }
}
