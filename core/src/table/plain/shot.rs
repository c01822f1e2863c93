//! Shots and pieces.

use super::{of, or_default};
use crate::parameter::{Check, Checked, Parameter, PlainUnit};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, Volume};
use crate::shot::{Cavity, Melt, Piece, Shot};
use crate::table::{Refusal, calculation};

/// The mix as it is shot and as it has cooled; hot as cold where nothing else is known.
#[inline(always)]
fn melt(hot_g_per_ml: Option<f64>, cold_g_per_ml: f64, voids: Option<f64>) -> Melt {
    let cold: MassDensity = of(Parameter::ColdDensity, cold_g_per_ml);
    Melt {
        hot: hot_g_per_ml.map_or(cold, |hot| of(Parameter::HotDensity, hot)),
        cold,
        voids: or_default(Parameter::Voids, voids),
    }
}

/// The feed that counts, and its bounds: where it is not known, from nothing to all.
#[inline(always)]
pub(super) fn feed(given: Option<f64>) -> (Ratio, Ratio, Ratio) {
    let feed: Ratio = or_default(Parameter::Feed, given);
    match given {
        Some(_) => (feed, feed, feed),
        None => (feed, Ratio::from(0.0), Ratio::from(1.0)),
    }
}

#[inline(always)]
fn grams(mass: Mass) -> f64 {
    PlainUnit::Gram.from_si(mass.si())
}

calculation! {
    /// Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed.
    ///
    /// While it cools a piece draws the share f of its contraction from the sprue. Source: conservation of mass; f is the
    /// shop's own. A sprue that cannot feed that much: see `shot_fill`.
    PIECE_MASS = "piece_mass": PieceMass -> PieceMassResult
    takes {
        cavity_volume_ml: f64 = CavityVolume,
        cold_density_g_per_ml: f64 = ColdDensity,
        hot_density_g_per_ml: Option<f64> = HotDensity,
        voids: Option<f64> = Voids,
        feed: Option<f64> = Feed,
    }
    gives {
        /// Mass of the piece.
        piece_mass_g: f64 = "piece_mass" Gram,
        /// The same without feed where the feed is not known; else the mass of the piece.
        piece_mass_min_g: f64 = "piece_mass_min" Gram,
        /// The same fed in full where the feed is not known; else the mass of the piece.
        piece_mass_max_g: f64 = "piece_mass_max" Gram,
    }
    has total
    example PieceMass {
        cavity_volume_ml: 10.0,
        cold_density_g_per_ml: 1.0625,
        hot_density_g_per_ml: Some(1.0),
        voids: None,
        feed: None,
    } => PieceMassResult { piece_mass_g: 10.3125, piece_mass_min_g: 10.0, piece_mass_max_g: 10.625 };
}

impl PieceMass {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a mix that is denser hot than cold.
    #[inline]
    pub fn calculate(&self) -> Result<PieceMassResult, Refusal> {
        let (found, is_answer) = self.total();
        if is_answer { Ok(found) } else { Err(self.piece().errors().into()) }
    }

    /// As [`MassOfVolume::total`](super::MassOfVolume::total).
    #[inline(always)]
    #[must_use]
    pub fn total(&self) -> (PieceMassResult, bool) {
        let piece = self.piece();
        let (_, least, most) = feed(self.feed);
        // All but the feed has been checked.
        let fed = |feed| grams(Piece { feed, ..piece }.mass());
        let found = PieceMassResult {
            piece_mass_g: grams(piece.mass()),
            piece_mass_min_g: fed(least),
            piece_mass_max_g: fed(most),
        };
        (found, piece.is_in_range())
    }

    #[inline(always)]
    fn piece(&self) -> Piece {
        Piece {
            melt: melt(self.hot_density_g_per_ml, self.cold_density_g_per_ml, self.voids),
            volume: of(Parameter::CavityVolume, self.cavity_volume_ml),
            feed: feed(self.feed).0,
        }
    }
}

