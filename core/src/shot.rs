//! Mass of a shot and of its pieces.
//!
//! With cavities of volume V_c (n of them; unlike shapes are summed), sprue V_s, density ρ_hot at shot
//! temperature and ρ₂₀ at 20 °C, and air voids φ:
//!
//! - fill: m_fill = (ΣnV_c + V_s) ρ_hot (1 − φ) + m_top, where m_top is what topping off and holding add;
//! - piece: m_piece = V_c (1 − φ) [ρ_hot + f (ρ₂₀ − ρ_hot)]: while it cools a piece draws the share f of its
//!   contraction from the sprue;
//! - feed: Σn (m_piece − V_c ρ_hot (1 − φ)) ≤ V_s ρ_hot (1 − φ) + m_top. Where the sprue and the topping
//!   cannot feed that much, they feed what they have, the pieces sink in, and the result says by how much.
//!
//! The feed comes out of the sprue, so fill = pieces + sprue left. The fields of [`ShotMass`] hold to it within
//! (k + 3) u Σm for k shapes of cavity, with u = 2⁻⁵³ and Σm the masses added.
//!
//! A laminated piece takes one such shot for each layer, with the layer's share of the cavity; the sprue
//! volume is then that which this layer fills.
//!
//! Source: conservation of mass; f is the shop's own (see [`calibrate`](crate::calibrate)).

use core::ops::RangeInclusive;

use crate::parameter::{Check, Checked, Checking, Parameter, ParameterErrors, Relation};
use crate::quantity::{Mass, MassDensity, Ratio, Volume};
use crate::show::legible::legible;

/// Cavities of one shape in a mold.
#[derive(Clone, Copy, PartialEq)]
pub struct Cavity {
    /// Volume of one, above zero.
    pub volume: Volume,
    /// How many the mold has, at least one.
    pub count: u32,
}

/// A mix as it is shot and as it has cooled.
#[derive(Clone, Copy, PartialEq)]
pub struct Melt {
    /// Density at shot temperature, without voids.
    pub hot: MassDensity,
    /// Density at 20 °C once fused, without voids; not below `hot`.
    pub cold: MassDensity,
    /// Share of the volume that is air, 0 to below 1.
    pub voids: Ratio,
}

/// One shot: what is filled, and how it is fed.
#[derive(Clone, Copy, PartialEq)]
pub struct Shot<'a> {
    /// The mold's cavities, by shape.
    pub cavities: &'a [Cavity],
    /// The layer's share of each cavity, above 0 to 1; 1 for a piece of one color.
    pub share: Ratio,
    /// Volume of sprue that this shot fills.
    pub sprue: Volume,
    /// Mass that topping off and holding add.
    pub topped: Mass,
    /// Share f of its contraction that a piece draws from the sprue, 0 to 1.
    pub feed: Ratio,
    /// The mix.
    pub melt: Melt,
}

/// Masses of one shot.
#[derive(Clone, Copy, PartialEq)]
pub struct ShotMass {
    /// Mass that the mold takes, topping included.
    pub fill: Mass,
    /// All pieces of the shot together.
    pub pieces: Mass,
    /// Mass of the sprue once the pieces have been fed.
    pub sprue: Mass,
    /// The share of the contraction that was fed: the shot's `feed`, or less where the pieces sink in.
    pub feed: Ratio,
    /// Mass that the sprue and the topping are short of; zero if the pieces are fed.
    pub missing: Mass,
    /// Mass in a cavity, or the layer's part of it, per volume of the whole cavity.
    pub per_cavity_volume: MassDensity,
}

legible! {
    Cavity { volume, count }
    Melt { hot, cold, voids }
    Shot<'_> { cavities, share, sprue, topped, feed, melt }
    ShotMass { fill, pieces, sprue, feed, missing, per_cavity_volume }
}

impl Melt {
    /// A mix with these densities without voids, `hot` as it is shot and `cold` at 20 °C. Default: no voids.
    #[must_use]
    pub fn new(hot: MassDensity, cold: MassDensity) -> Self {
        Self { hot, cold, voids: Ratio::from(Parameter::Voids.default_si()) }
    }

    /// The same, with this share of air in its volume.
    #[must_use]
    pub fn with_voids(self, voids: Ratio) -> Self {
        Self { voids, ..self }
    }

