package lodeswing.web.basin;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lodeswing.analysis.basin.BasinSummary;
import lodeswing.analysis.basin.OutcomeShare;
import lodeswing.analysis.basin.SpecialEnd;
import lodeswing.analysis.basin.SummaryFigure;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.Interval;
import lodeswing.core.statistics.Proportion;
import lodeswing.render.csv.CellText;
import lodeswing.web.body.Numbers;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** The single values of a summary, each as text for a cell. */
final class SummaryCells {

  private static final String NONE = "none";
  private static final int MOST_NAMES = 20;

  private final SummaryRequest request;
  private final StoredSummary stored;
  private final BasinSummary summary;
  private final EndNames names;

  SummaryCells(SummaryRequest request, StoredSummary stored) {
    this.request = request;
    this.stored = stored;
    this.summary = stored.summary();
    this.names = new EndNames(request.basin().layout(), stored.survey().places());
  }

  /**
   * One value.
   *
   * @param outcome the label or name of the end that a share is asked of; unused by the others
   * @throws ProblemException {@code invalid-request} where no end has that name
   */
  String text(SummaryValue value, String outcome) {
    return switch (value) {
      case SENTENCE -> summary.sentence();
      case SHARE -> number(shareOf(outcome).share());
      case SHARE_LOW -> number(intervalOf(outcome).low());
      case SHARE_HIGH -> number(intervalOf(outcome).high());
      case BOX_DIMENSION -> figure(summary.boxDimension());
      case UNCERTAINTY_EXPONENT -> figure(summary.uncertaintyExponent());
      case BASIN_ENTROPY -> figure(summary.basinEntropy());
      case BOUNDARY_BASIN_ENTROPY -> figure(summary.boundaryBasinEntropy());
      case WADA -> SummaryAnswers.verdict(summary.wada());
      case WADA_SHARE -> figure(summary.wada().share());
      case STEADY_SHARE -> number(stored.survey().survey().steadyShare());
      case RELEASES -> Integer.toString(request.side() * request.side());
      case BASIN_ID -> request.basin().id();
    };
  }

  private static String figure(Optional<SummaryFigure> figure) {
    return figure.map(found -> number(found.value())).orElse(NONE);
  }

  private static String number(double value) {
    return Numbers.plain(value);
  }

  private Interval intervalOf(String outcome) {
    return shareOf(outcome).clopperPearson(Estimate.CONFIDENCE);
  }

  /** The share of all ends of one name: two rest points may stand for one label. */
  private Proportion shareOf(String outcome) {
    Set<String> known = new LinkedHashSet<>();
    for (int index = 0; index < names.restPoints() + SpecialEnd.values().length; index++) {
      known.add(names.name(index));
    }
    // A sheet asks with what a cell gave it.
    String sought = known.contains(outcome) ? outcome : written(known, outcome);
    if (!known.contains(sought)) {
      List<String> some = known.stream().limit(MOST_NAMES).toList();
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "No end of a release has this name.",
          List.of(new Fault("?outcome", "is not one of " + String.join(", ", some))));
    }
    int releases = 0;
    for (OutcomeShare share : summary.shares()) {
      boolean named = names.nameOfEnd(share.end()).equals(sought);
      releases += named ? share.releases() : 0;
    }
    return new Proportion(releases, request.side() * request.side());
  }

  /** The name that comes as these words in a text answer or a table; else the words. */
  private static String written(Set<String> known, String words) {
    return known.stream()
        .filter(n -> CellText.line(n).equals(words) || CellText.guarded(n).equals(words))
        .findFirst()
        .orElse(words);
  }
}
