"""Makes the workbooks, ODS and XLSX, in each language, by LibreOffice and a running service.

build.py SERVICE FOLDER: what the cells hold at first is what that service answers; in the files the
service's address is the usual one. The same input gives the same bytes from the same LibreOffice.
"""

import re
import sys
import zipfile
from os.path import abspath, join
from urllib.request import urlopen
from xml.sax.saxutils import quoteattr

import uno
from com.sun.star.awt import Point, Rectangle, Size
from com.sun.star.beans import NamedValue
from com.sun.star.chart2 import ScaleData
from com.sun.star.lang import Locale
from com.sun.star.sheet import TableValidationVisibility
from com.sun.star.table import BorderLine2, CellRangeAddress

from office import Office, properties
from texts import COUNTRIES, HELP, LANGUAGES, words

USUAL = "http://localhost:8080"
SAMPLE = "three-stations"
# One answer of a cell: the formats, in LibreOffice's spelling, of both kinds of workbook.
FORMATS = (("ods", "calc8"), ("xlsx", "Calc MS Excel 2007 XML"))

POINTS = 241  # rows of a path; the interval follows from how long it is shown
ENDS = 8  # labels with odds
PLACES = 12  # rest points drawn
LABELS = 6  # labels of a tally
FIRST = 40  # first line of the split tables on the sheet of answers

INK = 0x1A1A1A
PALE = 0x6B6B6B
INPUT = 0xFFF6CC
HEAD = 0xE4EAF0
DARK = 0x1F4E79
LIGHT = 0xBFD3E6
GREY = 0x8A8A8A

NUMBER = "NUMBERVALUE({0};\".\";\" \")"


def number(text):
    """Text of the service as a number in any locale; its words where it is none."""
    one = NUMBER.format(text)
    return "=IF(ISERROR(%s);%s;%s)" % (one, text, one)


def point(cell):
    """A number as the service reads it, whatever the decimal sign of the locale."""
    return 'SUBSTITUTE(%s&"";",";".")' % cell


