//! Calculations on plain numbers, with arguments around those of their examples.

use pourwright::parameter::Parameter;
use pourwright::table::{Argument, CALCULATIONS, Calculation, ValueKind};
use pourwright_tests::usual::known;
use serde_json::json;

use crate::chance::Chance;
use crate::pin::Asked;

enum Own {
    Omitted,
    Number(f64),
    Text(&'static str),
    List(Vec<f64>),
}

impl Chance {
    /// `x` itself, a little off, or far off.
    fn around(&mut self, x: f64) -> f64 {
        let factor = match self.below(10) {
            0..=2 => 1.0,
            3..=6 => 0.9 + 0.2 * (self.below(1000) as f64 / 1e3),
            _ => *self.one_of(&[0.0, 0.1, 0.25, 0.5, 0.8, 1.25, 2.0, 3.0, 10.0]),
        };
        format!("{:.4e}", x * factor).parse().expect("a number")
    }
}

fn own(c: &mut Chance, calculation: &Calculation) -> Vec<Own> {
    let wild = c.happens(30);
    let examples = calculation.example().arguments;
    let one = |(field, example): (&pourwright::table::ParameterField, &Argument<'static>)| {
        let parameter = field.parameter;
        if field.optional && c.happens(45) {
            return Own::Omitted;
        }
        let near = |c: &mut Chance, x: f64| {
            if wild { c.around(x) } else { x * (0.96 + 0.01 * c.below(9) as f64) }
        };
        match (field.kind, *example) {
            (ValueKind::Word { .. }, _) => Own::Text(c.one_of::<&'static str>(parameter.words())),
            (_, Argument::Text(text)) => Own::Text(text),
            (_, Argument::Numbers(numbers)) => {
                let change = if wild { 3 } else { 8 };
                let off = |x: &f64| {
                    if c.below(change) == 0 {
                        (x * (0.9 + 0.05 * c.below(5) as f64) * 1e4).round() / 1e4
                    } else {
                        *x
                    }
                };
                let mut numbers: Vec<f64> = numbers.iter().map(off).collect();
                if c.happens(4) {
                    numbers.pop();
                }
                Own::List(numbers)
            }
            (ValueKind::Count, Argument::Number(x)) => {
                Own::Number((x + c.below(9) as f64 - 1.0).max(0.0))
            }
            (ValueKind::Count, _) => known(parameter).map_or(Own::Omitted, Own::Number),
            (_, Argument::Number(x)) => Own::Number(near(c, x)),
            _ => known(parameter).map_or(Own::Omitted, |usual| Own::Number(near(c, usual))),
        }
    };
    let mut values: Vec<Own> = calculation.parameters.iter().zip(&examples).map(one).collect();
    fit(c, calculation, &mut values);
    values
}

/// Mostly what goes with another: a ball's diameter with its volume, a loading with its form.
fn fit(c: &mut Chance, calculation: &Calculation, values: &mut [Own]) {
    let place =
        |parameter| calculation.parameters.iter().position(|field| field.parameter == parameter);
    let volume = place(Parameter::PieceVolume).or(place(Parameter::CavityVolume));
    if let (Some(length), Some(volume), Some(diameter)) =
        (place(Parameter::Length), volume, place(Parameter::Diameter))
        && let (Own::Omitted, Own::Number(ml)) = (&values[length], &values[volume])
        && *ml > 0.0
    {
        // Of a ball: libm's cube root is not the same everywhere, the table's digits are.
        let mm = [12.407, 15.632, 17.894, 21.216, 24.814, 26.73];
        let near = mm.iter().copied().min_by(|a, b| {
            let off = |mm: f64| (mm * mm * mm * std::f64::consts::PI / 6000.0 - ml).abs();
            off(*a).total_cmp(&off(*b))
        });
        let near = near.expect("some");
        let ball = (near * near * near * std::f64::consts::PI / 6000.0 * 1e4).round() / 1e4;
        values[diameter] = Own::Number(near);
        values[volume] = Own::Number(ball);
    }
    if let (Some(form), Some(loading)) = (place(Parameter::Form), place(Parameter::Loading)) {
        let Own::Text(form) = values[form] else { return };
        let usual = match form {
            "as-scooped" | "of-base" | "of-finished" => 0.1,
            "per-volume" => 0.12,
            "piece-mass" => 10.6,
            _ => 1.09,
        };
        values[loading] = Own::Number(c.around(usual));
    }
}

/// A call of one of the calculations.
pub(crate) fn call(at: usize) -> Asked {
    let calculation = CALCULATIONS[at % CALCULATIONS.len()];
    let c = &mut Chance::of(calculation.name, at / CALCULATIONS.len());
    let values = own(c, calculation);
    let arguments: Vec<Argument<'_>> = values
        .iter()
        .map(|value| match value {
            Own::Omitted => Argument::Omitted,
            Own::Number(number) => Argument::Number(*number),
            Own::Text(text) => Argument::Text(text),
            Own::List(rows) => Argument::Numbers(rows),
        })
        .collect();
    let mut results = Vec::new();
    let answer = match calculation.evaluate(&arguments, &mut results) {
        Ok(()) => format!("{results:?}"),
        Err(refusal) => {
            let reasons: Vec<String> = refusal
                .reasons()
                .map(|reason| {
                    let path = calculation.path(&reason, |field| field.field);
                    format!("{path}: {reason:?}")
                })
                .collect();
            format!("{refusal}\n{}", reasons.join("\n"))
        }
    };
    Asked {
        request: json!({ "call": calculation.name, "arguments": format!("{arguments:?}") }),
        answer,
        day: None,
    }
}
