package lodeswing.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import lodeswing.core.geometry.PathCurve;
import org.junit.jupiter.api.Test;

class PathFigureTest {
  private static final int LONG = 200_000;
  private final PathPicture picture = PictureScenes.threeStations("Tide", "Dune", "Reef");
  private final Drawing drawing = PathFigure.draw(picture);

  @Test
  void everythingLiesWithinTheViewBox() {
    for (PathPicture scene :
        List.of(picture, PictureScenes.manyStations(27), PictureScenes.pathAlone(500))) {
      Drawing drawn = PathFigure.draw(scene);
      double slack = 2 / drawn.scale();
      for (double[] box : boxes(drawn)) {
        assertTrue(box[0] >= drawn.viewBox().left() - slack, () -> "left " + box[0]);
        assertTrue(box[1] >= drawn.viewBox().bottom() - slack, () -> "bottom " + box[1]);
        assertTrue(box[2] <= drawn.viewBox().right() + slack, () -> "right " + box[2]);
        assertTrue(box[3] <= drawn.viewBox().top() + slack, () -> "top " + box[3]);
      }
    }
  }

  @Test
  void pathKeepsWithinATenthOfAPixelOfEveryKnot() {
    PathCurve curve = picture.trails().get(0).curve();
    List<double[]> drawn = new ArrayList<>();
    for (Shape.Curve line : curves(drawing)) {
      drawn.addAll(places(line));
    }
    double worst = 0;
    for (int i = 0; i < curve.count(); i += 7) {
      double nearest = Double.POSITIVE_INFINITY;
      for (int k = 1; k < drawn.size(); k++) {
        nearest =
            Math.min(nearest, distance(drawn.get(k - 1), drawn.get(k), curve.x(i), curve.y(i)));
      }
      worst = Math.max(worst, nearest * drawing.scale());
    }
    double found = worst;
    assertTrue(found <= 0.105, () -> found + " px");
  }

  @Test
  void pathHasNoCorners() {
    double[] before = new double[0];
    for (Shape.Curve line : curves(drawing)) {
      List<double[]> places = places(line);
      for (int k = 1; k < places.size(); k++) {
        double dx = places.get(k)[0] - places.get(k - 1)[0];
        double dy = places.get(k)[1] - places.get(k - 1)[1];
        double length = Math.hypot(dx, dy);
        if (before.length > 0 && length * drawing.scale() > 0.2) {
          double turn = Math.acos(Math.min(1, (dx * before[0] + dy * before[1]) / length));
          assertTrue(turn < 0.15, () -> "turns by " + turn);
        }
        before = length > 0 ? new double[] {dx / length, dy / length} : before;
      }
    }
  }

  @Test
  void pathGainsStrengthBreaksAtItsHorizonsAndNeverHasGaps() {
    List<Shape.Curve> lines = curves(drawing);
    double progress = -1;
    for (int i = 0; i < lines.size(); i++) {
      Shape.Curve line = lines.get(i);
      Tint.Age age = (Tint.Age) line.stroke().tint();
      assertTrue(age.progress() > progress);
      progress = age.progress();
      double middle = 20 * progress;
      assertEquals(middle < 9.5, age.trusted());
      assertEquals(middle < 9.5 ? Dash.SOLID : Dash.DASHED, line.stroke().dash());
      assertEquals(middle < 4.25, line.stroke().width() > 2);
      if (i > 0) {
        Points before = lines.get(i - 1).controls();
        assertEquals(before.x(before.count() - 1), line.controls().x(0), 1e-12);
        assertEquals(before.y(before.count() - 1), line.controls().y(0), 1e-12);
      }
    }
  }

  @Test
  void longPathsGivePicturesOfBoundedSize() {
    Drawing drawn = PathFigure.draw(PictureScenes.pathAlone(LONG));
    int controls = curves(drawn).stream().mapToInt(line -> line.controls().count()).sum();
    assertTrue(controls < 1_000, () -> controls + " controls");
    Drawing noise = PathFigure.draw(noise(LONG));
    int most = curves(noise).stream().mapToInt(line -> line.controls().count()).sum();
    assertTrue(most <= 3 * (TrailDrawer.MOST_PIECES + 100), () -> most + " controls");
  }

