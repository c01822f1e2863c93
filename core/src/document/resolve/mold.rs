//! Molds and their cavities.

use alloc::borrow::ToOwned;
use alloc::vec::Vec;

use super::Resolver;
use crate::book::{Cavities, Mold};
use crate::document::book::{CavitiesEntry, CavityVolume, MoldEntry};
use crate::document::path::pointer;
use crate::document::written::Percent;
use crate::quantity::{Measurable, Measured, Pressure, Volume};
use crate::water;

impl Resolver {
    pub(super) fn mold(&mut self, path: &str, name: &str, entry: &MoldEntry) -> Option<Mold> {
        let cavities = self.cavities(path, entry);
        let sprue = self.or_zero(&pointer(path, "sprue"), entry.sprue.as_ref());
        let top = self.or_zero(&pointer(path, "top"), entry.top.as_ref());
        let voids = entry.voids.map_or(0.0, Percent::share);
        let rejects = entry.rejects.map(Percent::share);
        self.check_below_one(&pointer(path, "voids"), Some(voids));
        self.check_below_one(&pointer(path, "rejects"), rejects);
        let hook = entry.hook.as_ref().map(|hook| self.hook(&pointer(path, "hook"), hook));
        Some(Mold {
            name: name.to_owned(),
            cavities: cavities?,
            sprue,
            feed: entry.feed.map(Percent::share),
            voids,
            rejects,
            top,
            hook: hook.flatten().unwrap_or_default(),
        })
    }

    fn cavities(&mut self, path: &str, entry: &MoldEntry) -> Option<Vec<Cavities>> {
        match (&entry.cavities, &entry.cavity) {
            (CavitiesEntry::Like(count), Some(cavity)) => {
                let volume = self.cavity_volume(&pointer(path, "cavity"), cavity);
                let body = self.body_of(path, entry.body.as_ref());
                Some(Vec::from([Cavities { shape: None, count: *count, volume: volume?, body }]))
            }
            (CavitiesEntry::Like(_), None) => {
                self.fault(
                    "missing-field",
                    path,
                    "\"cavity\" is missing.".to_owned(),
                    "Add the volume of one cavity: \"cavity\": \"9.5 mL\", or the water it holds: { \"water\": \"9.47 g\", \"at\": \"22 °C\" }.".to_owned(),
                );
                None
            }
            (CavitiesEntry::Unlike(_), Some(_)) => {
                self.fault(
                    "one-cavity-for-unlike",
                    &pointer(path, "cavity"),
                    "The cavities are unlike, each with a volume of its own.".to_owned(),
                    "Leave \"cavity\" out here.".to_owned(),
                );
                None
            }
            (CavitiesEntry::Unlike(shapes), None) => {
                let parent = pointer(path, "cavities");
                if entry.body.is_some() {
                    self.fault(
                        "one-body-for-unlike",
                        &pointer(path, "body"),
                        "The cavities are unlike, each with a body of its own.".to_owned(),
                        "Put \"body\" beside the \"cavity\" of each shape.".to_owned(),
                    );
                }
                if shapes.is_empty() {
                    self.fault(
                        "no-cavities",
                        &parent,
                        "The mold has no cavity.".to_owned(),
                        "Add at least one shape.".to_owned(),
                    );
                    return None;
                }
                let read: Vec<Option<Cavities>> = shapes
                    .iter()
                    .map(|(shape, entry)| {
                        let path = pointer(&parent, shape);
                        let volume = self.cavity_volume(&pointer(&path, "cavity"), &entry.cavity);
                        let body = self.body_of(&path, entry.body.as_ref());
                        let (shape, count) = (Some(shape.clone()), entry.count);
                        Some(Cavities { shape, count, volume: volume?, body })
                    })
                    .collect();
                read.into_iter().collect()
            }
        }
    }

    fn cavity_volume(&mut self, path: &str, cavity: &CavityVolume) -> Option<Measured<Volume>> {
        match cavity {
            CavityVolume::Volume(volume) => {
                self.positive(path, volume)?;
                self.keep(path, volume.measured(self.system))
            }
            CavityVolume::Water(entry) => {
                let water = pointer(path, "water");
                self.positive(&water, &entry.water)?;
                let reading = self.keep(&water, entry.water.measured(self.system))?;
                let at = self.keep(&pointer(path, "at"), entry.at.measured(self.system))?;
                // Of the air's buoyancy only 1.2 parts in 1000 are at stake.
                let pressure = Pressure::from_si(101_325.0);
                self.keep(path, water::measured_volume(&reading, &at, pressure))
            }
        }
    }
}
