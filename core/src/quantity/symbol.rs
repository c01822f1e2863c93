//! The table of units: symbols, spellings, and sizes as a chain of exact definitions.
//!
//! Sources: NIST Handbook 44, Appendix C, and NIST SP 811, Appendix B (US customary measures, pressure,
//! energy); 21 CFR 101.9(b)(5)(viii) (label measures); UK Weights and Measures Act 1985 (imperial gallon);
//! UCUM 2.2 (the codes in brackets, and the sizes that only it defines).

use super::{Dimension, Rational, System};

/// How large a unit is, in coherent SI units.
#[derive(Debug, Clone, Copy)]
pub(super) enum Size {
    /// The same in every system.
    Exact(Rational),
    /// A household word: its size depends on the measuring system.
    Household(Household),
    /// A temperature scale: kelvin = (reading + offset) · scale.
    Scale { scale: Rational, offset: Rational },
}

/// The sizes of a household word in the systems that have it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Household {
    us: Option<Rational>,
    label: Option<Rational>,
    metric: Option<Rational>,
    imperial: Option<Rational>,
}

impl Household {
    pub(super) const fn size(&self, system: System) -> Option<Rational> {
        match system {
            System::UsCustomary => self.us,
            System::UsLabel => self.label,
            System::Metric => self.metric,
            System::Imperial => self.imperial,
        }
    }
}

/// One row of the table.
#[derive(Debug, Clone, Copy)]
pub(super) struct Entry {
    /// The symbol that amounts are printed with.
    pub(super) symbol: &'static str,
    /// The symbol after any number but 1, where that differs.
    pub(super) plural: &'static str,
    pub(super) dimension: Dimension,
    pub(super) size: Size,
    /// How it is written: the symbol and others, among them the UCUM code, whose case of letters counts; then names and
    /// abbreviations that are read in any case.
    pub(super) spellings: &'static [(&'static str, MatchCase)],
}

macro_rules! symbols {
    ($($name:ident: $dimension:ident $symbol:literal $(/ $plural:literal)?, $size:expr,
        [$($short:literal),*], [$($word:literal),*];)*) => {
        /// A unit that has a symbol of its own.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub(super) enum Symbol { $($name),* }

        impl Symbol {
            pub(super) const ALL: &'static [Self] = &[$(Self::$name),*];

            pub(super) const fn entry(self) -> &'static Entry {
                match self {
                    $(Self::$name => const {
                        &Entry {
                            symbol: $symbol,
                            plural: symbols!(@plural $symbol $($plural)?),
                            dimension: Dimension::$dimension,
                            size: $size,
                            spellings: &[
                                ($symbol, MatchCase::Exact),
                                $(($short, MatchCase::Exact),)*
                                $(($word, MatchCase::Any),)*
                            ],
                        }
                    },)*
                }
            }
        }
    };
    (@plural $symbol:literal) => { $symbol };
    (@plural $symbol:literal $plural:literal) => { $plural };
}

