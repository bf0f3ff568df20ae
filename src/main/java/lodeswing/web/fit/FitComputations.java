package lodeswing.web.fit;

import lodeswing.analysis.fit.FitResult;
import lodeswing.analysis.fit.FitSpec;
import lodeswing.analysis.fit.PathFit;
import lodeswing.job.Computation;
import lodeswing.job.WorkCost;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import org.springframework.stereotype.Component;

/** The work behind fits. */
@Component
final class FitComputations {

  private final LayoutStore layouts;
  private final Limits limits;

  FitComputations(LayoutStore layouts, Limits limits) {
    this.layouts = layouts;
    this.limits = limits;
  }

  /** The work for a fit; nothing needs to be made ready for it. */
  Computation of(FitRequest request) {
    int sought = new FitQuantities(request).sought().size();
    return new Computation(
            request.key(limits.fitPaths()),
            request.kind().word(),
            request.url(),
            progress -> fitted(request, progress))
        .remadeFrom(request.id())
        .costing(new WorkCost(request.layout().layout(), true, 0).fit(sought));
  }

  private byte[] fitted(FitRequest request, Computation.Progress progress) {
    FitSpec spec = new FitQuantities(request).spec(limits.fitPaths());
    FitResult result = new PathFit(spec, progress::report).run();
    StoredFit found = StoredFit.of(result, spec.recording().noise());
    layouts.save(new FoundQuantities(request, found).layout());
    return found.written();
  }
}
