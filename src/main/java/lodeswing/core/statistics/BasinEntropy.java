package lodeswing.core.statistics;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.math3.util.FastMath;

/**
 * Basin entropy and boundary basin entropy of a labelled grid.
 *
 * <p>The grid is tiled by boxes; a box with shares p_j of its labels has the entropy S = - sum p_j
 * ln p_j. The basin entropy is its mean over all boxes, the boundary basin entropy over the boxes
 * with more than one label. A boundary basin entropy above ln 2 proves the boundary fractal; below
 * it nothing is said. Intervals come from the jackknife over parts of the grid, neighbouring boxes
 * being alike. Nodes without a label do not count; a box without any is left out.
 *
 * <p>Source: A. Daza, A. Wagemakers, B. Georgeot, D. Guery-Odelin and M. A. F. Sanjuan, Sci. Rep. 6
 * (2016) 31416, equations 2 to 4, 8 and 10 (numbers of equations from memory); boxes of 5 x 5 nodes
 * as there.
 *
 * @param boxSide nodes along a side of a box
 * @param boxes how many boxes were used
 * @param boundaryBoxes how many of them held more than one label
 * @param overall the basin entropy, at most ln(number of labels)
 * @param boundary the boundary basin entropy; empty where no box held two labels
 */
public record BasinEntropy(
    int boxSide, int boxes, int boundaryBoxes, Estimate overall, Optional<Estimate> boundary) {

  /** Nodes along a side of a box in the paper. */
  public static final int PUBLISHED_BOX_SIDE = 5;

  /** Verdicts of the ln 2 criterion. */
  public enum Fractality {
    /** The boundary basin entropy exceeds ln 2 by more than its interval. */
    FRACTAL,
    /** The criterion does not decide: the boundary may be smooth or fractal. */
    UNDECIDED
  }

  /** The entropies with the paper's boxes of 5 x 5 nodes; the grid holds 4 boxes or more a side. */
  public static BasinEntropy of(LabelGrid grid) {
    return of(grid, PUBLISHED_BOX_SIDE);
  }

  /**
   * The entropies with boxes of another size.
   *
   * @param boxSide nodes along a side of a box, 2 or more, a quarter of the grid's side at most
   */
  public static BasinEntropy of(LabelGrid grid, int boxSide) {
    int along = grid.side() / boxSide;
    if (boxSide < 2 || along < 4 || grid.labelled() == 0) {
      throw new IllegalArgumentException(
          "boxes of " + boxSide + " nodes on a grid of " + grid.side() + " with labels");
    }
    GridBlocks blocks = new GridBlocks(along);
    double[] sum = new double[GridBlocks.COUNT];
    int[] boxes = new int[GridBlocks.COUNT];
    int[] mixed = new int[GridBlocks.COUNT];
    int[] counts = new int[grid.labels().length];
    for (int row = 0; row < along; row++) {
      for (int column = 0; column < along; column++) {
        double entropy = entropy(grid, row * boxSide, column * boxSide, boxSide, counts);
        if (entropy >= 0) {
          int block = blocks.of(row, column);
          sum[block] += entropy;
          boxes[block]++;
          mixed[block] += entropy > 0 ? 1 : 0;
        }
      }
    }
    double most = FastMath.log(counts.length);
    return new BasinEntropy(
        boxSide,
        total(boxes),
        total(mixed),
        Jackknife.ratio(sum, boxes).orElseThrow().within(0, most),
        Jackknife.ratio(sum, mixed).map(estimate -> estimate.within(0, most)));
  }

  /** Entropy of one box, -1 where none of its nodes has a label. */
  private static double entropy(LabelGrid grid, int row0, int column0, int boxSide, int[] counts) {
    Arrays.fill(counts, 0);
    int labelled = 0;
    for (int row = row0; row < row0 + boxSide; row++) {
      for (int column = column0; column < column0 + boxSide; column++) {
        int label = grid.index(row * grid.side() + column);
        if (label != LabelGrid.NONE) {
          counts[label]++;
          labelled++;
        }
      }
    }
    if (labelled == 0) {
      return -1;
    }
    double entropy = 0;
    for (int count : counts) {
      if (count > 0 && count < labelled) {
        double share = (double) count / labelled;
        entropy -= share * FastMath.log(share);
      }
    }
    return entropy;
  }

  private static int total(int[] perBlock) {
    return Arrays.stream(perBlock).sum();
  }

  /** What the ln 2 criterion says of the boundary (the paper's sufficient condition). */
  public Fractality lnTwoCriterion() {
    boolean above = boundary.isPresent() && boundary.get().interval().low() > FastMath.log(2);
    return above ? Fractality.FRACTAL : Fractality.UNDECIDED;
  }
}
