package lodeswing.web.swingcount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.swingcount.Along;
import lodeswing.analysis.swingcount.CountedFigures;
import lodeswing.analysis.swingcount.Figure;
import lodeswing.analysis.swingcount.MagnetSwing;
import lodeswing.analysis.swingcount.Measured;
import lodeswing.analysis.swingcount.Readings;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.swing.LargeSwing;
import lodeswing.web.body.Numbers;

/** A swing count in words. */
final class SwingCountWords {

  /** Plan distance of a release as a part of the arm, where none was told. */
  private static final double USUAL_OUT = 0.1;

  /** Second halving over first: 1/2 by friction of constant size, 1 by linear loss, 2 by drag. */
  private static final double FRICTION_UP_TO = 0.75;

  private static final double DRAG_FROM = 1.5;

  private static final double PERCENT = 100;
  private static final double MM = 1e3;

  private final BenchLayout rig;
  private final SwingCountQuery query;
  private final CountedFigures counted;
  private final Optional<CountedLength> length;

  SwingCountWords(
      BenchLayout rig,
      SwingCountQuery query,
      CountedFigures counted,
      Optional<CountedLength> length) {
    this.rig = rig;
    this.query = query;
    this.counted = counted;
    this.length = length;
  }

  /** The result in words. */
  String sentence() {
    List<String> parts = new ArrayList<>();
    query.readings().timing().ifPresent(timing -> parts.add(period(timing)));
    counted.find(Figure.SWINGS_TO_HALF).ifPresent(half -> parts.add(loss(half)));
    return String.join(" ", parts);
  }

  private String period(Readings.Timing timing) {
    Measured small = counted.get(Figure.SMALL_PERIOD);
    String begun =
        timing.swings()
            + (timing.swings() == 1 ? " swing in " : " swings in ")
            + digits(timing.time().value(), 4)
            + " s: a small swing takes "
            + figure(small)
            + " s";
    String expected = digits(counted.get(Figure.EXPECTED_PERIOD).value(), 4) + " s";
    String own =
        length
            .map(of -> "its " + of.words() + " of " + digits(of.own(), 4) + " mm")
            .orElse("its size");
    if (agrees()) {
      return begun + ", as " + own + " says (" + expected + ").";
    }
    double off = counted.get(Figure.PERIOD_RATIO).value() - 1;
    return begun
        + ", "
        + digits(PERCENT * Math.abs(off), 2)
        + " % "
        + (off > 0 ? "more" : "less")
        + " than the "
        + expected
        + " that "
        + own
        + " says; "
        + length
            .map(of -> "a " + of.words() + " of " + figure(of.counted()) + " mm would swing so.")
            .orElse("no length of such a suspension swings so.");
  }

  private String loss(Measured half) {
    return "Half the amplitude is left after "
        + figure(half)
        + " swings: a quality factor of "
        + figure(counted.get(Figure.QUALITY_FACTOR))
        + ", the amplitude falls by "
        + digits(PERCENT * counted.get(Figure.DAMPING_RATE).value(), 2)
        + " % a second.";
  }

  /** Whether the counted period is that of the layout's own length. */
  boolean agrees() {
    return counted
        .find(Figure.PERIOD_RATIO)
        .map(ratio -> ratio.low() <= 1 && 1 <= ratio.high())
        .orElse(true);
  }

  /** What to know beside the figures. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(magnets());
    if (query.readings().timing().isPresent() && query.amplitude().isEmpty()) {
      notes.add(
          "The swings are taken as small, since no amplitude was told; at 10 degrees a swing takes"
              + " 0.19 % longer, which makes a length 0.38 % too long.");
    }
    law().ifPresent(notes::add);
    if (query.readings().gravity().error() > 0) {
      notes.add(
          "Gravity is taken as "
              + Numbers.plain(rig.gravity())
              + " ± "
              + Numbers.plain(Numbers.toDigits(query.readings().gravity().half(), 2))
              + " m/s², as the earth's varies from the equator to the poles; a layout with its own"
              + " localGravityMPerS2 leaves that out.");
    }
    if (query.readings().along() == Along.X && !round()) {
      notes.add(
          "This is the swing along x, about the lower axis; along=y asks for the other one, which"
              + " takes another time.");
    }
    notes.add(
        "Each uncertainty is taken as half of a 95 % interval of inputs that know nothing of each"
            + " other (JCGM 100:2008, section 5.1).");
    return notes;
  }

  private boolean round() {
    return rig.suspension().body().axisOffset() == 0;
  }

  /** That the magnets must be away, and what they would do. */
  private String magnets() {
    boolean acts = rig.bob().isPresent() && (rig.magnetCount() > 0 || rig.backing().isPresent());
    if (!acts) {
      return "Count with no magnets on the plate and no steel below the bob: both change the swing.";
    }
    Along along = query.readings().along();
    double arm = along.arm(rig.suspension().body());
    double out = query.amplitude().filter(told -> told > 0).orElse(USUAL_OUT * arm);
    OptionalDouble among = MagnetSwing.firstSwing(rig, along, out);
    double small = counted.get(Figure.EXPECTED_PERIOD).value();
    double free =
        LargeSwing.period(2 * Math.PI / small, Math.asin(Math.min(1, out / arm)), 0).orElse(small);
    return "Count with the magnets off the plate: with them, the first swing of a bob let go at "
        + digits(out * MM, 3)
        + " mm along "
        + along.word()
        + (among.isPresent()
            ? " would take " + digits(among.getAsDouble(), 3) + " s"
            : " would not be one")
        + " instead of "
        + digits(free, 3)
        + " s.";
  }

  /** Second halving over first, in swings. */
  private OptionalDouble halvings() {
    if (query.quarter().isEmpty() || counted.find(Figure.SWINGS_TO_HALF).isEmpty()) {
      return OptionalDouble.empty();
    }
    double first = counted.get(Figure.SWINGS_TO_HALF).value();
    return OptionalDouble.of((query.quarter().get().value() - first) / first);
  }

  /** The word of the loss's law; empty where a second halving was not counted. */
  Optional<String> lawWord() {
    OptionalDouble ratio = halvings();
    if (ratio.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        ratio.getAsDouble() < FRICTION_UP_TO
            ? "friction"
            : ratio.getAsDouble() > DRAG_FROM ? "drag" : "linear");
  }

  private Optional<String> law() {
    return lawWord()
        .map(
            law ->
                "The second halving took "
                    + digits(halvings().orElseThrow(), 2)
                    + " times as many swings as the first: "
                    + switch (law) {
                      case "friction" ->
                          "friction of constant size (half as many) has a part in it, which"
                              + " pivotTorqueNm of damping describes.";
                      case "drag" ->
                          "air drag (twice as many) has a part in it, which dragCoefficient of"
                              + " damping describes.";
                      default -> "about what a loss in proportion to speed makes (as many).";
                    });
  }

  /** A figure with half its interval, to the digits that this leaves. */
  private static String figure(Measured measured) {
    if (!(measured.half() > 0)) {
      return digits(measured.value(), 5);
    }
    int places = (int) Math.max(0, 1 - Math.floor(Math.log10(measured.half())));
    double step = Math.pow(10, -places);
    return Numbers.plain(Math.rint(measured.value() / step) * step)
        + " ± "
        + digits(measured.half(), 2);
  }

  private static String digits(double value, int digits) {
    return Numbers.plain(Numbers.toDigits(value, digits));
  }
}
