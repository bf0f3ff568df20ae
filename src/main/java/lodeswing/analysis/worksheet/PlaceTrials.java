package lodeswing.analysis.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import lodeswing.core.chance.DiscSpread;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.chance.NormalSpread;
import lodeswing.core.chance.Odds;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.Release;

/** Tries of places on rings about the middle, and of releases from anywhere on the disc. */
public final class PlaceTrials {

  /** Rings of places that are tried, as parts of the reach; places on each; tries from each. */
  private static final double[] RINGS = {0.45, 0.7, 0.95};

  /** Directions from the middle in which places are tried. */
  public static final int DIRECTIONS = 8;

  private static final int TRIES = 192;
  private static final long SEED = 1;

  /** Turns the places off the axes, on which rigs with a mirror are undecided by symmetry. */
  public static final double OFF_AXIS = 0.3;

  /** Places are told to pupils in whole millimetres. */
  private static final double MILLI = 1e-3;

  /** Releases that trying the places takes. */
  public static final long FROM_PLACES = (long) RINGS.length * DIRECTIONS * TRIES;

  /** Releases from anywhere. */
  public static final int FROM_ANYWHERE = 1_984;

  private final Landscape landscape;
  private final OutcomeFinders finders;
  private final double longest;
  private final double reach;

  /**
   * Tries on a rig.
   *
   * @param landscape the layout made ready
   * @param finders find the ends of releases
   * @param longest how long a release is followed at most [s]
   * @param reach releases lie within this distance of the middle [m]
   */
  public PlaceTrials(Landscape landscape, OutcomeFinders finders, double longest, double reach) {
    this.landscape = landscape;
    this.finders = finders;
    this.longest = longest;
    this.reach = reach;
  }

  /**
   * Tries every place and chooses.
   *
   * @param spread standard deviation of the hand that lets go [m]
   * @param progress told the fraction done by several threads; may throw to end the work
   */
  public PlaceChoice choice(double spread, DoubleConsumer progress) {
    List<TriedPlace> tried = new ArrayList<>();
    int count = RINGS.length * DIRECTIONS;
    for (int k = 0; k < count; k++) {
      int done = k;
      double radius = RINGS[k / DIRECTIONS] * reach;
      double angle = 2 * Math.PI * (k % DIRECTIONS + OFF_AXIS) / DIRECTIONS;
      double x = Math.rint(radius * Math.cos(angle) / MILLI) * MILLI;
      double y = Math.rint(radius * Math.sin(angle) / MILLI) * MILLI;
      var hand = new HandSpread(new Release(x, y, 0, 0), new NormalSpread(spread), 0);
      EndCounts ends =
          odds(hand).count(TRIES, SEED, part -> progress.accept((done + part) / count));
      tried.add(new TriedPlace(x, y, ends));
    }
    return PlaceChoice.of(tried);
  }

  /**
   * Ends of releases from anywhere within reach, all places of the disc alike.
   *
   * @param progress told the fraction done by several threads; may throw to end the work
   */
  public EndCounts anywhere(DoubleConsumer progress) {
    var hand = new HandSpread(new Release(0, 0, 0, 0), new DiscSpread(reach), 0);
    return odds(hand).count(FROM_ANYWHERE, SEED, progress);
  }

  private Odds odds(HandSpread hand) {
    return new Odds(landscape, hand, finders, longest);
  }
}
