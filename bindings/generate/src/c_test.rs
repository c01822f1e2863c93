//! What `bindings/c/tests/every_call.c` calls of each calculation.

pub(crate) fn text() -> String {
    String::new()
}
