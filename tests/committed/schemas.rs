use pourwright::schema;

#[test]
fn the_json_schemas_are_fresh() {
    for name in schema::NAMES {
        let text = schema::text(name).unwrap().unwrap();
        crate::fresh(&format!("core/schema/{name}.json"), &text);
    }
    assert!(schema::schema("no such document").is_none());
}
