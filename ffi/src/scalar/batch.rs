//! How much to mix for so many pieces.

use std::mem::MaybeUninit;

use pourwright::batch::{BatchError, Injector, Rejects, Run, Wanted, shots};
use pourwright::quantity::Ratio;

use crate::error::{Error, Failure};
use crate::guard::guard;
use crate::memory::given;
use crate::number::{grams, grams_per_milliliter, in_grams, milliliters, or, share};
use crate::range::{
    At, G, ML, Number, Range, SHARE, SHARE_BELOW_1, above_0, finite, from_0, refusal,
};

/// Pieces wanted, and the shop that makes them. Set all to 0 first.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Batch {
    /// How many good pieces are wanted, 1 to 1 000 000.
    pub pieces: u32,
    /// How many cavities a shot fills, 1 or more.
    pub cavities: u32,
    /// How often the injector is cleaned or goes cold, the last time included; once where 0.
    pub cleanings: u32,
    /// Not used; 0.
    pub reserved: u32,
    /// Share of pieces that are not fit to sell, 0 to below 1.
    pub rejects: f64,
    /// How sure the number of good pieces shall be, above 0 to below 1; 0.9 where 0.
    pub confidence: f64,
    /// What one shot takes, sprue included; above 0.
    pub shot_g: f64,
    /// What of it stays as sprue; 0 or above.
    pub sprue_g: f64,
    /// Share of the sprues that is melted again, 0 to 1.
    pub returned: f64,
    /// Density of what the injector draws: hot, voids counted; above 0.
    pub shot_g_per_ml: f64,
    /// What the injector takes up at most; above 0.
    pub injector_holds_ml: f64,
    /// What stays in it each time it is emptied; 0 or above.
    pub injector_keeps_ml: f64,
    /// What stays on the wall of the cup; 0 or above.
    pub film_g: f64,
    /// What cannot be drawn from the cup, its film included; 0 or above.
    pub heel_g: f64,
}

/// What a batch takes.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct BatchResult {
    /// The mass to mix.
    pub total_g: f64,
    /// What all shots take.
    pub drawn_g: f64,
    /// What of the sprues goes back and is shot again.
    pub returned_g: f64,
    /// All pieces together.
    pub pieces_g: f64,
    /// Sprues that are left over.
    pub sprues_g: f64,
    /// What the injector keeps over the run.
    pub kept_g: f64,
    /// What stays in the cup: the heel, with the film in it.
    pub in_cup_g: f64,
    /// Shots.
    pub shots: u32,
    /// Whole shots that one injector load gives.
    pub shots_per_load: u32,
    /// Injector loads.
    pub loads: u32,
    /// Shots from the last load.
    pub shots_in_last: u32,
}

impl Batch {
    fn numbers(&self) -> [Number<'static>; 10] {
        [
            ("batch/rejects", self.rejects, SHARE_BELOW_1),
            ("batch/confidence", self.confidence, CONFIDENCE),
            ("batch/shot_g", self.shot_g, above_0(G)),
            ("batch/sprue_g", self.sprue_g, from_0(G)),
            ("batch/returned", self.returned, SHARE),
            ("batch/shot_g_per_ml", self.shot_g_per_ml, Range::Density),
            ("batch/injector_holds_ml", self.injector_holds_ml, above_0(ML)),
            ("batch/injector_keeps_ml", self.injector_keeps_ml, from_0(ML)),
            ("batch/film_g", self.film_g, from_0(G)),
            ("batch/heel_g", self.heel_g, from_0(G)),
        ]
    }

    fn why(&self, error: &BatchError) -> Failure {
        let at = match error {
            BatchError::NoPieces | BatchError::TooManyPieces { .. } => {
                At::Parameter("batch/pieces")
            }
            BatchError::NoCavity { .. } => At::Parameter("batch/cavities"),
            BatchError::TooManyCast { .. } => At::Parameter("batch/rejects"),
            BatchError::NothingFits { .. } => At::Parameter("batch/shot_g"),
            _ => At::Number("batch"),
        };
        let (shot_g, holds_ml) = (self.shot_g, self.injector_holds_ml);
        let together = [
            ("batch/sprue_g", self.sprue_g, Range::AtMost("shot_g", shot_g)),
            (
                "batch/injector_keeps_ml",
                self.injector_keeps_ml,
                Range::LessThan("injector_holds_ml", holds_ml),
            ),
        ];
        refusal(&[&self.numbers()[..], &together].concat(), at, error)
    }
}

