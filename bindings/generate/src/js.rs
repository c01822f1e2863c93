//! The JavaScript door: parameter lists and TypeScript types.

use crate::File;

/// What is written for it.
pub(crate) fn files() -> Vec<File> {
    Vec::new()
}
