//! The copy of the core that the mutants are compiled into.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use serde_json::Value;

use crate::emit::emit;
use crate::site::{self, Site, Sites};

/// The integration tests that judge what the core's own tests let pass.
pub const STAGES: &[&str] = &[
    "published",
    "laws",
    "pots",
    "plans",
    "documents",
    "record",
    "trial",
    "learn",
    "go_on",
    "agreement",
    "committed",
    "pins",
];

/// The core's files with their sites, in the order of the modules.
pub struct Core {
    pub files: BTreeMap<String, (String, Sites)>,
}

/// Reads the core's modules from `lib.rs` on; test modules and the command line are not among them.
pub fn read(repository: &Path) -> Core {
    let source = repository.join("core/src");
    let mut files = BTreeMap::new();
    let mut queue = vec!["lib.rs".to_owned()];
    while let Some(name) = queue.pop() {
        let path = source.join(&name);
        let text =
            fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        let sites = site::find(&name, &text);
        let folder = match Path::new(&name).file_name().and_then(|last| last.to_str()) {
            Some("lib.rs" | "mod.rs") => {
                Path::new(&name).parent().map(Path::to_path_buf).unwrap_or_default()
            }
            _ => Path::new(&name).with_extension(""),
        };
        for module in &sites.modules {
            let beside = folder.join(format!("{module}.rs"));
            let inside = folder.join(module).join("mod.rs");
            let found = if source.join(&beside).exists() { beside } else { inside };
            queue.push(found.to_string_lossy().into_owned());
        }
        files.insert(name, (text, sites));
    }
    Core { files }
}

impl Core {
    /// The sites of all files.
    pub fn sites(&self) -> impl Iterator<Item = (&String, &Site)> {
        self.files
            .iter()
            .flat_map(|(name, (_, sites))| sites.sites.iter().map(move |site| (name, site)))
    }

    /// Takes the fallback of each site whose first mutants are among `dropped`, forgets sites without any, and numbers
    /// the mutants of which `wanted` is true. The names by number, from 1.
    pub fn number(
        &mut self,
        dropped: &BTreeSet<String>,
        wanted: impl Fn(&str) -> bool,
    ) -> Vec<String> {
        let mut names = vec![String::new()];
        for (_, sites) in self.files.values_mut() {
            for site in &mut sites.sites {
                if site.mutants.iter().any(|mutant| dropped.contains(&mutant.name)) {
                    match site.fallback.take() {
                        Some((wrap, mutants)) => (site.wrap, site.mutants) = (wrap, mutants),
                        None => site.mutants.clear(),
                    }
                }
                site.mutants.retain(|mutant| !dropped.contains(&mutant.name));
                for mutant in &mut site.mutants {
                    mutant.id = 0;
                    if wanted(&mutant.name) {
                        mutant.id = u32::try_from(names.len()).unwrap_or(0);
                        names.push(mutant.name.clone());
                    }
                }
            }
        }
        names
    }
}

/// The scratch folder.
pub struct Tree {
    pub root: PathBuf,
    pub build: PathBuf,
}

impl Tree {
    /// Copies the workspace: the core and its tests as files, the rest as links.
    pub fn new(repository: &Path) -> Self {
        let scratch = repository.join("target/mutants");
        let root = scratch.join("tree");
        fs::create_dir_all(&root).expect("a scratch folder");
        for name in ["core", "tests"] {
            copy(
                &repository.join(name),
                &root.join(name),
                &["core/src", "tests/mutants", "tests/fuzz"]
                    .map(|skipped| repository.join(skipped)),
            );
        }
        for name in
            ["ffi", "wasm", "bindings", "benches", "README.md", "DEVELOPERS.md", "CHANGELOG.md"]
        {
            let link = root.join(name);
            if !link.exists() {
                std::os::unix::fs::symlink(repository.join(name), link).expect("a link");
            }
        }
        let manifest =
            fs::read_to_string(repository.join("Cargo.toml")).expect("the workspace's manifest");
        let manifest: Vec<_> = manifest
            .lines()
            .filter(|line| !line.starts_with("exclude = "))
            .map(|line| {
                if line.starts_with("members = ") {
                    "members = [\"core\", \"tests\"]"
                } else {
                    line
                }
            })
            .collect();
        let profile = "\n[profile.mutants]\ninherits = \"dev\"\nopt-level = 1\ndebug = false\nincremental = false\n";
        // The tree is built offline, with the versions of the lock file.
        let fetched = Command::new("cargo")
            .current_dir(repository)
            .args(["fetch", "--quiet", "--locked"])
            .status()
            .expect("cargo runs");
        assert!(fetched.success(), "cargo fetch --locked failed");
        write_new(&root.join("Cargo.toml"), &(manifest.join("\n") + "\n" + profile));
        write_new(
            &root.join("Cargo.lock"),
            &fs::read_to_string(repository.join("Cargo.lock")).expect("a lock file"),
        );
        Self { root, build: scratch.join("build") }
    }

