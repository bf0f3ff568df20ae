"""Holds the workbooks against the running service, in LibreOffice.

check.py SERVICE STOP FOLDER: rebuilds both workbooks of each language, opens them in locales with decimal
points and decimal commas, changes the release, and compares what cells then show with what the
service answers to requests that are written here, not by the workbook. STOP is a command that ends
the service, for what a cell tells without it.
"""

import csv
import io
import json
import os
import subprocess
import sys
import tempfile
import zipfile
from urllib.error import HTTPError
from urllib.parse import quote, urlencode
from urllib.request import urlopen
from xml.etree import ElementTree

import build
from office import Office
from texts import LANGUAGES, words

# Releases with decimals, so that a comma in an address would be noticed.
CASES = (
    {"layout": "three-stations", "x": 60.5, "y": -4.25, "spread": 2.5, "duration": 6},
    {"layout": "three-stations", "x": -100.125, "y": 50, "spread": 4, "duration": 20},
    {"layout": "kitchen-drawer", "x": 31.5, "y": 12.75, "spread": 3.5, "duration": 4},
)
COUNTS = (7, 15, 9)
INPUTS = {"address": "B5", "layout": "B6", "x": "B7", "y": "B8", "spread": "B9", "duration": "B10",
          "wait": "B11", "again": "B12"}
checked = 0


def hold(what, expected, seen):
    global checked
    checked += 1
    if expected != seen:
        raise SystemExit("%s: expected %r, the cell has %r" % (what, expected, seen))


def near(what, expected, seen):
    global checked
    checked += 1
    if not isinstance(seen, float) or abs(expected - seen) > 1e-9 * max(1.0, abs(expected)):
        raise SystemExit("%s: expected %r, the cell has %r" % (what, expected, seen))


class Service:
    """The service's own answers, as documents: other forms than those that the sheets read."""

    def __init__(self, address):
        self.address = address

    def get(self, path, **query):
        url = self.address + path + ("?" + urlencode(query) if query else "")
        with urlopen(url, timeout=120) as answer:
            return answer.read().decode()

    def document(self, path, **query):
        return json.loads(self.get(path, **query))

    def layout(self, name):
        return "/v1/layouts/" + self.document("/v1/sample-layouts/" + quote(name))["layoutId"]


class Opened:
    def __init__(self, document, language):
        self.document = document
        self.words = words(language)

    def sheet(self, key):
        return self.document.Sheets.getByName(self.words[key])

    def cell(self, key, at):
        return self.sheet(key).getCellRangeByName(at)

    def text(self, key, at):
        return self.cell(key, at).String

    def value(self, key, at):
        """The number that a cell holds; its text where it holds none, its error where it has one."""
        cell = self.cell(key, at)
        if cell.getError():
            return "error %d" % cell.getError()
        number = uno_number(cell)
        return number if number is not None else cell.String

    def set(self, **inputs):
        self.document.addActionLock()
        for name, value in inputs.items():
            cell = self.cell("release", INPUTS[name])
            if isinstance(value, str):
                cell.String = value
            else:
                cell.Value = value
        self.document.removeActionLock()
        self.document.calculateAll()


def uno_number(cell):
    kind = cell.FormulaResultType2 if cell.Type.value == "FORMULA" else None
    if kind == 1 or cell.Type.value == "VALUE":
        return cell.Value
    return None


def rows(text):
    return list(csv.reader(io.StringIO(text)))


def release(where, book, service, case):
    """The first sheet against the documents."""
    base = service.layout(case["layout"])
    at = {"x": case["x"], "y": case["y"]}
    found = service.document(base + "/outcome", wait=60, **at)
    hold(where + " id", base.rsplit("/", 1)[1], book.text("release", "B16"))
    hold(where + " outcome", found["outcome"]["name"], book.text("release", "B17").replace(" | ", ", "))
    hold(where + " sure", book.words["yes" if found["sure"] else "no"],
         book.text("release", "B18"))
    for row, member in ((19, "sealedAtS"), (20, "settledAtS"), (21, "trustedUntilS"),
                        (22, "foretoldUntilS")):
        seen = book.value("release", "B%d" % row)
        if member in found:
            near("%s %s" % (where, member), found[member], seen)
        else:
            words_for_it = service.get(base + "/outcome", value=member, **at)
            hold("%s %s" % (where, member), words_for_it, seen)
    odds = service.document(base + "/odds", spreadMm=case["spread"], wait=60, **at)
    for i in range(build.ENDS):
        row = 26 + i
        if i >= len(odds["outcomes"]):
            hold(where + " no end", "", book.text("release", "A%d" % row))
            continue
        end = odds["outcomes"][i]
        hold(where + " end", end["name"], book.text("release", "A%d" % row))
        for column, member in zip("BCD", ("chance", "low", "high")):
            seen = book.value("release", "%s%d" % (column, row))
            if not isinstance(seen, float) or abs(end[member] - seen) > 1e-6:
                raise SystemExit("%s %s: %r, %r" % (where, member, end[member], seen))
        near(where + " tries", end["releases"], book.value("release", "E%d" % row))
    language = book.text("release", "B13")
    notes = service.document(base + "/safety-notes", lang=language)
    told = dict(zip(words("en")["severities"], book.words["severities"]))
    hold(where + " severity", told.get(notes["severity"], notes["severity"]),
         book.text("release", "B37"))
    short = service.get(base + "/safety-notes", format="text", short="true", lang=language)
    hold(where + " cautions", short.split(), book.text("release", "A38").split())
    return base, found, odds


