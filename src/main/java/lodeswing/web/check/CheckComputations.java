package lodeswing.web.check;

import java.util.List;
import lodeswing.analysis.check.Finding;
import lodeswing.analysis.check.RigCheck;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.job.Computation;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.limits.Limits;
import org.springframework.stereotype.Component;

/** The work behind checks. */
@Component
final class CheckComputations {

  static final String KIND = "check";

  private final Landscapes landscapes;
  private final OutcomeFinders finders;
  private final Limits limits;

  CheckComputations(Landscapes landscapes, OutcomeFinders finders, Limits limits) {
    this.landscapes = landscapes;
    this.finders = finders;
    this.limits = limits;
  }

  /**
   * The work for a request.
   *
   * @param place where the layout stands in the request
   */
  Computation of(CheckRequest request, LayoutPlace place) {
    return new Computation(
            request.key(limits.followedS()),
            KIND,
            request.url(),
            progress -> compute(request, place, progress))
        .remadeFrom(request.words().toArray(String[]::new))
        .costing(landscapes.costOf(request.layout()).check());
  }

  private byte[] compute(CheckRequest request, LayoutPlace place, Computation.Progress progress) {
    WorkCost cost = landscapes.costOf(request.layout());
    Stages stages = cost.stages(progress, cost.check());
    Landscape landscape = landscapes.of(request.layout(), place, stages.next());
    var told = new Told(stages.next());
    var check =
        new RigCheck(
            LayoutRig.of(request.layout()),
            request.spec(limits),
            new LayoutWorkshop(request.layout()),
            () -> landscape,
            finders,
            inner -> told.again());
    List<Finding> findings = check.run(told::to);
    return StoredCheck.written(findings);
  }

  /** Tells a part done again and again, as long as nothing more is known. */
  private static final class Told {

    private final Computation.Progress progress;
    private volatile double part;

    Told(Computation.Progress progress) {
      this.progress = progress;
    }

    void to(double done) {
      part = done;
      progress.report(done);
    }

    void again() {
      progress.report(part);
    }
  }
}
