//! Fresh and sea water by temperature and salinity: density and viscosity at the surface.
//!
//! **Density**, IAPWS-08/09 (TEOS-10): ρ = 1/g_p, where g_p is the pressure derivative of the Gibbs function of
//! seawater, here at 101.325 kPa, where it is a polynomial in x = √(S_A/40.1886 g/kg) and y = t/(40 °C). Good
//! to some parts per million. Ten meters down, water is 0.005 % denser, which is ignored.
//! IAPWS R13-08 and SR7-09; IOC, SCOR and IAPSO, *TEOS-10* (2010), appendices G and H.
//!
//! **Viscosity**: μ = μ_w (1 + A S + B S²), S = S_A in kg/kg, t in °C (ITS-90),
//! μ_w = 4.2844e-5 + 1/(0.157 (t + 64.993)² − 91.296) Pa·s,
//! A = 1.541 + 1.998e-2 t − 9.52e-5 t², B = 7.974 − 7.561e-2 t + 4.724e-4 t²; good to 1.5 %.
//! M. H. Sharqawy, J. H. Lienhard, S. M. Zubair, *Desalination and Water Treatment* 16 (2010) 354–380,
//! eqs. 22 and 23.
//!
//! **Salinity** is practical (a pure number, PSS-78, as a probe reads it) or absolute (salt by mass of sea
//! water); S_A = S_P · 35.165 04/35 g/kg, reference composition. The ocean has about 35, a brackish
//! bay 5 to 20, a lake near 0.
//!
//! Range: 0 to 40 °C, absolute salinity 0 to 42 g/kg.

use uom::si::dynamic_viscosity::pascal_second;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::thermodynamic_temperature::degree_celsius;

use crate::parameter::{Check, Parameter, ParameterError, ParameterErrors};
use crate::quantity::{DynamicViscosity, MassDensity, Ratio, ThermodynamicTemperature};

/// Absolute salinity in kg/kg of sea water with practical salinity 1 (TEOS-10, appendix D).
const ABSOLUTE_PER_PRACTICAL: f64 = 35.165_04e-3 / 35.0;

/// Absolute salinity in kg/kg at which the reduced salinity x is 1.
const UNIT_SALINITY: f64 = 40.0 * ABSOLUTE_PER_PRACTICAL;

/// Salt in water.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Salinity {
    /// Practical salinity (PSS-78), a pure number; the ocean has about 35.
    Practical(f64),
    /// Absolute salinity: mass of salt per mass of sea water.
    Absolute(Ratio),
}

/// Water in which a piece sinks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Water {
    /// Density.
    pub density: MassDensity,
    /// Dynamic viscosity.
    pub viscosity: DynamicViscosity,
}

impl Salinity {
    /// Water without salt.
    pub const FRESH: Self = Self::Practical(0.0);

    /// Absolute salinity: mass of salt per mass of sea water.
    ///
    /// # Errors
    /// A salinity outside 0 to 42 g/kg (0 to 41.8 practical).
    pub fn absolute(self) -> Result<Ratio, ParameterError> {
        match self {
            Self::Practical(practical) => {
                let practical = Parameter::SalinityPractical.check_si(practical)?;
                Ok(Ratio::from(practical * ABSOLUTE_PER_PRACTICAL))
            }
            Self::Absolute(absolute) => {
                Parameter::SalinityAbsolute.check_si(absolute.value).map(Ratio::from)
            }
        }
    }
}

impl Water {
    /// Water at `temperature` with `salinity`, at the surface (equations and sources: [module](self)).
    ///
    /// # Errors
    /// A temperature outside 0 to 40 °C, a salinity outside 0 to 42 g/kg (0 to 41.8 practical).
    pub fn new(
        temperature: ThermodynamicTemperature,
        salinity: Salinity,
    ) -> Result<Self, ParameterErrors> {
        let mut check = Check::new();
        check.number(Parameter::WaterTemperature, temperature.value);
        let salinity = check.keep(salinity.absolute()).unwrap_or_default().value;
        check.finish()?;
        let celsius = temperature.get::<degree_celsius>();
        Ok(Self { density: density(celsius, salinity), viscosity: viscosity(celsius, salinity) })
    }
}

/// ρ = 1/g_p at `celsius` and an absolute salinity of `salinity` kg/kg.
fn density(celsius: f64, salinity: f64) -> MassDensity {
    // Coefficients of g_p in 1e-8 m³/kg: IAPWS SR7-09 for pure water, IAPWS R13-08 for the salt's part.
    const WATER: [f64; 8] = [
        100_015.695_367_145,
        -270.983_805_184_062,
        1_455.036_454_046_8,
        -672.507_783_145_07,
        397.968_445_406_972,
        -194.618_310_617_595,
        63.511_393_664_178_5,
        -9.631_081_193_930_62,
    ];
    const SALT_X2: [f64; 5] = [
        -3_310.491_540_448_39,
        729.116_529_735_046,
        -860.764_303_783_977,
        694.244_814_133_268,
        -297.728_741_987_187,
    ];
    const SALT_X3: [f64; 5] = [
        199.459_603_073_901,
        -175.292_041_186_547,
        383.058_066_002_476,
        -460.319_931_801_257,
        234.565_187_611_355,
    ];
    const SALT_X4: [f64; 2] = [-54.791_913_353_288_7, -22.668_355_851_282_9];
    const SALT_X5: f64 = 36.028_419_561_108_6;
    let y = celsius / 40.0;
    let x2 = salinity / UNIT_SALINITY;
    let x = libm::sqrt(x2);
    let by_x = [horner(&SALT_X2, y), horner(&SALT_X3, y), horner(&SALT_X4, y), SALT_X5];
    let volume = 1e-8 * (horner(&WATER, y) + x2 * horner(&by_x, x));
    MassDensity::new::<kilogram_per_cubic_meter>(1.0 / volume)
}

