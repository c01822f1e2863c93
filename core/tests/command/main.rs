//! The command line, run as a process.

mod answer;
mod check;
mod lines;
mod plan;
mod shell;

use std::io::Write;
use std::path::PathBuf;
use std::process::{Command, Stdio};

/// What a run gave.
#[derive(Debug)]
struct Ran {
    code: Option<i32>,
    out: String,
    complaint: String,
}

impl Ran {
    /// What a run that went well printed.
    #[track_caller]
    fn fine(self) -> String {
        assert_eq!((self.code, self.complaint.as_str()), (Some(0), ""), "{}", self.out);
        self.out
    }
}

fn command(arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_pourwright"));
    command.args(arguments).env_remove("NO_COLOR").env_remove("CLICOLOR_FORCE");
    command
}

/// Runs the command with `input` on standard input.
fn run(arguments: &[&str], input: &str) -> Ran {
    ran(command(arguments), input.as_bytes())
}

fn ran(mut command: Command, input: &[u8]) -> Ran {
    let mut child = command
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the command is built");
    let mut stdin = child.stdin.take().expect("a pipe");
    let input = input.to_vec();
    // A command that reads nothing closes the pipe.
    let writer = std::thread::spawn(move || drop(stdin.write_all(&input)));
    let output = child.wait_with_output().expect("it ends");
    writer.join().expect("no panic");
    let text = |bytes| String::from_utf8(bytes).expect("it prints UTF-8");
    Ran { code: output.status.code(), out: text(output.stdout), complaint: text(output.stderr) }
}

/// A file of the crate.
fn file(path: &str) -> String {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(path).display().to_string()
}

fn book() -> String {
    file("examples/demo/book.json")
}

fn orders() -> String {
    file("examples/demo/orders.json")
}

fn read(path: &str) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|error| panic!("{path}: {error}"))
}

/// A file of this test with this text.
fn temporary(name: &str, text: &str) -> String {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name).display().to_string();
    std::fs::write(&path, text).unwrap_or_else(|error| panic!("{path}: {error}"));
    path
}