def path(where, book, service, case, base, found):
    """The second sheet, its table and its chart's series."""
    interval = repr(float("%.15g" % (case["duration"] / (build.POINTS - 1))))
    trace = service.document(
        base + "/trace", x=case["x"], y=case["y"], durationS=case["duration"],
        sampleIntervalS=interval, wait=60)
    samples = trace["samples"]
    until = found.get("trustedUntilS", 1e9)
    chart = book.sheet("path").Charts.getByIndex(0).EmbeddedObject
    kind = chart.FirstDiagram.getCoordinateSystems()[0].getChartTypes()[0]
    drawn = [[[v if isinstance(v, float) else float("nan") for v in values]
              for values in drawn_values(one)] for one in kind.getDataSeries()]
    hold(where + " series", 5, len(drawn))
    hold(where + " state", book.words["ready"], book.text("path", "B3"))
    kept = len(samples["t"])
    table = book.sheet("path").getCellRangeByName("A53:D%d" % (52 + build.POINTS)).getDataArray()
    for i, row in enumerate(table):
        if i >= kept:
            hold(where + " beyond the path", ("", "", "", ""), row)
            continue
        for seen, member in zip(row, ("t", "x", "y")):
            near("%s %s of %d" % (where, member, i), samples[member][i], seen)
        solid = samples["t"][i] <= until
        hold("%s trust of %d" % (where, i), book.words["yes" if solid else "beyond"], row[3])
        hold("%s solid %d" % (where, i), solid, drawn[1][1][i] == drawn[1][1][i])
        later = i + 1 < kept and samples["t"][i + 1] > until
        hold("%s dotted %d" % (where, i), not solid or later, drawn[2][1][i] == drawn[2][1][i])
        near("%s drawn x" % where, samples["x"][i], drawn[1][0][i])
    side = drawn[0][0][1]
    hold(where + " square", [[-side, side], [-side, side]], drawn[0])
    hold(where + " all within", True, side > max(map(abs, samples["x"] + samples["y"])))
    places = service.document(base + "/rest-points")["restPoints"]
    for i, place in enumerate(places[:build.PLACES]):
        near(where + " rest point", place["x"], drawn[3][0][i])
        near(where + " rest point", place["y"], drawn[3][1][i])


def drawn_values(series):
    """What a series draws, x before y."""
    values = [one.getValues() for one in series.getDataSequences()]
    return [one.getData() for one in sorted(values, key=lambda one: one.Role)]


def alternative_texts(where, file, language):
    """The charts' alternative texts in the file itself."""
    told = words(language)
    with zipfile.ZipFile(file) as parts:
        if file.endswith(".ods"):
            found = [one.text for one in ElementTree.fromstring(parts.read("content.xml")).iter(
                "{urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0}desc")]
        else:
            found = [one.get("descr") for part in build.PICTURED for one in ElementTree.fromstring(
                parts.read(part)).iter("{http://schemas.openxmlformats.org/drawingml/2006/"
                                       "spreadsheetDrawing}cNvPr")]
    hold(where + " alternative texts", [told["pathAlt"], told["tallyAlt"]], found)


