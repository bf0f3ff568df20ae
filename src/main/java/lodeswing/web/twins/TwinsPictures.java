package lodeswing.web.twins;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.analysis.twins.Cut;
import lodeswing.analysis.twins.TwinsResult;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Drawing;
import lodeswing.figure.Measure;
import lodeswing.figure.PathFigure;
import lodeswing.figure.PathPicture;
import lodeswing.figure.SeparationFigure;
import lodeswing.figure.SeparationPicture;
import lodeswing.figure.Trail;
import lodeswing.web.plate.PlateMap;

/** The pictures of twins: what is handed to the figures. */
final class TwinsPictures {

  private final TwinsRequest request;
  private final TwinsAnswers answers;
  private final TwinsResult pair;
  private final Measure measure;

  TwinsPictures(TwinsRequest request, TwinsAnswers answers) {
    this.request = request;
    this.answers = answers;
    this.pair = answers.pair();
    this.measure = request.first().bench() ? Measure.BENCH : Measure.TEXTBOOK;
  }

  /** Both paths over the plate. */
  Drawing paths() {
    PlateMap plate = new PlateMap(request.layout());
    List<Trail.Happening> parting = new ArrayList<>();
    pair.partedAt()
        .ifPresent(
            time -> parting.add(new Trail.Happening(time, "parts from the first by a spacing")));
    Trail first = answers.first().trail("first", List.of());
    Trail second = answers.second().trail("second", parting);
    Drawing drawn =
        PathFigure.draw(
            new PathPicture(
                title("two releases"),
                captions(),
                measure,
                plate.outline(),
                plate.magnets(),
                List.of(first, second.slender())));
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

  /** Their separation over time. */
  Drawing separation() {
    return SeparationFigure.draw(
        new SeparationPicture(
            title("separation of two releases"),
            captions(),
            measure,
            new double[][] {
              pair.separation().t(), pair.separation().distance(), pair.separation().phase()
            },
            new SeparationPicture.Level(
                pair.partedDistance(),
                request.layout().layout().magnetCount() > 1
                    ? "the magnets' spacing"
                    : "size of the swing"),
            pair.partedAt(),
            pair.growth()
                .map(
                    growth ->
                        new SeparationPicture.Line(
                            growth.until(), growth.atStart(), growth.rate().value())),
            new SeparationPicture.Span(
                request.first().durationS(), pair.shownUntil(), words(pair.shownEnd()))));
  }

  private static String words(Cut end) {
    return switch (end) {
      case TRUST -> "one of the computed paths is not to be trusted";
      case MODEL -> "the model of one of them ends";
      case RESOLUTION -> "nearer than computing can tell";
      case PARTING, SEALED, HELD, DURATION -> "as long as was asked for";
    };
  }

  private String title(String what) {
    Optional<String> own = request.first().title();
    return own.map(name -> name + " \u2013 " + what)
        .orElse(Character.toUpperCase(what.charAt(0)) + what.substring(1));
  }

  private List<String> captions() {
    List<String> captions = new ArrayList<>();
    captions.add(answers.words().sentence());
    captions.addAll(answers.words().notes());
    return captions;
  }
}
