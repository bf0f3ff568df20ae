package lodeswing.core.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class LabelGridTest {

  @Test
  void labelsOfAnySizeAreCountedAndGapsAreNot() {
    int[] labels = new int[64];
    labels[3] = -7;
    labels[4] = 1_000_000;
    labels[5] = LabelGrid.NO_LABEL;

    LabelGrid grid = LabelGrid.of(8, labels);

    assertArrayEquals(new int[] {-7, 0, 1_000_000}, grid.labels());
    assertEquals(61, grid.count(0));
    assertEquals(1, grid.count(-7));
    assertEquals(0, grid.count(42));
    assertEquals(0, grid.count(LabelGrid.NO_LABEL));
    assertEquals(63, grid.labelled());
  }

  @Test
  void arrayGivenMayChangeLater() {
    int[] labels = new int[64];
    LabelGrid grid = LabelGrid.of(8, labels);
    labels[0] = 5;

    assertEquals(64, grid.count(0));
  }

  @Test
  void gridsThatAreNotSquareOrTooSmallAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> LabelGrid.of(8, new int[63]));
    assertThrows(IllegalArgumentException.class, () -> LabelGrid.of(4, new int[16]));
  }
}
