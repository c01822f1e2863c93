//! Simulated shops: what is hidden, what the shop reads, and three ways to reach a color. No part of the library is
//! asked for what is hidden: the mixing rule is written out here, and is not quite that of Kubelka and Munk.

use pourwright::color::difference::ciede2000;
use pourwright::color::kubelka_munk::Surface;
use pourwright::color::lab::{D65, Lab, SRGB_BANDS, Srgb, Xyz};
use pourwright::color::match_color::{Colorants, LetDown};
use pourwright::color::next_drop::{CLOSE_ENOUGH, Unit, Verdict};
use pourwright::color::pot::ColorPot;
use pourwright::color::reading::Reading;
use pourwright::quantity::Ratio;

use pourwright_tests::chance::Chance;

/// One drop per base: 0.05 g in 200 g.
const DROP: f64 = 0.05 / 200.0;
/// Scatter of one drop.
const SCATTER: f64 = 0.10;
/// Standard uncertainty of a picture in each of L*, a*, b*.
const NOISE: f64 = 1.0;
/// Pictures of a let-down, a target or a sample.
const PICTURES: u32 = 3;
/// Steps after which a shop gives up.
const MOST_STEPS: u32 = 120;
const SHOPS: u64 = 200;

/// A colorant as it is: K and S per dose in three bands.
type Truth = [(f64, f64); 3];

/// Red, blue, yellow, black and white, invented.
const KINDS: [Truth; 5] = [
    [(3.0, 2.0), (110.0, 2.0), (80.0, 2.0)],
    [(120.0, 1.0), (45.0, 2.0), (4.0, 4.0)],
    [(1.0, 3.0), (6.0, 3.0), (130.0, 2.0)],
    [(160.0, 1.0), (160.0, 1.0), (165.0, 1.0)],
    [(0.1, 110.0), (0.15, 112.0), (0.3, 115.0)],
];

struct Shop {
    base: [f64; 3],
    /// As the bottles are today.
    today: Vec<Truth>,
    colorants: Colorants,
    target: Vec<f64>,
    wanted: Reading,
    chance: Chance,
}

/// A cup: true doses, and those that the shop thinks it holds.
struct Cup {
    truth: Vec<f64>,
    counted: Vec<u32>,
}

struct Outcome {
    steps: u32,
    off: f64,
    spoiled: bool,
    /// Steps whose band of the difference held the truth, and steps.
    held: (u32, u32),
    /// The same of the three numbers of the expected color, within two standard uncertainties.
    near: (u32, u32),
}

/// The color of doses by the hidden rule: each dose saturates by a tenth at 0.03.
fn poured(base: &[f64; 3], colorants: &[Truth], doses: &[f64]) -> Lab {
    let read: Vec<f64> = (0..3)
        .map(|band| {
            let dark = 1.0 - base[band];
            let (mut k, mut s) = (dark * dark / (2.0 * base[band]), 1.0);
            for (colorant, dose) in colorants.iter().zip(doses) {
                let works = dose / (1.0 + 0.1 * dose / 0.03);
                k += works * colorant[band].0;
                s += works * colorant[band].1;
            }
            let q: f64 = k / s;
            1.0 + q - (q * q + 2.0 * q).sqrt()
        })
        .collect();
    let sum =
        |of: fn(&Xyz) -> f64| read.iter().zip(&SRGB_BANDS).map(|(r, band)| r * of(band)).sum();
    Lab::of(&Xyz { x: sum(|b| b.x), y: sum(|b| b.y), z: sum(|b| b.z) }, &D65).unwrap()
}

/// A few pictures of a color; again, if noise puts one outside of sRGB.
fn read(color: &Lab, chance: &mut Chance) -> Reading {
    let unsure = NOISE / f64::from(PICTURES).sqrt();
    loop {
        let near = [color.lightness(), color.a(), color.b()].map(|x| x + unsure * chance.normal());
        let Ok(lab) = Lab::new(near[0].clamp(0.0, 100.0), near[1], near[2]) else { continue };
        if lab.srgb().is_ok_and(|srgb| inside(&srgb)) {
            return Reading { lab, uncertainty: [unsure; 3] };
        }
    }
}

fn inside(srgb: &Srgb) -> bool {
    srgb.linear().iter().all(|light| (1e-4..=0.999).contains(light))
}

