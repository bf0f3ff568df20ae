package lodeswing.web.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lodeswing.analysis.field.FieldLine;
import lodeswing.analysis.field.Filings;
import lodeswing.analysis.field.LevelLines;
import lodeswing.analysis.field.SpotKind;
import lodeswing.analysis.field.WeakSpot;
import lodeswing.core.field.Frame;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.magnet.Ring;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Drawing;
import lodeswing.figure.FieldFigure;
import lodeswing.figure.FieldPicture;
import lodeswing.figure.Points;
import lodeswing.figure.ViewBox;
import lodeswing.web.body.Numbers;
import lodeswing.web.plate.PlateMap;

/** Pictures of the field: what is handed to the figure. */
final class FieldPictures {

  /** Corners of a border nearer than so many sides of the window are left out. */
  private static final double THINNED = 1.0 / 450;

  private final FieldRequest request;
  private final FieldWords words;

  FieldPictures(FieldRequest request, FieldWords words) {
    this.request = request;
    this.words = words;
  }

  /** A map of strengths, of the whole field or of its part in the plane. */
  Drawing map(
      double[] strengths, Frame frame, List<ShownSpot> spots, boolean inPlane, String sentence) {
    LevelLines lines = LevelLines.of(frame, strengths);
    List<FieldPicture.Band> bands = new ArrayList<>();
    double right = frame.left() + frame.width();
    double top = frame.bottom() + frame.height();
    bands.add(
        new FieldPicture.Band(
            "",
            List.of(
                new Points(
                    new double[] {frame.left(), right, right, frame.left()},
                    new double[] {frame.bottom(), frame.bottom(), top, top}))));
    for (double level : FieldLevels.of(strengths)) {
      List<Points> borders =
          lines.at(level / FieldWords.MILLI).stream()
              .map(ring -> thinned(ring, frame))
              .filter(points -> points.count() > 2)
              .toList();
      bands.add(new FieldPicture.Band(Numbers.shortest(level) + " mT", borders));
    }
    String title = inPlane ? "the field's part in the plane" : "how strong the field is";
    return draw(title, sentence, new FieldPicture.Ground.Bands(bands), signs(spots), plan());
  }

  private static Points thinned(LevelLines.Ring ring, Frame frame) {
    double least = THINNED * frame.width();
    double[] x = new double[ring.count()];
    double[] y = new double[ring.count()];
    int kept = 0;
    for (int i = 0; i < ring.count(); i++) {
      boolean corner =
          onEdge(ring.x(i), frame.left(), frame.width())
              && onEdge(ring.y(i), frame.bottom(), frame.height());
      boolean apart =
          kept == 0 || Math.hypot(ring.x(i) - x[kept - 1], ring.y(i) - y[kept - 1]) >= least;
      if (corner || apart) {
        x[kept] = ring.x(i);
        y[kept] = ring.y(i);
        kept++;
      }
    }
    return new Points(Arrays.copyOf(x, kept), Arrays.copyOf(y, kept));
  }

  private static boolean onEdge(double at, double low, double extent) {
    double slack = 1e-9 * extent;
    return Math.abs(at - low) < slack || Math.abs(at - low - extent) < slack;
  }

  /** Lines in the plan or in an upright cut. */
  Drawing lines(List<FieldLine> lines, List<ShownSpot> spots, String sentence) {
    double[] strengths =
        lines.stream()
            .flatMapToDouble(
                line ->
                    java.util.stream.IntStream.range(0, line.count()).mapToDouble(line::strength))
            .sorted()
            .toArray();
    double low = strengths.length == 0 ? 0 : strengths[strengths.length * 2 / 5];
    double high = strengths.length == 0 ? 0 : strengths[strengths.length * 4 / 5];
    List<FieldPicture.Line> drawn = new ArrayList<>();
    for (FieldLine line : lines) {
      double[] u = new double[line.count()];
      double[] v = new double[line.count()];
      List<Integer> weights = new ArrayList<>();
      for (int i = 0; i < line.count(); i++) {
        u[i] = line.u(i);
        v[i] = line.v(i);
        weights.add(line.strength(i) > high ? 2 : line.strength(i) > low ? 1 : 0);
      }
      drawn.add(new FieldPicture.Line(new Points(u, v), weights));
    }
    boolean cut = ((FieldSubject.Lines) request.subject()).turnDeg().isPresent();
    return draw(
        cut ? "lines of the field, seen from the side" : "lines of the field, seen from above",
        sentence,
        new FieldPicture.Ground.Lines(drawn),
        signs(spots),
        cut ? upright() : plan());
  }

  /** Filings on paper. */
  Drawing filings(Filings.Strewn strewn, List<ShownSpot> spots, String sentence) {
    List<List<Points>> strokes = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (int n = 0; n < strewn.count(); n++) {
      double[] x = new double[3];
      double[] y = new double[3];
      for (int place = 0; place < 3; place++) {
        x[place] = strewn.x(n, place);
        y[place] = strewn.y(n, place);
      }
      strokes.get(strewn.width(n)).add(new Points(x, y));
    }
    return draw(
        "what filings on paper show",
        sentence,
        new FieldPicture.Ground.Filings(strokes),
        signs(spots),
        plan());
  }

  /** What a picture shows beside the field. */
  private record Scene(ViewBox window, List<FieldPicture.Body> bodies) {}

  private Scene plan() {
    Frame frame = request.view().frame(2);
    return new Scene(
        new ViewBox(frame.left(), frame.bottom(), frame.width(), frame.height()), List.of());
  }

