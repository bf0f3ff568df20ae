package lodeswing.analysis.glow;

/** How bright a paper glows, pixel by pixel. Immutable. */
public final class GlowField {

  private final GlowPaper paper;
  private final double[] values;
  private final double typical;
  private final int brightest;

  /**
   * @param values density by pixel, from the upper left row by row; not copied
   * @param typical what half of the path's length reaches
   */
  GlowField(GlowPaper paper, double[] values, double typical) {
    this.paper = paper;
    this.values = values;
    this.typical = typical;
    int best = 0;
    for (int i = 1; i < values.length; i++) {
      if (values[i] > values[best]) {
        best = i;
      }
    }
    brightest = best;
  }

  /** The paper. */
  public GlowPaper paper() {
    return paper;
  }

  /** Time of light a square metre, each moment by what is left of it, over a pixel [s/m2]. */
  public double at(int column, int row) {
    return values[row * paper.columns() + column];
  }

  /** The brightness that is passed along half of the path's length [s/m2]; 0 without any light. */
  public double typical() {
    return typical;
  }

  /** The greatest brightness [s/m2]. */
  public double greatest() {
    return values[brightest];
  }

  /** x of the brightest pixel [m]. */
  public double brightestX() {
    return paper.x(brightest % paper.columns());
  }

  /** y of the brightest pixel [m]. */
  public double brightestY() {
    return paper.y(brightest / paper.columns());
  }

  /** The whole of it [s]: without decay the time of light that fell on the paper. */
  public double total() {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum * paper.pixel() * paper.pixel();
  }
}
