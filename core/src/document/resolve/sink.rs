//! Pieces, their hooks, and the water that they sink in.

use super::Resolver;
use crate::book::FishedWater;
use crate::document::path::Path;
use crate::document::process::{BodyEntry, FishedWaterEntry, HookEntry, SalinityEntry};
use crate::process::seawater::{Salinity, Water};
use crate::process::sink::Shape;
use crate::salt::Hook;

impl Resolver {
    pub(super) fn body_of(
        &mut self,
        parent: &Path<'_>,
        entry: Option<&BodyEntry>,
    ) -> Option<Shape> {
        self.body(&parent.key("body"), entry?)
    }

    /// The shape of a piece.
    pub(crate) fn body(&mut self, path: &Path<'_>, entry: &BodyEntry) -> Option<Shape> {
        match (&entry.stick, &entry.ball) {
            (Some(stick), None) => {
                let path = path.key("stick");
                let diameter = self.positive(&path.key("diameter"), &stick.diameter);
                let length = self.positive(&path.key("length"), &stick.length);
                let shape = Shape::Stick { diameter: diameter?, length: length? };
                self.keep(&path, shape.check())?;
                Some(shape)
            }
            (None, Some(ball)) => {
                let path = path.key("ball");
                let diameter = self.positive(&path.key("diameter"), &ball.diameter)?;
                Some(Shape::Ball { diameter })
            }
            _ => {
                self.fault(
                    "stick-or-ball",
                    path,
                    &"A body is either a stick or a ball.",
                    &"Write { \"stick\": { \"diameter\": \"12 mm\", \"length\": \"125 mm\" } } or { \"ball\": { \"diameter\": \"20 mm\" } }.",
                );
                None
            }
        }
    }

    pub(crate) fn hook(&mut self, path: &Path<'_>, entry: &HookEntry) -> Option<Hook> {
        let mass = self.keep(&path.key("mass"), entry.mass.to(self.system));
        let volume = self.keep(&path.key("volume"), entry.volume.to(self.system));
        Some(Hook { mass: mass?, volume: volume? })
    }

    /// Water that pieces sink in.
    pub(crate) fn fished_water(
        &mut self,
        path: &Path<'_>,
        entry: &FishedWaterEntry,
    ) -> Option<FishedWater> {
        let temperature = self.keep(&path.key("temperature"), entry.temperature.to(self.system));
        let salt = path.key("salinity");
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
        let water = self.keep(&path.key("temperature"), water)?;
        Some(FishedWater { temperature, salinity, water })
    }
}