// name: dimension, symbol and its plural, size, [other symbols and UCUM codes], [words in any case]
symbols! {
    // Household measures. UCUM's codes for them name the system too: see `HOUSEHOLD_CODES`.
    Cup: VOLUME "cup", CUP, [], ["cup", "cups"];
    Tablespoon: VOLUME "tbsp", TABLESPOON, [], ["tbsp", "tbsps", "tbs", "tbl", "tablespoon", "tablespoons"];
    Teaspoon: VOLUME "tsp", TEASPOON, [], ["tsp", "tsps", "teaspoon", "teaspoons"];
    FluidOunce: VOLUME "fl oz", FLUID_OUNCE, ["floz", "fl_oz"],
        ["fl oz", "fluid ounce", "fluid ounces", "fluid oz", "oz fl"];
    Pint: VOLUME "pt", PINT, [], ["pt", "pint", "pints"];
    Quart: VOLUME "qt", QUART, [], ["qt", "qts", "quart", "quarts"];
    Gallon: VOLUME "gal", GALLON, [], ["gal", "gals", "gallon", "gallons"];

    // Volumes of one size.
    FluidDram: VOLUME "[fdr_us]", exact(FLUID_DRAM_US), [], ["fluid dram", "fluid drams"];
    Minim: VOLUME "[min_us]", exact(MINIM_US), [], ["minim", "minims"];
    MetricDrop: VOLUME "[drp]", exact(METRIC_DROP), [], ["metric drop", "metric drops"];
    Liter: VOLUME "L", exact(LITER), ["l"], ["liter", "liters", "litre", "litres"];
    Deciliter: VOLUME "dL", exact(over(LITER, 10)), ["dl"],
        ["deciliter", "deciliters", "decilitre", "decilitres"];
    Centiliter: VOLUME "cL", exact(over(LITER, 100)), ["cl"],
        ["centiliter", "centiliters", "centilitre", "centilitres"];
    Milliliter: VOLUME "mL", exact(MILLILITER), ["ml", "cc", "ccm"],
        ["milliliter", "milliliters", "millilitre", "millilitres"];
    Microliter: VOLUME "uL", exact(over(MILLILITER, 1000)), ["ul", "µL", "μL", "µl", "μl"],
        ["microliter", "microliters", "microlitre", "microlitres"];
    CubicInch: VOLUME "cu in", exact(CUBIC_INCH), ["[cin_i]"], ["cubic inch", "cubic inches"];
    CubicFoot: VOLUME "cu ft", exact(times(CUBIC_INCH, 1728)), ["[cft_i]"],
        ["cubic foot", "cubic feet"];

    // Masses.
    Kilogram: MASS "kg", exact(Rational::ONE), ["kgs"],
        ["kg", "kilogram", "kilograms", "kilo", "kilos"];
    Gram: MASS "g", exact(GRAM), ["gm", "gms"], ["gram", "grams", "gramme", "grammes"];
    Milligram: MASS "mg", exact(over(GRAM, 1000)), [], ["milligram", "milligrams"];
    Microgram: MASS "ug", exact(over(GRAM, 1_000_000)), ["µg", "μg", "mcg"],
        ["microgram", "micrograms"];
    Tonne: MASS "tonne" / "tonnes", exact(Rational::from_int(1000)), [],
        ["tonne", "tonnes", "metric ton", "metric tons"];
    Pound: MASS "lb", exact(POUND), ["[lb_av]", "lbm"], ["lb", "lbs", "pound", "pounds"];
    OunceWeight: MASS "oz wt", exact(OUNCE), ["[oz_av]", "oz_av", "wt oz"],
        ["oz wt", "oz av", "oz avdp", "oz weight", "weight oz", "ounce weight", "ounces weight",
         "avoirdupois ounce", "avoirdupois ounces"];
    DramWeight: MASS "[dr_av]", exact(over(OUNCE, 16)), [],
        ["avoirdupois dram", "avoirdupois drams"];
    Grain: MASS "grain" / "grains", exact(over(POUND, 7000)), ["[gr]"], ["grain", "grains"];
    LabelOunce: MASS "label oz wt", exact(times(GRAM, 28)), ["[oz_m]"], [];

    // Lengths.
    Kilometer: LENGTH "km", exact(Rational::from_int(1000)), [],
        ["kilometer", "kilometers", "kilometre", "kilometres"];
    Meter: LENGTH "m", exact(Rational::ONE), [], ["meter", "meters", "metre", "metres"];
    Decimeter: LENGTH "dm", exact(ratio(1, 10)), [],
        ["decimeter", "decimeters", "decimetre", "decimetres"];
    Centimeter: LENGTH "cm", exact(ratio(1, 100)), [],
        ["centimeter", "centimeters", "centimetre", "centimetres"];
    Millimeter: LENGTH "mm", exact(ratio(1, 1000)), [],
        ["millimeter", "millimeters", "millimetre", "millimetres"];
    Micrometer: LENGTH "um", exact(ratio(1, 1_000_000)), ["µm", "μm"],
        ["micrometer", "micrometers", "micrometre", "micrometres", "micron", "microns"];
    Inch: LENGTH "in", exact(INCH), ["[in_i]", "\"", "″"], ["inch", "inches"];
    Foot: LENGTH "ft", exact(times(INCH, 12)), ["[ft_i]"], ["foot", "feet"];
    Yard: LENGTH "yd", exact(times(INCH, 36)), ["[yd_i]"], ["yard", "yards"];
    Mil: LENGTH "mil", exact(over(INCH, 1000)), ["[mil_i]"], ["mils", "thou"];

    // Temperatures.
    Kelvin: TEMPERATURE "K", Size::Scale { scale: Rational::ONE, offset: Rational::ZERO }, [],
        ["kelvin", "kelvins"];
    Celsius: TEMPERATURE "°C", Size::Scale { scale: Rational::ONE, offset: ratio(27_315, 100) },
        ["Cel", "℃", "ºC", "° C", "º C", "degC", "deg C"],
        ["celsius", "degree celsius", "degrees celsius", "degree c", "degrees c"];
    Fahrenheit: TEMPERATURE "°F",
        Size::Scale { scale: ratio(5, 9), offset: ratio(45_967, 100) },
        ["[degF]", "℉", "ºF", "° F", "º F", "degF", "deg F", "F"],
        ["fahrenheit", "degree fahrenheit", "degrees fahrenheit", "degree f", "degrees f"];

    // Pressures. SP 811 prints the conventional inch of mercury to seven digits, 3386.389 Pa;
    // UCUM starts from a rounded 133.322 kPa per meter, 3e-6 less.
    Pascal: PRESSURE "Pa", exact(Rational::ONE), [], ["pascal", "pascals"];
    Millipascal: PRESSURE "mPa", exact(ratio(1, 1000)), [], ["millipascal", "millipascals"];
    Hectopascal: PRESSURE "hPa", exact(Rational::from_int(100)), [], ["hectopascal", "hectopascals"];
    Kilopascal: PRESSURE "kPa", exact(Rational::from_int(1000)), [], ["kilopascal", "kilopascals"];
    Megapascal: PRESSURE "MPa", exact(Rational::from_int(1_000_000)), [],
        ["megapascal", "megapascals"];
    Bar: PRESSURE "bar", exact(Rational::from_int(100_000)), [], ["bars"];
    Millibar: PRESSURE "mbar", exact(Rational::from_int(100)), ["mb"], ["millibar", "millibars"];
    Atmosphere: PRESSURE "atm", exact(Rational::from_int(101_325)), [],
        ["atmosphere", "atmospheres"];
    Psi: PRESSURE "psi", exact(PSI), ["[psi]"], ["psi"];
    Torr: PRESSURE "Torr", exact(ratio(101_325, 760)), ["torr"], [];
    InchOfMercury: PRESSURE "inHg", exact(INCH_OF_MERCURY), ["in Hg", "\"Hg"],
        ["inch of mercury", "inches of mercury"];
    MillimeterOfMercury: PRESSURE "mmHg", exact(MILLIMETER_OF_MERCURY), ["mm Hg"],
        ["millimeter of mercury", "millimeters of mercury"];
    CentimeterOfMercury: PRESSURE "cmHg", exact(times(MILLIMETER_OF_MERCURY, 10)), ["cm Hg"],
        ["centimeter of mercury", "centimeters of mercury"];
    UcumInchOfMercury: PRESSURE "[in_i'Hg]", exact(mul(UCUM_METER_OF_MERCURY, INCH)), [], [];
    UcumMeterOfMercury: PRESSURE "m[Hg]", exact(UCUM_METER_OF_MERCURY), [], [];
    UcumMillimeterOfMercury: PRESSURE "mm[Hg]", exact(over(UCUM_METER_OF_MERCURY, 1000)), [], [];

    // Times.
    Second: TIME "s", exact(Rational::ONE), ["sec", "secs"], ["second", "seconds"];
    Millisecond: TIME "ms", exact(ratio(1, 1000)), [], ["millisecond", "milliseconds"];
    Minute: TIME "min", exact(Rational::from_int(60)), ["mins"], ["minute", "minutes"];
    Hour: TIME "h", exact(Rational::from_int(3600)), ["hr", "hrs"], ["hour", "hours"];
    Day: TIME "d", exact(Rational::from_int(86_400)), [], ["day", "days"];

    // Energy and power. The calorie is the thermochemical one, as in UCUM; the Btu that of the International Table.
    Joule: ENERGY "J", exact(Rational::ONE), [], ["joule", "joules"];
    Kilojoule: ENERGY "kJ", exact(Rational::from_int(1000)), [], ["kilojoule", "kilojoules"];
    Calorie: ENERGY "cal", exact(CALORIE), ["cal_th"], [];
    Kilocalorie: ENERGY "kcal", exact(times(CALORIE, 1000)), ["kcal_th"], [];
    Btu: ENERGY "Btu", exact(BTU), ["[Btu_IT]", "BTU"], [];
    WattHour: ENERGY "Wh", exact(Rational::from_int(3600)), [], [];
    KilowattHour: ENERGY "kWh", exact(Rational::from_int(3_600_000)), [], [];
    Watt: POWER "W", exact(Rational::ONE), [], ["watt", "watts"];
    Kilowatt: POWER "kW", exact(Rational::from_int(1000)), [], ["kilowatt", "kilowatts"];

    // Amount of substance.
    Mole: SUBSTANCE "mol", exact(Rational::ONE), [], ["mole", "moles"];

    // Counts and shares.
    Drop: COUNT "drop" / "drops", exact(Rational::ONE), [], ["drop", "drops"];
    Piece: COUNT "piece" / "pieces", exact(Rational::ONE), ["pc", "pcs"], ["piece", "pieces"];
    Percent: RATIO "%", exact(ratio(1, 100)), [], ["percent", "per cent"];
    PartsPerMillion: RATIO "ppm", exact(ratio(1, 1_000_000)), ["[ppm]"], [];
}

