//! The bench sheet: a plan as text that a person tapes to the wall, 80 columns wide.

mod cost;
mod process;

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

use super::process::too_much_heat;
use super::{
    Borrowed, Draw, Plan, PlannedLine, Pot, ProofFormula, ProofReason, Stage, Way, Weigh, WorkFrom,
};
use crate::bench::Tool;
use crate::caution::Caution;
use crate::material::{Adding, Kind, Property};
use crate::quantity::Mass;
use crate::show::page::{Page, broken, counted, cut, past};

/// Columns of the spoon measures in a weigh list.
const SPOONS: usize = 24;
/// Columns of the balance readings in a weigh list.
const BALANCE: usize = 18;
/// Columns of the pots in the order table.
const POTS: usize = 6;

/// The sheet of a plan, by `Display`.
#[derive(Debug, Clone, Copy)]
pub struct Sheet<'a>(&'a Plan);

impl Plan {
    /// The bench sheet, as text by its `Display`.
    #[must_use]
    pub const fn sheet(&self) -> Sheet<'_> {
        Sheet(self)
    }
}

impl fmt::Display for Sheet<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let plan = self.0;
        let mut page = Page::default();
        let title = plan
            .day
            .as_ref()
            .map_or_else(|| "BENCH SHEET".to_string(), |day| format!("BENCH SHEET  {day}"));
        page.ends(&title, plan.shop.as_deref().unwrap_or_default());
        page.rule('=');
        page.orders(&plan.lines);
        page.sink_rates(&plan.lines, plan.water.as_ref());
        page.stock(&plan.stock);
        page.work(plan);
        for pot in &plan.pots {
            page.pot(pot);
        }
        page.cost(&plan.lines, plan.cost.as_ref());
        page.notes(plan);
        f.write_str(page.text())
    }
}

impl Page {
    fn step(&mut self, text: &str) {
        self.wrapped("[ ] ", text);
    }

    fn detail(&mut self, text: &str) {
        self.wrapped("    ", text);
    }

    fn caution(&mut self, caution: Caution) {
        self.wrapped("  ! ", caution.reminder());
    }

    fn orders(&mut self, lines: &[PlannedLine]) {
        self.line("");
        self.line(&format!(
            "{:<7} {:<29} {:>6}  {:<12} {:>7}  {:<6} {}",
            "order", "what", "pieces", "mold", "weighs", "pots", "due"
        ));
        for line in lines {
            let due = line.promised.as_deref().and_then(|date| date.get(5..)).unwrap_or_default();
            let mut pots = broken(&line.pots.join(" "), " ", POTS).into_iter();
            let row = format!(
                "{:<7} {:<29} {:>6}  {:<12} {:>7}  {:<POTS$} {due}",
                cut(&line.order, 7),
                cut(&called(line), 29),
                line.pieces,
                cut(&line.mold, 12),
                line.piece.text,
                pots.next().unwrap_or_default()
            );
            self.line(&row);
            for more in pots {
                self.line(&format!("{:68}{more}", ""));
            }
            if let (Some(packs), Some(each)) = (line.packs, line.pack_of) {
                self.line(&format!("{:<8}  {packs} packs of {each}", ""));
            }
        }
    }

    fn work(&mut self, plan: &Plan) {
        self.line("");
        self.line("ORDER OF WORK");
        for (number, work) in (1..).zip(&plan.work) {
            let from: Vec<String> = work
                .from
                .iter()
                .map(|from| {
                    let heat = if from.heat { "" } else { ", still hot" };
                    format!("pot {} ({}{heat})", from.pot, stage_name(plan, from))
                })
                .collect();
            let together = if from.len() > 1 { ", all hot at once" } else { "" };
            let what = format!(
                "{}: {} from {}{together}",
                work.mold,
                counted(work.shots, "shot"),
                from.join(" and ")
            );
            self.wrapped(&format!("{number:>3}. "), &what);
            self.heated_together(plan, work);
        }
        self.time_line(plan);
        let proof = &plan.proof;
        let pots = counted(proof.pots, "pot");
        if proof.pots == proof.least {
            self.wrapped("     ", &format!("{pots}: no plan has fewer."));
        } else {
            let found = format!("{pots}; no plan has fewer than {}.", proof.least);
            self.wrapped("     ", &found);
        }
        // One pot for one formula needs no reason.
        if proof.least > 1 {
            for reason in &proof.reasons {
                self.wrapped("     ", &told(reason));
            }
        }
    }

