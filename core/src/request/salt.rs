//! Salt, from any way to state it to all others.

use alloc::string::String;

use super::{request, response};
use crate::book::PieceBody;
use crate::codes::code;
use crate::document::book::MaterialEntry;
use crate::document::process::{BodyEntry, FishedWaterEntry};
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Written};
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::path::Path::{self, At};
use crate::parameter::{Parameter, ParameterError, Problem};
use crate::plan::process::{Sinking, fall};
use crate::process::seawater::Water;
use crate::process::sink::{SaltedSinkError, cooled, loading_for};
use crate::quantity::{
    Amount, Dimension, Mass, MassDensity, Ratio, System, ThermodynamicTemperature, Velocity, Volume,
};
use crate::salt::{
    Hook, PieceCavity, Salt, SaltError, SaltForm, SaltLoading, SaltSoftener, Unsalted,
};
use crate::show::{Calculated, because};
use crate::show::{Shown, text};

request! {
    /// Asks for a salt loading in every other form.
    pub struct SaltRequest {
        named {
            loading: LoadingEntry = loading_requested,
        }
        required {
            base_volume: Written<Volume>,
            base_density: Written<MassDensity>,
            salt: MaterialEntry,
        }
        optional {
            mix_mass: Written<Mass>,
            mix_volume: Written<Volume>,
            hot_volume: Written<Volume>,
            shot_temperature: Written<ThermodynamicTemperature>,
            voids: Share,
            salt_softener: SaltSoftenerEntry,
            most_solids: Share,
            cavity_volume: Written<Volume>,
            feed: Share,
            hook_mass: Written<Mass>,
            hook_volume: Written<Volume>,
            salted_body: BodyEntry,
            salted_water: FishedWaterEntry,
            measures: System,
        }
    }
}

entry! {
    /// A salt loading, stated in just one way: by the words of [`SaltForm`], or as a sink rate.
    pub struct LoadingEntry {
        required {}
        optional {
            /// Volume of salt as scooped: for the base of the request, or per volume of base. Example: `"2 tbsp"` or
            /// `"2 tbsp/cup"`.
            as_scooped: Amount,
            /// Mass of salt for the volume of base of the request, or per volume of base. Example: `"30 g"` or
            /// `"30 g/cup"`.
            per_volume: Amount,
            /// Mass of salt as a share of the mass of base. Example: `"12 %"`.
            of_base: Share,
            /// Mass of salt as a share of the finished mass. Example: `"10 %"`.
            of_finished: Share,
            /// Density of the finished plastic at 20 °C, voids counted. Example: `"1.12 g/mL"`.
            finished_density: Written<MassDensity>,
            /// Mass of a piece from the cavity of the request. Example: `"10.4 g"`.
            piece_mass: Written<Mass>,
            /// Mean density of that piece with its hook and weight. Example: `"1.15 g/mL"`.
            sink_density: Written<MassDensity>,
            /// Sink rate of that piece with its hook, in the water of the request. Example: `"14 cm/s"`.
            sink_rate: Written<Velocity>,
        }
    }
}

entry! {
    /// The softener that goes in with the salt.
    pub struct SaltSoftenerEntry {
        required {
            /// The softener.
            material: MaterialEntry,
            /// Mass of softener as a share of the mass of salt. Example: `"50 %"`.
            per_salt: Share,
        }
        optional {}
    }
}

response! {
    /// A salt loading in every way to state it; those of a piece where a cavity was given.
    pub struct SaltResponse {
        /// Mass of salt for the base of the request.
        pub mass: Shown<Mass>,
        /// Its volume as scooped, where that density of the salt is known.
        pub as_scooped: Option<Shown<Volume>>,
        /// The dose of a formula: by spoons or cups where they hold it within 1 in 1000, else by weight. Example: `"2 tbsp"`.
        pub dose: String,
        /// Mass of salt per mass of base.
        pub of_base: Shown<Ratio>,
        /// Mass of salt per finished mass.
        pub of_finished: Shown<Ratio>,
        /// Mass of softener that goes in with it.
        pub softener: Shown<Mass>,
        /// Density of the finished plastic at 20 °C, voids counted.
        pub density: Shown<MassDensity>,
        /// Mass of a piece; where the feed is not known, with a feed of 50 % as in plans.
        pub piece: Option<Shown<Mass>>,
        /// The same without feed, where the feed is not known.
        pub piece_min: Option<Shown<Mass>>,
        /// The same fed in full, where the feed is not known.
        pub piece_max: Option<Shown<Mass>>,
        /// Mean density of a piece with its hook and weight.
        pub sink_density: Option<Shown<MassDensity>>,
        /// Sink rate of the piece with its hook, where body and water were given.
        pub sinks: Option<Calculated<Sinking>>,
        /// Sink rate of the same piece without salt.
        pub unsalted_sinks: Option<Calculated<Sinking>>,
    }
}

