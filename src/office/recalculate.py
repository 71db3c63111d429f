"""Opens a spreadsheet in LibreOffice without a window, lets it fetch and calculate everything anew, and prints the cells.

usage: recalculate.py FILE [LOCALE]

Prints {sheet: [[cell, ...], ...]} as JSON; a cell is a number, a text, or {"error": code}. LOCALE, such as de-DE, is that of
the country. Needs Debian's libreoffice-calc-nogui and python3-uno.
"""

import json
import os
import subprocess
import sys
import tempfile
import time

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException
from com.sun.star.table.CellContentType import EMPTY, FORMULA, VALUE

PATIENCE = 120
ALWAYS = 3  # com.sun.star.document.UpdateDocMode.FULL_UPDATE

# Links are followed on opening only where documents are trusted: here, everywhere, for a profile of this run's own.
SETTINGS = (
    ("/org.openoffice.Office.Calc/Content/Update", "Link", 0),
    ("/org.openoffice.Office.Common/Security/Scripting", "MacroSecurityLevel", 0),
)


def connect(pipe):
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    address = "uno:pipe,name=%s;urp;StarOffice.ComponentContext" % pipe
    end = time.monotonic() + PATIENCE
    while True:
        try:
            return resolver.resolve(address)
        except NoConnectException:
            if time.monotonic() > end:
                raise
            time.sleep(0.3)


def prop(name, value):
    return PropertyValue(Name=name, Value=value)


def content(cell):
    if cell.getError():
        return {"error": cell.getError()}
    kind = cell.Type
    if kind == EMPTY:
        return ""
    if kind == VALUE or kind == FORMULA and cell.FormulaResultType2 == 1:
        return cell.Value
    return cell.String


def cells(sheet):
    cursor = sheet.createCursor()
    cursor.gotoEndOfUsedArea(False)
    last = cursor.RangeAddress
    return [
        [content(sheet.getCellByPosition(column, row)) for column in range(last.EndColumn + 1)]
        for row in range(last.EndRow + 1)
    ]


def settle(context, locale):
    provider = context.ServiceManager.createInstanceWithContext("com.sun.star.configuration.ConfigurationProvider", context)
    for path, name, value in SETTINGS + (("/org.openoffice.Setup/L10N", "ooSetupSystemLocale", locale),):
        access = provider.createInstanceWithArguments(
            "com.sun.star.configuration.ConfigurationUpdateAccess", (prop("nodepath", path),)
        )
        access.setPropertyValue(name, value)
        access.commitChanges()


def read(context, path, locale):
    settle(context, locale)
    desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
    url = uno.systemPathToFileUrl(os.path.abspath(path))
    document = desktop.loadComponentFromURL(url, "_blank", 0, (prop("Hidden", True), prop("UpdateDocMode", ALWAYS)))
    for link in document.AreaLinks:
        link.refresh()
    document.calculateAll()
    result = {sheet.Name: cells(sheet) for sheet in document.Sheets}
    document.close(True)
    return desktop, result


def main():
    path, locale = sys.argv[1], sys.argv[2] if len(sys.argv) > 2 else ""
    with tempfile.TemporaryDirectory() as profile:
        pipe = "loopstate%d" % os.getpid()
        office = subprocess.Popen(
            [
                "soffice",
                "-env:UserInstallation=file://" + profile,
                "--headless",
                "--norestore",
                "--nologo",
                "--accept=pipe,name=%s;urp;" % pipe,
            ],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        try:
            desktop, result = read(connect(pipe), path, locale)
            print(json.dumps(result))
            desktop.terminate()
            office.wait(PATIENCE)
        finally:
            office.terminate()


main()
