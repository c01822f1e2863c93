//! The oven, by the shop's own timings.

use alloc::vec::Vec;

use super::Resolver;
use crate::book::ShopOven;
use crate::codes::code;
use crate::document::book::{BenchEntry, BookDocument};
use crate::document::process::{CoolsEntry, OvenEntry, TimingEntry};
use crate::document::written::{Percent, Written};
use crate::fault::Diagnose;
use crate::json::path::Path::{self, At};
use crate::mix::{MaterialId, Materials, reference_temperature};
use crate::parameter::{Parameter, ParameterError};
use crate::process::heat::{
    self, Cooling, HeatError, Load, Precautions, SpecificHeat, ThermometerMarks, Timing,
};
use crate::quantity::{
    Amount, Dimension, HeatCapacity, Mass, MassDensity, Power, Ratio, SpecificHeatCapacity,
    ThermodynamicTemperature, Time, Volume,
};

/// Properties of a timed mix.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Timed {
    /// Cold and liquid; needed where a volume was timed.
    pub(crate) density: Option<MassDensity>,
    pub(crate) specific_heat: SpecificHeat,
    /// Heat capacity of the vessel of a timing that does not state its own, zero where it is left to the
    /// timings.
    pub(crate) vessel: HeatCapacity,
}

impl Resolver {
    /// The oven of a book, timed with one of its plastisols.
    pub(super) fn oven(
        &mut self,
        document: &BookDocument,
        materials: &Materials,
        default_base: Option<MaterialId>,
    ) -> Option<ShopOven> {
        let entry = document.bench.oven.as_ref()?;
        let at = &At("/bench/oven");
        let base = match &entry.of {
            Some(name) => self.find_material(materials, name, &at.key("of")),
            None if default_base.is_none() => {
                self.fault(
                    code!("missing-field"),
                    at,
                    &"\"of\" is missing: the book has no default base that was timed.",
                    &"Name the plastisol that was timed: \"of\": \"clear-base\".",
                );
                None
            }
            None => default_base,
        };
        let material = self.keep(at, materials.get(base?))?.clone();
        let specific_heat =
            self.keep(at, material.specific_heat("the heat that the oven's timings took"))?;
        let timed = Timed {
            density: material.density.as_ref().map(|density| density.value),
            specific_heat,
            vessel: HeatCapacity::default(),
        };
        let timings = entry.timings.as_deref().unwrap_or_default();
        self.vessels_of_all(&document.bench, timings);
        let power = entry.power.as_ref().map(|power| ("power", power));
        let timed = self.timed_oven(at, (timings, power), entry.setting, timed);
        let precautions = self.precautions(at, entry);
        let (cools, room) = self.cools(at, entry, material.density.map(|density| density.value))?;
        let reheat_from = entry
            .reheat_from
            .as_ref()
            .and_then(|temperature| self.keep(&at.key("reheat_from"), temperature.to(self.system)));
        let hot_for = entry.hot_for.as_ref();
        let hot_for = hot_for.and_then(|time| self.positive(&at.key("hot_for"), time));
        Some(ShopOven {
            timed: timed?,
            precautions: precautions?,
            reheat_from,
            hot_for,
            cools,
            room,
        })
    }

    /// The oven that `timings` of one mix show, or its rated `power` where there are none.
    pub(crate) fn timed_oven(
        &mut self,
        at: &Path<'_>,
        (timings, power): (&[TimingEntry], Option<(&str, &Written<Power>)>),
        setting: Option<Percent>,
        timed: Timed,
    ) -> Option<heat::Oven> {
        match power {
            Some((name, power)) if timings.is_empty() => {
                let path = at.key(name);
                let setting = setting.map_or(1.0, Percent::share);
                let power = self.positive(&path, power)?;
                self.keep(&path, heat::Oven::rated(power, Ratio::from(setting)))
            }
            _ => self.timings(at, timings, setting, timed),
        }
    }

