//! The shop's own numbers from weighings.

use alloc::vec::Vec;

use super::{if_given, of, or_default};
use crate::calibrate::{CalibrateError, Counted, Emptied, PerOne, Residue, Unsure, Weighed};
use crate::parameter::{Check, Parameter, PlainUnit};
use crate::quantity::{Mass, MassDensity, Measurable, Measured, Ratio, Volume};
use crate::shot::Melt;
use crate::table::{Refusal, calculation};

fn grams(mass: Mass) -> f64 {
    PlainUnit::Gram.from_si(mass.si())
}

/// Weighed pieces and the mix that they are of.
fn weighed(
    weights_g: &[f64],
    readability_g: f64,
    check: &mut Check,
) -> Result<Weighed, CalibrateError> {
    let weights: Vec<Mass> = weights_g.iter().map(|&g| of(Parameter::PieceWeight, g)).collect();
    let weighed = Weighed::new(&weights, of(Parameter::BalanceReadability, readability_g));
    check.number(Parameter::BalanceReadability, PlainUnit::Gram.to_si(readability_g));
    check.merge_numbers(&weighed);
    weighed
}

fn melt(cold_g_per_ml: f64, hot_g_per_ml: Option<f64>, voids: Option<f64>) -> Melt {
    let cold: MassDensity = of(Parameter::ColdDensity, cold_g_per_ml);
    Melt {
        hot: if_given(Parameter::HotDensity, hot_g_per_ml).unwrap_or(cold),
        cold,
        voids: or_default(Parameter::Voids, voids),
    }
}

calculation! {
    /// Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f (ρ_cold − ρ_hot)]).
    CAVITY_OF_WEIGHTS = "cavity_of_weights": CavityOfWeights<'a> -> CavityOfWeightsResult
    takes {
        weights_g: &'a [f64] = Weights,
        balance_readability_g: f64 = BalanceReadability,
        cold_density_g_per_ml: f64 = ColdDensity,
        hot_density_g_per_ml: Option<f64> = HotDensity,
        voids: Option<f64> = Voids,
        feed: Option<f64> = Feed,
        feed_uncertainty: Option<f64> = FeedUncertainty,
    }
    gives {
        /// Volume of the cavity.
        cavity_volume_ml: f64 = "cavity_volume" Milliliter,
        /// Its standard uncertainty. Where the feed is not known, that of an even spread from 0 to 1 counts.
        cavity_volume_uncertainty_ml: f64 = "cavity_volume_uncertainty" Milliliter,
        /// Mean of the weights.
        mean_g: f64 = "mean" Gram,
        /// Standard deviation of one.
        deviation_g: f64 = "deviation" Gram,
    }
    request "calibrate"
    example CavityOfWeights {
        weights_g: &[10.0, 10.0],
        balance_readability_g: 0.01,
        cold_density_g_per_ml: 1.0,
        hot_density_g_per_ml: None,
        voids: None,
        feed: Some(0.5),
        feed_uncertainty: None,
    } => CavityOfWeightsResult {
        cavity_volume_ml: 10.0,
        cavity_volume_uncertainty_ml: 0.002_886_751_345_948,
        mean_g: 10.0,
        deviation_g: 0.0,
    };
}

impl CavityOfWeights<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; weights that scatter too much for one cavity.
    pub fn calculate(&self) -> Result<CavityOfWeightsResult, Refusal> {
        let mut check = Check::new();
        let weighed = weighed(self.weights_g, self.balance_readability_g, &mut check);
        let melt = melt(self.cold_density_g_per_ml, self.hot_density_g_per_ml, self.voids);
        melt.check(&mut check);
        let feed: Ratio = or_default(Parameter::Feed, self.feed);
        // An even spread from 0 to 1 has the standard deviation 1/√12 (JCGM 100, 4.3.7).
        let unknown = if self.feed.is_some() { 0.0 } else { 1.0 / libm::sqrt(12.0) };
        let unsure_feed = Ratio::from(self.feed_uncertainty.unwrap_or(unknown));
        check
            .number(Parameter::Feed, feed.value)
            .number(Parameter::FeedUncertainty, unsure_feed.value);
        check.finish()?;
        let weighed = weighed?;
        let unsure = Unsure { feed: unsure_feed, ..Unsure::default() };
        let cavity = weighed.cavity_volume(&melt, feed, &unsure)?;
        let milliliters = |volume: Volume| PlainUnit::Milliliter.from_si(volume.si());
        Ok(CavityOfWeightsResult {
            cavity_volume_ml: milliliters(cavity.volume),
            cavity_volume_uncertainty_ml: milliliters(cavity.uncertainty),
            mean_g: grams(weighed.mean),
            deviation_g: grams(weighed.deviation),
        })
    }
}

