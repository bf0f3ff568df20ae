package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;

/**
 * Takes the growth of errors along the steps of a path, in pieces that are short beside the fastest
 * small swing about it. Not safe for several threads.
 */
public final class GrowthBeside {

  /** Turn of a small swing in one piece of a step [rad]. */
  private static final double PIECE_TURN = 0.4;

  private static final int MOST_PIECES = 50;

  private final LocalRate rate;
  private final ErrorGrowth growth;
  private final double[] begin = new double[4];
  private final double[] half = new double[4];
  private final double[] end = new double[4];

  /**
   * Begins at the release with no error.
   *
   * @param motion what moves
   * @param accelerationError greatest error of an acceleration by tables [q per time squared]
   */
  public GrowthBeside(Motion motion, double accelerationError) {
    this.rate = new LocalRate(motion);
    this.growth = new ErrorGrowth(motion, accelerationError);
  }

  /** The growth up to where it was taken. */
  public ErrorGrowth growth() {
    return growth;
  }

  /**
   * Goes on inside a step.
   *
   * @param step the step
   * @param from where the last stretch ended
   * @param to where this one ends, after that
   * @param localError the error that is made in this stretch, in q
   */
  public void advance(Step step, double from, double to, double localError) {
    if (from > step.startTime()) {
      step.at(from, begin);
    } else {
      step.startState(begin);
    }
    double turn = (to - from) * rate.at(begin);
    int pieces = (int) Math.min(MOST_PIECES, Math.ceil(turn / PIECE_TURN) + 1);
    double length = (to - from) / pieces;
    for (int i = 0; i < pieces; i++) {
      double at = from + i * length;
      step.at(at + 0.5 * length, half);
      step.at(Math.min(at + length, to), end);
      growth.advance(begin, half, end, length, i == pieces - 1 ? localError : 0);
      System.arraycopy(end, 0, begin, 0, begin.length);
    }
  }
}
