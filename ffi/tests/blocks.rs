//! Columns whose rows are calculated many at a time: more rows than a block, good and bad ones, any strides, in place.
//! Each row is the scalar call, to the bit.

use std::mem::MaybeUninit;
use std::ptr;

use pourwright_ffi::*;
use proptest::prelude::*;

/// A sensible number, an end of its range, or one that cannot be.
fn number(sensible: std::ops::Range<f64>, ends: [f64; 2]) -> BoxedStrategy<f64> {
    let near = ends.map(|end| [end, end.next_up(), end.next_down(), end * (1.0 + 1e-11)]).concat();
    let odd = vec![f64::NAN, f64::INFINITY, -1.0, 0.0, -0.0, 1e-320, f64::MAX];
    prop_oneof![
        40 => sensible,
        1 => prop::sample::select(near),
        1 => prop::sample::select(odd)
    ]
    .boxed()
}

/// One of the calls, with `K` parameters and `M` results.
struct Call<const K: usize, const M: usize> {
    one: fn([f64; K]) -> ([f64; M], i32),
    all: fn(usize, [pour_column; K], [pour_result_column; M], *mut i32) -> i32,
}

const DENSITY: [f64; 2] = [0.001, 25.0];

fn scalar<R, const M: usize>(
    call: impl FnOnce(Option<&mut MaybeUninit<R>>) -> i32,
    read: impl FnOnce(R) -> [f64; M],
) -> ([f64; M], i32) {
    let mut result = MaybeUninit::uninit();
    match call(Some(&mut result)) {
        // SAFETY: the call succeeded.
        POUR_OK => (read(unsafe { result.assume_init() }), POUR_OK),
        status => ([f64::NAN; M], status),
    }
}

const MASS_OF_VOLUME: Call<2, 1> = Call {
    one: |[volume, density]| {
        scalar(|result| pour_mass_of_volume(volume, density, result, None), |mass| [mass])
    },
    all: |rows, [volume_ml, density_g_per_ml], [mass_g], statuses| {
        let columns = pour_mass_of_volume_columns { volume_ml, density_g_per_ml };
        let results = pour_mass_of_volume_result_columns { mass_g };
        // SAFETY: `check` gives columns of `rows`.
        unsafe { pour_mass_of_volume_n(rows, Some(&columns), Some(&results), statuses, None) }
    },
};

const VOLUME_OF_MASS: Call<2, 1> = Call {
    one: |[mass, density]| {
        scalar(|result| pour_volume_of_mass(mass, density, result, None), |volume| [volume])
    },
    all: |rows, [mass_g, density_g_per_ml], [volume_ml], statuses| {
        let columns = pour_volume_of_mass_columns { mass_g, density_g_per_ml };
        let results = pour_volume_of_mass_result_columns { volume_ml };
        // SAFETY: as above.
        unsafe { pour_volume_of_mass_n(rows, Some(&columns), Some(&results), statuses, None) }
    },
};

const PIECE_MASS: Call<5, 3> = Call {
    one: |[cavity, cold, hot, voids, feed]| {
        scalar(
            |result| pour_piece_mass(cavity, cold, hot, voids, feed, result, None),
            |pour_piece_mass_result { piece_mass_g, piece_mass_min_g, piece_mass_max_g }| {
                [piece_mass_g, piece_mass_min_g, piece_mass_max_g]
            },
        )
    },
    all: |rows, [cavity, cold, hot, voids, feed], [mass, min, max], statuses| {
        let columns = pour_piece_mass_columns {
            cavity_volume_ml: cavity,
            cold_density_g_per_ml: cold,
            hot_density_g_per_ml: hot,
            voids,
            feed,
        };
        let results = pour_piece_mass_result_columns {
            piece_mass_g: mass,
            piece_mass_min_g: min,
            piece_mass_max_g: max,
        };
        // SAFETY: as above.
        unsafe { pour_piece_mass_n(rows, Some(&columns), Some(&results), statuses, None) }
    },
};

const SALT_FOR_DENSITY: Call<6, 1> = Call {
    one: |[volume, base, salt, wanted, voids, most]| {
        scalar(
            |result| pour_salt_for_density(volume, base, salt, wanted, voids, most, result, None),
            |mass| [mass],
        )
    },
    all: |rows, [volume, base, salt, wanted, voids, most], [salt_mass_g], statuses| {
        let columns = pour_salt_for_density_columns {
            base_volume_ml: volume,
            base_density_g_per_ml: base,
            salt_density_g_per_ml: salt,
            finished_density_g_per_ml: wanted,
            voids,
            most_solids: most,
        };
        let results = pour_salt_for_density_result_columns { salt_mass_g };
        // SAFETY: as above.
        unsafe { pour_salt_for_density_n(rows, Some(&columns), Some(&results), statuses, None) }
    },
};

/// How a column lies in memory: the bytes from one number to the next.
fn stride() -> impl Strategy<Value = isize> {
    prop::sample::select(vec![8, 8, 8, 0, 16, 24, -8])
}

