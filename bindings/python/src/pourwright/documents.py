"""Types of documents: answers of calculations, plans and records, books and order lists.

Made from the JSON Schemas in ``core/schema/`` by ``make-types``; do not edit.

Amounts that a person writes are text (``"1 1/4 cup"``) or ``{"value": 12.5, "unit": "g"}``; quantities of an answer are
:class:`Shown`. In answers, what is not known is None.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, NotRequired, Protocol, TypeAlias, TypedDict, Union, overload


Adding: TypeAlias = Literal["cold", "hot"]
"""When a material goes into the pot."""


Amount: TypeAlias = Union[str, dict[str, Any]]
"""An amount as a person writes it, or as a number and a unit."""


AtReading: TypeAlias = Literal["burst", "hot", "cool"]
"""What to do at a reading of the thermometer."""


Name: TypeAlias = str
"""A name: of a material, formula, mold, product, order."""


BaseEntry: TypeAlias = Union[Name, dict[str, Amount]]
"""The base of a formula."""


Calculated: TypeAlias = dict[str, Any]
"""A result, or why it could not be calculated."""


Calculated2: TypeAlias = dict[str, Any]
"""A result, or why it could not be calculated."""


Calculated3: TypeAlias = dict[str, Any]
"""A result, or why it could not be calculated."""


Calculated4: TypeAlias = dict[str, Any]
"""A result, or why it could not be calculated."""


Calculated5: TypeAlias = dict[str, Any]
"""A result, or why it could not be calculated."""


Calculated6: TypeAlias = dict[str, Any]
"""A result, or why it could not be calculated."""


Calculated7: TypeAlias = dict[str, Any]
"""A result, or why it could not be calculated."""


Caution: TypeAlias = Literal["hot-plastisol", "fumes", "water", "damp-salt", "vacuum", "food-gear", "data-sheet"]
"""A caution by its stable code."""


CavitiesEntry: TypeAlias = Union[int, dict[str, "CavityEntry"]]
"""The cavities of a mold."""


MeasuredAmount: TypeAlias = Union[str, dict[str, Any]]
"""An amount that may carry its uncertainty: the number after ± is one standard uncertainty, unless (k=2) or (interval)
follows; `uncertainty` is one standard uncertainty in the same unit."""


CavityVolume: TypeAlias = Union["WaterEntry", MeasuredAmount]
"""The volume of a cavity, stated or weighed with water."""


Count: TypeAlias = int
"""A count that may be zero."""


Cut: TypeAlias = str
"""The cut of a flake: ".035", "1/64 hex", "0.4 mm square"."""


Doing: TypeAlias = Literal["prepare", "heat", "reheat", "shoot"]
"""Kind of work in a span of the day."""


Format: TypeAlias = Literal["pourwright/1.0"]
"""The format of the documents and its version. A minor version only adds."""


Kind: TypeAlias = Literal["plastisol", "softener", "hardener", "stabilizer", "colorant", "pearl", "flake", "salt", "scent", "other"]
"""Purpose of a material."""


Light: TypeAlias = Literal["D65", "A", "LED-B3"]
"""A light that a color is seen in."""


MoldMaterial: TypeAlias = Literal["metal", "plaster", "silicone"]
"""The material of a mold."""


MostDose: TypeAlias = str
"""A dose per amount of base, such as "3 tsp per 1 cup", or a share of it, such as "4 % of base"."""


Motion: TypeAlias = Literal["straight", "may-swing", "swings"]
"""Whether a piece sinks straight."""


Overlap: TypeAlias = Literal["refuse", "add", "last"]
"""Rule for two formulas that are combined and dose the same material."""


Percent: TypeAlias = str
"""A share from 0 % to 100 %, such as "3 %"."""


Price: TypeAlias = str
"""Money per package, such as "58.00 USD per 1 gal"."""


Property: TypeAlias = Literal["density", "fused", "as_scooped", "drop", "expansion", "specific_heat", "shot_window", "price"]
"""A property of a material that a calculation may need."""


ReadIn: TypeAlias = Literal["D65", "D50", "A"]
"""The light that a colorimeter states its L*a*b* for."""


Scale: TypeAlias = Literal["shore-00", "shore-a", "own"]
"""The scale of a durometer reading."""


Share: TypeAlias = str
"""A share, such as "3 %" or "150 %"; 3 % is 0.03 of the range of its parameter."""


Sourced: TypeAlias = Union[MeasuredAmount, "WithSource"]
"""A quantity, or a quantity with its source."""


SourcedDrop: TypeAlias = Sourced
"""One drop: a mass or a volume."""


Sprues: TypeAlias = Literal["keep", "melt-again"]
"""Use of the sprues."""


StatedIn: TypeAlias = Literal["percent", "fraction"]
"""How the reflectances of rows are stated."""


StepKind: TypeAlias = Literal["from-shelf", "measure", "add", "degas", "heat", "shoot", "sprues-back", "store"]
"""Kind of a step."""


System: TypeAlias = Literal["us-customary", "us-label", "metric", "imperial"]
"""The measuring system, which gives cup, tbsp, tsp, fl oz, pt, qt and gal their size."""


TextScale: TypeAlias = Literal["us", "metric"]
"""The scale that a text is on, where two are in use."""


Tool: TypeAlias = Literal["balance", "cup", "spoons", "drops"]
"""A tool of the bench, in the order in which the last tie is broken."""


TrialSide: TypeAlias = Literal["base", "body", "color", "both"]
"""What a material of a trial belongs to."""


Trouble: TypeAlias = Literal["too-thick", "too-soft", "clumps", "sinking-salt", "air-in-noses", "spitting", "yellowing", "sticky-sprues", "dents"]
"""A trouble at the bench."""


Verdict: TypeAlias = Literal["add", "close-enough", "cannot-tell", "more-base", "out-of-reach"]
"""Advice on the color of a pot."""


WayKind: TypeAlias = Literal["as-it-is", "within", "exact", "nearest", "keep"]
"""A way to go on with a pot."""


WrittenIn: TypeAlias = Literal["mass", "volume", "drops"]
"""The measure that a dose is written in: its own, against which every other has to be converted."""


class AirAnswer(TypedDict):
    """State of the air."""

    calculate: Literal["air"]

    most_vacuum: Shown
    """The most that a true vacuum gauge shows there."""

    pressure: Shown
    """Its pressure at the place itself."""

    standard: bool
    """Whether it is that of the standard atmosphere, which the weather moves by some 3 %."""


BalanceEntry = TypedDict("BalanceEntry", {
    # An embedding program's own data; carried through untouched.
    "ext": "NotRequired[dict[str, Any]]",
    # Smallest load that it weighs. Default: one step. Example: `"0.5 g"`.
    "from": "NotRequired[MeasuredAmount]",
    # Step of its display. Example: `"0.1 g"`.
    "reads": "MeasuredAmount",
    # Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    # `false`, a number that looks like a slip is refused. Example: `true`.
    "sure": "NotRequired[bool]",
    # Largest load that it weighs. Default: 5000 steps. Example: `"500 g"`.
    "to": "NotRequired[MeasuredAmount]",
})
"""A scale."""


class BallEntry(TypedDict):
    """A piece about as long as thick."""

    diameter: MeasuredAmount
    """Diameter. Example: `"16 mm"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""


class BandsEntry(TypedDict):
    """Reflectance in bands."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    from_nm: float
    """Wavelength of the first band, in nm. Example: `400`."""

    reflectance: list[float]
    """Reflectance of each band, from 0 to 1, at least up to 700 nm. Example: `[0.05, 0.06, 0.08]`."""

    step_nm: float
    """From band to band, in nm: 10 or 20. Example: `10`."""


class BatchAnswer(TypedDict):
    """How much to mix, and where it goes."""

    calculate: Literal["batch"]

    drawn: Shown
    """Mass of all shots."""

    in_cup: Shown
    """Mass that stays in the cup: the heel, with the film in it."""

    kept: Shown
    """Mass that stays in the injector."""

    loads: int
    """Injector loads."""

    made: int
    """Pieces that they make."""

    pieces: Shown
    """Mass of all pieces."""

    returned: Shown
    """Mass of sprues that are melted again and shot."""

    shots: int
    """Shots."""

    shots_per_load: int
    """Whole shots in one injector load."""

    sprues: Shown
    """Sprues that are left over."""

    total: Shown
    """The mass to mix."""


class Becomes(TypedDict):
    """A mix that the pot could still become."""

    adds: Shown
    """Total mass of the additions."""

    fits: bool
    """Whether the cup holds it."""

    formulas: list[str]
    """By its formulas."""

    mass: Shown
    """Mass of the pot then."""

    products: list[str]
    """The book's products that are shot with just these."""

    volume: Shown
    """Its volume then, cold and liquid."""


class BenchEntry(TypedDict):
    """The tools on the bench."""

    balance: NotRequired[BalanceEntry]
    """The scale. Default: none; nothing is then weighed."""

    cups: list[CupEntry]
    """Cups to mix and heat a pot in; at least one."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    injector: InjectorEntry
    """The injector."""

    most_drops: NotRequired[int]
    """Largest number of drops that you still count. Default: 60. Example: `40`."""

    oven: NotRequired[OvenEntry]
    """The oven, by the shop's own timings. Default: not known; no heating times are shown."""

    spoons: NotRequired[list[MeasuredAmount]]
    """Level spoons, by volume. Default: none. Example: `["1 tbsp", "1 tsp", "1/2 tsp"]`."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""

    uncertainty: NotRequired[ToolUncertaintyEntry]
    """How unsure the tools are. Default: that of each field."""

    vacuum: NotRequired[VacuumEntry]
    """The vacuum that pots are degassed in. Default: not known; no degassing step is shown."""


class BodyEntry(TypedDict):
    """Shape of a piece as it sinks: either a `stick` or a `ball`."""

    ball: NotRequired[BallEntry]
    """A piece about as long as thick. Default: none; required without `stick`."""

    drop: NotRequired[TimedDropEntry]
    """A drop of such a piece with its hook that the shop has timed. Default: none; the drag of the shape is used."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    stick: NotRequired[StickEntry]
    """A piece longer than thick, which sinks sideways. Default: none; required without `ball`."""


class BookChange(TypedDict):
    """A number of the book that the days know better."""

    after: str
    """The value that the book and the days show together, with its standard uncertainty."""

    before: str | None
    """The book's value; none if the book has none."""

    days: int
    """How many days it is from."""

    questioned: bool
    """Whether a question below is about it: look at that first."""

    what: str
    """What it is: `drop of plum`."""

    why: str
    """Why, in a sentence, and what to ask yourself first."""

    write: list[Change]
    """The change to the book, as a JSON Patch (RFC 6902)."""


class BookDocument(TypedDict):
    """A shop's book."""

    about: NotRequired[str]
    """Anything a reader should know about the book. Default: none. Example: `"Prices of March 2027."`."""

    altitude: NotRequired[MeasuredAmount]
    """Height of the shop above sea level, negative below it. Default: not known. Example: `"640 m"`."""

    bench: BenchEntry
    """The tools on the bench."""

    costing: NotRequired[CostingEntry]
    """How to calculate what a day costs. Default: plans show no costs."""

    default_base: NotRequired[Name]
    """Plastisol of formulas that name no base. Default: none. Example: `"clear-base"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    format: Format
    """The format and its version. Example: `"pourwright/1.0"`."""

    formulas: dict[str, FormulaEntry]
    """Formulas by name."""

    limits: NotRequired[LimitsEntry]
    """How the shop works. Default: that of each field."""

    materials: dict[str, MaterialEntry]
    """Materials by name."""

    measures: System
    """The measuring system: how much a cup, a spoon and a fluid ounce hold. Example: `"us-customary"`."""

    molds: dict[str, MoldEntry]
    """Molds by name."""

    products: NotRequired[dict[str, ProductEntry]]
    """Products by name: a mold and what is shot into it. Default: none."""

    shop: NotRequired[Name]
    """Whose book it is. Default: none. Example: `"Tern Island workshop"`."""

    station_pressure: NotRequired[MeasuredAmount]
    """Reading of a barometer in the shop, not reduced to sea level. Default: the standard pressure at `altitude`; not
    known without one. Example: `"27.7 inHg"`."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""


class BookQuestion(TypedDict):
    """A day or a trend to look at."""

    question: str
    """What was seen, and what to do about it."""

    what: str
    """What it is about: `drop of plum`."""


class Borrowed(TypedDict):
    """A number that the book does not state, and what the plan assumes for it."""

    code: str
    """Stable code in kebab case."""

    gain: Shown
    """Relative uncertainty of a piece's mass that measuring it would remove: the maximum of the day's recipes."""

    how: str
    """How to measure it."""

    material: str
    """The material."""

    property: Property
    """The property."""

    source: str
    """Its source."""

    uncertainty: Shown
    """Its standard uncertainty, relative."""

    value: str
    """The assumed value, as a book writes it: `1.03 g/mL ± 0.03`."""


BudgetEntry = TypedDict("BudgetEntry", {
    # The reference temperature. Example: `"350 °F"`.
    "at": "MeasuredAmount",
    # An embedding program's own data; carried through untouched.
    "ext": "NotRequired[dict[str, Any]]",
    # Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    # `false`, a number that looks like a slip is refused. Example: `true`.
    "sure": "NotRequired[bool]",
    # Time at the reference temperature. Example: `"45 min"`.
    "time": "MeasuredAmount",
    # The stabilizer that this includes, as a share of the mass of base. Default: 0 %, none added. Example: `"2 %"`.
    "with": "NotRequired[Percent]",
})
"""The heat that a plastisol withstands."""


class BuysEntry(TypedDict):
    """The heat that more of a stabilizer buys."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    most: Percent
    """Highest dose that this holds for, as a share of the mass of base. Example: `"4 %"`."""

    per: Percent
    """The dose that adds this time, as a share of the mass of base. Example: `"1 %"`."""

    time: MeasuredAmount
    """Time that it adds at the reference temperature of the plastisol's budget. Example: `"8 min"`."""


class CalibrateAnswer(TypedDict):
    """Result of the weights: the cavity, with `feed` known; the feed share, with `cavity` known."""

    calculate: Literal["calibrate"]

    cavity: str | None
    """Volume of the cavity with its standard uncertainty, as a book writes it."""

    count: int
    """How many pieces were weighed."""

    deviation: Shown
    """Standard deviation of one."""

    feed: Shown | None
    """Share of its contraction that a piece draws from the sprue."""

    feed_uncertainty: Shown | None
    """Its standard uncertainty: from that of the mean, and the ± of densities and cavity."""

    mean: Shown
    """Their mean."""

    questioned: str | None
    """A weight that Grubbs' test questions; it is in the mean."""

    uncertainty: Shown
    """Standard uncertainty of the mean: from their scatter, and from the rounding of the balance."""

    volume: Shown | None
    """The volume of the cavity."""

    volume_uncertainty: Shown | None
    """Its standard uncertainty: from that of the mean, the ± of densities, and `feed_uncertainty`."""

    write: list[Change]
    """Changes to a book, as a JSON Patch (RFC 6902); empty if no mold was named."""


class CalibrateDropAnswer(TypedDict):
    """Mass of one drop."""

    calculate: Literal["calibrate-drop"]

    drop: str
    """One drop with its standard uncertainty, as a book writes it."""

    mass: Shown
    """Its mass."""

    questioned: str | None
    """A weighing that Grubbs' test questions; it is in the mean."""

    scatter: Shown
    """Standard deviation of one drop against the next, as a share of its mass: what n drops carry by √n."""

    uncertainty: Shown
    """Its standard uncertainty: what n drops carry n-fold."""

    write: list[Change]
    """Changes to a book, as a JSON Patch (RFC 6902); empty if no material was named."""


class CalibrateInjectorAnswer(TypedDict):
    """Residue of an injector."""

    calculate: Literal["calibrate-injector"]

    deviation: Shown
    """Standard deviation of one emptying."""

    keeps: str
    """Its volume with its standard uncertainty, as a book writes it."""

    mass: Shown
    """Its mass: what each cleaning and each cold stop loses."""

    questioned: str | None
    """An emptying that Grubbs' test questions; it is in the mean."""

    uncertainty: Shown
    """Its standard uncertainty."""

    volume: Shown
    """Its volume."""

    write: list[Change]
    """Changes to a book, as a JSON Patch (RFC 6902)."""


