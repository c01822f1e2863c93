//! How far a pot swells under vacuum, and how full a vessel may be for it.

use alloc::vec::Vec;

use super::air::air;
use super::{request, response};
use crate::caution::Caution;
use crate::document::process::VacuumEntry;
use crate::document::resolve::Resolver;
use crate::document::written::{Altitude, Share, Written};
use crate::fault::Faults;
use crate::json::path::Path::At;
use crate::parameter::Parameter;
use crate::plan::process::rise_assumed;
use crate::process::chamber::{Air, Chamber, usual_rise};
use crate::process::degas::{DegasCup, EntrainedAir, Vacuum, vessel_for};
use crate::process::gauge::ChamberPressure;
use crate::process::vapor;
use crate::quantity::{Pressure, Ratio, System, ThermodynamicTemperature, Volume};
use crate::show::{Note, Shown, text};

request! {
    /// Asks what a vacuum does to a pot.
    pub struct DegasRequest {
        required {
            vacuum: VacuumEntry,
            liquid_volume: Written<Volume>,
        }
        optional {
            altitude: Altitude,
            station_pressure: Written<Pressure>,
            vessel_brim: Written<Volume>,
            vessel_mark: Written<Volume>,
            vessel_spare: Share,
            damp_at: Written<ThermodynamicTemperature>,
            measures: System,
        }
    }
}

response! {
    /// A pot in the vacuum, if no bubble bursts on the way: by the rise that was seen, or else by `entrained` at the
    /// `least` pressure that the dial's tolerance allows.
    pub struct DegasResponse {
        /// Pressure left in the chamber; where the dial is too near its end, the middle between `least` and
        /// `most`.
        pub absolute: Shown<Pressure>,
        /// Lowest pressure that the dial's tolerance allows: 0 where the dial is too near its end.
        pub least: Shown<Pressure>,
        /// Highest pressure that it allows.
        pub most: Shown<Pressure>,
        /// How far the gauge must be off, since the air does not give what it shows.
        pub gauge_off: Option<Shown<Pressure>>,
        /// Share of air in the pot before the vacuum.
        pub entrained: Shown<Ratio>,
        /// Volume before the vacuum, bubbles included.
        pub standing: Shown<Volume>,
        /// Volume in the vacuum.
        pub swollen: Shown<Volume>,
        /// The vessel that takes it at once, to the brim.
        pub vessel: Shown<Volume>,
        /// The level to fill the given vessel to at most, bubbles included.
        pub fill_mark: Option<Shown<Volume>>,
        /// Number of fills of the given vessel.
        pub fills: Option<u32>,
        /// Level of each fill, shared out evenly.
        pub level: Option<Shown<Volume>>,
        /// That the rise is assumed, and what to do then; absent where the rise or the air is given.
        pub assumed: Option<Note>,
        /// Dangers.
        pub cautions: Vec<Caution>,
    }
}

/// A pot under vacuum.
struct Pot {
    liquid: Volume,
    air: EntrainedAir,
    assumed: Option<Note>,
    vacuum: Vacuum,
    pressure: ChamberPressure,
    spare: Ratio,
}