calculation! {
    /// Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold − ρ_hot).
    FEED_OF_WEIGHTS = "feed_of_weights": FeedOfWeights<'a> -> FeedOfWeightsResult
    takes {
        weights_g: &'a [f64] = Weights,
        balance_readability_g: f64 = BalanceReadability,
        cold_density_g_per_ml: f64 = ColdDensity,
        cavity_volume_ml: f64 = CavityVolume,
        hot_density_g_per_ml: Option<f64> = HotDensity,
        voids: Option<f64> = Voids,
        volume_uncertainty_ml: Option<f64> = VolumeUncertainty,
    }
    gives {
        /// Feed share.
        feed: f64 = "feed" Pure,
        /// Its standard uncertainty.
        feed_uncertainty: f64 = "feed_uncertainty" Pure,
        /// Mean of the weights.
        mean_g: f64 = "mean" Gram,
        /// Standard deviation of one.
        deviation_g: f64 = "deviation" Gram,
    }
    request "calibrate"
    example FeedOfWeights {
        weights_g: &[10.5, 10.5],
        balance_readability_g: 0.01,
        cold_density_g_per_ml: 1.1,
        cavity_volume_ml: 10.0,
        hot_density_g_per_ml: Some(1.0),
        voids: None,
        volume_uncertainty_ml: None,
    } => FeedOfWeightsResult {
        feed: 0.5,
        feed_uncertainty: 0.002_886_751_345_948,
        mean_g: 10.5,
        deviation_g: 0.0,
    };
}

impl FeedOfWeights<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; weights that scatter too much, or that cannot come from this cavity and mix; a mix that
    /// does not shrink.
    pub fn calculate(&self) -> Result<FeedOfWeightsResult, Refusal> {
        let mut check = Check::new();
        let weighed = weighed(self.weights_g, self.balance_readability_g, &mut check);
        let melt = melt(self.cold_density_g_per_ml, self.hot_density_g_per_ml, self.voids);
        let volume: Volume = of(Parameter::CavityVolume, self.cavity_volume_ml);
        let unsure: Volume = or_default(Parameter::VolumeUncertainty, self.volume_uncertainty_ml);
        melt.check(&mut check);
        check
            .number(Parameter::CavityVolume, volume.si())
            .number(Parameter::VolumeUncertainty, unsure.si());
        check.finish()?;
        let weighed = weighed?;
        let unsure = Unsure { cavity: unsure, ..Unsure::default() };
        let feed = weighed.feed_share(&melt, volume, &unsure)?;
        Ok(FeedOfWeightsResult {
            feed: feed.share.value,
            feed_uncertainty: feed.uncertainty.value,
            mean_g: grams(weighed.mean),
            deviation_g: grams(weighed.deviation),
        })
    }
}

