//! Reading a picture back.
#![allow(dead_code)]

/// What is between the tags of a group or of the picture within the picture.
pub(crate) fn within<'s>(svg: &'s str, class: &str) -> &'s str {
    let from = svg.find(&format!(" class=\"{class}\"")).unwrap_or_else(|| panic!("no {class}"));
    let tag = if svg[..from].ends_with("<svg") { "</svg>" } else { "</g>" };
    &svg[from..from + svg[from..].find(tag).unwrap()]
}

/// The value of an attribute, of the first element that has it.
pub(crate) fn attribute<'s>(element: &'s str, name: &str) -> &'s str {
    let start = format!(" {name}=\"");
    let from = element.find(&start).unwrap_or_else(|| panic!("no {name}")) + start.len();
    &element[from..from + element[from..].find('"').unwrap()]
}

pub(crate) fn number(element: &str, name: &str) -> f64 {
    attribute(element, name).parse().unwrap()
}

/// The elements of a name and class, each from its first attribute on.
pub(crate) fn elements<'s>(svg: &'s str, start: &str) -> Vec<&'s str> {
    svg.split(start).skip(1).map(|part| &part[..part.find("/>").unwrap() + 2]).collect()
}

pub(crate) fn texts(svg: &str) -> Vec<&str> {
    svg.split("<text").skip(1).map(|t| &t[t.find('>').unwrap() + 1..t.find('<').unwrap()]).collect()
}

/// The numbers in a path, without its letters.
pub(crate) fn numbers(path: &str) -> Vec<f64> {
    let signs = |c: char| c.is_ascii_alphabetic() || c == ' ';
    path.split(signs).filter(|n| !n.is_empty()).map(|n| n.parse().unwrap()).collect()
}

/// The filled squares of a field on squared paper: the square across and up of each, counted on its
/// lines, from 0.
pub(crate) fn squares(svg: &str, field: &str) -> Vec<(usize, usize)> {
    let field = within(svg, field);
    let frame = elements(field, "<rect class=\"frame\"")[0];
    let (left, bottom) = (number(frame, "x"), number(frame, "y") + number(frame, "height"));
    let filled = attribute(&field[field.find("class=\"filled\"").unwrap()..], "d");
    let side = side(field);
    filled
        .split('M')
        .skip(1)
        .map(|square| {
            let at = numbers(square);
            let (x, y) = (at[0] + 0.5 * at[2], at[1] + 0.5 * at[3]);
            (((x - left) / side).floor() as usize, ((bottom - y) / side).floor() as usize)
        })
        .collect()
}

/// The distance of two lines of squared paper.
pub(crate) fn side(field: &str) -> f64 {
    let (vertical, _) = ruled(field, "light");
    if let [first, second, ..] = vertical[..] {
        return second - first;
    }
    let (_, horizontal) = ruled(field, "light");
    (horizontal[0] - horizontal[1]).abs()
}

/// Where lines of a class are: upright ones and level ones.
pub(crate) fn ruled(field: &str, class: &str) -> (Vec<f64>, Vec<f64>) {
    let d = attribute(&field[field.find(&format!("class=\"{class}\"")).unwrap()..], "d");
    let (mut upright, mut level) = (Vec::new(), Vec::new());
    for line in d.split('M').skip(1) {
        let at = numbers(line);
        if line.contains('V') { upright.push(at[0]) } else { level.push(at[1]) }
    }
    (upright, level)
}
