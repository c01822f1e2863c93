use pourwright::batch::{Injector, Loads, Rejects, Run, Wanted, shots};
use pourwright_tests::reference::batch as plain;
use proptest::prelude::*;

use crate::units::{close, g, in_g, ml, per_ml, share};

proptest! {
    #[test]
    fn shots_agree(
        shapes in prop::collection::vec((1_u32..40, 1_u32..7), 1..4),
        rate in 0.0..0.4,
        confidence in 0.05..0.99,
    ) {
        let wanted: Vec<Wanted> =
            shapes.iter().map(|&(pieces, cavities)| Wanted { pieces, cavities }).collect();
        let rejects = Rejects { rate: share(rate), confidence: share(confidence) };
        prop_assert_eq!(
            shots(&wanted, Some(rejects)).unwrap(),
            plain::shots(&shapes, rate, confidence)
        );
    }

    #[test]
    fn loads_agree(shots in 1_u32..200, shot in 5.0..90.0, holds in 105.0..300.0) {
        let injector = Injector { holds: ml(holds), keeps: ml(4.0) };
        let got = injector.loads(shots, g(shot), per_ml(0.9)).unwrap();
        let (loads, in_last) = plain::loads(shots, shot, (holds - 4.0) * 0.9);
        prop_assert_eq!((got.loads, got.shots_in_last), (loads, in_last));
    }

    #[test]
    fn needs_agree(
        (shots, per_load) in (1_u32..200, 1_u32..20),
        (fill, sprue, returned) in (1.0..200.0, 0.0..=1.0, 0.0..=1.0),
        (keeps, cleanings, film, heel) in (0.0..9.0, 0_u32..4, 0.0..9.0, 0.0..30.0),
    ) {
        let loads = shots.div_ceil(per_load);
        let shots_in_last = shots - per_load * (loads - 1);
        let got = Run {
            shots,
            loads: Loads { shots_per_load: per_load, loads, shots_in_last },
            fill: g(fill),
            sprue: g(fill * sprue),
            returned: share(returned),
            injector_keeps: g(keeps),
            cleanings,
            film: g(film),
            heel: g(heel),
        }
        .need()
        .unwrap();
        let lost = keeps * f64::from(cleanings) + film.max(heel);
        let plain =
            plain::need_g(shots, shots_in_last, (fill, fill * sprue, returned), lost);
        prop_assert!(close(in_g(got.total), plain, 1e-11));
    }
}
