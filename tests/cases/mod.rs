//! How many cases a randomised test draws.

use proptest::test_runner::Config;

/// As many cases as are usual for a test, or as many as PROPTEST_CASES asks for.
pub(crate) fn cases(usual: u32) -> Config {
    let asked = std::env::var("PROPTEST_CASES").ok().and_then(|cases| cases.parse().ok());
    Config::with_cases(asked.unwrap_or(usual))
}
