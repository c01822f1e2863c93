//! Derives that every part of a plan, or of what is made with one, has in common.

/// Derives that every part of a plan, or of what is made with one, has.
macro_rules! part {
    ($(#[$meta:meta])* pub struct $Part:ident { $($(#[$field_meta:meta])* pub $field:ident: $Field:ty,)* }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq)]
        #[cfg_attr(feature = "document", derive(serde::Serialize))]
        #[cfg_attr(feature = "document", serde(deny_unknown_fields))]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub struct $Part { $($(#[$field_meta])* pub $field: $Field,)* }

        #[cfg(feature = "document")]
        $crate::json::read_back::read_back_by_fields! { $Part { $($field,)* } }
    };
}
pub(crate) use part;