    /// Checks densities and voids, and that the mix shrinks as it cools.
    #[inline]
    pub(crate) fn check(&self, check: &mut impl Checking) {
        // Where hot is as cold, it is one number, said once.
        if self.hot.value.to_bits() != self.cold.value.to_bits() {
            check.number(Parameter::HotDensity, self.hot.value);
        }
        check
            .number(Parameter::ColdDensity, self.cold.value)
            .number(Parameter::Voids, self.voids.value)
            .relation(
                (Parameter::HotDensity, self.hot.value),
                Relation::AtMost,
                (Parameter::ColdDensity, self.cold.value),
            );
    }

    /// Density at shot temperature with the voids: ρ_hot (1 − φ).
    #[must_use]
    pub fn shot_density(&self) -> MassDensity {
        self.hot * (1.0 - self.voids.value)
    }

    /// Mass in a cavity per volume of it: (1 − φ) [ρ_hot + f (ρ₂₀ − ρ_hot)].
    #[inline]
    pub(crate) fn filled_density(&self, feed: Ratio) -> MassDensity {
        (self.hot + feed * (self.cold - self.hot)) * (1.0 - self.voids.value)
    }

    /// Mass of a piece from a cavity of `volume`, fed `feed` (0 to 1) of its contraction.
    ///
    /// # Errors
    /// A number out of its range.
    #[inline]
    pub fn piece(&self, volume: Volume, feed: Ratio) -> Result<Mass, ParameterErrors> {
        let piece = Piece { melt: *self, volume, feed };
        piece.checked()?;
        Ok(piece.mass())
    }

    /// The least and greatest mass of a piece from a cavity of `volume`: not fed at all, and fed in full.
    ///
    /// # Errors
    /// A number out of its range.
    pub fn piece_range(&self, volume: Volume) -> Result<RangeInclusive<Mass>, ParameterErrors> {
        Ok(self.piece(volume, Ratio::from(0.0))?..=self.piece(volume, Ratio::from(1.0))?)
    }
}

/// A piece from a cavity of `volume`, fed `feed` of its contraction; not checked.
pub(crate) struct Piece {
    pub(crate) melt: Melt,
    pub(crate) volume: Volume,
    pub(crate) feed: Ratio,
}

impl Piece {
    #[inline(always)]
    pub(crate) fn mass(&self) -> Mass {
        self.volume * self.melt.filled_density(self.feed)
    }
}

impl Checked for Piece {
    #[inline(always)]
    fn check(&self, check: &mut impl Checking) {
        check.number(Parameter::CavityVolume, self.volume.value);
        self.melt.check(check);
        check.number(Parameter::Feed, self.feed.value);
    }
}

/// A shot is stated by its cavities and the mix, then by what else it has:
///
/// ```
/// use pourwright::quantity::{Amount, MassDensity, System::UsCustomary, Volume};
/// use pourwright::shot::{Cavity, Melt, Shot};
///
/// let volume = |text| -> Result<Volume, _> { Amount::parse(text)?.to(UsCustomary) };
/// let density = |text| -> Result<MassDensity, _> { Amount::parse(text)?.to(UsCustomary) };
/// let melt = Melt::new(density("0.94 g/mL")?, density("1.05 g/mL")?);
/// let cavities = [Cavity { volume: volume("9.5 mL")?, count: 4 }];
/// let shot = Shot::new(&cavities, melt).with_sprue(volume("6 mL")?).masses()?;
/// assert_eq!(format!("{:.1} g", shot.fill.value * 1e3), "41.4 g");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
impl<'a> Shot<'a> {
    /// A shot of `melt` into `cavities`. Defaults: a piece of one color; no sprue; nothing topped; a feed of 50 % (the
    /// middle of what is possible; weigh pieces for your own).
    #[must_use]
    pub fn new(cavities: &'a [Cavity], melt: Melt) -> Self {
        Self {
            cavities,
            share: Ratio::from(1.0),
            sprue: Volume::default(),
            topped: Mass::default(),
            feed: Ratio::from(Parameter::Feed.default_si()),
            melt,
        }
    }

    /// The same, a layer with this share of each cavity.
    #[must_use]
    pub fn with_share(self, share: Ratio) -> Self {
        Self { share, ..self }
    }

    /// The same, with this volume of sprue.
    #[must_use]
    pub fn with_sprue(self, sprue: Volume) -> Self {
        Self { sprue, ..self }
    }

    /// The same, with this mass added by topping off and holding.
    #[must_use]
    pub fn with_topped(self, topped: Mass) -> Self {
        Self { topped, ..self }
    }

