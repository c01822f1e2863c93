//! A stream of requests.

use std::io::{BufRead, BufReader, Write};
use std::process::Stdio;

use pourwright::document::LoadedBook;
use pourwright::request::answer_text;

use crate::{book, command, file, ran, read, run};

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
#[test]
fn answers_come_as_they_are_asked() {
    let mut child =
        command(&["lines"]).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().unwrap();
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
