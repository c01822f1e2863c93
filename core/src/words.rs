//! Enums that documents write as one word.

/// Declares a word of a document: an enum written as one of its names.
macro_rules! words {
    (
        $(#[$meta:meta])*
        pub enum $Words:ident { $( $(#[$variant_meta:meta])* $Variant:ident = $word:literal, )+ }
    ) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[cfg_attr(feature = "document", derive(serde::Serialize, serde::Deserialize))]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[non_exhaustive]
        pub enum $Words {
            $( $(#[$variant_meta])* #[cfg_attr(feature = "document", serde(rename = $word))] $Variant, )+
        }

        impl $Words {
            /// All of them, in order.
            pub const ALL: &'static [Self] = &[ $( Self::$Variant, )+ ];

            /// How documents and doors write them, in the same order.
            pub const WORDS: &'static [&'static str] = &[ $( $word, )+ ];

            /// How a document writes it.
            #[must_use]
            pub const fn word(self) -> &'static str {
                match self { $( Self::$Variant => $word, )+ }
            }
        }

        impl core::fmt::Display for $Words {
            fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                f.write_str(self.word())
            }
        }

        #[cfg(feature = "document")]
        impl $crate::json::reader::Read for $Words {
            fn read(
                node: &$crate::json::reader::Node<'_>,
                faults: &mut alloc::vec::Vec<$crate::fault::Fault>,
            ) -> Option<Self> {
                $crate::json::reader::read_word(node, Self::ALL, Self::word, faults)
            }
        }

        #[cfg(feature = "document")]
        impl $crate::json::read_back::ReadBack for $Words {
            fn read_back(
                node: &$crate::json::reader::Node<'_>,
                faults: &mut alloc::vec::Vec<$crate::fault::Fault>,
            ) -> Self {
                let [nothing, ..] = [$( Self::$Variant, )+];
                $crate::json::reader::Read::read(node, faults).unwrap_or(nothing)
            }
        }
    };
}
pub(crate) use words;