  @Test
  void labelsOfThreeStationsStandClearOfEachOther() {
    List<double[]> boxes = new ArrayList<>();
    for (Shape shape : flat(drawing.shapes())) {
      if (shape instanceof Shape.Text text && text.halo()) {
        boxes.add(box(text, drawing));
      }
    }
    assertTrue(boxes.size() >= 8, () -> boxes.size() + " labels");
    for (int i = 0; i < boxes.size(); i++) {
      for (int k = 0; k < i; k++) {
        double w =
            Math.min(boxes.get(i)[2], boxes.get(k)[2]) - Math.max(boxes.get(i)[0], boxes.get(k)[0]);
        double h =
            Math.min(boxes.get(i)[3], boxes.get(k)[3]) - Math.max(boxes.get(i)[1], boxes.get(k)[1]);
        assertFalse(w > 0 && h > 0, "two labels overlap");
      }
    }
  }

  @Test
  void polesDifferByLetterAndShapeNotByColourAlone() {
    PlateMagnet.Face north = PlateMagnet.Face.NORTH;
    PlateMagnet.Face south = PlateMagnet.Face.SOUTH;
    assertFalse(north.letter().equals(south.letter()));
    assertFalse(north.badge() == south.badge());
    List<String> texts = texts(drawing);
    assertTrue(texts.containsAll(List.of("N", "S", "Tide", "Dune", "Reef")), texts::toString);
  }

  @Test
  void legendAndAlternativeTextSayWhatThePictureShows() {
    String legend = String.join("\n", drawing.legend().stream().map(LegendEntry::text).toList());
    for (String part :
        List.of(
            "sealed at 7.42", "settled at 16.1", "after 4.25", "after 9.5", "touched magnet 2")) {
      assertTrue(legend.contains(part), legend);
    }
    String words = drawing.alternative().description().replace('\u00a0', ' ');
    for (String part :
        List.of(
            "released at (80, 27.3) mm",
            "with a speed of 112 mm/s",
            "comes to rest at Tide",
            "settled at 16.1 s",
            "decided from 7.42 s on",
            "trusted until 9.5 s",
            "foretell it until 4.25 s",
            "Dune at (−22.5, 39) mm (north pole up)")) {
      assertTrue(words.contains(part), words);
    }
  }

  @Test
  void legendLeavesOutWhatIsNotSeenAndSaysWhatComesLater() {
    Drawing shown = PathFigure.draw(brief(2, 0.08, OptionalDouble.of(9.5), 12));
    String legend = String.join("\n", shown.legend().stream().map(LegendEntry::text).toList());
    assertFalse(legend.contains("broken"), legend);
    assertFalse(legend.contains("thin"), legend);
    assertTrue(legend.contains("in the middle, settled at 12\u00a0s, later than the"), legend);
    assertFalse(legend.contains("centre"), "the star hides the cross: " + legend);
    String words = shown.alternative().description().replace('\u00a0', ' ');
    assertTrue(words.contains("comes to rest in the middle, at (0, 0) mm, settled at 12 s, later"));
    assertTrue(words.contains("trusted to its end"), words);

    Drawing crossed = PathFigure.draw(brief(2, 0.08, OptionalDouble.of(1), 2));
    String seen = String.join("\n", crossed.legend().stream().map(LegendEntry::text).toList());
    assertTrue(seen.contains("broken after 1"), seen);
    assertFalse(seen.contains("later than the picture"), seen);

    Drawing hidden = PathFigure.draw(brief(2, 1e-4, OptionalDouble.of(1), 2));
    String under = String.join("\n", hidden.legend().stream().map(LegendEntry::text).toList());
    assertFalse(under.contains("broken"), under);
  }

