package lodeswing.web.tuning;

import lodeswing.analysis.tuning.Tuning;
import lodeswing.analysis.tuning.TuningProgress;
import lodeswing.analysis.tuning.TuningResult;
import lodeswing.analysis.tuning.TuningSpec;
import lodeswing.core.chance.OddsSpec;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.job.Computation;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import org.springframework.stereotype.Component;

/** The work behind tunings. */
@Component
final class TuningComputations {

  private final Landscapes landscapes;
  private final LayoutStore layouts;
  private final OutcomeFinders finders;
  private final Limits limits;

  TuningComputations(
      Landscapes landscapes, LayoutStore layouts, OutcomeFinders finders, Limits limits) {
    this.landscapes = landscapes;
    this.layouts = layouts;
    this.finders = finders;
    this.limits = limits;
  }

  /**
   * The work for a tuning.
   *
   * @param request what is asked
   * @param place where the layout stands in the request
   */
  Computation of(TuningRequest request, LayoutPlace place) {
    return new Computation(
            request.key(limits.followedS()),
            request.kind().word(),
            request.url(),
            progress -> tuned(request, place, progress).written())
        .remadeFrom(request.id())
        .costing(cost(request).all());
  }

  /** What it costs, stage by stage. */
  WorkCost.TuningCost cost(TuningRequest request) {
    WorkBench bench = new WorkBench(request);
    boolean rigs = bench.figures() > bench.aims();
    return landscapes
        .costOf(request.layout())
        .tuning(
            new WorkCost.TuningSize(
                rigs,
                request.candidates(),
                TuningSpec.GLANCE,
                request.spec(limits).looks() * (long) TuningSpec.LOOK,
                request.answers(),
                2L * OddsSpec.mostReleases(request.width(), request.rule())));
  }

  private StoredTuning tuned(
      TuningRequest request, LayoutPlace place, Computation.Progress progress) {
    WorkBench bench = new WorkBench(request);
    WorkCost.TuningCost cost = cost(request);
    Stages stages = new Stages(progress, cost.before(), cost.search(), cost.finish());
    var hears =
        new TuningProgress(stages.next()::report, stages.next()::report, stages.next()::report);
    TuningResult result =
        new Tuning(bench, request.spec(limits), finders, limits.preparingWork())
            .run(setting -> landscapes.of(bench.document(setting), place), hears);
    StoredTuning stored = StoredTuning.of(result);
    for (StoredTuning.Rig rig : stored.nearest()) {
      LayoutDocument document = bench.document(rig.steps());
      layouts.save(document);
    }
    return stored;
  }
}
