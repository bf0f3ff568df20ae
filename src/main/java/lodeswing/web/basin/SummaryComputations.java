package lodeswing.web.basin;

import java.util.Optional;
import java.util.SplittableRandom;
import lodeswing.analysis.basin.BasinMap;
import lodeswing.analysis.basin.BasinSummary;
import lodeswing.analysis.basin.FineSampling;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.statistics.ScalingLaw;
import lodeswing.job.Computation;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
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
        .remadeFrom(request.basin().id(), "" + request.side(), "" + request.seed())
        .costing(
            landscapes
                .costOf(request.basin().layout())
                .summary((long) request.side() * request.side()));
  }

  private StoredSummary summarised(SummaryRequest request, Computation.Progress progress) {
    WorkCost cost = landscapes.costOf(request.basin().layout());
    long ready = cost.makingReady();
    var stages =
        new Stages(
            progress,
            ready,
            computations.costOfSurvey(request.basin(), cost),
            cost.map((long) request.side() * request.side(), false) - ready,
            cost.belowPixels());
    StoredSurvey survey = computations.surveyNow(request.basin(), stages.next(), stages.next());
    BasinMap map = computations.mapNow(request.basin(), request.side(), stages.next());
    BasinSummary summary = BasinSummary.of(request.side(), map.ends());
    Optional<FineSampling> below =
        summary.uncertaintyExponent().isEmpty() && summary.hasBorder()
            ? FineSampling.below(request.basin().window(), request.side(), survey.survey())
            : Optional.empty();
    Optional<ScalingLaw> law = below.flatMap(sampling -> drawn(request, sampling, stages.next()));
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
        progress::report);
  }
}
