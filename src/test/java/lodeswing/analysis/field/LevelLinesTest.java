package lodeswing.analysis.field;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import lodeswing.core.field.Frame;
import org.junit.jupiter.api.Test;

/** Borders of levels against areas that geometry knows. */
class LevelLinesTest {

  private static final Frame FRAME = new Frame(-1, -2, 2, 4, 101, 201);

  private static double[] values(DoubleBinaryOperator function) {
    double[] values = new double[FRAME.count()];
    for (int i = 0; i < values.length; i++) {
      values[i] =
          function.applyAsDouble(FRAME.x(i % FRAME.columns()), FRAME.y(i / FRAME.columns()));
    }
    return values;
  }

  private static double area(List<LevelLines.Ring> rings) {
    return rings.stream().mapToDouble(LevelLines.Ring::area).sum();
  }

  @Test
  void circleHasItsArea() {
    List<LevelLines.Ring> rings =
        LevelLines.of(FRAME, values((x, y) -> -Math.hypot(x, y))).at(-0.7);
    assertEquals(1, rings.size());
    assertEquals(Math.PI * 0.49, rings.get(0).area(), 2e-3);
  }

  @Test
  void holeCountsAgainst() {
    List<LevelLines.Ring> rings =
        LevelLines.of(FRAME, values((x, y) -> -Math.abs(Math.hypot(x, y) - 0.6))).at(-0.2);
    assertEquals(2, rings.size());
    assertEquals(Math.PI * (0.64 - 0.16), area(rings), 5e-3);
  }

  @Test
  void windowsEdgeClosesWhatRunsOut() {
    assertEquals(4, area(LevelLines.of(FRAME, values((x, y) -> x)).at(0)), 1e-12);
    assertEquals(8, area(LevelLines.of(FRAME, values((x, y) -> 1)).at(0)), 1e-12);
    assertEquals(0, LevelLines.of(FRAME, values((x, y) -> -1)).at(0).size());
  }

  @Test
  void saddlesCellIsDecidedByItsMean() {
    Frame cell = new Frame(0, 0, 1, 1, 2, 2);
    assertEquals(1, LevelLines.of(cell, new double[] {2, 0, 0, 2}).at(0.9).size());
    assertEquals(2, LevelLines.of(cell, new double[] {1, 0, 0, 1}).at(0.9).size());
  }
}
