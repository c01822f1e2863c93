//! What weighed pieces say of a mold.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::response;
use crate::calibrate::{CalibrateError, Weighed};
use crate::document::entry::entry;
use crate::document::path::Path::{self, At};
use crate::document::resolve::Resolver;
use crate::document::written::{Percent, Written};
use crate::fault::Faults;
use crate::parameter::parameter;
use crate::plan::{Shown, text};
use crate::quantity::{Mass, MassDensity, Ratio, System, Volume};
use crate::shot::Melt;

entry! {
    /// Asks for a cavity's volume, or its feed share, from the weights of pieces.
    pub struct CalibrateRequest {
        required {
            #[doc = parameter!(weights)]
            weights: Vec<Written<Mass>>,
            #[doc = parameter!(cold_density)]
            cold_density: Written<MassDensity>,
        }
        optional {
            #[doc = parameter!(hot_density)]
            hot_density: Written<MassDensity>,
            #[doc = parameter!(voids)]
            voids: Percent,
            #[doc = parameter!(feed)]
            feed: Percent,
            #[doc = parameter!(cavity)]
            cavity: Written<Volume>,
            #[doc = parameter!(measures)]
            measures: System,
        }
    }
}

response! {
    /// What the weights say. With `feed` known, the cavity; with `cavity` known, the feed share.
    pub struct CalibrateResponse {
        /// How many pieces were weighed.
        pub count: u32,
        /// Their mean.
        pub mean: Shown<Mass>,
        /// Standard deviation of one.
        pub deviation: Shown<Mass>,
        /// Standard uncertainty of the mean.
        pub uncertainty: Shown<Mass>,
        /// A weight that Grubbs' test questions; it is in the mean.
        pub questioned: Option<String>,
        /// Volume of the cavity with its standard uncertainty, as a book writes it.
        pub cavity: Option<String>,
        /// The volume of the cavity.
        pub volume: Option<Shown<Volume>>,
        /// Its standard uncertainty, from the scatter of the weights.
        pub volume_uncertainty: Option<Shown<Volume>>,
        /// Share of its contraction that a piece draws from the sprue.
        pub feed: Option<Shown<Ratio>>,
        /// Its standard uncertainty.
        pub feed_uncertainty: Option<Shown<Ratio>>,
    }
}

impl CalibrateRequest {
    /// Sums the weights up and solves for what is not known.
    ///
    /// # Errors
    /// Weights that cannot be right, and why; both or neither of `feed` and `cavity` given.
    pub fn answer(&self) -> Result<CalibrateResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<CalibrateResponse> {
        let weights = resolver.each(&At("/weights"), &self.weights, |resolver, path, weight| {
            resolver.quantity(path, weight)
        });
        let cold = resolver.quantity(&At("/cold_density"), &self.cold_density);
        let hot = match &self.hot_density {
            Some(hot) => resolver.quantity(&At("/hot_density"), hot),
            None => cold,
        };
        let cavity = self.cavity.as_ref().map(|volume| resolver.quantity(&At("/cavity"), volume));
        if self.cavity.is_some() == self.feed.is_some() {
            resolver.fault(
                "feed-or-cavity",
                &Path::ROOT,
                &"One of \"feed\" and \"cavity\" must be known.",
                &"Give \"feed\" to learn the cavity's volume, or \"cavity\" to learn the feed share.",
            );
        }
        let voids = Ratio::from(self.voids.map_or(0.0, Percent::share));
        let melt = Melt { hot: hot?, cold: cold?, voids };
        let weighed = resolver.keep(&At("/weights"), Weighed::new(&weights?))?;
        let solved = match (self.feed, cavity) {
            (Some(feed), None) => {
                let solved = weighed.cavity_volume(&melt, Ratio::from(feed.share()));
                solved.map(|solved| (Some(solved), None))
            }
            (None, Some(cavity)) => {
                let solved = weighed.feed_share(&melt, cavity?);
                solved.map(|solved| (None, Some(solved)))
            }
            _ => Ok::<_, CalibrateError>((None, None)),
        };
        let (cavity, share) = resolver.keep(&At("/weights"), solved)?;
        let cavity = cavity.map(|cavity| text::uncertain(cavity.volume, cavity.uncertainty));
        let (cavity, volume, volume_uncertainty) = match cavity {
            Some(cavity) => (Some(cavity.both), Some(cavity.value), Some(cavity.uncertainty)),
            None => (None, None, None),
        };
        Some(CalibrateResponse {
            count: u32::try_from(weighed.count).unwrap_or(u32::MAX),
            mean: text::mass(weighed.mean),
            deviation: text::mass(weighed.deviation),
            uncertainty: text::mass(weighed.uncertainty),
            questioned: weighed.questioned.map(|questioned| questioned.to_string()),
            cavity,
            volume,
            volume_uncertainty,
            feed: share.map(|share| text::percent(share.share)),
            feed_uncertainty: share.map(|share| text::percent(share.uncertainty)),
        })
    }
}