    /// The same, each piece fed this share of its contraction.
    #[must_use]
    pub fn with_feed(self, feed: Ratio) -> Self {
        Self { feed, ..self }
    }
}

impl Shot<'_> {
    /// Masses of the shot and its pieces (equations: [module](self)).
    ///
    /// # Errors
    /// A number out of its range, or no cavity. Pieces that sink in are no error: see [`ShotMass::missing`].
    pub fn masses(&self) -> Result<ShotMass, ParameterErrors> {
        self.check()?;
        let cavities = self.cavity_volume();
        let density = self.melt.shot_density();
        let in_cavities = cavities * density;
        let in_sprue = self.sprue * density;
        let available = in_sprue + self.topped;
        let wanted = cavities * (self.melt.filled_density(self.feed) - density);
        let short = wanted > available;
        let (fed, missing) =
            if short { (available, wanted - available) } else { (wanted, Mass::default()) };
        let feed = if short { self.feed * (available / wanted) } else { self.feed };
        Ok(ShotMass {
            fill: in_cavities + in_sprue + self.topped,
            pieces: in_cavities + fed,
            sprue: available - fed,
            feed,
            missing,
            per_cavity_volume: self.melt.filled_density(feed) * self.share,
        })
    }

    /// Volume of all cavities, or this layer's part of it.
    fn cavity_volume(&self) -> Volume {
        let all = self
            .cavities
            .iter()
            .fold(Volume::default(), |sum, cavity| sum + cavity.volume * f64::from(cavity.count));
        all * self.share
    }

    fn check(&self) -> Result<(), ParameterErrors> {
        let mut check = Check::new();
        let cavities = self.cavities.iter().fold(0.0, |sum, cavity| sum + f64::from(cavity.count));
        check.number(Parameter::Cavities, cavities);
        for cavity in self.cavities {
            check.number(Parameter::CavityVolume, cavity.volume.value);
        }
        check
            .number(Parameter::LayerShare, self.share.value)
            .number(Parameter::SprueVolume, self.sprue.value)
            .number(Parameter::ToppedMass, self.topped.value)
            .number(Parameter::Feed, self.feed.value);
        self.melt.check(&mut check);
        check.finish()
    }
}

impl ShotMass {
    /// Mass of one piece, or of the layer in it, from a cavity of `volume`.
    #[must_use]
    pub fn piece(&self, volume: Volume) -> Mass {
        volume * self.per_cavity_volume
    }

    /// Whether the pieces sink in because the sprue and the topping cannot feed them.
    #[must_use]
    pub fn sinks_in(&self) -> bool {
        self.missing > Mass::default()
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;
    use uom::si::volume::milliliter;

    use super::*;
    use crate::fault::Diagnose;

    fn ml(x: f64) -> Volume {
        Volume::new::<milliliter>(x)
    }

    fn g(x: f64) -> Mass {
        Mass::new::<gram>(x)
    }

    fn melt(hot: f64, cold: f64, voids: f64) -> Melt {
        let density = MassDensity::new::<gram_per_cubic_centimeter>;
        Melt { hot: density(hot), cold: density(cold), voids: Ratio::from(voids) }
    }

    fn shot(cavities: &[Cavity], sprue: f64, topped: f64, feed: f64) -> Shot<'_> {
        Shot {
            cavities,
            share: Ratio::from(1.0),
            sprue: ml(sprue),
            topped: g(topped),
            feed: Ratio::from(feed),
            melt: melt(0.9, 1.0, 0.0),
        }
    }

    #[test]
    fn a_plain_shot_is_of_one_color() {
        let four = [Cavity { volume: ml(10.0), count: 4 }];
        let plain = Shot::new(&four, melt(0.9, 1.0, 0.0));
        assert_eq!(plain.masses(), shot(&four, 0.0, 0.0, 0.5).masses());
    }

    #[test]
    fn a_fed_shot_by_hand() {
        // 4 cavities of 10 mL and 6 mL of sprue at 0.9 g/mL: 41.4 g. Half the contraction of 1 g a piece is
        // fed.
        let four = [Cavity { volume: ml(10.0), count: 4 }];
        let got = shot(&four, 6.0, 0.0, 0.5).masses().unwrap();
        assert!((got.fill.get::<gram>() - 41.4).abs() < 1e-12);
        assert!((got.piece(ml(10.0)).get::<gram>() - 9.5).abs() < 1e-12);
        assert!((got.pieces.get::<gram>() - 38.0).abs() < 1e-12);
        assert!((got.sprue.get::<gram>() - 3.4).abs() < 1e-12);
        assert!(!got.sinks_in());
    }