/// Weighings of counted drops or spoonfuls. A count that is not whole is refused.
fn counted(
    list: Parameter,
    weighings: &[[f64; 2]],
    readability_g: f64,
    check: &mut Check,
) -> Result<PerOne, CalibrateError> {
    let mut counted = Vec::with_capacity(weighings.len());
    for (index, &[count, mass]) in weighings.iter().enumerate() {
        use crate::table::{Argument, Field};
        let parameter = Parameter::WeighedCount;
        let count = u32::read(Argument::Number(count), parameter).map_err(|error| error.at(index));
        let count = check.keep(count).unwrap_or(1);
        counted.push(Counted { count, weight: of(Parameter::WeighedMass, mass) });
    }
    let per_one = PerOne::new(&counted, of(Parameter::BalanceReadability, readability_g));
    let per_one = per_one.map_err(|error| match error {
        CalibrateError::Parameters(errors) => errors
            .renamed(
                |parameter| if parameter == Parameter::DropsWeighed { list } else { parameter },
            )
            .into(),
        other => other,
    });
    check.number(Parameter::BalanceReadability, PlainUnit::Gram.to_si(readability_g));
    check.merge_numbers(&per_one);
    per_one
}

calculation! {
    /// Mass of one drop from several weighings of many.
    DROP_OF_WEIGHINGS = "drop_of_weighings": DropOfWeighings<'a> -> DropOfWeighingsResult
    takes {
        drops_weighed: &'a [[f64; 2]] = DropsWeighed,
        balance_readability_g: f64 = BalanceReadability,
    }
    gives {
        /// Mass of one drop.
        drop_mass_g: f64 = "drop_mass" Gram,
        /// Its standard uncertainty.
        drop_mass_uncertainty_g: f64 = "drop_mass_uncertainty" Gram,
        /// Standard deviation of one drop against the next.
        scatter_g: f64 = "scatter" Gram,
    }
    request "calibrate-drop"
    example DropOfWeighings { drops_weighed: &[[50.0, 2.2], [50.0, 2.2]], balance_readability_g: 0.01 }
        => DropOfWeighingsResult {
            drop_mass_g: 0.044,
            drop_mass_uncertainty_g: 0.000_057_735_026_918_96,
            scatter_g: 0.0,
        };
}

impl DropOfWeighings<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; weighings that do not agree; a mass that is not that of a drop.
    pub fn calculate(&self) -> Result<DropOfWeighingsResult, Refusal> {
        let mut check = Check::new();
        let one = counted(
            Parameter::DropsWeighed,
            self.drops_weighed,
            self.balance_readability_g,
            &mut check,
        );
        check.finish()?;
        let one = one?;
        one.drop()?;
        Ok(DropOfWeighingsResult {
            drop_mass_g: grams(one.mass),
            drop_mass_uncertainty_g: grams(one.uncertainty),
            scatter_g: grams(one.scatter),
        })
    }
}

calculation! {
    /// Bulk density of a powder from several weighings of level spoonfuls.
    AS_SCOOPED_OF_WEIGHINGS = "as_scooped_of_weighings": AsScoopedOfWeighings<'a> -> AsScoopedOfWeighingsResult
    takes {
        scoops_weighed: &'a [[f64; 2]] = ScoopsWeighed,
        spoon_volume_ml: f64 = SpoonVolume,
        balance_readability_g: f64 = BalanceReadability,
        volume_uncertainty_ml: Option<f64> = VolumeUncertainty,
    }
    gives {
        /// Bulk density, level in the spoon.
        as_scooped_g_per_ml: f64 = "as_scooped" GramPerMilliliter,
        /// Its standard uncertainty.
        as_scooped_uncertainty_g_per_ml: f64 = "as_scooped_uncertainty" GramPerMilliliter,
        /// Mass of one spoonful.
        spoonful_g: f64 = "spoonful" Gram,
    }
    request "calibrate-spoon"
    example AsScoopedOfWeighings {
        scoops_weighed: &[[10.0, 61.0], [10.0, 61.0]],
        spoon_volume_ml: 5.0,
        balance_readability_g: 0.1,
        volume_uncertainty_ml: None,
    } => AsScoopedOfWeighingsResult {
        as_scooped_g_per_ml: 1.22,
        as_scooped_uncertainty_g_per_ml: 0.000_577_350_269_189_6,
        spoonful_g: 6.1,
    };
}