/// A piece and the water that it sinks in.
struct Dropped {
    body: PieceBody,
    water: Water,
}

impl SaltRequest {
    /// Converts the loading to every form.
    ///
    /// # Errors
    /// A loading out of reach, with what is in reach; a property of the salt that is missing.
    pub fn answer(&self) -> Result<SaltResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let dropped = self.dropped(&mut resolver);
        let response = self.unsalted(&mut resolver).and_then(|unsalted| {
            let dropped = dropped?;
            let loading = self.loading.read(&unsalted, dropped.as_ref(), &mut resolver)?;
            let mut response = resolver.keep_named(
                &At("/loading"),
                Self::FIELDS,
                respond(&unsalted, loading, self.feed.is_some(), resolver.system),
            )?;
            if let (Some(dropped), Some(cavity)) = (&dropped, &unsalted.cavity) {
                let at = At("/loading");
                let salted = resolver.keep(&at, dropped.fall(&unsalted, cavity, loading))?;
                let none = SaltLoading::OfBase(Ratio::default());
                let plain = resolver.keep(&at, dropped.fall(&unsalted, cavity, none))?;
                response.sinks = Some(salted);
                response.unsalted_sinks = Some(plain);
            }
            Some(response)
        });
        resolver.finish(response)
    }

    /// The outer `None` where it is wrong.
    #[allow(clippy::option_option)] // no fall and a wrong one are two things
    fn dropped(&self, resolver: &mut Resolver) -> Option<Option<Dropped>> {
        let body = self.salted_body.as_ref().map(|body| resolver.body(&At("/salted_body"), body));
        let water = self
            .salted_water
            .as_ref()
            .map(|water| resolver.fished_water(&At("/salted_water"), water));
        let missing = match (&body, &water) {
            (None, None) => return Some(None),
            (None, Some(_)) => (Parameter::SaltedBody, Parameter::SaltedWater),
            (Some(_), None) => (Parameter::SaltedWater, Parameter::SaltedBody),
            (Some(_), Some(_)) if self.cavity_volume.is_none() => {
                (Parameter::CavityVolume, Parameter::SaltedBody)
            }
            (Some(body), Some(water)) => {
                let (body, water) = ((*body)?, (*water)?.water);
                return Some(Some(Dropped { body, water }));
            }
        };
        let (missing, by) = missing;
        let error = ParameterError::new(missing, Problem::NeededBy(by));
        resolver.report(&Path::ROOT.key(missing.name()), &error);
        None
    }

    fn unsalted(&self, resolver: &mut Resolver) -> Option<Unsalted> {
        let base_volume = resolver.given(Parameter::BaseVolume, &self.base_volume);
        let base_density = resolver.given(Parameter::BaseDensity, &self.base_density);
        let salt = self.salt(resolver);
        let softener = match &self.salt_softener {
            Some(softener) => softener.read(resolver).map(Some),
            None => Some(None),
        };
        let shot_temperature =
            resolver.or_default(Parameter::ShotTemperature, self.shot_temperature.as_ref());
        let hook_mass = resolver.or_default(Parameter::HookMass, self.hook_mass.as_ref());
        let hook_volume = resolver.or_default(Parameter::HookVolume, self.hook_volume.as_ref());
        let voids = resolver.share(Parameter::Voids, self.voids);
        let most_solids = resolver.share(Parameter::MostSolids, self.most_solids);
        let feed = resolver.share(Parameter::Feed, self.feed);
        let cavity = self
            .cavity_volume
            .as_ref()
            .map(|volume| resolver.given(Parameter::CavityVolume, volume));
        let mass = self.mix_mass.as_ref().map(|mass| resolver.given(Parameter::MixMass, mass));
        self.check_pairs(resolver);
        let mut own = |parameter, written: Option<&Written<Volume>>, other| match written {
            Some(written) => resolver.given(parameter, written),
            None => other,
        };
        let volume = own(Parameter::MixVolume, self.mix_volume.as_ref(), base_volume);
        let hot_volume = own(Parameter::HotVolume, self.hot_volume.as_ref(), volume);
        let base_volume = base_volume?;
        let base_mass = base_density? * base_volume;
        Some(Unsalted {
            base_mass,
            base_volume,
            mass: mass.unwrap_or(Some(base_mass))?,
            volume: volume?,
            hot_volume: hot_volume?,
            shot_temperature: shot_temperature?,
            voids: voids?,
            salt: salt?,
            softener: softener?,
            most_solids: most_solids?,
            cavity: match cavity {
                Some(volume) => Some(PieceCavity { volume: volume?, feed: feed? }),
                None => None,
            },
            hook: Hook { mass: hook_mass?, volume: hook_volume? },
        })
    }

    /// Mass and volume of the mix, and of the hook, go together.
    fn check_pairs(&self, resolver: &mut Resolver) {
        let pairs = [
            (Parameter::MixMass, self.mix_mass.is_some()),
            (Parameter::MixVolume, self.mix_volume.is_some()),
            (Parameter::HookMass, self.hook_mass.is_some()),
            (Parameter::HookVolume, self.hook_volume.is_some()),
        ];
        for pair in pairs.as_chunks::<2>().0 {
            let (missing, by) = match *pair {
                [(one, true), (other, false)] => (other, one),
                [(one, false), (other, true)] => (one, other),
                _ => continue,
            };
            let error = ParameterError::new(missing, Problem::NeededBy(by));
            resolver.report(&Path::ROOT.key(missing.name()), &error);
        }
    }

    fn salt(&self, resolver: &mut Resolver) -> Option<Salt> {
        let purpose = "calculating with salt";
        let salt = resolver.one_material(&At("/salt"), &self.salt)?;
        let true_density = resolver.keep(&At("/salt"), salt.true_density(purpose));
        let scooped_density = match &salt.as_scooped {
            Some(_) => Some(resolver.keep(&At("/salt"), salt.scooped_density(purpose))?),
            None => None,
        };
        Some(Salt {
            true_density: true_density?,
            scooped_density,
            expansion: salt.expansion_or_none(),
        })
    }
}