/// Lays `K` columns out by their strides, runs the call, and compares every row with the scalar call.
fn check<const K: usize, const M: usize>(
    call: &Call<K, M>,
    rows: &[[f64; K]],
    strides: [isize; K],
    in_place: bool,
    with_statuses: bool,
) -> Result<(), TestCaseError> {
    let mut memory: [Vec<f64>; K] = std::array::from_fn(|_| Vec::new());
    let mut seen = rows.to_vec();
    let mut columns = [pour_column { start: ptr::null(), stride: 0 }; K];
    for place in 0..K {
        let step = strides[place].unsigned_abs() / 8;
        let room = &mut memory[place];
        room.resize(rows.len() * step.max(1), 99.0);
        for (row, numbers) in rows.iter().enumerate() {
            let row_in_memory = if strides[place] < 0 { rows.len() - 1 - row } else { row };
            match step {
                0 => seen[row][place] = rows[0][place],
                _ => room[row_in_memory * step] = numbers[place],
            }
        }
        if step == 0 {
            room[0] = rows[0][place];
        }
        let first = if strides[place] < 0 { rows.len() - 1 } else { 0 };
        // SAFETY: `first` is in the memory.
        let start = unsafe { room.as_mut_ptr().add(first) };
        columns[place] = pour_column { start, stride: strides[place] };
    }
    let mut out = vec![vec![7.0; rows.len()]; M];
    let mut places =
        std::array::from_fn(|m| pour_result_column { start: out[m].as_mut_ptr(), stride: 8 });
    let replaces = in_place && strides[0] == 8;
    if replaces {
        places[0] = pour_result_column { start: columns[0].start.cast_mut(), stride: 8 };
    }
    let mut statuses = vec![-1; rows.len()];
    let into = if with_statuses { statuses.as_mut_ptr() } else { ptr::null_mut() };
    prop_assert_eq!((call.all)(rows.len(), columns, places, into), POUR_OK);
    if replaces {
        out[0].clone_from(&memory[0]);
    }
    for (row, numbers) in seen.iter().enumerate() {
        let (wanted, status) = (call.one)(*numbers);
        for (column, wanted) in out.iter().zip(wanted) {
            prop_assert_eq!(column[row].to_bits(), wanted.to_bits(), "row {}: {:?}", row, numbers);
        }
        if with_statuses {
            prop_assert_eq!(statuses[row], status, "row {}: {:?}", row, numbers);
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn masses_and_volumes(
        rows in prop::collection::vec([number(0.5..500.0, [0.0, 1e9]), number(0.8..2.5, DENSITY)], 1..200),
        strides in [stride(), stride()],
        [in_place, with_statuses] in any::<[bool; 2]>(),
    ) {
        check(&MASS_OF_VOLUME, &rows, strides, in_place, with_statuses)?;
        check(&VOLUME_OF_MASS, &rows, strides, in_place, with_statuses)?;
    }

    #[test]
    fn masses_of_pieces(
        rows in prop::collection::vec([
            number(0.5..50.0, [0.0, 1e6]),
            number(1.05..1.2, DENSITY),
            prop_oneof![number(0.9..1.05, DENSITY), Just(POUR_OMITTED)].boxed(),
            prop_oneof![number(0.0..0.2, [0.0, 1.0]), Just(POUR_OMITTED)].boxed(),
            prop_oneof![number(0.0..1.0, [0.0, 1.0]), Just(POUR_OMITTED)].boxed(),
        ], 1..200),
        strides in [stride(), stride(), stride(), stride(), stride()],
        [in_place, with_statuses] in any::<[bool; 2]>(),
    ) {
        check(&PIECE_MASS, &rows, strides, in_place, with_statuses)?;
    }

    #[test]
    fn salt_for_densities(
        rows in prop::collection::vec([
            number(50.0..2000.0, [0.0, 1e9]),
            number(0.95..1.1, DENSITY),
            number(2.0..2.5, DENSITY),
            // Some below the base's density, some beyond the limit of solids.
            number(1.0..1.6, DENSITY),
            prop_oneof![number(0.0..0.1, [0.0, 1.0]), Just(POUR_OMITTED)].boxed(),
            prop_oneof![number(0.1..0.6, [0.0, 1.0]), Just(POUR_OMITTED)].boxed(),
        ], 1..200),
        strides in [stride(), stride(), stride(), stride(), stride(), stride()],
        [in_place, with_statuses] in any::<[bool; 2]>(),
    ) {
        check(&SALT_FOR_DENSITY, &rows, strides, in_place, with_statuses)?;
    }
}

/// Two blocks and a part of one, all good: the rows of the last block that are not there are not looked at.
#[test]
fn a_last_block_that_is_not_full() {
    let rows: Vec<[f64; 2]> = (1..=150).map(|row| [f64::from(row), 1.03]).collect();
    check(&MASS_OF_VOLUME, &rows, [8, 8], false, true).unwrap();
}
