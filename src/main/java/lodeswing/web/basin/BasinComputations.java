package lodeswing.web.basin;

import java.time.Duration;
import java.util.List;
import lodeswing.analysis.basin.BasinMap;
import lodeswing.analysis.basin.BasinSurveyor;
import lodeswing.analysis.basin.PixelGrid;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.job.Answer;
import lodeswing.job.Computation;
import lodeswing.job.Computations;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.restpoint.RestPlace;
import org.springframework.stereotype.Component;

/**
 * The work behind maps: keyed by physics and window alone, so that a new label computes nothing.
 */
@Component
final class BasinComputations {

  private static final Duration SURVEY_TAKES_AT_MOST = Duration.ofHours(1);

  private final Landscapes landscapes;
  private final Computations computations;
  private final OutcomeFinders finders;
  private final Limits limits;

  BasinComputations(
      Landscapes landscapes, Computations computations, OutcomeFinders finders, Limits limits) {
    this.landscapes = landscapes;
    this.computations = computations;
    this.finders = finders;
    this.limits = limits;
  }

  /** The survey of a window, which every other answer needs. */
  Computation survey(BasinRequest request) {
    return new Computation(
        request.key("srv", "survey|" + limits.followedS()),
        "basin-survey",
        "/v1/basins/" + request.basinId(),
        progress -> {
          Landscape landscape = landscapes.of(request.layout(), LayoutPlace.STORED);
          List<RestPlace> places =
              landscape.restPoints().list().stream().map(RestPlace::of).toList();
          var surveyor =
              new BasinSurveyor(landscape, request.window(), finders, limits.followedS());
          return new StoredSurvey(surveyor.survey(progress::report), limits.followedS(), places)
              .written();
        });
  }

  /**
   * A tile.
   *
   * @throws ProblemException from the work: {@code not-found} beyond the deepest zoom
   */
  Computation tile(BasinRequest request, TilePlace place, int size) {
    return new Computation(
        request.key("til", "tile|" + limits.followedS() + "|" + place.path() + "|" + size),
        "basin-tile",
        "/v1/basins/" + request.basinId() + "/tiles/" + place.path(),
        progress -> {
          StoredSurvey survey = surveyNow(request);
          int deepest = survey.survey().servedZoom();
          if (place.zoom() > deepest) {
            throw TilePlace.nowhere("Zooms from 0 to " + deepest + " are served of this map.");
          }
          PixelGrid grid =
              PixelGrid.tile(request.window(), place.zoom(), place.x(), place.y(), size);
          return map(request, grid, survey, progress);
        });
  }

  /** A picture of the whole window. */
  Computation preview(BasinRequest request, int width, int height) {
    return new Computation(
        request.key("prv", "preview|" + limits.followedS() + "|" + width + "|" + height),
        "basin-preview",
        "/v1/basins/" + request.basinId() + "/preview?width=" + width + "&height=" + height,
        progress ->
            map(
                request,
                PixelGrid.whole(request.window(), width, height),
                surveyNow(request),
                progress));
  }

  private byte[] map(
      BasinRequest request, PixelGrid grid, StoredSurvey survey, Computation.Progress progress) {
    Landscape landscape = landscapes.of(request.layout(), LayoutPlace.STORED);
    BasinMap map =
        BasinMap.of(
            landscape,
            grid,
            finders.of(
                landscape, request.window().tolerance(landscape, grid.pixel()), limits.followedS()),
            progress::report);
    return MapFile.written(map, grid, request.layout().shownPerUnit(), survey.survey().halfTime());
  }

  /** The survey, from memory, the store or computed on this thread. */
  StoredSurvey surveyNow(BasinRequest request) {
    Answer answer = computations.answer(survey(request), SURVEY_TAKES_AT_MOST);
    if (answer instanceof Answer.Ready ready) {
      return StoredSurvey.read(ready.result().bytes());
    }
    throw ProblemException.passing(
        ProblemCode.SERVICE_BUSY, "The window is still being surveyed.", Duration.ofSeconds(60));
  }
}
