//! How the shop works.

use super::Resolver;
use crate::book::Limits;
use crate::codes::code;
use crate::document::book::LimitsEntry;
use crate::document::written::Percent;
use crate::json::path::Path::At;
use crate::parameter::Parameter;

impl Resolver {
    pub(super) fn limits(&mut self, entry: Option<&LimitsEntry>) -> Limits {
        let mut limits = Limits::default();
        let Some(entry) = entry else { return limits };
        let set = |field: &mut f64, percent: Option<Percent>| {
            if let Some(percent) = percent {
                *field = percent.share();
            }
        };
        set(&mut limits.rejects, entry.rejects);
        set(&mut limits.confidence, entry.confidence);
        set(&mut limits.solids, entry.solids);
        set(&mut limits.most_full, entry.most_full);
        if limits.most_full <= 0.0 {
            self.fault(
                code!("share-of-nothing"),
                &At("/limits/most_full"),
                &"A cup that may not be filled holds no pot.",
                &"Write a share above 0 %, such as \"60 %\".",
            );
        }
        self.check_below_one(&At("/limits/rejects"), entry.rejects.map(Percent::share));
        self.check_confidence(entry.confidence.map(Percent::share));
        if let Some(tolerance) = self.tolerance(&At("/limits/tolerance"), entry.tolerance) {
            limits.tolerance = tolerance;
        }
        limits.least_pot = entry
            .least_pot
            .as_ref()
            .and_then(|least| self.positive(&At("/limits/least_pot"), least));
        limits.sprues = entry.sprues.unwrap_or(limits.sprues);
        limits.heats = entry.heats;
        limits.fresh_base = entry.fresh_base.unwrap_or(limits.fresh_base);
        let water = entry.water.as_ref();
        limits.water = water.and_then(|water| self.fished_water(&At("/limits/water"), water));
        limits
    }

    fn check_confidence(&mut self, confidence: Option<f64>) {
        if confidence.is_some_and(|share| !Parameter::Confidence.holds_si(share)) {
            self.fault(
                code!("confidence-out-of-range"),
                &At("/limits/confidence"),
                &"0 % is sure without a piece, and 100 % is not to be had.",
                &"Write a share above 0 % and below 100 %, such as \"90 %\".",
            );
        }
    }
}
