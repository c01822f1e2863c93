//! Molds and their cavities.

use alloc::borrow::ToOwned;
use alloc::vec::Vec;

use super::Resolver;
use crate::book::{Cavities, Mold};
use crate::document::book::{CavitiesEntry, CavityVolume, MoldEntry};
use crate::document::written::Percent;
use crate::json::path::Path;
use crate::quantity::{Measurable, Measured, Pressure, Volume};
use crate::water;

/// The most air in a good piece that is believed, as a share of it: bubbles come to a few per cent (common practice, no
/// source).
const MOST_VOIDS: f64 = 0.1;

impl Resolver {
    pub(crate) fn mold(&mut self, path: &Path<'_>, name: &str, entry: &MoldEntry) -> Option<Mold> {
        let cavities = self.cavities(path, entry);
        let sprue = self.or_zero(&path.key("sprue"), entry.sprue.as_ref());
        let top = self.or_zero(&path.key("top"), entry.top.as_ref());
        let voids = entry.voids.map_or(0.0, Percent::share);
        let rejects = entry.rejects.map(Percent::share);
        self.check_voids(&path.key("voids"), entry.voids);
        self.check_below_one(&path.key("rejects"), rejects);
        let hook = entry.hook.as_ref().map(|hook| self.hook(&path.key("hook"), hook));
        let mold = Mold {
            name: name.to_owned(),
            cavities: cavities?,
            sprue: sprue.unwrap_or_default(),
            feed: entry.feed.map(Percent::share),
            voids,
            rejects,
            top: top.unwrap_or_default(),
            hook: hook.flatten().unwrap_or_default(),
        };
        self.check_bodies(path, &mold);
        Some(mold)
    }

    /// So much air as no sound piece holds is mostly the share of bad pieces.
    fn check_voids(&mut self, path: &Path<'_>, voids: Option<Percent>) {
        let Some(voids) = voids.filter(|voids| voids.share() > MOST_VOIDS) else { return };
        self.fault(
            "voids-implausible",
            path,
            &format_args!("{voids} of a good piece is said to be air; {} % is the most that is believed.", MOST_VOIDS * 100.0),
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
                    "missing-field",
                    path,
                    &"\"cavity\" is missing.",
                    &"Add the volume of one cavity: \"cavity\": \"9.5 mL\", or the water it holds: { \"water\": \"9.47 g\", \"at\": \"22 °C\" }.",
                );
                None
            }
            (CavitiesEntry::Unlike(_), Some(_)) => {
                self.fault(
                    "one-cavity-for-unlike",
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
                        "one-body-for-unlike",
                        &path.key("body"),
                        &"The cavities are unlike, each with a body of its own.",
                        &"Put \"body\" beside the \"cavity\" of each shape.",
                    );
                }
                if shapes.is_empty() {
                    self.fault(
                        "no-cavities",
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
                self.positive(path, volume)?;
                self.measured(path, volume)
            }
            CavityVolume::Water(entry) => {
                let water = path.key("water");
                self.positive(&water, &entry.water)?;
                let reading = self.measured(&water, &entry.water)?;
                let at = self.measured(&path.key("at"), &entry.at)?;
                // Of the air's buoyancy only 1.2 parts in 1000 are at stake.
                let pressure = Pressure::from_si(101_325.0);
                self.keep(path, water::measured_volume(&reading, &at, pressure))
            }
        }
    }
}
