package lodeswing.analysis.trace;

import lodeswing.core.rig.Release;

/**
 * What a trace is asked for.
 *
 * @param release how the bob is let go
 * @param duration how long samples are taken, from 0 [s on the bench, the model's unit in a
 *     textbook layout]
 * @param sampleInterval time between samples, positive
 * @param handSpread how exactly a hand places the bob [m on the bench], positive
 * @param longest how long the bob is followed at most until it has settled, at least the duration
 */
public record TraceSpec(
    Release release, double duration, double sampleInterval, double handSpread, double longest) {

  public TraceSpec {
    if (!(duration > 0 && sampleInterval > 0 && handSpread > 0 && longest >= duration)) {
      throw new IllegalArgumentException("times and spread of a trace are positive");
    }
  }

  /** How many samples lie on the grid, the one at 0 included. */
  public int samples() {
    return Math.toIntExact(samples(duration, sampleInterval));
  }

  /** How many samples a duration holds, the one at 0 included; a hair short of one more counts. */
  public static long samples(double duration, double sampleInterval) {
    // one is added before the cast, which ends at the largest long and never turns over
    return (long) (Math.floor(duration / sampleInterval * (1 + 1e-12)) + 1);
  }
}
