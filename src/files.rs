//! Reading and writing files: the one place that does either.
//!
//! A file appears whole or not at all, whoever else reads or writes it. One that is there already is
//! replaced only by its like, so that a slip in a name costs nobody a lot file.

use std::fmt;
use std::fs::{self, File, OpenOptions};
use std::hash::{BuildHasher, Hasher, RandomState};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

use crate::error::{Error, Result, unreadable};

/// The bytes of the largest file that is read: a lot file has some thousands.
pub const LARGEST: u64 = 10_000_000;

/// Refuses a text of so many bytes.
pub(crate) fn not_too_large(bytes: u64) -> Result<()> {
    if bytes <= LARGEST {
        return Ok(());
    }
    let most = LARGEST / 1_000_000;
    Err(Error::plan(format!("it has more than {most} MB, far more than any lot or readings need")))
}

/// Reads a text in UTF-8, unless it is too large.
pub fn read_text(path: &Path) -> Result<String> {
    let refuse = |why: String| Error::plan(format!("{}: {why}", path.display()));
    let read = |path: &Path| -> io::Result<(u64, Vec<u8>)> {
        let file = File::open(path)?;
        let said = file.metadata()?.len();
        let mut bytes = Vec::new();
        // Only a plain file says how much there is to come.
        if said <= LARGEST {
            file.take(LARGEST + 1).read_to_end(&mut bytes)?;
        }
        Ok((said.max(bytes.len() as u64), bytes))
    };
    if is_pipe(path) {
        return Err(refuse("cannot be read: it is a pipe; write it to a file first".to_owned()));
    }
    let (length, bytes) = read(path).map_err(|e| refuse(unreadable(&e)))?;
    not_too_large(length).map_err(|e| e.at(path.display()))?;
    let text = String::from_utf8(bytes);
    text.map_err(|_| refuse(unreadable(&io::ErrorKind::InvalidData.into())))
}

/// True for what waits for a writer, perhaps for ever, when it is opened.
#[cfg(unix)]
fn is_pipe(path: &Path) -> bool {
    use std::os::unix::fs::FileTypeExt;
    fs::metadata(path).is_ok_and(|there| there.file_type().is_fifo())
}

#[cfg(not(unix))]
fn is_pipe(_: &Path) -> bool {
    false
}

/// A kind of file that is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileKind {
    /// A workbook.
    Xlsx,
    /// A page to print.
    Html,
    /// A picture of lines.
    Svg,
    /// A picture of dots.
    Png,
    /// A picture to print.
    Pdf,
    /// A lot file or a mill file.
    Toml,
}

impl FileKind {
    /// Every kind.
    pub const ALL: [FileKind; 6] = [
        FileKind::Xlsx,
        FileKind::Html,
        FileKind::Svg,
        FileKind::Png,
        FileKind::Pdf,
        FileKind::Toml,
    ];

    /// How the names of such files end.
    pub const fn ending(self) -> &'static str {
        match self {
            FileKind::Xlsx => "xlsx",
            FileKind::Html => "html",
            FileKind::Svg => "svg",
            FileKind::Png => "png",
            FileKind::Pdf => "pdf",
            FileKind::Toml => "toml",
        }
    }
    /// The kind with an ending.
    pub fn named(ending: &str) -> Option<FileKind> {
        Self::ALL.into_iter().find(|kind| kind.ending().eq_ignore_ascii_case(ending))
    }
    /// The kind that the name of a file says.
    pub fn of(path: &Path) -> Option<FileKind> {
        Self::named(path.extension()?.to_str()?)
    }
    /// True for the first bytes of such a file.
    fn begins(self, bytes: &[u8]) -> bool {
        let text = String::from_utf8_lossy(bytes).to_lowercase();
        match self {
            FileKind::Xlsx => bytes.starts_with(b"PK\x03\x04"),
            FileKind::Html => text.trim_start().starts_with("<!doctype html"),
            FileKind::Svg => {
                text.starts_with("<svg") || (text.starts_with("<?xml") && text.contains("<svg"))
            }
            FileKind::Png => bytes.starts_with(b"\x89PNG\r\n\x1a\n"),
            FileKind::Pdf => bytes.starts_with(b"%PDF-"),
            // What somebody wrote by hand is never replaced by what can be written again.
            FileKind::Toml => false,
        }
    }
}

impl fmt::Display for FileKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            FileKind::Xlsx => "a workbook",
            FileKind::Html => "an HTML page",
            FileKind::Svg => "an SVG picture",
            FileKind::Png => "a PNG picture",
            FileKind::Pdf => "a PDF",
            FileKind::Toml => "a TOML file",
        })
    }
}

/// Where something is written. A path alone will do: a file there is then replaced if it is of the same
/// kind.
///
/// ```
/// use hankwise::files::Output;
///
/// let carefully: Output = "plan.xlsx".into();
/// let anyway = Output::over("plan.xlsx");
/// # let _ = (carefully, anyway);
/// ```
#[derive(Clone, Debug)]
pub struct Output {
    path: PathBuf,
    over: bool,
}