class CalibrateSpoonAnswer(TypedDict):
    """The density as scooped."""

    calculate: Literal["calibrate-spoon"]

    as_scooped: str
    """The density as scooped with its standard uncertainty, as a book writes it."""

    density: Shown
    """The density as scooped."""

    questioned: str | None
    """A weighing that Grubbs' test questions; it is in the mean."""

    scatter: Shown
    """Standard deviation of one spoonful against the next, as a share of its mass."""

    spoonful: Shown
    """Mass of one level spoonful."""

    uncertainty: Shown
    """Its standard uncertainty."""

    write: list[Change]
    """Changes to a book, as a JSON Patch (RFC 6902); empty if no material was named."""


class CavityEntry(TypedDict):
    """The cavities of one shape in a mold with unlike ones."""

    body: NotRequired[BodyEntry]
    """Shape of a piece, for its sink rate. Default: not known; no sink rate is shown."""

    cavity: CavityVolume
    """Volume of one, or the water that it holds. Example: `"8.8 mL"`."""

    count: int
    """Number of them. Example: `2`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""


class Change(TypedDict):
    """A change to a book: an operation of a JSON Patch (RFC 6902), which libraries of many languages apply."""

    op: str
    """The operation: `add`, which also replaces a value that is there."""

    path: str
    """Where, as a JSON Pointer into the book."""

    value: Any
    """The new value."""


class ClockAnswer(TypedDict):
    """The heats of a pot."""

    calculate: Literal["clock"]

    cautions: list[Caution]
    """Dangers."""

    heats: list[ClockHeat]
    """The heats in their order."""

    reheats: int
    """How many of them are reheats."""

    shooting: Shown
    """All shots, without the oven."""

    total: Shown | None
    """All shots and the oven's time for each heat, where that is given."""


class ClockHeat(TypedDict):
    """One heat."""

    after: int
    """How many shots were made before it."""

    lasts: Shown
    """From the last burst to the last shot."""

    mass: Shown
    """Mass in the pot at its start."""

    shots: int
    """How many shots are made in it."""

    used: Shown
    """How much of the time that the pot stays hot that is."""


class ColorAddition(TypedDict):
    """Drops or spoons of one colorant."""

    amount: Amount
    """How many drops, or how much by spoon."""

    mass: Shown
    """Their mass."""

    material: str
    """Which."""

    measure: str
    """The same by the drops to count or the spoons to take: `1/4 tsp + 1/8 tsp`."""


class ColorDifferenceAnswer(TypedDict):
    """How far apart they look."""

    calculate: Literal["color-difference"]

    color: ShownLab
    """The color."""

    difference: float
    """ΔE₀₀; about 1 is what a trained eye just sees side by side."""

    other_color: ShownLab
    """The other color."""


class ColorEntry(TypedDict):
    """A color, in one of five ways."""

    bands: NotRequired[BandsEntry]
    """Reflectance in bands, of a spectrophotometer. Default: none."""

    csv: NotRequired[RowsEntry]
    """Reflectance as the text of a table, of a spectrophotometer. Default: none."""

    day: NotRequired[str]
    """Day of the reading. Default: none. Example: `"2027-03-05"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    hex: NotRequired[str]
    """The same as six hexadecimal digits. Default: none. Example: `"#b85e5a"`."""

    lab: NotRequired[list[float]]
    """L*, a*, b* of a reading. Default: none. Example: `[52, 41, 18]`."""

    light: NotRequired[ReadIn]
    """Light that `lab` is for. Default: `"D65"`. Example: `"D50"`."""

    observer: NotRequired[int]
    """Observer that `lab` is for, in degrees: 2. Default: 2. Example: `2`."""

    srgb: NotRequired[list[float]]
    """Red, green and blue from 0 to 255, as a photograph next to white stores them. Default: none. Example: `[184, 94,
    90]`."""

    uncertainty: NotRequired[list[float]]
    """Standard uncertainties of L*, a* and b* next to other readings taken in the same way. Default: 1 each of `srgb`
    and `hex`, 0.3 each of `lab` and `bands` (common practice, no source). Example: `[0.6, 0.6, 0.6]`."""


class ColorInLight(TypedDict):
    """How far two pieces are apart in a light."""

    difference: float
    """ΔE₀₀ in it."""

    index: float
    """Metamerism index (CIE 15, change of light): ΔE*ab in it, once their difference in daylight is taken out."""

    index_00: float
    """The same as ΔE₀₀."""

    light: Light
    """Which."""


class ColorLightsAnswer(TypedDict):
    """How far two pieces are apart in each light."""

    calculate: Literal["color-lights"]

    daylight: float
    """ΔE₀₀ in daylight (D65)."""

    lights: list[ColorInLight]
    """The other lights."""

    statement: str
    """How far to trust it, in words."""

    text: list[str]
    """The answer in short lines."""


class ColorMatchAnswer(TypedDict):
    """A formula to begin with."""

    calculate: Literal["color-match"]

    difference: float
    """Its ΔE₀₀ to the target."""

    drops: list[ColorantDrops]
    """Drops of each colorant; those with none are left out."""

    exact_difference: float
    """ΔE₀₀ to the target of the exact doses, before drops were made whole."""

    expected: ShownLab
    """The color that the model expects."""

    fit: float
    """The greatest ΔE₀₀ between a test piece of these colorants and the model of it: the formula is no surer than that."""

    statement: str
    """How far to trust it, in words."""


class ColorNearestAnswer(TypedDict):
    """Formulas by how near they are."""

    calculate: Literal["color-nearest"]

    formulas: list[NearFormula]
    """Formulas of known color, the nearest first."""

    not_known: list[FormulaNotKnown]
    """Formulas of which no color is known, each with the reason."""

    statement: str
    """How far to trust it, in words."""

    text: list[str]
    """The answer in short lines."""


class ColorNextAnswer(TypedDict):
    """The next drops."""

    calculate: Literal["color-next"]

    add: list[ColorAddition]
    """What to add now; empty if nothing."""

    after: ShownDifference
    """Its difference to the target."""

    all_the_way: list[ColorAddition]
    """What would bring it all the way, if the model were right."""

    expected: ShownLab
    """The color that is expected once it is added."""

    expected_uncertainty: list[float]
    """Standard uncertainties of its L*, a* and b*."""

    more_base: Shown | None
    """Base to add first, if more base is needed; none if not even 20 such pots would do."""

    notes: list[Note]
    """What else to know of it."""

    now: ShownDifference
    """Difference to the target now."""

    statement: str
    """How far to trust it, in words."""

    stays_off: float
    """ΔE₀₀ that is expected to stay, whatever is added."""

    strengths: list[ColorStrength]
    """Strengths of the colorants in the cup, corrected by its samples."""

    text: list[str]
    """The answer in short lines."""

    through_after: ShownThrough | None
    """The same once it is added."""

    through_now: ShownThrough | None
    """Color of a piece of it now that light goes through, if its thickness was stated; `now` is for an opaque one."""

    too_much: str | None
    """The colorant that is too much already, if that is why more base is needed; else one drop of what is missing is
    too much."""

    verdict: Verdict
    """What to do."""


class ColorReadingAnswer(TypedDict):
    """A color as it was read."""

    calculate: Literal["color-reading"]

    color: ColorEntry
    """The color as books and requests take it, with its uncertainty next to readings taken in the same way; of a
    spectrum with its bands, so that other lights can be asked for."""

    curves: list[list[float]]
    """The camera's curve by the steps of the card, in red, green and blue, of each picture; 1 with one step."""

    hex: str | None
    """The same for a screen; none if no screen shows it."""

    lab: ShownLab
    """The color."""

    notes: list[Note]
    """What would make it better."""

    other_instrument: float
    """Standard uncertainty of each of L*, a* and b* next to readings of another camera or instrument."""

    statement: str
    """How far to trust it, in words."""

    text: list[str]
    """The answer in short lines."""


class ColorStrength(TypedDict):
    """Strength of a colorant as this cup has shown it, next to its test pieces."""

    common: Shown
    """Standard uncertainty that they have in common."""

    factors: list[float]
    """Factors on its effect in the red, the green and the blue."""

    material: str
    """Which."""

    own: Shown
    """Standard uncertainty of each by itself."""

    write: list[Change]
    """The change to the book that keeps it, to accept or not."""


class ColorantDrops(TypedDict):
    """The drops of one colorant."""

    beyond_let_downs: bool
    """Whether that is more than its strongest test piece, where nothing is calibrated."""

    colorant: str
    """Which."""

    dose: Shown
    """Their mass per mass of base."""

    drops: int
    """Whole drops, for the base of the request."""

    exact: Shown
    """The same before drops were made whole."""


class ConvertAnswer(TypedDict):
    """The amount in the unit that was asked for."""

    calculate: Literal["convert"]

    amount: str
    """As text that reads back: exactly where a decimal or a fraction over at most 1000 says it, else as `value`."""

    unit: str
    """The unit."""

    value: float
    """The number."""


class CoolingAnswer(TypedDict):
    """The setting of a shot."""

    calculate: Literal["cooling"]

    bound: bool
    """Whether it sets so fast that the time is too long: that of a Fourier number of 0.2."""

    cautions: list[Caution]
    """Dangers."""

    every: Shown | None
    """How often a shot can be made; none without the time at hand."""

    in_a_row: int | None
    """How often the mold can be shot in a row before it is too warm, nothing lost between; none where its mass is not
    given, or it goes on."""

    longest: Shown
    """The same with the lowest."""

    shortest: Shown
    """The same with the highest diffusivity of soft PVC."""

    time: Shown
    """How long it sets, the mold as warm as the shot leaves it."""

    warms: Shown | None
    """How much one shot warms the mold; none where its mass is not given."""


CoolsEntry = TypedDict("CoolsEntry", {
    # An embedding program's own data; carried through untouched.
    "ext": "NotRequired[dict[str, Any]]",
    # The first reading. Example: `"340 °F"`.
    "from": "MeasuredAmount",
    # How much was in it: a mass, or a volume cold and liquid. Example: `"2 cup"`.
    "mix": "Amount",
    # Temperature of the room then. Default: `room` of the oven. Example: `"72 °F"`.
    "room": "NotRequired[MeasuredAmount]",
    # Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    # `false`, a number that looks like a slip is refused. Example: `true`.
    "sure": "NotRequired[bool]",
    # The time between them. Example: `"150 s"`.
    "time": "MeasuredAmount",
    # The second reading. Example: `"320 °F"`.
    "to": "MeasuredAmount",
})
"""A pot that was watched to cool on the bench, stirred before each reading, from the second minute on."""


class CorrectAnswer(TypedDict):
    """A pot that came out wrong, and the ways to go on with it."""

    calculate: Literal["correct"]

    becomes: list[Becomes]
    """Other formulas of the book that it could become, the smallest addition first; empty if all is within tolerance."""

    cautions: list[Caution]
    """Dangers of adding to it."""

    cup: Shown
    """Maximum fill of the cup."""

    fault: Fault | None
    """Why the pot cannot be made right."""

    foreign: list[MaterialMass]
    """Materials that do not belong."""

    fresh_base: bool
    """Whether fresh base may go in."""

    hot: bool
    """Whether it is hot."""

    kept: KeptFormula
    """The mix in it as a formula, for the way that keeps it."""

    mass: Shown
    """Mass of the pot."""

    not_offered: list[Note]
    """Ways that are not offered, and why."""

    pot: list[PotMaterial]
    """The mix in the pot."""

    text: list[str]
    """The answer in short lines."""

    traces: list[MaterialMass]
    """Materials that do not belong, but are little enough to stay."""

    volume: Shown
    """Its volume, cold and liquid."""

    ways: list[RightWay]
    """The ways, the smallest additions first; keeping it as it is comes last."""

    write: list[Change]
    """The change to the book that saves it under the name of `save_as`; empty without one."""


class CostAnswer(TypedDict):
    """Its cost. `total` is `materials` − `credit` + `packing` + `work`, exactly."""

    calculate: Literal["cost"]

    credit: MoneyShown
    """Worth of the mix that comes back."""

    lines: list[MaterialCost]
    """Each material."""

    materials: MoneyShown
    """All materials, by what is used."""

    pack_price: MoneyShown | None
    """Price of a pack, for the margin that was stated."""

    packing: MoneyShown
    """Packing."""

    per_pack: MoneyShown
    """Of one pack."""

    per_piece: MoneyShown
    """Of one piece."""

    to_buy: MoneyShown
    """Whole packages of all materials, as if there were no stock."""

    total: MoneyShown
    """All of it."""

    work: MoneyShown
    """Work."""


class CostingEntry(TypedDict):
    """Cost of a day in addition to its materials."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    left_over_worth: NotRequired[Percent]
    """Worth of leftover in the cup and of sprues, as a share of what their materials cost. Default: 0 %. Example: `"60
    %"`."""

    margin: NotRequired[Percent]
    """Profit as a share of the price. Default: no prices are shown. Example: `"45 %"`."""

    notes: NotRequired[str]
    """Anything worth keeping with it. Default: none. Example: `"Prices before tax."`."""

    packing: NotRequired[list[PackingEntry]]
    """Contents of each pack besides the pieces. Default: nothing."""

    per_heat: NotRequired[MeasuredAmount]
    """Work on one heat. Default: none. Example: `"4 min"`."""

    per_pack: NotRequired[MeasuredAmount]
    """Work on packing one pack. Default: none. Example: `"40 s"`."""

    per_pot: NotRequired[MeasuredAmount]
    """Work on one pot: measuring, degassing, cleaning up. Default: none. Example: `"12 min"`."""

    per_shot: NotRequired[MeasuredAmount]
    """Work on one shot: filling, cooling, taking out, trimming. Default: none. Example: `"50 s"`."""

    rate: NotRequired[Price]
    """Price of work. Default: work is not counted. Example: `"18.00 USD per 1 h"`."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""


class CupEntry(TypedDict):
    """A cup."""

    brim: NotRequired[MeasuredAmount]
    """Volume up to its brim, above its highest mark; how full it may be under vacuum needs it, and a hot mix fills at
    most 95 % of it. Default: not known; for a hot mix, a fifth more than `holds`. Example: `"590 mL"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    film: NotRequired[MeasuredAmount]
    """Mass that stays on its wall when it has been poured out. Default: 0 g. Example: `"5 g"`."""

    heel: NotRequired[MeasuredAmount]
    """Mass that cannot be drawn from its bottom, the film included. Default: 0 g. Example: `"2 g"`."""

    holds: MeasuredAmount
    """Volume up to its highest mark. Example: `"2 cup"`."""

    marks: NotRequired[MeasuredAmount]
    """Step between its marks. Default: only the highest mark is used. Example: `"1/4 cup"`."""

    mass: NotRequired[MeasuredAmount]
    """Mass of the empty cup. State it for all cups and timings or for none. Default: its own heat is part of the oven's
    timings. Example: `"180 g"`."""

    specific_heat: NotRequired[MeasuredAmount]
    """Specific heat of the cup. Default: none; required with `mass`. Example: `"0.84 J/(g.K)"`."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""


class DayCost(TypedDict):
    """Cost of a day. `total` = `materials` + `from_shelf` − `credit` + `packing` + `work`, exactly, and is the sum over
    the lines."""

    credit: MoneyShown
    """Worth of what is left over at the end."""

    from_shelf: MoneyShown
    """Worth of the leftovers from the shelf."""

    lines: list[LineCost]
    """The order lines, in their order."""

    materials: MoneyShown
    """All materials, by what is used."""

    orders: list[OrderCost]
    """The orders, each in the place of its first line."""

    packing: MoneyShown
    """Packing."""

    text: str
    """Its parts, as a sentence."""

    to_buy: MoneyShown
    """Whole packages of all materials, as if there were no stock."""

    total: MoneyShown
    """All of it."""

    used: list[MaterialCost]
    """Materials used, by name."""

    work: MoneyShown
    """Work."""


