//! Water by temperature, and the volume of a cavity from the weight of water that it holds.
//!
//! **Density** of air-free water at 101.325 kPa, t in °C (ITS-90), 0 to 40 °C, standard uncertainty below 1e-6
//! relative: ρ = a₅ [1 − (t + a₁)² (t + a₂) / (a₃ (t + a₄))].
//! M. Tanaka et al., *Metrologia* 38 (2001) 301–309.
//!
//! **Weighing in air.** A balance set with weights of 8000 kg/m³ shows less than the true mass, since air lifts
//! the water more than it lifts the weights: V = Z·m with Z = (1 − ρ_a/ρ_b)/(ρ_w − ρ_a). ISO 8655-6, ISO 4787.
//!
//! **Air**, p in hPa, h relative humidity in per cent: ρ_a = (0.34848 p − 0.009 h e^(0.061 t))/(273.15 + t).
//! OIML R 111-1, E.3.1. Humidity is taken as 50 %: the whole span from dry to damp moves Z by 1e-5 at 25 °C.
//!
//! The buoyancy is worth 0.1 % and the temperature up to 0.8 %, so a cavity weighed at the tap's temperature
//! is good to what the balance and the eye at the rim are good to.

use uom::si::f64::SpecificVolume;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::hectopascal;
use uom::si::thermodynamic_temperature::degree_celsius;

use crate::parameter::{Check, Parameter, ParameterErrors};
use crate::quantity::{Mass, MassDensity, Measured, Pressure, ThermodynamicTemperature, Volume};

/// Density that balances are set for (OIML R 111-1), in kg/m³.
const WEIGHTS_KG_PER_M3: f64 = 8000.0;

/// Relative humidity taken for the air, in per cent.
const HUMIDITY_PERCENT: f64 = 50.0;

/// Density of air-free water at `temperature` and 101.325 kPa (equation and source: [module](self)).
///
/// # Errors
/// A temperature outside 0 to 40 °C.
pub fn density(temperature: ThermodynamicTemperature) -> Result<MassDensity, ParameterErrors> {
    const A1: f64 = -3.983_035;
    const A2: f64 = 301.797;
    const A3: f64 = 522_528.9;
    const A4: f64 = 69.348_81;
    const A5: f64 = 999.974_95;
    let t = celsius(temperature)?;
    let apart = t + A1;
    let density = A5 * (1.0 - apart * apart * (t + A2) / (A3 * (t + A4)));
    Ok(MassDensity::new::<kilogram_per_cubic_meter>(density))
}

/// Volume of water per gram that the balance shows, at `temperature` in air of `air_pressure`
/// (the Z factor; equation and source: [module](self)).
///
/// # Errors
/// A temperature outside 0 to 40 °C, an air pressure outside 45 to 110 kPa.
pub fn z_factor(
    temperature: ThermodynamicTemperature,
    air_pressure: Pressure,
) -> Result<SpecificVolume, ParameterErrors> {
    let water = density(temperature)?;
    let air = air_density(celsius(temperature)?, air_pressure)?;
    let weights = MassDensity::new::<kilogram_per_cubic_meter>(WEIGHTS_KG_PER_M3);
    Ok((1.0 - (air / weights).value) / (water - air))
}

/// Volume of the water whose weight in air the balance shows as `reading`: V = Z·m.
///
/// `reading` is the difference of the mold filled and empty; water and air are both at `temperature`.
///
/// # Errors
/// A reading that is not above zero; those of [`z_factor`].
pub fn volume_weighed(
    reading: Mass,
    temperature: ThermodynamicTemperature,
    air_pressure: Pressure,
) -> Result<Volume, ParameterErrors> {
    let mut check = Check::new();
    check
        .number(Parameter::WaterMass, reading.value)
        .number(Parameter::WaterTemperature, temperature.value)
        .number(Parameter::AirPressure, air_pressure.value);
    check.finish()?;
    Ok(reading * z_factor(temperature, air_pressure)?)
}

/// The same with its standard uncertainty, where that of the reading is known.
///
/// u²(V) = (V u(m)/m)² + (½ [V(t + u) − V(t − u)])² (JCGM 100:2008, 5.1.2 and 5.1.3, note 2), with t the
/// temperature and u its standard uncertainty, where it states one; at an end of 0 to 40 °C the other side alone
/// gives the slope.
///
/// # Errors
/// Those of [`volume_weighed`].
pub fn measured_volume(
    reading: &Measured<Mass>,
    temperature: &Measured<ThermodynamicTemperature>,
    air_pressure: Pressure,
) -> Result<Measured<Volume>, ParameterErrors> {
    let at = |temperature| volume_weighed(reading.value, temperature, air_pressure);
    let volume = at(temperature.value)?;
    let Some(unsure) = reading.uncertainty else {
        return Ok(Measured::exact(volume));
    };
    let by_reading = (volume * (unsure / reading.value)).value;
    let by_temperature = match temperature.uncertainty {
        Some(unsure) => {
            let off = |shifted| at(shifted).map(|there: Volume| (there - volume).value);
            match (off(temperature.value + unsure), off(temperature.value - unsure)) {
                (Ok(above), Ok(below)) => 0.5 * (above - below),
                (Ok(one), Err(_)) | (Err(_), Ok(one)) => one,
                (Err(error), Err(_)) => return Err(error),
            }
        }
        None => 0.0,
    };
    let uncertainty = libm::sqrt(by_reading * by_reading + by_temperature * by_temperature);
    Ok(Measured::new(volume, Volume { value: uncertainty, ..volume }))
}

