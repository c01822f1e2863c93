//! What a book says of vacuum, oven, heat and water, checked.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::ToString;
use alloc::vec::Vec;

use super::Resolver;
use crate::book::{FishedWater, Oven};
use crate::document::book::{BookDocument, MaterialEntry};
use crate::document::process::{
    BodyEntry, BudgetEntry, BuysEntry, FishedWaterEntry, HookEntry, SalinityEntry, TimingEntry,
    VacuumEntry,
};
use crate::document::reader::pointer;
use crate::document::written::{Percent, Written};
use crate::fault::Faults;
use crate::material::{HeatBudget, Kind, Material};
use crate::mix::{MaterialId, Materials};
use crate::process::atmosphere::{GeometricAltitude, StationPressure};
use crate::process::budget::{Budget, Extra};
use crate::process::chamber::{Air, Chamber, Pulled, dial_within};
use crate::process::degas::Vacuum;
use crate::process::gauge::{AbsolutePressure, Dial, VacuumReading};
use crate::process::heat::{self, Load, Timing};
use crate::process::history::Kinetics;
use crate::process::seawater::{Salinity, Water};
use crate::process::sink::Shape;
use crate::quantity::{
    Amount, Dimension, HeatCapacity, Length, Mass, MassDensity, Pressure, Ratio,
    SpecificHeatCapacity, System, Volume,
};
use crate::salt::Hook;

/// What a timed mix is like.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Timed {
    /// Cold and liquid; needed where a volume was timed.
    pub(crate) density: Option<MassDensity>,
    pub(crate) specific_heat: SpecificHeatCapacity,
    /// Heat capacity of the vessel, zero where it is left to the timings.
    pub(crate) vessel: HeatCapacity,
}

/// Reads with a resolver of its own, for one part of a request.
pub(crate) fn alone<T>(
    system: System,
    read: impl FnOnce(&mut Resolver) -> Option<T>,
) -> Result<T, Faults> {
    let mut resolver = Resolver::new(system);
    let found = read(&mut resolver);
    resolver.finish(found)
}

impl Resolver {
    /// The pressure of the air: the barometer's, else the standard one at the altitude; `None` where
    /// neither is stated.
    pub(crate) fn air(
        &mut self,
        altitude: Option<&Written<Length>>,
        barometer: Option<&Written<Pressure>>,
    ) -> Option<StationPressure> {
        let altitude = altitude.and_then(|written| {
            let altitude = self.keep("/altitude", written.to(self.system))?;
            self.keep("/altitude", GeometricAltitude::new(altitude))
        });
        let path = "/air_pressure";
        match (barometer, altitude) {
            (Some(written), Some(altitude)) => {
                let pressure = self.keep(path, written.to(self.system))?;
                self.keep(path, StationPressure::measured_at(pressure, altitude))
            }
            (Some(written), None) => {
                let pressure = self.keep(path, written.to(self.system))?;
                self.keep(path, StationPressure::measured(pressure))
            }
            (None, altitude) => altitude.map(StationPressure::standard),
        }
    }

