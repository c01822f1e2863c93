"""Mixes: the masses of materials in one vessel."""

from __future__ import annotations

import threading
from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass
from types import TracebackType
from typing import Any, NoReturn, final

from . import _html
from ._book import Book
from ._calculations import KIND_WORDS, PHASE_WORDS, Kind, Phase
from ._call import Arguments, c_text, checked, instance, real, word
from ._error import PourwrightError
from ._native import ffi, lib


@dataclass(frozen=True, kw_only=True)
class Material:
    """A material. A property that is omitted is not known; a calculation that needs it says so.

    Attributes:
        name: Its name.
        kind: Its kind, such as ``"plastisol"``.
        density_g_per_ml: True density at 20 °C; of a plastisol, that of the liquid.
        fused_g_per_ml: Density of a fused plastisol. Default: that of the liquid.
        as_scooped_g_per_ml: Bulk density of a powder, level in the spoon and not tapped.
        drop_mass_g: Mass of one drop of a liquid. Default: 1/20 mL of it (pharmacy practice).
        expansion_per_kelvin: Volumetric thermal expansion. Default: none.
    """

    name: str
    kind: Kind
    density_g_per_ml: float | None = None
    fused_g_per_ml: float | None = None
    as_scooped_g_per_ml: float | None = None
    drop_mass_g: float | None = None
    expansion_per_kelvin: float | None = None


def _made(place: str, material: Material) -> tuple[Any, Any]:
    """A material of C, and its name, which must live as long."""
    instance(place, material, Material)
    name = ffi.new("char[]", c_text(f"{place}/name", material.name))
    made = ffi.new("pour_material *")
    made.size = ffi.sizeof("pour_material")
    made.name, made.kind = name, word(KIND_WORDS, f"{place}/kind", material.kind)
    given = Arguments()
    for field in (
        "density_g_per_ml",
        "fused_g_per_ml",
        "as_scooped_g_per_ml",
        "drop_mass_g",
        "expansion_per_kelvin",
    ):
        setattr(made, field, given.optional_number(f"{place}/{field}", getattr(material, field)))
    given.check()
    return made, name


