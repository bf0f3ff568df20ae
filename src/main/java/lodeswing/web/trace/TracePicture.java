package lodeswing.web.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.analysis.trace.Samples;
import lodeswing.analysis.trace.TraceEvent;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.figure.Drawing;
import lodeswing.figure.Measure;
import lodeswing.figure.PathFigure;
import lodeswing.figure.PathPicture;
import lodeswing.figure.PathThinning;
import lodeswing.figure.Trail;
import lodeswing.web.plate.PlateMap;
import lodeswing.web.restpoint.RestPlace;

/** The picture of a trace: what is handed to the figure. */
final class TracePicture {

  /** Thinning that no picture shows, as a share of the swing, where a path has too many samples. */
  private static final double INVISIBLE = 1e-4;

  private final TraceRequest request;
  private final TraceAnswers answers;
  private final TraceResult path;
  private final PlateMap plate;

  TracePicture(TraceRequest request, TraceAnswers answers) {
    this.request = request;
    this.answers = answers;
    this.path = answers.stored().path();
    this.plate = new PlateMap(request.layout());
  }

  Drawing drawing() {
    return PathFigure.draw(
        new PathPicture(
            request.title().orElse("The path of the bob"),
            answers.words().notes(),
            request.bench() ? Measure.BENCH : Measure.TEXTBOOK,
            plate.outline(),
            plate.magnets(),
            List.of(trail())));
  }

  private Trail trail() {
    Samples samples = path.samples();
    double unit = request.unit();
    List<Trail.Happening> happenings = new ArrayList<>();
    for (TraceEvent event : path.events()) {
      if (event.kind().endsModel() || event.kind() == TraceEvent.Kind.STUCK) {
        happenings.add(new Trail.Happening(event.time(), TraceWords.text(event.kind())));
      }
    }
    return new Trail(
        samples(samples),
        "",
        new Trail.Horizons(
            path.trustedUntil(), path.foretoldUntil(), path.sealedAt(), path.settledAt()),
        happenings,
        new Trail.Start(
            request.release().get(0) * unit,
            request.release().get(1) * unit,
            request.release().get(2) * unit,
            request.release().get(3) * unit),
        end());
  }

  private static Trail.Samples samples(Samples samples) {
    double[] t = samples.times();
    if (t.length <= Trail.Samples.MOST) {
      return new Trail.Samples(t, samples.x(), samples.y());
    }
    double swing = 0;
    for (double x : samples.x()) {
      swing = Math.max(swing, Math.abs(x));
    }
    int[] kept = PathThinning.indices(t, samples.x(), samples.y(), INVISIBLE * swing);
    return new Trail.Samples(pick(t, kept), pick(samples.x(), kept), pick(samples.y(), kept));
  }

  private static double[] pick(double[] values, int[] kept) {
    double[] picked = new double[kept.length];
    for (int i = 0; i < kept.length; i++) {
      picked[i] = values[kept[i]];
    }
    return picked;
  }

  private Optional<Trail.End> end() {
    if (path.restPoint().isEmpty()) {
      return Optional.empty();
    }
    RestPlace place = answers.stored().places().get(path.restPoint().getAsInt());
    if (place.ring()) {
      // No place of a ring is the one, so none is marked.
      return Optional.empty();
    }
    return Optional.of(new Trail.End(place.x(), place.y(), answers.words().outcome()));
  }
}
