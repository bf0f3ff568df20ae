package lodeswing.web.layout;

import lodeswing.core.chance.PartTolerances;
import lodeswing.web.body.Body;

/** A layout's {@code tolerances} in SI. */
public final class ToleranceFigures {

  private static final double PER_MILLI = 1e-3;
  private static final double PER_CENT = 1e-2;

  private ToleranceFigures() {}

  /** What a body of {@link LayoutShapes#tolerances} says; what it leaves out is exact. */
  public static PartTolerances inSi(Body tolerances) {
    return new PartTolerances(
        tolerances.findNumber("gapMm").orElse(0) * PER_MILLI,
        tolerances.findNumber("placeMm").orElse(0) * PER_MILLI,
        tolerances.findNumber("lengthMm").orElse(0) * PER_MILLI,
        tolerances.findNumber("remanencePercent").orElse(0) * PER_CENT);
  }
}
