package lodeswing.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToLongFunction;
import lodeswing.core.rig.Layout;
import lodeswing.web.layout.SampleLayouts;
import org.junit.jupiter.api.Test;

class WorkCostTest {

  private static final double WORK = 3.7e7;
  private static final Layout TEXTBOOK = layout("paper-triangle");
  private static final Layout BENCH = layout("three-stations");

  private static final List<ToLongFunction<WorkCost>> KINDS =
      List.of(
          WorkCost::restPoints,
          WorkCost::trace,
          WorkCost::survey,
          cost -> cost.map(4_096, false),
          cost -> cost.map(4_096, true),
          cost -> cost.list(100, false),
          cost -> cost.list(100, true),
          cost -> cost.summary(4_096),
          cost -> cost.odds(1_000, 0, 1_000));

  private static Layout layout(String name) {
    return SampleLayouts.load().get(name).document().layout();
  }

  private static WorkCost ready(Layout layout) {
    return new WorkCost(layout, true, WORK);
  }

  @Test
  void unitIsAReleaseOfATextbookMap() {
    assertEquals(4_096, ready(TEXTBOOK).map(4_096, false));
  }

  @Test
  void everyKindCostsSomethingAndMoreWhereTheLayoutMustBeMadeReady() {
    for (Layout layout : List.of(TEXTBOOK, BENCH)) {
      WorkCost unready = new WorkCost(layout, false, layout == BENCH ? WORK : 0);
      for (ToLongFunction<WorkCost> kind : KINDS) {
        assertTrue(kind.applyAsLong(ready(layout)) >= 1);
        assertTrue(kind.applyAsLong(unready) > kind.applyAsLong(ready(layout)));
      }
    }
  }

  @Test
  void makingReadyCostsByItsEvaluations() {
    long one = new WorkCost(BENCH, false, WORK).restPoints();
    long two = new WorkCost(BENCH, false, 2 * WORK).restPoints();
    assertTrue(two > 1.5 * one);
  }

  @Test
  void benchReleasesAndSettlingCostMore() {
    assertTrue(ready(BENCH).map(100, false) > ready(TEXTBOOK).map(100, false));
    assertTrue(ready(BENCH).map(100, true) > ready(BENCH).map(100, false));
    assertTrue(ready(BENCH).list(100, true) > ready(BENCH).list(100, false));
    assertTrue(ready(BENCH).list(100, false) > ready(BENCH).map(100, false));
    assertTrue(ready(TEXTBOOK).summary(100) > ready(TEXTBOOK).map(100, false));
  }

  @Test
  void freeSwingCostsByItsSwingsAlone() {
    assertEquals(ready(BENCH).freeSwing(99), new WorkCost(BENCH, false, WORK).freeSwing(99));
    assertTrue(ready(BENCH).freeSwing(200) > 1.9 * ready(BENCH).freeSwing(99));
    assertTrue(ready(TEXTBOOK).freeSwing(12) < ready(TEXTBOOK).trace());
  }

  @Test
  void twiceAsManyReleasesCostTwiceAsMuch() {
    assertEquals(2 * ready(BENCH).map(5_000, false), ready(BENCH).map(10_000, false));
    assertEquals(2 * ready(BENCH).list(500, true), ready(BENCH).list(1_000, true));
    assertEquals(2 * ready(BENCH).odds(500, 0, 1), ready(BENCH).odds(1_000, 0, 1));
  }

  @Test
  void everyVariedRigIsMadeReadyAnew() {
    long one = ready(BENCH).odds(1_000, 1, 1_000);
    assertTrue(one > 2 * ready(BENCH).odds(1_000, 0, 1_000));
    assertEquals(
        ready(BENCH).odds(1_000, 8, 1_000) - ready(BENCH).odds(1_000, 0, 1_000),
        8 * (one - ready(BENCH).odds(1_000, 0, 1_000)));
  }
}