    /// The vacuum at `at`, which must be possible where the air has `local`.
    pub(crate) fn chamber(
        &mut self,
        at: &str,
        entry: &VacuumEntry,
        local: Option<StationPressure>,
    ) -> Option<Chamber> {
        let (field, pulled) = match (&entry.gauge, &entry.absolute) {
            (Some(gauge), None) => ("gauge", self.gauge(at, gauge, entry)),
            (None, Some(absolute)) => {
                let path = pointer(at, "absolute");
                let pressure = self.positive(&path, absolute);
                let absolute = pressure.and_then(|p| self.keep(&path, AbsolutePressure::new(p)));
                ("absolute", absolute.map(Pulled::Absolute))
            }
            _ => {
                self.fault(
                    "gauge-or-absolute",
                    at,
                    "It must say in one way what vacuum is pulled.".to_owned(),
                    "Write \"gauge\": \"27 inHg\" as the gauge shows it, or \"absolute\": \"10 kPa\" for what is left in the chamber.".to_owned(),
                );
                return None;
            }
        };
        if let (Some(_), Some(_)) = (&entry.absolute, &entry.dial_tolerance) {
            self.fault(
                "tolerance-without-gauge",
                &pointer(at, "dial_tolerance"),
                "The tolerance is that of a vacuum gauge, and an absolute pressure is given."
                    .to_owned(),
                "Leave it out, or give what the vacuum gauge shows.".to_owned(),
            );
        }
        let air = self.entrained(at, entry)?;
        let chamber = Chamber { pulled: pulled?, air };
        if let Some(local) = local {
            let pressure = self.keep(&pointer(at, field), chamber.pressure(local))?;
            let vacuum = Vacuum::new(local, pressure.absolute, Pressure::default());
            let vacuum = self.keep(&pointer(at, field), vacuum)?;
            let field = if entry.rise.is_some() { "rise" } else { "entrained" };
            self.keep(&pointer(at, field), chamber.entrained(vacuum))?;
        }
        Some(chamber)
    }

    fn gauge(
        &mut self,
        at: &str,
        gauge: &Written<Pressure>,
        entry: &VacuumEntry,
    ) -> Option<Pulled> {
        let path = pointer(at, "gauge");
        let reading = self.positive(&path, gauge);
        let reading = reading.and_then(|reading| self.keep(&path, VacuumReading::new(reading)));
        let dial = match &entry.dial_tolerance {
            None => Some(Dial::default()),
            Some(written) => {
                let path = pointer(at, "dial_tolerance");
                let tolerance = self.keep(&path, written.to(self.system));
                tolerance.and_then(|tolerance| self.keep(&path, dial_within(tolerance)))
            }
        };
        Some(Pulled::Gauge { reading: reading?, dial: dial? })
    }

    /// The air in a pot, where it is stated; the outer `None` where it is stated twice.
    #[allow(clippy::option_option)] // absent and wrong are two things
    fn entrained(&mut self, at: &str, entry: &VacuumEntry) -> Option<Option<Air>> {
        match (entry.rise, entry.entrained) {
            (None, None) => Some(None),
            (Some(rise), None) => Some(Some(Air::Rise(rise))),
            (None, Some(share)) => {
                self.check_below_one(&pointer(at, "entrained"), Some(share.share()));
                Some(Some(Air::Share(Ratio::from(share.share()))))
            }
            (Some(_), Some(_)) => {
                self.fault(
                    "rise-and-entrained",
                    at,
                    "The air in a pot is stated twice.".to_owned(),
                    "Keep \"rise\", which was seen, and leave \"entrained\" out.".to_owned(),
                );
                None
            }
        }
    }

    /// The oven of a book, timed with one of its plastisols.
    pub(super) fn oven(
        &mut self,
        document: &BookDocument,
        materials: &Materials,
        default_base: Option<MaterialId>,
    ) -> Option<Oven> {
        let entry = document.bench.oven.as_ref()?;
        let at = "/bench/oven";
        let base = match &entry.of {
            Some(name) => self.find_material(materials, name, &pointer(at, "of")),
            None if default_base.is_none() => {
                self.fault(
                    "missing-field",
                    at,
                    "\"of\" is missing: the book has no default base that was timed.".to_owned(),
                    "Name the plastisol that was timed: \"of\": \"clear-base\".".to_owned(),
                );
                None
            }
            None => default_base,
        };
        let material = self.keep(at, materials.get(base?))?.clone();
        let specific_heat =
            self.keep(at, material.specific_heat("reckoning with the oven's timings"))?;
        let timed = Timed {
            density: material.density.as_ref().map(|density| density.value),
            specific_heat,
            vessel: HeatCapacity::default(),
        };
        let timed = self.timings(at, &entry.timings, entry.setting, timed);
        let reheat_from = entry.reheat_from.as_ref().and_then(|temperature| {
            self.keep(&pointer(at, "reheat_from"), temperature.to(self.system))
        });
        let hot_for = entry.hot_for.as_ref();
        let hot_for = hot_for.and_then(|time| self.positive(&pointer(at, "hot_for"), time));
        Some(Oven { timed: timed?, reheat_from, hot_for })
    }

