package lodeswing.analysis.fit;

import java.util.Random;

/**
 * How often the intervals of fits hold what recordings were made with, and a frame of which nothing
 * is known.
 */
public final class IntervalCoverage {

  private static final int USUAL = 500;

  private IntervalCoverage() {}

  /**
   * A count.
   *
   * @param covered intervals that held the truth
   * @param asked intervals in all
   */
  record Share(int covered, int asked) {}

  /** Fits recordings of a free swing by other code, with noise, gaps and uneven times. */
  static Share of(int recordings, long seed) {
    Random random = new Random(seed);
    int covered = 0;
    for (int i = 0; i < recordings; i++) {
      covered += PathFitTest.covered(PathFitTest.gappy(random));
    }
    return new Share(covered, 2 * recordings);
  }

  /**
   * Tells the share over 500 recordings; ends with 1 where it is not 95 % within four deviations.
   */
  public static void main(String[] arguments) {
    PathFitTest.reversedAxesAreFound();
    System.out.println("axes that are turned, reversed and elsewhere are found");
    Share share = of(USUAL, 1);
    double part = (double) share.covered() / share.asked();
    double deviation = Math.sqrt(0.95 * 0.05 / share.asked());
    System.out.println(share + ": " + part + " (0.95 wanted, deviation " + deviation + ")");
    System.exit(Math.abs(part - 0.95) < 4 * deviation ? 0 : 1);
  }
}