impl Shop {
    fn new(seed: u64) -> Self {
        let mut chance = Chance::seeded(seed);
        let base = [0.88, 0.87, 0.83].map(|r: f64| (r + 0.02 * chance.normal()).clamp(0.75, 0.93));
        let varied = |kind: &Truth, common: f64, own: f64, chance: &mut Chance| -> Truth {
            let all = common * chance.normal();
            kind.map(|(k, s)| {
                let factor = (all + own * chance.normal()).exp();
                (k * factor, s * factor)
            })
        };
        let bottles: Vec<Truth> =
            KINDS.iter().map(|kind| varied(kind, 0.2, 0.1, &mut chance)).collect();
        let today: Vec<Truth> =
            bottles.iter().map(|bottle| varied(bottle, 0.10, 0.05, &mut chance)).collect();
        let light =
            |color: &Lab, chance: &mut Chance| read(color, chance).lab.srgb().unwrap().linear();
        let seen = light(&poured(&base, &[], &[]), &mut chance);
        let mut colorants = Colorants::new(&SRGB_BANDS, Surface::NONE, &seen).unwrap();
        for bottle in &bottles {
            let doses = [20.0, 80.0].map(|drops| drops * DROP);
            let pieces = doses.map(|dose| light(&poured(&base, &[*bottle], &[dose]), &mut chance));
            let let_downs: Vec<LetDown<'_>> = doses
                .iter()
                .zip(&pieces)
                .map(|(&dose, piece)| LetDown { dose: Ratio::from(dose), reflectance: piece })
                .collect();
            colorants.add(&let_downs).unwrap();
        }
        // Two or three colorants, each of 5 to 60 drops.
        let target = loop {
            let mut target = vec![0.0; KINDS.len()];
            for _ in 0..3 {
                let which = (chance.share() * 5.0) as usize;
                target[which.min(4)] = DROP * 5.0 * 12.0_f64.powf(chance.share());
            }
            if poured(&base, &today, &target).srgb().is_ok_and(|srgb| inside(&srgb)) {
                break target;
            }
        };
        let wanted = read(&poured(&base, &today, &target), &mut chance);
        Self { base, today, colorants, target, wanted, chance }
    }

    fn color(&self, doses: &[f64]) -> Lab {
        poured(&self.base, &self.today, doses)
    }

    fn off(&self, doses: &[f64]) -> f64 {
        ciede2000(&self.color(doses), &self.color(&self.target))
    }

    /// Whether no addition of what is missing brings the cup near any more.
    fn is_spoiled(&self, cup: &Cup) -> bool {
        let most: Vec<f64> = cup.truth.iter().zip(&self.target).map(|(a, b)| a.max(*b)).collect();
        self.off(&most).min(self.off(&cup.truth)) > 2.0
    }

    fn cup(&self) -> Cup {
        Cup { truth: vec![0.0; KINDS.len()], counted: vec![0; KINDS.len()] }
    }

    /// Drops as they fall.
    fn drip(&mut self, cup: &mut Cup, add: &[u32]) {
        for (j, &count) in add.iter().enumerate() {
            for _ in 0..count {
                cup.truth[j] += DROP * (1.0 + SCATTER * self.chance.normal());
            }
            cup.counted[j] += count;
        }
    }

    fn outcome(&self, cup: &Cup, steps: u32) -> Outcome {
        Outcome {
            steps,
            off: self.off(&cup.truth),
            spoiled: self.is_spoiled(cup),
            held: (0, 0),
            near: (0, 0),
        }
    }

    /// By the library: add, look, correct, until it says to stop.
    fn by_next_drop(&mut self) -> Outcome {
        let colorants = self.colorants.clone();
        let mut pot = ColorPot::new(&colorants, &[]).unwrap();
        let unit = Unit { dose: Ratio::from(DROP), scatter: Ratio::from(SCATTER), together: false };
        let units = vec![Some(unit); KINDS.len()];
        let mut cup = self.cup();
        let (mut held, mut near) = ((0, 0), (0, 0));
        let mut steps = 0;
        while steps < MOST_STEPS {
            let next = pot.next(&self.wanted, &units, CLOSE_ENOUGH).unwrap();
            if next.verdict != Verdict::Add {
                break;
            }
            steps += 1;
            self.drip(&mut cup, &next.add);
            for (j, &count) in next.add.iter().enumerate() {
                let dose = DROP * f64::from(count);
                let scatter = DROP * SCATTER * f64::from(count).sqrt();
                pot.add(j, Ratio::from(dose), Ratio::from(scatter)).unwrap();
            }
            let is = self.color(&cup.truth);
            let off = ciede2000(&is, &self.color(&self.target));
            held.0 += u32::from((next.after.low..=next.after.high).contains(&off));
            held.1 += 1;
            let parts = [is.lightness(), is.a(), is.b()];
            let lab = next.expected.lab;
            for ((is, expected), unsure) in parts
                .iter()
                .zip([lab.lightness(), lab.a(), lab.b()])
                .zip(next.expected.uncertainty())
            {
                near.0 += u32::from((is - expected).abs() <= 2.0 * unsure);
                near.1 += 1;
            }
            let seen = read(&is, &mut self.chance);
            pot.see(&seen).unwrap();
        }
        Outcome { held, near, ..self.outcome(&cup, steps) }
    }

    /// All at once by the model as calibrated, never corrected.
    fn by_model_alone(&mut self) -> Outcome {
        let colorants = self.colorants.clone();
        let light = self.wanted.lab.srgb().unwrap().linear();
        let drops = vec![Ratio::from(DROP); KINDS.len()];
        let formula = colorants.starting_formula(&light, &drops).unwrap();
        let add: Vec<u32> = formula.doses.iter().map(|dose| dose.drops).collect();
        let mut cup = self.cup();
        self.drip(&mut cup, &add);
        self.outcome(&cup, 1)
    }

