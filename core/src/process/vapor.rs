//! The vapor pressure of water, which a damp pot or mold gives off.
//!
//! Plasticizers give off next to nothing at degassing temperatures; their vapor pressure is taken as
//! an input, zero where the supplier names none worth mentioning.

use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::kelvin;

use crate::parameter::{Parameter, ParameterError};
use crate::quantity::{Pressure, ThermodynamicTemperature};

const CRITICAL_K: f64 = 647.096;
const CRITICAL_PA: f64 = 22.064e6;
/// Coefficient and exponent of each term.
const TERMS: [(f64, f64); 6] = [
    (-7.859_517_83, 1.0),
    (1.844_082_59, 1.5),
    (-11.786_649_7, 3.0),
    (22.680_741_1, 3.5),
    (-15.961_871_9, 4.0),
    (1.801_225_02, 7.5),
];
/// The pressure at which water boils at `temperature`:
/// ln(p/p_c) = (T_c/T)(a₁τ + a₂τ^1.5 + a₃τ³ + a₄τ^3.5 + a₅τ⁴ + a₆τ^7.5), τ = 1 − T/T_c.
///
/// Source: IAPWS SR1-86(1992), Wagner and Pruss, J. Phys. Chem. Ref. Data 22:783 (1993); its
/// coefficients from memory, its results checked against IAPWS-95.
///
/// # Errors
/// A temperature outside 0.01 °C to 200 °C.
pub fn of_water(temperature: ThermodynamicTemperature) -> Result<Pressure, ParameterError> {
    let t = temperature.get::<kelvin>();
    Parameter::DampAt.check_si(t)?;
    let tau = 1.0 - t / CRITICAL_K;
    let sum = TERMS.iter().fold(0.0, |sum, &(a, exponent)| sum + a * libm::pow(tau, exponent));
    Ok(Pressure::new::<pascal>(CRITICAL_PA * libm::exp(sum * CRITICAL_K / t)))
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;
    use crate::fault::Diagnose;

    /// IAPWS SR1-86(1992), its verification table: 273.16 K and 373.1243 K, from memory.
    #[rstest]
    #[case(273.16, 611.657, 1e-5)]
    #[case(373.1243, 101_325.0, 1e-4)]
    fn agrees_with_the_release(#[case] t: f64, #[case] p: f64, #[case] tolerance: f64) {
        let got = of_water(ThermodynamicTemperature::new::<kelvin>(t)).unwrap();
        assert!((got.get::<pascal>() / p - 1.0).abs() <= tolerance, "{got:?}");
    }

    #[rstest]
    #[case(273.0)]
    #[case(474.0)]
    #[case(f64::NAN)]
    fn outside_its_range_it_refuses(#[case] t: f64) {
        let refused = of_water(ThermodynamicTemperature::new::<kelvin>(t)).unwrap_err();
        assert_eq!(refused.code(), crate::parameter::refused_as(t));
    }
}
