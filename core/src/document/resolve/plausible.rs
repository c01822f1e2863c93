//! The numbers of a book against the table of what is [plausible](crate::plausible).

use alloc::string::ToString;

use super::Resolver;
use crate::document::book::{
    BenchEntry, BookDocument, CavitiesEntry, CavityVolume, CupEntry, FormulaEntry, MaterialEntry,
    MoldEntry, SourcedDrop,
};
use crate::document::process::OvenEntry;
use crate::document::written::{Percent, Sourced, Written};
use crate::formula::Formula;
use crate::json::path::Path::{self, At};
use crate::material::{Kind, Material};
use crate::mix::Materials;
use crate::plausible::{Found, Quantity};
use crate::quantity::{
    Amount, Basis, By, Dimension, Mass, MassDensity, Measurable, Ratio, Share, Volume,
};

/// Of a plastisol that states none, in kg/m³.
const USUAL_DENSITY: f64 = 1030.0;

/// The numbers of one object.
struct Numbers<'a> {
    path: &'a Path<'a>,
    sure: bool,
}

impl<'a> Numbers<'a> {
    fn of(path: &'a Path<'a>, sure: Option<bool>) -> Self {
        Self { path, sure: sure.unwrap_or(false) }
    }

    fn written<Q: Measurable>(
        &self,
        to: &mut Resolver,
        field: &str,
        quantity: Quantity,
        written: Option<&Written<Q>>,
    ) {
        let Some(written) = written else { return };
        to.check_amount(&self.path.key(field), self.sure, quantity, written);
    }

    fn sourced<Q: Measurable>(
        &self,
        to: &mut Resolver,
        field: &str,
        quantity: Quantity,
        written: Option<&Sourced<Q>>,
    ) {
        self.written(to, field, quantity, written.map(|written| &written.value));
    }

    fn share(&self, to: &mut Resolver, field: &str, quantity: Quantity, written: Option<Percent>) {
        let Some(written) = written else { return };
        to.check_number(
            &self.path.key(field),
            self.sure,
            quantity,
            &written.to_string(),
            written.share(),
        );
    }
}

impl Resolver {
    fn check_amount<Q: Measurable>(
        &mut self,
        path: &Path<'_>,
        sure: bool,
        quantity: Quantity,
        written: &Written<Q>,
    ) {
        let Ok(si) = written.amount().si(Q::DIMENSION, self.system) else { return };
        self.check_number(path, sure, quantity, &written.to_string(), si);
    }

    /// A number that has a fault already gets no second one.
    fn check_number(
        &mut self,
        path: &Path<'_>,
        sure: bool,
        quantity: Quantity,
        text: &str,
        si: f64,
    ) {
        let system = self.system;
        if let Err(error) = quantity.check(&Found { text, si, sure, system })
            && !self.has_fault(path)
        {
            self.report(path, &error);
        }
    }