class Degas(TypedDict):
    """How a pot is degassed."""

    absolute: Shown
    """Pressure left in the chamber; near the end of the dial, the middle of what it may be."""

    assumed: Note | None
    """Note that the factor is assumed, and what to do then; none if the book states the rise or the air."""

    at_most: Shown | None
    """Its maximum, near the end of the dial."""

    cup: Shown
    """Capacity of the cup to degas in, to its highest mark."""

    cup_name: str
    """Name of that cup: `4-cup cup`."""

    fill_mark: Shown
    """Maximum level to fill it to."""

    fills: int
    """Number of fills that the pot takes."""

    gauge: Shown
    """Reading of the gauge: the vacuum on a vacuum gauge, else the pressure left in the chamber."""

    gauge_off: Shown | None
    """Error of the vacuum gauge, if it shows more than the air here can give."""

    is_absolute: bool
    """Whether that is an absolute pressure."""

    level: Shown
    """Level of each, in equal parts."""

    rise: Shown
    """Factor by which the pot swells, if no bubble bursts."""

    swells_at: Shown | None
    """Its minimum by the dial, used to calculate the swelling if no rise was seen."""

    swollen: Shown
    """Volume that each swells to."""


class DegasAnswer(TypedDict):
    """A pot in the vacuum, if no bubble bursts on the way: by the rise that was seen, or else by `entrained` at the
    `least` pressure that the dial's tolerance allows."""

    calculate: Literal["degas"]

    absolute: Shown
    """Pressure left in the chamber; where the dial is too near its end, the middle between `least` and `most`."""

    assumed: Note | None
    """That the rise is assumed, and what to do then; absent where the rise or the air is given."""

    cautions: list[Caution]
    """Dangers."""

    entrained: Shown
    """Share of air in the pot before the vacuum."""

    fill_mark: Shown | None
    """The level to fill the given vessel to at most, bubbles included."""

    fills: int | None
    """Number of fills of the given vessel."""

    gauge_off: Shown | None
    """How far the gauge must be off, since the air does not give what it shows."""

    least: Shown
    """Lowest pressure that the dial's tolerance allows: 0 where the dial is too near its end."""

    level: Shown | None
    """Level of each fill, shared out evenly."""

    most: Shown
    """Highest pressure that it allows."""

    standing: Shown
    """Volume before the vacuum, bubbles included."""

    swollen: Shown
    """Volume in the vacuum."""

    vessel: Shown
    """The vessel that takes it at once, to the brim."""


class DoseAnswer(TypedDict):
    """Mass of the amount."""

    calculate: Literal["dose"]

    mass: Shown
    """Its mass."""

    pharmacy_drop: bool
    """Whether it rests on the pharmacy's drop of 1/20 mL and not on the shop's own."""


class Doubt(TypedDict):
    """Uncertainty of a measure."""

    main_source: str
    """Main source of the uncertainty."""

    uncertainty: Shown
    """Relative standard uncertainty of what it gives, against the dose in the measure that the formula is written in."""


class Draw(TypedDict):
    """Shots into one mold at one stage."""

    layer: int | None
    """Which layer of their pieces it makes, counted from 1; none as with `line`."""

    line: int | None
    """The first of the order lines that it is for, counted from 1. None in a plan that was stored before this was in
    it."""

    loads: int
    """Injector loads."""

    mold: str
    """The mold."""

    per_shot: Shown
    """Mass of one shot, sprue included."""

    pieces: list[Pieces]
    """The pieces, by shape."""

    share: Shown
    """The layer's share of the cavity, below 1 in a laminated piece."""

    shots: int
    """Shots needed for the orders."""

    shots_per_load: int
    """Whole shots in a load."""

    spare_shots: int
    """Further shots that the rest of the pot gives."""

    sprue: Shown
    """Mass of the sprue of one shot."""

    together_with: list[str]
    """The other pots of a laminated piece, shot at the same time."""


class DrawRecord(TypedDict):
    """Shots into a mold."""

    mold: str
    """The mold."""

    per_shot: Shown
    """Mass of one shot, sprue included: by the mix as made, its pieces at the mean of those weighed."""

    pieces: list[PieceRecord]
    """The pieces, by shape."""

    planned_shots: int
    """Shots planned."""

    share: Shown
    """The layer's share of the cavity, below 1 in a laminated piece."""

    shots: int
    """Shots made."""

    took: Shown | None
    """Time from the first shot to the last, if timed."""


class DrawThereEntry(TypedDict):
    """Shots that a pot was begun for."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    layer: NotRequired[int]
    """The layer of a laminated piece that they make, counted from 1. Default: 1. Example: `2`."""

    line: int
    """An order line that they are for, counted from 1. Example: `2`."""

    shots: int
    """Their number. Example: `6`."""


class Fault(TypedDict):
    """One thing that is wrong with an input."""

    code: str
    """Stable code in kebab case."""

    help: str
    """The fix."""

    message: str
    """The finding."""

    path: str
    """Where it is: a JSON Pointer (RFC 6901) into the document, empty for the whole input."""


class FishedWaterEntry(TypedDict):
    """Water that a piece sinks in."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    salinity_absolute: NotRequired[MeasuredAmount]
    """Its absolute salinity, mass of salt per mass of water; give this or the practical one. Default: 0, fresh water.
    Example: `"35 g/kg"`."""

    salinity_practical: NotRequired[float]
    """Its practical salinity, as a probe reads it. Default: 0, fresh water. Example: `35`."""

    temperature: MeasuredAmount
    """Its temperature. Example: `"60 °F"`."""


class FlakeAnswer(TypedDict):
    """Particles and area of the dose, by the nominal size of the cut."""

    calculate: Literal["flake"]

    cut: str
    """The cut as it was read."""

    mass: Shown
    """Mass of the dose."""

    particles: float
    """Particles in the dose."""

    per_gram: float
    """Particles in a gram."""

    per_piece: float | None
    """Particles in a piece."""

    shape_assumed: bool
    """Whether its shape is taken to be a hexagon, the text naming none."""

    swap: FlakeSwap | None
    """Dose of the other flake in its place."""


class FlakeCount(TypedDict):
    """The flakes of one material in a piece."""

    count: float
    """Approximate number, from the nominal size of its cut."""

    material: str
    """The flake."""


class FlakeSwap(TypedDict):
    """A dose of another flake."""

    area: Shown
    """Its film area over that of the first dose."""

    count: Shown
    """Its particles over those of the first dose."""

    cut: str
    """Its cut as it was read."""

    mass: Shown
    """Mass to weigh."""

    scoop: Shown | None
    """Volume to scoop, level, if its bulk density is known."""


class FormulaAnswer(TypedDict):
    """A recipe and the mix that it makes."""

    calculate: Literal["formula"]

    density: Shown
    """Density of the finished plastic at 20 °C."""

    mass: Shown
    """Mass of the mix."""

    parts: list[RecipePart]
    """Materials to mix."""

    volume: Shown
    """Its volume cold and liquid."""


class FormulaEntry(TypedDict):
    """A formula: doses per amount of base."""

    base: NotRequired[BaseEntry]
    """The base: a plastisol, or a blend of plastisols with an amount each, `{ "soft": "3 cup", "hard": "1 cup" }`.
    Default: that of the formulas it is combined with, else `default_base`. Example: `"clear-base"`."""

    color: NotRequired[ColorEntry]
    """Color that a piece of it had. Default: not known."""

    doses: dict[str, Amount]
    """Doses by material, as you measure them. Example: `{ "plum": "32 drops", "teal-flake": "1/2 tsp" }`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    notes: NotRequired[str]
    """Anything worth keeping with it. Default: none. Example: `"The unsalted body."`."""

    per: NotRequired[Amount]
    """Amount of base that the doses are for. Default: none; required unless every dose is a per cent. Example: `"1
    cup"`."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""


class FormulaNotKnown(TypedDict):
    """A formula of which no color is known."""

    formula: str
    """Which."""

    why: str
    """Why, and what would do."""


class Found(TypedDict):
    """What weighed pieces show of their mold, once the mix is known."""

    cavity: str | None
    """The cavity, as a book writes it; none unless the pieces show that it is not the one of the book."""

    expected: Shown
    """Mass of one by the mix as made."""

    feed: Shown | None
    """Feed share of a mold whose book has none, if it is sure enough."""

    feed_uncertainty: Shown | None
    """Its standard uncertainty."""

    mold: str
    """The mold."""

    off: Shown
    """How far their mean is off that."""

    off_uncertainty: Shown
    """Standard uncertainty of this: from weights, density and cavity."""

    pieces: int
    """How many were weighed."""

    planned: Shown
    """Mass of one as planned."""

    pots: list[str]
    """The pots that they were shot from."""

    shape: str | None
    """The shape, in a mold with unlike cavities."""

    text: str
    """All of this as a sentence or two."""

    weighs: Shown
    """Their mean."""


class FromShelf(TypedDict):
    """Leftovers that go into a pot."""

    brings: list[MaterialMass]
    """Mass of each material in them."""

    heats: int | None
    """Heats of the one that was heated most often, which count for the whole pot; none if not known of one of them."""

    left_overs: list[ShelfPart]
    """The leftovers, by name."""

    off: list[Off]
    """How far they take each material from its formula; the weigh list allows for it."""


class GoOnAnswer(TypedDict):
    """The rest of a day: a new plan from the pots that are there and what is still owed."""

    calculate: Literal["go-on"]

    changes: list[Note]
    """Changes and their reasons, each a sentence."""

    kept: list[str]
    """Ids of the steps' items that are as before: a tick at them holds."""

    lines: list[LineNow]
    """The lines of `orders_now`, in their order; else those of the plan before."""

    not_made: list[NotMade]
    """Pieces that are owed but cannot be made."""

    plan: Plan | None
    """The plan for the rest of the day, complete with the orders that it was made from; none if nothing is left to
    make."""

    so_far: SoFarEntry | None
    """Pieces that are made and what was used of the list `orders_now`: `so_far` of the next request, which goes on with
    the new plan. None without `orders_now`."""


class GoesIn(TypedDict):
    """When and how a material goes into the pot."""

    portions: int
    """In how many portions, each stirred in before the next."""

    stated: bool
    """Whether the book states it; else common practice for the kind."""

    when: Adding
    """Before the pot is heated for the stage, or after it."""


class HardnessAnswer(TypedDict):
    """A ratio and the hardness that goes with it."""

    calculate: Literal["hardness"]

    ratio: Shown
    """Mass of softener or hardener per mass of base."""

    reading: float
    """The reading."""

    scale: Scale
    """Its scale."""


HeatAnswer = TypedDict("HeatAnswer", {
    "calculate": 'Literal["heat"]',
    # The table of readings, the coldest band first. The last band ends where shooting begins.
    "bands": "list[HeatBand]",
    # How far the amount is outside those that were timed, as a factor.
    "beyond": "Shown | None",
    # How many bursts are expected.
    "bursts": "int",
    # Dangers.
    "cautions": "list[Caution]",
    # The temperature that it begins at, cooled as long as it stood.
    "from": "Shown",
    # Whether nothing was timed: all of this follows from the rated power, a first guess.
    "guess": "bool",
    # Mass that is heated, all cups together.
    "load": "Shown",
    # How much more power than expected the bursts allow for.
    "margin": "Shown",
    # Why there is no time.
    "no_time": "str | None",
    # The power that reaches mix and vessel.
    "power": "Shown",
    # Its standard uncertainty for one more heating.
    "power_uncertainty": "Shown",
    # Question about the timings: one does not fit the others, or ends far above the window. It counts all the same.
    "questioned": "str | None",
    # The setting of the oven that all of this holds for, as a share of full power.
    "setting": "Shown",
    # Shoot from this reading on.
    "shoot_from": "Shown",
    # Shoot up to this reading; above it, stop and let the pot cool.
    "shoot_to": "Shown",
    # How long it takes to the aim, without a break; none where it is hot already, or the amount too far from those
    # that were timed.
    "time": "Shown | None",
    # How long the oven is expected to run in them altogether.
    "total": "Shown",
    # Its standard uncertainty for one more heating.
    "uncertainty": "Shown | None",
})
"""A heating."""


class HeatBand(TypedDict):
    """A line of the table of readings: below this reading, run the oven for this time; then stir and read again."""

    at_most: Shown
    """The hottest possible reading after it, from the top of the band."""

    below: Shown
    """Upper end of the band; it begins where the band before ends."""

    burst: Shown
    """Time that the oven runs."""

    expected: Shown
    """The expected reading after it, from the top of the band."""


class HeatHistoryAnswer(TypedDict):
    """Heat of the pot. Without a budget only the heat spent is known."""

    calculate: Literal["heat-history"]

    budget: Shown | None
    """Time that the plastisol withstands with its stabilizer."""

    cautions: list[Caution]
    """Dangers."""

    equivalent: Shown
    """This heat, as time at the reference temperature."""

    heats: int
    """All heats, this one included."""

    left: Shown | None
    """The part of it that is left."""

    over: Shown | None
    """Heat spent beyond it."""

    spent: Shown | None
    """Heat spent by all of them; unknown if earlier heats were not counted."""


class HeatSpent(TypedDict):
    """Heat that a pot spends of its budget, as time at one temperature."""

    at: Shown
    """Reference temperature of the times."""

    before: Shown | None
    """The part of it spent before, by the leftover that was heated most; none without one."""

    budget: Shown
    """Time that the pot withstands."""

    left: Shown
    """Time that is left."""

    material: str
    """The plastisol that has least left."""

    more_stabilizer_not_counted: bool
    """Whether there is more stabilizer than the material's figure is stated for; the excess is not counted."""

    needs: MaterialMass | None
    """Additional stabilizer, from the start, with which the pot would withstand it; none if no dose is known that does."""

    over: Shown | None
    """Time spent beyond the budget."""

    spent: Shown
    """Time that its heats spend, each held at its aim from the last burst to the last shot, and that its leftovers had
    spent before. It counts for what is left of the pot."""


HeatTimed = TypedDict("HeatTimed", {
    # Whether it was the first heat of the pot, from cold; else a reheat.
    "first": "bool",
    # The reading before.
    "from": "Shown | None",
    # Mass in the pot then; none at a reheat between shots.
    "mass": "Shown | None",
    # Setting, as a share of full power; none: the oven's usual one.
    "setting": "Shown | None",
    # How long the oven ran.
    "time": "Shown",
    # The reading after.
    "to": "Shown | None",
})
"""A heat as it was timed."""


class Heats(TypedDict):
    """Heats of a pot, and the heat that its stabilizer still withstands."""

    budget: Calculated5 | None
    """Heat spent and left, if the book states a budget."""

    count: int
    """Number of its heats, reheats between shots included."""

    in_all: int | None
    """The same with the heats of the leftover in it that was heated most often; none if that is not known. They count
    for the mix that is left of the pot."""


class HookEntry(TypedDict):
    """Hook and weight on a piece."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    mass: MeasuredAmount
    """Their mass. Example: `"1.1 g"`."""

    volume: MeasuredAmount
    """The volume that they displace. Example: `"0.14 mL"`."""


class InPot(TypedDict):
    """The mix in a pot that is there when the plan is made."""

    accepted: bool | None
    """Whether that counts as its formulas, however far off it is; none if not."""

    degassed: bool
    """Whether it has been degassed."""

    fills: Shown
    """Its volume cold and liquid."""

    heats: int | None
    """Number of heats behind it; none if not known."""

    hot: bool
    """Whether it is hot."""

    mass: Shown
    """Its mass."""

    parts: list[MaterialMass]
    """Mass of each material in it."""

    spent: Shown | None
    """Heat used in these, at the temperature of its plastisol's budget; none if not known."""


class InjectorEntry(TypedDict):
    """The injectors: all alike."""

    count: NotRequired[int]
    """Number of injectors; a laminate of two layers needs two. Default: 1. Example: `2`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    holds: MeasuredAmount
    """Largest volume that one takes up. Example: `"4 fl oz"`."""

    keeps: NotRequired[MeasuredAmount]
    """Volume that stays in it and is lost at each cleaning or cold stop. Default: 0 mL. Example: `"4 mL"`."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""


class Jar(TypedDict):
    """A leftover for the shelf."""

    heats: int | None
    """Number of heats behind it; none if not known."""

    mass: Shown
    """Its mass: what was left in the cup, and sprues of the same mix."""

    name: str
    """The name to write on it."""

    parts: list[MaterialMass]
    """Mass of each material in it."""

    pot: str
    """The pot that it is of."""

    spent: Shown | None
    """Heat that they spent, as time at the temperature of its plastisol's budget; none if not known."""

    sprues: Shown
    """The sprues in it."""


