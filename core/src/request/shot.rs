//! What a shot takes and what its pieces weigh.

use alloc::string::String;
use alloc::vec::Vec;

use super::{Faulty, response};
use crate::book::Mold;
use crate::document::book::MoldEntry;
use crate::document::reader::entry;
use crate::document::resolve;
use crate::document::written::{Percent, Written};
use crate::fault::Faults;
use crate::parameter::parameter;
use crate::plan::day::cavities;
use crate::plan::{Shown, text};
use crate::quantity::{Mass, MassDensity, Ratio, System};
use crate::shot::{Melt, Shot, ShotError};

entry! {
    /// Asks what a shot takes.
    pub struct ShotRequest {
        required {
            #[doc = parameter!(mold)]
            mold: MoldEntry,
            #[doc = parameter!(cold_density)]
            cold_density: Written<MassDensity>,
        }
        optional {
            #[doc = parameter!(hot_density)]
            hot_density: Written<MassDensity>,
            #[doc = parameter!(layer_share)]
            share: Percent,
            #[doc = parameter!(measures)]
            measures: System,
        }
    }
}

response! {
    /// What a shot takes.
    pub struct ShotResponse {
        /// All of it.
        pub fill: Shown<Mass>,
        /// What ends in the pieces.
        pub pieces: Shown<Mass>,
        /// What stays as sprue.
        pub sprue: Shown<Mass>,
        /// What the sprue could not feed: the pieces sink in by so much.
        pub missing: Shown<Mass>,
        /// The pieces, by shape.
        pub shapes: Vec<ShotPieces>,
    }
}

response! {
    /// The pieces of one shape.
    pub struct ShotPieces {
        /// The shape, in a mold with unlike cavities.
        pub shape: Option<String>,
        /// How many a shot makes.
        pub count: u32,
        /// What one weighs.
        pub weighs: Shown<Mass>,
        /// The least: fed nothing from the sprue.
        pub from: Shown<Mass>,
        /// The most: fed all of its contraction.
        pub to: Shown<Mass>,
    }
}

impl ShotRequest {
    /// Fills the mold once. Where the mold states no feed share, half of the contraction is
    /// taken to be fed; the range says what it may be.
    ///
    /// # Errors
    /// A volume, density or share that cannot be.
    pub fn answer(&self) -> Result<ShotResponse, Faults> {
        let mut faulty = Faulty::new(self.measures);
        let mold = resolve::mold("/mold", &self.mold, faulty.system)?;
        let cold = faulty.quantity("cold_density", &self.cold_density);
        let hot = match &self.hot_density {
            Some(hot) => faulty.quantity("hot_density", hot),
            None => cold,
        };
        let response = cold.zip(hot).and_then(|(cold, hot)| {
            let share = self.share.map_or(1.0, Percent::share);
            let melt = Melt { hot, cold, voids: Ratio::from(mold.voids) };
            faulty.keep("", shoot(&mold, melt, share))
        });
        faulty.finish(response)
    }
}

fn shoot(mold: &Mold, melt: Melt, share: f64) -> Result<ShotResponse, ShotError> {
    let cavities = cavities(mold);
    let shot = Shot::of_layer(mold, &cavities, share, melt);
    let masses = shot.masses()?;
    let shapes = mold.cavities.iter().map(|shape| {
        let range = melt.piece_range(shape.volume * share)?;
        Ok(ShotPieces {
            shape: shape.shape.clone(),
            count: shape.count,
            weighs: text::mass(masses.piece(shape.volume)),
            from: text::mass(*range.start()),
            to: text::mass(*range.end()),
        })
    });
    Ok(ShotResponse {
        fill: text::mass(masses.fill),
        pieces: text::mass(masses.pieces),
        sprue: text::mass(masses.sprue),
        missing: text::mass(masses.missing),
        shapes: shapes.collect::<Result<_, ShotError>>()?,
    })
}