fn viscosity(celsius: f64, salinity: f64) -> DynamicViscosity {
    let t = celsius;
    let shifted = t + 64.993;
    let water = 4.2844e-5 + 1.0 / (0.157 * shifted * shifted - 91.296);
    let a = 1.541 + 1.998e-2 * t - 9.52e-5 * t * t;
    let b = 7.974 - 7.561e-2 * t + 4.724e-4 * t * t;
    DynamicViscosity::new::<pascal_second>(water * (1.0 + salinity * (a + b * salinity)))
}

/// The polynomial with `coefficients`, lowest power first, at `x`.
fn horner(coefficients: &[f64], x: f64) -> f64 {
    coefficients.iter().rev().fold(0.0, |sum, c| sum * x + c)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;
    use crate::fault::Diagnose;

    fn water(celsius: f64, salinity: Salinity) -> Result<Water, ParameterErrors> {
        Water::new(ThermodynamicTemperature::new::<degree_celsius>(celsius), salinity)
    }

    fn absolute(g_per_kg: f64) -> Salinity {
        Salinity::Absolute(Ratio::from(g_per_kg / 1e3))
    }

    // TEOS-10 GSW toolbox 3.6, rho_t_exact(SA, t, 0).
    #[rstest]
    #[case(0.0, 0.0, 999.843_071)]
    #[case(0.0, 20.0, 998.207_146)]
    #[case(0.0, 40.0, 992.216_354)]
    #[case(10.0, 0.0, 1_007.917_858)]
    #[case(10.0, 30.0, 1_003.057_28)]
    #[case(35.165_04, 0.0, 1_028.107_185)]
    #[case(35.165_04, 10.0, 1_026.954_108)]
    #[case(40.0, 5.0, 1_031.492_37)]
    #[case(40.0, 40.0, 1_021.531_759)]
    fn density_of_the_standard(#[case] salinity: f64, #[case] t: f64, #[case] expected: f64) {
        let got = water(t, absolute(salinity)).unwrap().density.get::<kilogram_per_cubic_meter>();
        assert!((got - expected).abs() < 1e-6, "{got}");
    }

    // ITTC recommended procedure 7.5-02-01-03, fresh and sea water (35.165 04 g/kg), from memory.
    #[rstest]
    #[case(0.0, 20.0, 1.002e-3)]
    #[case(35.165_04, 15.0, 1.220e-3)]
    #[case(35.165_04, 20.0, 1.077e-3)]
    fn viscosity_of_the_table(#[case] salinity: f64, #[case] t: f64, #[case] expected: f64) {
        let got = water(t, absolute(salinity)).unwrap().viscosity.get::<pascal_second>();
        assert!((got / expected - 1.0).abs() < 0.003, "{got}");
    }

    /// μ/μ_w at 40 g/kg by hand (Sharqawy et al. 2010, eqs. 22 and 23). At 40 °C: A = 1.541 + 0.7992 − 0.152 32 = 2.187 88,
    /// B = 7.974 − 3.0244 + 0.755 84 = 5.705 44. At 10 °C: A = 1.731 28, B = 7.265 14.
    #[rstest]
    #[case(40.0, 1.0 + 0.04 * 2.187_88 + 0.0016 * 5.705_44)]
    #[case(10.0, 1.0 + 0.04 * 1.731_28 + 0.0016 * 7.265_14)]
    fn salt_thickens_by_its_polynomials(#[case] t: f64, #[case] expected: f64) {
        let viscosity = |salinity| water(t, absolute(salinity)).unwrap().viscosity;
        let ratio = (viscosity(40.0) / viscosity(0.0)).value;
        assert!((ratio - expected).abs() < 1e-12, "{ratio}");
    }

    #[rstest]
    #[case(-0.1, Salinity::FRESH, "out-of-range")]
    #[case(40.1, Salinity::FRESH, "out-of-range")]
    #[case(f64::NAN, Salinity::FRESH, "not-finite")]
    #[case(20.0, Salinity::Practical(-1.0), "out-of-range")]
    #[case(20.0, Salinity::Practical(43.0), "out-of-range")]
    #[case(20.0, Salinity::Practical(f64::NAN), "not-finite")]
    #[case(20.0, absolute(42.1), "out-of-range")]
    fn refuses_beyond_the_equations(#[case] t: f64, #[case] s: Salinity, #[case] code: &str) {
        assert_eq!(water(t, s).unwrap_err().code(), code);
    }

    proptest! {
        #[test]
        fn fresh_water_is_that_of_the_weighing(t in 0.0..40.0) {
            let at = ThermodynamicTemperature::new::<degree_celsius>(t);
            let tanaka = crate::water::density(at).unwrap();
            let here = Water::new(at, Salinity::FRESH).unwrap().density;
            prop_assert!((here / tanaka - Ratio::from(1.0)).value.abs() < 2e-6);
        }

        #[test]
        fn salt_makes_water_denser_and_thicker(t in 0.0..40.0, s in 0.0..40.0, more in 0.01..1.0) {
            let less = water(t, Salinity::Practical(s)).unwrap();
            let more = water(t, Salinity::Practical(s + more)).unwrap();
            prop_assert!(more.density > less.density && more.viscosity > less.viscosity);
        }
    }
}
