//! Books checked.

use pourwright::document::LoadedBook;
use serde_json::Value;

use crate::{book, command, file, orders, ran, read, run, temporary};

#[test]
fn a_book_without_faults_says_so() {
    let checked = run(&["check", &book(), &orders()], "").fine();
    assert_eq!(checked, format!("{}: no faults.\n{}: no faults.\n", book(), orders()));
    assert_eq!(run(&["check", "--json", &book()], "").fine(), "[]\n");
}

/// All faults of a book that is broken in many ways, each at a place of the text that holds what it is about.
#[test]
fn every_fault_has_its_place() {
    let folder = file("../tests/documents/broken");
    let mut seen = 0;
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path().display().to_string();
        if path.ends_with(".faults.json") {
            continue;
        }
        let text = read(&path);
        let Err(faults) = LoadedBook::from_text(&text) else { continue };
        let ran = run(&["check", &path, "--json"], "");
        assert_eq!((ran.code, ran.complaint.as_str()), (Some(1), ""), "{path}");
        let findings: Vec<Value> = serde_json::from_str(&ran.out).unwrap();
        let lines: Vec<&str> = text.lines().collect();
        assert_eq!(findings.len(), faults.count(), "{path}");
        for (finding, fault) in findings.iter().zip(&faults) {
            assert_eq!(
                (&finding["path"], &finding["code"]),
                (&Value::from(&*fault.path), &Value::from(&*fault.code))
            );
            let at = |name: &str| usize::try_from(finding[name].as_u64().unwrap()).unwrap() - 1;
            let (line, column) = (at("line"), at("column"));
            let here: String = lines[line].chars().skip(column).collect();
            if fault.code == "not-json" {
                continue;
            }
            // The last name of the path is here or just before, or the object that lacks it opens here.
            let name = fault.path.rsplit('/').next().unwrap().replace("~1", "/").replace("~0", "~");
            let before: String = lines[line].chars().take(column).collect();
            let holds = here.starts_with(&format!("\"{name}\""))
                || before.trim_end().ends_with(':') && before.contains(&format!("\"{name}\""))
                || name.parse::<usize>().is_ok()
                || here.starts_with(['{', '[']);
            assert!(holds, "{path}: {fault}: {}", lines[line]);
            seen += 1;
        }
    }
    assert!(seen > 40, "{seen}");
}

#[test]
fn faults_of_book_and_orders_come_together() {
    let broken = temporary("book.json", &read(&book()).replace("\"32 drops\"", "\"32 drips\""));
    let wrong =
        temporary("orders.json", &read(&orders()).replace("\"pieces\": 24", "\"peces\": 24"));
    let ran = run(&["check", &broken, &wrong, &orders()], "");
    assert_eq!((ran.code, ran.complaint.as_str()), (Some(1), ""));
    let places: Vec<&str> = ran
        .out
        .lines()
        .filter_map(|line| line.split_once(": error: "))
        .map(|line| line.0)
        .collect();
    assert_eq!(places, [format!("{broken}:101:50"), format!("{wrong}:6:48")]);
    assert!(ran.out.ends_with(&format!("2 faults.\n{}: no faults.\n", orders())), "{}", ran.out);
}

#[test]
fn a_text_that_breaks_off_is_shown_where_it_does() {
    let ran = run(&["check", "-"], "{\n  \"format\": \"pourwright/1.0\",\n}");
    assert!(ran.out.starts_with("standard input:3:1: error: The text is not JSON"), "{}", ran.out);
    assert!(ran.out.contains("     3 | }\n       | ^\n"), "{}", ran.out);
}

/// A long line is shown around its fault.
#[test]
fn a_book_on_one_line_is_shown_in_part() {
    let value: Value = serde_json::from_str(&read(&book())).unwrap();
    let one_line = value.to_string().replace("32 drops", "32 drips");
    let ran = run(&["check", "-"], &one_line);
    let shown = ran.out.lines().nth(1).unwrap();
    assert!(shown.contains("32 drips") && shown.chars().count() < 90, "{shown}");
    let marks = ran.out.lines().nth(2).unwrap().find('^').unwrap();
    assert_eq!(shown.get(marks..marks + 10), Some("\"32 drips\""));
}

#[test]
fn colors_are_for_terminals() {
    let check = |variable: Option<&str>| {
        let mut command = command(&["check", "-"]);
        command.envs(variable.map(|name| (name, "1")));
        ran(command, b"{").out
    };
    assert!(check(Some("CLICOLOR_FORCE")).contains("\u{1b}["));
    assert!(!check(Some("NO_COLOR")).contains('\u{1b}'));
    assert!(!check(None).contains('\u{1b}'));
}
