//! Monotone cubic interpolation through measured points.
//!
//! Piecewise cubic Hermite with the slopes of F. N. Fritsch and J. Butland, *SIAM J. Sci. Stat. Comput.* 5
//! (1984) 300–304: inside, the weighted harmonic mean of the two neighboring secants, zero where they differ
//! in sign; at an end the three-point formula, held so that the curve keeps its shape. These are the slopes
//! of SciPy's `PchipInterpolator`. Between two points the curve never leaves the values of the two.
//!
//! Slopes are computed where they are needed, from four points at most, so that nothing is allocated.

/// A measured point.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Knot {
    pub(crate) x: f64,
    pub(crate) y: f64,
}

/// A list of points, x rising.
pub(crate) trait Knots {
    /// Point `i`, `None` beyond the last.
    fn knot(&self, i: usize) -> Option<Knot>;
}

/// The value at `x` of the curve between points `i` and `i + 1`; `None` where they do not exist.
pub(crate) fn value(knots: &impl Knots, i: usize, x: f64) -> Option<f64> {
    let piece = Piece::of(knots, i)?;
    Some(piece.at(x))
}

/// The x between points `i` and `i + 1` where the curve has the value `y`, which lies between theirs.
pub(crate) fn inverse(knots: &impl Knots, i: usize, y: f64) -> Option<f64> {
    // Each halving gains a bit; after 64 an f64 has none left to gain.
    const HALVINGS: u32 = 64;
    let piece = Piece::of(knots, i)?;
    if y == piece.a.y {
        return Some(piece.a.x);
    }
    if y == piece.b.y {
        return Some(piece.b.x);
    }
    let rises = piece.b.y > piece.a.y;
    let (mut low, mut high) = (piece.a.x, piece.b.x);
    for _ in 0..HALVINGS {
        let middle = low + 0.5 * (high - low);
        if (piece.at(middle) < y) == rises {
            low = middle;
        } else {
            high = middle;
        }
    }
    Some(high)
}

/// The cubic between two points, with its slopes there.
struct Piece {
    a: Knot,
    b: Knot,
    slope_a: f64,
    slope_b: f64,
}

impl Piece {
    fn of(knots: &impl Knots, i: usize) -> Option<Self> {
        let a = knots.knot(i)?;
        let b = knots.knot(i.checked_add(1)?)?;
        let before = i.checked_sub(1).and_then(|j| knots.knot(j));
        let after = i.checked_add(2).and_then(|j| knots.knot(j));
        let slope_a = match (before, after) {
            (Some(before), _) => inner_slope(before, a, b),
            (None, Some(after)) => end_slope(a, b, after),
            (None, None) => secant(a, b),
        };
        let slope_b = match (before, after) {
            (_, Some(after)) => inner_slope(a, b, after),
            (Some(before), None) => end_slope(b, a, before),
            (None, None) => secant(a, b),
        };
        Some(Self { a, b, slope_a, slope_b })
    }

    fn at(&self, x: f64) -> f64 {
        let width = self.b.x - self.a.x;
        let secant = secant(self.a, self.b);
        let bend = (self.slope_a + self.slope_b - 2.0 * secant) / width;
        let cubic = bend / width;
        let square = (secant - self.slope_a) / width - bend;
        let s = x - self.a.x;
        self.a.y + s * (self.slope_a + s * (square + s * cubic))
    }
}

fn secant(a: Knot, b: Knot) -> f64 {
    (b.y - a.y) / (b.x - a.x)
}

/// Slope at `here`, between two others.
fn inner_slope(before: Knot, here: Knot, after: Knot) -> f64 {
    let (left, right) = (secant(before, here), secant(here, after));
    if left * right <= 0.0 {
        return 0.0;
    }
    let (width_left, width_right) = (here.x - before.x, after.x - here.x);
    let weight_left = 2.0 * width_right + width_left;
    let weight_right = width_right + 2.0 * width_left;
    (weight_left + weight_right) / (weight_left / left + weight_right / right)
}