def tally(where, book, service, case, base, odds):
    """The third sheet against the document of the same counts."""
    names = [one["name"] for one in odds["outcomes"]][:3]
    for i in range(build.LABELS):
        label, count = book.cell("tally", "A%d" % (5 + i)), book.cell("tally", "B%d" % (5 + i))
        label.String = names[i] if i < len(names) else ""
        count.String = ""
        if i < len(names):
            count.Value = COUNTS[i]
    book.document.calculateAll()
    counts = ",".join("%s:%d" % pair for pair in zip(names, COUNTS))
    held = service.document(
        base + "/odds", x=case["x"], y=case["y"], spreadMm=case["spread"], counts=counts,
        wait=60)["counted"]
    for i, name in enumerate(names):
        expected = next(one["expected"] for one in held["lines"] if one["name"] == name)
        figure("%s expected %s" % (where, name), expected, book.value("tally", "C%d" % (5 + i)))
    for at, member in (("B13", "chiSquare"), ("B14", "degreesOfFreedom"), ("B15", "pValue")):
        if member in held:
            figure("%s %s" % (where, member), held[member], book.value("tally", at))
        else:
            hold("%s %s" % (where, member), "none", book.text("tally", at))
    hold(where + " sentence", True,
         book.text("tally", "A17").startswith(held["sentence"].split(":")[0].rstrip(".")))
    chart = book.sheet("tally").Charts.getByIndex(0).EmbeddedObject
    kind = chart.FirstDiagram.getCoordinateSystems()[0].getChartTypes()[0]
    bars = [drawn_values(one)[0] for one in kind.getDataSeries()]
    for i in range(len(names)):
        near(where + " bar", float(COUNTS[i]), bars[0][i])
        near(where + " bar", book.value("tally", "C%d" % (5 + i)), bars[1][i])


def figure(what, expected, seen):
    """Single values come with six digits."""
    global checked
    checked += 1
    if not isinstance(seen, float) or abs(expected - seen) > 6e-6 * abs(expected) + 1e-300:
        raise SystemExit("%s: expected %r, the cell has %r" % (what, expected, seen))


def pending(where, book, sample):
    """A sheet that does not wait: what is not ready says so, and comes when it is asked again."""
    book.set(layout=sample, x=44.0, y=-31.5, wait=0.0)
    hold("%s pending, not %s" % (where, book.text("release", "A26")), True,
         book.text("release", "A26").startswith("PENDING "))
    book.set(wait=60.0, again=book.cell("release", "B12").Value + 1)
    hold(where + " no longer pending", False, book.text("release", "A26").startswith("PENDING "))
    hold(where + " is a chance", True, isinstance(book.value("release", "B26"), float))


def faults(where, book, service):
    """What the service calls an error stands in the cells, word for word."""
    book.set(layout="lay-nowhere")
    try:
        service.get("/v1/layouts/lay-nowhere/outcome", x=1, y=1, format="text")
        raise SystemExit("there is no such layout")
    except HTTPError as refused:
        line = refused.read().decode().strip()
    hold(where + " is the service's line", True, line.startswith("ERROR not-found: "))
    for key, at in (("release", "B17"), ("release", "B19"), ("release", "A26"), ("release", "A38"),
                    ("path", "B3"), ("tally", "C5"), ("tally", "B15"), ("tally", "A17")):
        hold("%s %s %s" % (where, key, at), line, book.text(key, at))
    book.set(layout="no-such-sample")
    hold(where + " sample", True,
         book.text("release", "B16").startswith("ERROR not-found: There is no such sample"))
    book.set(layout="three-stations", x=4000.0)
    hold(where + " release", True,
         book.text("release", "B17").startswith("ERROR impossible-release"))
    book.set(x=-70.0, spread=-1.0)
    hold(where + " spread", True, book.text("release", "A26").startswith("ERROR invalid-request"))
    book.set(spread=3.0)
    book.cell("tally", "A5").String = "Grove"
    book.document.calculateAll()
    hold(where + " label", True, "has 'Grove'" in book.text("tally", "A17"))


def link(where, book, service):
    """The linked table, read anew from the running service."""
    links = book.document.AreaLinks
    hold(where + " links", 1, links.Count)
    one = links.getByIndex(0)
    hold(where + " link's address", True, one.Url.startswith(build.USUAL + "/v1/layouts/lay-"))
    sheet = book.sheet("link")
    sheet.getCellRangeByName("A3:F60").clearContents(1 | 2 | 4 | 16)
    hold(where + " emptied", "", book.text("link", "B4"))
    one.Url = one.Url.replace(build.USUAL, service.address).replace("x=-70", "x=60.5")
    one.refresh()
    table = rows(service.get(
        service.layout("three-stations") + "/trace", x=60.5, y=30, durationS=5, sampleIntervalS=0.1,
        format="csv", wait=60))
    hold(where + " header", table[0], [book.text("link", "%s3" % c) for c in "ABCDEF"])
    linked = sheet.getCellRangeByName("A4:F%d" % (2 + len(table))).getDataArray()
    for i, row in enumerate(table[1:]):
        for column, text, seen in zip("ABCDEF", row, linked[i]):
            near("%s linked %s%d" % (where, column, 4 + i), float(text), seen)