/// All spellings, by a key of their first letter and length: the few with the key of a text are compared with it.
struct Index {
    /// Symbol and place of each spelling, by key, then in the order of the table.
    spellings: [(Symbol, u8); SPELLINGS],
    /// Where those of a key begin; the last is the end.
    starts: [u16; KEYS + 1],
}

const KEYS: usize = 256;
#[allow(clippy::indexing_slicing, reason = "runs in constants alone")]
const SPELLINGS: usize = Index::counts()[KEYS] as usize;
static INDEX: Index = Index::new();

impl Index {
    const fn key(spelling: &str) -> usize {
        let bytes = spelling.as_bytes();
        let first = match bytes.first() {
            Some(first) => first.to_ascii_lowercase(),
            None => 0,
        };
        // Of the sum its last byte, below `KEYS`.
        first.wrapping_add((bytes.len() as u8).wrapping_mul(37)) as usize
    }

    /// The number of spellings of each key, and of all.
    #[allow(clippy::indexing_slicing, reason = "runs in constants alone")]
    const fn counts() -> [u16; KEYS + 1] {
        let mut counts = [0; KEYS + 1];
        let mut next = 0;
        while next < Symbol::ALL.len() {
            let spellings = Symbol::ALL[next].entry().spellings;
            let mut place = 0;
            while place < spellings.len() {
                counts[Self::key(spellings[place].0)] += 1;
                counts[KEYS] += 1;
                place += 1;
            }
            next += 1;
        }
        counts
    }