    /// The thermometer, and what a hand can set on the oven.
    fn precautions(&mut self, at: &Path<'_>, entry: &OvenEntry) -> Option<Precautions> {
        let thermometer = entry.thermometer.as_ref();
        let thermometer =
            thermometer.map(|thermometer| self.quantity(&at.key("thermometer"), thermometer));
        let mut time = |name: &str, written: Option<&Written<Time>>| {
            written.map(|time| self.quantity(&at.key(name), time))
        };
        let step = time("step", entry.step.as_ref());
        let longest = time("longest", entry.longest.as_ref());
        let turn = time("turn", entry.turn.as_ref());
        let usual =
            Precautions { marks: ThermometerMarks::of(self.system), ..Precautions::default() };
        let precautions = Precautions {
            thermometer: thermometer.unwrap_or(Some(usual.thermometer))?,
            step: step.unwrap_or(Some(usual.step))?,
            longest: longest.unwrap_or(Some(usual.longest))?,
            turn: turn.unwrap_or(Some(usual.turn))?,
            ..usual
        };
        self.keep(at, precautions.check())?;
        Some(precautions)
    }

    /// How pots were watched to cool, and the temperature of the room.
    fn cools(
        &mut self,
        at: &Path<'_>,
        entry: &OvenEntry,
        density: Option<MassDensity>,
    ) -> Option<(Option<Cooling>, ThermodynamicTemperature)> {
        let room = match &entry.room {
            Some(room) => self.quantity(&at.key("room"), room)?,
            None => reference_temperature(),
        };
        let Some(cools) = &entry.cools else { return Some((None, room)) };
        Some((Some(self.cooling(&at.key("cools"), cools, density, room)?), room))
    }

    /// How a pot was watched to cool; in the `room` where its own is not stated.
    pub(crate) fn cooling(
        &mut self,
        at: &Path<'_>,
        entry: &CoolsEntry,
        density: Option<MassDensity>,
        room: ThermodynamicTemperature,
    ) -> Option<Cooling> {
        let mass = self.amount_of_mix(&at.key("mix"), &entry.mix, density);
        let from = self.quantity(&at.key("from"), &entry.from);
        let to = self.quantity(&at.key("to"), &entry.to);
        let time = self.positive(&at.key("time"), &entry.time);
        let room = match &entry.room {
            Some(room) => self.quantity(&at.key("room"), room)?,
            None => room,
        };
        self.keep(at, Cooling::observed(mass?, from?, to?, time?, room))
    }

    /// The heat of vessels is counted in all timings and for all cups, or it is left to the timings.
    fn vessels_of_all(&mut self, bench: &BenchEntry, timings: &[TimingEntry]) {
        let cups = bench.cups.iter().map(|cup| cup.mass.is_some());
        let cups = cups.enumerate().map(|(index, states)| ("/bench/cups", index, states));
        let timed = timings.iter().map(|timing| timing.vessel.is_some());
        let timed = timed.enumerate().map(|(index, states)| ("/bench/oven/timings", index, states));
        let all: Vec<_> = cups.chain(timed).collect();
        if all.iter().all(|(.., states)| !states) {
            return;
        }
        for (list, index, _) in all.into_iter().filter(|(.., states)| !states) {
            self.fault(
                code!("vessel-not-of-all"),
                &At(list).index(index),
                &"The mass of the vessel is stated elsewhere, and not here.",
                &"State the \"mass\" of all cups and the \"vessel\" of all timings; or of none, which leaves them to the timings.",
            );
        }
    }

