//! A stream of requests.

use std::io::{BufRead, BufReader, Write};
use std::process::Stdio;

use pourwright::document::LoadedBook;
use pourwright::request::answer_text;

use rstest::rstest;

use crate::{book, command, file, ran, read, run, temporary};

/// The vectors of every door, texts that are not JSON included.
#[test]
fn every_line_is_answered_in_its_place() {
    let requests = read(&file("../tests/vectors/requests.jsonl"));
    let expected: String = requests.lines().map(|line| answer_text(line) + "\n").collect();
    let ran = run(&["lines"], &requests);
    assert!(ran.out == expected, "an answer differs");
    // Some are refused.
    assert_eq!((ran.code, ran.complaint.as_str()), (Some(1), ""));
    let answered: String = requests
        .lines()
        .zip(expected.lines())
        .filter(|(_, answer)| answer.starts_with("{\"result\""))
        .map(|(line, _)| line.to_owned() + "\n")
        .collect();
    run(&["lines", "-"], &answered).fine();
    let threads = self::run(&["lines", "--jobs", "3"], &requests);
    assert!(threads.out == expected, "the order is lost");
    assert_eq!((threads.code, threads.complaint.as_str()), (Some(1), ""));
}

/// Days take long and conversions do not; each is answered in its place.
#[test]
fn threads_keep_the_order_of_unlike_lines() {
    let orders = serde_json::from_str::<serde_json::Value>(&read(&crate::orders())).unwrap();
    let day = serde_json::json!({ "calculate": "plan", "orders": orders }).to_string();
    let mut requests = String::new();
    for count in 0..300 {
        if count % 50 == 0 {
            requests += &format!("{day}\n");
        }
        requests +=
            &format!("{{\"calculate\":\"convert\",\"amount\":\"{count} cup\",\"to\":\"cup\"}}\n");
    }
    requests += "not JSON\n";
    let one = run(&["lines", "--book", &book()], &requests);
    assert_eq!((one.code, one.out.lines().count()), (Some(1), 307));
    for jobs in ["2", "7"] {
        let several = run(&["lines", "--book", &book(), "--jobs", jobs], &requests);
        assert!(several.out == one.out && several.code == Some(1), "{jobs}");
    }
    for jobs in ["0", "1025", "many"] {
        let refused = run(&["lines", "--jobs", jobs], "");
        assert_eq!((refused.code, refused.out.as_str()), (Some(2), ""));
        assert!(refused.complaint.contains("--jobs"), "{}", refused.complaint);
    }
}

#[test]
fn an_open_book_answers_short_requests() {
    let request = r#"{"calculate":"formula","formulas":["dusk","plain"]}"#;
    let expected = LoadedBook::from_text(&read(&book())).unwrap().answer_text(request) + "\n";
    assert_eq!(run(&["lines", "--book", &book()], request).fine(), expected);
}

#[test]
fn a_line_that_is_not_utf8_is_refused_alone() {
    let input = b"\xff\n{\"calculate\":\"convert\",\"amount\":\"1 cup\",\"to\":\"mL\"}\n\n";
    let ran = ran(command(&["lines"]), input);
    let answers: Vec<&str> = ran.out.lines().collect();
    assert_eq!((ran.code, answers.len()), (Some(1), 3));
    assert!(answers[0].contains("\"not-utf8\""), "{}", answers[0]);
    assert!(answers[1].starts_with("{\"result\""), "{}", answers[1]);
    assert!(answers[2].contains("\"not-json\""), "{}", answers[2]);
}