    #[allow(clippy::indexing_slicing, reason = "runs in constants alone")]
    const fn new() -> Self {
        let counts = Self::counts();
        let mut starts = [0; KEYS + 1];
        let mut key = 0;
        while key < KEYS {
            starts[key + 1] = starts[key] + counts[key];
            key += 1;
        }
        let mut free = starts;
        let mut spellings = [(Symbol::Cup, 0); SPELLINGS];
        let mut next = 0;
        while next < Symbol::ALL.len() {
            let of_symbol = Symbol::ALL[next].entry().spellings;
            let mut place = 0;
            while place < of_symbol.len() {
                let key = Self::key(of_symbol[place].0);
                spellings[free[key] as usize] = (Symbol::ALL[next], place as u8);
                free[key] += 1;
                place += 1;
            }
            next += 1;
        }
        Self { spellings, starts }
    }
}

impl Symbol {
    /// The symbol that is spelled `name`, without the word of a system before it.
    pub(super) fn of_spelling(name: &str) -> Option<Self> {
        let key = Index::key(name);
        let place = |key: usize| INDEX.starts.get(key).map(|start| usize::from(*start));
        let spellings = INDEX.spellings.get(place(key)?..place(key.saturating_add(1))?)?;
        let is_spelled = |(symbol, place): &(Self, u8)| match symbol
            .entry()
            .spellings
            .get(usize::from(*place))
        {
            Some((spelling, MatchCase::Exact)) => name == *spelling,
            Some((spelling, MatchCase::Any)) => name.eq_ignore_ascii_case(spelling),
            None => false,
        };
        spellings.iter().find(|spelling| is_spelled(spelling)).map(|(symbol, _)| *symbol)
    }
}

