//! Readings that records of days give.

use alloc::collections::{BTreeMap, BTreeSet};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{CountedDay, Day, Pieces, Reading, Spoonfuls};
use crate::book::Book;
use crate::material::{Adding, Kind};
use crate::process::heat::{Load, mix_specific_heat};
use crate::quantity::{
    HeatCapacity, Mass, MassDensity, Ratio, ThermodynamicTemperature, Time, Volume,
};
use crate::record::{DrawRecord, HeatTimed, MeasuredAndWeighed, PieceRecord, Record, StageRecord};
use crate::shot::Melt;

/// Relative standard uncertainty of a density that a book states without one (common practice, no source).
const UNSTATED_DENSITY: f64 = 0.01;

/// Step of a scale that the book does not state, in g (common practice, no source).
const USUAL_READABILITY: f64 = 0.1;

/// Share of a mix, by mass, that must have a stated specific heat (common practice, no source).
const LEAST_KNOWN: f64 = 0.9;

/// Pieces of a mold on a day, and the base that they are of.
#[derive(Debug, Clone)]
pub(crate) struct PiecesOfDay {
    pub(crate) day: Day,
    pub(crate) base: String,
    pub(crate) pieces: Pieces,
}

/// A heating on a day.
#[derive(Debug, Clone, Copy)]
pub(crate) struct HeatOfDay {
    pub(crate) day: Day,
    pub(crate) load: Load,
    pub(crate) from: ThermodynamicTemperature,
    pub(crate) to: ThermodynamicTemperature,
    pub(crate) took: Time,
}

/// All readings, by what they are of.
#[derive(Debug, Default)]
pub(crate) struct Gathered {
    pub(crate) days: BTreeSet<Day>,
    /// By material.
    pub(crate) drops: BTreeMap<String, Vec<Reading<Mass>>>,
    /// By material.
    pub(crate) scooped: BTreeMap<String, Vec<Reading<MassDensity>>>,
    /// By mold and shape.
    pub(crate) pieces: BTreeMap<(String, Option<String>), Vec<PiecesOfDay>>,
    /// By mold.
    pub(crate) counts: BTreeMap<String, Vec<CountedDay>>,
    pub(crate) kept: Vec<Reading<Volume>>,
    pub(crate) heats: Vec<HeatOfDay>,
    /// By mold.
    pub(crate) shots: BTreeMap<String, Vec<Reading<Time>>>,
    /// What could not be used, in words.
    pub(crate) left_out: BTreeSet<String>,
}

impl Gathered {
    /// The readings of `records`, each with its day.
    pub(crate) fn of(records: &[(Day, &Record)], book: &Book) -> Self {
        let mut gather = Gather { book, gathered: Self::default() };
        for (day, record) in records {
            gather.record(*day, record);
        }
        gather.gathered.pool_pieces(records);
        gather.gathered
    }

    /// Gives all pieces the scatter that those of all days show.
    fn pool_pieces(&mut self, records: &[(Day, &Record)]) {
        let pieces = records
            .iter()
            .flat_map(|(_, record)| &record.pots)
            .flat_map(|pot| &pot.stages)
            .flat_map(|stage| &stage.draws)
            .flat_map(|draw| &draw.pieces);
        let mut squares: Vec<(u32, Ratio)> = pieces
            .filter_map(|pieces| {
                let single = pieces.weights.iter().filter(|weights| weights.count == 1).count();
                let deviation = pieces.deviation.as_ref()?.quantity;
                let relative = deviation / pieces.weighs.as_ref()?.quantity;
                Some((u32::try_from(single).ok()?, relative)).filter(|(_, s)| s.value.is_finite())
            })
            .collect();
        // A sum in an order of its own, however the records came.
        squares.sort_by(|a, b| a.0.cmp(&b.0).then(a.1.value.total_cmp(&b.1.value)));
        let scatter = Pieces::scatter(squares);
        for pieces in self.pieces.values_mut().flatten() {
            pieces.pieces.scatter = scatter;
        }
    }
}

struct Gather<'a> {
    book: &'a Book,
    gathered: Gathered,
}

