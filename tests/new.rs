//! New lot and mill files: what is written of a few words is a plan, and says where each value is from.

use hankwise::plan::{
    LOT_QUESTIONS, MILL_QUESTIONS, Plan, Run, Source, guide, new_lot, new_mill, tables,
};

fn lot(words: &[(&str, &str)]) -> String {
    new_lot(words, "handbook").unwrap_or_else(|e| panic!("{words:?}: {e}"))
}

fn plan(words: &[(&str, &str)]) -> Plan {
    Plan::parse(&lot(words), "new.toml").unwrap_or_else(|e| panic!("{words:?}: {e}"))
}

fn from<'p>(plan: &'p Plan, key: &str) -> &'p str {
    let given = plan.given().iter().find(|given| given.key == key);
    &given.unwrap_or_else(|| panic!("no {key}")).from
}

fn likely(plan: &Plan, key: &str) -> f64 {
    plan.given().iter().find(|given| given.key == key).unwrap().base()
}

#[test]
fn nothing_known_is_a_plan_and_says_so() {
    let plan = plan(&[]);
    assert_eq!(plan.promise(), [("hank", None)]);
    for key in ["lot.clean", "card.loss", "mule.loss", "sort.rejects", "scour.loss"] {
        assert_eq!(from(&plan, key), "handbook", "{key}");
    }
    assert!(plan.run(&Run { lots: 2000, seed: 1, threads: 1 }).unwrap().goods[0].planned > 0.0);
}

#[test]
fn a_breed_gives_the_clean_yield_of_its_rows() {
    // Romney 55 to 70 %; Dorset in two rows, 50 to 65 and 50 to 70 %; the Down breeds 50 to 65 %.
    for (breed, low, high) in [
        ("Romney", 0.55, 0.70),
        ("romney cross", 0.55, 0.70),
        ("Dorset", 0.50, 0.70),
        ("Down cross", 0.50, 0.65),
        ("Bluefaced Leicester", 0.75, 0.80),
        // Of what is nearly clean the middle alone: a range would leave no room for its water.
        ("Karakul", 0.80, 0.85),
        // A breed that the handbook lacks: most breeds lie between 45 and 65 %.
        ("hill sheep from the valley", 0.45, 0.65),
    ] {
        let plan = plan(&[("greasy", "40 kg"), ("breed", breed)]);
        let middle = f64::midpoint(low, high);
        assert!((likely(&plan, "lot.clean") - middle).abs() < 1e-9, "{breed}");
    }
    assert!(lot(&[("breed", "Romney")]).contains("Breed yield table"));
    assert!(lot(&[("breed", "Down cross")]).contains("a cross may differ"));
    assert_eq!(from(&plan(&[("breed", "Romney")]), "lot.clean"), "handbook");
}

#[test]
fn a_feel_gives_the_diameters_of_its_grades() {
    // Medium: ½ blood from 22.05 µm to ¼ blood at 30.99 µm.
    let medium = plan(&[("feel", "medium")]);
    let middle = f64::midpoint(22.05, 30.99);
    assert!((likely(&medium, "lot.diameter") - middle).abs() < 0.005);
    let typed = plan(&[("feel", "27 µm")]);
    assert!((likely(&typed, "lot.diameter") - 27.0).abs() < 1e-9);
    assert!(!plan(&[]).given().iter().any(|given| given.key == "lot.diameter"));
}

#[test]
fn goods_have_their_sizes_and_the_last_takes_the_rest() {
    let text = lot(&[("goods", "throws:12, scarf:0.3x1.5m:3,hank:50g:120")]);
    let plan = Plan::parse(&text, "new.toml").unwrap();
    assert_eq!(plan.promise(), [("throw", Some(12)), ("scarf", Some(3)), ("hank", Some(120))]);
    assert!((likely(&plan, "goods.hank.mass") - 0.05).abs() < 1e-12);
    assert!((likely(&plan, "goods.scarf.width") - 0.3).abs() < 1e-12);
    assert!((likely(&plan, "goods.scarf.length") - 1.5).abs() < 1e-12);
    assert_eq!(text.matches("takes_rest").count(), 1);
    let two = self::plan(&[("goods", "hank:50g:20,hank:200g:5,cone:2,ball:3,rug:1")]);
    let names: Vec<&str> = two.promise().iter().map(|(name, _)| *name).collect();
    assert_eq!(names, ["hank", "hank-2", "yarn-cone", "ball", "rug"]);
}

#[test]
fn a_text_of_the_users_own_stays_one_text() {
    let plan = plan(&[("name", "a \"b\" \\ # c\nd = 1"), ("owner", "x\ty"), ("by", "2026-09-01")]);
    assert!(plan.name().starts_with("a \"b\" \\ # c"), "{}", plan.name());
    assert_eq!(plan.due(), Some("2026-09-01"));
}