  /** A bob that swings once through the middle, beside a magnet far off. */
  private static PathPicture brief(
      double until, double swing, OptionalDouble trusted, double settled) {
    double[] t = new double[21];
    double[][] at = new double[4][21];
    for (int i = 0; i < t.length; i++) {
      t[i] = until * i / 20;
      at[0][i] = swing * Math.cos(3 * t[i]);
      at[2][i] = -3 * swing * Math.sin(3 * t[i]);
    }
    Trail trail =
        new Trail(
            new PathCurve(t, at),
            "",
            new Trail.Horizons(
                trusted, OptionalDouble.of(20), OptionalDouble.empty(), OptionalDouble.of(settled)),
            List.of(),
            new Trail.Start(swing, 0, 0, 0),
            Optional.of(new Trail.End(0, 0, "in the middle", "in the middle")));
    PlateMagnet magnet =
        new PlateMagnet(1, 0.1, 0.1, new Outline.Round(0.01), PlateMagnet.Face.NORTH, "Tide");
    return new PathPicture(
        "", List.of(), Measure.BENCH, Optional.empty(), List.of(magnet), List.of(trail));
  }

  @Test
  void twoHundredMagnetsAreDrawnWithoutCoveringTheLegend() {
    Drawing drawn = PathFigure.draw(PictureScenes.manyStations(200));
    double legendLeft =
        drawn.viewBox().left() + (Sheet.WIDTH - Sheet.MARGIN - Sheet.LEGEND_WIDTH) / drawn.scale();
    for (Shape shape : drawn.shapes()) {
      if (shape instanceof Shape.Group group && !List.of("legend", "").contains(group.role())) {
        for (Shape part : flat(group.shapes())) {
          assertTrue(extent(part, drawn)[2] <= legendLeft, () -> "into the legend: " + part);
        }
      }
    }
  }

  @Test
  void aPathOfOneSampleAndAPathThatNeverMovesAreDrawn() {
    for (int count : new int[] {1, 50}) {
      double[] t = new double[count];
      for (int i = 0; i < count; i++) {
        t[i] = i;
      }
      Trail still =
          new Trail(
              new PathCurve(t, new double[4][count]),
              "",
              Trail.Horizons.none(),
              List.of(),
              new Trail.Start(0, 0, 0, 0),
              Optional.empty());
      Drawing drawn =
          PathFigure.draw(
              new PathPicture(
                  "", List.of(), Measure.BENCH, Optional.empty(), List.of(), List.of(still)));
      assertTrue(drawn.alternative().description().contains("no magnets"));
    }
  }

  @Test
  void scaleBarsAreOneTwoOrFiveTimesAPowerOfTen() {
    assertEquals(50, ScaleBar.roundLength(99.9), 1e-9);
    assertEquals(100, ScaleBar.roundLength(100), 1e-9);
    assertEquals(0.02, ScaleBar.roundLength(0.0499), 1e-12);
    assertEquals(0.05, ScaleBar.roundLength(0.05), 1e-12);
    assertEquals(1e-6, ScaleBar.roundLength(1.3e-6), 1e-15);
  }

  private static PathPicture noise(int count) {
    Random random = new Random(4);
    double[] t = new double[count];
    double[] x = new double[count];
    double[] y = new double[count];
    for (int i = 0; i < count; i++) {
      t[i] = i;
      x[i] = random.nextDouble();
      y[i] = random.nextDouble();
    }
    Trail trail =
        new Trail(
            new PathCurve(t, x, y, new double[count], new double[count]),
            "",
            Trail.Horizons.none(),
            List.of(),
            new Trail.Start(x[0], y[0], 0, 0),
            Optional.empty());
    return new PathPicture(
        "", List.of(), Measure.BENCH, Optional.empty(), List.of(), List.of(trail));
  }

  private static List<Shape> flat(List<Shape> shapes) {
    List<Shape> all = new ArrayList<>();
    for (Shape shape : shapes) {
      if (shape instanceof Shape.Group group) {
        all.addAll(flat(group.shapes()));
      } else {
        all.add(shape);
      }
    }
    return all;
  }

