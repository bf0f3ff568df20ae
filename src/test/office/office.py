"""Starts LibreOffice without a window, in a profile of its own, and talks to it over a pipe."""

import os
import shutil
import subprocess
import tempfile
import time

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException

# What a user allows by hand: links of documents in this folder may be updated, and are.
SETTINGS = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry"
    xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Content/Update"><prop oor:name="Link" oor:op="fuse">
<value>0</value></prop></item>
<item oor:path="/org.openoffice.Office.Common/Security/Scripting"><prop oor:name="SecureURL" oor:op="fuse">
<value><it>%s</it></value></prop></item>
<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse">
<value>%s</value></prop></item>
</oor:items>
"""


def properties(**named):
    """The named values as LibreOffice takes them."""
    values = []
    for name, value in named.items():
        one = PropertyValue()
        one.Name = name
        one.Value = value
        values.append(one)
    return tuple(values)


class Office:
    """One LibreOffice in one locale; `trusted` is the folder whose documents may ask the network."""

    def __init__(self, locale, trusted):
        self.profile = tempfile.mkdtemp()
        user = os.path.join(self.profile, "user")
        os.makedirs(user)
        with open(os.path.join(user, "registrymodifications.xcu"), "w", encoding="utf-8") as out:
            out.write(SETTINGS % (uno.systemPathToFileUrl(os.path.abspath(trusted)), locale))
        pipe = "workbook%d" % os.getpid() + locale.replace("-", "")
        self.process = subprocess.Popen(
            [
                "soffice", "--headless", "--norestore", "--nologo", "--nodefault",
                "-env:UserInstallation=" + uno.systemPathToFileUrl(self.profile),
                "--accept=pipe,name=%s;urp" % pipe,
            ],
            stderr=subprocess.DEVNULL,
        )
        here = uno.getComponentContext()
        resolver = here.ServiceManager.createInstanceWithContext(
            "com.sun.star.bridge.UnoUrlResolver", here)
        for attempt in range(200):
            try:
                self.context = resolver.resolve(
                    "uno:pipe,name=%s;urp;StarOffice.ComponentContext" % pipe)
                break
            except NoConnectException:
                if self.process.poll() is not None or attempt == 199:
                    raise
                time.sleep(0.3)
        self.desktop = self.context.ServiceManager.createInstanceWithContext(
            "com.sun.star.frame.Desktop", self.context)

    def __enter__(self):
        return self

    def __exit__(self, *ended):
        try:
            self.desktop.terminate()
            self.process.wait(20)
        except Exception:  # it is gone, or does not go by itself
            self.process.kill()
            self.process.wait()
        shutil.rmtree(self.profile, ignore_errors=True)

    def new(self):
        return self.desktop.loadComponentFromURL(
            "private:factory/scalc", "_blank", 0, properties(Hidden=True))

    def open(self, path):
        return self.desktop.loadComponentFromURL(
            uno.systemPathToFileUrl(os.path.abspath(path)), "_blank", 0,
            properties(Hidden=True, UpdateDocMode=3))