    /// The oven that `timings` of one mix show.
    pub(crate) fn timings(
        &mut self,
        at: &str,
        timings: &[TimingEntry],
        setting: Option<Percent>,
        timed: Timed,
    ) -> Option<heat::Oven> {
        let path = pointer(at, "timings");
        let setting = Ratio::from(setting.map_or(1.0, Percent::share));
        let read: Vec<Option<Timing>> = timings
            .iter()
            .enumerate()
            .map(|(index, timing)| {
                self.timing(&pointer(&path, &index.to_string()), timing, setting, timed)
            })
            .collect();
        let read: Vec<Timing> = read.into_iter().collect::<Option<_>>()?;
        self.keep(&path, heat::Oven::from_timings(&read))
    }

    fn timing(
        &mut self,
        at: &str,
        entry: &TimingEntry,
        setting: Ratio,
        timed: Timed,
    ) -> Option<Timing> {
        let mass = self.amount_of_mix(&pointer(at, "mix"), &entry.mix, timed.density);
        let start = self.keep(&pointer(at, "from"), entry.from.to(self.system));
        let end = self.keep(&pointer(at, "to"), entry.to.to(self.system));
        let duration = self.positive(&pointer(at, "time"), &entry.time);
        let load = Load::new(mass?, timed.specific_heat, timed.vessel);
        let load = self.keep(&pointer(at, "mix"), load)?;
        let timing = Timing { load, setting, start: start?, end: end?, duration: duration? };
        self.keep(at, heat::Oven::from_timings(&[timing]))?;
        Some(timing)
    }

    /// The mass of a mix given as a mass, or as a volume of `density`.
    pub(crate) fn amount_of_mix(
        &mut self,
        path: &str,
        amount: &Amount,
        density: Option<MassDensity>,
    ) -> Option<Mass> {
        if amount.dimension() != Dimension::VOLUME {
            return self.keep(path, amount.to(self.system));
        }
        let volume: Volume = self.keep(path, amount.to(self.system))?;
        if density.is_none() {
            self.fault(
                "volume-without-density",
                path,
                format!("{amount} is a volume, and the density of what was heated is not known."),
                "State the density, or weigh it: \"mix\": \"240 g\".".to_owned(),
            );
        }
        Some(volume * density?)
    }

    /// What a material says of heat and flake.
    pub(super) fn heat_and_flake(
        &mut self,
        path: &str,
        entry: &MaterialEntry,
        material: &mut Material,
    ) {
        let named = [
            ("budget", entry.budget.is_some(), Kind::Plastisol),
            ("buys", entry.buys.is_some(), Kind::Stabilizer),
            ("cut", entry.cut.is_some(), Kind::Flake),
            ("thickness", entry.thickness.is_some(), Kind::Flake),
        ];
        for (field, is_there, kind) in named {
            if is_there && entry.kind != kind {
                self.fault(
                    "property-of-another-kind",
                    &pointer(path, field),
                    format!("\"{field}\" is of a {kind}, and this is a {}.", entry.kind),
                    format!("Move it to the {kind} that it is meant for."),
                );
            }
        }
        if let Some(energy) = &entry.activation_energy {
            material.activation_energy = self.property(path, "activation_energy", Some(energy));
        }
        material.budget =
            entry.budget.as_ref().and_then(|entry| self.budget(&pointer(path, "budget"), entry));
        self.check_kinetics(path, material);
        material.buys =
            entry.buys.as_ref().and_then(|entry| self.buys(&pointer(path, "buys"), entry));
        material.cut = entry.cut.as_ref().map(|cut| cut.cut).or(material.cut);
        let thickness = entry.thickness.as_ref();
        material.thickness = thickness
            .and_then(|thickness| self.positive(&pointer(path, "thickness"), thickness))
            .or(material.thickness);
    }