impl SaltSoftenerEntry {
    fn read(&self, resolver: &mut Resolver) -> Option<SaltSoftener> {
        let at = At("/salt_softener");
        let per_salt =
            resolver.share_at(&at.key("per_salt"), Parameter::SoftenerPerSalt, self.per_salt);
        let softener = resolver.one_material(&at.key("material"), &self.material)?;
        let density = softener.true_density("the softener that goes in with the salt");
        let density = resolver.keep(&at.key("material"), density);
        Some(SaltSoftener {
            per_salt: per_salt?,
            density: density?,
            expansion: softener.expansion_or_none(),
        })
    }
}

impl LoadingEntry {
    fn read(
        &self,
        unsalted: &Unsalted,
        dropped: Option<&Dropped>,
        resolver: &mut Resolver,
    ) -> Option<SaltLoading> {
        let system = resolver.system;
        if let Some(density) = &self.finished_density {
            let at = At("/loading/finished_density");
            resolver.given_at(&at, Parameter::FinishedDensity, density)?;
        }
        let base = unsalted.base_volume;
        let ratio = |share: Share| Ratio::from(share.number());
        let stated = [
            self.as_scooped.as_ref().map(|amount| {
                let scooped = match amount.dimension() {
                    Dimension::VOLUME => amount.to(system).map(|volume: Volume| volume / base),
                    _ => amount.to(system),
                };
                scooped.map(SaltLoading::Scooped)
            }),
            self.per_volume.as_ref().map(|amount| {
                let salt = match amount.dimension() {
                    Dimension::MASS => amount.to(system).map(|mass: Mass| mass / base),
                    _ => amount.to(system),
                };
                salt.map(SaltLoading::PerVolume)
            }),
            self.of_base.map(|share| Ok(SaltLoading::OfBase(ratio(share)))),
            self.of_finished.map(|share| Ok(SaltLoading::OfFinished(ratio(share)))),
            self.finished_density
                .as_ref()
                .map(|density| density.to(system).map(SaltLoading::FinishedDensity)),
            self.piece_mass.as_ref().map(|mass| mass.to(system).map(SaltLoading::PieceMass)),
            self.sink_density
                .as_ref()
                .map(|density| density.to(system).map(SaltLoading::SinkDensity)),
        ];
        let mut stated = stated.into_iter().flatten();
        match (stated.next(), stated.next(), &self.sink_rate) {
            (Some(loading), None, None) => resolver.keep(&At("/loading"), loading),
            (None, None, Some(speed)) => {
                let at = At("/loading/sink_rate");
                let speed = resolver.quantity(&at, speed)?;
                let (Some(dropped), Some(cavity)) = (dropped, &unsalted.cavity) else {
                    for missing in [Parameter::SaltedBody, Parameter::SaltedWater] {
                        let by = Problem::NeededBy(Parameter::SinkRate);
                        let path = Path::ROOT.key(missing.name());
                        resolver.report(&path, &ParameterError::new(missing, by));
                    }
                    return None;
                };
                resolver.keep(&at, dropped.loading_for(speed, unsalted, cavity))
            }
            _ => {
                resolver.fault(
                    code!("one-loading"),
                    &At("/loading"),
                    &"The loading must be stated in just one way.",
                    &"Write one of as_scooped, per_volume, of_base, of_finished, finished_density, piece_mass, sink_density, sink_rate.",
                );
                None
            }
        }
    }
}