class KeptFormula(TypedDict):
    """A pot as a formula."""

    body: list[str]
    """The formulas of the book that are the body in it; none if it is the default base alone, or `own_body`."""

    color: FormulaEntry | None
    """The color alone; none if there is no color in it."""

    overlap: Overlap
    """Rule to combine color and body with."""

    own_body: FormulaEntry | None
    """The body in it, if the book does not have it."""

    per: Amount
    """Amount of base that the doses are for."""


class LayerEntry(TypedDict):
    """One color of a laminated piece."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    formulas: list[Name]
    """Its formulas: a color and a body. Example: `["reed", "plain"]`."""

    overlap: NotRequired[Overlap]
    """Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`."""

    share: Percent
    """Its share of the cavity and the sprue; the shares of a piece add up to 100 %. Example: `"60 %"`."""


LearnAnswer = TypedDict("LearnAnswer", {
    "calculate": 'Literal["learn"]',
    # Changes to the book, each by itself.
    "changes": "list[BookChange]",
    # What the days confirm: the estimate is within the ± of the book's value.
    "confirmed": "list[str]",
    # Number of days that count.
    "days": "int",
    # The first of them; none if no day counts.
    "from": "str | None",
    # What the days do not say yet: fewer than four of them, or readings that cannot be used.
    "not_yet": "list[str]",
    # Days and trends to look at. They are in the estimates: nothing is dropped.
    "questions": "list[BookQuestion]",
    # The last of them: give it as `after` next time, so that no day counts twice.
    "to": "str | None",
})
"""What the records say about the book: changes to accept one by one, and what to look at."""


class LeftoversAnswer(TypedDict):
    """Use of the shelf."""

    calculate: Literal["leftovers"]

    notes: list[Note]
    """Notes on the day's plan."""

    pots: list[PotLeftOvers]
    """The pots that take of it."""

    shelf: list[OnShelf]
    """The shelf, and what stays on it."""

    used: Shown
    """All that is used."""


class LetDownEntry(TypedDict):
    """A test piece of base with one colorant."""

    base_mass: MeasuredAmount
    """In how much base. Example: `"50 g"`."""

    color: ColorEntry
    """Color of the piece, thick enough to hide what is behind it."""

    dose: Amount
    """How much colorant. Example: `"20 drops"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""


class LetDownSeriesAnswer(TypedDict):
    """Test pieces to pour."""

    calculate: Literal["let-down-series"]

    pieces: list[TestPieceToPour]
    """The pieces, the base alone first."""

    statement: str
    """How far to trust it, in words."""

    text: list[str]
    """The answer in short lines."""


class LimitsEntry(TypedDict):
    """How the shop works."""

    confidence: NotRequired[Percent]
    """Confidence that enough good pieces come out. Default: 90 % (common practice, no source). Example: `"95 %"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    fresh_base: NotRequired[bool]
    """Whether base may be added to a pot that has been drawn from. Default: `false`. Example: `true`."""

    heats: NotRequired[int]
    """Number of heats that the stabilizer allows a pot. Default: not limited. Example: `3`."""

    least_pot: NotRequired[MeasuredAmount]
    """Smallest pot that the oven heats evenly. Default: no limit. Example: `"1/2 cup"`."""

    most_full: NotRequired[Percent]
    """How full a cup may be, as a share of what it holds to its highest mark. Default: 100 %. Example: `"80 %"`."""

    rejects: NotRequired[Percent]
    """Share of pieces that are not fit to sell. Default: 0 %. Example: `"3 %"`."""

    solids: NotRequired[Percent]
    """Largest share of solids in a mix, by true volume. Default: 30 % (common practice, no source). Example: `"20 %"`."""

    sprues: NotRequired[Sprues]
    """Use of the sprues. Default: `"keep"`. Example: `"melt-again"`."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""

    tolerance: NotRequired[Percent]
    """Largest relative error of a dose, unless its material states another. Default: 5 % (common practice, no source).
    Example: `"3 %"`."""

    water: NotRequired[FishedWaterEntry]
    """Water to calculate sink rates in. Default: none; no sink rates are shown."""


class LineCost(TypedDict):
    """Cost of an order line."""

    materials: MoneyShown
    """Its part of the pots' plastic."""

    packing: MoneyShown
    """Its packing; zero if it is not sold by the pack."""

    per_pack: MoneyShown | None
    """Of one pack, if sold by the pack."""

    per_piece: MoneyShown
    """Of one piece."""

    price: MoneyShown | None
    """Price with the margin of the book: of one pack if sold by the pack, else of one piece."""

    total: MoneyShown
    """All of it."""

    work: MoneyShown
    """Its part of the work."""


class LineNow(TypedDict):
    """An order line by now."""

    line: int | None
    """Its place in the lines of the new plan, counted from 1; none if the plan does not make any of it."""

    made: int
    """Its pieces that are made."""

    owed: int
    """Its pieces that are still owed."""


class MadeFrom(TypedDict):
    """A book and an order list: all that a plan is made from."""

    book: BookDocument
    """The shop's book."""

    orders: OrdersDocument
    """The order list."""


class MadePart(TypedDict):
    """A material of a stage as it was made."""

    added: Shown
    """Mass that went in at this stage."""

    dose: str
    """Its dose in the measure that was used, for the amount of base that the formula is for."""

    kind: Kind
    """Its purpose."""

    mass: Shown
    """Mass of it in the pot then."""

    material: str
    """Which."""

    of_base: Shown
    """Mass per mass of base; of a base, its share."""

    off: Shown | None
    """How far it is off the plan; none where the plan has nothing of it."""

    stated: bool
    """Whether that was stated; else it is what the sheet said."""


class MaterialCost(TypedDict):
    """Cost of a material."""

    cost: MoneyShown
    """The price of that much."""

    mass: Shown
    """How much of it is used; of a day, what goes in fresh."""

    material: str
    """Which."""

    packages: int
    """Whole packages that hold it."""

    to_buy: MoneyShown
    """Cost of these."""


class MaterialEntry(TypedDict):
    """A material. Omit what you do not know; a calculation that needs it says so."""

    activation_energy: NotRequired[Sourced]
    """Activation energy of its decay in the heat, with its source; the heat used needs it. Default: not known. Example:
    `{ "value": "135 kJ/mol", "source": "supplier's sheet" }`."""

    add: NotRequired[Adding]
    """When it goes into the pot: `"cold"`, before the pot is heated, or `"hot"`, after it. Default: by kind (common
    practice, no source), salt, flake and scent hot, all else cold. Example: `"hot"`."""

    as_scooped: NotRequired[Sourced]
    """Density of the powder in a level spoon; pearl, flake and salt need it to be measured by spoon. Default: not
    known; a powder is then weighed. Example: `"1.22 g/mL ± 0.06"`."""

    budget: NotRequired[BudgetEntry]
    """Of a plastisol: the heat that it withstands. Default: not known."""

    buys: NotRequired[BuysEntry]
    """Of a stabilizer: the heat that more of it buys. Default: none."""

    color: NotRequired[ColorEntry]
    """Of a plastisol: color of a test piece of it alone, thick enough to hide what is behind it. Default: not known;
    colors are then not calculated in it."""

    cut: NotRequired[Cut]
    """Of a flake: its cut. Default: not known. Example: `".035 hex"`."""

    density: NotRequired[Sourced]
    """True density at 20 °C; of a plastisol, that of the liquid. Default: not known. Example: `"1.03 g/mL ± 0.01"`."""

    drop: NotRequired[SourcedDrop]
    """Mass or volume of one drop from the shop's bottle. Default: 0.05 mL (20 drops per mL, pharmacy practice), and
    less sure. Example: `"0.044 g ± 0.003"`."""

    expansion: NotRequired[Sourced]
    """Thermal expansion by volume, per kelvin. Default: none, so that shots come out a little heavy, and results say
    so. Example: `"6.5e-4 1/K"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    fluorescent: NotRequired[bool]
    """Of a colorant: whether it glows in daylight. It is then outside of the model of colors, with or without test
    pieces. Default: `false`. Example: `true`."""

    fused: NotRequired[Sourced]
    """Density of the fused plastisol at 20 °C. Default: `density`, and results say so. Example: `"1.042 g/mL ± 0.008"`."""

    grain: NotRequired[Sourced]
    """Of a salt: the opening of a sieve that its grains just pass; how fast it settles needs it. Default: not known.
    Example: `"0.3 mm"`."""

    hardness: NotRequired[MeasuredHardnessEntry]
    """Of a softener or hardener: readings of the shop's own pieces by how much of it is in them. Default: not known;
    how much to add to a pot that is too thick or too soft is then not calculated."""

    kind: Kind
    """Purpose of the material. Example: `"plastisol"`."""

    let_downs: NotRequired[list[LetDownEntry]]
    """Of a colorant: its test pieces, at two or more doses, each in the base that the book has by default. Default:
    none; it is then not in the calculation of colors."""

    like: NotRequired[Name]
    """Row of the starter table that fills in the properties omitted here. Default: none. Example: `"sodium-chloride"`."""

    most: NotRequired[MostDose]
    """Largest dose of it that does no harm, per amount of base: in a pot that came out wrong, more than the formula's
    is no fault up to it. Default: none; a surplus counts as a fault. Example: `"3 tsp per 1 cup"`."""

    name: NotRequired[str]
    """Its full name. Default: none. Example: `"clear plastisol, medium"`."""

    notes: NotRequired[str]
    """Anything worth keeping with it. Default: none. Example: `"Shake; the pigment settles."`."""

    over_backings: NotRequired[OverBackingsEntry]
    """Of a plastisol: a thin test piece of it alone over white and over black; colors of translucent pieces are
    calculated with it. Default: not known; all pieces are then taken to be opaque."""

    price: NotRequired[Price]
    """Price per package. Default: not known. Example: `"58.00 USD per 1 gal"`."""

    shot_window: NotRequired[list[MeasuredAmount]]
    """Lowest and highest temperature at which it is shot. Default: not known; shots are then calculated at 20 °C, and
    results say so. Example: `["325 °F", "350 °F"]`."""

    specific_heat: NotRequired[Sourced]
    """Specific heat; with `specific_heat_rise`, that at 25 °C. Default: that of the rest of the pot; required of the
    plastisol that the oven was timed with. Example: `"1.9 J/(g.K)"`."""

    specific_heat_rise: NotRequired[Sourced]
    """Rise of the specific heat per kelvin, as a share of that at 25 °C. Default: 0 1/K, constant. Example: `"0.0012
    1/K"`."""

    strength: NotRequired[StrengthEntry]
    """Of a colorant: its strength as pots have shown it, next to its test pieces; "color-next" offers it. Default: 1 ±
    10 % in all, ± 5 % of each (common practice, no source)."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""

    thickness: NotRequired[MeasuredAmount]
    """Of a flake: thickness of its film. Default: not known. Example: `"50 um"`."""

    tolerance: NotRequired[Percent]
    """Largest relative error of a dose of it. Default: `tolerance` of the limits. Example: `"2 %"`."""

    viscosity: NotRequired[list[MeasuredAmount]]
    """Of a plastisol: lowest and highest viscosity at shot temperature; how fast salt settles needs it. Default: not
    known. Example: `["0.3 Pa.s", "3 Pa.s"]`."""


class MaterialMass(TypedDict):
    """A mass of a material."""

    mass: Shown
    """Its mass."""

    material: str
    """Which material."""


class MeasureAnswer(TypedDict):
    """Ways to measure a mass."""

    calculate: Literal["measure"]

    best: Way
    """The way to take: in the measure that the dose is written in, or another where that is surer. Where none keeps the
    tolerance, the nearest that the bench can do."""

    beyond: Note | None
    """Why none keeps the tolerance, and what would do; absent where one does."""

    others: list[Way]
    """The others that keep it."""

    wanted: str
    """The dose, as text."""


class MeasuredAndWeighed(TypedDict):
    """An amount of a material that was measured, and that the scale showed a mass for."""

    by_book: Shown
    """Mass of that by the book."""

    drops: float | None
    """The number of drops, if it was measured by drops."""

    material: str
    """The material."""

    measured: str
    """As measured, by the person or by the sheet: `34 drops`, `1 tsp + 1/4 tsp`."""

    volume: Shown | None
    """The volume by spoons or cup, level, if it was measured by volume."""

    weighed: Shown
    """What the scale showed."""


class MeasuredHardnessEntry(TypedDict):
    """Readings of the shop's own pieces by how much of a softener or hardener is in them."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    points: list[MeasuredPointEntry]
    """The measured points, by rising ratio; two at least, the readings rising or falling all the way."""

    scale: Name
    """The scale of the readings: `"shore-00"`, `"shore-a"`, or a name of the shop's own. Example: `"squeeze, 1 soft to
    5 stiff"`."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""