impl Gather<'_> {
    fn leave_out(&mut self, what: String) {
        self.gathered.left_out.insert(what);
    }

    fn record(&mut self, day: Day, record: &Record) {
        self.gathered.days.insert(day);
        for stage in record.pots.iter().flat_map(|pot| &pot.stages) {
            self.stage(day, stage);
        }
        for mold in record.molds.iter().filter(|mold| mold.made > 0) {
            let rejects = mold.made.saturating_sub(mold.good);
            let counted = CountedDay { day, made: mold.made, rejects };
            self.gathered.counts.entry(mold.mold.clone()).or_default().push(counted);
        }
    }

    fn stage(&mut self, day: Day, stage: &StageRecord) {
        for pair in &stage.pairs {
            self.pair(day, pair);
        }
        self.kept(day, stage);
        for heat in &stage.timed {
            self.heat(day, stage, heat);
        }
        for draw in &stage.draws {
            self.draw(day, stage, draw);
        }
    }

    fn pair(&mut self, day: Day, pair: &MeasuredAndWeighed) {
        let (tools, readability) = (self.book.unsure, readability(self.book));
        let found = self.book.materials.find(&pair.material);
        let Some(material) = found.and_then(|id| self.book.materials.get(id).ok()) else {
            return self.leave_out(format!("{} is not in the book.", pair.material));
        };
        let weighed = pair.weighed.quantity;
        if let Some(drops) = pair.drops {
            let count = libm::round(drops) as u32;
            if count > 0 {
                let reading = Reading::drop(day, count, weighed, readability, &tools);
                self.gathered.drops.entry(pair.material.clone()).or_default().push(reading);
            }
        } else if let Some(volume) = pair.volume.as_ref().filter(|_| material.is_scooped()) {
            let spoonfuls = self.spoonfuls(volume.quantity);
            if volume.quantity > Volume::default() {
                let reading = Reading::as_scooped(day, &spoonfuls, weighed, readability, &tools);
                self.gathered.scooped.entry(pair.material.clone()).or_default().push(reading);
            }
        }
    }

    /// A volume in the fewest spoonfuls that the bench's spoons make of it.
    fn spoonfuls(&self, volume: Volume) -> Vec<Spoonfuls> {
        let mut spoons: Vec<Volume> = self.book.tools.spoons().to_vec();
        spoons.sort_by(|a, b| b.value.total_cmp(&a.value));
        let (mut rest, mut taken) = (volume.value, Vec::new());
        for spoon in &spoons {
            // What is left of a whole spoonful but for rounding is one.
            let times = libm::floor(rest / spoon.value * (1.0 + 1e-9));
            if times >= 1.0 {
                rest -= times * spoon.value;
                let name = crate::show::text::household(*spoon, self.book.system);
                taken.push(Spoonfuls { spoon: name, holds: *spoon, times: times as u32 });
            }
        }
        if rest > 1e-6 * volume.value {
            let holds = Volume { value: rest, ..volume };
            taken.push(Spoonfuls { spoon: "the smallest spoon".into(), holds, times: 1 });
        }
        taken
    }

    fn kept(&mut self, day: Day, stage: &StageRecord) {
        let emptied = u32::try_from(stage.injector.len()).unwrap_or(u32::MAX);
        let Some(hot) = stage.hot_density.as_ref().filter(|_| emptied > 0) else { return };
        let kept = stage.injector.iter().fold(Mass::default(), |sum, kept| sum + kept.quantity);
        let reading = Reading::kept(
            day,
            kept,
            emptied,
            hot.quantity,
            unsure_density(stage),
            readability(self.book),
            &base(stage),
        );
        self.gathered.kept.push(reading);
    }

    fn heat(&mut self, day: Day, stage: &StageRecord, heat: &HeatTimed) {
        let (Some(_), Some(from), Some(to)) = (&heat.mass, &heat.from, &heat.to) else { return };
        let Some(oven) = &self.book.oven else {
            return self.leave_out("Heatings: the book has no oven yet.".into());
        };
        let setting = heat.setting.as_ref().map_or(oven.timed.setting(), |own| own.quantity);
        if setting != oven.timed.setting() {
            return self.leave_out("A heating at another setting than the book's timings.".into());
        }
        if self.book.vessels.iter().any(|vessel| vessel.heat_capacity.value > 0.0) {
            return self.leave_out(
                "Heatings: the book states the heat of its cups, and a record does not name the cup."
                    .into(),
            );
        }
        let Some(load) = self.load(stage) else {
            return self.leave_out("A heating of a mix whose specific heat the book lacks.".into());
        };
        let (from, to, took) = (from.quantity, to.quantity, heat.time.quantity);
        if to > from {
            self.gathered.heats.push(HeatOfDay { day, load, from, to, took });
        }
    }

    /// What is in the pot when it is heated: what goes into the hot plastic comes later.
    fn load(&self, stage: &StageRecord) -> Option<Load> {
        let (mut all, mut known, mut parts) = (Mass::default(), Mass::default(), Vec::new());
        for part in &stage.made {
            let material = self.book.materials.find(&part.material);
            let material = material.and_then(|id| self.book.materials.get(id).ok())?;
            let mass = match material.adding() {
                Adding::Hot => part.mass.quantity - part.added.quantity,
                Adding::Cold => part.mass.quantity,
            };
            all += mass;
            if let Some(specific_heat) = material.specific_heat_line() {
                known += mass;
                parts.push((mass.max(Mass::default()), specific_heat));
            }
        }
        if known < all * LEAST_KNOWN {
            return None;
        }
        Load::new(all, mix_specific_heat(&parts).ok()?, HeatCapacity::default()).ok()
    }

    fn draw(&mut self, day: Day, stage: &StageRecord, draw: &DrawRecord) {
        let Some(mold) = self.book.find_mold(&draw.mold).and_then(|at| self.book.molds.get(at))
        else {
            return self.leave_out(format!("{} is not in the book.", draw.mold));
        };
        // A pot that went back into the oven between the shots took longer.
        if let Some(took) = draw.took.as_ref().filter(|_| draw.shots >= 2 && stage.heats <= 1) {
            let reading = Reading::shot(day, draw.shots, took.quantity);
            self.gathered.shots.entry(draw.mold.clone()).or_default().push(reading);
        }
        let (Some(cold), Some(hot)) = (&stage.density, &stage.hot_density) else { return };
        // A layer has the weight of its piece, not its own.
        if draw.share.quantity.value < 1.0 {
            return;
        }
        let voids = Ratio::from(mold.voids);
        let melt = Melt { hot: hot.quantity, cold: cold.quantity, voids };
        for pieces in &draw.pieces {
            if let Some(pieces_of_day) = weighed(pieces, melt, unsure_density(stage)) {
                let key = (draw.mold.clone(), pieces.shape.clone());
                let of_day = PiecesOfDay { day, base: base(stage), pieces: pieces_of_day };
                self.gathered.pieces.entry(key).or_default().push(of_day);
            }
        }
    }
}