    /// The heat capacity of a vessel by its mass and specific heat, each at its name below `at`; zero where
    /// neither is stated.
    pub(crate) fn vessel(
        &mut self,
        at: &Path<'_>,
        (mass_name, mass): (&str, Option<&Written<Mass>>),
        (heat_name, specific_heat): (&str, Option<&Written<SpecificHeatCapacity>>),
    ) -> Option<HeatCapacity> {
        match (mass, specific_heat) {
            (None, None) => Some(HeatCapacity::default()),
            (Some(mass), Some(specific_heat)) => {
                let mass = self.positive(&at.key(mass_name), mass);
                let specific_heat = self.positive(&at.key(heat_name), specific_heat);
                Some(mass? * specific_heat?)
            }
            _ => {
                self.fault(
                    code!("vessel-half-known"),
                    at,
                    &"Of the vessel one number is missing.",
                    &format_args!("Give both \"{mass_name}\" and \"{heat_name}\", or neither: then it is left to the timings."),
                );
                None
            }
        }
    }

    /// The oven that `timings` of one mix show.
    pub(crate) fn timings(
        &mut self,
        at: &Path<'_>,
        timings: &[TimingEntry],
        setting: Option<Percent>,
        timed: Timed,
    ) -> Option<heat::Oven> {
        let path = at.key("timings");
        let wanted = setting.map(|setting| Ratio::from(setting.share()));
        let read = self.each(&path, timings, |resolver, path, timing| {
            resolver.timing(path, timing, wanted, timed)
        });
        let oven = self.keep(&path, heat::Oven::from_timings(&read?))?;
        match wanted {
            Some(wanted) if wanted != oven.setting() => {
                let mixed = HeatError::MixedSettings { first: wanted, other: oven.setting() };
                self.report(&path, &mixed);
                None
            }
            _ => Some(oven),
        }
    }

    fn timing(
        &mut self,
        at: &Path<'_>,
        entry: &TimingEntry,
        wanted: Option<Ratio>,
        timed: Timed,
    ) -> Option<Timing> {
        let own = entry.setting.map(|setting| Ratio::from(setting.share()));
        let setting = own.or(wanted).unwrap_or(Ratio::from(1.0));
        let mass = self.amount_of_mix(&at.key("mix"), &entry.mix, timed.density);
        let start = self.keep(&at.key("from"), entry.from.to(self.system));
        let end = self.keep(&at.key("to"), entry.to.to(self.system));
        let duration = self.positive(&at.key("time"), &entry.time);
        let vessel = match &entry.vessel {
            None if entry.vessel_specific_heat.is_none() => Some(timed.vessel),
            vessel => self.vessel(
                at,
                ("vessel", vessel.as_ref()),
                ("vessel_specific_heat", entry.vessel_specific_heat.as_ref()),
            ),
        };
        let load = Load::new(mass?, timed.specific_heat, vessel?);
        let load = self.keep(&at.key("mix"), load)?;
        let timing = Timing { load, setting, start: start?, end: end?, duration: duration? };
        match heat::Oven::from_timings(&[timing]) {
            Ok(_) => Some(timing),
            Err(error) => {
                self.report_timing(at, &error);
                None
            }
        }
    }

    /// Why a timing is none, each number at its field.
    fn report_timing(&mut self, at: &Path<'_>, error: &HeatError) {
        let numbers = error.numbers();
        if numbers.is_empty() {
            self.report(at, error);
        }
        for number in numbers {
            let field = match number.parameter {
                Parameter::Setting => "setting",
                Parameter::TimedFrom => "from",
                Parameter::TimedTo => "to",
                _ => "time",
            };
            self.report(&at.key(field), &ParameterError { index: None, ..*number });
        }
    }

    /// The mass of a mix given as a mass, or as a volume of `density`.
    pub(crate) fn amount_of_mix(
        &mut self,
        path: &Path<'_>,
        amount: &Amount,
        density: Option<MassDensity>,
    ) -> Option<Mass> {
        if amount.dimension() != Dimension::VOLUME {
            return self.keep(path, amount.to(self.system));
        }
        let volume: Volume = self.keep(path, amount.to(self.system))?;
        if density.is_none() {
            self.fault(
                code!("volume-without-density"),
                path,
                &format_args!(
                    "{amount} is a volume, and the density of what was heated is not known."
                ),
                &"State the density, or weigh it: \"mix\": \"240 g\".",
            );
        }
        Some(volume * density?)
    }
}
