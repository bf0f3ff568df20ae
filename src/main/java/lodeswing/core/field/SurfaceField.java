package lodeswing.core.field;

/**
 * The flux density along a surface as a function of the plan, with its slopes.
 *
 * <p>Slopes are central differences of order 4 (B. Fornberg, Math. Comp. 51 (1988) 699) with a step
 * of a thousandth of the field's least detail: their error is below 1e-10 of the field over that
 * detail, which is enough to step towards a zero and to tell its kind.
 */
public final class SurfaceField {

  private static final double STEP = 1e-3;

  private final FieldSources sources;
  private final Surface surface;
  private final double step;
  private final double[] near = new double[3];

  /**
   * The field of magnets along a surface; for one thread.
   *
   * @param detail least detail of the field [m]
   */
  public SurfaceField(FieldSources sources, Surface surface, double detail) {
    this.sources = sources;
    this.surface = surface;
    this.step = STEP * detail;
  }

  /** Height of the surface [m]. */
  public double height(double x, double y) {
    return surface.height(x, y);
  }

  /** Flux density above a place of the plan [T]; NaN where the surface has none. */
  public void at(double x, double y, double[] b) {
    sources.field(x, y, surface.height(x, y), b);
  }

  /**
   * Slopes along the plan's axes, the surface followed.
   *
   * @param out receives dBx/dx, dBy/dx, dBz/dx, dBx/dy, dBy/dy, dBz/dy [T/m]
   */
  public void slopes(double x, double y, double[] out) {
    for (int axis = 0; axis < 2; axis++) {
      for (int k = 0; k < 3; k++) {
        out[3 * axis + k] = 0;
      }
      for (int n = -2; n <= 2; n++) {
        if (n != 0) {
          at(axis == 0 ? x + n * step : x, axis == 1 ? y + n * step : y, near);
          double weight = (Math.abs(n) == 1 ? 8.0 : -1.0) / (12 * step) * Math.signum(n);
          for (int k = 0; k < 3; k++) {
            out[3 * axis + k] += weight * near[k];
          }
        }
      }
    }
  }
}
