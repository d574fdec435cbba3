//! Whatever is in a lot file, nothing panics: it is refused with its place, or the plan holds only
//! values that can be.

mod cases;

use cases::cases;
use hankwise::plan::{Plan, Run};
use proptest::prelude::*;
use proptest::sample::{Index, select};

mod lot;
use lot::LOT;

/// What people and programs write by mistake.
const WORDS: &[&str] = &[
    "",
    "0",
    "-1",
    "1",
    "2.5",
    "1e308",
    "-1e308",
    "5e-324",
    "nan",
    "-inf",
    "true",
    "[]",
    "{}",
    "[1, 2]",
    "[[]]",
    "\"\"",
    "\" \"",
    "\"0 kg\"",
    "\"1e300 kg\"",
    "\"0 %\"",
    "\"100 %\"",
    "\"99.99 %\"",
    "\"-5 %\"",
    "\"16 Nm\"",
    "\"1 m\"",
    "\"1e-300 m\"",
    "\"1e300 m\"",
    "\"1 rpm\"",
    "\"½ %\"",
    "\"½\"",
    "\"−\"",
    "\"’s\"",
    "1979-05-27",
    "\"\\u0000\"",
    "'''",
    "{ low = 1 }",
    "{ low = \"0 %\", likely = \"0 %\", high = \"100 %\" }",
    "{ mean = \"50 %\", sd = \"100 %\" }",
    "{ low = \"0 kg\", likely = \"1 kg\", high = \"1e300 kg\" }",
    "99999999999999999999",
    "\"🧶\"",
];

/// A plan that is taken holds only values that can be.
fn takes_or_refuses(text: &str) -> Result<(), TestCaseError> {
    let plan = match Plan::parse(text, "bad.toml") {
        Ok(plan) => plan,
        Err(e) => {
            let message = e.to_string();
            prop_assert!(message.starts_with("bad.toml"), "no place: {message}\n{text}");
            return Ok(());
        }
    };
    // Simulated lots that cannot be are refused; the planned values stand.
    let result = match plan.run(&Run { lots: 5, seed: 1, threads: 1 }) {
        Ok(result) => {
            prop_assert!(result.samples.spare.iter().all(|x| x.is_finite()), "{text}");
            result
        }
        Err(e) => {
            let message = e.to_string();
            prop_assert!(message.starts_with("bad.toml"), "no place: {message}\n{text}");
            prop_assert!(message.contains("simulated lots cannot be"), "{message}\n{text}");
            plan.run(&Run::planned()).unwrap()
        }
    };
    for setting in &result.settings {
        prop_assert!(setting.kind.check(setting.value).is_ok(), "{setting:?}\n{text}");
    }
    for row in &result.account {
        prop_assert!(row.stock.total().is_finite(), "{row:?}\n{text}");
    }
    for good in &result.goods {
        prop_assert!(good.planned.is_finite() && good.planned >= 0.0, "{good:?}\n{text}");
    }
    prop_assert!(result.spare.planned.is_finite(), "{:?}\n{text}", result.spare);
    Ok(())
}

/// Lines of the lot file that say something.
fn lines() -> Vec<&'static str> {
    LOT.lines().filter(|l| !l.is_empty() && !l.starts_with('#')).collect()
}

fn junk() -> impl Strategy<Value = String> {
    prop_oneof![
        select(WORDS).prop_map(str::to_owned),
        "[ -~é½−µ²]{0,12}",
        "\"[ -!#-~½−µ²%]{0,12}\"",
        any::<f64>().prop_map(|x| format!("{x:?}")),
        any::<i64>().prop_map(|x| x.to_string()),
        (any::<f64>(), select(&["kg", "m", "%", "rpm", "s", "tex", "m/100g"][..]))
            .prop_map(|(x, unit)| format!("\"{x} {unit}\"")),
        (0.0..3.0, select(&["kg", "m", "%", "rpm", "s", "µm", "picks/cm"][..]))
            .prop_map(|(x, unit)| format!("\"{x} {unit}\"")),
    ]
}

proptest! {
    #![proptest_config(cases(1500))]

    #[test]
    fn any_value_may_be_junk(at in any::<Index>(), junk in junk()) {
        let lines: Vec<&str> = lines();
        let keyed: Vec<usize> = (0..lines.len()).filter(|k| lines[*k].contains(" = ")).collect();
        let at = keyed[at.index(keyed.len())];
        let key = lines[at].split_once(" = ").unwrap().0;
        let line = format!("{key} = {junk}");
        let text: Vec<&str> =
            lines.iter().enumerate().map(|(k, l)| if k == at { line.as_str() } else { *l }).collect();
        takes_or_refuses(&text.join("\n"))?;
    }

    #[test]
    fn any_line_may_be_junk(at in any::<Index>(), junk in "\\PC{0,20}") {
        let mut lines: Vec<&str> = lines();
        let at = at.index(lines.len());
        lines[at] = &junk;
        takes_or_refuses(&lines.join("\n"))?;
    }

    #[test]
    fn any_lines_may_be_missing(gone in proptest::collection::vec(any::<Index>(), 1..3)) {
        let mut lines: Vec<&str> = lines();
        for at in gone {
            lines.remove(at.index(lines.len()));
        }
        takes_or_refuses(&lines.join("\n"))?;
    }

    #[test]
    fn any_two_lines_may_change_places(a in any::<Index>(), b in any::<Index>()) {
        let mut lines: Vec<&str> = lines();
        let (a, b) = (a.index(lines.len()), b.index(lines.len()));
        lines.swap(a, b);
        takes_or_refuses(&lines.join("\n"))?;
    }
}