/// How sure a number of pieces can be; the core goes no nearer to 1.
const CONFIDENCE: Range = Range::Within(0.0, 0.999_999_999);

fn count_shots(pieces: u32, cavities: u32, rate: f64, confidence: f64) -> Result<u32, BatchError> {
    let confidence = Ratio::from(or(confidence, 0.9));
    let rejects = (rate != 0.0).then(|| Rejects { rate: share(rate), confidence });
    shots(&[Wanted { pieces, cavities }], rejects)
}

/// The least number of shots that gives so many good pieces.
///
/// `rejects` is the share of pieces that are not fit to sell, and `confidence` how sure the number of good pieces
/// shall be; 0.9 where 0.
#[unsafe(no_mangle)]
pub extern "C" fn pour_shots(
    pieces: u32,
    cavities: u32,
    rejects: f64,
    confidence: f64,
    shots: Option<&mut MaybeUninit<u32>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut shots = shots;
    guard(error, &mut || {
        let shots = given("shots", shots.as_deref_mut())?;
        let numbers = [("rejects", rejects, SHARE_BELOW_1), ("confidence", confidence, CONFIDENCE)];
        finite(&numbers)?;
        let found = count_shots(pieces, cavities, rejects, confidence).map_err(|error| {
            let at = match error {
                BatchError::NoPieces | BatchError::TooManyPieces { .. } => At::Parameter("pieces"),
                BatchError::NoCavity { .. } => At::Parameter("cavities"),
                BatchError::TooManyCast { .. } => At::Parameter("rejects"),
                _ => At::Number(""),
            };
            refusal(&numbers, at, &error)
        })?;
        shots.write(found);
        Ok(())
    })
}

/// How much to mix for so many pieces: shots, injector loads, losses.
#[unsafe(no_mangle)]
pub extern "C" fn pour_batch_need(
    batch: Option<&Batch>,
    result: Option<&mut MaybeUninit<BatchResult>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut result = result;
    guard(error, &mut || {
        let batch = given("batch", batch)?;
        let result = given("result", result.as_deref_mut())?;
        finite(&batch.numbers())?;
        result.write(need(batch).map_err(|error| batch.why(&error))?);
        Ok(())
    })
}

fn need(batch: &Batch) -> Result<BatchResult, BatchError> {
    let shots = count_shots(batch.pieces, batch.cavities, batch.rejects, batch.confidence)?;
    let fill = grams(batch.shot_g);
    let density = grams_per_milliliter(batch.shot_g_per_ml);
    let injector = Injector {
        holds: milliliters(batch.injector_holds_ml),
        keeps: milliliters(batch.injector_keeps_ml),
    };
    let loads = injector.loads(shots, fill, density)?;
    let need = Run {
        shots,
        loads,
        fill,
        sprue: grams(batch.sprue_g),
        returned: share(batch.returned),
        injector_keeps: injector.kept(density)?,
        cleanings: batch.cleanings.max(1),
        film: grams(batch.film_g),
        heel: grams(batch.heel_g),
    }
    .need()?;
    Ok(BatchResult {
        total_g: in_grams(need.total),
        drawn_g: in_grams(need.drawn),
        returned_g: in_grams(need.returned),
        pieces_g: in_grams(need.pieces),
        sprues_g: in_grams(need.sprues_left),
        kept_g: in_grams(need.kept),
        in_cup_g: in_grams(need.in_cup),
        shots,
        shots_per_load: loads.shots_per_load,
        loads: loads.loads,
        shots_in_last: loads.shots_in_last,
    })
}
