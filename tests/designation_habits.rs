//! Designations as people type them: what is read, and that what a message proposes can be typed.
#![allow(missing_docs)]

use hankwise::quantity::unit;
use hankwise::yarn::Yarn;
use hankwise::yarn::designation::Reading;

/// What people type, and the yarn that it can only be.
#[test]
#[allow(clippy::too_many_lines, reason = "a table")]
fn habits_of_writing() {
    for (yarn, spellings) in [
        (
            "32 Nm × 2",
            &[
                "nm 32/2",
                "NM 32/2",
                "Nm. 32/2",
                "Nm: 32/2",
                "NM32/2",
                "32 / 2 Nm",
                "2 / 32 nm",
                "Nm 2 / 32",
                "Nm 32/2,",
                "Nm 32⁄2",
                "Nm ３２/２",
                "Nm 32–2",
                "Nm 32 х 2",
                "Νm 32/2",
                "2 x 32 Nm",
                "\u{feff}Nm\u{a0}32/2",
                "2 ends of Nm 32",
                "32 Nm x 2 ends",
                "32Nmx2",
                "32 Nm × 2-ply",
            ][..],
        ),
        (
            "34 tex × 2",
            &["34 TEX x 2", "Tex 34 x 2", "2x34 tex", "34x2tex", "34 tех ✕ 2", "+34 tex*2"],
        ),
        (
            "30 Ne × 2",
            &[
                "ne 30/2",
                "30/2 NE",
                "30/2 cc",
                "30/2 c.c.",
                "30s/2 cotton count",
                "2/30`s Ne",
                "2x30s Ne",
            ],
        ),
        (
            "16 YSW",
            &[
                "16 ysw",
                "16 Ysw",
                "ysw 16",
                "1-ply 16 YSW",
                "single 16 YSW",
                "16 YSW single",
                "16 YSW, 1-ply",
            ],
        ),
        ("22.5 YSW", &["22½ YSW", "22 1/2 YSW", "22 ½ ysw", "YSW 22 1/2"]),
        ("22.5 YSW × 2", &["2/22½ YSW", "2/22 1/2 YSW"]),
        (
            "60 Nm × 2 × 3",
            &[
                "Nm 60/2/3",
                "60/2/3 Nm",
                "60/2x3 Nm",
                "Nm 60/2 x 3",
                "3/2/60 Nm",
                "Nm 60/2 × 3 ends",
            ],
        ),
        (
            "150 den f48",
            &[
                "150d/48f",
                "150D/48F",
                "150 den f 48",
                "150 den/48f",
                "150 den 48 fil.",
                "den 150 f48",
                "150f48 den",
                "150denf48",
            ],
        ),
        (
            "167 dtex f48 × 2",
            &["167 dtex/48f x 2", "167 dtex 48 filaments × 2", "dtex 167 f 48 x 2"],
        ),
        ("1000 tex t0", &["1e3 tex t 0", "1000 tex T0"]),
        (
            "34 tex S 600 × 2 Z 400; R 69.3 tex",
            &[
                "34 tex s 600 x 2 z 400; r 69.3 tex",
                "34texS600x2Z400;R69.3tex",
                "34 tex S 600 x 2 Z 400, R 69.3 tex",
                "34 tex S 600 T/m × 2 Z 400/m R 69.3 tex",
                "R 69.3 TEX Z 400/2 S 600; 34 Tex",
                "r69.3tex z400/2s600;34tex",
            ],
        ),
        (
            "(24 worsted × 2 + 16 Nm) S 300",
            &["(2/24 worsted + Nm 16) S 300", "(24/2 Worsted + 16 NM) s 300"],
        ),
        ("32 Nm × 2; R 15.6 Nm", &["Nm 32/2; R 15.6 Nm", "2/32 Nm; R Nm 15.6"]),
    ] {
        for text in spellings {
            let read = Yarn::parse(text).unwrap_or_else(|e| panic!("{text}: {e}"));
            assert_eq!(read.designation(), yarn, "{text}");
        }
    }
    for text in ["R 34/2 tex", "R34/2 tex", "r 34 tex/2"] {
        assert_eq!(Yarn::parse(text).unwrap().designation(), "R 34 tex/2", "{text}");
    }
    for text in ["tkt metric 75", "Tkt. No. 75 metric", "Metric Ticket Nr. 75"] {
        assert_eq!(Yarn::parse(text).unwrap(), Yarn::parse("Tkt 75 metric").unwrap(), "{text}");
    }
}

/// What a message proposes can be typed.
#[test]
fn proposals_are_read() {
    let mut tried = 0;
    for text in [
        "2/3 Nm",
        "8/8 Ne",
        "12/6 Nm",
        "60/2",
        "2/24's",
        "30's x 2",
        "30/1",
        "13/15",
        "34",
        "40's",
        "2/60 spun-silk",
        "Nm 2 2-ply",
        "16 Nm, 2 ply",
        "2-ply 16 Nm",
        "150/48 den",
        "70/2 den",
        "150 den/48",
        "2 Nm/32",
        "Nm 2 x 32",
        "150/48/1 dtex",
        "1-1/2 run",
        "R 2/34 Nm",
        "R 74 tex x 2",
        "Nm 32/2 Z 400",
        "Tkt 75",
        "No. 40",
        "34 + 20",
        "34 tex + 20 tex S 300",
        "DK 3",
        "nothing",
        "",
    ] {
        let message = Yarn::parse(text).expect_err(text).to_string();
        let message = message.lines().next().unwrap();
        let Some((_, advice)) = message.split_once("write ") else { continue };
        for proposal in advice.split('\'').skip(1).step_by(2) {
            // Names of systems and orders, and pieces of a notation, are in quotes as well.
            if !proposal.contains(|c: char| c.is_ascii_digit())
                || proposal.starts_with(['S', 't', 'f', ';', '×'])
            {
                continue;
            }
            let again = Yarn::parse(proposal);
            let settled_by_order = message.contains("tell the order") && proposal.contains('/');
            assert!(again.is_ok() || settled_by_order, "{text}: '{proposal}' in\n{message}");
            tried += 1;
        }
    }
    assert!(tried > 40, "{tried}");
}

#[test]
fn a_system_that_was_told_is_not_passed_over() {
    let told = |system| Reading { system: Some(unit(system, None).unwrap()), order: None };
    for text in ["34 tex x 2", "R 34 tex/2", "2/24 worsted", "Tkt 120 cotton", "No. 60 six-cord"] {
        let error = Yarn::parse_as(text, &told("Nm")).expect_err(text).to_string();
        assert!(error.contains("the system given is Nm"), "{text}: {error}");
    }
    let read = |text, system| Yarn::parse_as(text, &told(system)).unwrap().designation();
    assert_eq!(read("Tkt 120", "Nm"), "R 40 Nm");
    assert_eq!(read("34 x 2", "tex"), "34 tex × 2");
    assert_eq!(read("34 tex; R 30 Nm", "Nm"), "34 tex; R 30 Nm");
}

#[test]
fn what_is_proposed_can_be_typed() {
    for (text, proposed) in
        [("2/2 spun-silk", "R 2 spun-silk/2"), ("1/1 YSW", "1 YSW × 2"), ("3/3 YSW", "3 YSW × 2")]
    {
        let message = Yarn::parse(text).unwrap_err().to_string();
        assert!(message.contains(proposed), "{message}");
        Yarn::parse(proposed).unwrap();
    }
    let bulked = Yarn::parse("B 80 den t0 f34; 70 den").unwrap();
    assert_eq!(Yarn::parse("B 80 den f34 t0; 70 den").unwrap(), bulked);
}
