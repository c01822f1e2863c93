//! Molds and their cavities.

use alloc::borrow::ToOwned;
use alloc::vec::Vec;

use super::Resolver;
use crate::book::{Cavities, Mold, MoldCooling};
use crate::codes::code;
use crate::document::book::{CavitiesEntry, CavityVolume, MoldEntry};
use crate::document::process::{MoldCoolingEntry, MoldMaterial, SectionEntry};
use crate::document::written::{Percent, Written};
use crate::json::path::Path;
use crate::parameter::Parameter;
use crate::process::shot_cooling::{Section, ShotCoolingError};
use crate::process::sink::Shape;
use crate::quantity::{
    Measurable, Measured, Pressure, SpecificHeatCapacity, ThermodynamicTemperature, Volume,
};
use crate::water;
use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;

/// Specific heat of aluminum in J/(kg K): CRC Handbook of Chemistry and Physics, 24.2 J/(mol K) at 25 °C.
const ALUMINUM: f64 = Parameter::MoldSpecificHeat.default_si();

/// The most air in a good piece that is believed, as a share of it: bubbles come to a few per cent (common practice, no
/// source).
const MOST_VOIDS: f64 = 0.1;

/// The temperature of `parameter` where a book states none.
fn usual(parameter: Parameter) -> ThermodynamicTemperature {
    ThermodynamicTemperature::from_si(parameter.default_si())
}

/// That of a mold's bodies that cools most slowly.
fn slowest(mold: &Mold) -> Option<Section> {
    let bodies = mold.cavities.iter().filter_map(|cavities| cavities.body);
    let sections = bodies.map(|body| match body.shape {
        Shape::Stick { diameter, .. } => Section::Rod { diameter },
        Shape::Ball { diameter } => Section::Ball { diameter },
    });
    sections.reduce(|a, b| if b.slowness() > a.slowness() { b } else { a })
}

impl Resolver {
    pub(crate) fn mold(&mut self, path: &Path<'_>, name: &str, entry: &MoldEntry) -> Option<Mold> {
        let cavities = self.cavities(path, entry);
        let sprue = entry
            .sprue
            .as_ref()
            .map(|sprue| self.given_at(&path.key("sprue"), Parameter::SprueVolume, sprue));
        let top = entry.top.as_ref();
        let top = top.map(|top| self.given_at(&path.key("top"), Parameter::ToppedMass, top));
        let voids = entry.voids.map_or(0.0, Percent::share);
        let rejects = entry.rejects.map(Percent::share);
        self.check_voids(&path.key("voids"), entry.voids);
        self.check_below_one(&path.key("rejects"), rejects);
        let hook = entry.hook.as_ref().map(|hook| self.hook(&path.key("hook"), hook));
        if entry.count == Some(0) {
            self.fault(
                code!("no-mold"),
                &path.key("count"),
                &"There is no such mold.",
                &"Give 1 or more.",
            );
        }
        let sets = entry.sets.as_ref().map(|time| self.positive(&path.key("sets"), time));
        let per_shot = entry.per_shot.as_ref();
        let per_shot = per_shot.map(|time| self.positive(&path.key("per_shot"), time));
        let mold = Mold {
            name: name.to_owned(),
            cavities: cavities?,
            sprue: sprue.flatten().unwrap_or_default(),
            feed: entry.feed.map(Percent::share),
            voids,
            rejects,
            top: top.flatten().unwrap_or_default(),
            hook: hook.flatten().unwrap_or_default(),
            count: entry.count.unwrap_or(1),
            sets: sets.flatten(),
            per_shot: per_shot.flatten(),
            section: None,
            cooling: None,
        };
        self.check_bodies(path, &mold);
        let mut thickest = slowest(&mold);
        let cooling = entry.cooling.as_ref().and_then(|cooling| {
            let path = path.key("cooling");
            let is_metal = cooling.of.is_none_or(|of| of == MoldMaterial::Metal);
            let section = match &cooling.section {
                Some(section) => self.section(&path.key("section"), section),
                None if is_metal => self.section_of_bodies(&path, &mold),
                None => None,
            };
            thickest = section.or(thickest);
            self.mold_cooling(&path, cooling, section, mold.sets.is_some())
        });
        let mold = Mold { section: thickest, cooling, ..mold };
        Some(mold)
    }

    /// How a shot of that `section` cools; `None`, and a fault unless its time was `seen`, where that cannot be
    /// calculated.
    pub(crate) fn mold_cooling(
        &mut self,
        path: &Path<'_>,
        entry: &MoldCoolingEntry,
        section: Option<Section>,
        seen: bool,
    ) -> Option<MoldCooling> {
        if let Some(of) = entry.of.filter(|of| *of != MoldMaterial::Metal) {
            if !seen {
                self.fault(
                    code!("mold-not-metal"),
                    &path.key("of"),
                    &format_args!("How long a shot sets in {of} cannot be calculated: its surface does not keep its temperature."),
                    &"Time one, and give the mold \"sets\": \"4 min\".",
                );
            }
            return None;
        }
        let mut temperature = |name: &str, written: Option<&Written<_>>, parameter| {
            written.map_or(Some(usual(parameter)), |at| self.quantity(&path.key(name), at))
        };
        let at = temperature("at", entry.at.as_ref(), Parameter::MoldAt);
        let take_out = temperature("take_out", entry.take_out.as_ref(), Parameter::TakeOut);
        let specific_heat = match &entry.specific_heat {
            Some(own) => self.positive(&path.key("specific_heat"), own),
            None => Some(SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(ALUMINUM)),
        };
        let mass = entry.mass.as_ref().map(|mass| self.positive(&path.key("mass"), mass));
        let heat_capacity = match mass {
            Some(mass) => Some(mass? * specific_heat?),
            None => None,
        };
        let (at, take_out) = (at?, take_out?);
        if at >= take_out {
            self.report(path, &ShotCoolingError::MoldTooWarm { mold: at, take_out });
            return None;
        }
        Some(MoldCooling { section: section?, at, take_out, heat_capacity })
    }