    #[test]
    fn a_small_sprue_lets_the_pieces_sink_in() {
        // 1 mL of sprue holds 0.9 g; 2 g are wanted: 1.1 g are missing.
        let four = [Cavity { volume: ml(10.0), count: 4 }];
        let got = shot(&four, 1.0, 0.0, 0.5).masses().unwrap();
        assert!(got.sinks_in());
        assert!((got.missing.get::<gram>() - 1.1).abs() < 1e-12);
        assert!((got.piece(ml(10.0)).get::<gram>() - 9.225).abs() < 1e-12);
        assert_eq!(got.sprue, g(0.0));
        // Topping off with the missing mass mends it.
        assert!(!shot(&four, 1.0, 1.100_000_000_1, 0.5).masses().unwrap().sinks_in());
    }

    #[test]
    fn range_runs_from_not_fed_to_fed_in_full() {
        let range = melt(0.9, 1.0, 0.02).piece_range(ml(10.0)).unwrap();
        assert!((range.start().get::<gram>() - 8.82).abs() < 1e-12);
        assert!((range.end().get::<gram>() - 9.8).abs() < 1e-12);
    }

    #[rstest]
    #[case(&[], 1.0, 0.0, 0.5, "out-of-range")]
    #[case(&[Cavity { volume: ml(5.0), count: 0 }], 1.0, 0.0, 0.5, "out-of-range")]
    #[case(&[Cavity { volume: ml(0.0), count: 1 }], 1.0, 0.0, 0.5, "out-of-range")]
    #[case(&[Cavity { volume: ml(5.0), count: 1 }], -1.0, 0.0, 0.5, "out-of-range")]
    #[case(&[Cavity { volume: ml(5.0), count: 1 }], 1.0, f64::NAN, 0.5, "not-finite")]
    #[case(&[Cavity { volume: ml(5.0), count: 1 }], 1.0, 0.0, 1.5, "out-of-range")]
    fn refuses(
        #[case] cavities: &[Cavity],
        #[case] sprue: f64,
        #[case] topped: f64,
        #[case] feed: f64,
        #[case] code: &str,
    ) {
        assert_eq!(shot(cavities, sprue, topped, feed).masses().unwrap_err().code(), code);
    }

    #[rstest]
    #[case(melt(0.0, 1.0, 0.0), "out-of-range")]
    #[case(melt(1.0, f64::NAN, 0.0), "not-finite")]
    #[case(melt(0.9, 1.0, 1.0), "out-of-range")]
    #[case(melt(1.0, 0.9, 0.0), "out-of-range")]
    fn refuses_a_mix(#[case] melt: Melt, #[case] code: &str) {
        assert_eq!(melt.piece(ml(1.0), Ratio::from(0.5)).unwrap_err().code(), code);
    }

    proptest! {
        #[test]
        fn mass_is_conserved(
            shapes in prop::collection::vec((0.1..200.0, 1_u32..20), 1..6),
            (share, sprue, topped) in (0.05..=1.0, 0.0..50.0, 0.0..20.0),
            (feed, hot, shrink, voids) in (0.0..=1.0, 0.7..1.4, 0.0..0.2, 0.0..0.3),
        ) {
            let cavities: std::vec::Vec<_> =
                shapes.iter().map(|&(v, count)| Cavity { volume: ml(v), count }).collect();
            let shot = Shot {
                cavities: &cavities,
                share: Ratio::from(share),
                sprue: ml(sprue),
                topped: g(topped),
                feed: Ratio::from(feed),
                melt: melt(hot, hot + shrink, voids),
            };
            let got = shot.masses().unwrap();
            let u = f64::EPSILON / 2.0;
            let terms = cavities.len() as f64 + 3.0;
            let sum = got.fill + got.pieces + got.sprue;
            prop_assert!((got.fill - (got.pieces + got.sprue)).abs() <= terms * u * sum);
            // Piece by piece it is the same mass, and a layer takes its share of it.
            let pieces: Mass =
                cavities.iter().map(|c| got.piece(c.volume) * f64::from(c.count)).sum();
            prop_assert!((pieces - got.pieces).abs() <= 1e-13 * got.pieces);
            prop_assert!(got.sprue >= g(0.0) && got.missing >= g(0.0));
            prop_assert!(got.feed <= shot.feed);
        }
    }
}
