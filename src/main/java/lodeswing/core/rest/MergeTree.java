package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which rest points and unsafe zones are joined below which energy.
 *
 * <p>As the energy rises, the wells flood and join over their lowest passes, in the order of the
 * passes' energies (Kruskal 1956): the join tree of Carr, Snoeyink and Axen, Computational Geometry
 * 24 (2003) 75. All losses only lower the energy, so what cannot be reached now never will be.
 */
public final class MergeTree {

  private final int restPoints;
  private final int sinks;
  private final List<Pass> passes;

  MergeTree(int restPoints, int sinks, List<Pass> passes) {
    this.restPoints = restPoints;
    this.sinks = sinks;
    List<Pass> sorted = new ArrayList<>(passes);
    sorted.sort(Comparator.comparingDouble(Pass::energy));
    this.passes = List.copyOf(sorted);
  }

  /**
   * What a motion that starts in a well may still reach.
   *
   * @param restPoint the well's rest point
   * @param energy mechanical energy of the motion
   */
  public Reach reachable(int restPoint, double energy) {
    DisjointSets sets = new DisjointSets(sinks);
    for (Pass pass : passes) {
      if (pass.energy() < energy) {
        join(sets, pass);
      }
    }
    int root = sets.root(restPoint);
    BitSet reached = new BitSet();
    boolean unsafe = false;
    for (int s = 0; s < sinks; s++) {
      if (sets.root(s) == root) {
        if (s < restPoints) {
          reached.set(s);
        } else {
          unsafe = true;
        }
      }
    }
    return new Reach(reached.stream().boxed().toList(), unsafe);
  }

  /** The lowest pass that joins a rest point's well to another sink. */
  Optional<Pass> lowestPass(int restPoint) {
    for (Pass pass : passes) {
      boolean touches = pass.one() == restPoint || pass.other() == restPoint;
      if (touches && pass.one() != pass.other()) {
        return Optional.of(pass);
      }
    }
    return Optional.empty();
  }

  /** The energy above which two sinks are joined, infinite where they never are. */
  double joinedAbove(int one, int other) {
    DisjointSets sets = new DisjointSets(sinks);
    for (Pass pass : passes) {
      join(sets, pass);
      if (sets.root(one) == sets.root(other)) {
        return pass.energy();
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static void join(DisjointSets sets, Pass pass) {
    sets.hang(sets.root(pass.one()), sets.root(pass.other()));
  }

  /**
   * What can be reached.
   *
   * @param restPoints indices of the rest points, rising
   * @param unsafe whether a place where the model does not hold can be reached too
   */
  public record Reach(List<Integer> restPoints, boolean unsafe) {

    public Reach {
      restPoints = List.copyOf(restPoints);
    }
  }
}