    fn budget(&mut self, path: &str, entry: &BudgetEntry) -> Option<HeatBudget> {
        let time = self.positive(&pointer(path, "time"), &entry.time);
        let at = self.keep(&pointer(path, "at"), entry.at.to(self.system));
        let with = Ratio::from(entry.with.map_or(0.0, Percent::share));
        self.keep(path, Budget::new(time?, with, None))?;
        Some(HeatBudget { time: time?, at: at?, with })
    }

    /// The activation energy must be one, with its source; the reference temperature a pot's.
    fn check_kinetics(&mut self, path: &str, material: &Material) {
        let Some(energy) = &material.activation_energy else { return };
        let source = energy.source.clone().unwrap_or_default();
        let reference =
            material.budget.map_or_else(crate::mix::reference_temperature, |budget| budget.at);
        let path = pointer(path, "activation_energy");
        self.keep(&path, Kinetics::new(energy.value, reference, source));
    }

    pub(crate) fn buys(&mut self, path: &str, entry: &BuysEntry) -> Option<Extra> {
        let time = self.positive(&pointer(path, "time"), &entry.time)?;
        let per = entry.per.share();
        if per <= 0.0 {
            self.fault(
                "share-of-nothing",
                &pointer(path, "per"),
                "No stabilizer buys no time.".to_owned(),
                "Write the dose that buys the time, such as \"1 %\".".to_owned(),
            );
            return None;
        }
        Some(Extra { time: time / per, most: Ratio::from(entry.most.share()) })
    }

    pub(super) fn body_of(&mut self, parent: &str, entry: Option<&BodyEntry>) -> Option<Shape> {
        self.body(&pointer(parent, "body"), entry?)
    }

    /// The shape of a piece.
    pub(crate) fn body(&mut self, path: &str, entry: &BodyEntry) -> Option<Shape> {
        match (&entry.stick, &entry.ball) {
            (Some(stick), None) => {
                let path = pointer(path, "stick");
                let diameter = self.positive(&pointer(&path, "diameter"), &stick.diameter);
                let length = self.positive(&pointer(&path, "length"), &stick.length);
                let shape = Shape::Stick { diameter: diameter?, length: length? };
                self.keep(&path, shape.check())?;
                Some(shape)
            }
            (None, Some(ball)) => {
                let path = pointer(&pointer(path, "ball"), "diameter");
                Some(Shape::Ball { diameter: self.positive(&path, &ball.diameter)? })
            }
            _ => {
                self.fault(
                    "stick-or-ball",
                    path,
                    "A body is either a stick or a ball.".to_owned(),
                    "Write { \"stick\": { \"diameter\": \"12 mm\", \"length\": \"125 mm\" } } or { \"ball\": { \"diameter\": \"20 mm\" } }.".to_owned(),
                );
                None
            }
        }
    }

    pub(crate) fn hook(&mut self, path: &str, entry: &HookEntry) -> Option<Hook> {
        let mass = self.keep(&pointer(path, "mass"), entry.mass.to(self.system));
        let volume = self.keep(&pointer(path, "volume"), entry.volume.to(self.system));
        Some(Hook { mass: mass?, volume: volume? })
    }

