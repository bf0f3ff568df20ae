package lodeswing.core.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A costly smooth function of two angles as a few large patches of high degree: what tables of many
 * small cells are made from at little cost.
 *
 * <p>Each patch begins with degree 8; the fall of its coefficients tells which degree it needs. If
 * that is one of the ladder, it goes there, keeping the points that it has; else it is cut into
 * four. A function fitted to one tolerance can be {@linkplain #refine refined} to another. Where
 * nothing holds, and where nothing need hold, the value is NaN.
 *
 * <p>Not safe for several threads while it is refined; its evaluation is.
 */
final class PatchedFunction implements CellTable.Source {

  /** Patches a side to begin with. */
  static final int COARSE = 4;

  /** Deepest cut: a hundredth of the square's side, a few millimetres. */
  static final int DEEPEST = 6;

  static final int[] LADDER = {8, 16, 24, 32};

  /** A degree foretold by at most this factor more is tried. */
  static final double HOPE = 1.1;

  /** The source's own rounding and the jumps of its rules, as a share of its greatest size. */
  static final double ROUNDING = 2e-13;

  /** Rounding is in all coefficients alike: its sum against that of the last ones. */
  private static final double ROUNDED_SUM = 4;

  private final CellTable.Source source;
  private final double halfWidth;
  private final Region region;
  private final WorkBudget budget;
  private final List<Node> roots = new ArrayList<>();
  private double size;
  private double valueError;
  private double slopeError;

  /**
   * A function without patches yet.
   *
   * @param source the costly function, safe for several threads
   * @param halfWidth half the side of the square [rad]
   * @param region where it must hold
   * @param budget what evaluations are counted in
   */
  PatchedFunction(CellTable.Source source, double halfWidth, Region region, WorkBudget budget) {
    this.source = source;
    this.halfWidth = halfWidth;
    this.region = region;
    this.budget = budget;
    double half = halfWidth / COARSE;
    for (int k = 0; k < COARSE * COARSE; k++) {
      double u = -halfWidth + (2 * (k / COARSE) + 1) * half;
      double v = -halfWidth + (2 * (k % COARSE) + 1) * half;
      roots.add(new Node(u, v, half, 0));
    }
  }

  /**
   * Makes the patches hold to tolerances, on all cores.
   *
   * @param valueTolerance greatest error of the value
   * @param slopeTolerance greatest error of a slope; infinite where slopes do not matter
   * @throws WorkExceededException where the budget runs out
   */
  void refine(double valueTolerance, double slopeTolerance) {
    List<Node> open = leaves();
    while (!open.isEmpty()) {
      List<Node> now = open;
      now.parallelStream().forEach(node -> node.advance(valueTolerance, slopeTolerance));
      open = new ArrayList<>();
      for (Node node : now) {
        size = Math.max(size, node.patch.size());
        if (!node.quarters.isEmpty()) {
          open.addAll(node.quarters);
        } else if (!node.done) {
          open.add(node);
        }
      }
    }
    valueError = 0;
    slopeError = 0;
    for (Node leaf : leaves()) {
      if (leaf.fitted) {
        double sum = leaf.rounded ? ROUNDED_SUM : 1;
        valueError = Math.max(valueError, sum * leaf.patch.valueError());
        slopeError = Math.max(slopeError, leaf.patch.slopeError());
      }
    }
  }

  private List<Node> leaves() {
    List<Node> leaves = new ArrayList<>();
    roots.forEach(root -> root.addLeaves(leaves));
    leaves.forEach(leaf -> leaf.done = false);
    return leaves;
  }

  /** Greatest error of the value, as estimated. */
  double valueError() {
    return valueError;
  }

  /** Greatest error of a slope, as estimated. */
  double slopeError() {
    return slopeError;
  }

  @Override
  public boolean matters(double u, double v, double half) {
    return region.matters(u, v, half);
  }

  @Override
  public double value(double u, double v) {
    double[] out = new double[3];
    grid(new double[] {u}, new double[] {v}, false, out);
    return out[0];
  }

  @Override
  public void slopes(double u, double v, double[] out) {
    grid(new double[] {u}, new double[] {v}, true, out);
  }

  @Override
  public void grid(double[] us, double[] vs, boolean slopes, double[] out) {
    double middleU = 0.5 * (us[0] + us[us.length - 1]);
    double middleV = 0.5 * (vs[0] + vs[vs.length - 1]);
    Optional<ChebyshevPatch> patch = find(middleU, middleV);
    if (patch.isPresent()
        && patch.get().holds(us[0], us[us.length - 1], vs[0], vs[vs.length - 1])) {
      patch.get().grid(us, vs, slopes, out);
    } else if (us.length * vs.length == 1) {
      Arrays.fill(out, 0, 3, Double.NaN);
    } else {
      CellTable.Source.super.grid(us, vs, slopes, out);
    }
  }

  private Optional<ChebyshevPatch> find(double u, double v) {
    return roots.get(root(u) * COARSE + root(v)).at(u, v);
  }

  private int root(double q) {
    int index = (int) Math.floor((q + halfWidth) / (2 * halfWidth) * COARSE);
    return Math.max(0, Math.min(COARSE - 1, index));
  }

  /** The degree of the ladder above one that serves where a degree is needed; 0 where none. */
  static int rung(int above, double needed) {
    for (int degree : LADDER) {
      double upTo = degree == LADDER[LADDER.length - 1] ? HOPE * degree : degree;
      if (degree > above && needed <= upTo) {
        return degree;
      }
    }
    return 0;
  }

  /** One patch, or four in its place. */
  private final class Node {
    private final ChebyshevPatch patch;
    private final int depth;
    private List<Node> quarters = List.of();
    private boolean fitted;
    private boolean rounded;
    private boolean done;

    Node(double u, double v, double half, int depth) {
      this.patch = new ChebyshevPatch(u, v, half);
      this.depth = depth;
    }

    void addLeaves(List<Node> leaves) {
      if (quarters.isEmpty()) {
        leaves.add(this);
      } else {
        quarters.forEach(quarter -> quarter.addLeaves(leaves));
      }
    }

    Optional<ChebyshevPatch> at(double u, double v) {
      if (!quarters.isEmpty()) {
        return quarters.get((u < patch.u0 ? 0 : 2) + (v < patch.v0 ? 0 : 1)).at(u, v);
      }
      return fitted ? Optional.of(patch) : Optional.empty();
    }

    /** One step towards the tolerances: a first fit, a higher degree, or a cut. */
    void advance(double valueTolerance, double slopeTolerance) {
      if (patch.degree() == 0) {
        if (!region.matters(patch.u0, patch.v0, patch.half)) {
          done = true;
          return;
        }
        // near a touch the function is not smooth, and costly
        if (!region.allMatters(patch.u0, patch.v0, patch.half)) {
          if (depth < DEEPEST) {
            cut();
          } else {
            done = true;
          }
          return;
        }
        raise(ChebyshevPatch.FIRST);
      }
      double needed = patch.degreeFor(valueTolerance, slopeTolerance);
      rounded = needed > patch.degree() && patch.rounded(ROUNDING * size);
      fitted = rounded || needed <= patch.degree();
      done = fitted;
      if (fitted) {
        return;
      }
      int next = rung(patch.degree(), needed);
      if (next > 0) {
        raise(next);
      } else if (depth < DEEPEST) {
        cut();
      } else {
        done = true;
      }
    }

    private void raise(int degree) {
      budget.spendOver(patch.u0, patch.v0, patch.half, patch.newPoints(degree));
      patch.raise(source, degree);
    }

    private void cut() {
      List<Node> four = new ArrayList<>();
      double quarter = 0.5 * patch.half;
      for (int q = 0; q < 4; q++) {
        four.add(
            new Node(
                patch.u0 + (q < 2 ? -quarter : quarter),
                patch.v0 + (q % 2 == 0 ? -quarter : quarter),
                quarter,
                depth + 1));
      }
      quarters = four;
      patch.close();
    }
  }
}
