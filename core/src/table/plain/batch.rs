//! From pieces to the mass to mix.

use super::{if_given, of, or_default};
use crate::batch::{
    DoseStep, Injector, Loads, Marks, PotLimits, Rejects, Run, Wanted, reject_interval, shots,
};
use crate::parameter::{Check, Parameter, PlainUnit};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, Volume};
use crate::table::{Refusal, calculation};

#[inline]
fn grams(mass: Mass) -> f64 {
    PlainUnit::Gram.from_si(mass.si())
}

fn count_shots(
    pieces: u32,
    cavities: u32,
    rejects: Option<f64>,
    confidence: Option<f64>,
) -> Result<u32, crate::batch::BatchError> {
    let rejects = Rejects {
        rate: or_default(Parameter::Rejects, rejects),
        confidence: or_default(Parameter::Confidence, confidence),
    };
    shots(&[Wanted { pieces, cavities }], Some(rejects))
}

calculation! {
    /// Minimum number of shots for a number of good pieces.
    ///
    /// Without rejects ⌈N/n⌉; with a reject rate p the smallest S with P[Bin(S n, 1 − p) ≥ N] ≥ the confidence.
    SHOTS = "shots": Shots -> ShotsResult
    takes {
        pieces: u32 = Pieces,
        cavities: u32 = Cavities,
        rejects: Option<f64> = Rejects,
        confidence: Option<f64> = Confidence,
    }
    gives {
        /// Number of shots.
        shots: u32 = "shots" Count,
        /// Number of pieces that they cast.
        cast: u32 = "cast" Count,
    }
    request "batch"
    example Shots { pieces: 10, cavities: 4, rejects: None, confidence: None }
        => ShotsResult { shots: 3, cast: 12 };
}

impl Shots {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; rejects so frequent that too many pieces would have to be cast.
    pub fn calculate(&self) -> Result<ShotsResult, Refusal> {
        let shots = count_shots(self.pieces, self.cavities, self.rejects, self.confidence)?;
        Ok(ShotsResult { shots, cast: shots.saturating_mul(self.cavities) })
    }
}

calculation! {
    /// Injector loads for a number of shots.
    ///
    /// Whole shots a load: q = ⌊(capacity − residue) ρ/m⌋; loads: ⌈S/q⌉.
    INJECTOR_LOADS = "injector_loads": InjectorLoads -> InjectorLoadsResult
    takes {
        shots: u32 = Shots,
        shot_mass_g: f64 = ShotMass,
        shot_density_g_per_ml: f64 = ShotDensity,
        injector_capacity_ml: f64 = InjectorCapacity,
        injector_residue_ml: Option<f64> = InjectorResidue,
    }
    gives {
        /// Number of injector loads.
        loads: u32 = "loads" Count,
        /// Whole shots in one load.
        shots_per_load: u32 = "shots_per_load" Count,
        /// Shots from the last load.
        shots_in_last: u32 = "shots_in_last" Count,
    }
    request "batch"
    example InjectorLoads {
        shots: 5,
        shot_mass_g: 40.0,
        shot_density_g_per_ml: 1.0,
        injector_capacity_ml: 100.0,
        injector_residue_ml: Some(10.0),
    } => InjectorLoadsResult { loads: 3, shots_per_load: 2, shots_in_last: 1 };
}

impl InjectorLoads {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a shot that does not fit, with the largest that does.
    pub fn calculate(&self) -> Result<InjectorLoadsResult, Refusal> {
        let (_, loads) = loads(
            self.shots,
            of(Parameter::ShotMass, self.shot_mass_g),
            of(Parameter::ShotDensity, self.shot_density_g_per_ml),
            self.injector_capacity_ml,
            self.injector_residue_ml,
        )?;
        Ok(InjectorLoadsResult {
            loads: loads.loads,
            shots_per_load: loads.shots_per_load,
            shots_in_last: loads.shots_in_last,
        })
    }
}