    /// Water that pieces sink in.
    pub(crate) fn fished_water(
        &mut self,
        path: &str,
        entry: &FishedWaterEntry,
    ) -> Option<FishedWater> {
        let temperature =
            self.keep(&pointer(path, "temperature"), entry.temperature.to(self.system));
        let salt = pointer(path, "salinity");
        let salinity = match &entry.salinity {
            None => Salinity::FRESH,
            Some(SalinityEntry::Practical(number)) => Salinity::Practical(*number),
            Some(SalinityEntry::Absolute(share)) => {
                Salinity::Absolute(self.keep(&salt, share.to(self.system))?)
            }
        };
        let absolute = self.keep(&salt, salinity.absolute());
        let temperature = temperature?;
        let salinity = absolute?;
        let water = Water::new(temperature, Salinity::Absolute(salinity));
        let water = self.keep(&pointer(path, "temperature"), water)?;
        Some(FishedWater { temperature, salinity, water })
    }

    /// What a cup holds to its brim, which lies no lower than its highest mark.
    pub(super) fn brim(
        &mut self,
        path: &str,
        brim: Option<&Written<Volume>>,
        holds: Option<Volume>,
    ) -> Option<Volume> {
        let path = pointer(path, "brim");
        let brim = self.positive(&path, brim?)?;
        if holds.is_some_and(|holds| brim < holds) {
            self.fault(
                "brim-below-marks",
                &path,
                "The cup holds less to its brim than to its highest mark.".to_owned(),
                "Fill it to the brim with water and weigh that: 1 g is 1 mL.".to_owned(),
            );
            return None;
        }
        Some(brim)
    }
}

#[cfg(test)]
mod tests {
    use alloc::vec::Vec;
    use std::string::String;

    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::book::Book;
    use crate::document::{BookDocument, read_book};

    fn book() -> Value {
        json!({
            "format": "pourwright/1.0", "measures": "us-customary", "altitude": "640 m",
            "default_base": "base",
            "materials": {
                "base": {
                    "kind": "plastisol", "density": "1.03 g/mL", "specific_heat": "1.9 J/(g.K)",
                    "activation_energy": { "value": "120 kJ/mol", "source": "invented" },
                    "budget": { "time": "30 min", "at": "350 °F" }
                },
                "glitter": { "kind": "flake", "cut": ".035", "thickness": "50 um" },
                "saver": { "kind": "stabilizer", "buys": { "time": "6 min", "per": "2 %", "most": "4 %" } }
            },
            "formulas": {},
            "molds": {
                "worm": {
                    "cavities": 4, "cavity": "9.5 mL",
                    "body": { "stick": { "diameter": "10 mm", "length": "12 cm" } },
                    "hook": { "mass": "1 g", "volume": "0.13 mL" }
                }
            },
            "bench": {
                "cups": [{ "holds": "2 cup", "brim": "590 mL" }],
                "injector": { "holds": "4 fl oz" },
                "vacuum": { "gauge": "25 inHg", "rise": 2 },
                "oven": {
                    "timings": [{ "mix": "2 cup", "from": "20 °C", "to": "170 °C", "time": "4 min" }],
                    "reheat_from": "120 °C", "hot_for": "8 min"
                }
            },
            "limits": { "water": { "temperature": "15 °C", "salinity": "35 g/kg" } }
        })
    }

    fn read(book: &Value) -> Result<Book, crate::Faults> {
        read_book(book).and_then(|document: BookDocument| Book::try_from(&document))
    }

    #[test]
    fn a_book_says_it_all() {
        let book = read(&book()).unwrap_or_else(|faults| panic!("{faults}"));
        assert!(book.air.is_some() && book.chamber.is_some() && book.limits.water.is_some());
        let oven = book.oven.unwrap();
        // 487.4 g of 1.9 J/(g K) by 150 K in 240 s: 579 W (plain arithmetic).
        let watts = 2.0 * 236.588_236_5 * 1.03 * 1.9 * 150.0 / 240.0;
        assert!((oven.timed.power().value - watts).abs() < 1e-6 * watts);
        let material = |name| book.materials.get(book.materials.find(name).unwrap()).unwrap();
        // 6 min for 2 % are 300 min for all of it.
        assert!((material("saver").buys.unwrap().time.value - 18_000.0).abs() < 1e-6);
        assert!(material("glitter").cut.is_some() && material("base").budget.is_some());
        let mold = book.molds.first().unwrap();
        assert!(mold.cavities[0].body.is_some() && mold.hook.mass.value > 0.0);
    }

