//! A day planned.

use std::process::Stdio;

use pourwright::document::LoadedBook;
use rstest::rstest;

use crate::{book, command, file, orders, ran, read, run, temporary};

#[test]
fn the_demo_day_is_that_of_its_files() {
    let plan = LoadedBook::from_text(&read(&book())).unwrap().plan_text(&read(&orders())).unwrap();
    let sheet = run(&["plan"], "").fine();
    assert_eq!(sheet, plan.sheet().to_string().trim_end().to_owned() + "\n");
    assert_eq!(run(&["plan", &book(), &orders()], "").fine(), sheet);
    let notes = run(&["plan", "--notes"], "").fine();
    assert_eq!(notes, plan.notes().to_string().trim_end().to_owned() + "\n");
    let json = run(&["plan", "--json"], "").fine();
    assert_eq!(json, serde_json::to_string_pretty(&plan).unwrap() + "\n");
}

#[test]
fn standard_input_is_a_file() {
    let sheet = run(&["plan"], "").fine();
    assert_eq!(run(&["plan", &book(), "-"], &read(&orders())).fine(), sheet);
    assert_eq!(run(&["plan", "-", &orders()], &read(&book())).fine(), sheet);
}

#[test]
fn faults_are_on_standard_error_with_their_place() {
    let wrong = read(&orders()).replace("\"reed paddle\"", "\"reed padle\"");
    let wrong = temporary("wrong-orders.json", &wrong);
    let ran = run(&["plan", &book(), &wrong], "");
    assert_eq!((ran.code, ran.out.as_str()), (Some(1), ""));
    let place = format!("{wrong}:8:33: error: ");
    assert!(ran.complaint.starts_with(&place), "{}", ran.complaint);
    assert!(ran.complaint.contains("| ") && ran.complaint.contains("^^^^^^^^^^^^"));
    assert!(ran.complaint.contains("help: Did you mean \"reed paddle\"?"), "{}", ran.complaint);
}

#[rstest]
#[case::no_orders(&["plan", "book.json"], "<ORDERS>")]
#[case::two_kinds(&["plan", "--notes", "--json"], "cannot be used with")]
#[case::no_file(&["plan", "nowhere.json", "-"], "nowhere.json: ")]
#[case::no_command(&["paln"], "'plan'")]
#[case::nothing(&[], "Usage: pourwright")]
fn a_command_line_that_does_not_fit_ends_with_2(#[case] arguments: &[&str], #[case] says: &str) {
    let ran = run(arguments, "");
    assert_eq!((ran.code, ran.out.as_str()), (Some(2), ""));
    assert!(ran.complaint.contains(says), "{}", ran.complaint);
}

#[test]
fn a_text_that_is_not_utf8_is_refused() {
    let ran = ran(command(&["plan", "-", &orders()]), b"{ \"shop\": \"\xff\" }");
    assert_eq!(ran.code, Some(2));
    assert!(ran.complaint.contains("standard input: The text is not valid UTF-8, from byte 11 on"));
}

/// Whoever reads only the first page closes the pipe.
#[rstest]
#[case::plan(&["plan", "--json"])]
#[case::lines(&["lines"])]
#[case::check(&["check", "examples/demo/book.json"])]
fn a_closed_pipe_is_no_fault(#[case] arguments: &[&str]) {
    let mut command = command(arguments);
    let requests = std::fs::File::open(file("../tests/vectors/requests.jsonl")).unwrap();
    command.current_dir(env!("CARGO_MANIFEST_DIR")).stdin(requests);
    command.stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().unwrap();
    drop(child.stdout.take());
    let output = child.wait_with_output().unwrap();
    assert_eq!(output.status.code(), Some(0), "{}", String::from_utf8_lossy(&output.stderr));
    assert!(output.stderr.is_empty(), "{}", String::from_utf8_lossy(&output.stderr));
}
