//! The pressure of the air in the shop, and what a vacuum gauge can show there.

use super::{request, response};
use crate::codes::code;
use crate::document::resolve::Resolver;
use crate::document::written::{Altitude, Written};
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::parameter::Parameter;
use crate::process::atmosphere::{GeometricAltitude, SeaLevelPressure, StationPressure};
use crate::process::gauge::VacuumReading;
use crate::quantity::{Pressure, System};
use crate::show::{Shown, text};

request! {
    /// Asks what the air has: by altitude, by a barometer, or by a weather report and the altitude.
    pub struct AirRequest {
        required {}
        optional {
            altitude: Altitude,
            station_pressure: Written<Pressure>,
            reported_pressure: Written<Pressure>,
            measures: System,
        }
    }
}

response! {
    /// State of the air.
    pub struct AirResponse {
        /// Its pressure at the place itself.
        pub pressure: Shown<Pressure>,
        /// The most that a true vacuum gauge shows there.
        pub most_vacuum: Shown<Pressure>,
        /// Whether it is that of the standard atmosphere, which the weather moves by some 3 %.
        pub standard: bool,
    }
}

impl AirRequest {
    /// Takes the barometer's pressure, else brings the reported one to the altitude, else takes the
    /// standard one of the altitude.
    ///
    /// # Errors
    /// Nothing to go by; an altitude or a pressure that cannot be, or one that looks reduced to sea
    /// level.
    pub fn answer(&self) -> Result<AirResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let air = match &self.reported_pressure {
            Some(reported) => self.of_report(reported, &mut resolver),
            None => air(self.altitude.as_ref(), self.station_pressure.as_ref(), &mut resolver),
        };
        let response = air.map(|air| AirResponse {
            pressure: text::pressure(air.get(), resolver.system),
            most_vacuum: text::pressure(VacuumReading::most(air).get(), resolver.system),
            standard: self.station_pressure.is_none() && self.reported_pressure.is_none(),
        });
        resolver.finish(response)
    }

    fn of_report(
        &self,
        reported: &Written<Pressure>,
        resolver: &mut Resolver,
    ) -> Option<StationPressure> {
        let (Some(altitude), None) = (&self.altitude, &self.station_pressure) else {
            resolver.fault(
                code!("report-needs-altitude"),
                &At("/reported_pressure"),
                &"A reported pressure is that of sea level.",
                &"Give the \"altitude\" with it, and leave \"station_pressure\" out.",
            );
            return None;
        };
        let altitude = resolver.keep(&At("/altitude"), altitude.to(resolver.system));
        let altitude =
            altitude.and_then(|at| resolver.keep(&At("/altitude"), GeometricAltitude::new(at)));
        let reported = resolver.given(Parameter::ReportedPressure, reported);
        let reported = reported.and_then(|report| {
            resolver.keep(&At("/reported_pressure"), SeaLevelPressure::reported(report))
        });
        Some(reported?.at(altitude?))
    }
}

/// The pressure of the air by altitude or barometer, one of which must be there.
pub(super) fn air(
    altitude: Option<&Altitude>,
    barometer: Option<&Written<Pressure>>,
    resolver: &mut Resolver,
) -> Option<StationPressure> {
    if altitude.is_none() && barometer.is_none() {
        resolver.fault(
            code!("no-air-pressure"),
            &Path::ROOT,
            &"It is not known what pressure the air has.",
            &"Give \"altitude\": \"640 m\", or \"station_pressure\": what a barometer in the shop shows.",
        );
        return None;
    }
    resolver.whole(|resolver| resolver.air(altitude, barometer))
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use crate::request::tests::{fault_codes, result};

    /// U.S. Standard Atmosphere, 1976, its table by geometric altitude; inHg by NIST SP 811.
    #[rstest]
    #[case("0 m", 101.325, "29.9 inHg")]
    #[case("1500 m", 84.560, "25 inHg")]
    #[case("5000 ft", 84.311, "24.9 inHg")]
    fn altitudes(#[case] altitude: &str, #[case] kpa: f64, #[case] most: &str) {
        let answer = result(serde_json::json!({ "calculate": "air", "altitude": altitude }));
        let found = answer["pressure"]["value"].as_f64().unwrap();
        assert!((found - kpa).abs() < 0.002, "{found}");
        assert_eq!(answer["most_vacuum"]["text"], most);
        assert_eq!(answer["standard"], true);
    }

    #[test]
    fn a_barometer_and_a_report_that_say_the_same() {
        let barometer =
            result(serde_json::json!({ "calculate": "air", "station_pressure": "84.560 kPa" }));
        let report = result(serde_json::json!({
            "calculate": "air", "altitude": "1500 m", "reported_pressure": "101.325 kPa"
        }));
        let kpa = |answer: &serde_json::Value| answer["pressure"]["value"].as_f64().unwrap();
        assert!((kpa(&barometer) - kpa(&report)).abs() < 0.002);
        assert_eq!(report["standard"], false);
    }

    #[rstest]
    #[case(serde_json::json!({ "calculate": "air" }), "no-air-pressure")]
    #[case(serde_json::json!({ "calculate": "air", "altitude": "40 km" }), "out-of-range")]
    #[case(serde_json::json!({ "calculate": "air", "altitude": "1500 m", "station_pressure": "101 kPa" }), "air-pressure-looks-reduced")]
    #[case(serde_json::json!({ "calculate": "air", "reported_pressure": "101 kPa" }), "report-needs-altitude")]
    fn faults(#[case] request: serde_json::Value, #[case] code: &str) {
        assert_eq!(fault_codes(request), [code]);
    }
}
