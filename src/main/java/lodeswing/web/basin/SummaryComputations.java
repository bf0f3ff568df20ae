package lodeswing.web.basin;

import java.util.Optional;
import java.util.SplittableRandom;
import lodeswing.analysis.basin.BasinMap;
import lodeswing.analysis.basin.BasinSummary;
import lodeswing.analysis.basin.FineSampling;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.statistics.ScalingLaw;
import lodeswing.job.Computation;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.limits.Limits;
import org.springframework.stereotype.Component;

/** The work behind summaries: a stored map, and releases below its pixels where it needs them. */
@Component
final class SummaryComputations {

  private final BasinComputations computations;
  private final Landscapes landscapes;
  private final OutcomeFinders finders;
  private final Limits limits;

  SummaryComputations(
      BasinComputations computations,
      Landscapes landscapes,
      OutcomeFinders finders,
      Limits limits) {
    this.computations = computations;
    this.landscapes = landscapes;
    this.finders = finders;
    this.limits = limits;
  }

  /** The figures of a map. */
  Computation of(SummaryRequest request) {
    return new Computation(
            request.key(limits.followedS()),
            "basin-summary",
            request.url(),
            progress -> summarised(request, progress).written())
        .remadeFrom(request.basin().basinId(), "" + request.side(), "" + request.seed())
        .costing(
            landscapes
                .costOf(request.basin().layout())
                .summary((long) request.side() * request.side()));
  }

  private StoredSummary summarised(SummaryRequest request, Computation.Progress progress) {
    StoredSurvey survey = computations.surveyNow(request.basin());
    BasinMap map =
        computations.mapNow(
            request.basin(), request.side(), fraction -> progress.report(0.7 * fraction));
    BasinSummary summary = BasinSummary.of(request.side(), map.ends());
    Optional<FineSampling> below =
        summary.uncertaintyExponent().isEmpty() && summary.hasBorder()
            ? FineSampling.below(request.basin().window(), request.side(), survey.survey())
            : Optional.empty();
    Optional<ScalingLaw> law = below.flatMap(sampling -> drawn(request, sampling, progress));
    return new StoredSummary(
        survey,
        law.map(summary::withExponent).orElse(summary),
        law.map(
            found ->
                new StoredSummary.Drawn(
                    below.orElseThrow().releases(), found.smallestScale(), found.largestScale())));
  }

  private Optional<ScalingLaw> drawn(
      SummaryRequest request, FineSampling sampling, Computation.Progress progress) {
    return sampling.run(
        landscapes.of(request.basin().layout(), LayoutPlace.STORED),
        finders,
        limits.followedS(),
        new SplittableRandom(request.seed()),
        fraction -> progress.report(0.7 + 0.3 * fraction));
  }
}
