//! The table.

use core::fmt;

use crate::parameter::{PlainUnit, Range};

/// Declares the table: name in words, unit, what is possible, what is likely, the units that are mixed up, why, and the source.
macro_rules! quantities {
    ($($Quantity:ident $name:literal $Unit:ident possible $a:literal $b:literal likely $c:literal $d:literal
        slips [$($slip:literal)*] $reason:literal $source:literal;)*) => {
        /// A number of a book or its orders that has plausible bounds.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        #[non_exhaustive]
        pub enum Quantity { $(#[doc = $name] $Quantity,)* }

        impl Quantity {
            /// All of them.
            pub const ALL: &'static [Self] = &[$(Self::$Quantity,)*];

            /// Its unit in this table; a share is a pure number.
            #[must_use]
            pub const fn unit(self) -> PlainUnit {
                match self { $(Self::$Quantity => PlainUnit::$Unit,)* }
            }

            /// The range outside of which it cannot be.
            #[must_use]
            pub const fn possible(self) -> Range {
                match self { $(Self::$Quantity => Range::new($a, $b),)* }
            }

            /// The range outside of which it looks like a slip.
            #[must_use]
            pub const fn likely(self) -> Range {
                match self { $(Self::$Quantity => Range::new($c, $d),)* }
            }

            /// Units that it is mistakenly written in.
            pub(super) const fn slips(self) -> &'static [&'static str] {
                match self { $(Self::$Quantity => &[$($slip),*],)* }
            }

            /// Why it cannot be outside of its possible range.
            #[must_use]
            pub const fn reason(self) -> &'static str {
                match self { $(Self::$Quantity => $reason,)* }
            }

            /// Source of the possible range; the likely one is common practice, no source.
            #[cfg(any(test, feature = "schema"))]
            #[must_use]
            pub const fn source(self) -> &'static str {
                match self { $(Self::$Quantity => $source,)* }
            }
        }

        impl fmt::Display for Quantity {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(match self { $(Self::$Quantity => $name,)* })
            }
        }
    };
}

