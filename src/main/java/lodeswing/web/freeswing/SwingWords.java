package lodeswing.web.freeswing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lodeswing.analysis.freeswing.Parting;
import lodeswing.core.outcome.PathEnd;
import lodeswing.web.body.Numbers;
import lodeswing.web.landscape.LimitWords;

/** A free swing in sentences. */
final class SwingWords {

  private final FreeSwingRequest request;
  private final SwingFigures figures;
  private final StoredSwing stored;

  SwingWords(FreeSwingRequest request, SwingFigures figures, StoredSwing stored) {
    this.request = request;
    this.figures = figures;
    this.stored = stored;
  }

  /** The result in one line. */
  String sentence() {
    String all = periods() + " " + shape();
    return request.among().isPresent() ? all + " " + parting() : all;
  }

  private String periods() {
    String x = time(figures.swings().periodX());
    if (figures.swings().alike()) {
      return "Without its magnets the bob swings alike along x and y: once in " + x + ".";
    }
    int most = Math.max(figures.figure().x(), figures.figure().y());
    String counted =
        most == 1
            ? "alike"
            : figures.figure().y()
                + (figures.figure().y() == 1 ? " swing" : " swings")
                + " along y to "
                + figures.figure().x()
                + " along x";
    return "Without its magnets the bob swings once in "
        + x
        + " along x and once in "
        + time(figures.swings().periodY())
        + " along y: "
        + (figures.formsAfter(figures.figure()).isPresent() ? "nearly " : "")
        + counted
        + ".";
  }

  private String shape() {
    if (!figures.swings().alike()) {
      return figure();
    }
    OptionalDouble precession = figures.precession();
    if (figures.fromRest()) {
      return "Let go from rest it keeps to a straight line.";
    }
    if (precession.isEmpty()) {
      return "Let go with a push it draws an ellipse.";
    }
    double rate = precession.getAsDouble();
    if (rate == 0) {
      return request.bench()
          ? "The push is along the line to the middle so that it keeps to a straight line."
          : "Its ellipse does not turn.";
    }
    return "It draws an ellipse whose axes turn "
        + (rate > 0 ? "anticlockwise" : "clockwise")
        + " at first by "
        + digits(Math.abs(rate))
        + (request.bench() ? " degrees a second." : " degrees a unit of time.");
  }

  private String figure() {
    String closes =
        "The figure closes after " + time(figures.figure().closesAfter(figures.swings()));
    OptionalDouble forms = figures.formsAfter(figures.figure());
    String steady =
        forms.isPresent()
            ? " and runs through all its forms in " + time(forms.getAsDouble()) + "."
            : " and keeps its form.";
    return figures.fromRest()
        ? closes
            + steady
            + " Let go from rest it leaves its straight line by up to "
            + length(stored.free().widest())
            + "."
        : closes + steady;
  }

  private String parting() {
    FreeSwingRequest.Among among = request.among().orElseThrow();
    String distance = Numbers.shortest(among.within()) + (request.bench() ? " mm" : "");
    Parting.Result parting = stored.parting().orElseThrow();
    if (parting.at().isPresent()) {
      return "Among its magnets it keeps within "
          + distance
          + " of this path until "
          + time(parting.at().getAsDouble())
          + (parting.sure() ? "." : ", a time that is not sure.");
    }
    return parting.end().isPresent()
        ? "Among its magnets it keeps within "
            + distance
            + " of this path until "
            + time(parting.end().get().time())
            + ", when "
            + text(parting.end().get())
            + "."
        : "Among its magnets it keeps within " + distance + " of this path all the time.";
  }

  /** What else to know. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(decay());
    stored
        .free()
        .end()
        .ifPresent(end -> notes.add("At " + time(end.time()) + ": " + text(end) + "."));
    if (request.bench()) {
      notes.add(
          "Periods, ratio and figure are those of small swings; the picture shows the exact motion"
              + " of this release, larger swings of which are slower.");
      if (figures.swings().alike() && figures.swings().turning().isEmpty()) {
        notes.add(
            "The rig has equal periods but is not round: how its ellipses turn is not told by a"
                + " formula here.");
      }
    } else {
      notes.add(
          "A textbook layout swings harmonically at every size and alike in every direction: it has"
              + " one frequency, and its ellipses do not turn.");
    }
    return notes;
  }

  private String decay() {
    if (request.layout().layout().lossless()) {
      return "Nothing takes energy out of this swing.";
    }
    return stored.free().halvedAt().isPresent()
        ? "The swing has half its size after " + time(stored.free().halvedAt().getAsDouble()) + "."
        : "The swing does not fall to half its size while it is followed.";
  }

  /** What ended a path. */
  static String text(PathEnd end) {
    return end.limit().map(LimitWords::of).orElse("the bob is " + LimitWords.HELD);
  }

  String time(double seconds) {
    return request.bench() ? digits(seconds) + " s" : digits(seconds) + " units of time";
  }

  private String length(double metres) {
    String figure = digits(metres * request.layout().shownPerUnit());
    return request.bench() ? figure + " mm" : figure;
  }

  /** Three digits, whole digits never rounded off. */
  static String digits(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    int whole = exact.precision() - exact.scale();
    return Numbers.shortest(
        exact.round(new MathContext(Math.max(3, whole), RoundingMode.HALF_EVEN)).doubleValue());
  }
}
