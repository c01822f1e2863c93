//! Units of plain numbers: the ones that doors without quantities take and give.

use alloc::string::String;

macro_rules! units {
    ($($(#[$meta:meta])* $Unit:ident $symbol:literal $suffix:literal $camel:literal $to_si:ident $factor:literal;)*) => {
        /// The unit of a plain number, which is the last part of its name at the doors.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        #[non_exhaustive]
        pub enum PlainUnit { $($(#[$meta])* $Unit,)* }

        impl PlainUnit {
            /// All units.
            pub const ALL: &'static [Self] = &[$(Self::$Unit,)*];

            /// The symbol, as a message shows it; `1` for a pure number, `none` where it is not a quantity.
            #[must_use]
            pub const fn symbol(self) -> &'static str {
                match self { $(Self::$Unit => $symbol,)* }
            }

            /// The last part of a name in C, Python and Rust: `_g_per_ml`; empty for a pure number.
            #[must_use]
            pub const fn suffix(self) -> &'static str {
                match self { $(Self::$Unit => $suffix,)* }
            }

            /// The last part of a name in JavaScript: `GPerMl`; empty for a pure number.
            #[must_use]
            pub const fn camel(self) -> &'static str {
                match self { $(Self::$Unit => $camel,)* }
            }

            /// `plain` in SI units. One product or division by a power of ten (a sum between the scales of temperature),
            /// so that a decimal number is rounded once more at most.
            #[inline]
            #[must_use]
            pub const fn to_si(self, plain: f64) -> f64 {
                match self { $(Self::$Unit => to_si!($to_si plain, $factor),)* }
            }

            /// `si`, in SI units, as a plain number.
            #[inline]
            #[must_use]
            pub const fn from_si(self, si: f64) -> f64 {
                match self { $(Self::$Unit => from_si!($to_si si, $factor),)* }
            }
        }

        /// The symbol of a unit as a literal, for doc comments.
        #[cfg(any(feature = "document", feature = "table"))]
        macro_rules! unit_symbol { $(($Unit) => { $symbol };)* }
        #[cfg(any(feature = "document", feature = "table"))]
        pub(crate) use unit_symbol;
    };
}

macro_rules! to_si {
    (times $x:expr, $factor:literal) => {
        $x * $factor
    };
    (over $x:expr, $factor:literal) => {
        $x / $factor
    };
    (plus $x:expr, $factor:literal) => {
        $x + $factor
    };
}

macro_rules! from_si {
    (times $x:expr, $factor:literal) => {
        $x / $factor
    };
    (over $x:expr, $factor:literal) => {
        $x * $factor
    };
    (plus $x:expr, $factor:literal) => {
        $x - $factor
    };
}

units! {
    /// Not a number: a word, a text, an object of a document.
    None "none" "" "" times 1.0;
    /// In the unit that the call names.
    Any "any" "" "" times 1.0;
    /// A pure number; of a share, 0.05 is 5 %.
    Pure "1" "" "" times 1.0;
    /// A whole number.
    Count "1" "" "" times 1.0;
    /// Grams.
    Gram "g" "_g" "G" over 1e3;
    /// Milliliters.
    Milliliter "mL" "_ml" "Ml" over 1e6;
    /// Grams per milliliter.
    GramPerMilliliter "g/mL" "_g_per_ml" "GPerMl" times 1e3;
    /// Degrees Celsius.
    Celsius "°C" "_celsius" "Celsius" plus 273.15;
    /// Kelvins, of a difference.
    Kelvin "K" "_kelvin" "Kelvin" times 1.0;
    /// Per kelvin.
    PerKelvin "1/K" "_per_kelvin" "PerKelvin" times 1.0;
    /// Kilopascals.
    Kilopascal "kPa" "_kpa" "Kpa" times 1e3;
    /// Meters.
    Meter "m" "_m" "M" times 1.0;
    /// Millimeters.
    Millimeter "mm" "_mm" "Mm" over 1e3;
    /// Micrometers.
    Micrometer "µm" "_um" "Um" over 1e6;
    /// Square centimeters.
    SquareCentimeter "cm2" "_cm2" "Cm2" over 1e4;
    /// Centimeters per second.
    CentimeterPerSecond "cm/s" "_cm_per_s" "CmPerS" over 1e2;
    /// Seconds.
    Second "s" "_s" "S" times 1.0;
    /// Millipascal seconds.
    MillipascalSecond "mPa.s" "_mpa_s" "MPaS" over 1e3;
    /// Joules per gram and kelvin.
    JoulePerGramKelvin "J/(g.K)" "_j_per_g_k" "JPerGK" times 1e3;
    /// Joules per kelvin.
    JoulePerKelvin "J/K" "_j_per_k" "JPerK" times 1.0;
    /// Square meters per second.
    SquareMeterPerSecond "m2/s" "_m2_per_s" "M2PerS" times 1.0;
    /// Watts.
    Watt "W" "_w" "W" times 1.0;
    /// Kilojoules per mole.
    KilojoulePerMole "kJ/mol" "_kj_per_mol" "KjPerMol" times 1e3;
}

impl PlainUnit {
    /// `name`, a name in snake case, as JavaScript writes it with this unit: `cavityVolumeMl`.
    #[must_use]
    pub fn camel_name(self, name: &str) -> String {
        let mut camel = String::with_capacity(name.len());
        for (index, word) in name.split('_').enumerate() {
            let mut letters = word.chars();
            match letters.next() {
                Some(first) if index > 0 => camel.push(first.to_ascii_uppercase()),
                Some(first) => camel.push(first),
                None => {}
            }
            camel.push_str(letters.as_str());
        }
        camel + self.camel()
    }
}

#[cfg(test)]
mod tests {
    use super::PlainUnit;

    #[test]
    fn names_in_camel_case() {
        assert_eq!(PlainUnit::Milliliter.camel_name("cavity_volume"), "cavityVolumeMl");
        assert_eq!(PlainUnit::None.camel_name("x_of_y"), "xOfY");
    }
}
