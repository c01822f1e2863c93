//! Pieces, their hooks, and the water that they sink in.

use super::Resolver;
use crate::book::{FishedWater, Mold, PieceBody, SeenDrop};
use crate::codes::code;
use crate::document::process::{BodyEntry, FishedWaterEntry, HookEntry, TimedDropEntry};
use crate::json::path::Path;
use crate::parameter::{Parameter, ParameterError, Problem};
use crate::process::seawater::{Salinity, Water};
use crate::process::sink::{Shape, TimedDrop};
use crate::salt::Hook;

impl Resolver {
    pub(super) fn body_of(
        &mut self,
        parent: &Path<'_>,
        entry: Option<&BodyEntry>,
    ) -> Option<PieceBody> {
        self.body(&parent.key("body"), entry?)
    }

    /// Body of a piece, for how it sinks.
    pub(crate) fn body(&mut self, path: &Path<'_>, entry: &BodyEntry) -> Option<PieceBody> {
        let shape = self.body_shape(path, entry);
        let drop = match &entry.drop {
            Some(drop) => Some(self.timed_drop(&path.key("drop"), drop)?),
            None => None,
        };
        Some(PieceBody { shape: shape?, drop })
    }

    fn timed_drop(&mut self, path: &Path<'_>, entry: &TimedDropEntry) -> Option<SeenDrop> {
        let depth = self.given_at(&path.key("depth"), Parameter::DropDepth, &entry.depth);
        let time = self.given_at(&path.key("time"), Parameter::DropTime, &entry.time);
        let density = self.given_at(&path.key("density"), Parameter::DropDensity, &entry.density);
        let water = match &entry.water {
            Some(water) => Some(self.fished_water(&path.key("water"), water)?.water),
            None => None,
        };
        let drop = TimedDrop { depth: depth?, time: time? };
        Some(SeenDrop { drop, density: density?, water })
    }

    /// The faults of a mold's bodies: cavities that are not of their body, and drops that cannot be, as far as the water
    /// is known in which they were timed.
    pub(super) fn check_bodies(&mut self, path: &Path<'_>, mold: &Mold) {
        for cavities in &mold.cavities {
            let Some(body) = &cavities.body else { continue };
            let parent = path.key("cavities");
            let unlike = cavities.shape.as_ref().map(|shape| parent.key(shape));
            let path = unlike.as_ref().unwrap_or(path).key("body");
            let volume = cavities.volume.value;
            if self.keep(&path, body.shape.check_volume(volume)).is_none() {
                continue;
            }
            if let Some(water) = body.drop.and_then(|drop| drop.water) {
                self.keep(&path.key("drop"), body.of(volume, mold.hook, &water));
            }
        }
    }

    fn body_shape(&mut self, path: &Path<'_>, entry: &BodyEntry) -> Option<Shape> {
        match (&entry.stick, &entry.ball) {
            (Some(stick), None) => {
                let path = path.key("stick");
                let diameter =
                    self.given_at(&path.key("diameter"), Parameter::Diameter, &stick.diameter);
                let length = self.given_at(&path.key("length"), Parameter::Length, &stick.length);
                let shape = Shape::Stick { diameter: diameter?, length: length? };
                self.keep(&path, shape.check())?;
                Some(shape)
            }
            (None, Some(ball)) => {
                let path = path.key("ball");
                let diameter =
                    self.given_at(&path.key("diameter"), Parameter::Diameter, &ball.diameter)?;
                Some(Shape::Ball { diameter })
            }
            _ => {
                self.fault(
                    code!("stick-or-ball"),
                    path,
                    &"A body is either a stick or a ball.",
                    &"Write { \"stick\": { \"diameter\": \"12 mm\", \"length\": \"125 mm\" } } or { \"ball\": { \"diameter\": \"20 mm\" } }.",
                );
                None
            }
        }
    }

    pub(crate) fn hook(&mut self, path: &Path<'_>, entry: &HookEntry) -> Option<Hook> {
        let mass = self.given_at(&path.key("mass"), Parameter::HookMass, &entry.mass);
        let volume = self.given_at(&path.key("volume"), Parameter::HookVolume, &entry.volume);
        Some(Hook { mass: mass?, volume: volume? })
    }

    /// Water that pieces sink in.
    pub(crate) fn fished_water(
        &mut self,
        path: &Path<'_>,
        entry: &FishedWaterEntry,
    ) -> Option<FishedWater> {
        let at = path.key("temperature");
        let temperature = self.given_at(&at, Parameter::WaterTemperature, &entry.temperature);
        let (practical, absolute) = (Parameter::SalinityPractical, Parameter::SalinityAbsolute);
        let (of, salinity) = match (entry.salinity_practical, &entry.salinity_absolute) {
            (None, None) => (practical, Salinity::FRESH),
            (Some(number), None) => (practical, Salinity::Practical(number)),
            (None, Some(share)) => {
                let share = self.given_at(&path.key(absolute.name()), absolute, share)?;
                (absolute, Salinity::Absolute(share))
            }
            (Some(_), Some(_)) => {
                let error = ParameterError::new(absolute, Problem::Excludes(practical));
                self.report(&path.key(absolute.name()), &error);
                return None;
            }
        };
        let absolute = self.keep(&path.key(of.name()), salinity.absolute());
        let temperature = temperature?;
        let salinity = absolute?;
        let water = Water::new(temperature, Salinity::Absolute(salinity));
        let water = self.keep(&path.key("temperature"), water)?;
        Some(FishedWater { temperature, salinity, water })
    }
}