quantities! {
    // At 230 °C k = 10^12.9 exp(-170 kJ/mol / RT) is about 120 times that at 177 °C.
    ShotTemperature "A shot temperature" Celsius possible 70.0 230.0 likely 140.0 200.0 slips ["°F" "°C"]
        "plastisol is not fused below it, and above it PVC soon gives off hydrogen chloride"
        "gelling from 72 °C: Wilson 1995, in Danish EPA 2010, Table 2.3; loss of HCl: Šimon & Valko 1982, Collect. Czech. Chem. Commun. 47:2336; at 200 °C PVC is tested for it: IEC 60811-3-2";
    BudgetTemperature "The temperature of a heat budget" Celsius possible 70.0 230.0 likely 120.0 210.0 slips ["°F" "°C"]
        "plastisol is not fused below it, and above it PVC soon gives off hydrogen chloride"
        "as of a shot temperature";
    PlastisolDensity "The density of a plastisol" GramPerMilliliter possible 0.7 3.0 likely 0.9 1.6 slips ["kg/m3"]
        "PVC and its plasticizers are between these, even with filler"
        "plasticizers 0.92 to 0.99 g/mL (supplier data, from memory); PVC 1.38 to 1.40 g/mL (reference-property bulletin); calcite 2.71 g/mL (CRC Handbook)";
    LiquidDensity "The density of a liquid" GramPerMilliliter possible 0.5 4.5 likely 0.7 2.5 slips ["kg/m3"]
        "no liquid that is stirred into plastisol has it"
        "water 0.998 g/mL (IAPWS-95); dispersions of titanium dioxide stay below its 3.9 g/mL (CRC Handbook)";
    SolidDensity "The true density of a solid" GramPerMilliliter possible 0.01 22.6 likely 0.02 12.0 slips ["kg/m3"]
        "no solid has it"
        "osmium 22.59 g/mL, the densest element (from memory)";
    ScoopedDensity "The density as scooped" GramPerMilliliter possible 0.005 15.0 likely 0.03 5.0 slips ["kg/m3"]
        "no powder has it"
        "PVC resin powder 0.43 to 0.52 g/mL (ASTM D1755); the bounds: common practice, no source";
    Packing "The density as scooped, as a share of the true one," Pure possible 0.001 1.0 likely 0.03 0.9 slips []
        "a powder is part grains and part air"
        "spheres of one size fill at most 74 % (Hales 2005, Ann. Math. 162, from memory); the lower bound: common practice, no source";
    DropMass "The mass of a drop" Gram possible 0.0005 2.0 likely 0.006 0.25 slips ["mg"]
        "a drop hangs by its surface tension, and that holds no more"
        "20 drops per mL: UCUM [drp], pharmacy practice; the bounds: common practice, no source";
    DropVolume "The volume of a drop" Milliliter possible 0.0005 2.0 likely 0.006 0.25 slips ["uL"]
        "a drop hangs by its surface tension, and that holds no more"
        "20 drops per mL: UCUM [drp], pharmacy practice; the bounds: common practice, no source";
    Expansion "The expansion" PerKelvin possible 0.0 0.003 likely 0.000001 0.0018 slips []
        "no liquid and no solid expands more"
        "plasticized PVC 2.1e-4 to 7.5e-4 1/K (material database); DIDP 7.4e-4 1/K (plastics additives handbook); the bounds: common practice, no source";
    SpecificHeat "The specific heat" JoulePerGramKelvin possible 0.1 5.0 likely 0.3 4.3 slips ["J/(kg.K)"]
        "water has one of the highest, 4.18 J/(g.K), and metals some of the lowest"
        "water 4.184 J/(g.K) (IAPWS-95); DEHP 1.80 J/(g.K) (Zábranský et al.); PVC 0.945 J/(g.K) (Chang 1977)";
    SpecificHeatRise "The rise of the specific heat" PerKelvin possible -0.02 0.02 likely 0.0 0.005 slips []
        "no liquid and no solid warms so unevenly"
        "DEHP 1.3e-3 1/K, PVC 2.9e-3 1/K at room temperature (from memory); the bounds: common practice, no source";
    ActivationEnergy "The activation energy" KilojoulePerMole possible 20.0 500.0 likely 60.0 300.0 slips ["J/mol"]
        "nothing decays in the heat like that"
        "117.5 kJ/mol (Dean et al. 1988, Polym. Degrad. Stab. 22:31); 170 kJ/mol (Šimon & Valko 1982); the bounds: common practice, no source";
    Thickness "The thickness of a flake" Micrometer possible 0.5 5000.0 likely 4.0 500.0 slips ["um" "mm"]
        "no film that flake is cut from has it"
        "common practice, no source";
    Grain "A grain" Millimeter possible 0.0005 20.0 likely 0.005 5.0 slips ["um" "mm"]
        "no sieve for salt has such an opening"
        "common practice, no source";
    SmallDose "A dose of color, pearl, flake, scent or stabilizer per base" Pure possible 0.0 2.0 likely 0.0 0.3 slips []
        "the pot would hold more of it than of base"
        "common practice, no source";
    Dose "A dose per base" Pure possible 0.0 5.0 likely 0.0 1.5 slips []
        "the pot would hold many times more of it than of base"
        "common practice, no source";
    CavityVolume "The volume of a cavity" Milliliter possible 0.01 5000.0 likely 0.1 300.0 slips ["mL" "L"]
        "no lure has it"
        "common practice, no source";
    SprueVolume "The volume of a sprue" Milliliter possible 0.0 5000.0 likely 0.0 200.0 slips ["mL"]
        "no mold has such a sprue"
        "common practice, no source";
    InjectorVolume "What an injector holds" Milliliter possible 1.0 10000.0 likely 10.0 1500.0 slips ["mL" "fl oz" "L"]
        "no injector is worked by hand with it"
        "common practice, no source";
    KeptShare "The share that an injector keeps" Pure possible 0.0 1.0 likely 0.0 0.5 slips []
        "it keeps no more than it holds"
        "arithmetic";
    TopMass "What topping off adds to a shot" Gram possible 0.0 1000.0 likely 0.0 60.0 slips ["g" "mg"]
        "no sprue takes it"
        "common practice, no source";
    CupVolume "The volume of a cup or pot" Milliliter possible 5.0 50000.0 likely 20.0 8000.0 slips ["mL" "cup" "L"]
        "no microwave oven takes such a cup"
        "common practice, no source";
    MarkStep "The step between the marks of a cup" Milliliter possible 0.01 20000.0 likely 1.0 1000.0 slips ["mL" "cup"]
        "no cup has such marks"
        "common practice, no source";
    FilmShare "What stays in a cup, as a share of what it holds," Pure possible 0.0 1.0 likely 0.0 0.35 slips []
        "nothing could be poured out of it"
        "arithmetic, at 1 g/mL";
    CupMass "The mass of a cup" Gram possible 1.0 20000.0 likely 5.0 4000.0 slips ["g"]
        "no cup for a microwave oven has it"
        "common practice, no source";
    ScaleStep "The step of a scale" Gram possible 0.0000001 100.0 likely 0.0001 10.0 slips ["g" "mg"]
        "no scale for a bench has it"
        "microbalances show 0.1 µg (from memory); the bounds: common practice, no source";
    ScaleLoad "The load of a scale" Gram possible 0.0001 500000.0 likely 0.001 60000.0 slips ["g" "kg"]
        "no scale for a bench weighs it"
        "common practice, no source";
    SpoonVolume "The volume of a spoon" Milliliter possible 0.005 1000.0 likely 0.03 120.0 slips ["mL"]
        "no measuring spoon has it"
        "common practice, no source";
    OvenTemperature "The temperature of a timed pot" Celsius possible -60.0 300.0 likely -20.0 220.0 slips ["°F" "°C"]
        "no pot of plastisol is that cold or that hot"
        "as of a shot temperature; no microwave oven was timed beyond: common practice, no source";
    RoomTemperature "The temperature of the room" Celsius possible -40.0 80.0 likely 0.0 50.0 slips ["°F" "°C"]
        "nobody works in it"
        "common practice, no source";
    OvenTime "The time of a timing" Second possible 0.5 86400.0 likely 3.0 7200.0 slips ["s" "min"]
        "no pot is heated or watched for so long or so short a time"
        "common practice, no source";
    WorkTime "The time of a step of work" Second possible 0.1 604800.0 likely 1.0 28800.0 slips ["s" "min"]
        "no step of work takes it"
        "common practice, no source";
    Altitude "The altitude" Meter possible -4000.0 8849.0 likely -430.0 5200.0 slips ["ft" "m"]
        "no ground is there"
        "the deepest mines, about 4 km, and Mount Everest, 8848.86 m (surveys, from memory); likely: from the shore of the Dead Sea to the highest towns";
    Tolerance "A tolerance" Pure possible 0.0 1.0 likely 0.0005 0.5 slips []
        "it would accept anything"
        "arithmetic";
    Rejects "A reject rate" Pure possible 0.0 1.0 likely 0.0 0.6 slips []
        "no piece would be good"
        "arithmetic";
    Hardener "The softener or hardener of a reading, by mass of base," Pure possible 0.0 10.0 likely 0.0 3.0 slips []
        "nothing would hold the piece together"
        "common practice, no source";
}
