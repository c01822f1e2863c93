//! What weighed pieces say of a mold.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::change::{self, Change};
use super::response;
use crate::calibrate::{CalibrateError, Unsure, Weighed};
use crate::document::resolve::Resolver;
use crate::document::written::{Percent, Written};
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::parameter::parameter;
use crate::quantity::{Mass, MassDensity, Measured, Ratio, System, Volume};
use crate::shot::Melt;
use crate::show::{Shown, text};

entry! {
    /// Asks for a cavity's volume, or its feed share, from the weights of pieces.
    pub struct CalibrateRequest {
        required {
            #[doc = parameter!(weights)]
            weights: Vec<Written<Mass>>,
            #[doc = parameter!(cold_density)]
            cold_density: Written<MassDensity>,
            #[doc = parameter!(balance_readability)]
            readability: Written<Mass>,
        }
        optional {
            #[doc = parameter!(hot_density)]
            hot_density: Written<MassDensity>,
            #[doc = parameter!(voids)]
            voids: Percent,
            #[doc = parameter!(feed)]
            feed: Percent,
            #[doc = parameter!(feed_uncertainty)]
            feed_uncertainty: Percent,
            #[doc = parameter!(cavity_volume)]
            cavity: Written<Volume>,
            #[doc = parameter!(calibrated_mold)]
            mold: Name,
            #[doc = parameter!(calibrated_shape)]
            shape: Name,
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
        /// Standard uncertainty of the mean: from their scatter, and from the rounding of the balance.
        pub uncertainty: Shown<Mass>,
        /// A weight that Grubbs' test questions; it is in the mean.
        pub questioned: Option<String>,
        /// Volume of the cavity with its standard uncertainty, as a book writes it.
        pub cavity: Option<String>,
        /// The volume of the cavity.
        pub volume: Option<Shown<Volume>>,
        /// Its standard uncertainty: from that of the mean, what stands behind the ± of densities, and `feed_uncertainty`.
        pub volume_uncertainty: Option<Shown<Volume>>,
        /// Share of its contraction that a piece draws from the sprue.
        pub feed: Option<Shown<Ratio>>,
        /// Its standard uncertainty: from that of the mean, and what stands behind the ± of densities and cavity.
        pub feed_uncertainty: Option<Shown<Ratio>>,
        /// What it changes in a book, as a JSON Patch (RFC 6902); empty where no mold was named.
        pub write: Vec<Change>,
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
        let readability = resolver.quantity(&At("/readability"), &self.readability);
        let cold = resolver.measured(&At("/cold_density"), &self.cold_density);
        let hot = match &self.hot_density {
            Some(hot) => resolver.measured(&At("/hot_density"), hot),
            // It is the cold one, and errs with it.
            None => cold.as_ref().map(|cold| Measured::exact(cold.value)),
        };
        let cavity = self.cavity.as_ref().map(|volume| resolver.measured(&At("/cavity"), volume));
        if self.cavity.is_some() == self.feed.is_some() {
            resolver.fault(
                "feed-or-cavity",
                &Path::ROOT,
                &"One of \"feed\" and \"cavity\" must be known.",
                &"Give \"feed\" to learn the cavity's volume, or \"cavity\" to learn the feed share.",
            );
        }
        let voids = Ratio::from(self.voids.map_or(0.0, Percent::share));
        let (cold, hot) = (cold?, hot?);
        let melt = Melt { hot: hot.value, cold: cold.value, voids };
        let unsure = Unsure {
            cold: cold.uncertainty.unwrap_or_default(),
            hot: hot.uncertainty.unwrap_or_default(),
            ..Unsure::default()
        };
        let weighed = resolver.keep(&At("/weights"), Weighed::new(&weights?, readability?))?;
        let solved = match (self.feed, cavity) {
            (Some(feed), None) => {
                let of_feed = Ratio::from(self.feed_uncertainty.map_or(0.0, Percent::share));
                let unsure = Unsure { feed: of_feed, ..unsure };
                let solved = weighed.cavity_volume(&melt, Ratio::from(feed.share()), &unsure);
                solved.map(|solved| (Some(solved), None))
            }
            (None, Some(cavity)) => {
                let cavity = cavity?;
                let unsure = Unsure { cavity: cavity.uncertainty.unwrap_or_default(), ..unsure };
                let solved = weighed.feed_share(&melt, cavity.value, &unsure);
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
        let feed = share.map(|share| text::percent(share.share));
        let mold = self.mold.as_ref();
        let write = match (&cavity, &feed) {
            (Some(cavity), _) => change::of_mold(mold, self.shape.as_ref(), "cavity", cavity),
            // A mold has one feed share for all its shapes.
            (None, Some(feed)) => change::of_mold(mold, None, "feed", &feed.text),
            (None, None) => Vec::new(),
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
            feed,
            feed_uncertainty: share.map(|share| text::percent(share.uncertainty)),
            write,
        })
    }
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    fn request(more: &[(&str, &str)]) -> Value {
        let mut request = json!({
            "calculate": "calibrate", "weights": ["9.5 g", "9.5 g", "9.5 g", "9.5 g", "9.5 g"],
            "cold_density": "1.042 g/mL", "readability": "0.1 g"
        });
        for (field, value) in more {
            request[*field] = json!(value);
        }
        request
    }

    fn unsure(more: &[(&str, &str)], field: &str) -> f64 {
        result(request(more))[field]["value"].as_f64().unwrap()
    }

    /// Equal readings hide the rounding of the balance: 0.1/√6/√5 g of 1.042 g/mL are 0.0175 mL.
    #[test]
    fn a_book_is_not_told_of_certainty() {
        let answer = result(request(&[("feed", "60 %")]));
        assert_eq!(answer["cavity"], "9.117 mL ± 0.018");
        // With 0.8 % of density 0.07 mL: √(0.0175² + 0.07²) = 0.072.
        let answer = result(request(&[("feed", "60 %"), ("cold_density", "1.042 g/mL ± 0.008")]));
        assert_eq!(answer["cavity"], "9.117 mL ± 0.072");
    }

    /// What each input is unsure by counts.
    #[test]
    fn each_uncertainty_counts() {
        let hot = ("hot_density", "0.97 g/mL");
        let volume = unsure(&[hot, ("feed", "60 %")], "volume_uncertainty");
        for more in [("hot_density", "0.97 g/mL ± 0.02"), ("feed_uncertainty", "10 %")] {
            let more = [hot, ("feed", "60 %"), more];
            assert!(unsure(&more, "volume_uncertainty") > volume, "{more:?}");
        }
        let feed = unsure(&[hot, ("cavity", "9.4 mL")], "feed_uncertainty");
        assert!(unsure(&[hot, ("cavity", "9.4 mL ± 0.05")], "feed_uncertainty") > feed);
    }

    #[test]
    fn faults() {
        assert_eq!(fault_codes(request(&[])), ["feed-or-cavity"]);
        let mut unread = request(&[("feed", "60 %")]);
        unread.as_object_mut().unwrap().remove("readability");
        assert_eq!(fault_codes(unread), ["missing-field"]);
    }
}
