package lodeswing.analysis.basin;

/**
 * What must be known of a window before maps of it are drawn.
 *
 * @param deepestZoom last zoom at which labels hold when the tolerance is tightened tenfold
 * @param halfTime median of the sealing times over the window: where shading is halfway
 * @param steadyShare share of the labels of a coarse grid that hold when the tolerance is tightened
 *     tenfold; the others are chance, since rounding alone decides them
 */
public record BasinSurvey(int deepestZoom, double halfTime, double steadyShare) {

  /** Zooms served in any case: where labels are chance, a closer look shows that they are. */
  private static final int LEAST_SERVED = 6;

  /** The last zoom that is served: the last steady one, or where that is too few, six. */
  public int servedZoom() {
    return Math.max(deepestZoom, LEAST_SERVED);
  }
}
