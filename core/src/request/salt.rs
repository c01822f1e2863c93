//! Salt, from any way to state it to all others.

use super::response;
use crate::document::book::MaterialEntry;
use crate::document::entry::entry;
use crate::document::path::Path::{self, At};
use crate::document::resolve::Resolver;
use crate::document::written::{Percent, Written};
use crate::fault::Faults;
use crate::mix::reference_temperature;
use crate::parameter::parameter;
use crate::plan::{Shown, text};
use crate::quantity::{Mass, MassDensity, Ratio, System, ThermodynamicTemperature, Volume};
use crate::salt::{Hook, PieceCavity, Salt, SaltForm, SaltLoading, SaltSoftener, Unsalted};

entry! {
    /// Asks what a salt loading is when it is stated in every other way.
    pub struct SaltRequest {
        required {
            #[doc = parameter!(base_volume)]
            base: Written<Volume>,
            #[doc = parameter!(base_density)]
            base_density: Written<MassDensity>,
            #[doc = parameter!(salt)]
            salt: MaterialEntry,
            #[doc = parameter!(loading)]
            loading: LoadingEntry,
        }
        optional {
            #[doc = parameter!(mix_mass)]
            mix: Written<Mass>,
            #[doc = parameter!(mix_volume)]
            volume: Written<Volume>,
            #[doc = parameter!(hot_volume)]
            hot_volume: Written<Volume>,
            #[doc = parameter!(shot_temperature)]
            shot_temperature: Written<ThermodynamicTemperature>,
            #[doc = parameter!(voids)]
            voids: Percent,
            #[doc = parameter!(salt_softener)]
            softener: SaltSoftenerEntry,
            #[doc = parameter!(most_solids)]
            most_solids: Percent,
            #[doc = parameter!(cavity)]
            cavity: Written<Volume>,
            #[doc = parameter!(feed)]
            feed: Percent,
            #[doc = parameter!(hook_mass)]
            hook_mass: Written<Mass>,
            #[doc = parameter!(hook_volume)]
            hook_volume: Written<Volume>,
            #[doc = parameter!(measures)]
            measures: System,
        }
    }
}

entry! {
    /// A salt loading, stated in just one way.
    pub struct LoadingEntry {
        required {}
        optional {
            /// Volume of salt as scooped, for the base of the request.
            as_scooped: Written<Volume>,
            /// Mass of salt, for the base of the request.
            mass: Written<Mass>,
            /// Mass of salt as a share of the mass of base.
            of_base: Percent,
            /// Mass of salt as a share of the finished mass.
            of_finished: Percent,
            /// Density of the finished plastic at 20 °C, voids counted.
            density: Written<MassDensity>,
            /// Mass of a piece from the cavity of the request.
            piece: Written<Mass>,
            /// Mean density of that piece with its hook and weight.
            sink_density: Written<MassDensity>,
        }
    }
}

entry! {
    /// The softener that goes in beside salt.
    pub struct SaltSoftenerEntry {
        required {
            /// The softener.
            material: MaterialEntry,
            /// Mass of softener as a share of the mass of salt.
            per_salt: Percent,
        }
        optional {}
    }
}

response! {
    /// A salt loading in every way to state it; those of a piece where a cavity was given.
    pub struct SaltResponse {
        /// Mass of salt for the base of the request.
        pub mass: Shown<Mass>,
        /// Its volume as scooped.
        pub as_scooped: Shown<Volume>,
        /// Mass of salt per mass of base.
        pub of_base: Shown<Ratio>,
        /// Mass of salt per finished mass.
        pub of_finished: Shown<Ratio>,
        /// Mass of softener that goes in beside it.
        pub softener: Shown<Mass>,
        /// Density of the finished plastic at 20 °C, voids counted.
        pub density: Shown<MassDensity>,
        /// Mass of a piece.
        pub piece: Option<Shown<Mass>>,
        /// Mean density of a piece with its hook and weight.
        pub sink_density: Option<Shown<MassDensity>>,
    }
}