/// Pieces that were weighed; their scatter is pooled later.
fn weighed(pieces: &PieceRecord, melt: Melt, density: Ratio) -> Option<Pieces> {
    let (mut count, mut together) = (0_u32, Mass::default());
    for weights in &pieces.weights {
        count = count.saturating_add(weights.count);
        together += weights.weight.quantity;
    }
    let weighings = u32::try_from(pieces.weights.len()).unwrap_or(u32::MAX);
    let mean = together / f64::from(count);
    let scatter = Pieces::scatter([]);
    (count > 0).then_some(Pieces { count, weighings, mean, scatter, melt, density })
}

/// The plastisols of a stage.
fn base(stage: &StageRecord) -> String {
    let bases = stage.made.iter().filter(|part| part.kind == Kind::Plastisol);
    let mut names: Vec<&str> = bases.map(|part| part.material.as_str()).collect();
    names.sort_unstable();
    names.join(" + ")
}

/// Of the density as made, relative.
fn unsure_density(stage: &StageRecord) -> Ratio {
    match (&stage.density_uncertainty, &stage.density) {
        (Some(unsure), Some(density)) => unsure.quantity / density.quantity,
        _ => Ratio::from(UNSTATED_DENSITY),
    }
}

/// The step of the book's scale.
pub(crate) fn readability(book: &Book) -> Mass {
    let usual = Mass::new::<uom::si::mass::gram>(USUAL_READABILITY);
    book.tools.balance().map_or(usual, |balance| balance.readability)
}

