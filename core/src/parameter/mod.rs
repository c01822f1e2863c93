//! The parameters of all calculations, each declared once: name, meaning, unit, range, default, words.
//!
//! Errors carry a [`Parameter`] and the number that was found ([`ParameterError`]); checks read its range from here
//! ([`Check`]); the documentation of requests, the JSON Schema and the signatures and texts of all doors are made from
//! it. A parameter that looks like another but has another range or default is another parameter, with another name.

mod error;
mod label;
mod range;
#[cfg(all(test, feature = "table-texts"))]
mod tests;
mod unit;

pub use error::{Check, Found, ParameterError, ParameterErrors, Problem, Relation};
pub(crate) use error::{Checked, Checking};
pub use range::Range;
use range::SiRange;
#[cfg(feature = "document")]
pub(crate) use range::{Number, Shown};
pub use unit::PlainUnit;
#[cfg(any(feature = "document", feature = "table"))]
pub(crate) use unit::unit_symbol;

/// The default of a parameter.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum IfOmitted {
    /// It must be given.
    Required,
    /// This number, in the unit of the parameter.
    Value(f64),
    /// This word.
    Word(&'static str),
    /// The value of another parameter.
    As(Parameter),
    /// None of it: 0.
    Zero,
    /// Nothing: it is not known, or does not apply.
    Nothing,
    /// As this text has it.
    Text(&'static str),
}

/// The declaration of a parameter.
#[derive(Debug)]
struct Spec {
    name: &'static str,
    meaning: &'static str,
    unit: PlainUnit,
    range: Option<Range>,
    in_si: SiRange,
    #[cfg(feature = "table-texts")]
    range_text: &'static str,
    if_omitted: IfOmitted,
    #[cfg(feature = "table-texts")]
    text: &'static str,
    fix: &'static str,
}

/// Declares the table, and `parameter!(name)`: the text of one parameter for a doc comment.
macro_rules! parameters {
    ($($Variant:ident $name:ident $Unit:ident ($($range:tt)*) ($($omitted:tt)*) $meaning:literal $($fix:literal)?;)*) => {
        /// A parameter of a calculation.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[non_exhaustive]
        pub enum Parameter { $(#[doc = $meaning] $Variant,)* }

        impl Parameter {
            /// All parameters, by name.
            pub const ALL: &'static [Self] = &[$(Self::$Variant,)*];

            /// Their declarations, in the same order. All that a check needs is worked out at compile time.
            const SPECS: &'static [Spec; Self::ALL.len()] = &[$(Spec {
                name: stringify!($name),
                meaning: $meaning,
                unit: PlainUnit::$Unit,
                range: range!($($range)*),
                in_si: SiRange::of(range!($($range)*), PlainUnit::$Unit),
                #[cfg(feature = "table-texts")]
                range_text: range_text!($($range)*),
                if_omitted: if_omitted!($($omitted)*),
                #[cfg(feature = "table-texts")]
                text: concat!($meaning, " Unit: ", unit::unit_symbol!($Unit), "; ", range_text!($($range)*), ".", omitted_text!($($omitted)*)),
                fix: fix!($Unit $($fix)?),
            },)*];
        }

        #[cfg(any(feature = "document", feature = "table"))]
        macro_rules! parameter {
            $(
                ($name) => { concat!($meaning, " Unit: ", $crate::parameter::unit_symbol!($Unit), "; ", $crate::parameter::range_text!($($range)*), ".", $crate::parameter::omitted_text!($($omitted)*)) };
                ($Variant) => { $crate::parameter::parameter!($name) };
            )*
        }
        #[cfg(any(feature = "document", feature = "table"))]
        pub(crate) use parameter;
    };
}

#[allow(clippy::unnecessary_cast)] // whole numbers and others alike
macro_rules! range {
    (text $text:literal) => {
        None
    };
    (density) => {
        Some(Range::new(0.001, 25.0))
    };
    (above $least:literal to $most:literal) => {
        Some(Range::new($least as f64, $most as f64).above())
    };
    (above $least:literal below $most:literal) => {
        Some(Range::new($least as f64, $most as f64).above().below())
    };
    ($least:literal to $most:literal) => {
        Some(Range::new($least as f64, $most as f64))
    };
    ($least:literal below $most:literal) => {
        Some(Range::new($least as f64, $most as f64).below())
    };
}

#[cfg(any(feature = "document", feature = "table"))]
macro_rules! range_text {
    (text $text:literal) => {
        $text
    };
    (density) => {
        "0.001 to 25"
    };
    (above $least:literal to $most:literal) => {
        concat!("above ", $least, " to ", $most)
    };
    (above $least:literal below $most:literal) => {
        concat!("above ", $least, " to below ", $most)
    };
    ($least:literal to $most:literal) => {
        concat!($least, " to ", $most)
    };
    ($least:literal below $most:literal) => {
        concat!($least, " to below ", $most)
    };
}

macro_rules! if_omitted {
    (required) => {
        IfOmitted::Required
    };
    (zero) => {
        IfOmitted::Zero
    };
    (nothing) => {
        IfOmitted::Nothing
    };
    (= $value:literal) => {
        IfOmitted::Value($value as f64)
    };
    (word $word:literal) => {
        IfOmitted::Word($word)
    };
    (as $Other:ident $other:ident) => {
        IfOmitted::As(Parameter::$Other)
    };
    (text $text:literal) => {
        IfOmitted::Text($text)
    };
}

#[cfg(any(feature = "document", feature = "table"))]
macro_rules! omitted_text {
    (required) => {
        ""
    };
    (zero) => {
        " Default: 0."
    };
    (nothing) => {
        " Default: none."
    };
    (= $value:literal) => {
        concat!(" Default: ", stringify!($value), ".")
    };
    (word $word:literal) => {
        concat!(" Default: ", $word, ".")
    };
    (as $Other:ident $other:ident) => {
        concat!(" Default: as ", stringify!($other), ".")
    };
    (text $text:literal) => {
        concat!(" Default: ", $text, ".")
    };
}
#[cfg(any(feature = "document", feature = "table"))]
pub(crate) use {omitted_text, range_text};

macro_rules! fix {
    ($Unit:ident $fix:literal) => {
        $fix
    };
    (Pure) => {
        "Check the number; a share is a pure number: 0.05 for 5 %."
    };
    (Count) => {
        "Check the number."
    };
    (GramPerMilliliter) => {
        "Weigh a measured volume and divide: grams by milliliters, e.g. 1.03 g/mL."
    };
    ($Unit:ident) => {
        "Check the sign and the unit."
    };
}

