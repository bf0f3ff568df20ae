package lodeswing.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lodeswing.figure.Shape;
import lodeswing.figure.Tint;
import lodeswing.letters.Typesetter;
import lodeswing.render.Palette;
import lodeswing.render.Rgb;
import lodeswing.render.pdf.PdfValidation;
import lodeswing.render.pdf.PdfWriter;
import lodeswing.words.Words;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class OutcomeSheetTest {

  private static final double MM = 1e-3;
  private static final String LONG =
      "The station beyond the long dune where the tide comes in at 6";
  private static final List<String> LABELS =
      List.of("Tide", LONG, "محطة المد والجزر", "潮汐站", "दिल्ली", "<b>&amp;</b>");

  private static Lettering.Found set(String label, Lettering.Room room, double least) {
    return new Lettering(label, "31 %", Locale.ENGLISH).largest(room, least).orElseThrow();
  }

  /** Width and height of what was set, measured anew [m]. */
  private static double[] box(Lettering.Found found) {
    double em = found.size() * 0.0254 / 72;
    double width = 0.62 * em * Typesetter.line("31 %").width();
    for (String line : found.lines()) {
      width = Math.max(width, em * Typesetter.line(line).width());
    }
    return new double[] {width, (found.lines().size() + 0.62) * 1.32 * em};
  }

  @Test
  void lettersGrowUntilTheyTouchAnEdgeOfTheirTag() {
    var card = new Lettering.Card(0, 0, 40 * MM, 20 * MM);
    for (String label : LABELS) {
      Lettering.Found found = set(label, card, 1);
      double[] box = box(found);
      assertTrue(box[0] <= card.width() * 1.001 && box[1] <= card.height() * 1.001, label);
      boolean touches = box[0] > 0.98 * card.width() || box[1] > 0.98 * card.height();
      assertTrue(touches, label + " could be larger: " + found);
      assertEquals(label.replace(" ", ""), String.join("", found.lines()).replace(" ", ""));
    }
    assertTrue(set("Tide", card, 1).size() > 2 * set(LONG, card, 1).size());
  }

  @Test
  void lettersInAWedgeKeepWithinItsSidesAndOffTheMagnet() {
    double radius = 90 * MM;
    double from = Math.toRadians(-20);
    double angle = Math.toRadians(60);
    double x = 50 * MM * Math.cos(from + angle / 2);
    double y = 50 * MM * Math.sin(from + angle / 2);
    var hole = Crowd.Body.disc(x, y, 12 * MM);
    var wedge = new Lettering.Wedge(0, 0, radius, from, angle, List.of(hole));
    for (String label : LABELS) {
      Lettering.Found found = set(label, wedge, 1);
      double[] box = box(found);
      for (int i = 0; i <= 20; i++) {
        for (int j = 0; j <= 20; j++) {
          double px = found.x() + box[0] * (i / 20.0 - 0.5);
          double py = found.y() + box[1] * (j / 20.0 - 0.5);
          double turn = Math.atan2(py, px);
          assertTrue(Math.hypot(px, py) <= radius, label);
          assertTrue(turn >= from && turn <= from + angle, label);
          assertTrue(Math.hypot(px - x, py - y) >= hole.across(), label);
        }
      }
    }
  }

  private static OutcomePlan plan(List<String> labels, double ring) {
    List<OutcomePlan.Place> places = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      double angle = 2 * Math.PI * i / labels.size();
      places.add(
          new OutcomePlan.Place(
              i + 1,
              labels.get(i),
              ring * Math.cos(angle),
              ring * Math.sin(angle),
              10 * MM,
              Optional.of(new OutcomePlan.Chance(0.314, 0.29, 0.338))));
    }
    return new OutcomePlan(
        "Which station?", places, true, Optional.of("A hand of 3 mm."), List.of("Mind it."));
  }

  private static Optional<PrintedSheet> sheet(
      OutcomePlan plan, Optional<OutcomeSheet.Pieces> pieces, Locale locale) {
    return OutcomeSheet.of(plan, Paper.A4.lying(false), pieces, Words.of("sheet", locale));
  }

  private static String read(PrintedSheet sheet) throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(sheet))) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void labelsOfAnyScriptAreOnWedgesAndTagsAndKeepToTheStandards() throws Exception {
    for (OutcomeSheet.Pieces pieces : OutcomeSheet.Pieces.values()) {
      PrintedSheet sheet =
          sheet(plan(LABELS, 50 * MM), Optional.of(pieces), Locale.GERMANY).orElseThrow();
      PdfValidation.check(PdfWriter.write(sheet));
      String text = read(sheet);
      for (String part :
          List.of("Tide", "潮汐站", "दिल्ली", "<b>&amp;</b>", "31,4 %", "29 bis 33,8 %")) {
        assertTrue(text.contains(part), pieces + ": " + part + " is not in " + text);
      }
    }
  }

  @Test
  void wedgesGiveWayToTagsWhereTheyDoNotFit() {
    Optional<OutcomeSheet.Pieces> wedges = Optional.of(OutcomeSheet.Pieces.WEDGES);
    // A magnet in the middle, magnets beyond the paper, more labels than a disc has room for.
    for (OutcomePlan plan :
        List.of(plan(LABELS, 0), plan(LABELS, 0.2), plan(List.of(LONG.split("")), 60 * MM))) {
      assertTrue(sheet(plan, wedges, Locale.ENGLISH).isEmpty());
      assertTrue(sheet(plan, Optional.empty(), Locale.ENGLISH).isPresent());
    }
  }

  @Test
  void whatCannotBeSetIsLeftForAHandAndNamed() throws Exception {
    String text =
        read(
            sheet(plan(List.of("🌊 ไทย", "Dune"), 50 * MM), Optional.empty(), Locale.ENGLISH)
                .orElseThrow());
    assertTrue(text.contains("The letters of 1 are not"), text);
    assertTrue(text.contains("____"), text);
  }

  /** WCAG 2.2, 1.4.3 and 1.4.11, on white paper. */
  @Test
  void everythingStandsOutFromThePaper() {
    PrintedSheet sheet =
        sheet(plan(LABELS, 50 * MM), Optional.empty(), Locale.ENGLISH).orElseThrow();
    List<Shape> shapes = new ArrayList<>();
    for (Page page : sheet.pages()) {
      page.drawing(sheet.about()).shapes().forEach(shape -> flatten(shape, shapes));
    }
    Rgb white = Rgb.of(0xFFFFFF);
    int texts = 0;
    for (Shape shape : shapes) {
      if (shape instanceof Shape.Text text) {
        assertTrue(Palette.colour(text.tint()).contrast(white) >= 4.5, text.toString());
        texts++;
      } else if (shape instanceof Shape.Circle circle) {
        Tint tint = circle.style().stroke().orElseThrow().tint();
        assertTrue(Palette.colour(tint).contrast(white) >= 3, circle.toString());
      }
    }
    assertTrue(texts > LABELS.size());
  }

  private static void flatten(Shape shape, List<Shape> into) {
    if (shape instanceof Shape.Group group) {
      group.shapes().forEach(one -> flatten(one, into));
    } else {
      into.add(shape);
    }
  }
}
