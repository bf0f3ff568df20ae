package lodeswing.render.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Anchor;
import lodeswing.figure.Dash;
import lodeswing.figure.Drawing;
import lodeswing.figure.Mark;
import lodeswing.figure.Pattern;
import lodeswing.figure.Points;
import lodeswing.figure.Shape;
import lodeswing.figure.Stroke;
import lodeswing.figure.Style;
import lodeswing.figure.Tint;
import lodeswing.figure.ViewBox;
import lodeswing.sheet.Flow;
import lodeswing.sheet.Page;
import lodeswing.sheet.Paper;
import lodeswing.sheet.PrintedSheet;
import lodeswing.sheet.Table;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PdfWriterTest {

  private static final Stroke LINE = Stroke.solid(Tint.Role.INK, 1);
  private static final Style BOTH = Style.of(Tint.Role.PLATE, LINE);
  private static final Points CORNERS =
      new Points(new double[] {0, 1, 1, 0}, new double[] {0, 0, 1, 1});

  /** A sheet with a part of every kind. */
  private static PrintedSheet sheet(String... paragraphs) {
    var flow = new Flow(Paper.A4.lying(false), 0.015, 0.005, Locale.ENGLISH);
    flow.heading("Stations & <signs>").subheading("What is here");
    for (String paragraph : paragraphs) {
      flow.paragraph(paragraph);
    }
    flow.list(List.of("one thing", "another thing")).remark("small");
    List<List<String>> rows = new ArrayList<>();
    for (int i = 1; i <= 60; i++) {
      rows.add(List.of(Integer.toString(i), "Station " + i, Double.toString(i / 4.0)));
    }
    flow.table(
        new Table(
            List.of(
                new Table.Column("No.", false),
                new Table.Column("Name", false),
                new Table.Column("Length", true)),
            rows));
    flow.figure(
        "A disc",
        0.02,
        (left, bottom) -> List.of(new Shape.Circle(left + 0.01, bottom + 0.01, 0.008, BOTH)));
    return new PrintedSheet(
        new AlternativeText("en", "Stations & <signs>", "A sheet to try."),
        flow.pages().stream().map(blocks -> new Page(Paper.A4.lying(false), blocks)).toList());
  }

  /** A drawing with every shape there is. */
  private static Drawing drawing() {
    return new Drawing(
        new ViewBox(-1, -1, 4, 3),
        400,
        List.of(
            new Shape.Group(
                "all",
                "every shape",
                List.of(
                    new Shape.Polyline(CORNERS, LINE.with(Dash.DASHED), 3),
                    new Shape.Curve(CORNERS, new Stroke(Tint.Role.SOUTH, 2, Dash.SOLID, 0.4), 0),
                    new Shape.Circle(0, 0, 0.5, BOTH),
                    new Shape.Ring(1, 1, 0.2, 0.4, BOTH))),
            new Shape.Clipped(
                new ViewBox(0, 0, 1, 1), List.of(new Shape.Rectangle(1, 1, 1, 0.5, 0.3, BOTH))),
            new Shape.Polygon(CORNERS, Style.filled(Tint.Role.NORTH_FACE)),
            new Shape.Region(List.of(CORNERS), BOTH),
            new Shape.Strokes(List.of(CORNERS, CORNERS), LINE),
            new Shape.Symbol(Mark.STAR, 2, 1, 14, 0.2, BOTH),
            new Shape.Symbol(Mark.DISC, 2, 0, 14, 0, BOTH),
            new Shape.Text("over lines", 1, 0.5, 14, Anchor.MIDDLE, Tint.Role.INK, true),
            new Shape.Inked(Pattern.GRID, 2, 1.5, 40, 30, Tint.Role.INK)),
        List.of(),
        new AlternativeText("en", "Everything", "A picture of every shape."));
  }

  @Test
  void aSheetKeepsToTheStandardsOfArchivesAndAccess() throws Exception {
    PdfValidation.check(
        PdfWriter.write(
            sheet("Plain words.", "الإجابة لا شيء", "潮汐站", "שלום", "दिल्ली", "🌊 ไทย")));
  }

  @Test
  void aPictureKeepsToThemToo() throws Exception {
    byte[] pdf = PdfWriter.write(drawing());
    PdfValidation.check(pdf);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      // 400 by 300 pixels, 96 to the inch.
      assertEquals(300, document.getPage(0).getMediaBox().getWidth());
      assertEquals(225, document.getPage(0).getMediaBox().getHeight());
      assertEquals("over lines", new PDFTextStripper().getText(document).strip().split("\n")[0]);
    }
  }

  @Test
  void sameSheetSameBytes() {
    byte[] once = PdfWriter.write(sheet("Plain words.", "الإجابة"));
    assertArrayEquals(once, PdfWriter.write(sheet("Plain words.", "الإجابة")));
    assertFalse(java.util.Arrays.equals(once, PdfWriter.write(sheet("Other words.", "الإجابة"))));
  }

  @Test
  void textIsReadOutAsItWasWritten() throws IOException {
    for (String text :
        List.of(
            "Über die Düne – ¿cuál?",
            "الإجابة لا شيء",
            "محطة المد",
            "潮汐站、沙丘站、礁石站",
            "שלום עולם",
            "नमस्ते क्षेत्र दिल्ली",
            "Ωμέγα Привет Việt Nam",
            // What no typeface has is marked on paper, and still read out.
            "Tide 🌊 ไทย")) {
      try (PDDocument document = Loader.loadPDF(PdfWriter.write(sheet(text)))) {
        String read = new PDFTextStripper().getText(document);
        assertTrue(read.lines().anyMatch(text::equals), text + " is not in\n" + read);
      }
    }
  }

  @Test
  void partsAreTaggedAsWhatTheyAre() throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(sheet("Plain words.")))) {
      COSDictionary root = document.getDocumentCatalog().getCOSObject();
      assertEquals("en", root.getString(COSName.LANG));
      assertEquals("Stations & <signs>", document.getDocumentInformation().getTitle());
      assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
      List<String> types = new ArrayList<>();
      collect(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), types);
      Map<String, Long> counts =
          types.stream()
              .collect(
                  java.util.stream.Collectors.groupingBy(
                      type -> type, java.util.stream.Collectors.counting()));
      assertEquals(1, counts.get("H1"));
      assertEquals(1, counts.get("H2"));
      assertEquals(2, counts.get("LI"));
      assertEquals(1, counts.get("Figure: A disc"));
      long tables = counts.getOrDefault("Table", 0L);
      assertTrue(tables >= 2, "the table goes on on another page");
      assertEquals(60 + tables, counts.get("TR"));
      // Three heads of columns a table, one head a row.
      assertEquals(60 + 3 * tables, counts.get("TH"));
      assertEquals(120, counts.get("TD"));
    }
  }

  private static void collect(COSBase node, List<String> types) {
    COSBase own = node instanceof COSObject reference ? reference.getObject() : node;
    if (own instanceof COSArray kids) {
      kids.forEach(kid -> collect(kid, types));
    } else if (own instanceof COSDictionary element) {
      String type = element.getNameAsString(COSName.S);
      if (type != null) {
        String words = element.getString(COSName.ALT);
        types.add(words == null ? type : type + ": " + words);
      }
      COSBase kids = element.getDictionaryObject(COSName.K);
      if (kids != null) {
        collect(kids, types);
      }
    }
  }

  @Test
  void typefacesAreInsideAsSubsetsWithoutAnyMissingGlyph() throws IOException {
    byte[] pdf = PdfWriter.write(sheet("Plain words.", "潮汐站", "दिल्ली", "🌊"));
    assertTrue(pdf.length < 60_000, pdf.length + " bytes");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      int fonts = 0;
      for (COSName name : document.getPage(0).getResources().getFontNames()) {
        var font = (PDType0Font) document.getPage(0).getResources().getFont(name);
        assertTrue(font.isEmbedded(), font.getName());
        assertTrue(font.getName().matches("[A-Z]{6}\\+.*"), font.getName());
        int code = 1;
        while (font.toUnicode(code) != null) {
          assertNotEquals(0, font.codeToGID(code), font.getName() + " " + font.toUnicode(code));
          code++;
        }
        assertTrue(code > 1);
        fonts++;
      }
      assertEquals(3, fonts);
    }
  }
}