    /// One drop at a time: the one whose effect, by the model as calibrated, helps most from what is seen.
    fn by_one_drop(&mut self) -> Outcome {
        let colorants = self.colorants.clone();
        let mut cup = self.cup();
        let mut steps = 0;
        let model = |counts: &[u32]| {
            let doses: Vec<Ratio> =
                counts.iter().map(|&n| Ratio::from(f64::from(n) * DROP)).collect();
            colorants.lab(&doses).unwrap()
        };
        let mut seen = read(&self.color(&cup.truth), &mut self.chance).lab;
        while steps < MOST_STEPS {
            let now = ciede2000(&seen, &self.wanted.lab);
            let from = model(&cup.counted);
            let mut best = None;
            let mut least = now;
            for j in 0..KINDS.len() {
                let mut counts = cup.counted.clone();
                counts[j] += 1;
                let to = model(&counts);
                let near = Lab::new(
                    (seen.lightness() + to.lightness() - from.lightness()).clamp(0.0, 100.0),
                    seen.a() + to.a() - from.a(),
                    seen.b() + to.b() - from.b(),
                );
                let off = ciede2000(&near.unwrap(), &self.wanted.lab);
                if off < least {
                    (least, best) = (off, Some(j));
                }
            }
            let Some(best) = best.filter(|_| now > CLOSE_ENOUGH) else { break };
            let mut add = vec![0; KINDS.len()];
            add[best] = 1;
            self.drip(&mut cup, &add);
            steps += 1;
            seen = read(&self.color(&cup.truth), &mut self.chance).lab;
        }
        self.outcome(&cup, steps)
    }
}

/// What a way of working comes to over many shops.
struct Summary {
    median_steps: u32,
    most_steps: u32,
    median_off: f64,
    most_off: f64,
    within_two: f64,
    spoiled: f64,
    held: f64,
    near: f64,
}

fn summary(mut outcomes: Vec<Outcome>) -> Summary {
    let count = outcomes.len();
    let share = |n: usize| n as f64 / count as f64;
    let within = outcomes.iter().filter(|one| one.off < 2.0).count();
    let spoiled = outcomes.iter().filter(|one| one.spoiled).count();
    let part = |of: fn(&Outcome) -> (u32, u32), outcomes: &[Outcome]| {
        let (held, all) =
            outcomes.iter().fold((0, 0), |(h, a), one| (h + of(one).0, a + of(one).1));
        f64::from(held) / f64::from(all.max(1))
    };
    let (held, near) = (part(|one| one.held, &outcomes), part(|one| one.near, &outcomes));
    outcomes.sort_by_key(|one| one.steps);
    let steps = [count / 2, count * 9 / 10].map(|i| outcomes[i].steps);
    outcomes.sort_by(|one, other| one.off.total_cmp(&other.off));
    let off = [count / 2, count * 9 / 10].map(|i| outcomes[i].off);
    Summary {
        median_steps: steps[0],
        most_steps: steps[1],
        median_off: off[0],
        most_off: off[1],
        within_two: share(within),
        spoiled: share(spoiled),
        held,
        near,
    }
}

fn line(name: &str, one: &Summary, has_band: bool) -> String {
    let band = if has_band {
        format!("{:.0} %, {:.0} %", 100.0 * one.held, 100.0 * one.near)
    } else {
        "none".to_string()
    };
    format!(
        "| {name} | {}, {} | {:.1}, {:.1} | {:.0} % | {:.0} % | {band} |",
        one.median_steps,
        one.most_steps,
        one.median_off,
        one.most_off,
        100.0 * one.within_two,
        100.0 * one.spoiled
    )
}

/// Many shops, three ways: what the docs of the module say of them. `--nocapture` shows the table.
#[test]
#[allow(clippy::print_stdout)] // the table of the docs
fn the_next_drop_gets_there() {
    let each = |way: fn(&mut Shop) -> Outcome| {
        summary((0..SHOPS).map(|seed| way(&mut Shop::new(seed))).collect())
    };
    let next = each(Shop::by_next_drop);
    let alone = each(Shop::by_model_alone);
    let drop = each(Shop::by_one_drop);
    println!("{}", line("the next drop", &next, true));
    println!("{}", line("all at once by the model alone", &alone, false));
    println!("{}", line("the one drop that helps most, each time", &drop, false));
    // The table of the module `next_drop`, with margins.
    assert!(next.median_steps <= 8 && next.most_steps <= 16, "{}", next.most_steps);
    assert!(next.within_two > 0.8 && next.within_two > alone.within_two + 0.1);
    assert!(next.most_off < 3.0 && next.most_off < alone.most_off);
    assert!(
        next.spoiled < 0.09 && next.spoiled < drop.spoiled && next.spoiled < 0.5 * alone.spoiled
    );
    assert!(drop.most_steps > 3 * next.most_steps, "{}", drop.most_steps);
    assert!(next.held > 0.9 && next.near > 0.92, "{} {}", next.held, next.near);
}
