package lodeswing.analysis.comparison;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleConsumer;
import lodeswing.core.chance.PartTolerances;
import lodeswing.core.motion.ExactMotion;
import lodeswing.core.motion.Motion;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.TimedPlaces;
import lodeswing.core.rig.BenchLayout;

/** How far a foretold path may be off since the rig's parts may be, by a few rigs built anew. */
final class PartsSpread {

  /** Rigs that are built: a spread from so many is right within some 18 % (1 in 1/sqrt(2 n)). */
  private static final int RIGS = 16;

  private static final long SEED = 1;

  private PartsSpread() {}

  /**
   * Root of the mean square of the distances between the rigs' paths and the exact one's [m].
   *
   * @param rig the exact rig
   * @param exact its own motion
   * @param tolerances of its parts
   * @param recording whose times count
   * @param start from where
   * @param count places from the start's first one on
   * @param progress told the part done
   */
  static double[] of(
      BenchLayout rig,
      Motion exact,
      PartTolerances tolerances,
      Recording recording,
      Start start,
      int count,
      DoubleConsumer progress) {
    double[] squares = new double[count];
    if (count == 0) {
      return squares;
    }
    double[] meant = places(Optional.of(exact), recording, start, count);
    var random = new SplittableRandom(SEED);
    var motions = new ExactMotion();
    int rigs = 0;
    for (int k = 0; k < RIGS; k++) {
      progress.accept((double) k / RIGS);
      Optional<Motion> built = built(motions, rig, tolerances, random.split());
      if (built.isEmpty()) {
        continue;
      }
      rigs++;
      double[] other = places(built, recording, start, count);
      for (int i = 0; i < count; i++) {
        double dx = other[2 * i] - meant[2 * i];
        double dy = other[2 * i + 1] - meant[2 * i + 1];
        squares[i] += dx * dx + dy * dy;
      }
    }
    for (int i = 0; i < count; i++) {
      squares[i] = Math.sqrt(squares[i] / Math.max(1, rigs));
    }
    return squares;
  }

  /** A rig built anew; empty where nothing of it would hang. */
  private static Optional<Motion> built(
      ExactMotion motions, BenchLayout rig, PartTolerances tolerances, SplittableRandom random) {
    try {
      return Optional.of(motions.of(tolerances.varied(rig, random)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static double[] places(
      Optional<Motion> motion, Recording recording, Start start, int count) {
    int first = start.stretch().first();
    return TimedPlaces.of(
        motion, start.release(), start.time(), i -> recording.since(first + i), count);
  }
}
