package lodeswing.web.basin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.window.BasinWindow;
import lodeswing.figure.Drawing;
import lodeswing.figure.MapLegendFigure;
import lodeswing.figure.OverlayFigure;
import lodeswing.figure.Tint;
import lodeswing.figure.ViewBox;
import lodeswing.render.Palette;
import lodeswing.render.png.BasinPainter;
import lodeswing.web.plate.PlateMap;
import lodeswing.web.restpoint.RestPlace;

/** Overlay and legend of a map: what is handed to the figures. */
final class BasinPicture {

  private static final double[] SHADES = {0.1, 0.5, 0.9};

  private final BasinRequest request;
  private final StoredSurvey survey;
  private final BasinAnswers answers;

  BasinPicture(BasinRequest request, StoredSurvey survey) {
    this.request = request;
    this.survey = survey;
    this.answers = new BasinAnswers(request, survey);
  }

  /** Magnets, labels and rest points over the window. */
  Drawing overlay() {
    BasinWindow window = request.window();
    double side = 2 * window.halfWidth();
    List<OverlayFigure.RestMark> marks = new ArrayList<>();
    for (RestPlace place : survey.places()) {
      marks.add(
          new OverlayFigure.RestMark(
              place.x(), place.y(), Palette.mark(place.index()), tint(place.index(), 0.5, false)));
    }
    return OverlayFigure.draw(
        new ViewBox(window.x() - side / 2, window.y() - side / 2, side, side),
        new PlateMap(request.layout()).magnets(),
        marks,
        new BasinWords(request, survey).alternative());
  }

  /** The legend with patterns where they are always drawn, or everywhere. */
  Drawing legend(boolean patterns) {
    EndNames names = answers.names();
    List<MapLegendFigure.Line> lines = new ArrayList<>();
    for (int index : answers.indices()) {
      boolean rest = index < names.restPoints();
      List<Tint> shades = new ArrayList<>();
      List<Tint> inks = new ArrayList<>();
      for (double depth : rest ? SHADES : new double[] {0.5}) {
        shades.add(tint(index, depth, false));
        inks.add(tint(index, depth, true));
      }
      lines.add(
          new MapLegendFigure.Line(
              names.name(index),
              shades,
              inks,
              BasinPainter.pattern(index, names.restPoints(), patterns),
              rest ? Optional.of(Palette.mark(index)) : Optional.empty()));
    }
    BasinWords words = new BasinWords(request, survey);
    return MapLegendFigure.draw(lines, words.scale(), words.alternative());
  }

  private Tint tint(int index, double depth, boolean ink) {
    return BasinPainter.tint(index, survey.places().size(), depth, ink);
  }
}
