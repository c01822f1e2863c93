//! What a shot takes, and what a piece weighs.

use std::mem::MaybeUninit;

use pourwright::Diagnose;
use pourwright::parameter::{Parameter, ParameterErrors, Problem};
use pourwright::shot::{Cavity, Melt, Shot as CoreShot};

use crate::error::{Error, Failure};
use crate::guard::guard;
use crate::memory::given;
use crate::number::{grams, grams_per_milliliter, in_grams, milliliters, or, share};
use crate::range::{At, G, ML, Number, Range, SHARE, SHARE_BELOW_1, above_0, from_0, refusal};

/// One shot into cavities of one shape. Set all to 0 first.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Shot {
    /// Volume of one cavity; above 0.
    pub cavity_ml: f64,
    /// Volume of sprue that this shot fills; 0 or above.
    pub sprue_ml: f64,
    /// Mass that topping off and holding add; 0 or above.
    pub topped_g: f64,
    /// The layer's share of each cavity, above 0 to 1; 1 where 0.
    pub share: f64,
    /// Share of its contraction that a piece draws from the sprue, 0 to 1.
    pub feed: f64,
    /// Density at shot temperature, without voids; the cold one where 0.
    pub hot_g_per_ml: f64,
    /// Density at 20 °C once fused, without voids; above 0.
    pub cold_g_per_ml: f64,
    /// Share of the volume that is air, 0 to below 1.
    pub voids: f64,
    /// How many cavities the shot fills; 1 or more.
    pub cavities: u32,
    /// Not used; 0.
    pub reserved: u32,
}

/// Masses of one shot.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct ShotResult {
    /// What the mold takes, topping included.
    pub fill_g: f64,
    /// All pieces of the shot together.
    pub pieces_g: f64,
    /// What is left as sprue once the pieces have been fed.
    pub sprue_g: f64,
    /// What the sprue and the topping are short of: above 0 the pieces sink in.
    pub missing_g: f64,
    /// One piece, or the layer in it.
    pub piece_g: f64,
    /// The share of the contraction that was fed.
    pub feed: f64,
}

impl Shot {
    fn numbers(&self) -> [Number<'static>; 8] {
        [
            ("shot/cavity_ml", self.cavity_ml, above_0(ML)),
            ("shot/sprue_ml", self.sprue_ml, from_0(ML)),
            ("shot/topped_g", self.topped_g, from_0(G)),
            ("shot/share", self.share, SHARE),
            ("shot/feed", self.feed, SHARE),
            ("shot/hot_g_per_ml", self.hot_g_per_ml, Range::DensityOr0),
            ("shot/cold_g_per_ml", self.cold_g_per_ml, Range::Density),
            ("shot/voids", self.voids, SHARE_BELOW_1),
        ]
    }

    fn why(&self, error: &ParameterErrors) -> Failure {
        let at = match error {
            _ if error.parameter() == Some(Parameter::Cavities) => At::Parameter("shot/cavities"),
            _ if is_relation(error) => At::Parameter("shot/hot_g_per_ml"),
            _ => At::Number("shot"),
        };
        refusal(&self.numbers(), at, error)
    }
}

/// What a shot takes, and what its pieces weigh.
#[unsafe(no_mangle)]
pub extern "C" fn pour_shot_fill(
    shot: Option<&Shot>,
    result: Option<&mut MaybeUninit<ShotResult>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let shot = given("shot", shot)?;
        let result = given("result", result.as_deref_mut())?;
        let volume = milliliters(shot.cavity_ml);
        let masses = CoreShot {
            cavities: &[Cavity { volume, count: shot.cavities }],
            share: share(or(shot.share, 1.0)),
            sprue: milliliters(shot.sprue_ml),
            topped: grams(shot.topped_g),
            feed: share(shot.feed),
            melt: Melt {
                hot: grams_per_milliliter(or(shot.hot_g_per_ml, shot.cold_g_per_ml)),
                cold: grams_per_milliliter(shot.cold_g_per_ml),
                voids: share(shot.voids),
            },
        }
        .masses()
        .map_err(|error| shot.why(&error))?;
        result.write(ShotResult {
            fill_g: in_grams(masses.fill),
            pieces_g: in_grams(masses.pieces),
            sprue_g: in_grams(masses.sprue),
            missing_g: in_grams(masses.missing),
            piece_g: in_grams(masses.piece(volume)),
            feed: masses.feed.value,
        });
        Ok(())
    })
}

/// Mass of a piece: V (1 − voids) [ρ_hot + feed (ρ_cold − ρ_hot)].
#[unsafe(no_mangle)]
pub extern "C" fn pour_piece_mass(
    cavity_ml: f64,
    hot_g_per_ml: f64,
    cold_g_per_ml: f64,
    voids: f64,
    feed: f64,
    piece_g: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut piece_g = piece_g;
    guard(error, &mut || {
        let piece_g = given("piece_g", piece_g.as_deref_mut())?;
        let numbers = [cavity_ml, hot_g_per_ml, cold_g_per_ml, voids, feed];
        piece_g.write(piece_mass(numbers).map_err(|error| why_no_piece(numbers, &error))?);
        Ok(())
    })
}

#[cold]
fn why_no_piece(numbers: [f64; 5], error: &ParameterErrors) -> Failure {
    let [cavity_ml, hot_g_per_ml, cold_g_per_ml, voids, feed] = numbers;
    let at = if is_relation(error) { At::Parameter } else { At::Number };
    let numbers = [
        ("cavity_ml", cavity_ml, above_0(ML)),
        ("hot_g_per_ml", hot_g_per_ml, Range::Density),
        ("cold_g_per_ml", cold_g_per_ml, Range::Density),
        ("voids", voids, SHARE_BELOW_1),
        ("feed", feed, SHARE),
    ];
    refusal(&numbers, at("hot_g_per_ml"), error)
}

/// Grams of a piece for `[cavity_ml, hot_g_per_ml, cold_g_per_ml, voids, feed]`.
#[inline]
pub(crate) fn piece_mass(numbers: [f64; 5]) -> Result<f64, ParameterErrors> {
    let [cavity_ml, hot_g_per_ml, cold_g_per_ml, voids, feed] = numbers;
    let melt = Melt {
        hot: grams_per_milliliter(hot_g_per_ml),
        cold: grams_per_milliliter(cold_g_per_ml),
        voids: share(voids),
    };
    melt.piece(milliliters(cavity_ml), share(feed)).map(in_grams)
}

fn is_relation(errors: &ParameterErrors) -> bool {
    errors.as_slice().iter().any(|error| matches!(error.problem, Problem::Relation { .. }))
}
