use pourwright::shot::{Cavity, Melt, Shot};
use pourwright_tests::reference::shot as plain;
use proptest::prelude::*;

use crate::units::{close, g, in_g, ml, per_ml, share};

proptest! {
    #[test]
    fn shots_agree(
        shapes in prop::collection::vec((0.5..60.0, 1_u32..9), 1..5),
        (sprue, topped, feed) in (0.0..20.0, 0.0..5.0, 0.0..=1.0),
        (hot, shrink, voids) in (0.8..1.2, 0.0..0.15, 0.0..0.2),
    ) {
        let cold = hot + shrink;
        let cavities: Vec<Cavity> =
            shapes.iter().map(|&(volume, count)| Cavity { volume: ml(volume), count }).collect();
        let one_by_one: Vec<f64> = shapes
            .iter()
            .flat_map(|&(volume, count)| std::iter::repeat_n(volume, count as usize))
            .collect();
        let got = Shot {
            cavities: &cavities,
            share: share(1.0),
            sprue: ml(sprue),
            topped: g(topped),
            feed: share(feed),
            melt: Melt { hot: per_ml(hot), cold: per_ml(cold), voids: share(voids) },
        }
        .masses()
        .unwrap();
        let fill = plain::fill_g(&one_by_one, sprue, hot, voids, topped);
        prop_assert!(close(in_g(got.fill), fill, 1e-13));
        let missing = plain::missing_g(&one_by_one, sprue, (hot, cold, voids), topped, feed);
        prop_assert!((in_g(got.missing) - missing).abs() <= 1e-12 * fill);
        if missing == 0.0 {
            let piece = plain::piece_g(one_by_one[0], hot, cold, voids, feed);
            prop_assert!(close(in_g(got.piece(ml(one_by_one[0]))), piece, 1e-13));
        }
    }
}
