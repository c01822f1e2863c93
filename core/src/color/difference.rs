//! How far apart two colors look: CIEDE2000.
//!
//! ΔE₀₀ with k_L = k_C = k_H = 1; about 1 is what a trained eye just sees side by side. The formula jumps
//! where two hues are exactly opposite: by 0.04 near gray, but between strong colors by as much as half (60 to 90), so that
//! there the last digit of a color decides. It was made for small differences: two such colors are far apart by either
//! number.
//!
//! ISO/CIE 11664-6; as set out by G. Sharma, W. Wu, E. N. Dalal, *Color Res. Appl.* 30 (2005) 21–30, whose
//! equation numbers are next to the steps.

use core::f64::consts::PI;

use crate::color::lab::Lab;

/// ΔE₀₀ between two colors (source: [module](self)); the same either way round.
#[must_use]
pub fn ciede2000(one: &Lab, other: &Lab) -> f64 {
    // (2)–(5): a* is stretched for colors near gray.
    let chroma = |color: &Lab| libm::sqrt(color.a() * color.a() + color.b() * color.b());
    let stretch = 1.0 + 0.5 * (1.0 - of_25_to_the_7(0.5 * (chroma(one) + chroma(other))));
    let (first, second) = (Polar::of(one, stretch), Polar::of(other, stretch));

    // (8)–(11): the three differences.
    let lightness = other.lightness() - one.lightness();
    let step = second.chroma - first.chroma;
    let turn = turn(&first, &second);
    let hue = 2.0 * libm::sqrt(first.chroma * second.chroma) * libm::sin(0.5 * turn);

    // (12)–(14): their means.
    let mean_lightness = 0.5 * (one.lightness() + other.lightness());
    let mean_chroma = 0.5 * (first.chroma + second.chroma);
    let mean_hue = mean_hue(&first, &second);

    // (15)–(21): their weights.
    let off = (mean_lightness - 50.0) * (mean_lightness - 50.0);
    let s_lightness = 1.0 + 0.015 * off / libm::sqrt(20.0 + off);
    let s_chroma = 1.0 + 0.045 * mean_chroma;
    let t = 1.0 - 0.17 * libm::cos(mean_hue - degrees(30.0))
        + 0.24 * libm::cos(2.0 * mean_hue)
        + 0.32 * libm::cos(3.0 * mean_hue + degrees(6.0))
        - 0.20 * libm::cos(4.0 * mean_hue - degrees(63.0));
    let s_hue = 1.0 + 0.015 * mean_chroma * t;
    let from_blue = (mean_hue - degrees(275.0)) / degrees(25.0);
    let tilt = degrees(30.0) * libm::exp(-from_blue * from_blue);
    let rotation = -2.0 * of_25_to_the_7(mean_chroma) * libm::sin(2.0 * tilt);

    // (22).
    let (l, c, h) = (lightness / s_lightness, step / s_chroma, hue / s_hue);
    libm::sqrt((l * l + c * c + h * h + rotation * c * h).max(0.0))
}

/// How a ΔE₀₀ looks, in words (common practice, no source).
#[must_use]
pub const fn in_words(difference: f64) -> &'static str {
    match difference {
        d if d < 1.0 => "alike to the eye",
        d if d < 2.0 => "just visible side by side",
        d if d < 5.0 => "visible side by side",
        d if d < 10.0 => "clearly different",
        _ => "another color",
    }
}

/// Chroma and hue of a color after the stretch.
struct Polar {
    chroma: f64,
    /// From 0 to 2π; 0 where there is no chroma.
    hue: f64,
}

impl Polar {
    fn of(color: &Lab, stretch: f64) -> Self {
        let (a, b) = (stretch * color.a(), color.b());
        let hue = if a == 0.0 && b == 0.0 { 0.0 } else { libm::atan2(b, a) };
        Self {
            chroma: libm::sqrt(a * a + b * b),
            hue: if hue < 0.0 { hue + 2.0 * PI } else { hue },
        }
    }
}

/// (10): the turn from the first hue to the second, the short way.
fn turn(first: &Polar, second: &Polar) -> f64 {
    let turn = second.hue - first.hue;
    if first.chroma * second.chroma == 0.0 {
        0.0
    } else if turn > PI {
        turn - 2.0 * PI
    } else if turn < -PI {
        turn + 2.0 * PI
    } else {
        turn
    }
}

/// (14): the hue between the two, on the short way.
fn mean_hue(first: &Polar, second: &Polar) -> f64 {
    let sum = first.hue + second.hue;
    if first.chroma * second.chroma == 0.0 {
        sum
    } else if (first.hue - second.hue).abs() <= PI {
        0.5 * sum
    } else if sum < 2.0 * PI {
        0.5 * sum + PI
    } else {
        0.5 * sum - PI
    }
}

