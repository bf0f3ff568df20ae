package lodeswing.core.suspension;

/** What the bob hangs on. */
public sealed interface Suspension permits Cord, Yoke, HookedBar {

  /** The suspended body about its two crossed axes. */
  TwoAxisBody body();

  /**
   * The same with its bob hung lower or higher: a longer cord or leg, a bar whose parts all lie
   * lower below the hook.
   *
   * @param longer by how much [m], negative for higher
   * @throws IllegalArgumentException where nothing would hang below
   */
  Suspension lengthened(double longer);

  /** The line along which the support pulls; where the pull falls to zero it goes slack. */
  PullLine pullLine();

  /**
   * Pull of the slackest of the upper cords as a share of the pull along {@link #pullLine};
   * positive infinity where there are none. Depends on the second axis' angle alone; negative where
   * one would have to push.
   *
   * @param sinBeta sine of the angle about the second axis
   * @param cosBeta its cosine, above 0
   */
  double slackestShare(double sinBeta, double cosBeta);
}