def formulas(document):
    """All that is written in a workbook, without what it answers."""
    written = {}
    for sheet in document.Sheets:
        cursor = sheet.createCursor()
        cursor.gotoEndOfUsedArea(False)
        area = sheet.getCellRangeByPosition(
            0, 0, cursor.RangeAddress.EndColumn, cursor.RangeAddress.EndRow)
        written[sheet.Name] = area.getFormulaArray()
    return written


def same(office, made, kept):
    """Whether a committed file says what the build makes; a link's rows are not compared."""
    contents = []
    for one in (made, kept):
        document = office.open(one)
        found = formulas(document)
        found.pop(words(language_of(one))["link"], None)
        contents.append(found)
        document.close(True)
    if contents[0] != contents[1]:
        raise SystemExit("%s is not what the build makes; run src/test/office/run write" % kept)


def language_of(file):
    name = os.path.basename(file).split(".")[0]
    return name.split("-")[1] if "-" in name else "en"


def main(address, stop, kept):
    service = Service(address)
    with tempfile.TemporaryDirectory() as folder:
        build.build(address, folder)
        print("built", ", ".join(sorted(os.listdir(folder))))
        again = os.path.join(folder, "again")
        os.mkdir(again)
        build.build(address, again, ["en"])
        for kind, _ in build.FORMATS:
            name = build.file_name("en", kind)
            with open(os.path.join(folder, name), "rb") as one, \
                    open(os.path.join(again, name), "rb") as other:
                hold("bytes of " + name, True, one.read() == other.read())
        with Office("en-US", folder) as office:
            for language in LANGUAGES:
                for kind, _ in build.FORMATS:
                    name = build.file_name(language, kind)
                    alternative_texts(name, os.path.join(folder, name), language)
                    same(office, os.path.join(folder, name), os.path.join(kept, name))
        for locale, languages in (("en-US", ("en",)), ("de-DE", ("en", "de", "es"))):
            with Office(locale, folder) as office:
                for language in languages:
                    for kind, _ in build.FORMATS:
                        name = build.file_name(language, kind)
                        where = "%s in %s" % (name, locale)
                        book = Opened(office.open(os.path.join(folder, name)), language)
                        comma = "," if locale == "de-DE" else "."
                        cell = book.cell("answers", "D3")
                        cell.Formula = '=0.5&""'
                        hold(where + " decimal sign", "0%s5" % comma, cell.String)
                        if locale == "en-US":
                            book.set(address=address)
                            pending(where, book, {"ods": "turned-centre", "xlsx": "y-cord"}[kind])
                        cases = CASES if language == "en" else CASES[:1]
                        for case in cases:
                            book.set(address=address, wait=60.0, **case_values(case))
                            base, found, odds = release(where, book, service, case)
                            hold(where + " decimal sign of a time",
                                 ("%.2f" % found["sealedAtS"]).replace(".", comma),
                                 book.text("release", "B19"))
                            path(where, book, service, case, base, found)
                            tally(where, book, service, case, base, odds)
                        faults(where, book, service)
                        if kind == "ods":
                            link(where, book, service)
                        print("%s: %d cells and answers held so far" % (where, checked), flush=True)
                        book.document.close(True)
        with Office("de-DE", folder) as office:
            books = [Opened(office.open(os.path.join(folder, build.file_name("en", kind))), "en")
                     for kind, _ in build.FORMATS]
            for book in books:
                book.set(address=address)
                hold("before the stop", "Tide", book.text("release", "B17"))
            subprocess.run(stop, shell=True, check=True)
            for book in books:
                book.set(again=2.0)
                for key, at in (("release", "B17"), ("release", "B19"), ("release", "A26"),
                                ("path", "B3"), ("tally", "B15")):
                    hold("without the service, %s %s" % (key, at), ("#VALUE!", 519),
                         (book.text(key, at), book.cell(key, at).getError()))
                book.document.close(True)
    print("%d cells and answers held" % checked)


def case_values(case):
    return {name: value if isinstance(value, str) else float(value)
            for name, value in case.items()}


if __name__ == "__main__":
    main(sys.argv[1].rstrip("/"), sys.argv[2], sys.argv[3])
