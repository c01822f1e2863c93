//! Sources of a dose's uncertainty.

use core::fmt;

use crate::material::Property;

/// A source of error of a dose. It is put into words only if somebody reads them: a plan has thousands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Origin<'a> {
    /// The balance's span.
    BalanceSpan,
    /// The size of the spoon that is called so.
    SpoonSize(&'a str),
    /// The size of the cup that is called so.
    CupSize(&'a str),
    /// An error that differs each time: the act, the material, and which time it is.
    Taking { what: &'static str, material: &'a str, place: usize },
    /// A property of a material.
    Property(Property, &'a str),
    /// A material's drop.
    Drop(&'a str),
    /// A material's drop that nobody has weighed.
    UnweighedDrop(&'a str),
    /// Air in the finished plastic.
    Voids,
}

impl fmt::Display for Origin<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::BalanceSpan => f.write_str("span of the balance"),
            Self::SpoonSize(spoon) => write!(f, "size of the spoon {spoon}"),
            Self::CupSize(cup) => write!(f, "size of the {cup}"),
            Self::Taking { what, material, place } => {
                write!(f, "{what} {material}, taking {}", place.saturating_add(1))
            }
            Self::Property(Property::AsScooped, material) => {
                write!(f, "what a spoonful of {material} weighs")
            }
            Self::Property(property, material) => write!(f, "{property} of {material}"),
            Self::Drop(material) => write!(f, "what a drop of {material} weighs"),
            Self::UnweighedDrop(material) => {
                write!(f, "what a drop of {material} weighs, which was never found out")
            }
            Self::Voids => f.write_str("voids"),
        }
    }
}
