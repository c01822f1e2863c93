//! The requests with their examples, `core/REQUESTS.md`.

use pourwright::request::CALCULATIONS;
use pourwright::schema;
use serde_json::Value;

const HEAD: &str = "# Requests

Every request by its name, with an example. The examples are the files of `core/examples/requests/`; they are asked of the
demo's book and plan, as in `pourwright example salt | pourwright answer salt - --demo`. A request that is asked of no book or
plan names its own as `book` and `plan`. All fields: `core/schema/request.json`.

Made by `UPDATE=1 cargo test -p pourwright-tests --test committed`; do not edit.
";

#[test]
fn the_requests_are_fresh() {
    let schema: Value = schema::schema("request").unwrap().into();
    let requests = schema["oneOf"].as_array().unwrap();
    let mut page = HEAD.to_owned();
    for name in CALCULATIONS {
        let request = requests.iter().find(|one| one["properties"]["calculate"]["const"] == *name);
        let text = request.unwrap()["description"].as_str().unwrap();
        let example = crate::read(&format!("core/examples/requests/{name}.json"));
        page += &format!("\n## {name}\n\n{text}\n\n```json\n{example}```\n");
    }
    crate::fresh("core/REQUESTS.md", &page);
}