impl Dropped {
    /// The fall of a piece from `cavity` with its hook at a loading.
    fn fall(
        &self,
        unsalted: &Unsalted,
        cavity: &PieceCavity,
        loading: SaltLoading,
    ) -> Result<Calculated<Sinking>, SaltError> {
        let (density, volume) = cooled(unsalted, cavity, loading)?;
        let body = self.body.of(volume, unsalted.hook, &self.water);
        let fall = body.and_then(|body| fall(&body, density, None, &self.water));
        Ok(fall.map_err(|error| because(&error)).into())
    }

    /// The loading at which a piece has the sink rate `speed`.
    fn loading_for(
        &self,
        speed: Velocity,
        unsalted: &Unsalted,
        cavity: &PieceCavity,
    ) -> Result<SaltLoading, SaltedSinkError> {
        loading_for(unsalted, cavity, |volume| {
            let body = self.body.of(volume, unsalted.hook, &self.water)?;
            Ok(body.density_for(speed, &self.water)?)
        })
    }
}

fn respond(
    unsalted: &Unsalted,
    loading: SaltLoading,
    feed_is_known: bool,
    system: System,
) -> Result<SaltResponse, SaltError> {
    let mass = unsalted.salt_mass(loading)?;
    let canonical = SaltLoading::OfBase(mass / unsalted.base_mass);
    let density = |form| -> Result<_, SaltError> {
        Ok(match unsalted.convert(canonical, form)? {
            SaltLoading::FinishedDensity(density) | SaltLoading::SinkDensity(density) => {
                Some(text::density(density))
            }
            _ => None,
        })
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
    let fed = |feed: f64| -> Result<_, SaltError> {
        let Some(cavity) = unsalted.cavity.filter(|_| !feed_is_known) else { return Ok(None) };
        let cavity = Some(PieceCavity { feed: Ratio::from(feed), ..cavity });
        Ok(match (Unsalted { cavity, ..*unsalted }).convert(canonical, SaltForm::PieceMass)? {
            SaltLoading::PieceMass(piece) => Some(text::mass(piece)),
            _ => None,
        })
    };
    let (piece_min, piece_max) = (fed(0.0)?, fed(1.0)?);
    let scoop = unsalted.salt.scooped_density.map(|density| density.scoop_of(mass));
    let spooned = scoop.and_then(|scoop| text::spooned(scoop, system));
    let shown = text::mass(mass);
    Ok(SaltResponse {
        dose: spooned.map_or_else(|| shown.text.clone(), |spooned| spooned.text),
        mass: shown,
        as_scooped: scoop.map(|scoop| text::scoop(scoop, system)),
        of_base: text::percent(mass / unsalted.base_mass),
        of_finished: text::percent(of_finished),
        softener: text::mass(mass * k),
        density: density(SaltForm::FinishedDensity)?
            .unwrap_or_else(|| text::density(unsalted.mass / unsalted.volume)),
        piece,
        piece_min,
        piece_max,
        sink_density: match unsalted.cavity {
            Some(_) => density(SaltForm::SinkDensity)?,
            None => None,
        },
        sinks: None,
        unsalted_sinks: None,
    })
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    fn request(loading: Value) -> Value {
        json!({
            "calculate": "salt", "base_volume": "1 cup", "base_density": "1.03 g/mL",
            "salt": { "kind": "salt", "density": "2.165 g/mL", "as_scooped": "1.22 g/mL" },
            "cavity_volume": "9.5 mL", "feed": "60 %", "hot_volume": "245 mL", "loading": loading,
            "hook_mass": "0.5 g", "hook_volume": "0.06 mL",
            "salted_body": { "stick": { "diameter": "10 mm", "length": "121 mm" } },
            "salted_water": { "temperature": "15 °C" }
        })
    }

    fn known(answer: &Value, field: &str) -> f64 {
        answer[field]["known"]["speed"]["value"].as_f64().unwrap_or_else(|| panic!("{answer}"))
    }

    /// By hand: a US teaspoon is 4.929 mL, 6.802 mL of the salt are 8.298 g.
    #[test]
    fn a_dose_is_by_the_spoon_where_one_holds_it() {
        for (as_scooped, dose) in
            [("3 tbsp", "3 tbsp"), ("1/2 tsp", "1/2 tsp"), ("6.802 mL", "8.3 g")]
        {
            let answer = result(request(json!({ "as_scooped": as_scooped })));
            assert_eq!(answer["dose"], dose, "{as_scooped}: {answer}");
        }
    }

    /// The salt for a wanted fall makes that fall; without it the piece falls more slowly.
    #[test]
    fn a_wanted_fall_comes_true() {
        let answer = result(request(json!({ "sink_rate": "14 cm/s" })));
        assert!((known(&answer, "sinks") - 14.0).abs() < 1e-6, "{answer}");
        assert!(known(&answer, "unsalted_sinks") < 11.0, "{answer}");
        // By its density the same salt falls as fast.
        let density = answer["density"]["value"].as_f64().unwrap();
        let by_density =
            result(request(json!({ "finished_density": { "value": density, "unit": "g/mL" } })));
        assert!((known(&by_density, "sinks") - 14.0).abs() < 1e-6);
        assert!(answer["mass"]["value"].as_f64().unwrap() > 10.0);
        // So does the piece that is asked for alone, as large as it is when it has cooled.
        let volume = answer["piece"]["value"].as_f64().unwrap() / density;
        let alone = json!({
            "calculate": "sink", "body": request(json!({}))["salted_body"], "fished_water": { "temperature": "15 °C" },
            "piece_volume": { "value": volume, "unit": "mL" }, "hook": { "mass": "0.5 g", "volume": "0.06 mL" },
            "piece_density": { "value": density, "unit": "g/mL" }
        });
        let alone = result(alone)["sink_rate"]["value"].as_f64().unwrap();
        assert!((alone - 14.0).abs() < 1e-6, "{alone}");
    }

    /// A mass of salt is that of the whole base.
    #[test]
    fn a_mass_per_volume_may_be_that_of_all() {
        let answer = result(request(json!({ "per_volume": "30 g" })));
        assert!((answer["mass"]["value"].as_f64().unwrap() - 30.0).abs() < 1e-9, "{answer}");
    }

    /// A piece that floats without its salt says so.
    #[test]
    fn what_floats_unsalted_is_said() {
        let mut request = request(json!({ "of_base": "20 %" }));
        request["base_density"] = json!("0.95 g/mL");
        request.as_object_mut().unwrap().remove("hook_mass");
        request.as_object_mut().unwrap().remove("hook_volume");
        let answer = result(request);
        assert_eq!(answer["unsalted_sinks"]["unknown"]["code"], "sink-floats");
        assert!(known(&answer, "sinks") > 0.0);
    }

    #[test]
    fn what_a_fall_takes_is_asked_for() {
        for missing in ["salted_body", "salted_water", "cavity_volume"] {
            let mut request = request(json!({ "sink_rate": "14 cm/s" }));
            request.as_object_mut().unwrap().remove(missing);
            assert_eq!(fault_codes(request), ["needs-other"], "{missing}");
        }
        let mut none = request(json!({ "sink_rate": "14 cm/s" }));
        none.as_object_mut().unwrap().remove("salted_body");
        none.as_object_mut().unwrap().remove("salted_water");
        assert_eq!(fault_codes(none), ["needs-other", "needs-other"]);
        let twice = request(json!({ "sink_rate": "14 cm/s", "of_base": "10 %" }));
        assert_eq!(fault_codes(twice), ["one-loading"]);
        let slow = request(json!({ "sink_rate": "2 cm/s" }));
        assert_eq!(fault_codes(slow), ["salt-out-of-reach"]);
    }
}
