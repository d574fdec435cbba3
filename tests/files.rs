//! Files appear whole or not at all, whoever else writes or reads them.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};

use hankwise::files::{FileKind, LARGEST, Output, read_text};

/// A folder of the test's own, empty.
fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).unwrap();
    folder
}

fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<String> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

fn refusal(path: &Path, kind: FileKind) -> String {
    let before = fs::read(path).ok();
    let said = Output::from(path).write(kind, b"<svg/>").unwrap_err().to_string();
    assert_eq!(fs::read(path).ok(), before, "{}", path.display());
    assert_eq!(Output::from(path).check(kind).unwrap_err().to_string(), said);
    said
}

#[test]
fn four_writers_and_no_broken_read() {
    let folder = folder("writers");
    let path = folder.join("one.svg");
    // Each text is of one letter and of a length of its own, so that a mixture shows.
    let text = |k: usize| {
        let letter = char::from(b'a' + k as u8).to_string();
        format!("<svg>{}</svg>", letter.repeat(40_000 * (k + 1)))
    };
    let all: Vec<String> = (0..4).map(text).collect();
    Output::from(&path).write(FileKind::Svg, all[0].as_bytes()).unwrap();
    let (done, reads) = (AtomicBool::new(false), AtomicUsize::new(0));
    std::thread::scope(|scope| {
        let writers: Vec<_> = all
            .iter()
            .map(|text| {
                scope.spawn(|| {
                    for _ in 0..25 {
                        Output::from(&path).write(FileKind::Svg, text.as_bytes()).unwrap();
                    }
                })
            })
            .collect();
        for _ in 0..2 {
            scope.spawn(|| {
                while !done.load(Ordering::Relaxed) || reads.load(Ordering::Relaxed) < 1000 {
                    let read = fs::read_to_string(&path).unwrap();
                    assert!(all.contains(&read), "a broken read of {} bytes", read.len());
                    reads.fetch_add(1, Ordering::Relaxed);
                }
            });
        }
        for writer in writers {
            writer.join().unwrap();
        }
        done.store(true, Ordering::Relaxed);
    });
    assert_eq!(names(&folder), ["one.svg"]);
}

#[test]
fn only_its_like_is_replaced() {
    let folder = folder("likes");
    let lot = folder.join("lot.toml");
    fs::write(&lot, "[lot]").unwrap();
    assert!(refusal(&lot, FileKind::Html).ends_with("must end in .html"));
    let first: [(FileKind, &[u8]); 5] = [
        (FileKind::Xlsx, b"PK\x03\x04..."),
        (FileKind::Html, b"<!doctype html>\n<html>"),
        (FileKind::Svg, b"<?xml version=\"1.0\"?>\n<!DOCTYPE svg>\n<svg>"),
        (FileKind::Png, b"\x89PNG\r\n\x1a\n..."),
        (FileKind::Pdf, b"%PDF-1.4"),
    ];
    for (kind, bytes) in first {
        let path = folder.join(format!("a.{}", kind.ending()));
        for (there, old) in first {
            fs::write(&path, old).unwrap();
            if there == kind {
                Output::from(&path).write(kind, bytes).unwrap();
            } else {
                assert!(refusal(&path, kind).contains("choose another name"));
                Output::over(&path).write(kind, bytes).unwrap();
            }
            assert_eq!(fs::read(&path).unwrap(), bytes);
        }
        fs::write(&path, "my own notes").unwrap();
        assert!(refusal(&path, kind).contains(&format!("what is there is not {kind}")));
        fs::write(&path, "").unwrap();
        Output::from(&path).write(kind, bytes).unwrap();
        let loud = folder.join(format!("A.{}", kind.ending().to_uppercase()));
        Output::from(&loud).write(kind, bytes).unwrap();
        assert_eq!(fs::read(&loud).unwrap(), bytes);
    }
}

