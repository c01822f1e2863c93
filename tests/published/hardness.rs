use pourwright::quantity::Ratio;
use pourwright::softener::{Hardness, HardnessCurve, HardnessPoint, Scale};

use crate::rows::{self, Row};

/// The row's points; its y lie within what a durometer reads.
fn points(row: &Row) -> Vec<HardnessPoint> {
    let numbers = |key: &str| -> Vec<f64> {
        row.inputs[key].as_array().unwrap().iter().map(|x| x.as_f64().unwrap()).collect()
    };
    numbers("x")
        .into_iter()
        .zip(numbers("y"))
        .map(|(x, reading)| HardnessPoint {
            ratio: Ratio::from(x),
            hardness: Hardness { reading, scale: Scale::Shore00 },
        })
        .collect()
}

#[test]
fn monotone_cubic() {
    for row in rows::read("hardness") {
        let points = points(&row);
        let curve = HardnessCurve::new(&points).unwrap();
        let at = |x: f64| curve.hardness(Ratio::from(x)).unwrap().reading;
        if row.id == "f-pchip-monotone" {
            let (first, last) = (points[0].ratio.value, points[8].ratio.value);
            let values: Vec<f64> =
                (0..=4000).map(|i| at(first + (last - first) * f64::from(i) / 4000.0)).collect();
            assert!(values.windows(2).all(|pair| pair[0] <= pair[1]), "{} falls", row.id);
            assert_eq!((values[0], values[4000]), (0.0, 0.999994));
        } else {
            row.check(at(row.number("at")));
        }
    }
}
