use alloc::string::String;
use alloc::vec::Vec;

use serde_json::json;

use super::*;
use crate::plan::there::tests::{in_workshop, small};

/// A pot, and the recipe that it is made last.
fn giving<'a>(there: &'a PotThere, last: Option<&'a DayRecipe<'a>>) -> Giving<'a> {
    let stages = last.map(|recipe| StageDraft { recipe, draws: Vec::new(), heats: 1 });
    Giving { there, stages: stages.into_iter().collect(), laminated: None }
}

// Per cup, 243.7 g: 1.35 g of blue, 2 g of red, and salt.
#[test]
fn a_recipe_is_as_far_off_as_it_takes_additives() {
    let orders = |colors: &[&str]| {
        let mut formulas: Vec<String> = colors.iter().map(|&color| color.into()).collect();
        formulas.push("body".into());
        json!({ "order": "1", "mold": "worm", "formulas": formulas, "pieces": 4 })
    };
    let lines = [orders(&[]), orders(&["sky"]), orders(&["rust"])];
    let pots = [
        json!({ "pot": "A", "parts": { "clear": "1 cup", "blue": "30 drops" } }),
        json!({ "pot": "B", "parts": { "blue": "30 drops" } }),
    ];
    in_workshop(&small(), &lines, &pots, |workshop, pots| {
        let [body, sky, rust] = [0, 1, 2].map(|at| &*workshop.recipes[at]);
        let near =
            |got: f64, expected: f64| assert!((got - expected).abs() < 1e-9, "{got} {expected}");
        let cup = 1.03 * 236.588_236_5;
        let (blue, red) = (1.35 / cup, 2.0 / cup);
        let salt = body.recipe.additives()[0].ratio;
        let giving = |at: usize, last| giving(&pots[at], last);
        // By what is in the pot.
        near(giving(0, None).distance(body), salt);
        near(giving(0, None).distance(sky), salt);
        near(giving(0, None).distance(rust), salt + red);
        // Without base nothing of a recipe is held.
        near(giving(1, None).distance(sky), salt + blue);
        near(giving(1, None).distance(rust), salt + red);
        // By what it is made last.
        near(giving(0, Some(sky)).distance(sky), 0.0);
        near(giving(0, Some(sky)).distance(rust), red);
        near(giving(0, Some(body)).distance(sky), blue);
    });
}
