//! The name of a parameter in a sentence.

use core::fmt;

use super::Parameter;

/// A parameter as a sentence has it: "the cavity volume", "the number of cavities". Always in the singular.
pub(super) struct Label(pub(super) Parameter);

impl fmt::Display for Label {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("the ")?;
        if let Some(label) = self.0.own_label() {
            return f.write_str(label);
        }
        for (index, word) in self.0.name().split('_').enumerate() {
            if index > 0 {
                f.write_str(" ")?;
            }
            f.write_str(word)?;
        }
        Ok(())
    }
}

impl Parameter {
    /// The label of a parameter whose name does not read as one.
    const fn own_label(self) -> Option<&'static str> {
        Some(match self {
            Self::GreenRed => "a* of the color",
            Self::BlueYellow => "b* of the color",
            Self::Lightness => "L* of the color",
            Self::OtherGreenRed => "a* of the other color",
            Self::OtherBlueYellow => "b* of the other color",
            Self::OtherLightness => "L* of the other color",
            Self::Actuals => "record of actual masses and shots",
            Self::After => "last day that was learned from",
            Self::Alike => "quantity that the doses share",
            Self::AsMeasuredDensity => "density as measured",
            Self::AsScooped => "density as scooped",
            Self::BallDepth => "depth that the ball sank",
            Self::BallTime => "time of the ball",
            Self::BaseInPot => "base in the pot",
            Self::BalanceLeastLoad => "minimum load of the balance",
            Self::BodyAs => "name of the body",
            Self::BrokenCups => "list of broken cups",
            Self::BrokenMolds => "list of broken molds",
            Self::BudgetWith => "stabilizer dose of the heat budget",
            Self::BurstStep => "shortest burst",
            Self::Buys => "heat that more stabilizer buys",
            Self::CastPieces => "number of cast pieces",
            Self::Cavities => "number of cavities",
            Self::CleanMass => "mass of the clean injector",
            Self::Cleanings => "number of cleanings",
            Self::ClockFrom | Self::HotFrom => "temperature after the last burst",
            Self::ClockTo | Self::HotTo => "lowest temperature to shoot at",
            Self::ClockMix | Self::HotMix => "mix in the pot",
            Self::ClockRuns => "list of runs",
            Self::Colorants => "list of colorants",
            Self::Cools => "pot that was watched to cool",
            Self::CupMark => "distance between marks of the cup",
            Self::Cups => "list of cups",
            Self::Cut => "cut of the flake",
            Self::DampAt => "temperature of the damp pot",
            Self::Doses => "list of doses",
            Self::DropsWeighed => "list of weighings of drops",
            Self::EmptiedMass => "mass of the emptied injector",
            Self::ExtraMost => "highest known stabilizer dose",
            Self::ExtraTime => "extra heat time",
            Self::Feed => "feed share",
            Self::Form => "form of the loading",
            Self::Formulas => "list of formulas",
            Self::GoodPieces => "number of good pieces",
            Self::Grain => "grain size",
            Self::Hands => "working time of a shot",
            Self::HardnessNow => "hardness of the piece",
            Self::HardnessWanted => "wanted hardness",
            Self::HeatedFrom => "temperature before heating",
            Self::HeatedTo => "temperature after heating",
            Self::HeatedTogether => "list of cups heated together",
            Self::HeatsBefore => "number of earlier heats",
            Self::HotFor => "time that the pot stays hot",
            Self::InjectorLeast => "smallest mix for the injector",
            Self::InjectorWeighed => "list of weighings of the injector",
            Self::Instead => "list of what went in instead",
            Self::Kind => "kind of material",
            Self::Loading | Self::LoadingRequested => "salt loading",
            Self::Made => "number of good pieces that are made",
            Self::Masses => "list of masses",
            Self::Materials => "list of materials",
            Self::Measures => "system of measures",
            Self::MeltViscosityMax => "highest viscosity of the melt",
            Self::MeltViscosityMin => "lowest viscosity of the melt",
            Self::MoldAt => "mold temperature",
            Self::Molds => "number of molds",
            Self::MoreLines => "list of more lines",
            Self::MostSolids => "maximum share of solids",
            Self::OnPurpose => "list of what is on purpose",
            Self::Orders => "order list",
            Self::OtherAsScooped => "density as scooped of the other flake",
            Self::OtherCut => "cut of the other flake",
            Self::OtherFilmDensity => "film density of the other flake",
            Self::OtherThickness => "film thickness of the other flake",
            Self::OvenLeast => "smallest mix for the oven",
            Self::OvenTurn => "turn of the oven",
            Self::Packs => "number of packs",
            Self::Part => "number of the part",
            Self::Parts => "list of parts",
            Self::PerBase => "base of the dose",
            Self::Pieces => "number of pieces",
            Self::Points | Self::SaltedPoints => "list of points",
            Self::PotShots => "number of shots",
            Self::Reading => "thermometer reading",
            Self::Readings => "list of readings",
            Self::RejectCount => "number of rejects",
            Self::Records => "list of records",
            Self::Rejects => "reject rate",
            Self::Replace => "choice to replace",
            Self::Returned => "share of sprue melted again",
            Self::ReturnedWorth => "worth of what comes back",
            Self::Rise => "rise in the vacuum",
            Self::Room => "room temperature",
            Self::SaltAsScooped => "salt density as scooped",
            Self::SaltOfBase => "salt per base",
            Self::SaveAs => "name of the formula",
            Self::ScoopsWeighed => "list of weighings of spoonfuls",
            Self::Sets => "time that a shot sets",
            Self::Setting => "oven setting",
            Self::ShotAt => "temperature of the shot",
            Self::ShotEvery => "time from shot to shot",
            Self::Shots => "number of shots",
            Self::SolidsShare => "share of solids",
            Self::SpentBefore => "heat time spent before",
            Self::Spoons => "list of spoons",
            Self::Stood => "time that the pot has stood",
            Self::TakeOut => "temperature to take a piece out at",
            Self::Thermometer => "error of the thermometer",
            Self::Thickness => "film thickness",
            Self::Ticks => "list of ticked steps",
            Self::TimedFrom => "temperature before the timed heating",
            Self::TimedTime => "time of the timed heating",
            Self::TimedTo => "temperature after the timed heating",
            Self::Timings => "list of timings",
            Self::To => "unit to convert to",
            Self::ToForm => "form to convert the loading to",
            Self::Trace => "trace share",
            Self::Unstirred => "unstirred share of the depth",
            Self::VesselBrim => "brim volume of the vessel",
            Self::VesselMark => "distance between marks of the vessel",
            Self::VesselSpare => "spare share of the vessel",
            Self::Voids => "void fraction",
            Self::WatchedFrom => "first watched temperature",
            Self::WatchedTo => "second watched temperature",
            Self::WeighedCount => "count of the weighing",
            Self::WeighedMass => "mass of the weighing",
            Self::Weights => "list of weights",
            Self::WindowBottom => "bottom of the shot window",
            Self::WindowTop => "top of the shot window",
            Self::WithMaterial => "softener or hardener",
            Self::WrittenIn => "measure of the formula",
            _ => return None,
        })
    }
}
