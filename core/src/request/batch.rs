//! How much to mix for so many pieces.

use super::response;
use crate::batch::{self, Injector, Rejects, Run, Wanted};
use crate::document::resolve::Resolver;
use crate::document::written::{Percent, Written};
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::path::Path::{self, At};
use crate::parameter::parameter;
use crate::quantity::{Mass, MassDensity, Ratio, System, Volume};
use crate::show::{Shown, text};

entry! {
    /// Asks how much to mix for so many like pieces from one mold.
    pub struct BatchRequest {
        required {
            #[doc = parameter!(pieces)]
            pieces: u32,
            #[doc = parameter!(cavities)]
            cavities: u32,
            #[doc = parameter!(shot_mass)]
            shot_mass: Written<Mass>,
            #[doc = parameter!(shot_density)]
            shot_density: Written<MassDensity>,
            #[doc = parameter!(injector_capacity)]
            injector_capacity: Written<Volume>,
        }
        optional {
            #[doc = parameter!(sprue_mass)]
            sprue_mass: Written<Mass>,
            #[doc = parameter!(returned)]
            returned: Percent,
            #[doc = parameter!(injector_residue)]
            injector_residue: Written<Volume>,
            #[doc = parameter!(cleanings)]
            cleanings: u32,
            #[doc = parameter!(pot_film)]
            pot_film: Written<Mass>,
            #[doc = parameter!(pot_heel)]
            pot_heel: Written<Mass>,
            #[doc = parameter!(rejects)]
            rejects: Percent,
            #[doc = parameter!(confidence)]
            confidence: Percent,
            #[doc = parameter!(measures)]
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
        /// What all shots take.
        pub drawn: Shown<Mass>,
        /// What of the sprues is melted again and shot.
        pub returned: Shown<Mass>,
        /// All pieces.
        pub pieces: Shown<Mass>,
        /// Sprues that are left over.
        pub sprues: Shown<Mass>,
        /// What the injector keeps.
        pub kept: Shown<Mass>,
        /// What stays in the cup: the heel, with the film in it.
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
        let fill = resolver.quantity(&At("/shot_mass"), &self.shot_mass);
        let density = resolver.quantity(&At("/shot_density"), &self.shot_density);
        let holds = resolver.quantity(&At("/injector_capacity"), &self.injector_capacity);
        let keeps = resolver.or_zero(&At("/injector_residue"), self.injector_residue.as_ref());
        let sprue = resolver.or_zero(&At("/sprue_mass"), self.sprue_mass.as_ref());
        let film = resolver.or_zero(&At("/pot_film"), self.pot_film.as_ref());
        let heel = resolver.or_zero(&At("/pot_heel"), self.pot_heel.as_ref());
        let wanted = [Wanted { pieces: self.pieces, cavities: self.cavities }];
        let rate = self.rejects.map_or(0.0, Percent::share);
        let rejects = Some(Rejects {
            rate: Ratio::from(rate),
            confidence: Ratio::from(self.confidence.map_or(0.9, Percent::share)),
        });
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
            returned: Ratio::from(self.returned.map_or(0.0, Percent::share)),
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
