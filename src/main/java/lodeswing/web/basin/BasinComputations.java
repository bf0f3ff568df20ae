package lodeswing.web.basin;

import java.util.List;
import lodeswing.analysis.basin.BasinMap;
import lodeswing.analysis.basin.BasinSurveyor;
import lodeswing.analysis.basin.PossibleEnds;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.landscape.MirrorSymmetry;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.window.PixelGrid;
import lodeswing.job.Computation;
import lodeswing.job.Computations;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.jobs.NeededResults;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.restpoint.RestPlace;
import org.springframework.stereotype.Component;

/**
 * The work behind maps: keyed by physics and window alone, so that a new label computes nothing.
 */
@Component
final class BasinComputations {

  private final Landscapes landscapes;
  private final Computations computations;
  private final NeededResults results;
  private final OutcomeFinders finders;
  private final Limits limits;

  BasinComputations(
      Landscapes landscapes,
      Computations computations,
      NeededResults results,
      OutcomeFinders finders,
      Limits limits) {
    this.landscapes = landscapes;
    this.computations = computations;
    this.results = results;
    this.finders = finders;
    this.limits = limits;
  }

  /** The survey of a window, which every other answer needs. */
  Computation survey(BasinRequest request) {
    return new Computation(
            request.key("srv", "survey|" + StoredSurvey.FORM + "|" + limits.followedS()),
            "basin-survey",
            "/v1/basins/" + request.id(),
            progress -> {
              WorkCost cost = landscapes.costOf(request.layout());
              Stages stages = cost.stages(progress, cost.survey());
              Landscape landscape =
                  landscapes.of(request.layout(), LayoutPlace.STORED, stages.next());
              List<RestPlace> places =
                  landscape.restPoints().list().stream().map(RestPlace::of).toList();
              var surveyor =
                  new BasinSurveyor(landscape, request.window(), finders, limits.followedS());
              return new StoredSurvey(
                      surveyor.survey(stages.next()::report),
                      limits.followedS(),
                      PossibleEnds.of(landscape, request.window()),
                      places)
                  .written();
            })
        .remadeFrom(request.id())
        .costing(landscapes.costOf(request.layout()).survey());
  }

  /**
   * A tile.
   *
   * @param settled whether with settling times, at their own cost
   * @throws ProblemException from the work: {@code not-found} beyond the deepest zoom
   */
  Computation tile(BasinRequest request, TilePlace place, int size, boolean settled) {
    return new Computation(
            request.key(
                "til",
                "tile|" + limits.followedS() + "|" + place.path() + "|" + size + settling(settled)),
            "basin-tile",
            "/v1/basins/" + request.id() + "/tiles/" + place.path(),
            progress -> {
              Stages stages = stages(request, progress, (long) size * size, settled);
              Computation.Progress making = stages.next();
              StoredSurvey survey = surveyNow(request, making, stages.next());
              int deepest = survey.survey().servedZoom();
              if (place.zoom() > deepest) {
                throw TilePlace.nowhere("Zooms from 0 to " + deepest + " are served of this map.");
              }
              Landscape landscape = landscapes.of(request.layout(), LayoutPlace.STORED, making);
              return written(
                  request,
                  PixelGrid.tile(request.window(), place.zoom(), place.x(), place.y(), size),
                  survey,
                  tiled(request, landscape, place, size, settled, stages.next()));
            })
        .remadeFrom(request.id(), place.path(), "" + size, "" + settled)
        .costing(landscapes.costOf(request.layout()).map((long) size * size, settled));
  }

  /** A picture of the whole window. */
  Computation preview(BasinRequest request, int width, int height) {
    return new Computation(
            request.key("prv", "preview|" + limits.followedS() + "|" + width + "|" + height),
            "basin-preview",
            "/v1/basins/" + request.id() + "/preview?width=" + width + "&height=" + height,
            progress -> {
              Stages stages = stages(request, progress, (long) width * height, false);
              Computation.Progress making = stages.next();
              StoredSurvey survey = surveyNow(request, making, stages.next());
              PixelGrid grid = PixelGrid.whole(request.window(), width, height);
              Landscape landscape = landscapes.of(request.layout(), LayoutPlace.STORED, making);
              return written(
                  request, grid, survey, map(request, landscape, grid, false, stages.next()));
            })
        .remadeFrom(request.id(), "" + width, "" + height)
        .costing(landscapes.costOf(request.layout()).map((long) width * height, false));
  }