    pub(super) fn plausible_material(
        &mut self,
        path: &Path<'_>,
        entry: &MaterialEntry,
        material: &Material,
    ) {
        let of = Numbers::of(path, entry.sure);
        let density = match entry.kind {
            Kind::Plastisol => Quantity::PlastisolDensity,
            Kind::Softener | Kind::Hardener | Kind::Stabilizer | Kind::Scent => {
                Quantity::LiquidDensity
            }
            // A colorant may be a dry pigment.
            _ => Quantity::SolidDensity,
        };
        of.sourced(self, "density", density, entry.density.as_ref());
        of.sourced(self, "fused", density, entry.fused.as_ref());
        of.sourced(self, "as_scooped", Quantity::ScoopedDensity, entry.as_scooped.as_ref());
        if let (Some(written), Some(scooped), Some(density)) =
            (&entry.as_scooped, &material.as_scooped, &material.density)
        {
            let (path, text) = (path.key("as_scooped"), written.value.to_string());
            let share = (scooped.value / density.value).si();
            self.check_number(&path, of.sure, Quantity::Packing, &text, share);
        }
        of.sourced(self, "expansion", Quantity::Expansion, entry.expansion.as_ref());
        of.sourced(self, "specific_heat", Quantity::SpecificHeat, entry.specific_heat.as_ref());
        let rise = entry.specific_heat_rise.as_ref();
        of.sourced(self, "specific_heat_rise", Quantity::SpecificHeatRise, rise);
        of.sourced(
            self,
            "activation_energy",
            Quantity::ActivationEnergy,
            entry.activation_energy.as_ref(),
        );
        of.sourced(self, "grain", Quantity::Grain, entry.grain.as_ref());
        of.written(self, "thickness", Quantity::Thickness, entry.thickness.as_ref());
        match &entry.drop {
            Some(SourcedDrop::Mass(mass)) => {
                of.sourced(self, "drop", Quantity::DropMass, Some(mass));
            }
            Some(SourcedDrop::Volume(volume)) => {
                of.sourced(self, "drop", Quantity::DropVolume, Some(volume));
            }
            None => {}
        }
        if let Some((low, high)) = &entry.shot_window {
            let window = path.key("shot_window");
            for (index, bound) in [low, high].into_iter().enumerate() {
                let quantity = Quantity::ShotTemperature;
                self.check_amount(&window.index(index), of.sure, quantity, bound);
            }
        }
        of.share(self, "tolerance", Quantity::Tolerance, entry.tolerance);
        if let Some(budget) = &entry.budget {
            let path = path.key("budget");
            let of = Numbers::of(&path, budget.sure);
            of.written(self, "at", Quantity::BudgetTemperature, Some(&budget.at));
            of.written(self, "time", Quantity::WorkTime, Some(&budget.time));
        }
        if let Some(hardness) = &entry.hardness {
            let path = path.key("hardness");
            let points = path.key("points");
            for (index, point) in hardness.points.iter().enumerate() {
                let (ratio, sure) = (point.point_ratio, hardness.sure.unwrap_or(false));
                let path = points.index(index);
                let path = path.key("point_ratio");
                let text = ratio.to_string();
                self.check_number(&path, sure, Quantity::Hardener, &text, ratio.number());
            }
        }
    }

    /// Dose of a test piece; `sure` is what its material says.
    pub(super) fn plausible_let_down(
        &mut self,
        path: &Path<'_>,
        sure: Option<bool>,
        dose: &Amount,
        ratio: Ratio,
    ) {
        let sure = sure.unwrap_or(false);
        self.check_number(path, sure, Quantity::SmallDose, &dose.to_string(), ratio.value);
    }

    /// Doses per base; those of finished mix are solved for with their own faults.
    pub(super) fn plausible_doses(
        &mut self,
        path: &Path<'_>,
        entry: &FormulaEntry,
        formula: &Formula,
        materials: &Materials,
    ) {
        let base = formula.base.first().and_then(|base| materials.get(base.material).ok());
        let density = base.and_then(|base| base.density.as_ref());
        let density = density.map_or(MassDensity::from_si(USUAL_DENSITY), |density| density.value);
        let path = path.key("doses");
        for dose in &formula.doses {
            let Ok(material) = materials.get(dose.material) else { continue };
            let Some(ratio) = self.dose_per_base(formula, dose, material, density) else {
                continue;
            };
            let quantity = match material.kind {
                Kind::Colorant | Kind::Pearl | Kind::Flake | Kind::Scent | Kind::Stabilizer => {
                    Quantity::SmallDose
                }
                _ => Quantity::Dose,
            };
            let sure = entry.sure.unwrap_or(false);
            let text = dose.amount.to_string();
            // What is wrong with the material makes its doses look wrong, too.
            if self.has_fault(&At("/materials").key(&material.name).key("drop")) {
                continue;
            }
            self.check_number(&path.key(&material.name), sure, quantity, &text, ratio);
        }
    }

