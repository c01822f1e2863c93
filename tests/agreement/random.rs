//! Random arguments around the numbers of the table's examples.

use std::collections::BTreeMap;

use pourwright::parameter::Parameter;
use pourwright::table::{Argument, Calculation, ValueKind};
use pourwright_tests::split_mix::SplitMix64;
use pourwright_tests::usual::usual;

use crate::doors::Door;

/// The numbers, lists and texts of one call.
pub(crate) struct Numbers {
    values: Vec<Owned>,
}

enum Owned {
    Omitted,
    Number(f64),
    Text(&'static str),
    List(Vec<f64>),
}

/// Numbers near those of an example.
struct Random(SplitMix64);

impl Random {
    /// From 0 to below `n`.
    fn below(&mut self, n: usize) -> usize {
        usize::try_from(self.0.bits() % n as u64).unwrap()
    }

    /// `x` by up to 5 % more or less, with seven digits as a person might write them.
    fn near(&mut self, x: f64) -> f64 {
        let factor = 0.95 + 0.1 * (self.below(1_000_000) as f64 / 1e6);
        format!("{:.6e}", x * factor).parse().unwrap()
    }
}

impl Random {
    /// The rows of an example with other numbers: counts and what must rise stay as they are.
    fn rows(&mut self, parameter: Parameter, numbers: &[f64]) -> Vec<f64> {
        let columns = parameter.columns();
        let one = |(index, x): (usize, &f64)| match columns[index % columns.len()] {
            Parameter::WeighedCount | Parameter::PointRatio | Parameter::ReadingTime => *x,
            _ if *x == 0.0 => 0.0,
            // Weighings of the same thing are nearly the same.
            Parameter::CleanMass | Parameter::PieceWeight => {
                format!("{:.6e}", x * (1.0 + 1e-4 * self.below(20) as f64)).parse().unwrap()
            }
            _ => self.near(*x),
        };
        numbers.iter().enumerate().map(one).collect()
    }
}

impl Numbers {
    pub(crate) fn new(calculation: &Calculation, call: u32, door: &Door) -> Self {
        let seed = calculation.name.bytes().fold(u64::from(call), |seed, byte| {
            seed.wrapping_mul(0x0100_0000_01b3).wrapping_add(u64::from(byte))
        });
        let mut random = Random(SplitMix64(seed));
        let example = calculation.example().arguments;
        let mut groups = BTreeMap::new();
        let mut values = Vec::new();
        for (field, example) in calculation.parameters.iter().zip(&example) {
            let parameter = field.parameter;
            let roll = random.below(2) == 0;
            let given = match door.group(parameter) {
                Some(group) => {
                    let fallen = *groups.entry(group.name).or_insert_with(|| random.below(2) == 0);
                    fallen == group.side && (roll || !group.by_chance)
                }
                None => roll,
            };
            if (field.optional && !given) || !door.takes(parameter) {
                values.push(Owned::Omitted);
                continue;
            }
            values.push(match (field.kind, *example) {
                (ValueKind::Word { .. }, _) => {
                    Owned::Text(parameter.words()[random.below(parameter.words().len())])
                }
                (_, Argument::Text(text)) => Owned::Text(text),
                (_, Argument::Numbers(numbers)) => Owned::List(random.rows(parameter, numbers)),
                (ValueKind::Count, Argument::Number(x)) => {
                    Owned::Number(if parameter == Parameter::Part {
                        x
                    } else {
                        x + random.below(9) as f64
                    })
                }
                (_, Argument::Number(x)) if !field.optional => Owned::Number(random.near(x)),
                (ValueKind::Count, _) => Owned::Number(usual(parameter)),
                _ => Owned::Number(random.near(usual(parameter))),
            });
        }
        let mut numbers = Self { values };
        numbers.fit(calculation, &mut random);
        numbers
    }

    /// What must go with another: a ball's diameter with its volume, a loading with its form.
    fn fit(&mut self, calculation: &Calculation, random: &mut Random) {
        let place = |parameter| {
            calculation.parameters.iter().position(|field| field.parameter == parameter)
        };
        let ball = [
            place(Parameter::Length),
            place(Parameter::PieceVolume).or(place(Parameter::CavityVolume)),
            place(Parameter::Diameter),
        ];
        if let [Some(length), Some(volume), Some(diameter)] = ball
            && let (Owned::Omitted, Owned::Number(ml)) =
                (&self.values[length], &self.values[volume])
        {
            let mm = (6.0 / std::f64::consts::PI * ml * 1000.0).cbrt();
            self.values[diameter] = Owned::Number(format!("{mm:.6e}").parse().unwrap());
        }
        let (Some(form), Some(loading)) = (place(Parameter::Form), place(Parameter::Loading))
        else {
            return;
        };
        let Owned::Text(form) = self.values[form] else { return };
        let usual = match form {
            "as-scooped" | "of-base" | "of-finished" => 0.1,
            "per-volume" => 0.12,
            "finished-density" | "sink-density" => 1.09,
            "piece-mass" => 10.6,
            _ => unreachable!("{form}"),
        };
        self.values[loading] = Owned::Number(random.near(usual));
    }

    pub(crate) fn arguments(&self) -> Vec<Argument<'_>> {
        self.values
            .iter()
            .map(|value| match value {
                Owned::Omitted => Argument::Omitted,
                Owned::Number(number) => Argument::Number(*number),
                Owned::Text(text) => Argument::Text(text),
                Owned::List(rows) => Argument::Numbers(rows),
            })
            .collect()
    }
}