class MeasuredPointEntry(TypedDict):
    """A reading."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    point_hardness: float
    """The reading, 0 to 100. Example: `4`."""

    point_ratio: Share
    """Softener or hardener in the piece, by mass of base. Example: `"5 %"`."""


class MixAnswer(TypedDict):
    """The properties of a mix."""

    calculate: Literal["mix"]

    density: Shown
    """Its density there, voids counted."""

    mass: Shown
    """Its mass."""

    parts: list[MixPart]
    """Its parts, by material."""

    volume: Shown
    """Its volume at the temperature asked for, without voids."""


class MixPart(TypedDict):
    """One material of a mix."""

    mass_fraction: Shown
    """Its share of the mass."""

    material: str
    """Which."""

    parts_per_hundred: float | None
    """Its parts per hundred parts of base, by mass, where there is a base."""

    volume_fraction: Shown
    """Its share of the volume at 20 °C."""


class MoldCoolingEntry(TypedDict):
    """How a shot cools in its mold, for the time that it sets."""

    at: NotRequired[MeasuredAmount]
    """Temperature of the mold when it is shot. Default: 30 °C (common practice, no source). Example: `"90 °F"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    mass: NotRequired[MeasuredAmount]
    """Mass of the mold. Default: so heavy that a shot does not warm it. Example: `"1.2 kg"`."""

    of: NotRequired[MoldMaterial]
    """The material of the mold; give a plaster or silicone mold its `sets`. Default: `"metal"`. Example: `"metal"`."""

    section: NotRequired[SectionEntry]
    """The thickest part of a piece. Default: its `body`."""

    specific_heat: NotRequired[MeasuredAmount]
    """Specific heat of the mold. Default: 0.897 J/(g.K), aluminum. Example: `"0.897 J/(g.K)"`."""

    take_out: NotRequired[MeasuredAmount]
    """Temperature at the center of a piece when it is taken out. Default: 50 °C (common practice, no source). Example:
    `"120 °F"`."""


class MoldEntry(TypedDict):
    """A mold: what one shot fills."""

    body: NotRequired[BodyEntry]
    """Shape of a piece, for its sink rate; unlike cavities each state their own. Default: not known; no sink rate is
    shown."""

    cavities: CavitiesEntry
    """Number of like cavities, or unlike ones by shape. Example: `4`."""

    cavity: NotRequired[CavityVolume]
    """Volume of one cavity, or the water that it holds: `{ "water": "9.47 g", "at": "22 °C" }`. Default: none; required
    unless the cavities are unlike. Example: `"9.5 mL ± 0.1"`."""

    cooling: NotRequired[MoldCoolingEntry]
    """How a shot cools in it, if `sets` is not stated. Default: not known."""

    count: NotRequired[int]
    """Number of such molds, shot in turn. Default: 1. Example: `2`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    feed: NotRequired[Percent]
    """Share of its contraction that a piece draws from the sprue while it cools. Default: not known; a piece then has a
    range of weights. Example: `"60 %"`."""

    hook: NotRequired[HookEntry]
    """Hook and weight on a piece. Default: none."""

    notes: NotRequired[str]
    """Anything worth keeping with it. Default: none. Example: `"A straight worm of five inches."`."""

    per_shot: NotRequired[MeasuredAmount]
    """Time at hand for a shot: fill, shoot, top off, take out. Default: `per_shot` of the costing. Example: `"40 s"`."""

    rejects: NotRequired[Percent]
    """Share of pieces that are not fit to sell. Default: `rejects` of the limits. Example: `"5 %"`."""

    sets: NotRequired[MeasuredAmount]
    """Time from the shot until the piece can be taken out, as the shop has seen it. Default: from `cooling`. Example:
    `"4 min"`."""

    sprue: NotRequired[MeasuredAmount]
    """Volume of the sprue of one shot. Default: 0 mL. Example: `"6 mL"`."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""

    top: NotRequired[MeasuredAmount]
    """Mass that topping off and holding add to each shot. Default: 0 g. Example: `"0.5 g"`."""

    voids: NotRequired[Percent]
    """Share of air in the shot plastic. Default: 0 %. Example: `"1 %"`."""


class MoldRecord(TypedDict):
    """Yield of a mold, over all shots whose pieces were counted."""

    good: int
    """Pieces that are fit to sell."""

    made: int
    """Pieces made."""

    mold: str
    """The mold."""

    rejects: Shown
    """Share of rejects."""

    rejects_from: Shown
    """Lower bound of the reject rate, 95 % sure."""

    rejects_to: Shown
    """Upper bound of the reject rate, 95 % sure."""


class MoneyShown(TypedDict):
    """A sum of money."""

    amount: str
    """The sum in the calculation, in steps of 0.000 001: decimal text, which no reader rounds."""

    currency: str
    """The currency's ISO 4217 code."""

    figure: str
    """The same without its currency, for a column that names that once."""

    text: str
    """Rounded to the currency's minor unit, half away from zero, as a bill shows it."""


class NearFormula(TypedDict):
    """A formula and how near it is."""

    color: ShownLab
    """Its color."""

    difference: ShownDifference
    """Its difference."""

    formula: str
    """Which."""

    notes: list[Note]
    """What to know of it."""

    through: ShownThrough | None
    """Its color as a piece that light goes through, if a thickness was stated and it can be calculated."""

    was_seen: bool
    """Whether a piece of it was seen; otherwise its color is calculated from test pieces."""


class NextBurstAnswer(TypedDict):
    """What to do with a pot that shows this reading."""

    calculate: Literal["next-burst"]

    at_most: Shown | None
    """The hottest possible reading after it. None of a plan that an older version stored."""

    burst: Shown | None
    """How long the oven runs."""

    cautions: list[Caution]
    """Dangers."""

    expected: Shown | None
    """The expected reading after it, at most: from the upper end of its band. None of a plan that an older version
    stored."""

    go: AtReading
    """What to do."""

    hot_from: Shown | None
    """The pot is hot from this reading on."""

    hot_to: Shown | None
    """And up to this one; above it, stop and let it cool."""

    item: str | None
    """The item of the step that this does; none while the pot cools."""

    other: NotRequired[str | None]
    """The sentence on the other scale, where it is not the same."""

    pot: str
    """The pot's letter."""

    reading: Shown
    """The reading, on the scale of the book."""

    scale: NotRequired[TextScale | None]
    """The scale of the sentence, where it reads otherwise on the other one."""

    text: str
    """The same in a sentence."""


class NotMade(TypedDict):
    """Pieces that are owed but cannot be made."""

    because: str
    """The reason, as a sentence."""

    order: str
    """The order."""

    pieces: int
    """Their number."""

    what: str
    """The product's name, or its formulas."""


class Note(TypedDict):
    """Something that a reader must know of a result."""

    code: str
    """Stable code in kebab case."""

    message: str
    """The sentence."""


class Off(TypedDict):
    """How far a material is from its formula."""

    material: str
    """Which material."""

    off: Shown
    """The difference, as a share of what the formula needs."""


class OnShelf(TypedDict):
    """A leftover on the shelf."""

    ext: dict[str, Any] | None
    """Data of the embedding program on it."""

    had: Shown
    """Its mass before the day."""

    made: str | None
    """The day it was made."""

    name: str
    """Its name."""

    pots: list[str]
    """The pots that it goes into."""

    stays: Shown
    """Mass that stays on the shelf."""

    used: Shown
    """Mass that goes into pots."""


class OrderCost(TypedDict):
    """Cost of an order."""

    order: str
    """The order."""

    price: MoneyShown | None
    """Its lines at their prices."""

    total: MoneyShown
    """Cost of its lines."""


class OrderLine(TypedDict):
    """One line of an order: a `product`, or a `mold` with `formulas` or `layers`; and either `pieces` or `packs`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    formulas: NotRequired[list[Name]]
    """Formulas of a piece of one color. Default: none. Example: `["dusk", "plain"]`."""

    layers: NotRequired[list[LayerEntry]]
    """Layers of a laminated piece. Default: none."""

    mold: NotRequired[Name]
    """A mold of the book. Default: none; required without `product`. Example: `"finger-5"`."""

    order: Name
    """The order it belongs to. Example: `"31"`."""

    overlap: NotRequired[Overlap]
    """Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`."""

    pack_of: NotRequired[int]
    """Number of pieces in a pack. Default: none; required with `packs`. Example: `6`."""

    packs: NotRequired[int]
    """Number of packs. Default: none; required without `pieces`. Example: `4`."""

    pieces: NotRequired[int]
    """Number of pieces. Default: none; required without `packs`. Example: `24`."""

    product: NotRequired[Name]
    """A product of the book. Default: none; required without `mold`. Example: `"dusk finger"`."""

    promised: NotRequired[str]
    """The day it was promised for, as YYYY-MM-DD. Default: not known. Example: `"2027-03-04"`."""

    shape: NotRequired[Name]
    """The shape, in a mold with unlike cavities. Default: none; required there. Example: `"long"`."""


class OrdersDocument(TypedDict):
    """A day's orders."""

    about: NotRequired[str]
    """Anything a reader should know about it. Default: none. Example: `"Spring orders, second part."`."""

    day: NotRequired[Name]
    """The day, as the shop writes it. Default: none. Example: `"2027-03-02"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    format: Format
    """The format and its version. Example: `"pourwright/1.0"`."""

    letters: NotRequired[dict[str, Name]]
    """Letters of pots by their ids, as an earlier plan of the day gave them. A pot with that id keeps its letter, and
    others get one that is not here. Default: none. Example: `{ "dusk + plain": "A" }`."""

    lines: list[OrderLine]
    """The order lines; at least one."""

    pots: NotRequired[list[PotThereEntry]]
    """Pots that are there already, hot or set: the day goes on from them. Default: none."""

    shelf: NotRequired[list[ShelfEntry]]
    """Leftover mixes that may go into the day's pots. Default: none."""

    stock: NotRequired[dict[str, Amount]]
    """Stock before the day, by material; the plan shows shortages. Default: not known. Example: `{ "clear-base": "1
    gal", "fine-salt": "8 lb" }`."""


class OvenEntry(TypedDict):
    """The oven, by the shop's own timings at one setting, at which pots are then heated; until there are any, by its
    rated power."""

    cools: NotRequired[CoolsEntry]
    """A pot that was watched to cool. Default: not known."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    hot_for: NotRequired[MeasuredAmount]
    """How long a pot stays hot after one heat, from the last burst to the last shot. Default: from `cools`. Example:
    `"8 min"`."""

    longest: NotRequired[MeasuredAmount]
    """Longest burst without a stir. Default: 120 s. Example: `"90 s"`."""

    of: NotRequired[Name]
    """The plastisol that was timed. Default: `default_base`. Example: `"clear-base"`."""

    power: NotRequired[MeasuredAmount]
    """The rated power: the output at full power, 50 W to 10 kW. A first guess, not used once there are timings.
    Default: not known. Example: `"900 W"`."""

    reheat_from: NotRequired[MeasuredAmount]
    """Temperature of a pot when it goes back to be reheated, additions stirred in. Default: the bottom of its window if
    nothing is added, else not known. Example: `"240 °F"`."""

    room: NotRequired[MeasuredAmount]
    """Temperature of the room that pots cool in. Default: 20 °C. Example: `"72 °F"`."""

    setting: NotRequired[Percent]
    """The setting, as a share of full power. Default: that of the timings, else 100 %. Example: `"100 %"`."""

    step: NotRequired[MeasuredAmount]
    """Shortest burst that can be set; the others are multiples of it. Default: 5 s. Example: `"10 s"`."""

    sure: NotRequired[bool]
    """Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    `false`, a number that looks like a slip is refused. Example: `true`."""

    thermometer: NotRequired[MeasuredAmount]
    """How far the thermometer may be off. Default: 2 K. Example: `"1 K"`."""

    timings: NotRequired[list[TimingEntry]]
    """Heatings that were timed. Default: none; required without `power`."""

    turn: NotRequired[MeasuredAmount]
    """Length of one turn of full power and none, below full power; `"0 s"` for an oven that lowers its power without
    turns. Default: 30 s. Example: `"22 s"`."""


class OverBackingsEntry(TypedDict):
    """A thin test piece of a base alone, over a white and over a black backing."""

    black: ColorEntry
    """Color of the bare black backing. Example: `{ "lab": [18, 0, 0] }`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    film_thickness: MeasuredAmount
    """How thick the piece is. Example: `"3 mm"`."""

    over_black: ColorEntry
    """Color of the piece on the black backing. Example: `{ "lab": [45, -2, -3] }`."""

    over_white: ColorEntry
    """Color of the piece on the white backing. Example: `{ "lab": [93, -1, 4] }`."""

    white: ColorEntry
    """Color of the bare white backing. Example: `{ "lab": [96, 0, 1] }`."""


class PackingEntry(TypedDict):
    """Something that goes into each pack."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    name: Name
    """Its name. Example: `"bag"`."""

    per_pack: NotRequired[int]
    """Number of it in one pack. Default: 1. Example: `2`."""

    price: Price
    """Its price per number of pieces. Example: `"9.00 USD per 100 pieces"`."""


class Parcel(TypedDict):
    """Parcel of one order: its lines, packed."""

    lines: list[int]
    """Its lines, by their places in the plan, counted from 1."""

    net: Shown
    """Mass of its pieces, without hooks and packing."""

    order: str
    """The order."""

    promised: str | None
    """The first day that one of its lines was promised for."""

    takes: list[ParcelItem]
    """Materials of its packs besides pieces, if the book states costs."""


class ParcelItem(TypedDict):
    """Something that packs take besides pieces."""

    count: int
    """How many."""

    name: str
    """Its name."""


class PieceRecord(TypedDict):
    """The pieces of one shape."""

    deviation: Shown | None
    """Their standard deviation, of two or more that were weighed one by one."""

    expected: Shown | None
    """Mass of one, or of this layer of it, by the mix as made; none if the book lacks a density."""

    good: int | None
    """Pieces that are fit to sell."""

    good_per_shot: float | None
    """Those a shot, on average."""

    made: int
    """Pieces made."""

    ordered: int
    """Pieces ordered that these shots were for, as in the plan's draw."""

    planned: Shown
    """Planned mass of one, or of this layer of it."""

    shape: str | None
    """The shape, in a mold with unlike cavities."""

    weighed: int
    """How many were weighed."""

    weighs: Shown | None
    """Their mean."""

    weights: list[WeighedTogether]
    """The weighings, of one piece or several together."""


Pieces = TypedDict("Pieces", {
    # Flakes in a piece, if the book states their cut and thickness.
    "flakes": "list[FlakeCount]",
    # Its minimum: shrunk, with no feed from the sprue.
    "from": "Shown",
    # Number that the shots make.
    "made": "int",
    # Number ordered that this draw is for: its share, in proportion to its shots. The draws of an order add up to
    # it.
    "ordered": "int",
    # The shape, in a mold with unlike cavities.
    "shape": "str | None",
    # Whether the sprue cannot feed the cavity, so that the piece sinks in.
    "sinks_in": "bool",
    # Its maximum: topped by the sprue for all of its contraction.
    "to": "Shown",
    # Its standard uncertainty from cavity and density, if the book states that of the cavity; the feed is not in
    # it.
    "uncertainty": "Shown | None",
    # Mass of this layer of a piece.
    "weighs": "Shown",
})
"""The pieces of one shape in a draw."""


class Plan(TypedDict):
    """A day's plan with the documents that it was made from: complete, so that it can be kept as the day's record, and
    made again to the same bits."""

    assumptions: list[Note]
    """Assumptions, for what the book does not state."""

    borrowed: list[Borrowed]
    """Numbers that the book does not state, what the plan assumes for them, and which to measure first."""

    cautions: list[Caution]
    """Hazards."""

    clock: Calculated6 | None
    """The time line: when each pot is heated and shot, and how long that takes. Only if the book states an oven."""

    cost: Calculated7 | None
    """Cost of the day, if the book states how to calculate it."""

    day: str | None
    """The day, as written in the order list."""

    format: Format
    """The format and its version."""

    lines: list[PlannedLine]
    """The order lines, as given."""

    made_from: MadeFrom | None
    """The documents that it was made from."""

    measures: System
    """The measuring system: what a cup and a spoon hold."""

    parcels: list[Parcel]
    """The parcel of each order, the first that is due first."""

    pots: list[Pot]
    """The pots, in the order in which they are first heated."""

    proof: Proof
    """Why there are not fewer pots."""

    questions: list[Note]
    """Entries of the book that look wrong: check them before the day begins."""

    scale: TextScale | None
    """The scale of the steps' sentences that are on the other one too: that of thermometers and gauges in these
    measures. None in a plan that was stored before this was in it."""

    shelf: list[OnShelf]
    """The leftovers of the order list, and the part of them that is used."""

    shop: str | None
    """The shop."""

    steps: list[PlanStep]
    """Steps of the person at the bench, in the order of work."""

    stock: list[StockEntry]
    """Materials in stock and what the day takes of them, the scarcest first."""

    water: SinkWater | None
    """The water of the sink rates."""

    work: list[Work]
    """The order of work over all pots."""


class PlanAnswer(TypedDict):
    """A day's plan from a book and an order list."""

    assumptions: list[Note]
    """Assumptions, for what the book does not state."""

    borrowed: list[Borrowed]
    """Numbers that the book does not state, what the plan assumes for them, and which to measure first."""

    calculate: Literal["plan"]

    cautions: list[Caution]
    """Hazards."""

    clock: Calculated6 | None
    """The time line: when each pot is heated and shot, and how long that takes. Only if the book states an oven."""

    cost: Calculated7 | None
    """Cost of the day, if the book states how to calculate it."""

    day: str | None
    """The day, as written in the order list."""

    format: Format
    """The format and its version."""

    lines: list[PlannedLine]
    """The order lines, as given."""

    made_from: MadeFrom | None
    """The documents that it was made from."""

    measures: System
    """The measuring system: what a cup and a spoon hold."""

    parcels: list[Parcel]
    """The parcel of each order, the first that is due first."""

    pots: list[Pot]
    """The pots, in the order in which they are first heated."""

    proof: Proof
    """Why there are not fewer pots."""

    questions: list[Note]
    """Entries of the book that look wrong: check them before the day begins."""

    scale: TextScale | None
    """The scale of the steps' sentences that are on the other one too: that of thermometers and gauges in these
    measures. None in a plan that was stored before this was in it."""

    shelf: list[OnShelf]
    """The leftovers of the order list, and the part of them that is used."""

    shop: str | None
    """The shop."""

    steps: list[PlanStep]
    """Steps of the person at the bench, in the order of work."""

    stock: list[StockEntry]
    """Materials in stock and what the day takes of them, the scarcest first."""

    water: SinkWater | None
    """The water of the sink rates."""

    work: list[Work]
    """The order of work over all pots."""


class PlanDocument(TypedDict):
    """A day's plan with the documents that it was made from: complete, so that it can be kept as the day's record, and
    made again to the same bits."""

    assumptions: list[Note]
    """Assumptions, for what the book does not state."""

    borrowed: list[Borrowed]
    """Numbers that the book does not state, what the plan assumes for them, and which to measure first."""

    cautions: list[Caution]
    """Hazards."""

    clock: Calculated6 | None
    """The time line: when each pot is heated and shot, and how long that takes. Only if the book states an oven."""

    cost: Calculated7 | None
    """Cost of the day, if the book states how to calculate it."""

    day: str | None
    """The day, as written in the order list."""

    format: Format
    """The format and its version."""

    lines: list[PlannedLine]
    """The order lines, as given."""

    made_from: MadeFrom | None
    """The documents that it was made from."""

    measures: System
    """The measuring system: what a cup and a spoon hold."""

    parcels: list[Parcel]
    """The parcel of each order, the first that is due first."""

    pots: list[Pot]
    """The pots, in the order in which they are first heated."""

    proof: Proof
    """Why there are not fewer pots."""

    questions: list[Note]
    """Entries of the book that look wrong: check them before the day begins."""

    scale: TextScale | None
    """The scale of the steps' sentences that are on the other one too: that of thermometers and gauges in these
    measures. None in a plan that was stored before this was in it."""

    shelf: list[OnShelf]
    """The leftovers of the order list, and the part of them that is used."""

    shop: str | None
    """The shop."""

    steps: list[PlanStep]
    """Steps of the person at the bench, in the order of work."""

    stock: list[StockEntry]
    """Materials in stock and what the day takes of them, the scarcest first."""

    water: SinkWater | None
    """The water of the sink rates."""

    work: list[Work]
    """The order of work over all pots."""