parameters! {
    GreenRed a Pure (-200 to 200) (required)
        "a* of the color: green below 0, red above.";
    AbsolutePressure absolute_pressure Kilopascal (0 to 180) (nothing)
        "Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum.";
    ActivationEnergy activation_energy KilojoulePerMole (10 to 500) (required)
        "Activation energy of the decay in the heat; state its source in a book.";
    Actuals actuals None (text "an actuals document") (required)
        "Masses that were weighed and shots that were made.";
    After after None (text "a date") (nothing)
        "Only records of later days count: the last day that the book has learned from."
        "Write a date such as \"2027-03-05\".";
    Aim aim Celsius (text "in the shot window") (text "the middle of the window")
        "The temperature to heat to.";
    AirPressure air_pressure Kilopascal (45 to 110) (= 101.325)
        "Air pressure at the balance, not reduced to sea level."
        "Give the local (station) pressure: about 101.3 kPa at sea level, 90 kPa at 1000 m.";
    Alike alike None (text "count or area") (word "area")
        "What the two doses of flake have in common: the number of particles or the area of film.";
    Altitude altitude Meter (-5000 to 11000) (nothing)
        "Height above sea level, as a map gives it; negative below it.";
    Amount amount None (text "0 or above; a temperature above absolute zero") (required)
        "An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`.";
    AsMeasuredDensity as_measured_density GramPerMilliliter (density) (nothing)
        "Density of the material in a measure: of a liquid its density, of a powder its bulk density, level and not tapped.";
    AsScooped as_scooped GramPerMilliliter (density) (nothing)
        "Bulk density of a powder, level in the spoon and not tapped.";
    BlueYellow b Pure (-200 to 200) (required)
        "b* of the color: blue below 0, yellow above.";
    BalanceCapacity balance_capacity Gram (1e-12 to 1e15) (text "5000 times its readability")
        "Highest load of the balance.";
    BalanceLeastLoad balance_least_load Gram (0 to 1e15) (zero)
        "Minimum load for which the balance is trusted.";
    BalanceReadability balance_readability Gram (1e-12 to 1e15) (nothing)
        "Smallest difference that the balance shows; without it there is no balance."
        "Give the smallest step that the balance shows, such as 0.01 g.";
    BallDensity ball_density GramPerMilliliter (density) (required)
        "Density of the ball: 7.8 g/mL of steel.";
    BallDepth ball_depth Millimeter (1 to 10000) (required)
        "How deep the ball sank, let go below the surface.";
    BallDiameter ball_diameter Millimeter (0.001 to 50) (required)
        "Diameter of the ball, much smaller than that of the vessel.";
    BallTime ball_time Second (0.01 to 1e6) (required)
        "Time that the ball took.";
    BaseAmount base_amount None (text "above 0, mL or g") (text "the formula's own `per`")
        "The base to make the formula for.";
    BaseColor base_color None (text "a color") (required)
        "Color of the base without colorants, poured as a test piece.";
    BaseDensity base_density GramPerMilliliter (density) (required)
        "Density of the base, cold and liquid, as a cup measures it.";
    BaseFraction base_fraction Pure (above 0 to 1) (required)
        "Share of base in the mix, by mass.";
    BaseInPot base_in_pot None (text "above 0, mL or g") (text "that of the pot of the plan; else amounts are not calculated")
        "The base in the pot, cold and liquid as a cup measures it, or weighed.";
    BaseMass base_mass Gram (1e-12 to 1e15) (required)
        "Mass of base that the formula is for.";
    BaseMaterial base_material None (text "as in a book") (required)
        "The material of the base and its properties.";
    BaseVolume base_volume Milliliter (1e-9 to 1e15) (required)
        "Volume of the base, cold and liquid, as a cup measures it.";
    Bench bench None (text "as in a book") (required)
        "The tools on the bench.";
    Body body None (text "a stick or a ball") (required)
        "Shape and size of the piece as it sinks.";
    BodyAs body_as None (text "a name") (text "that of `save_as` with `body` after it")
        "Name to save the body under, if the book does not have it.";
    Book book None (text "a book document") (text "the open book; required without one")
        "The shop's book.";
    BrokenCups broken_cups None (text "capacities of the bench's cups") (nothing)
        "Cups that cannot be used any more.";
    BrokenMolds broken_molds None (text "molds of the book") (nothing)
        "Molds that cannot be used any more; what is owed of them is reported as not made.";
    Budget budget None (text "maximum pots and work of the plan") (text "5000 pots and 10 million steps")
        "What the plan may take before it is refused.";
    BudgetWith budget_with Pure (0 to 1) (zero)
        "Stabilizer that the heat budget is stated for, by mass of base.";
    BurstStep burst_step Second (1e-3 to 3600) (= 5)
        "Shortest burst that can be set, of which the others are multiples.";
    Buys buys None (text "as of a material in a book") (nothing)
        "Heat that more of the stabilizer buys.";
    CalibratedMaterial calibrated_material None (text "a name") (nothing)
        "The material of a book that the answer is for; the answer then includes the change to that book.";
    CalibratedMold calibrated_mold None (text "a name") (nothing)
        "The mold of a book that the answer is for; the answer then includes the change to that book.";
    CalibratedShape calibrated_shape None (text "a name") (nothing)
        "The shape, where that mold has unlike cavities.";
    CastPieces cast_pieces Count (1 to 1000000) (required)
        "Number of pieces that were cast.";
    Cavities cavities Count (1 to 1000000) (required)
        "Number of cavities that a shot fills.";
    CavityVolume cavity_volume Milliliter (1e-9 to 1e15) (required)
        "Volume of one cavity."
        "Measure it, e.g. by the weight of the water that it holds.";
    CleanMass clean_mass Gram (1e-12 to 1e15) (required)
        "Mass of the clean injector.";
    Cleanings cleanings Count (1 to 1000000) (= 1)
        "Number of times the injector is cleaned or goes cold, the last time included.";
    ClockFrom clock_from Celsius (-73 to 427) (nothing)
        "Temperature after the last burst; needed with `cools`.";
    ClockMix clock_mix None (text "at least what its shots take, g or mL") (required)
        "What is in the pot for its first heat: a mass, or a volume cold and liquid.";
    ClockRuns clock_runs None (1 to 1000) (required)
        "The pot's shots in their order, like ones together: of each run the number of shots, the mass that one takes, the working time for one, the time that it sets and the number of molds in turn. At most 100 000 shots.";
    ClockTo clock_to Celsius (-73 to 427) (nothing)
        "Temperature down to which the pot can be shot, above that of the room; needed with `cools`.";
    CloseEnough close_enough Pure (0.1 to 20) (= 1)
        "Difference in ΔE₀₀ that is close enough; about 1 is what a trained eye just sees side by side.";
    ColdDensity cold_density GramPerMilliliter (density) (required)
        "Density of the finished plastic at 20 °C, without voids.";
    Color color None (text "a color") (required)
        "A color, as lab, srgb, hex or bands.";
    Colorant colorant None (text "a colorant of the book") (required)
        "The colorant.";
    Colorants colorants None (text "one or more") (required)
        "The colorants by name, each with its test pieces.";
    Confidence confidence Pure (above 0 to 0.999999999) (= 0.9)
        "Confidence that enough good pieces come out.";
    Cooling cooling None (text "about the same amount, in a cooler room") (nothing)
        "How such a pot was seen to cool, and how long this one has been out of the oven.";
    Cools cools None (text "the second reading lower, the room cooler than both") (nothing)
        "A pot that was watched to cool: its amount, two readings and the time between them.";
    CostInMinorUnits cost Count (0 to 1000000000) (required)
        "Cost, in the smallest unit of the currency: cents.";
    CostMargin cost_margin Pure (0 below 1) (nothing)
        "Share of the price that the shop keeps (a markup on the cost is another thing). Without it there is no price.";
    Cup cup Milliliter (text "above 0") (text "the book's largest cup, as full as its limits allow")
        "Volume that the cup may hold.";
    CupCapacity cup_capacity Milliliter (1e-9 to 1e15) (required)
        "Volume of the cup up to its last mark.";
    CupMark cup_mark Milliliter (1e-9 to 1e15) (text "one mark alone, when it is full")
        "Distance between the marks of the cup.";
    Cups cups None (1 to 64) (nothing)
        "The cups with evenly spaced marks: of each the distance between marks and the capacity.";
    Cut cut None (text "0.05 to 6.35 mm") (required)
        "Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`.";
    DampAt damp_at Celsius (0.01 to 200) (nothing)
        "Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot.";
    Density density GramPerMilliliter (density) (required)
        "Density, without voids.";
    DensityUncertainty density_uncertainty GramPerMilliliter (0 to 25) (zero)
        "Standard uncertainty of the density of the piece; its bounds are counted at twice that.";
    Depth depth Meter (1e-9 to 12000) (nothing)
        "Depth to give the sink time for.";
    DialAccuracy dial_accuracy Pure (0 to 1) (= 0.03)
        "Accuracy of the vacuum gauge, as a share of its span.";
    DialSpan dial_span Kilopascal (1e-3 to 1000) (= 101.59167)
        "Maximum that the vacuum gauge shows.";
    DialTolerance dial_tolerance Kilopascal (0 to 101) (= 3.0477501)
        "How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial.";
    Diameter diameter Millimeter (1e-6 to 1e6) (required)
        "Mean diameter of the piece.";
    Diffusivity diffusivity SquareMeterPerSecond (1e-9 to 1e-5) (text "8.0e-8 m2/s, from 6.5e-8 to 1.0e-7")
        "Thermal diffusivity of the plastic.";
    DoseAmount dose_amount None (text "above 0; g, mL or drops") (required)
        "The dose as it is measured: weighed (a mass), by spoon (a volume) or in drops.";
    DoseRatio dose_ratio Pure (1e-9 to 10) (required)
        "Dose, mass per mass of base.";
    DoseStep dose_step Gram (1e-12 to 1e15) (required)
        "Smallest step in which a dose can be measured: a drop, the smallest spoon, the readability of the balance.";
    Doses doses None (1 to 64) (required)
        "The doses: of each its smallest step, its tolerance and its ratio to the base.";
    DragFactor drag_factor Pure (1e-3 to 1e3) (= 1)
        "Drag of the piece per drag of its shape, from a timed drop.";
    DropDensity drop_density GramPerMilliliter (density) (nothing)
        "Density of the piece that was dropped.";
    DropDepth drop_depth Meter (1e-9 to 12000) (nothing)
        "Depth of a timed drop, the piece let go just below the surface.";
    DropMass drop_mass Gram (1e-12 to 1e15) (nothing)
        "Mass of one drop."
        "Weigh 50 drops and divide.";
    DropTime drop_time Second (1e-6 to 1e9) (nothing)
        "Time of the timed drop.";
    DropsWeighed drops_weighed None (2 to 1000) (required)
        "Drops that were counted and weighed together, each weighing started over.";
    EmptiedMass emptied_mass Gram (1e-12 to 1e15) (required)
        "Mass of the injector emptied as at work; at least that of the clean one.";
    EntrainedAir entrained_air Pure (0 below 1) (required)
        "Share of air in the mix by volume, under the outside pressure.";
    EquivalentTime equivalent_time Second (0 to 1e15) (required)
        "Equivalent time that the pot has spent so far, at the temperature of its budget.";
    ExtraMost extra_most Pure (0 to 1) (nothing)
        "Highest dose of stabilizer for which the extra time is known, by mass of base.";
    ExtraTime extra_time Second (1e-6 to 1e15) (nothing)
        "Equivalent time that more of the stabilizer buys, per mass of it per mass of base: 30000 s is 5 min for every 1 %.";
    Feed feed Pure (0 to 1) (= 0.5)
        "Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).";
    FeedUncertainty feed_uncertainty Pure (0 to 1) (zero)
        "Standard uncertainty of the feed share, in points of it (10 %: 60 % is 50 % to 70 %).";
    FilmDensity film_density GramPerMilliliter (density) (required)
        "Density of the film that the flake is cut from.";
    FinishedAmount finished_amount None (text "above 0, g or mL") (nothing)
        "The finished mix to make: its mass, or its volume cold and liquid.";
    FinishedDensity finished_density GramPerMilliliter (density) (required)
        "Density of the finished plastic at 20 °C, voids counted.";
    FinishedMass finished_mass Gram (1e-12 to 1e15) (required)
        "Finished mass that contains the dose of flake.";
    FishedWater fished_water None (text "0 to 40 °C, salinity 0 to 42 g/kg") (required)
        "The water.";
    Flake flake None (text "as a material in a book") (required)
        "The flake: its cut, the thickness of its film, its density.";
    FlakeDose flake_dose Gram (1e-12 to 1e15) (required)
        "Mass of the dose of flake.";
    Form form None (text "one of the eight ways to state a loading") (required)
        "The way in which the salt loading is stated.";
    Formulas formulas None (text "formulas of the book") (required)
        "The formulas that are combined, by name.";
    FusedDensity fused_density GramPerMilliliter (density) (nothing)
        "Density of the fused plastisol at 20 °C, without voids.";
    GaugeVacuum gauge_vacuum Kilopascal (0 to 180) (nothing)
        "Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.";
    GoodPieces good_pieces None (text "order lines, counted from 1, each with a number of pieces") (text "as planned")
        "Pieces that are fit to sell so far.";
    Grain grain Millimeter (0.001 to 50) (required)
        "Size of a grain of salt: the opening of a sieve that it just passes.";
    GrainDensity grain_density GramPerMilliliter (density) (required)
        "True density of the grains, above that of the melt.";
    Hands hands Second (1e-3 to 1e15) (text "how often a shot can be made is not calculated")
        "Working time of a shot: fill, shoot, top off, take out.";
    Hardness hardness Pure (0 to 100) (required)
        "Durometer reading.";
    HardnessNow hardness_now Pure (0 to 100) (nothing)
        "Reading of a piece from the pot, on the scale of the book's points.";
    HardnessWanted hardness_wanted Pure (0 to 100) (nothing)
        "Reading that is wanted, on that scale.";
    HeatBudget heat_budget Second (1e-6 to 1e15) (nothing)
        "Time at the reference temperature that the plastisol withstands.";
    HeatStep heat_step None (text "the id of a step of the plan that heats") (required)
        "The heat of the plan that the pot is at.";
    HeatedFrom heated_from Celsius (-73 to 427) (required)
        "The temperature before heating.";
    HeatedTo heated_to Celsius (-73 to 427) (required)
        "The temperature after heating, above that before.";
    HeatedTogether heated_together None (text "alike: the same vessel, amounts within 10 %, from the same temperature") (nothing)
        "Further cups in the oven on the same clock.";
    HeatsBefore heats_before Count (0 to 1000000) (zero)
        "Number of earlier heats.";
    Hook hook None (text "mass and volume") (nothing)
        "Hook and weight on the piece.";
    HookMass hook_mass Gram (0 to 1e15) (zero)
        "Mass of hook and weight on a piece; give its volume too.";
    HookVolume hook_volume Milliliter (0 to 1e15) (zero)
        "Volume that hook and weight displace; give their mass too.";
    Hot hot None (text "true or false") (text "by the step; false for formulas")
        "Whether the pot is hot.";
    HotDensity hot_density GramPerMilliliter (density) (as ColdDensity cold_density)
        "Melt density at shot temperature, without voids; at most the cold one.";
    HotFor hot_for Second (1e-3 to 1e15) (text "from how it cools")
        "How long the pot stays hot at one heat, from the last burst to the last shot.";
    HotFrom hot_from Celsius (-73 to 427) (required)
        "Temperature after the last burst.";
    HotMix hot_mix None (text "above 0, g or mL") (required)
        "What is in the pot: a mass, or a volume cold and liquid.";
    HotTo hot_to Celsius (-73 to 427) (required)
        "Temperature down to which the pot can be shot, above that of the room.";
    HotVolume hot_volume Milliliter (1e-9 to 1e15) (as MixVolume mix_volume)
        "Volume of the mix before salt at shot temperature; at least the cold one.";
    InjectorCapacity injector_capacity Milliliter (1e-9 to 1e15) (required)
        "Volume that the injector takes up at most.";
    InjectorLeast injector_least Gram (1e-12 to 1e15) (nothing)
        "Smallest mix that the injector can draw from.";
    InjectorResidue injector_residue Milliliter (0 to 1e15) (zero)
        "Volume that stays in the injector each time it is emptied; below its capacity.";
    InjectorWeighed injector_weighed Gram (2 to 1000) (required)
        "Weighings of the injector, each clean and then emptied as at work.";
    Instead instead None (text "a multiple, a difference or an amount by material, or by a kind of which one material is in the pot") (required)
        "What went in instead of what was meant: `twice`, `half`, `3 times`, `none`, `+ 10 drops`, `- 3 g`, or an amount.";
    Instrument instrument None (text "a color") (text "none; then pictures")
        "Reading of an instrument, or of a picture that was balanced already.";
    Kind kind None (text "a kind of material") (required)
        "What the material is for; powders (pearl, flake, salt) are measured as scooped.";
    LayerShare layer_share Pure (above 0 to 1) (= 1)
        "Share of the cavity that this layer of a laminated piece fills.";
    LeaveOut leave_out None (text "colorants of the book") (nothing)
        "Colorants that may not go in.";
    Length length Millimeter (1e-6 to 1e6) (nothing)
        "Length of a stick, at least 2.01 diameters; not used for a ball.";
    Lightness lightness Pure (0 to 100) (required)
        "L* of the color: 0 for black, 100 for white.";
    LiquidVolume liquid_volume Milliliter (1e-9 to 1e15) (required)
        "Volume of the pot, cold and without air.";
    Loading loading Any (text "in the unit of its form") (required)
        "The salt loading, as its form states it.";
    LoadingRequested loading_requested None (text "exactly one of eight ways") (required)
        "The salt loading, stated in one of eight ways.";
    LongestBurst longest_burst Second (1e-3 to 3600) (= 120)
        "Longest burst without a stir, at least the shortest.";
    Made made Count (1 to 1000000) (= 1)
        "Number of good pieces that are made.";
    Mass mass Gram (0 to 1e15) (required)
        "Mass.";
    MassToMeasure mass_to_measure Gram (1e-12 to 1e15) (required)
        "Mass to measure.";
    Masses masses None (text "0 or more each, g") (required)
        "Mass of each material in the mix.";
    Material material None (text "as in a book") (required)
        "The material and its properties.";
    MaterialDensity material_density GramPerMilliliter (density) (nothing)
        "True density of the material; of a plastisol that of the liquid.";
    MaterialExpansion material_expansion PerKelvin (0 to 0.01) (nothing)
        "Volumetric thermal expansion of the material.";
    Materials materials None (text "as in a book") (required)
        "The materials by name.";
    Measures measures None (text "us-customary, us-label, metric or imperial") (word "us-customary")
        "The system of measures: what a cup, a spoon and a fluid ounce hold.";
    MeltDensity melt_density GramPerMilliliter (density) (required)
        "Density of the melt, hot.";
    MeltDepth melt_depth Millimeter (0.1 to 10000) (required)
        "Depth of the melt in its cup.";
    MeltViscosity melt_viscosity MillipascalSecond (0.1 to 1e7) (required)
        "Viscosity of the melt at shot temperature.";
    MeltViscosityMax melt_viscosity_max MillipascalSecond (0.1 to 1e7) (= 5000)
        "Highest viscosity that the melt may have at shot temperature, at least the lowest.";
    MeltViscosityMin melt_viscosity_min MillipascalSecond (0.1 to 1e7) (= 50)
        "Lowest viscosity that the melt may have at shot temperature. Where none is known, the defaults of both span what such melts may have.";
    Mix mix None (text "above 0, g or mL; beyond 1.6 times what was timed no time is given, and bursts are those of the safe side") (required)
        "What is heated: a mass, or a volume cold and liquid.";
    MixDensity mix_density GramPerMilliliter (density) (nothing)
        "Density of the mix before salt: its mass by its volume.";
    MixMass mix_mass Gram (1e-12 to 1e15) (text "the mass of its base")
        "Mass of the mix before salt; at least that of its base. Give its volume too.";
    MixNeeded mix_needed Gram (1e-12 to 1e15) (required)
        "Mass of mix that is needed.";
    MixVolume mix_volume Milliliter (1e-9 to 1e15) (as BaseVolume base_volume)
        "Volume of the mix before salt at 20 °C. Give its mass too.";
    Mold mold None (text "as in a book") (required)
        "The mold.";
    MoldAt mold_at Celsius (-73 to 427) (= 30)
        "Temperature of the mold before the shot, below that at which a piece is taken out.";
    MoldCooling mold_cooling None (text "metal, cooler than the piece is taken out") (text "metal of 30 °C, taken out at 50 °C, so heavy that a shot does not warm it")
        "The mold: its temperature, that at which a piece is taken out, its mass.";
    MoldHeatCapacity mold_heat_capacity JoulePerKelvin (1e-15 to 1e18) (nothing)
        "Heat capacity of the mold.";
    MoldMass mold_mass Gram (1e-12 to 1e15) (nothing)
        "Mass of the mold. Without it the mold is taken to keep its temperature; with it the mass of the shot is needed.";
    MoldSpecificHeat mold_specific_heat JoulePerGramKelvin (0.1 to 10) (= 0.897)
        "Specific heat of the mold; the default is that of aluminum.";
    Molds molds Count (1 to 1000000) (= 1)
        "Number of such molds that are shot in turn.";
    MoreLines more_lines None (text "order lines") (nothing)
        "Order lines that came in since.";
    MostSolids most_solids Pure (above 0 below 1) (= 0.3)
        "Maximum share of salt in the finished mix, by true volume.";
    NextTarget next_target None (text "a color") (text "the color of `target_like`")
        "The color to come to.";
    OnPurpose on_purpose None (text "materials, or kinds of which one material is in the pot") (nothing)
        "What went in otherwise on purpose: no fault at all.";
    Orders orders None (text "an orders document") (required)
        "The order list.";
    OrdersNow orders_now None (text "an orders document") (text "that of the plan")
        "The order list of the whole day as it is by now; what is made and used of it is taken off.";
    OtherGreenRed other_a Pure (-200 to 200) (required)
        "a* of the other color.";
    OtherAsScooped other_as_scooped GramPerMilliliter (density) (nothing)
        "Bulk density of the other flake, level in the spoon.";
    OtherBlueYellow other_b Pure (-200 to 200) (required)
        "b* of the other color.";
    OtherCut other_cut None (text "0.05 to 6.35 mm") (required)
        "Size and shape of the other flake.";
    OtherFilmDensity other_film_density GramPerMilliliter (density) (required)
        "Density of the film of the other flake.";
    OtherFlake other_flake None (text "as a material in a book") (nothing)
        "The flake that takes its place.";
    OtherLightness other_lightness Pure (0 to 100) (required)
        "L* of the other color.";
    OtherThickness other_thickness Micrometer (1e-3 to 6350) (required)
        "Thickness of the film of the other flake; below the size of its cut.";
    OvenLeast oven_least Gram (1e-12 to 1e15) (nothing)
        "Smallest mix that the oven heats evenly.";
    OvenPower oven_power Watt (50 to 10000) (nothing)
        "Rated power of the oven, its output at full power: a first guess, not used once there are timings; needed without them.";
    OvenTime oven_time Second (0 to 1e15) (text "it is not counted")
        "How long the oven runs for one heat.";
    OvenTurn oven_turn Second (0 to 3600) (= 30)
        "How long a turn of full power and none takes at a setting below full power.";
    Overlap overlap None (text "refuse, add or last") (word "refuse")
        "What happens where two of the formulas dose the same material.";
    Packing packing None (text "a price per pieces, and the number of pieces in a pack") (nothing)
        "What goes into each pack.";
    Packs packs Count (1 to 1000000) (= 1)
        "Number of packs for the pieces; at most one for each piece.";
    Part part Count (1 to 1000) (required)
        "Which part of the mix, counted from 1.";
    PartDensity part_density GramPerMilliliter (density) (required)
        "True density of one part of a mix.";
    PartMass part_mass Gram (0 to 1e15) (required)
        "Mass of one part of a mix.";
    Parts parts None (1 to 1000) (required)
        "The parts of the mix: of each its mass and its true density. At least one has a mass above 0.";
    Per per None (text "above 0, mL or g") (text "that of the formulas it started from, else that of most formulas of the book")
        "Amount of base to write the formula for.";
    PerBase per_base None (text "above 0, g or mL") (required)
        "The base that the dose is for, as it is measured: weighed (a mass) or by cup (a volume).";
    Phase phase None (text "liquid or fused") (word "fused")
        "Whether the plastisol is liquid or fused.";
    Pictures pictures None (text "one or a list") (text "none; then an instrument's reading")
        "Pictures of the piece with a white or gray card in each, by the statistics of their pixels.";
    PieceDensity piece_density GramPerMilliliter (density) (required)
        "Density of the piece, its salt and voids counted.";
    PieceMass piece_mass Gram (1e-12 to 1e15) (required)
        "Mass of one piece; at most the finished mass.";
    PieceMold piece_mold None (text "a mold of the book") (nothing)
        "The mold of the piece: its section or its bodies say how thick the piece is, in place of `piece_thickness`.";
    PiecePoint piece_point None (text "center or mean") (word "center")
        "The point of a piece whose temperature counts.";
    PieceThickness piece_thickness Millimeter (0.01 to 1000) (nothing)
        "How thick the piece is where its color is seen; its color over white and over black is then calculated.";
    PieceVolume piece_volume Milliliter (1e-9 to 1e15) (required)
        "Volume of the piece without its hook.";
    PieceWeight piece_weight Gram (1e-12 to 1e15) (required)
        "Mass of one weighed piece."
        "Tare the balance and weigh that piece again.";
    Pieces pieces Count (1 to 1000000) (required)
        "Number of good pieces needed.";
    Plan plan None (text "a plan") (text "the open plan; required without one")
        "The plan of the day, as the library made it.";
    PointHardness point_hardness Pure (0 to 100) (required)
        "Durometer reading of a measured point.";
    PointRatio point_ratio Pure (0 to 100) (required)
        "Softener or hardener of a measured point, mass per mass of base.";
    PointSalt point_salt Pure (0 to 10) (required)
        "Salt of a measured point, mass per mass of base.";
    PointSoftener point_softener Pure (0 to 10) (required)
        "Softener that the shop adds at that salt, mass per mass of base.";
    Points points None (2 to 1000) (required)
        "The shop's own measured points, by rising ratio: of each the ratio and the durometer reading.";
    Pot pot None (text "the letter of a pot of the plan") (nothing)
        "The pot of the open plan; without it `formulas` say what the pot was meant to be.";
    PotBase pot_base None (text "above 0, mL or g") (text "`instead` names everything in the pot, each with its amount")
        "The base that the pot was meant for: what `instead` does not name then went in as the formulas have it.";
    PotFilm pot_film Gram (0 to 1e15) (zero)
        "Mass that clings to the wall of the cup, part of the heel.";
    PotHeel pot_heel Gram (0 to 1e15) (zero)
        "Mass that cannot be drawn from the cup, its film included.";
    PotMass pot_mass Gram (1e-12 to 1e15) (required)
        "Mass of the mix in the pot.";
    PotShots pot_shots Count (1 to 100000) (required)
        "Number of like shots in a row; at most 100 000 from one pot.";
    PotsNow pots_now None (text "pots by letter") (text "none is begun, but for ticks")
        "The pots that are begun, and others that are there, as they are now.";
    Reading reading Celsius (-73 to 427) (required)
        "Reading of the thermometer, in the stirred mix.";
    ReadingTemperature reading_temperature Celsius (-73 to 427) (required)
        "Temperature of a reading.";
    ReadingTime reading_time Second (0 to 1e15) (required)
        "Time of a reading, after that of the one before.";
    Readings readings None (2 to 100000) (required)
        "Temperatures in the order of time, taken as straight between.";
    Records records None (text "a list of records") (required)
        "Records of days, as the calculation `record` answers them; their order does not matter.";
    ReferenceTemperature reference_temperature Celsius (-73 to 427) (required)
        "Temperature at which the time is counted.";
    RejectCount reject_count Count (0 to 1000000) (required)
        "Number of them that are not fit to sell.";
    Rejects rejects Pure (0 below 1) (zero)
        "Share of pieces that are not fit to sell.";
    Replace replace None (text "true or false") (word "false")
        "Whether a formula that has the name already is replaced.";
    ReportedPressure reported_pressure Kilopascal (85 to 110) (nothing)
        "Air pressure as a weather report gives it, reduced to sea level; needs the altitude.";
    ResidueDensity residue_density GramPerMilliliter (density) (required)
        "Density of what stays in the injector, at the temperature at which it is emptied; its uncertainty is counted.";
    ResidueMass residue_mass Gram (0 to 1e15) (zero)
        "Mass that stays in the injector each time it is emptied.";
    Returned returned Pure (0 to 1) (zero)
        "Share of the sprues that is melted again.";
    ReturnedMass returned_mass Gram (0 to 1e15) (zero)
        "Mass of the mix that comes back: sprue that is melted again, leftover that is kept; at most the mass of the mix.";
    ReturnedWorth returned_worth Pure (0 to 1) (= 1)
        "Share of its material cost that it is still worth.";
    Rise rise Pure (1 to 1000) (nothing)
        "Level of a pot in the vacuum over its level before; give this or the entrained air.";
    Room room Celsius (-73 to 427) (= 20)
        "Temperature of the room, below all others.";
    SalinityAbsolute salinity_absolute Pure (0 to 0.042) (nothing)
        "Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical one."
        "Give 0 for fresh water, about 0.035 for the ocean.";
    SalinityPractical salinity_practical Pure (0 to 41.8) (nothing)
        "Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh water without either."
        "Give 0 for fresh water, about 35 for the ocean.";
    Salt salt None (text "as a material in a book") (required)
        "The salt: its true density, its bulk density as scooped.";
    SaltAsScooped salt_as_scooped GramPerMilliliter (density) (nothing)
        "Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs it."
        "Fine salt is about 1.2 g/mL as scooped.";
    SaltDensity salt_density GramPerMilliliter (density) (required)
        "True density of the salt: 2.165 g/mL for sodium chloride.";
    SaltExpansion salt_expansion PerKelvin (0 to 0.01) (zero)
        "Volumetric thermal expansion of the salt.";
    SaltOfBase salt_of_base Pure (0 to 10) (required)
        "Salt, mass per mass of base; between the measured points.";
    SaltSoftener salt_softener None (text "a material and its share of the salt") (nothing)
        "The softener that goes in with the salt.";
    SaltedBody salted_body None (text "a stick or a ball") (nothing)
        "Shape and size of the piece as it sinks, for its sink rate with and without the salt.";
    SaltedPoints salted_points None (2 to 1000) (required)
        "The shop's own measured points, by rising salt: of each the salt and the softener, mass per mass of base.";
    SaltedWater salted_water None (text "0 to 40 °C, salinity 0 to 42 g/kg") (nothing)
        "The water in which it sinks; needed with the body.";
    SaveAs save_as None (text "a name") (nothing)
        "Name to save the formula under; the answer then includes the change to the book.";
    Scale scale None (text "shore-00 or shore-a") (required)
        "The scale of the durometer.";
    ScoopsWeighed scoops_weighed None (2 to 1000) (required)
        "Level spoonfuls that were counted and weighed together, each weighing started over.";
    Section section None (text "0.2 to 200 mm") (required)
        "The thickest part of a piece: a rod, a plate or a ball.";
    SectionShape section_shape None (text "rod, plate or ball") (required)
        "Shape of the thickest part of a piece.";
    SectionThickness section_thickness Millimeter (0.2 to 200) (required)
        "Thickness of the thickest part of a piece; of a rod or a ball its diameter.";
    Seen seen None (text "a color") (text "as the last look of the trial's log says")
        "How a cooled sample of the cup looks now.";
    Sets sets Second (0 to 1e6) (zero)
        "Time that a shot sets in its mold.";
    Setting setting Pure (above 0 to 1) (text "that of the timings")
        "Setting of the oven, as a share of full power.";
    Shape shape None (text "stick or ball") (text "a stick where a length is given, else a ball")
        "Shape of the piece as it sinks: a stick sinks sideways.";
    ShotAt shot_at Celsius (-73 to 427) (required)
        "Temperature at which it is shot, above that at which it is taken out.";
    ShotDensity shot_density GramPerMilliliter (density) (required)
        "Density of what the injector draws: hot, voids counted.";
    ShotEvery shot_every Second (1e-3 to 1e15) (required)
        "Time from one shot to the next.";
    ShotHeatCapacity shot_heat_capacity JoulePerKelvin (1e-15 to 1e18) (required)
        "Heat capacity of the shot.";
    ShotMass shot_mass Gram (1e-12 to 1e15) (required)
        "Mass of one shot, sprue included.";
    ShotSpecificHeat shot_specific_heat JoulePerGramKelvin (0.1 to 10) (= 1.9)
        "Specific heat of the plastic.";
    ShotTemperature shot_temperature Celsius (20 to 427) (= 20)
        "Temperature at which the mix is shot.";
    ShotWindow shot_window None (text "the lower one first") (required)
        "Lowest and highest temperature at which it is shot.";
    Shots shots Count (1 to 100000000) (required)
        "Number of shots.";
    SinkRate sink_rate CentimeterPerSecond (1e-9 to 1e6) (required)
        "Sink rate: the final speed of the piece.";
    SoFar so_far None (text "what the answer before gave") (text "nothing, the plan is that of the whole list")
        "What was made and used of `orders_now` before the plan.";
    SoftenerDensity softener_density GramPerMilliliter (density) (nothing)
        "Density of the softener that goes in with the salt; needed with it.";
    SoftenerExpansion softener_expansion PerKelvin (0 to 0.01) (zero)
        "Volumetric thermal expansion of that softener.";
    SoftenerPerSalt softener_per_salt Pure (0 to 10) (zero)
        "Softener that goes in with the salt, mass per mass of salt.";
    SoftenerRatio softener_ratio Pure (0 to 100) (required)
        "Softener or hardener, mass per mass of base; between the measured points.";
    SolidsShare solids_share Pure (0 to 0.4) (zero)
        "Share of the grains in the volume; at 0 one grain alone."
        "Give at most 0.4 (40 %): with more, the grains hold each other up.";
    SpecificHeat specific_heat JoulePerGramKelvin (0.1 to 10) (required)
        "Specific heat of the mix, its salt counted.";
    SpecificHeatRise specific_heat_rise PerKelvin (-0.002 to 0.01) (zero)
        "Rise of the specific heat per kelvin, as a share of that at 25 °C, of what is heated and of what was timed.";
    SpentBefore spent_before Second (0 to 1e15) (text "not known after earlier heats")
        "Equivalent time of the earlier heats; above 0 only with heats_before.";
    Spoon spoon Milliliter (1e-9 to 1e15) (text "the dose is one spoonful")
        "Volume of the spoon; the dose is a whole number of spoonfuls.";
    SpoonVolume spoon_volume Milliliter (1e-9 to 1e15) (required)
        "Volume of the level spoon.";
    Spoons spoons Milliliter (1 to 8) (nothing)
        "Volumes of the measuring spoons.";
    SprueMass sprue_mass Gram (0 to 1e15) (zero)
        "Mass of a shot that stays as sprue; at most the mass of the shot.";
    SprueVolume sprue_volume Milliliter (0 to 1e15) (zero)
        "Volume of the sprue.";
    StabilizerDose stabilizer_dose Pure (0 to 1) (as BudgetWith budget_with)
        "Stabilizer in the mix, by mass of base.";
    Stage stage Count (1 to 1000) (= 1)
        "Which stage of the pot, counted from 1.";
    StationPressure station_pressure Kilopascal (22.6 to 178) (required)
        "Air pressure at the place itself, not reduced to sea level.";
    Step step None (text "the id of a step of the plan") (text "by pot and stage")
        "The step of the plan at which it happened, in place of pot and stage.";
    StillThere still_there None (text "above 0, at most all of it; g or mL") (text "all of it")
        "What is still in the cup, as its mass or its volume cold and liquid, where some of the pot has been shot.";
    Stood stood Second (0 to 1e15) (text "how hot it then is, is not calculated")
        "How long the pot has stood.";
    TakeOut take_out Celsius (-73 to 427) (= 50)
        "Temperature at which a piece can be taken out.";
    Target target None (text "a color") (required)
        "The color to match.";
    TargetLike target_like None (text "a formula of the book") (nothing)
        "A formula whose color, as a piece of it had it, is the target in place of `target`.";
    Temperature temperature Celsius (-73 to 427) (= 20)
        "Temperature of the mix.";
    TestPiece test_piece Gram (1 to 10000) (= 25)
        "Mass of base that fills the dish of a test piece so deep that nothing shows through.";
    Thermometer thermometer Kelvin (0 to 100) (= 2)
        "How far the thermometer may be off.";
    Thickness thickness Micrometer (1e-3 to 6350) (required)
        "Thickness of the film; below the size of the cut.";
    Ticks ticks None (text "ids of the plan's steps or of their items") (nothing)
        "Steps, or items of steps, that are done; `pots_now` overrides them.";
    TimedBall timed_ball None (text "sinking at a Reynolds number below 800") (nothing)
        "A ball that was timed as it sank in the melt, in place of the viscosity.";
    TimedDensity timed_density GramPerMilliliter (density) (nothing)
        "Density of the mix, cold and liquid; needed where a volume is given.";
    TimedFrom timed_from Celsius (-73 to 427) (required)
        "Temperature before a timed heating.";
    TimedMass timed_mass Gram (1e-12 to 1e15) (required)
        "Mass of the mix in a timed heating.";
    TimedSpecificHeat timed_specific_heat JoulePerGramKelvin (0.1 to 10) (as SpecificHeat specific_heat)
        "Specific heat of what was timed.";
    TimedTime timed_time Second (1e-3 to 1e9) (required)
        "Time that the oven ran in a timed heating.";
    TimedTo timed_to Celsius (-73 to 427) (required)
        "Temperature after a timed heating, stirred; above that before.";
    Timings timings None (1 to 1000) (nothing)
        "Heatings that the shop has timed, all at one setting: of each the mass of the mix, the temperatures before and after and the time; needed without the rated power.";
    To to None (text "a unit of the same dimension") (required)
        "The unit of the answer, by trade symbol or UCUM code.";
    ToForm to_form None (text "one of the eight ways to state a loading") (required)
        "The way in which the loading is to be stated.";
    Tolerance tolerance Pure (above 0 below 1) (= 0.05)
        "Largest relative error that is accepted.";
    ToppedMass topped_mass Gram (0 to 1e15) (zero)
        "Mass that topping off and holding add.";
    Trace trace Pure (0 to 1) (zero)
        "Share of the pot's mass up to which a material that does not belong in it is ignored.";
    Trial trial None (text "a start and a log") (required)
        "The trial: what it started from, and what was added and taken since.";
    Trouble trouble None (text "a trouble by its word") (text "all of them")
        "The trouble.";
    Unit unit None (text "a unit") (required)
        "The unit of the number, by trade symbol or UCUM code.";
    Unstirred unstirred Pure (0.001 to 1) (= 0.1)
        "Share of the depth that may be without grains before it is stirred.";
    Vacuum vacuum None (text "as in a book") (required)
        "The vacuum, and what a pot does in it.";
    Value value Any (text "0 or above; a temperature above absolute zero") (required)
        "The number to convert.";
    VaporPressure vapor_pressure Kilopascal (0 to 180) (zero)
        "Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber.";
    VesselBrim vessel_brim Milliliter (1e-9 to 1e15) (required)
        "Volume of the vessel up to its brim.";
    VesselHeatCapacity vessel_heat_capacity JoulePerKelvin (0 to 1e18) (text "left to the timings")
        "Heat capacity of the vessel.";
    VesselMark vessel_mark Milliliter (1e-9 to 1e15) (text "any level")
        "Distance between the vessel's marks.";
    VesselMass vessel_mass Gram (1e-12 to 1e15) (text "left to the timings")
        "Mass of the vessel.";
    VesselSpare vessel_spare Pure (0 below 1) (= 0.1)
        "Share of the vessel that stays empty.";
    VesselSpecificHeat vessel_specific_heat JoulePerGramKelvin (0.1 to 10) (nothing)
        "Specific heat of the vessel.";
    Viscosity viscosity None (text "0.0001 to 10 000 Pa.s, the lower one first") (text "by the ball, else all that such melts may have, 0.05 to 5 Pa.s")
        "Lowest and highest viscosity of the melt at shot temperature.";
    Voids voids Pure (0 below 1) (zero)
        "Void fraction: share of the volume that is air.";
    Volume volume Milliliter (0 to 1e15) (required)
        "Volume.";
    VolumeUncertainty volume_uncertainty Milliliter (0 to 1e15) (zero)
        "Standard uncertainty of the volume.";
    WatchedFrom watched_from Celsius (-73 to 427) (required)
        "First reading of a pot that was watched to cool, from its second minute on, stirred.";
    WatchedMass watched_mass Gram (1e-12 to 1e15) (required)
        "Mass of the mix in a pot that was watched to cool.";
    WatchedTime watched_time Second (1e-3 to 1e9) (required)
        "Time between the two readings of a pot that was watched to cool.";
    WatchedTo watched_to Celsius (-73 to 427) (required)
        "Second reading of a pot that was watched to cool, stirred; below the first and above that of the room.";
    WaterDensity water_density GramPerMilliliter (density) (required)
        "Density of the water.";
    WaterMass water_mass Gram (1e-12 to 1e15) (required)
        "Reading of the balance for the water in one cavity: filled less empty."
        "Weigh the mold empty and filled with water, and give the difference.";
    WaterTemperature water_temperature Celsius (0 to 40) (required)
        "Temperature of the water."
        "Give the temperature of the water, 0 to 40 °C.";
    WaterViscosity water_viscosity MillipascalSecond (1e-9 to 1e9) (required)
        "Dynamic viscosity of the water.";
    WeighedCount weighed_count Count (1 to 1000000) (required)
        "Number of drops or spoonfuls of a weighing.";
    WeighedMass weighed_mass Gram (1e-12 to 1e15) (required)
        "What they weigh together, net.";
    Weights weights Gram (2 to 100000) (required)
        "Mass of each piece, one by one.";
    WindowBottom window_bottom Celsius (-73 to 427) (required)
        "Lowest temperature at which the mix is shot, its material's own.";
    WindowTop window_top Celsius (-73 to 427) (required)
        "Highest temperature at which the mix is shot, its material's own; above the lowest.";
    WithMaterial with_material None (text "a softener or hardener of the book") (text "the first by name that the book has readings of")
        "What to soften or harden with.";
    WorkRate work_rate None (text "a price per time") (nothing)
        "The rate of work, such as `18.00 USD per 1 h`; needed where work_time is given.";
    WorkTime work_time Second (0 to 1e15) (zero)
        "Time that the work takes.";
    WrittenIn written_in None (text "mass, volume or drops") (word "mass")
        "Measure that the formula doses the material in.";
}