/// The name of a mold's cavity.
pub(crate) fn cavity_name(mold: &str, shape: Option<&str>) -> String {
    match shape {
        Some(shape) => format!("{mold}, {shape}"),
        None => mold.to_string(),
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;
    use crate::quantity::{Amount, Measurable};
    use crate::record::{MadePart, MoldRecord, WeighedTogether};
    use crate::show::text;

    const BOOK: &str = include_str!("../../examples/demo/book.json");

    fn teaspoons(teaspoons: f64) -> Volume {
        let one: Volume =
            Amount::parse("1 tsp").unwrap().to(crate::quantity::System::UsCustomary).unwrap();
        one * teaspoons
    }

    /// The demo's book, and the record of a day of one pot of 8 pieces that went as planned.
    fn day() -> (Book, Record) {
        use crate::document::{book_from_text, orders_from_text, small};
        use crate::plan::Plan;
        use crate::record::Actuals;

        let book = book_from_text(BOOK).unwrap();
        let line = r#"{ "order": "1", "product": "dusk finger", "pieces": 8 }"#;
        let orders = orders_from_text(&small::orders(line), &book).unwrap();
        let plan = Plan::make(&book, &orders).unwrap();
        let record = Record::make(&plan, &book, &Actuals { pots: Vec::new() }).unwrap();
        (book, record)
    }

    fn gathered(record: &Record, book: &Book) -> Gathered {
        Gathered::of(&[(Day::from_number(20_000), record)], book)
    }

    #[test]
    fn one_piece_is_counted_and_none_is_not() {
        let (book, mut record) = day();
        let none = text::percent(Ratio::from(0.0));
        let mold = |mold: &str, made| MoldRecord {
            mold: mold.into(),
            made,
            good: 0,
            rejects: none.clone(),
            rejects_from: none.clone(),
            rejects_to: none.clone(),
        };
        record.molds = Vec::from([mold("one", 1), mold("none", 0)]);
        let day = Day::from_number(20_000);
        let counted = Vec::from([CountedDay { day, made: 1, rejects: 1 }]);
        assert_eq!(gathered(&record, &book).counts, BTreeMap::from([("one".into(), counted)]));
    }

    #[rstest]
    #[case("plum", Some(0.4), None, 0)]
    #[case("plum", Some(1.0), None, 1)]
    #[case("fine-salt", None, Some(0.0), 0)]
    #[case("fine-salt", None, Some(5e-6), 1)]
    fn nothing_measured_is_no_reading(
        #[case] material: &str,
        #[case] drops: Option<f64>,
        #[case] volume: Option<f64>,
        #[case] readings: usize,
    ) {
        let (book, mut record) = day();
        record.pots[0].stages[0].pairs = Vec::from([MeasuredAndWeighed {
            material: material.into(),
            measured: String::new(),
            drops,
            volume: volume.map(|volume| text::milliliters(Volume::from_si(volume))),
            by_book: text::mass(Mass::default()),
            weighed: text::mass(Mass::from_si(1e-3)),
        }]);
        let got = gathered(&record, &book);
        let drops = got.drops.values().flatten().count();
        assert_eq!(drops + got.scooped.values().flatten().count(), readings, "{got:?}");
    }

    // A cup of half a joule per kelvin is a cup of a stated heat.
    #[rstest]
    #[case(440.0, 0.0, 1)]
    #[case(293.0, 0.0, 0)]
    #[case(290.0, 0.0, 0)]
    #[case(440.0, 0.5, 0)]
    fn a_heating_is_to_a_hotter_pot_in_a_cup_of_no_stated_heat(
        #[case] to: f64,
        #[case] cup: f64,
        #[case] readings: usize,
    ) {
        let (mut book, mut record) = day();
        book.vessels[0].heat_capacity =
            HeatCapacity::new::<uom::si::heat_capacity::joule_per_kelvin>(cup);
        let at = |kelvin| text::temperature(ThermodynamicTemperature::from_si(kelvin), book.system);
        let stage = &mut record.pots[0].stages[0];
        stage.timed = Vec::from([HeatTimed {
            mass: Some(stage.held.clone()),
            time: text::time(Time::from_si(120.0)),
            from: Some(at(293.0)),
            to: Some(at(to)),
            setting: None,
            first: true,
        }]);
        assert_eq!(gathered(&record, &book).heats.len(), readings);
    }

    // The demo's plum has no specific heat.
    #[rstest]
    #[case(9.0, true)]
    #[case(8.999, false)]
    fn nine_tenths_of_known_specific_heat_are_enough(#[case] known: f64, #[case] enough: bool) {
        let (book, mut record) = day();
        let stage = &mut record.pots[0].stages[0];
        let part = stage.made[0].clone();
        let of = |material: &str, kg: f64| {
            let mass = text::mass(Mass::from_si(kg));
            MadePart { material: material.into(), mass, ..part.clone() }
        };
        stage.made = Vec::from([of("clear-base", known), of("plum", 10.0 - known)]);
        let gather = Gather { book: &book, gathered: Gathered::default() };
        assert_eq!(gather.load(stage).is_some(), enough);
    }

    #[test]
    fn a_blend_has_one_name() {
        let (_, mut record) = day();
        let stage = &mut record.pots[0].stages[0];
        let part = stage.made[0].clone();
        let of = |material: &str| MadePart { material: material.into(), ..part.clone() };
        stage.made = Vec::from([of("firm-base"), of("clear-base")]);
        assert_eq!(base(stage), "clear-base + firm-base");
    }

    #[test]
    fn the_order_of_records_changes_no_bit_of_the_scatter() {
        let (book, record) = day();
        let kg = |kg: f64| text::mass(Mass::from_si(kg));
        let records = [0.001, 0.002, 0.008].map(|deviation| {
            let mut record = record.clone();
            let pieces = &mut record.pots[0].stages[0].draws[0].pieces[0];
            pieces.weights = [(); 3].map(|()| WeighedTogether { count: 1, weight: kg(1.0) }).into();
            (pieces.weighs, pieces.deviation) = (Some(kg(1.0)), Some(kg(deviation)));
            record
        });
        let scatter = |order: [usize; 3]| {
            let days = order.map(|at| (Day::from_number(20_000), &records[at]));
            let got = Gathered::of(&days, &book);
            got.pieces.values().flatten().next().unwrap().pieces.scatter
        };
        assert_eq!(scatter([0, 1, 2]), scatter([2, 1, 0]));
        // (4 · 1 % ² + 2 Σ s²)/10
        let expected = libm::sqrt((4e-4 + 2.0 * 69e-6) / 10.0);
        assert!((scatter([0, 1, 2]).value / expected - 1.0).abs() < 1e-12);
    }

    // The demo's bench has spoons of 3, 1, 1/2, 1/4 and 1/8 tsp.
    #[rstest]
    #[case(4.5, &[(3.0, 1), (1.0, 1), (0.5, 1)])]
    #[case(8.0, &[(3.0, 2), (1.0, 2)])]
    #[case(0.0, &[])]
    // Rounding makes no spoonful less, and a billionth and a half is more than rounding.
    #[case(3.0 * (1.0 - 0.5e-9), &[(3.0, 1)])]
    #[case(3.0 * (1.0 - 1.5e-9), &[(1.0, 2), (0.5, 1), (0.25, 1), (0.125, 1), (0.125, 1)])]
    // What the spoons do not hold is once what the smallest one shows.
    #[case(0.0625, &[(0.0625, 1)])]
    #[case(1.0625, &[(1.0, 1), (0.0625, 1)])]
    #[case(1.0 + 0.5e-6, &[(1.0, 1)])]
    #[case(1.0 + 1.5e-6, &[(1.0, 1), (1.5e-6, 1)])]
    fn a_volume_is_the_fewest_spoonfuls(#[case] volume: f64, #[case] expected: &[(f64, u32)]) {
        let mut json: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        // In an order of no use.
        json["bench"]["spoons"] =
            serde_json::json!(["1/2 tsp", "1 tbsp", "1/8 tsp", "1 tsp", "1/4 tsp"]);
        let book = crate::document::book_from_text(&json.to_string()).unwrap();
        let gather = Gather { book: &book, gathered: Gathered::default() };
        let got = gather.spoonfuls(teaspoons(volume));
        let found: Vec<(f64, u32)> =
            got.iter().map(|one| (one.holds.si() / teaspoons(1.0).si(), one.times)).collect();
        assert_eq!(found.len(), expected.len(), "{got:?}");
        for ((holds, times), (wanted, wanted_times)) in found.iter().zip(expected) {
            assert!((holds / wanted - 1.0).abs() < 1e-6, "{got:?}");
            assert_eq!(times, wanted_times, "{got:?}");
        }
    }
}