fn loads(
    shots: u32,
    shot: Mass,
    density: MassDensity,
    capacity_ml: f64,
    residue_ml: Option<f64>,
) -> Result<(Injector, Loads), crate::batch::BatchError> {
    let injector = Injector {
        holds: of(Parameter::InjectorCapacity, capacity_ml),
        keeps: or_default(Parameter::InjectorResidue, residue_ml),
    };
    let loads = injector.loads(shots, shot, density)?;
    Ok((injector, loads))
}

calculation! {
    /// Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes back.
    ///
    /// total = S m_shot − y m_sprue (S − shots of the last load) + cleanings · residue · ρ + max(film, heel).
    BATCH_NEED = "batch_need": BatchNeed -> BatchNeedResult
    takes {
        pieces: u32 = Pieces,
        cavities: u32 = Cavities,
        shot_mass_g: f64 = ShotMass,
        shot_density_g_per_ml: f64 = ShotDensity,
        injector_capacity_ml: f64 = InjectorCapacity,
        injector_residue_ml: Option<f64> = InjectorResidue,
        cleanings: Option<u32> = Cleanings,
        sprue_mass_g: Option<f64> = SprueMass,
        returned: Option<f64> = Returned,
        pot_film_g: Option<f64> = PotFilm,
        pot_heel_g: Option<f64> = PotHeel,
        rejects: Option<f64> = Rejects,
        confidence: Option<f64> = Confidence,
    }
    gives {
        /// Mass to mix.
        total_mass_g: f64 = "total_mass" Gram,
        /// Mass of all shots.
        drawn_mass_g: f64 = "drawn_mass" Gram,
        /// Mass of sprues that go back and are shot again.
        returned_mass_g: f64 = "returned_mass" Gram,
        /// Mass of all pieces.
        pieces_mass_g: f64 = "pieces_mass" Gram,
        /// Mass of sprues that are left over.
        sprues_mass_g: f64 = "sprues_mass" Gram,
        /// Mass that stays in the injector over the run.
        kept_mass_g: f64 = "kept_mass" Gram,
        /// Mass that stays in the cup: the heel, with the film in it.
        in_cup_mass_g: f64 = "in_cup_mass" Gram,
        /// Number of shots.
        shots: u32 = "shots" Count,
        /// Number of injector loads.
        loads: u32 = "loads" Count,
        /// Whole shots in one load.
        shots_per_load: u32 = "shots_per_load" Count,
        /// Shots from the last load.
        shots_in_last: u32 = "shots_in_last" Count,
    }
    request "batch"
    example BatchNeed {
        pieces: 10,
        cavities: 4,
        shot_mass_g: 50.0,
        shot_density_g_per_ml: 1.0,
        injector_capacity_ml: 120.0,
        injector_residue_ml: Some(5.0),
        cleanings: None,
        sprue_mass_g: Some(10.0),
        returned: None,
        pot_film_g: None,
        pot_heel_g: None,
        rejects: None,
        confidence: None,
    } => BatchNeedResult {
        total_mass_g: 155.0,
        drawn_mass_g: 150.0,
        returned_mass_g: 0.0,
        pieces_mass_g: 120.0,
        sprues_mass_g: 30.0,
        kept_mass_g: 5.0,
        in_cup_mass_g: 0.0,
        shots: 3,
        loads: 2,
        shots_per_load: 2,
        shots_in_last: 1,
    };
}

