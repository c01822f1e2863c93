//! Densities that a book leaves out, borrowed so that it can be begun without weighing: a row of the starter table where
//! one is published for that kind of material, else a figure of common practice. Each is less sure than a figure of the
//! shop's own, and the plan says so ([`Plan::borrowed`](crate::plan::Plan::borrowed)).

use alloc::format;
use alloc::string::ToString;

use uom::si::mass_density::gram_per_cubic_centimeter;

use super::Resolver;
use crate::material::{Kind, Material, Property};
use crate::quantity::{MassDensity, Measured};

/// Where a borrowed figure is from.
#[derive(Clone, Copy)]
enum From {
    /// That row of the starter table.
    Starter(&'static str),
    /// So many g/mL: common practice, no source.
    Practice(f64),
}

/// Value that is borrowed for a kind, and its standard uncertainty in g/mL: how far materials of the kind differ, estimated
/// from the rows of the starter table and their notes where it has several (common practice, no source).
const fn lent(kind: Kind, property: Property) -> Option<(From, f64)> {
    Some(match (kind, property) {
        (Kind::Plastisol, Property::Density) => (From::Practice(1.03), 0.03),
        (Kind::Softener, Property::Density) => (From::Starter("dehp"), 0.03),
        (Kind::Hardener, Property::Density) => (From::Practice(1.05), 0.05),
        (Kind::Stabilizer, Property::Density) => (From::Practice(1.05), 0.06),
        (Kind::Colorant, Property::Density) => (From::Practice(1.1), 0.1),
        (Kind::Pearl, Property::Density) => (From::Starter("mica-muscovite"), 0.3),
        (Kind::Pearl, Property::AsScooped) => (From::Practice(0.4), 0.12),
        (Kind::Flake, Property::Density) => (From::Starter("pet-flake"), 0.1),
        (Kind::Flake, Property::AsScooped) => (From::Practice(0.6), 0.15),
        (Kind::Salt, Property::Density) => (From::Starter("sodium-chloride"), 0.02),
        (Kind::Salt, Property::AsScooped) => (From::Starter("sodium-chloride"), 0.15),
        (Kind::Scent, Property::Density) => (From::Starter("anise-oil"), 0.05),
        _ => return None,
    })
}

impl Resolver {
    /// `material` of a book, with what it lacks of its densities borrowed.
    pub(super) fn with_borrowed(&mut self, mut material: Material) -> Material {
        // Dry pigments among the colorants differ too much for one figure.
        if material.as_scooped.is_some() && !material.kind.is_powder() {
            return material;
        }
        for property in [Property::Density, Property::AsScooped] {
            let stated = match property {
                Property::AsScooped => &material.as_scooped,
                _ => &material.density,
            };
            if stated.is_none()
                && let Some(lent) = self.lent(material.kind, property)
            {
                borrow(&mut material, property, lent);
            }
        }
        material
    }