class PlanStep(TypedDict):
    """One step of a day. A stage's weigh list, heating and draws are those of its pot in the plan; a step refers to
    them and says what to do with them."""

    at: list[StepAt]
    """Where: one pot, or those of a laminated piece that are shot together, one a layer."""

    cautions: list[Caution]
    """Dangers here."""

    id: str
    """Names the step by what it is: the formulas that its pot starts with, the stage's formulas, what is done and with
    which mold. It stays where other orders come in or a count changes, so that a tick keeps to its step."""

    items: list[StepItem]
    """Items to tick off one by one, at least one."""

    kind: StepKind
    """Its kind."""

    work: int
    """Which entry of the order of work it belongs to, counted from 1."""


PlannedHeating = TypedDict("PlannedHeating", {
    # The temperature to aim for.
    "aim": "Shown",
    # The table, the coldest band first. The last band ends where shooting begins.
    "bands": "list[HeatBand]",
    # Factor by which the amount is outside those that were timed.
    "beyond": "Shown | None",
    # Number of bursts expected.
    "bursts": "int",
    # Expected reading before it; none if not known, and the bursts are then those of a cold pot.
    "from": "Shown | None",
    # Whether nothing was timed: the times follow from the rated power alone.
    "guess": "bool",
    # Setting of the oven, as a share of full power; none at full power.
    "setting": "Shown | None",
    # Shoot from this reading on.
    "shoot_from": "Shown",
    # Shoot up to this reading; above it, stop and let the pot cool.
    "shoot_to": "Shown",
    # Materials whose specific heat the book does not state; assumed that of the rest.
    "specific_heat_not_known": "list[str]",
    # Total time that the oven is expected to run.
    "total": "Shown",
    # Its standard uncertainty.
    "uncertainty": "Shown",
})
"""How a pot is heated, by the thermometer: every burst by the reading before it, the first one too."""


class PlannedLine(TypedDict):
    """An order line in the plan."""

    ext: dict[str, Any] | None
    """Data of the embedding program on the line."""

    mold: str
    """The mold."""

    order: str
    """The order it belongs to."""

    pack_of: int | None
    """Pieces in a pack."""

    packs: int | None
    """Number of packs, if sold by the pack."""

    piece: Shown
    """Mass of a piece."""

    pieces: int
    """Number of pieces."""

    pooled_with: int | None
    """The first order line for the same pieces, counted from 1; shots are for all of them. None in a plan that was
    stored before this was in it."""

    pots: list[str]
    """The pots it is shot from."""

    promised: str | None
    """The day it was promised for."""

    shape: str | None
    """The shape, in a mold with unlike cavities."""

    sinks: Calculated | None
    """How a piece sinks, if the book states a water. None in a quote."""

    what: str
    """The product's name, or its formulas."""


class Pot(TypedDict):
    """One vessel of mix from first measure to last shot."""

    cup: Shown
    """Capacity of the cup it is mixed in."""

    cup_name: str
    """Name of that cup: `2-cup cup`."""

    degas: Calculated2 | None
    """How it is degassed, if the book states a vacuum."""

    from_shelf: FromShelf | None
    """Leftovers that go in first; the first stage's weigh list is then for the rest."""

    heats: Heats
    """Its heats, and the heat that its stabilizer still withstands."""

    id: str
    """Id made of what it is, like the ids of its steps: it stays the same when other orders come in or a count changes."""

    left_over: Shown
    """Mass left in the cup after the last shot, the heel included."""

    lost: Shown
    """Mass lost on the wall of the cup and in the injector."""

    pot: str
    """Its letter: A, B, ..."""

    sprues: Shown
    """Mass of all sprues."""

    stages: list[Stage]
    """Its stages, in order."""

    there: InPot | None
    """What is in it already; none in a pot that the plan begins."""

    warnings: list[Note]
    """Problems and risks, each with a fix."""


class PotLeftOvers(TypedDict):
    """A pot that takes left-overs."""

    add: list[Weigh]
    """Additions that are still needed, in measures of the bench."""

    formulas: list[str]
    """The formulas of its first stage."""

    from_shelf: FromShelf
    """Mix that goes in from the shelf."""

    heats: int
    """Heats that the pot itself takes, beyond those that the left-overs have spent."""

    pot: str
    """Its letter in the day's plan."""


class PotMaterial(TypedDict):
    """A material in the pot."""

    allowed: str | None
    """Why that is no fault: it went in on purpose, or is below its largest dose."""

    mass: Shown
    """How much of it."""

    material: str
    """Which."""

    off: Shown | None
    """How far it is off per mass of base; none if the target lacks it or there is no base."""


class PotRecord(TypedDict):
    """Record of a pot."""

    heats: int | None
    """Number of heats of the mix that was left, as planned, with those of leftovers in it; none if that is not known."""

    left: Shown | None
    """Mass left in the cup; none if it was not weighed."""

    lost: Shown | None
    """Mass that stayed in cup and injector: the mass that went in less that shot and left. Below zero where the shots
    were lighter than calculated. None where what was left was not weighed."""

    notes: list[str]
    """Anything worth knowing, one entry a stage that has notes."""

    planned_lost: Shown
    """The same as it was planned."""

    pot: str
    """Its letter."""

    put_in: Shown
    """All that went in."""

    shot: Shown
    """Mass shot, less the sprues that went back."""

    spent: Shown | None
    """Heat spent by these heats, as time at the reference temperature of its plastisol's budget, as planned; none if
    that is not known."""

    stages: list[StageRecord]
    """Its stages."""


class PotThereEntry(TypedDict):
    """A pot that is there already. Its `parts` say what is in it; without these it is not begun, and without `draws`
    either it is no more than a letter and an id that no other pot gets."""

    accepted: NotRequired[bool]
    """Whether each material in it counts as right for its formulas, however far off it is. Default: `false`, what is
    off is put right first. Example: `true`."""

    cup: NotRequired[MeasuredAmount]
    """Capacity of its cup, one of the bench. Default: the smallest that holds it. Example: `"2 cup"`."""

    degassed: NotRequired[bool]
    """Whether it has been degassed. Default: `false`; one that was heated is not degassed again. Example: `true`."""

    draws: NotRequired[list[DrawThereEntry]]
    """Shots that it was begun for. Default: none."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    heats: NotRequired[Count]
    """Number of heats behind it. Default: 0, or 1 if it is hot. Example: `1`."""

    hot: NotRequired[bool]
    """Whether it is hot. Default: `false`, it has set or was never heated. Example: `true`."""

    id: NotRequired[Name]
    """Its id in the plan that it was begun by. Default: none. Example: `"dusk + plain"`."""

    parts: NotRequired[dict[str, Amount]]
    """Amounts in it, by material. Default: none. Example: `{ "clear-base": "1 cup", "plum": "32 drops" }`."""

    pot: Name
    """Its letter. Example: `"B"`."""

    spent: NotRequired[MeasuredAmount]
    """Heat used in these: time at the temperature of its plastisol's budget. Default: not known. Example: `"4.6 min"`."""

    takes_more: NotRequired[bool]
    """Whether it may take other shots too, and give up such as the lines do not need. Default: `true`. Example:
    `false`."""


class ProductEntry(TypedDict):
    """A product: a mold and the plastic that is shot into it. It has either `formulas` or `layers`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    formulas: NotRequired[list[Name]]
    """Formulas of a piece of one color: a color and a body. Default: none; required without `layers`. Example:
    `["dusk", "salted"]`."""

    layers: NotRequired[list[LayerEntry]]
    """Layers of a laminated piece. Default: none; required without `formulas`."""

    mold: Name
    """The mold. Example: `"finger-5"`."""

    notes: NotRequired[str]
    """Anything worth keeping with it. Default: none. Example: `"Sold in bags of ten."`."""

    overlap: NotRequired[Overlap]
    """Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`."""


class Proof(TypedDict):
    """Minimum number of pots of a day, and why."""

    least: int
    """Minimum of any plan."""

    pots: int
    """Number of pots of the plan."""

    reasons: list[ProofReason]
    """Why."""


class ProofFormula(TypedDict):
    """The part of a formula in a reason."""

    because: str
    """Its numbers: what its shots need, and what a pot gives."""

    formula: str
    """The formula, by its names."""

    pots: int | None
    """Pots that it needs for itself, if the reason adds these up."""


class ProofReason(TypedDict):
    """A reason for a number of pots; those of different bases add up."""

    because: str
    """The reason as a sentence, with its numbers."""

    formulas: list[ProofFormula]
    """All formulas that it counts."""

    pots: int
    """Number of pots that it calls for."""


class QuoteAnswer(TypedDict):
    """Quote for an order list: pots, parcels, stock and cost of its plan."""

    calculate: Literal["quote"]

    cost: Calculated7 | None
    """Cost of the day, if the book states how to calculate it."""

    lines: list[PlannedLine]
    """The order lines, as given: their pots, and the mass of a piece; not how it sinks."""

    parcels: list[Parcel]
    """The parcel of each order, the first that is due first."""

    stock: list[StockEntry]
    """Materials in stock and what the day takes of them, the scarcest first."""


class Reading(TypedDict):
    """A row of the table to heat by: from the reading where the row before it ends."""

    at_most: Shown | None
    """The hottest possible reading after that, from the upper end of the row. None where the oven does not run, and in
    a plan that was stored before this was in it."""

    below: Shown | None
    """The thermometer shows less than this; none in the last row."""

    burst: Shown | None
    """How long the oven runs then; none where it does not."""

    expected: Shown | None
    """The expected reading after that, at most: from the upper end of the row. None where the oven does not run, and in
    a plan that was stored before this was in it."""

    go: str
    """The action, in a few words: the burst, the next step, or stop."""


class RecipePart(TypedDict):
    """One material of a recipe."""

    mass: Shown
    """How much of it."""

    material: str
    """Which."""

    of_finished: Shown
    """Its share of the finished mass."""

    ratio: float
    """Mass per mass of base; of the base itself, its share."""


class RecordAnswer(TypedDict):
    """The record of a day: a plan with the masses and shots that were made."""

    calculate: Literal["record"]

    colors: list[SeenColor]
    """Colors that finished pieces had, each with the formula that it goes to in the book."""

    day: str | None
    """The day."""

    format: Format
    """The format and its version."""

    found: list[Found]
    """What weighed pieces of one color show of their molds, by mold and shape."""

    jars: list[Jar]
    """What is left for the shelf."""

    measures: System
    """Household measures: the size of a cup and a spoon."""

    molds: list[MoldRecord]
    """The molds, by name: their yield over all pots."""

    pots: list[PotRecord]
    """The pots, in the order of the plan."""

    saved: list[Saved]
    """Colors and bodies as made that go into the book."""

    shelf: list[Change]
    """The change to the next day's order list, as a JSON Patch (RFC 6902): its shelf is what stays of today's, and what
    is left of today's pots. Empty if there is nothing."""

    shop: str | None
    """Whose it is."""

    text: list[str]
    """The record as text, in lines of at most 80 columns."""

    write: list[Change]
    """Changes to the book, as a JSON Patch (RFC 6902): what weighed pieces show of molds, and colors to save. Empty if
    the day shows nothing new."""


class RightWay(TypedDict):
    """A way to go on with a pot."""

    add: list[Weigh]
    """Additions, in measures of the bench."""

    adds: Shown
    """Mass of all additions."""

    cost: MoneyShown | None
    """What these cost; none if the book lacks a price."""

    details: list[str]
    """What to mind at the bench, each a sentence."""

    mass: Shown
    """Mass of the pot then."""

    off: list[Off]
    """How far each material is off per mass of base then, as the bench measures."""

    then: list[MaterialMass]
    """All that is in the pot then, by material."""

    too_little: list[str]
    """Materials of which too little is missing for any tool; they keep their tolerance without it."""

    volume: Shown
    """Its volume then, cold and liquid."""

    way: WayKind
    """Which."""

    within: bool
    """Whether all is within tolerance then."""


class RowsEntry(TypedDict):
    """Reflectance as the text of a table: a wavelength and a reflectance on each line."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    rows: str
    """A wavelength in nm and a reflectance a line, divided by a comma, a semicolon or a tab, by rising wavelengths,
    every 10 or 20 nm at least from 400 to 700 nm. A first line without numbers is a heading. Example:
    `"nm,%\\n400,5.1\\n410,5.3"`."""

    stated_in: StatedIn
    """What the reflectances are stated in: `"percent"`, from 0 to 100, or `"fraction"`, from 0 to 1. Example:
    `"percent"`."""


class SaltAnswer(TypedDict):
    """A salt loading in every way to state it; those of a piece where a cavity was given."""

    calculate: Literal["salt"]

    as_scooped: Shown | None
    """Its volume as scooped, where that density of the salt is known."""

    density: Shown
    """Density of the finished plastic at 20 °C, voids counted."""

    dose: str
    """The dose of a formula: by spoons or cups where they hold it within 1 in 1000, else by weight. Example: `"2
    tbsp"`."""

    mass: Shown
    """Mass of salt for the base of the request."""

    of_base: Shown
    """Mass of salt per mass of base."""

    of_finished: Shown
    """Mass of salt per finished mass."""

    piece: Shown | None
    """Mass of a piece; where the feed is not known, with a feed of 50 % as in plans."""

    piece_max: Shown | None
    """The same fed in full, where the feed is not known."""

    piece_min: Shown | None
    """The same without feed, where the feed is not known."""

    sink_density: Shown | None
    """Mean density of a piece with its hook and weight."""

    sinks: Calculated | None
    """Sink rate of the piece with its hook, where body and water were given."""

    softener: Shown
    """Mass of softener that goes in with it."""

    unsalted_sinks: Calculated | None
    """Sink rate of the same piece without salt."""


class Saved(TypedDict):
    """A formula as made that goes into the book."""

    formula: FormulaEntry
    """The formula."""

    name: str
    """Its name there."""

    pot: str
    """The pot that it was made in."""


class SectionEntry(TypedDict):
    """The thickest part of a piece: a `rod`, a `plate` or a `ball`."""

    ball: NotRequired[MeasuredAmount]
    """As long as thick: its diameter, 0.2 to 200 mm. Default: none; required without the others. Example: `"16 mm"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    plate: NotRequired[MeasuredAmount]
    """Wide and flat, metal on both sides: its thickness, 0.2 to 200 mm. Default: none; required without the others.
    Example: `"4 mm"`."""

    rod: NotRequired[MeasuredAmount]
    """Longer than thick: its diameter, 0.2 to 200 mm. Default: none; required without the others. Example: `"9.6 mm"`."""


class SeenColor(TypedDict):
    """The color that a finished piece had, next to the one that the book has."""

    color: ColorEntry
    """The color."""

    difference: float | None
    """ΔE₀₀ to the color that the book has of that formula; none if it has none."""

    difference_high: float | None
    """It is below this with 97.5 %."""

    difference_low: float | None
    """It is above this with 97.5 %."""

    formula: str
    """The formula of the book that it goes to."""

    pot: str
    """The pot that the piece was made in."""

    text: str
    """All of this as a sentence."""


class SettlingAnswer(TypedDict):
    """The settling of grains."""

    calculate: Literal["settling"]

    cautions: list[Caution]
    """Dangers."""

    fastest: Shown
    """How fast in the thinnest."""

    slowest: Shown
    """How fast the grains sink in the thickest melt."""

    stir_at_most: Shown
    """How often would do in the thickest."""

    stir_every: Shown
    """How often to stir in the thinnest melt: to be safe, that often."""

    viscosity_from: Shown
    """The viscosity that is calculated with: the lowest."""

    viscosity_not_known: bool
    """Whether that is the whole range of what such melts may have, no viscosity being known."""

    viscosity_to: Shown
    """The highest."""


class ShelfEntry(TypedDict):
    """A leftover mix on the shelf. Either its `formulas`, if it was made as planned, or its `parts` say what is in it."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    formulas: NotRequired[list[Name]]
    """Its formulas: a color and a body. Default: none; required without `parts`. Example: `["dusk", "plain"]`."""

    heats: NotRequired[int]
    """Number of heats behind it. Default: not known; required if the book limits `heats`. Example: `1`."""

    made: NotRequired[str]
    """The day it was made, as YYYY-MM-DD; the oldest is used first. Default: not known. Example: `"2027-03-01"`."""

    mass: MeasuredAmount
    """Its mass. Example: `"104 g"`."""

    name: Name
    """The name written on it. Example: `"dusk, March 1"`."""

    overlap: NotRequired[Overlap]
    """Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`."""

    parts: NotRequired[dict[str, Amount]]
    """Amounts that went into the pot that it is left over from, by material, on any scale. Default: none; required
    without `formulas`. Example: `{ "clear-base": "1 cup", "plum": "32 drops" }`."""

    spent: NotRequired[MeasuredAmount]
    """Heat used in these, as the sheet showed it: time at the temperature of its plastisol's budget. Default: not
    known. Example: `"4.6 min"`."""


