use pourwright::density::{ScoopedDensity, TrueDensity};
use pourwright::quantity::{TemperatureCoefficient, ThermodynamicTemperature};
use pourwright::salt::{Hook, PieceCavity, Salt, SaltForm, SaltLoading, SaltSoftener, Unsalted};
use pourwright::uom::si::temperature_coefficient::per_kelvin;
use pourwright::uom::si::thermodynamic_temperature::degree_celsius;
use pourwright_tests::reference::mix::{Part, mass_g, volume_ml};
use pourwright_tests::reference::salt as plain;
use proptest::prelude::*;

use crate::units::{g, in_g, ml, per_ml, share};

const CAVITY_ML: f64 = 9.5;
const HOOK_G: f64 = 1.5;
const HOOK_ML: f64 = 0.2;

fn part(mass_g: f64, density_g_per_ml: f64, expansion_per_k: f64) -> Part {
    Part { mass_g, density_g_per_ml, expansion_per_k }
}

fn bodies() -> impl Strategy<Value = plain::Body> {
    (0.95..1.15, 0.0..40.0, 0.0..0.15, 0.0..0.3, 150.0..180.0).prop_map(
        |(density, softener, voids, per_salt, shot_celsius)| plain::Body {
            parts: vec![part(240.0, density, 7e-4), part(softener, 0.98, 7.5e-4)],
            voids,
            salt: part(0.0, 2.165, 1.2e-4),
            softener: part(per_salt, 0.98, 7.5e-4),
            shot_celsius,
        },
    )
}

fn unsalted(body: &plain::Body, feed: f64) -> Unsalted {
    let expansion = TemperatureCoefficient::new::<per_kelvin>;
    Unsalted {
        base_mass: g(body.parts[0].mass_g),
        base_volume: ml(body.parts[0].mass_g / body.parts[0].density_g_per_ml),
        mass: g(mass_g(&body.parts)),
        volume: ml(volume_ml(&body.parts, 20.0)),
        hot_volume: ml(volume_ml(&body.parts, body.shot_celsius)),
        shot_temperature: ThermodynamicTemperature::new::<degree_celsius>(body.shot_celsius),
        voids: share(body.voids),
        salt: Salt {
            true_density: TrueDensity::new(per_ml(2.165)).unwrap(),
            scooped_density: Some(ScoopedDensity::new(per_ml(1.22)).unwrap()),
            expansion: expansion(body.salt.expansion_per_k),
        },
        softener: Some(SaltSoftener {
            per_salt: share(body.softener.mass_g),
            density: TrueDensity::new(per_ml(body.softener.density_g_per_ml)).unwrap(),
            expansion: expansion(body.softener.expansion_per_k),
        }),
        most_solids: share(0.35),
        cavity: Some(PieceCavity { volume: ml(CAVITY_ML), feed: share(feed) }),
        hook: Hook { mass: g(HOOK_G), volume: ml(HOOK_ML) },
    }
}

proptest! {
    #[test]
    fn salt_for_a_density_agrees(body in bodies(), feed in 0.0..=1.0, salt in 0.0..150.0) {
        let mix = unsalted(&body, feed);
        let finished = |m| plain::finished_g_per_ml(&body, m);
        let piece = |m| plain::salted_piece_g(&body, m, CAVITY_ML, feed);
        let sink = |m| plain::sink_g_per_ml(&body, m, CAVITY_ML, feed, HOOK_G, HOOK_ML);
        for (loading, tried) in [
            (SaltLoading::FinishedDensity(per_ml(finished(salt))), plain::salt_g(finished, finished(salt), 500.0)),
            (SaltLoading::PieceMass(g(piece(salt))), plain::salt_g(piece, piece(salt), 500.0)),
            (SaltLoading::SinkDensity(per_ml(sink(salt))), plain::salt_g(sink, sink(salt), 500.0)),
        ] {
            let got = in_g(mix.salt_mass(loading).unwrap());
            // A form that hardly moves with the salt tells masses apart less well than to the last bit.
            prop_assert!((got - tried).abs() < 1e-9, "{loading:?}: {got} and {tried}");
        }
    }

    #[test]
    fn stated_forms_agree(body in bodies(), salt in 0.0..150.0) {
        let mix = unsalted(&body, 0.5);
        let ratio = g(salt) / mix.base_mass;
        let total = mass_g(&plain::salted(&body, salt));
        let base = &body.parts[0];
        let per_base_ml = salt / (base.mass_g / base.density_g_per_ml);
        for (form, expected) in [
            (SaltForm::Scooped, SaltLoading::Scooped(share(per_base_ml / 1.22))),
            (SaltForm::PerVolume, SaltLoading::PerVolume(per_ml(per_base_ml))),
            (SaltForm::OfBase, SaltLoading::OfBase(share(salt / base.mass_g))),
            (SaltForm::OfFinished, SaltLoading::OfFinished(share(salt / total))),
        ] {
            let got = mix.loading(ratio, form).unwrap();
            let apart = match (got, expected) {
                (SaltLoading::Scooped(a), SaltLoading::Scooped(b))
                | (SaltLoading::OfBase(a), SaltLoading::OfBase(b))
                | (SaltLoading::OfFinished(a), SaltLoading::OfFinished(b)) => (a - b).value.abs(),
                (SaltLoading::PerVolume(a), SaltLoading::PerVolume(b)) => ((a - b) / per_ml(1.0)).value.abs(),
                other => panic!("another form came back: {other:?}"),
            };
            prop_assert!(apart < 1e-13, "{form}: {apart}");
        }
    }
}
