//! How long a pot stays hot and a shot sets, and the heats that the shots of a pot take.

use alloc::vec::Vec;

use super::{if_given, of, or_default};
use crate::parameter::{Check, Parameter, ParameterError, PlainUnit, Problem};
use crate::process::clock::{Hot, ShotSeries, every, heats};
use crate::process::heat::Cooling;
use crate::process::shot_cooling::{Diffusivity, Point, Section, SectionShape, ShotCooling};
use crate::quantity::{
    HeatCapacity, Mass, Measurable, SpecificHeatCapacity, ThermodynamicTemperature, Time,
};
use crate::table::{Argument, Field, Refusal, calculation};

fn celsius(temperature: ThermodynamicTemperature) -> f64 {
    PlainUnit::Celsius.from_si(temperature.si())
}

calculation! {
    /// How long a pot stays hot, by a pot that was watched to cool.
    ///
    /// Newton's law: T(t) = T_room + (T₀ − T_room)·exp(−t/τ), τ = t/ln((T₀ − T_room)/(T₁ − T_room)); less mix than was watched
    /// cools faster (module `process::heat`).
    STAYS_HOT = "stays_hot": StaysHot -> StaysHotResult
    takes {
        pot_mass_g: f64 = PotMass,
        hot_from_celsius: f64 = HotFrom,
        hot_to_celsius: f64 = HotTo,
        watched_mass_g: f64 = WatchedMass,
        watched_from_celsius: f64 = WatchedFrom,
        watched_to_celsius: f64 = WatchedTo,
        watched_time_s: f64 = WatchedTime,
        room_celsius: Option<f64> = Room,
        stood_s: Option<f64> = Stood,
    }
    gives {
        /// Time in which the distance to the temperature of the room falls to 37 %.
        time_constant_s: f64 = "time_constant" Second,
        /// Time down to the lower temperature, with all of the mix in the pot.
        hot_for_s: f64 = "hot_for" Second,
        /// The same with half of it.
        half_full_s: f64 = "half_full" Second,
        /// Temperature after the time that the pot has stood.
        after_celsius: Option<f64> = "after" Celsius,
    }
    cautions ["hot-plastisol", "fumes"]
    request "stays-hot"
    example StaysHot {
        pot_mass_g: 500.0,
        hot_from_celsius: 170.0,
        hot_to_celsius: 130.0,
        watched_mass_g: 500.0,
        watched_from_celsius: 170.0,
        watched_to_celsius: 150.0,
        watched_time_s: 300.0,
        room_celsius: Some(22.0),
        stood_s: Some(600.0),
    } => StaysHotResult {
        time_constant_s: 2_066.371_724_164,
        hot_for_s: 651.074_565_597,
        half_full_s: 511.558_587_255,
        after_celsius: Some(132.702_702_702_7),
    };
}

impl StaysHot {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a watch that is not a cooling; a room that is hotter than the lower temperature.
    pub fn calculate(&self) -> Result<StaysHotResult, Refusal> {
        let mass: Mass = of(Parameter::PotMass, self.pot_mass_g);
        let from: ThermodynamicTemperature = of(Parameter::HotFrom, self.hot_from_celsius);
        let to: ThermodynamicTemperature = of(Parameter::HotTo, self.hot_to_celsius);
        let room: ThermodynamicTemperature = or_default(Parameter::Room, self.room_celsius);
        let stood: Option<Time> = if_given(Parameter::Stood, self.stood_s);
        let cooling = Cooling::observed(
            of(Parameter::WatchedMass, self.watched_mass_g),
            of(Parameter::WatchedFrom, self.watched_from_celsius),
            of(Parameter::WatchedTo, self.watched_to_celsius),
            of(Parameter::WatchedTime, self.watched_time_s),
            room,
        );
        let mut check = Check::new();
        check
            .merge_numbers(&cooling)
            .number(Parameter::PotMass, mass.si())
            .number(Parameter::HotFrom, from.si())
            .number(Parameter::HotTo, to.si())
            .option(Parameter::Stood, stood.map(Measurable::si));
        check.finish()?;
        let cooling = cooling?;
        let after = stood.map(|stood| cooling.after(mass, from, stood, room)).transpose()?;
        Ok(StaysHotResult {
            time_constant_s: cooling.time_constant(mass)?.si(),
            hot_for_s: cooling.time(mass, from, to, room)?.si(),
            half_full_s: cooling.time(mass / 2.0, from, to, room)?.si(),
            after_celsius: after.map(celsius),
        })
    }
}

