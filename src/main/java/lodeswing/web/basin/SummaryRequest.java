package lodeswing.web.basin;

import java.util.List;
import lodeswing.analysis.basin.BasinSummary;
import lodeswing.job.ComputationKey;
import lodeswing.web.jobs.Revised;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;

/**
 * The summary of a map as it is asked for.
 *
 * @param basin the map
 * @param side pixels along the side of the map that is summarised
 * @param seed of the draws, where releases below the pixels are drawn
 */
record SummaryRequest(BasinRequest basin, int side, int seed) implements Revised<SummaryRequest> {

  static final int USUAL_SIDE = BasinAnswers.TILE_SIZE;
  static final int USUAL_SEED = 1;

  static final Parameter<Integer> SIDE =
      Parameter.integer("side", BasinSummary.LEAST_SIDE, BasinQuery.GREATEST_SIDE)
          .orElse(USUAL_SIDE);
  static final Parameter<Integer> SEED =
      Parameter.integer("seed", 0, Integer.MAX_VALUE).orElse(USUAL_SEED);

  /**
   * Reads it.
   *
   * @throws ProblemException {@code too-costly}
   */
  static SummaryRequest of(BasinRequest basin, QueryParameters query, Limits limits) {
    int side = query.get(SIDE);
    if ((long) side * side > limits.previewPixels()) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          "The map has more pixels than " + limits.previewPixels() + ".",
          List.of(
              new Fault(
                  "?side",
                  "is " + side + "; lower it to " + (int) Math.sqrt(limits.previewPixels()))));
    }
    return new SummaryRequest(basin, side, query.get(SEED));
  }

  @Override
  public int revision() {
    return basin.revision();
  }

  @Override
  public SummaryRequest today() {
    return new SummaryRequest(basin.today(), side, seed);
  }

  @Override
  public String url() {
    return "/v1/basins/" + basin.id() + "/summary?side=" + side + "&seed=" + seed;
  }

  /** Names its figures, without labels. */
  ComputationKey key(double followed) {
    return basin.key(
        "sum", "summary|" + StoredSurvey.FORM + "|" + followed + "|" + side + "|" + seed);
  }
}
