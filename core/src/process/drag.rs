//! Drag coefficients of a long cylinder across the flow and of a sphere, by Reynolds number.
//!
//! C_D = 2F/(ρ v² A), Re = ρ v d/μ; A is d·l for the cylinder and πd²/4 for the sphere.
//!
//! **Cylinder**, 0.02 ≤ Re ≤ 2e5: C_D = 11 Re^(−3/4) + 0.9 (1 − e^(−1000/Re)) + 1.2 (1 − e^(−(Re/4500)^0.7)).
//! N.-S. Cheng, *J. Hydraul. Eng.* 139 (2013) 602–611. Against the wind-tunnel data of Wieselsberger (1922,
//! NACA TN 84) it is within 14 %, mostly within 5 %.
//!
//! **Ends**: past the ends of a short cylinder water flows round, and the drag is less. Wieselsberger's ratio to
//! the long one, by d/l, linear between his points, 0 ≤ d/l ≤ 0.498; measured at Re about 9e4.
//!
//! **Sphere**, 0.01 ≤ Re ≤ 3e5: the standard drag curve, R. Clift, J. R. Grace, M. E. Weber, *Bubbles, Drops, and
//! Particles* (1978), table 5.2. Other published curves lie within 7 %.

use core::ops::RangeInclusive;

/// Reynolds numbers for which [`cylinder`] holds.
pub const CYLINDER_RANGE: RangeInclusive<f64> = 0.02..=2e5;

/// Reynolds numbers for which [`sphere`] holds.
pub const SPHERE_RANGE: RangeInclusive<f64> = 0.01..=3e5;

/// Drag coefficient of a long cylinder across the flow (equation, source: [module](self)); `None` outside
/// [`CYLINDER_RANGE`].
#[must_use]
pub fn cylinder(reynolds: f64) -> Option<f64> {
    CYLINDER_RANGE.contains(&reynolds).then(|| {
        11.0 * libm::pow(reynolds, -0.75)
            - 0.9 * libm::expm1(-1000.0 / reynolds)
            - 1.2 * libm::expm1(-libm::pow(reynolds / 4500.0, 0.7))
    })
}

/// Drag of a cylinder with ends per drag of the same length of a long one, by diameter per length (source:
/// [module](self)); `None` outside 0 to 0.498.
#[must_use]
pub fn end_factor(diameter_per_length: f64) -> Option<f64> {
    const LONG: f64 = 1.19;
    const POINTS: [(f64, f64); 5] =
        [(0.0, LONG), (0.0237, 0.986), (0.0998, 0.82), (0.2, 0.737), (0.498, 0.687)];
    let x = diameter_per_length;
    let intervals = POINTS.iter().zip(POINTS.iter().skip(1));
    intervals
        .filter(|((from, _), (to, _))| (*from..=*to).contains(&x))
        .map(|((from, at_from), (to, at_to))| {
            at_from + (at_to - at_from) * ((x - from) / (to - from))
        })
        .next()
        .map(|coefficient| coefficient / LONG)
}

/// Drag coefficient of a sphere (equation, source: [module](self)); `None` outside [`SPHERE_RANGE`].
#[must_use]
pub fn sphere(reynolds: f64) -> Option<f64> {
    if !SPHERE_RANGE.contains(&reynolds) {
        return None;
    }
    let log = libm::log10(reynolds);
    let stokes = 24.0 / reynolds;
    let power = |exponent: f64| libm::pow(10.0, exponent);
    Some(match reynolds {
        ..20.0 => stokes * (1.0 + 0.1315 * libm::pow(reynolds, 0.82 - 0.05 * log)),
        ..260.0 => stokes * (1.0 + 0.1935 * libm::pow(reynolds, 0.6305)),
        ..1500.0 => power(1.6435 - 1.1242 * log + 0.1558 * log * log),
        ..12_000.0 => power(-2.4571 + 2.5558 * log - 0.9295 * log * log + 0.1049 * log * log * log),
        ..44_000.0 => power(-1.9181 + 0.6370 * log - 0.0636 * log * log),
        _ => power(-4.3390 + 1.5809 * log - 0.1546 * log * log),
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;

    // Lapple & Shepherd 1940, from memory, to the spread of the published curves.
    #[rstest]
    #[case(0.1, 240.0)]
    #[case(1.0, 26.5)]
    #[case(100.0, 1.09)]
    #[case(1e4, 0.405)]
    #[case(1e5, 0.48)]
    fn sphere_of_the_table(#[case] reynolds: f64, #[case] expected: f64) {
        let got = sphere(reynolds).unwrap();
        assert!((got / expected - 1.0).abs() < 0.07, "{got}");
    }

    #[rstest]
    #[case(20.0)]
    #[case(260.0)]
    #[case(1500.0)]
    #[case(12_000.0)]
    #[case(44_000.0)]
    fn pieces_of_the_sphere_curve_meet(#[case] join: f64) {
        let (below, above) = (sphere(join * (1.0 - 1e-12)).unwrap(), sphere(join).unwrap());
        assert!((below / above - 1.0).abs() < 0.01, "{below} {above}");
    }

    #[test]
    fn outside_the_data_is_no_answer() {
        for x in [f64::NAN, f64::INFINITY, -1.0, 0.0, 1e7] {
            assert_eq!((cylinder(x), sphere(x)), (None, None));
        }
        for x in [f64::NAN, -0.1, 0.5] {
            assert_eq!(end_factor(x), None);
        }
        assert_eq!(end_factor(0.0), Some(1.0));
    }

    proptest! {
        // What makes the balance of weight and drag have one answer.
        #[test]
        fn faster_is_more_drag(log in -1.6..5.2) {
            let (slow, fast) = (libm::pow(10.0, log), libm::pow(10.0, log + 0.02));
            let drag = |law: fn(f64) -> Option<f64>, x: f64| law(x).unwrap() * x * x;
            prop_assert!(drag(cylinder, fast) > drag(cylinder, slow));
            prop_assert!(drag(sphere, fast) > drag(sphere, slow));
        }

        #[test]
        fn shorter_is_less_drag(x in 0.0..0.49) {
            prop_assert!(end_factor(x + 0.005).unwrap() < end_factor(x).unwrap());
        }
    }
}
