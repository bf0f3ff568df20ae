package lodeswing.web.odds;

import java.util.List;
import java.util.Optional;
import lodeswing.analysis.odds.PartsTrial;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.chance.Odds;
import lodeswing.core.chance.OddsSpec;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.WorkExceededException;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.job.Computation;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.restpoint.RestPlace;
import org.springframework.stereotype.Component;

/** The work behind odds. */
@Component
final class OddsComputations {

  private final Landscapes landscapes;
  private final OutcomeFinders finders;
  private final Limits limits;

  OddsComputations(Landscapes landscapes, OutcomeFinders finders, Limits limits) {
    this.landscapes = landscapes;
    this.finders = finders;
    this.limits = limits;
  }

  /**
   * The work for odds.
   *
   * @param request what is asked
   * @param place where the layout stands in the request
   */
  Computation of(OddsRequest request, LayoutPlace place) {
    return new Computation(
            request.key(limits.followedS()),
            request.kind().word(),
            request.url(),
            progress -> counted(request, place, progress).written())
        .remadeFrom(request.id())
        .costing(
            landscapes
                .costOf(request.layout())
                .odds(releases(request), request.rigs(), PartsTrial.RELEASES));
  }

  /** How many releases on the rig itself it may take. */
  int releases(OddsRequest request) {
    return OddsSpec.mostReleases(request.width(), request.rule());
  }

  private StoredOdds counted(
      OddsRequest request, LayoutPlace place, Computation.Progress progress) {
    OddsSpec spec = request.spec(limits);
    Stages stages = stages(request, progress);
    Landscape landscape = landscapes.of(request.layout(), place, stages.next());
    List<RestPlace> places = landscape.restPoints().list().stream().map(RestPlace::of).toList();
    var odds = new Odds(landscape, spec.hand(), finders, spec.longest());
    EndCounts hand = odds.count(spec, stages.next()::report);
    Optional<PartsTrial> trial = request.trial();
    List<EndCounts> rigs =
        trial.isPresent()
            ? varied(trial.get(), landscape, spec, place, stages.next())
            : List.<EndCounts>of();
    return new StoredOdds(places, odds.allowed().relative(), spec.longest(), hand, rigs);
  }

  /** Making ready, the rig itself, the varied rigs. */
  private Stages stages(OddsRequest request, Computation.Progress progress) {
    WorkCost cost = landscapes.costOf(request.layout());
    long alone = cost.odds(releases(request), 0, PartsTrial.RELEASES);
    long all = cost.odds(releases(request), request.rigs(), PartsTrial.RELEASES);
    return new Stages(progress, cost.makingReady(), alone - cost.makingReady(), all - alone);
  }

  private List<EndCounts> varied(
      PartsTrial trial,
      Landscape landscape,
      OddsSpec spec,
      LayoutPlace place,
      Computation.Progress progress) {
    try {
      return trial.run(landscape, spec, finders, limits.preparingWork(), progress::report);
    } catch (WorkExceededException e) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          "A rig with parts as far off as this takes more to be made ready than a layout may.",
          List.of(
              new Fault(
                  place == LayoutPlace.ADDRESS ? "?parts" : "/tolerances",
                  "makes a rig that is too costly; lower gapMm or placeMm")));
    }
  }
}