#[test]
fn what_is_wrong_is_refused_with_what_to_write() {
    for (word, value, says) in [
        ("greasy", "much", "greasy"),
        ("greasy", "0 kg", "nothing"),
        ("greasy", "5 m", "greasy"),
        ("breed", "Romny", "did you mean 'Romney'?"),
        ("feel", "nice", "fine, medium, coarse"),
        ("feel", "300 µm", "is no wool"),
        ("goods", "carpet:1", "unknown 'carpet'"),
        ("goods", "throw,hank", "how many of 'throw' is missing"),
        ("goods", "hank:50g:60g", "says the same twice"),
        ("goods", "hank:long", "not a size"),
        ("goods", "throw:1.4m", "throw:1.4x1.8m"),
        ("goods", "hank:0", "from 1"),
        ("goods", "", ""),
        ("by", "soon", "2026-09-01"),
        ("count", "3 kg", "count"),
        ("greesy", "3 kg", "did you mean 'greasy'?"),
    ] {
        match new_lot(&[(word, value)], "handbook") {
            Ok(_) => assert!(says.is_empty(), "{word}={value} was taken"),
            Err(e) => {
                assert!(!says.is_empty() && e.to_string().contains(says), "{word}={value}: {e}");
            }
        }
    }
    for (word, value) in
        [("spinning", "wheel"), ("ends", "many"), ("reeds", "2 kg"), ("reel", "0 m")]
    {
        let said = new_mill(&[(word, value)]).unwrap_err().to_string();
        assert!(said.contains(word), "{said}");
    }
    assert!(new_mill(&[("spinning", "ring"), ("spindles", "20")]).is_err());
}

#[test]
fn a_new_mill_says_what_is_the_handbooks_and_takes_the_words() {
    let mill = new_mill(&[]).unwrap();
    for line in
        mill.lines().filter(|line| line.contains("= \"handbook\"") && !line.starts_with('#'))
    {
        assert!(line.contains("# usually ") && line.contains(" to "), "{line}");
    }
    // Card loss: 2 to 10 %, Carding page.
    assert!(mill.contains("loss = \"handbook\"   # usually 2 % to 10 %"));
    let words: Vec<(&str, &str)> = MILL_QUESTIONS.iter().map(|q| (q.word, q.like)).collect();
    let own = Source { name: "mill.toml".to_owned(), text: new_mill(&words).unwrap() };
    let text = new_lot(&[("goods", "throw:2,hank")], "mill.toml").unwrap();
    let lot = Source { name: "lot.toml".to_owned(), text };
    let plan = Plan::from_sources(lot.clone(), Some(own), "").unwrap();
    assert!((likely(&plan, "card.held_up") - 0.6).abs() < 1e-12);
    assert!((likely(&plan, "mule.spindles") - 120.0).abs() < 1e-12);
    let ring = new_mill(&[("spinning", "ring")]).unwrap();
    let ring = Source { name: "mill.toml".to_owned(), text: ring };
    let plan = Plan::from_sources(lot, Some(ring), "").unwrap();
    let result = plan.run(&Run::planned()).unwrap();
    let stages: Vec<&str> = result.stages.iter().map(|stage| stage.name.as_str()).collect();
    assert!(stages.contains(&"ring") && !stages.contains(&"mule"), "{stages:?}");
}

#[test]
fn every_question_is_a_word_and_its_example_an_answer() {
    for question in LOT_QUESTIONS {
        plan(&[(question.word, question.like)]);
    }
    for question in MILL_QUESTIONS {
        new_mill(&[(question.word, question.like)]).unwrap();
    }
    assert!(LOT_QUESTIONS.len() <= 8 && MILL_QUESTIONS.len() <= 8);
}

#[test]
fn a_plan_is_said_in_a_sentence() {
    let plan = plan(&[("greasy", "45 kg"), ("breed", "Romney"), ("goods", "throw")]);
    let result = plan.run(&Run { lots: 20_000, seed: 1, threads: 1 }).unwrap();
    let said = result.spoken();
    assert!(said.starts_with("From 45 kg of greasy wool you can safely promise "), "{said}");
    assert_eq!(said.matches(". ").count(), 0, "one sentence: {said}");
    let safe = result.goods[0].safe.unwrap();
    assert!(said.contains(&format!("safely promise {safe} throws")), "{said}");
    assert!(said.contains("19 lots in 20") && said.contains("to be surer, first "), "{said}");
}

#[test]
fn what_cannot_be_made_is_not_promised_without_a_word() {
    // A single of 42 tex of 36 µm wool: some 28 fibres in its section, and woollen spinning needs 100.
    let fine = plan(&[("greasy", "45 kg"), ("feel", "36 µm"), ("count", "1200 m/100g")]);
    let result = fine.run(&Run { lots: 1000, seed: 1, threads: 1 }).unwrap();
    assert!(!result.obstacles.is_empty());
    assert!(result.spoken().contains("cannot be made"), "{}", result.spoken());
}

#[test]
fn the_guide_has_a_row_for_every_key() {
    let guide = guide();
    for table in tables() {
        assert!(guide.contains(&format!("### {}: ", table.head)), "{}", table.head);
        for key in table.keys {
            assert!(guide.contains(&format!("| `{}` | {} |", key.name, key.meaning)));
        }
    }
}