/// √(C⁷/(C⁷ + 25⁷)).
fn of_25_to_the_7(chroma: f64) -> f64 {
    let part = chroma / 25.0;
    let cubed = part * part * part;
    let seventh = cubed * cubed * part;
    libm::sqrt(seventh / (seventh + 1.0))
}

fn degrees(x: f64) -> f64 {
    x * (PI / 180.0)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn colors() -> impl Strategy<Value = Lab> {
        (0.0..=100.0, -120.0..120.0, -120.0..120.0).prop_map(|(l, a, b)| Lab::new(l, a, b).unwrap())
    }

    /// Equations (7), (10) and (14) of Sharma et al. at their ends, in degrees.
    #[test]
    fn hues_by_hand() {
        let at = |chroma: f64, hue: f64| Polar { chroma, hue: degrees(hue) };
        // On the near side, across zero from both sides, just opposite, and next to a gray, whose hue is 0.
        for (first, second, turned, mean) in [
            (at(1.0, 10.0), at(1.0, 350.0), -20.0, 0.0),
            (at(1.0, 20.0), at(1.0, 350.0), -30.0, 5.0),
            (at(1.0, 10.0), at(1.0, 340.0), -30.0, 355.0),
            (at(1.0, 340.0), at(1.0, 10.0), 30.0, 355.0),
            (at(2.0, 100.0), at(3.0, 40.0), -60.0, 70.0),
            (at(1.0, 0.0), at(1.0, 180.0), 180.0, 90.0),
            (at(1.0, 180.0), at(1.0, 0.0), -180.0, 90.0),
            (at(0.0, 0.0), at(1.0, 250.0), 0.0, 250.0),
            (at(1.0, 250.0), at(0.0, 0.0), 0.0, 250.0),
        ] {
            let found = [turn(&first, &second), mean_hue(&first, &second)].map(|x| x * 180.0 / PI);
            let off = [found[0] - turned, found[1] - mean];
            assert!(off.iter().all(|off| off.abs() < 1e-9), "{found:?}: {turned}, {mean}");
        }
        let exactly_opposite =
            (Polar { chroma: 1.0, hue: 0.25 * PI }, Polar { chroma: 1.0, hue: 1.75 * PI });
        assert_eq!(mean_hue(&exactly_opposite.0, &exactly_opposite.1), 0.0);
        let half = Polar { chroma: 1.0, hue: PI };
        assert_eq!(turn(&at(1.0, 0.0), &half), PI);
        assert_eq!(turn(&half, &at(1.0, 0.0)), -PI);
    }

    #[test]
    fn a_hue_is_from_zero_to_a_full_turn() {
        for (a, b, hue) in [
            (10.0, 0.0, 0.0),
            (10.0, 10.0, 0.25 * PI),
            (0.0, -10.0, 1.5 * PI),
            (0.0, 0.0, 0.0),
            (-0.0, 0.0, 0.0),
            (-0.0, -0.0, 0.0),
        ] {
            let found = Polar::of(&Lab::new(50.0, a, b).unwrap(), 1.0).hue;
            assert!((found - hue).abs() < 1e-15, "{a} {b}: {found}");
        }
    }

    /// Between strong colors of opposite hues the last digit decides; how far is in the module's text.
    #[test]
    fn opposite_hues_jump() {
        let mut most = 1.0;
        for degree in 0..180_u32 {
            let angle = f64::from(degree) * PI / 180.0;
            let at = |angle: f64| {
                Lab::new(50.0, 60.0 * libm::cos(angle), 60.0 * libm::sin(angle)).unwrap()
            };
            let one = at(angle);
            let sides =
                (ciede2000(&one, &at(angle + PI - 1e-7)), ciede2000(&one, &at(angle + PI + 1e-7)));
            let (low, high) = (sides.0.min(sides.1), sides.0.max(sides.1));
            most = f64::max(most, high / low);
        }
        assert!((1.45..1.6).contains(&most), "{most}");
    }

    proptest! {
        #[test]
        fn a_color_is_not_off_from_itself(color in colors()) {
            prop_assert_eq!(ciede2000(&color, &color), 0.0);
        }

        #[test]
        fn either_way_round_it_is_the_same(one in colors(), other in colors()) {
            let (there, back) = (ciede2000(&one, &other), ciede2000(&other, &one));
            prop_assert!((there - back).abs() <= 1e-12 * there);
        }

        // With no chroma only lightness counts: (15) and (22).
        #[test]
        fn grays_differ_in_lightness_alone(one in 0.0..=100.0, other in 0.0..=100.0) {
            let gray = |l| Lab::new(l, 0.0, 0.0).unwrap();
            let off: f64 = 0.5 * (one + other) - 50.0;
            let weight = 1.0 + 0.015 * off * off / libm::sqrt(20.0 + off * off);
            let got = ciede2000(&gray(one), &gray(other));
            prop_assert!((got - (one - other).abs() / weight).abs() < 1e-10);
        }
    }
}
