//! How sure the doses of a trial are, by the tools that took them.

use alloc::vec::Vec;

use super::{Addition, Trial};
use crate::bench::{Manner, Measure, MeasureError, Tool};
use crate::book::Book;
use crate::formula::WrittenIn;
use crate::material::Material;
use crate::mix::MaterialId;
use crate::plan::doubt::{Doubt, doubt_of_taken, taken};
use crate::plan::tool_names::ToolNames;
use crate::quantity::{Dimension, Mass, Ratio, Volume};
use crate::uncertainty::Taken;

impl Trial<'_> {
    /// How sure what went in of a material is against a dose in `written`; `None` where the book lacks a property that
    /// this takes.
    pub(crate) fn doubt(
        &self,
        material: MaterialId,
        written: WrittenIn,
        names: &ToolNames<'_>,
    ) -> Option<Doubt> {
        let of = self.book.materials.get(material).ok()?;
        let mut all = Vec::new();
        for addition in &self.additions {
            if addition.material == material && addition.mass > Mass::default() {
                all.extend(took(of, addition, self.book, names)?);
            }
        }
        doubt_of_taken(of, &all, written, &self.book.unsure)
    }
}

/// How an addition was taken.
fn took<'a>(
    material: &Material,
    addition: &Addition,
    book: &Book,
    names: &'a ToolNames<'_>,
) -> Option<Vec<Taken<'a>>> {
    let Addition { amount, mass, .. } = addition;
    if let Some(drops) = amount.drops() {
        let count = libm::round(drops.to_f64()).max(1.0) as u32;
        return Some(Vec::from([Taken::Drops { count }]));
    }
    if amount.dimension() != Dimension::VOLUME {
        let readability = book.tools.balance()?.readability;
        return Some(Vec::from([Taken::Weighed { net: *mass, times: 1, readability }]));
    }
    let by_bench = by_bench(material, *mass, book);
    let steps = by_bench.map(|measure| taken(&measure.steps, names));
    steps.or_else(|| {
        let holds: Volume = amount.to(book.system).ok()?;
        // A measure that the bench does not have is still a measure.
        Some(Vec::from([Taken::Spoon { name: "that was used", holds, times: 1 }]))
    })
}

/// The spoons or the cup of the bench that hold just that amount.
fn by_bench(material: &Material, mass: Mass, book: &Book) -> Option<Measure> {
    const SAME: f64 = 1e-6;
    let by_volume = material.by_volume("how sure it is").ok()?.density();
    let manner = Manner { by_volume: Some(by_volume), drop: None };
    let found = match book.tools.measure(mass, &manner, Ratio::from(SAME)) {
        Ok(choice) => core::iter::once(choice.best).chain(choice.others).collect(),
        Err(MeasureError::NotReached { tools, .. }) => {
            tools.into_iter().map(|tool| tool.nearest).collect::<Vec<_>>()
        }
        Err(_) => return None,
    };
    let mut found = found.into_iter();
    found.find(|measure| {
        matches!(measure.tool, Tool::Cup | Tool::Spoons)
            && libm::fabs(measure.deviation.value) <= SAME
    })
}