class ShelfPart(TypedDict):
    """A leftover in a pot."""

    heats: int | None
    """Heats that it has spent; none if not known."""

    mass: Shown
    """Mass of it, as the scale shows it."""

    name: str
    """Its name."""

    spent: Shown | None
    """Time that they spent, at the reference temperature of its plastisol's budget; none if not known."""


class ShotAnswer(TypedDict):
    """Mass of a shot."""

    calculate: Literal["shot"]

    fill: Shown
    """All of it."""

    missing: Shown
    """Mass that the sprue could not feed: the pieces sink in by it."""

    pieces: Shown
    """Mass of all its pieces."""

    shapes: list[ShotPieces]
    """The pieces, by shape."""

    sprue: Shown
    """Mass that stays as sprue."""


ShotPieces = TypedDict("ShotPieces", {
    # Number that a shot makes.
    "count": "int",
    # Mass without feed, where the mold states no feed share; else as `weighs`.
    "from": "Shown",
    # The shape, in a mold with unlike cavities.
    "shape": "str | None",
    # Mass fed as far as sprue and topping reach, where the mold states no feed share; else as `weighs`.
    "to": "Shown",
    # Its standard uncertainty by cavity and densities, where the mold states how sure the cavity is and
    # `cold_density` how sure it is; how far the piece is fed comes on top.
    "uncertainty": "Shown | None",
    # Mass of one.
    "weighs": "Shown",
})
"""The pieces of one shape."""


class Shown(TypedDict):
    """A quantity in a result."""

    other: NotRequired[str | None]
    """The same on the other scale, where both are in use."""

    scale: NotRequired[TextScale | None]
    """The scale of the text, where two are in use: of temperatures, pressures, and volumes that cups are filled to."""

    text: str
    """How a bench reads it, in the book's measures."""

    unit: str
    """Its unit."""

    value: float
    """The number."""


class ShownDifference(TypedDict):
    """A ΔE₀₀ with its band of error."""

    difference: float
    """ΔE₀₀ between the two most likely colors."""

    high: float
    """It is below this with 97.5 %."""

    looks: str
    """How it looks, in words."""

    low: float
    """It is above this with 97.5 %."""


class ShownLab(TypedDict):
    """A color in CIE L*a*b*."""

    a: float
    """a*: green below zero, red above."""

    b: float
    """b*: blue below zero, yellow above."""

    lightness: float
    """L*: 0 for black, 100 for white."""


class ShownThrough(TypedDict):
    """The color of a piece that light goes through."""

    over_black: ShownLab
    """Its color over the black backing."""

    over_black_uncertainty: list[float]
    """Standard uncertainties of its L*, a* and b*."""

    over_white: ShownLab
    """Its color over the white backing of the base's test piece."""

    over_white_uncertainty: list[float]
    """Standard uncertainties of its L*, a* and b*."""

    shows_through: float
    """ΔE₀₀ between the two: 0 where nothing shows through."""

    thickness: Shown
    """How thick the piece is."""


class SinkAnswer(TypedDict):
    """A fall, as a model has it: it lies between the two bounds."""

    calculate: Literal["sink"]

    density: Shown
    """Density of the piece, its salt and voids counted."""

    density_uncertainty: Shown | None
    """Standard uncertainty of that, where it was given: twice that to either side is in the bounds."""

    drag_coefficient: float
    """Drag coefficient, on length times diameter of a stick and the cross-section of a ball."""

    fastest: Shown
    """Upper bound."""

    motion: Motion
    """Whether it falls straight, as the model has it."""

    reynolds: float
    """Reynolds number."""

    sink_rate: Shown
    """How fast it falls with its hook."""

    slowest: Shown
    """Lower bound."""

    time: Shown | None
    """Time to the depth asked for, from rest just below the surface."""

    water: Shown
    """Density of the water."""


class SinkWater(TypedDict):
    """The water of the sink rates."""

    density: Shown
    """Its density."""

    salinity: Shown
    """Its salinity, salt by mass."""

    temperature: Shown
    """Its temperature."""


class Sinking(TypedDict):
    """How a piece sinks, with its hook: a model value between bounds."""

    density: Shown
    """Density of the piece without its hook."""

    density_uncertainty: Shown | None
    """Its standard uncertainty, if known; the bounds include twice that to either side."""

    fastest: Shown
    """Upper bound."""

    hook: Shown
    """Mass of hook and weight."""

    motion: Motion
    """Motion while it sinks: straight, as in the model, or not."""

    per_foot: Shown
    """The same as the time for a foot."""

    slowest: Shown
    """Lower bound."""

    speed: Shown
    """Its sink rate."""

    text: str
    """All of that in one line: `1.035 g/mL ± 0.004 g/mL, 5.6 cm/s (4.1 to 7.4) or 5.4 s a foot, straight`."""


class SoFarEntry(TypedDict):
    """What was made and used of a day's order list before its plan, where the plan is for the rest of it."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    from_shelf: NotRequired[dict[str, MeasuredAmount]]
    """Leftovers that were used of the shelf, by name. Default: none. Example: `{ "dusk, March 1": "60 g" }`."""

    made: NotRequired[list[OrderLine]]
    """Pieces that are made, as order lines. Default: none. Example: `[{ "order": "31", "product": "dusk finger",
    "pieces": 16 }]`."""

    used: NotRequired[dict[str, MeasuredAmount]]
    """Materials that were used of the stock, by name. Default: none. Example: `{ "clear-base": "792 g" }`."""


class SourceShare(TypedDict):
    """A source of uncertainty."""

    share: Shown
    """Its part of the square of the uncertainty."""

    source: str
    """Which."""


class Span(TypedDict):
    """A span of the day."""

    begins: Shown
    """When it begins, from the beginning of the day."""

    doing: Doing
    """Kind of work."""

    lasts: Shown
    """How long it takes."""

    mold: str | None
    """The mold that is shot."""

    pots: list[str]
    """The pots: several for a laminated piece."""

    shots: int | None
    """Number of shots."""

    stage: int
    """The stage of the first of them, from 1 on."""


class Stage(TypedDict):
    """One composition of a pot: what goes in, and what is shot."""

    carried: Shown
    """Mass in the pot for the next stage, or left over."""

    clock: Calculated4 | None
    """Its heats one by one: the shots of each, and the table of each reheat. Only if the book states an oven."""

    density: Shown
    """Density of the finished plastic."""

    density_uncertainty: Shown | None
    """Its standard uncertainty from the weigh lists; none in a pot with a leftover, whose composition is not known that
    well."""

    draws: list[Draw]
    """The draws."""

    fills: Shown
    """Its volume cold and liquid, as the cup shows it."""

    fills_hot: Shown
    """Its volume at shot temperature, as the cup shows it."""

    formulas: list[str]
    """Its formulas."""

    heating: Calculated3 | None
    """How it is heated, if the book states an oven."""

    heats: int
    """Number of heats: one, another for each laminated piece, and reheats where its shots take longer than it stays
    hot."""

    holds: Shown
    """Mass in the pot then."""

    shoot_from: Shown | None
    """Lowest temperature to shoot at."""

    shoot_to: Shown | None
    """Highest temperature to shoot at."""

    solids: Shown
    """Share of the mix that is solid, by volume."""

    sprues_back: Shown
    """Sprues that go back into the pot before the next stage."""

    stir_every: Shown | None
    """How often to stir so that salt does not settle, if the book states the grain and the viscosity; else stir before
    every load."""

    weigh: list[Weigh]
    """Weigh list of what goes in."""


class StageHeat(TypedDict):
    """One heat of a stage: from the oven to the oven."""

    after: int
    """Shots of the stage made before it."""

    heating: Calculated3 | None
    """Table of readings of a reheat, for what is then in the pot; the first heat has that of the stage."""

    holds: Shown
    """Mass in the pot when it begins."""

    lasts: Shown
    """From the last burst to the last shot."""

    shots: int
    """Shots made in it."""


class StageRecord(TypedDict):
    """A stage as it was made."""

    after: Shown
    """Mass in the cup after the last shot: weighed or calculated."""

    after_weighed: bool
    """Whether that was weighed."""

    body: FormulaEntry
    """The body as made, as a formula for the book."""

    color: FormulaEntry | None
    """The color as made, apart from its body, as a formula for the book; none if there is no color."""

    density: Shown | None
    """Density of the finished plastic as made, without voids; none if the book lacks a density."""

    density_uncertainty: Shown | None
    """Its standard uncertainty, as planned."""

    draws: list[DrawRecord]
    """The draws."""

    formulas: list[str]
    """Its formulas."""

    heats: int
    """Number of heats of this stage: as stated, else as planned."""

    held: Shown
    """Mass of all of it."""

    hot_density: Shown | None
    """Density as made at the middle of the shot window, without voids; none if the book lacks a density."""

    injector: list[Shown]
    """Mass that the injector kept, each time that it was cleaned; empty if not weighed."""

    looks: ColorEntry | None
    """Color that a finished piece had; none if it was not read."""

    made: list[MadePart]
    """Contents of the pot by material, plastisols first."""

    pairs: list[MeasuredAndWeighed]
    """Amounts that were measured and weighed: what a drop weighs and a spoon holds."""

    per: str
    """The amount of base that the doses are for."""

    planned_density: Shown
    """The same as it was planned."""

    timed: list[HeatTimed]
    """Its heats as timed, each of the mass that was in the pot."""


class StaysHotAnswer(TypedDict):
    """How long a pot stays hot."""

    calculate: Literal["stays-hot"]

    after: Shown | None
    """The temperature after the time it stood."""

    beyond: Shown | None
    """How many times as long as the watch that time is: above 1 the temperature may be too cold, at 3 by up to 3.5 K."""

    cautions: list[Caution]
    """Dangers."""

    half_full: Shown
    """The same with half of it."""

    hot_for: Shown
    """How long it takes down to the lower temperature, with all of the mix in it."""

    time_constant: Shown
    """The time in which the distance to the room's temperature falls to 37 %."""


class StepAt(TypedDict):
    """A step at one pot."""

    details: list[str]
    """Further points for the bench, each a sentence."""

    draw: int | None
    """Which of that stage's draws, counted from 1, where something is shot."""

    notes: list[str]
    """Background, each a sentence."""

    number: int
    """Its number among the steps of the pot, counted from 1: other steps refer to it."""

    other: NotRequired[str | None]
    """The text on the other scale, where it is not the same."""

    other_details: NotRequired[list[str]]
    """The details on the other scale, one for each; empty where all are the same."""

    pot: str
    """The pot's letter."""

    readings: list[Reading]
    """The table to heat by, the coldest reading first; empty at every other step, and where the times are not known."""

    stage: int
    """Which of its stages, counted from 1."""

    text: str
    """The action, in one or two sentences that begin with the verb."""


class StepItem(TypedDict):
    """An item to tick off within a step: a material, a fill, a burst, a load, or all of it."""

    amount: str
    """By how much it is done: a tick made by another amount no longer holds."""

    id: str
    """Names it as the step is named."""

    material: str | None
    """The material that is measured."""

    more: bool | None
    """Whether it is more of what is in the pot already; none if not."""

    number: int | None
    """Which fill, burst or load, counted from 1."""

    other: NotRequired[str | None]
    """The text on the other scale, where it is not the same."""

    shots: int | None
    """Shots of a load."""

    text: str
    """The action, in a few words."""

    weigh: int | None
    """Its place in the stage's weigh list, counted from 1."""


class StickEntry(TypedDict):
    """A piece that sinks sideways."""

    diameter: MeasuredAmount
    """Mean diameter. Example: `"9.6 mm"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    length: MeasuredAmount
    """Length. Example: `"127 mm"`."""


class StockEntry(TypedDict):
    """A material in stock, and what the day needs of it."""

    had: Shown
    """Mass on hand."""

    left: Shown
    """Mass left; zero if it runs short."""

    material: str
    """Which material."""

    packages: NotRequired[int | None]
    """Packages to buy for what is missing, if the book states a price and so a package."""

    runs_out_in: NotRequired[str | None]
    """The first pot that it is not enough for, if any."""

    short: Shown
    """Mass missing."""

    used: Shown
    """Mass that the day's pots need."""


class StrengthEntry(TypedDict):
    """Strength of a colorant as pots have shown it, next to its test pieces."""

    common: Percent
    """Standard uncertainty that the three have in common. Example: `"4 %"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    factors: list[float]
    """Factors on its effect in the red, the green and the blue. Example: `[1.08, 1.02, 1.05]`."""

    own: Percent
    """Standard uncertainty of each by itself. Example: `"3 %"`."""


class TestPieceToPour(TypedDict):
    """A test piece to pour."""

    base_mass: Shown
    """Base to weigh for it."""

    dose: Amount | None
    """Drops of the colorant; none in the base alone."""

    ratio: Shown
    """Mass of colorant per mass of base."""

    uncertainty: Shown
    """Standard uncertainty of that by the count of drops and the scale."""


class TimeLine(TypedDict):
    """A day's time line, one thing after the other."""

    heating: Shown
    """Time of it with a pot in the oven or between bursts."""

    shooting: Shown
    """Time of it in which shots are made."""

    spans: list[Span]
    """The spans in their order."""

    total: Shown
    """How long the day takes."""

    without_preparing: bool
    """Whether the time to measure, degas and clean up is missing: the book states no time for a pot."""


