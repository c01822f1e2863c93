"""What is wrong with a call."""

from typing import List, NamedTuple


class Fault(NamedTuple):
    path: str
    message: str
    help: str
    code: str

    def __str__(self) -> str:
        where = self.path + ": " if self.path else ""
        fix = " " + self.help if self.help else ""
        return "{}{}{} [{}]".format(where, self.message, fix, self.code)


class Refused(Exception):
    """A call that is refused, with all its faults."""

    def __init__(self, faults: List[Fault]) -> None:
        super().__init__("\n".join(map(str, faults)))
        self.faults = faults


def refuse(path: str, message: str, help: str, code: str) -> Refused:
    return Refused([Fault(path, message, help, code)])


class Faults:
    """Faults as they are found."""

    def __init__(self) -> None:
        self.found: List[Fault] = []

    def add(self, path: str, message: str, help: str, code: str) -> None:
        self.found.append(Fault(path, message, help, code))

    def take(self, refused: Refused, path: str) -> None:
        """Adds those of a part: all at this path."""
        self.found += [fault._replace(path=path) for fault in refused.faults]

    def check(self) -> None:
        if self.found:
            raise Refused(self.found)
