//! Translucent pieces against light itself: the two fluxes of Kubelka and Munk are followed through the piece step by step
//! (dI/dx = −(K + S) I + S J and dJ/dx = (K + S) J − S I, x downward; J = R_g I at the backing), by Runge and Kutta, with no
//! formula of the library's.

use pourwright::color::difference::ciede2000;
use pourwright::color::kubelka_munk::Surface;
use pourwright::color::lab::{D65, Lab, SRGB_BANDS, Xyz};
use pourwright::color::match_color::{Colorants, LetDown};
use pourwright::color::pot::ColorPot;
use pourwright::color::translucent::{Backing, BaseFilm, OverBackings};
use pourwright::quantity::{Length, Measurable, Ratio};
use pourwright_tests::chance::Chance;

const STEPS: u32 = 400;
const WHITE: [f64; 3] = [0.92, 0.91, 0.88];
const BLACK: [f64; 3] = [0.03, 0.04, 0.04];

/// What a layer reflects: R(x) upward from the backing, by dR/dx = S − 2 (K + S) R + S R², which follows from both fluxes.
fn reflected(k: f64, s: f64, thickness: f64, backing: f64) -> f64 {
    let rise = |r: f64| s - 2.0 * (k + s) * r + s * r * r;
    let h = thickness / f64::from(STEPS);
    (0..STEPS).fold(backing, |r, _| {
        let one = rise(r);
        let two = rise(r + 0.5 * h * one);
        let three = rise(r + 0.5 * h * two);
        let four = rise(r + h * three);
        r + h / 6.0 * (one + 2.0 * two + 2.0 * three + four)
    })
}

fn lab(read: &[f64; 3]) -> Lab {
    let sum =
        |of: fn(&Xyz) -> f64| read.iter().zip(&SRGB_BANDS).map(|(r, band)| r * of(band)).sum();
    Lab::of(&Xyz { x: sum(|b| b.x), y: sum(|b| b.y), z: sum(|b| b.z) }, &D65).unwrap()
}

fn each(of: impl Fn(usize) -> f64) -> [f64; 3] {
    [of(0), of(1), of(2)]
}

/// Random bases, colorants and doses: what is calculated from a thin test piece of the base and thick ones of the colorants is
/// what the fluxes come to.
#[test]
fn pieces_are_as_the_fluxes_have_them() {
    let mut chance = Chance::seeded(18);
    for _ in 0..40 {
        let mut pick = |low: f64, high: f64| low * (high / low).powf(chance.share());
        // Per mm, and per dose and mm.
        let base = [0, 1, 2].map(|_| (pick(5e-4, 2e-2), pick(0.05, 0.6)));
        let colorant = [0, 1, 2].map(|_| (pick(0.5, 80.0), pick(0.5, 80.0)));
        let (test_piece, thickness) = (pick(0.5, 3.0), pick(0.5, 12.0));
        let dose = pick(1e-3, 2e-2);
        let mixed = |band: usize, dose: f64| {
            let ((k, s), (own_k, own_s)) = (base[band], colorant[band]);
            (k + dose * own_k, s + dose * own_s)
        };
        // A thick piece: the R at which dR/dx is zero.
        let opaque = |dose: f64| {
            each(|band| {
                let (k, s) = mixed(band, dose);
                (k + s - (k * (k + 2.0 * s)).sqrt()) / s
            })
        };
        let thin = |backing: [f64; 3]| {
            each(|band| reflected(base[band].0, base[band].1, test_piece, backing[band]))
        };
        let film = BaseFilm::new(
            Length::from_si(test_piece / 1e3),
            &OverBackings {
                white: &WHITE,
                black: &BLACK,
                over_white: &thin(WHITE),
                over_black: &thin(BLACK),
            },
        )
        .unwrap();
        // K/S of the base by its thin piece, as a shop without a thick one has it.
        let read: Vec<f64> = film
            .k_over_s()
            .iter()
            .map(|q| pourwright::color::kubelka_munk::reflectance(*q).unwrap())
            .collect();
        let mut colorants = Colorants::new(&SRGB_BANDS, Surface::NONE, &read).unwrap();
        let pieces = [0.003, 0.02].map(|dose| (dose, opaque(dose)));
        let let_downs = pieces
            .each_ref()
            .map(|(dose, read)| LetDown { dose: Ratio::from(*dose), reflectance: read });
        colorants.add(&let_downs).unwrap();
        let mut pot = ColorPot::new(&colorants, &[]).unwrap();
        pot.add(0, Ratio::from(dose), Ratio::from(0.0)).unwrap();
        for (backing, bare) in [(Backing::White, WHITE), (Backing::Black, BLACK)] {
            let wanted = lab(&each(|band| {
                let (k, s) = mixed(band, dose);
                reflected(k, s, thickness, bare[band])
            }));
            let found =
                pot.expected_over(&film, Length::from_si(thickness / 1e3), backing).unwrap();
            let off = ciede2000(&found.lab, &wanted);
            assert!(off < 0.01, "{off} at {thickness} mm: {found:?} {wanted:?}");
        }
    }
}
