"""A headless LibreOffice with a profile of its own and the add-in in it, driven over UNO.

    with office.Office("pourwright.oxt") as office:
        sheet = office.new().Sheets.getByIndex(0)

Runs with a Python that has the module uno: Debian's /usr/bin/python3, with the package python3-uno.
"""

import contextlib
import shutil
import subprocess
import tempfile
import time
import uuid
import zipfile
from pathlib import Path

import uno


def struct(name, **fields):
    made = uno.createUnoStruct(name)
    for field, value in fields.items():
        setattr(made, field, value)
    return made


def properties(**values):
    return tuple(struct("com.sun.star.beans.PropertyValue", Name=name, Value=value) for name, value in values.items())


class Office:
    """`oxt` is the add-in; None is an office without it. `locale` is that of dates and numbers, such as de-DE; that of the
    program if it is left out."""

    def __init__(self, oxt, locale=None, headless=True):
        self.folder = Path(tempfile.mkdtemp())
        extension = self.folder / "extensions" / "pourwright.oxt"
        extension.mkdir(parents=True)
        if oxt is not None:
            with zipfile.ZipFile(oxt) as packed:
                packed.extractall(extension)
        profile = self.folder / "profile" / "user"
        profile.mkdir(parents=True)
        if locale:
            (profile / "registrymodifications.xcu").write_text(
                '<?xml version="1.0" encoding="UTF-8"?>\n'
                '<oor:items xmlns:oor="http://openoffice.org/2001/registry">'
                '<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse">'
                f"<value>{locale}</value></prop></item></oor:items>\n"
            )
        pipe = f"pourwright-{uuid.uuid4().hex}"
        self.process = subprocess.Popen(
            [
                "soffice", *(["--headless"] if headless else []), "--norestore", "--nologo", "--nodefault", f"--accept=pipe,name={pipe};urp;",
                f"-env:UserInstallation={(self.folder / 'profile').as_uri()}",
                f"-env:BUNDLED_EXTENSIONS={extension.parent.as_uri()}",
            ],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )  # fmt: skip
        local = uno.getComponentContext()
        resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
        until = time.monotonic() + 60
        while True:
            try:
                self.context = resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
                break
            except Exception:
                if time.monotonic() > until or self.process.poll() is not None:
                    self.process.kill()
                    raise
                time.sleep(0.1)
        self.desktop = self.service("com.sun.star.frame.Desktop")

    def service(self, name):
        return self.context.ServiceManager.createInstanceWithContext(name, self.context)

    def new(self):
        return self.desktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, properties(Hidden=True))

    def open(self, path):
        return self.desktop.loadComponentFromURL(Path(path).resolve().as_uri(), "_blank", 0, properties(Hidden=True))

    def close(self):
        # It may be gone already.
        with contextlib.suppress(Exception):
            self.desktop.terminate()
        try:
            self.process.wait(30)
        except subprocess.TimeoutExpired:
            self.process.kill()
        shutil.rmtree(self.folder, ignore_errors=True)

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.close()