impl SaltRequest {
    /// Converts the loading to every form.
    ///
    /// # Errors
    /// A loading out of reach, with what is in reach; a property of the salt that is missing.
    pub fn answer(&self) -> Result<SaltResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.unsalted(&mut resolver).and_then(|unsalted| {
            let loading = self.loading.read(&unsalted, &mut resolver)?;
            resolver.keep(&At("/loading"), respond(&unsalted, loading, resolver.system))
        });
        resolver.finish(response)
    }

    fn unsalted(&self, resolver: &mut Resolver) -> Option<Unsalted> {
        let base_volume = resolver.quantity(&At("/base"), &self.base);
        let base_density = resolver.quantity(&At("/base_density"), &self.base_density);
        let salt = self.salt(resolver);
        let softener = match &self.softener {
            Some(softener) => softener.read(resolver).map(Some),
            None => Some(None),
        };
        let shot_temperature = match &self.shot_temperature {
            Some(temperature) => resolver.quantity(&At("/shot_temperature"), temperature),
            None => Some(reference_temperature()),
        };
        let hook_mass = resolver.or_zero(&At("/hook_mass"), self.hook_mass.as_ref());
        let hook_volume = resolver.or_zero(&At("/hook_volume"), self.hook_volume.as_ref());
        let cavity = self.cavity.as_ref().map(|volume| resolver.quantity(&At("/cavity"), volume));
        let mut own = |path: Path<'_>, written: Option<&Written<Volume>>, other| match written {
            Some(written) => resolver.quantity(&path, written),
            None => other,
        };
        let volume = own(At("/volume"), self.volume.as_ref(), base_volume);
        let hot_volume = own(At("/hot_volume"), self.hot_volume.as_ref(), volume);
        let base_volume = base_volume?;
        let base_mass = base_volume * base_density?;
        let mass = match &self.mix {
            Some(mass) => resolver.quantity(&At("/mix"), mass)?,
            None => base_mass,
        };
        Some(Unsalted {
            base_mass,
            base_volume,
            mass,
            volume: volume?,
            hot_volume: hot_volume?,
            shot_temperature: shot_temperature?,
            voids: Ratio::from(self.voids.map_or(0.0, Percent::share)),
            salt: salt?,
            softener: softener?,
            most_solids: Ratio::from(self.most_solids.map_or(0.3, Percent::share)),
            cavity: match cavity {
                Some(volume) => Some(PieceCavity {
                    volume: volume?,
                    feed: Ratio::from(self.feed.map_or(1.0, Percent::share)),
                }),
                None => None,
            },
            hook: Hook { mass: hook_mass?, volume: hook_volume? },
        })
    }

    fn salt(&self, resolver: &mut Resolver) -> Option<Salt> {
        let purpose = "reckoning with salt";
        let salt = resolver.one_material(&At("/salt"), &self.salt)?;
        let true_density = resolver.keep(&At("/salt"), salt.true_density(purpose));
        let scooped_density = resolver.keep(&At("/salt"), salt.scooped_density(purpose));
        Some(Salt {
            true_density: true_density?,
            scooped_density: scooped_density?,
            expansion: salt.expansion_or_none(),
        })
    }
}

impl SaltSoftenerEntry {
    fn read(&self, resolver: &mut Resolver) -> Option<SaltSoftener> {
        let softener = resolver.one_material(&At("/softener/material"), &self.material)?;
        let density = softener.true_density("the softener that goes in beside salt");
        Some(SaltSoftener {
            per_salt: Ratio::from(self.per_salt.share()),
            density: resolver.keep(&At("/softener"), density)?,
            expansion: softener.expansion_or_none(),
        })
    }
}

impl LoadingEntry {
    fn read(&self, unsalted: &Unsalted, resolver: &mut Resolver) -> Option<SaltLoading> {
        let system = resolver.system;
        let base = unsalted.base_volume;
        let ratio = |percent: Percent| Ratio::from(percent.share());
        let stated = [
            self.as_scooped
                .as_ref()
                .map(|volume| volume.to(system).map(|volume| SaltLoading::Scooped(volume / base))),
            self.mass
                .as_ref()
                .map(|mass| mass.to(system).map(|mass| SaltLoading::PerVolume(mass / base))),
            self.of_base.map(|percent| Ok(SaltLoading::OfBase(ratio(percent)))),
            self.of_finished.map(|percent| Ok(SaltLoading::OfFinished(ratio(percent)))),
            self.density
                .as_ref()
                .map(|density| density.to(system).map(SaltLoading::FinishedDensity)),
            self.piece.as_ref().map(|mass| mass.to(system).map(SaltLoading::PieceMass)),
            self.sink_density
                .as_ref()
                .map(|density| density.to(system).map(SaltLoading::SinkDensity)),
        ];
        let mut stated = stated.into_iter().flatten();
        match (stated.next(), stated.next()) {
            (Some(loading), None) => resolver.keep(&At("/loading"), loading),
            _ => {
                resolver.fault(
                    "one-loading",
                    &At("/loading"),
                    &"The loading must be stated in just one way.",
                    &"Write one of as_scooped, mass, of_base, of_finished, density, piece, sink_density.",
                );
                None
            }
        }
    }
}

fn respond(
    unsalted: &Unsalted,
    loading: SaltLoading,
    system: System,
) -> Result<SaltResponse, crate::salt::SaltError> {
    let mass = unsalted.salt_mass(loading)?;
    let canonical = SaltLoading::OfBase(mass / unsalted.base_mass);
    let density = |form| match unsalted.convert(canonical, form)? {
        SaltLoading::FinishedDensity(density) | SaltLoading::SinkDensity(density) => {
            Ok(Some(text::density(density)))
        }
        _ => Ok(None),
    };
    let k = unsalted.softener.map_or(0.0, |softener| softener.per_salt.value);
    let of_finished = match unsalted.convert(canonical, SaltForm::OfFinished)? {
        SaltLoading::OfFinished(share) => share,
        _ => Ratio::default(),
    };
    let piece = match unsalted.cavity {
        Some(_) => match unsalted.convert(canonical, SaltForm::PieceMass)? {
            SaltLoading::PieceMass(piece) => Some(text::mass(piece)),
            _ => None,
        },
        None => None,
    };
    Ok(SaltResponse {
        mass: text::mass(mass),
        as_scooped: text::scoop(unsalted.salt.scooped_density.scoop_of(mass), system),
        of_base: text::percent(mass / unsalted.base_mass),
        of_finished: text::percent(of_finished),
        softener: text::mass(mass * k),
        density: density(SaltForm::FinishedDensity)?
            .unwrap_or_else(|| text::density(unsalted.mass / unsalted.volume)),
        piece,
        sink_density: match unsalted.cavity {
            Some(_) => density(SaltForm::SinkDensity)?,
            None => None,
        },
    })
}