  private Scene upright() {
    Frame frame = request.view().cut(request.plate());
    double turn = ((FieldSubject.Lines) request.subject()).turnDeg().orElse(0.0);
    CutPlane cut = CutPlane.of(request.view(), turn);
    List<FieldPicture.Body> bodies = new ArrayList<>();
    for (int i = 0; i < request.bench().magnets().size(); i++) {
      PlacedMagnet placed = request.bench().magnets().get(i);
      String label = request.layout().labels().get(i).orElse("");
      bodies.addAll(bodies(placed, label, cut, frame));
    }
    return new Scene(
        new ViewBox(frame.left(), frame.bottom(), frame.width(), frame.height()), bodies);
  }

  private static List<FieldPicture.Body> bodies(
      PlacedMagnet placed, String label, CutPlane cut, Frame frame) {
    Magnet magnet = placed.magnet();
    double middle = cut.along(placed.centre().x(), placed.centre().y());
    double beside = Math.abs(cut.beside(placed.centre().x(), placed.centre().y()));
    double half = halfAcross(placed, cut, beside);
    double low = placed.centre().z() - magnet.halfHeight();
    double high = placed.centre().z() + magnet.halfHeight();
    boolean seen = half > 0 && Math.abs(middle) + half < frame.width() / 2;
    if (!seen) {
      return List.of();
    }
    boolean north = placed.poleUp() == Pole.NORTH;
    if (magnet instanceof Ring ring && ring.innerRadius() > beside) {
      double hole = Math.sqrt(ring.innerRadius() * ring.innerRadius() - beside * beside);
      return List.of(
          new FieldPicture.Body(middle - half, middle - hole, low, high, north, label),
          new FieldPicture.Body(middle + hole, middle + half, low, high, north, ""));
    }
    return List.of(new FieldPicture.Body(middle - half, middle + half, low, high, north, label));
  }

  /** Half of what the cut meets of a magnet; of a turned block the half of its middle line. */
  private static double halfAcross(PlacedMagnet placed, CutPlane cut, double beside) {
    Magnet magnet = placed.magnet();
    if (magnet instanceof Block block) {
      double cos =
          Math.abs(Math.cos(placed.turn()) * cut.cos() + Math.sin(placed.turn()) * cut.sin());
      double sin =
          Math.abs(Math.cos(placed.turn()) * cut.sin() - Math.sin(placed.turn()) * cut.cos());
      double along = cos > 0 ? block.length() / 2 / cos : Double.POSITIVE_INFINITY;
      double across = sin > 0 ? block.width() / 2 / sin : Double.POSITIVE_INFINITY;
      double reach = block.length() / 2 * sin + block.width() / 2 * cos;
      return beside < reach ? Math.min(along, across) : 0;
    }
    double radius = magnet.planRadius();
    return beside < radius ? Math.sqrt(radius * radius - beside * beside) : 0;
  }

  private Drawing draw(
      String what,
      String sentence,
      FieldPicture.Ground ground,
      List<FieldPicture.Spot> spots,
      Scene scene) {
    String title = request.layout().heading(what);
    boolean plan = scene.bodies().isEmpty();
    List<String> captions = new ArrayList<>();
    captions.add(sentence);
    captions.add(FieldWords.BOB_LEFT_OUT);
    if (ground instanceof FieldPicture.Ground.Filings) {
      captions.add(FieldWords.FILINGS_CAUTION);
    }
    boolean upright =
        request.subject() instanceof FieldSubject.Lines lines && lines.turnDeg().isPresent();
    return FieldFigure.draw(
        new FieldPicture(
            title,
            captions,
            scene.window(),
            upright ? List.of() : new PlateMap(request.layout()).magnets(),
            plan ? List.of() : scene.bodies(),
            ground,
            upright ? List.of() : spots,
            List.of(),
            new AlternativeText(
                "en", title, String.join(" ", sentence, poles(), FieldWords.BOB_LEFT_OUT))));
  }

  private String poles() {
    List<String> poles = new ArrayList<>();
    for (int i = 0; i < Math.min(12, request.bench().magnets().size()); i++) {
      poles.add(words.neighbours().name(i) + " " + words.neighbours().pole(i));
    }
    int more = request.bench().magnets().size() - poles.size();
    return poles.isEmpty()
        ? "There is no magnet."
        : "Poles up: " + String.join(", ", poles) + (more > 0 ? " and " + more + " more." : ".");
  }

  private List<FieldPicture.Spot> signs(List<ShownSpot> spots) {
    List<FieldPicture.Spot> signs = new ArrayList<>();
    for (ShownSpot shown : spots) {
      WeakSpot spot = shown.spot();
      boolean over = words.neighbours().over(spot.x(), spot.y()).isPresent();
      signs.add(
          new FieldPicture.Spot(spot.x(), spot.y(), signs.size() + 1, sign(spot.kind(), over)));
    }
    return signs;
  }

  private static FieldPicture.Sign sign(SpotKind kind, boolean over) {
    return switch (kind) {
      case SADDLE -> FieldPicture.Sign.SADDLE;
      case SOURCE, SINK -> over ? FieldPicture.Sign.POLE : FieldPicture.Sign.NODE;
      case SPIRAL, CENTRE -> FieldPicture.Sign.TURN;
      case LINE -> FieldPicture.Sign.LINE;
      case MINIMUM -> FieldPicture.Sign.LEAST;
    };
  }
}