    fn lent(&mut self, kind: Kind, property: Property) -> Option<Measured<MassDensity>> {
        let (from, unsure) = lent(kind, property)?;
        let g_per_ml = MassDensity::new::<gram_per_cubic_centimeter>;
        let (value, source) = match from {
            From::Practice(value) => (g_per_ml(value), "common practice, no source".to_string()),
            From::Starter(name) => {
                let table = self.starter_table()?;
                let row = table.get(table.find(name)?).ok()?;
                let density = match property {
                    Property::AsScooped => row.as_scooped.as_ref()?,
                    _ => row.density.as_ref()?,
                };
                let source = density.source.as_deref().unwrap_or_default();
                (density.value, format!("starter table, {name}: {source}"))
            }
        };
        Some(Measured::new(value, g_per_ml(unsure)).from_source(source))
    }
}

/// Puts `lent` in the place of a density, unless the material's other density shows that it is of another sort: no powder
/// is heavier as scooped than its grains are.
fn borrow(material: &mut Material, property: Property, lent: Measured<MassDensity>) {
    let (place, fits) = match property {
        Property::AsScooped => {
            let grains = material.density.as_ref();
            let fits = grains.is_none_or(|grains| lent.value <= grains.value);
            (&mut material.as_scooped, fits)
        }
        _ => {
            let scooped = material.as_scooped.as_ref();
            let fits = scooped.is_none_or(|scooped| lent.value >= scooped.value);
            (&mut material.density, fits)
        }
    };
    if fits {
        *place = Some(lent);
        material.borrowed.push(property);
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::json;

    use super::*;
    use crate::document::{book_from_text, small};

    /// The material of a book that states `entry` of it.
    fn material(entry: serde_json::Value) -> Material {
        let mut book: serde_json::Value = serde_json::from_str(small::BOOK).unwrap();
        book["materials"]["new"] = entry;
        let book = book_from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"));
        book.materials.get(book.materials.find("new").unwrap()).unwrap().clone()
    }

    fn g_per_ml(density: &Measured<MassDensity>) -> (f64, f64) {
        let unsure = density.uncertainty.unwrap().get::<gram_per_cubic_centimeter>();
        (density.value.get::<gram_per_cubic_centimeter>(), unsure)
    }

    // The starter table where it has the kind; else common practice, no source.
    #[rstest]
    #[case("plastisol", (1.03, 0.03), None, "common practice")]
    #[case("softener", (0.985, 0.03), None, "CRC Handbook")]
    #[case("salt", (2.165, 0.02), Some((1.217, 0.15)), "CRC Handbook")]
    #[case("flake", (1.39, 0.1), Some((0.6, 0.15)), "polymer handbooks")]
    #[case("pearl", (2.82, 0.3), Some((0.4, 0.12)), "petrophysics")]
    #[case("colorant", (1.1, 0.1), None, "common practice")]
    fn what_is_left_out_is_borrowed_with_its_source(
        #[case] kind: &str,
        #[case] density: (f64, f64),
        #[case] scooped: Option<(f64, f64)>,
        #[case] source: &str,
    ) {
        let material = material(json!({ "kind": kind }));
        let near = |a: (f64, f64), b: (f64, f64)| (a.0 - b.0).abs() + (a.1 - b.1).abs() < 1e-9;
        let borrowed = material.density.as_ref().unwrap();
        assert!(near(g_per_ml(borrowed), density), "{borrowed:?}");
        assert!(borrowed.source.as_deref().unwrap().contains(source), "{borrowed:?}");
        assert_eq!(material.as_scooped.is_some(), scooped.is_some());
        if let (Some(found), Some(scooped)) = (&material.as_scooped, scooped) {
            assert!(near(g_per_ml(found), scooped), "{found:?}");
        }
        assert_eq!(material.borrowed.len(), 1 + usize::from(scooped.is_some()));
    }

    #[rstest]
    #[case(json!({ "kind": "plastisol", "density": "1.05 g/mL" }), &[])]
    #[case(json!({ "kind": "salt", "like": "sodium-chloride" }), &[])]
    #[case(json!({ "kind": "salt", "like": "quartz-sand", "as_scooped": "1.6 g/mL" }), &[])]
    #[case(json!({ "kind": "salt", "as_scooped": "1.3 g/mL" }), &[Property::Density])]
    // A flake of metal, and hollow beads: not what could be borrowed.
    #[case(json!({ "kind": "flake", "as_scooped": "1.5 g/mL" }), &[])]
    #[case(json!({ "kind": "flake", "density": "0.3 g/mL" }), &[])]
    // As heavy as what is lent is not heavier.
    #[case(json!({ "kind": "flake", "density": "0.6 g/mL" }), &[Property::AsScooped])]
    #[case(json!({ "kind": "flake", "as_scooped": "1.39 g/mL" }), &[Property::Density])]
    // A dry pigment; and what is of no kind.
    #[case(json!({ "kind": "colorant", "as_scooped": "0.5 g/mL" }), &[])]
    #[case(json!({ "kind": "other" }), &[])]
    fn nothing_is_borrowed_over_what_is_stated(
        #[case] entry: serde_json::Value,
        #[case] borrowed: &[Property],
    ) {
        assert_eq!(material(entry).borrowed, borrowed);
    }
}
