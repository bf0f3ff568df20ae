package lodeswing.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import lodeswing.figure.Outline;
import lodeswing.figure.PlateMagnet;
import lodeswing.figure.Shape;
import lodeswing.words.Words;
import org.junit.jupiter.api.Test;

class WorksheetTest {

  private static final double MM = 1e-3;

  private static PlateMagnet disc(int number, double x, double y) {
    return new PlateMagnet(
        number, x * MM, y * MM, new Outline.Round(12.5 * MM), PlateMagnet.Face.SOUTH, "");
  }

  private static WorksheetFacts.Aim aim(double x, double y) {
    return new WorksheetFacts.Aim(
        x * MM, y * MM, List.of(new WorksheetFacts.Chance("Tide", 1, 0.98, 1)));
  }

  private static WorksheetFacts facts(List<WorksheetFacts.Aim> aims, OptionalDouble halves) {
    List<PlateMagnet> magnets = List.of(disc(1, 45, 0), disc(2, -22.5, 39), disc(3, -22.5, -39));
    return new WorksheetFacts(
        "Which station?",
        Optional.empty(),
        magnets,
        List.of("Tide", "Dune", "Reef"),
        0.09,
        3e-3,
        aims,
        aims.isEmpty() ? List.of() : List.of(aims.get(0), aims.get(0)),
        List.of(),
        0,
        new WorksheetFacts.Swing(1.3, 1.3, OptionalDouble.of(0.42), halves),
        List.of(),
        List.of("Mind your fingers."));
  }

  private static PrintedSheet sheet(WorksheetFacts facts, Locale locale) {
    return Worksheet.of(
        facts,
        Arrays.asList(WorksheetActivity.values()),
        17,
        true,
        Paper.A4,
        Words.of("worksheet", locale));
  }

  private static String text(PrintedSheet sheet) {
    List<Shape.Text> texts = new ArrayList<>();
    sheet.pages().forEach(page -> page.items().forEach(block -> collect(block, texts)));
    return texts.stream().map(Shape.Text::text).collect(Collectors.joining(" "));
  }

  private static void collect(PageItem.Block block, List<Shape.Text> texts) {
    for (PageItem item : block.items()) {
      if (item instanceof PageItem.Block own) {
        collect(own, texts);
      } else if (item instanceof PageItem.Marks marks) {
        marks.shapes().stream()
            .filter(Shape.Text.class::isInstance)
            .map(Shape.Text.class::cast)
            .forEach(texts::add);
      }
    }
  }

  @Test
  void whereNothingCanBeLetGoTheSheetSaysSo() {
    for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMANY, Locale.forLanguageTag("es"))) {
      String said = Words.of("worksheet", locale).text("no-place");
      String text = text(sheet(facts(List.of(), OptionalDouble.of(32.5)), locale));
      assertTrue(text.contains(said.substring(0, 40)), text);
    }
  }

  @Test
  void theKeySaysOfALossOnlyWhatIsTrueOfIt() {
    List<WorksheetFacts.Aim> aims = List.of(aim(50, 50));
    String steady = "The same part is lost in every swing";
    String even = text(sheet(facts(aims, OptionalDouble.of(32.5)), Locale.ENGLISH));
    assertTrue(even.contains(steady), even);
    String uneven = text(sheet(facts(aims, OptionalDouble.empty()), Locale.ENGLISH));
    assertTrue(uneven.contains("is not the same part of each swing"), uneven);
    assertFalse(uneven.contains(steady), uneven);
  }

  /** A mark a few millimetres from a magnet's middle, and two beside each other. */
  @Test
  void namesInTheSketchDoNotRunTogether() {
    List<WorksheetFacts.Aim> aims = List.of(aim(-22, -35), aim(40, 10), aim(41, 16));
    var sketch = new PlateSketch(facts(aims, OptionalDouble.empty()), aims, 92 * MM);
    List<Shape.Text> names = new ArrayList<>();
    for (Shape shape : sketch.shapes(0, 0)) {
      if (shape instanceof Shape.Text text) {
        names.add(text);
      }
    }
    assertEquals(6, names.size());
    for (Shape.Text one : names) {
      assertTrue(one.halo(), one.text());
      for (Shape.Text other : names) {
        double apart = Math.hypot(one.x() - other.x(), one.y() - other.y());
        assertTrue(one.equals(other) || apart > 3 * MM, one.text() + " and " + other.text());
      }
    }
  }
}