  /** A square picture of the whole window, from memory, the store or computed on this thread. */
  BasinMap mapNow(BasinRequest request, int side, Computation.Progress progress) {
    boolean tiled = side == BasinAnswers.TILE_SIZE || side == 2 * BasinAnswers.TILE_SIZE;
    Computation square =
        tiled ? tile(request, new TilePlace(0, 0, 0), side, false) : preview(request, side, side);
    return MapFile.read(
        results.now(square.alsoTelling(progress), "The map is still being computed."));
  }

  private static String settling(boolean settled) {
    return settled ? "|settled" : "";
  }

  /**
   * A tile's map: computed, or the mirror image of the tile across where the window lies about a
   * mirror of the layout, so that a figure of such a layout costs half or a quarter.
   */
  private BasinMap tiled(
      BasinRequest request,
      Landscape landscape,
      TilePlace place,
      int size,
      boolean settled,
      Computation.Progress progress) {
    MirrorSymmetry symmetry = landscape.symmetry();
    boolean x = symmetry.turnsX() && request.window().x() == 0 && place.left();
    boolean y = symmetry.turnsY() && request.window().y() == 0 && place.lower();
    if (!x && !y) {
      PixelGrid grid = PixelGrid.tile(request.window(), place.zoom(), place.x(), place.y(), size);
      return map(request, landscape, grid, settled, progress);
    }
    Computation across = tile(request, place.mirrored(x, y), size, settled).alsoTelling(progress);
    return MapFile.read(results.now(across, "The map is still being computed."))
        .mirrored(symmetry, x, y);
  }

  private BasinMap map(
      BasinRequest request,
      Landscape landscape,
      PixelGrid grid,
      boolean settled,
      Computation.Progress progress) {
    Tolerance tolerance = request.window().tolerance(landscape, grid.pixel());
    double longest = limits.followedS();
    return settled
        ? BasinMap.ofSettling(
            landscape, grid, finders.settling(landscape, tolerance, longest), progress::report)
        : BasinMap.of(landscape, grid, finders.of(landscape, tolerance, longest), progress::report);
  }

  private static byte[] written(
      BasinRequest request, PixelGrid grid, StoredSurvey survey, BasinMap map) {
    return MapFile.written(map, grid, request.layout().shownPerUnit(), survey.survey().halfTime());
  }

  /** Making the layout ready, the survey unless it is kept, and a map. */
  private Stages stages(
      BasinRequest request, Computation.Progress progress, long pixels, boolean settled) {
    WorkCost cost = landscapes.costOf(request.layout());
    long ready = cost.makingReady();
    return new Stages(
        progress, ready, costOfSurvey(request, cost), cost.map(pixels, settled) - ready);
  }

  /** What the survey costs once the layout is ready; 0 where it is kept. */
  long costOfSurvey(BasinRequest request, WorkCost cost) {
    boolean kept = computations.find(survey(request).key().id()).isPresent();
    return kept ? 0 : cost.survey() - cost.makingReady();
  }

  /** The survey, from memory, the store or computed on this thread. */
  StoredSurvey surveyNow(BasinRequest request) {
    return StoredSurvey.read(results.now(survey(request), "The window is still being surveyed."));
  }

  /**
   * The same, telling how far it is.
   *
   * @param making hears of making the layout ready, where the survey is not kept
   * @param surveying hears of the survey
   */
  StoredSurvey surveyNow(
      BasinRequest request, Computation.Progress making, Computation.Progress surveying) {
    Computation survey = survey(request);
    if (computations.find(survey.key().id()).isEmpty()) {
      landscapes.of(request.layout(), LayoutPlace.STORED, making);
    }
    return StoredSurvey.read(
        results.now(survey.alsoTelling(surveying), "The window is still being surveyed."));
  }
}
