//! How much to mix for a number of pieces.

use super::{request, response};
use crate::batch::{self, Injector, Rejects, Run, Wanted};
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Written};
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::parameter::Parameter;
use crate::quantity::{Mass, MassDensity, System, Volume};
use crate::show::{Shown, text};

request! {
    /// Asks how much to mix for a number of like pieces from one mold.
    pub struct BatchRequest {
        required {
            pieces: u32,
            cavities: u32,
            shot_mass: Written<Mass>,
            shot_density: Written<MassDensity>,
            injector_capacity: Written<Volume>,
        }
        optional {
            sprue_mass: Written<Mass>,
            returned: Share,
            injector_residue: Written<Volume>,
            cleanings: u32,
            pot_film: Written<Mass>,
            pot_heel: Written<Mass>,
            rejects: Share,
            confidence: Share,
            measures: System,
        }
    }
}

response! {
    /// How much to mix, and where it goes.
    pub struct BatchResponse {
        /// Shots.
        pub shots: u32,
        /// Pieces that they make.
        pub made: u32,
        /// Whole shots in one injector load.
        pub shots_per_load: u32,
        /// Injector loads.
        pub loads: u32,
        /// The mass to mix.
        pub total: Shown<Mass>,
        /// Mass of all shots.
        pub drawn: Shown<Mass>,
        /// Mass of sprues that are melted again and shot.
        pub returned: Shown<Mass>,
        /// Mass of all pieces.
        pub pieces: Shown<Mass>,
        /// Sprues that are left over.
        pub sprues: Shown<Mass>,
        /// Mass that stays in the injector.
        pub kept: Shown<Mass>,
        /// Mass that stays in the cup: the heel, with the film in it.
        pub in_cup: Shown<Mass>,
    }
}

impl BatchRequest {
    /// Counts shots and loads and adds up what they take.
    ///
    /// # Errors
    /// A mold larger than the injector, with the largest shot that fits; numbers that cannot be.
    pub fn answer(&self) -> Result<BatchResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<BatchResponse> {
        let fill = resolver.given(Parameter::ShotMass, &self.shot_mass);
        let density = resolver.given(Parameter::ShotDensity, &self.shot_density);
        let holds = resolver.given(Parameter::InjectorCapacity, &self.injector_capacity);
        let keeps = resolver.or_default(Parameter::InjectorResidue, self.injector_residue.as_ref());
        let sprue = resolver.or_default(Parameter::SprueMass, self.sprue_mass.as_ref());
        let film = resolver.or_default(Parameter::PotFilm, self.pot_film.as_ref());
        let heel = resolver.or_default(Parameter::PotHeel, self.pot_heel.as_ref());
        let rate = resolver.share(Parameter::Rejects, self.rejects);
        let confidence = resolver.share(Parameter::Confidence, self.confidence);
        let returned = resolver.share(Parameter::Returned, self.returned);
        let wanted = [Wanted { pieces: self.pieces, cavities: self.cavities }];
        let rejects = Some(Rejects { rate: rate?, confidence: confidence? });
        let shots =
            resolver.keep_named(&At("/pieces"), Self::FIELDS, batch::shots(&wanted, rejects))?;
        let injector = Injector { holds: holds?, keeps: keeps? };
        let loads = resolver.keep_named(
            &At("/shot_mass"),
            Self::FIELDS,
            injector.loads(shots, fill?, density?),
        )?;
        let run = Run {
            shots,
            loads,
            fill: fill?,
            sprue: sprue?,
            returned: returned?,
            injector_keeps: resolver.keep_named(
                &At("/injector_residue"),
                Self::FIELDS,
                injector.kept(density?),
            )?,
            cleanings: self.cleanings.unwrap_or(1),
            film: film?,
            heel: heel?,
        };
        let need = resolver.keep_named(&Path::ROOT, Self::FIELDS, run.need())?;
        Some(BatchResponse {
            shots,
            made: shots.saturating_mul(self.cavities),
            shots_per_load: loads.shots_per_load,
            loads: loads.loads,
            total: text::mass(need.total),
            drawn: text::mass(need.drawn),
            returned: text::mass(need.returned),
            pieces: text::mass(need.pieces),
            sprues: text::mass(need.sprues_left),
            kept: text::mass(need.kept),
            in_cup: text::mass(need.in_cup),
        })
    }
}
