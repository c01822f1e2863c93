//! Colors in requests: as L\*a\*b\* or as sRGB.

use alloc::vec::Vec;

use super::response;
use crate::codes::code;
use crate::color::ColorError;
use crate::color::lab::{Lab, Srgb};
use crate::document::resolve::Resolver;
use crate::fault::Fault;
use crate::json::entry::entry;
use crate::json::path::Path;
use crate::json::reader::{Node, Read};
use crate::parameter::Parameter;

entry! {
    /// A color, in one of two ways.
    pub struct ColorEntry {
        required {}
        optional {
            /// L*, a*, b* of a reading, in daylight (D65).
            lab: [f64; 3],
            /// Red, green and blue from 0 to 255, as a photograph next to white stores them.
            srgb: [f64; 3],
        }
    }
}

response! {
    /// A color in CIE L*a*b*.
    pub struct ShownLab {
        /// L*: 0 for black, 100 for white.
        pub lightness: f64,
        /// a*: green below zero, red above.
        pub a: f64,
        /// b*: blue below zero, yellow above.
        pub b: f64,
    }
}

impl From<Lab> for ShownLab {
    fn from(lab: Lab) -> Self {
        Self { lightness: lab.lightness(), a: lab.a(), b: lab.b() }
    }
}

/// A color as it was read.
pub(super) enum Color {
    Lab(Lab),
    Srgb(Srgb),
}

impl Color {
    pub(super) fn lab(&self) -> Lab {
        match self {
            Self::Lab(lab) => *lab,
            Self::Srgb(srgb) => srgb.lab(),
        }
    }

    pub(super) fn srgb(&self) -> Result<Srgb, ColorError> {
        match self {
            Self::Lab(lab) => lab.srgb(),
            Self::Srgb(srgb) => Ok(*srgb),
        }
    }
}

impl ColorEntry {
    /// The color at `path`.
    pub(super) fn read_at(&self, path: &Path<'_>, resolver: &mut Resolver) -> Option<Color> {
        match (self.lab, self.srgb) {
            (Some([lightness, a, b]), None) => match Lab::new(lightness, a, b) {
                Ok(lab) => Some(Color::Lab(lab)),
                Err(errors) => {
                    let lab = path.key("lab");
                    for error in errors.as_slice() {
                        let place = match error.parameter {
                            Parameter::Lightness => 0,
                            Parameter::GreenRed => 1,
                            _ => 2,
                        };
                        resolver.report(&lab.index(place), error);
                    }
                    None
                }
            },
            (None, Some([red, green, blue])) => {
                let srgb = Srgb::new(red / 255.0, green / 255.0, blue / 255.0);
                resolver.keep(&path.key("srgb"), srgb).map(Color::Srgb)
            }
            _ => {
                resolver.fault(
                    code!("lab-or-srgb"),
                    path,
                    &"A color must be stated in one way.",
                    &"Write { \"lab\": [52, 41, 18] } or { \"srgb\": [184, 94, 90] }.",
                );
                None
            }
        }
    }
}

impl Read for [f64; 3] {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let numbers = node.value.as_array().map(Vec::as_slice);
        let numbers = match numbers {
            Some([a, b, c]) => a.as_f64().zip(b.as_f64()).zip(c.as_f64()),
            _ => None,
        };
        if numbers.is_none() {
            faults.push(node.mismatch("three numbers: [52, 41, 18]"));
        }
        numbers.map(|((a, b), c)| [a, b, c])
    }
}