    fn pot(&mut self, pot: &Pot) {
        self.line("");
        self.ends(
            &format!("POT {}", pot.pot),
            &format!("{} cup", pot.cup.text.replace(" cup", "-cup")),
        );
        self.rule('-');
        if let Some(told) = too_much_heat(pot) {
            self.wrapped("  ! ", &told.message);
        }
        for left_over in pot.from_shelf.iter().flat_map(|from| &from.left_overs) {
            self.step(&format!(
                "From the shelf: {} of \"{}\" ({}), cut small.",
                left_over.mass.text,
                left_over.name,
                past(left_over.heats, left_over.spent.as_ref())
            ));
        }
        let mut salted = false;
        for (index, stage) in pot.stages.iter().enumerate() {
            salted |= stage.weigh.iter().any(|weigh| weigh.kind == Kind::Salt);
            self.stage(pot, stage, index == 0, salted);
        }
        self.heats(pot);
        self.detail(&format!(
            "Left over: {} in the cup and {} of sprues ({}). Lost to cup and injector: {}.",
            pot.left_over.text,
            pot.sprues.text,
            past(pot.heats.in_all, pot.heats.spent()),
            pot.lost.text
        ));
    }

    fn stage(&mut self, pot: &Pot, stage: &Stage, first: bool, salted: bool) {
        let formulas = stage.formulas.join(" + ");
        if first {
            self.step(&format!("{formulas}: measure the base, then stir in the rest cold."));
        } else {
            let what = match stage.weigh.iter().any(|weigh| weigh.add.when == Adding::Cold) {
                true => "add to what is in the cup, and stir in.",
                false => "nothing goes in before it is heated.",
            };
            self.step(&format!("Now {formulas}: {what}"));
            self.caution(Caution::HotPlastisol);
        }
        let is_hot = |weigh: &&Weigh| weigh.add.when == Adding::Hot;
        let (hot, cold): (Vec<&Weigh>, Vec<&Weigh>) = stage.weigh.iter().partition(is_hot);
        self.weighed(&cold);
        let unsure =
            stage.density_uncertainty.as_ref().map(|unsure| format!(", ± {}", unsure.text));
        self.detail(&format!(
            "The cup then holds {}, {} cold. Finished density {}{}.",
            stage.holds.text,
            stage.fills.text,
            stage.density.text,
            unsure.unwrap_or_default()
        ));
        if first {
            self.degas(pot.degas.as_ref());
        }
        self.heat(stage, first);
        if !hot.is_empty() {
            self.step("Add hot, stirring each in; then take the temperature again.");
            self.weighed(&hot);
        }
        for draw in &stage.draws {
            self.draw(draw, salted);
        }
        self.reheats(stage);
        if stage.sprues_back.quantity > Mass::default() {
            self.step(&format!(
                "Put the sprues back in: {}, weighed. It is one more heat for them.",
                stage.sprues_back.text
            ));
            self.caution(Caution::HotPlastisol);
        }
    }

    /// What goes in at one time, and what to mind with it.
    fn weighed(&mut self, list: &[&Weigh]) {
        if list.is_empty() {
            return;
        }
        if list.iter().any(|weigh| weigh.kind == Kind::Salt) {
            self.caution(Caution::DampSalt);
        }
        self.weigh_list(list);
        for weigh in list {
            if let Some(how) = &weigh.add.how {
                self.detail(&format!("{}: {how}", weigh.material));
            }
            if let Some(beyond) = &weigh.beyond {
                self.wrapped("  ! ", &beyond.message);
            }
        }
        self.doubts(list);
    }

