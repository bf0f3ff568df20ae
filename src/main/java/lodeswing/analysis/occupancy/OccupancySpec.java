package lodeswing.analysis.occupancy;

/**
 * What is asked: releases at rest, each place of a disc about the middle as likely as any other.
 *
 * @param radius of the disc, positive [plan unit]
 * @param duration how long each is followed, positive [s on the bench]
 * @param releases how many, {@value #LOTS} or more; a multiple of that
 * @param seed of their places
 */
public record OccupancySpec(double radius, double duration, int releases, long seed) {

  /** Lots that the releases come in, each drawn by itself, so that lots tell the error. */
  public static final int LOTS = 16;

  /**
   * @throws IllegalArgumentException where a figure is out of its range
   */
  public OccupancySpec {
    if (!(radius > 0 && duration > 0) || releases < LOTS || releases % LOTS != 0) {
      throw new IllegalArgumentException("releases come in " + LOTS + " lots, from a disc");
    }
  }
}