    /// A metal mold of which nothing is stated.
    pub(crate) fn usual_mold(section: Section) -> MoldCooling {
        let (at, take_out) = (usual(Parameter::MoldAt), usual(Parameter::TakeOut));
        MoldCooling { section, at, take_out, heat_capacity: None }
    }

    pub(crate) fn section(&mut self, path: &Path<'_>, entry: &SectionEntry) -> Option<Section> {
        match (&entry.rod, &entry.plate, &entry.ball) {
            (Some(rod), None, None) => {
                Some(Section::Rod { diameter: self.positive(&path.key("rod"), rod)? })
            }
            (None, Some(plate), None) => {
                Some(Section::Plate { thickness: self.positive(&path.key("plate"), plate)? })
            }
            (None, None, Some(ball)) => {
                Some(Section::Ball { diameter: self.positive(&path.key("ball"), ball)? })
            }
            _ => {
                self.fault(
                    code!("section-not-one"),
                    path,
                    &"The thickest part of a piece is a rod, a plate or a ball.",
                    &"Give just one of them: { \"rod\": \"10 mm\" }.",
                );
                None
            }
        }
    }

    /// That of a mold's bodies that cools most slowly: a ball cools faster than a rod that is as thick.
    fn section_of_bodies(&mut self, path: &Path<'_>, mold: &Mold) -> Option<Section> {
        let slowest = slowest(mold);
        if slowest.is_none() {
            self.fault(
                code!("section-not-known"),
                path,
                &"How thick its pieces are is not known.",
                &"Give their \"section\": { \"rod\": \"10 mm\" }, or their \"body\".",
            );
        }
        slowest
    }

    /// So much air as no sound piece holds is mostly the share of bad pieces.
    fn check_voids(&mut self, path: &Path<'_>, voids: Option<Percent>) {
        let Some(voids) = voids.filter(|voids| voids.share() > MOST_VOIDS) else { return };
        self.fault(
            code!("out-of-range"),
            path,
            &format_args!("{voids} of a good piece cannot be air; at most {} % can.", MOST_VOIDS * 100.0),
            &format_args!(
                "For bad pieces write \"rejects\": \"{voids}\". A hollow is left out of the volume of its cavity; a light filler is a material with a density."
            ),
        );
    }

    fn cavities(&mut self, path: &Path<'_>, entry: &MoldEntry) -> Option<Vec<Cavities>> {
        match (&entry.cavities, &entry.cavity) {
            (CavitiesEntry::Like(count), Some(cavity)) => {
                let volume = self.cavity_volume(&path.key("cavity"), cavity);
                let body = self.body_of(path, entry.body.as_ref());
                Some(Vec::from([Cavities { shape: None, count: *count, volume: volume?, body }]))
            }
            (CavitiesEntry::Like(_), None) => {
                self.fault(
                    code!("missing-field"),
                    path,
                    &"\"cavity\" is missing.",
                    &"Add the volume of one cavity: \"cavity\": \"9.5 mL\", or the water it holds: { \"water\": \"9.47 g\", \"at\": \"22 °C\" }.",
                );
                None
            }
            (CavitiesEntry::Unlike(_), Some(_)) => {
                self.fault(
                    code!("one-cavity-for-unlike"),
                    &path.key("cavity"),
                    &"The cavities are unlike, each with a volume of its own.",
                    &"Leave \"cavity\" out here.",
                );
                None
            }
            (CavitiesEntry::Unlike(shapes), None) => {
                let parent = path.key("cavities");
                if entry.body.is_some() {
                    self.fault(
                        code!("one-body-for-unlike"),
                        &path.key("body"),
                        &"The cavities are unlike, each with a body of its own.",
                        &"Put \"body\" next to the \"cavity\" of each shape.",
                    );
                }
                if shapes.is_empty() {
                    self.fault(
                        code!("no-cavities"),
                        &parent,
                        &"The mold has no cavity.",
                        &"Add at least one shape.",
                    );
                    return None;
                }
                self.each_named(&parent, shapes, |resolver, path, shape, entry| {
                    let volume = resolver.cavity_volume(&path.key("cavity"), &entry.cavity);
                    let body = resolver.body_of(path, entry.body.as_ref());
                    let (shape, count) = (Some(shape.to_owned()), entry.count);
                    Some(Cavities { shape, count, volume: volume?, body })
                })
            }
        }
    }

    fn cavity_volume(
        &mut self,
        path: &Path<'_>,
        cavity: &CavityVolume,
    ) -> Option<Measured<Volume>> {
        match cavity {
            CavityVolume::Volume(volume) => {
                self.given_at(path, Parameter::CavityVolume, volume)?;
                self.measured(path, volume)
            }
            CavityVolume::Water(entry) => {
                let water = path.key("water");
                self.given_at(&water, Parameter::WaterMass, &entry.water)?;
                let reading = self.measured(&water, &entry.water)?;
                let at = self.measured(&path.key("at"), &entry.at)?;
                // Of the air's buoyancy only 1.2 parts in 1000 are at stake.
                let pressure = Pressure::from_si(101_325.0);
                self.keep(path, water::measured_volume(&reading, &at, pressure))
            }
        }
    }
}
