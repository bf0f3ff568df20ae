package lodeswing.web.worksheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lodeswing.analysis.field.PlateField;
import lodeswing.analysis.field.WeakSpotSearch;
import lodeswing.core.chance.DiscSpread;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.chance.NormalSpread;
import lodeswing.core.chance.Odds;
import lodeswing.core.field.Frame;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.Release;
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

  /** Rings of places that are tried, as parts of the reach; places on each; tries from each. */
  private static final double[] RINGS = {0.45, 0.7, 0.95};

  static final int DIRECTIONS = 8;
  private static final int TRIES = 192;
  private static final int ANYWHERE = 1_984;
  private static final long SEED = 1;

  /** Turns the places off the axes, on which rigs with a mirror are undecided by symmetry. */
  static final double OFF_AXIS = 0.3;

  /** A sheet of paper over the magnets [m]. */
  private static final double OVER_MAGNETS = 2e-3;

  private static final int MOST_SPOTS = 12;
  private static final double MILLI = 1e-3;

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
        .costing(landscapes.costOf(request.layout()).odds(tries() + ANYWHERE, 0, 0));
  }

  private static long tries() {
    return (long) RINGS.length * DIRECTIONS * TRIES;
  }

  private StoredFigures compute(
      WorksheetRequest request, LayoutPlace at, Computation.Progress progress) {
    WorkCost cost = landscapes.costOf(request.layout());
    long all = cost.odds(tries() + ANYWHERE, 0, 0) - cost.makingReady();
    long some = all * tries() / (tries() + ANYWHERE);
    Stages stages = new Stages(progress, cost.makingReady(), some, all - some);
    Landscape landscape = landscapes.of(request.layout(), at, stages.next());
    double reach = UsualWindow.halfWidth(request.layout()) * MILLI;
    Computation.Progress trying = stages.next();
    List<StoredFigures.Place> tried = new ArrayList<>();
    int count = RINGS.length * DIRECTIONS;
    for (int k = 0; k < count; k++) {
      int done = k;
      double radius = RINGS[k / DIRECTIONS] * reach;
      double angle = 2 * Math.PI * (k % DIRECTIONS + OFF_AXIS) / DIRECTIONS;
      double x = Math.rint(radius * Math.cos(angle) / MILLI) * MILLI;
      double y = Math.rint(radius * Math.sin(angle) / MILLI) * MILLI;
      var hand = new HandSpread(new Release(x, y, 0, 0), new NormalSpread(request.spread()), 0);
      EndCounts ends =
          odds(landscape, hand).count(TRIES, SEED, part -> trying.report((done + part) / count));
      tried.add(new StoredFigures.Place(x, y, ends));
    }
    var anywhere = new HandSpread(new Release(0, 0, 0, 0), new DiscSpread(reach), 0);
    EndCounts ends = odds(landscape, anywhere).count(ANYWHERE, SEED, stages.next()::report);
    return new StoredFigures(
        landscape.restPoints().list().stream().map(RestPlace::of).toList(),
        reach,
        PlaceChoice.aims(tried),
        PlaceChoice.pair(tried),
        ends,
        spots(request, reach));
  }

  private Odds odds(Landscape landscape, HandSpread hand) {
    return new Odds(landscape, hand, finders, limits.followedS());
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