impl AsScoopedOfWeighings<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; weighings that do not agree; a density that is not that of a powder.
    pub fn calculate(&self) -> Result<AsScoopedOfWeighingsResult, Refusal> {
        let mut check = Check::new();
        let one = counted(
            Parameter::ScoopsWeighed,
            self.scoops_weighed,
            self.balance_readability_g,
            &mut check,
        );
        let spoon: Volume = of(Parameter::SpoonVolume, self.spoon_volume_ml);
        let unsure: Volume = or_default(Parameter::VolumeUncertainty, self.volume_uncertainty_ml);
        check
            .number(Parameter::SpoonVolume, spoon.si())
            .number(Parameter::VolumeUncertainty, unsure.si());
        check.finish()?;
        let one = one?;
        let density = one.as_scooped(&Measured::new(spoon, unsure))?;
        let plain = |density: MassDensity| PlainUnit::GramPerMilliliter.from_si(density.si());
        Ok(AsScoopedOfWeighingsResult {
            as_scooped_g_per_ml: plain(density.value),
            as_scooped_uncertainty_g_per_ml: plain(density.uncertainty.unwrap_or_default()),
            spoonful_g: grams(one.mass),
        })
    }
}

calculation! {
    /// Volume that stays in an injector, from weighings of it clean and then emptied as at work.
    RESIDUE_OF_WEIGHINGS = "residue_of_weighings": ResidueOfWeighings<'a> -> ResidueOfWeighingsResult
    takes {
        injector_weighed_g: &'a [[f64; 2]] = InjectorWeighed,
        residue_density_g_per_ml: f64 = ResidueDensity,
        balance_readability_g: f64 = BalanceReadability,
        density_uncertainty_g_per_ml: Option<f64> = DensityUncertainty,
    }
    gives {
        /// Volume that stays in the injector.
        injector_residue_ml: f64 = "injector_residue" Milliliter,
        /// Its standard uncertainty.
        injector_residue_uncertainty_ml: f64 = "injector_residue_uncertainty" Milliliter,
        /// Its mass.
        residue_mass_g: f64 = "residue_mass" Gram,
    }
    request "calibrate-injector"
    example ResidueOfWeighings {
        injector_weighed_g: &[[180.0, 184.0], [180.0, 184.0]],
        residue_density_g_per_ml: 1.0,
        balance_readability_g: 0.1,
        density_uncertainty_g_per_ml: None,
    } => ResidueOfWeighingsResult {
        injector_residue_ml: 4.0,
        injector_residue_uncertainty_ml: 0.028_867_513_459_48,
        residue_mass_g: 4.0,
    };
}

impl ResidueOfWeighings<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; an injector that is lighter emptied than clean.
    pub fn calculate(&self) -> Result<ResidueOfWeighingsResult, Refusal> {
        let weighing = |&[clean, emptied]: &[f64; 2]| Emptied {
            clean: of(Parameter::CleanMass, clean),
            emptied: of(Parameter::EmptiedMass, emptied),
        };
        let weighings: Vec<Emptied> = self.injector_weighed_g.iter().map(weighing).collect();
        let readability = of(Parameter::BalanceReadability, self.balance_readability_g);
        let residue = Residue::new(&weighings, readability);
        let density: MassDensity = of(Parameter::ResidueDensity, self.residue_density_g_per_ml);
        let unsure: MassDensity =
            or_default(Parameter::DensityUncertainty, self.density_uncertainty_g_per_ml);
        let mut check = Check::new();
        check
            .number(Parameter::BalanceReadability, readability.si())
            .merge_numbers(&residue)
            .number(Parameter::ResidueDensity, density.si())
            .number(Parameter::DensityUncertainty, unsure.si());
        check.finish()?;
        let residue = residue?;
        let volume = residue.volume(&Measured::new(density, unsure))?;
        let milliliters = |volume: Volume| PlainUnit::Milliliter.from_si(volume.si());
        Ok(ResidueOfWeighingsResult {
            injector_residue_ml: milliliters(volume.value),
            injector_residue_uncertainty_ml: milliliters(volume.uncertainty.unwrap_or_default()),
            residue_mass_g: grams(residue.mass),
        })
    }
}