/// Slope at the end `here`; `next` and `further` are the two points next to it.
fn end_slope(here: Knot, next: Knot, further: Knot) -> f64 {
    let (near, far) = (secant(here, next), secant(next, further));
    let (width_near, width_far) = (next.x - here.x, further.x - next.x);
    let slope =
        ((2.0 * width_near + width_far) * near - width_near * far) / (width_near + width_far);
    if slope * near <= 0.0 {
        0.0
    } else if libm::fabs(slope) > 3.0 * libm::fabs(near) {
        // Only where the secants differ in sign: else it is below two of them.
        3.0 * near
    } else {
        slope
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;

    fn at(x: f64, y: f64) -> Knot {
        Knot { x, y }
    }

    /// ((2h₁ + h₂) Δ₁ − h₁ Δ₂)/(h₁ + h₂), zero against Δ₁, and at most 3 Δ₁ where Δ₁ and Δ₂ differ in sign.
    #[rstest]
    #[case([1.0, 1.0], [1.0, 0.5], 1.25)]
    #[case([1.0, 2.0], [1.0, 0.5], 3.5 / 3.0)]
    #[case([2.0, 1.0], [1.0, 0.5], 4.0 / 3.0)]
    #[case([1.0, 1.0], [1.0, 4.0], 0.0)]
    #[case([1.0, 1.0], [1.0, -2.0], 2.5)]
    #[case([1.0, 1.0], [1.0, -4.0], 3.0)]
    #[case([1.0, 1.0], [-1.0, 4.0], -3.0)]
    #[case([1.0, 1.0], [0.0, 1.0], 0.0)]
    #[case([1.0, 1.0], [0.5, 0.25], 0.625)]
    #[case([1.0, 1.0], [0.5, -2.0], 1.5)]
    fn slopes_at_an_end(
        #[case] widths: [f64; 2],
        #[case] secants: [f64; 2],
        #[case] expected: f64,
    ) {
        let here = at(0.5, -2.0);
        let next = at(here.x + widths[0], here.y + widths[0] * secants[0]);
        let further = at(next.x + widths[1], next.y + widths[1] * secants[1]);
        let found = end_slope(here, next, further);
        assert!((found - expected).abs() < 1e-15, "{found}");
    }

    /// (w₁ + w₂)/(w₁/Δ₁ + w₂/Δ₂) with w₁ = 2h₂ + h₁ and w₂ = h₂ + 2h₁; zero at a peak and next to a level piece.
    #[rstest]
    #[case([1.0, 1.0], [1.0, 2.0], 4.0 / 3.0)]
    #[case([1.0, 2.0], [1.0, 2.0], 9.0 / 7.0)]
    #[case([1.0, 1.0], [1.0, -2.0], 0.0)]
    #[case([1.0, 1.0], [1.0, 0.0], 0.0)]
    #[case([1.0, 1.0], [0.0, 1.0], 0.0)]
    fn slopes_inside(#[case] widths: [f64; 2], #[case] secants: [f64; 2], #[case] expected: f64) {
        let before = at(-widths[0], -widths[0] * secants[0]);
        let found = inner_slope(before, at(0.0, 0.0), at(widths[1], widths[1] * secants[1]));
        assert!((found - expected).abs() < 1e-15, "{found}");
    }

    struct Line;

    impl Knots for Line {
        fn knot(&self, i: usize) -> Option<Knot> {
            [at(0.0, 0.0), at(1.0, 1.0)].get(i).copied()
        }
    }

    #[test]
    fn a_line_is_a_line_both_ways() {
        assert_eq!((value(&Line, 0, 0.25), inverse(&Line, 0, 0.5)), (Some(0.25), Some(0.5)));
        assert_eq!((value(&Line, 1, 0.25), inverse(&Line, 1, 0.5)), (None, None));
    }
}