class Workbook:
    def __init__(self, office, service, language):
        self.office = office
        self.service = service
        self.language = language
        self.words = words(language)
        self.document = office.new()
        self.document.lockControllers()
        self.link_addresses()

    def link_addresses(self):
        with urlopen("%s/v1/sample-layouts/%s?format=text" % (self.service, SAMPLE)) as answer:
            self.sample_id = answer.read().decode()

    def name(self, key):
        return self.words[key]

    def sheet(self, key):
        return self.document.Sheets.getByName(self.name(key))

    def ref(self, key, cell):
        """A cell of another sheet, in a formula."""
        return "$'%s'.%s" % (self.name(key), cell)

    # ---- styles ------------------------------------------------------------------------------

    def styles(self):
        cells = self.document.StyleFamilies.getByName("CellStyles")
        default = cells.getByName("Default")
        locale = Locale(self.language, COUNTRIES[self.language], "")
        default.CharLocale = locale
        default.CharFontName = "Liberation Sans"
        default.CharHeight = 10
        default.CharColor = INK
        default.VertJustify = 1
        self.style("Title", CharHeight=16, CharWeight=150.0)
        self.style("Heading", CharHeight=11, CharWeight=150.0, CellBackColor=HEAD)
        self.style("Lead", CharColor=PALE, IsTextWrapped=True)
        self.style("Unit", ParaIndent=200, HoriJustify=uno.Enum(
            "com.sun.star.table.CellHoriJustify", "LEFT"))
        self.style("Wrapped", IsTextWrapped=True, VertJustify=1)
        frame = BorderLine2()
        frame.Color = INK
        frame.OuterLineWidth = 53
        frame.LineWidth = 53
        thin = BorderLine2()
        thin.Color = GREY
        thin.OuterLineWidth = 9
        thin.LineWidth = 9
        for name, line, more in (
                ("Input", frame, {"CellBackColor": INPUT, "CharWeight": 150.0}),
                ("Value", thin, {"IsTextWrapped": True}),
                ("Raw", thin, {}),
                ("Share", thin, {"NumberFormat": self.format("0.0%")}),
                ("Figure", thin, {"NumberFormat": self.format("0.00")}),
                ("Small", thin, {"NumberFormat": self.format("0.0000")}),
                ("Column", thin, {"CharWeight": 150.0, "CellBackColor": HEAD}),
                ("Caution", frame, {"CharWeight": 150.0}),
                ("Cautions", frame, {"IsTextWrapped": True, "CharHeight": 9})):
            self.style(name, TopBorder=line, BottomBorder=line, LeftBorder=line, RightBorder=line,
                       **more)
        for name in ("Input", "Value", "Raw", "Share", "Figure", "Small"):
            cells.getByName(name).HoriJustify = uno.Enum(
                "com.sun.star.table.CellHoriJustify", "LEFT")

    def style(self, name, **values):
        cells = self.document.StyleFamilies.getByName("CellStyles")
        if not cells.hasByName(name):
            cells.insertByName(
                name, self.document.createInstance("com.sun.star.style.CellStyle"))
        one = cells.getByName(name)
        one.ParentStyle = "Default"
        for key, value in values.items():
            setattr(one, key, value)

    def format(self, code):
        formats = self.document.NumberFormats
        # no locale: the decimal sign is that of whoever opens the file
        reader = Locale()
        key = formats.queryKey(code, reader, False)
        return key if key >= 0 else formats.addNew(code, reader)

    def pages(self):
        styles = self.document.StyleFamilies.getByName("PageStyles")
        styles.insertByName("One", self.document.createInstance("com.sun.star.style.PageStyle"))
        self.page(styles.getByName("Default"), 0)
        self.page(styles.getByName("One"), 1)

    def page(self, page, high):
        page.IsLandscape = False
        page.Width, page.Height = 21000, 29700
        page.LeftMargin = page.RightMargin = 1500
        page.TopMargin = page.BottomMargin = 1200
        page.ScaleToPagesX, page.ScaleToPagesY = 1, high
        page.HeaderIsOn = False
        page.CenterHorizontally = False

    # ---- cells -------------------------------------------------------------------------------

    def put(self, sheet, at, what, style=None):
        cell = sheet.getCellRangeByName(at)
        if isinstance(what, str) and what.startswith("="):
            cell.Formula = what
        elif isinstance(what, str):
            cell.String = what
        else:
            cell.Value = what
        if style:
            cell.CellStyle = style
        return cell

    def merge(self, sheet, span, style, height=None):
        area = sheet.getCellRangeByName(span)
        area.merge(True)
        area.CellStyle = style
        if height:
            area.Rows.getByIndex(0).Height = height

    def widths(self, sheet, *millimetres):
        for i, width in enumerate(millimetres):
            sheet.Columns.getByIndex(i).Width = width * 100

    def print_area(self, sheet, span):
        sheet.setPrintAreas((sheet.getCellRangeByName(span).RangeAddress,))

    def check_number(self, sheet, at, low, high, whole=False):
        cell = sheet.getCellRangeByName(at)
        rule = cell.Validation
        rule.Type = uno.Enum("com.sun.star.sheet.ValidationType", "WHOLE" if whole else "DECIMAL")
        rule.setOperator(uno.Enum("com.sun.star.sheet.ConditionOperator", "BETWEEN"))
        rule.setFormula1(str(low))
        rule.setFormula2(str(high))
        rule.ShowErrorMessage = True
        rule.ErrorTitle = self.name("inputTitle")
        rule.ErrorMessage = self.name("inputError")
        cell.Validation = rule

    # ---- sheets ------------------------------------------------------------------------------

    def make(self):
        self.styles()
        self.pages()
        sheets = self.document.Sheets
        for i, key in enumerate(("release", "path", "tally", "help", "answers")):
            sheets.insertNewByName(self.name(key), i)
        sheets.removeByName(sheets.getByIndex(5).Name)
        for key in ("release", "path", "tally"):
            self.sheet(key).PageStyle = "One"
        self.release()
        self.tally()
        self.answers()
        self.path()
        self.help()
        properties_of = self.document.DocumentProperties
        properties_of.Title = self.name("title")
        properties_of.Subject = self.name("subject")
        properties_of.Language = Locale(self.language, COUNTRIES[self.language], "")
        self.document.unlockControllers()
        self.document.calculateAll()
        self.bars()
        self.plan()
        self.document.calculateAll()

    def release(self):
        sheet = self.sheet("release")
        self.widths(sheet, 78, 38, 20, 20, 26, 8)
        put = lambda *what: self.put(sheet, *what)
        put("A1", self.name("releaseTitle"), "Title")
        self.merge(sheet, "A2:F2", "Lead")
        put("A2", self.name("releaseLead"))
        self.merge(sheet, "A4:F4", "Heading")
        put("A4", self.name("youSet"))
        inputs = (
            ("address", self.service, ""), ("layout", SAMPLE, ""), ("x", -70, "mm"),
            ("y", 30, "mm"), ("spread", 3, "mm"), ("duration", 8, "s"), ("wait", 20, "s"),
            ("again", 1, ""), ("language", self.language, "en, de, es"))
        for i, (key, value, unit) in enumerate(inputs):
            row = 5 + i
            put("A%d" % row, self.name(key))
            put("B%d" % row, value, "Input")
            if unit:
                put("C%d" % row, unit, "Unit")
        self.merge(sheet, "B5:F5", "Input")
        for at, low, high in (("B7", -100000, 100000), ("B8", -100000, 100000), ("B9", 0, 10000),
                              ("B10", 0.001, 1000000)):
            self.check_number(sheet, at, low, high)
        self.check_number(sheet, "B11", 0, 3600, True)
        self.check_number(sheet, "B12", 0, 1000000, True)
        self.merge(sheet, "A15:F15", "Heading")
        put("A15", self.name("itSays"))
        answers = (
            ("layoutId", "C5", None), ("outcome", "C6", None), ("sure", "C7", None),
            ("sealed", "C8", "s"), ("settled", "C9", "s"), ("trusted", "C10", "s"),
            ("foretold", "C11", "s"))
        for i, (key, cell, unit) in enumerate(answers):
            row = 16 + i
            raw = self.ref("answers", "$" + cell[0] + "$" + cell[1:])
            put("A%d" % row, self.name(key))
            if key == "sure":
                put("B%d" % row, '=IF(%s="true";"%s";IF(%s="false";"%s";%s))' % (
                    raw, self.name("yes"), raw, self.name("no"), raw), "Value")
            elif unit:
                put("B%d" % row, number(raw), "Figure")
            else:
                put("B%d" % row, "=" + raw, "Value")
            # merged, so that an ERROR line can be read
            self.merge(sheet, "B%d:E%d" % (row, row), "Figure" if unit else "Value",
                       500 if unit else 900)
            if unit:
                put("F%d" % row, unit, "Unit")
            sheet.getCellRangeByName("B%d" % row).IsTextWrapped = True
        self.merge(sheet, "A24:F24", "Heading")
        put("A24", self.name("oddsTitle"))
        for column, key in zip("ABCDE", ("end", "chance", "low", "high", "tries")):
            put("%s25" % column, self.name(key), "Column")
        for i in range(ENDS):
            row = 26 + i
            for column, source in zip("ABCDE", "HIJKL"):
                from_there = self.ref("answers", "$%s$%d" % (source, FIRST + 1 + i))
                put("%s%d" % (column, row), "=" + from_there,
                    "Value" if column in "AE" else "Share")
        put("A%d" % (26 + ENDS), self.name("interval"), "Lead")
        self.merge(sheet, "B34:F34", "Lead")
        self.merge(sheet, "A36:F36", "Heading")
        put("A36", self.name("safetyTitle"))
        severity = self.ref("answers", "$C$16")
        english = self.severities("en")
        chosen = "=" + severity
        for word, own in zip(english, self.name("severities")):
            chosen = chosen.replace("=" + severity, '=IF(%s="%s";"%s";%s)' % (
                severity, word, own, "@"), 1) if chosen == "=" + severity else chosen.replace(
                    "@", 'IF(%s="%s";"%s";@)' % (severity, word, own), 1)
        put("A37", self.name("severity"))
        put("B37", chosen.replace("@", severity), "Caution")
        self.merge(sheet, "B37:F37", "Caution")
        self.merge(sheet, "A38:F38", "Cautions", 5400)
        put("A38", "=" + self.ref("answers", "$C$17"))
        self.merge(sheet, "A39:F39", "Wrapped", 1000)
        put("A39", self.name("local"))
        self.print_area(sheet, "A1:F39")

    def severities(self, language):
        return words(language)["severities"]

    def tally(self):
        sheet = self.sheet("tally")
        self.widths(sheet, 52, 30, 34, 58)
        put = lambda *what: self.put(sheet, *what)
        put("A1", self.name("tallyTitle"), "Title")
        self.merge(sheet, "A2:D2", "Lead", 1000)
        put("A2", self.name("tallyLead"))
        for column, key in zip("ABC", ("label", "counted", "expected")):
            put("%s4" % column, self.name(key), "Column")
        example = (("Tide", 11), ("Dune", 12), ("Reef", 7))
        for i in range(LABELS):
            row = 5 + i
            put("A%d" % row, "", "Input")
            put("B%d" % row, "", "Input")
            if i < len(example):
                put("A%d" % row, example[i][0])
                put("B%d" % row, example[i][1])
            self.check_number(sheet, "B%d" % row, 0, 1000000, True)
            raw = self.ref("answers", "$C$%d" % (23 + i))
            put("C%d" % row, number(raw).replace("=IF(", '=IF($A%d="";"";IF(' % row, 1) + ")",
                "Figure")
        last = 4 + LABELS
        put("A%d" % (last + 1), self.name("all"), "Column")
        put("B%d" % (last + 1), "=SUM(B5:B%d)" % last, "Value")
        for i, (key, source, style) in enumerate((
                ("chiSquare", "C18", "Figure"), ("freedom", "C19", "Value"),
                ("pValue", "C20", "Small"))):
            row = last + 3 + i
            raw = self.ref("answers", "$C$" + source[1:])
            put("A%d" % row, self.name(key))
            put("B%d" % row, number(raw), style)
            self.merge(sheet, "B%d:D%d" % (row, row), style, 900)
            sheet.getCellRangeByName("B%d" % row).IsTextWrapped = True
        put("A%d" % (last + 6), self.name("inWords"))
        self.merge(sheet, "A%d:D%d" % (last + 7, last + 7), "Cautions", 1900)
        put("A%d" % (last + 7), "=" + self.ref("answers", "$C$21"))
        self.print_area(sheet, "A1:D44")

    def answers(self):
        sheet = self.sheet("answers")
        self.widths(sheet, 34, 90, 70, 24, 4, 14, 14, 50, 18, 18, 18, 18)
        put = lambda *what: self.put(sheet, *what)
        put("A1", self.name("answersTitle"), "Title")
        put("A2", self.name("answersLead"), "Lead")
        sheet.getCellRangeByName("A2").IsTextWrapped = False
        for column, key in zip("ABCD", ("asked", "address", "answer", "lengths")):
            put("%s4" % column, self.name(key), "Column")
        at = lambda row: self.ref("release", "$B$%d" % row)
        common = '"&errors=inline&wait="&%s&"&cb="&%s' % (at(11), at(12))
        layout = '%s&"/v1/layouts/"&ENCODEURL($C$5)&"' % at(5)
        place = '?x="&%s&"&y="&%s&' % (point(at(7)), point(at(8)))
        hand = place + '"&spreadMm="&%s&' % point(at(9))
        counts = '"&counts="&$C$22&'
        interval = point("%s/%d" % (at(10), POINTS - 1))
        rows = [
            (5, "layoutId", '%s&"/v1/sample-layouts/"&ENCODEURL(%s)&"?format=text"&%s'
             % (at(5), at(6), common)),
        ]
        for row, value in ((6, "outcome"), (7, "sure"), (8, "sealedAtS"), (9, "settledAtS"),
                           (10, "trustedUntilS"), (11, "foretoldUntilS")):
            rows.append((row, value, layout + "/outcome" + place
                         + '"&format=text&value=%s"&' % value + common))
        rows.append((12, "odds", layout + "/odds" + hand + '"&format=csv"&' + common))
        rows.append((13, "trace", layout + "/trace" + place + '"&durationS="&%s&"&sampleIntervalS="'
                     '&%s&"&format=csv"&' % (point(at(10)), interval) + common))
        rows.append((14, "rest-points", layout + '/rest-points?format=csv"&' + common))
        rows.append((16, "severity", layout + '/safety-notes?value=severity"&' + common))
        rows.append((17, "safety-notes", layout + '/safety-notes?format=text&short=true&lang="'
                     "&ENCODEURL(%s)&" % at(13) + common))
        for row, value in ((18, "chiSquare"), (19, "degreesOfFreedom"), (20, "pValue"),
                           (21, "countedSentence")):
            rows.append((row, value, layout + "/odds" + hand + counts
                         + '"&value=%s"&' % value + common))
        for i in range(LABELS):
            label = self.ref("tally", "$A$%d" % (5 + i))
            rows.append((23 + i, "expected", layout + "/odds" + hand + counts
                         + '"&value=expected&outcome="&ENCODEURL(%s)&' % label + common))
            row, what, address = rows.pop()
            rows.append((row, what, 'IF(%s="";"";%s)' % (label, address)))
        for row, what, address in rows:
            put("A%d" % row, what, "Value")
            counting = 18 <= row <= 21 or row >= 23
            put("B%d" % row, "=" + address, "Raw")
            answer = "WEBSERVICE($B$%d)" % row
            if row == 5:
                answer = 'IF(LEFT(%s;4)="lay-";%s;%s)' % (at(6), at(6), answer)
            if counting:
                answer = 'IF($C$22="";"%s";%s)' % (self.name("noCounts"), answer)
            if row >= 23:
                label = self.ref("tally", "$A$%d" % (5 + row - 23))
                answer = 'IF(%s="";"";%s)' % (label, answer)
            put("C%d" % row, "=" + answer, "Raw")
            put("D%d" % row, '=LEN($B$%d)&" / "&LEN($C$%d)' % (row, row))
        # answers of many lines would make their rows as high
        for row in range(5, 23 + LABELS):
            line = sheet.Rows.getByIndex(row - 1)
            line.Height = 480
            line.OptimalHeight = False
        # the counts of the address, label by label
        parts = []
        for i in range(LABELS):
            label = self.ref("tally", "$A$%d" % (5 + i))
            count = self.ref("tally", "$B$%d" % (5 + i))
            put("A%d" % (30 + i), "counts", "Value")
            put("B%d" % (30 + i), '=IF(OR(%s="";%s="");"";","&ENCODEURL(%s)&":"&%s)' % (
                label, count, label, point(count)), "Value")
            parts.append("$B$%d" % (30 + i))
        put("A22", "counts", "Value")
        put("B22", "", "Raw")
        put("C22", '=MID(%s;2;2000)' % "&".join(parts), "Raw")
        self.tables(sheet)
        self.print_area(sheet, "A1:C37")

    def tables(self, sheet):
        """Splits the three tables of the service into lines and numbers."""
        put = lambda *what: self.put(sheet, *what)
        put("A38", self.name("lines"), "Heading")

        def lines(source, begin, end, line, count):
            """Where each line begins and ends, and its text; empty beyond the last one."""
            for i in range(count):
                row = FIRST + i
                put("%s%d" % (begin, row), "=1" if i == 0 else "=IF(%s%d=0;0;%s%d+1)" % (
                    end, row - 1, end, row - 1))
                put("%s%d" % (end, row),
                    '=IF(OR(%s%d=0;%s%d>LEN(%s));0;FIND(CHAR(10);%s&CHAR(10);%s%d))' % (
                        begin, row, begin, row, source, source, begin, row))
                put("%s%d" % (line, row),
                    '=IF(%s%d=0;"";SUBSTITUTE(MID(%s;%s%d;%s%d-%s%d);CHAR(13);""))' % (
                        end, row, source, begin, row, end, row, begin, row))

        # odds: begin F, end G, line M; end's name H, chance I, low J, high K, tries L
        lines("$C$12", "F", "G", "M", ENDS + 1)
        for i in range(ENDS):
            row = FIRST + 1 + i
            line = "M%d" % row
            commas = '(LEN(%s)-LEN(SUBSTITUTE(%s;",";"")))' % (line, line)
            cut = lambda n: 'FIND(CHAR(1);SUBSTITUTE(%s;",";CHAR(1);%s-%d))' % (line, commas, n)
            first = '=IF(%s="";%s;SUBSTITUTE(LEFT(%s;%s-1);"""";""))'
            # an answer without a table stands whole where the first name would
            nothing = 'IF(LEFT($C$12;8)="outcome,";"";$C$12)' if i == 0 else '""'
            put("H%d" % row, first % (line, nothing, line, cut(3)))
            for column, n in zip("IJK", (3, 2, 1)):
                piece = "MID(%s;%s+1;%s-%s-1)" % (line, cut(n), cut(n - 1), cut(n))
                put("%s%d" % (column, row), '=IF(%s="";"";%s)' % (line, NUMBER.format(piece)))
            piece = "MID(%s;%s+1;20)" % (line, cut(0))
            put("L%d" % row, '=IF(%s="";"";%s)' % (line, NUMBER.format(piece)))
        # rest points: begin N, end O, line P, x Q, y R; no label can be beyond the numbers
        lines("$C$14", "N", "O", "P", PLACES + 1)
        for i in range(PLACES):
            row = FIRST + 1 + i
            line = "P%d" % row
            commas = '(LEN(%s)-LEN(SUBSTITUTE(%s;",";"")))' % (line, line)
            cut = lambda n: 'FIND(CHAR(1);SUBSTITUTE(%s;",";CHAR(1);%s-%d))' % (line, commas, n)
            for column, n in zip("QR", (5, 4)):
                piece = "MID(%s;%s+1;%s-%s-1)" % (line, cut(n), cut(n - 1), cut(n))
                put("%s%d" % (column, row), '=IF(%s="";NA();%s)' % (line, NUMBER.format(piece)))
        # path: begin S, end T, line U, commas V W X, then t Y, x Z, y AA, trusted AB, beyond AC
        lines("$C$13", "S", "T", "U", POINTS + 1)
        trusted = "$C$10"
        until = 'IF(ISERROR(%s);1E9;%s)' % (NUMBER.format(trusted), NUMBER.format(trusted))
        put("AB38", "=" + until)
        for i in range(POINTS):
            row = FIRST + 1 + i
            put("V%d" % row, '=IF(U%d="";0;FIND(",";U%d))' % (row, row))
            put("W%d" % row, '=IF(U%d="";0;FIND(",";U%d;V%d+1))' % (row, row, row))
            put("X%d" % row, '=IF(U%d="";0;FIND(",";U%d;W%d+1))' % (row, row, row))
            for column, piece in (("Y", "LEFT(U%d;V%d-1)" % (row, row)),
                                  ("Z", "MID(U%d;V%d+1;W%d-V%d-1)" % (row, row, row, row)),
                                  ("AA", "MID(U%d;W%d+1;X%d-W%d-1)" % (row, row, row, row))):
                put("%s%d" % (column, row), '=IF(U%d="";NA();%s)' % (row, NUMBER.format(piece)))
            put("AB%d" % row, "=IF(Y%d<=$AB$38;AA%d;NA())" % (row, row))
            # one place is in both parts, so that the lines meet
            later = "Y%d>$AB$38" % (row + 1) if i + 1 < POINTS else "FALSE()"
            put("AC%d" % row, "=IF(OR(Y%d>$AB$38;IF(ISNA(Y%d);FALSE();%s));AA%d;NA())" % (
                row, row + 1, later, row))
        # a square about all of it, so that both axes of the chart have one scale
        area = "Z%d:AA%d" % (FIRST + 1, FIRST + POINTS)
        put("Y36", "=MAX(AGGREGATE(4;6;%s);-AGGREGATE(5;6;%s);AGGREGATE(4;6;Q%d:R%d))*1.05" % (
            area, area, FIRST + 1, FIRST + PLACES))
        put("Z36", "=CEILING(Y36;10^INT(LOG10(Y36))/2)")
        for row, sign in ((34, "-"), (35, "")):
            put("AA%d" % row, "=%s$Z$36" % sign)
            put("AB%d" % row, "=%s$Z$36" % sign)
        for column, key in zip(("Y", "Z", "AA", "AB", "AC", "R"),
                               ("time", "xmm", "ymm", "trustedPart", "beyond", "restPoints")):
            put("%s%d" % (column, FIRST), self.name(key), "Column")
        put("AA33", self.name("frame"))
        put("AC36", self.name("releasePoint"))

    def path(self):
        sheet = self.sheet("path")
        self.widths(sheet, 22, 24, 24, 30, 42, 42)
        put = lambda *what: self.put(sheet, *what)
        put("A1", self.name("pathTitle"), "Title")
        self.merge(sheet, "A2:F2", "Lead", 1000)
        put("A2", self.name("pathLead"))
        put("A3", self.name("state"))
        raw = self.ref("answers", "$C$13")
        put("B3", '=IF(LEFT(%s;4)="t_s,";"%s";%s)' % (raw, self.name("ready"), raw), "Value")
        self.merge(sheet, "B3:F3", "Value", 900)
        self.table_from = 52
        for column, key in zip("ABCD", ("time", "xmm", "ymm", "trustedPart")):
            put("%s%d" % (column, self.table_from), self.name(key), "Column")
        for i in range(POINTS):
            row = self.table_from + 1 + i
            source = FIRST + 1 + i
            for column, there in zip("ABC", ("Y", "Z", "AA")):
                cell = self.ref("answers", "%s%d" % (there, source))
                put("%s%d" % (column, row), '=IF(ISNA(%s);"";%s)' % (cell, cell))
            time = self.ref("answers", "Y%d" % source)
            put("D%d" % row, '=IF(ISNA(%s);"";IF(%s<=%s;"%s";"%s"))' % (
                time, time, self.ref("answers", "$AB$38"), self.name("yes"), self.name("beyond")))
        block = sheet.getCellRangeByName(
            "A%d:C%d" % (self.table_from + 1, self.table_from + POINTS))
        block.CellStyle = "Figure"
        self.print_area(sheet, "A1:F51")

    def help(self):
        sheet = self.sheet("help")
        self.widths(sheet, 178)
        self.put(sheet, "A1", self.name("help"), "Title")
        row = 2
        for kind, text in HELP[self.language]:
            self.put(sheet, "A%d" % row, text, "Heading" if kind else "Wrapped")
            sheet.Rows.getByIndex(row - 1).OptimalHeight = True
            row += 1
        self.print_area(sheet, "A1:A%d" % (row - 1))

    # ---- charts ------------------------------------------------------------------------------

    def chart(self, key, name, area, title, alternative):
        """A chart without data of its own."""
        sheet = self.sheet(key)
        empty = sheet.getCellRangeByName("A1").RangeAddress
        sheet.Charts.addNewByName(name, area, (empty,), False, False)
        holder = sheet.Charts.getByName(name).EmbeddedObject
        for i in range(sheet.DrawPage.Count):
            shape = sheet.DrawPage.getByIndex(i)
            if shape.supportsService("com.sun.star.drawing.OLE2Shape"):
                shape.Title = title
                shape.Description = alternative
        return holder

    def sequence(self, provider, where, role):
        data = provider.createDataSequenceByRangeRepresentation(where)
        data.Role = role
        return data

    def labelled(self, provider, values, label=None):
        one = self.office.context.ServiceManager.createInstanceWithContext(
            "com.sun.star.chart2.data.LabeledDataSequence", self.office.context)
        one.setValues(values)
        if label:
            one.setLabel(provider.createDataSequenceByRangeRepresentation(label))
        return one

    def scene(self, holder, chart_type):
        """The chart's own coordinate system with a single type in it."""
        holder.lockControllers()
        diagram = holder.FirstDiagram
        system = diagram.getCoordinateSystems()[0]
        for old in system.getChartTypes():
            system.removeChartType(old)
        kind = self.office.context.ServiceManager.createInstanceWithContext(
            "com.sun.star.chart2." + chart_type, self.office.context)
        system.addChartType(kind)
        return system, kind

    def series(self, kind, provider, parts, label):
        """A series of (role, cells) pairs."""
        one = self.office.context.ServiceManager.createInstanceWithContext(
            "com.sun.star.chart2.DataSeries", self.office.context)
        one.setData(tuple(
            self.labelled(provider, self.sequence(provider, where, role),
                          label if role == "values-y" else None)
            for role, where in parts))
        kind.addDataSeries(one)
        return one

    def plan(self):
        """The path seen from above."""
        answers = lambda span: "$'%s'.%s" % (self.name("answers"), span)
        holder = self.chart("path", "path", Rectangle(500, 3400, 15500, 17200),
                            self.name("pathTitle"), self.name("pathAlt"))
        holder.setDiagram(holder.createInstance("com.sun.star.chart.XYDiagram"))
        provider = holder.getDataProvider()
        system, kind = self.scene(holder, "ScatterChartType")
        span = lambda column: answers(
            "$%s$%d:$%s$%d" % (column, FIRST + 1, column, FIRST + POINTS))
        head = lambda column: answers("$%s$%d" % (column, FIRST))
        frame = self.series(kind, provider, (
            ("values-x", answers("$AA$34:$AA$35")), ("values-y", answers("$AB$34:$AB$35"))),
            answers("$AA$33"))
        trusted = self.series(kind, provider, (
            ("values-x", span("Z")), ("values-y", span("AB"))), head("AB"))
        beyond = self.series(kind, provider, (
            ("values-x", span("Z")), ("values-y", span("AC"))), head("AC"))
        rest = self.series(kind, provider, (
            ("values-x", answers("$Q$%d:$Q$%d" % (FIRST + 1, FIRST + PLACES))),
            ("values-y", answers("$R$%d:$R$%d" % (FIRST + 1, FIRST + PLACES)))), head("R"))
        begin = self.series(kind, provider, (
            ("values-x", answers("$Z$%d:$Z$%d" % (FIRST + 1, FIRST + 1))),
            ("values-y", answers("$AA$%d:$AA$%d" % (FIRST + 1, FIRST + 1)))), answers("$AC$36"))
        self.line(frame, None, 0, None)
        self.line(trusted, DARK, 60, None)
        self.line(beyond, GREY, 40, None, dotted=True)
        self.line(rest, None, 0, 0, INK)
        self.line(begin, None, 0, 3, 0xB3261E)
        self.axes(holder, "x (mm)", "y (mm)")
        frame.ShowLegendEntry = False
        holder.HasMainTitle = True
        holder.Title.String = self.name("pathTitle")
        holder.unlockControllers()
        holder.Diagram.setDiagramPositionExcludingAxes(Rectangle(1700, 1600, 13200, 13200))

    def line(self, series, color, width, symbol, fill=None, dotted=False):
        style = "com.sun.star.drawing.LineStyle"
        series.Color = color if color is not None else (fill or INK)
        series.LineWidth = width
        if color is None:
            series.LineStyle = uno.Enum(style, "NONE")
        elif dotted:
            series.LineStyle = uno.Enum(style, "DASH")
            dash = uno.createUnoStruct("com.sun.star.drawing.LineDash")
            dash.Style = uno.Enum("com.sun.star.drawing.DashStyle", "RECT")
            dash.Dots, dash.DotLen, dash.Dashes, dash.DashLen, dash.Distance = 1, 60, 0, 0, 90
            series.LineDash = dash
        else:
            series.LineStyle = uno.Enum(style, "SOLID")
        mark = uno.createUnoStruct("com.sun.star.chart2.Symbol")
        if symbol is None:
            mark.Style = uno.Enum("com.sun.star.chart2.SymbolStyle", "NONE")
        else:
            mark.Style = uno.Enum("com.sun.star.chart2.SymbolStyle", "STANDARD")
            mark.StandardSymbol = symbol
            mark.Size = Size(300, 300)
            mark.FillColor = fill
            mark.BorderColor = fill
        series.Symbol = mark

    def axes(self, holder, horizontal, vertical):
        diagram = holder.Diagram
        diagram.HasXAxisTitle = bool(horizontal)
        diagram.HasYAxisTitle = bool(vertical)
        if horizontal:
            diagram.XAxisTitle.String = horizontal
        if vertical:
            diagram.YAxisTitle.String = vertical
        if horizontal:
            diagram.HasXAxisGrid = True
            diagram.XMainGrid.LineColor = 0xD0D0D0
        diagram.YMainGrid.LineColor = 0xD0D0D0
        for wall in (diagram.Wall, holder.Area):
            wall.FillStyle = uno.Enum("com.sun.star.drawing.FillStyle", "SOLID")
            wall.FillColor = 0xFFFFFF
            wall.LineStyle = uno.Enum("com.sun.star.drawing.LineStyle", "NONE")
        holder.HasLegend = True
        holder.Legend.FillStyle = uno.Enum("com.sun.star.drawing.FillStyle", "NONE")
        holder.Legend.LineStyle = uno.Enum("com.sun.star.drawing.LineStyle", "NONE")
        holder.Legend.Alignment = uno.Enum("com.sun.star.chart.ChartLegendPosition", "BOTTOM")
        # the axes of the path stay at the edges, where the path does not cover their numbers
        for axis in (diagram.XAxis, diagram.YAxis):
            axis.CharColor = INK
            if horizontal:
                axis.LabelPosition = uno.Enum(
                    "com.sun.star.chart.ChartAxisLabelPosition", "OUTSIDE_START")

    def bars(self):
        """Counted beside expected."""
        tally = lambda span: "$'%s'.%s" % (self.name("tally"), span)
        last = 4 + LABELS
        holder = self.chart("tally", "tally", Rectangle(300, 12000, 16500, 8500),
                            self.name("tallyTitle"), self.name("tallyAlt"))
        holder.setDiagram(holder.createInstance("com.sun.star.chart.BarDiagram"))
        provider = holder.getDataProvider()
        system, kind = self.scene(holder, "ColumnChartType")
        for column, color in (("B", DARK), ("C", LIGHT)):
            one = self.series(kind, provider, (
                ("values-y", tally("$%s$5:$%s$%d" % (column, column, last))),), tally("$%s$4" % column))
            one.Color = color
            one.BorderStyle = uno.Enum("com.sun.star.drawing.LineStyle", "SOLID")
            one.BorderColor = INK
            one.BorderWidth = 20
        scale = system.getAxisByDimension(0, 0).getScaleData()
        scale.Categories = self.labelled(
            provider, self.sequence(provider, tally("$A$5:$A$%d" % last), "categories"))
        system.getAxisByDimension(0, 0).setScaleData(scale)
        self.axes(holder, "", "")
        holder.HasMainTitle = True
        holder.Title.String = self.name("tallyTitle")
        holder.unlockControllers()

    # ---- files -------------------------------------------------------------------------------

    def link(self):
        """The sheet with a linked table; XLSX cannot hold such a link."""
        sheets = self.document.Sheets
        sheets.insertNewByName(self.name("link"), sheets.Count)
        sheet = self.sheet("link")
        self.widths(sheet, 24, 24, 24, 28, 28, 28)
        self.merge(sheet, "A1:F1", "Lead", 1000)
        self.put(sheet, "A1", self.name("linkTitle"))
        address = "%s/v1/layouts/%s/trace?x=-70&y=30&durationS=5&sampleIntervalS=0.1&format=csv&wait=60"
        self.document.AreaLinks.insertAtPosition(
            sheet.getCellRangeByName("A3").CellAddress, address % (self.service, self.sample_id),
            "CSV_all", "Text - txt - csv (StarCalc)", "44,34,76,1,,1033,false,true,false")
        self.print_area(sheet, "A1:F55")

    def save(self, folder):
        first = self.sheet("release")
        self.document.CurrentController.setActiveSheet(first)
        # XLSX first: it has no sheet with a link
        for kind, form in reversed(FORMATS):
            if kind == "ods":
                self.link()
                self.document.CurrentController.setActiveSheet(first)
            path = abspath(join(folder, file_name(self.language, kind)))
            self.document.storeToURL(
                uno.systemPathToFileUrl(path), properties(FilterName=form))
            settle(path, self.service, self.words)
        self.document.close(True)