    /// Writes the sources with the numbered mutants; where each site is, by file.
    pub fn write(
        &self,
        repository: &Path,
        core: &Core,
        count: usize,
    ) -> BTreeMap<String, Vec<Range<usize>>> {
        let source = repository.join("core/src");
        let mut places = BTreeMap::new();
        for path in files(&source) {
            let name = path.strip_prefix(&source).expect("inside").to_string_lossy().into_owned();
            let target = self.root.join("core/src").join(&name);
            fs::create_dir_all(target.parent().expect("a folder")).expect("a folder");
            let bytes = fs::read(&path).expect("a source file");
            let Some((text, sites)) = core.files.get(&name) else {
                write_new(&target, &String::from_utf8_lossy(&bytes));
                continue;
            };
            let (mut text, found) = emit(text, &sites.sites);
            if name == "lib.rs" {
                text.push_str(
                    &include_str!("mutant.rs.in").replace("COUNT", &(count + 1).to_string()),
                );
            }
            write_new(&target, &text);
            places.insert(name, found);
        }
        places
    }

    /// Runs cargo in the tree; the compiler's messages.
    pub fn cargo(&self, arguments: &[&str]) -> Vec<Value> {
        let output = Command::new("cargo")
            .current_dir(&self.root)
            .env("CARGO_TARGET_DIR", &self.build)
            .env("RUSTFLAGS", "--cap-lints=allow")
            .args(arguments)
            .args(["--profile", "mutants", "--all-features", "--offline", "--message-format=json"])
            .stderr(Stdio::inherit())
            .output()
            .expect("cargo runs");
        String::from_utf8_lossy(&output.stdout)
            .lines()
            .filter_map(|line| serde_json::from_str(line).ok())
            .collect()
    }
}

/// The names of the mutants that the compiler's errors are about.
pub fn blamed(
    core: &Core,
    places: &BTreeMap<String, Vec<Range<usize>>>,
    messages: &[Value],
) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    for message in messages {
        let message = &message["message"];
        if message["level"] != "error" {
            continue;
        }
        let spans = message["spans"].as_array().cloned().unwrap_or_default();
        let mut found = false;
        let (primary, others): (Vec<_>, Vec<_>) =
            spans.iter().partition(|span| span["is_primary"] == true);
        for span in primary.into_iter().chain(others) {
            if found {
                break;
            }
            let Some(file) =
                span["file_name"].as_str().and_then(|file| file.strip_prefix("core/src/"))
            else {
                continue;
            };
            let (Some(all), Some((_, sites))) = (places.get(file), core.files.get(file)) else {
                continue;
            };
            let at = |key: &str| usize::try_from(span[key].as_u64().unwrap_or(0)).unwrap_or(0);
            let (start, end) = (at("byte_start"), at("byte_end"));
            let with = all.iter().zip(&sites.sites).filter(|(place, _)| !place.is_empty());
            // The innermost around it; else all within it.
            let around = with
                .clone()
                .filter(|(place, _)| place.start <= start && end <= place.end)
                .min_by_key(|(place, _)| place.len());
            let blamed: Vec<_> = match around {
                Some(one) => vec![one],
                None => {
                    with.filter(|(place, _)| start <= place.start && place.end <= end).collect()
                }
            };
            for (_, site) in blamed {
                found = true;
                names.extend(
                    site.mutants
                        .iter()
                        .filter(|mutant| mutant.id > 0)
                        .map(|mutant| mutant.name.clone()),
                );
            }
        }
        if !found && !spans.is_empty() {
            eprintln!("{}", message["rendered"].as_str().unwrap_or_default());
        }
    }
    names
}

/// All files below a folder, sorted.
pub fn files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).expect("a folder").flatten() {
        let path = entry.path();
        if path.is_dir() { found.extend(files(&path)) } else { found.push(path) }
    }
    found.sort();
    found
}

/// Writes a file if its text is another, so that cargo does not build again what is the same.
pub fn write_new(path: &Path, text: &str) {
    if fs::read_to_string(path).ok().as_deref() != Some(text) {
        fs::write(path, text).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    }
}

/// Copies a folder without those `skipped`; files that are the same stay, and those that are gone go.
fn copy(from: &Path, to: &Path, skipped: &[PathBuf]) {
    fs::create_dir_all(to).expect("a folder");
    for entry in fs::read_dir(from).expect("a folder").flatten() {
        let (path, target) = (entry.path(), to.join(entry.file_name()));
        if skipped.contains(&path) {
            continue;
        }
        if path.is_dir() {
            copy(&path, &target, skipped);
        } else {
            let bytes = fs::read(&path).expect("a file");
            if fs::read(&target).ok().as_ref() != Some(&bytes) {
                fs::write(&target, bytes).expect("a file");
            }
        }
    }
    for entry in fs::read_dir(to).expect("a folder").flatten() {
        let path = entry.path();
        let source = from.join(entry.file_name());
        if !source.exists() && path.is_file() {
            fs::remove_file(path).expect("a file");
        }
    }
}
