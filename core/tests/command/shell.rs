//! Help, completions and the man page.

use rstest::rstest;

use crate::run;

const COMMANDS: [&str; 11] = [
    "plan", "trial", "correct", "record", "go-on", "troubles", "learn", "answer", "lines", "check",
    "example",
];

#[test]
fn every_command_is_in_the_help_and_the_man_page() {
    let (help, man) = (run(&["--help"], "").fine(), run(&["man"], "").fine());
    assert!(help.contains("Examples:") && help.contains("Exit codes: 0 done"), "{help}");
    assert!(man.starts_with(".ie") && man.contains("Exit codes: 0 done"), "{man}");
    for command in COMMANDS {
        assert!(help.contains(&format!("\n  {command} ")), "{command}");
        assert!(
            man.contains(&format!("pourwright\\-{}", command.replace('-', "\\-"))),
            "{command}"
        );
        let help = run(&[command, "--help"], "").fine();
        assert!(help.contains(&format!("Usage: pourwright {command}")), "{help}");
        assert!(command == "example" || help.contains("Examples:\n  pourwright "), "{help}");
    }
    assert!(!help.contains("completions"), "{help}");
}

#[rstest]
#[case("bash", "complete -F _pourwright")]
#[case("zsh", "#compdef pourwright")]
#[case("fish", "complete -c pourwright")]
#[case("elvish", "set edit:completion:arg-completer[pourwright]")]
#[case("powershell", "Register-ArgumentCompleter")]
fn completions_know_the_calculations(#[case] shell: &str, #[case] says: &str) {
    let script = run(&["completions", shell], "").fine();
    assert!(script.contains(says), "{script}");
    assert!(!["bash", "zsh"].contains(&shell) || script.contains("calibrate-drop"));
}

/// The examples that the help shows can be run.
#[test]
fn examples_of_the_help_fit_the_command_line() {
    let mut seen = 0;
    for command in [""].into_iter().chain(COMMANDS) {
        let arguments: Vec<&str> =
            [command, "--help"].into_iter().filter(|a| !a.is_empty()).collect();
        let help = run(&arguments, "").fine();
        let examples = help.lines().filter_map(|line| line.trim().strip_prefix("pourwright "));
        for example in examples.filter(|line| !line.starts_with("<") && !line.contains('|')) {
            let line = example.split("   ").next().unwrap().split('>').next().unwrap();
            let arguments = words(line);
            let ran = run(&arguments.iter().map(String::as_str).collect::<Vec<_>>(), "{}");
            // A file that is not there is all that may be wrong.
            let is_file = ran.complaint.contains("No such file");
            assert!(ran.code == Some(0) || is_file, "{line}: {}", ran.complaint);
            seen += 1;
        }
    }
    assert!(seen > 15, "{seen}");
}

/// The words of a line as a shell reads them: by spaces, and as they are between single quotes.
fn words(line: &str) -> Vec<String> {
    let mut words = vec![String::new()];
    let mut quoted = false;
    for letter in line.trim().chars() {
        match letter {
            '\'' => quoted = !quoted,
            ' ' if !quoted => words.push(String::new()),
            _ => words.last_mut().unwrap().push(letter),
        }
    }
    words
}
