package lodeswing.analysis.freeswing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.fraction.Fraction;
import org.junit.jupiter.api.Test;

/** Nearest ratios of whole numbers. */
class WholeRatioProperties {

  @Property
  void noRatioOfNumbersAsSmallIsNearer(@ForAll @DoubleRange(min = 0.1, max = 10) double value) {
    List<WholeRatio> nearest = WholeRatio.nearest(value);
    for (WholeRatio ratio : nearest) {
      double distance = Math.abs(Math.log(value / ratio.value()));
      int larger = Math.max(ratio.x(), ratio.y());
      for (int y = 1; y <= larger; y++) {
        for (int x = 1; x <= larger; x++) {
          double other = Math.abs(Math.log(value * x / y));
          boolean simpler = Math.max(x, y) < larger;
          assertTrue(simpler ? distance < other + 1e-12 : distance <= other + 1e-12);
        }
      }
    }
    assertEquals(1, Math.max(nearest.get(0).x(), nearest.get(0).y()));
  }

  @Property
  void aRatioOfSmallNumbersIsFoundAsItself(
      @ForAll @IntRange(min = 1, max = 12) int y, @ForAll @IntRange(min = 1, max = 12) int x) {
    double value = (double) y / x;
    List<WholeRatio> nearest = WholeRatio.nearest(value);
    assertEquals(WholeRatio.reduced(y, x), nearest.get(nearest.size() - 1));
  }

  /**
   * Continued fractions of Commons Math give best approximations too (Khinchin 1964, theorem 17).
   */
  @Property
  void aConvergentIsAmongTheNearest(@ForAll @DoubleRange(min = 0.15, max = 0.99) double value) {
    Fraction convergent = new Fraction(value, WholeRatio.MOST);
    if (convergent.getNumerator() > 0 && convergent.getDenominator() <= WholeRatio.MOST) {
      WholeRatio ratio = new WholeRatio(convergent.getNumerator(), convergent.getDenominator());
      assertTrue(WholeRatio.nearest(value).contains(ratio), value + " " + ratio);
    }
  }

  @Property
  void turningTheRigTurnsTheRatio(@ForAll @DoubleRange(min = 0.1, max = 0.99) double value) {
    List<WholeRatio> one = WholeRatio.nearest(value);
    List<WholeRatio> other = WholeRatio.nearest(1 / value);
    assertEquals(one.size(), other.size());
    for (int i = 0; i < one.size(); i++) {
      assertEquals(new WholeRatio(one.get(i).x(), one.get(i).y()), other.get(i));
    }
  }

  @Test
  void figureIsTheSimplestThatKeepsItsForm() {
    assertEquals("2:3", WholeRatio.figureOf(2.0 / 3).toString());
    assertEquals("2:3", WholeRatio.figureOf(0.671).toString());
    assertEquals("1:1", WholeRatio.figureOf(0.99).toString());
    assertEquals("7:10", WholeRatio.figureOf(0.7).toString());
    assertEquals("3:4", WholeRatio.figureOf(0.75).toString());
  }

  @Test
  void ratiosAreInTheirLowestTerms() {
    assertThrows(IllegalArgumentException.class, () -> new WholeRatio(2, 4));
    assertThrows(IllegalArgumentException.class, () -> new WholeRatio(0, 1));
    assertEquals(new WholeRatio(1, 2), WholeRatio.reduced(3, 6));
  }
}