def file_name(language, kind):
    return "lodeswing%s.%s" % ("" if language == "en" else "-" + language, kind)


# What differs from run to run in the parts of a file.
CHANGING = (
    (rb"<meta:creation-date>.*?</meta:creation-date>", b""),
    (rb"<meta:editing-duration>.*?</meta:editing-duration>", b""),
    (rb"<meta:editing-cycles>.*?</meta:editing-cycles>", b""),
    (rb"<dc:date>.*?</dc:date>", b""),
    (rb"<dcterms:(created|modified)[^>]*>.*?</dcterms:\1>", b""),
    (rb"<TotalTime>.*?</TotalTime>", b""),
    (rb'<manifest:file-entry [^>]*Thumbnails/thumbnail.png"[^>]*/>\s*', b""),
    (rb'<config:config-item config:name="Printer(Setup|Name)"[^>]*>.*?</config:config-item>', b""),
    (rb'<config:config-item config:name="Printer(Setup|Name)"[^>]*/>', b""),
)


def settle(path, service, texts):
    """Writes a file anew without what differs from run to run, under one fixed time."""
    with zipfile.ZipFile(path) as made:
        parts = [(one.filename, made.read(one)) for one in made.infolist()]
    with zipfile.ZipFile(path, "w") as kept:
        for name, content in parts:
            if name.startswith("Thumbnails/") or name.endswith("/"):
                continue
            if name.endswith((".xml", ".rels", ".rdf")):
                content = content.replace(service.encode(), USUAL.encode())
                for pattern, by in CHANGING:
                    content = re.sub(pattern, by, content, flags=re.S)
            if name in PICTURED:
                named = pictured(texts, PICTURED[name])
                content = re.sub(rb'<xdr:cNvPr id="\d+" name="">', lambda found: named, content)
            if name.startswith("xl/charts/"):
                content = axes_counted(content)
            entry = zipfile.ZipInfo(name, (1980, 1, 1, 0, 0, 0))
            entry.compress_type = (
                zipfile.ZIP_STORED if name == "mimetype" else zipfile.ZIP_DEFLATED)
            entry.external_attr = 0o644 << 16
            kept.writestr(entry, content)


