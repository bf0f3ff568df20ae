package lodeswing.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.JsonPath;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lodeswing.RunningService;
import lodeswing.figure.Outline;
import lodeswing.figure.PlateMagnet;
import lodeswing.render.pdf.PdfValidation;
import lodeswing.render.pdf.PdfWriter;
import lodeswing.words.Words;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlacingSheetTest {

  private static final double MM = 1e-3;

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  /** What a sheet promises [mm]. */
  private static final double PROMISED = 0.1;

  /** What its operators keep: they are written to 0.0001 pt [mm]. */
  private static final double WRITTEN = 1e-3;

  private static final int DPI = 600;

  private static final Table PARTS =
      new Table(List.of(new Table.Column("Part", false)), List.of(List.of("disc magnet")));

  private static SheetMagnet disc(int number, double x, double y, double radius, String label) {
    PlateMagnet.Face face = number % 2 == 0 ? PlateMagnet.Face.NORTH : PlateMagnet.Face.SOUTH;
    return new SheetMagnet(
        new PlateMagnet(number, x * MM, y * MM, new Outline.Round(radius * MM), face, label),
        "disc",
        "N35");
  }

  private static PlacingPlan plan(Optional<Outline> plate, List<SheetMagnet> magnets) {
    return new PlacingPlan(
        "Which station?", plate, magnets, Optional.empty(), PARTS, List.of("Mind your fingers."));
  }

  /** Three discs in a triangle. */
  private static PlacingPlan three() {
    return plan(
        Optional.empty(),
        List.of(
            disc(1, 45, 0, 12.5, "Tide"),
            disc(2, -22.5, 38.97, 12.5, "Dune"),
            disc(3, -22.5, -38.97, 12.5, "Reef")));
  }

  /** Nineteen discs in closest order and eight round them, on a round plate of 260 mm. */
  private static PlacingPlan crowded() {
    List<SheetMagnet> magnets = new ArrayList<>();
    for (int q = -2; q <= 2; q++) {
      for (int r = Math.max(-2, -2 - q); r <= Math.min(2, 2 - q); r++) {
        magnets.add(
            disc(
                magnets.size() + 1,
                36 * (q + r / 2.0),
                36 * r * Math.sqrt(0.75),
                6,
                "Station " + magnets.size()));
      }
    }
    for (int i = 0; i < 8; i++) {
      double angle = Math.toRadians(22.5 + 45 * i);
      magnets.add(disc(magnets.size() + 1, 112 * Math.cos(angle), 112 * Math.sin(angle), 6, ""));
    }
    return plan(Optional.of(new Outline.Round(0.13)), magnets);
  }

  private static byte[] pdf(PlacingPlan plan, Paper paper, Optional<Boolean> landscape) {
    return PdfWriter.write(
        PlacingSheet.of(plan, paper, landscape, Words.of("sheet", Locale.ENGLISH)));
  }

  /**
   * From the plate's places to a page's, found from the circles on it, each of which must be a
   * magnet's.
   */
  private record Fit(double x, double y, Set<Integer> seen) {

    static Fit of(List<PrintedPage.Circle> circles, List<SheetMagnet> magnets, double within) {
      for (SheetMagnet first : magnets) {
        double x = circles.get(0).x() - first.magnet().x() / MM;
        double y = circles.get(0).y() - first.magnet().y() / MM;
        Set<Integer> seen = new HashSet<>();
        for (PrintedPage.Circle circle : circles) {
          for (SheetMagnet one : magnets) {
            double dx = circle.x() - x - one.magnet().x() / MM;
            double dy = circle.y() - y - one.magnet().y() / MM;
            if (Math.hypot(dx, dy) < within) {
              seen.add(one.magnet().number());
            }
          }
        }
        if (seen.size() == circles.size()) {
          return new Fit(x, y, seen);
        }
      }
      throw new AssertionError("The circles of a page are not where magnets are.");
    }
  }

  @Test
  void centresAndChecksOfOnePageAreTrueByItsOperators() throws IOException {
    for (Paper paper : Paper.values()) {
      try (PDDocument document = Loader.loadPDF(pdf(three(), paper, Optional.empty()))) {
        var page = new PrintedPage(document.getPage(0));
        List<PrintedPage.Circle> circles = page.circles(12.5);
        assertEquals(3, circles.size());
        Fit fit = Fit.of(circles, three().magnets(), WRITTEN);
        assertEquals(3, fit.seen().size());
        // The ring about the point under the bob.
        PrintedPage.Circle ring = page.circles(2.5).get(0);
        assertEquals(fit.x(), ring.x(), WRITTEN);
        assertEquals(fit.y(), ring.y(), WRITTEN);
        List<PrintedPage.Segment> checks =
            page.segments.stream().filter(s -> Math.abs(s.length() - 100) < 2 * WRITTEN).toList();
        assertTrue(checks.stream().anyMatch(s -> Math.abs(s.fromY() - s.toY()) < WRITTEN));
        assertTrue(checks.stream().anyMatch(s -> Math.abs(s.fromX() - s.toX()) < WRITTEN));
      }
    }
  }

  @Test
  void pagesJoinAtTheirMarksAndNoMagnetIsLost() throws IOException {
    PlacingPlan plan = crowded();
    for (boolean landscape : new boolean[] {false, true}) {
      try (PDDocument document = Loader.loadPDF(pdf(plan, Paper.A4, Optional.of(landscape)))) {
        Set<Integer> seen = new HashSet<>();
        Set<String> marks = new HashSet<>();
        int twice = 0;
        int plates = 0;
        for (PDPage printed : document.getPages()) {
          var page = new PrintedPage(printed);
          List<PrintedPage.Circle> circles = page.circles(6);
          if (circles.isEmpty()) {
            continue;
          }
          plates++;
          Fit fit = Fit.of(circles, plan.magnets(), WRITTEN);
          seen.addAll(fit.seen());
          for (PrintedPage.Circle mark : page.circles(2)) {
            String place =
                Math.round((mark.x() - fit.x()) / PROMISED * 10)
                    + " "
                    + Math.round((mark.y() - fit.y()) / PROMISED * 10);
            twice += marks.add(place) ? 0 : 1;
          }
        }
        assertEquals(27, seen.size());
        assertEquals(landscape ? 2 : 4, plates);
        // Each mark is on two pages at one place of the plate.
        assertEquals(landscape ? 3 : 12, marks.size());
        assertEquals(marks.size(), twice);
      }
    }
  }

  @Test
  void centresAreTrueInPixelsToo() throws IOException {
    held(pdf(three(), Paper.A4, Optional.of(false)), three().magnets(), 12.5);
    held(pdf(crowded(), Paper.A4, Optional.of(true)), crowded().magnets(), 6);
  }

  /** The sheets that are answered for two samples, their magnets taken from their documents. */
  @ParameterizedTest
  @CsvSource({"three-stations, 3, 12.5", "crowded-shelf, 27, 6"})
  void centresOfTheSamplesAreTrueInPixels(String sample, int count, double radius)
      throws IOException {
    JsonPath layout = SERVICE.given().get(address(sample)).jsonPath();
    List<SheetMagnet> magnets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String magnet = "layout.magnets[" + i + "].";
      magnets.add(
          disc(i + 1, layout.getDouble(magnet + "x"), layout.getDouble(magnet + "y"), radius, ""));
      assertEquals(2 * radius, layout.getDouble(magnet + "diameterMm"));
    }
    assertEquals(count, layout.getList("layout.magnets").size());
    held(
        SERVICE.given().get(address(sample) + "/template?paper=a4").asByteArray(), magnets, radius);
  }

  private static String address(String sample) {
    return "/v1/layouts/" + SERVICE.given().get("/v1/sample-layouts/" + sample).path("layoutId");
  }

  /** Three discs in the middle of a plate whose edge is far from them. */
  @Test
  void pagesThatShowAtMostAnAxisAreLeftOutAndTheOthersAreJoined() throws IOException {
    for (Outline plate : List.of(new Outline.Round(0.35), new Outline.Oblong(0.9, 0.9, 0))) {
      PlacingPlan wide = plan(Optional.of(plate), three().magnets());
      long all = PlacingSheet.plates(wide, Paper.A4, Optional.of(false));
      Map<String, Integer> marks = new HashMap<>();
      Set<String> seen = new HashSet<>();
      int plates = 0;
      try (PDDocument document = Loader.loadPDF(pdf(wide, Paper.A4, Optional.of(false)))) {
        for (PDPage printed : document.getPages()) {
          String text = text(document, printed);
          if (!text.contains("Plate, row")) {
            continue;
          }
          plates++;
          var page = new PrintedPage(printed);
          List.of("Tide", "Dune", "Reef").stream().filter(text::contains).forEach(seen::add);
          assertFalse(page.circles(2).isEmpty(), "a page that is joined to none:\n" + text);
          for (String word : text.split("\\s+")) {
            // N and S are poles too.
            if (word.matches("[A-Z]{1,2}") && !Set.of("N", "S").contains(word)) {
              marks.merge(word, 1, Integer::sum);
            }
          }
        }
      }
      assertTrue(plates < all, plates + " of " + all + " pages");
      assertEquals(Set.of("Tide", "Dune", "Reef"), seen);
      assertTrue(marks.values().stream().allMatch(count -> count == 2), marks.toString());
    }
  }

  private static String text(PDDocument document, PDPage page) throws IOException {
    var stripper = new PDFTextStripper();
    int number = document.getPages().indexOf(page) + 1;
    stripper.setStartPage(number);
    stripper.setEndPage(number);
    return stripper.getText(document);
  }

  @Test
  void aSheetOfThreeMagnetsTakesTwoPages() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(three(), Paper.A4, Optional.empty()))) {
      assertEquals(2, document.getNumberOfPages());
    }
    byte[] sample = SERVICE.given().get(address("three-stations") + "/template").asByteArray();
    try (PDDocument document = Loader.loadPDF(sample)) {
      assertEquals(2, document.getNumberOfPages());
    }
  }

  /** Draws the pages in grey, 600 pixels to the inch, and finds each outline's middle. */
  private static void held(byte[] pdf, List<SheetMagnet> magnets, double radius)
      throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      var renderer = new PDFRenderer(document);
      Set<Integer> whole = new HashSet<>();
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        List<PrintedPage.Circle> circles = new PrintedPage(document.getPage(i)).circles(radius);
        if (circles.isEmpty()) {
          continue;
        }
        Fit fit = Fit.of(circles, magnets, WRITTEN);
        BufferedImage image = renderer.renderImageWithDPI(i, DPI, ImageType.GRAY);
        for (SheetMagnet one : magnets) {
          double x = (one.magnet().x() / MM + fit.x()) * DPI / 25.4;
          double y = image.getHeight() - (one.magnet().y() / MM + fit.y()) * DPI / 25.4;
          double reach = radius * DPI / 25.4;
          int[] box = outline(image, x, y, reach);
          // The outline's outer edge is four pixels beyond its middle, where nothing cuts it off.
          double edge = reach + 2;
          boolean seen =
              box[0] < x - edge && box[1] > x + edge && box[2] < y - edge && box[3] > y + edge;
          if (seen && fit.seen().contains(one.magnet().number())) {
            double off =
                Math.hypot((box[0] + box[1] + 1) / 2.0 - x, (box[2] + box[3] + 1) / 2.0 - y);
            assertTrue(off * 25.4 / DPI < PROMISED, one.magnet() + " is off by " + off + " px");
            whole.add(one.magnet().number());
          }
        }
      }
      assertEquals(magnets.size(), whole.size(), "magnets seen as a whole");
    }
  }

  /** Extent of the dark pixels within half a millimetre of a circle: left, right, top, bottom. */
  private static int[] outline(BufferedImage image, double x, double y, double reach) {
    double near = 0.5 * DPI / 25.4;
    int[] box = {Integer.MAX_VALUE, 0, Integer.MAX_VALUE, 0};
    int far = (int) (reach + near + 1);
    for (int row = (int) y - far; row <= y + far; row++) {
      for (int column = (int) x - far; column <= x + far; column++) {
        boolean inside = row >= 0 && column >= 0 && row < image.getHeight();
        if (!inside || column >= image.getWidth()) {
          continue;
        }
        double off = Math.hypot(column + 0.5 - x, row + 0.5 - y) - reach;
        if (Math.abs(off) < near && image.getRaster().getSample(column, row, 0) < 100) {
          box[0] = Math.min(box[0], column);
          box[1] = Math.max(box[1], column);
          box[2] = Math.min(box[2], row);
          box[3] = Math.max(box[3], row);
        }
      }
    }
    return box;
  }

  @Test
  void sheetsInEveryLanguageKeepToTheStandards() throws Exception {
    for (Locale locale : List.of(Locale.GERMANY, Locale.forLanguageTag("es"))) {
      Words words = Words.of("sheet", locale);
      PdfValidation.check(
          PdfWriter.write(PlacingSheet.of(crowded(), Paper.LETTER, Optional.empty(), words)));
    }
  }

  @Test
  void everythingIsSaidInText() throws IOException {
    PlacingPlan plan =
        new PlacingPlan(
            "الإجابة",
            Optional.empty(),
            List.of(disc(1, 45, 0, 12.5, "潮汐站"), disc(2, -45, 0, 3, "محطة المد")),
            Optional.of(new PlacingPlan.Spot(-0.07, 0.03)),
            PARTS,
            List.of("Mind your fingers."));
    Words german = Words.of("sheet", Locale.GERMANY);
    byte[] pdf = PdfWriter.write(PlacingSheet.of(plan, Paper.A4, Optional.empty(), german));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      for (String part :
          List.of("潮汐站", "محطة المد", "Südpol oben", "Nordpol oben", "N35", "(-70; 30) mm")) {
        assertTrue(text.contains(part), part + " is not in\n" + text);
      }
      assertTrue(text.contains("Mind your fingers."));
      assertTrue(text.contains("100 mm"));
    }
  }

  @Test
  void marksAreLettered() {
    assertEquals("A", PlacingSheet.letters(0));
    assertEquals("Z", PlacingSheet.letters(25));
    assertEquals("AA", PlacingSheet.letters(26));
    assertEquals("AZ", PlacingSheet.letters(51));
    assertEquals("BA", PlacingSheet.letters(52));
  }
}