impl Parameter {
    /// Its declaration. An array and not a `match`, whose hundreds of arms would keep checks from being inlined.
    #[allow(clippy::indexing_slicing)] // there is one for each parameter
    #[inline]
    const fn spec(self) -> &'static Spec {
        &Self::SPECS[self as usize]
    }

    /// Name, without its unit, as requests write it; where one word of a request has two meanings, a longer one.
    #[must_use]
    pub const fn name(self) -> &'static str {
        self.spec().name
    }

    /// The meaning, in sentences.
    #[must_use]
    pub const fn meaning(self) -> &'static str {
        self.spec().meaning
    }

    /// The unit of the plain number.
    #[inline]
    #[must_use]
    pub const fn unit(self) -> PlainUnit {
        self.spec().unit
    }

    /// The numbers that are accepted, in [`Parameter::unit`]; of a list, how many elements it may have. `None` where it
    /// is not a number or what counts depends on others.
    #[inline]
    #[must_use]
    pub const fn range(self) -> Option<Range> {
        self.spec().range
    }

    /// The numbers that are accepted, in words.
    #[cfg(feature = "table-texts")]
    #[must_use]
    pub const fn range_text(self) -> &'static str {
        self.spec().range_text
    }

    /// The default.
    #[inline]
    #[must_use]
    pub const fn if_omitted(self) -> IfOmitted {
        self.spec().if_omitted
    }

    /// Meaning, unit, range and default in one text, as in the documentation of requests.
    #[cfg(feature = "table-texts")]
    #[must_use]
    pub const fn text(self) -> &'static str {
        self.spec().text
    }

    /// The fix for a number out of range.
    pub(crate) const fn fix(self) -> &'static str {
        self.spec().fix
    }

    /// The words that it takes; empty where it is not a word.
    #[must_use]
    pub const fn words(self) -> &'static [&'static str] {
        match self {
            Self::Measures => crate::quantity::System::WORDS,
            Self::Form | Self::ToForm => crate::salt::SaltForm::WORDS,
            Self::Scale => crate::softener::Scale::WORDS,
            Self::Phase => crate::mix::Phase::WORDS,
            Self::Alike => crate::flake::Alike::WORDS,
            Self::Shape => crate::process::sink::Outline::WORDS,
            Self::Kind => crate::material::Kind::WORDS,
            Self::SectionShape => crate::process::shot_cooling::SectionShape::WORDS,
            Self::PiecePoint => crate::process::shot_cooling::Point::WORDS,
            _ => &[],
        }
    }

    /// The parameters of each element of a list: one parameter of a list of numbers, two of a list of pairs, and so on; empty where
    /// it is not a list.
    #[must_use]
    pub const fn columns(self) -> &'static [Self] {
        match self {
            Self::Parts => &[Self::PartMass, Self::PartDensity],
            Self::Points => &[Self::PointRatio, Self::PointHardness],
            Self::SaltedPoints => &[Self::PointSalt, Self::PointSoftener],
            Self::Doses => &[Self::DoseStep, Self::Tolerance, Self::DoseRatio],
            Self::Cups => &[Self::CupMark, Self::CupCapacity],
            Self::Spoons => &[Self::SpoonVolume],
            Self::Weights => &[Self::PieceWeight],
            Self::DropsWeighed | Self::ScoopsWeighed => &[Self::WeighedCount, Self::WeighedMass],
            Self::InjectorWeighed => &[Self::CleanMass, Self::EmptiedMass],
            Self::Readings => &[Self::ReadingTime, Self::ReadingTemperature],
            Self::Timings => &[Self::TimedMass, Self::TimedFrom, Self::TimedTo, Self::TimedTime],
            Self::ClockRuns => {
                &[Self::PotShots, Self::ShotMass, Self::Hands, Self::Sets, Self::Molds]
            }
            _ => &[],
        }
    }

    /// Whether it is a list, of numbers or of pairs.
    #[must_use]
    pub const fn is_list(self) -> bool {
        !self.columns().is_empty()
    }

    /// The parameter that states it, where it is not stated itself but follows from others.
    #[must_use]
    pub const fn stated_by(self) -> Self {
        match self {
            Self::MixDensity => Self::MixMass,
            other => other,
        }
    }

    /// The default as a number in [`Parameter::unit`], where it is one.
    #[must_use]
    pub const fn default_number(self) -> Option<f64> {
        match self.if_omitted() {
            IfOmitted::Value(number) => Some(number),
            IfOmitted::Zero => Some(0.0),
            _ => None,
        }
    }

    /// The default in SI units, where it is a number; else 0.
    #[inline]
    pub(crate) const fn default_si(self) -> f64 {
        match self.if_omitted() {
            IfOmitted::Value(number) => self.unit().to_si(number),
            _ => 0.0,
        }
    }

    /// Whether `si`, in SI units, is a number in the range.
    #[inline]
    pub(crate) const fn holds_si(self, si: f64) -> bool {
        self.spec().in_si.holds(si)
    }

    /// `si`, in SI units, where it is a number in the range.
    ///
    /// # Errors
    /// [`Problem::NotFinite`] or [`Problem::OutOfRange`].
    #[inline]
    pub fn check_si(self, si: f64) -> Result<f64, ParameterError> {
        if self.holds_si(si) { Ok(si) } else { Err(self.outside(si)) }
    }

    /// Why `si`, in SI units, is refused.
    #[cold]
    pub(crate) fn outside(self, si: f64) -> ParameterError {
        let problem = if si.is_finite() {
            Problem::OutOfRange(self.unit().from_si(si))
        } else {
            Problem::NotFinite(si)
        };
        ParameterError::new(self, problem)
    }
}

/// The code with which `x`, which is in no range, is refused.
#[cfg(test)]
pub(crate) fn refused_as(x: f64) -> &'static str {
    if x.is_finite() { "out-of-range" } else { "not-finite" }
}

/// The name alone, as a message of a door that shows names has it.
impl core::fmt::Display for Parameter {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.name())
    }
}
