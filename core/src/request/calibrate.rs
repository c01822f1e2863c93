//! Cavity or feed share of a mold, from weighed pieces.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::change::{self, Change};
use super::{request, response};
use crate::calibrate::{Unsure, Weighed};
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Written};
use crate::fault::Faults;
use crate::json::path::Path::At;
use crate::json::reader::Name;
use crate::parameter::{Parameter, ParameterError, Problem};
use crate::quantity::{Mass, MassDensity, Measured, Ratio, System, Volume};
use crate::shot::Melt;
use crate::show::{Shown, text};

request! {
    /// Asks for a cavity's volume, or its feed share, from the weights of pieces.
    pub struct CalibrateRequest {
        required {
            weights: Vec<Written<Mass>>,
            cold_density: Written<MassDensity>,
            balance_readability: Written<Mass>,
        }
        optional {
            hot_density: Written<MassDensity>,
            voids: Share,
            feed: Share,
            feed_uncertainty: Share,
            cavity_volume: Written<Volume>,
            calibrated_mold: Name,
            calibrated_shape: Name,
            measures: System,
        }
    }
}

response! {
    /// Result of the weights: the cavity, with `feed` known; the feed share, with `cavity` known.
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
        /// Its standard uncertainty: from that of the mean, the ± of densities, and `feed_uncertainty`.
        pub volume_uncertainty: Option<Shown<Volume>>,
        /// Share of its contraction that a piece draws from the sprue.
        pub feed: Option<Shown<Ratio>>,
        /// Its standard uncertainty: from that of the mean, and the ± of densities and cavity.
        pub feed_uncertainty: Option<Shown<Ratio>>,
        /// Changes to a book, as a JSON Patch (RFC 6902); empty if no mold was named.
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

    /// Of a feed share that is not known, that of an even spread from 0 to 1: 1/√12 (JCGM 100, 4.3.7).
    fn feed_uncertainty(&self, resolver: &mut Resolver) -> Option<Ratio> {
        match (self.feed, self.feed_uncertainty) {
            (None, None) => Some(Ratio::from(1.0 / libm::sqrt(12.0))),
            (_, stated) => resolver.share(Parameter::FeedUncertainty, stated),
        }
    }

    fn response(&self, resolver: &mut Resolver) -> Option<CalibrateResponse> {
        let weights = resolver.each(&At("/weights"), &self.weights, |resolver, path, weight| {
            resolver.given_at(path, Parameter::PieceWeight, weight)
        });
        let readability = resolver.given(Parameter::BalanceReadability, &self.balance_readability);
        let cold = resolver.measured_given(Parameter::ColdDensity, &self.cold_density);
        let hot = match &self.hot_density {
            Some(hot) => resolver.measured_given(Parameter::HotDensity, hot),
            // It is the cold one, and errs with it.
            None => cold.as_ref().map(|cold| Measured::exact(cold.value)),
        };
        let cavity = self
            .cavity_volume
            .as_ref()
            .map(|volume| resolver.measured_given(Parameter::CavityVolume, volume));
        if self.cavity_volume.is_some() && self.feed.is_some() {
            let both = Problem::Excludes(Parameter::Feed);
            let error = ParameterError::new(Parameter::CavityVolume, both);
            resolver.report(&At("/cavity_volume"), &error);
            return None;
        }
        let voids = resolver.share(Parameter::Voids, self.voids)?;
        let (cold, hot) = (cold?, hot?);
        let melt = Melt { hot: hot.value, cold: cold.value, voids };
        let unsure = Unsure {
            cold: cold.uncertainty.unwrap_or_default(),
            hot: hot.uncertainty.unwrap_or_default(),
            ..Unsure::default()
        };
        let weighed = resolver.keep(&At("/weights"), Weighed::new(&weights?, readability?))?;
        let solved = match cavity {
            None => {
                let feed = resolver.share(Parameter::Feed, self.feed)?;
                let unsure = Unsure { feed: self.feed_uncertainty(resolver)?, ..unsure };
                let solved = weighed.cavity_volume(&melt, feed, &unsure);
                solved.map(|solved| (Some(solved), None))
            }
            Some(cavity) => {
                let cavity = cavity?;
                let unsure = Unsure { cavity: cavity.uncertainty.unwrap_or_default(), ..unsure };
                let solved = weighed.feed_share(&melt, cavity.value, &unsure);
                solved.map(|solved| (None, Some(solved)))
            }
        };
        let (cavity, share) = resolver.keep(&At("/weights"), solved)?;
        let cavity = cavity.map(|cavity| text::uncertain(cavity.volume, cavity.uncertainty));
        let (cavity, volume, volume_uncertainty) = match cavity {
            Some(cavity) => (Some(cavity.both), Some(cavity.value), Some(cavity.uncertainty)),
            None => (None, None, None),
        };
        let feed = share.map(|share| text::percent(share.share));
        let mold = self.calibrated_mold.as_ref();
        let write = match (&cavity, &feed) {
            (Some(cavity), _) => {
                change::of_mold(mold, self.calibrated_shape.as_ref(), "cavity", cavity)
            }
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
            "cold_density": "1.042 g/mL", "balance_readability": "0.1 g"
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
    fn a_book_gets_no_certainty() {
        let answer = result(request(&[("feed", "60 %")]));
        assert_eq!(answer["cavity"], "9.117 mL ± 0.018");
        // With 0.8 % of density 0.07 mL: √(0.0175² + 0.07²) = 0.072.
        let answer = result(request(&[("feed", "60 %"), ("cold_density", "1.042 g/mL ± 0.008")]));
        assert_eq!(answer["cavity"], "9.117 mL ± 0.072");
    }

    /// The uncertainty of each input counts.
    #[test]
    fn each_uncertainty_counts() {
        let hot = ("hot_density", "0.97 g/mL");
        let volume = unsure(&[hot, ("feed", "60 %")], "volume_uncertainty");
        for more in [("hot_density", "0.97 g/mL ± 0.02"), ("feed_uncertainty", "10 %")] {
            let more = [hot, ("feed", "60 %"), more];
            assert!(unsure(&more, "volume_uncertainty") > volume, "{more:?}");
        }
        let feed = unsure(&[hot, ("cavity_volume", "9.4 mL")], "feed_uncertainty");
        assert!(unsure(&[hot, ("cavity_volume", "9.4 mL ± 0.05")], "feed_uncertainty") > feed);
    }

    #[test]
    fn faults() {
        assert_eq!(
            fault_codes(request(&[("feed", "50 %"), ("cavity_volume", "9.4 mL")])),
            ["excludes-other"]
        );
        let mut unread = request(&[("feed", "60 %")]);
        unread.as_object_mut().unwrap().remove("balance_readability");
        assert_eq!(fault_codes(unread), ["missing-field"]);
    }
}