impl DegasRequest {
    /// Lets the air in the pot expand by Boyle's law.
    ///
    /// # Errors
    /// A gauge reading that the air here does not give, with what it does; a vacuum in which the pot
    /// boils; a rise that air does not explain; a vessel without a mark low enough.
    pub fn answer(&self) -> Result<DegasResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let pot = self.pot(&mut resolver);
        let response = pot.and_then(|pot| self.response(&pot, &mut resolver));
        resolver.finish(response)
    }

    fn pot(&self, resolver: &mut Resolver) -> Option<Pot> {
        let local = air(self.altitude.as_ref(), self.station_pressure.as_ref(), resolver);
        let liquid = resolver.given(Parameter::LiquidVolume, &self.liquid_volume);
        let vapor = match &self.damp_at {
            None => Some(Pressure::default()),
            Some(at) => {
                let at = resolver.given(Parameter::DampAt, at);
                at.and_then(|at| resolver.keep(&At("/damp_at"), vapor::of_water(at)))
            }
        };
        let chamber =
            resolver.whole(|resolver| resolver.chamber(&At("/vacuum"), &self.vacuum, local));
        let (chamber, local) = (chamber?, local?);
        let pressure = resolver.keep(&At("/vacuum"), chamber.pressure(local))?;
        let vacuum = resolver.keep(&At("/vacuum"), chamber.vacuum(local, &pressure, vapor?))?;
        let known = resolver.keep(&At("/vacuum"), chamber.entrained(vacuum))?;
        let (air, assumed) = match known {
            Some(air) => (air, None),
            None => {
                let rise = usual_rise(vacuum);
                let chamber = Chamber { air: Some(Air::Rise(rise.value)), ..chamber };
                let air = resolver.keep(&At("/vacuum"), chamber.entrained(vacuum))??;
                (air, Some(rise_assumed(rise)))
            }
        };
        let spare = resolver.share(Parameter::VesselSpare, self.vessel_spare)?;
        Some(Pot { liquid: liquid?, air, assumed, vacuum, pressure, spare })
    }

    fn response(&self, pot: &Pot, resolver: &mut Resolver) -> Option<DegasResponse> {
        let system = resolver.system;
        let standing =
            resolver.keep(&At("/liquid_volume"), pot.vacuum.standing(pot.liquid, pot.air));
        let swollen = resolver.keep(&At("/liquid_volume"), pot.vacuum.swollen(pot.liquid, pot.air));
        let vessel = vessel_for(pot.liquid, pot.air, pot.vacuum, pot.spare);
        let vessel = resolver.keep(&At("/vessel_spare"), vessel);
        let (fills, step) = match &self.vessel_brim {
            None => (None, None),
            Some(brim) => {
                let brim = resolver.given(Parameter::VesselBrim, brim)?;
                let mark = match &self.vessel_mark {
                    Some(mark) => Some(resolver.given(Parameter::VesselMark, mark)?),
                    None => None,
                };
                let vessel =
                    resolver.keep(&At("/vessel_brim"), DegasCup::new(brim, pot.spare, mark))?;
                let fills = vessel.fills(pot.liquid, pot.air, pot.vacuum);
                (Some(resolver.keep(&At("/vessel_brim"), fills)?), mark)
            }
        };
        let pressure = |pressure| text::pressure(pressure, system);
        Some(DegasResponse {
            absolute: pressure(pot.pressure.absolute.get()),
            least: pressure(pot.pressure.least.get()),
            most: pressure(pot.pressure.most.get()),
            gauge_off: pot.pressure.over.map(|over| text::gauge_off(over, system)),
            entrained: text::percent(pot.air.as_share()),
            standing: text::volume(standing?, system),
            swollen: text::volume(swollen?, system),
            vessel: text::volume(vessel?, system),
            fill_mark: fills.map(|fills| text::fill_mark(fills.mark, step, system)),
            fills: fills.map(|fills| fills.count),
            level: fills.map(|fills| text::volume(fills.level, system)),
            assumed: pot.assumed.clone(),
            cautions: Vec::from([Caution::Vacuum, Caution::Fumes, Caution::DataSheet]),
        })
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    /// By hand: a tenth of the air's pressure left, a tenth of the pot air: 9 parts of liquid fill
    /// 10 and swell to 9 + 10 = 19.
    #[test]
    fn boyle_by_hand() {
        let answer = result(json!({
            "calculate": "degas", "station_pressure": "100 kPa", "liquid_volume": "450 mL",
            "vacuum": { "absolute": "10 kPa", "entrained": "10 %" },
            "vessel_brim": "1055.6 mL", "vessel_mark": "250 mL"
        }));
        let ml = |field: &str| answer[field]["value"].as_f64().unwrap();
        assert!((ml("standing") - 500.0).abs() < 1e-6);
        assert!((ml("swollen") - 950.0).abs() < 1e-6);
        assert!((ml("vessel") - 950.0 / 0.9).abs() < 1e-6);
        assert_eq!((&answer["fills"], ml("fill_mark")), (&json!(1), 500.0));
        assert_eq!(answer["cautions"][0], "vacuum");
    }

    /// The rise seen is the rise shown, whatever the gauge.
    #[test]
    fn a_rise_comes_back() {
        let answer = result(json!({
            "calculate": "degas", "altitude": "640 m", "liquid_volume": "500 mL",
            "vacuum": { "gauge": "25 inHg", "rise": 1.8 }
        }));
        let ml = |field: &str| answer[field]["value"].as_f64().unwrap();
        assert!((ml("swollen") / ml("standing") - 1.8).abs() < 1e-12);
        assert_eq!(answer["fills"], Value::Null);
    }

    /// A dial at 30 inHg at sea level is off, within its tolerance.
    #[test]
    fn a_dial_that_is_off() {
        let answer = result(json!({
            "calculate": "degas", "altitude": "0 m", "liquid_volume": "500 mL",
            "vacuum": { "gauge": "30 inHg", "rise": 2 }
        }));
        assert_eq!(answer["gauge_off"]["text"], "0.079 inHg");
    }

    /// At 640 m a dial to ± 0.9 inHg cannot tell how far a share of air swells from 26.8 inHg on.
    #[test]
    fn a_dial_near_its_end_is_not_calculated_with() {
        let request = |gauge: f64| {
            json!({
                "calculate": "degas", "altitude": "640 m", "liquid_volume": "500 mL", "vessel_brim": "600 mL",
                "vacuum": { "gauge": { "value": gauge, "unit": "inHg" }, "entrained": "2 %" }
            })
        };
        let mut last = 0;
        for gauge in [24.0, 25.0, 26.0, 26.5] {
            let fills = result(request(gauge))["fills"].as_u64().unwrap();
            assert!(fills >= last, "{gauge}");
            last = fills;
        }
        for gauge in [27.0, 27.4, 27.7, 27.8, 28.5] {
            assert_eq!(fault_codes(request(gauge)), ["degas-dial-cannot-tell"]);
        }
    }

    /// A pot that nobody has seen in the vacuum: the rise that plans assume, said to be assumed.
    #[test]
    fn a_rise_that_nobody_has_seen_is_assumed() {
        let answer = result(json!({
            "calculate": "degas", "altitude": "-86 m", "liquid_volume": "500 mL",
            "vacuum": { "gauge": "25 inHg" }
        }));
        let ml = |field: &str| answer[field]["value"].as_f64().unwrap();
        assert!((ml("swollen") / ml("standing") - 3.0).abs() < 1e-9, "{answer}");
        assert_eq!(answer["assumed"]["code"], "rise-assumed");
    }

    #[test]
    fn a_share_of_all_is_one_fault() {
        let request = json!({
            "calculate": "degas", "altitude": "640 m", "liquid_volume": "500 mL",
            "vacuum": { "gauge": "25 inHg", "entrained": "100 %" }
        });
        assert_eq!(fault_codes(request), ["out-of-range"]);
    }

    #[rstest]
    #[case(json!({ "gauge": "30 inHg", "rise": 2 }), "gauge-more-than-the-air")]
    #[case(json!({ "gauge": "20 inHg", "rise": 900 }), "degas-not-air")]
    #[case(json!({ "gauge": "20 inHg", "absolute": "10 kPa" }), "gauge-or-absolute")]
    #[case(json!({ "gauge": "20 inHg", "rise": 2, "entrained": "5 %" }), "rise-and-entrained")]
    #[case(json!({ "absolute": "10 kPa", "dial_tolerance": "1 inHg", "rise": 2 }), "tolerance-without-gauge")]
    #[case(json!({ "absolute": "1 kPa", "rise": 2 }), "degas-boils")]
    fn faults(#[case] vacuum: Value, #[case] code: &str) {
        let request = json!({
            "calculate": "degas", "altitude": "1500 m", "liquid_volume": "500 mL", "vacuum": vacuum,
            "damp_at": "25 °C"
        });
        assert_eq!(fault_codes(request), [code]);
    }
}