impl BatchNeed {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a shot that does not fit, with the largest that does.
    pub fn calculate(&self) -> Result<BatchNeedResult, Refusal> {
        let fill: Mass = of(Parameter::ShotMass, self.shot_mass_g);
        let density: MassDensity = of(Parameter::ShotDensity, self.shot_density_g_per_ml);
        let run = |shots, loads, injector_keeps| Run {
            shots,
            loads,
            fill,
            sprue: or_default(Parameter::SprueMass, self.sprue_mass_g),
            returned: or_default(Parameter::Returned, self.returned),
            injector_keeps,
            cleanings: self.cleanings.unwrap_or(1),
            film: or_default(Parameter::PotFilm, self.pot_film_g),
            heel: or_default(Parameter::PotHeel, self.pot_heel_g),
        };
        // All numbers together: those of the run, with one shot for any number of them.
        let one = Loads { shots_per_load: 1, loads: 1, shots_in_last: 1 };
        let (capacity, residue) = (self.injector_capacity_ml, self.injector_residue_ml);
        let shots = count_shots(self.pieces, self.cavities, self.rejects, self.confidence);
        let loaded = loads(shots.clone().unwrap_or(1), fill, density, capacity, residue);
        let mut check = Check::new();
        check.merge_numbers(&shots).merge_numbers(&loaded);
        check.option(Parameter::Cleanings, self.cleanings.map(f64::from));
        check.merge_numbers(&run(1, one, Mass::default()).need());
        check.finish()?;
        let (shots, (injector, loads)) = (shots?, loaded?);
        let need = run(shots, loads, injector.kept(density)?).need()?;
        Ok(BatchNeedResult {
            total_mass_g: grams(need.total),
            drawn_mass_g: grams(need.drawn),
            returned_mass_g: grams(need.returned),
            pieces_mass_g: grams(need.pieces),
            sprues_mass_g: grams(need.sprues_left),
            kept_mass_g: grams(need.kept),
            in_cup_mass_g: grams(need.in_cup),
            shots,
            loads: loads.loads,
            shots_per_load: loads.shots_per_load,
            shots_in_last: loads.shots_in_last,
        })
    }
}

calculation! {
    /// Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is needed.
    ///
    /// The doses follow from the rounded base, so that no formula is off.
    BASE_TO_MARK = "base_to_mark": BaseToMark -> BaseToMarkResult
    takes {
        mix_needed_g: f64 = MixNeeded,
        base_fraction: f64 = BaseFraction,
        base_density_g_per_ml: f64 = BaseDensity,
        cup_capacity_ml: f64 = CupCapacity,
        cup_mark_ml: Option<f64> = CupMark,
        shot_mass_g: Option<f64> = ShotMass,
    }
    gives {
        /// Volume of base: the mark.
        base_volume_ml: f64 = "base_volume" Milliliter,
        /// Mass of that base.
        base_mass_g: f64 = "base_mass" Gram,
        /// Mass of the mix with all doses.
        mix_mass_g: f64 = "mix_mass" Gram,
        /// Mass that is more than needed.
        surplus_mass_g: f64 = "surplus_mass" Gram,
        /// Whole shots that the surplus gives, where the mass of a shot is given.
        extra_shots: Option<u32> = "extra_shots" Count,
    }
    example BaseToMark {
        mix_needed_g: 200.0,
        base_fraction: 0.8,
        base_density_g_per_ml: 1.0,
        cup_capacity_ml: 250.0,
        cup_mark_ml: Some(50.0),
        shot_mass_g: Some(20.0),
    } => BaseToMarkResult {
        base_volume_ml: 200.0,
        base_mass_g: 200.0,
        mix_mass_g: 250.0,
        surplus_mass_g: 50.0,
        extra_shots: Some(2),
    };
}

impl BaseToMark {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; more base than the cup has marks for, with its highest one.
    pub fn calculate(&self) -> Result<BaseToMarkResult, Refusal> {
        let capacity: Volume = of(Parameter::CupCapacity, self.cup_capacity_ml);
        let step = if_given(Parameter::CupMark, self.cup_mark_ml).unwrap_or(capacity);
        let shot: Option<Mass> = if_given(Parameter::ShotMass, self.shot_mass_g);
        let mut check = Check::new();
        check
            .number(Parameter::CupCapacity, capacity.si())
            .option(Parameter::CupMark, self.cup_mark_ml.map(|_| step.si()))
            .option(Parameter::ShotMass, shot.map(|shot| shot.si()));
        let measured = Marks::Every { step, capacity }.measure(
            of(Parameter::MixNeeded, self.mix_needed_g),
            of(Parameter::BaseFraction, self.base_fraction),
            of(Parameter::BaseDensity, self.base_density_g_per_ml),
        );
        check.merge_numbers(&measured);
        check.finish()?;
        let measured = measured?;
        let extra_shots = shot.map(|shot| measured.extra_shots(shot)).transpose()?;
        Ok(BaseToMarkResult {
            base_volume_ml: PlainUnit::Milliliter.from_si(measured.base_volume.si()),
            base_mass_g: grams(measured.base_mass),
            mix_mass_g: grams(measured.mix),
            surplus_mass_g: grams(measured.surplus),
            extra_shots,
        })
    }
}