/// Whoever asks the next line by the last answer gets it before the input ends.
#[rstest]
#[case(&["lines"])]
#[case(&["lines", "--jobs", "2"])]
fn answers_come_as_they_are_asked(#[case] arguments: &[&str]) {
    let mut child =
        command(arguments).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().unwrap();
    let mut ask = child.stdin.take().unwrap();
    let mut answers = BufReader::new(child.stdout.take().unwrap()).lines();
    for amount in ["1 cup", "2 cup", "3 cup"] {
        let request = format!(r#"{{"calculate":"convert","amount":"{amount}","to":"cup"}}"#);
        writeln!(ask, "{request}").unwrap();
        let answer = answers.next().unwrap().unwrap();
        assert!(answer.contains(&format!("\"amount\":\"{amount}\"")), "{answer}");
    }
    drop(ask);
    assert!(child.wait().unwrap().success());
}

/// A line that no memory could hold is passed over as it comes, and those behind it are answered.
#[rstest]
#[case("1")]
#[case("2")]
fn a_line_that_is_too_long_is_refused_alone(#[case] jobs: &str) {
    let long = "x".repeat(17 << 20);
    let cup = r#"{"calculate":"convert","amount":"1 cup","to":"mL"}"#;
    let ran = run(&["lines", "--jobs", jobs], &format!("{cup}\n{long}\n{cup}"));
    let answers: Vec<&str> = ran.out.lines().collect();
    assert_eq!((ran.code, answers.len()), (Some(1), 3));
    assert!(answers[1].contains("\"document-too-long\""), "{}", answers[1]);
    assert!(answers[1].contains("17825792 bytes"), "{}", answers[1]);
    assert_eq!(answers[0], answers[2]);
}

/// Whoever reads only the first answers closes the pipe.
#[rstest]
#[case("1")]
#[case("2")]
fn a_closed_pipe_is_no_error(#[case] jobs: &str) {
    let mut child = command(&["lines", "--jobs", jobs])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    let mut ask = child.stdin.take().unwrap();
    let mut answers = BufReader::new(child.stdout.take().unwrap());
    let mut first = String::new();
    let request = "{\"calculate\":\"convert\",\"amount\":\"1 cup\",\"to\":\"mL\"}\n";
    ask.write_all(request.as_bytes()).unwrap();
    answers.read_line(&mut first).unwrap();
    assert!(first.starts_with("{\"result\""), "{first}");
    drop(answers);
    // The input is refused sooner or later, and the process ends without having read all of it.
    while ask.write_all(request.as_bytes()).is_ok() {}
    let output = child.wait_with_output().unwrap();
    assert_eq!((output.status.code(), output.stderr.as_slice()), (Some(0), &b""[..]));
}

#[test]
fn a_file_that_cannot_be_read_is_refused() {
    let ran = run(&["lines", "no-such-file", "--jobs", "2"], "");
    assert_eq!((ran.code, ran.out.as_str()), (Some(2), ""));
    assert!(ran.complaint.contains("no-such-file: No such file"), "{}", ran.complaint);
    let folder = run(&["lines", env!("CARGO_MANIFEST_DIR"), "--jobs", "2"], "");
    assert_eq!((folder.code, folder.out.as_str()), (Some(2), ""));
    assert!(folder.complaint.contains("directory"), "{}", folder.complaint);
}

/// On a terminal, the progress; in a file or a pipe, nothing, as the other tests see.
#[cfg(target_os = "linux")]
#[test]
fn a_terminal_shows_the_progress() {
    let cup = "{\"calculate\":\"convert\",\"amount\":\"1 cup\",\"to\":\"mL\"}\n";
    let requests = temporary("progress.jsonl", &(cup.repeat(40) + "[\n"));
    let answers = temporary("progress-answers.jsonl", "");
    let on_terminal = |options: &str| {
        let line =
            format!("{} lines {options} {requests} > {answers}", env!("CARGO_BIN_EXE_pourwright"));
        let script =
            std::process::Command::new("script").args(["-qec", &line, "/dev/null"]).output();
        let output = script.expect("script, which util-linux brings");
        assert_eq!((output.status.code(), read(&answers).lines().count()), (Some(1), 41));
        String::from_utf8(output.stdout).unwrap()
    };
    let shown = on_terminal("");
    let (before, rate) =
        shown.split_once("\r41 answered, 1 with faults, ").unwrap_or_else(|| panic!("{shown:?}"));
    assert!(
        !before.contains('\n') && rate.contains(" a second, in ") && rate.ends_with("\n"),
        "{shown:?}"
    );
    assert_eq!(on_terminal("--quiet"), "");
}
