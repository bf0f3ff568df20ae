package lodeswing.core.outcome;

import java.util.function.LongConsumer;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;

/** Chooses who finds the ends of many releases. Immutable. */
public final class OutcomeFinders {

  private final LaneProvider provider;
  private final LongConsumer drawn;

  /**
   * Finders on lanes.
   *
   * @param provider what lanes compute with
   */
  public OutcomeFinders(LaneProvider provider) {
    this(provider, releases -> {});
  }

  /**
   * Finders on lanes that tell how much they do.
   *
   * @param provider what lanes compute with
   * @param drawn told, by several threads, numbers of further releases that were followed
   */
  public OutcomeFinders(LaneProvider provider, LongConsumer drawn) {
    this.provider = provider;
    this.drawn = drawn;
  }

  /**
   * A finder over a landscape.
   *
   * @param landscape the layout made ready; of its tables the one that the tolerance asks for
   *     serves
   * @param tolerance error allowed for a step
   * @param longest how long a release is followed at most, positive [s on the bench]; without loss
   *     nothing is decided that was not decided at the release, so none is followed
   */
  public SharedFinder of(Landscape landscape, Tolerance tolerance, double longest) {
    return of(landscape, LaneScheme.best(landscape.motion()), tolerance, longest);
  }

  /**
   * A finder with a scheme of the caller's choice.
   *
   * @param landscape the layout made ready
   * @param scheme what releases are integrated with
   * @param tolerance error allowed for a step
   * @param longest how long a release is followed at most, positive [s on the bench]
   * @throws IllegalArgumentException where the scheme does not suit the layout
   */
  public SharedFinder of(
      Landscape landscape, LaneScheme scheme, Tolerance tolerance, double longest) {
    return counted(
        new LaneOutcomeFinder(
            landscape.asFineAs(tolerance), provider, scheme, tolerance, longest, false));
  }

  /**
   * A finder that follows each release until the bob has settled, at its own cost; ends and sealing
   * times are those of the others.
   *
   * @param landscape the layout made ready
   * @param tolerance error allowed for a step
   * @param longest how long a release is followed at most, positive [s on the bench]
   */
  public SharedFinder settling(Landscape landscape, Tolerance tolerance, double longest) {
    return counted(
        new LaneOutcomeFinder(
            landscape.asFineAs(tolerance),
            provider,
            LaneScheme.best(landscape.motion()),
            tolerance,
            longest,
            true));
  }

  /**
   * A finder that follows one release at a time on the path that a trace of it takes, so that ends
   * and times are those of a trace to the bit; some hundred times slower than the others.
   *
   * @param landscape the layout made ready
   * @param tolerance error allowed for a step; {@link Tolerance#TRACE} for a trace's own path
   * @param longest how long a release is followed at most, positive [s on the bench]
   * @param untilSettled whether to follow each until the bob has settled
   */
  public SharedFinder single(
      Landscape landscape, Tolerance tolerance, double longest, boolean untilSettled) {
    return counted(new ScalarOutcomeFinder(landscape, tolerance, longest, untilSettled));
  }

  private SharedFinder counted(SharedFinder finder) {
    return new CountedFinder(finder, drawn);
  }
}
