package lodeswing.web.field;

import java.util.List;
import java.util.Optional;
import lodeswing.analysis.field.PlateField;
import lodeswing.core.field.Frame;
import lodeswing.core.field.Surface;
import lodeswing.web.body.Numbers;

/**
 * Where the field is looked at.
 *
 * @param x middle of the window [mm]
 * @param y middle of the window [mm]
 * @param halfWidth half of its side [mm]
 * @param zMm height of a level plane; nothing for the bob's path
 */
record FieldView(double x, double y, double halfWidth, Optional<Double> zMm) {

  private static final double MILLI = 1e-3;

  /** Height of an upright cut, in halves of the window's side. */
  private static final double CUT_HEIGHT = 1.1;

  /** How far below the lowest magnet a cut reaches, in halves of the window's side. */
  private static final double CUT_BELOW = 0.22;

  /** What words tell. */
  static FieldView of(List<String> words) {
    return new FieldView(
        Double.parseDouble(words.get(0)),
        Double.parseDouble(words.get(1)),
        Double.parseDouble(words.get(2)),
        words.get(3).equals("path") ? Optional.empty() : Optional.of(Double.valueOf(words.get(3))));
  }

  /** All of it in words. */
  List<String> words() {
    return List.of(
        Numbers.shortest(x),
        Numbers.shortest(y),
        Numbers.shortest(halfWidth),
        zMm.map(Numbers::shortest).orElse("path"));
  }

  /** The same as a query. */
  String query() {
    List<String> words = words();
    return "x="
        + words.get(0)
        + "&y="
        + words.get(1)
        + "&halfWidth="
        + words.get(2)
        + (zMm.isPresent() ? "&zMm=" + words.get(3) : "&surface=path");
  }

  /** The window with so many places a side. */
  Frame frame(int side) {
    return Frame.square(MILLI * x, MILLI * y, MILLI * halfWidth, side);
  }

  /** The surface. */
  Surface surface(PlateField plate) {
    return zMm.map(z -> plate.level(MILLI * z)).orElseGet(plate::bobPath);
  }

  /** The window of an upright cut: along it and upwards, from the steel or below the magnets. */
  Frame cut(PlateField plate) {
    double half = MILLI * halfWidth;
    double lowest =
        plate.layout().magnets().stream()
            .mapToDouble(placed -> placed.centre().z() - placed.magnet().halfHeight())
            .min()
            .orElse(0);
    double bottom =
        plate.layout().backing().map(steel -> steel.top()).orElse(lowest - CUT_BELOW * half);
    return new Frame(-half, bottom, 2 * half, CUT_HEIGHT * half, 2, 2);
  }
}
