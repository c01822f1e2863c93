//! The examples of the README do what it says.

use pourwright::document::LoadedBook;
use pourwright::request;

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

#[test]
fn the_book_and_orders_of_the_readme_plan() {
    let json = blocks("json");
    let book = LoadedBook::from_text(&json[0]).unwrap_or_else(|faults| panic!("{faults}"));
    let made = book.plan_text(&json[1]).unwrap_or_else(|faults| panic!("{faults}"));
    assert_eq!(made.plan.pots.len(), 1);
}

#[test]
fn the_requests_of_the_readme_are_answered() {
    for json in &blocks("json")[2..] {
        let answer = request::answer_text(json);
        assert!(answer.starts_with("{\"result\""), "{json}\n{answer}");
    }
}

/// Every field that a book or an order list may have stands in the README.
#[test]
fn the_readme_names_every_field() {
    let readme = crate::read("README.md");
    for name in ["book", "orders"] {
        let schema = pourwright::schema::schema(name).unwrap();
        let schema = serde_json::to_value(schema).unwrap();
        let parts = schema["$defs"].as_object().unwrap().values().chain([&schema]);
        for part in parts {
            for field in part["properties"].as_object().into_iter().flatten().map(|(name, _)| name)
            {
                assert!(readme.contains(&format!("`{field}`")), "{name}: {field}");
            }
        }
    }
}