#[test]
fn what_cannot_be_written_leaves_nothing() {
    let folder = folder("nothing");
    fs::create_dir(folder.join("taken.svg")).unwrap();
    assert!(refusal(&folder.join("taken.svg"), FileKind::Svg).ends_with("it is a folder"));
    let gone = refusal(&folder.join("none/a.svg"), FileKind::Svg);
    assert!(gone.ends_with("its folder is not there"), "{gone}");
    assert!(refusal(&folder.join("a\0b.svg"), FileKind::Svg).ends_with("has no NUL in it"));
    let old = folder.join("old.svg");
    fs::write(&old, "<svg>old</svg>").unwrap();
    let mut mode = fs::metadata(&old).unwrap().permissions();
    mode.set_readonly(true);
    fs::set_permissions(&old, mode).unwrap();
    assert!(refusal(&old, FileKind::Svg).ends_with("it is read-only"));
    assert!(Output::over(&old).write(FileKind::Svg, b"<svg/>").is_err());
    assert_eq!(names(&folder), ["old.svg", "taken.svg"]);
}

#[cfg(unix)]
#[test]
fn modes_stay_and_links_are_followed() {
    use std::os::unix::fs::{PermissionsExt, symlink};

    let folder = folder("links");
    let path = folder.join("own.svg");
    fs::write(&path, "<svg>old</svg>").unwrap();
    for mode in [0o600, 0o640, 0o664] {
        fs::set_permissions(&path, fs::Permissions::from_mode(mode)).unwrap();
        Output::from(&path).write(FileKind::Svg, b"<svg/>").unwrap();
        assert_eq!(fs::metadata(&path).unwrap().permissions().mode() & 0o777, mode);
    }
    let link = folder.join("link.svg");
    symlink("own.svg", &link).unwrap();
    Output::from(&link).write(FileKind::Svg, b"<svg>through</svg>").unwrap();
    assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
    assert_eq!(fs::read(&path).unwrap(), b"<svg>through</svg>");
    // Behind a link may be anything.
    fs::write(folder.join("lot.toml"), "[lot]").unwrap();
    let sly = folder.join("sly.svg");
    symlink("lot.toml", &sly).unwrap();
    assert!(refusal(&sly, FileKind::Svg).contains("not an SVG picture"));
    let loose = folder.join("loose.svg");
    symlink("nowhere.svg", &loose).unwrap();
    assert!(refusal(&loose, FileKind::Svg).ends_with("a link to a file that is not there"));
    // A link under the name that was once used for half a file is nobody's business.
    let trap = folder.join("own.svg.part");
    symlink("lot.toml", &trap).unwrap();
    Output::from(&path).write(FileKind::Svg, b"<svg/>").unwrap();
    assert_eq!(fs::read(folder.join("lot.toml")).unwrap(), b"[lot]");
}

#[test]
fn large_files_are_refused_unread() {
    let path = folder("large").join("large.toml");
    let file = fs::File::create(&path).unwrap();
    // A file of holes: it takes no room, and to read it would take some time.
    file.set_len(40_000_000_000).unwrap();
    let said = read_text(&path).unwrap_err().to_string();
    assert!(said.contains("more than 10 MB"), "{said}");
    file.set_len(LARGEST).unwrap();
    assert_eq!(read_text(&path).unwrap().len() as u64, LARGEST);
    file.set_len(LARGEST + 1).unwrap();
    assert!(read_text(&path).is_err());
    #[cfg(unix)]
    assert!(read_text(Path::new("/dev/zero")).unwrap_err().to_string().contains("10 MB"));
}

#[test]
#[cfg(unix)]
fn a_pipe_is_refused_and_not_waited_for() {
    let path = folder("pipe").join("lot.toml");
    let _ = fs::remove_file(&path);
    assert!(std::process::Command::new("mkfifo").arg(&path).status().unwrap().success());
    let said = read_text(&path).unwrap_err().to_string();
    assert!(said.contains("cannot be read: it is a pipe; write it to a file first"), "{said}");
}
