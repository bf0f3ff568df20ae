package lodeswing.render.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellTextTest {

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(1)", "＝1", "  =1"})
  void whatWouldRunHasAnApostropheBeforeIt(String text) {
    assertEquals("'" + text, CellText.guarded(text));
    assertEquals("'" + text, CellText.line(text));
  }

  @Test
  void lineHoldsNothingThatSplitsIt() {
    assertEquals("a -b - c", CellText.line("a,b; c"));
    assertEquals("at (-70 | 30.5) mm - once", CellText.line("at (-70, 30.5) mm, once"));
    assertEquals("(a - b) - (1 - 2 - 3)", CellText.line("(a, b), (1, 2, 3)"));
    assertEquals("say 'x' and y", CellText.line("say \"x\"\nand\ty"));
    assertEquals("Tide at x=-45 y=0 mm", CellText.line("Tide at x=-45 y=0 mm"));
  }

  @Test
  void lineEndBeforeAFormulaIsABlankThatIsLookedThrough() {
    assertEquals("' =1", CellText.line("\n=1"));
  }
}