/// UCUM's codes for household measures; each names its system. (`[cup_m]` is the 240 mL label cup: UCUM has no
/// code for the metric cup of 250 mL.)
pub(super) const HOUSEHOLD_CODES: &[(&str, Symbol, System)] = &[
    ("[cup_us]", Symbol::Cup, System::UsCustomary),
    ("[tbs_us]", Symbol::Tablespoon, System::UsCustomary),
    ("[tsp_us]", Symbol::Teaspoon, System::UsCustomary),
    ("[foz_us]", Symbol::FluidOunce, System::UsCustomary),
    ("[pt_us]", Symbol::Pint, System::UsCustomary),
    ("[qt_us]", Symbol::Quart, System::UsCustomary),
    ("[gal_us]", Symbol::Gallon, System::UsCustomary),
    ("[cup_m]", Symbol::Cup, System::UsLabel),
    ("[tbs_m]", Symbol::Tablespoon, System::UsLabel),
    ("[tsp_m]", Symbol::Teaspoon, System::UsLabel),
    ("[foz_m]", Symbol::FluidOunce, System::UsLabel),
    ("[foz_br]", Symbol::FluidOunce, System::Imperial),
    ("[pt_br]", Symbol::Pint, System::Imperial),
    ("[qt_br]", Symbol::Quart, System::Imperial),
    ("[gal_br]", Symbol::Gallon, System::Imperial),
];

/// Words before a household word that name its system, longest first.
pub(super) const SYSTEM_WORDS: &[(&str, System)] = &[
    ("us customary ", System::UsCustomary),
    ("us label ", System::UsLabel),
    ("us ", System::UsCustomary),
    ("label ", System::UsLabel),
    ("metric ", System::Metric),
    ("imperial ", System::Imperial),
];

/// Spellings that can be read two ways, and the readings. The case of letters counts if the entry says so.
pub(super) const AMBIGUOUS: &[(&str, MatchCase, &[&str])] = &[
    ("oz", MatchCase::Any, &["fl oz", "oz wt"]),
    ("ozs", MatchCase::Any, &["fl oz", "oz wt"]),
    ("ounce", MatchCase::Any, &["fl oz", "oz wt"]),
    ("ounces", MatchCase::Any, &["fl oz", "oz wt"]),
    ("c", MatchCase::Any, &["cup", "°C"]),
    ("T", MatchCase::Exact, &["tbsp", "tonne"]),
    ("t", MatchCase::Exact, &["tsp", "tonne"]),
    ("dr", MatchCase::Any, &["drops", "[dr_av]", "[fdr_us]"]),
    ("dram", MatchCase::Any, &["[dr_av]", "[fdr_us]"]),
    ("drams", MatchCase::Any, &["[dr_av]", "[fdr_us]"]),
    ("gr", MatchCase::Any, &["g", "grains"]),
    ("deg", MatchCase::Any, &["°F", "°C"]),
    ("degree", MatchCase::Any, &["°F", "°C"]),
    ("degrees", MatchCase::Any, &["°F", "°C"]),
    ("°", MatchCase::Any, &["°F", "°C"]),
    ("º", MatchCase::Any, &["°F", "°C"]),
];

/// Kitchen words that no standard gives a size, one and many, and the part of a teaspoon that spoons sold by these names
/// hold (common practice, no source).
pub(super) const KITCHEN_WORDS: &[(&str, &str, i64)] =
    &[("dash", "dashes", 8), ("pinch", "pinches", 16), ("smidgen", "smidgens", 32)];

/// Whether the case of letters counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum MatchCase {
    Exact,
    Any,
}

// The chain of exact definitions, in m, kg, s.
const INCH: Rational = ratio(254, 10_000);
const CUBIC_INCH: Rational = mul(INCH, mul(INCH, INCH));
const LITER: Rational = ratio(1, 1000);
const MILLILITER: Rational = over(LITER, 1000);
const METRIC_DROP: Rational = over(MILLILITER, 20);

