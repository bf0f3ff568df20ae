package lodeswing.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextLinesTest {

  private static final double SIZE = 10;

  @Test
  void figureIsNotPartedFromItsUnit() {
    String text = "They are first 77.9 mm apart at 3.57 s.";
    for (double width = 60; width < 260; width += 1) {
      List<String> lines = TextLines.wrapped(text, SIZE, width, 20);
      assertEquals(text, String.join(" ", lines));
      for (String line : lines) {
        assertTrue(!line.startsWith("mm") && !line.startsWith("s."), lines.toString());
        assertTrue(TextWidth.of(line, SIZE) <= width, lines.toString());
      }
    }
  }

  @Test
  void wordWithoutABlankIsCutWhereItMustBe() {
    List<String> lines = TextLines.wrapped("abcdefghijklmnop", SIZE, 30, 9);

    assertTrue(lines.size() > 1, lines.toString());
    assertEquals("abcdefghijklmnop", String.join("", lines));
  }
}
