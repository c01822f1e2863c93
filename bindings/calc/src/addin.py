"""The add-in as LibreOffice loads it: a component of UNO whose methods are the functions of the cells."""

import os
from datetime import date
from typing import Any, Callable, Optional, Sequence, Union

import uno
import unohelper
from com.sun.star.lang import Locale, XServiceInfo, XServiceName
from com.sun.star.sheet import XAddIn, XCompatibilityNames
from pourwright import XCalc

from pourwright_calc import functions
from pourwright_calc.documents import Document
from pourwright_calc.parts import Calculation, Own, shown_name

# In files a function is this and its method: POURWRIGHT.CALC.PIECEMASS.
SERVICE = "pourwright.Calc"


class Calc(unohelper.Base, XAddIn, XCompatibilityNames, XServiceName, XServiceInfo, XCalc):
    def __init__(self, context: Any) -> None:
        self._context = context
        self._locale = Locale("en", "US", "")
        self._is_customary: Optional[bool] = None

    # XServiceName, XServiceInfo

    def getServiceName(self) -> str:
        return SERVICE

    def getImplementationName(self) -> str:
        return SERVICE

    def supportsService(self, name: str) -> bool:
        return name in self.getSupportedServiceNames()

    def getSupportedServiceNames(self) -> Sequence[str]:
        return ("com.sun.star.sheet.AddIn", SERVICE)

    # XLocalizable

    def setLocale(self, locale: Any) -> None:
        self._locale = locale
        self._is_customary = None

    def getLocale(self) -> Any:
        return self._locale

    # XAddIn

    def getProgrammaticFuntionName(self, name: str) -> str:
        methods = (method for method, one in functions.BY_METHOD.items() if shown_name(one.name) == name)
        return next(methods, "")

    def getDisplayFunctionName(self, method: str) -> str:
        function = functions.BY_METHOD.get(method)
        return shown_name(function.name) if function else ""

    def getFunctionDescription(self, method: str) -> str:
        function = functions.BY_METHOD.get(method)
        return functions.description(function) if function else ""

    def getDisplayArgumentName(self, method: str, place: int) -> str:
        function = functions.BY_METHOD.get(method)
        return functions.argument_name(function, place) if function else ""

    def getArgumentDescription(self, method: str, place: int) -> str:
        function = functions.BY_METHOD.get(method)
        return functions.argument_text(function, place, self._measures_customary()) if function else ""

    def getProgrammaticCategoryName(self, method: str) -> str:
        return "Add-In"

    def getDisplayCategoryName(self, method: str) -> str:
        return "Add-In"

    # XCompatibilityNames

    def getCompatibilityNames(self, method: str) -> Sequence[Any]:
        return ()

    def _measures_customary(self) -> bool:
        """Whether the user's locale measures in US customary units."""
        if self._is_customary is None:
            locale = self._locale
            try:
                locale = self._set_locale() or locale
                data = self._context.ServiceManager.createInstanceWithContext(
                    "com.sun.star.i18n.LocaleData", self._context
                )
                self._is_customary = data.getLocaleItem(locale).measurementSystem.upper().startswith("US")
            except uno.getClass("com.sun.star.uno.Exception"):
                self._is_customary = locale.Country == "US"
        return self._is_customary

    def _set_locale(self) -> Optional[Any]:
        """The locale that the user has chosen for dates and numbers; None where it is that of the program."""
        provider = self._context.ServiceManager.createInstanceWithContext(
            "com.sun.star.configuration.ConfigurationProvider", self._context
        )
        path = uno.createUnoStruct("com.sun.star.beans.PropertyValue")
        path.Name, path.Value = "nodepath", "/org.openoffice.Setup/L10N"
        access = provider.createInstanceWithArguments("com.sun.star.configuration.ConfigurationAccess", (path,))
        language, _, country = (access.getPropertyValue("ooSetupSystemLocale") or "").partition("-")
        return Locale(language, country, "") if country else None


def document_of(model: Any) -> Document:
    """What functions know of the document that they are in."""
    url = model.getURL()
    folder = os.path.dirname(uno.fileUrlToSystemPath(url)) if url.startswith("file:") else None
    first = model.getPropertyValue("NullDate")
    return Document(folder, date(first.Year, first.Month, first.Day))


def method_of(function: Union[Calculation, Own]) -> Callable[..., Any]:
    if isinstance(function, Calculation):
        return lambda self, *given: functions.calculate(function, given)
    if function.name == "why":
        return lambda self, model, name, given: functions.why(document_of(model), name, given)
    if function.knows_document:
        return lambda self, model, *given: functions.document_function(function, document_of(model), given)
    return lambda self, *given: functions.document_function(function, Document(None, date(1899, 12, 30)), given)


for method, function in functions.BY_METHOD.items():
    setattr(Calc, method, method_of(function))

g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Calc, SERVICE, ("com.sun.star.sheet.AddIn", SERVICE))