    /// What is not sure to its tolerance, for what, and what the balance would do for it.
    fn doubts(&mut self, list: &[&Weigh]) {
        let unsure = list.iter().filter_map(|weigh| {
            let doubt = weigh.doubt.as_ref()?;
            if doubt.uncertainty.quantity <= weigh.tolerance.quantity {
                return None;
            }
            let half = doubt.uncertainty.quantity * 0.5;
            let weighed = weigh.doubt_weighed.as_ref().filter(|it| it.uncertainty.quantity <= half);
            let weighed = weighed.map(|it| format!("; weighed ± {}", it.uncertainty.text));
            Some(format!(
                "{} ± {} ({}{})",
                weigh.material,
                doubt.uncertainty.text,
                doubt.main_source,
                weighed.unwrap_or_default()
            ))
        });
        let unsure: Vec<String> = unsure.collect();
        if !unsure.is_empty() {
            self.detail(&format!("Less sure than the tolerance: {}.", unsure.join(", ")));
        }
    }

    fn weigh_list(&mut self, list: &[&Weigh]) {
        self.line(&format!(
            "    {:<15} {:<SPOONS$}{:>7} {:>BALANCE$}{:>8}",
            "", "cups, spoons, drops", "off", "balance", "off"
        ));
        for weigh in list {
            let ways = || core::iter::once(&weigh.best).chain(&weigh.others);
            let by_balance = ways().find(|way| way.tool == Tool::Balance);
            let by_measure = ways().find(|way| way.tool != Tool::Balance);
            let marked = |way: Option<&Way>| match way {
                Some(way) if *way == weigh.best => format!("*{}", way.measure),
                Some(way) => format!(" {}", way.measure),
                None => " -".to_string(),
            };
            let off = |way: Option<&Way>| way.map(|way| way.off.text.clone()).unwrap_or_default();
            let mut measures = broken(&marked(by_measure), " + ", SPOONS).into_iter();
            let mut readings = broken(&marked(by_balance), " + ", BALANCE).into_iter();
            self.line(&format!(
                "    {:<15} {:<SPOONS$}{:>7} {:>BALANCE$}{:>8}",
                cut(&weigh.material, 15),
                measures.next().unwrap_or_default(),
                off(by_measure),
                readings.next().unwrap_or_default(),
                off(by_balance),
            ));
            loop {
                let (measure, reading) = (measures.next(), readings.next());
                if measure.is_none() && reading.is_none() {
                    break;
                }
                let measure = measure.map(|more| format!(" {more}")).unwrap_or_default();
                let reading = reading.unwrap_or_default();
                self.line(&format!("{:20}{measure:<SPOONS$}{:8}{reading:>BALANCE$}", "", ""));
            }
        }
    }

    fn draw(&mut self, draw: &Draw, salted: bool) {
        let loads = match (draw.loads, draw.shots_per_load) {
            (1, _) => "one load".to_string(),
            (loads, 1) => format!("{loads} loads, one shot each"),
            (loads, shots) if draw.shots.is_multiple_of(shots) => {
                format!("{loads} loads of {shots} shots")
            }
            (loads, shots) => {
                let last = draw.shots.checked_rem(shots).unwrap_or(0);
                format!("{loads} loads of {shots} shots, the last of {last}")
            }
        };
        let with = match draw.together_with.as_slice() {
            [] => String::new(),
            pots => format!(
                ", together with pot {} (both hot at once; this layer is {} of the piece)",
                pots.join(" and "),
                draw.share.text
            ),
        };
        self.step(&format!(
            "Shoot {}: {} of {} in {loads}{with}.",
            draw.mold,
            counted(draw.shots, "shot"),
            draw.per_shot.text
        ));
        self.caution(Caution::Water);
        self.caution(Caution::HotPlastisol);
        if salted {
            self.detail("Stir before every load: the salt settles.");
        }
        for pieces in draw.pieces.iter().filter(|pieces| pieces.made > 0) {
            let shape = pieces.shape.as_ref().map(|shape| format!("{shape}: ")).unwrap_or_default();
            let range = if pieces.from.text == pieces.to.text {
                String::new()
            } else {
                format!(" ({} unfed, {} fed)", pieces.from.text, pieces.to.text)
            };
            let unsure = pieces.uncertainty.as_ref();
            let unsure = unsure.map(|unsure| format!(" ± {}", unsure.text)).unwrap_or_default();
            self.detail(&format!(
                "{shape}{} ordered, {} made; each {}{unsure}{range}.",
                pieces.ordered, pieces.made, pieces.weighs.text
            ));
            if !pieces.flakes.is_empty() {
                let flakes = pieces.flakes.iter();
                let flakes = flakes
                    .map(|flake| format!("{} flakes of {}", about(flake.count), flake.material));
                self.detail(&format!("In each about {}.", flakes.collect::<Vec<_>>().join(", ")));
            }
            if pieces.sinks_in {
                self.detail("The sprue cannot feed these: they sink in. Top off or hold longer.");
            }
        }
        if draw.spare_shots > 0 {
            let more = counted(draw.spare_shots, "more shot");
            self.detail(&format!("The rest is enough for {more}."));
        }
    }

