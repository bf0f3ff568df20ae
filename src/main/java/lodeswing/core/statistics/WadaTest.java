package lodeswing.core.statistics;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Test of a grid for the Wada property: does every boundary point touch all labels?
 *
 * <p>The merging method: merge all labels but one and take the boundary that is left, for each
 * label in turn; the boundary is Wada if and only if they are all the same. On a grid they are
 * compared by distance: within {@value #RADIUS} spacings counts as the same, and the farthest that
 * any boundary node lies from any label's boundary is compared with the same on every fourth node.
 * Where layers of a Wada boundary are merely unresolved that distance shrinks with the spacing;
 * where two labels share a piece of boundary of their own it keeps its length.
 *
 * <p>A grid cannot prove the property: the verdict holds down to the spacing, no further.
 * Boundaries of pendulums that lose energy without being driven grow simpler the closer one looks
 * (X. Chen, T. Nishikawa and A. E. Motter, Phys. Rev. X 7 (2017) 021040), so theirs may be Wada in
 * a wide window and not in a narrow one. Labels on less than {@value #LEAST_SHARE} of the nodes are
 * set aside.
 *
 * <p>Source: A. Daza, A. Wagemakers and M. A. F. Sanjuan, Sci. Rep. 8 (2018) 9954 (the method); the
 * comparison of two resolutions and its limits are ours.
 */
public final class WadaTest {

  /** Boundaries no farther apart than this count as the same [spacings]. */
  public static final int RADIUS = 4;

  /** Labels on a smaller share of the labelled nodes are set aside. */
  public static final double LEAST_SHARE = 0.001;

  private static final int THINNING = 4;
  private static final int FARTHEST_OF_WADA = 2 * RADIUS;
  private static final int FEWEST_NODES = 50;
  private static final double KEPT = 0.75;

  /** What the test says. */
  public enum Verdict {
    /** Down to the spacing every piece of boundary touches all labels. */
    WADA,
    /** A part of the boundary touches all labels, another part does not. */
    PARTLY_WADA,
    /** The boundary touches all labels in single points at most. */
    NOT_WADA,
    /** Fewer than three labels: the property is about three or more. */
    TOO_FEW_LABELS,
    /** Too little boundary on the grid to tell. */
    UNRESOLVED
  }

  private final Verdict verdict;
  private final int[] labels;
  private final @Nullable Estimate share;
  private final int farthest;

  private WadaTest(Verdict verdict, int[] labels, @Nullable Estimate share, int farthest) {
    this.verdict = verdict;
    this.labels = labels;
    this.share = share;
    this.farthest = farthest;
  }

  /** Tests a grid. */
  public static WadaTest of(LabelGrid grid) {
    LabelGrid kept = grid.without(rare(grid));
    if (kept.labels().length < 3) {
      return new WadaTest(Verdict.TOO_FEW_LABELS, kept.labels(), null, 0);
    }
    MergedBoundaries fine = MergedBoundaries.of(kept);
    MergedBoundaries coarse = MergedBoundaries.of(kept.thinned(THINNING));
    if (fine.nodes() == 0 || coarse.nodes() < FEWEST_NODES) {
      return new WadaTest(Verdict.UNRESOLVED, kept.labels(), null, 0);
    }
    Estimate share = fine.shareWithin(RADIUS);
    double coarseShare = coarse.shareWithin(RADIUS).value();
    int farthest = fine.farthest();
    boolean shrinks = farthest <= THINNING / 2 * coarse.farthest();
    Verdict verdict = Verdict.NOT_WADA;
    if (farthest <= FARTHEST_OF_WADA && shrinks) {
      verdict = Verdict.WADA;
    } else if (share.value() >= KEPT * coarseShare) {
      verdict = Verdict.PARTLY_WADA;
    }
    return new WadaTest(verdict, kept.labels(), share, farthest);
  }

  private static boolean[] rare(LabelGrid grid) {
    int[] labels = grid.labels();
    boolean[] rare = new boolean[labels.length];
    for (int k = 0; k < labels.length; k++) {
      rare[k] = grid.count(labels[k]) < LEAST_SHARE * grid.labelled();
    }
    return rare;
  }

  /** What the test says. */
  public Verdict verdict() {
    return verdict;
  }

  /** The labels that took part, ascending; a fresh array. */
  public int[] labels() {
    return labels.clone();
  }

  /**
   * Share of the boundary nodes that have every label's boundary within {@value #RADIUS} spacings;
   * empty where the test could not be made.
   */
  public Optional<Estimate> share() {
    return Optional.ofNullable(share);
  }

  /** The farthest that a boundary node lies from any label's boundary [spacings]. */
  public int farthest() {
    return farthest;
  }
}