calculation! {
    /// The heats that the shots of a pot take, and how long they all take.
    ///
    /// A heat goes on while the next shot ends before the pot has fallen to the bottom of its window; then it is heated again.
    /// How long a pot stays hot is stated, or follows from a pot that was watched to cool. A shot can be made every
    /// max(h, (h + s)/k): h its working time, s the time that it sets, k molds in turn (module `process::clock`).
    POT_HEATS = "pot_heats": PotHeats<'a> -> PotHeatsResult
    takes {
        pot_mass_g: f64 = PotMass,
        clock_runs: &'a [[f64; 5]] = ClockRuns,
        hot_for_s: Option<f64> = HotFor,
        clock_from_celsius: Option<f64> = ClockFrom,
        clock_to_celsius: Option<f64> = ClockTo,
        watched_mass_g: Option<f64> = WatchedMass,
        watched_from_celsius: Option<f64> = WatchedFrom,
        watched_to_celsius: Option<f64> = WatchedTo,
        watched_time_s: Option<f64> = WatchedTime,
        room_celsius: Option<f64> = Room,
        oven_time_s: Option<f64> = OvenTime,
    }
    gives {
        /// Number of reheats: the heats but for the first.
        reheats: u32 = "reheats" Count,
        /// Number of shots in the first heat.
        first_shots: u32 = "first_shots" Count,
        /// Time of all shots, without the oven.
        shooting_time_s: f64 = "shooting_time" Second,
        /// Time of all shots and of the oven for each heat, where that is given.
        total_time_s: Option<f64> = "total_time" Second,
    }
    cautions ["hot-plastisol", "fumes"]
    request "clock"
    example PotHeats {
        pot_mass_g: 1200.0,
        clock_runs: &[[22.0, 48.0, 50.0, 0.0, 1.0]],
        hot_for_s: Some(480.0),
        clock_from_celsius: None,
        clock_to_celsius: None,
        watched_mass_g: None,
        watched_from_celsius: None,
        watched_to_celsius: None,
        watched_time_s: None,
        room_celsius: None,
        oven_time_s: Some(240.0),
    } => PotHeatsResult {
        reheats: 2,
        first_shots: 9,
        shooting_time_s: 1100.0,
        total_time_s: Some(1820.0),
    };
}

impl PotHeats<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a pot that does not stay hot for a single shot, or holds less than its shots take; neither
    /// how long it stays hot nor how it cools.
    pub fn calculate(&self) -> Result<PotHeatsResult, Refusal> {
        let mass: Mass = of(Parameter::PotMass, self.pot_mass_g);
        let mut check = Check::new();
        check
            .number(Parameter::PotMass, mass.si())
            .option(Parameter::OvenTime, self.oven_time_s)
            .count(Parameter::ClockRuns, self.clock_runs.len());
        let mut runs = Vec::with_capacity(self.clock_runs.len());
        for (index, row) in self.clock_runs.iter().enumerate() {
            runs.extend(run(index, row, &mut check));
        }
        let hot = self.hot(&mut check);
        check.finish()?;
        let Some(hot) = hot.transpose()? else {
            return Err(ParameterError::new(Parameter::HotFor, Problem::Missing).into());
        };
        let heats = heats(mass, &runs, &hot)?;
        let shooting = heats.iter().fold(Time::default(), |sum, heat| sum + heat.lasts);
        let count = u32::try_from(heats.len()).unwrap_or(u32::MAX);
        let oven: Option<Time> = if_given(Parameter::OvenTime, self.oven_time_s);
        Ok(PotHeatsResult {
            reheats: count.saturating_sub(1),
            first_shots: heats.first().map_or(0, |heat| heat.shots),
            shooting_time_s: shooting.si(),
            total_time_s: oven.map(|oven| (shooting + oven * f64::from(count)).si()),
        })
    }

    /// How long the pot stays hot: the stated time counts, where it is given.
    fn hot(&self, check: &mut Check) -> Option<Result<Hot, Refusal>> {
        let watched = [
            (Parameter::ClockFrom, self.clock_from_celsius),
            (Parameter::ClockTo, self.clock_to_celsius),
            (Parameter::WatchedMass, self.watched_mass_g),
            (Parameter::WatchedFrom, self.watched_from_celsius),
            (Parameter::WatchedTo, self.watched_to_celsius),
            (Parameter::WatchedTime, self.watched_time_s),
        ];
        for (parameter, plain) in watched {
            check.option(parameter, plain.map(|plain| parameter.unit().to_si(plain)));
        }
        let room: ThermodynamicTemperature = or_default(Parameter::Room, self.room_celsius);
        let hot_for: Option<Time> = if_given(Parameter::HotFor, self.hot_for_s);
        check
            .number(Parameter::Room, room.si())
            .option(Parameter::HotFor, hot_for.map(Measurable::si));
        if let Some(hot_for) = hot_for {
            return Some(Ok(Hot::Stated(hot_for)));
        }
        let Some((given, _)) = watched.iter().find(|(_, plain)| plain.is_some()) else {
            check.push(ParameterError::new(Parameter::HotFor, Problem::Missing));
            return None;
        };
        for (parameter, _) in watched.iter().filter(|(_, plain)| plain.is_none()) {
            check.push(ParameterError::new(*parameter, Problem::NeededBy(*given)));
        }
        if !check.is_clean() {
            return None;
        }
        let [from, to, mass, watched_from, watched_to, time] =
            watched.map(|(_, plain)| plain.unwrap_or(f64::NAN));
        let cooling = Cooling::observed(
            of(Parameter::WatchedMass, mass),
            of(Parameter::WatchedFrom, watched_from),
            of(Parameter::WatchedTo, watched_to),
            of(Parameter::WatchedTime, time),
            room,
        );
        let hot = |cooling| Hot::Watched {
            cooling,
            room,
            from: of(Parameter::ClockFrom, from),
            to: of(Parameter::ClockTo, to),
        };
        Some(cooling.map(hot).map_err(Refusal::from))
    }
}

