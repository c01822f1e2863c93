//! Pieces, their hooks, and the water that they sink in.

use alloc::borrow::ToOwned;

use super::Resolver;
use crate::book::FishedWater;
use crate::document::path::pointer;
use crate::document::process::{BodyEntry, FishedWaterEntry, HookEntry, SalinityEntry};
use crate::process::seawater::{Salinity, Water};
use crate::process::sink::Shape;
use crate::salt::Hook;

impl Resolver {
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
}