impl Output {
    /// A file that replaces whatever stands there.
    pub fn over(path: impl Into<PathBuf>) -> Output {
        Output { path: path.into(), over: true }
    }
    /// The path.
    pub fn path(&self) -> &Path {
        &self.path
    }
    /// Refuses what [`Output::write`] will refuse, before there is anything to write.
    pub fn check(&self, kind: FileKind) -> Result<()> {
        self.settle(kind).map(|_| ())
    }
    /// Writes a file of a kind, whole or not at all.
    ///
    /// The bytes go into a new file in the same folder, which then takes the place of the old one. The
    /// mode of an old file stays, a link is followed, and what is read-only is refused.
    pub fn write(&self, kind: FileKind, bytes: &[u8]) -> Result<()> {
        let (target, mode) = self.settle(kind)?;
        put(&target, mode, bytes).map_err(|e| self.refused(&unwritable(&e)))
    }

    fn refused(&self, why: &str) -> Error {
        Error::plan(format!("{} cannot be written: {why}", self.path.display()))
    }
    /// The file itself, behind any link, and the mode of the one that is there.
    fn settle(&self, kind: FileKind) -> Result<(PathBuf, Option<fs::Permissions>)> {
        if FileKind::of(&self.path) != Some(kind) {
            let ending = kind.ending();
            return Err(Error::notation(format!(
                "{}: the name of {kind} must end in .{ending}",
                self.path.display()
            )));
        }
        let there = match fs::symlink_metadata(&self.path) {
            Ok(there) => there,
            Err(e) if e.kind() == io::ErrorKind::NotFound && folder(&self.path).is_dir() => {
                return Ok((self.path.clone(), None));
            }
            Err(e) => return Err(self.refused(&unwritable(&e))),
        };
        let target = if there.is_symlink() {
            let behind = fs::canonicalize(&self.path);
            behind.map_err(|_| self.refused("it is a link to a file that is not there"))?
        } else {
            self.path.clone()
        };
        let refuse = |e: io::Error| self.refused(&unwritable(&e));
        let old = fs::metadata(&target).map_err(refuse)?;
        if !old.is_file() {
            let why = if old.is_dir() { "it is a folder" } else { "it is not a plain file" };
            return Err(self.refused(why));
        }
        if old.permissions().readonly() {
            return Err(self.refused("it is read-only"));
        }
        // Nothing is written here; whether it might be is the question.
        OpenOptions::new().append(true).open(&target).map_err(refuse)?;
        if !self.over && !is_like(&target, kind).map_err(refuse)? {
            let why = if kind == FileKind::Toml {
                "a file is there already".to_owned()
            } else {
                format!("what is there is not {kind}")
            };
            return Err(self.refused(&format!("{why}; choose another name, or write force=True")));
        }
        Ok((target, Some(old.permissions())))
    }
}

impl<P: AsRef<Path> + ?Sized> From<&P> for Output {
    fn from(path: &P) -> Output {
        Output { path: path.as_ref().to_owned(), over: false }
    }
}

/// True where a file is of a kind, or empty.
fn is_like(path: &Path, kind: FileKind) -> io::Result<bool> {
    let mut first = Vec::new();
    File::open(path)?.take(1000).read_to_end(&mut first)?;
    Ok(first.is_empty() || kind.begins(&first))
}

/// Why a file cannot be written, without the numbers of the system.
fn unwritable(error: &io::Error) -> String {
    match error.kind() {
        io::ErrorKind::NotFound => "its folder is not there".to_owned(),
        io::ErrorKind::NotADirectory => "its folder is a file".to_owned(),
        io::ErrorKind::PermissionDenied => "permission denied".to_owned(),
        io::ErrorKind::StorageFull => "the disk is full".to_owned(),
        io::ErrorKind::ReadOnlyFilesystem => "the disk is read-only".to_owned(),
        io::ErrorKind::InvalidInput => "a file name has no NUL in it".to_owned(),
        _ => error.to_string(),
    }
}

/// A file that is being written, removed again unless it took its place.
struct Beside {
    path: PathBuf,
    placed: bool,
}

impl Drop for Beside {
    fn drop(&mut self) {
        if !self.placed {
            let _ = fs::remove_file(&self.path);
        }
    }
}

/// The folder of a file.
fn folder(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

/// Bytes in the place of a file, at one stroke.
fn put(target: &Path, mode: Option<fs::Permissions>, bytes: &[u8]) -> io::Result<()> {
    let folder = folder(target);
    let (mut file, mut beside) = beside(folder)?;
    if let Some(mode) = mode {
        file.set_permissions(mode)?;
    }
    file.write_all(bytes)?;
    file.sync_all()?;
    drop(file);
    fs::rename(&beside.path, target)?;
    beside.placed = true;
    // The new name too outlasts a power cut, where a folder can be synced at all.
    let _ = File::open(folder).and_then(|folder| folder.sync_all());
    Ok(())
}

/// A new file in a folder, under a name that nobody else has.
fn beside(folder: &Path) -> io::Result<(File, Beside)> {
    loop {
        // A state of a hash is seeded at random.
        let name = format!(".hankwise-{:016x}.part", RandomState::new().build_hasher().finish());
        let path = folder.join(name);
        match OpenOptions::new().write(true).create_new(true).open(&path) {
            Ok(file) => return Ok((file, Beside { path, placed: false })),
            Err(e) if e.kind() == io::ErrorKind::AlreadyExists => {}
            Err(e) => return Err(e),
        }
    }
}