/// The shots of a row.
fn run(
    index: usize,
    &[shots, takes, hands, sets, molds]: &[f64; 5],
    check: &mut Check,
) -> Option<ShotSeries> {
    let mut count = |parameter: Parameter, plain: f64| {
        let read = u32::read(Argument::Number(plain), parameter);
        let read = read.and_then(|count| parameter.check_si(f64::from(count)).map(|_| count));
        check.keep(read.map_err(|error| error.at(index)))
    };
    let (shots, molds) = (count(Parameter::PotShots, shots), count(Parameter::Molds, molds));
    let takes: Mass = of(Parameter::ShotMass, takes);
    let (hands, sets): (Time, Time) = (of(Parameter::Hands, hands), of(Parameter::Sets, sets));
    check
        .element(Parameter::ShotMass, index, takes.si())
        .element(Parameter::Hands, index, hands.si())
        .element(Parameter::Sets, index, sets.si());
    let every = every(hands, sets, molds?).ok()?;
    Some(ShotSeries { shots: shots?, every, takes })
}

calculation! {
    /// How long a shot sets in a metal mold, and how often one can be made.
    ///
    /// The first term of the series of a rod, a plate or a ball whose surface keeps the temperature of the mold:
    /// t = R²/(ζ² α) ln(C/Θ), Θ = (T_e − T_m)/(T₀ − T_m) (module `process::shot_cooling`). The mold is as warm as the shot
    /// leaves it, where its mass is given.
    SETTING_TIME = "setting_time": SettingTime -> SettingTimeResult
    takes {
        section_shape: SectionShape = SectionShape,
        section_thickness_mm: f64 = SectionThickness,
        shot_at_celsius: f64 = ShotAt,
        mold_at_celsius: Option<f64> = MoldAt,
        take_out_celsius: Option<f64> = TakeOut,
        piece_point: Option<Point> = PiecePoint,
        diffusivity_m2_per_s: Option<f64> = Diffusivity,
        shot_mass_g: Option<f64> = ShotMass,
        shot_specific_heat_j_per_g_k: Option<f64> = ShotSpecificHeat,
        mold_mass_g: Option<f64> = MoldMass,
        mold_specific_heat_j_per_g_k: Option<f64> = MoldSpecificHeat,
        hands_s: Option<f64> = Hands,
        molds: Option<u32> = Molds,
    }
    gives {
        /// Setting time.
        setting_time_s: f64 = "setting_time" Second,
        /// The same with the highest diffusivity of soft PVC.
        setting_time_min_s: f64 = "setting_time_min" Second,
        /// The same with the lowest.
        setting_time_max_s: f64 = "setting_time_max" Second,
        /// How much one shot warms the mold, where its mass is given.
        warms_kelvin: Option<f64> = "warms" Kelvin,
        /// Number of shots in a row before the mold is too warm, nothing lost between them; none where its mass is not given,
        /// or it goes on.
        in_a_row: Option<u32> = "in_a_row" Count,
        /// Time from one shot to the next, where the working time is given.
        shot_every_s: Option<f64> = "shot_every" Second,
    }
    cautions ["hot-plastisol", "water"]
    request "cooling"
    example SettingTime {
        section_shape: SectionShape::Rod,
        section_thickness_mm: 9.0,
        shot_at_celsius: 165.0,
        mold_at_celsius: None,
        take_out_celsius: None,
        piece_point: None,
        diffusivity_m2_per_s: None,
        shot_mass_g: None,
        shot_specific_heat_j_per_g_k: None,
        mold_mass_g: None,
        mold_specific_heat_j_per_g_k: None,
        hands_s: Some(50.0),
        molds: Some(2),
    } => SettingTimeResult {
        setting_time_s: 104.204_642_506,
        setting_time_min_s: 83.363_714_005,
        setting_time_max_s: 128.251_867_7,
        warms_kelvin: None,
        in_a_row: None,
        shot_every_s: Some(77.102_321_253),
    };
}