/// Degrees Celsius within the range of the density equation.
fn celsius(temperature: ThermodynamicTemperature) -> Result<f64, ParameterErrors> {
    Parameter::WaterTemperature.check_si(temperature.value)?;
    Ok(temperature.get::<degree_celsius>())
}

fn air_density(celsius: f64, pressure: Pressure) -> Result<MassDensity, ParameterErrors> {
    let hpa = pressure.get::<hectopascal>();
    Parameter::AirPressure.check_si(pressure.value)?;
    let vapor = 0.009 * HUMIDITY_PERCENT * libm::exp(0.061 * celsius);
    let density = (0.348_48 * hpa - vapor) / (273.15 + celsius);
    Ok(MassDensity::new::<kilogram_per_cubic_meter>(density))
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use uom::si::mass::gram;
    use uom::si::specific_volume::cubic_meter_per_kilogram;
    use uom::si::volume::milliliter;

    use super::*;
    use crate::quantity::{Measurable, TemperatureInterval};

    fn at(celsius: f64) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<degree_celsius>(celsius)
    }

    // CRC Handbook, 97th ed., "Standard density of water", from memory: 0.999 84 at 0, 0.998 21 at 20, 0.992
    // 22 at 40 °C.
    #[rstest]
    #[case(0.0, 999.84)]
    #[case(20.0, 998.207)]
    #[case(40.0, 992.215)]
    fn density_of_the_handbook(#[case] t: f64, #[case] expected: f64) {
        let got = density(at(t)).unwrap().get::<kilogram_per_cubic_meter>();
        assert!((got - expected).abs() < 0.005, "{got}");
    }

    #[rstest]
    #[case(-0.1)]
    #[case(40.1)]
    #[case(f64::NAN)]
    fn refuses_beyond_the_equation(#[case] t: f64) {
        assert!(density(at(t)).is_err());
    }

    #[test]
    fn refuses_what_cannot_be_weighed() {
        let sea = Pressure::new::<hectopascal>(1013.25);
        let refused = volume_weighed(Mass::new::<gram>(0.0), at(20.0), sea);
        assert!(refused.is_err());
        let inches = Pressure::new::<hectopascal>(29.92);
        assert!(z_factor(at(20.0), inches).is_err());
    }

    proptest! {
        #[test]
        fn air_makes_a_little_more_of_the_same_weight(t in 0.0..40.0, hpa in 450.0..1100.0) {
            let pressure = Pressure::new::<hectopascal>(hpa);
            let z = z_factor(at(t), pressure).unwrap().get::<cubic_meter_per_kilogram>();
            let bare = 1.0 / density(at(t)).unwrap().get::<kilogram_per_cubic_meter>();
            prop_assert!(z > bare && z < 1.0015 * bare);
        }

        #[test]
        fn volume_is_linear_in_the_weight(grams in 0.1..1e4, t in 0.0..40.0) {
            let sea = Pressure::new::<hectopascal>(1013.25);
            let one = volume_weighed(Mass::new::<gram>(grams), at(t), sea).unwrap();
            let two = volume_weighed(Mass::new::<gram>(2.0 * grams), at(t), sea).unwrap();
            let (one, two) = (one.get::<milliliter>(), two.get::<milliliter>());
            prop_assert!((two - 2.0 * one).abs() <= 1e-14 * two);
        }
    }

    // Z changes by 2.2e-4 of itself per kelvin at 22 °C (cubic expansion of water, from the density equation).
    #[rstest]
    #[case("by the reading", Some(0.05), None, 0.05 * 1.003_291)]
    #[case("by both", Some(0.05), Some(1.0), 0.050_228)]
    #[case("by the temperature alone", Some(0.0), Some(1.0), 0.002_32)]
    fn a_volume_is_as_sure_as_reading_and_temperature(
        #[case] what: &str,
        #[case] reading: Option<f64>,
        #[case] kelvin: Option<f64>,
        #[case] expected: f64,
    ) {
        let grams = Mass::new::<gram>;
        let reading = Measured { uncertainty: reading.map(grams), ..Measured::exact(grams(10.4)) };
        let kelvin = kelvin.map(TemperatureInterval::from_si);
        let temperature = Measured { uncertainty: kelvin, ..Measured::exact(at(22.0)) };
        let air = Pressure::new::<hectopascal>(1013.25);
        let volume = measured_volume(&reading, &temperature, air).unwrap();
        assert_eq!(volume.value, volume_weighed(grams(10.4), at(22.0), air).unwrap());
        let found = volume.uncertainty.unwrap().get::<milliliter>();
        assert!((found - expected).abs() < 2e-5, "{what}: {found}");
    }

    #[test]
    fn of_an_unsure_reading_nothing_is_said_and_an_end_of_the_range_is_one_sided() {
        let air = Pressure::new::<hectopascal>(1013.25);
        let unsure = Measured::new(at(0.0), TemperatureInterval::from_si(0.5));
        let reading = Measured::exact(Mass::new::<gram>(10.0));
        assert_eq!(measured_volume(&reading, &unsure, air).unwrap().uncertainty, None);
        let reading = Measured::new(Mass::new::<gram>(10.0), Mass::new::<gram>(0.0));
        let by_temperature = measured_volume(&reading, &unsure, air).unwrap().uncertainty.unwrap();
        let above = volume_weighed(reading.value, at(0.5), air).unwrap();
        let there = volume_weighed(reading.value, at(0.0), air).unwrap();
        assert_eq!(by_temperature.value, (above - there).value.abs());
    }
}