calculation! {
    /// Mass of one shot, and of its pieces.
    ///
    /// Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in `piece_mass`, as far as sprue and topping can feed it; what
    /// is fed leaves the sprue. Where they cannot, the pieces sink in, and `missing_mass` is above 0. Of sprue and topping a
    /// layer fills its share.
    SHOT_FILL = "shot_fill": ShotFill -> ShotFillResult
    takes {
        cavities: u32 = Cavities,
        cavity_volume_ml: f64 = CavityVolume,
        cold_density_g_per_ml: f64 = ColdDensity,
        hot_density_g_per_ml: Option<f64> = HotDensity,
        voids: Option<f64> = Voids,
        feed: Option<f64> = Feed,
        sprue_volume_ml: Option<f64> = SprueVolume,
        topped_mass_g: Option<f64> = ToppedMass,
        layer_share: Option<f64> = LayerShare,
    }
    gives {
        /// Mass of one shot, topping included.
        shot_mass_g: f64 = "shot_mass" Gram,
        /// Mass of all its pieces.
        pieces_mass_g: f64 = "pieces_mass" Gram,
        /// Mass that is left as sprue once the pieces have been fed.
        sprue_mass_g: f64 = "sprue_mass" Gram,
        /// Mass that sprue and topping are short of; 0 where the pieces are fed.
        missing_mass_g: f64 = "missing_mass" Gram,
        /// Mass of one piece, or of the layer in it.
        piece_mass_g: f64 = "piece_mass" Gram,
        /// The same without feed where the feed is not known; else the mass of the piece.
        piece_mass_min_g: f64 = "piece_mass_min" Gram,
        /// The same fed as far as sprue and topping reach where the feed is not known; else the mass of the piece.
        piece_mass_max_g: f64 = "piece_mass_max" Gram,
        /// Share of the contraction that was fed.
        fed: f64 = "fed" Pure,
    }
    request "shot"
    example ShotFill {
        cavities: 4,
        cavity_volume_ml: 10.0,
        cold_density_g_per_ml: 1.0625,
        hot_density_g_per_ml: Some(1.0),
        voids: None,
        feed: Some(0.5),
        sprue_volume_ml: Some(8.0),
        topped_mass_g: None,
        layer_share: None,
    } => ShotFillResult {
        shot_mass_g: 48.0,
        pieces_mass_g: 41.25,
        sprue_mass_g: 6.75,
        missing_mass_g: 0.0,
        piece_mass_g: 10.3125,
        piece_mass_min_g: 10.3125,
        piece_mass_max_g: 10.3125,
        fed: 0.5,
    };
}

impl ShotFill {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a mix that is denser hot than cold.
    pub fn calculate(&self) -> Result<ShotFillResult, Refusal> {
        let volume: Volume = of(Parameter::CavityVolume, self.cavity_volume_ml);
        let (feed, least, most) = feed(self.feed);
        let share: Ratio = or_default(Parameter::LayerShare, self.layer_share);
        let sprue: Volume = or_default(Parameter::SprueVolume, self.sprue_volume_ml);
        let topped: Mass = or_default(Parameter::ToppedMass, self.topped_mass_g);
        let masses = |feed| {
            let shot = Shot {
                cavities: &[Cavity { volume, count: self.cavities }],
                share,
                sprue: sprue * share,
                topped: topped * share,
                feed,
                melt: melt(self.hot_density_g_per_ml, self.cold_density_g_per_ml, self.voids),
            };
            shot.masses()
        };
        // As given: a share of what is out of range may be in it.
        let mut check = Check::new();
        check
            .number(Parameter::SprueVolume, sprue.value)
            .number(Parameter::ToppedMass, topped.value);
        let shot = masses(feed);
        if !check.is_clean() {
            check.merge_numbers(&shot);
        }
        check.finish()?;
        let shot = shot?;
        Ok(ShotFillResult {
            shot_mass_g: grams(shot.fill),
            pieces_mass_g: grams(shot.pieces),
            sprue_mass_g: grams(shot.sprue),
            missing_mass_g: grams(shot.missing),
            piece_mass_g: grams(shot.piece(volume)),
            piece_mass_min_g: grams(masses(least)?.piece(volume)),
            piece_mass_max_g: grams(masses(most)?.piece(volume)),
            fed: shot.feed.value,
        })
    }
}
