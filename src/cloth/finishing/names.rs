//! Names of processes that the trade has.

/// Names of processes that have a usual range, and other words for them.
const KNOWN: [(&str, &[&str]); 10] = [
    ("relax", &["relaxing", "draw in", "off loom", "off the loom"]),
    ("scour", &["scouring"]),
    ("mill", &["milling", "full", "fulling", "waulk", "waulking"]),
    ("wash", &["washing", "wet finish", "wet finishing"]),
    ("raise", &["raising", "nap", "napping", "brush", "brushing"]),
    ("crop", &["cropping", "shear", "shearing"]),
    ("tenter", &["tentering", "stenter", "stentering"]),
    ("dry", &["drying"]),
    ("steam", &["steaming", "blow", "blowing", "decatise", "decatising", "decatize", "decatizing"]),
    ("press", &["pressing", "calender", "calendering"]),
];

/// The name without the number of one that is done twice: `mill 2`.
pub(super) fn bare(name: &str) -> String {
    let name = name.trim().to_lowercase().replace(['-', '_'], " ");
    name.trim_end_matches(|c: char| c.is_ascii_digit() || c == ' ').to_owned()
}

/// The process that a word of the trade stands for.
pub(super) fn known(name: &str) -> Option<&'static str> {
    let name = bare(name);
    let named =
        |(main, others): &(&'static str, &[&str])| *main == name || others.contains(&name.as_str());
    KNOWN.iter().find(|k| named(k)).map(|k| k.0)
}

/// Every name that is known.
pub(super) fn words() -> impl Iterator<Item = &'static str> {
    KNOWN.iter().flat_map(|k| std::iter::once(k.0).chain(k.1.iter().copied()))
}