calculation! {
    /// Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its step q, and no less mix
    /// than oven and injector need.
    LEAST_POT = "least_pot": LeastPot<'a> -> LeastPotResult
    takes {
        doses: &'a [[f64; 3]] = Doses,
        base_fraction: f64 = BaseFraction,
        oven_least_g: Option<f64> = OvenLeast,
        injector_least_g: Option<f64> = InjectorLeast,
    }
    gives {
        /// Mass of the mix.
        mix_mass_g: f64 = "mix_mass" Gram,
        /// Mass of base in it.
        base_mass_g: f64 = "base_mass" Gram,
    }
    example LeastPot {
        doses: &[[0.05, 0.05, 0.005]],
        base_fraction: 0.8,
        oven_least_g: None,
        injector_least_g: None,
    } => LeastPotResult { mix_mass_g: 125.0, base_mass_g: 100.0 };
}

impl LeastPot<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges.
    pub fn calculate(&self) -> Result<LeastPotResult, Refusal> {
        let mut check = Check::new();
        check.count(Parameter::Doses, self.doses.len());
        check.finish()?;
        let doses = self.doses.iter().map(|&[step, tolerance, ratio]| DoseStep {
            step: of(Parameter::DoseStep, step),
            tolerance: of(Parameter::Tolerance, tolerance),
            ratio: of(Parameter::DoseRatio, ratio),
        });
        let doses: alloc::vec::Vec<DoseStep> = doses.collect();
        let limits = PotLimits {
            doses: &doses,
            base_fraction: of(Parameter::BaseFraction, self.base_fraction),
            oven: if_given(Parameter::OvenLeast, self.oven_least_g),
            injector: if_given(Parameter::InjectorLeast, self.injector_least_g),
        };
        let least = limits.least()?;
        Ok(LeastPotResult { mix_mass_g: grams(least.mix), base_mass_g: grams(least.base) })
    }
}

calculation! {
    /// Reject rate from counted pieces, with the exact interval of a binomial share.
    ///
    /// Clopper and Pearson, Biometrika 26 (1934) 404: it holds at least the confidence stated, mostly more.
    REJECT_RATE = "reject_rate": RejectRate -> RejectRateResult
    takes {
        cast_pieces: u32 = CastPieces,
        reject_count: u32 = RejectCount,
        confidence: Option<f64> = Confidence,
    }
    gives {
        /// Share of rejects.
        rejects: f64 = "rejects" Pure,
        /// Its lower bound.
        rejects_min: f64 = "rejects_min" Pure,
        /// Its upper bound.
        rejects_max: f64 = "rejects_max" Pure,
    }
    request "record"
    example RejectRate { cast_pieces: 1, reject_count: 0, confidence: Some(0.5) }
        => RejectRateResult { rejects: 0.0, rejects_min: 0.0, rejects_max: 0.75 };
}

impl RejectRate {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; more rejects than pieces.
    pub fn calculate(&self) -> Result<RejectRateResult, Refusal> {
        let confidence: Ratio = or_default(Parameter::Confidence, self.confidence);
        let (least, most) = reject_interval(self.reject_count, self.cast_pieces, confidence)?;
        Ok(RejectRateResult {
            rejects: f64::from(self.reject_count) / f64::from(self.cast_pieces),
            rejects_min: least.value,
            rejects_max: most.value,
        })
    }
}
