package lodeswing.web.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.trace.TraceEvent;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.figure.Drawing;
import lodeswing.figure.Measure;
import lodeswing.figure.PathFigure;
import lodeswing.figure.PathPicture;
import lodeswing.figure.Trail;
import lodeswing.web.plate.PlateMap;
import lodeswing.web.restpoint.RestPlace;
import lodeswing.web.restpoint.RestPointNames;

/** The picture of a trace: what is handed to the figure. */
final class TracePicture {

  private final TraceRequest request;
  private final TraceAnswers answers;
  private final PlateMap plate;

  TracePicture(TraceRequest request, TraceAnswers answers) {
    this.request = request;
    this.answers = answers;
    this.plate = new PlateMap(request.layout());
  }

  Drawing drawing() {
    return drawing(answers.words().notes());
  }

  /** The picture for an animation, with a sentence about that above the notes. */
  Drawing played(String caption) {
    List<String> captions = new ArrayList<>();
    captions.add(caption);
    captions.addAll(answers.words().notes());
    return drawing(captions);
  }

  private Drawing drawing(List<String> captions) {
    return PathFigure.draw(
        new PathPicture(
            request.title().orElse("The path of the bob"),
            captions,
            request.bench() ? Measure.BENCH : Measure.TEXTBOOK,
            plate.outline(),
            plate.magnets(),
            List.of(trail())));
  }

  private Trail trail() {
    return trail(request, answers, "", answers.stored().path().foretoldUntil(), List.of());
  }

  /**
   * The path as pictures show it.
   *
   * @param name what to call it where there are two
   * @param foretoldUntil until when a hand can foretell it, where that is to be shown
   * @param more what else happened on it
   */
  static Trail trail(
      TraceRequest request,
      TraceAnswers answers,
      String name,
      OptionalDouble foretoldUntil,
      List<Trail.Happening> more) {
    TraceResult path = answers.stored().path();
    double unit = request.unit();
    List<Trail.Happening> happenings = new ArrayList<>(more);
    for (TraceEvent event : path.events()) {
      if (event.kind().endsModel() || event.kind() == TraceEvent.Kind.STUCK) {
        happenings.add(new Trail.Happening(event.time(), TraceWords.text(event.kind())));
      }
    }
    return new Trail(
        path.curve(),
        name,
        new Trail.Horizons(path.trustedUntil(), foretoldUntil, path.sealedAt(), path.settledAt()),
        happenings,
        new Trail.Start(
            request.release().get(0) * unit,
            request.release().get(1) * unit,
            request.release().get(2) * unit,
            request.release().get(3) * unit),
        end(answers));
  }

  private static Optional<Trail.End> end(TraceAnswers answers) {
    TraceResult path = answers.stored().path();
    if (path.restPoint().isEmpty()) {
      return Optional.empty();
    }
    int index = path.restPoint().getAsInt();
    RestPlace place = answers.stored().places().get(index);
    if (place.ring()) {
      // No place of a ring is the one, so none is marked.
      return Optional.empty();
    }
    RestPointNames names = answers.words().names();
    return Optional.of(new Trail.End(place.x(), place.y(), names.name(index), names.where(index)));
  }
}