# LibreOffice keeps the charts' titles and alternative texts in ODS alone.
PICTURED = {"xl/drawings/drawing1.xml": "path", "xl/drawings/drawing2.xml": "tally"}


def pictured(texts, key):
    """What a chart is called in XLSX, and what it shows."""
    title = quoteattr(texts[key + "Title"])
    named = '<xdr:cNvPr id="2" name=%s title=%s descr=%s>' % (
        title, title, quoteattr(texts[key + "Alt"]))
    return named.encode()


def axes_counted(chart):
    """The numbers that name a chart's axes are drawn at random; here they are counted."""
    seen = []
    for number_of in re.findall(rb'<c:axId val="(\d+)"/>', chart):
        if number_of not in seen:
            seen.append(number_of)
    return re.sub(
        rb'(<c:(?:axId|crossAx) val=")(\d+)"',
        lambda found: found.group(1) + b'%d"' % (1001 + seen.index(found.group(2))), chart)


def build(service, folder, languages=LANGUAGES):
    # American English, so that what a locale could put in does not depend on the machine
    with Office("en-US", folder) as office:
        for language in languages:
            workbook = Workbook(office, service, language)
            workbook.make()
            workbook.save(folder)


if __name__ == "__main__":
    build(sys.argv[1].rstrip("/"), sys.argv[2], sys.argv[3:] or LANGUAGES)