class TimedDropEntry(TypedDict):
    """A drop of a piece that the shop has timed, let go just below the surface."""

    density: MeasuredAmount
    """Density of the piece; its ± is not counted. Example: `"1.12 g/mL"`."""

    depth: MeasuredAmount
    """Depth. Example: `"1.2 m"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    time: MeasuredAmount
    """Time to that depth. Example: `"6.4 s"`."""

    water: NotRequired[FishedWaterEntry]
    """The water that it sank in. Default: that of the limits, or of the request."""


TimingEntry = TypedDict("TimingEntry", {
    # An embedding program's own data; carried through untouched.
    "ext": "NotRequired[dict[str, Any]]",
    # Temperature before. Example: `"68 °F"`.
    "from": "MeasuredAmount",
    # How much was heated: a mass, or a volume cold and liquid. Example: `"2 cup"`.
    "mix": "Amount",
    # Setting that it ran at, as a share of full power. Default: `setting` of the oven, else 100 %. Example: `"100
    # %"`.
    "setting": "NotRequired[Percent]",
    # Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
    # `false`, a number that looks like a slip is refused. Example: `true`.
    "sure": "NotRequired[bool]",
    # How long the oven ran. Example: `"236 s"`.
    "time": "MeasuredAmount",
    # Temperature after, stirred. Example: `"335 °F"`.
    "to": "MeasuredAmount",
    # Mass of its empty vessel. State it for all cups and timings or for none. Default: the vessel's heat is part of
    # the timing. Example: `"180 g"`.
    "vessel": "NotRequired[MeasuredAmount]",
    # Specific heat of the vessel. Default: none; required with `vessel`. Example: `"0.84 J/(g.K)"`.
    "vessel_specific_heat": "NotRequired[MeasuredAmount]",
})
"""One heating that the shop has timed."""


class ToolUncertaintyEntry(TypedDict):
    """Standard uncertainties of the tools, relative to what each gives. State those that the shop has measured."""

    balance_span: NotRequired[Percent]
    """Of the scale's span. Default: 0.1 %. Example: `"0.05 %"`."""

    cup_filling: NotRequired[Percent]
    """Of filling a cup, as a share of the distance between its marks. Default: 10 %. Example: `"5 %"`."""

    cup_size: NotRequired[Percent]
    """Of the position of a cup's marks. Default: 2.9 %. Example: `"1 %"`."""

    drop: NotRequired[Percent]
    """Of a stated drop without an uncertainty of its own. Default: 8.7 %. Example: `"5 %"`."""

    drop_scatter: NotRequired[Percent]
    """Of one drop against the next. Default: 5 %. Example: `"4 %"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    spoon_level: NotRequired[Percent]
    """Of leveling one spoonful. Default: 3 %. Example: `"4 %"`."""

    spoon_size: NotRequired[Percent]
    """Of the size of a spoon. Default: 2.9 %. Example: `"1 %"`."""

    unweighed_drop: NotRequired[Percent]
    """Of a drop that was never weighed. Default: 29 %. Example: `"20 %"`."""


class TrialAnswer(TypedDict):
    """A trial as it is now, and the formula that it comes to."""

    calculate: Literal["trial"]

    body: list[str]
    """The formulas of the book that are the body in the cup; none if it is the default base alone, or `own_body`."""

    color: FormulaEntry | None
    """The color alone, for any body; none if there is no color in the cup."""

    cup: list[TrialPart]
    """The materials in the cup: the base, then the others by kind."""

    mass: Shown
    """Mass in the cup."""

    overlap: Overlap
    """Rule to combine color and body with: `add` if the color doses more of what the body has already."""

    own_body: FormulaEntry | None
    """The body in the cup, if the book does not have it."""

    per: Amount
    """Amount of base that the doses are for."""

    taken: Shown
    """Mass that was taken out."""

    text: list[str]
    """The answer in short lines."""

    volume: Shown
    """Its volume, cold and liquid."""

    write: list[Change]
    """The change to the book under the name of `save_as`; empty without one."""


class TrialPart(TypedDict):
    """A material in the cup of a trial."""

    dose: Amount
    """Its dose in the measure that it went in with; of the base, its part of `per`."""

    doubt: Doubt | None
    """How sure it is; none if the book lacks a number that this takes."""

    kind: Kind
    """Its kind."""

    mass: Shown
    """How much of it is in the cup."""

    material: str
    """Which."""

    off: Shown
    """How far the dose as written is off the cup, relative to it; 0 if it is exact."""

    side: TrialSide
    """What it belongs to."""


class TroubleRow(TypedDict):
    """A trouble and what helps."""

    add: list[Weigh]
    """What to add, in measures of the bench."""

    calculated: list[str]
    """What was calculated for this book and pot, each a sentence."""

    causes: list[str]
    """Likely causes, the likeliest first."""

    cautions: list[Caution]
    """Dangers."""

    helps: list[str]
    """What helps, each a sentence, in the order in which to try it."""

    not_calculated: list[Note]
    """What could not be calculated, and what it takes."""

    sign: str
    """How it shows."""

    trouble: Trouble
    """Which."""


class TroublesAnswer(TypedDict):
    """Bench troubles and what helps."""

    calculate: Literal["troubles"]

    source: str
    """Where what is said comes from."""

    text: list[str]
    """The answer in short lines."""

    troubles: list[TroubleRow]
    """Each trouble."""


class UncertaintyAnswer(TypedDict):
    """How sure a dose is."""

    calculate: Literal["uncertainty"]

    advice: str | None
    """Weighing that would halve the uncertainty, if one does: of the larger source, or of both."""

    base_weighed: Shown | None
    """The same with the base weighed, where it is not and `readability` is given."""

    both_weighed: Shown | None
    """The same with both weighed, where neither is and `readability` is given."""

    ratio: Shown
    """Mass of the dose per mass of base."""

    relative: Shown
    """Its standard uncertainty, relative to it."""

    relative_95: Shown
    """The half width that holds the true ratio with 95 %, relative to it."""

    sources: list[SourceShare]
    """Sources of its uncertainty, the greatest first."""

    unknown: list[str]
    """Sources of whose uncertainty nothing is known: they count as exact."""

    weighed: Shown | None
    """The same with the dose weighed, where it is not and `readability` is given: its relative standard uncertainty."""


class VacuumEntry(TypedDict):
    """The vacuum that pots are degassed in: either `gauge` or `absolute`."""

    absolute: NotRequired[MeasuredAmount]
    """Pressure left in the chamber, counted up from nothing. Default: none; required without `gauge`. Example: `"10
    kPa"`."""

    dial_tolerance: NotRequired[MeasuredAmount]
    """How far the vacuum gauge may be off. Default: 0.9 inHg. Example: `"1 inHg"`."""

    entrained: NotRequired[Percent]
    """Share of air in a pot before the vacuum, where no rise was seen. Default: not known. Example: `"5 %"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    gauge: NotRequired[MeasuredAmount]
    """Reading of a vacuum gauge. Default: none; required without `absolute`. Example: `"25 inHg"`."""

    rise: NotRequired[float]
    """Level of a pot in the vacuum over its level before, as the shop has seen it. Default: not known; up to 3 is
    assumed. Example: `1.8`."""


class WaterAnswer(TypedDict):
    """Volume that the water fills."""

    calculate: Literal["water"]

    cavity: str
    """Its volume, with its standard uncertainty where `water` states one, as a book writes that of a cavity."""

    density: Shown
    """The density of water at that temperature."""

    uncertainty: Shown | None
    """Its standard uncertainty, where `water` states one."""

    volume: Shown
    """Its volume."""

    write: list[Change]
    """Changes to a book, as a JSON Patch (RFC 6902); empty if no mold was named."""


class WaterEntry(TypedDict):
    """The water that a cavity holds, weighed in air."""

    at: MeasuredAmount
    """Temperature of the water. Example: `"22 °C"`."""

    ext: NotRequired[dict[str, Any]]
    """An embedding program's own data; carried through untouched."""

    water: MeasuredAmount
    """Reading of the scale. Example: `"10.82 g ± 0.1"`."""


class Way(TypedDict):
    """A way to measure a material."""

    gives: Shown
    """Mass that it gives."""

    measure: str
    """The measure: `1 tsp + 1/4 tsp`, `40 drops`, `12.4 g`."""

    off: Shown
    """Error of that, as a share of all of the material in the mix."""

    tool: Tool
    """The tool."""


class Weigh(TypedDict):
    """One material of a weigh list."""

    add: GoesIn
    """When and how it goes in."""

    best: Way
    """The chosen way: the formula's own measure, or another that is surer."""

    beyond: Note | None
    """Caution that no tool keeps the tolerance (code `dose-beyond-bench`): the error of the chosen way, and the amount
    from which on a tool would keep it. None if the tolerance is kept."""

    doubt: Doubt | None
    """Its uncertainty."""

    doubt_weighed: Doubt | None
    """Its uncertainty on the scale, if that keeps the tolerance and another way is chosen."""

    kind: Kind
    """Its kind."""

    material: str
    """Which material."""

    others: list[Way]
    """Ways by the other tools of the bench that keep the tolerance."""

    tolerance: Shown
    """The largest relative error that the shop allows."""

    wanted: Shown
    """Mass needed by the formula."""

    written_in: WrittenIn
    """The measure that the formula is written in."""


class WeighedTogether(TypedDict):
    """Pieces weighed together."""

    count: int
    """How many."""

    weight: Shown
    """Their mass together."""


class WithSource(TypedDict):
    """A quantity with its source."""

    source: NotRequired[str]
    """Its source."""

    value: MeasuredAmount
    """The quantity."""


Work = TypedDict("Work", {
    # How several pots become hot at once, each a sentence.
    "details": "list[str]",
    # Where they come from, one a layer.
    "from": "list[WorkFrom]",
    # How the pots that are heated for this are heated as one load, if there are several and the book states an
    # oven.
    "heating": "Calculated3 | None",
    # The mold.
    "mold": "str",
    # The details on the other scale, one for each; empty where all are the same.
    "other_details": "NotRequired[list[str]]",
    # Number of shots.
    "shots": "int",
    # The shots and the pots that they come from, as a sentence.
    "text": "str",
})
"""Shots at one time: by one pot, or by those of a laminated piece together."""


class WorkFrom(TypedDict):
    """A pot at work."""

    heat: bool
    """Whether it is heated for this; else it is still hot from the work before."""

    pot: str
    """The pot."""

    stage: int
    """Which of its stages, counted from 1."""


class PlanItem(Protocol):
    """The type of ``plan[...]``: that of each part of a plan."""

    @overload
    def __call__(self, name: Literal["assumptions"], /) -> list[Note]: ...

    @overload
    def __call__(self, name: Literal["borrowed"], /) -> list[Borrowed]: ...

    @overload
    def __call__(self, name: Literal["cautions"], /) -> list[Caution]: ...

    @overload
    def __call__(self, name: Literal["clock"], /) -> Calculated6 | None: ...

    @overload
    def __call__(self, name: Literal["cost"], /) -> Calculated7 | None: ...

    @overload
    def __call__(self, name: Literal["day"], /) -> str | None: ...

    @overload
    def __call__(self, name: Literal["format"], /) -> Format: ...

    @overload
    def __call__(self, name: Literal["lines"], /) -> list[PlannedLine]: ...

    @overload
    def __call__(self, name: Literal["made_from"], /) -> MadeFrom | None: ...

    @overload
    def __call__(self, name: Literal["measures"], /) -> System: ...

    @overload
    def __call__(self, name: Literal["parcels"], /) -> list[Parcel]: ...

    @overload
    def __call__(self, name: Literal["pots"], /) -> list[Pot]: ...

    @overload
    def __call__(self, name: Literal["proof"], /) -> Proof: ...

    @overload
    def __call__(self, name: Literal["questions"], /) -> list[Note]: ...

    @overload
    def __call__(self, name: Literal["scale"], /) -> TextScale | None: ...

    @overload
    def __call__(self, name: Literal["shelf"], /) -> list[OnShelf]: ...

    @overload
    def __call__(self, name: Literal["shop"], /) -> str | None: ...

    @overload
    def __call__(self, name: Literal["steps"], /) -> list[PlanStep]: ...

    @overload
    def __call__(self, name: Literal["stock"], /) -> list[StockEntry]: ...

    @overload
    def __call__(self, name: Literal["water"], /) -> SinkWater | None: ...

    @overload
    def __call__(self, name: Literal["work"], /) -> list[Work]: ...

    @overload
    def __call__(self, name: str, /) -> Any: ...


class Calculate(Protocol):
    """The type of :func:`pourwright.calculate`, and of ``request`` of a book or plan: the answer of each calculation."""

    @overload
    def __call__(self, request: Literal["convert"], /, **fields: Any) -> ConvertAnswer: ...

    @overload
    def __call__(self, request: Literal["dose"], /, **fields: Any) -> DoseAnswer: ...

    @overload
    def __call__(self, request: Literal["mix"], /, **fields: Any) -> MixAnswer: ...

    @overload
    def __call__(self, request: Literal["salt"], /, **fields: Any) -> SaltAnswer: ...

    @overload
    def __call__(self, request: Literal["hardness"], /, **fields: Any) -> HardnessAnswer: ...

    @overload
    def __call__(self, request: Literal["shot"], /, **fields: Any) -> ShotAnswer: ...

    @overload
    def __call__(self, request: Literal["batch"], /, **fields: Any) -> BatchAnswer: ...

    @overload
    def __call__(self, request: Literal["water"], /, **fields: Any) -> WaterAnswer: ...

    @overload
    def __call__(self, request: Literal["calibrate"], /, **fields: Any) -> CalibrateAnswer: ...

    @overload
    def __call__(self, request: Literal["calibrate-drop"], /, **fields: Any) -> CalibrateDropAnswer: ...

    @overload
    def __call__(self, request: Literal["calibrate-spoon"], /, **fields: Any) -> CalibrateSpoonAnswer: ...

    @overload
    def __call__(self, request: Literal["calibrate-injector"], /, **fields: Any) -> CalibrateInjectorAnswer: ...

    @overload
    def __call__(self, request: Literal["uncertainty"], /, **fields: Any) -> UncertaintyAnswer: ...

    @overload
    def __call__(self, request: Literal["measure"], /, **fields: Any) -> MeasureAnswer: ...

    @overload
    def __call__(self, request: Literal["air"], /, **fields: Any) -> AirAnswer: ...

    @overload
    def __call__(self, request: Literal["degas"], /, **fields: Any) -> DegasAnswer: ...

    @overload
    def __call__(self, request: Literal["heat"], /, **fields: Any) -> HeatAnswer: ...

    @overload
    def __call__(self, request: Literal["stays-hot"], /, **fields: Any) -> StaysHotAnswer: ...

    @overload
    def __call__(self, request: Literal["cooling"], /, **fields: Any) -> CoolingAnswer: ...

    @overload
    def __call__(self, request: Literal["clock"], /, **fields: Any) -> ClockAnswer: ...

    @overload
    def __call__(self, request: Literal["settling"], /, **fields: Any) -> SettlingAnswer: ...

    @overload
    def __call__(self, request: Literal["heat-history"], /, **fields: Any) -> HeatHistoryAnswer: ...

    @overload
    def __call__(self, request: Literal["sink"], /, **fields: Any) -> SinkAnswer: ...

    @overload
    def __call__(self, request: Literal["flake"], /, **fields: Any) -> FlakeAnswer: ...

    @overload
    def __call__(self, request: Literal["color-difference"], /, **fields: Any) -> ColorDifferenceAnswer: ...

    @overload
    def __call__(self, request: Literal["color-match"], /, **fields: Any) -> ColorMatchAnswer: ...

    @overload
    def __call__(self, request: Literal["color-reading"], /, **fields: Any) -> ColorReadingAnswer: ...

    @overload
    def __call__(self, request: Literal["color-lights"], /, **fields: Any) -> ColorLightsAnswer: ...

    @overload
    def __call__(self, request: Literal["formula"], /, **fields: Any) -> FormulaAnswer: ...

    @overload
    def __call__(self, request: Literal["cost"], /, **fields: Any) -> CostAnswer: ...

    @overload
    def __call__(self, request: Literal["correct"], /, **fields: Any) -> CorrectAnswer: ...

    @overload
    def __call__(self, request: Literal["leftovers"], /, **fields: Any) -> LeftoversAnswer: ...

    @overload
    def __call__(self, request: Literal["plan"], /, **fields: Any) -> PlanAnswer: ...

    @overload
    def __call__(self, request: Literal["quote"], /, **fields: Any) -> QuoteAnswer: ...

    @overload
    def __call__(self, request: Literal["record"], /, **fields: Any) -> RecordAnswer: ...

    @overload
    def __call__(self, request: Literal["go-on"], /, **fields: Any) -> GoOnAnswer: ...

    @overload
    def __call__(self, request: Literal["next-burst"], /, **fields: Any) -> NextBurstAnswer: ...

    @overload
    def __call__(self, request: Literal["trial"], /, **fields: Any) -> TrialAnswer: ...

    @overload
    def __call__(self, request: Literal["troubles"], /, **fields: Any) -> TroublesAnswer: ...

    @overload
    def __call__(self, request: Literal["learn"], /, **fields: Any) -> LearnAnswer: ...

    @overload
    def __call__(self, request: Literal["color-next"], /, **fields: Any) -> ColorNextAnswer: ...

    @overload
    def __call__(self, request: Literal["color-nearest"], /, **fields: Any) -> ColorNearestAnswer: ...

    @overload
    def __call__(self, request: Literal["let-down-series"], /, **fields: Any) -> LetDownSeriesAnswer: ...

    @overload
    def __call__(self, request: str | Mapping[str, Any], /, **fields: Any) -> dict[str, Any]: ...
