package lodeswing.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MapLegendFigureTest {

  @Test
  void longNamesAreWrappedAndNeverCut() {
    List<String> names =
        List.of(
            "Tide",
            "the swing leaves the range of angles",
            "between a station with a very long name and another station with a longer name still",
            "W".repeat(120));
    List<MapLegendFigure.Line> lines = new ArrayList<>();
    for (String name : names) {
      Tint tint = new Tint.Neutral(0, false);
      lines.add(
          new MapLegendFigure.Line(
              name, List.of(tint), List.of(tint), Pattern.PLAIN, Optional.empty()));
    }
    Drawing drawing =
        MapLegendFigure.draw(lines, "Lighter: soon.", new AlternativeText("en", "Legend", "Ends."));
    double lowest = 0;
    int row = 0;
    for (Shape shape : drawing.shapes()) {
      if (!(shape instanceof Shape.Group group)) {
        continue;
      }
      StringBuilder words = new StringBuilder();
      for (Shape part : group.shapes()) {
        if (part instanceof Shape.Text text) {
          double right = drawing.pixelX(text.x()) + TextWidth.of(text.text(), text.size());
          assertTrue(right <= drawing.nominalWidth(), text::text);
          double baseline = drawing.pixelY(text.y());
          assertTrue(baseline > lowest + 10, "lines overlap");
          lowest = baseline;
          words.append(text.text());
        }
      }
      assertEquals(names.get(row).replace(" ", ""), words.toString().replace(" ", ""));
      row++;
    }
    assertEquals(names.size(), row);
    assertTrue(lowest < drawing.nominalHeight() - 20);
  }
}
