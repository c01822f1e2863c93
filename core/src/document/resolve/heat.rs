//! Heat of a material, and the cut of a flake.

use super::Resolver;
use crate::codes::code;
use crate::document::book::MaterialEntry;
use crate::document::process::{BudgetEntry, BuysEntry};
use crate::document::written::Percent;
use crate::json::path::Path;
use crate::material::{HeatBudget, Kind, Material};
use crate::mix::reference_temperature;
use crate::parameter::Parameter;
use crate::process::budget::{Budget, Extra};
use crate::process::history::Kinetics;
use crate::quantity::{Measurable, Ratio};

impl Resolver {
    /// Heat and flake of a material.
    pub(super) fn heat_and_flake(
        &mut self,
        path: &Path<'_>,
        entry: &MaterialEntry,
        material: &mut Material,
    ) {
        let named = [
            ("budget", entry.budget.is_some(), Kind::Plastisol),
            ("buys", entry.buys.is_some(), Kind::Stabilizer),
            ("cut", entry.cut.is_some(), Kind::Flake),
            ("thickness", entry.thickness.is_some(), Kind::Flake),
            ("color", entry.color.is_some(), Kind::Plastisol),
            ("over_backings", entry.over_backings.is_some(), Kind::Plastisol),
            ("fluorescent", entry.fluorescent.is_some(), Kind::Colorant),
            ("let_downs", entry.let_downs.is_some(), Kind::Colorant),
            ("strength", entry.strength.is_some(), Kind::Colorant),
        ];
        for (field, is_there, kind) in named {
            if is_there && entry.kind != kind {
                self.fault(
                    code!("property-of-another-kind"),
                    &path.key(field),
                    &format_args!("\"{field}\" is of a {kind}, and this is a {}.", entry.kind),
                    &format_args!("Move it to the {kind} that it is meant for."),
                );
            }
        }
        if let Some(energy) = &entry.activation_energy {
            let parameter = Some(Parameter::ActivationEnergy);
            material.activation_energy =
                self.property(path, "activation_energy", parameter, Some(energy));
        }
        material.budget =
            entry.budget.as_ref().and_then(|entry| self.budget(&path.key("budget"), entry));
        self.check_kinetics(path, material);
        material.buys = entry.buys.as_ref().and_then(|entry| self.buys(&path.key("buys"), entry));
        material.cut = entry.cut.as_ref().map(|cut| cut.cut).or(material.cut);
        let thickness = entry.thickness.as_ref();
        material.thickness = thickness
            .and_then(|thickness| {
                self.given_at(&path.key("thickness"), Parameter::Thickness, thickness)
            })
            .or(material.thickness);
    }

    fn budget(&mut self, path: &Path<'_>, entry: &BudgetEntry) -> Option<HeatBudget> {
        let time = self.positive(&path.key("time"), &entry.time);
        let at = self.keep(&path.key("at"), entry.at.to(self.system));
        let with = Ratio::from(entry.with.map_or(0.0, Percent::share));
        self.keep(path, Budget::new(time?, with, None))?;
        Some(HeatBudget { time: time?, at: at?, with })
    }

    /// The activation energy must be one, with its source; the reference temperature a pot's.
    fn check_kinetics(&mut self, path: &Path<'_>, material: &Material) {
        let Some(energy) = &material.activation_energy else { return };
        let source = energy.source.clone().unwrap_or_default();
        let reference = material.budget.map_or_else(reference_temperature, |budget| budget.at);
        let path = path.key("activation_energy");
        self.keep(&path, Kinetics::new(energy.value, reference, source));
    }

    pub(crate) fn buys(&mut self, path: &Path<'_>, entry: &BuysEntry) -> Option<Extra> {
        let time = self.positive(&path.key("time"), &entry.time);
        let per = entry.per.share();
        if per <= 0.0 {
            self.fault(
                code!("share-of-nothing"),
                &path.key("per"),
                &"No stabilizer buys no time.",
                &"Write the dose that buys the time, such as \"1 %\".",
            );
            return None;
        }
        let time = time? / per;
        self.keep(&path.key("time"), Parameter::ExtraTime.check_si(time.si()))?;
        Some(Extra { time, most: Ratio::from(entry.most.share()) })
    }
}
