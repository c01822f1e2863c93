//! A maker's notes of a pot, each at the stage that it belongs to.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{DrawActuals, PotActuals, RecordError, StageActuals, TimedHeat, WentIn};
use crate::book::Book;
use crate::fault::Fault;
use crate::plan::{Pot, Stage};
use crate::quantity::Mass;
use crate::show::page::counted;

/// What was noted of a stage.
#[derive(Default)]
pub(super) struct Told<'a> {
    /// Where it is written.
    pub(super) path: String,
    pub(super) went_in: Vec<&'a WentIn>,
    /// By the draws of the stage.
    pub(super) draws: Vec<Option<&'a DrawActuals>>,
    pub(super) reheats: Option<u32>,
    pub(super) heats: &'a [TimedHeat],
    pub(super) left: Option<Mass>,
    pub(super) injector: &'a [Mass],
    #[cfg(feature = "document")]
    pub(super) looks: Option<&'a super::Looks>,
    pub(super) save_as: Option<&'a str>,
    pub(super) body_as: Option<&'a str>,
    pub(super) jar: Option<&'a str>,
    pub(super) notes: Option<&'a str>,
}

impl Told<'_> {
    /// Where shots are written.
    pub(super) fn draw_path(&self, draw: &DrawActuals) -> String {
        draw_path(&self.path, draw)
    }
}

fn draw_path(entry: &str, draw: &DrawActuals) -> String {
    let mold = escaped(&draw.mold);
    match draw.number {
        Some(number) => format!("{entry}/molds/{mold}/{number}"),
        None => format!("{entry}/molds/{mold}"),
    }
}

pub(super) fn pot_path(pot: &str) -> String {
    format!("/pots/{}", escaped(pot))
}

/// A name in a JSON Pointer.
pub(super) fn escaped(name: &str) -> String {
    name.replace('~', "~0").replace('/', "~1")
}

/// What was noted of each stage of `pot`.
pub(super) fn told<'a>(
    pot: &Pot,
    actual: Option<&'a PotActuals>,
    book: &Book,
    faults: &mut Vec<Fault>,
) -> Vec<Told<'a>> {
    let path = pot_path(&pot.pot);
    let none = |stage: &Stage| Told {
        path: path.clone(),
        draws: stage.draws.iter().map(|_| None).collect(),
        ..Told::default()
    };
    let mut told: Vec<Told<'a>> = pot.stages.iter().map(none).collect();
    let Some(actual) = actual else { return told };
    if !actual.by_stage {
        for entry in &actual.stages {
            Span { pot, stages: &pot.stages, book }.place(entry, &path, &mut told, faults);
        }
        return told;
    }
    for (index, entry) in actual.stages.iter().enumerate() {
        let path = format!("{path}/{index}");
        match (pot.stages.get(index), told.get_mut(index)) {
            (Some(stage), Some(told)) => {
                let (stages, told) = (core::slice::from_ref(stage), core::slice::from_mut(told));
                Span { pot, stages, book }.place(entry, &path, told, faults);
            }
            _ => {
                let stages = u32::try_from(pot.stages.len()).unwrap_or(u32::MAX);
                let stages = counted(stages, "stage");
                let error = RecordError::NoStage { pot: pot.pot.clone(), stages };
                faults.push(Fault::at(path, &error));
            }
        }
    }
    told
}

/// The stages that an entry may mean.
struct Span<'p> {
    pot: &'p Pot,
    stages: &'p [Stage],
    book: &'p Book,
}

impl Span<'_> {
    /// Puts each number of `entry` to its stage.
    fn place<'a>(
        &self,
        entry: &'a StageActuals,
        path: &str,
        told: &mut [Told<'a>],
        faults: &mut Vec<Fault>,
    ) {
        let mut fault = |path: String, error: RecordError| faults.push(Fault::at(path, &error));
        for told in &mut *told {
            told.path = path.into();
        }
        for one in &entry.went_in {
            match self.of_material(one) {
                Ok(stage) => told.get_mut(stage).into_iter().for_each(|it| it.went_in.push(one)),
                Err(name) => {
                    fault(format!("{path}/went_in/{}", escaped(&name)), self.which(name));
                }
            }
        }
        for draw in &entry.draws {
            match self.of_draw(draw) {
                Ok((stage, number)) => {
                    let place = told.get_mut(stage).and_then(|told| told.draws.get_mut(number));
                    place.into_iter().for_each(|place| *place = Some(draw));
                }
                Err(error) => fault(draw_path(path, draw), error),
            }
        }
        let of_one = [
            ("reheats", entry.reheats.is_some()),
            ("heats", !entry.heats.is_empty()),
            ("injector", !entry.injector.is_empty()),
            #[cfg(feature = "document")]
            ("looks", entry.looks.is_some()),
            ("save_as", entry.save_as.is_some()),
            ("body_as", entry.body_as.is_some()),
        ];
        match &mut *told {
            [only] => {
                only.reheats = entry.reheats;
                only.heats = &entry.heats;
                only.injector = &entry.injector;
                #[cfg(feature = "document")]
                {
                    only.looks = entry.looks.as_ref();
                }
                only.save_as = entry.save_as.as_deref();
                only.body_as = entry.body_as.as_deref();
            }
            _ => {
                for (field, _) in of_one.into_iter().filter(|(_, is_stated)| *is_stated) {
                    fault(format!("{path}/{field}"), self.which(format!("\"{field}\"")));
                }
            }
        }
        if let Some(last) = told.last_mut() {
            last.left = entry.left;
            last.jar = entry.jar.as_deref();
            last.notes = entry.notes.as_deref();
        }
    }

    fn which(&self, what: String) -> RecordError {
        RecordError::WhichStage { pot: self.pot.pot.clone(), what }
    }

    /// The stage that a material went in at; its name if that could be several.
    fn of_material(&self, one: &WentIn) -> Result<usize, String> {
        if let [_] = self.stages {
            return Ok(0);
        }
        let material = self.book.materials.get(one.material);
        let name = material.map(|material| material.name.clone()).unwrap_or_default();
        let mut having = self.stages.iter().enumerate().filter_map(|(index, stage)| {
            stage.weigh.iter().any(|weigh| weigh.material == name).then_some(index)
        });
        match (having.next(), having.next()) {
            (Some(only), None) => Ok(only),
            _ => Err(name),
        }
    }

    /// Stage and number of the draw that was meant.
    fn of_draw(&self, draw: &DrawActuals) -> Result<(usize, usize), RecordError> {
        let all = self.stages.iter().enumerate().flat_map(|(stage, of)| {
            of.draws.iter().enumerate().map(move |(number, draw)| ((stage, number), draw))
        });
        let of_mold = all.clone().filter(|(_, known)| known.mold == draw.mold);
        let of_mold: Vec<(usize, usize)> = of_mold.map(|(place, _)| place).collect();
        let found = match (draw.number, of_mold.as_slice()) {
            (None, [only]) => Some(*only),
            (None, [_, _, ..]) => {
                let (mold, times) = (draw.mold.clone(), of_mold.len());
                return Err(RecordError::WhichDraw { mold, times });
            }
            (number, places) => number.and_then(|number| places.get(number)).copied(),
        };
        found.ok_or_else(|| {
            let known: Vec<&str> = all.map(|(_, draw)| draw.mold.as_str()).collect();
            RecordError::NoDraw { mold: draw.mold.clone(), known: known.join(", ") }
        })
    }
}
