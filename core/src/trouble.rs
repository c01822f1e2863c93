//! Troubles at the bench: how each shows, what causes it, and what helps.
//!
//! All of it is common practice, no source. What can be calculated is: how much softener or hardener takes a pot from one
//! reading to another ([`MeasuredHardness`](crate::softener::MeasuredHardness)), how often to stir so that salt does not sink
//! ([`settling`](crate::process::settling)).

use crate::caution::Caution;
use crate::words::words;

words! {
    /// A trouble at the bench.
    pub enum Trouble {
        /// It hardly flows, or pieces come out stiff.
        TooThick = "too-thick",
        /// Pieces are floppy.
        TooSoft = "too-soft",
        /// Lumps of powder or color.
        Clumps = "clumps",
        /// Salt sinks in the pot or in the piece.
        SinkingSalt = "sinking-salt",
        /// Air at the far end of a piece.
        AirInNoses = "air-in-noses",
        /// It spits or foams: water.
        Spitting = "spitting",
        /// It turns yellow or brown.
        Yellowing = "yellowing",
        /// Sprues stick or tear.
        StickySprues = "sticky-sprues",
        /// Pieces sink in while they cool.
        Dents = "dents",
    }
}

/// Where all that is said of troubles comes from.
pub const SOURCE: &str = "common practice, no source";

/// What is known of a trouble.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub struct Remedy {
    /// How it shows.
    pub sign: &'static str,
    /// Likely causes, the likeliest first.
    pub causes: &'static [&'static str],
    /// What helps, each a sentence, in the order in which to try it.
    pub helps: &'static [&'static str],
    /// Where it or the help can hurt someone.
    pub cautions: &'static [Caution],
}

impl Trouble {
    /// How it shows, what causes it and what helps.
    #[must_use]
    pub const fn remedy(self) -> Remedy {
        match self {
            Self::TooThick => Remedy {
                sign: "It hardly flows, molds do not fill, pieces come out stiff.",
                causes: &[
                    "too cold to shoot",
                    "too little softener",
                    "too much salt or powder",
                    "heated too often",
                ],
                helps: &[
                    "Stir and read it. Below the shot window: heat in short bursts, and never past the window.",
                    "At shot temperature and still thick: stir in softener, a little at a time, and read again.",
                    "Shoot a test piece and let it cool before you add more: nothing can be taken out.",
                ],
                cautions: &[Caution::HotPlastisol, Caution::Fumes],
            },
            Self::TooSoft => Remedy {
                sign: "Pieces are floppy, sag or tear.",
                causes: &["too much softener or oil", "not fused: shot too cold"],
                helps: &[
                    "Shoot a test piece from the middle of the shot window: plastic that has not fused is weak.",
                    "Still soft: stir in hardener, or base without softener where base may go in.",
                ],
                cautions: &[Caution::HotPlastisol],
            },
            Self::Clumps => Remedy {
                sign: "Lumps of pearl, flake or salt, or specks of color.",
                causes: &[
                    "powder went in dry and all at once",
                    "color settled in its bottle",
                    "damp salt",
                ],
                helps: &[
                    "Now: stir along the bottom and press the lumps against the wall, with a dry tool.",
                    "Next time: wet the powder with some of the cold base first; salt in thirds, lumps broken.",
                    "Shake the color until nothing is left at the bottom of its bottle.",
                ],
                cautions: &[Caution::HotPlastisol, Caution::Water, Caution::DampSalt],
            },
            Self::SinkingSalt => Remedy {
                sign: "The last pieces are heavier, or salt is at the bottom of the cup or on one side of the piece.",
                causes: &["long waits between loads", "coarse salt", "a thin, very hot melt"],
                helps: &[
                    "Stir from the bottom before every load, and load at once.",
                    "Shoot near the lower end of the shot window: a cooler melt is thicker.",
                    "Use finer salt, bone-dry.",
                ],
                cautions: &[Caution::HotPlastisol, Caution::DampSalt],
            },
            Self::AirInNoses => Remedy {
                sign: "Bubbles or hollows at the end of the piece that fills last.",
                causes: &[
                    "the cavity has no vent there",
                    "shot too fast",
                    "air stirred in",
                    "plastic too cold",
                ],
                helps: &[
                    "Shoot more slowly and hold the pressure until the sprue is set.",
                    "Let the stirred cup rest for a moment, and draw the load slowly.",
                    "Degas the next pot cold, before it is heated.",
                    "Clean the vent at the nose, or scratch a fine one, with the mold cold.",
                ],
                cautions: &[Caution::HotPlastisol, Caution::Vacuum],
            },
            Self::Spitting => Remedy {
                sign: "The pot or the mold spits, foams or crackles; pieces are full of fine bubbles.",
                causes: &["water: in the mold, the injector, the salt, on a tool"],
                helps: &[
                    "Stop, step back and let it come to rest. Put nothing more in.",
                    "Dry molds, injector and tools warm; dry the salt and keep it closed.",
                ],
                cautions: &[Caution::Water, Caution::HotPlastisol, Caution::DampSalt],
            },
            Self::Yellowing => Remedy {
                sign: "Clear or light plastic turns yellow or brown.",
                causes: &[
                    "too hot, at the wall first",
                    "too many or too long heats",
                    "too little stabilizer",
                ],
                helps: &[
                    "Smoke or a sharp smell: stop heating, leave, air the room.",
                    "Nothing brings it back. Keep it for dark colors, if its heat budget is not used up.",
                    "Next time: shorter bursts, stir and read after each, more stabilizer from the start.",
                ],
                cautions: &[Caution::Fumes, Caution::HotPlastisol],
            },
            Self::StickySprues => Remedy {
                sign: "Sprues or pieces stick to the mold, stretch or tear.",
                causes: &[
                    "taken out too warm",
                    "not fused: shot too cold",
                    "too much softener or scent oil",
                ],
                helps: &[
                    "Wait until a piece is firm and only hand-warm before you open the mold.",
                    "Shoot from within the shot window.",
                    "Wipe the cold, dry mold with a trace of release oil; no water.",
                ],
                cautions: &[Caution::HotPlastisol, Caution::Water],
            },
            Self::Dents => Remedy {
                sign: "Pieces sink in while they cool; backs are hollow.",
                causes: &["the sprue sets before the piece", "not topped off", "shot very hot"],
                helps: &[
                    "Hold the injector on until the sprue is set, then top off.",
                    "Shoot near the lower end of the shot window: it shrinks less.",
                    "If the sprue sets at once, warm the mold first, dry.",
                ],
                cautions: &[Caution::HotPlastisol, Caution::Water],
            },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_trouble_has_a_help_and_sentences() {
        for trouble in Trouble::ALL {
            let remedy = trouble.remedy();
            assert!(!remedy.causes.is_empty() && !remedy.cautions.is_empty(), "{trouble}");
            for sentence in remedy.helps.iter().chain([&remedy.sign]) {
                assert!(sentence.ends_with('.') && sentence.len() < 120, "{sentence}");
            }
        }
    }
}
