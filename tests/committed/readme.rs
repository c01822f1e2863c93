//! The examples of the README do what it says.

use pourwright::document::LoadedBook;
use pourwright::request;

const DEMO_BOOK: &str = include_str!("../../core/examples/demo/book.json");
const DEMO_ORDERS: &str = include_str!("../../core/examples/demo/orders.json");

/// The fenced blocks of `language` in the README.
fn blocks(language: &str) -> Vec<String> {
    let readme = crate::read("README.md");
    let opening = format!("```{language}\n");
    readme
        .match_indices(&opening)
        .map(|(start, _)| {
            let block = &readme[start + opening.len()..];
            block[..block.find("```").unwrap()].to_owned()
        })
        .collect()
}

/// The README shows the card of the fourth pot of the demo's sheet.
#[test]
fn the_excerpt_of_the_sheet_is_fresh() {
    let plan = LoadedBook::from_text(DEMO_BOOK).and_then(|book| book.plan_text(DEMO_ORDERS));
    let sheet = plan.unwrap_or_else(|faults| panic!("{faults}")).sheet().to_string();
    let pot = &sheet[sheet.find("\n= POT D ").unwrap() + 1..];
    let pot = &pot[..pot.find("\n\n").unwrap() + 1];
    let readme = crate::read("README.md");
    let (before, rest) = readme.split_once("```text\n").unwrap();
    let (_, after) = rest.split_once("```\n").unwrap();
    crate::fresh("README.md", &format!("{before}```text\n{pot}```\n{after}"));
}

#[test]
fn the_requests_of_the_readme_are_answered() {
    let requests = blocks("json");
    assert!(requests.contains(&crate::read("core/examples/requests/salt.json")));
    for json in &requests {
        let answer = request::answer_text(json);
        assert!(answer.starts_with("{\"result\""), "{json}\n{answer}");
    }
}

/// Every file that the README and the contributor's guide link to is there.
#[test]
fn links_lead_somewhere() {
    for document in ["README.md", "DEVELOPERS.md", "bindings/c/README.md"] {
        let text = crate::read(document);
        let folder = crate::root().join(document);
        let folder = folder.parent().unwrap();
        for (start, _) in text.match_indices("](") {
            let target = &text[start + 2..];
            let target = &target[..target.find(')').unwrap()];
            if !target.contains("://") && !target.starts_with('#') {
                assert!(folder.join(target).exists(), "{document}: {target}");
            }
        }
    }
}
