package lodeswing.web.occupancy;

import lodeswing.analysis.occupancy.Occupancy;
import lodeswing.core.landscape.Landscape;
import lodeswing.job.Computation;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import org.springframework.stereotype.Component;

/** The work behind occupancies. */
@Component
final class OccupancyComputations {

  static final String KIND = "occupancy";

  private final Landscapes landscapes;

  OccupancyComputations(Landscapes landscapes) {
    this.landscapes = landscapes;
  }

  /**
   * The work for a request.
   *
   * @param place where the layout stands in the request
   */
  Computation of(OccupancyRequest request, LayoutPlace place) {
    return new Computation(
            request.key(), KIND, request.url(), progress -> compute(request, place, progress))
        .remadeFrom(request.words().toArray(String[]::new))
        .costing(landscapes.costOf(request.layout()).occupancy(request.swings()));
  }

  private byte[] compute(
      OccupancyRequest request, LayoutPlace place, Computation.Progress progress) {
    WorkCost cost = landscapes.costOf(request.layout());
    Stages stages = cost.stages(progress, cost.occupancy(request.swings()));
    Landscape landscape = landscapes.of(request.layout(), place, stages.next());
    Occupancy occupancy = new Occupancy(landscape, request.spec());
    return StoredOccupancy.of(occupancy.run(stages.next()::report)).written();
  }
}