    /// Numbers that the book does not state, what would gain most first.
    fn borrowed(&mut self, list: &[Borrowed]) {
        if list.is_empty() {
            return;
        }
        self.line("");
        self.line("BORROWED NUMBERS: measure the first of these first");
        for one in list {
            let what = match one.property {
                Property::AsScooped => "density as scooped",
                property => property.word(),
            };
            self.wrapped(
                "  - ",
                &format!(
                    "{} {what}, taken as {} ({}): makes a piece's weight unsure by {}. {}",
                    one.material, one.value, one.source, one.gain.text, one.how
                ),
            );
        }
    }

    fn notes(&mut self, plan: &Plan) {
        self.line("");
        self.rule('=');
        self.wrapped(
            "* ",
            "the way to take: the formula's own measure, or the other where that is surer; one way is enough.",
        );
        if !plan.assumptions.is_empty() {
            self.line("");
            self.line("TO KNOW");
            for note in &plan.assumptions {
                self.wrapped("  - ", &note.message);
            }
        }
        self.borrowed(&plan.borrowed);
        self.line("");
        self.line("CAUTIONS");
        for caution in &plan.cautions {
            self.wrapped("  ! ", caution.sentence());
        }
    }
}

/// What a line asks for, with the shape in a mold with unlike cavities.
fn called(line: &PlannedLine) -> String {
    let shape = line.shape.as_ref().map(|shape| format!(", {shape}")).unwrap_or_default();
    format!("{}{shape}", line.what)
}

/// Why there cannot be fewer pots: the argument, and each formula with its numbers.
fn told(reason: &ProofReason) -> String {
    let pots = counted(reason.pots, "pot");
    let one = |of: &ProofFormula| match of.pots {
        Some(needs) => format!("{}, {}: {}", of.formula, counted(needs, "pot"), of.because),
        None => format!("{}: {}", of.formula, of.because),
    };
    match reason.formulas.as_slice() {
        [only] => format!("{pots} for {}: {}.", only.formula, only.because),
        all => {
            let all: Vec<String> = all.iter().map(one).collect();
            format!("{pots}: {}. {}.", reason.because, all.join("; "))
        }
    }
}

/// The formulas of the stage that a pot is at.
fn stage_name(plan: &Plan, from: &WorkFrom) -> String {
    let pot = plan.pots.iter().find(|pot| pot.pot == from.pot);
    let index = usize::try_from(from.stage).unwrap_or(usize::MAX).wrapping_sub(1);
    let stage = pot.and_then(|pot| pot.stages.get(index));
    stage.map(|stage| stage.formulas.join(" + ")).unwrap_or_default()
}

/// A count to two digits: a nominal one is no surer.
fn about(count: f64) -> f64 {
    let step = libm::pow(10.0, (libm::floor(libm::log10(count)) - 1.0).max(0.0));
    libm::round(count / step) * step
}
