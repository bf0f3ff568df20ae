package lodeswing.web.occupancy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.CellMapFigure;
import lodeswing.figure.Drawing;
import lodeswing.figure.Measure;
import lodeswing.figure.RoundStep;
import lodeswing.web.plate.PlateMap;

/** The field's strength and the bob's time side by side: what is handed to the figure. */
final class OccupancyPicture {

  /** Halvings and doublings about an even share that the scale of time shows. */
  private static final int OCTAVES = 3;

  private static final int STEPS_PER_OCTAVE = 2;
  private static final int FIELD_STEPS = 12;
  private static final int MOST_TICKS = 6;

  /** Few cells, right over a magnet, would else take up the whole scale. */
  private static final double SHOWN_QUANTILE = 0.995;

  private final OccupancyRequest request;
  private final StoredOccupancy stored;
  private final OccupancyWords words;

  OccupancyPicture(OccupancyRequest request, StoredOccupancy stored, OccupancyWords words) {
    this.request = request;
    this.stored = stored;
    this.words = words;
  }

  Drawing drawing() {
    List<String> captions = new ArrayList<>();
    captions.add(words.sentence());
    captions.add(words.notes().get(0));
    CellMapFigure.Ground ground =
        new CellMapFigure.Ground(
            words.title(),
            stored.grid().halfWidth(),
            request.spec().radius(),
            new PlateMap(request.layout()).magnets(),
            request.bench() ? Measure.BENCH : Measure.TEXTBOOK,
            captions);
    return CellMapFigure.draw(ground, List.of(field(), time()), alternative());
  }

  private CellMapFigure.Panel field() {
    double[] known =
        IntStream.range(0, stored.grid().count())
            .mapToDouble(stored::strength)
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    double most = known.length == 0 ? 0 : known[(int) (SHOWN_QUANTILE * (known.length - 1))];
    double unit = request.bench() ? 1e3 : 1;
    double tick = RoundStep.atLeast(Math.max(most * unit, Double.MIN_NORMAL) / MOST_TICKS);
    int ticks = (int) Math.max(1, Math.ceil(most * unit / tick));
    double top = ticks * tick;
    List<CellMapFigure.Tick> words = new ArrayList<>();
    for (int k = 0; k <= ticks; k++) {
      words.add(
          new CellMapFigure.Tick(
              (double) FIELD_STEPS * k / ticks, plain(k * tick) + (k == ticks ? " +" : "")));
    }
    return panel(
        "How strong the field is",
        cell -> stored.strength(cell) * unit / top * FIELD_STEPS,
        new CellMapFigure.Scale(
            0,
            FIELD_STEPS,
            words,
            request.bench() ? "mT, along the bob's way" : "strength, along the bob's way"));
  }

  private CellMapFigure.Panel time() {
    long inside = IntStream.range(0, stored.grid().count()).filter(this::within).count();
    double even = 1.0 / Math.max(1, inside);
    int steps = 2 * OCTAVES * STEPS_PER_OCTAVE;
    List<CellMapFigure.Tick> ticks = new ArrayList<>();
    for (int octave = -OCTAVES; octave <= OCTAVES; octave++) {
      String times = octave < 0 ? "1/" + (1 << -octave) : Integer.toString(1 << octave);
      ticks.add(
          new CellMapFigure.Tick(
              (octave + OCTAVES) * STEPS_PER_OCTAVE, times + (octave == OCTAVES ? " +" : "")));
    }
    return panel(
        "Where the bob spends its time",
        cell ->
            stored.share(cell) == 0
                ? Double.NaN
                : (Math.log(stored.share(cell) / even) / Math.log(2) + OCTAVES) * STEPS_PER_OCTAVE,
        new CellMapFigure.Scale(
            1, steps, ticks, "times an even share of the circle; palest where it hardly ever is"));
  }

  private boolean within(int cell) {
    return Math.hypot(stored.grid().x(cell), stored.grid().y(cell)) <= request.spec().radius();
  }

  private CellMapFigure.Panel panel(
      String title, IntToDoubleFunction place, CellMapFigure.Scale scale) {
    return new CellMapFigure.Panel(
        title,
        stored.grid().side(),
        cell -> {
          double at = place.applyAsDouble(cell);
          return Double.isFinite(at)
              ? (int) Math.max(0, Math.min(scale.steps() - 1, Math.floor(at)))
              : CellMapFigure.NONE;
        },
        scale);
  }

  private static String plain(double value) {
    String digits = String.format(Locale.ROOT, "%.4f", value);
    return digits.replaceAll("0+$", "").replaceAll("\\.$", "");
  }

  private AlternativeText alternative() {
    return new AlternativeText(
        "en",
        words.title(),
        words.sentence()
            + " Left a map of the field's strength, right a map of the time spent, with the"
            + " magnets' outlines over both. "
            + String.join(" ", words.notes()));
  }
}