    fn dose_per_base(
        &self,
        formula: &Formula,
        dose: &crate::formula::Dose,
        material: &Material,
        density: MassDensity,
    ) -> Option<f64> {
        match dose.amount.basis() {
            Some(Basis { share: Share::OfBase, by: By::Mass }) => {
                dose.amount.to::<Ratio>(self.system).ok().map(Measurable::si)
            }
            Some(_) => None,
            None => {
                let per = formula.per.as_ref()?;
                let per: Mass = match per.dimension() {
                    Dimension::VOLUME => per.to::<Volume>(self.system).ok()? * density,
                    _ => per.to(self.system).ok()?,
                };
                let mass = material.mass_of(&dose.amount, self.system, "weighing it").ok()?;
                (per > Mass::default()).then(|| (mass / per).si())
            }
        }
    }

    /// All numbers of a book but those of its materials and formulas, which are checked as they are read.
    pub(super) fn plausible(&mut self, book: &BookDocument) {
        if let Some(altitude) = &book.altitude
            && let Ok(si) = altitude.to(self.system)
        {
            let (path, sure) = (&At("/altitude"), book.sure.unwrap_or(false));
            let text = altitude.to_string();
            self.check_number(path, sure, Quantity::Altitude, &text, si.si());
        }
        for (name, mold) in &book.molds {
            self.plausible_mold(&At("/molds").key(name), mold);
        }
        self.plausible_bench(&At("/bench"), &book.bench);
        if let Some(limits) = &book.limits {
            let path = At("/limits");
            let of = Numbers::of(&path, limits.sure);
            of.share(self, "rejects", Quantity::Rejects, limits.rejects);
            of.share(self, "tolerance", Quantity::Tolerance, limits.tolerance);
            of.written(self, "least_pot", Quantity::CupVolume, limits.least_pot.as_ref());
        }
        if let Some(costing) = &book.costing {
            let path = At("/costing");
            let of = Numbers::of(&path, costing.sure);
            let times = [
                ("per_pot", &costing.per_pot),
                ("per_heat", &costing.per_heat),
                ("per_shot", &costing.per_shot),
                ("per_pack", &costing.per_pack),
            ];
            for (field, time) in times {
                of.written(self, field, Quantity::WorkTime, time.as_ref());
            }
        }
    }

    fn plausible_mold(&mut self, path: &Path<'_>, mold: &MoldEntry) {
        let of = Numbers::of(path, mold.sure);
        if let Some(cavity) = &mold.cavity {
            self.plausible_cavity(&path.key("cavity"), of.sure, cavity);
        }
        if let CavitiesEntry::Unlike(shapes) = &mold.cavities {
            let parent = path.key("cavities");
            for (shape, entry) in shapes {
                let path = parent.key(shape);
                let sure = entry.sure.unwrap_or(false);
                self.plausible_cavity(&path.key("cavity"), sure, &entry.cavity);
            }
        }
        of.written(self, "sprue", Quantity::SprueVolume, mold.sprue.as_ref());
        of.written(self, "top", Quantity::TopMass, mold.top.as_ref());
        of.share(self, "rejects", Quantity::Rejects, mold.rejects);
        of.written(self, "sets", Quantity::WorkTime, mold.sets.as_ref());
        of.written(self, "per_shot", Quantity::WorkTime, mold.per_shot.as_ref());
    }

    fn plausible_cavity(&mut self, path: &Path<'_>, sure: bool, cavity: &CavityVolume) {
        match cavity {
            CavityVolume::Volume(volume) => {
                self.check_amount(path, sure, Quantity::CavityVolume, volume);
            }
            // A gram of water is a milliliter.
            CavityVolume::Water(entry) => {
                let Ok(water) = entry.water.to(self.system) else { return };
                let (text, si) = (entry.water.to_string(), water.si() / 1000.0);
                self.check_number(&path.key("water"), sure, Quantity::CavityVolume, &text, si);
            }
        }
    }