impl SettingTime {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a mold that is as warm as the piece must become; a shot no hotter than it is taken out.
    pub fn calculate(&self) -> Result<SettingTimeResult, Refusal> {
        let mold: ThermodynamicTemperature = or_default(Parameter::MoldAt, self.mold_at_celsius);
        let diffusivity = match self.diffusivity_m2_per_s {
            Some(stated) => {
                let expected = of(Parameter::Diffusivity, stated);
                Diffusivity { expected, lowest: expected, highest: expected }
            }
            None => Diffusivity::default(),
        };
        let cooling = ShotCooling {
            section: Section::new(
                self.section_shape,
                of(Parameter::SectionThickness, self.section_thickness_mm),
            ),
            point: self.piece_point.unwrap_or(Point::Center),
            diffusivity,
            shot: of(Parameter::ShotAt, self.shot_at_celsius),
            take_out: or_default(Parameter::TakeOut, self.take_out_celsius),
        };
        let mut check = Check::new();
        check.merge_numbers(&cooling.in_mold(mold));
        let capacities = self.capacities(&mut check);
        let hands: Option<Time> = if_given(Parameter::Hands, self.hands_s);
        let molds = self.molds.unwrap_or(1);
        check
            .option(Parameter::Hands, hands.map(Measurable::si))
            .number(Parameter::Molds, f64::from(molds));
        check.finish()?;
        let warms = capacities.map(|(shot, mold)| cooling.warms(shot, mold)).transpose()?;
        let setting = cooling.in_mold(warms.map_or(mold, |warms| mold + warms))?;
        let every = hands.map(|hands| every(hands, setting.time, molds)).transpose()?;
        Ok(SettingTimeResult {
            setting_time_s: setting.time.si(),
            setting_time_min_s: setting.shortest.si(),
            setting_time_max_s: setting.longest.si(),
            warms_kelvin: warms.map(Measurable::si),
            in_a_row: warms.and_then(|warms| cooling.in_a_row(mold, warms)),
            shot_every_s: every.map(Measurable::si),
        })
    }

    /// The heat capacities of shot and mold, where the mass of the mold is given.
    fn capacities(&self, check: &mut Check) -> Option<(HeatCapacity, HeatCapacity)> {
        let shot: Option<Mass> = if_given(Parameter::ShotMass, self.shot_mass_g);
        let mold: Option<Mass> = if_given(Parameter::MoldMass, self.mold_mass_g);
        let plastic: SpecificHeatCapacity =
            or_default(Parameter::ShotSpecificHeat, self.shot_specific_heat_j_per_g_k);
        let metal: SpecificHeatCapacity =
            or_default(Parameter::MoldSpecificHeat, self.mold_specific_heat_j_per_g_k);
        check
            .option(Parameter::ShotMass, shot.map(Measurable::si))
            .option(Parameter::MoldMass, mold.map(Measurable::si))
            .number(Parameter::ShotSpecificHeat, plastic.si())
            .number(Parameter::MoldSpecificHeat, metal.si());
        if mold.is_some() && shot.is_none() {
            let problem = Problem::NeededBy(Parameter::MoldMass);
            check.push(ParameterError::new(Parameter::ShotMass, problem));
        }
        Some((shot? * plastic, mold? * metal))
    }
}