  private static List<Shape.Curve> curves(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(shape -> shape instanceof Shape.Group group && group.role().equals("path"))
        .flatMap(shape -> ((Shape.Group) shape).shapes().stream())
        .map(Shape.Curve.class::cast)
        .toList();
  }

  /** Places on a curve, 64 a piece. */
  private static List<double[]> places(Shape.Curve line) {
    Points p = line.controls();
    List<double[]> places = new ArrayList<>();
    places.add(new double[] {p.x(0), p.y(0)});
    for (int k = 0; k + 3 < p.count(); k += 3) {
      for (int i = 1; i <= 64; i++) {
        double s = i / 64.0;
        double r = 1 - s;
        double[] weights = {r * r * r, 3 * r * r * s, 3 * r * s * s, s * s * s};
        double[] place = new double[2];
        for (int w = 0; w < 4; w++) {
          place[0] += weights[w] * p.x(k + w);
          place[1] += weights[w] * p.y(k + w);
        }
        places.add(place);
      }
    }
    return places;
  }

  private static List<String> texts(Drawing drawing) {
    return flat(drawing.shapes()).stream()
        .filter(Shape.Text.class::isInstance)
        .map(shape -> ((Shape.Text) shape).text())
        .toList();
  }

  private static List<double[]> boxes(Drawing drawing) {
    return flat(drawing.shapes()).stream().map(shape -> extent(shape, drawing)).toList();
  }

  private static double[] extent(Shape shape, Drawing drawing) {
    if (shape instanceof Shape.Text text) {
      return box(text, drawing);
    }
    if (shape instanceof Shape.Polyline || shape instanceof Shape.Curve) {
      double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
      Points points =
          shape instanceof Shape.Polyline line ? line.points() : ((Shape.Curve) shape).controls();
      for (int i = 0; i < points.count(); i++) {
        box[0] = Math.min(box[0], points.x(i));
        box[1] = Math.min(box[1], points.y(i));
        box[2] = Math.max(box[2], points.x(i));
        box[3] = Math.max(box[3], points.y(i));
      }
      return box;
    }
    if (shape instanceof Shape.Circle circle) {
      return around(circle.x(), circle.y(), circle.radius(), circle.radius());
    }
    if (shape instanceof Shape.Ring ring) {
      return around(ring.x(), ring.y(), ring.outer(), ring.outer());
    }
    if (shape instanceof Shape.Rectangle box) {
      double cos = Math.abs(Math.cos(box.turn())) / 2;
      double sin = Math.abs(Math.sin(box.turn())) / 2;
      return around(
          box.x(),
          box.y(),
          box.width() * cos + box.height() * sin,
          box.width() * sin + box.height() * cos);
    }
    Shape.Symbol symbol = (Shape.Symbol) shape;
    double half = symbol.size() / 2 / drawing.scale();
    return around(symbol.x(), symbol.y(), half, half);
  }

  private static double[] around(double x, double y, double halfWidth, double halfHeight) {
    return new double[] {x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight};
  }

  private static double[] box(Shape.Text text, Drawing drawing) {
    double width = TextWidth.of(text.text(), text.size()) / drawing.scale();
    double size = text.size() / drawing.scale();
    double left = text.anchor() == Anchor.START ? text.x() : text.x() - width / 2;
    return new double[] {left, text.y() - 0.1 * size, left + width, text.y() + 0.75 * size};
  }

  private static double distance(double[] from, double[] to, double x, double y) {
    double dx = to[0] - from[0];
    double dy = to[1] - from[1];
    double square = dx * dx + dy * dy;
    double along = square > 0 ? ((x - from[0]) * dx + (y - from[1]) * dy) / square : 0;
    double share = Math.min(1, Math.max(0, along));
    return Math.hypot(from[0] + share * dx - x, from[1] + share * dy - y);
  }
}