    fn plausible_bench(&mut self, at: &Path<'_>, bench: &BenchEntry) {
        let sure = bench.sure.unwrap_or(false);
        let spoons = at.key("spoons");
        for (index, spoon) in bench.spoons.iter().flatten().enumerate() {
            self.check_amount(&spoons.index(index), sure, Quantity::SpoonVolume, spoon);
        }
        if let Some(balance) = &bench.balance {
            let path = at.key("balance");
            let of = Numbers::of(&path, balance.sure);
            of.written(self, "reads", Quantity::ScaleStep, Some(&balance.reads));
            of.written(self, "from", Quantity::ScaleLoad, balance.from.as_ref());
            of.written(self, "to", Quantity::ScaleLoad, balance.to.as_ref());
        }
        let path = at.key("injector");
        let of = Numbers::of(&path, bench.injector.sure);
        of.written(self, "holds", Quantity::InjectorVolume, Some(&bench.injector.holds));
        if let Some(keeps) = &bench.injector.keeps
            && let (Ok(kept), Ok(holds)) =
                (keeps.to(self.system), bench.injector.holds.to(self.system))
            && holds > Volume::default()
        {
            let (path, text) = (path.key("keeps"), keeps.to_string());
            self.check_number(&path, of.sure, Quantity::KeptShare, &text, (kept / holds).si());
        }
        let cups = at.key("cups");
        for (index, cup) in bench.cups.iter().enumerate() {
            self.plausible_cup(&cups.index(index), cup);
        }
        if let Some(oven) = &bench.oven {
            self.plausible_oven(&at.key("oven"), oven);
        }
    }

    fn plausible_cup(&mut self, path: &Path<'_>, cup: &CupEntry) {
        let of = Numbers::of(path, cup.sure);
        of.written(self, "holds", Quantity::CupVolume, Some(&cup.holds));
        of.written(self, "marks", Quantity::MarkStep, cup.marks.as_ref());
        of.written(self, "brim", Quantity::CupVolume, cup.brim.as_ref());
        of.written(self, "mass", Quantity::CupMass, cup.mass.as_ref());
        of.written(self, "specific_heat", Quantity::SpecificHeat, cup.specific_heat.as_ref());
        let Ok(holds) = cup.holds.to(self.system) else { return };
        if holds <= Volume::default() {
            return;
        }
        let holds = holds * MassDensity::from_si(1000.0);
        for (field, left) in [("film", &cup.film), ("heel", &cup.heel)] {
            let Some(left) = left else { continue };
            let Ok(mass) = left.to(self.system) else { continue };
            let (share, text) = ((mass / holds).si(), left.to_string());
            self.check_number(&path.key(field), of.sure, Quantity::FilmShare, &text, share);
        }
    }

    fn plausible_oven(&mut self, path: &Path<'_>, oven: &OvenEntry) {
        let of = Numbers::of(path, oven.sure);
        of.written(self, "reheat_from", Quantity::OvenTemperature, oven.reheat_from.as_ref());
        of.written(self, "room", Quantity::RoomTemperature, oven.room.as_ref());
        of.written(self, "hot_for", Quantity::OvenTime, oven.hot_for.as_ref());
        let timings = path.key("timings");
        for (index, timing) in oven.timings.iter().flatten().enumerate() {
            let path = timings.index(index);
            let of = Numbers::of(&path, timing.sure);
            of.written(self, "from", Quantity::OvenTemperature, Some(&timing.from));
            of.written(self, "to", Quantity::OvenTemperature, Some(&timing.to));
            of.written(self, "time", Quantity::OvenTime, Some(&timing.time));
            of.written(self, "vessel", Quantity::CupMass, timing.vessel.as_ref());
            let heat = timing.vessel_specific_heat.as_ref();
            of.written(self, "vessel_specific_heat", Quantity::SpecificHeat, heat);
        }
        if let Some(cools) = &oven.cools {
            let path = path.key("cools");
            let of = Numbers::of(&path, cools.sure);
            of.written(self, "from", Quantity::OvenTemperature, Some(&cools.from));
            of.written(self, "to", Quantity::OvenTemperature, Some(&cools.to));
            of.written(self, "time", Quantity::OvenTime, Some(&cools.time));
            of.written(self, "room", Quantity::RoomTemperature, cools.room.as_ref());
        }
    }
}
