"""All functions of the add-in: what each is called, what it gives, and what the function wizard shows of it."""

import functools
from typing import Any, Callable, Dict, Optional, Sequence, Union

from . import documents
from .call import REFUSED, Function, error_of_calc, reasons, table_of, too_many
from .cells import plain
from .documents import Document, Table
from .fault import Refused
from .parts import Calculation, Own, Parameter, shown_name
from .table import AMOUNT_EXAMPLES, CALCULATIONS, EXAMPLES, OWN

# What each function on documents does; `why` is below.
_DOES: Dict[str, Callable[..., Any]] = {
    "answer": documents.answer,
    "cost": documents.cost,
    "field": documents.field,
    "formula": documents.formula,
    "grams": documents.grams,
    "plan": documents.plan,
    "rows": documents.rows,
    "version": documents.version,
    "weigh": documents.weigh,
}

BY_METHOD: Dict[str, Union[Calculation, Own]] = {one.method: one for one in (*CALCULATIONS, *OWN)}
_BY_SHOWN = {shown_name(one.name): one for one in BY_METHOD.values()}


@functools.lru_cache(maxsize=None)
def _function(calculation_name: str) -> Function:
    return Function(next(one for one in CALCULATIONS if one.name == calculation_name))


def calculate(calculation: Calculation, given: Sequence[Any]) -> Table:
    return table_of(_function(calculation.name), given)


def document_function(own: Own, document: Document, given: Sequence[Any]) -> Any:
    """A function on documents; a call that is refused is one cell with an error."""
    try:
        return _DOES[own.name](document, *given)
    except Refused:
        refused = error_of_calc(REFUSED)
        return refused if own.gives_one else ((refused,),)


def why(document: Document, name: Any, given: Sequence[Any]) -> str:
    """Why a call is refused; an empty text where it is not."""
    shown = plain(name)
    known = _BY_SHOWN.get(shown.upper()) if isinstance(shown, str) else None
    if known is None:
        return 'There is no function `{}`. Write its name in quotes: "POUR_CONVERT".'.format(shown)
    if isinstance(known, Calculation):
        return reasons(_function(known.name), given)
    if known.name == "why":
        return ""
    needed = sum(not parameter.optional for parameter in known.parameters)
    try:
        if len(given) > len(known.parameters):
            raise too_many(known.parameters, len(given))
        _DOES[known.name](document, *given, *[None] * (needed - len(given)))
    except Refused as refused:
        return str(refused)
    return ""


# --- The function wizard


def description(function: Union[Calculation, Own]) -> str:
    """What a function is. The wizard shows the first lines: the results come before what is but good to know."""
    if isinstance(function, Own):
        return function.text
    summary, *more = function.text.split("\n")
    names = [one.name + " ({} cells)".format(one.places) if one.places else one.name for one in function.results]
    gives = "Gives {}".format(names[0])
    if function.width > 1:
        gives += "; as an array formula {}".format(", ".join(names))
    return " ".join([summary, gives + ".", *more])


def argument_name(function: Union[Calculation, Own], place: int) -> str:
    parameter = _parameter(function, place)
    return parameter.name if parameter else ""


def argument_text(function: Union[Calculation, Own], place: int, is_customary: bool) -> str:
    """The help of an argument, with examples in US customary measures or in metric ones."""
    parameter = _parameter(function, place)
    if parameter is None:
        return ""
    if isinstance(function, Own):
        return parameter.text
    texts = [
        "" if parameter.optional else "Must be given.",
        parameter.text,
        _forms(parameter, 0 if is_customary else 1),
    ]
    if parameter.optional:
        texts.append("Default: {}.".format(parameter.if_omitted or "none"))
    if parameter.allowed and parameter.kind != "word":
        texts.append("Allowed: {}.".format(parameter.allowed))
    return " ".join(text for text in texts if text)


def _forms(parameter: Parameter, system: int) -> str:
    """How the argument is written."""

    def amount(unit: str) -> str:
        return '{}, or with its unit: "{}"'.format(unit, EXAMPLES[unit][system])

    if parameter.kind == "list":
        columns = [
            "{} ({})".format(one.name, amount(one.amount_unit)) if one.amount_unit else one.name
            for one in parameter.columns
        ]
        return "Cells, {}: {}.".format("a value each" if len(columns) == 1 else "a column each", ", ".join(columns))
    if parameter.is_amount:
        return 'A text, or two cells, a number and its unit: "{}".'.format(AMOUNT_EXAMPLES[system])
    if parameter.kind == "word":
        return "One of: {}.".format(", ".join(parameter.words))
    if parameter.kind == "count":
        return "A whole number."
    if parameter.kind == "text":
        return "A text."
    if parameter.amount_unit:
        return "In {}.".format(amount(parameter.amount_unit))
    if parameter.unit and parameter.unit != "1":
        return "A number in {}.".format(parameter.unit)
    return "A number; of a share, 0.05 is 5 %." if parameter.unit == "1" else "A number."


def _parameter(function: Union[Calculation, Own], place: int) -> Optional[Parameter]:
    """The parameter of an argument of the method: the document that a function is in comes first, and is none."""
    place -= isinstance(function, Own) and function.knows_document
    return function.parameters[place] if 0 <= place < len(function.parameters) else None
