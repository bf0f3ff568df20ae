package lodeswing.web.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.comparison.ComparisonResult;
import lodeswing.core.geometry.PathCurve;
import lodeswing.core.recording.Recording;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.DistanceFigure;
import lodeswing.figure.DistancePicture;
import lodeswing.figure.Drawing;
import lodeswing.figure.Measure;
import lodeswing.figure.PathFigure;
import lodeswing.figure.PathPicture;
import lodeswing.figure.Trail;
import lodeswing.web.body.Numbers;
import lodeswing.web.plate.PlateMap;

/** The pictures of a comparison: what is handed to the figures. */
final class ComparisonPictures {

  private final ComparisonRequest request;
  private final ComparisonAnswers answers;
  private final ComparisonResult found;
  private final Measure measure;

  ComparisonPictures(ComparisonRequest request, ComparisonAnswers answers) {
    this.request = request;
    this.answers = answers;
    this.found = answers.found();
    this.measure = request.bench() ? Measure.BENCH : Measure.TEXTBOOK;
  }

  /** Both paths over the plate. */
  Drawing paths() {
    PlateMap plate = new PlateMap(request.layout());
    Drawing drawn =
        PathFigure.draw(
            new PathPicture(
                request.layout().heading("recorded and foretold"),
                pathCaptions(),
                measure,
                plate.outline(),
                plate.magnets(),
                List.of(recorded(), foretold().slender())));
    return new Drawing(
        drawn.viewBox(),
        drawn.nominalWidth(),
        drawn.shapes(),
        drawn.legend(),
        new AlternativeText(
            "en",
            drawn.alternative().title(),
            answers.words().sentence() + " " + drawn.alternative().description()));
  }

  private Trail recorded() {
    Recording plate = answers.plate();
    int first = found.track().first();
    PathCurve curve = shifted(plate.curve(first, plate.count() - first), plate.t(0), shownUntil());
    List<Trail.Happening> parting = new ArrayList<>();
    found
        .departedAt()
        .ifPresent(at -> parting.add(new Trail.Happening(at, "departs from what is allowed")));
    found.partedAt().ifPresent(at -> parting.add(new Trail.Happening(at, "is parted")));
    return new Trail(
        curve,
        "recorded",
        Trail.Horizons.none(),
        parting,
        new Trail.Start(curve.x(0), curve.y(0), 0, 0),
        Optional.empty());
  }

  private Trail foretold() {
    Trail own = answers.foretold().trail("foretold", List.of());
    double begin = answers.plate().t(0) + answers.stored().start().time();
    Trail.Horizons horizons = own.horizons();
    return new Trail(
        shifted(own.curve(), begin, shownUntil()),
        own.name(),
        new Trail.Horizons(
            horizons.trustedUntil().isPresent() ? found.trustedUntil() : OptionalDouble.empty(),
            found.foretoldUntil(),
            later(horizons.sealedAt(), begin),
            later(horizons.settledAt(), begin)),
        own.happenings().stream()
            .map(event -> new Trail.Happening(event.time() + begin, event.words()))
            .toList(),
        own.start(),
        own.end());
  }

  private static OptionalDouble later(OptionalDouble time, double by) {
    return time.isPresent() ? OptionalDouble.of(time.getAsDouble() + by) : time;
  }

  /** A swing beyond the parting and the nearer horizon; all of it where they never part. */
  private double shownUntil() {
    double last = answers.plate().t(answers.plate().count() - 1);
    if (found.partedAt().isEmpty()) {
      return last;
    }
    double swing = answers.period();
    double apart = Math.max(found.partedAt().getAsDouble(), found.near().until());
    return Math.min(last, apart + swing);
  }

  /** A curve by the recording's own time, up to a moment. */
  private static PathCurve shifted(PathCurve curve, double by, double until) {
    int count = 1;
    while (count < curve.count() && curve.t(count) + by <= until) {
      count++;
    }
    double[] t = new double[count];
    double[][] columns = new double[4][count];
    for (int i = 0; i < count; i++) {
      t[i] = curve.t(i) + by;
      columns[0][i] = curve.x(i);
      columns[1][i] = curve.y(i);
      columns[2][i] = curve.vx(i);
      columns[3][i] = curve.vy(i);
    }
    return new PathCurve(t, columns);
  }

  /** Their distance over time. */
  Drawing distance() {
    int count = found.track().count();
    double[] times = new double[count];
    double[] explained = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = answers.plate().t(found.track().first() + i);
      explained[i] = answers.explained(i);
    }
    return DistanceFigure.draw(
        new DistancePicture(
            request.layout().heading("distance of recorded and foretold"),
            captions(),
            measure,
            new DistancePicture.Curve(times, found.track().distance(), explained),
            found.partedDistance(),
            new DistancePicture.Moments(
                found.departedAt(),
                found.partedAt(),
                found.foretoldUntil(),
                found.trustedUntil())));
  }

  private List<String> pathCaptions() {
    List<String> captions = captions();
    if (shownUntil() < answers.until()) {
      captions.add(
          "Shown until "
              + Numbers.plain(Numbers.toDigits(shownUntil(), 3))
              + (request.bench() ? " s" : "")
              + ", a small swing after they are parted and beyond what can be foretold.");
    }
    return captions;
  }

  private List<String> captions() {
    List<String> captions = new ArrayList<>();
    captions.add(answers.words().sentence());
    captions.addAll(answers.words().caveats());
    return captions;
  }
}
