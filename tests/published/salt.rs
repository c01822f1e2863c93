use pourwright::density::{ScoopedDensity, TrueDensity};
use pourwright::quantity::{
    Mass, MassDensity, Ratio, TemperatureCoefficient, ThermodynamicTemperature, Volume,
};
use pourwright::salt::{Hook, Salt, SaltForm, SaltLoading, Unsalted};
use pourwright::uom::si::mass::gram;
use pourwright::uom::si::mass_density::gram_per_cubic_centimeter;
use pourwright::uom::si::thermodynamic_temperature::degree_celsius;
use pourwright::uom::si::volume::milliliter;

use crate::rows;

/// US cup and teaspoon in mL: 231 in³/16 and a 48th of it (NIST HB 44).
const CUP_ML: f64 = 236.588_236_5;
const TSP_ML: f64 = CUP_ML / 48.0;

fn per_ml(x: f64) -> MassDensity {
    MassDensity::new::<gram_per_cubic_centimeter>(x)
}

fn scooped(x: f64) -> ScoopedDensity {
    ScoopedDensity::new(per_ml(x)).unwrap()
}

fn solid(x: f64) -> TrueDensity {
    TrueDensity::new(per_ml(x)).unwrap()
}

/// A mix of nothing but base, with no voids and no softener to the salt.
fn base(mass_g: f64, volume_ml: f64, salt_g_per_ml: f64) -> Unsalted {
    Unsalted {
        base_mass: Mass::new::<gram>(mass_g),
        base_volume: Volume::new::<milliliter>(volume_ml),
        mass: Mass::new::<gram>(mass_g),
        volume: Volume::new::<milliliter>(volume_ml),
        hot_volume: Volume::new::<milliliter>(volume_ml),
        shot_temperature: ThermodynamicTemperature::new::<degree_celsius>(20.0),
        voids: Ratio::from(0.0),
        salt: Salt {
            true_density: solid(salt_g_per_ml),
            scooped_density: Some(scooped(1.2)),
            expansion: TemperatureCoefficient::default(),
        },
        softener: None,
        most_solids: Ratio::from(0.5),
        cavity: None,
        hook: Hook::default(),
    }
}

#[test]
fn salt() {
    for row in rows::read("salt") {
        let got = match row.id.as_str() {
            "i-salt-1" | "i-salt-2" => {
                let mix = base(row.number("M0_g"), row.number("V0_mL"), row.number("rho_salt"));
                let target = SaltLoading::FinishedDensity(per_ml(row.number("target")));
                mix.salt_mass(target).unwrap().get::<gram>()
            }
            "j-displaced-0.5-1.25" => {
                let cups = Volume::new::<milliliter>(row.number("cups_us") * CUP_ML);
                let salt = scooped(row.number("bulk")).mass_of(cups);
                solid(row.number("true")).volume_of(salt).get::<milliliter>()
            }
            "j-usda-tsp" => {
                // The density at which 6 g fill a teaspoon.
                let tsp = Volume::new::<milliliter>(TSP_ML);
                let density = Mass::new::<gram>(row.number("mass_g")) / tsp;
                let salt = ScoopedDensity::new(density).unwrap();
                assert!((salt.mass_of(tsp).get::<gram>() - 6.0).abs() < 1e-12);
                salt.get().get::<gram_per_cubic_centimeter>()
            }
            "j-salt-tsp" => {
                let tsp = Volume::new::<milliliter>(TSP_ML);
                scooped(row.number("bulk")).mass_of(tsp).get::<gram>()
            }
            "j-salt-solid-loose" => {
                let cup = Volume::new::<milliliter>(CUP_ML);
                let salt = scooped(row.number("bulk")).mass_of(cup);
                (solid(row.number("true")).volume_of(salt) / cup).value
            }
            "k-salt-quarter-cup" => {
                let mix = base(1.03 * CUP_ML, CUP_ML, 2.165);
                let quarter = SaltLoading::Scooped(Ratio::from(0.25));
                match mix.convert(quarter, SaltForm::OfFinished).unwrap() {
                    SaltLoading::OfFinished(share) => share.value,
                    other => panic!("another form came back: {other:?}"),
                }
            }
            "k-salt-density" => {
                let density = row.number("base_density");
                let mix = base(density * CUP_ML, CUP_ML, row.number("salt_true"));
                let share = SaltLoading::OfFinished(Ratio::from(row.number("salt_share")));
                match mix.convert(share, SaltForm::FinishedDensity).unwrap() {
                    SaltLoading::FinishedDensity(x) => x.get::<gram_per_cubic_centimeter>(),
                    other => panic!("another form came back: {other:?}"),
                }
            }
            other => panic!("{other} has no check"),
        };
        row.check(got);
    }
}