@final
class Mix:
    """Masses of materials in one vessel.

    Only :meth:`draw` takes anything out, a part of every material. Threads may share a mix: one waits
    for the other.

    >>> mix = Mix.of_materials([Material(name="base", kind="plastisol", density_g_per_ml=1.03)])
    >>> mix.add("base", 250.0)
    >>> mix.mass_g
    250.0
    """

    __slots__ = ("_handle", "_lock")

    def __init__(self, handle: Any) -> None:
        """Mixes are made by :meth:`of_book` and :meth:`of_materials`."""
        self._handle = ffi.gc(handle, lib.pour_mix_free)
        self._lock = threading.Lock()

    @classmethod
    def of_book(cls, book: Book) -> Mix:
        """An empty mix of the materials of a book, which may be closed before the mix.

        Raises:
            ValueError: The book is closed.
        """
        out = ffi.new("pour_mix **")
        handle = instance("book", book, Book)._open()
        checked(lib.pour_mix_of_book, handle, out)
        return cls(out[0])

    @classmethod
    def of_materials(cls, materials: Iterable[Material]) -> Mix:
        """An empty mix of these materials.

        Raises:
            PourwrightError: Two materials of one name, or a number out of range.
        """
        made = [_made(f"materials/{index}", material) for index, material in enumerate(materials)]
        array = ffi.new("pour_material[]", [one[0] for one, _ in made])
        out = ffi.new("pour_mix **")
        checked(lib.pour_mix_of_materials, array, len(made), out)
        return cls(out[0])

    def add(self, material: str, mass_g: float) -> None:
        """Adds a mass of a material, in g; 0 or above.

        Raises:
            PourwrightError: No such material in the mix, or a number out of range.
        """
        with self._lock:
            checked(lib.pour_mix_add, self._open(), c_text("material", material), real("mass_g", mass_g))

    def draw(self, mass_g: float) -> Mix:
        """Takes a mass of the well-stirred mix out, as a mix of its own.

        Args:
            mass_g: The mass to take, 0 to all of it.

        Raises:
            PourwrightError: More than the mix has, or a number out of range.
        """
        out = ffi.new("pour_mix **")
        with self._lock:
            checked(lib.pour_mix_draw, self._open(), real("mass_g", mass_g), out)
        return Mix(out[0])

    def merge(self, other: Mix) -> None:
        """Pours another mix into this one; the other stays as it is.

        Raises:
            PourwrightError: The same mix, or one that is not made of the same materials.
        """
        if instance("other", other, Mix) is self:
            with self._lock:
                checked(lib.pour_mix_merge, self._open(), self._open())
            return
        # Always in the same order, so that two threads that merge crosswise cannot wait for each other.
        first, second = sorted((self, other), key=id)
        with first._lock, second._lock:
            checked(lib.pour_mix_merge, self._open(), other._open())

    def scale(self, factor: float) -> None:
        """Multiplies all masses by a factor, 0 or above.

        Raises:
            PourwrightError: A number out of range.
        """
        with self._lock:
            checked(lib.pour_mix_scale, self._open(), real("factor", factor))

    @property
    def mass_g(self) -> float:
        """The mass of the mix, in g."""
        return self._number(lib.pour_mix_mass)

    def mass_of(self, material: str) -> float:
        """The mass of a material in the mix, in g.

        Raises:
            PourwrightError: No such material in the mix.
        """
        return self._number(lib.pour_mix_mass_of, c_text("material", material))

    def volume_ml(self, phase: Phase = "fused", temperature_celsius: float = 20.0) -> float:
        """Volume of the mix without voids, in mL: V = Σ (m/ρ)(1 + α (T − 20 °C)).

        Args:
            phase: Whether its plastisol is liquid or fused.
            temperature_celsius: Temperature, -73 to 427 °C. A material whose expansion is not known does not expand.

        Raises:
            PourwrightError: A density that is not known, or a number out of range.
        """
        return self._number(
            lib.pour_mix_volume, word(PHASE_WORDS, "phase", phase), real("temperature_celsius", temperature_celsius)
        )

    def density_g_per_ml(self, phase: Phase = "fused", temperature_celsius: float = 20.0, voids: float = 0.0) -> float:
        """Density of the mix, in g/mL: M/V · (1 − voids).

        Args:
            phase: Whether its plastisol is liquid or fused.
            temperature_celsius: Temperature, -73 to 427 °C.
            voids: Share of the volume that is air, 0 to below 1.

        Raises:
            PourwrightError: An empty mix, a density that is not known, or a number out of range.
        """
        return self._number(
            lib.pour_mix_density,
            word(PHASE_WORDS, "phase", phase),
            real("temperature_celsius", temperature_celsius),
            real("voids", voids),
        )

    def __copy__(self) -> Mix:
        """A mix with exactly the same masses."""
        out = ffi.new("pour_mix **")
        with self._lock:
            # An empty draw has the same materials; merging adds all masses: 0 + m is m.
            checked(lib.pour_mix_draw, self._open(), 0.0, out)
            made = Mix(out[0])
            checked(lib.pour_mix_merge, made._open(), self._open())
        return made

    def __deepcopy__(self, memo: dict[int, Any]) -> Mix:
        return self.__copy__()

    def __reduce__(self) -> NoReturn:
        raise TypeError("A Mix cannot be pickled. Store the mass_of each material, and add it to a new Mix.")

    def close(self) -> None:
        """Frees the mix. Closing it twice does nothing."""
        with self._lock:
            self._handle = None

    @property
    def closed(self) -> bool:
        """Whether it was closed."""
        return self._handle is None

    def _open(self) -> Any:
        if self._handle is None:
            raise ValueError("The mix is closed.")
        return self._handle

    def _number(self, call: Any, *arguments: Any) -> float:
        result = ffi.new("double *")
        with self._lock:
            checked(call, self._open(), *arguments, result)
        value: float = result[0]
        return value

    def __enter__(self) -> Mix:
        self._open()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def _repr_html_(self) -> str:
        if self.closed:
            return _html.mix([("state", "closed")])
        rows = [("mass", f"{self.mass_g:g} g")]
        for phase in PHASE_WORDS:
            # What is not known of a material is not shown.
            with suppress(PourwrightError):
                volume, density = self.volume_ml(phase), self.density_g_per_ml(phase)
                rows += [
                    (f"volume, {phase}, 20 °C", f"{volume:g} mL"),
                    (f"density, {phase}, 20 °C", f"{density:g} g/mL"),
                ]
        return _html.mix(rows)

    def __repr__(self) -> str:
        return "<Mix, closed>" if self.closed else f"<Mix of {self.mass_g:g} g>"
