//! Derives that every part of a plan, or of what is made with one, has in common.

/// Derives that every part of a plan, or of what is made with one, has. Without the lists of those that are `needed` a
/// stored plan is none; other lists that it lacks are empty.
macro_rules! part {
    (needed $($part:tt)*) => { $crate::show::part! { @true $($part)* } };
    (@$needed:literal $(#[$meta:meta])* pub struct $Part:ident { $($(#[$field_meta:meta])* pub $field:ident: $Field:ty,)* }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq)]
        #[cfg_attr(feature = "document", derive(serde::Serialize))]
        #[cfg_attr(feature = "document", serde(deny_unknown_fields))]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub struct $Part { $($(#[$field_meta])* pub $field: $Field,)* }

        #[cfg(feature = "document")]
        $crate::json::read_back::read_back_by_fields! { $Part, $needed { $($field,)* } }
    };
    ($($part:tt)*) => { $crate::show::part! { @false $($part)* } };
}
pub(crate) use part;