const GALLON_US: Rational = times(CUBIC_INCH, 231);
const QUART_US: Rational = over(GALLON_US, 4);
const PINT_US: Rational = over(QUART_US, 2);
const CUP_US: Rational = over(PINT_US, 2);
const FLUID_OUNCE_US: Rational = over(CUP_US, 8);
const TABLESPOON_US: Rational = over(FLUID_OUNCE_US, 2);
const TEASPOON_US: Rational = over(TABLESPOON_US, 3);
const FLUID_DRAM_US: Rational = over(FLUID_OUNCE_US, 8);
const MINIM_US: Rational = over(FLUID_DRAM_US, 60);

const GALLON_IMPERIAL: Rational = mul(ratio(454_609, 100_000), LITER);
const QUART_IMPERIAL: Rational = over(GALLON_IMPERIAL, 4);
const PINT_IMPERIAL: Rational = over(QUART_IMPERIAL, 2);
const CUP_IMPERIAL: Rational = over(PINT_IMPERIAL, 2);
const FLUID_OUNCE_IMPERIAL: Rational = over(PINT_IMPERIAL, 20);

const GRAM: Rational = ratio(1, 1000);
const POUND: Rational = ratio(45_359_237, 100_000_000);
const OUNCE: Rational = over(POUND, 16);

/// Standard acceleration of free fall, m/s².
const STANDARD_GRAVITY: Rational = ratio(980_665, 100_000);
const PSI: Rational = div(mul(POUND, STANDARD_GRAVITY), mul(INCH, INCH));
/// Conventional mercury: 13 595.1 kg/m³ under standard gravity.
const MILLIMETER_OF_MERCURY: Rational = over(mul(ratio(135_951, 10), STANDARD_GRAVITY), 1000);
const INCH_OF_MERCURY: Rational = mul(MILLIMETER_OF_MERCURY, ratio(254, 10));
const UCUM_METER_OF_MERCURY: Rational = Rational::from_int(133_322);

const CALORIE: Rational = ratio(4184, 1000);
const BTU: Rational = ratio(105_505_585_262, 100_000_000);

const CUP: Size = household(CUP_US, Some(240), Some(250), Some(CUP_IMPERIAL));
const TABLESPOON: Size = household(TABLESPOON_US, Some(15), Some(15), None);
const TEASPOON: Size = household(TEASPOON_US, Some(5), Some(5), None);
const FLUID_OUNCE: Size = household(FLUID_OUNCE_US, Some(30), None, Some(FLUID_OUNCE_IMPERIAL));
const PINT: Size = household(PINT_US, None, None, Some(PINT_IMPERIAL));
const QUART: Size = household(QUART_US, None, None, Some(QUART_IMPERIAL));
const GALLON: Size = household(GALLON_US, None, None, Some(GALLON_IMPERIAL));

const fn exact(size: Rational) -> Size {
    Size::Exact(size)
}

/// A household word; its label and metric sizes in mL.
const fn household(
    us: Rational,
    label_ml: Option<i64>,
    metric_ml: Option<i64>,
    imperial: Option<Rational>,
) -> Size {
    Size::Household(Household {
        us: Some(us),
        label: milliliters(label_ml),
        metric: milliliters(metric_ml),
        imperial,
    })
}

const fn milliliters(ml: Option<i64>) -> Option<Rational> {
    match ml {
        Some(ml) => Some(times(MILLILITER, ml)),
        None => None,
    }
}

const fn ratio(numerator: i128, denominator: i128) -> Rational {
    in_range(Rational::new(numerator, denominator))
}

const fn mul(a: Rational, b: Rational) -> Rational {
    in_range(a.checked_mul(b))
}

const fn div(a: Rational, b: Rational) -> Rational {
    in_range(a.checked_div(b))
}

const fn times(a: Rational, n: i64) -> Rational {
    mul(a, Rational::from_int(n))
}

const fn over(a: Rational, n: i64) -> Rational {
    div(a, Rational::from_int(n))
}

#[allow(clippy::panic, reason = "runs in constants alone: it stops the compiler, never a program")]
const fn in_range(definition: Option<Rational>) -> Rational {
    match definition {
        Some(size) => size,
        None => panic!("a unit's definition does not fit"),
    }
}
