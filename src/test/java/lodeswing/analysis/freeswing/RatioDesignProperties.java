package lodeswing.analysis.freeswing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.core.suspension.Cord;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.Yoke;
import lodeswing.core.swing.SmallSwings;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Suspensions made for a ratio, measured again by their own periods. */
class RatioDesignProperties {

  private static double ratio(Suspension suspension) {
    return SmallSwings.of(FreeRigs.lossless(suspension)).ratio();
  }

  @Property
  void madeCordHasTheWantedRatio(
      @ForAll @IntRange(min = 1, max = 11) int y,
      @ForAll @IntRange(min = 1, max = 6) int more,
      @ForAll @DoubleRange(min = 0.1, max = 2) double drop,
      @ForAll @DoubleRange(min = 0.1, max = 2) double leg) {
    WholeRatio wanted = WholeRatio.reduced(y, y + more);
    Yoke yoke = new Yoke(0.3, drop, leg, 0.05);
    List<RatioDesign> designs = RatioDesign.of(yoke, wanted);
    assertEquals(2, designs.size());
    for (RatioDesign design : designs) {
      assertEquals(wanted.value(), ratio(design.suspension()), 1e-12);
    }
    Yoke sameLeg = (Yoke) designs.get(0).suspension();
    Yoke sameHeight = (Yoke) designs.get(1).suspension();
    assertEquals(leg, sameLeg.leg(), 0);
    assertEquals(drop + leg, sameHeight.drop() + sameHeight.leg(), 1e-12);
    RatioDesign ofCord = RatioDesign.of(new Cord(drop + leg, 0.05), wanted).get(0);
    Yoke made = (Yoke) ofCord.suspension();
    assertEquals(sameHeight.leg(), made.leg(), 1e-12);
    assertEquals(Math.sin(Math.PI / 6) * made.leg(), RatioDesign.tightUpTo(made), 1e-12);
  }

  /** The sensitivities, against the change that a tenth of the hand's error makes. */
  @Property(tries = 200)
  void handsErrorChangesTheRatioByItsTolerance(
      @ForAll @IntRange(min = 1, max = 5) int y, @ForAll @IntRange(min = 1, max = 3) int more) {
    WholeRatio wanted = WholeRatio.reduced(y, y + more);
    RatioDesign design = RatioDesign.of(new Yoke(0.3, 0.3, 0.4, 0.05), wanted).get(0);
    Yoke made = (Yoke) design.suspension();
    double dropHand = RatioDesign.hand(wanted, design.upper()) / 10;
    double legHand = RatioDesign.hand(wanted, design.leg().orElseThrow()) / 10;
    double allowed = RatioDesign.tolerance(wanted) / 10;
    double byDrop = ratio(new Yoke(0.3, made.drop() + dropHand, made.leg(), 0.05));
    double byLeg = ratio(new Yoke(0.3, made.drop(), made.leg() + legHand, 0.05));
    assertEquals(allowed, Math.abs(byDrop / wanted.value() - 1), 0.02 * allowed);
    assertEquals(allowed, Math.abs(byLeg / wanted.value() - 1), 0.02 * allowed);
  }

  @Property
  void everyHookFoundHasTheWantedRatio(
      @ForAll @IntRange(min = 1, max = 12) int y, @ForAll @IntRange(min = 1, max = 12) int x) {
    WholeRatio wanted = WholeRatio.reduced(y, x);
    HookedBar bar = FreeRigs.bar(0.005);
    double most = ratio(new HookedBar(RatioDesign.quickestOffset(bar), bar.parts(), 0.42));
    List<RatioDesign> designs = RatioDesign.of(bar, wanted);
    if (wanted.value() < 1) {
      assertEquals(1, designs.size());
    }
    assertEquals(wanted.value() > most + 1e-12, designs.isEmpty(), wanted + " " + most);
    for (RatioDesign design : designs) {
      HookedBar hung = (HookedBar) design.suspension();
      assertEquals(wanted.value(), ratio(hung), 1e-9);
      double step = 1e-5 * (0.01 + hung.hookOffset());
      double there = ratio(new HookedBar(hung.hookOffset() + step, bar.parts(), 0.42));
      assertEquals(
          Math.abs(Math.log(there / ratio(hung))) / step,
          design.upper(),
          1e-3 + 1e-3 * design.upper());
    }
  }

  /**
   * 2:3 by hand: drop = leg ((3/2)^2 - 1) = 5/4 leg; in all 900 mm the leg is 4/9 of it, 400 mm.
   */
  @Test
  void twoToThreeNeedsADropOfFiveQuartersOfTheLeg() {
    WholeRatio wanted = new WholeRatio(2, 3);
    List<RatioDesign> designs = RatioDesign.of(new Yoke(0.6, 0.45, 0.4, 0.05), wanted);
    assertEquals(0.5, ((Yoke) designs.get(0).suspension()).drop(), 1e-15);
    Yoke cord = (Yoke) RatioDesign.of(new Cord(0.9, 0.05), wanted).get(0).suspension();
    assertEquals(0.4, cord.leg(), 1e-15);
    assertEquals(0.5, cord.drop(), 1e-15);
    // an eighth of all forms in ten closings: 2 x 900 mm / (80 x 2 x 3)
    assertEquals(3.75e-3, RatioDesign.hand(wanted, designs.get(0).upper()), 1e-9);
    assertFalse(designs.get(0).leg().isEmpty());
  }

  @Test
  void aYCordIsNeverQuickerAcrossAndASingleCordHasNoTwoPeriods() {
    assertTrue(RatioDesign.of(FreeRigs.TWO_TO_THREE, new WholeRatio(3, 2)).isEmpty());
    assertTrue(RatioDesign.of(FreeRigs.TWO_TO_THREE, new WholeRatio(1, 1)).isEmpty());
    assertTrue(RatioDesign.of(FreeRigs.CORD, new WholeRatio(4, 3)).isEmpty());
  }

  /** The exact figure drifts through an eighth of its forms when the hand errs by what is told. */
  @Test
  void handsErrorMovesTheFigureThroughAnEighthOfItsForms() {
    WholeRatio wanted = new WholeRatio(2, 3);
    Yoke made = FreeRigs.TWO_TO_THREE;
    RatioDesign design = RatioDesign.of(made, wanted).get(0);
    double hand = RatioDesign.hand(wanted, design.upper());
    SmallSwings off =
        SmallSwings.of(
            FreeRigs.lossless(new Yoke(0.6, made.drop() + hand, made.leg(), made.bobMass())));
    assertEquals(
        RatioDesign.CLOSINGS / 0.125, wanted.formsAfter(off) / wanted.closesAfter(off), 0.5);
  }
}
