package lodeswing.web.fit;

import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.PathCurve;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Drawing;
import lodeswing.figure.Measure;
import lodeswing.figure.PathFigure;
import lodeswing.figure.PathPicture;
import lodeswing.figure.Trail;
import lodeswing.web.plate.PlateMap;

/** The picture of a fit: what was recorded, and the path that was fitted to it. */
final class FitPicture {

  private final FitRequest request;
  private final FitAnswers answers;

  FitPicture(FitRequest request, FitAnswers answers) {
    this.request = request;
    this.answers = answers;
  }

  Drawing paths() {
    PlateMap plate = new PlateMap(request.layout());
    PathCurve fitted = answers.stored().path();
    boolean bench = request.layout().model().equals("bench");
    Drawing drawn =
        PathFigure.draw(
            new PathPicture(
                request.layout().heading("recorded and fitted"),
                List.of(answers.sentence()),
                bench ? Measure.BENCH : Measure.TEXTBOOK,
                plate.outline(),
                plate.magnets(),
                List.of(trail(recorded(), "recorded"), trail(fitted, "fitted").slender())));
    return new Drawing(
        drawn.viewBox(),
        drawn.nominalWidth(),
        drawn.shapes(),
        drawn.legend(),
        new AlternativeText(
            "en",
            drawn.alternative().title(),
            answers.sentence() + " " + drawn.alternative().description()));
  }

  private static Trail trail(PathCurve curve, String name) {
    double[] start = new double[4];
    curve.at(curve.t(0), start);
    return new Trail(
        curve,
        name,
        Trail.Horizons.none(),
        List.of(),
        new Trail.Start(start[0], start[1], 0, 0),
        Optional.empty());
  }

  private PathCurve recorded() {
    return answers.recording().onPlate(answers.stored().frame()).curve(0, answers.stored().used());
  }
}