    /// What is left out stays unknown.
    #[test]
    fn a_book_may_say_nothing() {
        let mut silent = book();
        for (parent, field) in
            [("", "altitude"), ("/bench", "vacuum"), ("/bench", "oven"), ("", "limits")]
        {
            silent.pointer_mut(parent).unwrap().as_object_mut().unwrap().remove(field);
        }
        let book = read(&silent).unwrap_or_else(|faults| panic!("{faults}"));
        assert_eq!((book.air, book.chamber, book.limits.water), (None, None, None));
        assert!(book.oven.is_none());
    }

    #[rstest]
    #[case("", "air_pressure", json!("101 kPa"), "/air_pressure", "air-pressure-looks-reduced")]
    #[case("", "altitude", json!("30 km"), "/altitude", "altitude-out-of-range")]
    #[case("/bench/vacuum", "gauge", json!("30 inHg"), "/bench/vacuum/gauge", "gauge-more-than-the-air")]
    #[case("/bench/vacuum", "absolute", json!("10 kPa"), "/bench/vacuum", "gauge-or-absolute")]
    #[case("/bench/vacuum", "rise", json!(50), "/bench/vacuum/rise", "degas-not-air")]
    #[case("/bench/vacuum", "entrained", json!("5 %"), "/bench/vacuum", "rise-and-entrained")]
    #[case("/bench/vacuum", "dial_tolerance", json!("40 inHg"), "/bench/vacuum/dial_tolerance", "gauge-dial")]
    #[case("/bench/cups/0", "brim", json!("1 cup"), "/bench/cups/0/brim", "brim-below-marks")]
    #[case("/bench/oven", "of", json!("bas"), "/bench/oven/of", "unknown-name")]
    #[case("/bench/oven", "of", json!("saver"), "/bench/oven", "missing-property")]
    #[case("/bench/oven/timings/0", "to", json!("10 °C"), "/bench/oven/timings/0", "heat-not-hotter")]
    #[case("/bench/oven/timings/0", "mix", json!("2 drops"), "/bench/oven/timings/0/mix", "amount-wrong-dimension")]
    #[case("/materials/base", "activation_energy", json!("120 kJ/mol"), "/materials/base/activation_energy", "history-no-source")]
    #[case("/materials/base", "cut", json!(".035"), "/materials/base/cut", "property-of-another-kind")]
    #[case("/materials/glitter", "cut", json!("35 mm"), "/materials/glitter/cut", "cut-suspicious")]
    #[case("/materials/saver/buys", "per", json!("0 %"), "/materials/saver/buys/per", "share-of-nothing")]
    #[case("/molds/worm", "body", json!({}), "/molds/worm/body", "stick-or-ball")]
    #[case("/molds/worm/body/stick", "length", json!("12 mm"), "/molds/worm/body/stick", "sink-stick-too-short")]
    #[case("/limits/water", "salinity", json!(90), "/limits/water/salinity", "seawater-salinity-out-of-range")]
    #[case("/limits/water", "temperature", json!("90 °C"), "/limits/water/temperature", "seawater-temperature-out-of-range")]
    fn faults(
        #[case] parent: &str,
        #[case] field: &str,
        #[case] value: Value,
        #[case] path: &str,
        #[case] code: &str,
    ) {
        let mut book = book();
        book.pointer_mut(parent).unwrap()[field] = value;
        let faults = read(&book).unwrap_err();
        let found: Vec<(String, String)> = faults
            .iter()
            .map(|fault| (fault.path.clone(), fault.code.clone().into_owned()))
            .collect();
        assert_eq!(found, [(String::from(path), String::from(code))]);
    }
}
