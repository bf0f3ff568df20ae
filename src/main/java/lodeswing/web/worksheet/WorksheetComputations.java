package lodeswing.web.worksheet;

import java.util.Comparator;
import java.util.List;
import lodeswing.analysis.field.PlateField;
import lodeswing.analysis.field.WeakSpotSearch;
import lodeswing.analysis.worksheet.PlaceChoice;
import lodeswing.analysis.worksheet.PlaceTrials;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.field.Frame;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.job.Computation;
import lodeswing.job.Recipe;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.sheet.WorksheetFacts;
import lodeswing.web.basin.UsualWindow;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.restpoint.RestPlace;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The work behind worksheets, and how it is done again from its words. */
@Configuration(proxyBeanMethods = false)
class WorksheetComputations {

  /** A sheet of paper over the magnets [m]. */
  private static final double OVER_MAGNETS = 2e-3;

  private static final int MOST_SPOTS = 12;
  private static final double MILLI = 1e-3;
  private static final long RELEASES = PlaceTrials.FROM_PLACES + PlaceTrials.FROM_ANYWHERE;

  private final Landscapes landscapes;
  private final OutcomeFinders finders;
  private final LaneProvider lanes;
  private final Limits limits;

  WorksheetComputations(
      Landscapes landscapes, OutcomeFinders finders, LaneProvider lanes, Limits limits) {
    this.landscapes = landscapes;
    this.finders = finders;
    this.lanes = lanes;
    this.limits = limits;
  }

  @Bean
  Recipe worksheetRecipe(LayoutStore layouts) {
    return new Recipe(
        WorksheetRequest.KIND,
        words -> of(WorksheetRequest.of(layouts.get(words.get(0)), words), LayoutPlace.STORED));
  }

  /**
   * The work for a request among magnets.
   *
   * @param place where the layout stands in the request
   */
  Computation of(WorksheetRequest request, LayoutPlace place) {
    return new Computation(
            request.key(),
            WorksheetRequest.KIND,
            request.url(),
            progress -> compute(request, place, progress).written())
        .remadeFrom(request.words().toArray(String[]::new))
        .costing(landscapes.costOf(request.layout()).odds(RELEASES, 0, 0));
  }

  private StoredFigures compute(
      WorksheetRequest request, LayoutPlace at, Computation.Progress progress) {
    WorkCost cost = landscapes.costOf(request.layout());
    long all = cost.odds(RELEASES, 0, 0) - cost.makingReady();
    long some = all * PlaceTrials.FROM_PLACES / RELEASES;
    Stages stages = new Stages(progress, cost.makingReady(), some, all - some);
    Landscape landscape = landscapes.of(request.layout(), at, stages.next());
    double reach = UsualWindow.halfWidth(request.layout()) * MILLI;
    var trials = new PlaceTrials(landscape, finders, limits.followedS(), reach);
    PlaceChoice choice = trials.choice(request.spread(), stages.next()::report);
    EndCounts anywhere = trials.anywhere(stages.next()::report);
    return new StoredFigures(
        landscape.restPoints().list().stream().map(RestPlace::of).toList(),
        reach,
        choice.aims(),
        choice.pair(),
        anywhere,
        spots(request, reach));
  }

  private List<WorksheetFacts.Spot> spots(WorksheetRequest request, double reach) {
    PlateField plate = PlateField.of(request.bench());
    WeakSpotSearch.Found found =
        new WeakSpotSearch(
                plate,
                lanes,
                Frame.square(0, 0, reach, 2),
                plate.level(plate.highestTop() + OVER_MAGNETS),
                done -> {})
            .run();
    return found.inPlane().stream()
        .map(
            spot ->
                new WorksheetFacts.Spot(
                    spot.x(), spot.y(), Math.hypot(spot.strength(), spot.vertical())))
        .sorted(Comparator.comparingDouble(spot -> Math.hypot(spot.x(), spot.y())))
        .limit(MOST_SPOTS)
        .toList();
  }
}
