package lodeswing.core.rest;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The rest points of a motion, the passes between them, and what is known of their completeness.
 */
public final class RestPoints {

  private final List<RestPoint> list;
  private final List<Saddle> saddles;
  private final List<UnsafeZone> zones;
  private final MergeTree mergeTree;
  private final Census census;
  private final SealMap sealMap;

  RestPoints(Found found, MergeTree mergeTree, Census census, SealMap sealMap) {
    this.list = List.copyOf(found.restPoints());
    this.saddles = List.copyOf(found.saddles());
    this.zones = List.copyOf(found.zones());
    this.mergeTree = mergeTree;
    this.census = census;
    this.sealMap = sealMap;
  }

  /** The stable rest points, in the order of their indices. */
  public List<RestPoint> list() {
    return list;
  }

  /** The saddles, in the order of their indices. */
  public List<Saddle> saddles() {
    return saddles;
  }

  /** The regions in which the model does not hold. */
  public List<UnsafeZone> zones() {
    return zones;
  }

  /**
   * The zones in which a bob would stay in contact or slack: no rest points, but ends all the same.
   */
  public List<UnsafeZone> blockedPlaces() {
    return zones.stream().filter(UnsafeZone::catches).toList();
  }

  /** Which rest points are joined below which energy. */
  public MergeTree mergeTree() {
    return mergeTree;
  }

  /** The count of critical points against the gradient's turns. */
  public Census census() {
    return census;
  }

  /** Whether all checks hold: nothing is known to be missing. */
  public boolean complete() {
    return census.doubts().isEmpty();
  }

  /** The shallowest barrier of all wells: what margins and drifts are to be held against. */
  public double shallowestBarrier() {
    return list.stream().mapToDouble(r -> r.barrier().height()).min().orElse(0);
  }

  /**
   * The rule that says when an outcome is certain.
   *
   * @param energyMargin error of the table's energy plus drift of the integrator, at most [J on the
   *     bench], not negative
   */
  public SealRule sealRule(double energyMargin) {
    if (!(energyMargin >= 0)) {
      throw new IllegalArgumentException("margin must not be negative, was " + energyMargin);
    }
    return new SealRule(sealMap, list, energyMargin);
  }

  /** Rest points, saddles and zones before the checks. */
  record Found(List<RestPoint> restPoints, List<Saddle> saddles, List<UnsafeZone> zones) {}

  /**
   * Critical points found where the model holds, against the number of turns of the gradient around
   * that region, which equals minima - saddles + maxima (Poincare and Hopf; Milnor, Topology from
   * the Differentiable Viewpoint, 1965, section 6).
   *
   * @param minima number of minima
   * @param saddles number of saddles
   * @param maxima number of maxima
   * @param turns turns of the gradient; 1 for a disc at whose rim the potential rises outwards
   * @param nodes nodes of the grid
   * @param doubts what did not agree
   */
  public record Census(
      int minima, int saddles, int maxima, int turns, int nodes, Set<Doubt> doubts) {

    public Census {
      doubts = Collections.unmodifiableSet(new TreeSet<>(doubts));
    }
  }

  /** Why a result may be incomplete. */
  public enum Doubt {
    /** The count of critical points does not agree with the gradient's turns. */
    COUNT_DIFFERS,
    /** A way down from a saddle was not followed to its end. */
    SADDLE_SIDE_UNKNOWN,
    /** The grid shows a pass lower than any saddle that was found. */
    PASS_WITHOUT_SADDLE,
    /** A rest point lies within a cell of the grid from an unsafe zone. */
    REST_POINT_AT_ZONE,
    /** No rest point was found. */
    NO_REST_POINT
  }
}
